import type {Report} from './check.js'
import {isFor, type Told} from './check-dough.js'
import {DAY} from './check-night.js'
import {figureIn} from './check-steps.js'
import {rules} from './rules.js'
import type {Plan, PlanProblem, Step} from './types.js'

/** The checker's rules for what is told of a dough between its work, and of what is done the evening before. It shares no code with the planner. */

const near = (a: number, b: number): boolean => Math.abs(a - b) <= 0.01

/**
 * @param doughs the doughs that the steps tell of
 * @param bad called for each rule that is broken
 */
export function checkRising(problem: PlanProblem, plan: Plan, doughs: readonly Told[], bad: Report): void {
  for (const one of doughs) checkWaits(plan, one, doughs, bad)
  checkEvenings(problem, plan, doughs, bad)
}

/** Each wait is told once, from when the work before it is done until the next begins. */
function checkWaits(plan: Plan, one: Told, doughs: readonly Told[], bad: Report): void {
  const {dish, at, steps, mix, shape, sponge, shaping} = one
  const {id, title} = dish
  const dough = dish.dough!
  // What stands in the oven already of the same load was of the same dough.
  if (plan.loads.some((load) => load.at === at && load.dishes.some((d) => d.dish === id && d.alreadyIn))) return
  const of = (action: Step['action']): Step[] => steps.filter((s) => s.action === action)
  for (const action of ['sponge', 'mix', 'shape', 'prove'] as const)
    if (of(action).length > 1) bad('dough', id, at, of(action).length - 1, `${title}: its dough is told of twice`)
  const until = (step: Step): number => figureIn(step.words?.say, 'until') ?? Number.NaN
  const rises = of('rise').sort((a, b) => a.at - b.at)
  // What rises in the warm before it is stood in the cold is told in two.
  const most = (dough.bulkIn?.warm ?? 0) > 0 ? 2 : 1
  if (rises.length > most) bad('dough', id, at, rises.length - most, `${title}: its dough is told of twice`)
  const [prove] = of('prove')
  // One dough for several loads rises till the first of it is shaped.
  const [rising] = rises
  const its = rising?.further ? doughs.filter((other) => other.dish === dish && isFor(rising, other.load)) : [one]
  const risen = mix.at + (its.find(({load}) => load === rising?.load) ?? one).mixing
  if (sponge && !near(until(sponge), mix.at))
    bad('dough', id, sponge.at, until(sponge) - mix.at, `${title}: its sponge is told to work until another time`)
  if (dough.rise > 0) {
    const next = its.length > 1 ? Math.min(...its.map((other) => other.shape?.at ?? other.at)) : (shape?.at ?? prove?.at ?? at)
    const [first] = rises
    const follows = rises.every((rise, i) => near(until(rise), rises[i + 1]?.at ?? next))
    if (!first) bad('dough', id, risen, 0, `${title}: no step leaves its dough to rise`)
    else if (!near(first.at, risen) || !follows)
      bad('dough', id, first.at, first.at - risen, `${title}: its dough is told to rise at another time`)
  }
  const shaped = shape ? shape.at + shaping : prove?.at
  if (!dough.prove || (shape && at <= shaped! + 0.01)) return
  if (!prove) {
    if (shape) bad('dough', id, shaped!, at - shaped!, `${title}: no step leaves its shaped dough to rise`)
  } else if (!near(prove.at, shaped!) || !near(until(prove), at))
    bad('dough', id, prove.at, prove.at - shaped!, `${title}: its shaped dough is told to rise at another time`)
}

/** What a receipt has done the evening before is told once, a night before the dish is mixed or set in, and at its hour. */
function checkEvenings(problem: PlanProblem, plan: Plan, doughs: readonly Told[], bad: Report): void {
  const told = plan.steps.filter((s) => s.action === 'evening before' && s.load === null)
  const left = new Set(told)
  for (const dish of problem.dishes) {
    const starts = [
      ...plan.loads.flatMap((load) => (load.dishes.some((d) => d.dish === dish.id) ? [load.at] : [])),
      ...doughs.flatMap((one) => (one.dish === dish ? [one.mix.at] : [])),
    ]
    if (starts.length === 0) continue
    const start = Math.min(...starts)
    for (const task of dish.evening ?? []) {
      const step = told.find((s) => left.has(s) && s.dishes.includes(dish.id) && s.words?.say.values['words'] === task.words)
      if (!step) {
        bad('steps', dish.id, start, 0, `${dish.title}: no step of the evening before tells what its receipt has done then`)
        continue
      }
      left.delete(step)
      const hour = ((step.at % DAY) + DAY) % DAY
      const night = start - step.at
      const untimed = task.hour === undefined
      if (
        !near(hour, task.hour ?? rules.evening) ||
        night < rules.shortNight ||
        night >= rules.shortNight + DAY ||
        (step.untimed === true) !== untimed
      )
        bad('steps', dish.id, step.at, 0, `${dish.title}: what is to be done the evening before is told at another time`)
    }
  }
  for (const step of left) bad('steps', step.dishes[0] ?? null, step.at, 0, 'a step of the evening before that no receipt has')
}
