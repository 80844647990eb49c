import {beforeAll, describe, expect, it} from 'vitest'
import {readLog} from '../src/oven/log.js'
import {appendToLog} from '../src/oven/log-append.js'
import {parseNote} from '../src/oven/note.js'
import {type Planned, planFolder} from '../src/page/chain.js'
import {type Deed, deedsOf, inside, moves, noteOf} from '../src/page/deeds.js'
import {moved} from '../src/page/moved.js'
import {planView} from '../src/page/plan-view.js'
import type {PlanView, Showing} from '../src/page/protocol.js'
import {rules} from '../src/plan/rules.js'
import {styleOf} from '../src/sheets/style-of.js'
import {demoDay, type Files} from './page-day.js'

const showing: Showing = {language: 'en', units: 'both', clock: 24, degrees: 'C'}
const german: Showing = {...showing, language: 'de'}
const DATE = '2027-10-02'
const LOG = `firings/${DATE}.md`

const viewOf = (found: Planned, words = showing): PlanView => {
  if (!found.ok) throw new Error(found.messages.map(({reason}) => reason).join('; '))
  return {...planView(found, styleOf(words)), language: words.language, took: 0, parts: {plan: 0, view: 0}}
}

const logOf = (files: Files): ReturnType<typeof readLog>['log'] => readLog(files.get(LOG) ?? '', LOG).log

function noted(files: Files, words: string, minutes: number): Files {
  const parsed = parseNote(words, {date: DATE, now: {date: DATE, minutes}})
  if (!parsed.ok) throw new Error(parsed.reason)
  const after = appendToLog(files.get(LOG) ?? '', parsed.entry, {date: DATE})
  if (!after.ok) throw new Error(after.reason)
  return new Map([...files, [LOG, after.source]])
}

/** A demo day of which every step of fire and door is ticked so many minutes after its time, those of one opening a minute apart. */
function rehearsed(late: number): {
  readonly files: Files
  readonly lines: readonly string[]
  readonly view: PlanView
} {
  let files: Files = demoDay()
  let view = viewOf(planFolder(files))
  const lines: string[] = []
  let now = 0
  for (let n = 0; n < 60; n++) {
    const deed = deedsOf(view, logOf(files)).find(({done, step}) => !done && moves(step.action))
    if (!deed) break
    // What is due when the door is open already is done at once, however late that was opened.
    now = deed.step.at <= now + 2 * rules.tick ? now + 1 : Math.max(now + 1, deed.step.at + late)
    const stem = deed.stems.find((_, i) => !deed.ticked[i]) ?? null
    files = noted(files, noteOf(deed, deed.step.action === 'load' || deed.step.action === 'draw' ? stem : null), now)
    const after = viewOf(planFolder(files, {now, effort: 'quick'}))
    lines.push(...moved(view, after, showing))
    view = after
  }
  return {files, lines, view}
}

describe('a day that is ticked step by step', {timeout: 120_000}, () => {
  for (const late of [0, 12, -10])
    it(`every dish is offered to be set in and drawn, and none is told to be so once less: ${late} min late`, () => {
      const {files, lines, view} = rehearsed(late)
      const rows = logOf(files)?.rows ?? []
      for (const dish of view.dishes)
        for (const what of ['set in', 'drawn'])
          expect(
            rows.filter((row) => row.dish === dish.stem && row.what === what),
            `${dish.title} ${what}`,
          ).toHaveLength(1)
      expect(lines.filter((line) => /once less|as well|no longer/.test(line))).toEqual([])
      expect(inside(view, logOf(files))).toEqual([])
    })
})

describe('what is not ticked', {timeout: 120_000}, () => {
  let files: Files
  let morning: PlanView
  beforeAll(() => {
    files = demoDay()
    morning = viewOf(planFolder(files))
  })
  const of = (deeds: readonly Deed[], action: string, stem: string): Deed | undefined =>
    deeds.find(({step, stems}) => step.action === action && stems.includes(stem))

  it('is still offered when the day is planned again, and told as taken so by the plan only', () => {
    // Household bread is drawn, pies and gingerbread are set in at one opening: only the bread is ticked.
    const planned = deedsOf(morning, null)
    const at = (action: string): number => planned.find(({step}) => step.action === action)!.step.at
    let log = noted(files, 'lit', at('light'))
    log = noted(log, 'raked', at('rake'))
    log = noted(log, 'household-bread set in', of(planned, 'load', 'household-bread')!.step.at)
    const shown = planned
    const out = of(shown, 'draw', 'household-bread')!.step.at
    const {stems} = shown.find(({step}) => step.action === 'load' && step.at === out)!
    const [first] = stems as [string]
    log = noted(log, 'household-bread drawn', out)
    // At that minute what goes in after it is to be set in still.
    const atOnce = viewOf(planFolder(log, {now: out, effort: 'quick'}))
    expect(of(deedsOf(atOnce, logOf(log)), 'load', first)!.step.at).toBeGreaterThanOrEqual(out)
    expect(inside(atOnce, logOf(log)).map(({stem}) => stem)).not.toContain(first)
    const found = planFolder(log, {now: out + 5, effort: 'quick'})
    const view = viewOf(found)
    const deeds = deedsOf(view, logOf(log))
    const titles = stems.map((stem) => view.dishes.find((dish) => dish.stem === stem)!.title)
    expect(of(deeds, 'load', first)).toMatchObject({done: false, step: {say: `Set in: ${titles.join(', ')}.`}})
    // The rye bread was to be in before the bread, and is not ticked: to draw it is no plain matter.
    expect(of(deeds, 'load', 'rye-and-indian-bread')?.done).toBe(false)
    const draw = of(deeds, 'draw', 'rye-and-indian-bread')
    expect(draw?.unset[draw.stems.indexOf('rye-and-indian-bread')]).toBe(of(deeds, 'load', 'rye-and-indian-bread')?.step.at)
    const baking = inside(view, logOf(log)).filter(({stem}) => stems.includes(stem))
    expect(baking.map(({title, ticked}) => [title, ticked])).toEqual(titles.map((title) => [title, false]))
    // Nothing of it has changed for the cook.
    const before = viewOf(planFolder(log, {now: out, effort: 'quick'}))
    expect(moved(before, view, showing).filter((line) => titles.some((title) => line.startsWith(`${title}: set in`)))).toEqual([])
    expect(deedsOf(viewOf(found, german), logOf(log)).map(({step}) => step.say)).toContain(`Einschießen: ${titles.join(', ')}.`)
  })

  it('is offered until it is ticked, each dish of a load by itself, and no longer', () => {
    const after = noted(files, 'gingerbread set in', 675)
    const load = of(deedsOf(morning, logOf(after)), 'load', 'gingerbread')
    expect(load?.done).toBe(false)
    expect(load?.stems.map((stem, i) => [stem, load.ticked[i]])).toEqual(
      expect.arrayContaining([
        ['gingerbread', true],
        ['mutton-pies', false],
      ]),
    )
    const draw = of(deedsOf(morning, logOf(after)), 'draw', 'gingerbread')
    expect(draw?.unset[draw.stems.indexOf('gingerbread')]).toBeNull()
  })

  it('stands behind what is drawn at the same opening', () => {
    const door = deedsOf(morning, null).filter(({step}) => step.action === 'draw' || step.action === 'load')
    const both = door.filter(({step}, i) => door[i + 1]?.step.at === step.at || door[i - 1]?.step.at === step.at)
    expect(both.length).toBeGreaterThan(1)
    for (const [i, {step}] of both.entries())
      if (both[i + 1]?.step.at === step.at) expect(step.action === 'load' && both[i + 1]?.step.action === 'draw').toBe(false)
  })
})

describe('batches of a dish', () => {
  it('are one dish in what moved: a plan that takes the other first moves nothing', () => {
    const view = (id: string): PlanView =>
      ({
        steps: [{key: `load:${id}`, at: 540, action: 'load', dishes: [id], past: false}],
        unplaced: [],
        dishes: [
          {id: 'a-1', title: 'Loaf (1/2)', stem: 'a', amount: ''},
          {id: 'a-2', title: 'Loaf (2/2)', stem: 'a', amount: ''},
        ],
      }) as unknown as PlanView
    expect(moved(view('a-1'), view('a-2'), showing)).toEqual([])
  })
})
