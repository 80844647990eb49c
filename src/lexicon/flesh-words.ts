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
      'light, easter lamb, osterlamm, blood orange, lamb’s lettuce, lamb’s wool, heart of palm, hearts of palm, kidney bean, kidney beans, oyster mushroom, oyster mushrooms, oyster plant, duck egg, duck eggs, goose egg, goose eggs, hen egg, hen eggs, beef tomato, beef tomatoes, turkey red, pigeon peas',
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
]
