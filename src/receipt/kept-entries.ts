import {pastes, preferments} from '../lexicon/grammar-words.js'
import {itemAlone, lookUpItem, lookUpMeasure} from '../lexicon/index.js'
import {poultry} from '../lexicon/poultry.js'
import {staysOutside} from './beside.js'
import {isLoafBaked} from './bread-loaves.js'
import {type Draft, type Entries, key} from './entries.js'
import {Exact} from './exact.js'
import {wordsWritten} from './flesh.js'
import {isFurther, isShareOfList} from './further.js'
import {POURED} from './item-classes.js'
import {allergensListed, bringsAllergen, countWeighedEggs, isWeightAgain} from './method-only.js'
import type {ReadIngredient} from './types.js'
import {ARTICLE, textOf, type View} from './view.js'
import {isWhatIsMade} from './what-is-made.js'
import {statedTokens} from './yields.js'

/**
 * Which of the entries read count, and how they are given: a list stands, prose adds to it what it has not said.
 */

/**
 * "2 glugs oil", "water | 320": a number of what nobody counts, in a list. Its measure is a word the lexicon lacks, or is not written.
 */
function withoutMeasure({bits, words}: View, d: Draft): boolean {
  if (d.unknownMeasure) return true
  if (d.low === null || d.measure !== 'count' || d.stated !== undefined || !d.known || d.row === null) return false
  if (d.item.includes(' of ') || d.row.pieces.some((piece) => piece.measure === 'count')) return false
  // "4 marrows": what has a plural is counted.
  if (/(?:[^s]s|leaf)$/.test(words[d.next - 1] ?? '')) return false
  return POURED.has(d.row.group) && (bits[d.start]! & ARTICLE) === 0
}

const IN_GRAMS = {
  list: 'no measure is written: read in grams, as the rest of the list is',
  size: 'no measure is written in the whole list: read in grams, since its numbers are so large',
}
/** Below 0.6 a reading is shown as doubtful. */
const DOUBTFUL = 0.55

/** Measures beside which a list is still one in grams: spoons and what is not measured. */
const BESIDE_GRAMS = new Set(['gram', 'kilogram', 'millilitre', 'centilitre', 'litre', 'teaspoon', 'tablespoon', 'pinch', 'dash'])
const SPOONS = new Set(['teaspoon', 'tablespoon', 'pinch', 'dash'])
const METRIC_VOLUMES = new Set(['millilitre', 'centilitre', 'litre'])
const LIQUIDS = new Set(['liquid', 'spirit', 'dairy'])
/** Fewer grams of flour, butter or sugar are in no list. Common practice, no source. */
const LEAST_GRAMS = 5
/** So many of what has no weight by the piece, as raisins, are weighed and not counted. Common practice, no source. */
const LEAST_WEIGHED = 20

/**
 * A list without any measure is one in grams where its largest number is beyond this: nobody takes so many cups, and in a baker's percentages
 * the flour is 100. Common practice, no source.
 */
const PERCENT = 100

const isWhole = ({low, row}: Draft): boolean => row?.group === 'flour' && low!.value === PERCENT

/** Why a bare number of the list is one of grams, as `bareGrams` has it; null where it is none. */
type InGrams = (d: Draft) => 'list' | 'size' | null

/**
 * Whether a bare number of the list is one of grams: "500 flour" where all else is in grams, or where nothing in the list is measured and
 * the numbers are large. A liquid is not taken so where others are in millilitres.
 */
function bareGrams(view: View, drafts: readonly Draft[]): InGrams {
  const listed = drafts.filter((d) => d.low !== null)
  const bare = listed.filter((d) => d.inList && !d.unknownMeasure && withoutMeasure(view, d))
  const measured = listed.some(({measure}) => {
    const dimension = lookUpMeasure(measure)?.dimension
    return (dimension === 'mass' || dimension === 'volume') && !SPOONS.has(measure)
  })
  const large = !measured && bare.length > 1 && bare.some(({low}) => low!.value > PERCENT) && !bare.some(isWhole)
  const throughout = listed.every(({measure}) => {
    const dimension = lookUpMeasure(measure)?.dimension
    return (dimension !== 'mass' && dimension !== 'volume') || BESIDE_GRAMS.has(measure)
  })
  const why = !throughout
    ? null
    : listed.some(({measure}) => measure === 'gram' || measure === 'kilogram')
      ? 'list'
      : large
        ? 'size'
        : null
  if (why === null) return () => null
  const volumes = listed.some(({measure}) => METRIC_VOLUMES.has(measure))
  const is = (d: Draft): boolean => {
    if (d.unknownMeasure || d.low === null || d.measure !== 'count' || d.stated !== undefined || d.row === null) return false
    const {group, pieces} = d.row
    if (volumes && LIQUIDS.has(group)) return false
    if (!withoutMeasure(view, d))
      return d.inList && !pieces.some(({measure}) => measure === 'count') && group !== 'egg' && d.low.value >= LEAST_WEIGHED
    return d.low.value >= (group === 'leaven' || group === 'salt' ? 1 : LEAST_GRAMS)
  }
  return (d) => (is(d) ? why : null)
}

const percent = (share: Exact): number => share.times(Exact.of(100)).value

/** A draft as the receipt gives it; `grams` is why its bare number is one of grams, null where it is none. */
function output(view: View, d: Draft, grams: 'list' | 'size' | null): ReadIngredient {
  const {tokens, section} = view
  const start = tokens[d.start]!.start
  const end = Math.max(start, tokens[d.next - 1]!.end)
  const ranged = d.low !== null && d.high !== null && !d.low.equals(d.high)
  return {
    text: section.source.slice(start, end),
    start,
    end,
    amount: d.low === null || d.high === null ? null : {low: d.low.value, high: d.high.value},
    exact: d.low === null ? null : d.low.toString(),
    ...(ranged ? {exactHigh: d.high!.toString()} : {}),
    measure: d.low === null ? 'indefinite' : grams !== null ? 'gram' : d.measure,
    item: d.item,
    known: d.known,
    ...(d.measureText === '' ? {} : {measureText: d.measureText}),
    hedges: d.hedges,
    ...(d.prepared === '' ? {} : {prepared: d.prepared}),
    part: d.part,
    confidence: Math.round((grams !== null ? Math.min(d.confidence, DOUBTFUL) : d.confidence) * 100) / 100,
    ...(d.other === undefined ? {} : {other: d.other}),
    notes: grams === null ? d.notes : [...d.notes, IN_GRAMS[grams]],
    ...(d.stated === undefined ? {} : {stated: d.stated}),
    ...(d.reckoned === undefined ? {} : {reckoned: d.reckoned.toString()}),
    ...(d.lacks === undefined || d.low === null
      ? {}
      : {lacks: {item: d.lacks.item, count: d.lacks.count.toString(), text: d.lacks.text}}),
    ...(d.percent === undefined || (d.low !== null && d.percentOf === undefined)
      ? {}
      : {
          bakersPercent: {
            low: percent(d.percent.low),
            high: percent(d.percent.high),
            ...(d.percentOf === undefined ? {} : {of: d.percentOf}),
          },
        }),
    ...(grams !== null
      ? {takenAs: 'gram' as const, ...(grams === 'size' ? {takenBy: 'size' as const} : {})}
      : withoutMeasure(view, d)
        ? {unmeasured: true as const}
        : {}),
  }
}

const PREFERMENTS: ReadonlySet<string> = new Set(preferments)
const isPreferment = ({item}: Draft): boolean => PREFERMENTS.has(item)
/** The first dough of a bread, of its flour, water and yeast: an item of the lexicon. */
const SPONGE = 'sponge of yeast'

/**
 * The entries with a sponge that is no cake: where yeast goes in, it is the dough's own beginning. So much of it is kept as that, and one that is
 * only set, "set a soft sponge", is nothing that goes in.
 */
function leavenSponges({words}: View, drafts: readonly Draft[]): readonly Draft[] {
  if (!drafts.some(({row}) => row?.raises === 'yeast')) return drafts
  return drafts.flatMap((d): Draft[] => {
    const plain = d.item === 'sponge cake' && words[d.next - 1] === 'sponge'
    if (!plain || d.inList) return [d]
    const row = lookUpItem(SPONGE)
    return d.low === null || d.measure === 'count' || row === null ? [] : [{...d, item: SPONGE, row}]
  })
}

/** How far from the head of its sentence the sponge stands: "Build the levain the night before". */
const HEAD = 6

/** Whether the sentence of the prose that token `at` stands in is of a sponge being set. */
function setsSponge({words, tokens}: View, at: number): boolean {
  let from = at
  const heads: number[] = []
  for (; from > 0 && tokens[from - 1]!.block === tokens[at]!.block && !/^[.;!?]$/.test(words[from - 1]!); from--)
    // "Day 1, 9 pm — build the levain: 50 g starter"
    if (/^[—-]$/.test(words[from - 1]!)) heads.push(from)
  return [from, ...heads].some((head) => words.slice(head, Math.min(at, head + HEAD)).some((word) => PREFERMENTS.has(word)))
}

/**
 * What the list has of a step's thing, called as the step calls it: gravy is no stock of the list. It is that of the part the step stands in, or
 * where that has none, of any, for steps follow the last part of a list; but a part that only a number tells is another receipt's.
 */
function listedOf({words}: View, step: Draft, listed: readonly Draft[]): readonly Draft[] {
  const alike = listed.filter((one) => step.item === one.item || words[step.next - 1] === words[one.next - 1])
  const ofPart = alike.filter(({part}) => part === step.part)
  return ofPart.length > 0 || /^\d+$/.test(step.part) ? ofPart : alike
}

const BIRDS: ReadonlySet<string> = new Set(poultry)
const OF_CHICKEN = 'no bird is named: taken as chicken’s'
const OF_TITLE = 'no beast is named: taken as that of the title'

/** "8 thighs", and of a title with beef, "3 ribs": what a list has by itself, and means in doubt. */
function meantAlone({words}: View, title: string, d: Draft): Draft {
  if (!d.inList || d.low === null) return d
  const written = words.slice(d.start, d.next)
  const row = itemAlone(d.known ? (written.at(-1) ?? '') : d.item)
  // Of what the lexicon knows by the bare name, the bird may be named before it.
  if (row === null || (d.known && (d.row !== row || written.some((word) => row.id.startsWith(`${word} `))))) return d
  const isBird = BIRDS.has(row.id)
  if (!isBird && !wordsWritten(title).includes(row.id.split(' ').at(-1)!)) return d
  return {...d, item: row.id, row, known: true, confidence: DOUBTFUL, notes: [...d.notes, isBird ? OF_CHICKEN : OF_TITLE]}
}

const PASTES: ReadonlySet<string> = new Set(pastes)
/** Whether flour and what wets or shortens it are among the entries with their amounts. */
const makesPaste = (kept: readonly Draft[]): boolean =>
  [/^(?:flour|meal)$/, /^(?:fat|liquid|dairy|egg)$/].every((group) =>
    kept.some(({low, row}) => low !== null && group.test(row?.group ?? '')),
  )

/** "Beat the butter and sugar to a cream": the second of two names behind one article. */
const isSecondOfTwo = ({words}: View, at: number): boolean => words[at - 1] === 'and' && KNOWN_BY.has(words[at - 3] ?? '')

const NONE: ReadonlySet<string> = new Set()

/** Before a name that was given before. */
const KNOWN_BY: ReadonlySet<string> = new Set(['the', 'your', 'this', 'these', 'said'])

/**
 * The entries that count, in the order of the text. A bare name in prose that ends the title is what is made.
 *
 * @param drafts those of the entries that are the receipt's own
 */
export function keptEntries(entries: Entries, title: string, drafts: readonly Draft[]): ReadIngredient[] {
  if (drafts.length === 0) return []
  const {view} = entries
  const kept: Draft[] = []
  const definite = new Set<string>()
  // "This is for two loaves, each about 800 g"
  const stated = drafts.some(({inList}) => !inList) ? statedTokens(view.section) : null
  const inside = leavenSponges(view, drafts)
    .map((d) => meantAlone(view, title, d))
    .filter(
      (d) =>
        d.inList ||
        !(
          staysOutside(view, d) ||
          stated!.has(d.start) ||
          isWhatIsMade(view, d, title, entries.listed) ||
          isLoafBaked(view, d, drafts)
        ),
    )
  for (const d of inside) if (d.low !== null || (!d.bare && d.inList) || (d.inList && d.bare)) definite.add(key(d))
  const seen = new Set<string>()
  const listedAllergens = entries.listed ? allergensListed(inside) : NONE
  const listedAmounts = new Map<string, Draft[]>()
  const titleWords = title.toLowerCase().split(/[^a-z]+/)
  for (const d of inside) {
    if (d.inList) {
      kept.push(d)
      seen.add(key(d))
      if (d.low !== null) {
        const same = listedAmounts.get(key(d))
        if (same === undefined) listedAmounts.set(key(d), [d])
        else if (same.length < 50) same.push(d)
      }
      continue
    }
    if (d.low !== null) {
      const same = listedAmounts.get(key(d))
      const further = same !== undefined && isFurther(view, d)
      if (isWeightAgain(d, kept)) continue
      // A step that only says again what the list gave.
      if (!further && same?.some((o) => o.measure === d.measure && o.low!.equals(d.low!) && o.high!.equals(d.high!))) continue
      if (setsSponge(view, d.start)) {
        const built = kept.find((one) => one.inList && one.low !== null && isPreferment(one))
        // "Levain: 25 g starter, 90 g flour": what the list's levain is built of.
        if (built !== undefined) {
          built.notes = [...built.notes, textOf(view, d.start, d.next).replace(/\s+/g, ' ')]
          continue
        }
        // "For the biga stir 90 g water": of the list's water.
        const whole = same?.find((one) => one.measure === d.measure && one.low!.value > d.high!.value)
        if (whole !== undefined) {
          whole.notes = [...whole.notes, textOf(view, d.start, d.next).replace(/\s+/g, ' ')]
          continue
        }
      }
      // "Mix the flour with 1 cup of milk", of the list's two; "then 1 cup more milk".
      const ofList = same === undefined ? [] : further ? same : listedOf(view, d, same)
      if (ofList.length > 0 && isShareOfList(d, ofList, further)) {
        ofList[0]!.notes = [...ofList[0]!.notes, textOf(view, d.start, d.next).replace(/\s+/g, ' ')]
        continue
      }
      kept.push(d)
      seen.add(key(d))
      continue
    }
    if (d.bare) {
      if (definite.has(key(d)) || seen.has(key(d))) continue
      const base = d.item.replace(/ (?:juice|rind|pulp|yolk|white|crumb)$/, '')
      if (base !== d.item && (definite.has(base) || seen.has(base))) continue
      // "A pound of salt pork … put the pork in the pot": the same, by its last word.
      const known = KNOWN_BY.has(view.words[d.start - 1] ?? '') || isSecondOfTwo(view, d.start)
      if (known && kept.some((one) => one.low !== null && one.item.endsWith(` ${d.item}`))) continue
      // "Raise the paste", of the flour and the lard that were given.
      if (PASTES.has(d.item) && KNOWN_BY.has(view.words[d.start - 1] ?? '') && makesPaste(kept)) continue
      if (titleWords[titleWords.length - 1] === d.item) continue
      if (entries.listed && !bringsAllergen(view, d, listedAllergens, inside)) continue
      seen.add(key(d))
      kept.push(d)
      continue
    }
    if (entries.listed && definite.has(key(d)) && !d.hedges.some((h) => h.includes('more'))) continue
    seen.add(key(d))
    kept.push(d)
  }
  kept.sort((a, b) => view.tokens[a.start]!.start - view.tokens[b.start]!.start)
  countWeighedEggs(kept)
  const inGrams = bareGrams(view, kept)
  return kept.map((d) => output(view, d, inGrams(d)))
}
