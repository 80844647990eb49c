import {hedges, ovenTests, ovenWords} from '../lexicon/oven-words.js'
import type {Band, Hedge, OvenWord} from '../lexicon/schema.js'
import {fold, plainSection, type Section, type Token} from './section.js'
import type {OvenPhrase, ReceiptFacts} from './types.js'

/**
 * Every phrase of a receipt that says how hot the oven or the baking is: words with their hedges, degrees, gas marks, comparisons with
 * other bakings, and the tests by flour, paper and hand. A fire under a pot and a Dutch oven say nothing of the oven and are passed over.
 */

/** Rows by their words: a walk of the tokens finds the longest phrase that starts at one. */
interface Node<Row> {
  next: Map<string, Node<Row>> | null
  rows: Row[]
}
interface Match<Row> {
  readonly rows: readonly Row[]
  readonly end: number
}

function tree<Row extends {readonly phrases: readonly string[]}>(rows: readonly Row[]): Node<Row> {
  const root: Node<Row> = {next: new Map(), rows: []}
  for (const row of rows) {
    for (const phrase of row.phrases) {
      let node = root
      for (const word of phrase.split(/[\s-]+/)) {
        const key = fold(word)
        node.next ??= new Map()
        let child = node.next.get(key)
        if (child === undefined) {
          child = {next: null, rows: []}
          node.next.set(key, child)
        }
        node = child
      }
      if (!node.rows.includes(row)) node.rows.push(row)
    }
  }
  return root
}

function longest<Row>(root: Node<Row>, tokens: readonly Token[], at: number, limit: number): Match<Row> | null {
  let node: Node<Row> = root
  let best: Match<Row> | null = null
  for (let i = at; i < limit; i++) {
    const child = node.next?.get(tokens[i]!.word)
    if (child === undefined) break
    node = child
    if (node.rows.length > 0) best = {rows: node.rows, end: i + 1}
  }
  return best
}

const used = (use: OvenWord['use']): readonly OvenWord[] => ovenWords.filter((row) => (row.use ?? 'adjective') === use)
const ADJECTIVES = tree(used('adjective'))
const ADVERBS = tree(used('adverb'))
const AS_FOR = tree(used('as for'))
const AFTER = tree(used('after'))
const WITH = tree(used('with'))
const FIXED = tree(used('fixed'))
const HEDGES = tree(hedges)
const TESTS = new Map(ovenTests.map((row) => [row.id, row]))

const set = (list: string): ReadonlySet<string> => new Set(list.split(' '))

const OVENS = set("oven ovens ouen ouens ovens' oven's")
const BAKES = set("bake baked bakes baking bak'd baken")
/** Words of a heat phrase that are neither heat words nor hedges. */
const LINKS = set('and or but nor yet though to if any thing anything rather')
const DETERMINERS = set('a an the your our this that one any no')
const NOT_OVENS = set('dutch camp reflector reflecting american bastable bake-kettle tin portable toaster microwave')
/** Between "oven" and what is said of it. */
const COPULAS = set(
  'is are be was were being been must should shall ought to has have had may can will would need needs let it its made kept keep just only when which that not then first always previously before gets get becomes become grows grown should so never do does no pretty of a an at in with too also half must',
)
const BE = set('is are be was being been should must get gets becomes become grows made kept ought')
const PREPOSITIONS = set('a an of at in with the')
/** Say little by themselves: they need a copula or the oven right behind them. */
const WEAK = set('tolerable steady good-heat sound strong fast low warm')
const VERB_TOO = set('cool warm slow low even steady moderate weak high fast cooling right fair great')
const HEAT_NOUNS = set('heat heats temperature degree oven one fire')
const AFTER_ADJECTIVE = set(
  'as enough and but for to not when before or nor if that so in till until while after though during it they put bake on lest otherwise than at the you',
)
const CONTEXT_BAKES = set(
  "oven ovens bake baked baking bakes ouen drawn bak'd biscuit loaf loaves cake cakes bread crust tin tins pans",
)
const POT_WORDS = set(
  'stew stewed simmer boil boiled boiling fry fried saucepan kettle pot stewpan skillet over frying pan griddle steam',
)
const ADVERB_STOPS = set(
  'until till when and then or if stir boil serve pour mix beat but simmer fry stew add put take turn strain that which stewed boiled eat',
)
const STRICT_ADVERBS = set('gently slowly quickly briskly moderately steadily quick slow')
const DRAWN = set('drawn out drawne drawen drawing removed')
const DONE = set('baked done finished out withdrawn taken comes come')
const INSIDE_WORDS = set(
  "internal inside centre center crumb dough milk water syrup sugar liquid yeast sponge butter chocolate thermometer thickness core room fridge freezer refrigerator fat oil lard custard cream batter reads read filling melted proof prove proofing proving rise bath brew tepid starter levain loaf's",
)

const isStop = (t: Token | undefined): boolean =>
  t === undefined ||
  (t.kind === 'mark' &&
    (t.word === '.' || t.word === ';' || t.word === '?' || t.word === '!' || t.word === '|' || t.word === ':'))

interface Reading {
  readonly from: number
  readonly to: number
  readonly band: Band
  readonly low: number
  readonly high: number
  readonly sources: readonly string[]
  readonly notes: readonly string[]
  /** Kept before a reading of less rank where two overlap. */
  readonly rank: number
  readonly disagree?: boolean
  readonly condition?: boolean
}

/** A word before "oven" that the lexicon does not know as a heat word: reported, and carried through. */
export interface UnknownHeat {
  readonly text: string
  readonly start: number
  readonly end: number
}

const BANDS: ReadonlyArray<readonly [Band, number]> = [
  ['slack', 121],
  // 160 °C, 325 °F and gas mark 3 are one setting, and the coolest called moderate.
  ['slow', 158],
  ['moderate', 204],
]

/** The band a baking temperature lies in (design §4), by the middle of its range. */
export function bandOf(low: number, high: number): Band {
  const middle = (low + high) / 2
  for (const [band, top] of BANDS) if (middle <= top) return band
  return 'hot'
}

/** °F to °C, exactly: (F − 32) × 5/9 (NIST SP 811, B.8). */
export const celsiusOfFahrenheit = (fahrenheit: number): number => ((fahrenheit - 32) * 5) / 9

/**
 * °C of a British gas mark: mark 1 is 275 °F and each further mark 25 °F more; 1/4 is 225 °F, 1/2 is 250 °F.
 *
 * @returns null for a mark that is not on the scale (1/4, 1/2, 1 to 10)
 * @source from memory
 */
export function celsiusOfGasMark(mark: number): number | null {
  if (mark === 0.25) return celsiusOfFahrenheit(225)
  if (mark === 0.5) return celsiusOfFahrenheit(250)
  if (mark === 0.75) return celsiusOfFahrenheit(262.5)
  if (mark < 1 || mark > 10) return null
  return celsiusOfFahrenheit(250 + 25 * mark)
}

/** What a fan oven's figure is without the fan: makers' advice, common practice. */
const FAN_CELSIUS = 20
/** Members of "180 °C / 350 °F / gas 4" differ by rounding up to this much before they disagree. */
const DISAGREE_CELSIUS = 12
/** "Hotter than for bread": by how much. From memory. */
const COMPARATIVE_CELSIUS = 20

/**
 * Read the heat of one receipt.
 *
 * @param section the receipt's blocks and tokens
 * @param unknown where to put words before "oven" that no row knows
 * @returns phrases in the order of the text, none overlapping; °C are baking temperatures
 */
export function readHeat(section: Section, unknown: UnknownHeat[] = []): OvenPhrase[] {
  return new HeatReader(section, unknown).read()
}

class HeatReader {
  readonly #tokens: readonly Token[]
  readonly #found: Reading[] = []
  #baking = false

  constructor(
    readonly section: Section,
    readonly unknown: UnknownHeat[],
  ) {
    this.#tokens = section.tokens
  }

  read(): OvenPhrase[] {
    const tokens = this.#tokens
    const bakes: number[] = []
    for (let i = 0; i < tokens.length; i++) {
      const t = tokens[i]!
      if (t.kind !== 'word') continue
      if (OVENS.has(t.word) || BAKES.has(t.word)) bakes.push(i)
      else if (t.word === 'drawn' || t.word === 'rebake') this.#baking = true
    }
    this.#baking ||= bakes.length > 0
    for (const i of bakes) {
      if (OVENS.has(tokens[i]!.word)) this.#oven(i)
      else this.#bake(i)
    }
    for (let i = 0; i < tokens.length; i++) {
      const t = tokens[i]!
      if (t.kind === 'number') {
        i = this.#degrees(i)
        continue
      }
      if (t.kind !== 'word') continue
      switch (t.word) {
        case 'gas':
        case 'mark':
        case 'regulo':
        case 'fan':
        case 'convection':
          i = this.#degrees(i)
          break
        case 'heat':
        case 'heats':
        case 'temperature':
        case 'stove':
          if (this.#baking) this.#heat(i)
          break
        case 'after':
        case 'when':
        case 'soon':
        case 'once':
          if (this.#baking) this.#after(i)
          break
        case 'for':
        case 'bake':
        case 'bakes':
          if (this.#baking) this.#asFor(i)
          break
        case 'drawn':
          this.#drawn(i)
          break
        case 'with':
          if (this.#baking && /^(?:in|oven)$/.test(this.#word(i - 1))) this.#company(i, this.#limit(i, 6))
          break
        case 'flour':
        case 'meal':
        case 'paper':
        case 'hand':
        case 'arm':
          if (this.#baking) this.#test(i)
          break
        default:
          if (this.#baking && FIXED.next?.has(t.word)) this.#fixed(i)
      }
    }
    return this.#merge()
  }

  /** Where the sentence or block that holds token `i` ends, no further than `reach` tokens on. */
  #limit(i: number, reach: number): number {
    const block = this.#tokens[i]!.block
    let j = i
    while (j < this.#tokens.length && j < i + reach && this.#tokens[j]!.block === block && !isStop(this.#tokens[j])) j++
    return j
  }

  #floor(i: number, reach: number): number {
    const block = this.#tokens[i]!.block
    let j = i
    while (j > 0 && j > i - reach && this.#tokens[j - 1]!.block === block && !isStop(this.#tokens[j - 1])) j--
    return j
  }

  #near(i: number, before: number, after: number, wanted: ReadonlySet<string>): boolean {
    const low = this.#floor(i, before)
    const high = this.#limit(i, after)
    for (let j = low; j < high; j++) if (j !== i && wanted.has(this.#tokens[j]!.word)) return true
    return false
  }

  #word(i: number): string {
    return this.#tokens[i]?.word ?? ''
  }

  /** Rows of the receipt's own time and place; the widest reading where those are not known. */
  #choose(rows: readonly OvenWord[]): readonly OvenWord[] {
    if (rows.length === 1) return rows
    const {year, place} = this.section.facts
    const fitting = rows.filter(
      (row) =>
        (year === undefined || ((row.from ?? -1e9) <= year && year <= (row.to ?? 1e9))) &&
        (place === undefined || row.place === undefined || row.place === place),
    )
    return fitting.length > 0 ? fitting : rows
  }

  #put(
    from: number,
    to: number,
    rows: readonly OvenWord[],
    hedge: Hedge | null,
    rank: number,
    notes: readonly string[] = [],
    condition = false,
  ): void {
    const chosen = this.#choose(rows)
    let low = Math.min(...chosen.map((row) => row.celsius.low))
    let high = Math.max(...chosen.map((row) => row.celsius.high))
    const said = [...notes]
    const sources = new Set(chosen.map((row) => row.source))
    if (hedge !== null && hedge.effect !== 'none') {
      const hotter = (low + high) / 2 > 175 ? 1 : -1
      const shift = hedge.shift * hotter
      if (hedge.effect === 'more') {
        low += shift
        high += shift
        said.push(`“${hedge.id}” moves it ${hedge.shift} °C from moderate`)
      } else if (hedge.effect === 'less') {
        low -= shift
        high -= shift
        said.push(`“${hedge.id}” moves it ${hedge.shift} °C towards moderate`)
      } else {
        const middle = (low + high) / 2
        if (low >= 230) {
          // "not too fierce": the word itself is the warning.
          high = low
          low -= 50
        } else if (hotter > 0) {
          high = middle
          low -= hedge.shift * 2
        } else {
          low = middle
          high += hedge.shift * 2
        }
        said.push('a limit, not a heat: read as the milder half and a little below')
      }
      sources.add(hedge.source)
    }
    for (const row of chosen) if (row.note !== undefined && !said.includes(row.note)) said.push(row.note)
    const band = hedge?.effect === 'cap' ? bandOf(low, high) : chosen[0]!.band
    if (condition) said.push('said with an “if”: what happens at this heat, not the heat it wants')
    this.#found.push({from, to, band, low, high, sources: [...sources], notes: said, rank, condition})
  }

  /**
   * A run of hedges and heat words in [from, to): "rather slow", "good soaking", "hot, but not too hot".
   * @returns the rows and hedge that carry its meaning, or null where there is no heat word
   */
  #run(from: number, to: number): {rows: readonly OvenWord[]; hedge: Hedge | null; end: number; first: number} | null {
    const tokens = this.#tokens
    let main: readonly OvenWord[] | null = null
    let mainHedge: Hedge | null = null
    let pending = null as Hedge | null
    let end = from
    let first = -1
    let alternatives = false
    let i = from
    while (i < to) {
      const adjective = longest(ADJECTIVES, tokens, i, to)
      const hedge = longest(HEDGES, tokens, i, to)
      if (adjective !== null && adjective.end >= (hedge?.end ?? 0)) {
        const capped = pending?.effect === 'cap'
        if (first < 0) first = i
        if (main === null) {
          main = adjective.rows
          mainHedge = pending
        } else if (capped) {
          // "hot, but not too hot": the limit softens what was said first; "brisk, but not fierce" leaves brisk as it is.
          if (adjective.rows[0] === main[0]) mainHedge = pending
        } else if (main.every((row) => WEAK.has(row.id))) {
          main = adjective.rows
          mainHedge = pending
        } else if (adjective.rows.every((row) => WEAK.has(row.id))) {
          // "slow, steady": the weak word adds no heat.
        } else if (alternatives) {
          main = [...main, ...adjective.rows]
        } else {
          main = adjective.rows
          mainHedge = pending ?? mainHedge
        }
        pending = null
        alternatives = false
        i = adjective.end
        end = i
        continue
      }
      if (hedge !== null) {
        const row = hedge.rows[0]!
        if (row.effect !== 'none') pending = pending?.effect === 'cap' && row.effect === 'more' ? pending : row
        i = hedge.end
        continue
      }
      const t = tokens[i]!
      if (t.word === 'too' || (t.word === 'over' && ADJECTIVES.next?.has(this.#word(i + 1)))) {
        pending = HEDGE_CAP
        i++
        continue
      }
      if (LINKS.has(t.word) || t.word === ',' || t.word === '(' || t.word === ')') {
        if (t.word === 'or' || t.word === 'to' || t.word === 'and') alternatives = true
        i++
        continue
      }
      break
    }
    return main === null ? null : {rows: main, hedge: mainHedge, end, first}
  }

  #isRunWord(i: number): boolean {
    const word = this.#word(i)
    return RUN_WORDS.has(word) || LINKS.has(word) || word === ',' || word === 'too'
  }

  #oven(i: number): void {
    const tokens = this.#tokens
    const block = tokens[i]!.block
    // What stands before it.
    let j = i
    while (j > 0 && i - j < 10 && tokens[j - 1]!.block === block && this.#isRunWord(j - 1)) j--
    for (let k = Math.max(0, i - 3); k < i; k++) if (NOT_OVENS.has(tokens[k]!.word) && k >= j - 1) return
    if (tokens[j - 1] !== undefined && NOT_OVENS.has(this.#word(j - 1))) return
    // "so slow an oven", "as hot an oven": the article stands behind the word.
    if (j === i && /^an?$/.test(this.#word(i - 1))) {
      let k = i - 1
      while (k > 0 && i - k < 8 && tokens[k - 1]!.block === block && this.#isRunWord(k - 1)) k--
      if (k < i - 1 && /^(?:so|as|too|how|not|rather)$/.test(this.#word(k)) && this.#run(k, i - 1) !== null) j = k
    }
    const run = j < i ? this.#run(j, i) : null
    let from = j
    if (run !== null) {
      while (from < run.first && (this.#word(from) === ',' || LINKS.has(this.#word(from))) && this.#word(from) !== 'rather')
        from++
      if (tokens[from - 1]?.block === block && DETERMINERS.has(this.#word(from - 1))) from--
      // "rather a slow oven", "not too hot an oven"
      let hedge = run.hedge
      let k = from
      while (k > 0 && from - k < 2 && tokens[k - 1]!.block === block && HEDGES.next?.has(this.#word(k - 1))) k--
      const before = longest(HEDGES, tokens, k, from)
      if (k < from && before !== null && before.end === from && before.rows[0]!.effect !== 'none') {
        hedge ??= before.rows[0]!
        from = k
      }
      const article = this.#insideArticle(from, i)
      if (article !== null) hedge ??= article
      const right = this.#clause(i + 1, i, true)
      const capped = right?.hedge?.effect === 'cap' ? right.hedge : null
      this.#put(
        from,
        Math.max(i + 1, right?.end ?? 0),
        right !== null && capped === null ? right.rows : run.rows,
        capped ?? hedge,
        5,
      )
      return
    }
    const right = this.#clause(i + 1, i, false)
    if (right !== null) {
      let start = i
      const low = this.#floor(i, 7)
      // "not to have the oven too fierce", "let the oven be quick", "take care the oven is hot"
      while (start > low && LEAD_IN.has(this.#word(start - 1))) start--
      while (start < i && /^(?:and|of|it|in|if|when|that|with)$/.test(this.#word(start))) start++
      let hedge = right.hedge
      const warned = this.#near(i, 7, 1, WARNINGS)
      if (right.conditional && !warned) return
      if (warned && hedge === null && right.too) hedge = HEDGE_CAP
      this.#put(start, right.end, right.rows, hedge, 5, [], this.#conditional(start, i))
      return
    }
    // "stew gently in the oven", "let it do in the oven slowly"
    const prepositionAt = DETERMINERS.has(this.#word(i - 1)) ? i - 2 : i - 1
    if (
      /^in(?:to)?$/.test(this.#word(prepositionAt)) &&
      STRICT_ADVERBS.has(this.#word(prepositionAt - 1)) &&
      tokens[prepositionAt - 1]!.block === block
    ) {
      const adverb = longest(ADVERBS, tokens, prepositionAt - 1, prepositionAt)
      if (adverb !== null) this.#put(prepositionAt - 1, i + 1, adverb.rows, null, 3)
    } else if (STRICT_ADVERBS.has(this.#word(i + 1)) && this.#word(i + 1).endsWith('ly') && tokens[i + 1]!.block === block) {
      const adverb = longest(ADVERBS, tokens, i + 1, i + 2)
      if (adverb !== null) this.#put(i, i + 2, adverb.rows, null, 3)
    }
    // "a zestful oven": a word between article and oven that no row knows.
    const word = tokens[i - 1]
    if (
      word !== undefined &&
      word.kind === 'word' &&
      word.block === block &&
      i >= 2 &&
      (this.#word(i - 2) === 'a' || this.#word(i - 2) === 'an') &&
      !NEUTRAL.has(word.word) &&
      !HEDGES.next?.has(word.word) &&
      !NOT_OVENS.has(word.word)
    )
      this.unknown.push({text: this.section.source.slice(word.start, word.end), start: word.start, end: word.end})
  }

  /** "if the oven be hot", "should the oven be very brisk": it tells what then happens. */
  #conditional(from: number, oven: number): boolean {
    const low = Math.max(this.#floor(oven, 6), from - 2)
    for (let k = low; k < oven; k++) if (/^(?:if|unless|lest|should|because)$/.test(this.#word(k))) return true
    return false
  }

  /** "so slow an oven", "rather too hot an oven": the article stands inside. */
  #insideArticle(from: number, to: number): Hedge | null {
    for (let k = from; k < to; k++) if (this.#word(k) === 'too') return HEDGE_CAP
    return null
  }

  /** What is said of the oven behind it: "should be tolerably brisk", "of a moderate heat", "as hot as for bread", "not too hot". */
  #clause(
    at: number,
    oven: number,
    known: boolean,
  ): {rows: readonly OvenWord[]; hedge: Hedge | null; end: number; too: boolean; conditional: boolean} | null {
    const tokens = this.#tokens
    const limit = this.#limit(at < tokens.length ? at : oven, 14)
    if (tokens[at]?.block !== tokens[oven]!.block) return null
    let j = at
    let copula = false
    let comma = false
    let too = false
    let negative = false
    if (known) {
      // After "a hot oven" only a correction counts: ", but not too hot", ", not over quick", ", rather slow".
      let k = j
      if (this.#word(k) === ',') k++
      if (!/^(?:but|not|though|yet|nor|rather)$/.test(this.#word(k))) return null
    }
    const before = this.#floor(oven, 6)
    for (let k = before; k < oven; k++) if (/^(?:not|nor|never|no|don't)$/.test(this.#word(k))) negative = true
    const heating = this.#near(oven, 4, 1, HEATING)
    if (heating && /^(?:well|thoroughly|properly)$/.test(this.#word(j)))
      return {rows: WELL_HEATED, hedge: null, end: j + 1, too: false, conditional: false}
    while (j < limit) {
      const word = this.#word(j)
      if (word === ',') {
        const next = this.#word(j + 1)
        if (!AFTER_COMMA.has(next)) {
          // "oven, moderate."
          const alone = longest(ADJECTIVES, tokens, j + 1, limit)
          if (alone === null || alone.end < limit || alone.rows.every((row) => WEAK.has(row.id))) return null
        }
        comma = true
        j++
        continue
      }
      if (BE.has(word)) copula = true
      if (word === 'too') too = true
      if (word === 'not' || word === 'never') negative = true
      // "from the oven and cool": what is joined on by "and" is the next step.
      const run = !known && /^(?:and|or|to)$/.test(word) ? null : this.#run(j, Math.min(limit, j + 8))
      if (run !== null) {
        const row = run.rows[0]!
        const word0 = this.#word(run.first)
        for (let k = j; k < run.end; k++) {
          if (this.#word(k) === 'too') too = true
          if (this.#word(k) === 'not') negative = true
        }
        const last = this.#word(j - 1)
        const needsNoun = j > at && PREPOSITIONS.has(last)
        let end = run.end
        let noun = HEAT_NOUNS.has(this.#word(end))
        if (!noun && this.#word(end) === 'and' && HEAT_NOUNS.has(this.#word(end + 2))) noun = true
        if (noun) end++
        if ((needsNoun || /^(?:a|an)$/.test(last)) && !noun) return null
        if (last === 'to' && VERB_TOO.has(word0) && !this.#near(oven, 4, 1, ALLOWING)) return null
        if (WEAK.has(row.id) && !copula && !noun && !heating) return null
        const following = tokens[end]
        if (
          !copula &&
          !noun &&
          following !== undefined &&
          following.block === tokens[oven]!.block &&
          following.kind === 'word' &&
          !AFTER_ADJECTIVE.has(following.word)
        )
          return null
        // "as hot as for bread", "hotter than for pies": the thing compared with says more than the word.
        const compared = this.#comparison(run.first, this.#limit(run.first, 14))
        if (compared !== null) return {rows: compared.rows, hedge: null, end: compared.end, too, conditional: false}
        const hedge = too || (negative && run.hedge === null && this.#negated(oven, run.first)) ? HEDGE_CAP : run.hedge
        return {rows: run.rows, hedge, end, too, conditional: too && !negative && this.#near(oven, 6, 1, CONDITIONS)}
      }
      if (word === 'as' || word === 'same' || word === 'fit' || word === 'proper') {
        const compared = this.#comparison(j, limit)
        if (compared !== null) return {rows: compared.rows, hedge: null, end: compared.end, too: false, conditional: false}
      }
      if (heating && /^(?:till|until|well|thoroughly|sufficiently)$/.test(word)) {
        j++
        continue
      }
      const hedge = longest(HEDGES, tokens, j, limit)
      if (hedge !== null) {
        j = hedge.end
        continue
      }
      if (COPULAS.has(word) || LINKS_AFTER.has(word) || (comma && word === 'and')) {
        j++
        continue
      }
      return null
    }
    return null
  }

  #negated(oven: number, at: number): boolean {
    for (let k = oven + 1; k < at; k++) if (this.#word(k) === 'not') return true
    return false
  }

  /** From a word of heat or likeness on: "… as for bread", "… enough for pies", "… as you do for biscuits". */
  #comparison(at: number, limit: number): Match<OvenWord> | null {
    const tokens = this.#tokens
    let likeness = false
    for (let j = at; j < Math.min(limit, at + 10); j++) {
      const word = this.#word(j)
      if (LIKENESS.has(word)) likeness = true
      if (!likeness) continue
      if (word === 'for' || ((word === 'bake' || word === 'bakes') && /^(?:to|will|would)$/.test(this.#word(j - 1)))) {
        let k = j + 1
        while (k < limit && (DETERMINERS.has(this.#word(k)) || this.#word(k) === 'baking' || this.#word(k) === 'common')) {
          const direct = longest(AS_FOR, tokens, k, limit)
          if (direct !== null) return direct
          k++
        }
        const found = longest(AS_FOR, tokens, k, limit)
        if (found !== null) return found
        return null
      }
      if (word === ',' && j > at + 1) return null
    }
    return null
  }

  /** "for": the end of a comparison whose oven or heat stands before it. */
  #asFor(i: number): void {
    const tokens = this.#tokens
    if (BAKES.has(this.#word(i)) && !/^(?:to|will|would)$/.test(this.#word(i - 1))) return
    const low = this.#floor(i, 9)
    let likeness = -1
    let heat = -1
    for (let k = i - 1; k >= low; k--) {
      const word = this.#word(k)
      if (LIKENESS.has(word) && likeness < 0 && i - k <= 7) likeness = k
      if (OVENS.has(word) || HEATED.has(word)) heat = k
      else if (BAKES.has(word) && i - k <= 5) heat = k
    }
    if (likeness < 0 || heat < 0) return
    const limit = this.#limit(i, 8)
    const found = this.#comparison(likeness, limit)
    if (found === null || found.end <= i) return
    const said = OVENS.has(this.#word(likeness - 1)) ? this.#word(likeness - 2) : this.#word(likeness - 1)
    const hotter = /^(?:hotter|quicker|brisker|fiercer|warmer)$/.test(said)
    const cooler = /^(?:cooler|slower|slacker|gentler)$/.test(said) || this.#word(likeness - 2) === 'so'
    const shift = hotter ? COMPARATIVE_CELSIUS : cooler ? -COMPARATIVE_CELSIUS : 0
    const rows =
      shift === 0
        ? found.rows
        : found.rows.map((row) => {
            const celsius = {low: row.celsius.low + shift, high: row.celsius.high + shift}
            return {...row, celsius, band: bandOf(celsius.low, celsius.high)}
          })
    let from = Math.min(heat, likeness)
    if (DETERMINERS.has(this.#word(from - 1)) && tokens[from - 1]!.block === tokens[i]!.block) from--
    this.#put(from, found.end, rows, null, 6, ['heat by comparison with another baking'])
  }

  #bake(i: number): void {
    const tokens = this.#tokens
    const block = tokens[i]!.block
    const limit = this.#limit(i, 11)
    let hedged: Hedge | null = null
    for (let j = i + 1; j < limit; j++) {
      const word = this.#word(j)
      if (word === ',' || tokens[j]!.kind === 'mark') {
        const added = word === ',' ? longest(ADVERBS, tokens, j + 1, limit) : null
        if (added !== null && (this.#word(added.end - 1).endsWith('ly') || added.end === limit)) continue
        break
      }
      if (ADVERB_STOPS.has(word)) break
      if (OVENS.has(word) && !DETERMINERS.has(this.#word(j - 1))) break
      const adverb = longest(ADVERBS, tokens, j, limit)
      if (adverb !== null) {
        const next = tokens[adverb.end]
        const nextWord = next?.block === block ? next.word : ''
        if (HEAT_NOUNS.has(nextWord) || (nextWord !== '' && ADJECTIVES.next?.has(nextWord))) break
        if ((word === 'hot' || word === 'fast') && next !== undefined && next.block === block && next.kind === 'word') break
        if (
          !word.endsWith('ly') &&
          next !== undefined &&
          next.block === block &&
          next.kind === 'word' &&
          !AFTER_ADJECTIVE.has(nextWord)
        )
          break
        this.#put(j - i <= 5 ? i : j, adverb.end, adverb.rows, hedged, 4)
        break
      }
      const hedge = longest(HEDGES, tokens, j, limit)
      if (hedge !== null && hedge.rows[0]!.effect !== 'none') {
        hedged = hedge.rows[0]!
        j = hedge.end - 1
        continue
      }
      if (word === 'with' && this.#company(j, limit)) break
    }
    // "slow baking", "gently baked", "baked in a slow heat" has its own reading
    const previous = this.#word(i - 1)
    if (tokens[i - 1]?.block === block && ADVERBS.next?.has(previous) && !/^(?:easily|evenly|softly|tenderly)$/.test(previous)) {
      const plain = !previous.endsWith('ly')
      if (previous !== 'hot' && previous !== 'fast' && (!plain || tokens[i]!.word === 'baking')) {
        const adverb = longest(ADVERBS, tokens, i - 1, i)
        if (adverb !== null) this.#put(i - 1, i + 1, adverb.rows, null, 3)
      }
    }
  }

  /** "bake it with brown bread", "in with the bread": `i` is at "with". */
  #company(i: number, limit: number): boolean {
    let k = i + 1
    while (k < limit && DETERMINERS.has(this.#word(k))) k++
    const things = longest(WITH, this.#tokens, k, limit)
    if (
      things === null ||
      /^(?:crumbs?|sauce|dough|and|sugar|paste|cut|sippets|crust|under|over|round)$/.test(this.#word(things.end))
    )
      return false
    this.#put(i, things.end, things.rows, null, 4, ['baked in company'])
    return true
  }

  /** "the bread being drawn": `i` is at "drawn". */
  #drawn(i: number): void {
    if (this.#word(i - 1) !== 'being') return
    const low = this.#floor(i, 7)
    for (let k = low; k < i - 1; k++) {
      const things = longest(AFTER, this.#tokens, k, i)
      if (things === null || things.end !== i - 1 || !this.#near(i, 20, 20, SETS_IN)) continue
      this.#put(DETERMINERS.has(this.#word(k - 1)) && k > low ? k - 1 : k, i + 1, things.rows, null, 4, [
        'by what the drawn goods leave in the brick',
      ])
      return
    }
  }

  /** "a moderate heat", "the heat should be gentle" where the sentence bakes. */
  #heat(i: number): void {
    const tokens = this.#tokens
    const stove = this.#word(i) === 'stove'
    if (FIXED.next?.has(this.#word(i))) this.#fixed(i)
    const block = tokens[i]!.block
    if (!this.#near(i, 40, 40, CONTEXT_BAKES) && !this.#follows(i)) return
    if (this.#near(i, 12, 6, POT_WORDS)) return
    let noun = i
    if (this.#word(i - 1) === 'of' && /^degrees?$/.test(this.#word(i - 2))) noun = i - 2
    else if (/^an?$/.test(this.#word(i - 1)) && i >= 3 && /^(?:so|as|too)$/.test(this.#word(i - 3))) noun = i - 1
    let j = noun
    while (j > 0 && noun - j < 8 && tokens[j - 1]!.block === block && this.#isRunWord(j - 1)) j--
    const run = j < noun ? this.#run(j, noun) : null
    if (run !== null) {
      if (stove && (run.rows[0]!.band === 'hot' || !this.#near(i, 14, 4, DRIES))) return
      let from = j
      while (from < run.first && (this.#word(from) === ',' || LINKS.has(this.#word(from)))) from++
      if (tokens[from - 1]?.block === block && DETERMINERS.has(this.#word(from - 1))) from--
      this.#put(from, i + 1, run.rows, run.hedge, 3)
      return
    }
    if (stove) return
    // "as much heat as flour bread"
    if (/^(?:as|than)$/.test(this.#word(i + 1))) {
      let k = i + 2
      while (k < i + 5 && (DETERMINERS.has(this.#word(k)) || this.#word(k) === 'for')) k++
      const found = longest(AS_FOR, tokens, k, this.#limit(i, 10))
      if (found !== null) {
        let from = i
        while (
          from > 0 &&
          i - from < 4 &&
          tokens[from - 1]!.block === block &&
          /^(?:about|as|much|the|same|more|less|rather)$/.test(this.#word(from - 1))
        )
          from--
        this.#put(from, found.end, found.rows, null, 6, ['heat by comparison with another baking'])
        return
      }
    }
    // "the heat (of the oven) should be …"; the verb "heat the oven" is the oven's own clause.
    if (!DETERMINERS.has(this.#word(i - 1))) return
    let at = i + 1
    if (this.#word(at) === 'of' && DETERMINERS.has(this.#word(at + 1)) && OVENS.has(this.#word(at + 2))) at += 3
    if (!COPULAS.has(this.#word(at)) || PREPOSITIONS.has(this.#word(at))) return
    const right = this.#clause(at, i, false)
    if (right !== null && !right.conditional) this.#put(i - 1, right.end, right.rows, right.hedge, 3)
  }

  /** The sentence before this one bakes. */
  #follows(i: number): boolean {
    const low = this.#floor(i, 40)
    return low > 1 && this.#tokens[low - 1]!.block === this.#tokens[i]!.block && this.#near(low - 2, 25, 1, CONTEXT_BAKES)
  }

  /** "after the bread is drawn", "when the pies come out", "as soon as the batch is out". */
  #after(i: number): void {
    const tokens = this.#tokens
    const lead = this.#word(i)
    const limit = this.#limit(i, 13)
    let j = i + 1
    if (lead === 'soon') {
      if (this.#word(j) !== 'as') return
      j++
    }
    let drawing = /^(?:drawing|taking|withdrawing|removing)$/.test(this.#word(j))
    if (drawing) j++
    else {
      // "after you have drawn the bread"
      let k = j
      while (k < j + 3 && /^(?:you|they|we|she|have|has|had|i)$/.test(this.#word(k))) k++
      if (k > j && /^(?:drawn|draw|removed|remove|taken|take|withdrawn)$/.test(this.#word(k))) {
        drawing = true
        j = k + 1
      }
    }
    if (drawing && this.#word(j) === 'out') j++
    const determined = DETERMINERS.has(this.#word(j))
    let things = longest(AFTER, tokens, j, limit)
    if (things === null && determined) things = longest(AFTER, tokens, j + 1, limit)
    if (things === null) {
      // "after the wheaten bread", "when the first batch of bread": one unknown word may stand between.
      const k = j + (determined ? 2 : 1)
      things = longest(AFTER, tokens, k, limit)
      if (things === null) return
    }
    let end = things.end
    if (this.#word(end) === 'of' && DRAWABLE.has(this.#word(end + 1))) end += 2
    const id = things.rows[0]!.id
    let from = i
    if (lead === 'soon' && this.#word(i - 1) === 'as') from--
    if (lead === 'when' && /^(?:even|just)$/.test(this.#word(i - 1))) from--
    if (drawing) {
      if (this.#word(end) === 'out') end++
      this.#put(from, end, things.rows, null, 5, ['by what the drawn goods leave in the brick'])
      return
    }
    let k = end
    while (
      k < limit &&
      /^(?:is|are|be|was|were|has|have|been|hath|being|all|just|comes?|taken|shall|coming|both|it|done)$/.test(this.#word(k))
    )
      k++
    const verb = this.#word(k)
    const moved = /^(?:comes?|taken|coming)$/.test(this.#word(k - 1))
    const oven = this.#near(i, 25, 18, SETS_IN)
    if (k > end && (DRAWN.has(verb) || (moved && verb === 'out'))) {
      if (!oven) return
      // "When the bread is taken out of the oven, rub it": what is done to the bread itself.
      if (lead === 'when' && this.#word(k) === 'out' && this.#word(k + 1) === 'of') return
      let stop = k + 1
      if (verb !== 'out' && this.#word(stop) === 'out') stop++
      this.#put(from, stop, things.rows, null, 5, ['by what the drawn goods leave in the brick'])
    } else if (
      k > end &&
      DONE.has(verb) &&
      lead !== 'when' &&
      (id === 'after-bread' || id === 'after-brown-bread' || id === 'after-all')
    ) {
      if (this.#near(i, 20, 15, SETS_IN_STRICT))
        this.#put(from, k + 1, things.rows, null, 4, ['by what the drawn goods leave in the brick'])
    } else if (k > end && /^(?:baked|done)$/.test(this.#word(k - 1)) && lead !== 'when' && id === 'after-bread') {
      if (this.#near(i, 20, 15, SETS_IN_STRICT))
        this.#put(from, k, things.rows, null, 4, ['by what the drawn goods leave in the brick'])
    } else if (k === end && lead === 'after' && this.#near(i, 6, 1, OVEN_OR_BAKE)) {
      const next = tokens[end]
      if (next === undefined || next.kind === 'mark' || next.block !== tokens[i]!.block || AFTER_ADJECTIVE.has(next.word))
        this.#put(from, end, things.rows, null, 4, ['by what the drawn goods leave in the brick'])
    }
  }

  #fixed(i: number): void {
    const found = longest(FIXED, this.#tokens, i, this.#limit(i, 9))
    if (found === null) return
    const row = found.rows[0]!
    if (row.id === 'heat-subsides' && !this.#near(i, 60, 60, OVEN_OR_BAKE) && !this.#follows(i)) return
    this.#put(i, found.end, found.rows, null, 4)
  }

  /** Tests that the receipt itself writes down: flour or paper that browns, a hand held in. */
  #test(i: number): void {
    const tokens = this.#tokens
    const thing = this.#word(i)
    const block = tokens[i]!.block
    let oven = false
    let acts = -1
    let plain = false
    for (let k = i; k >= 0 && i - k < 22 && tokens[k]!.block === block; k--) {
      const word = this.#word(k)
      if (OVENS.has(word) || word === 'hearth') oven = true
      if (TEST_ACTS.has(word) && i - k < 9 && acts < 0) acts = k
      if (word === 'white' || word === 'writing' || word === 'note' || word === 'letter') plain = true
    }
    if (acts < 0) return
    for (let k = i; k < tokens.length && k - i < 30 && tokens[k]!.block === block; k++) if (OVENS.has(this.#word(k))) oven = true
    if (!oven) return
    if (thing === 'paper' && (!plain || this.#near(i, 10, 8, COVERS))) return
    let quick = false
    for (let k = i + 1; k < tokens.length && k - i < 34 && tokens[k]!.block === block; k++) {
      const word = this.#word(k)
      if (/^(?:directly|once|immediately|instantly|quickly)$/.test(word)) quick = true
      if (thing === 'hand' || thing === 'arm') {
        if (word === 'count' || word === 'counting' || word === 'seconds') {
          let end = k + 1
          while (end < tokens.length && end < k + 3 && tokens[end]!.kind !== 'mark' && tokens[end]!.block === block) end++
          this.#put(acts, end, [TESTS.get('test-hand')!], null, 2, ['a test written in the receipt'])
          return
        }
        continue
      }
      const before = this.#word(k - 1)
      let id: string | null = null
      if (/^(?:blackens?|black|blazes?|fire)$/.test(word)) id = 'test-black'
      else if (/^(?:burns?|scorche?s?)$/.test(word)) id = 'test-black'
      else if (/^browns?$|^browned$/.test(word))
        id =
          before === 'dark'
            ? 'test-dark-brown'
            : before === 'light' || before === 'delicate' || before === 'golden'
              ? 'test-golden'
              : quick && thing !== 'paper'
                ? 'test-dark-brown'
                : 'test-brown'
      else if (/^(?:golden|gold)$/.test(word)) id = 'test-golden'
      else if (/^yellow$/.test(word)) id = 'test-pale'
      if (id !== null && /^(?:without|not)$/.test(before)) continue
      if (id !== null) {
        this.#put(acts, k + 1, [TESTS.get(id)!], null, 2, ['a test written in the receipt'])
        return
      }
    }
  }

  /** Degrees and gas marks from token `i`; returns the last token taken, or `i`. */
  #degrees(i: number): number {
    const tokens = this.#tokens
    const members: Heat[] = []
    let j = i
    let end = i
    while (true) {
      const heat = this.#degree(j, members.length > 0)
      if (heat === null) break
      members.push(heat)
      end = heat.end
      // Joined by a slash, a bracket, a comma or "or" they name one heat.
      let k = end
      let joints = 0
      while (k < tokens.length && joints < 3 && tokens[k]!.block === tokens[i]!.block && JOINTS.has(this.#word(k))) {
        k++
        joints++
      }
      if (joints === 0 && !/^(?:gas|fan|mark)$/.test(this.#word(k))) break
      j = k
    }
    if (members.length === 0) return i
    if (!this.#ofOven(i, end, members)) return end - 1
    let low = Infinity
    let high = -Infinity
    const notes: string[] = []
    const sources = new Set<string>()
    for (const m of members) {
      low = Math.min(low, m.low)
      high = Math.max(high, m.high)
      for (const n of m.notes) if (!notes.includes(n)) notes.push(n)
      for (const s of m.sources) sources.add(s)
    }
    let disagree = false
    for (const a of members) for (const b of members) if (a.low - b.high > DISAGREE_CELSIUS) disagree = true
    if (disagree)
      notes.push(
        `the temperatures disagree: ${members.map((m) => `${this.#slice(m.from, m.end)} is ${Math.round(m.low)}${m.high > m.low + 0.5 ? `–${Math.round(m.high)}` : ''} °C`).join(', ')}`,
      )
    let to = end
    if (this.#word(to) === ')' && this.#open(i, to)) to++
    this.#found.push({from: i, to, band: bandOf(low, high), low, high, sources: [...sources], notes, rank: 8, disagree})
    return to - 1
  }

  #open(from: number, to: number): boolean {
    let depth = 0
    for (let k = from; k < to; k++) depth += this.#word(k) === '(' ? 1 : this.#word(k) === ')' ? -1 : 0
    return depth > 0
  }

  #slice(from: number, to: number): string {
    return this.section.source.slice(this.#tokens[from]!.start, this.#tokens[to - 1]!.end).replace(/\s+/g, ' ')
  }

  #degree(i: number, chained: boolean): Heat | null {
    const tokens = this.#tokens
    let j = i
    let fan = false
    if (this.#word(j) === 'fan' || this.#word(j) === 'convection') {
      fan = true
      j++
      if (this.#word(j) === 'oven' || this.#word(j) === 'forced') j++
      if (this.#word(j) === 'at' || this.#word(j) === ':') j++
    }
    const word = this.#word(j)
    if (word === 'gas' || word === 'mark' || word === 'regulo') {
      let k = j + 1
      while (k < j + 3 && /^(?:mark|no|number|oven|regulo|\.)$/.test(this.#word(k))) k++
      const n = tokens[k]
      if (n === undefined || n.kind !== 'number' || n.den === 0 || n.block !== tokens[i]!.block) return null
      let low = n.num / n.den
      let high = low
      let end = k + 1
      const next = tokens[k + 2]
      if (
        /^(?:-|—|to|or|\/)$/.test(this.#word(k + 1)) &&
        next !== undefined &&
        next.kind === 'number' &&
        next.den > 0 &&
        !DEGREE_AFTER.has(this.#word(k + 3))
      ) {
        high = Math.max(low, next.num / next.den)
        low = Math.min(low, next.num / next.den)
        end = k + 3
      }
      const a = celsiusOfGasMark(low)
      const b = celsiusOfGasMark(high)
      if (a === null || b === null) return null
      return {from: i, end, low: a, high: b, explicit: true, notes: [], sources: ['gas-mark-table']}
    }
    const first = tokens[j]
    if (first === undefined || first.kind !== 'number' || first.den !== 1 || first.block !== tokens[i]!.block) return null
    let low = first.num
    let high = low
    let k = j + 1
    // A unit may stand after the first figure of a range as well: "180°–200 °C".
    const unitBefore = this.#unit(k)
    const dash = unitBefore === null ? k : unitBefore.end
    const second = tokens[dash + 1]
    if (
      /^(?:-|—|to|or|and)$/.test(this.#word(dash)) &&
      second !== undefined &&
      second.kind === 'number' &&
      second.den === 1 &&
      second.num > 30 &&
      second.block === first.block
    ) {
      const unitAfter = this.#unit(dash + 2)
      const same = unitBefore === null || unitAfter === null || unitBefore.unit === '' || unitBefore.unit === unitAfter.unit
      if ((unitAfter !== null || unitBefore !== null) && same && second.num < 700) {
        low = Math.min(first.num, second.num)
        high = Math.max(first.num, second.num)
        k = unitAfter === null ? dash + 2 : dash + 2
      }
    }
    const unit = this.#unit(k) ?? (k === j + 1 ? null : unitBefore)
    let scale: 'f' | 'c' | ''
    let end = k
    const notes: string[] = []
    if (unit !== null) {
      scale = unit.unit
      end = Math.max(unit.end, k)
    } else {
      // Bare: "oven to 350", "a 350 oven", "(fan 160)".
      if (high < 100 || high > 600) return null
      const beforeWord = this.#word(i - 1)
      const oven =
        fan ||
        (chained && FAN_AFTER.has(this.#word(k))) ||
        OVENS.has(this.#word(k)) ||
        (/^(?:to|at|of|about)$/.test(beforeWord) &&
          (OVENS.has(this.#word(i - 2)) || OVENS.has(this.#word(i - 3)) || BAKES.has(this.#word(i - 2)))) ||
        OVENS.has(beforeWord)
      if (!oven) return null
      scale = ''
    }
    if (low > 1000 || high > 1000) return null
    if (
      FAN_AFTER.has(this.#word(end)) ||
      (this.#word(end) === '(' && FAN_AFTER.has(this.#word(end + 1)) && this.#word(end + 2) === ')')
    ) {
      fan = true
      end += this.#word(end) === '(' ? 3 : 1
      while (/^(?:forced|oven|assisted|bake)$/.test(this.#word(end))) end++
    }
    if (scale === '') {
      const judged = this.#scale(high, fan)
      scale = judged.scale
      if (judged.note !== null) notes.push(judged.note)
    }
    const celsius = (n: number): number => (scale === 'f' ? celsiusOfFahrenheit(n) : n)
    const offset = fan ? FAN_CELSIUS : 0
    const sources = [scale === 'f' ? 'nist-sp811' : 'nist-sp811']
    if (fan) {
      notes.push(`fan oven: ${FAN_CELSIUS} °C added for a still one`)
      sources.push('fan-oven')
    }
    return {
      from: i,
      end,
      low: celsius(low) + offset,
      high: celsius(high) + offset,
      explicit: unit !== null && unit.unit !== '',
      notes,
      sources,
    }
  }

  #unit(k: number): {unit: 'f' | 'c' | ''; end: number} | null {
    const t = this.#tokens[k]
    if (t === undefined) return null
    const letter = (at: number): {unit: 'f' | 'c'; end: number} | null => {
      const u = this.#tokens[at]
      if (u === undefined) return null
      const stop =
        this.#word(at + 1) === '.' && this.#tokens[at + 1]!.start === u.end && this.#tokens[at + 2]?.capital !== true
          ? at + 2
          : at + 1
      if (u.word === 'f' || u.word === 'fahr') return {unit: 'f', end: stop}
      if (u.word === 'fahrenheit' || u.word === 'farenheit') return {unit: 'f', end: at + 1}
      if (u.word === 'c' || u.word === 'cent') return {unit: 'c', end: stop}
      if (u.word === 'celsius' || u.word === 'centigrade' || u.word === 'celcius') return {unit: 'c', end: at + 1}
      return null
    }
    if (t.word === '℉') return {unit: 'f', end: k + 1}
    if (t.word === '℃') return {unit: 'c', end: k + 1}
    if (t.word === '°') {
      const u =
        this.#tokens[k + 1]?.gap === true && !/^(?:f|c|fahrenheit|celsius|centigrade|fahr)$/.test(this.#word(k + 1))
          ? null
          : letter(k + 1)
      return u ?? {unit: '', end: k + 1}
    }
    if (t.word === 'degrees' || t.word === 'degree' || t.word === 'deg' || t.word === 'degs') {
      let at = k + 1
      if (this.#word(at) === '.' && /^deg/.test(t.word) && t.word.length < 6) at++
      if (this.#word(at) === 'of') at++
      return letter(at) ?? {unit: '', end: k + 1}
    }
    // "350F", "180 C": a capital, or close to the figure.
    if ((t.word === 'f' || t.word === 'c') && t.kind === 'word' && (t.capital || !t.gap)) return {unit: t.word, end: k + 1}
    if (t.word === 'fahrenheit' || t.word === 'celsius') return {unit: t.word === 'celsius' ? 'c' : 'f', end: k + 1}
    return null
  }

  /** Which scale a figure without one is on: by its size, then by the receipt's place and year. */
  #scale(n: number, fan: boolean): {scale: 'f' | 'c'; note: string | null} {
    if (n > 300) return {scale: 'f', note: 'no scale written: read as °F, too hot for °C'}
    const {place, year} = this.section.facts
    if (place === 'us') return {scale: 'f', note: 'no scale written: read as °F, an American receipt'}
    if (year !== undefined && year < 1960) return {scale: 'f', note: 'no scale written: read as °F, by its year'}
    if (place !== undefined || fan) return {scale: 'c', note: 'no scale written: read as °C'}
    if (n < 225) return {scale: 'c', note: 'no scale written: read as °C; if it is °F, write “oven: … °F” in the front matter'}
    if (n > 250) return {scale: 'f', note: 'no scale written: read as °F; if it is °C, write “oven: … °C” in the front matter'}
    return {scale: 'c', note: 'no scale written: read as °C; if it is °F, write “oven: … °F” in the front matter'}
  }

  /** Whether degrees are the oven's and not the milk's, the syrup's or the crumb's. */
  #ofOven(from: number, end: number, members: readonly Heat[]): boolean {
    if (members.some((m) => m.sources.includes('gas-mark-table') || m.sources.includes('fan-oven'))) return true
    if (members[0]!.low < 45 || members[members.length - 1]!.high > 480) return false
    const low = this.#floor(from, 14)
    for (let k = from - 1; k >= low; k--) {
      const word = this.#word(k)
      if (
        OVENS.has(word) ||
        BAKES.has(word) ||
        word === 'preheat' ||
        word === 'preheated' ||
        word === 'heated' ||
        word === 'roast'
      )
        return true
      if (INSIDE_WORDS.has(word)) return false
    }
    const high = this.#limit(end < this.#tokens.length ? end : from, 10)
    for (let k = end; k < high; k++) {
      const word = this.#word(k)
      if (OVENS.has(word) || BAKES.has(word)) return true
      if (INSIDE_WORDS.has(word)) return false
      if (this.#tokens[k]!.block !== this.#tokens[from]!.block) break
    }
    return this.#baking && members[0]!.low >= 120
  }

  /** Overlapping readings become one: the union of their words with the meaning of the better. */
  #merge(): OvenPhrase[] {
    const {source} = this.section
    const tokens = this.#tokens
    const sorted = [...this.#found].sort((a, b) => a.from - b.from || b.to - a.to)
    const kept: Reading[] = []
    for (const reading of sorted) {
      const last = kept.at(-1)
      if (last !== undefined && reading.from < last.to) {
        const better = reading.rank > last.rank ? reading : last
        kept[kept.length - 1] = {...better, from: last.from, to: Math.max(last.to, reading.to)}
      } else kept.push(reading)
    }
    return kept.map((reading) => {
      const start = tokens[reading.from]!.start
      const end = tokens[reading.to - 1]!.end
      return {
        text: source.slice(start, end),
        start,
        end,
        band: reading.band,
        celsius: {low: round(reading.low), high: round(reading.high)},
        sources: reading.sources,
        ...(reading.notes.length > 0 ? {notes: reading.notes} : {}),
        ...(reading.disagree === true ? {disagree: true} : {}),
        ...(reading.condition === true ? {condition: true} : {}),
      }
    })
  }
}

const round = (n: number): number => Math.round(n)

interface Heat {
  readonly from: number
  readonly end: number
  readonly low: number
  readonly high: number
  readonly explicit: boolean
  readonly notes: readonly string[]
  readonly sources: readonly string[]
}

const HEDGE_CAP = hedges.find((row) => row.effect === 'cap')!
const WELL_HEATED = ovenWords.filter((row) => row.id === 'well-heated')
const RUN_WORDS: ReadonlySet<string> = new Set(
  [...used('adjective'), ...hedges]
    .flatMap((row) => row.phrases.flatMap((phrase) => phrase.split(/[\s-]+/).map(fold)))
    .filter((word) => !/^(?:an?|the|of|is|to|in|by|at|no)$/.test(word)),
)
const LEAD_IN = set(
  'not to have let the your an a and make keep care take that be sure mind see if must should heat with having when of it heating get into in never get',
)
const WARNINGS = set("not care careful lest never nor don't avoid mind observe beware")
const CONDITIONS = set('if when should unless where because')
const HEATING = set('heat heating heated fire make het')
const ALLOWING = set('let allow allowing letting left until till')
const AFTER_COMMA = set(
  'which that but not and rather moderately very as or let tolerably pretty well neither nor having with quick slack',
)
const LINKS_AFTER = set('but nor or rather yet heat heated about')
const LIKENESS = set('heat as enough same than fit proper such like suitable hot required sufficient right heated')
const HEATED = set('hot heat heated hotter cooler quicker slower slack temperature fire')
const DRIES = set('dry drying dried bake baked candy sieve')
const DRAWABLE = set('bread loaves pies manchet manchets')
const SETS_IN = set("put set bake baked baking oven ouen place stand let dry leave remain in do lay slide bak'd")
const SETS_IN_STRICT = set('put set oven ouen bake dry leave place')
const OVEN_OR_BAKE = set("oven ovens bake baked baking ouen bak'd")
const TEST_ACTS = set(
  'throw throwing strew strewing sprinkle sprinkling scatter scattering dust dusting cast put putting place placing lay hold holding thrust fling thrown try test',
)
const COVERS = set('cover covered over butter buttered oiled line lined tie on under')
const JOINTS = set('/ ( ) , or - — = ; • · and |')
const FAN_AFTER = set('fan convection')
const DEGREE_AFTER = set('° degrees f c')
const NEUTRAL = set(
  "brick baker's bakers' range gas electric wood clay stone iron same new second different other bread conventional pizza preheated heated combination home modern fan open empty clean old american stove proper public village common domestic kitchen portable cold unheated earth earthen outdoor cooking masonry coal sheet drying",
)

/**
 * Heat stated by itself, as front matter's `oven` states it: "a quick oven", "quick", "350 °F", "gas mark 4", "after the bread is drawn".
 *
 * @returns the first phrase read, or null where the words say nothing of heat; offsets are into `text`
 */
export function readHeatWords(text: string, facts: ReceiptFacts = {}): OvenPhrase | null {
  if (text.length > 200) return null
  const read = (words: string): OvenPhrase | null => readHeat(plainSection(words, facts))[0] ?? null
  const direct = read(text)
  if (direct !== null) return direct
  // "quick", "350", "gently": the key says that it is the oven's.
  for (const [before, after] of [
    ['a ', ' oven'],
    ['oven at ', ''],
    ['oven ', ''],
    ['bake ', ''],
  ] as const) {
    const found = read(`${before}${text}${after}`)
    if (found !== null) return {...found, text, start: 0, end: text.length}
  }
  return null
}
