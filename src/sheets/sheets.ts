import type {Element} from 'hast'
import {h} from 'hastscript'
import type {Item, Source} from '../lexicon/schema.js'
import type {OvenSpec, Reading} from '../oven/types.js'
import type {Plan, PlanProblem} from '../plan/types.js'
import type {Receipt} from '../receipt/types.js'
import {calendar} from './calendar.js'
import {cautionsSheet} from './cautions-sheet.js'
import {alertsBox, daySheet, floorSheet, heatSheet} from './day-sheet.js'
import {clock} from './figures.js'
import {floorMap} from './floor-map.js'
import {type Audience, converseHandout, handout} from './handout.js'
import {heatChart} from './heat-chart.js'
import {chartData, receiptName} from './heat-data.js'
import {isModern, sameFile} from './needs.js'
import {page, slug, svgFile} from './page.js'
import {planJson} from './plan-json.js'
import {planHead, planMarkdown, planText} from './plan-text.js'
import {shoppingSheet} from './shopping.js'
import type {Style} from './style.js'
import {languages, styleOf} from './style-of.js'
import {shoppingCsv, stepsCsv} from './tables.js'
import {say} from './words/index.js'

export {languages, styleOf}

/** What the sheets are made from: a plan and what it was made from. */
export interface SheetInput {
  readonly plan: Plan
  readonly problem: PlanProblem
  readonly oven: OvenSpec
  /** The receipts to make handouts of, read and converted. */
  readonly receipts: readonly Receipt[]
  /** The text of each receipt's file, as read, by the file name in `Receipt.file`. */
  readonly texts: ReadonlyMap<string, string>
  readonly sources: readonly Source[]
  readonly items: readonly Item[]
  readonly readings?: readonly Reading[]
  /** What the log has taught of this oven, in plain sentences. */
  readonly believed?: readonly string[]
}

/** How the sheets are made. Each is an option of `hearthfall sheets`. */
export interface SheetOptions {
  /** `--language`. */
  readonly language?: string
  /** `--units`. */
  readonly units?: Style['units']
  /** `--clock`. */
  readonly clock?: Style['clock']
  /** `--degrees`: follows the units where it is not given. */
  readonly degrees?: Style['degrees']
  /** `--for`. */
  readonly audience?: Audience
  /** Called after each sheet with its path, so that a terminal can show the progress. */
  readonly onSheet?: (path: string, done: number) => void
}

/**
 * All sheets of a bake day as paths and their contents. Pure: the same input gives the same bytes. Every path is relative, made of
 * our own names and slugs, and `index.html` links to every one.
 */
export function sheets(input: SheetInput, options: SheetOptions = {}): Map<string, string> {
  const style = styleOf(options)
  const audience = options.audience ?? 'class'
  const {words} = style
  const {plan, problem, oven} = input
  const out = new Map<string, string>()
  const put = (path: string, content: string): void => {
    out.set(path, content)
    options.onSheet?.(path, out.size)
  }
  const up = {href: 'index.html', text: words['page.up']}
  const html = (path: string, title: string, body: readonly Element[]): void =>
    put(
      path,
      page({title: `${title}: ${problem.day.title}`, style, body, up: path.includes('/') ? {...up, href: '../index.html'} : up}),
    )

  const day = daySheet(input, style)
  const heat = heatSheet(input, style)
  const floor = floorSheet(input, style)
  const cautions = cautionsSheet(problem, input.receipts, input.sources, style)
  html('day.html', words['sheet.day'], [day])
  html('heat.html', words['sheet.heat'], [heat])
  html('floor.html', words['sheet.floor'], [floor])
  html('cautions.html', words['sheet.cautions'], [cautions])
  html('pin-up.html', words['sheet.pinUp'], [day, heat, floor, cautions])
  html('shopping.html', words['sheet.shopping'], shoppingSheet(plan, problem, input.items, style))

  const handouts: Array<{path: string; title: string}> = []
  const keys: Array<{path: string; title: string}> = []
  const used = new Set<string>()
  const inFile = new Map<string, number>()
  for (const {file} of input.receipts) inFile.set(file, (inFile.get(file) ?? 0) + 1)
  for (const receipt of input.receipts) {
    const alone = inFile.get(receipt.file) === 1
    const base = slug(alone ? stem(receipt.file) : receipt.title)
    let name = base
    for (let n = 2; used.has(name) || used.has(keyOf(name)); n++) name = `${base}-${n}`
    used.add(name).add(keyOf(name))
    const text = textOf(receipt, input.texts)
    const made = {
      receipt,
      text,
      plan,
      problem,
      others: input.receipts.filter((other) => other !== receipt),
      sources: input.sources,
      style,
      audience,
    }
    const title = receiptName(problem, receipt)
    const {copies, key} = handout(made)
    html(`handouts/${name}.html`, title, copies)
    handouts.push({path: `handouts/${name}.html`, title})
    if (key) {
      // No colon in it: the page takes a sheet's title for what stands before the first.
      const keyTitle = say(words, 'exercise.keyTitle', {title})
      html(`handouts/${keyOf(name)}.html`, keyTitle, [key])
      keys.push({path: `handouts/${keyOf(name)}.html`, title: keyTitle})
    }
    if (isModern(receipt)) {
      const converse = converseHandout(made)
      if (converse.length > 0) {
        html(`handouts/${name}-in-a-falling-oven.html`, say(words, 'converse.title', {title: receipt.title}), converse)
        handouts.push({
          path: `handouts/${name}-in-a-falling-oven.html`,
          title: say(words, 'converse.title', {title: receipt.title}),
        })
      }
    }
  }

  put('heat.svg', svgFile(heatChart(plan.forecast, chartData(plan, problem, input.readings), {style})))
  for (const load of plan.loads) put(`floor-${load.number}.svg`, svgFile(floorMap(load, plan, problem, {style})))
  put('day.txt', planText(input, {style}))
  put('day.md', planMarkdown(input, {style}))
  put('day.ics', calendar(plan, problem, style))
  put('day.csv', stepsCsv(plan, problem, style))
  put('shopping.csv', shoppingCsv(plan, problem, input.items))
  put('plan.json', planJson(plan, problem, oven))

  const link = (path: string, title: string): Element => h('li', h('a', {href: path}, title))
  const head = planHead(input, style)
  put(
    'index.html',
    page({
      title: `${words['sheet.index']}: ${problem.day.title}`,
      style,
      body: [
        h('article', {className: ['sheet', 'index']}, [
          h('h1', head.title),
          ...alertsBox(head.alerts),
          h('p', {className: ['lead']}, head.lines.map((line) => (line.endsWith('.') ? line : `${line}.`)).join(' ')),
          h('h2', words['index.pin']),
          h('ul', [
            link('pin-up.html', words['sheet.pinUp']),
            link('day.html', words['sheet.day']),
            link('heat.html', words['sheet.heat']),
            link('floor.html', words['sheet.floor']),
            link('cautions.html', words['sheet.cautions']),
            link('shopping.html', words['sheet.shopping']),
          ]),
          h('h2', words['index.handouts']),
          h(
            'ul',
            handouts.map(({path, title}) => link(path, title)),
          ),
          ...(keys.length > 0
            ? [
                h('h2', words['index.keys']),
                h(
                  'ul',
                  keys.map(({path, title}) => link(path, title)),
                ),
              ]
            : []),
          h('h2', words['index.files']),
          h('ul', [
            link('day.ics', words['sheet.calendar']),
            link('day.md', words['sheet.markdown']),
            link('day.txt', words['sheet.text']),
            link('day.csv', words['sheet.csv']),
            link('shopping.csv', words['sheet.shoppingCsv']),
            link('plan.json', words['sheet.json']),
            link('heat.svg', words['sheet.heatSvg']),
            ...plan.loads.map((load) =>
              link(`floor-${load.number}.svg`, say(words, 'map.title', {number: load.number, time: clock(load.at, style)})),
            ),
          ]),
        ]),
      ],
    }),
  )
  return out
}

function textOf(receipt: Receipt, texts: ReadonlyMap<string, string>): string {
  const exact = texts.get(receipt.file)
  if (exact !== undefined) return exact
  for (const [file, text] of texts) if (sameFile(file, receipt.file)) return text
  return ''
}

/** The name of the answer key's file beside a handout's. */
const keyOf = (name: string): string => `${name}-key`

/** The name of a file without its folder and its ending. */
function stem(file: string): string {
  const name = file.split(/[\\/]/).at(-1) ?? file
  return name.replace(/\.[^.]+$/, '')
}
