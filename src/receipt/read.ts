import {frontMatterSpan} from './front-matter.js'
import {readIngredients} from './ingredients.js'
import {readSections} from './sections.js'
import type {Message, ReadReceipt, ReceiptFacts} from './types.js'
import {makeView} from './view.js'

/**
 * Read every receipt of a Markdown file: one a heading, or the whole file where it has none.
 *
 * @param source the whole file as read
 * @param options.file its name, for titles and messages
 * @returns receipts in order, and what could not be read
 */
export function readReceipts(source: string, options: {readonly file: string}): {receipts: ReadReceipt[]; messages: Message[]} {
  const messages: Message[] = []
  const receipts: ReadReceipt[] = []
  const span = frontMatterSpan(source)
  const facts: ReceiptFacts = {}
  for (const section of readSections(source, options.file, span?.bodyStart ?? 0, facts)) {
    const view = makeView(section)
    receipts.push({
      file: options.file,
      title: section.title,
      line: section.line,
      start: section.start,
      end: section.end,
      year: facts.year ?? null,
      place: facts.place ?? null,
      kind: null,
      ingredients: readIngredients(view, section.title),
      oven: [],
      times: [],
      serves: null,
      facts,
    })
  }
  return {receipts, messages}
}
