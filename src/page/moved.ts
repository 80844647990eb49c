import {clock} from '../sheets/figures.js'
import type {PlanView, Showing} from './protocol.js'
import {styleOf} from './style.js'
import {words} from './words.js'

/** Moves smaller than this are not told, min: nobody bakes by them. */
const TOLD = 3

/** What moved from one plan to the next: the steps of fire and door, by their place in the day and not by their time. */
export function moved(before: PlanView, after: PlanView, showing: Showing): string[] {
  const style = styleOf(showing)
  const title = new Map([...before.dishes, ...after.dishes].map((dish) => [dish.id, dish.title]))
  const telling = ['light', 'rake', 'load', 'draw']
  const byDish = (view: PlanView): Map<string, number> => {
    const out = new Map<string, number>()
    for (const step of view.steps) {
      if (!telling.includes(step.action)) continue
      for (const dish of step.dishes.length > 0 ? step.dishes : ['']) {
        let name = `${step.action}|${dish}`
        for (let n = 2; out.has(name); n++) name = `${step.action}|${dish}|${n}`
        out.set(name, step.at)
      }
    }
    return out
  }
  const old = byDish(before)
  const now = byDish(after)
  const lines: string[] = []
  for (const [name, at] of now) {
    const was = old.get(name)
    const [action, dish] = name.split('|') as [string, string]
    const what = `${dish === '' ? '' : `${title.get(dish) ?? dish}: `}${words.moved.does[action] ?? action}`
    if (was === undefined) lines.push(words.moved.fresh(what, clock(at, style)))
    else if (Math.abs(at - was) >= TOLD) lines.push(words.moved.moved(what, clock(was, style), clock(at, style)))
  }
  for (const [name] of old) {
    if (now.has(name)) continue
    const [action, dish] = name.split('|') as [string, string]
    lines.push(words.moved.gone(`${dish === '' ? '' : `${title.get(dish) ?? dish}: `}${words.moved.does[action] ?? action}`))
  }
  return lines
}
