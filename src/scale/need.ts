import type {Band, DishKind, Range} from '../lexicon/schema.js'
import {scaled} from '../measure/range.js'
import {isFigure, isWanted, readHeatWords} from '../receipt/heat.js'
import type {DoorRule, Inferred, OvenPhrase, Receipt, TimePhrase} from '../receipt/types.js'
import type {HeatNeed} from './types.js'

/**
 * How far a baking temperature may stand from the one a receipt names, °C (25 °F below, 45 °F above as the oven falls). Common practice, no
 * source.
 */
const allowance = {below: 15, above: 25}
/** … and of one that the oven is to have come down to, at most so much of what it is above a room: 5 °C at 45. Common practice, no source. */
const coolShare = 0.2
/** No oven that falls bakes for more than a day, minutes; a longer time in a receipt is steeping or keeping. */
const longestBake = 1440
/** Minutes of baking from which it is taken to go on through the night. */
const longNight = 480
/**
 * What its kind leaves in through the night may stay there by a receipt's own time where its kind bears at least so long for that time, minutes:
 * apples that bake three quarters of an hour in a moderate oven are dried up by the morning. Common practice, no source.
 */
const bearsNight = 300
/** … and what a receipt has done in less than this is baked for a meal, and not left in, minutes. Common practice, no source. */
const forMeal = 120
/**
 * What so long in an oven that cools, or is turned off, after the bake is of the same time at the bake's own heat, as a share: an oven of iron
 * sheet has lost most of its heat in an hour or two. Common practice, no source.
 */
const coolingShare = 0.25
/** Of what may be left in until the oven is cold, °C. */
const cooled = 20
/** The dose law needs an oven hotter than the crumb: the least it may be hotter, °C. */
const leastDrive = 10
/**
 * … and the least its reference counts for, °C. The law has the time go as 1 / (oven − done), without end where the two are near; heat that has to
 * cross a crumb goes in more evenly: by the first term of a slab's conduction its time goes as ln(1.27 (oven − 20) / (oven − done)), which
 * at 107 °C and a crumb of 95 changes with the oven as the dose of a reference 31 °C above done does (Incropera & DeWitt, transient
 * conduction; from memory). Without this, 25 °C more than a slack oven would bake an hour's gingerbread in twenty minutes.
 */
const evenDrive = 30
/** What holds cooked food safe, °C (FDA Food Code 3-501.16): no dish is reckoned to bake in less than that on account of `evenDrive`. */
const holding = 57

/**
 * What a dish of no known kind is taken to need, by the band its receipt names: the edges of the band (design §4), an hour and what a
 * cook would look for. Shown as ours.
 */
export const anyKind: Readonly<
  Record<Band, Pick<DishKind, 'start' | 'end' | 'done' | 'minutes' | 'falling' | 'overnight' | 'place'>>
> = {
  hot: {
    start: {low: 205, best: 220, high: 260},
    end: 165,
    done: 95,
    minutes: {low: 20, likely: 35, high: 60},
    falling: false,
    overnight: false,
    place: 'any',
  },
  moderate: {
    start: {low: 163, best: 180, high: 205},
    end: 140,
    done: 95,
    minutes: {low: 30, likely: 50, high: 75},
    falling: false,
    overnight: false,
    place: 'any',
  },
  slow: {
    start: {low: 121, best: 145, high: 163},
    end: 100,
    done: 88,
    minutes: {low: 50, likely: 90, high: 150},
    falling: false,
    overnight: false,
    place: 'any',
  },
  slack: {
    start: {low: 79, best: 105, high: 135},
    end: 60,
    done: 70,
    minutes: {low: 180, likely: 360, high: 600},
    falling: true,
    overnight: true,
    place: 'any',
  },
}

const middled = ({low, high}: {readonly low: number; readonly high: number}): Range => ({low, likely: (low + high) / 2, high})

/** Minutes that the door is kept shut from setting in: the longest the receipt asks for, at most the whole bake; null where none. */
function closedFor(rules: readonly DoorRule[], minutes: Range): Range | null {
  const asked = rules.flatMap(({minutes: said, share}): Range[] =>
    said !== undefined
      ? [said]
      : share === undefined
        ? []
        : [{low: share.low * minutes.low, likely: share.likely * minutes.likely, high: share.high * minutes.high}],
  )
  if (asked.length === 0) return null
  const {low, likely, high} = asked.reduce((longest, one) => (one.likely > longest.likely ? one : longest))
  return {
    low: Math.min(low, minutes.low),
    likely: Math.min(likely, minutes.likely),
    high: Math.min(high, minutes.high),
  }
}

type Needs = Pick<DishKind, 'start' | 'end' | 'done' | 'minutes' | 'falling' | 'overnight'> &
  Partial<Pick<DishKind, 'cautions' | 'bearsHeat' | 'dries' | 'dry' | 'keeps' | 'uneaten' | 'dough'>>

/** Where a need's figures come from: for the list of what is ours. */
export interface NeedResult {
  readonly need: HeatNeed
  readonly inferred: readonly Inferred[]
  /** True where the minutes are the receipt's own. */
  readonly ownTime: boolean
}

/** A time of baking as a receipt gives it, and the times that follow each other in it. */
interface Bake {
  readonly low: number
  readonly high: number
  readonly parts: readonly {readonly low: number; readonly high: number}[]
}

/** The receipt's own baking time, minutes; null where it gives none. */
function bakeOf(receipt: Pick<Receipt, 'facts' | 'times' | 'oven'>, usual: Range): Bake | null {
  const stated = receipt.facts.bake
  if (stated !== undefined) return {low: stated.low, high: stated.high, parts: [stated]}
  const times = receipt.times.filter(
    (time) => time.of === 'bake' && !time.cooling && time.minutes.high > 0 && time.minutes.high <= longestBake,
  )
  return times.length === 0 ? null : joinTimes(times, receipt.oven, usual)
}

/**
 * How much hotter or cooler than the first the heats of a bake in stages are in the mean of its time, °C; 0 where it is not told which heat
 * is whose. The dose grows with heat and time alike (design §4), so the whole time at the mean is the same dose.
 */
function meanShift({parts}: Bake, heats: readonly OvenPhrase[]): number {
  if (parts.length < 2 || heats.length !== parts.length) return 0
  const middle = (span: {readonly low: number; readonly high: number}): number => middled(span).likely
  const whole = parts.reduce((sum, part) => sum + middle(part), 0)
  const first = middle(heats[0]!.celsius)
  return parts.reduce((sum, part, i) => sum + (middle(part) / whole) * (middle(heats[i]!.celsius) - first), 0)
}

/** The whole where one is said; times that follow each other; or of several that mean the same bake the nearest to the usual one. */
function joinTimes(times: readonly TimePhrase[], oven: readonly OvenPhrase[], usual: Range): Bake {
  const inOrder = [...times].sort((p, q) => p.start - q.start)
  // A whole less than one of its parts is that of another thing.
  const whole = inOrder.find(
    (time, i) => time.total === true && inOrder.slice(0, i).every(({minutes}) => minutes.low <= time.minutes.high),
  )
  if (whole !== undefined) return {...whole.minutes, parts: [whole.minutes]}
  const twoHeats =
    oven.length >= 2 &&
    inOrder.length === 2 &&
    inOrder.every((time) => time.minutes.low >= 5) &&
    oven.some((phrase) => phrase.start > inOrder[0]!.end && phrase.start < inOrder[1]!.end + 120)
  const bakes: Bake[] = []
  for (const [i, {minutes, then}] of inOrder.entries()) {
    const last = bakes.at(-1)
    if (last !== undefined && (then === true || (twoHeats && i === 1)) && last.high + minutes.high <= longestBake)
      bakes[bakes.length - 1] = {
        low: last.low + minutes.low,
        high: last.high + minutes.high,
        parts: [...last.parts, minutes],
      }
    else bakes.push({...minutes, parts: [minutes]})
  }
  const off = ({low, high}: {low: number; high: number}): number =>
    Math.abs(Math.log((low + high) / 2 / Math.max(1, usual.likely)))
  return bakes.sort((p, q) => off(p) - off(q))[0]!
}

/**
 * What a dish needs of the oven, from the receipt's own oven phrases and times where it gives them and from its kind where not.
 *
 * The reference is the temperature the minutes belong to: the receipt's heat for the receipt's time, the kind's for the kind's. The
 * dose is then (reference − done) × minutes, design §4, and so it is of a receipt in degrees, a gas mark or a fan oven's heat, whose time is of an
 * oven that holds it (`held`). For any other dish left in a falling oven the reference is the heat it is set in at, and the planner counts its
 * dose on a usual fall from there (`plan/rules`).
 *
 * @param receipt the receipt
 * @param kind its kind's row, or what its band stands for
 * @param source where the kind's figures come from, for the note
 */
export function heatNeed(
  receipt: Pick<Receipt, 'facts' | 'times' | 'oven' | 'door' | 'falls' | 'cooling'>,
  kind: Needs,
  source: string,
): NeedResult {
  const inferred: Inferred[] = []
  // A kind that is always left in through the night has its own time for it.
  const night =
    receipt.facts.bake === undefined ? receipt.times.find((time) => time.overnight === true && !time.cooling) : undefined
  const {cooling} = receipt
  const cools = receipt.times.find((time) => time.cooling)
  const coolsOvernight = cools?.overnight === true
  const bake = bakeOf(receipt, kind.minutes)
  const stated = receipt.facts.oven === undefined ? null : readHeatWords(receipt.facts.oven, receipt.facts)
  // "If the oven be too hot it will burn" is no order, and a word that no row knows no heat.
  const ordered = receipt.oven.filter(
    (phrase) => isWanted(phrase) && !(cooling && phrase.start >= cooling.start && phrase.start < cooling.end),
  )
  const phrases = stated !== null ? [stated] : ordered.sort((p, q) => p.start - q.start)
  const setIn = settingIn(phrases)
  // … but not for a heat that is none to bake at.
  const ownNight = night !== undefined && (!kind.overnight || (setIn !== undefined && setIn.celsius.high < kind.start.low))
  const own = (bake && middled(bake)) ?? (ownNight ? middled(night.minutes) : null)
  const minutes = own ?? kind.minutes
  if (own === null) {
    inferred.push({
      field: 'bake',
      value: `${Math.round(kind.minutes.low)}–${Math.round(kind.minutes.high)} min`,
      why: `the receipt gives no time; usual for ${source}`,
    })
  }
  // A receipt may name the oven of another dish ("after the bread, in a quick oven") or two stages: the heat its kind takes counts.
  const named =
    setIn ??
    phrases.find((phrase) => phrase.celsius.high >= kind.start.low && phrase.celsius.low <= kind.start.high) ??
    phrases[0]
  const first = named === undefined ? undefined : (figureOf(named, phrases) ?? named)
  let {low, best, high} = kind.start
  let end = kind.end
  if (first === undefined) {
    inferred.push({
      field: 'oven',
      value: `${kind.start.low}–${kind.start.high} °C`,
      why: `the receipt does not say how hot; usual for ${source}`,
    })
  } else {
    const start = startOf(first, kind)
    if (start.why !== null)
      inferred.push({field: 'oven', value: `${Math.round(start.low)}–${Math.round(start.high)} °C`, why: start.why})
    const shift = start.best - kind.start.best
    ;({low, best, high} = start)
    if (!kind.falling) end = kind.end + Math.min(0, shift)
    const last = phrases[phrases.length - 1]!
    // "Bake in a hot oven, then let it slacken": the last heat named is the one it may end at.
    if (last.start > first.start && last.celsius.low < low) {
      end = Math.min(
        end,
        Math.max(last.celsius.low - allowance.below, kind.falling ? Number.NEGATIVE_INFINITY : kind.end - 2 * allowance.below),
      )
    }
  }
  const warned = stated !== null ? undefined : leastWarned(receipt.oven)
  if (warned !== undefined && warned.celsius.high < high && warned.celsius.high - low >= leastSpan) {
    high = warned.celsius.high
    best = Math.min(best, high)
    inferred.push({
      field: 'oven',
      value: `${Math.round(low)}–${Math.round(high)} °C`,
      why: `no hotter: the receipt warns of “${warned.text}”`,
    })
  }
  if (mayTakeFire(kind.cautions ?? []) && high > kind.start.high) {
    ;({low, best, high} = kind.start)
    inferred.push({field: 'oven', value: `${low}–${high} °C`, why: 'no hotter, whatever is asked for: it may take fire'})
  }
  // Left in all night it bakes on the heat as it falls away, whatever its kind does by day.
  const allNight = night !== undefined && minutes.high >= longNight
  // “… bake three hours; all the better for remaining in the oven over night” leaves it there as well, after its own time.
  const remains = night?.better === true && !allNight && bake !== null
  if (allNight || remains || coolsOvernight) end = Math.min(end, anyKind.slack.end)
  // What keeps without warmth is none the worse for an oven that is cold by the morning.
  const cold = (coolsOvernight || remains) && (kind.dry === true || kind.keeps === true || (remains && kind.dough !== undefined))
  if (cold) end = Math.min(end, cooled)
  end = Math.min(end, low - 5)
  const falling = kind.falling || receipt.facts.holdsHeat === true || allNight
  // A receipt that gives one time gives no longest; a dish bears as much beyond its time as its kind does.
  const most = (time: number): number => (time * kind.minutes.high) / kind.minutes.likely
  const usual = kind.overnight && (own === null || (own.high >= forMeal && most(own.high) >= bearsNight))
  const overnight = usual || night !== undefined || coolsOvernight || (falling && minutes.high >= longNight)
  const closed = closedFor(receipt.door ?? [], minutes)
  const bears = Math.max(
    (falling && !overnight) || (kind.overnight && coolsOvernight) ? most(minutes.likely) : 0,
    cools === undefined ? 0 : minutes.high + coolingShare * cools.minutes.high,
    remains ? night.minutes.high : 0,
  )
  // A figure is what a thermostat holds; only the baker of such an oven says that a time is of a falling one.
  const held =
    falling && own !== null && first !== undefined && inDegrees(first) && receipt.falls !== true && !receipt.facts.holdsHeat
  // Set in at the first heat, and turned down or up between.
  const stages = bake === null || (falling && !held) || first !== phrases[0] ? 0 : meanShift(bake, phrases)
  const reference = own !== null ? best + stages : kind.start.best
  // A heat that leaves no drive bakes nothing; what is dried or simmered in it goes by what slack heat does (common practice, no source).
  const baked = kind.done <= reference - leastDrive
  const even = kind.dries ? kind.done : Math.min(kind.done, Math.max(holding, reference - evenDrive))
  const done = baked ? even : Math.min(anyKind.slack.done, kind.done, reference - leastDrive)
  if (baked && done < kind.done) {
    inferred.push({
      field: 'done',
      value: `${Math.round(done)} °C`,
      why: `its heat is hardly more than the ${kind.done} °C it comes to; its time is reckoned from further below, for a hotter oven does not bake it so much sooner`,
    })
  } else if (!baked) {
    inferred.push({
      field: 'done',
      value: `${Math.round(done)} °C`,
      why: `so low a heat cannot bring it to ${kind.done} °C; taken as dried or held rather than baked`,
    })
  }
  return {
    need: {
      startLow: low,
      startBest: best,
      startHigh: high,
      endLow: end,
      done,
      reference,
      minutes,
      falling,
      ...(held ? {held: true as const} : {}),
      overnight,
      ...(kind.dries || kind.uneaten ? {noMeal: true as const} : {}),
      ...(cold ? {cools: true as const} : {}),
      ...(remains ? {remains: true as const} : {}),
      ...(bears > minutes.high + 1 ? {longest: bears} : {}),
      ...(closed === null ? {} : {closed}),
    },
    inferred,
    ownTime: own !== null,
  }
}

/** How many characters may stand between a word for heat and the figure that explains it: “ (”, “, at about ”. */
const besideWord = 11
/** A figure so much under the word's least heat explains no word but follows it, °C: “a hot oven, then 160 °C”. */
const otherHeat = 30

/** Words for an oven that has come down mean no more than this, °C: "the cooling oven", "when the oven has fallen". */
const comeDown = 165

/**
 * The degrees an oven is said to have come down to when the dish is set in ("when it has cooled to about 60 °C"); undefined where none are,
 * or where the dish bakes before that: they are the heat of its second stage then.
 *
 * @param phrases the heats of the receipt, in the order of the text
 */
export function settingIn(phrases: readonly OvenPhrase[]): OvenPhrase | undefined {
  const at = phrases.findIndex(isFigure)
  const figure = phrases[at]
  return figure?.fallenTo === true && phrases.slice(0, at).every(({celsius}) => celsius.high <= comeDown) ? figure : undefined
}

/** A heat that is warned of leaves so much of what the dish bears, °C; where it would leave less, another heat was meant. */
const leastSpan = 10

/** The least of the heats that a receipt warns of; undefined where it warns of none. */
function leastWarned(oven: readonly OvenPhrase[]): OvenPhrase | undefined {
  return oven
    .filter((phrase) => phrase.against === true)
    .reduce<OvenPhrase | undefined>(
      (least, phrase) => (least === undefined || phrase.celsius.high < least.celsius.high ? phrase : least),
      undefined,
    )
}

/** The figure that a receipt gives for its own word: “a hot oven (gas mark 6)”. It is the more exact, and what was meant. */
function figureOf(word: OvenPhrase, phrases: readonly OvenPhrase[]): OvenPhrase | undefined {
  if (isFigure(word)) return undefined
  return phrases.find(
    (phrase) =>
      isFigure(phrase) &&
      phrase.start >= word.end &&
      phrase.start - word.end <= besideWord &&
      phrase.celsius.low >= word.celsius.low - otherHeat,
  )
}

/** True of degrees, a fan oven's heat and a gas mark, which a thermostat holds; a test with flour or the arm has figures too. */
function inDegrees(phrase: OvenPhrase): boolean {
  return (isFigure(phrase) && /\d|gas|regulo/i.test(phrase.text)) || /\d\W{0,3}(?:°|º|deg|grad)/i.test(phrase.text)
}

/** The start range of a phrase beside its kind's: the overlap where they agree; the phrase where they do not. */
function startOf(phrase: OvenPhrase, kind: Needs): {low: number; best: number; high: number; why: string | null} {
  const {low, high} = phrase.celsius
  const middle = (low + high) / 2
  if (isFigure(phrase)) {
    // A degree: the receipt's own figure, with the allowance a cook gives it.
    const hotter = kind.bearsHeat ? Math.min(kind.start.high, high + 2 * allowance.above) : 0
    // … which is less for what is set in at hardly more than blood heat, as a culture is that 25 °C more would kill.
    const most = phrase.fallenTo === true ? coolShare * (middle - cooled) : Number.POSITIVE_INFINITY
    return {
      low: low - Math.min(allowance.below, most),
      best: middle,
      high: Math.max(high + Math.min(allowance.above, most), hotter),
      why: null,
    }
  }
  const from = Math.max(low, kind.start.low)
  const to = Math.min(high, kind.start.high)
  if (kind.dries && to < from + 10 && low >= kind.start.low)
    return {
      ...kind.start,
      why: `“${phrase.text}” may be far hotter, and what is dried bakes in that: no hotter than its kind bears, unless the receipt gives degrees`,
    }
  if (to - from >= 10) {
    return {low: from, best: Math.min(to, Math.max(from, kind.start.best)), high: to, why: null}
  }
  return {
    low,
    best: middle,
    high,
    why: `“${phrase.text}” is not the usual heat for this kind of dish; the receipt's word is kept`,
  }
}

/** True of what may take fire by itself in an oven hotter than its kind allows, so that it is never set in hotter. */
export function mayTakeFire(cautions: readonly string[]): boolean {
  return cautions.includes('wood-in-oven')
}

/**
 * The need of a dish made thicker or thinner than the one its time was given for (`time-share`).
 *
 * @param need as given
 * @param factor its time as a share of the one given
 */
export function thickened(need: HeatNeed, factor: number): HeatNeed {
  return {
    ...need,
    minutes: scaled(need.minutes, factor),
    ...(need.longest === undefined ? {} : {longest: need.longest * factor}),
    ...(need.closed === undefined ? {} : {closed: scaled(need.closed, factor)}),
  }
}

/**
 * The part of a long bake that heats the pot through, before what is in it softens: at most a quarter of its time and three quarters of an
 * hour; and no pot that an oven takes is longer about it than three hours, minutes. Common practice, no source: beans and stews go in with
 * hot water and simmer within the hour, a deep crock of them within two or three.
 */
const heatingThrough = {share: 1 / 4, usual: 45, most: 180} as const

/**
 * The need of what softens in its own time (beans, stews, rice), lying deeper than its time was given for: the part of the time that heats it
 * through goes as the square of the half-thickness, as `thickened` has it; the softening takes no longer in a deep pot than in a flat one.
 *
 * @param need as given
 * @param ratio half-thickness now / half-thickness its minutes were given for, 1 or more
 */
export function heatedThrough(need: HeatNeed, ratio: number): {readonly need: HeatNeed; readonly more: number} {
  const heating = Math.min(heatingThrough.usual, heatingThrough.share * need.minutes.likely)
  const more = Math.max(0, Math.min(heating * ratio * ratio, heatingThrough.most) - heating)
  const {low, likely, high} = need.minutes
  return {
    need: {
      ...need,
      minutes: {low: low + more, likely: likely + more, high: high + more},
      ...(need.longest === undefined ? {} : {longest: need.longest + more}),
    },
    more,
  }
}
