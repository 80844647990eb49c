import {writeDuration} from '../measure/quantity.js'
import {scaled} from '../measure/range.js'
import {clockText} from '../oven/note-clock.js'
import {mayTakeFire} from '../scale/need.js'
import type {Dish} from '../scale/types.js'
import {amiss, minutesLate} from './asked.js'
import {check} from './check.js'
import type {Conflict, Missing, Replan} from './conflict.js'
import {handlingOf} from './hands.js'
import type {Hindrance, Nightly} from './hindered.js'
import {bearable, dueOf, feedsOf, type Job} from './model.js'
import type {PlanOptions, Simulate} from './options.js'
import {english, type PhraseId, phrase, speak} from './phrases.js'
import {rules} from './rules.js'
import type {Settled} from './settled.js'
import type {FiringOption, Phrase, PhraseValue, Plan, PlanProblem, Remedy} from './types.js'

/** How much of a day a plan does not give. */
interface Lack {
  /** Vessels left out. */
  readonly out: number
  /** People whom they were to feed, each dish counted by itself. */
  readonly without: number
  /** Minutes late in all, each dish counted once. */
  readonly late: number
  /** Dishes set in or drawn with less heat than they should have, on a day that has begun. */
  readonly wanting: number
}

/** Minutes by which a fire may be lit earlier, in steps of half an hour, and within which it is lit as early as it may be. */
const EARLIER = {step: 30, most: 240} as const
/** Minutes late, at the worst, from which on a second fire is tried. */
const FIRE_AGAIN = 60
/** Ways out that make the day as it was asked for, after which no more are looked for. */
const ENOUGH = 2
/** Dishes in the way of a late one that are left out for a trial. */
const IN_THE_WAY = 2
/** How many dishes may be left out for their heat and their places to be worth a trial, and trials of leaving out others for them. */
const FEW = 2
const EXCHANGES = 2
/** Dishes up to which a way out is planned in earnest before it is offered. */
const IN_EARNEST = 12
/** Pairs of hands above which one more is no help that can be had, and share of them that an opening takes where one more may help. */
const MOST_HANDS = 6
const BUSY = 0.75

/**
 * When each dish would come too late to be of use, and a day planned in earnest rather leaves it out (`Job.bears`); never where `late` says
 * that it will do.
 */
function uselessFrom(problem: PlanProblem, late: boolean): (dish: string) => number {
  const {done} = problem
  const from = new Map(
    (late ? [] : problem.dishes).map((dish) => {
      const due = dueOf(dish, problem.day.serve)
      if (due === null) return [dish.id, Number.POSITIVE_INFINITY]
      // The fire of a day that has begun is what it is, and says nothing of how soon another would have it.
      return [dish.id, done ? Math.max(due, done.now) + rules.bearable : due + bearable(problem, dish, due)]
    }),
  )
  return (dish) => from.get(dish) ?? Number.POSITIVE_INFINITY
}

/** Vessels of each dish that a plan has not, or, unless `late` says that they will do, too late to be of use. */
function outOf(problem: PlanProblem, plan: Plan, late: boolean): Map<string, number> {
  const left = new Map(problem.dishes.map((d) => [d.id, d.count]))
  const less = (id: string, count: number): void => void left.set(id, (left.get(id) ?? 0) - count)
  const useless = uselessFrom(problem, late)
  for (const load of plan.loads) for (const d of load.dishes) if (d.draw.likely <= useless(d.dish)) less(d.dish, d.count)
  // What was drawn before the day was planned again stands in no load.
  for (const s of problem.done?.set ?? []) if (s.drawn !== null) less(s.dish, s.count)
  return new Map([...left].filter(([, count]) => count > 0))
}

function lackOf(problem: PlanProblem, plan: Plan, late: boolean): Lack {
  const left = outOf(problem, plan, late)
  const without = problem.dishes.reduce((sum, dish) => sum + feedsOf({dish, count: left.get(dish.id) ?? 0}), 0)
  return {
    out: [...left.values()].reduce((sum, n) => sum + n, 0),
    // To a thousandth, so that sums in another order are the same.
    without: Math.round(1000 * without) / 1000,
    late: lateIn(problem, plan, late),
    wanting: new Set(plan.loads.flatMap((load) => load.dishes.flatMap((d) => (d.eased ? [d.dish] : [])))).size,
  }
}

function lateIn(problem: PlanProblem, plan: Plan, willDo: boolean): number {
  const useless = uselessFrom(problem, willDo)
  // What comes too late to be of use counts as left out.
  return minutesLate(
    problem,
    amiss(problem, plan).late.filter(({dish, drawn}) => drawn <= useless(dish)),
  )
}

const lessThan = (a: Lack, b: Lack): boolean =>
  a.without < b.without || (a.without === b.without && (a.out < b.out || (a.out === b.out && a.late < b.late)))

/** Minutes later in all that a vessel more with its place may cost, or the same people fed by fewer. */
const LATER = 120
/** Share of the minutes late that has to go for leaving something out, or making less, to be worth it. */
const WORTH = 0.5

/** True where a trial lacks less than the day does, and does not make far more of it late. */
const helps = (tried: Lack, now: Lack): boolean =>
  lessThan(tried, now) && tried.late <= now.late + LATER * Math.max(tried.without < now.without ? 1 : 0, now.out - tried.out)

/** True where a trial that does without something asked for leaves no more out than the day does, and far less of it comes late. */
const spares = (tried: Lack, now: Lack): boolean =>
  tried.without <= now.without && tried.late <= (1 - WORTH) * now.late && tried.late < now.late

/** A day, changed or not, planned otherwise. */
interface Trial {
  readonly plan: Plan
  readonly lack: Lack
  readonly problem: PlanProblem
  /** What comes too late to be of use will do. */
  readonly late: boolean
}

function trialOf(problem: PlanProblem, plan: Plan, late: boolean): Trial {
  return {plan, lack: lackOf(problem, plan, late), problem, late}
}

/** How else a day is planned: in another oven, lit so many minutes sooner, or all anew though there is a plan to go on from. */
interface Otherwise {
  readonly simulate?: Simulate | undefined
  readonly sooner?: number
  readonly anew?: boolean
}

/** Tries changed days on the simulated oven and says what comes of them. */
class Trials {
  readonly quick: PlanOptions
  readonly #problem: PlanProblem
  readonly #plan: Plan
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
   * The day with something changed as it will be planned when it is changed so: a short trial of fires about as long as the plan's may promise
   * more than that keeps, or less. Null of a large day, where the trial has to do.
   */
  inEarnest(change: Pick<PlanProblem, 'day'>): Trial | null {
    const problem = {...this.#problem, ...change}
    const {simulate, cancelled} = this.quick
    if (problem.dishes.length > IN_EARNEST || !simulate || problem.done) return null
    // Second fires that were made for this plan are none of the day's.
    const firings = problem.day.firings > 1 ? problem.firings : problem.firings.filter((f) => !f.further?.length)
    const how: PlanOptions = {bare: true, inTime: true, simulate, ...(cancelled ? {cancelled} : {})}
    return trialOf(problem, this.#replan({...problem, firings}, how), this.#late)
  }

  /** What comes of a trial, in words: what still has no place, what still comes late, how much more wood. */
  outcome(
    {plan: tried, lack: {out: count, without, late, wanting}, problem, late: willDo}: Trial,
    wood: boolean,
  ): {readonly unit: 'phrases'; readonly phrases: readonly Phrase[]} {
    const {now} = this
    const phrases: Phrase[] = []
    const out = outOf(problem, tried, willDo)
    const minutes = {unit: 'minutes', value: late} as const
    const [people, before] = [without, now.without].map(Math.ceil) as [number, number]
    if (out.size > 0)
      phrases.push(
        phrase(people < before ? 'outcome fewer' : 'outcome still', {
          count,
          people,
          before,
          dishes: {unit: 'dishes', dishes: [...out.keys()], whole: true},
        }),
      )
    else if (now.out > 0 || (now.late === 0 && now.wanting === 0)) phrases.push(phrase('outcome all'))
    if (late === 0 && now.late > 0) phrases.push(phrase('outcome in time'))
    if (late > 0 && late !== now.late)
      phrases.push(
        now.late > 0
          ? phrase('outcome less late', {minutes, before: {unit: 'minutes', value: now.late}})
          : phrase('outcome late', {minutes}),
      )
    if (wanting !== now.wanting)
      phrases.push(
        wanting === 0
          ? phrase('outcome heat')
          : phrase(wanting < now.wanting ? 'outcome less wanting' : 'outcome wanting', {count: wanting, before: now.wanting}),
      )
    const more = tried.score.wood - this.#plan.score.wood
    const kilograms = {unit: 'kilograms', value: Math.abs(more)} as const
    if (Math.abs(more) >= LITTLE_WOOD)
      phrases.push(phrase(more > 0 ? 'outcome more wood' : 'outcome less wood', {wood: kilograms}))
    else if (wood) phrases.push(phrase('outcome same wood'))
    return {unit: 'phrases', phrases}
  }

  remedy(kind: Remedy['kind'], tried: Plan, words: Phrase): Remedy {
    const titles = new Map(this.#problem.dishes.map((d) => [d.id, d.title]))
    return {
      kind,
      works: tried.possible,
      wood: tried.score.wood - this.#plan.score.wood,
      late: lateIn(this.#problem, tried, this.#late || kind === 'late') - this.now.late,
      say: speak(
        words,
        english((id) => titles.get(id) ?? id),
      ),
      words,
    }
  }
}

/** What comes of a trial, with more said of it before the last, which is the wood. */
const beforeLast = (phrases: readonly Phrase[], more: readonly Phrase[]): Phrase[] => [
  ...phrases.slice(0, -1),
  ...more,
  ...phrases.slice(-1),
]

/** kg of wood that nobody minds. */
const LITTLE_WOOD = 0.5

/**
 * Ways out of a day that cannot be done as it was asked for, which change the whole day: lighting earlier, more hands, a second fire; and
 * where something comes late, less of it, or leaving out what is in its way. Each is tried by planning the day with it, shortly, on fires
 * about as long as the plan's, and offered only where less is left out than in the plan, or as much and less of it late.
 *
 * @param plan The plan, with its loads.
 * @param from The same, to be gone on from; every trial is planned anew without.
 * @returns The ways that help, in the order in which they are tried.
 */
export function waysOf(
  problem: PlanProblem,
  plan: Plan,
  options: PlanOptions,
  replan: Replan,
  from: Settled | null = null,
): Remedy[] {
  const trials = new Trials(problem, plan, options, replan, from)
  const {day} = problem
  const near = firesNear(problem, plan)
  const ways: Remedy[] = []
  const enough = (): boolean => ways.filter((w) => w.works && w.late === -trials.now.late).length >= ENOUGH
  // Where something has no place already, no more is left out for the rest to be in time.
  const whole = trials.now.out === 0
  const late = [...amiss(problem, plan).late].sort((a, b) => b.drawn - b.wanted - (a.drawn - a.wanted))
  const worst = late[0] ? late[0].drawn - late[0].wanted : 0

  if (plan.lit <= day.fireFrom + EARLIER.step) {
    const sooner = (minutes: number): Pick<PlanProblem, 'day'> => ({day: {...day, fireFrom: day.fireFrom - minutes}})
    const shortly = (minutes: number) => ({minutes, ...trials.plan({firings: near, ...sooner(minutes)}, {sooner: minutes})})
    const earnestly = (minutes: number, tried?: Trial) => ({
      minutes,
      ...(trials.inEarnest(sooner(minutes)) ?? tried ?? shortly(minutes)),
    })
    const step = (minutes: number): number =>
      Math.min(
        EARLIER.most,
        EARLIER.step * Math.floor(day.fireFrom / EARLIER.step),
        EARLIER.step * Math.ceil(minutes / EARLIER.step),
      )
    const isWhole = ({lack}: Trial): boolean => lack.out === 0 && lack.late === 0
    const first = step(worst > 0 ? worst : 2 * EARLIER.step)
    if (first > 0) {
      let best = shortly(first)
      const good = isWhole(best)
      const next = step(good ? first / 2 : 2 * first)
      if (next !== first) {
        const other = shortly(next)
        if (good ? !lessThan(best.lack, other.lack) : lessThan(other.lack, best.lack)) best = other
      }
      best = earnestly(best.minutes, best)
      const further = step(2 * best.minutes)
      // Where something is left out each such plan takes as long as the day's own.
      if (!isWhole(best) && further !== best.minutes && (whole || !helps(best.lack, trials.now))) {
        const other = earnestly(further)
        // Nobody rises sooner than need be.
        const between = step((best.minutes + further) / 2)
        const midway = whole && isWhole(other) && between < further ? earnestly(between) : null
        if (lessThan(other.lack, best.lack)) best = midway && isWhole(midway) ? midway : other
      }
      if (helps(best.lack, trials.now) && best.plan.lit < day.fireFrom)
        ways.push(
          trials.remedy(
            'earlier fire',
            best.plan,
            phrase('remedy earlier fire', {
              minutes: {unit: 'minutes', value: best.minutes},
              from: {unit: 'clock', value: day.fireFrom - best.minutes},
              at: {unit: 'clock', value: best.plan.lit},
              outcome: trials.outcome(best, false),
            }),
          ),
        )
    }
  }
  if (day.hands < MOST_HANDS && handsFull(problem, plan)) {
    const tried = trials.plan({firings: near, day: {...day, hands: day.hands + 1}})
    if (helps(tried.lack, trials.now))
      ways.push(
        trials.remedy(
          'more hands',
          tried.plan,
          phrase('remedy more hands', {hands: day.hands + 1, outcome: trials.outcome(tried, false)}),
        ),
      )
  }
  // What comes a little late is no reason to fire again.
  const second = day.firings > 1 || enough() || (whole && worst < FIRE_AGAIN) ? [] : (options.secondFires?.(plan.firing) ?? [])
  if (second.length > 0) {
    const tried = trials.plan({firings: second})
    const fire = tried.plan.fires?.[1]
    // Where something is left out, another fire is for having that.
    if (fire && helps(tried.lack, trials.now) && (whole || tried.lack.without < trials.now.without))
      ways.push(trials.remedy('second fire', tried.plan, secondFire(fire, trials.outcome(tried, true).phrases)))
  }
  const slow = problem.dishes.find((d) => d.id === late[0]?.dish)
  if (slow && whole && slow.count > 1 && !enough()) {
    const count = Math.ceil(slow.count / 2)
    const tried = trials.plan({firings: near, dishes: problem.dishes.map((d) => (d === slow ? fewerOf(d, count) : d))})
    // Vessels not asked for again are as good as left out, so nothing else may be.
    if (spares(tried.lack, trials.now))
      ways.push(
        trials.remedy(
          'smaller batch',
          tried.plan,
          phrase('remedy smaller batch', {
            count,
            all: slow.count,
            dishes: {unit: 'dishes', dishes: [slow.id]},
            outcome: trials.outcome(tried, false),
          }),
        ),
      )
  }
  // Which dish has to be shifted aside is for the planner to find: the late one, or one that it would have to pass.
  const aside = slow && whole && worst >= FIRE_AGAIN ? [slow.id, ...inTheWay(problem, plan, slow.id).slice(0, IN_THE_WAY)] : []
  for (const id of aside) {
    const dish = problem.dishes.find((d) => d.id === id)
    const way = dish && !enough() ? oneMove(problem, dish, trials, {firings: near}, (lack) => spares(lack, trials.now)) : null
    if (!way) continue
    ways.push(way)
    break
  }
  for (const other of slow && whole ? inTheWay(problem, plan, slow.id).slice(0, IN_THE_WAY) : []) {
    if (enough()) break
    const tried = trials.plan({firings: near, dishes: problem.dishes.filter((d) => d.id !== other)})
    if (!spares(tried.lack, trials.now)) continue
    ways.push(
      trials.remedy(
        'leave out',
        tried.plan,
        phrase('remedy leave out', {dishes: {unit: 'dishes', dishes: [other]}, outcome: trials.outcome(tried, false)}),
      ),
    )
  }
  return ways
}

/** A fire that still burns, as it could go on. */
export interface StillBurning {
  /** Minutes by which it ought to burn for longer than planned, to bring the oven to the heat it was to have; less than 0 where it ought to be raked sooner. */
  readonly ought: number
  /** It is the last of the day's fires that burns, not the first. */
  readonly again: boolean
  /** The fire with so many minutes more, or fewer; null where it can be neither fed nor raked then. */
  readonly option: (minutes: number) => FiringOption | null
}

/** Minutes sooner that a later fire is tried to be raked. */
export const SOONER = 30
/** Minutes late in all that a dish which wants some of its heat is worth. */
const WANTING = 15
/** Minutes by which a set-in may move before it is worth another fire to keep the hours, and by how much nearer they then have to be. */
const HOURS = {off: 45, nearer: 20} as const

/** Minutes by which what is wanted by some hour is set in furthest off the time at which the plan in hand has it, the delay of the fire allowed for. */
function offHours({done, day, dishes}: PlanProblem, plan: Plan): number {
  const before = done?.plan
  if (!before) return 0
  const wanted = new Set(dishes.flatMap((dish) => (dueOf(dish, day.serve) === null ? [] : [dish.id])))
  const first = (of: Plan): Map<string, number> => {
    const at = new Map<string, number>()
    for (const load of of.loads)
      for (const d of load.dishes) if (wanted.has(d.dish)) at.set(d.dish, Math.min(load.at, at.get(d.dish) ?? load.at))
    return at
  }
  const was = first(before)
  const late = plan.lit - before.lit
  return Math.max(0, ...Array.from(first(plan), ([dish, at]) => Math.abs(at - late - (was.get(dish) ?? at - late))))
}

/**
 * What letting the fire burn on, or raking it out sooner, would do for a day whose fire still burns and which will not be as it was asked
 * for, or hours off what was planned. Tried by planning the rest of the day on such a fire, shortly, twice: for as long as it ought to burn,
 * and then for less where that did, and for more where it did not.
 *
 * @param problem The rest of the day, on the fire as it was planned.
 * @param plan The plan for that.
 * @returns The better of the two, where it helps; else nothing.
 */
export function burnWays(
  problem: PlanProblem,
  plan: Plan,
  {ought, again, option}: StillBurning,
  options: PlanOptions,
  replan: Replan,
): Remedy[] {
  const trials = new Trials(problem, plan, options, replan)
  const {now} = trials
  const price = ({late, wanting}: Lack): number => late + WANTING * wanting
  const lacksLess = (a: Lack, b: Lack): boolean =>
    a.without < b.without || (a.without === b.without && (a.out < b.out || (a.out === b.out && price(a) < price(b))))
  const whole = (lack: Lack): boolean => lack.out === 0 && price(lack) === 0
  const off = offHours(problem, plan)
  if (whole(now) && off < HOURS.off) return []
  const fireOf = ({fires, ...first}: Plan): Pick<Plan, 'firing' | 'raked'> => (again ? fires!.at(-1)! : first)
  const burning = (minutes: number): (Trial & {readonly minutes: number; readonly off: number}) | null => {
    const fire = option(rules.tick * Math.round(minutes / rules.tick))
    if (!fire) return null
    const trial = trials.plan({firings: [fire]})
    return {...trial, minutes: fireOf(trial.plan).firing.burn - fireOf(plan).firing.burn, off: offHours(problem, trial.plan)}
  }
  let best = burning(ought)
  if (!best) return []
  const good = whole(best.lack)
  const other = burning(good === ought > 0 ? ought / 2 : ought * 1.5)
  if (other && other.minutes !== best.minutes) {
    const asGood = !lacksLess(best.lack, other.lack) && other.off < Math.max(best.off, HOURS.off)
    if (good ? asGood : lacksLess(other.lack, best.lack)) best = other
  }
  // Ready sooner with less heat, a later fire may do more for its day than with the heat it ought to have.
  const sooner = again && !lacksLess(best.lack, now) ? (burning(-SOONER) ?? burning(-SOONER / 2)) : null
  if (sooner && lacksLess(sooner.lack, best.lack)) best = sooner
  const nearer = off >= HOURS.off && best.off <= off - HOURS.nearer
  if (!lacksLess(best.lack, now) && !(nearer && !lacksLess(now, best.lack))) return []
  const {phrases} = trials.outcome(best, false)
  const minutes = (value: number): PhraseValue => ({unit: 'minutes', value})
  const hours = nearer ? [phrase('outcome hours', {minutes: minutes(best.off), before: minutes(off)})] : []
  const longer = best.minutes > 0
  const words = phrase(longer ? 'remedy longer fire' : 'remedy shorter fire', {
    minutes: minutes(Math.abs(best.minutes)),
    at: {unit: 'clock', value: fireOf(best.plan).raked},
    outcome: {unit: 'phrases', phrases: beforeLast(phrases, hours)},
  })
  return [trials.remedy(longer ? 'longer fire' : 'shorter fire', best.plan, words)]
}

/**
 * What another fire would do for a day that has begun, whose fire is out, with no other lit yet, and whose oven is too cool for all that was
 * asked for. Tried by planning the rest of the day on it, shortly: lit as soon as what is in the oven now is drawn, when another was to be,
 * and when all is drawn that the plan still has for the day; and burning for longer where that leaves something out.
 *
 * @param problem The rest of the day, without such a fire.
 * @param plan The plan for that.
 * @param another The first fire and another, in place of what is to come, lit at a time, minutes after midnight, and burning for so many
 *   minutes; null where it cannot be lit then.
 * @returns The best of them, where less is left out or it is far less late, and nothing that is in the oven comes out with less of its heat;
 *   else nothing.
 */
export function againWays(
  problem: PlanProblem,
  plan: Plan,
  another: (at: number, minutes: number) => FiringOption | null,
  options: PlanOptions,
  replan: Replan,
): Remedy[] {
  // A fire that has something hours after it was wanted is not worth its wood.
  const trials = new Trials(problem, plan, options, replan, null, false, false)
  const {now} = trials
  const worst = Math.max(0, ...amiss(problem, plan).late.map(({drawn, wanted}) => drawn - wanted))
  if (now.out === 0 && worst < FIRE_AGAIN) return []
  const early = ({score}: Plan): number => score.earlyMinutes ?? 0
  const fired = (at: number, minutes: number): Trial | null => {
    const fire = another(at, minutes)
    if (!fire) return null
    const trial = trials.plan({firings: [fire]})
    const {lack, plan: tried} = trial
    // What is wanted hot and would have no place is rather had too soon; where all has one, what it comes too soon counts as late.
    const sooner = Math.max(0, early(tried) - early(plan))
    const worthIt =
      now.out === 0 ? spares({...lack, late: lack.late + sooner}, now) : helps(lack, now) && lack.without < now.without
    return worthIt && wantsInside(tried) <= wantsInside(plan) + LESS_DONE ? trial : null
  }
  const drawn = plan.loads.flatMap(({dishes}) => dishes)
  const soonest = Math.max(
    rules.tick * Math.ceil(problem.done!.now / rules.tick),
    ...drawn.flatMap((d) => (d.alreadyIn ? [d.draw.likely] : [])),
  )
  const night = rules.nightFrom + 1440 * Math.ceil((soonest - rules.nightFrom) / 1440)
  const last = Math.max(soonest, ...drawn.flatMap((d) => (d.draw.likely < night ? [d.draw.likely] : [])))
  const toCome = plan.fires?.find((fire) => fire.lit >= soonest)
  const planned = toCome?.lit ?? soonest
  const hours = [...new Set([soonest, planned, last])]
  let best: Trial | null = null
  const {burns} = rules.fireAgain
  // An oven hotter than it was believed to be wants less of the fire to come than was planned, and is ready for the rest the sooner.
  const half = toCome ? SHORTEST * Math.round(toCome.firing.burn / 2 / SHORTEST) : 0
  for (const minutes of half >= SHORTEST && half < burns[0] ? [...burns, half] : burns)
    for (const at of minutes === burns[0] ? hours : [best?.plan.fires?.at(-1)?.lit ?? planned]) {
      if (best && best.lack.out === 0 && early(best.plan) <= early(plan)) break
      const tried: Trial | null = fired(at, minutes)
      if (!tried) continue
      const hotter = best !== null && !lessThan(best.lack, tried.lack) && early(tried.plan) < early(best.plan)
      if (best === null || lessThan(tried.lack, best.lack) || hotter) best = tried
    }
  const fire = best?.plan.fires?.at(-1)
  if (!best || !fire) return []
  const note = `fire again at ${clockText(fire.lit)} for ${writeDuration(fire.firing.burn)}`
  const {phrases} = trials.outcome(best, true)
  const sooner = early(best.plan) - early(plan)
  const hot = sooner > 0 ? [phrase('outcome too soon', {minutes: {unit: 'minutes', value: sooner}})] : []
  const words = phrase('remedy fire again', {
    at: {unit: 'clock', value: fire.lit},
    raked: {unit: 'clock', value: fire.raked},
    outcome: {unit: 'phrases', phrases: beforeLast(phrases, hot)},
    note,
  })
  return [{...trials.remedy('second fire', best.plan, words), note}]
}

/** Minutes that a fire burns at the least, and by which such fires differ. Common practice, no source. */
const SHORTEST = 15

/** Share of its heat by which what is in the oven may come out with less for another fire: less than anyone can tell. */
const LESS_DONE = 0.02

/** Shares of its heat that what is in the oven wants when it is drawn, in all. */
function wantsInside({loads}: Plan): number {
  return loads.flatMap(({dishes}) => dishes).reduce((sum, d) => sum + (d.alreadyIn ? 1 - Math.min(1, d.eased?.dose ?? 1) : 0), 0)
}

/** A dish of fewer vessels, which feed the fewer. */
function fewerOf(dish: Dish, count: number): Dish {
  return {...dish, count, feeds: scaled(dish.feeds, count / dish.count)}
}

/** By how much less a plan has to come to for another fire to be worth the trouble. */
const WORTH_A_FIRE = 3

/**
 * A second fire for what a day that is to be fired once wants hot: where that does not come hot, or only by burning far more wood in one fire.
 *
 * @returns Null where nothing is wanted hot, or one fire does about as well.
 */
export function fireForHot(
  problem: PlanProblem,
  plan: Plan,
  options: PlanOptions,
  replan: Replan,
  from: Settled | null = null,
): Remedy | null {
  if (problem.day.firings > 1 || !problem.dishes.some(({wantedHot}) => wantedHot)) return null
  const firings = options.secondFires?.(plan.firing) ?? []
  if (firings.length === 0) return null
  const trials = new Trials(problem, plan, options, replan, from)
  const tried = trials.plan({firings})
  const fire = tried.plan.fires?.[1]
  if (!fire || lessThan(trials.now, tried.lack) || tried.plan.score.total > plan.score.total - WORTH_A_FIRE) return null
  const [early, now] = [tried.plan.score.earlyMinutes ?? 0, plan.score.earlyMinutes ?? 0]
  const outcome = trials.outcome(tried, true).phrases.filter(({id}) => id !== 'outcome all')
  const hot = early >= now ? [] : [phrase(early === 0 ? 'outcome hot' : 'outcome hotter')]
  return trials.remedy('second fire', tried.plan, secondFire(fire, [...hot, ...outcome]))
}

/** A second fire, and what comes of it. */
function secondFire({firing, lit}: NonNullable<Plan['fires']>[number], phrases: readonly Phrase[]): Phrase {
  return phrase('remedy second fire', {
    minutes: {unit: 'minutes', value: firing.burn},
    at: {unit: 'clock', value: lit},
    outcome: {unit: 'phrases', phrases},
  })
}

/** True where the hands are what an opening of the door has too little of, or nearly. */
function handsFull({day, dishes}: PlanProblem, plan: Plan): boolean {
  const each = new Map(dishes.map((d) => [d.id, handlingOf(d)]))
  const work = new Map<number, number>()
  for (const load of plan.loads)
    for (const {dish, count, draw} of load.dishes)
      for (const at of [load.at, draw.likely]) work.set(at, (work.get(at) ?? 0) + count * (each.get(dish) ?? 0))
  return Math.max(...work.values()) >= BUSY * rules.tick * day.hands
}

/** The plan's fire and the next shorter one; and where something is left out the next longer, since lit sooner it has the time to burn. */
function firesNear(problem: PlanProblem, plan: Plan): FiringOption[] {
  const alike = problem.firings.filter((f) => (f.further?.length ?? 0) === (plan.fires?.length ?? 1) - 1)
  const mine = alike.findIndex((f) => f.firing.burn === plan.firing.burn)
  return mine < 0 ? [...problem.firings] : alike.slice(Math.max(0, mine - 1), mine + (plan.possible ? 1 : 2))
}

/** Dishes that stand in the oven while another waits for it, those that take most of its time and floor first. */
function inTheWay(problem: PlanProblem, plan: Plan, late: string): string[] {
  const size = new Map(problem.dishes.map((d) => [d.id, areaOf(d)]))
  const starts = plan.loads.filter((l) => l.dishes.some((d) => d.dish === late)).map((l) => l.at)
  const start = Math.max(...starts)
  const taken = new Map<string, number>()
  for (const load of plan.loads)
    for (const d of load.dishes) {
      if (d.dish === late || load.at > start) continue
      const minutes = Math.max(rules.tick, Math.min(start, d.draw.likely) - load.at)
      taken.set(d.dish, (taken.get(d.dish) ?? 0) + minutes * d.count * (size.get(d.dish) ?? 0))
    }
  return [...taken].sort((a, b) => b[1] - a[1]).map(([id]) => id)
}

/**
 * A dish shifted aside for a moment, once or twice, where that helps: what stands in front of what is drawn first need only be out of the way
 * for as long as that takes.
 */
function oneMove(
  problem: PlanProblem,
  dish: Dish,
  trials: Trials,
  how: Otherwise & {readonly firings?: readonly FiringOption[]},
  helpful: (lack: Lack) => boolean,
): Remedy | null {
  const {firings, ...otherwise} = how
  const shifted = problem.dishes.map((d) => (d.id === dish.id ? {...d, shifts: true} : d))
  const tried = trials.plan({dishes: shifted, ...(firings ? {firings} : {})}, otherwise)
  const past = check(problem, tried.plan).filter((v) => v.rule === 'reach')
  const [move, then, ...further] = [...new Set(past.map((v) => v.at!))].sort((a, b) => a - b)
  if (move === undefined || further.length > 0 || !helpful(tried.lack)) return null
  return trials.remedy(
    'one move',
    tried.plan,
    phrase(then === undefined ? 'remedy one move' : 'remedy two moves', {
      dishes: {unit: 'dishes', dishes: [dish.id]},
      at: {unit: 'clock', value: move},
      ...(then === undefined ? {} : {again: {unit: 'clock', value: then}}),
      others: {unit: 'dishes', dishes: reached(past, dish.id)},
      outcome: trials.outcome(tried, false),
    }),
  )
}

/** What a dish is shifted aside for: others, or where only some of its own vessels stand before the rest of them, itself. */
function reached(past: readonly {readonly dish?: string | null}[], id: string): string[] {
  const all = [...new Set(past.flatMap(({dish}) => dish ?? []))]
  const others = all.filter((other) => other !== id)
  return others.length > 0 ? others : [id]
}

/** m² that one vessel of a dish takes. */
function areaOf({vessel: {footprint}}: Dish): number {
  return footprint.shape === 'circle' ? (Math.PI / 4) * footprint.diameter ** 2 : footprint.length * footprint.width
}

/** The oven with its door left open for so long in the evening; minutes after midnight. */
export interface DoorOpen {
  readonly from: number
  readonly minutes: number
  readonly simulate: Simulate
}

/** Dishes whose vessels do not go in, for each of which a smaller one is tried. */
const SMALLER = 4

/**
 * What would give dishes their place whose vessels do not go into the oven: vessels of the same shape that do, holding as much. Each is tried by
 * planning the day with it, shortly, and offered only where fewer people go without than by the plan.
 *
 * @param lone The dishes that do not go in.
 * @returns The way out of each that has one, by its id.
 */
export function inSmallerVessels(
  problem: PlanProblem,
  plan: Plan,
  lone: readonly Dish[],
  options: PlanOptions,
  replan: Replan,
): Map<string, Remedy> {
  const out = new Map<string, Remedy>()
  const trials = new Trials(problem, plan, options, replan)
  let tries = 0
  for (const {id, instead} of lone) {
    if (!instead || out.has(id) || tries === SMALLER) continue
    const {amount, dishes, of} = instead
    const rest = problem.dishes.filter((dish) => !of.includes(dish.id))
    if (dishes.some((dish) => rest.some((other) => other.id === dish.id))) continue
    tries++
    // What is to fill the floor puts nothing else out: there are as many of it as then have a place.
    const filling = rest.filter(({fills}) => fills !== undefined)
    const day = problem.dishes.flatMap((d) => (d.id === of[0] ? dishes : of.includes(d.id) || filling.includes(d) ? [] : [d]))
    const tried = trials.plan({dishes: day})
    if (tried.lack.without >= trials.now.without) continue
    const outcome = trials.outcome(tried, false)
    const {phrases} = outcome
    const words = phrase('remedy smaller vessel', {
      dishes: {unit: 'dishes', dishes: [...of], whole: true},
      amount,
      outcome: filling.length === 0 ? outcome : {...outcome, phrases: [...phrases.filter(isNoWood), refilled(filling)]},
    })
    const remedy = trials.remedy('smaller vessel', tried.plan, words)
    for (const one of of) out.set(one, remedy)
  }
  return out
}

/** The wood of a day without what is to fill the floor says nothing of the day with it. */
const isNoWood = ({id}: Phrase): boolean => !/ wood$/.test(id)

const refilled = (filling: readonly Dish[]): Phrase =>
  phrase('outcome filled', {dishes: {unit: 'dishes', dishes: filling.map(({id}) => id), whole: true}})

/** What is known of dishes that have no place, by their ids. */
export interface Known {
  /** The plan, to be gone on from. */
  readonly from?: Settled | null
  /** What hinders it. */
  readonly hindered?: ReadonlyMap<string, Pick<Hindrance, 'rule'>>
  /** The plan with it set in among the rest, hours after it is wanted; null where it has no place so either. */
  readonly lateWith?: (dish: string) => Plan | null
  /** When it would have its place but for the night. */
  readonly nightly?: ReadonlyMap<string, Pick<Nightly, 'from'>>
  /** How the oven can be let fall for it before the night, the shortest time first. */
  readonly doorOpen?: (job: Job) => readonly DoorOpen[]
}

/**
 * What would give single dishes their place: other heat, being shifted aside for a moment, or another dish left out instead of it. Each is
 * tried by planning the day with it, and offered only where fewer people go without than by the plan.
 *
 * @param conflicts For each dish left out, the dishes with which it does not go together.
 * @param known What is known of the dishes in the plan as it stands.
 */
export function remediesOf(
  problem: PlanProblem,
  plan: Plan,
  missing: readonly Missing[],
  conflicts: ReadonlyMap<string, Pick<Conflict, 'others'>>,
  options: PlanOptions,
  replan: Replan,
  {from = null, hindered = new Map(), lateWith = () => null, nightly = new Map(), doorOpen = () => []}: Known = {},
): Map<string, Remedy[]> {
  const out = new Map<string, Remedy[]>()
  // Once the day has begun nobody waits for it to be laid out anew, time after time.
  const trials = new Trials(problem, plan, options, replan, from, problem.done !== undefined)
  const add = (dish: string, remedy: Remedy): void => void out.set(dish, [...(out.get(dish) ?? []), remedy])
  const gives = (lack: Lack): boolean => lack.without < trials.now.without && helps(lack, trials.now)
  const near = problem.done ? problem.firings : firesNear(problem, plan)
  const stated = new Set<string>()
  let exchanges = 0
  for (const {job, count} of missing) {
    const {dish} = job
    const who = {unit: 'dishes' as const, dishes: [dish.id]}
    const late = lateWith(dish.id)
    if (late) {
      const drawn = late.loads.flatMap((l) => l.dishes.filter((d) => d.dish === dish.id).map((d) => d.draw.likely))
      const words = phrase('remedy late', {
        dishes: who,
        at: {unit: 'clock', value: Math.max(...drawn)},
        outcome: trials.outcome(trialOf(problem, late, true), false),
      })
      add(dish.id, trials.remedy('late', late, words))
    }
    const night = nightly.get(dish.id)
    for (const open of night ? doorOpen(job) : []) {
      const tried = trials.plan({}, {simulate: open.simulate})
      if (!gives(tried.lack)) continue
      const words = phrase('remedy door open', {
        minutes: {unit: 'minutes', value: open.minutes},
        at: {unit: 'clock', value: open.from},
        outcome: trials.outcome(tried, false),
      })
      add(dish.id, trials.remedy('door open', tried.plan, words))
      break
    }
    // What is known to be in its way says what may help.
    const rule = hindered.get(dish.id)?.rule
    if (missing.length <= FEW && rule !== 'hands' && rule !== 'dough') {
      const way = otherHeat(problem, dish, trials, options, night, gives, stated)
      if (way) add(dish.id, way)
    }
    if (missing.length <= FEW && (rule === undefined || rule === 'room')) {
      // On a day that has begun that is for moving others as well.
      const way = oneMove(problem, dish, trials, {anew: problem.done !== undefined}, gives)
      if (way) add(dish.id, way)
    }
    // Another is worth leaving out only where that is less than what is left out for it.
    const others = (conflicts.get(dish.id)?.others ?? []).flatMap((id) => problem.dishes.find((d) => d.id === id) ?? [])
    const less = others
      .filter((d) => d.feeds.likely < feedsOf({dish, count}) && !missing.some((m) => m.job.dish.id === d.id) && !problem.done)
      .sort((a, b) => a.feeds.likely - b.feeds.likely)
    for (const other of less.slice(0, exchanges++ < EXCHANGES ? 1 : 0)) {
      const tried = trials.plan({firings: near, dishes: problem.dishes.filter((d) => d !== other)})
      if (gives({...tried.lack, out: tried.lack.out + other.count, without: tried.lack.without + other.feeds.likely}))
        add(
          dish.id,
          trials.remedy(
            'leave out',
            tried.plan,
            phrase('remedy leave out', {
              dishes: {unit: 'dishes', dishes: [other.id]},
              outcome: trials.outcome(tried, false),
            }),
          ),
        )
    }
  }
  return out
}

/** Degrees beyond a dish's limits to either side at which it is tried: as a cook would take it. Common practice, no source. */
const BEYOND = [12, 25] as const
/** Degrees to which a receipt states its heat. */
const STATED = 5

/**
 * A dish had at another heat than its receipt's: set in before the night in the hotter oven; or with that heat in the front matter of its
 * receipt, which is of all its batches, and of whatever else is in the file. What comes of that is tried as it would be read.
 *
 * @param stated Files whose heat has been tried so already; what is found of this dish's is added.
 */
function otherHeat(
  problem: PlanProblem,
  dish: Dish,
  trials: Trials,
  {heatStated}: PlanOptions,
  night: Pick<Nightly, 'from'> | undefined,
  gives: (lack: Lack) => boolean,
  stated: Set<string>,
): Remedy | null {
  const canState = heatStated !== undefined && !stated.has(dish.file)
  if (night === undefined && !canState) return null
  const {startLow, startHigh} = dish.need
  const asked = problem.dishes.filter(({file}) => file === dish.file)
  for (const step of BEYOND) {
    const wider = (d: Dish): Dish => ({
      ...d,
      need: {
        ...d.need,
        startLow: d.need.startLow - step,
        startHigh: d.need.startHigh + (mayTakeFire(d.cautions) ? 0 : step),
        endLow: d.need.endLow - step,
      },
    })
    const tried = trials.plan({dishes: problem.dishes.map((d) => (d.id === dish.id ? wider(d) : d))})
    const outside = tried.plan.loads
      .flatMap(({at, dishes}) => dishes.map((d) => ({at, dish: d.dish, celsius: d.celsiusIn.likely})))
      .find((d) => d.dish === dish.id && (d.celsius < startLow || d.celsius > startHigh))
    if (outside === undefined || !gives(tried.lack)) continue
    const own = (id: PhraseId, {plan, ...rest}: Trial, values: Record<string, PhraseValue>): Remedy =>
      trials.remedy('wider heat', plan, phrase(id, {...values, outcome: trials.outcome({plan, ...rest}, false)}))
    if (night !== undefined && outside.at <= night.from)
      return own('remedy before night', tried, {
        dishes: {unit: 'dishes', dishes: [dish.id]},
        celsius: {unit: 'celsius', value: outside.celsius},
        at: {unit: 'clock', value: outside.at},
      })
    if (!canState) continue
    const celsius = STATED * Math.round(outside.celsius / STATED)
    const needs = heatStated(dish.file, celsius)
    if (asked.some(({id}) => !needs.has(id))) continue
    const changed = problem.dishes.map((d) => (d.file === dish.file ? {...d, need: needs.get(d.id)!} : d))
    const written = trials.plan({dishes: changed})
    if (!gives(written.lack)) continue
    stated.add(dish.file)
    return own('remedy state heat', written, {
      dishes: {unit: 'dishes', dishes: asked.map(({id}) => id), whole: true},
      celsius: {unit: 'celsius', value: celsius},
      line: heatLine(celsius),
      file: dish.file,
    })
  }
  return null
}

/** A heat, °C, as front matter states it. */
const heatLine = (celsius: number): string => `oven: ${celsius} °C`
