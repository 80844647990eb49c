import {kindPieces} from '../lexicon/yield-words.js'
import {readAjar} from './ajar.js'
import {readBlind} from './blind.js'
import {type Boiled, boiledWhole} from './boiled.js'
import {readCooling} from './cooling.js'
import {HOTTEST} from './degrees.js'
import {isSet, readEvenings} from './evening.js'
import {laterFacts, readFacts} from './facts.js'
import {bakesFalling} from './falls.js'
import {isFlesh} from './flesh.js'
import {readHeat} from './heat.js'
import {heatsBeyond} from './heat-beyond.js'
import type {UnknownHeat} from './heat-readings.js'
import {readIngredients} from './ingredients.js'
import {kindOf, mayBeBoiled} from './kinds.js'
import {apartFromNotes} from './note-bakes.js'
import {noteSpans, noteWords} from './notes.js'
import {otherBakes} from './other-bakes.js'
import {lineIndex} from './position.js'
import type {RatioTold} from './ratios.js'
import {readRising} from './rising.js'
import {withPlaces} from './rising-places.js'
import {plainSection, type Section} from './section.js'
import {readSections} from './sections.js'
import {secondDish} from './several-dishes.js'
import {standingNights} from './standing-night.js'
import {readStays} from './stays.js'
import {withoutStory} from './story.js'
import {readTending} from './tending.js'
import {readTimes} from './times.js'
import type {Message, ReadIngredient, ReadReceipt, ReceiptFacts, Span} from './types.js'
import {makeView} from './view.js'
import {readYields} from './yield-facts.js'

export interface ReadOptions {
  /** The file's name, for titles and messages. */
  readonly file: string
  /** Year and place where the front matter states none. */
  readonly year?: number
  readonly place?: string
  /** Called for every receipt with the section it was read from, for what follows the reading. */
  readonly each?: (receipt: ReadReceipt, section: Section) => void
}

/**
 * Read every receipt of a Markdown file: one a heading, or the whole file where it has none.
 *
 * @param source the whole file as read
 * @returns receipts in order, and what could not be read: rules `item-unknown`, `measure-unknown`, `measure-taken`, `heat-unknown`, `heat-beyond`, `table-columns`, `reading-doubtful`, `note-other-way`, `ratio`, `percent`, `not-baked`, `facts-second`,
 *   `says-unused`,
 *   `empty`, and those of front matter
 */
export function readReceipts(source: string, options: ReadOptions): {receipts: ReadReceipt[]; messages: Message[]} {
  const {file} = options
  const stated = readFacts(source, file)
  const messages: Message[] = [...stated.messages]
  const receipts: ReadReceipt[] = []
  const place = lineIndex(source)
  const unknownHeat: UnknownHeat[] = []
  const unknownItems = new Map<string, number[]>()
  for (const at of laterFacts(source, stated.bodyStart))
    messages.push({
      file,
      ...place(at),
      severity: 'warning',
      rule: 'facts-second',
      reason:
        'front matter stands before a later receipt, and what stands at the head of a file is said of all its receipts: this is not read',
      suggest: 'put the receipt that it is said of into a file of its own, with these keys at its head',
    })
  const says = [...stated.says].map(([words, reading]) => ({words, reading, used: false}))
  const {facts} = stated
  const year = facts.year ?? options.year ?? null
  const where = facts.place ?? options.place ?? null
  // Words for heat and scales without a letter are read by year and place, wherever those come from.
  const known: ReceiptFacts = {...facts, ...(year === null ? {} : {year}), ...(where === null ? {} : {place: where})}
  for (const section of readSections(source, file, stated.bodyStart, known)) {
    const title = stated.title !== null && receipts.length === 0 ? stated.title : section.title
    const view = makeView(section)
    let ingredients = readIngredients(view, title, false, {
      otherWay: (other) =>
        messages.push({
          file,
          ...place(other.start),
          severity: 'info',
          rule: 'note-other-way',
          reason: `the note “${noteWords(other.text)}” gives another way: its amounts are not added to the receipt’s own`,
          suggest: 'to follow the note, write its amounts into the receipt’s own text',
        }),
      ratio: (ratio) => messages.push({file, ...place(ratio.start), ...ratioMessage(ratio)}),
      formula: ({start, words}) =>
        messages.push({
          file,
          ...place(start),
          severity: 'warning',
          rule: 'percent',
          reason: `“${noteWords(words)}” is a share of the flour’s weight, and the receipt gives no weight to reckon from: its baker’s percentages are carried through without amounts`,
          suggest:
            'write a weight into the receipt’s own text, as “Flour weight: 1 kg”, “Dough weight: 1.8 kg” or “2 loaves of 900 g”',
        }),
      pieces: () => {
        const {serves} = readYields(section, () => 'loaves')
        return serves === null || serves.of === 'persons' ? null : serves
      },
      sizes: (sizes) =>
        messages.push({
          file,
          ...place(sizes.start),
          severity: 'warning',
          rule: 'table-columns',
          reason: `the table gives the amounts twice (“${noteWords(sizes.read)}”, “${noteWords(sizes.other)}”): those of the first column are read`,
          suggest: 'to bake the other, write its amounts as a receipt of its own, under a heading of its own',
        }),
    })
    if (says.length > 0) ingredients = corrected(source, section.start, section.end, ingredients, says)
    for (const one of ingredients) {
      if (!one.known) {
        const places = unknownItems.get(one.item)
        if (places === undefined) unknownItems.set(one.item, [one.start])
        else places.push(one.start)
      }
      const less = isBelowNothing(source, one.start)
      if (less || one.amount?.high === 0)
        messages.push({
          file,
          ...place(one.start),
          severity: 'warning',
          rule: 'amount-none',
          reason: less
            ? `“${noteWords(one.text)}” has a minus before it, and no amount is less than nothing: read without it`
            : `“${noteWords(one.text)}” is none of it`,
          suggest: 'write how much of it goes in, or take it out',
        })
      if (one.takenAs !== undefined)
        messages.push({
          file,
          ...place(one.start),
          severity: 'warning',
          rule: 'measure-taken',
          reason:
            one.takenBy === undefined
              ? `“${noteWords(one.text)}” has no measure: it is read in grams, as the rest of the list is`
              : `“${noteWords(one.text)}” has no measure, nor has the rest of the list: it is read in grams, since the numbers are so large`,
          suggest: 'write the measure behind the number, as in “500 g flour”',
        })
      if (one.unmeasured === true)
        messages.push({
          file,
          ...place(one.start),
          severity: 'warning',
          rule: 'measure-unknown',
          reason:
            one.measureText === undefined
              ? `“${noteWords(one.text)}” has no measure that this lexicon knows: its number is carried through without a weight`
              : `“${one.measureText}” in “${noteWords(one.text)}” is no measure that this lexicon knows: the number is carried through without a weight`,
          suggest:
            one.measureText === undefined
              ? 'write the measure behind the number, as in “500 g flour”'
              : 'write the measure’s usual name in the text, or how to read the words under “says:” in the front matter',
        })
      if (one.other !== undefined)
        messages.push({
          file,
          ...place(one.start),
          severity: 'info',
          rule: 'reading-doubtful',
          reason: `“${one.text}” is read as ${reading(one)}; it could be ${one.other.reading}`,
          suggest: `to settle it, write in the front matter: ${one.other.settle}`,
        })
    }
    const {door, times: stayed} = readStays(section, withoutStory(view, readTimes(section)))
    const {times: left, cooling} = readCooling(section, stayed)
    const ajar = readAjar(section)
    const blind = readBlind(section, left)
    const allTimes = blind?.times ?? left
    const tending = [...(blind === null ? [] : [blind.fill]), ...readTending(section, allTimes)]
    const told = new Set<string>()
    const notes = noteSpans(view)
    const boiled =
      facts.oven === undefined && facts.bake === undefined && mayBeBoiled({...section, title}, ingredients)
        ? boiledWhole(section, ingredients, allTimes, notes)
        : null
    const offered: Span[] = []
    const heats = readHeat(section, unknownHeat)
    const {oven, times} = apartFromNotes(
      heats,
      allTimes,
      boiled === null ? [...notes, ...otherBakes(section, heats, allTimes)] : [...notes, ...boiled.offered],
      ({note, phrase, serves}) => {
        if (boiled !== null) {
          offered.push(phrase)
          return
        }
        const words = noteWords(source.slice(note.start, note.end))
        if (told.has(`${serves} ${words}`)) return
        told.add(`${serves} ${words}`)
        messages.push({
          file,
          ...place(phrase.start),
          severity: 'info',
          rule: 'note-other-way',
          reason: serves
            ? `the heat or time in the note “${words}” serves, since the receipt’s own text gives none`
            : `the note “${words}” gives another way: its heats and times are not taken for the receipt’s own`,
          ...(serves
            ? {}
            : {suggest: 'to follow the note, write its heat and time into the receipt’s own text, or in the front matter'}),
        })
      },
      boiled === null,
    )
    if (boiled !== null) messages.push({file, ...place(boiled.start), ...boiledMessage(title, boiled, offered)})
    for (const heat of heatsBeyond(section))
      messages.push({
        file,
        ...place(heat.start),
        severity: 'warning',
        rule: 'heat-beyond',
        reason: `“${noteWords(heat.text)}” is hotter than any oven bakes: it is not taken as a heat`,
        suggest: `write up to ${HOTTEST} °C, ${Math.round((HOTTEST * 9) / 5 + 32)} °F or gas mark 10`,
      })
    const piece = (): string | null => {
      const kind = boiled === null ? kindOf({...section, title}, ingredients) : null
      return kind === null ? null : (kindPieces.get(kind.words) ?? kindPieces.get(kind.id) ?? null)
    }
    const yields = readYields(section, piece)
    // "Mould into twenty manchets": what is made, and nothing that goes in.
    const made = yields.serves
    if (made !== null)
      ingredients = ingredients.filter((one) => one.measure !== 'count' || one.start < made.start || one.end > made.end)
    const evening = readEvenings(section, ingredients, times, notes)
    // The night of a sponge is no rising of the dough.
    const own = times.map((time) => (time.of === 'rise' && isSet(evening, time) ? {...time, of: 'stand' as const} : time))
    const rising = readRising(section, own)
    const stood = standingNights(section, rising.times, evening)
    const second = secondDish(section, ingredients, rising.times)
    if (second !== null)
      messages.push({
        file,
        ...place(second.start),
        severity: 'warning',
        rule: 'dishes-two',
        reason:
          'a second list begins here with much of the first again, and each has a bake below it: they are read as one receipt',
        suggest: 'if they are two dishes, write a heading with its name over each, such as “## Brown loaf”',
      })
    const receipt: ReadReceipt = {
      file,
      title,
      line: section.line,
      start: section.start,
      end: section.end,
      year,
      place: where,
      kind: null,
      ingredients,
      oven,
      times: withPlaces(section, rising.times),
      ...(rising.untimed.length > 0 ? {untimed: rising.untimed} : {}),
      ...(door.length > 0 ? {door} : {}),
      ...(ajar === null ? {} : {ajar}),
      ...(tending.length > 0 ? {tending} : {}),
      ...(cooling === null ? {} : {cooling}),
      ...(bakesFalling(section, cooling) ? {falls: true as const} : {}),
      ...(evening.length + stood.length > 0 ? {evening: [...evening, ...stood].sort((a, b) => a.start - b.start)} : {}),
      ...yields,
      facts,
      ...(boiled === null ? {} : {boiled: boiled.text}),
    }
    receipts.push(receipt)
    options.each?.(receipt, section)
  }
  for (const [item, places] of unknownItems) {
    messages.push({
      file,
      ...place(places[0]!),
      severity: 'warning',
      rule: 'item-unknown',
      reason: `“${item}” is not an ingredient this lexicon knows: ${isFlesh(item) ? 'it is taken as the meat or fish that its name has, without the weight of a piece' : 'its words are carried through without a weight'}${list(places, place)}`,
      suggest: 'write its usual name in the text, or how to read the words under “says:” in the front matter',
    })
  }
  const heats = new Map<string, number[]>()
  for (const heat of unknownHeat) heats.set(heat.text, [...(heats.get(heat.text) ?? []), heat.start])
  for (const [text, places] of heats) {
    messages.push({
      file,
      ...place(places[0]!),
      severity: 'warning',
      rule: 'heat-unknown',
      reason: `“${text}” is not a word for heat this lexicon knows${list(places, place)}`,
      suggest: 'state the heat in the front matter: oven: a quick oven',
    })
  }
  for (const one of says)
    if (!one.used)
      messages.push({
        file,
        ...place(stated.at(one.words)),
        severity: 'warning',
        rule: 'says-unused',
        reason: `the words “${one.words}” do not stand in the text, or “${one.reading}” has no amount and name that can be read`,
        suggest: 'quote the words exactly as they stand in the text',
      })
  if (receipts.length === 0 && !messages.some((m) => m.severity === 'error'))
    messages.push({
      file,
      line: 1,
      column: 1,
      severity: 'warning',
      rule: 'empty',
      reason: 'there is no receipt in this file',
      suggest: 'write a heading with the receipt’s name, and its text below',
    })
  return {receipts, messages}
}

function boiledMessage(title: string, {text}: Boiled, offered: readonly Span[]): Omit<Message, 'file' | 'line' | 'column'> {
  const said = `“${title}” is boiled or steamed (“${noteWords(text)}”), not baked: no heat and no time in the oven are filled in`
  return {
    severity: 'warning',
    rule: 'not-baked',
    reason:
      offered.length === 0
        ? said
        : `${said}; baking it is another way (“${offered.map((one) => noteWords(one.text)).join('”, “')}”)`,
    suggest: 'to bake it all the same, write “oven:” and “bake:” in the front matter',
  }
}

const ratioMessage = ({words, base, item, is}: RatioTold): Omit<Message, 'file' | 'line' | 'column'> =>
  is === 'one'
    ? {
        severity: 'info',
        rule: 'ratio',
        reason: `“${noteWords(words)}” is for “${base}”, and the receipt does not say how much ${item} there is: it is read as a receipt for that much`,
        suggest: 'to make another amount, write how much of it there is into the receipt’s own text',
      }
    : {
        severity: 'warning',
        rule: 'ratio',
        reason: `“${noteWords(words)}” is for “${base}”, and the receipt does not say how much ${item} there is: it is carried through without an amount`,
        suggest: 'write how much of it there is into the receipt’s own text, or the amounts themselves',
      }

const reading = (one: ReadIngredient): string =>
  one.exact === null
    ? one.item
    : `${one.exact}${one.exactHigh === undefined ? '' : `–${one.exactHigh}`} ${one.measure} ${one.item}`

/** ": 3 times, on lines 4, 9 and 12". */
function list(places: readonly number[], place: (offset: number) => {line: number}): string {
  if (places.length < 2) return ''
  const lines = [...new Set(places.map((at) => place(at).line))]
  return ` (${places.length} times, on ${lines.length > 1 ? 'lines' : 'line'} ${lines.join(', ')})`
}

/** Readings corrected by hand, `says:` in the front matter, put in place of the reader's own. */
function corrected(
  source: string,
  from: number,
  to: number,
  ingredients: readonly ReadIngredient[],
  says: ReadonlyArray<{readonly words: string; readonly reading: string; used: boolean}>,
): ReadIngredient[] {
  let result = [...ingredients]
  for (const one of says) {
    if (one.words === '') continue
    const start = source.indexOf(one.words, from)
    const end = start + one.words.length
    if (start < 0 || end > to) continue
    const read = readIngredients(makeView(plainSection(one.reading)), '', true)[0]
    if (read === undefined) continue
    one.used = true
    const part = result.find((r) => r.start < end && r.end > start)?.part ?? ''
    result = result.filter((r) => r.end <= start || r.start >= end)
    result.push({...read, text: one.words, start, end, part, confidence: 1, notes: [...read.notes, 'as the front matter says']})
    result.sort((a, b) => a.start - b.start)
  }
  return result
}

/** What a minus of an amount stands behind: a dash between a name and its amount (“Butter -2 oz”), or of a range, is none. */
const BEFORE_MINUS = /(?:^[-*+•]|^\d{1,3}[.)]|[,;(]|(?:^|\s)(?:and|with|of|or|und|mit|oder))$/i

/** Whether an amount at an offset of the text has a minus right before it. */
function isBelowNothing(source: string, start: number): boolean {
  if (!/^[-−]\d/.test(source.slice(start - 1, start + 1))) return false
  const line = source.slice(source.lastIndexOf('\n', start - 1) + 1, start - 1).trim()
  return BEFORE_MINUS.test(line)
}
