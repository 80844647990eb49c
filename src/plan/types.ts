import type {Firing, Forecast} from '../oven/types.js'
import type {Message} from '../receipt/types.js'
import type {Dish, Placed} from '../scale/types.js'

/** A bake day as its folder states it. Times in minutes after midnight of `date`; next day's are ≥ 1440. */
export interface Day {
  readonly title: string
  /** ISO 8601 date and IANA time zone, if stated. */
  readonly date: string
  readonly zone: string | null
  readonly people: number
  readonly fireFrom: number
  readonly serve: number
  readonly hands: number
  readonly firings: number
  /** The mixing bowl's size, kg of dough or batter, where stated: larger batches are split. */
  readonly bowl?: number
  readonly items: readonly DayItem[]
  /** Receipts to fill idle hot floor with. */
  readonly spare: readonly DayItem[]
}

export interface DayItem {
  /** Path as written in the link, relative to the day's folder. */
  readonly file: string
  readonly title: string
  /** "12 loaves", "for 40", "fill the floor", "3 kg"; null: for the day's people. */
  readonly amount: string | null
  readonly wantedBy: number | null
  readonly line: number
  readonly column: number
}

/** Everything a plan is made from, as data. */
export interface PlanProblem {
  readonly day: Day
  readonly dishes: readonly Dish[]
  /** One forecast for each length of fire considered; time 0 is lighting. */
  readonly firings: ReadonlyArray<{readonly firing: Firing; readonly forecast: Forecast}>
  readonly floor: import('../oven/types.js').FloorShape
  readonly mouth: {readonly width: number; readonly height: number}
}

/** The dishes set in at one opening of the door. */
export interface Load {
  readonly number: number
  /** Minutes after midnight. */
  readonly at: number
  readonly dishes: ReadonlyArray<{
    readonly dish: string
    readonly count: number
    readonly draw: {readonly low: number; readonly likely: number; readonly high: number}
    readonly celsiusIn: {readonly low: number; readonly likely: number; readonly high: number}
    readonly celsiusOut: {readonly low: number; readonly likely: number; readonly high: number}
  }>
  readonly placed: readonly Placed[]
}

/** One line of the day, in clock order. */
export interface Step {
  readonly at: number
  readonly action: 'mix' | 'rise' | 'shape' | 'light' | 'feed' | 'rake' | 'soak' | 'test' | 'load' | 'draw' | 'shut' | 'evening before'
  readonly dishes: readonly string[]
  readonly load: number | null
  readonly say: string
  /** What to look for. */
  readonly sign: string | null
  readonly ifAhead: string | null
  readonly ifBehind: string | null
  readonly celsius: {readonly low: number; readonly likely: number; readonly high: number} | null
}

export interface Plan {
  readonly possible: boolean
  readonly firing: Firing
  readonly lit: number
  readonly raked: number
  readonly ready: number
  readonly forecast: Forecast
  readonly loads: readonly Load[]
  readonly steps: readonly Step[]
  readonly unplaced: ReadonlyArray<{readonly dish: string; readonly rule: string; readonly reason: string; readonly remedies: readonly string[]}>
  readonly score: {
    readonly lateMinutes: number
    readonly misfit: number
    readonly openings: number
    readonly idle: number
    readonly wood: number
    readonly total: number
    /** Share by which a better plan could be better, under this model; null where no bound was found. */
    readonly gap: number | null
  }
  readonly messages: readonly Message[]
}
