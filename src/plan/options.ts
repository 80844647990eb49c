import type {Forecast, OvenEvent} from '../oven/types.js'
import type {Dish, HeatNeed} from '../scale/types.js'
import type {Laid} from './in-time.js'
import type {Settled} from './settled.js'
import type {Day, FiringOption} from './types.js'

export interface PlanOptions {
  /**
   * The oven with loads and door openings in it, minutes after lighting. Without it the plan stands on the empty oven's curve.
   * `exact` asks for the range as well as the likely curve.
   */
  readonly simulate?: (option: FiringOption, events: readonly OvenEvent[], exact: boolean) => Forecast
  /** Less searching, no bound: for trying remedies and suggestions. */
  readonly effort?: 'quick' | 'full'
  /** The plan alone: neither reasons for what is left out, nor ways out. */
  readonly bare?: boolean
  /** With `bare`: what cannot be had in time is left out all the same, as it is where reasons are told. */
  readonly inTime?: boolean
  /** With `bare`: the plan is the very one that is made where reasons are told, unless more than so many people go without by it. */
  readonly asTold?: number
  /** What the day comes to on one fire, where that has been looked at. */
  readonly onOneFire?: OnOneFire
  /** A plan of the day, or of one much like it, that is gone on with where its fire is one of the day's. */
  readonly from?: Settled
  /** On a day that has begun: no more than what becomes of the plan in hand, where there is one. */
  readonly inHand?: boolean
  /** Dishes to fill idle floor with. */
  readonly spare?: readonly Dish[]
  /**
   * Firings of two fires, the first being as long as this one; null: those that a day to be fired twice has to choose from. For a day that one
   * fire cannot do, or as a remedy. With the second of a plan as well: those to go on to from it.
   */
  readonly secondFires?: (first: FiringOption['firing'] | null, second?: FiringOption['further']) => readonly FiringOption[]
  /** The fires that there are to choose from where the day, or its dishes, are changed so. */
  readonly firesFor?: (day: Day, dishes: readonly Dish[]) => DayFires
  /** What each dish of a receipt's file needs, by its id, where the front matter of that states the oven's heat, °C; absent where there are no receipts. */
  readonly heatStated?: (file: string, celsius: number) => ReadonlyMap<string, HeatNeed>
  /** Share of the work done, 0 … 1. */
  readonly progress?: (share: number) => void
  /** Asked now and then; true stops the work and throws `PlanCancelled`. */
  readonly cancelled?: () => boolean
}

/** The fires of a day, and the second ones that may be made for it. */
export interface DayFires extends Pick<PlanOptions, 'simulate' | 'secondFires'> {
  readonly firings: readonly FiringOption[]
}

/** A day on one fire: as laid out, and weighed again where not all of it can be had in time. */
export interface OnOneFire {
  readonly laid: Laid
  readonly weighed: Settled
}

export type Simulate = NonNullable<PlanOptions['simulate']>

/** Thrown when `cancelled` said so. */
export class PlanCancelled extends Error {
  constructor() {
    super('planning was stopped')
    this.name = 'PlanCancelled'
  }
}
