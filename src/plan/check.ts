import type {Dish, Placed} from '../scale/types.js'
import {checkBalance} from './check-balance.js'
import {checkDoughs} from './check-dough.js'
import {checkFigures} from './check-figures.js'
import {checkFires} from './check-fires.js'
import {checkStanding, distance, groundIn, inWay, METRES, outline, Shares} from './check-floor.js'
import {Doses, heatOf, simpson} from './check-heat.js'
import {checkKept} from './check-kept.js'
import {checkMakings} from './check-making.js'
import {isNight} from './check-night.js'
import {checkRising} from './check-rising.js'
import {checkScore} from './check-score.js'
import {checkSteps} from './check-steps.js'
import {rules} from './rules.js'
import type {Plan, PlanProblem} from './types.js'

/**
 * The checker. It reads an oven, a day and a plan as data and says which rule is broken and by how much. It shares figures (`rules`)
 * with the planner, and how a phrase is said in words, and no other code: curves are read, doses summed and distances measured again here, by other means.
 */
export interface Violation {
  readonly rule:
    | 'fire'
    | 'forecast'
    | 'dish'
    | 'count'
    | 'clock'
    | 'night'
    | 'order'
    | 'ready'
    | 'second fire'
    | 'start heat'
    | 'end heat'
    | 'dose'
    | 'over-baked'
    | 'eased'
    | 'draw range'
    | 'floor'
    | 'overlap'
    | 'mouth'
    | 'zone'
    | 'reach'
    | 'hands'
    | 'holding'
    | 'dough'
    | 'steps'
    | 'score'
    | 'possible'
  readonly dish: string | null
  /** Minutes after midnight, where the break has a time. */
  readonly at: number | null
  /** By how much, in the rule's own unit. */
  readonly by: number
  readonly reason: string
  /** It is of vessels that are in the oven already, so the log's doing, and no plan's. */
  readonly noted?: boolean
}

/** °C and minutes that are rounding, not a break. */
const tolerance = {celsius: 0.6, minutes: 0.01}

/** Every rule the plan breaks; empty for a sound plan. */
export function check(problem: PlanProblem, plan: Plan): Violation[] {
  const out: Violation[] = []
  const bad = (
    rule: Violation['rule'],
    dish: string | null,
    at: number | null,
    by: number,
    reason: string,
    noted = false,
  ): void => {
    out.push({rule, dish, at, by, reason, ...(noted ? {noted} : {})})
  }
  const dishes = new Map(problem.dishes.map((d) => [d.id, d]))
  const heat = heatOf(problem, plan)
  const {inZone, end} = heat
  const doses = new Doses(heat, plan)

  checkFires(problem, plan, bad)
  const burning = (plan.fires ?? []).slice(1).map((x) => ({from: x.lit, to: x.ready}))

  // What is set in, vessel by vessel.
  interface Stay {
    readonly dish: Dish
    readonly placed: Placed
    readonly from: number
    readonly to: number
    readonly old: boolean
  }
  const stays: Stay[] = []
  const inside: Inside[] = []
  // What can be said only when all that is in the oven is known.
  const later: (() => void)[] = []
  const counted = new Map<string, number>()
  const hands = new Map<number, number>()
  const openings = new Set<number>()
  /** What is in the oven already: whether any draw from now on, and before another fire, keeps every rule, and how much it could still have. */
  const laterDraws = (
    parts: readonly Judged[],
    from: number,
  ): {possible: boolean; first: number | null; most: readonly number[]; over: boolean} => {
    const most = parts.map(() => 0)
    let first: number | null = null
    let over = false
    const last = Math.min(end, ...(plan.fires ?? []).flatMap(({lit}) => (lit >= from ? [lit] : [])))
    for (let t = Math.ceil((problem.done?.now ?? 0) / rules.tick) * rules.tick; t <= last; t += rules.tick) {
      if (isNight(problem, t)) continue
      const has = parts.map((part) => part.dose(t))
      // Only what is beyond doubt counts as possible: both sides round.
      const broken = parts.flatMap((part, i) => [
        ...part.breaks(t, 0.98 * has[i]!).flatMap(({rule}) => (rule === 'over-baked' ? [] : [rule])),
        ...part.breaks(t, 1.02 * has[i]!).flatMap(({rule}) => (rule === 'over-baked' && allDone(parts, t) ? [rule] : [])),
      ])
      if (broken.length === 0) return {possible: true, first, most, over}
      if (broken.includes('holding')) break
      if (first === null) {
        first = t
        over = broken.includes('over-baked')
      }
      for (const [i, dose] of has.entries()) most[i] = Math.max(most[i]!, dose)
    }
    return {possible: false, first, most, over}
  }
  for (const load of plan.loads) {
    const mine = new Map<string, Placed[]>()
    for (const p of load.placed) mine.set(p.dish, [...(mine.get(p.dish) ?? []), p])
    for (const id of mine.keys())
      if (!load.dishes.some((d) => d.dish === id))
        bad('dish', id, load.at, 1, `${id}: a place in load ${load.number}, but not in it`)
    const entries = new Map<string, number>()
    for (const entry of load.dishes) {
      const dish = dishes.get(entry.dish)
      if (!dish) {
        bad('dish', entry.dish, load.at, 1, `${entry.dish}: no dish of the day`)
        continue
      }
      const name = dish.title
      const from = load.at
      const to = entry.draw.likely
      const skip = entries.get(entry.dish) ?? 0
      entries.set(entry.dish, skip + entry.count)
      counted.set(entry.dish, (counted.get(entry.dish) ?? 0) + entry.count)
      const each = dish.mass > rules.heavy ? rules.handlingHeavy : rules.handlingLight
      const old = entry.alreadyIn === true
      if (old && !problem.done?.set.some((d) => d.dish === entry.dish && d.at === load.at))
        bad('dish', entry.dish, load.at, 1, `${name}: said to be in already, and not in`)
      if (!old) {
        hands.set(from, (hands.get(from) ?? 0) + each * entry.count)
        openings.add(from)
        if (Math.abs(from / rules.tick - Math.round(from / rules.tick)) > 1e-6)
          bad('clock', entry.dish, from, 0, `${name}: set in off the ${rules.tick}-minute clock`)
        if (problem.done && from < problem.done.now)
          bad('clock', entry.dish, from, problem.done.now - from, `${name}: set in before now`)
        if (from < plan.ready - tolerance.minutes)
          bad('ready', entry.dish, from, plan.ready - from, `${name}: set in ${plan.ready - from} min before the soak ends`)
        if (isNight(problem, from)) bad('night', entry.dish, from, 0, `${name}: set in at night`)
      }
      hands.set(to, (hands.get(to) ?? 0) + each * entry.count)
      openings.add(to)
      if (Math.abs(to / rules.tick - Math.round(to / rules.tick)) > 1e-6)
        bad('clock', entry.dish, to, 0, `${name}: drawn off the ${rules.tick}-minute clock`)
      if (problem.done && to < problem.done.now) bad('clock', entry.dish, to, problem.done.now - to, `${name}: drawn before now`)
      if (isNight(problem, to)) bad('night', entry.dish, to, 0, `${name}: drawn at night`)
      if (to <= from) bad('clock', entry.dish, to, from - to, `${name}: drawn before being set in`)
      if (to > end + tolerance.minutes) bad('clock', entry.dish, to, to - end, `${name}: drawn after the forecast ends`)
      for (const b of burning)
        if (from < b.to - tolerance.minutes && to > b.from + tolerance.minutes)
          bad(
            'second fire',
            entry.dish,
            b.from,
            Math.min(to, b.to) - Math.max(from, b.from),
            `${name}: in the oven while the fire burns`,
          )
      if (!(entry.draw.low <= entry.draw.likely && entry.draw.likely <= entry.draw.high))
        bad('draw range', entry.dish, to, 0, `${name}: the draw time is outside its own range`)
      const places = (mine.get(entry.dish) ?? []).slice(skip, skip + entry.count)
      // What was made again after a loss may have gone where the plan knows of no room.
      const anywhere =
        old &&
        places.length === 0 &&
        problem.done!.set.some((s) => s.dish === entry.dish && s.drawn === null && s.placed.length === 0)
      if (anywhere) bad('count', entry.dish, from, 0, `${dish.title}: as the log has it there would be no room for it`, true)
      else if (places.length !== entry.count)
        bad(
          'count',
          entry.dish,
          from,
          entry.count - places.length,
          `${name}: ${entry.count} set in, ${places.length} places on the floor`,
        )
      for (const placed of places) stays.push({dish, placed, from, to, old})
      // Heat, in every part of the floor its vessels stand in.
      const zones = new Set<Placed['zone']>(places.map((p) => p.zone))
      const {need} = dish
      // Eased limits are for a day that has begun, and what is wanting has to be said.
      const {eased} = entry
      if (eased && !problem.done) bad('eased', entry.dish, from, 0, `${name}: limits eased before the day has begun`)
      const give = eased ? rules.ease.far.celsius : 0
      // What has to be cooked through keeps its dose, or most of it through a night; what sets by its eggs keeps most of it.
      const warned = (list: readonly string[]): boolean => dish.cautions.some((id) => list.includes(id))
      const {near, far} = rules.ease
      const through = warned(rules.cookedThrough)
      const less = need.overnight ? (through ? near : far).night : through ? 0 : (warned(rules.setByEggs) ? near : far).dose
      const wanting = {start: 0, end: 0, dose: 1}
      const judged: Judged[] = []
      for (const zone of zones) {
        const inHeat = inZone(zone, from)
        if (!old) wanting.start = Math.max(wanting.start, need.startLow - inHeat)
        if (!old && inHeat < need.startLow - give - tolerance.celsius)
          bad(
            'start heat',
            entry.dish,
            from,
            need.startLow - give - inHeat,
            `${name} at the ${zone}: set in at ${Math.round(inHeat)} °C; no less than ${Math.round(need.startLow - give)} °C`,
          )
        if (!old && inHeat > need.startHigh + tolerance.celsius)
          bad(
            'start heat',
            entry.dish,
            from,
            inHeat - need.startHigh,
            `${name} at the ${zone}: set in at ${Math.round(inHeat)} °C; ${Math.round(need.startHigh)} °C at most`,
          )
        const likely = needed(dish, need.minutes.likely)
        const least = eased
          ? Math.min(likely, needed(dish, Math.min(need.minutes.low, (1 - less) * need.minutes.likely)))
          : likely
        // What is in the oven gives hardly any of its dose for what is set in after it.
        const wanted = old ? Math.max(least, needed(dish, (1 - rules.easeInside) * need.minutes.likely)) : least
        const most = needed(dish, need.longest ?? need.minutes.high) * (zones.size === 3 ? 1 + rules.spread : 1)
        // Dose by Simpson's rule: the planner sums by the minute with the trapezoid rule.
        const dose = (until: number): number => simpson((m) => Math.max(0, inZone(zone, m) - need.done), from, until)
        const outHeat = inZone(zone, to)
        const got = dose(to)
        wanting.end = Math.max(wanting.end, need.endLow - outHeat)
        wanting.dose = Math.min(wanting.dose, got / likely)
        /** What is broken by a draw at one time, and by how much. */
        const breaks: Judged['breaks'] = (until, has) => {
          const heat = inZone(zone, until)
          const share = `${name}: drawn with ${Math.round((100 * has) / wanted)} % of its heat`
          const faults: Fault[] = []
          const least = need.endLow - give
          // What is in the oven stays in for the heat that it still wants, though it ends cooler than it should.
          if (heat < least - tolerance.celsius && !(old && has < likely))
            faults.push({
              rule: 'end heat',
              by: least - heat,
              reason: `${name} at the ${zone}: drawn at ${Math.round(heat)} °C; not under ${Math.round(least)} °C`,
            })
          if (has < wanted * 0.985 - 5) faults.push({rule: 'dose', by: wanted - has, reason: share})
          // Longer than the receipt's longest: allowed only for the next opening of the door.
          const stays = need.overnight
          if (!stays && has > most * 1.015 + 5 && dose(until - rules.tick - rules.staySlack) >= likely * 1.015 + 5)
            faults.push({rule: 'over-baked', by: has - most, reason: share})
          // Cooked food under the safe holding temperature, minutes before it is drawn.
          if (need.done >= rules.holdCelsius && need.cools !== true) {
            let cold = 0
            for (let m = from; m < until; m++) if (inZone(zone, m + 0.5) < rules.holdCelsius) cold++
            if (cold > rules.coldMinutes)
              faults.push({rule: 'holding', by: cold, reason: `${name}: ${cold} min under ${rules.holdCelsius} °C`})
          }
          return faults
        }
        judged.push({dose, breaks, wanted, likely})
      }
      const own: Inside = {
        dish,
        places,
        to,
        done: (until) => judged.every(({dose, likely}) => dose(until) >= likely * (1 + rules.marginDose)),
      }
      if (old) inside.push(own)
      // All vessels of it wait, though they end cooler than they should, for those that were not done at the opening before.
      const waited = old && judged.some(({dose, likely}) => dose(to - rules.tick) < likely)
      const faults = judged.map((one) =>
        one
          .breaks(to, one.dose(to))
          .filter(({rule}) => (rule === 'over-baked' ? !old || allDone(judged, to) : rule !== 'end heat' || !waited)),
      )
      const saving = old && faults.some((some) => some.length > 0) ? laterDraws(judged, from) : null
      const past = saving !== null && !saving.possible && saving.first !== null
      /** Burned in the oven, or left to grow cool there: not where it could not be reached before. */
      const leftIn = (rule: Fault['rule'], by: number, reason: string): void => {
        if (!heldBack(problem, inside, own)) bad(rule, entry.dish, to, by, reason)
      }
      for (const {rule, by, reason} of faults.flat())
        if (past && rule !== 'holding') continue
        else if (old && (rule === 'over-baked' || rule === 'end heat')) later.push(() => leftIn(rule, by, reason))
        else bad(rule, entry.dish, to, by, reason)
      if (saving && past) {
        for (const [i, {dose, wanted}] of judged.entries()) {
          const got = dose(to)
          const enough = Math.min(wanted, saving.most[i]!)
          if (got < enough * 0.95 - 5)
            bad(
              'dose',
              entry.dish,
              to,
              enough - got,
              `${name}: drawn before the ${Math.round((100 * enough) / wanted)} % of its heat that can be had`,
            )
        }
        const more = to - saving.first!
        if (saving.over && more > 2 * rules.tick)
          later.push(() => leftIn('over-baked', more, `${name}: done, and left in for ${more} min more`))
      }
      // Where nobody knows in which part of the floor it stands, how much it lacks there is a guess.
      if (eased && !anywhere) {
        const celsius = Math.max(Math.abs(eased.start - wanting.start), Math.abs(eased.end - wanting.end))
        if (celsius > tolerance.celsius + 0.1)
          bad('eased', entry.dish, from, celsius, `${name}: ${Math.round(celsius)} °C further from its heat than is said`)
        if (Math.abs(eased.dose - wanting.dose) > 0.02)
          bad(
            'eased',
            entry.dish,
            to,
            Math.abs(eased.dose - wanting.dose),
            `${name}: drawn with ${Math.round(100 * wanting.dose)} % of its heat, ${Math.round(100 * eased.dose)} % said`,
          )
      }
    }
  }
  for (const report of later) report()
  for (const dish of problem.dishes) {
    const before = (problem.done?.set ?? [])
      .filter((d) => d.dish === dish.id && d.drawn !== null && !d.instead)
      .reduce((sum, d) => sum + d.count, 0)
    const have = (counted.get(dish.id) ?? 0) + before
    const left = plan.unplaced.some((u) => u.dish === dish.id)
    if (have > dish.count) bad('count', dish.id, null, have - dish.count, `${dish.title}: ${have} set in, ${dish.count} made`)
    if (have < dish.count && !left)
      bad('count', dish.id, null, dish.count - have, `${dish.title}: ${have} set in, ${dish.count} made`)
    if (have === dish.count && left) bad('possible', dish.id, null, 0, `${dish.title}: in the plan and named as left out`)
  }
  if (plan.possible !== (plan.unplaced.length === 0))
    bad('possible', null, null, 0, 'the plan does not say rightly whether it is possible')

  for (const [at, minutes] of hands) {
    const most = rules.tick * problem.day.hands
    if (minutes > most + 1e-6)
      bad('hands', null, at, minutes - most, `${minutes} min of door work at one opening; the hands have ${most}`)
  }

  // White bread and pies wait until what is set in very hot to fall has been in half an hour.
  const {settleIn} = rules
  const inAt = (ok: (d: Dish) => boolean): {at: number; dish: Dish}[] =>
    plan.loads.flatMap((l) =>
      l.dishes.flatMap((d) =>
        d.alreadyIn !== true && dishes.has(d.dish) && ok(dishes.get(d.dish)!) ? [{at: l.at, dish: dishes.get(d.dish)!}] : [],
      ),
    )
  for (const h of inAt((d) => d.crust !== true && d.need.falling && d.need.startBest >= settleIn.veryHot))
    for (const b of inAt((d) => d.crust === true))
      if (b.at >= h.at && b.at - h.at < settleIn.minutes)
        bad(
          'order',
          b.dish.id,
          b.at,
          settleIn.minutes - (b.at - h.at),
          `${b.dish.title}: set in ${b.at - h.at} min after ${h.dish.title}; half an hour is due`,
        )

  // Of vessels set in at once of which only some were drawn, nobody knows where those stand that are left: what went in since is no fault
  // of the plan.
  const left = (s: Stay): boolean =>
    s.old && (problem.done?.set ?? []).some((d) => d.dish === s.dish.id && d.at === s.from && d.drawn !== null)

  // The floor.
  for (const s of stays) checkStanding(problem, s.dish, s.placed, s.from, bad)
  for (let i = 0; i < stays.length; i++)
    for (let j = i + 1; j < stays.length; j++) {
      const a = stays[i]!
      const b = stays[j]!
      if (a.from >= b.to || b.from >= a.to) continue
      if (a.old && b.old && (left(a) || left(b))) continue
      const clear = groundIn(problem).rules.clearance
      const d = distance(outline(a.dish, a.placed), outline(b.dish, b.placed))
      const noted = a.old && b.old
      const overlap = d < clear - METRES
      if (overlap)
        bad(
          'overlap',
          a.dish.id,
          Math.max(a.from, b.from),
          clear - d,
          noted
            ? `${a.dish.title} and ${b.dish.title}: as the log has it they would stand in one place`
            : `${a.dish.title} ${a.placed.number} and ${b.dish.title} ${b.placed.number} stand ${Math.round(d * 1000)} mm apart`,
          noted,
        )
      // Who is in whose way is not known then.
      if (overlap && noted) continue
      for (const [front, behind] of [
        [a, b],
        [b, a],
      ] as const) {
        if (front.from >= behind.from && front.to <= behind.to) continue
        // Said to be shifted aside for a moment.
        if (front.dish.shifts) continue
        // How it was brought past what stood there is no matter any more.
        if (noted && front.to <= behind.to) continue
        if (inWay(problem, front.dish, front.placed, behind.dish, behind.placed))
          bad(
            'reach',
            behind.dish.id,
            front.to > behind.to ? behind.to : behind.from,
            0,
            noted
              ? `${behind.dish.title}: behind ${front.dish.title} in the oven, and to be drawn before it`
              : `${front.dish.title} ${front.placed.number}: in the way of ${behind.dish.title} ${behind.placed.number}`,
            noted,
          )
      }
    }

  checkFigures(plan, dishes, {heat, doses, needed}, bad)
  checkSteps(problem, plan, dishes, {heat, openings}, bad)
  const doughs = checkDoughs(problem, plan, bad)
  checkRising(problem, plan, doughs, bad)
  checkMakings(problem, plan, doughs, bad)
  checkKept(problem, plan, dishes, heat, bad)

  const shares = new Shares(problem, plan)
  checkScore(problem, plan, dishes, {heat, doses, needed, shares, openings}, bad)
  checkBalance(plan, dishes, {heat, doses, shares}, bad)
  return out
}

/** What is broken by a draw at one time, and by how much. */
interface Fault {
  readonly rule: 'end heat' | 'dose' | 'over-baked' | 'holding'
  readonly by: number
  readonly reason: string
}

/** A dish as it fares in one part of the floor. Doses in °C·min; times minutes after midnight. */
interface Judged {
  readonly dose: (until: number) => number
  readonly breaks: (until: number, has: number) => Fault[]
  /** What it has to have, and what the receipt's own time gives it. */
  readonly wanted: number
  readonly likely: number
}

/** A part of a dish that is in the oven when the day is planned again. */
interface Inside {
  readonly dish: Dish
  readonly places: readonly Placed[]
  /** When it is drawn, minutes after midnight, and whether it is done by a time. */
  readonly to: number
  readonly done: (until: number) => boolean
}

/** Whether a part is drawn with another that stands in its way and was not done at the opening before, or had to wait likewise. */
function heldBack(problem: PlanProblem, all: readonly Inside[], one: Inside, seen: readonly Inside[] = []): boolean {
  return all.some(
    (other) =>
      other !== one &&
      !seen.includes(other) &&
      other.to === one.to &&
      other.places.some((front) => one.places.some((place) => inWay(problem, other.dish, front, one.dish, place))) &&
      (!other.done(one.to - rules.tick) || heldBack(problem, all, other, [...seen, one])),
  )
}

/** Whether all of a dish was done, as its receipt has it, two openings before a time: what waits for its own vessels in a cooler part is not over-baked for want of care. */
function allDone(parts: readonly Judged[], until: number): boolean {
  return parts.every(({dose, likely}) => dose(until - rules.tick - rules.staySlack) >= likely * 1.015 + 5)
}

export type Report = (rule: Violation['rule'], dish: string | null, at: number | null, by: number, reason: string) => void

/**
 * The dose of so many minutes by the receipt: at its heat, or, for falling heat that its receipt does not hold, in the usual falling oven from
 * that heat down.
 */
function needed(dish: Dish, minutes: number): number {
  const {need} = dish
  if (!need.falling || need.held) return (need.reference - need.done) * minutes
  const f = rules.usualFall
  const from = Math.max(f.ready, need.reference) - f.ambient
  // Hours after ready at which the usual oven is at the reference heat: from / (1 + a·h^b) = reference − ambient.
  const share = from / Math.max(1, need.reference - f.ambient)
  const hours = Math.max(0, (share - 1) / f.a) ** (1 / f.b)
  return simpson((m) => Math.max(0, f.ambient + from / (1 + f.a * (hours + m / 60) ** f.b) - need.done), 0, minutes)
}
