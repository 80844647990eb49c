import {join} from 'node:path'
import {believe} from '../plan/believe.js'
import type {MadePlan} from '../plan/make.js'
import {makePlan} from '../plan/make.js'
import {planJson} from '../sheets/plan-json.js'
import {planMarkdown, planText} from '../sheets/plan-text.js'
import {styleOf} from '../sheets/sheets.js'
import type {Style} from '../sheets/style.js'
import type {Given} from './arguments.js'
import {type DayFolder, readDayFolder} from './day-folder.js'
import {Failure, messageLines} from './failure.js'
import {writeAll} from './files.js'
import type {Outcome} from './run.js'
import {choice, colour, columns} from './show.js'

/** `hearthfall plan DAY-FOLDER` */
export function runPlan(given: Given): Outcome {
  const read = readDayFolder(given.positionals[0]!)
  const made = planOf(read)
  const style = styleGiven(given)
  const view = {plan: made.plan, problem: made.problem, oven: read.oven}
  const code = made.plan.possible ? 0 : 1
  const err = warnings(read)
  const out = given.text('out')
  if (out !== undefined) {
    writeAll(
      out,
      new Map([
        ['plan.txt', planText(view, {style})],
        ['plan.md', planMarkdown(view, {style})],
        ['plan.json', planJson(made.plan, made.problem, read.oven)],
      ]),
      given.flag('replace'),
    )
    return {out: `Written to ${out}: plan.txt, plan.md, plan.json.\n`, err, code}
  }
  const format = given.text('format')
  const text =
    format === 'json'
      ? planJson(made.plan, made.problem, read.oven)
      : format === 'markdown'
        ? planMarkdown(view, {style})
        : planText(view, {style, width: columns(), colour: colour()})
  return {out: text.endsWith('\n') ? text : `${text}\n`, err, code}
}

/** What was read with a doubt: warnings of every file. What a reader may look up (info) stays with `translate`. */
export function warnings(read: DayFolder): string {
  return messageLines(read.messages.filter((m) => m.severity === 'warning'))
}

/**
 * The plan of a day as read.
 *
 * @throws {Failure} where an amount of the day's list cannot be read
 */
export function planOf(read: DayFolder): MadePlan {
  const {parameters} = believe({oven: read.oven, past: read.past, readings: read.readings, log: read.log})
  const made = makePlan({oven: read.oven, day: read.day, receipts: read.receipts, parameters})
  const wrong = made.messages.filter((m) => m.severity === 'error' && m.rule.startsWith('scale-'))
  if (wrong.length > 0) throw new Failure(wrong.map((m) => ({...m, file: join(read.folder, m.file)})))
  return made
}

/** The style the options ask for. */
export function styleGiven(given: Given): Style {
  const clock = given.text('clock')
  const degrees = given.text('degrees')
  return styleOf({
    language: given.text('language') ?? 'en',
    units: choice(given, 'units') ?? 'both',
    ...(clock === undefined ? {} : {clock: clock === '24' ? 24 : 12}),
    ...(degrees === undefined ? {} : {degrees: degrees as Style['degrees']}),
  })
}
