import {isCookedAt, TO_ITS_OWN_HEAT} from './cooked-at.js'
import {DegreeReader} from './degrees.js'
import type {Section} from './section.js'

/** Whether a receipt that names no oven cooks at an oven's heat, “cook at gas 2 for 4 hours”. */
export function cooksInOven(section: Section): boolean {
  const {tokens, blocks} = section
  // "Cook at 118 °C" in a toffee's text is the sugar's.
  if (
    tokens.some(
      ({word, stem, block}) => blocks[block]!.kind === 'heading' && [word, stem].some((one) => TO_ITS_OWN_HEAT.has(one)),
    )
  )
    return false
  const reader = new DegreeReader(section)
  return tokens.some(({kind, word}, i) => {
    if (kind !== 'number' && word !== 'gas' && word !== 'mark') return false
    const read = reader.degrees(i, false)
    return read?.ofOven === true && isCookedAt(tokens, read.from, read.low)
  })
}
