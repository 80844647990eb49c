import type {Dish} from '../scale/types.js'
import {ACROSS, whereIndex} from './curve.js'
import {floorGrid} from './floor-grid.js'
import {setInOf} from './longer.js'
import {placedOf, placeOne} from './places.js'
import {rules} from './rules.js'
import type {Standing} from './standing.js'
import type {DoneSoFar, PlanProblem} from './types.js'

type SetIn = DoneSoFar['set'][number]

/** When something is out, or would be by its receipt: nobody sets in what is drawn late in front of what is drawn soon. */
const outAt = ({at, drawn}: SetIn, {need}: Dish): number => drawn ?? at + need.minutes.likely

/** Since when it stands where it stands now: what was drawn and set in again may have another place than before. */
const standsFrom = (one: SetIn): number => one.back?.again ?? setInOf(one)

/** Minutes by which something may be done later than what it stands in front of. Common practice, no source. */
const SOON = 60

/**
 * What has been set in, with places for what no plan has one for. Where what was made again after a loss was to stand something else may stand
 * by then, and what was left out of the plan was to stand nowhere: both are taken to stand where they were to, or had stood, if that is free, and
 * else where there is room, and out of the way of what is drawn long before. Where there is none nobody knows where it stands: told of, and in nobody's way.
 *
 * @param again those of `set` of whose place no plan tells
 */
export function standingAgain(
  problem: Pick<PlanProblem, 'floor' | 'mouth' | 'vaultHeight' | 'ashBed' | 'dishes'>,
  set: readonly SetIn[],
  again: ReadonlySet<SetIn>,
): readonly SetIn[] {
  if (again.size === 0) return set
  const grid = floorGrid(problem)
  const byId = new Map(problem.dishes.map((dish) => [dish.id, dish]))
  const standing = (one: SetIn): Standing[] => {
    const dish = byId.get(one.dish)
    if (!dish || one.lost) return []
    const shifts = dish.shifts === true
    return one.placed.map((p) => ({...p, from: standsFrom(one), to: outAt(one, dish), vessel: dish.vessel, shifts}))
  }
  const fixed = set.filter((one) => !again.has(one)).flatMap(standing)
  const had = new Map<string, number>()
  return set.map((one) => {
    const before = had.get(one.dish) ?? 0
    had.set(one.dish, before + one.count)
    const dish = byId.get(one.dish)
    if (!again.has(one) || !dish) return one
    const zones = [...new Set(one.placed.map(({zone}) => whereIndex(zone)))]
    const roomTill = (to: number): readonly Standing[] | null =>
      placeOne(
        grid,
        fixed,
        {
          dish,
          first: one.placed[0]?.number ?? before + 1,
          count: one.count,
          from: standsFrom(one),
          to,
          where: zones.length === 1 ? zones[0]! : ACROSS,
          fits: [true, true, true],
        },
        // What comes out and goes in again goes where it came from, if that is free.
        one.placed,
      )
    const out = outAt(one, dish)
    // However soon it may be out, it stands beside what is in the oven when it is set in.
    const found = roomTill(out) ?? roomTill(Math.max(standsFrom(one) + rules.tick, out - SOON))
    const placed = found ? found.map((s) => placedOf(grid, s)) : []
    const there = {...one, placed}
    fixed.push(...standing(there))
    return there
  })
}
