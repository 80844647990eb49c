import type {FiringLog} from '../oven/log.js'
import {byOwnNames} from '../plan/own-names.js'
import {phrase} from '../plan/phrases.js'
import {isOf} from '../plan/told.js'
import type {DoneSoFar, Phrase, PlanProblem, Step} from '../plan/types.js'
import {dishTitle} from '../sheets/heat-data.js'
import {stepWords} from '../sheets/phrases.js'
import type {Style} from '../sheets/style.js'
import type {DoneView, StepView} from './protocol.js'

/** What is behind the day when it is planned again: it has no step in the plan any more. */
export interface SoFar {
  /** When it was planned again, minutes after midnight. */
  readonly now: number
  /** What the plan takes as set in or drawn although the log does not say so: still to be ticked. */
  readonly unticked: readonly StepView[]
  readonly done: readonly DoneView[]
}

/**
 * A draw that is not ticked may have been forgotten in the log, or in the oven: however long ago it was due, it is still to be ticked.
 *
 * @param log the day's own; null before anything is noted, and then there is nothing behind it
 */
export function soFar(problem: PlanProblem, written: FiringLog | null, style: Style): SoFar | null {
  const so = problem.done
  if (!so || !written) return null
  const log = byOwnNames(written, problem.dishes)
  const done: DoneView[] = []
  const open = new Map<string, {action: 'load' | 'draw'; at: number; dishes: Set<string>}>()
  const wait = (action: 'load' | 'draw', at: number, dish: string): void => {
    const one = open.get(`${action}@${at}`) ?? {action, at, dishes: new Set()}
    one.dishes.add(dish)
    open.set(`${action}@${at}`, one)
  }
  for (const part of so.set) {
    const {dish, at, drawn} = part
    const [ticked, out] = tickedOf(part, problem, log)
    if (ticked) done.push({action: 'load', dish, at})
    else wait('load', at, dish)
    if (drawn === null) continue
    if (out) done.push({action: 'draw', dish, at: drawn})
    else wait('draw', drawn, dish)
  }
  // The log has the first fire of the day; a later one is a step of the plan.
  if (log.lit !== null) done.push({action: 'light', dish: '', at: log.lit})
  if (log.raked !== null) done.push({action: 'rake', dish: '', at: log.raked})
  const unticked = [...open.values()].map(({action, at, dishes}) => stepView(action, at, [...dishes], problem, style))
  return {now: so.now, unticked: unticked.sort((a, b) => a.at - b.at), done}
}

/** Whether the log tells that a part was set in, and that it was drawn; what was lost is neither to be set in nor drawn. */
function tickedOf(part: DoneSoFar['set'][number], problem: PlanProblem, log: FiringLog): [boolean, boolean] {
  const dish = problem.dishes.find(({id}) => id === part.dish)
  if (!dish || part.lost) return [true, true]
  const rows = log.rows.filter((row) => isOf(row, dish))
  const out = rows.some(({what, at}) => (what === 'drawn' || what === 'lost') && at === part.drawn)
  return [out || rows.some(({what, at}) => what === 'set in' && at === part.at), out]
}

function stepView(action: 'load' | 'draw', at: number, dishes: readonly string[], problem: PlanProblem, style: Style): StepView {
  const words = (say: Phrase): NonNullable<Step['words']> => ({
    say,
    sign: action === 'draw' ? phrase('sign own', {sign: ''}) : null,
    ifAhead: null,
    ifBehind: null,
  })
  const bare: Step = {at, action, dishes, load: null, say: '', sign: null, ifAhead: null, ifBehind: null, celsius: null}
  const names = [...new Set(dishes.map((id) => dishTitle(problem, id)))]
  const drawn = stepWords({...bare, words: words(phrase('draw', {dishes: {unit: 'dishes', dishes}}))}, problem, style)
  return {
    key: `${action}:${[...dishes].sort().join('+')}:${at}`,
    at,
    action,
    dishes,
    load: null,
    say: action === 'draw' ? drawn.say : `${style.words['action.load']}: ${names.join(', ')}.`,
    sign: drawn.sign ?? '',
    ahead: '',
    behind: '',
    degrees: '',
    past: false,
  }
}
