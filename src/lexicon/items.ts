import {germanNames} from './german-names.js'
import {cuts} from './items-cuts.js'
import {dairy} from './items-dairy.js'
import {flours} from './items-flour.js'
import {fruit} from './items-fruit.js'
import {liquids} from './items-liquid.js'
import {pieces} from './items-pieces.js'
import {savouries} from './items-savoury.js'
import {spices} from './items-spice.js'
import {sweets} from './items-sweet.js'
import type {Item} from './schema.js'

/** Every item. Earlier rows win where two write the same spelling. */
export const items: readonly Item[] = [
  ...flours,
  ...sweets,
  ...dairy,
  ...fruit,
  ...spices,
  ...liquids,
  ...savouries,
  ...pieces,
  ...cuts,
].map((row) => {
  const german = germanNames[row.id]
  return german === undefined ? row : {...row, spellings: [...row.spellings, ...german.toLowerCase().split(', ')]}
})
