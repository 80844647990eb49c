/** How the time of a bake goes with its thickness. */

/**
 * What an oven gives a surface at the least, W/(m²·K), radiation and air together, and what batter, custard or paste conducts at the most,
 * W/(m·K): 20–30 and 0.4–0.5 (from memory). This end of both leaves the most time to what is made thinner.
 */
const surface = 20
const conducts = 0.5

/**
 * The time of what is so many times as thick, as a share of the time that was given.
 *
 * Thicker, it goes as the square of the thickness at equal Fourier number, Fo = α t / L² (Incropera & DeWitt, transient conduction; from
 * memory): the longer of the two laws, so that a deep dish is not drawn raw. Thinner, the heat has to come through the surface too, and that part
 * of the time goes as the thickness itself: by Plank's equation for a slab t ∝ P d / h + R d² / k, with P = 1/2 and R = 1/8 (ASHRAE
 * Handbook: Refrigeration, cooling and freezing times of foods; from memory), so the part within is h d / 4 k of the part at the surface.
 * The square alone would leave a quarter of its time to a custard half as deep, and this leaves about two fifths.
 *
 * @param thicker thickness now / thickness the time was given for
 * @param was how thick it was given for, m; undefined of what takes its own shape (loaves, roasts), which goes as the square either way
 */
export function timeShare(thicker: number, was?: number): number {
  const square = thicker * thicker
  if (was === undefined || thicker >= 1) return square
  const within = (surface * was) / (4 * conducts)
  return (thicker + within * square) / (1 + within)
}
