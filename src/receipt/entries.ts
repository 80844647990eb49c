import {lookUpItem} from '../lexicon/index.js'
import type {Item} from '../lexicon/schema.js'
import type {StatedWeight} from '../measure/convert.js'
import {hasPercent} from './baker-percent.js'
import type {LackingPart} from './egg-parts.js'
import type {Exact} from './exact.js'
import {ARTICLE, CARDINAL, DESCRIBES, ENDER, FRACTION, itemHere, type View} from './view.js'

/**
 * The entries of a receipt while it is being read.
 */

/** A baker's percentage as a share: 70 % is 7/10. */
export interface BakersShare {
  readonly low: Exact
  readonly high: Exact
}

/** An entry while the receipt is being read. Token indices; `next` is the token after it. */
export interface Draft {
  start: number
  next: number
  low: Exact | null
  high: Exact | null
  measure: string
  measureText: string
  item: string
  row: Item | null
  known: boolean
  hedges: string[]
  prepared: string
  part: string
  confidence: number
  notes: string[]
  other: {reading: string; settle: string} | undefined
  /** What the text says it weighs, beside its count or measure. */
  stated: StatedWeight | undefined
  /** How many of it there are by what the text says of others, where it gives no amount. */
  reckoned: Exact | undefined
  /** Eggs of which some whites or yolks are left out. */
  lacks: LackingPart | undefined
  /** The share of the flour's weight that the text gives for it, 1 for 100 %. */
  percent: BakersShare | undefined
  /** The words of the weight that its amount was reckoned from. */
  percentOf: string | undefined
  /** A name without any word of amount: an entry only if nothing else in the receipt says how much. */
  bare: boolean
  inList: boolean
  /** `measureText` is a word that no row knows, and `measure` is `count` for want of it. */
  unknownMeasure: boolean
}

/** What is being read: a list, the prose of a receipt that has no list, or the method beside a list. */
export type Mode = 'list' | 'prose' | 'method'

/** What says that two entries are the same thing: the lexicon's row, or the words. */
export const key = (one: {readonly item: string; readonly row: Item | null}): string =>
  one.row === null ||
  / (?:juice|rind|pulp|yolk|white|crumb)$/.test(one.item) ||
  one.item.includes(' of ') ||
  one.item.includes(' and ')
    ? one.item
    : one.row.id

/** The names that mean another item where there are so many of them; `inFigures`: their number is written so. */
export function namesCounted(
  {spellings, from = 0, single = []}: NonNullable<Item['counted']>,
  low: Exact | null,
  inFigures: boolean,
): readonly string[] {
  if (from === 0 || (low !== null && low.value >= from)) return spellings
  return low?.value === 1 && inFigures ? single : []
}

/** What is meant where a spice is counted by a name that is a vegetable's too: "2 red peppers". */
function nameCounted(view: View, draft: Draft, counted: NonNullable<Item['counted']>): void {
  const {item} = counted
  const meant = namesCounted(counted, draft.low, view.tokens[draft.start]!.kind === 'number')
  if (meant.length === 0) return
  for (let i = draft.start; i < draft.next; i++) {
    const found = itemHere(view, i)
    if (found === null || found.row !== draft.row) {
      // "2 grinds pepper": an unknown word before it may be what is counted.
      if (view.tokens[i]!.kind === 'word' && (view.bits[i]! & (DESCRIBES | CARDINAL | FRACTION | ARTICLE | ENDER)) === 0) return
      continue
    }
    if (meant.includes(view.words.slice(i, found.next).join(' '))) {
      draft.item = item
      draft.row = lookUpItem(item)
    }
    return
  }
}

/** The entries of one receipt as they are read, and what of those before counts for the next. */
export class Entries {
  /** In the order in which they were read. */
  readonly drafts: Draft[] = []
  /** Names of entries that are no mere mention, and the last amount of each. */
  private readonly present = new Set<string>()
  readonly amounts = new Map<string, Draft>()
  /** The part of the dish that is being read ("crust"); '' for the whole. */
  part = ''
  /** The last definite amount and measure, for "the same of", "ditto", "two of rose-water". */
  last: Draft | null = null
  /** The receipt has a list of ingredients. */
  listed = false
  /** The block of the run-in list being read; −1 outside one. */
  runInBlock = -1

  /** A percentage stands in the text. */
  readonly percents: boolean

  constructor(readonly view: View) {
    this.percents = hasPercent(view)
  }

  /** Adds an entry; what is not said of it is as for a known item without an amount. */
  push(draft: Partial<Draft> & Pick<Draft, 'start' | 'next' | 'item'>, mode: Mode): Draft {
    // Field by field: a spread over so many shapes costs more than all the rest of an entry.
    const full: Draft = {
      start: draft.start,
      next: draft.next,
      item: draft.item,
      low: draft.low ?? null,
      high: draft.high ?? null,
      measure: draft.measure ?? 'indefinite',
      measureText: draft.measureText ?? '',
      row: draft.row ?? null,
      known: draft.known ?? true,
      hedges: draft.hedges ?? [],
      prepared: draft.prepared ?? '',
      part: draft.part ?? this.part,
      confidence: draft.confidence ?? 0.95,
      notes: draft.notes ?? [],
      other: draft.other,
      stated: draft.stated,
      reckoned: draft.reckoned,
      lacks: draft.lacks,
      percent: draft.percent,
      percentOf: draft.percentOf,
      bare: draft.bare ?? false,
      inList: draft.inList ?? mode === 'list',
      unknownMeasure: draft.unknownMeasure ?? false,
    }
    const counted = full.row?.counted
    if (counted !== undefined && full.measure === 'count' && full.measureText === '' && !full.unknownMeasure)
      nameCounted(this.view, full, counted)
    this.drafts.push(full)
    if (!full.bare) this.present.add(key(full))
    if (full.low !== null) {
      this.last = full
      this.amounts.set(key(full), full)
    }
    return full
  }

  /** Is the item of this name among the entries already? */
  has(item: string): boolean {
    return this.present.has(item)
  }

  /** A name for a part that has none: its number. */
  nextPart(): string {
    const parts = new Set(this.drafts.map((d) => d.part))
    return `${parts.size + 1}`
  }
}
