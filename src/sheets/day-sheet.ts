import type {Element, ElementContent} from 'hast'
import {h} from 'hastscript'
import type {Plan, PlanProblem, Step} from '../plan/types.js'
import {clock, temperatures, timeOfDay} from './figures.js'
import {floorMap} from './floor-map.js'
import {heatChart} from './heat-chart.js'
import {chartData, type Numbered, numbered, valueAt} from './heat-data.js'
import {stepWords} from './phrases.js'
import {countOf, dishTitle, drawTimes, type PlanView, planHead, shortCautions, zoneWord} from './plan-text.js'
import type {Style} from './style.js'
import {messageLine} from './translation-text.js'
import {say} from './words/index.js'

/** The clock time of a step, with the day named under it where it is another day's. */
function stamp(minutes: number, style: Style): Element {
  const {words} = style
  const days = Math.floor(Math.round(minutes) / 1440)
  const day =
    days === 0 ? '' : days === 1 ? words['day.next'] : days === -1 ? words['day.before'] : say(words, 'day.later', {days})
  return h('div', {className: ['stamp']}, [
    h('span', timeOfDay(minutes, style)),
    ...(day ? [h('span', {className: ['day-name']}, day)] : []),
  ])
}

/** A box to tick by hand. */
export function box(): Element {
  return h('span', {className: ['box'], ariaHidden: 'true'})
}

/** The numbered dishes a step is about: those of its load, or those drawn at it. */
function dishesOf(step: Step, dishes: readonly Numbered[]): Numbered[] {
  const named = dishes.filter((dish) => step.dishes.includes(dish.id) && (step.load === null || dish.load === step.load))
  return step.action === 'load' || step.action === 'draw' ? named : []
}

function stepItem(step: Step, problem: PlanProblem, dishes: readonly Numbered[], style: Style): Element {
  const {words} = style
  const said = stepWords(step, problem, style)
  const named = dishesOf(step, dishes)
  const turn = ['light', 'load'].includes(step.action)
  const heat = step.celsius ? say(words, 'step.heat', {temperature: temperatures(step.celsius, style)}) : ''
  const sign = said.sign ? say(words, 'step.sign', {sign: said.sign}) : ''
  const both: Element[] = []
  for (const what of [said.ifAhead, said.ifBehind]) if (what) both.push(h('p', `– ${what}`))
  return h('li', {className: turn ? ['step', 'turn'] : ['step']}, [
    stamp(step.at, style),
    h('div', [
      h('p', {className: ['deed']}, [box(), ` ${said.say}`]),
      ...(named.length > 0
        ? [
            h(
              'p',
              {className: ['where']},
              named.flatMap((dish, i): ElementContent[] => [
                {type: 'text', value: i > 0 ? ' · ' : ''},
                h('strong', String(dish.number)),
                {
                  type: 'text',
                  value:
                    step.action === 'load'
                      ? ` ${dish.title}, ${dish.count}, ${zoneWord(dish.zone, style)}`
                      : ` ${dish.title} (${zoneWord(dish.zone, style)})`,
                },
              ]),
            ),
          ]
        : []),
      ...(heat || sign ? [h('p', {className: ['aside']}, [heat, sign].filter(Boolean).join('. '))] : []),
      ...(both.length > 0 ? [h('div', {className: ['aside', 'both']}, both)] : []),
    ]),
  ])
}

/** Rows for readings to be written in by hand: at the test, at each load, and two to spare. */
function readingTable(plan: Plan, style: Style): Element {
  const {words} = style
  const times = [...new Set([plan.ready, ...plan.loads.map((load) => load.at)].map((time) => Math.round(time)))].sort(
    (a, b) => a - b,
  )
  const expected = (at: number): string =>
    temperatures(
      {
        low: valueAt(plan.forecast.floor.low, plan.forecast.step, plan.lit, at),
        high: valueAt(plan.forecast.floor.high, plan.forecast.step, plan.lit, at),
      },
      style,
    )
  const cells = (time: string, expectation: string): Element =>
    h('tr', [h('th', {scope: 'row'}, time), h('td', expectation), h('td'), h('td'), h('td')])
  return h('table', {className: ['blank', 'readings']}, [
    h('caption', words['day.readings']),
    h(
      'thead',
      h('tr', [
        h('th', {scope: 'col'}, words['col.time']),
        h('th', {scope: 'col'}, words['day.expectedFloor']),
        h('th', {scope: 'col'}, words['reading.floor']),
        h('th', {scope: 'col'}, words['reading.arm']),
        h('th', {scope: 'col'}, words['col.note']),
      ]),
    ),
    h('tbody', [...times.map((at) => cells(clock(at, style), expected(at))), cells('\u00a0', ''), cells('\u00a0', '')]),
  ])
}

/** What could not be placed, with the reason and the nearest remedies. */
export function unplacedBox(plan: Plan, problem: PlanProblem, style: Style): Element[] {
  const {words} = style
  if (plan.unplaced.length === 0) return []
  return [
    h('section', {className: ['warn']}, [
      h('h2', words['plan.unplaced']),
      ...plan.unplaced.flatMap(({dish, rule, reason, remedies}) => [
        h('p', [h('strong', `${dishTitle(problem, dish)}: `), `${reason} ${say(words, 'plan.rule', {rule})}.`]),
        ...(remedies.length > 0
          ? [
              h('p', words['plan.remedies']),
              h(
                'ul',
                remedies.map((remedy) => h('li', remedy)),
              ),
            ]
          : []),
      ]),
    ]),
  ]
}

/** The sheet by the oven: the day as one column of clock times, a blank table for readings, the short cautions. */
export function daySheet(view: PlanView, style: Style): Element {
  const {plan, problem} = view
  const {words} = style
  const head = planHead(view, style)
  const dishes = numbered(plan, problem)
  return h('article', {className: ['sheet', 'day-sheet']}, [
    h('header', [h('h1', head.title), h('p', {className: ['lead']}, head.lines.join(' '))]),
    ...unplacedBox(plan, problem, style),
    h(
      'ol',
      {className: ['day']},
      plan.steps.map((step) => stepItem(step, problem, dishes, style)),
    ),
    readingTable(plan, style),
    h('section', {className: ['warn', 'small']}, [
      h('p', h('strong', words['plan.cautions'])),
      h(
        'ul',
        shortCautions.map((key) => h('li', words[key])),
      ),
    ]),
    ...(plan.messages.length > 0
      ? [
          h('section', {className: ['small']}, [
            h('p', h('strong', words['plan.messages'])),
            h(
              'ul',
              plan.messages.map((message) => h('li', messageLine(message, style))),
            ),
          ]),
        ]
      : []),
  ])
}

/** The heat chart with its dishes, and a table that says the same in figures. */
export function heatSheet(view: PlanView, style: Style): Element {
  const {plan, problem} = view
  const {words} = style
  const data = chartData(plan, problem, view.readings)
  const dishes = numbered(plan, problem)
  return h('article', {className: ['sheet', 'heat-sheet']}, [
    h('h1', words['chart.title']),
    h('figure', [
      heatChart(plan.forecast, data, {style, ...(plan.fires ? {fires: plan.fires} : {})}),
      h('figcaption', {className: ['small']}, words['chart.key']),
    ]),
    h(
      'div',
      {className: ['wide'], tabIndex: 0, role: 'region', ariaLabel: words['chart.table']},
      loadTable(dishes, style, words['chart.table']),
    ),
  ])
}

function loadTable(dishes: readonly Numbered[], style: Style, caption: string): Element {
  const {words} = style
  return h('table', {className: ['stack']}, [
    h('caption', caption),
    h(
      'thead',
      h(
        'tr',
        (['col.number', 'col.dish', 'col.count', 'col.where', 'col.in', 'col.heatIn', 'col.draw', 'col.heatOut'] as const).map(
          (key) => h('th', {scope: 'col'}, words[key]),
        ),
      ),
    ),
    h(
      'tbody',
      dishes.map((dish) =>
        h('tr', [
          h('td', String(dish.number)),
          h('th', {scope: 'row'}, dish.title),
          h('td', countOf(dish)),
          h('td', zoneWord(dish.zone, style)),
          h('td', clock(dish.from, style)),
          h('td', temperatures(dish.celsiusIn, style)),
          h('td', say(words, 'plan.drawAt', drawTimes(dish, style))),
          h('td', temperatures(dish.celsiusOut, style)),
        ]),
      ),
    ),
  ])
}

/** A floor map for each load, two to a page, with the dishes in the order they go in. */
export function floorSheet(view: PlanView, style: Style): Element {
  const {plan, problem} = view
  const {words} = style
  const dishes = numbered(plan, problem)
  return h('article', {className: ['sheet', 'floor-sheet']}, [
    h('h1', words['map.heading']),
    h('p', words['map.key']),
    h(
      'div',
      {className: ['maps']},
      plan.loads.map((load) =>
        h('section', {className: ['map']}, [
          h('h2', say(words, 'plan.load', {number: load.number, time: clock(load.at, style)})),
          h('figure', floorMap(load, plan, problem, {style})),
          h(
            'ul',
            {className: ['plain']},
            dishes
              .filter((dish) => dish.load === load.number)
              .map((dish) =>
                h('li', [
                  h('strong', `${dish.number} `),
                  `${dish.title}, ${countOf(dish)}, ${zoneWord(dish.zone, style)}; ${say(words, 'plan.drawAt', drawTimes(dish, style))}`,
                ]),
              ),
          ),
        ]),
      ),
    ),
  ])
}
