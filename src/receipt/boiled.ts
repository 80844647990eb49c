import type {NoteSpan} from './notes.js'
import type {Section, Token} from './section.js'
import type {ReadIngredient, Span, TimePhrase} from './types.js'

/**
 * Receipts that are boiled or steamed and not baked: a pudding in a cloth. Their kinds of dish are mostly baked, so nothing of an oven may
 * be filled in from them.
 */

/** That a receipt is boiled. */
export interface Boiled extends Span {
  /** Sentences that offer baking it as another way ("it may also be baked"). */
  readonly offered: readonly NoteSpan[]
}

const BAKES: ReadonlySet<string> = new Set(['bake', 'bakes', 'baked', 'baking', "bak'd", 'oven', 'ovens', 'ouen'])
const BOILS: ReadonlySet<string> = new Set(['boil', 'boils', 'boiled', 'boiling', 'steam', 'steamed', 'steaming'])
/** Behind "boil": said of the whole dish, or of how long. */
const WHOLE: ReadonlySet<string> = new Set(
  'it,them,for,in,about,a,an,till,until,slowly,gently,hard,fast,constantly,quickly,well,from,not,full,at,one,two,three,four,five,six,seven,eight,nine,ten'.split(
    ',',
  ),
)
const DISHES: ReadonlySet<string> = new Set(['pudding', 'puddings', 'dumpling', 'dumplings', 'loaf', 'loaves', 'roll', 'bread'])
/** What a thing is boiled or steamed in. */
const WRAPS: ReadonlySet<string> = new Set([
  'cloth',
  'cloths',
  'bag',
  'bags',
  'tie',
  'tied',
  'floured',
  'steamer',
  'basin',
  'mould',
  'mold',
])
const BESIDE: ReadonlySet<string> = new Set(['serve', 'served', 'sauce', 'eat', 'eaten', 'send', 'sprinkle', 'turn'])
/** Less is a step before the baking. */
const SHORTEST = 20

interface Sentence {
  readonly from: number
  readonly to: number
}

function sentences({tokens}: Section): Sentence[] {
  const found: Sentence[] = []
  let from = 0
  for (let i = 0; i <= tokens.length; i++) {
    const ends = i === tokens.length || tokens[i]!.block !== tokens[from]!.block || /^[.;!?]$/.test(tokens[i]!.word)
    if (!ends) continue
    if (i > from) found.push({from, to: i})
    from = tokens[i]?.block === tokens[from]?.block ? i + 1 : i
  }
  return found
}

/** "may also be baked", "or bake it", "is good baked", "if baked". */
function offers(tokens: readonly Token[], at: number, from: number): boolean {
  const before = tokens.slice(Math.max(from, at - 4), at).map((token) => token.word)
  return (
    before.some((word) => /^(?:may|might|can|could|if|prefer|preferred|either|instead)$/.test(word)) ||
    /^(?:or|good|nice|better|excellent)$/.test(before.at(-1) ?? '')
  )
}

/**
 * Is the receipt boiled or steamed as a whole, and not baked?
 *
 * @param notes the receipt's notes: what they say of baking is another way
 * @returns the words that say so; null where it is baked, or does not say
 */
export function boiledWhole(
  section: Section,
  ingredients: readonly ReadIngredient[],
  times: readonly TimePhrase[],
  notes: readonly NoteSpan[],
): Boiled | null {
  const {tokens, blocks, source} = section
  const inNote = (token: Token): boolean => notes.some((note) => note.start <= token.start && token.end <= note.end)
  const offered: NoteSpan[] = []
  let boils: {at: number; sentence: Sentence} | null = null
  const all = sentences(section)
  for (const sentence of all) {
    const {from, to} = sentence
    if (blocks[tokens[from]!.block]!.kind === 'heading') continue
    let optional = false
    for (let i = from; i < to; i++) {
      const {word} = tokens[i]!
      if (BAKES.has(word)) {
        // "baking powder" bakes nothing.
        if (word === 'baking' && /^(?:powder|soda)$/.test(tokens[i + 1]?.word ?? '')) continue
        if (inNote(tokens[i]!) || optional) continue
        if (!offers(tokens, i, from)) return null
        optional = true
        offered.push({start: tokens[from]!.start, end: tokens[to - 1]!.end, otherWay: true})
      } else if (BOILS.has(word) && !inNote(tokens[i]!) && !optional && isWhole(tokens, i, to)) boils = {at: i, sentence}
    }
  }
  if (boils === null) return null
  const {at, sentence} = boils
  const steamed = tokens[at]!.word.startsWith('steam')
  const wrapped = tokens.some(({word}) => WRAPS.has(word))
  const long = times.some((time) => time.of === 'boil' && time.minutes.high >= SHORTEST && !inNoteSpan(notes, time))
  if (!long && !wrapped) return null
  const end = tokens[sentence.to - 1]!.end
  const later = ingredients.some((one) => {
    if (one.start < end || inNoteSpan(notes, one)) return false
    const where = all.find(({from, to}) => tokens[from]!.start <= one.start && one.start < tokens[to - 1]!.end)
    return where === undefined || !tokens.slice(where.from, where.to).some(({word}) => BESIDE.has(word))
  })
  if (later && !(wrapped && (steamed || long))) return null
  const last = tokens[Math.min(at + 1, sentence.to - 1)]!
  const start = tokens[at]!.start
  return {text: source.slice(start, last.end), start, end: last.end, offered}
}

const inNoteSpan = (notes: readonly NoteSpan[], {start, end}: Span): boolean =>
  notes.some((note) => note.start <= start && end <= note.end)

function isWhole(tokens: readonly Token[], at: number, to: number): boolean {
  let i = at + 1
  if (i >= to) return true
  if (tokens[i]!.word === 'the' || tokens[i]!.word === 'this' || tokens[i]!.word === 'your') i++
  const next = tokens[i]
  if (next === undefined) return false
  if (DISHES.has(next.word)) return true
  if (next.kind === 'number') return i === at + 1 && !isMeasured(tokens, i + 1)
  return i === at + 1 && (WHOLE.has(next.word) || next.word === ',')
}

/** "boil 2 oz. of rice": an amount of something, and no time. */
const isMeasured = (tokens: readonly Token[], at: number): boolean =>
  tokens[at] !== undefined && !/^(?:hours?|hrs?|h|minutes?|mins?|min|-|—|to|or)$/.test(tokens[at].word)
