import {measured, measureFirst} from './amount-and-name.js'
import {readQuantity, skipHedges, textOf} from './amounts.js'
import {staysOutside} from './beside.js'
import {partIn, partLine, partPrefix} from './dish-parts.js'
import {type Draft, Entries, key, type Mode} from './entries.js'
import {jointOf, partOf} from './item-parts.js'
import {sizeOf} from './likened-sizes.js'
import {isIndex, linesOf, looksListed, mostlyListed, runInStart} from './list-signs.js'
import {readNoun} from './nouns.js'
import {dittoMark, sameAs, weightOf} from './same-amounts.js'
import type {Block} from './section.js'
import {eachAfter} from './shared-amounts.js'
import type {ReadIngredient} from './types.js'
import {bareName, vagueEntry} from './unmeasured.js'
import {FILLING, JOINT, NOTIN, OPENER, PART, PREPARED, VAGUE, type View} from './view.js'

const LOOKS = new Set([
  'shape',
  'form',
  'figure',
  'appearance',
  'colour',
  'color',
  'likeness',
  'thickness',
  'length',
  'breadth',
  'consistency',
  'consistence',
  'fashion',
  'manner',
])

/** Reads the ingredients of one section. */
export class IngredientReader {
  private readonly entries: Entries

  constructor(
    private readonly view: View,
    private readonly title: string,
  ) {
    this.entries = new Entries(view)
  }

  /** All entries, in the order of the text. */
  read(listed: boolean): ReadIngredient[] {
    const {tokens, section} = this.view
    if (listed) {
      this.line(0, tokens.length)
      return this.finish()
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
    for (const {block, from, to} of ranges) {
      if (from >= to) continue
      if (block.kind === 'heading') {
        steps = this.heading(from, to, steps)
        continue
      }
      if (block.kind === 'quote' && this.entries.listed) continue
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
      if (block.kind === 'row') {
        this.row(from, to)
        continue
      }
      if (block.kind === 'item') {
        if (!steps && looksListed(this.view, from, to)) {
          this.entries.listed = true
          this.line(from, to)
        } else this.prose(from, to, this.entries.listed ? 'method' : 'prose')
        continue
      }
      const lines = linesOf(this.view, from, to)
      if (lines.length > 1 && mostlyListed(this.view, lines)) {
        this.entries.listed = true
        for (const [a, z] of lines) {
          if (looksListed(this.view, a, z)) this.line(a, z)
          else if (!partLine(this.entries, a, z)) this.prose(a, z, 'method')
        }
        continue
      }
      if (lines.length === 1 && partLine(this.entries, from, to)) continue
      if (this.aside(from, to)) continue
      this.prose(from, to, this.entries.listed ? 'method' : 'prose')
    }
    return this.finish()
  }

  // ---------------------------------------------------------------- kinds of block

  /** Remarks after the receipt: cost, season, how many it serves, how long it takes. */
  private aside(from: number, to: number): boolean {
    const {words} = this.view
    let i = from
    while (i < to && this.view.tokens[i]!.kind !== 'word') i++
    const word = words[i]
    if (word === 'time' || word === 'seasonable' || word === 'sufficient' || word === 'illustration') return true
    if (word === 'average' && words[i + 1] === 'cost') return true
    if (word === 'note' && this.entries.listed) return true
    return false
  }

  private heading(from: number, to: number, steps: boolean): boolean {
    const {words} = this.view
    if (from === 0) return false
    const text = words.slice(from, to).join(' ')
    if (/^(?:method|directions?|instructions?|preparation|procedure|steps?|to (?:make|bake|serve|finish))\b/.test(text))
      return true
    if (/^(?:notes?|tips?|variations?|storage|equipment)\b/.test(text)) return true
    if (/^ingredients?\b/.test(text)) {
      this.entries.part = ''
      return false
    }
    const part = partIn(this.view, from, to)
    if (part !== '') {
      this.entries.part = part
      return false
    }
    return steps
  }

  // ---------------------------------------------------------------- scanning

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
    this.scan(from, end, 'list')
    if (end < to) this.prose(end + 1, to, 'method')
  }

  private line(from: number, to: number): void {
    this.scan(from, to, 'list')
  }

  /** A table row: cells hold amount and item in either order. */
  private row(from: number, to: number): void {
    const {words} = this.view
    const head = words[from]
    if (
      head === 'ingredient' ||
      head === 'ingredients' ||
      head === 'item' ||
      head === 'amount' ||
      head === 'quantity' ||
      head === 'measure'
    )
      return
    this.entries.listed = true
    this.scan(from, to, 'list')
  }

  private prose(from: number, to: number, mode: Mode): void {
    if (isIndex(this.view, from, to)) return
    const {part} = this.entries
    this.scan(from, to, mode)
    // In prose a part ("for the icing") lasts as long as its paragraph.
    this.entries.part = part
  }

  private scan(from: number, to: number, mode: Mode): void {
    const {words, bits, tokens} = this.view
    let i = from
    let quiet = false
    let clause = from
    while (i < to) {
      const token = tokens[i]!
      if (token.kind === 'mark') {
        if (token.word === '.' || token.word === ';' || token.word === '!' || token.word === '?') {
          quiet = false
          clause = i + 1
        }
        i = token.word === '(' && words[i + 1] === 'or' ? this.otherWay(i, to) : i + 1
        continue
      }
      if (i === clause || words[i - 1] === ',' || words[i - 1] === '—') {
        const next = partPrefix(this.entries, i, to, mode)
        if (next > 0) {
          i = next
          continue
        }
      }
      if (bits[i]! & VAGUE) {
        const next = vagueEntry(this.entries, i, to, mode)
        if (next > i) {
          i = next
          continue
        }
      }
      if (bits[i]! & (OPENER | JOINT | PART)) {
        const next = this.entry(i, to, mode)
        if (next > i) {
          i = next
          continue
        }
      }
      if (mode === 'list' && (i === clause || i === from || words[i - 1] === ',' || words[i - 1] === 'and')) {
        const next = measureFirst(this.entries, i, to, mode)
        if (next > i) {
          i = next
          continue
        }
      }
      if (bits[i]! & NOTIN && mode !== 'list') {
        if (words[i] === 'serve' || words[i] === 'served' || words[i] === 'eat' || words[i] === 'send' || words[i] === 'garnish')
          quiet = true
        else {
          i = this.passNouns(i + 1, to)
          continue
        }
      }
      const next = bareName(this.entries, i, to, mode, quiet)
      i = next > i ? next : i + 1
    }
  }

  /** "5 g dried yeast (or 15 g fresh yeast)": one entry, and the other way as its note. The token to go on from; `at` is at "(". */
  private otherWay(at: number, to: number): number {
    const {words} = this.view
    const before = this.entries.drafts.at(-1)
    if (before === undefined || before.next < at - 4) return at + 1
    for (let i = at + 2; i < to && i < at + 16; i++) {
      if (words[i] === '(' || words[i] === '.') break
      if (words[i] !== ')') continue
      const other = textOf(this.view, at + 1, i).replace(/\s/g, ' ')
      // "(or more)" is of the amount, not another thing.
      if (/^or (?:a little |rather |somewhat )?(?:more|less|so|over|thereabouts)\b/i.test(other)) return at + 1
      before.notes = [...before.notes, other]
      return i + 1
    }
    return at + 1
  }

  /** Past names that are only compared with, or left out: "like bread", "without butter or sugar". */
  private passNouns(at: number, to: number): number {
    let i = at
    const noun = readNoun(
      this.view,
      this.view.words[i] === 'a' || this.view.words[i] === 'an' || this.view.words[i] === 'of' ? i + 1 : i,
      to,
      false,
    )
    if (noun === null) return at
    i = noun.next
    while (i + 1 < to && (this.view.words[i] === 'or' || this.view.words[i] === 'and' || this.view.words[i] === 'nor')) {
      const more = readNoun(this.view, i + 1, to, false)
      if (more === null) break
      i = more.next
    }
    return i
  }

  // ---------------------------------------------------------------- entries

  /** An entry with an amount at `at`; the token after it, or −1. */
  private entry(at: number, to: number, mode: Mode): number {
    const {words, bits} = this.view
    if (!this.opens(at, to)) return -1
    let i = at
    const hedges: string[] = []
    i = skipHedges(this.view, i, to, hedges)
    if (i >= to) return -1
    const word = words[i]!
    // Amounts said by other things.
    const special = sameAs(this.entries, at, i, to, mode)
    if (special > 0) return special
    const weight = weightOf(this.entries, at, i, to, mode)
    if (weight > 0) return weight
    const whole = partOf(this.entries, at, i, to, mode)
    if (whole > 0) return whole
    const size =
      word === 'size' ||
      words[i + 1] === 'size' ||
      word === 'bigness' ||
      words[i + 1] === 'bigness' ||
      words[i + 1] === 'bignesse'
        ? sizeOf(this.view, i, to)
        : null
    if (size !== null && words[size.next] === 'of') {
      // "the bigness of a walnut of butter"
      const noun = readNoun(this.view, size.next + 1, to, false)
      if (noun !== null) {
        this.entries.push(
          {
            start: at,
            next: noun.next,
            low: size.low,
            high: size.high,
            measure: size.measure,
            item: noun.item,
            row: noun.row,
            known: noun.known,
            prepared: noun.prepared,
            confidence: 0.9,
          },
          mode,
        )
        return noun.next
      }
    }
    const ditto = dittoMark(this.entries, at, i, to, mode)
    if (ditto > 0) return ditto
    if (this.jointNear(i, to)) {
      const joint = jointOf(this.entries, at, i, to, mode)
      if (joint > 0) return joint
    }
    if (word === 'each' || (word === 'of' && words[i + 1] === 'each')) {
      const after = eachAfter(this.entries, at, word === 'of' ? i + 2 : i + 1, to, mode)
      if (after > 0) return after
    }
    let the = false
    let from = at
    if (word === 'the' || word === 'that' || word === 'this' || word === 'these') {
      the = true
      from = i + 1
      if (from >= to || !(bits[from]! & OPENER)) return -1
    } else if (word === 'of' || word === 'like' || word === 'as') return -1
    const quantity = readQuantity(this.view, from, to)
    if (quantity === null) return -1
    // "in the shape of a pear", "of the colour of an orange": only what it looks like.
    if (quantity.article && quantity.measure === 'count' && words[at - 1] === 'of' && LOOKS.has(words[at - 2] ?? '')) {
      const like = readNoun(this.view, quantity.next, to, false)
      if (like !== null) return like.next
    }
    if (quantity.measure === 'drop' && (words[from] === 'every' || words[from] === 'each')) return quantity.next
    return measured(this.entries, at, quantity, to, mode, the, hedges)
  }

  /** Small words open an amount only before some others: most do not, and are told from the next word. */
  private opens(at: number, to: number): boolean {
    if (at + 1 >= to) return true
    const {words, bits} = this.view
    const next = words[at + 1]
    switch (words[at]) {
      case 'the':
      case 'that':
      case 'this':
        return (bits[at + 1]! & (OPENER | PART | PREPARED | JOINT | FILLING)) !== 0 || next === 'quantity'
      case 'of':
        return next === 'each'
      case 'as':
        return next === 'much' || next === 'many'
      case 'its':
      case 'their':
        return next === 'weight'
      case 'like':
        return next === 'quantity' || next === 'weight'
      case 'from':
        return (bits[at + 1]! & OPENER) !== 0
      default:
        return true
    }
  }

  private jointNear(at: number, to: number): boolean {
    const {bits} = this.view
    for (let i = at; i < to && i < at + 7; i++) if (bits[i]! & JOINT) return true
    return false
  }

  // ---------------------------------------------------------------- amounts said by other things

  // ---------------------------------------------------------------- no amount

  // ---------------------------------------------------------------- what counts

  private finish(): ReadIngredient[] {
    if (this.entries.drafts.length === 0) return []
    const {view} = this
    const kept: Draft[] = []
    const definite = new Set<string>()
    const inside = this.entries.drafts.filter((d) => d.inList || !staysOutside(view, d))
    for (const d of inside) if (d.low !== null || (!d.bare && d.inList) || (d.inList && d.bare)) definite.add(key(d))
    const seen = new Set<string>()
    const listedAmounts = new Map<string, Draft[]>()
    const titleWords = this.title.toLowerCase().split(/[^a-z]+/)
    for (const d of inside) {
      if (d.inList) {
        kept.push(d)
        seen.add(key(d))
        if (d.low !== null) {
          const same = listedAmounts.get(key(d))
          if (same === undefined) listedAmounts.set(key(d), [d])
          else if (same.length < 50) same.push(d)
        }
        continue
      }
      if (d.low !== null) {
        const same = listedAmounts.get(key(d))
        // A step that only says again what the list gave.
        if (same?.some((o) => o.measure === d.measure && o.low!.equals(d.low!) && o.high!.equals(d.high!))) continue
        kept.push(d)
        seen.add(key(d))
        continue
      }
      if (d.bare) {
        if (definite.has(key(d)) || seen.has(key(d))) continue
        const base = d.item.replace(/ (?:juice|rind|pulp|yolk|white|crumb)$/, '')
        if (base !== d.item && (definite.has(base) || seen.has(base))) continue
        if (titleWords[titleWords.length - 1] === d.item) continue
        if (this.entries.listed) continue
        seen.add(key(d))
        kept.push(d)
        continue
      }
      if (this.entries.listed && definite.has(key(d)) && !d.hedges.some((h) => h.includes('more'))) continue
      seen.add(key(d))
      kept.push(d)
    }
    kept.sort((a, b) => view.tokens[a.start]!.start - view.tokens[b.start]!.start)
    return kept.map((d) => this.output(d))
  }

  private output(d: Draft): ReadIngredient {
    const {tokens, section} = this.view
    const start = tokens[d.start]!.start
    const end = Math.max(start, tokens[d.next - 1]!.end)
    const ranged = d.low !== null && d.high !== null && !d.low.equals(d.high)
    return {
      text: section.source.slice(start, end),
      start,
      end,
      amount: d.low === null || d.high === null ? null : {low: d.low.value, high: d.high.value},
      exact: d.low === null ? null : d.low.toString(),
      ...(ranged ? {exactHigh: d.high!.toString()} : {}),
      measure: d.low === null ? 'indefinite' : d.measure,
      item: d.item,
      known: d.known,
      ...(d.measureText === '' ? {} : {measureText: d.measureText}),
      hedges: d.hedges,
      ...(d.prepared === '' ? {} : {prepared: d.prepared}),
      part: d.part,
      confidence: Math.round(d.confidence * 100) / 100,
      ...(d.other === undefined ? {} : {other: d.other}),
      notes: d.notes,
    }
  }
}

/**
 * The ingredients of a section, in the order of its text.
 *
 * @param listed read the whole as a line of a list, as a phrase that stands alone is
 */
export const readIngredients = (view: View, title: string, listed = false): ReadIngredient[] =>
  new IngredientReader(view, title).read(listed)
