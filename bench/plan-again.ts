import {readDayFolder} from '../src/cli/day-folder.js'
import type {FiringLog, LogRow} from '../src/oven/log.js'
import {planAgain} from '../src/plan/again.js'
import {makePlan} from '../src/plan/make.js'

/** What the log of a day tells a little after the oven was ready: °C by which the floor is off, minutes by which the fire was lit late. */
const TOLD = [
  {what: 'the floor 5 °C cooler', off: -5, late: 0},
  {what: '15 °C cooler', off: -15, late: 0},
  {what: '25 °C cooler', off: -25, late: 0},
  {what: '25 °C hotter', off: 25, late: 0},
  {what: 'the fire lit 30 min late', off: 0, late: 30},
] as const
/** Minutes after the oven was to be ready at which the floor is read. */
const READ = 10
const RUNS = 3

/** The demo's day planned again at one reading, beside its plan of the morning: least of three runs each. */
export async function run(): Promise<void> {
  const read = readDayFolder('corpus-demo')
  const least = (work: () => void): number =>
    Math.min(
      ...Array.from({length: RUNS}, () => {
        const start = performance.now()
        work()
        return performance.now() - start
      }),
    )
  const input = {oven: read.oven, day: read.day, receipts: read.receipts}
  const {plan, problem} = makePlan(input)
  const whole = least(() => makePlan(input))
  console.log(`the morning: ${whole.toFixed(0)} ms`)
  for (const {what, off, late} of TOLD) {
    const lit = plan.lit + late
    const at = plan.ready + late + READ
    const minutes = at - lit
    const value = plan.forecast.floor.likely[Math.round(minutes / plan.forecast.step)]! + off
    const row: LogRow = {line: 1, at, elapsed: minutes, what: 'reading', kind: 'floor', value, text: '', note: ''}
    const log: FiringLog = {
      date: read.day.date,
      lit,
      raked: lit + plan.firing.burn,
      wood: plan.firing.wood,
      rows: [row],
      readings: [{minutes, kind: 'floor', value}],
      doors: [],
    }
    const ms = least(() => planAgain({oven: read.oven, day: read.day, now: at}, problem, plan, log))
    console.log(`${what}: ${ms.toFixed(0)} ms, ${(ms / whole).toFixed(2)} of that`)
  }
}
