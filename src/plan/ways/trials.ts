import {minutesLateIn} from '../asked.js'
import type {Replan} from '../conflict.js'
import type {PlanOptions, Simulate} from '../options.js'
import {english, phrase, speak} from '../phrases.js'
import {rules} from '../rules.js'
import type {Settled} from '../settled.js'
import type {FiringOption, Phrase, Plan, PlanProblem, Remedy} from '../types.js'
import {type Lack, lackOf, outOf} from './lack.js'

/** A day, changed or not, planned otherwise. */
export interface Trial {
  readonly plan: Plan
  readonly lack: Lack
  readonly problem: PlanProblem
  /** What comes too late to be of use will do. */
  readonly late: boolean
}

/** A plan that was made for a trial, and what it lacks. */
export function trialOf(problem: PlanProblem, plan: Plan, late: boolean): Trial {
  return {plan, lack: lackOf(problem, plan, late), problem, late}
}

/** How else a day is planned: in another oven, lit so many minutes sooner, or all anew though there is a plan to go on from. */
export interface Otherwise {
  readonly simulate?: Simulate | undefined
  readonly sooner?: number
  readonly anew?: boolean
}

/** Dishes up to which a way out is planned in earnest before it is offered. */
const IN_EARNEST = 12

/** Of what dishes want of their heat, as `Lack` has it, by how much less of it is worth a word. */
const NEARER = 10

/** kg of wood that nobody minds. */
const LITTLE_WOOD = 0.5

/** Tries changed days on the simulated oven and says what comes of them. */
export class Trials {
  readonly quick: PlanOptions
  readonly #problem: PlanProblem
  readonly #plan: Plan
  readonly #options: PlanOptions
  readonly #replan: Replan
  readonly #from: Settled | null
  readonly #late: boolean
  readonly now: Lack

  /**
   * @param from The plan to go on from, where something is left out; all is planned anew without.
   * @param inHand On a day that has begun: try only what becomes of the plan in hand.
   * @param late What comes too late to be of use will do, as anything does on a day that has begun, unless a fire is to be lit for it.
   */
  constructor(
    problem: PlanProblem,
    plan: Plan,
    options: PlanOptions,
    replan: Replan,
    from: Settled | null = null,
    inHand = false,
    late = problem.done !== undefined,
  ) {
    this.#from = from
    this.#problem = problem
    this.#plan = plan
    this.#options = options
    this.#replan = replan
    this.#late = late
    this.now = lackOf(problem, plan, late)
    this.quick = {
      effort: 'quick',
      bare: true,
      inHand,
      ...(options.simulate ? {simulate: options.simulate} : {}),
      ...(options.cancelled ? {cancelled: options.cancelled} : {}),
    }
  }

  /** The day with something changed, planned shortly. */
  plan(change: Partial<PlanProblem>, {simulate = this.quick.simulate, sooner = 0, anew = false}: Otherwise = {}): Trial {
    const {firings, anyFire = firings} = this.#problem
    const problem = {...this.#problem, anyFire, ...change}
    const from = anew ? null : this.#from
    const begun = from && {...from, model: {...from.model, lit: from.model.lit - sooner}}
    return trialOf(
      problem,
      this.#replan(problem, {...this.quick, ...(simulate ? {simulate} : {}), ...(begun ? {from: begun} : {})}),
      this.#late,
    )
  }

  /**
   * The day with something changed that is written in it, as it will be planned when it is changed so: on the fires that it has to choose from
   * then, and not shortly, which may promise more than that keeps, or less. Null of a large day, where a short trial has to do.
   */
  inEarnest(change: Partial<Pick<PlanProblem, 'day' | 'dishes'>>): Trial | null {
    const problem = {...this.#problem, ...change}
    const {firesFor, secondFires} = this.#options
    // Second fires that were made for this plan are none of the day's.
    const fires = firesFor?.(problem.day, problem.dishes) ?? {
      firings: problem.day.firings > 1 ? problem.firings : this.#once(),
      ...(secondFires ? {secondFires} : {}),
    }
    return this.#earnest({...problem, firings: fires.firings}, fires)
  }

  /** What comes of a change that helps by a short trial; null where it would not when the day is changed so. */
  whereTrue(
    shortly: Trial,
    change: Partial<Pick<PlanProblem, 'day' | 'dishes'>>,
    helpful: (lack: Lack) => boolean,
  ): Trial | null {
    if (!helpful(shortly.lack)) return null
    const tried = this.inEarnest(change) ?? shortly
    return helpful(tried.lack) ? tried : null
  }

  /**
   * The day on two fires as it will be planned when it may be fired twice: of the fires that there are to choose from then a short look often
   * misses the one that has it all. Null of a large day, or where nothing makes such fires.
   */
  firedTwice(): Trial | null {
    const {secondFires, onOneFire} = this.#options
    if (!secondFires) return null
    const day = {...this.#problem.day, firings: 2}
    const firings = [...this.#once(), ...secondFires(null)]
    return this.#earnest({...this.#problem, day, firings}, {secondFires, ...(onOneFire ? {onOneFire} : {})})
  }

  #once(): FiringOption[] {
    return this.#problem.firings.filter((f) => !f.further?.length)
  }

  #earnest(
    problem: PlanProblem,
    {simulate = this.quick.simulate, secondFires, onOneFire}: Pick<PlanOptions, 'simulate' | 'secondFires' | 'onOneFire'>,
  ): Trial | null {
    const {cancelled} = this.quick
    if (problem.dishes.length > IN_EARNEST || !simulate || problem.done) return null
    const how: PlanOptions = {
      bare: true,
      asTold: this.now.without,
      simulate,
      ...(secondFires ? {secondFires} : {}),
      ...(onOneFire ? {onOneFire} : {}),
      ...(cancelled ? {cancelled} : {}),
    }
    return trialOf(problem, this.#replan(problem, how), this.#late)
  }

  /** What comes of a trial, in words: what still has no place, what still comes late, how much more wood. */
  outcome(
    {plan: tried, lack: {out: count, without, late, wanting, short}, problem, late: willDo}: Trial,
    wood: boolean,
  ): {readonly unit: 'phrases'; readonly phrases: readonly Phrase[]} {
    const {now} = this
    const phrases: Phrase[] = []
    const out = outOf(problem, tried, willDo)
    const lateNow = now.late
    const nowOut = outOf(this.#problem, this.#plan, willDo)
    const hours = {unit: 'minutes', value: rules.bearable} as const
    const orLate = more(out, outOf(problem, tried, true)) || more(nowOut, outOf(this.#problem, this.#plan, true))
    const minutes = {unit: 'minutes', value: late} as const
    const expected = this.#problem.day.people
    const [people, before] = [without, now.without].map((some) => Math.min(expected, Math.ceil(some))) as [number, number]
    if (out.size > 0)
      phrases.push(
        phrase(stillOut[`${people < before}`][`${orLate}`], {
          hours,
          count,
          people,
          before,
          dishes: {unit: 'dishes', dishes: [...out.keys()], whole: true},
        }),
      )
    else if (orLate) phrases.push(...(late > 0 ? [phrase('outcome in use', {hours})] : []))
    else if (now.out > 0 || (lateNow === 0 && now.wanting === 0)) phrases.push(phrase('outcome all'))
    if (late === 0 && lateNow > 0) phrases.push(phrase('outcome in time'))
    if (late > 0 && late !== lateNow)
      phrases.push(
        lateNow > 0
          ? phrase('outcome less late', {minutes, before: {unit: 'minutes', value: lateNow}})
          : phrase('outcome late', {minutes}),
      )
    if (wanting !== now.wanting)
      phrases.push(
        wanting === 0
          ? phrase('outcome heat')
          : phrase(wanting < now.wanting ? 'outcome less wanting' : 'outcome wanting', {count: wanting, before: now.wanting}),
      )
    else if (wanting > 0 && short <= now.short - NEARER) phrases.push(phrase('outcome more heat', {count: wanting}))
    const change = tried.score.wood - this.#plan.score.wood
    const kilograms = {unit: 'kilograms', value: Math.abs(change)} as const
    // A plan that sets nothing in burns its wood for nothing, and no other is measured by that.
    if (this.#plan.loads.length === 0 && !this.#problem.done) return {unit: 'phrases', phrases}
    if (Math.abs(change) >= LITTLE_WOOD)
      phrases.push(phrase(change > 0 ? 'outcome more wood' : 'outcome less wood', {wood: kilograms}))
    else if (wood) phrases.push(phrase('outcome same wood'))
    return {unit: 'phrases', phrases}
  }

  remedy(kind: Remedy['kind'], tried: Plan, words: Phrase): Remedy {
    const titles = new Map(this.#problem.dishes.map((d) => [d.id, d.title]))
    return {
      kind,
      works: tried.possible,
      wood: tried.score.wood - this.#plan.score.wood,
      late: minutesLateIn(this.#problem, tried) - this.now.late,
      say: speak(
        words,
        english((id) => titles.get(id) ?? id),
      ),
      words,
    }
  }
}

/** What is said of what a trial still leaves out: whether fewer go without, and whether some of it, or of the plan's, is baked but too late. */
const stillOut = {
  true: {true: 'outcome fewer or late', false: 'outcome fewer'},
  false: {true: 'outcome still or late', false: 'outcome still'},
} as const

/** True where one count of vessels has more of some dish than another. */
const more = (one: ReadonlyMap<string, number>, other: ReadonlyMap<string, number>): boolean =>
  [...one].some(([id, count]) => count > (other.get(id) ?? 0))

/** What comes of a trial, with more said of it before the last, which is the wood. */
export const beforeLast = (phrases: readonly Phrase[], more: readonly Phrase[]): Phrase[] => [
  ...phrases.slice(0, -1),
  ...more,
  ...phrases.slice(-1),
]

/** The plan's fire and the next shorter one; and where something is left out the next longer, since lit sooner it has the time to burn. */
export function firesNear(problem: PlanProblem, plan: Plan): FiringOption[] {
  const alike = problem.firings.filter((f) => (f.further?.length ?? 0) === (plan.fires?.length ?? 1) - 1)
  // Of two fires, those whose first is as long: the second may be lit at another hour.
  if (plan.fires?.[1]) return alike.filter((f) => f.firing.burn === plan.firing.burn)
  const mine = alike.findIndex((f) => f.firing.burn === plan.firing.burn)
  return mine < 0 ? [...problem.firings] : alike.slice(Math.max(0, mine - 1), mine + (plan.possible ? 1 : 2))
}
