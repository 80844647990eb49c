import type {OvenEvent} from '../../oven/types.js'
import type {Replan} from '../conflict.js'
import {firesOf, inOrder} from '../events.js'
import type {PlanOptions, Simulate} from '../options.js'
import type {OvenSoFar} from '../oven-so-far.js'
import {phrase} from '../phrases.js'
import {rules} from '../rules.js'
import type {Plan, PlanProblem, Remedy} from '../types.js'
import {type Lack, lacking} from './lack.js'
import {type Trial, Trials} from './trials.js'

/** The oven with its door left open for so long in the evening; minutes after midnight. */
export interface DoorOpen {
  readonly from: number
  readonly minutes: number
  readonly simulate: Simulate
}

/**
 * The door left open in the evening, so that the oven falls for a dish before the night.
 *
 * @param ways For how long, the shortest time first: the first that helps is taken.
 */
export function doorLeftOpen(trials: Trials, ways: readonly DoorOpen[], helpful: (lack: Lack) => boolean): Remedy | null {
  for (const {from, minutes, simulate} of ways) {
    const tried = trials.plan({}, {simulate})
    if (!helpful(tried.lack)) continue
    const words = phrase('remedy door open', {
      minutes: {unit: 'minutes', value: minutes},
      at: {unit: 'clock', value: from},
      outcome: trials.outcome(tried, false),
    })
    return trials.remedy('door open', tried.plan, words)
  }
  return null
}

/** For how many minutes the door may be left open to cool an oven found too hot, and how many such are tried. Common practice, no source. */
const TRIES = {minutes: [10, 15, 20, 30, 45, 60, 90, 120], most: 3} as const
/** Minutes that the faces take to draw heat from the brick behind them again once the door is shut. Common practice, no source. */
const BACK = 10
/** Minutes late in all, and what is worth as many, for which the door may be opened; and the share of them that may be left for it to be worth that. */
const WORTH = 15
const WORTH_IT = 0.5

/**
 * What leaving the door open from now on would do for a day whose oven is hotter than anything still to be set in bears, so that it comes late
 * or not at all. Tried by planning the rest of the day in the oven so cooled, shortly.
 *
 * @param problem the rest of the day, and `plan` the plan for that
 * @param found the oven by its readings
 * @returns The one of those tried after which least comes late or wants heat, where fewer go without, or that is half of what does now at most;
 *   else nothing.
 */
export function doorOpenNow(
  problem: PlanProblem,
  plan: Plan,
  {start, foresee, simulate}: Pick<OvenSoFar, 'start' | 'foresee' | 'simulate'>,
  options: PlanOptions,
  replan: Replan,
): Remedy[] {
  const trials = new Trials(problem, plan, options, replan)
  const {now: lack} = trials
  const now = lacking(lack)
  const lit = problem.done!.lit!
  if (lack.out === 0 && now < WORTH) return []
  const heat = ({baking, step}: Plan['forecast'], at: number): number =>
    baking.likely[Math.min(baking.likely.length - 1, Math.round((at - lit) / step))]!
  const bears = problem.dishes.flatMap(({id, need}) => (isToCome(problem, plan, id) ? [need.startHigh] : []))
  const from = rules.tick * Math.ceil(problem.done!.now / rules.tick)
  const hottest = Math.max(...bears)
  // Something can be set in now: the heat is of use.
  if (bears.length === 0 || hottest >= heat(start.forecast, from)) return []
  const fires = firesOf(start)
  let best: (Trial & {readonly minutes: number}) | null = null
  let shorter: Lack | null = null
  let tried = 0
  for (const minutes of TRIES.minutes) {
    const door: OvenEvent = {minutes: from - lit, kind: 'door', open: minutes}
    const forecast = foresee(inOrder([...fires, door]))
    if (tried === 0 && heat(forecast, from + minutes + BACK) > hottest && minutes !== TRIES.minutes.at(-1)) continue
    if (tried++ === TRIES.most) break
    const cooled: Simulate = (option, events, exact) => simulate(option, inOrder([...events, door]), exact)
    const trial = trials.plan({firings: [{...start, forecast}]}, {simulate: cooled})
    const all = lacking(trial.lack)
    // The oven falls the further the longer the door is open: what does less good than a shorter time is past the best.
    if (shorter && trial.lack.without >= shorter.without && all >= lacking(shorter)) break
    shorter = trial.lack
    const worthIt = trial.lack.without < lack.without ? all <= now : trial.lack.without === lack.without && all <= WORTH_IT * now
    if (worthIt && (best === null || all < lacking(best.lack))) best = {...trial, minutes}
  }
  if (!best) return []
  const words = phrase('remedy door open now', {
    minutes: {unit: 'minutes', value: best.minutes},
    at: {unit: 'clock', value: from},
    outcome: trials.outcome(best, false),
  })
  return [trials.remedy('door open', best.plan, words)]
}

/** Whether some of a dish is not set in yet, or has no place. */
function isToCome({done}: PlanProblem, {loads, unplaced}: Plan, id: string): boolean {
  const setIn = loads.some(({at, dishes}) => at > done!.now && dishes.some((d) => d.dish === id && !d.alreadyIn))
  return setIn || unplaced.some(({dish}) => dish === id)
}
