import {pastes} from '../lexicon/grammar-words.js'
import {fold, lookUpItem} from '../lexicon/index.js'
import type {Draft} from './entries.js'
import {isFlesh} from './flesh.js'
import {sentenceAt} from './sentences.js'
import {DESCRIBES, type View} from './view.js'

/**
 * What beside a list only the method has put in, without an amount: “cover with puff pastry, glaze with beaten egg”. It counts where it holds an
 * allergen that nothing in the list does, for whoever must not eat it reads the list alone.
 */

const PASTES: ReadonlySet<string> = new Set(pastes)
/** Behind a name, in its clause, that it is another dish on the table: “melted butter is sent to table with it”, „mit Sahne servieren“. */
const SERVED: ReadonlySet<string> = new Set(
  'served,sent,accompany,accompanies,servieren,serviert,reichen,gereicht,essen,passt,passen'.split(',').map(fold),
)
const CLAUSE_ENDS: ReadonlySet<string> = new Set([',', '(', ')', '—', 'and', 'und', 'then', 'dann'])
/** Straight before a name that does not go in. */
const NOT_IN: ReadonlySet<string> = new Set('ohne,statt,anstatt,kein,keine,keinen,wie,without,no'.split(',').map(fold))
/** In a sentence of another way to make it. */
const OTHERWISE: ReadonlySet<string> = new Set('substituting,substituted,varied'.split(','))
/** A verb: “butter and flour a cloth”. */
const DONE_TOO: ReadonlySet<string> = new Set(['flour', 'line', 'dust', 'paper', 'sugar', 'crumb'])
const TOOLS: ReadonlySet<string> = new Set(['slicer', 'warm'])

/** Whether a name is of what is served beside the dish, left out, or of another way. */
function staysOut({tokens, words, bits}: View, {start, next}: Draft): boolean {
  const [first, last] = sentenceAt(tokens, start)
  for (let i = next; i < last && !CLAUSE_ENDS.has(words[i]!); i++) if (SERVED.has(fold(words[i]!))) return true
  for (let i = first; i < last; i++) if (OTHERWISE.has(words[i]!)) return true
  let before = start - 1
  while (before > first && bits[before]! & DESCRIBES) before--
  return before >= first && NOT_IN.has(fold(words[before]!))
}

/** Whether its words are more often another thing's: blooms, the colour, “pounded to a smooth paste”, “butter and flour a cloth”, “milk-warm”. */
function isOther({words, bits, tokens, section}: View, {start, next, item, row}: Draft): boolean {
  if (section.blocks[tokens[start]!.block]!.kind === 'heading') return true
  const last = words[next - 1]!
  if (/^flowers?$/.test(last) || last === 'white' || TOOLS.has(words[next] ?? '')) return true
  if (row?.group === 'fat' && words[next] === 'and' && DONE_TOO.has(words[next + 1] ?? '')) return true
  if (!PASTES.has(item) && !PASTES.has(last)) return false
  let before = start - 1
  while (before >= 0 && bits[before]! & DESCRIBES) before--
  const article = /^an?$/.test(words[before] ?? '')
  // "Paste over the lid", where "lay a crust over it" is of pastry.
  if (!article && next === start + 1 && /^over$/.test(words[next] ?? '')) return true
  if (article) before--
  return /^(?:to|into)$/.test(words[before] ?? '')
}

/** Allergens of what the list has, and of all that has an amount. */
export const allergensListed = (drafts: readonly Draft[]): ReadonlySet<string> =>
  new Set(drafts.flatMap(({inList, low, row}) => (inList || low !== null ? (row?.allergens ?? []) : [])))

/** “The candied peel” of a list's candied lemon peel. */
const isPeelListed = (d: Draft, drafts: readonly Draft[]): boolean =>
  d.item.endsWith('peel') && drafts.some(({inList, item}) => inList && item.endsWith('peel'))

/** Whether a bare name of the method brings an allergen that is not among those of the list. Meat and fish are told apart (`flesh-told.ts`). */
export function bringsAllergen(view: View, draft: Draft, listed: ReadonlySet<string>, drafts: readonly Draft[]): boolean {
  const {row} = draft
  return (
    row !== null &&
    row.allergens.some((one) => !listed.has(one)) &&
    !isFlesh(row.id) &&
    !isPeelListed(draft, drafts) &&
    !isOther(view, draft) &&
    !staysOut(view, draft)
  )
}

const EGG_WEIGHT = 'weight of an egg'
const EGGS_OF_WEIGHTS = 'so many as the greatest of the weights that are told by eggs'
const eggOf = ({row, item}: Draft): string => row?.id ?? item

/**
 * Give the eggs by whose weight others are told, “the weight of 8 eggs in sugar, of 5 in flour”, their number where the text handles them and says
 * none: as many as the greatest weight names. The text gives no amount of them, so they have none; the number is beside it.
 *
 * @param kept the entries that count, which are completed where they lie
 */
export function countWeighedEggs(kept: readonly Draft[]): void {
  for (const part of new Set(kept.map((d) => d.part))) {
    const own = kept.filter((d) => d.part === part)
    const weights = own.filter(({low, measure}) => low !== null && measure === EGG_WEIGHT)
    const eggs = own.filter((d) => /^egg(?: yolk| white)?$/.test(eggOf(d)))
    if (weights.length === 0 || eggs.length === 0 || eggs.some(({low}) => low !== null)) continue
    const most = weights.reduce((a, b) => (b.high!.value > a.high!.value ? b : a)).high!
    const whole = eggs.find((d) => eggOf(d) === 'egg')
    const parts = ['egg yolk', 'egg white'].flatMap((id) => eggs.find((d) => eggOf(d) === id) ?? [])
    // Of yolks alone, the whites are beaten as well.
    for (const d of whole !== undefined ? [whole] : parts) {
      if (whole === undefined && parts.length === 1) {
        d.item = 'egg'
        d.row = lookUpItem('egg')
      }
      d.reckoned = most
      d.notes = [...d.notes, EGGS_OF_WEIGHTS]
    }
  }
}

/** Whether a weight told by eggs only says again what the list has: “take the weight of 8 in sugar”, of the loaf sugar. */
export const isWeightAgain = (d: Draft, listed: readonly Draft[]): boolean =>
  d.measure === EGG_WEIGHT &&
  listed.some(
    (one) =>
      one.inList &&
      one.measure === EGG_WEIGHT &&
      one.low?.equals(d.low!) === true &&
      (one.item === d.item || one.item.endsWith(` ${d.item}`)),
  )
