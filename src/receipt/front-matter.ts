import {distance} from 'fastest-levenshtein'
import {isMap, isScalar, type Pair, parseDocument, visit, type YAMLMap} from 'yaml'
import * as z from 'zod'
import type {Parsed} from '../measure/quantity.js'
import {lineIndex} from './position.js'
import type {Message} from './types.js'

/** YAML front matter, checked, with the place of every key. */
export interface FrontMatter<T> {
  /** The checked value; null where there is an error. */
  readonly value: T | null
  readonly messages: readonly Message[]
  /** Offset at which the Markdown below begins. */
  readonly bodyStart: number
  /** False where the file has none. */
  readonly present: boolean
  /** Offset of the value at a path, or of its nearest parent: for messages found later. */
  readonly at: (...path: ReadonlyArray<string | number>) => number
}

const FENCE = /^\uFEFF?---[ \t]*\r?\n/

/**
 * A front-matter field read by one of `measure/quantity`'s parsers. A bare number comes as it is written, so that the parser can say
 * which unit is missing; what is no text at all is told with what the parser would have written.
 */
export function quantity<T>(parse: (text: string) => Parsed<T>): z.ZodType<T, unknown> {
  return z.unknown().transform((raw, context) => {
    const parsed = typeof raw === 'object' || raw === undefined ? noText(parse, raw) : parse(String(raw))
    if (parsed.ok) return parsed.value
    context.addIssue({code: 'custom', message: parsed.reason, params: {suggest: parsed.suggest}})
    return z.NEVER
  })
}

/** A field with nothing in it, or with a list or keys of its own. */
function noText<T>(parse: (text: string) => Parsed<T>, raw: unknown): Parsed<T> & {readonly ok: false} {
  const empty = parse('')
  return {
    ok: false,
    reason: raw === null ? 'nothing is written here' : 'one value is wanted here, and no list or keys',
    suggest: empty.ok ? 'write a value, or take the line out' : empty.suggest,
  }
}

/** A front-matter field of words: some that say something, with an example for where they do not. */
export function inWords(suggest: string): z.ZodType<string, unknown> {
  return quantity((text) =>
    text.trim() === '' ? {ok: false, reason: 'nothing is written here', suggest} : {ok: true, value: text},
  )
}

/**
 * Whether lines further down a file are front matter by their keys: two that are known, or one that is nothing else there.
 *
 * @param known keys of such front matter
 * @param telling those of them of which one is enough
 */
export function isKeyed(text: string, known: ReadonlySet<string>, telling: readonly string[]): boolean {
  const keys = text.split('\n').flatMap((line) => {
    const key = line
      .slice(0, Math.max(0, line.indexOf(':')))
      .trim()
      .toLowerCase()
    return known.has(key) ? [key] : []
  })
  return keys.length >= 2 || keys.some((key) => telling.includes(key))
}

/** Where front matter lies in a text: offsets of the YAML and of the body; null where there is none. */
export function frontMatterSpan(source: string): {start: number; end: number; bodyStart: number; closed: boolean} | null {
  const open = FENCE.exec(source)
  if (!open) return null
  const start = open[0].length
  const close = /^(?:---|\.\.\.)[ \t]*(?:\r?\n|$)/gm
  close.lastIndex = start
  const found = close.exec(source)
  if (!found) return {start, end: source.length, bodyStart: source.length, closed: false}
  return {start, end: found.index, bodyStart: found.index + found[0].length, closed: true}
}

/**
 * Read and check YAML front matter.
 *
 * @param source the whole file as read
 * @param file its name, for messages
 * @param schema what it must be; `z.strictObject` makes unknown keys an error with the nearest known key
 * @param meant what to write instead of some unknown keys, in small letters
 * @returns the checked value, or messages (rules `yaml`, `key-unknown`, `key-missing`, `value`), each with line and column
 */
export function readFrontMatter<T>(
  source: string,
  file: string,
  schema: z.ZodType<T>,
  meant: ReadonlyMap<string, string> = new Map(),
): FrontMatter<T> {
  const place = lineIndex(source)
  const messages: Message[] = []
  const say = (offset: number, rule: string, reason: string, suggest?: string): void => {
    messages.push({file, ...place(offset), severity: 'error', rule, reason, ...(suggest ? {suggest} : {})})
  }
  const span = frontMatterSpan(source)
  if (!span) return {value: null, messages, bodyStart: FENCE.test(source) ? source.length : 0, present: false, at: () => 0}
  const stop = (): FrontMatter<T> => ({value: null, messages, bodyStart: span.bodyStart, present: true, at: () => span.start})
  if (!span.closed) {
    say(0, 'yaml', 'the front matter is opened with --- but never closed', 'put a line with --- after the last key')
    return stop()
  }
  const document = parseDocument(source.slice(span.start, span.end), {
    prettyErrors: false,
    uniqueKeys: true,
  })
  for (const error of document.errors) {
    say(
      span.start + error.pos[0],
      'yaml',
      `this is not good YAML: ${error.message.split('\n')[0]}`,
      'write one “key: value” a line; put a value with “: ” in quotes',
    )
  }
  if (messages.length > 0) return stop()
  const root = document.contents
  if (root !== null && !isMap(root)) {
    say(span.start, 'yaml', 'the front matter must be keys and values', 'write one “key: value” a line')
    return stop()
  }

  const pairAt = (map: YAMLMap, key: string): Pair | undefined =>
    map.items.find((p) => isScalar(p.key) && String(p.key.value) === key)
  const at = (...path: ReadonlyArray<string | number>): number => {
    let node: unknown = root
    let offset = span.start
    for (const part of path) {
      if (isMap(node)) {
        const pair = pairAt(node, String(part))
        if (!pair) break
        const key = pair.key as {range?: [number, number, number]} | null
        const value = pair.value as {range?: [number, number, number]} | null
        offset = span.start + (value?.range?.[0] ?? key?.range?.[0] ?? 0)
        node = pair.value
      } else if (node && typeof node === 'object' && 'items' in node) {
        const item = (node as {items: Array<{range?: [number, number, number]}>}).items[Number(part)]
        if (!item) break
        offset = span.start + (item.range?.[0] ?? 0)
        node = item
      } else break
    }
    return offset
  }
  const keyOffset = (path: ReadonlyArray<string | number>, key: string): number => {
    let node: unknown = root
    for (const part of path) node = isMap(node) ? pairAt(node, String(part))?.value : undefined
    const range = isMap(node) ? (pairAt(node, key)?.key as {range?: [number, number, number]} | undefined)?.range : undefined
    return span.start + (range?.[0] ?? 0)
  }

  // YAML would make 17.3 of “17.30” and 18 of “18.00”: what stands there is for the field to read, and to be quoted as it is.
  visit(document, {
    Scalar: (_, node) => {
      if (typeof node.value === 'number' && node.source !== undefined) node.value = node.source
    },
  })
  // Aliases are refused: they let a few lines of YAML stand for gigabytes, and no receipt needs them.
  let plain: unknown
  try {
    plain = document.toJS({maxAliasCount: 0}) ?? {}
  } catch (error) {
    say(span.start, 'yaml', `this front matter cannot be read: ${(error as Error).message}`, 'write the value out in full')
    return stop()
  }
  // A schema sees a few files of a run: the code that zod would make for it costs more than it spares.
  const checked = schema.safeParse(plain, {jitless: true})
  if (checked.success) return {value: checked.data, messages, bodyStart: span.bodyStart, present: true, at}

  const known = schema instanceof z.ZodObject ? Object.keys(schema.shape) : []
  for (const issue of checked.error.issues) {
    const path = issue.path.map((p) => (typeof p === 'number' ? p : String(p)))
    const name = path.filter((p) => typeof p === 'string').join(' › ')
    if (issue.code === 'unrecognized_keys') {
      for (const key of issue.keys) {
        const near = known.map((k) => ({k, d: distance(k, key.toLowerCase())})).sort((a, b) => a.d - b.d)[0]
        const suggest =
          (path.length === 0 ? meant.get(key.toLowerCase()) : undefined) ??
          (path.length === 0 && near && near.d <= Math.max(2, key.length / 3)
            ? `write “${near.k}”`
            : known.length
              ? `known here: ${known.join(', ')}`
              : undefined)
        say(keyOffset(path, key), 'key-unknown', `“${key}” is not a key of this file`, suggest)
      }
    } else if (path.length > 0 && !document.hasIn(path)) {
      say(at(...path.slice(0, -1)), 'key-missing', `“${name}” is missing`, `add a line “${path.at(-1)}: …”`)
    } else {
      const suggest =
        issue.code === 'custom' && typeof issue.params?.suggest === 'string'
          ? issue.params.suggest
          : issue.code === 'invalid_value'
            ? `write one of: ${issue.values.join(', ')}`
            : undefined
      say(at(...path), 'value', name ? `${name}: ${issue.message}` : issue.message, suggest)
    }
  }
  return {value: null, messages, bodyStart: span.bodyStart, present: true, at}
}
