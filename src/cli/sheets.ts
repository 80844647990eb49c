import {items} from '../lexicon/items.js'
import {sources} from '../lexicon/sources.js'
import {asAsked} from '../plan/asked.js'
import {receiptsOf} from '../plan/kept-days.js'
import {sheets} from '../sheets/sheets.js'
import type {Given} from './arguments.js'
import {readDayFolder} from './day-folder.js'
import {usageFailure} from './failure.js'
import {writeAll} from './files.js'
import {planOf, styleGiven, warnings} from './plan.js'
import type {Outcome} from './run.js'
import {choice} from './show.js'

/** `hearthfall sheets DAY-FOLDER --out DIR` */
export function runSheets(given: Given): Outcome {
  const out = given.text('out')
  if (out === undefined) throw usageFailure('sheets are files, and there is no folder to write them into', 'add --out DIR')
  const read = readDayFolder(given.positionals[0]!)
  const made = planOf(read, given)
  const {words: _words, ...style} = styleGiven(given)
  // The progress line is for a person at a terminal; in a pipe or a script it would be noise.
  const watched = process.stderr.isTTY === true
  const files = sheets(
    {
      plan: made.plan,
      problem: made.problem,
      oven: read.oven,
      receipts: receiptsOf(read.receipts, read.day, made.problem.dishes),
      texts: read.sources,
      sources,
      items,
      readings: read.log?.readings ?? [],
      believed: made.said,
    },
    {
      ...style,
      language: given.text('language') ?? 'en',
      audience: choice(given, 'for'),
      onSheet: (path, done) => {
        if (watched) process.stderr.write(`\r\u001b[K${done} sheets: ${path}`)
      },
    },
  )
  if (watched) process.stderr.write('\r\u001b[K')
  writeAll(out, files, given.flag('replace'))
  return {
    out: `${files.size} files written to ${out}. Begin with ${out}/index.html.\n`,
    err: warnings(read, given, made),
    code: asAsked(made.problem, made.plan) ? 0 : 1,
  }
}
