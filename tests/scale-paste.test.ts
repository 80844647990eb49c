import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'
import type {Receipt} from '../src/receipt/types.js'
import {makeDishes} from '../src/scale/dishes.js'
import type {Dish} from '../src/scale/types.js'

/** Pies whose receipts write paste and filling as one text. Invented; which of it is the paste: common practice, no source. */
const oven = {floor: {shape: 'round' as const, diameter: 3}, mouth: {width: 1.2, height: 0.6}, vaultHeight: 0.9}
const pie = (title: string, text: string): string =>
  `---\nyear: 2001\nvessel: pie plate 9 in x 1 1/2 in\n---\n# ${title}\n\n${text}\n\nBake it an hour in a hot oven. Makes 1 pie.\n`
const read = (text: string): Receipt => translate(text, {file: 'receipts/x.md'}).receipts[0]!
function made(text: string, amount: string, bowl?: number): readonly Dish[] {
  const item = {file: 'receipts/x.md', title: 'It', amount, wantedBy: null, line: 5, column: 3}
  const day = {people: 12, items: [item], spare: [], ...(bowl === undefined ? {} : {bowl})}
  return makeDishes({day, receipts: [read(text)], oven}).dishes
}
/** What goes into the filling, of the ingredients of a text. */
const filling = (title: string, text: string): string[] =>
  read(pie(title, text)).ingredients.flatMap(({item, filling}) => (filling ? [item] : []))

const hare =
  'Rub 200 g butter into 450 g flour, and wet it with 135 ml water. Lay in 1 kg hare, jointed, and 250 g bacon, and pour in 285 ml stock.'

describe('a pie whose paste and filling are written as one', () => {
  it('has what stands about the flour in its paste, and the rest in its filling', () => {
    expect(filling('Hare pie', hare)).toEqual(['hare', 'bacon', 'stock'])
    // The filling first; a list, which has no sentences.
    expect(
      filling('Veal pie', 'Take 1 kg veal and 300 ml stock. Make a stiff dough of 450 g flour, 200 g lard and 150 ml water.'),
    ).toEqual(['veal', 'stock'])
    expect(
      filling('Veal pie', '- 450 g flour.\n- 200 g lard.\n- 150 ml water.\n- 1 kg veal.\n- 2 eggs.\n- 300 ml stock.'),
    ).toEqual(['veal', 'egg', 'stock'])
    // Nothing parts them but the end of the sentence; and a paste is not done before it is wetted.
    expect(
      filling(
        'Custard pie',
        'Rub 200 g butter into 450 g flour. Wet it with 150 ml water. Beat 4 eggs with 500 ml milk and 100 g sugar.',
      ),
    ).toEqual(['egg', 'milk', 'sugar'])
    // The rind of a lemon fills nothing.
    expect(
      filling('Apple pie', 'Take 450 g flour, 200 g butter, 10 g lemon peel and 150 ml water. Fill it with 1 kg apples.'),
    ).toEqual(['apple'])
  })
  it('and any other dish is one mixture', () => {
    expect(filling('Carrot cake', 'Take 450 g flour, 300 g carrots, 4 eggs and 150 ml milk. Bake it well.')).toEqual([])
    expect(filling('Hare pie', 'Take 1 kg hare and 300 ml stock, and cover it with puff paste.')).toEqual([])
  })

  it('keeps its flour to its water within half a per cent at any size, whatever its gravy is rounded to', () => {
    let tried = 0
    for (let n = 2; n <= 24; n++) {
      const [dish] = made(pie('Hare pie', hare), `${n}/3 times`)
      const share = (item: string): number => {
        const {kitchen, grams, millilitres} = dish!.amounts.find((one) => one.item === item)!
        const [, value, unit] = /^([\d.]+) (kg|g|ml|litres?)$/.exec(kitchen)!
        const exact = unit === 'g' || unit === 'kg' ? grams : millilitres
        return (Number(value) * (unit === 'kg' || unit!.startsWith('litre') ? 1000 : 1)) / exact!.likely
      }
      // Below about 110 ml no jug shows half a per cent.
      if (n * 45 < 110) continue
      tried++
      expect(Math.abs(share('water') / share('flour') - 1), `${n}/3 times`).toBeLessThan(0.0051)
      expect(Math.abs(share('stock') - 1)).toBeLessThan(0.0301)
    }
    expect(tried).toBeGreaterThan(20)
  })

  it('does not have its filling in the bowl with its paste', () => {
    // 0.79 kg of paste and 1.54 kg of filling: a bowl of 3.2 kg takes those of two.
    expect(made(pie('Hare pie', hare), '6 pies', 3.2).map(({count}) => count)).toEqual([2, 2, 2])
  })
})
