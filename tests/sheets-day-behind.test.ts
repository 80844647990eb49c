import {describe, expect, it} from 'vitest'
import {run} from '../src/cli/run.js'
import {inFolder, smallDay} from './page-day.js'

/** An invented day, and what is said of it when it is over. No outside fact. */
describe('a plan of a day that is behind', () => {
  const said = (more: readonly string[], lit = '6:30 am', raked = '8:30 am') =>
    inFolder(
      new Map([...smallDay, ['firings/2027-06-19.md', `---\ndate: 2027-06-19\nlit: ${lit}\nraked: ${raked}\n---\n`]]),
      async (folder) => (await run(['plan', folder, ...more])).out,
    )
  it('says that nothing is left, and not that every dish has its place', async () => {
    const text = await said(['--now', '11 pm'])
    expect(text).toContain('Nothing is left to bake: what the log')
    expect(text).not.toContain('has its place')
    expect(await said(['--now', '11 pm', '--language', 'de'])).toContain('Nichts ist mehr zu backen:')
  })
  it('whenever the log has it lit', async () => {
    const text = await said([], 'midnight', '9:45 am')
    expect(text).not.toContain('has its place')
  })
  it('and of one that is not, that every dish has its place', async () => {
    expect(await said(['--now', '8:40 am'])).toContain('has its place')
  })
})

describe('a note that no firing can be', () => {
  it.each([
    ['wood 6600 lb', 'cannot have burned in this oven'],
    ['wood 0 kg', 'no fire burns without wood'],
  ])('“%s” is refused, and nothing is written', async (words, reason) => {
    const files = new Map([...smallDay, ['firings/2027-06-19.md', '---\ndate: 2027-06-19\nlit: 6:30 am\nraked: 8:30 am\n---\n']])
    await inFolder(files, async (folder) => {
      const {code, err} = await run(['note', folder, words, '--anyway'])
      expect([code, err]).toEqual([2, expect.stringContaining(reason)])
      expect((await run(['note', folder, 'wood 22 kg', '--anyway'])).code).toBe(0)
    })
  })
  it('nor is any put into a log of another day than its name has', async () => {
    const files = new Map([...smallDay, ['firings/2027-06-19.md', '---\ndate: 2027-06-20\nlit: 6:30 am\n---\n']])
    await inFolder(files, async (folder) => {
      const {code, err} = await run(['note', folder, '9 am floor 300 °C', '--anyway'])
      expect(code).toBe(2)
      expect(err).toContain('2027-06-19.md:2:7: error:')
    })
  })
})
