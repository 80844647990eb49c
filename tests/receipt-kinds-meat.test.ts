import {describe, expect, it} from 'vitest'
import {kinds} from '../src/lexicon/kinds.js'
import {namesFlesh} from '../src/receipt/flesh.js'
import {translate} from '../src/receipt/translate.js'

/** Invented receipts. What is baked of meat in paste, and what is leavened: common practice, no source. */
const read = (title: string, list: string, method = 'Bake at 190 °C for 50 minutes.') =>
  translate(`# ${title}\n\n${list}\n\n${method}\n`, {file: 'a.md'}).receipts[0]!
const kindOf = (title: string, list: string, method?: string): string | null => read(title, list, method).kind
const rises = (title: string, list: string): boolean =>
  read(title, list).inferred.some(({field}) => field === 'rise' || field === 'prove')

const paste = '- 400 g flour\n- 200 g lard'
const puff = '- 375 g puff pastry\n- 1 egg'

describe('what has no leaven and is of paste', () => {
  it.each([
    ['Sausage and Apple Plait', `- 500 g sausage meat\n${puff}\n- 2 apples`, 'sausage rolls'],
    ['Salmon twist', `- 500 g salmon\n${puff}`, 'sausage rolls'],
    ['Picnic loaf', `- 400 g pork\n${puff}`, 'sausage rolls'],
    ['Chicken plait', `- 500 g chicken\n${paste}`, 'sausage rolls'],
    ['Schinkenzopf', '- 200 g Schinken\n- 1 Packung Blätterteig', 'puff paste'],
    ['Hackfleischzopf', '- 500 g Hackfleisch\n- 275 g Blätterteig', 'sausage rolls'],
    ['Hackfleischzopf', '- 500 g Hackfleisch\n- 1 Rolle Blätterteig', 'sausage rolls'],
    ['Hackzopf', '- 500 g Hackfleisch\n- 275 g Mürbeteig', 'sausage rolls'],
    ['Sausage plait', '- 1 lb sausagemeat\n- 13 oz puff pastry', 'sausage rolls'],
    ['Cheese twists', `- 100 g cheese\n${puff}`, 'puff paste'],
    ['Spinach plait', '- 500 g spinach\n- 400 g shortcrust pastry', 'tarts'],
  ])('is no dough that rises: %s', (title, list, kind) => {
    expect(kindOf(title, list)).toBe(kind)
    expect(rises(title, list)).toBe(false)
  })

  it.each([
    ['Plait', '- 500 g flour\n- 20 g yeast', 'white bread'],
    ['Plait', '- 500 g flour\n- salt', 'white bread'],
    ['Sausage plait', '- 500 g flour\n- 20 g yeast\n- 300 g sausage meat', 'rolls'],
    // What calls itself bread is bread.
    ['Household bread', '- 1 kg flour\n- 1 kg mutton', 'white bread'],
    ['Stuffed plait', '- 500 g bread dough\n- 300 g pork', 'white bread'],
    ['Stuffed loaf with pork', '- 1 kg bread flour\n- 7 g yeast\n- 500 g minced pork', 'white bread'],
    ['Croissants', '- 500 g flour\n- 20 g yeast\n- 250 g butter', 'buns'],
  ])('but what is leavened, or has no paste, is: %s', (title, list, kind) => {
    expect(kindOf(title, list)).toBe(kind)
    expect(rises(title, list)).toBe(true)
  })

  it('is no dough for being served as a starter', () => {
    const list = `- 500 g sausage meat\n${puff}`
    expect(kindOf('Sausage and sage plait', list, 'Bake 40 minutes. Serve as a starter.')).toBe('sausage rolls')
  })

  it('is leavened where only its text says so', () => {
    expect(kindOf('Plait', puff, 'Work in the barm, let it rise, and bake 40 minutes.')).toBe('white bread')
  })
})

describe('a shape that a title names', () => {
  it.each([
    ['Meat loaf', '- 800 g minced beef\n- 2 eggs', 'meat loaf'],
    ['Salmon loaf', '- 500 g salmon\n- 100 g breadcrumbs\n- 2 eggs', 'meat loaf'],
    ['Sunday loaf', '- 500 g minced pork\n- 1 onion', 'meat loaf'],
    ['Hackbraten', '- 800 g Hackfleisch\n- 2 Eier', 'meat loaf'],
    ['Cabbage rolls', '- 500 g minced beef\n- 1 cabbage', null],
    ['Crab and corn cakes', '- 300 g crab\n- 200 g sweetcorn', null],
  ])('makes no bread of meat or fish: %s', (title, list, kind) => {
    expect(kindOf(title, list)).toBe(kind)
    expect(rises(title, list)).toBe(false)
  })
  it.each([
    ['Nut loaf', '- 200 g walnuts\n- 3 eggs\n- 100 g breadcrumbs', null],
    ['Lemon loaf', '- 200 g flour\n- 150 g sugar\n- 3 eggs', 'pound cake'],
    ['Harvest loaf', '- 500 g flour\n- 20 g yeast', 'white bread'],
  ])('is what it was without: %s', (title, list, kind) => expect(kindOf(title, list)).toBe(kind))
})

describe('a pie, pudding or tart with meat in it', () => {
  it.each([
    ['Meat and Potato Pie', `- 3 lb beef\n- 4 lb potatoes\n${paste}`, 'meat pie'],
    ['Potato and Meat Pie', `- 3 lb beef\n- 4 lb potatoes\n${paste}`, 'meat pie'],
    ['Pork and Apple Pie', `- 800 g pork\n- 4 apples\n- 30 g sugar\n${paste}`, 'meat pie'],
    ['Fish and Potato Pie', '- 600 g cod\n- 1 kg potatoes\n- 300 ml milk', 'meat pie'],
    ['Chicken and Pumpkin Pie', `- 600 g chicken\n- 500 g pumpkin\n${paste}`, 'meat pie'],
    ['Turkey and Cranberry Pie', `- 800 g turkey\n- 200 g cranberries\n${paste}`, 'meat pie'],
    ['Bacon and Potato Pie', `- 300 g bacon\n- 1 kg potatoes\n${paste}`, 'meat pie'],
    // By its title alone, where its items are not known.
    ['Lamb and Sweet Potato Pie', `- 600 g neck fillets\n${paste}`, 'meat pie'],
    // By its items alone.
    ['Aunt Jane’s Potato Pie', `- 600 g lamb\n- 1 kg potatoes\n${paste}`, 'meat pie'],
    ['Steak and Kidney Pudding', '- 600 g steak\n- 200 g kidney\n- 300 g flour\n- 150 g suet', 'meat pie'],
    ['Chicken and Rice Pudding', '- 800 g chicken\n- 300 g rice', 'baked pasta'],
    ['Beef Bread Pudding', '- 500 g minced beef\n- 300 g bread\n- 2 eggs', 'baked pasta'],
    ['Chicken Turnovers', `- 500 g chicken\n${paste}`, 'pasties'],
    ['Sausage Rolls', `- 500 g sausage meat\n${puff}`, 'sausage rolls'],
    ['Little Pork and Apple Pies', `- 800 g pork\n- 4 apples\n${paste}`, 'small raised pies'],
  ])('is of meat: %s', (title, list, kind) => expect(kindOf(title, list)).toBe(kind))

  it.each([
    ['Mince Pies', `- 500 g mincemeat\n${paste}`, 'fruit pie'],
    ['Mince Pies', '- 1 lb beef\n- 1 lb suet\n- 2 lb apples\n- 1 lb sugar\n- 2 lb currants', 'fruit pie'],
    ['Apple Pie', '- 6 apples\n- 100 g sugar\n- 300 g flour\n- 150 g lard', 'fruit pie'],
    ['Pumpkin Pie', '- 500 g pumpkin\n- 100 g sugar\n- 3 eggs\n- 300 ml cream', 'custard pie'],
    ['Bacon Quiche', '- 200 g bacon\n- 4 eggs\n- 300 ml cream', 'custard pie'],
    ['Salmon Quiche', '- 200 g salmon\n- 4 eggs\n- 300 ml cream', 'custard pie'],
    ['Shepherd’s Pie', '- 500 g lentils\n- 1 kg potatoes', 'baked pasta'],
    ['Toad in the Hole', '- 8 sausages\n- 200 g flour\n- 2 eggs\n- 300 ml milk', 'yorkshire pudding'],
    ['Beef Dripping Cake', '- 500 g flour\n- 200 g beef dripping\n- 200 g sugar\n- 3 eggs', 'pound cake'],
    ['Lardy Cake', '- 500 g flour\n- 20 g yeast\n- 200 g lard\n- 150 g sugar', 'raised cake'],
    ['Mock Goose Pudding', '- 300 g lentils\n- 200 g bread', 'pudding'],
    ['Vegan Steak and Kidney Pudding', '- 500 g mushrooms\n- 300 g flour', 'pudding'],
    ['Potato Pie', '- 400 g vegetarian sausages\n- 1 kg potatoes', 'custard pie'],
    ['Blood Orange Tart', '- 6 oranges\n- 200 g sugar\n- 4 eggs', 'tarts'],
    ['Marrow Pudding', '- 300 g marrow\n- 4 eggs\n- 100 g sugar', 'pudding'],
    ['Bread Pudding', '- 300 g bread\n- 100 g suet\n- 100 g sugar', 'pudding'],
    ['Apple pudding for roast pork', '- 6 apples\n- 300 g bread', 'pudding'],
  ])('is what it was without raw meat as its filling: %s', (title, list, kind) => expect(kindOf(title, list)).toBe(kind))

  it('names a kind that there is', () => {
    const ids = kinds.map(({id}) => id)
    for (const {withMeat} of kinds)
      for (const id of [withMeat?.kind, withMeat?.crusted]) if (id !== undefined) expect(ids).toContain(id)
  })
})

describe('meat that a title names', () => {
  it.each(['Steak and ale', 'Cold roast pork', 'Hen pheasants', 'Potato cake with chicken'])('%s', (title) =>
    expect(namesFlesh(title)).toBe(true),
  )
  it.each(['Mock duck', 'Welsh rabbit', 'Duck egg custard', 'Meatless loaf', 'Kidney bean bake', 'A light bread'])(
    'and none: %s',
    (title) => expect(namesFlesh(title)).toBe(false),
  )
})

describe('a dish that is only called by a meat is none of meat', () => {
  it.each([
    ['Goose-fat biscuits', '- 200 g flour\n- 80 g goose fat\n- 1 tsp salt', null],
    ['Chicken biscuits', '- 200 g flour\n- 50 g butter\n- 100 ml milk', null],
    ['Chicken cookies', '- 200 g flour\n- 50 g butter\n- 100 g sugar', 'small cakes'],
    ['Turkey red cake', '- 200 g flour\n- 150 g butter\n- 200 g sugar\n- 3 eggs', 'pound cake'],
    ['Hen pie', '- 200 g flour\n- 80 g butter\n- 3 apples', 'fruit pie'],
    ['Rabbit tarts', '- 200 g flour\n- 100 g butter\n- 200 g jam', 'tarts'],
    ['Mutton-suet pudding', '- 200 g flour\n- 100 g mutton suet\n- 100 g raisins', 'pudding'],
  ])('%s', (title, list, kind) => {
    const receipt = read(title, list)
    expect(receipt.kind).toBe(kind)
    expect(receipt.cautions.map(({id}) => id)).not.toContain('meat-temperature')
  })

  it.each([
    ['Ham and egg pie', '- 200 g flour\n- 100 g butter\n- 200 g ham\n- 4 eggs', 'meat pie'],
    ['Chicken pie', '- 200 g flour\n- 100 g butter\n- 1 chicken', 'meat pie'],
    ['Game pie', '- 500 g paste\n- 800 g mixed game, boned', 'meat pie'],
    ['Toad in the hole', '- 100 g flour\n- 3 eggs\n- 300 ml milk\n- 500 g sausages', 'yorkshire pudding'],
    ['Cornish pasties', '- 400 g flour\n- 200 g lard\n- 400 g skirt beef\n- 2 potatoes', 'pasties'],
    // What is not known may be the meat, and the text may tell of it.
    ['Chicken pie', '- 200 g flour\n- 100 g butter\n- 300 g quorlings', 'meat pie'],
    ['Roast goose', '- 200 g flour\n- 100 g butter', 'roast poultry'],
    ['Roast loin of pork', '- 2 kg loin of pork', 'roast meat'],
    ['Saddle of mutton', '- 1 saddle of mutton', 'roast meat'],
    ['Roast hare', '- 1 hare', 'roast meat'],
    ['Sirloin of beef', '- 1 sirloin of beef', 'roast meat'],
    ['Breast of lamb', '- 1 kg breast of lamb', 'roast meat'],
    ['Lammrücken', '- 2 kg Lammrücken', 'roast meat'],
    ['Hühnerpastete', '- 1 Huhn\n- 500 g Mehl', 'meat pie'],
  ])('but %s is: %s', (title, list, kind) => {
    const receipt = read(title, list)
    expect(receipt.kind).toBe(kind)
    expect(receipt.cautions.map(({id}) => id)).toContain('meat-temperature')
  })

  it('nor is one whose method alone tells of the meat', () => {
    const list = '- 200 g flour\n- 100 g butter'
    expect(kindOf('Hen pie', list, 'Line a dish, lay in two fowls, and bake for 50 minutes.')).toBe('meat pie')
    expect(kindOf('Hen pie', list, 'Line a dish, lay in the birds, and bake for 50 minutes.')).toBe('meat pie')
  })
})
