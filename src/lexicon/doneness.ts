import {words} from './row.js'
import type {Doneness} from './schema.js'

type Centre = Doneness['centre']
const row = (id: string, phrases: string, means: string, centre?: Centre, source = 'memory', note?: string): Doneness => ({
  id,
  phrases: words(phrases),
  means,
  ...(centre === undefined ? {} : {centre}),
  source,
  ...(note === undefined ? {} : {note}),
})

const cake = {low: 95, high: 99}
const bread = {low: 93, high: 99}
const custard = {low: 77, high: 85}

/** How receipts say that a thing is done. Centre temperatures are common figures of the trade; the safe ones are USDA FSIS's. */
export const doneness: readonly Doneness[] = [
  // By a tool
  row(
    'straw-clean',
    'straw comes out clean, straw will come out clean, straw draws out clean, straw comes out dry, broom straw comes out clean, splinter comes out clean, splinter comes out dry, wisp comes out clean, broom corn comes out clean, straw through the middle, straw in the middle',
    'A straw stuck in the middle comes out with no batter on it.',
    cake,
    'common-practice',
  ),
  row(
    'skewer-clean',
    'skewer comes out clean, skewer comes out dry, skewer comes clean, skewer inserted, skewer will come out clean',
    'A skewer stuck in the middle comes out with no batter on it.',
    cake,
    'common-practice',
  ),
  row(
    'toothpick-clean',
    'toothpick comes out clean, toothpick inserted, tester comes out clean, cake tester comes out clean, tester inserted',
    'A wooden pick stuck in the middle comes out with no batter on it.',
    cake,
    'common-practice',
  ),
  row(
    'knife-clean',
    'knife comes out clean, knife comes out bright, knife will come out clean, knife comes out clear, knife is clean, knife blade comes out clean, knife come out clean, knife inserted',
    'A knife put in comes out clean and bright.',
    custard,
    'common-practice',
    'Said of custards as of cakes.',
  ),
  row(
    'few-crumbs',
    'few moist crumbs, moist crumbs, a few crumbs',
    'A skewer comes out with crumbs, not batter: done, and still moist.',
    {low: 88, high: 95},
  ),
  row(
    'fork-tender',
    'tender when pricked, fork tender, tender to a fork, fork goes in, fork will go in easily, tender when pierced, pierced with a fork, soft when pierced',
    'A fork goes in and comes out with no resistance.',
    {low: 90, high: 98},
  ),
  row(
    'straw-pierces',
    'straw will pierce, pierce them with a straw, straw will run through, straw will go through',
    'Soft enough that a straw goes through.',
    {low: 90, high: 98},
  ),

  // By touch
  row(
    'springs-back',
    'springs back, spring back, springs back when touched, springs to the touch, spring up when pressed, springy to the touch, elastic to the touch, rises again when pressed',
    'Pressed with a finger, the top comes up again.',
    cake,
    'common-practice',
  ),
  row(
    'firm',
    'firm to the touch, firm in the middle, firm in the centre, firm to touch, feels firm, quite firm, firm when touched, just firm',
    'The middle no longer gives way.',
    cake,
  ),
  row(
    'set',
    'until set, till set, just set, set in the middle, quite set, well set, till it sets, until it sets, is set, custard is set, nicely set, set in the centre, barely set',
    'It no longer runs when the dish is tilted.',
    custard,
    'common-practice',
  ),
  row(
    'wobble',
    'slight wobble, wobbles slightly, trembles, still wobbly, slightly wobbly, jiggles, quivers',
    'The edge has set and the middle shakes like jelly.',
    {low: 75, high: 80},
    'common-practice',
  ),
  row(
    'stiff',
    'till it is stiff, until stiff, stiff enough, till stiff, be stiff, till it be stiff',
    'Thick enough to stand.',
    custard,
  ),
  row('thick', 'till it thickens, until thick, till it be thick, until it thickens, as thick as', 'It has thickened.'),
  row(
    'crisp',
    'till crisp, until crisp, quite crisp, crisp and brown, very crisp, till they are crisp, till they be crisp, nice and crisp, hard and crisp',
    'Dry enough to snap.',
  ),
  row('hard', 'till they are hard, till hard, quite hard, till it be hard, dry and hard, until hard', 'Dry through.'),
  row(
    'dry',
    'till dry, quite dry, until dry, till they be dry, dry to the touch, till they are dry, dried through, perfectly dry',
    'No damp is left.',
  ),
  row('leathery', 'leathery, like leather, pliable', 'Dry enough to keep, and still bends: dried fruit.'),
  row(
    'tender',
    'until tender, till tender, quite tender, very tender, till they are tender, perfectly tender, till it be tender, until very tender',
    'Soft when bitten or pierced.',
    {low: 88, high: 98},
  ),
  row('soft', 'until soft, till soft, quite soft, till they are soft, very soft, till they be soft', 'Soft all through.', {
    low: 88,
    high: 98,
  }),
  row(
    'falls-from-bone',
    'falls from the bone, leave the bone, leaves the bone, fall from the bones, come from the bone, drop from the bone, slip from the bone',
    'Slow-cooked until the gristle has gone to jelly.',
    {low: 90, high: 96},
  ),

  // By sound and shrinking
  row(
    'hollow',
    'sounds hollow, sound hollow, hollow sound, hollow when tapped, hollow when rapped, hollow when knocked',
    'Rapped on the bottom the loaf rings hollow.',
    bread,
    'common-practice',
  ),
  row(
    'shrinks',
    'shrinks from the sides, shrink from the sides, leaves the sides, shrinks from the pan, shrunk from the sides, shrinking from the sides, pulls away from the sides, comes away from the sides, comes away from the edge, pull away from the sides, leave the tin, shrinks from the tin, part from the sides, parts from the sides',
    'The edge has drawn away from the tin.',
    cake,
    'common-practice',
  ),
  row(
    'no-singing',
    'ceases to sing, stopped singing, no longer sings, stops hissing, ceases to hiss, no hissing',
    'Held to the ear it no longer hisses: the water is out of the crumb.',
    cake,
  ),
  row(
    'light-in-hand',
    'light in the hand, feels light, light when lifted',
    'It has lost the water it should: a loaf weighs about an eighth less than its dough.',
    bread,
    'common-practice',
  ),

  // By colour
  row(
    'pale',
    'without colouring, not to colour, without browning, not suffered to brown, pale, not to take colour, not to let them colour, without colour, take no colour, not brown',
    'Done before it takes colour.',
  ),
  row(
    'straw-coloured',
    'straw colour, straw coloured, pale straw colour, pale yellow, light straw colour, faintly coloured, pale gold, lightly coloured, slightly coloured, cream coloured',
    'The first tinge of colour.',
  ),
  row(
    'light-brown',
    'light brown, pale brown, delicate brown, lightly browned, slightly browned, a little brown, lightly brown, delicately browned, very light brown',
    'A light even brown.',
    undefined,
    'common-practice',
  ),
  row(
    'golden',
    'golden brown, golden, gold colour, fine yellow, golden colour, yellow brown, deep golden, rich golden brown',
    'The colour of a good crust.',
    undefined,
    'common-practice',
  ),
  row(
    'brown',
    'nicely browned, nice brown, till brown, until brown, fine brown, well browned, nicely brown, browned, a good brown, brown on the top, brown on both sides, a bright brown, brown all over, good colour, nice colour, fine colour, rich brown, handsomely browned, till it is brown, till they are brown, well coloured, good color',
    'Brown all over.',
    undefined,
    'common-practice',
  ),
  row(
    'dark-brown',
    'dark brown, deep brown, very brown, well baked, high brown, high coloured, dark crust, rich dark brown',
    'A dark crust: a long bake in great heat.',
  ),
  row(
    'bubbling',
    'bubbling, bubbles, bubbling hot, bubbles through, bubbling in the middle, juices bubble, juice bubbles, boils up',
    'The filling has boiled through the middle.',
    {low: 96, high: 101},
    'common-practice',
  ),
  row(
    'risen',
    'well risen, risen and brown, puffed, well puffed, puffed up, risen high, risen well, nicely risen, raised, well raised',
    'Risen to its full height.',
  ),
  row(
    'crust-formed',
    'crust is formed, crust formed, crust is hard, crust is brown, crust is done, crust is baked, crust is crisp, hard crust, crust is firm, crust is well baked',
    'The crust has set.',
  ),
  row(
    'top-cracks',
    'cracks on the top, crack on top, cracked on top, cracks on top, crackled, crack across the top',
    'The crust has set before the crumb stopped rising: usual in loaf cakes and gingerbread nuts.',
  ),

  // In so many words
  row(
    'done',
    'till done, until done, till it is done, till enough, until enough, till it is enough, till they are enough, be enough, is enough, till they are done, till thoroughly done, done through, till it be enough, when enough, when done, is done, are done, till baked, until baked, baked through, thoroughly baked, well done, quite done, done enough',
    'As the cook judges.',
  ),

  // By thermometer
  row(
    'thermometer-bread',
    'internal temperature, inside temperature, core temperature, reaches 200, reads 200, reads 205, reads 95, reads 96',
    'Measured in the middle.',
    bread,
    'common-practice',
  ),
  row(
    'safe-poultry',
    'juices run clear, juice runs clear, no pink, no longer pink, juices are clear, runs clear',
    'The juice from the thickest part is clear; a thermometer should read 74 °C (165 °F).',
    {low: 74, high: 85},
    'usda-fsis-temps',
    'Clear juice alone is no proof: use a thermometer.',
  ),
  row(
    'fish-flakes',
    'flakes easily, flake easily, flakes from the bone, flakes with a fork, leaves the bones, flesh flakes',
    'The flesh is opaque and parts in flakes; a thermometer should read 63 °C (145 °F).',
    {low: 63, high: 70},
    'usda-fsis-temps',
  ),
]
