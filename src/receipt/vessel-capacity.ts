import type {VesselShape, VesselSize} from './vessel.js'

/**
 * What vessels hold, from their inside measures.
 *
 * What each shape holds to the brim as a share of the cylinder or box of its inside measures: tins narrow downwards. From published
 * US tables of tins, brim-full, in cups (from memory): 9 × 1 1/2 in round 6, 8 × 8 × 2 in square 8, 9 × 9 × 2 in 10, 13 × 9 × 2 in
 * 14–15, 9 × 5 × 3 in loaf 8.
 */
const full: Readonly<Record<VesselShape, number>> = {
  round: 0.92,
  square: 0.9,
  oblong: 0.9,
  loaf: 0.86,
  'pie plate': 1,
  crock: 0.9,
  'free-standing': 1,
  sheet: 1,
}
/** A pie plate's side runs in by 0.9 of its depth: 9 × 1 1/2 in then holds 4.8 cups; published tables give 4 to 5 (from memory). */
const plateSlope = 0.9

/** Area at the top, m². */
export function topArea(size: VesselSize): number {
  return size.across !== undefined ? (Math.PI / 4) * size.across ** 2 : (size.length ?? 0) * (size.width ?? 0)
}

/** What it holds to the brim, m³: prism or cylinder, frustum for a pie plate, spherical cap for a free-standing loaf. */
export function brimVolume(size: VesselSize): number {
  if (size.shape === 'pie plate' && size.across !== undefined) {
    const top = size.across / 2
    const bottom = Math.max(0, top - plateSlope * size.height)
    return ((Math.PI * size.height) / 3) * (top * top + top * bottom + bottom * bottom)
  }
  if (size.shape === 'free-standing' && size.across !== undefined) {
    const r = size.across / 2
    return ((Math.PI * size.height) / 6) * (3 * r * r + size.height * size.height)
  }
  return topArea(size) * size.height * full[size.shape]
}

/**
 * The vessel of the same proportions that holds so much, every side as the cube root.
 *
 * @param millilitres to the brim
 * @param holds what `like` is sold as holding, where its form is not that of its shape (a tube in the middle), ml
 */
export function asLargeAs(like: VesselSize, millilitres: number, holds = brimVolume(like) * 1e6): VesselSize {
  const by = Math.cbrt(millilitres / holds)
  const {shape, across, length, width, height} = like
  return {
    shape,
    ...(across === undefined ? {} : {across: across * by}),
    ...(length === undefined ? {} : {length: length * by}),
    ...(width === undefined ? {} : {width: width * by}),
    height: height * by,
  }
}
