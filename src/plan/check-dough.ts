import {coldPlaces, kneading, shapings, warmDough} from '../lexicon/dough-work.js'
import type {Dish} from '../scale/types.js'
import type {Report} from './check.js'
import {isNight} from './check-night.js'
import {rules} from './rules.js'
import type {Load, Plan, PlanProblem, Step} from './types.js'

/**
 * The checker's rules for doughs: each made in time and not left too long, warned of where it stands longer than it is meant to, worked by day
 * where its receipt allows it, and by hands that are free. It shares no code with the planner.
 */

const rounding = 0.01

/** One dough as the steps tell of it. Times in minutes after midnight. */
export interface Told {
  readonly dish: Dish
  readonly load: number
  readonly at: number
  readonly steps: readonly Step[]
  readonly mix: Step
  readonly shape: Step | undefined
  readonly sponge: Step | undefined
  /** Minutes of hands. */
  readonly mixing: number
  readonly shaping: number
}

/** Work that needs a pair of hands. */
interface Work {
  readonly whose: Told | null
  readonly from: number
  readonly to: number
}

/**
 * @param bad called for each rule that is broken
 * @returns the doughs that the steps tell of
 */
export function checkDoughs(problem: PlanProblem, plan: Plan, bad: Report): readonly Told[] {
  const now = problem.done?.now ?? null
  const told = plan.loads.flatMap((load) => toldIn(problem, plan, load, bad))
  for (const one of told) checkTimes(one, plan, problem.done, bad)
  const work = workOfDay(problem, plan, told)
  const warned = (one: Told): boolean =>
    plan.messages.some(({rule, reason}) => rule === 'hands' && reason.startsWith(`${one.dish.title}: its dough`))
  for (const mine of work) {
    if (mine.whose === null || (now !== null && mine.from < now) || !overfull(problem, work, mine, mine.whose)) continue
    if (!warned(mine.whose))
      bad('hands', mine.whose.dish.id, mine.from, 1, `${mine.whose.dish.title}: its dough is worked while the hands are full`)
  }
  checkLeftOver(problem, plan, bad)
  if (now !== null) return told
  for (const one of told)
    if (byNight(problem, one) && byDay(problem, work, one))
      bad('night', one.dish.id, one.mix.at, 0, `${one.dish.title}: its dough is worked at night, and could be by day`)
  return told
}

/** Whether a step is of a load, or of it among others. */
export const isFor = ({load, further}: Step, number: number): boolean => [load, ...(further ?? [])].includes(number)

/** The doughs of a load, by its steps. */
function toldIn(problem: PlanProblem, plan: Plan, load: Load, bad: Report): Told[] {
  const counts = new Map<string, number>()
  for (const d of load.dishes) if (!d.alreadyIn) counts.set(d.dish, (counts.get(d.dish) ?? 0) + d.count)
  return Array.from(counts).flatMap(([id, count]): Told[] => {
    const dish = problem.dishes.find((d) => d.id === id)
    if (!dish?.dough) return []
    const steps = plan.steps.filter((s) => s.dishes.includes(id) && isFor(s, load.number))
    const of = (...actions: Step['action'][]): Step | undefined => steps.find(({action}) => actions.includes(action))
    const mix = of('mix', 'evening before')
    if (!mix) {
      bad('dough', id, load.at, 0, `${dish.title}: no step mixes its dough`)
      return []
    }
    // Only what was mixed before can be one dough for several loads.
    const mixedBefore = problem.done?.doughs?.some(
      (d) => d.dish === id && d.mixed !== null && Math.abs(d.mixed - mix.at) <= rounding,
    )
    if (mix.further && !mixedBefore) bad('dough', id, mix.at, 0, `${dish.title}: its dough is told of twice`)
    const heavy = dish.mass * count - kneading.upTo
    const mixing = dish.dough.mix === 0 || heavy <= 0 ? dish.dough.mix : dish.dough.mix + fives(heavy * kneading.perKilogram)
    const row = shapings.find(({vessels}) => vessels.some((word) => dish.vessel.name.includes(word))) ?? shapings.at(-1)!
    const shaping = dish.dough.shape === 0 ? 0 : Math.max(dish.dough.shape, fives(row.minutes * count))
    return [{dish, load: load.number, at: load.at, steps, mix, shape: of('shape'), sponge: of('sponge'), mixing, shaping}]
  })
}

const fives = (minutes: number): number => Math.round(minutes / 5) * 5

/** Each of a dough's waits is as long as its receipt has it, or as it holds. */
function checkTimes(one: Told, plan: Plan, done: PlanProblem['done'], bad: Report): void {
  const {dish, at, mix, shape, sponge, steps} = one
  const dough = dish.dough!
  const {title} = dish
  const now = done?.now ?? null
  const [proveLow, proveHigh] = [dough.prove?.low ?? 0, dough.prove?.high ?? 0]
  const shapeAt = shape?.at ?? Math.max(mix.at + one.mixing, at - one.shaping - (dough.prove?.likely ?? 0))
  if (dough.shape > 0 && !shape) bad('dough', dish.id, at, 0, `${title}: no step shapes its dough`)
  const risen = shapeAt - (mix.at + one.mixing)
  const proved = at - (shapeAt + one.shaping)
  const overnight = dish.evening?.some(({does}) => does === 'set') ? 1 : 0
  const [set, own] = [steps.filter(({action}) => action === 'sponge').length, dough.sponge ? 1 : 0]
  if (set > own || set + overnight > (dough.again ? 2 : 1))
    bad(
      'dough',
      dish.id,
      mix.at,
      set,
      `${title}: its sponge is set ${set + overnight} times, not ${dough.again ? 2 : Math.max(own, overnight)}`,
    )
  if (dough.sponge && !sponge) bad('dough', dish.id, mix.at, 0, `${title}: no step sets its sponge`)
  // What was mixed when the day was planned again, or could be mixed no sooner, has the time it has.
  if (now !== null && Math.min(mix.at, sponge?.at ?? mix.at) < now + rules.tick) {
    const [had, least] = [risen + proved, rules.leastRise * (dough.rise + (dough.prove?.likely ?? 0))]
    if (Math.min(risen, proved, had - least) < -rounding)
      bad('dough', dish.id, shapeAt, least - had, `${title}: its dough has ${had} min to rise, not ${least}`)
    // What was seen not to have risen is slower than its receipt, in bulk or once it was shaped.
    const own = done?.doughs?.find((d) => d.dish === dish.id)
    const slow = own?.behind?.slow ?? 0
    checkLate(one, risen - (own?.shaped === undefined ? slow : 0), proved - (own?.shaped === undefined ? 0 : slow), bad)
    return
  }
  if (dough.sponge && sponge) checkSponge(one, sponge, plan, bad)
  const [low, high] = [dough.bulk?.low ?? dough.rise, dough.bulk?.high ?? dough.rise]
  if (risen < low - rounding)
    bad('dough', dish.id, shapeAt, low - risen, `${title}: its dough has ${risen} min to rise, not ${low}`)
  checkStands(one, {shaped: shapeAt + one.shaping, risen, proved}, bad)
  if (mix.action === 'evening before') checkCold(one, risen, high, plan, bad)
  else if (risen > high + (dough.bulkHold ?? dough.hold) + rounding)
    bad('dough', dish.id, shapeAt, risen - high, `${title}: its dough rises ${risen} min and is over-proved`)
  if (steps.some(({action}) => action === 'rise') === (dough.rise === 0))
    bad('dough', dish.id, shapeAt, 0, `${title}: no step leaves its dough to rise`)
  if (proved < proveLow - rounding)
    bad(
      'dough',
      dish.id,
      at,
      proveLow - proved,
      dough.prove ? `${title}: its shaped dough proves ${proved} min` : `${title}: its dough is not shaped when it goes in`,
    )
  if (proved > proveHigh + dough.hold + rounding)
    bad('dough', dish.id, at, proved - proveHigh - dough.hold, `${title}: its shaped dough waits ${proved - proveHigh} min`)
}

/** A sponge works as long as its receipt has it; or through the night in a place cold enough for that, which is told and warned of. */
function checkSponge({dish, mix}: Told, sponge: Step, plan: Plan, bad: Report): void {
  const {title} = dish
  const {low, high} = dish.dough!.sponge!
  const works = mix.at - (sponge.at + rules.setSponge)
  const said = sponge.words?.say.id
  const place = coldPlaces.find(({id}) => said === (id === 'refrigerator' ? 'sponge cold' : 'sponge cool'))
  const [least, longest] = place ? [place.slower.low * low, place.slower.high * high] : [low, rules.spongeHolds * high]
  if (works < least - rounding)
    bad('dough', dish.id, mix.at, least - works, `${title}: its sponge works ${works} min, not ${least}`)
  if (works > longest + rounding)
    bad('dough', dish.id, mix.at, works - longest, `${title}: its sponge works ${works} min and is spent`)
  if (!place) return
  if (dish.dough!.spoils && !place.safe)
    bad(
      'dough',
      dish.id,
      sponge.at,
      0,
      `${title}: there is egg or milk in it, and its sponge stands through the night in no refrigerator`,
    )
  if (!plan.messages.some(({rule, reason}) => rule === 'cold-rise' && reason.startsWith(`${title}: its sponge`)))
    bad(
      'dough',
      dish.id,
      sponge.at,
      works - high,
      `${title}: its sponge works ${works - high} min too long, and nothing warns of it`,
    )
}

/**
 * A dough stands where its receipt has it, and the steps say so. With egg or milk in it that is no cold place but the refrigerator, and it stands in
 * the warm for no more than four hours, or than its receipt has it at the least where no one wait is longer (FDA Food Code 2022, 3-501.16, 3-501.19(B)).
 */
function checkStands(
  {dish, at, steps, mix, mixing}: Told,
  {shaped, risen, proved}: Record<'shaped' | 'risen' | 'proved', number>,
  bad: Report,
): void {
  const dough = dish.dough!
  const {title} = dish
  const says = (action: Step['action'], id: string): Step | undefined =>
    steps.find((s) => s.action === action && s.words?.say.id === id)
  const wanted = [
    {
      place: dough.bulkIn?.place,
      step: says('rise', dough.bulkIn?.place === 'cellar' && !dough.spoils ? 'rise cool' : 'rise cold'),
      what: 'rise',
    },
    {place: dough.proveIn, step: says('prove', `prove in ${dough.spoils ? 'refrigerator' : dough.proveIn}`), what: 'prove'},
  ]
  for (const {place, step, what} of wanted)
    if (place && !step) bad('dough', dish.id, mix.at, 0, `${title}: its dough is to ${what} in a ${place}, and no step says so`)
  if (!dough.spoils) return
  const cellar = says('rise', 'rise cool') ?? says('prove', 'prove in cellar') ?? says('prove', 'prove cold')
  if (cellar)
    bad(
      'dough',
      dish.id,
      cellar.at,
      0,
      `${title}: its dough has egg or milk in it, and no step says that it stands in a refrigerator`,
    )
  const cold = says('rise', 'rise cold')
  const warm = [cold ? cold.at - (mix.at + mixing) : risen, says('prove', 'prove in refrigerator') ? 0 : proved]
  const own = (cold ? (dough.bulkIn?.warm ?? 0) : (dough.bulk?.low ?? dough.rise)) + (warm[1] === 0 ? 0 : (dough.prove?.low ?? 0))
  const all = warm[0]! + warm[1]!
  const most = Math.max(warmDough.minutes, own + warmDough.rounding)
  const over = Math.max(...warm.map((minutes) => minutes - warmDough.minutes), all - most)
  if (over > rounding)
    bad(
      'dough',
      dish.id,
      Math.min(at, shaped),
      over,
      `${title}: its dough has egg or milk in it, and stands for ${all} min in the warm`,
    )
}

/** What an oven that is late makes wait longer than it holds is told what to do with. */
function checkLate({dish, at, mix, steps}: Told, risen: number, proved: number, bad: Report): void {
  const dough = dish.dough!
  const said = (action: Step['action']): string | undefined => steps.find((s) => s.action === action)?.words?.say.id
  const high = dough.bulk?.high ?? dough.rise
  const cool =
    mix.action === 'evening before' || ['rise cold', 'rise cool'].some((id) => steps.some(({words}) => words?.say.id === id))
  if (!cool && dough.rise > 0 && risen > high + (dough.bulkHold ?? dough.hold) + rounding && said('rise') !== 'rise late')
    bad('dough', dish.id, at, risen - high, `${dish.title}: its dough rises ${risen} min, and no step says that the oven is late`)
  const most = (dough.prove?.high ?? 0) + dough.hold
  const cold = dough.cold || dough.proveIn || (dough.spoils && dough.prove && dough.prove.low > warmDough.minutes)
  if (dough.prove && !cold && proved > most + rounding && said('prove') !== 'prove late')
    bad(
      'dough',
      dish.id,
      at,
      proved - most,
      `${dish.title}: its shaped dough waits ${proved} min, and no step says that the oven is late`,
    )
}

/** A dough that rises longer than its receipt has it stands in a place cold enough for that, which is told and warned of. */
function checkCold({dish, mix, steps}: Told, risen: number, high: number, plan: Plan, bad: Report): void {
  const {title} = dish
  const said = steps.flatMap(({action, words}) => (action === 'rise' ? [words?.say.id] : []))
  const place = coldPlaces.find(({id}) => said.includes(id === 'refrigerator' ? 'rise cold' : 'rise cool'))
  if (!place) {
    bad('dough', dish.id, mix.at, 0, `${title}: its dough rises through the night, and no step says where`)
    return
  }
  if (dish.dough!.spoils && !place.safe)
    bad('dough', dish.id, mix.at, 0, `${title}: its dough has egg or milk in it, and stands through the night in no refrigerator`)
  const most = place.slower.high * high
  if (risen > most + rounding)
    bad('dough', dish.id, mix.at, risen - most, `${title}: its dough rises ${risen} min and is over-proved`)
  const warned = plan.messages.some(({rule, reason}) => rule === 'cold-rise' && reason.startsWith(`${title}: its dough`))
  if (risen > high + rounding && !warned)
    bad('dough', dish.id, mix.at, risen - high, `${title}: its dough rises ${risen - high} min too long, and nothing warns of it`)
}

/** What to do with a dough that is mixed and is not baked any more has to be said. */
function checkLeftOver(problem: PlanProblem, plan: Plan, bad: Report): void {
  for (const {dish: id} of plan.unplaced) {
    const mixed = (problem.done?.doughs ?? []).filter((d) => d.dish === id && d.mixed !== null).length
    const baked = plan.loads.filter(({dishes}) => dishes.some((d) => d.dish === id && !d.alreadyIn)).length
    const said = plan.steps.some((s) => s.action === 'rise' && s.load === null && s.dishes.includes(id))
    const title = problem.dishes.find((d) => d.id === id)?.title ?? id
    if (!said && mixed > baked)
      bad('dough', id, problem.done!.now, mixed - baked, `${title}: its dough is mixed, and nothing says what becomes of it`)
  }
}

/** All the work of a day: at doughs, fires and the door. What takes a moment only, feeding the fire, is none. */
export function workOfDay(problem: PlanProblem, plan: Plan, told: readonly Told[]): Work[] {
  const work: Work[] = []
  const add = (whose: Told | null, from: number | undefined, minutes: number): void => {
    if (from !== undefined && minutes > 0) work.push({whose, from, to: from + minutes})
  }
  for (const one of told) {
    add(one, one.sponge?.at, rules.setSponge)
    add(one, one.mix.at, one.mixing)
    add(one, one.shape?.at, one.shaping)
  }
  for (const fire of plan.fires ?? []) {
    add(null, fire.lit, rules.fireWork.light)
    add(null, fire.raked, rules.fireWork.rake)
  }
  const door = new Map<number, number>()
  for (const load of plan.loads)
    for (const {dish: id, count, draw, alreadyIn} of load.dishes) {
      const heavy = (problem.dishes.find((d) => d.id === id)?.mass ?? 0) > rules.heavy
      const minutes = count * (heavy ? rules.handlingHeavy : rules.handlingLight)
      for (const at of alreadyIn ? [draw.likely] : [load.at, draw.likely]) door.set(at, (door.get(at) ?? 0) + minutes)
    }
  // What one pair of hands cannot do before the next clock time takes two.
  for (const [at, minutes] of door)
    for (let left = minutes; left > 1e-9; left -= rules.tick) add(null, at, Math.min(minutes, rules.tick))
  return work
}

/** Whether more than all hands are wanted at some moment of a piece of work. */
function overfull(problem: PlanProblem, work: readonly Work[], {from, to}: Pick<Work, 'from' | 'to'>, mine: Told): boolean {
  const others = work.filter((w) => !(w.whose === mine && w.from === from && w.to === to) && w.from < to && w.to > from)
  return others
    .map((w) => Math.max(w.from, from))
    .some((moment) => others.filter((w) => w.from <= moment && w.to > moment).length >= problem.day.hands)
}

/** Whether some minute of a piece of work is in the night. */
function inNight(problem: PlanProblem, from: number, minutes: number): boolean {
  for (let m = from; m < from + minutes; m++) if (isNight(problem, m)) return true
  return false
}

/** What is said of a dough that rises in the cold. */
const COLD: ReadonlySet<string> = new Set(['rise cold', 'rise cool'])

const byNight = (problem: PlanProblem, {mix, shape, sponge, mixing, shaping, steps}: Told): boolean =>
  inNight(problem, mix.at, mixing) ||
  // Somebody gets up to stand it in the cold once it has risen warm.
  steps.some(
    ({action, at, words}) =>
      action === 'rise' && COLD.has(words?.say.id ?? '') && at > mix.at + mixing && inNight(problem, at - rules.tick, rules.tick),
  ) ||
  (shape !== undefined && inNight(problem, shape.at, shaping)) ||
  (sponge !== undefined && inNight(problem, sponge.at, rules.setSponge))

/** Whether some lengths of its receipt's ranges have a dough mixed and shaped by day, and its sponge set, by hands that are free. */
function byDay(problem: PlanProblem, work: readonly Work[], one: Told): boolean {
  const {dish, at, mixing, shaping} = one
  const dough = dish.dough!
  const others = work.filter(({whose}) => whose !== one)
  const free = (from: number, minutes: number): boolean =>
    minutes === 0 || (!inNight(problem, from, minutes) && !overfull(problem, others, {from, to: from + minutes}, one))
  const range = ({low, likely, high}: {low: number; likely: number; high: number}): number[] => {
    const first = likely - 5 * Math.floor((likely - low) / 5)
    return Array.from({length: 1 + Math.floor((high - first) / 5)}, (_, i) => first + 5 * i)
  }
  const bulk = range(dough.bulk ?? {low: dough.rise, likely: dough.rise, high: dough.rise})
  const sponges = dough.sponge ? range({...dough.sponge, high: rules.spongeHolds * dough.sponge.high}) : []
  const set = (mixAt: number): boolean =>
    !dough.sponge || sponges.some((works) => free(mixAt - works - rules.setSponge, rules.setSponge))
  // What has egg or milk in it may not be left so long in the warm for the sake of anybody's night.
  const keeps = (risen: number, proved: number): boolean =>
    !dough.spoils || dough.bulkIn !== undefined || dough.cold === true || risen + proved <= warmDough.minutes
  const warm = dough.bulkIn?.warm ?? 0
  const chills = (rises: number): boolean => warm === 0 || !inNight(problem, rises + warm - rules.tick, rules.tick)
  return range(dough.prove ?? {low: 0, likely: 0, high: 0}).some((proved) => {
    const shapeAt = at - proved - shaping
    const mixes = (risen: number): number => shapeAt - risen - mixing
    return (
      free(shapeAt, shaping) &&
      bulk.some((risen) => {
        const from = mixes(risen)
        return keeps(risen, proved) && free(from, mixing) && chills(from + mixing) && set(from)
      })
    )
  })
}
