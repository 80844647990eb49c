import type {DishCorrection} from '../oven/learn.js'
import type {FiringLog} from '../oven/log.js'
import type {OvenSpec} from '../oven/types.js'
import type {Message, Receipt} from '../receipt/types.js'
import {readAsked} from '../scale/amount-phrase.js'
import {makeDishes} from '../scale/dishes.js'
import type {DayAmount, Dish} from '../scale/types.js'
import type {Asked} from './again.js'
import {type AskedSince, askedFirst, linesOf, sameAsked} from './asked-since.js'
import {learnt} from './learnt.js'
import type {Day} from './types.js'

/** A day as it stood since some time after its fire was lit. */
export interface KeptDay {
  readonly day: Day
  /** Since when, minutes after midnight; of the first, when its fire was lit. */
  readonly from: number
  /** The file it was kept in, for messages. */
  readonly file: string
}

/** A day as `day.md` has it now, and as it stood since its fire was lit. */
export interface DayKept {
  readonly day: Day
  /** In their order; counts once the log has the fire lit. */
  readonly kept?: readonly KeptDay[]
  readonly log?: FiringLog | null
}

/**
 * The day that its morning's plan was made of: as it stood when its fire was lit, where anything of what it asks for was changed since; else
 * as it stands.
 */
export function morningOf(input: DayKept): Day {
  return input.kept?.[0] && changesOf(input).length > 0 ? input.kept[0].day : input.day
}

/** What the day was changed to since its fire was lit, in order; as it stands now comes last, where it is otherwise than before. */
function changesOf({day, kept = [], log}: DayKept): KeptDay[] {
  const [first, ...later] = log?.lit == null ? [] : kept
  if (first === undefined) return []
  const out: KeptDay[] = []
  for (const one of [...later, {day, from: Number.POSITIVE_INFINITY, file: 'day.md'}]) {
    const last = out.at(-1) ?? first
    if (!sameAsked(last.day, one.day)) out.push(one)
    // Where it stands so still, its messages are of the lines that it has now.
    else if (one.day === day && out.length > 0) out.splice(-1, 1, {...one, from: last.from})
  }
  return out
}

/** A copy's name in `firings`: of the day as it stood when its fire was lit, or since an hour, which runs on past 23 after midnight. */
const COPY = /^(\d{4}-\d{2}-\d{2})\.day(?:-(\d{2})(\d{2}))?\.md$/

/** Since when a file of `firings` has the day of a date, minutes after midnight, −∞ of its first copy; null where it is no copy of it. */
export function keptSince(name: string, date: string): number | null {
  const [, of, hours, minutes] = COPY.exec(name) ?? []
  if (of !== date) return null
  return hours === undefined ? Number.NEGATIVE_INFINITY : 60 * Number(hours) + Number(minutes)
}

/** The copies of a day among the files of `firings`, in their order. */
export function keptAmong(names: readonly string[], date: string): {readonly name: string; readonly from: number}[] {
  return names
    .flatMap((name) => {
      const from = keptSince(name, date)
      return from === null ? [] : [{name, from}]
    })
    .sort((a, b) => a.from - b.from)
}

/** The lines whose dishes may be noted: the day's, and those of receipts that it asked for before. */
export function itemsNoted(day: Day, kept: readonly KeptDay[]): DayAmount[] {
  const items = [...day.items, ...day.spare]
  for (const item of kept.flatMap((one) => one.day.items)) if (items.every(({file}) => file !== item.file)) items.push(item)
  return items
}

/**
 * The name under which a day is to be kept as it stands when something is noted; null where that is known.
 *
 * The first copy is made when the fire is noted as lit, or later as long as the log names nothing that the day does not ask for. When it asks
 * for something else than the last copy, another is made: it was so since the last thing noted before, since the plan that was looked at after
 * that was made of it.
 *
 * @param before the day's log before the note, null where there was none, and `log` with it
 * @param copies those there are, by their names
 * @param names what the log may call the dishes of the day
 */
export function copyToMake({
  day,
  kept = [],
  before,
  log,
  copies,
  names,
}: DayKept & {
  readonly before: FiringLog | null
  readonly copies: readonly string[]
  readonly names: readonly string[]
}): string | null {
  if (log?.lit == null) return null
  const last = kept.at(-1)
  if (last === undefined) {
    const own =
      before === null || before.lit === null || before.rows.every(({dish}) => dish === undefined || names.includes(dish))
    return own ? `${day.date}.day.md` : null
  }
  if (sameAsked(last.day, day)) return null
  const since = Math.max(log.lit, ...(before?.rows ?? []).map(({at}) => at))
  const two = (value: number): string => String(value).padStart(2, '0')
  const name = `${day.date}.day-${two(Math.floor(since / 60))}${two(since % 60)}.md`
  return since < 0 || copies.includes(name) ? null : name
}

const fills = ({amount}: DayAmount, people: number): boolean => {
  const read = amount === null ? null : readAsked(amount, people)
  return read?.ok === true && read.value.kind === 'floor'
}

/**
 * What of a day cannot be changed once its fire is lit.
 *
 * @param file its name, for messages
 * @returns errors (rule `day-lit`), or none
 */
export function notChangeable(input: DayKept, file: string): Message[] {
  const {day} = input
  const first = morningOf(input)
  if (first === day) return []
  const say = (line: number, column: number, reason: string, suggest: string): Message => ({
    file,
    line,
    column,
    severity: 'error',
    rule: 'day-lit',
    reason,
    suggest,
  })
  const firings =
    first.firings === day.firings
      ? []
      : [
          say(
            1,
            1,
            `the fire is lit, and “firings: ${day.firings}” was “firings: ${first.firings}” when it was`,
            `write “firings: ${first.firings}” again; that another fire is lit is for the log: note “fire again at” with its hour`,
          ),
        ]
  const filling = day.items.flatMap((item) => {
    const same = ({file: of, amount}: DayAmount): boolean => of === item.file && amount === item.amount
    return fills(item, day.people) && !first.items.some(same)
      ? [
          say(
            item.line,
            item.column,
            `the fire is lit, and “${item.title}” was not to fill the floor when it was`,
            'write how many, such as “12 loaves”',
          ),
        ]
      : []
  })
  return [...firings, ...filling]
}

/** The receipts of what a day asks for, and of what it has in the oven; not of what was only asked for before. */
export function receiptsOf<R extends Pick<Receipt, 'file'>>(
  receipts: readonly R[],
  {items, spare}: Day,
  dishes: readonly Dish[],
): R[] {
  const files = new Set([...items, ...spare, ...dishes].map(({file}) => file))
  return receipts.filter(({file}) => files.has(file))
}

/** What the dishes of a day are made from. */
interface Making extends DayKept {
  readonly oven: OvenSpec
  readonly receipts: readonly Receipt[]
  readonly corrections?: readonly DishCorrection[]
}

/** What a day asks for otherwise than when its fire was lit. */
export interface AskedOtherwise {
  readonly asked: Asked
  /** Receipts to fill idle hot floor with, as the day has them now. */
  readonly spare: readonly Dish[]
  /** Of scaling what it asks for now. */
  readonly messages: readonly Message[]
}

/**
 * What a day asks for since its fire was lit; null where that is what it asked for then.
 *
 * @param morning the dishes that its morning's plan was made of, and the lines that asked for them
 */
export function askedOtherwise(
  input: Making,
  morning: {readonly dishes: readonly Dish[]; readonly lines: ReadonlyMap<string, DayAmount>},
): AskedOtherwise | null {
  const changes = changesOf(input)
  const first = input.kept?.[0]
  if (changes.length === 0 || first === undefined) return null
  const {oven, receipts, corrections} = input
  const made = changes.map(({day, file}) => makeDishes({day: {...day, source: file}, receipts, oven}))
  const since = changes.map(({day, from}, i): AskedSince => {
    const dishes = learnt(made[i]!.dishes, corrections)
    return {
      from,
      day,
      lines: linesOf(day, dishes, made[i]!.lines),
      besides: (item, had) => learnt(makeDishes({day: {...day, items: [{...item, had}]}, receipts, oven}).dishes, corrections),
    }
  })
  const {spare, messages} = made.at(-1)!
  const lines = linesOf(first.day, morning.dishes, morning.lines)
  return {asked: {first: askedFirst(first.day, morning.dishes, lines), since}, spare, messages}
}
