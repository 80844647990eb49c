import {bakingAt} from '../oven/forecast.js'
import type {FiringLog, LogRow} from '../oven/log.js'
import type {Firing} from '../oven/types.js'
import type {Dish} from '../scale/types.js'
import {type AskedAnew, type AskedSince, type Asking, askedAnew} from './asked-since.js'
import {burned} from './burned.js'
import {doughsSoFar, soonerThanLooked} from './dough.js'
import {emptiedForFire} from './emptied.js'
import {inOrder} from './events.js'
import {furtherFires, withFireToCome, woodIn} from './later-fires.js'
import type {PlanOptions} from './options.js'
import {type OvenSoFar, ovenSoFar} from './oven-so-far.js'
import {planDay} from './planner.js'
import {onFires, presumedBy, toldTimes} from './presumed.js'
import {hoursOf} from './problem.js'
import {rules} from './rules.js'
import {isThoughtLit, secondFire} from './second-fire.js'
import {simulator} from './simulator.js'
import {type PassedOver, type SoFar, soFar} from './so-far.js'
import {standingAgain} from './standing-again.js'
import {missingOf, type Told, toldOf} from './told.js'
import {type DoughLog, toldDoughs} from './told-doughs.js'
import type {Fired, Plan, PlannedDough, PlanProblem} from './types.js'
import {fireWays} from './ways/of-fire.js'

/** How the rest of a day is planned. Times in minutes after midnight. */
export interface Correcting extends Fired {
  readonly now: number
  /** The row of the log at which the plan that was followed was made; null of the morning's. */
  readonly made: LogRow | null
  /** What is asked for from now on, where that is otherwise than till now: and what that is. */
  readonly anew?: {readonly asking: Asking; readonly to: AskedSince} | null
  /** What would help is looked for too. */
  readonly ways?: true
  readonly options?: PlanOptions | undefined
  /** Dishes to fill idle floor with. */
  readonly spare: readonly Dish[]
}

/** The rest of a day, planned. */
export interface Corrected {
  readonly again: Plan
  /** The plan to be followed from here, with what has been drawn in it too. */
  readonly followed: Plan
  readonly rest: PlanProblem
  /** What is asked for from now on, where that was changed. */
  readonly asking?: Asking
  /** The log, with a draw of what it has in the oven at the hour of a second fire that is thought to have been lit (`emptied.ts`). */
  readonly log: FiringLog
  /** What the readings changed, in plain sentences. */
  readonly said: readonly string[]
  /** The baking heat, °C, that the oven would now have by the morning's reckoning after what was really done. */
  readonly expected: number
  /** A second fire was to be lit by now, and was not by what the floor has. */
  readonly unlit: boolean
  /** What is not thought to have been set in, since what was to follow it was. */
  readonly passedOver: readonly PassedOver[]
}

/**
 * The day planned again at a moment.
 *
 * @param problem the morning's
 * @param plans the one that was followed until then, and the morning's
 * @param log as far as it tells by then
 */
export function correct(
  input: Correcting,
  problem: PlanProblem,
  [before, morning]: readonly [Plan, Plan],
  log: FiringLog,
): Corrected {
  const {now, options} = input
  const lit = log.lit!
  const followed = withFireToCome(input.oven, before, log, input.made)
  const burn = burned(log, followed.firing.burn)
  const firing: Firing = {wood: log.wood ?? woodIn(burn, followed.firing), burn, soak: followed.firing.soak}
  const {ambient = 20} = problem
  const till = new Map(problem.dishes.map((d) => [d.id, d]))
  // What the log says was set in is in, though the plan made at a reading had no place for it: it is as the morning's plan had it.
  const since = (input.anew?.to.lines ?? []).flatMap((line) => line.dishes)
  const meant = {loads: [...followed.loads, ...missingOf(followed, morning, log, till)]}
  const said = toldOf(meant, log, till, since)
  const second = secondFire(input, {now, log, firing, plan: followed, before, parts: said, told: toldTimes(said)})
  // Lit without a word in the log, it was lit in an oven as empty as one that the log tells of.
  const seen = isThoughtLit(second, log, now) ? emptiedForFire(log, second.at) : log
  const parts = seen === log ? said : toldOf(meant, seen, till, since)
  const told = toldTimes(parts)
  const [relit] = furtherFires(log, followed, second.at)
  const readyAfter = (at: number, {burn, soak}: Firing): number => at + burn + soak
  const readyAgain = relit ? readyAfter(lit + relit.minutes, relit.firing) : second.at
  const fires = onFires(parts, second, [readyAfter(lit, firing), readyAgain])
  const noted: DoughLog = {log: seen, morning, dishes: problem.dishes}
  const soFarOf = (some: readonly Told[]): SoFar =>
    soFar({...noted, now, plan: followed, parts: some, told, second, fires, ambient})
  const so = soFarOf(parts)
  const presumed = presumedBy(told, lit - followed.lit, second, fires)
  const doughsOf = (
    {set, toCome, plan}: Pick<SoFar, 'set' | 'toCome'> & {readonly plan: Plan},
    dishes: readonly Dish[],
  ): PlannedDough[] =>
    // A fire lit late puts off nothing that was to be done the day before.
    doughsSoFar(now, plan, toCome, toldDoughs(set, {...noted, dishes}), (at) => (at < 0 ? at : presumed(at)))
  const begun = {...so, plan: followed}
  const anew = input.anew
    ? askedAnew(input.anew.asking, input.anew.to, {...begun, log, doughs: doughsOf(begun, problem.dishes)})
    : null
  const {day, dishes} = anew?.asking ?? problem
  const byId = new Map(dishes.map((d) => [d.id, d]))
  const {drawn, plan} = anew ?? begun
  // What is asked for since and set in already, before any plan had it.
  const fresh = soFarOf(anew ? toldOf({loads: []}, seen, ofNewReceipts(anew, problem.dishes)) : [])
  const allSet = [...(anew ?? begun).set, ...fresh.set]
  const set = standingAgain({...problem, dishes}, allSet, new Set([...so.again, ...fresh.again]))
  const least = anew ? hoursOf(day, dishes) : 0
  const oven = ovenSoFar(input, {now, log, firing, plan, secondAt: second.at, set, dishes: byId, ambient, least})
  const doughs = doughsOf(anew ?? begun, dishes).filter(({dish}) => byId.has(dish))
  const done = {now: underWay(now, so, followed, log), lit, set, plan, ...(anew ? {anew: anew.fresh} : {})}
  const restWith = (some: readonly PlannedDough[]): PlanProblem => ({
    ...problem,
    day,
    dishes,
    firings: [oven.start],
    done: {...done, doughs: some},
  })
  const {rest, planned} = restPlanned(restWith, doughs, {...options, simulate: oven.simulate, spare: input.spare})
  const ways = input.ways ? fireWays(input, {log, plan, found: oven}, rest, planned, options ?? {}) : []
  const again = ways.length > 0 ? {...planned, ways} : planned
  return {
    again,
    followed: {...again, loads: [...drawn, ...fresh.drawn, ...again.loads]},
    rest,
    ...(anew ? {asking: anew.asking} : {}),
    log: seen,
    said: oven.said,
    expected: expectedAt(now - lit, input, oven, morning),
    unlit: second.unlit,
    passedOver: so.passedOver,
  }
}

/**
 * From when on the rest of a day is planned: now, or the beginning of the five minutes that run where the plan that was followed has an opening
 * then and the log tells of none since. What is due at this moment is not late, and not moved for it.
 */
function underWay(now: number, {toCome, set}: SoFar, {loads}: Plan, {rows}: FiringLog): number {
  const from = rules.tick * Math.floor(now / rules.tick)
  const isIn = (id: string): boolean => set.some(({dish, drawn}) => dish === id && drawn === null)
  const due =
    toCome.some(({at}) => at === from) ||
    loads.some(({dishes}) => dishes.some(({dish, draw}) => draw.likely === from && isIn(dish)))
  return due && !rows.some(({what, at}) => what !== 'reading' && what !== 'note' && at > from && at <= now) ? from : now
}

/** The dishes of a day that no plan had before, of receipts that the log knows nothing of till then. */
function ofNewReceipts({asking, fresh}: AskedAnew, before: readonly Dish[]): Map<string, Dish> {
  const own = asking.dishes.filter(({id, file}) => fresh.has(id) && before.every((dish) => dish.file !== file))
  return new Map(own.map((dish) => [dish.id, dish]))
}

/** The rest of a day with its doughs as they are. What had not risen waits till it is looked at again, unless something is lost for that. */
function restPlanned(
  restWith: (doughs: readonly PlannedDough[]) => PlanProblem,
  doughs: readonly PlannedDough[],
  options: PlanOptions,
): {readonly rest: PlanProblem; readonly planned: Plan} {
  const plannedWith = (some: readonly PlannedDough[]): {rest: PlanProblem; planned: Plan} => {
    const rest = restWith(some)
    return {rest, planned: planDay(rest, options)}
  }
  const waiting = plannedWith(doughs)
  const sooner = waiting.planned.unplaced.length > 0 ? soonerThanLooked(doughs) : null
  if (sooner === null) return waiting
  const hurried = plannedWith(sooner)
  return hurried.planned.unplaced.length < waiting.planned.unplaced.length ? hurried : waiting
}

/** The baking heat, °C, so many minutes after lighting, by the morning's reckoning and fire after what was really done. */
function expectedAt(minutes: number, {oven, parameters}: Fired, {start, past, burned, runs}: OvenSoFar, morning: Plan): number {
  const simulate = simulator({oven, ...(parameters ? {parameters} : {})}, runs)
  return bakingAt(simulate({...start, firing: morning.firing}, inOrder([...past, ...burned]), false), minutes)
}
