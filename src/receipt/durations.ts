import {type Minutes, type Parsed, parseDuration} from '../measure/quantity.js'
import {plainSection} from './section.js'
import {durationAt} from './time-lengths.js'

/**
 * A stretch of time in figures or in words, as front matter and the log state it.
 *
 * @param text "45 min", "half an hour", "a quarter of an hour", "eine Viertelstunde", "anderthalb Stunden", and all that `parseDuration` reads
 * @returns minutes; the error of `parseDuration` where the words are of no time, or of more than one
 */
export function readDuration(text: string): Parsed<Minutes> {
  const figures = parseDuration(text)
  if (figures.ok || text.length > LONGEST) return figures
  const {tokens} = plainSection(text.trim().replace(/\.$/, ''))
  const found = durationAt(tokens, 0, false)
  if (found === null || found.end < tokens.length) return figures
  if (found.low > found.high) return {ok: false, reason: `“${text}” runs backwards`, suggest: 'write the shorter time first'}
  return {ok: true, value: {low: found.low, high: found.high}}
}

/** Longer words are prose in the wrong place. */
const LONGEST = 60
