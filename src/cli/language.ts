import {messageWords} from '../sheets/said.js'
import {languages, styleOf} from '../sheets/style-of.js'
import type {MessageWords} from './failure.js'

/** How messages are said in a language; undefined for English, which is their own, and where there is none such. */
export function messagesIn(language: string | undefined): MessageWords | undefined {
  if (language === undefined || language === 'en' || !Object.hasOwn(languages, language)) return undefined
  const style = styleOf({language})
  return (message) => messageWords(message, style)
}
