import {writeClock, writeDuration} from '../measure/quantity.js'
import type {FiringLog, LogRow} from '../oven/log.js'
import type {Message} from '../receipt/types.js'
import type {Dish} from '../scale/types.js'
import {withoutBatch} from './batches.js'
import {burned} from './burned.js'
import {setInOf} from './longer.js'
import {lineOf} from './model.js'
import {rules} from './rules.js'
import type {PassedOver} from './so-far.js'
import {beyondAsked, moreThanThereAre, placeIn, rowAt} from './told.js'
import type {Plan, PlanProblem} from './types.js'

/** What is taken to have been done as planned, though the log does not tell of it. */

/** What is taken to stand in the oven, though the log does not tell that it was set in. */
export function unlogged({done, day}: PlanProblem, dishes: ReadonlyMap<string, Dish>, log: FiringLog): Message[] {
  const {set} = done!
  return set.flatMap((one, i): Message[] => {
    const {dish: id, drawn, back} = one
    const at = setInOf(one)
    const dish = dishes.get(id)
    // Parts that went in together are told of once.
    if (set.findIndex((s) => s.dish === id && setInOf(s) === at && s.drawn === null) !== i) return []
    if (!dish || drawn !== null || back || rowAt(log, 'set in', at, dish)) return []
    const ago = Math.round(done!.now - at)
    return [
      {
        ...lineOf(day, dish),
        severity: 'info',
        rule: 'unlogged',
        reason: `${dish.title}: taken to have been set in as planned, ${writeDuration(ago)} ago; the log does not tell`,
        suggest: 'note when it was set in, or set it in and note that',
      },
    ]
  })
}

/**
 * What is taken not to have been set in at its time, though nothing says so: what was to follow it went in before it can have been done.
 *
 * @param over each dish is told of once
 */
export function notInUnlogged(over: readonly PassedOver[], {day}: PlanProblem, dishes: ReadonlyMap<string, Dish>): Message[] {
  const titled = over.flatMap(({dish: id, at, by}) => {
    const [dish, other] = [dishes.get(id), dishes.get(by.dish)]
    return dish && other ? [{dish, title: withoutBatch(dish.title), at, by: {title: withoutBatch(other.title), at: by.at}}] : []
  })
  const once = titled.filter((one, i) => titled.findIndex(({title}) => title === one.title) === i)
  return once.map(
    ({dish, title, at, by}): Message => ({
      ...lineOf(day, dish),
      severity: 'warning',
      rule: 'not-in-unlogged',
      reason: `${title}: taken not to have been set in at ${writeClock(at)}, since ${by.title}, which was to follow it, went in at ${writeClock(by.at)}; the log does not tell`,
      times: [at, by.at],
      suggest: 'if it is in the oven, note when it was set in, and plan again',
    }),
  )
}

/** More of a dish set in than the day asks for: the plan has only so many in the oven. */
export function setInBeyond(dishes: ReadonlyMap<string, Dish>, log: FiringLog): Message[] {
  return beyondAsked(log, dishes).map(
    ({dish, said, asked, row}): Message => ({
      ...placeIn(log, row.line),
      severity: 'warning',
      rule: 'set-in-beyond',
      reason: `${withoutBatch(dish.title)}: ${said} set in by the log, and the day asks for ${asked}: the plan knows nothing of the heat and the place of the rest`,
      suggest: 'put the number right, or write in the day how many there are, and plan again',
    }),
  )
}

/** More of a dish drawn at once, or put back, than the day asks for: a slip of the pen, or a number of something else. */
export function drawnBeyond(dishes: ReadonlyMap<string, Dish>, log: FiringLog): Message[] {
  return moreThanThereAre(log, dishes).map(
    ({dish, what, said, asked, row}): Message => ({
      ...placeIn(log, row.line),
      severity: 'warning',
      rule: 'drawn-beyond',
      reason: `${withoutBatch(dish.title)}: ${said} ${what} by the log, and the day asks for ${asked}: it is taken for all there are`,
      suggest: 'put the number right, and plan again',
    }),
  )
}

/** Rows that tell of a dish at the oven. */
const ofDishes: ReadonlySet<LogRow['what']> = new Set(['set in', 'drawn', 'lost'])

/**
 * What is taken to have been set in and drawn, though the log tells of neither: it may stand in the oven still, or have been forgotten. Only
 * where the log goes on to tell of other dishes: who notes readings alone knows what was not noted.
 *
 * @param told dishes of which something is said that matters more
 * @returns a warning for all such dishes, or none
 */
export function goneUnlogged(
  {done, day}: PlanProblem,
  dishes: ReadonlyMap<string, Dish>,
  log: FiringLog,
  told: ReadonlySet<string>,
): Message[] {
  const {set} = done!
  const last = Math.max(Number.NEGATIVE_INFINITY, ...log.rows.flatMap((row) => (ofDishes.has(row.what) ? [row.at] : [])))
  const gone = set.flatMap(({dish: id, at, drawn, lost, inVain}) => {
    const dish = dishes.get(id)
    if (!dish || drawn === null || lost || inVain || told.has(id) || at > last) return []
    return rowAt(log, 'set in', at, dish) || rowAt(log, 'drawn', drawn, dish)
      ? []
      : [{dish, title: withoutBatch(dish.title), at, drawn}]
  })
  // Parts that went in and came out together are told of once.
  const each = gone.filter(
    (one, i) => gone.findIndex((o) => o.title === one.title && o.at === one.at && o.drawn === one.drawn) === i,
  )
  const [first] = each
  if (!first) return []
  const listed = each.map(({title, at, drawn}) => `${title} (${writeClock(at)}–${writeClock(drawn)})`)
  return [
    {
      ...lineOf(day, first.dish),
      severity: 'warning',
      rule: 'gone-unlogged',
      reason:
        each.length === 1
          ? `${first.title}: taken to have been set in at ${writeClock(first.at)} and drawn at ${writeClock(first.drawn)}; the log tells of neither`
          : `${each.length} dishes are taken to have been set in and drawn, and the log tells of neither: ${listed.join('; ')}`,
      times: [...each.flatMap(({at, drawn}) => [at, drawn])],
      suggest: 'look in the oven, and note what was done and when',
    },
  ]
}

/**
 * What the log has set in and is taken to have been drawn sooner than it was meant to be, since something else went in that was to go in after
 * it: it may stand in the oven still. Told for as long as the day lasts, each dish once.
 */
export function drawnUnlogged({done, day}: PlanProblem, dishes: ReadonlyMap<string, Dish>, log: FiringLog): Message[] {
  const {set} = done!
  const told = new Set<string>()
  return set.flatMap(({dish: id, at, drawn, lost, inVain}): Message[] => {
    const dish = dishes.get(id)
    if (!dish || drawn === null || lost || inVain || told.has(id)) return []
    if (!rowAt(log, 'set in', at, dish) || rowAt(log, 'drawn', drawn, dish)) return []
    if (drawn - at >= dish.need.minutes.likely - rules.tick) return []
    const other = log.rows.find(({what, at: then}) => what === 'set in' && then === drawn)
    if (!other) return []
    told.add(id)
    return [
      {
        ...lineOf(day, dish),
        severity: 'warning',
        rule: 'drawn-unlogged',
        reason: `${withoutBatch(dish.title)}: taken to have been drawn at ${writeClock(drawn)}, ${writeDuration(drawn - at)} after it was set in, when something was set in that was to follow it; the log does not tell`,
        times: [drawn],
        suggest: 'if it is in the oven, note that it is still in, and plan again; if not, note when it was drawn',
      },
    ]
  })
}

/** The wood that is taken to have been burned, where the log does not tell: all that is reckoned of the oven begins with it. */
export function woodUnlogged(log: FiringLog, plan: Plan, wood: number): Message[] {
  if (log.raked === null || log.wood !== null) return []
  const mass = `${Math.round(wood)} kg`
  const sooner = log.raked - log.lit! < plan.firing.burn - rules.tick
  return [
    {
      ...placeIn(log),
      severity: 'info',
      rule: 'wood-unlogged',
      reason: sooner
        ? `${mass} of wood taken to have been burned till it was raked out; the log does not tell`
        : `${mass} of wood taken to have been burned, as planned; the log does not tell`,
      suggest: `note what it was, such as “wood ${mass}”`,
    },
  ]
}

/** A fire that is taken to have burned for longer than planned, since the walls were looked at, where the log does not tell of its raking. */
export function rakingUnlogged(log: FiringLog, {firing: {burn}}: Plan): Message[] {
  const lasted = burned(log, burn)
  if (log.raked !== null || lasted <= burn) return []
  const at = log.lit! + lasted
  return [
    {
      ...placeIn(log),
      severity: 'warning',
      rule: 'raking-unlogged',
      reason: `the fire taken to have burned till ${writeClock(at)}, when the walls were looked at; the log does not tell when it was raked out`,
      times: [at],
      suggest: 'note when it was, or when it is done, such as “11:05 am raked”',
    },
  ]
}
