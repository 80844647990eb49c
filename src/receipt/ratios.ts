import {type Draft, key} from './entries.js'
import {Exact, ONE} from './exact.js'
import {ratio} from './fixed-ratios.js'
import {measureHere, textOf, type View} from './view.js'

/**
 * Amounts that are told for so much of another thing: "to each egg a gill of milk", "half an ounce of salt to every pound of flour".
 * They are worked out where the receipt says how much there is of the other thing. Where it does not, a receipt that begins with them
 * ("to every pound of flour allow …") is one for that much of it; anywhere else they are no amounts.
 */

/** What is said of amounts of this form. */
export interface RatioTold {
  readonly start: number
  /** "half an ounce of salt", and "every pound of flour". */
  readonly words: string
  readonly base: string
  readonly item: string
  /** `one`: the receipt stands for that much of it; `unknown`: how much there is of it is not said. */
  readonly is: 'one' | 'unknown'
}

const BEFORE = new Set(['to', 'for', 'auf', 'fur', 'allow', 'allowing', 'add'])
const EACH = new Set(['every', 'each', 'jedes', 'jeden', 'jede'])
const PER = new Set(['per', 'pro'])

/** A base ("every pound of flour") and what is given for it. */
interface Base {
  readonly draft: Draft
  /** The first token of the phrase: "to", "per". */
  readonly from: number
  readonly governed: readonly Draft[]
}

/** "to the pound of flour": the name was read, and its measure stands before it. */
function toThe(view: View, draft: Draft): {from: number; measure: string} | null {
  const {words} = view
  if (draft.low !== null || words[draft.start - 1] !== 'of') return null
  for (let k = draft.start - 2; k >= draft.start - 4 && k > 1; k--) {
    const found = measureHere(view, k)
    if (found === null || found.next !== draft.start - 1) continue
    return words[k - 1] === 'the' && words[k - 2] === 'to' ? {from: k - 2, measure: found.row.id} : null
  }
  return null
}

/** Does the draft say for how much of it others are? The first token of the phrase, else −1. */
function phraseOf({words}: View, draft: Draft): number {
  if (draft.low === null || draft.low.value <= 0) return -1
  if (PER.has(words[draft.start]!)) return draft.start
  return EACH.has(words[draft.start]!) && BEFORE.has(words[draft.start - 1] ?? '') && words[draft.start - 1] !== 'add'
    ? draft.start - 1
    : -1
}

/** No receipt has more of them; each is looked for among all entries. */
const MOST = 200

const ends = (word: string): boolean => word === '.' || word === ';' || word === '!' || word === '?'

/** The clause around token `at`: tokens [from, to). */
function clauseOf({words, tokens}: View, at: number): {from: number; to: number} {
  const {block} = tokens[at]!
  let from = at
  while (from > 0 && tokens[from - 1]!.block === block && !ends(words[from - 1]!)) from--
  let to = at
  while (to < tokens.length && tokens[to]!.block === block && !ends(words[to]!)) to++
  return {from, to}
}

/** Does the phrase at `from` open its clause, or a part of it ("…, and to each egg a gill of milk")? */
function opensClause(view: View, from: number): boolean {
  const before = view.words[from - 1] ?? ''
  return !PER.has(view.words[from]!) && (from === clauseOf(view, from).from || /^(?:,|:|—|and|\(|\|)$/.test(before))
}

/** "a gill of milk to each egg": the entries that end just before the phrase at `from`. */
const justBefore = (drafts: readonly Draft[], bases: ReadonlySet<Draft>, from: number): Draft[] =>
  drafts.filter((one) => !bases.has(one) && one.low !== null && one.next <= from && from - one.next <= 2)

/** The entries behind the base in its clause, up to the next base. */
function behind(view: View, drafts: readonly Draft[], bases: ReadonlySet<Draft>, draft: Draft): Draft[] {
  const {to} = clauseOf(view, draft.start)
  const next = drafts.find((one) => bases.has(one) && one.start > draft.start && one.start < to)?.start ?? to
  return drafts.filter((one) => one.low !== null && one.start > draft.start && one.start < next)
}

/** Do both stand in the list of one part, or in one paragraph? */
const beside = ({tokens}: View, one: Draft, other: Draft): boolean =>
  one.part === other.part && (one.inList ? other.inList : tokens[one.start]!.block === tokens[other.start]!.block)

/** How many times the base there is, low and high; null where the receipt does not say. */
function times(
  view: View,
  base: Draft,
  drafts: readonly Draft[],
  left: ReadonlySet<Draft>,
): {low: Exact; high: Exact; words: Draft[]} | null {
  const parts = key(base) === 'egg' ? /^egg (?:white|yolk)$/ : null
  const same = (test: (one: Draft) => boolean): {low: Exact; high: Exact; words: Draft[]} | null => {
    let low: Exact | null = null
    let high: Exact | null = null
    const words: Draft[] = []
    // A step may say again what the list gives, or give an example of it.
    const listed = base.inList || drafts.some((one) => one.inList && one.low !== null && !left.has(one) && test(one))
    for (const one of drafts) {
      if (left.has(one) || one.low === null || one.high === null || (listed && !one.inList) || !test(one)) continue
      const share = ratio(one.measure, base.measure)
      if (share === null) continue
      low = low === null ? one.low.times(share) : low.plus(one.low.times(share))
      high = high === null ? one.high.times(share) : high.plus(one.high.times(share))
      words.push(one)
    }
    if (low === null || high === null || base.low === null) return null
    const per = Exact.of(base.low.den, base.low.num)
    return {low: low.times(per), high: high.times(per), words}
  }
  // "beat the whites of eggs to a froth, and to each egg …": others than those that were counted before.
  const isBase = (one: Draft): boolean => key(one) === key(base) || (parts?.test(one.item) ?? false)
  const near = drafts.findLast((one) => one.start < base.start && !left.has(one) && isBase(one))
  if (
    near !== undefined &&
    near.low === null &&
    drafts.some((one) => one.low !== null && isBase(one) && !beside(view, base, one))
  )
    return null
  return same((one) => key(one) === key(base)) ?? (parts === null ? null : same((one) => parts.test(one.item)))
}

/**
 * Works out the amounts that are given for so much of another thing.
 *
 * @param drafts the receipt's entries; those that are worked out are changed
 * @param tell called for every base whose whole the receipt does not say
 * @returns the entries without the bases that are no entries of their own
 */
export function withoutRatios(view: View, drafts: readonly Draft[], tell: (told: RatioTold) => void): readonly Draft[] {
  const found: Array<{draft: Draft; from: number; measure: string | null}> = []
  for (const draft of drafts) {
    const from = phraseOf(view, draft)
    if (from >= 0) found.push({draft, from, measure: null})
    else {
      const the = toThe(view, draft)
      if (the !== null) found.push({draft, ...the})
    }
  }
  if (found.length === 0 || found.length > MOST) return drafts
  const baseDrafts = new Set(found.map(({draft}) => draft))
  const bases: Base[] = []
  const claimed = new Set<Draft>()
  const add = ({draft, from, measure}: (typeof found)[number], governed: readonly Draft[]): void => {
    if (governed.length === 0) return
    if (measure !== null) Object.assign(draft, {low: ONE, high: ONE, measure, bare: false, start: from + 1})
    bases.push({draft, from, governed})
  }
  for (const one of found) {
    const {draft, from} = one
    if (opensClause(view, from) && behind(view, drafts, baseDrafts, draft).length > 0) continue
    const before = justBefore(drafts, baseDrafts, from)
    for (const given of before) claimed.add(given)
    add(one, before)
  }
  for (const one of found) {
    if (!opensClause(view, one.from) || bases.some(({draft}) => draft === one.draft)) continue
    add(
      one,
      behind(view, drafts, baseDrafts, one.draft).filter((given) => !claimed.has(given)),
    )
  }
  bases.sort((a, b) => a.from - b.from)
  const left = new Set<Draft>([...baseDrafts, ...bases.flatMap(({governed}) => governed)])
  const gone = new Set<Draft>()
  /** What begins with such an amount is a receipt for one of it; after others, it is for as much as they make. */
  const opens = (base: Base): boolean => {
    const same = (one: Draft): boolean => beside(view, base.draft, one)
    const first = bases.find(({draft}) => same(draft))
    return (
      first !== undefined &&
      key(first.draft) === key(base.draft) &&
      !drafts.some((one) => one.low !== null && !left.has(one) && one.start < first.from && same(one))
    )
  }
  const asOne = new Set(bases.filter(opens))
  for (const base of bases) {
    const {draft, from, governed} = base
    const whole = times(view, draft, drafts, left)
    const phrase = textOf(view, draft.start, draft.next).replace(/\s+/g, ' ')
    const start = view.tokens[from]!.start
    const words = textOf(view, governed[0]!.start, governed.at(-1)!.next).replace(/\s+/g, ' ')
    if (whole !== null) {
      gone.add(draft)
      const of = whole.words.map((one) => textOf(view, one.start, one.next).replace(/\s+/g, ' ')).join(' + ')
      for (const one of governed) {
        const said = textOf(view, one.start, one.next).replace(/\s+/g, ' ')
        one.low = one.low!.times(whole.low)
        one.high = one.high!.times(whole.high)
        const by = whole.low.equals(whole.high) ? whole.low.toString() : `${whole.low.toString()}–${whole.high.toString()}`
        one.notes = [...one.notes, `“${said}” is for “${phrase}”, and there is “${of}”: times ${by}`]
        one.other = undefined
      }
      continue
    }
    const one = asOne.has(base)
    tell({start, words, base: phrase, item: draft.item, is: one ? 'one' : 'unknown'})
    if (one) continue
    for (const entry of [draft, ...governed]) {
      entry.low = null
      entry.high = null
      entry.measure = 'indefinite'
      entry.measureText = ''
      entry.unknownMeasure = false
      entry.stated = undefined
      entry.bare = false
      if (entry !== draft) entry.notes = [...entry.notes, `for “${phrase}”`]
    }
  }
  return gone.size === 0 ? drafts : drafts.filter((one) => !gone.has(one))
}
