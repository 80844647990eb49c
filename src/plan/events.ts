import type {OvenEvent} from '../oven/types.js'
import type {Job} from './model.js'
import {doorEvents, loadEvent} from './response.js'
import {rules} from './rules.js'
import type {FiringOption} from './types.js'

/** A layout as the oven sees it. */

/** Events in the order in which they happen. */
export function inOrder(events: readonly OvenEvent[]): OvenEvent[] {
  return [...events].sort((a, b) => a.minutes - b.minutes)
}

/** Later fires as the oven sees them, minutes after the first is lit. */
export function firesOf(option: Pick<FiringOption, 'further'>): OvenEvent[] {
  return (option.further ?? []).map((f) => ({minutes: f.minutes, kind: 'fire', firing: f.firing}))
}

/** The loads and openings of a layout as the oven sees them, minutes after lighting. */
export function eventsOf(
  jobs: readonly Job[],
  took: ReadonlyArray<{readonly s: number; readonly e: number} | null>,
  option: FiringOption,
  phase: number,
  lit: number,
): OvenEvent[] {
  const open = new Map<number, number>()
  const events = firesOf(option)
  took.forEach((t, u) => {
    if (!t) return
    const job = jobs[u]!
    const e = t.e * rules.tick + phase
    const from = job.since === null ? t.s * rules.tick + phase : job.since - lit
    events.push(loadEvent(job.dish, job.count, from))
    open.set(from, (open.get(from) ?? 0) + job.handling)
    open.set(e, (open.get(e) ?? 0) + job.handling)
  })
  events.push(...doorEvents(open))
  return events.sort((a, b) => a.minutes - b.minutes || (a.kind < b.kind ? -1 : a.kind > b.kind ? 1 : 0))
}
