import {words} from './row.js'
import type {VesselRow} from './schema.js'

/** Whole millimetres of inches: vessels were sold by the inch. */
const inch = (n: number): number => Math.round(n * 25.4) / 1000

type Sizes = Partial<Pick<VesselRow, 'diameter' | 'length' | 'width' | 'height'>>
const round = (diameter: number, height: number): Sizes => ({diameter: inch(diameter), height: inch(height)})
const box = (length: number, width: number, height: number): Sizes => ({
  length: inch(length),
  width: inch(width),
  height: inch(height),
})

const row = (
  id: string,
  spellings: string,
  shape: VesselRow['shape'],
  sizes: Sizes = {},
  source = 'memory',
  note?: string,
): VesselRow => ({id, spellings: words(spellings), shape, ...sizes, source, ...(note === undefined ? {} : {note})})

/**
 * Things to bake in, with the inside measures they are taken to have where a receipt names them without a size. `shape` none: named in
 * receipts, but says nothing of size. Tins and pans of today as US and British shops sell them; period ones from memory.
 */
export const vessels: readonly VesselRow[] = [
  // Bread
  row(
    'loaf-pan',
    'loaf pan, loaf tin, bread pan, bread tin, bread tins, pan loaf, oblong tin, brick pan, brick loaf pan, kastenform, kastenformen',
    'loaf',
    box(9, 5, 3),
    'common-practice',
  ),
  row(
    'small-loaf-pan',
    'small loaf pan, small loaf tin, small bread pan, 1 lb loaf tin, 1 lb tin, pound loaf tin',
    'loaf',
    box(8, 4, 2.5),
    'common-practice',
    'Also sold as 8 1/2 × 4 1/2 in.',
  ),
  row(
    'two-pound-loaf-tin',
    '2 lb loaf tin, 2 lb tin, two pound loaf tin, large loaf tin, 900 g loaf tin, quartern tin, large bread tin',
    'loaf',
    box(9, 5, 3),
    'common-practice',
  ),
  row('half-quartern-tin', 'half quartern tin, two pound tin, half quartern', 'loaf', box(7.5, 4.5, 4), 'memory'),
  row(
    'sandwich-loaf-tin',
    'pullman pan, pullman tin, sandwich loaf tin, lidded loaf tin, covered tin',
    'loaf',
    box(13, 4, 4),
    'memory',
  ),
  row(
    'free-standing-loaf',
    'free standing loaf, hearth loaf, on the hearth, on the floor of the oven, oven floor, on the bricks, oven bottom, cob, boule, cottage loaf',
    'free-standing',
    {diameter: 0.24, height: 0.1},
    'common-practice',
  ),
  row(
    'household-loaf',
    'four pound loaf, quartern loaf, peck loaf, great loaf',
    'free-standing',
    {diameter: 0.3, height: 0.13},
    'memory',
    'A quartern loaf weighs about four pounds.',
  ),
  row(
    'banneton',
    'banneton, proving basket, proofing basket, straw basket, bread basket, wicker basket',
    'free-standing',
    {diameter: 0.24, height: 0.1},
    'common-practice',
    'The loaf is turned out of it on to the floor.',
  ),
  row(
    'oak-leaves',
    'oak leaves, cabbage leaves, cabbage leaf, leaves',
    'none',
    {},
    'memory',
    'Laid under loaves on the bare floor.',
  ),

  // Round cake tins
  row(
    'cake-tin',
    'cake tin, cake pan, round tin, round pan, cake mould, cake mold, round cake tin',
    'round',
    round(8, 3),
    'common-practice',
  ),
  row(
    'layer-pan',
    'layer pan, layer cake pan, sandwich tin, sponge tin, shallow round tin, victoria sandwich tin, jelly cake pan, jelly cake tin, washington pie plate',
    'round',
    round(8, 1.5),
    'common-practice',
  ),
  row(
    'spring-form',
    'springform, spring form, springform tin, springform pan, loose bottomed tin, loose bottom tin, springclip tin',
    'round',
    round(9, 2.5),
    'common-practice',
  ),
  row('deep-cake-tin', 'deep cake tin, deep round tin, rich fruit cake tin, deep tin', 'round', round(9, 3.5), 'common-practice'),
  row(
    'cake-hoop',
    'hoop, cake hoop, wooden hoop, tin hoop, garth, paper hoop, cake ring',
    'round',
    round(10, 4),
    'memory',
    'A band without a bottom, set on a papered sheet; large cakes to 1850.',
  ),
  row('small-hoop', 'small hoop, small hoops, little hoops, queen cake hoops', 'round', round(3, 1.5), 'memory'),
  row('tube-pan', 'tube pan, angel cake tin, angel food pan, tube tin', 'round', round(10, 4), 'common-practice'),
  row(
    'turks-head',
    'turk’s head, turban mould, turban mold, gugelhupf mould, kugelhopf tin, bundt pan, bundt tin, turban, tin mould, gugelhupfform, napfkuchenform',
    'round',
    round(9, 4),
    'memory',
  ),
  row(
    'savoy-mould',
    'savoy mould, sponge mould, sponge cake mould, copper mould, fluted mould, tall mould, jelly mould, mould, mold, moulds, molds, melon mould',
    'round',
    round(6, 5),
    'memory',
  ),
  row('ring-mould', 'ring mould, ring mold, border mould, ring tin, savarin mould, savarin tin', 'round', round(9, 2), 'memory'),

  // Square and oblong
  row(
    'square-pan',
    'square pan, square tin, square cake tin, brownie tin, brownie pan',
    'square',
    box(9, 9, 2),
    'common-practice',
  ),
  row(
    'small-square-pan',
    'small square pan, small square tin, 8 inch square pan, 8 inch square tin',
    'square',
    box(8, 8, 2),
    'common-practice',
  ),
  row(
    'oblong-pan',
    'oblong pan, rectangular pan, rectangular tin, sheet cake pan, traybake tin, tray bake tin',
    'oblong',
    box(13, 9, 2),
    'common-practice',
  ),
  row(
    'dripping-pan',
    'dripping pan, dripping tin, roasting tin, roasting pan, baking pan, meat tin, bake pan',
    'oblong',
    box(14, 10, 2.5),
    'memory',
  ),
  row(
    'swiss-roll-tin',
    'swiss roll tin, jelly roll pan, jelly roll tin',
    'oblong',
    box(13, 9, 0.75),
    'common-practice',
    'The US jelly-roll pan is 15 × 10 × 1 in.',
  ),
  row(
    'gingerbread-pan',
    'gingerbread pan, gingerbread tin, shallow pan, shallow tin, flat tin, long pan, long tin',
    'oblong',
    box(11, 7, 1.5),
    'memory',
  ),
  row('slab-tin', 'slab tin, slab cake tin', 'square', box(10, 10, 3), 'memory'),
  row(
    'lamington-tin',
    'lamington tin, slice tin, slice pan',
    'oblong',
    box(12, 8, 1.25),
    'memory',
    'Australian: 30 × 20 × 3 cm.',
  ),

  // Sheets
  row(
    'baking-sheet',
    'baking sheet, baking sheets, cookie sheet, baking tray, oven tray, baking tin, baking tins, baking plate, baking plates, sheet pan, tin sheet, tin sheets, iron sheet, sheet iron, iron plate, iron plates, biscuit tin, flat tins',
    'sheet',
    {length: inch(16), width: inch(12)},
    'common-practice',
  ),
  row(
    'half-sheet',
    'half sheet pan, half sheet, rimmed baking sheet',
    'sheet',
    {length: inch(18), width: inch(13)},
    'common-practice',
  ),
  row(
    'papered-tin',
    'sheets of paper, sheet of paper, white paper, on papers, on paper, buttered paper, tin plates, tin plate, wafer paper, wafers, parchment',
    'sheet',
    {length: inch(16), width: inch(12)},
    'memory',
    'Small goods dropped on paper and slid in on it or on a plate.',
  ),
  row(
    'board',
    'board, wooden board, johnny cake board, bread board, plank',
    'sheet',
    {length: inch(16), width: inch(8)},
    'memory',
  ),
  row(
    'wire-rack',
    'wire rack, wire sieve, sieve, sieves, splints, hair sieve, lattice',
    'sheet',
    {diameter: inch(14)},
    'memory',
    'For fruit dried in the last of the heat.',
  ),
  row(
    'baking-stone',
    'baking stone, pizza stone, bakestone, bakstone, slate, tile, oven tile',
    'sheet',
    {length: inch(15), width: inch(14)},
    'common-practice',
  ),

  // Small tins
  row(
    'patty-pan',
    'patty pan, patty pans, patty tin, patty tins, pattypans, pattypan, bun tin, bun tins, tartlet tin, tartlet tins, tartlet pans, tart pan, tart pans, petty pans, pettypans, patty dishes, little tins, small tins, small pans, little pans',
    'sheet',
    {length: inch(14), width: inch(10)},
    'memory',
    'A dozen stand in the room of one sheet.',
  ),
  row(
    'muffin-tin',
    'muffin tin, muffin pan, muffin tins, muffin pans, cupcake tin, cupcake pan, gem pan, gem pans, gem irons, popover pan, roll pan, roll pans',
    'sheet',
    {length: inch(14), width: inch(11)},
    'common-practice',
  ),
  row('muffin-ring', 'muffin rings, muffin ring, crumpet rings, crumpet ring, rings', 'round', round(3.5, 1), 'memory'),
  row(
    'custard-cup',
    'custard cup, custard cups, ramekin, ramekins, cup, small cups, tea cups, teacups, dariole, dariole mould, dariole moulds, popover cups, cocotte',
    'round',
    round(3.5, 2),
    'common-practice',
  ),
  row(
    'heart-tin',
    'heart tins, queen cake tins, queen cake pans, queens cake pans, shells, scallop shells, scallop shell, saucers, fancy tins, fancy moulds',
    'sheet',
    {length: inch(14), width: inch(10)},
    'memory',
  ),
  row(
    'brioche-tin',
    'brioche tin, brioche mould, fluted tin, flan ring, flan tin, quiche tin, quiche dish, tart tin',
    'round',
    round(9, 1.25),
    'common-practice',
  ),

  // Pies
  row(
    'pie-plate',
    'pie plate, pie plates, pie pan, pie pans, pie tin, deep plate, deep plates, tart plate, tin pie plate, soup plate, soup plates, plate, plates, pudding plate',
    'pie plate',
    round(9, 1.5),
    'common-practice',
  ),
  row(
    'pie-dish',
    'pie dish, pie dishes, deep pie dish, deep pie plate, deep dish, tart dish, tart dishes, oval pie dish',
    'pie plate',
    round(9.5, 2.5),
    'memory',
    'British: oval, with a rim for the crust.',
  ),
  row(
    'patty-shell',
    'raised crust, standing crust, coffin, coffins, raised pie, hot water crust, pie mould, raised pie mould, game pie mould',
    'round',
    round(8, 4),
    'memory',
    'A crust that stands by itself: coffin to 1750.',
  ),
  row(
    'patty-small-pie',
    'mince pie tins, small pie tins, small pie dishes',
    'sheet',
    {length: inch(14), width: inch(10)},
    'memory',
  ),

  // Dishes for puddings
  row(
    'pudding-dish',
    'pudding dish, pudding dishes, pudding pan, buttered dish, baking dish, bake dish, earthen dish, dish, china dish, deep earthen dish, stoneware dish, gratin dish, stone dish, brown dish',
    'round',
    round(9, 3),
    'memory',
  ),
  row(
    'pudding-basin',
    'pudding basin, basin, pudding bowl, bowl, pint basin, quart basin, earthen basin',
    'round',
    round(7, 4),
    'memory',
    'Mostly boiled or steamed in.',
  ),
  row(
    'souffle-dish',
    'souffle dish, souffle case, souffle tin, case, paper case, paper cases',
    'round',
    round(7, 4),
    'common-practice',
  ),
  row(
    'earthen-pan',
    'earthen pan, earthenware pan, milk pan, brown pan, earthen vessel, earthen pudding pan, red earthen pan, glazed pan, stone pan, deep pan, deep earthen pan, pan',
    'round',
    round(10, 4),
    'memory',
    'Lead glazes: use a pan sold for food.',
  ),
  row('nappy', 'nappy, nappies, flat bottomed dish', 'round', round(8, 3), 'memory'),

  // Crocks and pots
  row(
    'bean-pot',
    'bean pot, bean pots, beanpot, bean crock, earthen bean pot',
    'crock',
    round(8, 7),
    'common-practice',
    'About three quarts.',
  ),
  row(
    'crock',
    'crock, crocks, stone crock, jar, stone jar, earthen jar, stew jar, jars, stoneware jar, hot pot, hot pot dish, deep jar',
    'crock',
    round(8, 8),
    'memory',
  ),
  row(
    'earthen-pot',
    'earthen pot, earthenware pot, pipkin, brown pot, stew pot, stewpot, pot, pots, venison pot, potting pot',
    'crock',
    round(8, 6),
    'memory',
  ),
  row(
    'potting-pot',
    'potting pots, potting jar, small pots, small jars, potted meat pots, marmalade pots',
    'crock',
    round(4, 4),
    'memory',
  ),
  row(
    'casserole',
    'casserole, casserole dish, cocotte pot, lidded pot, covered dish, covered pot, terrine',
    'crock',
    round(9, 4.5),
    'common-practice',
  ),
  row(
    'cast-iron-pot',
    'iron pot, cast iron pot, iron kettle, bake kettle, enamelled pot, dutch oven, camp oven, bread pot',
    'crock',
    round(10, 5),
    'common-practice',
    'Set inside the masonry oven it is a vessel like another; by itself over coals it is no oven phrase.',
  ),
  row(
    'skillet',
    'skillet, cast iron skillet, spider, iron skillet, ovenproof frying pan, frying pan',
    'round',
    round(10, 2),
    'common-practice',
  ),
  row('stewpan', 'stewpan, stew pan, saucepan, sauce pan', 'round', round(8, 4), 'memory'),
  row(
    'nut-roll-tin',
    'brown bread tin, boston brown bread tin, coffee tin, coffee can, brown bread mould, tall tin, pail, tin pail, lard pail',
    'crock',
    round(5, 7),
    'memory',
  ),
  row(
    'tin-kettle',
    'tin basin, tin pan, tin pans, tins, tin, pans, tin dish, square tins, round tins, cake tins, cake pans',
    'round',
    round(9, 2.5),
    'memory',
    'A plain tin of no stated size.',
  ),
  row('fish-dish', 'fish dish, fish kettle, oval dish, gratin, long dish', 'oblong', box(14, 9, 2.5), 'memory'),
  row('roasting-rack', 'trivet, rack, roasting rack', 'none', {}, 'memory'),
  row('pastry-case', 'paste in a dish, pastry case, tart ring, flan case', 'round', round(8, 1), 'common-practice'),
  row(
    'waffle-iron',
    'waffle iron, wafer irons, wafer iron, griddle, bakestone iron',
    'none',
    {},
    'memory',
    'Over the fire, not in the oven.',
  ),
  row('cloth', 'pudding cloth, pudding bag, bag, cloth', 'none', {}, 'memory', 'For boiling, not baking.'),
]
