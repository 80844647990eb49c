import type {FloorGrid} from './floor-grid.js'
import type {Laid} from './laid.js'
import type {Layout} from './layout.js'
import {choiceAt, type Job, type Model, modelOf, programOf, woodOf} from './model.js'
import {rules} from './rules.js'
import {search} from './search.js'
import {missing} from './search-state.js'
import {better, compared, lacksNothing, type Settled} from './settled.js'
import type {FiringOption, PlanProblem} from './types.js'

/**
 * The shortest fire that holds the day. Heat that is burned for nothing costs wood and keeps the bread waiting, so the best fire is nearly
 * always the shortest on which everything has its place; but what a short annealing breaks on a fire says little of what it could hold.
 * The search on given curves says much better: asked on the curve as the day's own loads make it, it soon finds places for all or nearly
 * all dishes, or for far from all. So it is asked of ever shorter fires, and those of which it promises most are laid out in earnest.
 */

/** One fire, and the day laid out on it so far. */
export interface Look {
  readonly option: FiringOption
  readonly index: number
  readonly layout: Layout
  price: number
}

/** A layout to begin from. */
export interface Road {
  readonly look: Look
  readonly laid: readonly Laid[]
  readonly lit: number
  readonly price: number
  readonly violation: number
}

/** What the search on given curves makes of a day on one fire. */
export interface Promised {
  readonly look: Look
  /** Its cost, and of what it leaves out a little. */
  readonly price: number
  /** Jobs it finds no place for. */
  readonly out: number
  readonly laid: readonly Laid[]
  readonly lit: number
}

/** The layout that a solution on given curves is; what it leaves out stays as it was laid before. */
export function laidBy({s, e, where}: Model, chosen: Int32Array, before: readonly Laid[]): Laid[] {
  return Array.from(
    chosen,
    (o, u): Laid => (o < 0 ? before[u]! : {in: true, s: s[u]![o]!, e: e[u]![o]!, w: where[u]![o]!, hold: 0}),
  )
}

/** Rounds of the search for what a fire promises: longer, and the search finds places that the true floor does not have. */
const ROUNDS = 80
/** How a promise is asked for: `apart` where nothing may be set in to fall while crusts bake. */
interface Asking {
  readonly seed: number
  readonly apart: boolean
}
/** What is asked of a fire first, and what else where that does not hold. */
const ASKED: Asking = {seed: 5, apart: true}
const ASKED_AGAIN: Asking = {seed: 105, apart: false}
/** Cost of what is left out in a promise: it may have a place yet. */
const LEFT_OUT = 10

/**
 * What the search makes of the day on one fire, on the curve that the layout at hand makes. What finds no place is laid as it was, or the
 * oven would be the hotter for it.
 */
export function promisedBy(
  problem: PlanProblem,
  grid: FloorGrid,
  jobs: readonly Job[],
  look: Look,
  {seed, apart}: Asking = ASKED,
): Promised {
  const {layout, option, index} = look
  const {lit} = layout
  const begun = layout.snapshot()
  const celsius = Array.from(layout.celsius)
  const loaded = {...option.forecast, step: rules.tick, baking: {low: celsius, likely: celsius, high: celsius}}
  const program = programOf(problem, index, jobs, grid, null, true, {...option, forecast: loaded})
  const model = modelOf(problem, program, jobs, grid, lit)
  const start = Int32Array.from(begun, (l, u) => (l.in ? choiceAt(model, u, l.s, l.e, l.w) : -1))
  const {chosen, cost, unplaced} = search({...model, apart}, {rounds: ROUNDS, start, seed})
  const price = cost + model.constant + (LEFT_OUT - missing) * unplaced
  return {look, price, out: unplaced, laid: laidBy(model, chosen, begun), lit}
}

/** How a day is laid out on a fire and followed to a plan. */
export interface Ways {
  /** Look at a fire, for so many times as long as a first look. */
  readonly look: (look: Look, longer: number, seed: number) => void
  readonly promised: (look: Look, how?: Asking) => Promised
  /** A plan straight from a promise; null where it does not hold. */
  readonly held: (promised: Promised) => Settled | null
  /** Layouts to begin from, the cheapest first. */
  readonly lay: (promised: Promised) => readonly Road[]
  /** The same searched for longer, from a layout that breaks too much. */
  readonly longer: (road: Road) => readonly Road[]
  /** A plan; null where not everything comes to a place. */
  readonly follow: (road: Road) => Settled | null
  readonly large: boolean
  /** Told what share of the work is done. */
  readonly tick: (share: number) => void
}

/**
 * Jobs for which the search may find no place on a fire that is tried all the same; roads followed there, where one comes to a plan and
 * where none does; fires that may fail.
 */
const LARGE_DAY = {out: 1, roads: 1, tried: 2, fails: 4} as const
const SMALL_DAY = {out: 2, roads: 3, tried: 3, fails: 5} as const
/** Broken limits with which a road is followed, the same once one has come to a plan, and with which it is looked at for longer. */
const FOLLOWED = 8
const UNBROKEN = 1
const MENDS = 30
/** Another fire is tried beside a plan only where it promises so much less than that costs; on a large day not beside one in time. */
const LESS = 0.85
/** How much longer the second look is. */
const LONGER = 4

/**
 * The plans on the shortest fires that hold the day.
 *
 * @param looks The fires, with nothing laid out on them but a beginning.
 * @returns The best first; none where no fire looks as if it would, or none that does comes to a plan with everything in it.
 */
export function onShortest(looks: readonly Look[], ways: Ways): Settled[] {
  const limits = ways.large ? LARGE_DAY : SMALL_DAY
  const fires = [...looks].sort((a, b) => woodOf(a.option) - woodOf(b.option) || a.index - b.index)
  const looked = new Set<number>()
  const lookedAt = (i: number): Look => {
    const look = fires[i]!
    if (!looked.has(i)) {
      looked.add(i)
      ways.look(look, 1, 11)
      ways.tick((0.3 * looked.size) / fires.length)
    }
    return look
  }
  const {tried, further} = fires.some(({option}) => option.further?.length)
    ? ofTwo(fires.length, lookedAt)
    : ofOne(fires.length, lookedAt)
  const promising: Promised[] = []
  for (const i of tried) {
    const promised = ways.promised(lookedAt(i))
    if (promised.out <= limits.out) promising.push(promised)
    else if (!fires[i]!.option.further && i !== tried[0]) break
  }
  ways.tick(0.4)
  promising.sort((a, b) => a.price - b.price)
  const all: Settled[] = []
  let best: Settled | null = null
  for (const promised of promising) {
    // What holds and is in time is made better on its own, and on its neighbours; a second fire has none.
    if (best && lacksNothing(best) && (!promised.look.option.further || promised.price > best.total)) continue
    const held = heldBy(promised, ways, limits)
    if (!held) continue
    all.push(held)
    best = better(best, held)
  }
  ways.tick(0.5)
  let fails = 0
  const climb = (promised: Promised): void => {
    // Three climbs beside plans of thirty dishes came to a tenth more than those.
    if (best && (promised.price > LESS * best.total || (ways.large && lacksNothing(best)))) return
    const settled = promised.out > limits.out ? null : onFire(promised, ways, limits)
    if (settled) {
      all.push(settled)
      best = better(best, settled)
    } else fails++
    ways.tick(Math.min(1, 0.5 + 0.12 * (fails + 1)))
  }
  for (const promised of promising) if (fails < limits.fails) climb(promised)
  // A longer one only where these do not hold it.
  for (const i of further) if (!best && fails < limits.fails) climb(ways.promised(lookedAt(i)))
  return all.sort(compared)
}

/** Fires in the order in which they are asked what they promise; and those that are laid out where none of these holds the day. */
interface Asked {
  readonly tried: readonly number[]
  readonly further: readonly number[]
}

/** From the cheapest fire to ever shorter ones. */
function ofOne(fires: number, lookedAt: (fire: number) => Look): Asked {
  const first = lowest(fires, (i) => lookedAt(i).price)
  return {
    tried: Array.from({length: first + 1}, (_, i) => first - i),
    further: Array.from({length: fires - first - 1}, (_, i) => first + 1 + i),
  }
}

/**
 * Two fires differ in when the second is lit as well, and the price of a day on them neither falls nor rises with the wood: all are looked at,
 * and asked, the cheapest first.
 */
function ofTwo(fires: number, lookedAt: (fire: number) => Look): Asked {
  return {
    tried: Array.from({length: fires}, (_, i) => i).sort((a, b) => lookedAt(a).price - lookedAt(b).price || a - b),
    further: [],
  }
}

/** Fires on which the day comes dearer, one after another, before what lies beyond is not looked at. */
const DEARER = 2

/**
 * The cheapest of the fires. The price falls while a longer fire gives places and rises once it only burns more, with a bump here and there;
 * so it is followed downhill from the middle, to either side.
 */
function lowest(fires: number, price: (fire: number) => number): number {
  const middle = fires >> 1
  let best = Math.min(middle, fires - 1)
  for (const step of [-1, 1]) {
    for (let i = middle + step, dearer = 0; i >= 0 && i < fires && dearer < DEARER; i += step) {
      const cheaper = price(i) < price(best) || (price(i) === price(best) && i < best)
      if (cheaper) best = i
      dearer = cheaper ? 0 : dearer + 1
    }
  }
  return best
}

/** A plan straight from what is promised, or from what the search else promises of the same fire; null where neither holds. */
function heldBy(promised: Promised, ways: Ways, limits: {readonly out: number}): Settled | null {
  const held = ways.held(promised)
  if (held) return held
  const other = ways.promised(promised.look, ASKED_AGAIN)
  return other.out > limits.out ? null : ways.held(other)
}

/** The day on one fire: the best of a few roads on which everything comes to its place. */
function onFire(promised: Promised, ways: Ways, limits: {readonly roads: number; readonly tried: number}): Settled | null {
  ways.look(promised.look, LONGER, 13)
  const roads = ways.lay(promised)
  let best: Settled | null = null
  const follow = (road: Road): void => {
    const settled = ways.follow(road)
    if (settled?.unplaced.length === 0) best = better(best, settled)
  }
  for (const [i, road] of distinct(roads).entries()) {
    if (road.violation > (best ? UNBROKEN : FOLLOWED) || i >= (best ? limits.roads : limits.tried)) break
    follow(road)
  }
  if (!best && roads[0]!.violation < MENDS) {
    const [longest] = ways.longer(roads[0]!)
    if (longest && longest.violation <= FOLLOWED) follow(longest)
  }
  return best
}

/** Annealing that found nothing better may end where it began, which is no other road. */
export function distinct(roads: readonly Road[]): Road[] {
  return roads.filter((r, i) => !roads.slice(0, i).some((o) => o.look === r.look && Math.abs(o.price - r.price) < 1e-6))
}
