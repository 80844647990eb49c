import type {Element, ElementContent} from 'hast'
import {h} from 'hastscript'
import {writeDuration} from '../measure/quantity.js'
import {bedtimeAfter, byDayFrom} from '../plan/bedtime.js'
import type {Phrase, Plan, PlanProblem, Step} from '../plan/types.js'
import {clock, dayName, dayOf, stepTime, temperatures, timeOfDay} from './figures.js'
import {floorMap} from './floor-map.js'
import {heatChart} from './heat-chart.js'
import {chartData, concerned, type Numbered, numbered, setInAt, valueAt} from './heat-data.js'
import {isForNothing, standsLine} from './left-out.js'
import {signIn, stepWords, waysTold} from './phrases.js'
import {
  changed,
  changedFor,
  countOf,
  drawBetween,
  lateLines,
  notesOf,
  onlyChange,
  type PlanView,
  planHead,
  shortCautions,
  unplacedLines,
  zoneWord,
} from './plan-text.js'
import {messageWords} from './said.js'
import type {Style} from './style.js'
import {stepGroups, stepsToDo} from './to-do.js'
import {messageLine} from './translation-text.js'
import {say, type WordKey} from './words/index.js'

/** The clock time of a step, with the day named under it where it is another day's. */
function stamp(step: Step, style: Style): Element {
  const day = dayOf(step.at) === 0 ? '' : dayName(step.at, style)
  return h('div', {className: ['stamp']}, [
    h('span', stepTime(step, style)),
    ...(day ? [h('span', {className: ['day-name']}, day)] : []),
  ])
}

/** A box to tick by hand. */
export function box(): Element {
  return h('span', {className: ['box'], ariaHidden: 'true'})
}

/**
 * What to do when oven or dough is ahead or behind, said once for the whole day: a phrase of the planner stands for many steps, and
 * the step itself then carries only its own figures.
 */
const standing: ReadonlyArray<{readonly key: WordKey; readonly ids: readonly string[]}> = [
  {key: 'standing.fire', ids: ['behind fire']},
  {key: 'standing.test', ids: ['ahead hot', 'behind cool']},
  {key: 'standing.load', ids: ['ahead load', 'behind load']},
  {key: 'standing.draw', ids: ['ahead draw', 'behind draw']},
  {key: 'standing.dough', ids: ['ahead dough', 'behind dough', 'behind bulk']},
]
const standingIds = new Set(standing.flatMap(({ids}) => ids))

function phrasesOf(step: Step): Phrase[] {
  return [step.words?.ifAhead ?? null, step.words?.ifBehind ?? null].filter((phrase) => phrase !== null)
}

/** The standing orders that this day's steps need. */
function standingOrders(plan: Plan, style: Style): Element[] {
  const used = new Set(stepsToDo(plan).flatMap((step) => phrasesOf(step).map(({id}) => id)))
  const keys = standing.filter(({ids}) => ids.some((id) => used.has(id)))
  if (keys.length === 0) return []
  return [
    h('section', {className: ['standing']}, [
      h('h2', style.words['standing.title']),
      h(
        'ul',
        keys.map(({key}) => h('li', style.words[key])),
      ),
    ]),
  ]
}

/** When a dish may be drawn: `12:40 to 2:05 pm`, or the likely time alone where it cannot come before; nobody looks at night. */
function drawWindow(dish: Numbered, problem: PlanProblem, style: Style): string {
  const {words} = style
  const {low, likely, high} = dish.draw
  const from = Math.min(byDayFrom(problem, low), likely)
  const until = Math.min(Math.max(high, likely), bedtimeAfter(likely))
  const sameDay = [from, until].every((at) => Math.floor(at / 1440) === Math.floor(likely / 1440))
  const time = (at: number): string => (sameDay ? timeOfDay(at, style) : clock(at, style))
  return Math.round(from) >= Math.round(until)
    ? say(words, 'own.from', {time: time(from)})
    : say(words, 'own.look', {from: time(from), until: time(until)})
}

/** What to look for at a draw: for each dish by number its own times and its own sign. */
function drawAsides(named: readonly Numbered[], problem: PlanProblem, style: Style): Element {
  const rows = named.map((dish) => {
    const own = problem.dishes.find(({id}) => id === dish.id)
    const sign = own ? signIn(own.kind, own.sign, style) : ''
    const window = drawWindow(dish, problem, style)
    return {number: dish.number, text: stop(sign ? `${window}: ${sign}` : window)}
  })
  return h(
    'p',
    {className: ['aside']},
    rows.flatMap(({number, text}, i): ElementContent[] => [
      ...(i > 0 || rows.length > 1 ? [h('br')] : []),
      ...(rows.length > 1 ? [h('strong', {className: ['no']}, String(number)), {type: 'text' as const, value: ' '}] : []),
      {type: 'text', value: text},
    ]),
  )
}

/** The figures of a step's ahead and behind phrases, in few words; null where a phrase is to be said in full. */
function ownFigures(step: Step, style: Style): string[] {
  const {words} = style
  const value = (phrase: Phrase | null | undefined, name: string): number | null => {
    const found = phrase?.values[name]
    return typeof found === 'object' && 'value' in found ? found.value : null
  }
  const ahead = step.words?.ifAhead
  const behind = step.words?.ifBehind
  const out: string[] = []
  if (ahead?.id === 'ahead load' || behind?.id === 'behind load') {
    const [high, low] = [value(ahead, 'celsius'), value(behind, 'celsius')]
    if (high !== null && low !== null && high >= low)
      out.push(say(words, 'own.between', {temperature: temperatures({low, high}, style)}))
    else if (high !== null) out.push(say(words, 'own.below', {temperature: temperatures({low: high, high}, style)}))
  }
  const hold = value(ahead, 'hold') ?? value(behind, 'hold')
  if (hold !== null && (ahead?.id === 'ahead dough' || behind?.id === 'behind dough'))
    out.push(say(words, 'own.hold', {time: writeDuration(hold)}))
  return out
}

function plainDeed(what: string): Element {
  return h('div', {className: ['deed', 'bare']}, [box(), h('div', [h('p', {className: ['do']}, what)])])
}

/** One deed with its box: what, which dishes by number, the sign, and what is its own when ahead or behind. */
function deed(step: Step, problem: PlanProblem, dishes: readonly Numbered[], style: Style, known: Known): Element {
  const {words} = style
  const said = stepWords(step, problem, style)
  const named = concerned(step, dishes)
  const inParts = ({id, count}: Numbered): boolean => count < (problem.dishes.find((dish) => dish.id === id)?.count ?? 0)
  // By a space that breaks no line: a number at the end of one would be read as the dish's before it.
  const list = named.flatMap((dish, i): ElementContent[] => [
    {type: 'text', value: i > 0 ? '; ' : ''},
    h('strong', {className: ['no']}, String(dish.number)),
    {
      type: 'text',
      value:
        step.action === 'load'
          ? `\u00a0${dish.title} (${dish.count}), ${zoneWord(dish.zone, style)}`
          : inParts(dish)
            ? `\u00a0${dish.title} (${dish.count}, ${zoneWord(dish.zone, style)})`
            : `\u00a0${dish.title} (${zoneWord(dish.zone, style)})`,
    },
  ])
  const what: ElementContent[] =
    named.length === 0
      ? [{type: 'text', value: said.say}]
      : [
          h('strong', step.action === 'load' ? say(words, 'day.setIn', {number: step.load ?? ''}) : words['action.draw']),
          {type: 'text', value: ' '},
          ...list,
        ]
  const asides: string[] = []
  const tested = known.test ? stepWords(known.test, problem, style) : null
  const sign = said.sign ?? tested?.sign ?? null
  const newSign = sign !== null && !known.signs.has(`${step.action} ${sign}`)
  if (sign && (step.action === 'feed' || step.action === 'shut')) known.signs.add(`${step.action} ${sign}`)
  // The sign of a risen dough stands at the shaping, which comes when it has risen.
  const ofItsOwn = phrasesOf(step).some(({id}) => !standingIds.has(id))
  if (step.action === 'rise' && known.shaped.has(step.dishes.join()) && !ofItsOwn) return plainDeed(said.say)
  const figures = ownFigures(step, style)
  const drawn = step.action === 'draw' && named.length > 0
  if (!drawn) {
    // A load's own right heat says more than the heat expected, which stands in the table of readings.
    if (step.celsius && step.action !== 'draw' && (figures.length === 0 || step.action === 'test'))
      asides.push(`${say(words, 'step.heat', {temperature: temperatures(step.celsius, style)})}.`)
    if (newSign) asides.push(stop(tested ? say(words, 'day.test', {sign}) : say(words, 'step.sign', {sign})))
    asides.push(...figures.map(stop))
  }
  const [ahead, behind] = [step.words?.ifAhead, step.words?.ifBehind]
  if (said.ifAhead && !(ahead && standingIds.has(ahead.id))) asides.push(stop(said.ifAhead))
  if (said.ifBehind && !(behind && standingIds.has(behind.id))) asides.push(stop(said.ifBehind))
  return h('div', {className: ['deed', named.length === 0 ? 'bare' : 'named']}, [
    box(),
    h('div', [
      h('p', {className: ['do']}, what),
      ...(drawn ? [drawAsides(named, problem, style)] : []),
      ...(asides.length > 0
        ? [h('p', {className: ['aside']}, [...(named.length > 1 && drawn ? [h('br')] : []), asides.join(' ')])]
        : []),
    ]),
  ])
}

/** What need not be said again: the test that goes before a load, and signs that came with the step before. */
interface Known {
  readonly test: Step | null
  readonly signs: Set<string>
  /** Dishes that have a step of shaping. */
  readonly shaped: ReadonlySet<string>
}

const stop = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`)

/** Steps of one clock time stand under one stamp; feeds that follow each other with nothing between are one line with a box each. */
function moments(steps: readonly Step[]): Step[][] {
  const out: Step[][] = []
  for (const step of steps) {
    const last = out.at(-1)
    const before = last?.at(-1)
    const sameTime = last !== undefined && Math.round(last[0]!.at) === Math.round(step.at) && last[0]!.untimed === step.untimed
    const sameFeed =
      step.action === 'feed' && last !== undefined && last.every(({action}) => action === 'feed') && before?.say === step.say
    if (sameTime || sameFeed) last.push(step)
    else out.push([step])
  }
  return out
}

/** The times at which the fire is fed again, each with its box. */
function feedsAgain(steps: readonly Step[], style: Style): Element[] {
  const again = steps.slice(1)
  if (again.length === 0) return []
  return [
    h('p', {className: ['again']}, [
      style.words['day.again'],
      ...again.flatMap((step) => [
        {type: 'text' as const, value: ' '},
        h('span', {className: ['pair-box']}, [box(), ` ${timeOfDay(step.at, style)}`]),
      ]),
    ]),
  ]
}

function moment(
  steps: readonly Step[],
  problem: PlanProblem,
  dishes: readonly Numbered[],
  style: Style,
  known: Pick<Known, 'signs' | 'shaped'>,
): Element {
  const turn = steps.some((step) => step.action === 'light' || step.action === 'load')
  const testOf = (load: Step): Step | null => steps.find((step) => step.action === 'test' && step.load === load.load) ?? null
  const folded = new Set(steps.flatMap((step) => (step.action === 'load' ? (testOf(step) ?? []) : [])))
  if (steps.every((step) => step.action === 'feed'))
    return h('li', {className: ['step']}, [
      stamp(steps[0]!, style),
      h('div', [deed(steps[0]!, problem, dishes, style, {test: null, ...known}), ...feedsAgain(steps, style)]),
    ])
  return h('li', {className: turn ? ['step', 'turn'] : ['step']}, [
    stamp(steps[0]!, style),
    h(
      'div',
      steps
        .filter((step) => !folded.has(step))
        .map((step) => deed(step, problem, dishes, style, {test: step.action === 'load' ? testOf(step) : null, ...known})),
    ),
  ])
}

/** Rows for readings to be written in by hand, from now on: when the oven is ready, at each load, and two to spare. */
function readingTable(plan: Plan, now: number, style: Style): Element {
  const {words} = style
  // Four rows at most, three quarters of an hour apart or more: as many as a busy cook fills in.
  const ready = (plan.fires ?? [plan]).map((fire) => Math.round(fire.ready)).filter((time) => time >= now)
  const loads = plan.loads.map((load) => Math.round(load.at)).filter((time) => time >= now)
  const times: number[] = []
  for (const time of [...ready, ...loads.sort((a, b) => a - b)])
    if (times.length < 4 && times.every((other) => Math.abs(time - other) >= 45)) times.push(time)
  times.sort((a, b) => a - b)
  const expected = (at: number): string =>
    temperatures(
      {
        low: valueAt(plan.forecast.floor.low, plan.forecast.step, plan.lit, at),
        high: valueAt(plan.forecast.floor.high, plan.forecast.step, plan.lit, at),
      },
      style,
    )
  const cells = (time: string, expectation: string): Element =>
    h('tr', [time === '' ? h('td') : h('th', {scope: 'row'}, time), h('td', expectation), h('td'), h('td'), h('td')])
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
    h('tbody', [...times.map((at) => cells(clock(at, style), expected(at))), cells('', ''), cells('', '')]),
  ])
}

/** What nobody may miss, set apart at the head of a sheet. */
export function alertsBox(alerts: readonly string[]): Element[] {
  return alerts.map((alert) => h('p', {className: ['warn']}, h('strong', alert)))
}

/** What could not be placed and what comes late, with the reason and the nearest remedies. */
export function unplacedBox(plan: Plan, problem: PlanProblem, style: Style): Element[] {
  const {words} = style
  const late = lateLines(plan, problem, style)
  if (plan.unplaced.length === 0 && late.length === 0) return []
  const ways = waysTold(plan, problem, style)
  return [
    h('section', {className: ['warn']}, [
      ...(plan.unplaced.length > 0 ? [h('h2', words['plan.unplaced'])] : []),
      ...unplacedLines(plan, problem, style).flatMap(({title, reason, rule, remedies}) => [
        h('p', [h('strong', `${title}: `), `${stop(reason)} ${say(words, 'plan.rule', {rule})}.`]),
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
      ...(plan.unplaced.length > 0 ? [h('p', standsLine(plan, problem, style))] : []),
      ...(late.length > 0
        ? [h('h2', words['plan.lateDishes']), ...late.map((one) => h('p', [h('strong', `${one.title}: `), stop(one.say)]))]
        : []),
      ...(ways
        ? [
            h('p', ways.lead),
            ...(ways.lines.length > 0
              ? [
                  h(
                    'ul',
                    ways.lines.map((way) => h('li', way)),
                  ),
                ]
              : []),
          ]
        : []),
    ]),
  ]
}

/** After planning again: what moved, and why. */
function changesBox(plan: Plan, problem: PlanProblem, style: Style): Element[] {
  const groups = changed(plan, problem, style)
  if (groups.length === 0) return []
  return [
    h('section', {className: ['standing']}, [
      h('h2', style.words['plan.changes']),
      ...groups.flatMap((one) =>
        one.lines.length === 1
          ? [h('ul', [h('li', onlyChange(one))])]
          : [
              h('p', changedFor(one)),
              h(
                'ul',
                one.lines.map((line) => h('li', line)),
              ),
            ],
      ),
    ]),
  ]
}

/** The sheet by the oven: the day as one column of clock times, a blank table for readings, the short cautions. */
export function daySheet(view: PlanView, style: Style): Element {
  const {plan, problem} = view
  const {words} = style
  const head = planHead(view, style)
  const dishes = numbered(plan, problem)
  const known = {
    signs: new Set<string>(),
    shaped: new Set(plan.steps.filter((step) => step.action === 'shape').map((step) => step.dishes.join())),
  }
  const groups = stepGroups(plan, problem, style).map(({lead, steps}) => ({lead, all: moments(steps)}))
  const all = groups.flatMap((group) => group.all)
  // Lines the sheet will need beyond its moments: several deeds at one time, and what is not placed.
  const weight =
    all.reduce((sum, steps) => sum + (steps.every(({action}) => action === 'feed') ? 1 : Math.max(1, steps.length * 0.6)), 0) +
    4 * plan.unplaced.length +
    2 * (plan.late ?? []).length +
    2 * (plan.ways ?? []).length +
    (plan.changes ?? []).length +
    groups.filter(({lead}) => lead).length
  return h('article', {className: ['sheet', 'day-sheet', weight > 25 ? 'tight' : weight > 16 ? 'dense' : 'roomy']}, [
    h('header', [h('h1', head.title), ...alertsBox(head.alerts), h('p', {className: ['lead']}, head.lines.map(stop).join(' '))]),
    ...unplacedBox(plan, problem, style),
    ...changesBox(plan, problem, style),
    ...standingOrders(plan, style),
    ...groups.flatMap((group) => [
      ...(group.lead ? [h('p', h('strong', group.lead))] : []),
      h(
        'ol',
        {className: ['day']},
        group.all.map((steps) => moment(steps, problem, dishes, style, known)),
      ),
    ]),
    // Of a fire that is better not lit nothing is read.
    ...(isForNothing(plan, problem)
      ? []
      : [
          h(
            'div',
            {className: ['wide'], tabIndex: 0, role: 'region', ariaLabel: words['day.readings']},
            readingTable(plan, problem.done?.now ?? Number.NEGATIVE_INFINITY, style),
          ),
        ]),
    h('section', {className: ['warn', 'small']}, [
      h('p', h('strong', words['plan.cautions'])),
      h(
        'ul',
        shortCautions.map((key) => h('li', words[key])),
      ),
    ]),
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
    ...(isForNothing(plan, problem)
      ? [h('p', standsLine(plan, problem, style))]
      : [
          h('figure', [heatChart(plan.forecast, data, {style}), h('figcaption', {className: ['small']}, words['chart.key'])]),
          h(
            'div',
            {className: ['wide', 'small'], tabIndex: 0, role: 'region', ariaLabel: words['chart.table']},
            loadTable(dishes, style, words['chart.table']),
          ),
        ]),
    ...(notesOf(plan).length > 0
      ? [
          h('section', {className: ['small']}, [
            h('p', h('strong', words['plan.messages'])),
            h(
              'ul',
              notesOf(plan).map((message) =>
                h('li', messageWords(message, style).foreign ? {lang: 'en'} : {}, messageLine(message, style)),
              ),
            ),
          ]),
        ]
      : []),
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
          h('td', String(dish.count)),
          h('td', zoneWord(dish.zone, style)),
          h('td', clock(dish.from, style)),
          h('td', temperatures(dish.celsiusIn, style)),
          h('td', drawBetween(dish, style)),
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
      {className: ['maps', ...(plan.loads.length > 4 ? ['many'] : []), ...(plan.loads.length > 9 ? ['most'] : [])]},
      plan.loads.map((load) =>
        h('section', {className: ['map']}, [
          h('h2', say(words, 'plan.load', {number: load.number, time: clock(setInAt(load, problem), style)})),
          h('figure', floorMap(load, plan, problem, {style})),
          h(
            'ul',
            {className: ['plain']},
            dishes
              .filter((dish) => dish.load === load.number)
              .map((dish) =>
                h('li', [
                  h('strong', `${dish.number} `),
                  `${dish.title}, ${countOf(dish, style)}; ${words['col.draw'].toLowerCase()} ${plan.loads.length > 4 ? clock(dish.draw.likely, style) : drawBetween(dish, style)}`,
                ]),
              ),
          ),
        ]),
      ),
    ),
  ])
}
