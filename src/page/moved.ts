import {clock} from '../sheets/figures.js'
import type {PlanView, Showing} from './protocol.js'
import {styleOf} from './style.js'
import {words} from './words.js'

/** Moves smaller than this are not told, min: nobody bakes by them. */
const TOLD = 3

/**
 * What moved from one plan to the next: the steps of fire and door, by their place in the day and not by their time.
 *
 * @param settled False while the search goes on: what has no place yet may still be given one.
 */
export function moved(before: PlanView, after: PlanView, showing: Showing, settled = true): string[] {
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
  /** What is to be said of each dish, and of the fire, in the order of the day. */
  const said = new Map<string, string[]>()
  const say = (dish: string, what: string): void => void said.set(dish, [...(said.get(dish) ?? []), what])
  for (const [name, at] of now) {
    const was = old.get(name)
    const [action, dish] = name.split('|') as [string, string]
    const what = words.moved.does[action] ?? action
    if (was === undefined) say(dish, words.moved.fresh(what, clock(at, style)))
    else if (Math.abs(at - was) >= TOLD) say(dish, words.moved.moved(what, clock(was, style), clock(at, style)))
  }
  const gone = new Map<string, string[]>()
  for (const name of old.keys()) {
    if (now.has(name)) continue
    const [action, dish] = name.split('|') as [string, string]
    gone.set(dish, [...(gone.get(dish) ?? []), words.moved.does[action] ?? action])
  }
  const stays = new Set([...now.keys()].map((name) => name.split('|')[1]))
  const lines = [...said].map(([dish, what]) => words.moved.of(title.get(dish) ?? dish, what))
  for (const [dish, what] of gone) {
    const name = title.get(dish) ?? dish
    if (dish === '') lines.push(words.moved.less('', what))
    else if (!settled) lines.push(words.moved.sought(name))
    else if (stays.has(dish)) lines.push(words.moved.less(name, what))
    else lines.push(words.moved.gone(name, after.unplaced.find((one) => one.of.includes(name))?.reason ?? ''))
  }
  return lines
}
