import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'

/** How many vessels a method bakes in, by its own words. Invented texts; common practice, no source. */
const ingredients = '- 300 g flour\n- 200 g butter\n- 1 kg apples\n'
const said = (method: string, title = 'Orchard pudding') =>
  translate(`# ${title}\n\n${ingredients}\n${method}\n`, {file: 'x.md'}).receipts[0]!.vessels

describe('the vessels a method bakes in', () => {
  it.each([
    ['Line a 9-inch pie plate with the paste, fill it and bake it an hour.', 1, 'a 9-inch pie plate'],
    ['Turn into a 10 inch round tin and bake at 140 °C for 4 hours.', 1, 'a 10 inch round tin'],
    ['Pour into an 8 inch square tin and bake.', 1, 'an 8 inch square tin'],
    [
      'Pour into a greased 30 x 20 cm (12 x 8 inch) roasting tin. Bake 40 minutes.',
      1,
      'a greased 30 x 20 cm (12 x 8 inch) roasting tin',
    ],
    ['Grease 9-inch square pan. Spread it and bake.', 1, '9-inch square pan'],
    ['Put it in a deep dish, cover it with a thin paste, and bake it an hour.', 1, 'a deep dish'],
    ['Mix them well, and bake it in a dish an hour.', 1, 'a dish'],
    ['Butter the dish, lay in the apples, and bake.', 1, 'the dish'],
    ['Lay the apples at the bottom of a pie-dish, and bake them.', 1, 'a pie-dish'],
    ['Pour it into a well-buttered 2-quart dish.', 1, 'a well-buttered 2-quart dish'],
    // How much it holds is no other vessel.
    ['Pour into a greased 12-cup bundt pan. Bake for an hour.', 1, 'a greased 12-cup bundt pan'],
    ['Eine Springform (26 cm) einfetten, füllen und backen.', 1, 'Eine Springform (26 cm)'],
    ['In eine gebutterte Auflaufform geben und eine Stunde backen.', 1, 'eine gebutterte Auflaufform'],
    ['Bake in two pie plates.', 2, 'two pie plates'],
    ['Line two 9-inch pie plates, fill them and bake.', 2, 'two 9-inch pie plates'],
    ['Have three deep pans well greased, put it in, and bake.', 3, 'three deep pans'],
    ['Butter two deep dishes, fill the dishes and bake.', 2, 'two deep dishes'],
    // What it is mixed, boiled and served in is none.
    ['Beat it in a bowl, pour it into a deep dish, and bake.', 1, 'a deep dish'],
    ['Boil the milk in a pan. Pour it into a deep dish and bake. Serve it on a plate.', 1, 'a deep dish'],
  ])('%s', (method, count, text) => {
    expect(said(method)).toMatchObject({count, text})
  })

  it.each([
    ['Bake in small tins.'],
    ['Put it in patty pans and bake.'],
    ['Bake it in tins.'],
    ['Bake in one or two dishes.'],
    ['Bake it in a dish or two.'],
    ['Bake in a deep dish, or in small tins.'],
    ['Put one in each dish, and bake.'],
    ['Bake the half of it in a dish, and the rest in another dish.'],
    ['Pour it into Formen and bake.'],
    ['Bake an hour. Turn it out on a dish.'],
    ['Stew it gently in a pan.'],
    ['Beat it in a deep dish, roll it out, and bake it on the bricks.'],
    ['Melt the butter in a 9 inch pan. Shape into cakes and bake.'],
  ])('are not told by “%s”', (method) => {
    expect(said(method)).toBeUndefined()
  })
})

describe('the depth of a vessel that the text names twice', () => {
  const vessel = (text: string) => {
    const {inferred} = translate(`# Focaccia\n\n${text}\n`, {file: 'x.md'}).receipts[0]!
    return inferred.find(({field}) => field === 'vessel')?.value
  }
  const list = '- 500 g flour\n- 400 g water\n- 7 g yeast\n'
  it('is what it says of the one as long and as wide, wherever that stands', () => {
    expect(vessel(`One tin 30 × 20 cm.\n\n${list}\nTip into an oiled 30 × 20 × 4 cm tin. Bake 25 minutes.`)).toBe(
      'oblong 30 x 20 x 4 cm',
    )
    expect(vessel(`One tin 30 × 20 cm.\n\n${list}\nMix in a 25 × 20 × 12 cm tin. Bake 25 minutes.`)).toBe('oblong 30 x 20 x 5 cm')
  })
})
