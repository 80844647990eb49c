import {messageWords} from '../sheets/said.js'
import {languages, styleOf} from '../sheets/style-of.js'
import type {MessageWords} from './failure.js'

/** How messages are said in a language, English where none or none such is asked for, with the hours of a clock. */
export function messagesIn(language: string | undefined, clock?: string): MessageWords {
  const known = language !== undefined && Object.hasOwn(languages, language)
  const style = styleOf({
    ...(known ? {language} : {}),
    ...(clock === '12' ? {clock: 12} : clock === '24' ? {clock: 24} : {}),
  })
  return (message) => messageWords(message, style)
}
