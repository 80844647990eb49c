import {writeClock} from '../measure/quantity.js'
import type {FireToCome} from '../oven/fire-again.js'
import {forecast, likelyOnly, PRIOR, usualFiring} from '../oven/forecast.js'
import type {FiringLog, FurtherFire, LogRow} from '../oven/log.js'
import type {Firing, OvenEvent, OvenSpec} from '../oven/types.js'
import type {Message} from '../receipt/types.js'
import type {Dish} from '../scale/types.js'
import {ACROSS, type Curve, doseNeeded, doseTable} from './curve.js'
import {BURNS} from './emptied.js'
import {firesOf} from './events.js'
import {rules} from './rules.js'
import {inTurn, placeIn} from './told.js'
import type {Fired, FiringOption, Plan, PlanProblem} from './types.js'

/** A second fire of a day that has begun: what has become of it. */

/**
 * The fires lit again later in the day, from the first one's lighting: as the log tells of them, the rest as planned.
 *
 * @param second When the first of them is lit, minutes after midnight.
 */
export function furtherFires(log: FiringLog, plan: Plan, second: number): NonNullable<FiringOption['further']> {
  const {firing: first} = plan
  const [short] = rules.fireAgain.burns
  const meant = (plan.fires ?? []).slice(1)
  const told = log.further ?? []
  return Array.from({length: Math.max(meant.length, told.length)}, (_, i) => {
    const [fire, was] = [told[i], meant[i]]
    const firing = was?.firing ?? {...first, burn: short, wood: (first.wood * short) / first.burn}
    const burn = fire ? burnOf(log, fire, firing) : firing.burn
    // Where no plan has it, it was fed for as long as it burned.
    const wood = fire?.wood ?? (was ? woodIn(burn, firing) : (firing.wood * burn) / firing.burn)
    const at = fire?.lit ?? (i === 0 ? second : was!.lit)
    return {minutes: at - log.lit!, firing: {...firing, burn, wood, soak: soakOf(log, at + burn, firing)}}
  })
}

/** Minutes that a fire burned by the log: what was set in before it would have been raked out tells that it was by then. */
function burnOf({rows}: FiringLog, {lit, raked}: FurtherFire, {burn}: Firing): number {
  if (raked !== null) return Math.max(1, raked - lit)
  return Math.min(burn, ...rows.flatMap(({what, at}) => (what === 'set in' && at >= lit + BURNS ? [at - lit] : [])))
}

/** Minutes that the oven soaks after a fire that is raked out at a time: what the log has set in sooner was not kept waiting for all of it. */
function soakOf({rows}: FiringLog, raked: number, {soak}: Firing): number {
  return Math.min(soak, ...rows.flatMap(({what, at}) => (what === 'set in' && at >= raked ? [at - raked] : [])))
}

/** A fire that was decided upon, and why none is planned for it, if so: it would burn with the first, or be a third. */
interface Decided {
  readonly row: LogRow
  readonly fire: FireToCome
  readonly not: 'with the first' | 'third' | null
}

/** What was last decided of a fire to come; null where nothing was. */
function decidedOn(log: FiringLog, plan: Plan): Decided | null {
  const row = log.rows
    .filter(({again}) => again)
    .sort(inTurn)
    .at(-1)
  if (!row) return null
  const fire = row.again!
  const raked = log.raked ?? log.lit! + plan.firing.burn
  // One lit at the minute at which it was noted is the one that was to be.
  const third = (log.further ?? []).some((one) => one.lit < row.at)
  const first = fire.lit !== null && fire.lit < raked
  return {row, fire, not: first ? 'with the first' : third && fire.lit !== null ? 'third' : null}
}

/**
 * A plan with the fire that was last decided upon in place of the one that was to come next, or without any to come.
 *
 * @param made The row at which the plan was made: what was decided by then it has, as it came to be.
 */
export function withFireToCome(oven: OvenSpec, plan: Plan, log: FiringLog, made: LogRow | null): Plan {
  const decided = decidedOn(log, plan)
  if (!decided || decided.not || (made && inTurn(decided.row, made) <= 0)) return plan
  const {lit, burn} = decided.fire
  const [first, ...meant] = plan.fires ?? [plan]
  const before = meant.slice(0, log.further?.length ?? 0)
  if (lit === null) return {...plan, fires: [first!, ...before]}
  const firing = usualFiring(oven, burn ?? rules.fireAgain.burns[0])
  const raked = lit + firing.burn
  return {...plan, fires: [first!, {lit, raked, ready: raked + firing.soak, firing}]}
}

/** A fire that was decided upon and is not planned for, or not for its hour. */
export function fireDecided(log: FiringLog, plan: Plan): Message[] {
  const decided = decidedOn(log, plan)
  const at = decided?.fire.lit ?? null
  if (!decided || at === null) return []
  const {row, not} = decided
  const hour = writeClock(at)
  const place = {...placeIn(log, row.line), rule: 'fire-decided'}
  if (not === 'with the first')
    return [
      {
        ...place,
        severity: 'warning',
        times: [at],
        reason: `the fire noted for ${hour} would burn with the first, so it is not planned for`,
        suggest: 'note one for when the first is raked out, or later',
      },
    ]
  if (not === 'third')
    return [
      {
        ...place,
        severity: 'warning',
        times: [at],
        reason: `a third fire is not planned for ahead, so the one noted for ${hour} is left out`,
        suggest: 'note “lit again” when it is lit: the rest of the day is planned with it then',
      },
    ]
  const planned = plan.fires?.[1]?.lit
  if (log.further || planned === undefined || planned - at < MOVED) return []
  return [
    {
      ...place,
      severity: 'info',
      times: [at, planned],
      reason: `the fire noted for ${hour} waits until ${writeClock(planned)}, for what is in the oven`,
      suggest: 'note another hour, or “no fire again”, if that is too late',
    },
  ]
}

/** Minutes by which a fire has to wait to be told. */
const MOVED = 10

/** Wood that a planned fire burned, kg, where it was raked out after so many minutes: what was to be fed later was not. */
export function woodIn(burn: number, {wood, burn: meant}: Firing): number {
  return wood * Math.min(1, burn / meant)
}

/** Minutes that a second fire waits at most for what is in the oven; what is not done by then is drawn as it is. Common practice, no source. */
const WAITS = 90

/** Minutes by which a later fire waits until all is done that is in the oven and can be on the heat there is. */
export function waitFor(
  fire: number,
  inside: NonNullable<PlanProblem['done']>['set'],
  dishes: ReadonlyMap<string, Dish>,
  lit: number,
  curve: Curve,
): number {
  const waits = inside.map(({dish: id, at}) => {
    const dish = dishes.get(id)
    if (!dish) return 0
    const table = doseTable(curve, ACROSS, dish.need.done)
    const from = Math.max(0, Math.round(at - lit))
    const goal = table[Math.min(from, table.length - 1)]! + doseNeeded(dish.need)
    const last = Math.min(table.length - 1, fire + WAITS)
    if (table[last]! < goal) return 0
    let done = from
    while (table[done]! < goal) done++
    return done - fire
  })
  return Math.ceil(Math.max(0, ...waits) / rules.tick) * rules.tick
}

/** Share of the way from what the floor has without a later fire to what it has with it, below which the fire was not lit. */
const WITHOUT = 0.25

/**
 * True where the last reading of the floor after a later fire that the log does not tell of is what it has without that fire, or little more:
 * a cool oven that was fired has half the way and more.
 */
export function stayedOut(
  {oven, parameters}: Fired,
  {lit, readings}: FiringLog,
  firing: Firing,
  fire: NonNullable<Plan['fires']>[number],
): boolean {
  const minutes = fire.lit - lit!
  const last = readings.findLast(
    (r) => r.kind === 'floor' && typeof r.value === 'number' && r.minutes > minutes + fire.firing.burn + fire.firing.soak / 2,
  )
  if (!last) return false
  const hours = last.minutes / 60 + 1
  const floorWith = (events: readonly OvenEvent[]): number => {
    const {floor, step} = forecast(oven, {firing, parameters: likelyOnly(parameters ?? PRIOR), events, hours})
    return floor.likely[Math.round(last.minutes / step)]!
  }
  const without = floorWith([])
  return Number(last.value) - without < WITHOUT * (floorWith(firesOf({further: [{minutes, firing: fire.firing}]})) - without)
}

/** A later fire that is taken to have been lit as planned, where the log does not tell. */
export function fireUnlogged({done, firings}: PlanProblem, log: FiringLog, unlit: boolean): Message[] {
  const {now, lit} = done!
  if (lit === null) return []
  if (unlit)
    return [
      {
        ...placeIn(log),
        severity: 'warning',
        rule: 'fire-unlogged',
        reason: 'the floor is as cool as if the fire had not been lit again, and the log does not tell; it is to be lit now',
        suggest: 'note when it is lit, or was: “lit again” behind the time',
      },
    ]
  const further = (firings[0]?.further ?? []).slice(log.further?.length ?? 0)
  return further.flatMap(({minutes}): Message[] => {
    const at = lit + minutes
    if (at > now) return []
    return [
      {
        ...placeIn(log),
        severity: 'info',
        rule: 'fire-unlogged',
        times: [at],
        reason: `the fire is taken to have been lit again at ${writeClock(at)}, as planned; the log does not tell`,
        suggest: `note when it was, such as “${writeClock(at)} lit again”, and when it was raked, “raked again”`,
      },
    ]
  })
}

/**
 * A log in which the first fire is lit again before it can have been raked out, and no raking is told: it had gone out, and is the same fire.
 *
 * @returns The log without that, and when it was; null where there is none.
 */
export function oneFire(log: FiringLog, plan: Plan): {readonly log: FiringLog; readonly relit: number | null} {
  const [first, ...more] = log.further ?? []
  if (!first || log.lit === null || log.raked !== null || first.lit >= log.lit + plan.firing.burn) return {log, relit: null}
  const {further: _, ...rest} = log
  // Where the raking was told of that fire, it is the first one's.
  const raked = first.raked === null ? rest : {...rest, raked: first.raked, wood: log.wood ?? first.wood}
  return {log: more.length > 0 ? {...raked, further: more} : raked, relit: first.lit}
}

/** A fire lit again that is taken to be the first one still. */
export function stillFirst(log: FiringLog, relit: number): Message {
  return {
    ...placeIn(log, log.rows.find(({what, at}) => what === 'note' && at === relit)?.line),
    severity: 'warning',
    rule: 'log-order',
    times: [relit],
    reason: `lit again at ${writeClock(relit)} while the first fire was to burn, and no raking is told: taken to be the same fire`,
    suggest: 'note when the first was raked out, such as “raked 7:20 am”, if it was another',
  }
}
