import type {Dish} from '../scale/types.js'
import {check} from './check.js'
import {type Curve, celsiusAt, doseNeeded, doseTable} from './curve.js'
import {blockedBy, type Job} from './model.js'
import {english, type PhraseId, phrase, speak} from './phrases.js'
import type {PlanOptions, Settled} from './planner.js'
import {rules} from './rules.js'
import type {FiringOption, Phrase, PhraseValue, Plan, PlanProblem, Remedy} from './types.js'

/** Plans a day again; the planner gives itself, so that this module need not know it. */
export type Replan = (problem: PlanProblem, options: PlanOptions) => Plan

/**
 * Why a dish has no choice on a curve: the limit that fails it, with the figures.
 *
 * @param from Minutes after lighting before which it is too late to set anything in.
 */
export function whyNot(
  dish: Dish,
  curve: Curve,
  option: FiringOption,
  from = curve.ready,
): {rule: string; reason: string; words: Phrase} {
  const {need} = dish
  const degrees = (value: number): PhraseValue => ({unit: 'celsius', value})
  const because = (rule: string, id: PhraseId, values: Record<string, PhraseValue> = {}): ReturnType<typeof whyNot> => {
    const words = phrase(id, {dishes: {unit: 'dishes', dishes: [dish.id]}, ...values})
    return {
      rule,
      reason: speak(
        words,
        english(() => dish.title),
      ),
      words,
    }
  }
  const blocked = blockedBy(option)
  let hottest = Number.NEGATIVE_INFINITY
  let coolest = Number.POSITIVE_INFINITY
  let inRange = false
  let bestDose = 0
  const wanted = doseNeeded(need)
  const table = doseTable(curve, 3, need.done)
  for (let m = Math.ceil(Math.max(from, curve.ready) / rules.tick) * rules.tick; m < curve.end; m += rules.tick) {
    if (blocked.some((b) => m >= b.from && m < b.to)) continue
    const t = celsiusAt(curve, 3, m)
    hottest = Math.max(hottest, t)
    coolest = Math.min(coolest, t)
    if (t < need.startLow || t > need.startHigh) continue
    inRange = true
    let last = m
    for (let e = m; e < curve.end; e += rules.tick) {
      if (celsiusAt(curve, 3, e) < need.endLow || blocked.some((b) => e > b.from && m < b.from)) break
      last = e
    }
    bestDose = Math.max(
      bestDose,
      (table[Math.min(table.length - 1, last)]! - table[Math.min(table.length - 1, m)]!) / Math.max(1, wanted),
    )
  }
  if (hottest < need.startLow)
    return because('start heat', 'not hot enough', {celsius: degrees(need.startLow), hottest: degrees(hottest)})
  if (!inRange)
    return because('start heat', 'not in range', {
      celsius: degrees(need.startLow),
      high: degrees(need.startHigh),
      coolest: degrees(coolest),
    })
  if (bestDose < 1) return because('dose', 'not done', {percent: Math.floor(100 * bestDose), celsius: degrees(need.endLow)})
  return because('night', 'in the night')
}

/**
 * The smallest set of dishes, this one among them, that do not go together (deletion filter: Chinneck & Dravnieks, ORSA Journal on
 * Computing 3 (1991) 157–168): each other dish is taken out in turn and stays out if the rest still cannot be baked. Judged on the
 * curve of the plan, so that a verdict takes milliseconds.
 */
export function conflictOf(problem: PlanProblem, dish: Dish, settled: Settled, replan: Replan): string[] {
  const onCurve: PlanProblem = {...problem, firings: [settled.option]}
  const possible = (dishes: readonly Dish[]): boolean => replan({...onCurve, dishes}, {effort: 'quick'}).possible
  if (!possible([dish])) return [dish.id]
  let kept = problem.dishes.filter((d) => d.id !== dish.id)
  if (possible([dish, ...kept])) {
    // The floor would do; it is the heat the others take that is missing. All that goes in before the dish is done takes part.
    return [dish.id, ...kept.map((d) => d.id)]
  }
  for (const d of [...kept]) {
    const without = kept.filter((k) => k !== d)
    if (!possible([dish, ...without])) kept = without
  }
  return [dish.id, ...kept.map((d) => d.id)]
}

/** Ways out, each tried by planning the day with it. */
export function remediesOf(
  problem: PlanProblem,
  plan: Plan,
  missing: readonly {job: Job; count: number}[],
  options: PlanOptions,
  replan: Replan,
): Map<string, Remedy[]> {
  const titles = new Map(problem.dishes.map((d) => [d.id, d.title]))
  const speaker = english((id) => titles.get(id) ?? id)
  const out = new Map<string, Remedy[]>()
  const add = (dish: string, kind: Remedy['kind'], tried: Plan | null, words: Phrase, works: boolean): void => {
    const remedy: Remedy = {
      kind,
      works,
      wood: tried ? tried.score.wood - plan.score.wood : 0,
      late: tried ? tried.score.lateMinutes - plan.score.lateMinutes : 0,
      say: speak(words, speaker),
      words,
    }
    out.set(dish, [...(out.get(dish) ?? []), remedy])
  }
  const outcome = (p: Plan): {unit: 'phrases'; phrases: Phrase[]} => ({
    unit: 'phrases',
    phrases: [
      p.possible
        ? p.score.lateMinutes > plan.score.lateMinutes
          ? phrase('outcome late', {minutes: {unit: 'minutes', value: p.score.lateMinutes - plan.score.lateMinutes}})
          : phrase('outcome all')
        : phrase('outcome still', {dishes: {unit: 'dishes', dishes: [...new Set(p.unplaced.map((u) => u.dish))]}}),
    ],
  })
  const {simulate} = options
  const quick: PlanOptions = {
    effort: 'quick',
    ...(simulate ? {simulate} : {}),
    ...(options.cancelled ? {cancelled: options.cancelled} : {}),
  }
  // A second fire: one trial serves every dish.
  const second = options.secondFires?.(plan) ?? []
  if (second.length > 0) {
    const tried = replan({...problem, firings: second}, quick)
    const fire = tried.fires?.[1]
    if (fire)
      for (const {job} of missing)
        if (tried.possible || !tried.unplaced.some((u) => u.dish === job.dish.id))
          add(
            job.dish.id,
            'second fire',
            tried,
            phrase('remedy second fire', {
              minutes: {unit: 'minutes', value: fire.firing.burn},
              at: {unit: 'clock', value: fire.lit},
              wood: {unit: 'kilograms', value: Math.max(0, tried.score.wood - plan.score.wood)},
              outcome: outcome(tried),
            }),
            tried.possible,
          )
  }
  for (const {job, count} of missing.slice(0, 6)) {
    const {dish} = job
    const baked = dish.count - count
    const who = {unit: 'dishes' as const, dishes: [dish.id]}
    const others = missing.filter((m) => m.job.dish.id !== dish.id)
    const rest =
      others.length === 0
        ? {unit: 'phrases' as const, phrases: [phrase('outcome all')]}
        : {
            unit: 'phrases' as const,
            phrases: [phrase('outcome still', {dishes: {unit: 'dishes', dishes: others.map((m) => m.job.dish.id)}})],
          }
    // What the plan already bakes of it is a plan that passed.
    if (baked > 0)
      add(
        dish.id,
        'smaller batch',
        null,
        phrase('remedy smaller batch', {count: baked, all: dish.count, dishes: who, outcome: rest}),
        others.length === 0,
      )
    if (missing.length <= 2) {
      // Ten or twenty degrees either way, as a cook would take it.
      for (const step of [12, 25]) {
        const wider: Dish = {
          ...dish,
          need: {
            ...dish.need,
            startLow: dish.need.startLow - step,
            startHigh: dish.need.startHigh + step,
            endLow: dish.need.endLow - step,
          },
        }
        const tried = replan({...problem, dishes: problem.dishes.map((d) => (d.id === dish.id ? wider : d))}, quick)
        const inAt = tried.loads.flatMap((l) => l.dishes.filter((d) => d.dish === dish.id).map((d) => d.celsiusIn.likely))[0]
        if (tried.unplaced.some((u) => u.dish === dish.id) || inAt === undefined) continue
        add(
          dish.id,
          'wider heat',
          tried,
          phrase('remedy wider heat', {dishes: who, celsius: {unit: 'celsius', value: inAt}, outcome: outcome(tried)}),
          tried.possible,
        )
        break
      }
      // What stands in front of what is drawn first need only be out of the way for as long as that takes.
      const shifting: PlanProblem = {...problem, dishes: problem.dishes.map((d) => (d.id === dish.id ? {...d, shifts: true} : d))}
      const tried = replan(shifting, quick)
      const past = check(problem, tried).filter((v) => v.rule === 'reach')
      const [move, then, ...further] = [...new Set(past.map((v) => v.at!))].sort((a, b) => a - b)
      if (move !== undefined && further.length === 0 && !tried.unplaced.some((u) => u.dish === dish.id))
        add(
          dish.id,
          'one move',
          tried,
          phrase(then === undefined ? 'remedy one move' : 'remedy two moves', {
            dishes: who,
            at: {unit: 'clock', value: move},
            ...(then === undefined ? {} : {again: {unit: 'clock', value: then}}),
            others: {unit: 'dishes', dishes: [...new Set(past.map((v) => v.dish!))].filter((id) => id !== dish.id)},
            outcome: outcome(tried),
          }),
          tried.possible,
        )
    }
    add(dish.id, 'leave out', null, phrase('remedy leave out', {dishes: who, outcome: rest}), others.length === 0)
  }
  return out
}
