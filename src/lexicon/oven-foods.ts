import {poultry} from './poultry.js'
import {words} from './row.js'
import type {OvenFood} from './schema.js'

/**
 * What a food is as a dish where a title says no more than that it comes from the oven: “Salmon from the oven”, “Weiße Bohnen aus dem Ofen”,
 * “Ofenlachs”. The first row that has the food counts. Common practice, no source.
 */
export const ovenFoods: readonly OvenFood[] = [
  {id: 'beans', kind: 'beans', items: ['bean'], groups: ['pulse'], source: 'common-practice'},
  {
    id: 'poultry',
    kind: 'roast poultry',
    items: poultry,
    source: 'common-practice',
  },
  {id: 'meat', kind: 'roast meat', groups: ['meat'], source: 'common-practice'},
  {id: 'fish', kind: 'baked fish', groups: ['fish'], source: 'common-practice'},
  {id: 'vegetables', kind: 'roast vegetables', groups: ['vegetable'], source: 'common-practice'},
  {id: 'fruit', kind: 'baked fruit', groups: ['fruit'], source: 'common-practice'},
]

/** Words of a title for the oven, folded; German ones are also the first part of a compound. */
export const ovens: readonly string[] = words('oven, ovens')
export const germanOvens: readonly string[] = words('ofen, backofen, holzofen, holzbackofen, lehmofen, lehmbackofen, steinofen')
