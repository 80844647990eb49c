import {bundles, cardinals, fractions, furtherBefore, hedges as hedgeWords} from '../lexicon/grammar-words.js'
import {lookUpMeasure} from '../lexicon/index.js'
import {measureSystems} from '../lexicon/measure-systems.js'
import type {Measure} from '../lexicon/schema.js'
import {Exact, HALF, ONE} from './exact.js'
import {ARTICLE, BUNDLE, CARDINAL, FILLING, FRACTION, itemHere, measureHere, OPENER, Phrases, VERB, type View} from './view.js'

/** A number as the text gives it: a range where it does. */
export interface Amount {
  readonly low: Exact
  readonly high: Exact
  /** The token after it. */
  readonly next: number
  readonly hedges: readonly string[]
  /** Only "a", "an", "each", "every": 1 where something that can be counted or measured follows. */
  readonly article: boolean
  /** A fraction below one: "a quarter" before "of mace" takes the measure of the line above. */
  readonly fraction: boolean
  /** In figures. */
  readonly figure: boolean
}

/** An amount and its measure. */
export interface Quantity extends Amount {
  /** Canonical measure; `count` where the text names none. */
  readonly measure: string
  readonly dimension: Measure['dimension']
  readonly measureText: string
  /** The token at which the measure's own words begin; that after the amount where there are none. */
  readonly measureStart: number
  readonly notes: readonly string[]
}

interface One {
  readonly value: Exact
  readonly next: number
  readonly article: boolean
  readonly figure: boolean
}

const hedgePhrases = new Phrases(hedgeWords)
const furtherPhrases = new Phrases(furtherBefore)
const systemPhrases = measureSystems.map(({id, words}) => ({id, phrases: new Phrases(words)}))

/** Fixed ratios within one system, in the smallest unit named: stacked amounts ("a pound and five ounces") add exactly. */
const RATIOS: Readonly<Record<string, readonly [string, number]>> = {
  stone: ['mass', 224 * 16],
  pound: ['mass', 16 * 16],
  ounce: ['mass', 16],
  drachm: ['mass', 1],
  gallon: ['capacity', 32],
  quart: ['capacity', 8],
  pint: ['capacity', 4],
  gill: ['capacity', 1],
  bushel: ['dry', 4],
  peck: ['dry', 1],
  cup: ['spoons', 48],
  tablespoon: ['spoons', 3],
  teaspoon: ['spoons', 1],
  stick: ['spoons', 24],
  kilogram: ['metric mass', 1000],
  gram: ['metric mass', 1],
  litre: ['metric volume', 1000],
  decilitre: ['metric volume', 100],
  centilitre: ['metric volume', 10],
  millilitre: ['metric volume', 1],
}

/** "every", "per", also as German receipts have it: what they govern is one. */
const EVERY = new Set(['every', 'each', 'per', 'another', 'pro', 'jedes', 'jeden', 'jede'])

/** How many of measure `to` one of measure `from` is; null where the ratio is not fixed. */
export function ratio(from: string, to: string): Exact | null {
  if (from === to) return ONE
  const a = RATIOS[from]
  const b = RATIOS[to]
  return a === undefined || b === undefined || a[0] !== b[0] ? null : Exact.of(a[1], b[1])
}

/** The token after hedges at `at` ("about", "rather more than"), adding them to `into`. */
export function skipHedges(view: View, at: number, end: number, into: string[]): number {
  let i = at
  while (i < end) {
    const next = hedgePhrases.match(view.words, i, end)
    if (next < 0) break
    into.push(view.words.slice(i, next).join(' '))
    i = next
  }
  return i
}

const fractionAt = (view: View, at: number, end: number): Exact | null => {
  if (at >= end || !(view.bits[at]! & FRACTION)) return null
  const pair = fractions[view.words[at]!]
  return pair === undefined ? null : Exact.of(pair[0], pair[1])
}

/** After a fraction: "of a pound", "a pound", "of one pound" — the token at "pound". */
function pastOf(view: View, at: number, end: number): number {
  const {words} = view
  let i = at
  // A table's cell "half" before a cell "a nutmeg" or "of a nutmeg".
  if (words[i] === '|') {
    const next = pastOf(view, i + 1, end)
    return next > i + 1 ? next : i
  }
  if (words[i] === 'of' && i + 1 < end && (words[i + 1] === 'a' || words[i + 1] === 'an' || words[i + 1] === 'one')) i += 2
  else if (words[i] === 'a' || words[i] === 'an') i += 1
  else if (words[i] === 'of' && i + 1 < end) {
    const measure = measureHere(view, i + 1)
    if (
      measure !== null &&
      (measure.row.dimension === 'mass' || measure.row.dimension === 'volume') &&
      words[measure.next] === 'of'
    )
      i += 1
  }
  return Math.min(i, end)
}

/** "one and a quarter of a pound": past "of a" where a weight or measure follows. */
function pastOfMeasure(view: View, at: number, end: number): number {
  if (view.words[at] !== 'of') return at
  const next = pastOf(view, at, end)
  const measure = next > at && next < end ? measureHere(view, next) : null
  return measure !== null && (measure.row.dimension === 'mass' || measure.row.dimension === 'volume') ? next : at
}

/** "and a half", "and three quarters", "& 1/2" at `at`: the fraction and the token after it. */
function andFraction(view: View, at: number, end: number): {value: Exact; next: number} | null {
  const {words, bits, tokens} = view
  if (at + 1 >= end || !/^(?:and|&|und)$/.test(words[at]!)) return null
  let i = at + 1
  const token = tokens[i]!
  if (token.kind === 'number') {
    if (token.den > 1 && token.num < token.den) return {value: Exact.of(token.num, token.den), next: i + 1}
    return null
  }
  let times = 1
  if (bits[i]! & ARTICLE) i++
  else if (bits[i]! & CARDINAL && (cardinals[words[i]!] ?? 99) < 10) {
    times = cardinals[words[i]!]!
    i++
  }
  const part = fractionAt(view, i, end)
  if (part === null) return null
  const value = part.times(Exact.of(times))
  if (value.value >= 1) return null
  // "and half a pint" is another amount, "and a half" is part of this one.
  const after = words[i + 1]
  if (i + 1 < end && (after === 'a' || after === 'an' || after === 'the')) return null
  return {value, next: i + 1}
}

const HALBE = /^halbe[nmrs]?$/

/** "Ein Drittel der Milch": a share of what is told elsewhere. */
const isShareOf = ({words}: View, at: number): boolean => /^(?:der|des|vom|von|davon)$/.test(words[at] ?? '')

/** "1 x 23 cm pastry case": how large it is, and not how many. */
const isLength = (view: View, at: number, end: number): boolean =>
  at < end && (view.words[at] === '"' || measureHere(view, at)?.row.dimension === 'length')

/** One number at `at`, without a range. */
function one(view: View, at: number, end: number): One | null {
  const {words, bits, tokens} = view
  const token = tokens[at]
  if (token === undefined || at >= end) return null
  if (token.kind === 'mark') return null
  if (token.kind === 'number') {
    if (token.den === 0) return null
    const value = Exact.of(token.num, token.den)
    let next = at + 1
    const after = tokens[next]
    if (after !== undefined && next < end) {
      if (after.kind === 'word' && !after.gap && !after.joined && /^(?:st|nd|rd|th|d|s|m|p)$/.test(after.word)) return null
      if (after.kind === 'mark' && (after.word === '°' || after.word === '%' || after.word === '"')) return null
    }
    const before = tokens[at - 1]
    if (
      before !== undefined &&
      before.block === token.block &&
      before.kind === 'mark' &&
      (before.word === '$' || before.word === '£' || before.word === '#')
    )
      return null
    if (next < end && bits[next]! & BUNDLE) {
      return {...bundle(view, value, next, end), figure: true}
    }
    if (token.den === 1) {
      const mixed = andFraction(view, next, end)
      if (mixed !== null) return mixedNumber(view, value.plus(mixed.value), mixed.next, end, true)
      if (token.num > 1 && next + 1 < end && words[next] === 'half' && measureHere(view, next + 1) !== null)
        return {value: value.times(HALF), next: next + 1, article: false, figure: true}
      const part = fractionAt(view, next, end)
      if (part !== null && words[next] !== 'half')
        return {value: value.times(part), next: pastOf(view, next + 1, end), article: false, figure: true}
    } else if (token.num < token.den) next = pastOf(view, next, end)
    // "2 x 400 g", "2 400-g tins"
    const times = words[next]
    if (
      (times === 'x' || times === '×' || times === '*') &&
      next + 1 < end &&
      tokens[next + 1]!.kind === 'number' &&
      tokens[next + 1]!.den > 0 &&
      !isLength(view, next + 2, end)
    )
      return {
        value: value.times(Exact.of(tokens[next + 1]!.num, tokens[next + 1]!.den)),
        next: next + 2,
        article: false,
        figure: true,
      }
    return {value, next, article: false, figure: true}
  }
  const bit = bits[at]!
  if (bit & ARTICLE) {
    if (words[at + 1] === 'la' || words[at + 1] === 'l') return null
    let i = at + 1
    while (i < end && bits[i]! & FILLING && !(bits[i]! & (FRACTION | BUNDLE | CARDINAL))) i++
    if (i < end && bits[i]! & BUNDLE) return bundle(view, ONE, i, end)
    const part = fractionAt(view, i, end)
    if (part !== null) return afterFraction(view, part, i + 1, end)
    return {value: ONE, next: at + 1, article: true, figure: false}
  }
  const part = fractionAt(view, at, end)
  if (part !== null) {
    // "Pare and quarter a peck of apples": a verb, like the one before it.
    if (words[at] === 'quarter' && /^(?:and|&)$/.test(words[at - 1] ?? '') && at > 1 && bits[at - 2]! & VERB) return null
    if (words[at + 1] === 'the' || words[at + 1] === 'as' || words[at + 1] === 'and') return null
    // "Die halbe Menge", "halbe Aprikosen": half of what is named, or its halves, and no amount.
    if (HALBE.test(tokens[at]!.word) && tokens[at + 1]?.kind !== 'number' && measureHere(view, at + 1) === null) return null
    if (isShareOf(view, at + 1)) return null
    // "half-cooked"
    if (
      tokens[at + 1]?.joined &&
      at + 1 < end &&
      !(bits[at + 1]! & (ARTICLE | BUNDLE | FRACTION)) &&
      measureHere(view, at + 1) === null
    )
      return null
    return afterFraction(view, part, at + 1, end)
  }
  // "Score the rind": a verb, where nothing counts the scores.
  if (bit & BUNDLE && !/^(?:hundred|scores?)$/.test(words[at]!)) return bundle(view, ONE, at, end)
  if (bit & CARDINAL) {
    const below = cardinalAt(view, at, end)
    const whole = pastHundred(view, below, end)
    if (whole.next > below.next) return {value: Exact.of(whole.n), next: whole.next, article: false, figure: false}
    const {n, next} = below
    if (next < end && bits[next]! & BUNDLE) return bundle(view, Exact.of(n), next, end)
    const share = fractionAt(view, next, end)
    if (share !== null && isShareOf(view, next + 1)) return null
    if (share !== null && words[next + 1] !== 'the') {
      // "three half pints" is a pint and a half; "three half" before anything else is no amount.
      if (words[next] === 'half' && n > 1) {
        return measureHere(view, next + 1) === null
          ? null
          : {value: Exact.of(n, 2), next: next + 1, article: false, figure: false}
      }
      if (n === 1 || tokens[next]!.word !== 'half') return afterFraction(view, share.times(Exact.of(n)), next + 1, end)
    }
    const mixed = andFraction(view, next, end)
    if (mixed !== null) return mixedNumber(view, Exact.of(n).plus(mixed.value), mixed.next, end, false)
    return {value: Exact.of(n), next, article: false, figure: false}
  }
  return null
}

/** A cardinal below a hundred at `at`, where a word of one stands: "twenty-four", "four and twenty". */
function cardinalAt({words, bits}: View, at: number, end: number): {n: number; next: number} {
  const n = cardinals[words[at]!]!
  const valueAt = (i: number): number => (i < end && bits[i]! & CARDINAL ? cardinals[words[i]!]! : 0)
  const turned = words[at + 1] === 'and' ? valueAt(at + 2) : 0
  if (n < 10 && turned >= 20 && turned < 100) return {n: n + turned, next: at + 3}
  const ones = valueAt(at + 1)
  if (n >= 20 && n < 100 && ones > 0 && ones < 10) return {n: n + ones, next: at + 2}
  return {n, next: at + 1}
}

/** "two hundred", "one hundred and twenty-four": from what was read before the hundred, or from the hundred itself. */
function pastHundred(view: View, before: {n: number; next: number}, end: number): {n: number; next: number} {
  const {words, bits} = view
  let {n, next} = before
  if (words[next] === 'hundred' && next < end && n < 100) {
    n *= 100
    next++
  } else if (n !== 100) return before
  const from = words[next] === 'and' ? next + 1 : next
  if (from >= end || !(bits[from]! & CARDINAL)) return {n, next}
  const rest = cardinalAt(view, from, end)
  return rest.n < 100 ? {n: n + rest.n, next: rest.next} : {n, next}
}

/** "two and a half", with "dozen" behind it, or "of a pound". */
function mixedNumber(view: View, value: Exact, next: number, end: number, figure: boolean): One {
  if (next < end && view.bits[next]! & BUNDLE) return {...bundle(view, value, next, end), figure}
  return {value, next: pastOfMeasure(view, next, end), article: false, figure}
}

/** Bundles that are counted on from: "a hundred and twenty", "three score and ten". */
const COUNTED_ON: ReadonlySet<string> = new Set(['hundred', 'thousand', 'score'])

function bundle(view: View, times: Exact, at: number, end: number): One {
  const value = times.times(Exact.of(bundles[view.words[at]!]!))
  let next = at + 1
  let sum = value
  const onward = next + 1 < end && view.words[next] === 'and' && view.bits[next + 1]! & CARDINAL ? next + 1 : -1
  if (onward > 0 && COUNTED_ON.has(view.words[at]!)) {
    const more = cardinalAt(view, onward, end)
    const all = pastHundred(view, more, end)
    if (all.n < bundles[view.words[at]!]!)
      return {value: value.plus(Exact.of(all.n)), next: all.next, article: false, figure: false}
  }
  const mixed = andFraction(view, next, end)
  if (mixed !== null) {
    sum = value.plus(mixed.value.times(Exact.of(bundles[view.words[at]!]!)))
    next = mixed.next
  }
  if (view.words[next] === 'of' && view.words[next + 1] !== 'the' && next < end) next++
  return {value: sum, next, article: false, figure: false}
}

function afterFraction(view: View, value: Exact, at: number, end: number): One {
  const next = pastOf(view, at, end)
  if (next < end && view.bits[next]! & BUNDLE) return bundle(view, value, next, end)
  // "half a quarter of a pound"
  const share = view.words[next] === 'half' ? null : fractionAt(view, next, end)
  if (share !== null) return {value: value.times(share), next: pastOf(view, next + 1, end), article: false, figure: false}
  return {value, next, article: false, figure: false}
}

/**
 * A number at token `at`: in figures or words, mixed, a fraction, a range. "from 4 to 5", "six or eight", "nine and twenty", "half a
 * dozen", "one and one-half".
 *
 * @returns null where no number stands there
 */
export function readAmount(view: View, at: number, end: number): Amount | null {
  const {words, tokens} = view
  const hedges: string[] = []
  let i = at
  const between = words[i] === 'between'
  if (between || words[i] === 'from') i++
  i = skipHedges(view, i, end, hedges)
  if (i >= end || !(view.bits[i]! & OPENER)) return null
  if (EVERY.has(words[i]!)) {
    // "each" and "every" govern a measure; a number after them is read instead ("every two pounds").
    const inner = one(view, i + 1, end)
    if (inner !== null)
      return {
        low: inner.value,
        high: inner.value,
        next: inner.next,
        hedges,
        article: false,
        fraction: false,
        figure: inner.figure,
      }
    return {low: ONE, high: ONE, next: i + 1, hedges, article: true, fraction: false, figure: false}
  }
  // "noch 100 g", "a further 50 g"
  const further = furtherPhrases.match(words, i, end)
  const beyond = further > 0 && further < end ? readAmount(view, further, end) : null
  if (beyond !== null && !(beyond.article && words[i] !== 'noch')) return {...beyond, hedges: [...hedges, ...beyond.hedges]}
  if (words[i] === 'the' && i > at) return null
  const first = one(view, i, end)
  if (first === null) return null
  let high = first.value
  let {next} = first
  let {article} = first
  const fraction = first.value.value < 1
  // "two, three, or four"
  let k = next
  if (words[k] === ',' && k + 1 < end) {
    const second = one(view, k + 1, end)
    if (second !== null && !second.article && second.value.value > first.value.value) {
      let m = second.next
      if (words[m] === ',') m++
      if (words[m] === 'or') {
        const third = one(view, m + 1, end)
        if (third !== null && !third.article && third.value.value > second.value.value)
          return {low: first.value, high: third.value, next: third.next, hedges, article: false, fraction, figure: first.figure}
      }
    }
    if (words[k + 1] === 'or') k++
  }
  if (k < end) {
    const word = words[k]
    const dash = word === '-' || (word === '—' && !tokens[k]!.gap && k + 1 < end && !tokens[k + 1]!.gap)
    if (word === 'or' || word === 'to' || word === 'bis' || dash || (between && word === 'and')) {
      const rest: string[] = []
      const from = skipHedges(view, k + 1, end, rest)
      const second = one(view, from, end)
      if (second !== null && !second.article && second.value.value > first.value.value) {
        high = second.value
        next = second.next
        article = false
        hedges.push(...rest)
      }
    }
  }
  return {low: first.value, high, next, hedges, article, fraction: fraction && high.value < 1, figure: first.figure}
}

/** Measures that a single letter may mean only after a figure: "2 c", "100 g". */
const isShort = (view: View, at: number, next: number): boolean => next === at + 1 && view.words[at]!.length === 1

/** "imperial", "U.S." at `at`: its row's id and the token after it. */
function systemHere(view: View, at: number, end: number): {id: string; next: number} | null {
  for (const {id, phrases} of systemPhrases) {
    const next = phrases.match(view.words, at, end)
    if (next > 0) return {id, next}
  }
  return null
}

/** The measure at `at` after an amount; words that say how it is filled, or whose it is, are passed and noted. */
function readMeasure(
  view: View,
  at: number,
  end: number,
  figure: boolean,
  notes: string[],
): {id: string; dimension: Measure['dimension']; start: number; next: number} | null {
  const {words, bits, tokens} = view
  let i = at
  let most = at + 4
  const passed: string[] = []
  while (i < end && i < most) {
    const system = systemHere(view, i, end)
    if (system !== null) {
      passed.push(system.id)
      most += system.next - i
      i = system.next
      continue
    }
    if (words[i] === 't' && figure) {
      // A capital T is the table's spoon, a small one the tea's: the usage of American receipts.
      return {id: tokens[i]!.capital ? 'tablespoon' : 'teaspoon', dimension: 'volume', start: i, next: i + 1}
    }
    const found = measureHere(view, i)
    if (found !== null && found.next <= end) {
      const {row} = found
      // "Half a quartern loaf": a measure's word that is part of what a loaf is called.
      const called = itemHere(view, i)
      if (called !== null && called.next > found.next && called.next <= end && called.row.group === 'bread') return null
      // "a dose of senna tea": the English word, and no German tin.
      if (words[i] === 'dose' && words[found.next] === 'of') return null
      const usable =
        row.dimension === 'mass' || row.dimension === 'volume' || row.dimension === 'count' || row.dimension === 'money'
      if (
        usable &&
        row.id !== 'count' &&
        row.id !== 'indefinite' &&
        !(isShort(view, i, found.next) && !figure) &&
        !(words[i] === 'in')
      ) {
        let {id} = row
        // A large, great or (heaped) big spoonful was the table's: 1820–1880 books say so in their tables of measures.
        if (id === 'spoon' && passed.some((w) => w === 'large' || w === 'great' || w === 'big')) id = 'tablespoon'
        let next = found.next
        if (words[next] === 'full' && next < end && words[next + 1] === 'of') next++
        notes.push(...passed)
        return {id, dimension: row.dimension, start: i, next}
      }
      if (!(bits[i]! & FILLING)) return null
    }
    if (!(bits[i]! & FILLING)) return null
    passed.push(words[i]!)
    i++
  }
  return null
}

/** A number of pieces no more than so many times the measure, and more than its weight allows, is of the measure: "a pound or two of plums". */
const MOST_TIMES = 4
/** Pieces that weigh between half and twice the measure are the same amount, told by another way. */
const LIKE_WEIGHT = 2
const GRAMS_PER_POUND = lookUpMeasure('pound')!.sizes[0]!.size.likely

/**
 * "One pound or ten eggs": where the second number is one of pieces, told in place of the measure, and no greater number of measures.
 *
 * @param second the number behind "or", which has no measure of its own
 * @param low how many of the measure stand before "or"
 * @returns the token after the pieces' name; −1 where it is no such number
 */
function countInstead(view: View, second: One, end: number, low: Exact, measure: string): number {
  if (second.next >= end || second.value.value < 2) return -1
  const item = itemHere(view, second.next) ?? (second.next + 1 < end ? itemHere(view, second.next + 1) : null)
  const piece = item?.row.pieces.find((one) => one.measure === 'count')
  if (item === null || piece === undefined) return -1
  const share = ratio(measure, 'pound')
  if (share !== null) {
    const times = (second.value.value * piece.grams.likely) / (low.value * share.value * GRAMS_PER_POUND)
    if (times >= 1 / LIKE_WEIGHT && times <= LIKE_WEIGHT) return item.next
  }
  return second.value.value >= MOST_TIMES * low.value ? item.next : -1
}

/** An alternative in brackets or after a slash: "(250 g)", "/ 9 oz". Returns the token after it, else `at`. */
export function pastAlternative(view: View, at: number, end: number, notes: string[]): number {
  const {words, tokens} = view
  let i = at
  if (words[i] === '(') {
    let close = i + 1
    while (close < end && close - i < 14 && words[close] !== ')') close++
    if (words[close] !== ')' || close >= end) return at
    let start = i + 1
    const hedges: string[] = []
    start = skipHedges(view, start, close, hedges)
    while (start < close && (words[start] === 'or' || words[start] === '=' || words[start] === 'a')) start++
    const amount = one(view, start, close)
    if (amount === null || readMeasure(view, amount.next, close, amount.figure, []) === null) return at
    notes.push(view.section.source.slice(tokens[i]!.start, tokens[close]!.end))
    return close + 1
  }
  while (words[i] === '/' || words[i] === '=') {
    const amount = one(view, i + 1, end)
    if (amount === null) return i
    const measure = readMeasure(view, amount.next, end, true, [])
    if (measure === null) return i
    notes.push(view.section.source.slice(tokens[i + 1]!.start, tokens[measure.next - 1]!.end))
    i = measure.next
    // "1 lb 2 oz" after the slash
    const more = one(view, i, end)
    if (more?.figure) {
      const small = readMeasure(view, more.next, end, true, [])
      if (small !== null && ratio(small.id, measure.id) !== null) i = small.next
    }
  }
  return i
}

/** An amount without a measure. Built field by field: this is made for every number of a text. */
const pieces = (amount: Amount, low: Exact, high: Exact, next: number, article: boolean): Quantity => ({
  low,
  high,
  next,
  hedges: amount.hedges,
  article,
  fraction: amount.fraction,
  figure: amount.figure,
  measure: 'count',
  dimension: 'count',
  measureText: '',
  measureStart: amount.next,
  notes: [],
})

/**
 * An amount with its measure at token `at`: "two pounds and a half", "1 lb. 4 oz.", "a spoonful or two", "half a pint to a pint",
 * "2 cups (250 g)". Without a measure the amount counts pieces.
 */
export function readQuantity(view: View, at: number, end: number, known?: Amount): Quantity | null {
  const amount = known ?? readAmount(view, at, end)
  if (amount === null) return null
  const {words, tokens} = view
  const fillings: string[] = []
  const notes: string[] = []
  let {low, high} = amount
  const measure = readMeasure(view, amount.next, end, amount.figure, fillings)
  // "1 (14-oz) can", "2 400 g tins": the weight of one, so many times.
  if (!amount.article && (measure === null || measure.id === 'tin')) {
    let i = amount.next
    const open = words[i] === '('
    if (open) i++
    const weight = i < end && tokens[i]?.kind === 'number' ? one(view, i, end) : null
    if (weight !== null) {
      const unit = readMeasure(view, weight.next, end, true, [])
      if (unit !== null && (unit.dimension === 'mass' || unit.dimension === 'volume')) {
        let j = unit.next
        while (j < end && open && words[j] !== ')' && j - unit.next < 8) j++
        if (!open || words[j] === ')') {
          if (open) j++
          const container = readMeasure(view, j, end, true, [])
          if (container !== null && container.dimension === 'count') {
            const note = view.section.source.slice(tokens[at]!.start, tokens[container.next - 1]!.end)
            return {
              low: low.times(weight.value),
              high: high.times(weight.value),
              next: container.next,
              hedges: amount.hedges,
              article: false,
              fraction: false,
              figure: true,
              measure: unit.id,
              dimension: unit.dimension,
              measureText: textOf(view, unit.start, unit.next),
              measureStart: unit.start,
              notes: [note],
            }
          }
        }
      }
    }
  }
  if (measure === null) {
    return pieces(amount, low, high, amount.next, amount.article)
  }
  if (measure.id === 'pair') {
    const next = words[measure.next] === 'of' ? measure.next + 1 : measure.next
    return pieces(amount, low.times(Exact.of(2)), high.times(Exact.of(2)), next, false)
  }
  const measureText = textOf(view, measure.start, measure.next)
  const hedges = fillings.length === 0 && amount.hedges.length === 0 ? [] : [...amount.hedges, ...fillings]
  let next = measure.next
  let {article} = amount
  const add = (value: Exact): void => {
    low = low.plus(value)
    high = high.plus(value)
  }
  // Stacked: "and five ounces", "3 oz.", "and a half", "minus 2 tbsp".
  for (let turns = 0; turns < 3; turns++) {
    const word = words[next]
    const less = word === 'minus' || word === 'less'
    const joined = less || word === 'and' || word === '&' || word === 'plus' || word === '+'
    const from = joined ? next + 1 : next
    if (next >= end) break
    if (joined || tokens[next]!.kind === 'number') {
      const more = one(view, from, end)
      if (more !== null) {
        const unit = readMeasure(view, more.next, end, more.figure, [])
        if (unit !== null) {
          const share = ratio(unit.id, measure.id)
          if (share !== null) {
            const value = more.value.times(share)
            if (
              value.value < 1 &&
              (unit.id !== measure.id || more.value.value < 1) &&
              (RATIOS[unit.id]?.[0] !== 'spoons' || more.figure)
            ) {
              add(less ? value.times(Exact.of(-1)) : value)
              next = unit.next
              article = false
              continue
            }
          }
          break
        }
      }
      const half = andFraction(view, next, end)
      if (half !== null) {
        add(half.value)
        next = half.next
        article = false
      }
    }
    break
  }
  // "a pint (imperial)"
  const system = words[next] === '(' ? systemHere(view, next + 1, end) : null
  if (system !== null && words[system.next] === ')' && system.next < end) {
    hedges.push(system.id)
    next = system.next + 1
  }
  next = pastAlternative(view, next, end, notes)
  // "a pound, more or less, of sugar"
  const apart = words[next] === ',' ? next + 1 : next
  if (words[apart] === 'more' && words[apart + 1] === 'or' && words[apart + 2] === 'less' && apart + 2 < end) {
    hedges.push('more or less')
    next = apart + 3
    if (words[next] === ',' && words[next + 1] === 'of') next++
  }
  // A range after the measure: "or two", "to a pint and a half", "or three pints".
  let k = next
  if (words[k] === ',' && words[k + 1] === 'or') k++
  const sign = words[k]
  if (k + 1 < end && (sign === 'or' || sign === 'to' || sign === 'bis' || sign === '-' || sign === '—')) {
    const tail: string[] = []
    let from = k + 1
    const rest = words[from]
    if (
      sign === 'or' &&
      (rest === 'more' || rest === 'so' || rest === 'less' || rest === 'thereabout' || rest === 'thereabouts')
    ) {
      hedges.push(`or ${rest}`)
      next = from + 1
    } else {
      from = skipHedges(view, from, end, tail)
      const second = one(view, from, end)
      if (second !== null) {
        const unit = readMeasure(view, second.next, end, second.figure, [])
        const counted = unit === null && sign === 'or' && !second.article
        const instead = counted ? countInstead(view, second, end, low, measure.id) : -1
        if (unit !== null) {
          const share = ratio(unit.id, measure.id)
          let value = share === null ? null : second.value.times(share)
          let stop = unit.next
          if (value !== null) {
            const half = andFraction(view, stop, end)
            if (half !== null && share !== null) {
              value = value.plus(half.value.times(share))
              stop = half.next
            }
            if (value.value > high.value) {
              high = value
              next = stop
              hedges.push(...tail)
            } else if (sign === 'or' && value.value < low.value) {
              low = value
              next = stop
            } else if (sign === 'or' && unit.id !== measure.id) {
              // "half a pound or eight ounces"
              notes.push(view.section.source.slice(tokens[from]!.start, tokens[stop - 1]!.end))
              next = stop
            }
          } else if (sign === 'or' && unit.dimension === measure.dimension && unit.dimension !== 'count') {
            notes.push(view.section.source.slice(tokens[from]!.start, tokens[unit.next - 1]!.end))
            next = unit.next
          }
        } else if (instead > 0) {
          notes.push(view.section.source.slice(tokens[from]!.start, tokens[instead - 1]!.end))
          next = second.next
        } else if (!second.article && second.value.value > high.value) {
          const after = words[second.next]
          const closes = second.next >= end || after === 'of' || tokens[second.next]!.kind === 'mark' || sign !== 'to'
          if (closes) {
            high = second.value
            next = second.next
            hedges.push(...tail)
          }
        }
      }
    }
  }
  next = pastAlternative(view, next, end, notes)
  return {
    low,
    high,
    next,
    hedges,
    article,
    fraction: amount.fraction,
    figure: amount.figure,
    measure: measure.id,
    dimension: measure.dimension,
    measureText,
    measureStart: measure.start,
    notes,
  }
}

/** The source's own words from token `from` up to token `to`. */
export const textOf = (view: View, from: number, to: number): string =>
  from >= to ? '' : view.section.source.slice(view.tokens[from]!.start, view.tokens[to - 1]!.end)
