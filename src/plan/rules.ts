/** Cautions of what has to be cooked through for safety, and of what sets by its eggs. */
const COOKED_THROUGH = ['meat-temperature', 'stuffing', 'shellfish'] as const
const SET_BY_EGGS = ['warm-cream'] as const

/**
 * The figures of the plan's rules and of its objective, as data: the planner, the checker and the mixed-integer program all read them
 * here, and nothing else is shared between them. `docs/planning.md` states the model they belong to.
 */
export const rules = {
  /** Minutes between two clock times at which the door may be opened. */
  tick: 5,
  /** No door work from `nightFrom` to `nightTo` (or the first fire, if that is earlier), minutes after midnight. Common practice, no source. */
  nightFrom: 22 * 60,
  nightTo: 5 * 60,
  /** What is done in the evening at no hour of its own: before the night, minutes after that midnight. Common practice, no source. */
  evening: 21 * 60,
  /** When a baker who has fired the day before would rather open the door for what was left in overnight and nobody has asked for sooner. Common practice, no source. */
  waking: 7 * 60,
  /** For how long a test of the heat tells of the oven, minutes: what is set in sooner is not tested for again. Common practice, no source. */
  testTells: 10,
  /** Minutes of hands to set in or draw one vessel: up to `heavy` kg, and above. Common practice, no source. */
  handlingLight: 0.25,
  handlingHeavy: 0.5,
  heavy: 3,
  /** Cooked food waits at 57 °C (135 °F) or above: FDA Food Code 2022, 3-501.16(A)(1). */
  holdCelsius: 57,
  /** … and no longer than two hours under it: USDA FSIS, "Danger Zone" (40 °F–140 °F). */
  coldMinutes: 120,
  /** Wanted later than this after it is drawn, food is cooled and heated again, min: as long as it may stand without control, FDA Food Code 2022, 3-501.19(B). */
  standMinutes: 240,
  /** What is eaten hot stands so long after it is drawn, covered and near the oven, min. Common practice, no source. */
  keepsHot: 60,
  /** Floor counts as hot, so that idle floor is waste, from the foot of the slow band upwards (design §4), °C. */
  hotCelsius: 121,
  /** A dish may stay in after it is done until its dose is that of the longest time its receipt gives, and at least this long, min. */
  staySlack: 5,
  /**
   * A floor filled with one dish is drawn when the coolest of it is done: share more than the longest time of its receipt gives that the
   * hottest of it may have by then. Common practice, no source: nobody draws a floor of loaves one by one, and those at the back are the browner.
   */
  spread: 0.25,
  /** The misfit of a long bake is counted for its first hour: after that the crumb, not the crust, is baking. */
  misfitMinutes: 60,
  /**
   * White bread and pies are not set in until brown bread and beans have been in half an hour (Project Gutenberg #13493, 1829): minutes.
   * It binds what wants falling heat from `veryHot` °C or more, and the kinds that are white bread or a pie (`crust`), at whatever heat.
   */
  settleIn: {minutes: 30, veryHot: 200},
  /**
   * What dries, what stays in through the night and what nobody eats is slack work where its oven may not be hotter than this when it goes in:
   * it is not wanted at the serving time. What is baked or simmered at so low a heat is for the meal as anything else.
   */
  slackCelsius: 125,
  /** Minutes after it is wanted beyond which a dish is of little use: what can be had sooner is rather left out. Common practice, no source. */
  bearable: 180,
  /** Share of its usual time in which a dough in a warm corner may have risen; one that had less is not bread. Common practice, no source. */
  leastRise: 0.5,
  /** Minutes of hands to set a sponge. Common practice, no source. */
  setSponge: 10,
  /** A sponge may work for so many times its longest time before the dough is made of it. Common practice, no source. */
  spongeHolds: 1.5,
  /**
   * Minutes for which a fire that no plan has is taken to burn, when it is lit again or tried; and longer ones that are tried where it is too
   * little. Common practice, no source.
   */
  fireAgain: {burns: [45, 75, 105]},
  /**
   * Minutes of hands to light a fire, to feed it and to rake it out and swab the floor, and how often it is fed, minutes. Other work is put down
   * for a moment to feed it. Common practice, no source.
   */
  fireWork: {light: 10, feed: 5, rake: 15, every: 30},
  /** The door is told to be shut on what stays in for longer than this until it is next opened, minutes. Common practice, no source. */
  shutFor: 120,
  /**
   * How a usual oven falls once it is ready: T(h) = 20 + (ready − 20) / (1 + a·h^b). The time a receipt gives for a dish set in very
   * hot and left (brown bread, beans) was taken in such an oven, so its dose is counted on this curve from its reference heat down.
   * Fitted to `oven/forecast` of a 42-inch brick oven after two and a half hours' fire (300, 241, 207, 164, 121, 100 °C at 0, 1, 2, 4,
   * 8 and 12 hours) within 3 %.
   */
  usualFall: {ready: 300, ambient: 20, a: 0.27, b: 0.9},
  /** How far the planner stays inside limits, °C and share of the dose, because the loads change the curve after it has chosen. */
  marginCelsius: 2,
  /** How far above a dish's lower limit the morning's plan sets it in, °C, so that an oven a little cooler loses nothing. Common practice, no source. */
  inHandCelsius: 6,
  marginDose: 0.01,
  /** Share of its dose that a morning's plan gives what stays in the falling oven beyond that, so that an oven a little cooler still bakes it. Common practice, no source. */
  inHandDose: 0.03,
  /**
   * What a dish may want once the day has begun, rather than it or another be lost: so many °C under its lower limits when it is set in and
   * drawn, since risen dough does not wait for another day, and a cook sets it in at once and leaves it longer; and so much of the dose of its
   * likely time, less than the oven's own range leaves open, since everything is looked at before it is drawn (`night` of what is left in
   * through the night and takes what the oven has). First `near`, and `far` where that does not keep the plan in hand. Common practice, no
   * source.
   */
  ease: {near: {celsius: 10, dose: 0.1, night: 0.1}, far: {celsius: 15, dose: 0.2, night: 0.3}},
  /** Share of its dose that may be wanting of what is in the oven for the sake of what is not: hardly more than anyone can tell. Common practice, no source. */
  easeInside: 0.05,
  /**
   * By its cautions: what has to be cooked through for safety, so that nothing may be wanting of its dose, or no more than `near` where it
   * is left in through the night; and what sets by its eggs, of which, unless left in so, no more may be wanting than `near` (egg dishes to
   * 71 °C, FDA, from memory).
   */
  cookedThrough: COOKED_THROUGH,
  setByEggs: SET_BY_EGGS,
  /** Share of its dose that a dish has had, in the oven as it is likely to be, when it is first looked at. Common practice, no source. */
  firstLook: 0.6,
  /** Minutes after which what is not done is looked at again, as the steps say. Common practice, no source. */
  lookEvery: 10,
  /** Minutes beyond its draw for which what is not done is looked at again, at most. Common practice, no source. */
  lookAgain: 240,
  /** Nothing is looked at beyond the day after the bake, minutes after midnight of its day. */
  lastLook: 2 * 1440 - 5,
  /**
   * By its cautions: what has meat or fish in it, and what else has to be kept cold where it is not eaten within `standMinutes` (FDA Food Code
   * 2022, 3-501.16, 3-501.19).
   */
  flesh: [...COOKED_THROUGH, 'blood', 'brains', 'potted-air'],
  keptCold: [...SET_BY_EGGS, 'beans-boil'],
  /**
   * Share of a dish's weight of eggs, and of milk, cream or curd, from which on it is set by them as a custard is: the egg that a crust is
   * brushed with is less. Common practice, no source.
   */
  setByShare: 0.08,
  /** Heat of a load, J/(kg·K), K and J/kg: dough's specific heat, by how much it warms, and the heat that turns its water to steam (as `oven/simulate`). */
  load: {heat: 2900, rise: 72, steam: 2.37e6},
  /** Feet of the bands, °C (design §4; the edges that overlap there are cut at the lower one). */
  bandFeet: {hot: 205, moderate: 163, slow: 121, slack: 79},
  /** What may wait no longer than this, made up, is made right before it is set in, min: beaten whites fall, soda works once. Common practice, no source. */
  soon: 30,
  /** Minutes before its load at which something is made up, at most. Common practice, no source. */
  madeUpBefore: 360,
  /** A night's soaking is no shorter than this, minutes. Common practice, no source. */
  shortNight: 360,
  /** Share of the dose that may be wanting when a dish is drawn: less than anyone can tell. */
  doseWanting: 0.005,
} as const

/** Weights of the objective, per unit of each term (design §6). */
export const weights = {
  /** One dish late by one minute. */
  late: 1,
  /** One minute more of that, beyond `rules.bearable`, of a dish that could be had sooner. */
  tooLate: 9,
  /** One minute more than `rules.keepsHot` that a dish is drawn before the day wants it hot: warmed again it is a lesser fault than one late. */
  early: 0.5,
  /** One °C·min of misfit. */
  misfit: 0.004,
  /** One opening of the door. */
  opening: 4,
  /** One opening of the door while a receipt wants it kept shut. */
  shut: 10,
  /** One m²·h of hot floor left empty. */
  idle: 3,
  /** One kg of wood. */
  wood: 1,
  /** One minute by which a load or draw is moved when the day is planned again. */
  moved: 0.1,
  /** One part of a dish that comes to stand in another part of the floor then: where two ways to go on are compared, no more. */
  elsewhere: 3,
  /** One minute by which a dough is set in before it has risen when the day is planned again: worse than as late a supper. */
  unrisen: 2,
  /** One minute by which a dough that is mixed waits longer than it holds: it can be knocked down and shaped again. */
  overRisen: 1,
} as const

/** The three parts of the floor, from the back to the mouth; `across` is a dish that takes its share of each. */
export const zoneNames = ['back', 'middle', 'mouth'] as const
export type Zone = (typeof zoneNames)[number]
export type Where = Zone | 'across'
