import {cardinals} from '../lexicon/grammar-words.js'
import type {Section, Token} from './section.js'
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
])
const SIZES = new Set([
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
}

const PLAIN: Readonly<Record<string, number>> = cardinals

function one(tokens: readonly Token[], i: number): {value: number; end: number} | null {
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
  } else if (t.kind === 'word' && t.word === 'dozen') return {value: 12, end}
  else return null
  if (/^(?:dozen|doz)$/.test(tokens[end]?.word ?? '')) {
    value *= 12
    end++
  }
  return {value, end}
}

function count(tokens: readonly Token[], i: number): Count | null {
  let at = i
  while (/^(?:about|from|nearly|around|approximately|some|up|to|between|at|least)$/.test(tokens[at]?.word ?? '') && at < i + 3)
    at++
  const first = one(tokens, at)
  if (first === null) return null
  if (/^(?:or|to|-|—|and)$/.test(tokens[first.end]?.word ?? '')) {
    const second = one(tokens, first.end + 1)
    if (
      second !== null &&
      second.value > first.value &&
      (tokens[first.end]!.word !== 'and' || /^(?:between|from)$/.test(tokens[at - 1]?.word ?? ''))
    )
      return {low: first.value, high: second.value, end: second.end}
  }
  return {low: first.value, high: first.value, end: first.end}
}

/**
 * Read the yield of one receipt: the first that counts people, else the first that counts what is made.
 *
 * @param section the receipt's blocks and tokens
 * @returns the yield with the words it stands in, or null
 */
export function readYield(section: Section): Yield | null {
  const {tokens, source} = section
  let made: Yield | null = null
  const phrase = (from: number, to: number, c: Count, of: string): Yield => {
    const start = tokens[from]!.start
    const end = tokens[to - 1]!.end
    return {text: source.slice(start, end), start, end, low: c.low, high: c.high, of}
  }
  for (let i = 0; i < tokens.length; i++) {
    const t = tokens[i]!
    if (t.word === '(' && tokens[i + 1]?.block === t.block) {
      // "(12 portions)", "(6 servings)"
      const c = count(tokens, i + 1)
      const of = c === null ? '' : (tokens[c.end]?.word ?? '')
      if (c !== null && /^(?:portions?|servings?|persons?|people)$/.test(of) && tokens[c.end + 1]?.word === ')' && c.low > 0)
        return phrase(i + 1, c.end + 1, c, 'persons')
      continue
    }
    if (t.kind !== 'word' || !OPENERS.has(t.word)) continue
    const block = t.block
    // "Cuts into three dozen squares": said of the whole, where "cut it into squares" is a step.
    if (/^(?:cuts|divides)$/.test(t.word) && tokens[i + 1]?.word !== 'into') continue
    let j = i + 1
    while (
      j < i + 7 &&
      tokens[j]?.block === block &&
      /^(?:for|to|make|makes|fill|into|about|:|—|be|sufficient|a|company|of|up|it|them|this|serves?|party|dinner|yields?|portions|servings|will|quantity)$/.test(
        tokens[j]!.word,
      )
    ) {
      if (/^(?:a)$/.test(tokens[j]!.word) && !/^(?:company|party|dinner)$/.test(tokens[j + 1]?.word ?? '')) break
      j++
    }
    if (tokens[j]?.block !== block) continue
    const c = count(tokens, j)
    if (c === null || c.high <= 0 || c.high > 2000) continue
    let k = c.end
    const after = (n: number): string => (tokens[n]?.block === block ? tokens[n]!.word : '')
    if (PERSONS.has(after(k))) return phrase(i === j - 1 && t.word === 'for' ? i : i, k + 1, c, 'persons')
    // "For 4 pizzas (30 cm)", "For 6:", a line of its own; anywhere else "for" says what of.
    const line = t.word === 'for' && tokens[i - 1]?.block !== block
    if ((t.word === 'for' && !line) || t.word === 'serve') {
      if (t.word === 'serve' && (tokens[i - 1] === undefined || tokens[i - 1]!.block !== block) && tokens[j]!.kind === 'number')
        return phrase(i, c.end, c, 'persons')
      continue
    }
    if (/^(?:serves|serving|servings|feeds|portions)$/.test(t.word)) {
      const ends = tokens[k]
      if (ends === undefined || ends.block !== block || ends.kind === 'mark' || !THINGS.has(ends.word))
        return phrase(i, c.end, c, 'persons')
    }
    let named = ''
    while (k < c.end + 9 && after(k) !== '') {
      const sized = pastSize(tokens, k)
      if (named === '' && sized > k) {
        k = sized
        continue
      }
      const word = after(k)
      if (THINGS.has(word)) {
        named = word
        k++
        continue
      }
      if (named !== '' || !SIZES.has(word)) break
      k++
    }
    if (line) {
      const next = after(k)
      if (next !== '' && !(tokens[k]!.kind === 'mark' && /^[:.(]$/.test(next))) continue
      if (named === '' && (k > c.end || c.high <= 1 || next === '(')) continue
      return phrase(i, k, c, named === '' ? 'persons' : named)
    }
    if (named === '') {
      if (
        /^(?:makes|yields|yield)$/.test(t.word) &&
        tokens[j]!.kind === 'number' &&
        (tokens[k] === undefined || tokens[k]!.block !== block || tokens[k]!.kind === 'mark')
      ) {
        made ??= phrase(i, c.end, c, 'pieces')
      } else if ((t.word === 'sufficient' || t.word === 'enough') && after(i + 1) === 'for') {
        // "Sufficient for 6.": people, where nothing is named; "sufficient for a turkey" tells no yield.
        const next = tokens[k]
        const alone = next === undefined || next.block !== block || next.kind === 'mark'
        if (alone && c.high > 1) made ??= phrase(i, c.end, c, 'persons')
      }
      continue
    }
    if (t.word === 'make' && !makesYield(tokens, i)) continue
    made ??= phrase(i, k, c, named)
  }
  return made
}

const SIZE_UNITS: ReadonlySet<string> = new Set('inch inches in cm mm g gram grams kg lb lbs oz ounce pound "'.split(' '))

/** "two 800 g loaves", "four 30 cm pizzas", "one (9 x 5-inch) loaf": the token after a size at `at`; `at` where none stands there. */
function pastSize(tokens: readonly Token[], at: number): number {
  const open = tokens[at]?.word === '('
  let i = open ? at + 1 : at
  const start = i
  while (i < start + 6 && tokens[i]?.kind === 'number') {
    i++
    const unit = SIZE_UNITS.has(tokens[i]?.word ?? '')
    if (unit) i++
    if (/^(?:x|×|by|-)$/.test(tokens[i]?.word ?? '') && tokens[i + 1]?.kind === 'number') i++
    else if (!unit) return at
    else break
  }
  if (i === start) return at
  if (!open) return i
  return tokens[i]?.word === ')' ? i + 1 : at
}

/** "this will make two loaves", not "make two pies of it". */
function makesYield(tokens: readonly Token[], i: number): boolean {
  for (let k = i - 1; k >= 0 && k > i - 4; k--)
    if (/^(?:will|should|to|may|would|can|quantity|quantities|ingredients)$/.test(tokens[k]!.word)) return true
  return false
}
