import {isFigure, isWanted} from './heat.js'
import type {NoteSpan} from './notes.js'
import type {OvenPhrase, Span, TimePhrase} from './types.js'

/**
 * Heats and times that stand in a note. They are of another way, and not the receipt's own, where the receipt itself gives such; where
 * it gives none, the note's serve.
 */

/** What of a note was left out of the receipt's own heats and times, or serves since the receipt gives none. */
export interface NoteBake {
  readonly note: NoteSpan
  readonly phrase: Span
  readonly serves: boolean
}

const OF_ANOTHER_WAY = 'from a note on another way: not the heat the receipt itself asks for'

/**
 * The heats and times of a receipt with those of its notes set apart: a heat becomes one with a condition, a time `other`.
 *
 * @param notes the receipt's notes, offsets into the file
 * @param serves whether a note's heat or time serves where the receipt gives none; not where it says that it is not baked
 * @param tell called for each note's phrase that was set apart, or that serves
 */
export function apartFromNotes<Heat extends OvenPhrase>(
  oven: readonly Heat[],
  times: readonly TimePhrase[],
  notes: readonly NoteSpan[],
  tell: (bake: NoteBake) => void,
  serves = true,
): {readonly oven: OvenPhrase[]; readonly times: TimePhrase[]} {
  if (notes.length === 0) return {oven: [...oven], times: [...times]}
  const noteOf = ({start, end}: Span): NoteSpan | undefined => notes.find((note) => note.start <= start && end <= note.end)
  const ownTasks = new Set(times.filter((time) => noteOf(time) === undefined).map((time) => time.of))
  const ownHeats = oven.filter((phrase) => isWanted(phrase) && noteOf(phrase) === undefined)
  const withTime = new Set(times.filter((time) => time.of === 'bake').map(noteOf))
  return {
    oven: oven.map((phrase): OvenPhrase => {
      const note = noteOf(phrase)
      if (note === undefined || !isWanted(phrase)) return phrase
      if (serves && ownHeats.length === 0) {
        tell({note, phrase, serves: true})
        return {...phrase, note: true}
      }
      // "* A quick oven is about 220 °C": the figure explains the receipt's own word.
      if (serves && !note.otherWay && !withTime.has(note) && isFigure(phrase) && !ownHeats.some(isFigure))
        return {...phrase, note: true}
      tell({note, phrase, serves: false})
      return {...phrase, condition: true, note: true, notes: [...(phrase.notes ?? []), OF_ANOTHER_WAY]}
    }),
    times: times.map((time): TimePhrase => {
      const note = noteOf(time)
      if (note === undefined || (time.of !== 'bake' && time.of !== 'rise' && time.of !== 'boil')) return time
      if (!ownTasks.has(time.of) && (serves || time.of !== 'bake')) {
        if (time.of === 'bake') tell({note, phrase: time, serves: true})
        return {...time, note: true}
      }
      if (time.of === 'bake') tell({note, phrase: time, serves: false})
      const {then: _then, total: _total, ...rest} = time
      return {...rest, of: 'other', note: true}
    }),
  }
}
