import {beforeAll, describe, expect, it} from 'vitest'
import {readLog} from '../src/oven/log.js'
import {appendToLog} from '../src/oven/log-append.js'
import {parseNote} from '../src/oven/note.js'
import {planFolder} from '../src/page/chain.js'
import {type Deed, inside, noteOf} from '../src/page/deeds.js'
import {allDeeds, type Held, heldOf, nothingHeld, standing} from '../src/page/due.js'
import {planView} from '../src/page/plan-view.js'
import type {PlanView, Showing, StepView} from '../src/page/protocol.js'
import {styleOf} from '../src/sheets/style-of.js'
import {demoDay, type Files} from './page-day.js'

const showing: Showing = {language: 'en', units: 'both', clock: 24, degrees: 'C'}
const DATE = '2027-10-02'
const LOG = `firings/${DATE}.md`

const logIn = (files: Files): ReturnType<typeof readLog>['log'] => readLog(files.get(LOG) ?? '', LOG).log

function viewAt(files: Files, now: number | null, words = showing): PlanView {
  const found = planFolder(files, {effort: 'quick', ...(now === null ? {} : {now})})
  if (!found.ok) throw new Error(found.messages.map(({reason}) => reason).join('; '))
  return {...planView(found, styleOf(words)), language: words.language, took: 0, parts: {plan: 0, view: 0}}
}

function noted(files: Files, words: string, minutes: number): Files {
  const parsed = parseNote(words, {date: DATE, now: {date: DATE, minutes}, log: logIn(files)})
  if (!parsed.ok) throw new Error(parsed.reason)
  const after = appendToLog(files.get(LOG) ?? '', parsed.entry, {date: DATE})
  if (!after.ok) throw new Error(after.reason)
  return new Map([...files, [LOG, after.source]])
}

/** A cook at the page: what is noted has the day planned again, and what was due by the plan before is held. */
class AtOven {
  files: Files
  view: PlanView
  held: Held = nothingHeld
  now: number

  constructor(files: Files, now: number) {
    this.files = files
    this.now = now
    this.view = viewAt(files, now)
  }

  note(words: string, now: number, replan = true): void {
    this.now = now
    this.files = noted(this.files, words, now)
    if (replan) this.plan(now)
  }

  plan(now: number, words = showing): void {
    this.now = now
    this.held = heldOf(this.view, this.held, now)
    this.view = viewAt(this.files, now, words)
  }

  get deeds(): Deed[] {
    return allDeeds(this.view, logIn(this.files), this.held)
  }

  /** What is to be done at a time, by action and stem. */
  due(now = this.now): string[] {
    const {now: due} = standing(this.deeds, now, {view: this.view, log: logIn(this.files), held: this.held})
    return due.flatMap(({step, stems, ticked}) =>
      stems.length === 0 ? [step.action] : stems.flatMap((stem, i) => (ticked[i] ? [] : [`${step.action} ${stem}`])),
    )
  }
}

/** The demo's day ticked as it was planned, up to a time in minutes after midnight. */
function until(minutes: number): Files {
  let files: Files = demoDay()
  const morning = viewAt(files, null)
  for (const step of morning.steps) {
    if (step.at > minutes) continue
    const stems = step.dishes.map((id) => morning.dishes.find((dish) => dish.id === id)!.stem)
    const note = (words: string): void => {
      files = noted(files, words, step.at)
    }
    if (step.action === 'light') note('lit')
    if (step.action === 'rake') note('raked')
    if (step.action === 'load') for (const stem of stems) note(`${stem} set in`)
    if (step.action === 'draw') for (const stem of stems) note(`${stem} drawn`)
  }
  return files
}

describe('what came due stays until it is ticked', {timeout: 120_000}, () => {
  let morning: PlanView
  /** An opening of the demo's day at which one dish is drawn, and at least two others are set in. */
  let door: number
  let out: string[]
  let into: string[]
  const stemsAt = (action: StepView['action'], at: number): string[] =>
    morning.steps
      .filter((step) => step.action === action && step.at === at)
      .flatMap(({dishes}) => dishes.map((id) => morning.dishes.find((dish) => dish.id === id)!.stem))
  beforeAll(() => {
    morning = viewAt(demoDay(), null)
    const loads = morning.steps.filter(({action}) => action === 'load')
    door = loads.find(({at}) => stemsAt('draw', at).length > 0 && stemsAt('load', at).length > 1)!.at
    out = stemsAt('draw', door)
    into = stemsAt('load', door)
  })

  it('at an open door: the rest of an opening is there when one of it is ticked and the day planned again', () => {
    const cook = new AtOven(until(door - 1), door - 20)
    expect(cook.due(door)).toEqual(expect.arrayContaining([...out.map((s) => `draw ${s}`), ...into.map((s) => `load ${s}`)]))
    for (const stem of out) cook.note(`${stem} drawn`, door + 1)
    // The quick plan is put right by the full one, which is another.
    cook.plan(door + 1)
    expect(cook.due()).toEqual(expect.arrayContaining(into.map((s) => `load ${s}`)))
    for (const [i, stem] of into.entries()) cook.note(`${stem} set in`, door + 2 + i)
    expect(cook.due().filter((one) => one.startsWith('load'))).toEqual([])
  })

  it('at an open door: water that beans want, which no plan has any more once something else is ticked', () => {
    const top = morning.steps.find(({action, at}) => action === 'top up' && stemsAt('draw', at).length > 0)!
    const [beans] = stemsAt('top up', top.at)
    const cook = new AtOven(until(top.at - 1), top.at - 10)
    for (const stem of stemsAt('draw', top.at)) cook.note(`${stem} drawn`, top.at + 1)
    cook.plan(top.at + 4)
    expect(cook.due()).toContain(`top up ${beans}`)
    expect(cook.due().filter((one) => one === `top up ${beans}`)).toHaveLength(1)
    cook.note(`topped up ${beans}`, top.at + 5, false)
    expect(cook.due()).not.toContain(`top up ${beans}`)
    cook.plan(top.at + 12)
    expect(cook.due()).not.toContain(`top up ${beans}`)
    // It is no tick of the next one.
    const next = cook.deeds.find(({step, stems}) => step.action === 'top up' && stems.includes(beans!) && step.at > top.at + 12)
    expect(next?.done).toBe(false)
  })

  it('the door that is shut after raking out, and doughs, until what comes after them is done', () => {
    const cook = new AtOven(until(morning.steps.find(({action}) => action === 'light')!.at), 400)
    const rake = cook.view.steps.find(({action}) => action === 'rake')!.at
    cook.note('raked', rake + 2)
    expect(cook.due()).toContain('soak')
    const mix = cook.view.steps.find(({action, at}) => (action === 'mix' || action === 'sponge') && at < rake)!
    const stem = cook.view.dishes.find(({id}) => id === mix.dishes[0])!.stem
    expect(cook.due()).toContain(`${mix.action} ${stem}`)
    cook.note(noteOf({step: mix, stems: [stem]}, null), rake + 3)
    expect(cook.due()).not.toContain(`${mix.action} ${stem}`)
    const load = cook.view.steps.find(({action}) => action === 'load')!
    expect(cook.due(load.at + 1)).not.toContain('soak')
  })

  it('a draw, whatever is noted and however late it is, and it is told of what is in', () => {
    const last = morning.steps.filter(({action, at}) => action === 'draw' && at < 1440).at(-1)!
    const stems = stemsAt('draw', last.at)
    const cook = new AtOven(until(last.at - 1), last.at - 30)
    for (const [late, words] of [
      [70, showing],
      [75, {...showing, language: 'de'}],
      [780, showing],
    ] as const) {
      if (late === 70) cook.note('wind from the north', last.at + late)
      else cook.plan(last.at + late, words)
      expect(cook.due(), String(late)).toEqual(expect.arrayContaining(stems.map((stem) => `draw ${stem}`)))
      const within = inside(cook.view, logIn(cook.files))
      for (const stem of stems) {
        const one = within.find((dish) => dish.stem === stem)
        expect(one?.ticked).toBe(true)
        expect(Math.abs(one!.draw! - last.at)).toBeLessThan(15)
      }
    }
  })
})

describe('a second fire', () => {
  const step = (action: StepView['action'], at: number): StepView => ({
    key: `${action}:${at}`,
    at,
    action,
    dishes: [],
    load: null,
    say: action,
    sign: '',
    ahead: '',
    behind: '',
    degrees: '',
    // Planned again in the afternoon: the plan takes all of it to be done when it was due.
    past: at < 900,
  })
  const view = {
    steps: [step('light', 420), step('rake', 540), step('light', 780), step('rake', 850)],
    dishes: [],
    plan: {loads: []},
    soFar: {now: 900, unticked: [], done: []},
  } as unknown as PlanView
  const log = (rows: string): ReturnType<typeof readLog>['log'] =>
    readLog(`---\ndate: ${DATE}\nlit: 7 am\nraked: 9 am\n---\n\n| time | reading | value |\n| --- | --- | --- |\n${rows}`, LOG)
      .log
  const open = (rows: string): readonly (readonly [string, readonly (number | null)[]])[] =>
    standing(allDeeds(view, log(rows), nothingHeld), 900, {view}).now.map((deed) => [noteOf(deed, null), deed.unset])

  it('is offered to be ticked though the plan takes it as lit, in words that the log takes of a second fire', () => {
    expect(open('| 9:30 am | floor | 300 °C |\n')).toEqual([
      ['lit again', []],
      ['raked again', [780]],
    ])
    const lit = noted(new Map([[LOG, `---\ndate: ${DATE}\nlit: 7 am\nraked: 9 am\n---\n`]]), 'lit again', 781)
    expect(logIn(lit)?.further).toEqual([{lit: 781, raked: null, wood: null}])
    expect(open('| 1:01 pm | note | lit again |\n')).toEqual([['raked again', [null]]])
    expect(open('| 1:01 pm | note | lit again |\n| 2:12 pm | note | raked again |\n')).toEqual([])
  })
})

describe('at the oven nobody misses', {timeout: 120_000}, () => {
  it('that a dish was drawn underdone, or will be late, in either language', () => {
    const morning = viewAt(demoDay(), null)
    expect([...morning.head.alerts, ...morning.head.amiss]).toEqual([])
    const pies = morning.steps.find(({action, dishes}) => action === 'load' && dishes.includes('mutton-pies'))!.at
    const raw = noted(until(pies + 45), 'mutton-pies drawn', pies + 50)
    // FDA Food Code 3-401.11(A)(3): 165 °F for what holds meat.
    expect(viewAt(raw, pies + 50).head.alerts.join(' ')).toMatch(
      /Mutton pies: .*with \d+ % of its heat.*set it in again now.*74 °C/,
    )
    expect(viewAt(raw, pies + 50, {...showing, language: 'de'}).head.alerts.join(' ')).toMatch(/Mutton pies: .*\d+ %.*74 °C/)
  })
})
