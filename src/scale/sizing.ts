import type {Place} from '../receipt/position.js'
import type {Message} from '../receipt/types.js'
import type {DayToScale, FloorRoom, Vessel} from './types.js'

/** Takes a message of a day's line; it stands where the line does, unless a place is given. */
export type Say = (severity: Message['severity'], rule: string, reason: string, suggest?: string, where?: Place) => void

/** How many of a vessel stand on the floor, `wanted` at most; without limit when `wanted` is infinite. */
export type Fits = (vessel: Vessel, wanted: number) => number

/** What a line of the day is brought to its size with. */
export interface Sizing {
  readonly day: DayToScale
  readonly mouth: FloorRoom['mouth']
  readonly fits: Fits
  /** The id before the batch's number. */
  readonly name: string
  /** How many dishes have each name so far. */
  readonly used: Map<string, number>
  readonly say: Say
  /** A line is only tried, as the way out of another. */
  readonly tried?: true
}
