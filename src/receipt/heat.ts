import {cardinals} from '../lexicon/grammar-words.js'
import type {Hedge} from '../lexicon/schema.js'
import {bandOf, DegreeReader} from './degrees.js'
import {clauseAt} from './heat-clause.js'
import {readAsFor, readCompany} from './heat-comparison.js'
import {HeatReadings, type UnknownHeat} from './heat-readings.js'
import {isRunWord, runAt} from './heat-run.js'
import {
  ADJECTIVES,
  ADVERB_STOPS,
  ADVERBS,
  AFTER,
  AFTER_ADJECTIVE,
  AS_FOR,
  BAKES,
  BE,
  BETWEEN_TIMES,
  COMPARATIVES,
  CONTEXT_BAKES,
  COPULAS,
  COVERS,
  DETERMINERS,
  DONE,
  DRAWABLE,
  DRAWN,
  DRIES,
  FIXED,
  HEAT_NOUNS,
  HEDGE_CAP,
  HEDGES,
  LEAD_IN,
  LINKS,
  longest,
  NEUTRAL,
  NOT_OVENS,
  OVEN_OR_BAKE,
  OVENS,
  POT_WORDS,
  PREPOSITIONS,
  SETS_IN,
  SETS_IN_STRICT,
  STRICT_ADVERBS,
  TEST_ACTS,
  TESTS,
  UNKNOWN_HEAT,
  UPON,
  WARNINGS,
} from './heat-words.js'
import {plainSection, type Section} from './section.js'
import type {OvenPhrase, ReceiptFacts} from './types.js'

export {bandOf, celsiusOfFahrenheit, celsiusOfGasMark} from './degrees.js'

/**
 * Every phrase of a receipt that says how hot the oven or the baking is: words with their hedges, degrees, gas marks, comparisons with
 * other bakings, and the tests by flour, paper and hand. A fire under a pot and a Dutch oven say nothing of the oven and are passed over.
 */

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
/** What a word may begin or belong to. */
type Trigger = 'oven' | 'bake' | 'degrees' | 'heat' | 'after' | 'for' | 'drawn' | 'with' | 'test' | 'fixed'

const TRIGGERS = new Map<string, Trigger>()
for (const word of FIXED.next?.keys() ?? []) TRIGGERS.set(word, 'fixed')
const triggered: ReadonlyArray<readonly [Trigger, Iterable<string>]> = [
  ['oven', OVENS],
  ['bake', BAKES],
  ['degrees', ['gas', 'mark', 'regulo', 'fan', 'convection']],
  ['heat', ['heat', 'heats', 'temperature', 'stove', 'fire']],
  ['after', ['after', 'when', 'soon', 'once']],
  ['for', ['for']],
  ['drawn', ['drawn']],
  ['with', ['with']],
  ['test', ['flour', 'meal', 'paper', 'hand', 'arm']],
]
for (const [trigger, list] of triggered) for (const word of list) TRIGGERS.set(word, trigger)

class HeatReader extends HeatReadings {
  #baking = false
  #degreeReader: DegreeReader | null = null

  read(): OvenPhrase[] {
    const tokens = this.tokens
    const triggers: number[] = []
    for (let i = 0; i < tokens.length; i++) {
      const t = tokens[i]!
      if (t.kind === 'number') triggers.push(i)
      else if (t.kind === 'word') {
        const trigger = TRIGGERS.get(t.word)
        if (trigger === undefined) continue
        triggers.push(i)
        if (trigger === 'oven' || trigger === 'bake' || t.word === 'drawn') this.#baking = true
      }
    }
    let next = 0
    for (const i of triggers) {
      if (i < next) continue
      const t = tokens[i]!
      const trigger = t.kind === 'number' ? 'degrees' : TRIGGERS.get(t.word)!
      if (trigger === 'degrees') next = this.#degrees(i)
      else if (this.#baking) this.#read(trigger, i)
    }
    return this.merged()
  }

  #read(trigger: Trigger, i: number): void {
    const t = this.word(i)
    switch (trigger) {
      case 'oven':
        this.#oven(i)
        break
      case 'bake':
        this.#bake(i)
        if (/^(?:to|will|would)$/.test(this.word(i - 1))) readAsFor(this, i)
        break
      case 'heat':
        if (t === 'fire') this.#fire(i)
        else if (t === 'stove' && this.#bakingStove(i)) this.#oven(i)
        else this.#heat(i)
        break
      case 'after':
        this.#after(i)
        break
      case 'for':
        readAsFor(this, i)
        break
      case 'drawn':
        this.#drawn(i)
        break
      case 'with':
        if (/^(?:in|oven)$/.test(this.word(i - 1))) readCompany(this, i, this.limit(i, 6))
        break
      case 'test':
        this.#test(i)
        break
      default:
        this.#fixed(i)
    }
    if (trigger !== 'fixed' && trigger !== 'heat' && FIXED.next?.has(this.word(i))) this.#fixed(i)
  }

  /** Degrees at token `i`; the token to go on from. */
  #degrees(i: number): number {
    this.#degreeReader ??= new DegreeReader(this.section)
    const read = this.#degreeReader.degrees(i, this.#baking)
    if (read === null) return i + 1
    if (read.ofOven) this.found.push({...read, band: bandOf(read.low, read.high), rank: 8})
    return read.to
  }

  #oven(i: number): void {
    const tokens = this.tokens
    const block = tokens[i]!.block
    // What stands before it.
    let j = i
    while (j > 0 && i - j < 10 && tokens[j - 1]!.block === block && isRunWord(this, j - 1)) j--
    for (let k = Math.max(0, i - 3); k < i; k++) if (NOT_OVENS.has(tokens[k]!.word) && k >= j - 1) return
    if (tokens[j - 1] !== undefined && NOT_OVENS.has(this.word(j - 1))) return
    // "so slow an oven", "as hot an oven": the article stands behind the word.
    if (j === i && /^an?$/.test(this.word(i - 1))) {
      let k = i - 1
      while (k > 0 && i - k < 8 && tokens[k - 1]!.block === block && isRunWord(this, k - 1)) k--
      if (k < i - 1 && /^(?:so|as|too|how|not|rather)$/.test(this.word(k)) && runAt(this, k, i - 1) !== null) j = k
    }
    // "the hotter the oven the better"
    if (j === i && this.word(i - 1) === 'the' && this.word(i - 3) === 'the' && COMPARATIVES.has(this.word(i - 2))) {
      const found = longest(ADJECTIVES, tokens, i - 2, i - 1)
      if (found !== null) this.put(i - 3, i + 1, found.rows, null, 4)
      return
    }
    const run = j < i ? runAt(this, j, i) : null
    let from = j
    if (run !== null) {
      while (from < run.first && (this.word(from) === ',' || LINKS.has(this.word(from))) && this.word(from) !== 'rather') from++
      if (tokens[from - 1]?.block === block && DETERMINERS.has(this.word(from - 1))) from--
      // "rather a slow oven", "not too hot an oven"
      let hedge = run.hedge
      let k = from
      while (k > 0 && from - k < 2 && tokens[k - 1]!.block === block && HEDGES.next?.has(this.word(k - 1))) k--
      const before = longest(HEDGES, tokens, k, from)
      if (k < from && before !== null && before.end === from && before.rows[0]!.effect !== 'none') {
        hedge ??= before.rows[0]!
        from = k
      }
      const article = this.#insideArticle(from, i)
      if (article !== null) hedge ??= article
      const right = clauseAt(this, i + 1, i, true)
      const capped = right?.hedge?.effect === 'cap' ? right.hedge : null
      this.put(
        from,
        Math.max(i + 1, right?.end ?? 0),
        right !== null && capped === null ? right.rows : run.rows,
        capped ?? hedge,
        5,
      )
      return
    }
    const right = clauseAt(this, i + 1, i, false)
    if (right !== null) {
      let start = i
      const low = this.floor(i, 7)
      // "not to have the oven too fierce", "let the oven be quick", "take care the oven is hot"
      while (start > low && LEAD_IN.has(this.word(start - 1))) start--
      while (start < i && /^(?:and|of|it|in|if|when|that|with)$/.test(this.word(start))) start++
      let hedge = right.hedge
      const warned = this.near(i, 7, 1, WARNINGS)
      if (right.conditional && !warned) return
      if (warned && hedge === null && right.too) hedge = HEDGE_CAP
      this.put(start, right.end, right.rows, hedge, 5, [], this.#conditional(start, i))
      return
    }
    // "Put it in the oven. It must be rather slow."
    const pronoun = /^[.;,:]$/.test(this.word(i + 1)) ? i + 2 : i + 1
    if (
      tokens[pronoun + 2]?.block === block &&
      /^(?:it|which)$/.test(this.word(pronoun)) &&
      /^(?:must|should|ought|may)$/.test(this.word(pronoun + 1))
    ) {
      const said = clauseAt(this, pronoun + 1, pronoun, false)
      if (said !== null && !said.conditional && this.word(said.end) !== 'when') {
        this.put(i, said.end, said.rows, said.hedge, 4)
        return
      }
    }
    // "stew gently in the oven", "let it do in the oven slowly"
    const prepositionAt = DETERMINERS.has(this.word(i - 1)) ? i - 2 : i - 1
    if (
      /^in(?:to)?$/.test(this.word(prepositionAt)) &&
      STRICT_ADVERBS.has(this.word(prepositionAt - 1)) &&
      tokens[prepositionAt - 1]!.block === block
    ) {
      const adverb = longest(ADVERBS, tokens, prepositionAt - 1, prepositionAt)
      if (adverb !== null) this.put(prepositionAt - 1, i + 1, adverb.rows, null, 3)
    } else if (/^in(?:to)?$/.test(this.word(prepositionAt)) && this.#adverbBefore(prepositionAt)) {
      // read there
    } else if (STRICT_ADVERBS.has(this.word(i + 1)) && this.word(i + 1).endsWith('ly') && tokens[i + 1]!.block === block) {
      const adverb = longest(ADVERBS, tokens, i + 1, i + 2)
      if (adverb !== null) this.put(i, i + 2, adverb.rows, null, 3)
    }
    // "in the oven to dry slowly"
    else if (
      this.word(i + 1) === 'to' &&
      tokens[i + 3]?.block === block &&
      STRICT_ADVERBS.has(this.word(i + 3)) &&
      !BAKES.has(this.word(i + 2))
    ) {
      const adverb = longest(ADVERBS, tokens, i + 3, i + 4)
      if (adverb !== null) this.put(i, i + 4, adverb.rows, null, 3)
    }
    // "a zestful oven": a word between article and oven that no row knows. It is carried, with every heat it may mean.
    const word = tokens[i - 1]
    if (
      word !== undefined &&
      word.kind === 'word' &&
      word.block === block &&
      i >= 2 &&
      (this.word(i - 2) === 'a' || this.word(i - 2) === 'an') &&
      !NEUTRAL.has(word.word) &&
      !HEDGES.next?.has(word.word) &&
      !NOT_OVENS.has(word.word)
    ) {
      this.unknown.push({text: this.section.source.slice(word.start, word.end), start: word.start, end: word.end})
      if (!word.capital)
        this.put(i - 2, i + 1, UNKNOWN_HEAT, null, 1, [`“${word.word}” is no word for heat known here: any heat`])
    }
  }

  /** "stew gently for two hours in the oven": only a time stands between. */
  #adverbBefore(preposition: number): boolean {
    const low = this.floor(preposition, 9)
    for (let k = preposition - 1; k >= low; k--) {
      const t = this.tokens[k]!
      if (t.kind === 'word' && STRICT_ADVERBS.has(t.word)) {
        if (!t.word.endsWith('ly') || BAKES.has(this.word(k - 1))) return false
        const adverb = longest(ADVERBS, this.tokens, k, k + 1)
        if (adverb === null) return false
        this.put(k, k + 1, adverb.rows, null, 3)
        return true
      }
      if (t.kind === 'mark' || (t.kind === 'word' && !BETWEEN_TIMES.has(t.word))) return false
    }
    return false
  }

  /** "if the oven be hot", "should the oven be very brisk": it tells what then happens. */
  #conditional(from: number, oven: number): boolean {
    const low = Math.max(this.floor(oven, 6), from - 2)
    for (let k = low; k < oven; k++) if (/^(?:if|unless|lest|should|because)$/.test(this.word(k))) return true
    return false
  }

  /** "so slow an oven", "rather too hot an oven": the article stands inside. */
  #insideArticle(from: number, to: number): Hedge | null {
    for (let k = from; k < to; k++) if (this.word(k) === 'too') return HEDGE_CAP
    return null
  }

  #bake(i: number): void {
    const tokens = this.tokens
    const block = tokens[i]!.block
    const limit = this.limit(i, 11)
    let hedged: Hedge | null = null
    for (let j = i + 1; j < limit; j++) {
      const word = this.word(j)
      if (word === ',' || tokens[j]!.kind === 'mark') {
        const added = word === ',' ? longest(ADVERBS, tokens, j + 1, limit) : null
        if (added !== null && (this.word(added.end - 1).endsWith('ly') || added.end === limit)) continue
        break
      }
      // "bake it as you do manchet"
      if (word === 'as' && /^(?:you|ye|they|we|she)$/.test(this.word(j + 1))) {
        let k = j + 2
        while (k < j + 6 && /^(?:would|do|did|use|to|bake|commonly|usually|a|an|your|other)$/.test(this.word(k))) k++
        const goods = k > j + 2 ? longest(AS_FOR, tokens, k, limit) : null
        if (goods !== null) {
          this.put(i, goods.end, goods.rows, null, 4, ['heat by comparison with another baking'])
          break
        }
      }
      if (ADVERB_STOPS.has(word)) break
      if (OVENS.has(word) && !DETERMINERS.has(this.word(j - 1))) break
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
          !AFTER_ADJECTIVE.has(nextWord) &&
          // "bake quick fifteen minutes"
          !(Object.hasOwn(cardinals, nextWord) || /^(?:a|an|about|half|three)$/.test(nextWord))
        )
          break
        this.put(j - i <= 5 ? i : j, adverb.end, adverb.rows, hedged, 4)
        break
      }
      const hedge = longest(HEDGES, tokens, j, limit)
      if (hedge !== null && hedge.rows[0]!.effect !== 'none') {
        hedged = hedge.rows[0]!
        j = hedge.end - 1
        continue
      }
      if (word === 'with' && readCompany(this, j, limit)) break
    }
    // "requires a gentle baking"
    if (tokens[i]!.word === 'baking') {
      let j = i
      while (j > 0 && i - j < 6 && tokens[j - 1]!.block === block && isRunWord(this, j - 1)) j--
      const run = j < i && /^an?$/.test(this.word(j - 1)) ? runAt(this, j, i) : null
      if (run !== null) {
        this.put(j - 1, i + 1, run.rows, run.hedge, 4)
        return
      }
    }
    // "slow baking", "gently baked", "baked in a slow heat" has its own reading
    const previous = this.word(i - 1)
    if (tokens[i - 1]?.block === block && ADVERBS.next?.has(previous) && !/^(?:easily|evenly|softly|tenderly)$/.test(previous)) {
      const plain = !previous.endsWith('ly')
      if (previous !== 'hot' && previous !== 'fast' && (!plain || tokens[i]!.word === 'baking')) {
        const adverb = longest(ADVERBS, tokens, i - 1, i)
        if (adverb !== null) this.put(i - 1, i + 1, adverb.rows, null, 3)
      }
    }
  }

  /** "the bread being drawn", "that bread hath been newly drawn out of": `i` is at "drawn". */
  #drawn(i: number): void {
    let verb = i
    while (verb > 0 && i - verb < 4 && /^(?:being|been|newly|just|lately|hath|has|have|had)$/.test(this.word(verb - 1))) verb--
    if (verb === i) return
    const low = this.floor(i, 9)
    for (let k = low; k < verb; k++) {
      const things = longest(AFTER, this.tokens, k, i)
      if (things === null || things.end !== verb || !this.near(i, 20, 20, SETS_IN)) continue
      this.put(DETERMINERS.has(this.word(k - 1)) && k > low ? k - 1 : k, i + 1, things.rows, null, 4, [
        'by what the drawn goods leave in the brick',
      ])
      return
    }
  }

  /** American books of the 1870s bake "in a hot stove"; what stands on one is boiled. */
  #bakingStove(i: number): boolean {
    return !this.near(i, 7, 1, UPON) && !this.near(i, 12, 12, POT_WORDS) && this.near(i, 14, 12, DRIES)
  }

  /** "bake with a slow fire", "in the oven when the fire is low": not a fire that something hangs before or stands over. */
  #fire(i: number): void {
    const tokens = this.tokens
    const block = tokens[i]!.block
    if (this.near(i, 10, 8, UPON) || this.near(i, 12, 8, POT_WORDS) || !this.near(i, 12, 8, OVEN_OR_BAKE)) return
    let j = i
    while (j > 0 && i - j < 6 && tokens[j - 1]!.block === block && isRunWord(this, j - 1)) j--
    const determined = tokens[j - 1]?.block === block && DETERMINERS.has(this.word(j - 1))
    const run = j < i ? runAt(this, j, i) : null
    if (run !== null) {
      if (determined && this.word(j - 2) === 'with') this.put(j - 1, i + 1, run.rows, run.hedge, 3)
      return
    }
    if (!determined || j !== i || !BE.has(this.word(i + 1)) || !this.near(i, 12, 8, OVENS)) return
    const right = clauseAt(this, i + 1, i, false)
    if (right !== null && !right.conditional) this.put(i - 1, right.end, right.rows, right.hedge, 3)
  }

  /** "a moderate heat", "the heat should be gentle" where the sentence bakes. */
  #heat(i: number): void {
    const tokens = this.tokens
    const stove = this.word(i) === 'stove'
    if (FIXED.next?.has(this.word(i))) this.#fixed(i)
    const block = tokens[i]!.block
    const baking = this.near(i, 40, 40, CONTEXT_BAKES) || this.#follows(i)
    // In a receipt that bakes, heat is the oven's unless the sentence has a pot in it.
    if (this.near(i, baking ? 12 : 60, baking ? 6 : 60, POT_WORDS)) return
    // "at bread heat", "a biscuit heat"
    if (!stove) {
      for (let k = Math.max(this.floor(i, 4), i - 3); k < i; k++) {
        const goods = longest(AS_FOR, tokens, k, i)
        if (goods === null || goods.end !== i) continue
        this.put(DETERMINERS.has(this.word(k - 1)) ? k - 1 : k, i + 1, goods.rows, null, 5, [
          'heat by comparison with another baking',
        ])
        return
      }
    }
    let noun = i
    if (this.word(i - 1) === 'of' && /^degrees?$/.test(this.word(i - 2))) noun = i - 2
    else if (/^an?$/.test(this.word(i - 1)) && i >= 3 && /^(?:so|as|too)$/.test(this.word(i - 3))) noun = i - 1
    let j = noun
    while (j > 0 && noun - j < 8 && tokens[j - 1]!.block === block && isRunWord(this, j - 1)) j--
    const run = j < noun ? runAt(this, j, noun) : null
    if (run !== null) {
      if (stove && (run.rows[0]!.band === 'hot' || !this.near(i, 14, 4, DRIES))) return
      let from = j
      while (from < run.first && (this.word(from) === ',' || LINKS.has(this.word(from)))) from++
      if (tokens[from - 1]?.block === block && DETERMINERS.has(this.word(from - 1))) from--
      this.put(from, i + 1, run.rows, run.hedge, 3)
      return
    }
    if (stove) return
    // "as much heat as flour bread"
    if (/^(?:as|than)$/.test(this.word(i + 1))) {
      let k = i + 2
      while (k < i + 5 && (DETERMINERS.has(this.word(k)) || this.word(k) === 'for')) k++
      const found = longest(AS_FOR, tokens, k, this.limit(i, 10))
      if (found !== null) {
        let from = i
        while (
          from > 0 &&
          i - from < 4 &&
          tokens[from - 1]!.block === block &&
          /^(?:about|as|much|the|same|more|less|rather)$/.test(this.word(from - 1))
        )
          from--
        this.put(from, found.end, found.rows, null, 6, ['heat by comparison with another baking'])
        return
      }
    }
    // "the heat (of the oven) should be …"; the verb "heat the oven" is the oven's own clause.
    if (!DETERMINERS.has(this.word(i - 1))) return
    let at = i + 1
    if (this.word(at) === 'of' && DETERMINERS.has(this.word(at + 1)) && OVENS.has(this.word(at + 2))) at += 3
    if (!COPULAS.has(this.word(at)) || PREPOSITIONS.has(this.word(at))) return
    const right = clauseAt(this, at, i, false)
    if (right !== null && !right.conditional) this.put(i - 1, right.end, right.rows, right.hedge, 3)
  }

  /** The sentence before this one bakes. */
  #follows(i: number): boolean {
    const low = this.floor(i, 40)
    return low > 1 && this.tokens[low - 1]!.block === this.tokens[i]!.block && this.near(low - 2, 25, 1, CONTEXT_BAKES)
  }

  /** "after the bread is drawn", "when the pies come out", "as soon as the batch is out". */
  #after(i: number): void {
    const tokens = this.tokens
    const lead = this.word(i)
    const limit = this.limit(i, 13)
    let j = i + 1
    if (lead === 'soon') {
      if (this.word(j) !== 'as') return
      j++
    }
    let drawing = /^(?:drawing|taking|withdrawing|removing)$/.test(this.word(j))
    if (drawing) j++
    else {
      // "after you have drawn the bread"
      let k = j
      while (k < j + 3 && /^(?:you|they|we|she|have|has|had|i)$/.test(this.word(k))) k++
      if (k > j && /^(?:drawn|draw|removed|remove|taken|take|withdrawn)$/.test(this.word(k))) {
        drawing = true
        j = k + 1
      }
    }
    if (drawing && this.word(j) === 'out') j++
    const determined = DETERMINERS.has(this.word(j))
    let things = longest(AFTER, tokens, j, limit)
    if (things === null && determined) things = longest(AFTER, tokens, j + 1, limit)
    if (things === null) {
      // "after the wheaten bread", "when the first batch of bread": one unknown word may stand between.
      const k = j + (determined ? 2 : 1)
      things = longest(AFTER, tokens, k, limit)
      if (things === null) return
    }
    let end = things.end
    if (this.word(end) === 'of' && DRAWABLE.has(this.word(end + 1))) end += 2
    const id = things.rows[0]!.id
    let from = i
    if (lead === 'soon' && this.word(i - 1) === 'as') from--
    if (lead === 'when' && /^(?:even|just)$/.test(this.word(i - 1))) from--
    if (drawing) {
      if (this.word(end) === 'out') end++
      this.put(from, end, things.rows, null, 5, ['by what the drawn goods leave in the brick'])
      return
    }
    let k = end
    while (
      k < limit &&
      /^(?:is|are|be|was|were|has|have|been|hath|being|all|just|comes?|taken|shall|coming|both|it|done)$/.test(this.word(k))
    )
      k++
    const verb = this.word(k)
    const moved = /^(?:comes?|taken|coming)$/.test(this.word(k - 1))
    const oven = this.near(i, 25, 18, SETS_IN)
    if (k > end && (DRAWN.has(verb) || (moved && verb === 'out'))) {
      if (!oven) return
      // "When the bread is taken out of the oven, rub it": what is done to the bread itself.
      if (lead === 'when' && this.word(k) === 'out' && this.word(k + 1) === 'of') return
      let stop = k + 1
      if (verb !== 'out' && this.word(stop) === 'out') stop++
      this.put(from, stop, things.rows, null, 5, ['by what the drawn goods leave in the brick'])
    } else if (
      k > end &&
      DONE.has(verb) &&
      lead !== 'when' &&
      (id === 'after-bread' || id === 'after-brown-bread' || id === 'after-all')
    ) {
      if (this.near(i, 20, 15, SETS_IN_STRICT))
        this.put(from, k + 1, things.rows, null, 4, ['by what the drawn goods leave in the brick'])
    } else if (k > end && /^(?:baked|done)$/.test(this.word(k - 1)) && lead !== 'when' && id === 'after-bread') {
      if (this.near(i, 20, 15, SETS_IN_STRICT))
        this.put(from, k, things.rows, null, 4, ['by what the drawn goods leave in the brick'])
    } else if (k === end && lead === 'after' && this.near(i, 6, 1, OVEN_OR_BAKE)) {
      const next = tokens[end]
      if (next === undefined || next.kind === 'mark' || next.block !== tokens[i]!.block || AFTER_ADJECTIVE.has(next.word))
        this.put(from, end, things.rows, null, 4, ['by what the drawn goods leave in the brick'])
    }
  }

  #fixed(i: number): void {
    const found = longest(FIXED, this.tokens, i, this.limit(i, 9))
    if (found === null) return
    const row = found.rows[0]!
    if (row.id === 'heat-subsides' && !this.near(i, 60, 60, OVEN_OR_BAKE) && !this.#follows(i)) return
    this.put(i, found.end, found.rows, null, 4)
  }

  /** Tests that the receipt itself writes down: flour or paper that browns, a hand held in. */
  #test(i: number): void {
    const tokens = this.tokens
    const thing = this.word(i)
    const block = tokens[i]!.block
    let oven = false
    let acts = -1
    let plain = false
    for (let k = i; k >= 0 && i - k < 22 && tokens[k]!.block === block; k--) {
      const word = this.word(k)
      if (OVENS.has(word) || word === 'hearth') oven = true
      if (TEST_ACTS.has(word) && i - k < 9 && acts < 0) acts = k
      if (word === 'white' || word === 'writing' || word === 'note' || word === 'letter') plain = true
    }
    if (acts < 0) return
    for (let k = i; k < tokens.length && k - i < 30 && tokens[k]!.block === block; k++) if (OVENS.has(this.word(k))) oven = true
    if (!oven) return
    if (thing === 'paper' && (!plain || this.near(i, 10, 8, COVERS))) return
    let quick = false
    for (let k = i + 1; k < tokens.length && k - i < 34 && tokens[k]!.block === block; k++) {
      const word = this.word(k)
      if (/^(?:directly|once|immediately|instantly|quickly)$/.test(word)) quick = true
      if (thing === 'hand' || thing === 'arm') {
        if (word === 'count' || word === 'counting' || word === 'seconds') {
          let end = k + 1
          while (end < tokens.length && end < k + 3 && tokens[end]!.kind !== 'mark' && tokens[end]!.block === block) end++
          this.put(acts, end, [TESTS.get('test-hand')!], null, 2, ['a test written in the receipt'])
          return
        }
        continue
      }
      const before = this.word(k - 1)
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
        this.put(acts, k + 1, [TESTS.get(id)!], null, 2, ['a test written in the receipt'])
        return
      }
    }
  }
}
/**
 * Heat stated by itself, as front matter's `oven` states it: "a quick oven", "quick", "350 °F", "gas mark 4", "after the bread is drawn".
 *
 * @returns the first phrase read, or null where the words say nothing of heat; offsets are into `text`
 */
export function readHeatWords(text: string, facts: ReceiptFacts = {}): OvenPhrase | null {
  if (text.length > 200) return null
  const read = (words: string): OvenPhrase | null =>
    readHeat(plainSection(words, facts)).find((phrase) => phrase.known !== false) ?? null
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
