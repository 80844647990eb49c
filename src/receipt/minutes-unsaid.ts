import type {Token} from './section.js'
import {HOTTEST_HEAT, LEAST_HEAT} from './time-task.js'

/**
 * Minutes that are written as bare figures beside a heat: "20 minutes at 220 °C, then 30 at 180", "at 425 for 15, then…".
 */

/** Minutes from a figure on, and the token behind them. */
interface Minutes {
  readonly low: number
  readonly high: number
  readonly end: number
}

/** The figures at `i`, "15" or "35–40", where they may be minutes; null where they may not. */
function figuresAt(tokens: readonly Token[], i: number, least: number): Minutes | null {
  const {kind, den, num} = tokens[i]!
  if (kind !== 'number' || den !== 1 || num < least || num > 90) return null
  const second = /^(?:-|—|to|bis)$/.test(tokens[i + 1]?.word ?? '') ? tokens[i + 2] : undefined
  const range = second?.kind === 'number' && second.den === 1 && second.num > num && second.num <= 90
  return {low: num, high: range ? second.num : num, end: range ? i + 3 : i + 1}
}

/** "20 minutes at 220 °C, then 30 at 180": figures whose unit is that of the time before, which ended at `before`. */
export function minutesUnsaid(tokens: readonly Token[], i: number, before: number): Minutes | null {
  const {block} = tokens[i]!
  const figures = figuresAt(tokens, i, 2)
  if (figures === null || before < 1 || i - before > 12) return null
  if (tokens[before - 1]!.block !== block || !/^(?:min|mins|minutes?|\.)$/.test(tokens[before - 1]!.word)) return null
  let then = false
  for (let k = before; k < i; k++) then ||= tokens[k]!.word === 'then' || tokens[k]!.word === 'another'
  if (!then) return null
  const {end} = figures
  const next = tokens[end + (/^(?:more|longer|further)$/.test(tokens[end]?.word ?? '') ? 1 : 0)]
  if (next === undefined || next.block !== block || !/^(?:at|in)$/.test(next.word)) return null
  return figures
}

/** What may stand behind minutes that have no unit: the end of what is said, or what is done next. */
const ENDS = /^(?:[.,;:)|!]|then|and|dann|und|or|until|till|bis)$/

/** "at 425 for 15, then reduce to 350": the figures right behind a heat and "for" are minutes. */
export function minutesAtHeat(tokens: readonly Token[], i: number): Minutes | null {
  const {block} = tokens[i]!
  if (tokens[i - 1]?.word !== 'for' || tokens[i - 1]!.block !== block) return null
  const figures = figuresAt(tokens, i, 3)
  if (figures === null) return null
  const next = tokens[figures.end]
  if (next !== undefined && next.block === block && !ENDS.test(next.word)) return null
  let k = i - 2
  while (k > i - 5 && /^(?:°|℃|℉|degrees?|deg|[cf])$/.test(tokens[k]?.word ?? '')) k--
  const heat = tokens[k]
  if (heat?.kind !== 'number' || heat.block !== block || heat.den !== 1 || heat.num < LEAST_HEAT || heat.num > HOTTEST_HEAT)
    return null
  return k < i - 2 || /^(?:at|to)$/.test(tokens[k - 1]?.word ?? '') ? figures : null
}
