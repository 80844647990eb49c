import type {PlanProblem, Step} from '../plan/types.js'
import type {Style} from './style.js'

/** The words of a step, said in the reader's language, clock and units. */
export interface StepWords {
  readonly say: string
  readonly sign: string | null
  readonly ifAhead: string | null
  readonly ifBehind: string | null
}

/** The words of a step. */
export function stepWords(step: Step, _problem: PlanProblem, _style: Style): StepWords {
  return {say: step.say, sign: step.sign, ifAhead: step.ifAhead, ifBehind: step.ifBehind}
}
