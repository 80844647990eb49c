import {describe, expect, it} from 'vitest'
import {fuels} from '../src/lexicon/fuels.js'
import {materials} from '../src/lexicon/materials.js'
import {fuelSchema, materialSchema, signSchema} from '../src/lexicon/schema.js'
import {armCaution, signs} from '../src/lexicon/signs.js'
import {sources} from '../src/lexicon/sources.js'
import {Column, columnLayer} from '../src/oven/conduction.js'
import {findFuel, findMaterial, materialById} from '../src/oven/materials.js'

describe('rows of materials, fuels and signs', () => {
  it('keep their schemas, have one owner for each name, and name sources that exist', () => {
    const known = new Set(sources.map((s) => s.id))
    const names = new Map<string, string>()
    for (const row of materials) {
      materialSchema.parse(row)
      expect(known.has(row.source), `${row.id}: ${row.source}`).toBe(true)
      for (const n of row.names) {
        expect(names.get(n), `“${n}” in ${row.id} and ${names.get(n)}`).toBeUndefined()
        names.set(n, row.id)
      }
    }
    for (const row of fuels) {
      fuelSchema.parse(row)
      expect(known.has(row.source)).toBe(true)
    }
    for (const row of signs) {
      signSchema.parse(row)
      expect(known.has(row.source)).toBe(true)
    }
    expect(known.has(armCaution.source)).toBe(true)
    expect(new Set([...materials, ...fuels].map((r) => r.id)).size).toBeGreaterThan(40)
  })

  /*
   * Handbook values, k W/(m·K), ρ kg/m³, c J/(kg·K). Incropera & DeWitt app. A (from memory): fire-clay brick 1.0, 960; common brick
   * 0.72, 1920, 835; dry sand 0.27, 1515, 800. Dense concrete 1.28, 2200–2300, 880: engineering table. Vermiculite 0.063–0.074,
   * 80–120: Low. Calcium silicate 0.059–0.072 at 38 °C, 240–352: ASTM C533. Ceramic fibre 0.06 at 200 °C, 0.09–0.10 at 400, 0.15 at
   * 600; cob 0.4–0.8, 1200–1900, 850–1000; perlite or vermiculite concrete 0.10–0.16, 400–600, 900–1000: from memory.
   */
  it.each([
    ['common-brick', 0.72, 1920, 835],
    ['sand', 0.27, 1515, 800],
    ['concrete', 1.28, 2300, 880],
  ])('%s has the handbook’s likely values', (id, k, density, heat) => {
    const m = materialById(id)
    expect([m.conductivity.likely, m.density.likely, m.heat.likely]).toEqual([k, density, heat])
  })

  it.each([
    ['fire-brick', 200, 1.0, 1.0, 1950, 2645],
    ['cob', 20, 0.4, 0.8, 1200, 1900],
    ['vermiculite', 20, 0.063, 0.074, 80, 120],
    ['calcium-silicate-board', 38, 0.059, 0.072, 240, 352],
    ['ceramic-fibre', 200, 0.055, 0.065, 96, 160],
    ['ceramic-fibre', 400, 0.09, 0.1, 96, 160],
    ['vermiculite-concrete', 20, 0.1, 0.16, 400, 600],
  ])('%s at %d °C lies in its published range', (id, celsius, low, high, light, heavy) => {
    const m = materialById(id)
    const points = m.conductivityAt ?? [{celsius, value: m.conductivity.likely}]
    const after = points.findIndex((p) => p.celsius >= celsius)
    const b = points[after < 0 ? points.length - 1 : after]!
    const a = points[Math.max(after - 1, 0)]!
    const k =
      a === b || b.celsius === a.celsius
        ? b.value
        : a.value + ((b.value - a.value) * (celsius - a.celsius)) / (b.celsius - a.celsius)
    expect(k).toBeGreaterThanOrEqual(low)
    expect(k).toBeLessThanOrEqual(high)
    expect(m.density.likely).toBeGreaterThanOrEqual(light)
    expect(m.density.likely).toBeLessThanOrEqual(heavy)
  })

  it('emissivities: brick 0.93–0.96, mortar 0.89–0.91, sand 0.90 (instrument manuals)', () => {
    expect(materialById('common-brick').emissivity!.likely).toBeGreaterThanOrEqual(0.93)
    expect(materialById('fire-brick').emissivity!.likely).toBeLessThanOrEqual(0.96)
    expect(materialById('lime-mortar').emissivity!.likely).toBeCloseTo(0.9, 1)
    expect(materialById('sand').emissivity!.likely).toBe(0.9)
  })

  it('the straight lines the solver uses stay within 20 % (conductivity) and 12 % (heat) of the tables', () => {
    for (const m of materials) {
      const layer = columnLayer(m, 0.1)
      for (const p of m.conductivityAt ?? [])
        expect(
          Math.abs((layer.conductivity[0] + layer.conductivity[1] * p.celsius) / p.value - 1),
          `${m.id} ${p.celsius}`,
        ).toBeLessThan(0.2)
      for (const p of m.heatAt ?? [])
        expect(
          Math.abs((layer.capacity[0] + layer.capacity[1] * p.celsius) / (p.value * m.density.likely) - 1),
          `${m.id} ${p.celsius}`,
        ).toBeLessThan(0.12)
      // And never turn negative where an oven goes.
      for (const t of [-20, 300, 900]) expect(layer.conductivity[0] + layer.conductivity[1] * t).toBeGreaterThan(0)
      expect(new Column({layers: [layer], area: 1, outside: 8, celsius: 20}).capacity()).toBeGreaterThan(0)
    }
  })

  it('finds materials and fuels by any name and offers the nearest for a slip', () => {
    expect(findMaterial('Ceramic fiber blanket')).toMatchObject({ok: true, row: {id: 'ceramic-fibre'}})
    expect(findMaterial('fire bricks')).toMatchObject({ok: true, row: {id: 'fire-brick'}})
    expect(findMaterial('sandstome')).toMatchObject({ok: false, nearest: expect.arrayContaining(['sandstone'])})
    expect(findFuel('Apple')).toMatchObject({ok: true, row: {id: 'fruitwood'}})
    expect(findFuel('beach')).toMatchObject({ok: false, nearest: expect.arrayContaining(['beech'])})
  })

  it('net heating values of dry woods are 17–20.5 MJ/kg (from memory)', () => {
    for (const f of fuels.filter((row) => !['straw', 'peat'].includes(row.id))) {
      expect(f.netDryMegajoules.low).toBeGreaterThanOrEqual(17)
      expect(f.netDryMegajoules.high).toBeLessThanOrEqual(20.5)
    }
  })
})
