import {spawn} from 'node:child_process'
import {mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {afterAll, beforeAll, describe, expect, it, vi} from 'vitest'
import {run} from '../src/cli/run.js'

/** `hearthfall sheets` as a whole: what it writes, what it leaves alone, what it says while it works. */
const base = mkdtempSync(join(tmpdir(), 'hearthfall-command-'))
const folder = join(base, 'day')
beforeAll(() => {
  mkdirSync(join(folder, 'receipts'), {recursive: true})
  writeFileSync(join(folder, 'oven.md'), readFileSync('corpus-demo/oven.md'))
  writeFileSync(
    join(folder, 'day.md'),
    '---\ndate: 2027-06-19\npeople: 8\nfire from: 6 am\nserve: 6 pm\n---\n\n# A small day\n\n- [Tea loaf](receipts/loaf.md) — 2 loaves\n',
  )
  writeFileSync(
    join(folder, 'receipts', 'loaf.md'),
    '---\nyear: 1850\nplace: England\nvessel: loaf 9 x 5 x 3 in\n---\n\n# Tea loaf\n\n- 1 lb of flour\n- 4 oz of butter\n- 2 eggs\n\nBake an hour in a moderate oven. Makes 2 loaves.\n',
  )
})
afterAll(() => rmSync(base, {recursive: true, force: true}))

const tree = (out: string): Record<string, string> =>
  Object.fromEntries(
    readdirSync(out, {recursive: true, withFileTypes: true})
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name))
      .sort()
      .map((path) => [path.slice(out.length + 1), readFileSync(path, 'utf8')]),
  )

describe('hearthfall sheets', () => {
  it('writes the same bytes twice, and needs no --replace for its own files', async () => {
    const out = join(base, 'twice')
    expect((await run(['sheets', folder, '--out', out])).code).toBe(0)
    const first = tree(out)
    expect(Object.keys(first)).toContain('index.html')
    expect((await run(['sheets', folder, '--out', out])).code).toBe(0)
    expect(tree(out)).toEqual(first)
  }, 60_000)

  it('leaves a file that is not ours alone, and with it everything else, unless --replace', async () => {
    const out = join(base, 'foreign')
    mkdirSync(out)
    writeFileSync(join(out, 'day.html'), 'a page of somebody else')
    const refused = await run(['sheets', folder, '--out', out])
    expect(refused.code).toBe(2)
    expect(refused.err).toContain('day.html')
    expect(tree(out)).toEqual({'day.html': 'a page of somebody else'})
    expect((await run(['sheets', folder, '--out', out, '--replace'])).code).toBe(0)
    expect(tree(out)['day.html']).toContain('<!doctype html>')
  }, 60_000)

  it('shows its progress on a terminal and nothing in a pipe', async () => {
    const said: string[] = []
    const write = vi.spyOn(process.stderr, 'write').mockImplementation((text) => said.push(String(text)) > 0)
    const was = process.stderr.isTTY
    const heard = async (tty: boolean): Promise<string> => {
      said.length = 0
      Object.defineProperty(process.stderr, 'isTTY', {value: tty, configurable: true})
      await run(['sheets', folder, '--out', join(base, `tty-${tty}`)])
      return said.join('')
    }
    try {
      expect(await heard(false)).toBe('')
      const watched = await heard(true)
      expect(watched).toContain('1 sheets: day.html')
      expect(watched.endsWith('\r\u001b[K')).toBe(true)
    } finally {
      Object.defineProperty(process.stderr, 'isTTY', {value: was, configurable: true})
      write.mockRestore()
    }
  }, 60_000)

  it('leaves every old file whole when it is killed at any moment, and can be run again', async () => {
    const out = join(base, 'killed')
    await run(['sheets', folder, '--out', out, '--language', 'en'])
    const english = tree(out)
    await run(['sheets', folder, '--out', out, '--language', 'de'])
    const german = tree(out)
    for (const delay of [0, 5, 12]) {
      await run(['sheets', folder, '--out', out, '--language', 'en'])
      const args = ['--import', 'tsx', 'src/cli/main.ts', 'sheets', folder, '--out', out, '--language', 'de']
      const child = spawn(process.execPath, args, {stdio: 'ignore'})
      const ended = new Promise((done) => child.on('exit', done))
      // Killed some milliseconds after the first of its files has changed.
      const started = Date.now()
      while (child.exitCode === null && Date.now() - started < 60_000) {
        if (readFileSync(join(out, 'day.html'), 'utf8') !== english['day.html']) break
        await new Promise((done) => setTimeout(done, 1))
      }
      await new Promise((done) => setTimeout(done, delay))
      child.kill('SIGKILL')
      await ended
      for (const [path, content] of Object.entries(tree(out))) {
        // A temporary file of the write that was cut off is no sheet.
        if (!(path in english)) expect(path).toMatch(/\.\d+$/)
        else if (path !== '.hearthfall-files.json') expect([english[path], german[path]], path).toContain(content)
      }
      expect((await run(['sheets', folder, '--out', out, '--language', 'de'])).code).toBe(0)
      for (const [path, content] of Object.entries(german)) expect(tree(out)[path], path).toBe(content)
    }
  }, 240_000)
})
