import {anneal} from './anneal.js'
import type {LaidOut} from './laid.js'
import type {Look, Road} from './shortest.js'

/** How long and how hotly a day is annealed on one fire, shortly to look at it and in earnest to lay it out. */

export function byPrice(a: Road, b: Road): number {
  return a.price - b.price
}

/** The cheaper first. */
export function likelier(a: Look, b: Look): number {
  return a.price - b.price || a.index - b.index
}

/** Of how many fires one looks at further, how much longer than the first look, and how much dearer than the best they may be. */
const RUNGS = [
  {most: Number.POSITIVE_INFINITY, longer: 1, times: Number.POSITIVE_INFINITY},
  {most: 5, longer: 1, times: 5},
  {most: 3, longer: 2, times: 3},
  {most: 3, longer: 4, times: 2},
] as const

/**
 * Look at every fire shortly, and at the better ones again and again, each time fewer of them and for longer (successive halving: Jamieson
 * & Talwalkar, AISTATS 2016): a short look alone often takes the wrong fire.
 */
export function lookAround(looks: Look[], n: number, light: Light): void {
  let left = looks
  for (const [rung, {most, longer, times}] of RUNGS.entries()) {
    const dearest = times * left[0]!.price + 60
    left = left.slice(0, most).filter((l, i) => i === 0 || !(l.price > dearest))
    for (const look of left)
      lookAt(look, {...light, rounds: longer * (150 + 12 * n), heat: 40, seed: 11 + rung, strict: [2, rung === 0 ? 12 : 30]})
    left.sort(likelier)
  }
}

export function lookAt(
  look: Look,
  {first, last, ...how}: Light & {rounds: number; heat: number; seed: number; strict: readonly [number, number]},
): void {
  const found = anneal(look.layout, {firstLit: first, lastLit: last, cool: 1, ...how})
  look.price = found.cost + SOFT * found.violation
}

/** Price of a broken limit when roads are compared: small breaks most often mend when curve and floor are looked at closely. */
const SOFT = 10
/** Broken limits that no closer look will mend. */
export const OVERFULL = 30

/** Judgements of one annealing in earnest. */
export function earnest(n: number): number {
  return Math.min(900 + 130 * n, Math.ceil(85000 / Math.max(1, n)))
}

export type Light = {readonly first: number; readonly last: number}

export function roadOf(look: Look, f: LaidOut): Road {
  return {look, laid: f.laid, lit: f.lit, price: f.cost + SOFT * f.violation, violation: f.violation}
}

/**
 * Lay a day out in earnest: several beginnings, since one annealing may end in a valley.
 *
 * @param light Earliest and latest lighting, min after midnight; equal where the fire is lit.
 * @param longer Factor on the judgements made.
 * @returns The layouts found, the cheapest first.
 */
export function layOut(look: Look, light: Light, starts: number, seed = 23, longer = 1): Road[] {
  const {layout} = look
  const lit = light.first === light.last
  const begun = layout.found()
  const rounds = longer * earnest(layout.n)
  const found: Road[] = []
  for (let i = 0; i < (lit ? 3 : starts); i++) {
    layout.restore(begun.laid, begun.lit)
    // A day that has begun is taken up where it stands; only if that will not do, with more and more freedom.
    const heat = lit ? [4, 20, 60][i]! : 60
    const share = lit ? [0.4, 0.7, 1][i]! : 1
    const laid = anneal(layout, {
      ...freely(light),
      rounds: Math.ceil(rounds * share),
      heat,
      seed: seed + i,
      strict: lit ? [10, 30] : [2, 30],
      anew: !lit,
    })
    found.push(roadOf(look, laid))
    if (lit && found[i]!.violation < 1e-6) break
  }
  return found.sort(byPrice)
}

export function freely(light: Light): {firstLit: number; lastLit: number; cool: number; leave: number} {
  return {firstLit: light.first, lastLit: light.last, cool: 0.3, leave: 0.01}
}
