import {measured} from './amount-and-name.js'
import {skipHedges} from './amounts.js'
import {sizedOne} from './bare-measure.js'
import {pastSize} from './between.js'
import type {Entries, Mode} from './entries.js'
import {jointOf, partOf} from './item-parts.js'
import {likened, sizeOf} from './likened-sizes.js'
import {readNoun} from './nouns.js'
import {readQuantity} from './quantities.js'
import {dittoMark, sameAs, weightOf} from './same-amounts.js'
import {eachAfter} from './shared-amounts.js'
import {LOOKS} from './unmeasured.js'
import {FILLING, JOINT, OPENER, PART, PREPARED, type View} from './view.js'

/**
 * The forms an entry with an amount takes, tried in turn.
 */

/** Small words open an amount only before some others: most do not, and are told from the next word. */
function opens(view: View, at: number, to: number): boolean {
  if (at + 1 >= to) return true
  const {words, bits} = view
  const next = words[at + 1]
  switch (words[at]) {
    case 'the':
    case 'that':
    case 'this':
      return (bits[at + 1]! & (OPENER | PART | PREPARED | JOINT | FILLING)) !== 0 || next === 'quantity'
    case 'of':
      return next === 'each'
    case 'as':
      return next === 'much' || next === 'many'
    case 'its':
    case 'their':
      return next === 'weight' || (next === 'own' && words[at + 2] === 'weight')
    case 'like':
      return next === 'quantity' || next === 'weight'
    case 'from':
      return (bits[at + 1]! & OPENER) !== 0
    default:
      return true
  }
}

/** Does a joint of meat stand in the next words? */
function jointNear(view: View, at: number, to: number): boolean {
  const {bits} = view
  for (let i = at; i < to && i < at + 7; i++) if (bits[i]! & JOINT) return true
  return false
}

/** An entry with an amount at `at`: the token after it, or −1. */
export function entry(entries: Entries, at: number, to: number, mode: Mode): number {
  const {words, bits} = entries.view
  if (!opens(entries.view, at, to)) return -1
  let i = at
  const hedges: string[] = []
  i = skipHedges(entries.view, i, to, hedges)
  if (i >= to) return -1
  const word = words[i]!
  // Amounts said by other things.
  const special = sameAs(entries, at, i, to, mode)
  if (special > 0) return special
  const weight = weightOf(entries, at, i, to, mode)
  if (weight > 0) return weight
  const whole = partOf(entries, at, i, to, mode)
  if (whole > 0) return whole
  const size =
    word === 'size' || words[i + 1] === 'size' || word === 'bigness' || words[i + 1] === 'bigness' || words[i + 1] === 'bignesse'
      ? sizeOf(entries.view, i, to)
      : null
  if (size !== null && words[size.next] === 'of') {
    // "the bigness of a walnut of butter"
    const noun = readNoun(entries.view, size.next + 1, to, false)
    if (noun !== null) {
      likened(entries, {start: at, next: noun.next, size, noun, confidence: 0.9}, mode)
      return noun.next
    }
  }
  const ditto = dittoMark(entries, at, i, to, mode)
  if (ditto > 0) return ditto
  const sized = mode === 'list' && entries.view.tokens[i]!.kind === 'number' ? sizedOne(entries, at, to) : -1
  if (sized > 0) return sized
  // "1 pie crust, 9-inch", "1 Tortenboden (26 cm)"
  const large = mode === 'list' && i === at && at > 0 ? pastSize(entries.view, i, to) : -1
  if (large > 0 && (large >= to || entries.view.tokens[large]!.kind === 'mark')) return large
  if (jointNear(entries.view, i, to)) {
    const joint = jointOf(entries, at, i, to, mode)
    if (joint > 0) return joint
  }
  if (word === 'each' || (word === 'of' && words[i + 1] === 'each')) {
    const after = eachAfter(entries, at, word === 'of' ? i + 2 : i + 1, to, mode)
    if (after > 0) return after
  }
  let the = false
  let from = at
  if (word === 'the' || word === 'that' || word === 'this' || word === 'these') {
    the = true
    from = i + 1
    if (from >= to || !(bits[from]! & OPENER)) return -1
  } else if (word === 'of' || word === 'like' || word === 'as') return -1
  const quantity = readQuantity(entries.view, from, to)
  if (quantity === null) return -1
  // "in the shape of a pear", "of the colour of an orange": only what it looks like.
  if (quantity.article && quantity.measure === 'count' && words[at - 1] === 'of' && LOOKS.has(words[at - 2] ?? '')) {
    const like = readNoun(entries.view, quantity.next, to, false)
    if (like !== null) return like.next
  }
  if (quantity.measure === 'drop' && (words[from] === 'every' || words[from] === 'each')) return quantity.next
  // Read from `at` on, the quantity has those before it already: said once, “about” counts once.
  return measured(entries, at, quantity, to, mode, the, the ? hedges : [])
}
