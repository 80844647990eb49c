import {asked} from '../lexicon/asked-words.js'
import {cardinals} from '../lexicon/grammar-words.js'
import {hedgeAmounts} from '../lexicon/hedge-amounts.js'
import {fold, lookUpItem} from '../lexicon/index.js'
import type {Item, Range} from '../lexicon/schema.js'
import {aboutYield, germanYields, statedWords as words} from '../lexicon/yield-words.js'
import type {Section, Token} from './section.js'
import {sentenceAt} from './sentences.js'
import type {Yield} from './types.js'

/**
 * The yield a receipt states: "sufficient for 5 or 6 persons", "makes two loaves", "serves 8", "this quantity makes twelve cakes".
 */

interface Count {
  readonly low: number
  readonly high: number
  readonly end: number
  /** The word that says it is no exact number. */
  readonly about: string | null
}

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
  } else if (t.kind === 'word' && Object.hasOwn(cardinals, t.word)) {
    value = cardinals[t.word]!
    const next = tokens[end]
    if (
      value >= 20 &&
      value % 10 === 0 &&
      next?.kind === 'word' &&
      Object.hasOwn(cardinals, next.word) &&
      cardinals[next.word]! < 10
    ) {
      value += cardinals[next.word]!
      end++
    }
  } else if (t.kind === 'word' && words.count.dozen.has(t.word)) return {value: 12, end, dozens: false}
  else return null
  const dozens = words.count.dozen.has(tokens[end]?.word ?? '')
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
      words.count.before.has(tokens[at]?.word ?? '') ||
      (about !== null && tokens[at]?.word === '.'))
  ) {
    if (aboutYield.has(tokens[at]!.word)) about = tokens[at]!.word
    at++
  }
  const first = one(tokens, at)
  if (first === null) return null
  if (words.count.range.has(tokens[first.end]?.word ?? '')) {
    const second = one(tokens, first.end + 1)
    if (
      second !== null &&
      second.value > first.value &&
      (tokens[first.end]!.word !== 'and' || words.count.ofTwo.has(tokens[at - 1]?.word ?? ''))
    ) {
      // "2-3 dozen": the dozen is said of both.
      const low = second.dozens && !first.dozens && first.value * 12 < second.value ? first.value * 12 : first.value
      return {low, high: second.value, end: second.end, about}
    }
  }
  return {low: first.value, high: first.value, end: first.end, about}
}

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
  if (!words.opens.suffices.has(tokens[at]!.word)) return false
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
  return beside && words.is.has(tokens[at - 1]!.word)
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
  return words.things.has(word) ? word : (germanYields.get(word) ?? '')
}

const isPersons = (word: string): boolean => words.persons.has(word) || germanYields.get(word) === 'persons'

/** More than anybody makes of one receipt. */
const MOST = 2000
/** Tokens behind the people within which a count of what is made is of the same receipt ("Serves 12. Makes two loaves."). */
const NEAR_PEOPLE = 40
/** A number in words is a yield by itself from here on ("it will make about thirty, if small"), and any that ends its sentence ("this makes six."). */
const FEWEST_ALONE = 10

/** "Zutaten für 12 Stück", "Ingredients (for 2 loaves)": does the word before token `at` head a list? */
const opensList = (tokens: readonly Token[], at: number): boolean => {
  const before = tokens[at - 1]?.word === '(' ? at - 2 : at - 1
  return tokens[before]?.block === tokens[at]!.block && words.heads.has(tokens[before]!.word)
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
    if (!words.measures.has(found.of)) counted ??= found
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
      const at =
        words.opens.for.has(tokens[i + 1]!.word) && section.blocks[t.block]!.kind === 'heading' ? count(tokens, i + 2) : null
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
        if ((people || (thing !== '' && !words.measures.has(thing))) && alone) {
          if (people) feeds(phrase(i, c.end + 1, c, 'persons'), i)
          else makes(phrase(i, c.end + 1, c, thing), i)
          continue
        }
      }
    }
    if (t.kind !== 'word' || !words.opens.any.has(t.word) || isOfOneThing(tokens, i)) continue
    if (words.opens.quantity.has(t.word) && !(tokens[i + 1]?.word === ':' || words.opens.for.has(tokens[i + 1]?.word ?? '')))
      continue
    // "Cuts into three dozen squares": said of the whole, where "cut it into squares" is a step.
    if (words.opens.cuts.has(t.word) && tokens[i + 1]?.word !== 'into') continue
    let j = i + 1
    while (j < i + 7 && tokens[j]?.block === block && words.leads.has(tokens[j]!.word)) {
      if (tokens[j]!.word === 'a' && !words.company.has(tokens[j + 1]?.word ?? '')) break
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
    const isFor = words.opens.for.has(t.word)
    const line = isFor && (tokens[i - 1]?.block !== block || opensList(tokens, i))
    if ((isFor && !line) || words.opens.serve.has(t.word)) {
      if (
        words.opens.serve.has(t.word) &&
        (tokens[i - 1] === undefined || tokens[i - 1]!.block !== block) &&
        tokens[j]!.kind === 'number'
      )
        feeds(phrase(i, c.end, c, 'persons'), i)
      continue
    }
    if (words.opens.serves.has(t.word)) {
      if (article) continue
      const ends = tokens[k]
      if (ends === undefined || ends.block !== block || ends.kind === 'mark' || !words.things.has(ends.word)) {
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
      if (other !== null && words.describing.has(after(other.end))) {
        k = other.end
        continue
      }
      if (named !== '' || !words.describing.has(word)) break
      k++
    }
    // "Makes one tray, 24 squares": what a tray is cut into counts, and in how many of them.
    const cut =
      named === '' || (!line && words.opens.verb.has(t.word) && !makesYield(tokens, i)) ? null : piecesIn(tokens, k, named)
    if (cut !== null && c.low === c.high && Number.isInteger(c.low)) {
      const {pieces, of, end} = cut
      const said = phrase(i, end, pieces, of)
      makes({...said, vessels: c.low}, i)
      continue
    }
    if (line) {
      const next = after(k)
      // "Für 2 Brote à 1 kg", "For 2 loaves of 800 g each": what each weighs.
      const weighs = words.size.apiece.has(next) && tokens[k + 1]?.kind === 'number'
      if (next !== '' && !weighs && !(tokens[k]!.kind === 'mark' && /^[:.()]$/.test(next))) continue
      if (named === '' && (k > c.end || c.high <= 1 || next === '(')) continue
      if (named === '') feeds(phrase(i, k, c, 'persons'), i)
      else makes(phrase(i, k, c, named), i)
      continue
    }
    // "Yield 10 x 350 g": so many, and what each weighs.
    const each = words.size.times.has(after(k)) && tokens[k + 1]?.kind === 'number' && words.size.weights.has(after(k + 2))
    if (named === '' && each && words.opens.weighed.has(t.word)) {
      // "2 x 850 g loaves"
      const thing = words.things.has(after(k + 3)) || germanYields.has(after(k + 3))
      makes(phrase(i, thing ? k + 4 : k + 3, c, thing ? thingAt(tokens, k + 3) : 'pieces'), i)
      continue
    }
    if (named === '') {
      if (
        (words.opens.number.has(t.word) || (words.opens.made.has(t.word) && makesYield(tokens, i))) &&
        (tokens[j]!.kind === 'number' ||
          c.about !== null ||
          c.high >= FEWEST_ALONE ||
          (c.high > 1 && (closes(after(c.end)) || (after(c.end) === ',' && words.size.goesOn.has(after(c.end + 1)))))) &&
        (tokens[k] === undefined ||
          tokens[k]!.block !== block ||
          tokens[k]!.kind === 'mark' ||
          endsBehind(tokens, c.end) ||
          pastAbout(tokens, c.end) > c.end)
      ) {
        makes(phrase(i, c.end, c, 'pieces'), i)
      } else if (words.opens.sufficesFor.has(t.word) && words.opens.for.has(after(i + 1))) {
        // "Sufficient for 6.": people, where nothing is named; "sufficient for a turkey" tells no yield.
        const next = tokens[k]
        const alone = next === undefined || next.block !== block || next.kind === 'mark' || endsBehind(tokens, c.end)
        if (alone && c.high > 1) few ??= phrase(i, c.end, c, 'persons')
      }
      continue
    }
    if (words.opens.verb.has(t.word) && !makesYield(tokens, i)) continue
    if (words.opens.gives.has(t.word) && words.measures.has(named)) continue
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
  if (
    pieces === null ||
    pieces.high <= 1 ||
    pieces.high > MOST ||
    of === '' ||
    words.measures.has(of) ||
    asked.vessel.has(fold(of))
  )
    return null
  const last = tokens[pieces.end]!
  const next = tokens[pieces.end + 1]
  const behind = next?.block === last.block ? next.word : ''
  if (last.block !== open.block || !(open.word === '(' ? behind === ')' : closes(behind))) return null
  return {pieces, of, end: open.word === '(' ? pieces.end + 2 : pieces.end + 1}
}

/** "two 800 g loaves", "four 30 cm pizzas", "one (9 x 5-inch) loaf": the token after a size at `at`; `at` where none stands there. */
export function pastSize(tokens: readonly Token[], at: number): number {
  const open = tokens[at]?.word === '('
  let i = open ? at + 1 : at
  const start = i
  // "9 x 5" is a size without its unit.
  let by = false
  while (i < start + 6 && tokens[i]?.kind === 'number') {
    i++
    const unit = words.size.units.has(tokens[i]?.word ?? '')
    if (unit) i++
    if (words.size.by.has(tokens[i]?.word ?? '') && tokens[i + 1]?.kind === 'number') {
      i++
      by = true
    } else if (!unit && !by) return at
    else break
  }
  if (i === start) return at
  if (!open) return i
  return tokens[i]?.word === ')' ? i + 1 : at
}

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

/** "this will make two loaves", not "make two pies of it". */
function makesYield(tokens: readonly Token[], i: number): boolean {
  // "It is more economical to make two or three at one time": advice.
  if (tokens[i - 1]?.word === 'to' && words.advised.has(tokens[i - 2]?.word ?? '')) return false
  for (let k = i - 1; k >= 0 && k > i - 4; k--) if (words.willMake.has(tokens[k]!.word)) return true
  return false
}
