import {cardinals, enders, stepVerbs} from '../lexicon/grammar-words.js'
import {itemOf, lookUpKind, measureOf} from '../lexicon/index.js'
import {vesselWords} from '../lexicon/vessel-words.js'
import {parseLength} from '../measure/quantity.js'
import type {Section} from './section.js'
import type {ReadIngredient, Span} from './types.js'
import {isVesselWord, readVessel, type VesselSize, vesselWordsOf} from './vessel.js'
import {volumeAt} from './vessel-volumes.js'

/** A vessel whose size the receipt's own text gives, as front matter would state it. */
export interface SizedVessel {
  readonly value: string
  /** The receipt's words. */
  readonly said: string
  /** Source id of its depth; null where that is said, or it has none. */
  readonly depthFrom: string | null
  /** Nothing tells its depth, which is its kind's: neither a size nor a name of tins of one depth. */
  readonly anyDepth?: true
  /** No unit is written, and this is what it is read in. */
  readonly unit?: 'inches' | 'centimetres'
}

const UNITS = vesselWordsOf('unit')
const TIMES = vesselWordsOf('times')
const WAYS = vesselWordsOf('way')
const DEPTHS = vesselWordsOf('depth')
const BY_WIDTH = vesselWordsOf('by its width')
const SMALL = vesselWordsOf('small')
/** Words that would lead from a size to another thing: "2-inch rounds on a baking sheet". */
const ELSEWHERE = vesselWordsOf('elsewhere')
const SHAPES = vesselWordsOf('shape')
const NOUNS = vesselWordsOf('noun')
const THINGS = vesselWordsOf('thing')
const LOAVES: ReadonlySet<string> = new Set(['loaf', 'loaves'])
/** No word of these stands where a unit would. */
const NO_UNIT: ReadonlySet<string> = new Set([...vesselWordsOf('number of'), ...ELSEWHERE, ...enders, ...stepVerbs])

/** A size and the tokens that tell it. */
interface Size {
  readonly from: number
  readonly to: number
  /** As front matter writes it: "9 x 13 inch". */
  readonly text: string
  readonly numbers: number
  readonly inches: boolean
  /** "nine inches square" */
  readonly square: boolean
  /** Behind it stands how it is measured: "across". */
  readonly across: boolean
  /** The token that stands as a unit and is none; −1. */
  readonly odd: number
  /** No unit is written: "9 x 13". */
  readonly bare: boolean
}

/** A number in figures or in a word, as figures; null where there is none. */
function figureAt(
  {tokens, source}: Section,
  at: number,
): {readonly text: string; readonly to: number; readonly word: boolean} | null {
  const token = tokens[at]
  if (token === undefined) return null
  if (token.kind === 'number') return {text: source.slice(token.start, token.end), to: at + 1, word: false}
  const value = token.kind === 'word' ? cardinals[token.word] : undefined
  if (value === undefined || value < 2) return null
  const half = tokens[at + 1]?.word === 'and' && tokens[at + 2]?.word === 'a' && tokens[at + 3]?.word === 'half'
  return half ? {text: `${value} 1/2`, to: at + 4, word: true} : {text: String(value), to: at + 1, word: true}
}

/** The token after a unit of length at `at`: `at` where none stands there. "Two in a tin" names none. */
function pastUnit({tokens}: Section, at: number, afterWord: boolean): number {
  const {word = ''} = tokens[at] ?? {}
  if (!UNITS.has(word) || (word === 'in' && afterWord)) return at
  return tokens[at + 1]?.word === '.' && word === 'in' ? at + 2 : at + 1
}

/** Whether the word at `at`, behind a number, can only be meant as its unit. */
function isOdd(section: Section, at: number): boolean {
  const token = section.tokens[at]
  return (
    token?.kind === 'word' &&
    token.block === section.tokens[at - 1]?.block &&
    cardinals[token.word] === undefined &&
    !NO_UNIT.has(token.word) &&
    !isVesselWord(token.word) &&
    measureOf([token.word]) === null
  )
}

/** A tin's sizes without a unit are inches up to this, and centimetres beyond. Common practice, no source. */
const LARGEST_INCHES = 18

/** Whether a word behind a number may stand as its unit at all: the number is one of several, or one of "a … tin". */
const mayBeUnit = ({tokens}: Section, at: number, i: number, numbers: number): boolean =>
  numbers > 1 ||
  TIMES.has(tokens[i + 1]?.word ?? '') ||
  NOUNS.has(tokens[i + 1]?.word ?? '') ||
  NOUNS.has(tokens[at - 1]?.word ?? '')

/** The widths, cm, that a tin is called by with no unit: what is less is a number of hollows. Common practice, no source. */
const WIDTHS = {least: 14, most: 40} as const

/** Whether „er“ behind a figure makes a tin's width of it, in centimetres: „26er Springform“, and no „12er Blech“. */
function isSoWide({tokens}: Section, i: number, figure: number): boolean {
  const name = tokens[i + 1]?.word === '-' ? i + 2 : i + 1
  return (
    tokens[i]?.word === 'er' &&
    tokens[i]!.block === tokens[i - 1]!.block &&
    figure >= WIDTHS.least &&
    figure <= WIDTHS.most &&
    BY_WIDTH.has(tokens[name]?.word ?? '')
  )
}

/** "9 x 13-inch", "30 x 20 x 6 cm", "23cm", "nine inches across" at `at`; null where no unit stands in it, nor anything in its place. */
function sizeAt(section: Section, at: number): Size | null {
  const {tokens} = section
  let i = at
  let numbers = 0
  let unit = ''
  let text = ''
  let odd = -1
  while (numbers < 3) {
    const figure = figureAt(section, i)
    if (figure === null) break
    numbers++
    text += `${text === '' ? '' : ' x '}${figure.text}`
    i = figure.to
    const past = pastUnit(section, i, figure.word)
    if (past > i) {
      unit ||= tokens[i]!.word
      text += ` ${tokens[i]!.word}`
      i = past
    } else if (!figure.word && isSoWide(section, i, Number(figure.text))) {
      // „26er Springform“
      unit ||= 'cm'
      text += ' cm'
      i++
    } else if (!figure.word && mayBeUnit(section, at, i, numbers) && isOdd(section, i)) {
      odd = i
      i++
    }
    // "9- by 13-inch"
    const times = tokens[i]?.word === '-' ? i + 1 : i
    if (!TIMES.has(tokens[times]?.word ?? '') || figureAt(section, times + 1) === null) break
    i = times + 1
  }
  // "9 x 13 glass dish": no unit at all.
  if (unit === '' && numbers > 1 && odd === i - 1) {
    i = odd
    odd = -1
  }
  // "9x13 pan": inches as far as a tin has them, else centimetres.
  const bare = unit === '' && odd < 0
  if (numbers === 0 || (bare && numbers < 2)) return null
  if (bare) {
    const largest = Math.max(...text.split(' x ').map((one) => Number(one.replace(',', '.'))))
    if (!(largest >= 5 && largest <= 60)) return null
    unit = largest <= LARGEST_INCHES ? 'inch' : 'cm'
    text += ` ${unit}`
  }
  const next = tokens[i]?.word ?? ''
  const square = next === 'square'
  const inWay = next === 'in' && WAYS.has(tokens[i + 1]?.word ?? '')
  const across = WAYS.has(next) || inWay
  return {
    from: at,
    to: i + (inWay ? 2 : across || square ? 1 : 0),
    text,
    numbers,
    inches: unit === '"' || unit.startsWith('in'),
    square,
    across,
    odd,
    bare,
  }
}

/** ", 6 cm deep", "and 3 inches in depth" at `at`, metres; null where nothing of the kind is said. */
function depthAt(section: Section, at: number, inches: boolean): {readonly metres: number; readonly to: number} | null {
  const {tokens} = section
  let i = at
  while (
    i < at + 4 &&
    (/^[,(]$/.test(tokens[i]?.word ?? '') || SMALL.has(tokens[i]?.word ?? '') || TIMES.has(tokens[i]?.word ?? ''))
  )
    i++
  const figure = tokens[i]?.block === tokens[at - 1]?.block ? figureAt(section, i) : null
  if (figure === null) return null
  const past = pastUnit(section, figure.to, figure.word)
  const word = past > figure.to ? tokens[figure.to]!.word : inches ? 'inch' : 'cm'
  const end = tokens[past]?.word === 'in' ? past + 1 : past
  if (!DEPTHS.has(tokens[end]?.word ?? '')) return null
  const metres = parseLength(`${figure.text} ${word}`)
  if (!metres.ok || metres.value < 0.01 || metres.value > 0.5) return null
  return {metres: metres.value, to: tokens[end + 1]?.word === ')' && tokens[at]?.word === '(' ? end + 2 : end + 1}
}

/** "square cake tin" at `at`: the token after it, −1 where no vessel is named within five words. */
function nameAt({tokens}: Section, at: number, nouns = NOUNS): number {
  for (let i = at; i < at + 5; i++) {
    const token = tokens[i]
    if (token === undefined || token.kind !== 'word' || token.block !== tokens[at]!.block || ELSEWHERE.has(token.word)) return -1
    if (nouns.has(token.word)) return i + 1
  }
  return -1
}

/** The token behind a size, past the bracket that closes round it: "one (9-inch) pie". */
const pastBracket = ({tokens}: Section, {from, to}: Size): number =>
  tokens[from - 1]?.word === '(' && tokens[to]?.word === ')' ? to + 1 : to

/** A vessel's size in the text: what it is called, how deep, and all its words. */
interface Found {
  /** The token it was found at. */
  readonly at: number
  readonly size: Size
  readonly name: Stretch
  readonly depth: number | null
  readonly said: Stretch
}

/** "8-inch square pan", "23 cm/9 in springform tin", "30 x 20 cm dish, 6 cm deep": the size at `at`, and the name after it. */
function sizeFirst(section: Section, at: number): Found | null {
  const {tokens} = section
  const size = sizeAt(section, at)
  if (size === null) return null
  // "A 26 zonk tin": a thing by itself; "26 rolls tin" is none.
  if (size.odd >= 0 && !isSizeOf(section, size)) return null
  const within = depthAt(section, size.to, size.inches)
  let name = within?.to ?? size.to
  const mark = tokens[name]?.word
  if (mark === '/' || mark === '(') {
    // "9 x 13 in (23 x 33 cm) tin", "9 x 13 in (3-quart) dish"
    const to = sizeAt(section, name + 1)?.to ?? volumeAt(tokens, name + 1)?.to
    if (to === undefined) return null
    name = tokens[to]?.word === ')' ? to + 1 : to
  }
  const from = size.square ? size.to - 1 : name === size.to ? pastBracket(section, size) : name
  // "Two 9 x 5 loaves": of a loaf tin.
  const end = Math.max(nameAt(section, from), size.numbers > 1 && LOAVES.has(tokens[from]?.word ?? '') ? from + 1 : -1)
  if (end < 0) return null
  const behind = within === null ? depthAt(section, end, size.inches) : null
  return {
    at,
    size,
    name: {from, to: end},
    depth: (within ?? behind)?.metres ?? null,
    said: {from: at, to: behind?.to ?? end},
  }
}

/** Whether a word that is no unit stands in a size all the same: another unit stands beside it, or "a … tin" around it. */
function isSizeOf({tokens}: Section, {from, odd, text, numbers}: Size): boolean {
  if (/[a-z"]/.test(text.replaceAll(' x ', ' '))) return true
  if (numbers > 1) return false
  return /^(?:a|an|one|ein|eine|einer|einem)$/.test(tokens[from - 1]?.word ?? '') && NOUNS.has(tokens[odd + 1]?.word ?? '')
}

/** "a loaf tin (23 x 13 cm)", "a square tin measuring 20 cm", "a round pan, 9 in. across and 3 deep": the noun at `at`, and the size after it. */
function nameFirst(section: Section, at: number): Found | null {
  const {tokens} = section
  let i = at + 1
  let open = false
  for (let turns = 0; turns < 4; turns++) {
    const word = tokens[i]?.word ?? ''
    if (!/^(?:,|\(|about|measuring|etwa|ca|ø|von|mit|à|a|of)$/.test(word)) break
    open ||= word === '('
    i++
  }
  const size = tokens[i]?.block === tokens[at]!.block ? sizeAt(section, i) : null
  if (size === null || (size.odd >= 0 && !isSizeOf(section, size))) return null
  let from = at
  while (
    at - from < 2 &&
    tokens[from - 1]?.kind === 'word' &&
    tokens[from - 1]!.block === tokens[at]!.block &&
    !ELSEWHERE.has(tokens[from - 1]!.word) &&
    !UNITS.has(tokens[from - 1]!.word) &&
    tokens[from - 2]?.kind !== 'number'
  )
    from--
  const depth = depthAt(section, size.to, size.inches)
  const to = depth?.to ?? size.to
  return {
    at,
    size,
    name: {from, to: at + 1},
    depth: depth?.metres ?? null,
    said: {from, to: open && tokens[to]?.word === ')' ? to + 1 : to},
  }
}

const read = new WeakMap<Section, readonly Found[]>()

/** Every vessel with a size in the text, in its order. Sizes in an ingredient's words are its own. */
function vesselsSized(section: Section, ingredients: readonly ReadIngredient[]): readonly Found[] {
  const {tokens} = section
  let all = read.get(section)
  if (all === undefined) {
    all = tokens.flatMap((token, i) => {
      if (NOUNS.has(token.word)) return nameFirst(section, i) ?? []
      return token.kind === 'number' || (token.kind === 'word' && cardinals[token.word] !== undefined)
        ? (sizeFirst(section, i) ?? [])
        : []
    })
    read.set(section, all)
  }
  return all.filter(({at}) => !ingredients.some((one) => one.start < tokens[at]!.end && tokens[at]!.start < one.end))
}

/**
 * The vessel the receipt's text states with its size, null where it states none: the first that can be read, or the same with its depth.
 *
 * @param kind id of its kind of dish, which tells how deep a tin is that nothing else tells the depth of
 */
export function vesselStated(
  section: Section,
  ingredients: readonly ReadIngredient[],
  kind: string | null = null,
): SizedVessel | null {
  const all = vesselsSized(section, ingredients).flatMap((found) => {
    const vessel = found.size.odd < 0 ? written(section, found, kind) : null
    return vessel === null ? [] : [vessel]
  })
  const [first] = all
  if (first === undefined) return null
  // "One tin 30 × 20 cm" at the head, "tip into an oiled 30 × 20 × 4 cm tin" in the method.
  const deep = first.depthFrom === null ? undefined : all.find((one) => one.depthFrom === null && isAsWide(one, first))
  return deep ?? first
}

/** Sides that differ by no more are one, metres: "9 in" and "23 cm" are. */
const SAME_SIDE = 0.004

/** Whether two vessels that the text sizes are as long and as wide as each other. */
function isAsWide(one: SizedVessel, other: SizedVessel): boolean {
  const [p, q] = [readVessel(one.value), readVessel(other.value)]
  if (!p.ok || !q.ok) return false
  const sides = ({across = 0, length = across, width = across}: VesselSize): readonly [number, number] => [
    Math.max(length, width),
    Math.min(length, width),
  ]
  const [a, b] = [sides(p.value), sides(q.value)]
  return (
    (p.value.across === undefined) === (q.value.across === undefined) && a.every((side, i) => Math.abs(side - b[i]!) <= SAME_SIDE)
  )
}

/** The tokens of that vessel's noun and of all its words; null where the text states none with its size. */
export function placeStated(
  section: Section,
  ingredients: readonly ReadIngredient[],
): {readonly noun: number; readonly from: number; readonly to: number} | null {
  const found = vesselsSized(section, ingredients).find((one) => one.size.odd < 0 && written(section, one) !== null)
  return found === undefined ? null : {noun: found.name.to - 1, ...found.said}
}

/** The words of a vessel's size where the text writes as a unit what is none, with that word: "tin 26 cm x 7 zonks". */
export function oddVessels(section: Section, ingredients: readonly ReadIngredient[]): Array<Span & {readonly word: string}> {
  const {tokens, source} = section
  const told: Array<Span & {readonly word: string}> = []
  for (const {size, said} of vesselsSized(section, ingredients)) {
    const [start, end] = [tokens[said.from]!.start, Math.max(tokens[said.to - 1]!.end, tokens[size.to - 1]!.end)]
    if (size.odd >= 0 && !told.some((one) => one.start < end && start < one.end))
      told.push({text: source.slice(start, end), start, end, word: source.slice(tokens[size.odd]!.start, tokens[size.odd]!.end)})
  }
  return told
}

/**
 * "Six small pies, six inches across", "two 10-inch pizzas": what is baked in a shape of its own, of the size the text gives and as deep as
 * its kind is, but no deeper than half as wide. Null where the kind is of another shape, or the text says nothing of the kind.
 */
export function thingSized(section: Section, ingredients: readonly ReadIngredient[], kind: string): SizedVessel | null {
  const own = readVessel(lookUpKind(kind)?.vessel ?? '')
  if (!own.ok || own.value.across === undefined || own.value.shape === 'crock') return null
  const {shape} = own.value
  const {tokens, source} = section
  if (!tokens.some(({word}) => THINGS.has(word))) return null
  for (let i = 0; i < tokens.length; i++) {
    let size: Size | null = null
    let end = i + 1
    if (THINGS.has(tokens[i]!.word)) {
      let at = i + 1
      while (at < i + 4 && /^(?:,|\(|about|each|of|etwa|von|mit|ø)$/.test(tokens[at]?.word ?? '')) at++
      size = tokens[at]?.block === tokens[i]!.block ? sizeAt(section, at) : null
      if (size !== null && !size.across && tokens[at - 1]!.word !== 'ø') size = null
      end = size?.to ?? end
    } else if (figureAt(section, i) !== null) {
      size = sizeAt(section, i)
      end = size === null ? -1 : nameAt(section, pastBracket(section, size), THINGS)
      // "8 in pounded loaf sugar"
      if (end < 0 || itemOf([tokens[end]?.word ?? '']) !== null) size = null
    }
    if (size === null || size.odd >= 0) continue
    if (ingredients.some((one) => one.start < tokens[end - 1]!.end && tokens[i]!.start < one.end)) continue
    const said = bracketed(source.slice(tokens[i]!.start, tokens[end - 1]!.end).replace(/\s+/g, ' '))
    const corners = cornered(section, size, end)
    if (corners !== null && shape !== 'free-standing') {
      const box = readVessel(`${corners} ${size.text}`)
      if (box.ok && Math.min(box.value.length ?? 0, box.value.width ?? 0) >= 0.09)
        return {
          value: asStated({...box.value, height: own.value.height}, size.inches),
          said,
          depthFrom: 'common-practice',
        }
    }
    // The second figure of a cake that is no round one is none of another cake.
    if (size.numbers > 1) i = size.to - 1
    if (size.numbers > 1 || corners !== null) continue
    const across = readVessel(`round ${size.text}`)
    if (!across.ok || across.value.across === undefined || across.value.across < 0.09) continue
    const height = Math.min(own.value.height, across.value.across / 2)
    return {
      value: asStated({shape, across: across.value.across, height}, size.inches),
      said,
      depthFrom: shape === 'free-standing' ? null : 'common-practice',
    }
  }
  return null
}

/** The shape of "an 8-inch square cake", "a 9 x 13-inch cake", whose words end before token `end`; null of a round one. */
function cornered({tokens}: Section, size: Size, end: number): 'square' | 'oblong' | null {
  if (size.numbers === 2) return 'oblong'
  if (size.numbers > 2) return null
  const isSquare = size.square || tokens.slice(size.from, end).some(({word}) => SQUARES.has(word))
  return isSquare ? 'square' : null
}
const SQUARES: ReadonlySet<string> = new Set(vesselWords.find(({shape}) => shape === 'square')!.words)

/** Words with the other bracket of one that stands in them alone: "9-inch) pie". */
const bracketed = (words: string): string =>
  words.includes(')') && !words.includes('(') ? `(${words}` : words.includes('(') && !words.includes(')') ? `${words})` : words

interface Stretch {
  readonly from: number
  readonly to: number
}

/** As front matter states a vessel, in the receipt's own unit. A small size is a depth or a thickness, and no vessel. */
function written(section: Section, {size, name, depth, said}: Found, kind: string | null = null): SizedVessel | null {
  const text = ({from, to}: Stretch): string =>
    section.source.slice(section.tokens[from]!.start, section.tokens[to - 1]!.end).replace(/\s+/g, ' ')
  // "A square 8 inch tin"
  const shaped = section.tokens[size.from - 1]
  const before = shaped?.block === section.tokens[size.from]!.block && SHAPES.has(shaped.word) ? `${shaped.word} ` : ''
  const read = readVessel(`${size.square ? 'square ' : before}${size.text} ${text(name)}`)
  if (!read.ok) return null
  const {shape, across, length, width} = read.value
  const widest = across ?? Math.min(length ?? 0, width ?? 0)
  if (widest < 0.06) return null
  const flat = shape === 'sheet' || shape === 'free-standing'
  const all = size.numbers >= (across === undefined && shape !== 'square' ? 3 : 2)
  const any = depth === null && read.anyDepth === true
  const ofKind = any ? depthOfKind(kind, widest) : 0
  const height = depth !== null && !all ? depth : Math.max(read.value.height, ofKind)
  return {
    value: asStated({...read.value, height}, size.inches),
    said: bracketed(text(said)),
    depthFrom:
      flat || all || depth !== null
        ? null
        : ofKind > read.value.height
          ? 'common-practice'
          : (read.depthFrom ?? 'common-practice'),
    ...(any ? {anyDepth: true as const} : {}),
    ...(size.bare ? {unit: size.inches ? ('inches' as const) : ('centimetres' as const)} : {}),
  }
}

/** How deep a tin of a kind is by its width, metres: as its usual round or square one, and a narrower one by as much shallower; 0 where it has none. */
function depthOfKind(kind: string | null, widest: number): number {
  const usual = readVessel(kind === null ? '' : (lookUpKind(kind)?.vessel ?? ''))
  if (!usual.ok || (usual.value.shape !== 'round' && usual.value.shape !== 'square')) return 0
  const {across, width, height} = usual.value
  return height * Math.min(1, widest / (across ?? width ?? widest))
}

/** A vessel as front matter writes it. */
export function asStated({shape, across, length, width, height}: VesselSize, inches: boolean): string {
  const flat = shape === 'sheet' || shape === 'free-standing'
  const sizes = [across ?? length, across === undefined ? width : undefined, flat ? undefined : height]
  return `${shape === 'free-standing' ? 'free-standing loaf' : shape} ${writtenSizes(
    sizes.filter((one) => one !== undefined),
    inches,
  )}`
}

const INCH = 0.0254
const QUARTERS = ['', ' 1/4', ' 1/2', ' 3/4']

/** A whole number of quarter inches, to about half a millimetre: vessels are sold so. */
export const isInches = (metres: number): boolean => Math.abs(metres - (Math.round((metres / INCH) * 4) * INCH) / 4) <= 0.0006

/** Metres as a vessel's sizes are written: "13 x 9 x 2 1/4 in" to the quarter inch, "23 x 5 cm" to the millimetre. */
export function writtenSizes(metres: readonly number[], inches: boolean): string {
  const inch = (size: number): string => {
    const quarters = Math.round((size / INCH) * 4)
    return `${Math.floor(quarters / 4)}${QUARTERS[quarters % 4]}`
  }
  return inches ? `${metres.map(inch).join(' x ')} in` : `${metres.map((size) => Math.round(size * 1000) / 10).join(' x ')} cm`
}
