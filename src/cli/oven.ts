import {existsSync} from 'node:fs'
import {basename, dirname, join} from 'node:path'
import {answers} from '../oven/answers.js'
import {type LoadOf, learn} from '../oven/learn.js'
import {readOven} from '../oven/read.js'
import type {ReadingKind} from '../oven/types.js'
import {loadsOf} from '../plan/believe.js'
import type {Message} from '../receipt/types.js'
import {makeDishes} from '../scale/dishes.js'
import {heatChart} from '../sheets/heat-chart.js'
import type {ReadingMark} from '../sheets/heat-data.js'
import {ovenMarkdown, ovenText} from '../sheets/oven-text.js'
import {svgFile} from '../sheets/page.js'
import type {Given} from './arguments.js'
import {readDayFolder} from './day-folder.js'
import {Failure, messageLines} from './failure.js'
import {readText, writeAll} from './files.js'
import {messagesIn} from './language.js'
import {readLogs} from './logs.js'
import {styleGiven} from './plan.js'
import type {Outcome} from './run.js'
import {colour, columns} from './show.js'

/** `hearthfall oven OVEN.md` */
export function runOven(given: Given): Outcome {
  const file = given.positionals[0]!
  const told: Message[] = []
  const source = readText(file, file, 'description of the oven', (message) => told.push(message))
  const read = readOven(source, file)
  const errors = read.messages.filter((m) => m.severity === 'error')
  if (!read.oven || errors.length > 0) throw new Failure(errors)
  const {oven} = read
  const logs = readLogs(join(dirname(file), 'firings'), {oven})
  const wrong = logs.messages.filter((m) => m.severity === 'error')
  if (wrong.length > 0) throw new Failure(wrong)
  const loadOf = logs.logs.length > 0 && basename(file) === 'oven.md' ? loadsBeside(dirname(file)) : null
  const learnt = learn(oven, {logs: logs.logs, past: read.readings, ...(loadOf ? {loadOf} : {})})
  const found = answers(oven, {parameters: learnt.parameters})
  const style = styleGiven(given)
  const {forecast} = found
  // Readings of other fires are shown by the time since raking, which is what the fall counts from.
  const mark = (kind: ReadingKind, value: number | string, afterRaking: number): ReadingMark[] =>
    typeof value === 'number' && kind !== 'arm' && afterRaking >= 0
      ? [{at: forecast.raked + afterRaking, celsius: value, kind}]
      : []
  const readings = [
    ...read.readings.flatMap((r) => mark(r.kind, r.value, r.hours * 60)),
    ...logs.logs.flatMap((log) => {
      const burn = log.lit !== null && log.raked !== null ? log.raked - log.lit : null
      return burn === null ? [] : log.readings.flatMap((r) => mark(r.kind, r.value, r.minutes - burn))
    }),
  ]
  const view = {oven, answers: found, learnt: learnt.said, readings}
  const until = (forecast.baking.likely.length - 1) * forecast.step
  const svg = () =>
    svgFile(
      heatChart(
        forecast,
        {lit: 0, raked: forecast.raked, ready: forecast.ready, until, bars: [], openings: [], readings},
        {style},
      ),
    )
  const json = () =>
    `${JSON.stringify({format: 1, oven, learnt: learnt.said, parameters: learnt.parameters, ...found}, null, 1)}\n`
  const err = messageLines([...told, ...read.messages, ...logs.messages], messagesIn(given.text('language')))
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

/** What the logs' loads took, where the oven lies in the folder of a bake day that can be read; a usual load is taken otherwise. */
function loadsBeside(folder: string): LoadOf | null {
  if (!existsSync(join(folder, 'day.md'))) return null
  try {
    const {day, receipts, oven} = readDayFolder(folder)
    const {dishes, spare} = makeDishes({day, receipts, oven})
    return loadsOf([...dishes, ...spare])
  } catch (error) {
    // What is wrong with the day is for `plan` to say: the oven can be answered for without it.
    if (error instanceof Failure) return null
    throw error
  }
}
