import {expect, test} from 'vitest'
import {translate} from '../src/receipt/translate.js'

/** Names and signs of the trade: common practice, no source. */

const signs = (text: string): string[] => (translate(text, {file: 'a.md'}).receipts[0]!.signs ?? []).map((sign) => sign.text)

test('a colour in the name of what goes in, or of how it goes in, is no sign that the dish is done', () => {
  const list = '- 227 g butter, browned\n- 165 g light brown sugar\n- 2 tablespoons golden syrup\n'
  expect(signs(`# Cookies\n\n${list}\nMelt the golden syrup with the browned butter, and bake 12 minutes.\n`)).toEqual([])
  expect(signs(`# Cookies\n\n${list}\nBake 12 minutes till golden brown, and firm in the middle.\n`)).toEqual([
    'golden brown',
    'firm in the middle',
  ])
  expect(signs('# Custard\n\nTake 4 eggs and a pint of milk; bake it till light brown. Sugar it.\n')).toEqual(['light brown'])
})
