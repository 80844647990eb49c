import {words} from './row.js'
import type {Hedge, OvenWord} from './schema.js'

/** Whole °C of two °F: the published tables are in Fahrenheit. */
const fahrenheit = (low: number, high: number): {low: number; high: number} => ({
  low: Math.round(((low - 32) * 5) / 9),
  high: Math.round(((high - 32) * 5) / 9),
})

type Row = Omit<OvenWord, 'phrases'> & {readonly phrases: string}

/** Said of an oven, a heat or a bake. Before thermostats a word covers more than it does on a dial, so the span of years matters. */
const adjectives: readonly Row[] = [
  // Hot
  {
    id: 'hot',
    phrases: 'hot, hott, hote, heated, hotte',
    band: 'hot',
    celsius: fahrenheit(400, 500),
    to: 1900,
    source: 'common-practice',
    note: 'Hot goods in a brick oven.',
  },
  {id: 'hot-dial', phrases: 'hot', band: 'hot', celsius: fahrenheit(400, 450), from: 1901, source: 'oven-table'},
  {
    id: 'very-hot',
    phrases:
      'very hot, exceeding hot, exceedingly hot, extremely hot, red hot, scorching hot, scalding hot, screaming hot, fiery, fiery hot, blazing, raging hot, furnace hot',
    band: 'hot',
    celsius: fahrenheit(450, 500),
    source: 'oven-table',
  },
  {
    id: 'moderately-hot',
    phrases: 'moderately hot, moderate hot, medium hot, temperately hot, reasonably hot',
    band: 'hot',
    celsius: fahrenheit(375, 400),
    source: 'oven-table',
  },
  {
    id: 'fairly-hot',
    phrases: 'fairly hot, fairly quick, fairly brisk',
    band: 'hot',
    celsius: fahrenheit(375, 425),
    place: 'uk',
    from: 1860,
    source: 'memory',
  },
  {
    id: 'quick',
    phrases: 'quick, quicke, quickish, quickest',
    band: 'hot',
    celsius: fahrenheit(375, 450),
    source: 'memory',
    note: 'The usual word for pastry, buns and biscuits.',
  },
  {
    id: 'very-quick',
    phrases: 'very quick, exceedingly quick, extremely quick',
    band: 'hot',
    celsius: fahrenheit(425, 500),
    source: 'memory',
  },
  {
    id: 'brisk',
    phrases: 'brisk, briske, briskish, brifk, brifke',
    band: 'hot',
    celsius: fahrenheit(375, 450),
    to: 1920,
    source: 'memory',
  },
  {id: 'smart', phrases: 'smart, fmart', band: 'hot', celsius: fahrenheit(400, 450), to: 1900, source: 'memory'},
  {
    id: 'sharp',
    phrases: 'sharp, sharpe, fharp',
    band: 'hot',
    celsius: fahrenheit(400, 475),
    to: 1930,
    source: 'memory',
    note: 'A baker’s word.',
  },
  {
    id: 'fierce',
    phrases: 'fierce, fiercest, fiercer, furious, violent, raging, ardent, burning, scorching',
    band: 'hot',
    celsius: fahrenheit(450, 550),
    source: 'memory',
    note: 'Mostly a warning: hotter than the dish wants.',
  },
  {id: 'strong', phrases: 'strong, powerful', band: 'hot', celsius: fahrenheit(400, 475), source: 'memory'},
  {
    id: 'sound',
    phrases: 'sound, solid, bold, lively, keen, high, great',
    band: 'hot',
    celsius: fahrenheit(400, 475),
    place: 'uk',
    to: 1930,
    source: 'memory',
    note: 'Bakers’ words for an oven with much heat in the brick.',
  },
  {
    id: 'fast',
    phrases: 'fast, swift, rash, active, flash, snappy, searing, intense, rapid',
    band: 'hot',
    celsius: fahrenheit(400, 450),
    source: 'memory',
  },
  {
    id: 'well-heated',
    phrases: 'well heated, well het, thoroughly heated, thoroughly hot, well fired, full heat, full heated',
    band: 'hot',
    celsius: fahrenheit(400, 475),
    to: 1920,
    source: 'memory',
  },
  {
    id: 'good-heat',
    phrases: 'good, proper good, tolerably good, nice hot',
    band: 'hot',
    celsius: fahrenheit(350, 450),
    to: 1920,
    source: 'memory',
    note: '“A good oven” is a well-heated one.',
  },
  {
    id: 'hotter',
    phrases: 'hotter, hottest, quicker, brisker, sharper',
    band: 'hot',
    celsius: fahrenheit(425, 500),
    source: 'memory',
  },

  // Moderate
  {
    id: 'moderate',
    phrases: 'moderate, moderat, moderately heated, moderately warm, moderating',
    band: 'moderate',
    celsius: fahrenheit(325, 400),
    to: 1945,
    source: 'us-home-economics',
  },
  {id: 'moderate-dial', phrases: 'moderate', band: 'moderate', celsius: fahrenheit(350, 375), from: 1946, source: 'oven-table'},
  {
    id: 'moderately-quick',
    phrases: 'moderately quick, moderately brisk, moderate quick, moderately sharp, moderately fast',
    band: 'moderate',
    celsius: fahrenheit(360, 410),
    source: 'memory',
  },
  {
    id: 'moderately-slow',
    phrases: 'moderately slow, moderately cool, moderate slow',
    band: 'moderate',
    celsius: fahrenheit(325, 350),
    source: 'oven-table',
  },
  {
    id: 'very-moderate',
    phrases: 'very moderate, exceedingly moderate',
    band: 'slow',
    celsius: fahrenheit(300, 350),
    place: 'uk',
    source: 'memory',
    note: 'British: the cooler side of moderate.',
  },
  {
    id: 'medium',
    phrases:
      'medium, middling, middle, middling hot, middle hot, mid, mean, middling quick, neither hot nor cold, neither hot nor cool, neither too hot nor too cold, neither too hot nor too cool, neither too hot nor too slow, neither too quick nor too slow',
    band: 'moderate',
    celsius: fahrenheit(325, 400),
    source: 'memory',
  },
  {
    id: 'temperate',
    phrases: 'temperate, temperat, tempered, temperately heated',
    band: 'moderate',
    celsius: fahrenheit(325, 400),
    to: 1850,
    source: 'memory',
  },
  {
    id: 'soaking',
    phrases: 'soaking, foaking, soaky, well soaked, good soaking, soaking hot',
    band: 'moderate',
    celsius: fahrenheit(300, 375),
    to: 1930,
    source: 'memory',
    note: 'Steady heat that goes to the middle of a large cake.',
  },
  {
    id: 'steady',
    phrases: 'steady, fteady, even, equal, regular, uniform, constant',
    band: 'moderate',
    celsius: fahrenheit(325, 400),
    source: 'memory',
    note: 'Says that the heat should hold, not how high it is.',
  },
  {
    id: 'tolerable',
    phrases: 'tolerable, reasonable, indifferent, indifferently heated, ordinary, usual, common heat, proper, fair, right',
    band: 'moderate',
    celsius: fahrenheit(325, 425),
    source: 'memory',
    note: 'No more than “as usual”: a wide range.',
  },
  {
    id: 'pretty-hot',
    phrases: 'pretty hot, tolerably hot, tolerable hot, indifferent hot, indifferently hot, somewhat hot',
    band: 'hot',
    celsius: fahrenheit(375, 450),
    to: 1900,
    source: 'memory',
  },
  {
    id: 'pretty-quick',
    phrases:
      'pretty quick, tolerably quick, tolerably brisk, pretty brisk, pretty sharp, pretty smart, rather quick, rather brisk, rather hot',
    band: 'hot',
    celsius: fahrenheit(370, 430),
    to: 1920,
    source: 'memory',
  },

  // Slow
  {
    id: 'slow',
    phrases: 'slow, slowe, slower, slowest, slowish',
    band: 'slow',
    celsius: fahrenheit(250, 325),
    to: 1945,
    source: 'us-home-economics',
  },
  {
    id: 'slow-misread',
    phrases: 'flow',
    band: 'slow',
    celsius: fahrenheit(250, 325),
    source: 'us-home-economics',
    note: '“Flow” where a scan took long s for f.',
  },
  {id: 'slow-dial', phrases: 'slow', band: 'slow', celsius: fahrenheit(300, 325), from: 1946, source: 'oven-table'},
  {
    id: 'very-slow',
    phrases: 'very slow, exceedingly slow, extremely slow, particularly slow, very gentle, very low',
    band: 'slow',
    celsius: fahrenheit(225, 275),
    source: 'oven-table',
  },
  {
    id: 'rather-slow',
    phrases: 'rather slow, somewhat slow, pretty slow, tolerably slow, slow to moderate, slow moderate',
    band: 'slow',
    celsius: fahrenheit(275, 340),
    source: 'memory',
  },
  {
    id: 'slow-soaking',
    phrases: 'slow soaking, slow steady, gentle soaking',
    band: 'slow',
    celsius: fahrenheit(260, 325),
    to: 1930,
    source: 'memory',
  },
  {
    id: 'gentle',
    phrases:
      'gentle, gentill, gentile, gentel, gentler, easy, soft, softe, mild, milde, tender, temperate slow, light, lightly heated, kindly, quiet, mellow, sober, tepid, delicate',
    band: 'slow',
    celsius: fahrenheit(250, 325),
    source: 'memory',
  },
  {
    id: 'gently-heated',
    phrases: 'gently heated, gently warm, gently warmed, slightly heated, slackly heated, slowly heated',
    band: 'slow',
    celsius: fahrenheit(225, 300),
    source: 'memory',
  },
  {
    id: 'low',
    phrases: 'low, lowish, poor, dull, dead, weak, faint, feeble, lazy, reduced, subdued, decreasing',
    band: 'slow',
    celsius: fahrenheit(225, 300),
    source: 'memory',
  },
  {
    id: 'warm',
    phrases: 'warm, warme, warmish, warmed',
    band: 'slow',
    celsius: fahrenheit(200, 300),
    source: 'memory',
    note: 'Between the slack oven and the slow.',
  },

  // Slack
  {
    id: 'cool',
    phrases: 'cool, coole, coolish, cooler, coolest',
    band: 'slow',
    celsius: fahrenheit(200, 300),
    to: 1945,
    source: 'memory',
    note: 'A brick oven called cool is what is left late in the day.',
  },
  {id: 'cool-dial', phrases: 'cool', band: 'slack', celsius: fahrenheit(200, 250), from: 1946, source: 'oven-table'},
  {id: 'very-cool', phrases: 'very cool, exceedingly cool', band: 'slack', celsius: fahrenheit(175, 250), source: 'oven-table'},
  {
    id: 'slack',
    phrases: 'slack, slacke, slackish, slackest, slacker, slackened, slackening, slackly',
    band: 'slack',
    celsius: fahrenheit(175, 275),
    to: 1930,
    source: 'memory',
  },
  {
    id: 'slack-misread',
    phrases: 'flack',
    band: 'slack',
    celsius: fahrenheit(175, 275),
    source: 'memory',
    note: '“Flack” where a scan took long s for f.',
  },
  {id: 'very-slack', phrases: 'very slack', band: 'slack', celsius: fahrenheit(150, 225), source: 'memory'},
  {
    id: 'falling',
    phrases: 'falling, cooling, declining, sinking, dying, retained, spent, abating',
    band: 'slow',
    celsius: fahrenheit(200, 325),
    source: 'common-practice',
    note: 'A brick oven after the first goods: the heat goes on falling.',
  },
  {
    id: 'lukewarm',
    phrases:
      'lukewarm, luke warm, half cold, nearly cold, almost cold, scarcely warm, just warm, barely warm, slightly warm, blood warm',
    band: 'slack',
    celsius: fahrenheit(110, 200),
    source: 'memory',
  },
  {id: 'drying', phrases: 'drying', band: 'slack', celsius: fahrenheit(120, 180), source: 'memory'},
]

/** Carried for a word between "a" and "oven" that no row has: it says that there is a heat, not which. */
const unknowns: readonly Row[] = [
  {
    id: 'unknown-heat',
    phrases: 'unknown heat',
    band: 'moderate',
    celsius: fahrenheit(200, 500),
    source: 'memory',
    note: 'From the slack oven to the hot: state it in the front matter.',
  },
]

/** Said of the way of baking. */
const adverbs: readonly Row[] = [
  {
    id: 'bake-quickly',
    use: 'adverb',
    phrases: 'quickly, quick, quicke, quicker, briskly, brisk, speedily, fast, smartly, smart, sharply, sharp, rapidly, hastily',
    band: 'hot',
    celsius: fahrenheit(375, 450),
    source: 'memory',
  },
  {id: 'bake-hot', use: 'adverb', phrases: 'hot, hotly', band: 'hot', celsius: fahrenheit(400, 475), source: 'memory'},
  {
    id: 'bake-moderately',
    use: 'adverb',
    phrases: 'moderately, moderate, temperately, steadily, evenly, soakingly, soberly',
    band: 'moderate',
    celsius: fahrenheit(325, 400),
    source: 'memory',
  },
  {
    id: 'bake-gently',
    use: 'adverb',
    phrases:
      'gently, slowly, slow, slower, leisurely, slackly, softly, easily, coolly, very gradually, gradually, tenderly, flowly',
    band: 'slow',
    celsius: fahrenheit(250, 325),
    source: 'memory',
  },
]

/** "As hot as for …": the heat the named thing is set in at. */
const asFor: readonly Row[] = [
  {
    id: 'as-for-bread',
    use: 'as for',
    phrases:
      'loaf bread, bread, white bread, wheat bread, wheaten bread, houshold bread, houshold, household, flour bread, household bread, light bread, common bread, loaves, a loaf, yeast bread, baking bread, new bread, penny bread, raised bread, French bread, fancy bread, bread and pies',
    band: 'hot',
    celsius: fahrenheit(375, 475),
    source: 'us-household-1938',
    note: 'White loaf 400 falling to 375 °F today; in a brick oven it is set in hotter.',
  },
  {
    id: 'as-for-manchet',
    use: 'as for',
    phrases:
      'manchet, manchets, manchett, mancheate, small manchet, great manchet, little loaves, small loaves, penny loaves, fine bread, rolls, French rolls, wigs, wigges, cakes of bread',
    band: 'hot',
    celsius: fahrenheit(375, 450),
    to: 1800,
    source: 'memory',
  },
  {
    id: 'as-for-brown-bread',
    use: 'as for',
    phrases: 'brown bread, rye bread, rye and Indian, Indian bread, third bread, coarse bread, bread and beans',
    band: 'hot',
    celsius: fahrenheit(425, 550),
    source: 'pg-13493',
    note: 'An hour and a half’s fire against an hour for flour bread, by the book of 1829.',
  },
  {
    id: 'as-for-biscuit',
    use: 'as for',
    phrases:
      'biscuit, biscuits, bisket, biskets, hard biscuit, rusks, crackers, tea biscuit, soda biscuit, raised biscuit, buns, muffins, tea cakes, tea cake, scones',
    band: 'hot',
    celsius: fahrenheit(400, 460),
    source: 'us-household-1938',
  },
  {
    id: 'as-for-pies',
    use: 'as for',
    phrases:
      'pies, pie, a pie, little pies, small pies, great pies, minced pies, minct pies, pyes, pye, little pyes, small pyes, tarts of fruit, meat pies, mince pies, pasties, pastry, tarts, tart, a tart, pumpkin pie, pumpkin pies, apple pie, apple pies',
    band: 'hot',
    celsius: fahrenheit(375, 450),
    source: 'pg-13493',
    note: 'Pies take about as much heat as flour bread, by the book of 1829.',
  },
  {
    id: 'as-for-puff-paste',
    use: 'as for',
    phrases: 'puff paste, puff pastry, puffs, patties, paste, light pastry, puff',
    band: 'hot',
    celsius: fahrenheit(400, 475),
    source: 'memory',
  },
  {
    id: 'as-for-custards',
    use: 'as for',
    phrases:
      'custards, custard, a custard, puddings, a pudding, pudding, milk puddings, rice pudding, bread pudding, baked custards',
    band: 'slow',
    celsius: fahrenheit(300, 350),
    source: 'memory',
  },
  {
    id: 'as-for-cheesecakes',
    use: 'as for',
    phrases: 'cheesecakes, cheese cakes, cheesecake, cheese cake, cheesecakes',
    band: 'moderate',
    celsius: fahrenheit(325, 400),
    source: 'memory',
  },
  {
    id: 'as-for-cake',
    use: 'as for',
    phrases:
      'cake, cakes, small cakes, light cakes, gingerbread, queen cakes, cup cake, tea cakes, common cake, plain cake, layer cake',
    band: 'moderate',
    celsius: fahrenheit(350, 400),
    source: 'us-household-1938',
  },
  {
    id: 'as-for-pound-cake',
    use: 'as for',
    phrases:
      'pound cake, pound cakes, plum cake, plum cakes, plumb cake, loaf cake, fruit cake, bride cake, black cake, rich cake, rich cakes, wedding cake, large cakes, a large cake, great cakes, a plum cake, a pound cake',
    band: 'slow',
    celsius: fahrenheit(275, 350),
    source: 'us-household-1938',
    note: 'Large fruit cake 275 °F.',
  },
  {
    id: 'as-for-sponge',
    use: 'as for',
    phrases:
      'sponge cake, sponge cakes, sponge, savoy cake, savoy cakes, savoy biscuits, naples biscuit, naples biscuits, sponge biscuits, macaroons, macaroon, maccaroons, mackroons, drops',
    band: 'slow',
    celsius: fahrenheit(300, 350),
    source: 'us-household-1938',
  },
  {
    id: 'as-for-meringue',
    use: 'as for',
    phrases: 'meringues, meringue, kisses, kiffes, drying, drying fruit, sweetmeats, comfits',
    band: 'slack',
    celsius: fahrenheit(200, 275),
    source: 'us-household-1938',
    note: 'Meringue 250–300 °F.',
  },
  {
    id: 'as-for-roasting',
    use: 'as for',
    phrases: 'roasting, roast meat, meat, baking meat, a joint, venison, a pasty, venison pasty, game pie',
    band: 'moderate',
    celsius: fahrenheit(325, 425),
    source: 'memory',
  },
]

/** "After … is drawn": what the named thing leaves behind in the brick. */
const after: readonly Row[] = [
  {
    id: 'after-bread',
    use: 'after',
    phrases:
      'bread, the bread, household bread, houshold bread, household, houshold, wheaten bread, white bread, common bread, your bread, loaves, loaf, the batch, batch, batches, manchet, manchets, rolls, manchett, flour bread, bread baking, the baking',
    band: 'slow',
    celsius: fahrenheit(250, 350),
    source: 'common-practice',
    note: 'An hour or so after the first load goes in.',
  },
  {
    id: 'after-brown-bread',
    use: 'after',
    phrases: 'brown bread, rye bread, coarse bread, rye and Indian, beans',
    band: 'slow',
    celsius: fahrenheit(225, 325),
    source: 'common-practice',
  },
  {
    id: 'after-pies',
    use: 'after',
    phrases: 'pies, pie, meat pies, pasties, pastry, tarts, tart, pasty, meat, joint, paste, dinner, breakfast, roast, roasting',
    band: 'slow',
    celsius: fahrenheit(225, 325),
    source: 'common-practice',
  },
  {
    id: 'after-cakes',
    use: 'after',
    phrases:
      'cakes, cake, biscuit, biscuits, buns, puddings, pudding, custards, gingerbread, first, others, rest, large ones, other things',
    band: 'slow',
    celsius: fahrenheit(200, 300),
    source: 'common-practice',
  },
  {
    id: 'after-all',
    use: 'after',
    phrases:
      'all, all is, everything, every thing, everything else, every thing else, all else, all the rest, whole, all other things, all things',
    band: 'slack',
    celsius: fahrenheit(175, 250),
    source: 'common-practice',
    note: 'Slack low and overnight.',
  },
]

/** "Bake it with …": it goes in when the named thing does. */
const together: readonly Row[] = [
  {
    id: 'with-bread',
    use: 'with',
    phrases:
      'bread, household bread, houshold bread, white bread, common bread, other bread, loaves, manchet, manchets, small bread, penny bread, batch, large bread, wheaten bread',
    band: 'hot',
    celsius: fahrenheit(375, 475),
    source: 'common-practice',
  },
  {
    id: 'with-brown-bread',
    use: 'with',
    phrases: 'brown bread, rye bread, coarse bread, great bread, big bread, rye and Indian',
    band: 'hot',
    celsius: fahrenheit(400, 525),
    source: 'pg-13493',
    note: 'Set in very hot and left while the oven falls.',
  },
  {
    id: 'with-pies',
    use: 'with',
    phrases: 'large pies, pies',
    band: 'hot',
    celsius: fahrenheit(375, 450),
    source: 'pg-13493',
  },
  {
    id: 'with-cakes',
    use: 'with',
    phrases: 'large cakes, plum cakes',
    band: 'moderate',
    celsius: fahrenheit(325, 400),
    source: 'common-practice',
  },
]

/** Words that stand as they are, in a receipt that bakes. */
const fixed: readonly Row[] = [
  {
    id: 'heat-subsides',
    use: 'fixed',
    phrases:
      'violence of the heat, fury of the heat, fierceness of the heat, first heat, great heat is over, first of the heat, heat is going off, heat is gone off, heat begins to go off, heat has gone off, heat goes off, heat has subsided, heat is abated, heat is somewhat abated, heat abates, heat is a little abated, fierceness is over, heat is past, heat is over, heat moderates, heat subsides, heat is subdued, heat is declining, heat is on the decline, first heat is over, strength of the heat',
    band: 'moderate',
    celsius: fahrenheit(325, 400),
    source: 'memory',
    note: 'The floor has come down from its first heat.',
  },
  {
    id: 'oven-falls',
    use: 'fixed',
    phrases:
      'oven is falling, oven falls, oven begins to fall, oven begins to cool, oven is cooling, oven cools, oven has fallen, oven is fallen, oven begins to slacken, oven slackens, oven gets cool, oven grows cool, oven is growing cool, oven grows cold, oven has cooled, oven is cooled, oven has lost, oven gets cooler, oven gets cold, oven is getting cool, oven become cool, oven becomes cool',
    band: 'slow',
    celsius: fahrenheit(225, 325),
    source: 'common-practice',
  },
  {
    id: 'last-of-the-heat',
    use: 'fixed',
    phrases:
      'last of the heat, remains of the heat, what heat is left, heat that is left, heat that remains, remaining heat, remnant of the heat, heat left in the oven, heat of the oven after, residual heat, retained heat',
    band: 'slack',
    celsius: fahrenheit(175, 250),
    source: 'common-practice',
  },
  {
    id: 'mouth-of-the-oven',
    use: 'fixed',
    phrases:
      'mouth of the oven, mouth of a oven, mouth of an oven, oven mouth, oven’s mouth, oven with the door open, oven with door open, oven door open, oven door ajar, oven with the door ajar, door of the oven open',
    band: 'slack',
    celsius: fahrenheit(150, 275),
    source: 'memory',
    note: 'Cooler than the back by what the open door lets out.',
  },
  {
    id: 'much-heat',
    use: 'fixed',
    phrases:
      'great deal of heat, good deal of heat, considerable heat, heat is great, heat is strong, more heat than, plenty of heat, much heat',
    band: 'hot',
    celsius: fahrenheit(400, 500),
    source: 'memory',
  },
  {
    id: 'will-brown',
    use: 'fixed',
    phrases:
      'such heat as will not scorch, such heat as will not burn, such a heat as will not scorch, such a heat as will not burn, oven that will brown, oven which will brown, oven that will just brown, oven that will colour, oven which will colour, oven that will color, oven hot enough to brown, oven just hot enough to brown, oven hot enough to colour, oven hot enough to color',
    band: 'moderate',
    celsius: fahrenheit(350, 425),
    source: 'memory',
  },
  {
    id: 'white-hot-walls',
    use: 'fixed',
    phrases:
      'bricks are white, bricks look white, walls are white, roof is white, arch is white, top of the oven is white, oven is white, crown is white, bricks turn white, walls turn white, burnt white, white all over inside',
    band: 'hot',
    celsius: fahrenheit(500, 700),
    source: 'memory',
    note: 'Soot burns off the brick at about 315–370 °C: hotter than any dish, before the soak.',
  },
  {
    id: 'full-heat',
    use: 'fixed',
    phrases:
      'oven at its hottest, oven at its full heat, oven is at its height, height of the oven, oven at full heat, oven in full heat',
    band: 'hot',
    celsius: fahrenheit(450, 550),
    source: 'memory',
  },
]

/** Every way of writing some words: each of the first with each of the second, and with "ss" for "ß". */
const german = (first: string, second: string): string =>
  first
    .split(', ')
    .flatMap((word) => second.split(', ').map((behind) => `${word} ${behind}`))
    .flatMap((phrase) => (phrase.includes('ß') ? [phrase, phrase.replaceAll('ß', 'ss')] : [phrase]))
    .join(', ')
const OFEN = 'Ofen, Backofen, Rohr, Backrohr'

/**
 * German words for the oven's heat. Those of heat alone ("bei mittlerer Hitze") are said of a pot as well: an id that begins with "hitze"
 * needs a word for baking beside it.
 */
const inGerman: readonly Row[] = [
  {
    id: 'mittelhitze',
    use: 'fixed',
    phrases: `Mittelhitze, ${german('mäßiger, mäßige, mittlerer', 'Mittelhitze')}`,
    band: 'moderate',
    celsius: {low: 160, high: 200},
    source: 'common-practice',
  },
  {
    id: 'mittelhitze-gut',
    use: 'fixed',
    phrases: german('guter, gute, starker, starke', 'Mittelhitze'),
    band: 'moderate',
    celsius: {low: 180, high: 220},
    source: 'common-practice',
  },
  {
    id: 'mittelhitze-schwach',
    use: 'fixed',
    phrases: german('schwacher, schwache, gelinder, gelinde', 'Mittelhitze'),
    band: 'moderate',
    celsius: {low: 150, high: 180},
    source: 'common-practice',
  },
  {
    id: 'ofen-heiss',
    use: 'fixed',
    phrases: german('heißen, heißem, heißer, heißes, stark geheizten, gut geheizten, gut geheiztem', OFEN),
    band: 'hot',
    celsius: {low: 200, high: 250},
    source: 'common-practice',
  },
  {
    id: 'ofen-sehr-heiss',
    use: 'fixed',
    phrases: german('sehr heißen, sehr heißem, sehr heißer', OFEN),
    band: 'hot',
    celsius: {low: 230, high: 280},
    source: 'common-practice',
  },
  {
    id: 'ofen-maessig',
    use: 'fixed',
    phrases: german(
      'mäßig heißen, mäßig heißem, mäßig heißer, mittelheißen, mittelheißem, nicht zu heißen, nicht zu heißem, mäßig geheizten, mäßig warmen',
      OFEN,
    ),
    band: 'moderate',
    celsius: {low: 160, high: 200},
    source: 'common-practice',
  },
  {
    id: 'ofen-kuehl',
    use: 'fixed',
    phrases: german('abgekühlten, abgekühltem, kühlen, kühlem, schwach geheizten, abfallenden', OFEN),
    band: 'slow',
    celsius: {low: 110, high: 160},
    source: 'common-practice',
  },
  {
    id: 'hitze-stark',
    use: 'fixed',
    phrases: german('starker, starke, guter, gute, großer, scharfer, hoher', 'Hitze'),
    band: 'hot',
    celsius: {low: 200, high: 250},
    source: 'common-practice',
  },
  {
    id: 'hitze-mittel',
    use: 'fixed',
    phrases: german('mittlerer, mittlere, mäßiger, mäßige', 'Hitze'),
    band: 'moderate',
    celsius: {low: 160, high: 200},
    source: 'common-practice',
  },
  {
    id: 'hitze-schwach',
    use: 'fixed',
    phrases: german('schwacher, schwache, gelinder, gelinde, milder, milde, geringer', 'Hitze'),
    band: 'slow',
    celsius: {low: 130, high: 160},
    source: 'common-practice',
  },
  {
    id: 'hitze-fallend',
    use: 'fixed',
    phrases: german(
      'fallender, fallenden, fallende, abfallender, abfallenden, abfallende, abnehmender, abnehmenden, nachlassender, nachlassenden',
      'Hitze',
    ),
    band: 'slow',
    celsius: {low: 110, high: 170},
    source: 'common-practice',
  },
]

/** Tests that receipts write down, by what the flour, meal or paper does; read by the grammar of `receipt/heat-tests`. */
const tests: readonly Row[] = [
  {
    id: 'test-black',
    use: 'fixed',
    phrases: 'blackens at once, burns black directly, turns black, takes fire, blazes',
    band: 'hot',
    celsius: fahrenheit(500, 620),
    source: 'pg-13493',
    note: 'Flour that blackens at once: too hot.',
  },
  {
    id: 'test-dark-brown',
    use: 'fixed',
    phrases: 'turns dark brown in five minutes',
    band: 'hot',
    celsius: fahrenheit(400, 475),
    source: 'paper-flour-table',
  },
  {
    id: 'test-brown',
    use: 'fixed',
    phrases: 'browns, turns brown, browns without burning',
    band: 'hot',
    celsius: fahrenheit(375, 475),
    source: 'pg-13493',
    note: 'Flour that merely browns: right for bread.',
  },
  {
    id: 'test-golden',
    use: 'fixed',
    phrases: 'turns golden in five minutes, turns light brown',
    band: 'moderate',
    celsius: fahrenheit(325, 400),
    source: 'white-1932',
  },
  {
    id: 'test-pale',
    use: 'fixed',
    phrases: 'turns yellow, colours slowly, delicate brown in five minutes',
    band: 'slow',
    celsius: fahrenheit(250, 325),
    source: 'paper-flour-table',
  },
  {
    id: 'test-hand',
    use: 'fixed',
    phrases: 'hold the hand in it while you count twenty',
    band: 'hot',
    celsius: fahrenheit(350, 475),
    source: 'common-practice',
    note: 'Cooks’ counts differ by a factor of two to five.',
  },
]

const rows = (table: readonly Row[]): OvenWord[] => table.map((row) => ({...row, phrases: words(row.phrases)}))

/** Words for heat, each with its range of baking temperature, its years and place where they matter, and its source. */
export const ovenWords: readonly OvenWord[] = [
  ...rows(adjectives),
  ...rows(unknowns),
  ...rows(adverbs),
  ...rows(asFor),
  ...rows(after),
  ...rows(together),
  ...rows(fixed),
  ...rows(inGerman),
]

/** What flour, meal or paper thrown on the floor says of the oven. */
export const ovenTests: readonly OvenWord[] = rows(tests)

const hedge = (id: string, phrases: string, effect: Hedge['effect'], shift: number, source = 'memory'): Hedge => ({
  id,
  phrases: words(phrases),
  effect,
  shift,
  source,
})

/** Words that sharpen or soften a heat word. The published tables put about 25 °F (14 °C) between "hot" and "very hot". */
export const hedges: readonly Hedge[] = [
  hedge(
    'very',
    'very, extremely, exceeding, exceedingly, uncommonly, remarkably, particularly, extraordinary, mighty, right, thoroughly',
    'more',
    20,
    'oven-table',
  ),
  hedge(
    'rather',
    'rather, somewhat, pretty, tolerably, tolerable, moderately, moderate, middling, reasonably, fairly, indifferently, indifferent, a little, a trifle, slightly, temperately, comparatively, passably, medium, sort of, kind of',
    'less',
    12,
    'oven-table',
  ),
  hedge(
    'not-too',
    'not too, not over, not very, not so, not overly, not quite so, not quite too, by no means too, none too, nor too, not at all, not quite, never too, not exceedingly, not extremely, not',
    'cap',
    12,
  ),
  hedge(
    'good',
    'good, quite, well, nice, nicely, fine, properly, sufficiently, enough, just, nearly, almost, about, full, fully, clear, clean, brick, large, small, great, well closed, stone, bottom, top, under, upper, stove, cooking, range, family, kitchen, modern, sweet, common, gas, electric, preheated, pre heated, pre, well regulated, so, as, equally, more, less, still, already, uniformly, thoroughly, constantly, steadily, always, only, continued, closed, close, covered, baker’s, baker, bakers’, iron, cook’s, heated',
    'none',
    0,
  ),
]

/** What a stretch of time in a receipt is for, by the word it stands with. */
export const tasks: Readonly<Record<string, 'bake' | 'rise' | 'boil' | 'stand' | 'other'>> = Object.fromEntries(
  (
    [
      ['bake', 'bake, bakes, baked, baking, bak’d, oven, ovens, ouen, brown, rebake, backen, gebacken, backofen, ofen'],
      [
        'rise',
        'rise, rises, risen, rising, raise, raised, prove, proved, proving, proof, proofed, proofing, ferment, fermented, fermenting, sponge, leaven, double, doubled, light, swell, bulk, retard, stretch, stretched, stretching, teigruhe, gehen, aufgehen, reifen, gare, stockgare, stuckgare',
      ],
      [
        'boil',
        'boil, boiled, boiling, boils, boyl, boyle, boil’d, simmer, simmered, simmering, simmers, stew, stewed, stewing, steam, steamed, steaming, scald, fry, fried, frying, poach, braise, braised, saucepan, stewpan, kettle, bubble, parboil, blanch, kochen, gekocht, kocheln, einkochen, einkocheln, dampfen, sieden',
      ],
      [
        'stand',
        'stand, stands, standing, stood, soak, soaked, soaking, steep, steeped, steeping, infuse, lie, lay, lain, rest, rested, resting, cool, cooled, cooling, chill, chilled, chilling, refrigerate, refrigerated, fridge, keep, keeps, marinate, dry, drying, dried, remain, remains, set, aside, infused, macerate, drain, draining, brine, wilt, freeze, leave, leaving, letting, sit, sits, sitting, hang, hangs, hanging, hung, mature, autolyse, ruhen, stehen, quellen, abkuhlen, auskuhlen, einweichen, ziehen, kalt, entspannen, lassen',
      ],
      [
        'other',
        'beat, beaten, beating, beats, whisk, whisked, whisking, whip, whipped, stir, stirred, stirring, knead, kneaded, kneading, work, worked, mix, mixed, roast, roasted, roasting, baste, pound, pounded, rub, broil, broiled, grill, churn, toast, roll, before, preheat, heat, old, cream, creamed, blend, fire, broiling, hours’, saute, sauteed, sauteing, sweat, caramelise, caramelised, caramelize, caramelized, skillet, hob, stovetop, ruhren, kneten, schlagen, dunsten, andunsten, schmoren, anbraten, rosten, grillen, garen, braten, trocknen, dorren',
      ],
    ] as const
  ).flatMap(([task, list]) => words(list).map((word) => [word.replace('’', "'"), task] as const)),
)
