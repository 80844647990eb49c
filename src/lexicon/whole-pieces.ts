import {words} from './row.js'
import type {WholePiece} from './schema.js'

/**
 * How large a bird, a joint or a fish is that goes into the oven whole: metres for one of a kilogram, and every side grows as the cube root of
 * its weight. A turkey of 6 kg (∛6 = 1.82) is 38 cm long, 28 cm wide and 20 cm high. The first row that holds is its. Common practice, no source.
 */
export const wholePieces: readonly WholePiece[] = [
  {
    id: 'bird',
    kinds: ['roast poultry'],
    items: words('chicken, turkey, goose, duck, grouse, pheasant'),
    apart: words('breast, leg, crown, brust, keule, keulen'),
    length: 0.21,
    width: 0.155,
    height: 0.11,
    least: 0.8,
    byWeight: 9,
    source: 'common-practice',
  },
  {
    id: 'leg',
    kinds: ['roast meat'],
    words: words('leg, haunch, shank, keule, lammkeule, rehkeule, hammelkeule'),
    length: 0.26,
    width: 0.115,
    height: 0.09,
    least: 0.8,
    byWeight: 9,
    source: 'common-practice',
    note: 'as long as its bone',
  },
  {
    id: 'flat cut',
    kinds: ['roast meat'],
    items: words('brisket of beef, breast of mutton, breast of veal, spare-rib'),
    words: words('brisket, belly, breast, flank, ribs, bauch, brust, schweinebauch, rinderbrust, kalbsbrust'),
    length: 0.25,
    width: 0.18,
    height: 0.05,
    least: 0.8,
    byWeight: 6,
    source: 'common-practice',
  },
  {
    id: 'round cut',
    kinds: ['roast meat'],
    length: 0.18,
    width: 0.125,
    height: 0.1,
    least: 0.8,
    byWeight: 9,
    source: 'common-practice',
    note: 'a ham, a shoulder, a rolled joint, a sucking pig',
  },
  {
    id: 'fish',
    kinds: ['baked fish'],
    length: 0.46,
    width: 0.11,
    height: 0.06,
    least: 0.8,
    source: 'common-practice',
    note: 'on its side; of a weight without a number nobody knows whether it is one',
  },
]
