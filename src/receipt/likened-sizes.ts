import {readAmount, skipHedges} from './amounts.js'
import type {Entries, Mode} from './entries.js'
import {type Exact, HALF, ONE, TWO} from './exact.js'
import type {Noun} from './nouns.js'
import {PREPARED, textOf, type View} from './view.js'

/**
 * How much is told by the size of another thing: “the size of an egg”, “as big as a walnut”.
 */

const SIZES: Readonly<Record<string, string>> = {
  egg: 'size of an egg',
  walnut: 'size of a walnut',
  wallnut: 'size of a walnut',
  nutmeg: 'size of a nutmeg',
  butternut: 'size of a butternut',
  nut: 'size of a nut',
  hazelnut: 'size of a hazelnut',
  filbert: 'size of a hazelnut',
  pea: 'size of a pea',
  bean: 'size of a bean',
  marble: 'size of a marble',
  almond: 'size of an almond',
  cherry: 'size of a cherry',
  orange: 'size of an orange',
  apple: 'size of an apple',
  fist: 'size of a fist',
}

/** An amount told by a thing's size, and the tokens that tell it. */
interface Likened {
  readonly low: Exact
  readonly high: Exact
  readonly measure: string
  readonly start: number
  readonly next: number
}

/** "the size of an egg", "as big as a walnut", "half the size of an egg" after a name: amount and measure. */
export function sizeOf(view: View, at: number, to: number): Likened | null {
  const {words, bits} = view
  let i = at
  if (words[i] === ',') i++
  const start = i
  const hedges: string[] = []
  i = skipHedges(view, i, to, hedges)
  while (words[i] === 'of' || words[i] === 'about') i++
  let times = ONE
  if (words[i] === 'half' || words[i] === 'twice') {
    times = words[i] === 'half' ? HALF : TWO
    i++
  }
  if (words[i] === 'the') i++
  if (
    words[i] === 'size' ||
    words[i] === 'bigness' ||
    words[i] === 'bulk' ||
    words[i] === 'quantity' ||
    words[i] === 'bignesse'
  ) {
    i++
    if (words[i] !== 'of') return null
    i++
  } else if (
    words[i] === 'as' &&
    (words[i + 1] === 'big' || words[i + 1] === 'large' || words[i + 1] === 'bigg') &&
    words[i + 2] === 'as'
  )
    i += 3
  else if (words[i] === 'big' && words[i + 1] === 'as') i += 2
  else if (words[i] === 'large' && words[i + 1] === 'as') i += 2
  else return null
  let low = ONE
  let high = low
  const amount = readAmount(view, i, to)
  if (amount !== null) {
    low = amount.low
    high = amount.high
    i = amount.next
  }
  while (i < to && bits[i]! & PREPARED && words[i] !== 'nutmeg') i++
  const name = words[i]
  const noun = /^(?:hen|hens|hen's|turkey|turkey's|goose|pigeon|pigeon's|pullet|pullet's|duck|duck's|hazel|hazle)$/.test(
    name ?? '',
  )
    ? i + 1
    : i
  const measure = sizeMeasure(words[i] ?? '', words[noun] ?? '')
  if (measure === null || noun >= to) return null
  return {low: low.times(times), high: high.times(times), measure, start, next: noun + 1}
}

/** Take down a name whose amount is told by another thing's size. */
export function likened(
  entries: Entries,
  told: {start: number; next: number; size: Likened; noun: Noun; confidence: number},
  mode: Mode,
): void {
  const {start, next, size, noun, confidence} = told
  const {low, high, measure} = size
  const {item, row, known, prepared} = noun
  const measureText = textOf(entries.view, size.start, size.next)
  entries.push({start, next, low, high, measure, measureText, item, row, known, prepared, confidence}, mode)
}

function sizeMeasure(first: string, noun: string): string | null {
  const word = noun.replace(/s$/, '')
  if (word === 'egg' && (first.startsWith('goose') || first.startsWith('turkey'))) return 'size of a goose egg'
  if (word === 'egg' && first.startsWith('pigeon')) return 'size of a pigeon egg'
  if (word === 'nut' && (first === 'hazel' || first === 'hazle')) return 'size of a hazelnut'
  return SIZES[word] ?? null
}
