import {cautions, lookUpCaution, lookUpItem, lookUpKind} from '../lexicon/index.js'
import type {Caution} from '../lexicon/schema.js'
import {asksItself} from './first-work.js'
import {phrasesIn, phraseTree} from './phrases.js'
import type {Section} from './section.js'
import type {CautionNote, EveningBefore, FleshTold, ReadIngredient, TimePhrase} from './types.js'

const TREE = phraseTree(cautions, (row: Caution) => row.words)
/** Said of food that does not get hot: cooking settles these, so a baked or boiled dish does not raise them by its items alone. */
const SETTLED_BY_COOKING: ReadonlySet<string> = new Set(['raw-egg', 'raw-flour', 'raw-milk'])
const ICING = /ic(?:e|ing)|frost|glaze|cream|sauce|meringue|syllabub|whip/

const COLD: ReadonlySet<string> = new Set([
  'fridge',
  'refrigerator',
  'refrigerate',
  'refrigerated',
  'chill',
  'chilled',
  'freezer',
])

/** Kept cold through the night: said in the same sentence, within a few words. */
function isCold({tokens}: Section, at: number): boolean {
  const ends = (k: number): boolean => tokens[k]?.block !== tokens[at]!.block || /^[.;]$/.test(tokens[k]!.word)
  for (let k = at; k > at - 8 && !ends(k); k--) if (COLD.has(tokens[k]!.word)) return true
  for (let k = at; k < at + 8 && !ends(k); k++) if (COLD.has(tokens[k]!.word)) return true
  return false
}

const isFlesh = (word: string): boolean => /^(?:meat|fish)$/.test(lookUpItem(word)?.group ?? '')

/** What is dry when it is done, cakes and bread keep out of the oven or in it: no germ grows in them for want of warmth. Common practice, no source. */
function keepsWithoutWarmth(kind: string | null): boolean {
  const row = kind === null ? null : lookUpKind(kind)
  return row?.dry === true || row?.keeps === true || row?.dough !== undefined
}

/** What cautions are raised by. */
export interface CautionInput {
  readonly section: Section
  readonly ingredients: readonly ReadIngredient[]
  /** What only the text has put in. */
  readonly told: readonly FleshTold[]
  readonly times: readonly TimePhrase[]
  readonly kind: string | null
  /** What is done the evening before: a night in water or of a sponge keeps nothing warm. */
  readonly evening?: readonly EveningBefore[]
  /** The receipt bakes or boils. */
  readonly cooked: boolean
}

/**
 * Rows of `lexicon/cautions` that a receipt raises: by its items, by its kind of dish, and by words of its text. A word inside a
 * stretch of time counts only where the time is spent in the oven or standing ("overnight" of a rising dough warns of nothing).
 */
export function cautionsOf({section, ingredients, told, times, kind, evening = [], cooked}: CautionInput): CautionNote[] {
  const raised = new Map<string, Caution>()
  const keeps = keepsWithoutWarmth(kind)
  const raise = (id: string): void => {
    const row = raised.has(id) ? null : lookUpCaution(id)
    if (row !== null) raised.set(id, row)
  }
  for (const ingredient of [...ingredients, ...told.map(({item}) => ({item, part: ''}))]) {
    const item = lookUpItem(ingredient.item)
    if (item === null) continue
    for (const id of item.cautions) if (!cooked || !SETTLED_BY_COOKING.has(id) || ICING.test(ingredient.part)) raise(id)
  }
  for (const phrase of phrasesIn(TREE, section.tokens)) {
    if (raised.has(phrase.row.id)) continue
    const start = section.tokens[phrase.from]!.start
    const time = times.find((t) => t.start <= start && start < t.end)
    if (time !== undefined && time.of !== 'bake' && time.of !== 'stand') continue
    if (
      phrase.row.id === 'hot-holding' &&
      (keeps || isCold(section, phrase.from) || evening.some((one) => one.start <= start && start < one.end))
    )
      continue
    raise(phrase.row.id)
  }
  // Meat, fish and milk that stand a night out of the oven are not kept warm, but want the cold.
  for (const {does, start, end} of evening)
    if (
      does === 'soak' &&
      section.tokens.some((t) => t.start >= start && t.start < end && (t.word === 'milk' || isFlesh(t.word)))
    )
      raise('danger-zone')
  // However the night in the oven is worded ("two nights in a cool oven"), what is left in it cools.
  if (!keeps && times.some((time) => time.overnight === true)) raise('hot-holding')
  if (kind !== null) for (const id of lookUpKind(kind)?.cautions ?? []) raise(id)
  return [...raised.values()].map((row): CautionNote => {
    const {first} = row
    const harming = ingredients.filter(({item}) => lookUpItem(item)?.cautions.includes(row.id))
    return {
      id: row.id,
      text: `${row.harm} ${row.instead}`,
      source: row.source,
      ...(first === undefined || harming.length === 0 || asksItself(section, times, harming, first)
        ? {}
        : {first: {say: first.say, takes: first.takes}}),
    }
  })
}
