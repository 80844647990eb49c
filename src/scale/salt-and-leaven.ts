import {lookUpItem} from '../lexicon/index.js'
import type {Item} from '../lexicon/schema.js'
import type {Inferred, Receipt} from '../receipt/types.js'
import type {KindFigures} from './kind-figures.js'
import type {Say} from './sizing.js'

/**
 * How leaven and salt are scaled. Each row is one rule of the trade and says whose it is.
 *
 * Bakers reckon salt and leaven by the weight of the flour ("bakers' percentage"), so both scale with the flour; what changes with
 * size is time, and for chemical leaven depth.
 */
interface ScaleRule {
  readonly id: string
  /** `batch`: kilograms mixed at once. */
  readonly when: (change: {readonly times: number; readonly thicker: number; readonly batch: number}) => boolean
  readonly items: 'salt' | 'yeast' | 'chemical leaven'
  readonly say: string
  /** The same of a receipt without flour. */
  readonly without?: string
  readonly source: string
}

const scaleRules: readonly ScaleRule[] = [
  {
    id: 'yeast-large',
    items: 'yeast',
    when: ({times, batch}) => times > 2 && batch >= 6,
    say: 'yeast is kept in proportion to the flour; so large a dough keeps its own warmth and rises sooner, so look at it a fifth of the time early',
    source: 'common-practice',
  },
  {
    id: 'yeast-small',
    items: 'yeast',
    when: ({times, batch}) => times < 1 && batch <= 0.6,
    say: 'yeast is kept in proportion to the flour; a small dough cools and rises more slowly',
    source: 'common-practice',
  },
  {
    id: 'chemical-deep',
    items: 'chemical leaven',
    when: ({thicker}) => thicker > 1.15,
    say: 'leaven is kept in proportion to the flour; in a deeper vessel the middle sets later, and some cooks take a tenth less',
    source: 'common-practice',
  },
  {
    id: 'salt-flour',
    items: 'salt',
    when: ({times}) => times !== 1,
    say: 'salt is kept in proportion to the flour',
    without: 'salt is kept in proportion to the rest',
    source: 'common-practice',
  },
]

/** Salt in bread as a share of the flour: the usual range, and where to ask whether it is meant. Common practice, no source. */
const saltInBread = {low: 0.012, high: 0.025}

/** What the trade says of salt and leaven at this size. */
export function saltAndLeaven(
  receipt: Receipt,
  kind: KindFigures,
  change: {times: number; thicker: number; batch: number},
  say: Say,
): Inferred[] {
  const out: Inferred[] = []
  const has = (test: (item: Item | null) => boolean): boolean => receipt.ingredients.some((one) => test(lookUpItem(one.item)))
  const floury = has((item) => item?.group === 'flour' || item?.group === 'meal')
  for (const rule of scaleRules) {
    if (!rule.when(change)) continue
    const found =
      rule.items === 'salt'
        ? has((item) => item?.group === 'salt')
        : rule.items === 'yeast'
          ? has((item) => item?.raises === 'yeast' || item?.raises === 'sourdough')
          : has((item) => item?.raises === 'soda')
    if (found)
      out.push({
        field: rule.items === 'salt' ? 'salt' : 'leaven',
        value: 'in proportion',
        why: floury ? rule.say : (rule.without ?? rule.say),
      })
  }
  if (kind.dough !== undefined) {
    const sum = (group: (item: Item) => boolean): number =>
      receipt.ingredients.reduce((total, one) => {
        const item = lookUpItem(one.item)
        return item !== null && group(item) ? total + (one.grams?.likely ?? 0) : total
      }, 0)
    const flour = sum((item) => item.group === 'flour' || item.group === 'meal')
    const salt = sum((item) => item.group === 'salt')
    if (flour > 0 && salt > 2 * saltInBread.high * flour) {
      say(
        'warning',
        'scale-salt',
        `${receipt.title}: ${Math.round(salt)} g of salt to ${Math.round(flour)} g of flour is over twice the usual 1–2.5 %`,
        'look at the salt line of the receipt',
      )
    }
  }
  return out
}
