import {amiss} from '../asked.js'
import type {Replan} from '../conflict.js'
import type {PlanOptions} from '../options.js'
import type {Settled} from '../settled.js'
import type {Plan, PlanProblem, Remedy} from '../types.js'
import {earlierFire} from './earlier-fire.js'
import {type Lack, spares} from './lack.js'
import {bakedAfter, inTheWay, leftOut} from './leave-out.js'
import {moreHands} from './more-hands.js'
import {notHot, wantedHotOf} from './not-hot.js'
import {oneMove} from './one-move.js'
import {FIRE_AGAIN, fireLater} from './second-fire.js'
import {smallerBatch} from './smaller-batch.js'
import {firesNear, Trials} from './trials.js'

/** Ways out that make the day as it was asked for, after which no more are looked for. */
const ENOUGH = 2
/** Dishes in the way of a late one that are left out for a trial. */
const IN_THE_WAY = 2
/** Dishes baked after a late one that are left out for a trial. */
const LONG_FIRE = 2
/** Dishes wanted hot that are tried otherwise. */
const NOT_HOT = 2

/**
 * Ways out of a day that cannot be done as it was asked for, which change the whole day: lighting earlier, more hands, a second fire, a dish not
 * kept for the hour at which it is wanted hot; and where something comes late, less of it, or leaving out what is in its way. Each is tried by planning the day with it, shortly, on fires
 * about as long as the plan's, and offered only where less is left out than in the plan, or as much and less of it late.
 *
 * @param plan The plan, with its loads.
 * @param from The same, to be gone on from; every trial is planned anew without.
 * @returns The ways that help, in the order in which they are tried.
 */
export function waysOf(
  problem: PlanProblem,
  plan: Plan,
  options: PlanOptions,
  replan: Replan,
  from: Settled | null = null,
): Remedy[] {
  const trials = new Trials(problem, plan, options, replan, from)
  const near = firesNear(problem, plan)
  const ways: Remedy[] = []
  const put = (way: Remedy | null): void => {
    if (way) ways.push(way)
  }
  const enough = (): boolean => ways.filter((w) => w.works && w.late === -trials.now.late).length >= ENOUGH
  const late = [...amiss(problem, plan).late].sort((a, b) => b.drawn - b.wanted - (a.drawn - a.wanted))
  const worst = late[0] ? late[0].drawn - late[0].wanted : 0
  // Where something has no place already, no more is left out for the rest to be in time.
  const whole = trials.now.out === 0

  put(earlierFire(problem, plan, trials, near, worst))
  put(moreHands(problem, plan, trials, near))
  // What comes a little late is no reason to fire again.
  const again = problem.day.firings <= 1 && !enough() && !(whole && worst < FIRE_AGAIN)
  if (again) put(fireLater(plan, trials, () => options.secondFires?.(plan.firing) ?? []))
  for (const hot of wantedHotOf(problem).slice(0, NOT_HOT)) if (!enough()) put(notHot(problem, hot, trials, near))
  const slow = problem.dishes.find((d) => d.id === late[0]?.dish)
  if (!slow || !whole) return ways
  if (!enough()) put(smallerBatch(problem, slow, trials, near))
  const helpful = (lack: Lack): boolean => spares(lack, trials.now)
  const before = inTheWay(problem, plan, slow.id).slice(0, IN_THE_WAY)
  // Which dish has to be shifted aside is for the planner to find: the late one, or one that it would have to pass.
  for (const id of worst >= FIRE_AGAIN ? [slow.id, ...before] : []) {
    const dish = problem.dishes.find((d) => d.id === id)
    const way = dish && !enough() ? oneMove(problem, dish, trials, {firings: near}, helpful) : null
    put(way)
    if (way) break
  }
  // What is baked after all that is late may be what the fire burns so long for.
  const longFire = bakedAfter(plan, new Set(late.map(({dish}) => dish))).slice(0, LONG_FIRE)
  for (const other of [...before, ...longFire]) if (!enough()) put(leftOut(problem, other, trials, near, helpful))
  return ways
}
