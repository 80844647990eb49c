import {eveningWords as rows} from '../lexicon/evening-words.js'
import {lookUpItem} from '../lexicon/index.js'
import {wordsUsed} from '../lexicon/row.js'
import type {EveningWord} from '../lexicon/schema.js'
import {phraseAt, phraseTree} from './phrases.js'
import type {Section, Token} from './section.js'
import {endsSentence, sentenceAt} from './sentences.js'
import type {EveningBefore, ReadIngredient, Span, TimePhrase} from './types.js'

/**
 * What a receipt has done the evening before it is baked: dried things put to soak, a sponge or a leaven set.
 */

const NIGHTS = phraseTree(
  rows.filter(({use}) => use === 'nights'),
  (row) => row.words,
)
const setOf = (use: EveningWord['use']): ReadonlySet<string> => new Set(wordsUsed(rows, use))
const eveningWords = {
  soaks: setOf('soaks'),
  lays: setOf('lays'),
  waters: setOf('waters'),
  sponges: setOf('sponges'),
  sets: setOf('sets'),
  wholes: setOf('wholes'),
  parts: setOf('parts'),
}
const isSetAhead = (part: string): boolean => eveningWords.parts.has(part) || /\p{L}sauer$/u.test(part)
const SPIRITS = /^(?:brandy|rum|tea|wine)$/
/** Groups of the lexicon whose things are soaked by the piece. */
const SOLID: ReadonlySet<string> = new Set(['meat', 'fish', 'pulse', 'fruit'])
const NOT_ALWAYS = /^(?:not|never|nor|if|unless|nicht|wenn|falls)$/
/** Tokens that a sentence may reach to each side of its night. */
const REACH = 60

/**
 * Read what is to be done the evening before.
 *
 * @param section the receipt's blocks and tokens
 * @param ingredients its entries, in the order of the text
 * @param times its stretches of time: a night spent in the oven is none of these
 * @param notes stretches that give another way
 * @returns in the order of the text, each with the words that say so; one of each kind for the same entries
 */
export function readEvenings(
  section: Section,
  ingredients: readonly ReadIngredient[],
  times: readonly TimePhrase[],
  notes: readonly Span[] | ReadonlyArray<{readonly start: number; readonly end: number}>,
): EveningBefore[] {
  const {tokens, source} = section
  const found: EveningBefore[] = []
  for (let i = 0; i < tokens.length; i++) {
    const night = phraseAt(NIGHTS, tokens, i)
    if (night === null) continue
    const at = tokens[i]!.start
    i = night.to - 1
    if (times.some((time) => time.overnight === true && time.start <= at && at < time.end)) continue
    if (notes.some(({start, end}) => start <= at && at < end)) continue
    const [first, last] = sentenceAt(tokens, night.from, REACH)
    // What a receipt is called tells of the deed, and the text says it.
    if (section.title !== '' && source.slice(tokens[first]!.start, tokens[last - 1]!.end).trim() === section.title.trim())
      continue
    const words = tokens.slice(first, last)
    const does = deedOf(section, words, first)
    // "Dried peas need not be soaked"; "if it has been long in salt".
    if (does === null || tokens.slice(first, night.from).some(({word}) => NOT_ALWAYS.test(word))) continue
    const concerned = concernedBy(section, ingredients, does, [first, night.to, last])
    // "It keeps all night": nothing is named that is soaked or set; a ham without its weight is.
    if (concerned.length === 0 && does === 'soak' && !words.some(({word}) => SOLID.has(lookUpItem(word)?.group ?? ''))) continue
    const hour = hourIn(words)
    const same = found.findIndex((one) => one.does === does && one.items.join() === concerned.join())
    // "Biga (night before)", and further on "make the biga the night before at 9 pm": the hour tells more.
    if (same >= 0 && (hour === null || found[same]!.hour !== undefined)) continue
    if (same >= 0) found.splice(same, 1)
    const [a, z] = ownLine(section, ingredients, clauseOf(tokens, first, last, night), night)
    const [start, end] = [tokens[a]!.start, tokens[z - 1]!.end]
    found.push({
      text: source.slice(start, end),
      start,
      end,
      does,
      items: concerned,
      ...(hour === null ? {} : {hour}),
    })
  }
  return found
}

/** Whether a stretch of time is that of a sponge or leaven set the evening before. */
export const isSet = (evening: readonly EveningBefore[], time: Span): boolean =>
  evening.some(({does, start, end}) => does === 'set' && start <= time.start && time.start < end)

/** Is something put to soak, or a sponge set, in this sentence? A sponge may be named by the label or the sentence before. */
function deedOf({tokens, blocks}: Section, words: readonly Token[], first: number): 'soak' | 'set' | null {
  const has = (set: ReadonlySet<string>): boolean => words.some(({word}) => set.has(word))
  const sponge = has(eveningWords.sponges)
  const label = blocks[tokens[first]!.block]!.kind === 'heading' || words.at(-1)?.word === ':'
  if (sponge && (has(eveningWords.sets) || label)) {
    // "Add the starter, knead the dough and leave it over night": the dough itself.
    const whole = words.some(({word}) => eveningWords.wholes.has(word))
    const named = words.findIndex(({word}) => eveningWords.sponges.has(word))
    const made = words.findIndex(({word}) => eveningWords.sets.has(word))
    return whole && !(made >= 0 && named - made <= 4 && named > made) ? null : 'set'
  }
  if (has(eveningWords.soaks)) return 'soak'
  if (has(eveningWords.lays) && words.some(({word}, k) => eveningWords.waters.has(word) && inside(words, k))) return 'soak'
  // "Mix the sponge. Leave overnight."
  if (!has(eveningWords.sets) || has(eveningWords.wholes)) return null
  const before = first > 0 && tokens[first - 1]!.block === tokens[first]!.block ? first - 2 : -1
  for (let k = before; k >= 0 && k > first - 20 && tokens[k]!.block === tokens[first]!.block; k--) {
    if (eveningWords.sponges.has(tokens[k]!.word)) return 'set'
    if (eveningWords.wholes.has(tokens[k]!.word) || endsSentence(tokens, k)) return null
  }
  return null
}

/** "In cold water": the water is what it lies in. */
function inside(words: readonly Token[], k: number): boolean {
  let j = k - 1
  while (
    j >= 0 &&
    /^(?:cold|soft|fresh|clean|warm|tepid|lukewarm|salted?|the|of|plenty|kaltem|kaltes|viel|reichlich)$/.test(words[j]!.word)
  )
    j--
  // "The fruit with the brandy", but "with water enough to cover it".
  return j >= 0 && (/^(?:in|into)$/.test(words[j]!.word) || (words[j]!.word === 'with' && SPIRITS.test(words[k]!.word)))
}

/** Entries by their place in the list: those that stand in the sentence, or are named in it, or make up the part that is set. */
function concernedBy(
  {tokens}: Section,
  ingredients: readonly ReadIngredient[],
  does: 'soak' | 'set',
  [first, night, last]: readonly [number, number, number],
): number[] {
  const [start, end] = [tokens[first]!.start, tokens[last - 1]!.end]
  const of = (test: (one: ReadIngredient) => boolean): number[] => ingredients.flatMap((one, i) => (test(one) ? [i] : []))
  const said = of((one) => one.start < end && one.end > start)
  // What is named before the night goes into it; where nothing is, what comes behind ("Set a sponge over night with …").
  const before = said.filter((i) => ingredients[i]!.start < tokens[night - 1]!.end)
  const inIt = before.length > 0 ? before : said
  if (does === 'set') {
    const part = of((one) => one.amount !== null && isSetAhead(one.part))
    if (part.length > 0) return part
  }
  const soaker = of((one) => one.amount !== null && one.part === 'soaker')
  if (soaker.length > 0) return soaker
  const stems = new Set(tokens.slice(first, last).map(({stem}) => stem))
  const named = of(
    (one) =>
      one.amount !== null &&
      !(one.start < end && one.end > start) &&
      (one.end <= start || one.start >= end) &&
      (stems.has(headOf(one)) || (does === 'soak' && stems.has('fruit') && isDried(one)) || spelled(one, tokens, first, last)),
  )
  if (does === 'set') return inIt
  const own = inIt.filter((i) => !isIn(tokens, first, ingredients[i]!))
  // "225 g flour, 4 eggs, 800 g dried fruit soaked over night": said of the last in a row of amounts.
  const listed = own.filter((i) => ingredients[i]!.amount !== null).length > 2 && isParticiple(tokens, first, night)
  const all = [...(listed ? own.slice(-1) : own), ...named].filter((i) => isSoaked(ingredients[i]!))
  if (all.length > 0) return all.sort((a, b) => a - b)
  // "Soak them over night": what is dried of all there is.
  const dried = of((one) => one.amount !== null && isPulse(one))
  return dried
}

/** "… soaked over night": how the thing before it is got ready, where "soak the beans and the pork" is a step. */
function isParticiple(tokens: readonly Token[], first: number, night: number): boolean {
  for (let k = night - 1; k >= first && k > night - 6; k--)
    if (/^(?:soaked|steeped|eingeweicht)$/.test(tokens[k]!.word)) return true
  return false
}

/** "In milk": what the things lie in. */
function isIn(tokens: readonly Token[], first: number, {start}: ReadIngredient): boolean {
  let k = first
  while (tokens[k]!.start < start) k++
  return /^(?:in|into)$/.test(tokens[k - 1]?.word ?? '')
}

const headOf = ({item}: ReadIngredient): string => item.split(' of ')[0]!.split(/[ -]/).pop()!
const isPulse = ({item}: ReadIngredient): boolean => lookUpItem(item)?.group === 'pulse'
const isDried = ({item, text, prepared}: ReadIngredient): boolean =>
  /dried|getrocknet|raisin|currant|sultana|prune|\bfig|date|apricot|candied|peel|rosine|korinthe|feige|dattel|pflaume|fruit|obst/i.test(
    `${item} ${text} ${prepared ?? ''}`,
  )
/** What a night in water or spirit is for: dry things, and what is salted; not the water itself. */
const isSoaked = (one: ReadIngredient): boolean => {
  const group = lookUpItem(one.item)?.group
  return group !== 'liquid' && group !== 'leaven' && group !== 'fat'
}

/** Is the entry named in these tokens by its own words? */
function spelled(one: ReadIngredient, tokens: readonly Token[], first: number, last: number): boolean {
  const id = lookUpItem(one.item)?.id
  if (id === undefined) return false
  for (let k = first; k < last; k++) if (tokens[k]!.kind === 'word' && lookUpItem(tokens[k]!.word)?.id === id) return true
  return false
}

/** The hour that the sentence says, minutes after midnight: "at nine o'clock in the evening", "gegen 20 Uhr"; null where it says none. */
function hourIn(words: readonly Token[]): number | null {
  for (const [k, {kind, num, den}] of words.entries()) {
    if (kind !== 'number' || den !== 1 || num > 24) continue
    const next = words[k + 1]?.word ?? ''
    const after = words[k + 2]?.word ?? ''
    if (next === 'uhr') return (num < 12 ? num + (num >= 5 ? 12 : 0) : num) * 60
    if (/^(?:pm|p)$/.test(next) || (/^(?:o'clock|oclock)$/.test(next) && after !== '')) return ((num % 12) + 12) * 60
  }
  return null
}

/** Of a list written as plain lines, which have no stops, the line of the night alone; elsewhere all of the clause. */
function ownLine(
  {tokens, source}: Section,
  ingredients: readonly ReadIngredient[],
  [a, z]: readonly [number, number],
  {from, to}: {readonly from: number; readonly to: number},
): readonly [number, number] {
  const entries = new Set(ingredients.map(({start}) => start))
  const begins = (k: number): boolean =>
    entries.has(tokens[k]!.start) && source.slice(tokens[k - 1]?.end ?? 0, tokens[k]!.start).includes('\n')
  let top = from
  while (top > 0 && tokens[top - 1]!.block === tokens[from]!.block) top--
  // In wrapped prose an amount may begin a line too, but seldom the first.
  if (!entries.has(tokens[top]!.start)) return [a, z]
  let first = from
  while (first > a && !begins(first)) first--
  let end = to
  while (end < z && !begins(end)) end++
  return [first, end]
}

/** Words of a sentence that are quoted at the most before its night, and behind. */
const QUOTED = {before: 24, behind: 8, whole: 20}

/** The words to quote: a short sentence as it is, else up to its night and on to the next comma; of a long one, from the last clause that is short enough. */
function clauseOf(
  tokens: readonly Token[],
  first: number,
  last: number,
  {from, to}: {readonly from: number; readonly to: number},
): readonly [number, number] {
  let a = first
  for (let k = first; k < from; k++) if (tokens[k]!.word === '—' || tokens[k]!.word === ':') a = k + 1
  if (from - a > QUOTED.before) {
    a = from - QUOTED.before
    while (a < from && tokens[a - 1]!.kind !== 'mark') a++
    if (a === from) a = from - QUOTED.before
  }
  while (a < from && tokens[a]!.kind === 'mark') a++
  if (last - to <= QUOTED.whole) return [a, tokens[last - 1]!.kind === 'mark' ? last - 1 : last]
  let z = to
  while (z < last && z - to < QUOTED.behind && tokens[z]!.kind !== 'mark') z++
  // "Pick over the beans the evening before, and lay them in cold water": on to what is done.
  for (let k = z; k < last && k - to < 2 * QUOTED.behind; k++) {
    const {word} = tokens[k]!
    if (eveningWords.soaks.has(word) || eveningWords.waters.has(word)) z = k + 1
  }
  return [a, z]
}
