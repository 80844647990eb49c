import {type Parsed, readClock} from '../measure/quantity.js'

/** Times of day as a note tells them: the half of the day, or the day, that it leaves open is for the fire and the clock to say. */

/** "2:15 pm" of minutes after midnight, with "next day" before it where it is. */
export function clockText(minutes: number): string {
  const days = Math.floor(minutes / 1440)
  const m = Math.round(minutes - days * 1440)
  const hour = Math.floor(m / 60)
  const text = `${hour % 12 === 0 ? 12 : hour % 12}:${String(m % 60).padStart(2, '0')} ${hour < 12 ? 'am' : 'pm'}`
  if (days > 1) return `${days} days later ${text}`
  return days > 0 ? `next day ${text}` : days < 0 ? `evening before ${text}` : text
}

/** What is known when a time is told, minutes after midnight of the log's date. */
export interface ClockContext {
  /** When the fire was lit; null where the log does not tell. */
  readonly lit: number | null
  /** The latest row of the log; null where it has none. */
  readonly last: number | null
  /** The present; null where no clock is asked. */
  readonly now: number | null
}

/** A time that was told: when it is, and as it stands in the log, where it has to read the same again. */
export interface ToldTime {
  readonly at: number
  readonly time: string
}

/** Minutes by which a clock may be ahead of another. */
const AHEAD = 1
/** Days after the log's date that a note may be of. */
const DAYS = 9

/** Minutes by which a row may stand below a later one and be of the same day. */
const BACKWARDS = 240
/** Minutes from the last row to one that is rather the next night's than from before the fire, where no clock says. */
const HALF_DAY = 720

/**
 * When a note's time is. "2:10" is the one of its two hours that fits: not before the fire was lit, not after the clock, and the nearest to
 * that. "12:20 am" behind rows of the evening is the next day's, once that has come.
 *
 * @param text as `parseClock` reads it
 * @param of what was done then: a fire is lit on the log's own day, and raked out the first time that fits
 * @returns the time; or that it stays open, and what to write instead
 */
export function toldTime(text: string, context: ClockContext, of: 'lit' | 'raked' | 'row' = 'row'): Parsed<ToldTime> {
  const read = readClock(text)
  if (!read.ok) return read
  const {minutes, bare, dated} = read.value
  const {now, last} = context
  const lit = of === 'lit' ? null : context.lit
  const own = Math.floor(minutes / 1440)
  const until = dated || now === null || of === 'lit' ? own : Math.min(DAYS, Math.max(own, Math.floor(now / 1440)))
  const clock = minutes - own * 1440
  const hours = bare ? [clock % 720, (clock % 720) + 720] : [clock]
  const all = Array.from({length: until - own + 1}, (_, i) => hours.map((hour) => (own + i) * 1440 + hour)).flat()
  const come = all.filter((at) => now === null || at <= now + AHEAD)
  const fit = come.filter((at) => lit === null || at >= lit)
  const open = bare && fit.length > 1 && (now === null || of === 'lit')
  const behind = bare ? undefined : fit.find((at) => last === null || at >= last - BACKWARDS)
  const found = open ? undefined : of === 'raked' ? fit[0] : (behind ?? fit.at(-1))
  if (found !== undefined) return {ok: true, value: {at: found, time: writtenAs(text, found, {bare, dated})}}
  if (open || (bare && come.length > 0)) {
    const both = hours.map((hour) => `“${clockText(own * 1440 + hour)}”`)
    if (open) return {ok: false, reason: `“${text}” may be morning or afternoon`, suggest: `write ${both.join(' or ')}`}
    return {
      ok: false,
      reason: `“${text}” is before the fire was lit${come.length < all.length ? ', or has not come yet' : ''}`,
      suggest: `write ${both.slice(0, now === null ? 2 : 1).join(' or ')} if that is meant`,
    }
  }
  // Doughs are mixed before the fire is lit; what has not come yet is refused as it is written.
  const night = !dated && now === null && lit !== null && minutes < lit && last !== null && minutes + 1440 <= last + HALF_DAY
  const at = night ? minutes + 1440 : minutes
  return {ok: true, value: {at, time: writtenAs(text, at, {bare: false, dated})}}
}

/** A time with all that its words leave open. */
const writtenAs = (text: string, at: number, {bare, dated}: {readonly bare: boolean; readonly dated: boolean}): string =>
  bare || (!dated && (at < 0 || at >= 1440)) ? clockText(at) : text
