import {foldAll} from '../lexicon/index.js'
import {methodYields, statedWords as words} from '../lexicon/yield-words.js'
import {isInLabel} from './baked-in.js'
import type {Section, Token} from './section.js'
import type {Yield} from './types.js'
import {closes, endsBehind, isBracketed, piecesIn} from './yield-behind.js'
import {type Count, count, pastAbout, rangeOf} from './yield-count.js'
import {isPersons, pastEach, pastSize, thingAt, thingBehind} from './yield-nouns.js'
import {beginsSentence, MOST, openedCount, pastFrom, saidFor, tellsYield} from './yield-openers.js'

/**
 * The phrases that state a yield: "sufficient for 5 or 6 persons", "makes two loaves", "serves 8", "this quantity makes twelve cakes", "(12 portions)",
 * "12 buns" as a line of its own.
 */

/** A yield, and what it counts: what is made, people, or `few` that may be people ("Sufficient for 6."). */
export interface Said {
  readonly counts: 'made' | 'persons' | 'few'
  readonly found: Yield
}

const {opens} = words
/** A number in words is a yield by itself from here on ("it will make about thirty, if small"), and any that ends its sentence ("this makes six."). */
const FEWEST_ALONE = 10

/** Tokens [from, to) as the yield they state, with what says behind them that it is not exact. */
function phrase({tokens, source}: Section, from: number, to: number, c: Count, of: string): Yield {
  const start = tokens[from]!.start
  const behind = pastAbout(tokens, to)
  const end = tokens[behind - 1]!.end
  return {text: source.slice(start, end), start, end, ...rangeOf(c, behind > to), of}
}
const made = (section: Section, from: number, to: number, c: Count, of: string): Said => ({
  counts: 'made',
  found: phrase(section, from, to, c, of),
})
const people = (section: Section, from: number, to: number, c: Count): Said => ({
  counts: 'persons',
  found: phrase(section, from, to, c, 'persons'),
})

/** "(12 portions)", "Plätzchen (ca. 40 Stück)", "Baked oats (for 2)", "into jars (4 x 500 ml jars)": with the bracket opened at token `i`. */
function inBrackets(section: Section, i: number): Said | null {
  const {tokens, blocks} = section
  const {block} = tokens[i]!
  const heading = blocks[block]!.kind === 'heading' || isInLabel(tokens, i)
  if (heading && opens.for.has(tokens[i + 1]!.word)) {
    const c = count(tokens, i + 2)
    return c !== null && tokens[c.end]?.word === ')' && c.high > 1 ? people(section, i + 1, c.end, c) : null
  }
  const c = count(tokens, i + 1)
  if (c === null || c.low <= 0) return null
  if (tokens[c.end + 1]?.word === ')' && isPersons(tokens[c.end]!.word)) return people(section, i + 1, c.end + 1, c)
  const {of, end} = thingBehind(tokens, c)
  const close = of === '' ? end : pastEach(tokens, end)
  if (of === '' || tokens[close]?.word !== ')') return null
  // Of what the heading names, or a line of its own.
  const whole = tokens[i - 1]?.block !== block && tokens[close + 1]?.block !== block
  const sized = end > c.end + 1 || close > end
  return whole || heading || (sized && isFilled(section, i - 1)) ? made(section, i + 1, end, c, of) : null
}

/** How many words may stand between "into" and a vessel: "into clean warm jars". */
const MOST_BEFORE_VESSEL = 3

/** Whether something goes into the vessel named at token `at`: "into clean jars". */
function isFilled({tokens}: Section, at: number): boolean {
  const vessel = tokens[at]
  if (vessel === undefined || !methodYields.vessels.has(vessel.word)) return false
  for (let k = at - 1; k >= at - 1 - MOST_BEFORE_VESSEL && tokens[k]?.block === vessel.block && tokens[k]!.kind === 'word'; k--)
    if (methodYields.into.has(tokens[k]!.word)) return true
  return false
}

/** "Ca. 60 Stück", "12 buns", "1 loaf (in a 2 lb tin)": a paragraph of its own, that begins at token `i`. */
function aloneInBlock(section: Section, i: number): Said | null {
  const {tokens, blocks} = section
  const {block, word} = tokens[i]!
  if (tokens[i - 1]?.block === block || blocks[block]!.kind !== 'paragraph') return null
  const c = count(tokens, i)
  if (c === null || (c.high <= 1 && word === 'a') || c.high > MOST || tokens[c.end]?.block !== block) return null
  const behind = pastEach(tokens, c.end + 1)
  const last = tokens[behind]?.word === '.' ? behind + 1 : behind
  if (tokens[last]?.block === block && !isBracketed(tokens, last)) return null
  if (isPersons(tokens[c.end]!.word)) return people(section, i, c.end + 1, c)
  const thing = thingAt(tokens, c.end)
  return thing !== '' && !words.measures.has(thing) ? made(section, i, c.end + 1, c, thing) : null
}

/** "Two loaves from this amount", a sentence that begins at token `i`. */
function fromThis(section: Section, i: number): Said | null {
  const {tokens} = section
  const c = /^an?$/.test(tokens[i]!.word) ? null : count(tokens, i)
  if (c === null || c.high > MOST || !beginsSentence(tokens, i)) return null
  const {of, end} = thingBehind(tokens, c)
  if (of === '' || words.measures.has(of)) return null
  const to = pastFrom(tokens, end)
  return to > end ? made(section, i, to, c, of) : null
}

/** "Makes two loaves", "für 2 Brote à 1 kg", "sufficient for 6": with the word that opens it at token `i`. */
function opened(section: Section, i: number): Said | null {
  const {tokens} = section
  const opening = openedCount(tokens, i)
  if (opening === null) return null
  const {c, from} = opening
  const {word, block} = tokens[i]!
  const here = (n: number): string => (tokens[n]?.block === block ? tokens[n]!.word : '')
  // "Serves a crowd": of no number.
  const article = /^an?$/.test(tokens[from]!.word) && c.high <= 1
  // "Portions 2 inches apart", "per serving: 210"
  const measured = pastSize(tokens, c.end - 1) > c.end - 1 || words.size.units.has(here(c.end))
  if (opens.serves.has(word) && (measured || words.ofOne.has(here(i - 1)))) return null
  if (isPersons(here(c.end)) && !article) return people(section, i, c.end + 1, c)
  // "For 4 pizzas (30 cm)", "For 6:", a line of its own; anywhere else "for" says what of.
  const line = opens.for.has(word)
  const told = line ? saidFor(tokens, i) : null
  if (line && (told === null || (article && (told === 'title' || told === 'mixture')))) return null
  if (opens.peopleLabels.has(word)) return closes(here(c.end)) ? people(section, i, c.end, c) : null
  if (opens.serve.has(word))
    return tokens[i - 1]?.block !== block && tokens[from]!.kind === 'number' ? people(section, i, c.end, c) : null
  if (opens.serves.has(word)) {
    if (article) return null
    if (!words.things.has(here(c.end))) return people(section, i, c.end, c)
  }
  const {of, end} = thingBehind(tokens, c)
  const order = opens.verb.has(word) && !tellsYield(tokens, i)
  // "Makes one tray, 24 squares": what a tray is cut into counts, and in how many of them.
  const cut = of === '' || order ? null : piecesIn(tokens, end, of)
  if (cut !== null && c.low === c.high && Number.isInteger(c.low))
    return {counts: 'made', found: {...phrase(section, i, cut.end, cut.pieces, cut.of), vessels: c.low}}
  if (line) return of === '' && told === 'mixture' ? null : forSo(section, i, c, of, end)
  if (of === '') return asTitled(section, i, c) ?? withoutNoun(section, i, from, c, end)
  if (order || (opens.gives.has(word) && words.measures.has(of))) return null
  // "You will get two loaves in at once"
  const gets = opens.gets.has(word)
  if (gets && (article || !(closes(here(end)) || isSaidOfIt(section, end)))) return null
  return made(section, i, end, c, of)
}

/** Whether the words from token `at` go on about what is made: "from this dough", "of 800 g". */
const isSaidOfIt = ({tokens}: Section, at: number): boolean => pastFrom(tokens, at) > at || pastEach(tokens, at) > at

/** "For 2 loaves of 800 g each", "For 6:": with nothing behind it, token `k` on, but what each weighs. */
function forSo(section: Section, i: number, c: Count, of: string, k: number): Said | null {
  const {tokens} = section
  const next = tokens[k]?.block === tokens[i]!.block ? tokens[k]!.word : ''
  const weighs = (words.size.apiece.has(next) && tokens[k + 1]?.kind === 'number') || pastEach(tokens, k) > k
  // „Für 2 Kastenformen von 30 cm“, „Für eine Springform Ø 26 cm“
  const measures = /^(?:of|von|mit|ø)$/.test(next) && pastSize(tokens, k + 1) > k + 1
  if (next !== '' && !weighs && !measures && !/^[:.()]$/.test(next)) return null
  if (of !== '') return made(section, i, k, c, of)
  // "This recipe is for 4.", where "2 lb. loaves" goes on.
  const stops = tokens[c.end]?.word === '.' && (tokens[c.end + 1]?.block !== tokens[i]!.block || endsBehind(tokens, c.end))
  if (stops && c.high > 1) return people(section, i, c.end, c)
  return k > c.end || c.high <= 1 || next === '(' ? null : people(section, i, k, c)
}

/** "Makes 12 apples" of "Baked apples", "Makes 8 stuffed peppers": a count of what the title names last, with nothing behind it. */
function asTitled(section: Section, i: number, c: Count): Said | null {
  const {tokens, title} = section
  const {word, block} = tokens[i]!
  const named = foldAll(title)
  const makes = opens.number.has(word) || (opens.made.has(word) && tellsYield(tokens, i))
  if (!makes || c.high <= 1 || named.length === 0) return null
  let k = c.end
  while (
    tokens[k]?.block === block &&
    tokens[k]!.kind === 'word' &&
    (named.includes(tokens[k]!.stem) || isDescribing(tokens[k]!))
  )
    k++
  const noun = tokens[k - 1]!
  const next = tokens[k]?.block === block ? tokens[k]!.word : ''
  return k > c.end && noun.stem === named.at(-1) && (closes(next) || /^[,(]$/.test(next))
    ? made(section, i, k, c, noun.word)
    : null
}

const isDescribing = ({word}: Token): boolean => words.describing.has(word)

/**
 * A count with no noun behind it: "Makes 24.", "Yield 10 x 350 g", "Sufficient for 6."
 *
 * @param from the token that the count begins at
 * @param k the token behind it and what describes it
 */
function withoutNoun(section: Section, i: number, from: number, c: Count, k: number): Said | null {
  const {tokens} = section
  const {word, block} = tokens[i]!
  const here = (n: number): string => (tokens[n]?.block === block ? tokens[n]!.word : '')
  const weighs = words.size.times.has(here(k)) && tokens[k + 1]?.kind === 'number' && words.size.weights.has(here(k + 2))
  if (weighs && opens.weighed.has(word)) {
    // "2 x 850 g loaves"
    const thing = here(k + 3) === '' ? '' : thingAt(tokens, k + 3)
    return made(section, i, thing === '' ? k + 3 : k + 4, c, thing === '' ? 'pieces' : thing)
  }
  const alone = here(k) === '' || tokens[k]!.kind === 'mark' || endsBehind(tokens, c.end)
  const makes = opens.number.has(word) || (opens.made.has(word) && tellsYield(tokens, i))
  const enough =
    tokens[from]!.kind === 'number' ||
    c.about !== null ||
    c.high >= FEWEST_ALONE ||
    (c.high > 1 && (closes(here(c.end)) || (here(c.end) === ',' && words.size.goesOn.has(here(c.end + 1)))))
  if (makes && enough && (alone || pastAbout(tokens, c.end) > c.end)) return made(section, i, c.end, c, 'pieces')
  // People, where nothing is named; "sufficient for a turkey" tells no yield.
  const few = opens.sufficesFor.has(word) && opens.for.has(here(i + 1)) && alone && c.high > 1
  return few ? {counts: 'few', found: phrase(section, i, c.end, c, 'persons')} : null
}

/** The yield that a phrase beginning at token `i` states; null where none does. */
export function yieldAt(section: Section, i: number): Said | null {
  const {tokens} = section
  if (tokens[i]!.word === '(' && tokens[i + 1]?.block === tokens[i]!.block) return inBrackets(section, i)
  return aloneInBlock(section, i) ?? fromThis(section, i) ?? opened(section, i)
}
