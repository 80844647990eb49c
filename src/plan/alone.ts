import type {Dish} from '../scale/types.js'
import {wheresOf} from './choices.js'
import {celsiusAt, curveOf, doseNeeded, doseTable, mostDose} from './curve.js'
import {firesOf, inOrder} from './events.js'
import type {FloorGrid} from './floor-grid.js'
import {keptWarm, staysIn} from './keeps.js'
import {blockedBy, byDay, isNight, type Job, jobsOf, lighting, phaseOf, ticksOf} from './model.js'
import type {PlanOptions} from './options.js'
import {type PhraseId, phrase} from './phrases.js'
import {doorEvents, loadEvent} from './response.js'
import {rules} from './rules.js'
import type {FiringOption, Phrase, PhraseValue, PlanProblem} from './types.js'

/** What one vessel of a dish can do in an oven with nothing else in it, and where it can do nothing, which limit stops it. */

/** How far a dish comes on a fire before a limit stops it: further down the list is nearer to being baked. */
const stages = ['start heat', 'range', 'dose', 'night', 'served'] as const
type Stage = (typeof stages)[number]

/** What the dose is cut off by. */
type Cut = 'end heat' | 'fire' | 'cold' | 'end'

interface Reach {
  readonly stage: number
  /** °C, at any place it may stand, from when the oven is ready. */
  readonly hottest: number
  readonly coolest: number
  /** Most of its dose that it can have, as a share, and what cuts it off there. */
  readonly share: number
  readonly cut: Cut
}

/** How far a dish comes that has been tried nowhere. */
const NOWHERE: Reach = {
  stage: 0,
  hottest: Number.NEGATIVE_INFINITY,
  coolest: Number.POSITIVE_INFINITY,
  share: 0,
  cut: 'end',
}

const stageOf = (name: Stage): number => stages.indexOf(name)

/** Set in at one minute after lighting, and the first and the last at which it may be drawn. */
export interface Stay {
  readonly from: number
  readonly first: number
  readonly last: number
}

/** What one dish could do in one part of the floor after one fire, by day or night. */
function staysOf(
  dish: Dish,
  option: FiringOption,
  ambient: number,
  where: number,
  phase: number,
  earliest: number,
  latest = Number.POSITIVE_INFINITY,
): {readonly stays: readonly Stay[]; readonly reach: Reach} {
  const {need} = dish
  const curve = curveOf(option.forecast, ambient)
  const ticks = ticksOf(curve, phase)
  const minute = (k: number): number => k * rules.tick + phase
  const blocked = blockedBy(option)
  const celsius = Float64Array.from({length: ticks}, (_, k) => celsiusAt(curve, where, minute(k)))
  const table = doseTable(curve, where, need.done)
  const taken = (m: number): number => table[Math.max(0, Math.min(table.length - 1, m))]!
  const dose = doseNeeded(need)
  const longest = mostDose(need)
  const keeps = staysIn(need)
  let warm = ticks - 1
  while (warm >= 0 && celsius[warm]! < rules.holdCelsius) warm--
  const coldAfter = keptWarm(need) ? minute(warm) + rules.coldMinutes : Number.POSITIVE_INFINITY
  const stays: Stay[] = []
  let stage: Stage = 'start heat'
  let hottest = Number.NEGATIVE_INFINITY
  let coolest = Number.POSITIVE_INFINITY
  let share = 0
  let cut: Cut = 'end'
  for (let k = Math.max(0, Math.ceil((Math.max(earliest, curve.ready) - phase) / rules.tick)); k < ticks; k++) {
    const from = minute(k)
    if (from > latest) break
    if (blocked.some((b) => from >= b.from && from < b.to)) continue
    const t = celsius[k]!
    hottest = Math.max(hottest, t)
    coolest = Math.min(coolest, t)
    if (t < need.startLow || t > need.startHigh) continue
    if (stage !== 'served') stage = 'dose'
    const wall = blocked.find((b) => b.to > from)?.from ?? Number.POSITIVE_INFINITY
    let e = k + 1
    let first = -1
    let last = -1
    let by: Cut = 'end'
    for (; e < ticks; e++) {
      if (minute(e) > wall) by = 'fire'
      else if (celsius[e]! < need.endLow) by = 'end heat'
      else if (minute(e) > coldAfter) by = 'cold'
      if (by !== 'end') break
      const got = taken(minute(e)) - taken(from)
      if (got < dose) continue
      if (first < 0) first = e
      else if (!keeps && got > longest) break
      last = e
    }
    const most = (taken(minute(e - 1)) - taken(from)) / Math.max(1, dose)
    if (first >= 0) {
      stage = 'served'
      stays.push({from, first: minute(first), last: minute(last)})
    } else if (most > share) {
      share = most
      cut = by
    }
  }
  if (stage === 'start heat' && hottest >= need.startLow) stage = 'range'
  return {stays, reach: {stage: stageOf(stage), hottest, coolest, share, cut}}
}

/** Clock minute at or after `clock` at which the door may be opened next. */
function awakeFrom(problem: PlanProblem, clock: number): number {
  let at = clock
  while (isNight(problem, at)) at += rules.tick
  return at
}

/** When a fire may be lit for one vessel of a dish to be baked after it, with nothing else in the oven; and how far it comes if never. */
export interface Served {
  /** Clock minutes of lighting. */
  readonly lit: ReadonlySet<number>
  readonly reach: Reach
}

/**
 * Tries one vessel of a dish on one fire, at every lighting time the day allows, in every part of the floor where it may stand, on the curve
 * of the oven with nothing else in it.
 *
 * @param dish A dish that passes the mouth and stands on the floor.
 */
export function servedBy(problem: PlanProblem, grid: FloorGrid, dish: Dish, option: FiringOption): Served {
  const {done, ...morning} = problem
  const job = jobsOf({...morning, dishes: [{...dish, count: 1}]}, grid)[0]
  const {first, last} = lighting(problem)
  const phase = phaseOf(done?.lit ?? null)
  const lit = new Set<number>()
  let reach = NOWHERE
  for (const where of job ? wheresOf(job, grid) : []) {
    const earliest = done?.lit == null ? 0 : done.now - first
    const {stays, reach: mine} = staysOf(dish, option, problem.ambient ?? 20, where, phase, earliest)
    const before = lit.size
    for (let at = first; at <= last; at += rules.tick) {
      if (lit.has(at)) continue
      const works = stays.some(
        (stay) => byDay(problem, job!, at + stay.from) && awakeFrom(problem, at + stay.first) <= at + stay.last,
      )
      if (works) lit.add(at)
    }
    const stage = mine.stage === stageOf('served') && lit.size === before ? stageOf('night') : mine.stage
    reach = nearer(reach, {...mine, stage: lit.size > 0 ? stageOf('served') : stage})
  }
  return {lit, reach}
}

/** When a part of a dish could be baked on one fire's curve, as it is; and how far it comes if never. */
export interface Stays {
  readonly stays: readonly (Stay & {readonly where: number})[]
  /** What the baker's sleep alone is in the way of. */
  readonly asleep: readonly (Stay & {readonly where: number})[]
  readonly reach: Reach
}

/**
 * What a part of a dish could do on one curve after a fire is lit at a given time, by its heat and the baker's sleep alone.
 *
 * @param lit Clock minute of lighting.
 */
export function staysOn(problem: PlanProblem, grid: FloorGrid, job: Job, option: FiringOption, lit: number): Stays {
  const earliest = Math.max(0, (problem.done?.now ?? lit) - lit, (job.risen?.least ?? lit) - lit)
  let reach = NOWHERE
  const all: (Stay & {readonly where: number})[] = []
  const asleep: (Stay & {readonly where: number})[] = []
  for (const where of wheresOf(job, grid)) {
    const {stays, reach: mine} = staysOf(job.dish, option, problem.ambient ?? 20, where, phaseOf(lit), earliest)
    const awake = stays.flatMap((stay) => {
      const first = awakeFrom(problem, lit + stay.first) - lit
      if (byDay(problem, job, lit + stay.from) && first <= stay.last) return [{...stay, first, where}]
      asleep.push({...stay, where})
      return []
    })
    reach = nearer(reach, mine.stage === stageOf('served') && awake.length === 0 ? {...mine, stage: stageOf('night')} : mine)
    all.push(...awake)
  }
  return {stays: all, asleep, reach}
}

/** How far a dish comes that is never baked, in words. */
export function reachWords(dish: Dish, reach: Reach): {readonly rule: string; readonly words: Phrase} {
  return {rule: ruleOf[stages[reach.stage]!], words: wordsOf(dish, reach)}
}

/** Of two fires or places the one that comes nearer to baking the dish, with the widest span of heat of both. */
function nearer(a: Reach, b: Reach): Reach {
  const best = b.stage > a.stage || (b.stage === a.stage && b.share > a.share) ? b : a
  return {...best, hottest: Math.max(a.hottest, b.hottest), coolest: Math.min(a.coolest, b.coolest)}
}

/**
 * Why one vessel of a dish cannot be baked with nothing else in the oven, whichever of the day's fires is burned and whenever it is lit: the
 * limit that fails it on the fire that comes nearest, with the figures. Null where one fire can bake it.
 */
export function barred(
  problem: PlanProblem,
  grid: FloorGrid,
  dish: Dish,
): {readonly rule: string; readonly words: Phrase} | null {
  let reach: Reach | null = null
  for (const option of problem.firings) {
    const mine = servedBy(problem, grid, dish, option).reach
    if (mine.stage === stageOf('served')) return null
    reach = reach ? nearer(reach, mine) : mine
  }
  return reach && reachWords(dish, reach)
}

/** Fires that are tried with one vessel's own load, and times on each at which it is set in: the oven is simulated for each. */
const LOADED = {fires: 12, times: 3} as const

/** So many of a list, evenly spread, its first and its last among them. */
function spread<T>(all: readonly T[], most: number): readonly T[] {
  if (all.length <= most) return all
  return Array.from({length: most}, (_, i) => all[Math.round((i * (all.length - 1)) / (most - 1))]!)
}

/**
 * Why one vessel of a dish cannot be baked with nothing else in the oven, though the empty oven's curve would do: what it takes itself is
 * wanting at its end, as with a joint in a thin oven.
 *
 * @returns The limit that fails it where it comes nearest, with the figures; null where one fire can bake it, or no empty oven could.
 */
export function barredByItself(
  problem: PlanProblem,
  grid: FloorGrid,
  dish: Dish,
  simulate: NonNullable<PlanOptions['simulate']>,
): {readonly rule: string; readonly words: Phrase} | null {
  const one = {...dish, count: 1}
  const job = jobsOf({...problem, dishes: [one]}, grid)[0]
  if (!job) return null
  const ambient = problem.ambient ?? 20
  const right = problem.firings.filter((option) => servedBy(problem, grid, dish, option).lit.size > 0)
  let reach: Reach | null = null
  for (const option of spread(right, LOADED.fires)) {
    for (const where of wheresOf(job, grid)) {
      const {stays} = staysOf(one, option, ambient, where, phaseOf(null), 0)
      for (const {from, first} of spread(stays, LOADED.times)) {
        const hands = new Map([from, first].map((minutes): [number, number] => [minutes, job.handling]))
        const events = inOrder([...firesOf(option), loadEvent(one, 1, from), ...doorEvents(hands)])
        const loaded = {...option, forecast: simulate(option, events, false)}
        const {reach: mine} = staysOf(one, loaded, ambient, where, phaseOf(null), from, from)
        if (mine.stage === stageOf('served')) return null
        reach = reach ? nearer(reach, mine) : mine
      }
    }
  }
  return reach && reachWords(dish, reach)
}

const ruleOf: Readonly<Record<Stage, string>> = {
  'start heat': 'start heat',
  range: 'start heat',
  dose: 'dose',
  night: 'night',
  served: 'full',
}

const cutBy: Readonly<Record<Cut, PhraseId>> = {
  'end heat': 'not done',
  fire: 'not done before fire',
  cold: 'not done before cold',
  end: 'not done at end',
}

/** °C by which two heats differ at least to be told apart as they are shown, to the nearest five. */
const ALIKE = 5

function wordsOf({id, need}: Dish, {stage, hottest, coolest, share, cut}: Reach): Phrase {
  const degrees = (value: number): PhraseValue => ({unit: 'celsius', value})
  const dishes = {unit: 'dishes', dishes: [id]} as const
  const percent = Math.floor(100 * share)
  switch (stages[stage]) {
    case 'start heat':
      // No minute of the curve is left, and so no heat to name.
      if (!Number.isFinite(hottest)) return phrase('curve ended', {dishes})
      if (need.startLow - hottest < ALIKE) return phrase('not quite hot enough', {dishes, celsius: degrees(need.startLow)})
      return phrase('not hot enough', {dishes, celsius: degrees(need.startLow), hottest: degrees(hottest)})
    case 'range':
      return phrase('not in range', {
        dishes,
        celsius: degrees(need.startLow),
        high: degrees(need.startHigh),
        coolest: degrees(coolest),
      })
    case 'dose':
      return phrase(cutBy[cut], {
        dishes,
        percent,
        celsius: degrees(cut === 'cold' ? rules.holdCelsius : need.endLow),
        minutes: {unit: 'minutes', value: rules.coldMinutes},
      })
    default:
      return phrase('in the night', {dishes})
  }
}
