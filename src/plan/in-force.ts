import type {Plan} from './types.js'

/** A plan, and since when it was the one to be followed, minutes after midnight. */
export interface InForce {
  readonly from: number
  readonly plan: Plan
  /** It was made when an opening was noted, of which it tells as it was: what went in then was to go in as the one before had it. */
  readonly opening?: true
}

/** What was in force at a time, minutes after midnight; `inForce` in their order, the first from the beginning. */
export const lastBy = (inForce: readonly InForce[], at: number): InForce =>
  inForce.findLast(({from, opening}) => (opening ? from < at : from <= at))!

/** The plan that was to be followed at a time, minutes after midnight. */
export const planAt = (inForce: readonly InForce[], at: number): Plan => lastBy(inForce, at).plan
