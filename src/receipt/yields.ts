import {asked} from '../lexicon/asked-words.js'
import {cardinals} from '../lexicon/grammar-words.js'
import {hedgeAmounts} from '../lexicon/hedge-amounts.js'
import {fold, lookUpItem} from '../lexicon/index.js'
import type {Item, Range} from '../lexicon/schema.js'
import {aboutYield, germanYields} from '../lexicon/yield-words.js'
import type {Section, Token} from './section.js'
import {sentenceAt} from './sentences.js'
import type {Yield} from './types.js'

/**
 * The yield a receipt states: "sufficient for 5 or 6 persons", "makes two loaves", "serves 8", "this quantity makes twelve cakes".
 */

const OPENERS = new Set([
  'sufficient',
  'serves',
  'serve',
  'serving',
  'servings',
  'makes',
  'make',
  'enough',
  'yield',
  'yields',
  'fill',
  'fills',
  'feeds',
  'feed',
  'portions',
  'suffice',
  'suffices',
  'dine',
  'for',
  'cuts',
  'divides',
  'gives',
  'give',
  'produces',
  'quantity',
  // Words of German receipts; "für 12 Stück" is read as "for 12 pieces".
  'ergibt',
  'genug',
  'ergeben',
  'reicht',
  'reichen',
  'fur',
  'menge',
])
const PERSONS = new Set([
  'person',
  'persons',
  'people',
  'servings',
  'serving',
  'portions',
  'portion',
  'guests',
  'eaters',
  'diners',
  'company',
  'children',
  'hands',
])
/** What one makes or fills: a yield counts these, never pounds or eggs. */
export const THINGS: ReadonlySet<string> = new Set([
  'loaf',
  'loaves',
  'cake',
  'cakes',
  'biscuit',
  'biscuits',
  'bun',
  'buns',
  'roll',
  'rolls',
  'pie',
  'pies',
  'pudding',
  'puddings',
  'tart',
  'tarts',
  'tartlets',
  'tartlet',
  'dish',
  'dishes',
  'mould',
  'moulds',
  'mold',
  'molds',
  'cup',
  'cups',
  'cookies',
  'cookie',
  'scones',
  'scone',
  'muffins',
  'muffin',
  'crumpets',
  'custards',
  'custard',
  'puffs',
  'patties',
  'cheesecakes',
  'cheesecake',
  'turnovers',
  'dumplings',
  'dumpling',
  'pancakes',
  'fritters',
  'slices',
  'creams',
  'glasses',
  'bottles',
  'balls',
  'squares',
  'bars',
  'fingers',
  'wedges',
  'triangles',
  'pieces',
  'tins',
  'pans',
  'pints',
  'quarts',
  'jars',
  'dozen',
  'rusks',
  'wafers',
  'macaroons',
  'crackers',
  'plates',
  'batches',
  'crusts',
  'layers',
  'rounds',
  'pasties',
  'pasty',
  'jumbles',
  'drops',
  'plate',
  'tin',
  'pan',
  'gingerbreads',
  'wigs',
  'wiggs',
  'manchets',
  'crocks',
  'bowls',
  'flatbread',
  'flatbreads',
  'pizza',
  'pizzas',
  'pitta',
  'pittas',
  'pita',
  'pitas',
  'naan',
  'naans',
  'bap',
  'baps',
  'cob',
  'cobs',
  'bagel',
  'bagels',
  'baguette',
  'baguettes',
  'bannock',
  'bannocks',
  'farls',
  'oatcake',
  'oatcakes',
  'breadsticks',
  'quiche',
  'quiches',
  'brownies',
  'cupcakes',
  'croissants',
  'kisses',
  'meringues',
  'entremets',
  'entree',
  'quart',
  'quartern',
  'pint',
  'trays',
  'tray',
  'ramekins',
  'ramekin',
])
/** "gives a pint of juice" tells no yield. */
export const MEASURES: ReadonlySet<string> = new Set([
  'cup',
  'cups',
  'pint',
  'pints',
  'quart',
  'quarts',
  'glasses',
  'plate',
  'plates',
  'dish',
])

export const SIZES: ReadonlySet<string> = new Set([
  'large',
  'dariole',
  'jelly',
  'bread',
  'small',
  'good',
  'sized',
  'size',
  'moderate',
  'moderately',
  'medium',
  'middling',
  'middle',
  'common',
  'ordinary',
  'little',
  'big',
  'nice',
  'very',
  'fine',
  'round',
  'half',
  'quartern',
  'pound',
  'two',
  'gallon',
  'peck',
  'penny',
  'twopenny',
  'tin',
  'inch',
  'free',
  'standing',
  'standard',
  'handsome',
  'tolerable',
  'plain',
  'rather',
  'great',
  'tea',
  'mince',
  'apple',
  'fruit',
  'sponge',
  'of',
  'the',
  'these',
  'such',
  'rich',
  'flat',
  'long',
  'single',
  'double',
  'queen',
  'pudding',
  'pie',
  'baking',
  'drop',
  'cottage',
  'household',
  'white',
  'brown',
  'wheaten',
  'french',
  'milk',
  'plaited',
  'coburg',
  'soda',
  'cheese',
  'plum',
  'light',
  'square',
  'ginger',
  'custard',
  'breakfast',
  'lb',
  '.',
  'or',
])

interface Count {
  readonly low: number
  readonly high: number
  readonly end: number
  /** The word that says it is no exact number. */
  readonly about: string | null
}

const PLAIN: Readonly<Record<string, number>> = {...cardinals, dutzend: 12}

function one(tokens: readonly Token[], i: number): {value: number; end: number; dozens: boolean} | null {
  const t = tokens[i]
  if (t === undefined) return null
  let value: number
  let end = i + 1
  if (t.kind === 'number') {
    if (t.den === 0) return null
    value = t.num / t.den
  } else if (t.kind === 'word' && (t.word === 'a' || t.word === 'an')) value = 1
  else if (t.kind === 'word' && t.word === 'half' && tokens[i + 1]?.word === 'a') {
    value = 0.5
    end++
  } else if (t.kind === 'word' && Object.hasOwn(PLAIN, t.word)) {
    value = PLAIN[t.word]!
    const next = tokens[end]
    if (value >= 20 && value % 10 === 0 && next?.kind === 'word' && Object.hasOwn(PLAIN, next.word) && PLAIN[next.word]! < 10) {
      value += PLAIN[next.word]!
      end++
    }
  } else if (t.kind === 'word' && t.word === 'dozen') return {value: 12, end, dozens: false}
  else return null
  const dozens = /^(?:dozen|doz|dutzend)$/.test(tokens[end]?.word ?? '')
  if (dozens) {
    value *= 12
    end++
    // "a dozen and a half", "a dozen and half"
    const half = tokens[end]?.word === 'and' ? (tokens[end + 1]?.word === 'a' ? end + 2 : end + 1) : -1
    if (half > 0 && tokens[half]?.word === 'half') {
      value *= 1.5
      end = half + 1
    }
  }
  return {value, end, dozens}
}

export function count(tokens: readonly Token[], i: number): Count | null {
  let at = i
  let about: string | null = null
  while (
    at < i + 4 &&
    (aboutYield.has(tokens[at]?.word ?? '') ||
      /^(?:from|up|to|between|at|least)$/.test(tokens[at]?.word ?? '') ||
      (about !== null && tokens[at]?.word === '.'))
  ) {
    if (aboutYield.has(tokens[at]!.word)) about = tokens[at]!.word
    at++
  }
  const first = one(tokens, at)
  if (first === null) return null
  if (/^(?:or|to|-|—|and|bis|oder)$/.test(tokens[first.end]?.word ?? '')) {
    const second = one(tokens, first.end + 1)
    if (
      second !== null &&
      second.value > first.value &&
      (tokens[first.end]!.word !== 'and' || /^(?:between|from)$/.test(tokens[at - 1]?.word ?? ''))
    ) {
      // "2-3 dozen": the dozen is said of both.
      const low = second.dozens && !first.dozens && first.value * 12 < second.value ? first.value * 12 : first.value
      return {low, high: second.value, end: second.end, about}
    }
  }
  return {low: first.value, high: first.value, end: first.end, about}
}

const SUFFICES: ReadonlySet<string> = new Set(['sufficient', 'enough', 'suffice', 'suffices'])
/** What goes into a dish by the spoon or the glass. */
const BESIDE: ReadonlySet<Item['group']> = new Set<Item['group']>([
  'spice',
  'salt',
  'herb',
  'leaven',
  'spirit',
  'sugar',
  'syrup',
  'fat',
  'colour',
  'gelling',
])

/**
 * "A wine-glass full of each is sufficient for three pies", "a quarter of an ounce of cloves is enough for two cakes": said of what goes in, and not of
 * the receipt. `at`: the word that opens a yield.
 */
function isOfOneThing(tokens: readonly Token[], at: number): boolean {
  if (!SUFFICES.has(tokens[at]!.word)) return false
  const [from] = sentenceAt(tokens, at)
  let beside = false
  for (let i = from; i < at; i++) {
    const {word} = tokens[i]!
    if (word === 'each' && tokens[i - 1]?.word === 'of') return true
    const group = lookUpItem(word)?.group
    if (group === undefined) continue
    if (!BESIDE.has(group)) return false
    beside = true
  }
  return beside && /^(?:is|are|be|was|suffice|suffices)$/.test(tokens[at - 1]!.word)
}

/** How far off a yield may be that is said with this word. */
const factorOf = (word: string): Range => {
  const phrase = aboutYield.get(word) ?? 'about'
  return hedgeAmounts.find(({phrases}) => phrases.includes(phrase))!.factor
}

/** "24 rolls (about)", "20 or so": behind a yield that ends before token `at`. The token after it; `at` where nothing of the kind is said. */
function pastAbout(tokens: readonly Token[], at: number): number {
  const word = (n: number): string => (tokens[n]?.block === tokens[at]?.block ? (tokens[n]?.word ?? '') : '')
  if (word(at) === 'or' && word(at + 1) === 'so') return at + 2
  const open = word(at) === '(' || word(at) === ','
  const inside = open ? at + 1 : at
  if (!aboutYield.has(word(inside)) || word(inside) === 'some') return at
  let end = inside + 1
  if (word(at) !== '(') return tokens[end]?.kind === 'mark' || word(end) === '' ? end : at
  if (word(end) === '.') end++
  return word(end) === ')' ? end + 1 : at
}

/** The noun that a yield counts, in English; '' where the word at `at` is none. */
export const thingAt = (tokens: readonly Token[], at: number): string => {
  const word = tokens[at]?.word ?? ''
  return THINGS.has(word) ? word : (germanYields.get(word) ?? '')
}

const isPersons = (word: string): boolean => PERSONS.has(word) || germanYields.get(word) === 'persons'

/** More than anybody makes of one receipt. */
const MOST = 2000
/** Tokens behind the people within which a count of what is made is of the same receipt ("Serves 12. Makes two loaves."). */
const NEAR_PEOPLE = 40
/** A number in words is a yield by itself from here on ("it will make about thirty, if small"), and any that ends its sentence ("this makes six."). */
const FEWEST_ALONE = 10

/** "Zutaten für 12 Stück", "Ingredients (for 2 loaves)": does the word before token `at` head a list? */
const opensList = (tokens: readonly Token[], at: number): boolean => {
  const before = tokens[at - 1]?.word === '(' ? at - 2 : at - 1
  return (
    tokens[before]?.block === tokens[at]!.block && /^(?:ingredients|zutaten|dough|teig|batter|pastry)$/.test(tokens[before]!.word)
  )
}

/** What a receipt states of how much comes of it, each with the words it stands in; null where it says nothing of the kind. */
export interface StatedYields {
  /** The first that counts what is made, and the first of those that count it in no measure ("makes two loaves", not "three pints"). */
  readonly made: Yield | null
  readonly counted: Yield | null
  /** The first that counts people. */
  readonly persons: Yield | null
}

/**
 * Read what one receipt states of how much it makes, and of how many it feeds: "Makes 2 loaves. Serves 12." says both.
 *
 * @param section the receipt's blocks and tokens
 */
export function statedYields(section: Section): StatedYields {
  const {tokens, source} = section
  let made: Yield | null = null
  let counted: Yield | null = null
  let persons: Yield | null = null
  /** Said without a word for people: "Sufficient for 6." */
  let few: Yield | null = null
  let toldAt = 0
  const feeds = (found: Yield, at: number): void => {
    if (persons === null) toldAt = at
    persons ??= found
  }
  const makes = (found: Yield, at: number): void => {
    // A section may hold a second receipt: a count far behind the people of the first is not of the same.
    if (persons !== null && at > toldAt + NEAR_PEOPLE) return
    made ??= found
    if (!MEASURES.has(found.of)) counted ??= found
  }
  const phrase = (from: number, to: number, c: Count, of: string): Yield => {
    const start = tokens[from]!.start
    const behind = pastAbout(tokens, to)
    const end = tokens[behind - 1]!.end
    const word = c.about ?? (behind === to ? null : 'about')
    const factor = word === null ? null : factorOf(word)
    // Things come whole, and what is under one is as it stands.
    const low = factor === null || c.low < 1 ? c.low : Math.max(1, Math.round(c.low * factor.low))
    const high = factor === null || c.high < 1 ? c.high : Math.max(low, Math.round(c.high * factor.high))
    return {text: source.slice(start, end), start, end, low, high, of}
  }
  for (let i = 0; i < tokens.length; i++) {
    const t = tokens[i]!
    if (t.word === '(' && tokens[i + 1]?.block === t.block) {
      // "Baked oats (for 2)": a heading's.
      const at = tokens[i + 1]!.word === 'for' && section.blocks[t.block]!.kind === 'heading' ? count(tokens, i + 2) : null
      if (at !== null && tokens[at.end]?.word === ')' && at.high > 1) feeds(phrase(i + 1, at.end, at, 'persons'), i)
      // "(12 portions)", "(6 servings)"
      const c = count(tokens, i + 1)
      const of = c === null ? '' : (tokens[c.end]?.word ?? '')
      if (c !== null && tokens[c.end + 1]?.word === ')' && c.low > 0) {
        if (isPersons(of)) feeds(phrase(i + 1, c.end + 1, c, 'persons'), i)
        // "Plätzchen (ca. 40 Stück)", of what the heading names.
        const thing = thingAt(tokens, c.end)
        const whole = tokens[i - 1]?.block !== t.block && tokens[c.end + 2]?.block !== t.block
        if (thing !== '' && (whole || section.blocks[t.block]!.kind === 'heading')) makes(phrase(i + 1, c.end + 1, c, thing), i)
      }
      continue
    }
    const block = t.block
    if (tokens[i - 1]?.block !== block) {
      const c = section.blocks[block]!.kind === 'paragraph' ? count(tokens, i) : null
      // "Ca. 60 Stück", "12 buns", "1 loaf (in a 2 lb tin)": a paragraph of its own.
      if (c !== null && (c.high > 1 || t.word !== 'a') && c.high <= MOST && tokens[c.end]?.block === block) {
        const thing = thingAt(tokens, c.end)
        const people = isPersons(tokens[c.end]!.word)
        const last = tokens[c.end + 1]?.word === '.' ? c.end + 2 : c.end + 1
        const alone = tokens[last]?.block !== block || isBracketed(tokens, last)
        if ((people || (thing !== '' && !MEASURES.has(thing))) && alone) {
          if (people) feeds(phrase(i, c.end + 1, c, 'persons'), i)
          else makes(phrase(i, c.end + 1, c, thing), i)
          continue
        }
      }
    }
    if (t.kind !== 'word' || !OPENERS.has(t.word) || isOfOneThing(tokens, i)) continue
    if (/^(?:quantity|menge)$/.test(t.word) && !/^(?::|for|fur)$/.test(tokens[i + 1]?.word ?? '')) continue
    // "Cuts into three dozen squares": said of the whole, where "cut it into squares" is a step.
    if (/^(?:cuts|divides)$/.test(t.word) && tokens[i + 1]?.word !== 'into') continue
    let j = i + 1
    while (
      j < i + 7 &&
      tokens[j]?.block === block &&
      /^(?:for|to|make|makes|fill|into|:|—|be|sufficient|a|company|of|up|it|them|this|serves?|party|dinner|yields?|portions|servings|will|quantity|fur)$/.test(
        tokens[j]!.word,
      )
    ) {
      if (/^(?:a)$/.test(tokens[j]!.word) && !/^(?:company|party|dinner)$/.test(tokens[j + 1]?.word ?? '')) break
      j++
    }
    if (tokens[j]?.block !== block) continue
    const c = count(tokens, j)
    if (c === null || c.high <= 0 || c.high > MOST) continue
    let k = c.end
    const after = (n: number): string => (tokens[n]?.block === block ? tokens[n]!.word : '')
    // "serves a crowd": of no number.
    const article = /^an?$/.test(tokens[j]!.word) && c.high <= 1
    if (isPersons(after(k)) && !article) {
      feeds(phrase(i, k + 1, c, 'persons'), i)
      continue
    }
    // "For 4 pizzas (30 cm)", "For 6:", a line of its own; anywhere else "for" says what of.
    const isFor = t.word === 'for' || t.word === 'fur'
    const line = isFor && (tokens[i - 1]?.block !== block || opensList(tokens, i))
    if ((isFor && !line) || t.word === 'serve') {
      if (t.word === 'serve' && (tokens[i - 1] === undefined || tokens[i - 1]!.block !== block) && tokens[j]!.kind === 'number')
        feeds(phrase(i, c.end, c, 'persons'), i)
      continue
    }
    if (/^(?:serves|serving|servings|feeds|portions)$/.test(t.word)) {
      if (article) continue
      const ends = tokens[k]
      if (ends === undefined || ends.block !== block || ends.kind === 'mark' || !THINGS.has(ends.word)) {
        feeds(phrase(i, c.end, c, 'persons'), i)
        continue
      }
    }
    let named = ''
    while (k < c.end + 9 && after(k) !== '') {
      const sized = pastSize(tokens, k)
      if (named === '' && sized > k) {
        k = sized
        continue
      }
      const word = after(k)
      const thing = after(k) === '' ? '' : thingAt(tokens, k)
      if (thing !== '') {
        named = thing
        k++
        continue
      }
      // "6 large or 12 small pasties": the first is read.
      const other = named === '' && word === 'or' && k > c.end ? one(tokens, k + 1) : null
      if (other !== null && SIZES.has(after(other.end))) {
        k = other.end
        continue
      }
      if (named !== '' || !SIZES.has(word)) break
      k++
    }
    // "Makes one tray, 24 squares": what a tray is cut into counts, and in how many of them.
    const cut =
      named === '' || (!line && /^(?:make|give)$/.test(t.word) && !makesYield(tokens, i)) ? null : piecesIn(tokens, k, named)
    if (cut !== null && c.low === c.high && Number.isInteger(c.low)) {
      const {pieces, of, end} = cut
      const said = phrase(i, end, pieces, of)
      makes({...said, vessels: c.low}, i)
      continue
    }
    if (line) {
      const next = after(k)
      // "Für 2 Brote à 1 kg", "For 2 loaves of 800 g each": what each weighs.
      const weighs = /^(?:a|je|zu|of|each)$/.test(next) && tokens[k + 1]?.kind === 'number'
      if (next !== '' && !weighs && !(tokens[k]!.kind === 'mark' && /^[:.()]$/.test(next))) continue
      if (named === '' && (k > c.end || c.high <= 1 || next === '(')) continue
      if (named === '') feeds(phrase(i, k, c, 'persons'), i)
      else makes(phrase(i, k, c, named), i)
      continue
    }
    // "Yield 10 x 350 g": so many, and what each weighs.
    const each = /^(?:x|×|à|a)$/.test(after(k)) && tokens[k + 1]?.kind === 'number' && WEIGHS.has(after(k + 2))
    if (named === '' && each && /^(?:makes|yields?|ergibt|menge|quantity)$/.test(t.word)) {
      // "2 x 850 g loaves"
      const thing = THINGS.has(after(k + 3)) || germanYields.has(after(k + 3))
      makes(phrase(i, thing ? k + 4 : k + 3, c, thing ? thingAt(tokens, k + 3) : 'pieces'), i)
      continue
    }
    if (named === '') {
      if (
        (/^(?:makes|yields?|produces|gives|ergibt|quantity|menge)$/.test(t.word) ||
          (t.word === 'make' && makesYield(tokens, i))) &&
        (tokens[j]!.kind === 'number' ||
          c.about !== null ||
          c.high >= FEWEST_ALONE ||
          (c.high > 1 && (closes(after(c.end)) || (after(c.end) === ',' && /^(?:each|of|about)$/.test(after(c.end + 1)))))) &&
        (tokens[k] === undefined ||
          tokens[k]!.block !== block ||
          tokens[k]!.kind === 'mark' ||
          endsBehind(tokens, c.end) ||
          pastAbout(tokens, c.end) > c.end)
      ) {
        makes(phrase(i, c.end, c, 'pieces'), i)
      } else if (
        ((t.word === 'sufficient' || t.word === 'enough') && after(i + 1) === 'for') ||
        (t.word === 'reicht' && after(i + 1) === 'fur')
      ) {
        // "Sufficient for 6.": people, where nothing is named; "sufficient for a turkey" tells no yield.
        const next = tokens[k]
        const alone = next === undefined || next.block !== block || next.kind === 'mark' || endsBehind(tokens, c.end)
        if (alone && c.high > 1) few ??= phrase(i, c.end, c, 'persons')
      }
      continue
    }
    if (/^(?:make|give)$/.test(t.word) && !makesYield(tokens, i)) continue
    if (/^(?:gives?|produces)$/.test(t.word) && MEASURES.has(named)) continue
    makes(phrase(i, k, c, named), i)
  }
  return {made, counted, persons: persons ?? few}
}

/** The pieces behind vessels that a yield counts, from token `at`: ", 20 Stück", "(40 pieces)"; null where it counts no vessels, or nothing in them. */
function piecesIn(
  tokens: readonly Token[],
  at: number,
  vessels: string,
): {readonly pieces: Count; readonly of: string; readonly end: number} | null {
  const open = tokens[at]
  if (!asked.vessel.has(fold(vessels)) || open === undefined || !/^[,(:]$/.test(open.word)) return null
  const pieces = count(tokens, at + 1)
  const of = pieces === null ? '' : thingAt(tokens, pieces.end)
  if (pieces === null || pieces.high <= 1 || pieces.high > MOST || of === '' || MEASURES.has(of) || asked.vessel.has(fold(of)))
    return null
  const last = tokens[pieces.end]!
  const next = tokens[pieces.end + 1]
  const behind = next?.block === last.block ? next.word : ''
  if (last.block !== open.block || !(open.word === '(' ? behind === ')' : closes(behind))) return null
  return {pieces, of, end: open.word === '(' ? pieces.end + 2 : pieces.end + 1}
}

const SIZE_UNITS: ReadonlySet<string> = new Set('inch inches in cm mm g gram grams kg lb lbs oz ounce pound "'.split(' '))

/** "two 800 g loaves", "four 30 cm pizzas", "one (9 x 5-inch) loaf": the token after a size at `at`; `at` where none stands there. */
export function pastSize(tokens: readonly Token[], at: number): number {
  const open = tokens[at]?.word === '('
  let i = open ? at + 1 : at
  const start = i
  // "9 x 5" is a size without its unit.
  let by = false
  while (i < start + 6 && tokens[i]?.kind === 'number') {
    i++
    const unit = SIZE_UNITS.has(tokens[i]?.word ?? '')
    if (unit) i++
    if (/^(?:x|×|by|-)$/.test(tokens[i]?.word ?? '') && tokens[i + 1]?.kind === 'number') {
      i++
      by = true
    } else if (!unit && !by) return at
    else break
  }
  if (i === start) return at
  if (!open) return i
  return tokens[i]?.word === ')' ? i + 1 : at
}

const WEIGHS: ReadonlySet<string> = new Set(['g', 'kg', 'gram', 'grams', 'oz', 'lb', 'lbs'])

/** "Makes 24. Bake …": a stop at `at`, and a new sentence behind it, where "2 lb. loaves" goes on. */
const endsBehind = (tokens: readonly Token[], at: number): boolean =>
  /^[.;!]$/.test(tokens[at]?.word ?? '') && tokens[at + 1]?.capital === true && thingAt(tokens, at + 1) === ''

/** Whether all the rest of a block, from token `at` on, stands in one bracket. */
function isBracketed(tokens: readonly Token[], at: number): boolean {
  if (tokens[at]?.word !== '(') return false
  let i = at + 1
  while (tokens[i]?.block === tokens[at]!.block && !/^[()]$/.test(tokens[i]!.word)) i++
  return tokens[i]?.word === ')' && tokens[i + 1]?.block !== tokens[at]!.block
}

/** What ends a sentence, or its block. */
const closes = (word: string): boolean => word === '' || /^[.;!]$/.test(word)

const ADVISED = /^(?:economical|cheaper|better|best|well|easy|easier|usual|possible|convenient|worth|wise|good)$/

/** "this will make two loaves", not "make two pies of it". */
function makesYield(tokens: readonly Token[], i: number): boolean {
  // "It is more economical to make two or three at one time": advice.
  if (tokens[i - 1]?.word === 'to' && ADVISED.test(tokens[i - 2]?.word ?? '')) return false
  for (let k = i - 1; k >= 0 && k > i - 4; k--)
    if (/^(?:will|should|to|may|would|can|quantity|quantities|ingredients)$/.test(tokens[k]!.word)) return true
  return false
}
