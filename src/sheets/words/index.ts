import {fillIn} from '../../plan/phrases.js'
import {en, type WordKey, type Words} from './en.js'

export type {WordKey, Words} from './en.js'

/** The word of `key` with its `{places}` filled in. A place without a value stays as it stands, so a gap is seen, not hidden. */
export function say(words: Words, key: WordKey, values: Readonly<Record<string, string | number>> = {}): string {
  return fillIn(words[key], (name) => (name in values ? String(values[name]) : null))
}

/** Whether `key` names a word: for keys put together from data, such as `band.` and a band. */
export function isWordKey(key: string): key is WordKey {
  return Object.hasOwn(en, key)
}

/** The word of a key put together from data, or `otherwise` where there is none. */
export function sayIf(words: Words, key: string, otherwise: string): string {
  return isWordKey(key) ? words[key] : otherwise
}
