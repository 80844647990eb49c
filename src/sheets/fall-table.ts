import type {Plan} from '../plan/types.js'
import {type Figures, toFive} from './figures.js'
import {valueAt} from './heat-data.js'

/** A moment of the falling oven: minutes after midnight, °C. */
export interface FallRow {
  readonly at: number
  readonly celsius: number
}

const ROWS = 8

/** Eight moments of the falling oven, for the class to read a time from: when it is ready, which is when the first bread goes in, and full hours after that. */
export function fallTable(plan: Plan, until: number): FallRow[] {
  const hour = Math.floor(plan.ready / 60) * 60 + 60
  // Every hour, or at longer steps where the answer lies further on: it must be there to be read.
  const step = Math.max(60, Math.ceil((until - hour) / (ROWS - 2) / 30) * 30)
  return [plan.ready, ...Array.from({length: ROWS - 1}, (_, i) => hour + i * step)].map((at) => ({
    at,
    celsius: valueAt(plan.forecast.baking.likely, plan.forecast.step, plan.lit, at),
  }))
}

/** What a reader of the table finds, minutes after midnight, each to five minutes. */
export interface ReadSpan {
  readonly from: number
  readonly to: number
  /** How far another reader may be off who reads as well, min: a quarter of the step between two rows, or what another scale gives. */
  readonly within: number
}

/**
 * Between what times the oven is inside a range, as one reads it from the table: by its printed figures, on straight lines between its rows.
 *
 * @param ready when the oven is ready, from which it is right for what wants no more than the first row's heat
 * @param scale the scale whose printed figures are read, and others that are printed beside it
 */
export function readSpan(
  rows: readonly FallRow[],
  start: {readonly low: number; readonly high: number},
  ready: number,
  [scale, ...others]: readonly [Figures, ...Figures[]],
): ReadSpan {
  const [from, to] = readOn(rows, start, ready, scale)
  const off = others.flatMap((other) => readOn(rows, start, ready, other).map((at, i) => Math.abs(at - (i === 0 ? from : to))))
  // The first step may be shorter than the others.
  const step = (rows.at(-1)?.at ?? 0) - (rows.at(-2)?.at ?? 0)
  return {from, to, within: Math.max(toFive(step / 4), ...off)}
}

function readOn(
  rows: readonly FallRow[],
  {low, high}: {readonly low: number; readonly high: number},
  ready: number,
  unit: Figures,
): [number, number] {
  const printed = rows.map(({at, celsius}) => ({at, heat: toFive(unit(celsius))}))
  const [most, least] = [toFive(unit(high)), toFive(unit(low))]
  /** Where the table falls through a heat for the last time. */
  const falls = (heat: number): number | null => {
    for (let i = printed.length - 2; i >= 0; i--) {
      const [a, b] = [printed[i]!, printed[i + 1]!]
      if (a.heat >= heat && b.heat < heat) return a.at + ((a.heat - heat) / (a.heat - b.heat)) * (b.at - a.at)
    }
    return null
  }
  const begins = printed.findIndex(({heat}) => heat <= most)
  const [before, after] = [printed[begins - 1], printed[begins]]
  const from = before && after ? before.at + ((before.heat - most) / (before.heat - after.heat)) * (after.at - before.at) : ready
  const to = falls(least) ?? printed.at(-1)?.at ?? ready
  return [toFive(from), toFive(to)]
}
