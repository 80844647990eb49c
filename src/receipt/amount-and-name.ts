import {asides} from '../lexicon/grammar-words.js'
import {lookUpItem, lookUpOwnItem} from '../lexicon/index.js'
import {alternativeAt, mixture} from './alternatives.js'
import {withBetween} from './between.js'
import {type Draft, type Entries, key, type Mode} from './entries.js'
import {Exact, ONE} from './exact.js'
import {bareFurther, isCompared, isFurther, onCondition, pastFurther, withFurther} from './further.js'
import {COUNTED, GENERAL, ONE_OF, POURED} from './item-classes.js'
import {countedParts} from './item-parts.js'
import {sizeOf} from './likened-sizes.js'
import {type Noun, readNoun} from './nouns.js'
import type {Quantity} from './quantities.js'
import {elided} from './same-amounts.js'
import {linesApart} from './section.js'
import {eachBefore, eachList, eachTail} from './shared-amounts.js'
import {fruitInParts} from './squeezed.js'
import {weightInQuantity} from './stated-weight.js'
import {pastAlternative} from './told-otherwise.js'
import {unknownMeasure} from './unknown-measure.js'
import {DESCRIBES, ENDER, FILLING, itemHere, measureHere, Phrases, textOf, type View} from './view.js'

/**
 * An amount with the name it governs, which mostly follows it: which names it can govern, and what else stands behind them.
 */

/** What a weighed thing is sold in: "400 g tin tomatoes". */
const CONTAINERS = new Set(
  'tin,tins,can,cans,jar,jars,packet,packets,sachet,sachets,carton,cartons,tub,tubs,block,blocks,pack,packs,bag,bags,box,boxes,bottle,bottles,punnet,pot,pots,piece,pieces,bar,bars,package,packages,pkg,envelope,cake,ball,balls,log,logs,wheel,wedge,wedges,bulb,block,tube,tubes,bar,dose,dosen,glas,becher,packung,packungen,beutel,kugel,kugeln,rolle,stuck,block,tafel,tafeln'.split(
    ',',
  ),
)

/** What a thing is sold in says that there is such a thing: "2 packets gingerbread spice". */
const SOLD = new Set(['packet', 'tin', 'jar', 'bottle'])
const HEAPED = new Set(['heaping', 'heaped', 'scant', 'level', 'rounded', 'full', 'good', 'large', 'small', 'packed'])
const STRETCHES = new Set(['min', 'mins', 'minute', 'minutes', 'hour', 'hours', 'hr', 'hrs', 'h', 'sec', 'secs', 'seconds'])

/** "With warm water", "add milk": words before a name of what goes in. */
const GOES_IN = new Set([
  'with',
  'add',
  'in',
  'into',
  'warm',
  'cold',
  'hot',
  'boiling',
  'tepid',
  'lukewarm',
  'new',
  'sweet',
  'sour',
])

/** The bare name just before this quantity, with nothing but a comma or dash between. */
function nameBefore(entries: Entries, at: number, quantity: Quantity, to: number): Draft | null {
  const {words, tokens} = entries.view
  const before = entries.drafts[entries.drafts.length - 1]
  if (before === undefined || tokens[before.start]!.block !== tokens[at]!.block) return null
  // "Milk as you like" has words for its amount, and "about a quart" behind them says how much that is.
  const aside = asideBetween(entries.view, before.next, at)
  const open = before.bare || (before.low === null && aside)
  if (!open) return null
  // "butter two tins" is no amount of butter.
  if (!before.inList && quantity.dimension === 'count') return null
  let i = before.next
  // "Bread flour | 90 % | 900 g": a share between them.
  if (words[i] === '(') {
    // "Levain (100 % hydration) | 200 g"
    let close = i
    while (close < at && words[close] !== ')') close++
    if (close < at && before.inList) i = close
  }
  while (
    i < at &&
    (tokens[i]!.kind === 'mark' ||
      (tokens[i]!.kind === 'number' && words[i + 1] === '%') ||
      words[i] === 'of' ||
      words[i] === 'optional' ||
      aside)
  )
    i++
  if (i < at) return null
  const between = words.slice(before.next, at)
  if (between.some((w) => w === '.' || w === ';')) return null
  // The quantity must close its phrase.
  const after = tokens[quantity.next]
  if (after !== undefined && quantity.next < to && after.kind !== 'mark' && words[quantity.next] !== 'and') return null
  const opener = before.start === 0 ? undefined : tokens[before.start - 1]
  const startsClause =
    opener === undefined ||
    (before.inList && linesApart(entries.view.section, opener, tokens[before.start]!)) ||
    opener.block !== tokens[at]!.block ||
    opener.kind === 'mark' ||
    words[before.start - 1] === 'of' ||
    words[before.start - 1] === 'and' ||
    // "Mix with warm water, about three pints": a measure behind a comma, of what goes in.
    (quantity.dimension !== 'count' && (between.length === 1 || aside) && GOES_IN.has(words[before.start - 1]!))
  return startsClause ? before : null
}

const asidePhrases = new Phrases(asides)

/**
 * "As you would have it," and nothing else between commas or brackets at [from, at): an amount behind it is of what stands before it. The
 * second comma may be left out: "sugar, if you please a quarter of a pound".
 */
function asideBetween({words}: View, from: number, at: number): boolean {
  const opened = /^[,(]$/.test(words[from] ?? '')
  const i = asidePhrases.match(words, opened ? from + 1 : from, at)
  if (i < 0) return false
  if (words[from] === '(') return words[i] === ')' && (i === at - 1 || (i === at - 2 && words[i + 1] === ','))
  return (i === at && opened) || (i === at - 1 && words[i] === ',')
}

const OF_THE_OVEN = new Set(['fan', 'gas', 'convection', 'umluft', 'heissluft'])

/** Behind an amount these are said of it, and name nothing. */
const OF_THE_AMOUNT = new Set([
  'altogether',
  'together',
  'extra',
  'apiece',
  'net',
  'gross',
  'lost',
  'left',
  'over',
  'heavier',
  'lighter',
])

const GERMAN_WORK = /^(?:teilen|aufteilen|formen|abwiegen|wiegen|portionieren|abstechen|schwer)$/

/** "2 oz. blorp and 3 eggs": one or two words that are nothing else here, between a measure and the phrase's end. */
function standsAlone({words, bits, tokens}: View, noun: Noun): boolean {
  // "180C/160C fan", "gas": of the oven.
  if (noun.next - noun.start > 2 || OF_THE_OVEN.has(words[noun.start]!) || OF_THE_AMOUNT.has(words[noun.start]!)) return false
  // "In 10 Stücke à 85 g teilen": what is done with it.
  if (GERMAN_WORK.test(words[noun.start]!)) return false
  for (let i = noun.start; i < noun.next; i++) if (bits[i] !== 0 && !(bits[i]! & DESCRIBES)) return false
  const after = tokens[noun.next]
  return (
    after === undefined ||
    after.block !== tokens[noun.start]!.block ||
    after.kind === 'mark' ||
    /^(?:and|or|with|to|in|into|und|oder|mit|eine?[nmr]?|d(?:er|ie|as|en|em)|zum?|zur|.*(?:geben|fugen|ruhren|kneten|heben|mischen))$/.test(
      words[noun.next]!,
    )
  )
}

/** Is this name one that such a quantity can govern? */
function acceptable(view: View, quantity: Quantity, noun: Noun, mode: Mode, of: boolean, the: boolean): boolean {
  const {words} = view
  if (quantity.measure !== 'count') {
    if (quantity.dimension === 'mass' || quantity.dimension === 'volume' || quantity.dimension === 'money') {
      if (noun.known) return true
      return mode === 'list' || of || (quantity.figure && standsAlone(view, noun))
    }
    // A loaf, a head, a piece: of something.
    if (!noun.known && SOLD.has(quantity.measure) && quantity.figure && standsAlone(view, noun)) return true
    return noun.known
      ? of || quantity.figure || mode === 'list' || quantity.low.value > 1
      : mode === 'list' && (of || quantity.figure || SOLD.has(quantity.measure))
  }
  if (!noun.known) return mode === 'list' && !quantity.article && !the
  // "Set a sponge over night": the dough's own beginning.
  if (quantity.article && mode !== 'list' && words[noun.start] === 'sponge' && noun.next === noun.start + 1) return false
  const {row} = noun
  if (row === null) return mode === 'list'
  const counted = COUNTED.has(row.group) || row.pieces.some((p) => p.measure === 'count')
  const lastWord = words[noun.next - 1]!
  const plural = lastWord.endsWith('s') && !lastWord.endsWith('ss')
  if (quantity.article) {
    if (row.group === 'made dish' || (mode !== 'list' && GENERAL.has(noun.item))) return false
    return !plural && (ONE_OF.has(row.group) || row.pieces.some((p) => p.measure === 'count') || (mode === 'list' && counted))
  }
  if (row.group === 'made dish' && mode !== 'list') return /biscuit|roll|rusk|cracker|sponge/.test(row.id)
  if (mode === 'list') return true
  return counted || plural
}

/** Fewer of what is poured or weighed are no grams left out. */
const LEAST_BARE = 5

/** How far off a measure in grams may stand, tokens. */
const ROW = 40

/** Whether an amount in grams or kilograms stands in the same row: an index has figures before names too. */
function nearGrams(tokens: View['tokens'], at: number): boolean {
  const {block} = tokens[at]!
  for (let k = Math.max(0, at - ROW); k < at + ROW && k + 1 < tokens.length; k++)
    if (tokens[k]!.block === block && tokens[k]!.kind === 'number' && /^(?:g|gr|gramm?|grams|kg)$/.test(tokens[k + 1]!.word))
      return true
  return false
}

/** "500 flour, 350 water, 10 g salt": a bare figure of what nobody counts, with its name between commas. Its measure is left out. */
function isBareInRow({tokens, words}: View, at: number, quantity: Quantity, {start, next, row, known}: Noun): boolean {
  if (quantity.measure !== 'count' || !quantity.figure || !known || row === null || !POURED.has(row.group)) return false
  if (start !== at + 1 || quantity.low.value < LEAST_BARE || !nearGrams(tokens, at)) return false
  const opens = tokens[at - 1] === undefined || tokens[at - 1]!.block !== tokens[at]!.block || /^[,;:]$/.test(words[at - 1]!)
  const after = tokens[next]
  return opens && (after === undefined || after.block !== tokens[at]!.block || /^[,;.]$/.test(after.word))
}

/** A quantity with its name: alternatives, mixtures, what stands after it. The token after them. */
export function named(
  entries: Entries,
  at: number,
  quantity: Quantity,
  noun: Noun,
  to: number,
  mode: Mode,
  hedges: readonly string[],
): number {
  const {words, bits, tokens} = entries.view
  const inParts = mode === 'list' ? fruitInParts(entries, at, quantity, noun, to) : -1
  if (inParts > 0) return inParts
  let next = pastFurther(entries.view, noun.next, to)
  let {item} = noun
  // "this will make two loaves of bread": what comes of it, not what goes in.
  if (mode !== 'list' && noun.row?.group === 'bread' && /^(?:makes?|making|yields?)$/.test(words[at - 1] ?? '')) return next
  if (isFurther(entries.view, {start: at, next})) {
    const condition = onCondition(entries, at, noun, next, to)
    if (condition > 0) return condition
  }
  const notes = [...quantity.notes]
  const allHedges = [...hedges, ...quantity.hedges]
  let low = quantity.low
  let high = quantity.high
  let {measure} = quantity
  let {measureText} = quantity
  let {known} = noun
  // "a piece of butter the size of an egg"
  // "1 oz. of bitter ditto", "2 smaller ones": the thing named before.
  const again = /^(.*?) ?(?:ditto|do|one|ones)$/.exec(item)
  let row = noun.row
  if (!known && again !== null && entries.last !== null) {
    const head = entries.last.item.split(' ').pop()!
    row = lookUpOwnItem(`${again[1]} ${head}`) ?? entries.last.row
    item = row?.id ?? entries.last.item
    known = row !== null
  }
  const size = sizeOf(entries.view, next, to)
  if (size !== null) {
    low = size.low
    high = size.high
    measure = size.measure
    measureText = textOf(entries.view, size.start, size.next)
    next = size.next
  } else if (
    quantity.measure === 'count' &&
    words[next] === 'or' &&
    (words[next + 1] === 'two' || words[next + 1] === 'three' || words[next + 1] === 'more' || words[next + 1] === 'so')
  ) {
    // "an egg or two"
    if (words[next + 1] === 'two' || words[next + 1] === 'three') high = Exact.of(words[next + 1] === 'two' ? 2 : 3)
    else allHedges.push(`or ${words[next + 1]}`)
    next += 2
  }
  // Trailing "each": "sugar and butter, half a pound each" is read where the quantity has no name of its own.
  if (measure !== 'count' && size === null && words[next] === 'each') next++
  const tail = measure === 'count' || size !== null ? null : eachTail(entries.view, noun, to)
  if (tail !== null) {
    for (const one of [noun, ...tail.nouns])
      entries.push(
        {
          start: at,
          next: tail.next,
          low,
          high,
          measure,
          measureText,
          item: one.item,
          row: one.row,
          known: one.known,
          prepared: one.prepared,
          hedges: allHedges,
          notes,
          confidence: 0.85,
        },
        mode,
      )
    return tail.next
  }
  const alternative = alternativeAt(entries.view, next, to)
  if (alternative > 0 && quantity.article && quantity.measure === 'count') {
    // "a chicken or meat pie": what is made, not what goes in.
    const head = itemHere(entries.view, alternative - 1)
    if (
      head?.row.group === 'made dish' ||
      (alternative < to && tokens[alternative]!.kind === 'word' && !(bits[alternative]! & ENDER))
    )
      return alternative
  }
  if (alternative > 0) {
    notes.push(textOf(entries.view, next, alternative))
    next = alternative
  } else if (measure !== 'count' && noun.row !== null && size === null) {
    const mixed = mixture(entries.view, noun, next, to)
    if (mixed !== null) {
      item = `${item} and ${mixed.item}`
      next = mixed.next
    }
  }
  const base = quantity.article && quantity.measure === 'count' ? 0.88 : 0.95
  const stated = size === null ? weightInQuantity(entries.view, quantity, measure) : undefined
  entries.push(
    {
      start: at,
      next,
      low,
      high,
      measure,
      measureText,
      item,
      row,
      known,
      prepared: noun.prepared,
      hedges: allHedges,
      notes,
      confidence: base - (known ? 0 : mode === 'list' ? 0.2 : 0.35),
      ...(stated === undefined ? {} : {stated}),
    },
    mode,
  )
  return next
}

/** What follows a quantity: "of", a name, names after "each", or nothing. The token after it, else −1; `the` stood before the quantity. */
export function measured(
  entries: Entries,
  at: number,
  quantity: Quantity,
  to: number,
  mode: Mode,
  the: boolean,
  hedges: readonly string[],
): number {
  const {words, tokens} = entries.view
  const counted = quantity.measure === 'count'
  // "30 min" is no entry, whatever it is for.
  if (counted && STRETCHES.has(words[quantity.next] ?? '')) return quantity.next + 1
  const further = bareFurther(entries, at, quantity, to, mode)
  if (further > 0) return further
  quantity = withFurther(entries.view, quantity, to)
  let i = quantity.next
  if (words[i] === 'each' || (words[i] === 'of' && words[i + 1] === 'each')) {
    const after = words[i] === 'of' ? i + 2 : i + 1
    if ((words[after] === 'kind' || words[after] === 'sort') && words[after + 1] === 'of') {
      const noun = readNoun(entries.view, after + 2, to, false)
      if (noun !== null) return named(entries, at, quantity, noun, to, mode, hedges)
    }
    const next = eachList(entries, at, quantity, after, to, mode)
    if (next > 0) return next
    return eachBefore(entries, at, quantity, words[i] === 'of' ? i + 2 : i + 1, mode)
  }
  if (counted) {
    const whites = countedParts(entries, at, quantity, to, mode)
    if (whites > 0) return whites
  }
  if (counted && (words[i] === 'do' || words[i] === 'ditto') && entries.last !== null && entries.last.measure !== 'count') {
    // "one do. of sugar": the measure before.
    return elided(entries, at, quantity, words[i + 1] === 'of' ? i + 2 : i + 1, to, mode)
  }
  const unknown = counted ? unknownMeasure(entries, at, quantity, to, mode) : null
  if (unknown !== null) {
    const {noun} = unknown
    // Beside a list: some of what the list has.
    if (mode === 'method' && entries.has(key(noun))) return noun.next
    const {next} = entries.push(
      {
        start: at,
        next: noun.next,
        low: quantity.low,
        high: quantity.high,
        measure: 'count',
        measureText: textOf(entries.view, unknown.from, unknown.to),
        unknownMeasure: true,
        item: noun.item,
        row: noun.row,
        known: noun.known,
        prepared: noun.prepared,
        hedges: [...hedges, ...quantity.hedges],
        notes: [...quantity.notes],
        confidence: 0.6,
      },
      mode,
    )
    return next
  }
  let of = false
  // "2 lg. | eggs", "3 large | eggs": the size stands in the figure's cell.
  let size = i
  while (mode === 'list' && counted && size < to && size - i < 2 && entries.view.bits[size]! & FILLING) size++
  if (size > i && words[size] === '|') i = size
  while (mode === 'list' && words[i] === '|') i++
  // "one teaspoon heaping of soda"
  if (!counted && i + 1 < to && HEAPED.has(words[i]!) && words[i + 1] === 'of') {
    hedges = [...hedges, words[i]!]
    i++
  } else if (!counted && i + 3 < to && words[i] === '(' && HEAPED.has(words[i + 1]!) && words[i + 2] === ')') {
    hedges = [...hedges, words[i + 1]!]
    i += 3
  }
  if (words[i] === ',' && words[i + 1] === 'of' && nameBefore(entries, at, quantity, to) === null) i++
  if (!counted && quantity.figure && i + 1 < to && CONTAINERS.has(words[i]!)) {
    i++
    // "12-oz. package (2 cups) chocolate chips"
    const beside: string[] = []
    i = pastAlternative(entries.view, i, to, beside)
    if (beside.length > 0) quantity = {...quantity, notes: [...quantity.notes, ...beside]}
  }
  const apart = withBetween(entries.view, quantity, i, to, mode)
  if (apart !== quantity) {
    quantity = apart
    i = apart.next
  }
  if (words[i] === 'of') {
    of = true
    i++
    // "7 lbs. of a brisket of beef"
    if (quantity.dimension === 'mass' && (words[i] === 'a' || words[i] === 'an') && i + 1 < to) i++
  }
  if (i < to) {
    // "of the", "of these": some of what is already there, unless nothing of the name was named.
    const partial =
      of &&
      (words[i] === 'the' ||
        words[i] === 'your' ||
        words[i] === 'these' ||
        words[i] === 'this' ||
        words[i] === 'which' ||
        words[i] === 'it' ||
        words[i] === 'them')
    if (of && counted && !partial && quantity.measure === 'count') {
      return elided(entries, at, quantity, i, to, mode)
    }
    // "a pint of the juice of lemons"; "a spoonful of grated rind of lemon"
    const open =
      mode === 'list'
        ? !quantity.article || !counted
        : !counted &&
          (of ||
            quantity.dimension === 'mass' ||
            ((quantity.dimension === 'volume' || SOLD.has(quantity.measure)) && quantity.figure))
    const noun = readNoun(entries.view, i, to, open, mode === 'list')
    if (
      noun !== null &&
      (acceptable(entries.view, quantity, noun, mode, of, the) || isBareInRow(entries.view, at, quantity, noun))
    ) {
      if (partial && counted) return noun.next
      // "Small cakes the size of a French roll"
      if (quantity.article && words[at - 1] === 'of' && words[at - 2] === 'size') return noun.next
      if (partial && entries.has(key(noun))) return noun.next
      if (the && entries.has(key(noun))) return noun.next
      if (isCompared(entries.view, noun, to)) return -1
      return named(entries, at, quantity, noun, to, mode, hedges)
    }
    if (of && counted) return -1
  }
  if (quantity.dimension === 'count' && !counted && quantity.measureStart === quantity.next - 1) {
    // "twenty cloves": the word is the thing itself, not a piece of another.
    const thing = readNoun(entries.view, quantity.measureStart, to, false)
    if (thing !== null && thing.start === quantity.measureStart) {
      const count: Quantity = {...quantity, measure: 'count', measureText: '', next: quantity.measureStart}
      if (acceptable(entries.view, count, thing, mode, false, the)) return named(entries, at, count, thing, to, mode, hedges)
    }
  }
  // "2 oz. peel": the candied one, which is weighed.
  const candied =
    quantity.dimension === 'mass' && words[i] === 'peel' && (i + 1 >= to || tokens[i + 1]!.kind === 'mark')
      ? lookUpItem('candied peel')
      : null
  if (candied !== null) {
    const noun: Noun = {start: i, next: i + 1, item: candied.id, row: candied, known: true, prepared: '', doubtful: false}
    return named(entries, at, quantity, noun, to, mode, hedges)
  }
  // The name stood before: "flour, two pounds", "of sugar one pound", "butter | 4 oz".
  const before = nameBefore(entries, at, quantity, to)
  if (before !== null) {
    entries.drafts.pop()
    const made = entries.push(
      {
        start: before.start,
        next: quantity.next,
        low: quantity.low,
        high: quantity.high,
        measure: quantity.measure,
        measureText: quantity.measureText,
        item: before.item,
        row: before.row,
        known: before.known,
        prepared: before.prepared,
        hedges: [...hedges, ...quantity.hedges],
        notes: [...quantity.notes],
        percent: before.percent,
        confidence: mode === 'list' ? 0.9 : 0.75,
      },
      mode,
    )
    return Math.max(made.next, quantity.next)
  }
  return -1
}

/** "pinch of salt" at the head of a line: one. The token after it, else −1. */
export function measureFirst(entries: Entries, at: number, to: number, mode: Mode): number {
  const {bits} = entries.view
  let from = at
  while (from < to && from - at < 3 && bits[from]! & FILLING && measureHere(entries.view, from) === null) from++
  const found = measureHere(entries.view, from)
  if (found === null || found.next >= to) return -1
  const {id, dimension} = found.row
  const of = entries.view.words[found.next] === 'of'
  // "pinch salt": no other thing is called so.
  if (!of && id !== 'pinch' && id !== 'dash') return -1
  if (id === 'count' || id === 'indefinite' || (dimension !== 'volume' && dimension !== 'count' && id !== 'knob')) return -1
  const noun = readNoun(entries.view, of ? found.next + 1 : found.next, to, of)
  if (noun === null) return -1
  const one = ONE
  const quantity: Quantity = {
    low: one,
    high: one,
    next: found.next,
    hedges: [],
    article: true,
    fraction: false,
    figure: false,
    measure: id,
    dimension,
    measureText: textOf(entries.view, at, found.next),
    measureStart: at,
    notes: [],
  }
  return named(entries, at, quantity, noun, to, mode, [])
}
