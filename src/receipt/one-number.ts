import {bundles, cardinals, fractions} from '../lexicon/grammar-words.js'
import {Exact, HALF, ONE} from './exact.js'
import {ARTICLE, BUNDLE, CARDINAL, FILLING, FRACTION, measureHere, VERB, type View} from './view.js'

/** One number of a text, without a range. */
export interface One {
  readonly value: Exact
  readonly next: number
  readonly article: boolean
  readonly figure: boolean
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
export function andFraction(view: View, at: number, end: number): {value: Exact; next: number} | null {
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
export function one(view: View, at: number, end: number): One | null {
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
