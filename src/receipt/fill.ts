import {fold, lookUpKind} from '../lexicon/index.js'
import type {DishKind, VesselRow} from '../lexicon/schema.js'
import {vessels} from '../lexicon/vessels.js'
import {type KindFound, raisedBySoda} from './kinds.js'
import {type FoundPhrase, phrasesIn, phraseTree} from './phrases.js'
import type {Section, Token} from './section.js'
import type {Inferred, OvenPhrase, ReadIngredient, ReadReceipt, ReceiptFacts, TimePhrase, Yield} from './types.js'
import {vesselWordsOf} from './vessel.js'
import {isInches, thingSized, vesselStated, writtenSizes} from './vessel-sizes.js'

const VESSELS = phraseTree(vessels, (row: VesselRow) => row.spellings)

/** What things are boiled or mixed in first: the vessel baked in where the receipt names no other. */
export const BEFORE_BAKING: ReadonlySet<string> = new Set(['stewpan', 'pudding-basin'])

const WORKED = /^(?:knead\w*|roll\w*|mou?ld\w*|work\w*|floured|pastry|paste|turn|strew|sprinkle)$/
/** Behind "mould" where it is what is done. */
const MOULDED: ReadonlySet<string> = new Set(['into', 'it', 'them', 'up', 'the', 'each', 'in'])
/** Before what a thing is cut into. */
const CUT_TO: ReadonlySet<string> = new Set(['into', 'in', 'apple', 'onion', 'thin'])

const UPON = vesselWordsOf('upon')
/** How many tokens describe what lies under things: "on two well greased". */
const MOST_BETWEEN = 4

/** Whether a vessel's name from token `at` on stands behind "on": "on a sheet", "on two greased tins". */
function isUpon(tokens: readonly Token[], at: number): boolean {
  for (let i = at - 1; i >= at - MOST_BETWEEN && tokens[i]?.block === tokens[at]!.block && tokens[i]!.kind !== 'mark'; i--)
    if (UPON.has(tokens[i]!.word)) return true
  return false
}

const telling = (row: VesselRow): number => (row.shape === 'none' ? 0 : BEFORE_BAKING.has(row.id) ? 1 : 2)

/**
 * The vessels a receipt names to bake in, most telling first: one with known sizes before one without, one to bake in before one to
 * boil or mix in. What an ingredient is measured in
 * is none, nor is the cup of a cup cake.
 */
export function vesselsNamed(section: Section, ingredients: readonly ReadIngredient[]): Array<FoundPhrase<VesselRow>> {
  const {tokens} = section
  const spans = [...ingredients].sort((a, b) => a.start - b.start)
  let next = 0
  const found = phrasesIn(VESSELS, tokens).filter(({from, to}) => {
    const [first, last] = [tokens[from]!, tokens[to - 1]!]
    if (last.stem === 'cup' && tokens[to]?.stem === 'cake') return false
    // "Rub it through a hair sieve"
    if (
      last.stem === 'sieve' &&
      tokens.slice(Math.max(0, from - 3), from).some(({word}) => /^(?:through|thro|thro')$/.test(word))
    )
      return false
    // "Mould it on the board": what dough is worked on.
    if (last.stem === 'board' && tokens.slice(Math.max(0, from - 6), from).some(({word}) => WORKED.test(word))) return false
    // "Roll the paste into a thin sheet", "on a sheet of paste"
    if (to - from === 1 && last.stem === 'sheet' && (!isUpon(tokens, from) || tokens[to]?.word === 'of')) return false
    // "Mould into twenty manchets"
    if (to - from === 1 && /^mou?ld$/.test(first.word) && MOULDED.has(tokens[to]?.word ?? '')) return false
    // "| Flour | Cups |": a measure.
    if (last.stem === 'cup' && section.blocks[last.block]!.kind === 'row') return false
    // "Slice the apples into rings"
    if (to - from === 1 && last.stem === 'ring' && CUT_TO.has(tokens[from - 1]?.word ?? '')) return false
    while (next < spans.length && spans[next]!.end <= first.start) next++
    return next === spans.length || spans[next]!.start >= last.end
  })
  return found.sort((a, b) => telling(b.row) - telling(a.row))
}

const minutes = (low: number, high: number): string => {
  const say = (m: number): string => (m >= 120 && m % 30 === 0 ? `${m / 60} h` : `${m} min`)
  return low === high ? say(low) : m60(low) && m60(high) ? `${low / 60}–${high / 60} h` : `${low}–${high} min`
}
const m60 = (m: number): boolean => m >= 120 && m % 30 === 0

/** What is known of a receipt before the gaps are filled. */
export interface Known {
  readonly section: Section
  readonly facts: ReceiptFacts
  readonly kind: KindFound | null
  readonly ingredients: readonly ReadIngredient[]
  readonly oven: readonly OvenPhrase[]
  readonly times: readonly TimePhrase[]
  readonly untimed: ReadReceipt['untimed']
  readonly serves: Yield | null
}

/**
 * What the receipt leaves out and its kind of dish supplies: vessel, heat, time of baking and rising, how many it feeds. Every entry is
 * ours and says why; front matter that states the field leaves nothing to fill.
 */
export function fillFromKind(known: Known): Inferred[] {
  const {facts, kind, ingredients, oven, times, untimed = [], serves, section} = known
  const inferred: Inferred[] = []
  const sized =
    facts.vessel === undefined
      ? (vesselStated(section, ingredients, kind?.id ?? null) ??
        (kind === null ? null : thingSized(section, ingredients, kind.id)))
      : null
  const stated: Inferred[] =
    sized === null
      ? []
      : [
          {
            field: 'vessel',
            value: sized.value,
            why: `the receipt says “${sized.said}”${sized.unit === undefined ? '' : `, read in ${sized.unit},`}${sized.depthFrom === null ? '' : ` and no depth; its depth: ${sized.depthFrom}`}`.replace(
              /,$/,
              '',
            ),
            ...(sized.anyDepth === undefined ? {} : {depth: 'assumed' as const}),
          },
        ]
  const row = kind === null ? null : lookUpKind(kind.id)
  if (kind === null || row === null) return stated
  inferred.push({
    field: 'kind',
    value: row.id,
    why:
      kind.by === 'items'
        ? `neither title nor text names a dish; told by its ${kind.words}`
        : `“${kind.words}” in the ${kind.by}${kind.leaven === undefined ? '' : `, raised by ${kind.leaven}`}`,
  })
  if (row.vessel === 'none') return inferred
  const from = `usual for ${row.title.toLowerCase()} (${row.source})`
  if (facts.oven === undefined && oven.length === 0) {
    inferred.push({
      field: 'oven',
      value: `${row.start.low}–${row.start.high} °C (${row.band}), best at ${row.start.best} °C`,
      why: `the receipt names no heat; ${from}`,
    })
  }
  if (facts.bake === undefined && !times.some((time) => (time.of === 'bake' || time.overnight === true) && !time.cooling)) {
    inferred.push({
      field: 'bake',
      value: minutes(row.minutes.low, row.minutes.high),
      why: times.some((time) => time.byWeight !== undefined)
        ? `the receipt gives its time by weight, and no weight of the piece; ${from}`
        : `the receipt gives no time of baking; ${from}`,
    })
  }
  if (row.dough !== undefined && !raisedBySoda(ingredients)) {
    const staged = times.some((time) => time.stage === 'rise' || time.stage === 'prove')
    for (const stage of ['rise', 'prove'] as const) {
      const lasts = row.dough[stage]
      if (lasts === 0 || facts[stage] !== undefined) continue
      if (untimed.includes(stage) || (!staged && untimed.length === 0 && facts.rise === undefined && facts.prove === undefined))
        inferred.push({
          field: stage,
          value: minutes(lasts, lasts),
          why: `the receipt gives no time ${stage === 'rise' ? 'to rise' : 'for its shaped dough to rise'}; ${from}`,
        })
    }
  }
  if (stated.length > 0) inferred.push(...stated)
  else if (facts.vessel === undefined) {
    const named = vesselsNamed(section, ingredients)[0]
    const pieces = named === undefined ? standsOnSheet(section, row, serves) : null
    if (named !== undefined && named.row.shape !== 'none') {
      // "On the bricks" says that no tin is used, and nothing of the size: that is its kind's, a flat bread's or a loaf's.
      // Nor does "a tin" of what is baked by the sheetful: it is a flat one.
      const bare =
        (named.row.shape === 'free-standing' && named.row.id !== GREAT_LOAF && row.vessel.startsWith('free-standing')) ||
        (named.row.id === 'tin-kettle' && row.vessel.startsWith('sheet')) ||
        // Nor is what is mixed in a basin and baked by itself baked in that.
        (BEFORE_BAKING.has(named.row.id) && BY_ITSELF.test(row.vessel)) ||
        // "A dish" of a roast is one that holds it.
        (PLAIN_DISH.test(words(section, named)) && row.vessel.startsWith('oblong'))
      // A loaf's tin is a loaf tin.
      const upon = named.row.id === 'tin-kettle' && isUpon(section.tokens, named.from)
      const tin = upon ? SHEET : named.row.id === 'tin-kettle' && LOAVES.test(row.vessel) ? LOAF_TIN : named.row
      inferred.push({
        field: 'vessel',
        value: bare ? row.vessel : vesselSize(tin),
        why: `the receipt says “${words(section, named)}” and no size; ${bare ? from : sizeSource(tin)}`,
      })
    } else if (pieces !== null) {
      inferred.push({
        field: 'vessel',
        value: vesselSize(SHEET),
        why: `the receipt names no vessel, and says “${pieces}”: those stand on a sheet (common-practice)`,
      })
    } else {
      inferred.push({
        field: 'vessel',
        value: row.vessel,
        why: `the receipt names no ${named === undefined ? 'vessel' : 'size of vessel'}; ${from}`,
      })
    }
  }
  if (facts.serves === undefined && serves?.divided === true)
    inferred.push({
      field: 'serves',
      value: `${serves.low} ${serves.of}`,
      why: `the receipt states no yield, and says “${serves.text.replace(/\s+/g, ' ')}”: each piece is taken as one`,
    })
  if (facts.serves === undefined && serves === null) {
    inferred.push({
      field: 'serves',
      value: `${row.feeds.low}–${row.feeds.high} people a vessel`,
      why: `the receipt states no yield; ${from}`,
    })
  }
  return inferred
}

/** "Quartern loaves" say how large they are. */
const GREAT_LOAF = 'household-loaf'
const PLAIN_DISH = /^(?:dish|dishes|tin|pan|earthen dish|baking dish)$/i
const ON_SHEET = vesselWordsOf('piece on a sheet')
const BY_HAND = phraseTree([...vesselWordsOf('by hand')], (phrase) => [phrase])
/** The vessel of a kind that stands in none, or on a sheet. */
const BY_ITSELF = /^(?:sheet|free-standing) /

/**
 * The words by which what a receipt makes stands on a sheet, though its kind is mostly baked in a vessel: pieces of a name that is baked so
 * ("makes 12 pasties"), or of a kind whose pieces the method cuts out or drops. Null where nothing says so.
 */
function standsOnSheet({title, tokens, source}: Section, row: DishKind, serves: Yield | null): string | null {
  if (BY_ITSELF.test(row.vessel)) return null
  const noun = serves?.of.split(' ').pop() ?? ''
  if (serves !== null && serves.high > 1 && ON_SHEET.has(fold(noun))) return noun
  const named =
    title
      .toLowerCase()
      .match(/\p{L}+/gu)
      ?.at(-1) ?? ''
  if (named.endsWith('s') && ON_SHEET.has(fold(named))) return named
  const [first] = row.onSheet === undefined ? [] : phrasesIn(BY_HAND, tokens)
  return first === undefined ? null : source.slice(tokens[first.from]!.start, tokens[first.to - 1]!.end).replace(/\s+/g, ' ')
}

const SHEET = vessels.find(({id}) => id === 'baking-sheet')!
/** The vessel of a kind that is baked in loaves. */
const LOAVES = /^(?:free-standing loaf|loaf) /
const LOAF_TIN = vessels.find(({id}) => id === 'loaf-pan')!

const sizeSource = (row: VesselRow): string => (row.source === 'memory' ? 'its size is from memory' : `its size: ${row.source}`)

const words = (section: Section, found: FoundPhrase<unknown>): string =>
  section.source.slice(section.tokens[found.from]!.start, section.tokens[found.to - 1]!.end).replace(/\s+/g, ' ')

/** A row's size as front matter writes a vessel: "round 23 x 5 cm", "round 9 x 2 1/2 in". */
export function vesselSize(row: VesselRow): string {
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
