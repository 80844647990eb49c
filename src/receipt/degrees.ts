import {behindHeat, cardinals, enders, stepVerbs} from '../lexicon/grammar-words.js'
import type {Band} from '../lexicon/schema.js'
import {isCookedAt} from './cooked-at.js'
import {DRIES, dryingOf, HOTTEST_DRYING, LEAST_DRYING} from './drying-heat.js'
import {BAKES, CHANGES, DEGREE_AFTER, FAN_AFTER, IN_OVEN, INSIDE_WORDS, JOINTS, MEAT_TOO, OVENS, POT_WORDS} from './heat-words.js'
import {linesApart} from './section.js'
import {Walk} from './walk.js'

const BANDS: ReadonlyArray<readonly [Band, number]> = [
  ['slack', 121],
  // 160 °C, 325 °F and gas mark 3 are one setting, and the coolest called moderate.
  ['slow', 158],
  ['moderate', 204],
]

/** The band a baking temperature lies in (design §4), by the middle of its range. */
export function bandOf(low: number, high: number): Band {
  const middle = (low + high) / 2
  for (const [band, top] of BANDS) if (middle <= top) return band
  return 'hot'
}

/** °F to °C, exactly: (F − 32) × 5/9 (NIST SP 811, B.8). */
export const celsiusOfFahrenheit = (fahrenheit: number): number => ((fahrenheit - 32) * 5) / 9

/**
 * °C of a British gas mark: mark 1 is 275 °F and each further mark 25 °F more; 1/4 is 225 °F, 1/2 is 250 °F.
 *
 * @returns null for a mark that is not on the scale (1/4, 1/2, 1 to 10)
 * @source from memory
 */
export function celsiusOfGasMark(mark: number): number | null {
  if (mark === 0.25) return celsiusOfFahrenheit(225)
  if (mark === 0.5) return celsiusOfFahrenheit(250)
  if (mark === 0.75) return celsiusOfFahrenheit(262.5)
  if (!(mark >= 1 && mark <= 10)) return null
  return celsiusOfFahrenheit(250 + 25 * mark)
}

/** Nothing is baked hotter, °C: about a Neapolitan pizza's oven. From memory. */
export const HOTTEST = 480

/** What a fan oven's figure is without the fan: makers' advice, common practice. */
const FAN_CELSIUS = 20
/** Members of "180 °C / 350 °F / gas 4" differ by rounding up to this much before they disagree. */
const DISAGREE_CELSIUS = 12
/** "230/210 °C" without a word of the fan is plain and fan where they lie so far apart: makers ask for 10 to 30 °C less. Common practice. */
const FAN_LESS: readonly [number, number] = [10, 30]
/** With a word of the fan they may lie this far apart. */
const FAN_MOST = 60

/** "180 °C / 160 °C fan / 350 °F / gas 4" names one heat in four ways; longer runs are taken in pieces. */
const MOST_MEMBERS = 8

interface Heat {
  readonly from: number
  readonly end: number
  readonly low: number
  readonly high: number
  readonly explicit: boolean
  readonly notes: readonly string[]
  readonly sources: readonly string[]
  /** The token behind the figure that stands as its scale and is none. */
  readonly odd?: number
  /** The same heat in degrees, written behind a mark with nothing between them. */
  readonly also?: Heat
}

/** No word of these stands where a scale would. */
const NO_SCALE: ReadonlySet<string> = new Set([...enders, ...stepVerbs, ...behindHeat, ...Object.keys(cardinals)])
/** An oven does so on its way up. */
const HEATS: ReadonlySet<string> = new Set(['heats', 'heat', 'heated', 'heating', 'preheats', 'preheat', 'comes', 'warms'])
const BEFORE_DRYING = /^(?:at|about|around|bei|\()$/
/** Less is what a dough, a milk or a room has, °C. */
const LEAST_OVEN = 45
/** A pot's heat is changed as well, °C. */
const LEAST_CHANGED = 130
/** What is baked, or the thermometer in it, does so. */
const REACHES: ReadonlySet<string> = new Set(['reaches', 'reach', 'reached', 'registers', 'reads', 'hits', 'is', 'are', 'at'])
const UNTIL: ReadonlySet<string> = new Set(['until', 'till', 'bis', 'when', 'once'])
/** "until 75 °C in the thickest part", "until 75 °C inside". */
const BEHIND_INSIDE: ReadonlySet<string> = new Set(['in', 'inside', 'within', 'internally', 'innen', 'im'])
/** Water, and what sets in it, is never hotter, °C: "bake in custard cups set in hot water at 325 °F" is the oven's heat. Common practice, no source. */
const HOTTEST_WATER = 110
const WATERS: ReadonlySet<string> = new Set(['water', 'bath', 'custard', 'wasser', 'wasserbad'])
const isBath = (word: string, coolest: number): boolean => WATERS.has(word) && coolest > HOTTEST_WATER

/** Nothing that is baked is hotter within, °C: candy and meringue apart, no crumb passes the boiling of its water. */
const HOTTEST_CRUMB = 105
const AFTER_SCALE = /^(?:for|until|till|about|and|or|then|in|oven|etwa|ca|bis|und|lang|backen)$/

/** Degrees and gas marks that name one heat, at tokens [from, to). */
export interface DegreesRead {
  readonly from: number
  readonly to: number
  readonly low: number
  readonly high: number
  readonly sources: readonly string[]
  readonly notes: readonly string[]
  readonly disagree: boolean
  /** False where they are the milk's, the syrup's or the crumb's. */
  readonly ofOven: boolean
  /** The token that stands as a scale of heat and is none; −1. */
  readonly odd: number
}

/** Reads degrees, gas marks and fan ovens, and tells the oven's from the milk's and the syrup's. */
export class DegreeReader extends Walk {
  /**
   * Degrees and gas marks from token `i`; null where none stand there.
   *
   * @param baking the receipt bakes
   */
  degrees(i: number, baking: boolean): DegreesRead | null {
    const tokens = this.tokens
    const members: Heat[] = []
    let j = i
    let end = i
    while (members.length < MOST_MEMBERS) {
      const heat = this.#degree(j, members.length > 0)
      if (heat === null) break
      members.push(heat, ...(heat.also === undefined ? [] : [heat.also]))
      end = heat.also?.end ?? heat.end
      // Joined by a slash, a bracket, a comma or "or" they name one heat.
      let k = end
      let joints = 0
      while (k < tokens.length && joints < 3 && tokens[k]!.block === tokens[i]!.block && JOINTS.has(this.word(k))) {
        k++
        joints++
      }
      if (joints === 0 && !/^(?:gas|mark)$/.test(this.word(k)) && !FAN_AFTER.has(this.word(k))) break
      j = k
    }
    if (members.length === 0) return null
    let low = Infinity
    let high = -Infinity
    const notes: string[] = []
    const sources = new Set<string>()
    for (const m of members) {
      low = Math.min(low, m.low)
      high = Math.max(high, m.high)
      for (const n of m.notes) if (!notes.includes(n)) notes.push(n)
      for (const s of m.sources) sources.add(s)
    }
    let disagree = false
    for (const a of members) for (const b of members) if (a.low - b.high > DISAGREE_CELSIUS) disagree = true
    if (disagree)
      notes.push(
        `the temperatures disagree: ${members.map((m) => `${this.#slice(m.from, m.end)} is ${Math.round(m.low)}${m.high > m.low + 0.5 ? `–${Math.round(m.high)}` : ''} °C`).join(', ')}`,
      )
    let to = end
    if (this.word(to) === ')' && this.#open(i, to)) to++
    return {
      from: i,
      to,
      low,
      high,
      sources: [...sources],
      notes,
      disagree,
      ofOven: this.#ofOven(i, end, members, baking),
      odd: members.find((m) => m.odd !== undefined)?.odd ?? -1,
    }
  }

  #open(from: number, to: number): boolean {
    let depth = 0
    for (let k = from; k < to; k++) depth += this.word(k) === '(' ? 1 : this.word(k) === ')' ? -1 : 0
    return depth > 0
  }

  #slice(from: number, to: number): string {
    return this.section.source.slice(this.tokens[from]!.start, this.tokens[to - 1]!.end).replace(/\s+/g, ' ')
  }

  #degree(i: number, chained: boolean): Heat | null {
    const tokens = this.tokens
    let j = i
    let fan = false
    if (FAN_AFTER.has(this.word(j))) {
      fan = true
      j++
      if (this.word(j) === 'oven' || this.word(j) === 'forced') j++
      if (this.word(j) === 'at' || this.word(j) === ':') j++
    }
    const word = this.word(j)
    if (word === 'gas' || word === 'mark' || word === 'regulo' || (word === 'reg' && this.tokens[j]!.capital)) {
      let k = j + 1
      while (k < j + 3 && /^(?:mark|no|number|oven|regulo|\.)$/.test(this.word(k))) k++
      const n = tokens[k]
      if (n === undefined || n.kind !== 'number' || n.den === 0 || n.block !== tokens[i]!.block) return null
      const both = this.#markAndDegrees(i, k)
      if (both !== null) return both
      // "gas mark 4/5": from one mark to the next, where no mark is called so.
      const two = n.num > 1 && n.den > n.num && n.word !== '3/4'
      let low = two ? n.num : n.num / n.den
      let high = two ? n.den : low
      let end = k + 1
      const next = tokens[k + 2]
      if (
        /^(?:-|—|to|or|\/)$/.test(this.word(k + 1)) &&
        next !== undefined &&
        next.kind === 'number' &&
        next.den > 0 &&
        !DEGREE_AFTER.has(this.word(k + 3))
      ) {
        high = Math.max(low, next.num / next.den)
        low = Math.min(low, next.num / next.den)
        end = k + 3
      }
      const a = celsiusOfGasMark(low)
      const b = celsiusOfGasMark(high)
      if (a === null || b === null) return null
      return {from: i, end, low: a, high: b, explicit: true, notes: [], sources: ['gas-mark-table']}
    }
    const pair = fan ? null : this.#plainAndFan(j)
    if (pair !== null) return pair
    const first = tokens[j]
    if (first === undefined || first.kind !== 'number' || first.den !== 1 || first.block !== tokens[i]!.block) return null
    let low = first.num
    let high = low
    let k = j + 1
    // A unit may stand after the first figure of a range as well: "180°–200 °C".
    const unitBefore = this.#unit(k)
    const dash = unitBefore === null ? k : unitBefore.end
    const second = tokens[dash + 1]
    if (
      /^(?:-|—|to|or|and|bis)$/.test(this.word(dash)) &&
      second !== undefined &&
      second.kind === 'number' &&
      second.den === 1 &&
      second.num > 30 &&
      second.block === first.block
    ) {
      const unitAfter = this.#unit(dash + 2)
      const same = unitBefore === null || unitAfter === null || unitBefore.unit === '' || unitBefore.unit === unitAfter.unit
      if ((unitAfter !== null || unitBefore !== null) && same && second.num < 700) {
        low = Math.min(first.num, second.num)
        high = Math.max(first.num, second.num)
        k = unitAfter === null ? dash + 2 : dash + 2
      }
    }
    const unit = this.#unit(k) ?? (k === j + 1 ? null : unitBefore)
    let scale: 'f' | 'c' | ''
    let end = k
    const notes: string[] = []
    if (unit !== null) {
      scale = unit.unit
      end = Math.max(unit.end, k)
    } else {
      // Bare: "oven to 350", "a 350 oven", "(fan 160)", "then reduce to 350".
      if (high < 100 || high > 600) return null
      const beforeWord = this.word(i - 1)
      const oven =
        fan ||
        (low >= LEAST_CHANGED && this.#endsHeat(k) && (this.#isChanged(i) || this.#heatsTo(i))) ||
        (chained && FAN_AFTER.has(this.word(k))) ||
        OVENS.has(this.word(k)) ||
        (/^(?:to|at|of|about|bei|auf)$/.test(beforeWord) &&
          (OVENS.has(this.word(i - 2)) || OVENS.has(this.word(i - 3)) || BAKES.has(this.word(i - 2)))) ||
        OVENS.has(beforeWord) ||
        // "20 minutes at 220 °C, then 30 at 180"
        (beforeWord === 'at' && (tokens[i - 2]?.kind === 'number' || /^(?:min|mins|minutes|hours?)$/.test(this.word(i - 2))))
      if (!oven) return null
      scale = ''
    }
    if (low > 1000 || high > 1000) return null
    if (
      (FAN_AFTER.has(this.word(end)) && !this.#fansNext(end + 1, low, unit?.unit ?? '')) ||
      (this.word(end) === '(' && FAN_AFTER.has(this.word(end + 1)) && this.word(end + 2) === ')')
    ) {
      fan = true
      end += this.word(end) === '(' ? 3 : 1
      while (/^(?:forced|oven|assisted|bake)$/.test(this.word(end))) end++
    }
    let odd: number | undefined
    if (scale === '') {
      const judged = this.#scale(high, fan)
      scale = judged.scale
      if (unit === null && this.#isOdd(end)) {
        odd = end
        end++
        notes.push(`“${this.#slice(odd, end)}” is no scale of heat known here: read as ${scale === 'f' ? '°F' : '°C'}`)
      } else if (judged.note !== null) notes.push(judged.note)
    }
    const celsius = (n: number): number => (scale === 'f' ? celsiusOfFahrenheit(n) : n)
    const offset = fan ? FAN_CELSIUS : 0
    const sources = scale === 'f' ? ['receipt', 'nist-sp811'] : ['receipt']
    if (fan) {
      notes.push(`fan oven: ${FAN_CELSIUS} °C added for a still one`)
      sources.push('fan-oven')
    }
    return {
      from: i,
      end,
      low: celsius(low) + offset,
      high: celsius(high) + offset,
      explicit: unit !== null && unit.unit !== '',
      notes,
      sources,
      ...(odd === undefined ? {} : {odd}),
    }
  }

  /** "gas mark 5/190 °C", whose figures are one token at `k`: the mark, with the degrees beside it; null where they are none. */
  #markAndDegrees(from: number, k: number): Heat | null {
    const [, mark, figure] = /^(\d{1,2})\/(\d{3})$/.exec(this.word(k)) ?? []
    const marked = celsiusOfGasMark(Number(mark))
    if (figure === undefined || marked === null) return null
    const unit = this.#unit(k + 1)
    const scale = unit === null || unit.unit === '' ? this.#scale(Number(figure), false).scale : unit.unit
    const celsius = scale === 'f' ? celsiusOfFahrenheit(Number(figure)) : Number(figure)
    const one = {from, notes: [], explicit: true}
    return {
      ...one,
      end: k + 1,
      low: marked,
      high: marked,
      sources: ['gas-mark-table'],
      also: {
        ...one,
        end: unit?.end ?? k + 1,
        low: celsius,
        high: celsius,
        sources: scale === 'f' ? ['receipt', 'nist-sp811'] : ['receipt'],
      },
    }
  }

  /** Whether nothing at `k` makes of the figure before it an amount: "reduce to 350 ml". */
  #endsHeat(k: number): boolean {
    const token = this.tokens[k]
    return (
      token === undefined ||
      token.block !== this.tokens[k - 1]!.block ||
      (token.kind === 'mark' && !/^[%x×/-]$/.test(token.word)) ||
      AFTER_SCALE.test(token.word)
    )
  }

  /** "while the oven heats to 450", "heat the oven, with the pan in it, to 230": the oven is named before in the same sentence. */
  #heatsTo(from: number): boolean {
    if (!/^(?:to|auf)$/.test(this.word(from - 1)) || !HEATS.has(this.word(from - 2))) return false
    const low = this.floor(from, 12)
    for (let k = from - 2; k >= low; k--) if (OVENS.has(this.word(k))) return true
    return false
  }

  /** "180 zonk for 40 minutes": whether the word at `k`, behind a figure, can only be meant as its scale. */
  #isOdd(k: number): boolean {
    const token = this.tokens[k]
    const before = this.tokens[k - 1]!
    if (token?.kind !== 'word' || token.block !== before.block || token.joined || NO_SCALE.has(token.word)) return false
    if (OVENS.has(token.word) || BAKES.has(token.word) || FAN_AFTER.has(token.word) || /(?:ed|ly|ing)$/.test(token.word))
      return false
    if (linesApart(this.section, before, token)) return false
    const next = this.tokens[k + 1]
    return next === undefined || next.block !== token.block || next.kind === 'mark' || AFTER_SCALE.test(next.word)
  }

  /** "180 °C Umluft 160 °C": the fan is the lower figure's behind it, on the same scale. */
  #fansNext(k: number, figure: number, scale: 'f' | 'c' | ''): boolean {
    const next = this.tokens[k]
    return next?.kind === 'number' && next.den === 1 && next.num >= 100 && next.num < figure && this.#unit(k + 1)?.unit === scale
  }

  /** "230/210 °C", "230/210 °C (plain/fan)": the plain oven's figure, with the fan's in the note; null where none stands there. */
  #plainAndFan(i: number): Heat | null {
    const tokens = this.tokens
    const first = tokens[i]
    if (first === undefined || first.kind !== 'number') return null
    let figures = /^(\d{3})\/(\d{3})$/.exec(first.word)?.slice(1).map(Number)
    let k = i + 1
    if (figures === undefined) {
      const second = tokens[i + 2]
      if (first.den !== 1 || this.word(i + 1) !== '/' || second === undefined || second.kind !== 'number') return null
      if (second.den !== 1 || second.block !== first.block) return null
      figures = [first.num, second.num]
      k = i + 3
    }
    const unit = this.#unit(k)
    if (unit === null || tokens[k]!.block !== first.block) return null
    const most = Math.max(...figures)
    if (Math.min(...figures) < 90 || most > 600) return null
    const scale = unit.unit === '' ? this.#scale(most, false).scale : unit.unit
    const [fan, plain] = figures.map((n) => (scale === 'f' ? celsiusOfFahrenheit(n) : n)).sort((a, b) => a - b) as [
      number,
      number,
    ]
    // "(plain/fan)", "fan", "(fan)" behind it, or "fan" close before.
    let end = unit.end
    let named = false
    const open = this.word(end) === '('
    for (let j = open ? end + 1 : end; j < end + 7 && tokens[j]?.block === first.block; j++) {
      const word = this.word(j)
      if (FAN_AFTER.has(word)) named = true
      else if (!/^(?:plain|conventional|static|normal|oven|forced|assisted|with|top|bottom|heat|and|or|\/)$/.test(word)) {
        if (named) end = open && word === ')' ? j + 1 : open ? end : j
        break
      }
    }
    for (let j = this.floor(i, 4); j < i; j++) if (FAN_AFTER.has(this.word(j))) named = true
    const apart = plain - fan
    if (named ? apart <= 0 || apart > FAN_MOST : apart < FAN_LESS[0] - 0.5 || apart > FAN_LESS[1] + 0.5) return null
    const sources = scale === 'f' ? ['receipt', 'nist-sp811', 'fan-oven'] : ['receipt', 'fan-oven']
    return {
      from: i,
      end,
      low: plain,
      high: plain,
      explicit: true,
      notes: [`${Math.round(plain)} °C in a plain oven, ${Math.round(fan)} °C with a fan`],
      sources,
    }
  }

  #unit(k: number): {unit: 'f' | 'c' | ''; end: number} | null {
    const t = this.tokens[k]
    if (t === undefined) return null
    const letter = (at: number): {unit: 'f' | 'c'; end: number} | null => {
      const u = this.tokens[at]
      if (u === undefined) return null
      const after = this.tokens[at + 2]
      const stop =
        this.word(at + 1) === '.' &&
        this.tokens[at + 1]!.start === u.end &&
        after !== undefined &&
        after.block === u.block &&
        !after.capital
          ? at + 2
          : at + 1
      if (u.word === 'f' || u.word === 'fahr') return {unit: 'f', end: stop}
      if (u.word === 'fahrenheit' || u.word === 'farenheit') return {unit: 'f', end: at + 1}
      if (u.word === 'c' || u.word === 'cent') return {unit: 'c', end: stop}
      if (u.word === 'celsius' || u.word === 'centigrade' || u.word === 'celcius') return {unit: 'c', end: at + 1}
      return null
    }
    if (t.word === '℉') return {unit: 'f', end: k + 1}
    if (t.word === '℃') return {unit: 'c', end: k + 1}
    if (t.word === '°') {
      const u =
        this.tokens[k + 1]?.gap === true && !/^(?:f|c|fahrenheit|celsius|centigrade|fahr)$/.test(this.word(k + 1))
          ? null
          : letter(k + 1)
      return u ?? {unit: '', end: k + 1}
    }
    if (t.word === 'degrees' || t.word === 'degree' || t.word === 'deg' || t.word === 'degs' || t.word === 'grad') {
      let at = k + 1
      if (this.word(at) === '.' && /^deg/.test(t.word) && t.word.length < 6) at++
      if (this.word(at) === 'of') at++
      return letter(at) ?? {unit: '', end: k + 1}
    }
    // "350F", "180 C": a capital, or close to the figure.
    if ((t.word === 'f' || t.word === 'c') && t.kind === 'word' && (t.capital || !t.gap)) return {unit: t.word, end: k + 1}
    if (t.word === 'fahrenheit' || t.word === 'celsius') return {unit: t.word === 'celsius' ? 'c' : 'f', end: k + 1}
    return null
  }

  /** Which scale a figure without one is on: by its size, then by the receipt's place and year. */
  #scale(n: number, fan: boolean): {scale: 'f' | 'c'; note: string | null} {
    if (n > 300) return {scale: 'f', note: 'no scale written: read as °F, too hot for °C'}
    const {place, year} = this.section.facts
    if (place === 'us') return {scale: 'f', note: 'no scale written: read as °F, an American receipt'}
    if (year !== undefined && year < 1960) return {scale: 'f', note: 'no scale written: read as °F, by its year'}
    if (place !== undefined || fan) return {scale: 'c', note: 'no scale written: read as °C'}
    if (n < 225) return {scale: 'c', note: 'no scale written: read as °C; if it is °F, write “oven: … °F” in the front matter'}
    if (n > 250) return {scale: 'f', note: 'no scale written: read as °F; if it is °C, write “oven: … °C” in the front matter'}
    return {scale: 'c', note: 'no scale written: read as °C; if it is °F, write “oven: … °F” in the front matter'}
  }

  /** Whether degrees are the oven's and not the milk's, the syrup's or the crumb's. */
  #ofOven(from: number, end: number, members: readonly Heat[], baking: boolean): boolean {
    if (members.some((m) => m.sources.includes('gas-mark-table') || m.sources.includes('fan-oven'))) return true
    const {low: coolest} = members[0]!
    if (coolest < LEAST_DRYING.c || members[members.length - 1]!.high > HOTTEST) return false
    if (coolest < LEAST_OVEN) return dryingOf(this.tokens, from) >= 0
    // "Bake to 190 °F internal"
    if (/^(?:internal|inside|core|innen)$/.test(this.word(end))) return false
    if (baking && members[0]!.low >= LEAST_CHANGED && this.#isChanged(from)) return true
    if (coolest < HOTTEST_CRUMB && this.#isReached(from)) return false
    const low = this.floor(from, 14)
    for (let k = from - 1; k >= low; k--) {
      const word = this.word(k)
      if (
        OVENS.has(word) ||
        BAKES.has(word) ||
        word === 'preheat' ||
        word === 'preheated' ||
        word === 'heated' ||
        word === 'roast'
      )
        return true
      if (DRIES.has(word) && BEFORE_DRYING.test(this.word(from - 1))) return true
      if (INSIDE_WORDS.has(word) && !this.#isLeft(k) && !isBath(word, coolest)) return false
    }
    const high = this.limit(end < this.tokens.length ? end : from, 10)
    for (let k = end; k < high; k++) {
      const word = this.word(k)
      if (OVENS.has(word) || BAKES.has(word) || IN_OVEN.has(word)) return true
      if (INSIDE_WORDS.has(word) && !isBath(word, coolest)) return false
      if (this.tokens[k]!.block !== this.tokens[from]!.block) break
    }
    if (coolest <= HOTTEST_DRYING.c) return dryingOf(this.tokens, from) >= 0
    return ((baking || this.#besideTime(from, end)) && coolest >= 120) || isCookedAt(this.tokens, from, coolest)
  }

  /** "then lower to 210 °C", "turn the heat down to 180", "raise it to 220 °C": the oven's, whatever stands behind. */
  #isChanged(from: number): boolean {
    if (!/^(?:to|auf)$/.test(this.word(from - 1))) return false
    const low = this.floor(from, 6)
    for (let k = from - 2; k >= low; k--) if (CHANGES.has(this.word(k))) return true
    return false
  }

  /** "until the chicken reaches 74 °C", "till it registers 165 °F", "bis 75 °C erreicht sind": what is baked is so hot within, and no oven. */
  #isReached(from: number): boolean {
    const near = this.floor(from, 3)
    let reached = -1
    for (let k = from - 1; k >= near && reached < 0; k--) if (REACHES.has(this.word(k))) reached = k
    const low = this.floor(from, 10)
    for (let k = (reached < 0 ? from : reached) - 1; k >= low; k--) {
      const word = this.word(k)
      if (OVENS.has(word) || this.tokens[k]!.kind === 'mark') return false
      if (UNTIL.has(word)) return reached >= 0 || (k === from - 1 && BEHIND_INSIDE.has(this.word(this.#pastUnit(from))))
    }
    return false
  }

  /** The token behind a figure at `from` and its unit. */
  #pastUnit(from: number): number {
    return this.#unit(from + 1)?.end ?? from + 1
  }

  /** "Bake straight from the fridge at 245 °C": where it comes from. */
  #isLeft(k: number): boolean {
    if (!/^(?:fridge|freezer|refrigerator)$/.test(this.word(k))) return false
    const before = this.word(k - 1)
    return before === 'from' || (before === 'the' && /^(?:from|of)$/.test(this.word(k - 2)))
  }

  /** "425° 15 min.", "225 °C, 5–8 min": so hot for so long is an oven, whatever the words beside it. */
  #besideTime(from: number, end: number): boolean {
    const low = this.floor(from, 8)
    const high = this.limit(end < this.tokens.length ? end : from, 8)
    // A German pot is given no degrees: "30 Minuten bei 220 °C anbraten" is done in the oven.
    const inOven = this.word(from - 1) === 'bei'
    for (let k = low; k < high; k++) if (POT_WORDS.has(this.word(k)) && !(inOven && MEAT_TOO.has(this.word(k)))) return false
    for (let k = low; k < high; k++)
      if (
        this.tokens[k]!.kind === 'number' &&
        /^(?:min|mins|minutes?|minuten|h|hrs?|hours?|stunden?|['′])$/.test(this.word(k + 1))
      )
        return true
    return false
  }
}
