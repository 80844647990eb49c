import type {Element, ElementContent, Root} from 'hast'
import {toHtml} from 'hast-util-to-html'
import {clean} from '../sheets/page.js'

/** Most work in a part: a phone at a sixth of a laptop's speed lays so much out in a fraction of a frame. */
const MOST = 60

/** How long a browser takes to lay something out, in shapes: each stretch of text is shaped anew at the drawing's own scale. */
const work = (one: ElementContent): number =>
  'children' in one ? one.children.reduce((sum, child) => sum + work(child), 1) : one.type === 'text' ? 6 : 0

/**
 * A drawing of the sheets, cleaned, in parts that can be put on the page one after the other.
 *
 * @param tree one `svg`, or a root with one
 * @returns the `svg` with the first of what is in it, and then the rest, to be put at its end; nothing where the tree holds no `svg`
 */
export function svgParts(tree: Root | Element): string[] {
  const svg = clean(tree).children.find((one) => one.type === 'element')
  if (!svg) return []
  const groups: ElementContent[][] = [[]]
  let size = 0
  for (const child of svg.children) {
    const more = work(child)
    if (size > 0 && size + more > MOST) {
      groups.push([])
      size = 0
    }
    groups.at(-1)?.push(child)
    size += more
  }
  const [first = [], ...rest] = groups
  const text = (children: Root['children']): string => toHtml({type: 'root', children}, {space: 'svg'})
  return [text([{...svg, children: first}]), ...rest.map(text)]
}
