import {readDayFolder} from '../src/cli/day-folder.js'
import {type MadePlan, makePlan} from '../src/plan/make.js'

let made: MadePlan | null = null

/**
 * The plan of a day that does not fit, of the demo's receipts, invented: two fires' worth of bread at one time in front of a small hot floor, so
 * that some of it has no place. It takes long, and is made once for all tests that read it; none may change it.
 */
export function crowdedPlan(): MadePlan {
  if (made) return made
  const {oven, day, receipts} = readDayFolder('corpus-demo')
  const items = day.items.slice(0, 3).map((item, i) => (i === 0 ? {...item, amount: '60 loaves', wantedBy: 9 * 60} : item))
  made = makePlan({oven, day: {...day, items}, receipts})
  return made
}
