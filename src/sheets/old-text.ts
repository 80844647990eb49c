import type {ElementContent} from 'hast'
import type {Html, Image, Link, PhrasingContent, Root, Text} from 'mdast'
import {toHast} from 'mdast-util-to-hast'
import remarkFrontmatter from 'remark-frontmatter'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import {unified} from 'unified'
import {SKIP, visit} from 'unist-util-visit'

/** A stretch of the old text to be marked, with the number of its row. */
export interface Marked {
  readonly start: number
  readonly end: number
  readonly number: number
}

const plainParser = unified().use(remarkParse).use(remarkFrontmatter, ['yaml']).freeze()
const gfmParser = unified().use(remarkParse).use(remarkFrontmatter, ['yaml']).use(remarkGfm).freeze()

/**
 * Tables, strikethrough, bare links, footnotes and task lists cannot be without one of these (GitHub Flavored Markdown Spec 0.29). Most
 * receipts have none, and are read twice as fast without looking for them at every letter.
 */
const mayBeGfm = /[|~@]|https?:|www\.|\[[ x^]/i

/**
 * The receipt as it is written, from its Markdown, with each read phrase underlined and numbered. HTML in it is shown as the letters
 * it is made of; nothing in it runs. `offset` is where `source` starts in the file that the offsets of `marks` count in.
 */
export function oldText(source: string, offset: number, marks: readonly Marked[]): ElementContent[] {
  const tree: Root = (mayBeGfm.test(source) ? gfmParser : plainParser).parse(source)
  const ordered = [...marks].sort((a, b) => a.start - b.start)
  visit(tree, 'html', (node: Html, index, parent) => {
    if (parent && index !== undefined) parent.children[index] = {type: 'text', value: node.value}
  })
  visit(tree, 'image', (node: Image, index, parent) => {
    if (parent && index !== undefined) parent.children[index] = {type: 'text', value: node.alt ?? ''}
  })
  visit(tree, 'link', (node: Link, index, parent) => {
    if (!parent || index === undefined || /^(?:https?|mailto):/i.test(node.url)) return
    parent.children.splice(index, 1, ...node.children)
    return [SKIP, index]
  })
  visit(tree, 'text', (node: Text, index, parent) => {
    const start = node.position?.start.offset
    const end = node.position?.end.offset
    // An escape or entity in the text makes the letters fewer than the source's: then the phrase is left unmarked, not marked wrongly.
    if (!parent || index === undefined || start === undefined || end === undefined || source.slice(start, end) !== node.value)
      return
    const pieces: PhrasingContent[] = []
    let at = start
    for (const mark of ordered) {
      const [from, to] = [mark.start - offset, mark.end - offset]
      if (to <= at || from >= end || from < at) continue
      const stop = Math.min(to, end)
      if (from > at) pieces.push({type: 'text', value: source.slice(at, from)})
      pieces.push(marked(source.slice(from, stop), mark.number))
      at = stop
    }
    if (pieces.length === 0) return
    if (at < end) pieces.push({type: 'text', value: source.slice(at, end)})
    parent.children.splice(index, 1, ...(pieces as never[]))
    return [SKIP, index + pieces.length]
  })
  const hast = toHast(tree)
  return hast.type === 'root' ? hast.children.filter((child) => child.type !== 'doctype') : []
}

/** A phrase that becomes `<mark>phrase<sup>3</sup></mark>` in HTML. */
function marked(text: string, number: number): PhrasingContent {
  const inner: PhrasingContent[] = [
    {type: 'text', value: text},
    {type: 'emphasis', data: {hName: 'sup'}, children: [{type: 'text', value: String(number)}]},
  ]
  return {type: 'emphasis', data: {hName: 'mark'}, children: inner}
}
