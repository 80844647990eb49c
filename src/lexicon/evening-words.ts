import {words} from './row.js'
import type {EveningWord} from './schema.js'

const row = (use: EveningWord['use'], list: string): EveningWord => ({
  id: use,
  use,
  words: words(list),
  source: 'common-practice',
})

/**
 * What receipts say of work done the evening before the bake, folded: dried things put to soak, and a sponge or leaven set.
 * `src/receipt/evening.ts` reads them.
 */
export const eveningWords: readonly EveningWord[] = [
  // The night that lies between.
  row(
    'nights',
    'over night, overnight, all night, the night before, night before, the night previous, previous night, previous evening, the evening before, evening before, the day before, day before, at night, through the night, till morning, until morning, till the morning, until the morning, till next morning, until next morning, till the next morning, until the next morning, until the next day, till next day, until next day, in the evening, über nacht, am vorabend, am abend vorher, am abend zuvor, abends zuvor, am abend davor, am vortag, am tag vorher, am tag zuvor, tags zuvor, bis zum nächsten morgen, bis zum nächsten tag, bis zum morgen',
  ),
  row(
    'soaks',
    'soak, soaks, soaked, soaking, steep, steeped, steeping, einweichen, eingeweicht, weichen, einzuweichen, einlegen, eingelegt, soaker, quellstuck, bruhstuck, kochstuck, quellen, aufquellen, wassern',
  ),
  // "Put the beans in cold water over night."
  row('lays', 'put, lay, laid, lie, stand, cover, covered, leave, left'),
  row('waters', 'water, milk, tea, brandy, rum, wine, wasser'),
  row(
    'sponges',
    'sponge, sponges, spunge, leaven, levain, starter, poolish, biga, preferment, pre-ferment, ferment, sauerteig, roggensauer, roggensauerteig, weizensauer, weizensauerteig, vorteig, hefevorteig, dampfl, hefestuck, anstellgut',
  ),
  row(
    'sets',
    'set, setting, mix, mixed, make, made, feed, fed, refresh, refreshed, stir, stirred, prepare, prepared, begin, leave, left, stand, rise, ripen, ferment, build, combine, put, lay, ansetzen, angesetzt, anruhren, mischen, ruhren, verruhren, fuhren, auffrischen, futtern, stehen, reifen, gehen, garen, herstellen, bereiten',
  ),
  // A dough that is made up whole, or what is done once it is baked.
  row(
    'wholes',
    'dough, loaf, loaves, pans, teig, laib, laibe, fridge, refrigerator, refrigerate, kuhlschrank, bake, baked, keep, keeps, store, serve, brotteig, cool, cold-proof, backen, gebacken, aufbewahren',
  ),
  // Names of the parts that are set ahead; a German one may also end in "sauer".
  row('parts', 'sponge, leaven, levain, starter, poolish, biga, preferment, pre-ferment, ferment, vorteig, sauerteig'),
]
