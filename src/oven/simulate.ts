import {AIR, BACK, Cavity, DOOR, FRONT, KELVIN, MIDDLE, VAULT} from './cavity.js'
import {Column, type ColumnLayer, columnLayer} from './conduction.js'
import {exchangeAreas, ovenViewFactors} from './enclosure.js'
import {burntShare, flameAt, gasPerWood, mostBurning, woodHeat} from './fire.js'
import {type OvenGeometry, ovenGeometry} from './geometry.js'
import {materialById} from './materials.js'
import {type Burn, EVAPORATION, type LoadSpan, RAKING, type Schedule, scheduleOf, spanAt} from './schedule.js'
import type {Firing, OvenEvent, OvenSpec} from './types.js'

export {loadHeat} from './schedule.js'

/**
 * The falling oven. Three strips of hearth, the vault and the door are each conduction in depth (`conduction.ts`); their faces exchange
 * heat by radiation as a grey enclosure (`enclosure.ts`) and with the air or flame between them. Each step folds every wall into one
 * equation for its face; the six unknowns left (five faces and the air) are solved together by Newton's method, so that the radiation
 * is fully implicit. The enthalpies are then moved by exactly those flows, and heat is conserved to rounding.
 */

const GRAVITY = 9.81
/** Specific heat of air and flue gas, J/(kg·K) (Incropera & DeWitt app. A at 300 and 800 K). */
const AIR_HEAT = 1010
const GAS_HEAT = 1150
/** Capacity of the cavity's air, J/(m³·K), at baking heat. */
const AIR_CAPACITY = 650
/** Share of a wood fire's heat that leaves flame and coals as radiation (Drysdale ch. 4: 0.2–0.4). */
const RADIANT = 0.28
/** Where that radiation lands: vault, floor under and about the fire, out of the mouth. */
const TO_VAULT = 0.55
const TO_FLOOR = 0.37
/** Emissivity of flames some 0.4 m thick (from memory: 0.15–0.35). */
const FLAME_EMISSIVITY = 0.22
/** Share of the floor that sees flame: the rest lies under wood and ash, or in the cold air that creeps in along it. */
const FLOOR_SEES = 0.45
/** Stirring by the flame, W/(m²·K) (from memory). */
const FLAME_VAULT = 12
const FLAME_FLOOR = 4
/** Film of the outer faces, W/(m²·K): convection and radiation together (ISO 6946 gives 7.7 within, 25 in wind; 15 sheltered). */
const OUTSIDE = {indoors: 8, outdoors: 14} as const
const UNDERSIDE = 6
/** Gap round a shut door, m, and discharge coefficient of an opening (sharp edge). */
const GAP = 0.002
const DISCHARGE = 0.6
/** Share of its warming that incoming air takes from the floor at the mouth (from memory: the mouth is 10–30 °C cooler than the back). */
const INCOMING = 0.3
/** Water the swab leaves on each square metre of floor, boiled off while raking and sweeping, kg/m² (from memory: a mop's worth). */
const SWAB = 0.4
/** Least distance from the face that counts as the store and not as the insulation, m. */
const STORE = 0.12
/** Water in a damp oven's walls, as a share of their dry mass (from memory: 2–8 %). */
const DAMP = 0.04
/** And what a cold one has drawn from the air since it was last dried (from memory: 0.5–1 % for brick and clay indoors). */
const AIR_DRY = 0.007
/** An oven still this warm has not taken up water, °C. */
const STAYS_DRY = 45
/**
 * Heat that leaks sideways where the drawing is not one-dimensional, W/K for each metre of the floor's edge and of the mouth's frame
 * (from memory: 0.1–0.5 as for thermal bridges of masonry, ISO 14683).
 */
const BRIDGE = 0.25
/** How a load takes its heat: from floor, vault, air. See docs/oven.md. */
const LOAD_SHARE = {floor: 0.25, vault: 0.7, air: 0.05} as const
/**
 * What a dish feels: radiation 70 %, convection 17 %, conduction 13 % (bread, measured: Cereal Technology 2016); the radiation comes
 * mostly from the vault.
 */
const FELT = {radiation: 0.7, air: 0.17, floor: 0.13, ofVault: 0.85} as const

/** Factors on the drawing's own figures. */
export interface Factors {
  readonly stored: number
  readonly loss: number
  readonly coupling: number
}

export interface SimulationOptions {
  readonly firing: Firing
  readonly factors?: Factors
  readonly events?: readonly OvenEvent[]
  /** From lighting. */
  readonly hours?: number
  /** Minutes between samples. */
  readonly sample?: number
  /** Factor on the length of every time step, for tests of convergence. */
  readonly stepScale?: number
  /** Factor on the number of nodes. */
  readonly refine?: number
}

/** A simulated day; arrays hold a value per sample, °C. */
export interface Trace {
  readonly step: number
  readonly raked: number
  readonly ready: number
  readonly floor: Float64Array
  readonly vault: Float64Array
  readonly air: Float64Array
  readonly baking: Float64Array
  readonly back: Float64Array
  readonly middle: Float64Array
  readonly mouth: Float64Array
  /** Heat in masonry and air above ambient, MJ. */
  readonly heat: Float64Array
  /** Heat in masonry and air above ambient at the end of the soak, MJ. */
  readonly held: number
  readonly underside: Float64Array
  readonly balance: {
    readonly fire: number
    readonly flue: number
    readonly stored: number
    readonly lost: number
    readonly loads: number
    readonly error: number
  }
  readonly steps: number
}

const AS_DRAWN: Factors = {stored: 1, loss: 1, coupling: 1}

function layersOf(oven: OvenSpec, which: 'hearth' | 'vault'): ColumnLayer[] {
  const water = oven.start.damp ? DAMP : oven.start.celsius < STAYS_DRY ? AIR_DRY : 0
  return oven[which].map((l) => columnLayer(materialById(l.material), l.thickness, water))
}

/** Depth of the part of a wall that stores heat by day; what lies behind it is insulation, or acts as such. */
function storeDepth(layers: readonly ColumnLayer[]): number {
  const first = layers[0]!.thickness
  return layers.length > 1 ? Math.min(first, STORE * 2) : Math.min(first * 0.6, STORE)
}

/** The oven in the middle of a day: walls, air, clock and the account of its heat. */
class RunningOven {
  readonly cavity = new Cavity()
  readonly walls: Column[]
  /** Minutes from lighting. */
  time = 0
  steps = 0
  /** J. */
  fire = 0
  flue = 0
  lost = 0
  taken = 0
  air: number

  readonly #geometry: OvenGeometry
  /** Where each wall's store ends, m. */
  readonly #stores: readonly number[]
  readonly #ambient: number
  readonly #shutExchange: Float64Array
  readonly #openExchange: Float64Array
  readonly #areas: Float64Array
  readonly #zones: Float64Array
  readonly #hasDoor: boolean
  readonly #airCapacity: number
  readonly #woodHeat: number
  readonly #gasRatio: number
  readonly #mostBurning: number
  readonly #gapArea: number
  readonly #head: number
  readonly #start: Float64Array
  readonly #terms = {inertia: 0, before: 0, heat: 0, flow: 0, ambient: 0}
  #schedule: Schedule = {burns: [], open: [], swabs: [], loads: [], breaks: []}
  #factors: Factors = AS_DRAWN
  #scale = 1
  #changed = 0
  #nextBreak = 0
  #doorOff = true
  // What goes on between the last break and the next.
  #burning: Burn | undefined
  #open = false
  #swabbed = false
  #loaded: readonly LoadSpan[] = []

  constructor(oven: OvenSpec, refine: number) {
    const geometry = ovenGeometry(oven)
    const celsius = oven.start.celsius
    const grid = {first: 0.004 / refine, growth: 1.3 ** (1 / refine), largest: 0.03 / refine}
    const hearth = layersOf(oven, 'hearth')
    const vault = layersOf(oven, 'vault')
    const outside = OUTSIDE[oven.place]
    const door = oven.door ?? {material: 'oak', thickness: 0.05}
    this.walls = [
      ...geometry.zoneArea.map((area) => new Column({layers: hearth, area, outside: UNDERSIDE, celsius, ...grid})),
      new Column({layers: vault, area: geometry.vaultArea, spread: geometry.vaultSpread, outside, celsius, ...grid}),
      new Column({
        layers: [columnLayer(materialById(door.material), door.thickness)],
        area: geometry.mouthArea,
        outside,
        celsius: oven.ambient,
        ...grid,
      }),
    ]
    // The floor's edge (as of a circle of its area) leaks from hearth and vault, the mouth's frame from vault and the floor next to it.
    const edge = BRIDGE * 2 * Math.sqrt(Math.PI * geometry.floorArea)
    const frame = BRIDGE * 2 * (oven.mouth.width + oven.mouth.height)
    this.#stores = [storeDepth(hearth), storeDepth(hearth), storeDepth(hearth), storeDepth(vault), 0]
    for (let f = 0; f < 3; f++) {
      const share = (edge / 2) * (geometry.zoneArea[f]! / geometry.floorArea)
      this.walls[f]!.addBridge(storeDepth(hearth), f === FRONT ? share + frame / 2 : share)
    }
    this.walls[VAULT]!.addBridge(storeDepth(vault), (edge + frame) / 2)

    const {areas, factors: views} = ovenViewFactors(oven, geometry)
    const emissivity = (id: string): number => materialById(id).emissivity?.likely ?? 0.92
    const floor = emissivity(oven.hearth[0]!.material)
    const faces = [floor, floor, floor, emissivity(oven.vault[0]!.material)]
    this.#shutExchange = exchangeAreas(areas, [...faces, emissivity(door.material)], views)
    this.#openExchange = exchangeAreas(areas, [...faces, 1], views)
    this.#areas = Float64Array.from(areas)
    this.#zones = Float64Array.from(geometry.zoneArea)
    this.#geometry = geometry
    this.#ambient = oven.ambient
    this.#hasDoor = oven.door !== null
    this.#airCapacity = AIR_CAPACITY * geometry.volume
    this.#woodHeat = woodHeat(oven) * 1e6
    this.#gasRatio = gasPerWood(oven.fuel.moisture)
    this.#mostBurning = mostBurning(oven)
    this.#gapArea = 2 * (oven.mouth.width + oven.mouth.height) * GAP
    this.#head = oven.mouth.height
    this.air = celsius
    const x = this.cavity.celsius
    for (let f = 0; f < 5; f++) x[f] = this.walls[f]!.celsius[0]!
    x[AIR] = celsius
    this.#start = this.state()
  }

  /** Everything that changes as the day goes on, to be gone back to with `begin`. */
  state(): Float64Array {
    const out = new Float64Array(15 + this.walls.reduce((n, w) => n + w.stateSize, 0))
    const own = [this.time, this.steps, this.fire, this.flue, this.lost, this.taken, this.air, this.#changed]
    out.set(own)
    out[8] = this.#doorOff ? 1 : 0
    out.set(this.cavity.celsius, 9)
    let at = 15
    for (const wall of this.walls) {
      wall.saveState(out, at)
      at += wall.stateSize
    }
    return out
  }

  /**
   * Take up a day.
   *
   * @param factors on the drawing's own figures
   * @param scale of the time steps
   * @param state from an oven of the same drawing and factors whose schedule was the same up to then; from the start where absent
   */
  begin(schedule: Schedule, factors: Factors, scale: number, state: Float64Array = this.#start): void {
    this.#factors = factors
    this.#scale = scale
    this.walls.forEach((wall, f) => {
      wall.scale(this.#stores[f]!, factors.coupling, factors.loss)
    })
    this.time = state[0]!
    this.steps = state[1]!
    this.fire = state[2]!
    this.flue = state[3]!
    this.lost = state[4]!
    this.taken = state[5]!
    this.air = state[6]!
    this.#changed = state[7]!
    this.#doorOff = state[8] === 1
    this.cavity.celsius.set(state.subarray(9, 15))
    let at = 15
    for (const wall of this.walls) {
      wall.loadState(state, at)
      at += wall.stateSize
    }
    this.#schedule = schedule
    this.#nextBreak = 0
    while (this.#nextBreak < schedule.breaks.length && schedule.breaks[this.#nextBreak]! < this.time - 1e-9) this.#nextBreak++
    this.#look()
  }

  /** What goes on from now to the next break. */
  #look(): void {
    const {burns, open, swabs, loads, breaks} = this.#schedule
    let next = this.#nextBreak
    while (next < breaks.length && breaks[next]! <= this.time + 1e-9) next++
    const middle = (this.time + (breaks[next] ?? this.time + 1)) / 2
    this.#burning = spanAt(burns, middle)
    this.#open = this.#burning !== undefined || !this.#hasDoor || spanAt(open, middle) !== undefined
    this.#swabbed = spanAt(swabs, middle) !== undefined
    this.#loaded = loads.filter((l) => middle > l.from && middle < l.to)
  }

  /** Heat in walls and air above ambient, J. */
  held(): number {
    let sum = this.#airCapacity * (this.air - this.#ambient)
    for (const wall of this.walls) sum += wall.storedAbove(this.#ambient)
    return sum
  }

  /** Mean of the floor, °C. */
  floor(): number {
    const x = this.cavity.celsius
    const z = this.#zones
    return (z[0]! * x[BACK]! + z[1]! * x[MIDDLE]! + z[2]! * x[FRONT]!) / this.#geometry.floorArea
  }

  /** What a dish feels, °C. */
  baking(): number {
    const x = this.cavity.celsius
    const floor = this.floor()
    const vault4 = (x[VAULT]! + KELVIN) ** 4
    const floor4 = (floor + KELVIN) ** 4
    const radiant = (FELT.ofVault * vault4 + (1 - FELT.ofVault) * floor4) ** 0.25 - KELVIN
    return FELT.radiation * radiant + FELT.air * x[AIR]! + FELT.floor * floor
  }

  /** March to a moment, minutes from lighting. */
  advance(until: number): void {
    const {breaks} = this.#schedule
    while (this.time < until - 1e-9) {
      let changed = false
      while (this.#nextBreak < breaks.length && breaks[this.#nextBreak]! <= this.time + 1e-9) {
        changed = true
        this.#nextBreak++
      }
      if (changed) {
        this.#changed = this.time
        this.#look()
      }
      const since = this.time - this.#changed
      // Short steps after a change, when faces move fast, and longer ones as the oven settles.
      const wish = this.#burning ? (since < 10 ? 0.5 : 1) : since < 5 ? 0.5 : since < 30 ? 1 : since < 120 ? 2.5 : 5
      let span = Math.min(wish * this.#scale, until - this.time)
      const next = breaks[this.#nextBreak]
      if (next !== undefined && next > this.time + 1e-9) span = Math.min(span, next - this.time)
      this.#step(span)
      this.time += span
      this.steps++
    }
    this.time = until
  }

  #step(span: number): void {
    const {cavity, walls} = this
    const x = cavity.celsius
    const dt = span * 60
    const ambient = this.#ambient
    const middle = this.time + span / 2
    const burning = this.#burning
    const isOpen = this.#open
    if (isOpen && !this.#doorOff) {
      // The door stands aside and cools; it comes back cold.
      const door = walls[DOOR]!
      this.lost += door.storedAbove(ambient)
      door.setCelsius(() => ambient)
    }
    this.#doorOff = isOpen
    const exchange = isOpen ? this.#openExchange : this.#shutExchange

    cavity.direct.fill(0)
    cavity.gas.fill(0)
    let heat = 0
    let flow = 0
    let shade = 1
    if (burning) {
      const seconds = (burning.to - burning.from) * 60
      const now = flameAt((middle - burning.from) / (burning.to - burning.from))
      const rate = (burning.wood / seconds) * now.power
      heat = this.#burn(rate, now.place, dt)
      flow = Math.min(Math.max(rate, (0.2 * burning.wood) / seconds), this.#mostBurning) * this.#gasRatio * GAS_HEAT
      shade = 1 - FLAME_EMISSIVITY
    } else {
      flow = this.#stillAir(isOpen)
      // Air that comes in creeps over the floor at the mouth first, and is warmed there.
      const warmed = INCOMING * flow * Math.max(x[FRONT]! - ambient, 0)
      cavity.direct[FRONT] = -warmed
      heat = warmed
    }
    if (this.#loaded.length > 0) heat -= this.#loads(middle, dt)
    if (this.#swabbed && x[MIDDLE]! > 100) {
      const wet = (SWAB * EVAPORATION) / (RAKING * 60)
      for (let z = 0; z < 3; z++) cavity.direct[z] = cavity.direct[z]! - wet * this.#zones[z]!
      this.lost += wet * this.#geometry.floorArea * dt
    }

    const count = isOpen ? 4 : 5
    for (let f = 0; f < count; f++) {
      const wall = walls[f]!
      wall.eliminate(dt, ambient)
      cavity.diagonal[f] = wall.diagonal
      cavity.right[f] = wall.right
    }
    const terms = this.#terms
    terms.inertia = this.#airCapacity / dt
    terms.before = this.air
    terms.heat = heat
    terms.flow = flow
    terms.ambient = ambient
    const toAir = cavity.solve(exchange, shade, count, terms)
    this.air += (dt * toAir) / this.#airCapacity
    const escaped = flow * (x[AIR]! - ambient) + (isOpen ? cavity.throughMouth(exchange, shade) : 0)
    if (burning) this.flue += escaped * dt
    else this.lost += escaped * dt
    for (let f = 0; f < count; f++) {
      walls[f]!.substitute(dt, x[f]!, cavity.gains[f]!)
      x[f] = walls[f]!.celsius[0]!
    }
    x[AIR] = this.air
  }

  /** The fire's heat on the faces; returns what is set free in the gas, W. */
  #burn(rate: number, place: readonly [number, number, number], dt: number): number {
    const {direct, film, gas, celsius} = this.cavity
    const all = rate * this.#woodHeat
    const inside = Math.min(1, this.#mostBurning / rate)
    const useful = all * inside * burntShare(celsius[VAULT]!) * this.#factors.stored
    const radiant = useful * RADIANT
    this.fire += all * dt
    this.flue += (all - useful + radiant * (1 - TO_FLOOR - TO_VAULT)) * dt
    for (let z = 0; z < 3; z++) {
      const share = 0.35 * (this.#zones[z]! / this.#geometry.floorArea) + 0.65 * place[z]!
      direct[z] = radiant * TO_FLOOR * share
      film[z] = FLAME_FLOOR * this.#zones[z]!
      gas[z] = FLAME_EMISSIVITY * FLOOR_SEES * this.#zones[z]!
    }
    direct[VAULT] = radiant * TO_VAULT
    film[VAULT] = FLAME_VAULT * this.#geometry.vaultArea
    gas[VAULT] = FLAME_EMISSIVITY * this.#geometry.vaultArea
    film[DOOR] = 0
    return useful * (1 - RADIANT)
  }

  /** Convection without a fire; returns what the mouth or its gaps carry out, W/K. */
  #stillAir(isOpen: boolean): number {
    const {film, celsius} = this.cavity
    const air = celsius[AIR]!
    // Free convection over plates, h ∝ ΔT^⅓ (Incropera & DeWitt §9.6); weaker under a hot roof.
    for (let f = 0; f < 5; f++) {
      const strength = f === VAULT ? 1 : f === DOOR ? 1.3 : 1.5
      film[f] = (0.5 + strength * Math.cbrt(Math.abs(celsius[f]! - air))) * this.#areas[f]! * this.#factors.coupling
    }
    if (isOpen) film[DOOR] = 0
    const mean = (air + this.#ambient) / 2 + KELVIN
    const draught = Math.sqrt((GRAVITY * this.#head * Math.max(air - this.#ambient, 0)) / mean)
    // Density 353/T kg/m³ (ideal gas). Open: two-way flow, Cd/3·A·√(gHΔT/T) (Brown & Solvason 1962). Shut: in below, out above.
    const density = 353 / mean
    return isOpen
      ? ((DISCHARGE / 3) * this.#geometry.mouthArea * draught * density + 1e-4) * AIR_HEAT
      : (DISCHARGE * (this.#gapArea / 2) * draught * density + 1e-6) * AIR_HEAT * this.#factors.loss
  }

  /** The loads' heat from the faces; returns what they take from the air, W. */
  #loads(time: number, dt: number): number {
    let power = 0
    for (const l of this.#loaded) {
      const share = (time - l.from) / (l.to - l.from)
      // Cold dough takes most at first: a straight fall from 1.6 to 0.4 of the mean.
      power += (l.heat / ((l.to - l.from) * 60)) * (1.6 - 1.2 * share)
    }
    if (power === 0) return 0
    const {direct, celsius} = this.cavity
    // An oven hardly hotter than the load can give it little.
    power *= Math.min(Math.max((celsius[VAULT]! - 60) / 60, 0), 1)
    for (let z = 0; z < 3; z++) direct[z] = direct[z]! - power * LOAD_SHARE.floor * (this.#zones[z]! / this.#geometry.floorArea)
    direct[VAULT] = direct[VAULT]! - power * LOAD_SHARE.vault
    this.taken += power * dt
    return power * LOAD_SHARE.air
  }
}

/** One simulation that others may go on from. */
interface Run {
  /** Sorted by their minutes. */
  readonly events: readonly OvenEvent[]
  readonly trace: Trace
  /** States at every `KEEP` minutes. */
  readonly states: readonly Float64Array[]
}

const CURVES = ['floor', 'vault', 'air', 'baking', 'back', 'middle', 'mouth', 'underside', 'heat'] as const

/** Hours simulated where nothing else is asked. */
const DAY = 24
/** Minutes between two states kept of a run, and the runs kept of a fire. */
const KEEP = 30
const RUNS = 6

/**
 * Simulations of one oven, for a search that tries many days which begin alike: the same fire and the same first loads. A run whose events differ from those of an
 * earlier one only after some minute goes on from the last state kept before it. The results are those of `simulate` to the last bit.
 */
export class OvenRuns {
  readonly oven: OvenSpec
  readonly #ovens = new Map<number, RunningOven>()
  readonly #runs = new Map<string, Run[]>()
  readonly #kept: number

  /** @param kept runs kept of each fire to go on from; 0 where no two will be alike: the drawing alone is then worked out once */
  constructor(oven: OvenSpec, kept = RUNS) {
    this.oven = oven
    this.#kept = kept
  }

  /** As `simulate` of this oven. */
  simulate(options: SimulationOptions): Trace {
    const {firing} = options
    const refine = options.refine ?? 1
    const step = options.sample ?? 5
    let running = this.#ovens.get(refine)
    if (!running) {
      running = new RunningOven(this.oven, refine)
      this.#ovens.set(refine, running)
    }
    const events = inOrder(options.events ?? [])
    const given = {...options, events, sample: step}
    if (this.#kept === 0) return march(running, given, null, 0, false).trace
    const {stored, loss, coupling} = options.factors ?? AS_DRAWN
    const key = [stored, loss, coupling, options.stepScale ?? 1, refine, step, firing.wood, firing.burn, firing.soak].join(' ')
    const runs = this.#runs.get(key) ?? []
    this.#runs.set(key, runs)
    let from: Run | null = null
    let alike = 0
    for (const run of runs) {
      const minutes = alikeUntil(run.events, events)
      if (minutes > alike) {
        alike = minutes
        from = run
      }
    }
    const count = sampleCount(options.hours, step)
    if (from && alike === Number.POSITIVE_INFINITY && from.trace.floor.length === count) return from.trace
    const run = march(running, given, from, alike, true)
    runs.push(run)
    if (runs.length > this.#kept) runs.shift()
    return run.trace
  }
}

/** By their minutes; those of the same minute stay as they were. */
function inOrder(events: readonly OvenEvent[]): readonly OvenEvent[] {
  return [...events].sort((a, b) => a.minutes - b.minutes)
}

/** The first minute at which two days are not alike. */
function alikeUntil(a: readonly OvenEvent[], b: readonly OvenEvent[]): number {
  let i = 0
  while (i < a.length && i < b.length && isSame(a[i]!, b[i]!)) i++
  return Math.min(a[i]?.minutes ?? Number.POSITIVE_INFINITY, b[i]?.minutes ?? Number.POSITIVE_INFINITY)
}

function isSame(a: OvenEvent, b: OvenEvent): boolean {
  if (a.minutes !== b.minutes) return false
  if (a.kind === 'door') return b.kind === 'door' && a.open === b.open
  if (a.kind === 'load') {
    return b.kind === 'load' && a.mass === b.mass && a.water === b.water && a.bake === b.bake && a.celsius === b.celsius
  }
  return (
    b.kind === 'fire' && a.firing.wood === b.firing.wood && a.firing.burn === b.firing.burn && a.firing.soak === b.firing.soak
  )
}

/**
 * Simulate an oven from lighting on.
 *
 * @returns samples of every temperature and where the heat went; runs in time proportional to the number of steps
 */
export function simulate(oven: OvenSpec, options: SimulationOptions): Trace {
  const running = new RunningOven(oven, options.refine ?? 1)
  return march(running, {...options, events: inOrder(options.events ?? [])}, null, 0, false).trace
}

function sampleCount(hours: number | undefined, step: number): number {
  return Math.floor(((hours ?? DAY) * 60) / step + 1e-9) + 1
}

/** A day's march, from lighting or from where an earlier run and this one part. */
function march(running: RunningOven, options: SimulationOptions, from: Run | null, alike: number, keep: boolean): Run {
  const {firing} = options
  const step = options.sample ?? 5
  const end = (options.hours ?? DAY) * 60
  const events = options.events ?? []
  const schedule = scheduleOf(firing, events, end)
  const count = sampleCount(options.hours, step)
  const curve = (): Float64Array => new Float64Array(count)
  const trace = {
    floor: curve(),
    vault: curve(),
    air: curve(),
    baking: curve(),
    back: curve(),
    middle: curve(),
    mouth: curve(),
    underside: curve(),
    heat: curve(),
  }
  const every = Math.max(1, Math.round(KEEP / step))
  const last = (events.at(-1)?.minutes ?? firing.burn + firing.soak) + KEEP
  const factors = options.factors ?? AS_DRAWN
  const scale = options.stepScale ?? 1
  running.begin(schedule, factors, scale)
  const before = running.held()
  // The sample nearest the end of the soak.
  const ready = Math.min(Math.round((firing.burn + firing.soak) / step), count - 1)
  let held = from?.trace.held ?? 0
  const states: Float64Array[] = []
  let first = 0
  if (from) {
    // A state is kept after its sample was taken: the march goes on with the next.
    const kept = Math.min(from.states.length, Math.floor(Math.min(alike, end) / (every * step) + 1e-9) + 1)
    if (kept > 0) {
      states.push(...from.states.slice(0, kept))
      first = (kept - 1) * every + 1
      for (const name of CURVES) trace[name].set(from.trace[name].subarray(0, first))
      running.begin(schedule, factors, scale, states.at(-1)!)
    }
  }
  const x = running.cavity.celsius
  const hearth = running.walls[MIDDLE]!
  for (let i = first; i < count; i++) {
    running.advance(i * step)
    trace.floor[i] = running.floor()
    trace.vault[i] = x[VAULT]!
    trace.air[i] = x[AIR]!
    trace.baking[i] = running.baking()
    trace.back[i] = x[BACK]!
    trace.middle[i] = x[MIDDLE]!
    trace.mouth[i] = x[FRONT]!
    trace.heat[i] = running.held() / 1e6
    if (i === ready) held = trace.heat[i]!
    trace.underside[i] = hearth.celsius[hearth.size - 1]!
    if (keep && i % every === 0 && i * step <= last) states.push(running.state())
  }

  const {fire, flue, taken} = running
  const lost = running.walls.reduce((sum, w) => sum + w.lost + w.steam, running.lost)
  const stored = running.held() - before
  const capacity = running.walls.reduce((sum, w) => sum + w.capacity(), 0)
  // Relative to the heat that moved, and at least to one degree of the whole masonry, so that a day without fire has a scale too.
  const size = Math.max(fire, Math.abs(stored), Math.abs(lost), taken, capacity)
  const made: Trace = {
    step,
    raked: firing.burn,
    ready: firing.burn + firing.soak,
    ...trace,
    held,
    balance: {
      fire: fire / 1e6,
      flue: flue / 1e6,
      stored: stored / 1e6,
      lost: lost / 1e6,
      loads: taken / 1e6,
      error: Math.abs(fire - flue - lost - taken - stored) / size,
    },
    steps: running.steps,
  }
  return {events, trace: made, states}
}
