import {readFileSync} from 'node:fs'
import {describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import {check} from '../src/plan/check.js'
import {makePlan} from '../src/plan/make.js'
import {inFolder} from './page-day.js'

/** An invented oven of thin walls out of doors, and the demo's household bread. */
const oven =
  '---\nfloor: round 100 cm\nvault height: 42 cm\nmouth: 45 cm x 28 cm\ndoor: oak 5 cm\nhearth:\n  - firebrick 6.5 cm\n  - sand 5 cm\n  - common brick 20 cm\nvault:\n  - common brick 11 cm\n  - clay 5 cm\n  - perlite 10 cm\nplace: outdoors\nambient: 10 °C\nfuel: oak, 18 % moisture\nstart: cold\n---\n\n# The oven at Fennel Row\n'
const day =
  '---\ndate: 2027-10-09\npeople: 30\nserve: 6 pm\nfire from: 6 am\n---\n\n# Bread\n\n- [Household bread](receipts/household-bread.md) — 4 loaves\n'
const bread = readFileSync('corpus-demo/receipts/household-bread.md', 'utf8')

describe('the hour of lighting', () => {
  // Bread and nothing else, and twelve hours to have it in: that it can be had in time is common practice, no source.
  it('is not put off for the sake of an oven from which the bread was left out for a while', () =>
    inFolder(
      new Map([
        ['day.md', day],
        ['oven.md', oven],
        ['receipts/household-bread.md', bread],
      ]),
      async (folder) => {
        const {oven: read, day: asked, receipts} = readDayFolder(folder)
        const {plan, problem} = makePlan({oven: read, day: asked, receipts})
        expect(plan.unplaced).toEqual([])
        expect(plan.late ?? []).toEqual([])
        expect(check(problem, plan)).toEqual([])
      },
    ))
})
