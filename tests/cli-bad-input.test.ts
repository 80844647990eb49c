import {existsSync, readFileSync, statSync} from 'node:fs'
import {join} from 'node:path'
import {describe, expect, it} from 'vitest'
import {run} from '../src/cli/run.js'
import {inFolder, smallDay} from './page-day.js'

const folder = join('tests', 'fixtures', 'bad')

/** The table of `fixtures/bad/README.md`: what each broken input must say. */
const rows = readFileSync(join(folder, 'README.md'), 'utf8')
  .split('\n')
  .filter((line) => /^\| `/.test(line))
  .map((line) => {
    const cells = line
      .replace(/^\||\|$/g, '')
      .split('|')
      .map((cell) => cell.trim())
    const code = (cell: string): string => /`([^`]+)`/.exec(cell)?.[1] ?? ''
    return {
      input: code(cells[0]!),
      file: code(cells[1]!),
      rule: code(cells[2]!),
      places: cells[3]!.split(',').map((p) => p.trim()),
      says: cells[4]!,
    }
  })

describe('broken input is told by file, line and column, with what to write instead', () => {
  it('the table has every case', () => expect(rows.length).toBeGreaterThan(45))

  it.each(rows.filter((row) => row.rule !== '' && !row.says.includes('*code 0*')))(
    '$input: $says',
    async ({input, file, rule, places}) => {
      const path = join(folder, input.replace(/\/$/, ''))
      const isFolder = existsSync(path) && statSync(path).isDirectory()
      const command = isFolder ? 'plan' : input.startsWith('oven-') ? 'oven' : 'translate'
      const {out, err, code} = await run([command, path])
      expect(out).toBe('')
      expect(code).toBe(2)
      const shown = isFolder ? join(path, file) : path
      expect(err).toContain(`${shown}:${places[0]}: error:`)
      expect(err).toContain(`(${rule})`)
      expect(err).toMatch(/→ \S/)
    },
  )

  it('a tin wider than the mouth is not placed, and named with the reason', async () => {
    const {out, code} = await run(['plan', join(folder, 'day-receipt-too-wide')])
    expect(code).toBe(1)
    expect(out).toMatch(/mouth/i)
  })

  it('text in another encoding is read, and said to be where that was guessed', async () => {
    const old = await run(['translate', join(folder, 'latin-1.md')])
    expect(old.code).toBe(0)
    expect(old.out).toContain('Crème brûlée')
    expect(old.out.replace(/\s+/g, ' ')).toContain(
      'latin-1.md:1:1: warning: this file is not in UTF-8: it is read as Windows-1252',
    )
    const wide = await run(['translate', join(folder, 'utf-16.md')])
    expect(wide.code).toBe(0)
    expect(wide.out).toMatch(/^Bread/)
    expect(wide.out).not.toContain('UTF-8')
  })

  it('a log with odd rows is read all the same', async () => {
    const {code, err} = await run(['plan', join(folder, 'day-log-bad-row')])
    expect(code).toBe(0)
    expect(err).toMatch(/2027-02-20\.md:10:21:/)
    expect(err).toMatch(/2027-02-20\.md:11:3:/)
  })
})

describe('what is wrong in several files', () => {
  it('is told of all of them at once, the log among them', async () => {
    const files = new Map([
      ...smallDay,
      ['day.md', smallDay.get('day.md')!.replace('receipts/cake.md', 'receipts/cakes.md')],
      ['oven.md', smallDay.get('oven.md')!.replace('round 42 in', 'round')],
      ['firings/2027-06-19.md', '---\nlit: half past\n---\n'],
    ])
    await inFolder(files, async (place) => {
      const {code, err} = await run(['plan', place])
      expect(code).toBe(2)
      expect(err).toMatch(/day\.md:\d+:\d+: error: .*cakes\.md/)
      expect(err).toMatch(/oven\.md:\d+:\d+: error:/)
      expect(err).toMatch(/2027-06-19\.md:\d+:\d+: error:/)
    })
  })
})

describe('a file where the day has a folder', () => {
  it.each(['receipts', 'firings'])('%s: is told with what to do, once, and nothing is noted', async (name) => {
    const rest = [...smallDay].filter(([path]) => !path.startsWith(`${name}/`))
    await inFolder(new Map([...rest, [name, 'kept here\n']]), async (place) => {
      const {out, err, code} = await run(['plan', place])
      expect({out, code}).toEqual({out: '', code: 2})
      expect(err.match(/file-no-folder/g)).toHaveLength(1)
      expect(err).toContain(`${join(place, name)}:1:1: error: this is a file`)
      expect(err).toMatch(/→ give the file another name/)
      if (name === 'receipts') return
      expect(await run(['note', place, 'lit 8:30 am'])).toMatchObject({out: '', code: 2})
      expect(readFileSync(join(place, name), 'utf8')).toBe('kept here\n')
    })
  })
})

describe('what is doubtful in a day', () => {
  it('is told on the error stream with its place, and planned', async () => {
    const day = smallDay.get('day.md')!
    const files = new Map([
      ...smallDay,
      ['day.md', day.replace('serve:', 'firings: 3\nserve:').replace(/(Loaf\]\(receipts\/loaf\.md\)).*/, '$1 — 2 loavse')],
      ['receipts/loaf.md', `---\nvessel: bucket\n---\n\n${smallDay.get('receipts/loaf.md')!.replace(/^---\n[\s\S]*?---\n/, '')}`],
    ])
    await inFolder(files, async (place) => {
      const {code, err} = await run(['plan', place])
      expect(code).toBe(0)
      expect(err).toMatch(/day\.md:\d+:10: warning: 3 fires cannot be planned/)
      expect(err).toMatch(/loaf\.md:2:9: warning: vessel: “bucket” is no vessel known here \(vessel-unknown\)/)
      expect(err).toMatch(/day\.md:\d+:\d+: warning: “loavse” is nothing that is counted here/)
    })
  }, 60_000)
})

describe('the command line itself', () => {
  const faults: Array<[string[], RegExp]> = [
    [[], /hearthfall translate/],
    [['transalte', 'x.md'], /did you mean hearthfall translate\?/],
    [['bake'], /write one of: translate, oven, plan, note, sheets/],
    [['translate'], /write: hearthfall translate FILE/],
    [['translate', 'x.md', '--wy'], /did you mean --why\?/],
    [['translate', 'x.md', '--format', 'xml'], /write one of: text, markdown, json/],
    [['translate', 'x.md', '--year', 'soon'], /write a year such as 1829/],
    [['oven', 'a.md', 'b.md'], /one too many/],
    [['sheets', 'corpus-demo'], /add --out DIR/],
    [['note', 'corpus-demo'], /something is missing/],
  ]
  it.each(faults)('%j', async (args, says) => {
    const {out, err, code} = await run(args)
    expect({out, code}).toEqual({out: '', code: 2})
    expect(err).toMatch(says)
  })

  it.each(['translate', 'oven', 'plan', 'note', 'sheets'])('%s has its help', async (name) => {
    const {out, code} = await run([name, '--help'])
    expect(code).toBe(0)
    expect(out).toContain(`hearthfall ${name}`)
  })
})
