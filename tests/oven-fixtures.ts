import type {OvenSpec} from '../src/oven/types.js'

/** One layer of a wall: material and thickness, m. */
export const layer = (material: string, thickness: number): {material: string; thickness: number} => ({material, thickness})

/** A full brick oven of a farmhouse: 42 in round, one brick thick. */
export const farmhouse: OvenSpec = {
  name: 'farmhouse',
  floor: {shape: 'round', diameter: 1.067},
  vaultHeight: 0.406,
  mouth: {width: 0.457, height: 0.279},
  door: layer('oak', 0.05),
  hearth: [layer('fire-brick', 0.0635), layer('sand', 0.05), layer('common-brick', 0.2)],
  vault: [layer('common-brick', 0.114), layer('clay', 0.076), layer('sand', 0.15)],
  place: 'indoors',
  ambient: 16,
  fuel: {wood: 'oak', moisture: 0.18},
  start: {celsius: 16, damp: false},
}
