import {inVain} from './back-in-vain.js'
import {type Followed, partsByDish, take} from './followed.js'
import {countsFrom} from './longer.js'
import {testedSince} from './moments.js'
import {ABOUT_THEN, type OnFires, presumedBy, type SecondHour, type ToldTime} from './presumed.js'
import {rules} from './rules.js'
import {isThoughtLit} from './second-fire.js'
import type {Told} from './told.js'
import {type DoughLog, fitFrom} from './told-doughs.js'
import type {DoneSoFar, Load, Plan} from './types.js'

/** What of a plan has been done by now, and what is still to come. */
export interface SoFar {
  readonly set: DoneSoFar['set']
  /** The loads of what has been drawn. */
  readonly drawn: readonly Load[]
  readonly toCome: readonly Followed[]
  /** Those of `set` of whose place no plan tells: made again after a loss, or left out of the plan and set in all the same. */
  readonly again: ReadonlySet<DoneSoFar['set'][number]>
  /** What is not thought to have been set in at its time, since something that was to follow it went in before it can have had as much as would do. */
  readonly passedOver: readonly PassedOver[]
}

/** A part of a dish that is taken not to have been set in, and what went in instead. Times in minutes after midnight. */
export interface PassedOver {
  readonly dish: string
  /** When it was to go in. */
  readonly at: number
  /** What the log says was set in, and when. */
  readonly by: {readonly dish: string; readonly at: number}
}

/** The plan that was followed, and what the log tells of it. Times in minutes after midnight. */
interface Begun extends DoughLog {
  readonly now: number
  readonly plan: Plan
  readonly parts: readonly Told[]
  readonly told: readonly ToldTime[]
  readonly second: SecondHour
  readonly fires: OnFires
  /** °C round the oven. */
  readonly ambient: number
}

/**
 * What has been done by now: as the log tells, and what it does not tell of at the later of the times that the plan that was followed and
 * the morning's have it at: a dish is rather set in too late in our book than drawn before it is done.
 */
export function soFar(begun: Begun): SoFar {
  const {now, log, told, plan, ambient} = begun
  const byId = new Map(begun.dishes.map((dish) => [dish.id, dish]))
  const presumed = thoughtDone(begun)
  const timed = drawsOf(begun, presumed)
  const since = testedSince(log, now)
  const set: DoneSoFar['set'][number][] = []
  const drawn: Load[] = []
  const toCome: Followed[] = []
  const again = new Set<DoneSoFar['set'][number]>()
  const passedOver: PassedOver[] = []
  for (const {part, early, ready, drawnAt, followedBy} of timed) {
    const {entry, load, count, at: plannedIn, placed, saidIn, saidOut: out, lostAt, waits} = part
    // What was to be drawn before, or at the same opening, comes out first: its place may be wanted.
    const first = timed.flatMap((t) => (t.part.draw <= plannedIn && Number.isFinite(t.drawnAt) ? [t.drawnAt] : []))
    if (followedBy) {
      const {part: next, at, planned} = followedBy
      if (planned <= now) passedOver.push({dish: entry.dish, at: planned, by: {dish: next.entry.dish, at}})
      toCome.push(part)
      continue
    }
    const unsaid = waits ? Number.POSITIVE_INFINITY : Math.max(presumed.setIn(plannedIn, early?.at), ready, ...first)
    const at = lostAt ?? saidIn ?? Math.min(unsaid, out ?? Number.POSITIVE_INFINITY)
    // The heat is tested, and noted, before it is set in, and again and again while it waits for that.
    const sure = lostAt ?? saidIn ?? out
    const from = told.some((one) => one.setIn && one.planned === plannedIn) ? now : since
    if (at > now || (sure === undefined && at > from - rules.tick)) {
      toCome.push(part)
      continue
    }
    const dish = byId.get(entry.dish)
    const vain = part.back && dish && drawnAt > now ? inVain(dish, at, part.back, plan, {lit: log.lit!, ambient}) : null
    const outAt = vain ? part.back!.again : drawnAt
    const longer = part.longer && dish && outAt > now ? countsFrom(dish, at, part.longer, plan, {lit: log.lit!, ambient}) : null
    const lost = lostAt === undefined ? {} : ({lost: true} as const)
    const instead = part.gone === 'instead' ? ({instead: true} as const) : {}
    const one = {
      dish: entry.dish,
      count,
      at,
      drawn: outAt <= now ? outAt : null,
      placed,
      ...lost,
      ...instead,
      ...(part.back ? {back: part.back} : {}),
      ...(vain ? {inVain: vain} : {}),
      ...longer,
    }
    set.push(one)
    if (part.again && !part.gone && !vain) again.add(one)
    if (outAt <= now)
      drawn.push({number: load.number, at, dishes: [{...entry, count, draw: {...entry.draw, likely: outAt}}], placed})
  }
  return {set, drawn, toCome, again, passedOver}
}

/** When something is taken to have been done, by when the plan that was followed has it and when the morning's had. */
interface ThoughtDone {
  readonly drawn: (planned: number, first: number | undefined) => number
  readonly setIn: (planned: number, first: number | undefined) => number
}

function thoughtDone({log, plan, morning, told, second, fires}: Begun): ThoughtDone {
  const lit = log.lit!
  const presumed = presumedBy(told, lit - plan.lit, second, fires)
  const meantSecond = morning.fires?.[1]?.lit ?? Number.POSITIVE_INFINITY
  const sinceMorning = (planned: number): number =>
    planned < meantSecond || !Number.isFinite(second.at) ? lit - morning.lit : Math.max(0, second.at - meantSecond)
  const later = (planned: number, first: number | undefined): number =>
    Math.max(presumed(planned), first === undefined ? Number.NEGATIVE_INFINITY : first + sinceMorning(first))
  return {
    drawn: later,
    // What was to go in at an opening of which the log tells went in then, unless that was so long before that one went in alone.
    setIn: (planned, first) => {
      const soonest = presumed(planned) - ABOUT_THEN
      const same = told.flatMap((one) => (one.planned === planned && one.at >= soonest ? [one.at] : []))
      return same.length > 0 ? Math.max(...same) : later(planned, first)
    },
  }
}

/** A part of the plan that was followed, with what it was in the morning's, and when its dough was fit and it was drawn, or will be. */
interface Timed {
  readonly part: Told
  readonly early: Followed | undefined
  readonly ready: number
  readonly drawnAt: number
  /** Set in before this can have had its time, by the log, though it was to go in once this was drawn: and when this was to be set in by now. */
  readonly followedBy?: {readonly part: Told; readonly at: number; readonly planned: number}
}

function drawsOf({now, log, morning, dishes, parts, told, second}: Begun, presumed: ThoughtDone): Timed[] {
  const meant = partsByDish(morning.loads)
  const litFires =
    log.further?.map((fire) => fire.lit).filter((at) => at <= now) ?? (isThoughtLit(second, log, now) ? [second.at] : [])
  // What was to come out before something that the log does tell of, or at the opening at which that went in, came out before it as well, if
  // it had had its time. What was drawn long before its own hour tells of nothing else.
  const inTurn = told.filter(({setIn, planned, at}) => setIn || at >= planned - ABOUT_THEN)
  const beforeTold = (planned: number): number =>
    Math.min(...inTurn.flatMap((one) => (one.planned > planned || (one.setIn && one.planned === planned) ? [one.at] : [])))
  // What was to go in once something was drawn, and went in before that can have been done, tells that it was never set in: its place was free.
  const nextIn = (plannedOut: number, enough: number): {readonly part: Told; readonly at: number} | undefined => {
    const soon = parts.flatMap((part) =>
      part.saidIn !== undefined && !part.again && part.at >= plannedOut && part.saidIn < enough - rules.tick
        ? [{part, at: part.saidIn}]
        : [],
    )
    return soon.reduce<(typeof soon)[number] | undefined>((first, one) => (first && first.at <= one.at ? first : one), undefined)
  }
  return parts.map((part) => {
    const {entry, count, at: plannedIn, draw: plannedOut, saidIn, saidOut, lostAt, back} = part
    const early = part.again ? undefined : take(meant.get(entry.dish) ?? [], count, plannedIn)
    // What is known to have been set in late is not thought drawn before it has had its time, or, where something went in that was to go in
    // after it, as much of it as will do.
    const ready = fitFrom(part, parts, {log, morning, dishes})
    const thoughtIn = Math.max(presumed.setIn(plannedIn, early?.at), ready)
    // Nor is what is thought in only then.
    const by = Math.max(saidIn ?? thoughtIn, ready) - plannedIn
    const thought = Math.max(presumed.drawn(plannedOut, early?.draw), by + plannedOut)
    const enough = (saidIn ?? thoughtIn) - plannedIn + entry.draw.low
    const byThen = Math.max(beforeTold(plannedOut), enough)
    // What was left in when others of it were drawn is out when it was to be, where that was later; what was left in longer than that, or has
    // its hour from no plan, is in until the log says that it is not.
    const left = part.stays ?? Number.NEGATIVE_INFINITY
    const unsaidOut =
      thought <= left || (part.again && part.stays !== undefined)
        ? Number.POSITIVE_INFINITY
        : byThen <= left
          ? thought
          : Math.min(thought, byThen)
    // Nothing bakes on while a later fire burns.
    const emptied =
      litFires.find((at) => (saidIn === undefined ? plannedIn < second.planned : at > (back?.again ?? saidIn))) ??
      Number.POSITIVE_INFINITY
    const sure = saidIn ?? saidOut ?? lostAt
    const followedBy = sure === undefined && !part.waits ? nextIn(plannedOut, Math.min(enough, thought)) : undefined
    if (followedBy)
      return {part, early, ready, drawnAt: Number.POSITIVE_INFINITY, followedBy: {...followedBy, planned: thoughtIn}}
    return {part, early, ready, drawnAt: lostAt ?? saidOut ?? Math.min(unsaidOut, emptied)}
  })
}
