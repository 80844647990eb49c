import {exactly, span, words} from './row.js'
import type {StayWord} from './schema.js'

const row = (id: string, use: StayWord['use'], phrases: string, more: Partial<StayWord> = {}): StayWord => ({
  id,
  use,
  phrases: words(phrases),
  source: 'common-practice',
  ...more,
})

/** A share of the baking as receipts word it: "the first half of the baking", "the first half of its time". */
const ofBaking = (share: string): string =>
  [
    share,
    ...['of', 'of the', 'of its', 'of their'].flatMap((link) =>
      ['baking', 'bake', 'time', 'baking time', 'cooking', 'cooking time'].map((noun) => `${share} ${link} ${noun}`),
    ),
  ].join(', ')

/**
 * What receipts say of how long a thing stays in the oven: that it is left in through the night, and that the door is to be kept shut.
 * `src/receipt/stays.ts` reads them. Where a rule names a state ("till the dough is set") the minutes stand for it.
 */
export const stayWords: readonly StayWord[] = [
  // Through the night
  row('night', 'night', 'night, nights, overnight, morning, next day, following day, to morrow, tomorrow, nacht'),
  row('better', 'better', 'better, best, improves, improve, improved, gains, besser, am besten'),
  row('inside', 'inside', 'in, inside, within, there, therein, im, darin'),
  row('into-oven', 'into', 'in, into, inside, within, im'),
  row('beside-oven', 'beside', 'by, near, beside, before, behind, on, upon, over, under, from, outside, against, at'),
  row(
    'elsewhere',
    'elsewhere',
    'out, remove, removed, take, taken, unmould, cellar, larder, pantry, refrigerator, fridge, icebox, freezer, rack, board, table, shelf, window, sun, sieve, jug, bucket, cool, cold, chill, chilled, soak, soaked, soaking, steep, steeped, rise, risen, rising, prove, sponge, spunge, dough, yeast, water, milk, brine, salt, wrap, wrapped, cupboard, hearth, fire, room, store, kneading, einweichen, eingeweicht, kuhlschrank, keller, wasser, teig, gehen, ruhen, quellen, herausnehmen',
  ),

  // The door kept shut
  row(
    'opens',
    'opens',
    'open, opened, opening, opens, unclose, unclosed, unstop, unstopped, look into, peep, peep into, peeping into',
  ),
  row(
    'shut',
    'shut',
    'shut, closed, close, shut up, closed up, shut close, close shut, stopped, stopped up, sealed, sealed up, fast',
  ),
  row('keeps', 'keeps', 'keep, kept, keeping, leave, left, leaving, hold, held, remain, remains, stay, stays, with'),
  row('door', 'door', 'door, doors, oven, ovens, ouen, ofen, backofen'),
  row(
    'ajar',
    'ajar',
    'ajar, open, half open, half-open, a crack, slightly open, on the latch, on the jar, einen spalt, partly open, propped, propped open, wedged, wedged open, unlatched, offen, geoffnet, geoffneter, offener, angelehnt, angelehnter, gekippt, spalt, holzloffel',
  ),
  row('ajar-door', 'ajar-door', 'door, oven door, tur, ofentur, backofentur, ture, ofenture, backofenture'),
  row('never', 'never', 'not, never, no, nor, without, avoid, neither, don’t, cannot, mustn’t, shouldn’t, resist'),
  row('until', 'until', 'till, until, ’till, til, before, ere, under'),
  row('during', 'during', 'for, during, in, within, throughout'),

  // On a heat that falls
  row(
    'falls',
    'falls',
    'as the oven falls, as the oven cools, as the oven cools down, as the oven slackens, while the oven falls, while the oven cools, as the heat falls, as the heat goes down, as the heat declines, as the heat dies down, as the temperature falls, as the temperature drops, falling oven, falling heat, falling temperature, cooling oven, falling to, fallender hitze, fallende hitze, fallender temperatur, abfallender hitze, abfallende hitze, abfallender temperatur, fallend auf, abfallend auf, fallend, abfallend',
  ),
  row(
    'after-baking',
    'after',
    'off, turned off, switched off, cold, afterwards, cool completely, ausgeschaltet, ausgeschalteten, ausschalten, abgeschaltet, auskuhlen, abkuhlen, erkalten',
  ),

  // Left in after the bake
  row(
    'oven-off',
    'off',
    'turn off, turned off, turn the oven off, turning off, switch off, switched off, switch the oven off, switching off, turn it off, switch it off, shut off, shut the oven off, turned-off, switched-off, oven off, heat off, turn off the heat, ausschalten, ausgeschaltet, ausgeschaltete, ausgeschalteten, ausgeschaltetem, abschalten, abgeschaltet, abgeschalteten, abgeschaltetem, ausstellen, ausgestellten, ausmachen, schalten sie den ofen aus, ofen aus, backofen aus',
  ),
  row(
    'cools-inside',
    'cools',
    'cool, cools, cooling, cooled, cool down, cooling down, go cold, grow cold, auskuhlen, abkuhlen, erkalten, auskuhlenden, abkuhlenden, abkuhlendem, auskuhlt, abkuhlt, erkaltet, kalt werden',
  ),
  row(
    'left',
    'leaves',
    'leave, leaves, left, leaving, let, keep, kept, remain, remains, stay, stays, stand, allow, lassen, gelassen, lasst, bleiben, stehen, belassen, ruhen',
  ),
  row(
    'taken-out',
    'gone',
    'remove, removed, removing, take, taken, lift, chill, chilled, refrigerate, refrigerated, fridge, refrigerator, larder, rack, wire rack, board, table, room temperature, worktop, turn out, turned out, unmould, unmold, kuhlschrank, kuhlen, gitter, kuchengitter, rost, zimmertemperatur, raumtemperatur, sturzen, herausnehmen, nehmen, holen, kaltstellen',
  ),
  row('other-way', 'or', 'or, oder'),

  // What is done to it while it bakes
  row(
    'stirred',
    'stirs',
    'stir, stirs, stirring, stirred, stir in the skin, stirring in the skin, toss, tossing, tossed, shake, shaking, shaken, ruhren, umruhren, umgeruhrt, durchruhren, durchgeruhrt, durchmischen, schutteln',
  ),
  row(
    'turned',
    'turns',
    'turn, turns, turning, turned, turn over, turning over, rotate, rotating, rotated, flip, flipping, flipped, wenden, gewendet, umdrehen, umgedreht, drehen, gedreht',
  ),
  row(
    'basted',
    'bastes',
    'baste, bastes, basting, basted, begießen, begießt, übergießen, begiessen, begiesst, begossen, ubergiessen, ubergossen, bepinseln, bestreichen',
  ),
  row(
    'often',
    'often',
    'often, frequently, occasionally, regularly, now and then, now and again, from time to time, once or twice, two or three times, several times, once, twice, at intervals, gelegentlich, ab und zu, ofter, ofters, oft, haufig, regelmassig, zwischendurch, mehrmals, einmal, zweimal, hin und wieder, von zeit zu zeit',
  ),
  row(
    'half-way',
    'half-way',
    'half way, halfway, half-way, half way through, halfway through, half way through baking, halfway through baking, half way through cooking, halfway through cooking, half way through the baking, halfway through the baking, half way through the time, halfway through the time, half way through the cooking time, halfway through the cooking time, half way through the baking time, halfway through the baking time, nach der halfte, nach der halfte der zeit, nach der halfte der backzeit, nach halber backzeit, nach der halben backzeit, nach halber zeit, nach der halben zeit, zur halbzeit',
  ),
  row('every', 'every', 'every, each, alle, jede, jeden'),
  row(
    'again',
    'again',
    'again, and again, then, and then, then again, and then again, and once more, and, und, und dann, dann, und nochmals, und nochmal, und noch einmal, und erneut, und wieder, und dann wieder, und dann nochmals',
  ),
  // A crust that is baked empty before it is filled
  row(
    'blind',
    'blind',
    'bake blind, baked blind, bakes blind, baking blind, blind bake, blind baked, blind, blindbacken, blind backen, blindgebacken, vorbacken, vorgebacken',
  ),
  row(
    'filled',
    'fills',
    'fill, fills, filling into, filling over, pour, spoon, spread, pile, ladle, put in, tip in, add the filling, fullen, gefullt, giessen, gießen, gegossen, eingiessen, eingießen, eingegossen, hineingiessen, hineingießen, daraufgiessen, daraufgießen, darubergiessen, darubergießen, hineingeben, daraufgeben, einfullen, auffullen, auflegen, belegen, verteilen, geben, darauf, darubergeben',
  ),
  row(
    'baked',
    'bakes',
    'bake, baked, baking, roast, roasted, roasting, oven, backen, gebacken, ofen, backofen, rosten, braten, dorren, im ofen',
  ),
  row(
    'on-the-hob',
    'elsewhere-tended',
    'saucepan, frying pan, skillet, hob, stove, stovetop, over a low heat, over low heat, over medium heat, over a medium heat, over a gentle heat, simmer, boil, boiling point, double boiler, spit, before the fire, topf, herd, pfanne, kochen, aufkochen',
  ),

  // How long, where a state or a share of the baking is named
  row('dough-set', 'state', 'is set, are set, has set, have set, set, is firm, are firm, become firm, has become firm', {
    minutes: span(8, 12, 20),
    note: 'The crumb of a loaf of a pound or two holds its shape by then.',
  }),
  row('risen', 'state', 'is risen, are risen, has risen, have risen, risen, well risen, fully risen, is up, are up', {
    minutes: span(10, 15, 25),
  }),
  row(
    'done',
    'state',
    'is done, are done, done, is baked, are baked, baked, is ready, are ready, is cooked, are cooked, it is enough',
    {
      share: exactly(1),
    },
  ),
  row('half-done', 'state', 'half done, half baked, is half done, is half baked, are half done, are half baked', {
    share: span(0.45, 0.5, 0.55),
  }),
  row('first-half', 'share', ofBaking('first half'), {share: exactly(0.5)}),
  row('first-third', 'share', ofBaking('first third'), {share: exactly(1 / 3)}),
  row('first-quarter', 'share', ofBaking('first quarter'), {share: exactly(0.25)}),
  row('two-thirds', 'share', ofBaking('first two thirds'), {share: exactly(2 / 3)}),
  row('three-quarters', 'share', ofBaking('first three quarters'), {share: exactly(0.75)}),
  row(
    'throughout',
    'share',
    'whole time, all the time, while baking, while it bakes, while they bake, baking, the baking, the whole baking',
    {
      share: exactly(1),
    },
  ),
]
