import {words, wordsUsed} from './row.js'
import type {DoughWeightWord} from './schema.js'

/**
 * Words of a formula in baker's percentages, in which the flour is 100 % and all else is told as a share of its weight, and of the weight it
 * is reckoned from. Folded; common practice, no source. `src/receipt/baker-percent.ts` reads them.
 */
const row = (use: DoughWeightWord['use'], id: string, list: string): DoughWeightWord => ({
  id: `${use}: ${id}`,
  use,
  words: words(list),
  source: 'common-practice',
})

export const doughWeightWords: readonly DoughWeightWord[] = [
  row('percent', 'percent', '%, percent, prozent, per cent, v h, vom hundert'),
  // What heads a column of shares; "baker's %" has the sign in it.
  row('column', 'share', 'percent, percentage, percentages, bakers percentage, share, prozent, anteil, anteile'),
  // Behind a percentage: it is of the thing itself, and no share of the flour.
  row(
    'not of flour',
    'of the thing',
    'protein, fat, fats, butterfat, milkfat, cocoa, cacao, kakao, kakaoanteil, extraction, wholegrain, fett, fettgehalt, fett i tr, eiweiss, alcohol, alc, vol, abv, acid, acidity, saure, solids, ausmahlung',
  ),
  // The water as a share of the flour, by the trade's own word; behind a leaven it is the leaven's own.
  row('hydration', 'water', 'hydration, hydratation, hydration level, total hydration'),
  // Behind a percentage, and still a share of the flour.
  row(
    'of',
    'the flour',
    'of the flour, of flour, on flour, of the flour weight, of flour weight, vom mehl, des mehls, auf mehl, der mehlmenge',
  ),
  row(
    'flour',
    'weight of the flour',
    'flour weight, total flour, total flour weight, weight of flour, weight of the flour, flour in all, mehlmenge, mehlgewicht, gesamtmehl, gesamtmehlmenge, mehl gesamt, mehl insgesamt',
  ),
  row(
    'whole',
    'weight of the dough',
    'dough weight, total dough weight, weight of dough, weight of the dough, total dough, total weight, batch weight, batch size, of dough, dough, total, in all, teiggewicht, teigmenge, gesamtteig, gesamtteigmenge, gesamtgewicht, gesamtmenge, gesamt, summe, teig',
  ),
  row(
    'piece',
    'weight of a piece',
    'loaf, loaves, roll, rolls, bun, buns, baguette, baguettes, pizza, pizzas, boule, boules, cob, cobs, bap, baps, batard, batards, bloomer, bloomers, dough ball, dough balls, ball, balls, piece, pieces, each, apiece, scale, scaled, scaling, scaling weight, teigeinlage, teigling, teiglinge, teiglingen, stuckgewicht, brot, brote, broten, brotchen, laib, laibe, laiben, stuck, stucke, je, pro, baguettes',
  ),
  // What a part of the dough with a formula of its own is called in the dough.
  row(
    'name of a leaven',
    'leaven',
    'leaven, levain, starter, sourdough, sourdough starter, sour, rye sour, sauerteig, sponge, poolish, biga, preferment, vorteig',
  ),
]

const of = (use: DoughWeightWord['use']): readonly string[] => wordsUsed(doughWeightWords, use)

/** The phrases by what they are. */
export const doughWeights = {
  percent: of('percent'),
  column: of('column'),
  notOfFlour: [...of('not of flour'), ...of('hydration'), 'hydrated'],
  hydration: of('hydration'),
  ofFlour: of('of'),
  flour: of('flour'),
  whole: of('whole'),
  piece: of('piece'),
  leaven: of('name of a leaven'),
} as const
