import {words} from './row.js'
import type {TimeSpan, TimeUnit, TimeWord} from './schema.js'

/**
 * Words in which receipts give a stretch of time, folded. `src/receipt/times.ts` and `time-parts.ts` read them.
 */

const unit = (id: string, minutes: number, list: string): TimeUnit => ({
  id,
  minutes,
  words: words(list),
  source: 'common-practice',
})

/** Units, as receipts have spelt them. */
export const timeUnits: readonly TimeUnit[] = [
  unit('hour', 60, "hour, hours, hour's, hours', houre, houres, hower, howers, howre, howres, hr, hrs, h, stunde, stunden, std"),
  unit('minute', 1, "minute, minutes, minute's, minits, minits_, minnits, minets, mins, min, ′, ', minuten"),
  unit('second', 1 / 60, 'second, seconds, secs, sec, s, sekunden, sek'),
  unit('quarter of an hour', 15, 'viertelstunde'),
  unit('three quarters of an hour', 45, 'dreiviertelstunde'),
  unit('night', 720, 'night, nights'),
  unit('day', 1440, "day, days, dayes, daies, day's"),
  unit('week', 10080, 'week, weeks'),
  unit('fortnight', 20160, 'fortnight'),
]

const span = (id: string, low: number, high: number, list: string): TimeSpan => ({
  id,
  minutes: [low, high],
  phrases: words(list),
  source: 'memory',
})

/** How long words without a number last. */
export const timeSpans: readonly TimeSpan[] = [
  span(
    'night',
    480,
    720,
    'all night, all the night, all night long, overnight, over night, over the night, through the night, during the night, a whole night, the whole night, one night, a night, uber nacht, till morning, until morning, till the morning, until the morning, till next morning, till the next morning, until next morning, until the next morning, till the following morning, until the following morning, from night till morning, from night to morning',
  ),
  span(
    'till next day',
    720,
    1440,
    'till next day, till the next day, until next day, until the next day, till the following day, until the following day, till to morrow',
  ),
  span('day', 480, 720, 'all day, all the day, all day long'),
  span('whole day', 480, 1440, 'a whole day'),
  span('half a day', 360, 720, 'half a day, half the day'),
  span('day and night', 1440, 1440, 'a day and a night, a night and a day, day and night'),
]

const row = (use: TimeWord['use'], list: string, rest: Partial<TimeWord> = {}): TimeWord => ({
  id: rest.value === undefined ? use : `${use}: ${rest.value}`,
  use,
  words: words(list),
  source: 'common-practice',
  ...rest,
})

/** The small words about them. */
export const timeWords: readonly TimeWord[] = [
  // Between a number and its unit: "a good half hour".
  row('filler', 'good, full, long, whole, entire, clear, short, scant, bare, brisk, more, further, additional, other, large'),
  row(
    'hedge',
    'about, nearly, near, almost, quite, full, fully, least, most, exactly, scarcely, barely, just, approximately, approx, around, for, another, over, perhaps, say, only',
  ),
  row('prime', "′, '"),
  row('joiner', 'to, bis, or, -, —, till, until'),
  row('quarters', 'quarters, quarter, qrs, qr'),
  // Read before a time only: "halbe" before a food may be a half of it or half as much.
  row('part', 'halbe, halben', {value: '1/2'}),
  // Numbers and a half in one word.
  row('number', 'anderthalb, eineinhalb', {value: '3/2'}),
  row('number', 'zweieinhalb', {value: '5/2'}),
  row('number', 'dreieinhalb', {value: '7/2'}),
  // With what a stretch may begin where it is no number and no span.
  row('opens', 'a, an, half, halfe, halbe, halben, quarter, few, several, another, some'),
  // What may stand behind a stretch whose unit is left out: "bake 20 to 30 in a slow oven".
  row(
    'follows',
    'in, will, before, after, at, is, to, for, and, or, if, until, till, according, on, by, it, with, then, they, when, longer, as, should, must, may, over, near, previous, previously, accordingly, only, not, but',
  ),
  // Intervals and ages are no stretch of baking.
  row('skips', 'every, each, per, past, alle, jede'),
  // Only right behind a figure: "2 h", "20m".
  row('abbreviated', 'h, hr, hrs, min, mins, sec, secs, s, std'),
  // Where and how something stands a night, beside how long that is: "overnight in the fridge (at least 10 hours)".
  row(
    'beside night',
    'for, fur, in, the, a, or, about, to, at, least, i, e, say, that, is, refrigerator, fridge, cellar, larder, pantry, cool, cold, place, room, im, in, der, dem, einem, einer, oder, also, etwa, ca, circa, rund, mindestens, wenigstens, kuhlschrank, keller, kuhlen, kalten, ort, speisekammer',
  ),
  // "Prep time: 30 min", "Ruhezeit: 1 Std.": what a time is for, in a line of times.
  row(
    'label of work',
    'prep, preparation, active, inactive, hands-on, work, total, assembly, zubereitung, zubereitungszeit, vorbereitung, vorbereitungszeit, arbeitszeit, arbeitsaufwand, gesamt, gesamtzeit, gesamtdauer, insgesamt',
  ),
  row(
    'label of a wait',
    'rest, resting, chill, chilling, cool, cooling, wait, waiting, stand, standing, soak, soaking, freeze, freezing, marinate, marinating, ruhe, ruhezeit, ruhen, wartezeit, kuhlen, kuhlzeit, abkuhlen, abkuhlzeit, quellen, quellzeit, einweichzeit, stehzeit, gefrierzeit, marinierzeit',
  ),
  row(
    'label of a rise',
    'rise, rising, prove, proving, proof, proofing, fermentation, gehen, gehzeit, gare, teigruhe, stockgare, stuckgare, reifezeit',
  ),
  row('label of a bake', 'bake, baking, backen, backzeit, backdauer'),
  row('more', 'another, further, additional'),
  row('returns', 'return'),
  row('goes on', 'then, another, further, additional, uncover, uncovered, lid, deckel, weitere, weiteren, dann, danach, schluss'),
  row('other case', 'if, or, even, unless, every, each, turning'),
  row('covers', 'cover, turn, rotate, lay, tent, abdecken, wenden, drehen'),
  row(
    'works',
    'fold, folds, folding, folded, knock, knocking, knocked, turn, turns, turning, punch, punching, stretch, dehnen, falten',
  ),
]
