import {decoded} from '../receipt/decode.js'
import {freeReceiptPath, isText} from './folder.js'
import {homed} from './homed.js'
import {app} from './state.js'
import {words} from './words.js'

const w = words.receipts

/** A file that was picked or dropped, with its path below the folder it came with. */
export interface Given {
  readonly path: string
  readonly text: () => Promise<string>
  /** Whether its encoding had to be guessed, once it is read. */
  readonly guessed?: () => boolean
}

/** A file as a box of the page gives it. */
export function givenOf(file: File, path = file.webkitRelativePath || file.name): Given {
  let guessed = false
  return {
    path,
    text: async () => {
      const read = decoded(new Uint8Array(await file.arrayBuffer()))
      guessed = read.guessed
      return read.text
    },
    guessed: () => guessed,
  }
}

/** What makes a folder that of a bake day, and not one of receipts. */
const OF_DAY = /(?:^|\/)(?:day|oven)\.md$|(?:^|\/)firings\/[^/]+$/

/**
 * A folder: a bake day is brought in whole, as a day of its own beside the one that is open; receipts alone go onto the pile. What is left out
 * is named.
 */
export async function bringFolder(files: readonly Given[]): Promise<void> {
  if (!files.some(({path}) => OF_DAY.test(path))) return bringReceipts(files)
  const texts = new Map<string, string>()
  for (const {path, text} of files) if (isText(path)) texts.set(path, await text())
  await bringDay(
    texts,
    files.map(({path}) => path),
  )
}

/**
 * A bake day of its own, of these files.
 *
 * @param given the paths of all that came with them, of which those that are no part of the day are named
 */
export async function bringDay(files: ReadonlyMap<string, string>, given: readonly string[] = [...files.keys()]): Promise<void> {
  const folder = homed(files)
  if (folder.size === 0) {
    app.say(words.keep.inNothing)
    return
  }
  await app.begin(folder)
  const left = given.filter((path) => ![...folder.keys()].some((kept) => path === kept || path.endsWith(`/${kept}`)))
  const named = left.map((path) => path.split('/').at(-1)!)
  app.say([words.keep.inDone(folder.size), named.length > 0 ? words.keep.inLeft(named) : ''].filter(Boolean).join(' '))
}

/** Text files onto the pile; each keeps its own name. */
export async function bringReceipts(files: readonly Given[]): Promise<void> {
  const changes = new Map<string, string | null>()
  const refused: string[] = []
  const guessed: string[] = []
  const taken = new Map<string, string>(app.state.files)
  for (const file of files) {
    if (!isText(file.path)) {
      refused.push(file.path)
      continue
    }
    const text = (await file.text()).replace(/^\uFEFF/, '')
    if (text.includes('\0') || text.includes('\uFFFD')) {
      refused.push(file.path)
      continue
    }
    const path = freeReceiptPath(taken, file.path.split('/').at(-1) ?? file.path)
    if (file.guessed?.()) guessed.push(file.path)
    taken.set(path, text)
    changes.set(path, text)
  }
  if (changes.size > 0) {
    app.edit(changes, 'bring in')
    app.choose([...changes.keys()][0]!)
  }
  app.say(
    [
      w.filesIn(changes.size),
      guessed.length > 0 ? w.filesGuessed(guessed.slice(0, 8).join(', ')) : '',
      refused.length > 0 ? w.filesOut(refused.slice(0, 8).join(', ')) : '',
    ]
      .filter(Boolean)
      .join('. '),
  )
}
