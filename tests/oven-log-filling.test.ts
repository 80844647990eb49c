import {describe, expect, it} from 'vitest'
import {readLog} from '../src/oven/log.js'
import {outToFill} from '../src/plan/out-to-fill.js'
import {dish} from './plan-fixtures.js'

/** A crust baked blind that the log has out to be filled. Invented days; common practice, no source. */
const rowsOf = (...rows: readonly string[]) =>
  readLog(
    `---\ndate: 2027-06-12\nlit: 5 am\nraked: 7 am\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n${rows.join('\n')}\n`,
    'log.md',
  ).log!
const blind = dish('pie', 2, {id: 'tart', file: 'receipts/tart.md', tending: [{words: 'fill', fills: true, after: 15}]})
const plain = dish('pie', 2, {id: 'tart', file: 'receipts/tart.md'})

describe('what is out to be filled', () => {
  it('is not drawn, nor set in for the first time when it is filled', () => {
    for (const said of [
      'drawn to fill',
      'out to fill',
      'taken out to be filled',
      'zum Füllen herausgenommen',
      '2 drawn to fill',
      'herausgenommen zum Füllen',
    ]) {
      const {rows} = rowsOf('| 8 am | tart | set in | |', `| 8:20 am | tart | ${said} | |`, '| 8:25 am | tart | set in | |')
      expect(
        rows.map(({what, filling}) => [what, filling]),
        said,
      ).toEqual([
        ['set in', undefined],
        ['not drawn', 'out'],
        ['not drawn', 'in'],
      ])
    }
    const {rows} = rowsOf('| 8:20 am | tart | drawn | to be filled |', '| 10 am | tart | set in | |')
    expect(rows.map(({what}) => what)).toEqual(['not drawn', 'set in'])
    expect(rowsOf('| 9 am | tart | drawn | well filled |').rows.map(({what}) => what)).toEqual(['drawn'])
  })
  it('is drawn and done where its receipt bakes no filling', () => {
    const log = rowsOf('| 8:20 am | tart | drawn to fill | |', '| 8:25 am | tart | set in | |')
    expect(outToFill(log, [plain]).rows.map(({what}) => what)).toEqual(['drawn', 'set in'])
    expect(outToFill(log, [blind])).toBe(log)
  })
})
