import type {Nodes, Root} from 'mdast'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import {unified} from 'unified'
import {cutByHeading} from './cuts.js'
import {headingUse} from './heading-words.js'
import {isBlank} from './headings.js'
import {withoutNutrition} from './nutrition.js'
import {lineIndex} from './position.js'
import {type Block, type BlockKind, makeSection, type Piece, type Section} from './section.js'
import type {ReceiptFacts} from './types.js'

const plainProcessor = unified().use(remarkParse).freeze()
/** One tilde strikes nothing out: it stands for “about” (“~200 g”). */
const tableProcessor = unified().use(remarkParse).use(remarkGfm, {singleTilde: false}).freeze()

/** Above this many characters a stretch of Markdown is parsed in pieces: the parser slows down faster than the text grows. */
const LONG = 6000

/** Parse Markdown in stretches cut at blank lines before plain text, so that the whole takes linear time. */
function* parseStretches(text: string): Generator<{root: Root; offset: number}> {
  // A footnote of one word is a link's definition to the plain parser, which keeps no text of it.
  const processor = text.includes('|') || text.includes('[^') || text.includes('~~') ? tableProcessor : plainProcessor
  if (text.length <= LONG || text.includes('```') || text.includes('~~~')) {
    yield {root: processor.parse(text) as Root, offset: 0}
    return
  }
  let from = 0
  while (from < text.length) {
    let to = text.length
    if (text.length - from > LONG) {
      let blank = from + LONG / 2
      for (;;) {
        blank = text.indexOf('\n\n', blank)
        if (blank < 0) break
        const next = text.charCodeAt(blank + 2)
        // Safe before plain words only: a list, a quote or an indented block may go on after a blank line.
        if ((next >= 65 && next <= 90) || (next >= 97 && next <= 122) || next === 35 || next === 95) {
          to = blank + 2
          break
        }
        blank += 2
      }
    }
    yield {root: processor.parse(text.slice(from, to)) as Root, offset: from}
    from = to
  }
}

/** Builds the plain text of one block and where its pieces stand in the source. */
class Weaver {
  text = ''
  readonly pieces: Piece[] = []

  constructor(private readonly source: string) {}

  /** Text that reads `value` and stands at `from`–`to`. */
  add(value: string, from: number, to: number): void {
    if (value === '') return
    if (to - from === value.length && this.source.startsWith(value, from)) {
      const last = this.pieces[this.pieces.length - 1]
      if (last === undefined || last.to !== from || last.to - last.from !== this.text.length - last.at)
        this.pieces.push({at: this.text.length, from, to})
      else this.pieces[this.pieces.length - 1] = {at: last.at, from: last.from, to}
      this.text += value
      return
    }
    this.align(value, from, to)
  }

  /** A mark that stands for no character of the source, such as the line between two cells. */
  mark(value: string, at: number): void {
    this.pieces.push({at: this.text.length, from: at, to: at})
    this.text += value
  }

  /** The parser has decoded entities and escapes and dropped indents; walk both texts together and find what stayed. */
  private align(value: string, from: number, to: number): void {
    const {source} = this
    let i = 0
    let j = from
    while (i < value.length) {
      if (j >= to) {
        this.pieces.push({at: this.text.length, from: to, to})
        this.text += value.slice(i)
        return
      }
      const c = source.charCodeAt(j)
      if (c === 38) {
        const offset = source.slice(j, Math.min(to, j + 34)).indexOf(';')
        const semicolon = offset < 0 ? -1 : j + offset
        if (
          semicolon > 0 &&
          semicolon < to &&
          // "&c. &amp;": the first "&" is its own.
          /^&#?[a-z0-9]{1,32};$/i.test(source.slice(j, semicolon + 1)) &&
          !value.startsWith(source.slice(j, semicolon + 1), i)
        ) {
          const after = source[semicolon + 1] ?? ''
          const length =
            value.charCodeAt(i) >= 0xd800 && value.charCodeAt(i) <= 0xdbff
              ? 2
              : semicolon + 1 < to && value[i + 1] !== after && value[i + 2] === after
                ? 2
                : 1
          this.pieces.push({at: this.text.length, from: j, to: semicolon + 1})
          this.text += value.slice(i, i + length)
          i += length
          j = semicolon + 1
          continue
        }
      }
      if (source[j] === value[i] && !(c === 92 && isEscapable(source.charCodeAt(j + 1)) && value[i + 1] !== source[j + 1])) {
        const startI = i
        const startJ = j
        while (
          i < value.length &&
          j < to &&
          source[j] === value[i] &&
          source.charCodeAt(j) !== 38 &&
          source.charCodeAt(j) !== 92
        ) {
          i++
          j++
        }
        if (i === startI) {
          i++
          j++
        }
        this.pieces.push({at: this.text.length, from: startJ, to: j})
        this.text += value.slice(startI, i)
      } else j++
    }
  }
}

const isEscapable = (c: number): boolean =>
  (c >= 33 && c <= 47) || (c >= 58 && c <= 64) || (c >= 91 && c <= 96) || (c >= 123 && c <= 126)

/** A line of a table, of two cells or more. */
const BARRED = /^\s*\|[^|]*\|.*\|\s*$/

/** A tag that strikes out what stands behind it, or ends that. */
const STRUCK = /^<\/?(?:del|s|strike)\b/i

/** Turn one parsed stretch into blocks. */
class BlockMaker {
  readonly blocks: Block[] = []
  /** Within words that are struck out by tags. */
  private struck = false

  constructor(
    private readonly source: string,
    private readonly base: number,
  ) {}

  private startOf(node: Nodes): number {
    return this.base + (node.position?.start.offset ?? 0)
  }

  private endOf(node: Nodes): number {
    return this.base + (node.position?.end.offset ?? 0)
  }

  private finish(kind: BlockKind, weaver: Weaver, node: Nodes): void {
    // A tag that is not closed strikes out no more than its block.
    this.struck = false
    if (weaver.text === '') return
    this.blocks.push({kind, text: weaver.text, pieces: weaver.pieces, start: this.startOf(node), end: this.endOf(node)})
  }

  private inline(node: Nodes, weaver: Weaver): void {
    // "<del>2 cups</del>": the tags are nodes of their own.
    if (node.type === 'html' && STRUCK.test(node.value)) this.struck = !node.value.startsWith('</')
    if (this.struck && !('children' in node)) return
    switch (node.type) {
      // "~~2 cups~~ 1½ cups": who struck it out does not take it.
      case 'delete':
        break
      case 'text':
        weaver.add(node.value, this.startOf(node), this.endOf(node))
        break
      case 'inlineCode': {
        const start = this.startOf(node)
        const at = this.source.indexOf(node.value, start)
        if (at >= 0 && at + node.value.length <= this.endOf(node)) weaver.add(node.value, at, at + node.value.length)
        break
      }
      case 'break':
        weaver.mark('\n', this.startOf(node))
        break
      case 'html':
        if (/^<br\b/i.test(node.value)) weaver.mark('\n', this.startOf(node))
        break
      default:
        if ('children' in node) for (const child of node.children) this.inline(child, weaver)
    }
  }

  /**
   * A table written without the line under its head is a paragraph to the parser: lines that begin and end with a bar. To who wrote it each
   * is a row.
   *
   * @returns False where the paragraph is none.
   */
  private rowsOf(paragraph: Nodes): boolean {
    const start = this.startOf(paragraph)
    const lines = this.source.slice(start, this.endOf(paragraph)).split('\n')
    if (lines.length < 2 || !lines.every((line) => BARRED.test(line))) return false
    let at = start
    for (const line of lines) {
      const weaver = new Weaver(this.source)
      let from = at + line.indexOf('|') + 1
      line
        .slice(line.indexOf('|') + 1, line.lastIndexOf('|'))
        .split('|')
        .forEach((cell, index) => {
          const text = cell.trim()
          const begins = from + cell.indexOf(text)
          if (index > 0) weaver.mark(' | ', begins)
          weaver.add(text, begins, begins + text.length)
          from += cell.length + 1
        })
      if (weaver.text !== '')
        this.blocks.push({
          kind: 'row',
          text: weaver.text,
          pieces: weaver.pieces,
          start: at + line.search(/\S/),
          end: at + line.trimEnd().length,
        })
      at += line.length + 1
    }
    return true
  }

  /** @param kind what paragraphs in here are */
  walk(node: Nodes, kind: BlockKind): void {
    switch (node.type) {
      case 'heading':
      case 'paragraph': {
        if (node.type === 'paragraph' && this.rowsOf(node)) break
        const weaver = new Weaver(this.source)
        for (const child of node.children) this.inline(child, weaver)
        this.finish(node.type === 'heading' ? 'heading' : kind, weaver, node)
        break
      }
      case 'listItem':
        for (const child of node.children) this.walk(child, kind === 'quote' ? kind : 'item')
        break
      case 'blockquote':
        for (const child of node.children) this.walk(child, 'quote')
        break
      case 'tableRow': {
        const weaver = new Weaver(this.source)
        node.children.forEach((cell, index) => {
          if (index > 0) weaver.mark(' | ', this.startOf(cell))
          for (const child of cell.children) this.inline(child, weaver)
        })
        this.finish('row', weaver, node)
        break
      }
      case 'code': {
        const weaver = new Weaver(this.source)
        weaver.add(node.value, this.startOf(node), this.endOf(node))
        this.finish('code', weaver, node)
        break
      }
      case 'html': {
        if (node.value.startsWith('<!')) break
        const weaver = new Weaver(this.source)
        const start = this.startOf(node)
        const text = this.source.slice(start, this.endOf(node))
        let at = 0
        while (at < text.length) {
          const open = text.indexOf('<', at)
          const stop = open < 0 ? text.length : open
          if (stop > at) weaver.add(text.slice(at, stop), start + at, start + stop)
          const close = text.indexOf('>', stop)
          if (close < 0) break
          weaver.mark('\n', start + close + 1)
          at = close + 1
        }
        this.finish(kind, weaver, node)
        break
      }
      default:
        if ('children' in node) for (const child of node.children) this.walk(child, kind)
    }
  }
}

/** Characters that may mean mark-up inside a line: NUL \\ \` * _ [ ] < > | ~ and control characters. */
const MARKS = new Uint8Array(128)
for (const c of '\0\\`*_[]<>|~\r\f\v') MARKS[c.charCodeAt(0)] = 1
/** Characters that may mean mark-up at the head of a line. */
const HEADS = new Uint8Array(128)
for (const c of '#>-+*=|`~<_: \t[]\\&\r') HEADS[c.charCodeAt(0)] = 1

/** Mark-up that may run over blank lines: with any of it in a text the parser reads all of it. */
const LONG_MARKUP = /```|~~~|<[!?]|<(?:script|pre|style|textarea)\b/i
/** What may say what a link in brackets stands for, which makes links of the same brackets anywhere in the text. */
const DEFINITION = ']:'

const isDigit = (c: number): boolean => c >= 48 && c <= 57

/** Does the line from `from` begin with figures and a stop, as an ordered list does? The offset after them and a space, else −1. */
function afterFigures(source: string, from: number, to: number): number {
  let i = from
  while (i < to && isDigit(source.charCodeAt(i))) i++
  if (i === from || i - from > 9 || (source.charCodeAt(i) !== 46 && source.charCodeAt(i) !== 41)) return -1
  return i + 1 >= to || source.charCodeAt(i + 1) === 32 || source.charCodeAt(i + 1) === 9 ? i + 2 : -1
}

/** Is `from`–`to`, all or part of one line, its own plain text? */
function isPlain(source: string, from: number, to: number): boolean {
  if (from >= to) return false
  const first = source.charCodeAt(from)
  if (first < 128 && HEADS[first] === 1) return false
  if (isDigit(first) && afterFigures(source, from, to) >= 0) return false
  const last = source.charCodeAt(to - 1)
  return last !== 32 && last !== 9 && isPlainInside(source, from, to)
}

/** Has `from`–`to`, part of one line, no mark-up in it? */
function isPlainInside(source: string, from: number, to: number): boolean {
  for (let i = from; i < to; i++) {
    const c = source.charCodeAt(i)
    if (c < 128) {
      if (MARKS[c] === 1) return false
      // "&c." is plain, "&amp;" is not.
      if (c === 38) {
        const next = source.slice(i + 1, Math.min(to, i + 34))
        const semicolon = next.indexOf(';')
        if (semicolon > 0 && !next.slice(0, semicolon).includes(' ')) return false
      }
    } else if (c === 0xfeff) return false
  }
  return true
}

const isWordCharacter = (c: number): boolean => isDigit(c) || (c >= 97 && c <= 122) || (c >= 65 && c <= 90)

/**
 * A line that opens with words in emphasis, as labels do: "*Mode.*—Warm the milk", "**For the paste**". Only the plainest form, which
 * has but one meaning (CommonMark 0.31.2, § 6.2): a letter or figure behind the opening stars; a letter, figure or stop before the
 * closing ones, and behind them the line's end, a space or, after a letter, anything but a star.
 *
 * @returns the two stretches that are its text; null where it is not of this form
 */
function labelled(source: string, from: number, to: number): readonly [Piece, Piece] | null {
  let open = from
  while (open < to && source.charCodeAt(open) === 42) open++
  const stars = open - from
  if (stars < 1 || stars > 2 || !isWordCharacter(source.charCodeAt(open))) return null
  const close = source.indexOf('*', open)
  if (close < 0 || close + stars > to || (stars === 2 && source.charCodeAt(close + 1) !== 42)) return null
  const after = close + stars
  const before = source.charCodeAt(close - 1)
  const next = after < to ? source.charCodeAt(after) : 32
  const closes = isWordCharacter(before) ? next !== 42 : (before === 46 || before === 58) && (next === 32 || next === 0x2014)
  if (!closes || !isPlainInside(source, open, close) || !isPlainInside(source, after, to)) return null
  const last = source.charCodeAt(to - 1)
  if (last === 32 || last === 9) return null
  return [
    {at: 0, from: open, to: close},
    {at: close - open, from: after, to},
  ]
}

const plainBlock = (kind: BlockKind, source: string, start: number, from: number, to: number): Block => ({
  kind,
  text: source.slice(from, to),
  pieces: [{at: 0, from, to}],
  start,
  end: to,
})

/**
 * A stretch without blank lines as blocks, where it has no mark-up but a heading's `#` or a list's dash or figure: most of an old
 * book. Such text is its own meaning, and the parser takes longer over it than all the reading does.
 *
 * @returns false where the parser must read it
 */
function plainBlocks(source: string, start: number, end: number, into: Block[]): false | 'list' | 'text' {
  const made: Block[] = []
  let at = start
  let kind: 'list' | 'text' | '' = ''
  let textStart = -1
  /** The text so far and its pieces, where a paragraph is not all one piece. */
  let text = ''
  let pieces: Piece[] | null = null
  while (at < end) {
    let stop = source.indexOf('\n', at)
    if (stop < 0 || stop > end) stop = end
    const c = source.charCodeAt(at)
    if (c === 35 && kind === '') {
      let i = at
      while (source.charCodeAt(i) === 35) i++
      if (i - at > 6 || source.charCodeAt(i) !== 32 || !isPlain(source, i + 1, stop) || source.charCodeAt(stop - 1) === 35)
        return false
      made.push(plainBlock('heading', source, at, i + 1, stop))
    } else if ((c === 45 || c === 43) && source.charCodeAt(at + 1) === 32) {
      if (kind === 'text' || !isPlain(source, at + 2, stop)) return false
      kind = 'list'
      made.push(plainBlock('item', source, at + 2, at + 2, stop))
    } else if (isDigit(c) && afterFigures(source, at, stop) >= 0) {
      const from = afterFigures(source, at, stop)
      if (kind === 'text' || source.charCodeAt(from - 1) !== 32 || !isPlain(source, from, stop)) return false
      kind = 'list'
      made.push(plainBlock('item', source, from, from, stop))
    } else {
      if (kind === 'list') return false
      // Two spaces at a line's end break it; they are no part of the text.
      let plainEnd = stop
      if (stop < end) {
        while (plainEnd > at && source.charCodeAt(plainEnd - 1) === 32) plainEnd--
        if (stop - plainEnd === 1) return false
      }
      const label = kind === '' && c === 42 ? labelled(source, at, plainEnd) : null
      if (label === null && !isPlain(source, at, plainEnd)) return false
      if (kind === '') textStart = at
      if (label !== null || plainEnd < stop || pieces !== null) {
        pieces ??= textStart < at ? [{at: 0, from: textStart, to: at}] : []
        if (pieces.length > 0 && text === '') text = source.slice(textStart, at)
        for (const piece of label ?? [{at: 0, from: at, to: plainEnd}]) {
          if (piece.to === piece.from) continue
          pieces.push({at: text.length, from: piece.from, to: piece.to})
          text += source.slice(piece.from, piece.to)
        }
        if (stop < end) {
          pieces.push({at: text.length, from: plainEnd, to: stop + 1})
          text += '\n'
        }
      }
      kind = 'text'
    }
    at = stop + 1
  }
  if (kind === 'text')
    made.push(
      pieces === null
        ? plainBlock('paragraph', source, textStart, textStart, end)
        : {kind: 'paragraph', text, pieces, start: textStart, end},
    )
  for (const block of made) into.push(block)
  return kind === 'list' ? 'list' : 'text'
}

/**
 * The blocks of a stretch of Markdown with offsets into the whole source: plain text as it stands, the rest by remark.
 *
 * @param source the whole file as read
 * @param start where the stretch begins
 * @param end where it ends
 * @param all have the parser read everything, plain text too: the same blocks, for the tests
 */
export function readBlocks(source: string, start: number, end: number, all = false): Block[] {
  const blocks: Block[] = []
  const parse = (from: number, to: number): void => {
    for (const {root, offset} of parseStretches(source.slice(from, to))) {
      const maker = new BlockMaker(source, from + offset)
      maker.walk(root, 'paragraph')
      for (const block of maker.blocks) blocks.push(block)
    }
  }
  const text = source.slice(start, end)
  if (all || LONG_MARKUP.test(text) || text.includes(DEFINITION)) {
    parse(start, end)
    return blocks
  }
  let at = start
  let marked = -1
  /** Blocks of a plain list just read, which an indented block after it may belong to. */
  let list = {from: -1, count: 0}
  while (at < end) {
    let stop = source.indexOf('\n', at)
    if (stop < 0 || stop > end) stop = end
    if (isBlank(source, at, stop)) {
      at = stop + 1
      continue
    }
    const from = at
    let to = stop
    let next = stop + 1
    while (next < end) {
      let nextStop = source.indexOf('\n', next)
      if (nextStop < 0 || nextStop > end) nextStop = end
      if (isBlank(source, next, nextStop)) break
      to = nextStop
      next = nextStop + 1
    }
    const indented = source.charCodeAt(from) === 32 || source.charCodeAt(from) === 9
    if (indented && list.from >= 0 && marked < 0) {
      // It goes on the list's last item: the parser reads both.
      blocks.length = list.count
      marked = list.from
    }
    const before = blocks.length
    const plain = indented ? false : marked < 0 ? plainBlocks(source, from, to, blocks) : false
    if (marked >= 0 && !indented) {
      const found: Block[] = []
      const kind = plainBlocks(source, from, to, found)
      if (kind !== false && kind !== 'list') {
        parse(marked, from)
        marked = -1
        for (const block of found) blocks.push(block)
        list = {from: -1, count: 0}
      }
    } else if (plain === false) {
      if (marked < 0) marked = from
      list = {from: -1, count: 0}
    } else list = plain === 'list' ? (list.from >= 0 ? list : {from, count: before}) : {from: -1, count: 0}
    at = next
  }
  if (marked >= 0) parse(marked, end)
  return blocks
}

/**
 * Every receipt of a file as a section: blocks and tokens with offsets into the file.
 *
 * @param source the whole file as read
 * @param file its name
 * @param from offset of the Markdown after front matter
 * @param facts what the front matter states
 */
export function* readSections(source: string, file: string, from: number, facts: ReceiptFacts): Generator<Section> {
  const place = lineIndex(source)
  const cuts = cutByHeading(source, from)
  let any = false
  for (let i = 0; i < cuts.length; i++) {
    const cut = cuts[i]!
    const blocks = readBlocks(source, cut.start, cut.end)
    const heading = blocks.find((b) => b.kind === 'heading')
    const body = blocks.some((b) => b !== heading)
    // A heading with nothing under it is a chapter's title, unless it is all there is.
    if (!body && (any || i + 1 < cuts.length)) continue
    if (blocks.length === 0) continue
    any = true
    const first = blocks[0]!
    const named = heading !== undefined && (heading === first || cut.depth > 0) && !(cut.depth === 0 && isPart(heading.text))
    const title = named ? heading.text.replace(/\s+/g, ' ').trim() : titleFromFile(file)
    const at = named ? heading.start : first.start
    yield withoutNutrition(
      makeSection({source, file, title, line: place(at).line, start: cut.start, end: cut.end, facts, blocks}),
    )
  }
}

/** Whether a heading names a part of a receipt, wherever it stands. */
const isPart = (text: string): boolean => {
  const use = headingUse(text)
  return use !== null && use !== 'part'
}

/** "receipts/apple-pie.md" → "Apple pie". */
function titleFromFile(file: string): string {
  const name = (file.split(/[\\/]/).pop() ?? '')
    .replace(/\.[^.]*$/, '')
    .replace(/[-_]+/g, ' ')
    .trim()
  return name === '' ? 'Receipt' : name[0]!.toUpperCase() + name.slice(1)
}
