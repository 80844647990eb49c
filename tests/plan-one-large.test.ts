import {describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import {check} from '../src/plan/check.js'
import {type MadePlan, makePlan} from '../src/plan/make.js'
import {inFolder} from './page-day.js'

/**
 * A vessel that no third of the floor is large enough for, on an invented day in an invented oven. That a day that may be begun sooner is no
 * worse for it, as its fire may be lit when it would be else, follows from what a plan is: no outside fact.
 */
const oven = `---
floor: round 80 cm
vault height: 38 cm
mouth: 42 cm x 25 cm
door: steel 2 mm
hearth:
  - fire brick 6 cm
  - insulating board 5 cm
vault:
  - fire brick 6 cm
  - ceramic fibre 10 cm
place: outdoors
ambient: 15 °C
fuel: beech, 16 % moisture
start: cold
---

# A small oven
`
const rolls = `---
vessel: sheet 16 x 12 in
---

# Rolls

Makes 6 rolls

- 500 g strong white flour
- 7 g dried yeast
- 8 g salt
- 320 ml warm water

Knead for 10 minutes and leave in a warm place for 30 minutes. Shape into 6 rolls, put on a tray and leave for 20 minutes. Bake at 220 °C for 15 minutes.
`

describe('one large vessel', {timeout: 120_000}, () => {
  const planned = (from: string): Promise<MadePlan> =>
    inFolder(
      new Map([
        ['oven.md', oven],
        ['receipts/rolls.md', rolls],
        [
          'day.md',
          `---\ndate: 2027-06-15\npeople: 30\nfire from: ${from}\nserve: 12 pm\nhands: 3\n---\n\n# A morning\n\n- [Rolls](receipts/rolls.md) — 30 rolls, wanted by 11:30 am\n`,
        ],
      ]),
      async (folder) => {
        const {oven, day, receipts} = readDayFolder(folder)
        return makePlan({oven, day, receipts})
      },
    )

  it.each(['6:30 am', '6:45 am', '7 am'])(
    'is judged where its centre stands, and all come in time with a fire from %s',
    async (from) => {
      const {plan, problem} = await planned(from)
      expect(plan.loads.every((load) => load.placed.length === 1)).toBe(true)
      expect(plan.loads.length).toBeGreaterThan(3)
      expect([plan.unplaced, plan.score.lateMinutes]).toEqual([[], 0])
      expect(check(problem, plan)).toEqual([])
    },
  )
})
