import {words} from './row.js'
import type {OutcomeWord} from './schema.js'

const row = (use: OutcomeWord['use'], id: string, list: string): OutcomeWord => ({
  id: `${use}: ${id}`,
  use,
  words: words(list),
  source: 'common-practice',
})

/** What a log says of how a dish came out, and of why it was drawn off its time, in small letters, English and German. `src/oven/log-outcome.ts` reads them. */
export const outcomeWords: readonly OutcomeWord[] = [
  row('overdone', 'burnt', 'burnt, burned, black, blackened, scorched, charred, overdone, over done, overbaked, over baked'),
  row(
    'overdone',
    'dark',
    'dark, darker, too brown, too dark, dry, too dry, dried out, dried up, too hard, baked too long, in too long',
  ),
  row('overdone', 'verbrannt', 'verbrannt, angebrannt, schwarz, verkohlt, übergar, zu lange, zu lange gebacken'),
  row('overdone', 'dunkel', 'dunkel, zu dunkel, zu braun, trocken, zu trocken, ausgetrocknet, zu hart'),
  row('underdone', 'raw', 'raw, half raw, half baked, underdone, under done, underbaked, under baked, undercooked, uncooked'),
  row('underdone', 'doughy', 'doughy, soggy, gummy, runny, wet in the middle'),
  row('pale', 'pale', 'pale, too pale, too light, not brown, not browned'),
  row(
    'underdone',
    'not done',
    'not done, not quite done, not yet done, not baked, not baked through, not cooked, not cooked through, not soft, not set',
  ),
  row('underdone', 'roh', 'roh, halb roh, ungar, teigig, klitschig, speckig'),
  row('pale', 'blass', 'blass, zu blass, bleich, zu hell, nicht braun'),
  row(
    'underdone',
    'nicht gar',
    'nicht gar, noch nicht gar, nicht ganz gar, nicht durch, noch nicht durch, nicht durchgebacken, nicht weich',
  ),
  row(
    'other cause',
    'forgot',
    'forgot, forgotten, overslept, asleep, called away, busy, distracted, no hands, no hand free, nobody there, nobody by',
  ),
  row('other cause', 'stuck', 'stuck, jammed, would not open, could not open'),
  row('other cause', 'vergessen', 'vergessen, verschlafen, abgelenkt, weggerufen, beschäftigt, keine hand frei, niemand da'),
  row('other cause', 'klemmte', 'klemmte, klemmt, verklemmt, ging nicht auf'),
  row(
    'cooked on',
    'cooked through',
    'cooked through, cooked on, baked through, baked on, done now, finished in, finished on, finished off, finished elsewhere',
  ),
  row(
    'cooked on',
    'durchgegart',
    'durchgegart, durchgebacken, fertig gegart, fertiggegart, fertig gebacken, fertiggebacken, weitergegart, weitergebacken, nachgebacken',
  ),
  row('hardly', 'slightly', 'slightly, little, bit, shade, touch, hardly, barely, nearly, almost'),
  row('hardly', 'leicht', 'leicht, etwas, wenig, bisschen, kaum, fast, beinahe'),
  row('negation', 'not', 'not, never, no'),
  row('negation', 'nicht', 'nicht, nie, kein'),
]
