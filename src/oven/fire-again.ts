import {parseClock, parseDuration} from '../measure/quantity.js'

/** A fire that is to be lit again later in the day, as a row of the log tells of it. */
export interface FireToCome {
  /** Minutes after midnight of the log's date; null: none is to be lit any more. */
  readonly lit: number | null
  /** Minutes that it is to burn; null where the row does not say. */
  readonly burn: number | null
}

/** Minutes that such a fire may burn. */
const BURNS = {least: 10, most: 720} as const

/** What a row's words say of a fire to come: what it is, or what is wrong with it; null where they say nothing of one. */
export type ReadFireToCome =
  | {readonly ok: true; readonly fire: FireToCome}
  | {readonly ok: false; readonly reason: string; readonly suggest: string}
  | null

const AGAIN = /^(?:(?:the )?fire(?: to be lit)?|light(?: the (?:fire|oven)| it)?|to be (?:lit|fired)) again\b(.*)$/i
/** Other ways to say it, which need a time behind them to be sure. */
const ANOTHER =
  /^(?:(?:light )?(?:a |the )?(?:second|another|new) fire|light (?:a |the )?(?:fire|oven)|re-?fire|re-?light(?: (?:it|the (?:fire|oven)))?) at /i

/** What is said otherwise of a fire to come; null where no time that is to come stands behind it. */
function another(told: string, noted: number): ReadFireToCome {
  const read = fireToCome(told.replace(ANOTHER, 'fire again at '), noted)
  return read?.ok ? read : null
}

/**
 * Read "fire again at 3:15 pm", "light the fire again at 15:15 for 45 min" or "no fire again".
 *
 * @param words of a note
 * @param noted when it was noted, minutes after midnight of the log's date
 */
export function fireToCome(words: string, noted: number): ReadFireToCome {
  const told = words.replace(/\s+/g, ' ').trim()
  if (/^(?:no (?:more )?fire again|not to be (?:lit|fired) again)$/i.test(told)) return {ok: true, fire: {lit: null, burn: null}}
  const found = AGAIN.exec(told)
  if (!found) return ANOTHER.test(told) ? another(told, noted) : null
  const wrong = (reason: string): ReadFireToCome => ({
    ok: false,
    reason,
    suggest:
      'write “fire again at 3:15 pm” or “fire again at 3:15 pm for 45 min” of a fire to come, and “lit again” of one that is lit',
  })
  const behind = found[1]!.replace(/^,? ?(?:at )?/i, '')
  const [at = '', length] = behind.split(/ for /i, 2)
  const time = at.replace(/,$/, '')
  if (time === '') return wrong(`“${told}” does not say at what time`)
  const clock = parseClock(time)
  if (!clock.ok) return wrong(clock.reason)
  const dated = /day|tomorrow|morning|before/i.test(time)
  const lit = clock.value + (dated ? 0 : 1440 * Math.max(0, Math.floor(noted / 1440)))
  if (lit < noted) return wrong(`“${told}”: that time has passed`)
  if (length === undefined) return {ok: true, fire: {lit, burn: null}}
  const burn = parseDuration(length)
  if (!burn.ok) return wrong(burn.reason)
  const {low, high} = burn.value
  if (low !== high || high < BURNS.least || high > BURNS.most)
    return wrong(`“${told}”: a fire burns for one length of time, from ${BURNS.least} min to ${BURNS.most / 60} h`)
  return {ok: true, fire: {lit, burn: high}}
}
