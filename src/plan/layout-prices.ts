/**
 * What a layout pays beside the weights of `rules.ts`, in the objective's units: for broken limits, and for what is no rule but is rather
 * not done.
 */

/** Price of each kind of broken limit, as it is counted in what a layout breaks. */
export const broken = {
  celsius: 3,
  floor: 8,
  lane: 30,
  hands: 12,
  order: 60,
  night: 60,
  over: 150,
  refusal: 80,
  hold: 0.5,
  unrisen: 0.5,
} as const

/** Price of a broken limit when layouts are compared: no saving is worth one. */
export const HARD = 60
/** And when dishes are left out so that nothing stays broken. */
export const FIRM = 500

/** Price of setting in what falls from very hot while white bread or pies bake (the 1829 order the other way about). */
export const AMONG_CRUSTS = 30
/** A stay is long from so many ticks, and it costs so much for each part of the floor by which it is nearer the mouth than the back. */
const LONG = 24
const DEEPER = 1.5

/** What it costs that a long bake stands nearer the mouth than the back: no rule, but the heat lasts longest there. */
export function deeperBy(start: number, end: number, where: number): number {
  return end - start >= LONG && where < 3 ? DEEPER * where : 0
}
