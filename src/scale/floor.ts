import {bestPlace, type Ledgers, type Taste} from './best-place.js'
import {bodiesOf, bodyOf, type Stood} from './floor-bodies.js'
import {type Ground, groundOf, usableArea, zoneOf} from './floor-shape.js'
import {blocked} from './lanes.js'
import {type Lie, lying, placeAll} from './place-all.js'
import type {FloorConflict, FloorItem, FloorRoom, Move, Packing, Placed, Vessel} from './types.js'

/**
 * Packing vessels on the floor so that nothing has to be moved to reach another (`lanes.ts`): what cannot go in at all, a place for every
 * vessel (`place-all.ts`) or why there is none, and how many of one kind the floor holds.
 */

export interface PackOptions {
  /** `quick` leaves out pushing apart and moves: for the planner's inner loop. */
  readonly effort?: 'quick' | 'full'
  /** Look for a packing at the price of a move when there is none without. Default true with full effort. */
  readonly moves?: boolean
}

function result(room: FloorRoom, stood: readonly Stood[], standing: number): Placed[] {
  return stood
    .slice(standing)
    .map((s) => ({
      dish: s.body.item.dish,
      number: s.body.item.number,
      x: s.x,
      y: s.y,
      turn: s.body.turn,
      zone: zoneOf(room.floor, s.y),
    }))
    .sort((p, q) => (p.dish < q.dish ? -1 : p.dish > q.dish ? 1 : p.number - q.number))
}

/**
 * Share of a round or oval floor beyond which no search is made: circles in a circle fill 0.803 at the best of up to nineteen
 * (n = 19), and vessels with square corners less.
 */
const densest = 0.83

const nameOf = (item: FloorItem): {dish: string; number: number} => ({dish: item.dish, number: item.number})

const centimetres = (metres: number): string => `${Math.round(metres * 1000) / 10} cm`

/** Why one vessel alone cannot go in, or null. Lengths in the reason are centimetres. */
export function passesMouth(
  room: FloorRoom,
  item: Pick<FloorItem, 'dish' | 'number' | 'footprint' | 'height'>,
): FloorConflict | null {
  const foot = item.footprint
  const narrow = foot.shape === 'circle' ? foot.diameter : Math.min(foot.length, foot.width)
  const items = [{dish: item.dish, number: item.number}]
  if (narrow > room.mouth.width + 1e-9) {
    return {
      rule: 'mouth width',
      reason: `${item.dish}: ${centimetres(narrow)} across, and the mouth is ${centimetres(room.mouth.width)} wide`,
      items,
    }
  }
  if (item.height > room.mouth.height + 1e-9) {
    return {
      rule: 'mouth height',
      reason: `${item.dish}: ${centimetres(item.height)} high, and the mouth is ${centimetres(room.mouth.height)} high`,
      items,
    }
  }
  if (item.height >= room.vaultHeight) {
    return {
      rule: 'vault height',
      reason: `${item.dish}: ${centimetres(item.height)} high, and the vault is ${centimetres(room.vaultHeight)} high`,
      items,
    }
  }
  return null
}

/** Area of a footprint with half the clearance all round, m². */
function areaNeeded(footprint: Vessel['footprint'], clearance: number): number {
  return footprint.shape === 'circle'
    ? (Math.PI / 4) * (footprint.diameter + clearance) ** 2
    : (footprint.length + clearance) * (footprint.width + clearance)
}

/**
 * False only where these vessels cannot stand on the floor together whatever their places: their areas with clearance exceed the
 * usable floor. A bound, not a packing.
 */
export function mayFit(room: FloorRoom, footprints: ReadonlyArray<Vessel['footprint']>): boolean {
  const clearance = room.rules?.clearance ?? groundOf(room).rules.clearance
  // A strip of half the clearance may hang over what is kept free; it is at most that wide along the usable floor's edge.
  const {a, b} = groundOf(room)
  const edge = clearance * 2 * (a + b)
  return footprints.reduce((sum, foot) => sum + areaNeeded(foot, clearance), 0) <= usableArea(room) + edge
}

function standingOf(ground: Ground, items: readonly FloorItem[]): Stood[] {
  return items.flatMap((item) =>
    item.fixed === undefined ? [] : [{body: bodyOf(ground, item, item.fixed.turn), x: item.fixed.x, y: item.fixed.y}],
  )
}

/**
 * Find a place for every vessel.
 *
 * @param input the oven's room and the vessels; those with `fixed` stand already and stay.
 * @param options how hard to try.
 * @returns places of the vessels that are not fixed, by dish and number; or the conflict. Positions in metres (see `Placed`).
 */
export function packFloor(input: FloorRoom & {readonly items: readonly FloorItem[]}, options: PackOptions = {}): Packing {
  const effort = options.effort ?? 'full'
  const ground = groundOf(input)
  const standing = standingOf(ground, input.items)
  const items = input.items.filter((item) => item.fixed === undefined)
  if (items.length === 0) return {placed: []}
  for (const item of items) {
    const conflict = passesMouth(input, item)
    if (conflict !== null) return {conflict}
  }
  for (const item of items) {
    const known = items.find((other) => sameVessel(other, item))
    if (known !== item) continue
    if (bestPlace(ground, [], bodiesOf(ground, item), 'back', null, new Map()) === null) {
      return {
        conflict: {
          rule: 'too large',
          reason: `${item.dish}: too large, even alone, for this floor under the vault`,
          items: [nameOf(item)],
        },
      }
    }
  }
  const none: Packing = {
    conflict: {rule: 'room', reason: `no place was found for ${items.length} vessels together`, items: items.map(nameOf)},
  }
  const usable = usableArea(input)
  for (const moment of new Set(items.map((item) => item.in ?? 0))) {
    const present = input.items.filter((item) => (item.in ?? 0) <= moment && item.out > moment)
    const footprints = present.map((item) => item.footprint)
    if (!mayFit(input, footprints)) {
      return {
        conflict: {rule: 'area', reason: `${present.length} vessels need more floor than there is`, items: present.map(nameOf)},
      }
    }
    const needed = footprints.map((foot) => areaNeeded(foot, ground.rules.clearance))
    // One vessel may be most of the floor by itself.
    if (ground.round && Math.max(...needed) < usable / 2 && needed.reduce((p, q) => p + q, 0) > densest * usable) return none
  }
  const stood = placeAll(ground, standing, items, effort, null)
  if (stood !== null) return {placed: result(input, stood, standing.length)}
  if (!(options.moves ?? effort === 'full')) return none
  const saved = withMoves(input, ground, standing, items)
  if (saved !== null) {
    const names = saved.moves.map(
      (move) => `${move.dish} ${move.number} to ${move.why} ${move.toReach.dish} ${move.toReach.number}`,
    )
    return {
      conflict: {
        rule: 'reach',
        reason: `they fit, but not with every one in reach: move ${names.join('; ')}`,
        items: saved.moves.flatMap((move) => [{dish: move.dish, number: move.number}, move.toReach]),
        saved,
      },
    }
  }
  return none
}

const sameVessel = (p: FloorItem, q: FloorItem): boolean =>
  p.height === q.height &&
  (p.footprint.shape === 'circle'
    ? q.footprint.shape === 'circle' && p.footprint.diameter === q.footprint.diameter
    : q.footprint.shape === 'rectangle' && p.footprint.length === q.footprint.length && p.footprint.width === q.footprint.width)

/** A packing in which one vessel has to be shifted: the one whose pardon saves the load with the fewest moves. */
function withMoves(
  room: FloorRoom,
  ground: Ground,
  standing: readonly Stood[],
  items: readonly FloorItem[],
): {placed: Placed[]; moves: Move[]} | null {
  let best: {placed: Placed[]; moves: Move[]} | null = null
  const candidates = [...standing.map((s) => s.body.item), ...items]
  const seen: FloorItem[] = []
  for (const item of candidates) {
    // Vessels of one dish are alike: one of them tells for all.
    if (item.fixed === undefined && seen.some((other) => other.dish === item.dish && other.fixed === undefined)) continue
    seen.push(item)
    const stood = placeAll(ground, standing, items, 'quick', item)
    if (stood === null) continue
    const moves = blocked(ground, stood).map(
      ([front, behind]): Move => ({
        ...nameOf(front.body.item),
        toReach: nameOf(behind.body.item),
        why: front.body.in < behind.body.in ? 'set in' : 'draw',
        at: front.body.in < behind.body.in ? behind.body.in : behind.body.out,
      }),
    )
    if (moves.length > 0 && (best === null || moves.length < best.moves.length))
      best = {placed: result(room, stood, standing.length), moves}
    if (best !== null && best.moves.length === 1) break
  }
  return best
}

/**
 * How many vessels of one kind stand on the empty floor at once: what "fill the floor" means, and the planner's measure of a
 * vessel's share of the floor (1 / capacity). 0 where one does not go in.
 */
export function capacityOf(
  room: FloorRoom,
  vessel: Pick<Vessel, 'footprint' | 'height'>,
  effort: 'quick' | 'full' = 'full',
): number {
  const item = (number: number): FloorItem => ({dish: 'x', number, footprint: vessel.footprint, height: vessel.height, out: 1})
  if (passesMouth(room, item(1)) !== null) return 0
  const ground = groundOf(room)
  const bodies = bodiesOf(ground, item(1))
  let most = 0
  const ways: Array<[Taste, Lie]> = [
    ['back', 'either'],
    ['wall', 'either'],
  ]
  if (bodies.length > 1) ways.push(['back', 'across'], ['back', 'along'])
  for (const [taste, lie] of ways) {
    const stood: Stood[] = []
    const ledgers: Ledgers = new Map()
    for (;;) {
      const place = bestPlace(ground, stood, lying(bodies, lie), taste, null, ledgers)
      if (place === null) break
      stood.push(place)
      if (stood.length >= 400) break
    }
    most = Math.max(most, stood.length)
  }
  if (most === 0 || effort === 'quick') return most
  while (most < 60) {
    const more = Array.from({length: most + 1}, (_, i) => item(i + 1))
    if (
      !mayFit(
        room,
        more.map((m) => m.footprint),
      )
    )
      break
    if (placeAll(ground, [], more, 'full', null) === null) break
    most++
  }
  return most
}
