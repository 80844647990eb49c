import {words} from './row.js'
import type {FleshWord} from './schema.js'

/** What of meat, poultry and fish is not raw, what is called by their names and is none, and what is cut up. Common practice, no source. */
export const fleshWords: readonly FleshWord[] = [
  {
    id: 'cured',
    use: 'cured',
    words: words('bacon, ham, salted pork, tongue, anchovy, blood, salt cod'),
    source: 'common-practice',
    note: 'a seasoning or topping of bread, eggs and beans, or bought cooked',
  },
  {
    id: 'mock',
    use: 'mock',
    words: words('mock, mocked, falscher, falsche, falsches, scotch woodcock, welsh rabbit, rabbit welsh'),
    source: 'common-practice',
    note: 'mock goose may be a leg of pork or lentils: what goes in tells',
  },
  {
    id: 'meatless',
    use: 'meatless',
    words: words(
      'vegetarian, vegan, veggie, meatless, meat-free, without meat, plant-based, soya, soy, tofu, seitan, tempeh, fleischlos, fleischlose, fleischloser, ohne fleisch, vegetarisch, vegetarische, vegetarischer, vegetarisches, vegan, vegane, veganer, veganes',
    ),
    source: 'common-practice',
  },
  {
    id: 'other things',
    use: 'other',
    words: words(
      'light, easter lamb, osterlamm, blood orange, lamb’s lettuce, lamb’s wool, heart of palm, hearts of palm, kidney bean, kidney beans, oyster mushroom, oyster mushrooms, oyster plant, duck egg, duck eggs, goose egg, goose eggs, hen egg, hen eggs, beef tomato, beef tomatoes, turkey red, pigeon peas, crab apple, crab apples, crabapple, crabapples, hen of the woods, chicken of the woods, oxtongue, steak seasoning, goat cheese, goat’s cheese, pig nut, pig nuts, horse-radish',
    ),
    source: 'common-practice',
  },
  {
    id: 'cut up',
    use: 'cut up',
    words: words(
      'cut, pieces, diced, dice, cubed, cubes, chopped, minced, mince, ground, sliced, slices, chop, chops, cutlet, cutlets, steak, steaks, fillets, thigh, thighs, drumstick, drumsticks, wing, wings, quarters, quartered, jointed, halved, halves, portions, strips, stewing, sausage, sausages, breasts, würfel, gewürfelt, stücke, stücken, scheiben, geschnitten, filets, koteletts, schenkel, flügel',
    ),
    source: 'common-practice',
    note: 'does not go into the oven whole',
  },
  {
    id: 'cuts',
    use: 'cuts',
    words: words('cut, joint, quarter, divide, chop, dice, slice, disjoint'),
    source: 'common-practice',
  },
  {
    id: 'outside',
    use: 'outside',
    words: words(
      'skin, skins, rind, fat, crackling, crust, membrane, fell, head, heads, tail, tails, fins, feet, neck, slits, gashes, schwarte, haut, fett, fettschicht, kopf, kruste',
    ),
    source: 'common-practice',
    note: 'what is cut of it is on its outside, or comes off: it goes in whole',
  },
  {
    id: 'scored',
    use: 'scored',
    words: words(
      'diamonds, diamond, diamond-shaped, diamondwise, lozenges, lozenge, slits, gashes, criss-cross, crisscross, crosswise, places, rauten, raute, rautenförmig, karos, kreuzweise, rautenmuster',
    ),
    source: 'common-practice',
    note: 'its outside is cut so, to crisp or to take cloves: it goes in whole',
  },
  {
    id: 'told of',
    use: 'told of',
    words: words(
      'meat, meats, flesh, bird, birds, joint, joints, mince, minced, fillet, fillets, carcass, giblets, bones, boned, truss, trussed, butcher, fleisch, fleischstücke, hack, braten, vögel, knochen',
    ),
    source: 'common-practice',
    note: 'a text that has one may tell of the meat of its title without naming it again',
  },
  {
    id: 'puts in',
    use: 'puts in',
    words: words(
      'put, lay, laid, add, added, place, placed, stuff, fill, mix, mixed, stir, work, knead, fold, roll, cut, joint, bone, mince, chop, dice, slice, line, layer, press, spread, arrange, pack, wrap, strew, season, truss, geben, gib, legen, lege, zerlegen, zerlege, zerteilen, schneiden, schneide, füllen, fülle, nehmen, nimm, würfeln, hacken, tun',
    ),
    source: 'common-practice',
    note: 'before the meat that goes in: “lay in the chicken”',
  },
  {
    id: 'puts in last',
    use: 'puts in last',
    words: words(
      'zerlegen, zerteilen, schneiden, geben, legen, füllen, einfüllen, einlegen, hineinlegen, hineingeben, zugeben, dazugeben, zufügen, hinzufügen, untermischen, unterheben, mischen, vermischen, vermengen, untermengen, würfeln, hacken, entbeinen, wickeln, einwickeln, verteilen, kneten, unterkneten, schichten, würzen, tun, gegeben, gelegt, gefüllt, geschnitten, zerlegt',
    ),
    source: 'common-practice',
    note: 'behind the meat that goes in: “das Huhn in den Teig legen”',
  },
  {
    id: 'beside',
    use: 'beside',
    words: words(
      'serve, serves, served, serving, eat, eaten, garnish, like, as, for, instead, without, accompany, accompanies, servieren, serviert, reichen, gereicht, essen, passt, passen, zu, zum, wie, statt, ohne, für',
    ),
    source: 'common-practice',
    note: 'the meat behind it is another dish’s, or none',
  },
  {
    id: 'of it',
    use: 'of it',
    words: words(
      'fat, fats, stock, broth, tea, gravy, jelly, glaze, juice, juices, liquor, sauce, essence, extract, dripping, thermometer, kettle, slice, knife, chopper, grinder, mincer, shape, size, form, skin, shell, shells, bones, bone, fett, brühe, saft, soße, haut, form',
    ),
    source: 'common-practice',
    note: 'beside the name of a meat: what is got of it, what it is worked with, what is shaped like it',
  },
  {
    id: 'no flesh',
    use: 'no flesh',
    words: words(
      'stock, broth, bouillon, consomme, cube, cubes, stockpot, powder, granules, concentrate, seasoning, rub, spice, marinade, flavour, flavouring, flavor, flavoring, fat, suet, dripping, lard, tallow, oil, gelatine, gelatin, aspic, jelly, glaze, gravy, juice, liquor, sauce, essence, extract, soup, paste, pate, pâté, terrine, rillettes, confit, jerky, biltong, pastrami, corned, salami, crackling, scratchings, crisps, crackers, pie, egg, eggs, milk, cheese, butter, tea, food, wool, thermometer, kettle, knife, dung, weed, plant, fond, brühe, suppe, bouillon, soße, sosse, sauce, fett, schmalz, talg, öl, ei, eier, eigelb, wurst, würste, würstchen, pastete, pasteten, sülze, würze, gewürz, würzer, salz, ohr, ohren, käse, schinken',
    ),
    source: 'common-practice',
    note: 'got of it, cooked and bought so, or called by it',
  },
  {
    id: 'cooked',
    use: 'cooked',
    words: words(
      'cooked, precooked, boiled, poached, stewed, braised, steamed, gekocht, gekochte, gekochter, gekochtes, gekochten, gegart, gegarte, gegarter, gegartes, gegarten, geschmort, geschmorte, geschmortes, geschmorter, gedünstet, gedünstete, gedünsteter, pochiert, pochierter',
    ),
    source: 'common-practice',
  },
  {
    id: 'roasted',
    use: 'roasted',
    words: words('roasted, gebraten, gebratene, gebratener, gebratenes, gebratenen'),
    source: 'common-practice',
    note: 'of a roast, what the receipt does itself',
  },
  {
    id: 'cooked before',
    use: 'cooked before',
    words: words('roast, cold, leftover, kalt, kalte, kalter, kaltes, kalten, übriges, übriger'),
    source: 'common-practice',
    note: 'only before the meat: “cold chicken” is cooked, and “chicken, cold” need not be',
  },
  {
    id: 'smoked',
    use: 'smoked',
    words: words('smoked, geräuchert, geräucherte, geräucherter, geräuchertes, geräucherten, räucherlachs'),
    source: 'common-practice',
    note: 'of fish that is eaten so; haddock and cod are cooked first',
  },
  {id: 'tinned', use: 'tinned', words: words('tinned, canned, dose, dosen'), source: 'common-practice'},
  {
    id: 'half',
    use: 'half',
    words: words(
      'half, partly, par, nearly, almost, lightly, slightly, barely, under, un, not, never, halb, fast, leicht, nicht',
    ),
    source: 'common-practice',
    note: 'before a word for cooked: it is not done',
  },
  {
    id: 'raw',
    use: 'raw',
    words: words('raw, uncooked, rare, underdone, parboiled, parcooked, roh, rohe, roher, rohes, rohen, ungekocht, blutig'),
    source: 'common-practice',
  },
  {
    id: 'not yet',
    use: 'not yet',
    words: words('to, be, been, is, are, until, till, when, before, if, then, with, bis, wenn, wird, werden, mit, soll'),
    source: 'common-practice',
    note: 'between the meat and a word for cooked: it is cooked later, or another thing is',
  },
]
