import {existsSync, readdirSync, readFileSync, rmSync, writeFileSync} from 'node:fs'
import {join} from 'node:path'
import {describe, expect, it} from 'vitest'
import {run} from '../src/cli/run.js'
import {COPY, DATE, dayWith, folderWith, LOG, logWith} from './kept-day.js'
import {inFolder} from './page-day.js'

/** The copy of the day beside its log: invented days, no outside fact. */

const note = (folder: string, ...words: string[]) => run(['note', folder, ...words, '--anyway'])
const copies = (folder: string): string[] =>
  readdirSync(join(folder, 'firings'))
    .filter((name) => name.includes('.day'))
    .sort()

describe('a note', {timeout: 60_000}, () => {
  it('that the fire is lit keeps the day as it stands, byte for byte and once', async () => {
    const crlf = `\uFEFF${dayWith().replaceAll('\n', '\r\n')}`
    await inFolder(folderWith(crlf), async (folder) => {
      await note(folder, '7:00 am dry wood')
      expect(copies(folder)).toEqual([])
      const {out, err, code} = await note(folder, '7:30 am lit')
      expect([code, err]).toEqual([0, ''])
      expect(out).toContain(`Kept the day as ${join(folder, 'day.md')} has it now: ${join(folder, COPY)}\n`)
      expect(readFileSync(join(folder, COPY), 'utf8')).toBe(crlf)
      const next = await note(folder, '9:15 am raked')
      expect(next.out).not.toContain('Kept')
      expect(copies(folder)).toEqual([`${DATE}.day.md`])
    })
  })

  it('keeps the day again once it asks for something else, since the last thing noted; not where only words were changed', async () => {
    await inFolder(folderWith(dayWith()), async (folder) => {
      await note(folder, '7:30 am lit')
      await note(folder, '9:55 am loaf set in')
      writeFileSync(join(folder, 'day.md'), `${dayWith()}\nRain.\n`)
      await note(folder, '10:05 am door open 2 min')
      expect(copies(folder)).toEqual([`${DATE}.day.md`])
      writeFileSync(join(folder, 'day.md'), dayWith({pudding: null}))
      await note(folder, '10:55 am loaf drawn')
      await note(folder, '10:56 am cake set in')
      expect(copies(folder)).toEqual([`${DATE}.day-1005.md`, `${DATE}.day.md`])
      expect(readFileSync(join(folder, COPY), 'utf8')).toBe(dayWith())
      // What only the day's first list has is none of its dishes any more, and may be noted.
      expect((await note(folder, '11:00 am pudding set in')).code).toBe(0)
    })
  })

  it('keeps the day of a log that a hand began, while that names nothing the day does not ask for', async () => {
    for (const [day, made] of [
      [dayWith(), [`${DATE}.day.md`]],
      [dayWith({loaf: null}), []],
    ] as const)
      await inFolder(folderWith(day, [[LOG, logWith('9:55 | loaf | set in')]]), async (folder) => {
        await note(folder, '10:00 am floor 220 °C')
        expect(copies(folder)).toEqual(made)
      })
  })

  it('knows the names of both days', async () => {
    const today = new Date().toISOString().slice(0, 10)
    const dated = (text: string): string => text.replaceAll(DATE, today)
    const files = folderWith(dated(dayWith({cake: null})), [[`firings/${today}.day.md`, dated(dayWith({pudding: null}))]])
    await inFolder(files, async (folder) => {
      for (const words of ['12:00 am cake set in', '12:00 am pudding set in'])
        expect((await run(['note', folder, words])).code).toBe(0)
    })
  })
})

describe('the plan of a day whose copy was kept', {timeout: 60_000}, () => {
  const rows = ['9:55 | loaf | set in', '10:55 | loaf | drawn', '10:55 | cake | set in']
  const plan = (folder: string, ...more: string[]) => run(['plan', folder, ...more])

  it('is made of it, whatever receipts the day has left', async () => {
    await inFolder(
      folderWith(dayWith({cake: null}), [
        [LOG, logWith(...rows)],
        [COPY, dayWith()],
      ]),
      async (folder) => {
        const {out, err, code} = await plan(folder)
        expect([code, err]).toEqual([0, ''])
        expect(out).toContain('Cake: no longer asked for; it is in, and stays till it is done')
        const sheets = await run(['sheets', folder, '--out', join(folder, 'sheets')])
        expect([sheets.code, sheets.err]).toEqual([0, ''])
        rmSync(join(folder, 'receipts/cake.md'))
        const lacking = await plan(folder)
        expect(lacking.code).toBe(2)
        expect(lacking.err).toContain(`${join(folder, COPY)}:12:10`)
      },
    )
  })

  it('is none where the copy cannot be read, and that is told with its line', async () => {
    for (const [copy, at] of [
      [dayWith().replace('people: 8', 'people: many'), '3:'],
      ['', '1:1'],
    ] as const)
      await inFolder(
        folderWith(dayWith(), [
          [LOG, logWith(...rows)],
          [COPY, copy],
        ]),
        async (folder) => {
          const {err, out, code} = await plan(folder)
          expect([code, out]).toEqual([2, ''])
          expect(err).toContain(`${join(folder, COPY)}:${at}`)
          expect((await note(folder, '11:00 am cake drawn')).code).toBe(2)
        },
      )
  })

  it('is refused where the fire cannot be made another', async () => {
    const files = folderWith(dayWith({}, 'firings: 2\n'), [
      [LOG, logWith(...rows)],
      [COPY, dayWith()],
    ])
    await inFolder(files, async (folder) => {
      const {err, code} = await plan(folder)
      expect(code).toBe(2)
      expect(err).toMatch(/day\.md:1:1.*\n.*firings: 1/)
    })
  })

  it('takes no copy for a log of an earlier firing, and carries the day’s own into the page', async () => {
    const earlier = ['firings/2027-06-12.day.md', dayWith().replace(DATE, '2027-06-12')] as const
    await inFolder(folderWith(dayWith(), [[LOG, logWith(...rows)], [COPY, dayWith()], earlier]), async (folder) => {
      const {out, err, code} = await plan(folder)
      expect([code, err]).toEqual([0, ''])
      rmSync(join(folder, earlier[0]))
      expect((await plan(folder)).out).toBe(out)
      if (!existsSync('dist/page.html')) return
      await run(['plan', folder, '--page', join(folder, 'page.html')])
      expect(readFileSync(join(folder, 'page.html'), 'utf8')).toContain(COPY)
    })
  })
})
