import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {readLog} from '../src/oven/log.js'
import {appendToLog} from '../src/oven/log-append.js'
import {entryText, isPlain, notesIn, parseNote} from '../src/oven/note.js'

// What bakers write during the day: common practice, no source.
const date = '2027-06-12'
const dishes = ['baked-beans', 'beans', 'household-bread', 'bread', 'apple-pies', 'rusks', 'plum-cake', 'french-rolls']
const alike = [['baked-beans', 'beans'], ['household-bread', 'bread'], ['apple-pies'], ['rusks'], ['plum-cake'], ['french-rolls']]
const logOf = (rows = '', front = 'lit: 8:55 am\n'): string =>
  `---\ndate: ${date}\n${front}---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n${rows}`
const at = (hour: number, minute: number, days = 0): {date: string; minutes: number} => ({
  date: days === 0 ? date : '2027-06-13',
  minutes: hour * 60 + minute,
})

/** What a note puts into a log, each entry as it is said back; what is asked, or why it is refused. */
function noted(words: string, now: {date: string; minutes: number} | null, source = logOf()): string[] {
  const {log} = readLog(source, 'l.md')
  return notesIn(words, dishes, alike).map((one) => {
    const read = parseNote(one, {date, dishes, alike, log, ...(now ? {now} : {})})
    if (!read.ok) return `${read.reason}; ${read.suggest}`
    const {entry} = read
    if (entry.what === 'row' && entry.doubt) return `asked: ${entry.doubt.reason}; ${entry.doubt.suggest}`
    return isPlain(entry) ? `words: ${entryText(entry)}` : entryText(entry)
  })
}

describe('a time that may be of morning or afternoon', () => {
  it.each([
    ['2:10 bread set in', at(14, 12), '2:10 pm · bread · set in'],
    ['8:10 beans set in', at(20, 12), '8:10 pm · beans · set in'],
    ['9:40 floor 300 °C', at(9, 45), '9:40 am · floor · 300 °C'],
    ['12:30 bread set in', at(14, 0), '12:30 pm · bread · set in'],
    ['12:20 beans drawn', at(0, 25, 1), 'next day 12:20 am · beans · drawn'],
    ['11:50 floor 120 °C', at(0, 25, 1), '11:50 pm · floor · 120 °C'],
    ['12:20 am beans drawn', at(0, 25, 1), 'next day 12:20 am · beans · drawn'],
    ['14:10 bread set in', at(14, 12), '2:10 pm · bread · set in'],
    ['2:30 bread set in', at(14, 12), '“2:30” is before the fire was lit, or has not come yet; write “2:30 am” if that is meant'],
    ['9:30 bread set in', null, '“9:30” may be morning or afternoon; write “9:30 am” or “9:30 pm”'],
    ['2:10 bread set in', null, '2:10 pm · bread · set in'],
    ['raked 11:55', at(14, 12), 'raked: 11:55 am'],
  ] as const)('%s', (words, now, said) => expect(noted(words, now)).toEqual([said]))
  it('of the lighting is on the day itself, and asked for where both hours have come', () => {
    expect(noted('8:55 lit', at(9, 5), logOf('', ''))).toEqual(['lit: 8:55 am'])
    expect(noted('lit 8:55', at(21, 5), logOf('', ''))).toEqual([
      '“8:55” may be morning or afternoon; write “8:55 am” or “8:55 pm”',
    ])
  })
  it('is as it stands in the table, where a warning tells of what was before the fire', () => {
    const told = (row: string): unknown[] =>
      readLog(logOf(`${row}\n`), 'l.md').messages.map(({line, column, severity, rule, suggest}) => [
        line,
        column,
        severity,
        rule,
        suggest,
      ])
    const meant = 'write “2:10 pm” if that is meant'
    expect(told('| 2:10 | bread | set in | |')).toEqual([[8, 3, 'warning', 'log-order', meant]])
    expect(told('| 2:10 | floor | 240 °C | |')).toEqual([[8, 3, 'warning', 'log-order', meant]])
    expect(told('| 2:10 | bread | shaped | |')).toEqual([[8, 3, 'info', 'log-order', meant]])
    expect(told('| 8:10 am | bread | set in | |')).toEqual([
      [8, 3, 'warning', 'log-order', 'check the time, and “lit” in the front matter'],
    ])
    for (const row of ['| 6 am | bread | mixed | |', '| 2:10 | note | rain | |', '| 9:10 | bread | set in | |'])
      expect(told(row)).toEqual([])
  })
})

describe('a bare time told on a later day than the log’s', () => {
  const baked = logOf('| 12:30 pm | floor | 235 °C | |\n| 1:20 pm | bread | set in | |\n')
  const evening = logOf('| 5 pm | bread | drawn | |\n| 6 pm | beans | set in | |\n')
  const overnight = logOf('| 6 pm | beans | set in | |\n| next day 7:10 am | rusks | set in | |\n')
  const later = (days: number, hour: number, minute: number) => ({date: `2027-06-${12 + days}`, minutes: hour * 60 + minute})
  it.each([
    ['1:25 plum cake drawn', later(2, 18, 15), baked, '1:25 pm · plum-cake · drawn'],
    ['1:25 plum cake drawn', later(2, 13, 50), baked, '1:25 pm · plum-cake · drawn'],
    ['1:25 plum cake drawn', later(1, 9, 0), baked, '1:25 pm · plum-cake · drawn'],
    ['4:40 plum cake drawn', later(1, 9, 0), baked, '4:40 pm · plum-cake · drawn'],
    // Typed up out of its turn.
    ['12:50 rusks set in', later(1, 9, 0), baked, '12:50 pm · rusks · set in'],
    ['1:25 pm plum cake drawn', later(2, 18, 15), baked, '1:25 pm · plum-cake · drawn'],
    // The first row, behind the fire.
    ['12:30 bread set in', later(2, 18, 15), logOf(), '12:30 pm · bread · set in'],
    // The day that is still going on.
    ['7:50 beans drawn', later(1, 8, 0), evening, 'next day 7:50 am · beans · drawn'],
    ['8:10 beans drawn', later(1, 9, 0), baked, 'next day 8:10 am · beans · drawn'],
    ['11:50 floor 120 °C', later(1, 0, 25), evening, '11:50 pm · floor · 120 °C'],
    ['12:20 beans drawn', later(1, 0, 25), evening, 'next day 12:20 am · beans · drawn'],
    ['7:40 rusks drawn', later(1, 12, 0), overnight, 'next day 7:40 am · rusks · drawn'],
  ] as const)('%s', (words, now, source, said) => expect(noted(words, now, source)).toEqual([said]))

  it.each([
    ['7:50 beans drawn', later(1, 9, 30), evening, '“7:50 pm” or “next day 7:50 am”'],
    ['8:10 beans set in', later(2, 18, 15), baked, '“8:10 pm” or “2 days later 8:10 am”'],
  ] as const)('%s is asked for where it may be of either day', (words, now, source, either) => {
    const asked = `“${words.split(' ')[0]}” may be of the log’s own day or of a later one; write ${either}`
    expect(noted(words, now, source)).toEqual([asked])
    // What is offered is read as it stands.
    for (const [, time] of either.matchAll(/“([^”]+)”/g))
      expect(noted(words.replace(/^\S+/, time!), now, source)).toEqual([
        words.replace(/^\S+/, time!).replace(/ beans /, ' · beans · '),
      ])
  })
})

describe('a row of the log', () => {
  const add = (source: string, words: string, now: {date: string; minutes: number}): string =>
    notesIn(words, dishes, alike).reduce((text, one) => {
      const read = parseNote(one, {date, dishes, alike, now, log: readLog(text, 'l.md').log})
      if (!read.ok) throw new Error(read.reason)
      const done = appendToLog(text, read.entry, {date})
      if (!done.ok) throw new Error(done.reason)
      return done.source
    }, source)
  it('comes where its time belongs, and no other byte changes', () => {
    const source = logOf('| 8:10 pm | beans | set in | |\n| next day 12:20 am | note | rain | |\n')
    const after = add(source, '10 pm door shut', at(0, 30, 1))
    expect(after).toBe(source.replace('| next day', '| 10 pm | door | shut | |\n| next day'))
    expect(readLog(after, 'l.md').log!.rows.map((row) => row.at)).toEqual([1210, 1320, 1460])
  })
  it('reads the same again, and so does every other, whatever was there', () => {
    const rows = fc.array(fc.integer({min: 540, max: 2400}), {maxLength: 6})
    // With all that a clock on a later day would else have to ask for.
    const clock = (m: number): string => {
      const hour = Math.floor(m / 60) % 24
      return `${m >= 1440 ? 'next day ' : ''}${hour % 12 === 0 ? 12 : hour % 12}:${String(m % 60).padStart(2, '0')} ${hour < 12 ? 'am' : 'pm'}`
    }
    fc.assert(
      fc.property(rows, fc.integer({min: 540, max: 2400}), (some, minutes) => {
        const sorted = [...some].sort((a, b) => a - b)
        const source = logOf(sorted.map((m) => `| ${clock(m)} | floor | 200 °C | |\n`).join(''))
        const after = add(source, `${clock(minutes)} floor 150 °C`, {date: '2027-06-13', minutes: 1000})
        const read = readLog(after, 'l.md').log!.rows
        expect(read.map((row) => row.at)).toEqual([...read.map((row) => row.at)].sort((a, b) => a - b))
        const own = read.find((row) => row.value === 150)!
        expect(own.at % 1440).toBe(minutes % 1440)
        expect(read.filter((row) => row !== own).map((row) => row.at)).toEqual(sorted)
      }),
      {numRuns: 60},
    )
  })
  it('of what was done to the fire and is said of it besides becomes two entries', () => {
    const after = add(logOf('', ''), '8:55 am lit, would not draw', at(9, 0))
    expect(after).toContain('lit: 8:55 am\n---')
    expect(after).toContain('| 8:55 am | note | would not draw | |')
  })
})

describe('what was done or read', () => {
  const now = at(15, 0)
  it.each([
    ['8:55 am lit, would not draw', ['lit: 8:55 am', 'words: 8:55 am · note · would not draw']],
    ['lit the fire 8:55 am, wet wood', ['lit: 8:55 am', 'words: 8:55 am · note · wet wood']],
    ['11:55 am raked out 35 kg', ['raked: 11:55 am', 'wood: 35 kg']],
    [
      '11:55 am raked, 35 kg of wood, coals very bright',
      ['raked: 11:55 am', 'wood: 35 kg', 'words: 11:55 am · note · coals very bright'],
    ],
    ['11:55 am raked out, floor 300 °C', ['raked: 11:55 am', '11:55 am · floor · 300 °C']],
    ['11:55 am glut ausgeräumt', ['raked: 11:55 am']],
    // No deed of the fire that the log's head could state.
    ['11:55 am lit up well', ['words: 11:55 am · note · lit up well']],
    ['11:55 am raked the coals to the left', ['words: 11:55 am · note · raked the coals to the left']],
    ['11:55 am raked out 5 kg of coals', ['words: 11:55 am · note · raked out 5 kg of coals']],
  ])('to the fire: %s', (words, said) => expect(noted(words, now, logOf('', ''))).toEqual(said))
  it.each([
    ['floor 240 °C left', ['3:00 pm · floor · 240 °C · left']],
    ['floor 240 °C at the back, after swabbing', ['3:00 pm · floor · 240 °C · at the back, after swabbing']],
    ['240 C left, 225 right', ['3:00 pm · floor · 240 C · left', '3:00 pm · floor · 225 C · right']],
    ['240 C', ['asked: “240 C” would be kept as words, and tells of no reading; write “floor 240 C” if that is meant']],
    ['arm count 12', ['3:00 pm · arm · 12']],
    ['counted 12', ['asked: “counted 12” would be kept as words, and tells of no reading; write “arm 12” if that is meant']],
    ['counted 12 loaves', ['words: 3:00 pm · note · counted 12 loaves']],
  ])('in the oven: %s', (words, said) => expect(noted(words, now)).toEqual(said))
  it('counts with the arm where that has been done before', () => {
    expect(noted('counted 12', now, logOf('| 1 pm | arm | 9 | |\n'))).toEqual(['3:00 pm · arm · 12'])
  })
  it.each([
    // One dish of the day can be meant.
    ['pies in', ['3:00 pm · apple-pies · set in']],
    ['rolls out a bit pale', ['3:00 pm · french-rolls · drawn · a bit pale']],
    ['the cake burnt', ['3:00 pm · plum-cake · burnt']],
    [
      'bread out, pies and rolls in',
      ['3:00 pm · bread · drawn', '3:00 pm · apple-pies · set in', '3:00 pm · french-rolls · set in'],
    ],
    // Near one, or a thing that could be of several.
    ['plumcake in', ['asked: “plumcake” is no dish of this day; write “plum-cake”']],
    ['rols out a bit pale', ['asked: “rols” is no dish of this day; write “french-rolls”']],
    // Words.
    ['one more guest', ['words: 3:00 pm · note · one more guest']],
    ['coals out', ['words: 3:00 pm · note · coals out']],
    ['dropped the peel', ['words: 3:00 pm · note · dropped the peel']],
    ['lost an hour', ['words: 3:00 pm · note · lost an hour']],
  ])('to a dish: %s', (words, said) => expect(noted(words, now)).toEqual(said))
  it('asks whose loaf it was that was dropped', () => {
    expect(noted('dropped a loaf', now)).toEqual([
      expect.stringMatching(/^asked: “loaf” is no dish of this day; write “.*“bread”/),
    ])
  })
  it('asks which of two dishes is meant', () => {
    const read = parseNote('pies in', {date, now, dishes: ['apple-pies', 'mutton-pies']})
    expect(read.ok && read.entry.what === 'row' && read.entry.doubt?.suggest).toBe('write “apple-pies” or “mutton-pies”')
  })
})

describe('how many, and when a dough was worked', () => {
  it.each([
    ['2:10 pm 2 out of 6 apple pies drawn', '2:10 pm · apple-pies · 2 of 6 drawn'],
    ['2:10 pm apple pies 2/6 out', '2:10 pm · apple-pies · 2 of 6 drawn'],
    ['2:10 pm 2/6 apple pies out', '2:10 pm · apple-pies · 2 of 6 drawn'],
    ['2 pm door open 1/2 h', '2:00 pm–2:30 pm · door · open 1/2 h'],
    ['sponge set 9:10 am', 'words: 9:10 am · note · sponge set'],
    ['leaven fed 9:10 am', 'words: 9:10 am · note · leaven fed'],
    ['Vorteig angesetzt 9:10 am', 'words: 9:10 am · note · Vorteig angesetzt'],
    ['2 pm oven not ready yet', 'words: 2:00 pm · note · oven not ready yet'],
  ])('%s', (words, entry) => {
    expect(noted(words, null)).toEqual([entry])
    expect(noted(words, at(15, 0))).toEqual([entry])
  })

  it.each(['2 pm all but 2 apple pies out', '2 pm all but one drawn', '14:00 alle bis auf 2 Brote raus'])(
    'is asked where only what is left is told: %s',
    (words) => expect(noted(words, null)[0]).toMatch(/^asked: .* does not say how many that is/),
  )
  it('is asked where no dish is named', () =>
    expect(noted('2 pm 2/6 loaves out', null)[0]).toMatch(/^asked: “loaves” is no dish/))
  it('stays words where nothing is counted', () =>
    expect(noted('2 pm all but forgotten', null)).toEqual(['words: 2:00 pm · note · all but forgotten']))
})

describe('a note in German', () => {
  const german = (words: string, dishes: readonly string[]): string => {
    const read = parseNote(words, {date, dishes, log: readLog(logOf('', ''), 'l.md').log})
    if (!read.ok) return `refused: ${read.reason}`
    return read.entry.what === 'row' && read.entry.doubt ? `asked: ${read.entry.doubt.reason}` : entryText(read.entry)
  }
  it('has “Uhr” by a clock of 24 hours, and a dish by the end of its name', () => {
    const one = ['roggenmischbrot', 'apfelkuchen']
    expect(german('9:10 Uhr angezündet', one)).toBe('lit: 9:10 am')
    expect(german('um 9:10 Uhr angezündet', one)).toBe('lit: 9:10 am')
    expect(german('9:10 angezündet', one)).toMatch(/^refused: .*morning or afternoon/)
    expect(german('14:00 Uhr Brot eingeschossen', one)).toBe('2:00 pm · roggenmischbrot · eingeschossen')
    expect(german('14:00 Uhr 2 Brote zurück in den Ofen', one)).toBe('2:00 pm · roggenmischbrot · 2 put back')
    expect(german('14:00 Uhr Kuchen ausgezogen', one)).toBe('2:00 pm · apfelkuchen · ausgezogen')
    expect(german('15:00 Uhr Roggenmischbrot 12 ausgezogen, 4 noch nicht fertig', one)).toBe(
      '3:00 pm · roggenmischbrot · 12 ausgezogen · 4 noch nicht fertig',
    )
    expect(german('14:00 Uhr Brot eingeschossen', [...one, 'weizenbrot'])).toMatch(/^asked: .*is no dish/)
    // “Bread” is no gingerbread.
    expect(german('2 pm bread set in', ['gingerbread'])).toMatch(/^asked: .*is no dish/)
  })

  // The words that a German plan prints.
  it.each([
    ['13 Uhr Arm 18', '1:00 pm · arm · 18'],
    ['13.00 Uhr Arm 18', '1:00 pm · arm · 18'],
    ['13 Uhr 15 Armprobe 18', '1:15 pm · arm · 18'],
    ['2 Uhr Herd 290 °C', '2:00 pm · floor · 290 °C'],
    ['13:10 Herd 290 °C hinten', '1:10 pm · floor · 290 °C · hinten'],
    ['13:10 Gewölbe 310 °C', '1:10 pm · vault · 310 °C'],
    ['13:10 Mehl braun', '1:10 pm · flour · braun'],
    ['13:10 Mehl bräunt langsam', '1:10 pm · flour · bräunt langsam'],
    ['13:10 Papier goldgelb', '1:10 pm · paper · goldgelb'],
    ['13:10 Papier wird hellbraun', '1:10 pm · paper · hellbraun'],
    ['Holz 43 kg', 'wood: 43 kg'],
    ['11:15 Uhr ausgeräumt', 'raked: 11:15 am'],
    ['13 Uhr wieder angezündet', '1:00 pm · note · wieder angezündet'],
    ['13:10 bread noch nicht gegangen', '1:10 pm · bread · noch nicht gegangen'],
    ['13:10 bread nicht gegangen', '1:10 pm · bread · nicht gegangen'],
  ])('%s', (words, said) => expect(noted(words, at(14, 12))).toEqual([said]))
  it('tells of a fire lit again and of a dough in the log', () => {
    const rows = '| 13:00 | Herd | 200 °C | |\n| 13:05 | note | wieder angezündet | |\n| 13:50 | note | wieder ausgeräumt | |\n'
    const {log, messages} = readLog(
      logOf(`${rows}| 14:00 | bread | nicht gegangen | |\n`, 'lit: 8:55 am\nraked: 11:15 am\n'),
      'l.md',
    )
    expect(messages).toEqual([])
    expect(log!.readings).toMatchObject([{kind: 'floor', value: 200}])
    expect(log!.further).toEqual([{lit: 785, raked: 830, wood: null}])
    expect(log!.rows.at(-1)).toMatchObject({what: 'not risen', dish: 'bread'})
  })
})

describe('a note of the door', () => {
  // The trade's words for a length; when it began is our rule (docs/oven.md).
  it.each([
    ['11:20 am door open half an hour', '11:20 am–11:50 am · door · open half an hour'],
    ['11:20 am door open for half an hour', '11:20 am–11:50 am · door · open for half an hour'],
    ['11:20 am door open an hour', '11:20 am–12:20 pm · door · open an hour'],
    ['11:20 am the door was open twenty minutes', '11:20 am–11:40 am · door · open twenty minutes'],
    [
      '11:20 am door stood open a quarter of an hour, wedge slipped',
      '11:20 am–11:35 am · door · open a quarter of an hour · wedge slipped',
    ],
    ['11:20 am door open ½ h', '11:20 am–11:50 am · door · open ½ h'],
    ['11:20 am door open 10:50 to 11:20', '10:50 am–11:20 am · door · open 10:50 to 11:20'],
    ['11:20 Tür offen eine halbe Stunde', '11:20 am–11:50 am · door · offen eine halbe Stunde'],
    ['11:20 Tür war offen eine Viertelstunde', '11:20 am–11:35 am · door · offen eine Viertelstunde'],
    ['11:20 Tür offen 30 min', '11:20 am–11:50 am · door · offen 30 min'],
    ['11:20 am door opened', '11:20 am · door · opened'],
    ['11:20 am door shut at 11:20', '11:20 am · door · shut at 11:20'],
    // Noted at the present, or without a time, it is of the time until then.
    ['door open 30 min', '11:30 am–12:00 pm · door · open 30 min'],
    ['door was open half an hour', '11:30 am–12:00 pm · door · open half an hour'],
    ['12 pm door open 30 min', '11:30 am–12:00 pm · door · open 30 min'],
    ['door open since 11:40', '11:40 am–12:00 pm · door · open since 11:40'],
    ['door open 10:50 to 11:20', '10:50 am–11:20 am · door · open 10:50 to 11:20'],
    ['door opened', '12:00 pm · door · opened'],
  ])('%s', (words, said) => {
    expect(noted(words, at(12, 0))).toEqual([said])
    const parsed = parseNote(words, {date, dishes, alike, log: readLog(logOf(), 'l.md').log, now: at(12, 0)})
    const entry = parsed.ok ? parsed.entry : null
    const appended = appendToLog(logOf(), entry!, {date})
    const {log, messages} = readLog(appended.ok ? appended.source : '', 'l.md')
    const [from, until = from] = said.split(' · ')[0]!.split('–').map(minutesOf)
    expect(messages).toEqual([])
    expect(log!.doors).toEqual([{minutes: from! - 535, kind: 'door', open: until === from ? 2 : until! - from!}])
  })
  it('whose length is not understood is asked about', () => {
    expect(noted('11:20 am door open 20', at(12, 0))[0]).toMatch(
      /^for how long the door was open is not understood: “open 20”; write/,
    )
    expect(noted('11:20 am door open three', at(12, 0))[0]).toContain('is not understood')
    expect(noted('11:20 am door open 11:50 to 12:20', at(12, 0))[0]).toContain('has not come yet')
    const {log, messages} = readLog(logOf('| 11:20 am | door | open 20 | |\n'), 'l.md')
    expect(messages).toMatchObject([{rule: 'log-reading', severity: 'warning', line: 8, column: 21}])
    expect(log!.doors).toEqual([{minutes: 145, kind: 'door', open: 2}])
  })
})

/** Minutes after midnight of "11:20 am". */
function minutesOf(text: string): number {
  const [, hour, minute, half] = /(\d+):(\d+) ([ap])m/.exec(text)!
  return (Number(hour) % 12) * 60 + Number(minute) + (half === 'p' ? 720 : 0)
}

describe('several readings in one note', () => {
  it.each([
    ['10:30 am floor 230 °C, vault 260 °C', ['10:30 am · floor · 230 °C', '10:30 am · vault · 260 °C']],
    ['10:30 am floor 230 and vault 260 °C', ['10:30 am · floor · 230 °C', '10:30 am · vault · 260 °C']],
    [
      '10:30 am floor 230 °C, at the back; vault 260 °C',
      ['10:30 am · floor · 230 °C · at the back', '10:30 am · vault · 260 °C'],
    ],
    ['10:30 am walls white, arm 12, windy', ['10:30 am · walls · white', '10:30 am · arm · 12 · windy']],
    ['10:30 am floor 230 °C, bread in', ['10:30 am · floor · 230 °C', '10:30 am · bread · set in']],
    ['10:30 am bread in, vault 260 °C', ['10:30 am · bread · set in', '10:30 am · vault · 260 °C']],
    ['10:30 am Herd 230 °C, Gewölbe 260 °C', ['10:30 am · floor · 230 °C', '10:30 am · vault · 260 °C']],
    // What reads nothing is the remark it was.
    ['10:30 am floor 230 °C, oven door stuck', ['10:30 am · floor · 230 °C · oven door stuck']],
  ] as const)('%s', (words, said) => expect(noted(words, at(10, 35))).toEqual(said))
  it('of which one has no scale are asked about', () => {
    expect(noted('10:30 am arm 12, vault 260', at(10, 35))[1]).toMatch(/°F.*°C/)
  })
})
