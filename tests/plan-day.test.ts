import {describe, expect, it} from 'vitest'
import {readDay} from '../src/plan/day.js'

const item = (line: string) =>
  readDay(`---\ndate: 2027-06-19\npeople: 8\nfire from: 6 am\nserve: 1 pm\n---\n\n- ${line}\n`, 'day.md').day?.items[0]

describe('a line of the day', () => {
  it.each([
    ['[Pies](pies.md)', null, null],
    ['[Pies](pies.md) — 6 pies', '6 pies', null],
    ['[Pies](pies.md) — 6 pies, wanted by 4 pm', '6 pies', 960],
    ['[Pies](pies.md#meat) - 6 pies ; ready at noon.', '6 pies', 720],
    ['[Pies](pies.md): needed for tomorrow 8 am ;', null, 1920],
    ['[Pies](pies.md) — for 40.  Wanted   by 4:30 pm .', 'for 40', 990],
  ])('reads “%s”', (line, amount, wantedBy) => {
    expect(item(line)).toMatchObject({file: 'pies.md', title: 'Pies', amount, wantedBy})
  })
})
