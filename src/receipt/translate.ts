import {cookingWords} from '../lexicon/grammar-words.js'
import {lookUpItem, lookUpKind} from '../lexicon/index.js'
import {wholePieces} from '../lexicon/whole-pieces.js'
import {convert} from '../measure/convert.js'
import {type Frame, frameOf, MODERN_YEAR} from '../measure/frame.js'
import {sourItems} from '../measure/leaven.js'
import {less} from '../measure/range.js'
import {cautionsOf} from './cautions.js'
import {cookedAmong} from './cooked.js'
import {readCutUp} from './cut-up.js'
import {signsOf} from './done-signs.js'
import {fillFromKind} from './fill.js'
import {markFilling} from './filling.js'
import {fleshTold} from './flesh-told.js'
import {frontMatterSpan} from './front-matter.js'
import {readHeatWords} from './heat.js'
import type {UnknownHeat} from './heat-readings.js'
import {type KindFound, kindOf, UNBAKED_ID} from './kinds.js'
import {lineIndex} from './position.js'
import {readReceipts} from './read.js'
import type {Section} from './section.js'
import {workedOut} from './time-by-weight.js'
import type {Inferred, Ingredient, Message, ReadIngredient, ReadReceipt, Receipt, ReceiptFacts, Translation} from './types.js'
import {readVessel} from './vessel.js'
import {vesselsSaid, vesselsUncounted} from './vessel-count.js'
import {oddVessels} from './vessel-sizes.js'

/** How `translate` takes a text. */
export interface TranslateOptions {
  /** The file's name, for titles and messages. */
  readonly file: string
  /** Year and place where the front matter states none. */
  readonly year?: number
  readonly place?: string
}

/**
 * Read a text and put it into one language: every receipt with its ingredients as weights and volumes with their ranges, its heat, times
 * and yield, what it leaves out filled from its kind of dish, and what in it can harm.
 *
 * @param source the whole file as read
 * @returns the contract of `translate --format json`; it never throws, and every span's text is `source.slice(start, end)`
 */
export function translate(source: string, options: TranslateOptions): Translation {
  const {file} = options
  const receipts: Receipt[] = []
  const place = lineIndex(source)
  const extra: Message[] = []
  const read = readReceipts(source, {
    ...options,
    each: (receipt, section) =>
      receipts.push(finish(receipt, section, (message) => extra.push({file, ...message, ...place(message.at)}))),
  })
  const facts = receipts[0]?.facts
  if (facts !== undefined) for (const message of checkFacts(source, facts)) extra.push({file, ...message, ...place(message.at)})
  const messages = [...read.messages, ...extra.map(withoutAt)]
  return {format: 1, receipts, messages: messages.sort((a, b) => a.line - b.line || a.column - b.column)}
}

interface Said extends Omit<Message, 'file' | 'line' | 'column'> {
  readonly at: number
}

const withoutAt = (message: Message & {at?: number}): Message => {
  const {at: _at, ...rest} = message
  return rest
}

/** A title that roasts its meat: “roast beef” among what goes in is the joint. */
const ROASTS = /\b(?:roast|roasted|gebratene?[rsn]?)\b|braten\b/i

/** From a receipt as read to a receipt as the JSON gives it. */
function finish(receipt: ReadReceipt, section: Section, say: (message: Said) => void): Receipt {
  const kind: KindFound | null =
    receipt.boiled === undefined
      ? kindOf(section.title === receipt.title ? section : {...section, title: receipt.title}, receipt.ingredients)
      : {id: UNBAKED_ID, words: oneLine(receipt.boiled), by: 'text'}
  const {year, place, oven, serves, facts} = receipt
  const frame = frameOf({year, place, ingredients: receipt.ingredients, oven})
  const sour = sourItems(receipt.ingredients.map((one) => one.item))
  const whole = wholePieces.some(({kinds}) => kinds.includes(receipt.kind ?? kind?.id ?? ''))
  const cooked = cookedAmong(section, receipt.ingredients, whole || ROASTS.test(receipt.title))
  const told = fleshTold(section, receipt.title, receipt.ingredients, cooked)
  const ingredients = receipt.ingredients.map((one): Ingredient => {
    const done = cooked.get(one)
    return done === undefined ? converted(one, frame, sour) : {...converted(one, frame, sour), cooked: done}
  })
  const times = workedOut(receipt.times, ingredients, (time, of) =>
    say(
      of === null
        ? {
            at: time.start,
            severity: 'warning',
            rule: 'time-by-weight',
            reason: `“${oneLine(time.text)}” is a time by weight, and the receipt does not say what the piece weighs`,
            suggest: 'write the weight beside the piece, as “1 chicken (1.8 kg)”, or `bake:` in the front matter',
          }
        : {
            at: time.start,
            severity: 'info',
            rule: 'time-by-weight',
            reason: `“${oneLine(time.text)}” is a time by weight: for “${oneLine(of)}” that is ${minutesText(time.minutes)} min`,
          },
    ),
  )
  const bakes =
    facts.oven !== undefined || facts.bake !== undefined || oven.length > 0 || times.some((time) => time.of === 'bake')
  for (const phrase of oven)
    if (phrase.disagree === true)
      say({
        at: phrase.start,
        severity: 'warning',
        rule: 'heat-disagrees',
        reason: `“${oneLine(phrase.text)}”: ${phrase.notes?.find((note) => note.includes('disagree')) ?? 'the temperatures disagree'}`,
        suggest: `keep one of them, or write in the front matter: oven: ${Math.round((phrase.celsius.low + phrase.celsius.high) / 2)} °C`,
      })
  for (const {text, word, start} of facts.vessel === undefined ? oddVessels(section, receipt.ingredients) : [])
    say({
      at: start,
      severity: 'warning',
      rule: 'vessel-unknown',
      reason: `“${word}” in “${oneLine(text)}” is no unit of length: the size of the vessel is not read`,
      suggest: 'write inches or centimetres, or state the vessel in the front matter: vessel: round 23 x 6 cm',
    })
  const allergens = new Set<string>()
  for (const one of [...ingredients, ...told])
    for (const allergen of lookUpItem(one.item)?.allergens ?? []) allergens.add(allergen)
  const signs = signsOf(section, receipt.ingredients)
  const vessels = vesselsSaid(section, receipt.ingredients)
  const cutUp = whole ? readCutUp(section, receipt.ingredients) : null
  const several = vessels === null ? vesselsUncounted(section, receipt.ingredients) : null
  if (lookUpKind(receipt.kind ?? kind?.id ?? '')?.filled) markFilling(section, ingredients)
  return {
    ...receipt,
    times,
    kind: receipt.kind ?? kind?.id ?? null,
    ingredients,
    inferred: [
      ...toldOf(frame),
      ...fillFromKind({
        section,
        facts,
        kind,
        ingredients: receipt.ingredients,
        oven,
        times,
        untimed: receipt.untimed,
        serves,
        by: frame,
      }),
    ],
    cautions: cautionsOf({
      section,
      ingredients,
      told,
      times,
      kind: kind?.id ?? null,
      evening: receipt.evening ?? [],
      cooked: bakes || section.tokens.some((token) => COOKS.has(token.word)),
    }),
    allergens: [...allergens].sort(),
    ...(vessels === null ? {} : {vessels}),
    ...(several === null ? {} : {several}),
    ...(told.length === 0 ? {} : {fleshTold: told}),
    ...(cutUp === null ? {} : {cutUp}),
    ...(signs.length > 0 ? {signs} : {}),
  }
}

/** That the measures were read as modern, or as one country's, where the receipt does not say so itself. */
const toldOf = ({year, place, told}: Frame): Inferred[] =>
  told === null
    ? []
    : [
        {
          field: 'measures',
          value: [place, year !== null && year >= MODERN_YEAR ? 'modern' : year].filter((part) => part !== null).join(', '),
          why: told,
        },
      ]

/** A receipt with one of these words cooks what goes into it. */
const COOKS: ReadonlySet<string> = new Set(cookingWords)

const minutesText = ({low, high}: {readonly low: number; readonly high: number}): string =>
  low === high ? String(low) : `${low}–${high}`

const oneLine = (text: string): string => text.replace(/\s+/g, ' ')

/** “5/2” as a number. */
function numberOf(exact: string): number {
  const [top = 0, bottom = 1] = exact.split('/').map(Number)
  return top / bottom
}

function converted(one: ReadIngredient, {year, place, told}: Frame, sour: readonly string[]): Ingredient {
  const {exactHigh, measureText, item, hedges, stated, reckoned} = one
  const counted = reckoned === undefined ? null : numberOf(reckoned)
  const amount = counted === null ? one.amount : {low: counted, high: counted}
  const exact = reckoned ?? one.exact
  const measure = reckoned === undefined ? one.measure : 'count'
  const result = convert({
    amount,
    exact,
    ...(exactHigh === undefined ? {} : {exactHigh}),
    measure,
    ...(measureText === undefined ? {} : {measureText}),
    item,
    year,
    place,
    hedges,
    told,
    sour,
    ...(stated === undefined ? {} : {stated}),
  })
  const {millilitres} = result
  let {grams, sources, why} = result
  if (one.bakersPercent?.of !== undefined) {
    why = [...one.notes.slice(-1).map((step) => ({step, source: 'common-practice'})), ...why]
    sources = [...new Set(['common-practice', ...sources])]
  }
  if (one.lacks !== undefined && grams !== null) {
    const {item: part, count, text} = one.lacks
    const lacking = numberOf(count)
    const out = convert({
      amount: {low: lacking, high: lacking},
      exact: count,
      measure,
      item: part,
      year,
      place,
      hedges,
      told,
      sour,
    })
    if (out.grams !== null) {
      grams = less(grams, out.grams)
      const step = {step: `“${text}”: less ${count} ${part}, ${Math.round(out.grams.likely)} g`, source: 'receipt'}
      why = [...why, ...out.why, step]
      sources = [...new Set([...sources, ...out.sources])]
    }
  }
  const notes = result.notes.length > 0 ? [...one.notes, ...result.notes] : one.notes
  // The reading is this call's own: it is completed where it lies, since a copy of each costs as much as the conversion.
  return Object.assign(one, {
    grams,
    millilitres,
    ...(result.today === undefined ? {} : {today: result.today}),
    sources,
    why,
    notes,
  })
}

/** What front matter says of the heat and the vessel must be words the reader knows: it is there to settle the matter. */
function checkFacts(source: string, facts: ReceiptFacts): Said[] {
  const said: Said[] = []
  const span = frontMatterSpan(source)
  const yaml = span === null ? '' : source.slice(span.start, span.end)
  const at = (key: RegExp): number => {
    const found = key.exec(yaml)
    return (span?.start ?? 0) + (found === null ? 0 : found.index + found[0].length)
  }
  const unknown: UnknownHeat[] = []
  const oven = facts.oven === undefined ? null : readHeatWords(facts.oven, facts, unknown)
  if (oven !== null && unknown.length > 0)
    said.push({
      at: at(/^oven:[ \t]*/m),
      severity: 'warning',
      rule: 'heat-unknown',
      reason: `oven: “${unknown[0]!.text}” is no heat and no scale known here; what is left of “${facts.oven}” is read`,
      suggest: 'write “a quick oven”, “350 °F”, “180 °C fan” or “gas mark 4”',
    })
  if (facts.oven !== undefined && oven === null)
    said.push({
      at: at(/^oven:[ \t]*/m),
      severity: 'warning',
      rule: 'heat-unknown',
      reason: `oven: “${facts.oven}” is no heat known here`,
      suggest: 'write “a quick oven”, “350 °F”, “180 °C fan” or “gas mark 4”',
    })
  const vessel = facts.vessel === undefined ? null : readVessel(facts.vessel)
  if (vessel !== null && !vessel.ok)
    said.push({
      at: at(/^vessel:[ \t]*/m),
      severity: 'warning',
      rule: 'vessel-unknown',
      reason: `vessel: ${vessel.reason}`,
      suggest: vessel.suggest,
    })
  else if (vessel?.ok === true && vessel.unknown !== undefined)
    said.push({
      at: at(/^vessel:[ \t]*/m),
      severity: 'warning',
      rule: 'vessel-unknown',
      reason: `vessel: “${vessel.unknown}” is no vessel known here; by its sizes it is taken as ${vessel.value.shape}`,
      suggest:
        'write “round”, “square”, “oblong”, “loaf”, “pie plate”, “crock”, “sheet” or “free-standing loaf” before the sizes',
    })
  return said
}
