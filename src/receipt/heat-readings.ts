import type {Band, Hedge, OvenWord} from '../lexicon/schema.js'
import {bandOf} from './degrees.js'
import {goneAt, isWarnedAgainst} from './heat-warned.js'
import {HEAT_SUBSIDES, UNKNOWN_HEAT} from './heat-words.js'
import type {Section} from './section.js'
import type {OvenPhrase} from './types.js'
import {Walk} from './walk.js'

/**
 * The phrases of heat found in a receipt: what the lexicon’s rows and a hedge make of each, and one reading where several overlap.
 */

/** A phrase of heat as read: its words are the tokens [from, to). */
export interface Reading {
  readonly from: number
  readonly to: number
  readonly band: Band
  readonly low: number
  readonly high: number
  readonly sources: readonly string[]
  readonly notes: readonly string[]
  /** Kept before a reading of less rank where two overlap. */
  readonly rank: number
  readonly disagree?: boolean
  readonly condition?: boolean
  readonly against?: boolean
  readonly fallenTo?: boolean
  readonly known?: boolean
}

/** A heat that is warned of, "not too fierce", is the end of what the dish bears: nothing is baked so hot, and so far below it may well be, °C. From memory. */
const belowWarned = 50
/** What is warned of for too little heat begins below this, °C. */
const leastTooHot = 175

/** A reading of a heat that the receipt warns of. */
function warnedOf({low, ...read}: Reading): Reading {
  return {
    ...read,
    low: low - belowWarned,
    high: low,
    band: bandOf(low - belowWarned, low),
    notes: ['warned of: no heat that it wants, but more than it bears', ...read.notes],
    against: true,
  }
}

/** A word before "oven" that the lexicon does not know as a heat word: reported, and carried through. */
export interface UnknownHeat {
  readonly text: string
  readonly start: number
  readonly end: number
}

const round = (n: number): number => Math.round(n)

/** What has been read of the heat of one receipt, with the way about its tokens. */
export class HeatReadings extends Walk {
  readonly found: Reading[] = []

  constructor(
    section: Section,
    /** Takes the words before "oven" that no row knows. */
    readonly unknown: UnknownHeat[],
  ) {
    super(section)
  }

  /** Rows of the receipt's own time and place; the widest reading where those are not known. */
  #choose(rows: readonly OvenWord[]): readonly OvenWord[] {
    if (rows.length === 1) return rows
    const {year, place} = this.section.facts
    const fitting = rows.filter(
      (row) =>
        (year === undefined || ((row.from ?? -1e9) <= year && year <= (row.to ?? 1e9))) &&
        (place === undefined || row.place === undefined || row.place === place),
    )
    return fitting.length > 0 ? fitting : rows
  }

  /**
   * Adds a reading of tokens [from, to).
   *
   * @param rows what the words mean, whichever fits the receipt's time and place
   * @param hedge what moves it ("rather", "not too")
   * @param rank kept before a reading of less rank where two overlap
   * @param condition said with an “if”
   */
  put(
    from: number,
    to: number,
    rows: readonly OvenWord[],
    hedge: Hedge | null,
    rank: number,
    notes: readonly string[] = [],
    condition = false,
  ): void {
    const hot = Math.min(...this.#choose(rows).map((row) => row.celsius.low)) >= leastTooHot
    const gone = hot && !condition && !HEAT_SUBSIDES.includes(rows[0]!) ? goneAt(this, from, to) : null
    if (gone !== null) {
      this.found.push(this.#reading(gone.from, gone.to, HEAT_SUBSIDES, null, Math.max(rank, 5), notes, false))
      return
    }
    const read = this.#reading(from, to, rows, hedge, rank, notes, condition)
    const against = hot && !condition && hedge?.effect !== 'cap' && rows !== UNKNOWN_HEAT && isWarnedAgainst(this, from, to)
    this.found.push(against ? warnedOf(read) : read)
  }

  #reading(
    from: number,
    to: number,
    rows: readonly OvenWord[],
    hedge: Hedge | null,
    rank: number,
    notes: readonly string[],
    condition: boolean,
  ): Reading {
    const chosen = this.#choose(rows)
    let low = Math.min(...chosen.map((row) => row.celsius.low))
    let high = Math.max(...chosen.map((row) => row.celsius.high))
    const said = [...notes]
    const sources = new Set(chosen.map((row) => row.source))
    if (hedge !== null && hedge.effect !== 'none') {
      const hotter = (low + high) / 2 > 175 ? 1 : -1
      const shift = hedge.shift * hotter
      if (hedge.effect === 'more') {
        low += shift
        high += shift
        said.push(`“${hedge.id}” moves it ${hedge.shift} °C from moderate`)
      } else if (hedge.effect === 'less') {
        low -= shift
        high -= shift
        said.push(`“${hedge.id}” moves it ${hedge.shift} °C towards moderate`)
      } else {
        const middle = (low + high) / 2
        if (low >= 230) {
          // "not too fierce": the word itself is the warning.
          high = low
          low -= belowWarned
        } else if (hotter > 0) {
          high = middle
          low -= hedge.shift * 2
        } else {
          low = middle
          high += hedge.shift * 2
        }
        said.push('a limit, not a heat: read as the milder half and a little below')
      }
      sources.add(hedge.source)
    }
    for (const row of chosen) if (row.note !== undefined && !said.includes(row.note)) said.push(row.note)
    const band = hedge?.effect === 'cap' ? bandOf(low, high) : chosen[0]!.band
    if (condition) said.push('said with an “if”: what happens at this heat, not the heat it wants')
    return {
      from,
      to,
      band,
      low,
      high,
      sources: [...sources],
      notes: said,
      rank,
      condition,
      known: chosen !== UNKNOWN_HEAT && chosen[0] !== UNKNOWN_HEAT[0],
    }
  }

  /** Overlapping readings become one: the union of their words with the meaning of the better. */
  merged(): OvenPhrase[] {
    const {source} = this.section
    const tokens = this.tokens
    const sorted = [...this.found].sort((a, b) => a.from - b.from || b.to - a.to)
    const kept: Reading[] = []
    for (const reading of sorted) {
      const last = kept.at(-1)
      if (last !== undefined && reading.from < last.to) {
        const better = reading.rank > last.rank ? reading : last
        kept[kept.length - 1] = {...better, from: last.from, to: Math.max(last.to, reading.to)}
      } else kept.push(reading)
    }
    return kept.map((reading) => {
      const start = tokens[reading.from]!.start
      const end = tokens[reading.to - 1]!.end
      return {
        text: source.slice(start, end),
        start,
        end,
        band: reading.band,
        celsius: {low: round(reading.low), high: round(reading.high)},
        sources: reading.sources,
        ...(reading.notes.length > 0 ? {notes: reading.notes} : {}),
        ...(reading.disagree === true ? {disagree: true} : {}),
        ...(reading.condition === true ? {condition: true} : {}),
        ...(reading.against === true ? {against: true as const} : {}),
        ...(reading.fallenTo === true ? {fallenTo: true as const} : {}),
        ...(reading.known === false ? {known: false as const} : {}),
      }
    })
  }
}
