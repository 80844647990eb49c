import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {readReceipts} from '../src/receipt/read.js'

const word = fc.constantFrom(
  ...'half,a,an,quarter,of,pound,two,eggs,egg,the,juice,and,or,to,from,each,ditto,do.,1/2,1½,12,—,-,(,),|,/,same,weight,size,butter,sugar,whites,yolks,as,much,twice,their,in,cup,cups,dozen,score,x,400,g,&c.,&amp;,*,_,#,\n,\n\n,- ,essence,oil,round,beef,lemon,lemons,salt,taste,INGREDIENTS.--,each,every,three,nine,twenty,little,few,some,flour,fugar,ſugar,q.,s.,per,pair,can,°C,;,.,:,,'.split(
    ',',
  ),
)
const phrase = fc.array(word, {maxLength: 60}).map((words) => words.join(' '))

function sound(source: string): void {
  const {receipts, messages} = readReceipts(source, {file: 'a.md'})
  for (const receipt of receipts) {
    expect(receipt.start).toBeGreaterThanOrEqual(0)
    expect(receipt.end).toBeLessThanOrEqual(source.length)
    for (const one of [...receipt.ingredients, ...receipt.oven, ...receipt.times]) {
      expect(one.start).toBeGreaterThanOrEqual(receipt.start)
      expect(one.end).toBeLessThanOrEqual(receipt.end)
      expect(source.slice(one.start, one.end)).toBe(one.text)
    }
    for (const one of receipt.ingredients) {
      expect(one.text).not.toBe('')
      if (one.amount !== null) {
        expect(one.amount.low).toBeGreaterThanOrEqual(0)
        expect(one.amount.high).toBeGreaterThanOrEqual(one.amount.low)
        expect(one.exact).toMatch(/^\d+(?:\/\d+)?$/)
      } else expect(one.measure).toBe('indefinite')
    }
  }
  for (const message of messages) expect(message.line).toBeGreaterThan(0)
}

describe('any input', () => {
  test('words of the trade in any order: nothing thrown, every span in its place', () => {
    fc.assert(fc.property(phrase, sound), {numRuns: 400})
  })

  test('any characters', () => {
    fc.assert(fc.property(fc.string({unit: 'binary', maxLength: 400}), sound), {numRuns: 150})
  })

  test('a long run of one phrase is read, and four times the run takes about four times as long', () => {
    for (const piece of [
      'oil of ',
      'half a quarter of a ',
      'the juice and rind of ',
      'two, ',
      'each of ',
      'red or ',
      '& ',
      'a pound or ',
      '((1 ',
      'flour, ',
      'as much ',
      'two ounces of the butter, ',
      '* _ ',
      '<b> ',
    ]) {
      // Processor time, not the clock, and the best of a few tries: other programs share the machine.
      const time = (n: number): number => {
        const text = piece.repeat(n)
        const from = process.cpuUsage().user
        readReceipts(text, {file: 'a.md'})
        return process.cpuUsage().user - from
      }
      time(200)
      let best = Number.POSITIVE_INFINITY
      for (let turn = 0; turn < 4 && best > 8; turn++) best = Math.min(best, time(8000) / Math.max(1000, time(2000)))
      // Linear is 4; a quadratic reader would take 16.
      expect(best, piece).toBeLessThan(10)
    }
  }, 60_000)
})

describe('front matter and messages', () => {
  test('a reading can be corrected by hand under says', () => {
    const source =
      '---\nsays:\n  a quarter of mace: 1/4 pound mace\n---\n# Cake\n\nHalf an ounce of cinnamon, a quarter of mace.\n'
    const {receipts, messages} = readReceipts(source, {file: 'a.md'})
    const mace = receipts[0]!.ingredients.find((i) => i.item === 'mace')!
    expect([mace.amount?.low, mace.measure, mace.text, mace.confidence]).toEqual([0.25, 'pound', 'a quarter of mace', 1])
    expect(messages).toEqual([])
  })

  test('a doubtful reading names the other, and the line that settles it', () => {
    const {messages} = readReceipts('# Cake\n\nHalf an ounce of cinnamon, a quarter of mace.\n', {file: 'a.md'})
    expect(messages.map((m) => [m.rule, m.line])).toEqual([['reading-doubtful', 3]])
    expect(messages[0]!.suggest).toContain('says:')
  })

  test('an item no table knows is carried through and reported once, with every place', () => {
    const {receipts, messages} = readReceipts('# Pie\n\n- 2 lb zorblefruit\n- 1 oz zorblefruit\n', {file: 'a.md'})
    expect(receipts[0]!.ingredients.map((i) => [i.item, i.known])).toEqual([
      ['zorblefruit', false],
      ['zorblefruit', false],
    ])
    const unknown = messages.filter((m) => m.rule === 'item-unknown')
    expect(unknown).toHaveLength(1)
    expect(unknown[0]!.reason).toContain('2 times, on lines 3, 4')
  })

  test('an unused correction, and a file without a receipt, are said', () => {
    expect(
      readReceipts('---\nsays:\n  no such words: 1 pound flour\n---\n# Cake\n\nFlour.\n', {file: 'a.md'}).messages.map(
        (m) => m.rule,
      ),
    ).toEqual(['says-unused'])
    expect(readReceipts('', {file: 'a.md'}).messages.map((m) => m.rule)).toEqual(['empty'])
  })

  test('front matter before a later receipt is said to be of none', () => {
    const book = (block: string): string =>
      `---\nyear: 1829\n---\n\n# Plain buns\n\nOne pound of flour. Bake in a quick oven.\n\n${block}\n# New buns\n\nBake 20 minutes.\n`
    const told = (block: string): string[] =>
      readReceipts(book(block), {file: 'book.md'})
        .messages.filter(({rule}) => rule === 'facts-second')
        .map(({line, column}) => `${line}:${column}`)
    expect(told('---\nyear: 1950\n---\n')).toEqual(['10:1'])
    expect(told('---\n\nserves: 4\noven: a slow oven\n---\n')).toEqual(['11:1'])
    expect(told('---\n\nserves: 4\n\n---\n')).toEqual([])
    expect(told('---\n\nAnother hand has written:\n\n---\n')).toEqual([])
  })

  test('parts of a receipt are kept apart', () => {
    const source = '# Tart\n\n## For the crust\n\n- 8 oz flour\n\n## For the filling\n\n- 1 lb plums\n'
    expect(readReceipts(source, {file: 'a.md'}).receipts[0]!.ingredients.map((i) => i.part)).toEqual(['crust', 'filling'])
  })
})
