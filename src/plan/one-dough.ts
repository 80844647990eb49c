import {type Dough, waitsLong} from './dough-work.js'

/**
 * Doughs of several loads that are one: mixed before the day was planned again, when all of it was to go in at once or at other times. What was
 * done to it then was done once, and is told once.
 */

/** What is done to a dough before it proves. */
export type Stage = 'sponge' | 'mix' | 'rise' | 'shape'

/** The doughs of which a stage is told at once, that first which is shaped first. */
export class OneDough {
  readonly #doughs: readonly Dough[]

  constructor(doughs: readonly Dough[]) {
    this.#doughs = doughs
  }

  /** The doughs with which a stage of one is told; null where it is told with one that is shaped sooner. */
  toldWith(stage: Stage, dough: Dough): readonly Dough[] | null {
    const all = this.#doughs
      .filter((other) => other === dough || isSame(stage, dough, other))
      .sort((a, b) => a.shape - b.shape || a.at - b.at)
    return all[0] === dough ? all : null
  }
}

/** Whether a stage of two doughs was one piece of work. */
function isSame(stage: Stage, a: Dough, b: Dough): boolean {
  if (a.dish !== b.dish || a.was === undefined || a.was !== b.was || a.mix !== b.mix || a.sponge !== b.sponge) return false
  if (stage === 'sponge') return typeof a.was.sponge === 'number'
  if (a.was.mixed === null) return false
  if (stage === 'shape') return a.was.shaped !== undefined && a.shape === b.shape
  // What waits too long is told otherwise.
  return stage === 'mix' || (a.cold === b.cold && waitsLong(a).rise === waitsLong(b).rise)
}

/** Whether a stage was done to all that there is of the dish: it has no other dough. */
export function ofWhole(stage: Stage, {was}: Pick<Dough, 'was'>): boolean {
  return was?.whole === true && (was.mixed !== null || (stage === 'sponge' && typeof was.sponge === 'number'))
}
