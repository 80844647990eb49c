import type {Range} from '../lexicon/schema.js'

/** SI inside: metres, °C, kilograms, minutes. */
export interface Layer {
  /** Id of a row of `lexicon/materials`. */
  readonly material: string
  readonly thickness: number
}

export type FloorShape =
  | {readonly shape: 'round'; readonly diameter: number}
  /** `depth` runs from mouth to back, `width` across. */
  | {readonly shape: 'oval'; readonly depth: number; readonly width: number}
  | {readonly shape: 'rectangle'; readonly depth: number; readonly width: number}

/** Ash or coals left on the floor along one side of it, as seen from the mouth: `width` metres in from the wall, where nothing stands. */
export interface AshBed {
  readonly side: 'left' | 'right' | 'back'
  readonly width: number
}

export interface OvenSpec {
  readonly name: string
  readonly floor: FloorShape
  /** Height of the vault at its crown above the floor. */
  readonly vaultHeight: number
  readonly mouth: {readonly width: number; readonly height: number}
  /** Absent where the whole floor is swept. */
  readonly ashBed?: AshBed
  readonly door: {readonly material: string; readonly thickness: number} | null
  /** From the inside out. */
  readonly hearth: readonly Layer[]
  readonly vault: readonly Layer[]
  readonly place: 'indoors' | 'outdoors'
  readonly ambient: number
  /** Id of a row of `lexicon/fuels`, and water as a share of the wet mass. */
  readonly fuel: {readonly wood: string; readonly moisture: number}
  /** Cold and dry, damp, or still warm from yesterday (°C). */
  readonly start: {readonly celsius: number; readonly damp: boolean}
}

/** One fire. */
export interface Firing {
  readonly wood: number
  readonly burn: number
  readonly soak: number
}

export type ReadingKind = 'floor' | 'vault' | 'air' | 'arm' | 'flour' | 'paper' | 'walls' | 'spatter' | 'probe'

/** A reading or a sign. `minutes` counts from the lighting of the fire. */
export interface Reading {
  readonly minutes: number
  readonly kind: ReadingKind
  /** °C, or a count, or for words such as "blackens at once" a row id of `lexicon/signs`. */
  readonly value: number | string
  readonly note?: string
}

/** A reading from an earlier firing, as the table in `oven.md` has it: hours after raking out. */
export interface PastReading {
  readonly date: string
  readonly hours: number
  readonly kind: ReadingKind
  readonly value: number | string
  readonly note?: string
}

/** What happens to the oven after the soak. */
export type OvenEvent =
  | {readonly minutes: number; readonly kind: 'door'; readonly open: number}
  /** A load set in: mass kg, start temperature °C, water lost kg over `bake` minutes. */
  | {
      readonly minutes: number
      readonly kind: 'load'
      readonly mass: number
      readonly water: number
      readonly bake: number
      readonly celsius?: number
    }
  /** A further fire. */
  | {readonly minutes: number; readonly kind: 'fire'; readonly firing: Firing}

/** The uncertain parameters, as factors on the drawing's own figures (1 = as drawn). */
export interface OvenParameters {
  readonly stored: Range
  readonly loss: Range
  readonly coupling: Range
  /** How the three hang together after readings (of their logarithms, in the order above); absent: independent. */
  readonly correlation?: readonly (readonly number[])[]
}

/** One curve with its uncertainty, a value per sample, °C. */
export interface Band3 {
  readonly low: readonly number[]
  readonly likely: readonly number[]
  readonly high: readonly number[]
}

/** The falling oven against time. Sample i is at `i * step` minutes after lighting. */
export interface Forecast {
  readonly step: number
  readonly firing: Firing
  /** Minutes from lighting to raking out, and to the end of the soak (first load may go in). */
  readonly raked: number
  readonly ready: number
  readonly floor: Band3
  readonly vault: Band3
  readonly air: Band3
  /** What a dish feels: radiant-convective mean. */
  readonly baking: Band3
  /** Heat in masonry and air above ambient, MJ; absent where the curve comes of no simulation. */
  readonly heat?: Band3
  /** How much hotter or cooler than the mean (°C) each part of the floor is, on the likely curve at `ready`. */
  readonly zones: {readonly back: number; readonly middle: number; readonly mouth: number}
  /** Where the fire's heat went, MJ; `error` is the relative imbalance. */
  readonly balance: {
    readonly fire: number
    readonly flue: number
    readonly stored: number
    readonly lost: number
    readonly loads: number
    readonly error: number
  }
}
