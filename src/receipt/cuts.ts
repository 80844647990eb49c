import {fold, itemAt, measureOf} from '../lexicon/index.js'
import {type HeadingUse, headingTokens, headingUse, namesDish} from './heading-words.js'
import {findHeadings, type Heading, isBlank} from './headings.js'

/** Which headings of a file begin a receipt, and which name a part of the one above them. */

/** Where one receipt lies in a file: from its heading (or the file's first line) to the next receipt's heading. */
export interface Cut {
  readonly start: number
  readonly end: number
  /** Depth of its heading, 1–6; 0 where it has none. */
  readonly depth: number
}

/** A heading with what it is for, and where the next one stands. */
interface Told extends Heading {
  readonly use: HeadingUse | null
  /** Offset of the next heading, of the file's end. */
  readonly next: number
}

/**
 * Find the receipts of a file by their headings, without parsing it: `#` headings and underlined ones, not inside fenced code. A
 * heading that only names a part ("Ingredients", "For the icing") stays with the receipt above it, and so does one under a receipt that would
 * be none without it.
 *
 * @param source the whole file as read
 * @param from offset of the Markdown, after front matter
 * @returns cuts in order that together cover `source.slice(from)`; time is linear in the file
 */
export function cutByHeading(source: string, from: number): Cut[] {
  const found = findHeadings(source, from)
  const headings = found.map((one, i): Told => ({...one, use: headingUse(one.text), next: found[i + 1]?.at ?? source.length}))
  const owned = ownedBy(source, headings)
  const cuts: Array<{start: number; end: number; depth: number}> = []
  let current = {start: from, end: source.length, depth: 0}
  let empty = true
  for (const [i, heading] of headings.entries()) {
    const owner = current.depth
    const always = heading.use !== null && heading.use !== 'part'
    const part =
      !empty && (owner > 0 || heading.depth > 1) && (always || (owner > 0 && heading.depth > owner && heading.use === 'part'))
    if (part || owned.has(i)) continue
    // "Ingredients" under a line that is no heading is no receipt of its own.
    if (empty && always) continue
    if (heading.at > current.start && !isBlank(source, current.start, heading.at)) {
      current.end = heading.at
      cuts.push(current)
      current = {start: heading.at, end: source.length, depth: heading.depth}
    } else current = {start: current.start, end: source.length, depth: heading.depth}
    empty = false
  }
  cuts.push(current)
  return cuts
}

/**
 * The headings, by number, that do not say what they are for and still are of the receipt whose title stands above them: under a title with one
 * heading for its ingredients, all that are plainly no receipt of their own.
 */
function ownedBy(source: string, headings: readonly Told[]): ReadonlySet<number> {
  const owned = new Set<number>()
  // "### White loaf" under "## Ingredients": a list of them, whatever its name.
  for (const [i, {depth, use}] of headings.entries()) {
    if (use !== 'ingredients') continue
    const below: number[] = []
    for (let k = i + 1; k < headings.length && headings[k]!.depth > depth; k++) below.push(k)
    const bodies = below.map((k) => bodyOf(source, headings[k]!.end, headings[k]!.next))
    if (bodies.every(({listed, steps}) => listed && !steps)) for (const k of below) owned.add(k)
  }
  // A file without a title begins with the heading of its ingredients.
  if (headings[0]?.use === 'ingredients') claim(source, headings, null, 0, headings.length, owned)
  for (const [i, {depth, use}] of headings.entries()) {
    if (use !== null || owned.has(i)) continue
    let end = i + 1
    while (end < headings.length && headings[end]!.depth > depth) end++
    if (end > i + 1) claim(source, headings, headings[i]!, i + 1, end, owned)
  }
  return owned
}

/** Adds to `owned` which of the headings [from, to) are of the receipt that `title` stands over, in the depth that the first of them has. */
function claim(
  source: string,
  headings: readonly Told[],
  title: Told | null,
  from: number,
  to: number,
  owned: Set<number>,
): void {
  const {depth} = headings[from]!
  const direct: number[] = []
  for (let i = from; i < to; i++) if (headings[i]!.depth <= depth) direct.push(i)
  const unsaid = direct.filter((i) => headings[i]!.use === null)
  if (unsaid.length === 0) return
  const bodies = new Map(direct.map((i) => [i, bodyOf(source, headings[i]!.end, headings[i]!.next)]))
  const ofIngredients = direct.filter((i) => headings[i]!.use === 'ingredients')
  // Titles and ingredients by turns: receipts one after the other.
  const byTurns = ofIngredients.some((i) => i > from && headings[i - 1]!.use === null && !bodies.get(i - 1)?.listed)
  if (byTurns) return
  const isOwn = (i: number): boolean => {
    const body = bodies.get(i)!
    if (body.listed && body.steps) return true
    for (let k = i + 1; k < to && headings[k]!.depth > depth; k++)
      if (headings[k]!.use === 'ingredients' || headings[k]!.use === 'method') return true
    return !body.listed && namesDish(headings[i]!.text)
  }
  const above = title === null ? null : bodyOf(source, title.end, title.next)
  const listed =
    ofIngredients.some((i) => {
      for (let k = i; k < to && (k === i || headings[k]!.depth > depth); k++)
        if (bodyOf(source, headings[k]!.end, headings[k]!.next).listed) return true
      return false
    }) ||
    // A list without a word of what is done with it.
    (above?.listed === true && !above.steps)
  // "Ragù", "Béchamel", "To assemble": lists alone, and what is done with all of them.
  const parts =
    !listed &&
    direct.some((i) => headings[i]!.use !== null && headings[i]!.use !== 'notes' && headings[i]!.use !== 'nutrition') &&
    !unsaid.some(isOwn)
  for (const i of unsaid) {
    if (isOwn(i)) {
      if (listed) return
      continue
    }
    if (listed || (parts && bodies.get(i)!.listed)) owned.add(i)
  }
}

interface Body {
  /** Half of its lines, or more, are amounts of something. */
  readonly listed: boolean
  /** Below them stands what is done with it. */
  readonly steps: boolean
}

/** Lines that are looked at. */
const LINES = 60
/** A line of so many words without an amount at its head is no name in a list. */
const SENTENCE = 5

/** What stands under a heading, from one offset to another. */
function bodyOf(source: string, from: number, to: number): Body {
  let amounts = 0
  let others = 0
  let steps = false
  for (const line of source.slice(from, to).split('\n', LINES)) {
    const text = line.trim()
    if (text === '' || /^[|:\s-]+$/.test(text)) continue
    if (text.startsWith('|') ? text.split('|').some(beginsWithAmount) : beginsWithAmount(text)) amounts++
    else if (text.startsWith('|')) others++
    else {
      const words = headingTokens(text).length
      const step =
        /^\d+[.)]\s/.test(text) || (words >= SENTENCE && /[.!]$/.test(text)) || (words >= SENTENCE && !/^[-*+]\s/.test(text))
      if (amounts > 0 && step) steps = true
      if (amounts === 0 || !step) others++
    }
  }
  return {listed: amounts > 0 && amounts * 2 >= others, steps}
}

/** Words that may stand before the name of what is counted: "2 large free-range eggs". */
const DESCRIBING = 2

/** Does a line or a cell begin with an amount of something, past the mark of a list? "- 500 g flour", "1. 2 eggs". */
function beginsWithAmount(line: string): boolean {
  const text = line
    .slice(0, 80)
    .trim()
    .replace(/^(?:[-*+]|\d{1,3}[.)])\s/, '')
  const tokens = headingTokens(text)
  // "500g"
  const joined = /^\d{1,6}(\p{L}{1,4})$/u.exec(tokens[0] ?? '')?.[1]
  if (joined !== undefined) return measureOf([joined]) !== null
  let at = 0
  while (at < tokens.length && at < 5 && /^(?:\d{1,6}|[½⅓⅔¼¾⅛/.,–-])$/.test(tokens[at]!)) at++
  if (at === 0 || at >= tokens.length) return false
  const words = tokens.slice(at, at + DESCRIBING + 4)
  if (measureOf(words) !== null) return true
  const folded = words.map(fold)
  for (let k = 0; k <= DESCRIBING && k < folded.length; k++) if (itemAt(folded, k) !== null) return true
  return false
}
