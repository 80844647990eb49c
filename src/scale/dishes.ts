import Fraction from 'fraction.js'
import {asked as words} from '../lexicon/asked-words.js'
import {fold, foldAll, kinds, lookUpItem, lookUpKind, lookUpMeasure} from '../lexicon/index.js'
import type {DishKind, Item, Range} from '../lexicon/schema.js'
import {mixedIn} from '../lexicon/stage-heads.js'
import {vessels} from '../lexicon/vessels.js'
import {germanYields} from '../lexicon/yield-words.js'
import {exactly, less, plus, scaled as scaledBy} from '../measure/range.js'
import type {OvenSpec} from '../oven/types.js'
import {isSet} from '../receipt/evening.js'
import {raisedBySoda} from '../receipt/kinds.js'
import type {Place} from '../receipt/position.js'
import {fold as plainFold} from '../receipt/section.js'
import type {EveningBefore, Inferred, Ingredient, Message, Receipt, TimePhrase} from '../receipt/types.js'
import {readVessel, type VesselSize} from '../receipt/vessel.js'
import {THINGS} from '../receipt/yields.js'
import {type Asked, readAsked} from './amount-phrase.js'
import {coldPlacesOf, coldRiseOf, coldWait, spoilsWarm} from './cold-rise.js'
import {capacityOf, packFloor} from './floor.js'
import {type KitchenInput, kitchenAmounts, pluralOf} from './kitchen.js'
import {anyKind, heatNeed, mayTakeFire, thickened} from './need.js'
import {asManyOf, inInches, passingSize, vesselWritten} from './passing.js'
import {notMixed, pieceMass, saltInBread, scaleRules} from './pieces.js'
import {slug} from './slug.js'
import type {DayAmount, DayToScale, Dish, EveningTask, FloorRoom, FloorRules, Vessel} from './types.js'
import {brimVolume, spreadOf, topArea, vesselOf} from './vessel.js'

/** What `makeDishes` reads. */
export interface ToScale {
  readonly day: DayToScale
  readonly receipts: readonly Receipt[]
  readonly oven: Pick<OvenSpec, 'floor' | 'mouth' | 'vaultHeight' | 'ashBed'> & {readonly rules?: Partial<FloorRules>}
}

export interface Dishes {
  readonly dishes: readonly Dish[]
  /** Receipts to fill idle hot floor with. */
  readonly spare: readonly Dish[]
  readonly messages: readonly Message[]
}

/** How often one line of a day may fill the floor: every half hour, a day and a night through. Common practice, no source. */
const mostFloors = 48

/** How full a vessel is filled before baking, share of its depth. Common practice, no source: tins of dough not half, of batter two thirds. */
const filled = {dough: 0.5, batter: 0.62, 'pie plate': 1, crock: 0.85, custard: 0.85}
/** The most of its depth that is filled: what rises needs room, a pie is heaped. Common practice, no source. */
const fullest = {dough: 0.75, batter: 0.85, 'pie plate': 1.5, crock: 1, custard: 1}
/** Weight of a filling, kg/litre: dough and batter as mixed, before they rise. From memory. */
const heaviness = {dough: 1.1, batter: 0.95, other: 1.03}

/**
 * Turn a day's list into dishes: whole vessels of each receipt, what to weigh out, what it needs of the oven.
 *
 * A dish is never more than the mixing bowl (`bowl` of the day) or the floor holds at once; a larger order becomes several, ids
 * `household-bread`, `household-bread-2`, ….
 *
 * @param input the day, its receipts as translated (matched by file, and by title where a file holds several), and the oven
 * @returns dishes in the order of the day; messages of rules `scale-amount`, `scale-receipt`, `scale-kind`, `scale-not-baked`,
 *   `scale-vessel`, `scale-full`, `scale-thin`, `scale-mouth`, `scale-weight`, `scale-salt`, `scale-bowl`, `scale-spoils`. A dish with an error is left out.
 */
export function makeDishes(input: ToScale): Dishes {
  const messages: Message[] = []
  const used = new Map<string, number>()
  const known = new Map<string, number>()
  const {ashBed} = input.oven
  const room: FloorRoom = {...input.oven, ...(ashBed === undefined ? {} : {rules: {ashBed, ...input.oven.rules}})}
  const fits = (vessel: Vessel, wanted: number): number => {
    const key = `${wanted} ${vessel.height} ${JSON.stringify(vessel.footprint)}`
    const before = known.get(key)
    if (before !== undefined) return before
    const alike = Array.from({length: Math.min(wanted, 500)}, (_, i) => ({
      dish: vessel.name,
      number: i + 1,
      footprint: vessel.footprint,
      height: vessel.height,
      out: 1,
    }))
    const all =
      wanted === Number.POSITIVE_INFINITY
        ? null
        : packFloor({...room, items: alike}, {effort: wanted <= 24 ? 'full' : 'quick', moves: false})
    const found =
      all !== null && 'placed' in all ? wanted : capacityOf(room, vessel, wanted === Number.POSITIVE_INFINITY ? 'full' : 'quick')
    known.set(key, found)
    return found
  }
  const all = (items: readonly DayAmount[]): Dish[] =>
    items.flatMap((item) => {
      const say: Say = (severity, rule, reason, suggest, where) => {
        const {line, column} = where ?? item
        messages.push({
          file: input.day.source ?? 'day.md',
          line,
          column,
          severity,
          rule,
          reason,
          ...(suggest === undefined ? {} : {suggest}),
        })
      }
      const found = receiptOf(item, input.receipts, say)
      return found === null
        ? []
        : dishesOf(item, found.receipt, {day: input.day, mouth: room.mouth, fits, used, say, name: found.name})
    })
  return {dishes: all(input.day.items), spare: all(input.day.spare), messages}
}

type Say = (severity: Message['severity'], rule: string, reason: string, suggest?: string, where?: Place) => void

const plainPath = (path: string): string => path.replace(/\\/g, '/').replace(/^(?:\.\/)+/, '')

/** The receipt a line of the day means, and the first part of its dishes' ids: the file's own name where it holds one receipt. */
function receiptOf(item: DayAmount, receipts: readonly Receipt[], say: Say): {receipt: Receipt; name: string} | null {
  const wanted = plainPath(item.file)
  const inFile = receipts.filter((receipt) => {
    const path = plainPath(receipt.file)
    return path === wanted || path.endsWith(`/${wanted}`)
  })
  const [only] = inFile
  if (only === undefined) {
    say(
      'error',
      'scale-receipt',
      `“${item.file}” holds no receipt`,
      'write the ingredients as a list or a paragraph under a title',
      item.targetAt,
    )
    return null
  }
  if (inFile.length === 1) return {receipt: only, name: slug((wanted.split('/').pop() ?? wanted).replace(/\.[a-z]+$/i, ''))}
  const words = slug(item.title)
  const titled =
    inFile.find((one) => slug(one.title) === words) ?? inFile.find((one) => words !== 'dish' && slug(one.title).includes(words))
  if (titled !== undefined) return {receipt: titled, name: slug(titled.title)}
  const first = inFile.find((one) => one.ingredients.length > 0) ?? only
  say(
    'warning',
    'scale-receipt',
    `“${item.file}” holds ${inFile.length} receipts and none is called “${item.title}”; taken: “${first.title}”`,
    'use the receipt’s own title as the text of the link',
  )
  return {receipt: first, name: slug(first.title)}
}

interface Context {
  readonly day: DayToScale
  readonly mouth: FloorRoom['mouth']
  /** How many of a vessel stand on the floor, `wanted` at most; without limit when `wanted` is infinite. */
  readonly fits: (vessel: Vessel, wanted: number) => number
  /** The id before the batch's number. */
  readonly name: string
  readonly used: Map<string, number>
  readonly say: Say
  /** A line is only tried, as the way out of another. */
  readonly tried?: true
}

type KindFigures = Omit<DishKind, 'words' | 'band' | 'sign' | 'source'> & {readonly sign: string; readonly known: boolean}

/** The sign that a dish of no known kind is done. */
export const bySight = 'as the receipt says, or by eye'

function kindOf(receipt: Receipt, say: Say): KindFigures {
  const row = receipt.kind === null ? null : lookUpKind(receipt.kind)
  if (row !== null) return {...row, known: true}
  const band = receipt.oven[0]?.band ?? 'moderate'
  say(
    'warning',
    'scale-kind',
    `“${receipt.title}” is no kind of dish known here; planned for ${receipt.oven.length > 0 ? `the ${band} oven it names` : 'a moderate oven'}`,
    'state vessel, oven and bake in its front matter',
  )
  return {
    id: 'unknown',
    title: 'a dish of no known kind',
    ...anyKind[band],
    vessel: 'round 9 in x 3 in',
    mass: {low: 0.7, likely: 1.2, high: 2},
    waterLoss: {low: 0.05, likely: 0.1, high: 0.18},
    feeds: {low: 6, likely: 8, high: 10},
    sign: bySight,
    cautions: [],
    known: false,
  }
}

interface Shape {
  readonly size: VesselSize
  readonly name: string
  /** The receipt itself or its front matter states the vessel. */
  readonly stated: boolean
  /** The vessel its front matter states, where that is none known here: the usual one is taken. */
  readonly unknown?: string
  /** Kilograms in one of this size, where the receipt's own weights tell it; else the kind's do. */
  readonly weighs?: number
}

/** A loaf without a tin as large as so many kilograms of dough make it, and called by that size. */
function grownTo<S extends Shape>(shape: S, kind: KindFigures, each: number): S {
  const size = spreadOf(shape.size, each / (shape.weighs ?? holds(shape.size, kind)))
  return {...shape, size, name: calledBy(shape, size), weighs: each}
}

/** What a loaf without a tin that has grown to a size is called: by whole centimetres, and as it was where that is no other size. */
function calledBy({name, size}: Shape, {across = 0}: VesselSize): string {
  if (size.shape !== 'free-standing' || Math.abs(across - (size.across ?? across)) < sameSize) return name
  const called = /^free-standing [a-z]+ /.exec(name)?.[0] ?? 'free-standing loaf '
  return `${called}${Math.round(100 * across)} cm`
}

/** Sizes of loaves that are one to a cook, m apart. Common practice, no source. */
const sameSize = 0.005

/**
 * A loaf without a tin whose size the front matter states is of that size with the dough of the receipt's own weights in it. Where its
 * height is not stated, that is as much flatter or higher as its dough is less or more than the kind's would be.
 */
function asStated<S extends Shape>(
  shape: S,
  receipt: Receipt,
  kind: KindFigures,
  made: Pick<Makes, 'each' | 'pieces'>,
  mass: Range | null,
): S {
  const {size} = shape
  const {vessel} = receipt.facts
  if (size.shape !== 'free-standing' || mass === null || made.pieces !== null) return shape
  if (vessel === undefined || shape.unknown !== undefined) return grownTo(shape, kind, made.each)
  const across = size.across ?? 0
  const height = heightUntold(size)
    ? Math.min(across, Math.max(thinnest, size.height * (made.each / holds(size, kind))))
    : size.height
  return {...shape, size: {...size, height}, weighs: made.each}
}

/** True where a loaf's height is the usual one for its width, as it is where none is stated. */
function heightUntold({across, height}: VesselSize): boolean {
  const untold = readVessel(`free-standing ${across ?? 0} m`)
  return untold.ok && Math.abs(untold.value.height - height) < 1e-9
}

/** A loaf without a tin is no thinner, m. Common practice, no source. */
const thinnest = 0.01

function shapeOf(receipt: Receipt, kind: KindFigures): Shape | null {
  const stated = receipt.facts.vessel
  if (stated !== undefined) {
    const read = readVessel(stated)
    if (read.ok) return {size: read.value, name: read.name, stated: true}
  }
  const usual = readVessel(kind.vessel)
  // The reader's guess differs from the kind's only where the receipt names a vessel without its size.
  const guessed = receipt.inferred.find((one) => one.field === 'vessel')?.value
  if (guessed !== undefined && guessed !== kind.vessel) {
    const read = readVessel(guessed)
    if (read.ok) return {size: read.value, name: read.name, stated: true}
  }
  if (!usual.ok) return null
  return {size: usual.value, name: usual.name, stated: false, ...(stated === undefined ? {} : {unknown: stated})}
}

/** A vessel that is our own guess is taken smaller where the oven cannot take the usual one: by tenths, down to half. */
function smaller(shape: Shape, kind: KindFigures, fits: Context['fits']): Shape & {readonly why?: string} {
  if (shape.stated || fits(standing(shape, kind, holds(shape.size, kind)), 1) > 0) return shape
  for (const share of [0.9, 0.8, 0.7, 0.6, 0.5]) {
    const {size} = shape
    const less: VesselSize = {
      shape: size.shape,
      height: size.height * share,
      ...(size.across === undefined
        ? {length: (size.length ?? 0) * share, width: (size.width ?? 0) * share}
        : {across: size.across * share}),
    }
    const cm = [
      less.across ?? less.length,
      less.width,
      size.shape === 'sheet' || size.shape === 'free-standing' ? undefined : less.height,
    ]
    const name = `${size.shape === 'free-standing' ? 'free-standing loaf' : size.shape} ${cm
      .filter((one) => one !== undefined)
      .map((one) => Math.round(one * 100))
      .join(' x ')} cm`
    const found: Shape = {size: less, name, stated: true}
    if (fits(standing(found, kind, holds(less, kind)), 1) > 0)
      return {...found, why: `the usual ${shape.name} does not go into this oven`}
  }
  return shape
}

/**
 * Another vessel than the receipt's, as the day names it: filled as deep as the receipt's own is (by area), as long as it takes so much;
 * crocks and pie plates as full as they are, and a free-standing loaf by its volume, the cube of its width where no height is stated. From a tin to the bare bricks or
 * back it is filled as is usual for the kind. Common practice, no source.
 *
 * @returns the vessel; what the receipt makes, counted in such vessels; and the reason to tell
 */
function instead(
  own: Shape,
  {size, name}: {readonly size: VesselSize; readonly name: string},
  kind: KindFigures,
  made: Makes,
): {readonly shape: Shape; readonly made: Makes; readonly why: Inferred} {
  const free = (one: VesselSize): boolean => one.shape === 'free-standing'
  const from = own.size
  // A loaf whose height nobody states is as high for its width as the receipt's own.
  const to =
    free(from) && free(size) && heightUntold(size)
      ? {...size, height: (from.height * (size.across ?? 0)) / (from.across ?? 1)}
      : size
  const sheet = (one: VesselSize): boolean => one.shape === 'sheet'
  let each = holds(to, kind)
  let how = 'filled as is usual'
  if (free(from) && free(to)) {
    each = made.each * (brimVolume(to) / brimVolume(from))
    how = 'of the same dough'
  } else if (sheet(from) && sheet(to)) {
    each = made.each * (topArea(to) / topArea(from))
    how = 'covered as thickly'
  } else if (![from, to].some((one) => free(one) || sheet(one))) {
    // The share of its depth that the receipt fills of its own, and of the other vessel to be as deep.
    const share = Math.min(fullest[fillingOf(from, kind)], (fillOf(from, kind) * made.each) / holds(from, kind))
    const byVolume = [from, to].some((one) => one.shape === 'crock' || one.shape === 'pie plate')
    const deep = byVolume ? share : (share * from.height) / to.height
    const full = Math.min(deep, fullest[fillingOf(to, kind)])
    each = (holds(to, kind) / fillOf(to, kind)) * full
    how = full < deep ? 'filled as high as it may be' : byVolume ? 'as full' : 'filled as deep'
  }
  // To a hundredth, so that amounts stay fractions that can be read.
  const ratio = Math.max(0.01, Math.round((each / made.each) * 100) / 100)
  const shape: Shape = {size: to, name, stated: true, ...(free(to) ? {weighs: ratio * made.each} : {})}
  return {
    shape,
    made: {
      vessels: made.vessels / ratio,
      timesEach: made.timesEach.mul(new Fraction(Math.round(ratio * 100), 100)),
      pieces: made.pieces,
      each: ratio * made.each,
      usual: ratio * made.usual,
      inferred: made.inferred,
    },
    why: {
      field: 'vessel',
      value: name,
      why: `in place of ${own.name}, as the day asks; ${how}, one takes ${Math.round(ratio * 100)} % of what one of those does`,
    },
  }
}

/** The receipt's vessel as wide as the day asks, and no deeper than half as wide; null where one size does not tell it. */
function asWide(
  {size}: Shape,
  {metres, said}: {readonly metres: number; readonly said: string},
): {readonly size: VesselSize; readonly name: string} | null {
  const square = size.shape === 'square'
  if (size.across === undefined && !square) return null
  const height = Math.min(size.height, metres / 2)
  const name = `${size.shape === 'free-standing' ? 'free-standing loaf' : size.shape} ${said}`
  return {size: {shape: size.shape, height, ...(square ? {length: metres, width: metres} : {across: metres})}, name}
}

/** How much more than a vessel takes is told: what is weighed has icing and crust in it that do not fill it. Common practice, no source. */
const plainly = 1.25

function fillingOf(size: VesselSize, kind: KindFigures): keyof typeof filled {
  if (size.shape === 'pie plate' || size.shape === 'crock') return size.shape
  if (kind.dough !== undefined) return 'dough'
  return kind.safe !== undefined || kind.id.includes('pudding') || kind.id.includes('custard') ? 'custard' : 'batter'
}

const fillOf = (size: VesselSize, kind: KindFigures): number => filled[fillingOf(size, kind)]

/** Kilograms of mixture a vessel takes at the most; without limit for what stands in none. */
function takes(size: VesselSize, kind: KindFigures): number {
  if (size.shape === 'sheet' || size.shape === 'free-standing') return Number.POSITIVE_INFINITY
  const filling = fillingOf(size, kind)
  return (holds(size, kind) / filled[filling]) * fullest[filling]
}

const LOAF = /^(?:free-standing )?loaf /

/** Kilograms of mixture a vessel takes when filled as usual. */
function holds(size: VesselSize, kind: KindFigures): number {
  if (size.shape === 'sheet') {
    const usual = readVessel(kind.vessel)
    // What is not a loaf lies as thick on a sheet as in its own vessel.
    return usual.ok && !LOAF.test(kind.vessel) ? kind.mass.likely * (topArea(size) / topArea(usual.value)) : kind.mass.likely
  }
  if (size.shape === 'free-standing') {
    // Volume as the cube of the width, from the kind's own loaf where it is one, else from a loaf of 24 cm weighing 0.95 kg.
    const usual = readVessel(kind.vessel)
    const [across, mass] =
      usual.ok && usual.value.shape === 'free-standing' ? [usual.value.across ?? 0.24, kind.mass.likely] : [0.24, 0.95]
    return mass * ((size.across ?? across) / across) ** 3
  }
  const fill = fillOf(size, kind)
  const litres = vesselOf(size, fill, '').millilitres / 1000
  return (
    litres *
    (kind.dough !== undefined
      ? heaviness.dough
      : size.shape === 'crock' || size.shape === 'pie plate' || kind.safe !== undefined
        ? heaviness.other
        : heaviness.batter)
  )
}

/**
 * Flour where the receipt leaves it to the hand (“flour enough to roll it out”), as a share of what wets it in a dough, and of all the rest in
 * anything else. Common practice, no source: doughs are wetted by 55 to 70 % of their flour, cakes hold four tenths of the rest, biscuits as
 * much.
 */
const flourByHand = {dough: {low: 1.4, likely: 1.6, high: 1.8}, batter: {low: 0.4, likely: 0.7, high: 1}} as const
const flours: ReadonlySet<string | undefined> = new Set(['flour', 'meal', 'starch'])
const wets: ReadonlySet<string | undefined> = new Set(['liquid', 'dairy', 'egg', 'spirit'])

interface BatchMass {
  /** Weight of the receipt's mixture as written, kg; null where nothing of it can be weighed. */
  readonly mass: Range | null
  readonly unweighed: readonly string[]
  /** Of that, flour of which the receipt gives no amount, kg. */
  readonly flour: {readonly item: string; readonly kilograms: Range} | null
}

function batchMass(receipt: Receipt, kind: KindFigures): BatchMass {
  let mass = exactly(0)
  let wet = exactly(0)
  let floury = false
  let byHand: string | null = null
  const unweighed: string[] = []
  for (const {item, amount, grams, millilitres} of receipt.ingredients) {
    const weight = grams ?? millilitres
    const group = lookUpItem(item)?.group
    if (weight === null) {
      if (amount !== null) unweighed.push(item)
      else if (group === 'flour' || group === 'meal') byHand ??= item
      continue
    }
    mass = plus(mass, scaledBy(weight, 1 / 1000))
    if (wets.has(group)) wet = plus(wet, scaledBy(weight, 1 / 1000))
    floury ||= flours.has(group)
  }
  if (!(mass.likely > 0)) return {mass: null, unweighed, flour: null}
  const filling = kind.dough === undefined ? 'batter' : 'dough'
  const of = filling === 'dough' ? wet : mass
  // Flour for the tin or the board is not what is meant where the rest is no mixture of flour.
  if (byHand === null || floury || !(of.likely > 0) || notFloury(kind)) return {mass, unweighed, flour: null}
  const share = flourByHand[filling]
  const kilograms = {low: of.low * share.low, likely: of.likely * share.likely, high: of.high * share.high}
  return {mass: plus(mass, kilograms), unweighed, flour: {item: byHand, kilograms}}
}

/** What is no mixture of flour. */
const notFloury = (kind: KindFigures): boolean =>
  notMixed.has(kind.id) || kind.safe !== undefined || kind.id.includes('pudding') || kind.id.includes('custard')

const isSheet = (shape: Shape): boolean => shape.size.shape === 'sheet'
/** How many vessels, or pieces, the receipt makes once. */
interface Makes {
  readonly vessels: number
  /** How many times the receipt is made for one vessel. */
  readonly timesEach: Fraction
  readonly pieces: number | null
  /** Kilograms in one vessel when the receipt is made as written, and when it is filled as usual. */
  readonly each: number
  readonly usual: number
  readonly inferred: readonly Inferred[]
}

function makes(receipt: Receipt, kind: KindFigures, shape: Shape, mass: Range | null): Makes {
  const made = madeIn(receipt, kind, shape, mass)
  return {...made, timesEach: new Fraction(1, made.vessels)}
}

function madeIn(receipt: Receipt, kind: KindFigures, shape: Shape, mass: Range | null): Omit<Makes, 'timesEach'> {
  const inferred: Inferred[] = []
  const serves = receipt.serves
  const noun = serves === null ? '' : (serves.of.toLowerCase().split(/\s+/).pop() ?? '')
  const persons = /^(?:person|people|serving|portion|guest|helping)s?$/.test(noun)
  // "Enough for a quart" counts no vessels.
  const measured = words.measure.has(fold(noun)) || lookUpMeasure(fold(noun))?.dimension === 'mass'
  const yields = serves === null || persons || measured ? null : (serves.low + serves.high) / 2
  const usualEach = shape.stated || !kind.known ? holds(shape.size, kind) : kind.mass.likely
  if (yields !== null && yields > 0 && serves?.vessels !== undefined) {
    const {vessels} = serves
    return {vessels, pieces: yields, each: mass === null ? usualEach : mass.likely / vessels, usual: usualEach, inferred}
  }
  if (yields !== null && yields > 0) {
    const each = mass === null ? usualEach : mass.likely / yields
    // "12 cakes" out of one pound of flour are small ones on a sheet, not twelve tins.
    if (
      !isSheet(shape) &&
      // Of what stands in no tin nothing is cut: its pieces are loaves.
      (!words.cut.has(fold(noun)) || shape.size.shape === 'free-standing') &&
      each < usualEach * 3 &&
      (each > usualEach / 4 || words.vessel.has(fold(noun)))
    )
      return {vessels: Math.max(1, Math.round(yields)), pieces: null, each, usual: usualEach, inferred}
    // "One tray": that is what it is made for, whatever it weighs. "Six tartlet tins" stand on a sheet.
    if (isSheet(shape) && words.vessel.has(fold(noun)) && (yields <= 1 || each > usualEach / 4)) {
      const trays = Math.max(1, Math.round(yields))
      return {vessels: trays, pieces: null, each: mass === null ? usualEach : mass.likely / trays, usual: usualEach, inferred}
    }
    const sheets = mass === null ? Math.max(1, Math.round(yields / 16)) : Math.max(1, Math.ceil(mass.likely / usualEach - 0.25))
    return {vessels: sheets, pieces: yields, each: mass === null ? usualEach : mass.likely / sheets, usual: usualEach, inferred}
  }
  if (mass === null) {
    inferred.push({
      field: 'amount',
      value: '1 vessel',
      why: 'nothing in the receipt can be weighed; it is taken to fill one vessel',
    })
    return {vessels: 1, pieces: null, each: usualEach, usual: usualEach, inferred}
  }
  const vessels = Math.max(1, Math.round(mass.likely / usualEach))
  inferred.push({
    field: 'makes',
    value: `${vessels} × ${asStated(shape, receipt, kind, {each: mass.likely / vessels, pieces: null}, mass).name}`,
    why: `the receipt does not say how much it makes; its ${kilograms(mass.likely)} at about ${kilograms(usualEach)} each`,
  })
  let pieces: number | null = null
  const piece = pieceMass[kind.id]
  if (isSheet(shape) && piece !== undefined) pieces = Math.max(1, Math.round(mass.likely / piece.likely))
  return {vessels, pieces, each: mass.likely / vessels, usual: usualEach, inferred}
}

/** Two whole figures, or one where they are alike. */
const span = (low: number, high: number): string =>
  Math.round(low) === Math.round(high) ? String(Math.round(low)) : `${Math.round(low)}–${Math.round(high)}`

const kilograms = (kg: number): string => (kg < 1 ? `${Math.round(kg * 100) * 10} g` : `${Math.round(kg * 100) / 100} kg`)

/** How many vessels are asked for, and how many times that makes the receipt. */
interface Order {
  readonly count: number
  readonly times: Fraction
  /** Pieces asked for, where the order was in pieces. */
  readonly pieces: number | null
  readonly why: Inferred | null
  /** Of what is to fill the floor: how many stand on it at once. */
  readonly fills?: number
}

/** An order that cannot be made, and what to write instead. */
interface Unread {
  readonly reason: string
  readonly suggest?: string
}

/**
 * What an order counts: vessels; what the receipt makes many of in one, such as rolls; or what a vessel is cut into. In anything but a sheet,
 * what is no cut and not what the receipt itself counts is a vessel: “2 cakes”.
 */
function countedAs(of: string, receipt: Receipt, shape: Shape): 'vessels' | 'pieces' | 'cut' {
  const [head = ''] = of.split(' of ')
  const said = head.split(' ').pop() ?? ''
  const noun = fold(germanYields.get(plainFold(said)) ?? said)
  if (words.vessel.has(noun)) return 'vessels'
  if (words.cut.has(noun)) return 'cut'
  if (isSheet(shape)) return 'pieces'
  const {serves} = receipt
  // “48 brownies” of “Brownies”, “Yield: 16 squares”: what the tin is cut into goes by the title's name.
  const title =
    receipt.title
      .split(/[^\p{L}]+/u)
      .filter((word) => word !== '')
      .pop() ?? ''
  if (receipt.kind === 'tray cakes' && noun === fold(title) && title.endsWith('s')) return 'cut'
  // “24 custards” of “Custards”, of which “ten cups” stand in a pan.
  const small = serves !== null && words.smallVessel.has(fold(serves.of))
  if (small && receipt.title.split(/[^\p{L}]+/u).some((word) => word.endsWith('s') && fold(word) === noun)) return 'pieces'
  // “Makes 20” counts what the receipt is called, whatever the day calls it.
  const unnamed = serves !== null && serves.of === 'pieces' && !/piece/i.test(serves.text)
  return unnamed || noun === fold(serves?.of.split(' ').pop() ?? '') ? 'pieces' : 'vessels'
}

/**
 * Kilograms in a vessel as it is meant to be filled, where an order by weight leaves that open. A receipt that hardly covers the bottom is no
 * guide to it.
 */
const meantFill = (made: Makes): number => (made.each < 0.4 * made.usual ? made.usual : made.each)

/** The whole number nearest by its ratio: one and a half tins' worth is rather three quarters in each of two than half as much again in one. */
function nearest(vessels: number): number {
  const fewer = Math.floor(vessels)
  return vessels * vessels > fewer * (fewer + 1) ? fewer + 1 : fewer
}

/** What keeps more than so many out, of what is to fill the floor. */
const noMore = {
  heat: 'this day has no heat or no time for more',
  hands: 'this day has no hands for more',
  others: 'what else this day bakes leaves no place for more',
} as const

function orderOf(
  asked: Asked,
  made: Makes,
  feedsEach: Range,
  shape: Shape,
  /** Kilograms that one vessel takes at the most. */
  most: number,
  /** What one with so many kilograms in it is called. */
  named: (each: number) => string,
  counted: (text: string) => 'vessels' | 'pieces' | 'cut',
  floor: () => number,
  mass: Range | null,
  /** Share of its weight that goes off in the oven. */
  loss: Range,
  {atMost, limit}: Pick<DayAmount, 'atMost' | 'limit'>,
): Order | Unread {
  const unweighed = {reason: 'nothing in this receipt can be weighed, so it cannot be made by weight'}
  const unbaked = (baked: number): number => baked / (1 - loss.likely)
  const goesOff = `${Math.round(loss.low * 100)}–${percentOf(loss.high)} of its weight goes off in the oven`

  const whole = (vessels: number): Order => {
    const count = Math.max(1, Math.ceil(vessels - 1e-9))
    return {count, times: made.timesEach.mul(count), pieces: null, why: null}
  }
  switch (asked.kind) {
    case 'people': {
      const order = whole(asked.people / feedsEach.likely)
      return {
        ...order,
        why: {
          field: 'count',
          value: `${order.count} × ${shape.name}`,
          why: `for ${asked.people} at about ${Math.round(feedsEach.likely * 10) / 10} to each; ${span(Math.floor(order.count * feedsEach.low), Math.ceil(order.count * feedsEach.high))} would be fed`,
        },
      }
    }
    case 'count': {
      if (asked.each !== undefined) {
        if (mass === null) return unweighed
        const {kilograms: said, baked} = asked.each
        const each = baked ? unbaked(said) : said
        const times = new Fraction(each * asked.count).div(new Fraction(mass.likely)).simplify(0.0005)
        const apart = counted(asked.of) !== 'vessels' && isSheet(shape)
        const count = apart ? Math.max(1, nearest((each * asked.count) / meantFill(made))) : asked.count
        return {
          count,
          times,
          pieces: apart ? asked.count : null,
          why: {
            field: 'count',
            value: `${count} × ${named((each * asked.count) / count)}`,
            why: baked
              ? `${asked.count} ${asked.of} of ${kilograms(said)} when baked: ${kilograms(each)} each of mixture before baking, for ${goesOff}`
              : `${asked.count} ${asked.of} of ${kilograms(each)} each before baking`,
          },
        }
      }
      const as = counted(asked.of)
      if (made.pieces === null && as === 'cut') {
        return {
          reason: `“${asked.count} ${asked.of}”: the receipt does not say how many it makes`,
          suggest: `write “2 tins” or “for ${asked.count}”, or in the receipt “Makes 12 ${asked.of}”`,
        }
      }
      // Two focaccie are two sheets; thirty pasties are not thirty.
      if (made.pieces === null && as === 'pieces' && isSheet(shape) && asked.count > 4 * Math.max(1, made.vessels)) {
        return {
          reason: `“${asked.count} ${asked.of}”: the receipt does not say how many it makes`,
          suggest: `write “2 sheets” or “for ${asked.count}”, or in the receipt “Makes 12 ${asked.of}”`,
        }
      }
      if (as === 'vessels' || made.pieces === null) return whole(asked.count)
      const times = new Fraction(asked.count).div(new Fraction(made.pieces).simplify(0.001))
      const count = Math.max(1, Math.ceil(times.valueOf() * made.vessels - 0.15))
      return {
        count,
        times,
        pieces: asked.count,
        why: {
          field: 'count',
          value: `${count} × ${shape.name}`,
          why:
            asked.count < count
              ? `${asked.count} ${asked.of}, in ${count} ${isSheet(shape) ? 'sheets' : 'vessels'}`
              : `${asked.count} ${asked.of}, ${Math.ceil(asked.count / count)} to a ${isSheet(shape) ? 'sheet' : 'vessel'}`,
        },
      }
    }
    case 'times': {
      const count = Math.max(1, Math.ceil(asked.times.valueOf() * made.vessels - 0.1))
      return {
        count,
        times: asked.times,
        pieces: made.pieces === null ? null : Math.round(asked.times.valueOf() * made.pieces),
        why: null,
      }
    }
    case 'weight': {
      if (mass === null) return unweighed
      const all = asked.baked === undefined ? asked.kilograms : unbaked(asked.kilograms)
      const times = new Fraction(all).div(new Fraction(mass.likely)).simplify(0.0005)
      const count = Math.max(1, nearest(all / meantFill(made)), Math.ceil(all / most - 1e-9))
      const before = `${kilograms(all)} of mixture before baking, ${kilograms(all / count)} in each`
      return {
        count,
        times,
        pieces: null,
        why: {
          field: 'count',
          value: `${count} × ${named(all / count)}`,
          why: asked.baked === undefined ? before : `${kilograms(asked.kilograms)} when baked: ${before}, for ${goesOff}`,
        },
      }
    }
    case 'floor': {
      const fills = floor()
      if (fills === 0) return {reason: `${shape.name} does not go into this oven`}
      const count = Math.min(fills, atMost ?? fills)
      return {
        ...whole(count),
        fills,
        why: {
          field: 'count',
          value: `${count} × ${shape.name}`,
          why:
            count < fills
              ? `${fills} stand on the floor at once, and ${limit === undefined ? 'the plan has a place for so many' : noMore[limit]}`
              : 'as many as stand on the floor at once',
        },
      }
    }
  }
}

/** An order in so many vessels as the day says: they share what is asked for, however full that makes them. */
function orderAmong(
  asked: Asked,
  many: number,
  order: Order,
  made: Makes,
  /** What the receipt makes in its own vessels: "2 pies in 1 oblong tin" is what two of those hold. */
  own: Makes,
  feedsEach: Range,
  named: (each: number) => string,
  mass: Range | null,
): Order {
  const times =
    asked.kind === 'people'
      ? new Fraction((made.timesEach.valueOf() * asked.people) / feedsEach.likely).simplify(0.005)
      : asked.kind === 'count' && order.pieces === null
        ? own.timesEach.mul(asked.count)
        : order.times
  const each = mass === null ? made.each : (mass.likely * times.valueOf()) / many
  return {
    count: many,
    times,
    pieces: order.pieces,
    why: {field: 'count', value: `${many} × ${named(each)}`, why: `as many as the day says, with ${kilograms(each)} in each`},
  }
}

/** More on a sheet than this many times what the receipt or its kind puts there is crowded. Common practice, no source. */
const crowded = 1.5

/** That so many vessels, said by the day, do not take what they are to hold. */
function overfull(
  {count, each, name, most}: {readonly count: number; readonly each: number; readonly name: string; readonly most: number},
  receipt: Receipt,
): {readonly reason: string; readonly suggest: string} | null {
  if (each <= most * (1 + slightly)) return null
  return {
    reason: `“${receipt.title}” comes to ${kilograms(each)} in each ${name}, which takes ${kilograms(most)} at the most`,
    suggest: `write “in ${Math.ceil((count * each) / most - 1e-9)} ${name}” or more, or ask for less`,
  }
}

/** What lies less deep than this share of what its time was given for dries before it is done. Common practice, no source. */
const shallow = 0.5

/** What a vessel takes at the most is known no better. Common practice, no source. */
const slightly = 0.05

/** What a day's line counts of a receipt, as it would write several of them. */
function madeOf({serves, title}: Receipt): string {
  const said = serves === null || feeds.test(serves.of) ? '' : serves.of
  // “Makes 24.” of “Shortbread fingers”
  const named = (title.toLowerCase().match(/\p{L}+/gu) ?? []).at(-1) ?? ''
  if ((said === '' || said === 'pieces') && named.endsWith('s') && countedNouns().has(fold(named))) return named
  if (said === '' || /^(?:mass|volume)$/.test(lookUpMeasure(fold(said))?.dimension ?? '')) return 'loaves'
  return said.endsWith('s') ? said : pluralOf(said, 2)
}
const feeds = /^(?:person|people|serving|portion|guest|helping)/

function dishesOf(item: DayAmount, receipt: Receipt, context: Context): Dish[] {
  const {say} = context
  const asked = readAsked(item.amount, context.day.people, madeOf(receipt))
  if (!asked.ok) {
    say('error', 'scale-amount', asked.reason, asked.suggest, item.amountAt?.[asked.word ?? 0] ?? item.amountAt?.[0])
    return []
  }
  const baked = asked.value.kind === 'weight' ? asked.value.baked : undefined
  if (baked !== undefined && !comesOut(baked, receipt, item)) {
    say(
      'error',
      'scale-amount',
      `“${baked}” is nothing that comes out of the oven here`,
      'write the weight of the dough or mixture as “6 lb of dough”, or of what is baked as “6 lb of bread”',
      item.amountAt?.[item.amountAt.length - baked.split(' ').length],
    )
    return []
  }
  const odd = asked.value.kind === 'count' ? unknownNoun(asked.value.of, receipt, item) : null
  if (odd !== null && asked.value.kind === 'count') {
    const from = (item.amountAt?.length ?? 0) - asked.value.of.split(' ').length
    say(
      'warning',
      'scale-noun',
      `“${odd.word}” is nothing that is counted here; taken as ${asked.value.count} of what the receipt makes`,
      'write the vessel or the piece, such as “8 loaves” or “2 crocks”, and “wanted by” before a time',
      item.amountAt?.[from + odd.place],
    )
  }
  if (asked.value.kind === 'count' && asked.value.each === undefined) saySize(asked.value.of, receipt, item, say)
  const kind = kindOf(receipt, say)
  if (kind.vessel === 'none' && receipt.facts.vessel === undefined) {
    say(
      'warning',
      'scale-not-baked',
      `“${receipt.title}” is not baked (${kind.title.toLowerCase()}); left out of the plan`,
      'state vessel, oven and bake in its front matter if it is',
    )
    return []
  }
  const usualShape = shapeOf(receipt, kind)
  const elsewhere = asked.value.vessel !== undefined || (asked.value.kind === 'count' && asked.value.across !== undefined)
  const written = usualShape === null || elsewhere ? usualShape : smaller(usualShape, kind, context.fits)
  if (written === null) {
    say(
      'error',
      'scale-vessel',
      `no vessel is known for “${receipt.title}”`,
      'state one in its front matter: vessel: round 9 in x 2 in',
    )
    return []
  }
  const {mass, unweighed, flour} = batchMass(receipt, kind)
  if (unweighed.length > 0 && mass !== null) {
    say('info', 'scale-weight', `${receipt.title}: ${unweighed.join(', ')} cannot be weighed, so its weight is a little low`)
  }
  const asWritten = makes(receipt, kind, written, mass)
  const own = asStated(written, receipt, kind, asWritten, mass)
  const across = asked.value.kind === 'count' ? asked.value.across : undefined
  const wide = across === undefined ? undefined : asWide(own, across)
  if (wide === null) {
    say(
      'error',
      'scale-amount',
      `“${item.amount}”: one size does not tell ${own.name}`,
      'write the vessel with its sizes behind the number, such as “2 loaves in loaf tins 9 x 5 x 3 in”',
      item.amountAt?.[0],
    )
    return []
  }
  const elseIn = asked.value.vessel ?? wide
  const other = elseIn === undefined ? null : instead(own, elseIn, kind, asWritten)
  const shape: Shape & {readonly why?: string} = other?.shape ?? own
  const made = other?.made ?? asWritten
  const feedsEach = feedsOf(receipt, kind, made)
  const vesselAt = (each: number): Vessel => standing(other?.shape ?? own, kind, each)
  const most = takes(shape.size, kind)
  const {among} = asked.value
  const named = (each: number): string => vesselAt(each).name
  const alone = orderOf(
    asked.value,
    made,
    feedsEach,
    shape,
    most,
    named,
    (of) => countedAs(of, receipt, shape),
    () => context.fits(vesselAt(made.each), Number.POSITIVE_INFINITY),
    mass,
    kind.waterLoss,
    item,
  )
  const people = asked.value.kind === 'people' ? asked.value.people / feedsEach.likely : null
  const ask = (order: Order | null): Ask => ({
    item,
    receipt,
    asked: asked.value,
    size: free(shape) ? spreadOf(shape.size, made.each / (shape.weighs ?? holds(shape.size, kind))) : shape.size,
    name: shape.name,
    vessels: people ?? order?.count ?? null,
    times: people === null ? (order?.times.valueOf() ?? 0) : made.timesEach.valueOf() * people,
    mass: mass?.likely ?? null,
  })
  if ('reason' in alone) {
    const way = asked.value.kind === 'floor' ? wayIn(ask(null), context) : null
    const suggest = way === null ? alone.suggest : `write “${way.amount}”, which goes in`
    say('error', 'scale-amount', alone.reason, suggest, item.amountAt?.[0])
    return []
  }
  const order = among === undefined ? alone : orderAmong(asked.value, among.count, alone, made, asWritten, feedsEach, named, mass)
  const each = mass === null ? made.each : (mass.likely * order.times.valueOf()) / order.count
  const vessel = vesselAt(each)
  const fits = context.fits(vessel, order.count)
  // It stays in the plan, so that the planner names it among those it cannot place.
  const way = fits === 0 ? wayIn(ask(order), context) : null
  if (fits === 0) {
    const [wide, high] = [context.mouth.width, context.mouth.height].map(centimetres)
    say(
      'warning',
      'scale-mouth',
      `${vessel.name} does not go into this oven: ${sizes(vessel)}, and the mouth, the vault or the floor is smaller`,
      way === null
        ? `name a vessel less than ${wide} wide and ${high} high behind the amount, or state it in the receipt’s front matter`
        : `write “${way.amount}” behind its link, which goes in and holds as much; or name another vessel less than ${wide} wide and ${high} high`,
    )
  }
  const yielded = made.pieces !== null && made.pieces < made.vessels && !isSheet(shape)
  const tooFull =
    among === undefined || mass === null
      ? null
      : overfull(
          {
            count: order.count,
            each,
            name: vessel.name,
            most: isSheet(shape) ? crowded * Math.max(made.each, made.usual) : most,
          },
          receipt,
        )
  if (tooFull !== null && among !== undefined)
    say('warning', 'scale-full', tooFull.reason, tooFull.suggest, item.amountAt?.[among.word])
  else if (mass !== null && (yielded || each > plainly * most))
    say(
      'warning',
      'scale-full',
      yielded
        ? `“${receipt.title}” makes ${made.pieces} of ${kilograms(mass.likely)}, and ${shape.name} takes ${kilograms(most)} at the most; planned in ${made.vessels} of them`
        : `“${receipt.title}” comes to ${kilograms(each)} in each ${shape.name}, which takes ${kilograms(most)} at the most`,
      'state a larger vessel in the receipt’s front matter, or in its text how many it makes',
    )
  const inferred: Inferred[] = [...receipt.inferred, ...made.inferred, ...(order.why === null ? [] : [order.why])]
  const usual = other?.shape ?? (own.name === written.name ? own : written)
  const grown: Inferred[] =
    vessel.name === usual.name
      ? []
      : [
          {
            field: 'size',
            value: vessel.name,
            why: `as large as ${kilograms(each)} of dough make it; ${usual.name} is of ${kilograms(usual.weighs ?? holds(usual.size, kind))}`,
          },
        ]
  const replaced = other !== null ? [other.why] : shape.unknown === undefined ? [] : [unknownVessel(written, shape.unknown, kind)]
  if (other !== null) {
    const guess = inferred.findIndex((one) => one.field === 'vessel')
    if (guess >= 0) inferred.splice(guess, 1)
    inferred.push(other.why)
  } else if (shape.why !== undefined) {
    const guess = inferred.findIndex((one) => one.field === 'vessel')
    if (guess >= 0) inferred.splice(guess, 1)
    inferred.push({field: 'vessel', value: shape.name, why: shape.why})
  } else if (shape.unknown !== undefined) {
    inferred.push(...replaced)
  } else if (!shape.stated && !inferred.some((one) => one.field === 'vessel')) {
    inferred.push({field: 'vessel', value: shape.name, why: `the receipt names none; usual for ${kind.title.toLowerCase()}`})
  }
  if (flour !== null)
    inferred.push({
      field: flour.item,
      value: `about ${kilograms(flour.kilograms.likely)}`,
      why: 'the receipt gives no amount of it; reckoned from the rest, for the receipt made once, to know how much it makes',
    })
  const base = heatNeed(receipt, kind, kind.title.toLowerCase())
  // What comes of the size, apart from what is supplied where the receipt is silent.
  const sized: Inferred[] = [
    ...replaced,
    ...grown,
    ...inferred.filter((one) => one.field === flour?.item),
    ...made.inferred,
    ...(order.why === null ? [] : [order.why]),
  ]
  for (const one of base.inferred) if (!inferred.some((other) => other.field === one.field)) inferred.push(one)
  // The receipt's minutes were given for the receipt made once; the kind's for the kind's usual vessel and weight.
  const meant = asked.value.kind === 'weight' ? meantFill(asWritten) : asWritten.each
  const timedFor = base.ownTime ? {...own, each: meant} : {...usualShapeOf(written, kind), each: kind.mass.likely}
  const depth = depthRatio({...shape, vessel, each}, timedFor, kind)
  const thicker = Math.max(THINNEST, depth)
  const asLong = kind.softens === true && thicker < 1
  // Sticks lie loose, and the air goes between.
  const loose = mayTakeFire(kind.cautions)
  const need = Math.abs(thicker - 1) > 0.05 && !asLong && !loose ? thickened(base.need, thicker) : base.need
  if (depth < THINNEST && !asLong && !loose)
    say(
      'warning',
      'scale-thin',
      `“${receipt.title}” is ${Math.round(depth * 100)} % as deep in ${vessel.name} as its time was given for, and no rule of time goes so far; it is timed as a quarter as deep`,
      'state a smaller vessel in the receipt’s front matter, make more of it, or stand by it as it bakes',
      item.amountAt?.[0],
    )
  else if (among !== undefined && depth < shallow && !asLong && !loose && shape.size.shape !== 'free-standing') {
    const fewer = Math.floor((among.count * depth) / shallow)
    say(
      'warning',
      'scale-thin',
      `“${receipt.title}” is ${Math.round(depth * 100)} % as deep in ${vessel.name} as its time was given for, and dries soon`,
      fewer > 0 ? `write “in ${fewer} ${vessel.name}”, or ask for more` : 'name a smaller vessel, or ask for more',
      item.amountAt?.[among.word],
    )
  }
  if (need !== base.need) {
    sized.push({
      field: 'time',
      value: `${span(need.minutes.low, need.minutes.high)} min`,
      why:
        depth < THINNEST
          ? `${Math.round((1 - depth) * 100)} % thinner than its time was given for: timed as a quarter as thick, so ${percentOf(thicker * thicker)} of ${span(base.need.minutes.low, base.need.minutes.high)} min`
          : `${Math.round(Math.abs(thicker - 1) * 100)} % ${thicker > 1 ? 'thicker' : 'thinner'} than its time was given for: the time goes as the square, so ${percentOf(thicker * thicker)} of ${span(base.need.minutes.low, base.need.minutes.high)} min`,
    })
  }
  if (asLong && thicker < 0.95)
    sized.push({
      field: 'time',
      value: `${span(need.minutes.low, need.minutes.high)} min`,
      why: 'shallower than its time was given for; it softens in its own time, so the time is kept',
    })
  const limit = limitOf(context, each, fits === 0 ? order.count : fits, order, receipt, kind, say)
  const batches = Math.ceil(order.count / limit)
  const floors = fits === 0 ? 1 : Math.ceil(order.count / floorOf(fits, order))
  if (floors > mostFloors) {
    say(
      'error',
      'scale-amount',
      `${order.count} × ${vessel.name} of “${receipt.title}” fill the floor ${floors} times, more than this oven bakes in a day`,
      'ask for less, or for part of it on another day',
      item.amountAt?.[0],
    )
    return []
  }
  if (batches > 1)
    sized.push({
      field: 'batches',
      value: String(batches),
      why: `at most ${limit} at once: ${limit < fits || asked.value.kind === 'floor' ? 'what the mixing bowl takes' : 'what the floor holds'}`,
    })
  const dough = doughOf(receipt, kind)
  const warm = dough === null ? null : spoilsWarm(receipt.title, dough)
  if (warm !== null) say('warning', 'scale-spoils', warm.reason, warm.suggest)
  const dishes: Dish[] = []
  let left = order.count
  for (let batch = 0; batch < batches; batch++) {
    const count = Math.ceil(left / (batches - batch))
    left -= count
    const times = order.times.mul(new Fraction(count, order.count))
    dishes.push(
      dishFrom({
        item,
        receipt,
        kind,
        vessel,
        count,
        times,
        need,
        each,
        feedsEach,
        vessels: made.vessels,
        context,
        thicker,
        inferred,
        sized,
        batch: batch + 1,
        batches,
        atOnce: floorOf(fits, order),
        fills: order.fills !== undefined,
      }),
    )
  }
  if (way === null) return dishes
  const wayOut = {...way, of: dishes.map(({id}) => id)}
  return dishes.map((dish) => ({...dish, instead: wayOut}))
}

/** An order in a vessel that does not go into the oven. */
interface Ask {
  readonly item: DayAmount
  readonly receipt: Receipt
  readonly asked: Asked
  /** The vessel, and what it is called. */
  readonly size: VesselSize
  readonly name: string
  /** How many of it, as full as they are; null where it is to fill the floor. */
  readonly vessels: number | null
  /** How many times the receipt that is. */
  readonly times: number
  /** Weight of the receipt made once, kg; null where nothing of it can be weighed. */
  readonly mass: number | null
}

/** What must not be said of a line that is offered as a way out. */
const noWay: ReadonlySet<string> = new Set(['scale-mouth', 'scale-full', 'scale-thin'])
/** As many of a smaller vessel as hold what was asked for, and one or two more where so many are too full. */
const moreVessels = [0, 1, 2] as const
/** How much more or less than was asked for is as much, as a share: a vessel comes whole. Common practice, no source. */
const asMuch = 0.15

/**
 * The line of the day by which as much is baked in vessels of the same shape that go in, and the dishes it makes; null where the shape would
 * have to be less than half as large. Each line is taken as the day would have it.
 */
function wayIn(ask: Ask, context: Context): Omit<NonNullable<Dish['instead']>, 'of'> | null {
  const {item, receipt, vessels, times} = ask
  if (context.tried) return null
  const inches = inInches(ask.name)
  const size = passingSize(ask.size, inches, (one) => context.fits(vesselOf(one, 1, ask.name), 1) > 0)
  if (size === null) return null
  const {amountAt: _at, ...line} = item
  for (const more of moreVessels) {
    const count = asManyOf(size, ask.size, vessels ?? 1) + more
    for (const amount of linesFor(ask, count, vesselWritten(size, inches, count > 1 && vessels !== null), context.day.people)) {
      const rules: string[] = []
      const dishes = dishesOf({...line, amount}, receipt, {
        ...context,
        used: new Map(context.used),
        tried: true,
        say: (severity, rule) => void rules.push(severity === 'error' ? 'scale-mouth' : rule),
      })
      const made = dishes.reduce((sum, dish) => sum + new Fraction(dish.times).valueOf(), 0)
      if (
        dishes.length > 0 &&
        !rules.some((rule) => noWay.has(rule)) &&
        (vessels === null || Math.abs(made / times - 1) <= asMuch)
      )
        return {amount, dishes}
    }
  }
  return null
}

/** How a day's line may ask for as much in so many of another vessel: in its own words where they name none, else by number or by weight. */
function linesFor({item, asked, vessels, times, mass}: Ask, count: number, vessel: string, people: number): string[] {
  const own = item.amount === null || item.amount.trim() === '' ? `for ${people}` : item.amount.trim()
  if (vessels === null) return [`fill the floor in ${vessel}`]
  const sized = asked.vessel !== undefined || asked.among !== undefined || (asked.kind === 'count' && asked.across !== undefined)
  return [
    ...(sized ? [] : [`${own} in ${count} ${vessel}`]),
    ...(sized && asked.kind === 'count' && asked.among === undefined ? [`${count} ${vessel}`] : []),
    ...(mass === null ? [] : [`${Math.round(100 * mass * times) / 100} kg in ${count} ${vessel}`]),
  ]
}

const free = ({size}: Shape): boolean => size.shape === 'free-standing'

const unknownVessel = (shape: Shape, unknown: string, kind: KindFigures): Inferred => ({
  field: 'vessel',
  value: shape.name,
  why: `“${unknown}” is no vessel known here; usual for ${kind.title.toLowerCase()}`,
})
let counted: ReadonlySet<string> | null = null
const countedNouns = (): ReadonlySet<string> => {
  counted ??= new Set([
    ...words.counted,
    ...words.vessel,
    ...[...THINGS].map(fold),
    // What is counted comes last: “banana bread” makes bread a noun that may be asked for, and no banana.
    ...kinds.flatMap((row) => [row.title, ...row.words, ...(row.titles ?? [])]).flatMap((words) => foldAll(words).slice(-1)),
    ...vessels.flatMap((row) => row.spellings).flatMap(foldAll),
  ])
  return counted
}

/** Whether a noun is what comes out of the oven of a receipt, and no ingredient: what one makes, or a name of the receipt or of its kind. */
function comesOut(noun: string, receipt: Receipt, item: DayAmount): boolean {
  const kind = receipt.kind === null ? null : lookUpKind(receipt.kind)
  const own = [receipt.title, item.title, receipt.serves?.of ?? '']
  // “Flour bread” is bread, and no flour.
  const named = [kind?.title ?? '', ...(kind?.words ?? []), ...(kind?.endings ?? [])].flatMap((text) => foldAll(text).slice(-1))
  const last = noun.split(' ').at(-1) ?? ''
  return (
    THINGS.has(last) ||
    germanYields.has(plainFold(last)) ||
    [...own.flatMap((text) => foldAll(text)), ...named].includes(fold(last))
  )
}

/** “12 large rolls” says no figure: they are made as large as the receipt's, where it does not say so itself. */
function saySize(of: string, receipt: Receipt, item: DayAmount, say: Say): void {
  const all = of.split(' ')
  const place = all.findIndex((word) => words.size.has(plainFold(word)))
  if (place < 0 || place === all.length - 1 || foldAll(receipt.title).includes(fold(all[place]!))) return
  say(
    'warning',
    'scale-size',
    `“${all[place]}” says no size: made as large as the receipt has them`,
    'write what each weighs behind it, as in “6 loaves of 2 lb” or “12 rolls of 80 g”',
    item.amountAt?.[item.amountAt.length - all.length + place],
  )
}

/** Which word of what is counted is not known here ("8 loaves wantd"), by its place; null where all is understood. */
function unknownNoun(of: string, receipt: Receipt, item: DayAmount): {readonly word: string; readonly place: number} | null {
  const own = new Set([receipt.title, item.title, receipt.serves?.of ?? ''].flatMap((text) => foldAll(text)))
  const known = (word: string): boolean =>
    germanYields.has(plainFold(word)) ||
    [fold(word), word.replace(/s$/, '')].some((noun) => countedNouns().has(noun) || own.has(noun))
  const all = of.split(' ')
  const end = all.indexOf('of')
  const noun = end > 0 ? all.slice(0, end) : all
  const last = noun.findLastIndex(known)
  if (last === noun.length - 1) return null
  const place = last < 0 ? noun.length - 1 : last + 1
  return {word: noun[place] ?? '', place}
}

const centimetres = (metres: number): string => `${Math.floor(metres * 100)} cm`
const percentOf = (share: number): string => `${Math.round(share * 100)} %`
const sizes = (vessel: Vessel): string => {
  const cm = (m: number): string => `${Math.round(m * 100)}`
  const foot = vessel.footprint
  return `${foot.shape === 'circle' ? cm(foot.diameter) : `${cm(foot.length)} × ${cm(foot.width)}`} cm, ${cm(vessel.height)} cm high`
}

/**
 * How much thinner a filling may be than the one its time was given for, that the time still goes as the square: below, the surface and not
 * the depth sets the time, and the square would soon leave none. Common practice, no source.
 */
const THINNEST = 0.25

/** The vessel with so many kilograms in it: a free-standing loaf spreads, anything else fills deeper. */
function standing(shape: Shape, kind: KindFigures, each: number): Vessel {
  const full = shape.weighs ?? holds(shape.size, kind)
  if (shape.size.shape === 'free-standing') {
    const size = spreadOf(shape.size, each / full)
    return vesselOf(size, 1, calledBy(shape, size))
  }
  const fill = fillOf(shape.size, kind)
  return vesselOf(shape.size, Math.min(1, (fill * each) / full), shape.name)
}

/** The vessel the kind's minutes belong to. */
function usualShapeOf(shape: Shape, kind: KindFigures): Shape {
  const read = readVessel(kind.vessel)
  return read.ok ? {size: read.value, name: read.name, stated: false} : shape
}

/**
 * How many times as thick a filling is as the one its time was given for. What stands on a sheet is as thick as ever. A loaf in a tin and one
 * without are told apart by their weight, as the cube root: dough fills half its tin before it rises, and a loaf on the bricks is measured as
 * it comes out.
 */
function depthRatio(
  now: Shape & {readonly vessel: Vessel; readonly each: number},
  then: Shape & {readonly each: number},
  kind: KindFigures,
): number {
  if (isSheet(now) || isSheet(then)) return 1
  if ((now.size.shape === 'free-standing') !== (then.size.shape === 'free-standing')) return Math.cbrt(now.each / then.each)
  return now.vessel.halfThickness / standing(then, kind, then.each).halfThickness
}

/** How many stand on the floor at once, as far as was looked for. */
function floorOf(fits: number, order: Order): number {
  return Math.max(fits, order.fills ?? 0)
}

/** What an ingredient is mixed with: the part it is written under, and of one written as a whole its paste or its filling. */
const mixtureOf = ({part, filling}: {readonly part: string; readonly filling?: true | undefined}): string =>
  filling ? `${part} filling` : part

/**
 * The share of its weight that the heaviest part of a receipt has: crust and filling are not mixed together. A sour, a sponge or a soaker goes
 * into the dough, and is in the bowl with it.
 */
function largestPart(receipt: Receipt): number {
  const parts = new Map<string, number>()
  for (const {part: named, filling, grams, millilitres} of receipt.ingredients) {
    const part = mixtureOf({part: mixedIn.has(named) ? '' : named, filling})
    parts.set(part, (parts.get(part) ?? 0) + (grams ?? millilitres ?? {likely: 0}).likely)
  }
  const weights = [...parts.values()]
  const all = weights.reduce((sum, one) => sum + one, 0)
  return all > 0 ? Math.max(...weights) / all : 1
}

/** How many one batch may be: what the bowl mixes and what the floor holds. */
function limitOf(
  context: Context,
  each: number,
  fits: number,
  order: Order,
  receipt: Receipt,
  kind: KindFigures,
  say: Say,
): number {
  const floor = floorOf(fits, order)
  const bowl = context.day.bowl
  if (bowl === undefined || notMixed.has(kind.id)) return floor
  const once = each * largestPart(receipt)
  const mixed = Math.floor(bowl / once + 1e-9)
  if (mixed < 1) {
    say(
      'warning',
      'scale-bowl',
      `one vessel of “${receipt.title}” is ${kilograms(once)}, more than the bowl mixes (${kilograms(bowl)})`,
      'mix it in two goes, or use a smaller vessel',
    )
    return 1
  }
  return Math.min(floor, mixed)
}

/** Kilograms before baking of a piece that is one person's: rolls and biscuits weigh less. Common practice, no source. */
const portion = {low: 0.12, high: 0.4} as const

function feedsOf(receipt: Receipt, kind: KindFigures, made: Makes): Range {
  const serves = receipt.facts.serves
  if (serves !== undefined) return {low: serves / made.vessels, likely: serves / made.vessels, high: serves / made.vessels}
  const persons = receipt.feeds ?? receipt.serves
  if (persons !== null && feeds.test(persons.of.toLowerCase())) {
    const {low, high} = persons
    return {low: low / made.vessels, likely: (low + high) / 2 / made.vessels, high: high / made.vessels}
  }
  // A pasty or a pie of its own is one to each.
  const piece = made.pieces === null ? 0 : (made.each * made.vessels) / made.pieces
  if (made.pieces !== null && piece >= portion.low && piece <= portion.high) {
    const pieces = made.pieces / made.vessels
    return {low: 0.75 * pieces, likely: pieces, high: 1.25 * pieces}
  }
  // The kind's figure belongs to its usual weight; a smaller or larger vessel feeds in proportion.
  const share = Math.min(3, Math.max(0.3, made.each / kind.mass.likely))
  return {low: kind.feeds.low * share, likely: kind.feeds.likely * share, high: kind.feeds.high * share}
}

interface Parts {
  readonly item: DayAmount
  readonly receipt: Receipt
  readonly kind: KindFigures
  readonly vessel: Vessel
  readonly count: number
  readonly times: Fraction
  readonly need: Dish['need']
  readonly each: number
  /** People one vessel feeds when the receipt is made as written, and how many vessels that makes. */
  readonly feedsEach: Range
  readonly vessels: number
  readonly context: Context
  readonly thicker: number
  readonly inferred: readonly Inferred[]
  readonly sized: readonly Inferred[]
  /** Which batch of how many. */
  readonly batch: number
  readonly batches: number
  readonly atOnce: number
  /** It is to fill the floor. */
  readonly fills: boolean
}

function dishFrom(parts: Parts): Dish {
  const {item, receipt, kind, vessel, count, times, need, each, feedsEach, context} = parts
  const {name} = context
  const number = (context.used.get(name) ?? 0) + 1
  context.used.set(name, number)
  const called = item.title === '' ? receipt.title : item.title
  const {amounts, notes} = scaled(receipt, times)
  // "Water to cover" weighs too: a vessel with such a liquid is taken to weigh what its kind does.
  const heavy = receipt.ingredients.some((one) => one.amount === null && lookUpItem(one.item)?.group === 'liquid')
    ? Math.max(each, kind.mass.low)
    : each
  const sized = [
    ...parts.sized,
    ...notes,
    ...trade(receipt, kind, {times: times.valueOf(), thicker: parts.thicker, batch: each * count}, context.say),
  ]
  return {
    id: number === 1 ? name : `${name}-${number}`,
    title: parts.batches > 1 ? `${called} (${parts.batch}/${parts.batches})` : called,
    file: item.file,
    kind: kind.id,
    vessel,
    count,
    ...(parts.fills ? {fills: item.line} : {}),
    atOnce: parts.atOnce,
    times: times.toFraction(),
    need,
    place: kind.place,
    mass: heavy,
    water: heavy * kind.waterLoss.likely,
    wantedBy: item.wantedBy,
    dough: doughOf(receipt, kind),
    sign: kind.sign,
    ...(kind.dry === true || kind.keeps === true ? {keeps: true as const} : {}),
    ...(kind.hot === true || item.hot === true ? {hot: true as const} : {}),
    ...(item.hot === true ? {wantedHot: true as const} : {}),
    ...(kind.crust === true ? {crust: true as const} : {}),
    ...(receipt.evening === undefined ? {} : {evening: receipt.evening.map(eveningTask)}),
    // Of other kinds the open door is said of a part of the time.
    ...(kind.dry === true && receipt.ajar !== undefined ? {ajar: receipt.ajar.text.replace(/\s+/g, ' ')} : {}),
    // What is in the vessels feeds, not how many they are: half a receipt in one vessel feeds half as many.
    feeds: scaledBy(feedsEach, parts.vessels * times.valueOf()),
    inferred: [...parts.inferred, ...sized.filter((one) => !parts.inferred.includes(one))],
    sized,
    cautions: [...new Set([...receipt.cautions.map((caution) => caution.id), ...kind.cautions])],
    amounts,
  }
}

const eveningTask = ({does, text, items, hour}: EveningBefore): EveningTask => ({
  does,
  words: text.replace(/\s+/g, ' '),
  items,
  ...(hour === undefined ? {} : {hour}),
})

/** A sponge that works longer, minutes, is yeast that is made, and no part of the day. Common practice, no source. */
const longestSponge = 16 * 60
/** One that works so long is that of the evening before, where the receipt has one set then. Common practice, no source. */
const longSponge = 6 * 60
/** What a receipt shapes and lets rise without a time proves so long, minutes, where its kind is not of dough. Common practice, no source. */
const usualProve = 30

/** A dough's times: the receipt's own, in the order it gives them; else its kind's. */
function doughOf(receipt: Receipt, kind: KindFigures): Dish['dough'] {
  // What is set the evening before is told as the receipt says it, and is no part of the day.
  const {facts, times, untimed = [], evening = []} = receipt
  const overnight = evening.some(({does}) => does === 'set')
  const ofDay = (time: TimePhrase): boolean =>
    time.stage !== 'sponge' ||
    !(time.minutes.low > longestSponge || isSet(evening, time) || (overnight && time.minutes.low >= longSponge))
  // What waits when the sponge has worked is the dough, unless it is a sponge by words of its own: the leaven fed once more.
  const staged = times.map((time) =>
    overnight && ofDay(time) && time.stage === 'sponge' && !time.anew ? {...time, stage: 'rise' as const} : time,
  )
  const of = (stage: TimePhrase['stage']): Range | null => {
    const [first, ...more] = staged
      .filter((time) => time.stage === stage && ofDay(time))
      .slice(0, 3)
      .map(({minutes}) => rangeOf(minutes))
    return first === undefined ? null : more.reduce(plus, first)
  }
  const sponge = of('sponge')
  const rising = facts.rise ? rangeOf(facts.rise) : of('rise')
  const proving = facts.prove ? rangeOf(facts.prove) : of('prove')
  const own = kind.dough
  if (raisedBySoda(receipt.ingredients) && !facts.rise && !facts.prove && !times.some(({of}) => of === 'rise')) return null
  // What is no dough is made one by a time to rise, not by a paste that stands rolled out.
  if (!own && !facts.rise && !facts.prove && !times.some((time) => time.of === 'rise' && time.stage !== undefined)) return null
  const {mix, shape, hold} = own ?? {mix: 20, shape: 10, hold: 30}
  const said = rising !== null || proving !== null || untimed.length > 0
  const usual = (stage: 'rise' | 'prove'): number => (said && !untimed.includes(stage) ? 0 : (own?.[stage] ?? 0))
  const rise = rising?.likely ?? usual('rise')
  const prove = proving ?? exactly(usual('prove') || (untimed.includes('prove') ? usualProve : 0))
  const cold =
    prove.low >= coldWait.from && hold < coldWait.hold
      ? ({cold: true, hold: coldWait.hold, bulkHold: hold} as const)
      : {...(prove.low >= coldWait.from ? ({cold: true} as const) : {}), hold}
  const bulk = rising && rising.high > rising.low ? {bulk: rising} : {}
  const spoils = receipt.ingredients.some(({item}) => /^(?:egg|dairy)$/.test(lookUpItem(item)?.group ?? ''))
  const places = coldPlacesOf(staged, rising)
  const risesCold = coldRiseOf({rise, ...bulk, ...places, ...(spoils ? {spoils} : {})}) !== null
  return {
    ...(sponge ? {sponge} : {}),
    ...(sponge && overnight ? ({again: true} as const) : {}),
    mix,
    rise,
    ...bulk,
    shape,
    ...(prove.high > 0 ? {prove} : {}),
    ...cold,
    ...places,
    ...(risesCold && rise >= coldWait.from ? {bulkHold: Math.max(cold.hold, coldWait.hold)} : {}),
    ...(spoils ? ({spoils: true} as const) : {}),
  }
}

/** What keeps for days is used as soon as it is ready, minutes. Common practice, no source. */
const keepsFor = 1440

/** A stretch of time and its middle, to five minutes: nobody works dough to the minute. */
const rangeOf = ({low, high}: {readonly low: number; readonly high: number}): Range => ({
  low,
  likely: low >= keepsFor ? low : Math.min(high, 5 * Math.round((low + high) / 10)),
  high,
})

const multiplied = (range: Range | null, k: number): Range | null => (range === null ? null : scaledBy(range, k))

/** Whole eggs in kilograms of those that lack a part, which are in proportion: twelve yolks with six whites hold six whole eggs. */
function wholeOf({
  exact,
  grams,
  lacks,
}: Ingredient): {readonly whole: Fraction; readonly part: Fraction; readonly grams: Range | null} | null {
  if (lacks === undefined || exact === null) return null
  const part = new Fraction(lacks.count)
  const all = new Fraction(exact)
  const piece = lookUpItem('egg')?.pieces
  const other = lookUpItem(lacks.item)?.pieces
  if (piece === undefined || other === undefined || grams === null) return {whole: all.sub(part), part, grams: null}
  // Of eggs of one time: yolk and white have the same shares of smaller ones.
  const likely = (rows: typeof piece): number => rows.findLast(({measure}) => measure === 'count')?.grams.likely ?? 0
  const rest = part.valueOf() * (likely(piece) - likely(other))
  const whole = all.sub(part).valueOf() * likely(piece)
  return {whole: all.sub(part), part, grams: scaledBy(grams, whole / (whole + rest))}
}

const otherPart = ({lacks}: Ingredient): string => (lacks?.item === 'egg white' ? 'egg yolk' : 'egg white')

/** The whole eggs of eggs that lack a part; any other ingredient as it is. */
function withoutLacking(ingredient: Ingredient): Ingredient {
  const found = wholeOf(ingredient)
  if (found === null) return ingredient
  if (!(found.whole.valueOf() > 0)) return {...ingredient, item: otherPart(ingredient)}
  return {...ingredient, exact: found.whole.toFraction(), grams: found.grams}
}

/** The yolks, or the whites, that eggs lacking the other part leave beside whole eggs. */
function restOfEggs(ingredient: Ingredient): Ingredient[] {
  const found = wholeOf(ingredient)
  if (found === null || !(found.part.valueOf() > 0 && found.whole.valueOf() > 0)) return []
  const {grams} = ingredient
  const rest = grams === null || found.grams === null ? null : less(grams, found.grams)
  return [{...ingredient, item: otherPart(ingredient), exact: found.part.toFraction(), grams: rest}]
}

/** The receipt's ingredients so many times, exactly and in kitchen measures. */
function scaled(receipt: Receipt, times: Fraction): {amounts: Dish['amounts']; notes: Inferred[]} {
  const rest = receipt.ingredients.flatMap(restOfEggs)
  const weighed = [...receipt.ingredients.map(withoutLacking), ...rest]
  const inputs = weighed.map((ingredient) => kitchenInput(ingredient, times))
  const lines = kitchenAmounts(inputs)
  const notes: Inferred[] = []
  const amounts = weighed.map((ingredient, i) => {
    const input = inputs[i]!
    const line = lines[i]!
    if (line.choice !== null)
      notes.push({field: input.group === 'egg' ? 'eggs' : ingredient.item, value: line.text, why: line.choice})
    return {
      item: ingredient.item,
      part: ingredient.part,
      grams: input.grams,
      millilitres: input.millilitres,
      kitchen: line.text,
      exact: input.amount === null ? null : `${exactText(input)} ${input.measure}`,
      ...(ingredient.today === undefined
        ? {}
        : {today: {...ingredient.today, grams: multiplied(ingredient.today.grams, times.valueOf())}}),
    }
  })
  return {amounts, notes}
}

const exactText = (input: KitchenInput): string =>
  input.amountHigh === null ? input.amount!.toFraction() : `${input.amount!.toFraction()} to ${input.amountHigh.toFraction()}`

function kitchenInput(ingredient: Ingredient, times: Fraction): KitchenInput {
  const k = times.valueOf()
  const item: Item | null = lookUpItem(ingredient.item)
  const exact = ingredient.exact === null ? null : new Fraction(ingredient.exact).mul(times)
  const high = ingredient.exactHigh === undefined ? null : new Fraction(ingredient.exactHigh).mul(times)
  const dimension = lookUpMeasure(ingredient.measure)?.dimension
  return {
    text: ingredient.text,
    item: ingredient.item,
    group: item?.group ?? null,
    part: mixtureOf(ingredient),
    amount: exact,
    amountHigh: high !== null && exact !== null && high.equals(exact) ? null : high,
    measure: ingredient.measure,
    ...(ingredient.unmeasured === true && ingredient.measureText !== undefined ? {written: ingredient.measureText} : {}),
    byNumber: dimension === 'count' || ingredient.measure === 'count',
    byWeight: dimension === 'mass' || dimension === 'comparison' || dimension === 'weight-of-piece',
    today:
      item?.group === 'egg'
        ? (item.pieces.find((piece) => piece.measure === 'count' && (piece.from ?? 0) >= 1900)?.grams.likely ?? null)
        : null,
    grams: multiplied(ingredient.grams, k),
    millilitres: multiplied(ingredient.millilitres, k),
  }
}

/** What the trade says of salt and leaven at this size. */
function trade(
  receipt: Receipt,
  kind: KindFigures,
  change: {times: number; thicker: number; batch: number},
  say: Say,
): Inferred[] {
  const out: Inferred[] = []
  const has = (test: (item: Item | null) => boolean): boolean => receipt.ingredients.some((one) => test(lookUpItem(one.item)))
  const floury = has((item) => item?.group === 'flour' || item?.group === 'meal')
  for (const rule of scaleRules) {
    if (!rule.when(change)) continue
    const found =
      rule.items === 'salt'
        ? has((item) => item?.group === 'salt')
        : rule.items === 'yeast'
          ? has((item) => item?.raises === 'yeast' || item?.raises === 'sourdough')
          : has((item) => item?.raises === 'soda')
    if (found)
      out.push({
        field: rule.items === 'salt' ? 'salt' : 'leaven',
        value: 'in proportion',
        why: floury ? rule.say : (rule.without ?? rule.say),
      })
  }
  if (kind.dough !== undefined) {
    const sum = (group: (item: Item) => boolean): number =>
      receipt.ingredients.reduce((total, one) => {
        const item = lookUpItem(one.item)
        return item !== null && group(item) ? total + (one.grams?.likely ?? 0) : total
      }, 0)
    const flour = sum((item) => item.group === 'flour' || item.group === 'meal')
    const salt = sum((item) => item.group === 'salt')
    if (flour > 0 && salt > 2 * saltInBread.high * flour) {
      say(
        'warning',
        'scale-salt',
        `${receipt.title}: ${Math.round(salt)} g of salt to ${Math.round(flour)} g of flour is over twice the usual 1–2.5 %`,
        'look at the salt line of the receipt',
      )
    }
  }
  return out
}
