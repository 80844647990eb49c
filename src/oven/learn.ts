import type {Range} from '../lexicon/schema.js'
import {COARSE, calibrate, fromLogMoments, invert3, logMoments, type Square, sampleAt, type Triple, times3} from './calibrate.js'
import {burningRate} from './fire.js'
import {PRIOR, SPREAD, usualFiring, usualSoak} from './forecast.js'
import {floorArea} from './geometry.js'
import type {FiringLog, LogRow} from './log.js'
import {lostIn} from './log-counts.js'
import {outcomeOf} from './log-outcome.js'
import {type ArmCook, type ArmPair, calibrateArm, evidence} from './signs.js'
import {OvenRuns} from './simulate.js'
import type {Firing, OvenEvent, OvenParameters, OvenSpec, PastReading, Reading} from './types.js'

/**
 * What past firings teach: the oven's own parameters, shrunk towards the drawing; the cook's own arm count; and how much longer or
 * shorter each dish takes than its receipt says.
 */

/** How far one firing differs from the next in the same oven, as standard deviations of the logarithms: weighed wood, unweighed wood. */
const BETWEEN: Triple = [0.12, 0.08, 0.06]
const UNWEIGHED = 0.5
/**
 * A load of which only the name is known is taken for as much dough as covers half the floor, 10 kg on each square metre of the whole, with 12 % of it lost as
 * steam in 50 minutes (from memory: 18 to 22 kg of dough on each square metre of a floor filled with loaves).
 */
const UNKNOWN = {perArea: 10, water: 0.12, bake: 50} as const
/**
 * Cooling of which it is not known whether loads or walls took the heat says that much less of the loss: standard deviation of its logarithm for a log with an
 * unknown load, and for a table that tells of no loads at all (a floor of bread cools an oven as a third more loss would).
 */
const LOADS_UNKNOWN = 0.25
const LOADS_UNTOLD = 0.35
/** Minutes that the mouth is open to set in or draw a load, where the log does not say. Common practice, no source. */
const HANDLING = 2
/** While it bakes a load gives off its water; what stays in longer than this many times its bake only waits. */
const STAYS = 1.5
/** A dish's single note tells this much of its true correction, min (one standard deviation), and how far corrections range. */
const NOTE = 6
const DISH = 10

/** One past firing, ready to be compared with the model. */
export interface PastFiring {
  readonly date: string
  readonly firing: Firing
  /** False where the wood was not weighed: the fire's size is then free. */
  readonly weighed: boolean
  readonly readings: readonly Reading[]
  readonly events: readonly OvenEvent[]
  /** How far the loads are known: as logged, one of them by its name only, or not told of. */
  readonly loads: 'known' | 'guessed' | 'untold'
}

/** How a dish's time differs from the receipt. */
export interface DishCorrection {
  readonly dish: string
  /** Minutes to add to the bake. */
  readonly minutes: Range
  readonly notes: number
}

export interface Learnt {
  /** The oven's parameters for a new firing: the prior of today's calibration. */
  readonly parameters: OvenParameters
  readonly cook: ArmCook
  readonly dishes: readonly DishCorrection[]
  readonly firings: number
  /** In plain sentences. */
  readonly said: readonly string[]
}

export interface LearnInput {
  readonly logs?: readonly FiringLog[]
  /** The table in `oven.md`. */
  readonly past?: readonly PastReading[]
  /** What a dish set in takes from the oven, where the caller knows it. */
  readonly loadOf?: LoadOf
}

/**
 * Mass and water lost (kg), bake (min) of a dish that a log says was set in, from its name and the words beside it ("8 loaves"); null where it is not known, and a
 * stated default is taken.
 */
export type LoadOf = (dish: string, text: string) => {readonly mass: number; readonly water: number; readonly bake: number} | null

/**
 * A log as a past firing.
 *
 * @returns null where it lacks the times or has no reading
 */
export function pastFiring(oven: OvenSpec, log: FiringLog, loadOf?: LoadOf): PastFiring | null {
  if (log.lit === null || log.raked === null || log.readings.length === 0) return null
  const burn = log.raked - log.lit
  if (burn < 5 || burn > 1440) return null
  let guessed = false
  const lit = log.lit
  const fires = (log.further ?? []).flatMap(({lit: at, raked, wood}): OvenEvent[] => {
    if (raked === null) return []
    const burning = Math.max(1, raked - at)
    return [
      {
        minutes: at - lit,
        kind: 'fire',
        firing: firingOf(oven, burning, wood),
      },
    ]
  })
  // Of a fire that the log does not see raked out nobody knows how long it burned, nor what the oven had from then on.
  const until = log.further?.find(({raked}) => raked === null)?.lit ?? Number.POSITIVE_INFINITY
  const events: OvenEvent[] = [...log.doors, ...fires]
  log.rows.forEach((row, i) => {
    if (!row.dish || row.elapsed === null || row.elapsed <= burn) return
    if ((row.what !== 'set in' && row.what !== 'drawn') || row.count === 0) return
    events.push({minutes: row.elapsed, kind: 'door', open: HANDLING})
    if (row.what === 'drawn') return
    const words = `${row.text} ${row.note}`
    const known = loadOf?.(row.dish, lostIn(words)?.rest ?? words) ?? null
    guessed ||= known === null
    const load = known ?? unknownLoad(oven)
    const drawn = log.rows.slice(i + 1).find((r) => r.what === 'drawn' && r.dish === row.dish)?.elapsed
    const bake = drawn === undefined || drawn === null ? load.bake : Math.min(drawn - row.elapsed, STAYS * load.bake)
    events.push({minutes: row.elapsed, kind: 'load', ...load, bake: Math.max(bake, 5)})
  })
  return {
    date: log.date,
    firing: firingOf(oven, burn, log.wood),
    weighed: log.wood !== null,
    readings: log.readings.filter(({minutes}) => minutes < until - lit),
    events,
    loads: guessed ? 'guessed' : 'known',
  }
}

/** A fire that burned so many minutes, its wood as usual where it was not weighed. */
export function firingOf(oven: OvenSpec, burn: number, wood: number | null): Firing {
  const usual = usualFiring(oven, burn)
  return {...usual, wood: wood ?? usual.wood}
}

function unknownLoad(oven: OvenSpec): {mass: number; water: number; bake: number} {
  const mass = UNKNOWN.perArea * floorArea(oven.floor)
  return {mass, water: UNKNOWN.water * mass, bake: UNKNOWN.bake}
}

/**
 * The readings of `oven.md`'s table, a firing a date. Its fire is not known; it is taken to be as long as brings the model to the first
 * reading, and its heat is left free.
 */
export function pastFirings(oven: OvenSpec, past: readonly PastReading[], runs = new OvenRuns(oven, 0)): PastFiring[] {
  const dates = [...new Set(past.map((p) => p.date))]
  return dates.flatMap((date): PastFiring[] => {
    const rows = past.filter((p) => p.date === date)
    const soak = usualSoak(oven)
    const rate = burningRate(oven) / 60
    const thermometers = rows.filter((r) => typeof r.value === 'number' && r.kind !== 'arm').sort((a, b) => a.hours - b.hours)
    let burn = 120
    const first = thermometers[0]
    const seen = first ? evidence(first.kind, first.value) : null
    if (first && seen) {
      const reach = (minutes: number): number => {
        const at = minutes + first.hours * 60
        const trace = runs.simulate({
          firing: {wood: rate * minutes, burn: minutes, soak},
          hours: Math.ceil(at / 5 + 1) / 12,
          stepScale: 2 * COARSE,
        })
        const curve = seen.of === 'floor' ? trace.floor : seen.of === 'vault' ? trace.vault : trace.baking
        return sampleAt(curve, trace.step, at) - oven.ambient
      }
      // Heat grows close to the square root of the burning time, so a few steps of the secant on logarithms are near enough.
      const wanted = Math.max(seen.celsius - oven.ambient, 1)
      for (let i = 0; i < 3; i++)
        burn = Math.round(Math.min(Math.max(burn * (wanted / Math.max(reach(burn), 1)) ** 1.5, 20), 600))
    }
    const readings = rows.map((r): Reading => ({minutes: burn + r.hours * 60, kind: r.kind, value: r.value}))
    return [{date, firing: {wood: rate * burn, burn, soak}, weighed: false, readings, events: [], loads: 'untold'}]
  })
}

/**
 * Parameters from past firings: each gives an information matrix; that of one firing is widened by how firings differ, all are added to
 * the drawing's, and the result is widened once more for the next firing (a normal random-effects model; Gelman et al., Bayesian Data
 * Analysis, ch. 5). Few or vague firings leave it at the drawing.
 */
export function pool(
  oven: OvenSpec,
  firings: readonly PastFiring[],
  cook?: ArmCook,
  runs = new OvenRuns(oven, 0),
): OvenParameters {
  if (firings.length === 0) return PRIOR
  const {mean, covariance} = logMoments(PRIOR)
  const precision = invert3(covariance)
  const sum = precision.map((row) => [...row]) as Square
  const vector = times3(precision, mean)
  let from: readonly number[] = mean
  for (const f of firings) {
    const wide: OvenParameters = f.weighed ? PRIOR : fromLogMoments(mean, widen(covariance, [UNWEIGHED, 0, 0]))
    const one = calibrate(oven, {...f, prior: wide, silent: true, from, runs, ...(cook ? {cook} : {})})
    from = logMoments(one.parameters).mean
    const untold = f.loads === 'known' ? 0 : f.loads === 'guessed' ? LOADS_UNKNOWN : LOADS_UNTOLD
    const between: Triple = [f.weighed ? BETWEEN[0] : UNWEIGHED, Math.hypot(BETWEEN[1], untold), BETWEEN[2]]
    // (I + J·T)⁻¹ applied to J and b: information about the oven once this firing's own whim is integrated out.
    const mix = one.information.map((row, a) => row.map((v, b) => (a === b ? 1 : 0) + v * between[b]! ** 2)) as Square
    const shrink = invert3(mix)
    for (let a = 0; a < 3; a++) {
      for (let b = 0; b < 3; b++)
        sum[a]![b] = sum[a]![b]! + [0, 1, 2].reduce((s, k) => s + shrink[a]![k]! * one.information[k]![b]!, 0)
      vector[a] = vector[a]! + [0, 1, 2].reduce((s, k) => s + shrink[a]![k]! * one.vector[k]!, 0)
    }
  }
  const posterior = invert3(sum.map((row, a) => row.map((v, b) => (v + sum[b]![a]!) / 2)) as Square)
  return fromLogMoments(times3(posterior, vector), widen(posterior, BETWEEN))
}

function widen(covariance: Square, by: Triple): Square {
  return covariance.map((row, a) => row.map((v, b) => (a === b ? v + by[a]! ** 2 : v))) as Square
}

/** Arm counts of a log paired with thermometer readings of the same half hour. */
export function armPairs(logs: readonly FiringLog[]): ArmPair[] {
  return logs.flatMap((log) => {
    const celsius = log.readings.filter((r) => typeof r.value === 'number' && r.kind !== 'arm')
    return log.readings.flatMap((arm): ArmPair[] => {
      if (arm.kind !== 'arm' || typeof arm.value !== 'number') return []
      const near = celsius
        .map((r) => ({r, gap: Math.abs(r.minutes - arm.minutes)}))
        .filter((x) => x.gap <= 15)
        .sort((a, b) => a.gap - b.gap)[0]
      return near ? [{count: arm.value, celsius: near.r.value as number}] : []
    })
  })
}

/**
 * Corrections to the time of each dish from "drawn N min late" or "early". Every dish begins at none, ± 10 min; each note has a scatter
 * of 6 min, and a dish drawn without remark counts as right. What is said of how it came out makes a note a bound: burnt or too dark, it
 * wants no longer than it had; raw or pale, no shorter. A bound counts only against notes that say otherwise. What was late for a cause that
 * is no matter of doneness, or burnt without and raw within, says nothing of the time.
 */
export function dishCorrections(logs: readonly FiringLog[]): DishCorrection[] {
  const drawn = new Map<string, LogRow[]>()
  for (const log of logs)
    for (const row of log.rows) if (row.what === 'drawn' && row.dish) drawn.set(row.dish, [...(drawn.get(row.dish) ?? []), row])
  return [...drawn].flatMap(([dish, rows]): DishCorrection[] => {
    const told = rows.map((row) => ({off: row.off ?? 0, outcome: outcomeOf(row)}))
    const offs = told.flatMap(({off, outcome}) => (outcome === 'plain' || (outcome === 'other cause' && off === 0) ? [off] : []))
    const likely = (): number => offs.reduce((a, b) => a + b, 0) / NOTE ** 2 / weightOf(offs.length)
    for (const {off, outcome} of told)
      if ((outcome === 'overdone' && likely() > off) || (outcome === 'underdone' && likely() < off)) offs.push(off)
    if (offs.length === 0) return []
    const by = likely()
    const sigma = Math.sqrt(1 / weightOf(offs.length))
    return [{dish, minutes: {low: by - SPREAD * sigma, likely: by, high: by + SPREAD * sigma}, notes: offs.length}]
  })
}

/** What so many notes weigh with what is known of any dish, 1/min². */
const weightOf = (notes: number): number => 1 / DISH ** 2 + notes / NOTE ** 2

/**
 * Everything that the logs and the table of `oven.md` teach. With neither it is the drawing, any cook's arm and no corrections.
 */
export function learn(oven: OvenSpec, input: LearnInput): Learnt {
  const logs = input.logs ?? []
  const runs = new OvenRuns(oven, 0)
  const pairs = armPairs(logs)
  const cook = calibrateArm(pairs)
  const firings = [
    ...logs.flatMap((log) => pastFiring(oven, log, input.loadOf) ?? []),
    ...pastFirings(oven, input.past ?? [], runs),
  ].filter((f) => f.readings.length > 0)
  const parameters = pool(oven, firings, cook, runs)
  const dishes = dishCorrections(logs)
  const said: string[] = []
  if (firings.length > 0) {
    const many = firings.length === 1 ? 'One past firing' : `${firings.length} past firings`
    const percent = (x: number): string => `${Math.round(Math.abs(x - 1) * 100)} %`
    const parts: string[] = []
    if (Math.abs(parameters.stored.likely - 1) > 0.04)
      parts.push(
        `takes ${percent(parameters.stored.likely)} ${parameters.stored.likely > 1 ? 'more' : 'less'} heat from its fire`,
      )
    if (Math.abs(parameters.loss.likely - 1) > 0.05)
      parts.push(`loses heat ${percent(parameters.loss.likely)} ${parameters.loss.likely > 1 ? 'faster' : 'more slowly'}`)
    said.push(
      parts.length > 0
        ? `${many}: this oven ${parts.join(' and ')} than its drawing suggests.`
        : `${many}: this oven does as its drawing suggests.`,
    )
  }
  if (cook.pairs > 0) {
    said.push(
      `Arm count: ${cook.pairs} ${cook.pairs === 1 ? 'pair' : 'pairs'} with a thermometer put one count at ${cook.secondsPerCount.likely.toFixed(1)} s.`,
    )
  }
  for (const d of dishes) {
    const m = Math.round(d.minutes.likely)
    if (Math.abs(m) >= 3)
      said.push(
        `${d.dish}: allow ${Math.abs(m)} min ${m > 0 ? 'more' : 'less'} than the receipt (${d.notes} ${d.notes === 1 ? 'note' : 'notes'}).`,
      )
  }
  return {parameters, cook, dishes, firings: firings.length, said}
}
