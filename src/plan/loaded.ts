import {agree} from './agree.js'
import {anneal} from './anneal.js'
import {curveOf, whereIndex} from './curve.js'
import {type Ease, easedDay} from './ease.js'
import {eventsOf, firesOf} from './events.js'
import {type FloorGrid, zoneAt} from './floor-grid.js'
import {heldAsPromised, improved, onOneFire} from './improve.js'
import {inHand, takeUp} from './in-hand.js'
import type {Laid} from './laid.js'
import {byPrice, earnest, freely, layOut, likelier, lookAround, lookAt, OVERFULL, roadOf} from './laying-out.js'
import {Layout} from './layout.js'
import {FIRM} from './layout-prices.js'
import {DELAYED, lightLater} from './mend.js'
import {type Job, jobsOf, laneShare, laterThanMeant, layoutFire, lighting, phaseOf} from './model.js'
import type {PlanOptions, Simulate} from './options.js'
import {vesselsOf} from './places.js'
import type {LoadedDay} from './proof.js'
import {type Response, responseOf} from './response.js'
import {rules, weights} from './rules.js'
import {search} from './search.js'
import {LARGE} from './searching.js'
import {better, fuller, type Settled, sameFire, type Took, tookIn} from './settled.js'
import {distinct, type Look, laidBy, onShortest, promisedBy, type Road} from './shortest.js'
import type {FiringOption, PlanProblem} from './types.js'

const responses = new WeakMap<Simulate, Map<string, Response>>()

/** What loads take from the oven, measured once for each oven and fire: a day must not hang on which was planned before it. */
function responseFor({problem, simulate}: LoadedDay): Response {
  const middle = problem.firings[Math.floor(problem.firings.length / 2)]!
  const air = problem.ambient ?? 20
  const fires = firesOf(middle)
  const known = responses.get(simulate) ?? new Map<string, Response>()
  responses.set(simulate, known)
  const key = JSON.stringify([air, middle.firing, middle.forecast.ready, fires])
  const made = known.get(key) ?? responseOf(middle, simulate, fires, air)
  known.set(key, made)
  return made
}

/**
 * The day on the oven with its loads in it. Every fire is laid out quickly, the most promising in earnest; what is laid out is simulated,
 * the curve corrected by what that shows, and laid out again with small steps until plan, curve and floor agree.
 */
export function settleLoaded(
  problem: PlanProblem,
  grid: FloorGrid,
  jobs: readonly Job[],
  options: PlanOptions,
  simulate: Simulate,
  tick: (share: number) => void,
): Settled {
  return new LoadedPlanner({problem, grid, jobs, simulate, light: lighting(problem)}, options, tick).settled()
}

/**
 * The day gone on with from a plan of it, or of one much like it, on that plan's fire: what it has is kept as it stands, what it leaves out is
 * looked for a place for, and what is new is brought in. That takes a fraction of laying a day out, and seldom comes to less where the plan
 * is good already.
 *
 * @returns Null where the plan's fire is none of the day's.
 */
export function goneOnWith(
  problem: PlanProblem,
  grid: FloorGrid,
  jobs: readonly Job[],
  from: Settled,
  options: PlanOptions,
  simulate: Simulate,
  tick: (share: number) => void,
): Settled | null {
  return new LoadedPlanner({problem, grid, jobs, simulate, light: lighting(problem)}, options, tick).goneOn(from)
}

/** Plans on two fires that are made better, the cheapest first: such fires have no neighbours to go on to. */
const FOLLOWED_TWICE = 3

class LoadedPlanner {
  readonly #day: LoadedDay
  readonly #options: PlanOptions
  readonly #tick: (share: number) => void
  /** How the limits of the day are eased; null where they are the day's own. */
  readonly #ease: Ease | null
  readonly #n: number
  readonly #ambient: number
  /** When the fire was lit, min after midnight; null in the morning. */
  readonly #given: number | null
  readonly #full: boolean
  readonly #morning: boolean
  /** All of its fires are lit twice. */
  readonly #twice: boolean
  /** Beginnings of a layout on the best fire. */
  readonly #many: number
  readonly #response: Response
  readonly #lane: number
  readonly #easier = new Map<Ease, LoadedPlanner>()
  #hand: ReturnType<typeof inHand> = null
  #looks: Look[] = []

  constructor(day: LoadedDay, options: PlanOptions, tick: (share: number) => void, ease: Ease | null = null) {
    this.#day = day
    this.#options = options
    this.#tick = tick
    this.#ease = ease
    this.#n = day.jobs.length
    this.#ambient = day.problem.ambient ?? 20
    this.#given = day.problem.done?.lit ?? null
    this.#full = options.effort !== 'quick'
    this.#morning = this.#full && this.#given === null
    this.#many = this.#morning && this.#n <= LARGE ? MANY : 1
    this.#twice = day.problem.firings.every(({further}) => further?.length)
    this.#response = responseFor(day)
    this.#lane = laneShare(day.problem, day.grid)
  }

  /** @param asBefore What is settled already, where the day is planned once more with its limits eased. */
  settled(asBefore: Settled | null = null): Settled {
    const easing = this.#given !== null && this.#ease === null
    const kept = easing ? this.#inHand() : null
    // What nobody had asked for before has its place in no plan in hand: the rest may rather be moved for it.
    const anew = kept !== null && ((this.#day.problem.done?.anew?.size ?? 0) > 0 || this.#mayHaveMore(kept))
    if (kept) return anew ? better(kept, this.#fromNow(asBefore)) : kept
    return this.#fromNow(asBefore)
  }

  /** What the plan in hand left out may have its place by now, where others move for it. Of a day of many dishes it is not looked for. */
  #mayHaveMore({unplaced}: Settled): boolean {
    return unplaced.length > 0 && this.#n <= FEW_JOBS
  }

  /** All that is still to be set in laid out anew, whatever plan is in hand. */
  #fromNow(asBefore: Settled | null): Settled {
    const easing = this.#given !== null && this.#ease === null
    this.#looks = this.#looksAt()
    this.#tick(0.1)
    if (this.#morning) {
      const plans = this.#onShortest()
        .slice(0, this.#twice ? FOLLOWED_TWICE : 1)
        .map((plan) => improved(this.#day, plan))
      const held = plans.length > 0 ? plans.reduce(better) : null
      if (held && !(this.#twice && this.#n <= LARGE)) return held
      this.#looks = this.#looksAt()
      // Which two fires are best a few looks do not tell.
      if (held) return better(held, this.#laidOut(null))
      // No fire holds it all, or not easily: a tight day is laid out with more care.
    }
    const best = this.#madeBetter(this.#laidOut(asBefore))
    if (!easing || (best.unplaced.length === 0 && !best.givenUp)) return best
    return fuller(best, eased(this.#withEase('far').settled()))
  }

  /** See `goneOnWith`. */
  goneOn(from: Settled): Settled | null {
    const {problem, jobs, simulate, light} = this.#day
    const index = problem.firings.findIndex(sameFire(from))
    const option = problem.firings[index]
    if (!option) return null
    const layout = this.#layoutOf(option, this.#given !== null)
    const look = {option, index, layout, price: 0}
    // That something is left out was worth all that was kept in hand.
    layout.spendInHand()
    const laid = laidAsIn(from, jobs)
    const lit = Math.max(light.first, Math.min(light.last, layout.latestLit, from.model.lit))
    const took = laid.map((l) => (l.in ? l : null))
    const curve = curveOf(simulate(option, eventsOf(jobs, took, option, layout.phase, lit), false), this.#ambient)
    const start = (): void => {
      this.#startFrom(look, laid, lit)
      layout.agreeWith(curve)
      layout.judge()
    }
    start()
    const passes = this.#full ? OTHER_PASSES : SHORT_PASSES
    const kept = agree(this.#day, look, {budget: {passes}, shortly: !this.#full})
    if (kept?.unplaced.length === 0 && !this.#full) return kept
    start()
    const rounds = Math.ceil(earnest(this.#n) / (this.#full ? 1 : 2))
    anneal(layout, {...freely(light), rounds, heat: 15, seed: 71, strict: [20, FIRM], leave: LEAVE})
    const other = agree(this.#day, look, {budget: {passes}, shortly: !this.#full})
    const best = kept && other ? better(kept, other) : (kept ?? other)
    return best?.unplaced.length === 0 && this.#morning ? improved(this.#day, best) : best
  }

  /** Of a day laid out anew once it has begun, while the oven is empty still, as much is made as of a morning's plan. */
  #madeBetter(plan: Settled): Settled {
    if (this.#given === null || this.#options.bare || plan.unplaced.length > 0) return plan
    return this.#day.jobs.some(({since}) => since !== null) ? plan : onOneFire(this.#day, plan)
  }

  /** The same day with its limits eased; made when it is asked for first. */
  #withEase(how: Ease): LoadedPlanner {
    const known = this.#easier.get(how)
    if (known) return known
    const {grid, simulate, light} = this.#day
    const problem = easedDay(this.#day.problem, how)
    const day = {problem, grid, jobs: jobsOf(problem, grid), simulate, light}
    const easier = new LoadedPlanner(day, this.#options, this.#tick, how)
    this.#easier.set(how, easier)
    return easier
  }

  /** What becomes of the plan in hand (see `inHand`); begun once for both ways. */
  #mending(): ReturnType<typeof inHand> {
    this.#hand ??= inHand(this.#day, (option) => this.#layoutOf(option, true))
    return this.#hand
  }

  /**
   * What is under way is rather kept with its limits eased than moved about, and rather moved than lost, or all laid out anew. Null where
   * no plan is in hand that could be kept.
   */
  #inHand(): Settled | null {
    const mend = this.#mending()
    if (!mend) return null
    let before: Settled | null = null
    // What waiting makes late may be had in time by moving.
    let waited: Settled | null = null
    for (const how of ['waiting', 'moving'] as const) {
      const kept = mend(how)
      let best = kept?.good ? kept.settled : null
      for (const ease of ['near', 'far'] as const) {
        // What the day's own limits give up may still be had by eased ones.
        const wanting = best ? (best.givenUp ?? 0) : Number.POSITIVE_INFINITY
        if (wanting === 0) break
        const easy = this.#withEase(ease).#mending()?.(how)
        if (easy?.good && (easy.settled.givenUp ?? 0) < wanting) best = eased(easy.settled)
        else if (easy && !best) before = better(before, easy.settled)
      }
      if (!best) continue
      if (waited) return this.#calmer(waited, best)
      if (how === 'moving' || !delayed(best)) return best
      waited = best
    }
    if (waited) return waited
    if (before && this.#options.inHand) return eased(before)
    return eased(this.#withEase('far').settled(before))
  }

  /** The better of two ways to go on with the plan in hand; what comes to stand in another part of the floor has its price. */
  #calmer(waited: Settled, moved: Settled): Settled {
    const {grid} = this.#day
    const more = weights.elsewhere * (elsewhere(grid, moved) - elsewhere(grid, waited))
    return better(waited, {...moved, total: moved.total + more}) === waited ? waited : moved
  }

  #layoutOf(option: FiringOption, kept = false): Layout {
    const {problem, grid, jobs, light} = this.#day
    const curve = curveOf(option.forecast, this.#ambient)
    return new Layout(problem, grid, jobs, layoutFire(option, curve, phaseOf(this.#given)), this.#response, this.#lane, {
      lit: light.first,
      // What is kept has been proved on its own curve, to the last minute.
      margin: kept ? 0 : rules.marginCelsius,
      // A morning's plan keeps something in hand against a cooler oven; once the day has begun that is what it is spent on.
      inHand: kept ? 0 : this.#given === null ? rules.inHandCelsius : rules.marginCelsius,
      inHandDose: this.#given === null ? rules.inHandDose : 0,
      marginDose: kept ? -rules.doseWanting : rules.marginDose,
      asPlaced: kept,
    })
  }

  /** The fires, with nothing laid out on them but a beginning. */
  #looksAt(): Look[] {
    const {problem, jobs} = this.#day
    // All are made before any is worked on: V8 compiles what works on them for the shape that the first few settle.
    const layouts = problem.firings.map((option) => this.#layoutOf(option))
    // A fire on which fewer dishes could be set in at all than on another need not be looked at.
    const able = layouts.map((layout) => jobs.filter((_, u) => layout.possible(u)).length)
    const ablest = Math.max(...able)
    return problem.firings.flatMap((option, index) => {
      if (able[index]! < ablest) return []
      const layout = layouts[index]!
      layout.begin()
      takeUp(layout, jobs, curveOf(option.forecast, this.#ambient))
      return [{option, index, layout, price: Number.POSITIVE_INFINITY}]
    })
  }

  #startFrom(look: Look, begun: readonly Laid[], lit: number): void {
    look.layout.startAgain(curveOf(look.option.forecast, this.#ambient))
    look.layout.restore(begun, lit)
  }

  #along(road: Road, budget: {passes: number}, patience?: number): Settled | null {
    this.#startFrom(road.look, road.laid, road.lit)
    if (this.#given === null) lightLater(road.look.layout, this.#day.light.last)
    return agree(this.#day, road.look, {budget, ...(patience === undefined ? {} : {patience})})
  }

  /** A tight day: whether everything has its place is worth a longer search, and what was kept in hand. */
  #lookLonger({look, laid, lit}: Road): Road[] {
    look.layout.spendInHand()
    this.#startFrom(look, laid, lit)
    return layOut(look, this.#day.light, 3, 83, 3)
  }

  /**
   * What the search on given curves makes of the curve as a plan's loads have made it is a road as well, and often a better one: annealing
   * moves one opening at a time, the search lays many dishes out anew.
   */
  #searched(from: Settled): Settled | null {
    const look = this.#looks.find(({index}) => index === from.model.program.index)!
    const {model, found} = from.whole!()
    const other = search(model, {rounds: SEARCHED_ROUNDS, start: found.chosen, seed: 5})
    const out = from.unplaced.length
    if (other.unplaced > out || (other.unplaced === out && other.cost + model.constant > from.total - 1)) return null
    const left = this.#day.jobs.map((): Laid => ({in: false, s: 0, e: 0, w: 0, hold: 0}))
    this.#startFrom(look, laidBy(model, other.chosen, left), model.lit)
    return agree(this.#day, look, {budget: {passes: OTHER_PASSES}})
  }

  /** The plan on the shortest fire that holds the day; null where none does, or not easily. */
  #onShortest(): Settled[] {
    const {problem, grid, jobs, light} = this.#day
    const n = this.#n
    return onShortest(this.#looks, {
      look: (look, longer, seed) =>
        lookAt(look, {...light, rounds: longer * (150 + 12 * n), heat: 40, seed, strict: [2, longer > 1 ? 30 : 12]}),
      promised: (look, how) => promisedBy(problem, grid, jobs, look, how),
      held: (promised) => heldAsPromised(this.#day, promised),
      lay: ({look, laid, lit}) => {
        const roads = layOut(look, light, this.#many)
        this.#startFrom(look, laid, lit)
        const near = anneal(look.layout, {...freely(light), rounds: earnest(n), heat: 15, seed: 23, strict: [4, 30]})
        return [...roads, roadOf(look, near)].sort(byPrice)
      },
      longer: (road) => this.#lookLonger(road).sort(byPrice),
      follow: (road) => this.#along(road, {passes: OTHER_PASSES}, SHORTEST_PATIENCE),
      large: n > LARGE,
      tick: (share) => this.#tick(0.1 + 0.3 * share),
    })
  }

  /**
   * The fires looked at, and the most promising laid out in earnest. A short look is a rough guide, so several are; and whether plan, curve
   * and floor come to agree hangs on where one begins, so every layout found is a road to try.
   *
   * @returns For each of those fires its roads, the cheapest first.
   */
  #contenders(): Road[][] {
    const {light} = this.#day
    const n = this.#n
    if (this.#given === null) lookAround(this.#looks, n, light)
    else for (const look of this.#looks) lookAt(look, {...light, rounds: 200 + 30 * n, heat: 4, seed: 11, strict: [2, 12]})
    const looks = this.#looks.sort(likelier)
    this.#tick(0.4)
    const contenders = looks.filter((l, i) => i === 0 || (this.#full && i < CONTENDERS && l.price < 2 * looks[0]!.price + 60))
    const laid = contenders.map((look, i) => {
      const begun = this.#given === null ? [roadOf(look, look.layout.found())] : []
      const roads = [...begun, ...layOut(look, light, i === 0 ? this.#many : 1)].sort(byPrice)
      this.#tick(0.4 + (0.1 * (i + 1)) / contenders.length)
      return roads
    })
    return laid.sort(([a], [b]) => a!.price - b!.price || a!.look.index - b!.look.index)
  }

  /** More than the oven holds: what to leave out is part of the search. */
  #withLess({look, laid, lit}: Road): Road {
    look.layout.restore(laid, lit)
    const rounds = 4 * earnest(this.#n)
    return roadOf(
      look,
      anneal(look.layout, {...freely(this.#day.light), rounds, heat: 40, seed: 71, strict: [20, FIRM], leave: LEAVE}),
    )
  }

  /** The day laid out with care on the fires that look best, whether they hold it or not. */
  #laidOut(asBefore: Settled | null): Settled {
    const morning = this.#morning
    const laid = this.#contenders()
    const least = laid[0]![0]!
    // Another fire has to look nearly as good, unless the best breaks limits that it might keep.
    const limit = least.violation < 1 ? 1.05 * least.price + 4 : 1.2 * least.price + 40
    const roads = laid.flatMap((some, i) => (i > 0 && some[0]!.price > limit ? [] : some))
    const longerRoads = (): Road[] => laid.slice(0, 2).flatMap((some) => this.#lookLonger(some[0]!))
    const longer = morning && least.violation > 1 && least.violation <= OVERFULL
    if (longer) roads.push(...longerRoads())
    roads.sort(byPrice)
    const overfull = roads[0]!.violation > OVERFULL
    if (overfull) roads.unshift(this.#withLess(roads[0]!))
    this.#tick(0.55)
    let best = asBefore
    const most = morning ? (overfull ? OVERFULL_TRIES : MORNING_TRIES) : 2
    const budget = {passes: morning ? 28 : 10}
    // Roads enough where one has come to a plan with everything in it.
    const enough = this.#n > LARGE ? 1 : this.#many + 1
    const followed = new Set<Look>()
    const follow = (some: readonly Road[]): void => {
      for (const [i, road] of distinct(some).entries()) {
        if (i >= most || (i > 0 && budget.passes <= 0)) break
        if (best && best.unplaced.length === 0 && (i >= enough || road.price > NEARLY * best.total)) break
        followed.add(road.look)
        const settled = this.#along(road, budget)
        if (!settled) continue
        best = better(best, settled)
        this.#tick(0.55 + (0.25 * (i + 1)) / most)
      }
    }
    follow(roads)
    if (morning && !longer && !overfull && best!.unplaced.length > 0) {
      budget.passes = Math.max(budget.passes, 14)
      follow(longerRoads().sort(byPrice))
    }
    if (morning) best = this.#onLonger(best!, laid, followed)
    if (morning && best!.unplaced.length === 0) return improved(this.#day, best!)
    // What the day's own limits leave out is looked for with eased ones, and there in earnest.
    return this.#given === null || this.#ease === null ? best! : this.#fuller(best!, asBefore !== null)
  }

  /** A longer fire may hold what a shorter one leaves out. */
  #onLonger(from: Settled, laid: readonly (readonly Road[])[], followed: Set<Look>): Settled {
    let best = from
    let {option} = from
    for (let i = 0; i < LONGER_FIRES && best.unplaced.length > 0; i++) {
      const look = nextLonger(this.#looks, option)
      if (!look) break
      option = look.option
      if (followed.has(look)) continue
      const [road] = laid.find(([other]) => other!.look === look) ?? this.#begin(look)
      followed.add(look)
      const settled = road!.violation > OVERFULL ? null : this.#along(road!, {passes: OTHER_PASSES})
      if (settled) best = better(best, settled)
    }
    return best
  }

  #begin(look: Look): Road[] {
    look.layout.startAgain(curveOf(look.option.forecast, this.#ambient))
    look.layout.begin()
    return layOut(look, this.#day.light, this.#many)
  }

  /**
   * On a day that has begun, what else might keep more of it.
   *
   * @param tried The plan in hand has been tried.
   */
  #fuller(from: Settled, tried: boolean): Settled {
    let best = from
    if (!tried && best.unplaced.length > 0) {
      // Far off as it is, the plan in hand may yet keep more.
      const far = inHand(this.#day, (option) => this.#layoutOf(option, true), Number.POSITIVE_INFINITY)
      const kept = far?.('waiting') ?? far?.('moving')
      if (kept) best = better(best, kept.settled)
    }
    if (!this.#options.bare && best.unplaced.length > 0) {
      // What the search makes of this day may have a place for more.
      const searched = this.#searched(best)
      if (searched) best = better(best, searched)
    }
    return best
  }
}

/** Jobs laid as a plan has the same parts of their dishes, or failing that others; what it has not is out. */
function laidAsIn(from: Settled, jobs: readonly Job[]): Laid[] {
  const keyOf = ({dish, first, count}: Job): string => `${dish.id} ${first} ${count}`
  const took = tookIn(from)
  const left = new Set(from.model.jobs.flatMap((job, u) => (took[u] ? [{job, took: took[u]}] : [])))
  const take = (which: (job: Job) => boolean): Took => {
    const one = [...left].find(({job}) => which(job))
    if (one) left.delete(one)
    return one?.took ?? null
  }
  const same = jobs.map((job) => take((other) => keyOf(other) === keyOf(job)))
  return jobs.map(({dish}, u): Laid => {
    const t = same[u] ?? take((other) => other.dish.id === dish.id)
    return {...(t ?? {s: 0, e: 0, w: 0}), in: t !== null, hold: 0}
  })
}

/** Whether something comes so much later than it is wanted, and than it was to, that moving it is tried. */
function delayed(settled: Settled): boolean {
  const {jobs, clock0} = settled.model
  return tookIn(settled).some(
    (t, u) => t && jobs[u]!.since === null && laterThanMeant(jobs[u]!, clock0 + t.e * rules.tick) >= DELAYED,
  )
}

/** How many jobs stand in other parts of the floor than in the plan in hand. */
function elsewhere(grid: FloorGrid, {model: {jobs}, standing}: Settled): number {
  const parts = (zones: readonly number[]): string => [...new Set(zones)].sort().join(' ')
  return jobs.filter((job) => {
    if (!job.was || job.since !== null) return false
    const now = vesselsOf(job, standing).map(({y}) => zoneAt(grid, y))
    return parts(now) !== parts(job.was.placed.map(({zone}) => whereIndex(zone)))
  }).length
}

/** What keeps its dishes' eased limits only. */
function eased(settled: Settled): Settled {
  return {...settled, eased: true}
}

/** Parts of a day for which what is left out is looked for again each time it is planned. */
const FEW_JOBS = 8
/** Share of the moves that leave a dish out while a plan is gone on with. */
const LEAVE = 0.04
/** Rounds in which that has to come to a plan where it is a trial. */
const SHORT_PASSES = 3

/** Rounds in which another fire has to come to a plan. */
const OTHER_PASSES = 8

/** Rounds after which a fire on which something still has no place is given up. */
const SHORTEST_PATIENCE = 3
/** Rounds of the search on a plan's own curve. */
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

/** Fires laid out in earnest. */
const CONTENDERS = 2
/** How much dearer than the best plan a road may look and still be tried: curve and floor often come out cheaper than they looked. */
const NEARLY = 1.1

/** Roads tried where no closer look will mend what is broken, and else. */
const OVERFULL_TRIES = 4
const MORNING_TRIES = 4
