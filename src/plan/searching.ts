import {cheapestFirst} from './cheapest-first.js'
import {keeps} from './keeps.js'
import {AMONG_CRUSTS, deeperBy} from './layout-prices.js'
import {choosing, type Model, modelOf, phaseOf, programOf} from './model.js'
import {type LoadedDay, Proof, type Seen, setInOf} from './proof.js'
import {rules} from './rules.js'
import {type FloorUnder, type Found, search} from './search.js'
import {State} from './search-state.js'
import {Seating, type TimesOf} from './seating.js'
import {better, type Settled, type Took, tookIn} from './settled.js'
import type {Standing} from './standing.js'
import type {FiringOption} from './types.js'
import {MORNING, within} from './within.js'

/**
 * A plan sought on given curves. The search for a layout moves one opening at a time on a curve that is a guess; the search on given curves
 * lays many dishes out anew and sees every place there is, but knows only the curve that some loads have made. So it is asked for a plan on
 * that curve, which is simulated, corrected on the curve as it is then, and so on until it holds.
 */

/** Rounds of a search, and of those that correct what came of it. */
const ROUNDS = 200
const CORRECTED = 60
/**
 * Rounds of a search for something better than a plan: so many, and as many again from there where that came so near to it, as a share of its
 * cost. Two short searches with other random numbers find as much as one of 200 rounds, in four fifths of the time (four days, twelve seeds).
 */
const BETTERED = 60
const HOPEFUL = 1.01
/** Rounds of a search that wanders further, where a correction leaves something without a place or is too dear; and for each job. */
const WIDER = 60
const WIDER_EACH = 5
/** Corrections of one search, and of what holds but is no better. */
const PASSES = 4
const HELD_PASSES = 2
/** Jobs beyond which a day is large: it takes other ways, and fewer of them. */
export const LARGE = 20
/**
 * Corrections of a first plan for a large day, and those of them that reckon its floor by the area: with so many vessels what the area has
 * room for is nearly always one or two too many for the true floor, and barring set-ins one by one comes to no end. Thirty dishes in
 * sixteen orders: plans 3 % cheaper in three quarters of the time of four corrections by the area. Days of nine to twelve dishes are no better for it.
 */
const LARGE_PASSES = 6
const LARGE_BY_AREA = 2
/** What has to be gained. */
const GAIN = 0.3
/** By how much less of the area is reckoned with each time the true floor refuses something, and how little at least. */
const LESS_AREA = 0.01
const LEAST_AREA = 0.88
/** How much more than the area may stand on a part of the floor where the true floor is asked as well. */
const MORE_AREA = 1.15

/** Where a search begins. */
export interface Start {
  /** The fire, with the loads in the oven. */
  readonly option: FiringOption
  /** Its number among the day's. */
  readonly index: number
  /** When it is lit, min after midnight. */
  readonly lit: number
  readonly took: readonly Took[]
  readonly standing: readonly Standing[]
}

/** What every job might do that keeps as much in hand as a morning's plan does, and which of that it begins with. */
export interface Begun {
  readonly model: Model
  readonly start: Int32Array
}

/** How a plan is sought. */
export interface Seeking {
  /** The plan that is to be bettered; null where any will do. */
  readonly from: Settled | null
  /**
   * How the floor is reckoned: by its `area`, which is soon done and leads far; stood upon `vessel by vessel`, which finds what the area
   * would forbid; or first the one and, where that leads nowhere, the other.
   */
  readonly floor: 'area' | 'vessels' | 'both'
  readonly seed: number
  /** Nothing is to be set in to fall while crusts bake; by default only where nothing is in the plan at hand. */
  readonly apart?: boolean
  /** Set-ins that the true floor has refused to a job: more are added. */
  readonly refused?: Map<number, Set<number>>
}

/** One search, with its corrections. */
export class Searching {
  readonly #day: LoadedDay
  readonly #start: Start
  readonly #how: Seeking
  readonly #refused: Map<number, Set<number>>
  /** Nothing is set in to fall while crusts bake. */
  readonly #apart: boolean
  #onFloor: boolean
  #area = 1

  constructor(day: LoadedDay, start: Start, how: Seeking) {
    this.#day = day
    const among = amongCrusts(day, start.took)
    this.#apart = how.apart ?? among.length === 0
    // What may not go in when it does is to be given another time.
    const others = (t: Took, u: number): Took => (among.some(([fall]) => fall === u) ? null : t)
    this.#start = this.#apart && among.length > 0 ? {...start, took: start.took.map(others)} : start
    this.#how = how
    this.#onFloor = how.floor === 'vessels'
    this.#refused = (this.#onFloor ? null : how.refused) ?? new Map()
    // Where it stands in the plan at hand it was not refused.
    start.took.forEach((t, u) => {
      if (t) this.#refused.get(u)?.delete(t.s)
    })
  }

  /**
   * What comes of it; null where nothing holds that is worth it.
   *
   * @param begun What every job might do on the curve that it begins with.
   */
  found(begun: Begun = this.begun()): Settled | null {
    const {from, floor} = this.#how
    let {option, took, standing} = this.#start
    let best: Settled | null = null
    const first = from === null && this.#day.jobs.length > LARGE
    for (let pass = 0, held = 0; pass < (first ? LARGE_PASSES : PASSES) && held <= HELD_PASSES; pass++) {
      const tried = this.#search(pass === 0 ? begun : this.#begunOn(option, took), standing, pass)
      if (!tried) {
        if (best || pass === 0 || this.#onFloor || floor !== 'both') break
        this.#toFloor()
        continue
      }
      const same = pass > 0 && tried.took.every((t, u) => alike(t, took[u] ?? null))
      took = tried.took
      if (same && best) break
      const proof = proofOf(this.#day, {...this.#start, took}, tried.seating)
      const seen = proof.see()
      if (seen.good) {
        const settled = proof.settle(seen)
        best = best ? preferred(best, settled) : settled
        if (!from || preferred(from, settled) === settled) break
        held++
      } else {
        this.#learn(seen)
        if (first && floor === 'both' && pass + 1 >= LARGE_BY_AREA) this.#toFloor()
      }
      ;({option} = seen)
      ;({standing} = seen.stood)
    }
    return best
  }

  /** From here on the floor is stood upon vessel by vessel. */
  #toFloor(): void {
    this.#onFloor = true
    this.#refused.clear()
  }

  /** What every job might do on the curve that it begins with. */
  begun(): Begun {
    return this.#begunOn(this.#start.option, this.#start.took)
  }

  /** What every job might do on a curve, and what each is to do. */
  #begunOn(option: FiringOption, took: readonly Took[]): Begun {
    const {problem, jobs, grid} = this.#day
    const {index, lit} = this.#start
    const program = programOf(
      problem,
      index,
      jobs,
      grid,
      null,
      false,
      option,
      took.map((must) => (must ? {must} : {})),
    )
    const inside = within(modelOf(problem, program, jobs, grid, lit), took, MORNING)
    return deeper(inside.model, inside.start)
  }

  /** A search of a model; null where it leaves something out, or is no cheaper than the plan at hand. */
  #search(
    {model, start}: Begun,
    standing: readonly Standing[],
    pass: number,
  ): {took: Took[]; seating: Pick<Seating, 'vessels'>} | null {
    const {jobs} = this.#day
    const onFloor = this.#onFloor
    const roomy = {...model, ...(onFloor ? {lane: 0} : {}), floor: this.#floorOf(model, start), apart: this.#apart}
    const under = onFloor ? this.#seated(roomy, start, standing) : null
    const how = {refused: jobs.map((_, u) => this.#refused.get(u)), ...(under ? {under} : {})}
    const seed = this.#how.seed + pass
    const {from: bettered} = this.#how
    const most = bettered ? priceOf(bettered) - GAIN : Number.POSITIVE_INFINITY
    const worthIt = ({cost, unplaced}: Found): boolean => unplaced === 0 && cost + model.constant <= most
    const rounds = pass > 0 ? CORRECTED : bettered ? BETTERED : ROUNDS
    let found = search(roomy, {...how, rounds, start, seed, calm: pass > 0})
    if (pass === 0 && bettered) {
      if (found.unplaced > 0 || found.cost + model.constant > HOPEFUL * most) return null
      const more = search(roomy, {...how, rounds: BETTERED, start: found.chosen, seed: seed + 60})
      if (more.cost < found.cost) found = more
    }
    if (pass > 0 && !worthIt(found)) {
      const rounds = WIDER + WIDER_EACH * jobs.length
      const wider = search(roomy, {...how, rounds, start: found.chosen, seed: seed + 30})
      if (wider.cost < found.cost) found = wider
    }
    if (!worthIt(found)) return null
    return {took: tookIn({model, found}), seating: under?.floor ?? NOWHERE}
  }

  /** Floor to reckon with in each part, m²: where the true floor is asked as well, somewhat more, and what the start takes in any case. */
  #floorOf(model: Model, start: Int32Array): [number, number, number] {
    const {floor} = model
    if (!this.#onFloor) return [this.#area * floor[0], this.#area * floor[1], this.#area * floor[2]]
    const state = new State(model)
    state.load(start)
    const of = (z: 0 | 1 | 2): number => Math.max(MORE_AREA * floor[z], ...state.inside[z]!)
    return [of(0), of(1), of(2)]
  }

  /** The true floor under a search that begins where vessels stand already. */
  #seated(model: Model, start: Int32Array, standing: readonly Standing[]): FloorUnder & {readonly floor: Seating} {
    const {jobs, grid} = this.#day
    const {curve, phase} = model.program
    const n = jobs.length
    const times = {placed: new Uint8Array(n), s: new Int32Array(n), e: new Int32Array(n), w: new Uint8Array(n)}
    const minutes = (tick: number): number => tick * rules.tick + phase
    const layout: TimesOf = {
      ...times,
      fits: (u, z) => keeps(jobs[u]!, curve, z, minutes(times.s[u]!), minutes(times.e[u]!)),
    }
    const lay = (chosen: Int32Array): void => {
      chosen.forEach((o, u) => {
        times.placed[u] = o < 0 ? 0 : 1
        if (o < 0) return
        times.s[u] = model.s[u]![o]!
        times.e[u] = model.e[u]![o]!
        times.w[u] = model.where[u]![o]!
      })
    }
    const seating = new Seating(grid, jobs, layout)
    lay(start)
    seating.take(
      jobs.map((_, u) => ({s: times.s[u]!, e: times.e[u]!, w: times.w[u]!})),
      standing,
    )
    return {floor: seating, lay}
  }

  /** What the true floor refused is not asked of it again. */
  #learn({stood: {refused}}: Seen): void {
    if (this.#onFloor || refused.length === 0) return
    this.#area = Math.max(LEAST_AREA, this.#area - LESS_AREA)
    for (const {job, at} of refused) {
      const known = this.#refused.get(job) ?? new Set<number>()
      this.#refused.set(job, known.add(at))
    }
  }
}

/** A morning as it is laid out, to be put to the proof. */
export function proofOf(
  day: LoadedDay,
  {index, lit, took}: Pick<Start, 'index' | 'lit' | 'took'>,
  seating: Pick<Seating, 'vessels'>,
): Proof {
  const layout = {
    snapshot: () => took.map((t) => ({in: t !== null, ...(t ?? {s: 0, e: 0, w: 0}), hold: 0})),
    lit,
    phase: phaseOf(null),
    // These are asked of what is in the oven already, and in the morning nothing is.
    isDone: () => true,
    heldBack: () => false,
    hemmedIn: () => false,
  }
  return new Proof(day, {option: day.problem.firings[index]!, index, layout}, seating)
}

/** What is set in very hot to fall while a crust bakes, and that crust, by their jobs. */
export function amongCrusts({jobs}: Pick<LoadedDay, 'jobs'>, took: readonly Took[]): [fall: number, crust: number][] {
  const crusts = setInOf(2, jobs, took)
  return setInOf(1, jobs, took).flatMap((u) => {
    const {s} = took[u]!
    return crusts.flatMap((v): [number, number][] => (s > took[v]!.s && s < took[v]!.e ? [[u, v]] : []))
  })
}

/** What a plan costs, by how much its long bakes stand too near the mouth, and what is set in to fall among crusts. */
function priceOf(settled: Settled): number {
  const took = tookIn(settled)
  const deep = took.reduce((sum, t) => sum + (t ? deeperBy(t.s, t.e, t.w) : 0), 0)
  return settled.total + deep + AMONG_CRUSTS * amongCrusts(settled.model, took).length
}

/** The better of two plans, of two that lack as much the cheaper with its long bakes at the back. */
export function preferred(one: Settled, other: Settled): Settled {
  const priced = (settled: Settled): Settled => ({...settled, total: priceOf(settled)})
  const [a, b] = [priced(one), priced(other)]
  return better(a, b) === b ? other : one
}

/** The same choices with what it costs to stand too near the mouth for long, the cheapest first again. */
function deeper(model: Model, start: Int32Array): Begun {
  const cost = model.cost.map((list, u) => {
    const [s, e, where] = [model.s[u]!, model.e[u]!, model.where[u]!]
    const priced = new Float64Array(list.length)
    for (let o = 0; o < list.length; o++) priced[o] = list[o]! + deeperBy(s[o]!, e[o]!, where[o]!)
    return priced
  })
  const order = cost.map((costs) => {
    const all = new Uint32Array(costs.length)
    for (let o = 0; o < all.length; o++) all[o] = o
    return cheapestFirst(all, costs)
  })
  return {model: choosing(model, order, cost), start: start.map((o, u) => (o < 0 ? o : order[u]!.indexOf(o)))}
}

/** No places are known. */
const NOWHERE: Pick<Seating, 'vessels'> = {vessels: () => null}

function alike(one: Took, other: Took): boolean {
  return one?.s === other?.s && one?.e === other?.e && one?.w === other?.w
}
