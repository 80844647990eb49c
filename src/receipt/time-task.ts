import {cardinals} from '../lexicon/grammar-words.js'
import {itemAt} from '../lexicon/index.js'
import {tasks} from '../lexicon/oven-words.js'
import {isTimeCookedAt} from './cooks-in-oven.js'
import {DRIES, isDriedWarm, LEAST_DRYING} from './drying-heat.js'
import {CHANGES, set} from './heat-words.js'
import {coldPlaceAt, risingWordAt} from './rising-words.js'
import type {Section, Token} from './section.js'
import {endsSentence, isStop, REACH, sentenceAt, sentenceHas} from './sentences.js'
import {labelTask} from './time-labels.js'
import {isTotal, MORE} from './time-parts.js'
import type {TimePhrase} from './types.js'

/** What a stretch of time is for, by the words around it: baking, rising, boiling, standing, or something else. */

/** What a word of work stands for: `lexicon/oven-words`. */
export const TASKS = new Map(Object.entries(tasks))

/** What it is for, by the words around it; null where none says. */
export function taskOf(tokens: readonly Token[], from: number, to: number): TimePhrase['of'] | null {
  const block = tokens[from]!.block
  const labelled = labelTask(tokens, from, to)
  if (labelled !== null) return labelled
  // "prove overnight in the fridge": what is said just before it.
  const close = /^(?:for|about|,)$/.test(tokens[from - 1]?.word ?? '') ? from - 2 : from - 1
  if (tokens[close]?.block === block && PROVES.has(tokens[close]!.word)) return 'rise'
  // "Start the biga 16 hours ahead"
  if (/^(?:ahead|beforehand)$/.test(tokens[to]?.word ?? '') && tokens[to]!.block === block) return 'stand'
  if (isOfTheCook(tokens, from) || isHeatingUp(tokens, from) || isMoment(tokens, from) || isUntil(tokens, from, to))
    return 'other'
  // "raise the heat to 200 °C and cook 30 minutes more"
  if (
    /^(?:cook|cooking)$/.test(tokens[from - 1]?.word ?? '') &&
    tokens[from - 1]!.block === block &&
    besideHeat(tokens, from, to)
  )
    return 'bake'
  if (isAfterChange(tokens, from) || isTimeCookedAt(tokens, from, to)) return 'bake'
  let hot: boolean | undefined
  const inHeat = (): boolean => {
    hot ??= besideHeat(tokens, from, to, WARM) || sentenceHas(tokens, from, OVEN)
    return hot
  }
  const long = (): boolean => isLong(tokens, from, to)
  const dried = (): boolean => isDriedHot(tokens, from, to)
  if (isFolded(tokens, from) && isTotal(tokens, from, to)) return 'stand'
  // Behind it: "an hour will bake it", "1 hour to bake", "half an hour's baking", "20 minutes in a hot oven".
  const ended = tokens[to - 1]!.word === '.' && tokens[to]?.capital === true
  for (let k = to; k < tokens.length && !ended && k < to + 6 && tokens[k]!.block === block; k++) {
    const t = tokens[k]!
    if (
      endsSentence(tokens, k) ||
      t.word === ',' ||
      t.word === 'and' ||
      t.word === 'then' ||
      t.word === 'und' ||
      t.word === 'dann' ||
      t.word === 'before' ||
      t.word === 'after' ||
      t.word === 'while' ||
      t.word === 'whilst' ||
      t.word === '(' ||
      // "bake it five hours with a moderate fire"
      (t.word === 'fire' && tokens.slice(Math.max(to, k - 3), k).some(({word}) => word === 'with'))
    )
      break
    const task = taskAt(tokens, k, inHeat, long, dried)
    if (task !== undefined && t.word !== 'light' && t.word !== 'brown') {
      if (/^(?:to|will|for|in|of|its|their|the|a|'s|quick|slow|moderate|hot)$/.test(tokens[k - 1]!.word) || k === to) return task
      // "1 ½ Stunden aufs Doppelte aufgehen lassen": the German verb ends its clause.
      if (GERMAN_ENDS.has(t.word)) return task
      break
    }
  }
  for (let k = from - 1; k >= 0 && k > from - REACH && tokens[k]!.block === block; k--) {
    if (endsSentence(tokens, k)) break
    const task = taskAt(tokens, k, inHeat, long, dried)
    if (task === undefined || tokens[k]!.word === 'light') continue
    // "taking off the scum as it rises": no dough.
    if (task === 'rise' && rising.has(tokens[k]!.word) && scums(tokens, k)) continue
    // "Knead well, and put in the refrigerator overnight": what is put there stands, whatever was done to it before.
    if (task !== 'rise' && task !== 'stand' && putByCold(tokens, k + 1, from, to, task)) return 'stand'
    return task
  }
  if (putByCold(tokens, sentenceAt(tokens, from, REACH)[0], from, to, null)) return 'stand'
  // "Time: an hour before a brisk fire": roasted.
  if (!ended && inTheRoom(tokens, to, block)) return isLabelled(tokens, from) ? 'other' : 'stand'
  const early = tokens[to]?.word === 'before' && tokens[to]!.block === block
  let puts = false
  for (let k = to; k < tokens.length && !ended && k < to + 14 && tokens[k]!.block === block; k++) {
    if (endsSentence(tokens, k)) break
    if (early && CLAUSE.has(tokens[k]!.word) && !puts) break
    puts ||= SETS.has(tokens[k]!.word)
    const task = taskAt(tokens, k, inHeat, long, dried)
    // "Half an hour before the dough is ready heat the oven" is no baking, "an hour before dinner put it into the oven" is.
    if (early && !puts) continue
    if (task === 'rise' && rising.has(tokens[k]!.word) && scums(tokens, k)) continue
    if (task === 'bake' || task === 'rise' || task === 'boil') return task
  }
  if (early && !isLabelled(tokens, from)) return 'other'
  return besideHeat(tokens, from, to) ? 'bake' : null
}

/** "then reduce the heat to 350° for 40 minutes", "turn down to 180 °C, 30 minutes": how long it bakes on. */
function isAfterChange(tokens: readonly Token[], from: number): boolean {
  const {block} = tokens[from]!
  let to = -1
  for (let k = from - 1; k > from - 8 && tokens[k]?.block === block && !endsSentence(tokens, k); k--) {
    const {word, kind, num, den} = tokens[k]!
    if (to < 0 && /^(?:to|auf)$/.test(word)) {
      const figure = tokens[k + 1]!
      if (figure.kind !== 'number' || figure.den !== 1 || figure.num < LEAST_HEAT) return false
      to = k
    } else if (to >= 0 && CHANGES.has(word)) return true
    // "reduce to 350 and bake, stirring, 30 minutes" is told by its own words.
    else if (to < 0 && !(kind === 'number' && den === 1 && num >= LEAST_HEAT) && !BEHIND_FIGURE.test(word)) return false
  }
  return false
}

const BEHIND_FIGURE = /^(?:for|about|a|further|another|°|℃|℉|degrees?|grad|c|f|,|fan|\(|\)|\/|gas|mark)$/

/** Words between a place and the time it is said of that make it another step's. */
const NEXT = /^(?:and|or|then|und|oder|dann|,|;|before|bevor|until|bis)$/

/**
 * Whether something stands in a cold place so long: it is put there before the time, in the tokens [first, from), or right behind it,
 * "place overnight in the refrigerator". Nobody bakes or works anything all night in a larder, but eggs may be beaten an hour in a cellar.
 *
 * @param worked what is done to it before that, in the same sentence
 */
function putByCold(tokens: readonly Token[], first: number, from: number, to: number, worked: TimePhrase['of'] | null): boolean {
  const {block} = tokens[from]!
  for (let k = first; k < from; k++) if (coldPlaceAt(tokens, k) !== null) return !besideHeat(tokens, from, to)
  if (worked !== 'other' && worked !== null) return false
  const placed = isSaidNight(tokens, from, to) || isPut(tokens, first, from)
  for (let k = to; k < to + 6 && tokens[k]?.block === block && !endsSentence(tokens, k) && !NEXT.test(tokens[k]!.word); k++) {
    const place = coldPlaceAt(tokens, k)
    if (place !== null) return placed || place === 'refrigerator'
  }
  return false
}

/** Whether something is put somewhere in the tokens [from, to). */
function isPut(tokens: readonly Token[], from: number, to: number): boolean {
  for (let k = from; k < to; k++) if (risingWordAt('puts', tokens, k) !== null) return true
  return false
}

/** Whether a stretch of time in the tokens [from, to) is a night. */
export const isSaidNight = (tokens: readonly Token[], from: number, to: number): boolean =>
  tokens.slice(from, to).some(({word}) => NIGHTS.has(word))

const GERMAN_ENDS = set(
  'gehen aufgehen ruhen stehen quellen reifen kneten backen ruhren schlagen kochen abkuhlen auskuhlen einweichen rosten trocknen dorren schmoren anbraten grillen garen braten ziehen einkochen einkocheln',
)

/** "folding at 30, 60 and 90 min": when, and not how long. */
function isMoment(tokens: readonly Token[], from: number): boolean {
  const {block} = tokens[from]!
  let last = tokens[from]!
  let k = from - 1
  let several = false
  while (k > 0 && tokens[k]!.block === block && /^(?:,|and|&)$/.test(tokens[k]!.word)) {
    while (k > 0 && /^(?:,|and|&)$/.test(tokens[k]!.word)) k--
    const number = tokens[k]!
    if (number.kind !== 'number' || last.kind !== 'number' || number.num >= last.num) return false
    several = true
    last = number
    k--
  }
  return several && tokens[k]?.block === block && /^(?:at|after)$/.test(tokens[k]!.word)
}

/** "Prep 15 min | Cook 50 min": the cook's time, and none of the oven's. */
function isOfTheCook(tokens: readonly Token[], from: number): boolean {
  const before = tokens[from - 1]
  return before?.block === tokens[from]!.block && /^(?:prep|preparation|vorbereitung)$/.test(before.word)
}

const HEATS_UP = set('heat preheat warm vorheizen')

/** What follows these is set in, or done meanwhile. */
const SETS_IN = set('bake baked baking cook put place set slide transfer then and while meanwhile dough loaf')

/** "Heat a Dutch oven in a 475-degree oven for 30 minutes": the pot is heated, and nothing baked. */
function isHeatingUp(tokens: readonly Token[], from: number): boolean {
  const {block} = tokens[from]!
  for (let k = from - 1; k >= 0 && k > from - 2 * REACH && tokens[k]!.block === block; k--) {
    const {word} = tokens[k]!
    if (endsSentence(tokens, k) || SETS_IN.has(word) || word === ',' || word === '—') return false
    if (HEATS_UP.has(word)) return k === 0 || tokens[k - 1]!.block !== block || tokens[k - 1]!.kind !== 'word'
  }
  return false
}

/** A fire that roasts what is before it. */
const ROASTING = /^(?:brisk|clear|sharp|quick|strong|great|fierce)$/

/** "… at room temperature", "near the fire", "in a warm place" stands behind it. */
function inTheRoom(tokens: readonly Token[], to: number, block: number): boolean {
  for (let k = to; k < to + 6 && tokens[k]?.block === block && tokens[k]!.kind === 'word'; k++) {
    const {word} = tokens[k]!
    const next = tokens[k + 1]?.word ?? ''
    if (
      /^(?:rt|raumtemperatur|zimmertemperatur)$/.test(word) ||
      (word === 'room' && /^temp/.test(next)) ||
      (word === 'fire' && !ROASTING.test(tokens[k - 1]!.word) && isBesideFire(tokens, k))
    )
      return true
    if (/^(?:warm|cool|cold|draughty|dry)$/.test(word) && /^(?:place|corner|spot|room|cellar|larder|pantry|cupboard)$/.test(next))
      return true
  }
  return false
}

const SETS = set('put set place')

/** After "before": a clause, and no meal or hour ("before it is put in the oven"). */
const CLAUSE = set('it they you is are be being')

/** "within a quarter of an hour of setting it in the oven": how long before. */
const isUntil = (tokens: readonly Token[], from: number, to: number): boolean =>
  tokens[from - 1]?.word === 'within' && tokens[to]?.word === 'of' && /ing$/.test(tokens[to + 1]?.word ?? '')

/** The task of the word at `k`. A pound is beaten only where it is no weight, and steam let into the oven steams nothing. */
function taskAt(
  tokens: readonly Token[],
  k: number,
  inHeat: () => boolean = () => false,
  long: () => boolean = () => false,
  dried: () => boolean = () => false,
): TimePhrase['of'] | undefined {
  const {word} = tokens[k]!
  if (DRIES.has(word) && dried()) return 'bake'
  if (ROASTS.has(word) && (inHeat() || (ROAST.has(word) && inTheOven(tokens, k, long)))) return 'bake'
  // "Roast the chicken in a skillet": what it stands in.
  if (word === 'skillet' && isRoastedIn(tokens, k, inHeat, long)) return undefined
  const before = tokens[k - 1]
  if (word === 'pound' && (before?.kind === 'number' || WEIGHS.has(before?.word ?? '') || tokens[k]!.joined)) return undefined
  // "Three hours in a soaking heat", "in a cool oven"
  if ((word === 'soaking' || word === 'cool' || word === 'cooling') && /^(?:heat|oven)$/.test(tokens[k + 1]?.word ?? ''))
    return 'bake'
  // "Brown the beef in batches": in a pan.
  if (word === 'brown' && (before === undefined || before.block !== tokens[k]!.block || isStop(before)) && isVerb(tokens, k))
    return inHeat() ? 'bake' : 'other'
  // "The night before": when.
  if (word === 'before' && /^(?:night|day|evening)$/.test(before?.word ?? '')) return undefined
  if (word === 'steam' && /^(?:with|without|no|some|\/)$/.test(before?.word ?? '')) return undefined
  // "bake till set": how one sees that it is done.
  if (word === 'set' && /^(?:till|until|is|are|just|nearly|firmly|quite|well)$/.test(before?.word ?? '')) return undefined
  // "Bake in cups set in hot water 35 minutes": where they bake.
  if (STANDS_IN.has(word) && isInBath(tokens, k) && isBaked(tokens, k)) return undefined
  if (word === 'boiling' && tokens[k + 1]?.word === 'water' && isBehindIn(tokens, k) && isBaked(tokens, k)) return undefined
  // "150 g boiling water" goes in; what is put into boiling water boils.
  if (word === 'boiling' && /^(?:g|grams?|ml|l|cups?|pints?|quarts?|gills?|oz)$/.test(before?.word ?? '')) return undefined
  // "Cool on baking sheets for 2 minutes"
  if (word === 'baking' && BAKED_ON.has(tokens[k + 1]?.word ?? '')) return undefined
  // "Bake straight from the fridge"
  if (
    COLD_PLACE.has(word) &&
    (before?.word === 'from' || (before?.word === 'the' && /^(?:from|of)$/.test(tokens[k - 2]?.word ?? '')))
  )
    return undefined
  if (OVEN.has(word) && isHeated(tokens, k)) return 'other'
  if (OVEN.has(word) && isGettingHot(tokens, k)) return undefined
  if ((word === 'fire' || word === 'before') && isBesideFire(tokens, k)) return undefined
  // "until the fruit bubbles": how one sees that it is done.
  if (word === 'bubble' && saysUntil(tokens, k)) return undefined
  if (SALTS.has(word)) return isVerb(tokens, k) ? 'stand' : undefined
  return TASKS.get(word)
}

function isRoastedIn(tokens: readonly Token[], k: number, inHeat: () => boolean, long: () => boolean): boolean {
  const [first, last] = sentenceAt(tokens, k, REACH)
  for (let i = first; i < last; i++) if (ROAST.has(tokens[i]!.word)) return inHeat() || inTheOven(tokens, i, long)
  return false
}

/** "While the oven heats", "till the oven is hot": something else is done so long. */
function isGettingHot(tokens: readonly Token[], oven: number): boolean {
  const {block} = tokens[oven]!
  let hot = false
  for (let k = oven + 1; k <= oven + 4 && tokens[k]?.block === block && tokens[k]!.kind === 'word'; k++)
    hot ||= GETS_HOT.has(tokens[k]!.word)
  if (!hot) return false
  for (let k = oven - 1; k >= oven - 4 && tokens[k]?.block === block; k--) if (MEANWHILE.has(tokens[k]!.word)) return true
  return false
}

const GETS_HOT = set('heats heating heat warms warming hot aufheizt heizt vorheizt heiß heiss')

const MEANWHILE = set('while whilst as till until during bis wahrend')

/** "By the fire", "before a good fire": where it stands, and nothing that is done to it. */
function isBesideFire(tokens: readonly Token[], k: number): boolean {
  const {word, block} = tokens[k]!
  const at = (i: number): string => (tokens[i]?.block === block ? tokens[i]!.word : '')
  if (word === 'before') return at(k + 1) === 'fire' || at(k + 2) === 'fire' || (at(k + 3) === 'fire' && at(k + 1) === 'a')
  if (word !== 'fire') return false
  for (let i = k - 1; i >= k - 4 && at(i) !== ''; i--) {
    if (/^(?:by|before|near|beside|round|from|behind)$/.test(at(i))) return true
    if (at(i) === 'of' && /^(?:side|front|corner|warmth)$/.test(at(i - 1))) return true
  }
  return false
}

function saysUntil(tokens: readonly Token[], k: number): boolean {
  const {block} = tokens[k]!
  for (let i = k - 1; i >= k - 6 && tokens[i]?.block === block; i--) if (/^(?:till|until)$/.test(tokens[i]!.word)) return true
  return false
}

const STANDS_IN = set('set placed standing stood gestellt')
const BATHS = set('water bath wasser wasserbad')
const BAKES = set('bake baked backen gebacken')
/** Words between a verb and the water: "set in a deep pan half full of boiling". */
const TO_BATH = 9

/** Whether what is set, at `k`, is set in water. */
function isInBath(tokens: readonly Token[], k: number): boolean {
  const {block} = tokens[k]!
  if (!/^(?:in|into|over)$/.test(tokens[k + 1]?.word ?? '')) return false
  for (let i = k + 2; i <= k + TO_BATH && tokens[i]?.block === block && !endsSentence(tokens, i); i++)
    if (BATHS.has(tokens[i]!.word)) return true
  return false
}

/** "In a pan of boiling water" */
function isBehindIn(tokens: readonly Token[], k: number): boolean {
  for (let i = k - 1; i > k - TO_BATH && tokens[i]?.block === tokens[k]!.block && tokens[i]!.kind === 'word'; i--)
    if (/^(?:in|into)$/.test(tokens[i]!.word)) return true
  return false
}

/** Whether a word before `k` in its sentence bakes. */
function isBaked(tokens: readonly Token[], k: number): boolean {
  const {block} = tokens[k]!
  for (let i = k - 1; i > k - REACH && tokens[i]?.block === block && !endsSentence(tokens, i); i--)
    if (BAKES.has(tokens[i]!.word)) return true
  return false
}

const SALTS = set('salt sugar')

/** "Salt the onions", "and salt them": a clause begins, and what follows is its object. */
const isVerb = (tokens: readonly Token[], k: number): boolean => {
  const before = tokens[k - 1]
  const opens =
    before === undefined ||
    before.block !== tokens[k]!.block ||
    before.kind === 'mark' ||
    /^(?:and|then|or|to|first)$/.test(before.word)
  return opens && /^(?:the|them|your|it|each|these)$/.test(tokens[k + 1]?.word ?? '')
}

/** By the fire or in the pan, but with the oven's heat beside them baking. */
const ROASTS = set('roast roasted roasting schmoren braten anbraten grillen garen trocknen dorren rosten')

const ROAST = set('roast roasted roasting braten')
const FIRES = set('fire spit jack hob stove stovetop flame embers coals')
const PANS = set('pan pfanne pot topf skillet')
/** A pan for these stands on the stove. */
const ON_STOVE = set('dry frying fry saute trockenen')
/** What is roasted in these or on them is roasted in an oven, unless a fire is named. */
const ROASTED_IN = set('roasting tin tray sheet skillet dish rack casserole bratform blech')

/** "Heat the oven to gas mark 2 … cover and roast for 4 hours": nothing in the sentence says that it is done elsewhere. */
function inTheOven(tokens: readonly Token[], k: number, long: () => boolean): boolean {
  if (sentenceHas(tokens, k, FIRES)) return false
  const [first, last] = sentenceAt(tokens, k, REACH)
  for (let i = first; i < last; i++)
    if (PANS.has(tokens[i]!.word) && (ON_STOVE.has(tokens[i - 1]?.word ?? '') || !long())) return false
  for (let i = k - 1; i >= 0 && i > k - FARTHEST; i--) if (OVEN.has(tokens[i]!.word) || tokens[i]!.word === 'gas') return true
  return sentenceHas(tokens, k, ROASTED_IN) && long() && !tokens.some(({word}) => FIRES.has(word))
}

/** Whether so much time is more than spices and nuts take in a pan, minutes. Common practice, no source. */
const inPan = 15
function isLong(tokens: readonly Token[], from: number, to: number): boolean {
  for (let k = from; k < to; k++) {
    const {word, kind, num, den} = tokens[k]!
    if (/^(?:hours?|hrs?|h|stunden?|std)$/.test(word) || (kind === 'number' && num >= inPan * den)) return true
    if ((cardinals[word] ?? 0) >= inPan) return true
  }
  return false
}

/** How far back the oven may be named, tokens. */
const FARTHEST = 150

const COLD_PLACE = set('fridge refrigerator freezer refrigerated')

const BAKED_ON = set('sheet sheets tray trays pan pans tin tins dish dishes paper parchment powder soda stone')

const OVEN = set('oven ovens ouen backofen ofen')

/** "Preheat the Dutch oven 1 hr": the oven is heated, and nothing baked. */
function isHeated(tokens: readonly Token[], oven: number): boolean {
  const {block} = tokens[oven]!
  for (let k = oven - 1; k >= 0 && k >= oven - 4 && tokens[k]!.block === block && tokens[k]!.kind === 'word'; k--) {
    const {word} = tokens[k]!
    // "in a preheated oven"
    if (word === 'preheat' || word === 'preheating') return true
    // "heat the oven", but "in a quick well heat oven"
    if (word === 'heat' || word === 'heating') return /^(?:the|your|up)$/.test(tokens[k + 1]!.word)
    if (word === 'in' || word === 'into') return false
  }
  return false
}

const WEIGHS: ReadonlySet<string> = new Set([...Object.keys(cardinals), ...'a an per the each every half quarter of'.split(' ')])

const PROVES = set('prove proved proof ferment')

const rising = set('rise rises rising')

const SCUM = set('scum froth surface')

/** Whether it is scum that rises at `k`. */
function scums(tokens: readonly Token[], k: number): boolean {
  for (let i = k - 1; i >= 0 && i > k - 10 && !isStop(tokens[i]!); i--) if (SCUM.has(tokens[i]!.word)) return true
  return SCUM.has(tokens[k + 3]?.word ?? '')
}

/** No baking of so many minutes is left without a word for it. */
const LONGEST_UNSAID = 1440

/**
 * What a time is for that stands among no words of a task, where that is not what the receipt mainly does: the title's ("Overnight rolls",
 * "Twenty-minute scones"), a night, days.
 */
export function unsaidTask(
  {tokens}: Section,
  from: number,
  to: number,
  low: number,
  besideBake: () => boolean,
): TimePhrase['of'] | null {
  if (NIGHTS.has(tokens[to - 1]!.word) && low >= 480) return 'stand'
  if (isKeptWarm(tokens, from, to)) return 'stand'
  if (isOfAPan(tokens, from, to, besideBake)) return 'other'
  if (isOfSponge(tokens, from)) return 'stand'
  if (isOnTheStove(tokens, from) || isFolded(tokens, from)) return 'other'
  if (low < LONGEST_UNSAID) return null
  return isLabelled(tokens, from) ? null : 'other'
}

/** Verbs of a step on the stove, where what they are said of is an ingredient. */
const PAN_VERBS = set('cook cooked cooking soften reduce heat warm')

const WHOLES: ReadonlySet<string> = new Set(['bread', 'made dish', 'other'])

/** "cook the onions 40 minutes", "cook in a pan, 40 minutes over a low heat": a step before the baking, on the stove. */
function isOfAPan(tokens: readonly Token[], from: number, to: number, besideBake: () => boolean): boolean {
  const {block} = tokens[from]!
  const within = (k: number): boolean => tokens[k]?.block === block && !endsSentence(tokens, k)
  let first = from
  while (first > 0 && from - first < REACH && within(first - 1)) first--
  let last = to
  while (last < to + 8 && within(last)) last++
  let verb = -1
  for (let k = first; k < from; k++) if (PAN_VERBS.has(tokens[k]!.word)) verb = k
  if (verb < 0) return false
  for (let k = verb; k < last; k++) {
    const {word} = tokens[k]!
    if (/^(?:in|on)$/.test(word) && tokens.slice(k, k + 4).some((t) => t.word === 'pan' || t.word === 'stove')) return true
    if (/^over$/.test(word) && tokens.slice(k, k + 4).some((t) => /^(?:heat|flame|fire)$/.test(t.word))) return true
  }
  for (let k = verb + 1; k < from; k++) {
    if (tokens[k]!.kind !== 'word') continue
    const found = itemAt(
      tokens.slice(k, from).map(({stem}) => stem),
      0,
    )
    // "Preheat the oven. Cook the chicken 40 minutes": the baking itself, where no other time is.
    if (found !== null) return !WHOLES.has(found.row.group) && besideBake()
  }
  return false
}

const SPONGES = set('biga poolish levain preferment vorteig sauerteig starter')

/** "Levain (evening before): 50 g starter, 100 g flour, 10–12 hours", "build the levain the night before, 10–12 h": nothing of it is baked. */
function isOfSponge(tokens: readonly Token[], from: number): boolean {
  const head = (first: number, within: number): boolean => {
    for (let k = first; k < from && k < first + within && tokens[k]!.block === tokens[from]!.block; k++)
      if (SPONGES.has(tokens[k]!.word)) return within > 3 || /^[:(—]$/.test(tokens[k + 1]?.word ?? '')
    return false
  }
  const [first] = sentenceAt(tokens, from)
  let block = first
  while (block > 0 && tokens[block - 1]!.block === tokens[from]!.block) block--
  return head(first, HEAD) || head(block, 3)
}

/** How far from the head of its sentence a sponge is named. */
const HEAD = 5

/** "Fold every half hour for the first two hours": how long it is worked. */
function isFolded(tokens: readonly Token[], from: number): boolean {
  for (let k = sentenceAt(tokens, from, REACH)[0]; k < from; k++)
    if (/^(?:fold|folds|folding|falten|dehnen)$/.test(tokens[k]!.word) && !/^(?:in|into|through)$/.test(tokens[k + 1]!.word))
      return true
  return false
}

const STOVE = set('glaze icing syrup sauce caramel juice juices guss glasur sirup sauce soße sosse')

/** What is done with them to a thing that bakes on. */
const PUTS_ON = set('with brush spread coat pour paint glaze baste return bestreichen bepinseln')

/** "Glaze: 20 minutes", "make the syrup, 10 minutes": of what is never baked, but not "brush with the glaze and give it 10 minutes". */
function isOnTheStove(tokens: readonly Token[], from: number): boolean {
  const [first] = sentenceAt(tokens, from, REACH)
  let thing = -1
  for (let k = first; k < from; k++) if (STOVE.has(tokens[k]!.word)) thing = k
  if (thing < 0) return false
  for (let k = first; k < from; k++) if (k !== thing && PUTS_ON.has(tokens[k]!.word)) return false
  return !MORE.has(tokens[from]!.word) && (tokens[thing]!.word !== 'glaze' || !isVerb(tokens, thing))
}

/** "(16 h, 22 °C)": at a heat that bakes nothing. */
function isKeptWarm(tokens: readonly Token[], from: number, to: number): boolean {
  const {block} = tokens[from]!
  for (let k = Math.max(0, from - 5); k < to + 4 && k < tokens.length; k++) {
    const {kind, num, den} = tokens[k]!
    if (tokens[k]!.block !== block || (k >= from && k < to) || kind !== 'number' || den !== 1 || num > WARM) continue
    if (tokens[k + 1]?.word === '°' || (tokens[k + 1]?.word === 'c' && tokens[k + 1]!.capital)) return true
  }
  return false
}

/** No dough is kept hotter and nothing baked cooler, °C. */
const WARM = 60

/** "Time.—" or "Cooking time:" stands before it in the sentence. */
function isLabelled(tokens: readonly Token[], from: number): boolean {
  const {block} = tokens[from]!
  for (let k = from - 1; k >= 0 && k > from - REACH && tokens[k]!.block === block && !endsSentence(tokens, k); k--)
    if (tokens[k]!.word === 'time') return true
  return false
}

const NIGHTS = set('night overnight morning nacht')

/** Whether a heat of the oven stands close to the time: "Gas 2 for 4 hours", "425° 15 min.". */
function besideHeat(tokens: readonly Token[], from: number, to: number, least = LEAST_HEAT): boolean {
  const {block} = tokens[from]!
  const heat = (k: number): boolean => isHeat(tokens, k, least)
  for (let k = from - 1; k >= 0 && k > from - 13 && tokens[k]!.block === block && !endsSentence(tokens, k); k--)
    if (heat(k)) return true
  for (let k = to; k < to + 5 && tokens[k]?.block === block && !endsSentence(tokens, k); k++) if (heat(k)) return true
  return false
}

/** Degrees of either scale, or a gas mark, at token `k`. */
function isHeat(tokens: readonly Token[], k: number, least: number): boolean {
  const {kind, word, num, den, block} = tokens[k]!
  const next = tokens[k + 1]
  if (next === undefined || next.block !== block) return false
  if (word === 'gas') return next.kind === 'number' || next.word === 'mark'
  if (kind !== 'number' || den !== 1 || num < least || num > HOTTEST_HEAT) return false
  return /^(?:°|℃|℉|degrees?|grad)$/.test(next.word) || (/^[cf]$/.test(next.word) && (next.capital || !next.gap))
}

/** Where what is done at a heat ends: “dry for an hour, then bake at 150 °C”. */
const NEXT_STEP = set("then before bake baked baking bak'd backen gebacken oven ofen , und and")

/** "Dry at 100 °C for 2 hours", "2 hours at 100 °C", "at 40 °C leave to dry 2 hours": in the same step as the time. */
function isDriedHot(tokens: readonly Token[], from: number, to: number): boolean {
  const {block} = tokens[from]!
  for (let k = from - 1; k >= 0 && k > from - 13 && tokens[k]!.block === block && !endsSentence(tokens, k); k--) {
    if (isHeat(tokens, k, LEAST_DRYING.c)) return true
    if (DRIES.has(tokens[k]!.word)) break
  }
  for (let k = to; k < to + 5 && tokens[k]?.block === block && !endsSentence(tokens, k); k++) {
    if (NEXT_STEP.has(tokens[k]!.word)) break
    if (isHeat(tokens, k, LEAST_DRYING.c)) return true
  }
  const [first, last] = sentenceAt(tokens, from, REACH)
  for (let k = first; k < last; k++) if (DRIES.has(tokens[k]!.word) && isDriedWarm(tokens, k)) return true
  return false
}

/** Degrees of either scale that are an oven's and no dough's or milk's, and the most that are. */
export const LEAST_HEAT = 130
export const HOTTEST_HEAT = 550

/** Where a time stands alone ("Time: 1 hour"): baking if the receipt bakes, else boiling if it boils. */
export function mainTask(tokens: readonly Token[]): TimePhrase['of'] | null {
  let boils = false
  for (const t of tokens) {
    const task = TASKS.get(t.word)
    if (task === 'bake' && t.word !== 'brown') return 'bake'
    if (task === 'boil') boils = true
  }
  return boils ? 'boil' : null
}
