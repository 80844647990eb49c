import {describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import {makePlan} from '../src/plan/make.js'
import {inFolder} from './page-day.js'

/** Invented days and ovens; what is asked is that a plan agrees with those of days that ask for less: no outside fact. */
const layers = (hearth: string, vault: string): string =>
  `hearth:\n  - ${hearth}\n  - sand 10 cm\n  - common brick 10 cm\nvault:\n  - ${vault}\n  - clay 8 cm\n  - sand 15 cm\nplace: indoors\nambient: 18 °C\nfuel: beech, 16 % moisture\nstart: cold\n`
const small = `---\nfloor: round 90 cm\nvault height: 36 cm\nmouth: 40 cm x 25 cm\ndoor: oak 5 cm\n${layers('firebrick 6 cm', 'firebrick 11 cm')}---\n\n# The small oven\n`
const lane = `---\nfloor: rectangle 110 cm x 34 cm\nvault height: 40 cm\nmouth: 30 cm x 25 cm\ndoor: oak 5 cm\n${layers('firebrick 6 cm', 'firebrick 11 cm')}---\n\n# The oven of one lane\n`
const custard =
  '---\nvessel: oblong 31 cm x 21 cm x 5 cm\n---\n\n# Custard\n\n- 1 litre milk\n- 6 eggs\n- 120 g sugar\n\nBake an hour in a slow oven. Makes 1 dish.\n'
const cake =
  '---\nyear: 1850\nvessel: round 23 cm x 9 cm\n---\n\n# Plum cake\n\n- 1 lb flour\n- 12 oz butter\n- 12 oz sugar\n- 8 eggs\n- 1 1/2 lb currants\n\nBake three hours in a slow oven. Makes 1 cake.\n'

const planned = (oven: string, from: string, ...items: readonly string[]): Promise<ReturnType<typeof makePlan>> =>
  inFolder(
    new Map([
      ['oven.md', oven],
      ['receipts/custard.md', custard],
      ['receipts/cake.md', cake],
      [
        'day.md',
        `---\ndate: 2027-06-19\npeople: 40\nfire from: ${from}\nserve: 6 pm\n---\n\n# A day\n\n${items.map((item) => `- ${item}\n`).join('')}`,
      ],
    ]),
    async (folder) => {
      const {oven: read, day, receipts} = readDayFolder(folder)
      return makePlan({oven: read, day, receipts})
    },
  )

describe('the hour of lighting', () => {
  it('is no later than it need be where something comes late', async () => {
    const {plan} = await planned(small, '8 am', '[Custard](receipts/custard.md) — 2 dishes, wanted by 11 am')
    expect(plan.late).toBeDefined()
    expect(plan.lit).toBe(480)
  })

  it('is soon enough for what one as soon could have in time', async () => {
    const noon = await planned(small, '8 am', '[Custard](receipts/custard.md) — 3 dishes, wanted by 12 noon')
    const sooner = await planned(small, '8 am', '[Custard](receipts/custard.md) — 3 dishes, wanted by 11 am')
    expect(Math.max(...sooner.plan.late!.map(({drawn}) => drawn))).toBeLessThanOrEqual(720)
    expect(noon.plan.late).toBeUndefined()
  })
})

describe('a day that cannot all be had', () => {
  it('is no later for what it leaves out than the same day without that', async () => {
    const cakes = '[Cake](receipts/cake.md) — 2 cakes, wanted by 3 pm'
    const both = await planned(lane, '8 am', '[Custard](receipts/custard.md) — 2 dishes, wanted by 1 pm', cakes)
    const alone = await planned(lane, '8 am', cakes)
    expect(both.plan.unplaced.map(({dish}) => dish)).toEqual(['custard'])
    expect(alone.plan.unplaced).toEqual([])
    expect(both.plan.score.lateMinutes).toBeLessThanOrEqual(alone.plan.score.lateMinutes)
    expect(both.plan.score.wood).toBeLessThanOrEqual(alone.plan.score.wood)
  }, 60_000)
})
