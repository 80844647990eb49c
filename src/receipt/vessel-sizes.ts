import type {Section} from './section.js'
import type {ReadIngredient} from './types.js'
import {readVessel} from './vessel.js'

/** A vessel whose size the receipt's own text gives, as front matter would state it. */
export interface SizedVessel {
  readonly value: string
  /** The receipt's words. */
  readonly said: string
  /** Its depth is said, or it has none. */
  readonly deep: boolean
}

const UNITS: ReadonlySet<string> = new Set(['inch', 'inches', 'in', 'cm', 'cms', 'mm', '"'])
const TIMES: ReadonlySet<string> = new Set(['x', '×', 'by'])
/** Words that would lead from a size to another thing: "2-inch rounds on a baking sheet". */
const ELSEWHERE: ReadonlySet<string> = new Set(
  'a an and apart at by each for from half in into of on onto or over the then thick to upon with your'.split(' '),
)
const NOUNS: ReadonlySet<string> = new Set(
  'tin tins pan pans dish dishes tray trays sheet sheets plate plates mould moulds mold molds skillet skillets hoop hoops ring rings casserole casseroles crock crocks springform kastenform backform auflaufform tarteform gugelhupfform blech backblech'.split(
    ' ',
  ),
)

/** A size and the tokens that tell it. */
interface Size {
  readonly from: number
  readonly to: number
  readonly numbers: number
  readonly inches: boolean
}

/** "9 x 13-inch", "30 x 20 x 6 cm", "23cm" at `at`; null where no unit stands in it. */
function sizeAt({tokens}: Section, at: number): Size | null {
  let i = at
  let numbers = 0
  let unit = ''
  while (tokens[i]?.kind === 'number' && numbers < 3) {
    numbers++
    i++
    const word = tokens[i]?.word ?? ''
    if (UNITS.has(word)) {
      unit ||= word
      i++
      if (word === 'in' && tokens[i]?.word === '.') i++
    }
    if (!TIMES.has(tokens[i]?.word ?? '') || tokens[i + 1]?.kind !== 'number') break
    i++
  }
  return unit === '' ? null : {from: at, to: i, numbers, inches: unit === '"' || unit.startsWith('in')}
}

/** "square cake tin" at `at`: the token after it, −1 where no vessel is named within five words. */
function nameAt({tokens}: Section, at: number): number {
  for (let i = at; i < at + 5; i++) {
    const token = tokens[i]
    if (token === undefined || token.kind !== 'word' || token.block !== tokens[at]!.block || ELSEWHERE.has(token.word)) return -1
    if (NOUNS.has(token.word)) return i + 1
  }
  return -1
}

/** "8-inch square pan", "23 cm/9 in springform tin": the size at `at`, and the name after it. */
function sizeFirst(section: Section, at: number): SizedVessel | null {
  const {tokens} = section
  const size = sizeAt(section, at)
  if (size === null) return null
  let name = size.to
  const mark = tokens[name]?.word
  if (mark === '/' || mark === '(') {
    const other = sizeAt(section, name + 1)
    if (other === null) return null
    name = tokens[other.to]?.word === ')' ? other.to + 1 : other.to
  }
  const end = nameAt(section, name)
  return end < 0 ? null : written(section, size, {from: name, to: end}, {from: at, to: end})
}

/** "a loaf tin (23 x 13 cm)", "a square tin measuring 20 cm", "a round pan, 9 in. across": the noun at `at`, and the size after it. */
function nameFirst(section: Section, at: number): SizedVessel | null {
  const {tokens} = section
  let i = at + 1
  let open = false
  for (let turns = 0; turns < 4; turns++) {
    const word = tokens[i]?.word ?? ''
    if (word !== ',' && word !== '(' && word !== 'about' && word !== 'measuring') break
    open ||= word === '('
    i++
  }
  const size = sizeAt(section, i)
  if (size === null) return null
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
  const end = open && tokens[size.to]?.word === ')' ? size.to + 1 : size.to
  return written(section, size, {from, to: at + 1}, {from, to: end})
}

/**
 * The vessel the receipt's text states with its size, null where it states none: the first that can be read. Sizes in an ingredient's
 * words are its own.
 */
export function vesselStated(section: Section, ingredients: readonly ReadIngredient[]): SizedVessel | null {
  const {tokens} = section
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i]!
    const found = token.kind === 'number' ? sizeFirst(section, i) : NOUNS.has(token.word) ? nameFirst(section, i) : null
    if (found !== null && !ingredients.some((one) => one.start < token.end && token.start < one.end)) return found
  }
  return null
}

interface Stretch {
  readonly from: number
  readonly to: number
}

/** As front matter states a vessel, in the receipt's own unit. A small size is a depth or a thickness, and no vessel. */
function written(section: Section, size: Size, name: Stretch, said: Stretch): SizedVessel | null {
  const text = ({from, to}: Stretch): string =>
    section.source.slice(section.tokens[from]!.start, section.tokens[to - 1]!.end).replace(/\s+/g, ' ')
  const read = readVessel(`${text(size)} ${text(name)}`)
  if (!read.ok) return null
  const {shape, across, length, width, height} = read.value
  if ((across ?? Math.min(length ?? 0, width ?? 0)) < 0.06) return null
  const flat = shape === 'sheet' || shape === 'free-standing'
  const sizes = [across ?? length, across === undefined ? width : undefined, flat ? undefined : height]
  return {
    value: `${shape === 'free-standing' ? 'free-standing loaf' : shape} ${writtenSizes(
      sizes.filter((one) => one !== undefined),
      size.inches,
    )}`,
    said: text(said),
    deep: flat || size.numbers >= (across === undefined && shape !== 'square' ? 3 : 2),
  }
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
