import {wheresOf} from './choices.js'
import {type Curve, doseNeeded, mostDose, whereIndex} from './curve.js'
import type {FloorGrid} from './floor-grid.js'
import {keptWarm, staysIn} from './keeps.js'
import {dearFrom, feedsOf, type Job, shutTicks} from './model.js'
import {rules} from './rules.js'
import {blocks, bodyOf, gap} from './seats.js'

/**
 * The figures of the jobs that a layout reads, a row of numbers each, one number a job: jobs and dishes come in many shapes, and V8 throws
 * away what it compiled for one when it meets another.
 */

/** How far inside its limits a layout is to keep each dish. */
export interface Margins {
  /** °C kept inside a dish's limits, and above its lower one. */
  readonly margin: number
  readonly inHand: number
  readonly marginDose: number
  /** The same beyond it for what stays in the falling oven. */
  readonly inHandDose: number
  /** Each job stands where it did in the plan being followed. */
  readonly asPlaced?: boolean
}

/** °C, °C·min, m² and minutes. */
export interface JobFigures {
  /** Jobs that are in the oven already, which can only be drawn. */
  readonly fixed: Uint8Array
  /** The dish of which each job is a part. */
  readonly dishOf: readonly string[]
  /** When each job was to be set in and drawn, min after midnight, in a plan that was being followed. */
  readonly was: readonly ({readonly at: number; readonly draw: number} | undefined)[]
  /** True where some job has a place in such a plan. */
  readonly again: boolean
  /** The parts of the floor on which each may stand. */
  readonly wheres: readonly (readonly number[])[]
  /** A part's temperature from the mean's: four of either a job, the last for what stands across. */
  readonly scale: Float64Array
  readonly shift: Float64Array
  /** By how much its hottest part is hotter than its coolest, as a share of the mean over the air. */
  readonly hotter: Float64Array
  readonly ambient: number
  /** The dose it must have, with what is in hand; the same with nothing in hand; and with no margin. */
  readonly goal: Float64Array
  readonly leastGoal: Float64Array
  readonly needed: Float64Array
  /** The dose it should have: no more than it needs, unless its limits are eased. */
  readonly wanted: Float64Array
  /** The most it may have. */
  readonly longest: Float64Array
  /** Heats between which it may be set in, with what is in hand and, at the low end, without; and the best. */
  readonly low: Float64Array
  readonly lowest: Float64Array
  readonly high: Float64Array
  readonly best: Float64Array
  /** The least when it is drawn, and what is kept above that. */
  readonly end: Float64Array
  readonly endMargin: number
  /** Heat above which it bakes. */
  readonly done: Float64Array
  /** Minutes for which a heat that is not its best counts. */
  readonly misfit: Float64Array
  /** When each job's dough is fit to be set in, on a day that has begun. */
  readonly risen: readonly Job['risen'][]
  /** Clock minutes at which it is wanted. */
  readonly due: Float64Array
  /** Clock minutes before which what is wanted hot is drawn too soon. */
  readonly hotFrom: Float64Array
  /** Minutes late beyond which that is dearer (`dearFrom`). */
  readonly bears: Float64Array
  /** Of how much weight it is that it is not left out. */
  readonly worth: Float64Array
  /** What stays in the falling oven (`staysIn`). */
  readonly stays: Uint8Array
  /** What stays and may be drawn with less than its dose, which then has its price. */
  readonly scant: Uint8Array
  /** What may not stand too cool for long (`keptWarm`). */
  readonly food: Uint8Array
  readonly area: Float64Array
  readonly handling: Float64Array
  /** Jobs of which a receipt wants the door kept shut after they are set in, and of each job for how many ticks. */
  readonly mindful: readonly number[]
  readonly shut: Int32Array
  /** Ticks for which each is made up right before it is set in. */
  readonly making: Int32Array
  /** Of what is still to be set in: what wants falling heat from very hot, and white bread and pies (`rules.settleIn`). */
  readonly falls: readonly number[]
  readonly crusts: readonly number[]
  /** For each job the others that stand in its way out, all of them in the oven already; and those that have any. */
  readonly inFront: readonly (readonly number[])[]
  readonly behind: readonly number[]
}

/** The figures of some jobs on an oven's floor, for a curve as it is without their loads. */
export function jobFigures(jobs: readonly Job[], grid: FloorGrid, curve: Curve, margins: Margins): JobFigures {
  const n = jobs.length
  const make = (f: (job: Job) => number): Float64Array => Float64Array.from(jobs, f)
  const slack = (job: Job, celsius: number): number =>
    Math.min(celsius, Math.max(0, (job.dish.need.startHigh - job.dish.need.startLow) / 4))
  const needed = make((j) => doseNeeded(j.dish.need))
  const mean = jobs.reduce((sum, j) => sum + feedsOf(j), 0) / Math.max(1, n)
  const stays = Uint8Array.from(jobs, (j) => (staysIn(j.dish.need) ? 1 : 0))
  const leastGoal = needed.map((dose) => dose * (1 + margins.marginDose))
  const shut = Int32Array.from(jobs, shutTicks)
  const ofOrder = (order: number): number[] => jobs.flatMap((j, u) => (j.since === null && j.order === order ? [u] : []))
  const {scale, shift, hotter} = partsOf(jobs, curve, margins)
  const others = inFront(jobs, grid)
  return {
    fixed: Uint8Array.from(jobs, (j) => (j.since === null ? 0 : 1)),
    dishOf: jobs.map((j) => j.dish.id),
    was: jobs.map((j) => j.was),
    again: jobs.some((j) => j.was),
    wheres: jobs.map((j) => wheresOf(j, grid)),
    scale,
    shift,
    hotter,
    ambient: curve.ambient,
    goal: leastGoal.map((dose, u) => dose + (stays[u] ? margins.inHandDose * needed[u]! : 0)),
    leastGoal,
    needed,
    // Aimed at alike in the morning and once the day has begun, or what is kept would be drawn the sooner for it.
    wanted: make((j) => doseNeeded(j.dish.need, j.dish.need.minutes.likely) * (1 + rules.marginDose)),
    longest: make((j) => (j.spread ?? 1) * mostDose(j.dish.need)),
    low: make((j) => j.dish.need.startLow + slack(j, margins.inHand)),
    lowest: make((j) => j.dish.need.startLow + slack(j, margins.margin)),
    high: make((j) => j.dish.need.startHigh - slack(j, margins.margin)),
    best: make((j) => j.dish.need.startBest),
    end: make((j) => j.dish.need.endLow),
    endMargin: margins.margin > 0 ? 1 : 0,
    done: make((j) => j.dish.need.done),
    misfit: make((j) => Math.min(j.dish.need.minutes.likely, rules.misfitMinutes)),
    risen: jobs.map((j) => j.risen ?? j.made),
    due: make((j) => j.due ?? Number.POSITIVE_INFINITY),
    hotFrom: make((j) => j.hotFrom),
    bears: make(dearFrom),
    worth: make((j) => (j.weighed ? Math.min(2, Math.max(0.5, feedsOf(j) / Math.max(1, mean))) : 1)),
    stays,
    scant: stays.map((stay, u) => (jobs[u]!.dish.need.enough === undefined ? 0 : stay)),
    food: Uint8Array.from(jobs, (j) => (keptWarm(j.dish.need) ? 1 : 0)),
    area: make((j) => j.area),
    handling: make((j) => j.handling),
    mindful: jobs.flatMap((_, u) => (shut[u]! > 1 ? [u] : [])),
    shut,
    making: Int32Array.from(jobs, ({making = 0}) => Math.ceil(making / rules.tick)),
    falls: ofOrder(1),
    crusts: ofOrder(2),
    inFront: others,
    behind: others.flatMap((ahead, u) => (ahead.length > 0 ? [u] : [])),
  }
}

/** What each job finds in each part of the floor, by the floor's mean. */
function partsOf(jobs: readonly Job[], curve: Curve, {asPlaced}: Margins): Pick<JobFigures, 'scale' | 'shift' | 'hotter'> {
  // A part's own temperature is the mean's, straight: T + offset · (T − air)/(T_ready − air).
  const share = curve.offset.map((offset) => offset / Math.max(1, curve.readyCelsius - curve.ambient))
  const scale = new Float64Array(4 * jobs.length)
  const shift = new Float64Array(4 * jobs.length)
  const hotter = new Float64Array(jobs.length)
  jobs.forEach((job, u) => {
    // What stands across the floor is judged by its coolest part, and set in by its hottest: by those in which it stands, where known.
    const placed = job.stood ?? (asPlaced ? job.was?.placed : undefined) ?? []
    // One vessel that no part is large enough for stands in the middle: it is judged where its centre lies.
    const zones = placed.length > 0 ? placed.map((p) => whereIndex(p.zone)) : job.count === 1 ? [1] : [0, 1, 2]
    const its = zones.map((z) => share[z]!)
    const coolest = Math.min(...its)
    ;[...share, coolest].forEach((k, w) => {
      scale[4 * u + w] = 1 + k
      shift[4 * u + w] = -k * curve.ambient
    })
    hotter[u] = Math.max(...its) - coolest
  })
  return {scale, shift, hotter}
}

/** Places are told to the millimetre: two may stand nearer by this, m, than they were given room. */
const ROUNDED = 0.002

/**
 * For each job that is in the oven already, the others in it that have to be drawn before it can be. Where two would stand in one place, nobody
 * knows which is in the way of the other; and what was set in at another time and wants longer than the one behind it bears is shifted aside for
 * that: so it was when the one behind was set in past it.
 */
function inFront(jobs: readonly Job[], grid: FloorGrid): number[][] {
  const bodies = jobs.map(({dish, stood}) => (stood ?? []).map((v) => bodyOf(dish.vessel, v)))
  const {clearance} = grid.ground.rules
  const lies = (v: number, u: number): boolean =>
    bodies[v]!.some((other) =>
      bodies[u]!.some((body) => blocks(grid.ground, other, body) && gap(other, body) >= clearance - ROUNDED),
    )
  const waitsFor = (u: number, v: number): boolean => {
    const [behind, front] = [jobs[u]!, jobs[v]!]
    const outlasts = front.since! + front.dish.need.minutes.likely > behind.since! + behind.dish.need.minutes.high
    return lies(v, u) && (front.since === behind.since || staysIn(behind.dish.need) || !outlasts)
  }
  return jobs.map((job, u) =>
    job.since === null ? [] : jobs.flatMap((other, v) => (v !== u && other.since !== null && waitsFor(u, v) ? [v] : [])),
  )
}
