import {
  appendFileSync,
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  utimesSync,
  writeFileSync,
} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {deserialize, serialize} from 'node:v8'
import {afterEach, beforeEach, describe, expect, it, vi} from 'vitest'
import type {WorkedOut} from '../src/cli/kept-plans.js'
import {run} from '../src/cli/run.js'

/** What a command worked out of a day is taken by the next one, and nothing comes out otherwise for it. */

let home = ''
let day = ''
const shelf = (): string => join(home, 'hearthfall', 'plans')
const kept = (): string => join(shelf(), readdirSync(shelf())[0]!)
const plan = async (...options: string[]): Promise<string> => (await run(['plan', day, ...options])).out

/** Length of the key before what is kept: SHA-256. */
const KEY = 32

/** Change what is kept, so that it shows where it is taken. */
function change(how: (worked: WorkedOut) => WorkedOut): void {
  const bytes = readFileSync(kept())
  const worked = deserialize(bytes.subarray(KEY)) as WorkedOut
  writeFileSync(kept(), Buffer.concat([bytes.subarray(0, KEY), serialize(how(worked))]))
}

const warned = (worked: WorkedOut): WorkedOut => {
  const {morning} = worked
  const message = {
    file: 'day.md',
    line: 1,
    column: 1,
    severity: 'warning',
    rule: 'kept',
    reason: 'This was kept',
    suggest: 'Plan it afresh',
  } as const
  return {...worked, morning: {...morning!, plan: {...morning!.plan, messages: [message]}}}
}

beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), 'hearthfall-'))
  day = join(home, 'day')
  mkdirSync(join(day, 'receipts'), {recursive: true})
  cpSync('corpus-demo/oven.md', join(day, 'oven.md'))
  for (const name of ['apple-pies.md', 'rye-and-indian-bread.md', 'gingerbread.md'])
    cpSync(join('corpus-demo/receipts', name), join(day, 'receipts', name))
  writeFileSync(
    join(day, 'day.md'),
    '---\ndate: 2026-10-03\npeople: 8\nfire from: 5:00 am\nserve: 6:00 pm\n---\n\n- [Apple pies](receipts/apple-pies.md)\n- [Gingerbread](receipts/gingerbread.md)\n',
  )
  vi.stubEnv('XDG_CACHE_HOME', home)
  vi.stubEnv('LOCALAPPDATA', home)
  globalThis.HEARTHFALL_BUILD = 'of a test'
})
afterEach(() => {
  globalThis.HEARTHFALL_BUILD = undefined
  vi.unstubAllEnvs()
  rmSync(home, {recursive: true, force: true})
})

// Where caches lie is the XDG Base Directory Specification's to say; other systems have places of their own.
describe.runIf(process.platform === 'linux')('plans kept for the next command', () => {
  it('are taken for the very same day', async () => {
    const first = await plan()
    expect(await plan()).toBe(first)
    expect(await plan('--afresh')).toBe(first)
    change(warned)
    expect(await plan()).toContain('This was kept')
    expect(await plan('--afresh')).toBe(first)
    expect((await run(['sheets', day, '--out', join(home, 'out')])).code).toBe(0)
    expect(readFileSync(join(home, 'out', 'plan.json'), 'utf8')).toContain('This was kept')
  })

  it('are not taken where a receipt, the oven, the day, a past firing or the program is another', async () => {
    await plan()
    const changed = async (what: () => void): Promise<void> => {
      change(warned)
      expect(await plan()).toContain('This was kept')
      what()
      expect(await plan()).not.toContain('This was kept')
    }
    await changed(() => appendFileSync(join(day, 'receipts/gingerbread.md'), '\nServe it with cream.\n'))
    await changed(() =>
      writeFileSync(join(day, 'oven.md'), readFileSync('corpus-demo/oven.md', 'utf8').replace('60 °F', '75 °F')),
    )
    await changed(() => appendFileSync(join(day, 'day.md'), '- [Rye and Indian bread](receipts/rye-and-indian-bread.md)\n'))
    await changed(() => {
      globalThis.HEARTHFALL_BUILD = 'of another test'
    })
  })

  it('grow with the day, whose log changes nothing of them', async () => {
    await plan()
    const rows = [
      '| 8:10 am | floor | 262 °C | |',
      '| 8:40 am | apple pies | set in | |',
      '| 9:55 am | apple pies | drawn | |',
      '| 10:20 am | floor | 190 °C | |',
    ]
    const log = (n: number): string =>
      `---\ndate: 2026-10-03\nlit: 5:20 am\nraked: 7:00 am\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n${rows.slice(0, n).join('\n')}\n`
    mkdirSync(join(day, 'firings'))
    for (let n = 1; n <= rows.length; n++) {
      writeFileSync(join(day, 'firings/2026-10-03.md'), log(n))
      const out = await plan()
      expect(await plan('--afresh'), rows[n - 1]).toBe(out)
      expect(await plan(), rows[n - 1]).toBe(out)
    }
    const {known} = deserialize(readFileSync(kept()).subarray(KEY)) as WorkedOut
    expect(known.size).toBeGreaterThan(0)
    change((worked) => ({...warned(worked), known: new Map()}))
    expect(await plan()).toContain('Apple')
  })

  it('are worked out again where what is kept is broken, and where nothing can be kept', async () => {
    const first = await plan()
    writeFileSync(kept(), readFileSync(kept()).subarray(0, KEY + 40))
    expect(await plan()).toBe(first)
    writeFileSync(kept(), '')
    expect(await plan()).toBe(first)
    rmSync(shelf(), {recursive: true})
    writeFileSync(shelf(), 'a file where the folder would be')
    expect(await plan()).toBe(first)
  })

  it('are of two dozen days, and those looked at longest ago go first', async () => {
    mkdirSync(shelf(), {recursive: true})
    for (let n = 0; n < 30; n++) {
      writeFileSync(join(shelf(), `old${n}`), 'of another day')
      utimesSync(join(shelf(), `old${n}`), 1000 + n, 1000 + n)
    }
    await plan()
    const names = readdirSync(shelf())
    expect(names).toHaveLength(24)
    expect(names).toContain('old29')
    expect(names).not.toContain('old6')
  })

  it('are not kept by a program that runs from its source', async () => {
    globalThis.HEARTHFALL_BUILD = undefined
    await plan()
    expect(() => readdirSync(shelf())).toThrow()
  })
})
