import {lookUpKind} from '../lexicon/index.js'
import type {Range} from '../lexicon/schema.js'
import {type KindFound, raisedBySoda} from './kinds.js'
import type {Section} from './section.js'
import type {Inferred, OvenPhrase, ReadIngredient, ReadReceipt, ReceiptFacts, TimePhrase, Yield} from './types.js'
import {readVessel} from './vessel.js'
import {vesselGuessed, vesselOfNoKind} from './vessel-guessed.js'
import {heldAsStated, vesselHeld} from './vessel-held.js'
import {thingSized, vesselStated} from './vessel-sizes.js'
import {type MeasuredBy, volumeText} from './vessel-volumes.js'

const minutes = (low: number, high: number): string => {
  const say = (m: number): string => (m >= 120 && m % 30 === 0 ? `${m / 60} h` : `${m} min`)
  return low === high ? say(low) : m60(low) && m60(high) ? `${low / 60}–${high / 60} h` : `${low}–${high} min`
}
const m60 = (m: number): boolean => m >= 120 && m % 30 === 0

/** What is known of a receipt before the gaps are filled. */
export interface Known {
  readonly section: Section
  readonly facts: ReceiptFacts
  readonly kind: KindFound | null
  readonly ingredients: readonly ReadIngredient[]
  readonly oven: readonly OvenPhrase[]
  readonly times: readonly TimePhrase[]
  readonly untimed: ReadReceipt['untimed']
  readonly serves: Yield | null
  /** By which its measures are read. */
  readonly by: MeasuredBy
}

/**
 * What the receipt leaves out and its kind of dish supplies: vessel, heat, time of baking and rising, how many it feeds. Every entry is
 * ours and says why; front matter that states the field leaves nothing to fill.
 */
export function fillFromKind(known: Known): Inferred[] {
  const {facts, kind, ingredients, oven, times, untimed = [], serves, section, by} = known
  const inferred: Inferred[] = []
  const sized =
    facts.vessel === undefined
      ? (vesselStated(section, ingredients, kind?.id ?? null) ??
        (kind === null ? null : thingSized(section, ingredients, kind.id)))
      : null
  const bakes = oven.length > 0 || times.some((time) => time.of === 'bake')
  // What is set cold in a quart mould is baked in none.
  const held =
    facts.vessel === undefined && sized === null && (kind !== null || bakes) ? vesselHeld(section, ingredients, by) : null
  const stated: Inferred[] =
    sized === null
      ? held === null
        ? heldByFacts(facts, by)
        : [{field: 'vessel', value: held.value, why: heldWhy(`the receipt says “${held.said}”`, held.holds, held.depthFrom)}]
      : [
          {
            field: 'vessel',
            value: sized.value,
            why: `the receipt says “${sized.said}”${sized.unit === undefined ? '' : `, read in ${sized.unit},`}${sized.depthFrom === null ? '' : ` and no depth; its depth: ${sized.depthFrom}`}`.replace(
              /,$/,
              '',
            ),
            ...(sized.anyDepth === undefined ? {} : {depth: 'assumed' as const}),
          },
        ]
  const row = kind === null ? null : lookUpKind(kind.id)
  if (kind === null || row === null) {
    const named = facts.vessel === undefined && bakes && stated.length === 0 ? vesselOfNoKind(section, ingredients) : null
    return named === null ? stated : [named]
  }
  inferred.push({
    field: 'kind',
    value: row.id,
    why:
      kind.by === 'items'
        ? `neither title nor text names a dish; told by its ${kind.words}`
        : `“${kind.words}” in the ${kind.by}${kind.leaven === undefined ? '' : `, raised by ${kind.leaven}`}`,
  })
  if (row.vessel === 'none') return inferred
  const from = `usual for ${row.title.toLowerCase()} (${row.source})`
  if (facts.oven === undefined && oven.length === 0) {
    inferred.push({
      field: 'oven',
      value: `${row.start.low}–${row.start.high} °C (${row.band}), best at ${row.start.best} °C`,
      why: `the receipt names no heat; ${from}`,
    })
  }
  if (facts.bake === undefined && !times.some((time) => (time.of === 'bake' || time.overnight === true) && !time.cooling)) {
    inferred.push({
      field: 'bake',
      value: minutes(row.minutes.low, row.minutes.high),
      why: times.some((time) => time.byWeight !== undefined)
        ? `the receipt gives its time by weight, and no weight of the piece; ${from}`
        : `the receipt gives no time of baking; ${from}`,
    })
  }
  if (row.dough !== undefined && !raisedBySoda(ingredients)) {
    const staged = times.some((time) => time.stage === 'rise' || time.stage === 'prove')
    for (const stage of ['rise', 'prove'] as const) {
      const lasts = row.dough[stage]
      if (lasts === 0 || facts[stage] !== undefined) continue
      if (untimed.includes(stage) || (!staged && untimed.length === 0 && facts.rise === undefined && facts.prove === undefined))
        inferred.push({
          field: stage,
          value: minutes(lasts, lasts),
          why: `the receipt gives no time ${stage === 'rise' ? 'to rise' : 'for its shaped dough to rise'}; ${from}`,
        })
    }
  }
  if (stated.length > 0) inferred.push(...stated)
  else if (facts.vessel === undefined) inferred.push(vesselGuessed(known, row, from))
  if (facts.serves === undefined && serves?.divided === true)
    inferred.push({
      field: 'serves',
      value: `${serves.low} ${serves.of}`,
      why: `the receipt states no yield, and says “${serves.text.replace(/\s+/g, ' ')}”: each piece is taken as one`,
    })
  if (facts.serves === undefined && serves === null) {
    inferred.push({
      field: 'serves',
      value: `${row.feeds.low}–${row.feeds.high} people a vessel`,
      why: `the receipt states no yield; ${from}`,
    })
  }
  return inferred
}

/** That a vessel is told by what it holds, and how its sizes come of that. */
const heldWhy = (says: string, holds: Range, source: string | null): string =>
  `${says} and no sizes; it holds ${volumeText(holds)} to the brim, and is as deep for its width as usual (${source ?? 'common-practice'})`

/** The vessel that front matter states by what it holds, with its sizes; nothing where it states none so. */
function heldByFacts({vessel}: ReceiptFacts, by: MeasuredBy): Inferred[] {
  const read = vessel === undefined ? null : readVessel(vessel, by)
  if (read === null || !read.ok || read.holds === undefined || read.measure === undefined) return []
  return [
    {
      field: 'vessel',
      value: heldAsStated(read.value, read.measure),
      why: heldWhy(`its front matter says “${vessel!}”`, read.holds, read.depthFrom ?? null),
    },
  ]
}
