import {en, type Words} from './words/en.js'

/** How figures and words are shown; nothing of it changes a plan. */
export interface Style {
  readonly words: Words
  /** Kitchen and workshop units. */
  readonly units: 'us' | 'metric' | 'both'
  readonly clock: 12 | 24
  readonly degrees: 'C' | 'F' | 'both'
}

/** English, both systems side by side, 12-hour clock. */
export const plainStyle: Style = {words: en, units: 'both', clock: 12, degrees: 'both'}

/** A whole style from the parts that were asked for. Degrees follow the units unless they are given. */
export function makeStyle(parts: Partial<Style> = {}): Style {
  const units = parts.units ?? 'both'
  return {
    words: parts.words ?? en,
    units,
    clock: parts.clock ?? 12,
    degrees: parts.degrees ?? (units === 'both' ? 'both' : units === 'us' ? 'F' : 'C'),
  }
}
