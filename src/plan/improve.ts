import {eventsOf} from './events.js'
import {cheapest, latest} from './mend.js'
import {choiceAt, latestLit, modelOf, phaseOf, programOf} from './model.js'
import {vesselsOf} from './places.js'
import {costOf, type LoadedDay} from './proof.js'
import {rules} from './rules.js'
import {amongCrusts, type Begun, LARGE, preferred, proofOf, Searching, type Start} from './searching.js'
import {fireOf, lacksNothing, type Settled, type Took, tookIn, wantsHot} from './settled.js'
import type {Promised} from './shortest.js'

/**
 * A plan made better by searches on the curve that its own loads have made: by turns the floor is reckoned by its area and stood upon vessel
 * by vessel. Then a fire a little shorter is tried with the same loads, or a longer one where the plan is late, and where that does, the next.
 */

/** Searches that may find nothing better, one after another: the more the smaller the day; and searches in all. */
const failsFor = (jobs: number): number => Math.max(2, Math.ceil(30 / Math.max(1, jobs)))
const SEARCHES = 12

/**
 * @param from A plan of a morning in which everything has its place, proved.
 * @returns It, or a better one, on its fire or on another.
 */
export function improved(day: LoadedDay, from: Settled): Settled {
  let best = onOneFire(day, from)
  for (const way of ['shorter', 'longer'] as const) {
    // Of seventy plans in time that were tried on a longer fire none came to less for it, and of 28 of thirty dishes none on a shorter.
    if (lacksNothing(best) && (way === 'longer' || day.jobs.length > LARGE)) break
    const before = best
    for (let moved = onNext(day, best, way); moved; moved = onNext(day, best, way)) best = onOneFire(day, moved)
    if (best !== before) break
  }
  return litBest(day, best)
}

/**
 * The same day lit when it costs least, the loads as long after it: a plan that was found on a longer fire and kept its hours is sooner on a
 * shorter. And lit as late as costs nothing: bread is the fresher, and the night the longer.
 */
function litBest(day: LoadedDay, settled: Settled): Settled {
  const {problem, jobs, grid, light} = day
  const {option, index, took, lit: from} = startOf(settled)
  const limits = took.map((must) => (must ? {must, only: true} : {none: true}))
  const program = programOf(problem, index, jobs, grid, null, false, option, limits)
  const priceAt = (lit: number): number => {
    const model = modelOf(problem, program, jobs, grid, lit)
    const chosen = Int32Array.from(took, (t, u) => (t ? choiceAt(model, u, t.s, t.e, t.w) : -1))
    return chosen.every((o, u) => o >= 0 || !took[u]) ? costOf(model, chosen) : Number.POSITIVE_INFINITY
  }
  // What is in time, and for no meal that wants it hot, is so whenever it is lit.
  const anyHour = lacksNothing(settled) && !wantsHot(settled)
  const last = Math.min(light.last, latestLit(option))
  const lit = latest(anyHour ? from : cheapest(from, {...light, last}, priceAt), last, priceAt)
  if (lit === from) return settled
  const proof = proofOf(day, {index, lit, took}, {vessels: (u) => vesselsOf(jobs[u]!, settled.standing)})
  const seen = proof.see()
  return seen.good ? proof.settle(seen) : settled
}

/**
 * A plan made better on its own fire.
 *
 * @param from A plan in which everything has its place, proved, with nothing in the oven that was set in before.
 */
export function onOneFire(day: LoadedDay, from: Settled): Settled {
  let best = inOrder(day, from)
  // Set-ins that the true floor has refused to a job since the best was found.
  let refused = new Map<number, Set<number>>()
  let begun: Begun | null = null
  const fails = failsFor(day.jobs.length)
  for (let turn = 0, failed = 0; turn < SEARCHES && failed < fails; turn++) {
    const floor = turn % 2 === 0 ? 'area' : 'vessels'
    const search = new Searching(day, startOf(best), {from: best, floor, seed: 31 + 10 * turn, refused})
    begun ??= search.begun()
    const other = search.found(begun)
    const next = other ? preferred(best, other) : best
    failed = next === best ? failed + 1 : 0
    if (next === best) continue
    best = next
    begun = null
    refused = new Map()
  }
  return best
}

/** What a plan sets in to fall among crusts is set in before or after them, where that is found and costs less than it is worth. */
function inOrder(day: LoadedDay, from: Settled): Settled {
  if (amongCrusts(day, tookIn(from)).length === 0) return from
  const other = new Searching(day, startOf(from), {from, floor: 'both', seed: 31, apart: true}).found()
  return other ? preferred(from, other) : from
}

/** A plan as one to search on from. */
function startOf(settled: Settled): Start {
  const {option, standing, model} = settled
  return {option, standing, index: model.program.index, lit: model.lit, took: tookIn(settled)}
}

/**
 * A better plan on the next shorter or longer fire, all of it as long after the oven is ready, and at the same hours where the fire can be
 * lit the later or sooner for it; null where none is found.
 */
function onNext(day: LoadedDay, from: Settled, way: 'shorter' | 'longer'): Settled | null {
  const {firings} = day.problem
  const here = fireOf(day.problem, from)
  if (here.further) return null
  const sign = way === 'shorter' ? -1 : 1
  const others = firings.filter((f) => !f.further && sign * (f.firing.burn - here.firing.burn) > 0)
  const [next] = others.sort((a, b) => sign * (a.firing.burn - b.firing.burn))
  if (!next) return null
  const by = Math.round((next.forecast.ready - here.forecast.ready) / rules.tick)
  const lit = Math.max(day.light.first, Math.min(day.light.last, from.model.lit - by * rules.tick))
  const took = tookIn(from).map((t) => t && {...t, s: t.s + by, e: t.e + by})
  const standing = from.standing.map((v) => ({...v, from: v.from + by, to: v.to + by}))
  const start = {...begunOn(day, firings.indexOf(next), lit, took), standing}
  const found = new Searching(day, start, {from, floor: 'both', seed: 31}).found()
  return found && preferred(from, found) === found ? found : null
}

/** A day laid out on a fire, as one to search on from: the curve is the one that its loads make. */
function begunOn(day: LoadedDay, index: number, lit: number, took: readonly Took[]): Start {
  const option = day.problem.firings[index]!
  const events = eventsOf(day.jobs, took, option, phaseOf(null), lit)
  return {option: {...option, forecast: day.simulate(option, events, false)}, index, lit, took, standing: []}
}

/**
 * A plan straight from what the search on given curves promises of a fire: it holds on most, and is soon found.
 *
 * @returns Null where it does not hold.
 */
export function heldAsPromised(day: LoadedDay, {look, laid, lit}: Promised): Settled | null {
  const took = laid.map((l) => (l.in ? {s: l.s, e: l.e, w: l.w} : null))
  return new Searching(day, begunOn(day, look.index, lit, took), {from: null, floor: 'both', seed: 31}).found()
}
