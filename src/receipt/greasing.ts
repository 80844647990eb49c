import {NOTFOOD, type View} from './view.js'

/**
 * Fat that keeps a tin or griddle clean, and is no ingredient.
 */

/** What a tin is done with before the mixture goes in, and what else is done so. */
const GREASING = new Set([
  'grease',
  'greased',
  'greasing',
  'rub',
  'rubbed',
  'rubbing',
  'butter',
  'buttered',
  'smear',
  'smeared',
  'anoint',
  'oil',
  'oiled',
  'brush',
  'brushed',
])
const GREASED_TOO = new Set([
  'griddle',
  'girdle',
  'sheet',
  'sheets',
  'skillet',
  'ring',
  'rings',
  'hoop',
  'hoops',
  'iron',
  'irons',
  'shell',
  'shells',
  'shelf',
  'form',
  'forms',
  'shapes',
  'pattypans',
  'patty',
  'spider',
])

/** "rub the tins with butter", "grease a pan with a little lard": what keeps the vessel clean is no ingredient. `at` is the fat's first word. */
export function greases(view: View, at: number): boolean {
  const {words, bits, tokens} = view
  const {block} = tokens[at]!
  if (words[at - 1] !== 'with') return false
  let vessel = false
  for (let i = at - 2; i >= 0 && i > at - 10 && tokens[i]!.block === block; i--) {
    const word = words[i]!
    if (word === '.' || word === ';') return false
    if (bits[i]! & NOTFOOD || GREASED_TOO.has(word)) vessel = true
    if (vessel && GREASING.has(word)) return true
    if (GREASING.has(word) && (bits[i - 1]! & NOTFOOD || /^(?:well|lightly)$/.test(words[i - 1] ?? ''))) return true
  }
  return false
}
