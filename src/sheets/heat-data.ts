import type {Band} from '../lexicon/schema.js'
import type {Reading, ReadingKind} from '../oven/types.js'
import {withoutBatch} from '../plan/batches.js'
import {loadedAt} from '../plan/longer.js'
import {depthOf, type StandsAt, standsAt, withVessels} from '../plan/stands-at.js'
import type {Load, Plan, PlanProblem, Step} from '../plan/types.js'
import {slug, slugOf} from '../scale/slug.js'
import type {Placed} from '../scale/types.js'

/** A dish as a bar under the curve, minutes after midnight. */
export interface Bar {
  readonly number: number
  readonly label: string
  readonly from: number
  /** The likely draw, and between what times it may come. */
  readonly to: number
  readonly drawLow: number
  readonly drawHigh: number
}

/** A reading shown on the curve: minutes after midnight, °C. */
export interface ReadingMark {
  readonly at: number
  readonly celsius: number
  readonly kind: ReadingKind
}

/** The four bands of baking temperature, °C (the design's table; trade words, common practice, no source). */
export const bands: ReadonlyArray<{readonly band: Band; readonly low: number; readonly high: number}> = [
  {band: 'hot', low: 205, high: 260},
  {band: 'moderate', low: 163, high: 205},
  {band: 'slow', low: 121, high: 163},
  {band: 'slack', low: 79, high: 121},
]

/** A forecast's value at a clock time, linear between samples; `lit` is its time 0, minutes after midnight. */
export function valueAt(values: readonly number[], step: number, lit: number, at: number): number {
  const place = (at - lit) / step
  const i = Math.max(0, Math.min(values.length - 1, Math.floor(place)))
  const next = Math.min(values.length - 1, i + 1)
  const share = Math.max(0, Math.min(1, place - i))
  return values[i]! * (1 - share) + values[next]! * share
}

/** One dish of one load, with its number on the day sheet, the map and the chart. */
export interface Numbered {
  readonly number: number
  readonly load: number
  readonly id: string
  readonly title: string
  readonly vessel: string
  readonly count: number
  readonly from: number
  readonly draw: {readonly low: number; readonly likely: number; readonly high: number}
  readonly celsiusIn: {readonly low: number; readonly likely: number; readonly high: number}
  readonly celsiusOut: {readonly low: number; readonly likely: number; readonly high: number}
  readonly zone: StandsAt
  /** Its vessels on the floor. */
  readonly placed: readonly Placed[]
}

/**
 * The name of a dish on the sheets: as the day's list calls it, which is shorter than an old receipt's heading; where one file gave
 * several dishes of different titles, the receipt's own.
 */
export function dishTitle(problem: PlanProblem, id: string): string {
  const dish = problem.dishes.find((other) => other.id === id)
  if (!dish) {
    // A spare receipt that was only suggested is no dish of the problem; its file is called by its id, or its title where a file holds several.
    const base = id.replace(/-\d+$/, '')
    const named = (file: string): string => slug(slugOf(file))
    const spare =
      problem.day.spare.find(({file}) => named(file) === id) ??
      problem.day.spare.find(({file, title}) => named(file) === base || slug(title) === base || slug(title) === id)
    return spare && spare.title !== '' ? spare.title : id
  }
  const alone = problem.dishes.every((other) => other.file !== dish.file || other.title === dish.title)
  const item = [...problem.day.items, ...problem.day.spare].find((other) => other.file === dish.file)
  return alone && item && item.title !== '' ? item.title : dish.title
}

/** The name of a receipt on the sheets of a day: its dish's, or its own title. */
export function receiptName(problem: PlanProblem, receipt: {readonly file: string; readonly title: string}): string {
  // A dish's id is made of its file's name, or of the receipt's title where the file holds several (scale/linked-receipt.ts).
  const names = [slug(receipt.title), slug(slugOf(receipt.file))]
  const same = problem.dishes.filter((other) => other.file === receipt.file)
  const dish =
    same.find((other) => other.title === receipt.title) ??
    same.find((other) => names.some((name) => other.id === name || other.id.startsWith(`${name}-`)))
  if (dish) return withoutBatch(dishTitle(problem, dish.id))
  const items = [...problem.day.items, ...problem.day.spare].filter((item) => item.file === receipt.file && item.title !== '')
  return items.length === 1 && !problem.dishes.some((other) => other.file === receipt.file) ? items[0]!.title : receipt.title
}

/** A name in at most `most` letters, the last of them “…” where some are left out. */
export function shortened(text: string, most: number): string {
  if (text.length <= most) return text
  return most < 2 ? '' : `${text.slice(0, most - 1).trimEnd()}…`
}

/** Numbers the dishes of the day in the order they go in, back before mouth: the order of the work. */
export function numbered(plan: Plan, problem: PlanProblem): Numbered[] {
  const out: Numbered[] = []
  for (const load of [...plan.loads].sort((a, b) => a.at - b.at || a.number - b.number)) {
    const rows = together(load.dishes).map((entry) => {
      const dish = problem.dishes.find(({id}) => id === entry.dish)
      const placed = withVessels(load)
        .filter((one) => one.entry.dish === entry.dish && one.entry.draw.likely === entry.draw.likely)
        .flatMap(({vessels}) => vessels)
      const stands = standsAt(load, entry.dish, entry.draw.likely)
      const zone = stands === 'any' ? (dish?.place ?? stands) : stands
      const y = placed.length > 0 ? placed.reduce((sum, item) => sum + item.y, 0) / placed.length : 0
      return {entry, dish, zone, y, placed}
    })
    rows.sort((a, b) => depthOf(a.zone) - depthOf(b.zone) || b.y - a.y)
    for (const {entry, dish, zone, placed} of rows)
      out.push({
        number: out.length + 1,
        load: load.number,
        id: entry.dish,
        title: dishTitle(problem, entry.dish),
        vessel: dish?.vessel.name ?? '',
        count: entry.count,
        from: load.at,
        draw: entry.draw,
        celsiusIn: entry.celsiusIn,
        celsiusOut: entry.celsiusOut,
        zone,
        placed,
      })
  }
  return out
}

/** When a load was set in, minutes after midnight: its hour, unless all of it is reckoned to want longer than that tells. */
export function setInAt({at, dishes}: Plan['loads'][number], {done}: PlanProblem): number {
  return Math.max(...dishes.map(({dish}) => loadedAt(at, dish, done)))
}

/**
 * The numbered dishes a load or a draw is about. A draw may empty places of several loads; of a dish in two batches it means the one
 * whose draw is then.
 */
export function concerned(step: Step, dishes: readonly Numbered[]): Numbered[] {
  if (step.action === 'load') return dishes.filter((dish) => step.dishes.includes(dish.id) && dish.load === step.load)
  if (step.action !== 'draw') return []
  return dishes.filter((dish) => step.dishes.includes(dish.id) && Math.abs(dish.draw.likely - step.at) < 1)
}

/** Vessels of one dish set in and drawn together are one number, whatever parts the planner took them in. */
function together(entries: Load['dishes']): Load['dishes'] {
  const alike = new Map<string, Load['dishes'][number]>()
  for (const entry of entries) {
    const key = `${entry.dish} ${entry.draw.likely}`
    const before = alike.get(key)
    alike.set(
      key,
      before
        ? {
            ...before,
            count: before.count + entry.count,
            draw: {
              ...before.draw,
              low: Math.min(before.draw.low, entry.draw.low),
              high: Math.max(before.draw.high, entry.draw.high),
            },
          }
        : entry,
    )
  }
  return [...alike.values()]
}

/** A fire of the day, minutes after midnight. */
export interface FireMark {
  readonly lit: number
  readonly raked: number
  readonly ready: number
}

/** Everything a heat chart draws, in clock minutes and °C. */
export interface ChartData {
  readonly lit: number
  readonly raked: number
  readonly ready: number
  readonly until: number
  /** Every fire of the day; that one alone where absent. */
  readonly fires?: readonly FireMark[]
  readonly bars: readonly Bar[]
  readonly openings: readonly number[]
  readonly readings: readonly ReadingMark[]
}

/** The chart of a plan: ends half an hour after the last draw. */
export function chartData(plan: Plan, problem: PlanProblem, readings: readonly Reading[] = []): ChartData {
  const dishes = numbered(plan, problem)
  const draws = dishes.map(({draw}) => draw.likely)
  const last = plan.lit + (plan.forecast.baking.likely.length - 1) * plan.forecast.step
  return {
    ...(plan.fires ? {fires: plan.fires} : {}),
    lit: plan.lit,
    raked: plan.raked,
    ready: plan.ready,
    until: Math.min(last, Math.max(plan.ready + 240, ...draws.map((at) => at + 30))),
    bars: dishes.map((dish) => ({
      number: dish.number,
      label: `${dish.number} ${dish.title}`,
      from: dish.from,
      to: dish.draw.likely,
      drawLow: dish.draw.low,
      drawHigh: dish.draw.high,
    })),
    openings: openings(plan),
    readings: thermometer(readings, plan.lit),
  }
}

/** When the door is opened: each load and each draw, once a minute. */
export function openings(plan: Plan): number[] {
  const times = new Set<number>()
  for (const load of plan.loads) {
    times.add(Math.round(load.at))
    for (const dish of load.dishes) times.add(Math.round(dish.draw.likely))
  }
  return [...times].sort((a, b) => a - b)
}

/** Readings of a thermometer: the only ones that are points on the curve. */
function thermometer(readings: readonly Reading[], lit: number): ReadingMark[] {
  return readings
    .filter((reading) => typeof reading.value === 'number' && ['floor', 'vault', 'air', 'probe'].includes(reading.kind))
    .map((reading) => ({at: lit + reading.minutes, celsius: Number(reading.value), kind: reading.kind}))
}
