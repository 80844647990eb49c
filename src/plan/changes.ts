import {bakingAt} from '../oven/forecast.js'
import type {FiringLog} from '../oven/log.js'
import type {Dish} from '../scale/types.js'
import {partsByDish, take} from './followed.js'
import {english, phrase, type Speaker, speak} from './phrases.js'
import {lossesOf} from './told.js'
import type {Change, Phrase, PhraseValue, Plan, PlanProblem} from './types.js'
import type {Relit, Untimely} from './untimely.js'
import {wantingByDish} from './wanting.js'

/** What is told to have changed since a plan was made. */

/** Minutes by which a draw may move otherwise than its set-in without a word. */
const TOLD_MINUTES = 15

/** Minutes that a door has to stand open to be told as a reason: what is set in has it open for less. Common practice, no source. */
const DOOR_TOLD = 10

/** A change in words, and as data. Without a speaker that knows the dishes' titles their ids are said. */
export function changed(
  dish: string | null,
  what: Phrase,
  why: Phrase,
  {minutes = 0, speaker = english((id) => id)}: {readonly minutes?: number; readonly speaker?: Speaker} = {},
): Change {
  return {dish, what: speak(what, speaker), why: speak(why, speaker), minutes, words: {what, why}}
}

const minutesOf = (value: number): PhraseValue => ({unit: 'minutes', value: Math.abs(value)})

/** What makes the difference between two plans. */
interface Cause {
  /** The baking heat, °C, that the oven would have by the plan before, after what was really done; null where that is no reason. */
  readonly expected: number | null
  /** What went in most off its time. */
  readonly untimely: Untimely | null
  /** The later fire that the log does not have lit as planned. */
  readonly relit?: Relit | null
  /** Minutes for which the log says that the door stood open, besides the openings of a plan. */
  readonly doorOpen?: number
  /** The day asks for something else than then. */
  readonly otherwise?: boolean
}

/** That a later fire was lit off its hour, or was no plan's. */
function relitReason(relit: Relit): Phrase {
  if ('at' in relit) return phrase('why lit again', {at: {unit: 'clock', value: relit.at}})
  return phrase(relit.off > 0 ? 'why lit again later' : 'why lit again earlier', {minutes: minutesOf(relit.off)})
}

/** That something went in off its time, by which plan where that is not the morning's. */
function untimelyReason({dishes, minutes, made, fromLighting}: Untimely): Phrase {
  const values = {dishes: {unit: 'dishes', dishes, whole: true}, minutes: minutesOf(minutes)} as const
  const side = minutes > 0 ? 'later' : 'earlier'
  const since = fromLighting ? ' after lighting' : ''
  if (made === undefined) return phrase(`why set in ${side}${since}`, values)
  return phrase(`why set in ${side}${since} than replanned`, {...values, at: {unit: 'clock', value: made}})
}

/** Why a plan is otherwise than the one before, in one phrase. */
function becauseOf(
  before: Plan,
  after: Plan,
  now: number,
  {expected, untimely, relit = null, doorOpen = 0, otherwise}: Cause,
): Phrase {
  const late = after.lit - before.lit
  // Held against the oven after what was really done: neither a late fire nor bread that went in late makes an oven hotter than it should be.
  const off = expected === null ? 0 : bakingAt(after.forecast, now - after.lit) - expected
  const heat = {difference: {unit: 'difference', value: Math.abs(off)}, at: {unit: 'clock', value: now}} as const
  const reasons: Phrase[] = []
  if (late !== 0) reasons.push(phrase(late > 0 ? 'why lit later' : 'why lit earlier', {minutes: minutesOf(late)}))
  if (relit) reasons.push(relitReason(relit))
  if (untimely) reasons.push(untimelyReason(untimely))
  if (doorOpen >= DOOR_TOLD) reasons.push(phrase('why door', {minutes: minutesOf(doorOpen)}))
  const alone = reasons.length === 0
  if (Math.abs(off) >= 3 && alone) reasons.push(phrase(off > 0 ? 'why hotter' : 'why cooler', heat))
  if (Math.abs(off) >= 3 && !alone) reasons.push(phrase(off > 0 ? 'why hotter too' : 'why cooler too', heat))
  if (otherwise) {
    if (alone && reasons.length === 0) reasons.push(phrase(expected === null ? 'why log' : 'why readings'))
    reasons.push(phrase('why day'))
  }
  const [first = phrase(expected === null ? 'why log' : 'why readings'), ...more] = reasons
  return more.length === 0 ? first : phrase('why both', {reasons: {unit: 'phrases', phrases: reasons}})
}

/**
 * What moved between two plans, and why.
 *
 * @param now minutes after midnight
 * @param dishes those of the day, by their ids
 * @returns what is lost first, then what may come out underdone, and then what moves
 */
export function changesOf(before: Plan, after: Plan, now: number, dishes: ReadonlyMap<string, Dish>, cause: Cause): Change[] {
  const out: Change[] = []
  // Parts of a dish that change alike are told once.
  const put = (one: Change): void => {
    if (!out.some((o) => o.dish === one.dish && o.what === one.what && o.why === one.why)) out.push(one)
  }
  const speaker = english((id) => dishes.get(id)?.title ?? id)
  for (const {dish, words, reason} of after.unplaced)
    if (!before.unplaced.some((b) => b.dish === dish)) {
      if (words) put({...changed(dish, phrase('left out'), words, {speaker}), why: reason})
      else out.push({dish, what: 'left out', why: reason, minutes: 0})
    }
  const because = becauseOf(before, after, now, cause)
  for (const [dish, all] of wantingByDish(after.loads, dishes))
    for (const what of all.values()) put(changed(dish, what, because, {speaker}))
  for (const {dish, what, minutes} of movesOf(before, after)) put(changed(dish, what, because, {minutes, speaker}))
  const {moved, all} = elsewhere(before, after)
  if (moved > 0) put(changed(null, phrase('moved vessels', {count: moved, all}), because, {speaker}))
  return out
}

/** What is set in or drawn at another time than in the plan before, by how many minutes later, or in another part of the floor. */
function movesOf(before: Plan, after: Plan): {readonly dish: string; readonly what: Phrase; readonly minutes: number}[] {
  const word = (of: string): PhraseValue => ({unit: 'word', word: of})
  const was = partsByDish(before.loads)
  return after.loads.flatMap(({at, dishes}) =>
    dishes.flatMap(({dish, count, draw, zone, alreadyIn}) => {
      const old = take(was.get(dish) ?? [], count, at)
      if (!old) return []
      const moved = at - old.at
      const drawn = draw.likely - old.draw
      const setIn =
        alreadyIn !== true && moved !== 0
          ? [{dish, what: phrase(moved > 0 ? 'moved later' : 'moved earlier', {minutes: minutesOf(moved)}), minutes: moved}]
          : []
      // The map on the wall has it elsewhere.
      const {zone: oldZone} = old.entry
      const place =
        alreadyIn !== true && oldZone !== undefined && zone !== undefined && zone !== oldZone
          ? [{dish, what: phrase('moved place', {zone: word(zone), old: word(oldZone)}), minutes: moved}]
          : []
      // A draw that moves with its set-in goes without saying.
      const out =
        drawn !== 0 && (alreadyIn === true || moved === 0 || Math.abs(drawn - moved) > TOLD_MINUTES)
          ? [{dish, what: phrase(drawn > 0 ? 'draw later' : 'draw earlier', {minutes: minutesOf(drawn)}), minutes: drawn}]
          : []
      return [...setIn, ...place, ...out]
    }),
  )
}

/** Metres by which a vessel may stand beside where it stood and be seen to stand there. */
const BESIDE = 0.01

/** How many vessels of what is still to be set in stand in none of their dish's places of the plan before, and of how many that had one. */
function elsewhere(before: Plan, after: Plan): {readonly moved: number; readonly all: number} {
  const free = before.loads.flatMap(({placed}) => placed)
  let moved = 0
  let all = 0
  for (const {dishes, placed} of after.loads)
    for (const {dish, alreadyIn} of dishes.filter((one, i) => dishes.findIndex((d) => d.dish === one.dish) === i)) {
      if (alreadyIn || free.every((p) => p.dish !== dish)) continue
      for (const vessel of placed.filter((p) => p.dish === dish)) {
        all++
        const same = free.findIndex(
          (p) => p.dish === dish && Math.hypot(p.x - vessel.x, p.y - vessel.y) <= BESIDE && p.turn === vessel.turn,
        )
        if (same < 0) moved++
        else free.splice(same, 1)
      }
    }
  return {moved, all}
}

/** What the log says was drawn and set in again: from when on its heat counts, since what was outside has cooled. */
export function putBackOf({done}: PlanProblem, dishes: ReadonlyMap<string, Dish>): Change[] {
  return (done?.set ?? []).flatMap(({dish: id, count, at, drawn, back, inVain}) => {
    const dish = dishes.get(id)
    if (!dish || !back || (drawn !== null && !inVain)) return []
    const clock = (value: number): PhraseValue => ({unit: 'clock', value})
    const times = {out: clock(back.out), again: clock(back.again), since: clock(at)}
    if (inVain) return [changed(id, phrase('put back in vain', {out: times.out, again: times.again}), phrase('why log'))]
    const numbers = {count: {unit: 'count', value: count}, all: {unit: 'count', value: dish.count}} as const
    const what = count < dish.count ? phrase('put back some', {...numbers, ...times}) : phrase('put back', times)
    return [changed(id, what, phrase('why log'))]
  })
}

/** What was looked at and not done, and when it is reckoned to be: each time it was looked at once. */
export function lookedAtOf({done}: PlanProblem, dishes: ReadonlyMap<string, Dish>): Change[] {
  const told = new Set<string>()
  return (done?.set ?? []).flatMap(({dish: id, drawn, longer}) => {
    const key = `${id} ${longer?.looked}`
    if (!longer || drawn !== null || !dishes.has(id) || told.has(key)) return []
    told.add(key)
    const clock = (value: number): PhraseValue => ({unit: 'clock', value})
    return [changed(id, phrase('looked at', {at: clock(longer.looked), until: clock(longer.until)}), phrase('why log'))]
  })
}

/** What the log says was dropped, burnt or else lost: told among the changes, since nothing takes its place but what was made again. */
export function lostOf(plan: Plan, log: FiringLog, dishes: ReadonlyMap<string, Dish>): Change[] {
  return lossesOf(plan, log, dishes).map(({dish, lost, all, again, againAt}) => {
    const count = (value: number): PhraseValue => ({unit: 'count', value})
    const numbers = {count: count(lost), all: count(all)}
    const what =
      again === 0 || againAt === null
        ? phrase('lost', numbers)
        : phrase(again < lost ? 'lost, some made again' : 'lost, made again', {
            ...numbers,
            again: count(again),
            at: {unit: 'clock', value: againAt},
          })
    return changed(dish.id, what, phrase('why log'))
  })
}
