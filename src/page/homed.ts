import {isSafePath} from './embedded.js'
import type {Folder} from './folder.js'

/** The folder with day.md or oven.md at its top; what lies outside the bake day's own places is left out. */
export function homed(files: Folder): Map<string, string> {
  const paths = [...files.keys()].map((path) => path.replace(/\\/g, '/'))
  const anchor = paths.find((path) => /(?:^|\/)day\.md$/.test(path)) ?? paths.find((path) => /(?:^|\/)oven\.md$/.test(path))
  const inner = paths.find((path) => /(?:^|\/)(?:receipts|firings)\/[^/]+$/.test(path))
  const home = anchor ? anchor.replace(/(?:day|oven)\.md$/, '') : (inner?.replace(/(?:receipts|firings)\/[^/]+$/, '') ?? '')
  const out = new Map<string, string>()
  for (const [path, text] of files) {
    const plain = path.replace(/\\/g, '/')
    if (!plain.startsWith(home)) continue
    const rest = plain.slice(home.length)
    if (isSafePath(rest) && /^(?:day\.md|oven\.md|receipts\/.+|firings\/[^/]+)$/.test(rest)) out.set(rest, text)
  }
  return out
}
