import {mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {dirname, join} from 'node:path'
import {expect} from 'vitest'
import {run} from '../src/cli/run.js'

/** The files of a bake day by their path in its folder, as the page holds them. */
export type Files = ReadonlyMap<string, string>

/** A small day of our own: two receipts, an oven, no firing before it. Its date is not the page's present. */
export const smallDay: Files = new Map([
  [
    'day.md',
    '---\ndate: 2027-06-19\npeople: 8\nfire from: 6 am\nserve: 1 pm\nhands: 1\n---\n\n# A small day\n\n- [Loaf](receipts/loaf.md) — 4 loaves\n- [Cake](receipts/cake.md)\n',
  ],
  [
    'oven.md',
    '---\nfloor: round 42 in\nvault height: 16 in\nmouth: 18 in x 10 in\ndoor: oak 2 in\nhearth:\n  - common brick 4 in\n  - sand 6 in\nvault:\n  - common brick 9 in\nplace: outdoors\nambient: 60 °F\nfuel: oak, 18 % moisture\nstart: cold\n---\n\n# The oven at Sedge Corner\n',
  ],
  [
    'receipts/loaf.md',
    '---\nvessel: free-standing loaf 22 cm\n---\n\n# Loaf\n\n- 500 g flour\n- 320 ml water\n- 10 g salt\n- 7 g dry yeast\n\nLet it rise 2 hours. Bake at 230 °C for 40 minutes. Makes 1 loaf.\n',
  ],
  [
    'receipts/cake.md',
    '---\nyear: 1840\nplace: United States\n---\n\n# Cake\n\nHalf a pound of butter, half a pound of sugar, four eggs, a gill of milk and a pound of flour.\nBake it in a moderate oven three quarters of an hour. It makes one cake.\n',
  ],
])

/** The demo's day, with every receipt and firing of it. */
export const demoDay = (): Files =>
  new Map(
    readdirSync('corpus-demo', {recursive: true, encoding: 'utf8'})
      .filter((path) => path.endsWith('.md') && path !== 'README.md')
      .sort()
      .map((path) => [path, readFileSync(join('corpus-demo', path), 'utf8')] as const),
  )

/** The files in a folder of their own while `use` goes on. */
export async function inFolder<T>(files: Files, use: (folder: string) => Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'hearthfall-day-'))
  try {
    for (const [path, text] of files) {
      mkdirSync(dirname(join(folder, path)), {recursive: true})
      writeFileSync(join(folder, path), text)
    }
    return await use(folder)
  } finally {
    rmSync(folder, {recursive: true, force: true})
  }
}

/** The plan the command makes of the files, as JSON. */
export const commandPlan = (files: Files): Promise<string> =>
  inFolder(files, async (folder) => {
    const outcome = await run(['plan', folder, '--format', 'json'])
    expect(outcome.code, outcome.err).toBeLessThan(2)
    return outcome.out
  })
