import type {FiringLog, LogRow} from '../oven/log.js'
import type {Message} from '../receipt/types.js'
import type {Dish} from '../scale/types.js'
import {type AskedSince, type Asking, changesAsked} from './asked-since.js'
import {backInVain} from './back-in-vain.js'
import {changesOf, lookedAtOf, lostOf, putBackOf} from './changes.js'
import {type Corrected, correct} from './correct.js'
import {drawnEarly} from './drawn-early.js'
import {emptiedForFires} from './emptied.js'
import {halfHourWanting} from './half-hour.js'
import {outOfFlames, toldInFlames} from './in-flames.js'
import type {InForce} from './in-force.js'
import {fireDecided, fireUnlogged, oneFire, stillFirst} from './later-fires.js'
import {coldFood, coldWhenDrawn, drawnLate} from './left-in.js'
import {momentsOf, toldBy, wentOtherwise} from './moments.js'
import type {PlanOptions} from './options.js'
import {outForFire, outForFireToCome, outUnfinished} from './out-for-fire.js'
import {outToFill} from './out-to-fill.js'
import {byOwnNames} from './own-names.js'
import {rules} from './rules.js'
import {type SpareBaked, spareBaked, spareSetIn} from './spare-set-in.js'
import type {Change, Day, Fired, Plan, PlanProblem} from './types.js'
import {
  drawnBeyond,
  drawnUnlogged,
  goneUnlogged,
  notInUnlogged,
  rakingUnlogged,
  setInBeyond,
  unlogged,
  woodUnlogged,
} from './unlogged.js'
import {unrisen} from './unrisen.js'
import {relitOff, untimelyLoad} from './untimely.js'
import {unfinished} from './wanting.js'

/** What planning again has made of a day so far, by what the log then said: kept by a caller that plans at every note. */
export type Corrections = Map<string, Pick<Corrected, 'followed' | 'asking'>>

/** What planning the rest of a day takes of what the morning's plan was made from. */
export interface PlanAgain extends Fired {
  readonly day: Day
  /** The present, minutes after midnight of the day; the log's last entry where absent. */
  readonly now?: number
  readonly options?: Pick<PlanOptions, 'effort' | 'progress' | 'cancelled'>
  /** What is asked for, where that was changed since the fire was lit. */
  readonly asked?: Asked
}

/** What a day asked for when its fire was lit, and since. */
export interface Asked {
  readonly first: Asking
  /** In their order: the last is what it asks for now. */
  readonly since: readonly AskedSince[]
}

/**
 * The rest of a day that has begun. Readings correct the oven; what is in it stays; what has not been set in is planned again, and a
 * change costs a little, so that small surprises move little.
 *
 * @param problem the morning's, and `plan` its plan
 * @param spare receipts of the day to fill idle floor with
 * @param known corrections worked out before, to which those of this call are added
 */
export function planAgain(
  input: PlanAgain,
  problem: PlanProblem,
  plan: Plan,
  written: FiringLog,
  spare: readonly Dish[] = [],
  known: Corrections = new Map(),
): {plan: Plan; problem: PlanProblem; said: readonly string[]} {
  const {asked} = input
  const {log: noted, relit} = oneFire(byOwnNames(written, asked ? named(problem.dishes, asked) : problem.dishes), plan)
  const {log: raked, moved} = outOfFlames(outToFill(noted, problem.dishes))
  const log = emptiedForFires(raked)
  const now = input.now ?? Math.max(log.lit!, log.raked ?? log.lit!, ...noted.rows.map((r) => r.at))
  const {before, made, inForce, begun, asking} = followedUntil(now, input, problem, plan, log, known)
  const anew = askedFrom(asked, asking, Number.POSITIVE_INFINITY)
  // What is baked already is not suggested again.
  const baked = spareBaked(spare, [...begun.dishes, ...(anew?.to.lines ?? []).flatMap(({dishes}) => dishes)], log)
  const idle = spare.filter((dish) => baked.every((one) => one.dish !== dish))
  const corrected = correct({...input, now, ways: true, made, spare: idle, anew}, begun, [before, plan], log)
  const {again, rest, said} = corrected
  const asks = corrected.asking ?? asking
  const otherwise = asked && asks ? changesAsked(asked.first, asks, rest.done!.set) : []
  const {changes, messages} = toldOfDay(
    {now, problem: begun, plan, before, inForce, baked, otherwise, changed: asks !== null},
    corrected,
  )
  const first = [...(relit === null ? [] : [stillFirst(log, relit)]), ...toldInFlames(log, moved, rest.dishes)]
  return {
    plan: {...again, changes, messages: [...again.messages, ...messages, ...first, ...unrisen(again, rest)]},
    problem: rest,
    said,
  }
}

/** What was followed until now. */
interface UntilNow {
  readonly before: Plan
  /** The row of the log at which that plan was made; null of the morning's. */
  readonly made: LogRow | null
  readonly inForce: readonly InForce[]
  /** The morning's problem, with what was asked for since in place of its dishes; and what that is, where it was changed. */
  readonly begun: PlanProblem
  readonly asking: Asking | null
}

/** What is asked for from a time on, minutes after midnight, where that is otherwise than what was in force; null where it is not. */
function askedFrom(
  asked: Asked | undefined,
  asking: Asking | null,
  at: number,
): {readonly asking: Asking; readonly to: AskedSince} | null {
  const to = asked?.since.findLast(({from}) => from <= at)
  return asked && to && to.day !== asking?.day ? {asking: asking ?? asked.first, to} : null
}

/** All dishes that a log may tell of, each once: what is asked for anew is called as its line has it. */
function named(dishes: readonly Dish[], {since}: Asked): Dish[] {
  const all = [...dishes, ...since.flatMap(({lines}) => lines.flatMap((line) => line.dishes))]
  return all.filter(({id}, i) => all.findIndex((one) => one.id === id) === i)
}

/**
 * The plan that was followed until now. What the log does not tell of is taken to have been done as the plan had it that was good at the
 * time: each reading so far had the day planned again, and each opening that went otherwise than planned; and a dish that was then left in for
 * longer is in the oven still.
 */
function followedUntil(
  now: number,
  input: PlanAgain,
  problem: PlanProblem,
  plan: Plan,
  log: FiringLog,
  known: Corrections,
): UntilNow {
  const options: PlanOptions = {...input.options, effort: 'quick'}
  const inForce: InForce[] = [{from: Number.NEGATIVE_INFINITY, plan}]
  let before = plan
  let made: LogRow | null = null
  let asking: Asking | null = null
  let begun = problem
  for (const {row, opening} of momentsOf(log, plan, now)) {
    const told = toldBy(log, row)
    const {at} = row
    if (opening && !wentOtherwise(before, told, begun.dishes, at)) continue
    const anew = askedFrom(input.asked, asking, at)
    const key = JSON.stringify([told, (anew?.asking ?? asking)?.day, anew?.to.day])
    const done: Pick<Corrected, 'followed' | 'asking'> =
      known.get(key) ?? correct({...input, now: at, options, made, spare: [], anew}, begun, [before, plan], told)
    before = done.followed
    known.set(key, {followed: before, ...(done.asking ? {asking: done.asking} : {})})
    if (done.asking) {
      asking = done.asking
      begun = {...problem, day: asking.day, dishes: asking.dishes}
    }
    made = row
    inForce.push({from: at, plan: before, ...(opening ? {opening} : {})})
  }
  return {before, made, inForce, begun, asking}
}

/** What is told of a day that was planned again. */
interface ToldOfDay {
  readonly changes: readonly Change[]
  readonly messages: readonly Message[]
}

/** A day that has begun: its morning's plan, what was followed since, and what the log tells. */
interface Followed {
  readonly now: number
  readonly problem: PlanProblem
  readonly plan: Plan
  readonly before: Plan
  readonly inForce: readonly InForce[]
  readonly baked: readonly SpareBaked[]
  /** What is asked for otherwise than in the morning. */
  readonly otherwise: readonly Change[]
  /** Whether anything is: hours and hands are no dishes. */
  readonly changed: boolean
}

function toldOfDay(
  {now, problem, plan, before, inForce, baked, otherwise, changed}: Followed,
  {again, rest, log, expected, unlit, passedOver}: Corrected,
): ToldOfDay {
  const byId = new Map([...problem.dishes, ...rest.dishes].map((d) => [d.id, d]))
  const {firing} = again
  const otherFire =
    Math.abs(firing.wood - plan.firing.wood) > 0.02 * plan.firing.wood || Math.abs(firing.burn - plan.firing.burn) > rules.tick
  const early = [...outForFire(rest, byId, log, again), ...drawnEarly(rest, byId, log, inForce)]
  // The plan on the wall is the morning's: what has changed is told against that.
  const changes = [
    ...lostOf(before, log, byId),
    ...early.map(({change}) => change),
    ...putBackOf(rest, byId),
    ...lookedAtOf(rest, byId),
    ...otherwise,
    ...changesOf(plan, again, now, byId, {
      // Without a reading it is what was set in, or was not, that makes the difference.
      expected: log.readings.length > 0 || otherFire ? expected : null,
      untimely: untimelyLoad(rest, byId, log, inForce),
      relit: relitOff(log, inForce),
      doorOpen: log.doors.reduce((sum, one) => sum + (one.kind === 'door' ? one.open : 0), 0),
      otherwise: changed,
    }),
  ]
  const cold = [...coldFood(rest, again, log), ...coldWhenDrawn(rest, log)]
  const notEaten = new Set(cold.map(({dish}) => dish))
  const ofDay = new Map(rest.dishes.map((dish) => [dish.id, dish]))
  const outToCome = outUnfinished(rest, again).map(({dish}) => dish.id)
  const messages = [
    ...cold.map(({message}) => message),
    ...unfinished(changes, byId, rest.day, new Set([...notEaten, ...outToCome])),
    ...outForFireToCome(again, rest, rest.day),
    ...drawnLate(rest, log),
    ...early.map(({message}) => message),
    ...backInVain(rest, byId, log),
    ...halfHourWanting(rest, log),
    ...spareSetIn(baked, log),
    ...setInBeyond(ofDay, log),
    ...drawnBeyond(ofDay, log),
    ...notInUnlogged(passedOver, rest, byId),
    ...unlogged(rest, byId, log),
    ...goneUnlogged(rest, byId, log, notEaten),
    ...drawnUnlogged(rest, byId, log),
    ...woodUnlogged(log, plan, firing.wood),
    ...rakingUnlogged(log, plan),
    ...fireUnlogged(rest, log, unlit),
    ...fireDecided(log, again),
  ]
  return {changes, messages}
}
