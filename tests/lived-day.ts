import type {DayFolder} from '../src/cli/day-folder.js'
import {fireToCome} from '../src/oven/fire-again.js'
import type {FiringLog, FurtherFire, LogRow} from '../src/oven/log.js'
import type {OvenEvent, Reading} from '../src/oven/types.js'
import {type Corrections, planAgain} from '../src/plan/again.js'
import {curveOf, doseNeeded, doseTable, whereIndex} from '../src/plan/curve.js'
import type {MadePlan} from '../src/plan/make.js'
import {doorEvents, loadEvent} from '../src/plan/response.js'
import {simulator} from '../src/plan/simulator.js'
import type {Plan} from '../src/plan/types.js'
import {slugOf} from '../src/scale/slug.js'
import type {Dish} from '../src/scale/types.js'

/** What became of a part of a dish: when it was set in and drawn, min after midnight, and with what share of the heat it needs. */
export interface Baked {
  readonly dish: string
  readonly count: number
  readonly at: number
  readonly drawn: number
  readonly share: number
}

/** A day as it was lived. */
export interface Lived {
  readonly baked: readonly Baked[]
  /** What the checker said of the plans made on the way. */
  readonly broken: readonly string[]
  readonly log: FiringLog
  /** When fires were lit again, min after midnight. */
  readonly fires: readonly number[]
}

/**
 * A day of one fire, or more where that is offered and taken up, lived through by a baker who does what the plan says: tests the heat before
 * everything that is to be set in, notes that, plans again, and sets in what is then to go in; draws when the plan has it drawn, and notes
 * it all. The oven is as simulated, but that it stores another share of the fire's heat than is believed.
 *
 * @param stored That share, 1 as believed.
 * @param late Minutes by which the fire is lit late.
 * @param again The fire is lit again where the plan offers that.
 */
export function lived(
  read: DayFolder,
  {plan: morning, problem, dishes}: MadePlan,
  stored: number,
  late: number,
  again = false,
): Lived {
  const {oven, day} = read
  const as = (value: number): {low: number; likely: number; high: number} => ({low: value, likely: value, high: value})
  const truth = simulator({oven, parameters: {stored: as(stored), loss: as(1), coupling: as(1)}})
  const option = problem.firings.find(({firing, further}) => firing.burn === morning.firing.burn && !further)!
  const dishOf = (id: string): Dish => dishes.find((dish) => dish.id === id)!
  const lit = morning.lit + late
  const rows: LogRow[] = []
  const readings: Reading[] = []
  const loads: OvenEvent[] = []
  const hands = new Map<number, number>()
  const inside: {readonly dish: string; readonly count: number; readonly at: number; readonly zone: string}[] = []
  const baked: Baked[] = []
  const broken: string[] = []
  const further: FurtherFire[] = []
  const known: Corrections = new Map()
  const log = (): FiringLog => ({
    date: day.date,
    lit,
    raked: morning.raked + late,
    wood: morning.firing.wood,
    ...(further.length > 0 ? {further: [...further]} : {}),
    rows: [...rows],
    readings: [...readings],
    doors: [],
  })
  const noted = (at: number, row: Pick<LogRow, 'what'> & Partial<LogRow>): void => {
    rows.push({line: 9 + rows.length, at, elapsed: at - lit, text: row.what, note: '', ...row})
  }
  const open = (at: number): void => {
    hands.set(at - lit, (hands.get(at - lit) ?? 0) + 1)
  }
  const real = (): Plan['forecast'] =>
    truth(
      option,
      [...loads, ...doorEvents(hands)].sort((a, b) => a.minutes - b.minutes),
      false,
    )
  const replanned = (now: number): Plan => {
    // Once the fire has been lit again no way out is looked for.
    const looks = again && further.length === 0
    const {plan} = planAgain({oven, day, now, options: looks ? {} : {effort: 'quick'}}, problem, morning, log(), [], known)
    broken.push(...plan.messages.flatMap(({rule, reason}) => (rule.startsWith('checker') ? [`${now}: ${reason}`] : [])))
    return plan
  }
  const test = (at: number): void => {
    const {floor, step} = real()
    const value = floor.likely[Math.round((at - lit) / step)]!
    readings.push({minutes: at - lit, kind: 'floor', value})
    noted(at, {what: 'reading', kind: 'floor', value})
  }
  let plan = morning
  let now = morning.raked + late
  const drawAt = ({dish, at}: (typeof inside)[number]): number => {
    const parts = plan.loads.flatMap((load) =>
      load.dishes.flatMap((d) => (d.dish === dish && d.alreadyIn ? [{off: Math.abs(load.at - at), draw: d.draw.likely}] : [])),
    )
    return Math.max(now, parts.sort((a, b) => a.off - b.off)[0]?.draw ?? at + 1)
  }
  const toCome = (): Plan['loads'][number][] => plan.loads.filter((load) => load.dishes.some((d) => d.alreadyIn !== true))
  for (let opening = 0; opening < 60; opening++) {
    const setIn = Math.min(...toCome().map(({at}) => at + (plan === morning ? late : 0)))
    const draw = Math.min(...inside.map(drawAt))
    const fire = plan === morning ? undefined : plan.fires?.[1 + further.length]
    now = Math.max(now, Math.min(setIn, draw, fire?.lit ?? Number.POSITIVE_INFINITY))
    if (!Number.isFinite(now)) break
    if (fire && now >= fire.lit && inside.length === 0) {
      const {firing} = fire
      loads.push({minutes: now - lit, kind: 'fire', firing})
      noted(now, {what: 'note', text: 'lit again', refired: 'lit'})
      now += firing.burn
      further.push({lit: now - firing.burn, raked: now, wood: firing.wood})
      noted(now, {what: 'note', text: 'raked again', refired: 'raked'})
      plan = replanned(now)
      continue
    }
    for (const one of inside.filter((part) => drawAt(part) <= now)) {
      inside.splice(inside.indexOf(one), 1)
      const {need, file} = dishOf(one.dish)
      const table = doseTable(curveOf(real(), oven.ambient ?? 20), whereIndex(one.zone), need.done)
      const dose = table[Math.round(now - lit)]! - table[Math.round(one.at - lit)]!
      baked.push({dish: one.dish, count: one.count, at: one.at, drawn: now, share: dose / doseNeeded(need)})
      noted(now, {what: 'drawn', dish: slugOf(file), count: one.count})
      open(now)
    }
    if (setIn > now) continue
    test(now)
    plan = replanned(now)
    const note = plan.ways?.find((way) => way.note !== undefined)?.note
    if (again && note !== undefined) {
      const read = fireToCome(note, now)
      if (!read?.ok) throw new Error(note)
      noted(now, {what: 'note', text: note, again: read.fire})
      plan = replanned(now)
      if (plan.fires![1 + further.length]!.lit <= now) continue
    }
    for (const load of toCome().filter(({at}) => at <= now + 3))
      for (const {dish, count, zone, alreadyIn} of load.dishes) {
        if (alreadyIn) continue
        inside.push({dish, count, at: now, zone: zone ?? 'across'})
        loads.push(loadEvent(dishOf(dish), count, now - lit))
        noted(now, {what: 'set in', dish: slugOf(dishOf(dish).file), count})
        open(now)
      }
    plan = replanned(now)
    now++
  }
  return {baked, broken, log: log(), fires: further.map((fire) => fire.lit)}
}
