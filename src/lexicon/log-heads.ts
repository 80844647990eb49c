import {words} from './row.js'
import type {LogHead} from './schema.js'

const row = (column: LogHead['column'], id: string, list: string): LogHead => ({
  id: `${column}: ${id}`,
  column,
  words: words(list),
  source: 'common-practice',
})

/** What heads a column of a log's table besides its own name, in small letters, English and German; more may stand behind it. */
export const logHeads: readonly LogHead[] = [
  row('time', 'time', 'time, times, timestamp, when, clock, o’clock, hour, at'),
  row('time', 'zeit', 'zeit, uhr, uhrzeit, wann, um'),
  row('reading', 'reading', 'reading, readings, what, which, where, sign, signs, thing, test, dish, event'),
  row('reading', 'messung', 'messung, ablesung, was, wo, zeichen, probe, gericht'),
  row('value', 'value', 'value, values, result, results, figure, figures, how much, how hot, how many, amount, measured'),
  row(
    'value',
    'shown',
    'what it showed, what it shows, what it read, what was read, what was done, temperature, temp, heat, degrees',
  ),
  row('value', 'wert', 'wert, werte, ergebnis, wie viel, wieviel, wie heiß, temperatur, grad, was getan wurde'),
  row('note', 'note', 'note, notes, remark, remarks, comment, comments'),
  row('note', 'notiz', 'notiz, notizen, bemerkung, bemerkungen, anmerkung'),
]
