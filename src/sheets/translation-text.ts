import type {Source} from '../lexicon/schema.js'
import type {Ingredient, Message, OvenPhrase, Receipt, Translation, Yield} from '../receipt/types.js'
import {durations, mass, number, temperatures, volume} from './figures.js'
import {allergenNames, cautionText, inWords, messageWords, oursValue, partName, sourceTitle} from './said.js'
import {plainStyle, type Style} from './style.js'
import {bold, columns, hanging, markdownTable, markdownText, printable} from './text.js'
import {say, sayIf} from './words/index.js'

/** What `translationText` and `translationMarkdown` are told beside the translation. */
export interface TranslationOptions {
  /** Rows of `lexicon/sources`, to name the sources in full. */
  readonly sources: readonly Source[]
  readonly style?: Style
  /** Show the chain by which each figure was reached. */
  readonly why?: boolean
  /** Bold on the terminal; an extra, never the only sign of anything. */
  readonly colour?: boolean
  /** Columns of the terminal, 80 by default. */
  readonly width?: number
}

/** Numbers sources in the order they are first cited. */
export class Citations {
  readonly #ids: string[] = []

  /** The marks of some sources: `[1] [3]`, or nothing. */
  mark(ids: readonly string[]): string {
    return ids.map((id) => `[${this.number(id)}]`).join(' ')
  }

  /** The number of one source. */
  number(id: string): number {
    const at = this.#ids.indexOf(id)
    return at >= 0 ? at + 1 : this.#ids.push(id)
  }

  /** Each cited source with its number and its row, if there is one. */
  list(
    sources: readonly Source[],
    style: Style = plainStyle,
  ): Array<{readonly number: number; readonly id: string; readonly text: string}> {
    return this.#ids.map((id, i) => {
      const row = sources.find((source) => source.id === id)
      return {number: i + 1, id, text: row ? sourceLine(row, style) : id}
    })
  }
}

/** A source in one line: title, year, place in it. */
export function sourceLine(source: Source, style: Style = plainStyle): string {
  const title = sourceTitle(source, style)
  const year = source.year !== undefined && !title.includes(String(source.year)) ? String(source.year) : ''
  return [title, year, source.where ?? ''].filter(Boolean).join(', ')
}

/** The modern figure of an ingredient with its range, in the style's units. */
export function modernFigure(ingredient: Ingredient, style: Style): string {
  const parts: string[] = []
  const {grams, millilitres} = ingredient
  // A millilitre of water weighs a gram: one figure does for both.
  const watery = ingredient.item === 'water' && millilitres !== null && isPoured(ingredient)
  if (grams && !watery) parts.push(mass(grams, style))
  if (millilitres && isPoured(ingredient)) parts.push(volume(millilitres, style))
  if (parts.length > 0) return parts.join('; ')
  const share = ingredient.bakersPercent
  if (ingredient.amount === null && share !== undefined) {
    const [low, high] = [number(share.low, 2, style), number(share.high, 2, style)]
    return say(style.words, 'translate.percent', {percent: low === high ? low : `${low}–${high}`})
  }
  if (ingredient.amount === null) return style.words['translate.indefinite']
  return style.words['translate.unconverted']
}

/** A volume is worth showing where the receipt measured by volume; a pound of flour needs none. */
function isPoured(ingredient: Ingredient): boolean {
  if (ingredient.grams === null) return true
  return !['pound', 'ounce', 'gram', 'kilogram', 'drachm', 'stone', 'quarter', 'egg', 'piece', 'count', 'weight-of'].includes(
    ingredient.measure,
  )
}

/** What is said beside an ingredient: its notes, doubts and other readings. */
export function besides(ingredient: Ingredient, style: Style): string[] {
  return [...ingredient.notes.map((note) => inWords(note, style)), ...doubts(ingredient, style)]
}

/** Part after part, in the order in which the text begins them: a table of a dough's stages gives them row by row. */
function byPart(ingredients: readonly Ingredient[]): readonly Ingredient[] {
  const parts = [...new Set(ingredients.map(({part}) => part))]
  return parts.flatMap((part) => ingredients.filter((one) => one.part === part))
}

/** What is doubtful in the reading of an ingredient, in words of ours. */
export function doubts(ingredient: Ingredient, style: Style): string[] {
  const said: string[] = []
  if (!ingredient.known) said.push(`${quoted(ingredient.item, style)}: ${style.words['translate.unknown']}`)
  if (ingredient.confidence < 0.6) said.push(style.words['translate.doubtful'])
  if (ingredient.other) said.push(say(style.words, 'translate.other', ingredient.other))
  return said
}

function origin(receipt: Receipt, style: Style): string {
  const parts = [say(style.words, 'translate.from', {file: receipt.file, line: receipt.line})]
  if (receipt.year !== null) parts.push(String(receipt.year))
  if (receipt.place !== null) parts.push(sayIf(style.words, `place.${receipt.place}`, receipt.place))
  return parts.join(' · ')
}

const quoted = (text: string, style: Style): string => say(style.words, 'quote', {text: oneLine(text)})

const bandWord = (phrase: OvenPhrase, style: Style): string => style.words[`band.${phrase.band}`]

function oneLine(text: string): string {
  return printable(text).replace(/\s+/g, ' ').trim()
}

/** Every time a receipt states, as it is shown: how long, and of what. A rule about the door stands for the time within it. */
export function timesShown(
  receipt: Pick<Receipt, 'times' | 'door' | 'ajar'>,
  style: Style,
): ReadonlyArray<{
  readonly text: string
  readonly start: number
  readonly end: number
  readonly length: string
  readonly of: string
  readonly sources: readonly string[]
}> {
  const {words} = style
  const doors = receipt.door ?? []
  const times = receipt.times
    .filter((time) => time.of !== 'other' || !doors.some((door) => door.start <= time.start && time.end <= door.end))
    .map(({text, start, end, minutes, of, stage, overnight, cooling}) => ({
      text,
      start,
      end,
      length: durations(minutes, style),
      of: cooling === true ? words['of.cooling'] : overnight === true ? words['of.overnight'] : words[`of.${stage ?? of}`],
      sources: [],
    }))
  const shut = doors.map(({text, start, end, minutes, share, sources}) => ({
    text,
    start,
    end,
    length:
      minutes === undefined
        ? say(words, 'translate.ofBake', {percent: `${Math.round((share?.likely ?? 1) * 100)} %`})
        : durations(minutes, style),
    of: words['of.door'],
    sources,
  }))
  const {ajar} = receipt
  const open = ajar === undefined ? [] : [{...ajar, length: words['translate.whileIn'], of: words['of.ajar'], sources: []}]
  return [...times, ...shut, ...open].sort((a, b) => a.start - b.start)
}

/** One message as `file:line:column: word: reason`. */
export function messageLine(message: Message, style: Style): string {
  const {severity, reason, suggest} = messageWords(message, style)
  return `${message.file}:${message.line}:${message.column}: ${severity}: ${reason}${suggest ? ` → ${suggest}` : ''}`
}

/**
 * A translation for the terminal: per receipt the old words, the modern figure with its range and its source; oven words with their
 * degrees; times; what is ours; cautions.
 */
export function translationText(translation: Translation, options: TranslationOptions): string {
  const style = options.style ?? plainStyle
  const width = options.width ?? 80
  const colour = options.colour ?? false
  const {words} = style
  const out: string[] = []
  if (translation.receipts.length === 0) out.push(words['translate.none'])
  for (const receipt of translation.receipts) {
    const cited = new Citations()
    const heading = (text: string): void => {
      out.push('', bold(text, colour))
    }
    if (out.length > 0) out.push('', '')
    out.push(bold(oneLine(receipt.title), colour), '='.repeat(Math.min(width, Math.max(3, oneLine(receipt.title).length))))
    out.push(...hanging('', origin(receipt, style), width))
    if (receipt.serves)
      out.push(...hanging('', say(words, 'translate.serves', {text: yieldText(receipt.serves, receipt.feeds)}), width))
    if (receipt.ingredients.length === 0) out.push('', words['translate.noIngredients'])
    else {
      const widths = [Math.floor((width - 12) * 0.42), width - 12 - Math.floor((width - 12) * 0.42), 8]
      out.push('')
      out.push(
        ...columns([[words['col.written'], words['col.today'], words['col.source']], widths.map((w) => '-'.repeat(w))], widths),
      )
      let part = ''
      for (const ingredient of byPart(receipt.ingredients)) {
        if (ingredient.part !== part) {
          part = ingredient.part
          out.push(`${part === '' ? words['translate.rest'] : partName(part, style)}:`)
        }
        out.push(
          ...columns([[oneLine(ingredient.text), modernFigure(ingredient, style), cited.mark(ingredient.sources)]], widths),
        )
        for (const note of besides(ingredient, style)) out.push(...hanging('    ', oneLine(note), width))
        if (options.why)
          for (const {step, source} of ingredient.why)
            out.push(...hanging('    > ', `${inWords(step, style)}${source ? ` ${cited.mark([source])}` : ''}`, width))
      }
    }
    if (receipt.oven.length > 0) {
      heading(words['translate.oven'])
      for (const phrase of receipt.oven) {
        const said = `${quoted(phrase.text, style)}: ${bandWord(phrase, style)}, ${temperatures(phrase.celsius, style)} ${cited.mark(phrase.sources)}`
        out.push(...hanging('  ', said, width))
        for (const note of phrase.notes ?? []) out.push(...hanging('    ', oneLine(inWords(note, style)), width))
      }
    }
    const times = timesShown(receipt, style)
    if (times.length > 0) {
      heading(words['translate.times'])
      for (const {text, length, of, sources} of times)
        out.push(...hanging('  ', `${quoted(text, style)}: ${length}, ${of} ${cited.mark(sources)}`.trimEnd(), width))
    }
    if (receipt.inferred.length > 0) {
      heading(words['translate.ours'])
      for (const inferred of receipt.inferred) {
        out.push(
          ...hanging(
            '  * ',
            `${say(words, 'translate.oursRow', {field: inWords(inferred.field, style), value: oursValue(inferred, style)})}`,
            width,
          ),
        )
        out.push(...hanging('      ', say(words, 'translate.because', {why: inWords(inferred.why, style)}), width))
      }
    }
    if (receipt.cautions.length > 0) {
      heading(words['translate.cautions'])
      for (const caution of receipt.cautions)
        out.push(...hanging('  ! ', `${cautionText(caution, style)} ${cited.mark([caution.source])}`, width))
    }
    out.push('')
    out.push(...hanging('', allergensLine(receipt, style), width))
    const list = cited.list(options.sources, style)
    if (list.length > 0) {
      heading(words['translate.sources'])
      for (const {number, text} of list) out.push(...hanging(`  ${`[${number}]`.padEnd(5)}`, text, width))
    }
  }
  if (translation.messages.length > 0) {
    out.push('', bold(words['translate.messages'], colour))
    for (const message of translation.messages) out.push(...hanging('  ', oneLine(messageLine(message, style)), width))
  }
  return `${out.join('\n')}\n`
}

/** The allergens found, or the honest opposite. */
export function allergensLine(receipt: {readonly allergens: readonly string[]}, style: Style): string {
  if (receipt.allergens.length === 0) return style.words['translate.noAllergens']
  return say(style.words, 'translate.allergens', {list: allergenNames(receipt.allergens, style)})
}

/** The same as Markdown, safe to put on a page: what comes from the receipt is escaped. */
export function translationMarkdown(translation: Translation, options: TranslationOptions): string {
  const style = options.style ?? plainStyle
  const {words} = style
  const blocks: string[] = []
  if (translation.receipts.length === 0) blocks.push(words['translate.none'])
  for (const receipt of translation.receipts) {
    const cited = new Citations()
    const cite = (ids: readonly string[]): string => markdownText(cited.mark(ids))
    blocks.push(`# ${markdownText(oneLine(receipt.title))}`, markdownText(origin(receipt, style)))
    if (receipt.serves)
      blocks.push(markdownText(say(words, 'translate.serves', {text: yieldText(receipt.serves, receipt.feeds)})))
    blocks.push(`## ${words['translate.ingredients']}`)
    if (receipt.ingredients.length === 0) blocks.push(words['translate.noIngredients'])
    else
      blocks.push(
        markdownTable(
          [words['col.written'], words['col.today'], words['col.source'], words['col.note']],
          receipt.ingredients.map((ingredient) => [
            markdownText(oneLine(ingredient.text)),
            markdownText(modernFigure(ingredient, style)),
            cite(ingredient.sources),
            markdownText(
              oneLine([...(ingredient.part ? [partName(ingredient.part, style)] : []), ...besides(ingredient, style)].join('; ')),
            ),
          ]),
        ),
      )
    if (options.why && receipt.ingredients.length > 0) {
      blocks.push(`## ${words['translate.why']}`)
      for (const ingredient of receipt.ingredients)
        if (ingredient.why.length > 0)
          blocks.push(
            [
              `- ${markdownText(oneLine(ingredient.text))}`,
              ...ingredient.why.map(
                ({step, source}) => `  - ${markdownText(oneLine(inWords(step, style)))}${source ? ` ${cite([source])}` : ''}`,
              ),
            ].join('\n'),
          )
    }
    if (receipt.oven.length > 0) {
      blocks.push(`## ${words['translate.oven']}`)
      blocks.push(
        markdownTable(
          [words['col.written'], words['col.band'], words['col.degrees'], words['col.source'], words['col.note']],
          receipt.oven.map((phrase) => [
            markdownText(oneLine(phrase.text)),
            bandWord(phrase, style),
            temperatures(phrase.celsius, style),
            cite(phrase.sources),
            markdownText(oneLine((phrase.notes ?? []).map((note) => inWords(note, style)).join('; '))),
          ]),
        ),
      )
    }
    const times = timesShown(receipt, style)
    if (times.length > 0) {
      blocks.push(`## ${words['translate.times']}`)
      blocks.push(
        markdownTable(
          [words['col.written'], words['col.minutes'], words['col.of']],
          times.map(({text, length, of, sources}) => [markdownText(oneLine(text)), length, `${of} ${cite(sources)}`.trimEnd()]),
        ),
      )
    }
    if (receipt.inferred.length > 0) {
      blocks.push(`## ${words['translate.ours']}`)
      blocks.push(
        receipt.inferred
          .map(
            (one) =>
              `- ${markdownText(say(words, 'translate.oursRow', {field: inWords(one.field, style), value: oursValue(one, style)}))} (${markdownText(say(words, 'translate.because', {why: inWords(one.why, style)}))})`,
          )
          .join('\n'),
      )
    }
    blocks.push(`## ${words['translate.cautions']}`)
    if (receipt.cautions.length > 0)
      blocks.push(receipt.cautions.map((c) => `- ${markdownText(oneLine(cautionText(c, style)))} ${cite([c.source])}`).join('\n'))
    blocks.push(markdownText(allergensLine(receipt, style)))
    const list = cited.list(options.sources, style)
    if (list.length > 0) {
      blocks.push(`## ${words['translate.sources']}`)
      blocks.push(list.map(({number, text}) => `- ${markdownText(`[${number}]`)} ${markdownText(text)}`).join('\n'))
    }
  }
  if (translation.messages.length > 0) {
    blocks.push(`## ${words['translate.messages']}`)
    blocks.push(translation.messages.map((message) => `- ${markdownText(messageLine(message, style))}`).join('\n'))
  }
  return `${blocks.join('\n\n')}\n`
}

/** How much the receipt makes, and how many it feeds where it says both, in its own words. */
const yieldText = (serves: Yield, feeds: Yield | undefined): string =>
  [serves, ...(feeds === undefined ? [] : [feeds])].map(({text}) => oneLine(text)).join('; ')
