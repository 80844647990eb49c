import {ICalAlarmType, ICalCalendar} from 'ical-generator'
import {Temporal} from 'temporal-polyfill'
import type {Plan, PlanProblem, Step} from '../plan/types.js'
import {temperatures} from './figures.js'
import {concerned, numbered} from './heat-data.js'
import {slug} from './page.js'
import {stepWords} from './phrases.js'
import type {Style} from './style.js'
import {say} from './words/index.js'

/** Minutes before each kind of step that the alarm rings; steps not named have none. */
export const alarms: Readonly<Partial<Record<Step['action'], readonly number[]>>> = {
  'evening before': [0],
  sponge: [0],
  mix: [0],
  light: [15, 0],
  rake: [5, 0],
  test: [0],
  load: [10, 0],
  draw: [10, 0],
}

/**
 * The day as iCalendar (RFC 5545), an event a step, with alarms for fire, rake, load and draw. Ids come from the date, the action and
 * its dishes, and the stamp from the date, so that the same plan gives the same bytes and a new plan moves the old events. With a time
 * zone the times are in UTC; without one they float, as RFC 5545 §3.3.5 calls a time without a zone.
 */
export function calendar(plan: Plan, problem: PlanProblem, style: Style): string {
  const {day} = problem
  const dishes = numbered(plan, problem)
  const midnight = Temporal.PlainDateTime.from(`${day.date}T00:00:00`)
  const stamp = Temporal.Instant.from(`${day.date}T00:00:00Z`)
  const cal = new ICalCalendar({
    name: day.title,
    prodId: {company: 'Hearthfall', product: 'bake day', language: style.words['language.code'].toUpperCase()},
  })
  const seen = new Map<string, number>()
  for (const step of plan.steps) {
    const base = [step.action, ...step.dishes].map(slug).join('-').slice(0, 120)
    const count = (seen.get(base) ?? 0) + 1
    seen.set(base, count)
    const untimed = step.untimed === true
    const local = midnight.add({minutes: Math.round(step.at)})
    // At no hour: a whole day, whose end is the next (RFC 5545 §3.6.1); noon in UTC is that date everywhere it is written.
    const from = untimed ? local.with({hour: 12, minute: 0}) : local
    const until = untimed ? from.add({days: 1}) : from.add({minutes: 5})
    const floating = day.zone === null
    const zone = untimed ? 'UTC' : (day.zone ?? 'UTC')
    const at = (time: Temporal.PlainDateTime): Temporal.Instant => time.toZonedDateTime(zone).toInstant()
    const said = stepWords(step, problem, style)
    const named = concerned(step, dishes)
    const description = [
      said.sign ? say(style.words, 'step.sign', {sign: said.sign}) : '',
      step.celsius ? say(style.words, 'step.heat', {temperature: temperatures(step.celsius, style)}) : '',
      said.ifAhead ?? '',
      said.ifBehind ?? '',
    ]
      .filter(Boolean)
      .join('\n')
    const numbers = named.length > 0 ? ` [${named.map(({number}) => number).join(', ')}]` : ''
    const event = cal.createEvent({
      id: `${day.date}-${base}${count > 1 ? `-${count}` : ''}@hearthfall.invalid`,
      start: at(from),
      end: at(until),
      allDay: untimed,
      floating,
      stamp,
      summary: `${said.say}${numbers}`,
      ...(description ? {description} : {}),
    })
    if (untimed) continue
    for (const before of alarms[step.action] ?? [])
      event.createAlarm({type: ICalAlarmType.display, triggerBefore: before * 60, description: said.say})
  }
  return `${cal.toString().replace(/\r?\n/g, '\r\n').trimEnd()}\r\n`
}
