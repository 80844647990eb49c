import type {Band, Range} from '../lexicon/schema.js'
import {burningRate, woodHeat} from './fire.js'
import {type FiringFor, firingFor, forecast, likelyFactors, PRIOR, usualFiring, usualSoak} from './forecast.js'
import {ovenGeometry} from './geometry.js'
import {materialById} from './materials.js'
import {simulate} from './simulate.js'
import type {Firing, Forecast, OvenEvent, OvenParameters, OvenSpec} from './types.js'

/** The four bands of baking temperature, °C (design §4). */
export const BANDS: Readonly<Record<Band, {readonly low: number; readonly high: number}>> = {
  hot: {low: 205, high: 260},
  moderate: {low: 163, high: 205},
  slow: {low: 121, high: 163},
  slack: {low: 79, high: 121},
}

/** When the falling oven is inside a band, minutes from lighting; null where it never is within the forecast. */
export interface BandWindow {
  readonly band: Band
  /** The likely curve, from the end of the soak on. */
  readonly from: number | null
  readonly to: number | null
  /** On the low and on the high curve. */
  readonly low: {readonly from: number; readonly to: number} | null
  readonly high: {readonly from: number; readonly to: number} | null
  /** True where the band goes on past the forecast's end. */
  readonly open: boolean
}

function windowOf(curve: readonly number[], step: number, ready: number, band: {low: number; high: number}) {
  // Where it falls through a limit, between samples.
  const cross = (limit: number): number | null => {
    let i = Math.ceil(ready / step)
    if ((curve[i] ?? 0) <= limit) return i * step
    for (; i < curve.length - 1; i++) {
      const a = curve[i]!
      const b = curve[i + 1]!
      if (a > limit && b <= limit) return (i + (a - limit) / (a - b)) * step
    }
    return null
  }
  const from = cross(band.high)
  if (from === null) return null
  const start = Math.ceil(ready / step) * step
  if (from === start && (curve[start / step] ?? 0) < band.low) return null
  const to = cross(band.low)
  return {from: Math.max(from, ready), to: to ?? (curve.length - 1) * step, open: to === null}
}

/**
 * When each band begins and ends on a forecast.
 *
 * @returns the four bands, hot first, minutes from lighting
 */
export function bandWindows(forecast: Forecast): BandWindow[] {
  return (['hot', 'moderate', 'slow', 'slack'] as const).map((band) => {
    const of = (curve: readonly number[]) => windowOf(curve, forecast.step, forecast.ready, BANDS[band])
    const likely = of(forecast.baking.likely)
    const strip = (w: ReturnType<typeof of>) => (w ? {from: w.from, to: w.to} : null)
    return {
      band,
      from: likely?.from ?? null,
      to: likely?.to ?? null,
      low: strip(of(forecast.baking.low)),
      high: strip(of(forecast.baking.high)),
      open: likely?.open ?? false,
    }
  })
}

/** What one change to the oven would do, with the same fire. */
export interface Change {
  readonly id: 'inch-brick' | 'inch-insulation' | 'tight-door' | 'dry-wood'
  readonly say: string
  /** Baking temperature at the end of the soak and twelve hours after raking, °C, now and changed. */
  readonly ready: {readonly now: number; readonly changed: number}
  readonly overnight: {readonly now: number; readonly changed: number}
  /** Minutes above 163 °C, now and changed. */
  readonly baking: {readonly now: number; readonly changed: number}
}

/** Everything `hearthfall oven` says of an oven. */
export interface OvenAnswers {
  readonly firing: Firing
  readonly forecast: Forecast
  readonly windows: readonly BandWindow[]
  /** Fires for some starts. */
  readonly starts: ReadonlyArray<{readonly celsius: number; readonly fire: FiringFor}>
  /** How long the oven stays in the slack band after the usual fire: minutes, and minutes after raking at which it leaves it. */
  readonly slack: {
    readonly minutes: number | null
    readonly until: number | null
    readonly atLeast: boolean
    readonly morning: Range
  }
  /** Extra wood (kg) and burning time (min) to the same start, against an oven fired the day before. */
  readonly cold: {readonly warmCelsius: number; readonly wood: number; readonly burn: number}
  readonly damp: {readonly wood: number; readonly burn: number}
  readonly changes: readonly Change[]
  readonly facts: {
    readonly floorArea: number
    readonly vaultArea: number
    readonly volume: number
    /** kg of masonry in the first layers of hearth and vault. */
    readonly hotMass: number
    /** MJ/kg of this wood, kg/h. */
    readonly woodHeat: number
    readonly burningRate: number
    /** Hours for the heat above ambient to fall to 1/e, from six to twelve hours after raking. */
    readonly timeConstant: number
    /** Heat in the masonry at the end of the soak, MJ. */
    readonly held: number
  }
}

const INCH = 0.0254

/**
 * Answer a baker's standing questions about an oven.
 *
 * @param options the learnt parameters, and the fire to speak of (the usual two hours where absent)
 */
export function answers(
  oven: OvenSpec,
  options: {parameters?: OvenParameters; firing?: Firing; events?: readonly OvenEvent[]} = {},
): OvenAnswers {
  const parameters = options.parameters ?? PRIOR
  const firing = options.firing ?? usualFiring(oven, 120)
  const events = options.events ?? []
  const curve = forecast(oven, {firing, parameters, hours: 30, events})
  const windows = bandWindows(curve)
  const factors = likelyFactors(parameters)
  const geometry = ovenGeometry(oven)
  const at = (c: readonly number[], minutes: number): number => c[Math.min(Math.round(minutes / curve.step), c.length - 1)]!
  const night = firing.burn + 720
  const slackWindow = windows.find((w) => w.band === 'slack')!

  const start = 230
  const coldOven: OvenSpec = {...oven, start: {celsius: oven.ambient, damp: false}}
  const cold = firingFor(coldOven, {startCelsius: start, parameters})
  // Fired yesterday with the same fire: what a day's fall leaves in the brick.
  const yesterday = simulate(coldOven, {firing, factors, hours: 24})
  const warmCelsius = yesterday.baking[yesterday.baking.length - 1]!
  const warm = firingFor({...oven, start: {celsius: warmCelsius, damp: false}}, {startCelsius: start, parameters})
  const damp = firingFor({...oven, start: {celsius: oven.ambient, damp: true}}, {startCelsius: start, parameters})

  const run = (o: OvenSpec, fire: Firing = firing) => simulate(o, {firing: fire, factors, hours: 24, events})
  const now = run(oven)
  const minutesAbove = (t: ReturnType<typeof run>, celsius: number): number => {
    let minutes = 0
    for (let i = Math.ceil(t.ready / t.step); i < t.baking.length; i++) if (t.baking[i]! >= celsius) minutes += t.step
    return minutes
  }
  const sample = (t: ReturnType<typeof run>, minutes: number): number =>
    t.baking[Math.min(Math.round(minutes / t.step), t.baking.length - 1)]!
  const change = (id: Change['id'], say: string, other: ReturnType<typeof run>): Change => ({
    id,
    say,
    ready: {now: sample(now, now.ready), changed: sample(other, other.ready)},
    overnight: {now: sample(now, night), changed: sample(other, night)},
    baking: {now: minutesAbove(now, BANDS.moderate.low), changed: minutesAbove(other, BANDS.moderate.low)},
  })
  const thicker = (layers: OvenSpec['vault']): OvenSpec['vault'] => [
    {...layers[0]!, thickness: layers[0]!.thickness + INCH},
    ...layers.slice(1),
  ]
  const wrapped = (layers: OvenSpec['vault']): OvenSpec['vault'] => [
    layers[0]!,
    {material: 'ceramic-fibre', thickness: INCH},
    ...layers.slice(1),
  ]
  const changes: Change[] = [
    change(
      'inch-brick',
      'an inch more brick in hearth and vault',
      run({...oven, hearth: thicker(oven.hearth), vault: thicker(oven.vault)}),
    ),
    change(
      'inch-insulation',
      'an inch of ceramic fibre behind the first layer of hearth and vault',
      run({...oven, hearth: wrapped(oven.hearth), vault: wrapped(oven.vault)}),
    ),
  ]
  const insulated = {material: 'calcium-silicate-board', thickness: 2 * INCH}
  if (oven.door === null || materialById(oven.door.material).conductivity.likely / oven.door.thickness > 4) {
    changes.push(
      change(
        'tight-door',
        oven.door === null ? 'a door with two inches of insulation' : 'two inches of insulation in the door',
        run({...oven, door: insulated}),
      ),
    )
  }
  if (oven.fuel.moisture > 0.21) {
    changes.push(change('dry-wood', 'the same wood dried to 16 % water', run({...oven, fuel: {...oven.fuel, moisture: 0.16}})))
  }

  const hotMass = [
    [geometry.floorArea, oven.hearth],
    [geometry.vaultArea, oven.vault],
  ] as const
  const six = at(curve.baking.likely, firing.burn + 360) - oven.ambient
  const twelve = at(curve.baking.likely, firing.burn + 720) - oven.ambient
  return {
    firing,
    forecast: curve,
    windows,
    starts: [177, 205, 232, 260].map((celsius) => ({
      celsius,
      fire: firingFor(oven, {startCelsius: celsius, parameters, soak: usualSoak(oven)}),
    })),
    slack: {
      minutes: slackWindow.from !== null && slackWindow.to !== null ? slackWindow.to - slackWindow.from : null,
      until: slackWindow.to === null ? null : slackWindow.to - firing.burn,
      atLeast: slackWindow.open,
      morning: {low: at(curve.baking.low, night), likely: at(curve.baking.likely, night), high: at(curve.baking.high, night)},
    },
    cold: {warmCelsius, wood: cold.wood.likely - warm.wood.likely, burn: cold.burn.likely - warm.burn.likely},
    damp: {wood: damp.wood.likely - cold.wood.likely, burn: damp.burn.likely - cold.burn.likely},
    changes,
    facts: {
      floorArea: geometry.floorArea,
      vaultArea: geometry.vaultArea,
      volume: geometry.volume,
      hotMass: hotMass.reduce(
        (s, [area, layers]) => s + area * layers[0]!.thickness * materialById(layers[0]!.material).density.likely,
        0,
      ),
      woodHeat: woodHeat(oven),
      burningRate: burningRate(oven),
      timeConstant: twelve > 0 && six > twelve ? 6 / Math.log(six / twelve) : Number.POSITIVE_INFINITY,
      held: now.held,
    },
  }
}
