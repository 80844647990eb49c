import type {Measure} from '../lexicon/schema.js'
import {type Amount, readAmount, skipHedges} from './amounts.js'
import {Exact} from './exact.js'
import {isSpoons, ratio} from './fixed-ratios.js'
import {readMeasure, systemHere} from './named-measure.js'
import {andFraction, one} from './one-number.js'
import {countInstead, pastAlternative} from './told-otherwise.js'
import {textOf, type View} from './view.js'

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

/** "1 (14-oz) can", "2 400 g tins" behind an amount: the weight of one, so many times. */
function weightOfOne(view: View, at: number, end: number, amount: Amount): Quantity | null {
  const {words, tokens} = view
  const open = words[amount.next] === '('
  const from = open ? amount.next + 1 : amount.next
  const weight = from < end && tokens[from]?.kind === 'number' ? one(view, from, end) : null
  const unit = weight === null ? null : readMeasure(view, weight.next, end, true, [])
  if (weight === null || unit === null || (unit.dimension !== 'mass' && unit.dimension !== 'volume')) return null
  let i = unit.next
  while (i < end && open && words[i] !== ')' && i - unit.next < 8) i++
  if (open && words[i] !== ')') return null
  const container = readMeasure(view, open ? i + 1 : i, end, true, [])
  if (container === null || container.dimension !== 'count') return null
  return {
    low: amount.low.times(weight.value),
    high: amount.high.times(weight.value),
    next: container.next,
    hedges: amount.hedges,
    article: false,
    fraction: false,
    figure: true,
    measure: unit.id,
    dimension: unit.dimension,
    measureText: textOf(view, unit.start, unit.next),
    measureStart: unit.start,
    notes: [view.section.source.slice(tokens[at]!.start, tokens[container.next - 1]!.end)],
  }
}

/** How many stacked amounts are added at most: "a stone, two pounds and a half". */
const MOST_STACKED = 3

/** What is stacked on an amount of a measure: "and five ounces", "3 oz.", "and a half", "minus 2 tbsp", in that measure. */
function stackedOn(view: View, at: number, end: number, measure: string): {value: Exact; next: number} | null {
  const {words, tokens} = view
  let sum: Exact | null = null
  let next = at
  for (let turns = 0; turns < MOST_STACKED && next < end; turns++) {
    const word = words[next]
    const less = word === 'minus' || word === 'less'
    const joined = less || word === 'and' || word === '&' || word === 'plus' || word === '+'
    if (!joined && tokens[next]!.kind !== 'number') break
    const more = one(view, joined ? next + 1 : next, end)
    const unit = more === null ? null : readMeasure(view, more.next, end, more.figure, [])
    if (more === null || unit === null) {
      const half = andFraction(view, next, end)
      return half === null
        ? sum === null
          ? null
          : {value: sum, next}
        : {value: sum === null ? half.value : sum.plus(half.value), next: half.next}
    }
    const share = ratio(unit.id, measure)
    const value = share === null ? null : more.value.times(share)
    if (
      value === null ||
      value.value >= 1 ||
      (unit.id === measure && more.value.value >= 1) ||
      (isSpoons(unit.id) && !more.figure)
    )
      break
    const added = less ? value.times(Exact.of(-1)) : value
    sum = sum === null ? added : sum.plus(added)
    next = unit.next
  }
  return sum === null ? null : {value: sum, next}
}

/** An amount of a measure as it is widened by what stands behind it. */
interface Widened {
  low: Exact
  high: Exact
  next: number
  readonly hedges: string[]
  readonly notes: string[]
}

/** "a pint (imperial)", "a pound, more or less, of sugar". */
function pastHedgesBehind(view: View, end: number, into: Widened): void {
  const {words} = view
  const system = words[into.next] === '(' ? systemHere(view, into.next + 1, end) : null
  if (system !== null && words[system.next] === ')' && system.next < end) {
    into.hedges.push(system.id)
    into.next = system.next + 1
  }
  into.next = pastAlternative(view, into.next, end, into.notes)
  const apart = words[into.next] === ',' ? into.next + 1 : into.next
  if (words[apart] === 'more' && words[apart + 1] === 'or' && words[apart + 2] === 'less' && apart + 2 < end) {
    into.hedges.push('more or less')
    into.next = apart + 3
    if (words[into.next] === ',' && words[into.next + 1] === 'of') into.next++
  }
}

/** What makes "or more", "or so" of an amount. */
const OR_SO: ReadonlySet<string> = new Set(['more', 'so', 'less', 'thereabout', 'thereabouts'])

/** A range after the measure: "or two", "to a pint and a half", "or three pints". */
function widen(view: View, end: number, measure: string, dimension: Measure['dimension'], into: Widened): void {
  const {words, tokens} = view
  const at = words[into.next] === ',' && words[into.next + 1] === 'or' ? into.next + 1 : into.next
  const sign = words[at]
  if (at + 1 >= end || !(sign === 'or' || sign === 'to' || sign === 'bis' || sign === '-' || sign === '—')) return
  const rest = words[at + 1]!
  if (sign === 'or' && OR_SO.has(rest)) {
    into.hedges.push(`or ${rest}`)
    into.next = at + 2
    return
  }
  const hedges: string[] = []
  const from = skipHedges(view, at + 1, end, hedges)
  const second = one(view, from, end)
  if (second === null) return
  const note = (to: number): void => {
    into.notes.push(view.section.source.slice(tokens[from]!.start, tokens[to - 1]!.end))
  }
  const raise = (high: Exact, next: number): void => {
    into.high = high
    into.next = next
    into.hedges.push(...hedges)
  }
  const unit = readMeasure(view, second.next, end, second.figure, [])
  if (unit !== null) {
    const share = ratio(unit.id, measure)
    if (share === null) {
      if (sign === 'or' && unit.dimension === dimension && unit.dimension !== 'count') {
        note(unit.next)
        into.next = unit.next
      }
      return
    }
    const half = andFraction(view, unit.next, end)
    const value = half === null ? second.value.times(share) : second.value.times(share).plus(half.value.times(share))
    const next = half?.next ?? unit.next
    if (value.value > into.high.value) raise(value, next)
    else if (sign === 'or' && value.value < into.low.value) {
      into.low = value
      into.next = next
    } else if (sign === 'or' && unit.id !== measure) {
      // "half a pound or eight ounces"
      note(next)
      into.next = next
    }
    return
  }
  const instead = sign === 'or' && !second.article ? countInstead(view, second, end, into.low, measure) : -1
  if (instead > 0) {
    note(instead)
    into.next = second.next
  } else if (!second.article && second.value.value > into.high.value) {
    const closes = second.next >= end || words[second.next] === 'of' || tokens[second.next]!.kind === 'mark' || sign !== 'to'
    if (closes) raise(second.value, second.next)
  }
}

/**
 * An amount with its measure at token `at`: "two pounds and a half", "1 lb. 4 oz.", "a spoonful or two", "half a pint to a pint",
 * "2 cups (250 g)". Without a measure the amount counts pieces.
 *
 * @param known the amount there, where it has been read before
 * @returns null where no amount stands there
 */
export function readQuantity(view: View, at: number, end: number, known?: Amount): Quantity | null {
  const amount = known ?? readAmount(view, at, end)
  if (amount === null) return null
  const fillings: string[] = []
  const measure = readMeasure(view, amount.next, end, amount.figure, fillings)
  const weighed = !amount.article && (measure === null || measure.id === 'tin') ? weightOfOne(view, at, end, amount) : null
  if (weighed !== null) return weighed
  if (measure === null) return pieces(amount, amount.low, amount.high, amount.next, amount.article)
  if (measure.id === 'pair') {
    const next = view.words[measure.next] === 'of' ? measure.next + 1 : measure.next
    return pieces(amount, amount.low.times(Exact.of(2)), amount.high.times(Exact.of(2)), next, false)
  }
  const stacked = stackedOn(view, measure.next, end, measure.id)
  const told: Widened = {
    low: stacked === null ? amount.low : amount.low.plus(stacked.value),
    high: stacked === null ? amount.high : amount.high.plus(stacked.value),
    next: stacked?.next ?? measure.next,
    hedges: [...amount.hedges, ...fillings],
    notes: [],
  }
  pastHedgesBehind(view, end, told)
  widen(view, end, measure.id, measure.dimension, told)
  return {
    low: told.low,
    high: told.high,
    next: pastAlternative(view, told.next, end, told.notes),
    hedges: told.hedges,
    article: stacked === null && amount.article,
    fraction: amount.fraction,
    figure: amount.figure,
    measure: measure.id,
    dimension: measure.dimension,
    measureText: textOf(view, measure.start, measure.next),
    measureStart: measure.start,
    notes: told.notes,
  }
}
