import {levenbergMarquardt} from 'ml-levenberg-marquardt'
import type {Range} from '../lexicon/schema.js'
import {deviations, PRIOR, SPREAD} from './forecast.js'
import {ANY_COOK, type ArmCook, type Evidence, evidence} from './signs.js'
import {type Factors, OvenRuns, type Trace} from './simulate.js'
import type {Firing, OvenEvent, OvenParameters, OvenSpec, Reading} from './types.js'

/** Share of the heat above ambient by which the model itself may be off at one moment. */
const STRUCTURE = 0.012
/** And how much more so while faces are in the fire or have just left it, and for how long after raking (min). */
const STRUCTURE_HOT = 0.07
const SETTLING = 30
/** Residual, in standard deviations, at which a reading has lost half its weight (Cauchy loss). */
const DOUBTFUL = 2.5
/** No oven is further from its drawing than this, as the logarithm of a factor. */
const FURTHEST = 1.6
/** Step of the finite differences on the logarithms. */
const STEP = 0.06
const ROUNDS = 5
/** A reading this many standard deviations off, whose other scale is within `FITS`, may be °F written as °C or the other way round. */
const STRANGE = 2
const FITS = 1.3
/**
 * A reading this many standard deviations off, what is not known of the oven among them, is rather a slip than the oven's doing (of a normal,
 * one in two hundred lies as far off): it is hardly heeded until another within so many minutes of it lies half as far off on the same side.
 */
const ALONE = 2.8
const BORNE_OUT = 90
/** Times a reading's own error that it is then taken to have. */
const UNHEEDED = 60
/** How much less such a reading is heeded until the cook has said which it was. */
const ASKED = 15

export type Triple = [number, number, number]
export type Square = [Triple, Triple, Triple]

/** A reading beside what the fitted oven says. */
export interface WeighedReading {
  readonly reading: Reading
  readonly measured: number
  readonly expected: number
  /** Standard deviation of the reading, °C. */
  readonly sigma: number
  /** 1: believed; towards 0: kept, but hardly heeded. */
  readonly weight: number
  /** The scale that would fit, where the one written does not: to be asked about. */
  readonly perhaps?: '°C' | '°F'
}

export interface Calibration {
  readonly parameters: OvenParameters
  /** What changed, in plain sentences. */
  readonly said: readonly string[]
  readonly readings: readonly WeighedReading[]
  /** Simulations used. */
  readonly simulations: number
  /** What the readings alone say of the logarithms: information matrix and vector, for `learn`. */
  readonly information: Square
  readonly vector: Triple
}

export interface CalibrationInput {
  readonly firing: Firing
  readonly readings: readonly Reading[]
  readonly events?: readonly OvenEvent[]
  /** What was believed before: the drawing, or what earlier firings taught. */
  readonly prior?: OvenParameters
  readonly cook?: ArmCook
  /** Leave out the sentences, which cost two more simulations. */
  readonly silent?: boolean
  /** Where the search begins, as logarithms of the factors: near the answer it is sooner there. The prior where absent. */
  readonly from?: readonly number[]
  /** Simulations of this oven, where the caller has some already. */
  readonly runs?: OvenRuns
}

/** Inverse of a symmetric 3 × 3 matrix by its adjugate. */
export function invert3(m: Square): Square {
  const [[a, b, c], [d, e, f], [g, h, i]] = m
  const A = e * i - f * h
  const B = f * g - d * i
  const C = d * h - e * g
  const det = a * A + b * B + c * C
  return [
    [A / det, (c * h - b * i) / det, (b * f - c * e) / det],
    [B / det, (a * i - c * g) / det, (c * d - a * f) / det],
    [C / det, (b * g - a * h) / det, (a * e - b * d) / det],
  ]
}

/** Matrix times vector. */
export function times3(m: Square, v: readonly number[]): Triple {
  return m.map((row) => row[0] * v[0]! + row[1] * v[1]! + row[2] * v[2]!) as Triple
}

/** Means and covariance of the logarithms. */
export function logMoments(parameters: OvenParameters): {mean: Triple; covariance: Square} {
  const sigma = deviations(parameters)
  const mean = [parameters.stored.likely, parameters.loss.likely, parameters.coupling.likely].map(Math.log) as Triple
  const covariance = sigma.map((s, i) =>
    sigma.map((t, j) => s * t * (i === j ? 1 : (parameters.correlation?.[i]?.[j] ?? 0))),
  ) as Square
  for (let i = 0; i < 3; i++) covariance[i]![i] = Math.max(covariance[i]![i]!, 1e-6)
  return {mean, covariance}
}

/** Parameters with their ranges from means and covariance of the logarithms. */
export function fromLogMoments(mean: readonly number[], covariance: Square): OvenParameters {
  const sigma = covariance.map((row, i) => Math.sqrt(Math.max(row[i]!, 0))) as Triple
  const range = (i: number): Range => ({
    low: Math.exp(mean[i]! - SPREAD * sigma[i]!),
    likely: Math.exp(mean[i]!),
    high: Math.exp(mean[i]! + SPREAD * sigma[i]!),
  })
  return {
    stored: range(0),
    loss: range(1),
    coupling: range(2),
    correlation: covariance.map((row, i) => row.map((v, j) => (sigma[i]! && sigma[j]! ? v / (sigma[i]! * sigma[j]!) : 0))),
  }
}

function factorsOf(p: readonly number[]): Factors {
  return {stored: Math.exp(p[0]!), loss: Math.exp(p[1]!), coupling: Math.exp(p[2]!)}
}

function curveOf(trace: Trace, of: Evidence['of']): Float64Array {
  return of === 'floor' ? trace.floor : of === 'vault' ? trace.vault : trace.baking
}

/** Value of a curve between samples. */
export function sampleAt(curve: ArrayLike<number>, step: number, minutes: number): number {
  const x = Math.min(Math.max(minutes / step, 0), curve.length - 1)
  const i = Math.min(Math.floor(x), curve.length - 2)
  return i < 0 ? curve[0]! : curve[i]! + (curve[i + 1]! - curve[i]!) * (x - i)
}

/**
 * Correct an oven's parameters by readings.
 *
 * Bayesian weighted least squares on the logarithms of the three factors: the prior is a normal, each reading has the error of its
 * kind, and a Cauchy loss takes weight from readings that contradict the rest. The simulation is linearised at the best point so far
 * (four simulations), the robust problem is solved on that line by Levenberg–Marquardt, and the result is simulated again, until it
 * stands still: some twenty simulations. The posterior is the normal at the optimum.
 *
 * @returns the parameters with their ranges, every reading with its weight, and what changed in words
 */
export function calibrate(oven: OvenSpec, input: CalibrationInput): Calibration {
  const prior = input.prior ?? PRIOR
  const {mean, covariance} = logMoments(prior)
  const precision = invert3(covariance)
  const used = input.readings.flatMap((reading) => {
    const e = reading.minutes >= 0 ? evidence(reading.kind, reading.value, input.cook ?? ANY_COOK) : null
    return e ? [{reading, e}] : []
  })
  const zero: Square = [
    [0, 0, 0],
    [0, 0, 0],
    [0, 0, 0],
  ]
  if (used.length === 0) {
    return {parameters: prior, said: [], readings: [], simulations: 0, information: zero, vector: [0, 0, 0]}
  }
  const last = Math.max(...used.map((u) => u.reading.minutes))
  const hours = Math.ceil((last + 5) / 5) / 12
  const runs = input.runs ?? new OvenRuns(oven, 0)
  let simulations = 0
  const predict = (p: readonly number[]): number[] => {
    simulations++
    const trace = runs.simulate({
      firing: input.firing,
      factors: factorsOf(p),
      events: input.events ?? [],
      hours,
      stepScale: COARSE,
    })
    return used.map(({reading, e}) => sampleAt(curveOf(trace, e.of), trace.step, reading.minutes))
  }
  const y = used.map(({e}) => e.celsius)
  const sigma = used.map(({e, reading}) => {
    const settling = Math.exp(-Math.max(reading.minutes - input.firing.burn, 0) / SETTLING)
    return Math.hypot(e.sigma, (STRUCTURE + STRUCTURE_HOT * settling) * Math.max(e.celsius - oven.ambient, 0))
  })

  /** −2 log posterior with the Cauchy loss. */
  const cost = (p: readonly number[], f: readonly number[]): number => {
    let sum = 0
    for (let i = 0; i < y.length; i++) {
      const r = (y[i]! - f[i]!) / sigma[i]!
      sum += DOUBTFUL * DOUBTFUL * Math.log1p((r / DOUBTFUL) ** 2)
    }
    const d = p.map((v, i) => v - mean[i]!)
    const w = times3(precision, d)
    return sum + d[0]! * w[0] + d[1]! * w[1] + d[2]! * w[2]
  }

  let p: number[] = [...(input.from ?? mean)]
  let f = predict(p)
  let best = cost(p, f)
  let jacobian: number[][] = []
  let asked: ReadonlyArray<'°C' | '°F' | null> = []
  let alone: readonly boolean[] = []
  for (let round = 0; round < ROUNDS; round++) {
    jacobian = p.map((v, k) => {
      const moved = [...p]
      moved[k] = v + STEP
      return predict(moved).map((value, i) => (value - f[i]!) / STEP)
    })
    if (round === 0) {
      const spread = used.map((_, i) => spreadOf(jacobian, i))
      const off = spread.map((s, i) => (y[i]! - f[i]!) / s)
      asked = used.map(({reading}, i) => otherScale(reading, y[i]!, f[i]!, spread[i]!))
      alone = used.map(
        ({reading}, i) =>
          asked[i] === null &&
          Math.abs(off[i]!) >= ALONE &&
          !used.some(
            (other, j) =>
              j !== i &&
              Math.abs(other.reading.minutes - reading.minutes) <= BORNE_OUT &&
              off[j]! * Math.sign(off[i]!) >= ALONE / 2,
          ),
      )
      for (let i = 0; i < used.length; i++) sigma[i] = sigma[i]! * widened(i)
      best = cost(p, f)
    }
    const next = solveLine(p, f, jacobian)
    let stride = 1
    let moved = false
    while (stride > 0.2) {
      const trial = p.map((v, k) => v + stride * (next[k]! - v))
      const g = predict(trial)
      const c = cost(trial, g)
      if (c < best + 1e-9) {
        moved = best - c > 0.02
        p = trial
        f = g
        best = c
        break
      }
      stride /= 2.5
    }
    if (!moved) break
  }

  /** Times its own error that a reading is taken to have, for being asked about or alone. */
  function widened(i: number): number {
    return asked[i] ? ASKED : alone[i] ? UNHEEDED : 1
  }

  /** How far a reading may be off what was expected, °C: its own error, and what is not known of the oven. */
  function spreadOf(slope: readonly (readonly number[])[], i: number): number {
    const j = [0, 1, 2].map((k) => slope[k]![i]!)
    const c = times3(covariance, j)
    return Math.hypot(sigma[i]!, Math.sqrt(Math.max(j[0]! * c[0] + j[1]! * c[1] + j[2]! * c[2], 0)))
  }

  /** The scale in which a reading would fit what was expected, where it does not fit in its own. */
  function otherScale(reading: Reading, value: number, expected: number, spread: number): '°C' | '°F' | null {
    if (reading.kind !== 'floor' && reading.kind !== 'vault' && reading.kind !== 'air' && reading.kind !== 'probe') return null
    const off = (t: number): number => Math.abs(t - expected) / spread
    if (off(value) < STRANGE) return null
    if (off((value - 32) / 1.8) < FITS) return '°F'
    return off(value * 1.8 + 32) < FITS ? '°C' : null
  }

  /** Minimum on the linearised model, robustly: reweighted, each time by the library's Levenberg–Marquardt. */
  function solveLine(at: readonly number[], value: readonly number[], slope: readonly (readonly number[])[]): number[] {
    const root = cholesky(precision)
    let q: number[] = [...at]
    for (let pass = 0; pass < 6; pass++) {
      const weights = y.map((v, i) => {
        const line = value[i]! + slope.reduce((s, row, k) => s + row[i]! * (q[k]! - at[k]!), 0)
        const r = (v - line) / sigma[i]!
        return pass === 0 ? 1 : 1 / (1 + (r / DOUBTFUL) ** 2)
      })
      const scale = weights.map((w, i) => Math.sqrt(w) / sigma[i]!)
      const n = y.length
      // Rows n…n+2 hold the prior: Lᵀ(p − mean) ought to be 0.
      const x = Array.from({length: n + 3}, (_, i) => i)
      const target = x.map((i) => (i < n ? y[i]! * scale[i]! : 0))
      const model =
        (params: number[]) =>
        (i: number): number =>
          i < n
            ? scale[i]! * (value[i]! + slope.reduce((s, row, k) => s + row[i]! * (params[k]! - at[k]!), 0))
            : [0, 1, 2].reduce((s, k) => s + root[k]![i - n]! * (params[k]! - mean[k]!), 0)
      const gradient = () => (i: number) => [0, 1, 2].map((k) => (i < n ? scale[i]! * slope[k]![i]! : root[k]![i - n]!))
      const solved = levenbergMarquardt({x, y: target}, model, {
        initialValues: q,
        jacobianFunction: gradient,
        damping: 1e-4,
        maxIterations: 4,
        minValues: [-FURTHEST, -FURTHEST, -FURTHEST],
        maxValues: [FURTHEST, FURTHEST, FURTHEST],
      })
      const change = Math.max(...solved.parameterValues.map((v, k) => Math.abs(v - q[k]!)))
      q = solved.parameterValues
      if (pass > 0 && change < 1e-3) break
    }
    return q
  }

  const information: Square = [
    [0, 0, 0],
    [0, 0, 0],
    [0, 0, 0],
  ]
  const vector: Triple = [0, 0, 0]
  const weighed: WeighedReading[] = used.map(({reading}, i) => {
    const r = (y[i]! - f[i]!) / sigma[i]!
    const weight = 1 / (1 + (r / DOUBTFUL) ** 2)
    const w = weight / sigma[i]! ** 2
    const line = jacobian.reduce((s, row, k) => s + row[i]! * p[k]!, 0)
    for (let a = 0; a < 3; a++) {
      vector[a] = vector[a]! + w * jacobian[a]![i]! * (y[i]! - f[i]! + line)
      for (let b = 0; b < 3; b++) information[a]![b] = information[a]![b]! + w * jacobian[a]![i]! * jacobian[b]![i]!
    }
    // Asked only if the other scale still fits once the other readings have spoken; else it is a bad reading like any other.
    const own = sigma[i]! / widened(i)
    const other = asked[i] === '°F' ? (y[i]! - 32) / 1.8 : y[i]! * 1.8 + 32
    const perhaps = asked[i] && Math.abs(other - f[i]!) < Math.max(2.5 * own, 0.1 * f[i]!) ? asked[i] : null
    const heeded = widened(i) > 1 ? 1 / (1 + ((y[i]! - f[i]!) / own / DOUBTFUL) ** 2) : weight
    return {reading, measured: y[i]!, expected: f[i]!, sigma: own, weight: heeded, ...(perhaps ? {perhaps} : {})}
  })
  // Where readings scatter more than their kinds should, they say less: the information shrinks by the reduced χ².
  const freedom = weighed.length - 3
  const chi = weighed.reduce((s, r, i) => s + (widened(i) > 1 ? 0 : r.weight * ((r.measured - r.expected) / r.sigma) ** 2), 0)
  const excess = freedom > 0 ? Math.max(1, chi / freedom) : 1
  for (let a = 0; a < 3; a++) {
    vector[a] = vector[a]! / excess
    for (let b = 0; b < 3; b++) information[a]![b] = information[a]![b]! / excess
  }
  const posterior = invert3(information.map((row, a) => row.map((v, b) => v + precision[a]![b]!)) as Square)
  const parameters = fromLogMoments(p, posterior)
  const said = input.silent ? {sentences: [], simulations: 0} : sayChange(runs, input, prior, parameters, weighed)
  return {parameters, said: said.sentences, readings: weighed, simulations: simulations + said.simulations, information, vector}
}

/** Lower triangle L with L·Lᵀ = m. */
function cholesky(m: Square): number[][] {
  const l = [
    [0, 0, 0],
    [0, 0, 0],
    [0, 0, 0],
  ]
  for (let i = 0; i < 3; i++)
    for (let j = 0; j <= i; j++) {
      let sum = m[i]![j]!
      for (let k = 0; k < j; k++) sum -= l[i]![k]! * l[j]![k]!
      l[i]![j] = i === j ? Math.sqrt(Math.max(sum, 1e-12)) : sum / l[j]![j]!
    }
  return l
}

/** Steps this much longer than usual move a curve by less than 1 °C once the coals are out, far less than any reading is good for. */
export const COARSE = 2

/** Baking heat above which an oven is hot, °C. */
const HOT = 205

/** What changed, in sentences for a cook. */
function sayChange(
  runs: OvenRuns,
  input: CalibrationInput,
  prior: OvenParameters,
  after: OvenParameters,
  readings: readonly WeighedReading[],
): {sentences: string[]; simulations: number} {
  const sentences: string[] = []
  const change = (key: 'stored' | 'loss' | 'coupling'): number => after[key].likely / prior[key].likely - 1
  const percent = (x: number): string => `${Math.max(5, 5 * Math.round(Math.abs(x) * 20))} %`
  const before = prior.correlation ? 'we thought' : 'its drawing suggests'
  if (Math.abs(change('stored')) > 0.05) {
    const more = change('stored') > 0
    sentences.push(`Your oven took ${percent(change('stored'))} ${more ? 'more' : 'less'} heat from its fire than ${before}.`)
  }
  if (Math.abs(change('loss')) > 0.07) {
    const faster = change('loss') > 0
    sentences.push(`It loses heat ${percent(change('loss'))} ${faster ? 'faster' : 'more slowly'} than ${before}.`)
  }
  if (Math.abs(change('coupling')) > 0.08) {
    sentences.push(
      change('coupling') > 0
        ? 'Heat passes between its faces and the depth of the brick more easily than expected: it evens out sooner.'
        : 'Heat passes between its faces and the depth of the brick less easily than expected: the faces cool sooner and the depth gives its heat later.',
    )
  }
  const hot = (p: OvenParameters): number => {
    const trace = runs.simulate({
      firing: input.firing,
      events: input.events ?? [],
      factors: {stored: p.stored.likely, loss: p.loss.likely, coupling: p.coupling.likely},
    })
    let minutes = 0
    for (let i = Math.ceil(trace.ready / trace.step); i < trace.baking.length; i++)
      if (trace.baking[i]! >= HOT) minutes += trace.step
    return minutes
  }
  const difference = hot(after) - hot(prior)
  if (Math.abs(difference) >= 10) {
    const size = Math.abs(difference)
    const shown = size >= 120 ? `${Math.round(size / 30) / 2} h` : `${5 * Math.round(size / 5)} min`
    const much = `about ${shown} ${difference > 0 ? 'more' : 'less'} hot time (above 205 °C, 400 °F)`
    // Each change may be too small to be told, and all of them together not.
    sentences.push(sentences.length > 0 ? `That is ${much}.` : `The oven gives ${much} than was expected.`)
  }
  if (sentences.length === 0) sentences.push('The readings agree with what was expected; the range is narrower.')
  for (const r of readings) {
    const off = r.measured - r.expected
    if (r.perhaps) {
      // "°F" fits: the number was written as °C. "°C" fits: it was written as °F.
      const number = Math.round(r.perhaps === '°F' ? r.measured : r.measured * 1.8 + 32)
      const written = r.perhaps === '°F' ? '°C' : '°F'
      sentences.push(
        `Was ${r.reading.kind} ${number} ${written} meant as ${number} ${r.perhaps}? That would fit. It is kept as written and hardly heeded; correct the log if so.`,
      )
      continue
    }
    if (Math.abs(off) < 2.5 * r.sigma) continue
    const what =
      r.reading.kind === 'arm' ? `an arm count of ${r.reading.value}` : `${r.reading.kind} at ${Math.round(r.measured)} °C`
    const [unfit, than] =
      readings.length === 1
        ? ['The reading does not fit what is believed of this oven', 'what it should have']
        : ['One reading does not fit the others', 'the rest']
    sentences.push(
      `${unfit} (${what}, ${Math.round(Math.abs(off))} °C ${off > 0 ? 'above' : 'below'} ${than}): it is kept, but counts for little. Read it again if you can.`,
    )
  }
  return {sentences, simulations: 2}
}
