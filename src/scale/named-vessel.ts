import {asked as words} from '../lexicon/asked-words.js'
import {foldAll, fold as singular} from '../lexicon/index.js'
import {vesselWords} from '../lexicon/vessel-words.js'
import {germanYields} from '../lexicon/yield-words.js'
import {fold} from '../receipt/section.js'
import {type VesselShape, vesselWordsOf} from '../receipt/vessel.js'

/** What of a day's words names a vessel without its size: "square tins", "tin loaves", "round cakes", "the bricks". */
export interface NamedVessel {
  /** `tin`: any, as the receipt or its kind has it. */
  readonly shape: VesselShape | 'tin'
  /** What is baked is said to be of the shape, and no vessel: "round cakes". */
  readonly of?: 'bread' | 'other'
  /** The words by which it is told, folded. */
  readonly by: readonly string[]
}

const adjectives: ReadonlyMap<string, VesselShape> = new Map(
  vesselWords
    .filter(({shape}) => shape === 'round' || shape === 'square' || shape === 'oblong')
    .flatMap(({shape, words: all}) => all.map((word) => [word, shape!] as const)),
)
const names: ReadonlyMap<string, VesselShape> = new Map(
  [...words.named].map(([name, shape]) => [foldAll(name).join(' '), shape] as const),
)
const vesselNouns: ReadonlySet<string> = new Set([...vesselWordsOf('noun')].map(singular))
const things: ReadonlySet<string> = new Set([...vesselWordsOf('thing')].map(singular))

/**
 * The vessel that some words name without a size; null where they name none, or only what is baked ("4 loaves").
 *
 * @param phrase a noun with what stands before it, in lower case
 */
export function namedVessel(phrase: string): NamedVessel | null {
  const bare = phrase
    .split(' ')
    .map(fold)
    .filter((word) => !words.article.has(word))
    .join(' ')
  if (words.bare.has(bare)) return {shape: 'free-standing', by: bare.split(' ')}
  const all = foldAll(phrase.split(' of ')[0]!)
  const end = all.at(-1) ?? ''
  const last = singular(germanYields.get(end) ?? end)
  const adjective = all.slice(0, -1).findLast((word) => adjectives.has(word))
  for (let n = Math.min(3, all.length); n > 0; n--) {
    const name = all.slice(-n).join(' ')
    const shape = names.get(name)
    if (shape !== undefined && (adjective === undefined || n > 1)) return {shape, by: all.slice(-n)}
  }
  if (adjective !== undefined) {
    const shape = adjectives.get(adjective)!
    if (vesselNouns.has(last) || words.anyTin.has(last)) return {shape, by: [adjective]}
    if (things.has(last)) return {shape, of: words.bread.has(last) ? 'bread' : 'other', by: [adjective]}
    return null
  }
  return words.anyTin.has(last) ? {shape: 'tin', by: [last]} : null
}
