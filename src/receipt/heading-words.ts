import {headingWords} from '../lexicon/heading-words.js'
import {kinds} from '../lexicon/index.js'
import {wordsUsed} from '../lexicon/row.js'
import type {HeadingWord} from '../lexicon/schema.js'
import {stageHeads} from '../lexicon/stage-heads.js'
import {fold} from './section.js'

/**
 * What a heading or label inside a receipt says: its ingredients, its method, notes, what is in a serving, a part of the dish; or the name of a
 * dish.
 */

/** What a heading is for: a `part` is one only where it stands deeper than the receipt's own. */
export type HeadingUse = 'ingredients' | 'method' | 'notes' | 'nutrition' | 'part'

const used = (use: HeadingWord['use']): ReadonlySet<string> => new Set(wordsUsed(headingWords, use))
/** Phrases by their words, the longest first. */
const phrases = (use: HeadingWord['use']): readonly string[][] =>
  wordsUsed(headingWords, use)
    .map((phrase) => phrase.split(' '))
    .sort((a, b) => b.length - a.length)

const INGREDIENTS = phrases('ingredients')
const METHOD = used('method')
const NOTES = used('notes')
const NUTRITION = phrases('nutrition')
const BEGINS = phrases('begins')
const COUNTED = used('counted')
const PARTS = used('parts')
const WORK = phrases('work')
const OBJECTS = used('objects')
const OWN = used('own')
const PLACES = used('places')
const STAGES: ReadonlySet<string> = new Set(stageHeads.flatMap(({words}) => words))
/** What the names of dishes end in. */
const DISHES: ReadonlySet<string> = new Set(
  kinds.flatMap(({words, titles = []}) => [...words, ...titles]).map((phrase) => fold(phrase).split(/[\s-]/).at(-1)!),
)
const DISH_ENDINGS: readonly string[] = kinds.flatMap(({endings = []}) => endings)

/** Words and marks of a heading, folded, without mark-up: "let's", "(", "4". */
export const headingTokens = (text: string): string[] =>
  fold(text.slice(0, LONGEST).replace(/[#*_`[\]]/g, ' ')).match(/[\p{L}\d']+|[^\s\p{L}\d']/gu) ?? []

/** Characters of a heading that are looked at. */
const LONGEST = 200

const isWord = (token: string): boolean => /^[\p{L}']/u.test(token)
/** Whether nothing of tokens from `at` on is a word. */
const closed = (tokens: readonly string[], at: number): boolean => !tokens.slice(at).some(isWord)
/** The end of the first of the phrases that the tokens begin with at `at`; −1 where they begin with none. */
function pastPhrase(tokens: readonly string[], list: readonly string[][], at = 0): number {
  const found = list.find((phrase) => phrase.every((word, i) => tokens[at + i] === word))
  return found === undefined ? -1 : at + found.length
}

/**
 * The token after the words by which a heading or label says that the ingredients follow: "Ingredients (serves 4)", "What you need", "Zutaten für 4
 * Personen:"; −1 where it does not say so. What may follow is how much it makes.
 */
export function pastIngredientsWord(tokens: readonly string[]): number {
  const end = pastPhrase(tokens, INGREDIENTS)
  if (end < 0 || end >= tokens.length || !isWord(tokens[end]!)) return end
  // "Ingredients for 2 loaves", but not "Ingredients for bread"
  const counts = /^(?:for|fur)$/.test(tokens[end]!) && COUNTS.test(tokens[end + 1] ?? '')
  return counts ? end : -1
}

/** The token after those by which a heading or label says that what is in a serving follows: "Nutrition", "Nährwerte"; −1 where it does not. */
export const pastNutritionWord = (tokens: readonly string[]): number => pastPhrase(tokens, NUTRITION)

const COUNTS =
  /^(?:\d+|ca|etwa|about|approximately|a|an|the|one|two|three|four|five|six|eight|ten|twelve|ein|eine|einen|zwei|drei|vier|sechs|acht|zwolf|den|die|das)$/

/** "Notes", "Baker's notes", "Tips & tricks". */
function isOfNotes(tokens: readonly string[]): boolean {
  const at = tokens.findIndex((token) => NOTES.has(token))
  if (at < 0 || at > 1) return false
  const behind = /^(?:and|&|und)$/.test(tokens[at + 1] ?? '') ? at + 3 : at + 1
  return closed(tokens, behind)
}

/** A stage of one dough, with or without when it is mixed: "Rye sour (the evening before)", "Final dough: next morning". */
function isStage(tokens: readonly string[]): boolean {
  const stop = tokens.findIndex((token) => /^[(:—–,]$/.test(token))
  const name = stop < 0 ? tokens : tokens.slice(0, stop)
  return STAGES.has((name[0] === 'the' ? name.slice(1) : name).join(' '))
}

/** "Day 2", "Step 1: mix the dough", "1. Mix". */
const isCounted = (tokens: readonly string[]): boolean =>
  COUNTED.has(tokens[0] ?? '') && /^(?:\d+|one|two|three|four|five|eins|zwei|drei|vier)$/.test(tokens[1] ?? '')

/** "Bake", "Shape the loaves", "Mix & knead", with or without a number before it. */
function isWork(tokens: readonly string[]): boolean {
  const at = /^\d+$/.test(tokens[0] ?? '') && /^[.):]$/.test(tokens[1] ?? '') ? 2 : 0
  const end = pastPhrase(tokens, WORK, at)
  return end >= 0 && (closed(tokens, end) || !isWord(tokens[end]!) || OBJECTS.has(tokens[end]!))
}

/** "Almond paste", "Icing": at most one word before what names the part. */
const isNamedPart = (tokens: readonly string[]): boolean =>
  tokens.slice(0, 2).some((token, at) => PARTS.has(token) && tokens.slice(0, at).every(isWord) && closed(tokens, at + 1))

/** What a heading says that it is for; null where it may be the title of a receipt. */
export function headingUse(text: string): HeadingUse | null {
  const tokens = headingTokens(text)
  if (tokens.length === 0) return null
  if (pastIngredientsWord(tokens) >= 0) return 'ingredients'
  let end = tokens.length
  while (end > 0 && !isWord(tokens[end - 1]!)) end--
  if (METHOD.has(tokens.slice(0, end).join(' '))) return 'method'
  if (pastNutritionWord(tokens) >= 0) return 'nutrition'
  if (isOfNotes(tokens)) return 'notes'
  const begins = pastPhrase(tokens, BEGINS) >= 0
  return begins || isStage(tokens) || isCounted(tokens) || isWork(tokens) || isNamedPart(tokens) ? 'part' : null
}

/** Does a heading name a dish ("Plum pie"), as the title of a receipt does, and not speak of the one it stands in ("About this bread")? */
export function namesDish(text: string): boolean {
  const words = headingTokens(text).filter(isWord)
  const last = words.at(-1) ?? ''
  if (PLACES.has(words[0] ?? '') || words.some((word) => OWN.has(word))) return false
  return DISHES.has(last) || DISH_ENDINGS.some((ending) => last.endsWith(ending))
}
