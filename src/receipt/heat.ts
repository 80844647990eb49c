import {bandOf, DegreeReader} from './degrees.js'
import {readBake} from './heat-bake.js'
import {readAsFor, readCompany} from './heat-comparison.js'
import {readAfter, readDrawn} from './heat-drawn.js'
import {isFallenTo} from './heat-fallen.js'
import {isBakingStove, readFire, readFixed, readHeatNoun} from './heat-fire.js'
import {readOven} from './heat-oven.js'
import {HeatReadings, type UnknownHeat} from './heat-readings.js'
import {readTest} from './heat-tests.js'
import {BAKES, FAN_AFTER, FIXED, OVENS} from './heat-words.js'
import {plainSection, type Section} from './section.js'
import type {OvenPhrase, ReceiptFacts} from './types.js'

export {bandOf, celsiusOfFahrenheit, celsiusOfGasMark} from './degrees.js'

/**
 * Every phrase of a receipt that says how hot the oven or the baking is: words with their hedges, degrees, gas marks, comparisons with
 * other bakings, and the tests by flour, paper and hand. A fire under a pot and a Dutch oven say nothing of the oven and are passed over.
 */

/**
 * Read the heat of one receipt.
 *
 * @param section the receipt's blocks and tokens
 * @param unknown where to put words before "oven" that no row knows
 * @returns phrases in the order of the text, none overlapping; °C are baking temperatures
 */
export function readHeat(section: Section, unknown: UnknownHeat[] = []): OvenPhrase[] {
  return new HeatReader(section, unknown).read()
}

/** What a word may begin or belong to. */
type Trigger = 'oven' | 'bake' | 'degrees' | 'heat' | 'after' | 'for' | 'drawn' | 'with' | 'test' | 'fixed'

const TRIGGERS = new Map<string, Trigger>()
for (const word of FIXED.next?.keys() ?? []) TRIGGERS.set(word, 'fixed')
const triggered: ReadonlyArray<readonly [Trigger, Iterable<string>]> = [
  ['oven', OVENS],
  ['bake', BAKES],
  ['degrees', ['gas', 'mark', 'regulo', 'reg', ...FAN_AFTER]],
  ['heat', ['heat', 'heats', 'temperature', 'stove', 'fire']],
  ['after', ['after', 'when', 'soon', 'once']],
  ['for', ['for']],
  ['drawn', ['drawn']],
  ['with', ['with']],
  ['test', ['flour', 'meal', 'paper', 'hand', 'arm']],
]
for (const [trigger, list] of triggered) for (const word of list) TRIGGERS.set(word, trigger)

/** Goes to every word that may tell of heat, and to what reads it. */
class HeatReader extends HeatReadings {
  #baking = false
  #degreeReader: DegreeReader | null = null

  /** All phrases, in the order of the text. */
  read(): OvenPhrase[] {
    const tokens = this.tokens
    const triggers: number[] = []
    for (let i = 0; i < tokens.length; i++) {
      const t = tokens[i]!
      if (t.kind === 'number') triggers.push(i)
      else if (t.kind === 'word') {
        const trigger = TRIGGERS.get(t.word)
        if (trigger === undefined) continue
        triggers.push(i)
        if (trigger === 'oven' || trigger === 'bake' || t.word === 'drawn') this.#baking = true
      }
    }
    let next = 0
    for (const i of triggers) {
      if (i < next) continue
      const t = tokens[i]!
      const trigger = t.kind === 'number' ? 'degrees' : TRIGGERS.get(t.word)!
      if (trigger === 'degrees') next = this.#degrees(i)
      else if (this.#baking) this.#read(trigger, i)
    }
    return this.merged()
  }

  /** What the word at token `i` may begin or belong to. */
  #read(trigger: Trigger, i: number): void {
    const t = this.word(i)
    switch (trigger) {
      case 'oven':
        readOven(this, i)
        break
      case 'bake':
        readBake(this, i)
        if (/^(?:to|will|would)$/.test(this.word(i - 1))) readAsFor(this, i)
        break
      case 'heat':
        if (t === 'fire') readFire(this, i)
        else if (t === 'stove' && isBakingStove(this, i)) readOven(this, i)
        else readHeatNoun(this, i)
        break
      case 'after':
        readAfter(this, i)
        break
      case 'for':
        readAsFor(this, i)
        break
      case 'drawn':
        readDrawn(this, i)
        break
      case 'with':
        if (/^(?:in|oven)$/.test(this.word(i - 1))) readCompany(this, i, this.limit(i, 6))
        break
      case 'test':
        readTest(this, i)
        break
      default:
        readFixed(this, i)
    }
    if (trigger !== 'fixed' && trigger !== 'heat' && FIXED.next?.has(this.word(i))) readFixed(this, i)
  }

  /** Degrees at token `i`; the token to go on from. */
  #degrees(i: number): number {
    this.#degreeReader ??= new DegreeReader(this.section)
    const read = this.#degreeReader.degrees(i, this.#baking)
    if (read === null) return i + 1
    const odd = read.ofOven && read.odd >= 0 ? this.tokens[read.odd]! : null
    if (odd !== null) this.unknown.push({text: this.section.source.slice(odd.start, odd.end), start: odd.start, end: odd.end})
    if (read.ofOven)
      this.found.push({...read, band: bandOf(read.low, read.high), rank: 8, fallenTo: isFallenTo(this, read.from, read.to)})
    return read.to
  }
}

/** A heat that the dish may want: none said with an “if”, none that the receipt warns of, and no word that no row knows. */
export const isWanted = ({condition, against, known}: OvenPhrase): boolean =>
  condition !== true && against !== true && known !== false

/** Heat given in degrees or a gas mark, and not in words: no word stands for so few °C. */
export const isFigure = ({celsius: {low, high}}: OvenPhrase): boolean => high - low <= 15

/**
 * Heat stated by itself, as front matter's `oven` states it: "a quick oven", "quick", "350 °F", "gas mark 4", "after the bread is drawn".
 *
 * @param unknown is given the words that stand for a heat, or as its scale, and are not known
 * @returns the first phrase read, or null where the words say nothing of heat; offsets are into `text`
 */
export function readHeatWords(text: string, facts: ReceiptFacts = {}, unknown: UnknownHeat[] = []): OvenPhrase | null {
  if (text.length > 200) return null
  const read = (words: string): OvenPhrase | null =>
    readHeat(plainSection(words, facts), unknown).find((phrase) => phrase.known !== false) ?? null
  const direct = read(text)
  if (direct !== null) return direct
  // "quick", "350", "gently": the key says that it is the oven's.
  for (const [before, after] of [
    ['a ', ' oven'],
    ['oven at ', ''],
    ['oven ', ''],
    ['bake ', ''],
  ] as const) {
    const found = read(`${before}${text}${after}`)
    if (found !== null) return {...found, text, start: 0, end: text.length}
  }
  return null
}
