import {describe, expect, it} from 'vitest'
import {cached, fingerprint} from '../src/page/cached.js'
import {knowsMorning, loadsIn, morningKey, planFolder, readFolder} from '../src/page/chain.js'
import {planJson} from '../src/sheets/plan-json.js'
import {commandPlan, smallDay} from './page-day.js'

// The small day, with an earlier firing that taught something of the oven and of the loaf.
const files = new Map([
  ...smallDay,
  [
    'firings/2027-06-05.md',
    '---\ndate: 2027-06-05\nwood: 22 kg\nlit: 6:00\nraked: 8:00\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n| 8:40 | floor | 235 °C | |\n| 9:10 | loaf | set in | 6 loaves |\n| 10:00 | loaf | drawn 10 min late | |\n| 10:30 | floor | 190 °C | |\n',
  ],
])
const LOG =
  '---\ndate: 2027-06-19\nlit: 6:30\nraked: 8:30\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n| 9:10 | floor | 240 °C | |\n'

function pagePlan(of: ReadonlyMap<string, string>): string {
  const found = planFolder(of)
  if (!found.ok) throw new Error(JSON.stringify(found.messages))
  return planJson(found.made.plan, found.made.problem, found.read.oven)
}

describe('a folder planned by the page', {timeout: 120_000}, () => {
  it('has the plan the command gives it, with what past firings taught of oven and dishes', async () => {
    expect(pagePlan(files) === (await commandPlan(files))).toBe(true)
  })

  it('has it too when the day has begun, and says what the readings changed', async () => {
    const begun = new Map([...files, ['firings/2027-06-19.md', LOG]])
    const found = planFolder(begun)
    if (!found.ok) throw new Error(JSON.stringify(found.messages))
    expect(pagePlan(begun) === (await commandPlan(begun))).toBe(true)
    const before = planFolder(files)
    expect(found.believed).toEqual(before.ok ? before.believed : null)
    expect(found.today.length).toBeGreaterThan(0)
  })

  it('weighs a past load by the day’s own dishes, and by none where the day cannot be read', () => {
    const loads = loadsIn(files, readFolder(files))
    const one = loads?.('loaf', 'set in 1 loaf')
    expect(one?.mass).toBeGreaterThan(0.7)
    expect(one?.mass).toBeLessThan(0.9)
    expect(loads?.('loaf', 'set in 6 loaves')?.mass).toBeCloseTo(6 * (one?.mass ?? 0), 6)
    const torn = new Map([...files, ['day.md', files.get('day.md')!.replace('people: 8', 'people: eight-ish')]])
    expect(loadsIn(torn, readFolder(torn))).toBeNull()
  })

  it('reads nothing again that has not changed: a second look costs less than a tenth of the first', () => {
    const fresh = new Map(
      [...files].map(([path, text]) => [path, text.replace('Sedge', 'Rush').replace('Loaf', 'Hill loaf')] as const),
    )
    const took = (): number => {
      const from = performance.now()
      readFolder(fresh)
      return performance.now() - from
    }
    const first = took()
    expect(Math.min(took(), took(), took())).toBeLessThan(first / 10)
  })

  it('knows the morning again after a note, and not after any other change', () => {
    planFolder(files)
    expect(knowsMorning(new Map([...files, ['firings/2027-06-19.md', LOG]]))).toBe(true)
    for (const path of files.keys()) expect(knowsMorning(new Map([...files, [path, `${files.get(path)} \n`]])), path).toBe(false)
    expect(morningKey(files, '2027-06-19')).toBe(morningKey(new Map([...files].reverse()), '2027-06-19'))
  })

  it('is told of an amount that cannot be made, as the command tells it', () => {
    const wrong = new Map([...files, ['day.md', files.get('day.md')!.replace('4 loaves', '-4 loaves')]])
    const found = planFolder(wrong)
    expect(found.ok).toBe(false)
  })
})

describe('what is kept of texts', () => {
  it('is made once for a text, and the one longest unasked goes first', () => {
    const made: string[] = []
    const of = cached(
      2,
      (text: string) => text,
      (text) => {
        made.push(text)
        return text.length
      },
    )
    for (const text of ['a', 'b', 'a', 'c', 'a', 'b']) of(text)
    expect(made).toEqual(['a', 'b', 'c', 'b'])
  })

  it('tells folders apart, also where words moved from one text to the next', () => {
    expect(fingerprint(['ab', 'c'])).not.toBe(fingerprint(['a', 'bc']))
    expect(fingerprint(['a', ''])).not.toBe(fingerprint(['a']))
    expect(fingerprint(['a', 'b'])).toBe(fingerprint(['a', 'b']))
  })
})
