import {writeClock, writeDuration} from '../measure/quantity.js'
import type {FiringLog} from '../oven/log.js'
import type {Reading, ReadingKind} from '../oven/types.js'
import type {Message} from '../receipt/types.js'
import type {Dish} from '../scale/types.js'
import {ACROSS, type Curve, celsiusAt, curveOf, doseNeeded, doseTable, mostDose} from './curve.js'
import {eased} from './ease.js'
import {isSlackWork, staysIn} from './keeps.js'
import {lineOf} from './model.js'
import {rules, zoneNames} from './rules.js'
import {placeIn, rowAt} from './told.js'
import type {Plan, PlanProblem} from './types.js'

/** What stands in a cooling oven for longer than is good for it, or for whoever eats it, once the day has begun. */

/** Minutes to its draw from which on food that will not be done is rather taken out at once: as long as it may be lukewarm. */
const LONG = rules.coldMinutes
/** Minutes after a dish was done, for as long as its receipt gives it at most, from which on a draw is asked about. */
const FORGOTTEN = 60

/**
 * Whether a dish goes bad where it is neither hot nor cold: bread, cakes and what is dried keep without warmth; a crock, a pie or a pudding
 * does not.
 */
export function spoils(dish: Pick<Dish, 'keeps' | 'dough' | 'need'>): boolean {
  return dish.keeps !== true && dish.dough === null && !isSlackWork(dish.need)
}

/** A message, and the id of the dish that it is of. */
export interface ToldOf {
  readonly dish: string
  readonly message: Message
}

/**
 * Food of the rest of a day that is, or may be, unsafe to eat for having stood in the oven too cool, and food that would stand there all but
 * raw. Two hours under 57 °C in all is the most (`rules.holdCelsius`, `rules.coldMinutes`).
 *
 * @param plan The plan for the rest of the day.
 * @param log What was read of the oven so far: a reading says more of it than any reckoning.
 * @returns A warning for each such dish: `food-cold` where it is not to be eaten or has to come out before then, `food-raw` where it is to be
 *   taken out and cooked through elsewhere.
 */
export function coldFood(problem: PlanProblem, plan: Plan, log: FiringLog): ToldOf[] {
  const {done, dishes, day, ambient} = problem
  if (!done) return []
  const curve = curveOf(plan.forecast, ambient ?? 20)
  const told = new Set<string>()
  return plan.loads.flatMap((load) =>
    load.dishes.flatMap((entry): ToldOf[] => {
      const dish = dishes.find(({id}) => id === entry.dish)
      if (!dish || entry.alreadyIn !== true || !spoils(dish) || told.has(dish.id)) return []
      const zone = zoneNames.findIndex((name) => name === entry.zone)
      const cold = coldIn(curve, zone < 0 ? ACROSS : zone, load.at - plan.lit)
      const since = (which: 'likely' | 'low', until: number): number => cold(which, until - plan.lit)
      const drawn = entry.draw.likely
      const message = (
        rule: string,
        reason: string,
        suggest: string,
        more: {readonly times?: readonly number[]} = {},
      ): ToldOf[] => {
        told.add(dish.id)
        return [
          {
            dish: dish.id,
            message: {...lineOf(day, dish), severity: 'warning', rule, reason: `${dish.title}: ${reason}`, suggest, ...more},
          },
        ]
      }
      const bad = since('likely', done.now)
      if (bad > rules.coldMinutes)
        return message(
          'food-cold',
          `under 57 °C (135 °F) in the oven for about ${writeDuration(bad)}`,
          'do not eat it, and do not heat it up again',
        )
      // Between two readings the oven may have been as cool as at the later one.
      const warm = coolSince(log, done.now - plan.lit)
      const read = warm === null ? 0 : done.now - plan.lit - Math.max(load.at - plan.lit, warm)
      const maybe = Math.max(since('low', done.now), read)
      if (maybe > rules.coldMinutes)
        return message(
          'food-cold',
          `may have been under 57 °C (135 °F) in the oven for ${writeDuration(maybe)}`,
          'draw it and measure it: under 57 °C (135 °F), do not eat it',
        )
      const enough = doseNeeded(dish.need, eased(dish, 'far').enough) / doseNeeded(dish.need)
      const share = entry.eased?.dose ?? 1
      if (share < enough - 2 * rules.doseWanting && drawn - done.now > LONG)
        return message(
          'food-raw',
          `will have no more than ${Math.floor(100 * share)} % of its heat by ${writeClock(drawn)}`,
          'do not leave it in till then: take it out now, and cook it through on the hob or in another oven',
          {times: [drawn]},
        )
      if (since('likely', drawn) > rules.coldMinutes) {
        const last = lastBefore(cold, done.now - plan.lit, drawn - plan.lit) + plan.lit
        return message(
          'food-cold',
          `will have been under 57 °C (135 °F) for more than two hours by ${writeClock(drawn)}`,
          `draw it by ${writeClock(last)}, and eat it, or cool it quickly`,
          {times: [drawn, last]},
        )
      }
      return []
    }),
  )
}

const isCold = ({kind, value}: Reading): boolean => ofHeat.has(kind) && typeof value === 'number' && value < rules.holdCelsius
const isWarm = ({kind, value}: Reading): boolean => ofHeat.has(kind) && typeof value === 'number' && value >= rules.holdCelsius
/** Kinds of reading that are °C. */
const ofHeat: ReadonlySet<ReadingKind> = new Set(['floor', 'vault', 'air'])

/** When the oven was last read to be warm enough before a minute after lighting; null where it was not read to be cool last. */
function coolSince(log: FiringLog, until: number): number | null {
  const before = log.readings.filter((reading) => reading.minutes <= until)
  const last = before.findLast((reading) => isCold(reading) || isWarm(reading))
  return last && isCold(last) ? Math.max(0, ...before.filter(isWarm).map(({minutes}) => minutes)) : null
}

/**
 * Food that was drawn, or is taken to have been, of which that is not sure to have been in time: drawn by the log from an oven that had been
 * read to be cool for hours; or of which the log says nothing, in an oven that is cool by now.
 *
 * @returns Warnings of rule `food-cold`.
 */
export function coldWhenDrawn({done, dishes, day}: PlanProblem, log: FiringLog): ToldOf[] {
  const {lit} = log
  if (!done || lit === null) return []
  const told = new Set<string>()
  return done.set.flatMap((part): ToldOf[] => {
    const dish = dishes.find(({id}) => id === part.dish)
    const {at, drawn} = part
    if (!dish || drawn === null || part.lost || part.inVain || !spoils(dish) || told.has(dish.id)) return []
    const noted = rowAt(log, 'drawn', drawn, dish) !== undefined
    const until = (noted ? drawn : done.now) - lit
    const warm = coolSince(log, until)
    const cool = warm === null ? 0 : until - Math.max(at - lit, warm)
    if (cool <= rules.coldMinutes) return []
    told.add(dish.id)
    const food = {...lineOf(day, dish), severity: 'warning', rule: 'food-cold'} as const
    const message: Message = noted
      ? {
          ...food,
          reason: `${dish.title}: may have been under 57 °C (135 °F) in the oven for ${writeDuration(cool)} before it was drawn`,
          suggest: 'do not eat it unless it was measured hotter',
        }
      : {
          ...food,
          reason: `${dish.title}: taken to have been drawn at ${writeClock(drawn)}; the log does not tell, and the oven is under 57 °C (135 °F) now`,
          suggest: 'if it is in the oven still, do not eat it',
          times: [drawn],
        }
    return [{dish: dish.id, message}]
  })
}

/** Minutes under 57 °C between a minute after lighting and another, where a dish stands. */
function coldIn(curve: Curve, zone: number, from: number): (which: 'likely' | 'low', until: number) => number {
  return (which, until) => {
    let minutes = 0
    for (let m = from; m < until; m++) if (celsiusAt(curve, zone, m + 0.5, which) < rules.holdCelsius) minutes++
    return minutes
  }
}

/** The last tick between two minutes after lighting by which food has not been cold for too long. */
function lastBefore(cold: ReturnType<typeof coldIn>, from: number, until: number): number {
  let last = Math.ceil(from / rules.tick) * rules.tick
  while (last + rules.tick < until && cold('likely', last + rules.tick) <= rules.coldMinutes) last += rules.tick
  return last
}

/**
 * What the log says was drawn long after it was done: a slip of the pen, or forgotten in the oven.
 *
 * @param problem The rest of the day, on the oven as it was; what has been drawn is in its `done`.
 */
export function drawnLate({done, firings, ambient, dishes}: PlanProblem, log: FiringLog): Message[] {
  const curve = curveOf(firings[0]!.forecast, ambient ?? 20)
  const told = new Set<string>()
  return (done?.set ?? []).flatMap(({dish: id, at, drawn}): Message[] => {
    const dish = dishes.find((d) => d.id === id)
    const row = dish && rowAt(log, 'drawn', drawn, dish)
    if (!dish || !row || drawn === null || row.emptied || staysIn(dish.need)) return []
    const table = doseTable(curve, ACROSS, dish.need.done)
    const most = mostDose(dish.need)
    const index = (minutes: number): number => Math.max(0, Math.min(table.length - 1, Math.round(minutes - log.lit!)))
    let over = index(at)
    while (over < index(drawn) && table[over]! - table[index(at)]! < most) over++
    const after = index(drawn) - over
    const key = `${id} ${drawn}`
    if (after < FORGOTTEN || told.has(key)) return []
    told.add(key)
    return [
      {
        ...placeIn(log, row.line),
        severity: 'warning',
        rule: 'drawn-late',
        reason: `${dish.title}: logged as drawn ${writeDuration(after)} after it was done`,
        suggest: 'put the time right if it was drawn sooner; else look whether it can still be eaten',
      },
    ]
  })
}
