import {partsOf} from '../lexicon/grammar-words.js'
import {lookUpOwnItem} from '../lexicon/index.js'
import {readAmount} from './amounts.js'
import type {Draft, Entries, Mode} from './entries.js'
import {vague} from './indefinite-words.js'
import {type Noun, partItem, readNoun} from './nouns.js'
import {type Quantity, readQuantity} from './quantities.js'
import {ENDER, PREPARED, type View} from './view.js'

/**
 * One amount for each of several names: “each of mace, cloves and nutmeg”, “currants and raisins, a pound each”.
 */

/**
 * The names just before "of each", joined by commas and "and", back to the clause's beginning. Those the lexicon lacks stand too:
 * old receipts put a dozen herbs in one breath.
 */
function namesBefore(entries: Entries, at: number, mode: Mode): Draft[] {
  const {words, bits, tokens} = entries.view
  const {block} = tokens[at]!
  const within = (i: number): boolean => i > 0 && tokens[i - 1]!.block === block
  let stop = at
  while (within(stop) && (words[stop - 1] === ',' || words[stop - 1] === ':' || words[stop - 1] === '—')) stop--
  const found: Draft[] = []
  let end = stop
  while (within(end) && found.length < 40) {
    let from = end
    while (
      within(from) &&
      tokens[from - 1]!.kind === 'word' &&
      !(bits[from - 1]! & ENDER && !(bits[from - 1]! & PREPARED)) &&
      end - from < 5
    )
      from--
    if (from === end) break
    const noun = readNoun(entries.view, from, end, true)
    if (noun === null || noun.next < end) break
    // Names of the clause are the last ones read.
    let existing = entries.drafts.length - 1
    while (existing >= 0 && entries.drafts[existing]!.start >= end) existing--
    if (existing >= 0 && entries.drafts[existing]!.start < from) existing = -1
    if (existing >= 0 && !entries.drafts[existing]!.bare) break
    if (existing >= 0) entries.drafts.splice(existing, 1)
    found.unshift({
      start: noun.start,
      next: noun.next,
      low: null,
      high: null,
      measure: 'indefinite',
      measureText: '',
      item: noun.item,
      row: noun.row,
      known: noun.known,
      hedges: [],
      prepared: noun.prepared,
      part: entries.part,
      confidence: 0.85,
      notes: [],
      other: undefined,
      stated: undefined,
      reckoned: undefined,
      lacks: undefined,
      percent: undefined,
      percentOf: undefined,
      bare: true,
      inList: mode === 'list',
      unknownMeasure: false,
    })
    const joint = words[from - 1]
    if (joint !== ',' && joint !== 'and' && joint !== '&') break
    end = from - 1
    if (joint !== ',' && words[end - 1] === ',') end--
  }
  return found
}

/** The names, taken out of the entries before, become entries that all have this quantity. */
function giveAll(entries: Entries, names: readonly Draft[], quantity: Quantity, next: number, mode: Mode): void {
  const start = names[0]!.start
  for (const name of names) {
    entries.push(
      {
        ...name,
        bare: false,
        start,
        next,
        low: quantity.low,
        high: quantity.high,
        measure: quantity.measure,
        measureText: quantity.measureText,
        hedges: [...quantity.hedges],
        confidence: 0.85,
        inList: mode === 'list',
      },
      mode,
    )
  }
}

/** "each of mace, cloves and nutmeg": one entry an item, all over the same words. The token after them, else −1; `from` is after "each". */
export function eachList(entries: Entries, at: number, quantity: Quantity, from: number, to: number, mode: Mode): number {
  const {words} = entries.view
  let i = from
  if (words[i] === 'of' || words[i] === ':') i++
  const nouns: Noun[] = []
  for (;;) {
    const noun = readNoun(entries.view, i, to, mode === 'list' || nouns.length === 0, mode === 'list')
    if (noun === null) break
    nouns.push(noun)
    i = noun.next
    let j = i
    if (words[j] === ',') j++
    const and = words[j] === 'and' || words[j] === '&' || words[j] === 'und'
    if (and) j++
    if (j === i || j >= to) break
    if (readAmount(entries.view, j, to) !== null || vague.match(words, j, to) > 0) break
    i = j
    if (and) {
      const last = readNoun(entries.view, i, to, mode === 'list', mode === 'list')
      if (last === null) break
      nouns.push(last)
      i = last.next
      break
    }
  }
  if (nouns.length < 2) return -1
  const end = nouns[nouns.length - 1]!.next
  for (const noun of withHead(entries.view, nouns))
    entries.push(
      {
        start: at,
        next: end,
        low: quantity.low,
        high: quantity.high,
        measure: quantity.measure,
        measureText: quantity.measureText,
        item: noun.item,
        row: noun.row,
        known: noun.known,
        prepared: noun.prepared,
        hedges: [...quantity.hedges],
        confidence: 0.9,
      },
      mode,
    )
  return end
}

/** "white and brown sugar", "orange and lemon peel": the head stands behind the last, and belongs to each. */
function withHead(view: View, nouns: readonly Noun[]): readonly Noun[] {
  const last = nouns[nouns.length - 1]!
  const head = view.words[last.next - 1]!
  const peel = partsOf[head] === 'rind'
  return nouns.map((noun): Noun => {
    if (noun === last || noun.row === null || noun.next - noun.start !== 1) return noun
    const word = view.words[noun.start]!
    if (peel) {
      const made = noun.row.group === 'fruit' ? partItem(noun.row.id, 'rind') : null
      return made === null || made.row === null ? noun : {...noun, item: made.item, row: made.row}
    }
    if (word !== 'white' && word !== 'yolk') return noun
    const row = lookUpOwnItem(`${word} ${head}`)
    return row === null ? noun : {...noun, item: row.id, row}
  })
}

/** "currants and raisins, a pound each": the token after "each", else −1. */
export function eachBefore(entries: Entries, at: number, quantity: Quantity, next: number, mode: Mode): number {
  // "balls, weighing 3 lb. each": what is made, not what goes in.
  if (entries.view.words[at - 1] === 'weighing') return next
  const names = namesBefore(entries, at, mode)
  if (names.length === 0) return -1
  giveAll(entries, names, quantity, next, mode)
  return next
}

/** "mace and cloves, of each a quarter of an ounce": the token after the amount, else −1; `from` is after "each". */
export function eachAfter(entries: Entries, at: number, from: number, to: number, mode: Mode): number {
  const {words} = entries.view
  let i = from
  if (words[i] === ',' || words[i] === 'of') i++
  if (words[i] === 'an' && words[i + 1] === 'equal' && words[i + 2] === 'quantity') return i + 3
  if (words[i] === 'equal' && (words[i + 1] === 'quantities' || words[i + 1] === 'parts')) return i + 2
  const quantity = readQuantity(entries.view, i, to)
  if (quantity === null || (quantity.article && quantity.measure === 'count')) return -1
  const names = namesBefore(entries, at, mode)
  if (names.length === 0) return -1
  giveAll(entries, names, quantity, quantity.next, mode)
  return quantity.next
}

/** "a drachm of nutmeg, mace and cinnamon each": the names after the first, and the token after "each". */
export function eachTail(view: View, first: Noun, to: number): {nouns: Noun[]; next: number} | null {
  const {words} = view
  const nouns: Noun[] = []
  let i = first.next
  for (let turns = 0; turns < 12; turns++) {
    let j = i
    if (words[j] === ',') j++
    if (words[j] === 'each' && nouns.length > 0) return {nouns, next: j + 1}
    if (words[j] === 'of' && words[j + 1] === 'each' && nouns.length > 0) return {nouns, next: j + 2}
    if (words[j] === 'and' || words[j] === '&') j++
    if (j === i || j >= to) return null
    const noun = readNoun(view, j, to, false)
    if (noun === null) return null
    nouns.push(noun)
    i = noun.next
  }
  return null
}
