import Fraction from 'fraction.js'
import {parseMass} from '../measure/quantity.js'
import {readVessel, type VesselSize} from '../receipt/vessel.js'

/** How much a day asks of a receipt, and in what it is to be baked where that is another vessel than the receipt's. */
export type Asked = Quantity & {
  readonly vessel?: {readonly size: VesselSize; readonly name: string}
  /** In how many of them, where the amount is said beside ("3 lb in 2 square 8 in tins"), and which word of the text says so. */
  readonly among?: {readonly count: number; readonly word: number}
}

type Quantity =
  | {readonly kind: 'people'; readonly people: number}
  /** Vessels, or pieces where a vessel holds many ("36 rolls"). `of` is the noun, as written. */
  | {readonly kind: 'count'; readonly count: number; readonly of: string}
  /** So many times the receipt as it stands. */
  | {readonly kind: 'times'; readonly times: Fraction}
  /** Weight of the mixture before it is baked, kg. */
  | {readonly kind: 'weight'; readonly kilograms: number}
  | {readonly kind: 'floor'}

export type AskedResult =
  | {readonly ok: true; readonly value: Asked}
  /** `word`: which word of the text is at fault, from 0; absent where it is the whole. */
  | {readonly ok: false; readonly reason: string; readonly suggest: string; readonly word?: number}

const names: ReadonlyMap<string, number> = new Map(
  Object.entries({
    a: 1,
    an: 1,
    one: 1,
    two: 2,
    three: 3,
    four: 4,
    five: 5,
    six: 6,
    seven: 7,
    eight: 8,
    nine: 9,
    ten: 10,
    eleven: 11,
    twelve: 12,
    fifteen: 15,
    sixteen: 16,
    eighteen: 18,
    twenty: 20,
    thirty: 30,
    forty: 40,
    fifty: 50,
    sixty: 60,
    hundred: 100,
    half: 0.5,
    dozen: 12,
  }),
)
const vulgar: Readonly<Record<string, string>> = {'½': '1/2', '¼': '1/4', '¾': '3/4', '⅓': '1/3', '⅔': '2/3'}
const example = 'write “12 loaves”, “for 40”, “2 times”, “3 kg” or “fill the floor”'

const wordsOf = (text: string): number => text.split(/\s+/).filter((word) => word !== '').length

/** A number at the head of a text: figures, a vulgar fraction or a word; "half a dozen" is 6. */
function numberAt(text: string): {value: Fraction; rest: string} | null {
  const figures = /^(\d{1,6})[ -](\d{1,3})\/(\d{1,3})\b|^(\d{1,6})\/(\d{1,3})\b|^(\d{1,6}(?:\.\d{1,3}|,\d{1,2}(?!\d))?)/.exec(
    text,
  )
  if (figures !== null) {
    const [all, whole, top, bottom, soloTop, soloBottom, decimal] = figures
    if (Number(bottom ?? soloBottom ?? 1) === 0) return null
    const value =
      whole !== undefined
        ? new Fraction(Number(whole)).add(new Fraction(Number(top), Number(bottom)))
        : soloTop !== undefined
          ? new Fraction(Number(soloTop), Number(soloBottom))
          : new Fraction(decimal?.replace(',', '.') ?? '0')
    return withDozen(value, text.slice(all.length).trimStart())
  }
  if (/^half a dozen\b/.test(text)) return {value: new Fraction(6), rest: text.slice(12).trimStart()}
  const word = /^[a-z]+/.exec(text)?.[0] ?? ''
  const value = names.get(word)
  if (value === undefined) return null
  return withDozen(new Fraction(value), text.slice(word.length).trimStart())
}

const withDozen = (value: Fraction, rest: string): {value: Fraction; rest: string} => {
  const dozen = /^dozens?\b( of)?\s*/.exec(rest)
  return dozen === null ? {value, rest} : {value: value.mul(12), rest: rest.slice(dozen[0].length)}
}

/** A size as a vessel's name gives it: "26 cm", "9 x 5 x 3 in", "8-inch". */
const sizeIn = /\d[ -]?(?:cm|mm|m|in|inch|inches|ft|feet|foot)(?![a-z])/

/** What stands behind the “in” of inches, and not behind that of a vessel. */
const ofSize: ReadonlySet<string> = new Set(['x', '×', 'by', 'deep', 'high', 'wide', 'across'])

/** Words that are a vessel's own name: a figure before them counts vessels and is no size. */
const counts = /^(\d{1,3}|[a-z]+) (?:[x×] (?!\d))?(?=\S)(?!(?:[x×]|by|cm|mm|m|in|inch|inches|ft|feet|foot|\d+\/\d+)\b)/

/**
 * A vessel with its size, and how many of them: "2 round tins 26 cm x 7 cm", "a 13 x 9 in pan", "2 × loaf 9 x 5 x 3 in"; null where the
 * text names none or says no size.
 */
function vesselsIn(plain: string): {count: number | null; size: VesselSize; name: string} | null {
  const text = plain.replace(/^(?:a|an|the|one) /, '')
  const lead = counts.exec(text)
  const many = lead === null ? null : /^\d+$/.test(lead[1]!) ? Number(lead[1]) : (names.get(lead[1]!) ?? null)
  const rest = (many === null || lead === null ? text : text.slice(lead[0].length)).replace(/^of /, '')
  if (!sizeIn.test(rest)) return null
  const read = readVessel(rest)
  if (!read.ok || read.unknown !== undefined) return null
  return {count: many ?? (text === plain ? null : 1), size: read.value, name: nameOf(rest, read.value)}
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
 * 26 cm x 7 cm", "3 square 8 in tins".
 *
 * @param text as written, or null
 * @param people how many the day expects
 */
export function readAsked(text: string | null, people: number): AskedResult {
  if (text === null || text.trim() === '') return {ok: true, value: {kind: 'people', people}}
  if (text.length > 80) return {ok: false, reason: 'this is too long to be an amount', suggest: example}
  const plain = text
    .toLowerCase()
    .replace(/[½¼¾⅓⅔]/g, (c) => ` ${vulgar[c]}`)
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/(?<![.,;])[.,;]+$/, '')
  const words = plain.split(' ')
  const split = words.findIndex((word, i) => (word === 'in' || word === 'on') && !ofSize.has(words[i + 1] ?? 'x'))
  const other = split < 0 ? null : vesselsIn(words.slice(split + 1).join(' '))
  if (other !== null) {
    const {count, size, name} = other
    const vessel = {size, name}
    const before = words.slice(0, split).join(' ').replace(/,$/, '')
    if (count === 0) return {ok: false, reason: `“${text}” is nothing to bake`, suggest: `${example}, or take the line out`}
    if (before === '') {
      return {ok: true, value: {kind: 'count', count: count ?? 1, of: 'tins', vessel}}
    }
    const amount = readAsked(before, people)
    if (!amount.ok) return amount
    // "For 40 in a round 26 cm tin" says in what, and not in how many.
    if (count === null || ['a', 'an', 'the'].includes(words[split + 1]!)) return {ok: true, value: {...amount.value, vessel}}
    // A vulgar fraction is a word more here than as written.
    const word = words.length === wordsOf(text) ? split + 1 : 0
    if (amount.value.kind === 'floor') {
      const reason = `“${text}” is to fill the floor, and says in how many vessels`
      return {ok: false, reason, suggest: 'write “fill the floor in round 26 cm x 7 cm”, or how many', word}
    }
    return {ok: true, value: {...amount.value, vessel, among: {count, word}}}
  }
  const own = vesselsIn(plain)
  if (own !== null && own.count !== null && own.count > 0)
    return {ok: true, value: {kind: 'count', count: own.count, of: 'tins', vessel: {size: own.size, name: own.name}}}
  if (
    /^(?:to )?fill (?:up )?(?:the )?(?:floor|oven)$|^(?:a |the )?(?:full|whole) (?:floor|oven|ovenful)$|^(?:an? )?ovenful$/.test(
      plain,
    )
  ) {
    return {ok: true, value: {kind: 'floor'}}
  }
  if (/^[-−]/.test(plain)) return {ok: false, reason: `an amount cannot be negative: “${text}”`, suggest: example}
  const named = new Map(Object.entries({once: 1, twice: 2, thrice: 3, double: 2, treble: 3, triple: 3}))
  const times = named.get(plain.replace(/ (?:the )?(?:receipt|batch|quantity)$/, ''))
  if (times !== undefined) return {ok: true, value: {kind: 'times', times: new Fraction(times)}}
  const feeding = /^(?:for|to feed|feeds|serves)\s+(?:about )?/.exec(plain)
  const number = numberAt(feeding === null ? plain : plain.slice(feeding[0].length))
  if (feeding !== null && /^(?:all|everyone|everybody|the day|all of us)$/.test(plain.slice(feeding[0].length))) {
    return {ok: true, value: {kind: 'people', people}}
  }
  if (number === null) return {ok: false, reason: `“${text}” is not an amount`, suggest: example}
  const value = number.value.valueOf()
  if (!(value > 0)) return {ok: false, reason: `“${text}” is nothing to bake`, suggest: `${example}, or take the line out`}
  if (value > 100000) return {ok: false, reason: `“${text}” is more than any oven bakes`, suggest: example}
  const rest = number.rest.replace(/^of /, '')
  if (feeding !== null || /^(?:people|persons?|guests?|servings?|portions?|helpings?)$/.test(rest)) {
    if (feeding !== null && rest !== '' && !/^(?:people|persons?|guests?)?$/.test(rest)) {
      return {ok: false, reason: `“${text}” is not an amount`, suggest: example, word: wordsOf(text) - wordsOf(rest)}
    }
    if (value % 1 !== 0) return {ok: false, reason: `“${text}”: people come whole`, suggest: 'write “for 40”'}
    return {ok: true, value: {kind: 'people', people: value}}
  }
  if (
    /^(?:times|x|×|(?:the )?receipts?|batch(?:es)?|(?:times )?the receipt)$/.test(rest) ||
    (rest === 'the receipt' && value < 1)
  ) {
    return {ok: true, value: {kind: 'times', times: number.value}}
  }
  if (rest === '') {
    if (plain.startsWith('half') || plain.includes('/')) return {ok: true, value: {kind: 'times', times: number.value}}
    const n = number.value.toFraction(true)
    return {ok: false, reason: `“${text}” does not say of what`, suggest: `write “${n} loaves”, “for ${n}” or “${n} times”`}
  }
  if (/^(?:kgs?|kilo(?:gram(?:me)?)?s?|g|gram(?:me)?s?|lbs?|pounds?|oz|ounces?)\b/.test(rest)) {
    const mass = parseMass(`${number.value.toFraction(true)} ${rest.replace(/ (?:of )?(?:dough|batter|paste|mixture)$/, '')}`)
    return mass.ok ? {ok: true, value: {kind: 'weight', kilograms: mass.value}} : mass
  }
  if (!/^[\p{L}][\p{L} '’-]*$/u.test(rest)) {
    // "8 loaves (see below)", "8 loaves, 2 of them small": the fault is the first word that is no part of a noun.
    const odd = rest.split(' ').findIndex((word) => !/^[\p{L}][\p{L}'’-]*$/u.test(word))
    const after = /[,;:]$/.test(rest.split(' ')[odd] ?? '') ? 1 : 0
    return {ok: false, reason: `“${text}” is not an amount`, suggest: example, word: wordsOf(text) - wordsOf(rest) + odd + after}
  }
  if (value % 1 !== 0) return {ok: false, reason: `“${text}”: vessels come whole`, suggest: `write “${Math.ceil(value)} ${rest}”`}
  return {ok: true, value: {kind: 'count', count: value, of: rest}}
}
