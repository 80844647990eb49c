import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'
import {makeDishes} from '../src/scale/dishes.js'
import {deBook} from '../src/sheets/words/de-sentences.js'
import {inBook} from '../src/sheets/words/sentences.js'

/** Invented receipts. That whoever writes “24 apples” counts apples, and no dishes of apples: common practice, no source. */
const oven = {floor: {shape: 'round' as const, diameter: 1.07}, mouth: {width: 0.46, height: 0.28}, vaultHeight: 0.41}
const texts = {
  apples:
    '# Baked apples\n\nCore twelve large apples, fill them with sugar and a clove in each, set them in a deep dish with a tea-cup of water, and bake forty minutes in a moderate oven.\n',
  pears:
    '# Pears in the oven\n\nPut twelve pears into a stone jar with half a pound of sugar and a pint of water. Bake four hours in a slack oven.\n',
  thighs:
    '# Harvest bake\n\n- 8 chicken thighs (1.2 kg)\n- 500 g potatoes\n- 2 onions\n\nRoast in a roasting tin 35 x 25 cm at 200 °C for 45 minutes.\n',
  peppers:
    '# Stuffed peppers\n\n- 4 red peppers\n- 200 g rice\n- 1 onion\n\nBake in a baking dish 25 x 20 x 6 cm at 180 °C for 40 minutes.\n',
  german: '# Bratäpfel\n\n- 6 große Äpfel\n- 60 g Zucker\n\nIn einer Auflaufform 30 x 20 x 6 cm bei 180 °C 40 Minuten backen.\n',
  ducks: '# Roast ducks\n\n- 2 ducks (2 kg each)\n\nRoast both in one roasting tin at 200 °C for 90 minutes.\n',
  rabbit: '# Rabbit stew\n\n- 1 rabbit, jointed\n- 500 g potatoes\n\nBake in a casserole at 160 °C for 2 hours.\n',
  wrapped:
    '# Apple dumplings\n\n- 6 apples\n- 300 g flour\n- 150 g suet\n\nWrap each in paste. Bake on a sheet at 190 °C for 45 minutes.\n',
  pie: '# Apple pie\n\n- 1 kg apples\n- 300 g flour\n- 150 g butter\n\nBake in a pie plate 9 in at 200 °C for 45 minutes.\n',
  yields:
    '# Baked apples\n\nMakes 12 apples.\n\n- 2 kg apples\n- 150 g sugar\n\nBake in a dish 30 x 20 x 6 cm at 180 °C for 40 minutes.\n',
  cake: '# Butter cake\n\n- 5 eggs\n- 225 g flour\n- 225 g butter\n- 225 g sugar\n\nBake in a round 8 in x 3 in tin at 180 °C for 1 hour.\n',
  pudding: '# Bread pudding\n\n- 2 penny loaves\n- 1 l milk\n- 4 eggs\n\nBake in a dish one hour in a moderate oven.\n',
  nuts: '# Ginger nuts\n\nMakes 24.\n\n- 200 g flour\n- 100 g treacle\n- 5 g ginger\n\nBake on a sheet at 170 °C for 15 minutes.\n',
} as const

function order(name: keyof typeof texts, amount: string) {
  const {receipts} = translate(texts[name], {file: `receipts/${name}.md`})
  const {dishes, messages} = makeDishes({
    day: {
      people: 24,
      items: [{file: `receipts/${name}.md`, title: receipts[0]!.title, amount, wantedBy: null, line: 9, column: 3}],
      spare: [],
    },
    receipts: [...receipts],
    oven,
  })
  return {
    vessels: dishes.reduce((sum, {count}) => sum + count, 0),
    times: dishes.map(({times}) => times),
    why: dishes[0]?.sized.find(({field}) => field === 'count')?.why,
    rules: messages.map(({rule}) => rule).filter((rule) => rule !== 'scale-kind' && rule !== 'scale-weight'),
  }
}

describe('a count of what goes in by the piece', () => {
  it.each([
    ['apples', '24 apples', 2, '2'],
    ['apples', '24 baked apples', 2, '2'],
    ['apples', '18 apples', 2, '3/2'],
    ['apples', 'two dozen apples', 2, '2'],
    ['apples', '24 apples in 3 tins', 3, '2'],
    ['apples', '24 large apples', 2, '2'],
    ['rabbit', '3 rabbits', 3, '3'],
    ['pears', '24 pears', 2, '2'],
    ['thighs', '24 thighs', 3, '3'],
    ['thighs', '16 chicken thighs', 2, '2'],
    ['peppers', '16 peppers', 4, '4'],
    ['peppers', '8 stuffed peppers', 2, '2'],
    ['german', '24 Äpfel', 4, '4'],
    ['german', '12 Bratäpfel', 2, '2'],
    ['german', '12 apples', 2, '2'],
    ['ducks', '4 ducks', 2, '2'],
    ['wrapped', '12 apples', 2, '2'],
    ['yields', '24 apples', 2, '2'],
  ] as const)('%s: “%s” is so many pieces', (name, amount, vessels, times) => {
    expect(order(name, amount)).toMatchObject({vessels, times: [times], rules: []})
  })

  it('says how many of them a vessel has', () => {
    const why = '24 apples, 12 to a vessel'
    expect(order('apples', '24 apples').why).toBe(why)
    expect(inBook(why, deBook)).not.toBeNull()
  })

  it('weighs them as they go in', () => {
    // Eight of 1.2 kg are of 150 g: sixteen of twice that are four times the receipt.
    expect(order('thighs', '16 thighs of 300 g')).toMatchObject({vessels: 4, times: ['4'], why: '16 thighs, 4 to a vessel'})
  })

  it.each([
    ['apples', '2 dishes', 2],
    ['pears', '2 crocks', 2],
    ['pie', '6 pies', 6],
    ['pudding', '4 loaves', 4],
    ['pudding', '4 puddings', 4],
  ] as const)('%s: “%s” is so many vessels still', (name, amount, vessels) => {
    expect(order(name, amount)).toMatchObject({vessels, rules: []})
  })

  it.each([
    // By weight, or not what the dish is of.
    ['pie', '6 apples'],
    ['cake', '6 eggs'],
    ['thighs', '6 onions'],
    ['thighs', '6 chickens'],
    ['cake', '6 apples'],
  ] as const)('%s: “%s” counts nothing that comes out, which is told', (name, amount) => {
    expect(order(name, amount)).toMatchObject({vessels: 6, rules: ['scale-noun']})
  })

  it('is told that a size is none of the receipt’s', () => {
    expect(order('apples', '24 small apples')).toMatchObject({vessels: 2, rules: ['scale-size']})
  })

  it('leaves its name to what is called after a thing that does not go in', () => {
    expect(order('nuts', '48 nuts').rules).toEqual([])
  })
})

describe('a yield that counts what the title names', () => {
  it.each([
    ['Baked apples', 'Makes 12 apples.', 'apples'],
    ['Stuffed peppers', 'Makes 8 stuffed peppers, enough for four.', 'peppers'],
    ['Bratäpfel', 'Ergibt 6 Bratäpfel', 'bratapfel'],
  ])('%s: %s', (title, text, of) => {
    const {receipts} = translate(`# ${title}\n\n${text}\n\n- 2 kg apples\n- 100 g sugar\n\nBake for 40 minutes.\n`, {
      file: 'a.md',
    })
    expect(receipts[0]!.serves).toMatchObject({low: Number(/\d+/.exec(text)![0]), of})
    expect(receipts[0]!.ingredients).toHaveLength(2)
  })

  it('is none where it counts something else', () => {
    const {receipts} = translate('# Apple pie\n\nMakes 12 apples soft.\n\n- 2 kg flour\n', {file: 'a.md'})
    expect(receipts[0]!.serves).toBeNull()
  })
})
