import {bestPlace, type Ledgers, type Taste} from './best-place.js'
import {apart, type Body, bodiesOf, clearOfKept, onFloor, type Stood, together} from './floor-bodies.js'
import type {Ground} from './floor-shape.js'
import {blocked} from './lanes.js'
import {pushApart} from './push-apart.js'
import type {FloorItem} from './types.js'

/**
 * A place for each of some vessels. Two ways are tried in turn. Set in from the back: each vessel takes the furthest-back corner that is
 * left, those drawn last first. Then, for tight loads, pushed apart, from several starts. Both are deterministic.
 */

/** Which way oblong vessels lie: whichever suits each place, or all the same way, in rows. */
export type Lie = 'either' | 'across' | 'along'

const area = (item: FloorItem): number =>
  item.footprint.shape === 'circle' ? (Math.PI / 4) * item.footprint.diameter ** 2 : item.footprint.length * item.footprint.width

const byName = (p: FloorItem, q: FloorItem): number => (p.dish < q.dish ? -1 : p.dish > q.dish ? 1 : p.number - q.number)

/** Drawn last first, then set in first, then largest. */
const backFirst = (p: FloorItem, q: FloorItem): number =>
  q.out - p.out || (p.in ?? 0) - (q.in ?? 0) || area(q) - area(p) || byName(p, q)

const largestFirst = (p: FloorItem, q: FloorItem): number => area(q) - area(p) || backFirst(p, q)

/** The bodies of a vessel that lie so. */
export const lying = (bodies: readonly Body[], lie: Lie): readonly Body[] => {
  if (lie === 'either' || bodies.length === 1) return bodies
  return [bodies[lie === 'across' ? 0 : 1]!]
}

function setInFromBack(
  ground: Ground,
  standing: readonly Stood[],
  items: readonly FloorItem[],
  taste: Taste,
  lie: Lie,
  pardoned: FloorItem | null,
): Stood[] | null {
  const stood = [...standing]
  const ledgers: Ledgers = new Map()
  for (const item of items) {
    const place = bestPlace(ground, stood, lying(bodiesOf(ground, item), lie), taste, pardoned, ledgers)
    if (place === null) return null
    stood.push(place)
  }
  return stood
}

/** Vessels of one footprint and height change places so that those drawn last stand furthest back. */
function reorder(standing: number, stood: readonly Stood[]): Stood[] {
  const groups = new Map<string, Stood[]>()
  for (const s of stood.slice(standing)) {
    const key = `${s.body.circle} ${s.body.bx} ${s.body.by} ${s.body.item.height} ${s.body.turn}`
    groups.set(key, [...(groups.get(key) ?? []), s])
  }
  const out = stood.slice(0, standing)
  for (const group of groups.values()) {
    const items = group.map((s) => s.body).sort((p, q) => backFirst(p.item, q.item))
    const spots = [...group].sort((p, q) => q.y - p.y || p.x - q.x)
    spots.forEach((spot, i) => {
      out.push({body: items[i]!, x: spot.x, y: spot.y})
    })
  }
  return out
}

function allStand(ground: Ground, stood: readonly Stood[], standing: number): boolean {
  for (let i = standing; i < stood.length; i++) {
    const s = stood[i]!
    if (!onFloor(ground, s.body, s.x, s.y) || !clearOfKept(ground, s.body, s.x, s.y)) return false
    for (let j = 0; j < i; j++) {
      const o = stood[j]!
      if (together(s.body, o.body) && !apart(s.body, s.x, s.y, o.body, o.x, o.y)) return false
    }
  }
  return true
}

/**
 * Places for all, those that stand already first, or null where none were found.
 *
 * @param pardoned A vessel that will be moved, so lanes do not mind it.
 */
export function placeAll(
  ground: Ground,
  standing: readonly Stood[],
  items: readonly FloorItem[],
  effort: 'quick' | 'full',
  pardoned: FloorItem | null,
): Stood[] | null {
  const ordered = [...items].sort(backFirst)
  const wished = items.some((item) => item.place === 'mouth' || item.place === 'middle')
  const bySize = [...items].sort(largestFirst)
  const sameOrder = bySize.every((item, i) => item === ordered[i])
  const oblong = items.some((item) => item.footprint.shape === 'rectangle' && item.footprint.length !== item.footprint.width)
  const attempts: Array<[readonly FloorItem[], Taste, Lie]> = []
  if (wished) attempts.push([ordered, 'as wished', 'either'])
  attempts.push([ordered, 'back', 'either'], [ordered, 'wall', 'either'])
  if (oblong) attempts.push([ordered, 'back', 'across'], [ordered, 'back', 'along'])
  if (!sameOrder) attempts.push([bySize, 'back', 'either'], [bySize, 'wall', 'either'])
  for (const [list, taste, lie] of attempts) {
    const stood = setInFromBack(ground, standing, list, taste, lie, pardoned)
    if (stood !== null) return stood
  }
  if (effort === 'quick') return null
  const inOrder = items.some((item) => item.out !== items[0]!.out || (item.in ?? 0) !== (items[0]!.in ?? 0))
  for (let attempt = 0; attempt < (inOrder ? 26 : 14); attempt++) {
    const byDepth = inOrder && attempt % 4 !== 3
    const stood = pushApart(ground, standing, byDepth ? ordered : bySize, attempt, 700, byDepth)
    if (stood === null || !allStand(ground, stood, standing.length)) continue
    const changed = reorder(standing.length, stood)
    if (allStand(ground, changed, standing.length) && blocked(ground, changed).every(([front]) => front.body.item === pardoned))
      return changed
  }
  return null
}
