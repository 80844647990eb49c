import {ACROSS, whereIndex} from './curve.js'
import {floorGrid} from './floor-grid.js'
import {placedOf, placeOne} from './places.js'
import type {Standing} from './standing.js'
import type {DoneSoFar, PlanProblem} from './types.js'

type SetIn = DoneSoFar['set'][number]

/**
 * What has been set in, with places for what was made again after a loss: where the lost stood something else may stand by then, so it is
 * taken to stand where there is room. Where there is none nobody knows where it stands: told of, and in nobody's way.
 *
 * @param again those of `set` that were made again, and of whose place no plan tells
 */
export function standingAgain(problem: PlanProblem, set: readonly SetIn[], again: ReadonlySet<SetIn>): readonly SetIn[] {
  if (again.size === 0) return set
  const grid = floorGrid(problem)
  const byId = new Map(problem.dishes.map((dish) => [dish.id, dish]))
  const standing = (one: SetIn): Standing[] => {
    const dish = byId.get(one.dish)
    if (!dish || one.lost) return []
    const shifts = dish.shifts === true
    const times = {from: one.at, to: one.drawn ?? Number.POSITIVE_INFINITY}
    return one.placed.map((p) => ({...p, ...times, vessel: dish.vessel, shifts}))
  }
  const fixed = set.filter((one) => !again.has(one)).flatMap(standing)
  return set.map((one) => {
    const dish = byId.get(one.dish)
    if (!again.has(one) || !dish) return one
    const zones = [...new Set(one.placed.map(({zone}) => whereIndex(zone)))]
    const found = placeOne(grid, fixed, {
      dish,
      first: one.placed[0]?.number ?? 1,
      count: one.count,
      from: one.at,
      to: one.drawn ?? Number.POSITIVE_INFINITY,
      where: zones.length === 1 ? zones[0]! : ACROSS,
      fits: [true, true, true],
    })
    const placed = found ? found.map((s) => placedOf(grid, s)) : []
    const there = {...one, placed}
    fixed.push(...standing(there))
    return there
  })
}
