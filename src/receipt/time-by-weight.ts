import {fold, lookUpItem, lookUpMeasure, measureAt} from '../lexicon/index.js'
import type {Token} from './section.js'
import type {Ingredient, TimePhrase} from './types.js'

/**
 * Times that go by the weight of the piece: “20 minutes per 500 g”, “a quarter of an hour to the pound, and a quarter of an hour over”.
 */

/** What is baked by the piece whatever its weight: "an hour to a pound loaf" is its own time. */
const PIECES = new Set(['cake', 'cakes', 'loaf', 'loaves', 'tin', 'tins', 'jar', 'pie', 'pudding'])
/** Before the unit; the second may stand only behind the first. */
const FIRST = new Set(['per', '/', 'to', 'for', 'a', 'the', 'each', 'every', 'allow'])
const SECOND = new Set(['the', 'each', 'every', 'a'])
const SHORT = new Set(['lb', 'lbs', 'oz', 'kg', 'g'])
const OVER = new Set(['over', 'extra', 'more', 'besides', 'beyond'])

/** Grams of the weight and the token after it, where "per 500 g" or "to the pound" stands at token `i`; null where it does not. */
export function perWeight(tokens: readonly Token[], i: number): {grams: number; end: number} | null {
  const block = tokens[i - 1]?.block
  const here = (k: number): Token | undefined => (tokens[k]?.block === block ? tokens[k] : undefined)
  let k = i
  const first = here(k)?.word ?? ''
  if (!FIRST.has(first)) return null
  k++
  const second = here(k)?.word ?? ''
  if (first === 'to' || first === 'for') {
    // "for a pound" is of that pound, "to a pound" of any.
    if (!SECOND.has(second) || (first === 'for' && second === 'a')) return null
    k++
  } else if (first === 'per' && SECOND.has(second)) k++
  const number = here(k)
  let times = 1
  if (number?.kind === 'number') {
    if (number.den === 0) return null
    times = number.num / number.den
    k++
  } else if (number?.word === 'half') {
    times = 0.5
    k++
    if (here(k)?.word === 'a') k++
  }
  const unit = here(k)
  const measure = unit === undefined || unit.kind !== 'word' ? null : (measureAt([fold(unit.word)], 0)?.row ?? null)
  const size = measure?.dimension === 'mass' ? measure.sizes[0]?.size : undefined
  const grams = measure?.unit === 'kg' ? 1000 : measure?.unit === 'g' ? 1 : size?.likely
  if (grams === undefined || times <= 0) return null
  k++
  // The stop of "lb." belongs to it, the sentence's does not.
  const after = here(k + 1)
  if (SHORT.has(unit!.word) && here(k)?.word === '.' && after !== undefined && !after.capital) k++
  return PIECES.has(here(k)?.word ?? '') ? null : {grams: grams * times, end: k}
}

/** "and 20 minutes over" behind a time by weight that ends at `end`: is the stretch [from, to) such? The token after it, else −1. */
export function overAndAbove(tokens: readonly Token[], end: number, from: number, to: number): number {
  if (from < end || from - end > 3 || tokens[end - 1]!.block !== tokens[to - 1]!.block) return -1
  const between = tokens.slice(end, from).map(({word}) => word)
  if (!between.every((word) => /^(?:,|and|&|plus|\+|with|another|an)$/.test(word))) return -1
  if (OVER.has(tokens[to]?.word ?? '') && tokens[to]!.block === tokens[end - 1]!.block) return to + 1
  return between.includes('plus') || between.includes('+') ? to : -1
}

/** The heaviest piece of meat or fish whose weight the receipt states: its words, and the grams of one. */
function piece(ingredients: readonly Ingredient[]): {text: string; low: number; high: number} | null {
  let best: {text: string; low: number; high: number} | null = null
  for (const {item, measure, amount, grams, stated, text} of ingredients) {
    const group = lookUpItem(item)?.group ?? lookUpItem(item.split(' of ').at(-1) ?? item)?.group
    if ((group !== 'meat' && group !== 'fish') || grams === null || amount === null) continue
    const weighed = lookUpMeasure(measure)?.dimension === 'mass'
    if (!weighed && stated === undefined) continue
    const count = weighed ? 1 : Math.max(1, amount.low)
    if (best === null || grams.high / count > best.high)
      best = {text: text.replace(/\s+/g, ' '), low: grams.low / count, high: grams.high / count}
  }
  return best
}

/**
 * Times by weight worked out for the piece the receipt states the weight of. Without one they are no time of baking that could be
 * planned by, and stay words.
 *
 * @param tell called for each, with the piece it was worked out for, or null
 */
export function workedOut(
  times: readonly TimePhrase[],
  ingredients: readonly Ingredient[],
  tell: (time: TimePhrase, of: string | null) => void,
): readonly TimePhrase[] {
  if (!times.some((time) => time.byWeight !== undefined)) return times
  const found = piece(ingredients)
  return times.map((time) => {
    const {byWeight} = time
    if (byWeight === undefined) return time
    if (found === null) {
      tell(time, null)
      return time
    }
    const minutes = {
      low: Math.round((byWeight.minutes.low * found.low) / byWeight.grams + byWeight.over.low),
      high: Math.round((byWeight.minutes.high * found.high) / byWeight.grams + byWeight.over.high),
    }
    const done: TimePhrase = {...time, minutes, of: byWeight.of}
    tell(done, found.text)
    return done
  })
}
