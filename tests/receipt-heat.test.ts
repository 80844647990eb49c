import {describe, expect, it} from 'vitest'
import {readHeat, readHeatWords} from '../src/receipt/heat.js'
import type {UnknownHeat} from '../src/receipt/heat-readings.js'
import {plainSection} from '../src/receipt/section.js'
import {translate} from '../src/receipt/translate.js'

/**
 * Phrases written for these tests in the manner of receipts from 1650 to today, each with the words that say the heat and the band a
 * careful cook would put them in (design §4). No published table gives a band to a sentence: the answers are by hand.
 */
const cases: ReadonlyArray<readonly [text: string, heat: string, bands: string]> = [
  // German figures: the fan is the lower one's, and what is roasted or dried by them is in the oven.
  ['Bei 180 °C Umluft 160 °C 40 Minuten backen.', '180 °C Umluft 160 °C', 'moderate'],
  ['30 Minuten bei 220 °C anbraten.', '220 °C', 'hot'],
  ['2 Stunden bei 160 °C schmoren.', '160 °C', 'moderate'],
  ['Bei 60 bis 70 °C 8 Stunden trocknen.', '60 bis 70 °C', 'slack'],
  // An oven with its word
  ['Bake them in a quick oven.', 'a quick oven', 'hot'],
  ['Put the cakes into a brisk oven and watch them.', 'a brisk oven', 'hot'],
  ['Set them in a rather brisk oven.', 'a rather brisk oven', 'hot moderate'],
  ['It wants a good soaking oven.', 'a good soaking oven', 'moderate'],
  ['Bake in a moderate oven till brown.', 'a moderate oven', 'moderate'],
  ['A slow oven suits it.', 'A slow oven', 'slow'],
  ['Bake it in rather a slow oven.', 'rather a slow oven', 'slow moderate'],
  ['Dry them in a very slow oven.', 'a very slow oven', 'slow slack'],
  ['Let it stand in a slack oven all night.', 'a slack oven', 'slack'],
  ['Lay them in a cool oven upon papers.', 'a cool oven', 'slow slack'],
  ['Bake it in a well-heated oven.', 'a well-heated oven', 'hot'],
  ['Have ready a smart oven.', 'a smart oven', 'hot'],
  ['It must have a sharp oven.', 'a sharp oven', 'hot'],
  ['Bake in a pretty hot oven an hour.', 'a pretty hot oven', 'hot'],
  ['Put it in a tolerably quick oven.', 'a tolerably quick oven', 'hot'],
  ['Bake it in a gentle oven.', 'a gentle oven', 'slow'],
  ['Bake in a moderately hot oven.', 'a moderately hot oven', 'hot'],
  ['Place in a very hot oven for ten minutes.', 'a very hot oven', 'hot'],
  ['Bake in a medium oven.', 'a medium oven', 'moderate'],
  ['Set it in a middling oven.', 'a middling oven', 'moderate'],
  ['Bake it in a temperate oven two hours.', 'a temperate oven', 'moderate'],
  ['Bake in a steady oven.', 'a steady oven', 'moderate'],
  ['Brown in a hot, but not too hot, oven.', 'a hot, but not too hot, oven', 'hot moderate'],
  ['Bake in a slow, steady oven for five hours.', 'a slow, steady oven', 'slow'],
  ['Bake in a not too quick oven.', 'a not too quick oven', 'moderate hot'],
  ['So slow an oven will not colour it; bake it four hours in as slow an oven.', 'slow an oven', 'slow'],
  ['The heat of a lukewarm oven is enough to dry the herbs.', 'a lukewarm oven', 'slack'],
  ['Put in a warm oven to raise before you bake it.', 'a warm oven', 'slow'],
  ['Bake in a hot brick oven.', 'a hot brick oven', 'hot'],
  ['Send it to a moderately quick oven.', 'a moderately quick oven', 'moderate hot'],
  ['Crisp the slices in a nearly cold oven.', 'a nearly cold oven', 'slack'],
  ['Let it do in a soft oven.', 'a soft oven', 'slow'],
  ['A sound oven is wanted for the batch, then bake.', 'A sound oven', 'hot'],
  ['Bake it in a quick or moderately hot oven.', 'a quick or moderately hot oven', 'hot'],
  ['Stir all well and bake; oven, moderate.', 'moderate', 'moderate'],
  ['Bake it in a hot-oven.', 'hot-oven', 'hot'],
  ['Bake it in a quicke ouen.', 'a quicke ouen', 'hot'],
  ['Bake it in a flow oven, and ferve it.', 'a flow oven', 'slow'],

  // What is said of the oven behind it
  ['The oven should be very hot.', 'oven should be very hot', 'hot'],
  ['Let your oven be pretty quick.', 'your oven be pretty quick', 'hot'],
  ['Have the oven hot before you wet the cakes.', 'the oven hot', 'hot'],
  ['Take care that the oven is not too hot.', 'the oven is not too hot', 'hot moderate'],
  ['The oven must not be over hot.', 'oven must not be over hot', 'hot moderate'],
  ['Put it in an oven not over hot.', 'an oven not over hot', 'hot moderate'],
  ['Bake it in an oven moderately heated.', 'an oven moderately heated', 'moderate'],
  ['It goes in an oven of a moderate heat.', 'an oven of a moderate heat', 'moderate'],
  ['The oven ought to be brisk.', 'oven ought to be brisk', 'hot'],
  ['Your oven must be of a good heat.', 'oven must be of a good heat', 'hot'],
  ['An oven which is only moderately warm will do.', 'oven which is only moderately warm', 'moderate slow'],
  ['Be sure the oven be quick.', 'the oven be quick', 'hot'],
  ['Do not have your oven too fierce.', 'oven too fierce', 'hot moderate'],
  ['Heat the oven well.', 'Heat the oven well', 'hot'],
  ['Set it in an oven gently heated.', 'an oven gently heated', 'slow'],
  ['When the oven is hot, set them in.', 'oven is hot', 'hot'],
  ['The heat of the oven should be gentle.', 'heat of the oven should be gentle', 'slow'],
  ['Let the oven be hot when it goes in.', 'Let the oven be hot', 'hot'],
  ['Make your oven exceeding hot.', 'oven exceeding hot', 'hot'],
  ['The oven should be rather slow.', 'oven should be rather slow', 'slow moderate'],

  // The way of baking
  ['Bake gently for an hour.', 'Bake gently', 'slow'],
  ['Bake them slowly.', 'Bake them slowly', 'slow'],
  ['Bake quick.', 'Bake quick', 'hot'],
  ['Bake it pretty quick, and take it out.', 'Bake it pretty quick', 'hot'],
  ['Let it bake very gently two hours.', 'bake very gently', 'slow'],
  ['They should be baked quickly.', 'baked quickly', 'hot'],
  ['It needs slow baking.', 'slow baking', 'slow'],
  ['Stew it gently in the oven.', 'gently in the oven', 'slow'],
  ['Bake for three hours slowly.', 'slowly', 'slow'],
  ['Bake your custards moderately.', 'Bake your custards moderately', 'moderate'],

  // Heat, where the receipt bakes
  ['Bake with a gentle heat.', 'a gentle heat', 'slow'],
  ['Bake it an hour in a moderate heat.', 'a moderate heat', 'moderate'],
  ['Bake them in a quick heat.', 'a quick heat', 'hot'],
  ['It requires a brisk heat to bake it well.', 'a brisk heat', 'hot'],

  // By comparison
  ['The oven must be as hot as for bread.', 'as hot as for bread', 'hot'],
  ['Heat your oven as for manchet.', 'oven as for manchet', 'hot'],
  ['Bake it in an oven as hot as for pies.', 'as hot as for pies', 'hot'],
  ['Have the oven hot enough for biscuits.', 'hot enough for biscuits', 'hot'],
  ['The oven should be hotter than for bread.', 'hotter than for bread', 'hot'],
  ['Bake in an oven fit for custards.', 'an oven fit for custards', 'slow moderate'],
  ['The oven is to be of the same heat as for pound cake.', 'same heat as for pound cake', 'slow'],
  ['Let the oven be as hot as you would have it for white bread.', 'as hot as you would have it for white bread', 'hot'],

  // After other goods, and with them
  ['Put it in after the bread is drawn.', 'after the bread is drawn', 'slow'],
  ['Set the pan in the oven when the bread is drawn.', 'when the bread is drawn', 'slow'],
  ['Dry them in the oven after drawing the bread.', 'after drawing the bread', 'slow'],
  ['Put them in the oven as soon as the pies are out.', 'as soon as the pies are out', 'slow'],
  ['Lay them on sieves in the oven after everything else is drawn.', 'after everything else is drawn', 'slack'],
  ['Bake it in the oven after household bread.', 'after household bread', 'slow'],
  ['Set it in the oven after the batch has been taken out.', 'after the batch has been taken out', 'slow'],
  ['Bake it with brown bread.', 'with brown bread', 'hot'],
  ['Let it be baked with household bread.', 'with household bread', 'hot'],

  // The falling oven
  ['Put in the rusks when the oven is falling.', 'oven is falling', 'slow'],
  ['Set it in when the heat is going off, and bake it through.', 'heat is going off', 'moderate'],
  ['Wait till the fierceness of the heat is past, then set the cakes in the oven.', 'fierceness of the heat', 'moderate'],
  ['Dry the apples with the last of the heat, the oven door ajar.', 'last of the heat', 'slack'],
  ['Set them at the mouth of the oven.', 'mouth of the oven', 'slack'],

  // Degrees and marks
  ['Bake at 350 °F for an hour.', '350 °F', 'moderate'],
  ['Bake at 350 degrees.', '350 degrees', 'moderate'],
  ['Preheat the oven to 180°C.', '180°C', 'moderate'],
  ['Heat the oven to 180C/160C fan/gas 4.', '180C/160C fan/gas 4', 'moderate'],
  ['Preheat oven to 425F (220C).', '425F (220C)', 'hot'],
  ['Gas mark 3 for forty minutes in the oven.', 'Gas mark 3', 'moderate'],
  ['Bake at gas mark 1/2.', 'gas mark 1/2', 'slack slow'],
  ['Set the oven to 375.', '375', 'moderate'],
  ['Bake in a 400° oven.', '400°', 'hot'],
  ['Bake at 325 degrees Fahrenheit.', '325 degrees Fahrenheit', 'slow moderate'],
  ['Bake at 375–400 °F until brown.', '375–400 °F', 'moderate hot'],
  ['Bake from 300 to 325 degrees F. for an hour.', '300 to 325 degrees F', 'slow'],
  ['Oven: 160 °C (140 °C fan).', '160 °C (140 °C fan)', 'slow moderate'],
  ['Bake at 200 degrees Celsius.', '200 degrees Celsius', 'moderate hot'],
  ['Regulo 5, bake half an hour.', 'Regulo 5', 'moderate'],

  // In the manner of 1650–1700
  ['Set it in an oven as hot as for small manchet, and stop it up close.', 'an oven as hot as for small manchet', 'hot'],
  ['Bake it in an Oven no hotter then for little pies.', 'an Oven no hotter then for little pies', 'hot moderate'],
  ['Put it into an oven temperately hot, and let it stand an hour.', 'an oven temperately hot', 'hot moderate'],
  ['Let your Oven be of a temperate heat.', 'your Oven be of a temperate heat', 'moderate'],
  ['Put it in an oven of a pretty quick heat.', 'an oven of a pretty quick heat', 'hot'],
  ['The oven must be as hot as you heat it for white-bread.', 'oven must be as hot as you heat it for white-bread', 'hot'],
  ['Let it stand in the oven after houshold-bread is drawn.', 'after houshold-bread is drawn', 'slow'],
  ['Set it in the oven when you have drawn your bread, to dry.', 'when you have drawn your bread', 'slow'],
  ['Put them in the oven when the manchet is drawn forth.', 'when the manchet is drawn forth', 'slow'],
  ['Set it in an oven that bread hath been newly drawn out of.', 'an oven that bread hath been newly drawn out of', 'slow'],
  ['Let the Oven be so hot as for bread, or a little hotter.', 'the Oven be so hot as for bread', 'hot'],
  ['Your oven may not be too hot for this cake.', 'oven may not be too hot', 'hot moderate'],
  ['Bake it in a soft Oven, that it colour not.', 'a soft Oven', 'slow'],
  ['Let it bake softly three hours with the oven shut.', 'bake softly', 'slow'],
  ['Bake them in a milde ouen upon wafers.', 'a milde ouen', 'slow'],
  ['Set it in the oven with the brown bread and let it stay there all night.', 'with the brown bread', 'hot'],
  ['Put it in with houshold bread and let it bake so long.', 'with houshold bread', 'hot'],
  ['It must be an oven well heated, but not too hot.', 'oven well heated, but not too hot', 'hot moderate'],
  ['You must bake it in a reasonable hot oven.', 'a reasonable hot oven', 'hot moderate'],
  [
    'Let the heat of the oven be no more than will serve for biscuit.',
    'heat of the oven be no more than will serve for biscuit',
    'hot',
  ],
  ['Heat your oven as you would do for a pasty.', 'oven as you would do for a pasty', 'moderate hot'],
  ['Bake it as you do manchet, then ice it in the oven.', 'as you do manchet', 'hot'],
  ['Put it into an oven, not too hot, and bake it half an hour.', 'an oven, not too hot', 'hot moderate'],
  ['Let the oven cool a little before you set them in.', 'the oven cool a little', 'slow moderate'],
  ['An oven of moderate heat will bake it in two hours.', 'An oven of moderate heat', 'moderate'],

  // In the manner of 1800–1850
  ['Bake it in an oven that will brown but not burn it.', 'an oven that will brown but not burn', 'moderate hot'],
  ['The oven must not be so hot as to scorch the crust.', 'oven must not be so hot as to scorch', 'hot moderate'],
  ['Let the oven be a little warmer than for bread.', 'a little warmer than for bread', 'hot'],
  ['Have the oven of an even heat throughout.', 'the oven of an even heat', 'moderate'],
  ['Bake it with a slow regular heat.', 'a slow regular heat', 'slow'],
  ['The oven should be moderate at first, and the heat increased afterwards.', 'oven should be moderate at first', 'moderate'],
  ['It must be set in directly, and the oven kept at a steady heat.', 'oven kept at a steady heat', 'moderate'],
  ['Keep up the same heat all the while, and bake it in an oven rather quick.', 'an oven rather quick', 'hot'],
  ['Take care not to have the oven over-heated.', 'not to have the oven over-heated', 'hot moderate'],
  ['If the oven is rather quick, an hour will bake them.', 'oven is rather quick', 'hot'],
  ['Set it in a warm but not hot oven.', 'a warm but not hot oven', 'slow'],
  ['Set it to bake in an oven so slow as not to colour it.', 'an oven so slow', 'slow'],
  ['The oven should not be very brisk.', 'The oven should not be very brisk', 'moderate hot'],
  ['Put it in an oven only just warm.', 'an oven only just warm', 'slack slow'],
  ['Bake them as quick as you can without burning.', 'Bake them as quick as you can', 'hot'],
  ['They require quick baking.', 'quick baking', 'hot'],
  ['It will take five hours in a slowly heated oven.', 'a slowly heated oven', 'slow'],
  ['Let the oven have a good strong heat when they go in.', 'a good strong heat', 'hot'],
  ['Give them a brisk oven for a quarter of an hour.', 'a brisk oven', 'hot'],
  ['Rolls want an oven hotter than loaves do.', 'an oven hotter than loaves', 'hot'],
  ['Put the dish in the oven when the fire is low, and bake it.', 'fire is low', 'slow'],

  // In the manner of 1860–1900
  ['Bake in quick oven.', 'quick oven', 'hot'],
  ['Bake in moderately quick oven.', 'moderately quick oven', 'moderate hot'],
  ['Hot oven, 20 minutes.', 'Hot oven', 'hot'],
  ['Bake thirty minutes in a slow steady oven.', 'a slow steady oven', 'slow'],
  ['Bake in a hot stove.', 'a hot stove', 'hot'],
  ['Bake an hour in a moderately heated stove.', 'a moderately heated stove', 'moderate'],
  ['Have the stove moderately hot and bake three quarters of an hour.', 'the stove moderately hot', 'hot moderate'],
  ['Bake with a slow fire.', 'a slow fire', 'slow'],
  ['Bake with a gentle fire till done.', 'a gentle fire', 'slow'],
  ['Bake at first slowly, then quicken the heat.', 'Bake at first slowly', 'slow'],
  ['Bake rather quickly.', 'Bake rather quickly', 'hot'],
  ['Bake in as hot an oven as possible without burning.', 'as hot an oven as possible', 'hot'],
  ['Bake it in an oven in which you can hold your hand while counting twenty.', 'hold your hand while counting', 'hot'],
  ['Bake in a pretty quick, not hot, oven.', 'a pretty quick, not hot, oven', 'hot moderate'],
  ['The oven needs to be very hot for these.', 'oven needs to be very hot', 'hot'],
  ['Bake carefully in an oven neither too hot nor too cool.', 'an oven neither too hot nor too cool', 'hot moderate'],
  ['The oven must be ready, and hot.', 'oven must be ready, and hot', 'hot'],
  ['Steam two hours, and brown in a quick oven.', 'a quick oven', 'hot'],
  ['Bake in a brisk, steady oven.', 'a brisk, steady oven', 'hot'],
  ['Bake steadily an hour and a half.', 'Bake steadily', 'moderate'],
  ['The hotter the oven the better they bake.', 'The hotter the oven', 'hot'],
  ['Have a clear hot fire and a quick oven.', 'a quick oven', 'hot'],
  ['Bake in an oven at bread heat.', 'bread heat', 'hot'],
  ['The temperature of the oven should be moderate.', 'temperature of the oven should be moderate', 'moderate'],
  ['Bake in a sharp oven, and do not open the door.', 'a sharp oven', 'hot'],

  // Written unseen, to judge the reader by: 38 of 40 were read at the first run
  ['Then put it into your oven, made hot as for bread, and let it bake.', 'hot as for bread', 'hot'],
  ['Bake it well in a moderate Oven, and scrape on sugar.', 'a moderate Oven', 'moderate'],
  ['Let the Oven be cool before you set in your biscuits.', 'the Oven be cool', 'slow slack'],
  ['Lay them on papers, and set them in a warm Oven after the bread is out.', 'a warm Oven', 'slow'],
  ['It will ask a hot oven and two hours baking.', 'a hot oven', 'hot'],
  [
    'Your oven should be pretty hot when you set it in, and then let it cool by degrees.',
    'Your oven should be pretty hot',
    'hot',
  ],
  ['Have a care that the oven be not too hot.', 'the oven be not too hot', 'hot moderate'],
  ['Bake it in an oven that is not very hot.', 'an oven that is not very hot', 'hot moderate'],
  ['The oven must be of such heat as will not scorch flour.', 'such heat as will not scorch flour', 'moderate hot'],
  ['Bake it in an oven as hot as you would for a custard.', 'an oven as hot as you would for a custard', 'slow moderate'],
  ['Bake it in a gentle oven, or under a dish.', 'a gentle oven', 'slow'],
  ['When your oven is of a right heat, put in your cakes.', 'oven is of a right heat', 'moderate hot'],
  ['Put them into a moderate oven to bake slowly.', 'a moderate oven', 'moderate'],
  ['Bake them very slow two or three hours.', 'Bake them very slow', 'slow'],
  ['Put it in a quick oven, which must be made slower after a quarter of an hour.', 'a quick oven', 'hot'],
  ['The oven must be brisk, without being too hot.', 'oven must be brisk', 'hot'],
  ['Bake it in a cool oven, so as to dry rather than bake.', 'a cool oven', 'slow slack'],
  ['See that your oven is at the proper heat.', 'oven is at the proper heat', 'moderate hot'],
  ['Bake it about an hour, in a heated oven.', 'a heated oven', 'hot'],
  ['Let it be baked in an oven neither hot nor cold.', 'an oven neither hot nor cold', 'moderate'],
  ['It should be put in while the oven is hot, and remain till cold.', 'the oven is hot', 'hot'],
  ['Having heated the oven to a moderate degree, put in the loaves.', 'heated the oven to a moderate degree', 'moderate'],
  ['Do not bake it in too hot an oven.', 'too hot an oven', 'hot moderate'],
  ['Put in the oven, with moderate heat, and bake till dry.', 'moderate heat', 'moderate'],
  ['A rather quick oven is best for tea cakes.', 'A rather quick oven', 'hot'],
  ['Bake in a tolerably hot oven twenty minutes.', 'a tolerably hot oven', 'hot'],
  ['Bake one hour, in oven not too hot.', 'oven not too hot', 'hot moderate'],
  ['Bake in hot oven.', 'hot oven', 'hot'],
  ['Bake very slowly at first.', 'Bake very slowly', 'slow'],
  ['Put in a hot pan and bake in a steady oven.', 'a steady oven', 'moderate'],
  ['Bake in a moderate oven; too hot an oven would spoil it.', 'a moderate oven', 'moderate'],
  ['Bake in an oven of medium heat.', 'an oven of medium heat', 'moderate'],
  ['Let the heat be moderate, and bake an hour and a half.', 'the heat be moderate', 'moderate'],
  ['Put it in the stove when it is not very hot, and bake it.', 'not very hot', 'hot moderate'],
  ['Bake quickly, but do not let it burn.', 'Bake quickly', 'hot'],
  ['Bake in a quick oven as you would biscuit.', 'a quick oven', 'hot'],
  ['Have the oven about right for bread.', 'oven about right for bread', 'hot'],
  ['The heat should be greatest at the bottom of the oven, and it should be a slow one.', 'slow one', 'slow'],
  ['Cook in a slow oven four hours.', 'a slow oven', 'slow'],

  // Tests that the receipt writes down
  ['Throw a little flour into the oven; if it blackens at once it is too hot.', 'Throw a little flour', 'hot'],
  ['Lay a piece of white paper in the oven; if it turns a light brown in five minutes, set them in.', 'white paper', 'moderate'],
  ['Hold your hand in the oven while you count twenty.', 'Hold your hand in the oven while you count', 'hot'],
]

const nothing: readonly string[] = [
  'Roast it in a Dutch oven before the fire.',
  'Set it over a slow fire and stew it till tender.',
  'Take it hot from the oven and serve.',
  'Remove from the oven and cool.',
  'Put it in the oven to warm.',
  'Serve very hot.',
  'Pour over hot milk.',
  'Take it out of the oven, and serve hot.',
  'Boil it over a gentle heat, stirring.',
  'Warm the milk to 110 °F and add the yeast, then bake.',
  'Serve with brown bread and butter.',
  'The syrup should reach 238 °F on a thermometer.',
  'Bake until the internal temperature reaches 200 °F.',
  'Put it in the oven with hot coals upon the lid.',
  'Roll it out as for pies.',
  'Bake it in the oven a good hour.',
  'Beat the eggs quick and bake.',
  'Knead 350 grams of flour.',
  'A quick way to make bread.',
  'Boil it in a kettle upon a hot stove.',
  'Set the pan on a hot stove, and when it bakes brown turn it.',
  'Roast it at a quick fire, then bake the crust.',
  'Bake it well.',
  'Put it into a cold oven, light the fire and bake it.',
  'Set it in the oven, close stopped, and bake it enough.',
  'Put it in the oven to keep hot till it goes to table.',
  'Stew it softly over the fire, then put it in a pie and bake it.',
  'When the bread is baked, draw it and lay it to cool.',
  'Have a slow fire under the kettle; bake the crust apart.',
  'Heat the milk, and stir it with flour as for bread.',
  'Bake them in patty-pans, and eat them hot.',
  'Cover with buttered paper lest the top burn in the oven.',
]

describe('phrases of heat', () => {
  it.each(cases)('%s → %s (%s)', (text, heat, bands) => {
    const section = plainSection(text)
    const found = readHeat(section)
    const start = text.indexOf(heat)
    expect(start, 'the case itself').toBeGreaterThanOrEqual(0)
    const end = start + heat.length
    const hit = found.find((phrase) => phrase.start < end && phrase.end > start)
    expect(hit, `found: ${found.map((phrase) => phrase.text).join(' | ') || 'nothing'}`).toBeDefined()
    const shared = Math.min(hit!.end, end) - Math.max(hit!.start, start)
    expect(shared / Math.min(hit!.end - hit!.start, heat.length)).toBeGreaterThanOrEqual(0.5)
    expect(bands.split(' ')).toContain(hit!.band)
    expect(hit!.celsius.low).toBeLessThanOrEqual(hit!.celsius.high)
    expect(hit!.sources.length).toBeGreaterThan(0)
    expect(text.slice(hit!.start, hit!.end)).toBe(hit!.text)
  })

  it.each(nothing)('no heat in: %s', (text) => {
    expect(readHeat(plainSection(text)).map((phrase) => phrase.text)).toEqual([])
  })
})

describe('heat stated by itself', () => {
  it.each([
    ['quick', 'hot'],
    ['a slow oven', 'slow'],
    ['350 °F', 'moderate'],
    ['gas mark 4', 'moderate'],
    ['180 °C fan', 'moderate'],
    ['after the bread is drawn', 'slow'],
    ['gently', 'slow'],
  ])('%s is %s', (text, band) => {
    expect(readHeatWords(text)?.band).toBe(band)
  })

  // What makers ask for with a fan, 10 to 30 °C less: common practice, no source.
  it.each([
    ['Bake at 230/210 °C.', 230, 210],
    ['Heat the oven to 230 / 210 °C (fan).', 230, 210],
    ['Bake at 230/210 °C (plain/fan) for an hour.', 230, 210],
    ['Bake in a fan oven at 200/160 °C.', 200, 160],
    ['Bake at 210/230 °C.', 230, 210],
    ['Bake at 450/425 °F.', 232, 218],
  ])('two figures are the plain oven’s and the fan’s: %s', (text, plain, fan) => {
    const found = readHeat(plainSection(text))
    expect(found).toHaveLength(1)
    expect(Math.round(found[0]!.celsius.low)).toBe(plain)
    expect(Math.round(found[0]!.celsius.high)).toBe(plain)
    expect(found[0]!.notes).toEqual([`${plain} °C in a plain oven, ${fan} °C with a fan`])
    expect(found[0]!.disagree).toBeUndefined()
  })

  it('figures too far apart are no plain oven and fan', () => {
    expect(readHeat(plainSection('Bake at 200/100 °C in the oven.')).flatMap((one) => one.notes ?? [])).toEqual([])
  })

  it.each([
    ['Bake at 180 zonk for 40 minutes.', 'zonk', '°C'],
    ['Bake in the oven at 350 grum.', 'grum', '°F'],
    ['Im Ofen bei 200 Zonk backen.', 'Zonk', '°C'],
  ])('a scale that is none is named: %s', (text, word, scale) => {
    const unknown: UnknownHeat[] = []
    const found = readHeat(plainSection(text), unknown)
    expect(found.map((one) => one.notes)).toEqual([[`“${word}” is no scale of heat known here: read as ${scale}`]])
    expect(unknown.map((one) => text.slice(one.start, one.end))).toEqual([word])
  })

  it.each([
    'Bake at 180 uncovered for 20 minutes.',
    'Bake in the oven at 180 until brown.',
    'Im Ofen bei 200 goldbraun backen.',
    'Oven at 180 fan.',
  ])('and no other word is: %s', (text) => {
    const unknown: UnknownHeat[] = []
    expect(readHeat(plainSection(text), unknown)).toHaveLength(1)
    expect(unknown).toEqual([])
  })

  it('in the front matter too', () => {
    const {messages} = translate('---\noven: 180 zonk\n---\n# Loaf\n\n- 500 g flour\n', {file: 'a.md'})
    expect(messages.map(({line, column, rule, reason}) => `${line}:${column} ${rule} ${reason}`)).toEqual([
      '2:7 heat-unknown oven: “zonk” is no heat and no scale known here; what is left of “180 zonk” is read',
    ])
  })

  it('words without heat say nothing', () => {
    expect(readHeatWords('blue')).toBeNull()
    expect(readHeatWords('')).toBeNull()
  })
})

describe('the note of a misread long s', () => {
  const notesOf = (text: string): readonly string[] => readHeat(plainSection(text)).flatMap((phrase) => phrase.notes ?? [])
  it.each([
    ['Bake it in a flow oven.', '“Flow” where a scan took long s for f.'],
    ['Dry it in a flack oven.', '“Flack” where a scan took long s for f.'],
  ])('stands by “%s”', (text, note) => {
    expect(notesOf(text)).toContain(note)
  })

  it.each(['Bake it in a slow oven.', 'Bake it in a ſlow oven.', 'Dry it in a slack oven.'])('and not by “%s”', (text) => {
    expect(notesOf(text).filter((note) => note.includes('long s'))).toEqual([])
  })
})

describe('what bakes in a bath of water', () => {
  // The heat is the oven's: water is never so hot (it boils at 100 °C), and what is set in it to bake does not stand so long. Invented texts.
  it.each([
    'Bake in 8 custard cups set in hot water at 325 F for 35 minutes.',
    'Bake in 8 custard cups, set in a pan of hot water, at 325 F for 35 minutes.',
    'Bake in a pan of boiling water at 325 F for 35 minutes.',
    'Bake in a water bath at 325 F for 35 minutes.',
  ])('%s', (method) => {
    const {oven, times} = translate(`# Cup custards\n\n- 1 quart milk\n- 6 eggs\n\n${method}\n`, {file: 'a.md'}).receipts[0]!
    expect(oven).toMatchObject([{celsius: {low: 163, high: 163}}])
    expect(times).toMatchObject([{of: 'bake', minutes: {low: 35, high: 35}}])
  })
  it('but not the water’s own', () => {
    const {oven} = translate('# Rolls\n\n- 500 g flour\n\nMix with water at 105 F. Heat the milk in a water bath at 180 F.\n', {
      file: 'a.md',
    }).receipts[0]!
    expect(oven).toEqual([])
  })
})
