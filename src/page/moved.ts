import {withoutBatch} from '../plan/batches.js'
import {clock} from '../sheets/figures.js'
import type {PlanView, Showing, StepView} from './protocol.js'
import {styleOf} from './style.js'
import {words} from './words.js'

/** Moves smaller than this are not told, min: nobody bakes by them. */
const TOLD = 3

/** What is told of, in the order in which one dish's are said. */
const telling = ['light', 'rake', 'load', 'draw'] as const

interface Deed {
  readonly at: number
  /** Whether its time is past. */
  readonly done: boolean
}

/**
 * Every deed of fire and door of a day, those behind it too, by what and for whom, each list in the order of its times. Batches of one dish
 * are one: they are alike, and which of them a plan takes first is nothing a cook could see.
 */
function deeds(view: PlanView): Map<string, Deed[]> {
  const title = new Map(view.dishes.map((dish) => [dish.id, withoutBatch(dish.title)]))
  const out = new Map<string, Map<number, boolean>>()
  const put = (action: string, dish: string, at: number, done: boolean): void => {
    const name = `${action}|${title.get(dish) ?? dish}`
    const times = out.get(name) ?? new Map<number, boolean>()
    times.set(at, done || (times.get(at) ?? false))
    out.set(name, times)
  }
  const putAll = (steps: readonly StepView[], done: (step: StepView) => boolean): void => {
    for (const step of steps) {
      if (!telling.some((one) => one === step.action)) continue
      for (const dish of step.dishes.length > 0 ? step.dishes : ['']) put(step.action, dish, step.at, done(step))
    }
  }
  putAll(view.steps, (step) => step.past)
  // Where the log is silent the time is only guessed at, and a guess that changes is nothing to be told of.
  putAll(view.soFar?.unticked ?? [], () => true)
  for (const {action, dish, at} of view.soFar?.done ?? []) put(action, dish, at, true)
  return new Map(
    [...out].map(([name, times]) => [name, [...times].map(([at, done]) => ({at, done})).sort((a, b) => a.at - b.at)]),
  )
}

/**
 * What moved from one plan to the next: what is still to be done of fire and door, by its place in the day and not by its time. What is
 * behind the day was written down by the cook herself, and is counted so that the second of two loads is held against the second.
 *
 * @param settled False while the search goes on: what has no place yet may still be given one.
 */
export function moved(before: PlanView, after: PlanView, showing: Showing, settled = true): string[] {
  const style = styleOf(showing)
  const old = deeds(before)
  const now = deeds(after)
  const names = [...new Set([...now.keys(), ...old.keys()].map((key) => key.slice(key.indexOf('|') + 1)))]
  const lines: string[] = []
  const endings: string[] = []
  for (const name of names) {
    const said: string[] = []
    const less: string[] = []
    for (const action of telling) {
      const was = old.get(`${action}|${name}`) ?? []
      const is = now.get(`${action}|${name}`) ?? []
      const what = words.moved.does[action] ?? action
      is.forEach(({at, done}, i) => {
        const before = was[i]
        if (done) return
        if (before === undefined) said.push(words.moved.fresh(what, clock(at, style)))
        else if (Math.abs(at - before.at) >= TOLD) said.push(words.moved.moved(what, clock(before.at, style), clock(at, style)))
      })
      if (was.slice(is.length).some(({done}) => !done)) less.push(what)
    }
    if (said.length > 0) lines.push(words.moved.of(name, said))
    if (less.length === 0) continue
    if (name === '') endings.push(words.moved.less('', less))
    else if (!settled) endings.push(words.moved.sought(name))
    else if (telling.some((action) => now.has(`${action}|${name}`))) endings.push(words.moved.less(name, less))
    else
      endings.push(
        words.moved.gone(name, after.unplaced.find((one) => one.of.some((dish) => withoutBatch(dish) === name))?.reason ?? ''),
      )
  }
  return [...lines, ...endings]
}
