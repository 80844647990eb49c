import {isMoved, stemOf} from './log.js'
import {backIn} from './log-back.js'
import {countAt, isAllWord, isOfWord, numberOf} from './log-counts.js'
import {deedBehind, deedOf, lossEnd, moveAhead, shortMove} from './log-deeds.js'
import {type DayNames, dishMeant, isThing, resemblesDish} from './log-dishes.js'

/**
 * Numbers of vessels that a note has before the name of their dish: "1 of 3 mutton pies set in", "set in both of the puddings". A row of the log
 * has them behind it.
 */

/** One of the day's dishes, and how many of it as a row of the log has it: "1 of 3". */
interface Counted {
  readonly name: string
  readonly count: string
}

/** Words without the "of", "of the" or "the" before them. */
function behindOf(words: readonly string[]): readonly string[] {
  const from = isOfWord(words[0]) ? 1 : 0
  return words.slice(isAllWord(words[from]) ? from + 1 : from)
}

/**
 * A dish with a number of it before its name, "one of the three mutton pies", "both sourdough loaves", "2 crocks of beans".
 *
 * @returns null where there is no number, or the name is of none of the day's dishes; a name of one word that several of them have is as it is
 */
export function countedName(words: string, names: DayNames): Counted | null {
  const found = countAt(words)
  if (found === null || found.count === 0) return null
  const [number, ...behind] = words.replace(/^(?:all|only|just) /i, '').split(' ')
  const more = behindOf(behind)
  // "1 of 3 pies", "one of the three pies".
  const all = isOfWord(behind[0]) ? numberOf(more[0]?.toLowerCase()) : null
  if (numberOf(number?.toLowerCase()) !== found.count) return null
  const count = all === null ? number! : `${found.count} ${behind[0]!.toLowerCase()} ${all}`
  const name = (all === null ? more : more.slice(1)).join(' ')
  const its = [name, ownName(name)].find((one) => one !== '' && dishMeant(stemOf(one), names) !== null)
  if (its !== undefined) return {name: its, count}
  return name !== '' && !name.includes(' ') && resemblesDish(stemOf(name), names.dishes) ? {name, count} : null
}

/** A dish's own name in "crocks of the beans" and "sourdough loaves"; empty where neither is said. */
function ownName(name: string): string {
  const words = name.split(' ')
  if (isOfWord(words[1])) return behindOf(words.slice(1)).join(' ')
  return isThing(words.at(-1)!.toLowerCase()) ? words.slice(0, -1).join(' ') : ''
}

/** A note with the number of a dish's vessels put behind its name, and what was done to them behind that; as it is where it has none before it. */
export function countBehind(note: string, names: DayNames): string {
  if (names.dishes.length === 0) return note
  const ahead = moveAhead(note)
  const told = ahead && countedName(ahead.of, names)
  if (ahead && told) return `${told.name} ${told.count} ${ahead.done}`
  const behind = deedBehind(note)
  if (behind) {
    const done = note.slice(behind.from)
    const deed = deedOf(done)
    const counted =
      deed !== null && (isMoved(deed) || deed.deed === 'not drawn') ? countedName(note.slice(0, behind.end), names) : null
    if (deed === null || counted === null) return note
    const again = deed.deed === 'set in' ? backIn(done, '') : null
    const moved = again === null ? deed.deed : again === 'sure' ? 'put back' : 'set in again'
    return `${counted.name} ${counted.count} ${deed.length === done.length ? moved : done}`
  }
  const words = note.split(' ')
  for (let n = words.length - 1; n > 0; n--) {
    if (shortMove(words[n]!) === null && lossEnd(words, n) === n) continue
    const counted = countedName(words.slice(0, n).join(' '), names)
    if (counted) return `${counted.name} ${counted.count} ${words.slice(n).join(' ')}`
  }
  return note
}
