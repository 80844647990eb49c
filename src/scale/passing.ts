import Fraction from 'fraction.js'
import type {Receipt} from '../receipt/types.js'
import type {VesselSize} from '../receipt/vessel.js'
import {brimVolume, topArea} from '../receipt/vessel-capacity.js'
import type {Filled, Order} from './order.js'
import {filledWith} from './own-vessel.js'
import {centimetres, sizes} from './reason-figures.js'
import type {Sizing} from './sizing.js'
import type {DayAmount, Dish} from './types.js'
import {isFree, isSheet, spreadOf, vesselOf} from './vessel.js'
import {CENTIMETRE, INCH, inInches, vesselWritten} from './vessel-written.js'

/** The way out for a vessel that does not go into the oven: its own shape, made small enough, and the line of the day that asks for it. */

/** No side is made less than this share of the vessel's own: below, it is another dish. Common practice, no source. */
const SMALLEST = 0.5

/** Vessels that hold much as theirs did take so much more than their share before there is one more of them. Common practice, no source. */
const FULLER = 1.1

/** Sizes from a vessel's own downwards, in whole units, metres. */
function downFrom(own: number, unit: number): number[] {
  const out = [own]
  for (let n = Math.floor(own / unit - 1e-6); n * unit >= SMALLEST * own && n > 0; n--) out.push(n * unit)
  return out
}

/** How much of a mixture a size takes beside another of its shape: what stands on a sheet goes by its area. */
const roomOf = (size: VesselSize): number => (isSheet(size) ? topArea(size) : brimVolume(size))

/**
 * The largest vessel of a shape that goes in, no side longer than the given one's and none less than half of it.
 *
 * @param size the vessel that does not go in, metres
 * @param inches whether its sizes are whole inches, else whole centimetres
 * @param goesIn whether one of a size passes the mouth and stands on the floor
 * @returns Null where none so large goes in.
 */
function passingSize(size: VesselSize, inches: boolean, goesIn: (size: VesselSize) => boolean): VesselSize | null {
  const unit = inches ? INCH : CENTIMETRE
  const {across, length = 0, width = 0, height} = size
  if (isFree(size)) {
    const sizes = downFrom(across ?? 0, unit).map((less) => ({...size, across: less, height: (height * less) / (across ?? 1)}))
    return sizes.find(goesIn) ?? null
  }
  const [long, narrow] = [Math.max(length, width), Math.min(length, width)]
  const deep = isSheet(size) ? [height] : downFrom(height, unit)
  const wide = downFrom(across ?? narrow, unit)
  const far = across !== undefined || size.shape === 'square' ? null : downFrom(long, unit)
  const made = (h: number, w: number, l: number): VesselSize => ({
    shape: size.shape,
    height: h,
    ...(across === undefined ? {length: l, width: w} : {across: w}),
  })
  let best: VesselSize | null = null
  for (const h of deep)
    for (const w of wide) {
      const all = (far ?? [w]).filter((l) => l >= w).map((l) => made(h, w, l))
      const better = all.filter((one) => best === null || roomOf(one) > roomOf(best) * (1 + 1e-9))
      // Where the shortest of them does not go in, no longer one does.
      if (better.length === 0 || !goesIn(all.at(-1)!)) continue
      best = better.find(goesIn) ?? best
    }
  return best
}

/** How many of a smaller vessel hold what so many of the larger do, as full. */
function asManyOf(smaller: VesselSize, own: VesselSize, count: number): number {
  return Math.max(1, Math.ceil((count * roomOf(own)) / roomOf(smaller) / FULLER - 1e-9))
}

/** What must not be said of a line that is offered as a way out. */
const noWay: ReadonlySet<string> = new Set(['scale-mouth', 'scale-full', 'scale-thin'])
/** As many of a smaller vessel as hold what was asked for, and one or two more where so many are too full. */
const moreVessels = [0, 1, 2] as const
/** How much more or less than was asked for is as much, as a share: a vessel comes whole. Common practice, no source. */
const asMuch = 0.15

/** An order in a vessel that does not go into the oven; `order` null of what is to fill the floor. */
type NotIn = Pick<Filled, 'item' | 'asked' | 'vessels'> & {readonly order: Order | null}

/** The line of the day that goes in, and the dishes it makes. */
type WayIn = Omit<NonNullable<Dish['instead']>, 'of'>

/** What the day would make of another line: its dishes, and the rules of what it would say. */
export type TryLine = (
  line: DayAmount,
  receipt: Receipt,
  sizing: Sizing,
) => {readonly dishes: readonly Dish[]; readonly rules: readonly string[]}

/**
 * The line of the day by which as much is baked in vessels of the same shape that go in, and the dishes it makes. Each line is taken as the
 * day would have it.
 *
 * @returns null where the shape would have to be less than half as large, and of a line that is itself such a way out
 */
export function wayIn(notIn: NotIn, sizing: Sizing, tryLine: TryLine): WayIn | null {
  if (sizing.tried) return null
  const {asked, order, vessels} = notIn
  const {receipt, kind, shape, made, feedsEach} = vessels
  const people = asked.kind === 'people' ? asked.people / feedsEach.likely : null
  // How many of the vessel, as full as they are, and how many times the receipt that is.
  const many = people ?? order?.count ?? null
  const times = people === null ? (order?.times.valueOf() ?? 0) : made.timesEach.valueOf() * people
  const own = isFree(shape.size) ? spreadOf(shape.size, made.each / filledWith(shape, kind)) : shape.size
  const inches = inInches(shape.name)
  const size = passingSize(own, inches, (one) => sizing.fits(vesselOf(one, 1, shape.name), 1) > 0)
  if (size === null) return null
  const {amountAt: _, ...line} = notIn.item
  // What goes in whole is not divided among more vessels than there are of it.
  const least = shape.whole !== undefined && many !== null ? Math.max(1, Math.ceil(many - 1e-9)) : asManyOf(size, own, many ?? 1)
  for (const more of moreVessels) {
    const count = least + more
    const vessel = vesselWritten(size, inches, count > 1 && many !== null)
    const amounts = many === null ? [`fill the floor in ${vessel}`] : linesFor(notIn, sizing.day.people, times, count, vessel)
    for (const amount of amounts) {
      const {dishes, rules} = tryLine({...line, amount}, receipt, sizing)
      const makes = dishes.reduce((sum, dish) => sum + new Fraction(dish.times).valueOf(), 0)
      if (dishes.length > 0 && !rules.some((rule) => noWay.has(rule)) && (many === null || Math.abs(makes / times - 1) <= asMuch))
        return {amount, dishes}
    }
  }
  return null
}

/** How a day's line may ask for as much in so many of another vessel: in its own words where they name none, else by number or by weight. */
function linesFor({item, asked, vessels: {mass}}: NotIn, people: number, times: number, count: number, vessel: string): string[] {
  const own = item.amount === null || item.amount.trim() === '' ? `for ${people}` : item.amount.trim()
  const sized = asked.vessel !== undefined || asked.among !== undefined || (asked.kind === 'count' && asked.across !== undefined)
  return [
    ...(sized ? [] : [`${own} in ${count} ${vessel}`]),
    ...(sized && asked.kind === 'count' && asked.among === undefined ? [`${count} ${vessel}`] : []),
    ...(mass === null ? [] : [`${Math.round(100 * mass.likely * times) / 100} kg in ${count} ${vessel}`]),
  ]
}

/** That a vessel does not go into the oven (`scale-mouth`), with the line of the day that does instead; null where none is found. */
export function sayDoesNotGoIn(filled: Filled, sizing: Sizing, tryLine: TryLine): WayIn | null {
  const {vessel, vessels} = filled
  const {mouth, say} = sizing
  const way = wayIn(filled, sizing, tryLine)
  const [wide, high] = [mouth.width, mouth.height].map(centimetres)
  say(
    'warning',
    'scale-mouth',
    `${vessel.name} does not go into this oven: ${sizes(vessel)}, and the mouth, the vault or the floor is smaller`,
    way === null && vessels.shape.whole !== undefined
      ? `what goes in whole is as high in any tin: take a smaller one, or cut it up and write that in the receipt`
      : way === null
        ? `name a vessel less than ${wide} wide and ${high} high behind the amount, or state it in the receipt’s front matter`
        : `write “${way.amount}” behind its link, which goes in and holds as much; or name another vessel less than ${wide} wide and ${high} high`,
  )
  return way
}
