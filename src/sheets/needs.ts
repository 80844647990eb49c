import {kinds} from '../lexicon/kinds.js'
import type {Band, Range} from '../lexicon/schema.js'
import type {Plan, PlanProblem} from '../plan/types.js'
import type {OvenPhrase, Receipt} from '../receipt/types.js'
import {safeCentre, signWithCentre} from '../scale/core-heat.js'
import {heatNeed} from '../scale/need.js'
import type {Dish} from '../scale/types.js'
import {bands, type Numbered, numbered, valueAt} from './heat-data.js'

/** What a receipt asks of an oven, for its handout. */
export interface Asked {
  readonly band: Band
  /** Baking temperature it is set in at, °C. */
  readonly start: {readonly low: number; readonly best: number; readonly high: number}
  /** The figures for a home oven, °C: the receipt's own words where it has any. */
  readonly home: {readonly low: number; readonly high: number}
  readonly minutes: Range
  readonly falling: boolean
  /** Its receipt's time is of an oven that holds its heat. */
  readonly held?: true
  readonly overnight: boolean
  /** Minutes from setting in that the receipt wants the door kept shut. */
  readonly closed?: Range
  /** The receipt wants the door left a little open, in these words. */
  readonly ajar?: string
  readonly place: Dish['place']
  readonly sign: string
  /** The vessel its own time is of. */
  readonly vessel: string
  /** The vessel it is baked in on the day, where that is another, and how that changes its time. */
  readonly today?: {readonly vessel: string; readonly times: Dish['sized']}
  /** True where the receipt itself says the heat; else it is ours. */
  readonly said: boolean
  readonly phrase: OvenPhrase | null
}

/** The dishes of the day made from a receipt. */
export function dishesOf(receipt: Receipt, problem: PlanProblem): Dish[] {
  const same = problem.dishes.filter((dish) => sameFile(dish.file, receipt.file))
  const titled = same.filter((dish) => dish.title === receipt.title)
  return titled.length > 0 ? titled : same
}

/** Two paths to one file, one perhaps with the folder before it. */
export function sameFile(one: string, other: string): boolean {
  const [a, b] = [one.replaceAll('\\', '/').replace(/^\.\//, ''), other.replaceAll('\\', '/').replace(/^\.\//, '')]
  return a === b || a.endsWith(`/${b}`) || b.endsWith(`/${a}`)
}

/** The band whose middle is nearest to a temperature. */
export function bandOf(celsius: number): Band {
  const away = (band: (typeof bands)[number]): number => Math.abs(celsius - (band.low + band.high) / 2)
  return bands.reduce((best, band) => (away(band) < away(best) ? band : best)).band
}

/** What the receipt asks: its dish's need on the day, else its kind's row; null where nothing is known of it. */
export function asked(receipt: Receipt, problem: PlanProblem): Asked | null {
  const phrase = receipt.oven.find(({against}) => against !== true) ?? null
  const dish = dishesOf(receipt, problem)[0]
  const kind = kinds.find(({id}) => id === receipt.kind) ?? null
  const bake = receipt.times.filter((time) => time.of === 'bake')
  // Of several baking times ("a quarter of an hour" for the crust first) the longest is the bake.
  const longest = bake.reduce<(typeof bake)[number] | null>(
    (best, time) => (best === null || time.minutes.high > best.minutes.high ? time : best),
    null,
  )
  const minutes = longest
    ? {low: longest.minutes.low, likely: (longest.minutes.low + longest.minutes.high) / 2, high: longest.minutes.high}
    : (dish?.need.minutes ?? kind?.minutes ?? null)
  if (dish) {
    const {need, ownVessel} = dish
    const times = dish.sized.filter(({field}) => field === 'time')
    return {
      band: phrase?.band ?? bandOf(need.startBest),
      start: {low: need.startLow, best: need.startBest, high: need.startHigh},
      home: phrase ? phrase.celsius : {low: need.reference - 10, high: need.reference + 10},
      minutes: minutes ?? need.minutes,
      falling: need.falling,
      ...(need.held ? {held: true as const} : {}),
      overnight: need.overnight,
      ...(need.closed === undefined ? {} : {closed: need.closed}),
      ...(dish.ajar === undefined ? {} : {ajar: dish.ajar}),
      place: dish.place,
      sign: dish.sign,
      vessel: ownVessel ?? dish.vessel.name,
      ...(ownVessel === undefined && times.length === 0 ? {} : {today: {vessel: dish.vessel.name, times}}),
      said: phrase !== null,
      phrase,
    }
  }
  if (!kind && !phrase) return null
  const middle = phrase ? (phrase.celsius.low + phrase.celsius.high) / 2 : kind!.start.best
  // Not baked today, it asks for the same heat as if it were.
  const need = kind && phrase ? heatNeed(receipt, kind, kind.title).need : null
  return {
    band: phrase?.band ?? kind!.band,
    start: need
      ? {low: need.startLow, best: need.startBest, high: need.startHigh}
      : (kind?.start ?? {low: phrase!.celsius.low, best: middle, high: phrase!.celsius.high}),
    home: phrase ? phrase.celsius : {low: kind!.start.best - 10, high: kind!.start.best + 10},
    minutes: minutes ?? {low: 30, likely: 45, high: 60},
    falling: kind?.falling ?? false,
    ...(need?.held ? {held: true as const} : {}),
    overnight: kind?.overnight ?? false,
    ...(kind?.dry === true && receipt.ajar !== undefined ? {ajar: receipt.ajar.text.replace(/\s+/g, ' ')} : {}),
    place: kind?.place ?? 'any',
    sign: signWithCentre(kind?.sign ?? '', safeCentre(receipt, kind ?? {})),
    vessel: receipt.facts.vessel ?? kind?.vessel ?? '',
    said: phrase !== null,
    phrase,
  }
}

/** A stretch of the day, minutes after midnight. */
interface Span {
  readonly from: number
  readonly to: number
}

const lengthOf = ({from, to}: Span): number => to - from

/**
 * When the likely curve, after the soak, is inside a start range for longest: minutes after midnight; null where it never is. A load takes
 * heat that comes back in part, so the curve may be inside it for a moment before it is there for good.
 */
export function windowOf(plan: Plan, start: {readonly low: number; readonly high: number}): Span | null {
  const {forecast} = plan
  let longest: Span | null = null
  let from: number | null = null
  const last = plan.lit + (forecast.baking.likely.length - 1) * forecast.step
  for (let minute = plan.ready; minute <= last; minute += forecast.step) {
    const celsius = valueAt(forecast.baking.likely, forecast.step, plan.lit, minute)
    from = celsius <= start.high && celsius >= start.low ? (from ?? minute) : null
    if (from !== null && (longest === null || minute - from > lengthOf(longest))) longest = {from, to: minute}
  }
  return longest
}

/** Where a receipt's dishes stand in the plan. */
export function placesInPlan(receipt: Receipt, plan: Plan, problem: PlanProblem): Numbered[] {
  const ids = new Set(dishesOf(receipt, problem).map((dish) => dish.id))
  return numbered(plan, problem).filter((entry) => ids.has(entry.id))
}

/** The regulo scale: mark 1 is 275 °F and each mark 25 °F more (common practice, no source). Null below mark 1 or over 10. */
export function gasMark(celsius: number): number | null {
  const mark = Math.round(((celsius * 9) / 5 + 32 - 250) / 25)
  return mark >= 1 && mark <= 10 ? mark : null
}

/** A receipt that gives its heat in figures is a modern one. */
export function isModern(receipt: Receipt): boolean {
  if (receipt.year !== null && receipt.year < 1900) return false
  return receipt.oven.some((phrase) => /\d/.test(phrase.text))
}
