import {distance} from 'fastest-levenshtein'
import {fuels} from '../lexicon/fuels.js'
import {materials} from '../lexicon/materials.js'
import type {Fuel, Material} from '../lexicon/schema.js'

const byId = new Map(materials.map((m) => [m.id, m]))

/** A name as people write it, brought to the spelling of the tables. */
function plain(name: string): string {
  return name.toLowerCase().replace(/[_-]+/g, ' ').replace(/\s+/g, ' ').trim()
}

/** The row with the name, or the nearest name where there is none. */
export type Lookup<T> = {readonly ok: true; readonly row: T} | {readonly ok: false; readonly nearest: readonly string[]}

function find<T extends {readonly id: string; readonly names: readonly string[]}>(rows: readonly T[], name: string): Lookup<T> {
  const wanted = plain(name)
  const forms = [wanted, wanted.replace(/s$/, ''), wanted.replace(/fiber/g, 'fibre')]
  for (const form of forms)
    for (const row of rows) if (plain(row.id) === form || row.names.some((n) => plain(n) === form)) return {ok: true, row}
  const near = rows
    .flatMap((row) => row.names.map((n) => ({n, d: distance(wanted, plain(n)) / Math.max(wanted.length, n.length)})))
    .sort((a, b) => a.d - b.d)
  const nearest = [...new Set(near.slice(0, 3).map((c) => c.n))]
  return {ok: false, nearest}
}

/**
 * The row of a material's id.
 *
 * @throws RangeError where there is none: ids come from `findMaterial`
 */
export function materialById(id: string): Material {
  const row = byId.get(id)
  if (!row) throw new RangeError(`no material “${id}”`)
  return row
}

/**
 * Look a material up by any of its names.
 *
 * @param name "fire brick", "Ceramic fiber blanket"
 * @returns the row, or the nearest names by edit distance
 */
export function findMaterial(name: string): Lookup<Material> {
  return find(materials, name)
}

/**
 * Look a fuel up by any of its names.
 *
 * @returns the row, or the nearest names by edit distance
 */
export function findFuel(name: string): Lookup<Fuel> {
  return find(fuels, name)
}
