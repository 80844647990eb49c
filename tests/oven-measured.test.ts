import {describe, expect, it} from 'vitest'
import {calibrate, sampleAt} from '../src/oven/calibrate.js'
import {burningRate} from '../src/oven/fire.js'
import {forecast, PRIOR, usualFiring} from '../src/oven/forecast.js'
import {pastFirings} from '../src/oven/learn.js'
import {simulate} from '../src/oven/simulate.js'
import type {Forecast, OvenEvent, OvenSpec, PastReading} from '../src/oven/types.js'

/*
 * Measured ovens, read off published posts and prints, in our own words. h = hours after the fire is out and the door closed. Where a
 * source states no size or fire, an ordinary one is taken and said so. The priors were widened while A1 and D were in view, so these are no blind test; other ovens are.
 *
 * | id | source | readings |
 * | --- | --- | --- |
 * | A1 | owner, oven builders' forum thread 10998 (about 2010): brick dome, 51 mm calcium-silicate board under the floor, thick insulation, insulated door, base still wet; after an evening's hot fire | 0 h 454, 24 h 204, 48 h 110, 72 h 60 °C |
 * | A3 | the same, drier, with a stone slab as heat bridge under the door | 0 h 454, 24 h 177, 48 h 93 °C |
 * | D | breadnz.com, oven heat page: wood-fired bread oven, closed | falls 10–13 °C/h from 250 to 200 °C, 8–10 to 150, 5–6 to 100, 3–4 to 70 |
 * | L | owner, 2023, German housing magazine: barrel 1.00 × 0.62 m, fire clay on concrete, thick rock wool, iron door | 24 h 120–150 °C |
 * | N | owner, German stone-oven forum thread 3121: barrel 0.85 × 0.50 m, arch 0.41 m, about 450 kg hot fire clay, 80 mm insulation | 10–12 kg wood: 240 °C baking heat; underside about 40 °C |
 * | O | notes of a village bakehouse, flat-roofed fire-clay oven, 20 kg wood in 2–2.5 h, 15 min rest | about 40 °C/h for the first 2–3 h, then about 20 °C/h |
 * | K | survey, The Fresh Loaf node 38835 (2014): hemispherical brick dome 1.09 m across, 5 h fire the evening before, coals left | 9–10 h 288–316 °C at the faces; three loads of 10 kg dough take about 56 °C |
 * | S | owner, forestry forum topic 117459: massive brick oven outdoors at −4 °C, 4 h fire | about 400 °C when raked, about 260 °C an hour later |
 * | Z | earth-oven baker's account, 2008: cob 100–127 mm, floor 1.5 × 0.9 m, fired cold 6 h | bread in three loads, biscuits, then beans overnight |
 */
const layer = (material: string, thickness: number) => ({material, thickness})
const any = {
  name: '',
  place: 'outdoors',
  ambient: 15,
  fuel: {wood: 'hardwood', moisture: 0.18},
  start: {celsius: 15, damp: false},
} as const

const A: OvenSpec = {
  ...any,
  floor: {shape: 'round', diameter: 1.07},
  vaultHeight: 0.5,
  mouth: {width: 0.46, height: 0.31},
  door: layer('calcium-silicate-board', 0.075),
  hearth: [layer('fire-brick', 0.063), layer('calcium-silicate-board', 0.051), layer('concrete', 0.1)],
  vault: [layer('fire-brick', 0.114), layer('ceramic-fibre', 0.075), layer('vermiculite-concrete', 0.05)],
}
/** Size and walls not stated: an ordinary insulated bread oven, still warm from the day before. */
const D: OvenSpec = {
  ...A,
  place: 'indoors',
  door: layer('oak', 0.05),
  hearth: [layer('fire-brick', 0.063), layer('sand', 0.05), layer('concrete', 0.15)],
  vault: [layer('fire-brick', 0.114), layer('vermiculite-concrete', 0.1)],
  start: {celsius: 90, damp: false},
}
const L: OvenSpec = {
  ...any,
  floor: {shape: 'rectangle', depth: 1, width: 0.62},
  vaultHeight: 0.4,
  mouth: {width: 0.4, height: 0.25},
  door: layer('cast-iron', 0.01),
  hearth: [layer('fire-brick', 0.064), layer('concrete', 0.12)],
  vault: [layer('fire-brick', 0.12), layer('rock-wool', 0.15)],
}
const N: OvenSpec = {
  ...any,
  floor: {shape: 'rectangle', depth: 0.85, width: 0.5},
  vaultHeight: 0.41,
  mouth: {width: 0.35, height: 0.25},
  door: layer('steel', 0.005),
  hearth: [layer('fire-brick', 0.072), layer('sand', 0.015), layer('calcium-silicate-board', 0.08), layer('common-brick', 0.072)],
  vault: [layer('fire-brick', 0.13), layer('rock-wool', 0.08)],
}
const O: OvenSpec = {
  ...any,
  place: 'indoors',
  fuel: {wood: 'hardwood', moisture: 0.165},
  floor: {shape: 'rectangle', depth: 1.3, width: 0.9},
  vaultHeight: 0.35,
  mouth: {width: 0.45, height: 0.25},
  door: layer('cast-iron', 0.01),
  hearth: [layer('fire-brick', 0.06), layer('sand', 0.1), layer('common-brick', 0.2)],
  vault: [layer('fire-brick', 0.12), layer('sand', 0.15)],
}
const K: OvenSpec = {...A, floor: {shape: 'round', diameter: 1.09}, vaultHeight: 0.54, door: layer('oak', 0.05)}
const S: OvenSpec = {
  ...any,
  ambient: -4,
  start: {celsius: -4, damp: false},
  floor: {shape: 'rectangle', depth: 1.2, width: 0.9},
  vaultHeight: 0.45,
  mouth: {width: 0.5, height: 0.28},
  door: layer('oak', 0.05),
  hearth: [layer('fire-brick', 0.115), layer('concrete', 0.15)],
  vault: [layer('fire-brick', 0.23), layer('vermiculite-concrete', 0.1)],
}
const Z: OvenSpec = {
  ...any,
  floor: {shape: 'oval', depth: 1.5, width: 0.9},
  vaultHeight: 0.4,
  mouth: {width: 0.4, height: 0.26},
  door: layer('oak', 0.05),
  hearth: [layer('fire-brick', 0.064), layer('cob', 0.2)],
  vault: [layer('cob', 0.114)],
}

type Curve = 'floor' | 'vault' | 'baking'
const inside = (f: Forecast, curve: Curve, hours: number, celsius: number): boolean => {
  const minutes = f.raked + hours * 60
  return sampleAt(f[curve].low, f.step, minutes) <= celsius && celsius <= sampleAt(f[curve].high, f.step, minutes)
}
/** Steepness of the fall where a curve passes a temperature, °C/h. */
const rateAt = (f: Forecast, line: readonly number[], celsius: number): number => {
  let i = Math.ceil(f.ready / f.step)
  while (i < line.length - 13 && line[i]! > celsius) i++
  return ((line[i - 6]! - line[i + 6]!) / (12 * f.step)) * 60
}
const hours = (h: number, burn: number): number => h + burn / 60 + 0.25

describe('measured ovens, before any reading', () => {
  it('the low–high range contains at least 80 % of all points', () => {
    const points: Array<[string, boolean]> = []
    const a = forecast(A, {firing: usualFiring(A, 240), hours: hours(72, 240)})
    for (const [h, t] of [
      [0, 454],
      [24, 204],
      [48, 110],
      [72, 60],
    ] as const)
      points.push([`A1 ${h} h`, inside(a, 'vault', h, t)])
    for (const [h, t] of [
      [0, 454],
      [24, 177],
      [48, 93],
    ] as const)
      points.push([`A3 ${h} h`, inside(a, 'vault', h, t)])

    // D states rates: the rate where the range passes the middle of each span.
    const slow = forecast(D, {
      firing: usualFiring(D, 150),
      parameters: {...PRIOR, loss: {low: PRIOR.loss.low, likely: PRIOR.loss.low, high: PRIOR.loss.low}},
      hours: 60,
    })
    const fast = forecast(D, {
      firing: usualFiring(D, 150),
      parameters: {...PRIOR, loss: {low: PRIOR.loss.high, likely: PRIOR.loss.high, high: PRIOR.loss.high}},
      hours: 60,
    })
    for (const [celsius, rate] of [
      [225, 11.5],
      [175, 9],
      [125, 5.5],
      [85, 3.5],
    ] as const)
      points.push([
        `D ${celsius}`,
        rateAt(slow, slow.baking.likely, celsius) <= rate && rate <= rateAt(fast, fast.baking.likely, celsius),
      ])

    const l = forecast(L, {firing: usualFiring(L, 240), hours: hours(24, 240)})
    points.push(['L 24 h', inside(l, 'vault', 24, 135)])
    const n = forecast(N, {firing: {wood: 11, burn: 120, soak: 30}, hours: 5})
    points.push(['N 240', inside(n, 'baking', 0.5, 240)])
    const under = simulate(N, {firing: {wood: 11, burn: 120, soak: 30}, hours: 14})
    points.push(['N underside', Math.abs(Math.max(...under.underside) - 40) < 15])
    const o = forecast(O, {firing: {wood: 20, burn: 135, soak: 15}, hours: 12})
    const fall = (line: readonly number[], from: number, to: number): number =>
      (sampleAt(line, o.step, o.ready + from * 60) - sampleAt(line, o.step, o.ready + to * 60)) / (to - from)
    const spans = (from: number, to: number): number[] =>
      [fall(o.baking.low, from, to), fall(o.baking.high, from, to)].sort((x, y) => x - y)
    const [o1, o2] = [spans(0, 2.5), spans(2.5, 5)]
    points.push(['O 40 °C/h', o1[0]! <= 40 && 40 <= o1[1]!])
    points.push(['O 20 °C/h', o2[0]! <= 20 && 20 <= o2[1]!])
    const k = forecast(K, {firing: usualFiring(K, 300), hours: hours(10, 300)})
    points.push(['K 9 h', inside(k, 'floor', 9, 316)], ['K 10 h', inside(k, 'vault', 10, 288)])
    const s = forecast(S, {firing: usualFiring(S, 240), hours: hours(1, 240)})
    points.push(['S raked', inside(s, 'vault', 0, 400)], ['S 1 h', inside(s, 'baking', 1, 260)])

    const missed = points.filter(([, ok]) => !ok).map(([name]) => name)
    expect(points.length).toBe(20)
    expect(missed.length / points.length, `missed: ${missed.join(', ')}`).toBeLessThanOrEqual(0.2)
  })

  it('K: three loads of about 10 kg dough take it down about 56 °C (within 40 %)', () => {
    const firing = usualFiring(K, 300)
    const loads = [0, 1, 2].flatMap((n): OvenEvent[] => [
      {minutes: 840 + 50 * n, kind: 'door', open: 4},
      {minutes: 842 + 50 * n, kind: 'load', mass: 10, water: 1.2, bake: 40},
    ])
    const trace = simulate(K, {firing, events: loads, hours: 18})
    const fall = sampleAt(trace.baking, 5, 835) - sampleAt(trace.baking, 5, 1000)
    expect(fall).toBeGreaterThan(56 * 0.6)
    expect(fall).toBeLessThan(56 * 1.4)
  })

  it('Z: bread at first and beans overnight on one firing of thin cob', () => {
    const f = forecast(Z, {firing: usualFiring(Z, 360)})
    expect(sampleAt(f.baking.likely, 5, 360 + 60)).toBeGreaterThan(230)
    expect(sampleAt(f.baking.high, 5, 360 + 600)).toBeGreaterThan(120)
  })

  it('time constants: 8–10 h thin clay, 14–24 h ordinary closed brick, 24–43 h well insulated', () => {
    const constant = (oven: OvenSpec): number => {
      const t = simulate(oven, {firing: usualFiring(oven, 180), hours: 30})
      const above = (h: number): number => sampleAt(t.baking, 5, 180 + h * 60) - oven.ambient
      return 14 / Math.log(above(6) / above(20))
    }
    const brick: OvenSpec = {...D, start: {celsius: 15, damp: false}}
    const [clay, closed, insulated] = [constant(Z), constant(brick), constant(A)]
    expect(clay).toBeGreaterThan(7)
    expect(clay).toBeLessThan(13)
    expect(closed).toBeGreaterThan(14)
    expect(closed).toBeLessThan(28)
    expect(insulated).toBeGreaterThan(22)
    expect(insulated).toBeLessThan(43)
  })
})

describe('measured ovens, after three readings', () => {
  const rest = (oven: OvenSpec, kind: 'vault' | 'air', series: ReadonlyArray<readonly [number, number]>): number => {
    const past = series.map(([h, value]): PastReading => ({date: '', hours: h, kind, value}))
    // The fire is not stated: it is taken to bring the model to the first reading.
    const {firing, readings} = pastFirings(oven, past)[0]!
    const {parameters} = calibrate(oven, {firing, readings: readings.slice(0, 3)})
    const last = series.at(-1)![0]
    const f = forecast(oven, {firing, parameters, hours: hours(last, firing.burn)})
    const curve = kind === 'vault' ? f.vault : f.baking
    const errors = readings.slice(3).map((r) => Math.abs(sampleAt(curve.likely, f.step, r.minutes) - (r.value as number)))
    return errors.reduce((a, b) => a + b, 0) / errors.length
  }
  /** D's rates added up: hours from 250 °C to 200, 150, 100, 70. */
  const fall = [250, 200, 150, 100, 70].map(
    (t, i) =>
      [
        2 + [0, 50 / 11.5, 50 / 11.5 + 50 / 9, 50 / 11.5 + 50 / 9 + 50 / 5.5, 50 / 11.5 + 50 / 9 + 50 / 5.5 + 30 / 3.5][i]!,
        t,
      ] as const,
  )

  it('A1: the rest of the series within 12 °C', () => {
    expect(
      rest(A, 'vault', [
        [0, 454],
        [24, 204],
        [48, 110],
        [72, 60],
      ]),
    ).toBeLessThanOrEqual(12)
  })

  it('D: the rest of the series within 12 °C, in three ovens it may have been', () => {
    const cold: OvenSpec = {...D, start: {celsius: 15, damp: false}}
    const insulated: OvenSpec = {...A, start: {celsius: 90, damp: false}}
    for (const oven of [D, cold, insulated]) expect(rest(oven, 'air', fall)).toBeLessThanOrEqual(12)
  })
})

/*
 * Munich, 1794: oval oven 12 ft × 11 ft 10 in × 1 ft 11 in, dry pine, six batches in a day. Wood 366.5, 134.5, 100, 90, 80, 74.5 lb;
 * 1102 loaves of 2.5 lb dough in all, loss 13.1 % in an hour's bake (Rumford, Essays). A Bavarian pound is taken as 0.56 kg. Walls are
 * not stated: tile on rubble and a brick vault under sand, ordinary for a bakehouse. The oven is fired until the hour's bake ends at
 * 200 °C, which bakes a loaf of that size; each batch is held to the same.
 */
describe('the Munich bakehouse trial of 1794', () => {
  const POUND = 0.56
  const oven: OvenSpec = {
    ...any,
    place: 'indoors',
    fuel: {wood: 'pine', moisture: 0.13},
    floor: {shape: 'oval', depth: 12 * 0.3048, width: 11.833 * 0.3048},
    vaultHeight: 1.9167 * 0.3048,
    mouth: {width: 0.75, height: 0.4},
    door: layer('cast-iron', 0.006),
    hearth: [layer('quarry-tile', 0.05), layer('sand', 0.1), layer('common-brick', 0.3)],
    vault: [layer('common-brick', 0.2), layer('sand', 0.2)],
  }
  const dough = (1102 / 6) * 2.5 * POUND
  const rate = burningRate(oven) / 60

  function batches(): number[] {
    const woods: number[] = []
    let first = {wood: 0, burn: 0, soak: 20}
    let events: OvenEvent[] = []
    let t = 0
    for (let k = 0; k < 6; k++) {
      let low = 5
      let high = 400
      let last: {wood: number; events: OvenEvent[]; firing: typeof first; end: number} | undefined
      for (let i = 0; i < 9; i++) {
        const wood = (low + high) / 2
        const burn = Math.max(wood / rate, 10)
        const firing = {wood, burn, soak: 20}
        const ready = t + burn + 20
        const more: OvenEvent[] = [
          ...(k === 0 ? [] : [{minutes: t, kind: 'fire', firing} as const]),
          {minutes: ready, kind: 'door', open: 15},
          {minutes: ready + 5, kind: 'load', mass: dough, water: dough * 0.131, bake: 60},
        ]
        const end = Math.round(ready + 65)
        const trace = simulate(oven, {
          firing: k === 0 ? firing : first,
          events: [...events, ...more],
          hours: (end + 1) / 60,
          sample: 1,
        })
        if (trace.baking[end]! < 200) low = wood
        else high = wood
        last = {wood, events: more, firing, end: ready + 78}
      }
      if (k === 0) first = last!.firing
      events = [...events, ...last!.events, {minutes: last!.end - 8, kind: 'door', open: 8}]
      t = last!.end
      woods.push(last!.wood)
    }
    return woods
  }

  it('wood of the cold batch against the sixth within 25 % of 4.9, and in all within 30 % of 845.5 lb', () => {
    const woods = batches()
    const ratio = woods[0]! / woods[5]!
    const total = woods.reduce((a, b) => a + b, 0)
    expect(Math.abs(ratio / 4.9 - 1), `ratio ${ratio.toFixed(2)}`).toBeLessThanOrEqual(0.25)
    expect(Math.abs(total / (845.5 * POUND) - 1), `total ${total.toFixed(0)} kg`).toBeLessThanOrEqual(0.3)
    // Every batch costs less than the one before.
    for (let k = 1; k < 6; k++) expect(woods[k]!).toBeLessThanOrEqual(woods[k - 1]! * 1.03)
  }, 60_000)
})
