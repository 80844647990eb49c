import {doughWords} from '../lexicon/dough-work.js'
import {type FiringLog, stemOf} from '../oven/log.js'
import {saysCooked, saysRaw} from '../oven/log-outcome.js'
import {isPlain, type LogEntry} from '../oven/note.js'
import {slug, slugOf} from '../scale/slug.js'
import type {Dish} from '../scale/types.js'
import {withoutBatch} from './batches.js'
import type {ToldDoughs} from './dough.js'
import {workOf} from './dough-times.js'
import {rules} from './rules.js'
import {isOf, type Told} from './told.js'
import type {DoneSoFar, Plan, Step} from './types.js'

/** What the log tells of the doughs of a day. */

/** What the log tells of a dough: that it was worked, or looked at and left to rise. */
type DoughDeed = 'mixed' | 'shaped' | 'not risen'

/** How a note begins that tells of it, and which step of a plan that is. */
const DOUGH_DEEDS: Readonly<Record<DoughDeed, {readonly note: RegExp; readonly step: readonly Step['action'][]}>> = {
  mixed: {note: /^(?:mixed|kneaded) (.+)$/i, step: ['mix', 'evening before']},
  shaped: {note: /^(?:shaped|moulded) (.+)$/i, step: ['shape']},
  'not risen': {note: /^([^:;.]+) (?:has |have |is |are )?not (?:yet )?(?:risen|proved)\b/i, step: ['load']},
}

const tellsOfDough = (words: string): boolean => Object.values(DOUGH_DEEDS).some(({note}) => note.test(words.trim()))

/** Whether a note tells that something was raw, or was cooked through since, with its name before that. */
const tellsOfRaw = (words: string): boolean =>
  saysRaw({text: words, note: ''}) ||
  words.split(' ').some((_, i, all) => i > 0 && saysCooked({text: all.slice(i).join(' '), note: ''}))

/** Whether all that was noted is kept as the words it is, and the plan takes nothing from it. */
export const inWordsOnly = (entries: readonly LogEntry[]): boolean =>
  entries.every((entry) => isPlain(entry) && !(entry.what === 'row' && (tellsOfDough(entry.value) || tellsOfRaw(entry.value))))

/** Minutes between a note that names no dish and the step of the plan that it can be of. */
const NEAR = 120

/**
 * When the log says that a dish's doughs were mixed or shaped, or had not risen, minutes after midnight: in rows of the dish, or in notes such
 * as "mixed bread and rolls". A note such as "shaped the loaves", which names no dish of the day, is of the dough that the plan has nearest to that time.
 *
 * @param plan the morning's, which has all of the day's doughs
 * @param dishes those of the day
 */
function doughDeedsOf(log: FiringLog, deed: DoughDeed, dish: Dish, plan: Plan, dishes: readonly Dish[]): number[] {
  const shift = (log.lit ?? plan.lit) - plan.lit
  const {note, step} = DOUGH_DEEDS[deed]
  const namesIn = (text: string): string[] => {
    const [, names] = note.exec(text.trim()) ?? []
    return names === undefined
      ? []
      : names
          .toLowerCase()
          .split(/,| and /)
          .map((name) =>
            stemOf(
              name
                .trim()
                .replace(/^(?:the|both) /, '')
                .replace(/ (?:has|have|is|are)$/, ''),
            ),
          )
  }
  const isNamed = (one: Dish, name: string): boolean =>
    name === one.id || name === slugOf(one.file) || name === slug(withoutBatch(one.title))
  const planned = plan.steps.flatMap(({action, at, dishes: ids}) =>
    step.includes(action)
      ? ids.filter((id) => dishes.some((d) => d.id === id && d.dough !== null)).map((id) => ({id, at: at + shift}))
      : [],
  )
  /** Whose dough a note without a name is of. */
  const nearest = (at: number, name: string): string | undefined => {
    const near = planned.filter((one) => Math.abs(one.at - at) <= NEAR)
    const titled = near.filter(({id}) => slug(dishes.find((d) => d.id === id)!.title).includes(name.replace(/s$/, '')))
    const of = titled.length > 0 ? titled : near
    return of.reduce<(typeof of)[number] | undefined>(
      (best, one) => (!best || Math.abs(one.at - at) < Math.abs(best.at - at) ? one : best),
      undefined,
    )?.id
  }
  return log.rows.flatMap((row) => {
    if (row.what === deed) return isOf(row, dish) ? [row.at] : []
    if (row.what !== 'note') return []
    const names = namesIn(row.text)
    const own = names.some((name) => isNamed(dish, name))
    const unnamed = names.find((name) => doughWords.has(name) && !dishes.some((d) => isNamed(d, name)))
    return own || (unnamed !== undefined && nearest(row.at, unnamed) === dish.id) ? [row.at] : []
  })
}

/** The doughs of a day, as its log tells of them and as they were planned. */
export interface DoughLog {
  readonly log: FiringLog
  /** The morning's plan, which has all of the day's doughs. */
  readonly morning: Plan
  /** The day's. */
  readonly dishes: readonly Dish[]
}

/**
 * From when on at the soonest, minutes after midnight, a part can have been set in of which the log does not tell that it was: a dough that was
 * worked late by half of the time that it then wants, and what had not risen when it was looked at, or was noted as not in the oven yet, only when
 * that is noted.
 *
 * @param parts all of the plan
 */
export function fitFrom({entry: {dish: id}, at, saidIn}: Told, parts: readonly Told[], {log, morning, dishes}: DoughLog): number {
  const dish = dishes.find((one) => one.id === id)
  if (!dish || saidIn !== undefined) return Number.NEGATIVE_INFINITY
  const its = parts.filter(({entry, again}) => entry.dish === id && !again)
  const times = [...new Set(its.map((part) => part.at))].sort((a, b) => a - b)
  const waits = log.rows.flatMap((row) => (row.what === 'not in' && isOf(row, dish) ? [row.at] : []))
  const deeds = (deed: DoughDeed): number[] => (dish.dough ? doughDeedsOf(log, deed, dish, morning, dishes) : [])
  const lastIn = Math.max(...its.map((part) => part.saidIn ?? Number.NEGATIVE_INFINITY))
  const [next] = times.filter((time) => its.some((part) => part.at === time && part.saidIn === undefined))
  if (at === next && [...waits, ...deeds('not risen')].some((seen) => seen > lastIn)) return Number.POSITIVE_INFINITY
  if (!dish.dough) return Number.NEGATIVE_INFINITY
  const {rise, prove} = dish.dough
  const [mixed, shaped] = (['mixed', 'shaped'] as const).map((deed) => deeds(deed)[times.indexOf(at)])
  const proves = prove?.likely ?? 0
  if (shaped !== undefined) return shaped + rules.leastRise * proves
  return mixed === undefined ? Number.NEGATIVE_INFINITY : mixed + rules.leastRise * (rise + proves)
}

/** What the log tells of the doughs of what has not been set in yet. */
export function toldDoughs(set: DoneSoFar['set'], {log, morning, dishes}: DoughLog): ToldDoughs {
  const byId = new Map(dishes.map((d) => [d.id, d]))
  /** When they were worked, minutes after midnight. */
  const deeds = (deed: DoughDeed, id: string): number[] => {
    const baked = new Set(set.flatMap((s) => (s.dish === id ? [s.at] : []))).size
    const dish = byId.get(id)
    if (!dish?.dough) return []
    const told = doughDeedsOf(log, deed, dish, morning, dishes)
    // A dough may be looked at more than once.
    return deed === 'not risen' ? told : told.slice(baked)
  }
  return {
    mixed: (id) => deeds('mixed', id),
    // What is noted is that it is done: its proving begins then.
    shaped: (id, count) => deeds('shaped', id).map((at) => at - workOf(byId.get(id)!, count).shape),
    mixing: (id, count) => workOf(byId.get(id)!, count).mix,
    rising: (id, count) => {
      const dish = byId.get(id)!
      const {mix, shape} = workOf(dish, count)
      return {inBulk: mix + (dish.dough?.rise ?? 0), proving: shape + (dish.dough?.prove?.likely ?? 0)}
    },
    // What has been set in since had risen by then.
    notRisen: (id) => deeds('not risen', id).findLast((seen) => set.every((s) => s.dish !== id || s.at < seen)),
  }
}
