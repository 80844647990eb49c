import type {Element} from 'hast'
import {h} from 'hastscript'
import {lookUpItem} from '../lexicon/index.js'
import type {Item, Range} from '../lexicon/schema.js'
import {withoutBatch} from '../plan/batches.js'
import type {Plan, PlanProblem} from '../plan/types.js'
import {box} from './day-sheet.js'
import {mass, volume} from './figures.js'
import {dishTitle} from './heat-data.js'
import {leftOut, leftOutLine, leftOutMark} from './left-out.js'
import {insteadOf, modernName, sizedLines, vesselName} from './said.js'
import {itemSpan, kitchenSpan, partMark} from './spoken.js'
import type {Style} from './style.js'
import {say} from './words/index.js'

/** One line of the shopping list: an item summed over the day. */
export interface Need {
  readonly item: string
  readonly group: string
  readonly grams: Range | null
  /** How many to buy, where it is sold by number. */
  readonly pieces: number | null
  /** Only where the weight is not known. */
  readonly millilitres: Range | null
  /** Amounts that could not be summed ("a little salt"), as they stand, with their dish. */
  readonly asStands: ReadonlyArray<{readonly text: string; readonly title: string}>
  readonly dishes: readonly string[]
  /** Ids of the dishes it is for. */
  readonly ids: readonly string[]
  /** Its name in a shop today, where it differs. */
  readonly modern: string | null
  /** What replaces it where it is no longer sold, or does as well where it is (`sold`): the item, its weight and how. */
  readonly instead: {
    readonly item: string
    readonly grams: Range | null
    readonly how: string
    readonly source: string
    readonly sold: boolean
  } | null
}

/** Sum of two ranges, low to low and high to high: the widest case, since one cook's cup is off the same way all day. */
export function add(one: Range | null, other: Range | null): Range | null {
  if (one === null) return other
  if (other === null) return one
  return {low: one.low + other.low, likely: one.likely + other.likely, high: one.high + other.high}
}

/** Everything the day needs, summed by item, in the order of a shop: group, then name. */
export function needs(problem: PlanProblem, items: readonly Item[]): Need[] {
  const {dishes} = problem
  const byItem = new Map<
    string,
    {
      grams: Range | null
      millilitres: Range | null
      asStands: Array<{text: string; title: string}>
      /** Of what does its work today. */
      today: Range | null
      dishes: Set<string>
      ids: Set<string>
    }
  >()
  for (const dish of dishes)
    for (const amount of dish.amounts) {
      // Water comes from the tap, not from a shop.
      if (amount.item === 'water') continue
      const title = dishTitle(problem, dish.id)
      const name = amount.today?.as ?? amount.item
      const entry = byItem.get(name) ?? {
        grams: null,
        millilitres: null,
        asStands: [],
        today: null,
        dishes: new Set<string>(),
        ids: new Set<string>(),
      }
      if (amount.grams) entry.grams = add(entry.grams, amount.grams)
      else if (amount.millilitres) entry.millilitres = add(entry.millilitres, amount.millilitres)
      else entry.asStands.push({text: amount.kitchen, title})
      if (amount.today) entry.today = add(entry.today, amount.today.grams)
      entry.dishes.add(title)
      entry.ids.add(dish.id)
      byItem.set(name, entry)
    }
  const out = [...byItem].map(([item, entry]): Need => {
    const row = items.find(({id}) => id === item)
    const replaced = row?.replacedBy ?? null
    return {
      item,
      group: row?.group ?? 'other',
      grams: entry.grams,
      pieces: entry.grams ? pieces(item, entry.grams, items) : null,
      millilitres: entry.millilitres,
      asStands: entry.asStands,
      dishes: [...entry.dishes],
      ids: [...entry.ids],
      modern: row?.modern && row.modern !== item ? row.modern : null,
      instead: replaced
        ? {
            item: replaced.item,
            grams: entry.today,
            how: replaced.how,
            source: replaced.source,
            sold: replaced.sold === true,
          }
        : null,
    }
  })
  return out
    .filter((need) => !madeHere(need))
    .sort((a, b) => (a.group < b.group ? -1 : a.group > b.group ? 1 : a.item < b.item ? -1 : 1))
}

/** Paste, dough, batter named without an amount are made of the day's own flour and fat; nobody buys them. */
const madeHere = (need: Need): boolean =>
  need.group === 'made dish' &&
  need.grams === null &&
  need.millilitres === null &&
  ['paste', 'dough', 'batter'].includes(need.item)

/** Items sold by number whatever the receipt measured them in. */
const byNumber = new Set(['egg', 'lemon', 'orange'])

/** How many to buy: by the weight of one of today's (the lexicon's piece), rounded up; null where it is not sold by number. */
function pieces(item: string, grams: Range, items: readonly Item[]): number | null {
  if (!byNumber.has(item)) return null
  const today = items.find(({id}) => id === item)?.pieces.find((piece) => piece.measure === 'count' && piece.to === undefined)
  // A hair's breadth under a whole number is rounding, not another egg.
  return today ? Math.ceil(grams.likely / today.grams.likely - 0.05) : null
}

/** Of how many of today's eggs so much white or yolk comes, by the lexicon's weight of one; null for anything else. */
function eggsParted(item: string, grams: Range): number | null {
  if (item !== 'egg white' && item !== 'egg yolk') return null
  const today = lookUpItem(item)?.pieces.find((piece) => piece.measure === 'count' && piece.to === undefined)
  return today ? Math.ceil(grams.likely / today.grams.likely - 0.05) : null
}

/** The amount to buy, in words. */
export function amountToBuy(need: Need, style: Style): string {
  const parts: string[] = []
  const parted = need.grams ? eggsParted(need.item, need.grams) : null
  if (need.pieces !== null)
    parts.push(say(style.words, 'shop.pieces', {count: need.pieces, amount: need.grams ? mass(need.grams, style) : ''}))
  else if (need.grams)
    parts.push(
      parted === null
        ? mass(need.grams, style)
        : `${mass(need.grams, style)}, ${say(style.words, 'shop.parted', {count: parted})}`,
    )
  if (need.millilitres) parts.push(volume(need.millilitres, style))
  for (const {text, title} of need.asStands) {
    const key = text === need.item ? 'shop.some' : /^[\d /]+$/.test(text) ? 'shop.number' : 'shop.asStands'
    // "Some" for each batch of a dish is some for the dish.
    parts.push(say(style.words, key, {text, title: key === 'shop.some' ? withoutBatch(title) : title}))
  }
  return [...new Set(parts)].join(' + ')
}

/** `3/2` as a cook writes it: `1 1/2`. */
function mixed(times: string): string {
  const [over, under] = times.split('/').map(Number) as [number, number | undefined]
  if (under === undefined || over < under) return times
  const rest = over % under
  return rest === 0 ? String(over / under) : `${Math.floor(over / under)} ${rest}/${under}`
}

/** The shopping list and, a table for each dish, what to weigh out. What the plan has no place for stands in both, and is named as such. */
export function shoppingSheet(plan: Plan, problem: PlanProblem, items: readonly Item[], style: Style): Element[] {
  const {words} = style
  const out = leftOut(plan, problem)
  const outLine = leftOutLine(plan, problem, style)
  const nowhere = new Set(problem.dishes.filter(({id, count}) => out.get(id) === count).map(({id}) => id))
  const list = needs(problem, items)
  const head = (keys: ReadonlyArray<'col.done' | 'col.item' | 'col.total' | 'col.shop' | 'col.weigh' | 'col.note'>): Element =>
    h(
      'thead',
      h(
        'tr',
        keys.map((key) => h('th', {scope: 'col'}, words[key])),
      ),
    )
  return [
    h('article', {className: ['sheet', 'shopping']}, [
      h('h1', words['shop.title']),
      h('p', say(words, 'shop.intro', {title: problem.day.title, count: problem.day.people})),
      ...(outLine === null ? [] : [h('p', {className: ['warn']}, outLine)]),
      h('table', {className: ['stack']}, [
        head(['col.done', 'col.item', 'col.total', 'col.shop']),
        h(
          'tbody',
          list.map((need) =>
            h('tr', [
              h('td', box()),
              h('th', {scope: 'row'}, itemSpan(need.item, style)),
              h('td', amountToBuy(need, style)),
              h('td', shopNote(need, nowhere, style)),
            ]),
          ),
        ),
      ]),
      h('p', {className: ['small']}, words['shop.spread']),
    ]),
    h('article', {className: ['sheet', 'weighing']}, [
      h('h1', words['shop.weighing']),
      h('p', words['shop.weighingIntro']),
      h(
        'div',
        {className: ['batches']},
        problem.dishes.map((dish) => {
          const mark = leftOutMark(dish, out, style)
          return h('section', {className: ['batch']}, [
            h('h2', [
              `${dishTitle(problem, dish.id)}: ${dish.count} × ${vesselName(dish.vessel.name, style)}`,
              ...(mark === null ? [] : [` (${mark})`]),
            ]),
            h('p', {className: ['small']}, say(words, 'shop.times', {times: mixed(dish.times)})),
            ...(dish.sized.length > 0
              ? [
                  h(
                    'ul',
                    {className: ['small']},
                    sizedLines(dish, style).map((line) => h('li', line)),
                  ),
                ]
              : []),
            h('table', {className: ['stack']}, [
              head(['col.done', 'col.item', 'col.weigh', 'col.note']),
              h(
                'tbody',
                dish.amounts.map((amount) =>
                  h('tr', [
                    h('td', box()),
                    h('th', {scope: 'row'}, [...partMark(amount.part, style), itemSpan(amount.item, style)]),
                    h(
                      'td',
                      amount.kitchen === amount.item
                        ? words['translate.indefinite']
                        : h('strong', kitchenSpan(amount.kitchen, style)),
                    ),
                    h(
                      'td',
                      {className: ['small']},
                      amount.grams ? mass(amount.grams, style) : amount.millilitres ? volume(amount.millilitres, style) : '',
                    ),
                  ]),
                ),
              ),
            ]),
          ])
        }),
      ),
    ]),
  ]
}

function shopNote(need: Need, nowhere: ReadonlySet<string>, style: Style): string {
  const {words} = style
  const parts: string[] = []
  if (need.modern && (!need.instead || need.instead.sold))
    parts.push(say(words, 'shop.modern', {name: modernName(need.item, need.modern, style)}))
  if (need.instead) {
    const {item, how} = insteadOf(need.item, need.instead, style)
    parts.push(
      say(words, need.instead.sold ? 'shop.or' : 'shop.instead', {
        item,
        amount: need.instead.grams ? mass(need.instead.grams, style) : '',
        how,
      }),
    )
  }
  if (need.ids.every((id) => nowhere.has(id))) parts.push(words['shop.only'])
  return parts.join('; ')
}
