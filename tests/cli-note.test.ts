import {spawn} from 'node:child_process'
import {cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {afterAll, beforeEach, describe, expect, it} from 'vitest'
import {run} from '../src/cli/run.js'
import {readLog} from '../src/oven/log.js'

const base = mkdtempSync(join(tmpdir(), 'hearthfall-note-'))
afterAll(() => rmSync(base, {recursive: true, force: true}))
let day = ''
let log = ''
let n = 0
beforeEach(() => {
  n += 1
  day = join(base, `day-${n}`)
  cpSync(join('tests', 'fixtures', 'cold-oven'), day, {recursive: true})
  const date = /^date: (\S+)/m.exec(readFileSync(join(day, 'day.md'), 'utf8'))![1]!
  log = join(day, 'firings', `${date}.md`)
  rmSync(log, {force: true})
})
const note = (...words: string[]) => run(['note', day, ...words, '--anyway'])
const rows = (): number => {
  const {log: read, messages} = readLog(readFileSync(log, 'utf8'), log)
  expect(messages.filter((m) => m.severity === 'error')).toEqual([])
  return read!.rows.length
}

describe('the day’s log', () => {
  it('is begun by the first note and added to by the next', async () => {
    expect((await note('2:15 pm arm 18')).code).toBe(0)
    expect((await note('2:40', 'pm', 'floor', '410 °F')).code).toBe(0)
    expect(rows()).toBe(2)
  })

  it('takes several dishes in one note, a row for each', async () => {
    const name = /receipts\/([a-z-]+)\.md/g
    const [one, two] = Array.from(readFileSync(join(day, 'day.md'), 'utf8').matchAll(name), (m) => m[1]!)
    const {out, code} = await note(`11:40 am ${one} and ${two} set in`)
    expect(code).toBe(0)
    expect(out.match(/^Noted in /gm)).toHaveLength(2)
    const said = readLog(readFileSync(log, 'utf8'), log).log!.rows.map((row) => `${row.dish} ${row.what}`)
    expect(said).toEqual([`${one} set in`, `${two} set in`])
  })

  it('says that a set-in without a number may be of some only, and how many are asked for', async () => {
    const bare = await note('11:40 am bread set in')
    expect(bare.out).toContain('write how many: “11:40 am bread 3 set in”')
    expect((await note('11:45 am bread 2 set in')).out).not.toContain('write how many')
    expect((await note('11:50 am bread drawn')).out).not.toContain('write how many')
  })

  it('keeps what a hand has written, byte for byte', async () => {
    await note('2:15 pm arm 18')
    const hand = `${readFileSync(log, 'utf8')}\nThe wind was from the east; the fire drew badly.  \n`
    writeFileSync(log, hand)
    await note('3 pm vault 230 °C')
    const after = readFileSync(log, 'utf8')
    const added = after.split('\n').filter((line) => !hand.split('\n').includes(line))
    expect(added).toHaveLength(1)
    expect(after.replace(`${added[0]}\n`, '')).toBe(hand)
  })

  it('writes nothing into a log in another encoding, and says why', async () => {
    await note('2:15 pm arm 18')
    const hand = Buffer.from(`${readFileSync(log, 'utf8')}\nBr\u00f6tchen um drei.\n`, 'latin1')
    writeFileSync(log, hand)
    const {code, err} = await note('3 pm vault 230 °C')
    expect(code).toBe(2)
    expect(err).toContain('save it in UTF-8')
    expect(readFileSync(log)).toEqual(hand)
  })

  it.each([
    ['2 pm floor 4000 °C', /4000|hot/i],
    ['2 pm floor 300', /scale|unit|°/],
    ['arm', /time|count|reading/],
    ['', /empty|missing/],
  ])('refuses %j and writes nothing', async (text, says) => {
    const {code, err} = await note(text)
    expect(code).toBe(2)
    expect(err).toMatch(says)
    expect(existsSync(log)).toBe(false)
  })

  it('refuses a dish that is none of the day’s until it is told to', async () => {
    const today = new Date()
    const source = readFileSync(join(day, 'day.md'), 'utf8')
    writeFileSync(join(day, 'day.md'), source.replace(/^date: \S+/m, `date: ${today.toISOString().slice(0, 10)}`))
    const {code, err} = await run(['note', day, '0:00 puding set in'])
    expect(code).toBe(2)
    expect(err).toMatch(/“puding” is no dish of this day.*\n.*write “.*--anyway/)
    expect((await run(['note', day, '0:00 puding set in', '--anyway'])).code).toBe(0)
  })

  it('says where an entry is kept as words, and only there', async () => {
    const words = 'In words only: the plan takes nothing from it.'
    expect(await note('3 pm one more guest')).toMatchObject({code: 0, out: expect.stringContaining(words)})
    expect((await note('3 pm arm 18')).out).not.toContain(words)
    expect((await note('6 am mixed the dough')).out).not.toContain(words)
  })

  it('takes many hands at once and loses none', async () => {
    const done = await Promise.all(Array.from({length: 12}, (_, i) => note(`${(i % 11) + 1}:${10 + i} pm arm ${10 + i}`)))
    expect(done.map((d) => d.code)).toEqual(Array(12).fill(0))
    expect(rows()).toBe(12)
  })

  it('is whole after a kill at any moment', async () => {
    await note('1 pm arm 12')
    const script = `import {run} from ${JSON.stringify(join(process.cwd(), 'src/cli/run.ts'))}
      process.stdout.write('ready')
      for (let i = 0; ; i++) await run(['note', ${JSON.stringify(day)}, '2 pm arm ' + (10 + (i % 20)), '--anyway'])`
    const file = join(base, `writer-${n}.mts`)
    writeFileSync(file, script)
    let before = rows()
    for (const wait of [5, 37, 90, 160]) {
      const child = spawn(process.execPath, ['--import', join(process.cwd(), 'node_modules/tsx/dist/esm/index.mjs'), file], {
        stdio: ['ignore', 'pipe', 'inherit'],
      })
      await new Promise<void>((ready) => child.stdout.once('data', () => ready()))
      await new Promise((later) => setTimeout(later, wait))
      child.kill('SIGKILL')
      await new Promise((gone) => child.once('exit', gone))
      // The dead writer's lock is taken over once it is stale; the log itself is never half a row.
      rmSync(`${log}.lock`, {recursive: true, force: true})
      const now = rows()
      expect(now).toBeGreaterThanOrEqual(before)
      before = now
    }
    expect((await note('3 pm arm 20')).code).toBe(0)
    expect(readdirSync(join(day, 'firings')).filter((f) => f.endsWith('.md'))).toContain(log.split('/').pop())
  })
})
