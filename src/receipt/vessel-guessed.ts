import {fold, lookUpKind} from '../lexicon/index.js'
import type {DishKind, VesselRow} from '../lexicon/schema.js'
import {vessels} from '../lexicon/vessels.js'
import {isBakedFor, isBakedIn, isFilled} from './baked-in.js'
import {type FoundPhrase, phrasesIn} from './phrases.js'
import type {Section} from './section.js'
import type {Inferred, ReadIngredient, ReceiptFacts, TimePhrase, Yield} from './types.js'
import {BY_HAND, readVessel, vesselWordsOf} from './vessel.js'
import {isInches, writtenSizes} from './vessel-sizes.js'
import {BEFORE_BAKING, isUpon, vesselsNamed} from './vessels-named.js'

/** What tells the vessel of a receipt that gives no size of one. */
export interface VesselTold {
  readonly section: Section
  readonly facts: ReceiptFacts
  readonly ingredients: readonly ReadIngredient[]
  readonly times: readonly TimePhrase[]
  readonly serves: Yield | null
}

/** "Quartern loaves" say how large they are. */
const GREAT_LOAF = 'household-loaf'
/** Vessels that may be of any size and depth by these names: only what is baked in them tells. */
const PLAIN = /^(?:(?:tin|baking|buttered|bake|cake) )?(?:dish|dishes|tins?|pans?)$/
const PLAIN_DISH = /^(?:dish|dishes|tin|pan|earthen dish|baking dish)$/i
/** A name that says how large the vessel is. */
const SIZED = /\d|pound|quartern|small|little|large|half/i
const ON_SHEET = vesselWordsOf('piece on a sheet')
/** The vessel of a kind that stands in none, or on a sheet. */
const BY_ITSELF = /^(?:sheet|free-standing) /
/** … or in an open tin or dish. */
const IN_TIN = /^(?:round|square|oblong|pie plate) /
/** The vessel of a kind that is baked in loaves. */
const LOAVES = /^(?:free-standing loaf|loaf) /

const rowOf = (id: string): VesselRow => vessels.find((row) => row.id === id)!
const SHEET = rowOf('baking-sheet')
const LOAF_TIN = rowOf('loaf-pan')
const PLAIN_TIN = rowOf('tin-kettle')
const RAISED = 'patty-shell'
const PAPER_CASES = /^(?:paper )?cases?$/
const SOUFFLE = 'souffle'
const SHALLOW = rowOf('gingerbread-pan')

/** A cake that bakes in this share of the shortest time of its kind, or less, lies in a shallower tin. Common practice, no source. */
const HASTY = 0.5

const ours = {field: 'vessel', size: 'assumed'} as const

/**
 * The vessel of a receipt that gives no size of one: the one it names, in the size such a one is taken to have, else its kind's. What
 * may be of any size and depth by its name ("pans", "a dish") is its kind's too; and where the receipt bakes a cake in far less time than the kind's tin
 * takes, a shallow tin.
 *
 * @param row its kind of dish
 * @param from where the kind's figures come from
 */
export function vesselGuessed(told: VesselTold, row: DishKind, from: string): Inferred {
  const {section, ingredients, serves} = told
  const named = namedBest(section, ingredients)
  const pieces = named === null ? standsOnSheet(section, row, serves) : null
  if (named !== null && named.row.shape !== 'none') {
    const said = words(section, named)
    const {value, why, specific} = ofNamed(told, row, from, named)
    const hasty = specific ? null : shallower(told, row, value)
    if (hasty !== null) return {...ours, value: hasty.value, why: `the receipt says “${said}” and no size; ${hasty.why}`}
    return {
      field: 'vessel',
      value,
      why: `the receipt says “${said}” and no size; ${why}`,
      ...(SIZED.test(said) ? {} : {size: 'assumed' as const}),
    }
  }
  if (pieces !== null)
    return {
      ...ours,
      value: vesselSize(SHEET),
      why: `the receipt names no vessel, and says “${pieces}”: those stand on a sheet (common-practice)`,
    }
  const hasty = shallower(told, row, row.vessel)
  const none = `the receipt names no ${named === null ? 'vessel' : 'size of vessel'}`
  return {...ours, value: hasty?.value ?? row.vessel, why: `${none}; ${hasty?.why ?? from}`}
}

/** The vessel that a receipt of no known kind names without its size; null where it names none, or one of any size. */
export function vesselOfNoKind(section: Section, ingredients: readonly ReadIngredient[]): Inferred | null {
  const named = namedBest(section, ingredients)
  if (named === null || named.row.shape === 'none' || BEFORE_BAKING.has(named.row.id)) return null
  const said = words(section, named)
  if (PLAIN.test(plain(said)) || !isFilled(section, named)) return null
  return {...ours, value: vesselSize(named.row), why: `the receipt says “${said}” and no size; ${sizeSource(named.row)}`}
}

/** Vessels that are named for what goes before the baking or comes behind it as often as for the baking itself. */
const MAY_BE_OTHER = (row: VesselRow): boolean => row.shape === 'crock' || row.id === 'custard-cup' || BEFORE_BAKING.has(row.id)

const isInHeading = ({tokens, blocks}: Section, {from}: FoundPhrase<VesselRow>): boolean =>
  blocks[tokens[from]!.block]!.kind === 'heading'

/**
 * The vessel that a receipt names to bake in. Where the first is one that things are boiled, measured or kept in (the pot of bagels, the jars of a
 * curd), that is one the method bakes in.
 */
function namedBest(section: Section, ingredients: readonly ReadIngredient[]): FoundPhrase<VesselRow> | null {
  const all = vesselsNamed(section, ingredients)
  const [first] = all
  if (first === undefined) return null
  if (!MAY_BE_OTHER(first.row)) return first
  const inThem = all.filter(({row}) => row.shape !== 'none')
  return (
    inThem.find((one) => isBakedFor(section, one)) ??
    inThem.find((one) => isBakedIn(section, one, BEFORE_BAKING.has(one.row.id))) ??
    // "Chocolate pots": the title is no vessel that the method fills.
    (isInHeading(section, first) ? inThem.find((one) => !isInHeading(section, one) && isFilled(section, one)) : undefined) ??
    first
  )
}

/** `specific`: the name says more than that it is some tin or dish. */
function ofNamed(
  {section, serves}: VesselTold,
  row: DishKind,
  from: string,
  named: FoundPhrase<VesselRow>,
): {readonly value: string; readonly why: string; readonly specific: boolean} {
  const said = plain(words(section, named))
  const own = {value: row.vessel, why: from, specific: false}
  const as = (tin: VesselRow, specific = true) => ({value: vesselSize(tin), why: sizeSource(tin), specific})
  const tin = named.row.id === PLAIN_TIN.id || /^(?:pans?|cake (?:tins?|pans?))$/.test(said)
  // A loaf's tin is a loaf tin, of what is else baked by the sheetful too.
  if (tin && row.dough !== undefined && row.vessel.startsWith('sheet') && countsLoaves(serves)) return as(LOAF_TIN)
  // "On the bricks" says that no tin is used, and nothing of the size: that is its kind's, a flat bread's or a loaf's.
  // Nor does "a tin" of what is baked by the sheetful: it is a flat one.
  if (named.row.shape === 'free-standing' && named.row.id !== GREAT_LOAF && row.vessel.startsWith('free-standing')) return own
  if (tin && row.vessel.startsWith('sheet')) return own
  // Small cakes stand in paper cases as they do without them.
  if (PAPER_CASES.test(said) && row.id !== SOUFFLE) return own
  // A small raised pie is the crust that stands by itself.
  if (named.row.id === RAISED && row.vessel.startsWith('sheet')) return own
  // "All sorts of sweet dishes"
  if (PLAIN.test(said) && row.vessel.startsWith('sheet') && !isFilled(section, named)) return own
  // Nor is what is mixed in a basin, or boiled in a pot, and baked by itself baked in that.
  if (BEFORE_BAKING.has(named.row.id) && BY_ITSELF.test(row.vessel)) return own
  if (named.row.shape === 'crock' && row.vessel.startsWith('sheet') && !isBakedIn(section, named, false)) return own
  // "A dish" of a roast is one that holds it.
  if (PLAIN_DISH.test(said) && row.vessel.startsWith('oblong')) return own
  if (named.row.id === PLAIN_TIN.id && isUpon(section.tokens, named.from)) return as(SHEET)
  if (tin && LOAVES.test(row.vessel)) return as(LOAF_TIN)
  if (PLAIN.test(said)) {
    if (IN_TIN.test(row.vessel)) return own
    if (/pans?$/.test(said) && row.vessel.startsWith('free-standing')) return as(PLAIN_TIN)
  }
  return as(named.row, !PLAIN.test(said))
}

/** What a receipt makes, by its last word: "pasties" of "large pasties". */
const nounOf = (serves: Yield | null): string => serves?.of.split(' ').pop() ?? ''

const countsLoaves = (serves: Yield | null): boolean => fold(nounOf(serves)) === 'loaf'

/** The shallow tin of a cake that its receipt bakes in far less time than its kind takes in a tin so deep; null where nothing says so. */
function shallower(
  {facts, times}: VesselTold,
  row: DishKind,
  value: string,
): {readonly value: string; readonly why: string} | null {
  if (row.keeps !== true || row.dough !== undefined || row.filled === true) return null
  const size = readVessel(value)
  if (!size.ok || !/^(?:round|square|oblong)$/.test(size.value.shape) || size.value.height <= (SHALLOW.height ?? 0)) return null
  const bakes = facts.bake === undefined ? times.filter((time) => time.of === 'bake' && !time.cooling) : []
  const longest = facts.bake?.high ?? bakes.reduce((sum, {minutes}) => sum + minutes.high, 0)
  if (!(longest > 0 && longest <= HASTY * row.minutes.low)) return null
  const title = lookUpKind(row.id)?.title.toLowerCase() ?? row.id
  return {
    value: vesselSize(SHALLOW),
    why: `its ${longest} min are for a shallower one than usual for ${title}; ${sizeSource(SHALLOW)}`,
  }
}

/**
 * The words by which what a receipt makes stands on a sheet, though its kind is mostly baked in a vessel: pieces of a name that is baked so
 * ("makes 12 pasties"), or of a kind whose pieces the method cuts out or drops. Null where nothing says so.
 */
function standsOnSheet(section: Section, row: DishKind, serves: Yield | null): string | null {
  if (BY_ITSELF.test(row.vessel)) return null
  const noun = nounOf(serves)
  if (serves !== null && serves.high > 1 && ON_SHEET.has(fold(noun))) return noun
  const named =
    section.title
      .toLowerCase()
      .match(/\p{L}+/gu)
      ?.at(-1) ?? ''
  if (named.endsWith('s') && ON_SHEET.has(fold(named))) return named
  const [first] = row.onSheet === undefined ? [] : phrasesIn(BY_HAND, section.tokens)
  return first === undefined ? null : words(section, first)
}

const sizeSource = (row: VesselRow): string => (row.source === 'memory' ? 'its size is from memory' : `its size: ${row.source}`)

const words = (section: Section, found: FoundPhrase<unknown>): string =>
  section.source.slice(section.tokens[found.from]!.start, section.tokens[found.to - 1]!.end).replace(/\s+/g, ' ')

const plain = (said: string): string =>
  said
    .toLowerCase()
    .replace(/[-_ ]+/g, ' ')
    .trim()

/** A row's size as front matter writes a vessel: "round 23 x 5 cm", "round 9 x 2 1/2 in". */
function vesselSize(row: VesselRow): string {
  const shape = row.shape === 'free-standing' ? 'free-standing loaf' : row.shape
  const sizes: number[] = []
  if (row.diameter !== undefined) sizes.push(row.diameter)
  else if (row.length !== undefined) {
    sizes.push(row.length)
    if (row.width !== undefined) sizes.push(row.width)
  }
  if (row.height !== undefined && row.shape !== 'free-standing' && row.shape !== 'sheet') sizes.push(row.height)
  return `${shape} ${writtenSizes(sizes, sizes.every(isInches))}`
}
