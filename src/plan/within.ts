import type {HeatNeed} from '../scale/types.js'
import {celsiusAt, doseNeeded, doseTable, heatTable} from './curve.js'
import {doseBetween, staysIn} from './keeps.js'
import {choiceAt, choosing, type Model} from './model.js'
import {rules} from './rules.js'
import type {Took} from './settled.js'

/**
 * How far inside its dishes' limits a plan stays: what it keeps in hand against an oven that is cooler, or hotter, than was thought. Shares of
 * what a morning's plan keeps, 0 … 1.
 */
export interface InHand {
  /** Of `rules.inHandCelsius` above the least heat a dish may be set in at. */
  readonly low: number
  /** Of `rules.marginCelsius` under the most. */
  readonly high: number
  /** Of `END_MARGIN` above the least it may be drawn at. */
  readonly end: number
  /** Of `rules.inHandDose` beyond the dose of what stays in the falling oven. */
  readonly dose: number
}

/** All that a morning's plan keeps in hand. */
export const MORNING: InHand = {low: 1, high: 1, end: 1, dose: 1}

/** °C above its least heat that a dish is drawn at. */
const END_MARGIN = 1

/** °C that are kept in hand at a dish's lower and upper limit: never more than a quarter of its range. */
function marginsOf(need: HeatNeed): {readonly low: number; readonly high: number} {
  const most = Math.max(0, (need.startHigh - need.startLow) / 4)
  return {low: Math.min(rules.inHandCelsius, most), high: Math.min(rules.marginCelsius, most)}
}

/** °C in a part of the floor at a tick of a model. */
function celsiusOn({program: {curve, phase}}: Model, w: number, tick: number): number {
  return celsiusAt(curve, w, tick * rules.tick + phase)
}

/** Dose of a job's choice, °C·min. */
function doseOn({program: {curve, phase}, s, e, where, jobs}: Model, u: number, o: number): number {
  const at = (tick: number): number => tick * rules.tick + phase
  return doseBetween(curve, jobs[u]!.dish.need, where[u]![o]!, at(s[u]![o]!), at(e[u]![o]!))
}

/** How much a solution keeps in hand of each job's limits. What is left out, or in the oven already, is held to all that a morning's plan keeps. */
export function keptInHand(model: Model, chosen: Int32Array): InHand[] {
  const share = (kept: number, margin: number): number => (margin > 0 ? Math.max(0, Math.min(1, kept / margin)) : 1)
  return model.jobs.map(({dish: {need}, since}, u) => {
    const o = chosen[u]!
    if (o < 0 || since !== null) return MORNING
    const w = model.where[u]![o]!
    const at = celsiusOn(model, w, model.s[u]![o]!)
    const margins = marginsOf(need)
    return {
      low: share(at - need.startLow, margins.low),
      high: share(need.startHigh - at, margins.high),
      end: share(celsiusOn(model, w, model.e[u]![o]!) - need.endLow, END_MARGIN),
      dose: staysIn(need) ? share(doseOn(model, u, o) / doseNeeded(need) - 1, rules.inHandDose) : 1,
    }
  })
}

/**
 * A model with those choices only that keep so much in hand, or all of a job that has none.
 *
 * @param inHand For each job, or for all alike.
 * @param took What each job is to do, ticks: it stays among its choices. Null where it is left out.
 * @returns The model, and for each job the index of what it is to do, or of the nearest draw where that is no choice; −1 where it has none.
 */
export function within(
  whole: Model,
  took: readonly Took[],
  inHand: InHand | readonly InHand[],
): {model: Model; start: Int32Array} {
  const {curve, phase} = whole.program
  const start = new Int32Array(whole.jobs.length).fill(-1)
  const heats = [0, 1, 2, 3].map((w) => heatTable(curve, w))
  const minute = (tick: number): number => tick * rules.tick + phase
  const taken = whole.jobs.map(({dish: {need}, since}, u): Uint32Array => {
    const [s, e, where] = [whole.s[u]!, whole.e[u]!, whole.where[u]!]
    const margins = marginsOf(need)
    const kept = 'low' in inHand ? inHand : inHand[u]!
    const low = need.startLow + kept.low * margins.low - ROUGHLY
    const high = need.startHigh - kept.high * margins.high + ROUGHLY
    const end = need.endLow + kept.end * END_MARGIN - ROUGHLY
    const dose = staysIn(need) ? doseNeeded(need) * (1 + kept.dose * rules.inHandDose) - ROUGHLY : 0
    const t = took[u]
    const mine = t ? choiceAt(whole, u, t.s, t.e, t.w) : -1
    const keeps = (o: number): boolean => {
      if (o === mine || since !== null) return true
      const w = where[o]!
      const heat = heats[w]!
      const at = heat[minute(s[o]!)]!
      if (at < low || at > high || heat[minute(e[o]!)]! < end) return false
      if (dose === 0) return true
      const table = doseTable(curve, w, need.done)
      const by = (tick: number): number => table[Math.max(0, Math.min(table.length - 1, minute(tick)))]!
      return by(e[o]!) - by(s[o]!) >= dose
    }
    const inside = new Uint32Array(s.length)
    let count = 0
    for (let o = 0; o < s.length; o++) if (keeps(o)) inside[count++] = o
    const left = count > 0 ? inside.subarray(0, count) : Uint32Array.from(s.keys())
    let off = Number.POSITIVE_INFINITY
    if (t)
      for (let i = 0; i < left.length; i++) {
        const o = left[i]!
        if (s[o] !== t.s || where[o] !== t.w || Math.abs(e[o]! - t.e) >= off) continue
        off = Math.abs(e[o]! - t.e)
        start[u] = i
      }
    return left
  })
  return {model: choosing(whole, taken), start}
}

/** °C of rounding. */
const ROUGHLY = 1e-6
