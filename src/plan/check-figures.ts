import type {Dish, Placed} from '../scale/types.js'
import type {Report} from './check.js'
import type {Shares} from './check-floor.js'
import {type Doses, edges, type Heat, type Part} from './check-heat.js'
import {rules, zoneNames} from './rules.js'
import type {Load, Plan} from './types.js'

/** The checker's rules for what is said of each set-in and draw: its numbers, its part of the floor, its heats, and when it may be done. */

/** °C and minutes that are rounding, not a break. */
const celsiusOff = 0.6
const minutesOff = 2 * rules.tick

/** What the checker reads off the plan's curve. */
export interface Curves {
  readonly heat: Heat
  readonly doses: Doses
  readonly shares: Shares
  /** The dose, °C·min, of so many minutes by a dish's receipt. */
  readonly needed: (dish: Dish, minutes: number) => number
}

/** @param bad called for each rule that is broken */
export function checkFigures(
  plan: Plan,
  dishes: ReadonlyMap<string, Dish>,
  {heat, doses, needed}: Omit<Curves, 'shares'>,
  bad: Report,
): void {
  const numbers = new Set<string>()
  for (const [i, load] of plan.loads.entries()) {
    if (load.number !== i + 1 || load.at < (plan.loads[i - 1]?.at ?? load.at))
      bad('count', null, load.at, 0, `load ${load.number}: not numbered as it is set in`)
    for (const {dish: id, number} of load.placed) {
      const title = dishes.get(id)?.title ?? id
      if (numbers.has(`${id} ${number}`)) bad('count', id, load.at, 0, `${title}: two vessels with the number ${number}`)
      numbers.add(`${id} ${number}`)
    }
    const passed = new Map<string, number>()
    for (const entry of load.dishes) {
      const dish = dishes.get(entry.dish)
      if (!dish) continue
      const skip = passed.get(entry.dish) ?? 0
      passed.set(entry.dish, skip + entry.count)
      const mine = load.placed.filter((p) => p.dish === entry.dish).slice(skip, skip + entry.count)
      const zones = new Set(mine.map((p) => p.zone))
      checkPart(dish, load, entry, zones, bad)
      checkHeats(dish, load, entry, heat, bad)
      checkRange(dish, load, entry, {doses, needed, end: heat.end}, bad)
    }
  }
}

type Entry = Load['dishes'][number]

/** What stands in one part of the floor is said to stand there, and what stands in more across it. */
function checkPart({id, title}: Dish, {at}: Load, {zone}: Entry, zones: ReadonlySet<Placed['zone']>, bad: Report): void {
  if (zone === undefined || zones.size === 0) return
  const [only] = zones
  const is = zones.size === 1 ? only! : 'across'
  if (zone !== is)
    bad(
      'zone',
      id,
      at,
      0,
      zone === 'across'
        ? `${title}: said to stand across the floor, but not there`
        : `${title}: said to stand at the ${zone}, but not there`,
    )
}

/** The heats that are said are those of the plan's own curve. */
function checkHeats(
  {id, title}: Dish,
  {at}: Load,
  {zone = 'across', draw, celsiusIn, celsiusOut}: Entry,
  heat: Heat,
  bad: Report,
): void {
  for (const [said, clock, what] of [
    [celsiusIn, at, 'set in'],
    [celsiusOut, draw.likely, 'drawn'],
  ] as const) {
    const off = edges.map((edge) => said[edge] - heat.inZone(zone, clock, edge)).find((by) => !(Math.abs(by) <= celsiusOff))
    if (off === undefined) continue
    const reason = `${title}: ${what} at ${Math.round(said.likely)} °C, it is said; by the curve at ${Math.round(heat.inZone(zone, clock))} °C`
    bad('forecast', id, clock, off, reason)
  }
}

/** When it may be done in an oven as hot, and as cool, as it may be. */
function checkRange(
  dish: Dish,
  {at}: Load,
  {draw}: Entry,
  {doses, needed, end}: Pick<Curves, 'doses' | 'needed'> & {readonly end: number},
  bad: Report,
): void {
  const {id, title, need} = dish
  const dose = needed(dish, need.enough ?? need.minutes.likely)
  // What is not done by then is told to be looked at till the forecast ends.
  const longest = Math.min(end, rules.lastLook, draw.likely + Math.min(rules.lookAgain, Math.max(20, need.minutes.likely)))
  // The part of the floor that the search had in mind need not be where its vessels came to stand.
  const parts: readonly Part[] = [...zoneNames, 'across']
  const by = parts.map((part) => {
    const done = (edge: (typeof edges)[number], share: number, until: number): number =>
      doses.reached(part, edge, need.done, at, share * dose, until)
    const usual = done('likely', 1, draw.likely)
    const soonest = Math.min(draw.likely, Math.max(done('high', 1, draw.likely), done('likely', rules.firstLook, draw.likely)))
    return {
      // What only waits to be drawn is looked at when it is drawn.
      waits: draw.likely - usual,
      low: soonest,
      high: Math.max(draw.likely, Math.min(done('low', 1, longest), longest)),
    }
  })
  const lows = by.flatMap(({low, waits}) => [
    ...(waits > 2 * rules.tick - minutesOff ? [draw.likely] : []),
    ...(waits <= 2 * rules.tick + minutesOff ? [low] : []),
  ])
  const highs = by.map(({high}) => high)
  const beyond = (said: number, all: readonly number[]): number =>
    Math.max(0, Math.min(...all) - minutesOff - said, said - Math.max(...all) - minutesOff)
  const off = Math.max(beyond(draw.low, lows), beyond(draw.high, highs))
  if (off > 0) bad('draw range', id, draw.likely, off, `${title}: done ${Math.round(off)} min outside the range that is told`)
}
