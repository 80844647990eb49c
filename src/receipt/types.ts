import type {Band, ColdPlace, Range} from '../lexicon/schema.js'
import type {StatedWeight} from '../measure/convert.js'
import type {Today} from '../measure/today.js'

/**
 * The contract of `hearthfall translate --format json` (design §3). Later versions add fields and keep these. Offsets are UTF-16
 * offsets into the file as read, and `source.slice(start, end) === text`.
 */
export interface Span {
  readonly text: string
  readonly start: number
  readonly end: number
}

/** What the reader finds before conversion: exact, with the words it stands in. */
export interface ReadIngredient extends Span {
  /** Amount in `measure`; null where the text is indefinite. */
  readonly amount: {readonly low: number; readonly high: number} | null
  /** Exact fraction as `n/d`, of the low end where it is a range; null where indefinite. */
  readonly exact: string | null
  /** Exact fraction of the high end, where the text gives a range. */
  readonly exactHigh?: string
  /** Canonical measure; `indefinite` where there is no amount. */
  readonly measure: string
  /** The item's id where the lexicon knows it, else the words as written, singular. */
  readonly item: string
  /** False where the item's words are not in the lexicon (reported, carried through). */
  readonly known: boolean
  /** The measure's own words as written ("tea-cupfuls"), for notes. */
  readonly measureText?: string
  /** "about", "heaped", "scant", "rather more than", "good", as written. */
  readonly hedges: readonly string[]
  /** Preparation words ("sifted", "well beaten"), for the handout. */
  readonly prepared?: string
  /** Which mixture of the receipt it belongs to: '' the main one, "crust", "icing". */
  readonly part: string
  /** 0–1: how sure the reading is; below 0.6 it is shown as doubtful. */
  readonly confidence: number
  /** Another possible reading and the front-matter line that would settle it. */
  readonly other?: {readonly reading: string; readonly settle: string}
  readonly notes: readonly string[]
  /** `measure` is `count` only since no measure is written, or none the lexicon knows, of a thing that nobody counts. */
  readonly unmeasured?: true
  /** `measure` is ours: none is written, and the rest of the list is in it. */
  readonly takenAs?: 'gram'
  /** It is ours by how large the list's numbers are, since nothing in it is measured. */
  readonly takenBy?: 'size'
  /**
   * The baker's percentage that the text gives for it, where its amount is told so: percent of the flour's weight. Where the text gives a
   * weight to reckon from, `amount` is in grams and `of` is the words of that weight.
   */
  readonly bakersPercent?: {readonly low: number; readonly high: number; readonly of?: string}
  /** The weight the text gives beside a count or a measure; `amount` stays what is counted or measured. */
  readonly stated?: StatedWeight
  /** How many there are by what the text says of others (exact, `n/d`), where `amount` is null: the eggs by whose weight sugar is told. */
  readonly reckoned?: string
  /** Parts of the eggs that are left out: `count` (exact, `n/d`) whites or yolks of the `amount`, which counts whole ones. */
  readonly lacks?: {readonly item: 'egg white' | 'egg yolk'; readonly count: string; readonly text: string}
}

export interface Ingredient extends ReadIngredient {
  /** Without what `lacks`. */
  readonly grams: Range | null
  readonly millilitres: Range | null
  /** It goes into the filling, where paste and filling are written as one mixture. */
  readonly filling?: true
  /** Meat, poultry or fish that goes in cooked: by fire, or smoked or tinned, ready to be eaten. Absent where it is raw, or its words do not tell. */
  readonly cooked?: 'heated' | 'ready'
  /** What does its work today; absent where nothing replaces it. */
  readonly today?: Today
  /** Ids of rows of `lexicon/sources`. */
  readonly sources: readonly string[]
  /** The chain of `--why`: one line a step, with its source id. */
  readonly why: ReadonlyArray<{readonly step: string; readonly source?: string}>
}

export interface OvenPhrase extends Span {
  readonly band: Band
  readonly celsius: {readonly low: number; readonly high: number}
  readonly sources: readonly string[]
  /** Where the phrase names two temperatures that disagree, a fan oven, a comparison ("as hot as for bread"). */
  readonly notes?: readonly string[]
  /** The phrase names temperatures that do not agree ("350 °F (200 °C)"). */
  readonly disagree?: boolean
  /** Said with an "if" ("if the oven be too hot it will burn"): not the heat the dish wants. */
  readonly condition?: boolean
  /** The receipt warns of it ("never in a fierce oven"): no heat the dish wants, and hotter than `celsius.high` it is not to be. */
  readonly against?: true
  /** What the oven has come down to when the thing is set in: "when it has cooled to about 60 °C". */
  readonly fallenTo?: true
  /** It stands in a note: the receipt's own heat where it gives no other, else said of another way, with `condition`. */
  readonly note?: true
  /** False where a word stands for a heat that no row knows ("a zestful oven"): any heat. */
  readonly known?: false
}

export interface TimePhrase extends Span {
  readonly minutes: {readonly low: number; readonly high: number}
  readonly of: 'bake' | 'rise' | 'boil' | 'stand' | 'other'
  /** Of a dough: its sponge works, it rises in bulk, or it proves after it is shaped. */
  readonly stage?: 'sponge' | 'rise' | 'prove'
  /** Of a sponge's: its own words or part of the receipt set, feed or build it, where else only what waits tells that it is one. */
  readonly anew?: true
  /** Of a rising or a proving: the cold place that the receipt has it in. */
  readonly place?: ColdPlace['id']
  /** It is the night, and the thing is left in the oven through it. */
  readonly overnight?: true
  /** … and is the better for it, by its receipt. */
  readonly better?: true
  /** The thing is left in the oven so long after its bake, as that cools or is turned off: no part of the bake. */
  readonly cooling?: true
  /** It goes on where the time before it ended: "then 25 minutes at 200 °C", "15 minutes more with the lid off". */
  readonly then?: true
  /** It stands in a note: the receipt's own time where it gives no other, else of another way, and `of` is "other". */
  readonly note?: true
  /** It is the whole of the times beside it: "altogether 75 minutes". */
  readonly total?: true
  /**
   * It goes by the weight of the piece ("20 minutes per 500 g, and 20 over"): so long for so many grams, and what is added once. `minutes`
   * is worked out, and `of` what it is for, where the receipt states what the piece weighs; else `of` is "other".
   */
  readonly byWeight?: {
    readonly minutes: {readonly low: number; readonly high: number}
    readonly grams: number
    readonly over: {readonly low: number; readonly high: number}
    readonly of: 'bake' | 'boil'
  }
}

/** That a thing is left in the oven after its bake, as that cools or is turned off. */
export interface LeftToCool extends Span {
  /** How long; absent where the words do not say. */
  readonly minutes?: {readonly low: number; readonly high: number}
}

/** What is done to a thing at times while it bakes. */
export interface Tending extends Span {
  readonly does: 'stir' | 'turn' | 'baste' | 'fill'
  /** Again after so many minutes; `after` once after so many from setting in; `share` once at so much of its bake. None of these: now and then. */
  readonly every?: number
  readonly after?: number
  readonly share?: number
}

/** That the door is to be kept shut ("do not open the oven for two hours"), and how long from setting in. */
export interface DoorRule extends Span {
  /** Minutes, where the text says them or a row of `lexicon/stay-words` stands for a state ("till the dough is set"). */
  readonly minutes?: Range
  /** Else the share of the baking time. */
  readonly share?: Range
  readonly sources: readonly string[]
}

/** Something that the receipt has done the evening before it is baked. */
export interface EveningBefore extends Span {
  /** Put to soak, a sponge or leaven set, or mixed to stand overnight. */
  readonly does: 'soak' | 'set' | 'stand'
  /** Which of `ingredients`, by their place; none where the words name a sponge and not what is in it. */
  readonly items: readonly number[]
  /** Minutes after midnight of that day; absent where the receipt says no hour. */
  readonly hour?: number
}

export interface Yield extends Span {
  readonly low: number
  readonly high: number
  /** persons, loaves, cakes, … */
  readonly of: string
  /** Only how the dough is divided tells it: each piece is taken as one. */
  readonly divided?: true
  /** In how many vessels they are made: "one tray, 24 squares". */
  readonly vessels?: number
}

/** How many vessels the method bakes in, by the words that name them: "a 9-inch pie plate", "two dishes". */
export interface VesselsSaid extends Span {
  readonly count: number
}

/** The receipt's own words for when a thing is done, with their row of `lexicon/doneness`. */
export interface DoneSign extends Span {
  readonly id: string
  readonly means: string
  readonly centre?: {readonly low: number; readonly high: number}
}

/** Something the text leaves out, filled from the kind of dish, always marked as ours. */
export interface Inferred {
  readonly field: string
  readonly value: string
  readonly why: string
  /** Of a vessel whose other sizes the receipt states, and neither its depth nor a name that goes with one. */
  readonly depth?: 'assumed'
  /** Of a vessel of which nothing in the receipt says how large it is. */
  readonly size?: 'assumed'
}

/** Raw meat, poultry or fish that the text has put in without an amount, with the sentence that does. */
export interface FleshTold extends Span {
  readonly item: string
}

export interface CautionNote {
  readonly id: string
  readonly text: string
  readonly source: string
  /** Work before the dish goes in that the receipt does not ask for: as a clause, and what it takes, minutes. */
  readonly first?: {readonly say: string; readonly takes: number}
}

/** What front matter states. Lengths m, durations minutes, temperatures °C. */
export interface ReceiptFacts {
  readonly year?: number
  readonly place?: string
  readonly serves?: number
  readonly vessel?: string
  readonly oven?: string
  readonly bake?: {readonly low: number; readonly high: number}
  readonly rise?: {readonly low: number; readonly high: number}
  readonly prove?: {readonly low: number; readonly high: number}
  readonly holdsHeat?: boolean
}

/** A receipt as read, before conversion. */
export interface ReadReceipt {
  readonly file: string
  readonly title: string
  /** 1-based line of the title. */
  readonly line: number
  /** The receipt's own text: `source.slice(start, end)`. */
  readonly start: number
  readonly end: number
  readonly year: number | null
  readonly place: string | null
  /** Id of a row of `lexicon/kinds`, or null. */
  readonly kind: string | null
  readonly ingredients: readonly ReadIngredient[]
  readonly oven: readonly OvenPhrase[]
  readonly times: readonly TimePhrase[]
  /** The risings of which the text says that they are and not how long; absent where there is none. */
  readonly untimed?: ReadonlyArray<'rise' | 'prove'>
  /** Absent where the text says nothing of keeping the door shut. */
  readonly door?: readonly DoorRule[]
  /** What it has done the evening before; absent where it says nothing of it. */
  readonly evening?: readonly EveningBefore[]
  /** The words that want the door left a little open while it bakes or dries; absent where none do. */
  readonly ajar?: Span
  /** That it is left in the oven after the bake; absent where the text says nothing of it. */
  readonly cooling?: LeftToCool
  /** What is done to it while it bakes; absent where the text says nothing of it. */
  readonly tending?: readonly Tending[]
  /** It bakes while the heat falls, by its own words; absent where it does not say so. */
  readonly falls?: true
  /** How much it makes; where no count of that is given, how many people it feeds. */
  readonly serves: Yield | null
  /** How many people it feeds, beside a count of what it makes: "Makes 2 loaves. Serves 12." */
  readonly feeds?: Yield
  readonly facts: ReceiptFacts
  /** The words that say that it is boiled or steamed, and not baked. */
  readonly boiled?: string
}

/** A receipt after conversion: an element of `receipts` in the JSON. */
export interface Receipt extends Omit<ReadReceipt, 'ingredients'> {
  readonly ingredients: readonly Ingredient[]
  /** Absent where there is none. */
  readonly fleshTold?: readonly FleshTold[]
  readonly inferred: readonly Inferred[]
  readonly cautions: readonly CautionNote[]
  readonly allergens: readonly string[]
  /** Absent where the method does not tell it. */
  readonly vessels?: VesselsSaid
  /** The method bakes in several and says no number of them: "between sandwich tins". */
  readonly several?: Span
  /** Its meat, poultry or fish does not go in whole: "1 chicken, jointed". */
  readonly cutUp?: Span
  /** "till a straw comes out clean", as the receipt says it. */
  readonly signs?: readonly DoneSign[]
}

export interface Message {
  readonly file: string
  readonly line: number
  readonly column: number
  readonly severity: 'error' | 'warning' | 'info'
  readonly rule: string
  readonly reason: string
  /** What to write instead. */
  readonly suggest?: string
  /** The times of day in these words, written by `writeClock`: minutes after midnight of the bake day, for whoever writes them otherwise. */
  readonly times?: readonly number[]
}

/** The whole of `translate --format json`. */
export interface Translation {
  readonly format: 1
  readonly receipts: readonly Receipt[]
  readonly messages: readonly Message[]
}
