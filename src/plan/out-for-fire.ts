import {writeClock} from '../measure/quantity.js'
import type {FiringLog} from '../oven/log.js'
import type {Message} from '../receipt/types.js'
import type {Dish} from '../scale/types.js'
import {changed} from './changes.js'
import {ACROSS, curveOf, doseNeeded} from './curve.js'
import {eased} from './ease.js'
import {doseBetween} from './keeps.js'
import {spoils} from './left-in.js'
import {lineOf} from './model.js'
import {phrase} from './phrases.js'
import {rules} from './rules.js'
import {middleOf, STOOD} from './safe-middle.js'
import {placeIn, rowAt} from './told.js'
import type {Change, Day, Plan, PlanProblem} from './types.js'

/** What leaves the oven unfinished since a later fire is lit in it: in the log, and in a plan. */

/** A dish that comes out for a fire before it is done. Times in minutes after midnight. */
export interface Unfinished {
  readonly dish: Dish
  readonly drawn: number
  /** When that fire is lit, and when the oven is ready on it. */
  readonly fire: number
  readonly ready: number
  /** Share of its heat that it has by then. */
  readonly share: number
}

/** Whether a dish with a share of its heat is hardly done, though its limits be eased. */
function isUnfinished(dish: Dish, share: number): boolean {
  const enough = doseNeeded(dish.need, eased(dish, 'far').enough) / doseNeeded(dish.need)
  return share < enough - 2 * rules.doseWanting
}

/** Of the parts of a dish that come out for one fire the one that has least. */
function leastOf<One extends Unfinished>(all: readonly One[]): One[] {
  return all.filter((one) => {
    const like = all.filter(({dish, fire}) => dish === one.dish && fire === one.fire)
    return one === like.reduce((least, other) => (other.share < least.share ? other : least))
  })
}

/** What a plan draws for a fire to come before it is done. */
export function outUnfinished(
  {dishes}: Pick<PlanProblem, 'dishes'>,
  {loads, fires = []}: Pick<Plan, 'loads' | 'fires'>,
): Unfinished[] {
  const all = loads.flatMap(({at, dishes: entries}) =>
    entries.flatMap(({dish: id, draw: {likely: drawn}, eased: less}): Unfinished[] => {
      const dish = dishes.find((one) => one.id === id)
      const fire = fires.slice(1).find(({lit}) => at < lit && drawn <= lit)
      const share = less?.dose ?? 1
      return dish && fire && isUnfinished(dish, share) ? [{dish, drawn, fire: fire.lit, ready: fire.ready, share}] : []
    }),
  )
  return leastOf(all)
}

/** Whether what comes out for a fire goes bad, or is not safe to eat, before the oven is ready on that: two hours in the warm are the most. */
export const isOutTooLong = ({dish, drawn, ready}: Pick<Unfinished, 'dish' | 'drawn' | 'ready'>): boolean =>
  (dish.raw === true || spoils(dish)) && ready - drawn > rules.coldMinutes

/** What to do about it. */
function whatToDo(one: Unfinished, now: number): string {
  const {dish, drawn, ready} = one
  const raw = dish.raw === true
  const through = raw ? `do not eat it before it has ${middleOf(dish)}` : 'unless it is done'
  if ((raw || spoils(dish)) && now - drawn > rules.coldMinutes) return STOOD
  if (isOutTooLong(one)) return `the oven is not ready again within two hours: cook it through elsewhere at once; ${through}`
  const again = ready <= now ? 'set it in again now' : `set it in again when the oven is ready at ${writeClock(ready)}`
  return `cook it through elsewhere at once, or ${again} and note that; ${through}`
}

function warningOf(one: Unfinished, place: Pick<Message, 'file' | 'line' | 'column'>, now: number, told: boolean): Message {
  const {dish, fire, ready, share} = one
  const percent = Math.max(0, Math.floor(100 * share))
  const how = told ? 'taken out' : 'has to come out'
  const flesh = dish.raw ? ', and there is raw meat or fish in it' : ''
  return {
    ...place,
    severity: 'warning',
    rule: dish.raw ? 'drawn-raw' : 'out-for-fire',
    reason: `${dish.title}: ${how} for the fire at ${writeClock(fire)} with ${percent} % of its heat${flesh}`,
    suggest: whatToDo(one, now),
    times: [fire, ...(ready > now ? [ready] : [])],
  }
}

/** Warnings of what the rest of a day draws for a fire to come before it is done. */
export function outForFireToCome(plan: Plan, problem: PlanProblem, day: Day): Message[] {
  const now = problem.done?.now ?? Number.NEGATIVE_INFINITY
  return outUnfinished(problem, plan).map((one) => warningOf(one, lineOf(day, one.dish), now, false))
}

/**
 * What was taken out for a fire before it was done and has not been set in again since, by the log.
 *
 * @param problem the rest of the day, on the oven as it was
 * @param plan the plan for it
 */
export function outForFire(
  {done, firings, ambient}: PlanProblem,
  dishes: ReadonlyMap<string, Dish>,
  log: FiringLog,
  {fires = []}: Plan,
): {readonly change: Change; readonly message: Message}[] {
  const curve = curveOf(firings[0]!.forecast, ambient ?? 20)
  const all = done!.set.flatMap(({dish: id, at, drawn, lost}): (Unfinished & {readonly line: number})[] => {
    const dish = dishes.get(id)
    const row = dish && rowAt(log, 'drawn', drawn, dish)
    const fire = fires.find(({lit}) => lit === drawn)
    if (!dish || !row?.emptied || !fire || drawn === null || lost) return []
    const share = doseBetween(curve, dish.need, ACROSS, at - log.lit!, drawn - log.lit!) / doseNeeded(dish.need)
    return isUnfinished(dish, share) ? [{dish, drawn, fire: fire.lit, ready: fire.ready, share, line: row.line}] : []
  })
  return leastOf(all).map((one) => {
    const percent = Math.max(0, Math.floor(100 * one.share))
    return {
      change: changed(one.dish.id, phrase('out for fire', {percent, at: {unit: 'clock', value: one.fire}}), phrase('why log')),
      message: warningOf(one, placeIn(log, one.line), done!.now, true),
    }
  })
}
