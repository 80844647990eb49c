import {kinds} from '../lexicon/kinds.js'
import {writeDuration} from '../measure/quantity.js'
import {signsOf} from '../plan/own-signs.js'
import {listed, type PhraseId, phrase, phrases, type Speaker, speak} from '../plan/phrases.js'
import type {Phrase, Plan, PlanProblem, Step} from '../plan/types.js'
import {coreSigns} from '../scale/core-heat.js'
import {bySight} from '../scale/kind-figures.js'
import {clock, clockBeside, difference, fahrenheit, kitchen, length, temperature, wood} from './figures.js'
import {dishTitle} from './heat-data.js'
import {bookOf, inWords, itemName} from './said.js'
import type {Style} from './style.js'
import {dePhrases} from './words/de-phrases.js'
import {deSigns} from './words/de-signs.js'
import {sayIf} from './words/index.js'
import {inBook} from './words/sentences.js'

/** The words of a step, said in the reader's language, clock and units. */
export interface StepWords {
  readonly say: string
  readonly sign: string | null
  readonly ifAhead: string | null
  readonly ifBehind: string | null
}

/** The planner's phrases in each language the sheets have. */
export const phraseBooks: Readonly<Record<string, Readonly<Record<string, string>>>> = {en: phrases, de: dePhrases}

/** The signs of the lexicon's kinds in the languages that have their own; English says them as the lexicon does. */
export const signBooks: Readonly<Record<string, Readonly<Record<string, string>>>> = {de: deSigns}

/** Degrees of a sign's own words, °C alone, as the reader has them. */
function inDegrees(text: string, style: Style): string {
  if (style.degrees === 'C') return text
  return text.replace(/\b(\d+) °C(?! *\()/g, (whole, celsius: string) => {
    const f = `${Math.round(fahrenheit(Number(celsius)))} °F`
    return style.degrees === 'F' ? f : `${whole} (${f})`
  })
}

/** The sign that a dish is done, in the reader's language where it is the kind's usual one; a receipt's own sign stays as it is. */
export function signIn(kind: string | null, sign: string, style: Style): string {
  const row = kinds.find(({id}) => id === kind)
  const usual = row?.sign
  if (sign === bySight) return inWords(sign, style)
  const centre = Object.values(coreSigns).find((one) => sign === one || (sign !== usual && sign.endsWith(`; ${one}`)))
  if (centre !== undefined) {
    const rest = sign.slice(0, Math.max(0, sign.length - centre.length - 2))
    return [...(rest === '' ? [] : [signIn(kind, rest, style)]), inDegrees(inWords(centre, style), style)].join('; ')
  }
  if (sign === row?.tender?.sign || sign === row?.set?.sign) return inDegrees(inWords(sign, style), style)
  return inDegrees((kind !== null && sign === usual && signBooks[style.words['language.code']]?.[kind]) || sign, style)
}

/** How the planner's phrases are said in a style. */
export function speaker(problem: PlanProblem, style: Style): Speaker {
  const {words} = style
  return {
    templates: phraseBooks[words['language.code']] ?? phrases,
    title: (id) => dishTitle(problem, id),
    clock: (minutes) => clock(minutes, style),
    minutes: writeDuration,
    celsius: (celsius) => temperature(celsius, style),
    kilograms: (kilograms) => wood(kilograms, style),
    metres: (metres) => length(metres, style),
    difference: (celsius) => difference(celsius, style),
    amount: ({kitchen, item, called}) => {
      const name = bookOf(style) === null ? called : itemName(item, style, 2)
      return kitchen === item ? name : `${amountWords(kitchen, style)} ${name}`
    },
    word: (word) => sayIf(words, `zone.${word}`, sayIf(words, `word.${word}`, inWords(word, style))),
    // Two batches of one dish are one thing to name.
    and: (all) => listed([...new Set(all)], words['list.and']),
  }
}

/** An amount for the kitchen in the reader's units and words. */
function amountWords(amount: string, style: Style): string {
  const shown = kitchen(amount, style)
  const book = bookOf(style)
  return shown !== amount || book === null ? shown : (inBook(shown, book) ?? shown)
}

/** The words of a step; where the planner gave none as data, its own English ones. */
export function stepWords(step: Step, problem: PlanProblem, style: Style): StepWords {
  const {words} = step
  if (!words) return {say: step.say, sign: step.sign, ifAhead: step.ifAhead, ifBehind: step.ifBehind}
  // Who reads a step knows its day.
  const voice = {...speaker(problem, style), clock: (minutes: number) => clockBeside(minutes, step.at, style)}
  const said = (phrase: Phrase | null, otherwise: string | null): string | null =>
    phrase ? speak(phrase, voice) || otherwise : otherwise
  return {
    say: speak(words.say, voice) || step.say,
    sign: words.sign?.id === 'sign own' ? ownSigns(step, problem, style) || step.sign : said(words.sign, step.sign),
    // A dish that cannot be done before its time has nothing to be looked for early; nor one at its latest to be waited for.
    ifAhead: outOf(words.ifAhead, 'early', (early) => early >= step.at) ? null : said(words.ifAhead, step.ifAhead),
    ifBehind: outOf(words.ifBehind, 'late', (late) => late <= step.at)
      ? speak(phrase(atLatest[words.ifBehind!.id]!, words.ifBehind!.values), voice)
      : said(words.ifBehind, step.ifBehind),
  }
}

/** Steps that are done over and over, and looked at in the same way each time. */
const again: ReadonlySet<Step['action']> = new Set(['feed', 'shut'])

/**
 * The words of a day's steps, to be asked for in the order in which they are read: what to do when ahead or behind, and by what a fire or a
 * shut door is judged, is said once in the same words, since a cook who has read it need not read past it six times.
 */
export function wordsInTurn(problem: PlanProblem, style: Style): (step: Step) => StepWords {
  const told = new Set<string>()
  const once = (words: string | null): string | null => {
    if (words === null || told.has(words)) return null
    told.add(words)
    return words
  }
  return (step) => {
    const {say, sign, ifAhead, ifBehind} = stepWords(step, problem, style)
    const seen = once(sign)
    return {say, sign: again.has(step.action) ? seen : sign, ifAhead: once(ifAhead), ifBehind: once(ifBehind)}
  }
}

/** What is said of a draw that is not done, and the same where it is at its latest already. */
const atLatest: Readonly<Partial<Record<string, PhraseId>>> = {
  'behind draw': 'behind draw late',
  'behind draw kept': 'behind draw kept late',
  'behind draw ajar': 'behind draw ajar late',
  'behind draw ajar kept': 'behind draw ajar kept late',
}

/** Whether a phrase has a time that makes it idle. */
function outOf(words: Phrase | null, name: 'early' | 'late', idle: (minutes: number) => boolean): boolean {
  const value = words?.values[name]
  const timed = words !== null && (name === 'early' ? words.id === 'ahead draw' : words.id in atLatest)
  return timed && typeof value === 'object' && 'value' in value && idle(Math.round(value.value))
}

/** The signs of the dishes a step draws. */
function ownSigns(step: Step, problem: PlanProblem, style: Style): string {
  const {title, and} = speaker(problem, style)
  // In the order of the step's own words.
  const drawn = step.dishes.flatMap((id) => problem.dishes.filter((dish) => dish.id === id))
  return signsOf(
    drawn.map((dish) => ({title: title(dish.id), sign: signIn(dish.kind, dish.sign, style)})),
    and,
  )
}

/** What would help an unplaced dish, in the reader's language where the planner gave it as data. */
export function remedyLines(unplaced: Plan['unplaced'][number], problem: PlanProblem, style: Style): string[] {
  const voice = speaker(problem, style)
  const tried = unplaced.tried ?? []
  return unplaced.remedies.map((remedy) => {
    const words = tried.find((other) => other.say === remedy)?.words
    return (words && speak(words, voice)) || remedy
  })
}

/** What would help the day. */
export interface WaysTold {
  readonly lead: string
  /** Empty where nothing that was tried helps. */
  readonly lines: readonly string[]
}

/** What would help the day, in the reader's language; null where none was looked for, or only single dishes are helped, which are told of theirs. */
export function waysTold(plan: Plan, problem: PlanProblem, style: Style): WaysTold | null {
  const {ways} = plan
  if (!ways || (ways.length === 0 && plan.unplaced.some(({remedies}) => remedies.length > 0))) return null
  const voice = speaker(problem, style)
  // What no oven of this kind would bake if nothing else were in it, less of it does not help, nor more time.
  const alone =
    plan.unplaced.length > 0 &&
    plan.unplaced.every(({rule, words}) => BY_ITSELF.has(rule) && words?.id.startsWith('as left') === false)
  return {
    lead: style.words[ways.length > 0 ? 'plan.ways' : alone && !plan.late?.length ? 'plan.noWaysAlone' : 'plan.noWays'],
    lines: ways.map(({words, say}) => speak(words, voice) || say),
  }
}

/** Rules of what hinders a dish that is alone in the oven. */
const BY_ITSELF: ReadonlySet<string> = new Set(['start heat', 'dose'])

/** Why a dish has no place, in the reader's language. */
export function reasonOf(unplaced: Plan['unplaced'][number], problem: PlanProblem, style: Style): string {
  return (unplaced.words && speak(unplaced.words, speaker(problem, style))) || inWords(unplaced.reason, style)
}

/** What would fill idle floor, in the reader's language and clock. */
export function suggestionWords(one: NonNullable<Plan['suggestions']>[number], problem: PlanProblem, style: Style): string {
  return (one.words && speak(one.words, speaker(problem, style))) || one.say
}

/** What would fill idle floor, and what is to be known of it; null where there is nothing to tell. */
export interface Suggested {
  readonly lines: readonly string[]
  readonly note: string
}

/** What is said of a day's spare receipts: what has room, or that none has. */
export function suggestionsOf(plan: Pick<Plan, 'suggestions'>, problem: PlanProblem, style: Style): Suggested | null {
  const lines = (plan.suggestions ?? []).map((one) => suggestionWords(one, problem, style))
  if (lines.length > 0) return {lines, note: style.words['plan.suggestionsNote']}
  return problem.day.spare.length > 0 && !problem.done ? {lines, note: style.words['plan.suggestionsNone']} : null
}

/** What moved and why, in the reader's language. */
export function changeWords(
  one: NonNullable<Plan['changes']>[number],
  problem: PlanProblem,
  style: Style,
): {readonly what: string; readonly why: string} {
  if (!one.words) return {what: one.what, why: one.why}
  const voice = speaker(problem, style)
  return {what: speak(one.words.what, voice) || one.what, why: speak(one.words.why, voice) || one.why}
}
