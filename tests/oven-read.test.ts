import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {readOven} from '../src/oven/read.js'

const good = `---
floor: round 42 in
vault height: 16 in
mouth: 18 in x 11 in
door: oak 2 in
hearth:
  - fire brick 2 1/2 in
  - sand 2 in
  - common brick 8 in
vault:
  - common brick 4 1/2 in
  - clay 3 in
place: outdoors
ambient: 60 °F
fuel: pine, 20 % moisture
start: damp
---
# The oven in the yard

| date | hours after raking | reading | value | note |
| --- | --- | --- | --- | --- |
| 2027-05-01 | 0.5 | floor | 600 °F | swabbed |
| 2027-05-01 | 90 min | arm | 17 | |
| 2027-05-01 | 3 | flour | browns slowly | |
`
const errors = (source: string) => readOven(source, 'oven.md').messages.filter((m) => m.severity === 'error')
const where = (needle: string) => {
  const offset = good.indexOf(needle)
  const before = good.slice(0, offset).split('\n')
  return {line: before.length, column: before.at(-1)!.length + 1}
}

describe('oven.md', () => {
  it('reads shape, sizes, walls, fuel and the past readings', () => {
    const {oven, readings, messages} = readOven(good, 'oven.md')
    expect(messages.filter((m) => m.severity !== 'info')).toEqual([])
    expect(oven?.name).toBe('The oven in the yard')
    expect(oven?.floor.shape).toBe('round')
    expect(oven?.floor.shape === 'round' && oven.floor.diameter).toBeCloseTo(1.0668, 4)
    expect(oven?.mouth.width).toBeCloseTo(0.4572, 4)
    expect(oven?.hearth.map((l) => l.material)).toEqual(['fire-brick', 'sand', 'common-brick'])
    expect(oven?.hearth[0]?.thickness).toBeCloseTo(0.0635, 4)
    expect(oven?.fuel).toEqual({wood: 'pine', moisture: 0.2})
    expect(oven?.start).toEqual({celsius: oven?.ambient, damp: true})
    expect(readings.map((r) => [r.hours, r.kind])).toEqual([
      [0.5, 'floor'],
      [1.5, 'arm'],
      [3, 'flour'],
    ])
    expect(readings[0]!.value as number).toBeCloseTo(315.6, 1)
    expect(readings[2]!.value).toBe('flour-browns-slowly')
  })

  it('reads on which side of the floor ash is left, and how wide', () => {
    const read = (bed: string) => readOven(good.replace('door: oak 2 in', `ash bed: ${bed}\ndoor: oak 2 in`), 'oven.md')
    expect(read('left 8 in').oven?.ashBed).toEqual({side: 'left', width: expect.closeTo(0.2032, 4) as number})
    expect(read('Back, 20 cm').oven?.ashBed).toEqual({side: 'back', width: expect.closeTo(0.2, 4) as number})
    expect(read('none').oven).not.toBeNull()
    for (const oven of [read('none').oven, readOven(good, 'oven.md').oven]) expect(oven).not.toHaveProperty('ashBed')
    for (const bed of ['8 in', 'left', 'left 8', 'front 8 in', 'left 0 in', 'left 30 in']) {
      const {oven, messages} = read(bed)
      expect(oven, bed).toBeNull()
      const [error] = messages.filter((m) => m.severity === 'error')
      expect(error, bed).toMatchObject({file: 'oven.md', line: 5, column: 10})
      expect(error!.suggest, bed).toMatch(/.{10}/)
    }
    expect(read('left 30 in').messages.map((m) => m.rule)).toContain('oven-ash-bed')
  })

  it('reads ovals, rectangles, squares, no door, green wood and heat left in the brick', () => {
    const read = (from: string, to: string) => readOven(good.replace(from, to), 'oven.md').oven
    expect(read('round 42 in', 'oval 60 x 48 in')?.floor).toMatchObject({
      shape: 'oval',
      depth: expect.closeTo(1.524, 3),
      width: expect.closeTo(1.2192, 3),
    })
    expect(read('round 42 in', 'rectangle 1.2 m × 90 cm')?.floor).toEqual({shape: 'rectangle', depth: 1.2, width: 0.9})
    expect(read('round 42 in', 'square 1 m')?.floor).toEqual({shape: 'rectangle', depth: 1, width: 1})
    expect(read('oak 2 in', 'none')?.door).toBeNull()
    expect(read('pine, 20 % moisture', 'green oak')?.fuel.moisture).toBe(0.45)
    expect(read('start: damp', 'start: 180 °F')?.start).toEqual({celsius: expect.closeTo(82.2, 1), damp: false})
  })

  it.each([
    ['mouth wider than the floor', '18 in x 11 in', '44 in x 11 in', 'wide as the floor'],
    ['mouth higher than the vault', '18 in x 11 in', '18 in x 17 in', 'high as the vault'],
    ['zero thickness', 'sand 2 in', 'sand 0 in', 'is nothing'],
    ['negative floor', 'round 42 in', 'round -42 in', 'negative'],
    ['no unit', 'round 42 in', 'round 42', 'no unit'],
    ['absurd size', 'round 42 in', 'round 420 ft', 'too large'],
    ['unknown material', 'fire brick 2', 'fyre brick 2', 'not a material'],
    ['layer without thickness', 'clay 3 in', 'clay', 'no thickness'],
    ['thickness without material', 'clay 3 in', '3 in', 'names no material'],
    ['unknown fuel', 'pine, 20', 'pyne, 20', 'not a fuel'],
    ['fuel too wet to burn', '20 % moisture', '80 % moisture', 'does not burn'],
    ['place', 'outdoors', 'in the barn', 'indoors or outdoors'],
    ['start', 'start: damp', 'start: ready', 'not how an oven can be'],
    ['unknown shape', 'round 42 in', 'hexagon 42 in', 'not the shape'],
  ])('refuses %s at its place', (_name, from, to, reason) => {
    const found = errors(good.replace(from, to))
    expect(found.length).toBeGreaterThan(0)
    expect(found[0]!.reason).toContain(reason)
    expect(found[0]!.suggest).toBeTruthy()
    expect(found[0]!.line).toBe(where(from).line)
    expect(found[0]!.file).toBe('oven.md')
    expect(readOven(good.replace(from, to), 'oven.md').oven).toBeNull()
  })

  it.each([
    ['iron', 'iron 3/16 in'],
    ['wood', 'wood 2 in'],
    ['fire brick', 'fire brick 4 1/2 in'],
  ])('shows a door of %s as thick as such doors are', (door, shown) => {
    const found = errors(good.replace(/^door:.*$/m, '').replace('hearth:', `door: ${door}\nhearth:`))
    expect(found[0]!.suggest).toBe(`write it after the material, such as “${shown}”`)
  })

  it.each([
    ['fire brick 2 1/2 in', 'fire-brick', 0.0635],
    ['  a common brick, 9 in', 'common-brick', 0.2286],
    ['sand: 6 in', 'sand', 0.1524],
    ['Fire brick ½ in', 'fire-brick', 0.0127],
  ])('reads the layer “%s”', (layer, material, thickness) => {
    const read = readOven(good.replace('  - sand 2 in', `  - ${JSON.stringify(layer)}`), 'oven.md')
    expect(read.messages.filter((m) => m.severity === 'error')).toEqual([])
    expect(read.oven!.hearth[1]!.material).toBe(material)
    expect(read.oven!.hearth[1]!.thickness).toBeCloseTo(thickness, 6)
  })

  it.each([
    ['oak', 0.18],
    ['green oak', 0.45],
    ['kiln-dried oak ,  ', 0.1],
    ['seasoned oak, 15.5 % moisture', 0.155],
    ['oak, 15,5 % moisture', 0.155],
    ['oak 20 per cent', 0.2],
    ['OAK,20%damp', 0.2],
  ])('reads the fuel “%s”', (fuel, moisture) => {
    const read = readOven(good.replace('pine, 20 % moisture', JSON.stringify(fuel)), 'oven.md')
    expect(read.oven!.fuel.wood).toBe(readOven(good.replace('pine, 20 % moisture', 'oak'), 'oven.md').oven!.fuel.wood)
    expect(read.oven!.fuel.moisture).toBeCloseTo(moisture, 6)
  })

  it.each(['18 % moisture', 'oak 20', 'oak, 20 % of something', 'green 30 %'])('refuses the fuel “%s”', (fuel) => {
    expect(errors(good.replace('pine, 20 % moisture', JSON.stringify(fuel)))).toHaveLength(1)
  })

  it.each([
    ['18 x 11 in', 0.4572],
    ['18 in × 11 in', 0.4572],
    ['18 in by 11 in.', 0.4572],
    ['46 cm X 28 cm', 0.46],
  ])('reads the mouth “%s”', (mouth, width) => {
    expect(readOven(good.replace('18 in x 11 in', JSON.stringify(mouth)), 'oven.md').oven!.mouth.width).toBeCloseTo(width, 6)
  })

  it('suggests the nearest material by edit distance', () => {
    expect(errors(good.replace('common brick 8', 'comon brik 8'))[0]!.suggest).toContain('common brick')
    expect(errors(good.replace('sand 2', 'ceramc fibre 2'))[0]!.suggest).toContain('ceramic fibre')
  })

  it('asks whether °C of the air was meant as °F', () => {
    expect(errors(good.replace('60 °F', '60 °C'))[0]!.suggest).toContain('60 °F')
  })

  it('keeps a reading that is odd, asks about its scale, and leaves out one that is impossible', () => {
    const odd = readOven(good.replace('600 °F', '640 °C'), 'oven.md')
    expect(odd.readings[0]!.value).toBe(640)
    expect(odd.messages.some((m) => m.severity === 'warning' && m.suggest?.includes('640 °F'))).toBe(true)
    const mad = readOven(good.replace('600 °F', '4000 °C'), 'oven.md')
    expect(mad.readings.length).toBe(2)
    expect(mad.oven).not.toBeNull()
    expect(mad.messages.some((m) => m.reason.includes('4000 °C') && m.line === where('600 °F').line)).toBe(true)
  })

  it('says what an empty file or one without front matter lacks', () => {
    expect(errors('')[0]!.rule).toBe('oven-front-matter')
    expect(errors('# An oven')[0]!.reason).toContain('front matter')
    expect(errors('---\nfloor: round 1 m\n')[0]!.rule).toBe('yaml')
  })

  it('never throws and always explains itself, whatever the values', () => {
    const keys = ['floor', 'vault height', 'mouth', 'door', 'place', 'ambient', 'fuel', 'start']
    fc.assert(
      fc.property(
        fc.constantFrom(...keys),
        fc.oneof(
          fc.string({maxLength: 40}),
          fc.integer().map(String),
          fc.constantFrom('1e9 m', '0 in x 0 in', 'NaN', '∞ in', '-1 cm', '[]', '{}', '9'.repeat(400)),
        ),
        (key, value) => {
          const source = good.replace(new RegExp(`^${key}: .*$`, 'm'), () => `${key}: ${JSON.stringify(value)}`)
          const read = readOven(source, 'oven.md')
          if (read.oven === null) {
            const found = read.messages.filter((m) => m.severity === 'error')
            expect(found.length).toBeGreaterThan(0)
            for (const m of found) {
              expect(m.line).toBeGreaterThan(0)
              expect(m.column).toBeGreaterThan(0)
              expect(m.reason.length).toBeGreaterThan(5)
            }
          } else {
            expect(read.oven.mouth.height).toBeLessThan(read.oven.vaultHeight)
            expect(Number.isFinite(read.oven.ambient)).toBe(true)
          }
        },
      ),
      {numRuns: 200},
    )
  })
})

describe('tables of past readings that are not read', () => {
  const told = (table: string) =>
    readOven(`${good.slice(0, good.indexOf('| date |'))}${table}`, 'oven.md').messages.filter((m) => m.severity !== 'info')
  const line = where('| date |').line

  it('a table without the hours, and a column of something else', () => {
    expect(told('| date | reading | value |\n| --- | --- | --- |\n| May | floor | 600 °F |\n')).toMatchObject([
      {line, column: 3, severity: 'warning', rule: 'oven-table'},
    ])
    expect(
      told('| hours | reading | value | weather |\n| --- | --- | --- | --- |\n| 0.5 | floor | 600 °F | rain |\n'),
    ).toMatchObject([{line, column: 29, severity: 'warning', rule: 'oven-table', reason: 'the column “weather” is not read'}])
  })

  it('a table of something else is the baker’s own', () => {
    expect(told('| wood | price |\n| --- | --- |\n| oak | 4 |\n')).toEqual([])
  })
})

describe('a key for what has its place elsewhere', () => {
  it('insulation is said to be a layer, with the line to write', () => {
    const {messages} = readOven(good.replace('---\n', '---\ninsulation: ceramic blanket 2 in\n'), 'oven.md')
    expect(messages).toMatchObject([
      {
        line: 2,
        column: 1,
        rule: 'key-unknown',
        suggest: expect.stringContaining('the last line of their lists, such as “- ceramic blanket 2 in”'),
      },
    ])
    // What is offered can be read.
    const layered = good.replace('\nvault:\n', '\n  - ceramic blanket 2 in\nvault:\n')
    expect(layered).not.toBe(good)
    expect(readOven(layered, 'oven.md').oven).not.toBeNull()
  })
})
