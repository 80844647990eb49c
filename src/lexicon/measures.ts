import {exactly, span, words} from './row.js'
import type {Measure} from './schema.js'

/**
 * Every measure, with what it was worth by year and place. Grams for mass, millilitres for volume. A row without `place`, `from`
 * or `to` holds everywhere and always. `src/measure/convert.ts` chooses among a measure's sizes.
 */

/** One cubic inch, mL: exact by the international inch. NIST SP 811 App. B. */
const IN3 = 16.387064
/** Wine gallon and US liquid gallon, 231 in³. */
const WINE = 231 * IN3
/** Ale and beer gallon, 282 in³. */
const ALE = 282 * IN3
/** Winchester and US bushel, 2150.42 in³. */
const BUSHEL = 2150.42 * IN3
/** Imperial gallon. Weights and Measures Act 1824, 1985. */
const IMPERIAL = 4546.09
const POUND = 453.59237
const GRAIN = 0.06479891

/** A part of the four gallons: wine for liquids before the Acts, imperial in Britain from 1826, US always wine. */
const gallons = (part: number): Measure['sizes'] => [
  {size: exactly(WINE * part), place: 'us', source: 'nist-hb44', note: 'US liquid measure, 231 in³ to the gallon'},
  {
    size: exactly(WINE * part),
    place: 'uk',
    to: 1825,
    of: 'wine',
    source: 'queen-anne-1706',
    note: 'wine measure, 231 in³ to the gallon',
  },
  {size: exactly(ALE * part), place: 'uk', to: 1825, of: 'ale', source: 'ale-gallon', note: 'ale measure, 282 in³ to the gallon'},
  {size: exactly(IMPERIAL * part), place: 'uk', from: 1826, source: 'wma-1824', note: 'imperial measure'},
  {size: exactly(IMPERIAL * part), place: 'au', from: 1826, source: 'wma-1824', note: 'imperial measure'},
]

/** A part of the two bushels. The imperial bushel is eight imperial gallons. */
const bushels = (part: number): Measure['sizes'] => [
  {
    size: exactly(BUSHEL * part),
    place: 'us',
    of: 'dry',
    source: 'nist-hb44',
    note: 'US dry measure, Winchester, 2150.42 in³ to the bushel',
  },
  {
    size: exactly(BUSHEL * part),
    place: 'uk',
    to: 1825,
    of: 'dry',
    source: 'winchester',
    note: 'Winchester measure, 2150.42 in³ to the bushel',
  },
  {size: exactly(8 * IMPERIAL * part), place: 'uk', from: 1826, of: 'dry', source: 'wma-1824', note: 'imperial measure'},
  {size: exactly(8 * IMPERIAL * part), place: 'au', from: 1826, of: 'dry', source: 'wma-1824', note: 'imperial measure'},
]

/** The fillings of a vessel or spoon: "tea-cup" gives tea-cupful, tea-cupfuls, tea-cupsful, tea-cup full, …. */
const fulls = (list: string): string[] =>
  words(list).flatMap((vessel) => [
    vessel,
    `${vessel}ful`,
    `${vessel}full`,
    `${vessel}sful`,
    `${vessel}sfull`,
    `${vessel} full`,
    `${vessel}s full`,
  ])

const piece = (id: string, spellings: string, note?: string): Measure => ({
  id,
  dimension: 'count',
  spellings: words(spellings),
  sizes: [],
  ...(note === undefined ? {} : {note}),
})

const likeness = (
  id: string,
  spellings: string,
  low: number,
  likely: number,
  high: number,
  source = 'memory',
  note?: string,
): Measure => ({
  id,
  dimension: 'comparison',
  spellings: words(spellings),
  sizes: [{size: span(low, likely, high), source, ...(note === undefined ? {} : {note})}],
})

export const measures: readonly Measure[] = [
  // Weight. Avoirdupois unless it says troy or apothecaries'.
  {
    id: 'pound',
    dimension: 'mass',
    spellings: words('pound, lb, lbs, pd, pds, pnd, pnds, ℔, pound weight, pounds weight, libra, ib, ibs'),
    sizes: [{size: exactly(POUND), source: 'nist-hb44', note: 'avoirdupois'}],
  },
  {
    id: 'ounce',
    dimension: 'mass',
    spellings: words('ounce, oz, ozs, oz weight, ounce weight, onz, oncs, ℥'),
    sizes: [{size: exactly(POUND / 16), source: 'nist-hb44', note: 'avoirdupois'}],
  },
  {
    id: 'drachm',
    dimension: 'mass',
    spellings: words('drachm, dram, dr, drs, drm, drms, ʒ'),
    sizes: [
      {
        size: span(POUND / 256, 60 * GRAIN, 60 * GRAIN),
        source: 'nist-hb44',
        note: 'apothecaries’ drachm of 60 grains; the avoirdupois dram is 27.3 grains',
      },
    ],
  },
  {
    id: 'scruple',
    dimension: 'mass',
    spellings: words('scruple, ℈'),
    sizes: [{size: exactly(20 * GRAIN), source: 'nist-hb44', note: '20 grains'}],
  },
  {id: 'grain', dimension: 'mass', spellings: words('grain, gr, grs'), sizes: [{size: exactly(GRAIN), source: 'nist-hb44'}]},
  {
    id: 'pennyweight',
    dimension: 'mass',
    spellings: words('pennyweight, penny-weight, dwt, dwts, pwt'),
    sizes: [{size: exactly(24 * GRAIN), source: 'nist-hb44', note: 'troy, 24 grains'}],
  },
  {
    id: 'stone',
    dimension: 'mass',
    spellings: words('stone'),
    sizes: [
      {size: exactly(14 * POUND), place: 'uk', source: 'nist-hb44', note: '14 lb; the butchers’ stone was 8 lb'},
      {size: span(8 * POUND, 14 * POUND, 14 * POUND), source: 'nist-hb44'},
    ],
  },
  {
    id: 'hundredweight',
    dimension: 'mass',
    spellings: words('hundredweight, hundred-weight, cwt, cwts'),
    sizes: [
      {size: exactly(112 * POUND), place: 'uk', source: 'nist-hb44', note: 'long hundredweight'},
      {
        size: span(100 * POUND, 112 * POUND, 112 * POUND),
        place: 'us',
        to: 1860,
        source: 'memory',
        note: 'long or short hundredweight',
      },
      {size: exactly(100 * POUND), place: 'us', from: 1861, source: 'nist-hb44', note: 'short hundredweight'},
    ],
  },
  {
    id: 'ton',
    dimension: 'mass',
    spellings: words('ton'),
    sizes: [
      {size: exactly(2240 * POUND), place: 'uk', source: 'nist-hb44'},
      {size: exactly(2000 * POUND), place: 'us', source: 'nist-hb44'},
    ],
  },

  // Capacity
  {id: 'gallon', dimension: 'volume', spellings: words('gallon, gal, gals, gall, galls, galon'), sizes: gallons(1)},
  {
    id: 'mutchkin',
    dimension: 'volume',
    spellings: words('mutchkin, muchkin, mutchkins'),
    sizes: [{size: span(418, 424, 430), source: 'memory', note: 'Scots: a quarter of the Scots pint'}],
  },
  {
    id: 'chopin',
    dimension: 'volume',
    spellings: words('chopin, choppin, chopins'),
    sizes: [{size: span(836, 848, 860), source: 'memory', note: 'Scots: half the Scots pint'}],
  },
  {id: 'pottle', dimension: 'volume', spellings: words('pottle'), sizes: gallons(1 / 2), note: 'half a gallon'},
  {id: 'quart', dimension: 'volume', spellings: words('quart, qt, qts, qrt, qrts, qr, qrs, quarte'), sizes: gallons(1 / 4)},
  {id: 'pint', dimension: 'volume', spellings: words('pint, pt, pts, pinte, pynte, pnt, pnts'), sizes: gallons(1 / 8)},
  {
    id: 'gill',
    dimension: 'volume',
    spellings: words('gill, jill, gil, jil, ghill, gl'),
    sizes: gallons(1 / 32),
    note: 'a quarter of a pint; in northern England a half-pint was also called a gill',
  },
  {id: 'bushel', dimension: 'volume', spellings: words('bushel, bush, bu, bus'), sizes: bushels(1)},
  {id: 'peck', dimension: 'volume', spellings: words('peck, pk, pks, pecke'), sizes: bushels(1 / 4)},
  {
    id: 'sieve',
    dimension: 'volume',
    spellings: words('half-sieve, half sieve'),
    sizes: [{size: span(12000, 16500, 21500), source: 'memory'}],
    note: 'a market basket of fruit, about half a bushel',
  },
  {
    id: 'quartern',
    dimension: 'volume',
    spellings: words('quartern, quarten'),
    sizes: [
      {
        size: exactly(IMPERIAL / 32),
        place: 'uk',
        from: 1826,
        of: 'liquid',
        source: 'memory',
        note: 'a quarter of a pint of a liquid; a quartern of flour is a quarter of a peck, 3 1/2 lb',
      },
      {size: exactly(WINE / 32), place: 'uk', to: 1825, of: 'liquid', source: 'memory', note: 'a quarter of a pint of a liquid'},
      {size: span(1800, 2270, 2273), of: 'dry', source: 'memory', note: 'a quarter of a peck: 3 1/2 lb of flour'},
    ],
  },
  {
    id: 'fluid ounce',
    dimension: 'volume',
    spellings: words('fluid ounce, fluid oz, fl oz, fl ozs, fluidounce'),
    sizes: [
      {size: exactly(WINE / 128), place: 'us', source: 'nist-hb44'},
      {size: exactly(IMPERIAL / 160), place: 'uk', from: 1826, source: 'wma-1824'},
      {
        size: exactly(WINE / 128),
        place: 'uk',
        to: 1825,
        source: 'memory',
        note: 'the apothecaries’ fluid ounce of the wine gallon',
      },
      {size: exactly(IMPERIAL / 160), place: 'au', source: 'wma-1824'},
    ],
  },
  {
    id: 'fluid drachm',
    dimension: 'volume',
    spellings: words('fluid drachm, fluid dram, fl dr, fluidrachm'),
    sizes: [
      {size: exactly(WINE / 1024), place: 'us', source: 'nist-hb44'},
      {size: exactly(IMPERIAL / 1280), place: 'uk', from: 1826, source: 'wma-1824'},
      {size: exactly(WINE / 1024), place: 'uk', to: 1825, source: 'memory'},
    ],
  },
  {
    id: 'drop',
    dimension: 'volume',
    spellings: words('drop, drops, minim, gtt, tropfen'),
    sizes: [
      {size: span(0.03, 0.05, 0.065), source: 'memory', note: 'about twenty drops of water to a millilitre, more of spirits'},
    ],
  },
  {id: 'noggin', dimension: 'volume', spellings: words('noggin, naggin'), sizes: gallons(1 / 32), note: 'a quarter of a pint'},
  {
    id: 'lippie',
    dimension: 'volume',
    spellings: words('lippie, forpit, forpet'),
    sizes: [{size: span(2000, 2268, 3300), place: 'uk', source: 'memory', note: 'Scots: a quarter of a peck'}],
  },
  {
    id: 'dash',
    dimension: 'volume',
    spellings: words('dash, dashes, schuss, schuß, spritzer'),
    sizes: [{size: span(0.3, 0.6, 1), source: 'memory'}],
  },
  {
    id: 'barrel',
    dimension: 'volume',
    spellings: words('barrel, bbl, bbls'),
    sizes: [{size: span(31 * WINE, 31.5 * WINE, 36 * IMPERIAL), source: 'memory', note: 'by what it holds'}],
  },
  {
    id: 'firkin',
    dimension: 'volume',
    spellings: words('firkin'),
    sizes: [{size: span(8 * ALE, 9 * IMPERIAL, 9 * ALE), source: 'memory', note: 'of butter, 56 lb'}],
  },
  {
    id: 'hogshead',
    dimension: 'volume',
    spellings: words('hogshead, hhd'),
    sizes: [{size: span(63 * WINE, 63 * WINE, 63 * IMPERIAL), source: 'memory'}],
  },

  // Household spoons
  {
    id: 'tablespoon',
    dimension: 'volume',
    spellings: [
      ...fulls('tablespoon, table-spoon, table spoon'),
      ...words('tbsp, tbsps, tablesp, tablesps, tbs, tb, tbls, tblsp, tblspn, tbspn, tablsp, table-sp'),
      // German, Swedish, French household receipts; from memory.
      ...words('el, esslöffel, eßlöffel, msk, matsked, c à soupe, c à s, cuillère à soupe, cuillères à soupe'),
    ],
    sizes: [
      {
        size: span(13.5, 14.8, 17.8),
        to: 1899,
        source: 'pg-9624',
        note: 'eight to a gill (1837: four to a wine-glass of half a gill; 1879: eight large ones to a gill)',
      },
      {size: exactly(14.78676478125), place: 'us', from: 1900, source: 'nist-hb44', note: 'half a US fluid ounce'},
      {
        size: span(14.2, 15, 17.8),
        place: 'uk',
        from: 1900,
        source: 'uk-metric-spoons',
        note: '15 mL; older imperial spoons up to 17.8 mL',
      },
      {size: exactly(15), place: 'eu', from: 1900, source: 'uk-metric-spoons'},
      {size: exactly(20), place: 'au', from: 1970, source: 'au-metric'},
      {size: span(15, 20, 20), place: 'au', from: 1900, to: 1969, source: 'memory'},
    ],
  },
  {
    id: 'dessertspoon',
    dimension: 'volume',
    spellings: [
      ...fulls('dessertspoon, dessert-spoon, dessert spoon, desert-spoon, desertspoon, desert spoon'),
      ...words('dsp, dstsp, dessertsp'),
    ],
    sizes: [
      {size: span(7, 8, 10), to: 1899, source: 'bpharm', note: 'two fluid drachms'},
      {size: exactly(10), from: 1900, source: 'uk-metric-spoons'},
    ],
  },
  {
    id: 'teaspoon',
    dimension: 'volume',
    spellings: [
      ...fulls('teaspoon, tea-spoon, tea spoon'),
      ...words('tsp, tsps, teasp, tspn, tea-sp'),
      // German, Swedish, French household receipts; from memory.
      ...words('tl, teelöffel, tsk, tesked, c à café, c à c, cuillère à café, cuillères à café'),
    ],
    sizes: [
      {
        size: span(3.5, 4.2, 5),
        to: 1899,
        source: 'bpharm',
        note: 'a fluid drachm by the pharmacopoeia; the spoons grew towards 5 mL in the century',
      },
      {size: exactly(4.92892159375), place: 'us', from: 1900, source: 'nist-hb44', note: 'a sixth of a US fluid ounce'},
      {size: exactly(5), from: 1900, source: 'uk-metric-spoons'},
    ],
  },
  {
    id: 'saltspoon',
    dimension: 'volume',
    spellings: fulls('saltspoon, salt-spoon, salt spoon'),
    sizes: [{size: span(0.9, 1.2, 1.6), source: 'memory', note: 'a quarter of a teaspoon'}],
  },
  {
    id: 'mustardspoon',
    dimension: 'volume',
    spellings: fulls('mustardspoon, mustard-spoon, mustard spoon'),
    sizes: [{size: span(0.9, 1.2, 1.6), source: 'memory'}],
  },
  {
    id: 'coffeespoon',
    dimension: 'volume',
    spellings: fulls('coffeespoon, coffee-spoon, coffee spoon'),
    sizes: [{size: span(2, 2.5, 4), source: 'memory', note: 'half a teaspoon'}],
  },
  {
    id: 'cooking spoon',
    dimension: 'volume',
    spellings: fulls('basting-spoon, basting spoon, cooking spoon, cooking-spoon, kitchen spoon, iron spoon, wooden spoon'),
    sizes: [{size: span(20, 30, 45), source: 'memory'}],
  },
  {
    id: 'spoon',
    dimension: 'volume',
    spellings: [...fulls('spoon'), 'sp', 'spoonfull', 'spoonefull', 'sponful'],
    sizes: [
      {
        size: span(3.5, 14.8, 19),
        source: 'memory',
        note: 'which spoon is not said: a table-spoon is likelier in receipts for the oven',
      },
    ],
  },
  {
    id: 'ladle',
    dimension: 'volume',
    spellings: fulls('ladle, soup-ladle, soup ladle'),
    sizes: [{size: span(60, 110, 180), source: 'memory'}],
  },
  {id: 'scoop', dimension: 'volume', spellings: words('scoop, scoopful'), sizes: [{size: span(40, 60, 120), source: 'memory'}]},

  // Household cups and glasses
  {
    id: 'tasse',
    dimension: 'volume',
    spellings: words('tasse, tassen'),
    sizes: [
      {
        size: span(110, 150, 250),
        source: 'memory',
        note: 'a German household’s cup: mostly an eighth of a litre, a large one twice that',
      },
    ],
  },
  {
    id: 'teacup',
    dimension: 'volume',
    spellings: [...fulls('teacup, tea-cup, tea cup, tea-dish, tea dish'), 'tea-c'],
    sizes: [
      {size: span(100, 120, 180), to: 1829, source: 'memory', note: 'about a gill; older cups were small'},
      {
        size: span(115, 142, 190),
        from: 1830,
        place: 'us',
        source: 'memory',
        note: 'a gill, up to 3/4 of the later half-pint cup',
      },
      {size: span(125, 142, 190), from: 1830, place: 'uk', source: 'memory', note: 'an imperial gill, up to a third of a pint'},
    ],
  },
  {
    id: 'coffeecup',
    dimension: 'volume',
    spellings: fulls('coffeecup, coffee-cup, coffee cup'),
    sizes: [{size: span(175, 235, 285), source: 'memory', note: 'about half a pint'}],
  },
  {
    id: 'breakfastcup',
    dimension: 'volume',
    spellings: fulls('breakfastcup, breakfast-cup, breakfast cup'),
    sizes: [
      {size: span(225, 284, 300), place: 'uk', source: 'memory', note: 'half an imperial pint'},
      {size: span(225, 240, 300), source: 'memory', note: 'about half a pint'},
    ],
  },
  {
    id: 'cup',
    dimension: 'volume',
    spellings: [...fulls('cup, cupp'), ...words('c, cp, measuring cup')],
    sizes: [
      {
        size: span(120, 220, 260),
        to: 1895,
        place: 'us',
        source: 'memory',
        note: 'not yet a fixed measure: from a teacup to a half-pint',
      },
      {
        size: span(120, 200, 285),
        to: 1895,
        place: 'uk',
        source: 'memory',
        note: 'not a fixed measure: from a teacup to a breakfast-cup',
      },
      {size: exactly(236.5882365), place: 'us', from: 1896, source: 'nist-hb44', note: 'half a US pint'},
      {
        size: span(240, 250, 284.130625),
        place: 'uk',
        from: 1896,
        source: 'memory',
        note: 'a metric cup of 250 mL or half an imperial pint',
      },
      {size: exactly(250), place: 'au', from: 1970, source: 'au-metric'},
      {size: span(226, 250, 284.130625), place: 'au', from: 1896, to: 1969, source: 'memory'},
      {size: exactly(250), place: 'eu', from: 1896, source: 'memory', note: 'metric cup'},
    ],
  },
  {
    id: 'wineglass',
    dimension: 'volume',
    spellings: fulls('wineglass, wine-glass, wine glass, wine-glas'),
    sizes: [{size: span(50, 59, 75), source: 'pg-9624', note: 'half a gill (1837)'}],
  },
  {
    id: 'liqueur glass',
    dimension: 'volume',
    spellings: fulls('liqueur-glass, liqueur glass, dram-glass, dram glass, cordial glass'),
    sizes: [{size: span(20, 28, 45), source: 'memory'}],
  },
  {
    id: 'glass',
    dimension: 'volume',
    spellings: fulls('glass, glasse'),
    sizes: [{size: span(50, 60, 120), source: 'memory', note: 'of wine or brandy: a wine-glass, size not said'}],
  },
  {
    id: 'tumbler',
    dimension: 'volume',
    spellings: fulls('tumbler, half-pint tumbler, half pint tumbler, tumbler glass, rummer'),
    sizes: [{size: span(225, 236.6, 285), source: 'pg-9624', note: 'half a pint (1837)'}],
  },
  {
    id: 'bottle',
    dimension: 'volume',
    spellings: words('bottle, bottles, bottleful, bottlefuls, bot'),
    sizes: [{size: span(700, 757, 800), source: 'memory', note: 'a fifth or sixth of a wine gallon'}],
  },
  {id: 'bowl', dimension: 'volume', spellings: fulls('bowl, bowle'), sizes: [{size: span(450, 700, 1200), source: 'memory'}]},
  {id: 'basin', dimension: 'volume', spellings: fulls('basin, bason'), sizes: [{size: span(500, 850, 1200), source: 'memory'}]},
  {
    id: 'porringer',
    dimension: 'volume',
    spellings: fulls('porringer, poringer'),
    sizes: [{size: span(250, 350, 500), source: 'memory'}],
  },
  {
    id: 'plate',
    dimension: 'volume',
    spellings: [...fulls('plate, soup-plate, soup plate'), 'plateful', 'platefull', 'platefuls'],
    sizes: [{size: span(250, 400, 600), source: 'memory'}],
  },
  {
    id: 'saucer',
    dimension: 'volume',
    spellings: fulls('saucer, tea-saucer, sawcer'),
    sizes: [{size: span(60, 120, 160), source: 'memory'}],
  },
  {id: 'mug', dimension: 'volume', spellings: fulls('mug'), sizes: [{size: span(240, 285, 350), source: 'memory'}]},
  {
    id: 'jug',
    dimension: 'volume',
    spellings: words('jug, jugful, jugfuls'),
    sizes: [{size: span(570, 1000, 1200), source: 'memory'}],
  },
  {
    id: 'dipper',
    dimension: 'volume',
    spellings: words('dipper, dipperful, dipperfuls'),
    sizes: [{size: span(470, 950, 1900), source: 'memory'}],
  },
  {
    id: 'pail',
    dimension: 'volume',
    spellings: words('pail, pailful, pailfuls, bucket, bucketful'),
    sizes: [{size: span(7500, 9500, 11500), source: 'memory', note: 'two to three gallons'}],
  },
  {
    id: 'eggshell',
    dimension: 'volume',
    spellings: fulls('eggshell, egg-shell, egg shell, half egg-shell'),
    sizes: [{size: span(35, 42, 50), source: 'memory'}],
  },
  {
    id: 'eggcup',
    dimension: 'volume',
    spellings: fulls('eggcup, egg-cup, egg cup'),
    sizes: [{size: span(35, 45, 60), source: 'memory'}],
  },
  {
    id: 'thimble',
    dimension: 'volume',
    spellings: words('thimble, thimbleful, thimblefull, thimblefuls'),
    sizes: [{size: span(1.5, 2, 3), source: 'memory'}],
  },
  {
    id: 'mouthful',
    dimension: 'volume',
    spellings: words('mouthful, mouthfuls'),
    sizes: [{size: span(15, 25, 40), source: 'memory'}],
  },
  {
    id: 'handful',
    dimension: 'volume',
    spellings: words(
      'handful, handfuls, handfull, handfulls, handsful, hand-full, handeful, hand full, double handful, handvoll',
    ),
    sizes: [{size: span(40, 75, 120), source: 'memory'}],
  },
  {
    id: 'pinch',
    dimension: 'volume',
    spellings: words('pinch, pinches, pugil, prise, prisen, pincée, pincées'),
    sizes: [{size: span(0.2, 0.35, 0.7), source: 'memory', note: 'between finger and thumb'}],
  },
  {
    id: 'point of a knife',
    dimension: 'volume',
    spellings: words('point of a knife, knife point, knife-point, tip of a knife, msp, messerspitze, messerspitzen'),
    sizes: [{size: span(0.2, 0.5, 1), source: 'memory'}],
  },
  {
    id: 'sixpence',
    dimension: 'volume',
    spellings: words(
      'as will lie on a sixpence, as will lie upon a sixpence, as will lay on a sixpence, as will lie on a six-pence, as will cover a sixpence',
    ),
    sizes: [{size: span(0.4, 0.7, 1.2), source: 'memory', note: 'millilitres heaped on a coin 19 mm across'}],
  },
  {
    id: 'shilling',
    dimension: 'volume',
    spellings: words(
      'as will lie on a shilling, as will lie upon a shilling, as will lay on a shilling, as will cover a shilling',
    ),
    sizes: [{size: span(0.8, 1.2, 2), source: 'memory', note: 'millilitres heaped on a coin 24 mm across'}],
  },

  // Modern units
  {
    id: 'milligram',
    unit: 'mg',
    dimension: 'mass',
    spellings: words('milligram, milligramme, mg'),
    sizes: [{size: exactly(0.001), source: 'nist-sp811'}],
  },
  {
    id: 'gram',
    unit: 'g',
    dimension: 'mass',
    spellings: words('gram, gramme, g, gm, gms, gram weight, grms'),
    sizes: [{size: exactly(1), source: 'nist-sp811'}],
  },
  {
    id: 'pfund',
    dimension: 'mass',
    spellings: words('pfund, pfd'),
    sizes: [{size: exactly(500), source: 'common-practice', note: 'half a kilogram, as German households weigh'}],
  },
  // Shares of a measure that German writes in one word with it.
  {
    id: 'halbpfund',
    dimension: 'mass',
    spellings: words('halbpfund'),
    sizes: [{size: exactly(250), source: 'common-practice'}],
  },
  {
    id: 'viertelpfund',
    dimension: 'mass',
    spellings: words('viertelpfund'),
    sizes: [{size: exactly(125), source: 'common-practice'}],
  },
  {
    id: 'kilogram',
    unit: 'kg',
    dimension: 'mass',
    spellings: words('kilogram, kilogramme, kg, kgs, kilo, kilos'),
    sizes: [{size: exactly(1000), source: 'nist-sp811'}],
  },
  {
    id: 'millilitre',
    unit: 'ml',
    dimension: 'volume',
    spellings: words('millilitre, milliliter, ml, mls, cc, cubic centimetre, cubic centimeter, cm3, cm³'),
    sizes: [{size: exactly(1), source: 'nist-sp811'}],
  },
  {
    id: 'centilitre',
    unit: 'cl',
    dimension: 'volume',
    spellings: words('centilitre, centiliter, cl'),
    sizes: [{size: exactly(10), source: 'nist-sp811'}],
  },
  {
    id: 'decilitre',
    unit: 'dl',
    dimension: 'volume',
    spellings: words('decilitre, deciliter, dl'),
    sizes: [{size: exactly(100), source: 'nist-sp811'}],
  },
  {
    id: 'litre',
    unit: 'l',
    dimension: 'volume',
    spellings: words('litre, liter, l, ltr, ltrs'),
    sizes: [{size: exactly(1000), source: 'nist-sp811'}],
  },
  {
    id: 'dreiviertelliter',
    dimension: 'volume',
    spellings: words('dreiviertelliter'),
    sizes: [{size: exactly(750), source: 'nist-sp811'}],
  },
  {
    id: 'halbliter',
    dimension: 'volume',
    spellings: words('halbliter'),
    sizes: [{size: exactly(500), source: 'nist-sp811'}],
  },
  {
    id: 'viertelliter',
    dimension: 'volume',
    spellings: words('viertelliter'),
    sizes: [{size: exactly(250), source: 'nist-sp811'}],
  },
  {
    id: 'achtelliter',
    dimension: 'volume',
    spellings: words('achtelliter'),
    sizes: [{size: exactly(125), source: 'nist-sp811'}],
  },
  {
    id: 'knob',
    dimension: 'mass',
    spellings: words('knob, knobs'),
    sizes: [{size: span(10, 15, 30), source: 'memory', note: 'of butter'}],
  },
  {
    id: 'pat',
    dimension: 'mass',
    spellings: words('pat, pats'),
    sizes: [{size: span(5, 7, 225), source: 'memory', note: 'of butter: 5 g at table today, half a pound at an old market'}],
  },
  {
    id: 'becher',
    dimension: 'volume',
    spellings: words('becher'),
    sizes: [
      {
        size: span(150, 200, 250),
        source: 'memory',
        note: 'the pot that cream and yoghurt are sold in; German cakes are measured by it',
      },
    ],
  },
  {
    id: 'packet',
    dimension: 'count',
    spellings: words(
      'packet, packets, package, packages, pkg, pkgs, pkt, sachet, sachets, envelope, envelopes, env, envs, pck, pckg, päckchen, packung, packungen',
    ),
    sizes: [],
  },
  {
    id: 'tin',
    dimension: 'count',
    spellings: words('tin, tins, tin can, cans, dose, dosen, konservendose, konservendosen'),
    sizes: [],
  },
  {id: 'jar', dimension: 'count', spellings: words('jar, jars, pot, pots, glas, gläser'), sizes: []},
  {id: 'cube', dimension: 'count', spellings: words('cube, cubes, würfel'), sizes: []},
  {id: 'cake', dimension: 'count', spellings: words('cake, cakes, yeast cake'), sizes: [], note: 'of yeast or chocolate'},
  {id: 'square', dimension: 'count', spellings: words('square, squares'), sizes: [], note: 'of chocolate'},

  // Pieces
  piece('count', 'count'),
  {id: 'pair', dimension: 'count', spellings: words('pair, pairs, brace'), sizes: []},
  piece('blade', 'blade, blades, blaid'),
  piece('stick', 'stick, sticks, stalk, stalks'),
  piece('clove', 'clove, cloves'),
  piece('slice', 'slice, slices, slyce, rasher, rashers, scheibe, scheiben'),
  piece('head', 'head, heads'),
  piece('sprig', 'sprig, sprigs, spray, zweig, zweige, stängel'),
  piece('bunch', 'bunch, bunches, bund, faggot, faggots, fagot, fagots, bundle, bundles'),
  piece('sheet', 'sheet, sheets, platte, platten'),
  piece('ball', 'ball, balls, kugel, kugeln'),
  piece('loaf', 'loaf, loaves'),
  piece('piece', 'piece, pieces, bit, bits, lump, lumps, morsel, chunk, slip, slips, strip, strips'),
  piece('leaf', 'leaf, leaves'),
  piece('root', 'root, roots, race, races'),
  piece('bulb', 'bulb, bulbs'),
  piece('pod', 'pod, pods'),
  piece('ear', 'ear, ears'),

  // Comparisons, grams of butter-like stuff
  likeness(
    'size of an egg',
    'size of an egg, size of a hen egg, size of a small egg, size of a large egg, bigness of an egg, as big as an egg, large as an egg, bulk of an egg, egg size',
    45,
    57,
    70,
    'common-practice',
    'a piece of butter like an egg: about two ounces',
  ),
  likeness(
    'size of a goose egg',
    'size of a goose egg, size of a goose-egg, as big as a goose egg, size of a turkey egg',
    110,
    140,
    170,
  ),
  likeness('size of a pigeon egg', 'size of a pigeon egg, as big as a pigeon egg', 12, 16, 20),
  likeness(
    'size of a walnut',
    'size of a walnut, bigness of a walnut, as big as a walnut, large as a walnut, size of a wallnut',
    20,
    28,
    35,
    'common-practice',
    'about an ounce of butter',
  ),
  likeness('size of a butternut', 'size of a butternut, as big as a butternut', 25, 32, 45),
  likeness('size of a nutmeg', 'size of a nutmeg, bigness of a nutmeg, as big as a nutmeg, large as a nutmeg', 5, 8, 12),
  likeness(
    'size of a hazelnut',
    'size of a hazelnut, size of a hazel nut, size of a filbert, bigness of a hazelnut, as big as a hazelnut',
    1.5,
    2.5,
    4,
  ),
  likeness(
    'size of a nut',
    'size of a nut, size of a small nut, bigness of a nut, as big as a nut',
    2,
    12,
    30,
    'memory',
    'from a hazelnut to a walnut: which is not said',
  ),
  likeness('size of a pea', 'size of a pea, as big as a pea, bigness of a pea', 0.15, 0.3, 0.5),
  likeness('size of a bean', 'size of a bean, as big as a bean', 0.5, 1, 1.8),
  likeness('size of a marble', 'size of a marble, as big as a marble', 2, 4, 6),
  likeness('size of an almond', 'size of an almond, as big as an almond', 1, 1.5, 2.5),
  likeness('size of a cherry', 'size of a cherry, as big as a cherry', 4, 6, 9),
  likeness('size of an orange', 'size of an orange, as big as an orange', 100, 140, 200),
  likeness('size of an apple', 'size of an apple, as big as an apple', 100, 140, 200),
  likeness('size of a fist', 'size of a fist, size of your fist, as big as your fist', 200, 300, 450),
  {
    id: 'weight of an egg',
    dimension: 'weight-of-piece',
    spellings: words('weight of an egg, weight of egg, weight of the egg, weight of one egg, egg weight, weight in egg'),
    sizes: [
      {size: span(42, 45.4, 52), to: 1899, source: 'pg-9624', note: 'ten eggs to a pound (1837), in the shell'},
      {size: span(50, 57, 68), from: 1900, source: 'usda-ams-eggs', note: 'medium to extra large, in the shell'},
    ],
  },

  // Length
  {id: 'inch', dimension: 'length', spellings: words('inch, inches'), sizes: []},
  {id: 'centimetre', dimension: 'length', spellings: words('centimetre, centimeter, cm'), sizes: []},

  // Money
  {
    id: 'pennyworth',
    dimension: 'money',
    spellings: words(
      'pennyworth, penny-worth, penny worth, pennorth, penn’orth, penny’s worth, pennyworths, cent worth, cents worth, penny’sworth, d worth',
    ),
    sizes: [],
    note: 'its weight depends on the price of the day',
  },
  {
    id: 'halfpennyworth',
    dimension: 'money',
    spellings: words('halfpennyworth, half-pennyworth, halfpenny worth, ha’porth'),
    sizes: [],
  },
  {
    id: 'sixpennyworth',
    dimension: 'money',
    spellings: words('sixpennyworth, six-pennyworth, sixpenny worth, sixpence worth'),
    sizes: [],
  },

  {
    id: 'indefinite',
    dimension: 'indefinite',
    spellings: words('indefinite'),
    sizes: [],
    note: 'an amount the text does not give',
  },
]
