import type {Dish} from '../scale/types.js'
import type {Report} from './check.js'
import type {Curves} from './check-figures.js'
import {edges, interpolate} from './check-heat.js'
import {rules} from './rules.js'
import type {BandBalance, Plan} from './types.js'

/** The checker's rule for where the heat goes: the floor and heat of each band that the oven falls through, summed again from the loads. */

/** Shares, m²·h, MJ and minutes that are rounding: bands are cut here by the forecast's own steps. */
const off = {share: 0.05, floor: 0.02, heat: 0.3, minutes: 1.5, celsius: 0.1}

const bands = ['hot', 'moderate', 'slow', 'slack'] as const

/** What a load gives and takes in each band. */
interface Sums {
  from: number
  to: number
  minutes: number
  /** m²·h that its vessels cover at least and that they can be reckoned with at most. */
  least: number
  most: number
  /** MJ. */
  heat: number
}

/** @param bad called for each rule that is broken */
export function checkBalance(
  plan: Plan,
  dishes: ReadonlyMap<string, Dish>,
  {heat, doses, shares}: Pick<Curves, 'heat' | 'doses' | 'shares'>,
  bad: Report,
): void {
  const wrong = (at: number, by: number, what: string): void => bad('score', null, at, by, `where the heat goes: ${what}`)
  const {area} = shares
  const later = (plan.fires ?? []).slice(1)
  const first = Math.ceil(plan.ready)
  const end = Math.floor(heat.end)
  const sums = bands.map((): Sums => ({from: Number.POSITIVE_INFINITY, to: first, minutes: 0, least: 0, most: 0, heat: 0}))
  /** The band of each minute from when the oven is ready; −1 for none. */
  const which = new Int8Array(Math.max(0, end - first)).fill(-1)
  for (let m = first; m < end; m++) {
    if (later.some((fire) => m >= fire.lit && m < fire.ready)) continue
    const celsius = heat.mean(m + 0.5)
    const i = bands.findIndex((band) => celsius >= rules.bandFeet[band])
    which[m - first] = i
    const row = sums[i]
    if (!row) continue
    row.from = Math.min(row.from, m)
    row.to = m + 1
    row.minutes++
  }
  for (const load of plan.loads)
    for (const entry of load.dishes) {
      const {dish: id, count, draw} = entry
      const dish = dishes.get(id)
      if (!dish) continue
      const [own, share] = shares.of(dish, entry)
      const takes = (count * (dish.mass * rules.load.heat * rules.load.rise + dish.water * rules.load.steam)) / 1e6
      const whole = doses.between('across', dish.need.done, load.at, draw.likely)
      const to = Math.min(end, draw.likely)
      for (let m = Math.max(first, Math.floor(load.at)); m < to; ) {
        // A stretch within one band.
        const i = which[m - first]!
        const from = m
        while (m < to && which[m - first] === i) m++
        const row = sums[i]
        if (!row) continue
        row.least += (own * (m - from)) / 60
        row.most += (share * (m - from)) / 60
        if (whole > 0) row.heat += (takes * doses.between('across', dish.need.done, from, m)) / whole
      }
    }
  const told = new Map((plan.balance ?? []).map((row) => [row.band, row]))
  for (const [i, band] of bands.entries()) {
    const row = told.get(band)
    const sum = sums[i]!
    if (!row && sum.minutes > off.minutes) wrong(sum.from, sum.minutes, 'a band that the oven falls through is not told')
    if (row) checkBand(plan, row, sum, area, wrong)
  }
  const last = Math.max(plan.ready, ...plan.loads.flatMap((load) => load.dishes.map((d) => d.draw.likely)))
  const {left} = plan
  if (!left || Math.abs(left.at - last) > off.minutes || Math.abs(left.celsius - heat.mean(left.at)) > off.celsius)
    wrong(last, 0, 'what is left at the end is not what the curve has then')
}

function checkBand(
  plan: Plan,
  row: BandBalance,
  sum: Sums,
  area: number,
  wrong: (at: number, by: number, what: string) => void,
): void {
  const between = (value: number, low: number, high: number, little: number): boolean =>
    value >= low * (1 - off.share) - little && value <= high * (1 + off.share) + little
  if (Math.abs(row.from - sum.from) > off.minutes || Math.abs(row.to - sum.to) > off.minutes)
    wrong(row.from, row.from - sum.from, 'a band is told at another time')
  const floor = (area * sum.minutes) / 60
  if (!between(row.floor, floor, floor, off.floor)) wrong(row.from, row.floor - floor, 'a band has other floor than is told')
  if (!between(row.used, sum.least, sum.most, off.floor))
    wrong(row.from, row.used - sum.most, 'the loads use other floor than is told')
  if (!between(row.heat, sum.heat, sum.heat, off.heat))
    wrong(row.from, row.heat - sum.heat, 'the loads take other heat than is told')
  const {heat, step} = plan.forecast
  const {left} = row
  if (
    !heat !== !left ||
    (heat && left && edges.some((edge) => Math.abs(left[edge] - interpolate(heat[edge], step, row.to - plan.lit)) > off.heat))
  )
    wrong(row.to, 0, 'the oven holds other heat than is told')
}
