import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {elapsedMinutes, readLog} from '../src/oven/log.js'
import {appendToLog} from '../src/oven/log-append.js'
import {type LogEntry, notesIn, parseNote} from '../src/oven/note.js'
import {clockText} from '../src/oven/note-clock.js'
import {readOven} from '../src/oven/read.js'
import {messageWords} from '../src/sheets/said.js'
import {styleOf} from '../src/sheets/style-of.js'
import {smallDay} from './page-day.js'

const log = `---
date: 2027-06-12
lit: 6:10 am   # by Ann
raked: 8:15 am
wood: 22 kg
---

Some words of mine.

| time | reading | value | note |
| --- | --- | --- | --- |
| 8:40 am | floor | 310 °C | |
| 9:05 am | arm | 18 | |
| 9:10 am | door | open 4 min | |
| 12:30 pm | household-bread | drawn 10 min late | pale |
| 1 pm | pies | drawn 5 min early | |
| next day 6 am | vault | 120 °C | |

Words below the table.
`
const now = {date: '2027-06-13', minutes: 600}
const row = (text: string): LogEntry => {
  const parsed = parseNote(text, {date: '2027-06-12', now})
  if (!parsed.ok) throw new Error(parsed.reason)
  return parsed.entry
}

describe('reading a log', () => {
  it('gives readings against minutes from lighting, doors, and what was drawn early or late', () => {
    const {log: read, messages} = readLog(log, 'l.md', {now})
    expect(messages).toEqual([])
    expect(read).toMatchObject({date: '2027-06-12', lit: 370, raked: 495, wood: 22})
    expect(read!.readings.map((r) => [r.minutes, r.kind, r.value])).toEqual([
      [150, 'floor', 310],
      [175, 'arm', 18],
      [1430, 'vault', 120],
    ])
    expect(read!.doors).toEqual([{minutes: 180, kind: 'door', open: 4}])
    expect(read!.rows.filter((r) => r.what === 'drawn').map((r) => [r.dish, r.off])).toEqual([
      ['household-bread', 10],
      ['pies', -5],
    ])
  })

  it.each([
    ['drawn 10 min too late', 10],
    ['drawn half an hour late', 30],
    ['drawn a quarter of an hour early', -15],
    ['drawn an hour and a half late', 90],
    ['drawn about 10 min early', -10],
    ['drawn, 1 h later', 60],
    ['taken out some 5 min   over', 5],
    ['out 15 min under', -15],
    ['drawn late', undefined],
    ['drawn', undefined],
    ['drawn 10 min', undefined],
  ])('reads “%s” as %s min off', (said, off) => {
    const text = `---\ndate: 2027-06-12\nlit: 6:10 am\n---\n\n| time | reading | value |\n| --- | --- | --- |\n| noon | pies | ${said} |\n`
    expect(readLog(text, 'log.md').log!.rows[0]).toMatchObject({what: 'drawn', dish: 'pies'})
    expect(readLog(text, 'log.md').log!.rows[0]!.off).toBe(off)
  })

  it.each([
    ['set in 2', '', {what: 'set in', count: 2}],
    ['2 set in', '', {what: 'set in', count: 2}],
    ['set in, 2 of 3', '', {what: 'set in', count: 2}],
    ['two of the three set in', '', {what: 'set in', count: 2}],
    ['set in', '2 of 3', {what: 'set in', count: 2}],
    ['set in 3 of 4, 1 dropped', '', {what: 'set in', count: 3, lost: 1}],
    ['set in 0 of 3', '', {what: 'set in', count: 0}],
    ['not done yet', '', {what: 'not drawn'}],
    ['2 of 8 not drawn', '', {what: 'not drawn', count: 2}],
    ['2 of 8 not done', '', {what: 'not drawn', count: 2}],
    ['still in', 'pale', {what: 'not drawn'}],
    ['needs 15 min more', '', {what: 'not drawn'}],
    ['needs about 10 more minutes in the oven', '', {what: 'not drawn'}],
    ['braucht noch eine Viertelstunde', '', {what: 'not drawn'}],
    ['noch nicht fertig', '', {what: 'not drawn'}],
    ['bleibt drin', '', {what: 'not drawn'}],
    ['not done', 'drawn all the same', {what: 'drawn'}],
    ['not done but taken out', '', {what: 'drawn'}],
    ['needs a scale', '', {what: 'note'}],
    ['drawn 4', '', {what: 'drawn', count: 4}],
    ['4 pies drawn', '', {what: 'drawn', count: 4}],
    ['drawn 2 of 6 10 min late', '', {what: 'drawn', count: 2, off: 10}],
    ['drawn 4 pies, 5 min early', '', {what: 'drawn', count: 4, off: -5}],
    ['drawn', '1 dropped', {what: 'drawn', lost: 1}],
    ['drawn', 'one pie was burnt', {what: 'drawn', lost: 1}],
    ['1 dropped', '', {what: 'lost', lost: 1}],
    // Numbers that count nothing, and vessels that are not lost.
    ['drawn 10 min late', '5 stars', {what: 'drawn', off: 10}],
    ['drawn 1 1/2 h late', '', {what: 'drawn', off: 90}],
    ['drawn 2 and a half hours late', '', {what: 'drawn', off: 150}],
    ['drawn 5 late', '', {what: 'drawn'}],
    ['drawn 2:15 pm', '2 pale', {what: 'drawn'}],
    ['set in 2 pm', '2 kg of dough', {what: 'set in'}],
    ['drawn, 2 slightly burnt', '2 burnt at the edge', {what: 'drawn'}],
    ['drawn 5 min lost', '', {what: 'drawn'}],
    ['2 burnt at the edge', '', {what: 'note'}],
  ])('reads “%s”, “%s” with its numbers of vessels', (value, note, wanted) => {
    const text = `---\ndate: 2027-06-12\nlit: 6:10 am\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n| noon | pies | ${value} | ${note} |\n`
    const {what, count, lost, off} = readLog(text, 'log.md').log!.rows[0]!
    const read = {what, count, lost, off}
    expect(Object.fromEntries(Object.entries(read).filter(([, v]) => v !== undefined))).toEqual(wanted)
  })

  it.each([
    ['burnt', '', {what: 'lost', lost: 1000, whole: true}],
    ['all burnt', '', {what: 'lost', lost: 1000, whole: true}],
    ['was ruined', 'forgotten', {what: 'lost', lost: 1000, whole: true}],
    ['drawn', 'all burnt', {what: 'drawn', lost: 1000, whole: true}],
    ['drawn 4', 'all burnt', {what: 'drawn', lost: 4, whole: true}],
    ['3 burnt', '', {what: 'lost', lost: 3}],
    ['burnt at the edge', '', {what: 'note'}],
    ['slightly burnt', '', {what: 'note'}],
    ['not burnt', '', {what: 'note'}],
    ['drawn', 'burnt a little', {what: 'drawn'}],
    ['drawn, burnt', '', {what: 'drawn', lost: 1000, whole: true}],
    ['drawn burnt', '', {what: 'drawn', lost: 1000, whole: true}],
    ['drawn, black', '', {what: 'drawn', lost: 1000, whole: true}],
    ['drawn', 'burnt, thrown away', {what: 'drawn', lost: 1000, whole: true}],
    ['drawn late and burnt', '', {what: 'drawn', lost: 1000, whole: true}],
    ['drawn, 10 min late, burnt', '', {what: 'drawn', lost: 1000, whole: true, off: 10}],
    ['drawn 4 pies (burnt)', '', {what: 'drawn', lost: 4, whole: true}],
    ['drawn, burnt 3', '', {what: 'drawn', lost: 3}],
    ['burnt 3', '', {what: 'lost', lost: 3}],
    ['drawn', '2 of them thrown away', {what: 'drawn', lost: 2}],
    ['thrown away', '', {what: 'lost', lost: 1000, whole: true}],
    ['burnt to a cinder', '', {what: 'lost', lost: 1000, whole: true}],
    ['set in', 'black', {what: 'set in'}],
    ['drawn brown, not black', '', {what: 'drawn'}],
    ['drawn, edges black', 'bottom burnt', {what: 'drawn'}],
    ['drawn, black on top', 'nearly burnt', {what: 'drawn'}],
    ['drawn', 'slightly burnt 2', {what: 'drawn'}],
  ])('reads “%s”, “%s” as a loss of all or of some', (value, note, wanted) => {
    const text = `---\ndate: 2027-06-12\nlit: 6:10 am\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n| noon | pies | ${value} | ${note} |\n`
    const {what, lost, whole, off} = readLog(text, 'log.md').log!.rows[0]!
    expect(Object.fromEntries(Object.entries({what, lost, whole, off}).filter(([, v]) => v !== undefined))).toEqual(wanted)
  })

  it('takes from the rows before how many that were', () => {
    const text =
      '---\ndate: 2027-06-12\nlit: 6:10 am\n---\n\n| time | reading | value |\n| --- | --- | --- |\n| noon | pies | set in 6 |\n| 12:30 pm | pies | drawn 2 |\n| 1 pm | pies | burnt |\n'
    expect(readLog(text, 'log.md').log!.rows[2]).toMatchObject({what: 'lost', lost: 4, whole: true})
  })

  it.each([
    ['gingerbread burnt', 'gingerbread', 'burnt'],
    ['3 gingerbread burnt', 'gingerbread', '3 burnt'],
    ['three gingerbread were burnt', 'gingerbread', 'three burnt'],
    ['gingerbread 3 burnt', 'gingerbread', '3 burnt'],
    ['whole batch of gingerbread burnt', 'gingerbread', 'burnt'],
    ['burnt the gingerbread', 'gingerbread', 'burnt'],
    ['gingerbread burnt 3', 'gingerbread', 'burnt 3'],
    ['gingerbread drawn burnt', 'gingerbread', 'drawn burnt'],
    ['gingerbread black', 'gingerbread', 'black'],
    ['gingerbread thrown out', 'gingerbread', 'thrown out'],
    ['threw away 2 mutton pies', 'mutton-pies', '2 threw away'],
    ['black gingerbread', 'note', 'black gingerbread'],
    ['the top of gingerbread black', 'note', 'the top of gingerbread black'],
    ['2 mutton pies dropped', 'mutton-pies', '2 dropped'],
    ['dropped 2 mutton pies', 'mutton-pies', '2 dropped'],
    ['3 mutton pies set in', 'mutton-pies', '3 set in'],
    ['gingerbread burnt at the edge', 'note', 'gingerbread burnt at the edge'],
    ['gingerbread not burnt', 'note', 'gingerbread not burnt'],
    ['my hand burnt', 'note', 'my hand burnt'],
  ])('notes “%s” of a dish of the day, with a time and without', (words, reading, value) => {
    const options = {date: '2027-06-12', now: {date: '2027-06-12', minutes: 900}, dishes: ['gingerbread', 'mutton-pies']}
    for (const text of [words, `2 pm ${words}`]) {
      const read = parseNote(text, options)
      expect(read.ok && read.entry, text).toMatchObject({what: 'row', at: text === words ? 900 : 840, reading, value})
    }
  })

  it.each([
    ['mutton pies 4 set in', 'mutton-pies', '4 set in', ''],
    ['mutton-pies set in 4', 'mutton-pies', 'set in 4', ''],
    ['apple pies: 2 drawn', 'apple-pies', '2 drawn', ''],
    ['apple pies: 2 of 6 drawn', 'apple-pies', '2 of 6 drawn', ''],
    ['apple pies: 1 dropped', 'apple-pies', '1 dropped', ''],
    ['bread drawn 10 min late, 1 dropped', 'bread', 'drawn 10 min late', '1 dropped'],
    ['I have one burnt finger', 'note', 'I have one burnt finger', ''],
    ['2 loaves dropped', 'note', '2 loaves dropped', ''],
  ])('notes “%s” with its numbers of vessels', (words, reading, value, note) => {
    expect(row(`2 pm ${words}`)).toMatchObject({reading, value, note})
  })

  it('counts true minutes when the clocks change in the night', () => {
    // Europe/London: forward on 28 March 2027, back on 31 October 2027 (IANA tz database).
    const tenPm = 22 * 60
    const sixAm = 30 * 60
    expect(elapsedMinutes('2027-03-27', tenPm, sixAm, 'Europe/London')).toBe(7 * 60)
    expect(elapsedMinutes('2027-10-30', tenPm, sixAm, 'Europe/London')).toBe(9 * 60)
    expect(elapsedMinutes('2027-10-30', tenPm, sixAm, 'Asia/Tokyo')).toBe(8 * 60)
    expect(elapsedMinutes('2027-10-30', tenPm, sixAm, null)).toBe(8 * 60)
    const autumn = log.replace('2027-06-12', '2027-10-30')
    const zoned = readLog(autumn, 'l.md', {zone: 'Europe/London'}).log!
    expect(zoned.readings.at(-1)!.minutes).toBe(1430 + 60)
  })

  it('takes a time below a later one as the next day’s and says so', () => {
    const late = log.replace('| next day 6 am |', '| 12:30 am |')
    const {log: read, messages} = readLog(late, 'l.md')
    expect(read!.rows.at(-1)!.at).toBe(1440 + 30)
    expect(messages).toMatchObject([{rule: 'log-midnight', severity: 'info', line: 17, column: 3}])
  })

  it('warns where the next day is more than half a day on: the rows are rather out of order', () => {
    const turned = log.replace('| next day 6 am |', '| 8:50 am |')
    expect(readLog(turned, 'l.md').messages).toMatchObject([{rule: 'log-midnight', severity: 'warning', line: 17}])
  })

  it('a fire lit in the evening and raked after midnight is one firing', () => {
    const night = log
      .replace('6:10 am', '10:30 pm')
      .replace('8:15 am', '12:45 am')
      .replace('| 8:40 am |', '| 1:15 am |')
      .replace('| 9:05 am |', '| 2 am |')
    const {log: read} = readLog(night, 'l.md')
    expect([read!.lit, read!.raked]).toEqual([1350, 1485])
    expect(read!.readings.slice(0, 2).map((r) => r.minutes)).toEqual([165, 210])
  })

  it.each([
    ['a time that is none', '9:05 am', 'nine-ish', 'log-time'],
    ['a time without am or pm', '9:05 am', '9', 'log-time'],
    ['4000 °C', '310 °C', '4000 °C', 'log-reading'],
    ['a temperature without scale', '310 °C', '310', 'log-reading'],
    ['a count of nothing', '| 18 |', '| many |', 'log-reading'],
    ['°F that may be °C', '310 °C', '640 °C', 'log-scale'],
  ])('reports %s at its line and keeps reading', (_name, from, to, rule) => {
    const {log: read, messages} = readLog(log.replace(from, to), 'l.md')
    expect(messages[0]).toMatchObject({rule, file: 'l.md'})
    expect(messages[0]!.suggest).toBeTruthy()
    expect([12, 13]).toContain(messages[0]!.line)
    expect(read!.rows.length).toBeGreaterThanOrEqual(5)
  })

  it('refuses a reading in the future, and carries it as a note', () => {
    const {log: read, messages} = readLog(log, 'l.md', {now: {date: '2027-06-12', minutes: 545}})
    expect(messages.map((m) => m.rule)).toEqual(['log-future', 'log-future', 'log-future', 'log-future'])
    expect(read!.readings.length).toBe(2)
    expect(read!.rows.length).toBe(6)
  })

  it('refuses coals raked before the fire was lit, and front matter it does not know', () => {
    expect(readLog(log.replace('8:15 am', '5:50 am'), 'l.md').messages[0]).toMatchObject({
      rule: 'log-order',
      severity: 'error',
      line: 4,
    })
    expect(readLog(log.replace('wood:', 'wod:'), 'l.md').messages[0]).toMatchObject({
      rule: 'key-unknown',
      suggest: 'write “wood”',
    })
    expect(readLog('| time |', 'l.md').messages[0]!.rule).toBe('log-front-matter')
  })
})

describe('a line of the log that stands in no table', () => {
  const head = '---\ndate: 2027-06-19\nlit: 6 am\n---\n\n'
  const told = (text: string) =>
    readLog(`${head}${text}\n`, 'firings/x.md').messages.map(({line, column, rule, severity}) => [line, column, rule, severity])
  it('is named where it begins with a time, as an entry does', () => {
    expect(told('- 9:40 am bread set in\n- 10:20 am floor 210 C')).toEqual([
      [6, 3, 'log-line', 'warning'],
      [7, 3, 'log-line', 'warning'],
    ])
    expect(told('Dry weather.\n9:40 bread set in')).toEqual([[7, 1, 'log-line', 'warning']])
  })
  it('is left alone where it tells of something else', () => {
    for (const text of [
      'Dry weather, and no fire for seven weeks.',
      '- 12 loaves for the school',
      '9:40 am',
      '3 firings before this',
      'Hester came at 9:40 am',
    ])
      expect(told(text), text).toEqual([])
  })
})

describe('a table of the log that lacks a column', () => {
  const head = '---\ndate: 2027-06-12\nlit: 6 am\nraked: 8 am\n---\n\n'
  const of = (table: string) => readLog(`${head}${table}`, 'l.md')
  it('is told, and one of something else is not', () => {
    expect(of('| time | vault |\n| --- | --- |\n| 9 am | 300 °C |\n').messages).toMatchObject([
      {line: 7, column: 3, severity: 'warning', rule: 'log-table', reason: expect.stringContaining('“reading” and “value”')},
    ])
    expect(of('| wood | price |\n| --- | --- |\n| oak | 4 |\n').messages).toEqual([])
  })
  it('whatever its heads are, where its rows tell of a time', () => {
    expect(of('| a | b | c |\n| --- | --- | --- |\n| 9 am | vault | 300 °C |\n').messages).toMatchObject([{rule: 'log-table'}])
    expect(of('| what | note |\n| --- | --- |\n| vault | hot |\n').messages).toMatchObject([{rule: 'log-table'}])
    const {reason} = of('| when | what | seen |\n| --- | --- | --- |\n| 9 am | vault | 300 °C |\n').messages[0]!
    expect(reason).toContain('no column “value”,')
    expect(messageWords({severity: 'warning', reason}, styleOf({language: 'de'})).foreign).toBe(false)
  })
  // Heads as cooks write them: common practice, no source.
  it.each([
    'when | what | how much',
    'Time of day | Reading | Value',
    'clock | where | temperature (°C)',
    'Uhrzeit | was | wie viel',
    'when | what | what it showed',
  ])('is read under “%s”', (heads) => {
    const {log, messages} = of(
      `| ${heads} |\n| --- | --- | --- |\n| 9 am | floor | 300 °C |\n| 9:10 am | household-bread | set in |\n`,
    )
    expect(messages).toEqual([])
    expect(log!.rows.map(({what}) => what)).toEqual(['reading', 'set in'])
    const entry = row('9:30 am vault 280 °C')
    const added = appendToLog(`${head}| ${heads} |\n| --- | --- | --- |\n| 9 am | floor | 300 °C |\n`, entry, {
      date: '2027-06-12',
    })
    expect(added.ok && added.source).toMatch(/\| 9:30 am \| vault \| 280 °C \|\n$/)
  })
})

describe('what no firing can have been', () => {
  const oven = readOven(smallDay.get('oven.md')!, 'oven.md').oven!
  const told = (front: string, file = 'l.md') =>
    readLog(`---\ndate: 2027-06-12\n${front}\n---\n`, file, {oven}).messages.map(({line, column, severity, rule}) => [
      line,
      column,
      severity,
      rule,
    ])
  it.each([
    ['no wood', 'lit: 8 am\nraked: 9:45 am\nwood: 0 lb', 5, 'log-wood'],
    ['less than none', 'lit: 8 am\nraked: 9:45 am\nwood: 0 kg', 5, 'log-wood'],
    ['a hundred times what burns', 'lit: 8 am\nraked: 9:45 am\nwood: 6600 lb', 5, 'log-wood'],
    ['that, of a fire whose raking nobody noted', 'lit: 8 am\nwood: 6600 lb', 4, 'log-wood'],
    ['raked before it was lit', 'lit: noon\nraked: 9:45 am', 4, 'log-order'],
    ['raked most of a day on', 'lit: 8:35 pm\nraked: 10:05 am', 4, 'log-order'],
    ['pm written for am', 'lit: 8:35 am\nraked: 10:05 pm', 4, 'log-order'],
  ])('%s is an error where it stands', (_name, front, line, rule) => {
    expect(told(front)).toEqual([[line, front.split('\n').at(-1)!.indexOf(' ') + 2, 'error', rule]])
  })
  it('an hour beyond the day is no time', () => {
    const {messages} = readLog('---\ndate: 2027-06-12\nlit: 24:30\nraked: 9:45 am\n---\n', 'l.md')
    expect(messages).toMatchObject([{line: 3, severity: 'error', suggest: 'write “0:30”, or “tomorrow 0:30” if that is meant'}])
  })
  it('but a long fire, a hungry one, and one lit in the evening before are', () => {
    for (const front of [
      'lit: 4 am\nraked: 2 pm\nwood: 90 kg',
      'lit: 8 am\nraked: 10 am\nwood: 60 kg',
      'lit: evening before 11 pm\nraked: 2 am',
      'lit: 10:30 pm\nraked: 12:45 am',
      'lit: midnight\nraked: 2 am',
    ])
      expect(told(front), front).toEqual([])
  })
  it('something set in beside the coals is asked about', () => {
    const of = (at: string) =>
      readLog(
        `---\ndate: 2027-06-12\nlit: 8:35 am\nraked: 11 am\n---\n\n| time | reading | value |\n| --- | --- | --- |\n| ${at} | bread | set in |\n`,
        'l.md',
      ).messages
    expect(of('10:50 am')).toMatchObject([{line: 9, column: 3, severity: 'warning', rule: 'log-order'}])
    expect(of('11:05 am')).toEqual([])
  })
  it('nor is a log of another day than its name has', () => {
    expect(told('lit: 8 am', 'firings/2027-06-13.md')).toEqual([[2, 7, 'error', 'log-date']])
    expect(told('lit: 8 am', 'firings/2027-06-12.md')).toEqual([])
  })
})

describe('noting', () => {
  it.each([
    ['2:15 pm arm 18', {time: '2:15 pm', reading: 'arm', value: '18'}],
    ['9 am floor 300 °C, at the back', {time: '9 am', reading: 'floor', value: '300 °C', note: 'at the back'}],
    ['14:15 vault 480F', {time: '14:15', reading: 'vault', value: '480F'}],
    ['next day 6 am vault 120 °C', {time: 'next day 6 am', at: 1800, reading: 'vault'}],
    ['flour blackens at once', {time: 'next day 10:00 am', reading: 'flour', value: 'blackens at once'}],
    ['12:30 pm household bread drawn 10 min late', {reading: 'household-bread', value: 'drawn 10 min late'}],
    ['9 am pies: set in, 6 of them, at the back', {reading: 'pies', value: 'set in', note: '6 of them, at the back'}],
    ['9 am floor 310 °C – in the middle', {reading: 'floor', value: '310 °C', note: 'in the middle'}],
    ['9 am floor 310 °C ; swabbed', {reading: 'floor', value: '310 °C', note: 'swabbed'}],
    ['8 am door open 4 min', {reading: 'door', value: 'open 4 min'}],
    ['9 am pies not set in', {reading: 'note', value: 'pies not set in'}],
    ['9 am the pies have not been set in yet, too hot', {reading: 'note', value: 'the pies have not been set in yet, too hot'}],
    ['9 am the beans weren’t drawn', {reading: 'note', value: 'the beans weren’t drawn'}],
    ['9 am custards set in: not yet', {reading: 'note', value: 'custards set in: not yet'}],
    ['9 am no-knead bread set in', {reading: 'no-knead-bread', value: 'set in'}],
    ['9 am bread drawn not quite done', {reading: 'bread', value: 'drawn not quite done'}],
    ['8 am the wind has turned', {reading: 'note', value: 'the wind has turned'}],
    ['lit 6:10 am', {what: 'field', key: 'lit', value: '6:10 am'}],
    ['8:15 am raked', {what: 'field', key: 'raked', value: '8:15 am'}],
    ['6:40 am household bread mixed', {reading: 'household-bread', value: 'mixed'}],
    ['9:40 am household bread shaped', {reading: 'household-bread', value: 'shaped'}],
    ['9:40 am shaped household bread', {reading: 'note', value: 'shaped household bread'}],
    ['wood 48 lb', {what: 'field', key: 'wood', value: '48 lb'}],
  ])('reads “%s”', (text, expected) => {
    expect(row(text)).toMatchObject(expected)
  })

  it.each([
    ['', 'empty'],
    ['2:15 pm', 'nothing else'],
    ['2 pm floor 4000 °C', '4000'],
    ['2 pm floor 300', 'no scale'],
    ['2 arm 18', 'morning or afternoon'],
    ['next day 11 am arm 18', 'not come yet'],
    ['lit next day 11 am', 'not come yet'],
    ['2 pm arm 900', 'says nothing'],
    ['2 pm walls purple', 'no sign'],
    ['wood many', 'not a weight'],
  ])('refuses “%s” with a reason', (text, reason) => {
    const parsed = parseNote(text, {date: '2027-06-12', now})
    expect(parsed.ok).toBe(false)
    expect(parsed.ok === false && parsed.reason).toContain(reason)
    expect(parsed.ok === false && parsed.suggest).toBeTruthy()
  })

  it('asks about a scale, and keeps what was written', () => {
    const entry = row('9 am floor 640 °C')
    expect(entry).toMatchObject({value: '640 °C', doubt: {suggest: 'if so, write “640 °F”'}})
  })

  it('shows minutes as a clock', () => {
    expect([0, 720, 815, 1800, 2879].map(clockText)).toEqual([
      '12:00 am',
      '12:00 pm',
      '1:35 pm',
      'next day 6:00 am',
      'next day 11:59 pm',
    ])
  })
})

describe('appending', () => {
  const append = (source: string, entry: LogEntry): string => {
    const done = appendToLog(source, entry, {date: '2027-06-12'})
    if (!done.ok) throw new Error(done.reason)
    return done.source
  }

  it('and reads a dough that was mixed as of its dish', () => {
    const after = append('', row('6:40 am household bread dough mixed'))
    const rows = readLog(after, 'l.md').log!.rows.filter((r) => r.what === 'mixed')
    expect(rows.map((r) => [r.dish, r.at])).toEqual([['household-bread', 400]])
    const shaped = readLog(append('', row('9:40 am household bread shaped')), 'l.md').log!.rows
    expect(shaped.map((r) => [r.what, r.dish, r.at])).toEqual([['shaped', 'household-bread', 580]])
  })

  it('and leaves a note the words it is, whatever it begins with', () => {
    for (const text of ['mixed household bread', 'shaped the loaves', 'out of flour', 'in the rain']) {
      const {log: read, messages} = readLog(append('', row(`9:40 am ${text}`)), 'l.md', {dishes: ['household-bread']})
      expect([text, read!.rows.map((r) => [r.what, r.text]), messages]).toEqual([text, [['note', text]], []])
    }
  })

  it('inserts one row below the table and changes no other byte', () => {
    const after = append(log, row('2:15 pm arm 20'))
    expect(after.replace('\n| 2:15 pm | arm | 20 | |', '')).toBe(log)
    expect(readLog(after, 'l.md').log!.rows.length).toBe(7)
    expect(after.endsWith('Words below the table.\n')).toBe(true)
  })

  it('begins a log that is not there, and fills its front matter', () => {
    let text = append('', row('lit 6:10 am'))
    text = append(text, row('9 am arm 12'))
    text = append(text, row('8:15 am raked'))
    expect(text).toBe(
      '---\ndate: 2027-06-12\nlit: 6:10 am\nraked: 8:15 am\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n| 9 am | arm | 12 | |\n',
    )
  })

  it.each([
    ['lit: 6:10 am   # by Ann', true],
    ['lit :\t6:10 am', true],
    ['lit: 6:30 am # by Ann', false],
    ['lit: # nobody knows', false],
    ['unlit: 6:30 am', true],
    ['lit:', true],
  ])('takes “%s” for what it is when the lighting is noted', (line, ok) => {
    const text = `---\ndate: 2027-06-12\n${line}\n---\n`
    expect(appendToLog(text, {what: 'field', key: 'lit', value: '6:10 am'}, {date: '2027-06-12'}).ok).toBe(ok)
  })

  it('does not overwrite what the log says already', () => {
    const done = appendToLog(log, row('wood 30 kg'), {date: '2027-06-12'})
    expect(done).toMatchObject({ok: false, reason: expect.stringContaining('22 kg')})
    expect(done).toMatchObject({suggest: expect.stringContaining('wood again 12 kg')})
    const lit = appendToLog(log, row('12:05 pm lit'), {date: '2027-06-12'})
    expect(lit).toMatchObject({ok: false, suggest: expect.stringContaining('“lit again 12:05 pm”')})
  })

  it('tells of a second fire in rows of its own, beside what it says of the first', () => {
    const notes = ['lit again 12:05 pm', '12:50 pm raked out again', '1 pm wood again 12 kg']
    const source = notes.reduce((text, note) => append(text, row(note)), '---\ndate: 2027-06-12\nlit: 6:10 am\n---\n')
    expect(readLog(source, 'l.md', {now})).toMatchObject({
      log: {lit: 370, raked: null, wood: null, further: [{lit: 725, raked: 770, wood: 12}]},
      messages: [],
    })
  })

  it('takes a slip in what is said of a second fire for words, and says what is to be written', () => {
    const table = (words: string): string =>
      `---\ndate: 2027-06-12\nlit: 6 am\nraked: 8 am\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n| 12 noon | note | ${words} | |\n`
    const told = (words: string): unknown[] => readLog(table(words), 'l.md').messages.map(({rule, suggest}) => [rule, suggest])
    const slips = {
      'fire lit agian': 'lit again',
      'raked out agin': 'raked again',
      'wood agan 12 kg': 'wood again 12 kg',
      'fire agian at 3 pm': 'fire again at 3 pm',
      'light agin at 3 pm for 45 min': 'light again at 3 pm for 45 min',
    }
    for (const [slip, meant] of Object.entries(slips))
      expect(told(slip)).toEqual([['log-reading', `write “${meant}” if that is meant`]])
    for (const words of ['good again', 'wood stack is wet again', 'raining again', 'late again', 'wood rain', 'smoke'])
      expect(told(words)).toEqual([])
    expect(told('fire again at 11 am')).toEqual([['log-reading', expect.stringContaining('fire again at 3:15 pm')]])
    for (const words of ['raked the coals out again', 'raked out again'])
      expect(readLog(table(words).replace('noon |', 'noon | note | lit again | |\n| 12:50 pm |'), 'l.md').log!.further).toEqual([
        {lit: 720, raked: 770, wood: null},
      ])
    // The reading's own column may have some of the words.
    expect(readLog(table('x').replace('note | x', 'fire again | at 3 pm'), 'l.md').log!.rows[0]!.again).toEqual({
      lit: 900,
      burn: null,
    })
    expect(readLog(table('x').replace('note | x', 'raked | out agian'), 'l.md').messages).toMatchObject([{rule: 'log-reading'}])
    expect(readLog(table('lit the fire again'), 'l.md').log!.further).toMatchObject([{lit: 720}])
  })

  it('keeps the file’s own line ends and columns in another order', () => {
    const windows = log.replace(/\n/g, '\r\n')
    const after = append(windows, row('2:15 pm arm 20'))
    expect(after.replace('\r\n| 2:15 pm | arm | 20 | |', '')).toBe(windows)
    const turned = log
      .replace(/\| time \| reading \| value \| note \|/, '| note | time | value | reading |')
      .replace(/^\| \d.*\n/gm, '')
      .replace(/^\| next.*\n/gm, '')
    const other = append(turned, row('2:15 pm arm 20'))
    expect(other).toContain('|  | 2:15 pm | 20 | arm |')
    expect(readLog(other, 'l.md').log!.readings).toEqual([{minutes: 485, kind: 'arm', value: 20}])
  })

  it('loses nothing, whatever stands in the file and whatever is noted', () => {
    const line = fc.oneof(
      fc.string({maxLength: 30}).map((s) => s.replace(/[\r\n]/g, '')),
      fc.constantFrom('| a | b |', '```', '> quote', '- item', '# head', '    code', '| --- | --- |', '<!-- x', ''),
    )
    fc.assert(
      fc.property(
        fc.array(line, {maxLength: 6}),
        fc.array(line, {maxLength: 4}),
        fc.string({maxLength: 40}),
        (above, below, words) => {
          const source = log.replace('Some words of mine.', above.join('\n')).replace('Words below the table.', below.join('\n'))
          const parsed = parseNote(`2:15 pm ${words}`, {date: '2027-06-12', now})
          if (!parsed.ok || parsed.entry.what !== 'row') return
          const after = append(source, parsed.entry)
          // Only an insertion: what stands before and after it is the whole of the old text.
          let i = 0
          while (i < source.length && source[i] === after[i]) i++
          const rest = source.length - i
          expect(after.slice(after.length - rest)).toBe(source.slice(i))
          expect(after.length).toBeGreaterThan(source.length)
          expect(
            after
              .slice(i, after.length - rest)
              .trim()
              .split('\n').length,
          ).toBeLessThanOrEqual(4)
        },
      ),
      {numRuns: 150},
    )
  })
})

describe('the dishes of the day', () => {
  const dishes = ['household-bread', 'rye-and-indian-bread', 'mutton-pies', 'custards']
  const parsed = (text: string) => parseNote(text, {date: '2027-06-12', now, dishes})
  const said = (text: string): string => {
    const read = parsed(text)
    if (!read.ok) return read.reason
    const {entry} = read
    return entry.what === 'field'
      ? `${entry.key} ${entry.value}`
      : [entry.time, entry.reading, entry.value, entry.note, entry.doubt?.reason].filter(Boolean).join(' | ')
  }
  it.each([
    // The time behind what was seen or done.
    ['floor 240 °C at 9:50 am', '9:50 am | floor | 240 °C'],
    ['household bread 2 set in 10:15 am', '10:15 am | household-bread | 2 set in'],
    ['mutton pies out 11:40 am brown on one side', '11:40 am | mutton-pies | drawn | brown on one side'],
    // Short for “set in” and “drawn”.
    ['10:15 am custards in', '10:15 am | custards | set in'],
    ['10:15 am 2 mutton pies out', '10:15 am | mutton-pies | 2 drawn'],
    ['10:15 am drew the custards', '10:15 am | custards | drawn'],
    ['10:15 am custards out, one spilt', '10:15 am | custards | drawn | one spilt'],
    // Names that are none of the day's.
    ['10:15 am hosehold bread set in', '10:15 am | hosehold-bread | set in | “hosehold bread” is no dish of this day'],
    ['2 loaves in at 10.15 am', '10.15 am | loaves | 2 set in | “loaves” is no dish of this day'],
    // One of the day's dishes alone can be meant.
    ['10:15 am pies out', '10:15 am | mutton-pies | drawn'],
    ['10:15 am breads out', '10:15 am | breads | drawn | “breads” is no dish of this day'],
    // Of no dish at all.
    ['10:15 am coals out', '10:15 am | note | coals out'],
    ['10:15 am Tobias comes in at 9:30', '10:15 am | note | Tobias comes in at 9:30'],
    ['25:10 arm 18', '“25:10” is not a time of day'],
  ])('%s', (text, entry) => expect(said(text)).toBe(entry))
  it.each([
    [
      '11:40 am mutton pies, custards and 2 household bread set in',
      ['mutton-pies: set in', 'custards: set in', 'household-bread: 2 set in'],
    ],
    [
      '1 pm the rye and Indian bread and custards drawn 5 min late',
      ['rye-and-indian-bread: drawn 5 min late', 'custards: drawn 5 min late'],
    ],
    [
      '12:10 household bread out, mutton pies and custards in',
      ['household-bread: drawn', 'mutton-pies: set in', 'custards: set in'],
    ],
    ['mutton pies and custards burnt at 1 pm', ['mutton-pies: burnt', 'custards: burnt']],
    ['1 pm drew the mutton pies and the custards', ['mutton-pies: drawn', 'custards: drawn']],
    // One dish, none that was done, and one that is none of the day's.
    ['1 pm rye and Indian bread drawn, brown', ['rye-and-indian-bread: drawn']],
    ['1 pm custards drawn, 2 burnt', ['custards: drawn']],
    ['1 pm custards set in, not the mutton pies', ['custards: set in']],
    ['1 pm custards and mutton pies not set in', ['custards: not set in', 'mutton-pies: not set in']],
    ['1 pm custards and trifle drawn', ['custards-and-trifle: drawn']],
    ['1 pm dropped one loaf of household bread', ['household-bread: one dropped']],
    ['1 pm dropped a loaf of household bread', ['household-bread: 1 dropped']],
    ['1 pm 2 loaves of household bread set in', ['household-bread: 2 set in']],
    ['1 pm both custards set in', ['custards: both set in']],
    ['1 pm beide custards eingeschossen', ['custards: beide set in']],
    ['1 pm 1 of 3 mutton pies set in', ['mutton-pies: 1 of 3 set in']],
    ['1 pm set in 1 of 3 mutton pies', ['mutton-pies: 1 of 3 set in']],
    ['1 pm one of the three mutton pies in', ['mutton-pies: 1 of 3 set in']],
    ['1 pm 2 von den 3 mutton pies eingeschossen', ['mutton-pies: 2 von 3 set in']],
    ['1 pm 2 of 3 mutton pies drawn 10 min late', ['mutton-pies: 2 of 3 drawn 10 min late']],
    ['1 pm drew 2 of the 3 mutton pies', ['mutton-pies: 2 of 3 drawn']],
    ['1 pm 1 of 3 mutton pies dropped', ['mutton-pies: 1 of 3 dropped']],
    ['1 pm 3 of 8 loaves of household bread in', ['household-bread: 3 of 8 set in']],
    ['1 pm both household loaves set in', ['household-bread: both set in']],
    ['1 pm set in both of the custards', ['custards: both set in']],
    ['1 pm both crocks of custards in', ['custards: both set in']],
    ['1 pm all 6 mutton pies in', ['mutton-pies: 6 set in']],
    ['1 pm both custards and mutton pies set in', ['custards: set in', 'mutton-pies: set in']],
    ['1 pm set in 2 mutton pies and 1 of 3 custards', ['mutton-pies: 2 set in', 'custards: 1 of 3 set in']],
    ['1 pm 1 of 3 mutton pies not set in yet', ['note: 1 of 3 mutton pies not set in yet']],
    ['1 pm 3 of 8 trifles set in', ['3-of-8-trifles: set in']],
    ['1 pm the household bread is not in yet', ['household-bread: is not in yet']],
    ['1 pm household bread later', ['household-bread: later']],
    ['1 pm custards noch nicht drin', ['custards: noch nicht drin']],
    ['1 pm guests later', ['note: guests later']],
    // Looked at, and not drawn.
    ['11:55 am household bread not done yet', ['household-bread: not done yet']],
    ['11:55 am household bread not drawn yet', ['household-bread: not drawn yet']],
    ['11:55 am household bread still in the oven', ['household-bread: still in the oven']],
    ['11:55 am the household bread is still baking', ['household-bread: is still baking']],
    ['11:55 am household bread needs 15 min more', ['household-bread: needs 15 min more']],
    ['11:55 am household bread needs another quarter of an hour', ['household-bread: needs another quarter of an hour']],
    ['11:55 am household bread left in', ['household-bread: left in']],
    ['1 pm custards not done, left in', ['custards: not done']],
    ['1 pm custards still in', ['custards: still in']],
    ['1 pm custards and mutton pies not done yet', ['custards: not done yet', 'mutton-pies: not done yet']],
    ['1 pm household bread out, custards still in', ['household-bread: drawn', 'custards: still in']],
    ['1 pm 2 of 3 mutton pies not done', ['mutton-pies: 2 of 3 not drawn']],
    ['1 pm custards not set yet', ['custards: not set yet']],
    ['1 pm custards noch nicht fertig', ['custards: noch nicht fertig']],
    ['1 pm custards noch im Ofen', ['custards: noch im Ofen']],
    ['1 pm custards bleiben drin', ['custards: bleiben drin']],
    ['1 pm custards brauchen noch 15 min', ['custards: brauchen noch 15 min']],
    ['1 pm custards brauchen noch eine Viertelstunde', ['custards: brauchen noch eine Viertelstunde']],
    ['1 pm custards want half an hour longer', ['custards: want half an hour longer']],
    ['1 pm custards need sugar', ['note: custards need sugar']],
    ['1 pm household bread needs 20 min kneading', ['note: household bread needs 20 min kneading']],
    ['1 pm supper not ready yet', ['note: supper not ready yet']],
    ['1 pm coals still in', ['note: coals still in']],
    ['1 pm fire went out, lit again', ['note: lit again', 'note: fire went out']],
    ['1 pm Feuer ausgegangen, wieder angezündet', ['note: wieder angezündet', 'note: Feuer ausgegangen']],
    ['1 pm the boys went out, lit again', ['note: the boys went out, lit again']],
    ['1 pm door ajar 20 min', ['door: ajar 20 min']],
    ['1 pm the door was left open 20 min', ['door: open 20 min']],
    ['1 pm door left ajar for 20 minutes', ['door: ajar for 20 minutes']],
    ['1 pm left the door open 20 min', ['door: open 20 min']],
    ['1 pm opened the door for 20 min', ['door: opened for 20 min']],
    ['1 pm Tür stand 20 min offen', ['door: offen 20 min']],
    ['1 pm Tür angelehnt 20 min', ['door: angelehnt 20 min']],
    ['1 pm left the door to the boys', ['note: left the door to the boys']],
  ])('are told of together: %s', (text, entries) => {
    const read = notesIn(text, dishes).map(parsed)
    expect(read.map((one) => (one.ok && one.entry.what === 'row' ? `${one.entry.reading}: ${one.entry.value}` : one))).toEqual(
      entries,
    )
  })
  it('are as many, and stood open as long, when they are read back', () => {
    const rows = [
      '| 12:00 | custards | both set in | |',
      '| 12:02 | mutton-pies | 1 of 3 set in | |',
      '| 12:03 | mutton-pies | 2 von 3 set in | |',
      '| 12:05 | custards | einen fallen gelassen | |',
      '| 12:10 | custards | not in yet | |',
      '| 12:20 | door | ajar 20 min | |',
      '| 12:50 | door | angelehnt 15 min | |',
    ].join('\n')
    const {log, messages} = readLog(
      `---\ndate: 2027-06-12\nlit: 6:00\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n${rows}\n`,
      'log.md',
      {dishes},
    )
    expect(messages).toEqual([])
    expect(log!.rows).toMatchObject([
      {what: 'set in', count: 2},
      {what: 'set in', count: 1},
      {what: 'set in', count: 2},
      {what: 'lost', lost: 1},
      {what: 'not in'},
      {what: 'door', open: 20},
      {what: 'door', open: 15},
    ])
  })
  // What bakers write of set-ins and draws: common practice, no source.
  it('doubts a slip in what was done to one of the day’s dishes, and no remark', () => {
    const dishes = ['french-rolls', 'custards']
    const slip = (words: string): string | null => {
      const parsed = parseNote(words, {date: '2027-06-12', now, dishes})
      if (!parsed.ok || parsed.entry.what !== 'row') throw new Error(words)
      return parsed.entry.doubt?.suggest ?? null
    }
    const meant: Record<string, string> = {
      'french rolls drawnn': 'french rolls drawn',
      'the french rolls drwan 5 min late': 'the french rolls drawn 5 min late',
      'custards set inn': 'custards set in',
      'custards setin': 'custards set in',
      '2 custards takn out': '2 custards taken out',
      'french rolls 2 drawnn': 'french rolls 2 drawn',
      'french rolls not risin': 'french rolls not risen',
      'french rolls shapd': 'french rolls shaped',
      'french rolls: kneded': 'french rolls: kneaded',
      'custards eingeshoben': 'custards eingeschoben',
    }
    for (const [wrong, right] of Object.entries(meant))
      expect([wrong, slip(`1 pm ${wrong}`)]).toEqual([wrong, `write “${right}”`])
    for (const remark of [
      'custards set on the sill to cool',
      'custards put it by',
      'french rolls shared among the neighbours',
      'french rolls browning well',
      'custards burst',
      'french rolls not ready',
      'the yard drawnn',
    ])
      expect([remark, slip(`1 pm ${remark}`)]).toEqual([remark, null])
  })
  it('tells of such a slip in a row of the table, and of a dish of which nothing is said', () => {
    const said = (dish: string, value: string): readonly string[] =>
      readLog(
        `---\ndate: 2027-06-12\nlit: 6 am\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n| 1 pm | ${dish} | ${value} | |\n`,
        'l.md',
        {dishes: ['french-rolls']},
      ).messages.map(({line, column, rule, reason, suggest}) => `${line}:${column} ${rule} ${reason}; ${suggest}`)
    expect(said('french-rolls', '12 set inn')).toEqual([
      '8:25 log-reading “french-rolls 12 set inn” is kept as words, and tells of nothing done; write “12 set in” if that is meant',
    ])
    expect(said('French rolls', 'not risin')).toEqual([
      '8:25 log-reading “French rolls not risin” is kept as words, and tells of nothing done; write “not risen” if that is meant',
    ])
    expect(said('french-rolls', '')).toEqual([
      '8:10 log-reading nothing is said of “french-rolls”; write what was done: “set in”, “drawn”, “mixed”, “shaped” or “not risen”',
    ])
    expect(said('french-rolls', 'pale on one side')).toEqual([])
  })
  it('has in the oven what was drawn and put back at once, and knows what is set in again', () => {
    const rowOf = (value: string, note = ''): unknown => {
      const text = `---\ndate: 2027-06-12\nlit: 6:00\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n| 12:30 | pies | ${value} | ${note} |\n`
      const {what, count, back, left} = readLog(text, 'l.md').log!.rows[0]!
      return [what, count, back, left].filter((one) => one !== undefined)
    }
    // Common practice, no source.
    for (const [value, note] of [
      ['drawn', 'not done, back in the oven'],
      ['drawn raw in the middle', 'put back 10 min'],
      ['drawn raw in the middle put back 10 min', ''],
      ['drawn and put back', ''],
      ['ausgezogen', 'innen roh, wieder in den Ofen'],
    ] as const)
      expect(rowOf(value, note), value).toEqual(['not drawn'])
    expect(rowOf('drawn 2', 'raw, put back')).toEqual(['not drawn', 2])
    expect(rowOf('drawn', 'not done')).toEqual(['drawn'])
    expect(rowOf('drawn', 'pale at the back')).toEqual(['drawn'])
    expect(rowOf('drawn', '2 of 4 not done')).toEqual(['drawn', {count: 2, of: 4}])
    expect(rowOf('12 ausgezogen', '4 noch nicht fertig')).toEqual(['drawn', 12, {count: 4}])
    expect(rowOf('set in again')).toEqual(['set in', 'again'])
    expect(rowOf('wieder eingeschossen')).toEqual(['set in', 'again'])
    expect(rowOf('set in again', 'raw in the middle')).toEqual(['set in', 'sure'])
    expect(rowOf('2 put back')).toEqual(['set in', 2, 'sure'])
    expect(rowOf('set in', 'at the back')).toEqual(['set in'])
  })
  it('knows for how many minutes more what is not done is to stay in', () => {
    const longer = (value: string, note = ''): unknown => {
      const text = `---\ndate: 2027-06-12\nlit: 6:00\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n| 12:30 | pies | ${value} | ${note} |\n`
      return readLog(text, 'l.md').log!.rows[0]!.longer
    }
    // Common practice, no source.
    expect(longer('needs 15 min more')).toEqual({minutes: 15})
    expect(longer('needs about 10 to 20 more minutes in the oven')).toEqual({minutes: 15})
    expect(longer('not done', 'another quarter of an hour')).toEqual({minutes: 15})
    expect(longer('noch nicht fertig', 'noch 10 Min')).toEqual({minutes: 10})
    expect(longer('put back for half an hour')).toEqual({minutes: 30})
    expect(longer('drawn raw in the middle put back 10 min')).toEqual({minutes: 10})
    expect(longer('drawn', '2 of 4 not done, put back 10 min')).toEqual({minutes: 10})
    expect(longer('not done yet')).toEqual({})
    expect(longer('drawn', '2 of 4 not done')).toEqual({})
    for (const [value, note] of [
      ['still in the oven', ''],
      ['put back', '10 min late'],
      ['put back', ''],
      ['set in', 'for 40 minutes'],
      ['drawn 10 min late', ''],
    ] as const)
      expect(longer(value, note), value).toBeUndefined()
  })
  it('has in the oven what comes out only to be filled', () => {
    const what = (value: string, note = ''): unknown => {
      const text = `---\ndate: 2027-06-12\nlit: 6:00\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n| 12:30 | onion-quiche | ${value} | ${note} |\n`
      const {what, still, longer} = readLog(text, 'l.md').log!.rows[0]!
      return [what, still, longer]
    }
    // Common practice, no source.
    for (const [value, note] of [
      ['drawn to fill', ''],
      ['taken out and filled', ''],
      ['drawn', 'to fill it'],
      ['filled', ''],
      ['filled and put back', ''],
      ['gezogen und gefüllt', ''],
      ['gefüllt', ''],
    ] as const)
      expect(what(value, note), value).toEqual(['not drawn', true, undefined])
    expect(what('drawn', 'well filled')).toEqual(['drawn', undefined, undefined])
  })
  it('reads what bakers say for set in and drawn, English and German', () => {
    const dishes = ['french-rolls', 'custards']
    const done = (words: string): string | undefined => {
      const [one] = notesIn(words, dishes)
      const parsed = parseNote(one!, {date: '2027-06-12', now, dishes})
      if (!parsed.ok || parsed.entry.what !== 'row') throw new Error(words)
      const {time, reading, value, note} = parsed.entry
      const {log: read} = readLog(
        `---\ndate: 2027-06-12\nlit: 6 am\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n| ${time} | ${reading} | ${value} | ${note} |\n`,
        'l.md',
        {dishes},
      )
      const {what, dish, count} = read!.rows[0]!
      return `${what} ${dish} ${count ?? 'all'}`
    }
    expect(done('1 pm french rolls went in')).toBe('set in french-rolls all')
    expect(done('1 pm french rolls 12 eingeschossen')).toBe('set in french-rolls 12')
    expect(done('1 pm custards came out 5 min late')).toBe('drawn custards all')
    expect(done('1 pm custards herausgenommen')).toBe('drawn custards all')
    expect(done('1 pm french rolls noch nicht aufgegangen')).toBe('not risen french-rolls all')
    expect(done('1 pm french rolls geformt')).toBe('shaped french-rolls all')
    expect(done('1 pm custards verbrannt')).toBe('lost custards all')
    expect(done('1 pm drei custards verbrannt')).toBe('lost custards all')
    expect(done('1 pm zwei french rolls herausgenommen')).toBe('drawn french-rolls 2')
    expect(done('1 pm took out the custards')).toBe('drawn custards all')
    expect(done('1 pm custards raus, braun')).toBe('drawn custards all')
    expect(done('1 pm custards nicht verbrannt')).toBe('note undefined all')
    expect(notesIn('1 pm french rolls and custards came out', dishes)).toEqual([
      '1 pm french rolls came out',
      '1 pm custards came out',
    ])
    expect(notesIn('1 pm 2 of 3 french rolls in and 1 of 4 custards out', dishes)).toEqual([
      '1 pm french rolls 2 of 3 in',
      '1 pm custards 1 of 4 out',
    ])
    expect(notesIn('1 pm french rolls in and out', dishes)).toEqual(['1 pm french rolls in and out'])
  })
  it('doubts a miswritten reading, which would be kept as words that nobody reads', () => {
    expect(said('1 pm flor 300 C')).toBe('1 pm | note | flor 300 C | “flor” is no reading, and would be kept as words')
    expect(said('1 pm arn 18')).toMatch(/“arn” is no reading/)
    const read = parsed('1 pm vautl: 300 C')
    expect(read.ok && read.entry.what === 'row' && read.entry.doubt?.suggest).toBe('write “vault: 300 C”')
    // Words are words.
    for (const text of ['1 pm a warm wind, 20 degrees', '1 pm far away 3 birds', '1 pm the flow is good'])
      expect(said(text)).not.toMatch(/is no reading/)
  })
  it('asks which loaves are not done, where no dish is named', () => {
    const read = parsed('1 pm 2 of 8 loaves not done')
    expect(read).toMatchObject({ok: true, entry: {doubt: {reason: expect.stringContaining('is no dish of this day')}}})
  })
  it('says what to write for a name that is none of them', () => {
    const doubt = (text: string) => {
      const read = parsed(text)
      return read.ok && read.entry.what === 'row' ? read.entry.doubt?.suggest : null
    }
    expect(doubt('10:15 hosehold-bread set in')).toBe('write “household-bread” or “rye-and-indian-bread”')
    expect(doubt('10:15 pie drawn')).toBeUndefined()
    expect(doubt('10:15 trifle drawn')).toBe(`write ${dishes.map((dish) => `“${dish}”`).join(' or ')}`)
    expect(doubt('10:15 household-bread-2 drawn')).toBeUndefined()
  })
  it('are those that rows of the log can tell of', () => {
    const text = log.replace('| 1 pm | pies | drawn 5 min early | |', '| 1 pm | houshold-bread | drawn 5 min early | |')
    expect(readLog(text, 'l.md', {now, dishes}).messages).toEqual([
      {
        file: 'l.md',
        line: text.split('\n').findIndex((line) => line.includes('houshold')) + 1,
        column: 10,
        severity: 'warning',
        rule: 'log-dish',
        reason: '“houshold-bread” is no dish of this day, so this row tells of none',
        suggest: 'write “household-bread” or “rye-and-indian-bread”',
      },
    ])
  })
  it('a note without a time, long before its day, is asked for one', () => {
    expect(parseNote('arm 18', {date: '2027-06-12', now: {date: '2026-11-27', minutes: 600}})).toMatchObject({
      ok: false,
      reason: 'the note has no time',
    })
  })
})

describe('a dough that has not risen', () => {
  it.each(['10:40 am household bread not risen', '10:40 am household-bread: has not risen'])(
    'is noted in a row of its own: %s',
    (text) => {
      const parsed = parseNote(text, {date: '2027-06-12', now, dishes: ['household-bread']})
      expect(parsed).toMatchObject({
        ok: true,
        entry: {what: 'row', reading: 'household-bread', value: expect.stringMatching(/not risen$/)},
      })
    },
  )
  it.each(['not risen', 'not yet risen', 'still rising'])('is read so: %s', (value) => {
    const source = log.replace('| 9:10 am | door | open 4 min | |', `| 9:10 am | household-bread | ${value} | |`)
    expect(readLog(source, 'l.md').log!.rows[2]).toMatchObject({what: 'not risen', dish: 'household-bread'})
  })
})
