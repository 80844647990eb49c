import {lookUpItem} from '../lexicon/index.js'
import type {Dish} from '../scale/types.js'
import type {Report} from './check.js'
import {nextLit} from './check-fires.js'
import type {Edge, Heat} from './check-heat.js'
import {DAY, nextNight} from './check-night.js'
import {dishesIn, figureIn} from './check-steps.js'
import {rules} from './rules.js'
import type {Phrase, Plan, PlanProblem} from './types.js'

/**
 * The checker's rule for how what is drawn is kept until it is eaten: what must be told is told at its draw, of each dish by name. It shares no
 * code with the planner.
 */

/**
 * @param heat the oven's, by which what is left in through the night is judged
 * @param bad called for each rule that is broken
 */
export function checkKept(problem: PlanProblem, plan: Plan, dishes: ReadonlyMap<string, Dish>, heat: Heat, bad: Report): void {
  for (const load of plan.loads)
    for (const {dish: id, draw, celsiusOut, zone = 'across'} of load.dishes) {
      const dish = dishes.get(id)
      if (!dish) continue
      const at = draw.likely
      const step = plan.steps.find((s) => s.action === 'draw' && Math.abs(s.at - at) < 0.01 && s.dishes.includes(id))
      // That no step draws it is told elsewhere.
      if (!step) continue
      const kept = step.words?.ifBehind?.values['kept']
      const phrases: readonly Phrase[] = typeof kept === 'object' && 'phrases' in kept ? kept.phrases : []
      const told = (by: number | null, ...ids: readonly string[]): boolean =>
        phrases.some((p) => {
          const until = figureIn(p, 'by')
          return ids.includes(p.id) && dishesIn(p).includes(id) && (until === null || by === null || Math.abs(until - by) < 0.01)
        })
      const eaten = eatenAt(dish, problem.day.serve)
      const waits = eaten === null ? 0 : eaten - at
      const cold = wantsCold(dish)
      const miss = (what: string): void => bad('steps', id, at, waits, `${dish.title}: its draw does not say ${what}`)
      // What is not done when the fire is lit again is cooked through before it is kept.
      if (told(null, 'out for fire unfinished', 'out for fire elsewhere')) continue
      if (cold && waits > rules.standMinutes && !told(eaten, 'keep cold', 'keep long', 'keep hot'))
        miss('how it is kept until it is eaten')
      else if (
        dish.hot &&
        !nextDay(dish, problem.day.serve) &&
        waits > rules.keepsHot &&
        !told(eaten, ...(cold || goesBad(dish) ? ['keep hot', 'keep long', 'keep cold'] : ['warm again']))
      )
        miss('that it is kept hot')
      const night = nextNight(at)
      if (Math.min(draw.high, nextLit(plan, at)) > night) {
        const cool = (edge: Edge): boolean =>
          goesBad(dish) && heat.inZone(zone, night - rules.nightFrom + DAY + rules.waking, edge) < rules.holdCelsius
        const stays = dish.need.overnight && !cool('likely')
        const what = stays ? ['till morning', 'till morning filled'] : ['out by night']
        if (!phrases.some((p) => what.includes(p.id) && dishesIn(p).includes(id) && figureIn(p, 'late') === night))
          miss('what becomes of it where it is not done by night')
        if (stays && cool('low') && !told(null, 'was cold')) miss('that it may have been lukewarm too long')
      }
      if (!dish.need.overnight) continue
      const lukewarm = goesBad(dish) && celsiusOut.low < rules.holdCelsius
      if (lukewarm && !told(null, 'was cold')) miss('that it may have been lukewarm too long')
      if (cold && (eaten === null || waits < 0) && !told(null, 'kept warm', 'keep hot')) miss('that it is kept hot')
    }
}

/** Whether nobody said when a dish is eaten that stays in through the night of the day's meal. */
export const nextDay = ({wantedBy, need}: Pick<Dish, 'wantedBy' | 'need'>, serve: number): boolean =>
  wantedBy === null && need.overnight && serve < 24 * 60

/** Whether it is the slack oven's and no meal's: it dries or stands there overnight, or nobody eats it. */
export const forNoMeal = ({startHigh, overnight, noMeal}: Dish['need']): boolean =>
  startHigh <= rules.slackCelsius && (overnight || noMeal === true)

/** When a dish is eaten, minutes after midnight, as far as the day says; null where that is all one. */
function eatenAt({wantedBy, need}: Dish, serve: number): number | null {
  if (wantedBy !== null) return wantedBy
  return forNoMeal(need) ? null : serve
}

/** It goes bad where it is neither hot nor cold. */
const goesBad = ({keeps, dough, need}: Dish): boolean => keeps !== true && dough === null && !forNoMeal(need)

/** It has flesh in it; or what eggs and milk set, or beans, and it does not keep. */
function wantsCold(dish: Dish): boolean {
  const {cautions, amounts} = dish
  if (rules.flesh.some((id) => cautions.includes(id))) return true
  if (!goesBad(dish)) return false
  if (rules.keptCold.some((id) => cautions.includes(id))) return true
  const grams = {egg: 0, dairy: 0, all: 0}
  for (const {item, grams: weight} of amounts) {
    const group = lookUpItem(item)?.group
    grams.all += weight?.likely ?? 0
    if (group === 'egg' || group === 'dairy') grams[group] += weight?.likely ?? 0
  }
  return grams.all > 0 && Math.min(grams.egg, grams.dairy) >= rules.setByShare * grams.all
}
