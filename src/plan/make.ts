import {writeClock} from '../measure/quantity.js'
import {calibrate} from '../oven/calibrate.js'
import {bakingAt, forecast, likelyOnly, PRIOR, usualFiring} from '../oven/forecast.js'
import type {DishCorrection} from '../oven/learn.js'
import type {FiringLog, LogRow} from '../oven/log.js'
import {OvenRuns} from '../oven/simulate.js'
import type {Firing, Forecast, OvenEvent, OvenParameters, OvenSpec} from '../oven/types.js'
import type {Message, Receipt} from '../receipt/types.js'
import {makeDishes} from '../scale/dishes.js'
import {slugOf} from '../scale/slug.js'
import type {Dish, HeatNeed} from '../scale/types.js'
import {hoursLate} from './asked.js'
import {ACROSS, curveOf, doseNeeded, doseTable} from './curve.js'
import {doughsSoFar, soonerThanLooked, type ToldDoughs} from './dough.js'
import {workOf} from './dough-times.js'
import {eased, shortest} from './ease.js'
import {firesOf} from './events.js'
import {type AtMost, type FillLimit, floorFilling} from './fill.js'
import {type Followed, partsByDish, partsOf, take} from './followed.js'
import {halfHourWanting} from './half-hour.js'
import {handlingOf} from './hands.js'
import {
  fireDecided,
  fireUnlogged,
  furtherFires,
  oneFire,
  stayedOut,
  stillFirst,
  twoFires,
  waitFor,
  withFireToCome,
  woodIn,
} from './later-fires.js'
import {coldFood, coldWhenDrawn, drawnLate} from './left-in.js'
import {dueOf, isNight, lineOf, soonestOf} from './model.js'
import type {PlanOptions, Simulate} from './options.js'
import {byOwnNames} from './own-names.js'
import {english, phrase, speak} from './phrases.js'
import {planDay} from './planner.js'
import {againWays, burnWays} from './remedies.js'
import {doorEvents, loadEvent} from './response.js'
import {rules} from './rules.js'
import {stillBurning} from './still-burning.js'
import {type DoughDeed, doughDeedsOf, inTurn, isOf, lossesOf, placeIn, rowAt, type Told, toldOf} from './told.js'
import type {Day, Eased, FiringOption, Load, Phrase, PhraseValue, Plan, PlannedDough, PlanProblem} from './types.js'
import {unlit} from './unlit.js'
import {goneUnlogged, unlogged} from './unlogged.js'
import {unrisen} from './unrisen.js'

/** Everything parsed that a plan is made from. */
export interface MakePlan {
  readonly oven: OvenSpec
  readonly day: Day
  readonly receipts: readonly Receipt[]
  /** The dishes, where the caller has made them already. */
  readonly scaled?: ReturnType<typeof makeDishes>
  /** From readings; the drawing's own where absent. */
  readonly parameters?: OvenParameters
  /** What past firings taught of single dishes: minutes to add to their receipts' times. */
  readonly corrections?: readonly DishCorrection[]
  /** The day's own log so far: what is in the oven stays, the rest is planned again. */
  readonly log?: FiringLog | null
  /** The present, minutes after midnight of the day; the log's last entry where absent. */
  readonly now?: number
  readonly options?: Pick<PlanOptions, 'effort' | 'progress' | 'cancelled'>
}

export interface MadePlan {
  readonly plan: Plan
  readonly problem: PlanProblem
  readonly dishes: readonly Dish[]
  readonly spare: readonly Dish[]
  readonly messages: readonly Message[]
  /** What today's readings changed, in plain sentences; empty while there are none. */
  readonly said: readonly string[]
}

/** Lengths of fire considered, min. */
const burns = [45, 60, 75, 90, 105, 120, 135, 150, 165, 180, 195, 210, 240, 300] as const

/**
 * The whole chain from parsed files to a plan: dishes for the people and the floor, fires, and the day's plan.
 *
 * @returns The plan with the problem it solves. `messages` are those of scaling and planning.
 */
export function makePlan(input: MakePlan): MadePlan {
  const runs = new OvenRuns(input.oven)
  const made = filled(input, input.scaled ?? makeDishes({day: input.day, receipts: input.receipts, oven: input.oven}), runs)
  const {spare, messages} = made
  const dishes = learnt(input, made.dishes)
  const problem = problemOf(input, dishes, runs)
  const plan = planDay(problem, {...planning(input, dishes, runs), spare})
  const {log} = input
  if (!log || log.lit === null) {
    // Said once: what no fire can have ready is late in every plan.
    const early = tooEarly(problem, plan)
    const told = plan.messages.filter((m) => m.rule !== 'late' || !early.some((e) => e.line === m.line && e.column === m.column))
    const whole = {...plan, messages: [...early, ...told, ...unlit(log ?? null)]}
    return {plan: whole, problem, dishes, spare, messages: [...messages, ...whole.messages], said: []}
  }
  const again = planAgain(input, problem, plan, log, spare)
  return {...again, dishes, spare, messages: [...messages, ...again.plan.messages]}
}

/**
 * The day's dishes, those that are to fill the floor so many as the day has a place for: it is for the oven to say, and no order that cannot
 * be met.
 */
function filled(input: MakePlan, made: ReturnType<typeof makeDishes>, runs: OvenRuns): ReturnType<typeof makeDishes> {
  if (!made.dishes.some(({fills}) => fills !== undefined)) return made
  const dishesWith = (atMost: AtMost, limit: FillLimit): ReturnType<typeof makeDishes> => {
    const items = input.day.items.map((item) => {
      const most = atMost.get(item.line)
      return most === undefined ? item : {...item, atMost: most, ...(limit === null ? {} : {limit})}
    })
    return makeDishes({day: {...input.day, items}, receipts: input.receipts, oven: input.oven})
  }
  const found = floorFilling((atMost, {hands = input.day.hands, alone = false} = {}) => {
    const some = learnt(input, (atMost === null ? made : dishesWith(atMost, null)).dishes)
    const dishes = alone ? some.filter(({fills}) => fills !== undefined) : some
    const of = {...input, day: {...input.day, hands}}
    const problem = problemOf(of, dishes, runs)
    const plan = planDay(problem, {...planning(of, dishes, runs), bare: true, inTime: true})
    return {dishes, plan, late: hoursLate(problem, plan)}
  })
  return found === null ? made : dishesWith(found.atMost, found.limit)
}

/** How a day's dishes are planned. */
const planning = (input: MakePlan, dishes: readonly Dish[], runs: OvenRuns): PlanOptions => ({
  ...input.options,
  simulate: simulator(input, runs),
  secondFires: (first) => twoFires(input, dishes, first.burn, hoursOf(input.day, dishes), runs),
  heatStated: (file, celsius) => needsAt(input, file, celsius),
})

/** What the dishes of one receipt's file need, by their ids, with another heat, °C, in its front matter. */
export function needsAt(input: MakePlan, file: string, celsius: number): Map<string, HeatNeed> {
  const receipts = input.receipts.map((one) => (one.file === file ? {...one, facts: {...one.facts, oven: `${celsius} °C`}} : one))
  const {dishes} = makeDishes({day: input.day, receipts, oven: input.oven})
  return new Map(learnt(input, dishes).flatMap((dish) => (dish.file === file ? [[dish.id, dish.need]] : [])))
}

const learnt = (input: MakePlan, dishes: readonly Dish[]): Dish[] =>
  dishes.map((dish) => corrected(dish, input.corrections ?? []))

/** A dish with the time its own past bakings call for; the receipt's where none is logged. */
function corrected(dish: Dish, corrections: readonly DishCorrection[]): Dish {
  const known = corrections.find((c) => c.dish === slugOf(dish.file))
  const by = Math.round(known?.minutes.likely ?? 0)
  if (known === undefined || by === 0) return dish
  const add = (minutes: number): number => Math.max(5, minutes + by)
  const {low, likely, high} = dish.need.minutes
  return {
    ...dish,
    need: {...dish.need, minutes: {low: add(low), likely: add(likely), high: add(high)}},
    inferred: [
      ...dish.inferred,
      {
        field: 'bake',
        value: `${by > 0 ? '+' : '−'}${Math.abs(by)} min`,
        why: `this oven’s log (${known.notes} ${known.notes === 1 ? 'note' : 'notes'})`,
      },
    ],
  }
}

/** What planning again has made of a day so far, by what the log then said: kept by a caller that plans at every note. */
export type Corrections = Map<string, Plan>

/** What planning the rest of a day takes of what the morning's plan was made from. */
type Again = Pick<MakePlan, 'oven' | 'parameters' | 'now' | 'options' | 'day'>

/**
 * The rest of a day that has begun. Readings correct the oven; what is in it stays; what has not been set in is planned again, and a
 * change costs a little, so that small surprises move little.
 *
 * What the log does not tell of is taken to have been done as the plan had it that was good at the time: each reading so far had the
 * day planned again, and a dish that was then left in for longer is in the oven still.
 *
 * @param known corrections worked out before, to which those of this call are added
 */
export function planAgain(
  input: Again,
  problem: PlanProblem,
  plan: Plan,
  written: FiringLog,
  spare: readonly Dish[] = [],
  known: Corrections = new Map(),
): {plan: Plan; problem: PlanProblem; said: readonly string[]} {
  const {log, relit} = oneFire(byOwnNames(written, problem.dishes), plan)
  const now = input.now ?? Math.max(log.lit!, log.raked ?? log.lit!, ...log.rows.map((r) => r.at))
  let before = plan
  const inForce: InForce[] = [{from: Number.NEGATIVE_INFINITY, plan}]
  let made: LogRow | null = null
  for (const moment of momentsOf(log, plan, now)) {
    const told = toldBy(log, moment)
    const {at} = moment
    const key = JSON.stringify(told)
    const seen = known.get(key)
    before =
      seen ??
      correct({...input, now: at, options: {...input.options, effort: 'quick'}, made}, problem, [before, plan], told, []).followed
    known.set(key, before)
    made = moment
    inForce.push({from: at, plan: before})
  }
  // What is baked already is not suggested again.
  const isAsked = (row: LogRow): boolean => problem.dishes.some((dish) => isOf(row, dish))
  const baked = spare.flatMap((dish) => {
    const row = log.rows.find((one) => one.what === 'set in' && isOf(one, dish) && !isAsked(one))
    return row ? [{dish, row}] : []
  })
  const idle = spare.filter((dish) => baked.every((one) => one.dish !== dish))
  const {again, rest, said, expected, unlit} = correct({...input, now, ways: true, made}, problem, [before, plan], log, idle)
  const byId = new Map(problem.dishes.map((d) => [d.id, d]))
  const {firing} = again
  const otherFire =
    Math.abs(firing.wood - plan.firing.wood) > 0.02 * plan.firing.wood || Math.abs(firing.burn - plan.firing.burn) > rules.tick
  // The plan on the wall is the morning's: what has changed is told against that.
  const early = drawnEarly(rest, byId, log, inForce)
  const lost = lostOf(before, log, byId)
  const changes = [
    ...lost,
    ...early.map(({change}) => change),
    ...changesOf(plan, again, now, byId, {
      // Without a reading it is what was set in, or was not, that makes the difference.
      expected: log.readings.length > 0 || otherFire ? expected : null,
      untimely: untimelyLoad(rest, byId, log, inForce),
    }),
  ]
  const cold = [...coldFood(rest, again, log), ...coldWhenDrawn(rest, log)]
  const messages = [
    ...again.messages,
    ...cold.map(({message}) => message),
    ...unfinished(changes, byId, problem.day, new Set(cold.map(({dish}) => dish))),
    ...drawnLate(rest, log),
    ...early.map(({message}) => message),
    ...halfHourWanting(rest, log),
    ...spareSetIn(baked, log),
    ...unlogged(rest, byId, log),
    ...goneUnlogged(rest, byId, log, new Set(cold.map(({dish}) => dish))),
    ...woodUnlogged(log, plan, firing.wood),
    ...fireUnlogged(rest, log, unlit),
    ...fireDecided(log, again),
    ...(relit === null ? [] : [stillFirst(log, relit)]),
    ...unrisen(again, rest),
  ]
  return {plan: {...again, changes, messages}, problem: rest, said}
}

/** Minutes after a reading within which another one has the day planned again before anything could be done about the first. */
const TOGETHER = 15

/** Minutes for which the heat is tested again and again at most before what waits for it is set in. */
const LONG_TESTED = 30

/** Since when the heat has been tested again and again, minutes after midnight; now where it has not been. */
function testedSince(log: FiringLog, now: number): number {
  const at = log.rows.flatMap((r) => (r.what === 'reading' && r.at <= now ? [r.at] : [])).sort((a, b) => b - a)
  let since = now
  for (const m of at) if (since - m < TOGETHER && now - m <= LONG_TESTED) since = m
  return since
}

/**
 * The readings of the oven that has baked at which the day was planned again before now: those that nothing else was read after for some
 * while, and those after which something was set in. And when a fire to come was decided upon, and one was lit again and raked out.
 */
function momentsOf(log: FiringLog, plan: Plan, now: number): LogRow[] {
  const raked = log.raked ?? log.lit! + plan.raked - plan.lit
  const rows = log.rows
    .filter((r) => r.at <= now && (ofFire(r) || r.what === 'set in' || (r.what === 'reading' && r.at >= raked)))
    .sort(inTurn)
  return rows.filter((row, i) => {
    if (ofFire(row)) return now > row.at
    if (row.what !== 'reading') return false
    const next = rows.slice(i + 1).find((r) => ofFire(r) || r.what === 'reading')?.at ?? now
    return rows[i + 1]?.what === 'set in' || (next - row.at >= TOGETHER && now - row.at >= TOGETHER)
  })
}

/** A row that tells of another fire: that it is to be lit, or was, or is raked out. */
const ofFire = ({again, refired}: LogRow): boolean => again !== undefined || refired === 'lit' || refired === 'raked'

/** The log as it stood when one of its rows was noted. */
function toldBy(log: FiringLog, last: LogRow): FiringLog {
  const rows = log.rows.filter((r) => inTurn(r, last) <= 0)
  const until = Math.max(...rows.map((r) => r.elapsed ?? r.at - log.lit!))
  const {further: _, ...first} = log
  const further = (log.further ?? []).flatMap((fire) =>
    fire.lit > last.at ? [] : [fire.raked === null || fire.raked <= last.at ? fire : {...fire, raked: null, wood: null}],
  )
  return {
    ...first,
    ...(further.length > 0 ? {further} : {}),
    rows,
    readings: log.readings.filter((r) => r.minutes <= until),
    doors: log.doors.filter((d) => d.minutes <= until),
  }
}

/**
 * The day planned again at a moment.
 *
 * @param plans the one that was followed until then, and the morning's. What the log does not tell of is done at the later of their times:
 *   a dish is rather set in too late in our book than drawn before it is done.
 * @returns `followed`: the plan to be followed from here, with what has been drawn in it too; `expected`: the baking heat, °C, that the oven
 *   would now have by the morning's reckoning after what was really done; `unlit`: a second fire was to be lit by now, and was not by what
 *   the floor has
 */
function correct(
  /** `ways`: what would help is looked for too; `made`: the row at which the plan that was followed was made. */
  input: Again & {readonly now: number; readonly ways?: true; readonly made: LogRow | null},
  problem: PlanProblem,
  [before, morning]: readonly [Plan, Plan],
  log: FiringLog,
  spare: readonly Dish[],
): {again: Plan; followed: Plan; rest: PlanProblem; said: readonly string[]; expected: number; unlit: boolean} {
  const lit = log.lit!
  const {now} = input
  const plan = withFireToCome(input.oven, before, log, input.made)
  const burn = log.raked === null ? plan.firing.burn : Math.max(1, log.raked - lit)
  const firing: Firing = {wood: log.wood ?? woodIn(burn, plan.firing), burn, soak: plan.firing.soak}
  const byId = new Map(problem.dishes.map((d) => [d.id, d]))
  // What the log says was set in is in, though the plan made at a reading had no place for it: it is as the morning's plan had it.
  const parts = toldOf({...plan, loads: [...plan.loads, ...missingOf(plan, morning, log, byId)]}, log, byId)
  // A fire lit late moves everything the log does not tell of by as much, and a second one all that comes after it; lit early, it
  // brings nothing forward that waits for its hour.
  const hour = plan.fires?.[1]?.lit ?? Number.POSITIVE_INFINITY
  // A fire that was decided upon has the hour that it was given, whatever the plan was late till then.
  const decided = before.fires?.[1]?.lit !== plan.fires?.[1]?.lit
  /** In the plan's own times, from when on it counts on a second fire's heat. */
  const second = decided ? hour - (lit - plan.lit) : hour
  const shiftAt = (planned: number): number => (planned < second ? lit - plan.lit : Math.max(0, secondAt - second))
  // So does what the log says was done late, for what it does not tell of and comes after on the same fire.
  const told = parts.flatMap(({at: plannedIn, draw, saidIn, saidOut}) =>
    (
      [
        [saidIn, plannedIn, true],
        [saidOut, draw, false],
      ] as const
    ).flatMap(([at, planned, setIn]) => (at === undefined ? [] : [{planned, at, setIn}])),
  )
  const presumed = (planned: number): number => {
    let last: (typeof told)[number] | undefined
    for (const one of told)
      if (one.planned <= planned && one.planned >= (last?.planned ?? one.planned) && one.planned < second === planned < second)
        last = one
    const late = last ? last.at - last.planned - shiftAt(last.planned) : 0
    return planned + shiftAt(planned) + Math.max(0, late)
  }
  // A second fire is lit at its hour, or as soon after as what was set in before it is out. What was planned without it, and is not in yet,
  // makes way for it.
  const outs = parts.flatMap(({at: plannedIn, draw, saidIn, saidOut, lostAt}) => {
    if (plannedIn >= second && (saidIn ?? hour) >= hour) return []
    if (decided && saidIn === undefined && presumed(plannedIn) > now - rules.tick) return []
    const thought = draw < second ? presumed(draw) : Number.NEGATIVE_INFINITY
    return lostAt ?? saidOut ?? Math.max(thought, (saidIn ?? Number.NEGATIVE_INFINITY) + draw - plannedIn)
  })
  // What was to go in on its heat, and did about then, tells that it was lit long enough before.
  const lasts = plan.fires?.[1] ? plan.fires[1].ready - hour : 0
  const atLatest = Math.min(
    ...told.flatMap(({planned, at, setIn}) =>
      setIn && planned >= second && at - lasts >= hour - ABOUT_THEN ? [at - lasts] : [],
    ),
  )
  const onTick = (at: number): number => Math.ceil(at / rules.tick) * rules.tick
  const byPlan = Math.min(atLatest, Math.max(hour, ...outs.map(onTick)))
  // What went in on its heat was set in on some; and at night, or where nothing waits for it, nobody lights one.
  const wanted = parts.some(({at, saidIn, lostAt}) => at >= second && saidIn === undefined && lostAt === undefined)
  const mayBe = !log.further && byPlan <= now && now < rules.nightFrom && wanted && !Number.isFinite(atLatest)
  const unlit = mayBe && stayedOut(input, log, firing, {...plan.fires![1]!, lit: byPlan})
  const secondAt = log.further?.[0]?.lit ?? (unlit ? onTick(now) : byPlan)
  // What was to come out before something that the log does tell of, or at the opening at which that went in, came out before it as well, if it had had its time.
  const beforeTold = (planned: number): number =>
    Math.min(...told.flatMap((one) => (one.planned > planned || (one.setIn && one.planned === planned) ? [one.at] : [])))
  const set: NonNullable<PlanProblem['done']>['set'][number][] = []
  const drawn: Load[] = []
  const meant = partsByDish(morning.loads)
  const toCome: Followed[] = []
  const meantSecond = morning.fires?.[1]?.lit ?? Number.POSITIVE_INFINITY
  const sinceMorning = (planned: number): number =>
    planned < meantSecond || !Number.isFinite(secondAt) ? lit - morning.lit : Math.max(0, secondAt - meantSecond)
  const later = (planned: number, first: number | undefined): number =>
    Math.max(presumed(planned), first === undefined ? Number.NEGATIVE_INFINITY : first + sinceMorning(first))
  // What was to go in at an opening of which the log tells went in then, unless that was so long before that one went in alone.
  const laterIn = (planned: number, first: number | undefined): number => {
    const soonest = presumed(planned) - ABOUT_THEN
    const same = told.flatMap((one) => (one.planned === planned && one.at >= soonest ? [one.at] : []))
    return same.length > 0 ? Math.max(...same) : later(planned, first)
  }
  /**
   * From when on at the soonest a dough can have been set in of which the log does not tell that it was: what was worked late by half of the
   * time that it then wants, and what was looked at and had not risen only when that is noted.
   */
  const doughFrom = ({entry: {dish: id}, at, saidIn}: Told): number => {
    const dish = byId.get(id)
    if (!dish?.dough || saidIn !== undefined) return Number.NEGATIVE_INFINITY
    const {rise, prove} = dish.dough
    const its = parts.filter(({entry}) => entry.dish === id)
    const times = [...new Set(its.map((part) => part.at))].sort((a, b) => a - b)
    const deeds = (deed: DoughDeed): number[] => doughDeedsOf(log, deed, dish, morning, problem.dishes)
    const lastIn = Math.max(...its.map((part) => part.saidIn ?? Number.NEGATIVE_INFINITY))
    const [next] = times.filter((time) => its.some((part) => part.at === time && part.saidIn === undefined))
    if (at === next && deeds('not risen').some((seen) => seen > lastIn)) return Number.POSITIVE_INFINITY
    const [mixed, shaped] = (['mixed', 'shaped'] as const).map((deed) => deeds(deed)[times.indexOf(at)])
    const proves = prove?.likely ?? 0
    if (shaped !== undefined) return shaped + rules.leastRise * proves
    return mixed === undefined ? Number.NEGATIVE_INFINITY : mixed + rules.leastRise * (rise + proves)
  }
  const since = testedSince(log, now)
  const litFires = (log.further?.map((fire) => fire.lit) ?? [secondAt]).filter((at) => at <= now)
  const timed = parts.map((part) => {
    const {entry, count, at: plannedIn, draw: plannedOut, saidIn, saidOut, lostAt} = part
    const early = take(meant.get(entry.dish) ?? [], count, plannedIn)
    // What is known to have been set in late is not thought drawn before it has had its time, or, where something went in that was to go in
    // after it, as much of it as will do.
    const ready = doughFrom(part)
    const by = Math.max(saidIn ?? Number.NEGATIVE_INFINITY, ready) - plannedIn
    const thought = Math.max(later(plannedOut, early?.draw), by + plannedOut)
    const byThen = Math.max(beforeTold(plannedOut), by + entry.draw.low)
    const unsaidOut = part.stays ? Number.POSITIVE_INFINITY : Math.min(thought, byThen)
    // Nothing bakes on while a later fire burns.
    const emptied = litFires.find((at) => (saidIn === undefined ? plannedIn < second : at > saidIn)) ?? Number.POSITIVE_INFINITY
    return {part, early, ready, drawnAt: lostAt ?? saidOut ?? Math.min(unsaidOut, emptied)}
  })
  for (const {part, early, ready, drawnAt} of timed) {
    const {entry, load, count, at: plannedIn, placed, ...said} = part
    const id = entry.dish
    const {saidOut: out, lostAt} = said
    // What was to be drawn before, or at the same opening, comes out first: its place may be wanted.
    const first = timed.flatMap((t) => (t.part.draw <= plannedIn && Number.isFinite(t.drawnAt) ? [t.drawnAt] : []))
    const unsaid = said.waits ? Number.POSITIVE_INFINITY : Math.max(laterIn(plannedIn, early?.at), ready, ...first)
    const at = lostAt ?? said.saidIn ?? Math.min(unsaid, out ?? Number.POSITIVE_INFINITY)
    // The heat is tested, and noted, before it is set in, and again and again while it waits for that.
    const sure = lostAt ?? said.saidIn ?? out
    const from = told.some((one) => one.setIn && one.planned === plannedIn) ? now : since
    if (at > now || (sure === undefined && at > from - rules.tick)) {
      toCome.push(part)
      continue
    }
    set.push({dish: id, count, at, drawn: drawnAt <= now ? drawnAt : null, placed, ...(lostAt === undefined ? {} : {lost: true})})
    if (drawnAt <= now)
      drawn.push({number: load.number, at, dishes: [{...entry, count, draw: {...entry.draw, likely: drawnAt}}], placed})
  }
  const past: OvenEvent[] = []
  // Loads already drawn are no longer the planner's: they stay in the oven's history here.
  const gone: OvenEvent[] = []
  const baked = set.filter((s) => !s.lost)
  for (const s of baked) {
    const dish = byId.get(s.dish)
    if (!dish) continue
    const event = loadEvent(dish, s.count, s.at - lit)
    past.push(event)
    if (s.drawn !== null) gone.push(event)
  }
  past.push(...openingsOf(baked, byId, lit, log.doors))
  gone.push(
    ...openingsOf(
      baked.filter((s) => s.drawn !== null),
      byId,
      lit,
      log.doors.filter((d) => !set.some((s) => s.drawn === null && Math.abs(s.at - lit - d.minutes) <= SAME_OPENING)),
    ),
  )
  past.sort((a, b) => a.minutes - b.minutes)
  const meantAgain = furtherFires(log, plan, secondAt)
  const burned = firesOf({further: meantAgain}).filter(({minutes}) => minutes < now - lit)
  const calibration = calibrate(input.oven, {
    firing,
    readings: log.readings,
    events: inOrder([...past, ...burned]),
    ...(input.parameters ? {prior: input.parameters} : {}),
  })
  const {parameters} = calibration
  const runs = new OvenRuns(input.oven)
  const simulate = simulator({oven: input.oven, parameters}, runs)
  const withPast: Simulate = (option, events, exact) => simulate(option, inOrder([...gone, ...events]), exact)
  const hours = ((plan.forecast.baking.likely.length - 1) * plan.forecast.step) / 60
  const foresee = (events: readonly OvenEvent[]): Forecast =>
    forecast(input.oven, {firing, parameters: likelyOnly(parameters), events: inOrder([...past, ...events]), hours, runs})
  const ahead = (log.further?.length ?? 0) === 0 && burned.length === 0 ? meantAgain : []
  const inside = baked.filter((s) => s.drawn === null)
  const wait =
    ahead.length === 0 || inside.length === 0
      ? 0
      : waitFor(ahead[0]!.minutes, inside, byId, lit, curveOf(foresee([]), problem.ambient ?? 20))
  const further = wait > 0 ? meantAgain.map((fire) => ({...fire, minutes: fire.minutes + wait})) : meantAgain
  const fires = firesOf({further})
  const start: FiringOption = {
    firing,
    ...(further.length > 0 ? {further} : {}),
    forecast: foresee(fires),
  }
  /** When the log says that the doughs were worked of what is not set in yet. */
  const toldWork = (deed: DoughDeed, id: string): number[] => {
    const baked = new Set(set.flatMap((s) => (s.dish === id ? [s.at] : []))).size
    const dish = byId.get(id)
    if (!dish?.dough) return []
    const told = doughDeedsOf(log, deed, dish, morning, problem.dishes)
    // A dough may be looked at more than once.
    return deed === 'not risen' ? told : told.slice(baked)
  }
  // A fire lit late puts off nothing that was to be done the day before.
  const presumedDough = (planned: number): number => (planned < 0 ? planned : presumed(planned))
  const toldDoughs: ToldDoughs = {
    mixed: (id) => toldWork('mixed', id),
    // What is noted is that it is done: its proving begins then.
    shaped: (id, count) => toldWork('shaped', id).map((at) => at - workOf(byId.get(id)!, count).shape),
    mixing: (id, count) => workOf(byId.get(id)!, count).mix,
    rising: (id, count) => {
      const dish = byId.get(id)!
      const {mix, shape} = workOf(dish, count)
      return {inBulk: mix + (dish.dough?.rise ?? 0), proving: shape + (dish.dough?.prove?.likely ?? 0)}
    },
    // What has been set in since had risen by then.
    notRisen: (id) => toldWork('not risen', id).findLast((seen) => set.every((s) => s.dish !== id || s.at < seen)),
  }
  const restWith = (doughs: readonly PlannedDough[]): PlanProblem => ({
    ...problem,
    firings: [start],
    done: {now, lit, set, plan, doughs},
  })
  const planRest = (whole: PlanProblem): Plan => planDay(whole, {...input.options, simulate: withPast, spare})
  const doughs = doughsSoFar(now, plan, toCome, toldDoughs, presumedDough)
  const inTurnRest = restWith(doughs)
  const inTurnPlan = planRest(inTurnRest)
  // What had not risen waits till it is looked at again, unless something is lost for that.
  const sooner = inTurnPlan.unplaced.length > 0 ? soonerThanLooked(doughs) : null
  const soonerPlan = sooner && planRest(restWith(sooner))
  const lessLost = soonerPlan !== null && soonerPlan.unplaced.length < inTurnPlan.unplaced.length
  const [rest, planned] = lessLost ? [restWith(sooner!), soonerPlan] : [inTurnRest, inTurnPlan]
  const last = log.further?.at(-1)
  const lastAgain = last && last.raked === null && further.length === log.further!.length ? further.at(-1)! : null
  const again = lastAgain !== null && now - lit < lastAgain.minutes + lastAgain.firing.burn
  const burns = again || (log.raked === null && !last && now < lit + firing.burn)
  const fire =
    burns && input.ways
      ? stillBurning(input.oven, {
          now: now - lit,
          plan,
          start,
          again,
          parameters,
          events: inOrder([...past, ...(again ? fires.slice(0, -1) : fires)]),
          runs,
        })
      : null
  const trying = {...input.options, simulate: withPast}
  /** The first fire and another, in place of any that is to come, where that does not burn into the night. */
  const another = (at: number, minutes: number): FiringOption | null => {
    const more = usualFiring(input.oven, minutes)
    if (isNight(problem, at) || isNight(problem, at + more.burn + more.soak)) return null
    const all = [{minutes: at - lit, firing: more}]
    return {firing, further: all, forecast: foresee(firesOf({further: all}))}
  }
  const ways = fire
    ? burnWays(rest, planned, fire, trying, planDay)
    : input.ways && !burns && burned.length === 0 && input.options?.effort !== 'quick'
      ? againWays(rest, planned, another, trying, planDay)
      : []
  const whole = ways.length > 0 ? {...planned, ways} : planned
  const meantFire = {...start, firing: morning.firing}
  const meantOven = simulator({oven: input.oven, ...(input.parameters ? {parameters: input.parameters} : {})}, runs)
  const expected = bakingAt(meantOven(meantFire, inOrder([...past, ...burned]), false), now - lit)
  return {again: whole, followed: {...whole, loads: [...drawn, ...whole.loads]}, rest, said: calibration.said, expected, unlit}
}

/** The loads of the morning's plan, with what of them the log says was set in and another plan leaves out altogether. */
function missingOf(plan: Plan, morning: Plan, log: FiringLog, dishes: ReadonlyMap<string, Dish>): Load[] {
  const has = partsByDish(plan.loads)
  const setIn = (id: string): boolean => {
    const dish = dishes.get(id)
    const rows = dish ? log.rows.filter((row) => row.what === 'set in' && isOf(row, dish)) : []
    if (rows.length === 0) return false
    // Several dishes of a day may go by one name: what the plan has of it went in first.
    const named = [...dishes.values()].filter((other) => rows.some((row) => isOf(row, other)))
    const planned = named.flatMap(({id: other}) => has.get(other) ?? []).reduce((sum, {count}) => sum + count, 0)
    return planned === 0 || rows.reduce((sum, {count}) => sum + (count ?? 0), 0) > planned
  }
  return morning.loads.flatMap((load) => {
    const lost = load.dishes.filter((d) => !has.has(d.dish) && setIn(d.dish))
    return lost.length === 0
      ? []
      : [{...load, dishes: lost, placed: load.placed.filter((p) => lost.some((d) => d.dish === p.dish))}]
  })
}

const inOrder = (events: readonly OvenEvent[]): OvenEvent[] => [...events].sort((a, b) => a.minutes - b.minutes)

/** Minutes by which a later fire may have been lit before its hour, or an opening been before its own. */
const ABOUT_THEN = 30

/** Minutes by which a load has to go in otherwise than at its time to be told as a reason. */
const UNTIMELY = 10

/** What the log says went in most too late, or too soon, by the plan that was followed then: the load's dishes, and by how many minutes. */
interface Untimely {
  readonly dishes: readonly string[]
  readonly minutes: number
}

/** Null where all went in about when it should. */
function untimelyLoad(
  {done}: PlanProblem,
  dishes: ReadonlyMap<string, Dish>,
  log: FiringLog,
  inForce: readonly InForce[],
): Untimely | null {
  const off = done!.set.flatMap(({dish: id, at, count, lost}) => {
    const dish = dishes.get(id)
    if (!dish || lost || !rowAt(log, 'set in', at, dish)) return []
    const {plan} = inForce.findLast(({from}) => from <= at)!
    const part = take(partsByDish(plan.loads).get(id) ?? [], count, at)
    return part ? [{id, at, minutes: at - part.at - (log.lit! - plan.lit)}] : []
  })
  const worst = off.reduce((most, {minutes}) => (Math.abs(minutes) > Math.abs(most) ? minutes : most), 0)
  if (Math.abs(worst) < UNTIMELY) return null
  const first = off.find(({minutes}) => minutes === worst)!
  const together = off.filter(({at, minutes}) => at === first.at && minutes === worst)
  return {dishes: [...new Set(together.map(({id}) => id))], minutes: worst}
}

/** Minutes within which a door that the log notes is the opening at which something was set in or drawn. */
const SAME_OPENING = 2.5

/** The door's openings so far: those the log notes, and those at which something was set in or drawn, for as long as the hands need. */
function openingsOf(
  set: NonNullable<PlanProblem['done']>['set'],
  byId: ReadonlyMap<string, Dish>,
  lit: number,
  noted: readonly OvenEvent[],
): OvenEvent[] {
  const hands = new Map<number, number>()
  for (const s of set) {
    const dish = byId.get(s.dish)
    if (!dish) continue
    for (const at of s.drawn === null ? [s.at] : [s.at, s.drawn])
      hands.set(at - lit, (hands.get(at - lit) ?? 0) + handlingOf(dish) * s.count)
  }
  const own = doorEvents(hands).filter((e) => !noted.some((d) => Math.abs(d.minutes - e.minutes) <= SAME_OPENING))
  return [...noted, ...own]
}

/**
 * Dishes that are wanted before any fire of the day could have them ready, in an oven that has nothing else to do. What to write is when the
 * plan has them, and the fire with which the day was tried; other dishes cool an oven that has to fall, so that one may be had sooner than
 * by itself, and then that it cannot be is not said.
 */
function tooEarly(problem: PlanProblem, plan: Plan): Message[] {
  const {day, dishes} = problem
  const earlier = plan.ways?.find(({kind, works, late}) => kind === 'earlier fire' && works && late < 0)?.words.values['from']
  const fire = typeof earlier === 'object' && earlier.unit === 'clock' ? earlier.value : null
  return dishes.flatMap((dish): Message[] => {
    const wanted = dueOf(dish, day.serve)
    const drawn = plan.loads.flatMap((load) => load.dishes.flatMap((d) => (d.dish === dish.id ? [d.draw.likely] : [])))
    if (wanted === null || drawn.length === 0) return []
    const soonest = rules.tick * Math.ceil(soonestOf(problem, dish) / rules.tick)
    const last = Math.max(...drawn)
    if (!Number.isFinite(soonest) || wanted >= soonest || last < soonest) return []
    const key = dish.wantedBy === null ? 'serve:' : dish.wantedHot ? 'hot at' : 'wanted by'
    const later = `“${key} ${writeClock(last)}”`
    return [
      {
        ...lineOf(day, dish),
        severity: 'warning',
        rule: 'too-early',
        reason: `${dish.title}: wanted by ${writeClock(wanted)}; lit at ${writeClock(day.fireFrom)}, no fire has that ready before ${writeClock(soonest)}`,
        times: [wanted, day.fireFrom, soonest, last, ...(fire === null ? [] : [fire])],
        suggest:
          fire === null ? `write ${later} or later` : `write ${later} or later, or “fire from: ${writeClock(fire)}” or earlier`,
      },
    ]
  })
}

/** What moved between two plans, and why. */
function changesOf(
  before: Plan,
  after: Plan,
  now: number,
  dishes: ReadonlyMap<string, Dish>,
  {expected, untimely}: {readonly expected: number | null; readonly untimely: Untimely | null},
): NonNullable<Plan['changes']> {
  const out: NonNullable<Plan['changes']>[number][] = []
  const late = after.lit - before.lit
  // Held against the oven after what was really done: neither a late fire nor bread that went in late makes an oven hotter than it should be.
  const off = expected === null ? 0 : bakingAt(after.forecast, now - after.lit) - expected
  const speaker = english((id) => dishes.get(id)?.title ?? id)
  const minutes = (value: number): PhraseValue => ({unit: 'minutes', value: Math.abs(value)})
  const word = (of: string): PhraseValue => ({unit: 'word', word: of})
  const heat = {difference: {unit: 'difference', value: Math.abs(off)}, at: {unit: 'clock', value: now}} as const
  const reasons: Phrase[] = []
  if (late !== 0) reasons.push(phrase(late > 0 ? 'why lit later' : 'why lit earlier', {minutes: minutes(late)}))
  if (untimely)
    reasons.push(
      phrase(untimely.minutes > 0 ? 'why set in later' : 'why set in earlier', {
        dishes: {unit: 'dishes', dishes: untimely.dishes, whole: true},
        minutes: minutes(untimely.minutes),
      }),
    )
  const alone = reasons.length === 0
  if (Math.abs(off) >= 3 && alone) reasons.push(phrase(off > 0 ? 'why hotter' : 'why cooler', heat))
  if (Math.abs(off) >= 3 && !alone) reasons.push(phrase(off > 0 ? 'why hotter too' : 'why cooler too', heat))
  const [first = phrase(expected === null ? 'why log' : 'why readings'), ...more] = reasons
  const because = more.length === 0 ? first : phrase('why both', {reasons: {unit: 'phrases', phrases: reasons}})
  const put = (dish: string | null, what: Phrase, moved: number, why: Phrase, reason = speak(why, speaker)): void => {
    const said = {dish, what: speak(what, speaker), why: reason, minutes: moved, words: {what, why}}
    // Parts of a dish that change alike are told once.
    if (!out.some((o) => o.dish === dish && o.what === said.what && o.why === said.why)) out.push(said)
  }
  // What is lost is told first, then what may come out underdone.
  for (const u of after.unplaced)
    if (!before.unplaced.some((b) => b.dish === u.dish)) {
      if (u.words) put(u.dish, phrase('left out'), 0, u.words, u.reason)
      else out.push({dish: u.dish, what: 'left out', why: u.reason, minutes: 0})
    }
  for (const [dish, all] of wantingByDish(after.loads, dishes)) for (const what of all.values()) put(dish, what, 0, because)
  const was = partsByDish(before.loads)
  for (const load of after.loads)
    for (const d of load.dishes) {
      const old = take(was.get(d.dish) ?? [], d.count, load.at)
      if (!old) continue
      const moved = load.at - old.at
      const drawn = d.draw.likely - old.draw
      if (d.alreadyIn !== true && moved !== 0)
        put(d.dish, phrase(moved > 0 ? 'moved later' : 'moved earlier', {minutes: minutes(moved)}), moved, because)
      // The map on the wall has it elsewhere.
      const {zone} = old.entry
      if (d.alreadyIn !== true && zone !== undefined && d.zone !== undefined && d.zone !== zone)
        put(d.dish, phrase('moved place', {zone: word(d.zone), old: word(zone)}), moved, because)
      // A draw that moves with its set-in goes without saying.
      if (drawn !== 0 && (d.alreadyIn === true || moved === 0 || Math.abs(drawn - moved) > TOLD_MINUTES))
        put(d.dish, phrase(drawn > 0 ? 'draw later' : 'draw earlier', {minutes: minutes(drawn)}), drawn, because)
    }
  const {moved, all} = elsewhere(before, after)
  if (moved > 0) put(null, phrase('moved vessels', {count: moved, all}), 0, because)
  return out
}

/** Metres by which a vessel may stand beside where it stood and be seen to stand there. */
const BESIDE = 0.01

/** How many vessels of what is still to be set in stand in none of their dish's places of the plan before, and of how many that had one. */
function elsewhere(before: Plan, after: Plan): {readonly moved: number; readonly all: number} {
  const free = before.loads.flatMap(({placed}) => placed)
  let moved = 0
  let all = 0
  for (const {dishes, placed} of after.loads)
    for (const {dish, alreadyIn} of dishes.filter((one, i) => dishes.findIndex((d) => d.dish === one.dish) === i)) {
      if (alreadyIn || free.every((p) => p.dish !== dish)) continue
      for (const vessel of placed.filter((p) => p.dish === dish)) {
        all++
        const same = free.findIndex(
          (p) => p.dish === dish && Math.hypot(p.x - vessel.x, p.y - vessel.y) <= BESIDE && p.turn === vessel.turn,
        )
        if (same < 0) moved++
        else free.splice(same, 1)
      }
    }
  return {moved, all}
}

/** What each dish has less than it should, in words by their id: of parts that want alike the one that wants most. */
function wantingByDish(loads: Plan['loads'], dishes: ReadonlyMap<string, Dish>): Map<string, Map<string, Phrase>> {
  const out = new Map<string, Map<string, Phrase>>()
  const worst = new Map<Phrase, number>()
  for (const {dish, eased: less} of loads.flatMap((load) => load.dishes)) {
    if (!less) continue
    const mine = out.get(dish) ?? new Map<string, Phrase>()
    out.set(dish, mine)
    for (const [what, lacks] of wantingOf(less, dishes.get(dish))) {
      const told = mine.get(what.id)
      if (told && worst.get(told)! >= lacks) continue
      mine.set(what.id, what)
      worst.set(what, lacks)
    }
  }
  return out
}

/** What a dish has less than it should, in words, and how much that is. */
function wantingOf({start, end, dose}: Eased, dish: Dish | undefined): [Phrase, number][] {
  const out: [Phrase, number][] = []
  const difference = (value: number): PhraseValue => ({unit: 'difference', value})
  if (start >= TOLD) out.push([phrase('eased start', {difference: difference(start)}), start])
  if (end >= TOLD) out.push([phrase('eased end', {difference: difference(end)}), end])
  if (!dish || dose > 1 - rules.doseWanting) return out
  const share = (minutes: number | undefined): number =>
    doseNeeded(dish.need, minutes) / doseNeeded(dish.need) - 2 * rules.doseWanting
  const percent = Math.floor(100 * dose)
  const id =
    dose < share(eased(dish, 'far').enough)
      ? 'eased unfinished'
      : dose < share(shortest(dish.need))
        ? 'eased short'
        : 'eased dose'
  return [...out, [phrase(id, {percent}), 1 - dose]]
}

/** What will come out of the oven underdone is a warning, too: a plan in which every dish has a place is not yet a good one. */
function unfinished(
  changes: NonNullable<Plan['changes']>,
  dishes: ReadonlyMap<string, Dish>,
  day: Day,
  cold: ReadonlySet<string>,
): Message[] {
  return changes.flatMap(({dish: id, words}): Message[] => {
    const dish = dishes.get(id ?? '')
    // What is not to be eaten is not to be baked on.
    if (!dish || words?.what.id !== 'eased unfinished' || cold.has(dish.id)) return []
    return [
      {
        ...lineOf(day, dish),
        severity: 'warning',
        rule: 'unfinished',
        reason: `${dish.title}: drawn with ${String(words.what.values['percent'])} % of its heat`,
        suggest: 'bake it on in another oven unless it is done',
      },
    ]
  })
}

/** What the log says was set in and the day has among its spare receipts only: the plan is reckoned without its heat and its place. */
function spareSetIn(baked: readonly {readonly dish: Dish; readonly row: LogRow}[], log: FiringLog): Message[] {
  return baked.map(
    ({dish, row}): Message => ({
      ...placeIn(log, row.line),
      severity: 'warning',
      rule: 'spare-set-in',
      reason: `${dish.title}: set in, and the day has it among its spare receipts only, so the plan knows nothing of its place and its heat`,
      suggest: 'move its line up into the day’s list, with how much went in, and plan again',
    }),
  )
}

/** The wood that is taken to have been burned, where the log does not tell: all that is reckoned of the oven begins with it. */
function woodUnlogged(log: FiringLog, plan: Plan, wood: number): Message[] {
  if (log.raked === null || log.wood !== null) return []
  const mass = `${Math.round(wood)} kg`
  const sooner = log.raked - log.lit! < plan.firing.burn - rules.tick
  return [
    {
      ...placeIn(log),
      severity: 'info',
      rule: 'wood-unlogged',
      reason: sooner
        ? `${mass} of wood taken to have been burned till it was raked out; the log does not tell`
        : `${mass} of wood taken to have been burned, as planned; the log does not tell`,
      suggest: `note what it was, such as “wood ${mass}”`,
    },
  ]
}

/** What the log says was dropped, burnt or else lost: told among the changes, since nothing takes its place. */
function lostOf(plan: Plan, log: FiringLog, dishes: ReadonlyMap<string, Dish>): NonNullable<Plan['changes']>[number][] {
  const speaker = english((id) => id)
  return lossesOf(plan, log, dishes).map(({dish, lost, all}) => {
    const words = {
      what: phrase('lost', {count: {unit: 'count', value: lost}, all: {unit: 'count', value: all}}),
      why: phrase('why log'),
    }
    return {dish: dish.id, what: speak(words.what, speaker), why: speak(words.why, speaker), minutes: 0, words}
  })
}

/** Share of the heat of its receipt's shortest time with less of which a dish was hardly done, whatever the oven's range. */
const HARDLY = 0.6

/** A plan, and since when it was the one to be followed. */
interface InForce {
  readonly from: number
  readonly plan: Plan
}

/** Whether the plan that was followed then had a dish that was set in at `at` drawn no later than it was. */
function drawnAsPlanned(inForce: readonly InForce[], log: FiringLog, dish: string, at: number, drawn: number): boolean {
  const {plan} = inForce.findLast(({from}) => from <= drawn)!
  const shift = log.lit! - plan.lit
  const late = (part: Followed): number => at - (part.at + shift)
  const parts = partsOf(plan.loads).filter(({entry}) => entry.dish === dish)
  const [nearest] = parts.sort((a, b) => Math.abs(late(a)) - Math.abs(late(b)))
  // What was set in late is not done the sooner for it.
  return nearest !== undefined && drawn >= nearest.entry.draw.low + shift + Math.max(0, late(nearest)) - rules.tick
}

/**
 * What the log says was drawn far too early: a slip of the pen, or food that must not be eaten as it is. What was drawn when the plan then
 * had it drawn was seen to be done, whatever a later reading makes of the oven.
 */
function drawnEarly(
  {done, firings, ambient}: PlanProblem,
  dishes: ReadonlyMap<string, Dish>,
  log: FiringLog,
  inForce: readonly InForce[],
): {readonly change: NonNullable<Plan['changes']>[number]; readonly message: Message}[] {
  const curve = curveOf(firings[0]!.forecast, ambient ?? 20)
  const speaker = english((id) => id)
  return done!.set.flatMap(({dish: id, at, drawn}) => {
    const dish = dishes.get(id)
    const row = dish && rowAt(log, 'drawn', drawn, dish)
    if (!dish || !row || drawn === null) return []
    const table = doseTable(curve, ACROSS, dish.need.done)
    const dose = (minutes: number): number => table[Math.max(0, Math.min(table.length - 1, Math.round(minutes - log.lit!)))]!
    const share = (dose(drawn) - dose(at)) / doseNeeded(dish.need, shortest(dish.need))
    if (share >= HARDLY || drawnAsPlanned(inForce, log, id, at, drawn)) return []
    const percent = Math.max(0, Math.floor(100 * share))
    const words = {what: phrase('drawn early', {percent}), why: phrase('why log')}
    return [
      {
        change: {dish: id, what: speak(words.what, speaker), why: speak(words.why, speaker), minutes: 0, words},
        message: {
          ...placeIn(log, row.line),
          severity: 'warning',
          rule: 'drawn-early',
          reason: `${dish.title}: logged as drawn with ${percent} % of its heat`,
          suggest: 'put the time right, or bake it on in another oven unless it is done',
        },
      },
    ]
  })
}

/** Minutes by which a draw may move otherwise than its set-in without a word. */
const TOLD_MINUTES = 15

/** °C less than which is not worth a word. */
const TOLD = 0.5

/** The falling oven with a plan's loads in it, for `planDay`. */
export function simulator(input: Pick<MakePlan, 'oven' | 'parameters'>, runs = new OvenRuns(input.oven)): Simulate {
  const likely = likelyOnly(input.parameters ?? PRIOR)
  return (option: FiringOption, events: readonly OvenEvent[], exact: boolean): Forecast =>
    forecast(input.oven, {
      firing: option.firing,
      parameters: exact ? (input.parameters ?? PRIOR) : likely,
      events,
      hours: (option.forecast.baking.likely.length * option.forecast.step) / 60,
      runs,
    })
}

/** The day as data: the dishes, and one curve for each length of fire that could serve them. */
export function problemOf(input: MakePlan, dishes: readonly Dish[], runs = new OvenRuns(input.oven)): PlanProblem {
  const likely = likelyOnly(input.parameters ?? PRIOR)
  const {day} = input
  const hours = hoursOf(day, dishes)
  const hottest = Math.max(0, ...dishes.map((d) => d.need.startLow))
  const firings: FiringOption[] = []
  const make = (firing: Firing, events: readonly OvenEvent[] = []): Forecast =>
    forecast(input.oven, {firing, parameters: likely, events, hours, runs})
  for (const burn of burns) {
    const firing = usualFiring(input.oven, burn)
    const f = make(firing)
    const peak = f.baking.likely[Math.round(f.ready / f.step)] ?? 0
    // A fire too weak for the hottest dish is of no use; one that leaves the oven far too hot only burns wood and time.
    if (peak < hottest && burn < 300) continue
    firings.push({firing, forecast: f})
    if (peak > hottest + 220) break
  }
  if (day.firings >= 2) firings.push(...twoFires(input, dishes, null, hours, runs))
  return {
    day,
    dishes,
    firings,
    floor: input.oven.floor,
    mouth: input.oven.mouth,
    vaultHeight: input.oven.vaultHeight,
    ...(input.oven.ashBed === undefined ? {} : {ashBed: input.oven.ashBed}),
    ambient: input.oven.ambient,
  }
}

/** Hours of forecast a day needs: to next day's afternoon where something stays overnight, and as long as anything may take. */
function hoursOf(day: Day, dishes: readonly Dish[]): number {
  const night = dishes.some((d) => d.need.overnight || (d.wantedBy ?? 0) >= 1440 || d.need.startHigh <= 125)
  const last = Math.max(1440 + 14 * 60, day.serve, ...dishes.map(({wantedBy}) => wantedBy ?? 0))
  return night ? Math.ceil((last - day.fireFrom) / 60) : 22
}
