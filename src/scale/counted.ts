import {asked as words} from '../lexicon/asked-words.js'
import {fold, foldAll, kinds, lookUpKind, lookUpMeasure} from '../lexicon/index.js'
import {vessels} from '../lexicon/vessels.js'
import {germanYields, statedWords} from '../lexicon/yield-words.js'
import {fold as plainFold} from '../receipt/section.js'
import type {Receipt} from '../receipt/types.js'
import {type Asked, readAsked} from './amount-phrase.js'
import {countedItem, isBoughtByThePiece} from './counted-item.js'
import {pluralOf} from './kitchen.js'
import {countsPeople} from './makes.js'
import type {Shape} from './own-vessel.js'
import type {Say, Sizing} from './sizing.js'
import type {DayAmount} from './types.js'
import {isSheet} from './vessel.js'
import {wholeOf} from './whole-piece.js'

/**
 * What a line of the day asks of a receipt.
 *
 * @returns null where that cannot be read, or is a weight of nothing that is baked (`scale-amount`); a noun not known here and a size without
 *   a figure are told and passed over (`scale-noun`, `scale-size`)
 */
export function askedOf(item: DayAmount, receipt: Receipt, {day, say}: Sizing): Asked | null {
  const silent = item.amount === null || item.amount.trim() === ''
  const uneaten = receipt.kind !== null && lookUpKind(receipt.kind)?.uneaten === true
  // Of what nobody eats, where no amount is stated, as much as the receipt says.
  const read = readAsked(silent && uneaten ? '1 times' : item.amount, day.people, madeOf(receipt))
  if (!read.ok) {
    say('error', 'scale-amount', read.reason, read.suggest, item.amountAt?.[read.word ?? 0] ?? item.amountAt?.[0])
    return null
  }
  const asked = read.value
  if (asked.kind === 'weight' && asked.baked !== undefined && !comesOut(asked.baked, receipt, item)) {
    say(
      'error',
      'scale-amount',
      `“${asked.baked}” is nothing that comes out of the oven here`,
      'write the weight of the dough or mixture as “6 lb of dough”, or of what is baked as “6 lb of bread”',
      item.amountAt?.[item.amountAt.length - asked.baked.split(' ').length],
    )
    return null
  }
  if (asked.kind !== 'count') return asked
  sayUnknownNoun(asked.of, asked.count, receipt, item, say)
  if (asked.each === undefined) saySize(asked.of, receipt, item, say)
  return asked
}

/** That a noun is none known here, and what the number before it is taken for. */
function sayUnknownNoun(of: string, count: number, receipt: Receipt, item: DayAmount, say: Say): void {
  const odd = unknownNoun(of, receipt, item)
  if (odd === null) return
  const from = (item.amountAt?.length ?? 0) - of.split(' ').length
  say(
    'warning',
    'scale-noun',
    `“${odd.word}” is nothing that is counted here; taken as ${count} of what the receipt makes`,
    'write the vessel or the piece, such as “8 loaves” or “2 crocks”, and “wanted by” before a time',
    item.amountAt?.[from + odd.place],
  )
}

/**
 * What an order counts: vessels; what the receipt makes many of in one, such as rolls; or what a vessel is cut into. In anything but a sheet,
 * what is no cut and not what the receipt itself counts is a vessel: “2 cakes”; of what takes several vessels it is one of those made.
 *
 * @param apiece how many vessels one of what the receipt makes takes, where that is told
 */
export function countedAs(of: string, receipt: Receipt, shape: Shape, apiece?: number): 'vessels' | 'pieces' | 'cut' {
  const [head = ''] = of.split(' of ')
  const said = head.split(' ').pop() ?? ''
  const noun = fold(germanYields.get(plainFold(said)) ?? said)
  if (words.vessel.has(noun)) return 'vessels'
  if (words.cut.has(noun)) return 'cut'
  if (isSheet(shape.size)) return 'pieces'
  if (apiece !== undefined) return words.layer.has(noun) ? 'vessels' : 'pieces'
  const {serves} = receipt
  // “48 brownies” of “Brownies”, “Yield: 16 squares”: what the tin is cut into goes by the title's name.
  const title =
    receipt.title
      .split(/[^\p{L}]+/u)
      .filter((word) => word !== '')
      .pop() ?? ''
  if (receipt.kind === 'tray cakes' && noun === fold(title) && title.endsWith('s')) return 'cut'
  // “24 custards” of “Custards”, of which “ten cups” stand in a pan.
  const small = serves !== null && words.smallVessel.has(fold(serves.of))
  if (small && receipt.title.split(/[^\p{L}]+/u).some((word) => word.endsWith('s') && fold(word) === noun)) return 'pieces'
  // “Makes 20” counts what the receipt is called, whatever the day calls it.
  const unnamed = serves !== null && serves.of === 'pieces' && !/piece/i.test(serves.text)
  return unnamed || noun === fold(serves?.of.split(' ').pop() ?? '') ? 'pieces' : 'vessels'
}

/** What a day's line counts of a receipt, as it would write several of them. */
export function madeOf({serves, title}: Receipt): string {
  const said = serves === null || countsPeople(serves.of) ? '' : serves.of
  // “Makes 24.” of “Shortbread fingers”
  const named = (title.toLowerCase().match(/\p{L}+/gu) ?? []).at(-1) ?? ''
  if ((said === '' || said === 'pieces') && named.endsWith('s') && countedNouns().has(fold(named))) return named
  if (said === '' && statedWords.things.has(named)) return pluralOf(named, 2)
  if (said === '' || /^(?:mass|volume)$/.test(lookUpMeasure(fold(said))?.dimension ?? '')) return 'loaves'
  return said.endsWith('s') ? said : pluralOf(said, 2)
}

/** The vessels of a receipt, as a day's line would write several of them where it counts no pieces. */
export const vesselsOf = (receipt: Receipt): string => {
  const made = madeOf(receipt)
  return countedItem(made, receipt) === null ? made : 'dishes'
}

let counted: ReadonlySet<string> | null = null
const countedNouns = (): ReadonlySet<string> => {
  counted ??= new Set([
    ...words.counted,
    ...words.vessel,
    ...[...statedWords.things].map(fold),
    // What is counted comes last: “banana bread” makes bread a noun that may be asked for, and no banana.
    ...kinds.flatMap((row) => [row.title, ...row.words, ...(row.titles ?? [])]).flatMap((words) => foldAll(words).slice(-1)),
    ...vessels.flatMap((row) => row.spellings).flatMap(foldAll),
  ])
  return counted
}

/** Whether a noun is what comes out of the oven of a receipt, and no ingredient: what one makes, or a name of the receipt or of its kind. */
function comesOut(noun: string, receipt: Receipt, item: DayAmount): boolean {
  const kind = receipt.kind === null ? null : lookUpKind(receipt.kind)
  const own = [receipt.title, item.title, receipt.serves?.of ?? '']
  // “Flour bread” is bread, and no flour.
  const named = [kind?.title ?? '', ...(kind?.words ?? []), ...(kind?.endings ?? [])].flatMap((text) => foldAll(text).slice(-1))
  const last = noun.split(' ').at(-1) ?? ''
  return (
    statedWords.things.has(last) ||
    germanYields.has(plainFold(last)) ||
    [...own.flatMap((text) => foldAll(text)), ...named].includes(fold(last))
  )
}

/** “12 large rolls” says no figure: they are made as large as the receipt's, where it does not say so itself. */
function saySize(of: string, receipt: Receipt, item: DayAmount, say: Say): void {
  const all = of.split(' ')
  const place = all.findIndex((word) => words.size.has(plainFold(word)))
  if (place < 0 || place === all.length - 1) return
  // The receipt has them so: “Large white loaves”, “twelve large apples”.
  if ([receipt.title, countedItem(of, receipt)?.text ?? ''].some((own) => foldAll(own).includes(fold(all[place]!)))) return
  say(
    'warning',
    'scale-size',
    `“${all[place]}” says no size: made as large as the receipt has them`,
    'write what each weighs behind it, as in “6 loaves of 2 lb” or “12 rolls of 80 g”',
    item.amountAt?.[item.amountAt.length - all.length + place],
  )
}

/** Which word of what is counted is not known here ("8 loaves wantd"), by its place; null where all is understood. */
function unknownNoun(of: string, receipt: Receipt, item: DayAmount): {readonly word: string; readonly place: number} | null {
  const own = new Set([receipt.title, item.title, receipt.serves?.of ?? ''].flatMap((text) => foldAll(text)))
  const known = (word: string): boolean =>
    germanYields.has(plainFold(word)) ||
    [fold(word), word.replace(/s$/, '')].some((noun) => countedNouns().has(noun) || own.has(noun))
  const all = of.split(' ')
  const end = all.indexOf('of')
  const noun = end > 0 ? all.slice(0, end) : all
  // What goes in is no noun of what comes out, but where the receipt counts it, or it is baked whole.
  if (countedItem(of, receipt) !== null) return null
  const goesIn = wholeOf(receipt, receipt.kind ?? '') === null && isBoughtByThePiece(of, receipt, own)
  const last = goesIn ? -1 : noun.findLastIndex(known)
  if (last === noun.length - 1) return null
  const place = last < 0 ? noun.length - 1 : last + 1
  return {word: noun[place] ?? '', place}
}
