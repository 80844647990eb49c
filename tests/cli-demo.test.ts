import {describe, expect, it} from 'vitest'
import {run} from '../src/cli/run.js'

/** The demo plan read as a baker would: what the README promises, whatever the search settles on. */
describe('the demo day', async () => {
  const {out, code} = await run(['plan', 'corpus-demo', '--format', 'json'])
  interface Dish {
    id: string
    kind: string
  }
  interface Entry {
    dish: string
    count: number
    celsiusIn: {likely: number}
    draw: {likely: number}
  }
  const plan = JSON.parse(out) as {possible: boolean; dishes: Dish[]; loads: {at: number; dishes: Entry[]}[]; raked: number}
  const kindOf = new Map(plan.dishes.map((d) => [d.id, d.kind]))
  const entries = plan.loads.flatMap((load) => load.dishes.map((d) => ({...d, at: load.at, kind: kindOf.get(d.dish)!})))

  it('has a place for every dish', () => expect({code, possible: plan.possible}).toEqual({code: 0, possible: true}))
  it('counts whole vessels', () => expect(entries.every((e) => Number.isInteger(e.count))).toBe(true))
  // Common practice, no source: hot goods 400–500 °F, cakes about 350 °F, custards in a slow oven.
  it('no cold bread, no custard in a fierce oven', () => {
    const heat = (kind: string): number[] => entries.filter((e) => e.kind === kind).map((e) => e.celsiusIn.likely)
    expect(Math.min(...heat('white bread'))).toBeGreaterThan(200)
    expect(Math.max(...heat('custard'))).toBeLessThan(180)
  })
  it('long bakes are drawn after the bread', () => {
    const last = (kind: string): number => Math.max(...entries.filter((e) => e.kind === kind).map((e) => e.draw.likely))
    expect(last('beans')).toBeGreaterThan(last('white bread'))
    expect(last('indian pudding')).toBeGreaterThan(last('custard'))
  })
})
