import type {ColdPlace, Range} from '../lexicon/schema.js'
import type {Today} from '../measure/today.js'
import type {AshBed, FloorShape} from '../oven/types.js'
import type {Place} from '../receipt/position.js'
import type {Inferred} from '../receipt/types.js'

/** A vessel's shape as it stands on the floor, metres. */
export interface Vessel {
  readonly name: string
  readonly footprint:
    | {readonly shape: 'circle'; readonly diameter: number}
    | {readonly shape: 'rectangle'; readonly length: number; readonly width: number}
  readonly height: number
  /** Half the thickness heat must cross, metres: the length of the Fourier number. */
  readonly halfThickness: number
  /** Millilitres it holds when filled as usual. */
  readonly millilitres: number
}

/**
 * Minutes that a dough takes before the oven. `mix` and `shape` are those of the kind: how they grow with the dough is for the plan
 * (`lexicon/dough-work`).
 */
export interface DoughTimes {
  /** Of a sponge or leaven that works before the dough is made of it; absent where there is none. */
  readonly sponge?: Range
  /** Another was set the evening before, and this one is made of it. */
  readonly again?: true
  /** Of hands. */
  readonly mix: number
  /** In bulk, between mixing and shaping. */
  readonly rise: number
  /** The receipt's range of that; absent where it gives none. */
  readonly bulk?: Range
  /** The cold place in which its receipt has it rise in bulk, and how long it rises in the warm before that, of `rise`. */
  readonly bulkIn?: {readonly place: ColdPlace['id']; readonly warm: number}
  /** Of hands. */
  readonly shape: number
  /** Between shaping and oven; absent where it goes in as soon as it is shaped. */
  readonly prove?: Range
  /** It proves in the cold; and the place its receipt names for that. */
  readonly cold?: true
  readonly proveIn?: ColdPlace['id']
  /** How long it waits, risen and shaped, before it is over-proved. */
  readonly hold: number
  /** How long it waits risen in bulk, where that is other. */
  readonly bulkHold?: number
  /** Something in it, egg or milk, keeps for no night but in the cold, and for four hours in the warm (`cold-rise.ts`). */
  readonly spoils?: true
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
  /** Minutes it may stay, where that is longer than its receipt's longest: what falls with the oven bears more than what bakes in an even heat. */
  readonly longest?: number
  /** Minutes whose dose will do, where that is less than the likely ones' (see `plan/ease`). */
  readonly enough?: number
  readonly falling: boolean
  /** Its minutes are of an oven held at `reference` by a thermostat, though it falls with this one: so is its dose. */
  readonly held?: true
  readonly overnight: boolean
  /** It dries, or nobody eats it: no meal waits for it. Absent of what is cooked. */
  readonly noMeal?: true
  /** It is left in through the night after it is done, and keeps without warmth: the oven may go cold on it. */
  readonly cools?: true
  /** Its receipt has it remain in the oven through the night, once it has baked its time. */
  readonly remains?: true
  /** Minutes from setting in that the receipt wants the door kept shut; absent where it says nothing of it. */
  readonly closed?: Range
}

/** Something that a receipt has done the evening before, at the size of the dish. */
export interface EveningTask {
  readonly does: 'soak' | 'set' | 'stand'
  /** The receipt's own words for it. */
  readonly words: string
  /** Which of the dish's `amounts`, by their place. */
  readonly items: readonly number[]
  /** Minutes after midnight of that day; absent where the receipt says no hour. */
  readonly hour?: number
}

/** A dish of a bake day, ready to be planned: so many vessels of one receipt. */
export interface Dish {
  /** Stable: slug of the receipt and batch number. */
  readonly id: string
  readonly title: string
  readonly file: string
  readonly kind: string
  readonly vessel: Vessel
  /** The vessel of its receipt, or the usual one of its kind, for which its time was given, where the day's is another. */
  readonly ownVessel?: string
  readonly count: number
  /**
   * Its vessel does not go into the oven: the amount a day's line may ask for instead, the dishes that line makes, and the ids of those it
   * stands in the place of. Absent where its vessel goes in, or no vessel of its shape does.
   */
  readonly instead?: {readonly amount: string; readonly dishes: readonly Dish[]; readonly of: readonly string[]}
  /** As many as the floor holds are asked for: the line of the day that does. */
  readonly fills?: number
  /** How many of its vessel are known to stand on the empty floor at once; the planner's own count where absent. */
  readonly atOnce?: number
  /** How many times the receipt is made, an exact fraction. */
  readonly times: string
  readonly need: HeatNeed
  readonly place: 'back' | 'middle' | 'mouth' | 'any'
  /** Its vessels are shifted aside for a moment where something is to be carried past them. */
  readonly shifts?: boolean
  /** One vessel, kg, and water it loses, kg. */
  readonly mass: number
  readonly water: number
  /** Minutes after midnight of the day. */
  readonly wantedBy: number | null
  readonly dough: DoughTimes | null
  readonly sign: string
  /** Raw meat, poultry or fish goes into it: it stands cold until it is set in. */
  readonly raw?: true
  /** Least safe temperature of its middle, °C, where raw meat, poultry or fish goes into it. */
  readonly core?: number
  /** It keeps without warmth when it is done. Absent where it does not, and of dough. */
  readonly keeps?: true
  /** It is eaten hot. Absent where it need not be. */
  readonly hot?: true
  /** White bread or a pie: it waits until what falls from very hot has been in half an hour (`plan/rules`). Absent where it need not. */
  readonly crust?: true
  /** The day wants it hot at its time, and so not drawn long before. */
  readonly wantedHot?: true
  /** What is to be done the evening before, as the receipt says; absent where it says nothing of it. */
  readonly evening?: readonly EveningTask[]
  /** The receipt wants the door left a little open, in these words. */
  readonly ajar?: string
  /** The receipt leaves it in the oven after its bake, in these words; for so many minutes at least, where it says how long. */
  readonly cooling?: {readonly words: string; readonly minutes?: number}
  /**
   * What its receipt has done to it while it bakes, in these words: again after `every` minutes, once `after` minutes from setting in, or at a
   * `share` of its bake; now and then where none of these is said.
   */
  readonly tending?: ReadonlyArray<{
    readonly words: string
    /** It is taken out then, filled and set in again: its crust is baked empty first. */
    readonly fills?: true
    readonly every?: number
    readonly after?: number
    readonly share?: number
  }>
  readonly feeds: Range
  readonly inferred: readonly Inferred[]
  /** Of these, what was decided when it was brought to this size: how many, eggs whole or weighed, batches, a time for another depth. */
  readonly sized: readonly Inferred[]
  readonly cautions: readonly string[]
  /** Work that its cautions ask for before it goes in and its receipt does not: as a clause, and what it takes, minutes. */
  readonly first?: ReadonlyArray<{readonly say: string; readonly takes: number}>
  /** Receipt amounts at this size: what to weigh out. */
  readonly amounts: ReadonlyArray<{
    readonly item: string
    readonly part: string
    readonly grams: Range | null
    readonly millilitres: Range | null
    readonly kitchen: string
    readonly exact: string | null
    /** What does the work of so much today; absent where nothing replaces it. */
    readonly today?: Today
  }>
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

/** One vessel for the floor. Times are minutes of any one clock; a vessel is on the floor from `in` until `out`. */
export interface FloorItem {
  readonly dish: string
  readonly number: number
  readonly footprint: Vessel['footprint']
  readonly height: number
  /** When it is set in; absent: with all the others, at the first opening. */
  readonly in?: number
  /** When it is drawn. */
  readonly out: number
  readonly place?: Dish['place']
  /** It already stands here and stays. */
  readonly fixed?: {readonly x: number; readonly y: number; readonly turn: number}
}

/** What is kept free on the floor. Metres. */
export interface FloorRules {
  /** Between two vessels; half of it to the wall. */
  readonly clearance: number
  /** Depth of the strip inside the mouth, as wide as the mouth, that stays empty. */
  readonly mouthFree: number
  /** Coals or ash left on the floor: a strip along one side. */
  readonly ashBed?: AshBed
}

/** The parts of an oven that decide what can stand on its floor. */
export interface FloorRoom {
  readonly floor: FloorShape
  readonly mouth: {readonly width: number; readonly height: number}
  readonly vaultHeight: number
  readonly rules?: Partial<FloorRules>
}

/** A vessel that has to be shifted to reach another: offered and counted, never hidden. */
export interface Move {
  readonly dish: string
  readonly number: number
  /** The vessel behind it, and whether it is being set in or drawn, and when. */
  readonly toReach: {readonly dish: string; readonly number: number}
  readonly why: 'set in' | 'draw'
  readonly at: number
}

/** Why a set of vessels has no place. `saved` is a packing that works at the price of the moves it names. */
export interface FloorConflict {
  readonly rule: 'mouth width' | 'mouth height' | 'vault height' | 'too large' | 'area' | 'room' | 'reach'
  readonly reason: string
  readonly items: ReadonlyArray<{readonly dish: string; readonly number: number}>
  readonly saved?: {readonly placed: readonly Placed[]; readonly moves: readonly Move[]}
}

export type Packing = {readonly placed: readonly Placed[]} | {readonly conflict: FloorConflict}

/** A rule of the floor that a placement breaks, found by the checker. */
export interface PlacementFault {
  readonly rule: 'overlap' | 'off the floor' | 'kept free' | 'mouth' | 'vault' | 'reach' | 'unknown vessel'
  readonly vessels: ReadonlyArray<{readonly dish: string; readonly number: number}>
  /** By how much, metres. */
  readonly by: number
  readonly reason: string
}

/** How much of one receipt the day asks for: an item of `day.md`. */
export interface DayAmount {
  readonly file: string
  readonly title: string
  readonly amount: string | null
  readonly wantedBy: number | null
  /** It is wanted hot at that time (“hot at 6 pm”). */
  readonly hot?: true
  /** Of what is to fill the floor: the most vessels that the day has a place for, where that is known, and what keeps more out. */
  readonly atMost?: number
  readonly limit?: 'heat' | 'hands' | 'others'
  /** So many vessels of it there are already, on a day that has begun: only the others are made. */
  readonly had?: number
  readonly line: number
  readonly column: number
  /** Where the link's target stands, and each word of the amount: for messages. */
  readonly targetAt?: Place
  readonly amountAt?: readonly Place[]
}

/** The part of a bake day that scaling reads. */
export interface DayToScale {
  readonly people: number
  readonly items: readonly DayAmount[]
  readonly spare: readonly DayAmount[]
  /** What can be mixed at once, kg of dough or batter. */
  readonly bowl?: number
  /** File the messages point to; absent: `day.md`. */
  readonly source?: string
}
