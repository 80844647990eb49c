import type {Band, Range} from '../lexicon/schema.js'
import type {AshBed, Firing, FloorShape, Forecast, OvenParameters, OvenSpec} from '../oven/types.js'
import type {Message} from '../receipt/types.js'
import type {DayAmount, Dish, Placed} from '../scale/types.js'

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

export type DayItem = DayAmount

/** Everything a plan is made from, as data. */
export interface PlanProblem {
  readonly day: Day
  readonly dishes: readonly Dish[]
  /** One forecast for each length of fire considered; time 0 is lighting. */
  readonly firings: readonly FiringOption[]
  /** Every fire that the day may have, where only some of them are looked at: by them it is judged how soon a dish could be had. */
  readonly anyFire?: readonly FiringOption[]
  readonly floor: FloorShape
  readonly mouth: {readonly width: number; readonly height: number}
  /** Height of the vault at its crown, m, and the air outside the oven, °C (20 where absent). */
  readonly vaultHeight?: number
  /** Ash left along one side of the floor, where nothing stands. */
  readonly ashBed?: AshBed
  readonly ambient?: number
  /** Set when part of the day has already happened. */
  readonly done?: DoneSoFar
}

/** An oven, and what its readings say of it. */
export interface Fired {
  readonly oven: OvenSpec
  /** From readings; the drawing's own where absent. */
  readonly parameters?: OvenParameters
}

/** A fire (and any later fires of the day) with the curve it gives. */
export interface FiringOption {
  readonly firing: Firing
  readonly forecast: Forecast
  /** Later fires, lit `minutes` after the first is lit. The oven stands empty from then until that fire's soak ends. */
  readonly further?: ReadonlyArray<{readonly minutes: number; readonly firing: Firing}>
}

/** When something was drawn and when it was set in again, minutes after midnight. */
export interface Returned {
  readonly out: number
  readonly again: number
}

/** What has already happened when a day is planned again. Times in minutes after midnight of the day. */
export interface DoneSoFar {
  readonly now: number
  /** When the fire was lit; null while it is not lit yet. */
  readonly lit: number | null
  /** Dishes already set in, with their places; `drawn` is null while a dish is still in. */
  readonly set: ReadonlyArray<{
    readonly dish: string
    readonly count: number
    readonly at: number
    readonly drawn: number | null
    readonly placed: readonly Placed[]
    /** It was lost before it was set in: `at` and `drawn` are when. */
    readonly lost?: true
    /** It was lost, and as much was made again and set in since: that counts in its place. */
    readonly instead?: true
    /**
     * It was drawn and set in again, minutes after midnight: `at` is then not when it was first set in but from when on a stay without a break
     * would have given it what it has of its heat.
     */
    readonly back?: Returned
    /**
     * It was looked at, and was not done: `at` is then not when it was set in (`setIn`) but from when on its stay would have given it what it can
     * have had, so that it is done at `until` at the soonest. Minutes after midnight.
     */
    readonly longer?: {readonly setIn: number; readonly looked: number; readonly until: number}
    /** It was set in again, and is not to be baked on: it stood outside for too long, or the oven has not the heat. It is taken to be out. */
    readonly inVain?: 'stood' | 'no heat'
  }>
  /** The plan that was being followed. */
  readonly plan: Plan | null
  /** Dishes that it knows nothing of, since nobody had asked for them, or for so many. */
  readonly anew?: ReadonlySet<string>
  /** That plan's doughs for what is not set in yet, in the order of their loads; absent where nothing is known of them. */
  readonly doughs?: readonly PlannedDough[]
}

/** A dough of a plan that was being followed. */
export interface PlannedDough {
  readonly dish: string
  /** The load of that plan in which it was to be set in. */
  readonly load: number
  /** When it was mixed, minutes after midnight; null where it is not mixed yet. */
  readonly mixed: number | null
  /** Mixed the evening before and kept cool. */
  readonly cool: boolean
  /** It is all there is of the dish: no other dough was made for it. */
  readonly whole?: true
  /** When its sponge was set; null where it is not yet, absent where it has none. */
  readonly sponge?: number | null
  /** When it was shaped, where it is already. */
  readonly shaped?: number
  /** It was looked at and had not risen. */
  readonly behind?: {
    /** Minutes by which it rises more slowly, in bulk or shaped as it is, than its receipt says. */
    readonly slow: number
    /** When it is looked at again, minutes after midnight. */
    readonly until: number
    /** It may be set in before that, for want of another place. */
    readonly early?: true
  }
}

/** An amount as the kitchen measures it, its item's id, and what a weight or measure of that is called in English. */
export interface AmountNamed {
  readonly kitchen: string
  readonly item: string
  readonly called: string
}

/** A value inside a phrase; the sheets write it as their reader is used to. */
export type PhraseValue =
  | string
  | number
  | {readonly unit: 'clock' | 'minutes' | 'celsius' | 'difference' | 'kilograms' | 'metres' | 'count'; readonly value: number}
  /** With `whole`, all batches of each are meant, or as many as matter: they are named once. */
  | {readonly unit: 'dishes'; readonly dishes: readonly string[]; readonly whole?: boolean}
  /** Amounts of a dish, each as the kitchen measures it with its item's id. */
  | {readonly unit: 'amounts'; readonly amounts: readonly AmountNamed[]}
  /** A word of a small closed set: 'back', 'middle', 'mouth'. */
  | {readonly unit: 'word'; readonly word: string}
  /** Phrases within a phrase, joined by semicolons; sentences follow each other as they are. */
  | {readonly unit: 'phrases' | 'sentences'; readonly phrases: readonly Phrase[]}

/** User-visible words as data: the id of a template of `plan/phrases.ts` and what stands in its blanks. */
export interface Phrase {
  readonly id: string
  readonly values: Readonly<Record<string, PhraseValue>>
}

/** What a dish has less than it should, where its limits were eased (see `plan/ease`); 0 where a limit is kept. */
export interface Eased {
  /** °C under its least heat when it is set in, and when it is drawn, at the coolest of its vessels. */
  readonly start: number
  readonly end: number
  /** Share of its likely dose that it has when drawn, at the coolest of its vessels; 1 where it has all. */
  readonly dose: number
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
    /** Where most of its vessels stand. */
    readonly zone?: 'back' | 'middle' | 'mouth' | 'across'
    /** True when it was already set in when the day was planned again. */
    readonly alreadyIn?: boolean
    /** Set where, on a day planned again, it has less than it should rather than be lost. */
    readonly eased?: Eased
  }>
  readonly placed: readonly Placed[]
}

/** One line of the day, in clock order. */
export interface Step {
  readonly at: number
  readonly action:
    | 'sponge'
    | 'mix'
    | 'rise'
    | 'shape'
    | 'prove'
    | 'light'
    | 'feed'
    | 'rake'
    | 'soak'
    | 'test'
    | 'load'
    | 'draw'
    | 'top up'
    | 'tend'
    | 'shut'
    | 'evening before'
  readonly dishes: readonly string[]
  readonly load: number | null
  /** The further loads for which the work is done at once: those of one dough that goes in part by part. */
  readonly further?: readonly number[]
  readonly say: string
  /** What to look for. */
  readonly sign: string | null
  readonly ifAhead: string | null
  readonly ifBehind: string | null
  readonly celsius: {readonly low: number; readonly likely: number; readonly high: number} | null
  /** The same words as data, so that they can be said in another language. */
  readonly words?: {
    readonly say: Phrase
    readonly sign: Phrase | null
    readonly ifAhead: Phrase | null
    readonly ifBehind: Phrase | null
  }
  /** At no hour of its own: `at` only says where it stands among the rest. */
  readonly untimed?: boolean
  /** Already done when the day was planned again. */
  readonly past?: boolean
}

/** A way out of a day that cannot be done, tried by planning it. */
export interface Remedy {
  readonly kind:
    | 'second fire'
    | 'earlier fire'
    | 'longer fire'
    | 'shorter fire'
    | 'more hands'
    | 'smaller batch'
    | 'not hot'
    | 'smaller vessel'
    | 'wider heat'
    | 'door open'
    | 'one move'
    | 'leave out'
    | 'late'
  /** True where planning the day with it gave a plan in which every dish has its place. */
  readonly works: boolean
  /** Further wood, kg, and further minutes late against this plan; less than 0 where it is less. */
  readonly wood: number
  readonly late: number
  readonly say: string
  readonly words: Phrase
  /** What to note in the log for the rest of the day to be planned with it, where that takes no more than a note. */
  readonly note?: string
}

/** A dish that is drawn after it is wanted, minutes after midnight. */
export interface Late {
  readonly dish: string
  readonly wanted: number
  readonly drawn: number
}

/** How the floor and its heat were used while the oven fell through a band. */
export interface BandBalance {
  readonly band: Band
  /** Minutes after midnight. */
  readonly from: number
  readonly to: number
  /** m²·h of usable floor, and of it used. */
  readonly floor: number
  readonly used: number
  /** MJ the loads took while the oven was in the band (first-order estimate). */
  readonly heat: number
  /** MJ above the air round it that the oven still holds when it leaves the band; absent where its curve comes of no simulation. */
  readonly left?: Range
}

/** What is left out of a plan for want of a place. */
export interface LeftOut {
  readonly vessels: number
  /** How many any plan on this fire has to leave out, under this model, as far as is proved. */
  readonly least: number
}

/** What is otherwise than in a plan made before, and why. */
export interface Change {
  /** Its id; null where the change is of no one dish. */
  readonly dish: string | null
  readonly what: string
  readonly why: string
  /** Minutes later, or, less than 0, earlier; 0 where it is no matter of time. */
  readonly minutes: number
  /** The same as data. */
  readonly words?: {readonly what: Phrase; readonly why: Phrase}
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
  readonly unplaced: ReadonlyArray<{
    readonly dish: string
    readonly rule: string
    readonly reason: string
    readonly remedies: readonly string[]
    /** Ids of the dish and of the fewest found that cannot be baked with it, or are in its way in this plan; one id where nothing else is. */
    readonly conflict?: readonly string[]
    readonly tried?: readonly Remedy[]
    /** The reason as data, so that it can be said in another language. */
    readonly words?: Phrase
  }>
  /** Dishes that are drawn after they are wanted; absent where none is. */
  readonly late?: readonly Late[]
  /** Ways out that change the day and not one dish alone, where something is left out or late; empty where none of those tried helps. */
  readonly ways?: readonly Remedy[]
  readonly score: {
    readonly lateMinutes: number
    readonly misfit: number
    readonly openings: number
    /** Openings while a receipt wants the door kept shut; absent where there are none. */
    readonly disturbed?: number
    /** Minutes by which what the day wants hot is drawn too soon for that, each part by itself; absent where nothing is. */
    readonly earlyMinutes?: number
    readonly idle: number
    readonly wood: number
    readonly total: number
    /** Share by which a plan of the same fire and lighting time that keeps as much in hand for each dish could be better, under this model; null where no bound was found. */
    readonly gap: number | null
    /** Lower bound on `total`, in the same units; null where none was found. */
    readonly bound?: number | null
    /** Absent where nothing is left out, and where it was not worked out. */
    readonly leftOut?: LeftOut
  }
  /** Every fire of the day, the first one first; times in minutes after midnight. */
  readonly fires?: ReadonlyArray<{readonly lit: number; readonly raked: number; readonly ready: number; readonly firing: Firing}>
  readonly balance?: readonly BandBalance[]
  /** °C·h over ambient still in the oven at the end of the last load, and the baking temperature then. */
  readonly left?: {readonly celsius: number; readonly at: number}
  /** Spare receipts that would fill idle hot floor, checked by placing them. */
  readonly suggestions?: ReadonlyArray<{
    readonly dish: string
    /** How many of its vessels, where there is no room for all. */
    readonly count?: number
    readonly at: number
    readonly draw: number
    readonly zone: string
    readonly say: string
    /** The same as data. */
    readonly words?: Phrase
  }>
  /** After planning again: what moved, and why. */
  readonly changes?: readonly Change[]
  readonly messages: readonly Message[]
}
