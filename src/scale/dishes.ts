import type {OvenSpec} from '../oven/types.js'
import type {Message, Receipt} from '../receipt/types.js'
import type {Asked} from './amount-phrase.js'
import {batchesOf} from './batches.js'
import {spoilsWarm} from './cold-rise.js'
import {askedOf} from './counted.js'
import {dishOf} from './dish.js'
import {doughOf} from './dough-stages.js'
import {capacityOf, packFloor} from './floor.js'
import {type InVessels, inVessels} from './in-vessels.js'
import {type KindFigures, kindOf} from './kind-figures.js'
import {receiptOf} from './linked-receipt.js'
import {heatNeed} from './need.js'
import {filledWithOrder, type Order, orderAmong, orderOf, wholePiecesOf} from './order.js'
import {sayDoesNotGoIn, type TryLine, wayIn} from './passing.js'
import {sizeNotes} from './size-notes.js'
import type {Fits, Say, Sizing} from './sizing.js'
import {timedByDepth} from './time-by-depth.js'
import {sayTooFull} from './too-full.js'
import type {DayAmount, DayToScale, Dish, FloorRoom, FloorRules} from './types.js'
import {inNamedVessel} from './unsized-vessel.js'

/** What `makeDishes` reads. */
export interface ToScale {
  readonly day: DayToScale
  readonly receipts: readonly Receipt[]
  readonly oven: Pick<OvenSpec, 'floor' | 'mouth' | 'vaultHeight' | 'ashBed'> & {readonly rules?: Partial<FloorRules>}
}

export interface Dishes {
  readonly dishes: readonly Dish[]
  /** Receipts to fill idle hot floor with. */
  readonly spare: readonly Dish[]
  /** The line of the day that asks for each, by their ids. */
  readonly lines: ReadonlyMap<string, DayAmount>
  readonly messages: readonly Message[]
}

/**
 * Turn a day's list into dishes: whole vessels of each receipt, what to weigh out, what it needs of the oven.
 *
 * A dish is never more than the mixing bowl (`bowl` of the day) or the floor holds at once; a larger order becomes several, ids
 * `household-bread`, `household-bread-2`, ….
 *
 * @param input the day, its receipts as translated (matched by file, and by title where a file holds several), and the oven
 * @returns dishes in the order of the day; messages of rules `scale-amount`, `scale-receipt`, `scale-kind`, `scale-not-baked`,
 *   `scale-vessel`, `scale-full`, `scale-thin`, `scale-mouth`, `scale-weight`, `scale-salt`, `scale-bowl`, `scale-noun`, `scale-shape`, `scale-size`, `scale-spoils`, `scale-alike`. A dish with an error is left out.
 */
export function makeDishes(input: ToScale): Dishes {
  const messages: Message[] = []
  const used = new Map<string, number>()
  const lines = new Map<string, DayAmount>()
  const {ashBed} = input.oven
  const room: FloorRoom = {...input.oven, ...(ashBed === undefined ? {} : {rules: {ashBed, ...input.oven.rules}})}
  const fits = fitsOn(room)
  const sayOf =
    (item: DayAmount): Say =>
    (severity, rule, reason, suggest, where) => {
      const {line, column} = where ?? item
      messages.push({
        file: input.day.source ?? 'day.md',
        line,
        column,
        severity,
        rule,
        reason,
        ...(suggest === undefined ? {} : {suggest}),
      })
    }
  const all = (items: readonly DayAmount[]): Dish[] =>
    items.flatMap((item) => {
      const say = sayOf(item)
      const found = receiptOf(item, input.receipts, say)
      const made =
        found === null
          ? []
          : dishesOf(item, found.receipt, {day: input.day, mouth: room.mouth, fits, used, say, name: found.name})
      for (const {id} of made) lines.set(id, item)
      return made
    })
  sayAlike(input.day.items, sayOf)
  return {dishes: all(input.day.items), spare: all(input.day.spare), lines, messages}
}

/** Lines of the day that go by one name, which nobody could tell apart in its hours (`scale-alike`). */
function sayAlike(items: readonly DayAmount[], sayOf: (item: DayAmount) => Say): void {
  items.forEach((item, i) => {
    const before = items.slice(0, i).find(({title}) => title === item.title)
    if (item.title === '' || item.had !== undefined || before === undefined) return
    sayOf(item)(
      'warning',
      'scale-alike',
      `two lines are called “${item.title}”, and the plan tells them apart by their hours and loads only`,
      `give each link a text of its own, such as “[${item.title}${toTell(item, before)}]”`,
      item.targetAt,
    )
  })
}

/** What a cook would call the second of two: by whom it feeds, else as another batch. A vessel with its sizes is no name. */
function toTell({amount}: DayAmount, before: DayAmount): string {
  if (amount === before.amount) return ' for the evening'
  return amount !== null && /^(?:for|für) \d+$/.test(amount.trim()) ? ` ${amount.trim()}` : ', second batch'
}

/** How many of a vessel stand on the empty floor; each is looked for once. */
function fitsOn(room: FloorRoom): Fits {
  const known = new Map<string, number>()
  return (vessel, wanted) => {
    const key = `${wanted} ${vessel.height} ${JSON.stringify(vessel.footprint)}`
    const before = known.get(key)
    if (before !== undefined) return before
    const alike = Array.from({length: Math.min(wanted, 500)}, (_, i) => ({
      dish: vessel.name,
      number: i + 1,
      footprint: vessel.footprint,
      height: vessel.height,
      out: 1,
    }))
    const all =
      wanted === Number.POSITIVE_INFINITY
        ? null
        : packFloor({...room, items: alike}, {effort: wanted <= 24 ? 'full' : 'quick', moves: false})
    const found =
      all !== null && 'placed' in all ? wanted : capacityOf(room, vessel, wanted === Number.POSITIVE_INFINITY ? 'full' : 'quick')
    known.set(key, found)
    return found
  }
}

/** The dishes of one line of the day: none where it cannot be baked as it is asked for, which is told. */
function dishesOf(item: DayAmount, receipt: Receipt, sizing: Sizing): readonly Dish[] {
  const {say} = sizing
  const read = askedOf(item, receipt, sizing)
  if (read === null) return []
  const kind = kindOf(receipt, say)
  if (isNotBaked(receipt, kind, say)) return []
  const asked = inNamedVessel(item, read, receipt, kind, say)
  const vessels = inVessels(item, asked, receipt, kind, sizing)
  const order = vessels && ordered(item, asked, vessels, sizing)
  if (vessels === null || order === null) return []
  const filled = filledWithOrder(item, asked, vessels, order)
  const fits = sizing.fits(filled.vessel, order.count)
  // It stays in the plan, so that the planner names it among those it cannot place.
  const way = fits === 0 ? sayDoesNotGoIn(filled, sizing, tryLine) : null
  sayTooFull(filled, say)
  const base = heatNeed(receipt, kind, kind.title.toLowerCase())
  const {inferred, sized} = sizeNotes(filled, base.inferred)
  const dough = doughOf(receipt, kind)
  const timed = timedByDepth(base, dough, filled, say)
  const more = {...filled, order: {...order, count: order.count - (item.had ?? 0)}}
  const batches = batchesOf(more, fits, sizing)
  if (batches === null) return []
  sayTooWarm(receipt, dough, say)
  const {counts, atOnce} = batches
  const notes = {inferred, sized: [...sized, ...timed.notes, ...batches.notes]}
  const dishes = counts.map((count, i) =>
    dishOf({filled, timed, notes, dough, count, number: i + 1, of: counts.length, atOnce}, sizing),
  )
  if (way === null) return dishes
  const instead = {...way, of: dishes.map(({id}) => id)}
  return dishes.map((dish) => ({...dish, instead}))
}

/** A dough that would spoil in the waits that its receipt gives it (`scale-spoils`). */
function sayTooWarm({title}: Receipt, dough: Dish['dough'], say: Say): void {
  const warm = dough === null ? null : spoilsWarm(title, dough)
  if (warm !== null) say('warning', 'scale-spoils', warm.reason, warm.suggest)
}

/** What comes into no oven is left out, unless its receipt states the vessel, the heat and the time (`scale-not-baked`): its kind has none. */
function isNotBaked(receipt: Receipt, kind: KindFigures, say: Say): boolean {
  const {vessel, oven, bake} = receipt.facts
  if (kind.vessel !== 'none' || (vessel !== undefined && oven !== undefined && bake !== undefined)) return false
  say(
    'warning',
    'scale-not-baked',
    `“${receipt.title}” is not baked (${kind.title.toLowerCase()}); left out of the plan`,
    'state vessel, oven and bake in its front matter if it is',
  )
  return true
}

/** How many vessels that makes; null where it cannot be told, or what is to fill the floor does not go in (`scale-amount`). */
function ordered(item: DayAmount, asked: Asked, vessels: InVessels, sizing: Sizing): Order | null {
  const {made, vesselAt} = vessels
  const {fits, say} = sizing
  const order = orderOf(asked, vessels, () => fits(vesselAt(made.each), Number.POSITIVE_INFINITY), item)
  if ('reason' in order) {
    const way =
      asked.kind === 'floor' && order.suggest === undefined ? wayIn({item, asked, vessels, order: null}, sizing, tryLine) : null
    const suggest = way === null ? order.suggest : `write “${way.amount}”, which goes in`
    say('error', 'scale-amount', order.reason, suggest, item.amountAt?.[0])
    return null
  }
  return wholePiecesOf(asked, asked.among === undefined ? order : orderAmong(asked, asked.among.count, order, vessels), vessels)
}

/** What the day would make of a line that is offered as the way out of another. */
const tryLine: TryLine = (line, receipt, sizing) => {
  const rules: string[] = []
  const dishes = dishesOf(line, receipt, {
    ...sizing,
    used: new Map(sizing.used),
    tried: true,
    say: (severity, rule) => void rules.push(severity === 'error' ? 'scale-mouth' : rule),
  })
  return {dishes, rules}
}
