import {partsOf} from '../lexicon/grammar-words.js'
import {lookUpItem} from '../lexicon/index.js'
import type {Item} from '../lexicon/schema.js'
import {readAmount} from './amounts.js'
import {type Entries, type Mode, namesCounted} from './entries.js'
import {type Exact, HALF, ONE} from './exact.js'
import {partItem, readNoun} from './nouns.js'
import {type Quantity, readQuantity} from './quantities.js'
import {AND, endsName, fruitsBehind, isAskedOfFruit, isSqueezed, OF_A_FRUIT, putParts} from './squeezed.js'
import {ENDER, JOINT, PART, PREPARED} from './view.js'

/**
 * Entries that are a part of something: juice and rind, yolks and whites, crumb, joints of meat.
 */

/** The fruit that parts were last asked of, or that was last counted: "the zest of 3 lemons, juice of 2". Null where none was. */
function fruitBefore({drafts}: Entries): string | null {
  const fruit = drafts.findLast(
    ({item, row, low, measure}) => OF_A_FRUIT.test(item) || (row?.group === 'fruit' && low !== null && measure === 'count'),
  )
  return fruit === undefined ? null : fruit.item.replace(OF_A_FRUIT, '')
}

/**
 * "the juice of two lemons", "the rind and juice of one", "whites of five eggs and yolks of three": the token after them, else −1.
 * The entry begins at `at`, its words after the hedges at `i`.
 */
export function partOf(entries: Entries, at: number, i: number, to: number, mode: Mode): number {
  const {words, bits} = entries.view
  let k = i
  let times: Exact | null = null
  // "half the rind of a lemon", "a little of the juice of…"
  if (words[k] === 'half' && words[k + 1] === 'the') {
    times = HALF
    k += 2
  } else if (words[k] === 'the') k++
  let guard = 0
  while (k < to && bits[k]! & PREPARED && guard++ < 4 && !(bits[k]! & PART)) k++
  while (
    k < to &&
    (words[k] === ',' || words[k] === 'or') &&
    guard > 0 &&
    guard++ < 6 &&
    bits[k + 1] !== undefined &&
    bits[k + 1]! & PREPARED
  )
    k += 2
  if (k >= to || !(bits[k]! & PART)) return -1
  const parts = [partsOf[words[k]!]!]
  k++
  while (k + 1 < to) {
    if (words[k] === ',' && bits[k + 1]! & PART) {
      parts.push(partsOf[words[k + 1]!]!)
      k += 2
      continue
    }
    if (AND.test(words[k]!)) {
      let m = k + 1
      if (words[m] === 'the') m++
      let steps = 0
      while (m < to && bits[m]! & PREPARED && !(bits[m]! & PART) && steps++ < 3) m++
      if (m < to && bits[m]! & PART) {
        parts.push(partsOf[words[m]!]!)
        k = m + 1
        continue
      }
    }
    break
  }
  if (words[k] === 'only') k++
  // "Schale einer Zitrone", "Saft von 2 Zitronen"
  if (/^(?:einer|eines|zweier|dreier)$/.test(words[k] ?? '')) k--
  else if (!/^(?:of|von|vom)$/.test(words[k] ?? '')) {
    if (!isAskedOfFruit(entries.view, k, to, parts)) return -1
    k--
  }
  if (k + 1 >= to) return -1
  k++
  const egg = parts[0] === 'white' || parts[0] === 'yolk'
  const amount = readAmount(entries.view, k, to)
  let next: number
  let low: Exact | null = null
  let high: Exact | null = null
  let base: string | null = null
  let row: Item | null = null
  let known = true
  let unit = 'count'
  let hedges: readonly string[] = []
  if (amount !== null) {
    low = amount.low
    high = amount.high
    hedges = amount.hedges
    // "the crumb of half a loaf", "the juice of a pound of"
    const loaf = readQuantity(entries.view, k, to, amount)!
    let from = amount.next
    if (words[from] === 'of' && (words[from + 1] === 'the' || words[from + 1] === 'them' || words[from + 1] === 'your')) {
      const noun = readNoun(entries.view, from + 1, to, false)
      const past = noun?.next ?? from + 2
      // Part of what is there already: "ten eggs, and leave out the whites of two of them"; not so where only yolks were named.
      if (!egg || entries.has('egg')) return past
      from = past
    }
    if (loaf.measure !== 'count' && (loaf.measure === 'loaf' || loaf.dimension === 'mass' || loaf.dimension === 'volume')) {
      unit = loaf.measure
      low = loaf.low
      high = loaf.high
      from = words[loaf.next] === 'of' ? loaf.next + 1 : loaf.next
    }
    const noun = readNoun(entries.view, from, to, !egg && mode === 'list')
    if (noun !== null && (!egg || noun.item === 'egg')) {
      base = noun.item
      ;({row, known} = noun)
      next = noun.next
    } else if (egg) {
      base = 'egg'
      next = from
    } else if (unit === 'loaf') {
      base = 'bread'
      next = loaf.next
    } else {
      // "the juice of one lemon, and the rind of two"
      const ofFruit = parts.every((part) => OF_A_FRUIT.test(` ${part}`))
      const thing = ofFruit
        ? endsName(entries.view, from, to)
          ? fruitBefore(entries)
          : null
        : entries.view.tokens[from]?.kind === 'mark'
          ? (entries.last?.item ?? null)
          : null
      if (thing === null) return -1
      base = thing
      next = from
    }
  } else {
    const the = words[k] === 'the' || words[k] === 'your'
    const noun = readNoun(entries.view, k, to, false)
    if (noun === null || (egg && noun.item !== 'egg')) return -1
    if (the && egg) return noun.next
    base = noun.item
    ;({row, known} = noun)
    next = noun.next
    unit = 'indefinite'
  }
  // Only fruit is asked for by its rind: "the rind of a pound of pork" asks for pork.
  if (row !== null && row.group !== 'fruit' && parts.includes('rind')) return -1
  const squeezed = row !== null && unit === 'count' && isSqueezed(row) && parts.every((part) => OF_A_FRUIT.test(` ${part}`))
  const others = squeezed ? fruitsBehind(entries.view, next, to) : []
  const byTimes = (one: Exact): Exact => (times === null ? one : one.times(times))
  for (const part of parts) {
    const made = partItem(base, part)
    entries.push(
      {
        start: at,
        next,
        low: low === null ? null : byTimes(low),
        high: high === null ? null : byTimes(high),
        measure: low === null ? 'indefinite' : unit,
        item: part === 'crumb' && made.row === null && /bread|loaf|manchet/.test(base) ? 'bread crumb' : made.item,
        row: made.row ?? row,
        known: known || made.row !== null,
        hedges: [...hedges],
        confidence: low === null ? 0.7 : 0.93,
      },
      mode,
    )
  }
  let past = next
  for (const {amount: of, item, row: fruit, next: end} of others) {
    const asked = {start: past + 1, next: end, low: byTimes(of.low), high: byTimes(of.high), item, row: fruit}
    putParts(entries, parts, {...asked, hedges: of.hedges, confidence: 0.88}, mode)
    past = end
  }
  // "whites of five eggs and yolks of three" goes on by itself; "yolks of three" finds its eggs.
  return past
}

/** "four yolks and two whites of eggs", "sixteen yolks", "the whites of…" after a bare count: the token after them, else −1. */
export function countedParts(entries: Entries, at: number, quantity: Quantity, to: number, mode: Mode): number {
  const {words, bits, tokens} = entries.view
  let k = quantity.next
  let guard = 0
  while (k < to && guard++ < 3 && (bits[k]! & PREPARED || words[k] === 'egg' || words[k] === 'eggs')) k++
  const part = partsOf[words[k] ?? '']
  if (k >= to || (part !== 'yolk' && part !== 'white')) return -1
  if (quantity.article && !/^(?:white|yolk|yelk|yolke)$/.test(words[k]!)) return -1
  // "a white sauce": the colour.
  if (words[k] === 'white' && k + 1 < to && tokens[k + 1]!.kind === 'word' && !(bits[k + 1]! & ENDER)) return -1
  k++
  if (part === 'white' && /^(?:flour|sugar|pepper|wine|bread|vinegar|sauce|fish|wheat|currant|onion)/.test(words[k] ?? ''))
    return -1
  if (words[k] === 'of' && (words[k + 1] === 'egg' || words[k + 1] === 'eggs')) k += 2
  else if (words[k] === 'of' && words[k + 1] === 'an' && words[k + 2] === 'egg') k += 3
  const made = partItem('egg', part)
  entries.push(
    {
      start: at,
      next: k,
      low: quantity.low,
      high: quantity.high,
      measure: 'count',
      item: made.item,
      row: made.row,
      hedges: [...quantity.hedges],
      confidence: 0.93,
    },
    mode,
  )
  return k
}

/** "a round of beef", "two legs of lamb", "the tail-end of a sturgeon": the token after it, else −1. */
export function jointOf(entries: Entries, at: number, i: number, to: number, mode: Mode): number {
  const {words, bits, tokens} = entries.view
  let k = i
  let low = ONE
  let high = low
  const the = words[k] === 'the'
  if (the) {
    if (mode !== 'list') return -1
    k++
  } else {
    const amount = readAmount(entries.view, k, to)
    if (amount === null) {
      if (mode !== 'list' || i !== at || !(bits[k]! & JOINT)) return -1
    } else {
      low = amount.low
      high = amount.high
      k = amount.next
    }
  }
  let guard = 0
  while (k < to && bits[k]! & PREPARED && guard++ < 3) k++
  const start = k
  const joined = (): boolean => k < to && ((bits[k]! & JOINT) !== 0 || (tokens[k]!.joined && k > start) || words[k] === 'end')
  while (joined() && k - start < 3) k++
  if (k === start) return -1
  if (words[k] !== 'of' || k + 1 >= to) return -1
  const noun = readNoun(entries.view, words[k + 1] === 'a' || words[k + 1] === 'an' ? k + 2 : k + 1, to, false)
  if (noun === null || noun.row === null || (noun.row.group !== 'meat' && noun.row.group !== 'fish')) return -1
  const item = `${words.slice(start, k).join(' ')} of ${noun.item}`
  // "3 ribs of beef": so many of one joint, where "ribs of beef" is the joint.
  const counted = lookUpItem(item)?.counted
  const isParts = counted?.from !== undefined && namesCounted(counted, low, tokens[at]!.kind === 'number').includes(item)
  const parts = isParts ? lookUpItem(counted.item) : null
  entries.push(
    {
      start: at,
      next: noun.next,
      low,
      high,
      measure: 'count',
      item: parts?.id ?? item,
      row: parts ?? noun.row,
      confidence: 0.85,
    },
    mode,
  )
  return noun.next
}
