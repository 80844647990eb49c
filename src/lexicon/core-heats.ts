import {poultry} from './poultry.js'
import {words} from './row.js'
import type {CoreHeat} from './schema.js'

/**
 * Least safe temperatures of the middle of what has raw meat, poultry or fish in it, °C. The first row that holds is its; the last is for every
 * dish that is no whole cut by its kind. 165 °F is 74 °C, 145 °F is 63 °C.
 */
export const coreHeats: readonly CoreHeat[] = [
  {
    id: 'poultry',
    of: 'any dish',
    items: [...poultry, 'giblet', 'chicken liver', 'goose liver'],
    celsius: 74,
    source: 'fda-food-code',
    note: '3-401.11(A)(3), 165 °F; USDA FSIS the same',
  },
  {
    id: 'minced meat',
    of: 'any dish',
    items: words('sausage meat, chipolata, cocktail sausage'),
    words: words(
      'minced, mince, ground, sausage, sausages, burger, burgers, meatballs, hackfleisch, hack, gehacktes, faschiertes, rinderhack, rinderhackfleisch, brat',
    ),
    celsius: 74,
    source: 'usda-fsis-temps',
    note: '160 °F for minced meat, 165 °F where poultry is or may be in it: the higher, since a packet of sausages may hold either',
  },
  {
    id: 'whole cut',
    of: 'whole cut',
    celsius: 63,
    source: 'usda-fsis-temps',
    note: '145 °F and three minutes of rest for whole cuts, 145 °F for fish',
  },
  {
    id: 'in a dish',
    of: 'any dish',
    celsius: 74,
    source: 'fda-food-code',
    note: '3-401.11(A)(3), 165 °F for what is stuffed with meat, poultry or fish; USDA FSIS 165 °F for casseroles',
  },
]
