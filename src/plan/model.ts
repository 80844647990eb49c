import {passesMouth} from '../scale/floor.js'
import type {Dish, HeatNeed, Placed} from '../scale/types.js'
import {cheapestFirst} from './cheapest-first.js'
import {type ChoiceLimits, type Choices, choicesOf, hotTable} from './choices.js'
import {type Curve, celsiusAt, curveOf, doseNeeded, doseTable, whereIndex} from './curve.js'
import {amissBy, risenWithin, type Window} from './dough.js'
import {inOven} from './ease.js'
import {fedBy} from './fed.js'
import type {FloorGrid} from './floor-grid.js'
import {type Followed, followed} from './followed.js'
import {handlingOf, wake} from './hands.js'
import {isSlackWork} from './keeps.js'
import {madeUpBy} from './made-by.js'
import {madeRightBefore} from './making-time.js'
import {phrase} from './phrases.js'
import {rules, weights} from './rules.js'
import {mostOnFloor} from './seats.js'
import type {Day, FiringOption, Phrase, PlanProblem} from './types.js'

/**
 * The compact model: on one curve, every dish has a list of *choices* (set in at tick s, drawn at tick e, in one part of the floor),
 * each with its cost; the floor, the hands and the lanes limit which can be taken together; every opening of the door costs once.
 * The same model as a mixed-integer program is `bench/plan-milp.ts`; `docs/planning.md` states it.
 */
export interface Job {
  readonly dish: Dish
  /** First vessel of this part, and how many vessels: a dish too large for the floor is set in in parts. */
  readonly first: number
  readonly count: number
  /** People expected whom all of its dish feeds (`fedBy`). */
  readonly fed: number
  /** m² of floor: its share of the usable floor, by how many such vessels fill it. */
  readonly area: number
  /** Where it fills all three parts of the floor: how many times the most of its dose the hottest of it bears (`rules.spread`). */
  readonly spread?: number
  /** Minutes of hands to set it in, or to draw it. */
  readonly handling: number
  /** Set in very hot to fall (1), a crust that waits half an hour for those (2), or neither (0). */
  readonly order: 0 | 1 | 2
  /** Minutes after midnight from which on a later draw costs; null where any hour will do. */
  readonly due: number | null
  /** Drawn before this, minutes after midnight, it is no longer hot when the day wants it so: −∞ where it does not. */
  readonly hotFrom: number
  /** Minutes after it is due beyond which it is of little use: infinite where it could not be had sooner, or the day has begun. */
  readonly bears: number
  /** Where not all can be had in time: leaving it out is priced by whom it feeds, and so is each minute beyond what is borne. */
  readonly weighed?: boolean
  /** Already set in at this clock time. */
  readonly since: number | null
  /** Where it stands when already in: 0 … 3. */
  readonly stands: number
  /** Minutes for which it is made up right before it is set in (`madeRightBefore`). */
  readonly making?: number
  /** Its vessels' places when already in. */
  readonly stood?: readonly Placed[]
  /** What the plan has of it that was being followed, when a day is planned again. */
  readonly was?: Followed
  /** When its dough is fit to be set in, on a day that has begun. */
  readonly risen?: Window
  /** When it can have been made up, of what has no dough. */
  readonly made?: Window
}

/** A curve with the choices on it, at one phase of the 5-minute clock against the lighting. */
export interface Program {
  readonly index: number
  readonly option: FiringOption
  readonly curve: Curve
  /** Minutes from lighting to tick 0 … 4: lit + phase is a clock tick. */
  readonly phase: number
  /** Number of ticks. */
  readonly ticks: number
  readonly choices: readonly Choices[]
  /** kg over all fires. */
  readonly wood: number
  /** m²·h of hot floor there is. */
  readonly hotFloor: number
  /** Spans of minutes after lighting in which a further fire burns and soaks. */
  readonly blocked: ReadonlyArray<{readonly from: number; readonly to: number}>
}

/** A program at one lighting time: what the search works on. */
export interface Model {
  readonly program: Program
  /** Clock minutes of lighting, and of tick 0. */
  readonly lit: number
  readonly clock0: number
  readonly ticks: number
  readonly jobs: readonly Job[]
  readonly floor: readonly [number, number, number]
  readonly floorTotal: number
  /** Share of a part's floor that is kept free as a lane while something behind it is reached. */
  readonly lane: number
  /** Hand minutes in one opening. */
  readonly hands: number
  /** True where nothing is set in very hot to fall while a crust bakes (`Job.order`), which is no rule but better. */
  readonly apart?: boolean
  /** Choices allowed at this lighting time, cheapest first. */
  readonly s: readonly Int32Array[]
  readonly e: readonly Int32Array[]
  readonly where: readonly Uint8Array[]
  readonly cost: readonly Float64Array[]
  /** Index of each choice in the program's list. */
  readonly origin: readonly Int32Array[]
  /** Wood and idle floor before any dish: added to every total. */
  readonly constant: number
  readonly opening: number
}

/** Where the day asks for a dish. */
export function lineOf({items}: Day, {file, title, wantedBy}: Dish): {file: string; line: number; column: number} {
  // One receipt may be asked for on several lines.
  const mine = items.filter((one) => one.file === file)
  const named = mine.filter((one) => title === one.title || title.startsWith(`${one.title} (`))
  const item = named.find((one) => one.wantedBy === wantedBy) ?? named[0] ?? mine[0]
  return {file: 'day.md', line: item?.line ?? 1, column: item?.column ?? 1}
}

/**
 * When a dish is wanted, minutes after midnight: null for the kinds that the serving time does not bind. What stays in through the night is
 * for no meal of the day that it is set in on, but for one of the next.
 */
export function dueOf(dish: Dish, serve: number): number | null {
  if (dish.wantedBy !== null) return dish.wantedBy
  if (isSlackWork(dish.need) || (dish.need.overnight && serve < NEXT_DAY)) return null
  return serve
}

/** The midnight after the bake day, minutes. */
const NEXT_DAY = 1440

/**
 * From when on a later draw costs, minutes after midnight: from when it is wanted; and of what stays in through the night, where nobody said
 * when, from the hour at which it is drawn next morning (`rules.waking`). Null where it may be drawn at any hour.
 */
export function drawnBy(dish: Dish, serve: number): number | null {
  const {by, unsaid} = meantFor(dish, serve)
  return unsaid ? NEXT_DAY + rules.waking : by
}

/** When a dish is meant to be ready: by when it is wanted, else for the meal where it is none of the slack oven's; `unsaid` where nobody said. */
export function meantFor(dish: Dish, serve: number): {readonly by: number | null; readonly unsaid: boolean} {
  const due = dueOf(dish, serve)
  const unsaid = due === null && !isSlackWork(dish.need)
  return {by: unsaid ? serve : due, unsaid}
}

/** When what is eaten hot is wanted, minutes after midnight; −∞ where it is not eaten hot, or nobody waits for it. */
export function hotUntil(dish: Dish | undefined, serve: number): number {
  return dish?.hot ? (dueOf(dish, serve) ?? Number.NEGATIVE_INFINITY) : Number.NEGATIVE_INFINITY
}

/** Before when a dish that the day wants hot is drawn too soon, minutes after midnight; −∞ where it does not. */
export function hotFromOf(dish: Dish): number {
  return dish.wantedHot && dish.wantedBy !== null ? dish.wantedBy - rules.keepsHot : Number.NEGATIVE_INFINITY
}

/** Which side of the half hour of `rules.settleIn` a dish stands on. */
export function orderOf({need, crust}: Dish): 0 | 1 | 2 {
  // A raised pie falls with the oven too, and waits none the less.
  if (crust === true) return 2
  return need.falling && need.startBest >= rules.settleIn.veryHot ? 1 : 0
}

/**
 * White bread and pies wait until what is set in very hot to fall has been in half an hour (`rules.settleIn`).
 *
 * @param s When a job is set in, ticks, and `other` when another is.
 * @returns False where one of the two goes in too soon after the other.
 */
export function keepHalfHour(job: Job, s: number, another: Job, other: number): boolean {
  if (job.order === 0 || another.order === 0 || job.order === another.order) return true
  const waits = job.order === 2 ? s - other : other - s
  return waits < 0 || waits >= rules.settleIn.minutes / rules.tick
}

/** Why a vessel cannot go in at all: null where it can. */
export function passes(grid: FloorGrid, dish: Dish): {rule: string; reason: string; words: Phrase} | null {
  const conflict = passesMouth(grid.room, {
    dish: dish.title,
    number: 1,
    footprint: dish.vessel.footprint,
    height: dish.vessel.height,
  })
  if (conflict) {
    const {footprint, height} = dish.vessel
    const narrow = footprint.shape === 'circle' ? footprint.diameter : Math.min(footprint.length, footprint.width)
    const {mouth, vaultHeight} = grid.room
    const [id, size, room] =
      conflict.rule === 'mouth width'
        ? (['mouth width', narrow, mouth.width] as const)
        : conflict.rule === 'mouth height'
          ? (['mouth height', height, mouth.height] as const)
          : (['vault height', height, vaultHeight] as const)
    const words = phrase(id, {
      dishes: {unit: 'dishes', dishes: [dish.id]},
      size: {unit: 'metres', value: size},
      room: {unit: 'metres', value: room},
    })
    return {rule: conflict.rule, reason: conflict.reason, words}
  }
  if (mostOnFloor(grid, dish.vessel) === 0)
    return {
      rule: 'too large',
      reason: `one ${dish.vessel.name} does not fit on this floor`,
      words: phrase('too large', {vessel: dish.vessel.name}),
    }
  return null
}

/**
 * The jobs of a day: one a dish, or several where it fills more than the floor or more than one opening's hands.
 *
 * @param split How many parts each dish is set in in, at least (used when whole dishes do not fit together).
 * @param together Dishes that go in at once where the hands can, however unevenly the floor bakes.
 */
export function jobsOf(
  problem: PlanProblem,
  grid: FloorGrid,
  split: ReadonlyMap<string, number> = new Map(),
  together: ReadonlySet<string> = new Set(),
): Job[] {
  const jobs: Job[] = []
  const fed = fedBy(problem)
  for (const dish of problem.dishes) {
    if (passes(grid, dish)) continue
    const already = problem.done?.set.filter((d) => d.dish === dish.id) ?? []
    let first = 1
    const most = mostOnFloor(grid, dish.vessel)
    const each = grid.area / most
    const wanted = dueOf(dish, problem.day.serve)
    const due = drawnBy(dish, problem.day.serve)
    const hotFrom = hotFromOf(dish)
    const bears = wanted === null || problem.done ? Number.POSITIVE_INFINITY : bearable(problem, dish, wanted)
    const before = followed(problem, dish.id)
    already.forEach((past, i) => {
      const base = first
      if (past.drawn === null) {
        const zones = past.placed.map((p) => whereIndex(p.zone))
        const stands = zones.length > 0 && zones.every((z) => z === zones[0]) ? zones[0]! : 3
        jobs.push({
          dish: inOven(dish),
          first,
          count: past.count,
          fed: fed(dish),
          area: past.count * each,
          handling: past.count * handlingOf(dish),
          order: orderOf(dish),
          due,
          hotFrom,
          bears,
          since: past.at,
          stands,
          stood: past.placed.map((v, nth) => ({...v, number: base + nth})),
          ...(before.set[i] ? {was: before.set[i]} : {}),
        })
      }
      if (!past.instead) first += past.count
    })
    const left = dish.count - (first - 1)
    if (left <= 0) continue
    const byHands = Math.max(1, Math.floor((rules.tick * problem.day.hands) / handlingOf(dish)))
    // Half a floor at most in one part: two parts can still go in and come out together. A floor that is filled is filled at once: its
    // vessels stand closer than parts that are set in one by one.
    const atOnce = together.has(dish.id) && left <= Math.min(most, byHands)
    const filled = atOnce || (left > most && left <= Math.min(byHands, dish.atOnce ?? 0))
    const inOne = Math.max(...grid.zones.map((zone) => Math.floor((zone * 1.001) / each)))
    const share = inOne > 0 && !problem.done && tooUneven(problem, dish) ? Math.min(inOne, most / 2) : most / 2
    const half = filled ? left : Math.max(1, Math.floor(share))
    const parts = Math.min(left, Math.max(split.get(dish.id) ?? 1, Math.ceil(left / Math.min(half, byHands))))
    const evenly = Array.from({length: parts}, (_, p) => Math.floor(left / parts) + (p < left % parts ? 1 : 0))
    // What is followed keeps its parts, unless it lacks some.
    const kept = before.rest.map((r) => r.count)
    const counts = kept.length >= parts && kept.reduce((sum, c) => sum + c, 0) === left ? kept : evenly
    let at = first
    counts.forEach((count, p) => {
      const was = before.rest[p]
      const made = madeUpBy(problem, dish, was?.load.number, count)
      jobs.push({
        dish,
        first: at,
        count,
        fed: fed(dish),
        area: Math.min(grid.area * 0.9999999, count * each),
        ...(count >= grid.zones.length && count * each > grid.area - Math.min(...grid.zones) ? {spread: 1 + rules.spread} : {}),
        handling: count * handlingOf(dish),
        order: orderOf(dish),
        due,
        hotFrom,
        bears,
        since: null,
        stands: 3,
        // What goes in in parts mostly goes in at once, and is made as one.
        making: madeRightBefore(dish, left),
        ...(dish.dough && problem.done ? {risen: risenWithin(problem, dish, was?.load.number, count)} : {}),
        ...(made ? {made} : {}),
        ...(was ? {was} : {}),
      })
      at += count
    })
  }
  return jobs
}

/**
 * Whether there is a fire after which the back and the mouth differ by more than a dish's range, so that it has no place across the floor:
 * it goes in then in parts that stand in one part of the floor each.
 */
export function tooUneven({firings, ambient}: PlanProblem, {need}: Dish): boolean {
  const range = need.startHigh - need.startLow
  const kept = Math.min(rules.inHandCelsius, range / 4) + Math.min(rules.marginCelsius, range / 4)
  return firings.some(({forecast}) => {
    const curve = curveOf(forecast, ambient ?? 20)
    const share = (need.startBest - curve.ambient) / Math.max(1, curve.readyCelsius - curve.ambient)
    return (Math.max(...curve.offset) - Math.min(...curve.offset)) * Math.min(1, share) > range - kept
  })
}

/** Spans in which further fires occupy the oven, minutes after lighting. */
export function blockedBy(option: FiringOption): {from: number; to: number}[] {
  return (option.further ?? []).map((f) => ({from: f.minutes, to: f.minutes + f.firing.burn + f.firing.soak}))
}

/** kg of wood over all fires. */
export function woodOf(option: FiringOption): number {
  return option.firing.wood + (option.further ?? []).reduce((sum, f) => sum + f.firing.wood, 0)
}

/** The latest lighting, min after midnight, with which every further fire is raked out before the night; infinite where there is none. */
export function latestLit({further = []}: Pick<FiringOption, 'further'>): number {
  return Math.min(
    Number.POSITIVE_INFINITY,
    ...further.map(({minutes, firing}) => rules.nightFrom - rules.tick - minutes - firing.burn),
  )
}

/** What a layout knows of the fire it is on. */
export interface LayoutFire extends Pick<Program, 'curve' | 'phase' | 'ticks' | 'blocked' | 'wood'> {
  /** See `latestLit`. */
  readonly latestLit: number
}

/** A fire as a layout knows it, on a curve. */
export const layoutFire = (option: FiringOption, curve: Curve, phase: number): LayoutFire => ({
  curve,
  phase,
  ticks: ticksOf(curve, phase),
  blocked: blockedBy(option),
  wood: woodOf(option),
  latestLit: latestLit(option),
})

/** Minutes from lighting to the first tick of the 5-minute clock; 0 while the fire is not lit, since it is lit on a tick. */
export function phaseOf(lit: number | null): number {
  return lit === null ? 0 : ((-lit % rules.tick) + rules.tick) % rules.tick
}

/** Ticks that a curve covers. */
export function ticksOf(curve: Curve, phase: number): number {
  return Math.floor((curve.end - phase) / rules.tick) + 1
}

/** Prepare one firing option: its curve and every job's choices on it. */
export function programOf(
  problem: PlanProblem,
  index: number,
  jobs: readonly Job[],
  grid: FloorGrid,
  lit: number | null,
  margins: boolean,
  option: FiringOption = problem.firings[index]!,
  limits: ReadonlyArray<(ChoiceLimits & {readonly exact?: boolean}) | undefined> = [],
): Program {
  const curve = curveOf(option.forecast, problem.ambient ?? 20)
  const phase = phaseOf(lit)
  const hot = hotTable(curve)
  const blocked = blockedBy(option)
  let hotHours = hot[hot.length - 1]!
  for (const b of blocked)
    hotHours -= Math.max(0, hot[Math.min(hot.length - 1, Math.floor(b.to))]! - hot[Math.min(hot.length - 1, Math.floor(b.from))]!)
  const base = {
    index,
    option,
    curve,
    phase,
    ticks: ticksOf(curve, phase),
    wood: woodOf(option),
    hotFloor: hotHours * grid.area,
    blocked,
  }
  // Dishes alike in everything the choices read share them.
  const memo = new Map<string, Choices>()
  const choices = jobs.map((job, u) => {
    const limit = limits[u]
    const since = job.since === null ? null : job.since - (lit ?? 0)
    const key = JSON.stringify([job.dish.need, job.area, job.dish.place, since, job.stands, limit])
    let c = memo.get(key)
    if (!c) {
      c = choicesOf(job, base, grid, margins && !limit?.exact, since, limit)
      memo.set(key, c)
    }
    return c
  })
  return {...base, choices}
}

/** True where a job may be set in at a clock time: nobody is asleep then, nor when it has to be made up for it. */
export function byDay(problem: PlanProblem, {making = 0}: Pick<Job, 'making'>, clock: number): boolean {
  return !isNight(problem, clock) && !isNight(problem, clock - making)
}

/** True where the baker is asleep. */
export function isNight(problem: PlanProblem, clock: number): boolean {
  return asleep(clock, wake(problem))
}

/** @param woken Minutes after midnight at which the baker gets up. */
function asleep(clock: number, woken: number): boolean {
  const m = ((clock % 1440) + 1440) % 1440
  return m >= rules.nightFrom || m < woken
}

/** People expected whom what a job makes is to feed (`fedBy`). */
export function feedsOf({dish, count, fed}: Pick<Job, 'dish' | 'count' | 'fed'>): number {
  return (fed * count) / Math.max(1, dish.count)
}

/** Ticks from its set-in for which a job's receipt wants the door kept shut; 0 where it does not. */
export function shutTicks({dish: {need}}: Pick<Job, 'dish'>): number {
  return Math.ceil((need.closed?.likely ?? 0) / rules.tick)
}

/** Minutes late. */
export function lateness(job: Pick<Job, 'due'>, drawn: number): number {
  return job.due === null ? 0 : Math.max(0, drawn - job.due)
}

/** Minutes by which it is drawn later than it is wanted, beyond what the plan that was followed had. */
export function laterThanMeant(
  job: Pick<Job, 'due'> & {readonly was?: {readonly draw: number} | undefined},
  drawn: number,
): number {
  return lateness(job, drawn) - (job.was ? lateness(job, job.was.draw) : 0)
}

/** Minutes by which it is drawn too soon to be hot when it is wanted so. */
export function earliness(job: Job, drawn: number): number {
  return Math.max(0, job.hotFrom - drawn)
}

/** What so many minutes late cost, and beyond what is borne. */
export function priceOfLate(late: number, bears: number): number {
  return weights.late * late + (late > bears ? weights.tooLate * (late - bears) : 0)
}

/** Minutes late beyond which a job's lateness is dearer: infinite where all may yet be had in time. */
export function dearFrom({weighed, bears}: Job): number {
  return weighed ? bears : Number.POSITIVE_INFINITY
}

/** Minutes after it is due that a dish may come before it is of little use; from when it could be had at the soonest, if that is later. */
export function bearable(problem: PlanProblem, dish: Dish, due: number): number {
  const soonest = soonestOf(problem, dish)
  return Number.isFinite(soonest) ? rules.bearable + Math.max(0, soonest - due) : Number.POSITIVE_INFINITY
}

/** When a dish could be had at the soonest, with nothing else in the oven and any fire, minutes after midnight; infinite if never. */
export function soonestOf({day, firings, anyFire = firings, ambient}: PlanProblem, {need}: Dish): number {
  let soonest = Number.POSITIVE_INFINITY
  for (const {forecast} of anyFire) {
    // On a fire that is ready no sooner than this, nothing is done sooner.
    if (forecast.ready < soonest) soonest = Math.min(soonest, soonestDone(need, curveOf(forecast, ambient ?? 20)))
  }
  return day.fireFrom + soonest
}

const soonestOn = new WeakMap<HeatNeed, WeakMap<Curve, number>>()

/** Minutes after lighting at which a dish is done at the soonest; infinite if never. */
function soonestDone(need: HeatNeed, curve: Curve): number {
  const mine = soonestOn.get(need) ?? new WeakMap<Curve, number>()
  soonestOn.set(need, mine)
  const known = mine.get(curve)
  if (known !== undefined) return known
  const dose = doseNeeded(need)
  let soonest = Number.POSITIVE_INFINITY
  for (const where of [0, 1, 2]) {
    let from = Math.ceil(curve.ready)
    while (from < curve.end && celsiusAt(curve, where, from) > need.startHigh) from++
    if (from >= curve.end || celsiusAt(curve, where, from) < need.startLow) continue
    const table = doseTable(curve, where, need.done)
    const goal = table[from]! + dose
    if (table[table.length - 1]! < goal) continue
    let done = from + 1
    while (table[done]! < goal) done++
    soonest = Math.min(soonest, done)
  }
  mine.set(curve, soonest)
  return soonest
}

/** The model of one program at one lighting time. */
export function modelOf(problem: PlanProblem, program: Program, jobs: readonly Job[], grid: FloorGrid, lit: number): Model {
  const clock0 = lit + program.phase
  const now = problem.done?.now ?? Number.NEGATIVE_INFINITY
  const night = new Uint8Array(program.ticks)
  const woken = wake(problem)
  for (let k = 0; k < night.length; k++) night[k] = asleep(clock0 + k * rules.tick, woken) ? 1 : 0
  const nowTick = Math.ceil((now - clock0) / rules.tick)
  const S: Int32Array[] = []
  const E: Int32Array[] = []
  const W: Uint8Array[] = []
  const C: Float64Array[] = []
  const O: Int32Array[] = []
  jobs.forEach((job, u) => {
    const c = program.choices[u]!
    const ids = new Uint32Array(c.s.length)
    let count = 0
    const cost = new Float64Array(c.s.length)
    // Where the day is planned again, a move away from the plan that was being followed costs a little.
    const {was, made, risen = made} = job
    const fresh = job.since === null
    const due = job.due ?? Number.POSITIVE_INFINITY
    const bears = dearFrom(job)
    const {hotFrom} = job
    const making = Math.ceil((job.making ?? 0) / rules.tick)
    const {s: ins, e: outs, misfit, used} = c
    for (let o = 0; o < ins.length; o++) {
      const s = ins[o]!
      const e = outs[o]!
      if (fresh && (s < nowTick || night[s] === 1 || night[Math.max(0, s - making)] === 1)) continue
      if (e < nowTick || night[e] === 1) continue
      const setIn = clock0 + s * rules.tick
      if (risen && setIn < risen.least) continue
      const drawn = clock0 + e * rules.tick
      cost[o] = weights.misfit * misfit[o]! + priceOfLate(Math.max(0, drawn - due), bears) - weights.idle * used[o]!
      if (drawn < hotFrom) cost[o]! += weights.early * (hotFrom - drawn)
      if (risen) cost[o]! += amissBy(risen, setIn)
      if (was) cost[o]! += weights.moved * (Math.abs(drawn - was.draw) + (fresh ? Math.abs(setIn - was.at) : 0))
      ids[count++] = o
    }
    const kept = cheapestFirst(ids.subarray(0, count), cost)
    if (count === 0 && job.since !== null) {
      // It should have been drawn by now, or only at night: it is drawn as soon as it can be.
      const s = Math.floor((job.since - clock0) / rules.tick)
      let e = Math.max(nowTick, s + 1, c.e[0] ?? 0)
      while (e < program.ticks - 1 && night[e]) e++
      S.push(Int32Array.of(s))
      E.push(Int32Array.of(e))
      W.push(Uint8Array.of(job.stands))
      C.push(Float64Array.of(0))
      O.push(Int32Array.of(-1))
      return
    }
    const picked = pick(c, cost, kept)
    S.push(picked.s)
    E.push(picked.e)
    W.push(picked.where)
    C.push(picked.cost)
    O.push(Int32Array.from(kept))
  })
  return {
    program,
    lit,
    clock0,
    ticks: program.ticks,
    jobs,
    floor: grid.zones,
    floorTotal: grid.area,
    lane: laneShare(problem, grid),
    hands: rules.tick * problem.day.hands,
    s: S,
    e: E,
    where: W,
    cost: C,
    origin: O,
    constant: weights.wood * program.wood + weights.idle * program.hotFloor,
    opening: weights.opening,
  }
}

/**
 * A model with some of its choices only.
 *
 * @param kept For each job the indices of those that stay, in their new order: the cheapest first.
 */
export function choosing(model: Model, kept: readonly Uint32Array[], cost: readonly Float64Array[] = model.cost): Model {
  const picked = kept.map((by, u) => pick({s: model.s[u]!, e: model.e[u]!, where: model.where[u]!}, cost[u]!, by))
  const origin = kept.map((by, u) => {
    const from = model.origin[u]!
    const out = new Int32Array(by.length)
    for (let i = 0; i < by.length; i++) out[i] = from[by[i]!]!
    return out
  })
  return {
    ...model,
    s: picked.map((one) => one.s),
    e: picked.map((one) => one.e),
    where: picked.map((one) => one.where),
    cost: picked.map((one) => one.cost),
    origin,
  }
}

interface Picked {
  readonly s: Int32Array
  readonly e: Int32Array
  readonly where: Uint8Array
  readonly cost: Float64Array
}

/** Some of a job's choices, in the order of their indices. In loops: `from` of a typed array goes by an iterator, several times as long. */
function pick({s, e, where}: Omit<Picked, 'cost'>, cost: Float64Array, by: Uint32Array): Picked {
  const n = by.length
  const out: Picked = {s: new Int32Array(n), e: new Int32Array(n), where: new Uint8Array(n), cost: new Float64Array(n)}
  for (let i = 0; i < n; i++) {
    const o = by[i]!
    out.s[i] = s[o]!
    out.e[i] = e[o]!
    out.where[i] = where[o]!
    out.cost[i] = cost[o]!
  }
  return out
}

/** For each job of a model where its choices stand, or how often one has been looked for. */
const choicesAt = new WeakMap<Model, (Map<number, number> | number)[]>()
/** Looked for so often they are better kept by what they are. */
const OFTEN = 4

/** The choice of a job that is set in and drawn at given ticks in a part of the floor; −1 where it has none. */
export function choiceAt(model: Model, u: number, s: number, e: number, where: number): number {
  let known = choicesAt.get(model)
  if (!known) {
    known = model.jobs.map(() => 0)
    choicesAt.set(model, known)
  }
  let mine = known[u]!
  const [ins, outs, parts] = [model.s[u]!, model.e[u]!, model.where[u]!]
  if (typeof mine === 'number') {
    if (mine < OFTEN) {
      known[u] = mine + 1
      for (let o = ins.length - 1; o >= 0; o--) if (ins[o] === s && outs[o] === e && parts[o] === where) return o
      return -1
    }
    mine = new Map()
    for (let o = 0; o < ins.length; o++) mine.set((ins[o]! * model.ticks + outs[o]!) * 4 + parts[o]!, o)
    known[u] = mine
  }
  return mine.get((s * model.ticks + e) * 4 + where) ?? -1
}

/**
 * Openings of the door while a receipt wants it kept shut.
 *
 * @param dishes When each is set in and for how long from then the door is to be kept shut, min.
 * @param openings When the door is opened, min, each once.
 * @returns For each such opening which of the dishes it disturbs and when.
 */
export function disturbances<D extends {readonly at: number; readonly shut: number}>(
  dishes: readonly D[],
  openings: Iterable<number>,
): {readonly dish: D; readonly at: number}[] {
  const all = [...openings].sort((a, b) => a - b)
  return dishes.flatMap((dish) => all.filter((t) => t > dish.at && t < dish.at + dish.shut).map((at) => ({dish, at})))
}

/** Share of the floor's width that a lane to the mouth takes: the mean vessel against the floor's width. */
export function laneShare(problem: PlanProblem, grid: FloorGrid): number {
  const widths = problem.dishes.map((d) =>
    d.vessel.footprint.shape === 'circle' ? d.vessel.footprint.diameter : d.vessel.footprint.width,
  )
  if (widths.length === 0) return 0
  const mean = widths.reduce((a, b) => a + b, 0) / widths.length
  return Math.min(0.5, Math.max(0.1, (mean + grid.ground.rules.clearance) / grid.width))
}

/** Earliest and latest lighting considered, min after midnight. */
export function lighting(problem: PlanProblem): {first: number; last: number} {
  const given = problem.done?.lit ?? null
  if (given !== null) return {first: given, last: given}
  const first = Math.ceil(Math.max(problem.day.fireFrom, problem.done?.now ?? 0) / rules.tick) * rules.tick
  return {first, last: first + 10 * 60}
}
