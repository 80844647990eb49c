import {describe, expect, it} from 'vitest'
import {readOven} from '../src/oven/read.js'
import {readDay} from '../src/plan/day.js'
import {makePlan} from '../src/plan/make.js'
import {translate} from '../src/receipt/translate.js'

/** A garden oven of our own, whose floor bakes less evenly than a modern receipt's “hot oven” is wide; that loaves of one dough go in together is common practice, no source. */
const oven = readOven(
  '---\nfloor: round 105 cm\nvault height: 42 cm\nmouth: 48 cm x 28 cm\ndoor: oak 5 cm\nhearth:\n  - fire brick 6.5 cm\n  - calcium silicate board 7 cm\nvault:\n  - fire brick 11 cm\n  - ceramic blanket 8 cm\n  - render 2 cm\nplace: outdoors\nambient: 15 °C\nfuel: oak, 17 % moisture\nstart: cold\n---\n\n# Garden oven\n',
  'oven.md',
).oven!
const receipts = translate(
  '---\nyear: 2020\nplace: Europe\n---\n\n# White bread\n\nFor 12 loaves.\n\n- 12 kg wheat flour\n- 7.4 kg water\n- 240 g salt\n- 120 g fresh yeast\n\nKnead 25 minutes. Let the dough rise 2 hours. Divide into 12 loaves and prove 50 minutes. Bake on the bare hearth in a hot oven for an hour.\n',
  {file: 'receipts/bread.md'},
).receipts

describe('loaves that the floor has room for', {timeout: 60_000}, () => {
  it.each([6, 7])('go in at once: %s of them', (count) => {
    const {day} = readDay(
      `---\ndate: 2027-10-09\npeople: 20\nfire from: 5 am\nserve: 6 pm\nhands: 2\n---\n\n# Bread\n\n- [White bread](receipts/bread.md) — ${count} loaves, wanted by 1 pm\n`,
      'day.md',
    )
    const {plan} = makePlan({oven, day: day!, receipts})
    expect(plan.possible).toBe(true)
    expect(plan.loads.map(({dishes}) => dishes.map((one) => one.count))).toEqual([[count]])
    expect(plan.messages.filter(({rule}) => rule.startsWith('checker'))).toEqual([])
  })
})
