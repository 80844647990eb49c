import {isLabelLine, isPartAgain, isPartAlone, partIn, partLine, partOfList} from './dish-parts.js'
import {Entries, type Mode} from './entries.js'
import {scan} from './entry-scan.js'
import {type FormulaTold, type PiecesMade, withFormula} from './formula.js'
import {headingUse} from './heading-words.js'
import {keptEntries} from './kept-entries.js'
import {isIndex, isIngredientsLabel, linesOf, looksListed, mostlyListed, runInStart} from './list-signs.js'
import {type MetNote, noteBlocks, notesOf, type OtherWay, withoutOtherWays} from './notes.js'
import {type RatioTold, withoutRatios} from './ratios.js'
import type {Block} from './section.js'
import {weightInCells} from './stated-weight.js'
import {listBegins} from './story.js'
import {
  cellsOf,
  columnsOf,
  type Heads,
  headsOf,
  headWords,
  percentColumn,
  readByCells,
  readByHeads,
  readByStages,
  readPercent,
  type Stages,
  stagesOf,
} from './table-rows.js'
import {isTimeLine} from './time-labels.js'
import {minutesIn} from './time-numbers.js'
import type {ReadIngredient} from './types.js'
import {textOf, type View} from './view.js'

/**
 * The ingredients of a receipt, block by block: which are lists and which prose, under which headings. The grammar of one entry begins in
 * `entry-scan.ts`.
 */

/** A short paragraph that begins so tells how much it makes. */
const YIELDS = new Set(['makes', 'yield', 'yields', 'serves', 'servings'])
const YIELD = 20
/** Longest heading that names a part by a word that is in no table, words. */
const NAME = 3
const SUMS: ReadonlySet<string> = new Set(['total', 'totals', 'sum', 'gesamt', 'summe', 'yield'])

/** A table gives the amounts of two sizes of the dish. */
export interface SizesTold {
  readonly start: number
  /** The head of the column that is read, and of one that is not. */
  readonly read: string
  readonly other: string
}

const isUnitOfTime = (word: string): boolean => minutesIn(word) !== null

/** Called for what is told of a reading. */
export interface Tell {
  /** A note whose amounts are another way, and not among the entries. */
  readonly otherWay: (other: OtherWay) => void
  /** An amount for so much of a thing whose whole is not said. */
  readonly ratio: (told: RatioTold) => void
  /** A formula in baker's percentages without a weight to reckon from. */
  readonly formula: (told: FormulaTold) => void
  /** Asked how many pieces the receipt makes. */
  readonly pieces: PiecesMade
  /** A column that is not read. */
  readonly sizes: (told: SizesTold) => void
}

const QUIET: Tell = {otherWay: () => {}, ratio: () => {}, formula: () => {}, pieces: () => null, sizes: () => {}}

/** A column of shares or costs is no other size. */
const isShare = (head: string): boolean => /%|percent|ratio|parts?\b|kcal|calories|cost|price/i.test(head)

/** Reads the ingredients of one section. */
class IngredientReader {
  private readonly entries: Entries
  /** Tokens of the notes below the receipt. */
  private readonly notes: MetNote[] = []
  /** Heads of the table being read, and their words. */
  private heads: Heads | null = null
  private headWords: readonly string[] = []
  private stages: Stages | null = null
  private sizesTold = false
  /** The column of baker's percentages of the table being read; −1 where it has none. */
  private percents = -1

  constructor(
    private readonly view: View,
    private readonly title: string,
    private readonly tell: Tell,
  ) {
    this.entries = new Entries(view)
  }

  /** All entries, in the order of the text. */
  read(listed: boolean): ReadIngredient[] {
    const {tokens, section} = this.view
    if (listed) {
      this.line(0, tokens.length)
      return keptEntries(this.entries, this.title, this.entries.drafts)
    }
    let at = 0
    const ranges: Array<{block: Block; from: number; to: number}> = []
    for (let b = 0; b < section.blocks.length; b++) {
      const from = at
      while (at < tokens.length && tokens[at]!.block === b) at++
      ranges.push({block: section.blocks[b]!, from, to: at})
    }
    const runIn = ranges.some(({block, from, to}) => block.kind !== 'heading' && runInStart(this.view, from, to) >= 0)
    let steps = false
    // What stands above the list is told of the dish, and is no part of it: "when we had 40 kg of plums".
    const list = listBegins(this.view)
    const isStory = (at: number): boolean => at < list && !this.entries.listed
    const notes = noteBlocks(this.view)
    for (const [index, {block, from, to}] of ranges.entries()) {
      if (from >= to) continue
      const note = notes.get(index)
      if (note !== undefined) {
        const {listed, last} = this.entries
        for (const [a, z] of notesOf(this.view, from, to)) {
          this.notes.push({from: a, to: z, beside: listed && note === 'labelled'})
          this.prose(a, z, listed ? 'method' : 'prose')
        }
        this.entries.last = last
        continue
      }
      if (block.kind === 'heading') {
        steps = this.heading(from, to, ranges[index + 1]?.to ?? to, steps)
        continue
      }
      if (block.kind === 'quote' && (this.entries.listed || isStory(from))) continue
      const start = runInStart(this.view, from, to)
      if (start >= 0) {
        if (this.entries.listed) this.entries.part = this.entries.nextPart()
        this.entries.listed = true
        this.entries.runInBlock = this.view.tokens[start]!.block
        this.runIn(start, to)
        continue
      }
      if (runIn) {
        if (block.kind === 'item' || this.aside(from, to)) continue
        this.prose(from, to, this.entries.listed ? 'method' : 'prose')
        continue
      }
      // "- Prep time: 20 min"
      if (block.kind !== 'paragraph' && isTimeLine(this.view.tokens, from, to, isUnitOfTime)) continue
      if (block.kind === 'row') {
        this.row(from, to, index === 0 || ranges[index - 1]!.block.kind !== 'row')
        continue
      }
      if (block.kind === 'item') {
        // "- for the paste": a label over the items below it.
        if (!steps && isPartAlone(this.view, from, to) && partLine(this.entries, from, to)) continue
        if (!steps && isPartAgain(this.entries, from, to)) continue
        if (!steps && looksListed(this.view, from, to)) {
          this.entries.listed = true
          this.line(from, to)
        } else if (!isStory(from)) this.prose(from, to, this.entries.listed ? 'method' : 'prose')
        continue
      }
      const lines = linesOf(this.view, from, to)
      if (lines.length > 1 && mostlyListed(this.view, lines)) {
        this.entries.listed = true
        for (const [a, z] of lines) {
          // "Vorteig" as the last line of the dough's list is what was given above.
          if (isIngredientsLabel(this.view, a, z) || isPartAgain(this.entries, a, z)) continue
          if ((isPartAlone(this.view, a, z) || isLabelLine(this.view, a, z)) && partLine(this.entries, a, z)) continue
          if (looksListed(this.view, a, z)) this.line(a, z)
          else if (!partLine(this.entries, a, z)) this.prose(a, z, 'method')
        }
        continue
      }
      if (lines.length === 1 && (isIngredientsLabel(this.view, from, to) || partLine(this.entries, from, to))) continue
      if (isStory(from) || this.aside(from, to)) continue
      this.prose(from, to, this.entries.listed ? 'method' : 'prose')
    }
    const own = withoutOtherWays(this.view, this.entries.drafts, this.notes, this.tell.otherWay)
    const weighed = withFormula(this.view, withoutRatios(this.view, own, this.tell.ratio), this.tell.pieces, this.tell.formula)
    return keptEntries(this.entries, this.title, weighed)
  }

  // ---------------------------------------------------------------- kinds of block

  /** Remarks after the receipt: cost, season, how many it serves, how long it takes. */
  private aside(from: number, to: number): boolean {
    const {words} = this.view
    let i = from
    while (i < to && this.view.tokens[i]!.kind !== 'word') i++
    const word = words[i]
    if (word === 'time' || word === 'seasonable' || word === 'sufficient' || word === 'illustration') return true
    if (to - from < YIELD && YIELDS.has(word ?? '')) return true
    if (word === 'average' && words[i + 1] === 'cost') return true
    return false
  }

  /**
   * A heading sets the part, or says that steps follow: do they?
   *
   * @param next token of the end of the block below it
   */
  private heading(from: number, to: number, next: number, steps: boolean): boolean {
    const {words, section, tokens} = this.view
    if (from === 0) return false
    const use = headingUse(section.blocks[tokens[from]!.block]!.text)
    if (use === 'ingredients') {
      this.entries.part = partOfList(this.view, from, to)
      return false
    }
    if (use === 'method' || use === 'notes' || use === 'nutrition') return true
    const text = words.slice(from, to).join(' ')
    if (/^(?:method|directions?|instructions?|preparation|procedure|steps?|to (?:make|bake|serve|finish))\b/.test(text))
      return true
    if (/^(?:variations?|storage|equipment|varianten|aufbewahrung|zubehor|utensilien)\b/.test(text)) return true
    const part = partIn(this.view, from, to)
    if (part !== '') {
      this.entries.part = part
      return false
    }
    // "Ragù" over a list of its own.
    if ((use === null || use === 'part') && to - from <= NAME && to < next && tokens[to]!.block === tokens[from]!.block + 1) {
      if (section.blocks[tokens[to]!.block]!.kind !== 'item' || !looksListed(this.view, to, next)) return steps
      this.entries.part = textOf(this.view, from, to)
      return false
    }
    return steps
  }

  // ---------------------------------------------------------------- one block

  /** A list in one paragraph, with the method behind it: "INGREDIENTS.— … Mode.— …". */
  private runIn(from: number, to: number): void {
    const {words} = this.view
    let end = to
    for (let i = from; i < to; i++)
      if (
        (words[i] === 'mode' || words[i] === 'method') &&
        (words[i - 1] === '.' || words[i - 1] === '—') &&
        (words[i + 1] === '.' || words[i + 1] === '—' || words[i + 1] === ':')
      ) {
        end = i
        break
      }
    scan(this.entries, from, end, 'list')
    if (end < to) this.prose(end + 1, to, 'method')
  }

  private line(from: number, to: number): void {
    const {part, drafts} = this.entries
    const {length} = drafts
    scan(this.entries, from, to, 'list')
    // "For brushing: 1 yolk, 2 tbsp milk": all of the part in one line, and the next is of the whole again.
    if (drafts.slice(length).filter(({low}) => low !== null).length > 1) this.entries.part = part
  }

  /** A table row: cells hold amount and item in either order, or the figure of the measure that heads its column. */
  private row(from: number, to: number, first: boolean): void {
    if (first) {
      this.sizesTold = false
      this.percents = -1
      this.stages = stagesOf(this.view, from, to)
      if (this.stages !== null) return
      this.heads = headsOf(this.view, from, to)
      this.headWords = this.heads === null ? [] : headWords(this.view, from, to)
      if (this.heads !== null && this.entries.percents) this.percents = percentColumn(this.view, from, to)
      if (this.heads !== null) return
    }
    // "| **Filling** | |": a part's name by itself.
    let [a, z] = [from, to]
    while (a < z && this.view.words[a] === '|') a++
    while (z > a && this.view.words[z - 1] === '|') z--
    if (a < z && partLine(this.entries, a, z)) return
    // "Total | 198 % | 1980 g": a sum, and nothing that goes in.
    if (SUMS.has(this.view.words[a] ?? '')) return
    this.entries.listed = true
    if (this.stages !== null && readByStages(this.entries, this.stages, from, to)) return
    const percent = this.percents < 0 ? null : readPercent(this.entries, this.percents, from, to)
    if (percent === 'read') return
    const {length} = this.entries.drafts
    this.amounts(from, to)
    // "Flour | 1000 | 100" under "g" and "%": what the others may be reckoned from.
    const made = this.entries.drafts[length]
    if (percent !== null && made !== undefined && made.low !== null) made.percent = percent
    if (made !== undefined && this.entries.drafts.length === length + 1)
      weightInCells(this.view, made, cellsOf(this.view, from, to), this.heads ?? [])
  }

  /** The amounts of a table's row. */
  private amounts(from: number, to: number): void {
    const sizes = this.sizesTold ? null : columnsOf(this.view, this.heads, from, to)
    if (sizes !== null && !isShare(this.headWords[sizes.at[1]] ?? '') && !isShare(this.headWords[sizes.at[0]] ?? '')) {
      this.sizesTold = true
      const {view} = this
      const words = (k: 0 | 1): string => this.headWords[sizes.at[k]] || textOf(view, ...(k === 0 ? sizes.first : sizes.other))
      this.tell.sizes({start: view.tokens[sizes.other[0]]!.start, read: words(0), other: words(1)})
    }
    if (this.heads !== null && readByHeads(this.entries, this.heads, from, to)) return
    const {drafts} = this.entries
    const {length} = drafts
    scan(this.entries, from, to, 'list')
    // A name with more behind it in its cell: the amount stands too far from it.
    const found = drafts.splice(length)
    if (found.some(({low}) => low !== null) || !readByCells(this.entries, from, to)) drafts.push(...found)
  }

  private prose(from: number, to: number, mode: Mode): void {
    if (isIndex(this.view, from, to)) return
    const {part} = this.entries
    scan(this.entries, from, to, mode)
    // In prose a part ("for the icing") lasts as long as its paragraph.
    this.entries.part = part
  }
}

/**
 * The ingredients of a section, in the order of its text.
 *
 * @param listed read the whole as a line of a list, as a phrase that stands alone is
 * @param tell called for what of it is told
 */
export const readIngredients = (view: View, title: string, listed = false, tell: Tell = QUIET): ReadIngredient[] =>
  new IngredientReader(view, title, tell).read(listed)
