import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'
import type {Receipt} from '../src/receipt/types.js'
import {makeDishes} from '../src/scale/dishes.js'

const receiptOf = (title: string, text: string): Receipt => translate(`# ${title}\n\n${text}\n`, {file: 'drying.md'}).receipts[0]!
const HERBS = '- 100 g rosemary\n- 100 g thyme\n\n'
const DRY = 'Spread on a tray 40 x 30 cm. Dry at 40 °C with the door ajar for 3 hours, until they crumble.'
const oven = {floor: {shape: 'round' as const, diameter: 1.07}, mouth: {width: 0.46, height: 0.28}, vaultHeight: 0.41}
const planned = (receipt: Receipt) =>
  makeDishes({
    day: {
      people: 4,
      items: [{file: 'drying.md', title: receipt.title, amount: null, wantedBy: 720, line: 9, column: 3}],
      spare: [],
    },
    receipts: [receipt],
    oven,
  })

/** Herbs dry at 35 to 45 °C with the door a little open. Common practice, no source. */
describe('what only dries', () => {
  it.each([
    'Drying herbs',
    'Herbs to dry',
    'Drying thyme',
    'Thyme and sage, dried',
    'To dry parsley',
    'Garden thyme',
    'Drying camomile',
  ])('is dried herbs: “%s”', (title) => {
    expect(receiptOf(title, HERBS + DRY).kind).toBe('drying herbs')
  })

  it('is fruit where fruit or vegetables dry, and another dish where that only has dried things in it', () => {
    expect(receiptOf('Drying plums', '- 1 kg plums\n\nDry in the oven at 60 °C for 8 hours.').kind).toBe('drying fruit')
    expect(
      receiptOf('Tomato halves', '- 1 kg tomatoes\n- 5 g thyme\n- 1 tsp salt\n\nDry in the oven at 100 °F for 9 hours.').kind,
    ).toBe('drying fruit')
    expect(receiptOf('Dried thyme focaccia', '- 500 g flour\n- 7 g yeast\n\nBake at 220 °C for 20 minutes.').kind).not.toMatch(
      /^drying/,
    )
    expect(receiptOf('Preserved pears', '- 1 kg pears\n\nBoil in syrup, and dry them in the oven.').kind).toBeNull()
  })

  it.each([
    ['Dry at 40 °C for 3 hours.', 40],
    ['Dry in the oven at 100 °F for 3 hours.', 37.8],
    ['Dry them gently, at about 35 °C, for 3 hours.', 35],
    ['Trocknen bei 40 °C für 3 Stunden.', 40],
  ])('reads the heat of “%s”', (text, celsius) => {
    const {oven: heat, times} = receiptOf('Drying herbs', HERBS + text)
    expect(heat).toHaveLength(1)
    expect(heat[0]!.celsius.low).toBeCloseTo(celsius, 0)
    expect(times.map(({of}) => of)).toEqual(['bake'])
  })

  it.each([
    ['Spread on a tray 40 x 30 cm. At 40 °C with the door ajar leave to dry 3 hours.', 40],
    ['Auf ein Blech legen. Bei 40 °C mit leicht geöffneter Tür 4 Stunden trocknen.', 40],
    ['Spread on a tray and dry between 35 and 40 °C for 3 hours.', 35],
    ['With the oven at 100 °F and the door ajar, dry them for 3 hours.', 37.8],
    ['Dry for 3 hours; 40 °C is enough.', 40],
    ['Wash and pat dry. Set the oven to 40 °C. Dry on a tray for 3 hours.', 40],
    ['1. Set the oven to 40 °C.\n2. Lay on a tray and leave to dry for 9 hours.', 40],
  ])('reads the heat before the drying, or in the clause beside it: “%s”', (text, celsius) => {
    const {kind, oven: heat, times} = receiptOf('Thyme', `- 2 bunches thyme\n\n${text}`)
    expect(kind).toBe('drying herbs')
    expect(heat.map(({celsius: {low}}) => Math.round(low * 10) / 10)).toEqual([expect.closeTo(celsius, 0)])
    expect(times.map(({of}) => of)).toEqual(['bake'])
  })

  it('reads a fruit’s heat before its drying', () => {
    const {kind, oven: heat} = receiptOf('Tomatoes', '- 1 kg tomatoes\n\nPut in at 60 °C for 9 hours to dry out.')
    expect(kind).toBe('drying fruit')
    expect(heat.map(({celsius}) => celsius.low)).toEqual([60])
  })

  it('leaves a dough’s, a milk’s and a room’s warmth alone', () => {
    const bread = '- 500 g flour\n- 7 g dry yeast\n- 300 ml milk\n\n'
    for (const said of [
      'Mix the dry yeast into milk at 40 °C.',
      'Mix the dry ingredients, and the milk at about 40 °C.',
      'Leave to rise at 30 °C for 2 hours.',
      'Let the herbs dry at 25 °C for 3 days.',
      'Mix the dry ingredients; warm the milk to 40 °C.',
      'Warm the milk to 38 °C and dry the raisins.',
      'Leave in the oven at 30 °C to prove 1 hour. Dry the tins.',
      'Dry the figs in a warm room at 31 °C.',
    ]) {
      const {oven: heat} = receiptOf('White loaf', `${bread}${said} Bake at 220 °C for 40 minutes.`)
      expect(
        heat.map(({celsius}) => celsius.low),
        said,
      ).toEqual([220])
    }
  })

  it('is never planned for a moderate oven: by its own heat, else for a slack one', () => {
    const herbs = planned(receiptOf('Drying herbs', HERBS + DRY))
    expect(herbs.dishes[0]!.need.startBest).toBeLessThanOrEqual(65)
    expect(herbs.dishes[0]!.ajar).toBe('with the door ajar')
    const meat = planned(receiptOf('Strips', '- 1 kg beef\n\nDry on a tray 40 x 30 cm for 6 hours with the door ajar.'))
    expect(meat.dishes[0]!.need.startHigh).toBeLessThan(150)
    expect(meat.dishes[0]!.ajar).toBe('with the door ajar')
    expect(meat.messages.find(({rule}) => rule === 'scale-kind')!.reason).toMatch(/slack oven, since it dries$/)
  })

  it('tells that the plan reckons with the door shut where what is not dry wants it open', () => {
    const baked = planned(
      receiptOf('Roast beef', '- 1.5 kg beef\n\nRoast in a tin 30 x 20 x 6 cm at 180 °C for 90 minutes with the door ajar.'),
    )
    expect(baked.messages.map(({rule}) => rule)).toContain('scale-ajar')
    expect(baked.dishes[0]!.ajar).toBeUndefined()
  })
})
