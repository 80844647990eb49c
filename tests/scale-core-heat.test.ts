import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'
import {makeDishes} from '../src/scale/dishes.js'
import {signIn} from '../src/sheets/phrases.js'
import {styleOf} from '../src/sheets/style-of.js'

/**
 * Least safe temperatures of the middle. FDA Food Code 2022, 3-401.11(A)(3): poultry, and what is stuffed with meat, poultry or fish, 165 °F (74 °C).
 * USDA FSIS, Safe Minimum Internal Temperature Chart: poultry and casseroles 165 °F, whole cuts of beef, pork, veal and lamb and fish 145 °F (63 °C),
 * minced meat 160 °F, held to 165 °F here.
 */
const fahrenheit = (f: number): number => Math.round(((f - 32) * 5) / 9)
const POULTRY = fahrenheit(165)
const WHOLE = fahrenheit(145)

const oven = {floor: {shape: 'round' as const, diameter: 1.07}, mouth: {width: 0.46, height: 0.28}, vaultHeight: 0.41}
const dishOf = (title: string, list: string, method = 'Bake at 190 °C for 50 minutes.') => {
  const {receipts} = translate(`# ${title}\n\n${list}\n\n${method}\n`, {file: 'receipts/a.md'})
  const item = {file: 'receipts/a.md', title, amount: '1 times', wantedBy: null, line: 1, column: 1}
  return makeDishes({day: {people: 6, items: [item], spare: []}, receipts, oven}).dishes[0]!
}
const centre = (sign: string): number | null => {
  const found = /(\d+) °C/.exec(sign)
  return found === null ? null : Number(found[1])
}

describe('the sign of what has raw meat, poultry or fish in it', () => {
  it.each([
    ['Pork and Apple Pie', '- 800 g pork\n- 4 apples\n- 400 g flour\n- 200 g lard', POULTRY],
    ['Sausage and Apple Plait', '- 500 g sausage meat\n- 375 g puff pastry', POULTRY],
    ['Stuffed loaf', '- 1 kg flour\n- 20 g yeast\n- 500 g minced pork', POULTRY],
    ['Chicken quiche', '- 300 g chicken\n- 4 eggs\n- 300 ml cream', POULTRY],
    ['Toad in the hole', '- 8 sausages\n- 200 g flour\n- 2 eggs\n- 300 ml milk', POULTRY],
    ['Stuffed tomatoes', '- 8 tomatoes\n- 300 g minced beef', POULTRY],
    ['Cabbage rolls', '- 500 g minced beef\n- 1 cabbage', POULTRY],
    ['Meat loaf', '- 800 g minced beef\n- 2 eggs', POULTRY],
    ['Mince pies', '- 1 lb beef\n- 1 lb suet\n- 2 lb apples\n- 1 lb sugar', POULTRY],
    // A whole cut by its kind, and what in it asks for more.
    ['Roast beef', '- 2.5 kg sirloin of beef', WHOLE],
    ['Baked cod', '- 1 kg cod', WHOLE],
    ['Roast pork', '- 2 kg loin of pork\n- 300 g sausage meat', POULTRY],
    ['Roast lamb', '- 2 kg lamb\n- 300 g chicken', POULTRY],
  ])('%s', (title, list, celsius) => {
    const {sign, raw} = dishOf(title, list)
    expect(centre(sign)).toBe(celsius)
    expect(sign.match(/°C/g)).toHaveLength(1)
    expect(raw).toBe(true)
  })

  it.each([
    ['Bread', '- 1 kg flour\n- 20 g yeast\n- 100 g bacon'],
    ['Bacon and cheese scones', '- 450 g flour\n- 100 g bacon\n- 100 g cheese'],
    ['Mince pies', '- 500 g mincemeat\n- 300 g flour\n- 150 g lard'],
    ['Lardy cake', '- 500 g flour\n- 20 g yeast\n- 200 g lard'],
    ['Bacon quiche', '- 200 g bacon\n- 4 eggs\n- 300 ml cream'],
    ['Potato pie', '- 400 g vegetarian sausages\n- 1 kg potatoes'],
    ['Vegetarian toad in the hole', '- 8 sausages\n- 200 g flour\n- 2 eggs'],
    ['Pudding', '- 300 g bread\n- 100 g suet\n- 50 g sugar'],
  ])('and of what has none names no temperature: %s', (title, list) => {
    const {sign, raw} = dishOf(title, list)
    expect(centre(sign)).toBeNull()
    expect(raw).toBeUndefined()
  })

  it('is said in German, beside the sign of its kind', () => {
    const german = styleOf({language: 'de', degrees: 'C'})
    const {kind, sign} = dishOf('Stuffed loaf', '- 1 kg flour\n- 20 g yeast\n- 500 g minced pork')
    expect(signIn(kind, sign, german)).toMatch(/^klingt hohl .*; Mitte 74 °C mit dem Thermometer$/)
    const roast = dishOf('Roast pork', '- 2 kg loin of pork\n- 300 g sausage meat')
    expect(signIn(roast.kind, roast.sign, german)).toBe('Mitte 74 °C mit dem Thermometer')
    const rolls = dishOf('Cabbage rolls', '- 500 g minced beef\n- 1 cabbage')
    expect(signIn(rolls.kind, rolls.sign, german)).toMatch(/; Mitte 74 °C mit dem Thermometer$/)
  })

  it('has degrees as the reader has them', () => {
    const {kind, sign} = dishOf('Stuffed loaf', '- 1 kg flour\n- 20 g yeast\n- 500 g minced pork')
    expect(signIn(kind, sign, styleOf({degrees: 'F'}))).toMatch(/; 165 °F at the centre by thermometer$/)
  })
})
