import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {capacityOf, mayFit, packFloor} from '../src/scale/floor.js'
import {placementFaults} from '../src/scale/floor-faults.js'
import type {FloorItem, FloorRoom, Placed} from '../src/scale/types.js'

/**
 * Radius of the least circle that holds n unit circles. Closed forms where they are known (derived): rings of n touching circles give
 * 1 + 1/sin(π/n), one in the middle gives the ring of n − 1; 13: 2 + √5; 18 and 19: 1 + √2 + √6. The others are the published best
 * known values (Graham, Lubachevsky, Nurmela and Östergård, Discrete Mathematics 181, 1998; Kravitz 1967), digits from memory.
 */
const ring = (n: number): number => 1 + 1 / Math.sin(Math.PI / n)
const best: ReadonlyArray<{n: number; radius: number; source: string}> = [
  {n: 1, radius: 1, source: 'derived'},
  {n: 2, radius: ring(2), source: 'derived'},
  {n: 3, radius: ring(3), source: 'derived'},
  {n: 4, radius: ring(4), source: 'derived'},
  {n: 5, radius: ring(5), source: 'derived'},
  {n: 6, radius: ring(6), source: 'derived'},
  {n: 7, radius: ring(6), source: 'derived'},
  {n: 8, radius: ring(7), source: 'derived'},
  {n: 9, radius: ring(8), source: 'derived'},
  {n: 10, radius: 3.813, source: 'from memory'},
  {n: 11, radius: ring(9), source: 'derived; proved best by Melissen 1994'},
  {n: 12, radius: 4.0296, source: 'from memory'},
  {n: 13, radius: 2 + Math.sqrt(5), source: 'derived'},
  {n: 14, radius: 4.3284, source: 'from memory'},
  {n: 15, radius: 4.5214, source: 'from memory'},
  {n: 16, radius: 4.6154, source: 'from memory'},
  {n: 17, radius: 4.792, source: 'from memory'},
  {n: 18, radius: 1 + Math.SQRT2 + Math.sqrt(6), source: 'derived'},
  {n: 19, radius: 1 + Math.SQRT2 + Math.sqrt(6), source: 'derived'},
]

/** n equal crocks of 20 cm on a bare round floor without clearance, its radius `share` of the best known. */
function equalCircles(n: number, radius: number, share: number): {room: FloorRoom; items: FloorItem[]} {
  const diameter = 0.2 * radius * share
  return {
    room: {
      floor: {shape: 'round', diameter},
      mouth: {width: diameter, height: 1},
      vaultHeight: 1e6,
      rules: {clearance: 0, mouthFree: 0},
    },
    items: Array.from({length: n}, (_, i) => ({
      dish: 'crock',
      number: i + 1,
      footprint: {shape: 'circle', diameter: 0.2},
      height: 0.1,
      out: 1,
    })),
  }
}

const vesselsOf = (items: readonly FloorItem[]): Map<string, FloorItem> => new Map(items.map((item) => [item.dish, item]))

describe('published best packings of equal circles in a circle', () => {
  for (const {n, radius, source} of best) {
    it(`${n} on a floor within 1 % of the best known radius ${radius.toFixed(4)} (${source})`, () => {
      const {room, items} = equalCircles(n, radius, 1.01)
      const packed = packFloor({...room, items})
      expect('placed' in packed && packed.placed.length).toBe(n)
      if ('placed' in packed) expect(placementFaults(room, packed.placed, vesselsOf(items))).toEqual([])
    })
    it(`${n} are refused on a floor 2 % smaller than the best known`, () => {
      const {room, items} = equalCircles(n, radius, 0.98)
      expect(packFloor({...room, items})).toHaveProperty('conflict')
    })
  }
  /**
   * Side of the least square that holds n unit circles, closed forms (Schaer 1965, Melissen; from memory). Here the floor is a
   * rectangle.
   */
  const square: ReadonlyArray<[number, number]> = [
    [1, 2],
    [2, 2 + Math.SQRT2],
    [3, 2 + (Math.SQRT2 + Math.sqrt(6)) / 2],
    [4, 4],
    [5, 2 + 2 * Math.SQRT2],
    [6, 2 + 12 / Math.sqrt(13)],
    [7, 4 + Math.sqrt(3)],
    [8, 2 + Math.SQRT2 + Math.sqrt(6)],
    [9, 6],
  ]
  for (const [n, side] of square) {
    it(`${n} on a square floor within 1 % of the least side ${side.toFixed(4)}, and not 2 % below it`, () => {
      const at = (share: number) => {
        const edge = 0.1 * side * share
        const room: FloorRoom = {
          floor: {shape: 'rectangle', depth: edge, width: edge},
          mouth: {width: edge, height: 1},
          vaultHeight: 1e6,
          rules: {clearance: 0, mouthFree: 0},
        }
        return packFloor({...room, items: equalCircles(n, 1, 1).items}, {moves: false})
      }
      expect(at(1.01)).toHaveProperty('placed')
      expect(at(0.98)).toHaveProperty('conflict')
    })
  }
  it('the figures from memory obey what is proved: more circles never need less room, and density stays below π/√12', () => {
    for (let i = 1; i < best.length; i++) {
      expect(best[i]!.radius).toBeGreaterThanOrEqual(best[i - 1]!.radius)
      expect(best[i]!.n / best[i]!.radius ** 2).toBeLessThan(Math.PI / Math.sqrt(12))
    }
  })
})

const floors = fc.oneof(
  fc.record({shape: fc.constant('round' as const), diameter: fc.double({min: 0.7, max: 1.8, noNaN: true})}),
  fc.record({
    shape: fc.constant('oval' as const),
    depth: fc.double({min: 0.8, max: 1.8, noNaN: true}),
    width: fc.double({min: 0.7, max: 1.5, noNaN: true}),
  }),
  fc.record({
    shape: fc.constant('rectangle' as const),
    depth: fc.double({min: 0.7, max: 1.8, noNaN: true}),
    width: fc.double({min: 0.6, max: 1.4, noNaN: true}),
  }),
)
const rooms: fc.Arbitrary<FloorRoom> = fc.record({
  floor: floors,
  mouth: fc.record({width: fc.double({min: 0.36, max: 0.6, noNaN: true}), height: fc.double({min: 0.2, max: 0.32, noNaN: true})}),
  vaultHeight: fc.double({min: 0.34, max: 0.6, noNaN: true}),
  rules: fc.record(
    {
      clearance: fc.constantFrom(0, 0.015, 0.025, 0.04),
      mouthFree: fc.constantFrom(0, 0.1),
      ashBed: fc.record({
        side: fc.constantFrom('left' as const, 'right' as const, 'back' as const),
        width: fc.constantFrom(0.08, 0.15),
      }),
    },
    {requiredKeys: []},
  ),
})
const footprints = fc.oneof(
  fc.record({shape: fc.constant('circle' as const), diameter: fc.double({min: 0.12, max: 0.34, noNaN: true})}),
  fc.record({
    shape: fc.constant('rectangle' as const),
    length: fc.double({min: 0.2, max: 0.42, noNaN: true}),
    width: fc.double({min: 0.1, max: 0.3, noNaN: true}),
  }),
)
const loads: fc.Arbitrary<FloorItem[]> = fc
  .array(
    fc.record({
      footprint: footprints,
      height: fc.double({min: 0.03, max: 0.19, noNaN: true}),
      count: fc.integer({min: 1, max: 4}),
      in: fc.constantFrom(0, 0, 0, 40),
      stay: fc.integer({min: 5, max: 300}),
      place: fc.constantFrom('any' as const, 'back' as const, 'middle' as const, 'mouth' as const),
    }),
    {minLength: 1, maxLength: 6},
  )
  .map((dishes) =>
    dishes.flatMap(({count, stay, ...dish}, d) =>
      Array.from({length: count}, (_, i) => ({dish: `dish-${d}`, number: i + 1, ...dish, out: dish.in + stay})),
    ),
  )

const stayOf = (items: readonly FloorItem[]) => {
  const byName = new Map(items.map((item) => [`${item.dish} ${item.number}`, {in: item.in ?? 0, out: item.out}]))
  return (one: Placed) => byName.get(`${one.dish} ${one.number}`)!
}

describe('every packing keeps the rules of the floor, by a check that shares no code with it', () => {
  it('no overlap, on the floor, under the vault, through the mouth, all in reach (80 random ovens and loads)', () => {
    let packedLoads = 0
    fc.assert(
      fc.property(rooms, loads, (room, items) => {
        const packed = packFloor({...room, items})
        if ('conflict' in packed) {
          const {saved} = packed.conflict
          if (saved === undefined) return
          // What a move saves is sound but for the reach it names, and each fault of reach is a move counted.
          const faults = placementFaults(room, saved.placed, vesselsOf(items), stayOf(items))
          expect(faults.filter((fault) => fault.rule !== 'reach')).toEqual([])
          expect(saved.moves.length).toBeGreaterThanOrEqual(Math.max(1, faults.length))
          return
        }
        packedLoads++
        expect(packed.placed.length).toBe(items.length)
        expect(placementFaults(room, packed.placed, vesselsOf(items), stayOf(items))).toEqual([])
        // The same again, to the last digit.
        expect(packFloor({...room, items})).toEqual(packed)
      }),
      {numRuns: 80, seed: 20270619},
    )
    expect(packedLoads).toBeGreaterThan(25)
  })
  it('what mayFit refuses is never packed', () => {
    fc.assert(
      fc.property(rooms, loads, (room, items) => {
        const together = items.map((item) => ({...item, in: 0, out: 1}))
        const packed = packFloor({...room, items: together}, {effort: 'quick'})
        if ('placed' in packed)
          expect(
            mayFit(
              room,
              together.map((item) => item.footprint),
            ),
          ).toBe(true)
      }),
      {numRuns: 80, seed: 7},
    )
  })
  it('a later load is set in round what stands there already, and that is not moved', () => {
    fc.assert(
      fc.property(rooms, loads, loads, (room, first, second) => {
        const early = first.map((item) => ({...item, in: 0, out: 500}))
        const packed = packFloor({...room, items: early}, {effort: 'quick'})
        if ('conflict' in packed) return
        const fixed = early.map((item) => {
          const {x, y, turn} = packed.placed.find((one) => one.dish === item.dish && one.number === item.number)!
          return {...item, fixed: {x, y, turn}}
        })
        const late = second.map((item) => ({...item, dish: `late-${item.dish}`, in: 60, out: 60 + (item.out - (item.in ?? 0))}))
        const all = packFloor({...room, items: [...fixed, ...late]}, {effort: 'quick'})
        if ('conflict' in all) return
        const placed = [...packed.placed, ...all.placed]
        const items = [...early, ...late]
        expect(all.placed.length).toBe(late.length)
        expect(placementFaults(room, placed, vesselsOf(items), stayOf(items))).toEqual([])
      }),
      {numRuns: 80, seed: 11},
    )
  })
})

const room: FloorRoom = {floor: {shape: 'round', diameter: 1.07}, mouth: {width: 0.46, height: 0.28}, vaultHeight: 0.41}
const circle = (dish: string, diameter: number, out: number, more: Partial<FloorItem> = {}): FloorItem => ({
  dish,
  number: 1,
  footprint: {shape: 'circle', diameter},
  height: 0.1,
  out,
  ...more,
})

describe('what does not go in is refused by name', () => {
  it('too wide for the mouth', () => {
    const packed = packFloor({...room, items: [circle('sieve', 0.5, 1)]})
    expect(packed).toMatchObject({conflict: {rule: 'mouth width', items: [{dish: 'sieve', number: 1}]}})
  })
  it('too high for the mouth, or for the vault', () => {
    expect(packFloor({...room, items: [circle('urn', 0.2, 1, {height: 0.3})]})).toMatchObject({conflict: {rule: 'mouth height'}})
    const low = {...room, mouth: {width: 0.46, height: 0.5}}
    expect(packFloor({...low, items: [circle('urn', 0.2, 1, {height: 0.45})]})).toMatchObject({conflict: {rule: 'vault height'}})
  })
  it('an oblong tin goes in end on', () => {
    const tin: FloorItem = {
      dish: 'tin',
      number: 1,
      footprint: {shape: 'rectangle', length: 0.6, width: 0.3},
      height: 0.05,
      out: 1,
    }
    expect(packFloor({...room, items: [tin]})).toHaveProperty('placed')
  })
  it('more than the floor', () => {
    const many = Array.from({length: 60}, (_, i) => ({...circle('loaf', 0.24, 1), number: i + 1}))
    expect(packFloor({...room, items: many})).toMatchObject({conflict: {rule: 'area'}})
  })
  it('a tall crock keeps away from the springing of the vault', () => {
    const tall = packFloor({...room, items: [circle('crock', 0.2, 1, {height: 0.27})]})
    const flat = packFloor({...room, items: [circle('plate', 0.2, 1, {height: 0.03})]})
    if (!('placed' in tall) || !('placed' in flat)) throw new Error('both should stand')
    // Half an ellipse springing from the floor: at 27 cm under a crown of 41 cm it is 0.753 of the floor's width.
    const share = Math.sqrt(1 - (0.27 / 0.41) ** 2)
    const {x, y} = tall.placed[0]!
    expect(Math.hypot(x, y) + 0.1).toBeLessThanOrEqual(share * 0.535 + 1e-9)
    expect(flat.placed[0]!.y).toBeGreaterThan(y)
  })
})

describe('reach', () => {
  it('what is drawn last stands furthest back', () => {
    const items = [circle('biscuits', 0.3, 15), circle('beans', 0.24, 600), circle('bread', 0.24, 45)]
    const packed = packFloor({...room, items})
    if (!('placed' in packed)) throw new Error(packed.conflict.reason)
    const y = (dish: string): number => packed.placed.find((one) => one.dish === dish)!.y
    expect(y('beans')).toBeGreaterThan(y('bread'))
    expect(y('bread')).toBeGreaterThan(y('biscuits'))
  })
  it('one that would have to be shifted is offered as a move and counted, not hidden', () => {
    // A corridor one vessel wide: the pie already there blocks the way to the back, and the beans are to be set in behind it.
    const corridor: FloorRoom = {
      floor: {shape: 'rectangle', depth: 0.8, width: 0.32},
      mouth: {width: 0.32, height: 0.3},
      vaultHeight: 2,
    }
    const pie = circle('pie', 0.24, 100, {fixed: {x: 0, y: -0.1, turn: 0}})
    const packed = packFloor({...corridor, items: [pie, circle('beans', 0.24, 600, {in: 10})]})
    if (!('conflict' in packed)) throw new Error('the pie stands in the way')
    expect(packed.conflict.rule).toBe('reach')
    expect(packed.conflict.saved?.moves).toEqual([
      {dish: 'pie', number: 1, toReach: {dish: 'beans', number: 1}, why: 'set in', at: 10},
    ])
    expect(packed.conflict.saved?.placed).toHaveLength(1)
  })
  it('vessels that never meet share a place', () => {
    const corridor: FloorRoom = {
      floor: {shape: 'rectangle', depth: 0.45, width: 0.32},
      mouth: {width: 0.32, height: 0.3},
      vaultHeight: 2,
    }
    const packed = packFloor({...corridor, items: [circle('bread', 0.24, 50), circle('cake', 0.24, 120, {in: 50})]})
    expect('placed' in packed && packed.placed.length).toBe(2)
  })
})

describe('the check of a placement catches each broken rule', () => {
  const vessels = new Map([
    ['loaf', {footprint: {shape: 'circle' as const, diameter: 0.24}, height: 0.1}],
    ['tin', {footprint: {shape: 'rectangle' as const, length: 0.3, width: 0.12}, height: 0.08}],
    ['urn', {footprint: {shape: 'circle' as const, diameter: 0.5}, height: 0.3}],
  ])
  const at = (dish: string, number: number, x: number, y: number, turn = 0): Placed => ({
    dish,
    number,
    x,
    y,
    turn,
    zone: 'middle',
  })
  const rules = (placed: Placed[], stay?: (one: Placed) => {in: number; out: number}): string[] =>
    placementFaults(room, placed, vessels, stay).map((one) => one.rule)
  it('nothing to say of a good one', () =>
    expect(rules([at('loaf', 1, 0, 0.3), at('loaf', 2, 0, 0), at('tin', 1, 0.3, 0, Math.PI / 2)])).toEqual([]))
  it('overlap, also of turned tins', () => {
    expect(rules([at('loaf', 1, 0, 0), at('loaf', 2, 0.25, 0)])).toEqual(['overlap'])
    // Two tins 11 cm apart lie side by side only if both lie the same way: 12 cm wide each.
    expect(rules([at('tin', 1, 0, 0.1), at('tin', 2, 0, 0.21)])).toEqual(['overlap'])
    expect(rules([at('tin', 1, 0, 0.1, 0.6), at('tin', 2, 0, -0.03, 0.6)])).toEqual(['overlap'])
  })
  it('the edge, the kept strip, the mouth and the vault', () => {
    expect(rules([at('loaf', 1, 0.45, 0)])).toContain('off the floor')
    expect(rules([at('loaf', 1, 0, -0.35)])).toContain('kept free')
    expect(rules([at('urn', 1, 0, 0.2)])).toEqual(expect.arrayContaining(['mouth', 'vault']))
    expect(rules([at('jug', 1, 0, 0)])).toEqual(['unknown vessel'])
  })
  it('reach when drawing and when setting in', () => {
    const line = [at('loaf', 1, 0, 0.3), at('loaf', 2, 0, 0)]
    expect(rules(line, (one) => ({in: 0, out: one.number === 1 ? 40 : 60}))).toEqual(['reach'])
    expect(rules(line, (one) => ({in: one.number === 1 ? 10 : 0, out: 60}))).toEqual(['reach'])
    expect(rules(line, (one) => ({in: 0, out: one.number === 1 ? 60 : 40}))).toEqual([])
    expect(rules(line, (one) => (one.number === 1 ? {in: 0, out: 40} : {in: 40, out: 60}))).toEqual([])
  })
})

describe('how many stand on the floor', () => {
  it('agrees with packing that many, and one more is refused', () => {
    for (const diameter of [0.2, 0.24, 0.3]) {
      const vessel = {footprint: {shape: 'circle' as const, diameter}, height: 0.1}
      const n = capacityOf(room, vessel)
      const items = (k: number): FloorItem[] => Array.from({length: k}, (_, i) => ({dish: 'x', number: i, ...vessel, out: 1}))
      expect(packFloor({...room, items: items(n)})).toHaveProperty('placed')
      expect(packFloor({...room, items: items(n + 1)})).toHaveProperty('conflict')
    }
  })
  it('tins on a rectangular floor stand in rows as on graph paper (by hand: 4 across × 5 deep)', () => {
    // 1 m of width (2 mm to spare) / (22.5 + 2.5) cm = 4; 0.85 m of depth clear of the mouth strip, plus half a clearance, / 17 cm = 5.
    const rectangle: FloorRoom = {
      floor: {shape: 'rectangle', depth: 0.952, width: 1.002},
      mouth: {width: 1, height: 0.3},
      vaultHeight: 50,
    }
    expect(
      capacityOf(rectangle, {footprint: {shape: 'rectangle', length: 0.225, width: 0.145}, height: 0.08}),
    ).toBeGreaterThanOrEqual(20)
  })
  it('loads about as much dough to the square metre as bakers report: free-standing loaves 9–12 kg, packed 15–25 (bakers’ surveys)', () => {
    const n = capacityOf(room, {footprint: {shape: 'circle', diameter: 0.24}, height: 0.1})
    const perSquareMetre = (n * 0.95) / (Math.PI * 0.535 ** 2)
    expect(perSquareMetre).toBeGreaterThan(8)
    expect(perSquareMetre).toBeLessThan(15)
  })
})
