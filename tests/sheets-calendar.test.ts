import ICAL from 'ical.js'
import {describe, expect, it} from 'vitest'
import {calendar} from '../src/sheets/calendar.js'
import {plainStyle} from '../src/sheets/style.js'
import {plan, problem} from './fixtures-sheets.js'

/** Read back with ical.js, which shares no code with the library that wrote it. */
const read = (text: string): ICAL.Event[] =>
  new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((event) => new ICAL.Event(event))

describe('the calendar', () => {
  const text = calendar(plan, problem, plainStyle)
  const events = read(text)

  it('has an event for every step, at the time of the plan in the zone of the day', () => {
    expect(events.length).toBe(plan.steps.length)
    plan.steps.forEach((step, i) => {
      // 19 June 2027 in Europe/London is UTC+1 (IANA time zone database).
      const wanted = Date.UTC(2027, 5, 19) + (step.at - 60) * 60_000
      expect(events[i]!.startDate.toJSDate().getTime(), step.say).toBe(wanted)
      expect(events[i]!.summary).toContain(step.say)
    })
  })

  it('wakes the cook for fire, rake, load and draw, ten minutes before each load', () => {
    for (const action of ['light', 'rake', 'load', 'draw'] as const) {
      const at = plan.steps.findIndex((step) => step.action === action)
      const alarms = events[at]!.component.getAllSubcomponents('valarm')
      expect(alarms.length, action).toBeGreaterThan(0)
      for (const alarm of alarms) expect(alarm.getFirstPropertyValue('action')).toBe('DISPLAY')
    }
    const load = plan.steps.findIndex((step) => step.action === 'load')
    const triggers = events[load]!.component.getAllSubcomponents('valarm').map((alarm) =>
      String(alarm.getFirstPropertyValue('trigger')),
    )
    expect(triggers).toContain('-PT10M')
  })

  it('gives the same bytes for the same plan, and the same ids for a later time', () => {
    expect(calendar(plan, problem, plainStyle)).toBe(text)
    const later = read(calendar({...plan, steps: plan.steps.map((step) => ({...step, at: step.at + 30}))}, problem, plainStyle))
    expect(later.map((event) => event.uid)).toEqual(events.map((event) => event.uid))
    expect(new Set(events.map((event) => event.uid)).size).toBe(events.length)
  })

  it('floats where the day states no zone', () => {
    const floating = calendar(plan, {...problem, day: {...problem.day, zone: null}}, plainStyle)
    expect(floating).toContain('DTSTART:20270619T052000\r\n')
    expect(floating).not.toMatch(/DTSTART:\d+T\d+Z/)
  })

  it('keeps to the form of RFC 5545: CRLF, lines of at most 75 octets, a stamp on every event', () => {
    for (const line of text.split('\r\n')) expect(new TextEncoder().encode(line).length, line).toBeLessThanOrEqual(75)
    expect(text.replaceAll('\r\n', '')).not.toContain('\n')
    expect(text.match(/DTSTAMP:20270619T000000Z/g)?.length).toBe(events.length)
  })
})
