import type {FiringLog} from '../oven/log.js'
import type {Firing} from '../oven/types.js'
import {stayedOut} from './later-fires.js'
import {ABOUT_THEN, onFires, presumedBy, type SecondHour, type ToldTime} from './presumed.js'
import {rules} from './rules.js'
import type {Told} from './told.js'
import type {Fired, Plan} from './types.js'

/** The second fire of a plan on a day that has begun. */
export interface SecondFire extends SecondHour {
  /** It was to be lit by now, and was not by what the floor has. */
  readonly unlit: boolean
}

/** A day that has begun, as far as its log tells of it. Times in minutes after midnight. */
interface Begun {
  readonly now: number
  readonly log: FiringLog
  /** The first fire as it was. */
  readonly firing: Firing
  /** The plan that was followed, with what is decided of a fire to come; and without. */
  readonly plan: Plan
  readonly before: Plan
  /** The parts of that plan, and what the log tells of them. */
  readonly parts: readonly Told[]
  readonly told: readonly ToldTime[]
}

/**
 * When a second fire was lit, or will be: as the log tells; else at its hour, or as soon after as what was set in before it is out. What was
 * planned without it, and is not in yet, makes way for it.
 */
export function secondFire(oven: Fired, {now, log, firing, plan, before, parts, told}: Begun): SecondFire {
  const late = log.lit! - plan.lit
  const fire = plan.fires?.[1]
  const hour = fire?.lit ?? Number.POSITIVE_INFINITY
  // A fire that was decided upon has the hour that it was given, whatever the plan was late till then.
  const decided = before.fires?.[1]?.lit !== fire?.lit
  const planned = decided ? hour - late : hour
  // Asked only of what comes before that fire, which its hour does not put off.
  const first = {planned, at: planned}
  const ready = log.lit! + firing.burn + firing.soak
  const presumed = presumedBy(told, late, first, onFires(parts, first, [ready, Number.NEGATIVE_INFINITY]))
  const outs = parts.flatMap(({at: plannedIn, draw, saidIn, saidOut, lostAt}) => {
    if (plannedIn >= planned && (saidIn ?? hour) >= hour) return []
    if (decided && saidIn === undefined && presumed(plannedIn) > now - rules.tick) return []
    // How long a fire that was decided upon waits for what is known to be in the heat says, not how long that was to stay (`waitFor`).
    if (decided && saidIn !== undefined && (saidOut ?? lostAt) === undefined) return []
    const thought = draw < planned ? presumed(draw) : Number.NEGATIVE_INFINITY
    return lostAt ?? saidOut ?? Math.max(thought, (saidIn ?? Number.NEGATIVE_INFINITY) + draw - plannedIn)
  })
  // What was to go in on its heat, and did about then, tells that it was lit long enough before.
  const lasts = fire ? fire.ready - hour : 0
  const atLatest = Math.min(
    ...told.flatMap((one) =>
      one.setIn && one.planned >= planned && one.at - lasts >= hour - ABOUT_THEN ? [one.at - lasts] : [],
    ),
  )
  const onTick = (at: number): number => Math.ceil(at / rules.tick) * rules.tick
  const byPlan = Math.min(atLatest, Math.max(hour, ...outs.map(onTick)))
  // What went in on its heat was set in on some; and at night, or where nothing waits for it, nobody lights one.
  const wanted = parts.some(({at, saidIn, lostAt}) => at >= planned && saidIn === undefined && lostAt === undefined)
  const mayBe = !log.further && byPlan <= now && now < rules.nightFrom && wanted && !Number.isFinite(atLatest)
  const unlit = mayBe && stayedOut(oven, log, firing, {...fire!, lit: byPlan})
  return {planned, at: log.further?.[0]?.lit ?? (unlit ? onTick(now) : byPlan), unlit}
}

/** Whether a second fire is taken to have been lit by now, though the log tells of none. */
export function isThoughtLit({at}: SecondHour, {further}: FiringLog, now: number): boolean {
  return further === undefined && at < now
}
