import {writeDuration} from '../measure/quantity.js'
import type {OvenSpec, Reading} from '../oven/types.js'
import {amiss, minutesLate} from '../plan/asked.js'
import {askedAs, withoutBatch} from '../plan/batches.js'
import {listed} from '../plan/phrases.js'
import {partsOf, type StandsAt} from '../plan/stands-at.js'
import type {Plan, PlanProblem} from '../plan/types.js'
import type {Message} from '../receipt/types.js'
import {
  clock,
  dayName,
  dayOf,
  longDate,
  number,
  stepClock,
  stepTime,
  temperature,
  temperatures,
  timeOfDay,
  wood,
} from './figures.js'
import {heatChartText} from './heat-chart-text.js'
import {chartData, dishTitle, type Numbered, numbered, setInAt} from './heat-data.js'
import {isForNothing, standsLine} from './left-out.js'
import {changeWords, reasonOf, remedyLines, suggestionsOf, waysTold, wordsInTurn} from './phrases.js'
import {inWords, messageWords, sizedLines, vesselName} from './said.js'
import {plainStyle, type Style} from './style.js'
import {bold, columns, hanging, markdownTable, markdownText, printable} from './text.js'
import {inOvenNow, stepGroups} from './to-do.js'
import {messageLine} from './translation-text.js'
import {say, sayIf, type WordKey} from './words/index.js'

/** What the plan's text is made from. */
export interface PlanView {
  readonly plan: Plan
  readonly problem: PlanProblem
  readonly oven: OvenSpec
  readonly readings?: readonly Reading[]
  /** What the log has taught of this oven, in plain sentences. */
  readonly believed?: readonly string[]
}

/** How the plan's text is shown. */
export interface PlanTextOptions {
  readonly style?: Style
  /** Bold on the terminal; an extra, never the only sign of anything. */
  readonly colour?: boolean
  /** Columns of the terminal, 80 by default. */
  readonly width?: number
}

/** The short cautions that go with every plan, whatever else is printed. */
export const shortCautions: readonly WordKey[] = [
  'safety.short.fire',
  'safety.short.burns',
  'safety.short.arm',
  'safety.short.monoxide',
  'safety.short.ash',
  'safety.short.wood',
  'safety.short.food',
  'safety.short.codes',
]

const tidy = (text: string): string => printable(text).replace(/\s+/g, ' ').trim()

/** Title, what nobody may miss, and date, people and the fire in a few sentences. */
export function planHead(
  {plan, problem, oven}: PlanView,
  style: Style,
): {readonly title: string; readonly alerts: readonly string[]; readonly lines: readonly string[]} {
  const {words} = style
  const {day} = problem
  const lines = [
    [
      longDate(day.date, style),
      say(words, 'plan.people', {count: day.people}),
      say(words, 'plan.serve', {time: clock(day.serve, style)}),
      tidy(oven.name),
    ]
      .filter(Boolean)
      .join(' · '),
  ]
  for (const fire of isForNothing(plan, problem) ? [] : (plan.fires ?? [plan]))
    lines.push(
      say(words, 'plan.fire', {lit: clock(fire.lit, style), raked: clock(fire.raked, style), ready: clock(fire.ready, style)}),
      say(words, 'plan.wood', {
        wood: wood(fire.firing.wood, style),
        burn: writeDuration(fire.firing.burn),
        soak: writeDuration(fire.firing.soak),
      }),
    )
  const inside = inOvenNow(plan, problem, style)
  if (inside) lines.push(tidy(inside))
  lines.push(...standing(plan, problem, style))
  const alerts = plan.messages.filter(({rule}) => atOnce.has(rule)).map((message) => alertLine(message, style))
  return {title: tidy(day.title), alerts, lines}
}

/** A message in one line, with what to do about it. */
export function alertLine(message: Message, style: Style): string {
  const {reason, suggest} = messageWords(message, style)
  return tidy(suggest === null ? `${reason}.` : `${reason} → ${suggest}.`)
}

/** In how far the plan is what the day asked for; batches of one line of the day count once. */
function standing(plan: Plan, problem: PlanProblem, style: Style): string[] {
  const {words} = style
  const byId = new Map(problem.dishes.map((dish) => [dish.id, dish]))
  const whole = (id: string): string => {
    const dish = byId.get(id)
    return dish ? askedAs(dish) : id
  }
  const dishes = (ids: readonly string[]): number => new Set(ids.map(whole)).size
  const {late, underdone, scant, lost, afterMeal} = amiss(problem, plan)
  const minutes = writeDuration(Math.max(0, ...late.map(({wanted, drawn}) => drawn - wanted)))
  const all = writeDuration(minutesLate(problem, late))
  const clause = (what: 'late' | 'underdone' | 'scant' | 'lost' | 'afterMeal', ids: readonly string[]): string[] => {
    const count = dishes(ids)
    return count === 0 ? [] : [say(words, `amiss.${what}.${count === 1 ? 'one' : 'many'}`, {count, minutes, all})]
  }
  const clauses = [
    ...clause(
      'late',
      late.map(({dish}) => dish),
    ),
    ...clause('underdone', underdone),
    ...clause('scant', scant),
    ...clause('lost', lost),
    ...clause('afterMeal', afterMeal),
  ]
  const but = clauses.length === 0 ? undefined : listed(clauses, words['list.and'])
  // All of the day is behind: of what its plan had a place for, nothing more is told here.
  if (plan.possible && plan.loads.length === 0 && but === undefined) return [words['plan.nothingLeft']]
  if (plan.possible) return [but === undefined ? words['plan.possible'] : say(words, 'plan.possibleBut', {but})]
  const out = plan.unplaced.map(({dish}) => dish)
  const count = dishes(out)
  const titles = new Set(out.map(whole))
  const inPart = plan.loads.some((load) => load.dishes.some(({dish}) => titles.has(whole(dish))))
  const key = !inPart ? 'plan.impossible' : count === 1 ? 'plan.impossiblePart' : 'plan.impossibleParts'
  return [say(words, key, {count}), ...(but === undefined ? [] : [say(words, 'plan.restBut', {but})])]
}

/** Rules of messages that nobody may miss, and so stand at the head of a plan: food that is not safe to eat, and what makes, or may make, the plan itself wrong. */
const atOnce: ReadonlySet<string> = new Set([
  'food-cold',
  'food-raw',
  'drawn-raw',
  'out-for-fire',
  'unrisen',
  'set-in-beyond',
  'spare-set-in',
  'gone-unlogged',
  'drawn-unlogged',
  'not-in-unlogged',
  'log-unlit',
  'raking-unlogged',
])

/** The plan's messages but those that its head or its list of late dishes tells already. */
export function notesOf(plan: Plan): Message[] {
  const listed = (plan.late ?? []).length > 0
  return plan.messages.filter(({rule}) => !atOnce.has(rule) && !(listed && rule === 'late'))
}

/**
 * Dishes without a place, those batches of one dish in one line that share a reason: what they are called together and one by one, why, by
 * which rule, and what would help.
 */
export function unplacedLines(
  {unplaced}: Plan,
  problem: PlanProblem,
  style: Style,
): {
  readonly title: string
  readonly titles: readonly string[]
  readonly reason: string
  readonly rule: string
  readonly remedies: readonly string[]
}[] {
  const alike = new Map<string, {titles: string[]; reason: string; rule: string; remedies: readonly string[]}>()
  for (const one of unplaced) {
    const title = dishTitle(problem, one.dish)
    const reason = reasonAlone(one.dish, reasonOf(one, problem, style), problem)
    const remedies = remedyLines(one, problem, style)
    // What would help one batch would help its like; the first of them stands for all.
    const plain = (text: string): string => text.replace(/ \(\d+\/\d+\)/g, '')
    const key = JSON.stringify([withoutBatch(title), plain(reason), one.rule, remedies.map(plain)])
    const line = alike.get(key) ?? {titles: [], reason, rule: sayIf(style.words, `rule.${one.rule}`, one.rule), remedies}
    line.titles.push(title)
    alike.set(key, line)
  }
  return Array.from(alike.values(), (line) => ({title: batchesOf(line.titles, style), ...line}))
}

/** What some batches of one dish are called together: “Scones (1/3 and 3/3)”, and where they are all of them “Scones”. */
function batchesOf(titles: readonly string[], {words}: Style): string {
  const [first = ''] = titles
  const dish = withoutBatch(first)
  const numbers = titles.map((title) => title.slice(dish.length + 2, -1))
  if (first === dish || numbers[0]!.endsWith(`/${numbers.length}`)) return dish
  return `${dish} (${listed(numbers, words['list.and'])})`
}

/** The dishes that are drawn late, each with its times; batches of one dish that have the same in one line. */
export function lateLines(plan: Plan, problem: PlanProblem, style: Style): {readonly title: string; readonly say: string}[] {
  const alike = new Map<string, {titles: string[]; say: string}>()
  for (const {dish, wanted, drawn} of plan.late ?? []) {
    const title = dishTitle(problem, dish)
    const told = say(style.words, 'plan.lateDish', {wanted: clock(wanted, style), drawn: clock(drawn, style)})
    const key = JSON.stringify([withoutBatch(title), told])
    const line = alike.get(key) ?? {titles: [], say: told}
    line.titles.push(title)
    alike.set(key, line)
  }
  return Array.from(alike.values(), ({titles, say: told}) => ({title: batchesOf([...titles].sort(byNumber), style), say: told}))
}

/** Batches of one dish in their order: “Scones (2/12)” before “Scones (10/12)”. */
const byNumber = (p: string, q: string): number => numberOf(p) - numberOf(q)

const numberOf = (title: string): number => Number.parseInt(title.slice(title.lastIndexOf('(') + 1), 10) || 0

/** `12 × loaf`, or the count alone. */
export function countOf(dish: Numbered, style: Style): string {
  return dish.vessel ? `${dish.count} × ${vesselName(dish.vessel, style)}` : String(dish.count)
}

/** The place on the floor in words. */
export function zoneWord(where: StandsAt, style: Style): string {
  const {words} = style
  const [zone, zone2] = partsOf(where).map((part) => sayIf(words, `zone.${part}`, part))
  return zone2 === undefined ? zone! : say(words, 'zone.two', {zone: zone!, zone2})
}

/** The figures by which a plan is judged, each in its own unit; none of one that bakes nothing. */
export function scoreLines(plan: Plan, problem: PlanProblem, style: Style): string[] {
  if (isForNothing(plan, problem)) return []
  const {words} = style
  const {score} = plan
  const figure = (value: number, digits: number): string => number(value, digits, style)
  return [
    say(words, 'plan.late', {minutes: figure(minutesLate(problem, plan.late ?? []), 0)}),
    ...(score.earlyMinutes ? [say(words, 'plan.early', {minutes: figure(score.earlyMinutes, 0)})] : []),
    say(words, 'plan.misfit', {value: figure(score.misfit, 0)}),
    say(words, 'plan.openings', {count: score.openings}),
    ...(score.disturbed ? [say(words, 'plan.disturbed', {count: score.disturbed})] : []),
    say(words, 'plan.idle', {value: figure(score.idle, 1)}),
    say(words, 'plan.woodScore', {value: wood(score.wood, style)}),
    say(words, 'plan.total', {value: figure(score.total, score.total < 10 ? 2 : 0)}),
    ...(score.leftOut && score.leftOut.least > 0
      ? [say(words, 'plan.leftOut', {vessels: figure(score.leftOut.vessels, 0), least: figure(score.leftOut.least, 0)})]
      : []),
    score.gap === null
      ? words['plan.noGap']
      : say(words, 'plan.gap', {percent: figure(score.gap * 100, score.gap < 0.1 ? 1 : 0)}),
  ]
}

/** When the oven leaves a band is known to no minute. */
const roughly = (minutes: number): number => Math.round(minutes / 5) * 5

/** Floor and heat used in each band that the oven falls through, and what is left at the end; nothing where nothing is baked. */
export function balanceLines({balance = [], left, loads}: Plan, style: Style): string[] {
  if (loads.length === 0) return []
  const {words} = style
  // What lasts no longer than its hours are known is no span.
  const lasting = balance.filter(({from, to}) => roughly(to) > roughly(from))
  const lines = lasting.map(({band, from, to, floor, used, heat, left: held}) =>
    say(words, held ? 'plan.inBandLeft' : 'plan.inBand', {
      ...(held
        ? {
            left: number(held.likely, 0, style),
            low: number(held.low, 0, style),
            high: number(held.high, 0, style),
          }
        : {}),
      band: words[`band.${band}`],
      from: clock(roughly(from), style),
      to: clock(roughly(to), style),
      used: number(used, 1, style),
      floor: number(floor, 1, style),
      share: number((100 * used) / Math.max(floor, 1e-9), 0, style),
      heat: number(heat, 1, style),
    }),
  )
  return left
    ? [...lines, say(words, 'plan.heatLeft', {time: clock(left.at, style), temperature: temperature(left.celsius, style)})]
    : lines
}

/** The plan for a terminal: the day hour by hour, the loads, the heat chart, what is not placed, the score, the cautions. */
export function planText(view: PlanView, options: PlanTextOptions = {}): string {
  const style = options.style ?? plainStyle
  const width = options.width ?? 80
  const colour = options.colour ?? false
  const {plan, problem} = view
  const {words} = style
  const head = planHead(view, style)
  const out = [bold(head.title, colour), '='.repeat(Math.min(width, Math.max(3, head.title.length)))]
  for (const alert of head.alerts) out.push(...hanging('! ', alert, width))
  for (const line of head.lines) out.push(...hanging('', line, width))
  const heading = (key: WordKey): void => {
    out.push('', bold(words[key], colour), '-'.repeat(words[key].length))
  }
  if (plan.unplaced.length > 0) {
    heading('plan.unplaced')
    for (const {title, reason, rule, remedies} of unplacedLines(plan, problem, style)) {
      out.push(...hanging('  ! ', tidy(`${title}: ${reason}`), width))
      out.push(...hanging('    ', say(words, 'plan.rule', {rule}), width))
      if (remedies.length > 0) out.push(`    ${words['plan.remedies']}`)
      for (const remedy of remedies) out.push(...hanging('      - ', tidy(remedy), width))
    }
    out.push(...hanging('  ', standsLine(plan, problem, style), width))
  }
  const late = lateLines(plan, problem, style)
  if (late.length > 0) {
    heading('plan.lateDishes')
    for (const one of late) out.push(...hanging('  ! ', tidy(`${one.title}: ${one.say}`), width))
  }
  const ways = waysTold(plan, problem, style)
  if (ways) {
    out.push('', ...hanging('  ', ways.lead, width))
    for (const way of ways.lines) out.push(...hanging('    - ', tidy(way), width))
  }
  const groups = stepGroups(plan, problem, style)
  if (groups.length > 0) {
    heading('plan.day')
    // The day is named where it changes, so that the clocks stand under one another beside what is to be done.
    const stamps = new Map(groups.flatMap(({steps}) => steps.map((step) => [step, stepTime(step, style)])))
    const stampWidth = Math.max(...Array.from(stamps.values(), (stamp) => stamp.length))
    let day = 0
    const wordsOf = wordsInTurn(problem, style)
    for (const {lead, steps} of groups) {
      if (lead) out.push(...hanging('  ', lead, width).map((line) => bold(line, colour)))
      for (const step of steps) {
        const its = dayOf(step.at)
        if (its !== day) out.push(bold(`  ${upperFirst(dayName(step.at, style))}:`, colour))
        day = its
        const said = wordsOf(step)
        const first = `  ${stamps.get(step)!.padStart(stampWidth)}  `
        const indent = ' '.repeat(first.length)
        const lines = hanging(first, tidy(said.say), width)
        out.push(bold(lines[0]!, colour), ...lines.slice(1))
        if (step.celsius)
          out.push(...hanging(indent, say(words, 'step.heat', {temperature: temperatures(step.celsius, style)}), width))
        if (said.sign) out.push(...hanging(indent, say(words, 'step.sign', {sign: tidy(said.sign)}), width))
        for (const what of [said.ifAhead, said.ifBehind]) if (what) out.push(...hanging(`${indent}- `, tidy(what), width))
      }
    }
  }
  if (plan.loads.length > 0) {
    heading('plan.loads')
    const dishes = numbered(plan, problem)
    const widths = [3, width - 3 - 4 * 2 - 8 - 23 - 14 - 2, 8, 23, 14]
    for (const load of plan.loads) {
      out.push(say(words, 'plan.load', {number: load.number, time: clock(setInAt(load, problem), style)}))
      for (const dish of dishes.filter((entry) => entry.load === load.number))
        out.push(
          ...columns(
            [
              [
                `${dish.number}.`,
                `${tidy(dish.title)}, ${tidy(countOf(dish, style))}`,
                zoneWord(dish.zone, style),
                temperatures(dish.celsiusIn, style),
                `${words['col.draw'].toLowerCase()} ${clock(dish.draw.likely, style)}`,
              ],
            ],
            widths,
          ).map((line) => `  ${line}`),
        )
    }
    heading('plan.heat')
    const data = chartData(plan, problem, view.readings)
    out.push(heatChartText(plan.forecast, {...data, style, width}).trimEnd())
  }
  const balance = balanceLines(plan, style)
  if (balance.length > 0) {
    heading('plan.balance')
    for (const line of balance) out.push(...hanging('  * ', line, width))
  }
  const suggested = suggestionsOf(plan, problem, style)
  if (suggested) {
    heading('plan.suggestions')
    for (const line of suggested.lines) out.push(...hanging('  + ', tidy(line), width))
    out.push(...hanging('  ', suggested.note, width))
  }
  const sized = sizes(problem, style)
  if (sized.length > 0) {
    heading('plan.sized')
    for (const line of sized) out.push(...hanging('  * ', tidy(line), width))
  }
  if (view.believed && view.believed.length > 0) {
    heading('plan.believed')
    for (const line of view.believed) out.push(...hanging('  * ', tidy(believedLine(line, problem, style)), width))
  }
  if (plan.changes && plan.changes.length > 0) {
    heading('plan.changes')
    for (const one of changed(plan, problem, style))
      if (one.lines.length === 1) out.push(...hanging('  * ', tidy(onlyChange(one)), width))
      else {
        out.push(...hanging('  ', tidy(changedFor(one)), width))
        for (const line of one.lines) out.push(...hanging('  * ', tidy(line), width))
      }
  }
  const score = scoreLines(plan, problem, style)
  if (score.length > 0) heading('plan.score')
  for (const line of score) out.push(...hanging('  ', line, width))
  const notes = notesOf(plan)
  if (notes.length > 0) {
    heading('plan.messages')
    for (const message of notes) out.push(...hanging('  ', tidy(messageLine(message, style)), width))
  }
  heading('plan.cautions')
  for (const key of shortCautions) out.push(...hanging('  ! ', words[key], width))
  return `${out.join('\n')}\n`
}

/** How each dish was brought to its size, and why; batches of one dish that are alike together. */
function sizes(problem: PlanProblem, style: Style): string[] {
  const named = new Map<string, string[]>()
  for (const dish of problem.dishes)
    for (const line of sizedLines(dish, style)) {
      const name = withoutBatch(dishTitle(problem, dish.id))
      const names = named.get(line) ?? []
      if (!names.includes(name)) names.push(name)
      named.set(line, names)
    }
  return [...named].map(([line, names]) => `${names.join(', ')}: ${line}`)
}

/** A sentence of what is believed; a dish the log calls by its file gets its name. */
export function believedLine(line: string, problem: PlanProblem, style: Style): string {
  return inWords(line, style).replace(/^([a-z0-9-]+)(?=: )/, (id) => {
    const dish = problem.dishes.find((other) => other.id === id || other.file.endsWith(`/${id}.md`) || other.file === `${id}.md`)
    return dish ? dishTitle(problem, dish.id) : id
  })
}

/** Changes of a new plan that have one reason, and what they are, a line for each dish. */
export interface Changed {
  readonly why: string
  readonly lines: readonly string[]
}

/** What a new plan changes, by its reasons: most often there is one for all. */
export function changed(plan: Plan, problem: PlanProblem, style: Style): Changed[] {
  const groups = new Map<string, Map<string | null, string[]>>()
  for (const change of plan.changes ?? []) {
    const {what, why} = changeWords(change, problem, style)
    const reason = change.dish === null ? why : reasonAlone(change.dish, why, problem)
    const dishes = groups.get(reason) ?? new Map<string | null, string[]>()
    dishes.set(change.dish, [...(dishes.get(change.dish) ?? []), what])
    groups.set(reason, dishes)
  }
  return [...groups].map(([why, dishes]) => ({
    why,
    lines: [...dishes].map(([dish, whats]) =>
      dish === null ? whats.join('; ') : `${dishTitle(problem, dish)}: ${whats.join('; ')}`,
    ),
  }))
}

const upperFirst = (text: string): string => `${text.charAt(0).toLocaleUpperCase()}${text.slice(1)}`

/** The reason of several changes, over them. */
export function changedFor({why}: Changed): string {
  return `${upperFirst(why)}:`
}

/** The only change that has its reason. */
export function onlyChange({why, lines}: Changed): string {
  return `${lines[0]!} (${why})`
}

/** The plan as Markdown, with a box to tick at every step and the terminal's chart as a code block. */
export function planMarkdown(view: PlanView, options: PlanTextOptions = {}): string {
  const style = options.style ?? plainStyle
  const {plan, problem} = view
  const {words} = style
  const md = (text: string): string => markdownText(tidy(text))
  const head = planHead(view, style)
  const blocks = [`# ${md(head.title)}`, ...head.alerts.map((alert) => `**${md(alert)}**`), ...head.lines.map(md)]
  if (plan.unplaced.length > 0) {
    blocks.push(`## ${words['plan.unplaced']}`)
    for (const {title, reason, rule, remedies} of unplacedLines(plan, problem, style)) {
      blocks.push(`**${md(title)}**: ${md(reason)} ${md(say(words, 'plan.rule', {rule}))}`)
      if (remedies.length > 0) blocks.push(words['plan.remedies'], remedies.map((remedy) => `- ${md(remedy)}`).join('\n'))
    }
    blocks.push(standsLine(plan, problem, style))
  }
  const late = lateLines(plan, problem, style)
  if (late.length > 0)
    blocks.push(`## ${words['plan.lateDishes']}`, late.map((one) => `- **${md(one.title)}**: ${md(one.say)}`).join('\n'))
  const ways = waysTold(plan, problem, style)
  if (ways) {
    blocks.push(ways.lead)
    if (ways.lines.length > 0) blocks.push(ways.lines.map((way) => `- ${md(way)}`).join('\n'))
  }
  const groups = stepGroups(plan, problem, style)
  if (groups.length > 0) {
    blocks.push(`## ${words['plan.day']}`)
    const wordsOf = wordsInTurn(problem, style)
    for (const {lead, steps} of groups) {
      if (lead) blocks.push(md(lead))
      blocks.push(
        steps
          .map((step) => {
            const said = wordsOf(step)
            const notes = [
              step.celsius ? say(words, 'step.heat', {temperature: temperatures(step.celsius, style)}) : '',
              said.sign ? say(words, 'step.sign', {sign: said.sign}) : '',
              said.ifAhead ?? '',
              said.ifBehind ?? '',
            ].filter(Boolean)
            return [`- [ ] **${md(stepClock(step, style))}** ${md(said.say)}`, ...notes.map((note) => `  - ${md(note)}`)].join(
              '\n',
            )
          })
          .join('\n'),
      )
    }
  }
  if (plan.loads.length > 0) {
    blocks.push(`## ${words['plan.loads']}`)
    const dishes = numbered(plan, problem)
    for (const load of plan.loads) {
      blocks.push(`### ${md(say(words, 'plan.load', {number: load.number, time: clock(setInAt(load, problem), style)}))}`)
      blocks.push(
        markdownTable(
          (['col.number', 'col.dish', 'col.count', 'col.where', 'col.heatIn', 'col.draw', 'col.heatOut'] as const).map(
            (key) => words[key],
          ),
          dishes
            .filter((dish) => dish.load === load.number)
            .map((dish) => [
              String(dish.number),
              md(dish.title),
              md(countOf(dish, style)),
              zoneWord(dish.zone, style),
              temperatures(dish.celsiusIn, style),
              md(drawBetween(dish, style)),
              temperatures(dish.celsiusOut, style),
            ]),
        ),
      )
    }
    blocks.push(`## ${words['plan.heat']}`)
    blocks.push(
      `\`\`\`text\n${heatChartText(plan.forecast, {...chartData(plan, problem, view.readings), style}).trimEnd()}\n\`\`\``,
    )
  }
  const balance = balanceLines(plan, style)
  if (balance.length > 0) blocks.push(`## ${words['plan.balance']}`, balance.map((line) => `- ${md(line)}`).join('\n'))
  const suggested = suggestionsOf(plan, problem, style)
  if (suggested) {
    blocks.push(`## ${words['plan.suggestions']}`)
    if (suggested.lines.length > 0) blocks.push(suggested.lines.map((line) => `- ${md(line)}`).join('\n'))
    blocks.push(suggested.note)
  }
  const sized = sizes(problem, style)
  if (sized.length > 0) blocks.push(`## ${words['plan.sized']}`, sized.map((line) => `- ${md(line)}`).join('\n'))
  if (view.believed && view.believed.length > 0)
    blocks.push(
      `## ${words['plan.believed']}`,
      view.believed.map((line) => `- ${md(believedLine(line, problem, style))}`).join('\n'),
    )
  if (plan.changes && plan.changes.length > 0)
    blocks.push(
      `## ${words['plan.changes']}`,
      ...changed(plan, problem, style).flatMap((one) =>
        one.lines.length === 1
          ? [`- ${md(onlyChange(one))}`]
          : [md(changedFor(one)), one.lines.map((line) => `- ${md(line)}`).join('\n')],
      ),
    )
  const score = scoreLines(plan, problem, style)
  if (score.length > 0) blocks.push(`## ${words['plan.score']}`, score.map((line) => `- ${md(line)}`).join('\n'))
  const notes = notesOf(plan)
  if (notes.length > 0)
    blocks.push(`## ${words['plan.messages']}`, notes.map((message) => `- ${md(messageLine(message, style))}`).join('\n'))
  blocks.push(`## ${words['plan.cautions']}`, shortCautions.map((key) => `- ${words[key]}`).join('\n'))
  return `${blocks.join('\n\n')}\n`
}

/** The likely draw with its range in words; the day is named once where all three are of one day. */
export function drawBetween(dish: Numbered, style: Style): string {
  const {low, likely, high} = dish.draw
  const oneDay = [low, high].every((time) => dayOf(time) === dayOf(likely))
  const time = clock(likely, style)
  const [from, to] = oneDay ? [timeOfDay(low, style), timeOfDay(high, style)] : [clock(low, style), clock(high, style)]
  return from === to ? time : say(style.words, 'plan.between', {time, low: from, high: to})
}

/** A reason without the dish's title before it, which stands before it anyway: “12 of 24: more than …” of “12 of 24 of Scones: more than …”. */
export function reasonAlone(dish: string, reason: string, problem: PlanProblem): string {
  const titles = [dishTitle(problem, dish), problem.dishes.find(({id}) => id === dish)?.title ?? dish]
  for (const title of titles) {
    if (reason.startsWith(`${title}: `)) return reason.slice(title.length + 2)
    const at = reason.indexOf(` ${title}: `)
    const some = at < 0 ? null : /^(\d+ \p{L}+ \d+)(?: \p{L}+)?$/u.exec(reason.slice(0, at))
    if (some !== null) return `${some[1]}${reason.slice(at + title.length + 1)}`
  }
  return reason
}
