import {doughWeights} from '../lexicon/dough-weights.js'
import {lookUpMeasure} from '../lexicon/index.js'
import {span} from '../lexicon/row.js'
import {readAmount} from './amounts.js'
import {HYDRATION, percentText, wordsOf} from './baker-percent.js'
import type {BakersShare, Draft} from './entries.js'
import {Exact} from './exact.js'
import {readQuantity} from './quantities.js'
import {Phrases, type View} from './view.js'

/**
 * A formula in baker's percentages: the flour is 100 % and all else a share of its weight, whatever the sum (common practice, no source). Where
 * the receipt gives a weight anywhere, of the flour, of the dough, of a loaf or of one of the things, all weights follow from it.
 */

/** Said of a formula for which the receipt gives no weight. */
export interface FormulaTold {
  readonly start: number
  /** The first entry that is told as a share. */
  readonly words: string
}

/** How many pieces the dough makes, as the receipt says; null where it does not. */
export type PiecesMade = () => {readonly low: number; readonly high: number} | null

/** What a formula is reckoned from. */
interface Basis {
  /** Grams of flour, where that is known; else grams of all the dough. */
  readonly of: 'flour' | 'dough'
  readonly low: Exact
  readonly high: Exact
  readonly words: string
}

const FLOURS: ReadonlySet<string> = new Set(['flour', 'meal'])
/** What goes into every dough: beside flour that is weighed, one of these as a share makes a formula. */
const IN_DOUGH: ReadonlySet<string> = new Set(['liquid', 'salt', 'leaven'])
/** Flours of a formula come to so much of the whole; a part of it may be in the leaven. Common practice, no source. */
const FLOUR_SUM = span(0.4, 1, 1.02)

const flourPhrases = new Phrases(doughWeights.flour)
const wholePhrases = new Phrases(doughWeights.whole)
const piecePhrases = new Phrases(doughWeights.piece)
const leaven: ReadonlySet<string> = new Set(doughWeights.leaven)

const isFlour = ({row}: Draft): boolean => FLOURS.has(row?.group ?? '')
const sum = (all: readonly Exact[]): Exact => all.reduce((total, one) => total.plus(one), Exact.of(0))
const over = (a: Exact, b: Exact): Exact => a.times(Exact.of(b.den, b.num))

/** Billionths of a gram, in which the lexicon's figures are whole numbers. */
const BILLION = 1e9
/** Grams in what a formula is weighed by, by the lexicon's rows. */
const GRAMS: ReadonlyMap<string, Exact> = new Map(
  ['gram', 'kilogram', 'pound', 'ounce'].map((id) => [
    id,
    Exact.of(Math.round(lookUpMeasure(id)!.sizes[0]!.size.likely * BILLION), BILLION),
  ]),
)
/** Grams of an entry that is weighed; null for any other. */
function gramsOf(low: Exact | null, measure: string): Exact | null {
  const factor = GRAMS.get(measure)
  return low === null || factor === undefined ? null : low.times(factor)
}

/** How far from a weight the words stand that say what it is of, tokens. */
const NEAR = 7

/** Whether one of the phrases stands near tokens [from, to), in their clause. */
function near({words, tokens}: View, phrases: Phrases, from: number, to: number): boolean {
  const {block} = tokens[from]!
  let a = from
  while (a > 0 && from - a < NEAR && tokens[a - 1]!.block === block && !/^[.;!?]$/.test(words[a - 1]!)) a--
  let z = to
  while (z < tokens.length && z - to < NEAR && tokens[z]!.block === block && !/^[.;!?]$/.test(words[z]!)) z++
  for (let i = a; i < z; i++) {
    if (i >= from && i < to) continue
    const next = phrases.match(words, i, z)
    if (next > 0 && (next <= from || i >= to)) return true
  }
  return false
}

/** "for 2 loaves of 870 g", "für 2 Brote, Teigeinlage 1 kg": the count in the clause before a weight at `at`. */
function countBefore(view: View, at: number): {readonly low: number; readonly high: number} | null {
  const {words, tokens} = view
  for (let i = at - 1; i >= 0 && at - i <= NEAR && tokens[i]!.block === tokens[at]!.block && !/^[.;!?]$/.test(words[i]!); i--) {
    const amount = piecePhrases.match(words, i + 1, at) > 0 ? readAmount(view, i, i + 1) : null
    if (amount !== null) return {low: amount.low.value, high: amount.high.value}
  }
  return null
}

/** The weights in the text that are of no entry: of the flour, of the dough, of a loaf. */
function toldWeight(view: View, drafts: readonly Draft[], made: PiecesMade): Basis | null {
  const {tokens, words} = view
  const found: Array<Basis & {rank: number}> = []
  const taken = drafts.filter(
    (one) => one.low !== null && one.row !== null && one.row.group !== 'bread' && one.row.group !== 'made dish',
  )
  for (let i = 0; i < tokens.length; i++) {
    if (tokens[i]!.kind !== 'number' || taken.some((one) => i >= one.start && i < one.next)) continue
    let end = i
    while (end < tokens.length && tokens[end]!.block === tokens[i]!.block) end++
    const quantity = readQuantity(view, i, end)
    const low = quantity === null ? null : gramsOf(quantity.low, quantity.measure)
    const high = quantity === null ? null : gramsOf(quantity.high, quantity.measure)
    if (quantity === null || low === null || high === null || low.value <= 0) continue
    const {next} = quantity
    const times = /^[x×*]$/.test(words[i + 1] ?? '')
    const text = wordsOf(view, i, next)
    if (near(view, flourPhrases, i, next)) found.push({of: 'flour', low, high, words: text, rank: 0})
    else if (near(view, wholePhrases, i, next) && !times && !near(view, piecePhrases, i, next))
      found.push({of: 'dough', low, high, words: text, rank: 1})
    else if (near(view, piecePhrases, i, next)) {
      const pieces = times ? null : (made() ?? countBefore(view, i))
      const words =
        pieces === null ? text : `${pieces.low === pieces.high ? pieces.low : `${pieces.low}–${pieces.high}`} × ${text}`
      const count = (n: number): Exact => (Number.isInteger(n) ? Exact.of(n) : Exact.of(Math.round(n * 100), 100))
      found.push({
        of: 'dough',
        low: pieces === null ? low : low.times(count(pieces.low)),
        high: pieces === null ? high : high.times(count(pieces.high)),
        words,
        rank: 2,
      })
    }
    i = Math.max(i, next - 1)
  }
  return found.sort((a, b) => a.rank - b.rank)[0] ?? null
}

/** A weight to reckon by, rounded to what a scale shows: a tenth of a gram, below ten grams a hundredth. */
function weighable(grams: Exact): Exact {
  const steps = grams.value < 10 ? 100 : 10
  return Exact.of(Math.round(grams.value * steps), steps)
}

/** The members of one formula: entries told as shares, and those that have a weight beside one. */
interface Formula {
  readonly shares: readonly Draft[]
  readonly weighed: readonly Draft[]
}

const all = ({shares, weighed}: Formula): Draft[] => [...shares, ...weighed]
const flourOf = (formula: Formula): number =>
  all(formula).reduce((total, one) => total + (isFlour(one) ? one.percent!.low.value : 0), 0)

/** Is that a formula, and not the fat of a cheese? `plain` are the weighed entries without a percentage. */
function isFormula(formula: Formula, plain: readonly Draft[]): boolean {
  const flour = flourOf(formula)
  if (flour > 0) return all(formula).length > 1 && flour >= FLOUR_SUM.low && flour <= FLOUR_SUM.high
  const doughs = formula.shares.filter(({row}) => IN_DOUGH.has(row?.group ?? ''))
  // "Water 70 %, salt 2 %" with no flour named: a formula all the same.
  return doughs.length > (plain.some(isFlour) ? 0 : 1)
}

/** Grams of flour by an entry with both, or by the flours that are only weighed; `gone` is told what of them is no entry of its own. */
function ownBasis(view: View, formula: Formula, plain: readonly Draft[], gone: Set<Draft>): Basis | null {
  const flours = formula.weighed.filter(isFlour)
  const both = flours.length > 0 ? flours : formula.weighed.slice(0, 1)
  if (both.length > 0) {
    const share = sum(both.map(({percent}) => percent!.low))
    const low = over(sum(both.map((one) => gramsOf(one.low, one.measure)!)), share)
    const high = over(sum(both.map((one) => gramsOf(one.high, one.measure)!)), share)
    return {
      of: 'flour',
      low,
      high,
      words: both.map((one) => wordsOf(view, one.start, one.next).replaceAll(' | ', ' ')).join(' + '),
    }
  }
  const whole = formula.shares.some(isFlour)
  const weighed = plain.filter(isFlour)
  // "Flour 100 % … Use 1 kg of flour": the same flour, said once more.
  const taken = whole ? weighed.slice(0, 1) : weighed
  if (taken.length === 0) return null
  if (whole) gone.add(taken[0]!)
  return {
    of: 'flour',
    low: sum(taken.map((one) => gramsOf(one.low, one.measure)!)),
    high: sum(taken.map((one) => gramsOf(one.high, one.measure)!)),
    words: taken.map((one) => wordsOf(view, one.start, one.next)).join(' + '),
  }
}

/** Sets the weights of a formula's shares. In a range of all the dough, what is low of one thing is of the highest of all others. */
function reckon(formula: Formula, basis: Basis): void {
  const total = (others: readonly Draft[], end: keyof BakersShare): Exact => sum(others.map(({percent}) => percent![end]))
  const members = all(formula)
  for (const one of formula.shares) {
    const {low, high} = one.percent!
    if (basis.of === 'flour') {
      one.low = weighable(basis.low.times(low))
      one.high = weighable(basis.high.times(high))
    } else {
      const others = members.filter((other) => other !== one)
      one.low = weighable(over(basis.low.times(low), low.plus(total(others, 'high'))))
      one.high = weighable(over(basis.high.times(high), high.plus(total(others, 'low'))))
    }
    one.measure = 'gram'
    one.measureText = ''
    one.bare = false
    one.percentOf = basis.words
    one.notes = [
      ...one.notes,
      basis.of === 'flour'
        ? `${percentText(one.percent!)} of the weight of the flour, reckoned from “${basis.words}”`
        : `${percentText(one.percent!)} of the weight of the flour, reckoned from “${basis.words}” of dough in all`,
    ]
  }
}

/** A share that turns out to be none: the name stays, as it would have been read without it. */
function undo(view: View, one: Draft): void {
  one.notes = [...one.notes, wordsOf(view, one.start, one.next)]
  one.percent = undefined
  one.confidence = Math.min(one.confidence, 0.6)
}

/**
 * Reckons the weights of what is told in baker's percentages.
 *
 * @param drafts the receipt's entries; those told as shares are changed
 * @param made how many pieces the dough makes
 * @param tell called for every formula for which the receipt gives no weight
 * @returns the entries without those that only say the weight to reckon from
 */
export function withFormula(
  view: View,
  drafts: readonly Draft[],
  made: PiecesMade,
  tell: (told: FormulaTold) => void,
): readonly Draft[] {
  const hydrations = drafts.filter(({notes}) => notes.includes(HYDRATION))
  // "Water 700 g … Hydration 70 %": the same water, said once more.
  const again = hydrations.length > 0 && drafts.some((one) => isWater(one) && !hydrations.includes(one))
  const gone = new Set<Draft>(again ? hydrations : [])
  const percents = drafts.filter((one) => one.percent !== undefined && !gone.has(one))
  const shares = percents.filter((one) => one.low === null)
  if (shares.length === 0) return gone.size === 0 ? drafts : drafts.filter((one) => !gone.has(one))
  const isWeighed = (one: Draft): boolean => one.low !== null && one.low.value > 0 && gramsOf(one.low, one.measure) !== null
  const plain = drafts.filter((one) => one.percent === undefined && isWeighed(one) && lookUpMeasure(one.measure) !== null)
  const of = (members: readonly Draft[]): Formula => ({
    shares: members.filter((one) => one.low === null),
    weighed: members.filter(isWeighed),
  })
  const parts = [...new Set(shares.map(({part}) => part))]
  const byPart = parts.map((part) => of(percents.filter((one) => one.part === part)))
  const apart = parts.length > 1 && byPart.filter((one) => flourOf(one) >= 0.99).length > 1
  const formulas = apart ? byPart : [of(percents)]
  // The dough first: what its leaven weighs is what the leaven's own formula comes to.
  formulas.sort((a, b) => b.shares.filter(isLeaven).length - a.shares.filter(isLeaven).length)
  const done: Draft[] = []
  for (const formula of formulas) {
    const here = plain.filter(({part}) => all(formula).some((one) => one.part === part))
    if (!isFormula(formula, here)) {
      for (const one of formula.shares) {
        undo(view, one)
        if (hydrations.includes(one) || (!one.inList && isWater(one))) gone.add(one)
      }
      continue
    }
    const leavenOf = apart ? done.find((one) => isLeaven(one) && one.part !== formula.shares[0]!.part) : undefined
    const basis =
      ownBasis(view, formula, here, gone) ??
      (leavenOf === undefined
        ? toldWeight(view, drafts, made)
        : {of: 'dough' as const, low: leavenOf.low!, high: leavenOf.high!, words: wordsOf(view, leavenOf.start, leavenOf.next)})
    if (basis === null) {
      const first = formula.shares[0]!
      tell({start: view.tokens[first.start]!.start, words: wordsOf(view, first.start, first.next)})
      for (const one of formula.shares) one.bare = false
      continue
    }
    reckon(formula, basis)
    if (leavenOf !== undefined) gone.add(leavenOf)
    done.push(...formula.shares)
  }
  return gone.size === 0 ? drafts : drafts.filter((one) => !gone.has(one))
}

const isWater = ({row}: Draft): boolean => row?.id === 'water'
const isLeaven = ({item, row}: Draft): boolean => leaven.has(item) || leaven.has(row?.id ?? '')
