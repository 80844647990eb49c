import type {Range} from '../lexicon/schema.js'
import type {Style} from './style.js'
import {say, type WordKey} from './words/index.js'

/** Pound, ounce and inch in SI: exact by definition (NIST Handbook 44, App. C). */
const gramsPerOunce = 28.349523125
const kilogramsPerPound = 0.45359237
const metresPerInch = 0.0254
/** US fluid ounce, teaspoon and cup in millilitres (NIST Handbook 44, App. C: 1 gal = 231 in³). */
const millilitresPerFluidOunce = 29.5735295625

/** Joins the metric and the US form as the style asks. */
function sideBySide(style: Style, metric: string, us: string): string {
  if (style.units === 'metric') return metric
  if (style.units === 'us') return us
  return `${metric} (${us})`
}

/** A number with at most `digits` decimals and the language's decimal mark, without trailing noughts. */
export function number(value: number, digits: number, style: Style): string {
  const text = value.toFixed(digits)
  const short = digits > 0 ? text.replace(/\.?0+$/, '') : text
  return (short === '-0' ? '0' : short).replace('.', style.words['decimal.mark'])
}

/**
 * The step a range is printed in: the largest of 1, 2, 5 × 10ⁿ that is no more than a quarter of its width, so that the last digit shown
 * still means something. An exact figure is printed to three significant digits.
 */
export function printStep(range: Range): number {
  const width = range.high - range.low
  const size = Math.max(Math.abs(range.likely), Math.abs(range.high))
  const least = size === 0 ? 1 : 10 ** (Math.floor(Math.log10(size)) - 2)
  const limit = Math.max(width / 4, least)
  const power = 10 ** Math.floor(Math.log10(limit) + 1e-9)
  for (const factor of [5, 2]) if (factor * power <= limit * (1 + 1e-9)) return factor * power
  return power
}

function decimals(step: number): number {
  return Math.max(0, -Math.floor(Math.log10(step) + 1e-9))
}

/** `120 g (90–160)`; the brackets only where the range shows at this precision. */
export function ranged(range: Range, unit: string, style: Style): string {
  const step = printStep(range)
  const show = (value: number): string => number(Math.round(value / step) * step, decimals(step), style)
  const [low, likely, high] = [show(range.low), show(range.likely), show(range.high)]
  return low === high ? `${likely} ${unit}` : `${likely} ${unit} (${low}–${high})`
}

/** A range in another unit. */
function times(range: Range, factor: number): Range {
  return {low: range.low * factor, likely: range.likely * factor, high: range.high * factor}
}

/** A weight for the scales, grams in. Under half an ounce in grams alone: no kitchen scale shows a tenth of an ounce. */
export function mass(grams: Range, style: Style): string {
  const metric = grams.likely >= 1500 ? ranged(times(grams, 1e-3), 'kg', style) : ranged(grams, 'g', style)
  const ounces = times(grams, 1 / gramsPerOunce)
  if (ounces.likely < 0.5) return metric
  const us = ounces.likely >= 24 ? ranged(times(ounces, 1 / 16), 'lb', style) : ranged(ounces, 'oz', style)
  return style.units === 'both' ? `${metric} / ${us}` : sideBySide(style, metric, us)
}

/** A measure of liquid, millilitres in. */
export function volume(millilitres: Range, style: Style): string {
  const metric = millilitres.likely >= 1500 ? ranged(times(millilitres, 1e-3), 'l', style) : ranged(millilitres, 'ml', style)
  const ounces = times(millilitres, 1 / millilitresPerFluidOunce)
  const us =
    ounces.likely >= 32
      ? ranged(times(ounces, 1 / 32), 'qt', style)
      : ounces.likely >= 4
        ? ranged(times(ounces, 1 / 8), 'cup', style)
        : ounces.likely >= 0.5
          ? ranged(times(ounces, 2), 'tbsp', style)
          : ranged(times(ounces, 6), 'tsp', style)
  return style.units === 'both' ? `${metric} / ${us}` : sideBySide(style, metric, us)
}

/** A weight of wood, kg in. */
export function wood(kilograms: number, style: Style): string {
  return sideBySide(
    style,
    `${number(kilograms, kilograms < 10 ? 1 : 0, style)} kg`,
    `${number(kilograms / kilogramsPerPound, 0, style)} lb`,
  )
}

/** A length, metres in. */
export function length(metres: number, style: Style): string {
  return sideBySide(
    style,
    `${number(metres * 100, metres < 0.1 ? 1 : 0, style)} cm`,
    `${number(Math.round((metres / metresPerInch) * 4) / 4, 2, style)} in`,
  )
}

/** °C to °F, exact. */
export function fahrenheit(celsius: number): number {
  return (celsius * 9) / 5 + 32
}

const toFive = (value: number): number => Math.round(value / 5) * 5

/** A temperature to the nearest five degrees: no oven without a thermometer is known more closely. */
export function temperature(celsius: number, style: Style): string {
  return temperatures({low: celsius, high: celsius}, style)
}

/** A span of temperature, to the nearest five degrees: `205–230 °C (400–445 °F)`. */
export function temperatures(celsius: {readonly low: number; readonly high: number}, style: Style): string {
  const show = (low: number, high: number, unit: string): string => {
    const [a, b] = [toFive(low), toFive(high)]
    return a === b ? `${a} ${unit}` : `${a}–${b} ${unit}`
  }
  const c = show(celsius.low, celsius.high, '°C')
  const f = show(fahrenheit(celsius.low), fahrenheit(celsius.high), '°F')
  return style.degrees === 'C' ? c : style.degrees === 'F' ? f : `${c} (${f})`
}

/** So many degrees more or less: a difference has no zero to shift, so °F are 9/5 of it. */
export function difference(celsius: number, style: Style): string {
  const c = `${Math.round(celsius)} °C`
  const f = `${Math.round((celsius * 9) / 5)} °F`
  return style.degrees === 'C' ? c : style.degrees === 'F' ? f : `${c} (${f})`
}

/** A length of time in minutes: `25 min`, `1 h 30 min`. */
export function duration(minutes: number): string {
  const whole = Math.round(minutes)
  const hours = Math.floor(whole / 60)
  const rest = whole % 60
  if (hours === 0) return `${rest} min`
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`
}

/** A span of time: `25–30 min`, `1 h 30 min to 2 h`. */
export function durations(minutes: {readonly low: number; readonly high: number}, style: Style): string {
  const [low, high] = [Math.round(minutes.low), Math.round(minutes.high)]
  if (low === high) return duration(low)
  if (high < 60) return `${low}–${high} min`
  return say(style.words, 'range.to', {low: duration(low), high: duration(high)})
}

/** The time of day alone, minutes after midnight of any day. */
export function timeOfDay(minutes: number, style: Style): string {
  const whole = ((Math.round(minutes) % 1440) + 1440) % 1440
  const hour = Math.floor(whole / 60)
  const minute = String(whole % 60).padStart(2, '0')
  if (style.clock === 24) return `${String(hour).padStart(2, '0')}:${minute}`
  if (whole === 720) return style.words['clock.noon']
  if (whole === 0) return style.words['clock.midnight']
  return `${((hour + 11) % 12) + 1}:${minute} ${style.words[hour < 12 ? 'clock.am' : 'clock.pm']}`
}

/** A clock time counted from midnight of the bake day, naming the day where it is another. */
export function clock(minutes: number, style: Style): string {
  const days = Math.floor(Math.round(minutes) / 1440)
  const time = timeOfDay(minutes, style)
  if (days === 0) return time
  if (days === 1) return say(style.words, 'clock.next', {time})
  if (days === -1) return say(style.words, 'clock.before', {time})
  return say(style.words, 'clock.later', {days, time})
}

/** An ISO date in words. Zeller's congruence gives the weekday, so no clock or time zone is asked. */
export function longDate(iso: string, style: Style): string {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(iso)
  if (!match) return iso
  const [year, month, day] = [Number(match[1]), Number(match[2]), Number(match[3])]
  const [m, y] = month < 3 ? [month + 12, year - 1] : [month, year]
  const h = (day + Math.floor((13 * (m + 1)) / 5) + y + Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400)) % 7
  const weekday = ((h + 5) % 7) + 1
  return say(style.words, 'date.long', {
    weekday: style.words[`weekday.${weekday}` as WordKey],
    day,
    month: style.words[`month.${month}` as WordKey],
    year,
  })
}
