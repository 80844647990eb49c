import {beforeAll, describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import {fireToCome} from '../src/oven/fire-again.js'
import type {FiringLog, FurtherFire, LogRow} from '../src/oven/log.js'
import {planAgain} from '../src/plan/again.js'
import {type MadePlan, makePlan} from '../src/plan/make.js'
import type {Plan} from '../src/plan/types.js'
import {againWays} from '../src/plan/ways/fire-again.js'
import {waysTold} from '../src/sheets/phrases.js'
import {styleOf} from '../src/sheets/style-of.js'
import {lived} from './lived-day.js'

/**
 * The demo's day, invented, in an oven that is far cooler than it was believed to be. What is asked is that what is offered comes true, and
 * that the plan agrees with itself: no outside fact.
 */
const read = readDayFolder('corpus-demo')
let made: MadePlan
beforeAll(() => {
  made = makePlan({oven: read.oven, day: read.day, receipts: read.receipts})
})

/** Minutes after the oven is ready of a reading of the floor, and °C by which it is off what the plan expects. */
const at = (after: number): number => made.plan.ready + after
function again(
  after: number,
  off: number,
  {
    rows = [],
    quick = false,
    further,
    now = after,
  }: {rows?: readonly LogRow[]; quick?: boolean; further?: readonly FurtherFire[]; now?: number} = {},
) {
  const {plan, problem} = made
  const minutes = at(after) - plan.lit
  const value = plan.forecast.floor.likely[Math.round(minutes / plan.forecast.step)]! + off
  const log: FiringLog = {
    date: read.day.date,
    lit: plan.lit,
    raked: plan.raked,
    wood: plan.firing.wood,
    ...(further ? {further} : {}),
    rows,
    readings: [{minutes, kind: 'floor', value}],
    doors: [],
  }
  const options = quick ? ({effort: 'quick'} as const) : {}
  return planAgain({oven: read.oven, day: read.day, now: at(now), options}, problem, plan, log)
}
const noted = (when: number, words: string): LogRow => {
  const told = fireToCome(words, when)
  if (!told?.ok) throw new Error(words)
  return {line: 9, at: when, elapsed: when - made.plan.lit, what: 'note', text: words, note: '', again: told.fire}
}
const lastFire = ({fires}: Plan): NonNullable<Plan['fires']>[number] => fires!.at(-1)!
const doneInside = ({loads}: Plan): number[] =>
  loads.flatMap((load) => load.dishes.flatMap((d) => (d.alreadyIn ? [d.eased?.dose ?? 1] : [])))

describe('an oven too cool for all that was asked for, its fire out', {timeout: 120_000}, () => {
  it('is not offered the fire that it has already, but a longer one', () => {
    const [after, off] = [20, -40]
    const {plan, problem} = again(after, off)
    const {plan: taken} = again(after, off, {rows: [noted(at(after), plan.ways![0]!.note!)]})
    const {lit, firing} = lastFire(taken)
    const offered = (fires: Plan['fires'], minutes: number, burn: number): number => {
      const further = [{minutes: lit + minutes - taken.lit, firing: {...firing, burn}}]
      const fire = {firing: taken.firing, further, forecast: taken.forecast}
      const lacking = {...plan, ...(fires ? {fires} : {})}
      return againWays(
        problem,
        lacking,
        () => fire,
        {},
        () => taken,
      ).length
    }
    expect(offered(undefined, 0, firing.burn)).toBe(1)
    expect(offered(taken.fires, 0, firing.burn)).toBe(0)
    expect(offered(taken.fires, -5, firing.burn)).toBe(0)
    expect(offered(taken.fires, 0, firing.burn + 25)).toBe(1)
    expect(offered(taken.fires, 60, firing.burn)).toBe(1)
  })

  it.each([
    // Where little heat is lacking, for so short a time that the day is not the later for it.
    [20, -40, '20 min'],
    [180, -20, '45 min'],
  ])('is offered another fire %i min after it was ready, and what is offered comes true', (after, off, burn) => {
    const {plan, problem} = again(after, off)
    expect(plan.unplaced.length).toBeGreaterThan(0)
    const [way, ...more] = plan.ways!
    expect(more).toEqual([])
    expect(way).toMatchObject({kind: 'second fire', works: true})
    const before = new Set(plan.loads.flatMap((load) => load.dishes.map((d) => d.dish)))
    const taken = again(after, off, {rows: [noted(at(after), way!.note!)]})
    expect(taken.plan.unplaced).toEqual([])
    for (const {dish} of plan.unplaced) expect(before).not.toContain(dish)
    const fire = lastFire(taken.plan)
    expect(taken.plan.fires).toHaveLength(2)
    expect(fire.lit).toBeGreaterThanOrEqual(at(after))
    // It is lit when it was offered for: what is in the oven is done by then.
    expect(noted(at(after), way!.note!).again!.lit).toBe(fire.lit)
    expect(fire.firing.wood).toBeCloseTo(way!.wood, 6)
    // Nothing is in the oven while it burns, and what is in it now has as much of its heat as without.
    for (const load of taken.plan.loads)
      for (const d of load.dishes) expect(load.at >= fire.raked || d.draw.likely <= fire.lit, d.dish).toBe(true)
    const [without, withIt] = [doneInside(plan), doneInside(taken.plan)]
    withIt.forEach((dose, i) => {
      expect(dose).toBeGreaterThan(without[i]! - 0.05)
    })
    expect(taken.plan.messages.filter(({rule}) => rule.startsWith('checker'))).toEqual([])
    expect(taken.plan.steps.filter(({action, at: when}) => action === 'light' && when === fire.lit)).toHaveLength(1)
    // It is told in the reader's language, and what is to be noted in the log's own words.
    for (const [language, words] of [
      ['en', new RegExp(`^Light the fire again at .*everything fits.*note “fire again at .+ for ${burn}”\\.$`)],
      ['de', new RegExp(`noch einmal anzünden.*„fire again at .+ for ${burn}“ aufschreiben\\.$`)],
    ] as const)
      expect(waysTold(plan, problem, styleOf({language}))!.lines.join()).toMatch(words)
  })

  it.each([-32, -38])(
    'is offered a shorter one where a longer helps nothing, being ready too late: the floor %i °C off',
    (off) => {
      const asked = [
        [0, '14 loaves', 9 * 60],
        [4, '3 pies', 10 * 60],
        [7, '2 dishes', 18 * 60],
      ] as const
      const items = asked.map(([i, amount, wantedBy]) => ({...read.day.items[i]!, amount, wantedBy}))
      const day = {...read.day, items, spare: []}
      const {plan, problem} = makePlan({oven: read.oven, day, receipts: read.receipts})
      const now = plan.ready + 20
      const minutes = now - plan.lit
      const value = plan.forecast.floor.likely[Math.round(minutes / plan.forecast.step)]! + off
      const log: FiringLog = {
        date: day.date,
        lit: plan.lit,
        raked: plan.raked,
        wood: plan.firing.wood,
        rows: [],
        readings: [{minutes, kind: 'floor', value}],
        doors: [],
      }
      const {unplaced, ways} = planAgain({oven: read.oven, day, now}, problem, plan, log).plan
      expect(unplaced.map(({dish}) => dish)).toEqual(['household-bread'])
      expect(ways).toEqual([expect.objectContaining({kind: 'second fire', works: true})])
      const burn = fireToCome(ways![0]!.note!, now)
      expect(burn).toMatchObject({ok: true, fire: {burn: off > -35 ? 20 : 30}})
    },
  )

  it('is offered none where all has its place in time, nor for the moment at the oven, which the full plan follows', () => {
    expect(again(20, 0).plan.ways).toBeUndefined()
    expect((again(20, -5).plan.ways ?? []).filter(({kind}) => kind === 'second fire')).toEqual([])
    expect(again(20, -40, {quick: true}).plan.ways).toBeUndefined()
  })

  it('is planned on as it was lit, though that was not at the minute that was noted, and the log tells no more', () => {
    const note = noted(at(20), 'fire again at 10:30 am')
    const lit = 11 * 60 + 10
    const row = (when: number, refired: 'lit' | 'raked'): LogRow => ({
      line: 10 + when,
      at: when,
      elapsed: when - made.plan.lit,
      what: 'note',
      text: `${refired} again`,
      note: '',
      refired,
    })
    const rows = [note, row(lit, 'lit'), row(lit + 45, 'raked')]
    const further = [{lit, raked: lit + 45, wood: null}]
    const soon = again(20, -40, {rows, further, now: lit + 46 - at(0), quick: true}).plan
    const later = again(20, -40, {rows, further, now: lit + 150 - at(0), quick: true}).plan
    for (const {fires, unplaced} of [soon, later]) {
      expect(fires!.map((fire) => fire.lit)).toEqual([made.plan.lit, lit])
      expect(unplaced).toEqual([])
    }
    // What was to be in by then is in, when it was to be.
    const first = Math.min(...soon.loads.map((load) => load.at))
    expect(Math.min(...later.loads.filter(({dishes}) => dishes.some((d) => d.alreadyIn)).map((load) => load.at))).toBe(first)
  })

  it('is not planned with the first, nor a third ahead, and what it waits for is told', () => {
    const told = ({plan}: Pick<MadePlan, 'plan'>) =>
      plan.messages.flatMap(({rule, severity, reason}) => (rule === 'fire-decided' ? [`${severity}: ${reason}`] : []))
    const before = noted(made.plan.lit + 30, 'fire again at 7 am')
    const first = again(20, 0, {rows: [before], quick: true})
    expect(first.plan.fires).toHaveLength(1)
    expect(told(first)).toEqual([expect.stringMatching(/^warning: .*with the first/)])
    const further = [{lit: at(20), raked: at(65), wood: null}]
    const third = again(20, -40, {rows: [noted(at(70), 'fire again at 4 pm')], further, now: 70, quick: true})
    expect(third.plan.fires).toHaveLength(2)
    expect(told(third)).toEqual([expect.stringMatching(/^warning: a third fire/)])
    // An hour after the bread was to go in it is in the oven, and not done.
    const waits = again(100, 0, {rows: [noted(at(100), 'fire again at 11:15 am')], quick: true})
    expect(waits.plan.fires![1]!.lit).toBeGreaterThan(11 * 60 + 25)
    expect(told(waits)).toEqual([expect.stringMatching(/^info: .*waits until/)])
    expect(told(again(20, -40, {rows: [noted(at(20), 'fire again at 10:30 am')], quick: true}))).toEqual([])
  })

  it('has the fire put off by a later note, and given up by another', () => {
    const first = noted(at(15), 'fire again at 10 am')
    const later = again(20, -40, {rows: [first, noted(at(20), 'fire again at 10:30 am for 1 h')], quick: true})
    expect(lastFire(later.plan)).toMatchObject({lit: 630, raked: 690, firing: {burn: 60}})
    expect(later.plan.fires).toHaveLength(2)
    const none = again(20, -40, {rows: [first, noted(at(20), 'no fire again')], quick: true})
    expect(none.plan.fires).toHaveLength(1)
  })

  it('has the whole day baked where it is taken up, in an oven that stores a fifth less heat than was believed', () => {
    const {baked, fires, broken} = lived(read, made, 0.8, 0, true)
    expect(baked.reduce((sum, {count}) => sum + count, 0)).toBe(made.dishes.reduce((sum, dish) => sum + dish.count, 0))
    expect(fires).toHaveLength(1)
    for (const {share} of baked) expect(share).toBeGreaterThan(0.8)
    expect(broken).toEqual([])
  })
})

describe('a note of a fire to come', () => {
  it.each([
    ['fire again at 3:15 pm', {lit: 915, burn: null}],
    ['Light the fire again at 15:15 for 1 h 15 min', {lit: 915, burn: 75}],
    ['to be lit again at 3:15 pm, for 45 min', {lit: 915, burn: 45}],
    ['fire again next day 6 am', {lit: 1800, burn: null}],
    ['no fire again', {lit: null, burn: null}],
    ['start the fire again at 3 pm', {lit: 900, burn: null}],
    ['second fire 3 pm', {lit: 900, burn: null}],
    ['fire again at 3:15 pm, Tobias will do it', {lit: 915, burn: null}],
    ['fire again at 3:15 pm, 45 min', {lit: 915, burn: 45}],
    // A touch too late, it is for now.
    ['fire again at 11:35 am for 45 min', {lit: 700, burn: 45}],
    ['do not fire again', {lit: null, burn: null}],
    ['no second fire', {lit: null, burn: null}],
    ['cancel the fire', {lit: null, burn: null}],
    ['second fire at 3 pm for 45 min', {lit: 900, burn: 45}],
    ['relight at 3 pm', {lit: 900, burn: null}],
  ])('is read: %s', (words, fire) => {
    expect(fireToCome(words, 700)).toEqual({ok: true, fire})
  })

  it('of the second day is of that day', () => {
    expect(fireToCome('fire again at 9 am', 1440 + 500)).toEqual({ok: true, fire: {lit: 1440 + 540, burn: null}})
  })

  it.each([
    ['fire again', /at what time/],
    ['fire again at 11 am', /has passed/],
    ['second fire at 3', /morning or afternoon/],
    ['relight at 9 am', /has passed/],
    ['no light again', /takes no fire back/],
    ['no fire agian', /takes no fire back/],
    ['fire again at half past', /not a time of day/],
    ['fire again at 3 pm for 5 min', /from 10 min to 12 h/],
    ['fire again at 3 pm for 45 to 60 min', /one length of time/],
    ['fire again at 3 pm for a while', /length of time/],
  ])('that cannot be is told, with what to write: %s', (words, reason) => {
    const told = fireToCome(words, 700)
    expect(told).toMatchObject({ok: false, reason: expect.stringMatching(reason)})
    expect(told).toHaveProperty('suggest', expect.stringMatching(/“(?:fire again at 3:15 pm|no fire again)”/))
  })

  it.each([
    'lit again',
    'the fire was poor',
    'raked again',
    'oven fired',
    'light the fire at 6 am',
    'second fire at last',
    'no smoke',
    'not risen yet',
    'not much fire left',
    'not the light cake',
    'do not light it yet',
  ])('is none of those: %s', (words) => {
    expect(fireToCome(words, 700)).toBeNull()
  })
})
