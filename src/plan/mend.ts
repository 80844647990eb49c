import type {Light} from './laying-out.js'
import type {Layout} from './layout.js'
import {FIRM, HARD} from './layout-prices.js'
import {rules} from './rules.js'

/** A layout moved as little as may be: what is broken is mended by single moves, and what cannot be is left out. */

/** Move the whole day to the latest lighting that costs nothing (see `latest`). A day that leaves something out stays as it is lit. */
export function lightLater(layout: Layout, last: number): void {
  if (layout.placed.includes(0)) return
  const from = layout.lit
  layout.lit = latest(from, Math.min(last, layout.latestLit), (lit) => {
    layout.lit = lit
    layout.judge()
    return layout.cost + HARD * layout.violation
  })
  layout.judge()
}

/**
 * The latest lighting that costs nothing, with half an hour in hand where there is one.
 *
 * @param from When it would be lit, and `last` when it may be at the latest, min after midnight.
 * @param priceAt What the day costs lit then.
 */
export function latest(from: number, last: number, priceAt: (lit: number) => number): number {
  const price = priceAt(from) + 0.5
  let found = from
  for (let lit = from + LATER; lit <= last; lit += LATER) if (priceAt(lit) <= price) found = lit
  const inHand = Math.max(from, found - LATER)
  return priceAt(inHand) > price ? found : inHand
}

/**
 * The lighting of the whole day as it is laid out that costs least: of several that come to the same, the one nearest to where it is.
 *
 * @param from When it would be lit, and `first` and `last` when it may be, min after midnight.
 * @param priceAt What the day costs lit then.
 */
export function cheapest(from: number, {first, last}: Light, priceAt: (lit: number) => number): number {
  let [best, least] = [from, priceAt(from) - 0.5]
  for (let by = rules.tick; from - by >= first || from + by <= last; by += rules.tick)
    for (const lit of [from - by, from + by]) {
      if (lit < first || lit > last) continue
      const price = priceAt(lit)
      if (price < least) [best, least] = [lit, price]
    }
  return best
}

/**
 * Let a plan that is being followed wait for its dishes, as a baker would: each opening of the door keeps what it was for, and comes
 * as much later as what is to be drawn at it needs, or as much sooner as it bears. So the floor stays as it was laid out.
 */
export function ripple(layout: Layout): void {
  layout.judge()
  const clock0 = layout.lit + layout.phase
  const tickOf = (clock: number): number => Math.round((clock - clock0) / rules.tick)
  const openings = new Map<number, {set: number[]; drawn: number[]}>()
  const at = (tick: number): {set: number[]; drawn: number[]} => {
    const opening = openings.get(tick) ?? {set: [], drawn: []}
    openings.set(tick, opening)
    return opening
  }
  for (let u = 0; u < layout.n; u++) {
    const was = layout.was[u]
    if (!was || !layout.placed[u]) continue
    if (!layout.fixed[u]) at(tickOf(was.at)).set.push(u)
    at(tickOf(was.draw)).drawn.push(u)
  }
  const done = new Map<number, number>()
  let before = layout.now - 1
  for (const meant of [...openings.keys()].sort((a, b) => a - b)) {
    const {set, drawn} = openings.get(meant)!
    let first = before + 1
    let last = layout.ticks - 1
    for (const u of drawn) {
      const at = layout.doneAt(u)
      done.set(u, at)
      // What can no longer be done here is for `repair`.
      if (!layout.isDone(u)) continue
      first = Math.max(first, at)
      last = Math.min(last, layout.lastDraw(u))
    }
    const tick = Math.min(layout.ticks - 1, Math.max(first, Math.min(meant, last)))
    for (const u of set) layout.set(u, tick, layout.w[u]!)
    // What cannot wait for the others is drawn before them.
    for (const u of drawn) {
      const soonest = Math.max(done.get(u)!, layout.s[u]! + 1)
      layout.hold[u] = Math.max(0, Math.min(255, Math.min(tick, layout.lastDraw(u)) - soonest))
    }
    before = tick
  }
  layout.judge()
}

/**
 * Mend what is broken by moving one dish at a time, all parts of it that go in together, to wherever costs least: within the hour
 * where that will do, else anywhere. What breaks nothing stays where it is.
 *
 * @param only The jobs known to be in trouble; what others break has been granted. All where absent.
 * @returns False where nothing was moved.
 */
export function repair(layout: Layout, only?: ReadonlySet<number>): boolean {
  layout.judge()
  let moved = false
  for (let moves = 0; moves < 2 * layout.n && layout.violation > 1e-6; moves++) {
    const groups = troubled(layout).filter((parts) => !only || parts.some((u) => only.has(u)))
    const inside = [...(only ?? [])].filter((u) => layout.fixed[u]).map((u) => [u])
    if (!mend(layout, groups, NEAR, inside) && !mend(layout, groups, layout.ticks)) break
    moved = true
  }
  return moved
}

/**
 * On a day that has begun, set in nearer to when it has risen, and before it has waited too long, whatever dough can be without breaking more
 * than that is worth.
 *
 * @returns False where nothing was moved.
 */
export function fitDoughs(layout: Layout): boolean {
  layout.judge()
  let moved = false
  for (const parts of together(layout)) if (layout.unfitBy(parts[0]!) > 0 && mend(layout, [parts], NEAR)) moved = true
  return moved
}

/** Whether a job is drawn so much later than it is wanted, and than it was to be, that another hour is looked for. */
export function isDelayed(layout: Layout, u: number): boolean {
  return layout.placed[u] === 1 && layout.fixed[u] === 0 && layout.laterThanMeant(u) >= DELAYED
}

/**
 * On a day that has begun, set in at another hour what would else come out late, where that breaks nothing and costs less.
 *
 * @returns False where nothing was moved.
 */
export function hasten(layout: Layout): boolean {
  layout.judge()
  let moved = false
  for (const parts of together(layout)) if (isDelayed(layout, parts[0]!) && mend(layout, [parts], NEAR)) moved = true
  return moved
}

/** The jobs that are to be set in, those parts of a dish that go in together as one. */
function together(layout: Layout): number[][] {
  const groups = new Map<string, number[]>()
  for (let u = 0; u < layout.n; u++) {
    if (!layout.placed[u] || layout.fixed[u]) continue
    const key = `${layout.dishOf[u]} ${layout.s[u]}`
    groups.set(key, [...(groups.get(key) ?? []), u])
  }
  return [...groups.values()]
}

/** Jobs without which less is broken, those that go in together as one. */
function troubled(layout: Layout): number[][] {
  const all = layout.violation
  const out = together(layout).filter((parts) => {
    const before = parts.map((v) => ({v, s: layout.s[v]!}))
    for (const v of parts) layout.takeOut(v)
    layout.judge()
    const less = layout.violation < all - 1e-6
    for (const {v, s} of before) layout.set(v, s, layout.w[v]!)
    return less
  })
  layout.judge()
  return out
}

/**
 * Make the cheapest move of one group, no further than `reach` ticks; false where none is cheaper than staying.
 *
 * @param inside What is in the oven already, which can only be drawn later.
 */
function mend(
  layout: Layout,
  groups: readonly (readonly number[])[],
  reach: number,
  inside: readonly (readonly number[])[] = [],
): boolean {
  let least = layout.cost + HARD * layout.violation - 1e-6
  let found: {parts: readonly number[]; s: number; w: number; hold?: number} = {parts: [], s: 0, w: 0}
  for (const parts of [...groups, ...inside]) {
    const u = parts[0]!
    const before = parts.map((v) => layout.hold[v]!)
    for (let hold = 0; hold <= WAITS; hold++) {
      for (const v of parts) layout.hold[v] = hold
      if (!layout.judgeWithin(least, HARD)) continue
      least = layout.cost + HARD * layout.violation
      found = {parts, s: layout.s[u]!, w: layout.w[u]!, hold}
    }
    parts.forEach((v, i) => {
      layout.hold[v] = before[i]!
    })
  }
  for (const parts of groups) {
    const u = parts[0]!
    const before = parts.map((v) => ({v, s: layout.s[v]!, w: layout.w[v]!}))
    const from = Math.max(layout.from[u]!, layout.now, layout.s[u]! - reach)
    const to = Math.min(layout.to[u]!, layout.s[u]! + reach)
    everywhere(layout, parts, from, to, least, (s, w, price) => {
      if (price < least) {
        least = price
        found = {parts, s, w}
      }
      return least
    })
    for (const {v, s, w} of before) layout.set(v, s, w)
  }
  for (const v of found.parts) {
    if (found.hold === undefined) layout.set(v, found.s, found.w)
    else layout.hold[v] = found.hold
  }
  layout.judge()
  return found.parts.length > 0
}

/**
 * Set jobs in together at every tick between two at which the door may be opened, in every part of the floor, and judge each. They are
 * left where they were tried last, or out.
 *
 * @param limit The dearest day that is of use; `each` returns it anew.
 * @param most What may be broken at most.
 */
function everywhere(
  layout: Layout,
  parts: readonly number[],
  from: number,
  to: number,
  limit: number,
  each: (s: number, w: number, price: number) => number,
  most = Number.POSITIVE_INFINITY,
): void {
  let within = limit
  // Nothing that is set in cools the oven before it is in: at most ticks its heat alone says that it is of no use there.
  for (const v of parts) layout.takeOut(v)
  const without = layout.celsius.slice(from, to + 1)
  for (const w of layout.wheres[parts[0]!]!)
    for (let k = from; k <= to; k++) {
      if (parts.some((v) => !layout.byDay(v, k))) continue
      const outside = parts.reduce((sum, v) => sum + layout.outsideAt(v, w, without[k - from]!), 0)
      if (HARD * outside > within || outside > most) continue
      for (const v of parts) layout.set(v, k, w)
      if (layout.judgeWithin(within, HARD)) within = each(k, w, layout.cost + HARD * layout.violation)
    }
}

/** The cheapest times and parts of the floor for a job that is out, at which nothing more is broken; some ticks apart. */
export function seatsFor(layout: Layout, u: number, count: number): {s: number; w: number}[] {
  layout.judge()
  const most = layout.violation + SLIGHT
  const found: {s: number; w: number; price: number}[] = []
  const from = Math.max(layout.from[u]!, layout.now)
  const keep = (s: number, w: number, price: number): number => {
    if (layout.violation <= most) found.push({s, w, price})
    return Number.POSITIVE_INFINITY
  }
  everywhere(layout, [u], from, layout.to[u]!, Number.POSITIVE_INFINITY, keep, most)
  layout.takeOut(u)
  layout.judge()
  const out: {s: number; w: number}[] = []
  for (const f of found.sort((a, b) => a.price - b.price || a.s - b.s || a.w - b.w)) {
    if (out.length === count) break
    if (!out.some((o) => Math.abs(o.s - f.s) < APART && o.w === f.w)) out.push({s: f.s, w: f.w})
  }
  return out
}

/** The job without which least is broken, and least lost; −1 where none can be left out. */
function leastLoss(layout: Layout): number {
  let victim = -1
  let least = Number.POSITIVE_INFINITY
  for (let u = 0; u < layout.n; u++) {
    if (!layout.placed[u] || layout.fixed[u]) continue
    const s = layout.s[u]!
    layout.takeOut(u)
    layout.judge()
    // Several may have to go: what breaks least goes first.
    const price = layout.cost + FIRM * layout.violation
    layout.set(u, s, layout.w[u]!)
    if (price < least) {
      least = price
      victim = u
    }
  }
  layout.judge()
  return victim
}

/** What is broken by the dishes that are in the oven already, whatever is done with the rest. */
function unavoidable(layout: Layout): number {
  const laid = layout.snapshot()
  for (let u = 0; u < layout.n; u++) if (!layout.fixed[u]) layout.takeOut(u)
  layout.judge()
  const out = layout.violation
  layout.restore(laid, layout.lit)
  layout.judge()
  return out
}

/** Leave out what cannot be kept within the limits, the least loss first, until nothing is broken. */
export function prune(layout: Layout): void {
  const bound = unavoidable(layout) + 1e-6
  while (layout.violation > bound) {
    const victim = leastLoss(layout)
    if (victim < 0) break
    layout.takeOut(victim)
    layout.judge()
  }
}

/** What a place may break and still be tried on the true oven, and ticks between two places tried. */
const SLIGHT = 1
const APART = 3
/** Ticks within which a dish is moved first, and for which it may wait to be drawn with another. */
const NEAR = 12
const WAITS = 6
/** Minutes late from which a dish of a day that has begun is set in at another hour: small changes in, small changes out. */
export const DELAYED = 10
/** Steps in which the lighting is moved, min. */
const LATER = 30
