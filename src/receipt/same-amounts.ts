import {lookUpMeasure} from '../lexicon/index.js'
import {alternativeAt} from './alternatives.js'
import {readAmount} from './amounts.js'
import {type Draft, type Entries, key, type Mode} from './entries.js'
import {Exact, HALF, ONE, TWO} from './exact.js'
import {ONE_OF} from './item-classes.js'
import {type Noun, readNoun} from './nouns.js'
import type {Quantity} from './quantities.js'
import {CARDINAL, textOf, type View} from './view.js'

/**
 * Amounts that are told by an entry before: “the same of”, “ditto”, “as much sugar”, “two of rose-water”, “the weight of the eggs”.
 */

/** 1 " sugar: the measure of the line above. The token after it, else −1. */
export function dittoMark(entries: Entries, at: number, i: number, to: number, mode: Mode): number {
  const {words, tokens} = entries.view
  const {last} = entries
  const amount = tokens[i]!
  if (amount.kind !== 'number' || words[i + 1] !== '"' || !tokens[i + 1]!.gap || i + 2 >= to || last === null) return -1
  const noun = readNoun(entries.view, i + 2, to, mode === 'list', mode === 'list')
  if (noun === null || amount.den <= 0) return -1
  const low = Exact.of(amount.num, amount.den)
  entries.push(
    {
      start: at,
      next: noun.next,
      low,
      high: low,
      measure: last.measure,
      item: noun.item,
      row: noun.row,
      known: noun.known,
      prepared: noun.prepared,
      confidence: 0.8,
      notes: [`the ${last.measure} is that of the entry before`],
    },
    mode,
  )
  return noun.next
}

/**
 * "1 qt flour, 2 snips cream of tartar, 1 of soda": where an entry since the last has a number whose measure could not be read, it is
 * that measure that is meant, and none is better than a wrong one.
 */
function unreadBetween(entries: Entries, last: Draft): boolean {
  const since = entries.drafts.at(-1)
  if (since === undefined || since === last) return false
  const {tokens, bits} = entries.view
  for (let i = last.next; i < since.start; i++) if (tokens[i]!.kind === 'number' || bits[i]! & CARDINAL) return true
  return false
}

/** "two of rose-water", "a quarter of mace": the measure is that of the entry before. The token after it, else −1; `i` is at the name. */
export function elided(entries: Entries, at: number, quantity: Quantity, i: number, to: number, mode: Mode): number {
  const noun = readNoun(entries.view, i, to, mode === 'list', mode === 'list')
  if (noun === null) return -1
  const {last} = entries
  const {unknownMeasure} = last ?? {unknownMeasure: false}
  if (last === null || (last.measure === 'count' && !unknownMeasure) || last.measure.includes(' of ') || quantity.article)
    return -1
  if (unreadBetween(entries, last)) return -1
  const unsure = quantity.fraction && last.measure === 'ounce'
  entries.push(
    {
      start: at,
      next: noun.next,
      low: quantity.low,
      high: quantity.high,
      measure: last.measure,
      ...(unknownMeasure ? {unknownMeasure, measureText: last.measureText} : {}),
      item: noun.item,
      row: noun.row,
      known: noun.known,
      prepared: noun.prepared,
      hedges: [...quantity.hedges],
      confidence: noun.known ? 0.75 : 0.5,
      notes: unknownMeasure ? [] : [`the ${last.measure} is that of the entry before`],
      ...(unsure
        ? {
            other: {
              reading: `${quantity.low.toString()} pound ${noun.item}`,
              settle: `says: {"${textOf(entries.view, at, noun.next)}": "${quantity.low.toString()} pound ${noun.item}"}`,
            },
          }
        : {}),
    },
    mode,
  )
  return noun.next
}

function isNamed(view: View, at: number, to: number): boolean {
  return readNoun(view, at, to, false) !== null
}

/**
 * "the same of", "ditto", "as much sugar", "half as much", "an equal quantity of", "equal quantities of": the token after it, else −1.
 * The entry begins at `at`, its words after the hedges at `i`.
 */
export function sameAs(entries: Entries, at: number, i: number, to: number, mode: Mode): number {
  const {words} = entries.view
  let k = i
  let times = ONE
  const word = words[k]
  if (word === 'half' || word === 'twice' || word === 'double' || word === 'thrice') {
    if (
      words[k + 1] !== 'as' &&
      !(words[k + 1] === 'the' && (words[k + 2] === 'quantity' || words[k + 2] === 'weight')) &&
      words[k + 1] !== 'that'
    )
      return -1
    times = word === 'half' ? HALF : word === 'thrice' ? Exact.of(3) : TWO
    k++
  }
  let matched = false
  let byWeight = false
  let of = true
  if (words[k] === 'ditto' || words[k] === 'do' || words[k] === '"') {
    if (
      words[k] === 'do' &&
      !(
        words[k + 1] === 'of' ||
        (mode === 'list' && (words[k + 1] === '.' || entries.view.section.source[entries.view.tokens[k]!.end] === '.'))
      )
    )
      return -1
    matched = true
    k++
    if (words[k] === '.') k++
    of = words[k] === 'of'
  } else if (words[k] === 'as' && (words[k + 1] === 'much' || words[k + 1] === 'many')) {
    k += 2
    if (words[k] === 'more') k++
    matched = true
    of = words[k] === 'of'
  } else {
    if (words[k] === 'the' || words[k] === 'an' || words[k] === 'a') k++
    if (
      words[k] === 'same' ||
      words[k] === 'like' ||
      words[k] === 'equal' ||
      (times.value !== 1 && (words[k] === 'quantity' || words[k] === 'weight'))
    ) {
      if (words[k] === 'like' && words[k + 1] !== 'quantity' && words[k + 1] !== 'weight') return -1
      if (words[k] === 'same' || words[k] === 'like' || words[k] === 'equal') k++
      byWeight = words[k] === 'weight'
      if (
        byWeight ||
        words[k] === 'quantity' ||
        words[k] === 'weight' ||
        words[k] === 'measure' ||
        words[k] === 'amount' ||
        words[k] === 'proportion' ||
        words[k] === 'quantities' ||
        words[k] === 'number' ||
        words[k] === 'parts'
      )
        k++
      matched = words[k] === 'of' || words[k] === 'in'
    } else if (words[k] === 'that' && words[k + 1] === 'quantity') {
      k += 2
      matched = words[k] === 'of'
    }
    of = matched
  }
  if (!matched) return -1
  if (of) k++
  if (words[k] === 'each') return -1
  const noun = readNoun(entries.view, k, to, mode === 'list' || of, mode === 'list')
  const {last} = entries
  if (noun === null) return -1
  // "as much flour as will make a paste" has no amount.
  let next = noun.next
  if (words[i] === 'as' || words[i + 1] === 'as') {
    const comparison =
      (words[next] === 'as' && !(words[next + 1] === 'of' || isNamed(entries.view, next + 1, to))) ||
      willDo(entries.view, next, to)
    if (comparison || (words[next] === 'to' && times.value === 1)) {
      entries.push(
        {start: at, next, item: noun.item, row: noun.row, known: noun.known, prepared: noun.prepared, confidence: 0.8},
        mode,
      )
      return next
    }
  }
  let from = last
  if (words[next] === 'as') {
    // "as much sugar as flour"
    const other = readNoun(entries.view, words[next + 1] === 'of' ? next + 2 : next + 1, to, false)
    if (other !== null) {
      from = entries.amounts.get(key(other)) ?? null
      next = other.next
    }
  }
  if (words[next] === ',' && words[next + 1] === 'or') {
    const alternative = alternativeAt(entries.view, next, to)
    if (alternative > 0) next = alternative
  }
  const eggs = byWeight && from !== null && from.measure === 'count' ? lastEggs(entries) : null
  if (eggs !== null) {
    const made = entries.push(
      {
        start: at,
        next,
        low: eggs.low!.times(times),
        high: eggs.high!.times(times),
        measure: 'weight of an egg',
        item: noun.item,
        row: noun.row,
        known: noun.known,
        prepared: noun.prepared,
        confidence: 0.85,
      },
      mode,
    )
    return alike(entries, made, to, mode)
  }
  // What is measured by a cup says nothing of a weight.
  if (byWeight && from !== null && lookUpMeasure(from.measure)?.dimension === 'volume') from = null
  // "an equal quantity" of what is counted says nothing of a thing that is not.
  if (
    from !== null &&
    from.measure === 'count' &&
    (noun.row === null || !ONE_OF.has(noun.row.group)) &&
    words[i] !== 'ditto' &&
    words[i] !== 'do'
  )
    from = null
  if (from === null || from.low === null || from.high === null) {
    entries.push(
      {start: at, next, item: noun.item, row: noun.row, known: noun.known, prepared: noun.prepared, confidence: 0.6},
      mode,
    )
    return next
  }
  entries.push(
    {
      start: at,
      next,
      low: from.low.times(times),
      high: from.high.times(times),
      measure: from.measure,
      item: noun.item,
      row: noun.row,
      known: noun.known,
      prepared: noun.prepared,
      confidence: noun.known ? 0.85 : 0.6,
      notes: ['the amount is that of the entry before'],
    },
    mode,
  )
  return next
}

/** "as much water, blood-warm, as will make a dough": what is said of it stands between. */
function willDo({words}: View, at: number, to: number): boolean {
  // "As much milk just warm as will make it into a paste"
  const most = words[at] === ',' || words[at] === '(' ? at + 8 : at + 4
  for (let i = at + 1; i < to && i < most; i++) {
    if (words[i] === '.' || words[i] === ';') return false
    if (words[i] === 'as')
      return /^(?:will|would|shall|should|is|are|may|can|you|they|it|suffices|needed)$/.test(words[i + 1] ?? '')
  }
  return false
}

/** The eggs just spoken of: the last amount, or the one before it in the same breath ("yolks of eight, whites of four"). */
function lastEggs(entries: Entries): Draft | null {
  if (
    entries.last === null ||
    !(entries.last.item === 'egg' || entries.last.item.startsWith('egg ') || entries.last.measure === 'weight of an egg')
  )
    return null
  for (let k = entries.drafts.length - 1; k >= 0; k--) {
    const draft = entries.drafts[k]!
    if (draft.low !== null && draft.measure === 'count' && (draft.item === 'egg' || draft.item.startsWith('egg '))) return draft
  }
  return null
}

const BY_WEIGHT = 'the amount is told by the weight of the entry before'

/** The one entry of the sentence so far that has a weight; null where there are more, or where it has none. */
function onlyWeighed(entries: Entries, at: number): Draft | null {
  const {tokens, words} = entries.view
  const {last} = entries
  if (last === null || lookUpMeasure(last.measure)?.dimension !== 'mass') return null
  if (tokens[last.start]!.block !== tokens[at]!.block) return null
  for (let i = last.next; i < at; i++) if (words[i] === '.' || words[i] === ';') return null
  for (let k = entries.drafts.length - 1; k >= 0; k--) {
    const draft = entries.drafts[k]!
    if (draft === last || draft.low === null) continue
    if (tokens[draft.start]!.block !== tokens[at]!.block) break
    let sentence = true
    for (let i = draft.next; i < last.start; i++) if (words[i] === '.' || words[i] === ';') sentence = false
    if (!sentence) break
    if (draft.notes[0] !== BY_WEIGHT) return null
  }
  return last
}

/**
 * "the same weight of flour, of sugar and of butter": the names behind an entry that have its amount too, where "and" closes the list and
 * nothing else is said of them. The token after the last.
 */
function alike(entries: Entries, made: Draft, to: number, mode: Mode): number {
  const {words, tokens} = entries.view
  if (made.low === null) return made.next
  const nouns: Noun[] = []
  let i = made.next
  let closed = false
  for (let turns = 0; turns < 8 && !closed; turns++) {
    let j = i
    if (words[j] === ',') j++
    const and = words[j] === 'and' || words[j] === '&'
    if (and) j++
    if (j === i || j >= to) break
    if (words[j] === 'of' || words[j] === 'in') j++
    const noun = readNoun(entries.view, j, to, false)
    if (noun === null) break
    nouns.push(noun)
    i = noun.next
    closed = and
  }
  const after = i < to ? tokens[i]! : undefined
  if (!closed || (after !== undefined && !/^[.;:)]$/.test(after.word))) return made.next
  for (const noun of nouns)
    entries.push(
      {
        ...made,
        start: made.start,
        next: i,
        item: noun.item,
        row: noun.row,
        known: noun.known,
        prepared: noun.prepared,
        notes: [...made.notes],
        hedges: [...made.hedges],
      },
      mode,
    )
  return i
}

/** "the weight of six eggs in sugar", "their weight in flour": the token after it, else −1. */
export function weightOf(entries: Entries, at: number, i: number, to: number, mode: Mode): number {
  const {words} = entries.view
  let k = i
  let times = ONE
  if (words[k] === 'half' || words[k] === 'twice' || words[k] === 'double') {
    times = words[k] === 'half' ? HALF : TWO
    k++
  }
  if (words[k] === 'the') k++
  if (words[k] === 'their' || words[k] === 'its') {
    if (words[k + 1] === 'own') k++
    if (words[k + 1] !== 'weight') return -1
    const noun = words[k + 2] === 'in' || words[k + 2] === 'of' ? readNoun(entries.view, k + 3, to, mode === 'list') : null
    if (noun === null) return -1
    const eggs = /^(?:their|own)$/.test(words[k]!) ? lastEggs(entries) : null
    const weighed = eggs === null ? onlyWeighed(entries, at) : null
    const told = eggs ?? weighed
    const made = entries.push(
      {
        start: at,
        next: noun.next,
        item: noun.item,
        row: noun.row,
        known: noun.known,
        prepared: noun.prepared,
        confidence: 0.7,
        ...(told === null
          ? {}
          : {
              low: told.low!.times(times),
              high: told.high!.times(times),
              measure: weighed === null ? 'weight of an egg' : weighed.measure,
            }),
        ...(weighed === null ? {} : {notes: [BY_WEIGHT]}),
      },
      mode,
    )
    return alike(entries, made, to, mode)
  }
  if (words[k] !== 'weight' && words[k] !== 'weights') return -1
  k++
  if (words[k] !== 'of') return -1
  k++
  let low: Exact | null = null
  let high: Exact | null = null
  const amount = readAmount(entries.view, k, to)
  if (amount !== null) {
    low = amount.low
    high = amount.high
    k = amount.next
    if (words[k] === 'large' || words[k] === 'fresh' || words[k] === 'small' || words[k] === 'good') k++
    const eggs = words[k] === 'eggs' || words[k] === 'egg'
    if (eggs) k++
    else if (k < to && !/^(?:in|of|[,.;])$/.test(words[k]!)) return -1
  } else if (words[k] === 'the' && (words[k + 1] === 'eggs' || words[k + 1] === 'egg')) {
    k += 2
    const eggs = lastEggs(entries)
    low = eggs?.low ?? null
    high = eggs?.high ?? null
  } else return -1
  if (words[k] === ',') k++
  if (words[k] !== 'in' && words[k] !== 'of') {
    // "flour, the weight of six eggs"
    const before = entries.drafts[entries.drafts.length - 1]
    if (before?.bare && before.next <= at && at - before.next <= 1 && low !== null) {
      entries.drafts.pop()
      entries.push(
        {
          ...before,
          bare: false,
          next: k,
          low: low.times(times),
          high: high!.times(times),
          measure: 'weight of an egg',
          confidence: 0.8,
        },
        mode,
      )
      return k
    }
    return -1
  }
  const noun = readNoun(entries.view, k + 1, to, true)
  if (noun === null) return -1
  let next = noun.next
  const alternative = alternativeAt(entries.view, next, to)
  if (alternative > 0) next = alternative
  const made = entries.push(
    {
      start: at,
      next,
      low: low?.times(times) ?? null,
      high: high?.times(times) ?? null,
      measure: low === null ? 'indefinite' : 'weight of an egg',
      item: noun.item,
      row: noun.row,
      known: noun.known,
      prepared: noun.prepared,
      confidence: 0.92,
    },
    mode,
  )
  return alike(entries, made, to, mode)
}
