import {describe, expect, it} from 'vitest'
import {check, type Violation} from '../src/plan/check.js'
import {planDay} from '../src/plan/planner.js'
import {rules} from '../src/plan/rules.js'
import type {Load, Plan, PlanProblem} from '../src/plan/types.js'
import type {Dish, HeatNeed} from '../src/scale/types.js'
import {day, dish, problem} from './plan-fixtures.js'

const bakeDay = problem(
  [dish('bread', 6), dish('brown bread', 2), dish('pie', 3), dish('gingerbread', 1), dish('custard', 2), dish('fruit cake', 1)],
  {day: day({serve: 1000})},
)
const sound = planDay(bakeDay)

/** A copy of the plan with one load changed. */
function withLoad(pick: (load: Load) => boolean, change: (load: Load) => Load): Plan {
  let done = false
  return {
    ...sound,
    loads: sound.loads.map((l) => {
      if (done || !pick(l)) return l
      done = true
      return change(l)
    }),
  }
}

const of = (id: string) => (l: Load) => l.dishes.some((d) => d.dish === id)
const entry =
  (id: string, change: (d: Load['dishes'][number]) => Load['dishes'][number]) =>
  (l: Load): Load => ({...l, dishes: l.dishes.map((d) => (d.dish === id ? change(d) : d))})
const drawAt = (d: Load['dishes'][number], at: number): Load['dishes'][number] => ({
  ...d,
  draw: {low: at, likely: at, high: at},
})

const breaks: ReadonlyArray<{name: string; rule: Violation['rule']; plan: () => Plan; day?: typeof bakeDay}> = [
  {
    name: 'bread drawn a quarter of an hour early',
    rule: 'dose',
    plan: () =>
      withLoad(
        of('bread-1'),
        entry('bread-1', (d) => drawAt(d, d.draw.likely - 15)),
      ),
  },
  {
    name: 'a pie left in an hour too long',
    rule: 'over-baked',
    plan: () =>
      withLoad(
        of('pie-1'),
        entry('pie-1', (d) => drawAt(d, d.draw.likely + 60)),
      ),
  },
  {
    name: 'custards set in with the first load',
    rule: 'start heat',
    plan: () => withLoad(of('custard-1'), (l) => ({...l, at: sound.loads[0]!.at})),
  },
  {
    name: 'bread set in when the oven is slack',
    rule: 'start heat',
    plan: () =>
      withLoad(of('bread-1'), (l) => ({...l, at: l.at + 360, dishes: l.dishes.map((d) => drawAt(d, d.draw.likely + 700))})),
  },
  {
    name: 'a cake left until the oven is cold',
    rule: 'end heat',
    plan: () =>
      withLoad(
        of('gingerbread-1'),
        entry('gingerbread-1', (d) => drawAt(d, d.draw.likely + 400)),
      ),
  },
  {
    name: 'white bread set in with the brown',
    rule: 'order',
    plan: () => withLoad(of('bread-1'), (l) => ({...l, at: sound.loads.find(of('brown-bread-1'))!.at + 10})),
  },
  {
    name: 'a load before the soak ends',
    rule: 'ready',
    plan: () =>
      withLoad(
        () => true,
        (l) => ({...l, at: sound.ready - 10}),
      ),
  },
  {
    name: 'a load off the five-minute clock',
    rule: 'clock',
    plan: () =>
      withLoad(
        () => true,
        (l) => ({...l, at: l.at + 2}),
      ),
  },
  {
    name: 'a draw at midnight',
    rule: 'night',
    plan: () =>
      withLoad(
        of('brown-bread-1'),
        entry('brown-bread-1', (d) => drawAt(d, 1440)),
      ),
  },
  {
    name: 'the fire lit before it is allowed',
    rule: 'fire',
    plan: () => ({...sound, lit: sound.lit - 60 - (sound.lit - bakeDay.day.fireFrom)}),
  },
  {name: 'a fire nobody considered', rule: 'fire', plan: () => ({...sound, firing: {...sound.firing, burn: 7}})},
  {
    name: 'a loaf forgotten',
    rule: 'count',
    plan: () =>
      withLoad(
        of('bread-1'),
        entry('bread-1', (d) => ({...d, count: d.count - 1})),
      ),
  },
  {
    name: 'a dish the day does not have',
    rule: 'dish',
    plan: () =>
      withLoad(
        () => true,
        (l) => ({...l, dishes: [...l.dishes, {...l.dishes[0]!, dish: 'goose'}]}),
      ),
  },
  {
    name: 'a vessel without a place',
    rule: 'count',
    plan: () =>
      withLoad(
        () => true,
        (l) => ({...l, placed: l.placed.slice(1)}),
      ),
  },
  {
    name: 'two vessels on one spot',
    rule: 'overlap',
    plan: () =>
      withLoad(
        (l) => l.placed.length > 1,
        (l) => ({...l, placed: l.placed.map((p) => ({...p, x: l.placed[0]!.x, y: l.placed[0]!.y, zone: l.placed[0]!.zone}))}),
      ),
  },
  {
    name: 'a vessel half in the wall',
    rule: 'floor',
    plan: () =>
      withLoad(
        () => true,
        (l) => ({...l, placed: l.placed.map((p, i) => (i === 0 ? {...p, x: 0.5, y: 0} : p))}),
      ),
  },
  {
    name: 'a vessel on the strip kept free at the mouth',
    rule: 'floor',
    plan: () =>
      withLoad(
        () => true,
        (l) => ({...l, placed: l.placed.map((p, i) => (i === 0 ? {...p, x: 0, y: -0.4, zone: 'mouth' as const} : p))}),
      ),
  },
  {
    name: 'a place said to be in another part of the floor',
    rule: 'zone',
    plan: () =>
      withLoad(
        () => true,
        (l) => ({...l, placed: l.placed.map((p) => ({...p, zone: p.zone === 'mouth' ? ('back' as const) : ('mouth' as const)}))}),
      ),
  },
  {name: 'a mouth too narrow for a pie', rule: 'mouth', plan: () => sound, day: {...bakeDay, mouth: {width: 0.2, height: 0.28}}},
  {name: 'a mouth too low for a loaf', rule: 'mouth', plan: () => sound, day: {...bakeDay, mouth: {width: 0.46, height: 0.05}}},
  {
    name: 'one opening with more vessels than hands',
    rule: 'hands',
    plan: () =>
      withLoad(
        of('bread-1'),
        entry('bread-1', (d) => ({...d, count: 40})),
      ),
  },
  {
    name: 'beans that stand all next day in a cold oven',
    rule: 'holding',
    plan: () =>
      withLoad(
        of('brown-bread-1'),
        entry('brown-bread-1', (d) => drawAt(d, sound.lit + 33 * 60)),
      ),
  },
  {
    name: 'dough mixed an hour late',
    rule: 'dough',
    plan: () => ({
      ...sound,
      steps: sound.steps
        .map((s) => (s.action === 'mix' && s.dishes.includes('bread-1') ? {...s, at: s.at + 60} : s))
        .sort((a, b) => a.at - b.at),
    }),
  },
  {
    name: 'dough mixed two hours early',
    rule: 'dough',
    plan: () => ({
      ...sound,
      steps: sound.steps
        .map((s) => (s.action === 'mix' && s.dishes.includes('bread-1') ? {...s, at: s.at - 120} : s))
        .sort((a, b) => a.at - b.at),
    }),
  },
  {
    name: 'a draw nobody is told of',
    rule: 'steps',
    plan: () => ({...sound, steps: sound.steps.filter((s) => s.action !== 'draw')}),
  },
  {
    name: 'a load nobody is told of',
    rule: 'steps',
    plan: () => ({...sound, steps: sound.steps.filter((s) => s.action !== 'load')}),
  },
  {name: 'steps out of order', rule: 'steps', plan: () => ({...sound, steps: [...sound.steps].reverse()})},
  {
    name: 'a draw time outside its own range',
    rule: 'draw range',
    plan: () =>
      withLoad(
        () => true,
        (l) => ({...l, dishes: l.dishes.map((d) => ({...d, draw: {...d.draw, low: d.draw.likely + 5}}))}),
      ),
  },
  {name: 'fewer openings than there are', rule: 'score', plan: () => ({...sound, score: {...sound.score, openings: 1}})},
  {name: 'less wood than is burned', rule: 'score', plan: () => ({...sound, score: {...sound.score, wood: 1}})},
  {
    name: 'a bound above the plan',
    rule: 'score',
    plan: () => ({...sound, score: {...sound.score, bound: sound.score.total + 1}}),
  },
  {name: 'a plan that says it is impossible', rule: 'possible', plan: () => ({...sound, possible: false})},
  {
    name: 'a dish in the plan and left out of it',
    rule: 'possible',
    plan: () => ({...sound, possible: false, unplaced: [{dish: 'pie-1', rule: 'room', reason: '', remedies: []}]}),
  },
  {
    name: 'a dish in the oven while a second fire burns',
    rule: 'second fire',
    plan: () => ({
      ...sound,
      fires: [
        ...sound.fires!,
        {lit: sound.loads[0]!.at + 5, raked: sound.loads[0]!.at + 65, ready: sound.loads[0]!.at + 95, firing: sound.firing},
      ],
    }),
  },
]

describe('the checker', () => {
  it('finds nothing wrong with the plan it is given', () => {
    expect(sound.possible).toBe(true)
    expect(check(bakeDay, sound)).toEqual([])
  })
  for (const b of breaks)
    it(`catches ${b.name}`, () => {
      const found = check(b.day ?? bakeDay, b.plan())
      expect(found.map((v) => v.rule)).toContain(b.rule)
    })
  it('catches a rye loaf left to the falling oven for as long again, though not what stays in all day', () => {
    const falls: Partial<HeatNeed> = {falling: true}
    const {need} = dish('bread', 2)
    const ryeDay = (longest: number, more = falls): PlanProblem =>
      problem([dish('bread', 2, {id: 'rye-1', title: 'Rye', dough: null, need: {...need, endLow: 60, longest, ...more}})], {
        firings: bakeDay.firings.slice(1, 2),
      })
    const plan = planDay(ryeDay(90))
    const [load] = plan.loads
    expect(check(ryeDay(90), plan)).toEqual([])
    const baked = load!.dishes[0]!.draw.likely - load!.at
    const later = {...plan, loads: [{...load!, dishes: load!.dishes.map((d) => drawAt(d, d.draw.likely + baked))}]}
    const rulesOf = (day: PlanProblem): string[] => check(day, later).map(({rule}) => rule)
    expect(rulesOf(ryeDay(70))).toContain('over-baked')
    expect(rulesOf(ryeDay(600))).not.toContain('over-baked')
    expect(rulesOf(ryeDay(70, {overnight: true}))).not.toContain('over-baked')
  })
  // Project Gutenberg #13493 (1829) names pies beside white bread.
  it.each([
    ['a raised pie, which falls with the oven', 195, true],
    ['a custard pie, which wants less heat', 180, false],
  ])('catches %s, set in with what falls from very hot', (_, best, falling) => {
    const pie = (crust: boolean): Dish => {
      const {crust: _crust, ...one} = dish('pie', 1, {id: 'pie-1', need: {...dish('pie', 1).need, startBest: best, falling}})
      return {...one, ...(crust ? {crust: true as const} : {})}
    }
    const at = {firings: bakeDay.firings.slice(1, 2)}
    const asked = problem([dish('beans', 1), pie(true)], at)
    const plan = planDay(asked)
    expect(plan.unplaced).toEqual([])
    expect(check(asked, plan)).toEqual([])
    const inAt = plan.loads.find(of('beans-1'))!.at
    const gap = plan.loads.find(of('pie-1'))!.at - inAt
    expect(gap < 0 || gap >= rules.settleIn.minutes).toBe(true)
    const together: Plan = {
      ...plan,
      loads: plan.loads.map((l) => (of('pie-1')(l) ? {...l, at: inAt + 10} : l)),
    }
    const order = (day: PlanProblem): string[] => check(day, together).flatMap((v) => (v.rule === 'order' ? [v.dish!] : []))
    expect(order(asked)).toEqual(['pie-1'])
    expect(order(problem([dish('beans', 1), pie(false)], at))).toEqual([])
  })
  it('catches a long bake standing in the way of what is drawn before it', () => {
    // The brown bread put in front of the pie, where the mouth is.
    const two = planDay(problem([dish('brown bread', 1), dish('pie', 1)], {firings: bakeDay.firings.slice(1, 2)}))
    const byId = new Map(two.loads.flatMap((l) => l.placed.map((p) => [p.dish, p] as const)))
    const swapped: Plan = {
      ...two,
      loads: two.loads.map((l) => ({
        ...l,
        placed: l.placed.map((p) => ({
          ...p,
          x: 0,
          y: p.dish === 'brown-bread-1' ? -0.2 : 0.2,
          zone: p.dish === 'brown-bread-1' ? ('mouth' as const) : ('back' as const),
        })),
      })),
    }
    expect(byId.size).toBe(2)
    expect(
      check(problem([dish('brown bread', 1), dish('pie', 1)], {firings: bakeDay.firings.slice(1, 2)}), swapped).map(
        (v) => v.rule,
      ),
    ).toContain('reach')
    // What is in the oven already stands where it was put: that is told, and no fault of the plan; how it was put there is past.
    const drawnAt = (pie: number, bread: number): Plan => ({
      ...swapped,
      loads: swapped.loads.map((l) => ({
        ...l,
        dishes: l.dishes.map((d) => ({...drawAt(d, d.dish === 'pie-1' ? pie : bread), alreadyIn: true})),
      })),
    })
    const noted = check(
      problem([dish('brown bread', 1), dish('pie', 1)], {firings: bakeDay.firings.slice(1, 2)}),
      drawnAt(1000, 1010),
    )
    expect(noted.filter(({rule}) => rule === 'reach')).toMatchObject([{dish: 'pie-1', noted: true}])
    expect(
      check(problem([dish('brown bread', 1), dish('pie', 1)], {firings: bakeDay.firings.slice(1, 2)}), drawnAt(1010, 1000)).map(
        (v) => v.rule,
      ),
    ).not.toContain('reach')
  })
  it('tells what in the oven would stand in one place as the log’s doing', () => {
    const inside = {...sound, loads: sound.loads.map((l) => ({...l, dishes: l.dishes.map((d) => ({...d, alreadyIn: true}))}))}
    const [load] = inside.loads.filter((l) => l.placed.length > 1)
    const spot = ({x, y, zone}: Load['placed'][number]) => ({x, y, zone})
    const onOne = {
      ...inside,
      loads: inside.loads.map((l) => (l === load ? {...l, placed: l.placed.map((p) => ({...p, ...spot(l.placed[0]!)}))} : l)),
    }
    const found = check(bakeDay, onOne).filter(({rule}) => rule === 'overlap')
    expect(found.length).toBeGreaterThan(0)
    for (const {noted} of found) expect(noted).toBe(true)
  })
  it('lets what is in the oven end too cool where some of it was not done before, and not where all was', () => {
    const pie = dish('pie', 2, {id: 'pie', title: 'Pie'})
    const placed = [-0.2, 0.25].map((y, i): Load['placed'][number] => {
      const zone = y > 0 ? 'back' : 'mouth'
      return {dish: 'pie', number: i + 1, x: 0, y, turn: 0, zone}
    })
    const set = [{dish: 'pie', count: 2, at: 540, drawn: null, placed}]
    const asked = problem([{...pie, need: {...pie.need, endLow: 180}}], {
      day: day({serve: 1000}),
      firings: bakeDay.firings.slice(1, 2),
      done: {now: 560, lit: 360, set, plan: null},
    })
    const plan = planDay(asked, {effort: 'quick'})
    expect(plan.loads[0]!.dishes[0]!.celsiusOut.likely).toBeLessThan(160)
    expect(check(asked, plan)).toEqual([])
    // Where a draw keeps the heat at which it may end, it is not left in for an hour more, done, until it is cooler.
    const milder = {...asked, dishes: [{...pie, need: {...pie.need, endLow: 155}}]}
    const later = {...plan, loads: plan.loads.map((l) => ({...l, dishes: l.dishes.map((d) => drawAt(d, d.draw.likely + 60))}))}
    expect(check(milder, plan).map((v) => v.rule)).not.toContain('end heat')
    expect(check(milder, later).map((v) => v.rule)).toContain('end heat')
  })
})
