import {items} from '../lexicon/items.js'
import {sources} from '../lexicon/sources.js'
import {batchesOf, withoutBatch} from '../plan/batches.js'
import {receiptsOf} from '../plan/kept-days.js'
import type {Plan, PlanProblem} from '../plan/types.js'
import type {Dish} from '../scale/types.js'
import {stepClock, temperatures} from '../sheets/figures.js'
import {dishTitle} from '../sheets/heat-data.js'
import {changeWords, stepWords, suggestionsOf, waysTold} from '../sheets/phrases.js'
import {
  alertLine,
  balanceLines,
  believedLine,
  lateLines,
  planHead,
  reasonAlone,
  scoreLines,
  unplacedLines,
} from '../sheets/plan-text.js'
import {inWords, messageWords, sizedLines, vesselName} from '../sheets/said.js'
import {type SheetOptions, sheets} from '../sheets/sheets.js'
import type {Style} from '../sheets/style.js'
import type {Planned} from './chain.js'
import {deedsTold} from './deeds.js'
import type {PlanView, StepView} from './protocol.js'
import {soFar} from './so-far.js'

/** A plan as the page shows it, every word of the core in the reader's language, clock and units. */
export function planView(found: Planned & {ok: true}, style: Style): Omit<PlanView, 'took' | 'parts' | 'language'> {
  const {plan, problem, messages} = found.made
  const {oven} = found.read
  const {forecast} = plan
  const suggested = suggestionsOf(plan, problem, style)
  const seen = new Map<string, number>()
  const steps = plan.steps.map((step): StepView => {
    const said = stepWords(step, problem, style)
    const name = `${step.action}:${[...step.dishes].sort().join('+')}`
    const n = (seen.get(name) ?? 0) + 1
    seen.set(name, n)
    return {
      key: `${name}:${n}`,
      at: step.at,
      ...(step.untimed === true ? {when: stepClock(step, style)} : {}),
      action: step.action,
      dishes: step.dishes,
      load: step.load,
      say: said.say,
      sign: said.sign ?? '',
      ahead: said.ifAhead ?? '',
      behind: said.ifBehind ?? '',
      degrees: step.celsius ? temperatures(step.celsius, style) : '',
      past: step.past ?? false,
    }
  })
  return {
    day: found.read.day,
    plan: {
      possible: plan.possible,
      lit: plan.lit,
      ready: plan.ready,
      loads: plan.loads.map((load) => ({dishes: load.dishes.map(({dish, draw}) => ({dish, draw: draw.likely}))})),
    },
    head: {...planHead({plan, problem, oven}, style), amiss: amissOf(plan, problem, style)},
    steps,
    ...(problem.done ? {told: deedsTold(found.read.log?.rows ?? []), soFar: soFar(problem, found.read.log, style)} : {}),
    score: scoreLines(plan, problem, style),
    suggestionsNote: suggested?.note,
    balance: balanceLines(plan, style),
    unplaced: unplacedLines(plan, problem, style).map(({title, titles, reason, remedies}) => ({
      dish: title,
      of: titles,
      reason,
      remedies,
    })),
    late: lateLines(plan, problem, style).map(({title, say}) => ({dish: title, times: say})),
    ways: waysIn(plan, problem, style),
    suggestions: suggested?.lines ?? [],
    changes: (plan.changes ?? []).map((one) => {
      const {what, why} = changeWords(one, problem, style)
      return one.dish === null
        ? {dish: null, what, why}
        : {dish: dishTitle(problem, one.dish), what, why: reasonAlone(one.dish, why, problem)}
    }),
    believed: found.believed.map((line) => believedLine(line, problem, style)),
    today: found.today.map((line) => inWords(line, style)),
    dishes: problem.dishes.map((dish) => ({
      id: dish.id,
      title: dishTitle(problem, dish.id),
      stem: nameInLog(dish, problem),
      count: dish.count,
      amount: `${dish.count} × ${dish.vessel.name}`,
    })),
    sized: sizedOf(problem, style),
    messages: [...found.read.messages, ...messages]
      .filter((m) => m.severity === 'warning')
      .slice(0, 100)
      .map((m) => {
        const {reason, suggest} = messageWords(m, style)
        return {...m, reason, ...(suggest === null ? {} : {suggest})}
      }),
    baking: {
      step: forecast.step,
      lit: plan.lit,
      low: forecast.baking.low,
      high: forecast.baking.high,
    },
  }
}

/** Messages that are no alerts of the plan's head, and that nobody at the oven may miss either: the day's food is at stake. */
const foodAtStake: ReadonlySet<string> = new Set([
  'drawn-early',
  'drawn-late',
  'fire-unlogged',
  'half-hour',
  'raw-warm',
  'unfinished',
])
/** What becomes of a dish that has less heat than it should, and of which no message tells. */
const underdone: ReadonlySet<string> = new Set(['eased dose', 'eased short'])

/** What comes out underdone, or may not be safe, in the reader's language: what the head's alerts tell is not among it. */
function amissOf(plan: Plan, problem: PlanProblem, style: Style): string[] {
  const told = plan.messages.filter(({rule, severity}) => severity !== 'info' && foodAtStake.has(rule))
  const scant = (plan.changes ?? []).flatMap((one) =>
    one.dish !== null && underdone.has(one.words?.what.id ?? '')
      ? [`${dishTitle(problem, one.dish)}: ${changeWords(one, problem, style).what}.`]
      : [],
  )
  return [...new Set([...told.map((message) => alertLine(message, style)), ...scant])]
}

/** What the page calls a dish in the log: its file's name or, where the file holds other dishes too, its own. */
function nameInLog(dish: Dish, problem: PlanProblem): string {
  const alone = problem.dishes.every((other) => other.file !== dish.file || batchesOf(other) === batchesOf(dish))
  return alone ? (dish.file.split('/').at(-1) ?? dish.file).replace(/\.[^.]+$/, '') : dish.id
}

/** How each dish was brought to its size: the batches of one dish together, what holds for several said once. */
function sizedOf(problem: PlanProblem, style: Style): PlanView['sized'] {
  const named = new Map<string, {count: Map<string, number>; lines: Set<string>}>()
  for (const dish of problem.dishes) {
    const name = withoutBatch(dishTitle(problem, dish.id))
    const one = named.get(name) ?? {count: new Map<string, number>(), lines: new Set<string>()}
    named.set(name, one)
    const vessel = vesselName(dish.vessel.name, style)
    one.count.set(vessel, (one.count.get(vessel) ?? 0) + dish.count)
    for (const line of sizedLines(dish, style)) one.lines.add(line)
  }
  return [...named]
    .filter(([, {lines}]) => lines.size > 0)
    .map(([dish, {count, lines}]) => ({
      dish,
      amount: [...count].map(([vessel, number]) => `${number} × ${vessel}`).join(', '),
      lines: [...lines],
    }))
}

/** All sheets of a plan, as the command writes them. */
export function sheetsOf({read, made, believed, today}: Planned & {ok: true}, options: SheetOptions): Map<string, string> {
  return sheets(
    {
      plan: made.plan,
      problem: made.problem,
      oven: read.oven,
      receipts: receiptsOf(read.receipts, read.day, made.problem.dishes),
      texts: read.texts,
      sources,
      items,
      readings: read.log?.readings ?? [],
      believed: [...believed, ...today],
    },
    options,
  )
}

/** What would help the day, each with what to note for it. */
function waysIn(plan: Plan, problem: PlanProblem, style: Style): PlanView['ways'] {
  const told = waysTold(plan, problem, style)
  return told && {lead: told.lead, lines: told.lines.map((say, i) => ({say, note: plan.ways?.[i]?.note ?? null}))}
}
