import {describe, expect, it} from 'vitest'
import {readDuration} from '../src/receipt/durations.js'
import {plainSection} from '../src/receipt/section.js'
import {readTimes} from '../src/receipt/times.js'
import {translate} from '../src/receipt/translate.js'
import {readYields} from '../src/receipt/yield-facts.js'

/** Written for these tests; the minutes and what they are for are by hand. */
const cases: ReadonlyArray<readonly [text: string, low: number, high: number, of?: string]> = [
  // Hours and minutes in words
  ['Bake three quarters of an hour.', 45, 45, 'bake'],
  ['Bake it an hour and a half.', 90, 90, 'bake'],
  ['Bake an hour and an half.', 90, 90, 'bake'],
  ['Bake two hours and a quarter.', 135, 135, 'bake'],
  ['Bake half an hour.', 30, 30, 'bake'],
  ['Bake half-an-hour.', 30, 30, 'bake'],
  ['A quarter of an hour will bake them.', 15, 15, 'bake'],
  ['Let it bake one hour and three quarters.', 105, 105, 'bake'],
  ['Bake for one and a half hours.', 90, 90, 'bake'],
  ['Bake two and a half hours.', 150, 150, 'bake'],
  ['Bake three-fourths of an hour.', 45, 45, 'bake'],
  ['Bake it five and twenty minutes.', 25, 25, 'bake'],
  ['Bake thirty-five minutes.', 35, 35, 'bake'],
  ['Bake an hour and ten minutes.', 70, 70, 'bake'],
  ['Bake a full hour.', 60, 60, 'bake'],
  ['Bake a good half hour.', 30, 30, 'bake'],
  ['Bake a couple of hours.', 120, 120, 'bake'],
  ['Bake for two thirds of an hour.', 40, 40, 'bake'],
  ['Bake it an houre.', 60, 60, 'bake'],
  ['Bake one hour and one-half.', 90, 90, 'bake'],

  // What is roasted in the oven is baked there, whatever it stands in; over a fire or on the stove it is not: common practice, no source.
  ['Heat the oven. Roast the chicken in a 12-inch skillet for 60 to 75 minutes.', 60, 75, 'bake'],
  ['Roast the chicken in a 12-inch skillet for 60 to 75 minutes.', 60, 75, 'bake'],
  ['Heat the oven. Put the lamb in a roasting pan and roast for an hour.', 60, 60, 'bake'],
  ['Put it on the spit, and roast it two hours. Keep a dish under it.', 120, 120, 'other'],
  ['Roast the shoulder in a dish before a clear fire for an hour.', 60, 60, 'other'],
  ['Heat the oven. Roast the almonds in a frying pan for 5 minutes.', 5, 5, 'boil'],
  ['Heat the oven. Roast the seeds in a skillet for 3 minutes.', 3, 3, 'other'],

  // In figures
  ['Bake for 35–40′.', 35, 40, 'bake'],
  ['Bake 20′.', 20, 20, 'bake'],
  ['Bake 1 h 20′ in a slow oven.', 80, 80, 'bake'],
  ["Bake 40'.", 40, 40, 'bake'],
  ["Bake for 35–40' at 180 °C.", 35, 40, 'bake'],
  ["Rest 45'.", 45, 45, 'stand'],
  ['Bake 1 h 10.', 70, 70, 'bake'],
  ['Bake 1h05 in a slow oven.', 65, 65, 'bake'],
  ['Bake 1-1/2 hour.', 90, 90, 'bake'],
  ['Bake 1½ hours.', 90, 90, 'bake'],
  ['Bake 1 1/4 hours.', 75, 75, 'bake'],
  ['Bake 1/2 an hour.', 30, 30, 'bake'],
  ['Bake 1/4 of an hour.', 15, 15, 'bake'],
  ['Bake 45 min.', 45, 45, 'bake'],
  ['Bake 1 hr 15 min.', 75, 75, 'bake'],
  ['Bake 1 hour 20 minutes.', 80, 80, 'bake'],
  ['Bake 1 h 30 min.', 90, 90, 'bake'],
  ['Bake 2.5 hours.', 150, 150, 'bake'],
  ['Bake 2h.', 120, 120, 'bake'],
  ['Bake for 90 mins.', 90, 90, 'bake'],

  // Ranges
  ['Bake from 20 minutes to 1/2 hour.', 20, 30, 'bake'],
  ['Bake twenty or thirty minutes.', 20, 30, 'bake'],
  ['Bake from three quarters of an hour to an hour.', 45, 60, 'bake'],
  ['Bake half to three-quarters of an hour.', 30, 45, 'bake'],
  ['Bake an hour or an hour and a quarter.', 60, 75, 'bake'],
  ['Bake an hour or two.', 60, 120, 'bake'],
  ['Bake one hour and a half or two hours.', 90, 120, 'bake'],
  ['Bake two hours and a half, or three hours.', 150, 180, 'bake'],
  ['Bake between two and three hours.', 120, 180, 'bake'],
  ['Bake for 25–30 minutes.', 25, 30, 'bake'],
  ['Bake 25 to 30 minutes.', 25, 30, 'bake'],
  ['Bake one and a quarter, or one and a half hours.', 75, 90, 'bake'],
  ['Bake a quarter or half an hour.', 15, 30, 'bake'],
  ['Bake from 2 to 2-1/2 hours.', 120, 150, 'bake'],
  ['Bake ten minutes or a quarter of an hour.', 10, 15, 'bake'],
  ['Bake it six, seven, or eight minutes.', 6, 8, 'bake'],
  ['*Time.*—3/4 to 1 hour. Bake in a hot oven.', 45, 60, 'bake'],
  ['Time: 40 minutes. Bake till brown.', 40, 40, 'bake'],

  // Hedges leave the figure
  ['Bake about half an hour.', 30, 30, 'bake'],
  ['Bake half an hour or rather longer.', 30, 30, 'bake'],
  ['Bake rather more than 2 hours.', 120, 120, 'bake'],
  ['Bake at least one hour.', 60, 60, 'bake'],
  ['Bake nearly an hour.', 60, 60, 'bake'],
  ['Bake not more than twenty minutes.', 20, 20, 'bake'],

  // Nights and days: a night of 8 to 12 hours, from memory
  ['Let them stand in the oven all night.', 480, 720],
  ['Leave the crock in the oven till next day.', 720, 1440],
  ['Bake overnight in the brick oven.', 480, 720, 'bake'],
  ['Bake 90 seconds to 3 minutes.', 1.5, 3, 'bake'],
  ['Bake 3 qrs. of an hour.', 45, 45, 'bake'],
  ['Bake 3 quarters of an hour.', 45, 45, 'bake'],
  ['Shape, and prove overnight in the fridge, 12 to 16 hours.', 720, 960, 'rise'],

  // "Up to" is the most: of a wait half of it is the least that is likely (from memory), of baking the share of `hedge-amounts`.
  ['Prove up to 24 hours.', 720, 1440, 'rise'],
  ['Chill for up to an hour.', 30, 60, 'stand'],
  ['Bis zu 24 Stunden im Kühlschrank ruhen lassen.', 720, 1440, 'stand'],
  ['Bake up to 40 minutes.', 32, 40, 'bake'],
  ['Refrigerate for 8 and up to 24 hours.', 480, 1440, 'stand'],
  ['Refrigerate at least 8 hours and up to 2 days.', 480, 2880, 'stand'],
  ['8 bis zu 24 Stunden ruhen lassen.', 480, 1440, 'stand'],

  ['Eine halbe Stunde backen.', 30, 30, 'bake'],
  ['Anderthalb Stunden backen.', 90, 90, 'bake'],
  ['Eine Viertelstunde backen.', 15, 15, 'bake'],

  // What the time is for
  ['Let it rise two hours before the fire.', 120, 120, 'rise'],
  ['Set it an hour to rise.', 60, 60, 'rise'],
  ['Boil it three hours.', 180, 180, 'boil'],
  ['Simmer for 10 minutes.', 10, 10, 'boil'],
  ['Boil the sugar a quarter of an hour, taking off the scum as it rises.', 15, 15, 'boil'],
  ['Let it boil, removing the scum as it rises, for half an hour.', 30, 30, 'boil'],
  ['Soak the peas twelve hours.', 720, 720, 'stand'],
  ['Let the paste stand a quarter of an hour.', 15, 15, 'stand'],
  ['Let the loaves stand a quarter of an hour while the oven is swept, then set them in.', 15, 15, 'stand'],
  ['Beat the eggs half an hour.', 30, 30, 'other'],
  ['Knead it ten minutes, then bake.', 10, 10, 'other'],
  ['Prove for 45 minutes.', 45, 45, 'rise'],
  ['Put it in a quick oven for 20 minutes.', 20, 20, 'bake'],
  ['It requires two hours’ baking.', 120, 120, 'bake'],
]

describe('stretches of time', () => {
  it.each(cases.map(([text, low, high, of]) => ({text, low, high, of})))('$text → $low–$high min', ({text, low, high, of}) => {
    const found = readTimes(plainSection(text))
    expect(found.map((time) => time.text)).toHaveLength(1)
    const time = found[0]!
    expect(time.minutes).toEqual({low, high})
    if (of !== undefined) expect(time.of).toBe(of)
    expect(text.slice(time.start, time.end)).toBe(time.text)
  })

  it.each([
    ['Bake for 90 s in a very hot oven.', '90 s', 1.5, 1.5],
    ['Bake it 90s. Then turn it.', '90s.', 1.5, 1.5],
    ['90 s bei 400 °C backen.', '90 s', 1.5, 1.5],
    ['Bake 15-ish minutes.', '15-ish minutes', 15, 15],
    ['Bake 15ish minutes.', '15ish minutes', 15, 15],
    ['Bake thirty-ish minutes.', 'thirty-ish minutes', 30, 30],
    ['Bake 15 minutes-ish.', '15 minutes-ish', 15, 15],
    ['Bake 20-ish to 25-ish min.', '20-ish to 25-ish min.', 20, 25],
    ['Bake 20- to 25 minutes.', '20- to 25 minutes', 20, 25],
  ])('as it is jotted down: %s', (text, said, low, high) => {
    expect(readTimes(plainSection(text))).toMatchObject([{text: said, minutes: {low, high}, of: 'bake'}])
  })

  it.each([
    'Average cost, 12s. Bake at home.',
    'Average cost, from 10s. to 12s.; middling size, from 12s. to 15s.',
    'Bake it for 15s. 6d.',
    'Bake as in the 90s.',
    'Bake as in 1890s kitchens.',
  ])('shillings and years are no seconds in: %s', (text) => expect(readTimes(plainSection(text))).toEqual([]))

  it('a mark of feet is no minute', () => {
    expect(readTimes(plainSection('Bake on a floor of 6′ × 4′.'))).toEqual([])
    expect(readTimes(plainSection('Bake on a floor 6′ 2″ wide.'))).toEqual([])
  })

  it.each([
    "Bake on a floor of 6' × 4'.",
    'Bake on a floor 6\' 2" wide.',
    "Bake as in the 40's.",
    "She said 'Bake at 180' and left.",
  ])('a stroke is no minute in: %s', (text) => expect(readTimes(plainSection(text))).toEqual([]))

  it.each([
    // What stands behind a stop is another sentence's, though the stop is an abbreviation's too.
    ['Bake for 45–50 mins. Leave to cool in the tin for 10 mins.', ['bake', 'stand']],
    ['Bake 1 hr. Stand 5 min.', ['bake', 'stand']],
    ['Chill the dough min. 3 hours. Bake 20 min in a hot oven.', ['stand', 'bake']],
    // No baking, though the receipt bakes and no word of a task stands by.
    ['Wet it to a batter over night. Bake 1 hour.', ['stand', 'bake']],
    ['Bulk 2 h, then bake 20 min.', ['rise', 'bake']],
    ['Bake an hour. Hang upside down 10 hours.', ['bake', 'stand']],
    ['Bake an hour. Let sit 8 hrs or overnight.', ['bake', 'stand']],
    ['Bake an hour. It is better after 3 days.', ['bake', 'other']],
    ['Set the pot in the oven. It should have eight or nine hours there.', ['bake']],
    ['Half an hour before the dough is ready, heat the oven. Bake 30 minutes.', ['other', 'bake']],
    ['3 hours before serving shape into rolls. Bake 15 minutes.', ['other', 'bake']],
    ['Put it in the oven an hour before dinner.', ['bake']],
    ['Add the butter. 1 h at room temperature, then bake 20 min.', ['stand', 'bake']],
    // Of the baking, by the heat beside it.
    ['Gas ½ for 3½–4 hrs (two) or 5 hrs (one).', ['bake', 'bake']],
    ['425° 15 min., then 350° 45 min.', ['bake', 'bake']],
    ['Cuire 45 min à 240 °C.', ['bake']],
    ['Bei 200 °C 40 Minuten backen.', ['bake']],
    // Steam let into the oven steams nothing, and a pound loaf is not pounded.
    ['Bake 20 min at 240 °C with steam, then 25 min at 210 °C.', ['bake', 'bake']],
    ['Half an hour for a pound loaf. Bake in a hot oven.', ['bake']],
    ['Prep Time: 15 mins | Bake Time: 1 hr | Total Time: 1 hr 15 mins', ['other', 'bake', 'other']],
    ['Preheat the Dutch oven 1 hr. Bake 40 minutes.', ['other', 'bake']],
    ['Bake in a quick well heat oven, 15 minutes.', ['bake']],
    ['Bake in a slack oven till set, from thirty-five to forty-five minutes.', ['bake']],
    ['Let it rise 4–5 h, folding at 30, 60 and 90 min. Bake 40 min.', ['rise', 'other', 'bake']],
    ['Bake 15 min. Makes 12 std muffins.', ['bake']],
    ['2 Std. gehen lassen, 1 Stunde backen.', ['rise', 'bake']],
    ['Bake at 245C for 15 min w/ steam, then 220C 25-30 min.', ['bake', 'bake']],
    ['Do this three hours before it is put in the oven. Bake 20 minutes.', ['other', 'bake']],
    ['Let it lie till within a quarter of an hour of setting it in the oven. Bake 20 minutes.', ['other', 'bake']],
    ['Bake in a brick oven five hours with a moderate fire.', ['bake']],
    ['Sour: 150 g boiling water, 30 g starter (16 h, 22 °C). Bake 60 min.', ['stand', 'bake']],
    ['Put it in boiling water for 10 minutes.', ['boil']],
    // What is done meanwhile, and where it stands.
    ['Let it prove while the oven heats, half an hour. Bake 40 minutes.', ['rise', 'bake']],
    ['Let them rise until the oven is hot, about 45 minutes. Bake 20 minutes.', ['rise', 'bake']],
    ['When the oven is hot put them in, half an hour.', ['bake']],
    ['Let it lie by the fire an hour. Bake an hour.', ['stand', 'bake']],
    ['Leave it all night before a good fire. Bake 1 hour.', ['stand', 'bake']],
    ['It must be placed a few minutes near the fire, in a basin, with a cloth. Bake 1 hour.', ['stand', 'bake']],
    // Salted, drained: no baking.
    ['Slice and salt the onions 1 hour. Bake 35 minutes.', ['stand', 'bake']],
    ['Sugar the plums for 2 hours. Bake 35 minutes.', ['stand', 'bake']],
    ['Season with salt and the pepper; 2 hours at 180 °C.', ['bake']],
    ['Drain the curds in a cloth 2 hours. Bake 40 minutes.', ['stand', 'bake']],
    // A glaze is boiled, and what is brushed with it bakes on.
    ['Bake 40 minutes. Make the glaze: let it bubble 10 minutes.', ['bake', 'boil']],
    ['Bake until the juice bubbles, 40 minutes.', ['bake']],
    ['Bake 40 minutes. Glaze: 20 minutes.', ['bake', 'other']],
    ['Bake 40 minutes, brush with the glaze and give it another 10 minutes.', ['bake', 'bake']],
    // Part of the time before it.
    ['Leave 4 hours, with folds in the first two hours. Bake 40 minutes.', ['stand', 'other', 'bake']],
    ['Let it rise 2 hours, knocking it back after 1 hour. Bake 40 minutes.', ['rise', 'other', 'bake']],
    ['Let it rise 1 hour, shape it, and let it rise 1 hour. Bake 40 minutes.', ['rise', 'rise', 'bake']],
    ['Fold every half hour for the first two hours, leaving it 4 hours in all. Bake 40 min.', ['other', 'stand', 'bake']],
    ['4 Stunden ruhen lassen, in den ersten zwei Stunden falten. 40 Minuten backen.', ['stand', 'other', 'bake']],
    // Roasted or dried in the oven by the heat beside it, before the fire without.
    ['Roast at 220 °C for 20 minutes, then 180 °C for 1 hour. Rest 20 minutes.', ['bake', 'bake', 'stand']],
    ['Roast it two hours before a good fire.', ['other']],
    ['Time: an hour before a brisk fire.', ['other']],
    ['30 Minuten bei 220 °C anbraten, dann bei 160 °C 2 Stunden schmoren.', ['bake', 'bake']],
    ['Bei 90 °C 2 bis 3 Stunden trocknen.', ['bake']],
    ['30 Minuten anbraten, 40 Minuten backen.', ['other', 'bake']],
    ['Bake it in a quick oven for the first half hour, then three hours in a soaking heat.', ['bake', 'bake']],
    ['Parboil the beans half an hour. Bake all day.', ['boil', 'bake']],
    ['Cook the juice down 5 minutes. Bake 40 minutes.', ['other', 'bake']],
    ['Die Soße 10 Minuten einkochen. 2 Stunden backen.', ['boil', 'bake']],
    // A cool oven bakes, and what is browned in a pan does not.
    ['Drop in nuts upon tins, and bake 15 to 20 minutes in a cool oven.', ['bake']],
    ['Brown the beef in batches, 10 minutes. Bake 3 hours.', ['other', 'bake']],
    ['Brown the top in a quick oven, 10 minutes.', ['bake']],
    ['Bake 3 hours. Rest the dough 10 minutes, drop it in and cook for another 20 minutes.', ['bake', 'stand', 'bake']],
    ['2 Stunden backen. Die letzten 15 Minuten bei 220 °C mit Salzwasser bepinseln.', ['bake', 'other']],
    ['2 Stunden backen, alle 30 Minuten begießen.', ['bake']],
    ['30 Min. backen; nach 20 Min. abdecken.', ['bake', 'other']],
    ['Set it in when the bread is drawn, and leave it four or five hours.', ['bake']],
    ['Set it in the larder and leave it four hours. Bake an hour.', ['stand', 'bake']],
    // German nights and waits.
    ['Über Nacht einweichen. 1 Stunde backen.', ['stand', 'bake']],
    ['1 Stunde kalt stellen. 15 Minuten backen.', ['stand', 'bake']],
    ['10 Minuten entspannen lassen. 15 Minuten backen.', ['stand', 'bake']],
    // The sum of what the steps say one by one.
    [
      'Prep 40 min · Cook 20 min · plus 2 hrs proving. Leave to rise 1 hr. Bake 25 min.',
      ['other', 'other', 'other', 'rise', 'bake'],
    ],
    // Where another time is the baking's.
    ['Cook: 3 h. Simmer 2 hours; bake at 200 °C for 20 minutes.', ['other', 'boil', 'bake']],
    ['Pour in the milk when it has been in the oven half an hour. Bake four hours.', ['other', 'bake']],
    ['When it has been in the oven two hours, draw it.', ['bake']],
    ['Bake an hour; scoop them out, and return them to dry for another half hour.', ['bake', 'bake']],
    // Of a sponge, and folded in it.
    ['Build the levain the night before: 25 g starter, 90 g flour, 10–12 h. Bake 40 minutes.', ['stand', 'bake']],
    ['Fold twice in the first hour, 2 hours in total. Bake 20 minutes.', ['stand', 'bake']],
    ['Bake 22 min at 230 °C, dropping to 210 °C after the first 10 min.', ['bake', 'other']],
    ['Bake 45 minutes, uncovered for the last 15 minutes.', ['bake', 'other']],
    ['Bake 30 minutes covered, then uncover for the last 15 minutes.', ['bake', 'bake']],
  ])('%s', (text, of) => expect(readTimes(plainSection(text)).map((time) => time.of)).toEqual(of))

  it('“overnight (up to 48 hours)” is one stretch', () => {
    const found = readTimes(plainSection('Leave it overnight in the fridge (up to 48 hours).'))
    expect(found.map(({minutes}) => minutes)).toEqual([{low: 480, high: 2880}])
  })

  it('“8 hrs or overnight” is one stretch', () => {
    expect(readTimes(plainSection('Let it rise 8 hrs or overnight.')).map(({text, minutes}) => [text, minutes])).toEqual([
      ['8 hrs or overnight', {low: 480, high: 720}],
    ])
  })

  it('a night in the title is no baking time', () => {
    const {times} = translate('# Baked beans, overnight\n\nBake in a slack oven 8 hours.\n', {file: 'a.md'}).receipts[0]!
    expect(times.map(({of}) => of)).toEqual(['other', 'bake'])
  })

  it('the title’s time is no baking time', () => {
    const [title, bake] = translate('# Twenty-minute scones\n\nBake 12 minutes.\n', {file: 'a.md'}).receipts[0]!.times
    expect([title!.of, bake!.of]).toEqual(['other', 'bake'])
  })

  it('a time given twice is read twice', () => {
    const found = readTimes(plainSection('Bake from 1/2 to 3/4 hour. Time: 1/2 to 3/4 hour.'))
    expect(found.map((time) => [time.minutes.low, time.minutes.high, time.of])).toEqual([
      [30, 45, 'bake'],
      [30, 45, 'bake'],
    ])
  })

  it('several times in one receipt each keep their own work', () => {
    const text = 'Let it rise two hours, knead it ten minutes, let it stand half an hour, and bake it an hour and a quarter.'
    expect(readTimes(plainSection(text)).map((time) => [time.minutes.low, time.of])).toEqual([
      [120, 'rise'],
      [10, 'other'],
      [30, 'stand'],
      [75, 'bake'],
    ])
  })

  it.each([
    'Add a minute quantity of mace.',
    'Turn it every ten minutes.',
    'Half a pound of butter and two eggs.',
    'Take an hourglass.',
    'A quarter of a pound of sugar, a day labourer’s loaf.',
    'Take 3 m of ribbon.',
  ])('no stretch of time in: %s', (text) => {
    expect(readTimes(plainSection(text)).filter((time) => time.of === 'bake')).toEqual([])
  })
})

describe('a step on the stove before the baking', () => {
  const read = (text: string): readonly string[] =>
    readTimes(plainSection(text)).map(({minutes, of}) => `${minutes.low}–${minutes.high} ${of}`)
  it.each([
    ['Cook the onions 40 minutes. Line the tin; bake 30 minutes.', ['40–40 other', '30–30 bake']],
    ['Cook the sliced onions gently in the butter for 40 minutes; bake 30 minutes.', ['40–40 other', '30–30 bake']],
    ['Cook the mixture in a pan for 5 minutes. Bake 30 minutes.', ['5–5 other', '30–30 bake']],
    ['Cook it over a low heat 20 minutes. Bake 30 minutes.', ['20–20 other', '30–30 bake']],
    ['Sauté the leeks 10 minutes. Bake 30 minutes.', ['10–10 other', '30–30 bake']],
    ['Zwiebeln 40 Minuten dünsten. Im Ofen 25 bis 30 Minuten backen.', ['40–40 other', '25–30 bake']],
  ])('%s', (text, said) => expect(read(text)).toEqual(said))
  it.each([
    'Preheat the oven to 400 °F. Cook the chicken 40 minutes.',
    'Preheat the oven. Cook the biscuits 40 minutes.',
    'Heat the oven. Cook for 40 minutes.',
    'Put the potatoes in the oven and cook 40 minutes.',
    'Cook the meringues in a slow oven 40 minutes.',
  ])('is none in: %s', (text) => expect(read(text)).toEqual(['40–40 bake']))
})

describe('times of one bake', () => {
  const bakes = (text: string): readonly string[] =>
    readTimes(plainSection(text)).map(
      ({minutes: {low, high}, then, total}) => `${low}-${high}${then ? ' then' : ''}${total ? ' total' : ''}`,
    )
  it.each([
    ['Bake 20 minutes at 220 °C then 30 at 180.', ['20-20', '30-30 then']],
    ['Bake 20 minutes at 220 °C, then another 25–30 at 180 °C.', ['20-20', '25-30 then']],
    ['Bake for 40 minutes covered, then uncover and bake a further 10–15 minutes.', ['40-40', '10-15 then']],
    ['Bake 30 minutes with the lid on and 15 minutes with the lid off.', ['30-30', '15-15 then']],
    ['Bake 15 minutes, turn the oven down and bake 30 minutes more.', ['15-15', '30-30 then']],
    ['Bake 20 minutes at 250 °C, falling to 180 °C, altogether 75 minutes.', ['20-20', '75-75 total']],
    ['Bake 20 minutes at 250 °C and then at 180 °C, 75 minutes in all.', ['20-20', '75-75 total']],
    ['Bake 2 hours. Boil the glaze 10 minutes; brush it on and give it another 10 minutes.', ['120-120', '10-10', '10-10 then']],
    ['30 Minuten mit Deckel, 15 Minuten ohne Deckel backen.', ['30-30', '15-15 then']],
    // Another case, and no more of the same.
    ['Bake 40 minutes, and even ten minutes longer, if very deep.', ['40-40', '10-10']],
    ['Bake 40 minutes, or if in small tins then 20 minutes.', ['40-40', '20-20']],
    ['Bake 20 minutes, then 30 currants go on top.', ['20-20']],
  ])('%s', (text, said) => expect(bakes(text)).toEqual(said))
})

const yields: ReadonlyArray<readonly [text: string, low: number, high: number, of: string]> = [
  ['Sufficient for 6 persons.', 6, 6, 'persons'],
  ['*Sufficient* for 5 or 6 persons. *Seasonable* at any time.', 5, 6, 'persons'],
  ['This will make two loaves.', 2, 2, 'loaves'],
  ['Serves 8', 8, 8, 'persons'],
  ['Serves 4–6.', 4, 6, 'persons'],
  ['Serves: 10 people', 10, 10, 'persons'],
  ['Enough for 5 or 6 persons.', 5, 6, 'persons'],
  ['This quantity makes twelve cakes.', 12, 12, 'cakes'],
  ['This quantity will make two good-sized loaves.', 2, 2, 'loaves'],
  // "about" is a tenth either way, as of amounts: from memory.
  ['Makes about 24 biscuits.', 22, 26, 'biscuits'],
  ['Makes 4 balls.', 4, 4, 'balls'],
  ['Ergibt ca. 60 Stück.', 54, 66, 'pieces'],
  ['Ergibt 2 Brote.', 2, 2, 'loaves'],
  ['Gives about 5 dozen.', 54, 66, 'pieces'],
  ['Enough for two small tins', 2, 2, 'tins'],
  ['yield: 24 rolls (about)', 22, 26, 'rolls'],
  ['Makes 20 or so.', 18, 22, 'pieces'],
  ['Makes nearly 20 rolls.', 16, 20, 'rolls'],
  ['Für 12 Stück', 12, 12, 'pieces'],
  ['Zutaten (für ca. 40 Stück)', 36, 44, 'pieces'],
  ['reicht für 6 Personen', 6, 6, 'persons'],
  ['Reicht für 6 bis 8 Personen.', 6, 8, 'persons'],
  ['Für zwei Kastenformen', 2, 2, 'tins'],
  ['For one 40 x 30 cm tray: enough for 12 people.', 1, 1, 'tray'],
  ['4 Portionen', 4, 4, 'persons'],
  ['Makes 2-3 dozen', 24, 36, 'pieces'],
  ['Makes two 9x5 loaves', 2, 2, 'loaves'],
  ['Quantity: 12 buns', 12, 12, 'buns'],
  ['It will make about thirty.', 27, 33, 'pieces'],
  ['Makes enough for 8.', 8, 8, 'persons'],
  ['Makes 2 large loaves', 2, 2, 'loaves'],
  ['Makes a dozen buns.', 12, 12, 'buns'],
  ['Sufficient to make 7 or 8 buns.', 7, 8, 'buns'],
  ['Sufficient to fill 9 or 10 cups.', 9, 10, 'cups'],
  ['Enough for two small pies.', 2, 2, 'pies'],
  ['Yield: 3 dozen cookies', 36, 36, 'cookies'],
  ['It will serve ten people.', 10, 10, 'persons'],
  ['This is enough for a company of twenty persons.', 20, 20, 'persons'],
  ['Cuts into three dozen squares.', 36, 36, 'squares'],
  ['A tray of focaccia (12 portions).', 12, 12, 'persons'],
  ['Bake it (6 to 8 servings).', 6, 8, 'persons'],
  ['For one 2 kg loaf:', 1, 1, 'loaf'],
  ['For 4 pizzas (30 cm)', 4, 4, 'pizzas'],
  ['For 6', 6, 6, 'persons'],
  ['Makes two 800 g loaves.', 2, 2, 'loaves'],
  ['Dough for 4 pizzas: 600 g flour.', 4, 4, 'pizzas'],
  ['(ca. 60 Stück)', 54, 66, 'pieces'],
  ['Makes 1 (9-inch) pie', 1, 1, 'pie'],
  ['Yield: two 9x5-inch loaves', 2, 2, 'loaves'],
]

describe('yields', () => {
  it.each(yields.map(([text, low, high, of]) => ({text, low, high, of})))('$text', ({text, low, high, of}) => {
    const found = readYields(plainSection(text)).serves
    expect(found).not.toBeNull()
    expect([found!.low, found!.high, found!.of]).toEqual([low, high, of])
    expect(text.slice(found!.start, found!.end)).toBe(found!.text)
  })

  it.each([
    'Make two pies of it and bake them.',
    'Serve with cream.',
    'Bake for 20 minutes.',
    'Make a hole in the flour.',
    'Take six eggs for the custard.',
    'Serves a crowd.',
    'This gives two cups of juice.',
    'Give it 12 minutes.',
    'It gives a brown crust.',
    'Rühren für 10 Minuten.',
  ])('no yield in: %s', (text) => {
    expect(readYields(plainSection(text)).serves).toBeNull()
  })
})

describe('drying at a heat is baking', () => {
  const readOf = (text: string) => {
    const {oven, times} = translate(`# Meringues\n\n- 6 egg whites\n- 350 g sugar\n\n${text}\n`, {file: 'a.md'}).receipts[0]!
    return {
      celsius: oven.map(({celsius}) => [Math.round(celsius.low), Math.round(celsius.high)]),
      times: times.map(({of, minutes}) => [of, minutes.low, minutes.high]),
    }
  }
  it.each([
    ['Pipe on paper. Dry at 100 °C for 2 hours.', 100, 'bake', 120],
    ['Dry them out for 2 hours at about 100 °C.', 100, 'bake', 120],
    ['Let them dry at 200 °F for 2 hours, the door ajar.', 93, 'bake', 120],
    ['Bei 100 °C 2 Stunden trocknen lassen.', 100, 'bake', 120],
  ])('“%s”', (text, celsius, of, minutes) => {
    expect(readOf(text)).toEqual({celsius: [[celsius, celsius]], times: [[of, minutes, minutes]]})
  })
  it('through the night too', () => {
    const {oven, times} = translate('# Dried pears\n\n- 2 kg pears\n\nDry in a cool oven at 80 °C overnight.\n', {file: 'a.md'})
      .receipts[0]!
    expect(oven.at(-1)!.celsius).toEqual({low: 80, high: 80})
    expect(times).toMatchObject([{of: 'bake', overnight: true}])
  })
  it.each([
    [
      'Wash the fruit and dry it on a cloth for 2 hours. Bake at 150 °C for 3 hours.',
      [
        ['stand', 120, 120],
        ['bake', 180, 180],
      ],
    ],
    [
      'Dry the fruit for 2 hours, then bake at 150 °C for 3 hours.',
      [
        ['stand', 120, 120],
        ['bake', 180, 180],
      ],
    ],
    [
      'Bake at 150 °C for 3 hours. Leave to dry for 2 hours.',
      [
        ['bake', 180, 180],
        ['stand', 120, 120],
      ],
    ],
  ])('not: “%s”', (text, times) => {
    expect(readOf(text)).toEqual({celsius: [[150, 150]], times})
  })
})

/** What words of time last: common practice, no source. */
describe('a length of time that front matter or a log states', () => {
  it.each([
    ['a quarter of an hour', 15, 15],
    ['half an hour', 30, 30],
    ['an hour and a half', 90, 90],
    ['two hours', 120, 120],
    ['eine Viertelstunde', 15, 15],
    ['anderthalb Stunden', 90, 90],
    ['2 bis 3 Stunden', 120, 180],
    ['20 Min.', 20, 20],
    ['45-60 min', 45, 60],
  ])('%s', (text, low, high) => expect(readDuration(text)).toEqual({ok: true, value: {low, high}}))
  it.each(['half an hour in the oven', 'the moon', '90', 'two', '3 loaves'])('none: %s', (text) =>
    expect(readDuration(text).ok).toBe(false),
  )
  it('is read in a receipt’s front matter', () => {
    const {receipts, messages} = translate(
      '---\nrise: anderthalb Stunden\nbake: half an hour\n---\n\n# Bread\n\n- 500 g flour\n',
      {
        file: 'a.md',
      },
    )
    expect(messages).toEqual([])
    expect(receipts[0]!.facts).toMatchObject({rise: {low: 90, high: 90}, bake: {low: 30, high: 30}})
  })
})
