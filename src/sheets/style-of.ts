import {makeStyle, type Style} from './style.js'
import {de} from './words/de.js'
import {en} from './words/en.js'
import type {Words} from './words/index.js'

/** Every language there is, by its code. A further one is a file of words beside these. */
export const languages: Readonly<Record<string, Words>> = {en, de}

/** What a command says of how figures and words are shown. */
export interface StyleOptions {
  readonly language?: string
  readonly units?: Style['units']
  readonly clock?: Style['clock']
  readonly degrees?: Style['degrees']
}

/** The style of some options: the German sheets use the 24-hour clock unless told otherwise. */
export function styleOf(options: StyleOptions): Style {
  const words = languages[options.language ?? 'en'] ?? en
  return makeStyle({
    words,
    ...(options.units ? {units: options.units} : {}),
    clock: options.clock ?? (words === de ? 24 : 12),
    ...(options.degrees ? {degrees: options.degrees} : {}),
  })
}
