import type {Range} from '../lexicon/schema.js'
import {writeDuration} from '../measure/quantity.js'
import {kitchenStep, usMeasure} from '../measure/round.js'
import {plainStyle, type Style} from './style.js'
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
  const short = digits > 0 ? text.replace(/(?<!0)0+$/, '').replace(/\.$/, '') : text
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

/**
 * `120 g (90–160)`; the brackets only where the range shows at this precision.
 *
 * @param least the finest step that can be weighed or measured, in the same unit
 */
export function ranged(range: Range, unit: string, style: Style, least = 0): string {
  const step = Math.max(printStep(range), least)
  const show = (value: number): string => number(Math.round(value / step) * step, decimals(step), style)
  const [low, likely, high] = [show(range.low), show(range.likely), show(range.high)]
  return low === high ? `${likely} ${unit}` : `${likely} ${unit} (${low}–${high})`
}

/** A range in another unit. */
function times(range: Range, factor: number): Range {
  return {low: range.low * factor, likely: range.likely * factor, high: range.high * factor}
}

/** The finest steps of a kitchen's scales in ounces and pounds (common practice, no source). */
const leastOunce = 0.1
const leastPound = 0.05

/** A weight for the scales, grams in. Under half an ounce in grams alone: no kitchen scale shows a tenth of an ounce. */
export function mass(grams: Range, style: Style): string {
  const least = kitchenStep(grams.likely)
  const metric =
    grams.likely >= 1500
      ? ranged(times(grams, 1e-3), 'kg', style, least / 1000)
      : ranged(grams, 'g', style, grams.likely < 1 ? 0.1 : least)
  const ounces = times(grams, 1 / gramsPerOunce)
  if (ounces.likely < 0.49) return metric
  const us =
    ounces.likely >= 24 ? ranged(times(ounces, 1 / 16), 'lb', style, leastPound) : ranged(ounces, 'oz', style, leastOunce)
  return style.units === 'both' ? `${metric} / ${us}` : sideBySide(style, metric, us)
}

/** What a jug or a spoon can tell apart, mL (common practice, no source). */
function jugStep(millilitres: number): number {
  return millilitres > 1000 ? 10 : millilitres > 100 ? 5 : kitchenStep(millilitres)
}

/** A measure of liquid, millilitres in. US measures in the cups and spoons of a set, quarts above four cups. */
export function volume(millilitres: Range, style: Style): string {
  const least = jugStep(millilitres.likely)
  const metric =
    millilitres.likely >= 1500
      ? ranged(times(millilitres, 1e-3), 'l', style, least / 1000)
      : ranged(millilitres, 'ml', style, least)
  const us = usVolume(millilitres, style)
  if (us === '') return metric
  return style.units === 'both' ? `${metric} / ${us}` : sideBySide(style, metric, us)
}

/** A measure of a set of cups and spoons, its number apart from its unit. */
interface Measured {
  readonly count: string
  readonly unit: 'tsp' | 'tbsp' | 'cup' | 'qt'
  readonly more: string
}

const quarters = ['', '1/4', '1/2', '3/4']

/** The nearest measure of a US kitchen; null for less than the smallest spoon shows. `close`: cups and spoons together where it matters. */
function measured(millilitres: number, close: boolean, style: Style): Measured | null {
  if (millilitres < 0.3) return null
  const cup = 8 * millilitresPerFluidOunce
  if (millilitres > 3.9 * cup) {
    const parts = Math.round(millilitres / cup)
    return {count: [Math.floor(parts / 4) || '', quarters[parts % 4]!].filter(Boolean).join(' '), unit: 'qt', more: ''}
  }
  const read = (text: string): Measured => {
    const [, count, unit] = /^(.*) (tsp|tbsp|cup)s?$/.exec(text)!
    return {count: count!, unit: unit as Measured['unit'], more: ''}
  }
  const nearest = read(usMeasure(millilitres))
  const taken = amountOf(nearest)
  if (!close || nearest.unit !== 'cup' || Math.abs(taken / millilitres - 1) < 0.05) return nearest
  // A twelfth of a cup off spoils a batter: the next smaller cup, and the rest in half tablespoons.
  const smaller = [3 / 4, 2 / 3, 1 / 2, 1 / 3, 1 / 4, 0].find(
    (part) => Math.floor(millilitres / cup) + part <= millilitres / cup + 1e-9 && (part > 0 || millilitres > cup),
  )
  const base = read(usMeasure((Math.floor(millilitres / cup) + (smaller ?? 1 / 4)) * cup))
  const spoons = Math.round(((millilitres - amountOf(base)) / millilitresPerFluidOunce) * 4) / 2
  if (spoons <= 0) return nearest
  const count = [Math.floor(spoons) || '', spoons % 1 ? '1/2' : ''].filter(Boolean).join(' ')
  return {...base, more: ` + ${count} ${style.words['unit.tbsp']}`}
}

/** Millilitres of a measure as it is written. */
function amountOf({count, unit}: Measured): number {
  const value = count.split(' ').reduce((sum, part) => sum + fraction(part), 0)
  const fluidOunces = {tsp: 1 / 6, tbsp: 1 / 2, cup: 8, qt: 32}[unit]
  return value * fluidOunces * millilitresPerFluidOunce
}

/** `2 cups (2–2 1/2)`, `1/2 tsp (1/4–1 1/2)`, `1 tbsp (2 tsp – 1/4 cup)`; empty where no spoon is so small. */
function usVolume(range: Range, style: Style): string {
  const narrow = range.high - range.low < 0.25 * range.likely
  const likely = measured(range.likely, narrow, style)
  if (likely === null) return ''
  const {words} = style
  const withUnit = (one: Measured): string => {
    const plural = one.unit === 'cup' && !/^(?:1|\d+\/\d+)$/.test(one.count)
    return `${one.count} ${words[plural ? 'unit.cups' : (`unit.${one.unit}` as const)]}${one.more}`
  }
  const low = measured(range.low, false, style)
  const high = measured(range.high, false, style) ?? likely
  const same = (a: Measured, b: Measured): boolean => a.unit === b.unit && a.count === b.count
  if (likely.more !== '' || (same(low ?? likely, likely) && same(high, likely))) return withUnit(likely)
  if (low !== null && low.unit === likely.unit && high.unit === likely.unit)
    return `${withUnit(likely)} (${low.count}–${high.count})`
  return `${withUnit(likely)} (${low === null ? '0' : withUnit(low)} – ${withUnit(high)})`
}

/** A weight or a measure rounded for the scales, in US units where only those are asked for; anything else stays as it is. */
export function kitchen(text: string, style: Style): string {
  return style.units === 'us' ? text.replace(/^([\d.]+) (kg|g|litres?|ml)\b/, amountIn(style)) : text
}

/** The same for every amount in a sentence, which may have been said in the reader's language already. */
export function amountsIn(text: string, style: Style): string {
  return style.units === 'us' ? text.replace(/\b(\d{1,6}(?:[.,]\d{1,3})?) (kg|g|litres?|ml|l)\b/g, amountIn(style)) : text
}

const amountIn =
  (style: Style) =>
  (_: string, count: string, unit: string): string => {
    const value = Number(count.replace(',', '.')) * (unit === 'kg' || unit.startsWith('l') ? 1000 : 1)
    const exact = {low: value, likely: value, high: value}
    return unit.endsWith('g') ? mass(exact, style) : (jugAndSpoons(value, style) ?? volume(exact, style))
  }

/** How far a measured liquid may be off, as a share: what the balance of flour to liquid allows; below so many mL what a spoon shows. */
const jugOff = {most: 0.005, small: 0.03, below: 110}

/** A liquid to be measured out in quarts, a cup of the set and half tablespoons, where the nearest measure alone is too far off; else null. */
function jugAndSpoons(millilitres: number, style: Style): string | null {
  const cup = 8 * millilitresPerFluidOunce
  const off = (value: number): number => Math.abs(value / millilitres - 1)
  const nearest = measured(millilitres, false, style)
  if (nearest === null || (nearest.unit !== 'cup' && nearest.unit !== 'qt')) return null
  const single = off(amountOf(nearest))
  const {words} = style
  const whole = Math.floor(millilitres / cup + 1e-9)
  const quarts = whole < 4 ? 0 : whole / 4
  const rest = millilitres / cup - whole
  const most = millilitres < jugOff.below ? jugOff.small : jugOff.most
  if (single <= most) return null
  // From the largest cup down, so that the rest is few spoonfuls: a quarter of a cup is four.
  const ways = [3 / 4, 2 / 3, 1 / 2, 1 / 3, 1 / 4, 0]
    .filter((part) => part <= rest + 1e-9)
    .map((part) => {
      const spoons = Math.round(((rest - part) * cup * 2) / (millilitresPerFluidOunce / 2)) / 2
      return {part, spoons, off: off((whole + part) * cup + (spoons * millilitresPerFluidOunce) / 2)}
    })
  const few = ways.filter(({spoons}) => spoons <= 4)
  const best = few.find((way) => way.off <= most) ?? few.reduce((one, other) => (other.off < one.off - 1e-9 ? other : one))
  if (best.off >= single) return null
  const mixed = (value: number): string => {
    const part =
      new Map([
        [1 / 4, '1/4'],
        [1 / 3, '1/3'],
        [1 / 2, '1/2'],
        [2 / 3, '2/3'],
        [3 / 4, '3/4'],
      ]).get(value % 1) ?? ''
    return [Math.floor(value) || '', part].filter(Boolean).join(' ')
  }
  const cups = (value: number): string => `${mixed(value)} ${words[value > 1 ? 'unit.cups' : 'unit.cup']}`
  return [
    ...(quarts > 0 ? [`${mixed(quarts)} ${words['unit.qt']}`] : []),
    ...(quarts === 0 && whole > 0
      ? [cups(whole) + (best.part > 0 ? ` + ${cups(best.part)}` : '')]
      : best.part > 0
        ? [cups(best.part)]
        : []),
    ...(best.spoons > 0 ? [`${mixed(best.spoons)} ${words['unit.tbsp']}`] : []),
  ].join(' + ')
}

/** Inches or centimetres of a vessel's name in the units asked for; side by side they stay as the cook wrote them. */
export function vesselSize(name: string, style: Style): string {
  if (style.units === 'both') return name
  const wanted = style.units === 'us' ? 'in' : 'cm'
  const unit = /\d ?(in|cm)\b/.exec(name)?.[1]
  if (unit === undefined || unit === wanted) return name
  const factor = unit === 'in' ? metresPerInch * 100 : 1 / (metresPerInch * 100)
  return name.replace(/(\d+ \d+\/\d+|\d+\/\d+|\d+(?:\.\d+)?)( ?(?:in|cm)\b)?/g, (_, count: string, own: string | undefined) => {
    const value = count.split(' ').reduce((sum, part) => sum + fraction(part), 0) * factor
    const shown =
      wanted === 'cm' ? number(value, value < 5 ? 1 : 0, plainStyle) : number(Math.round(value * 4) / 4, 2, plainStyle)
    return own === undefined ? shown : `${shown} ${wanted}`
  })
}

const fraction = (text: string): number => {
  const [over, under] = text.split('/')
  return Number(over) / Number(under ?? 1)
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
    `${number(Math.round((metres / metresPerInch) * 4) / 4, 2, style)} ${style.words['unit.in']}`,
  )
}

/** °C to °F, exact. */
export function fahrenheit(celsius: number): number {
  return (celsius * 9) / 5 + 32
}

/** To the nearest five, as degrees and minutes of the falling oven are printed: no fall is known more closely. */
export const toFive = (value: number): number => Math.round(value / 5) * 5

/** °C in the figures of a scale. */
export type Figures = (celsius: number) => number

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

/** A span of time: `25–30 min`, `1 h 30 min to 2 h`. */
export function durations(minutes: {readonly low: number; readonly high: number}, style: Style): string {
  const [low, high] = [Math.round(minutes.low), Math.round(minutes.high)]
  if (low === high) return writeDuration(low)
  if (high < 60) return `${low}–${high} min`
  return say(style.words, 'range.to', {low: writeDuration(low), high: writeDuration(high)})
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

/** Days after the bake day of a time, minutes after its midnight, as it is written to the minute. */
export function dayOf(minutes: number): number {
  return Math.floor(Math.round(minutes) / 1440)
}

/**
 * A clock time counted from midnight of the bake day, naming the day where it is another. Midnight by that name ends a day, as `parseClock`
 * reads it; as 00:00 it begins one (ISO 8601-1:2019, 4.3.8.1).
 */
export function clock(minutes: number, style: Style): string {
  const time = timeOfDay(minutes, style)
  const days = dayOf(minutes) - (time === style.words['clock.midnight'] ? 1 : 0)
  if (days === 0) return time
  if (days === 1) return say(style.words, 'clock.next', {time})
  if (days === -1) return say(style.words, 'clock.before', {time})
  return days < 0 ? say(style.words, 'clock.earlier', {days: -days, time}) : say(style.words, 'clock.later', {days, time})
}

/** A clock time beside another: its day is named where that is another day's. */
export function clockBeside(minutes: number, beside: number, style: Style): string {
  if (dayOf(minutes) === dayOf(beside)) return timeOfDay(minutes, style)
  return dayOf(minutes) === 0 ? say(style.words, 'clock.day', {time: timeOfDay(minutes, style)}) : clock(minutes, style)
}

/** The time of day of a step: of one at no hour of its own, that it is the evening. */
export const stepTime = (step: {readonly at: number; readonly untimed?: boolean}, style: Style): string =>
  step.untimed === true ? style.words['clock.evening'] : timeOfDay(step.at, style)

/** The same, naming the day where it is another. */
export function stepClock(step: {readonly at: number; readonly untimed?: boolean}, style: Style): string {
  if (step.untimed !== true) return clock(step.at, style)
  const days = dayOf(step.at)
  if (days === -1) return style.words['clock.eveningBefore']
  return days === 0 ? style.words['clock.evening'] : `${style.words['clock.evening']}, ${dayName(step.at, style)}`
}

/** The day of a time, counted from the bake day: “next day”. */
export function dayName(minutes: number, {words}: Style): string {
  const days = dayOf(minutes)
  if (days === 0) return words['day.same']
  return days === 1
    ? words['day.next']
    : days === -1
      ? words['day.before']
      : say(words, days < 0 ? 'day.earlier' : 'day.later', {days: Math.abs(days)})
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
