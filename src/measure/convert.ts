import convertUnits from 'convert-units'
import type {HedgeAmount} from '../lexicon/hedge-amounts.js'
import {hedgeAmounts, lookUpItem, lookUpMeasure, lookUpPlace} from '../lexicon/index.js'
import {measureSystems} from '../lexicon/measure-systems.js'
import {span} from '../lexicon/row.js'
import type {Item, Measure, Place, Range} from '../lexicon/schema.js'
import {mixedNumber, readExact} from './amount.js'
import {asLargeEggs, largeEggsFor, SMALL_EGGS_TO} from './eggs.js'
import {MODERN_YEAR} from './frame.js'
import {covering, exactly, over, scaled, times} from './range.js'
import {kitchenText, significantRange} from './round.js'
import {type Reckoned, type Today, today} from './today.js'

/** The weight the text itself gives beside a count or a measure: "2 onions (300 g)", "1 cup (120 g) flour". */
export interface StatedWeight {
  /** In `measure`, a weight. */
  readonly amount: {readonly low: number; readonly high: number}
  readonly measure: string
  /** It is of one piece: "2 chickens (1.5 kg each)". */
  readonly each: boolean
  readonly hedges: readonly string[]
  /** As written. */
  readonly text: string
}

/** An ingredient as read, with the year and place its measures are chosen by. */
export interface Given {
  /** Amount in `measure`; null where the text is indefinite. */
  readonly amount: {readonly low: number; readonly high: number} | null
  /** Exact fraction `n/d` of the low end, and of the high end where it is a range. */
  readonly exact: string | null
  readonly exactHigh?: string | undefined
  /** Canonical name of the measure. */
  readonly measure: string
  /** The measure's own words, for notes. */
  readonly measureText?: string | undefined
  /** Item id, or its words. */
  readonly item: string
  readonly year: number | null
  /** The `place:` line as written ("Hartford, Connecticut"), or null. */
  readonly place: string | null
  readonly hedges: readonly string[]
  /** How year and place were told where the text does not state them: `told` of `frame.ts`. */
  readonly told?: string | null | undefined
  /** The receipt's sour items, by `sourItems` of `leaven.ts`; left out where the whole receipt is not known. */
  readonly sour?: readonly string[] | undefined
  /** What the text itself says it weighs: it stands before any table's weight. */
  readonly stated?: StatedWeight | undefined
}

/** One step of the chain that `--why` shows. */
export interface Why {
  readonly step: string
  readonly source?: string
}

/** Grams and millilitres with their ranges, where they can be known, and how they came about. */
export interface Converted {
  readonly grams: Range | null
  readonly millilitres: Range | null
  /** What does its work today; absent where nothing replaces it. */
  readonly today?: Today
  /** Ids of rows of `lexicon/sources`, each once. */
  readonly sources: readonly string[]
  readonly why: readonly Why[]
  readonly notes: readonly string[]
}

type Size = Measure['sizes'][number]
type Piece = Item['pieces'][number]

/** How far apart (ratio) two possible sizes must be before a note asks which is meant. */
const WORTH_ASKING = 1.04

/** Spoons were filled rounded before level measuring was taught (about 1896). From memory; the likely filling is between. */
const LEVEL_SPOONS_FROM = 1896
const OLD_SPOONFUL: Range = span(1, 1.35, 1.9)
const SPOONS: ReadonlySet<string> = new Set([
  'tablespoon',
  'dessertspoon',
  'teaspoon',
  'saltspoon',
  'mustardspoon',
  'coffeespoon',
  'spoon',
])
const HEAPS: ReadonlySet<Item['group']> = new Set([
  'flour',
  'meal',
  'starch',
  'sugar',
  'spice',
  'salt',
  'bread',
  'nut',
  'dried fruit',
  'fat',
  'leaven',
  'other',
])
const POURS: ReadonlySet<Item['group']> = new Set(['liquid', 'spirit', 'syrup', 'dairy', 'egg'])
/** What was sold by the ale gallon, and by the wine gallon, before 1826. From memory. */
const BY_ALE: ReadonlySet<string> = new Set(['beer', 'wort', 'yeast', 'emptins'])
const BY_WINE: ReadonlySet<string> = new Set([
  'vinegar',
  'salad oil',
  'vegetable oil',
  'lemon juice',
  'orange juice',
  'rose-water',
  'orange-flower water',
  'honey',
  'cider',
])

/** Grades of eggs today, not hedges: the piece row is of a large egg. */
const SIZES_OF_EGGS: ReadonlySet<string> = new Set(['large', 'medium'])

const hedgeRows: ReadonlyMap<string, HedgeAmount> = new Map(
  hedgeAmounts.flatMap((row) => row.phrases.map((phrase) => [phrase, row] as const)),
)

/** A pure function of a string with a memory of so many answers: receipts repeat their places, fractions and measures. */
function remembered<Answer>(work: (text: string) => Answer, most = 2000): (text: string) => Answer {
  const known = new Map<string, Answer>()
  return (text) => {
    let answer = known.get(text)
    if (answer === undefined) {
      answer = work(text)
      if (known.size >= most) known.clear()
      known.set(text, answer)
    }
    return answer
  }
}

const placeOf = remembered(lookUpPlace)
const numberOf = remembered((text) => readExact(text)?.valueOf() ?? Number.NaN)
/** Fifths, tenths and hundredths were written as decimals ("1,5 kg", "2.5 g"); no measure of a kitchen is so parted. */
const mixed = remembered((text) => {
  const [top, bottom] = text.split('/').map(Number) as [number, number | undefined]
  return bottom !== undefined && bottom >= 5 && 100 % bottom === 0 ? String(top / bottom) : mixedNumber(text)
})

const metric = new Map<NonNullable<Measure['unit']>, number>()
/** Grams or millilitres in a metric unit, by `convert-units`. */
function metricFactor(unit: NonNullable<Measure['unit']>): number {
  let factor = metric.get(unit)
  if (factor === undefined) {
    factor =
      unit === 'mg' || unit === 'g' || unit === 'kg' ? convertUnits(1).from(unit).to('g') : convertUnits(1).from(unit).to('ml')
    metric.set(unit, factor)
  }
  return factor
}

const inYear = (row: {readonly from?: number | undefined; readonly to?: number | undefined}, year: number | null): boolean =>
  year === null || ((row.from ?? Number.NEGATIVE_INFINITY) <= year && year <= (row.to ?? Number.POSITIVE_INFINITY))

/** The rows a year allows, those still in use first where it is not known. */
function byYear<Row extends {readonly from?: number | undefined; readonly to?: number | undefined}>(
  rows: readonly Row[],
  year: number | null,
): Row[] {
  const fitting = rows.filter((row) => inYear(row, year))
  const kept = fitting.length > 0 ? fitting : [...rows]
  return year === null ? [...kept.filter((row) => row.to === undefined), ...kept.filter((row) => row.to !== undefined)] : kept
}

/** The sizes a measure may have had, the likeliest first. */
function possibleSizes(measure: Measure, item: Item | null, year: number | null, place: Place | null): Size[] {
  let sizes = byYear(measure.sizes, year)
  if (sizes.length < 2) return sizes
  const general = sizes.filter((size) => size.place === undefined)
  const own =
    place === null
      ? sizes.filter((size) => size.place === 'us' || size.place === 'uk')
      : sizes.filter((size) => size.place === place)
  const here =
    year === null || place === null
      ? sizes.filter((size) => own.includes(size) || general.includes(size))
      : own.length > 0
        ? own
        : general
  if (here.length > 0) sizes = here
  const group = item?.group
  const only = (unwanted: Size['of']): void => {
    const rest = sizes.filter((size) => size.of !== unwanted)
    if (rest.length > 0) sizes = rest
  }
  if (item !== null && BY_ALE.has(item.id)) only('wine')
  else if (item !== null && (group === 'spirit' || BY_WINE.has(item.id))) only('ale')
  if (measure.sizes.some((size) => size.of === 'liquid')) only(group !== undefined && POURS.has(group) ? 'dry' : 'liquid')
  return sizes
}

const short = (value: number): string => String(Number(value.toPrecision(value >= 100 ? 4 : 3)))

/** "473 mL", "28.3 g", "100–120–180 mL". */
const sizeText = (size: Range, unit: string): string =>
  size.low === size.high
    ? `${short(size.likely)} ${unit}`
    : `${short(size.low)}–${short(size.likely)}–${short(size.high)} ${unit}`

/** The same of a row's own size or density, whose text is made once. */
function rowText(size: Range, unit: string): string {
  let text = texts.get(size)
  if (text === undefined) {
    text = sizeText(size, unit)
    texts.set(size, text)
  }
  return text
}
const texts = new WeakMap<Range, string>()

const PLACE_NAMES: Readonly<Record<Place, string>> = {us: 'America', uk: 'England', au: 'Australia', eu: 'Europe'}

/** What would settle between sizes that differ, as a sentence; null where they agree. */
function question(measure: Measure, sizes: readonly Size[], year: number | null, place: Place | null): string | null {
  const first = sizes[0]
  if (first === undefined) return null
  const other = sizes.find(
    (size) => Math.max(size.size.likely / first.size.likely, first.size.likely / size.size.likely) > WORTH_ASKING,
  )
  if (other === undefined) return null
  const unit = measure.dimension === 'volume' ? 'mL' : 'g'
  const lines: string[] = []
  if (place === null && sizes.some((size) => size.place !== first.place)) {
    const named = [first.place, other.place].filter((each) => each !== undefined)
    lines.push(...[...new Set(named)].map((each) => `\`place: ${PLACE_NAMES[each]}\``))
  }
  if (year === null && sizes.some((size) => size.from !== first.from || size.to !== first.to)) lines.push('a `year:` line')
  const told = (size: Size): string =>
    `${sizeText(exactly(size.size.likely), unit)}${size.note === undefined ? '' : ` (${size.note})`}`
  const settle = lines.length > 0 ? ` ${lines.join(' or ')} in the front matter settles it.` : ''
  return `${measure.id}: taken as ${told(first)}; it may be ${told(other)}.${settle}`
}

/** The size taken for a measure, with its steps of `why` and the question it leaves open. */
interface Choice {
  readonly one: Range
  readonly steps: readonly Why[]
  readonly ask: string | null
}
const choices = new Map<string, Choice | null>()

function choose(measure: Measure, item: Item | null, given: Given, place: Place | null): Choice | null {
  const {year, place: placeText, told = null} = given

  const key = `${measure.id}|${item?.id}|${year}|${placeText}|${told}`
  const known = choices.get(key)
  if (known !== undefined) return known
  const sizes = possibleSizes(measure, item, year, place)
  const chosen = sizes[0]
  let choice: Choice | null = null
  if (chosen !== undefined) {
    const unit = measure.dimension === 'volume' ? 'mL' : 'g'
    const stated = `${year === null ? 'year not stated' : `year ${year}`}, ${place === null ? 'place not stated' : `place ${placeText}`}`
    const when = told === null ? stated : told
    choice = {
      one: covering(sizes.map((size) => size.size)),
      steps: sizes.map((size) => ({
        step: `1 ${measure.id} is ${sizeText(size.size, unit)}${size.note === undefined ? '' : ` (${size.note})`}${size === chosen ? `: ${when}` : ', or'}`,
        source: size.source,
      })),
      ask: question(measure, sizes, year, place),
    }
  }
  if (choices.size >= 5000) choices.clear()
  choices.set(key, choice)
  return choice
}

/**
 * The entry as its measure's own words would have it read: "an imperial pint" is of Britain, and of the measures since the Acts,
 * whatever the receipt's year and place.
 */
function bySystem(given: Given): {given: Given; place: Place} | null {
  const system = measureSystems.find(({id}) => given.hedges.includes(id))
  if (system === undefined) return null
  const place = PLACE_NAMES[system.place]
  return {given: {...given, year: MODERN_YEAR, place, told: `the receipt says “${system.id}”`}, place: system.place}
}

/** Grams of the weight that the text itself gives, where its measure is one of fixed weight. */
function statedGrams(given: Given, place: Place | null): {one: Range; steps: readonly Why[]} | null {
  const {stated} = given
  const measure = stated === undefined ? null : lookUpMeasure(stated.measure)
  if (stated === undefined || measure === null || measure.dimension !== 'mass') return null
  const choice = measure.unit === undefined ? choose(measure, null, given, place) : null
  const size = measure.unit === undefined ? choice?.one : exactly(metricFactor(measure.unit))
  if (size === undefined) return null
  const {low, high} = stated.amount
  let one = times({low, likely: (low + high) / 2, high}, size)
  for (const hedge of stated.hedges) {
    const row = hedgeRows.get(hedge.toLowerCase())
    if (row !== undefined && row.of !== 'volume') one = times(one, row.factor)
  }
  const source = measure.sizes[0]?.source
  const fixed = {step: `1 ${measure.id} is ${size.likely} g`, ...(source === undefined ? {} : {source})}
  const own = `the receipt itself gives its weight: “${stated.text}”${stated.each ? ', of one' : ''}`
  return {one, steps: [{step: own, source: 'receipt'}, ...(choice?.steps ?? [fixed])]}
}

/** Pieces of an item in a measure, and the nearest thing to it: a head, a leaf, a clove counted plainly. */
function piecesOf(item: Item, measure: string, year: number | null): Piece[] {
  const of = (id: string): Piece[] => item.pieces.filter((piece) => piece.measure === id)
  const exact = of(measure)
  if (exact.length > 0) return byYear(exact, year)
  const counted = ['leaf', 'clove', 'root', 'loaf', 'head', 'bulb', 'pod', 'ear', 'cake', 'stick', 'count']
  if (!counted.includes(measure)) return []
  return byYear(measure === 'count' ? [] : of('count'), year)
}

interface Dense {
  readonly density: Range | undefined
  readonly source: string
  readonly note: string
}

const both = new Map<Item, Range>()

/** The density of an item in a year; where the year is not known and it changed, both. */
function densityOf(item: Item | null, year: number | null): Dense {
  const source = item?.densitySource ?? 'memory'
  const old = item?.oldDensity
  if (item === null || item.density === undefined || old === undefined || (year !== null && year > old.to)) {
    return {density: item?.density, source, note: ''}
  }
  const note = old.note === undefined ? '' : ` (${old.note})`
  if (year !== null) return {density: old.density, source: old.source, note}
  let density = both.get(item)
  if (density === undefined) {
    density = covering([item.density, old.density])
    both.set(item, density)
  }
  return {density, source, note: `, or as it was to ${old.to}`}
}

/** The item of a name; of the first of a mixture ("mace and cinnamon"). */
function itemNamed(name: string): Item | null {
  return lookUpItem(name) ?? (name.includes(' and ') ? lookUpItem(name.slice(0, name.indexOf(' and '))) : null)
}

const NOTHING: Converted = {grams: null, millilitres: null, sources: [], why: [], notes: []}

/**
 * What an amount of an item weighs and measures, with its range, the chain of reasons and the sources. Nothing is guessed in silence:
 * an unknown measure or item, or one without a density, gives null and a note. Grams and millilitres are kept to six significant
 * digits; `round.ts` prints them.
 */
export function convert(given: Given): Converted {
  if (given.amount === null || given.measure === 'indefinite') return NOTHING
  const {year} = given
  const place = given.place === null ? null : placeOf(given.place)
  const measure = lookUpMeasure(given.measure)
  const item = itemNamed(given.item)
  const why: Why[] = []
  const notes: string[] = []
  const sources = new Set<string>()
  const because = (step: string, source?: string): void => {
    why.push(source === undefined ? {step} : {step, source})
    if (source !== undefined) sources.add(source)
  }

  const exactLow = given.exact === null ? Number.NaN : numberOf(given.exact)
  const exactHigh = given.exactHigh === undefined ? Number.NaN : numberOf(given.exactHigh)
  const low = Number.isNaN(exactLow) ? given.amount.low : exactLow
  const high = !Number.isNaN(exactHigh) ? exactHigh : given.amount.low === given.amount.high ? low : given.amount.high
  let amount: Range = {low, likely: (low + high) / 2, high}
  const written = given.exact === null ? String(low) : mixed(given.exact)
  const writtenHigh = low === high ? '' : `–${given.exactHigh === undefined ? String(high) : mixed(given.exactHigh)}`
  const words = given.measureText === undefined || given.measureText === given.measure ? '' : `, written “${given.measureText}”`
  because(`${amountText(`${written}${writtenHigh}`, given.measure, given.item)}${words}`)
  if (given.place !== null && place === null)
    notes.push(`place “${given.place}” is not one whose measures are known; write a country, such as \`place: England\``)
  if (measure === null) {
    notes.push(`${given.measure}: a measure not in the lexicon; carried through as written`)
    return {grams: null, millilitres: null, sources: [], why, notes}
  }

  for (const hedge of given.hedges) {
    const row = hedgeRows.get(hedge.toLowerCase())
    if (SIZES_OF_EGGS.has(hedge) && item?.group === 'egg' && (year === null || year > SMALL_EGGS_TO)) continue
    if (row === undefined || (row.of === 'volume' && measure.dimension !== 'volume') || row.factor.low === row.factor.high)
      continue
    amount = times(amount, row.factor)
    because(`“${hedge}”: times ${row.factor.low}–${row.factor.likely}–${row.factor.high}`, row.source)
  }

  const {density, source: densitySource, note: densityNote} = densityOf(item, year)
  let grams: Range | null = null
  let millilitres: Range | null = null
  const stated = measure.dimension === 'mass' ? null : statedGrams(given, place)
  const own = stated === null ? null : given.stated?.each === true ? times(amount, stated.one) : stated.one
  const weigh = (): void => {
    if (own !== null || millilitres === null || density === undefined || item === null) return
    grams = times(millilitres, density)
    because(`${item.id} weighs ${rowText(density, 'g/mL')}${densityNote}`, densitySource)
  }
  const measureOut = (): void => {
    if (grams === null || density === undefined) return
    millilitres = over(grams, density)
    because(`${item?.id} weighs ${rowText(density, 'g/mL')}, so that measures ${sizeText(millilitres, 'mL')}`, densitySource)
  }

  const pieces = item === null ? [] : piecesOf(item, measure.id, year)
  const piece = pieces[0]
  if (own !== null && measure.dimension !== 'volume') {
    grams = own
    measureOut()
  } else if (piece !== undefined && item !== null) {
    const each = covering(pieces.map((row) => row.grams))
    grams = times(amount, each)
    for (const row of pieces)
      because(
        `one ${measure.id === 'count' ? item.id : measure.dimension === 'comparison' ? `piece of ${item.id} the ${measure.id}` : `${measure.id} of ${item.id}`}: ${rowText(row.grams, 'g')}${row.note === undefined ? '' : ` (${row.note})`}`,
        row.source,
      )
    if (pieces.length > 1) notes.push(`${item.id}: its size depends on the year; a \`year:\` line in the front matter settles it`)
    measureOut()
  } else if (measure.unit !== undefined) {
    const factor = metricFactor(measure.unit)
    const size = scaled(amount, factor)
    if (measure.dimension === 'mass') grams = size
    else millilitres = size
    because(`1 ${measure.id} is ${factor} ${measure.dimension === 'mass' ? 'g' : 'mL'}`, measure.sizes[0]?.source)
    if (measure.dimension === 'mass') measureOut()
    else weigh()
  } else if (
    measure.dimension === 'mass' ||
    measure.dimension === 'volume' ||
    measure.dimension === 'comparison' ||
    measure.dimension === 'weight-of-piece'
  ) {
    const system = bySystem(given)
    const choice = system === null ? choose(measure, item, given, place) : choose(measure, item, system.given, system.place)
    const unit = measure.dimension === 'volume' ? 'mL' : 'g'
    if (choice !== null) {
      for (const step of choice.steps) because(step.step, step.source)
      if (choice.ask !== null) notes.push(choice.ask)
      let total = times(amount, choice.one)
      const level = given.hedges.some((hedge) => /level|heap|round|scant/.test(hedge))
      if (
        unit === 'mL' &&
        system === null &&
        year !== null &&
        year < LEVEL_SPOONS_FROM &&
        item !== null &&
        HEAPS.has(item.group) &&
        !level &&
        SPOONS.has(measure.id) &&
        !BY_ALE.has(item.id)
      ) {
        total = times(total, OLD_SPOONFUL)
        because(
          `a spoonful of a dry thing was commonly rounded before ${LEVEL_SPOONS_FROM}: times ${OLD_SPOONFUL.low}–${OLD_SPOONFUL.likely}–${OLD_SPOONFUL.high}`,
          'memory',
        )
      }
      if (unit === 'g') {
        grams = total
        measureOut()
      } else {
        millilitres = total
        weigh()
      }
    }
  } else if (measure.dimension === 'money') notes.push(`${measure.id}: what that bought depends on the price of the day`)
  else if (measure.dimension === 'count' && item !== null)
    because(`no weight is known for one ${measure.id === 'count' ? item.id : `${measure.id} of ${item.id}`}`)

  if (own !== null && stated !== null) {
    grams = own
    for (const {step, source} of stated.steps) because(step, source)
  }
  if (grams === null && millilitres !== null) {
    notes.push(
      item === null
        ? `${given.item}: not in the lexicon, so its weight is not known`
        : `${item.id}: no weight by measure is known`,
    )
  }
  const reckoned = item === null ? null : today(item, grams, millilitres, measure, year)
  if (item !== null) notes.push(...modernNotes(item, grams, measure, amount, given, reckoned, because))
  const result = {
    grams: grams === null ? null : significantRange(grams),
    millilitres: millilitres === null ? null : significantRange(millilitres),
  }
  if (result.grams !== null || result.millilitres !== null) {
    because(
      `so ${[result.grams === null ? null : kitchenText(result.grams, 'g'), result.millilitres === null ? null : kitchenText(result.millilitres, 'mL')].filter((text) => text !== null).join(', ')}`,
    )
  }
  return {...result, ...(reckoned === null ? {} : {today: reckoned.today}), sources: [...sources], why, notes}
}

/** The amount as it was read: "5/2 pound of flour", "egg: 2", "butter, the size of an egg: 1 1/2". */
const amountText = (count: string, measure: string, item: string): string =>
  measure === 'count'
    ? `${item}: ${count}`
    : /^(?:size|weight) of /.test(measure)
      ? `${item}, the ${measure}: ${count}`
      : `${count} ${measure} of ${item}`

/** What an old leaven, old eggs, or a thing no longer sold come to today. */
function modernNotes(
  item: Item,
  grams: Range | null,
  measure: Measure,
  amount: Range,
  {year, sour}: Given,
  reckoned: Reckoned | null,
  because: (step: string, source?: string) => void,
): string[] {
  if (
    item.group === 'egg' &&
    (item.id === 'egg' || item.id === 'egg white' || item.id === 'egg yolk') &&
    measure.id === 'count'
  ) {
    if (item.id !== 'egg' || grams === null || year === null || year > SMALL_EGGS_TO) return []
    const today = largeEggsFor(amount.likely, year)
    const range = asLargeEggs(grams)
    because(`by weight ${sizeText(range, 'large eggs')} of today`, 'usda-sr28')
    return [`eggs were small: ${kitchenText(grams, 'g')} out of the shell, about ${mixedNumber(String(today))} large eggs today`]
  }
  if (reckoned === null) return []
  const {today, by, why, soda} = reckoned
  if (by === 'soda' && soda !== null) {
    because(`${soda.why}: ${sizeText(soda.factor, 'g of soda a gram')}`, soda.source)
    const spare =
      soda.acidFactor > 1 ? ' It takes up half as much acid: use a little less of what is sour, or more soda to taste.' : ''
    return [`${item.id}: ${kitchenText(soda.soda, 'g')} of baking soda gives the same gas, ${workingOn(sour)}.${spare}`]
  }
  if (by === 'dry yeast' && today.grams !== null) {
    because(`${why}: ${sizeText(today.grams, 'g')}`, today.source)
    return [`${item.id}: ${kitchenText(today.grams, 'g')} of active dry yeast does the work; go by the rise, not the clock`]
  }
  const factor = item.replacedBy?.factor
  if (today.grams !== null && factor !== undefined && factor.low !== factor.high) {
    because(`${today.item}: ${factor.low}–${factor.likely}–${factor.high} of its weight`, today.source)
    return [`${item.id}: use ${kitchenText(today.grams, 'g')} of ${today.item} (${today.how})`]
  }
  return [`${item.id}: use ${today.item} (${today.how})`]
}

/** What the soda works on, as a cook is told it. */
function workingOn(sour: readonly string[] | undefined): string {
  if (sour === undefined) return 'with acid (sour milk, molasses, cream of tartar) to work on'
  if (sour.length === 0)
    return 'but nothing sour stands in this receipt: alone soda gives half as much, and tastes; add twice its weight of cream of tartar, or use buttermilk for the milk'
  return `with the ${sour.slice(0, 2).join(' and ')} to work on`
}
