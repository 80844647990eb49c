import {describe, expect, it} from 'vitest'
import {cached, fingerprint} from '../src/page/cached.js'
import {copyIn, knowsMorning, loadsIn, morningKey, planFolder, readFolder} from '../src/page/chain.js'
import {planJson} from '../src/sheets/plan-json.js'
import {COPY, DATE, dayWith, folderWith, LOG as LIT, logWith} from './kept-day.js'
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

describe('a day changed since its fire was lit, planned by the page', {timeout: 120_000}, () => {
  const rows = ['9:55 | loaf | set in', '10:55 | loaf | drawn', '10:55 | cake | set in']
  const changed = (day: string): ReadonlyMap<string, string> =>
    folderWith(day, [
      [LIT, logWith(...rows)],
      [COPY, dayWith()],
    ])

  it('has the plan the command gives it', async () => {
    for (const day of [dayWith({pudding: null}), dayWith({cake: null}), dayWith({pudding: '3 puddings'})])
      expect(pagePlan(changed(day)) === (await commandPlan(changed(day)))).toBe(true)
  })

  it('goes on from the morning that was planned before, whatever the day asks for now', () => {
    const morning = folderWith(dayWith())
    const key = morningKey(morning, DATE)
    expect(morningKey(changed(dayWith()), DATE)).toBe(key)
    expect(morningKey(changed(dayWith({pudding: null})), DATE)).toBe(key)
    expect(morningKey(folderWith(dayWith({pudding: null})), DATE)).not.toBe(key)
    planFolder(morning)
    expect(knowsMorning(changed(dayWith({cake: null})))).toBe(true)
  })

  it('keeps the day when the fire is noted as lit, and when it asks for something else', () => {
    const names = ['loaf', 'cake', 'pudding']
    const lit = logWith()
    expect(copyIn(folderWith(dayWith()), '', '', names)).toBeNull()
    expect(copyIn(folderWith(dayWith()), '', lit, names)).toBe(COPY)
    const after = folderWith(dayWith({cake: null}), [[COPY, dayWith()]])
    expect(copyIn(after, logWith(...rows), logWith(...rows, '11:00 | vault | 200 °C'), names)).toBe(
      COPY.replace('.md', '-1055.md'),
    )
    expect(copyIn(folderWith(dayWith(), [[COPY, dayWith()]]), lit, logWith(rows[0]!), names)).toBeNull()
  })

  it('names a copy that cannot be read', () => {
    const found = planFolder(
      folderWith(dayWith(), [
        [LIT, logWith(...rows)],
        [COPY, dayWith().replace('people: 8', 'people: many')],
      ]),
    )
    expect(found).toMatchObject({ok: false, messages: [{file: COPY, line: 3}]})
  })
})
