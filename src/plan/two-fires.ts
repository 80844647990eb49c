import {bakingAt, forecast, likelyOnly, PRIOR, usualFiring} from '../oven/forecast.js'
import type {OvenRuns} from '../oven/simulate.js'
import type {Firing} from '../oven/types.js'
import type {Dish} from '../scale/types.js'
import {againBurns, firstBurns, LEAST_COLD} from './burns.js'
import {firesOf} from './events.js'
import {dueOf, hotFromOf, latestLit} from './model.js'
import type {Day, Fired, FiringOption} from './types.js'

/** Two fires in a day: which there are to choose from. */

/**
 * Minutes after the first fire's soak at which a second is lit, and how long both burn: enough to choose from (and to go on from, `twoFiresNear`).
 * And how long both burn where the second is lit for what the day wants hot: a short fire on bricks that are warm.
 */
const choices = {
  after: [150, 240, 330],
  firsts: [120, 150, 180],
  burns: [60, 90],
  hotFirsts: [75, 105, 135, 180],
  hotBurns: [30, 45, 60],
} as const
/** Minutes of a second fire that heats the oven through once more. */
const LONGEST = choices.burns[1]

/**
 * Fires in two: the first, and a second lit some hours after it.
 *
 * @param first Minutes of the first fire, or null for several.
 * @param hours Of forecast.
 */
export function twoFires(
  input: Fired & {readonly day: Day},
  dishes: readonly Dish[],
  first: number | null,
  hours: number,
  runs: OvenRuns,
): FiringOption[] {
  const make = inTwo(input, hours, runs)
  const hot = wantsHot(dishes)
  const warm = hot || first === null ? warmFirsts(input, dishes, runs) : null
  const firsts = warm ?? (hot ? choices.hotFirsts : first === null ? choices.firsts : [Math.min(first, 180)])
  return firsts.flatMap((burn) => {
    const firing = usualFiring(input.oven, burn)
    const soaked = burn + firing.soak
    if (hot)
      return choices.hotBurns.flatMap((again) =>
        aftersFor(input, dishes, firing, usualFiring(input.oven, again)).flatMap((after) => make(firing, again, soaked + after)),
      )
    if (warm) return enoughAfter(input, dishes, firing, runs).flatMap(({again, after}) => make(firing, again, after))
    const agains = first === null ? choices.burns.slice(1) : choices.burns
    return agains.flatMap((again) => choices.after.flatMap((after) => make(firing, again, soaked + after)))
  })
}

/**
 * Fires in two to go on to from those of a plan, the first as long as there: a second one as short as will do when it is lit; and those much like
 * that plan's, a shorter one, lit when that is or ready when it is, and a longer one. A short fire is for bricks that are warm enough for it,
 * which hangs on the first fire and on when they are lit again. None where the day wants something hot, whose hour the second fire is for.
 */
export function twoFiresNear(
  input: Fired & {readonly day: Day},
  dishes: readonly Dish[],
  {firing, further}: Pick<FiringOption, 'firing' | 'further'>,
  hours: number,
  runs: OvenRuns,
): FiringOption[] {
  if (wantsHot(dishes) || further?.length !== 1) return []
  const [{minutes, firing: second}] = further as [NonNullable<typeof further>[number]]
  const shorter = againBurns.filter((burn) => burn < second.burn)
  const longer = [...againBurns, LONGEST].find((burn) => burn > second.burn)
  const found = [
    ...enoughAfter(input, dishes, firing, runs),
    ...shorter.flatMap((again) => [minutes, minutes + second.burn - again].map((after) => ({again, after}))),
    ...(longer === undefined ? [] : [{again: longer, after: minutes}]),
  ]
  const make = inTwo(input, hours, runs)
  const known = new Set<string>()
  return found.flatMap(({again, after}) => {
    const key = `${again} ${after}`
    if (known.has(key)) return []
    known.add(key)
    return make(firing, again, after)
  })
}

const wantsHot = (dishes: readonly Dish[]): boolean => dishes.some((dish) => Number.isFinite(hotFromOf(dish)))

/** Makes a first fire and another, lit so many minutes after the first; none where it would be raked out in the night, which nobody does. */
function inTwo(input: Fired & {readonly day: Day}, hours: number, runs: OvenRuns) {
  const parameters = likelyOnly(input.parameters ?? PRIOR)
  return (firing: Firing, again: number, after: number): FiringOption[] => {
    const further = [{minutes: Math.ceil(after / 5) * 5, firing: usualFiring(input.oven, again)}]
    if (latestLit({further}) < input.day.fireFrom) return []
    return [{firing, further, forecast: forecast(input.oven, {firing, parameters, events: firesOf({further}), hours, runs})}]
  }
}

/** The first of two fires of an oven that is warm still: the shortest that will do for the hottest dish, and longer ones; null of a cold oven. */
function warmFirsts(input: Fired, dishes: readonly Dish[], runs: OvenRuns): readonly number[] | null {
  const all = firstBurns(input.oven)
  if (all[0]! >= LEAST_COLD) return null
  const hottest = hottestOf(dishes)
  const enough = all.findIndex((burn) => readyHeat(input, usualFiring(input.oven, burn), null, runs) >= hottest)
  return enough < 0 ? null : [0, 2, 4].flatMap((i) => all[enough + i] ?? [])
}

/** °C by which loads have cooled an oven by the time that it is fired again: by so much it is fired hotter than the empty oven wants. */
const LOADED = 30

const hottestOf = (dishes: readonly Dish[]): number => Math.max(0, ...dishes.map(({need}) => need.startLow))

/**
 * For each hour at which a second fire may be lit the shortest, min, that has the oven hot enough for the hottest dish when it has soaked; and
 * when that is, minutes from the lighting of the first.
 */
function enoughAfter(input: Fired, dishes: readonly Dish[], first: Firing, runs: OvenRuns): {again: number; after: number}[] {
  const hottest = hottestOf(dishes) + LOADED
  return choices.after.map((later) => {
    const after = Math.ceil((first.burn + first.soak + later) / 5) * 5
    const heat = (burn: number): number => readyHeat(input, first, {minutes: after, firing: usualFiring(input.oven, burn)}, runs)
    return {after, again: againBurns.find((burn) => heat(burn) >= hottest) ?? LONGEST}
  })
}

/** The likely baking heat, °C, when the last fire has soaked, nothing being baked before. */
function readyHeat(
  {oven, parameters}: Fired,
  first: Firing,
  again: {minutes: number; firing: Firing} | null,
  runs: OvenRuns,
): number {
  const ready = again ? again.minutes + again.firing.burn + again.firing.soak : first.burn + first.soak
  const minutes = Math.ceil(ready / 5) * 5
  const events = again ? firesOf({further: [again]}) : []
  const given = {firing: first, parameters: likelyOnly(parameters ?? PRIOR), events, hours: minutes / 60, runs}
  return bakingAt(forecast(oven, given), minutes)
}

/** Minutes after the first fire's soak at which a second may be lit: so that what the day wants hot meets it, and the rest the first. */
function aftersFor({day}: {readonly day: Day}, dishes: readonly Dish[], first: Firing, again: Firing): readonly number[] {
  const due = dishes.flatMap((dish): {hot: boolean; at: number}[] => {
    const by = dueOf(dish, day.serve)
    return by === null ? [] : [{hot: Number.isFinite(hotFromOf(dish)), at: by - dish.need.minutes.likely}]
  })
  const ready = Math.max(day.fireFrom + first.burn + first.soak, Math.min(...due.flatMap(({hot, at}) => (hot ? [] : [at]))))
  const latest = due.flatMap(({hot, at}) => (hot ? [at - again.burn - again.soak - ready - HOT_SLACK] : []))
  const after = [...new Set(latest)].filter((minutes) => Number.isFinite(minutes) && minutes >= LEAST_AFTER)
  return after.length > 0 ? after : choices.after
}

/** Minutes between a second fire's being ready and the last moment for what it is lit for: the fire is chosen before the loads are. */
const HOT_SLACK = 20
/** Minutes that a first fire's heat is baked in at least before another is lit. */
const LEAST_AFTER = 60
