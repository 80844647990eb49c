import {lookUpKind} from '../lexicon/index.js'
import {makings} from '../lexicon/making-work.js'
import type {Dish} from '../scale/types.js'
import type {Report} from './check.js'
import type {Told} from './check-dough.js'
import {workOfDay} from './check-dough.js'
import {DAY, isNight, woken} from './check-night.js'
import {figureIn} from './check-steps.js'
import {rules} from './rules.js'
import type {Phrase, Plan, PlanProblem, Step} from './types.js'

/**
 * The checker's rules for what is made up without a dough: a step says so once, in time and not so early that it waits longer than it may, by
 * day, or the evening before where the night leaves no time; and there are hands for it. It shares no code with the planner.
 */

const ROUNDING = 0.01

/** Work to be done some time between two clock times, minutes after midnight. */
interface Due {
  readonly dish: string
  readonly title: string
  readonly step: Step
  readonly from: number
  readonly to: number
  readonly minutes: number
  /** Minutes that it may wait, made up. */
  readonly waits: number
  /** Made up before the night. */
  readonly early: boolean
}

/** Minutes of hands that other work leaves from a clock time until the next. */
type Left = (clock: number) => number

/**
 * @param doughs the doughs that the steps tell of
 * @param bad called for each rule that is broken
 */
export function checkMakings(problem: PlanProblem, plan: Plan, doughs: readonly Told[], bad: Report): void {
  const all = dueIn(problem, plan, bad)
  const due = all.filter(({early}) => !early)
  const other = workOfDay(problem, plan, doughs)
  const known = new Map<number, number>()
  const leftAt: Left = (t) => {
    const before = known.get(t)
    if (before !== undefined) return before
    const taken = other.reduce((sum, w) => sum + Math.max(0, Math.min(w.to, t + rules.tick) - Math.max(w.from, t)), 0)
    const left = Math.max(0, problem.day.hands * rules.tick - taken)
    known.set(t, left)
    return left
  }
  for (const step of new Set(all.map((one) => one.step))) {
    const mine = all.filter((one) => one.step === step)
    if (mine[0]!.early) checkEarly({problem, plan}, mine, due, leftAt, bad)
    else checkSoon(problem, mine, due, leftAt, bad)
  }
  if (plan.messages.some(({rule, reason}) => rule === 'hands' && reason.includes('to be made up while the hands are full')))
    return
  const now = problem.done?.now ?? Number.NEGATIVE_INFINITY
  for (const from of new Set(due.map((one) => one.from).filter((at) => at >= now)))
    for (const to of new Set(due.map((one) => one.to))) {
      const mine = due.filter((one) => one.from >= from && one.to <= to)
      if (mine.length === 0) continue
      let left = 0
      for (let t = from; t < to; t += rules.tick) left += leftAt(t)
      const over = workIn(mine) - left
      // What cannot be is told once.
      if (over <= ROUNDING) continue
      bad('hands', mine[0]!.dish, from, over, `${mine[0]!.title}: it is made up while the hands are full`)
      return
    }
}

const workIn = (some: readonly Due[]): number => some.reduce((sum, {minutes}) => sum + minutes, 0)

/** What is made up by day for a load waits for it no longer than it may, but for other work in between. */
function checkSoon(problem: PlanProblem, mine: readonly Due[], due: readonly Due[], left: Left, bad: Report): void {
  const {dish, title, from, to} = mine[0]!
  if (isNight(problem, from)) bad('night', dish, from, 0, `${title}: it is made up at night`)
  // Ticks of which one pair of hands has not all.
  let busy = 0
  for (let t = from; t < to && to - from <= DAY; t += rules.tick) busy += rules.tick - Math.min(rules.tick, left(t))
  const others = due.filter((one) => !mine.includes(one) && one.from < to && one.to > from)
  const bears = Math.max(...mine.map(({waits}) => waits))
  const waits = to - from - workIn(mine) - busy - workIn(others)
  const sooner = Math.max(waits - bears, to - from - rules.madeUpBefore)
  if (sooner > ROUNDING) bad('steps', dish, from, sooner, `${title}: it is made up ${Math.round(sooner)} min too soon`)
}

/** What is made up the evening before is made then and no sooner, and only where the day leaves no time for it. */
function checkEarly(
  {problem, plan}: {readonly problem: PlanProblem; readonly plan: Plan},
  mine: readonly Due[],
  due: readonly Due[],
  left: Left,
  bad: Report,
): void {
  const {dish, title, from, to} = mine[0]!
  const night = rules.nightFrom + DAY * Math.floor((to - rules.nightFrom) / DAY)
  const ends = from + workIn(mine)
  if (ends > night + rules.tick || from < night - Math.max(rules.madeUpBefore, workIn(mine) + rules.tick))
    bad('steps', dish, from, ends - night, `${title}: it is to be made up before the night, and is told at another time`)
  const morning = woken(problem) + DAY * Math.ceil((night - woken(problem)) / DAY)
  let free = 0
  for (let t = morning; t < to; t += rules.tick) free += Math.min(rules.tick, left(t))
  const byDay = due.filter((one) => one.from < to && one.to > morning)
  const rash = mine.find((one) => one.waits <= rules.soon)
  if (rash && !plan.messages.some((m) => m.rule === 'made-stale' && m.reason.startsWith(`${rash.title}: `)))
    bad(
      'steps',
      rash.dish,
      from,
      to - from - rash.waits,
      `${rash.title}: it is made up before the night and does not keep till it is set in, and nothing warns of it`,
    )
  const spare = free - workIn(byDay) - workIn(mine)
  if (spare > rules.tick || to - morning > rules.madeUpBefore + rules.tick)
    bad('steps', dish, from, spare, `${title}: it is made up before the night, and could be by day`)
}

/** What the steps have made up, and by when. */
function dueIn(problem: PlanProblem, plan: Plan, bad: Report): Due[] {
  const left = new Set(
    plan.steps.filter((s) => s.action === 'mix' && s.dishes.some((id) => problem.dishes.some((d) => d.id === id && !d.dough))),
  )
  const counted = new Map<Step, number>()
  const due = plan.loads.flatMap((load) => {
    const fresh = [...new Set(load.dishes.filter((d) => !d.alreadyIn).map((d) => d.dish))]
    return fresh.flatMap((id): Due[] => {
      const dish = problem.dishes.find((d) => d.id === id)
      if (!dish || !isMadeUp(dish)) return []
      const [step, twice] = plan.steps.filter((s) => s.action === 'mix' && s.load === load.number && s.dishes.includes(id))
      if (!step || step.at >= load.at) {
        bad('steps', id, load.at, 0, `${dish.title}: no step makes it up before it goes in`)
        return []
      }
      if (twice) bad('steps', id, twice.at, 1, `${dish.title}: it is made up twice for one load`)
      left.delete(step)
      counted.set(step, (counted.get(step) ?? 0) + 1)
      const early = /^make up early/.test(step.words?.say.id ?? '')
      const said = figureIn(step.words?.say, 'at')
      if (!early && (said === null || Math.abs(said - load.at) > ROUNDING))
        bad('steps', id, step.at, (said ?? 0) - load.at, `${dish.title}: it is to be made up for another time than it is set in`)
      const count = load.dishes.reduce((sum, d) => sum + (d.dish === id && !d.alreadyIn ? d.count : 0), 0)
      const row = makings.find(({kinds}) => kinds.includes(dish.kind)) ?? makings.at(-1)!
      const works = dish.first ?? []
      const fives = Math.round(
        (works.reduce((sum, {takes}) => sum + takes, row.minutes) + row.perKilogram * dish.mass * count) / rules.tick,
      )
      const told = wordsIn(step.words?.say)
      for (const {say} of works)
        if (step.words && !told.includes(say))
          bad('steps', id, step.at, 0, `${dish.title}: what its caution asks for first is not told when it is made up`)
      const minutes = rules.tick * Math.max(1, fives)
      return [{dish: id, title: dish.title, step, from: step.at, to: load.at, minutes, waits: row.waits, early}]
    })
  })
  for (const step of left) unwanted(problem, step, step.dishes[0]!, bad)
  for (const [step, count] of counted)
    if (new Set(step.dishes).size > count)
      unwanted(problem, step, step.dishes.find((id) => due.every((d) => d.step !== step || d.dish !== id))!, bad)
  return due
}

/** The words that stand in a phrase's blanks. */
function wordsIn(say: Phrase | undefined): readonly string[] {
  return Object.values(say?.values ?? {}).flatMap((value) =>
    typeof value !== 'object'
      ? []
      : value.unit === 'word'
        ? [value.word]
        : 'phrases' in value
          ? value.phrases.flatMap(wordsIn)
          : [],
  )
}

/** What has no dough is made up, unless nobody eats it. */
const isMadeUp = ({dough, kind}: Dish): boolean => !dough && !lookUpKind(kind)?.uneaten

function unwanted({dishes}: PlanProblem, step: Step, id: string, bad: Report): void {
  bad('steps', id, step.at, 0, `${dishes.find((d) => d.id === id)?.title ?? id}: it is made up and not set in then`)
}
