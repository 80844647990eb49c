import {z} from 'zod'

/**
 * The shapes of every table of the lexicon. Data is not code: a new word is a new row, and each row names its source.
 * `tests/lexicon.test.ts` checks every table against these schemas.
 */

/** A figure with its uncertainty: `low` ≤ `likely` ≤ `high`, all in the same unit. */
export const rangeSchema = z
  .object({low: z.number(), likely: z.number(), high: z.number()})
  .refine((r) => r.low <= r.likely && r.likely <= r.high, {message: 'low ≤ likely ≤ high'})

/** A figure with its uncertainty: `low` ≤ `likely` ≤ `high`, all in the same unit. */
export interface Range {
  readonly low: number
  readonly likely: number
  readonly high: number
}

/** Where a measure or word was used; `us` and `uk` also before there was a United States. */
export const placeSchema = z.enum(['us', 'uk', 'au', 'eu'])
export type Place = z.infer<typeof placeSchema>

/** How far a source can be trusted, in the order a reader would want them. */
export const sourceKindSchema = z.enum([
  'standard',
  'dataset',
  'handbook',
  'book',
  'study',
  'account',
  'common practice',
  'memory',
])

/** A published source, or one of the two honest stand-ins: `common-practice` and `memory`. */
export const sourceSchema = z.object({
  id: z.string().regex(/^[a-z0-9-]+$/),
  title: z.string(),
  kind: sourceKindSchema,
  year: z.number().int().optional(),
  where: z.string().optional(),
  note: z.string().optional(),
})
export type Source = z.infer<typeof sourceSchema>

/** What a measure was worth somewhere, some time. Absent limits are open. `size` is grams (mass) or millilitres (volume) or minutes. */
export const sizeSchema = z.object({
  size: rangeSchema,
  place: placeSchema.optional(),
  from: z.number().int().optional(),
  to: z.number().int().optional(),
  /** Only for these things: ale, wine, dry goods. */
  of: z.enum(['ale', 'wine', 'dry', 'liquid']).optional(),
  source: z.string(),
  note: z.string().optional(),
})

/** A measure: `id` is the canonical singular name of the translate contract. */
export const measureSchema = z.object({
  id: z.string(),
  dimension: z.enum(['mass', 'volume', 'count', 'comparison', 'length', 'money', 'weight-of-piece', 'indefinite']),
  /** The unit's name in `convert-units`, where its factor is exact there (metric). */
  unit: z.enum(['mg', 'g', 'kg', 'ml', 'cl', 'dl', 'l']).optional(),
  /** Every spelling, singular and plural, lower case, without trailing full stop. */
  spellings: z.array(z.string()).min(1),
  sizes: z.array(sizeSchema),
  note: z.string().optional(),
})
export type Measure = z.infer<typeof measureSchema>

/** The weight of one piece of an item: an egg, a lemon, a clove of garlic, a slice of bread. Grams. */
export const pieceSchema = z.object({
  measure: z.string(),
  grams: rangeSchema,
  from: z.number().int().optional(),
  to: z.number().int().optional(),
  source: z.string(),
  note: z.string().optional(),
})

/** An item: an ingredient as a thing one buys or makes. */
export const itemSchema = z.object({
  id: z.string(),
  spellings: z.array(z.string()),
  group: z.enum([
    'flour',
    'meal',
    'starch',
    'sugar',
    'syrup',
    'fat',
    'dairy',
    'egg',
    'leaven',
    'liquid',
    'spirit',
    'fruit',
    'dried fruit',
    'nut',
    'spice',
    'herb',
    'salt',
    'vegetable',
    'pulse',
    'meat',
    'fish',
    'bread',
    'made dish',
    'colour',
    'gelling',
    'other',
  ]),
  /** Of a leaven, and of what is made with one: what makes the gas. An acid is part of the soda's. */
  raises: z.enum(['yeast', 'sourdough', 'soda']).optional(),
  /** Grams a millilitre, as it is spooned or poured. */
  density: rangeSchema.optional(),
  densitySource: z.string().optional(),
  /** Density as it was filled up to a year, where that differs: sugar pounded from the loaf, coarser salt. */
  oldDensity: z.object({density: rangeSchema, to: z.number().int(), source: z.string(), note: z.string().optional()}).optional(),
  /** Number of the food in USDA SR28 whose household weights the density stands for. */
  ndb: z
    .string()
    .regex(/^\d{5}$/)
    .optional(),
  pieces: z.array(pieceSchema).default([]),
  /**
   * The item that is meant where one of these spellings is counted: “a pinch of red pepper” is the spice, “2 red peppers” are not. `from`: only
   * where there are so many, as “3 ribs of beef” are those of one joint and “a rib of beef” is a joint; `single`: those of which a one in figures is
   * one too, “1 rib of beef”.
   */
  counted: z
    .object({
      item: z.string(),
      spellings: z.array(z.string()).min(1),
      from: z.number().int().optional(),
      single: z.array(z.string()).min(1).optional(),
    })
    .optional(),
  /** Names that mean it in doubt, where a list has them by themselves: the thighs of no bird that is named. */
  alone: z.array(z.string()).min(1).optional(),
  /** The name in a shop today, where it differs. */
  modern: z.string().optional(),
  /**
   * What replaces it where it is no longer sold, or does as well where it is (`sold`): the item, the factor by weight (a range; of a liquid
   * yeast grams a millilitre) and how.
   */
  replacedBy: z
    .object({item: z.string(), factor: rangeSchema, how: z.string(), source: z.string(), sold: z.literal(true).optional()})
    .optional(),
  /** The 14 allergens of Regulation (EU) 1169/2011 annex II and the US FALCPA list, by their plain names. */
  allergens: z.array(z.string()).default([]),
  /** Ids of rows of `cautions`. */
  cautions: z.array(z.string()).default([]),
  sources: z.array(z.string()).min(1),
  note: z.string().optional(),
})
export type Item = z.infer<typeof itemSchema>

/** The four bands of baking temperature. */
export const bandSchema = z.enum(['hot', 'moderate', 'slow', 'slack'])
export type Band = z.infer<typeof bandSchema>

/** A phrase for heat. `celsius` is the range of baking temperature it stands for. */
export const ovenWordSchema = z.object({
  id: z.string(),
  phrases: z.array(z.string()).min(1),
  band: bandSchema,
  celsius: z.object({low: z.number(), high: z.number()}),
  /**
   * How the phrase is used: said of an oven or a heat (the default), of the way of baking ("bake gently"), of the heat another thing is
   * baked in ("as hot as for bread"), of the heat it leaves behind ("after the bread is drawn"), of its company ("with brown bread"), or
   * words that stand as they are.
   */
  use: z.enum(['adjective', 'adverb', 'as for', 'after', 'with', 'fixed']).optional(),
  place: placeSchema.optional(),
  from: z.number().int().optional(),
  to: z.number().int().optional(),
  source: z.string(),
  note: z.string().optional(),
})
export type OvenWord = z.infer<typeof ovenWordSchema>

/** A word that sharpens or softens a heat word: "very", "rather", "not too". */
export const hedgeSchema = z.object({
  id: z.string(),
  phrases: z.array(z.string()).min(1),
  /** Away from moderate, towards it, not beyond the word's own middle, or no change. */
  effect: z.enum(['more', 'less', 'cap', 'none']),
  /** How far, °C. */
  shift: z.number(),
  source: z.string(),
})
export type Hedge = z.infer<typeof hedgeSchema>

/** Words that say how long a thing stays in the oven: left in through the night, or the door kept shut. */
export const stayWordSchema = z.object({
  id: z.string(),
  phrases: z.array(z.string()).min(1),
  /**
   * `night`: a stretch of time that is the night; `better`: that a thing gains by it; `inside`: beside it, left in; `into`, `beside`: before "oven", within it or not;
   * `elsewhere`: between oven and night, that it no longer stands in the oven. `opens`, `shut`, `keeps`, `door`, `never`, `until`,
   * `during`: the parts of a rule about the door; `falls`: that it bakes while the heat falls, `after` beside it: of the time after the baking; `off`, `cools`, `leaves`, `gone`, `or`: that it is left in an oven that is off or cools, was taken out of it, or that it is one of two ways; `stirs`, `turns`, `bastes`: what is done to it while it bakes, `often`, `half-way`, `every`: when, `bakes`: in the oven, `elsewhere-tended`: on the hob; `blind`, `fills`: that a crust is baked empty, and what comes into it then; `state`, `share`: how long, where it is no stretch of time.
   */
  use: z.enum([
    'night',
    'better',
    'inside',
    'into',
    'beside',
    'elsewhere',
    'opens',
    'shut',
    'ajar',
    'ajar-door',
    'falls',
    'after',
    'off',
    'cools',
    'leaves',
    'gone',
    'or',
    'stirs',
    'turns',
    'bastes',
    'often',
    'half-way',
    'every',
    'again',
    'bakes',
    'elsewhere-tended',
    'blind',
    'fills',
    'keeps',
    'door',
    'never',
    'until',
    'during',
    'state',
    'share',
  ]),
  /** Minutes after it is set in. */
  minutes: rangeSchema.optional(),
  /** Share of the time it bakes. */
  share: rangeSchema.optional(),
  source: z.string(),
  note: z.string().optional(),
})
export type StayWord = z.infer<typeof stayWordSchema>

/** A unit of time, in minutes, as receipts spell it. */
export const timeUnitSchema = z.object({
  id: z.string(),
  minutes: z.number().positive(),
  words: z.array(z.string()).min(1),
  source: z.string(),
})
export type TimeUnit = z.infer<typeof timeUnitSchema>

/** A stretch of time that is said without a number, in minutes from its least to its most. */
export const timeSpanSchema = z.object({
  id: z.string(),
  minutes: z.tuple([z.number(), z.number()]).readonly(),
  phrases: z.array(z.string()).min(1),
  source: z.string(),
})
export type TimeSpan = z.infer<typeof timeSpanSchema>

/** Small words about stretches of time. */
export const timeWordSchema = z.object({
  id: z.string(),
  /**
   * `filler`, `hedge`: between and before a number and its unit; `joiner`: between the two ends of a range; `quarters`, `part`, `number`: of the
   * number; `opens`, `follows`, `skips`: with what one begins, what may stand behind it, what is none; `more`, `goes on`, `returns`: it is baked on;
   * `other case`: the second of two is instead of the first; `covers`, `works`: what is done within one; `label of …`: what stands before one in a
   * line of times says what it is for.
   */
  use: z.enum([
    'filler',
    'hedge',
    'prime',
    'joiner',
    'quarters',
    'part',
    'number',
    'opens',
    'follows',
    'label of work',
    'label of a wait',
    'label of a rise',
    'label of a bake',
    'beside night',
    'skips',
    'abbreviated',
    'more',
    'returns',
    'goes on',
    'other case',
    'covers',
    'works',
  ]),
  words: z.array(z.string()).min(1),
  /** Of a `part` or `number`: the fraction it stands for. */
  value: z
    .string()
    .regex(/^\d+\/\d+$/)
    .optional(),
  source: z.string(),
})
export type TimeWord = z.infer<typeof timeWordSchema>

/** Words that tell the stages of a dough apart. */
export const risingWordSchema = z.object({
  id: z.string(),
  phrases: z.array(z.string()).min(1),
  /**
   * `leaven`: what makes dough rise; `sponge`: what rises before the dough is made, what `sets` it, and what is done to it at once (`stirs`),
   * and what `lets` it wait;
   * `main`: the dough by itself, over what goes into it; `rest`: what is left for it, beside the sponge; `kneads`, `shapes`, `bakes`: the work between;
   * `into` with `pieces` or `vessels` behind it is a shaping too, a vessel not where what is `mixed` goes into it, nor where it only stands
   * there and rises, unless something `puts` it there; `forms`: so is what forms or fills pieces or vessels, and what `wraps` the dough `around`
   * something else, in no `cloth`; `makes`: what a dough is made into may stand behind it; `rises`: that it does;
   * `soaks`: a wait that is no rising, unless it is something `chilled` that waits, or what is shaped; `dough`: what waits, where it is one;
   * `refrigerator`, `cellar`: a cold place that it rises in (ids of `coldPlaces`), `chills`: that it is put into the first.
   */
  use: z.enum([
    'leaven',
    'sponge',
    'sets',
    'lets',
    'adds',
    'rest',
    'autolyse',
    'proves',
    'worked',
    'puts',
    'makes',
    'stirs',
    'main',
    'kneads',
    'shapes',
    'into',
    'pieces',
    'vessels',
    'forms',
    'wraps',
    'around',
    'cloth',
    'mixed',
    'rises',
    'soaks',
    'bakes',
    'dough',
    'chilled',
    'refrigerator',
    'cellar',
    'chills',
  ]),
  source: z.string(),
})
export type RisingWord = z.infer<typeof risingWordSchema>

/** How kneading grows with the dough: a kind's minutes are for doughs up to `upTo` kg, and `perKilogram` more for each kilogram beyond. */
export const kneadingSchema = z.object({
  id: z.string(),
  upTo: z.number().positive(),
  perKilogram: z.number().positive(),
  source: z.string(),
})
export type Kneading = z.infer<typeof kneadingSchema>

/** Minutes of hands to shape one vessel's dough; words of the names of the vessels it is for, none for all others. */
export const shapingSchema = z.object({
  id: z.string(),
  vessels: z.array(z.string()),
  minutes: z.number().positive(),
  source: z.string(),
})
export type Shaping = z.infer<typeof shapingSchema>

/** Minutes of hands to make up what has no dough, for the kinds named or, with none, every other; minutes it may wait before it goes in. */
export const makingSchema = z.object({
  id: z.string(),
  kinds: z.array(z.string()),
  minutes: z.number().positive(),
  perKilogram: z.number().nonnegative(),
  waits: z.number().positive(),
  source: z.string(),
})
export type Making = z.infer<typeof makingSchema>

/** A cold place for a dough: °C, how many times as slowly it rises there, and whether what has egg or milk in it may stand there overnight. */
export const coldPlaceSchema = z.object({
  id: z.enum(['cellar', 'refrigerator']),
  celsius: z.object({low: z.number(), high: z.number()}),
  slower: z.object({low: z.number().min(1), high: z.number().min(1)}),
  safe: z.literal(true).optional(),
  source: z.string(),
})
export type ColdPlace = z.infer<typeof coldPlaceSchema>

/** Minutes for which a dough that spoils may stand warm, and what rounding to clock times adds to that. */
export const warmDoughSchema = z.object({
  id: z.string(),
  minutes: z.number().positive(),
  rounding: z.number().nonnegative(),
  /** Of what is else egg or dairy: items that stand as long as flour does. */
  keeps: z.array(z.string()),
  /** Parts of a receipt that are not mixed into its dough. */
  apart: z.array(z.string()),
  source: z.string(),
})
export type WarmDough = z.infer<typeof warmDoughSchema>

/** A sign in the words of receipts that a thing is done, or not yet. */
export const donenessSchema = z.object({
  id: z.string(),
  phrases: z.array(z.string()).min(1),
  /** What it means, plainly. */
  means: z.string(),
  /** Centre temperature °C it goes with, where one is known. */
  centre: z.object({low: z.number(), high: z.number()}).optional(),
  from: z.number().int().optional(),
  to: z.number().int().optional(),
  place: placeSchema.optional(),
  source: z.string(),
  note: z.string().optional(),
})
export type Doneness = z.infer<typeof donenessSchema>

/** A plain sentence about harm, and what to do instead. */
export const cautionSchema = z.object({
  id: z.string(),
  title: z.string(),
  /** The harm, in one plain sentence. */
  harm: z.string(),
  /** What to do instead. */
  instead: z.string(),
  source: z.string(),
  /** Words in a receipt's text that raise it, beside items that carry its id. */
  words: z.array(z.string()).default([]),
  /** Work before the dish goes in, which is told when it is made up unless its receipt asks for it. */
  first: z
    .object({
      /** What is done, as a clause. */
      say: z.string(),
      /** Words by which a receipt asks for it, and by which it is needless. */
      asked: z.array(z.string()),
      instead: z.array(z.string()),
      /** What it takes at least, and with what belongs to it, minutes. */
      least: z.number(),
      takes: z.number(),
    })
    .optional(),
})
export type Caution = z.infer<typeof cautionSchema>

/** A thing to bake in. Sizes in metres; `shape` says which sizes apply. */
export const vesselSchema = z.object({
  id: z.string(),
  spellings: z.array(z.string()).min(1),
  shape: z.enum(['round', 'square', 'oblong', 'loaf', 'pie plate', 'crock', 'free-standing', 'sheet', 'none']),
  /** Diameter, or length and width, and height, metres. */
  diameter: z.number().optional(),
  length: z.number().optional(),
  width: z.number().optional(),
  height: z.number().optional(),
  /** What it is sold as holding to the brim, ml, where a tube in its middle makes that less than its outline. */
  millilitres: z.number().optional(),
  source: z.string(),
  note: z.string().optional(),
})
export type VesselRow = z.infer<typeof vesselSchema>

/** A building material of an oven. SI: W/(m·K), kg/m³, J/(kg·K). */
export const materialSchema = z.object({
  id: z.string(),
  names: z.array(z.string()).min(1),
  /** How thick it mostly is in an oven, where that is not as bricks are: what a message shows how to write. Common practice, no source. */
  usual: z.string().optional(),
  conductivity: rangeSchema,
  density: rangeSchema,
  heat: rangeSchema,
  emissivity: rangeSchema.optional(),
  /** Conductivity at temperatures, °C → W/(m·K), where a source gives it. */
  conductivityAt: z.array(z.object({celsius: z.number(), value: z.number()})).optional(),
  /** Specific heat at temperatures, °C → J/(kg·K), where a source gives it. */
  heatAt: z.array(z.object({celsius: z.number(), value: z.number()})).optional(),
  source: z.string(),
  note: z.string().optional(),
})
export type Material = z.infer<typeof materialSchema>

/** A fuel. Net heating value of the dry wood, MJ/kg. */
export const fuelSchema = z.object({
  id: z.string(),
  names: z.array(z.string()).min(1),
  netDryMegajoules: rangeSchema,
  source: z.string(),
  note: z.string().optional(),
})
export type Fuel = z.infer<typeof fuelSchema>

/**
 * A kind of dish: what a receipt leaves out is filled from here and marked as ours. Temperatures are baking temperatures in °C.
 * `start` is what it may be set in at, `end` the least it may be drawn at, `done` the crumb or filling temperature T_done of the dose
 * law, `minutes` the usual bake at the middle of `start`.
 */
export const kindSchema = z.object({
  id: z.string(),
  title: z.string(),
  /** Words of a title or text that make a receipt of this kind, most telling first. */
  words: z.array(z.string()).min(1),
  /** Words that name the dish in a title only: in a text they are other things as well, as a cob is of corn. */
  titles: z.array(z.string()).min(1).optional(),
  /** What a German compound ends in that names a dish of this kind and is in no row: "Kürbiskernbrot". Folded. */
  endings: z.array(z.string()).min(1).optional(),
  band: bandSchema,
  start: z.object({low: z.number(), best: z.number(), high: z.number()}),
  end: z.number(),
  done: z.number(),
  minutes: rangeSchema,
  /** Set in very hot and left while the oven falls. */
  falling: z.boolean(),
  /** May stay in overnight. */
  overnight: z.boolean(),
  /** Beans, rice or meat that soften in their own time once they are hot: a shallower vessel does not hurry them. Common practice, no source. */
  softens: z.literal(true).optional(),
  place: z.enum(['back', 'middle', 'mouth', 'any']),
  vessel: z.string(),
  /** Mass of one vessel's dough or batter, kg, and the share of it lost as water. */
  mass: rangeSchema,
  waterLoss: rangeSchema,
  /** People one vessel feeds. */
  feeds: rangeSchema,
  /**
   * Dough: minutes before the oven. `rise` in bulk, `prove` between shaping and oven; `hold` is how long a risen dough waits before it is
   * over-proved.
   */
  dough: z.object({mix: z.number(), rise: z.number(), shape: z.number(), prove: z.number(), hold: z.number()}).optional(),
  /** What is set in its place where the leaven is another than its name leads one to think: id of another kind. */
  leavened: z
    .object({
      /** Only these of its words leave the leaven open; all of them where absent. */
      words: z.array(z.string()).min(1).optional(),
      /** The leaven that is among the ingredients, the other being absent. */
      by: z.enum(['yeast', 'sourdough']),
      kind: z.string(),
    })
    .optional(),
  /** What it is where sugar goes into it by more than the spoon, its name being that of both: id of another kind. */
  sweetened: z.object({words: z.array(z.string()).min(1), kind: z.string()}).optional(),
  /**
   * What it is where meat, poultry or fish goes into it: id of another kind, by these of its words (all of them where absent); `crusted` where
   * paste, or the suet or lard of one, goes in too.
   */
  withMeat: z.object({words: z.array(z.string()).min(1).optional(), kind: z.string(), crusted: z.string().optional()}).optional(),
  /** What several of it are where its title calls them so ("little pork pies"): id of another kind. */
  little: z.object({words: z.array(z.string()).min(1), kind: z.string()}).optional(),
  /** What it is where the method cuts it out before it bakes (“roll it out, cut it into cakes”): id of another kind. Common practice, no source. */
  cutOut: z.string().optional(),
  /**
   * Kilograms of its pieces on a sheet of 16 × 12 in, where they are cut out, dropped or shaped by hand and so not baked in its own vessel.
   * Common practice, no source.
   */
  onSheet: z.number().optional(),
  /** What its tins hold is put together into one when it is baked. Common practice, no source. */
  layered: z.literal(true).optional(),
  /** A paste with a filling in it: what is poured into that is no liquid of the paste. Common practice, no source. */
  filled: z.literal(true).optional(),
  /** Dry when it is done: it keeps without warmth. */
  dry: z.literal(true).optional(),
  /** Baked through, and nothing in it spoils in a day: it keeps without warmth, as bread does. Common practice, no source. */
  keeps: z.literal(true).optional(),
  /** Eaten hot: it should come to the table from the oven. Common practice, no source. */
  hot: z.literal(true).optional(),
  /** White bread, or a pie baked in paste: not set in until what falls from very hot has been in half an hour (`plan/rules`). */
  crust: z.literal(true).optional(),
  /**
   * It bears to be set in hotter than its receipt's degrees and fall: a joint browns first, and what is covered, wet or thick of crust does not
   * burn. Brown bread, beans and puddings: Project Gutenberg 13493 (1829); joints: common practice, no source.
   */
  bearsHeat: z.literal(true).optional(),
  /** Its water boils away in the oven, and hot water is put to it while the door is open. Common practice, no source. */
  drinks: z.literal(true).optional(),
  /** Nobody eats it: a day that states no amount means as much as the receipt says, whoever comes, and nothing is made up. */
  uneaten: z.literal(true).optional(),
  /** It is dried: hotter than its kind bears it would bake, so no word for an oven, only a receipt's degrees, sets it in hotter. Common practice, no source. */
  dries: z.literal(true).optional(),
  /** The sign that it is done. */
  sign: z.string(),
  /**
   * A tough cut, baked long and slowly until it is tender, which it is not when it is first safe to eat: by words of its title or list and
   * so many minutes, or by its own time at so low a heat, °C, and so many minutes for each kilogram.
   */
  tender: z
    .object({
      words: z.array(z.string()),
      endings: z.array(z.string()),
      minutes: z.number(),
      slow: z.object({low: z.number(), high: z.number(), minutes: z.number(), perKilogram: z.number()}),
      sign: z.string(),
      source: z.string(),
    })
    .optional(),
  /** … and where it is filled with eggs when its crust has baked empty: that of the filling with it. */
  set: z.object({sign: z.string(), source: z.string()}).optional(),
  /** Least safe centre temperature °C where one is published (USDA FSIS). */
  safe: z.number().optional(),
  cautions: z.array(z.string()).default([]),
  source: z.string(),
  note: z.string().optional(),
})
export type DishKind = z.infer<typeof kindSchema>

/** Words of the work done the evening before, by what they are in it. */
export const eveningWordSchema = z.object({
  id: z.string(),
  use: z.enum(['nights', 'soaks', 'lays', 'waters', 'sponges', 'sets', 'wholes', 'parts']),
  words: z.array(z.string()).min(1),
  source: z.string(),
})
export type EveningWord = z.infer<typeof eveningWordSchema>

/** Words of the headings and labels inside a receipt, by what they are in them. */
export const headingWordSchema = z.object({
  id: z.string(),
  use: z.enum(['ingredients', 'method', 'notes', 'nutrition', 'begins', 'counted', 'parts', 'work', 'objects', 'own', 'places']),
  words: z.array(z.string()).min(1),
  source: z.string(),
})
export type HeadingWord = z.infer<typeof headingWordSchema>

/** Words of what is in a serving of a dish, by what they are in it. */
export const nutritionWordSchema = z.object({
  id: z.string(),
  use: z.enum(['energy', 'nutrients', 'shares', 'shared']),
  words: z.array(z.string()).min(1),
  source: z.string(),
})
export type NutritionWord = z.infer<typeof nutritionWordSchema>

/**
 * What a log says was done to a dish, or became of it, and where it is read: wherever it stands behind a dish's name, at the end of a note
 * only, since more words behind it tell of something else, or only where the row is a dish's. A `short` word is read there and in a note
 * behind a dish's name ("pies out, brown"): it says too many other things. One `with a time` needs a length of time behind it ("needs 15 min
 * more"): without one it is of something else.
 */
export const deedWordSchema = z.object({
  id: z.string(),
  deed: z.enum(['mixed', 'shaped', 'not risen', 'not in', 'set in', 'drawn', 'not drawn', 'lost']),
  where: z.enum(['anywhere', 'at the end', 'of a dish', 'short', 'with a time']),
  words: z.array(z.string()).min(1),
  source: z.string(),
})
export type DeedWord = z.infer<typeof deedWordSchema>

/** What a note says of the fire and of what was read, by what its words are (`use`), in small letters. */
export const noteWordSchema = z.object({
  id: z.string(),
  use: z.enum([
    'lit',
    'raked',
    'wood',
    'counted',
    'part of the floor',
    'single',
    'on top',
    'off time',
    'pair',
    'of',
    'of all',
    'of it out',
    'all but',
    'dough worked',
    'put back',
    'again',
    'to fill',
    'end of a name',
    'fire out',
    'door',
    'door left',
    'door opened',
    'door shut',
    'lit again',
    'raked again',
  ]),
  words: z.array(z.string()).min(1),
  source: z.string(),
})
export type NoteWord = z.infer<typeof noteWordSchema>

/**
 * What a log says of how a dish came out (`overdone`, `underdone`, and `pale`, which is underdone by its looks alone), that it was baked on
 * elsewhere (`cooked on`), why else it was drawn off its time (`other cause`), and words right before that make it no judgement (`hardly`) or
 * say that it is not so (`negation`), in small letters.
 */
export const outcomeWordSchema = z.object({
  id: z.string(),
  use: z.enum(['overdone', 'underdone', 'pale', 'cooked on', 'other cause', 'hardly', 'negation']),
  words: z.array(z.string()).min(1),
  source: z.string(),
})
export type OutcomeWord = z.infer<typeof outcomeWordSchema>

/** What cooks call a reading besides its kind's own name, in small letters. */
export const readingWordSchema = z.object({
  id: z.string(),
  kind: z.enum(['floor', 'vault', 'air', 'probe', 'arm', 'flour', 'paper', 'walls', 'spatter']),
  words: z.array(z.string()).min(1),
  source: z.string(),
})
export type ReadingWord = z.infer<typeof readingWordSchema>

/** What heads a column of a log's table, and which column that is. */
export const logHeadSchema = z.object({
  id: z.string(),
  column: z.enum(['time', 'reading', 'value', 'note']),
  words: z.array(z.string()).min(1),
  source: z.string(),
})
export type LogHead = z.infer<typeof logHeadSchema>

/** A word for how much a receipt makes: what it is in a yield (`use`), and what it stands for (`of`) where it stands for another word. */
export const yieldWordSchema = z.object({
  id: z.string(),
  use: z.enum([
    'opens',
    'opened',
    'person',
    'thing',
    'measure',
    'describing',
    'count',
    'size',
    'noun',
    'about',
    'piece of a kind',
    'method',
  ]),
  words: z.array(z.string()).min(1),
  of: z.string().optional(),
  source: z.string(),
})
export type YieldWord = z.infer<typeof yieldWordSchema>

/** A word of the amount that a day asks of a receipt: what it is there (`use`), and the number it stands for (`value`, a fraction) where it is one. */
export const askedWordSchema = z.object({
  id: z.string(),
  use: z.enum([
    'number',
    'for',
    'persons',
    'everyone',
    'times',
    'receipt',
    'so often',
    'floor',
    'floor noun',
    'floor whole',
    'floor fill',
    'mixture',
    'each',
    'no number',
    'mass',
    'length',
    'measure',
    'vessel',
    'small vessel',
    'layer',
    'cut',
    'counted',
    'size',
    'named',
    'any tin',
    'bare',
    'bread',
    'wanted',
    'hot',
    'wanted by',
    'wanted by alone',
    'not before',
    'article',
  ]),
  words: z.array(z.string()).min(1),
  value: z
    .string()
    .regex(/^\d+(?:\/\d+)?$/)
    .optional(),
  /** Of what names a vessel without its size: the shape. */
  shape: z.enum(['loaf', 'pie plate', 'crock', 'free-standing', 'sheet']).optional(),
  source: z.string(),
})
export type AskedWord = z.infer<typeof askedWordSchema>

/** A list of the small words of receipts, with its source. */
export const grammarTableSchema = z.object({id: z.string(), words: z.array(z.string()).min(1), source: z.string()})
export type GrammarTable = z.infer<typeof grammarTableSchema>

/** What heads a column of a table of a dough's stages, and which part of the receipt its amounts are. */
export const stageHeadSchema = z.object({
  id: z.string(),
  part: z.string(),
  words: z.array(z.string()).min(1),
  source: z.string(),
})
export type StageHead = z.infer<typeof stageHeadSchema>

/** Words by which the weight is told that a baker's percentages are reckoned from. */
export const doughWeightWordSchema = z.object({
  id: z.string(),
  use: z.enum(['percent', 'column', 'not of flour', 'hydration', 'of', 'flour', 'whole', 'piece', 'name of a leaven']),
  words: z.array(z.string()).min(1),
  source: z.string(),
})
export type DoughWeightWord = z.infer<typeof doughWeightWordSchema>

/** Words by which a vessel's size is told, and how many there are of it: what they are in it is `use`. */
export const vesselWordSchema = z.object({
  id: z.string(),
  use: z.enum([
    'unit',
    'long unit',
    'times',
    'way',
    'depth',
    'volume',
    'holding',
    'small',
    'noun',
    'by its width',
    'plain tin',
    'plain dish',
    'elsewhere',
    'number of',
    'thing',
    'article',
    'definite',
    'several',
    'apart',
    'into',
    'small tins',
    'upon',
    'by hand',
    'piece on a sheet',
    'holes',
    'either number',
    'numbered',
    'made ready',
    'made ready by',
    'how made ready',
    'part of one',
    'beside made ready',
    'puts',
    'bakes',
    'works',
    'shape',
  ]),
  /** Of a `shape`: which. */
  shape: z.enum(['round', 'square', 'oblong', 'loaf', 'pie plate', 'crock', 'free-standing', 'sheet']).optional(),
  words: z.array(z.string()).min(1),
  source: z.string(),
})
export type VesselWord = z.infer<typeof vesselWordSchema>

const groupsSchema = z.array(itemSchema.shape.group).min(1)
/** A kind of dish raised by yeast or leaven, told by what goes into it. Shares are of weight; liquids are left out of the whole. */
export const kindByItemsSchema = z.object({
  id: z.string(),
  /** Id of the kind. */
  kind: z.string(),
  /** What it is made of, and the least share of the whole. */
  main: z.object({groups: groupsSchema, share: z.number().min(0).max(1)}),
  /** Of `main`, these items make the least share. */
  of: z.object({items: z.array(z.string()).min(1), share: z.number().min(0).max(1)}).optional(),
  /** What is in it besides, each at least so many times the weight of `main`. */
  beside: z.array(z.object({groups: groupsSchema, toMain: z.number().min(0)})).optional(),
  source: z.string(),
})
export type KindByItems = z.infer<typeof kindByItemsSchema>

/** The kind of dish that a food from the oven is: by its item's id, or by the group of it. */
export const ovenFoodSchema = z.object({
  id: z.string(),
  /** Id of the kind. */
  kind: z.string(),
  items: z.array(z.string()).min(1).readonly().optional(),
  groups: groupsSchema.optional(),
  source: z.string(),
})
export type OvenFood = z.infer<typeof ovenFoodSchema>

/**
 * The least safe temperature of the middle of what has raw meat, poultry or fish in it, °C: of these items, of those whose text has one of these
 * words, or of all where neither is given; in whatever dish, or only where its kind is a whole cut.
 */
export const coreHeatSchema = z.object({
  id: z.string(),
  of: z.enum(['any dish', 'whole cut']),
  items: z.array(z.string()).min(1).optional(),
  words: z.array(z.string()).min(1).optional(),
  celsius: z.number(),
  source: z.string(),
  note: z.string().optional(),
})
export type CoreHeat = z.infer<typeof coreHeatSchema>

/**
 * Words about meat and fish. `cured`: ids of items that are not raw; `mock`: by which a title names none, whatever it says; `meatless`: by which
 * neither title nor list does; `other`: names of other things that hold theirs; `cut up`: what does not go in whole; `cuts`: verbs by
 * which it is no longer whole; `outside` and `scored`: of what, and how, it may be cut and go in whole all the same; `told of`: by
 * which a text has meat in it without its name; `no flesh`: in a name that no item has, or at the end of a German compound, by which it is
 * none, though it may be made of it.
 */
export const fleshWordSchema = z.object({
  id: z.string(),
  use: z.enum([
    'cured',
    'mock',
    'meatless',
    'other',
    'cut up',
    'cuts',
    'outside',
    'scored',
    'told of',
    'puts in',
    'puts in last',
    'beside',
    'of it',
    'no flesh',
    'cooked',
    'cooked before',
    'roasted',
    'smoked',
    'tinned',
    'half',
    'raw',
    'not yet',
  ]),
  words: z.array(z.string()).min(1),
  source: z.string(),
  note: z.string().optional(),
})
export type FleshWord = z.infer<typeof fleshWordSchema>

/** Words of a name, and beginnings of a German compound, by which it is of an item's meat, poultry or fish; `id` is the item's. */
export const fleshNameSchema = z.object({
  id: z.string(),
  words: z.array(z.string()).min(1),
  stems: z.array(z.string()).min(1).optional(),
  source: z.string(),
})
export type FleshName = z.infer<typeof fleshNameSchema>

/**
 * What goes into the oven whole, of a kind of dish: of these items or of those whose text has one of these words (any where neither is given),
 * and none of `apart`. Sides in metres of one of a kilogram; what weighs less than `least` kg lies several to a tin. `byWeight`: a weight
 * without a number, up to so many kg, is one.
 */
export const wholePieceSchema = z.object({
  id: z.string(),
  kinds: z.array(z.string()).min(1),
  items: z.array(z.string()).min(1).optional(),
  words: z.array(z.string()).min(1).optional(),
  apart: z.array(z.string()).min(1).optional(),
  /** Those that are counted are the parts of one that goes in: the ribs of a joint. */
  together: z.literal(true).optional(),
  length: z.number().positive(),
  width: z.number().positive(),
  height: z.number().positive(),
  least: z.number().positive(),
  byWeight: z.number().positive().optional(),
  source: z.string(),
  note: z.string().optional(),
})
export type WholePiece = z.infer<typeof wholePieceSchema>

/** A sign told in words: what a cook sees. `of` says which temperature it speaks of, `celsius` how hot that is. */
export const signSchema = z.object({
  id: z.string(),
  kind: z.enum(['flour', 'paper', 'walls', 'spatter']),
  /** As a cook would write it after the kind: "blackens at once". */
  phrases: z.array(z.string()).min(1),
  of: z.enum(['floor', 'vault', 'baking']),
  celsius: rangeSchema,
  /** What it means for the baker. */
  means: z.string(),
  source: z.string(),
})
export type Sign = z.infer<typeof signSchema>
