import {describe, expect, test} from 'vitest'
import {readReceipts} from '../src/receipt/read.js'

/**
 * Phrases of receipts with the reading a careful cook gives them. All are written for this test from knowledge of the wording of
 * 1650–1900 and of today's; the answers are by hand. Common practice, no source.
 *
 * An expectation is `low[-high] measure item`, `~ item` where no amount is given. An item agrees when its last word does.
 */
type Case = readonly [text: string, ...expected: string[]]

const words = (item: string): string[] =>
  item
    .toLowerCase()
    .split(/[\s-]+/)
    .map((w) => w.replace(/ies$/, 'y').replace(/s$/, '').replace('rind', 'peel'))

function agrees(expected: string, found: string): boolean {
  const want = words(expected.split(' of ')[0]!)
  const got = words(found.split(' of ')[0]!)
  return got.join('') === want.join('') || got[got.length - 1] === want[want.length - 1]
}

interface Want {
  low: number | null
  high: number | null
  measure: string
  item: string
}

const MEASURES = /^(size of an? \w+|weight of an egg|\w+) (.+)$/

function want(said: string): Want {
  if (said.startsWith('~ ')) return {low: null, high: null, measure: 'indefinite', item: said.slice(2)}
  const space = said.indexOf(' ')
  const numbers = said.slice(0, space).split('-')
  const value = (text: string): number => {
    const [whole, part] = text.includes('_') ? text.split('_') : ['0', text]
    const [n, d] = part!.split('/')
    return Number(whole) + Number(n) / Number(d ?? 1)
  }
  const [, measure, item] = MEASURES.exec(said.slice(space + 1))!
  const low = value(numbers[0]!)
  return {low, high: numbers[1] === undefined ? low : value(numbers[1]), measure: measure!, item: item!}
}

function check(source: string, expected: readonly string[]): void {
  const found = readReceipts(source, {file: 'test.md'}).receipts.flatMap((r) => r.ingredients)
  for (const one of found) expect(source.slice(one.start, one.end)).toBe(one.text)
  const said = found.map(
    (f) =>
      `${f.amount === null ? '~' : f.amount.low === f.amount.high ? f.amount.low : `${f.amount.low}-${f.amount.high}`} ${f.measure} ${f.item}`,
  )
  const wanted = expected.map(want)
  expect(found.length, `found: ${said.join('; ')}`).toBe(wanted.length)
  wanted.forEach((w, i) => {
    const f = found[i]!
    const place = `${expected[i]}: found ${said[i]}`
    expect(f.measure, place).toBe(w.measure)
    if (w.low === null) expect(f.amount, place).toBeNull()
    else {
      expect(f.amount?.low, place).toBeCloseTo(w.low, 9)
      expect(f.amount?.high, place).toBeCloseTo(w.high!, 9)
    }
    expect(agrees(w.item, f.item), place).toBe(true)
  })
}

const prose: readonly Case[] = [
  // Numbers in words
  ['Take two pounds of fine flour.', '2 pound flour'],
  ['Beat nine and twenty eggs very light.', '29 count egg'],
  ['Work in four-and-twenty yolks.', '24 count egg yolk'],
  ['Add a score of almonds, blanched.', '20 count almond'],
  ['Take half a dozen eggs.', '6 count egg'],
  ['Break in a dozen and a half of eggs.', '18 count egg'],
  ['Put to it two dozen large eggs.', '24 count egg'],
  ['Stir in a couple of eggs.', '2 count egg'],
  ['Take an hundred walnuts.', '100 count walnut'],
  ['Put in twenty-five cloves and a blade or two of mace.', '25 count clove', '1-2 blade mace'],
  // Mixed numbers
  ['Take a pound and a half of butter.', '3/2 pound butter'],
  ['Take two pounds and a half of flour.', '5/2 pound flour'],
  ['One pound and three quarters of currants.', '7/4 pound currant'],
  ['One and a half pounds of sugar.', '3/2 pound sugar'],
  ['One and one-half cups of molasses.', '3/2 cup molasses'],
  ['Two and a quarter pounds of raisins.', '9/4 pound raisin'],
  ['Two and half pounds of flour.', '5/2 pound flour'],
  ['Add 1-1/2 pint of milk.', '3/2 pint milk'],
  ['Add 1½ pint of milk.', '3/2 pint milk'],
  ['Add 1 1/2 lb. of sugar.', '3/2 pound sugar'],
  ['Three half pints of new milk.', '3/2 pint milk'],
  ['A quart and half a pint of cream.', '5/4 quart cream'],
  // The comma of much of Europe
  ['Add 1,5 kg rye flour and 0,125 l milk.', '3/2 kilogram rye flour', '1/8 litre milk'],
  ['Add 1,500 kg rye flour and 1,500 g butter.', '3/2 kilogram rye flour', '1500 gram butter'],
  ['Take 2,3 or 4 eggs.', '2-4 count egg'],
  // Parts
  ['A quarter of a pound of butter.', '1/4 pound butter'],
  ['Half a quarter of a pound of sugar.', '1/8 pound sugar'],
  ['Three quarters of a pound of suet.', '3/4 pound suet'],
  ['Three-fourths of a pound of suet.', '3/4 pound suet'],
  ['Two thirds of a cup of lard.', '2/3 cup lard'],
  ['One third of a teaspoonful of soda.', '1/3 teaspoon soda'],
  ['Half an ounce of nutmegs.', '1/2 ounce nutmeg'],
  ['Half a nutmeg grated.', '1/2 count nutmeg'],
  ['1/2 a lb. of raisins.', '1/2 pound raisin'],
  ['Quarter of a pound of ground rice.', '1/4 pound ground rice'],
  ['Half pint of cream.', '1/2 pint cream'],
  ['A half-pint of sack.', '1/2 pint sack'],
  ['An eighth of an ounce of saffron.', '1/8 ounce saffron'],
  // Ranges
  ['Six or eight eggs.', '6-8 count egg'],
  ['From four to five pounds of flour.', '4-5 pound flour'],
  ['Two or three spoonfuls of yeast.', '2-3 spoon yeast'],
  ['A dozen or fourteen eggs, well beaten.', '12-14 count egg'],
  ['Half a pint to a pint of milk.', '1/2-1 pint milk'],
  ['A pint, or a pint and a half, of water.', '1-3/2 pint water'],
  ['A spoonful or two of rose-water.', '1-2 spoon rose-water'],
  ['Add 3 to 4 oz. of candied peel.', '3-4 ounce peel'],
  ['Add an egg or two.', '1-2 count egg'],
  ['Three, four, or five eggs, as they are dear or cheap.', '3-5 count egg'],
  ['Six to eight ounces of butter', '6-8 ounce butter'],
  // Hedges
  ['About a pound of flour.', '1 pound flour'],
  ['Rather more than half a pint of milk.', '1/2 pint milk'],
  ['Not quite a quart of cream.', '1 quart cream'],
  ['A good pound of sugar.', '1 pound sugar'],
  ['A large tea-spoonful of ginger.', '1 teaspoon ginger'],
  ['A heaped tablespoonful of flour.', '1 tablespoon flour'],
  ['A small wineglassful of brandy.', '1 wineglass brandy'],
  ['A scant cup of butter.', '1 cup butter'],
  ['Nearly two quarts of milk.', '2 quart milk'],
  ['A full pint of yeast.', '1 pint yeast'],
  // Stacked
  ['A pound and five ounces of sugar.', '21/16 pound sugar'],
  ['2 lb. 4 oz. of flour.', '9/4 pound flour'],
  ['One pound and two ounces of fine flour', '9/8 pound flour'],
  // The same
  ['A pound of flour, the same of sugar, and half as much butter.', '1 pound flour', '1 pound sugar', '1/2 pound butter'],
  ['A quarter of a pound of butter, and an equal quantity of sugar.', '1/4 pound butter', '1/4 pound sugar'],
  ['Half a pound of currants, and as much sugar.', '1/2 pound currant', '1/2 pound sugar'],
  ['A pound of sugar and twice as much flour.', '1 pound sugar', '2 pound flour'],
  ['A tea-cup of cream and the same quantity of treacle.', '1 teacup cream', '1 teacup treacle'],
  ['A pint of flour and as much sugar as flour.', '1 pint flour', '1 pint sugar'],
  [
    'Two spoonfuls of orange-flower water, two of rose-water, and one of sack.',
    '2 spoon orange-flower water',
    '2 spoon rose-water',
    '1 spoon sack',
  ],
  ['Half an ounce of cinnamon, a quarter of mace, and a nutmeg.', '1/2 ounce cinnamon', '1/4 ounce mace', '1 count nutmeg'],
  // Each
  ['Half an ounce each of mace and nutmeg.', '1/2 ounce mace', '1/2 ounce nutmeg'],
  ['A pound each of currants, raisins, and sugar.', '1 pound currant', '1 pound raisin', '1 pound sugar'],
  ['Sugar and butter, half a pound each.', '1/2 pound sugar', '1/2 pound butter'],
  ['Cloves and mace, of each a quarter of an ounce.', '1/4 ounce clove', '1/4 ounce mace'],
  ['Two ounces of each of candied lemon and orange peel.', '2 ounce lemon-peel', '2 ounce orange rind'],
  // Weight and size of things
  [
    'Take the weight of six eggs in sugar and the weight of four in flour.',
    '6 weight of an egg sugar',
    '4 weight of an egg flour',
  ],
  ['Beat eight eggs, and put to them their weight in sugar.', '8 count egg', '8 weight of an egg sugar'],
  ['A piece of butter the size of an egg.', '1 size of an egg butter'],
  ['Add butter the size of a walnut.', '1 size of a walnut butter'],
  ['Put in a bit of butter as big as a nutmeg.', '1 size of a nutmeg butter'],
  ['A lump of butter about the bigness of a walnut.', '1 size of a walnut butter'],
  ['Butter half the size of an egg.', '1/2 size of an egg butter'],
  ["A piece of lard as large as a hen's egg.", '1 size of an egg lard'],
  ['Butter the size of two eggs.', '2 size of an egg butter'],
  // Parts of things
  ['The juice of two lemons.', '2 count lemon juice'],
  ['The grated rind and juice of a lemon.', '1 count lemon rind', '1 count lemon juice'],
  ['The whites of five eggs and yolks of three.', '5 count egg white', '3 count egg yolk'],
  ['Take the yelks of eight eggs and the whites of four, well beat.', '8 count egg yolk', '4 count egg white'],
  ['Put in sixteen yolks and eight whites.', '16 count egg yolk', '8 count egg white'],
  ['Beat ten eggs, leaving out half the whites.', '10 count egg'],
  ['Grate in the peel of half a lemon.', '1/2 count lemon rind'],
  ['The outside rind of two Seville oranges.', '2 count orange rind'],
  ['Half the rind of a lemon.', '1/2 count lemon rind'],
  ['the yolk of an egg to wash it over', '1 count egg yolk'],
  ['The crumb of a penny loaf, grated.', '1 count bread crumb'],
  // Indefinite
  ['Add a little salt.', '~ salt'],
  ['Season with nutmeg to your taste.', '~ nutmeg'],
  ['Sweeten it with sugar to your taste.', '~ sugar'],
  ['Put in some currants and a few raisins.', '~ currant', '~ raisin'],
  ['Wet it with milk enough to make a paste.', '~ milk'],
  ['Add as much flour as will make it stiff.', '~ flour'],
  ['A little salt and pepper.', '~ salt', '~ pepper'],
  ['Spice to your taste.', '~ spice'],
  ['A few drops of essence of lemon.', '~ essence of lemon'],
  // Steps that only say it again
  [
    'Rub half a pound of butter into a pound of flour; when the butter is rubbed in, wet the flour with a gill of milk.',
    '1/2 pound butter',
    '1 pound flour',
    '1 gill milk',
  ],
  ['One pound of sugar, ten eggs. Beat the eggs, add the sugar.', '1 pound sugar', '10 count egg'],
  ['Six eggs, the whites beaten apart, four spoonfuls of flour.', '6 count egg', '4 spoon flour'],
  // Vessels and greasing
  ['Butter the pan well, and flour your board. Bake a pint of cream.', '1 pint cream'],
  ['Bake it in a bread pan; take a pint of cream.', '1 pint cream'],
  ['Put a quart of milk in a stone jar, and set the cup on a plate.', '1 quart milk'],
  ['Line a pie dish. A pint of cream to fill the dish.', '1 pint cream'],
  // Times are no amounts
  ['Bake it two hours in a slow oven; take four eggs and boil them five minutes.', '4 count egg'],
  ['Let it stand half an hour, then add a gill of wine.', '1 gill wine'],
  ['It will serve six persons. Take a pound of rice.', '1 pound rice'],
  ['Roll it an inch thick, cut into 12 pieces. Use a quart of flour.', '1 quart flour'],
  // Alternatives and mixtures
  ['Half a pound of butter or lard.', '1/2 pound butter'],
  ['A pound of raisins, or currants.', '1 pound raisin'],
  ['A spoonful of mace and cinnamon.', '1 spoon cinnamon'],
  ['A pint of milk and water.', '1 pint water'],
  // Old spelling
  ['Take a jill of creame and two pounds of flower.', '1 gill cream', '2 pound flour'],
  ['Take foure egges and a quarter of a pound of fugar.', '4 count egg', '1/4 pound sugar'],
  ['Three fpoonfuls of rofe-water and half a pound of fuet.', '3 spoon rose-water', '1/2 pound suet'],
  ['Two pds. of raifins, ſtoned, and a pint of ſack.', '2 pound raisin', '1 pint sack'],
  ['A tea spoon of sallaratus and a pint of emptins.', '1 teaspoon saleratus', '1 pint emptins'],
  ['Three pints of Indian, sifted.', '3 pint indian meal'],
  ['A pottle of cream.', '1 pottle cream'],
  ['Half a peck of fine flower, and a pint of ale yest.', '1/2 peck flour', '1 pint yeast'],
  ['The Yolks of fix Eggs, a little falt, and fome fugar.', '6 count egg yolk', '~ salt', '~ sugar'],
  ['Put in half a mutchkin of cream.', '1/2 mutchkin cream'],
  ['a pennyworth of saffron', '1 pennyworth saffron'],
  // Line ends and hyphens
  ['Take a quar-\nter of a pound of but-\nter.', '1/4 pound butter'],
  ['Two table-\nspoonfuls of rose-\nwater.', '2 tablespoon rose-water'],
  ['Two pounds\nof fine\nflour.', '2 pound flour'],
  ['One *pound* of **sugar** &amp; a pint of milk.', '1 pound sugar', '1 pint milk'],
  ['&frac12; pound of sugar.', '1/2 pound sugar'],
  // Order
  ['Flour, two pounds; sugar, one pound; butter, half a pound.', '2 pound flour', '1 pound sugar', '1/2 pound butter'],
  ['Of sugar one pound, of almonds two ounces.', '1 pound sugar', '2 ounce almond'],
  ['To every pound of flour put two ounces of butter.', '1 pound flour', '2 ounce butter'],
  ['To each quart of milk allow four eggs.', '1 quart milk', '4 count egg'],
  ['A pound neat’s tongue, and a pound of apples.', "1 pound neat's tongue", '1 pound apple'],
  ['Four pounds flour, one pound butter, one do. sugar.', '4 pound flour', '1 pound butter', '1 pound sugar'],
  // Pieces
  ['A stick of cinnamon, a blade of mace, and a clove of garlic.', '1 stick cinnamon', '1 blade mace', '1 clove garlic'],
  ['A bunch of sweet herbs, and two sprigs of thyme.', '1 bunch herb', '2 sprig thyme'],
  ['A handful of parsley.', '1 handful parsley'],
  ['Three slices of stale bread.', '3 slice bread'],
  ['Two heads of celery and three bay leaves.', '2 head celery', '3 count bay leaf'],
  ['A glass of brandy and a wine-glass of wine.', '1 glass brandy', '1 wineglass wine'],
  ['Two tumblers of sifted sugar.', '2 tumbler sugar'],
  ['A saltspoonful of salt and a dessert-spoonful of mustard.', '1 saltspoon salt', '1 dessertspoon mustard'],
  ['A coffee-cup of sour milk, a breakfast-cupful of flour.', '1 coffeecup milk', '1 breakfastcup flour'],
  ['A leg of mutton and a round of beef.', '1 count leg of mutton', '1 count round of beef'],
  ['An onion, a carrot, and two turnips.', '1 count onion', '1 count carrot', '2 count turnip'],
  ['A bottle of port wine.', '1 bottle port'],
  // Compared with, left out
  ['Roll out the paste like bread dough, about as thick as an egg. Add a pint of milk.', '1 pint milk'],
  ['It does without eggs. Take a pint of milk.', '1 pint milk'],
  // Greasing, dusting and yields are not ingredients
  ['Take a pint of milk. Rub the pan with a little butter. Grease a tin with lard, and pour it in.', '1 pint milk'],
  ['A quart of flour will make two loaves of bread.', '1 quart flour'],
  ['Boil a pound of sugar till the syrup turns white.', '1 pound sugar'],
  ['Take six turnips, cut in the shape of a pear, and a pint of cream.', '6 count turnip', '1 pint cream'],
  // Amounts that take two steps
  ['Put it to one and a quarter of a pound of flour.', '1_1/4 pound flour'],
  ['Take 7 lbs. of a brisket of beef, and an onion.', '7 pound brisket of beef', '1 count onion'],
  ['A piece of butter the size of a nut, and two eggs.', '1 size of a nut butter', '2 count egg'],
  // Written unseen, in the manner of 1669, 1824, 1837 and 1879
  ['Take a pottle of fine flower, and four and twenty eggs.', '1 pottle flour', '24 count egg'],
  ['Take three quarts of new milk warm from the cow, and a pint of sack.', '3 quart milk', '1 pint sack'],
  ['Put to it as much sugar as will sweeten it, and a grain or two of ambergreece.', '~ sugar', '1-2 grain ambergreece'],
  ['Take two pound of raisins of the sun, stoned, and as many currants.', '2 pound raisin', '2 pound currant'],
  ['Season it with half a quarter of an ounce of mace.', '1/8 ounce mace'],
  ['Take the yolks of sixteen eggs, and the whites of eight of them.', '16 count yolk', '8 count white'],
  ['Put in a spoonful or two of orange-flower water.', '1-2 spoon orange-flower water'],
  [
    'Take a peck of fine flour, three pounds of butter, and a pint and a half of ale-yest.',
    '1 peck flour',
    '3 pound butter',
    '1_1/2 pint yeast',
  ],
  [
    'Wash half a pound of rice, boil it in three pints of milk with a stick of cinnamon.',
    '1/2 pound rice',
    '3 pint milk',
    '1 stick cinnamon',
  ],
  [
    'Rub six ounces of butter into two pounds of flour, with a table-spoonful of brown sugar.',
    '6 ounce butter',
    '2 pound flour',
    '1 tablespoon sugar',
  ],
  [
    'Beat ten eggs very light, and mix them with a pound of sugar and three quarters of a pound of flour.',
    '10 count egg',
    '1 pound sugar',
    '3/4 pound flour',
  ],
  [
    'Add a large wine-glass of mixed wine and brandy, and a tea-spoonful of mixed spice.',
    '1 wineglass wine and brandy',
    '1 teaspoon spice',
  ],
  ['Grate two large cocoa-nuts, and add the juice of three limes.', '2 count coconut', '3 count lime juice'],
  [
    'Stir in, gradually, two pounds of sifted flour and a small tea-spoonful of pearl-ash dissolved in a little vinegar.',
    '2 pound flour',
    '1 teaspoon pearl-ash',
    '~ vinegar',
  ],
  ['Take twelve fine large pippins, and their weight in sugar.', '12 count pippin', '~ sugar'],
]

const lists: readonly Case[] = [
  ['- 2 cups (250 g) plain flour, sifted', '2 cup flour'],
  ['- 250g/9oz caster sugar', '250 gram sugar'],
  ['- 1 (14-oz) can condensed milk', '14 ounce condensed milk'],
  ['- 2 x 400 g tins chopped tomatoes', '800 gram tomato'],
  ['- juice of 1/2 lemon', '1/2 count lemon juice'],
  ['- zest and juice of 2 oranges', '2 count orange rind', '2 count orange juice'],
  ['- 1 stick unsalted butter, softened', '1 stick butter'],
  ['- 2 tbsp olive oil', '2 tablespoon oil'],
  ['- 1½ tsp baking powder', '3/2 teaspoon baking powder'],
  ['- 2 dl milk', '2 decilitre milk'],
  ['- 300 ml double cream', '300 millilitre cream'],
  ['- 1 kg strong white bread flour', '1 kilogram bread flour'],
  ['- 3 large eggs, beaten', '3 count egg'],
  ['- 4 egg yolks', '4 count egg yolk'],
  ['- a pinch of salt', '1 pinch salt'],
  ['- pinch of salt', '1 pinch salt'],
  ['- salt and freshly ground black pepper', '~ salt', '~ pepper'],
  ['- 2 T sugar', '2 tablespoon sugar'],
  ['- 1 t vanilla extract', '1 teaspoon vanilla extract'],
  ['- 1 c. brown sugar, packed', '1 cup sugar'],
  ['- 1 cup plus 2 tablespoons all-purpose flour', '9/8 cup flour'],
  ['- 2–3 garlic cloves, crushed', '2-3 count garlic'],
  ['- 1 lb 4 oz self-raising flour', '5/4 pound flour'],
  ['- 2 lb. currants', '2 pound currant'],
  ['- 7 g sachet fast-action yeast', '7 gram yeast'],
  ['- 1 1/4 cups sugar', '5/4 cup sugar'],
  ['- butter, for greasing\n- 100 g butter', '~ butter', '100 gram butter'],
  ['- 2 ripe bananas, mashed', '2 count banana'],
  ['- 1 heaped tbsp cocoa powder', '1 tablespoon cocoa'],
  ['- 12 eggs\n- 1 pound sugar\n- 1 pound flour', '12 count egg', '1 pound sugar', '1 pound flour'],
  ['- 500 g flour\n- 10 g salt\n- 350 g water\n- 5 g yeast', '500 gram flour', '10 gram salt', '350 gram water', '5 gram yeast'],
  ['- zest of 1 lemon', '1 count lemon rind'],
  ['- 3/4 cup (1 1/2 sticks) butter', '3/4 cup butter'],
  ['- 1 lemon, zest and juice', '1 count lemon rind', '1 count lemon juice'],
  ['- 25 g piece ginger', '25 gram ginger'],
  ['- 1 cup walnuts or pecans', '1 cup walnut'],
  ['- Flour, 2 lb.', '2 pound flour'],
  ['- ½ cup each raisins and currants', '1/2 cup raisin', '1/2 cup currant'],
  ['| Ingredient | Amount |\n| --- | --- |\n| flour | 500 g |\n| butter | 4 oz |', '500 gram flour', '4 ounce butter'],
  ['| 2 cups | flour |\n| --- | --- |\n| 3 | eggs |', '2 cup flour', '3 count egg'],
  // Without the line under its head.
  ['| Flour | 500 g |\n|Butter|4 oz|\n  | gubbins | 60 g |  ', '500 gram flour', '4 ounce butter', '60 gram gubbin'],
  [
    'INGREDIENTS.--1/2 lb. of butter, 1/4 lb. of sugar, 3 eggs, the rind of 1 lemon, flour.',
    '1/2 pound butter',
    '1/4 pound sugar',
    '3 count egg',
    '1 count lemon rind',
    '~ flour',
  ],
  [
    'INGREDIENTS.—To every lb. of flour allow 2 oz. of lard, ditto of sugar, salt to taste.',
    '1 pound flour',
    '2 ounce lard',
    '2 ounce sugar',
    '~ salt',
  ],
  ['12. INGREDIENTS.--1 quart of milk, 6 eggs. _Mode_.--Boil the milk; add the 6 eggs.', '1 quart milk', '6 count egg'],
  [
    'INGREDIENTS.--3/4 lb. of currants, the same of raisins, 1 wineglassful of brandy, a pinch of salt.',
    '3/4 pound currant',
    '3/4 pound raisin',
    '1 wineglass brandy',
    '1 pinch salt',
  ],
  [
    'INGREDIENTS.--The yolks of 4 eggs, the weight of 2 in sugar, sifted flour.',
    '4 count egg yolk',
    '2 weight of an egg sugar',
    '~ flour',
  ],
  [
    'Two cups of sugar.\nOne cup of butter.\nFour cups of flour.\nSix eggs.',
    '2 cup sugar',
    '1 cup butter',
    '4 cup flour',
    '6 count egg',
  ],
  [
    '- 1 stick + 2 Tbsp butter\n- 1 cup minus 2 tablespoons flour\n- 1 stick cinnamon',
    '5/4 stick butter',
    '7/8 cup flour',
    '1 stick cinnamon',
  ],
  ['- 5 g dried yeast (or 15 g fresh yeast)\n- 200 ml milk (or water)', '5 gram yeast', '200 millilitre milk'],
  ['- 1 kg strong wholemeal bread flour\n- 20 g fine sea salt', '1 kilogram wholemeal flour', '20 gram salt'],
  [
    '    3 cups of sugar.\n    1 cup of butter.\n    1/2 cup of sour cream.\n    5 eggs, beaten separately.\n    1 small teaspoonful of soda.',
    '3 cup sugar',
    '1 cup butter',
    '1/2 cup cream',
    '5 count egg',
    '1 teaspoon soda',
  ],
  [
    '    1 pound flour.\n    3/4 pound butter.\n    12 eggs.\n    1 wine-glass brandy, 1 nutmeg.',
    '1 pound flour',
    '3/4 pound butter',
    '12 count egg',
    '1 wineglass brandy',
    '1 count nutmeg',
  ],
  [
    '    2 quarts flour.\n    1 tablespoonful lard, and same of butter.\n    1 teacup yeast.',
    '2 quart flour',
    '1 tablespoon lard',
    '1 tablespoon butter',
    '1 teacup yeast',
  ],
  [
    '    1 quart of flour, 4 eggs, 1 tablespoonful of melted butter, milk enough to make a thin batter.',
    '1 quart flour',
    '4 count egg',
    '1 tablespoon butter',
    '~ milk',
  ],
  ['    1 quart flour.\n    2 teaspoonfuls salt.\n    1 gill yeast.', '1 quart flour', '2 teaspoon salt', '1 gill yeast'],
]

const read: readonly Case[] = [
  // Stops of abbreviations end nothing.
  ['Take 1 qt. flour, 2 tea-sp. cream of tartar, 1 of soda.', '1 quart flour', '2 teaspoon cream of tartar', '1 teaspoon soda'],
  // An unknown measure is that of what follows it too, and the one before it is not.
  ['Take 1 qt. flour, 2 snips cream of tartar, 1 of soda.', '1 quart flour', '2 count cream of tartar', '1 count soda'],
  ['Take two ounces of mace, a little pepper, one of cloves.', '2 ounce mace', '~ pepper', '1 ounce clove'],
  ['Take a quart of flour, butter size of an egg, 2 eggs.', '1 quart flour', '1 size of an egg butter', '2 count egg'],
  // What only says how warm or thick another thing is goes into nothing.
  ['Mix a quart of flour with a pint of water, blood warm.', '1 quart flour', '1 pint water'],
  ['Mix a quart of flour with a pint of water blood-warm.', '1 quart flour', '1 pint water'],
  ['Mix a quart of flour with a pint of milk blood-warm.', '1 quart flour', '1 pint milk'],
  ['Beat three eggs in a little milk; make it the thickness of cream.', '3 count egg', '~ milk'],
]

describe('what is said of an entry, and what of another', () => {
  for (const [text, ...expected] of read) test(text, () => check(text, expected))
})

describe('phrases of old receipts in prose', () => {
  for (const [text, ...expected] of prose) test(text.replace(/\n/g, ' ⏎ '), () => check(text, expected))
})

describe('lists, old and modern', () => {
  for (const [text, ...expected] of lists) test(text.replace(/\n/g, ' ⏎ '), () => check(text, expected))
})

test('how much a receipt makes is no part of the dish, and a part that is counted is', () => {
  const parts = (line: string): readonly string[] =>
    readReceipts(`# Loaf\n\n${line}\n\n- 1 kg flour\n`, {file: 'loaf.md'}).receipts[0]!.ingredients.map(({part}) => part)
  for (const line of ['For one 2 kg loaf:', 'For 4 pizzas (30 cm)', 'For 6:']) expect(parts(line), line).toEqual([''])
  for (const line of ['For the crust:', 'For one crust:']) expect(parts(line), line).toEqual(['crust'])
})

test('the words that tell an amount by a thing’s size are kept, wherever they stand', () => {
  for (const said of ['butter the size of an egg', 'a little butter the size of an egg', 'the size of an egg of butter']) {
    const {receipts} = readReceipts(`# Cake\n\n- ${said}\n- 1 lb flour\n`, {file: 'cake.md'})
    const [butter] = receipts[0]!.ingredients
    expect(butter, said).toMatchObject({measure: 'size of an egg', measureText: 'the size of an egg'})
  }
})
