import {breadWork} from '../lexicon/grammar-words.js'
import type {Draft} from './entries.js'
import type {View} from './view.js'

/** Loaves that are called by their weight: a receipt bakes them as often as it takes one. */
const BY_WEIGHT: ReadonlySet<string> = new Set([
  'quartern loaf',
  'half-quartern loaf',
  'peck loaf',
  'four-pound loaf',
  'two-pound loaf',
])
/** What English does not count, and German does: „ein Brot formen“. */
const COUNTED: ReadonlySet<string> = new Set(['bread', 'rye bread'])
const WORK: ReadonlySet<string> = new Set(breadWork)
const BAKED = /^(?:bake|bakes|baked|make|makes|made|shape|form|into|mould|moulded)$/
/** How far off the word stands that tells what is done with the bread: "cut in thin slices half a quartern loaf". */
const NEAR = 4

/**
 * Whether a loaf in the method is one that is baked ("a quartern loaf takes two hours", „ein Brot formen“), and no bread that goes in. It goes in
 * where it is grated, sliced or soaked, where it is less than one, and where it stands among other things that do.
 *
 * @param drafts all entries of the receipt
 */
export function isLoafBaked({words, tokens}: View, d: Draft, drafts: readonly Draft[]): boolean {
  if (d.inList || d.row === null) return false
  if (!BY_WEIGHT.has(d.row.id) && !(COUNTED.has(d.row.id) && d.measure === 'count')) return false
  if (d.high !== null && d.high.value < 1) return false
  const here = (i: number): boolean => tokens[i]?.block === tokens[d.start]!.block && !/^[.;:!?]$/.test(words[i]!)
  let worked = false
  for (let i = d.start - 1; i >= d.start - NEAR && here(i); i--) {
    if (BAKED.test(words[i]!)) return true
    worked ||= WORK.has(words[i]!)
  }
  for (let i = d.next; i < d.next + NEAR && here(i); i++) worked ||= WORK.has(words[i]!)
  return (
    !worked &&
    !drafts.some((other) => other !== d && (isBeside(words, d.next, other.start) || isBeside(words, other.next, d.start)))
  )
}

/** Whether only a comma and "and" stand between two entries. */
const isBeside = (words: readonly string[], from: number, to: number): boolean =>
  to > from && to - from <= 2 && words.slice(from, to).every((word) => /^(?:,|and|&)$/.test(word))
