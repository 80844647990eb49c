import {basename, dirname, join} from 'node:path'
import {parseClock} from '../measure/quantity.js'
import {asAsked} from '../plan/asked.js'
import {believe} from '../plan/believe.js'
import {nothingAsked} from '../plan/day.js'
import {morningOf, notChangeable} from '../plan/kept-days.js'
import type {MadePlan} from '../plan/make.js'
import {makePlan, morningPlan} from '../plan/make.js'
import {makeDishes} from '../scale/dishes.js'
import {planMarkdown, planText} from '../sheets/plan-text.js'
import type {Style} from '../sheets/style.js'
import {styleOf} from '../sheets/style-of.js'
import type {Given} from './arguments.js'
import {type DayFolder, readDayFolder} from './day-folder.js'
import {Failure, messageLines, usageFailure} from './failure.js'
import {readText, writeAll} from './files.js'
import {keptPlans, nothingKept} from './kept-plans.js'
import {messagesIn} from './language.js'
import {keptFiles, logFiles} from './logs.js'
import {builtPage, pageWith} from './page.js'
import type {Outcome} from './run.js'
import {choice, colour, columns} from './show.js'

/** `hearthfall plan DAY-FOLDER` */
export async function runPlan(given: Given): Promise<Outcome> {
  const read = readDayFolder(given.positionals[0]!)
  const page = given.text('page')
  if (page !== undefined) {
    writeAll(dirname(page), new Map([[basename(page), pageWith(builtPage(), filesOf(read))]]), given.flag('replace'))
    return {out: `Written to ${page}: the whole tool with this day inside.\n`, err: warnings(read, given), code: 0}
  }
  const made = planOf(read, given)
  const style = styleGiven(given)
  const view = {plan: made.plan, problem: made.problem, oven: read.oven, readings: read.log?.readings ?? [], believed: made.said}
  const code = asAsked(made.problem, made.plan) ? 0 : 1
  const err = warnings(read, given, made)
  const format = given.text('format')
  const out = given.text('out')
  // Only what is written or asked for as data needs its schema.
  const json = async (): Promise<string> => (await import('../sheets/plan-json.js')).planJson(made.plan, made.problem, read.oven)
  if (out !== undefined) {
    writeAll(
      out,
      new Map([
        ['plan.txt', planText(view, {style})],
        ['plan.md', planMarkdown(view, {style})],
        ['plan.json', await json()],
      ]),
      given.flag('replace'),
    )
    return {out: `Written to ${out}: plan.txt, plan.md, plan.json.\n`, err, code}
  }
  const text =
    format === 'json'
      ? await json()
      : format === 'markdown'
        ? planMarkdown(view, {style})
        : planText(view, {style, width: columns(), colour: colour()})
  return {out: text.endsWith('\n') ? text : `${text}\n`, err, code}
}

/** What was read or sized with a doubt: warnings of every file. What a reader may look up (info) stays with `translate`. */
export function warnings(read: DayFolder, given: Given, made: Pick<MadePlan, 'messages'> | null = null): string {
  // The plan's own messages stand in the plan.
  const sized = (made?.messages ?? [])
    .filter((m) => m.rule.startsWith('scale-'))
    .map((m) => ({...m, file: join(read.folder, m.file)}))
  return messageLines(
    [...read.messages, ...sized].filter((m) => m.severity === 'warning'),
    messagesIn(given.text('language'), given.text('clock')),
  )
}

/**
 * The plan of a day as read.
 *
 * @throws {Failure} where the day asks for nothing, or an amount of its list cannot be read
 */
export function planOf(read: DayFolder, given: Given): MadePlan {
  const dayFile = join(read.folder, 'day.md')
  const cannot = [...nothingAsked(read.day, dayFile, read.messages), ...notChangeable(read, dayFile)]
  if (cannot.length > 0) throw new Failure(cannot)
  // Today's readings are the planner's own business: it knows which loads stood in the oven when they were taken.
  const scaled = makeDishes({day: morningOf(read), receipts: read.receipts, oven: read.oven})
  const belief = believe({
    oven: read.oven,
    past: read.past,
    readings: read.readings,
    log: null,
    dishes: [...scaled.dishes, ...scaled.spare],
  })
  const from = {
    scaled,
    oven: read.oven,
    day: morningOf(read),
    receipts: read.receipts,
    parameters: belief.parameters,
    corrections: belief.dishes,
  }
  const kept = given.flag('afresh') ? nothingKept() : keptPlans(read.folder, from)
  const morning = kept.morning ?? morningPlan(from)
  const made = makePlan({...from, day: read.day, log: read.log, kept: read.kept, ...nowGiven(given)}, morning, kept.known)
  kept.keep(morning)
  const wrong = made.messages.filter((m) => m.severity === 'error' && m.rule.startsWith('scale-'))
  if (wrong.length > 0) throw new Failure(wrong.map((m) => ({...m, file: join(read.folder, m.file)})))
  return {...made, said: [...belief.said, ...made.said]}
}

/** `--now`, where it is given. */
function nowGiven(given: Given): {now?: number} {
  const text = given.text('now')
  if (text === undefined) return {}
  const clock = parseClock(text)
  if (!clock.ok) throw usageFailure(`--now: ${clock.reason}`, clock.suggest)
  return {now: clock.value}
}

/** Every file of the day's folder that the page carries, by its path in the folder. */
function filesOf(read: DayFolder): Map<string, string> {
  const files = new Map<string, string>()
  for (const name of ['day.md', 'oven.md']) files.set(name, readText(join(read.folder, name)))
  for (const [name, text] of read.sources) files.set(name, text)
  const firings = join(read.folder, 'firings')
  for (const log of logFiles(firings)) files.set(`firings/${basename(log)}`, readText(log))
  for (const {name, path} of keptFiles(firings, read.day.date)) files.set(`firings/${name}`, readText(path))
  return files
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
