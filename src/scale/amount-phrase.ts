import Fraction from 'fraction.js'
import {asked as words} from '../lexicon/asked-words.js'
import {bundles, cardinals} from '../lexicon/grammar-words.js'
import {lookUpMeasure, measureOf, fold as singular} from '../lexicon/index.js'
import {germanYields} from '../lexicon/yield-words.js'
import {MODERN_YEAR} from '../measure/frame.js'
import {parseLength, parseMass} from '../measure/quantity.js'
import {fold} from '../receipt/section.js'
import {readVessel, type VesselSize} from '../receipt/vessel.js'
import {heldAsStated} from '../receipt/vessel-held.js'
import {volumeText} from '../receipt/vessel-volumes.js'
import {isNumberWord, numberAt, phraseLength} from './asked-number.js'
import {floorShare} from './floor-share.js'
import {namedVessel} from './named-vessel.js'

/**
 * A vessel that a day names. `unsized`: it names it without a size, and this is the usual one. `holds`: its sizes are reckoned from what it is said to
 * hold.
 */
export interface NamedWithSize {
  readonly size: VesselSize
  readonly name: string
  readonly unsized?: true
  readonly anyDepth?: true
  readonly holds?: {readonly said: string; readonly brim: string}
}

/** How much a day asks of a receipt, and in what it is to be baked where that is another vessel than the receipt's. */
export type Asked = Quantity & {
  readonly vessel?: NamedWithSize
  /** A vessel named behind “in” or “on” without its size, as written: "tins", "the bricks". */
  readonly named?: string
  /** In how many of them, where the amount is said beside ("3 lb in 2 square 8 in tins"), and which word of the text says so. */
  readonly among?: {
    readonly count: number
    readonly word: number
    /** The number is not the day's, but how many they fill. */
    readonly filled?: true
  }
}

type Quantity =
  | {readonly kind: 'people'; readonly people: number}
  /**
   * Vessels, or pieces where a vessel holds many ("36 rolls"). `of` is the noun, as written; `each` what one weighs ("six 4-lb loaves"),
   * `across` how wide it is ("two 10-inch pies").
   */
  | {
      readonly kind: 'count'
      readonly count: number
      readonly of: string
      readonly each?: {readonly kilograms: number; readonly baked: boolean}
      readonly across?: {readonly metres: number; readonly said: string}
    }
  /** So many times the receipt as it stands. */
  | {readonly kind: 'times'; readonly times: Fraction}
  /** Weight of the mixture before it is baked, kg; of what comes out of the oven where that is what is asked for: `baked` is its noun. */
  | {readonly kind: 'weight'; readonly kilograms: number; readonly baked?: string}
  /** As many as stand on the floor at once, or such a share of them; more than one is more than one load. */
  | {readonly kind: 'floor'; readonly share?: Fraction}

export type AskedResult =
  | {readonly ok: true; readonly value: Asked}
  /** `word`: which word of the text is at fault, from 0; absent where it is the whole. */
  | {readonly ok: false; readonly reason: string; readonly suggest: string; readonly word?: number}

const vulgar: Readonly<Record<string, string>> = {'½': '1/2', '¼': '1/4', '¾': '3/4', '⅓': '1/3', '⅔': '2/3'}
const example = 'write “12 loaves”, “for 40”, “2 times”, “3 kg” or “fill the floor”'

const wordsOf = (text: string): number => text.split(/\s+/).filter((word) => word !== '').length
/** "four-pound", "ten-inch" */
const hyphened = /(?<=^| )([a-z]+)-(inch|inches|lbs?|pounds?|kilos?|ounces?|oz|kg|g|cm)(?![a-z])/g

/** "12 half loaves" are neither twelve nor six: which word says so; null where none does. */
function halved(plain: string): number | null {
  const all = plain.split(' ')
  const at = all.findIndex((word, i) => {
    const before = all[i - 1] ?? ''
    return word === 'half' && (/^\d+$/.test(before) || (cardinals[before] ?? 1) > 1) && !Object.hasOwn(bundles, all[i + 1] ?? '')
  })
  return at < 0 ? null : at
}

const articles = /^(?:an?|the|einer?|einem|der|dem|den) /

/** "24 half-pint cups", "2 half-sheet trays": a share of a unit or of a vessel, and no half of the number before it. */
const partOfUnit = /^(?:half|quarter)-(?!dozen|score|hundred|a-)[a-z]/

/** A size as a vessel's name gives it: "26 cm", "9 x 5 x 3 in", "8-inch". */
const sizeIn = /\d[ -]?(?:cm|mm|m|in|inch|inches|ft|feet|foot)(?![a-z])/

/** What a vessel holds as its name gives it: "4-quart crock", "crocks of 2 litres". */
const volumeIn =
  /(?:\d|\b(?:one|two|three|four|five|six|eight|ten|twelve|half))[ -]?(?:quarts?|qts?|pints?|pts?|gallons?|gals?|cups?|lit(?:re|er)s?|l|ml|cl|fl)(?![a-z])/

/** What stands behind the “in” of inches, and not behind that of a vessel. */
const ofSize: ReadonlySet<string> = new Set(['x', '×', 'by', 'deep', 'high', 'wide', 'across'])

/** Words that are a vessel's own name: a figure before them counts vessels and is no size. */
const counts = /^(\d{1,3}|\p{L}+) (?:[x×] (?!\d))?(?=\S)(?!(?:[x×]|by|cm|mm|m|in|inch|inches|ft|feet|foot|\d+\/\d+)\b)/u

/** “4 × 8 inch tins”: several tins of one size, where “9 x 13 in pan” is one of two. */
const severalOfSize = /^(\d{1,3}) ?[x×] ?(\d{1,3}(?:[./]\d{1,2})?[ -]?(?:cm|in|inch|inches)\b(?! ?[x×]).*\p{L}(?:s|formen))$/u

/** How many vessels the head of a text counts, and what stands behind that; null where it counts none. */
function vesselCount(text: string): {readonly many: number; readonly rest: string} | null {
  const lead = counts.exec(text)
  // "4 quart crock" is one.
  if (lead === null || text.search(volumeIn) === 0) return null
  const word = fold(lead[1]!)
  if (/^\d+$/.test(word) && !Object.hasOwn(bundles, fold(/^\p{L}+/u.exec(text.slice(lead[0].length))?.[0] ?? '')))
    return {many: Number(word), rest: text.slice(lead[0].length)}
  const number = isNumberWord(word) || /^\d/.test(word) ? numberAt(text) : null
  if (number === null || number.value.d !== 1n || !number.high.equals(number.value)) return null
  return words.length.has(/^\p{L}*/u.exec(number.rest)![0]) ? null : {many: number.value.valueOf(), rest: number.rest}
}

/**
 * A vessel with its size, and how many of them: "2 round tins 26 cm x 7 cm", "a 13 x 9 in pan", "2 × loaf 9 x 5 x 3 in"; null where the
 * text names none or says no size.
 */
function vesselsIn(plain: string): {count: number | null; vessel: NonNullable<Asked['vessel']>} | null {
  const text = plain.replace(/^one /, '').replace(articles, '')
  const counted = vesselCount(text)
  const many = counted?.many ?? null
  const rest = (counted?.rest ?? text).replace(/^of /, '')
  if (!sizeIn.test(rest) && !volumeIn.test(rest)) return null
  const read = readVessel(rest, {year: MODERN_YEAR, place: null})
  if (!read.ok || read.unknown !== undefined) return null
  if (read.holds !== undefined && read.measure !== undefined) {
    const name = heldAsStated(read.value, read.measure)
    const vessel = {size: read.value, name, holds: {said: rest, brim: volumeText(read.holds)}}
    return {count: many ?? (text === plain ? null : 1), vessel}
  }
  if (!sizeIn.test(rest)) return null
  const vessel = {size: read.value, name: nameOf(rest, read.value), ...(read.anyDepth ? {anyDepth: true as const} : {})}
  return {count: many ?? (text === plain ? null : 1), vessel}
}

/** A vessel without its size behind “in” or “on”, and how many where that is said: "2 sheets", "loaf tins", "the bricks"; null where none is named. */
function bareVessels(plain: string): {readonly count: number | null; readonly named: string} | null {
  const counted = vesselCount(plain)
  if (counted !== null && counted.many === 0) return null
  const named = counted?.rest ?? plain
  const one = named.replace(articles, '')
  const known = words.vessel.has(singular(germanYields.get(fold(one)) ?? one)) || namedVessel(named) !== null
  if (!known) return null
  return {count: counted?.many ?? null, named}
}

/** What one such vessel is called: its shape and its sizes, as front matter writes them. */
function nameOf(text: string, {shape}: VesselSize): string {
  const plain = text
    .replace(/\b(?:tins?|pans?|dish(?:es)?|mou?lds?)\b/g, '')
    .replace(/\bloaves\b/g, 'loaf')
    .replace(/\b(plate|crock|sheet|pot|jar)s\b/g, '$1')
    .replace(/ +/g, ' ')
    .trim()
  return /^[\d ]/.test(plain) && !/[a-z]{4}/.test(plain.replace(/inch(?:es)?/g, '')) ? `${shape} ${plain}` : plain
}

/**
 * Read what follows a link of a day: "12 loaves", "3 crocks", "half a dozen pies", "for 40", "2 times", "double", "3 kg", "fill the
 * floor"; null means for the day's people. Each may name another vessel with its size: "for 40 in round 10 in x 2 in", "in 2 round tins
 * 26 cm x 7 cm", "3 square 8 in tins"; or in how many of its own: "24 rolls on 2 sheets".
 *
 * @param text as written, or null
 * @param people how many the day expects
 * @param makes what the receipt makes, to be named where the text counts nothing
 */
export function readAsked(text: string | null, people: number, makes = 'loaves'): AskedResult {
  if (text === null || text.trim() === '') return {ok: true, value: {kind: 'people', people}}
  if (text.length > 80) return {ok: false, reason: 'this is too long to be an amount', suggest: example}
  const plain = text
    .toLowerCase()
    .replace(/[½¼¾⅓⅔]/g, (c) => ` ${vulgar[c]}`)
    // "2 10″ cakes"
    .replace(/(\d) ?["”″]/g, '$1-inch')
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/[.,;]{1,9}$/, '')
    // "Twenty four-pound loaves" are no twenty-four.
    .replace(hyphened, (said, word: string, unit: string) =>
      cardinals[word] === undefined ? said : `${cardinals[word]}-${unit}`,
    )
  const half = halved(plain)
  if (half !== null)
    return {
      ok: false,
      reason: `“half” in “${text}” is not read`,
      suggest: 'write how many whole ones that makes, or “half the receipt”',
      word: half,
    }
  const all = plain.split(' ')
  const part = all.findIndex((word) => partOfUnit.test(word))
  if (part >= 0)
    return {
      ok: false,
      reason: `“${all[part]}” in “${text}” is not read`,
      suggest: 'write the size out, such as “6 loaves of 8 oz”, “24 cups” or “in 4 crocks 9 in x 7 in”',
      word: part,
    }
  if (phraseLength(all, (phrase) => words.noNumber.has(phrase)) > 0)
    return {ok: false, reason: `“${text}” is no number`, suggest: example}
  const split = all.findIndex((word, i) => (word === 'in' || word === 'on' || word === 'auf') && !ofSize.has(all[i + 1] ?? 'x'))
  const other = split < 0 ? null : vesselsIn(all.slice(split + 1).join(' '))
  if (other !== null) {
    const {count, vessel} = other
    const before = all.slice(0, split).join(' ').replace(/,$/, '')
    if (count === 0) return {ok: false, reason: `“${text}” is nothing to bake`, suggest: `${example}, or take the line out`}
    if (before === '') {
      return {ok: true, value: {kind: 'count', count: count ?? 1, of: 'tins', vessel}}
    }
    const amount = readAsked(before, people, makes)
    if (!amount.ok) return amount
    // "For 40 in a round 26 cm tin" says in what, and not in how many.
    if (count === null || articles.test(`${all[split + 1]!} `)) return {ok: true, value: {...amount.value, vessel}}
    // A vulgar fraction is a word more here than as written.
    const word = all.length === wordsOf(text) ? split + 1 : 0
    if (amount.value.kind === 'floor') return fillsNoNumber(text, word)
    return {ok: true, value: {...amount.value, vessel, among: {count, word}}}
  }
  const bare = split < 0 ? null : bareVessels(all.slice(split + 1).join(' '))
  if (bare !== null) {
    const {count, named} = bare
    const before = all.slice(0, split).join(' ').replace(/,$/, '')
    if (before === '' && count === null)
      return {
        ok: false,
        reason: `“${text}” says neither how many nor their size`,
        suggest: 'write both, such as “in 2 loaf tins 9 x 5 x 3 in”, or how many, such as “4 loaves on the bricks”',
      }
    if (before === '') return {ok: true, value: {kind: 'count', count: count!, of: named, named}}
    const amount = readAsked(before, people, makes)
    if (!amount.ok) return amount
    if (count === null) return {ok: true, value: {...amount.value, named}}
    const word = all.length === wordsOf(text) ? split + 1 : 0
    if (amount.value.kind === 'floor') return fillsNoNumber(text, word)
    return {ok: true, value: {...amount.value, named, among: {count, word}}}
  }
  const own = vesselsIn(plain.replace(severalOfSize, '$1 $2'))
  if (own !== null && own.count !== null && own.count > 0)
    return {ok: true, value: {kind: 'count', count: own.count, of: 'tins', vessel: own.vessel}}
  const floor = floorShare(plain)
  if (floor !== null) {
    if ('range' in floor) return {ok: false, reason: `“${text}” is a range`, suggest: 'write “fill the floor”, or how many'}
    return {ok: true, value: {kind: 'floor', ...(floor.share.equals(1) ? {} : {share: floor.share})}}
  }
  if (/^[-−]/.test(plain)) return {ok: false, reason: `an amount cannot be negative: “${text}”`, suggest: example}
  const said = fold(plain).replace(/^(?:the|das|die|den) /, '')
  const often = words.soOften.get(said) ?? words.soOften.get(withoutReceipt(said))
  if (often !== undefined) return {ok: true, value: {kind: 'times', times: new Fraction(often)}}
  const behindFor = feeding(plain)
  if (behindFor !== null && words.everyone.has(fold(behindFor))) return {ok: true, value: {kind: 'people', people}}
  const number = numberAt((behindFor ?? plain).replace(/^(?:the|das|die|den) /, '').replace(/ (?:of )?the (?=\p{L}+$)/u, ' '))
  if (number === null) return {ok: false, reason: `“${text}” is not an amount`, suggest: example}
  const value = number.value.valueOf()
  const rest = number.rest.replace(/^(?:of|an?) (?=\p{L})/u, '')
  const unit = measureOf(rest.split(' '))?.row
  if (unit && words.measure.has(unit.id) && behindFor === null)
    return {
      ok: false,
      reason: `“${text}” is a measure that no amount is read in`,
      suggest: 'write a weight in lb or kg, such as “6 lb of dough” or “3 kg”, how many, or “2 times”',
    }
  if (number.high.compare(number.value) > 0)
    return {
      ok: false,
      reason: `“${text}” is a range`,
      suggest: `write one number, such as “${behindFor === null ? '' : 'for '}${number.high.toFraction(true)}${rest === '' ? (behindFor === null ? ' loaves' : '') : ` ${rest}`}”`,
    }
  if (!(value > 0)) return {ok: false, reason: `“${text}” is nothing to bake`, suggest: `${example}, or take the line out`}
  if (value > 100000) return {ok: false, reason: `“${text}” is more than any oven bakes`, suggest: example}
  const folded = fold(rest)
  if (behindFor !== null || words.persons.has(folded)) {
    if (behindFor !== null && rest !== '' && !words.persons.has(folded)) {
      return {ok: false, reason: `“${text}” is not an amount`, suggest: example, word: wordsOf(text) - wordsOf(rest)}
    }
    if (value < 1)
      return {
        ok: false,
        reason: `“${text}” is a share of the people, and no number`,
        suggest: `write how many that is: “for ${Math.ceil(value * people)}”`,
      }
    if (value % 1 !== 0) return {ok: false, reason: `“${text}”: people come whole`, suggest: `write “for ${Math.ceil(value)}”`}
    return {ok: true, value: {kind: 'people', people: value}}
  }
  if (words.times.has(withoutReceipt(folded)) || words.receipt.has(folded))
    return {ok: true, value: {kind: 'times', times: number.value}}
  if (rest === '') {
    if (value < 1 || (plain.includes('/') && value % 1 !== 0)) return {ok: true, value: {kind: 'times', times: number.value}}
    const n = number.value.toFraction(true)
    // Neither vessels nor people come in parts.
    const suggest =
      value % 1 === 0
        ? `write “${n} ${makes}”, “for ${n}” or “${n} times”`
        : `write “${Math.ceil(value)} ${makes}” or “${n} times”`
    return {ok: false, reason: `“${text}” does not say of what`, suggest}
  }
  return massOf(text, number.value, rest) ?? countOf(text, number.value, rest)
}

const fillsNoNumber = (text: string, word: number): AskedResult => ({
  ok: false,
  reason: `“${text}” is to fill the floor, and says in how many vessels`,
  suggest: 'write “fill the floor in round 26 cm x 7 cm”, or how many',
  word,
})

/** "double the receipt", "2 times the batch": without what is made so often. */
function withoutReceipt(phrase: string): string {
  const all = phrase.split(' ')
  if (all.length < 2 || !words.receipt.has(all.at(-1)!)) return phrase
  all.pop()
  while (all.length > 1 && /^(?:of|the|des|das|die)$/.test(all.at(-1)!)) all.pop()
  return all.join(' ')
}

/** What stands behind "for", "serves", "für" at the head of an amount; null where none of them stands there. */
function feeding(plain: string): string | null {
  const all = plain.split(' ')
  const length = phraseLength(all, (phrase) => words.for.has(phrase))
  return length === 0 ? null : all.slice(length).join(' ')
}

const unitIn = (word: string | undefined): string => fold(word ?? '').replace(/\.$/, '')

/** An amount whose number a unit of weight follows; null where none does. */
function massOf(text: string, number: Fraction, rest: string): AskedResult | null {
  const all = rest.split(' ')
  if (!words.mass.has(unitIn(all[0]))) return null
  let end = 1
  // "2 lb 8 oz"
  while (/^\d+(?:[.,/]\d+)?$/.test(all[end] ?? '') && words.mass.has(unitIn(all[end + 1]))) end += 2
  if (/^\d+(?:oz|g|lb)$/.test(all[end] ?? '')) end++
  const mass = massIn(number, all.slice(0, end).join(' '))
  if (!mass.ok) return mass
  const behind = all.slice(end).join(' ')
  const what = behind.replace(/^of (?:the )?/, '')
  if (what === '' || words.mixture.has(fold(what))) return {ok: true, value: {kind: 'weight', kilograms: mass.kilograms}}
  const odd = oddIn(text, what)
  if (odd !== null) return odd
  const [said, one] = [`${number.toFraction(true)} ${all.slice(0, end).join(' ')}`, all.slice(0, end).join(' ')]
  // "6 lb rolls": six pounds of rolls, or six rolls of a pound.
  if (behind === what && number.valueOf() > 1 && number.valueOf() % 1 === 0 && /(?:[^s]s|brote|laibe)$/.test(what))
    return {
      ok: false,
      reason: `“${text}” may be a weight or a number`,
      suggest: `write “${said} of ${what}” or “${number.toFraction()} ${what} of 1 ${one}”`,
    }
  return {ok: true, value: {kind: 'weight', kilograms: mass.kilograms, baked: what}}
}

/** A weight in kilograms, of a number and its unit in words. */
function massIn(number: Fraction, unit: string): {ok: true; kilograms: number} | {ok: false; reason: string; suggest: string} {
  const plain = unit.replace(/\.$/, '').replace('gramm', 'gram').replace('gramme', 'gram')
  if (/^(?:pfund|pfd)$/.test(plain)) {
    const [size] = lookUpMeasure('pfund')!.sizes
    return {ok: true, kilograms: (number.valueOf() * size!.size.likely) / 1000}
  }
  const mass = parseMass(`${number.toFraction(true)} ${plain}`)
  return mass.ok ? {ok: true, kilograms: mass.value} : mass
}

/** An amount that counts vessels or pieces, with what each weighs or how wide it is. */
function countOf(text: string, number: Fraction, rest: string): AskedResult {
  const value = number.valueOf()
  const all = rest.replace(/^[x×] /, '').split(' ')
  if (words.length.has(fold(all[0]!.split('-')[0]!)))
    return {
      ok: false,
      reason: `“${text}” says a size and no number`,
      suggest: 'write “2 pies of 10 inches”, or the vessel with its sizes: “2 round tins 26 cm x 7 cm”',
    }
  const first = all.findIndex((word) => /^\d/.test(word) || isNumberWord(word.split('-')[0]!))
  const noun = (first <= 0 ? all : all.slice(0, first)).join(' ')
  if (first >= 0) {
    const sized = sizeOfEach(all, first)
    // "2 times, 3 kg" says how much in two ways.
    if (sized !== null && words.times.has(fold(sized.noun)))
      return {
        ok: false,
        reason: `“${text}” says in two ways how much`,
        suggest: `write “${number.toFraction(true)} times” or “${all.slice(first).join(' ')}”`,
      }
    const odd = sized === null ? oddIn(text, all.join(' ')) : oddIn(text, sized.noun)
    if (odd !== null) return odd
    if (sized !== null) return whole(text, value, {kind: 'count', count: value, of: sized.noun, ...sized.size})
  }
  return oddIn(text, noun) ?? whole(text, value, {kind: 'count', count: value, of: noun})
}

const whole = (text: string, value: number, counted: Asked & {kind: 'count'}): AskedResult =>
  value % 1 === 0
    ? {ok: true, value: counted}
    : {ok: false, reason: `“${text}”: vessels come whole`, suggest: `write “${Math.ceil(value)} ${counted.of}”`}

/** What each of some weighs, or how wide it is: "4-lb loaves", "pies of 10 inches each"; null where the number at `first` is neither. */
function sizeOfEach(
  all: readonly string[],
  first: number,
): {readonly noun: string; readonly size: Pick<Asked & {kind: 'count'}, 'each' | 'across' | 'vessel'>} | null {
  // "four-pound", "10-inch": the unit is the same word.
  const inner = numberAt(
    all
      .slice(first)
      .join(' ')
      .replace(/^(\d{1,6})-(?=\p{L})/u, '$1 '),
  )
  if (inner === null || !inner.high.equals(inner.value)) return null
  const [unit = '', ...behind] = inner.rest.split(' ')
  const plain = unitIn(unit)
  const weighs = words.mass.has(plain)
  if (!weighs && !words.length.has(plain)) return null
  const before = all.slice(0, first)
  while (before.length > 0 && words.each.has(fold(before.at(-1)!.replace(/,$/, '')))) before.pop()
  const left = [...behind]
  while (left.length > 0 && phraseLength(left, (phrase) => words.each.has(phrase) || phrase === 'of') > 0)
    left.splice(
      0,
      phraseLength(left, (phrase) => words.each.has(phrase) || phrase === 'of'),
    )
  const mixture = words.mixture.has(fold(left.join(' '))) && before.length > 0
  const noun = (before.length > 0 ? before : left).join(' ').replace(/,$/, '')
  if (noun === '' || (before.length > 0 && left.length > 0 && !mixture)) return null
  if (weighs) {
    const mass = massIn(inner.value, plain)
    return mass.ok ? {noun, size: {each: {kilograms: mass.kilograms, baked: !mixture}}} : null
  }
  const said = `${inner.value.toFraction(true)} ${plain === 'zoll' ? 'in' : plain}`
  const vessel = readVessel(`${noun} ${said}`)
  if (vessel.ok && vessel.unknown === undefined)
    return {noun: 'tins', size: {vessel: {size: vessel.value, name: nameOf(`${noun} ${said}`, vessel.value)}}}
  const metres = parseLength(said)
  return metres.ok ? {noun, size: {across: {metres: metres.value, said}}} : null
}

/** What of a noun is none: the fault is its first word that cannot be one; null where all can. */
function oddIn(text: string, noun: string): AskedResult | null {
  const all = noun.split(' ')
  const from = wordsOf(text) - all.length
  const odd = all.findIndex((word) => !/^\p{L}[\p{L}'’-]*$/u.test(word))
  if (odd >= 0) {
    // "8 loaves (see below)", "8 loaves, 2 of them small"
    const after = /[,;:]$/.test(all[odd]!) ? 1 : 0
    return {ok: false, reason: `“${text}” is not an amount`, suggest: example, word: Math.max(0, from + odd + after)}
  }
  const number = all.findIndex((word) => word.split('-').some((part) => isNumberWord(part) || words.mass.has(fold(part))))
  if (number < 0) return null
  return {
    ok: false,
    reason: `“${all[number]}” in “${text}” is not read`,
    suggest: `${example}; what each weighs or measures as “6 loaves of 4 lb” or “2 pies of 10 inches”`,
    word: Math.max(0, from + number),
  }
}
