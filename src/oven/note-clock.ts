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
/** Minutes within which a bare hour is noted soon after it was, or goes on where the log ends. Common practice, no source. */
const CLOSE = 240
/** Minutes before the clock within which it is hardly anything but the present. Common practice, no source. */
const JUST_NOW = 30
/** Minutes from the log's last row in which the same day may still be going on, through its night and what dries till the next evening. */
const GOING_ON = 1440
/** Minutes from the last row to one that is rather the next night's than from before the fire, where no clock says. */
const HALF_DAY = 720

/**
 * Which of the hours that a bare one may be, in their order, where the clock is beyond the log's own day: a log may be typed up then, and may
 * be of beans that are drawn the next morning.
 *
 * @returns null where it may be of either
 */
function onLaterDay(fit: readonly number[], {lit, last}: ClockContext, now: number): number | null {
  const near = fit.at(-1)!
  const end = last ?? lit
  if (end === null || fit.length === 1) return near
  const followsOn = fit.find((at) => at >= end && at <= end + CLOSE)
  if (followsOn === near) return near
  const present = now - near <= CLOSE && near - end <= GOING_ON
  if (present && (followsOn === undefined || last === null || now - near <= JUST_NOW)) return near
  if (present) return null
  // Rows are not always typed up in their order.
  return followsOn ?? fit.find((at) => at < end && at >= end - BACKWARDS) ?? null
}

/**
 * When a note's time is. "2:10" is the one of its two hours that fits: not before the fire was lit, not after the clock, and the nearest to
 * that. On a later day than the log's it is rather the one with which the log goes on, and is asked about where both may be. "12:20 am" behind
 * rows of the evening is the next day's, once that has come.
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
  const later = of === 'row' && bare && now !== null && now >= 1440 && fit.length > 0 ? onLaterDay(fit, context, now) : undefined
  // „9:10 Uhr“ is by a clock of 24 hours, unless only the other half of the day fits.
  const asWritten = open && /uhr/i.test(text) ? fit.find((at) => at === minutes) : undefined
  if (asWritten !== undefined) return {ok: true, value: {at: asWritten, time: writtenAs(text, asWritten, {bare, dated})}}
  if (later === null) return unclearDay(text, fit, last ?? lit ?? 0)
  const found = open ? undefined : of === 'raked' ? fit[0] : (later ?? behind ?? fit.at(-1))
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

/** That a bare hour may be of the day on which the log ends, or of a later one. */
function unclearDay(text: string, fit: readonly number[], end: number): Parsed<never> {
  const next = fit.find((at) => at >= end) ?? fit[0]!
  const both = [...new Set([next, fit.at(-1)!])].map((at) => `“${clockText(at)}”`)
  return {ok: false, reason: `“${text}” may be of the log’s own day or of a later one`, suggest: `write ${both.join(' or ')}`}
}

/** A time with all that its words leave open. */
const writtenAs = (text: string, at: number, {bare, dated}: {readonly bare: boolean; readonly dated: boolean}): string =>
  bare || (!dated && (at < 0 || at >= 1440)) ? clockText(at) : text
