import type {Dish} from '../scale/types.js'
import type {Job} from './model.js'
import {vesselsOf} from './places.js'
import type {Settled} from './settled.js'
import type {Standing} from './standing.js'

/**
 * The batches and parts of one dish in the order in which they go in: to the search they are alike, to the baker the first dough is the
 * first to be mixed, and all of a dough is set in before the next where their parts allow it.
 */
export function inOrder(settled: Settled): Settled {
  const {model, found} = settled
  const {jobs} = model
  const takes = jobs.slice()
  const at = (u: number, of: readonly Int32Array[]): number => of[u]![found.chosen[u]!]!
  const byTime = (a: number, b: number): number => at(a, model.s) - at(b, model.s) || at(a, model.e) - at(b, model.e) || a - b
  const alike = (some: readonly number[], keyOf: (job: Job) => unknown): number[][] => {
    const groups = new Map<string, number[]>()
    for (const u of some) {
      const key = JSON.stringify(keyOf(jobs[u]!))
      groups.set(key, [...(groups.get(key) ?? []), u])
    }
    return [...groups.values()]
  }
  const placed = jobs.flatMap((_, u) => (found.chosen[u]! < 0 ? [] : [u]))
  // What batches of one dish have in common.
  const batched = alike(placed, ({dish}) => [dish.file, dish.vessel, dish.need, dish.mass, dish.wantedBy])
  for (const group of batched) {
    const whole = batchByBatch(group.map((u) => jobs[u]!))
    const sorted = [...group].sort(byTime)
    const inTime = sorted.map((u) => jobs[u]!)
    const parts = whole && (takenInTurn(whole, inTime) ?? takenInTurn([...whole].reverse(), inTime))
    if (parts) for (const [i, u] of sorted.entries()) takes[u] = parts[i]!
    // Where their parts are of other sizes, those alike at least keep their order.
    else
      for (const same of alike(group, ({count}) => count))
        for (const [i, u] of [...same].sort(byTime).entries()) takes[u] = jobs[same[i]!]!
  }
  const standing = jobs.flatMap((job, u): Standing[] => {
    const {dish, first} = takes[u]!
    return vesselsOf(job, settled.standing).map((v) => ({...v, dish: dish.id, number: v.number - job.first + first}))
  })
  return {...settled, model: {...model, jobs: takes}, standing}
}

/** The batches of some parts, all of whose vessels are among these; null where some are not. */
function batchByBatch(parts: readonly Job[]): Dish[] | null {
  const dishes = [...new Set(parts.map(({dish}) => dish))]
  const has = (dish: Dish): number => parts.reduce((sum, part) => (part.dish === dish ? sum + part.count : sum), 0)
  return dishes.every((dish) => has(dish) === dish.count) ? dishes : null
}

/** Parts in the order of the clock, the first of them of the first batch, and so on; null where a batch would end amid a part. */
function takenInTurn(dishes: readonly Dish[], parts: readonly Job[]): Job[] | null {
  const out: Job[] = []
  let batch = 0
  let first = 1
  for (const part of parts) {
    const dish = dishes[batch]
    if (!dish || first + part.count - 1 > dish.count) return null
    out.push({...part, dish, first})
    first += part.count
    if (first <= dish.count) continue
    batch++
    first = 1
  }
  return out
}
