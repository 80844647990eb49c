import type {OvenEvent} from '../oven/types.js'
import type {Message} from '../receipt/types.js'
import type {Dish, HeatNeed, Placed} from '../scale/types.js'
import {barred, barredByItself, staysOn} from './alone.js'
import {amiss} from './asked.js'
import {balanceOf, suggest} from './balance.js'
import {afterTime, anotherFire, tooSoon} from './beside-meal.js'
import {check} from './check.js'
import {type Conflict, conflictsOf, type Missing, type Replan} from './conflict.js'
import {type Curve, celsiusAt, doseNeeded, doseTable} from './curve.js'
import {eventsOf} from './events.js'
import {type FloorGrid, zoneAt} from './floor-grid.js'
import {type Hindrance, hinderedBy, keptOutByNight, type Nightly} from './hindered.js'
import {doseBetween} from './keeps.js'
import {dearFrom, disturbances, earliness, hotUntil, type Job, lateness, lineOf, priceOfLate} from './model.js'
import type {PlanOptions} from './options.js'
import {english, type PhraseId, phrase, speak} from './phrases.js'
import {placedOf, vesselsOf} from './places.js'
import {rules, weights, zoneNames} from './rules.js'
import {lateAmongRest} from './set-in-more.js'
import {fireOf, type Settled, tookIn} from './settled.js'
import {stepsOf} from './steps.js'
import type {Eased, LeftOut, Load, Phrase, Plan, PlanProblem, Remedy} from './types.js'
import type {DoorOpen} from './ways/door-open.js'
import {waysOf} from './ways/of-day.js'
import {remediesOf} from './ways/of-dish.js'
import {fireForHot} from './ways/second-fire.js'
import {inSmallerVessels} from './ways/smaller-vessel.js'

/** What the search settled on, written as a plan: its loads with ranges, what is late or left out and why, its steps; and checked. */

export function write(
  problem: PlanProblem,
  grid: FloorGrid,
  settled: Settled,
  lone: readonly {dish: Dish; rule: string; reason: string; words?: Phrase}[],
  bounds: {readonly bound: number | null; readonly leftOut: LeftOut | null} | null,
  options: PlanOptions,
  replan: Replan,
): Plan {
  const {model, found, option} = settled
  const {curve} = model.program
  const jobs = model.jobs
  const bound = bounds?.bound ?? null
  const clock = (k: number): number => model.clock0 + k * rules.tick
  const byStart = new Map<number, number[]>()
  for (let u = 0; u < jobs.length; u++) {
    const o = found.chosen[u]!
    if (o < 0) continue
    const at = jobs[u]!.since ?? clock(model.s[u]![o]!)
    byStart.set(at, [...(byStart.get(at) ?? []), u])
  }
  const messages: Message[] = []
  const drawnWhen: {dish: Dish; drawn: number; inside: boolean}[] = []
  const loads: Load[] = []
  let misfit = 0
  let late = 0
  let early = 0
  let latePrice = 0
  let used = 0
  const doors = new Set<number>()
  for (const at of [...byStart.keys()].sort((a, b) => a - b)) {
    const dishes: Load['dishes'][number][] = []
    const placed: Placed[] = []
    for (const u of byStart.get(at)!) {
      const job = jobs[u]!
      // Its limits as they are, where they were eased.
      const own = problem.dishes.find((d) => d.id === job.dish.id) ?? job.dish
      const o = found.chosen[u]!
      const w = model.where[u]![o]!
      const origin = model.origin[u]![o]!
      const choices = model.program.choices[u]!
      const drawn = clock(model.e[u]![o]!)
      misfit += choices.misfit[origin] ?? 0
      used += choices.used[origin] ?? 0
      late += lateness(job, drawn)
      early += earliness(job, drawn)
      latePrice += priceOfLate(lateness(job, drawn), dearFrom(job))
      drawnWhen.push({dish: own, drawn, inside: job.since !== null})
      if (job.since === null) doors.add(at)
      doors.add(drawn)
      const from = at - model.lit
      const to = drawn - model.lit
      const mine = vesselsOf(job, settled.standing)
      const zones = new Set(mine.map((v) => zoneAt(grid, v.y)))
      // Shown where its vessels stand: the model's part of the floor is a wish the true floor may not grant.
      const shown = zones.size === 1 ? [...zones][0]! : zones.size === 0 ? w : 3
      const three = (m: number): {low: number; likely: number; high: number} => ({
        low: celsiusAt(curve, shown, m, 'low'),
        likely: celsiusAt(curve, shown, m),
        high: celsiusAt(curve, shown, m, 'high'),
      })
      dishes.push({
        dish: job.dish.id,
        count: job.count,
        draw: drawRange(curve, own.need, w, from, to, model.lit),
        celsiusIn: three(from),
        celsiusOut: three(to),
        zone: shown === 3 ? 'across' : zoneNames[shown as 0 | 1 | 2],
        ...(job.since === null ? {} : {alreadyIn: true}),
        ...(settled.eased || job.since !== null
          ? easedOf(curve, own.need, zones.size === 0 ? [w] : [...zones], from, to, job.since === null)
          : {}),
      })
      for (const v of mine) placed.push(placedOf(grid, v))
    }
    loads.push({number: loads.length + 1, at, dishes, placed})
  }
  const fireFor = anotherFire(problem, loads, option)
  for (const {dish, drawn, inside} of drawnWhen)
    for (const told of [afterTime(dish, drawn, problem.day), tooSoon(dish, drawn, problem, inside ? null : fireFor(dish))])
      if (told && !messages.some((m) => m.reason === told.reason)) messages.push(told)
  const idle = Math.max(0, model.program.hotFloor - used)
  const disturbed = disturbances(
    loads.flatMap(({at, dishes}) =>
      dishes.flatMap((d) => {
        const dish = problem.dishes.find(({id}) => id === d.dish)
        return dish?.need.closed ? [{at, shut: dish.need.closed.likely, dish}] : []
      }),
    ),
    doors,
  )
  for (const {dish, at} of disturbed)
    messages.push({
      ...lineOf(problem.day, dish.dish),
      severity: 'warning',
      rule: 'door-shut',
      reason: `the door is opened ${at - dish.at} min after setting in ${dish.dish.title}, and the receipt wants it shut for ${Math.round(dish.shut)} min`,
      suggest: 'open it for a moment only, or let what is drawn or set in then wait',
    })
  const total =
    latePrice +
    weights.early * early +
    weights.misfit * misfit +
    weights.opening * doors.size +
    weights.shut * disturbed.length +
    weights.idle * (model.program.hotFloor - used) +
    weights.wood * model.program.wood
  if (problem.dishes.length === 0)
    messages.push({
      file: 'day.md',
      line: 1,
      column: 1,
      severity: 'info',
      rule: 'no-dish',
      reason: 'no dish to bake',
      suggest: 'add a link to a receipt',
    })
  const loneOnes: Plan['unplaced'][number][] = [
    ...lone.map((l) => ({
      dish: l.dish.id,
      rule: l.rule,
      reason: l.reason,
      remedies: [],
      conflict: [l.dish.id],
      ...(l.words ? {words: l.words} : {}),
    })),
  ]
  const lit = model.lit
  const plan: Plan = {
    possible: loneOnes.length === 0 && settled.unplaced.length === 0,
    firing: option.firing,
    lit,
    raked: lit + option.forecast.raked,
    ready: lit + option.forecast.ready,
    forecast: option.forecast,
    loads,
    steps: [],
    unplaced: loneOnes,
    score: {
      lateMinutes: late,
      ...(early > 0 ? {earlyMinutes: early} : {}),
      misfit,
      openings: doors.size,
      ...(disturbed.length > 0 ? {disturbed: disturbed.length} : {}),
      idle,
      wood: model.program.wood,
      total,
      gap: bound === null ? null : total <= 0 ? 0 : Math.max(0, (total - bound) / total),
      bound,
      ...(bounds?.leftOut ? {leftOut: bounds.leftOut} : {}),
    },
    fires: [
      {lit, raked: lit + option.forecast.raked, ready: lit + option.forecast.ready, firing: option.firing},
      ...(option.further ?? []).map((f) => ({
        lit: lit + f.minutes,
        raked: lit + f.minutes + f.firing.burn,
        ready: lit + f.minutes + f.firing.burn + f.firing.soak,
        firing: f.firing,
      })),
    ],
    messages,
  }
  const behind = amiss(problem, plan).late
  const lacking = behind.length > 0 || settled.unplaced.length > 0
  const earnest = options.effort !== 'quick' && !options.bare && !problem.done && options.simulate !== undefined
  const smaller = earnest
    ? inSmallerVessels(
        problem,
        plan,
        lone.map(({dish}) => dish),
        options,
        replan,
      )
    : new Map<string, Remedy>()
  const withWays = loneOnes.map((one) => {
    const way = smaller.get(one.dish)
    return way ? {...one, remedies: [way.say], tried: [way]} : one
  })
  const unplaced = [...withWays, ...unplacedOf(problem, grid, settled, plan, options, replan)]
  const waysIn = (lacks: boolean): Pick<Plan, 'ways'> => {
    const from = toGoOnFrom(settled)
    const ways = lacks ? waysOf(problem, plan, options, replan, from) : []
    const hot = ways.some(({kind}) => kind === 'second fire') ? null : fireForHot(problem, plan, options, replan, from)
    return lacks || hot ? {ways: [...ways, ...(hot ? [hot] : [])]} : {}
  }
  const balanced: Plan = {
    ...plan,
    unplaced,
    ...(behind.length > 0 ? {late: behind} : {}),
    ...(earnest && unplaced.length <= FAR_TOO_MANY ? waysIn(lacking) : {}),
    ...balanceOf(problem, grid, settled, plan),
    suggestions: suggest(problem, grid, settled, options.spare ?? [], problem.done ? undefined : options.simulate),
  }
  const {steps, messages: more} = stepsOf(problem, balanced)
  const whole: Plan = {...balanced, steps, messages: [...balanced.messages, ...more]}
  const violations = check(problem, whole)
  const broken = violations.filter(({noted}) => !noted)
  const noted = violations.filter((v, i) => v.noted && violations.findIndex(({reason}) => reason === v.reason) === i)
  if (violations.length === 0) return whole
  return {
    ...whole,
    messages: [
      ...whole.messages,
      ...noted.map(({dish, rule, reason}): Message => {
        const its = problem.dishes.find(({id}) => id === dish)
        return {
          ...(its ? lineOf(problem.day, its) : {file: 'day.md', line: 1, column: 1}),
          severity: 'warning',
          rule: 'log-places',
          reason,
          suggest:
            rule === 'reach'
              ? 'when it is drawn, shift aside or take out what stands before it'
              : 'look where they stand when the door is open next, and note what was set in or drawn otherwise than planned',
        }
      }),
      ...broken.map(
        (v): Message => ({file: 'day.md', line: 1, column: 1, severity: 'error', rule: `checker-${v.rule}`, reason: v.reason}),
      ),
    ],
  }
}

/** Whether something of a dish that is eaten hot for a meal is drawn after the evening of that day. */
function isPastItsMeal({model, found}: Settled, id: string, serve: number): boolean {
  return model.jobs.some(({dish}, u) => {
    const meal = hotUntil(dish, serve)
    const o = found.chosen[u]!
    if (dish.id !== id || o < 0 || !Number.isFinite(meal)) return false
    return model.clock0 + model.e[u]![o]! * rules.tick > 1440 * Math.floor(meal / 1440) + rules.nightFrom
  })
}

/** What a dish has less than it should in some part of the floor, to a tenth of a degree; nothing where it has all. */
function easedOf(
  curve: Curve,
  need: HeatNeed,
  zones: readonly number[],
  from: number,
  to: number,
  fresh: boolean,
): {eased?: Eased} {
  const under = (least: number, minute: number): number =>
    Math.max(0, ...zones.map((z) => Math.round(10 * (least - celsiusAt(curve, z, minute))) / 10))
  const usual = doseNeeded(need, need.minutes.likely)
  const dose = Math.min(1, ...zones.map((z) => Math.round((1000 * doseBetween(curve, need, z, from, to)) / usual) / 1000))
  const eased = {start: fresh ? under(need.startLow, from) : 0, end: under(need.endLow, to), dose}
  return eased.start > 0 || eased.end > 0 || eased.dose < 1 - rules.doseWanting ? {eased} : {}
}

/** Minute after lighting up to which what is not done is looked at again. */
function lastLook(likely: number, {minutes}: HeatNeed, lit: number): number {
  const longest = likely + Math.min(rules.lookAgain, Math.max(20, minutes.likely))
  return Math.min(longest, rules.lastLook - lit)
}

/** When to look, when it is likely done, when at the latest: by the hot, the likely and the cool curve. */
function drawRange(
  curve: Curve,
  need: HeatNeed,
  where: number,
  from: number,
  to: number,
  lit: number,
): {low: number; likely: number; high: number} {
  const dose = doseNeeded(need)
  const done = (which: 'low' | 'likely' | 'high', share = 1): number => {
    const table = doseTable(curve, where, need.done, which)
    const base = table[Math.max(0, Math.min(table.length - 1, Math.round(from)))]!
    for (let m = Math.round(from); m < table.length; m++) if (table[m]! - base >= share * dose) return m
    return table.length - 1
  }
  const likely = to
  // In an oven as hot as it may be it could be done sooner; where so much of it is still wanting by this one, nobody looks.
  const early = Math.max(done('high'), done('likely', rules.firstLook))
  const slow = done('low')
  const longStay = to - done('likely') > 2 * rules.tick
  const low = longStay ? likely : Math.min(likely, early)
  const high = Math.max(likely, Math.min(slow, lastLook(likely, need, lit)))
  // Told as the plan's other times are, on its five-minute clock, and rather wider.
  return {
    low: Math.min(lit + likely, Math.floor((lit + low) / rules.tick) * rules.tick),
    likely: lit + likely,
    high: Math.ceil((lit + high) / rules.tick) * rules.tick,
  }
}

/** Dishes, or parts of them, above which what hinders one in the plan is told, and no smallest set of them is looked for. */
const MANY = 12
/** Dishes without a place above which it is told of all alike that they are far too many, and ways out are not tried one by one. */
const FAR_TOO_MANY = 40

/** A plan that leaves something out, if not far too much: what would help is tried by going on from it. */
function toGoOnFrom(settled: Settled): Settled | null {
  const {length} = settled.unplaced
  return length > 0 && length <= FAR_TOO_MANY ? settled : null
}

/** What was left out, a line a dish: why, with what it conflicts, and what would help. */
function unplacedOf(
  problem: PlanProblem,
  grid: FloorGrid,
  settled: Settled,
  plan: Plan,
  options: PlanOptions,
  replan: Replan,
): Plan['unplaced'][number][] {
  const parts = new Map<string, {job: Job; count: number; why: 'floor' | 'time'}>()
  for (const {job, why} of settled.unplaced) {
    const before = parts.get(job.dish.id)
    // What hinders its smallest part hinders the others the more.
    const least = before && before.job.count <= job.count ? before.job : job
    parts.set(job.dish.id, {job: least, count: (before?.count ?? 0) + job.count, why: before?.why === 'floor' ? 'floor' : why})
  }
  const missing = [...parts.values()]
  if (missing.length === 0) return []
  const crowd = missing.length > FAR_TOO_MANY
  const told = options.effort !== 'quick' && !options.bare && !crowd
  const looked = new Map<string, Hindrance | null>()
  const hindrance = ({job, count}: Missing): Hindrance | null => {
    const {id} = job.dish
    const one = looked.has(id) ? looked.get(id)! : hinderedBy(problem, grid, settled, job, count, options.simulate)
    looked.set(id, one)
    return one
  }
  // Of many dishes the fewest that do not go together are not found in a time that anyone would wait.
  const baked = new Set([...settled.model.jobs, ...settled.unplaced.map(({job}) => job)]).size
  const many = told && options.simulate && Math.max(problem.dishes.length, baked) > MANY
  const hindered = new Map(
    (many ? missing : []).flatMap((one): [string, Hindrance][] => {
      const known = hindrance(one)
      return known ? [[one.job.dish.id, known]] : []
    }),
  )
  const found = told ? conflictsOf(problem, grid, missing, settled, options, replan, hindered) : null
  const {simulate} = options
  const nightly = new Map(
    (options.bare || crowd ? [] : missing).flatMap(({job, count}): [string, Nightly][] => {
      const known = keptOutByNight(problem, grid, settled, job, count)
      return known ? [[job.dish.id, known]] : []
    }),
  )
  const lateWith = (id: string): Plan | null => {
    const more = simulate && !problem.done ? lateAmongRest(problem, grid, settled, id, simulate) : null
    if (!more || isPastItsMeal(more, id, problem.day.serve)) return null
    return write(problem, grid, more, [], null, {effort: 'quick', bare: true}, replan)
  }
  const remedies = found
    ? remediesOf(problem, plan, missing, found, options, replan, {
        from: toGoOnFrom(settled),
        hindered,
        lateWith,
        nightly,
        doorOpen: doorOpenFor(problem, grid, settled, plan, simulate),
      })
    : new Map<string, Remedy[]>()
  return missing.map(({job, count}) => {
    const {dish} = job
    const {dishes: conflict, others, why, alone: barrier} = found?.get(dish.id) ?? untried(problem, grid, dish, plan, options)
    // Where it needs no others to be left out, and none of it is baked, less of it would be left out as well.
    const lone = told && simulate && !problem.done && others.length === 0 && count >= dish.count
    const alone = barrier ?? (lone ? barredByItself(problem, grid, dish, simulate) : null)
    const some = count < dish.count ? ' of some' : ''
    const inPlan = why === 'all' && !options.bare && !crowd ? hindrance({job, count}) : null
    // On another fire it may be others that are in its way.
    const night = problem.done || others.length === 0 ? nightly.get(dish.id) : undefined
    const words =
      night?.words ??
      alone?.words ??
      inPlan?.words ??
      (crowd && why === 'all' ? phrase('far too much', {dishes: {unit: 'dishes', dishes: [dish.id]}}) : null) ??
      phrase(`${others.length > 0 ? withOthers[why] : byItself[why]}${some}` as PhraseId, {
        dishes: {unit: 'dishes', dishes: [dish.id]},
        others: {unit: 'dishes', dishes: others, whole: true},
        count,
        all: dish.count,
      })
    const tried = remedies.get(dish.id) ?? []
    return {
      dish: dish.id,
      rule: (night && 'night') ?? alone?.rule ?? inPlan?.rule ?? ruleOf[why],
      reason: speak(
        words,
        english((one) => problem.dishes.find((d) => d.id === one)?.title ?? one),
      ),
      words,
      remedies: tried.map((r) => r.say),
      conflict: inPlan && inPlan.others.length > 0 ? [dish.id, ...inPlan.others] : conflict,
      tried,
    }
  })
}

/**
 * Minutes for which the door may stand open to let the oven fall before the night; how many such are tried; and how long before the night it is
 * shut again, for the dish to be set in.
 */
const OPEN = {tries: [10, 20, 30, 45, 60, 90, 120, 180], found: 3, before: 10} as const

/**
 * The door left open in the evening, from when nothing more is set in or drawn, so that the oven has fallen before the night to what a dish
 * takes: the shortest time that does, and the next longer. None where nothing simulates the oven.
 */
function doorOpenFor(
  problem: PlanProblem,
  grid: FloorGrid,
  settled: Settled,
  plan: Plan,
  simulate: PlanOptions['simulate'],
): (job: Job) => readonly DoorOpen[] {
  const {model} = settled
  return (job) => {
    if (!simulate) return []
    const doors = plan.loads.flatMap(({at, dishes}) =>
      dishes.flatMap(({dish, draw}) => (dish === job.dish.id ? [] : [at, draw.likely])),
    )
    const night = 1440 * Math.floor(plan.ready / 1440) + rules.nightFrom
    const last = Math.max(plan.ready, problem.done?.now ?? plan.ready, ...doors.filter((at) => at < night))
    const from = rules.tick * Math.ceil(last / rules.tick) + rules.tick
    const fire = fireOf(problem, settled)
    const events = eventsOf(model.jobs, tookIn(settled), fire, model.program.phase, model.lit)
    const found: DoorOpen[] = []
    for (const minutes of OPEN.tries) {
      if (found.length >= OPEN.found || from + minutes + OPEN.before > night) break
      const door: OvenEvent = {minutes: from - model.lit, kind: 'door', open: minutes}
      const option = {...settled.option, forecast: simulate(fire, inOrder([...events, door]), false)}
      const {stays} = staysOn(problem, grid, job, option, model.lit)
      if (stays.some((stay) => model.lit + stay.from < night && model.lit + stay.from >= from + minutes))
        found.push({from, minutes, simulate: (some, others, exact) => simulate(some, inOrder([...others, door]), exact)})
    }
    return found
  }
}

const inOrder = (events: readonly OvenEvent[]): OvenEvent[] => [...events].sort((a, b) => a.minutes - b.minutes)

/** Where no days are planned to find what is at fault: the dish alone if a limit is in its way, else all that is baked. */
function untried(problem: PlanProblem, grid: FloorGrid, dish: Dish, {loads}: Plan, {bare}: PlanOptions): Conflict {
  const alone = bare ? null : barred(problem, grid, dish)
  if (alone) return {dishes: [dish.id], others: [], why: 'alone', alone}
  const others = [...new Set(loads.flatMap((load) => load.dishes.map((d) => d.dish)))].filter((one) => one !== dish.id)
  return {dishes: [dish.id, ...others], others, why: 'all'}
}

/** What is said of a dish that does not go with others, and of one of which there is too much by itself. */
const withOthers = {
  alone: 'all taken',
  fire: 'no one fire',
  late: 'late together',
  heat: 'heat shared',
  room: 'floor taken',
  hands: 'hands shared',
  together: 'not together',
  all: 'all taken',
} as const satisfies Record<Conflict['why'], PhraseId>
const byItself = {
  alone: 'no place',
  fire: 'too many',
  late: 'too many in time',
  heat: 'too much heat',
  room: 'too many for floor',
  hands: 'too many for hands',
  together: 'too many',
  all: 'no place',
} as const satisfies Record<Conflict['why'], PhraseId>

/** The rule that a conflict of dishes breaks. */
const ruleOf = {
  alone: 'full',
  fire: 'fire',
  late: 'late',
  room: 'room',
  heat: 'heat',
  hands: 'hands',
  together: 'full',
  all: 'full',
} as const
