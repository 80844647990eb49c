import {lstatSync, mkdirSync, readdirSync, readFileSync, statSync} from 'node:fs'
import {createRequire} from 'node:module'
import {dirname, join, relative, sep} from 'node:path'
import {decoded} from '../receipt/decode.js'
import type {Message} from '../receipt/types.js'
import {Failure, fileFailure} from './failure.js'

/** Files above this are not receipts. A whole cookery book is under 2 MB. */
const LARGEST = 64 * 1024 * 1024

/** Takes what is to be said of how a file was read. */
export type Told = (message: Message) => void

/**
 * Read a text file, keeping a byte order mark so that offsets are those of the file as read.
 *
 * @param told takes the warning `file-encoding` where the encoding had to be guessed
 * @throws {Failure} rules `file-missing`, `file-folder`, `file-unreadable`, `file-empty`, `file-binary`, `file-large`
 */
export function readText(path: string, shown = path, what = 'file', told?: Told): string {
  let bytes: Buffer
  try {
    const stat = statSync(path)
    if (stat.isDirectory()) throw fileFailure(shown, 'file-folder', `this is a folder, not a ${what}`, 'name a file')
    if (stat.size > LARGEST) throw fileFailure(shown, 'file-large', 'this file is larger than 64 MB', 'split it')
    bytes = readFileSync(path)
  } catch (error) {
    if (error instanceof Failure) throw error
    const code = (error as NodeJS.ErrnoException).code
    if (code === 'ENOENT' || code === 'ENOTDIR')
      throw fileFailure(shown, 'file-missing', `there is no such ${what}`, nearby(path))
    throw fileFailure(shown, 'file-unreadable', `this ${what} cannot be read (${code ?? 'unknown'})`, 'check its permissions')
  }
  return decodeText(bytes, shown, what, told)
}

/**
 * The text of a file's bytes, in the encoding that `decoded` finds.
 *
 * @param told takes the warning `file-encoding` where the encoding had to be guessed
 * @throws {Failure} rules `file-empty`, `file-binary`
 */
export function decodeText(bytes: Uint8Array, shown: string, what = 'file', told?: Told): string {
  const {text, guessed, broken} = decoded(bytes, true)
  if (broken || text.includes('\0'))
    throw fileFailure(shown, 'file-binary', `this ${what} is not text`, 'save it as plain text or Markdown in UTF-8')
  if (text.replace(/^\uFEFF/, '').trim() === '') {
    throw fileFailure(
      shown,
      'file-empty',
      `this ${what} is empty`,
      what === 'receipt' ? 'write a heading, the ingredients and what to do with them' : 'write something in it',
    )
  }
  if (guessed)
    told?.({
      file: shown,
      line: 1,
      column: 1,
      severity: 'warning',
      rule: 'file-encoding',
      reason: 'this file is not in UTF-8: it is read as Windows-1252',
      suggest: 'look whether its letters are right, and save it in UTF-8',
    })
  return text
}

function nearby(path: string): string {
  try {
    const names = readdirSync(dirname(path)).filter((n) => n.endsWith('.md'))
    if (names.length > 0) return `there are: ${names.slice(0, 6).join(', ')}${names.length > 6 ? ', …' : ''}`
  } catch {
    // The folder itself is missing; the plain advice below serves.
  }
  return 'check the path'
}

/**
 * Names of what lies in a folder that may be missing; none where it is.
 *
 * @param what what such a folder holds, for the message
 * @throws {Failure} rules `file-no-folder` where a file has its name, `file-unreadable`
 */
export function namesIn(folder: string, what: string): string[] {
  try {
    return readdirSync(folder)
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code
    if (code === 'ENOENT') return []
    if (code === 'ENOTDIR')
      throw fileFailure(
        folder,
        'file-no-folder',
        `this is a file, and it has the name of the folder of the ${what}`,
        `give the file another name, and make a folder of this name for the ${what}`,
      )
    throw fileFailure(folder, 'file-unreadable', `this folder cannot be read (${code ?? 'unknown'})`, 'check its permissions')
  }
}

/** Markdown files of a folder and below, sorted by name so that the same folder gives the same output everywhere. */
export function markdownFiles(folder: string): string[] {
  return readdirSync(folder, {recursive: true, withFileTypes: true})
    .filter((entry) => entry.isFile() && /\.(?:md|markdown|txt)$/i.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .sort()
}

/** Name of the list of what we wrote in an output folder, so that we never overwrite what we did not. */
const LIST = '.hearthfall-files.json'

type Listed = Record<string, string[]>

const load = createRequire(import.meta.url)

/**
 * Write a set of files into a folder: all checks before the first write, each file to a temporary name and renamed.
 *
 * A file that exists and is not one we wrote, or that was changed since, is left alone and the whole run refused, unless `replace`.
 *
 * @param out the folder; made where it is missing
 * @param files paths relative to `out`, with `/`
 * @throws {Failure} rules `out-path`, `out-exists`, `out-link`, `out-unwritable`
 */
export function writeAll(out: string, files: ReadonlyMap<string, string | Uint8Array>, replace: boolean): void {
  const messages: Message[] = []
  const say = (file: string, rule: string, reason: string, suggest: string): void => {
    messages.push({file, line: 1, column: 1, severity: 'error', rule, reason, suggest})
  }
  const before = readList(out)
  const after: Listed = {}
  for (const [path, content] of files) {
    const target = join(out, path)
    const inside = relative(out, target)
    if (inside.startsWith('..') || inside.split(sep).includes('..') || path.startsWith('/')) {
      say(target, 'out-path', 'this file would lie outside the output folder', 'name another folder')
      continue
    }
    const hash = digest(content)
    after[path] = [hash]
    if (linkOnTheWay(out, inside))
      say(target, 'out-link', 'a link on the way leads elsewhere', 'remove the link, or name another folder')
    else {
      const old = existing(target)
      if (old === 'folder') say(target, 'out-exists', 'there is a folder of this name', 'remove it, or name another folder')
      else if (old && old !== hash && !replace && !before[path]?.includes(old)) {
        say(
          target,
          'out-exists',
          before[path] ? 'this file was changed by hand since we wrote it' : 'this file is not one we wrote',
          'move it, or add --replace',
        )
      }
    }
  }
  if (messages.length > 0) throw new Failure(messages)
  try {
    // Loaded only where something is written: most runs write nothing, and it costs as much to load as a small receipt to read.
    const writeFileAtomic = load('write-file-atomic') as typeof import('write-file-atomic')
    mkdirSync(out, {recursive: true})
    // Both the old and the new contents count as ours until every file is in place, so that a killed run can be run again.
    writeFileAtomic.sync(join(out, LIST), listText(merge(before, after)))
    for (const [path, content] of files) {
      const target = join(out, path)
      mkdirSync(dirname(target), {recursive: true})
      // Renamed whole, so an interrupted run leaves the old file; not forced to the disk one by one, since sheets can be made again.
      writeFileAtomic.sync(target, content as string | Buffer, {fsync: false})
    }
    writeFileAtomic.sync(join(out, LIST), listText({...before, ...after}))
  } catch (error) {
    throw fileFailure(
      out,
      'out-unwritable',
      `this folder cannot be written (${(error as NodeJS.ErrnoException).code ?? 'unknown'})`,
      'name another folder',
    )
  }
}

function digest(content: string | Uint8Array): string {
  // As above: only what is written needs it.
  const {createHash} = load('node:crypto') as typeof import('node:crypto')
  return createHash('sha256').update(content).digest('hex').slice(0, 32)
}

function existing(path: string): string | null {
  try {
    return lstatSync(path).isDirectory() ? 'folder' : digest(readFileSync(path))
  } catch {
    return null
  }
}

function linkOnTheWay(out: string, inside: string): boolean {
  let path = out
  for (const part of inside.split(sep)) {
    path = join(path, part)
    try {
      if (lstatSync(path).isSymbolicLink()) return true
    } catch {
      return false
    }
  }
  return false
}

function readList(out: string): Listed {
  try {
    const list: unknown = JSON.parse(readFileSync(join(out, LIST), 'utf8'))
    if (list && typeof list === 'object') return list as Listed
  } catch {
    // No list, or one we cannot read: then no file counts as ours.
  }
  return {}
}

function merge(a: Listed, b: Listed): Listed {
  const out: Listed = {...a}
  for (const [path, hashes] of Object.entries(b)) out[path] = [...new Set([...(a[path] ?? []), ...hashes])]
  return out
}

function listText(list: Listed): string {
  const sorted = Object.fromEntries(Object.entries(list).sort(([a], [b]) => (a < b ? -1 : 1)))
  return `${JSON.stringify(sorted, null, 1)}\n`
}
