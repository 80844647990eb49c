import type {Range} from '../lexicon/schema.js'
import {isHeldToBake} from './baked-in.js'
import type {Section} from './section.js'
import type {ReadIngredient} from './types.js'
import {readVessel, shapeNamed, sizeHolding, type VesselSize} from './vessel.js'
import {brimVolume} from './vessel-capacity.js'
import {asStated, type SizedVessel} from './vessel-sizes.js'
import {type HeldVessel, heldAt, heldMillilitres, holdingAt, type MeasuredBy} from './vessel-volumes.js'

const read = new WeakMap<Section, readonly HeldVessel[]>()

/** The vessels a method bakes in and tells by what they hold, in its order. Those in an ingredient's words are its own. */
export function vesselsHeld(section: Section, ingredients: readonly ReadIngredient[]): readonly HeldVessel[] {
  const {tokens} = section
  let all = read.get(section)
  if (all === undefined) {
    const found: HeldVessel[] = []
    for (let at = 0; at < tokens.length; at++) {
      const held = heldAt(tokens, at) ?? holdingAt(tokens, at)
      if (held === null) continue
      at = held.to - 1
      if (!isYield(tokens, held.from) && isHeldToBake(section, held, held.row.id === BOILS)) found.push(held)
    }
    all = found
    read.set(section, all)
  }
  return all.filter(({from, to}) => !ingredients.some((one) => one.start < tokens[to - 1]!.end && tokens[from]!.start < one.end))
}
/** "Sufficient to fill a quart mould": how much it makes. */
const isYield = (tokens: Section['tokens'], at: number): boolean =>
  [1, 2].some((by) => tokens[at - by]?.word === 'fill' && tokens[at - by - 1]?.word === 'to')

/** What is boiled in, mostly. */
const BOILS = 'stewpan'

const METRIC = /litre$/
/** By so much of what it holds the quarter inches may differ that its sizes are written in; by more, and they are written in centimetres. */
const NEARLY = 0.05

/**
 * A vessel whose sizes are reckoned from what it holds, as front matter writes it: in inches, or in centimetres where that is said in litres.
 *
 * @param measure id of the measure in which it is said
 */
export function heldAsStated(size: VesselSize, measure: string): string {
  const inches = !METRIC.test(measure)
  const value = asStated(size, inches)
  const read = inches ? readVessel(value) : null
  const near = read !== null && read.ok && Math.abs(brimVolume(read.value) / brimVolume(size) - 1) <= NEARLY
  return near ? value : asStated(size, false)
}

/** The vessel a receipt's text tells by what it holds, its sides in the proportion of its kind's; null where it tells none. */
export function vesselHeld(
  section: Section,
  ingredients: readonly ReadIngredient[],
  by: MeasuredBy,
): (SizedVessel & {readonly holds: Range}) | null {
  const {tokens, source} = section
  const text = (from: number, to: number): string => source.slice(tokens[from]!.start, tokens[to - 1]!.end).replace(/\s+/g, ' ')
  for (const held of vesselsHeld(section, ingredients)) {
    const brim = heldMillilitres(held, by)
    const size =
      brim === null ? null : sizeHolding(held.row, shapeNamed(text(held.name.from, held.name.to)), brim.millilitres.likely)
    if (brim === null || size === null) continue
    return {
      value: heldAsStated(size, held.measure),
      said: text(held.from, held.to),
      depthFrom: held.row.source,
      holds: brim.millilitres,
    }
  }
  return null
}
