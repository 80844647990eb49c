import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {cheapestFirst} from '../src/plan/cheapest-first.js'

describe('choices, the cheapest first', () => {
  it('are in the order of a stable sort by cost, those of no cost and of endless cost too', () => {
    const costs = fc.oneof(fc.integer({min: -3, max: 3}), fc.double({noNaN: true}))
    fc.assert(
      fc.property(fc.array(costs, {maxLength: 70}), fc.array(fc.boolean(), {minLength: 70, maxLength: 70}), (list, taken) => {
        const cost = Float64Array.from(list)
        const choices = [...list.keys()].filter((o) => taken[o])
        // ECMAScript's sort is stable (ECMA-262, 23.1.3.30).
        const byCost = [...choices].sort((a, b) => (cost[a]! < cost[b]! ? -1 : cost[a]! > cost[b]! ? 1 : 0))
        expect([...cheapestFirst(Uint32Array.from(choices), cost)]).toEqual(byCost)
      }),
    )
  })
})
