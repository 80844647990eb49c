import {foldAll} from '../lexicon/index.js'
import type {VesselRow} from '../lexicon/schema.js'
import {vessels} from '../lexicon/vessels.js'
import {parseLength} from '../measure/quantity.js'
import type {Vessel} from './types.js'

/** The shapes vessels come in. */
export type VesselShape = 'round' | 'square' | 'oblong' | 'loaf' | 'pie plate' | 'crock' | 'free-standing' | 'sheet'

/** A vessel as stated: inside measures at the top, metres. A circle has `across`; the others `length` and `width`. */
export interface VesselSize {
  readonly shape: VesselShape
  readonly across?: number
  readonly length?: number
  readonly width?: number
  readonly height: number
}

/**
 * Figures of each shape. Common practice, no source, unless stated.
 *
 * `full`: what it holds to the brim as a share of the cylinder or box of its inside measures: tins narrow downwards. From published
 * US tables of tins, brim-full, in cups (from memory): 9 × 1 1/2 in round 6, 8 × 8 × 2 in square 8, 9 × 9 × 2 in 10, 13 × 9 × 2 in
 * 14–15, 9 × 5 × 3 in loaf 8.
 * `slope`: how far a pie plate's side runs inwards for each metre it goes down.
 * `wall`: thickness of wall and rim. `above`: what stands above the rim: a crown, a lid.
 */
interface ShapeFigures {
  readonly full: number
  readonly wall: number
  readonly above: number
  readonly height: number
}
const shapes: Readonly<Record<VesselShape, ShapeFigures>> = {
  round: {full: 0.92, wall: 0.004, above: 0.01, height: 0.06},
  square: {full: 0.9, wall: 0.004, above: 0.01, height: 0.05},
  oblong: {full: 0.9, wall: 0.004, above: 0.01, height: 0.05},
  loaf: {full: 0.86, wall: 0.004, above: 0.03, height: 0.075},
  'pie plate': {full: 1, wall: 0.008, above: 0.02, height: 0.038},
  crock: {full: 0.9, wall: 0.01, above: 0.02, height: 0.18},
  'free-standing': {full: 1, wall: 0, above: 0, height: 0.1},
  sheet: {full: 1, wall: 0.003, above: 0, height: 0.05},
}
/** A pie plate's side runs in by 0.9 of its depth: 9 × 1 1/2 in then holds 4.8 cups; published tables give 4 to 5 (from memory). */
const plateSlope = 0.9
/** Height of a free-standing loaf by its width. Common practice, no source: a well-raised hearth loaf is 0.35–0.45 as high as wide. */
const loafRise = 0.4
/** Thickness of small goods on a sheet, metres. */
const goodsThick = 0.025

/** Area at the top, m². */
export function topArea(size: VesselSize): number {
  return size.across !== undefined ? (Math.PI / 4) * size.across ** 2 : (size.length ?? 0) * (size.width ?? 0)
}

/** What it holds to the brim, m³: prism or cylinder, frustum for a pie plate, spherical cap for a free-standing loaf. */
export function brimVolume(size: VesselSize): number {
  if (size.shape === 'pie plate' && size.across !== undefined) {
    const top = size.across / 2
    const bottom = Math.max(0, top - plateSlope * size.height)
    return ((Math.PI * size.height) / 3) * (top * top + top * bottom + bottom * bottom)
  }
  if (size.shape === 'free-standing' && size.across !== undefined) {
    const r = size.across / 2
    return ((Math.PI * size.height) / 6) * (3 * r * r + size.height * size.height)
  }
  return topArea(size) * size.height * shapes[size.shape].full
}

/**
 * A free-standing loaf of another weight: every side grows as the cube root, for the dough is the same.
 */
export function spreadOf(size: VesselSize, massRatio: number): VesselSize {
  const k = Math.cbrt(massRatio)
  return {...size, ...(size.across === undefined ? {} : {across: size.across * k}), height: size.height * k}
}

/**
 * How a vessel stands on the floor and how thick its filling is.
 *
 * @param size inside measures
 * @param fill share of its height that is filled before baking (0–1); ignored for loaves without a tin and for sheets
 * @param name what to call it
 */
export function vesselOf(size: VesselSize, fill: number, name: string): Vessel {
  const figures = shapes[size.shape]
  const grown = 2 * figures.wall
  const footprint: Vessel['footprint'] =
    size.across !== undefined
      ? {shape: 'circle', diameter: size.across + grown}
      : {
          shape: 'rectangle',
          length: Math.max(size.length ?? 0, size.width ?? 0) + grown,
          width: Math.min(size.length ?? 0, size.width ?? 0) + grown,
        }
  const narrow = size.across ?? Math.min(size.length ?? 0, size.width ?? 0)
  const deep = size.shape === 'sheet' ? goodsThick : size.shape === 'free-standing' ? size.height : size.height * fill
  return {
    name,
    footprint,
    height: size.height + figures.above,
    halfThickness: Math.min(deep, narrow) / 2,
    millilitres: size.shape === 'sheet' ? 0 : brimVolume(size) * 1e6 * (size.shape === 'free-standing' ? 1 : fill),
  }
}

export type VesselResult =
  | {readonly ok: true; readonly value: VesselSize; readonly name: string}
  | {readonly ok: false; readonly reason: string; readonly suggest: string}

/** The shapes' own names; they say more than a vessel's name ("square cake tin"). */
const shapeNames: ReadonlyArray<readonly [string, VesselShape]> = [
  ['free standing', 'free-standing'],
  ['freestanding', 'free-standing'],
  ['pie plate', 'pie plate'],
  ['square', 'square'],
  ['oblong', 'oblong'],
  ['rectangular', 'oblong'],
  ['round', 'round'],
  ['crock', 'crock'],
  ['sheet', 'sheet'],
  ['loaf', 'loaf'],
]

const spaced = (text: string): string => ` ${foldAll(text).join(' ')} `
const spelled = vessels
  .flatMap((row) => row.spellings.map((spelling) => ({row, words: spaced(spelling)})))
  .sort((p, q) => q.words.length - p.words.length)

/** The row of `lexicon/vessels` with the longest name in a text. */
const rowIn = (text: string): VesselRow | null => {
  const words = spaced(text)
  return spelled.find((one) => words.includes(one.words))?.row ?? null
}
const nameIn = (text: string): VesselShape | null => {
  const words = spaced(text)
  return shapeNames.find(([name]) => words.includes(spaced(name)))?.[1] ?? null
}
/** A row's shape and its own sizes, in the order `sized` reads them. */
const sizesOf = (row: VesselRow): number[] =>
  [...(row.diameter !== undefined ? [row.diameter] : [row.length, row.width]), row.height].filter((size) => size !== undefined)

const example = 'write “round 9 in x 2 in”, “loaf 9 x 5 x 3 in” or “free-standing loaf 24 cm”'
const dimensions =
  /(\d{1,4}[ -]\d{1,2}\/\d{1,2}|\d{1,4}\/\d{1,2}|\d{1,4}(?:\.\d{1,3})?)\s*-?\s*(inch(?:es)?|in\b\.?|["″”]|cm|mm|centimetres?|centimeters?|ft|feet|foot|m\b)?/g

/**
 * Read a vessel as front matter states it: "round 9 in x 2 in", "9-inch square tin", "loaf 9 x 5 x 3 in", "free-standing loaf 24 cm".
 * A figure without a unit takes the unit of the next figure that has one. Inside measures.
 */
export function readVessel(text: string): VesselResult {
  const plain = text
    .toLowerCase()
    .replace(/[½¼¾⅓⅔⅛]/g, (c) => ` ${{'½': '1/2', '¼': '1/4', '¾': '3/4', '⅓': '1/3', '⅔': '2/3', '⅛': '1/8'}[c] ?? c}`)
    .replace(/×/g, ' x ')
    .replace(/\bby\b/g, ' x ')
    .replace(/\s+/g, ' ')
    .trim()
  if (plain.length > 80) return {ok: false, reason: 'this is too long to be a vessel', suggest: example}
  // "2 lb loaf tin": what a tin is called by is no size of it.
  const measured = plain.replace(
    /\b(?:\d+(?:[./]\d+)?|\d+ \d\/\d) ?(?:lbs?|pounds?|oz|ounces?|kg|g|quarts?|qt|pints?|litres?|l|gallons?|cups?)\b/g,
    ' ',
  )
  const found = [...measured.matchAll(dimensions)].map((m) => ({number: m[1] ?? '', unit: m[2] ?? ''}))
  const row = rowIn(plain)
  const rowShape = row === null || row.shape === 'none' ? null : row.shape
  const named = nameIn(plain)
  if (found.length === 0 && row !== null && rowShape !== null && (named === null || named === rowShape)) {
    const own = sized(rowShape, sizesOf(row))
    if (own !== null) return {ok: true, value: own, name: text.trim()}
  }
  const shape = named ?? rowShape
  if (shape === null && found.length === 0) return {ok: false, reason: `“${text}” is no vessel known here`, suggest: example}
  const sizes: number[] = []
  for (let i = 0; i < found.length; i++) {
    const unit = found.slice(i).find((f) => f.unit !== '')?.unit ?? found.findLast((f) => f.unit !== '')?.unit
    if (unit === undefined) return {ok: false, reason: `the sizes of “${text}” have no unit`, suggest: example}
    const metres = parseLength(`${found[i]!.number.replace('-', ' ')} ${unit.replace('.', '')}`)
    if (!metres.ok) return {ok: false, reason: metres.reason, suggest: example}
    if (metres.value < 0.02 || metres.value > 2) {
      return {ok: false, reason: `${found[i]!.number} ${unit} is no size for a vessel`, suggest: example}
    }
    sizes.push(metres.value)
  }
  const kind = shape ?? (sizes.length === 3 ? 'oblong' : 'round')
  const value = sized(kind, sizes)
  if (value === null) return {ok: false, reason: `“${text}” has ${sizes.length} sizes, too many for ${kind}`, suggest: example}
  return {ok: true, value, name: text.trim()}
}

const usual: Readonly<Record<VesselShape, readonly number[]>> = {
  round: [0.229],
  square: [0.229],
  oblong: [0.33, 0.229],
  loaf: [0.229, 0.127],
  'pie plate': [0.229],
  crock: [0.229],
  'free-standing': [0.24],
  sheet: [0.406, 0.305],
}

/** Give the sizes their meaning: a round one is across × deep, a box long × wide × deep, a square one may name its side once. */
function sized(shape: VesselShape, given: readonly number[]): VesselSize | null {
  const sizes = given.length === 0 ? usual[shape] : given
  const [p = 0, q, r] = sizes
  const depth = shapes[shape].height
  switch (shape) {
    case 'round':
    case 'pie plate':
    case 'crock':
      return sizes.length > 2 ? null : {shape, across: p, height: q ?? depth}
    case 'free-standing':
      return sizes.length > 2 ? null : {shape, across: p, height: q !== undefined && q < p ? q : p * loafRise}
    case 'square':
      if (sizes.length > 3) return null
      return sizes.length === 3
        ? {shape, length: p, width: q!, height: r!}
        : {shape, length: p, width: p, height: q === undefined || q === p ? depth : q}
    case 'oblong':
    case 'loaf':
    case 'sheet':
      if (sizes.length > 3) return null
      return {shape, length: p, width: q ?? p * (shape === 'loaf' ? 0.55 : 0.7), height: r ?? depth}
  }
}
