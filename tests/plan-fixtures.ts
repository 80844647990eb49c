import type {FloorShape, Forecast} from '../src/oven/types.js'
import {curveOf} from '../src/plan/curve.js'
import {type FloorGrid, floorGrid} from '../src/plan/floor-grid.js'
import {Layout} from '../src/plan/layout.js'
import {type Job, jobsOf, laneShare, layoutFire, phaseOf} from '../src/plan/model.js'
import {responseOf} from '../src/plan/response.js'
import {simulator} from '../src/plan/simulator.js'
import type {Day, Load, Plan, PlanProblem} from '../src/plan/types.js'
import {generator} from '../src/scale/random-numbers.js'
import type {Dish, HeatNeed, Vessel} from '../src/scale/types.js'

/** A falling oven for tests: two exponentials, ±`doubt` of the heat above 20 °C. */
export function fallingOven(
  burn: number,
  peak: number,
  options: {hours?: number; soak?: number; doubt?: number} = {},
): {firing: {wood: number; burn: number; soak: number}; forecast: Forecast} {
  const step = 5
  const soak = options.soak ?? 30
  const hours = options.hours ?? 34
  const ready = burn + soak
  const likely: number[] = []
  for (let m = 0; m <= hours * 60; m += step) {
    if (m <= ready) likely.push(20 + (peak - 20) * Math.min(1, m / ready))
    else {
      const h = (m - ready) / 60
      likely.push(20 + (peak - 20) * (0.35 * Math.exp(-h / 1.2) + 0.65 * Math.exp(-h / 11)))
    }
  }
  const doubt = options.doubt ?? 0.05
  const band = {
    low: likely.map((t) => 20 + (t - 20) * (1 - doubt)),
    likely,
    high: likely.map((t) => 20 + (t - 20) * (1 + doubt)),
  }
  const firing = {wood: (burn / 60) * 9, burn, soak}
  return {
    firing,
    forecast: {
      step,
      firing,
      raked: burn,
      ready,
      floor: band,
      vault: band,
      air: band,
      baking: band,
      zones: {back: 6, middle: 1, mouth: -7},
      balance: {fire: 100, flue: 40, stored: 50, lost: 10, loads: 0, error: 0},
    },
  }
}

const sharedFires = new Map<number, PlanProblem['firings']>()

/** Fires from one to three and a half hours. */
export function fires(hours = 34): PlanProblem['firings'] {
  const known = sharedFires.get(hours)
  if (known) return known
  const made = [
    [60, 200],
    [90, 245],
    [120, 285],
    [150, 315],
    [180, 340],
  ].map(([burn, peak]) => fallingOven(burn!, peak!, {hours}))
  sharedFires.set(hours, made)
  return made
}

const round = (name: string, d: number, height: number): Vessel => ({
  name,
  footprint: {shape: 'circle', diameter: d},
  height,
  halfThickness: height / 2,
  millilitres: 1000,
})
const tin = (name: string, length: number, width: number, height: number): Vessel => ({
  name,
  footprint: {shape: 'rectangle', length, width},
  height,
  halfThickness: height / 2,
  millilitres: 1000,
})

const need = (
  start: [number, number, number],
  endLow: number,
  done: number,
  minutes: [number, number, number],
  more: Partial<HeatNeed> = {},
): HeatNeed => ({
  startLow: start[0],
  startBest: start[1],
  startHigh: start[2],
  endLow,
  done,
  reference: start[1],
  minutes: {low: minutes[0], likely: minutes[1], high: minutes[2]},
  falling: false,
  overnight: false,
  ...more,
})

type Kind = Pick<Dish, 'kind' | 'vessel' | 'need' | 'place' | 'mass' | 'water' | 'dough' | 'sign' | 'crust'>

/** Dishes as any oven knows them; figures from the band table of the design and common practice. */
export const kinds: Record<string, Kind> = {
  bread: {
    kind: 'bread',
    vessel: round('free-standing loaf', 0.22, 0.1),
    need: need([200, 225, 260], 150, 96, [40, 45, 55]),
    place: 'any',
    mass: 0.9,
    water: 0.1,
    dough: {mix: 20, rise: 120, shape: 15, hold: 45},
    sign: 'it sounds hollow',
    crust: true,
  },
  'brown bread': {
    kind: 'brown bread',
    vessel: tin('loaf tin', 0.23, 0.13, 0.09),
    need: need([215, 250, 300], 70, 96, [180, 210, 240], {falling: true, overnight: true, reference: 160}),
    place: 'back',
    mass: 1.2,
    water: 0.15,
    dough: null,
    sign: 'a straw comes out dry',
  },
  beans: {
    kind: 'beans',
    vessel: round('bean crock', 0.2, 0.18),
    need: need([150, 200, 300], 65, 88, [240, 300, 480], {falling: true, overnight: true, reference: 130}),
    place: 'back',
    mass: 3.5,
    water: 0.4,
    dough: null,
    sign: 'soft through',
  },
  pie: {
    kind: 'pie',
    vessel: round('pie plate', 0.24, 0.06),
    need: need([185, 205, 235], 140, 95, [40, 50, 60]),
    place: 'any',
    mass: 1.1,
    water: 0.1,
    dough: null,
    sign: 'brown, and bubbling',
    crust: true,
  },
  gingerbread: {
    kind: 'gingerbread',
    vessel: tin('square tin', 0.2, 0.2, 0.06),
    need: need([160, 178, 200], 130, 96, [30, 38, 45]),
    place: 'middle',
    mass: 0.9,
    water: 0.08,
    dough: null,
    sign: 'a straw comes out dry',
  },
  biscuits: {
    kind: 'biscuits',
    vessel: tin('baking sheet', 0.34, 0.26, 0.03),
    need: need([210, 230, 255], 180, 95, [10, 13, 17]),
    place: 'mouth',
    mass: 0.7,
    water: 0.08,
    dough: null,
    sign: 'pale brown',
  },
  sponge: {
    kind: 'sponge',
    vessel: round('cake tin', 0.2, 0.07),
    need: need([155, 168, 185], 135, 96, [30, 36, 42]),
    place: 'middle',
    mass: 0.6,
    water: 0.06,
    dough: null,
    sign: 'springs back',
  },
  custard: {
    kind: 'custard',
    vessel: round('dish', 0.18, 0.07),
    need: need([125, 145, 163], 105, 80, [35, 42, 55]),
    place: 'mouth',
    mass: 0.8,
    water: 0.04,
    dough: null,
    sign: 'trembles in the middle',
  },
  'fruit cake': {
    kind: 'fruit cake',
    vessel: round('cake tin', 0.22, 0.1),
    need: need([128, 142, 160], 90, 92, [150, 180, 220], {reference: 135}),
    place: 'back',
    mass: 1.8,
    water: 0.12,
    dough: null,
    sign: 'a straw comes out dry',
  },
  pudding: {
    kind: 'indian pudding',
    vessel: round('crock', 0.2, 0.14),
    need: need([120, 150, 190], 70, 85, [180, 240, 360], {falling: true, overnight: true, reference: 115}),
    place: 'back',
    mass: 2,
    water: 0.2,
    dough: null,
    sign: 'set, and dark',
  },
  apples: {
    kind: 'drying',
    vessel: tin('tray', 0.35, 0.3, 0.03),
    need: need([60, 80, 100], 38, 40, [240, 360, 600], {falling: true, overnight: true, reference: 65}),
    place: 'any',
    mass: 1,
    water: 0.7,
    dough: null,
    sign: 'leathery',
  },
}

/** One dish of a kind. */
export function dish(kind: string, count: number, more: Partial<Dish> = {}): Dish {
  const k = kinds[kind]!
  return {
    id: more.id ?? `${kind.replace(' ', '-')}-1`,
    title: kind[0]!.toUpperCase() + kind.slice(1),
    file: `receipts/${kind.replace(' ', '-')}.md`,
    ...k,
    count,
    times: '1',
    wantedBy: null,
    feeds: {low: 4, likely: 6, high: 8},
    inferred: [],
    sized: [],
    cautions: [],
    amounts: [],
    ...more,
  }
}

/** A day with usual hours. */
export function day(more: Partial<Day> = {}): Day {
  return {
    title: 'A day',
    date: '2027-06-19',
    zone: null,
    people: 20,
    fireFrom: 300,
    serve: 780,
    hands: 1,
    firings: 1,
    items: [],
    spare: [],
    ...more,
  }
}

const floor: FloorShape = {shape: 'round', diameter: 1.07}

/** Loads made of a plan's first: one dish of it, in and out so many minutes after that was set in. */
export function loadsLike({loads: [whole]}: Plan): (id: string, from: number, to: number) => Load {
  const {at, dishes} = whole!
  return (id, from, to) => ({
    ...whole!,
    at: at + from,
    placed: [],
    dishes: [{...dishes[0]!, dish: id, draw: {low: at + to, likely: at + to, high: at + to}}],
  })
}

/** A whole problem on a 42-inch round oven. */
export function problem(dishes: readonly Dish[], more: Partial<PlanProblem> = {}): PlanProblem {
  return {
    day: day(),
    dishes,
    firings: fires(),
    floor,
    mouth: {width: 0.46, height: 0.28},
    vaultHeight: 0.41,
    ambient: 20,
    ...more,
  }
}

/** A random day of `n` dishes; the same seed gives the same day. */
export function randomDay(seed: number, n: number, more: Partial<PlanProblem> = {}): PlanProblem {
  const random = generator(seed)
  const names = Object.keys(kinds)
  const dishes = Array.from({length: n}, (_, i) => {
    const kind = names[Math.floor(random() * names.length)]!
    const count = 1 + Math.floor(random() * (kind === 'bread' ? 6 : 2))
    const wanted = random() < 0.3 ? 660 + 30 * Math.floor(random() * 12) : null
    return dish(kind, count, {id: `${kind.replace(' ', '-')}-${i + 1}`, wantedBy: wanted})
  })
  return problem(dishes, {day: day({hands: 1 + Math.floor(random() * 2), serve: 720 + 60 * Math.floor(random() * 5)}), ...more})
}

/** A day laid out on the middle one of its fires, on an oven that loads cool, with the margins of a morning's plan. */
export function layoutOn(
  p: PlanProblem,
  oven: Parameters<typeof simulator>[0]['oven'],
): {grid: FloorGrid; jobs: readonly Job[]; layout: Layout} {
  const grid = floorGrid(p)
  const jobs = jobsOf(p, grid)
  const option = p.firings[Math.floor(p.firings.length / 2)]!
  const curve = curveOf(option.forecast, 20)
  const program = layoutFire(option, curve, phaseOf(null))
  const limits = {lit: p.day.fireFrom, margin: 2, inHand: 6, marginDose: 0.01, inHandDose: 0}
  const layout = new Layout(p, grid, jobs, program, responseOf(option, simulator({oven}), [], 20), laneShare(p, grid), limits)
  return {grid, jobs, layout}
}
