import type {Range} from '../lexicon/schema.js'
import type {Inferred} from '../receipt/types.js'

/** A vessel's shape as it stands on the floor, metres. */
export interface Vessel {
  readonly name: string
  readonly footprint: {readonly shape: 'circle'; readonly diameter: number} | {readonly shape: 'rectangle'; readonly length: number; readonly width: number}
  readonly height: number
  /** Half the thickness heat must cross, metres: the length of the Fourier number. */
  readonly halfThickness: number
  /** Millilitres it holds when filled as usual. */
  readonly millilitres: number
}

/** What a dish needs of the oven: °C baking temperature, minutes. */
export interface HeatNeed {
  readonly startLow: number
  readonly startBest: number
  readonly startHigh: number
  readonly endLow: number
  /** T_done of the dose law. */
  readonly done: number
  /** The dose: (reference − done) × minutes must be reached. */
  readonly reference: number
  readonly minutes: Range
  readonly falling: boolean
  readonly overnight: boolean
}

/** A dish of a bake day, ready to be planned: so many vessels of one receipt. */
export interface Dish {
  /** Stable: slug of the receipt and batch number. */
  readonly id: string
  readonly title: string
  readonly file: string
  readonly kind: string
  readonly vessel: Vessel
  readonly count: number
  /** How many times the receipt is made, an exact fraction. */
  readonly times: string
  readonly need: HeatNeed
  readonly place: 'back' | 'middle' | 'mouth' | 'any'
  /** One vessel, kg, and water it loses, kg. */
  readonly mass: number
  readonly water: number
  /** Minutes after midnight of the day. */
  readonly wantedBy: number | null
  readonly dough: {readonly mix: number; readonly rise: number; readonly shape: number; readonly hold: number} | null
  readonly sign: string
  readonly feeds: Range
  readonly inferred: readonly Inferred[]
  readonly cautions: readonly string[]
  /** Receipt amounts at this size: what to weigh out. */
  readonly amounts: ReadonlyArray<{readonly item: string; readonly part: string; readonly grams: Range | null; readonly millilitres: Range | null; readonly kitchen: string; readonly exact: string | null}>
}

/** A vessel's place on the floor: centre in metres, origin at the floor's centre, y towards the back, mouth at negative y. */
export interface Placed {
  readonly dish: string
  readonly number: number
  readonly x: number
  readonly y: number
  /** Radians; rectangles only. */
  readonly turn: number
  readonly zone: 'back' | 'middle' | 'mouth'
}
