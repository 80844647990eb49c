import {asMany} from './as-many.js'
import {leastLeftOut, lowerBound} from './bound.js'
import {crowdedOut} from './crowd.js'
import {easedDay} from './ease.js'
import {type FloorGrid, floorGrid} from './floor-grid.js'
import {inOrder} from './in-order.js'
import {inTime, type Laid} from './in-time.js'
import {type Job, jobsOf, modelOf, passes, programOf, tooUneven} from './model.js'
import {type OnOneFire, PlanCancelled, type PlanOptions} from './options.js'
import {putOff, putOffForNight} from './put-off.js'
import {rules} from './rules.js'
import {settleBest, settleFrom} from './settle.js'
import {better, goWithout, lacksNothing, type Settled, sameFire, tookIn, wantsHot} from './settled.js'
import type {FiringOption, LeftOut, Plan, PlanProblem} from './types.js'
import {drawnAwake} from './waking.js'
import {keptInHand, within} from './within.js'
import {write} from './written.js'

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
  const {settled: best, firings, onOneFire} = onFires(problem, grid, options, tick)
  // A second fire may have been made for the plan, which is then one of the day's.
  const day = {...problem, firings}
  const many = asMany(day, grid, best, options, tick)
  const awake = (one: Settled): Settled => drawnAwake(day, grid, one, options.simulate)
  const settled = problem.done ? awake(many) : putOffForNight(day, grid, putOff(day, grid, inOrder(many)), awake)
  tick(0.85)
  // Of a plan that is a trial nobody asks how good it is.
  const proved = full && options.asTold === undefined
  const bound = proved ? boundOf(day, settled) : null
  const leftOut = proved ? leftOutOf(day, grid, settled) : null
  tick(0.95)
  const plan = write(day, grid, settled, lone, {bound, leftOut}, onOneFire ? {...options, onOneFire} : options, planDay)
  tick(1)
  return plan
}

/** What a day was settled on, and the fires there were to choose from. */
interface OnFires {
  readonly settled: Settled
  readonly firings: readonly FiringOption[]
  /** Of a day that is fired once: what its ways out begin with. */
  readonly onOneFire?: OnOneFire
}

/**
 * The day on one fire; and where that leaves something out or late, and it may be fired again, on two: the first as long as that one's, or of
 * another length. What two leave out is compared with what one does, so that a second fire is never worse than none.
 */
function onFires(problem: PlanProblem, grid: FloorGrid, options: PlanOptions, tick: (share: number) => void): OnFires {
  const {from} = options
  const {firings} = problem
  if (from && firings.some(sameFire(from))) return {firings, settled: goneOnWith(problem, grid, from, options, tick)}
  // The fires of a day that has begun are what they are.
  if (problem.done) return {firings, settled: inParts(problem, grid, options, tick).settled}
  // What is too late to be of use is so whichever fires are looked at.
  const any: PlanProblem = {...problem, anyFire: problem.anyFire ?? firings}
  const one = {...any, firings: firings.filter((f) => !f.further?.length)}
  const two = {...any, firings: firings.filter((f) => f.further?.length)}
  if (one.firings.length === 0) return {firings, settled: laidOut(problem, grid, options, tick)}
  const known = options.onOneFire
  const once = known?.laid ?? litLater(one, grid, inParts(one, grid, options, tick), options, tick)
  const weighed = (): Settled => known?.weighed ?? weighedUp(one, grid, once, options, tick)
  if (two.firings.length === 0) {
    const settled = weighed()
    return {firings, settled, onOneFire: {laid: once, weighed: settled}}
  }
  // One fire that has bread at noon and pies hot at six burns far more wood than two, which nothing but a trial tells.
  if (lacksNothing(once.settled) && !wantsHot(once.settled)) return {firings, settled: once.settled}
  const looked = new Set(two.firings.map(firesOf))
  const made: FiringOption[] = []
  const laidOn = (on: PlanProblem): {on: PlanProblem; laid: Laid} => ({on, laid: inParts(on, grid, options, tick)})
  /** Second fires for a first one as long as that of a plan, where they have not been looked at. */
  const laidAfter = ({option}: Settled, further?: FiringOption['further']): {on: PlanProblem; laid: Laid}[] => {
    const again = options.secondFires?.(option.firing, further).filter((f) => !looked.has(firesOf(f))) ?? []
    for (const f of again) looked.add(firesOf(f))
    made.push(...again)
    return again.length > 0 ? [laidOn({...any, firings: again})] : []
  }
  const tried = [laidOn(two), ...laidAfter(once.settled)]
  let alone = once.settled
  // The day's own plan on one fire is often on a shorter one, of which the ways out of that day promise a second.
  if (!tried.some(({laid}) => lacksNothing(laid.settled))) {
    alone = weighed()
    tried.push(...laidAfter(alone))
  }
  const bestOf = (some: typeof tried) =>
    some.reduce((a, b) => (better(a.laid.settled, b.laid.settled) === a.laid.settled ? a : b))
  const found = bestOf(tried)
  // Which of two fires are best is first asked of a few; those much like them, and shorter ones, may be better still.
  // A trial, of which a day makes several, looks no further where two fires feed fewer people than one.
  const {settled: first} = found.laid
  const further = options.asTold === undefined || goWithout(first) <= goWithout(alone)
  const near = further ? laidAfter(first, first.option.further) : []
  const best = bestOf([found, ...near])
  const settledOn = ({on, laid}: (typeof tried)[number]): Settled =>
    afterBoth(weighedUp(on, grid, laid, options, tick), one, grid, options, tick)
  let twice = settledOn(best)
  if (alone === once.settled && !lacksNothing(twice)) alone = weighed()
  // What looked better as laid out may come to less than what was found before.
  if (best !== found && better(alone, twice) === alone) twice = settledOn(found)
  return {firings: [...firings, ...made], settled: better(alone, twice)}
}

/** Hours later, min, than it may be at which the fire of a day that wants something hot is lit for a trial; and jobs of such a day. */
const LATER = [180, 360] as const
const FEW_LATER = 12

/**
 * A day on one fire that wants something hot hours after the fire may be lit, laid out from a later hour as well: the search moves loads by
 * turns, and rather burns a longer fire than move all of them.
 */
function litLater(one: PlanProblem, grid: FloorGrid, laid: Laid, options: PlanOptions, tick: (share: number) => void): Laid {
  const {jobs, settled} = laid
  if (options.effort === 'quick' || laid.crowded || jobs.length > FEW_LATER || !wantsHot(settled)) return laid
  let best = settled
  for (const later of LATER) {
    const fireFrom = one.day.fireFrom + later
    if (best.model.lit >= fireFrom) continue
    best = better(best, settleBest({...one, day: {...one.day, fireFrom}}, grid, jobs, options, tick))
  }
  return {...laid, settled: best}
}

/** A day on two fires; on the first of them alone where nothing is set in after the second. */
function afterBoth(
  twice: Settled,
  one: PlanProblem,
  grid: FloorGrid,
  options: PlanOptions,
  tick: (share: number) => void,
): Settled {
  const {
    model: {program},
    option: {firing, further = []},
  } = twice
  const again = further[0]!.minutes
  if (tookIn(twice).some((took) => took && took.s * rules.tick + program.phase >= again)) return twice
  const alone = one.firings.filter((f) => f.firing.burn === firing.burn)
  return alone.length === 0 ? twice : laidOut({...one, firings: alone}, grid, options, tick)
}

/** The day gone on with from a plan, with each dish in as many parts and priced as there, and its limits as far eased. */
function goneOnWith(
  day: PlanProblem,
  grid: FloorGrid,
  from: Settled,
  options: PlanOptions,
  tick: (share: number) => void,
): Settled {
  const problem = from.eased ? easedDay(day, 'far') : day
  const parts = partsIn(from.model.jobs)
  const weighed = from.model.jobs.some((job) => job.weighed)
  const whole = new Set(Array.from(parts).flatMap(([id, count]) => (count === 1 ? [id] : [])))
  const jobs = jobsOf(problem, grid, parts, whole).map((job): Job => (weighed ? {...job, weighed} : job))
  const settled = settleFrom(from, problem, grid, jobs, options, tick)
  return from.eased ? {...settled, eased: true} : settled
}

/** In how many parts each dish goes in, by its id. */
function partsIn(jobs: readonly Job[]): Map<string, number> {
  const parts = new Map<string, number>()
  for (const {dish} of jobs) parts.set(dish.id, (parts.get(dish.id) ?? 0) + 1)
  return parts
}

/** When and how long a firing burns, as a key. */
const firesOf = ({firing, further = []}: FiringOption): string =>
  [firing.burn, ...further.map((f) => `${f.minutes} ${f.firing.burn}`)].join(', ')

/** The day on the best of a problem's firings. */
function laidOut(problem: PlanProblem, grid: FloorGrid, options: PlanOptions, tick: (share: number) => void): Settled {
  return weighedUp(problem, grid, inParts(problem, grid, options, tick), options, tick)
}

/** A day as laid out, weighed again where not all of it can be had in time. */
function weighedUp(
  problem: PlanProblem,
  grid: FloorGrid,
  laid: Laid,
  options: PlanOptions,
  tick: (share: number) => void,
): Settled {
  return options.effort !== 'quick' && (!options.bare || options.inTime || options.asTold !== undefined) && !laid.crowded
    ? inTime(problem, grid, laid, options, tick)
    : laid.settled
}

/** The day with each dish whole, or in two batches where it does not fit so; without what it is far too full for. */
function inParts(problem: PlanProblem, grid: FloorGrid, options: PlanOptions, tick: (share: number) => void): Laid {
  const all = jobsOf(problem, grid)
  const out = crowdedOut(problem, grid, all, options, tick)
  const jobs = all.filter((job) => !out.has(job))
  const settled = settleBest(problem, grid, jobs, out.size > 0 ? {...options, effort: 'quick'} : options, tick)
  if (out.size > 0) {
    const more = Array.from(out, (job) => ({job, why: 'floor' as const}))
    return {jobs, settled: {...settled, unplaced: [...settled.unplaced, ...more]}, crowded: true}
  }
  if (options.effort === 'quick' || problem.done) return {jobs, settled}
  let best: Laid = atOnce(problem, grid, {jobs, settled}, options, tick)
  if (best.settled.unplaced.length === 0) return best
  for (const split of splits(settled)) {
    const parts = jobsOf(problem, grid, split)
    const again = settleBest(problem, grid, parts, {...options, effort: 'quick'}, tick)
    // That it can be done was soon seen; how it is best done takes as long as any day.
    if (again.unplaced.length === 0) return {jobs: parts, settled: better(again, settleBest(problem, grid, parts, options, tick))}
    if (goWithout(again) < goWithout(best.settled)) best = {jobs: parts, settled: again}
  }
  return best
}

/**
 * A day with what goes in in parts, since the floor bakes less evenly than its heat is wide, set in at once as well: nobody bakes one loaf of six an
 * hour before the others, for the sake of a few degrees. What is cheaper is taken.
 */
function atOnce(problem: PlanProblem, grid: FloorGrid, laid: Laid, options: PlanOptions, tick: (share: number) => void): Laid {
  const parts = partsIn(laid.jobs)
  const several = problem.dishes.filter((dish) => (parts.get(dish.id) ?? 0) > 1 && tooUneven(problem, dish))
  const apart = new Set(several.map(({id}) => id))
  if (apart.size === 0) return laid
  const jobs = jobsOf(problem, grid, new Map(), apart)
  if (jobs.length === laid.jobs.length) return laid
  const settled = settleBest(problem, grid, jobs, options, tick)
  return better(laid.settled, settled) === laid.settled ? laid : {jobs, settled}
}

/**
 * What is tried in twice as many batches, by its dish, where something is left out for want of floor: that itself; then what takes most of the
 * floor at once, which may be what keeps it out.
 */
function splits({model, unplaced}: Settled): ReadonlyMap<string, number>[] {
  const twice = (some: readonly Job[]): Map<string, number> =>
    new Map(
      some
        .filter(({count, since}) => count >= 2 && since === null)
        .map(({dish, count}) => [dish.id, 2 * Math.ceil(dish.count / count)]),
    )
  const out = unplaced.flatMap(({job, why}) => (why === 'floor' ? [job] : []))
  const own = twice(out)
  if (out.length === 0 || own.size > FEW_SPLIT) return []
  const lost = new Set(unplaced.map(({job}) => job.dish))
  const others = model.jobs.filter(({dish, count}) => !lost.has(dish) && count >= 2)
  const largest = others.sort((a, b) => b.area - a.area).slice(0, 1)
  return [own, twice(largest)].filter(({size}) => size > 0)
}

/** Dishes that are tried in two batches: where more are left out, the oven is too small for the day. */
const FEW_SPLIT = 2

/** The least any plan that keeps as much in hand for each dish could cost under the model, of this fire and lighting time, with this plan's loads in the oven. */
function boundOf(problem: PlanProblem, settled: Settled): number | null {
  // A plan made again also pays for what it moves, so the two would not be alike.
  if (settled.unplaced.length > 0 || problem.done?.plan) return null
  const n = settled.model.jobs.length
  const rounds = n > 150 ? 60 : n > 60 ? 160 : 300
  const {model} = within(settled.model, tookIn(settled), keptInHand(settled.model, settled.found.chosen))
  return Math.min(lowerBound(model, settled.total, rounds), settled.total)
}

/**
 * Vessels left out, and how many of them every plan of this fire and lighting time leaves out, with this plan's loads in the oven; null where
 * none is.
 */
function leftOutOf(problem: PlanProblem, grid: FloorGrid, settled: Settled): LeftOut | null {
  if (settled.unplaced.length === 0 || problem.done) return null
  const {program, lit} = settled.model
  // What is not laid out at all is wanted none the less.
  const jobs = [...new Set([...settled.model.jobs, ...settled.unplaced.map(({job}) => job)])]
  const model = modelOf(problem, programOf(problem, program.index, jobs, grid, null, false, settled.option), jobs, grid, lit)
  const vessels = settled.unplaced.reduce((sum, {job}) => sum + job.count, 0)
  return {vessels, least: leastLeftOut(model, vessels, jobs.length > 150 ? 40 : 120)}
}
