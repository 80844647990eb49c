import {sources} from '../lexicon/sources.js'
import {answers} from '../oven/answers.js'
import {learn} from '../oven/learn.js'
import {readLog} from '../oven/log.js'
import {appendToLog} from '../oven/log-append.js'
import {entryText, type LogEntry, notesIn, parseNote} from '../oven/note.js'
import {clockText} from '../oven/note-clock.js'
import {evidence, parseReading, signById} from '../oven/signs.js'
import {itemsNoted} from '../plan/kept-days.js'
import {inWordsOnly} from '../plan/told-doughs.js'
import type {Ingredient, Receipt} from '../receipt/types.js'
import {namesInLog, namesOfEach} from '../scale/slug.js'
import {clock, temperatures} from '../sheets/figures.js'
import {floorMap} from '../sheets/floor-map.js'
import {heatChart} from '../sheets/heat-chart.js'
import {chartData, numbered} from '../sheets/heat-data.js'
import {ovenMarkdown} from '../sheets/oven-text.js'
import {countOf, drawBetween} from '../sheets/plan-text.js'
import type {Style} from '../sheets/style.js'
import {styleOf} from '../sheets/style-of.js'
import {allergensLine, besides, modernFigure, sourceLine, timesShown} from '../sheets/translation-text.js'
import {say} from '../sheets/words/index.js'
import {
  copyIn,
  knowsMorning,
  lastMorning,
  loadsIn,
  ovenIn,
  type Planned,
  planFolder,
  readFolder,
  readReceiptFile,
  recallMorning,
} from './chain.js'
import {receiptPaths} from './folder.js'
import {planView, sheetsOf} from './plan-view.js'
import type {
  Asks,
  Drawing,
  Drawings,
  FolderView,
  IngredientView,
  Name,
  OvenView,
  ReceiptFileView,
  ReceiptView,
  Reply,
  Request,
  Showing,
} from './protocol.js'
import {openShelf} from './shelf.js'
import {svgParts} from './svg-parts.js'

/** The same core as the command's, away from the page's own thread, so that no key waits for it. */

const post = (reply: Reply): void => postMessage(reply)

const sourceText = (id: string): string => {
  const row = sources.find((one) => one.id === id)
  return row ? sourceLine(row) : id
}

function styled(showing: Showing): Style {
  return styleOf(showing)
}

function readingOf(one: Ingredient): string {
  if (one.exact === null) return one.item
  const amount = one.exactHigh === undefined ? one.exact : `${one.exact} to ${one.exactHigh}`
  return `${amount} ${one.measure === 'count' ? '' : `${one.measure} `}${one.item}`
}

function ingredientView(one: Ingredient, style: Style): IngredientView {
  return {
    text: one.text,
    start: one.start,
    end: one.end,
    today: modernFigure(one, style),
    item: one.item,
    part: one.part,
    notes: besides(one, style),
    why: one.why.map(({step, source}) => ({step, source: source === undefined ? null : sourceText(source)})),
    sources: one.sources.map(sourceText),
    doubtful: one.confidence < 0.6 || one.other !== undefined,
    known: one.known,
    reading: readingOf(one),
  }
}

function receiptView(receipt: Receipt, style: Style): ReceiptView {
  return {
    title: receipt.title,
    start: receipt.start,
    end: receipt.end,
    year: receipt.year,
    place: receipt.place,
    serves: receipt.serves === null ? null : [receipt.serves.text, receipt.feeds?.text ?? ''].filter(Boolean).join('; '),
    ingredients: receipt.ingredients.map((one) => ingredientView(one, style)),
    heat: receipt.oven.map((one) => ({
      text: one.text,
      start: one.start,
      end: one.end,
      band: style.words[`band.${one.band}`],
      degrees: temperatures(one.celsius, style),
      notes: one.notes ?? [],
      sources: one.sources.map(sourceText),
    })),
    times: timesShown(receipt, style).map(({text, start, end, length, of, sources}) => ({
      text,
      start,
      end,
      minutes: length,
      of,
      sources: sources.map(sourceText),
    })),
    ours: receipt.inferred,
    cautions: receipt.cautions.map((one) => one.text),
    allergens: allergensLine(receipt, style),
  }
}

function receipt({path, text, index, showing}: Asks['receipt']['ask']): ReceiptFileView {
  const read = readReceiptFile(path, text)
  const at = Math.max(0, Math.min(index, read.receipts.length - 1))
  const chosen = read.receipts[at]
  return {
    path,
    titles: read.receipts.map((one) => one.title),
    chosen: chosen ? receiptView(chosen, styled(showing)) : null,
    index: at,
    messages: read.messages.slice(0, 200),
  }
}

function folder({files}: Asks['folder']['ask']): FolderView {
  const read = readFolder(files)
  return {
    day: read.day,
    oven: read.oven,
    log: read.log,
    dishes: read.day ? namesInLog(itemsNoted(read.day, read.kept), read.receipts) : [],
    alike: read.day ? namesOfEach(itemsNoted(read.day, read.kept)) : [],
    messages: read.messages.slice(0, 400),
    receipts: receiptPaths(files).map((path) => {
      const {receipts, messages} = readReceiptFile(path, files.get(path) ?? '')
      return {
        path,
        title: receipts[0]?.title ?? path,
        count: receipts.length,
        faults: messages.filter((m) => m.severity !== 'info').length,
      }
    }),
  }
}

function oven({files, showing}: Asks['oven']['ask']): OvenView | null {
  const read = readFolder(files)
  if (!read.oven) return null
  const style = styled(showing)
  const loadOf = loadsIn(files, read)
  const logs = read.log ? [...read.past, read.log] : read.past
  const learnt = learn(read.oven, {logs, past: read.readings, ...(loadOf ? {loadOf} : {})})
  const found = answers(read.oven, {parameters: learnt.parameters})
  const {forecast} = found
  const until = (forecast.baking.likely.length - 1) * forecast.step
  const chart = heatChart(
    forecast,
    {lit: 0, raked: forecast.raked, ready: forecast.ready, until, bars: [], openings: [], readings: []},
    // Hours since lighting read as a clock of their own.
    {style: {...style, clock: 24}, id: 'oven-fall'},
  )
  const markdown = ovenMarkdown({oven: read.oven, answers: found, learnt: learnt.said}, {style})
  return {
    chart: {title: read.oven.name, svg: svgParts(chart), lines: []},
    lines: markdown.split('\n').filter((line) => line.trim() !== '' && !line.startsWith('# ')),
    bands: found.windows.map(({band, from, to}) => ({band, from, to})),
  }
}

/** The last plan, so that sheets need not plan again. */
let last: {
  readonly files: ReadonlyMap<string, string>
  readonly now: number | null
  readonly planned: Planned
} | null = null

function same(one: ReadonlyMap<string, string>, other: ReadonlyMap<string, string>): boolean {
  if (one.size !== other.size) return false
  for (const [path, text] of one) if (other.get(path) !== text) return false
  return true
}

function planned(
  files: ReadonlyMap<string, string>,
  now: number | null,
  progress: (share: number) => void,
  quick = false,
): Planned {
  if (last && last.now === now && same(last.files, files)) return last.planned
  const made = planFolder(files, {
    progress,
    ...(now === null ? {} : {now}),
    ...(quick ? {effort: 'quick' as const} : {}),
  })
  // A quick plan is for the moment; the sheets and the next asking want the full one.
  if (!quick) last = {files, now, planned: made}
  return made
}

/**
 * The plan of the day's morning, kept and fetched by the workers themselves: it is large, and would hold the page up if it went through
 * its thread. A browser that keeps nothing plans the morning once for each worker.
 */
const mornings = {
  kept: '',
  async fetch(day: string, files: ReadonlyMap<string, string>): Promise<void> {
    if (knowsMorning(files)) return
    try {
      const shelf = await openShelf()
      const row = await shelf.get('mornings', day)
      shelf.close()
      if (!row) return
      recallMorning(files, row.morning)
      if (knowsMorning(files)) this.kept = row.morning.key
    } catch {
      // What cannot be fetched is planned.
    }
  },
  async keep(day: string): Promise<void> {
    const morning = lastMorning()
    if (!morning || morning.key === this.kept) return
    try {
      const shelf = await openShelf()
      await shelf.put('mornings', {day, morning})
      shelf.close()
      this.kept = morning.key
    } catch {
      // What cannot be kept is planned again.
    }
  },
}

interface Telling {
  readonly progress: (share: number) => void
  readonly drawings: (drawings: Drawings) => void
}

async function plan({files, showing, now, quick, day}: Asks['plan']['ask'], tell: Telling): Promise<Asks['plan']['answer']> {
  await mornings.fetch(day, files)
  if (quick && !knowsMorning(files)) return null
  const from = performance.now()
  const found = planned(files, now, tell.progress, quick)
  if (!found.ok) return {ok: false, messages: found.messages}
  const planning = performance.now()
  const view = planView(found, styled(showing))
  later.push(
    () => mornings.keep(day),
    () => tell.drawings(drawingsOf(found, showing)),
  )
  const end = performance.now()
  return {
    ok: true,
    view: {...view, language: showing.language, took: end - from, parts: {plan: planning - from, view: end - planning}},
  }
}

function drawingsOf(found: Planned & {ok: true}, showing: Showing): Drawings {
  const style = styled(showing)
  const {plan, problem} = found.made
  const rows = numbered(plan, problem)
  return {
    chart: {
      title: style.words['sheet.heat'],
      svg: svgParts(
        heatChart(plan.forecast, chartData(plan, problem, found.read.log?.readings ?? []), {
          style,
          id: 'day-heat',
        }),
      ),
      lines: [],
    },
    floors: plan.loads.map(
      (load): Drawing => ({
        title: say(style.words, 'map.title', {number: load.number, time: clock(load.at, style)}),
        svg: svgParts(floorMap(load, plan, problem, {style, id: `load-${load.number}`})),
        lines: rows
          .filter((row) => row.load === load.number)
          .map(
            (row) =>
              `${row.number} ${row.title}, ${countOf(row, style)}: ${style.words['action.draw']} ${drawBetween(row, style)}`,
          ),
      }),
    ),
  }
}

/**
 * Before anything is noted: the morning's plan fetched, the folder read, the oven's past weighed, and one rest of a day planned for
 * nothing, because code that has run once runs several times faster.
 */
async function ready({files, showing, day}: Asks['ready']['ask']): Promise<boolean> {
  await mornings.fetch(day, files)
  if (!knowsMorning(files)) return false
  const {day: dated} = readFolder(files)
  const morning = lastMorning()
  if (!dated || !morning) return false
  const path = `firings/${dated.date}.md`
  if ((files.get(path) ?? '').trim() !== '') return true
  const {plan: whole} = morning.made
  const at = (minutes: number): string =>
    `${String(Math.floor(minutes / 60) % 24).padStart(2, '0')}:${String(Math.floor(minutes) % 60).padStart(2, '0')}`
  const rehearsed = `---\ndate: ${dated.date}\nlit: ${at(whole.lit)}\nraked: ${at(whole.raked)}\n---\n\n| time | reading | value |\n| --- | --- | --- |\n| ${at(whole.ready)} | floor | ${Math.round(whole.forecast.floor.likely[Math.round((whole.ready - whole.lit) / whole.forecast.step)] ?? 250)} °C |\n`
  const found = planFolder(new Map([...files, [path, rehearsed]]), {effort: 'quick', now: whole.ready})
  if (found.ok) planView(found, styled(showing))
  return true
}

function allSheets({files, showing, audience, now}: Asks['sheets']['ask'], {progress}: Telling): Asks['sheets']['answer'] {
  const found = planned(files, now, progress)
  if (!found.ok) return {ok: false, messages: found.messages}
  return {ok: true, sheets: sheetsOf(found, {...showing, audience})}
}

function note({files, log, words, at, date, dishes, alike, now, anyway}: Asks['note']['ask']): Asks['note']['answer'] {
  const file = `firings/${date}.md`
  const known = {...(dishes.length > 0 ? {dishes} : {}), oven: ovenIn(files)}
  const checked = readLog(log, file, known)
  const entries: LogEntry[] = []
  // What was done then is read as if it were noted then: the clock may have come to the same hour of the next day.
  const then = now && at !== null ? {...now, minutes: Math.min(now.minutes, Math.ceil(at))} : now
  for (const one of notesIn(at === null ? words : `${clockText(at)} ${words}`, dishes, alike)) {
    const parsed = parseNote(one, {date, dishes, alike, log: checked.log, ...(then ? {now: then} : {})})
    if (!parsed.ok) return {...parsed, doubt: false}
    const {entry} = parsed
    if (entry.what === 'row' && entry.doubt && !anyway) return {ok: false, ...entry.doubt, doubt: true}
    entries.push(entry)
  }
  const error = checked.messages.find((m) => m.severity === 'error')
  if (log.trim() !== '' && error)
    return {ok: false, reason: `${file}, line ${error.line}: ${error.reason}`, suggest: error.suggest ?? '', doubt: false}
  let source = log
  for (const entry of entries) {
    const after = appendToLog(source, entry, {date})
    if (!after.ok) return {...after, doubt: false}
    source = after.source
  }
  const warnings = readLog(source, file, known).messages.filter((m) => !checked.messages.some((old) => old.reason === m.reason))
  const impossible = warnings.find((m) => m.severity === 'error')
  if (impossible) return {ok: false, reason: impossible.reason, suggest: impossible.suggest ?? '', doubt: false}
  return {
    ok: true,
    text: source,
    copy: copyIn(files, log, source, dishes),
    plain: inWordsOnly(entries),
    said: entries.map(entryText).join('; '),
    warnings: warnings.map((m) => m.reason),
  }
}

function sign({words, showing}: Asks['sign']['ask']): Asks['sign']['answer'] {
  const read = parseReading(words)
  if (!read.ok) return null
  const found = evidence(read.kind, read.value)
  if (!found) return null
  const range = {low: found.celsius - 1.2816 * found.sigma, likely: found.celsius, high: found.celsius + 1.2816 * found.sigma}
  return {
    range,
    degrees: temperatures(range, styled(showing)),
    of: found.of,
    means: typeof read.value === 'string' ? (signById(read.value)?.means ?? '') : '',
  }
}

const work: {readonly [K in Name]: (ask: Asks[K]['ask'], tell: Telling) => Asks[K]['answer'] | Promise<Asks[K]['answer']>} = {
  receipt,
  folder,
  oven,
  plan,
  ready,
  sheets: allSheets,
  note,
  sign,
}

/** What is done once the answer has gone. */
const later: Array<() => void | Promise<void>> = []

async function answer({id, name, ask}: Request): Promise<void> {
  let told = 0
  const progress = (share: number): void => {
    // Nobody reads percents faster than this, and each is a drawing of the page.
    const at = performance.now()
    if (at - told < 250 && share < 1) return
    told = at
    post({id, progress: share})
  }
  try {
    const run = work[name] as (ask: unknown, tell: Telling) => unknown
    post({id, answer: await run(ask, {progress, drawings: (drawings) => post({id, drawings})})})
    while (later.length > 0) await later.shift()?.()
  } catch (error) {
    later.length = 0
    post({id, failed: error instanceof Error ? `${error.name}: ${error.message}` : String(error)})
  }
}

let line = Promise.resolve()
addEventListener('message', ({data}: MessageEvent<Request>) => {
  line = line.then(() => answer(data))
})
