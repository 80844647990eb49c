import {examplePhrases, overVerbs} from '../lexicon/grammar-words.js'
import {measureFirst} from './amount-and-name.js'
import {bakersPercent} from './baker-percent.js'
import {bareMeasure} from './bare-measure.js'
import {howMuch, leftOut, moreOf, shareOf, weighing} from './beside-entry.js'
import {partLabel, partPrefix} from './dish-parts.js'
import {fewerParts} from './egg-parts.js'
import type {Entries, Mode} from './entries.js'
import {entry} from './entry-forms.js'
import {partOf} from './item-parts.js'
import {readNoun} from './nouns.js'
import {readQuantity} from './quantities.js'
import {eachList} from './shared-amounts.js'
import {weightBehind} from './stated-weight.js'
import {bareName, vagueEntry} from './unmeasured.js'
import {heldAt} from './vessel-volumes.js'
import {DESCRIBES, FILLING, JOINT, MEASURE, NOTIN, OPENER, PART, Phrases, textOf, VAGUE, type View} from './view.js'

/**
 * From the first token of a stretch of text to the last: where entries begin, and what is passed over.
 */

/** "potatoes (e.g. Maris Piper)", "Käse (z. B. Bergkäse)": which of its kind. */
const examples = new Phrases(examplePhrases)

/** "5 g dried yeast (or 15 g fresh yeast)": one entry, and the other way as its note. The token to go on from; `at` is at "(". */
function otherWay(entries: Entries, at: number, to: number): number {
  const {words} = entries.view
  const before = entries.drafts.at(-1)
  if (before === undefined || before.next < at - 4) return at + 1
  for (let i = Math.max(at + 2, examples.match(words, at + 1, to)); i < to && i < at + 24; i++) {
    if (words[i] === '(' || words[i] === '.') break
    if (words[i] !== ')') continue
    const other = textOf(entries.view, at + 1, i).replace(/\s/g, ' ')
    // "(or more)" is of the amount, not another thing.
    if (/^or (?:a little |rather |somewhat )?(?:more|less|so|over|thereabouts)\b/i.test(other)) return at + 1
    before.notes = [...before.notes, other]
    return i + 1
  }
  return at + 1
}

/** Past names that are only compared with, or left out: "like bread", "without butter or sugar". */
function passNouns(view: View, at: number, to: number): number {
  let i = at
  const noun = readNoun(view, view.words[i] === 'a' || view.words[i] === 'an' || view.words[i] === 'of' ? i + 1 : i, to, false)
  if (noun === null) return at
  i = noun.next
  while (i + 1 < to && (view.words[i] === 'or' || view.words[i] === 'and' || view.words[i] === 'nor')) {
    const more = readNoun(view, i + 1, to, false)
    if (more === null) break
    i = more.next
  }
  return i
}

/** What the word at `i` may begin that is said of the entry before: the token after it, else −1. */
function saidOf(entries: Entries, i: number, to: number, mode: Mode): number {
  switch (entries.view.words[i]) {
    case 'plus':
      return moreOf(entries, i, to, mode)
    case 'out':
      return leftOut(entries, i, to)
    case 'je': {
      // "je 100 g Mandeln und Haselnüsse"
      const quantity = i + 1 < to ? readQuantity(entries.view, i + 1, to) : null
      return quantity === null ? -1 : eachList(entries, i, quantity, quantity.next, to, mode)
    }
    case 'but':
    case 'with':
    case 'only':
    case 'using':
    case 'half':
      return fewerParts(entries, i, to)
    case 'of':
    case 'weighing':
      return weighing(entries, i, to)
    default:
      return -1
  }
}

/** Reads every entry that begins in tokens [from, to). */
export function scan(entries: Entries, from: number, to: number, mode: Mode): void {
  const {words, bits, tokens} = entries.view
  let i = from
  let quiet = false
  let clause = from
  while (i < to) {
    const token = tokens[i]!
    if (entries.percents && token.kind !== 'mark') {
      const percent = bakersPercent(entries, i, to, mode)
      if (percent > 0) {
        i = percent
        continue
      }
    }
    if (token.kind === 'mark') {
      if (token.word === '.' || token.word === ';' || token.word === '!' || token.word === '?') {
        quiet = false
        clause = i + 1
      }
      const share = token.word === '(' ? shareOf(entries, i, to) : token.word === '+' ? moreOf(entries, i, to, mode) : -1
      if (share > 0) {
        i = share
        continue
      }
      const much = /^[,(—]$/.test(token.word) ? howMuch(entries, i, to) : -1
      if (much > 0) {
        i = much
        continue
      }
      const weighed = token.word === '(' || token.word === ',' ? weightBehind(entries, i, to, mode) : -1
      i =
        weighed > 0
          ? weighed
          : (token.word === '(' && words[i + 1] === 'or') || examples.match(words, i + 1, to) > 0
            ? otherWay(entries, i, to)
            : i + 1
      continue
    }
    if (i === clause || tokens[i]!.capital) {
      const label = partLabel(entries, i, to)
      if (label > 0) {
        i = label
        continue
      }
    }
    // "In a 3-quart casserole": what a vessel holds is no amount of it.
    if (bits[i]! & OPENER) {
      const held = heldAt(tokens, i)
      if (held !== null && held.to <= to && (mode !== 'list' || held.to === to || tokens[held.to]!.kind === 'mark')) {
        i = held.to
        continue
      }
    }
    if (token.word === 'over' && i > from && overVerbs.has(words[i - 1]!)) {
      i++
      continue
    }
    const said = saidOf(entries, i, to, mode)
    if (said > 0) {
      i = said
      continue
    }
    if (i === clause || words[i - 1] === ',' || words[i - 1] === '—') {
      const next = partPrefix(entries, i, to, mode)
      if (next > 0) {
        i = next
        continue
      }
    }
    if (bits[i]! & VAGUE) {
      const next = vagueEntry(entries, i, to, mode)
      if (next > i) {
        i = next
        continue
      }
    }
    if (bits[i]! & (OPENER | JOINT | PART)) {
      const next = entry(entries, i, to, mode)
      if (next > i) {
        i = next
        continue
      }
    }
    // "finely grated zest of 1 lemon"
    if (bits[i]! & DESCRIBES && (i === from || tokens[i - 1]!.kind === 'mark' || words[i - 1] === 'and')) {
      const next = partOf(entries, i, i, to, mode)
      if (next > i) {
        i = next
        continue
      }
    }
    if (mode === 'list' && (i === clause || i === from || words[i - 1] === ',' || words[i - 1] === 'and')) {
      const next = measureFirst(entries, i, to, mode)
      if (next > i) {
        i = next
        continue
      }
    }
    if (bits[i]! & (MEASURE | FILLING)) {
      const next = bareMeasure(entries, i, to, mode)
      if (next > i) {
        i = next
        continue
      }
    }
    if (bits[i]! & NOTIN && mode !== 'list') {
      if (words[i] === 'serve' || words[i] === 'served' || words[i] === 'eat' || words[i] === 'send' || words[i] === 'garnish')
        quiet = true
      else {
        i = passNouns(entries.view, i + 1, to)
        continue
      }
    }
    const next = bareName(entries, i, to, mode, quiet)
    i = next > i ? next : i + 1
  }
}
