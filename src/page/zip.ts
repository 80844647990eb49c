import {strFromU8, strToU8, unzip, zip} from 'fflate'
import {isSafePath} from './embedded.js'
import {type Folder, isText} from './folder.js'

/** A folder as a zip. */
export function zipFolder(folder: Folder, name: string): Promise<Uint8Array<ArrayBuffer>> {
  const tree = Object.fromEntries([...folder].map(([path, text]) => [`${name}/${path}`, strToU8(text)]))
  return new Promise((resolve, reject) =>
    zip(tree, {level: 6}, (error, data) => (error ? reject(error) : resolve(data as Uint8Array<ArrayBuffer>))),
  )
}

/** Largest file that is taken out of a zip, bytes: as for the command. */
const LARGEST = 64 * 1024 * 1024

/**
 * The text files of a zip.
 *
 * @throws where it is no zip
 */
export function unzipFolder(bytes: Uint8Array): Promise<Map<string, string>> {
  return new Promise((resolve, reject) =>
    unzip(bytes, {filter: ({name, originalSize}) => isText(name) && originalSize <= LARGEST}, (error, data) => {
      if (error) return reject(error)
      resolve(homed(new Map(Object.entries(data).map(([path, text]) => [path, strFromU8(text)]))))
    }),
  )
}

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
