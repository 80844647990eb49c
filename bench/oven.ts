import {readdirSync, readFileSync} from 'node:fs'
import {join} from 'node:path'
import remarkParse from 'remark-parse'
import {unified} from 'unified'
import {calibrate} from '../src/oven/calibrate.js'
import {forecast} from '../src/oven/forecast.js'
import {readOven} from '../src/oven/read.js'
import {simulate} from '../src/oven/simulate.js'
import type {OvenEvent, Reading} from '../src/oven/types.js'

/** Least processor time of many runs after some to warm up, ms: other work on the machine does not count. */
function least(work: () => void, runs = 40): number {
  let best = Number.POSITIVE_INFINITY
  for (let i = 0; i < 5; i++) work()
  for (let i = 0; i < runs; i++) {
    const from = process.cpuUsage()
    work()
    const used = process.cpuUsage(from)
    best = Math.min(best, (used.user + used.system) / 1000)
  }
  return best
}

const say = (what: string, value: number, most: number): void => {
  process.stdout.write(`${what.padEnd(64)} ${value.toFixed(2)} (at most ${most})${value <= most ? '' : '  MISSED'}\n`)
}

/** A day of the falling oven against one `remark-parse` of the demo's receipts; halved steps; calibration in simulations. */
export async function run(): Promise<void> {
  const parser = unified().use(remarkParse)
  const folder = 'corpus-demo/receipts'
  const receipts = readdirSync(folder)
    .filter((n) => n.endsWith('.md'))
    .slice(0, 16)
    .map((n) => readFileSync(join(folder, n), 'utf8'))
  const {oven} = readOven(readFileSync('corpus-demo/oven.md', 'utf8'), 'oven.md')
  if (!oven) throw new Error('the demo’s oven cannot be read')
  const firing = {wood: 22, burn: 120, soak: 40}
  const events = [0, 1, 2, 3, 4, 5].flatMap((n): OvenEvent[] => [
    {minutes: 180 + 60 * n, kind: 'door', open: 4},
    {minutes: 182 + 60 * n, kind: 'load', mass: 8, water: 1, bake: 45},
  ])
  const day = (stepScale = 1) => simulate(oven, {firing, events, hours: 24, stepScale})
  const curve = day()
  const readings = Array.from(
    {length: 20},
    (_, i): Reading => ({
      minutes: 170 + 22 * i,
      kind: 'floor',
      value: 0.95 * curve.floor[Math.round((170 + 22 * i) / 5)]! + (i % 2 ? 4 : -4),
    }),
  )
  const parse = least(() => {
    for (const text of receipts) parser.parse(text)
  })
  const whole = least(() => day())
  say('a day with six loads, one curve / remark-parse of 16 receipts', whole / parse, 20)
  say('the same with its range / remark-parse of 16 receipts', least(() => forecast(oven, {firing, events})) / parse, 20)
  say('steps halved / steps as they are', least(() => day(0.5)) / whole, 2.1)
  const found = calibrate(oven, {firing, readings, events})
  say('simulations to calibrate on 20 readings', found.simulations, 60)
  say(
    'refit on 20 readings and forecast / one curve',
    least(() => forecast(oven, {firing, events, parameters: calibrate(oven, {firing, readings, events}).parameters})) / whole,
    60,
  )
}
