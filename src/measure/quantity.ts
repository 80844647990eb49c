import convert from 'convert-units'
import Fraction from 'fraction.js'

/**
 * Sizes, weights, times and temperatures as a user states them in front matter: "36 in", "3 ft 6 in", "9 1/2 inches", "91 cm",
 * "2 h", "45–60 min", "350 °F". Every one takes a unit; a bare number is an error that says so. Factors come from `convert-units`.
 */
export type Parsed<T> =
  | {readonly ok: true; readonly value: T}
  | {readonly ok: false; readonly reason: string; readonly suggest: string}

/** A stretch of time in minutes, `low` = `high` where no range is stated. */
export interface Minutes {
  readonly low: number
  readonly high: number
}

const VULGAR: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅕': '1/5',
  '⅙': '1/6',
}

/** Longest text worth reading as one quantity; anything longer is prose in the wrong place. */
const LONGEST = 60

type LengthUnit = 'in' | 'ft' | 'yd' | 'mm' | 'cm' | 'm'
type MassUnit = 'lb' | 'oz' | 'kg' | 'g'
type TimeUnit = 'min' | 'h' | 'd'

const LENGTHS: Readonly<Record<string, LengthUnit>> = {
  in: 'in',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  '″': 'in',
  '”': 'in',
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
  "'": 'ft',
  '′': 'ft',
  '’': 'ft',
  yd: 'yd',
  yard: 'yd',
  yards: 'yd',
  mm: 'mm',
  millimetre: 'mm',
  millimetres: 'mm',
  millimeter: 'mm',
  millimeters: 'mm',
  cm: 'cm',
  centimetre: 'cm',
  centimetres: 'cm',
  centimeter: 'cm',
  centimeters: 'cm',
  m: 'm',
  metre: 'm',
  metres: 'm',
  meter: 'm',
  meters: 'm',
}
const MASSES: Readonly<Record<string, MassUnit>> = {
  lb: 'lb',
  lbs: 'lb',
  pound: 'lb',
  pounds: 'lb',
  oz: 'oz',
  ounce: 'oz',
  ounces: 'oz',
  kg: 'kg',
  kilo: 'kg',
  kilos: 'kg',
  kilogram: 'kg',
  kilograms: 'kg',
  g: 'g',
  gram: 'g',
  grams: 'g',
  gramme: 'g',
  grammes: 'g',
}
const TIMES: Readonly<Record<string, TimeUnit>> = {
  min: 'min',
  mins: 'min',
  minute: 'min',
  minutes: 'min',
  h: 'h',
  hr: 'h',
  hrs: 'h',
  hour: 'h',
  hours: 'h',
  d: 'd',
  day: 'd',
  days: 'd',
}

interface Piece {
  readonly number: Fraction
  readonly unit: string
}

const NUMBER = /^(?:(\d{1,9})[ -]+(\d{1,4})\/(\d{1,4})|(\d{1,9})\/(\d{1,4})|(\d{1,9}(?:\.\d{1,6}|,\d{1,2}(?!\d))?|\.\d{1,6}))/

/** Number at the head of `text`: "9 1/2", "1-1/2", "3/4", "2.5", "2,5"; null where there is none or a denominator is zero. */
function numberAt(text: string): {number: Fraction; length: number} | null {
  const m = NUMBER.exec(text)
  if (!m) return null
  const [all, whole, top, bottom, soloTop, soloBottom, decimal] = m
  if (Number(bottom ?? soloBottom ?? 1) === 0) return null
  const number = whole
    ? new Fraction(Number(whole)).add(new Fraction(Number(top), Number(bottom)))
    : soloTop
      ? new Fraction(Number(soloTop), Number(soloBottom))
      : new Fraction(decimal?.replace(',', '.') ?? '0')
  return {number, length: all.length}
}

function tidy(text: string): string {
  return text
    .replace(/[¼½¾⅓⅔⅛⅜⅝⅞⅕⅙]/g, (c) => ` ${VULGAR[c]}`)
    .replace(/(\d)\s+(?=\d+\/)/g, '$1 ')
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase()
}

/** "3 ft 6 in" → pieces; null where something is neither a number nor a unit. */
function pieces(text: string): Piece[] | null {
  const out: Piece[] = []
  let rest = text
  while (rest) {
    const n = numberAt(rest)
    if (!n) return null
    rest = rest.slice(n.length).trimStart()
    const unit = /^(?:[a-z]+|["″”'′’])\.?/.exec(rest)?.[0] ?? ''
    rest = rest.slice(unit.length).replace(/^[ ,]*(?:and )?/, '')
    out.push({number: n.number, unit: unit.replace(/\.$/, '')})
  }
  return out.length > 0 ? out : null
}

function compound<U extends LengthUnit | MassUnit | TimeUnit>(
  text: string,
  units: Readonly<Record<string, U>>,
  base: U,
  what: string,
  example: string,
): Parsed<number> {
  const t = tidy(text)
  if (t.length > LONGEST) return {ok: false, reason: `this is too long to be ${what}`, suggest: `write ${example}`}
  if (/^[-−]/.test(t)) return {ok: false, reason: `${what} cannot be negative: “${text}”`, suggest: `write ${example}`}
  const found = pieces(t)
  if (!found) return {ok: false, reason: `“${text}” is not ${what}`, suggest: `write ${example}`}
  let sum = 0
  for (const piece of found) {
    if (!piece.unit) {
      const n = piece.number.toString()
      const [first, second] = Object.keys(units).length > 20 ? ['in', 'cm'] : base === 'kg' ? ['lb', 'kg'] : ['min', 'h']
      return {ok: false, reason: `“${text}” has no unit`, suggest: `write “${n} ${first}” or “${n} ${second}”`}
    }
    const unit = units[piece.unit]
    if (!unit) return {ok: false, reason: `“${piece.unit}” is not a unit of ${what}`, suggest: `write ${example}`}
    sum += convert(piece.number.valueOf()).from(unit).to(base)
  }
  return {ok: true, value: sum}
}

/**
 * A length.
 *
 * @param text "36 in", "3 ft 6 in", "9 1/2 inches", "91 cm"
 * @returns metres
 */
export function parseLength(text: string): Parsed<number> {
  return compound(text, LENGTHS, 'm', 'a length', '“36 in” or “91 cm”')
}

/**
 * A weight.
 *
 * @param text "2 lb 4 oz", "1.5 kg"
 * @returns kilograms
 */
export function parseMass(text: string): Parsed<number> {
  return compound(text, MASSES, 'kg', 'a weight', '“2 lb 4 oz” or “1 kg”')
}

/**
 * A stretch of time, or a range of them.
 *
 * @param text "2 h", "1 h 30 min", "1 1/2 hours", "45-60 min", "3 to 4 hours"
 * @returns minutes
 */
export function parseDuration(text: string): Parsed<Minutes> {
  const t = tidy(text)
  const example = '“45 min” or “1 h 30 min”'
  // A dash between numbers is a range unless it binds a fraction ("1-1/2 h").
  const dash = /(?<=.)(?: to | or | ?[–—] ?|-(?!\d{1,9}\/))(?=.)/.exec(t)
  if (!dash) {
    const one = compound(t, TIMES, 'min', 'a length of time', example)
    return one.ok ? {ok: true, value: {low: one.value, high: one.value}} : one
  }
  const before = t.slice(0, dash.index)
  const behind = t.slice(dash.index + dash[0].length)
  const high = compound(behind, TIMES, 'min', 'a length of time', example)
  if (!high.ok) return high
  const unit = /[a-z]+/.exec(behind)?.[0] ?? ''
  const low = compound(/[a-z]/.test(before) ? before : `${before} ${unit}`, TIMES, 'min', 'a length of time', example)
  if (!low.ok) return low
  if (low.value > high.value) return {ok: false, reason: `“${text}” runs backwards`, suggest: 'write the shorter time first'}
  return {ok: true, value: {low: low.value, high: high.value}}
}

/**
 * A temperature with its scale.
 *
 * @param text "350 °F", "180 C", "-4 °C"
 * @returns degrees Celsius
 */
export function parseTemperature(text: string): Parsed<number> {
  const t = tidy(text)
  const m = /^([-−]?\d{1,5}(?:\.\d{1,3}|,\d{1,2})?) ?(?:°|º|deg(?:rees?)?\.?)? ?(c|f|celsius|fahrenheit|centigrade)?\.?$/.exec(t)
  if (!m) return {ok: false, reason: `“${text}” is not a temperature`, suggest: 'write “350 °F” or “180 °C”'}
  const value = Number(m[1]!.replace('−', '-').replace(',', '.'))
  const scale = m[2]
  if (!scale) return {ok: false, reason: `“${text}” has no scale`, suggest: `write “${value} °F” or “${value} °C”`}
  const celsius = scale.startsWith('f') ? convert(value).from('F').to('C') : value
  if (celsius < -273.15)
    return {ok: false, reason: `“${text}” is colder than anything can be`, suggest: 'write “350 °F” or “180 °C”'}
  return {ok: true, value: celsius}
}

/** A time of day as written. */
export interface ClockRead {
  /** Minutes after midnight of the bake day, on a clock of 24 hours where neither half of the day is named. */
  readonly minutes: number
  /** Hours and minutes from 1:00 to 12:59 that may be of either half of the day: "2:10", but not "02:10" or "14:10". */
  readonly bare: boolean
  /** It names its day: "next day 6:15 am". */
  readonly dated: boolean
}

/**
 * A time of day.
 *
 * @param text "5 am", "5:30 pm", "17:30", "17 Uhr", "noon", "tomorrow 8 am", "next day 6:15 am", "6:15 am next day", "2 days later 6 am"
 * @returns minutes after midnight of the bake day; tomorrow's are 1440 and more
 */
export function parseClock(text: string): Parsed<number> {
  const read = readClock(text)
  return read.ok ? {ok: true, value: read.value.minutes} : read
}

/** A time of day as `parseClock` reads it, and whether it leaves its half of the day or its day open. */
export function readClock(text: string): Parsed<ClockRead> {
  const wrong: Parsed<ClockRead> = {
    ok: false,
    reason: `“${text}” is not a time of day`,
    suggest: 'write “5 am”, “2:30 pm”, “14:30” or “tomorrow 8 am”',
  }
  let t = tidy(text).replace(/^(?:(?:at|heute) )?(?:um )?/, '')
  let days = 0
  const head =
    /^(tomorrow|morgen|next day|next morning|the next day|evening before|the evening before|yesterday|day before|([2-9]) days later)(?: at)?,? ?/.exec(
      t,
    )
  if (head) {
    days = head[2] ? Number(head[2]) : /before|yesterday/.test(head[1]!) ? -1 : 1
    t = t.slice(head[0].length)
  }
  // As the sheets write it: "7:55 am next day".
  const tail = head ? null : /,? (?:tomorrow|(?:the )?next day|(?:the )?day before|([2-9]) days (?:later|before))$/.exec(t)
  if (tail) {
    days = (tail[0].endsWith('before') ? -1 : 1) * Number(tail[1] ?? 1)
    t = t.slice(0, tail.index)
  }
  t = t.replace(/^12 (noon|midnight)$/, '$1')
  const dated = head !== null || tail !== null
  if (t === 'noon' || t === 'mittag' || t === 'mittags')
    return {ok: true, value: {minutes: days * 1440 + 720, bare: false, dated}}
  if (t === 'midnight' || t === 'mitternacht') return {ok: true, value: {minutes: (days + 1) * 1440, bare: false, dated}}
  const m = /^(\d{1,2})(?:[:.h](\d{2}))? ?(am|pm|a\.m\.?|p\.m\.?|a|p|o'clock|uhr)?(?: (\d{2}))?$/.exec(t)
  // Minutes stand behind "Uhr" only: "13 Uhr 15".
  if (!m || (m[4] !== undefined && (m[3] !== 'uhr' || m[2] !== undefined))) return wrong
  let hour = Number(m[1])
  const minute = Number(m[2] ?? m[4] ?? 0)
  const half = m[3]?.[0]
  if (minute > 59 || hour > 24) return wrong
  // ISO 8601 writes the end of a day as 24:00; no minute of that day is later.
  if (hour === 24 && minute > 0) {
    const clock = `0:${String(minute).padStart(2, '0')}`
    return {
      ok: false,
      reason: `“${text}” is later than a day lasts`,
      suggest: `write “${clock}”, or “tomorrow ${clock}” if that is meant`,
    }
  }
  if (half === 'a' || half === 'p') {
    if (hour < 1 || hour > 12) return wrong
    hour = (hour % 12) + (half === 'p' ? 12 : 0)
  } else if (!m[2] && m[3] !== 'uhr') {
    if (hour < 1 || hour > 12)
      return {ok: false, reason: `“${text}” is a number, and no time of day`, suggest: `write “${hour}:00”`}
    return {ok: false, reason: `“${text}” may be morning or afternoon`, suggest: `write “${hour} am” or “${hour} pm”`}
  }
  const bare = half !== 'a' && half !== 'p' && hour >= 1 && hour <= 12 && !m[1]!.startsWith('0')
  return {ok: true, value: {minutes: days * 1440 + hour * 60 + minute, bare, dated}}
}

/** A time of day as `parseClock` reads it: `14:30`, `tomorrow 8:00`; minutes after midnight, from yesterday's to tomorrow's. */
export function writeClock(minutes: number): string {
  const day = Math.floor(minutes / 1440)
  const text = `${Math.floor((minutes - 1440 * day) / 60)}:${String(minutes - 60 * Math.floor(minutes / 60)).padStart(2, '0')}`
  return day === 0 ? text : `${day > 0 ? 'tomorrow' : 'yesterday'} ${text}`
}

/** A length of time in minutes, as `parseDuration` reads it: `25 min`, `1 h 30 min`. */
export function writeDuration(minutes: number): string {
  const whole = Math.round(minutes)
  const hours = Math.floor(whole / 60)
  const rest = whole % 60
  if (hours === 0) return `${rest} min`
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`
}
