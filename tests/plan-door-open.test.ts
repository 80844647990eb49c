import {cpSync, mkdtempSync, rmSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {afterAll, beforeAll, describe, expect, it} from 'vitest'
import {run} from '../src/cli/run.js'
import type {PlanFile} from '../src/sheets/plan-json.js'

/**
 * The demo's day, invented, in an oven far hotter than it was believed to be. What is asked is that what is offered comes true: no outside
 * fact.
 */
let folder = ''
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'hearthfall-'))
  cpSync('corpus-demo', folder, {recursive: true})
})
afterAll(() => rmSync(folder, {recursive: true, force: true}))

/** The rest of the day from nine on, its floor read so hot, °C; planned again at eleven where the door has stood open for so many minutes since. */
async function found(celsius: number, open = 0): Promise<PlanFile> {
  const door = open > 0 ? `| 9:00 am | door | open ${open} min | |\n` : ''
  writeFileSync(
    join(folder, 'firings', '2027-10-02.md'),
    `---\ndate: 2027-10-02\nlit: 5:45 am\nraked: 8:15 am\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n| 9:00 am | floor | ${celsius} °C | |\n${door}`,
  )
  return JSON.parse((await run(['plan', folder, '--format', 'json', '--now', '9:00 am'])).out) as PlanFile
}
const doorOpen = ({ways = []}: PlanFile) => ways.filter(({kind}) => kind === 'door open')

describe('an oven too hot for what was asked for, its fire out', {timeout: 120_000}, () => {
  it('is cooled by its door left open for so long, and then has all that it had not', async () => {
    const hot = await found(460)
    expect(hot.unplaced.length).toBeGreaterThan(0)
    const [way] = doorOpen(hot)
    expect(way).toMatchObject({works: true})
    const told = /^Leave the door open for (?:(\d+)\sh)?\s?(?:(\d+)\smin)?\sfrom 9:00/.exec(way!.say)!
    const cooled = await found(460, 60 * Number(told[1] ?? 0) + Number(told[2] ?? 0))
    expect(cooled.unplaced).toEqual([])
    expect(doorOpen(cooled)).toEqual([])
  })

  it('is left shut where it is too cool', async () => {
    expect(doorOpen(await found(230))).toEqual([])
  })
})
