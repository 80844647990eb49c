import {stringify} from 'csv-stringify/sync'
import type {Item} from '../lexicon/schema.js'
import type {Plan, PlanProblem} from '../plan/types.js'
import {fahrenheit, stepClock, timeOfDay} from './figures.js'
import {concerned, dishTitle, type Numbered, numbered} from './heat-data.js'
import {leftOut} from './left-out.js'
import {stepWords} from './phrases.js'
import {needs} from './shopping.js'
import type {Style} from './style.js'

/** RFC 4180: CRLF, quotes where needed. A text that a spreadsheet would run as a formula is made a plain text. */
function csv(rows: ReadonlyArray<readonly (string | number | null)[]>): string {
  return stringify(rows as Array<Array<string | number | null>>, {record_delimiter: 'windows', escape_formulas: true})
}

const rounded = (value: number | undefined): number | null => (value === undefined ? null : Math.round(value * 10) / 10)

/** The steps of the day, one row a step and dish. Times also in minutes after midnight of the bake day; column names are not translated. */
export function stepsCsv(plan: Plan, problem: PlanProblem, style: Style): string {
  const dishes = numbered(plan, problem)
  const head = [
    'date',
    'minutes',
    'time',
    'action',
    'load',
    'number',
    'dish',
    'count',
    'vessel',
    'zone',
    'celsius_low',
    'celsius_likely',
    'celsius_high',
    'fahrenheit_likely',
    'what',
    'sign',
    'if_ahead',
    'if_behind',
  ]
  const rows: Array<Array<string | number | null>> = [head]
  for (const step of plan.steps) {
    const said = stepWords(step, problem, style)
    const numbers = concerned(step, dishes)
    // What is set in or drawn has a row to each of its numbers on the sheets, anything else one to each dish.
    const named = new Set(step.dishes.length === 0 ? [null] : step.dishes)
    const about = [...named].flatMap((id): {id: string | null; entry: Numbered | undefined; count: number | undefined}[] => {
      const own = numbers.filter((dish) => dish.id === id)
      if (own.length > 0) return own.map((entry) => ({id, entry, count: entry.count}))
      const inLoad = dishes.filter(
        (dish) => dish.id === id && (step.load === null || [step.load, ...(step.further ?? [])].includes(dish.load)),
      )
      const count = step.load === null ? undefined : inLoad.reduce((sum, dish) => sum + dish.count, 0)
      return [{id, entry: inLoad[0], count: inLoad.length === 0 ? undefined : (count ?? inLoad[0]!.count)}]
    })
    for (const {id, entry, count} of about) {
      const dish = id === null ? undefined : problem.dishes.find((other) => other.id === id)
      rows.push([
        problem.day.date,
        step.untimed === true ? null : Math.round(step.at),
        step.untimed === true ? stepClock(step, style) : timeOfDay(step.at, {...style, clock: 24}),
        step.action,
        step.action === 'draw' ? (entry?.load ?? step.load) : step.load,
        entry?.number ?? null,
        id === null ? null : dishTitle(problem, id),
        count ?? dish?.count ?? null,
        dish?.vessel.name ?? null,
        entry?.zone ?? null,
        rounded(step.celsius?.low),
        rounded(step.celsius?.likely),
        rounded(step.celsius?.high),
        step.celsius ? rounded(fahrenheit(step.celsius.likely)) : null,
        said.say,
        said.sign,
        said.ifAhead,
        said.ifBehind,
      ])
    }
  }
  return csv(rows)
}

/** The shopping list, grams and millilitres with their ranges; `no_place` names those of its dishes that the plan has no place for, or not for all of it. */
export function shoppingCsv(plan: Plan, problem: PlanProblem, items: readonly Item[]): string {
  const rows: Array<Array<string | number | null>> = [
    [
      'item',
      'group',
      'grams_low',
      'grams_likely',
      'grams_high',
      'millilitres_low',
      'millilitres_likely',
      'millilitres_high',
      'pieces',
      'as_it_stands',
      'for',
      'no_place',
      'in_the_shop',
      'instead',
      'instead_grams',
    ],
  ]
  const out = leftOut(plan, problem)
  for (const need of needs(problem, items))
    rows.push([
      need.item,
      need.group,
      rounded(need.grams?.low),
      rounded(need.grams?.likely),
      rounded(need.grams?.high),
      rounded(need.millilitres?.low),
      rounded(need.millilitres?.likely),
      rounded(need.millilitres?.high),
      need.pieces,
      need.asStands.map(({text, title}) => `${text} (${title})`).join('; '),
      need.dishes.join('; '),
      need.ids
        .filter((id) => out.has(id))
        .map((id) => dishTitle(problem, id))
        .join('; '),
      need.modern,
      need.instead?.item ?? null,
      rounded(need.instead?.grams?.likely),
    ])
  return csv(rows)
}
