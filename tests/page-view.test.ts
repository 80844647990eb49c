import {mkdtempSync, readFileSync, rmSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {beforeAll, describe, expect, it} from 'vitest'
import {run} from '../src/cli/run.js'
import {type Planned, planFolder} from '../src/page/chain.js'
import {planView, sheetsOf} from '../src/page/plan-view.js'
import {styleOf} from '../src/sheets/style-of.js'
import {demoDay} from './page-day.js'

const files = demoDay()

function planned(of: ReadonlyMap<string, string>): Planned & {ok: true} {
  const found = planFolder(of)
  if (!found.ok) throw new Error(JSON.stringify(found.messages))
  return found
}

const american = styleOf({language: 'en', units: 'us', clock: 12, degrees: 'F'})
const german = styleOf({language: 'de', units: 'metric', clock: 24, degrees: 'C'})

describe('a plan on the page', {timeout: 120_000}, () => {
  let demo: Planned & {ok: true}
  let late: Planned & {ok: true}
  let crowded: Planned & {ok: true}
  beforeAll(() => {
    demo = planned(files)
    const at = (minutes: number): string => `${Math.floor(minutes / 60)}:${String(Math.round(minutes) % 60).padStart(2, '0')}`
    const {lit, raked, ready, forecast} = demo.made.plan
    const cool = Math.round(forecast.floor.likely[Math.round((ready - lit) / forecast.step)] ?? 0) - 15
    late = planned(
      new Map([
        ...files,
        [
          'firings/2027-10-02.md',
          `---\ndate: 2027-10-02\nlit: ${at(lit + 20)}\nraked: ${at(raked + 20)}\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n| ${at(ready + 20)} | floor | ${cool} °C | |\n`,
        ],
      ]),
    )
    // So hot that the oven is right for it only once: the smallest day on which something has no place.
    const day = files.get('day.md')!
    const list = day.slice(0, day.indexOf('- ['))
    crowded = planned(
      new Map([
        ['day.md', `${list}- [Flat bread](receipts/flat.md)\n`],
        ['oven.md', files.get('oven.md')!],
        [
          'receipts/flat.md',
          '# Flat bread\n\n- 500 g flour\n- 300 g water\n- 10 g salt\n\nBake at 430 °C for 12 minutes. Makes 1 loaf.\n',
        ],
      ]),
    )
  }, 120_000)

  it('tells how each dish was brought to its size, in the reader’s words', () => {
    const {sized} = planView(demo, american)
    const of = (dish: string) => sized.find((one) => one.dish === dish)
    expect(of('Gingerbread')).toMatchObject({amount: '3 × oblong 12 in x 8 in x 2 in'})
    expect(of('Gingerbread')!.lines).toEqual(
      expect.arrayContaining([expect.stringMatching(/^count: .*for 40 at about 14 to each/)]),
    )
    // Every decision of every dish is there, once.
    for (const dish of demo.made.problem.dishes) {
      const told = sized.find((one) => one.dish === dish.title)
      expect(told?.lines.length ?? 0, dish.title).toBe(
        new Set(dish.sized.map((one) => `${one.field}${one.value}${one.why}`)).size,
      )
    }
    expect(
      planView(demo, german)
        .sized.find((one) => one.dish === 'Gingerbread')!
        .lines.join(' '),
    ).toMatch(/Anzahl: .*für 40/)
  })

  it('says what would fill idle floor by the clock that was asked for', () => {
    const view = planView(demo, american)
    expect(view.suggestions.length).toBeGreaterThan(0)
    for (const line of view.suggestions) {
      expect(line).toMatch(/\d:\d\d [ap]m/)
      expect(line).not.toMatch(/\b(?:1[3-9]|2[0-3]):\d\d/)
    }
  })

  it('says it, what moved and why, and what has no place, in the language that was asked for', () => {
    expect(planView(demo, german).suggestions.every((line) => /einschießen \d/.test(line))).toBe(true)
    const moved = planView(late, german)
    expect(moved.changes.length).toBeGreaterThan(0)
    for (const {what, why} of moved.changes) {
      expect(what).toMatch(
        /später|früher|anderswo|an anderer Stelle|weggelassen|^(?:mit \d+ % der|\d+ °C unter der mindesten) Hitze ausgezogen/,
      )
      expect(what).not.toMatch(/\b(?:set|later|earlier|moved|drawn|heat|left)\b/)
      expect(why).not.toMatch(/\b(?:the|fire|was|oven|than|planned)\b/)
    }
    expect(moved.today.length).toBeGreaterThan(0)
    for (const line of [...moved.today, ...moved.believed]) expect(line).not.toMatch(/\b(?:oven|than|heat|your|note)\b/i)
    const left = planView(crowded, german)
    expect(left.unplaced.length).toBeGreaterThan(0)
    // Where single dishes are helped, it is not said that nothing helps the day.
    const helped = left.unplaced.some(({remedies}) => remedies.length > 0)
    if (left.ways !== null || !helped) expect(left.ways?.lead).toMatch(/Was dem Tag helfen würde|Keiner der versuchten Auswege/)
    for (const {reason, remedies} of left.unplaced)
      for (const line of [
        reason,
        ...remedies,
        ...(left.ways?.lines ?? []).map(({say}) => say),
        ...left.late.map((one) => one.times),
      ])
        expect(line).not.toMatch(/\b(?:the|wants|everything|fits|longer|leave|all)\b/i)
  })

  it('calls a dish of an old log by its name, as the sheets do', () => {
    const view = planView(demo, american)
    expect(view.believed.join('\n')).toContain('Mutton pies: allow')
    expect(view.believed.join('\n')).not.toContain('mutton-pies')
  })

  it('is printed as the command prints it, byte for byte', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'hearthfall-view-'))
    try {
      const outcome = await run(['sheets', 'corpus-demo', '--out', join(folder, 'out'), '--for', 'kitchen'])
      expect(outcome.code, outcome.err).toBe(0)
      const ours = sheetsOf(demo, {language: 'en', units: 'both', audience: 'kitchen'})
      for (const path of ['day.html', 'day.txt', 'shopping.html', 'index.html'])
        expect(ours.get(path) === readFileSync(join(folder, 'out', path), 'utf8'), path).toBe(true)
      expect(ours.get('day.txt')?.includes('Mutton pies: allow')).toBe(true)
    } finally {
      rmSync(folder, {recursive: true, force: true})
    }
  })
})

describe('the page on paper', () => {
  it('leaves no heading alone at the foot of a sheet', () => {
    const css = readFileSync(new URL('../src/page/look.css', import.meta.url), 'utf8')
    const print = css.slice(css.indexOf('@media print'))
    expect(print).toMatch(/h3,[^{}]*\{[^}]*break-after: avoid/)
    expect(print).toMatch(/figure \{[^}]*break-inside: avoid/)
  })
})
