import type {Dish} from '../scale/types.js'
import type {Report} from './check.js'
import {nextLit} from './check-fires.js'
import {edges, type Heat} from './check-heat.js'
import {dayFrom, nextNight} from './check-night.js'
import {english, speak} from './phrases.js'
import {rules} from './rules.js'
import type {Load, Phrase, PhraseValue, Plan, PlanProblem, Step} from './types.js'

/**
 * The checker's rules for the steps: they tell the plan, in clock order: every fire, load and draw once, with its own figures, and nothing
 * besides. Doughs and what is made up have their own (`check-rising`, `check-making`).
 */

/** °C and kg that are rounding, not a break. */
const celsiusOff = 0.6
const woodOff = 1e-6

/** What the plan tells by its fires and its door. */
const ofOven: ReadonlySet<Step['action']> = new Set(['light', 'feed', 'rake', 'soak', 'test', 'load', 'draw', 'shut'])

/**
 * @param curves with `openings`: the times, minutes after midnight, at which the door is opened
 * @param bad called for each rule that is broken
 */
export function checkSteps(
  problem: PlanProblem,
  plan: Plan,
  dishes: ReadonlyMap<string, Dish>,
  {heat, openings}: {readonly heat: Heat; readonly openings: ReadonlySet<number>},
  bad: Report,
): void {
  const {steps} = plan
  for (let i = 1; i < steps.length; i++)
    if (steps[i]!.at < steps[i - 1]!.at)
      bad('steps', null, steps[i]!.at, steps[i - 1]!.at - steps[i]!.at, 'the steps are out of order')
  checkWords(plan, dishes, bad)
  const told = new Told(steps)
  if (plan.loads.length > 0) checkFireSteps(plan, told, bad)
  checkLoadSteps(plan, dishes, heat, told, bad)
  checkDrawSteps(problem, plan, dishes, told, bad)
  checkShut(plan, dishes, openings, told, bad)
  checkToppedUp(plan, openings, bad)
  checkTended(plan, dishes, openings, bad)
  for (const step of told.left()) bad('steps', step.dishes[0] ?? null, step.at, 0, leftOver(step, dishes))
  for (const step of steps) {
    const {celsius} = step
    const off = celsius === null ? 0 : Math.max(...edges.map((edge) => Math.abs(celsius[edge] - heat.mean(step.at, edge))))
    if (!(off <= celsiusOff))
      bad(
        'steps',
        null,
        step.at,
        off,
        `a step says ${Math.round(celsius!.likely)} °C; the oven then has ${Math.round(heat.mean(step.at))} °C`,
      )
    const past = problem.done !== undefined && step.at < problem.done.now
    if (past !== (step.past === true)) bad('steps', null, step.at, 0, 'a step does not say rightly whether it is past')
  }
}

/** A step that tells of nothing that the plan has. */
function leftOver({action, dishes: [id]}: Step, dishes: ReadonlyMap<string, Dish>): string {
  const title = id === undefined ? undefined : (dishes.get(id)?.title ?? id)
  if (action === 'load') return `${title}: a step sets it in when the plan does not`
  if (action === 'draw') return `${title}: a step draws it when the plan does not`
  if (action === 'test') return 'a step tests the heat when nothing is set in, or soon after another test'
  if (action === 'shut') return 'a step shuts the door when the plan does not'
  return 'a step tells of a fire that the plan does not have'
}

/** The steps, each of which is told for one thing only. */
class Told {
  readonly #left: Step[]

  constructor(steps: readonly Step[]) {
    this.#left = steps.filter(({action}) => ofOven.has(action))
  }

  /** The first of those left that does something at a time, and of which more is true. */
  take(action: Step['action'], at: number, more: (step: Step) => boolean = () => true): Step | null {
    const i = this.#left.findIndex((s) => s.action === action && Math.abs(s.at - at) < 0.01 && more(s))
    return i < 0 ? null : this.#left.splice(i, 1)[0]!
  }

  left(): readonly Step[] {
    return this.#left
  }
}

/** What a phrase has in one of its blanks, as a number. */
export function figureIn(phrase: Phrase | null | undefined, blank: string): number | null {
  const value = phrase?.values[blank]
  if (typeof value === 'number') return value
  return typeof value === 'object' && 'value' in value ? value.value : null
}

/** The dishes that a phrase has in one of its blanks. */
export function dishesIn(phrase: Phrase | null | undefined, blank = 'dishes'): readonly string[] {
  return inValue(phrase?.values[blank])
}

function inValue(value: PhraseValue | undefined): readonly string[] {
  if (typeof value !== 'object') return []
  if (value.unit === 'dishes') return value.dishes
  return 'phrases' in value ? value.phrases.flatMap((p) => Object.values(p.values).flatMap(inValue)) : []
}

/** The same dishes, in whatever order and however often. */
function sameDishes(some: readonly string[], others: readonly string[]): boolean {
  const [a, b] = [new Set(some), new Set(others)]
  return a.size === b.size && [...a].every((id) => b.has(id))
}

/** What a step says is what its figures say, of dishes that the day has. */
function checkWords({steps}: Plan, dishes: ReadonlyMap<string, Dish>, bad: Report): void {
  const speaker = english((id) => dishes.get(id)?.title ?? id)
  const said = (text: string | null, phrase: Phrase | null): boolean =>
    phrase === null ? text === null : text === speak(phrase, speaker)
  for (const step of steps) {
    const {words} = step
    const unknown = step.dishes.find((id) => !dishes.has(id))
    if (unknown !== undefined) bad('steps', unknown, step.at, 0, `${unknown}: no dish of the day, and a step tells of it`)
    if (
      !words ||
      !said(step.say, words.say) ||
      !said(step.sign, words.sign) ||
      !said(step.ifAhead, words.ifAhead) ||
      !said(step.ifBehind, words.ifBehind)
    )
      bad('steps', step.dishes[0] ?? null, step.at, 0, 'a step’s words are not those of its figures')
    const named = dishesIn(words?.say)
    if (words && named.length > 0 && !sameDishes(named, step.dishes))
      bad('steps', step.dishes[0] ?? null, step.at, 0, 'a step’s words name other dishes than it is of')
  }
}

function checkFireSteps(plan: Plan, told: Told, bad: Report): void {
  const {every} = rules.fireWork
  for (const {lit, raked, firing} of plan.fires ?? []) {
    const light = told.take('light', lit)
    if (!light) bad('steps', null, lit, 0, 'no step lights the fire')
    const feeds: number[] = []
    for (let at = lit + every; at < lit + firing.burn - 0.01; at += every) feeds.push(at)
    const fed = feeds.map((at) => {
      const step = told.take('feed', at)
      if (!step) bad('steps', null, at, 0, 'no step feeds the fire')
      return step
    })
    const says = (step: Step | null, blank: string, value: number, off: number): boolean =>
      step === null || Math.abs((figureIn(step.words?.say, blank) ?? Number.POSITIVE_INFINITY) - value) <= off
    if (
      !says(light, 'wood', firing.wood, woodOff) ||
      !fed.every((step) => says(step, 'wood', firing.wood / (feeds.length + 1), woodOff))
    )
      bad('steps', null, lit, 0, 'the steps say other wood than is burned')
    const rake = told.take('rake', raked)
    if (!rake) bad('steps', null, raked, 0, 'no step rakes out the coals')
    const soak = told.take('soak', raked)
    if (!soak) bad('steps', null, raked, 0, 'no step lets the heat even out')
    if (!says(light, 'burn', firing.burn, 0.01) || !says(soak, 'soak', firing.soak, 0.01))
      bad('steps', null, lit, 0, 'the steps say another time than the fire has')
  }
}

const fresh = ({dishes}: Load): Load['dishes'] => dishes.filter((d) => !d.alreadyIn)

function checkLoadSteps(plan: Plan, dishes: ReadonlyMap<string, Dish>, heat: Heat, told: Told, bad: Report): void {
  let tested = Number.NEGATIVE_INFINITY
  for (const load of plan.loads) {
    const set = fresh(load)
    if (set.length === 0) continue
    const ids = set.map((d) => d.dish)
    // Soon after another test there is none, and one more is left over.
    const due = load.at - tested > rules.testTells
    const test = due ? told.take('test', load.at, (s) => s.load === load.number) : undefined
    if (due) tested = load.at
    const celsius = heat.mean(load.at)
    if (test === null) bad('steps', null, load.at, 0, `no step tests the heat before load ${load.number}`)
    else if (test) {
      const off = Math.abs((figureIn(test.words?.say, 'celsius') ?? celsius) - celsius)
      if (off > celsiusOff || !test.celsius || !sameDishes(test.dishes, ids))
        bad('steps', null, load.at, off, `the heat that is tested before load ${load.number} is not that of the oven`)
    }
    const step = told.take('load', load.at, (s) => s.load === load.number)
    for (const id of new Set(ids))
      if (dishes.has(id) && !step?.dishes.includes(id)) bad('steps', id, load.at, 0, `no step sets in ${dishes.get(id)!.title}`)
    if (!step) continue
    checkCounts(step, set, dishes, bad)
    const unplanned = step.dishes.find((id) => !ids.includes(id))
    if (unplanned !== undefined)
      bad(
        'steps',
        unplanned,
        load.at,
        0,
        `${dishes.get(unplanned)?.title ?? unplanned}: a step sets it in when the plan does not`,
      )
    if (!step.celsius || (step.words && !placesTold(load, step.words.say)))
      bad('steps', null, load.at, 0, `the step of load ${load.number} says other places than the plan has`)
  }
}

/** Of a dish that is set in or drawn in parts its step says how many. */
function checkCounts(step: Step, entries: Load['dishes'], dishes: ReadonlyMap<string, Dish>, bad: Report): void {
  if (!step.words) return
  for (const id of new Set(step.dishes)) {
    const all = dishes.get(id)?.count
    const count = entries.reduce((sum, one) => sum + (one.dish === id ? one.count : 0), 0)
    if (all === undefined || count === 0) continue
    const said = countSaid(step.words.say, id) ?? all
    if (said !== Math.min(count, all))
      bad(
        'steps',
        id,
        step.at,
        Math.abs(said - count),
        `${dishes.get(id)!.title}: a step tells of ${said} where the plan has ${count}`,
      )
  }
}

/** How many of a dish a phrase says there are; null where it says it of the dish alone. */
function countSaid(say: Phrase, id: string): number | null {
  for (const value of Object.values(say.values)) {
    if (typeof value !== 'object' || !('phrases' in value)) continue
    for (const one of value.phrases) {
      const count = figureIn(one, 'count')
      if (count !== null && dishesIn(one).includes(id)) return count
      const within = countSaid(one, id)
      if (within !== null) return within
    }
  }
  return null
}

/** Whether the words of a load have its number and each of its dishes in the parts of the floor in which the plan has it. */
function placesTold(load: Load, say: Phrase): boolean {
  const list = say.values['dishes']
  if (figureIn(say, 'load') !== load.number || typeof list !== 'object' || !('phrases' in list)) return false
  const zones = new Map<string, Set<string>>()
  for (const {dish, zone = 'across'} of fresh(load)) {
    // By its vessels' places; where it has none, as it was planned.
    const own = load.placed.flatMap((one) => (one.dish === dish ? [one.zone] : []))
    const mine = zones.get(dish) ?? new Set<string>()
    for (const part of own.length > 0 ? own : [zone]) mine.add(part)
    zones.set(dish, mine)
  }
  return (
    list.phrases.length === zones.size &&
    list.phrases.every((p) => {
      const [id] = dishesIn(p)
      const parts = zones.get(id ?? '')
      if (!parts) return false
      const words = ['zone', 'zone2'].flatMap((blank) => {
        const value = p.values[blank]
        return typeof value === 'object' && value.unit === 'word' ? [value.word] : []
      })
      const everywhere = parts.has('across') || parts.size > 2
      return everywhere ? words.length === 0 : words.length === parts.size && words.every((word) => parts.has(word))
    })
  )
}

function checkDrawSteps(problem: PlanProblem, plan: Plan, dishes: ReadonlyMap<string, Dish>, told: Told, bad: Report): void {
  const draws = new Map<number, Load['dishes'][number][]>()
  for (const {dishes: set} of plan.loads) for (const d of set) draws.set(d.draw.likely, [...(draws.get(d.draw.likely) ?? []), d])
  for (const [at, drawn] of draws) {
    const step = told.take('draw', at)
    const ids = drawn.map((d) => d.dish)
    for (const id of new Set(ids))
      if (dishes.has(id) && !step?.dishes.includes(id)) bad('steps', id, at, 0, `no step draws ${dishes.get(id)!.title}`)
    if (!step) continue
    checkCounts(step, drawn, dishes, bad)
    const unplanned = step.dishes.find((id) => !ids.includes(id))
    if (unplanned !== undefined)
      bad('steps', unplanned, at, 0, `${dishes.get(unplanned)?.title ?? unplanned}: a step draws it when the plan does not`)
    if (!step.celsius) bad('steps', null, at, 0, 'a step draws what is done and does not say how hot the oven is')
    if (step.words && !looksTold(problem, plan, dishes, at, drawn, step.words))
      bad('steps', ids[0]!, at, 0, `${dishes.get(ids[0]!)?.title ?? ids[0]!}: its step says another time to look for it`)
  }
}

/** Minutes after which what was not done is looked at again, by its step's words. */
const LOOKED_AGAIN = 10

/** Whether a draw says when it may be looked for, and how long it may be waited for, as its dishes have it. */
function looksTold(
  problem: PlanProblem,
  plan: Pick<Plan, 'loads' | 'fires'>,
  dishes: ReadonlyMap<string, Dish>,
  at: number,
  drawn: Load['dishes'],
  {ifAhead, ifBehind}: NonNullable<Step['words']>,
): boolean {
  const [early, late] = [figureIn(ifAhead, 'early'), figureIn(ifBehind, 'late')]
  // What lies behind is not looked at, nor again at once what was not done.
  const again = (problem.done?.set ?? []).filter(({dish, longer}) => longer && drawn.some((d) => d.dish === dish))
  const low = Math.max(
    Math.min(...drawn.map(({draw}) => draw.low)),
    problem.done?.now ?? Number.NEGATIVE_INFINITY,
    ...again.map(({longer}) => longer!.looked + LOOKED_AGAIN),
  )
  // Nothing is looked at while a receipt wants the door kept shut, nor at night.
  const shut = plan.loads.flatMap((load) =>
    fresh(load).map((d) => ({from: load.at, to: load.at + (dishes.get(d.dish)?.need.closed?.likely ?? 0)})),
  )
  const unshut = Math.max(low, ...shut.filter(({from, to}) => from < low && to > low).map(({to}) => to))
  const opens = Math.min(at, dayFrom(problem, unshut))
  // What burns has the first word, what is the better for staying in the last.
  const burning = drawn.filter((d) => dishes.get(d.dish)?.need.overnight !== true)
  const high = Math.min(nextNight(at), nextLit(plan, at), ...(burning.length > 0 ? burning : drawn).map(({draw}) => draw.high))
  return early !== null && Math.abs(early - opens) < 0.01 && late !== null && Math.abs(late - high) < 0.01
}

/** What is topped up stands in the oven, and the door is open for it. */
function checkToppedUp({steps, loads}: Plan, openings: ReadonlySet<number>, bad: Report): void {
  for (const {action, at, dishes} of steps) {
    if (action !== 'top up') continue
    const inside = (id: string): boolean =>
      loads.some((l) => l.at <= at && l.dishes.some((d) => d.dish === id && d.draw.likely > at))
    if (!openings.has(at) || dishes.length === 0 || !dishes.every(inside))
      bad('steps', dishes[0] ?? null, at, 0, 'a step tops up what is not in the oven, or with the door shut')
  }
}

/** What a receipt has done as it bakes is told of what is in the oven, and once at least, be it as it goes in; the door is open where it is said to be. */
function checkTended({steps, loads}: Plan, dishes: ReadonlyMap<string, Dish>, openings: ReadonlySet<number>, bad: Report): void {
  const tended = steps.filter(({action}) => action === 'tend')
  for (const {at, dishes: ids, words} of tended) {
    const inside = (id: string): boolean =>
      loads.some((l) => l.at <= at && l.dishes.some((d) => d.dish === id && d.draw.likely > at))
    if (ids.length === 0 || !ids.every(inside) || (words?.say.id === 'tend' && !openings.has(at)))
      bad('steps', ids[0] ?? null, at, 0, 'a step tends what is not in the oven, or with the door shut')
  }
  for (const load of loads)
    for (const {dish, draw} of fresh(load)) {
      const times = (dishes.get(dish)?.tending ?? []).filter(({after, share}) => after === undefined && share === undefined)
      if (times.length > 0 && !tended.some((s) => s.dishes.includes(dish) && s.at >= load.at && s.at < draw.likely))
        bad('steps', dish, load.at, 0, `${dishes.get(dish)!.title}: no step tells what its receipt has done as it bakes`)
    }
}

const keepsShut = (words: Step['words']): boolean => words?.say.id === 'keep shut' || words?.say.id === 'keep shut but'

/** The door: kept shut where a receipt wants it so, and shut on what stays in long; a little open where the receipt wants that. */
function checkShut(plan: Plan, dishes: ReadonlyMap<string, Dish>, openings: ReadonlySet<number>, told: Told, bad: Report): void {
  for (const load of plan.loads) {
    const kept = fresh(load).filter((d) => (dishes.get(d.dish)?.need.closed?.likely ?? 0) >= rules.tick)
    if (kept.length === 0) continue
    const until = load.at + Math.max(...kept.map((d) => dishes.get(d.dish)!.need.closed!.likely))
    const step = told.take('shut', load.at, ({words}) => keepsShut(words))
    if (!step || Math.abs((figureIn(step.words?.say, 'until') ?? 0) - until) > 0.01)
      bad('steps', kept[0]!.dish, load.at, 0, `${dishes.get(kept[0]!.dish)!.title}: no step keeps the door shut for it`)
  }
  const times = [...openings].sort((a, b) => a - b)
  for (const [i, at] of times.entries()) {
    const next = times[i + 1]
    const inside = plan.loads.flatMap((l) => l.dishes.filter((d) => l.at <= at && d.draw.likely > at).map((d) => d.dish))
    if (next === undefined || inside.length === 0) continue
    const ajar = inside.some((id) => dishes.get(id)?.ajar !== undefined)
    if (!ajar && next - at <= rules.shutFor) continue
    const step = told.take('shut', at, ({words}) => !keepsShut(words))
    if (!step || !sameDishes(step.dishes, inside) || (step.words?.say.id === 'leave ajar') !== ajar)
      bad('steps', inside[0]!, at, 0, ajar ? 'no step leaves the door a little open' : 'no step shuts the door on what stays in')
  }
}
