import type {Dish} from '../scale/types.js'
import {rules} from './rules.js'
import type {Plan, PlanProblem} from './types.js'

/** How what is to be done to a dish as it bakes falls in with the openings of the door. Common practice, no source. */
const TENDED = {
  /** An opening so near does for what has its time, minutes, or this share of the stay if that is more. */
  near: 10,
  share: 0.1,
  /** Parts of one dish that go in or out at other times are seen to at one opening where theirs are so near, minutes. */
  together: 30,
  /** A crust baked blind is filled at an opening at most so much sooner, minutes: less of its bake leaves it raw beneath. */
  rawer: 3,
  /** … and at most so much later, as a share of its blind bake: what fills it has that much less. */
  longer: 1 / 3,
} as const

type Task = NonNullable<Dish['tending']>[number]

/** What is done to dishes at one moment; or is told as they go in, because they want it oftener than the door is opened. */
export interface Tended {
  readonly how: 'door' | 'own' | 'oftener' | 'fill'
  readonly at: number
  readonly dishes: readonly string[]
  readonly words: string
}

/** A dish that its receipt has tended oftener than the plan opens the door while it is in. */
export interface Untended {
  readonly dish: Dish
  readonly words: string
  /** How often in all, where the words say it; and for how many of these the door is open. */
  readonly wanted: number | null
  readonly opened: number
}

/**
 * When a crust baked blind is filled: at its share of the stay, or at an opening of the door that is near and gives it time enough.
 *
 * @param from when it is set in, `to` when it is drawn, minutes after midnight
 * @param part the share of the stay that it bakes empty
 * @param inside when the door is opened in between
 */
function fillingAt(from: number, to: number, part: number, inside: readonly number[]): number {
  const blind = part * (to - from)
  const due = from + blind
  const [nearest] = inside
    .filter((k) => k - due >= -TENDED.rawer && k - due <= Math.min(TENDED.near, TENDED.longer * blind))
    .sort((a, b) => Math.abs(a - due) - Math.abs(b - due))
  const own = from + rules.tick * Math.round(blind / rules.tick)
  return nearest ?? Math.max(from + 1, Math.min(own, to - 1))
}

/**
 * When what receipts ask within the bake is done: at the openings of the door that fall within the stay; what has its one time, at that time
 * if the door is not opened near it. What is wanted oftener than the door is opened is told as the dish goes in, for an opening costs heat
 * that the plan has to count.
 *
 * @param openings when the door is opened, minutes after midnight, each once and in order
 * @param shut whether the door is to be kept shut at a time
 */
export function tendingOf(
  problem: PlanProblem,
  {loads}: Pick<Plan, 'loads'>,
  openings: readonly number[],
  shut: (at: number) => boolean,
): {readonly tended: Tended[]; readonly short: Untended[]} {
  const byId = new Map(problem.dishes.map((dish) => [dish.id, dish]))
  /** With the task of the receipt that is done then. */
  const tended = new Map<string, {how: Tended['how']; at: number; dishes: string[]; words: string; task: Task}>()
  const short = new Map<string, Untended>()
  const put = (how: Tended['how'], at: number, id: string, task: Task): void => {
    const {words} = task
    const key = `${how} ${at} ${words}`
    const one = tended.get(key) ?? {how, at, dishes: [], words, task}
    if (!one.dishes.includes(id)) one.dishes.push(id)
    tended.set(key, one)
  }
  for (const load of loads)
    for (const {dish: id, draw, alreadyIn} of load.dishes) {
      const dish = byId.get(id)
      for (const task of dish?.tending ?? []) {
        const {words, fills, every, after, share} = task
        const stay = draw.likely - load.at
        const inside = openings.filter((at) => at > load.at && at < draw.likely)
        const bake = dish!.need.minutes.likely
        // Its time is of its receipt's bake, and goes with the stay that stands for that.
        const part = share ?? (after === undefined ? undefined : after / bake)
        if (part !== undefined && part < 1) {
          if (fills) {
            put('fill', fillingAt(load.at, draw.likely, part, inside), id, task)
            continue
          }
          const at = load.at + rules.tick * Math.round((part * stay) / rules.tick)
          const near = inside.filter((k) => Math.abs(k - at) <= Math.max(TENDED.near, TENDED.share * stay))
          const [nearest] = near.sort((a, b) => Math.abs(a - at) - Math.abs(b - at))
          if (nearest !== undefined) put('door', nearest, id, task)
          else if (
            [...tended.values()].some(
              (one) =>
                one.how === 'own' && one.task === task && one.dishes.includes(id) && Math.abs(one.at - at) <= TENDED.together,
            )
          )
            continue
          else if (!shut(at) && at > load.at && at < draw.likely) put('own', at, id, task)
          else short.set(`${id} ${words}`, {dish: dish!, words, wanted: 1, opened: 0})
          continue
        }
        const wanted = every === undefined ? null : Math.max(1, Math.ceil(bake / every) - 1)
        for (const at of inside) put('door', at, id, task)
        if (inside.length >= (wanted ?? 1)) continue
        if (alreadyIn !== true) put('oftener', load.at, id, task)
        short.set(`${id} ${words}`, {dish: dish!, words, wanted, opened: inside.length})
      }
    }
  return {tended: [...tended.values()].map(({task: _, ...one}) => one), short: [...short.values()]}
}
