import {isMap, isScalar, isSeq, parseDocument} from 'yaml'
import {span} from './folder.js'

/** A value of front matter as a form shows it. */
export type Stated = string | readonly string[] | Readonly<Record<string, string>>

/** The front matter of a text as plain words, for a form; faulty YAML gives nothing. */
export function stated(text: string): ReadonlyMap<string, Stated> {
  const at = span(text)
  const out = new Map<string, Stated>()
  if (!at) return out
  const root = parseDocument(text.slice(at.start, at.end), {prettyErrors: false}).contents
  if (!isMap(root)) return out
  for (const pair of root.items) {
    const key = isScalar(pair.key) ? String(pair.key.value) : ''
    if (isScalar(pair.value)) out.set(key, words(pair.value))
    else if (isSeq(pair.value))
      out.set(
        key,
        pair.value.items.map((one) => (isScalar(one) ? words(one) : '')),
      )
    else if (isMap(pair.value))
      out.set(
        key,
        Object.fromEntries(
          pair.value.items.map((one) => [
            isScalar(one.key) ? String(one.key.value) : '',
            isScalar(one.value) ? words(one.value) : '',
          ]),
        ),
      )
  }
  return out
}

/** Where, in lines of the file, and why front matter cannot be read, so that nothing can be set in it either; null where it can. */
export function frontFault(text: string): {readonly line: number; readonly why: string} | null {
  const at = span(text)
  if (!at) return null
  const yaml = text.slice(at.start, at.end)
  const {errors, contents} = parseDocument(yaml, {prettyErrors: false})
  const [error] = errors
  if (!error && (contents === null || isMap(contents))) return null
  const offset = at.start + Math.min(error?.pos[0] ?? 0, yaml.trimEnd().length)
  return {line: text.slice(0, offset).split('\n').length, why: error?.message ?? 'no list of names and values'}
}

/** A scalar as it was written: `7` stays 7 and `1/2` stays 1/2. */
function words(scalar: {value?: unknown; source?: string | undefined}): string {
  return scalar.value === null || scalar.value === undefined ? '' : (scalar.source ?? String(scalar.value))
}

/**
 * A text with keys of its front matter set; everything else, comments too, stays. A value of null takes the key out. Where there is no
 * front matter, it is begun.
 */
export function withStated(text: string, values: Readonly<Record<string, Stated | null>>): string {
  const at = span(text)
  const end = /\r\n/.test(text) ? '\r\n' : '\n'
  const document = parseDocument(at ? text.slice(at.start, at.end) : '', {prettyErrors: false})
  if (document.errors.length > 0 || (document.contents !== null && !isMap(document.contents))) return text
  if (document.contents === null) document.contents = document.createNode({}) as unknown as typeof document.contents
  for (const [key, value] of Object.entries(values)) {
    if (value === null) {
      document.delete(key)
      continue
    }
    const old = document.get(key, true)
    if (typeof value === 'string') {
      const node = document.createNode(plain(value))
      if (isScalar(old)) {
        node.comment = old.comment ?? null
        node.commentBefore = old.commentBefore ?? null
      }
      document.set(key, node)
    } else document.set(key, document.createNode(Array.isArray(value) ? value.map(plain) : value))
  }
  const empty = isMap(document.contents) && document.contents.items.length === 0
  const yaml = empty ? '' : document.toString({lineWidth: 0}).replace(/\n/g, end)
  if (at) return text.slice(0, at.start) + yaml + text.slice(at.end)
  return empty ? text : `---${end}${yaml}---${end}${end}${text.replace(/^\s+/, '')}`
}

/** Bare numbers, truths and lies are written as such; all else as words. */
function plain(value: string): string | number | boolean {
  if (/^(?:0|[1-9]\d{0,8})$/.test(value)) return Number(value)
  if (value === 'true' || value === 'false') return value === 'true'
  return value
}
