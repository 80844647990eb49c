import {describe, expect, it} from 'vitest'
import {z} from 'zod'
import {parseLength} from '../src/measure/quantity.js'
import {readFacts} from '../src/receipt/facts.js'
import {quantity, readFrontMatter} from '../src/receipt/front-matter.js'

const schema = z.strictObject({
  width: quantity(parseLength),
  layers: z.array(quantity(parseLength)).optional(),
  name: z.string().optional(),
})
const read = (text: string) => readFrontMatter(text, 'a.md', schema)

describe('front matter', () => {
  it('gives checked values and where the body begins', () => {
    const found = read('---\nwidth: 10 cm\nlayers: [1 cm, 2 cm]\n---\n# Body\n')
    expect(found.value).toEqual({width: 0.1, layers: [0.01, 0.02]})
    expect(found.bodyStart).toBe('---\nwidth: 10 cm\nlayers: [1 cm, 2 cm]\n---\n'.length)
  })
  it('is optional', () => expect(read('# Body\n')).toMatchObject({value: null, present: false, messages: [], bodyStart: 0}))
  it('reads Windows line ends and a byte order mark', () => {
    expect(read('\uFEFF---\r\nwidth: 10 cm\r\n---\r\nx').value).toEqual({width: 0.1})
  })

  const faults: Array<[string, string, number, number, RegExp]> = [
    ['a bare number', '---\nname: x\nwidth: 36\n---\n', 3, 8, /no unit/],
    ['a negative size', '---\nwidth: -3 in\n---\n', 2, 8, /negative/],
    ['an unknown key, with the nearest', '---\nwidth: 1 m\nwidht: 2 m\n---\n', 3, 1, /“widht” is not a key/],
    ['a missing key', '---\nname: x\n---\n', 2, 1, /“width” is missing/],
    ['a fault inside a list', '---\nwidth: 1 m\nlayers:\n  - 1 cm\n  - thick\n---\n', 5, 5, /thick/],
    ['broken YAML', '---\nwidth: [1 m\n---\n', 3, 1, /not good YAML/],
    ['a key twice', '---\nwidth: 1 m\nwidth: 2 m\n---\n', 3, 1, /not good YAML/],
    ['front matter never closed', '---\nwidth: 1 m\n# Body\n', 1, 1, /never closed/],
    ['a list instead of keys', '---\n- 1 m\n---\n', 2, 1, /keys and values/],
  ]
  it.each(faults)('%s is told by line and column', (_, text, line, column, reason) => {
    const found = read(text)
    expect(found.value).toBeNull()
    expect(found.messages[0]).toMatchObject({file: 'a.md', severity: 'error', line, column})
    expect(found.messages[0]!.reason).toMatch(reason)
  })
  it('the nearest key is offered', () =>
    expect(read('---\nwidth: 1 m\nwidht: 2 m\n---\n').messages[0]!.suggest).toBe('write “width”'))
  it('an alias bomb is refused, not expanded', () => {
    const bomb = `---\nname: x\nwidth: 1 m\na: &a [1,2,3,4]\nb: &b [*a,*a,*a,*a]\nc: [*b,*b,*b,*b]\n---\n`
    expect(read(bomb).value).toBeNull()
  })
})

/** How a receipt's head is written is for this format alone to say: there is no source. */
describe('the head of a receipt', () => {
  it.each([
    ['oven: 350', /“350” does not say of what scale/, 'write “350 °F” or “350 °C”'],
    ['oven: "350"', /“350” does not say of what scale/, 'write “350 °F” or “350 °C”'],
    ['oven: 4', /“4” does not say/, /“gas mark 4”/],
    ['oven:', /oven: nothing is written/, /“350 °F”/],
    ['vessel:', /vessel: nothing is written/, /“round 9 in x 2 in”/],
    ['place: 5', /“5” is not a place/, /“place: United States”/],
    ['says: x', /no words of the text/, /“ {2}a coffee cup: 1 cup”/],
    ['serves: 10-12', /“10-12” is a range/, /“serves: 10”/],
    ['serves: 0', /cannot serve 0/, /“serves: 12”/],
    ['serves: many', /“many” is not a number of people/, /“serves: 12”/],
    ['year: old', /“old” is not a year/, /“year: 1829”/],
    ['bake: 0 min', /nothing bakes for “0 min”/, /“45 min”/],
    ['title: [a, b]', /one value is wanted/, /name/],
  ])('“%s” is told with what to write, and in no words of a library', (line, reason, suggest) => {
    const {facts, messages} = readFacts(`---\n${line}\n---\n\n# Loaf\n`, 'a.md')
    expect(facts).toEqual({})
    expect(messages).toMatchObject([{line: 2, severity: 'error', rule: 'value'}])
    expect(messages[0]!.reason).toMatch(reason)
    expect(messages[0]!.suggest).toMatch(suggest)
  })

  it('takes a number for what it is in a name, a year and a count', () => {
    const {facts, title, messages} = readFacts('---\ntitle: 1805\nyear: 1805\nserves: "12"\nrise: 0 min\n---\n', 'a.md')
    expect({facts, title, messages}).toEqual({
      facts: {year: 1805, serves: 12, rise: {low: 0, high: 0}},
      title: '1805',
      messages: [],
    })
  })
})
