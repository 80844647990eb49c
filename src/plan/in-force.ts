import type {Plan} from './types.js'

/** A plan, and since when it was the one to be followed, minutes after midnight. */
export interface InForce {
  readonly from: number
  readonly plan: Plan
}

/** The plan that was to be followed at a time, minutes after midnight; `inForce` in their order, the first from the beginning. */
export function planAt(inForce: readonly InForce[], at: number): Plan {
  return inForce.findLast(({from}) => from <= at)!.plan
}
