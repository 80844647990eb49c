import {writeDuration} from '../measure/quantity.js'
import type {Forecast, OvenEvent} from '../oven/types.js'
import type {Message} from '../receipt/types.js'
import type {Dish, HeatNeed} from '../scale/types.js'
import {amiss} from './asked.js'
import {balanceOf, suggest} from './balance.js'
import {lowerBound} from './bound.js'
import {check} from './check.js'
import {conflictsOf, whyNot} from './conflict.js'
import {type Curve, celsiusAt, curveOf, doseNeeded, doseTable, whereIndex} from './curve.js'
import {easedDay} from './ease.js'
import {type FloorGrid, floorGrid, zoneAt} from './floor-grid.js'
import {FIRM, HARD, type Laid, Layout, type Refusal} from './layout.js'
import {
  blockedBy,
  type ChoiceLimits,
  choiceAt,
  disturbances,
  isNight,
  type Job,
  jobsOf,
  laneShare,
  lateness,
  lineOf,
  type Model,
  meantFor,
  modelOf,
  type Program,
  passes,
  phaseOf,
  programOf,
  ticksOf,
  woodOf,
} from './model.js'
import {english, phrase, speak} from './phrases.js'
import {placeDay, placedOf, placeLoad, vesselsOf} from './places.js'
import {remediesOf, waysOf} from './remedies.js'
import {doorEvents, loadEvent, type Response, responseOf} from './response.js'
import {rules, weights, zoneNames} from './rules.js'
import {type Found, missing, State, search} from './search.js'
import {Seating, standingAlready} from './seating.js'
import {pastOf} from './seats.js'
import {better, type Settled} from './settled.js'
import {distinct, type Look, laidBy, onShortest, promisedBy, type Road} from './shortest.js'
import type {Seat, Standing, ToPlace} from './standing.js'
import {stepsOf} from './steps.js'
import type {Day, Eased, FiringOption, Load, Phrase, Plan, PlanProblem, Remedy} from './types.js'

export interface PlanOptions {
  /**
   * The oven with loads and door openings in it, minutes after lighting. Without it the plan stands on the empty oven's curve.
   * `exact` asks for the range as well as the likely curve.
   */
  readonly simulate?: (option: FiringOption, events: readonly OvenEvent[], exact: boolean) => Forecast
  /** Less searching, no bound: for trying remedies and suggestions. */
  readonly effort?: 'quick' | 'full'
  /** The plan alone: neither reasons for what is left out, nor ways out. */
  readonly bare?: boolean
  /** Dishes to fill idle floor with. */
  readonly spare?: readonly Dish[]
  /** Firings with one fire more than the day has, for a plan that cannot be done: tried as a remedy. */
  readonly secondFires?: (plan: Plan) => readonly FiringOption[]
  /** Share of the work done, 0 … 1. */
  readonly progress?: (share: number) => void
  /** Asked now and then; true stops the work and throws `PlanCancelled`. */
  readonly cancelled?: () => boolean
}

/** Thrown when `cancelled` said so. */
export class PlanCancelled extends Error {
  constructor() {
    super('planning was stopped')
    this.name = 'PlanCancelled'
  }
}

/**
 * Plan a bake day.
 *
 * @param problem The day as data; times in minutes after midnight, lengths m, temperatures °C.
 * @returns The best plan found, checked, with its distance from a proven bound; where some dishes cannot be baked, `possible` is
 *   false, `unplaced` names them and the plan is for the rest.
 * @throws PlanCancelled when `options.cancelled` said so.
 */
export function planDay(problem: PlanProblem, options: PlanOptions = {}): Plan {
  const grid = floorGrid(problem)
  const full = options.effort !== 'quick'
  const tick = (share: number): void => {
    if (options.cancelled?.()) throw new PlanCancelled()
    options.progress?.(share)
  }
  tick(0)
  if (problem.firings.length === 0) throw new RangeError('no firing to plan with')
  const lone = problem.dishes.flatMap((dish) => {
    const why = passes(grid, dish)
    return why ? [{dish, ...why}] : []
  })
  let settled = settleBest(problem, grid, jobsOf(problem, grid), options, tick)
  // What did not fit whole may fit in two batches.
  if (settled.unplaced.length > 0 && full && !problem.done) {
    const split = new Map<string, number>()
    for (const {job, why} of settled.unplaced)
      if (why === 'floor' && job.count >= 2 && job.since === null)
        split.set(job.dish.id, 2 * Math.ceil(job.dish.count / job.count))
    if (split.size > 0 && split.size <= FEW_SPLIT) {
      const parts = jobsOf(problem, grid, split)
      const again = settleBest(problem, grid, parts, {...options, effort: 'quick'}, tick)
      if (vesselsOut(again) < vesselsOut(settled)) settled = again
      // That it can be done was soon seen; how it is best done takes as long as any day.
      if (again.unplaced.length === 0) settled = better(again, settleBest(problem, grid, parts, options, tick))
    }
  }
  if (full && !options.bare && !problem.done && options.simulate && (settled.unplaced.length > 0 || minutesLate(settled) > 0))
    settled = onShorterFire(problem, grid, settled, options, tick)
  if (!problem.done) settled = inOrder(settled)
  tick(0.85)
  const bound = full ? boundOf(problem, settled) : null
  tick(0.95)
  const plan = write(problem, grid, settled, lone, bound, options)
  tick(1)
  return plan
}

/**
 * The batches and parts of one dish in the order in which they go in: to the search they are alike, to the baker the first dough is the
 * first to be mixed.
 */
function inOrder(settled: Settled): Settled {
  const {model, found} = settled
  const {jobs} = model
  const alike = new Map<string, number[]>()
  for (const [u, {dish, count}] of jobs.entries()) {
    if (found.chosen[u]! < 0) continue
    const key = JSON.stringify([dish.file, dish.vessel, dish.need, dish.mass, dish.wantedBy, count])
    alike.set(key, [...(alike.get(key) ?? []), u])
  }
  const takes = jobs.slice()
  for (const group of alike.values()) {
    const at = (u: number, of: readonly Int32Array[]): number => of[u]![found.chosen[u]!]!
    const byTime = [...group].sort((a, b) => at(a, model.s) - at(b, model.s) || at(a, model.e) - at(b, model.e) || a - b)
    for (const [i, u] of byTime.entries()) takes[u] = jobs[group[i]!]!
  }
  const standing = jobs.flatMap((job, u): Standing[] => {
    const {dish, first} = takes[u]!
    return vesselsOf(job, settled.standing).map((v) => ({...v, dish: dish.id, number: v.number - job.first + first}))
  })
  return {...settled, model: {...model, jobs: takes}, standing}
}

/** Other roads tried on given curves while a dish has no place. */
const MORE_ROADS = 3

/** Dishes that are tried in two batches: where more are left out, the oven is too small for the day. */
const FEW_SPLIT = 2

/** Vessels that have no place in the day. */
function vesselsOut(settled: Settled): number {
  return settled.unplaced.reduce((sum, {job}) => sum + job.count, 0)
}

/** Minutes by which the dishes of a day are drawn after they are wanted, summed. */
function minutesLate({model, found}: Settled): number {
  return model.jobs.reduce((sum, job, u) => {
    const o = found.chosen[u]!
    return o < 0 ? sum : sum + lateness(job, model.clock0 + model.e[u]![o]! * rules.tick)
  }, 0)
}

/**
 * Where the day is late or something is left out, a shorter fire is ready sooner, and a short look may have passed it over: fires are tried
 * one after the other, each shorter than the last, for as long as the day grows better, and the best is laid out in earnest.
 */
function onShorterFire(
  problem: PlanProblem,
  grid: FloorGrid,
  settled: Settled,
  options: PlanOptions,
  tick: (share: number) => void,
): Settled {
  const {jobs} = settled.model
  let best = settled
  let found: FiringOption | null = null
  const shorter = problem.firings
    .filter((f) => !f.further && !settled.option.further && f.firing.burn < settled.option.firing.burn)
    .sort((a, b) => b.firing.burn - a.firing.burn)
  for (const option of shorter) {
    const tried = settleBest({...problem, firings: [option]}, grid, jobs, {...options, effort: 'quick'}, tick)
    if (vesselsOut(tried) > vesselsOut(best) || better(best, tried) === best) break
    best = tried
    found = option
  }
  return found ? better(best, settleBest({...problem, firings: [found]}, grid, jobs, options, tick)) : settled
}

function settleBest(
  problem: PlanProblem,
  grid: FloorGrid,
  jobs: readonly Job[],
  options: PlanOptions,
  tick: (share: number) => void,
): Settled {
  const settled = options.simulate
    ? settleLoaded(problem, grid, jobs, options, options.simulate, tick)
    : settleEmpty(problem, grid, jobs, options, tick)
  return {...(settled.whole?.() ?? settled), ...(settled.eased ? {eased: true} : {})}
}

/** Earliest and latest lighting considered, min after midnight. */
function lighting(problem: PlanProblem): {first: number; last: number} {
  const given = problem.done?.lit ?? null
  if (given !== null) return {first: given, last: given}
  const first = Math.ceil(Math.max(problem.day.fireFrom, problem.done?.now ?? 0) / rules.tick) * rules.tick
  return {first, last: first + 10 * 60}
}

/** The day on curves that loads do not change: each fire at the lighting time that suits it, the most promising searched in earnest. */
function settleEmpty(
  problem: PlanProblem,
  grid: FloorGrid,
  jobs: readonly Job[],
  options: PlanOptions,
  tick: (share: number) => void,
): Settled {
  const full = options.effort !== 'quick'
  const n = jobs.length
  const short = Math.min(300, 30 + 4 * n)
  const long = full ? Math.min(2500, 400 + 40 * n) : Math.min(400, 100 + 8 * n)
  const {first, last} = lighting(problem)
  const programs = problem.firings.map((_, i) => programOf(problem, i, jobs, grid, problem.done?.lit ?? null, false))
  tick(0.1)
  const order = programs
    .map((program) => {
      const starts: {lit: number; low: number}[] = []
      for (let lit = first; lit <= last; lit += 30) starts.push({lit, low: quickLow(problem, program, jobs, lit)})
      return {program, starts, low: Math.min(...starts.map((s) => s.low))}
    })
    .sort((a, b) => a.low - b.low || a.program.wood - b.program.wood)
  const looks: {program: Program; lit: number; model: Model; found: Found; total: number}[] = []
  for (const {program, starts, low} of order) {
    if (looks.length >= 2 && looks.some((l) => l.found.unplaced === 0 && l.total < low)) continue
    const look = (lit: number): (typeof looks)[number] => {
      const model = modelOf(problem, program, jobs, grid, lit)
      const found = search(model, {rounds: short})
      return {program, lit, model, found, total: found.cost + model.constant}
    }
    // The latest lighting that costs nothing, with half an hour in hand where there is one.
    const good = starts.filter((s) => s.low <= low + 0.5)
    const latest = good[good.length - 1]!
    let best = look((good.find((s) => s.lit >= latest.lit - 30) ?? latest).lit)
    for (const step of [-120, -60, -30])
      for (let tries = 0; tries < 3 && best.lit + step >= first; tries++) {
        const other = look(best.lit + step)
        if (other.total >= best.total - 0.5) break
        best = other
      }
    looks.push(best)
    tick(0.1 + 0.3 * (looks.length / programs.length))
  }
  looks.sort((a, b) => a.total - b.total || a.program.wood - b.program.wood)
  let best: Settled | null = null
  for (const [i, l] of looks.entries()) {
    // Two fires are searched in earnest; more only while a dish has no place.
    if (best && best.unplaced.length === 0 && (i >= (full ? 2 : 1) || l.total > best.total + 1)) break
    if (best && !full) break
    let placed = searchAndPlace(l.model, grid, l.found.chosen, long, false, 7)
    // What is left out by one road may have its place on another.
    for (let seed = 8; full && seed < 8 + MORE_ROADS && placed.unplaced.some(({why}) => why === 'floor'); seed++) {
      const other = searchAndPlace(l.model, grid, l.found.chosen, long, false, 10 * seed)
      if (other.unplaced.length < placed.unplaced.length) placed = other
    }
    const settled: Settled = {
      ...placed,
      model: l.model,
      option: problem.firings[l.program.index]!,
      total: placed.found.cost + l.model.constant,
    }
    best = better(best, settled)
    tick(0.4 + 0.4 * ((i + 1) / looks.length))
  }
  return best!
}

/** Cost when every dish takes its cheapest choice and the door is opened for nothing: below any plan of this fire and lighting time. */
function quickLow(problem: PlanProblem, program: Program, jobs: readonly Job[], lit: number): number {
  const clock0 = lit + program.phase
  const awake = new Uint8Array(program.ticks)
  for (let k = 0; k < program.ticks; k++) awake[k] = isNight(problem, clock0 + k * rules.tick) ? 0 : 1
  let sum = weights.wood * program.wood + weights.idle * program.hotFloor
  jobs.forEach((job, u) => {
    const c = program.choices[u]!
    let best = missing
    const due = job.due === null ? Number.POSITIVE_INFINITY : job.due - clock0
    for (let o = 0; o < c.s.length; o++) {
      const e = c.e[o]!
      const cost = weights.misfit * c.misfit[o]! - weights.idle * c.used[o]! + weights.late * Math.max(0, e * rules.tick - due)
      if (cost < best && awake[e] && (job.since !== null || awake[c.s[o]!])) best = cost
    }
    sum += best
  })
  return sum
}

const responses = new WeakMap<Simulate, Response>()

type Simulate = NonNullable<PlanOptions['simulate']>

/**
 * The day on the oven with its loads in it. Every fire is laid out quickly, the most promising in earnest; what is laid out is simulated,
 * the curve corrected by what that shows, and laid out again with small steps until plan, curve and floor agree.
 */
function settleLoaded(
  problem: PlanProblem,
  grid: FloorGrid,
  jobs: readonly Job[],
  options: PlanOptions,
  simulate: Simulate,
  tick: (share: number) => void,
  eased?: {readonly asBefore: Settled | null},
): Settled {
  const full = options.effort !== 'quick'
  const n = jobs.length
  const {first, last} = lighting(problem)
  const given = problem.done?.lit ?? null
  const ambient = problem.ambient ?? 20
  let response = responses.get(simulate)
  if (!response) {
    const middle = problem.firings[Math.floor(problem.firings.length / 2)]!
    response = responseOf(middle, simulate, firesOf(middle), ambient)
    responses.set(simulate, response)
  }
  const lane = laneShare(problem, grid)
  const layoutOf = (option: FiringOption, kept = false, day = {problem, jobs}): Layout => {
    const curve = curveOf(option.forecast, ambient)
    const phase = phaseOf(given)
    return new Layout(
      day.problem,
      grid,
      day.jobs,
      {
        curve,
        phase,
        ticks: ticksOf(curve, phase),
        blocked: blockedBy(option),
        wood: woodOf(option),
      },
      response!,
      lane,
      {
        lit: first,
        // What is kept has been proved on its own curve, to the last minute.
        margin: kept ? 0 : rules.marginCelsius,
        // A morning's plan keeps something in hand against a cooler oven; once the day has begun that is what it is spent on.
        inHand: kept ? 0 : given === null ? rules.inHandCelsius : rules.marginCelsius,
        marginDose: kept ? -rules.doseWanting : rules.marginDose,
        asPlaced: kept,
      },
    )
  }
  const light = {first, last}
  const easier = given === null || eased ? null : easeOf(problem, grid)
  const withEase = (before: Settled | null): Settled => ({
    ...settleLoaded(easier!.problem, grid, easier!.jobs, options, simulate, tick, {asBefore: before}),
    eased: true,
  })
  const mend = easier ? inHand(problem, grid, jobs, layoutOf, simulate, light) : null
  if (easier && mend) {
    // What is under way is rather kept with its limits eased than moved about, and rather moved than lost, or all laid out anew.
    const easily = inHand(easier.problem, grid, easier.jobs, (option, kept) => layoutOf(option, kept, easier), simulate, light)
    let before: Settled | null = null
    for (const how of ['waiting', 'moving'] as const) {
      const kept = mend(how)
      if (kept?.good) return kept.settled
      const easy = easily?.(how)
      if (easy?.good) return {...easy.settled, eased: true}
      if (easy) before = better(before, easy.settled)
    }
    return withEase(before)
  }
  const looksAt = (): Look[] => {
    // All are made before any is worked on: V8 compiles what works on them for the shape that the first few settle.
    const layouts = problem.firings.map((option) => layoutOf(option))
    // A fire on which fewer dishes could be set in at all than on another need not be looked at.
    const able = layouts.map((layout) => jobs.filter((_, u) => layout.possible(u)).length)
    const ablest = Math.max(...able)
    return problem.firings.flatMap((option, index) => {
      if (able[index]! < ablest) return []
      const layout = layouts[index]!
      layout.begin()
      takeUp(layout, jobs, curveOf(option.forecast, ambient))
      return [{option, index, layout, price: Number.POSITIVE_INFINITY}]
    })
  }
  const startFrom = (look: Look, begun: readonly Laid[], lit: number): void => {
    look.layout.startAgain(curveOf(look.option.forecast, ambient))
    look.layout.restore(begun, lit)
  }
  const along = (road: Road, passes: {passes: number}, patience?: number): Settled | null => {
    startFrom(road.look, road.laid, road.lit)
    if (given === null) road.look.layout.lightLater(last)
    return agree(problem, grid, jobs, road.look, simulate, light, passes, undefined, patience)
  }
  // A tight day: whether everything has its place is worth a longer search, and what was kept in hand.
  const lookLonger = ({look, laid: begun, lit}: Road): Road[] => {
    look.layout.spendInHand()
    startFrom(look, begun, lit)
    return layOut(look, light, 3, 83, 3)
  }
  // What the search on given curves makes of the curve as a plan's loads have made it is a road as well, and often a better one: annealing
  // moves one opening at a time, the search lays many dishes out anew.
  const left: readonly Laid[] = jobs.map(() => ({in: false, s: 0, e: 0, w: 0, hold: 0}))
  const searched = (from: Settled, seed: number): Settled | null => {
    const look = looks.find(({index}) => index === from.model.program.index)!
    const {model, found} = from.whole!()
    const other = search(model, {rounds: SEARCHED_ROUNDS, start: found.chosen, seed})
    const out = from.unplaced.length
    if (other.unplaced > out || (other.unplaced === out && other.cost + model.constant > from.total - 1)) return null
    startFrom(look, laidBy(model, other.chosen, left), model.lit)
    const patience = out === 0 ? SEARCHED_PATIENCE : undefined
    return agree(problem, grid, jobs, look, simulate, light, {passes: OTHER_PASSES}, undefined, patience)
  }
  /** A plan in which everything has its place, made better. */
  const refined = (from: Settled): Settled => {
    let best = from
    for (let i = 0, failed = 0; i < SEARCHED && failed < (n > LARGE ? 1 : 2); i++) {
      const settled = searched(best, 5 + i)
      const next = settled ? better(best, settled) : best
      failed = next === best ? failed + 1 : 0
      best = next
    }
    return best.polished ? better(best, best.polished()) : best
  }
  const morning = full && given === null
  const many = morning && n <= LARGE ? MANY : 1
  let looks = looksAt()
  tick(0.1)
  if (morning) {
    const held = onShortest(looks, {
      look: (look, longer, seed) =>
        lookAt(look, {...light, rounds: longer * (150 + 12 * n), heat: 40, seed, strict: [2, longer > 1 ? 30 : 12]}),
      promised: (look) => promisedBy(problem, grid, jobs, look),
      lay: ({look, laid: begun, lit}) => {
        const roads = layOut(look, light, many)
        startFrom(look, begun, lit)
        return [
          ...roads,
          roadOf(look, look.layout.anneal({...freely(light), rounds: earnest(n), heat: 15, seed: 23, strict: [4, 30]})),
        ].sort(byPrice)
      },
      longer: (road) => lookLonger(road).sort(byPrice),
      follow: (road) => along(road, {passes: OTHER_PASSES}, SHORTEST_PATIENCE),
      large: n > LARGE,
      tick: (share) => tick(0.1 + 0.3 * share),
    })
    if (held) return refined(held)
    // No fire holds it all, or not easily: a tight day is laid out with more care.
    looks = looksAt()
  }
  if (given === null) lookAround(looks, n, light)
  else for (const look of looks) lookAt(look, {...light, rounds: 200 + 30 * n, heat: 4, seed: 11, strict: [2, 12]})
  looks.sort(likelier)
  tick(0.4)
  // The most promising fires laid out in earnest. A short look is a rough guide, so several are; and whether plan, curve and floor come
  // to agree hangs on where one begins, so every layout found is a road to try, the cheapest first.
  const contenders = looks.filter((l, i) => i === 0 || (full && i < CONTENDERS && l.price < 2 * looks[0]!.price + 60))
  const laid = contenders.map((look, i) => {
    const begun = given === null ? [roadOf(look, look.layout.found())] : []
    const roads = [...begun, ...layOut(look, light, i === 0 ? many : 1)].sort(byPrice)
    tick(0.4 + (0.1 * (i + 1)) / contenders.length)
    return roads
  })
  laid.sort(([a], [b]) => a!.price - b!.price || a!.look.index - b!.look.index)
  const least = laid[0]![0]!
  // Another fire has to look nearly as good, unless the best breaks limits that it might keep.
  const limit = least.violation < 1 ? 1.05 * least.price + 4 : 1.2 * least.price + 40
  const roads = laid.flatMap((some, i) => (i > 0 && some[0]!.price > limit ? [] : some))
  const longerRoads = (): Road[] => laid.slice(0, 2).flatMap((some) => lookLonger(some[0]!))
  const longer = morning && least.violation > 1 && least.violation <= OVERFULL
  if (longer) roads.push(...longerRoads())
  roads.sort(byPrice)
  const overfull = roads[0]!.violation > OVERFULL
  if (overfull) {
    // More than the oven holds: what to leave out is part of the search.
    const {look, laid: begun, lit} = roads[0]!
    look.layout.restore(begun, lit)
    const rounds = 4 * earnest(n)
    const less = look.layout.anneal({...freely(light), rounds, heat: 40, seed: 71, strict: [20, FIRM], leave: 0.04})
    roads.unshift(roadOf(look, less))
  }
  tick(0.55)
  let best = eased?.asBefore ?? null
  const most = morning ? (overfull ? OVERFULL_TRIES : MORNING_TRIES) : 2
  const budget = {passes: morning ? 28 : 10}
  // Roads enough where one has come to a plan with everything in it.
  const enough = n > LARGE ? 1 : many + 1
  const followed = new Set<Look>()
  const alongRoad = (road: Road, passes: {passes: number}): Settled | null => {
    followed.add(road.look)
    return along(road, passes)
  }
  const follow = (some: readonly Road[]): void => {
    for (const [i, road] of distinct(some).entries()) {
      if (i >= most || (i > 0 && budget.passes <= 0)) break
      if (best && best.unplaced.length === 0 && (i >= enough || road.price > NEARLY * best.total)) break
      const settled = alongRoad(road, budget)
      if (!settled) continue
      best = better(best, settled)
      tick(0.55 + (0.25 * (i + 1)) / most)
    }
  }
  follow(roads)
  if (morning && !longer && !overfull && best!.unplaced.length > 0) {
    budget.passes = Math.max(budget.passes, 14)
    follow(longerRoads().sort(byPrice))
  }
  const begin = (look: Look): Road[] => {
    look.layout.startAgain(curveOf(look.option.forecast, ambient))
    look.layout.begin()
    return layOut(look, light, many)
  }
  // A longer fire may hold what a shorter one leaves out.
  for (let from = best!.option, i = 0; morning && i < LONGER_FIRES && best!.unplaced.length > 0; i++) {
    const look = nextLonger(looks, from)
    if (!look) break
    from = look.option
    if (followed.has(look)) continue
    const [road] = laid.find(([other]) => other!.look === look) ?? begin(look)
    const settled = road!.violation > OVERFULL ? null : alongRoad(road!, {passes: OTHER_PASSES})
    if (settled) best = better(best, settled)
  }
  if (morning && best!.unplaced.length === 0) best = refined(best!)
  else if (best!.polished) best = better(best, best!.polished())
  if (given !== null && !eased?.asBefore && best!.unplaced.length > 0) {
    // Far off as it is, the plan in hand may yet keep more.
    const far = inHand(problem, grid, jobs, layoutOf, simulate, light, Number.POSITIVE_INFINITY)
    const kept = far?.('waiting') ?? far?.('moving')
    if (kept) best = better(best, kept.settled)
  }
  if (given !== null && !options.bare && best!.unplaced.length > 0) {
    // What it makes of this day may have a place for more.
    const fuller = searched(best!, 5)
    if (fuller) best = better(best, fuller)
  }
  if (easier && best!.unplaced.length > 0) {
    const fuller = withEase(null)
    if (vesselsOut(fuller) < vesselsOut(best!)) return fuller
  }
  return best!
}

/** Rounds in which another fire has to come to a plan. */
const OTHER_PASSES = 8

/** Rounds after which a fire on which something still has no place is given up, and a plan that was searched for. */
const SHORTEST_PATIENCE = 3
const SEARCHED_PATIENCE = 2
/** Plans searched for on the best one's curve, and the rounds of each search. */
const SEARCHED = 6
const SEARCHED_ROUNDS = 400

/** Beginnings of a small day's layout on one fire. */
const MANY = 3

/** Longer fires tried where something is left out. */
const LONGER_FIRES = 2

/** The next longer single fire; null where there is none. */
function nextLonger(looks: readonly Look[], {firing, further}: FiringOption): Look | null {
  if (further) return null
  const some = looks.filter((l) => !l.option.further && l.option.firing.burn > firing.burn)
  return some.reduce<Look | null>((best, l) => (best && best.option.firing.burn <= l.option.firing.burn ? best : l), null)
}

/** The day with its limits eased, and its jobs. */
function easeOf(problem: PlanProblem, grid: FloorGrid): {problem: PlanProblem; jobs: Job[]} {
  const day = easedDay(problem)
  return {problem: day, jobs: jobsOf(day, grid)}
}

function byPrice(a: Road, b: Road): number {
  return a.price - b.price
}

/** Fires laid out in earnest, and jobs from which on a day is large, and fewer roads are tried. */
const CONTENDERS = 2
const LARGE = 20
/** How much dearer than the best plan a road may look and still be tried: curve and floor often come out cheaper than they looked. */
const NEARLY = 1.1

/** The cheaper first. */
function likelier(a: Look, b: Look): number {
  return a.price - b.price || a.index - b.index
}

/** Of how many fires one looks at further, how much longer than the first look, and how much dearer than the best they may be. */
const RUNGS = [
  {most: Number.POSITIVE_INFINITY, longer: 1, times: Number.POSITIVE_INFINITY},
  {most: 5, longer: 1, times: 5},
  {most: 3, longer: 2, times: 3},
  {most: 3, longer: 4, times: 2},
] as const

/**
 * Look at every fire shortly, and at the better ones again and again, each time fewer of them and for longer (successive halving: Jamieson
 * & Talwalkar, AISTATS 2016): a short look alone often takes the wrong fire.
 */
function lookAround(looks: Look[], n: number, light: Light): void {
  let left = looks
  for (const [rung, {most, longer, times}] of RUNGS.entries()) {
    const dearest = times * left[0]!.price + 60
    left = left.slice(0, most).filter((l, i) => i === 0 || !(l.price > dearest))
    for (const look of left)
      lookAt(look, {...light, rounds: longer * (150 + 12 * n), heat: 40, seed: 11 + rung, strict: [2, rung === 0 ? 12 : 30]})
    left.sort(likelier)
  }
}

function lookAt(
  look: Look,
  {first, last, ...how}: Light & {rounds: number; heat: number; seed: number; strict: readonly [number, number]},
): void {
  const found = look.layout.anneal({firstLit: first, lastLit: last, cool: 1, ...how})
  look.price = found.cost + SOFT * found.violation
}

/** Price of a broken limit when roads are compared: small breaks most often mend when curve and floor are looked at closely. */
const SOFT = 10
/** Broken limits that no closer look will mend. */
const OVERFULL = 30
/** Roads tried then, and else. */
const OVERFULL_TRIES = 4
const MORNING_TRIES = 8

/** Places tried for a dish that was left out, and for all of them together. */
const SEATS_TRIED = 5
const MOST_TRIALS = 30
const FEW_TRIALS = 10

/** Judgements of one annealing in earnest. */
function earnest(n: number): number {
  return Math.min(900 + 130 * n, Math.ceil(85000 / Math.max(1, n)))
}

type Light = {readonly first: number; readonly last: number}

function roadOf(look: Look, f: {laid: Laid[]; lit: number; cost: number; violation: number}): Road {
  return {look, laid: f.laid, lit: f.lit, price: f.cost + SOFT * f.violation, violation: f.violation}
}

/**
 * Lay a day out in earnest: several beginnings, since one annealing may end in a valley.
 *
 * @param light Earliest and latest lighting, min after midnight; equal where the fire is lit.
 * @param longer Factor on the judgements made.
 * @returns The layouts found, the cheapest first.
 */
function layOut(look: Look, light: Light, starts: number, seed = 23, longer = 1): Road[] {
  const {layout} = look
  const lit = light.first === light.last
  const begun = layout.found()
  const rounds = longer * earnest(layout.n)
  const found: Road[] = []
  for (let i = 0; i < (lit ? 3 : starts); i++) {
    layout.restore(begun.laid, begun.lit)
    // A day that has begun is taken up where it stands; only if that will not do, with more and more freedom.
    const heat = lit ? [4, 20, 60][i]! : 60
    const share = lit ? [0.4, 0.7, 1][i]! : 1
    const laid = layout.anneal({
      ...freely(light),
      rounds: Math.ceil(rounds * share),
      heat,
      seed: seed + i,
      strict: lit ? [10, 30] : [2, 30],
      anew: !lit,
    })
    found.push(roadOf(look, laid))
    if (lit && found[i]!.violation < 1e-6) break
  }
  return found.sort(byPrice)
}

function freely(light: Light): {firstLit: number; lastLit: number; cool: number; leave: number} {
  return {firstLit: light.first, lastLit: light.last, cool: 0.3, leave: 0.01}
}

/** Begin a day planned again where the plan that was being followed left it. */
function takeUp(layout: Layout, jobs: readonly Job[], curve: Curve): void {
  jobs.forEach(({was, since}, u) => {
    if (!was || since !== null) return
    // A dish that stands in several parts of the floor is done when the coolest of its vessels is.
    const zones = was.placed.map((p) => whereIndex(p.zone))
    const coolest = zones.sort((a, b) => curve.offset[a as 0 | 1 | 2] - curve.offset[b as 0 | 1 | 2])[0]
    layout.setAtClock(u, was.at, coolest ?? was.where)
  })
}

/** Times the openings of a plan in hand are moved to its dishes, as the curve is put right; and its dishes, one by one. */
const WAITED = 2
const MOVED = 5

/** °C by which the oven may be off for the plan in hand to be worth mending. */
const FAR = 20

/** How often what comes of annealing a good plan once more is mended. */
const MENDED = 3
/** Rounds after which what still cannot be kept is left out; in the first few the true floor is annealed upon. */
const PATIENCE = 7
/** Rounds then in which the draws of what is in the oven are still put right. */
const PROVED = 2
/** The same where the oven is far too small for the day. */
const HOPELESS = 2
const SEATED = 4
/** Rounds on the true floor, times jobs: each takes the longer the more stands there. */
const SEATED_ROUNDS = 80_000
/** The round in which a plan in hand is annealed on the true floor, since moving one dish would not do. */
const RESEATED = 1
/** Price of what is broken and refused there, at first and at the end, pass by pass. */
const DEARER_EACH_PASS = [
  [20, HARD],
  [HARD, 200],
  [HARD, FIRM],
] as const
/** So many refused are too many to be seated one by one. */
const CROWDED = 4
/** Share of the moves that leave a dish out where the oven is far too small. */
const LEAVE = 0.03

/** How much dearer, what it moves included, a plan in hand may become before the rest of the day is laid out anew. */
const DEARER = {times: 1.5, more: 60} as const

/** What becomes of a plan in hand; `good` where no dish of it is lost and it costs hardly more than it did. */
interface InHand {
  readonly settled: Settled
  readonly good: boolean
}

/**
 * The plan that is being followed, on the oven as it now is: kept as it stands where it still serves, and moved a little, in one of two
 * ways (see `agree`), where it does not. Null where there is none, or more than one fire to choose from, or the oven is too far off it.
 *
 * @param far °C by which the oven may be off the plan.
 * @returns `good` where no dish of it is lost and it costs hardly more than it did, so that nothing else need be looked at.
 */
function inHand(
  problem: PlanProblem,
  grid: FloorGrid,
  jobs: readonly Job[],
  layoutOf: (option: FiringOption, kept: boolean) => Layout,
  simulate: Simulate,
  light: Light,
  far = FAR,
): ((how: 'waiting' | 'moving') => InHand | null) | null {
  const plan = problem.done?.plan
  const [option, another] = problem.firings
  if (!plan || !option || another) return null
  const layout = layoutOf(option, true)
  takeUp(layout, jobs, curveOf(option.forecast, problem.ambient ?? 20))
  jobs.forEach((job, u) => {
    if (!job.was) layout.bar(u)
  })
  layout.agreeWith(curveOf(plan.forecast, problem.ambient ?? 20))
  layout.judge()
  // What loads take is added up in the layout, and bends a little in the oven: the curve it is judged on is put right first.
  const took = layout.snapshot().map((l) => (l.in ? {s: l.s, e: l.e} : null))
  const events = eventsOf(jobs, took, option, layout.phase, layout.lit)
  const meant = layout.celsius.slice()
  layout.agreeWith(curveOf(simulate(option, events, false), problem.ambient ?? 20))
  const now = Math.max(0, Math.ceil(((problem.done?.now ?? 0) - layout.lit - layout.phase) / rules.tick))
  if (meant.some((celsius, k) => k >= now && Math.abs(layout.celsius[k]! - celsius) > far)) return null
  layout.judge()
  const begun = {laid: layout.snapshot(), lit: layout.lit}
  const extra = jobs.filter((job) => !job.was).length
  return (how) => {
    layout.refusals = []
    layout.restore(begun.laid, begun.lit)
    const settled = agree(problem, grid, jobs, {option, index: 0, layout}, simulate, light, {passes: 8}, how)
    if (!settled) return null
    const lost = settled.unplaced.length - extra
    return {settled, good: lost <= 0 && settled.total <= DEARER.times * plan.score.total + DEARER.more}
  }
}

/**
 * Bring a layout, the simulated curve and the true floor to agree.
 *
 * @param budget Simulations left, for this layout and those after it.
 * @param gently For a plan in hand, of which as little as may be is moved: `waiting` only lets the openings wait for what they are for, and
 *   gives up, with null, where that will not do; `moving` moves dishes and leaves out what cannot be mended.
 * @param patience Rounds in which every dish has to have its place; it is given up, with null, where one has none by then.
 */
function agree(
  problem: PlanProblem,
  grid: FloorGrid,
  jobs: readonly Job[],
  look: {readonly option: FiringOption; readonly index: number; readonly layout: Layout},
  simulate: Simulate,
  light: Light,
  budget: {passes: number},
  gently?: 'waiting' | 'moving',
  patience = Number.POSITIVE_INFINITY,
): Settled | null {
  const {layout, option: original, index} = look
  const n = jobs.length
  const given = problem.done?.lit ?? null
  const rounds = 600 + 100 * n
  const seating = new Seating(grid, jobs, layout)
  const on = (option: FiringOption, lit: number, limits: readonly ChoiceLimits[]): Model =>
    modelOf(problem, programOf(problem, index, jobs, grid, given, false, option, limits), jobs, grid, lit)
  /** Small steps where only the curve moved; larger ones where the floor refused; dishes may go where all else failed. */
  const again = (seed: number, why: 'curve' | 'floor' | 'last'): void => {
    if (gently) layout.repair()
    if (gently && layout.violation < 1e-6) return
    layout.anneal({
      ...freely(light),
      rounds: Math.min(12000, rounds * (why === 'floor' ? 2 : 1)),
      heat: {curve: 3, floor: 15, last: 5}[why],
      seed,
      strict: why === 'last' ? [60, 200] : [30, 60],
      leave: why === 'last' ? 0.05 : 0,
      ...(gently && why === 'curve' ? {moves: 'small', heat: 0.5} : {}),
    })
  }
  /** What is laid out, on the simulated oven and the true floor. */
  const check = (giveUp = false) => {
    const laid = layout.snapshot()
    const lit = layout.lit
    const laidOut = laid.map((l) => (l.in ? {s: l.s, e: l.e, w: l.w} : null))
    const events = eventsOf(jobs, laidOut, original, layout.phase, layout.lit)
    const option = {...original, forecast: simulate(original, events, false)}
    const curve = curveOf(option.forecast, problem.ambient ?? 20)
    const stood = stand(jobs, laidOut, grid, curve, layout.phase, seating)
    // Each is judged in the part of the floor where its vessels came to stand, if that is one.
    const took = laidOut.map((t, u) => {
      if (!t || jobs[u]!.since !== null) return t
      const [zone, another] = new Set(vesselsOf(jobs[u]!, stood.standing).map((v) => zoneAt(grid, v.y)))
      return zone === undefined || another !== undefined ? t : {...t, w: zone}
    })
    const exact = on(
      option,
      lit,
      took.map((must) => (must ? {must, only: true} : {none: true})),
    )
    const wrong = new Set<number>()
    for (let u = 0; u < n; u++) {
      const t = took[u]
      const job = jobs[u]!
      if (!t) continue
      if (job.since !== null) {
        // What can no longer be done, or drawn as it should be, is wrong only while there is still something to be tried.
        const to = t.e * rules.tick + layout.phase
        const zones = [...new Set((job.stood ?? []).map((v) => whereIndex(v.zone)))]
        const under = layout.isDone(u) && zones.some((z) => !hasDose(job, curve, z, to, lit))
        const over = !under && stayed(job, curve, zones, to, lit)
        if (!giveUp && (layout.hemmedIn(u) || under || over)) wrong.add(u)
        continue
      }
      const mine = vesselsOf(job, stood.standing)
      const keptBy = (v: Standing): boolean =>
        keeps(job.dish, curve, zoneAt(grid, v.y), t.s * rules.tick + layout.phase, t.e * rules.tick + layout.phase)
      if (exact.s[u]!.length === 0 || !mine.every(keptBy)) wrong.add(u)
    }
    return {laid, lit, took, events, option, exact, curve, stood, wrong, good: wrong.size === 0 && stood.refused.length === 0}
  }
  type Seen = ReturnType<typeof check>
  const settledOn = (model: Model, {took, stood}: Seen, option: FiringOption): Settled => {
    const chosen = Int32Array.from(took, (t, u) => {
      if (!t) return -1
      const o = choiceAt(model, u, t.s, t.e, t.w)
      return o < 0 && jobs[u]!.since !== null ? 0 : o
    })
    const unplaced: Settled['unplaced'][number][] = []
    for (let u = 0; u < n; u++) if (chosen[u]! < 0) unplaced.push({job: jobs[u]!, why: model.s[u]!.length > 0 ? 'floor' : 'time'})
    const cost = costOf(model, chosen)
    return {
      model,
      found: {chosen, cost, unplaced: unplaced.length},
      standing: stood.standing,
      option,
      total: cost + model.constant,
      unplaced,
    }
  }
  /** What was seen to be good. Its range, and what else each dish might have done, are worked out once it is the best. */
  const settle = (seen: Seen): Settled => {
    let known: Settled | null = null
    const whole = (): Settled => {
      const ranged = {...original, forecast: simulate(original, seen.events, true)}
      const final = on(
        ranged,
        seen.lit,
        seen.took.map((must) => (must ? {must} : {})),
      )
      return settledOn(final, seen, ranged)
    }
    return {
      ...settledOn(seen.exact, seen, seen.option),
      whole: () => {
        known ??= whole()
        return known
      },
    }
  }
  const bringBack = (seen: Seen): Seen | null => {
    let last: Seen | null = null
    let trials = 0
    layout.barNone()
    const out = seen.took.flatMap((t, u) => (t ? [] : [u]))
    for (const u of out.sort((a, b) => jobs[b]!.dish.need.startBest - jobs[a]!.dish.need.startBest || a - b))
      for (const seat of layout.seatsFor(u, SEATS_TRIED)) {
        if (trials++ >= (gently ? FEW_TRIALS : MOST_TRIALS)) return last
        const before = layout.snapshot()
        layout.set(u, seat.s, seat.w)
        layout.judge()
        const trial = check()
        if (trial.good) {
          last = trial
          layout.agreeWith(trial.curve)
          layout.judge()
          break
        }
        layout.restore(before, layout.lit)
        layout.judge()
      }
    return last
  }
  /** Annealed with the true floor under it, from what was seen: what comes out has its places, or nearly. */
  const onFloor = (seen: Seen, how: {heat: number; rounds: number; seed: number; strict?: readonly [number, number]}): void => {
    layout.trustFloor()
    layout.agreeWith(seen.curve)
    layout.judge()
    seating.take(seen.laid, seen.stood.standing)
    const most = Math.ceil(SEATED_ROUNDS / Math.max(1, n))
    layout.anneal({
      ...freely(light),
      leave: overfull ? LEAVE : 0,
      strict: overfull || gently ? [HARD, FIRM] : [20, HARD],
      ...how,
      rounds: Math.min(most, how.rounds),
      seating,
    })
  }
  /** The same day lit later, where that costs nothing: bread is the fresher, and the night the longer. */
  const later = (seen: Seen): Seen => {
    if (given !== null) return seen
    layout.agreeWith(seen.curve)
    layout.restore(seen.laid, seen.lit)
    layout.lightLater(light.last)
    const now = layout.lit === seen.lit ? seen : check()
    return now.good ? now : seen
  }
  /** A plan that is good, made cheaper on its own curve and floor; what is laid out is proved anew, and mended where the curve has moved. */
  const polish = (seen: Seen, good: Settled): Settled => {
    layout.barNone()
    layout.restore(seen.laid, seen.lit)
    onFloor(seen, {heat: 12, rounds: 2 * rounds, seed: 701})
    let now = check()
    for (let mend = 0; mend < MENDED && !now.good; mend++) {
      onFloor(now, {heat: 3, rounds, seed: 731 + mend})
      now = check()
    }
    return now.good ? better(good, settle(later(now))) : good
  }
  let last = ''
  layout.judge()
  // More than the oven holds: what is left out is part of the search from the first.
  const overfull = !gently && patience === Number.POSITIVE_INFINITY && layout.violation > OVERFULL
  // After so many rounds what still cannot be kept is left out, so that the rest can be right, and then brought back as far as may be.
  let proved = 0
  for (let pass = 0; ; pass++) {
    if (pass >= patience) return null
    budget.passes--
    const giveUp = pass >= (overfull ? HOPELESS : PATIENCE) || budget.passes <= 0
    if (giveUp && layout.violation > 1e-6) {
      again(401 + pass, 'floor')
      if (layout.violation > 1e-6) again(451 + pass, 'last')
      layout.prune()
    }
    // Even then the draws of what is in the oven are put right on the curve as it has become.
    const seen = check(giveUp && proved++ >= PROVED)
    const {curve, stood, wrong} = seen
    if (seen.good) {
      const ready = later(seen)
      const settled = settle(ready)
      if (settled.unplaced.length === 0 && given === null) return {...settled, polished: () => polish(ready, settled)}
      if (settled.unplaced.length === 0 || gently === 'waiting') return settled
      // Something is left out: what can be is brought back, one dish at a time, each proved on the oven and the floor.
      layout.agreeWith(curve)
      const more = bringBack(seen)
      const fuller = more ? settle(more) : settled
      return fuller.unplaced.length < settled.unplaced.length ? fuller : settled
    }
    layout.agreeWith(curve)
    layout.refusals.push(...stood.refused)
    if (stood.refused.length > 0) {
      layout.tight = Math.min(3, layout.tight * 1.5)
      layout.full = Math.max(0.88, layout.full - 0.02)
    }
    const troubled = [...stood.refused.map((r) => r.job), ...wrong]
    // The same trouble once more, where all has been tried: the plan in hand will not do.
    const trouble = troubled.join(' ')
    const stuck = gently === 'moving' && trouble === last
    // Waiting does in the round after the last openings moved, or hardly ever.
    if (gently === 'waiting' && pass >= WAITED) return null
    last = trouble
    // Where one dish alone cannot be moved out of the way, several are moved together, on the floor as it is.
    if (gently === 'moving' && !giveUp && pass === RESEATED) {
      onFloor(seen, {heat: 2, rounds: 2 * rounds, seed: 862})
      if (layout.violation > 1e-6) layout.repair()
      continue
    }
    const leave = giveUp || stuck || (gently === 'moving' && pass >= MOVED)
    if (leave) for (const u of troubled) layout.bar(u)
    layout.judge()
    // First the openings wait for what they are for; then what is truly wrong is moved alone; and only where that will not do is the rest
    // looked at.
    if (gently === 'waiting') {
      layout.ripple()
      continue
    }
    const involved = new Set([...troubled, ...stood.refused.flatMap((r) => r.others)])
    if (overfull && !leave && stood.refused.length > CROWDED) {
      const most = Math.min(12000, 2 * rounds)
      layout.anneal({...freely(light), leave: LEAVE, strict: [HARD, FIRM], heat: 12, rounds: most, seed: 801 + pass})
      continue
    }
    if (!gently && !leave && pass < SEATED && stood.refused.length <= CROWDED) {
      // What is refused still is dearer every time.
      const strict = overfull ? {} : {strict: DEARER_EACH_PASS[Math.min(pass, DEARER_EACH_PASS.length - 1)]!}
      onFloor(seen, {heat: pass === 0 ? 12 : 6, rounds: 2 * rounds, seed: 801 + pass, ...strict})
      if (layout.violation > 1e-6) layout.repair()
      if (layout.violation < 1e-6) continue
    }
    if (!leave && layout.repair(involved) && (gently || layout.violation < 1e-6)) continue
    if (!giveUp && layout.violation > 1e-6) {
      again(101 + pass, stood.refused.length > 0 ? 'floor' : 'curve')
      if (layout.violation > 1e-6) again(151 + pass, 'floor')
    }
  }
}

/** Cost of a solution: its choices and the openings they need; what is left out is not counted. */
function costOf(m: Model, chosen: Int32Array): number {
  let cost = 0
  const doors = new Set<number>()
  for (let u = 0; u < chosen.length; u++) {
    const o = chosen[u]!
    if (o < 0) continue
    cost += m.cost[u]![o]!
    if (m.jobs[u]!.since === null) doors.add(m.s[u]![o]!)
    doors.add(m.e[u]![o]!)
  }
  const shut = m.jobs.flatMap(({dish, since}, u) => {
    const {closed} = dish.need
    const o = chosen[u]!
    const at = since === null ? m.s[u]![o]! * rules.tick : since - m.clock0
    return closed && o >= 0 ? [{at, shut: closed.likely}] : []
  })
  const opened = Array.from(doors, (k) => k * rules.tick)
  return cost + doors.size * m.opening + weights.shut * disturbances(shut, opened).length
}

/**
 * Search, then stand every vessel on the true floor, load by load. A dish the floor refuses at one time is set in at its next best; the
 * refusals are told to the search, which tries again with them in mind.
 */
function searchAndPlace(
  model: Model,
  grid: FloorGrid,
  start: Int32Array,
  rounds: number,
  calm: boolean,
  seed: number,
): {found: Found; standing: Standing[]; unplaced: {job: Job; why: 'floor' | 'time'}[]} {
  const n = model.jobs.length
  const refused: (Set<number> | undefined)[] = []
  let chosen = start
  let best: {chosen: Int32Array; standing: Standing[]; cost: number} | null = null
  for (let attempt = 0; attempt < 4; attempt++) {
    const again = calm || attempt > 0
    let found = search(model, {
      rounds: attempt === 0 ? rounds : Math.ceil(rounds / 5),
      start: chosen,
      seed: seed + attempt,
      calm: again,
      refused,
    })
    // Small corrections are enough while everything has a place; where something has none, look further.
    if (again && found.unplaced > model.s.filter((s) => s.length === 0).length) {
      const wider = search(model, {rounds: 60 + 10 * n, start: found.chosen, seed: seed + 24 + attempt, refused})
      if (wider.cost < found.cost) found = wider
    }
    const before = refused.reduce((sum, r) => sum + (r?.size ?? 0), 0)
    const stood = standAll(model, grid, found, refused)
    if (!best || stood.cost < best.cost - 1e-9) best = stood
    chosen = stood.chosen
    if (refused.reduce((sum, r) => sum + (r?.size ?? 0), 0) === before) break
  }
  const unplaced: {job: Job; why: 'floor' | 'time'}[] = []
  for (let u = 0; u < n; u++)
    if (best!.chosen[u]! < 0) unplaced.push({job: model.jobs[u]!, why: model.s[u]!.length === 0 ? 'time' : 'floor'})
  return {found: {chosen: best!.chosen, cost: best!.cost, unplaced: unplaced.length}, standing: best!.standing, unplaced}
}

/** Stand the vessels of a solution on the floor in the order of the clock; what is refused goes in at its next best time. */
function standAll(
  model: Model,
  grid: FloorGrid,
  found: Found,
  refused: (Set<number> | undefined)[],
): {chosen: Int32Array; standing: Standing[]; cost: number} {
  const n = model.jobs.length
  const state = new State(model)
  for (let u = 0; u < n; u++) {
    state.refused[u] = refused[u]
    if (found.chosen[u]! >= 0) state.add(u, found.chosen[u]!)
  }
  let all: Standing[] = []
  let clock = Number.NEGATIVE_INFINITY
  for (let guard = 0; guard < 60 + 20 * n; guard++) {
    // The next load after the clock.
    let t = Number.POSITIVE_INFINITY
    for (let u = 0; u < n; u++) {
      const o = state.chosen[u]!
      if (o < 0) continue
      const s = model.s[u]![o]!
      if (s > clock && s < t) t = s
    }
    if (t === Number.POSITIVE_INFINITY) break
    const here: {u: number; s: number; e: number; w: number}[] = []
    for (let u = 0; u < n; u++) {
      const o = state.chosen[u]!
      if (o >= 0 && model.s[u]![o] === t) here.push({u, s: t, e: model.e[u]![o]!, w: model.where[u]![o]!})
    }
    for (const i of here) if (model.jobs[i.u]!.since !== null) all.push(...standingAlready(model.jobs[i.u]!, i.s, i.e))
    const fresh = here.filter((i) => model.jobs[i.u]!.since === null)
    const inside = all.filter((v) => v.from <= t && v.to > t)
    const result =
      fresh.length === 0
        ? null
        : placeLoad(
            grid,
            inside,
            fresh.map((i) => toPlace(model.jobs[i.u]!, i, model.program.curve, model.program.phase)),
          )
    if (result === null || result.ok) {
      if (result?.ok) all.push(...result.placed)
      clock = t
      continue
    }
    // Whichever of the load can most cheaply go in at another time is moved; if none can, something that stands already.
    const blamed =
      fresh.find((i) => model.jobs[i.u]!.dish.id === result.dish && model.jobs[i.u]!.first === result.first) ?? fresh[0]!
    let victim = blamed
    let least = Number.POSITIVE_INFINITY
    const weigh = (i: {u: number; s: number; e: number; w: number}): void => {
      const o = state.chosen[i.u]!
      const before = state.cost
      const set = new Set(refused[i.u] ?? [])
      set.add(i.s)
      state.remove(i.u)
      state.refused[i.u] = set
      const next = state.best(i.u)
      if (next.o >= 0) state.add(i.u, next.o)
      const rise = state.cost - before - (i.u === blamed.u ? 1e-3 : 0)
      state.remove(i.u)
      state.refused[i.u] = refused[i.u]
      state.add(i.u, o)
      if (rise < least) {
        least = rise
        victim = i
      }
    }
    for (const i of fresh) weigh(i)
    if (least > missing / 4)
      for (let u = 0; u < n; u++) {
        const o = state.chosen[u]!
        if (o < 0 || model.jobs[u]!.since !== null) continue
        const s = model.s[u]![o]!
        if (s < t && model.e[u]![o]! > t) weigh({u, s, e: model.e[u]![o]!, w: model.where[u]![o]!})
      }
    const set = refused[victim.u] ?? new Set<number>()
    set.add(victim.s)
    refused[victim.u] = set
    state.refused[victim.u] = set
    state.remove(victim.u)
    const next = state.best(victim.u)
    if (next.o >= 0) state.add(victim.u, next.o)
    const first = Math.min(victim.s, next.o >= 0 ? model.s[victim.u]![next.o]! : victim.s)
    if (first < t) {
      // An earlier load changes: stand everything again from there.
      clock = first - 1
      all = all.filter((v) => v.from < first)
    }
  }
  return {chosen: Int32Array.from(state.chosen), standing: all, cost: state.cost}
}

function toPlace(
  job: Job,
  i: {readonly s: number; readonly e: number; readonly w: number},
  curve: Curve,
  phase: number,
): ToPlace {
  const from = i.s * rules.tick + phase
  const to = i.e * rules.tick + phase
  const ok = (z: number): boolean => keeps(job.dish, curve, z, from, to)
  return {dish: job.dish, first: job.first, count: job.count, from: i.s, to: i.e, where: i.w, fits: [ok(0), ok(1), ok(2)]}
}

/** True when a dish set in and drawn at these minutes keeps its limits in one part of the floor. */
function keeps(dish: Dish, curve: Curve, z: number, from: number, to: number): boolean {
  const {need} = dish
  const c = celsiusAt(curve, z, from)
  if (c < need.startLow || c > need.startHigh) return false
  if (celsiusAt(curve, z, to) < need.endLow) return false
  const dose = doseNeeded(need)
  const got = doseBetween(curve, need, z, from, to)
  if (got < dose * (1 - rules.doseWanting)) return false
  if (need.falling || need.overnight) return true
  // Over-baked only where the next opening but one would already have been late.
  return got <= doseNeeded(need, need.minutes.high) || doseBetween(curve, need, z, from, to - rules.tick - rules.staySlack) < dose
}

/** °C by which what is in the oven may end under its least heat for rounding's sake. */
const ROUGHLY = 0.3

/** True when what is in the oven has the dose it needs at a minute, in a part of the floor, and is not too cool; what rounding takes is granted. */
function hasDose({dish, since}: Job, curve: Curve, z: number, to: number, lit: number): boolean {
  const {need} = dish
  if (celsiusAt(curve, z, to) < need.endLow - ROUGHLY) return false
  return doseBetween(curve, need, z, since! - lit, to) >= doseNeeded(need) * (1 - 2 * rules.doseWanting)
}

/** True when what is in the oven is over-baked, all its vessels, for the sake of the next opening but one (see `keeps`). */
function stayed({dish: {need}, since}: Job, curve: Curve, zones: readonly number[], to: number, lit: number): boolean {
  if (need.falling || need.overnight) return false
  const from = since! - lit
  const has = (z: number, until: number): number => doseBetween(curve, need, z, from, until)
  return (
    zones.some((z) => has(z, to) > doseNeeded(need, need.minutes.high)) &&
    zones.every((z) => has(z, to - rules.tick - rules.staySlack) >= doseNeeded(need))
  )
}

/** °C·min between two minutes after lighting. */
function doseBetween(curve: Curve, need: HeatNeed, z: number, from: number, to: number): number {
  const table = doseTable(curve, z, need.done)
  const at = (m: number): number => table[Math.max(0, Math.min(table.length - 1, Math.round(m)))]!
  return at(to) - at(from)
}

/** Later fires as the oven sees them, minutes after the first is lit. */
function firesOf(option: FiringOption): OvenEvent[] {
  return (option.further ?? []).map((f) => ({minutes: f.minutes, kind: 'fire', firing: f.firing}))
}

/** The loads and openings of a layout as the oven sees them, minutes after lighting. */
function eventsOf(
  jobs: readonly Job[],
  took: ReadonlyArray<{readonly s: number; readonly e: number} | null>,
  option: FiringOption,
  phase: number,
  lit: number,
): OvenEvent[] {
  const open = new Map<number, number>()
  const events = firesOf(option)
  took.forEach((t, u) => {
    if (!t) return
    const job = jobs[u]!
    const e = t.e * rules.tick + phase
    const from = job.since === null ? t.s * rules.tick + phase : job.since - lit
    events.push(loadEvent(job.dish, job.count, from))
    open.set(from, (open.get(from) ?? 0) + job.handling)
    open.set(e, (open.get(e) ?? 0) + job.handling)
  })
  events.push(...doorEvents(open))
  return events.sort((a, b) => a.minutes - b.minutes || (a.kind < b.kind ? -1 : a.kind > b.kind ? 1 : 0))
}

/** Stand the vessels of a layout on the floor; what finds no place is named with what stood in its way. */
function stand(
  jobs: readonly Job[],
  took: ReadonlyArray<{readonly s: number; readonly e: number; readonly w: number} | null>,
  grid: FloorGrid,
  curve: Curve,
  phase: number,
  seating: Seating,
): {standing: Standing[]; refused: Refusal[]} {
  const fixed: Standing[] = []
  const day: {u: number; item: ToPlace}[] = []
  took.forEach((t, u) => {
    if (!t) return
    if (jobs[u]!.since === null) day.push({u, item: toPlace(jobs[u]!, t, curve, phase)})
    else fixed.push(...standingAlready(jobs[u]!, t.s, t.e))
  })
  const known = new Map<ToPlace, readonly Seat[]>()
  for (const {u, item} of day) {
    const {was, count} = jobs[u]!
    if (was && was.placed.length === count) known.set(item, was.placed)
    const seat = seating.vessels(u)
    if (seat) known.set(item, seat)
  }
  const result = placeDay(
    grid,
    fixed,
    day.map((d) => d.item),
    known,
  )
  const standing = [...fixed, ...result.placed]
  const refused = result.refused.map((item): Refusal => {
    const job = day.find((d) => d.item === item)!.u
    const others = took.flatMap((t, u) => (t && u !== job && t.s < item.to && t.e > item.from ? [u] : []))
    const past = others.map((v) => pastOf(item.from, item.to, took[v]!.s, took[v]!.e))
    return {job, others, at: item.from, past}
  })
  return {standing, refused}
}

/** The least any plan could cost under the model, of this fire and lighting time, with this plan's loads in the oven. */
function boundOf(problem: PlanProblem, settled: Settled): number | null {
  // A plan made again also pays for what it moves, so the two would not be alike.
  if (settled.unplaced.length > 0 || problem.done?.plan) return null
  const n = settled.model.jobs.length
  const rounds = n > 150 ? 40 : n > 60 ? 120 : 160
  const mine = lowerBound(settled.model, settled.total, rounds)
  return Math.min(mine.bound, settled.total)
}

function write(
  problem: PlanProblem,
  grid: FloorGrid,
  settled: Settled,
  lone: readonly {dish: Dish; rule: string; reason: string; words?: Phrase}[],
  bound: number | null,
  options: PlanOptions,
): Plan {
  const {model, found, option} = settled
  const {curve} = model.program
  const jobs = model.jobs
  const clock = (k: number): number => model.clock0 + k * rules.tick
  const byStart = new Map<number, number[]>()
  for (let u = 0; u < jobs.length; u++) {
    const o = found.chosen[u]!
    if (o < 0) continue
    const at = jobs[u]!.since ?? clock(model.s[u]![o]!)
    byStart.set(at, [...(byStart.get(at) ?? []), u])
  }
  const messages: Message[] = []
  const loads: Load[] = []
  let misfit = 0
  let late = 0
  let used = 0
  const doors = new Set<number>()
  for (const at of [...byStart.keys()].sort((a, b) => a - b)) {
    const dishes: Load['dishes'][number][] = []
    const placed = []
    for (const u of byStart.get(at)!) {
      const job = jobs[u]!
      // Its limits as they are, where they were eased.
      const own = problem.dishes.find((d) => d.id === job.dish.id) ?? job.dish
      const o = found.chosen[u]!
      const w = model.where[u]![o]!
      const origin = model.origin[u]![o]!
      const choices = model.program.choices[u]!
      const drawn = clock(model.e[u]![o]!)
      misfit += choices.misfit[origin] ?? 0
      used += choices.used[origin] ?? 0
      late += lateness(job, drawn)
      const waited = afterTime(own, drawn, problem.day)
      if (waited && !messages.some((m) => m.reason === waited.reason)) messages.push(waited)
      if (job.since === null) doors.add(at)
      doors.add(drawn)
      const from = at - model.lit
      const to = drawn - model.lit
      const mine = vesselsOf(job, settled.standing)
      const zones = new Set(mine.map((v) => zoneAt(grid, v.y)))
      // Shown where its vessels stand: the model's part of the floor is a wish the true floor may not grant.
      const shown = zones.size === 1 ? [...zones][0]! : zones.size === 0 ? w : 3
      const three = (m: number): {low: number; likely: number; high: number} => ({
        low: celsiusAt(curve, shown, m, 'low'),
        likely: celsiusAt(curve, shown, m),
        high: celsiusAt(curve, shown, m, 'high'),
      })
      dishes.push({
        dish: job.dish.id,
        count: job.count,
        draw: drawRange(curve, own.need, w, from, to, model.lit),
        celsiusIn: three(from),
        celsiusOut: three(to),
        zone: shown === 3 ? 'across' : zoneNames[shown as 0 | 1 | 2],
        ...(job.since === null ? {} : {alreadyIn: true}),
        ...(settled.eased || job.since !== null
          ? easedOf(curve, own.need, zones.size === 0 ? [w] : [...zones], from, to, job.since === null)
          : {}),
      })
      for (const v of mine) placed.push(placedOf(grid, v))
    }
    loads.push({number: loads.length + 1, at, dishes, placed})
  }
  const idle = Math.max(0, model.program.hotFloor - used)
  const disturbed = disturbances(
    loads.flatMap(({at, dishes}) =>
      dishes.flatMap((d) => {
        const dish = problem.dishes.find(({id}) => id === d.dish)
        return dish?.need.closed ? [{at, shut: dish.need.closed.likely, dish}] : []
      }),
    ),
    doors,
  )
  for (const {dish, at} of disturbed)
    messages.push({
      ...lineOf(problem.day, dish.dish),
      severity: 'warning',
      rule: 'door-shut',
      reason: `the door is opened ${at - dish.at} min after ${dish.dish.title} goes in, and its receipt wants it shut for ${Math.round(dish.shut)} min`,
      suggest: 'open it for a moment only, or let what is drawn or set in then wait',
    })
  const total =
    weights.late * late +
    weights.misfit * misfit +
    weights.opening * doors.size +
    weights.shut * disturbed.length +
    weights.idle * (model.program.hotFloor - used) +
    weights.wood * model.program.wood
  if (problem.dishes.length === 0)
    messages.push({
      file: 'day.md',
      line: 1,
      column: 1,
      severity: 'info',
      rule: 'no-dish',
      reason: 'no dish to bake',
      suggest: 'add a link to a receipt',
    })
  const loneOnes: Plan['unplaced'][number][] = [
    ...lone.map((l) => ({
      dish: l.dish.id,
      rule: l.rule,
      reason: l.reason,
      remedies: [],
      conflict: [l.dish.id],
      ...(l.words ? {words: l.words} : {}),
    })),
  ]
  const lit = model.lit
  const plan: Plan = {
    possible: loneOnes.length === 0 && settled.unplaced.length === 0,
    firing: option.firing,
    lit,
    raked: lit + option.forecast.raked,
    ready: lit + option.forecast.ready,
    forecast: option.forecast,
    loads,
    steps: [],
    unplaced: loneOnes,
    score: {
      lateMinutes: late,
      misfit,
      openings: doors.size,
      ...(disturbed.length > 0 ? {disturbed: disturbed.length} : {}),
      idle,
      wood: model.program.wood,
      total,
      gap: bound === null ? null : total <= 0 ? 0 : Math.max(0, (total - bound) / total),
      bound,
    },
    fires: [
      {lit, raked: lit + option.forecast.raked, ready: lit + option.forecast.ready, firing: option.firing},
      ...(option.further ?? []).map((f) => ({
        lit: lit + f.minutes,
        raked: lit + f.minutes + f.firing.burn,
        ready: lit + f.minutes + f.firing.burn + f.firing.soak,
        firing: f.firing,
      })),
    ],
    messages,
  }
  const behind = amiss(problem, plan).late
  const lacking = behind.length > 0 || settled.unplaced.length > 0
  const told = lacking && options.effort !== 'quick' && !options.bare && !problem.done && options.simulate
  const balanced: Plan = {
    ...plan,
    unplaced: [...loneOnes, ...unplacedOf(problem, settled, plan, options)],
    ...(behind.length > 0 ? {late: behind} : {}),
    ...(told ? {ways: waysOf(problem, plan, options, planDay)} : {}),
    ...balanceOf(problem, grid, settled, plan),
    suggestions: suggest(problem, grid, settled, options.spare ?? []),
  }
  const {steps, messages: more} = stepsOf(problem, balanced)
  const whole: Plan = {...balanced, steps, messages: [...balanced.messages, ...more]}
  const broken = check(problem, whole)
  if (broken.length > 0)
    return {
      ...whole,
      messages: [
        ...whole.messages,
        ...broken.map(
          (v): Message => ({file: 'day.md', line: 1, column: 1, severity: 'error', rule: `checker-${v.rule}`, reason: v.reason}),
        ),
      ],
    }
  return whole
}

/** A dish that comes out after it is wanted, or after the meal where nobody said when, is named: the total alone hides it. */
function afterTime(dish: Dish, drawn: number, day: Day): Message | null {
  const {by: meant, unsaid: stays} = meantFor(dish, day.serve)
  if (meant === null || drawn <= meant) return null
  return {
    ...lineOf(day, dish),
    severity: stays ? 'info' : 'warning',
    rule: stays ? 'after-meal' : 'late',
    reason: stays
      ? `${dish.title} stays in past the serving time: it is ready for the next day`
      : `${dish.title} is drawn ${writeDuration(drawn - meant)} after it is wanted`,
    suggest: stays ? 'write beside its link when it is wanted, if it is for this meal' : 'ask for it later, or make less',
  }
}

/** What a dish has less than it should in some part of the floor, to a tenth of a degree; nothing where it has all. */
function easedOf(
  curve: Curve,
  need: HeatNeed,
  zones: readonly number[],
  from: number,
  to: number,
  fresh: boolean,
): {eased?: Eased} {
  const under = (least: number, minute: number): number =>
    Math.max(0, ...zones.map((z) => Math.round(10 * (least - celsiusAt(curve, z, minute))) / 10))
  const usual = doseNeeded(need, need.minutes.likely)
  const dose = Math.min(1, ...zones.map((z) => Math.round((1000 * doseBetween(curve, need, z, from, to)) / usual) / 1000))
  const eased = {start: fresh ? under(need.startLow, from) : 0, end: under(need.endLow, to), dose}
  return eased.start > 0 || eased.end > 0 || eased.dose < 1 - rules.doseWanting ? {eased} : {}
}

/** When to look, when it is likely done, when at the latest: by the hot, the likely and the cool curve. */
function drawRange(
  curve: Curve,
  need: HeatNeed,
  where: number,
  from: number,
  to: number,
  lit: number,
): {low: number; likely: number; high: number} {
  const dose = doseNeeded(need)
  const done = (which: 'low' | 'likely' | 'high'): number => {
    const table = doseTable(curve, where, need.done, which)
    const base = table[Math.max(0, Math.min(table.length - 1, Math.round(from)))]!
    for (let m = Math.round(from); m < table.length; m++) if (table[m]! - base >= dose) return m
    return table.length - 1
  }
  const likely = to
  const early = done('high')
  const slow = done('low')
  const longStay = to - done('likely') > 2 * rules.tick
  const low = longStay ? likely : Math.min(likely, early)
  const high = Math.max(likely, Math.min(slow, likely + Math.max(20, need.minutes.likely)))
  // Told as the plan's other times are, on its five-minute clock, and rather wider.
  return {
    low: Math.min(lit + likely, Math.floor((lit + low) / rules.tick) * rules.tick),
    likely: lit + likely,
    high: Math.ceil((lit + high) / rules.tick) * rules.tick,
  }
}

/** What was left out, a line a dish: why, with what it conflicts, and what would help. */
function unplacedOf(problem: PlanProblem, settled: Settled, plan: Plan, options: PlanOptions): Plan['unplaced'][number][] {
  const parts = new Map<string, {job: Job; count: number; why: 'floor' | 'time'}>()
  for (const {job, why} of settled.unplaced) {
    const before = parts.get(job.dish.id)
    parts.set(job.dish.id, {job, count: (before?.count ?? 0) + job.count, why: before?.why === 'floor' ? 'floor' : why})
  }
  const missing = [...parts.values()]
  if (missing.length === 0) return []
  const told = options.effort !== 'quick' && !options.bare
  const found = told ? conflictsOf(problem, missing, settled, options, planDay) : null
  const remedies = found ? remediesOf(problem, plan, missing, found, options, planDay) : new Map<string, Remedy[]>()
  const from = problem.done ? problem.done.now - settled.model.lit : undefined
  return missing.map(({job, count}) => {
    const {dish} = job
    const alone = whyNot(dish, settled.model.program.curve, settled.option, from, (m) => !isNight(problem, settled.model.lit + m))
    const {dishes: conflict, others, why} = found?.get(dish.id) ?? {dishes: [dish.id], others: [], why: 'alone'}
    const words =
      why === 'alone'
        ? alone.words
        : phrase(
            `${({many: 'too many', room: 'floor taken', heat: 'heat shared', all: 'all taken'} as const)[why]}${count < dish.count ? ' of some' : ''}`,
            {
              dishes: {unit: 'dishes', dishes: [dish.id]},
              others: {unit: 'dishes', dishes: others, whole: true},
              count,
              all: dish.count,
            },
          )
    const tried = remedies.get(dish.id) ?? []
    return {
      dish: dish.id,
      rule: why === 'alone' ? alone.rule : ruleOf[why],
      reason: speak(
        words,
        english((one) => problem.dishes.find((d) => d.id === one)?.title ?? one),
      ),
      words,
      remedies: tried.map((r) => r.say),
      conflict,
      tried,
    }
  })
}

/** The rule that a conflict of dishes breaks. */
const ruleOf = {many: 'full', room: 'room', heat: 'heat', all: 'full'} as const
