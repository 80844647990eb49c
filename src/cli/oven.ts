import {existsSync, readdirSync} from 'node:fs'
import {dirname, join} from 'node:path'
import {answers} from '../oven/answers.js'
import {type Learnt, learn} from '../oven/learn.js'
import {type FiringLog, readLog} from '../oven/log.js'
import {readOven} from '../oven/read.js'
import type {OvenSpec, PastReading} from '../oven/types.js'
import type {Message} from '../receipt/types.js'
import {heatChart} from '../sheets/heat-chart.js'
import {ovenMarkdown, ovenText} from '../sheets/oven-text.js'
import {svgFile} from '../sheets/page.js'
import type {Given} from './arguments.js'
import {Failure, messageLines} from './failure.js'
import {readText, writeAll} from './files.js'
import type {Outcome} from './main.js'
import {styleGiven} from './plan.js'
import {colour, columns} from './show.js'

/** `hearthfall oven OVEN.md` */
export function runOven(given: Given): Outcome {
  const file = given.positionals[0]!
  const read = readOven(readText(file, file, 'description of the oven'), file)
  const errors = read.messages.filter((m) => m.severity === 'error')
  if (!read.oven || errors.length > 0) throw new Failure(errors)
  const {oven} = read
  const logs = readLogs(join(dirname(file), 'firings'))
  const learnt = learnFrom(oven, read.readings, logs.logs)
  const found = answers(oven, {parameters: learnt.parameters})
  const style = styleGiven(given)
  const view = {oven, answers: found, learnt: learnt.said}
  const {forecast} = found
  const until = (forecast.baking.likely.length - 1) * forecast.step
  const svg = () =>
    svgFile(
      heatChart(
        forecast,
        {lit: 0, raked: forecast.raked, ready: forecast.ready, until, bars: [], openings: [], readings: []},
        {style},
      ),
    )
  const json = () =>
    `${JSON.stringify({format: 1, oven, learnt: learnt.said, parameters: learnt.parameters, ...found}, null, 1)}\n`
  const err = messageLines([...read.messages, ...logs.messages])
  const out = given.text('out')
  if (out !== undefined) {
    writeAll(
      out,
      new Map([
        ['oven.txt', ovenText(view, {style})],
        ['oven.md', ovenMarkdown(view, {style})],
        ['oven.json', json()],
        ['oven.svg', svg()],
      ]),
      given.flag('replace'),
    )
    return {out: `Written to ${out}: oven.txt, oven.md, oven.json, oven.svg.\n`, err, code: 0}
  }
  const format = given.text('format')
  const text =
    format === 'json'
      ? json()
      : format === 'svg'
        ? svg()
        : format === 'markdown'
          ? ovenMarkdown(view, {style})
          : ovenText(view, {style, width: columns(), colour: colour()})
  return {out: text, err, code: 0}
}

/** Every log of a `firings` folder, oldest first; a log that cannot be read is told of and left out. */
export function readLogs(
  folder: string,
  options: {before?: string; zone?: string | null} = {},
): {logs: FiringLog[]; messages: Message[]} {
  const names = existsSync(folder) ? readdirSync(folder).filter((n) => /^\d{4}-\d{2}-\d{2}\.md$/.test(n)) : []
  const logs: FiringLog[] = []
  const messages: Message[] = []
  for (const name of names.sort()) {
    if (options.before !== undefined && name >= `${options.before}.md`) continue
    const file = join(folder, name)
    const read = readLog(readText(file, file, 'log'), file, options.zone === undefined ? {} : {zone: options.zone})
    messages.push(...read.messages.map((m) => (m.severity === 'error' ? {...m, severity: 'warning' as const} : m)))
    if (read.log) logs.push(read.log)
  }
  return {logs, messages}
}

/** What an oven's logs and its own table of readings teach. */
export function learnFrom(oven: OvenSpec, past: readonly PastReading[], logs: readonly FiringLog[]): Learnt {
  return learn(oven, {logs, past})
}
