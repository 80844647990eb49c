import {parseClock} from '../measure/quantity.js'
import {readDuration} from '../receipt/durations.js'

/** A fire that is to be lit again later in the day, as a row of the log tells of it. */
export interface FireToCome {
  /** Minutes after midnight of the log's date; null: none is to be lit any more. */
  readonly lit: number | null
  /** Minutes that it is to burn; null where the row does not say. */
  readonly burn: number | null
}

/** Minutes that a fire of a day may burn: a time behind it is a slip. Common practice, no source. */
export const BURNS = {least: 10, most: 720} as const

/** What a row's words say of a fire to come: what it is, or what is wrong with it; null where they say nothing of one. */
export type ReadFireToCome =
  | {readonly ok: true; readonly fire: FireToCome}
  | {readonly ok: false; readonly reason: string; readonly suggest: string}
  | null

const AGAIN =
  /^(?:(?:the )?fire(?: to be lit)?|(?:light|start|fire|heat)(?: up)?(?: the (?:fire|oven)| it)?(?: up)?|to be (?:lit|fired)|firing) again\b(.*)$/i
/** Other ways to say it, which need a time behind them to be sure. */
const ANOTHER =
  /^(?:(?:light |start |make )?(?:a |the )?(?:second|another|new) fire|re-?fire|re-?light)(?: (?:it|the (?:fire|oven)))?(?: at)? (?=\d|noon|midnight|tomorrow|next day)/i
const NONE =
  /^(?:no (?:fire again|(?:second|other|further) fire)|(?:do not|don.t|not to) (?:(?:light|fire)(?: it| the (?:fire|oven))?|be (?:lit|fired)) again|cancel the (?:second |other )?fire)(?= |,|;|\.|$)/i
/** What is like one of those and is none: the other words of both, with "again" or a slip of it. "Not much fire left" is a remark. */
const NOT = /^(?:no|do not|don.t|not|cancel) /i
const FIRE_AGAIN = / (?:fire|light)(?: it| the (?:fire|oven))? ag[a-z]{2,5}\b/i

/** Minutes by which a fire may have been meant for before it was noted: it is to be lit now. */
const NOW = 15

/** Whether a time names its day, so that it is none of the day of what stands above it. */
export const isDated = (time: string): boolean => /day|tomorrow|morning|before/i.test(time)

/** Whether words may be a length of time. */
const isLength = (words: string): boolean => /^\d/.test(words.trim()) || readDuration(words).ok

/**
 * Read "fire again at 3:15 pm", "light the fire again at 15:15 for 45 min", "second fire at 3:15 pm" or "no fire again". Other words may
 * stand behind a comma.
 *
 * @param words of a note
 * @param noted when it was noted, minutes after midnight of the log's date
 */
export function fireToCome(words: string, noted: number): ReadFireToCome {
  const told = words.replace(/\s+/g, ' ').trim()
  if (NONE.test(told)) return {ok: true, fire: {lit: null, burn: null}}
  if (NOT.test(told) && FIRE_AGAIN.test(told))
    return {ok: false, reason: `“${told}” takes no fire back`, suggest: 'write “no fire again” if that is meant'}
  const again = AGAIN.exec(told)?.[1] ?? (ANOTHER.test(told) ? told.replace(ANOTHER, '') : null)
  if (again === null) return null
  const wrong = (reason: string): ReadFireToCome => ({
    ok: false,
    reason,
    suggest:
      'write “fire again at 3:15 pm” or “fire again at 3:15 pm for 45 min” of a fire to come, and “lit again” of one that is lit',
  })
  const behind = again.replace(/^,? ?(?:at )?/i, '')
  const [first = '', ...more] = behind.split(/, for |, ?| for /i)
  const length = more.find(isLength)
  const unclear = / for /i.test(behind) && length === undefined && !behind.includes(',')
  if (first === '') return wrong(`“${told}” does not say at what time`)
  const clock = parseClock(first)
  if (!clock.ok) return wrong(clock.reason)
  const dated = isDated(first)
  const lit = clock.value + (dated ? 0 : 1440 * Math.max(0, Math.floor(noted / 1440)))
  if (lit < noted - NOW) return wrong(`“${told}”: that time has passed`)
  const at = Math.max(lit, noted)
  if (length === undefined && !unclear) return {ok: true, fire: {lit: at, burn: null}}
  const burn = readDuration(length ?? more[0]!)
  if (!burn.ok) return wrong(burn.reason)
  const {low, high} = burn.value
  if (low !== high || high < BURNS.least || high > BURNS.most)
    return wrong(`“${told}”: a fire burns for one length of time, from ${BURNS.least} min to ${BURNS.most / 60} h`)
  return {ok: true, fire: {lit: at, burn: high}}
}
