import {readingWords} from '../lexicon/reading-words.js'
import type {Range, Sign} from '../lexicon/schema.js'
import {signs} from '../lexicon/signs.js'
import {parseTemperature} from '../measure/quantity.js'
import {SPREAD} from './forecast.js'
import {countIn} from './note-words.js'
import type {Forecast, ReadingKind} from './types.js'

/** Which curve a reading speaks of. */
export type Observed = 'floor' | 'vault' | 'baking'

/** What a reading says about the oven: a temperature, and one standard deviation, °C. */
export interface Evidence {
  readonly of: Observed
  readonly celsius: number
  readonly sigma: number
}

/** How a cook's arm count runs: seconds of bare skin in this heat until pain, for each count. */
export interface ArmCook {
  readonly secondsPerCount: Range
  /** Pairs with a thermometer it was learnt from. */
  readonly pairs: number
}

/**
 * The arm count before any pair was seen. 20 at about 200 °C with a factor of two either way: the accounts put 20 at 350 °F and at bread
 * heat, 10 at 375 °F and 5–6 over 475 °F.
 */
export const ANY_COOK: ArmCook = {secondsPerCount: {low: 0.65, likely: 1.3, high: 2.6}, pairs: 0}

/** Readings that a cook takes through the day. */
export const DAY_KINDS: readonly ReadingKind[] = ['floor', 'vault', 'air', 'probe', 'arm', 'flour', 'paper', 'walls', 'spatter']
/** Words cooks use for the kinds. */
const kindWords: ReadonlyMap<string, ReadingKind> = new Map(
  readingWords.flatMap(({kind, words}) => words.map((word): [string, ReadingKind] => [word, kind])),
)
/** No wood fire brings brick beyond this, °C. */
const HOTTEST = 1150
const COLDEST = -40

const SIGMA = 5.670374419e-8

/**
 * Heat flux on a bare arm inside an oven, W/m²: four fifths of what it sees is hot brick, and the air stirs at 8 W/(m²·K).
 */
function flux(celsius: number): number {
  const t = celsius + 273.15
  return 0.8 * SIGMA * (t ** 4 - 306 ** 4) + 8 * (celsius - 33)
}

/**
 * Seconds until bare skin hurts, by the heat it takes: t = 60 s at 1.74 kW/m², falling as q^−1.42 (fit to the table of API 521).
 */
export function secondsToPain(celsius: number): number {
  return 60 * (1740 / Math.max(flux(celsius), 1)) ** 1.42
}

/** °C at which bare skin hurts after some seconds. */
function celsiusOfPain(seconds: number): number {
  let low = 40
  let high = 900
  for (let i = 0; i < 40; i++) {
    const mid = (low + high) / 2
    if (secondsToPain(mid) > seconds) low = mid
    else high = mid
  }
  return (low + high) / 2
}

/**
 * Baking temperature that an arm count speaks of.
 *
 * @param count as far as the cook could count
 * @returns °C
 */
export function armCelsius(count: number, cook: ArmCook = ANY_COOK): Range {
  const {low, likely, high} = cook.secondsPerCount
  return {low: celsiusOfPain(count * high), likely: celsiusOfPain(count * likely), high: celsiusOfPain(count * low)}
}

/**
 * The count to expect at a baking temperature.
 *
 * @returns counts, to print after rounding
 */
export function armCount(celsius: number, cook: ArmCook = ANY_COOK): Range {
  const seconds = secondsToPain(celsius)
  const {low, likely, high} = cook.secondsPerCount
  return {low: seconds / high, likely: seconds / likely, high: seconds / low}
}

/** An arm count and a thermometer's figure for the same moment. */
export interface ArmPair {
  readonly count: number
  readonly celsius: number
}

/**
 * Calibrate a cook's arm: the prior and every pair weighed by their scatter (normal on the logarithm of seconds a count).
 *
 * @returns the cook's own speed and range, which narrows as pairs come in but never below what one arm scatters
 */
export function calibrateArm(pairs: readonly ArmPair[]): ArmCook {
  const prior = Math.log(ANY_COOK.secondsPerCount.high / ANY_COOK.secondsPerCount.low) / (2 * SPREAD)
  const scatter = 0.28
  let weight = 1 / prior ** 2
  let sum = Math.log(ANY_COOK.secondsPerCount.likely) * weight
  let used = 0
  for (const pair of pairs) {
    if (!(pair.count > 0) || !(pair.celsius > 60)) continue
    sum += Math.log(secondsToPain(pair.celsius) / pair.count) / scatter ** 2
    weight += 1 / scatter ** 2
    used++
  }
  const mean = sum / weight
  const sigma = Math.sqrt(1 / weight + (used > 0 ? 0.5 * scatter ** 2 : 0))
  const at = (z: number): number => Math.exp(mean + z * sigma)
  return {secondsPerCount: {low: at(-SPREAD), likely: at(0), high: at(SPREAD)}, pairs: used}
}

/** The row of a sign's id. */
export function signById(id: string): Sign | undefined {
  return signs.find((s) => s.id === id)
}

/** Sigma of a thermometer, °C: its own error, the place it points at, and a share for emissivity and draught. */
function thermometer(kind: ReadingKind, celsius: number): number {
  const [fixed, share] = kind === 'floor' || kind === 'vault' ? [5, 0.015] : [4, 0.012]
  return Math.hypot(fixed, share * Math.max(celsius, 0))
}

/**
 * What a reading says about the oven.
 *
 * @param kind as logged
 * @param value °C, a count, or a sign's id
 * @param cook whose arm
 * @returns null for a value that says nothing (an unknown sign)
 */
export function evidence(kind: ReadingKind, value: number | string, cook: ArmCook = ANY_COOK): Evidence | null {
  if (typeof value === 'string') {
    const sign = signById(value)
    if (!sign) return null
    return {of: sign.of, celsius: sign.celsius.likely, sigma: (sign.celsius.high - sign.celsius.low) / (2 * SPREAD)}
  }
  if (!Number.isFinite(value)) return null
  if (kind === 'arm') {
    if (value <= 0) return null
    const range = armCelsius(value, cook)
    return {of: 'baking', celsius: range.likely, sigma: (range.high - range.low) / (2 * SPREAD)}
  }
  const of = kind === 'floor' ? 'floor' : kind === 'vault' ? 'vault' : 'baking'
  return {of, celsius: value, sigma: thermometer(kind, value)}
}

/** A reading as written, or what is wrong with it. */
export type ParsedReading =
  | {
      readonly ok: true
      readonly kind: ReadingKind
      readonly value: number | string
      /** The value as it should stand in the log. */
      readonly text: string
      /** Possible, but odd: asked about, never changed. */
      readonly doubt?: {readonly reason: string; readonly suggest: string}
    }
  | {readonly ok: false; readonly reason: string; readonly suggest: string}

/** The kind that a word names, or null. */
export function readingKind(word: string): ReadingKind | null {
  const w = word.toLowerCase()
  return DAY_KINDS.find((k) => k === w) ?? kindWords.get(w) ?? null
}

/**
 * Read a reading: "floor 310 °C", "arm 18", "flour browns slowly".
 *
 * @returns the kind and value (°C, a count or a sign's id)
 */
export function parseReading(text: string): ParsedReading {
  const t = text.trim().replace(/\s+/g, ' ')
  const m = /^([\p{L}-]+)(?: (?:at|is|was|of|ist|war|wird))?[:,]? ?(.*)$/su.exec(t)
  const kind = m ? readingKind(m[1]!) : null
  if (!m || !kind) {
    return {
      ok: false,
      reason: `“${t}” is not a reading`,
      suggest: `begin with one of ${DAY_KINDS.join(', ')}`,
    }
  }
  const rest = m[2]!.trim()
  if (kind === 'flour' || kind === 'paper' || kind === 'walls' || kind === 'spatter') {
    const words = rest.toLowerCase()
    const row =
      signs.find((s) => s.kind === kind && (s.id === words || s.phrases.includes(words))) ??
      signs
        .filter((s) => s.kind === kind)
        .flatMap((s) => s.phrases.map((p) => ({s, p})))
        .filter(({p}) => ` ${words} `.includes(` ${p} `))
        .sort((a, b) => b.p.length - a.p.length)[0]?.s
    if (!row) {
      const known = signs.filter((s) => s.kind === kind).map((s) => `“${s.phrases[0]}”`)
      return {ok: false, reason: `“${rest}” is no sign of ${kind} we know`, suggest: `write ${known.join(', ')}`}
    }
    return {ok: true, kind, value: row.id, text: rest}
  }
  if (kind === 'arm') {
    const n = /^(\d{1,4}(?:\.\d)?)(?: ?(?:s|sec|seconds|counts?))?$/i.exec(countIn(rest) ?? rest)
    if (!n) return {ok: false, reason: `“${rest}” is not a count`, suggest: 'write how far you counted, such as “arm 18”'}
    const count = Number(n[1])
    if (count < 1 || count > 120) {
      return {ok: false, reason: `an arm count of ${count} says nothing`, suggest: 'write a count between 1 and 120'}
    }
    return {ok: true, kind, value: count, text: n[1]!}
  }
  const parsed = parseTemperature(rest)
  if (!parsed.ok) return parsed
  const celsius = parsed.value
  const shown = `${Math.round(celsius)} °C`
  if (celsius > HOTTEST || celsius < COLDEST) {
    return {ok: false, reason: `no brick oven is at ${shown}`, suggest: 'check the figure and its scale, °C or °F'}
  }
  const inCelsius = !/f/i.test(rest)
  const most = kind === 'air' || kind === 'probe' ? 480 : 620
  if (inCelsius && celsius > most) {
    const number = Math.round(celsius)
    return {
      ok: true,
      kind,
      value: celsius,
      text: rest,
      doubt: {
        reason: `${shown} is hotter than a raked oven gets; was it ${number} °F (${Math.round((number - 32) / 1.8)} °C)? It is kept as written`,
        suggest: `if so, write “${number} °F”`,
      },
    }
  }
  return {ok: true, kind, value: celsius, text: rest}
}

/**
 * Ask about a reading that would fit as °F but not as °C, or the other way round.
 *
 * @param celsius the reading as taken
 * @param text as written, for its scale
 * @param forecast of this firing
 * @param minutes from lighting
 * @returns a question, or null where the reading fits or neither scale does
 */
export function scaleDoubt(
  kind: ReadingKind,
  celsius: number,
  text: string,
  forecast: Forecast,
  minutes: number,
): {readonly reason: string; readonly suggest: string} | null {
  if (kind !== 'floor' && kind !== 'vault' && kind !== 'air' && kind !== 'probe') return null
  const curve = kind === 'floor' ? forecast.floor : kind === 'vault' ? forecast.vault : forecast.baking
  const i = Math.min(Math.max(Math.round(minutes / forecast.step), 0), curve.likely.length - 1)
  const low = curve.low[i]! - 15
  const high = curve.high[i]! + 15
  const fits = (t: number): boolean => t >= low && t <= high
  if (fits(celsius)) return null
  const wasFahrenheit = /f/i.test(text)
  const number = Math.round(wasFahrenheit ? celsius * 1.8 + 32 : celsius)
  const other = wasFahrenheit ? number : (number - 32) / 1.8
  if (!fits(other)) return null
  const [a, b] = wasFahrenheit ? ['°F', '°C'] : ['°C', '°F']
  return {
    reason: `${number} ${a} is far from the ${Math.round(curve.likely[i]!)} °C expected now; ${number} ${b} would fit. It is kept as written`,
    suggest: `if you meant it, write “${number} ${b}”`,
  }
}
