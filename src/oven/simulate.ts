import {Column, type ColumnLayer, columnLayer} from './conduction.js'
import {exchangeAreas, ovenViewFactors, SIGMA} from './enclosure.js'
import {burntShare, flameAt, gasPerWood, woodHeat} from './fire.js'
import {ovenGeometry} from './geometry.js'
import {materialById} from './materials.js'
import type {Firing, OvenEvent, OvenSpec} from './types.js'

/**
 * The falling oven. Three strips of hearth, the vault and the door are each conduction in depth (`conduction.ts`); their faces exchange
 * heat by radiation as a grey enclosure (`enclosure.ts`) and with the air or flame between them. Each step folds every wall into one
 * equation for its face; the six unknowns left (five faces and the air) are solved together by Newton's method, so that the radiation
 * is fully implicit. The enthalpies are then moved by exactly those flows, and heat is conserved to rounding.
 */

const KELVIN = 273.15
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
/** Minutes with the mouth open while coals are raked and the floor is swept. */
export const RAKING = 5
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
/** Specific heats of dough and of crust and crumb, J/(kg·K), and heat of evaporation at 100 °C with the steam's warming to the oven, J/kg. */
const DOUGH_HEAT = 2900
const EVAPORATION = 2.257e6 + 1.9e3 * 60
/** Crumb temperature of a baked loaf, °C. */
const DONE = 97
/** How a load takes its heat: from floor, vault, air. See docs/oven.md. */
const LOAD_SHARE = {floor: 0.25, vault: 0.7, air: 0.05} as const
/**
 * What a dish feels: radiation 70 %, convection 17 %, conduction 13 % (bread, measured: Cereal Technology 2016); the radiation comes
 * mostly from the vault.
 */
const FELT = {radiation: 0.7, air: 0.17, floor: 0.13, ofVault: 0.85} as const

const BACK = 0
const MIDDLE = 1
const FRONT = 2
const VAULT = 3
const DOOR = 4
const AIR = 5

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
  /** Heat in the masonry above ambient, MJ. */
  readonly held: Float64Array
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

interface Burn {
  readonly from: number
  readonly to: number
  readonly wood: number
}
interface Span {
  readonly from: number
  readonly to: number
}
interface LoadSpan extends Span {
  /** J in all. */
  readonly heat: number
}

/**
 * Heat a load takes up: warming to the crumb's end temperature, and the water that leaves.
 *
 * @param mass kg of dough or batter
 * @param water kg lost
 * @param celsius as set in
 * @returns J
 */
export function loadHeat(mass: number, water: number, celsius = 25): number {
  return mass * DOUGH_HEAT * Math.max(DONE - celsius, 0) + water * EVAPORATION
}

function layersOf(oven: OvenSpec, which: 'hearth' | 'vault'): ColumnLayer[] {
  const water = oven.start.damp ? DAMP : oven.start.celsius < STAYS_DRY ? AIR_DRY : 0
  return oven[which].map((l) => columnLayer(materialById(l.material), l.thickness, water))
}

/** Scale a wall's intervals: the store by `coupling`, what lies behind it by `loss`. */
function applyFactors(column: Column, hot: number, factors: Factors): void {
  for (let i = 0; i < column.size - 1; i++) {
    const middle = (column.depth[i]! + column.depth[i + 1]!) / 2
    column.factor[i] = middle < hot ? factors.coupling : factors.loss
  }
  column.outside *= factors.loss
}

/**
 * Simulate an oven from lighting on.
 *
 * @returns samples of every temperature and where the heat went; runs in time proportional to the number of steps
 */
export function simulate(oven: OvenSpec, options: SimulationOptions): Trace {
  const {firing} = options
  const factors = options.factors ?? {stored: 1, loss: 1, coupling: 1}
  const events = options.events ?? []
  const hours = options.hours ?? 24
  const sample = options.sample ?? 5
  const scale = options.stepScale ?? 1
  const refine = options.refine ?? 1
  const geometry = ovenGeometry(oven)
  const ambient = oven.ambient
  const start = oven.start.celsius
  const mouthShut = oven.door !== null

  const grid = {first: 0.004 / refine, growth: 1.3 ** (1 / refine), largest: 0.03 / refine}
  const hearthLayers = layersOf(oven, 'hearth')
  const vaultLayers = layersOf(oven, 'vault')
  const columns: Column[] = geometry.zoneArea.map(
    (area) => new Column({layers: hearthLayers, area, outside: UNDERSIDE, celsius: start, ...grid}),
  )
  columns.push(
    new Column({
      layers: vaultLayers,
      area: geometry.vaultArea,
      spread: geometry.vaultSpread,
      outside: OUTSIDE[oven.place],
      celsius: start,
      ...grid,
    }),
  )
  const door = oven.door ?? {material: 'oak', thickness: 0.05}
  const doorColumn = new Column({
    layers: [columnLayer(materialById(door.material), door.thickness)],
    area: geometry.mouthArea,
    outside: OUTSIDE[oven.place],
    celsius: ambient,
    ...grid,
  })
  columns.push(doorColumn)
  const hotLayer = (layers: readonly ColumnLayer[]): number =>
    layers.length > 1 ? Math.min(layers[0]!.thickness, STORE * 2) : Math.min(layers[0]!.thickness * 0.6, STORE)
  const edge =
    BRIDGE * factors.loss * (Math.PI * Math.sqrt((4 * geometry.floorArea) / Math.PI) + 2 * (oven.mouth.width + oven.mouth.height))
  for (let i = 0; i < 3; i++) {
    applyFactors(columns[i]!, hotLayer(hearthLayers), factors)
    columns[i]!.addBridge(hotLayer(hearthLayers), (edge / 2) * (geometry.zoneArea[i]! / geometry.floorArea))
  }
  applyFactors(columns[VAULT]!, hotLayer(vaultLayers), factors)
  columns[VAULT]!.addBridge(hotLayer(vaultLayers), edge / 2)
  applyFactors(doorColumn, 0, factors)

  const {areas, factors: views} = ovenViewFactors(oven, geometry)
  const floorEmissivity = materialById(oven.hearth[0]!.material).emissivity?.likely ?? 0.93
  const vaultEmissivity = materialById(oven.vault[0]!.material).emissivity?.likely ?? 0.93
  const doorEmissivity = materialById(door.material).emissivity?.likely ?? 0.9
  const faces = [floorEmissivity, floorEmissivity, floorEmissivity, vaultEmissivity]
  const shutExchange = exchangeAreas(areas, [...faces, doorEmissivity], views)
  const openExchange = exchangeAreas(areas, [...faces, 1], views)

  // What happens when.
  const burns: Burn[] = firing.burn > 0 && firing.wood > 0 ? [{from: 0, to: firing.burn, wood: firing.wood}] : []
  const open: Span[] = firing.burn > 0 ? [{from: firing.burn, to: firing.burn + Math.min(RAKING, firing.soak)}] : []
  const loads: LoadSpan[] = []
  for (const e of events) {
    if (e.kind === 'door') open.push({from: e.minutes, to: e.minutes + e.open})
    else if (e.kind === 'load')
      loads.push({from: e.minutes, to: e.minutes + Math.max(e.bake, 1), heat: loadHeat(e.mass, e.water, e.celsius)})
    else {
      burns.push({from: e.minutes, to: e.minutes + e.firing.burn, wood: e.firing.wood})
      open.push({from: e.minutes + e.firing.burn, to: e.minutes + e.firing.burn + RAKING})
    }
  }
  const swabs: Span[] = burns.map((b) => ({from: b.to, to: b.to + RAKING}))
  const end = hours * 60
  const breaks = [...burns, ...open, ...loads, ...swabs]
    .flatMap((s) => [s.from, s.to])
    .filter((t) => t > 0 && t < end)
    .sort((a, b) => a - b)

  const count = Math.floor(end / sample + 1e-9) + 1
  const floor = new Float64Array(count)
  const vault = new Float64Array(count)
  const air = new Float64Array(count)
  const baking = new Float64Array(count)
  const back = new Float64Array(count)
  const middle = new Float64Array(count)
  const mouth = new Float64Array(count)
  const held = new Float64Array(count)
  const underside = new Float64Array(count)

  const airCapacity = AIR_CAPACITY * geometry.volume
  const megajoules = woodHeat(oven)
  const gasRatio = gasPerWood(oven.fuel.moisture)
  const [zBack, zMiddle, zFront] = geometry.zoneArea
  const zones = geometry.zoneArea
  const gapArea = 2 * (oven.mouth.width + oven.mouth.height) * GAP
  const head = oven.mouth.height

  // Unknowns: five faces and the air, °C; the matrix is 6 × 7 with the right side last.
  const x = new Float64Array(6)
  for (let i = 0; i < 5; i++) x[i] = columns[i]!.celsius[0]!
  x[AIR] = start
  let airCelsius = start
  const m = new Float64Array(42)
  const direct = new Float64Array(5)
  const film = new Float64Array(5)
  const k4 = new Float64Array(6)
  const k3 = new Float64Array(6)
  const gains = new Float64Array(6)

  const bakingTemperature = (): number => {
    const floorMean = (zBack * x[BACK]! + zMiddle * x[MIDDLE]! + zFront * x[FRONT]!) / geometry.floorArea
    const radiant = (FELT.ofVault * (x[VAULT]! + KELVIN) ** 4 + (1 - FELT.ofVault) * (floorMean + KELVIN) ** 4) ** 0.25 - KELVIN
    return FELT.radiation * radiant + FELT.air * x[AIR]! + FELT.floor * floorMean
  }
  const store = (airCelsius: number): number => {
    let sum = airCapacity * (airCelsius - ambient)
    for (const c of columns) sum += c.storedAbove(ambient)
    return sum
  }

  const before = store(airCelsius)
  let fire = 0
  let flue = 0
  let lost = 0
  let taken = 0
  let steps = 0
  let t = 0
  let changed = 0
  let nextBreak = 0
  let doorOff = true

  const record = (i: number, airCelsius: number): void => {
    floor[i] = (zBack * x[BACK]! + zMiddle * x[MIDDLE]! + zFront * x[FRONT]!) / geometry.floorArea
    vault[i] = x[VAULT]!
    air[i] = x[AIR]!
    baking[i] = bakingTemperature()
    back[i] = x[BACK]!
    middle[i] = x[MIDDLE]!
    mouth[i] = x[FRONT]!
    held[i] = store(airCelsius) / 1e6
    const hearth = columns[MIDDLE]!
    underside[i] = hearth.celsius[hearth.size - 1]!
  }
  record(0, airCelsius)

  for (let i = 1; i < count; i++) {
    const until = i * sample
    while (t < until - 1e-9) {
      while (nextBreak < breaks.length && breaks[nextBreak]! <= t + 1e-9) {
        changed = t
        nextBreak++
      }
      const since = t - changed
      const burning = spanAt(burns, t + 1e-6)
      // Short steps after a change, when faces move fast, and longer ones as the oven settles.
      const wish = burning ? (since < 10 ? 0.5 : 1) : since < 5 ? 0.5 : since < 30 ? 1 : since < 120 ? 2.5 : 5
      const pieces = Math.max(1, Math.round(1 / scale))
      let span = scale < 1 ? wish / pieces : wish * scale
      span = Math.min(span, until - t)
      const next = breaks[nextBreak]
      if (next !== undefined && next > t + 1e-9) span = Math.min(span, next - t)
      const dt = span * 60
      const middleTime = t + span / 2

      const isOpen = burning !== undefined || !mouthShut || spanAt(open, middleTime) !== undefined
      if (isOpen && !doorOff) {
        lost += doorColumn.storedAbove(ambient)
        doorColumn.setCelsius(() => ambient)
      }
      doorOff = isOpen
      const exchange = isOpen ? openExchange : shutExchange

      // Flows and films for this step, from the temperatures at its start.
      let flow = 0
      let heatToGas = 0
      let shade = 1
      let flame = 0
      direct.fill(0)
      if (burning) {
        const now = flameAt((middleTime - burning.from) / (burning.to - burning.from))
        const seconds = (burning.to - burning.from) * 60
        const rate = (burning.wood / seconds) * now.power
        const all = (burning.wood / seconds) * megajoules * 1e6 * now.power
        const useful = all * burntShare(x[VAULT]!) * factors.stored
        fire += all * dt
        flue += (all - useful) * dt
        const radiant = useful * RADIANT
        for (let z = 0; z < 3; z++)
          direct[z] = radiant * TO_FLOOR * (0.35 * (zones[z]! / geometry.floorArea) + 0.65 * now.place[z]!)
        direct[VAULT] = radiant * TO_VAULT
        flue += radiant * (1 - TO_FLOOR - TO_VAULT) * dt
        heatToGas = useful * (1 - RADIANT)
        flow = Math.max(rate, (0.2 * burning.wood) / seconds) * gasRatio * GAS_HEAT
        flame = FLAME_EMISSIVITY
        shade = 1 - FLAME_EMISSIVITY
        for (let z = 0; z < 3; z++) film[z] = FLAME_FLOOR * zones[z]!
        film[VAULT] = FLAME_VAULT * geometry.vaultArea
        film[DOOR] = 0
      } else {
        const warm = Math.max(x[AIR]! - ambient, 0)
        const mean = (x[AIR]! + ambient) / 2 + KELVIN
        const draught = Math.sqrt((GRAVITY * head * warm) / mean)
        // Density 353/T kg/m³ (ideal gas). Open: two-way flow, Cd/3·A·√(gHΔT/T) (Brown & Solvason 1962). Shut: in below, out above.
        const density = 353 / mean
        flow = isOpen
          ? ((DISCHARGE / 3) * geometry.mouthArea * draught * density + 1e-4) * AIR_HEAT
          : (DISCHARGE * (gapArea / 2) * draught * density + 1e-6) * AIR_HEAT * factors.loss
        // Free convection over plates, h ∝ ΔT^⅓ (Incropera & DeWitt §9.6); weaker under a hot roof.
        for (let f = 0; f < 5; f++) {
          const strength = f === VAULT ? 1 : f === DOOR ? 1.3 : 1.5
          film[f] = (0.5 + strength * Math.cbrt(Math.abs(x[f]! - x[AIR]!))) * areas[f]! * factors.coupling
        }
        if (isOpen) film[DOOR] = 0
      }
      let loadPower = 0
      for (const l of loads) {
        if (middleTime <= l.from || middleTime >= l.to) continue
        const share = (middleTime - l.from) / (l.to - l.from)
        // Cold dough takes most at first: a straight fall from 1.6 to 0.4 of the mean.
        loadPower += (l.heat / ((l.to - l.from) * 60)) * (1.6 - 1.2 * share)
      }
      if (loadPower > 0) {
        // An oven hardly hotter than the load can give it little.
        loadPower *= Math.min(Math.max((x[VAULT]! - 60) / 60, 0), 1)
        for (let z = 0; z < 3; z++) direct[z] = direct[z]! - loadPower * LOAD_SHARE.floor * (zones[z]! / geometry.floorArea)
        direct[VAULT] = direct[VAULT]! - loadPower * LOAD_SHARE.vault
        heatToGas -= loadPower * LOAD_SHARE.air
        taken += loadPower * dt
      }

      if (spanAt(swabs, middleTime) !== undefined && x[MIDDLE]! > 100) {
        const wet = (SWAB * EVAPORATION) / (RAKING * 60)
        for (let z = 0; z < 3; z++) direct[z] = direct[z]! - wet * zones[z]!
        lost += wet * geometry.floorArea * dt
      }

      const walls = isOpen ? 4 : 5
      for (let f = 0; f < walls; f++) columns[f]!.eliminate(dt, ambient)
      if (isOpen) x[DOOR] = ambient

      for (let iteration = 0; iteration < 12; iteration++) {
        for (let f = 0; f < 6; f++) {
          const kelvin = x[f]! + KELVIN
          k3[f] = 4 * SIGMA * kelvin * kelvin * kelvin
          k4[f] = SIGMA * kelvin * kelvin * kelvin * kelvin
        }
        m.fill(0)
        // Residuals r and Jacobian J; solve J·δ = −r.
        let airResidual = (airCapacity / dt) * (x[AIR]! - airCelsius) - heatToGas + flow * (x[AIR]! - ambient)
        let airDiagonal = airCapacity / dt + flow
        for (let f = 0; f < walls; f++) {
          const o = f * 7
          const column = columns[f]!
          let residual = column.diagonal * x[f]! - column.right - direct[f]!
          let diagonal = column.diagonal
          for (let j = 0; j < 5; j++) {
            if (j === f) continue
            const g = exchange[f * 5 + j]! * shade
            residual += g * (k4[f]! - k4[j]!)
            diagonal += g * k3[f]!
            m[o + j] = m[o + j]! - g * k3[j]!
          }
          const gas = flame * (f === VAULT ? areas[f]! : FLOOR_SEES * areas[f]!)
          const flowIn = film[f]! * (x[AIR]! - x[f]!) + gas * (k4[AIR]! - k4[f]!)
          residual -= flowIn
          diagonal += film[f]! + gas * k3[f]!
          m[o + f] = diagonal
          m[o + AIR] = -(film[f]! + gas * k3[AIR]!)
          m[o + 6] = -residual
          airResidual += flowIn
          airDiagonal += film[f]! + gas * k3[AIR]!
          m[AIR * 7 + f] = -(film[f]! + gas * k3[f]!)
        }
        if (isOpen) m[DOOR * 7 + DOOR] = 1
        m[AIR * 7 + AIR] = airDiagonal
        m[AIR * 7 + 6] = -airResidual
        const largest = solve6(m, x)
        if (largest < 1e-7) break
      }

      // Flows at the solution, moved exactly.
      for (let f = 0; f < 6; f++) {
        const kelvin = x[f]! + KELVIN
        k4[f] = SIGMA * kelvin * kelvin * kelvin * kelvin
      }
      gains.fill(0)
      let toAir = heatToGas - flow * (x[AIR]! - ambient)
      for (let f = 0; f < walls; f++) {
        let gain = direct[f]!
        for (let j = 0; j < 5; j++) if (j !== f) gain += exchange[f * 5 + j]! * shade * (k4[j]! - k4[f]!)
        const gas = flame * (f === VAULT ? areas[f]! : FLOOR_SEES * areas[f]!)
        const convection = film[f]! * (x[AIR]! - x[f]!) + gas * (k4[AIR]! - k4[f]!)
        gains[f] = gain + convection
        toAir -= convection
      }
      airCelsius += (dt * toAir) / airCapacity
      let escaped = flow * (x[AIR]! - ambient)
      if (isOpen) for (let f = 0; f < 4; f++) escaped += exchange[f * 5 + DOOR]! * shade * (k4[f]! - k4[DOOR]!)
      if (burning) flue += escaped * dt
      else lost += escaped * dt
      for (let f = 0; f < walls; f++) {
        columns[f]!.substitute(dt, x[f]!, gains[f]!)
        x[f] = columns[f]!.celsius[0]!
      }
      x[AIR] = airCelsius
      t += span
      steps++
    }
    t = until
    record(i, airCelsius)
  }

  for (const c of columns) lost += c.lost + c.steam
  const stored = store(airCelsius) - before
  // Relative to the heat that moved, and at least to one degree of the whole masonry, so that a day without fire has a scale too.
  const size = Math.max(
    fire,
    Math.abs(stored),
    Math.abs(lost),
    taken,
    columns.reduce((sum, c) => sum + c.capacity(), 0),
  )
  return {
    step: sample,
    raked: firing.burn,
    ready: firing.burn + firing.soak,
    floor,
    vault,
    air,
    baking,
    back,
    middle,
    mouth,
    held,
    underside,
    balance: {
      fire: fire / 1e6,
      flue: flue / 1e6,
      stored: stored / 1e6,
      lost: lost / 1e6,
      loads: taken / 1e6,
      error: Math.abs(fire - flue - lost - taken - stored) / size,
    },
    steps,
  }
}

/** The first span that holds a moment. A plain loop: a closure over the clock would put every step's figures on the heap. */
function spanAt<T extends Span>(spans: readonly T[], time: number): T | undefined {
  for (const span of spans) if (time > span.from && time < span.to) return span
  return undefined
}

/**
 * Solve a 6 × 6 system in place by Gaussian elimination with the diagonal as pivot (the matrix is diagonally dominant: every face
 * exchanges with others what it loses to them, and has a capacity besides), and add the solution to `x`.
 *
 * @returns the largest change
 */
function solve6(m: Float64Array, x: Float64Array): number {
  for (let c = 0; c < 5; c++) {
    const co = c * 7
    const pivot = m[co + c]!
    for (let r = c + 1; r < 6; r++) {
      const ro = r * 7
      const f = m[ro + c]! / pivot
      if (f === 0) continue
      for (let j = c + 1; j < 7; j++) m[ro + j] = m[ro + j]! - f * m[co + j]!
    }
  }
  let largest = 0
  for (let r = 5; r >= 0; r--) {
    const ro = r * 7
    let sum = m[ro + 6]!
    for (let j = r + 1; j < 6; j++) sum -= m[ro + j]! * m[j * 7 + 6]!
    const d = sum / m[ro + r]!
    m[ro + 6] = d
    const size = Math.abs(d)
    if (size > largest) largest = size
    x[r] = x[r]! + d
  }
  return largest
}
