import {strToU8, unzip, zip} from 'fflate'
import {decoded} from '../receipt/decode.js'
import {type Folder, isText} from './folder.js'
import {homed} from './homed.js'

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
      resolve(homed(new Map(Object.entries(data).map(([path, text]) => [path, decoded(text).text]))))
    }),
  )
}
