import type {FiringLog} from '../oven/log.js'
import {type Deed, deedsOf, EARLY, isDropped, moves} from './deeds.js'
import type {DoneView, PlanView, StepView} from './protocol.js'

/** Which steps of a day are to be done now: what came due stays until it is ticked, or plainly overtaken by what has come since. */

/** A step belongs to now this long before its time, min. */
export const AHEAD = 3
/** What is done at one opening of the door is done within so many minutes; a cook who is behind with it takes twice as long. */
const OPENING = 10

/** What was due by the plans before the one that is shown, which may have no step of it any more. */
export interface Held {
  /** What is done at the open door beside setting in and drawing. */
  readonly steps: readonly StepView[]
  /** Each step that had come due at the door, by what it is and for which dish. */
  readonly door: readonly string[]
}

/** Minutes after which what is not ticked presses no more. */
const LONG = 60

export const nothingHeld: Held = {steps: [], door: []}

const namesOf = ({action, dishes}: StepView): string[] => (dishes.length > 0 ? dishes : ['']).map((dish) => `${action}:${dish}`)

/** Whether a step has come due; one that is held of an earlier plan also where this one gives the hands some minutes for what goes before. */
const isDue = (step: StepView, now: number, {door}: Held): boolean =>
  step.at <= now + AHEAD || (step.at <= now + OPENING && namesOf(step).some((name) => door.includes(name)))

/** What is held of earlier plans and is neither in this one nor of a dish that the day has no more. */
function stillHeld(view: PlanView, {steps}: Held): StepView[] {
  const known = new Set(view.dishes.map(({id}) => id))
  const again = (held: StepView): boolean =>
    view.steps.some((step) => {
      const names = namesOf(step)
      return !step.past && step.at <= held.at + 2 * OPENING && namesOf(held).every((name) => names.includes(name))
    })
  if (!view.soFar) return []
  return steps.filter((step) => step.dishes.every((id) => known.has(id)) && !again(step))
}

/** The steps of a plan with what is held of earlier ones, each done or not by the log. */
export const allDeeds = (view: PlanView, log: FiringLog | null, held: Held): Deed[] => deedsOf(view, log, stillHeld(view, held))

/**
 * What is to be held of a plan when another takes its place: a plan made in the course of the day has no step of what it takes to be done.
 *
 * @param now minutes after midnight of the day
 */
export function heldOf(view: PlanView, held: Held, now: number): Held {
  const deeds = allDeeds(view, null, held)
  const due = deeds.filter(({step}) => !step.past && isDue(step, now, held))
  const steps = due
    .filter((deed) => isDropped(deed.step.action) && !isOvertaken(deed, deeds, view.soFar?.done ?? [], now))
    .map(({step}): StepView => ({language: view.language, ...step}))
  return {steps, door: [...new Set(due.flatMap(({step}) => (moves(step.action) || isDropped(step.action) ? namesOf(step) : [])))]}
}

/** What has come about, or should have by now. */
interface Event {
  readonly action: StepView['action']
  readonly dishes: readonly string[]
  readonly at: number
  readonly done: boolean
}

function eventsBy(deeds: readonly Deed[], done: readonly DoneView[], now: number): Event[] {
  return [
    ...done.map(({action, dish, at}): Event => ({action, dishes: dish === '' ? [] : [dish], at, done: true})),
    ...deeds.flatMap(({step: {action, dishes, at}, done}): Event[] =>
      done || at <= now + AHEAD ? [{action, dishes, at, done}] : [],
    ),
  ]
}

/** Whether a step that is not ticked is plainly behind the day: something has been done, or is due, that comes after it. */
function isOvertaken({step}: Deed, deeds: readonly Deed[], done: readonly DoneView[], now: number): boolean {
  const {action, at} = step
  const events = eventsBy(deeds, done, now)
  const later = (after: number, ...actions: readonly StepView['action'][]): boolean =>
    events.some((event) => event.at > at + after && actions.includes(event.action))
  const opened = (...more: readonly StepView['action'][]): boolean =>
    events.some(
      (event) =>
        event.at > at + (event.done ? 2 : 1) * OPENING && ['load', 'draw', 'light', 'test', ...more].includes(event.action),
    )
  const each = (is: (event: Event) => boolean): boolean =>
    step.dishes.length > 0 && step.dishes.every((dish) => events.some((event) => event.dishes.includes(dish) && is(event)))
  switch (action) {
    case 'light':
    case 'rake':
    case 'load':
    case 'draw':
      return false
    case 'feed':
      return later(0, 'feed', 'rake', 'load', 'draw')
    case 'soak':
      return later(0, 'test', 'load', 'draw', 'light')
    case 'test':
      return each((event) => event.done && event.action === 'load' && event.at >= at - EARLY) || opened()
    case 'shut':
      return opened('top up', 'tend')
    case 'top up':
    case 'tend':
      return each((event) => event.done && event.action === 'draw' && event.at >= at - EARLY) || opened()
    case 'rise':
    case 'prove':
      return each((event) => event.at > at && !isDropped(event.action))
    default:
      return each(
        (event) => event.at > at && (event.action === 'load' || (event.done && !moves(event.action) && !isDropped(event.action))),
      )
  }
}

/** What is to be done now, what is next, and what follows. */
export function standing(
  deeds: readonly Deed[],
  now: number,
  {view, log, held = nothingHeld}: {readonly view?: PlanView; readonly log?: FiringLog | null; readonly held?: Held} = {},
): {now: Deed[]; next: Deed | null; later: Deed[]} {
  const done = view?.soFar?.done ?? []
  // The door was opened just now, by the log: what was due at this opening is to be done still.
  const opened = (log?.rows ?? []).some(
    ({what, at}) => (what === 'set in' || what === 'drawn') && at > now - OPENING && at <= now + AHEAD,
  )
  const isNow = ({step}: Deed): boolean => isDue(step, now, opened ? held : nothingHeld)
  const open = deeds.filter((deed) => !deed.done)
  const due = open.filter((deed) => isNow(deed) && !isOvertaken(deed, deeds, done, now))
  // What was due long ago and is neither fire nor door stands behind what presses.
  const long = ({step}: Deed): number => (!moves(step.action) && now - step.at >= LONG ? 1 : 0)
  const coming = open.filter((deed) => !isNow(deed))
  return {now: due.sort((a, b) => long(a) - long(b)), next: coming[0] ?? null, later: coming.slice(1, 9)}
}
