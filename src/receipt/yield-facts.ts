import {isFoodWord} from '../lexicon/index.js'
import {methodYields, statedWords} from '../lexicon/yield-words.js'
import type {Section, Token} from './section.js'
import type {Yield} from './types.js'
import {count} from './yield-count.js'
import {pastSize, thingAt} from './yield-nouns.js'
import {statedYields} from './yields.js'

/** How much a receipt makes, and how many it feeds where it says both. */
export interface YieldFacts {
  /** What is made; where no count of it stands anywhere, the people it feeds. */
  readonly serves: Yield | null
  /** The people it feeds, beside a count of what is made. */
  readonly feeds?: Yield
}

/**
 * The yields of one receipt. A count of what is made goes before a count of people, for a dish is ordered by what is made of it; the people
 * are then a fact beside it. Where the receipt states no count, the method may: "divide into six loaves".
 *
 * @param section the receipt's blocks and tokens
 * @param pieces what a piece becomes that its dough is divided into, where its kind of dish tells that: "loaves"; asked only if needed
 */
export function readYields(section: Section, pieces: () => string | null = () => null): YieldFacts {
  const {made, counted, persons} = statedYields(section)
  // "Three pints. Serves 6.": a measure counts no vessels, so the people tell more.
  const things =
    counted ??
    (made !== null && persons === null ? made : null) ??
    dividedYield(section) ??
    piecesYield(section, pieces) ??
    holesYield(section) ??
    readyYield(section) ??
    wholeYield(section)
  if (things === null) return {serves: persons ?? made}
  return persons === null ? {serves: things} : {serves: things, feeds: persons}
}

/** Words between the verb and "into": "divide the dough equally into", "shape it into", "in two tins". */
const MOST_BETWEEN = 6
/** So near behind, "shape each into a roll" says what pieces become. */
const NEAR = 30

/** How many words a German count of pieces may have before its verb: "zwölf runde Brötchen formen". */
const BEFORE_FORMEN = 4

/** "Zwölf Brötchen formen" with the verb at token `at`; null where no count of things stands before it. */
function shapedBefore({tokens, source}: Section, at: number): Yield | null {
  const thing = tokens[at - 1]
  if (thing?.block !== tokens[at]!.block || !methodYields.things.has(thing!.word)) return null
  for (let n = at - 2; n >= at - 1 - BEFORE_FORMEN && tokens[n]?.block === thing!.block && tokens[n]!.kind !== 'mark'; n--) {
    const c = count(tokens, n)
    if (c === null || !Number.isInteger(c.low) || c.high < 2 || c.high > 200 || methodYields.into.has(tokens[n - 1]?.word ?? ''))
      continue
    const [start, end] = [tokens[n]!.start, tokens[at]!.end]
    return {text: source.slice(start, end), start, end, low: c.low, high: c.high, of: thingAt(tokens, at - 1)}
  }
  return null
}

/** Whether a clause begins with the token at `at`: "Make 12 buns", "knead it and make 12 buns". */
const headsClause = (tokens: readonly Token[], at: number): boolean =>
  tokens[at - 1]?.block !== tokens[at]!.block || tokens[at - 1]!.kind === 'mark' || /^(?:and|then)$/.test(tokens[at - 1]!.word)

/** "divide into six loaves", "between two tins", "zu zwei Laiben formen": the first; null where the method says nothing of the kind. */
function dividedYield(section: Section): Yield | null {
  const {tokens, blocks, source} = section
  for (let i = 0; i < tokens.length; i++) {
    const t = tokens[i]!
    const {into, between, pieces, verbs} = methodYields
    const before = verbs.behind.has(t.word) ? shapedBefore(section, i) : null
    if (before !== null) return before
    // "Shape two loaves"
    const forms = verbs.forms.has(t.word) || (verbs.makes.has(t.word) && headsClause(tokens, i))
    if (!(into.has(t.word) || between.has(t.word) || forms) || blocks[t.block]!.kind === 'heading') continue
    // "Between the two tins"
    const definite = /^(?:the|die|den)$/.test(tokens[i + 1]?.word ?? '')
    const c = count(tokens, definite ? i + 2 : i + 1)
    // "into a loaf" is said of each.
    if (c === null || !Number.isInteger(c.low) || c.high > 200 || (/^an?$/.test(tokens[i + 1]!.word) && c.high <= 1)) continue
    const vessel = vesselBehind(tokens, c.end)
    if (definite && vessel < 0) continue
    let k = vessel < 0 ? c.end : vessel
    const here = (n: number): string => (tokens[n]?.block === t.block ? tokens[n]!.word : '')
    while (vessel < 0 && k < c.end + 6) {
      const sized = pastSize(tokens, k)
      if (sized > k) k = sized
      else if (
        statedWords.describing.has(here(k)) ||
        /^(?:equal|even|sized|gleich\p{L}*|gro(?:ß|ss)e?n?|runde?n?|lange?n?|kleine?n?)$/u.test(here(k))
      )
        k++
      else break
    }
    const word = here(k)
    if (word === '') continue
    const verb = verbAt(tokens, i, k)
    const shared = between.has(t.word)
    const thing = thingAt(tokens, k)
    let of = ''
    if (methodYields.things.has(word) && !shared) of = thing
    else if (forms) continue
    // "Make two pies of it" may be of a part.
    if (verbs.makes.has(t.word) && here(k + 1) === 'of') continue
    else if (vessel >= 0 || (methodYields.vessels.has(word) && !isFullOf(tokens, k))) of = verb === null ? '' : thing
    else if (pieces.has(word) && verb !== null && verbs.divide.has(verb)) of = shapedOf(tokens, k) ?? ''
    if (of === '' || (c.high === 1 && verb === null)) continue
    // "divide each half into 6 rolls", "roll into two cakes and slice them": not the whole, or not yet.
    if (ofEach(tokens, i, methodYields.filled.has(word)) || slicedAfter(tokens, k)) continue
    const from = verb === null || shared || forms ? i : startOf(tokens, i)
    const start = tokens[from]!.start
    const {end} = tokens[k]!
    return {text: source.slice(start, end), start, end, low: c.low, high: c.high, of}
  }
  return null
}

/** The vessel that a count before token `at` counts, with what describes it between: "two greased 9-inch cake pans"; −1. */
function vesselBehind(tokens: readonly Token[], at: number): number {
  const {vessels, describing, bakedCups} = methodYields
  const block = tokens[at - 1]!.block
  let described = 0
  // "4 x 500 ml jars"
  const first = statedWords.size.times.has(tokens[at]?.word ?? '') && pastSize(tokens, at + 1) > at + 1 ? at + 1 : at
  for (let k = first; described <= MOST_DESCRIBING + 1 && tokens[k]?.block === block; described++) {
    const {word} = tokens[k]!
    if (vessels.has(word)) return isFullOf(tokens, k) ? -1 : k
    if (/^cups?$/.test(word)) return bakedCups.has(tokens[k - 1]!.word) ? k : -1
    const sized = pastSize(tokens, k)
    if (sized > k) k = sized
    else if (describing.has(word) || statedWords.describing.has(word) || /^[,-]$/.test(word)) k++
    else return -1
  }
  return -1
}

/** "Two jars of jam", where "two tins of 20 cm" are vessels to fill. */
const isFullOf = (tokens: readonly Token[], vessel: number): boolean =>
  tokens[vessel + 1]?.word === 'of' && isFoodWord(tokens[vessel + 2]?.stem ?? '')

/** "A 12-hole tin", "two 6-cup muffin tins": one is made in each hole. Null where the method names no such tin. */
function holesYield({tokens, blocks, source}: Section): Yield | null {
  const {holes, smallCakes, vessels, describing} = methodYields
  for (let i = 0; i < tokens.length; i++) {
    const number = tokens[i]!
    const {block} = number
    const cups = /^cups?$/.test(tokens[i + 1]?.word ?? '')
    if (blocks[block]!.kind === 'heading' || tokens[i + 1]?.block !== block || !(cups || holes.has(tokens[i + 1]!.word))) continue
    const c = count(tokens, i)
    if (c === null || c.end !== i + 1 || c.low !== c.high || !Number.isInteger(c.low) || c.low < 2) continue
    let k = i + 2
    let small = false
    while (k < i + 2 + MOST_DESCRIBING && tokens[k]?.block === block && !vessels.has(tokens[k]!.word)) {
      small ||= smallCakes.has(tokens[k]!.word)
      if (!(describing.has(tokens[k]!.word) || smallCakes.has(tokens[k]!.word))) break
      k++
    }
    if (tokens[k]?.block !== block || !vessels.has(tokens[k]!.word) || (cups && !small)) continue
    let first = i - 1
    while (first > i - MOST_DESCRIBING && tokens[first]?.block === block && describing.has(tokens[first]!.word)) first--
    const tins = tokens[first]?.block === block ? count(tokens, first) : null
    const many = tins !== null && tins.end <= i && Number.isInteger(tins.low) && tins.low > 0 ? tins.low : 1
    if (c.low * many > MOST_PIECES) continue
    const from = many > 1 || tins !== null ? first : i
    // "Grease a 12-hole tin" may be of any size of hole, and how many are filled is not said.
    if (!small && !methodYields.into.has(tokens[from - 1]?.word ?? '')) continue
    const [start, end] = [tokens[from]!.start, tokens[k]!.end]
    return {text: source.slice(start, end), start, end, low: c.low * many, high: c.low * many, of: small ? 'muffins' : 'pieces'}
  }
  return null
}

/** "Divide in two", "cut the dough into 3 pieces", "den Teig halbieren": of a dough whose kind tells what its pieces become. */
function piecesYield({tokens, blocks, source}: Section, thing: () => string | null): Yield | null {
  const {into, pieces, verbs} = methodYields
  for (let i = 0; i < tokens.length; i++) {
    const {word, block} = tokens[i]!
    const halves = word === 'halve' || word === 'halbieren'
    if (!(halves || into.has(word)) || blocks[block]!.kind === 'heading') continue
    const found = (from: number, to: number, low: number): Yield | null => {
      if (ofEach(tokens, from) || isOneTogether(tokens, to)) return null
      const of = thing()
      if (of === null) return null
      const [start, end] = [tokens[from]!.start, tokens[to - 1]!.end]
      return {text: source.slice(start, end), start, end, low, high: low, of, divided: true}
    }
    if (halves && (isOfDough(tokens, i, 1) || isOfDough(tokens, i, -1))) {
      const one = found(i, i + 1, 2)
      if (one !== null) return one
    }
    if (!into.has(word)) continue
    const c = count(tokens, i + 1)
    if (c === null || c.low !== c.high || !Number.isInteger(c.low) || c.low < 2 || c.low > MOST_PIECES) continue
    let k = c.end
    while (k < c.end + 3 && tokens[k]?.block === block && tokens[k]!.kind === 'word' && EQUAL.test(tokens[k]!.word)) k++
    const next = tokens[k]
    const said =
      next !== undefined &&
      next.block === block &&
      (pieces.has(next.word) || /^(?:pieces?|stucke?|halves|halften)$/.test(next.word))
    const alone =
      next === undefined || next.block !== block || next.kind === 'mark' || /^(?:and|then|und|dann|teilen)$/.test(next.word)
    if (!said && !alone) continue
    const to = said ? k + 1 : c.end
    const before = verbBefore(tokens, i, (one) => verbs.divide.has(one) || verbs.cut.has(one))
    const behind = tokens[to]?.block === block && (verbs.divide.has(tokens[to]!.word) || verbs.cut.has(tokens[to]!.word))
    if (before < 0 && !behind) continue
    // "Cut the pork into 4 pieces"
    if (i > before + 1 && before >= 0 && !isOfDough(tokens, before, 1)) continue
    const one = found(before < 0 ? i : before, behind ? to + 1 : to, c.low)
    if (one !== null) return one
  }
  return null
}

/** "Pile it on to a tray in a 25 cm circle", "spread in a round": all of it is one. */
function wholeYield({tokens, blocks, source}: Section): Yield | null {
  const {heaps, wholes} = methodYields
  for (let i = 1; i < tokens.length; i++) {
    const {word, block} = tokens[i]!
    if (!wholes.has(word) || blocks[block]!.kind === 'heading') continue
    // "Spread in a round tin"
    if (tokens[i + 1]?.block === block && tokens[i + 1]!.kind === 'word' && !BEHIND_WHOLE.test(tokens[i + 1]!.word)) continue
    let from = i - 1
    while (from > i - WHOLE_SIZE && tokens[from]?.block === block && !ONE_OF_IT.test(tokens[from]!.word)) from--
    if (!ONE_OF_IT.test(tokens[from]?.word ?? '') || !/^(?:in|into|to|as|zu)$/.test(tokens[from - 1]?.word ?? '')) continue
    let verb = from - 1
    while (verb > from - WHOLE_BETWEEN && !ends(tokens, verb, i) && !heaps.has(tokens[verb]!.word)) verb--
    if (ends(tokens, verb, i) || !heaps.has(tokens[verb]!.word) || ofEach(tokens, from)) continue
    const [start, end] = [tokens[verb]!.start, tokens[i]!.end]
    return {text: source.slice(start, end), start, end, low: 1, high: 1, of: 'pieces'}
  }
  return null
}
/** How many words the size of a shape has at the most: "a rough 25 cm". */
const WHOLE_SIZE = 6
/** … and how many stand before it: "pile it on to a well lined baking tray". */
const WHOLE_BETWEEN = 12
const ONE_OF_IT = /^(?:an?|one|eine[mn]?)$/
const BEHIND_WHOLE = /^(?:on|onto|upon|about|and|then|with|leaving|of|in|making)$/

/** How many words may stand between a count and its vessels, or a verb and its count: "butter and line six small oval tins". */
const MOST_DESCRIBING = 4

/** "Line six tartlet tins", "butter a dozen patty pans", "zwölf Förmchen einfetten": what is made ready is filled. */
function readyYield({tokens, blocks, source}: Section): Yield | null {
  const {vessels, verbs} = methodYields
  for (let i = 0; i < tokens.length; i++) {
    const {block} = tokens[i]!
    if (blocks[block]!.kind === 'heading') continue
    const c = count(tokens, i)
    if (c === null || !Number.isInteger(c.low) || c.low < 2 || c.high > MOST_PIECES) continue
    let k = pastSize(tokens, c.end)
    while (k < c.end + 2 * MOST_DESCRIBING && tokens[k]?.block === block && !vessels.has(tokens[k]!.word)) {
      const sized = pastSize(tokens, k)
      if (sized > k) k = sized
      else if (tokens[k]!.kind === 'word' && k - c.end < MOST_DESCRIBING) k++
      else break
    }
    const vessel = tokens[k]
    if (vessel?.block !== block || !vessels.has(vessel.word)) continue
    let verb = i - 1
    while (verb >= i - MOST_DESCRIBING && tokens[verb]?.block === block && /^(?:and|or|,|lightly|well)$/.test(tokens[verb]!.word))
      verb--
    const before = tokens[verb]?.block === block && verbs.ready.has(tokens[verb]!.word)
    const behind = tokens[k + 1]?.block === block && verbs.ready.has(tokens[k + 1]!.word)
    if (!before && !behind) continue
    const [start, end] = [tokens[before ? verb : i]!.start, tokens[behind ? k + 1 : k]!.end]
    return {text: source.slice(start, end), start, end, low: c.low, high: c.high, of: thingAt(tokens, k)}
  }
  return null
}

const EQUAL = /^(?:equal|even|equally|gleich\p{L}*|gro(?:ß|ss)e?n?)$/u
/** More pieces than this are no loaves of one making. */
const MOST_PIECES = 60
/** Behind the verb at `k`, or before it: the dough, or a word that stands for it. */
function isOfDough(tokens: readonly Token[], k: number, step: 1 | -1): boolean {
  for (let n = k + step, seen = 0; seen < 4 && tokens[n]?.block === tokens[k]!.block; n += step, seen++) {
    const {word} = tokens[n]!
    if (/^(?:dough|it|teig)$/.test(word)) return true
    if (step > 0 && (tokens[n]!.kind === 'mark' || methodYields.into.has(word))) return seen === 0
    if (!/^(?:the|this|your|all|risen|whole|den|dein|mass)$/.test(word)) return false
  }
  return false
}

/** Whether the pieces come together again: a plait's strands, the top of a cottage loaf. */
const isOneTogether = (tokens: readonly Token[], at: number): boolean => {
  for (let n = at; n < at + NEAR && n < tokens.length; n++) {
    if (methodYields.together.has(tokens[n]!.word)) return true
    // "Set it on top", where "stretch, top, bake" is a pizza.
    if (tokens[n]!.word === 'top' && /^(?:the|on|a)$/.test(tokens[n - 1]!.word)) return true
    if (/^(?:bake|backen)$/.test(tokens[n]!.word)) return false
  }
  return false
}

/** Does the phrase around token `at` end at this token? */
const ends = (tokens: readonly Token[], n: number, at: number): boolean =>
  tokens[n]?.block !== tokens[at]!.block || /^[.;:!]$/.test(tokens[n]!.word)

const dividesOrShapes = (word: string): boolean => methodYields.verbs.divide.has(word) || methodYields.verbs.shape.has(word)

/** The token of the verb before "into"; −1. */
function verbBefore(tokens: readonly Token[], at: number, is: (word: string) => boolean = dividesOrShapes): number {
  for (let n = at - 1; n >= at - MOST_BETWEEN && !ends(tokens, n, at); n--) if (is(tokens[n]!.word)) return n
  return -1
}

/** The verb that governs "into", before it or, in German, behind the thing at `thing`. */
function verbAt(tokens: readonly Token[], at: number, thing: number): string | null {
  const before = verbBefore(tokens, at)
  if (before >= 0) return tokens[before]!.word
  for (let n = thing + 1; n <= thing + 4 && !ends(tokens, n, at); n++)
    if (methodYields.verbs.behind.has(tokens[n]!.word)) return tokens[n]!.word
  return null
}

const startOf = (tokens: readonly Token[], at: number): number => {
  const before = verbBefore(tokens, at)
  return before < 0 ? at : before
}

/** Whether only a part goes into the pieces: each half, the paste of what has a filling too; not where they are `filled`. */
const ofEach = (tokens: readonly Token[], at: number, filled = false): boolean => {
  for (let n = at - 1; n >= at - MOST_BETWEEN && !ends(tokens, n, at); n--) {
    const {word} = tokens[n]!
    if (/^(?:each|every|half|jede[nrs]?|jeweils|je|halfte|rest|remaining|icing)$/.test(word)) return true
    if (!filled && /^(?:paste|pastry)$/.test(word)) return true
  }
  return false
}

/** "Cut round the waist", "cut a cross on top": scored, and not apart. */
const SCORED = /^(?:round|around|a|the|them|across|crosses|slits)$/

const slicedAfter = (tokens: readonly Token[], at: number): boolean => {
  for (let n = at + 1; n <= at + NEAR / 2 && tokens[n]?.block === tokens[at]!.block; n++)
    if (
      /^(?:slice|cut|slices|schneiden)$/.test(tokens[n]!.stem) &&
      tokens[n - 1]?.word !== '.' &&
      !SCORED.test(tokens[n + 1]?.word ?? '')
    )
      return true
  return false
}

/** What the pieces at `at` are shaped to: "divide into 12 pieces and shape into rolls"; null where nothing tells. */
function shapedOf(tokens: readonly Token[], at: number): string | null {
  for (let n = at + 1; n <= at + NEAR && n < tokens.length; n++)
    if (methodYields.things.has(tokens[n]!.word) || isOne(tokens, n)) return many(thingAt(tokens, n))
  return null
}

/** "each into a roll", where "roll out" is a verb. */
const isOne = (tokens: readonly Token[], n: number): boolean =>
  methodYields.ones.has(tokens[n]!.word) && (tokens[n - 1]!.word === 'a' || statedWords.describing.has(tokens[n - 1]!.word))

const many = (thing: string): string => (thing === 'loaf' ? 'loaves' : thing.endsWith('s') ? thing : `${thing}s`)
