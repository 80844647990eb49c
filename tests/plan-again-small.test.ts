import {describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import {writeClock} from '../src/measure/quantity.js'
import type {FiringLog} from '../src/oven/log.js'
import {type Corrections, planAgain} from '../src/plan/again.js'
import {check} from '../src/plan/check.js'
import {celsiusAt, curveOf, doseNeeded} from '../src/plan/curve.js'
import {mayBeShort, mayWait} from '../src/plan/dough.js'
import {floorGrid, zoneAt} from '../src/plan/floor-grid.js'
import {doseBetween} from '../src/plan/keeps.js'
import {planDay} from '../src/plan/planner.js'
import {problemOf} from '../src/plan/problem.js'
import {rules, zoneNames} from '../src/plan/rules.js'
import type {Day, Eased, FiringOption, Load, Plan, PlanProblem} from '../src/plan/types.js'
import {unrisen} from '../src/plan/unrisen.js'
import {usualRules} from '../src/scale/floor-shape.js'
import type {Dish, HeatNeed} from '../src/scale/types.js'
import {inFolder, smallDay} from './page-day.js'
import {day, dish, fallingOven, problem} from './plan-fixtures.js'

/**
 * Small days planned again, invented so that what is asked about has to happen whatever a search makes of the morning. That a plan agrees
 * with itself is asked: no outside fact.
 */
const pie = dish('pie', 1)
const sedgeCorner = inFolder(smallDay, async (folder) => readDayFolder(folder).oven)

/** A dish as a plan has it, drawn some minutes after it is set in; what heat it has then is not asked. */
function entryOf(dish: string, at: number, minutes: number): Load['dishes'][number] {
  const heat = {low: 200, likely: 200, high: 200}
  const out = at + minutes
  return {dish, count: 1, draw: {low: out, likely: out, high: out}, celsiusIn: heat, celsiusOut: heat}
}

/** A morning's plan on one fire, lit as early as may be, its loads given and not searched for. */
function givenPlan(asked: PlanProblem, {firing, forecast}: FiringOption, loads: readonly Load[]): Plan {
  const lit = asked.day.fireFrom
  const found = planDay(asked, {effort: 'quick', bare: true})
  return {...found, firing, forecast, lit, raked: lit + forecast.raked, ready: lit + forecast.ready, loads}
}

describe('a row of pans in an oven one pan wide, and one that has to go in before they come out', () => {
  /** The oven falls as it does, whatever is in it, and as fast everywhere. */
  const falling = fallingOven(120, 300)
  const option = {...falling, forecast: {...falling.forecast, zones: {back: 0, middle: 0, mouth: 0}}}
  const simulate = (): typeof option.forecast => option.forecast
  const across = 0.24
  const pitch = across + usualRules.clearance

  /**
   * Set in at 8:00, the pans behind, to be cooked through, are done one after the other from 10:00 on, each drawn as soon as it is; at 9:00
   * another is to go in front of them: by 10:00 the oven, which is at 207 °C at 9:00 and at 190 °C at 9:30, is too cool for it, eased or not;
   * and it bakes for hours.
   */
  function rowOf(behind: number, shifts = false): PlanProblem {
    const pan = {...pie.vessel, footprint: {shape: 'circle', diameter: across}} as const
    const depth = usualRules.mouthFree + (behind + 1) * pitch + 0.04
    const panOf = (id: string, title: string, more: Partial<HeatNeed>): Dish =>
      dish('pie', 1, {
        id,
        title,
        vessel: pan,
        need: {...pie.need, startHigh: 300, done: 90, ...more},
        cautions: ['meat-temperature'],
      })
    const inside = Array.from({length: behind}, (_, i) => {
      const minutes = 130 + 35 * (behind - 1 - i)
      return panOf(`behind ${i}`, `Behind ${i}`, {
        startLow: 180,
        endLow: 100,
        reference: 200,
        minutes: {low: minutes, likely: minutes, high: minutes},
      })
    })
    const front = panOf('front', 'Front', {
      startLow: 200,
      endLow: 60,
      reference: 150,
      minutes: {low: 240, likely: 240, high: 300},
    })
    const shape = {floor: {shape: 'rectangle', depth, width: 0.3}, mouth: {width: 0.28, height: 0.25}} as const
    const grid = floorGrid(shape)
    const set = inside.map(({id}, i) => {
      const y = depth / 2 - across / 2 - 0.01 - pitch * i
      const placed = [{dish: id, number: 1, x: 0, y, turn: 0, zone: zoneNames[zoneAt(grid, y)]}]
      return {dish: id, count: 1, at: 480, drawn: null, placed}
    })
    return problem([...inside, {...front, shifts}], {
      ...shape,
      day: day({fireFrom: 300}),
      firings: [option],
      done: {now: 540, lit: 300, set, plan: null},
    })
  }

  it.each([1, 2, 3])('is offered to be shifted aside for each of %i behind it, where that is twice at most', (behind) => {
    const asked = rowOf(behind)
    const plan = planDay(asked, {simulate})
    expect(plan.unplaced.map((out) => out.dish)).toEqual(['front'])
    // Shifted aside it has its place, and the checker minds it in front of the others only where it is not to be shifted.
    const shifted = rowOf(behind, true)
    const saved = planDay(shifted, {simulate, effort: 'quick'})
    expect(saved.possible).toBe(true)
    expect(check(shifted, saved)).toEqual([])
    const inWay = check(asked, saved)
    expect(inWay.map((v) => v.rule)).toEqual(Array.from({length: behind}, () => 'reach'))
    expect(new Set(inWay.map((v) => v.dish)).size).toBe(behind)

    const draws = saved.loads.flatMap((l) => l.dishes.filter((d) => d.dish !== 'front').map((d) => d.draw.likely))
    const at = draws.sort((a, b) => a - b).map((minutes) => writeClock(minutes))
    expect(new Set(at).size).toBe(behind)
    const moves = plan.unplaced[0]!.tried!.filter((r) => r.kind === 'one move')
    const others = asked.dishes.slice(0, -1).map((d) => d.title)
    expect(moves.map((r) => r.say)).toEqual(
      behind > 2
        ? []
        : [`Shift Front aside for a moment at ${at.join(' and ')}, to reach ${others.join(' and ')}: everything fits.`],
    )
    for (const move of moves) expect(move).toMatchObject({works: true, words: {values: {dishes: {dishes: ['front']}}}})
  })

  /** Two pans in the oven, one behind the other, each to be baked for so many minutes and hardly more. */
  function inLine(deeper: number, outer: number): PlanProblem {
    const {dishes, done, ...rest} = rowOf(2)
    const lasting = (i: number, minutes: number): Dish => ({
      ...dishes[i]!,
      need: {...dishes[i]!.need, minutes: {low: minutes, likely: minutes, high: minutes + 2}},
    })
    return {...rest, dishes: [lasting(0, deeper), lasting(1, outer)], done: {...done!, now: 530}}
  }
  const drawsOf = (plan: Plan): number[] => plan.loads.flatMap((l) => l.dishes.map((d) => d.draw.likely))

  it('what is behind is drawn with what is in its way as soon as that is done, burned or not, and no later', () => {
    const asked = inLine(60, 90)
    const plan = planDay(asked, {simulate, effort: 'quick'})
    const [deeper, outer] = drawsOf(plan)
    expect(deeper).toBe(outer)
    expect(check(asked, plan)).toEqual([])
    const at = (minutes: (draw: number) => number): Plan => ({
      ...plan,
      loads: plan.loads.map((l) => ({
        ...l,
        dishes: l.dishes.map((d) => {
          const out = minutes(d.draw.likely)
          return {...d, draw: {low: out, likely: out, high: out}}
        }),
      })),
    })
    const burned = check(
      asked,
      at((t) => t + 15),
    ).filter((v) => v.rule === 'over-baked')
    expect(burned.map((v) => v.dish)).toContain('behind 0')
    const through = plan.loads.map((l) => ({
      ...l,
      dishes: l.dishes.map((d) => (d.dish === 'behind 0' ? {...d, draw: {low: 540, likely: 540, high: 540}} : d)),
    }))
    expect(check(asked, {...plan, loads: through}).map((v) => v.rule)).toContain('reach')
  })
  it.each([
    ['later', 500],
    ['sooner', 470],
  ])(
    'but is drawn when it is done where the other was set in %s before it and outlasts it: that is to be shifted aside',
    (_, at) => {
      const asked = inLine(60, 150)
      const [first, last] = asked.done!.set
      const later = {...asked, done: {...asked.done!, set: [first!, {...last!, at}]}}
      const plan = planDay(later, {simulate, effort: 'quick'})
      const outOf = (dish: string): number => plan.loads.flatMap((l) => l.dishes).find((d) => d.dish === dish)!.draw.likely
      const [deeper, outer] = [outOf('behind 0'), outOf(last!.dish)]
      expect(deeper).toBeLessThan(outer!)
      expect(check(later, plan)).toEqual([expect.objectContaining({dish: 'behind 0', rule: 'reach', noted: true})])
      expect(plan.messages.filter((m) => m.rule === 'log-places').map((m) => m.suggest)).toEqual([
        'when it is drawn, shift aside or take out what stands before it',
      ])
    },
  )
  it('and waits for nothing where both would stand in one place: nobody knows which is before the other', () => {
    const asked = inLine(60, 150)
    const [first, last] = asked.done!.set
    const alike = {...last!, placed: first!.placed.map((p) => ({...p, dish: last!.dish, y: p.y - 0.02}))}
    const plan = planDay({...asked, done: {...asked.done!, set: [first!, alike]}}, {simulate, effort: 'quick'})
    const [deeper, outer] = drawsOf(plan)
    expect(deeper).toBeLessThan(outer!)
  })
  it('and what is in its way is drawn a little before its best where that saves what is behind', () => {
    const asked = inLine(60, 66)
    const eager: PlanProblem = {
      ...asked,
      dishes: asked.dishes.map((d, i) => (i === 0 ? d : {...d, need: {...d.need, minutes: {low: 58, likely: 75, high: 90}}})),
    }
    const plan = planDay(eager, {simulate, effort: 'quick'})
    const [deeper, outer] = drawsOf(plan)
    expect(deeper).toBe(outer)
    expect(check(eager, plan)).toEqual([])
  })
})

describe('a dish that an earlier reading had set in the sooner', () => {
  it('is not taken to be in before the morning had it, unless the log says so; what is taken to be in is told', async () => {
    const items = ['bread', 'gingerbread'].map((name, i) => ({file: `receipts/${name}.md`, line: 12 + i, column: 3}))
    const today = day({hands: 2, items: items as unknown as Day['items']})
    const input = {oven: await sedgeCorner, day: today}
    const asked = problemOf(input, [dish('bread', 2), dish('gingerbread', 1)])
    const [bread, cake] = asked.dishes.map((d) => d.id) as [string, string]
    const option = asked.firings.at(-1)!
    const {forecast} = option
    const lit = today.fireFrom
    const ready = lit + forecast.ready
    const load = (number: number, id: string, at: number): Load => ({number, at, dishes: [entryOf(id, at, 60)], placed: []})
    // What the search would make of the day is not asked: the morning's plan, and what the reading made of it, are given.
    const withCakeAt = (at: number): Plan => givenPlan(asked, option, [load(1, bread, ready + 90), load(2, cake, at)])
    const [soon, late] = [ready + 120, ready + 180]
    const morning = withCakeAt(late)

    const at = ready + 20
    const reading = {minutes: at - lit, kind: 'floor', value: forecast.floor.likely[Math.round((at - lit) / forecast.step)]! - 8}
    const row = {...reading, at, elapsed: reading.minutes, what: 'reading', line: 1, text: '', note: ''}
    const log = {date: today.date, lit, raked: morning.raked, wood: null, rows: [row], readings: [reading], doors: []}
    const later = (rows: readonly object[], now: number): ReturnType<typeof planAgain> => {
      const known: Corrections = new Map([[JSON.stringify([log, null, null]), {followed: withCakeAt(soon)}]])
      const told = {...log, rows: [row, ...rows]} as unknown as FiringLog
      const again = planAgain({...input, now, options: {effort: 'quick'}}, asked, morning, told, [], known)
      // The reading was not worked out again.
      expect(known.size).toBe(1)
      return again
    }
    const inOf = ({problem: {done}}: ReturnType<typeof planAgain>): (string | number)[][] => done!.set.map((s) => [s.dish, s.at])
    const unlogged = ({plan}: ReturnType<typeof planAgain>): number[] =>
      plan.messages.flatMap((m) => (m.rule === 'unlogged' ? [m.line] : []))

    const unsaid = later([], soon + 5)
    expect(inOf(unsaid)).toEqual([[bread, ready + 90]])
    expect(unlogged(unsaid)).toEqual([12])
    const said = later([{at: soon, elapsed: soon - lit, what: 'set in', dish: cake, line: 9, text: '', note: ''}], soon + 5)
    expect(inOf(said)).toEqual([
      [bread, ready + 90],
      [cake, soon],
    ])
    expect(unlogged(said)).toEqual([12])
    // The heat is tested just before it is set in: from a little after the morning's own time on it is.
    expect(inOf(later([], late)).map(([id]) => id)).toEqual([bread])
    const over = later([], late + 5)
    expect(inOf(over)).toContainEqual([cake, late])
    expect(unlogged(over)).toContain(13)
  })
})

describe('dishes for which the oven is a little too cool once the day has begun', () => {
  it('have their limits eased rather than be lost, are told of, and the checker minds where that says too little', async () => {
    const oven = await sedgeCorner
    const today = day({hands: 2})
    const light: Partial<Dish> = {mass: 0.1, water: 0.01}
    const option = problemOf({oven, day: today}, [pie]).firings.find((f) => f.firing.burn === 120)!
    const {forecast} = option
    const lit = today.fireFrom
    const ready = lit + forecast.ready
    const now = ready + 150
    const curve = curveOf(forecast, oven.ambient)
    // At the back, where the oven is hottest, of what is set in at once.
    const from = now + 5 - lit
    const celsius = (minutes: number): number => celsiusAt(curve, 0, minutes)
    const doneAt = (need: HeatNeed, minutes: number): number => {
      let to = from
      while (doseBetween(curve, need, 0, from, to) < doseNeeded(need, minutes)) to++
      return to
    }
    const base = {...pie.need, startLow: 100, startBest: 150, startHigh: 300, endLow: 60, done: 90, reference: 150}
    const lasting = (low: number, likely: number): HeatNeed => ({...base, minutes: {low, likely, high: likely + 30}})
    const quick = lasting(60, 60)
    const long = lasting(120, 120)
    const either = lasting(60, 140)
    const needs: Record<string, HeatNeed> = {
      // It wants more heat to begin with than there is, …
      start: {...quick, startLow: celsius(from) + 5},
      // … or, to be cooked through, is done only when the oven is cooler than it should be then, …
      end: {...long, endLow: celsius(doneAt(long, 120)) - 1},
      // … or when it is cooler than even that: only its receipt's shortest time can be had.
      dose: {
        ...either,
        endLow: (celsius(doneAt(either, 60)) + celsius(doneAt(either, 140))) / 2 + rules.ease.near.celsius - 3,
      },
    }
    const dishes = Object.entries(needs).map(([id, need]) =>
      dish('pie', 1, {id, title: id, ...light, need, cautions: id === 'end' ? ['meat-temperature'] : []}),
    )
    const asked: PlanProblem = {...problemOf({oven, day: today}, dishes), firings: [option]}
    const at = now + 5
    const morning = givenPlan(asked, option, [{number: 1, at, dishes: dishes.map(({id}) => entryOf(id, at, 90)), placed: []}])
    const log = {date: today.date, lit, raked: morning.raked, wood: null, rows: [], readings: [], doors: []}
    const {plan, problem: rest} = planAgain({oven, day: today, now}, asked, morning, log)
    expect(plan.unplaced).toEqual([])
    expect(check(rest, plan)).toEqual([])
    const of = (p: Plan): Map<string, Eased> =>
      new Map(p.loads.flatMap((l) => l.dishes.flatMap((d) => (d.eased ? [[d.dish, d.eased] as const] : []))))
    const wanting = of(plan)
    expect([...wanting.keys()].sort()).toEqual(['dose', 'end', 'start'])
    expect(wanting.get('start')!.start).toBeGreaterThan(1)
    expect(wanting.get('end')!.end).toBeGreaterThan(1)
    expect(wanting.get('dose')!.dose).toBeLessThan(0.97)
    for (const [id, {start, end, dose}] of wanting) {
      const {low, likely} = needs[id]!.minutes
      expect(start).toBeLessThanOrEqual(rules.ease.near.celsius)
      expect(end).toBeLessThanOrEqual(rules.ease.near.celsius)
      // No less than what the receipt's own shortest time would give, or nine tenths of its likely one where it need not be cooked through.
      expect(dose).toBeGreaterThanOrEqual(Math.min(low / likely, id === 'end' ? 1 : 0.9) - 0.01)
    }
    const said = plan.changes!.flatMap((c) => (c.words?.what.id.startsWith('eased') ? [`${c.dish}: ${c.words.what.id}`] : []))
    expect(said).toEqual(expect.arrayContaining(['start: eased start', 'end: eased end', 'dose: eased dose']))
    expect(said.filter((words) => words.endsWith('unfinished'))).toEqual([])

    const told = (other: (id: string, is: Eased) => Eased | undefined): Plan => ({
      ...plan,
      loads: plan.loads.map((l) => ({
        ...l,
        dishes: l.dishes.map(({eased: is, ...d}) => {
          const as = is && other(d.dish, is)
          return as ? {...d, eased: as} : d
        }),
      })),
    })
    const broken = (p: Plan, under = rest): string[] => check(under, p).map((v) => `${v.dish}: ${v.rule}`)
    expect(broken(told((_, is) => is))).toEqual([])
    const everyEased = ['start: eased', 'end: eased', 'dose: eased']
    expect(broken(told((_, is) => ({...is, start: is.start + 4})))).toEqual(expect.arrayContaining(everyEased))
    expect(broken(told((id, is) => ({...is, dose: id === 'dose' ? 0.9 : 0.5})))).toEqual(expect.arrayContaining(everyEased))
    const {done: _, ...begun} = rest
    expect(broken(plan, begun)).toEqual(expect.arrayContaining(everyEased))
    // What is eased and not said is broken.
    for (const [id, rule] of [
      ['start', 'start heat'],
      ['end', 'end heat'],
      ['dose', 'dose'],
    ] as const)
      expect(broken(told((one, is) => (one === id ? undefined : is)))).toContain(`${id}: ${rule}`)
  })
})

describe('a dough that was mixed at another time than planned', () => {
  const falling = fallingOven(120, 300)
  const simulate = (): typeof falling.forecast => falling.forecast
  const plain = dish('bread', 2)
  const {mix, rise, shape, hold} = plain.dough!
  /** The rest of the day some time before the bread is to be set in, its dough ready so many minutes late, or not mixed at all. */
  function again(
    bread: Dish,
    late: number | null,
    before = 60,
  ): {at: number; meant: number; ready: number; plan: Plan; rest: PlanProblem} {
    const asked = problem([bread], {day: day({fireFrom: 300}), firings: [falling]})
    const morning = planDay(asked, {simulate})
    const [load] = morning.loads
    const now = load!.at - before
    const mixed = late === null ? null : load!.at + late - mix - rise - shape
    const doughs = [{dish: bread.id, load: load!.number, mixed, cool: false}]
    const rest: PlanProblem = {...asked, done: {now, lit: morning.lit, set: [], plan: morning, doughs}}
    const plan = planDay(rest, {simulate, effort: 'quick'})
    return {at: plan.loads[0]?.at ?? Number.NaN, meant: load!.at, ready: (mixed ?? now) + mix + rise + shape, plan, rest}
  }
  const warned = ({plan, rest}: ReturnType<typeof again>): string[] => unrisen(plan, rest).map((m) => m.rule)
  const patient: Dish = {...plain, need: {...plain.need, startLow: 120, endLow: 100}}

  it('is set in when it has risen, as long as the oven is hot enough for it', () => {
    const kept = again(patient, 0)
    expect(kept.at).toBe(kept.meant)
    const later = again(patient, 40)
    expect(later.at).toBeGreaterThanOrEqual(later.ready - mayBeShort(patient))
    expect(check(later.rest, later.plan)).toEqual([])
    expect(warned(later)).toEqual([])
    expect(later.plan.steps.find(({action}) => action === 'mix')!.at + mix + rise + shape).toBe(later.ready)
  })
  it('and before it has waited longer than it holds', () => {
    const early = again(patient, -hold - 40)
    expect(early.at).toBeLessThan(early.meant)
    expect(early.at).toBeLessThanOrEqual(early.ready + mayWait(patient))
    expect(check(early.rest, early.plan)).toEqual([])
    expect(warned(early)).toEqual([])
  })
  it('and rather than be lost a little before it has risen, which is warned of', () => {
    const late = again(plain, null)
    expect(late.plan.unplaced).toEqual([])
    expect(late.at).toBeGreaterThan(late.meant)
    expect(late.at).toBeLessThan(late.ready - mayBeShort(plain))
    expect(late.at).toBeGreaterThanOrEqual(late.ready - rise / 2)
    expect(check(late.rest, late.plan)).toEqual([])
    expect(warned(late)).toEqual(['unrisen'])
    // The checker minds how long it has to rise, too.
    const sooner = late.plan.loads.map((l) => ({...l, at: l.at - 60}))
    const hurried = late.plan.steps.map((s) => (['shape', 'load'].includes(s.action) ? {...s, at: s.at - 60} : s))
    const found = check(late.rest, {...late.plan, loads: sooner, steps: hurried.sort((a, b) => a.at - b.at)})
    expect(found.map((v) => v.rule)).toContain('dough')
  })
  it('but not as no bread at all: then it is left out', () => {
    const {plan, rest} = again(plain, null, 5)
    expect(plan.unplaced.map((u) => [u.dish, u.words?.id])).toEqual([[plain.id, 'not risen']])
    expect(plan.loads).toEqual([])
    expect(check(rest, plan)).toEqual([])
  })
})
