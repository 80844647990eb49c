import {describe, expect, it} from 'vitest'
import {nothingAsked, readDay} from '../src/plan/day.js'

const item = (line: string) =>
  readDay(`---\ndate: 2027-06-19\npeople: 8\nfire from: 6 am\nserve: 1 pm\n---\n\n- ${line}\n`, 'day.md').day?.items[0]

describe('a line of the day', () => {
  it.each([
    ['[Pies](pies.md)', null, null],
    ['[Pies](pies.md) — 6 pies', '6 pies', null],
    ['[Pies](pies.md) — 6 pies, wanted by 4 pm', '6 pies', 960],
    ['[Pies](pies.md#meat) - 6 pies ; ready at noon.', '6 pies', 720],
    ['[Pies](pies.md): needed for tomorrow 8 am ;', null, 1920],
    ['[Pies](pies.md) — for 40.  Wanted   by 4:30 pm .', 'for 40', 990],
  ])('reads “%s”', (line, amount, wantedBy) => {
    expect(item(line)).toMatchObject({file: 'pies.md', title: 'Pies', amount, wantedBy})
    expect(item(line)).not.toHaveProperty('hot')
  })

  it.each([
    ['[Pies](pies.md) — 6 pies, hot at 6 pm', '6 pies', 1080],
    ['[Pies](pies.md) — 6 pies; wanted hot by 6:30 pm.', '6 pies', 1110],
    ['[Pies](pies.md) — hot for noon', null, 720],
    ['[Pies](pies.md) — ready hot at tomorrow 8 am', null, 1920],
  ])('reads “%s” as wanted hot', (line, amount, wantedBy) => {
    expect(item(line)).toMatchObject({file: 'pies.md', title: 'Pies', amount, wantedBy, hot: true})
  })

  it.each(['6 pies hot', '6 pies, hot', 'hot'])('says that “%s” tells no time', (words) => {
    const day = `---\ndate: 2027-06-19\npeople: 8\nfire from: 6 am\nserve: 1 pm\n---\n\n- [Pies](pies.md) — ${words}\n`
    const column = '- [Pies](pies.md) — '.length + words.lastIndexOf('hot') + 1
    expect(readDay(day, 'day.md').messages).toMatchObject([{line: 8, column, severity: 'error', rule: 'day-wanted'}])
  })

  it('says where a time at which it is wanted hot cannot be read', () => {
    const day =
      '---\ndate: 2027-06-19\npeople: 8\nfire from: 6 am\nserve: 1 pm\n---\n\n- [Pies](pies.md) — 6 pies, hot at supper\n'
    expect(readDay(day, 'day.md').messages).toMatchObject([{line: 8, column: 36, severity: 'error', rule: 'day-wanted'}])
  })
})

describe('what is passed over in a day', () => {
  const head = '---\ndate: 2027-06-19\npeople: 8\nfire from: 6 am\nserve: 1 pm\n---\n\n'
  const read = (body: string, front = head) => readDay(front + body, 'day.md')
  const told = (body: string) =>
    read(body).messages.map(({line, column, severity, rule, reason}) => ({at: `${line - 7}:${column}`, severity, rule, reason}))

  it('a third fire', () => {
    const {day, messages} = read('- [Pies](pies.md)\n', head.replace('serve', 'firings: 3\nserve'))
    expect(day?.firings).toBe(3)
    expect(messages).toMatchObject([
      {line: 5, column: 10, severity: 'warning', rule: 'day-firings', reason: '3 fires cannot be planned: at most 2 are'},
    ])
    expect(read('- [Pies](pies.md)\n', head.replace('serve', 'firings: 2\nserve')).messages).toEqual([])
  })

  it('a heading over receipts that is not “Spare”, and the receipts are kept', () => {
    const {day, messages} = read('# Feast\n\n- [Pies](pies.md)\n\n## Spares\n\n- [Rusks](rusks.md)\n')
    expect(messages).toMatchObject([
      {line: 12, column: 4, severity: 'warning', rule: 'day-heading', suggest: expect.stringContaining('write “## Spare” over')},
    ])
    expect([day?.items.map((i) => i.file), day?.spare]).toEqual([['pies.md', 'rusks.md'], []])
    expect(told('# Feast\n\n- [Pies](pies.md)\n\n## Spare\n\n- [Rusks](rusks.md)\n\n## Notes\n\nRain is likely.\n')).toEqual([])
    expect(told('## Supper\n\n- [Pies](pies.md)\n')).toMatchObject([{at: '1:4', rule: 'day-heading'}])
  })

  it.each([
    ['8 loaves by 1 pm', '8 loaves', 780],
    ['8 loaves, by tomorrow 8 am', '8 loaves', 1920],
    ['8 Laibe, bis 13 Uhr', '8 Laibe', 780],
    ['8 Laibe, gewünscht bis morgen 8 Uhr', '8 Laibe', 1920],
    ['8 Laibe, fertig um 13:30', '8 Laibe', 810],
    ['2 loaves in tins 9 by 5 in', '2 loaves in tins 9 by 5 in', null],
  ])('no time that is said plainly: %s', (line, amount, wantedBy) => {
    const {day, messages} = read(`# Feast\n\n- [Bread](bread.md) — ${line}\n`)
    expect(messages.filter(({severity}) => severity === 'error')).toEqual([])
    expect(day!.items).toMatchObject([{amount, wantedBy}])
  })
  it('nor what is wanted hot, in German', () => {
    const {day} = read('# Feast\n\n- [Pies](pies.md) — 6 Pasteten, heiß um 18 Uhr\n')
    expect(day!.items).toMatchObject([{amount: '6 Pasteten', wantedBy: 1080, hot: true}])
  })

  it.each([
    [
      'a time without “wanted by”',
      '- [Pies](pies.md) — 6 pies for 1 pm',
      '1:28',
      'error',
      'day-wanted',
      '“for 1 pm” is not read as a time',
    ],
    [
      'a misspelt “wanted”',
      '- [Pies](pies.md) — 6 pies, wantd by noon',
      '1:29',
      'error',
      'day-wanted',
      '“wantd by noon” is not read as a time',
    ],
    [
      'a time that is none',
      '- [Pies](pies.md) — 6 pies, wanted by 4 pn',
      '1:39',
      'error',
      'day-wanted',
      '“4 pn” is not a time of day',
    ],
    ['an amount before the link', '- 6 × [Pies](pies.md)', '1:3', 'error', 'day-line', '“6 ×” before the link is not read'],
    ['words before the link', '- Meat [Pies](pies.md)', '1:3', 'warning', 'day-line', '“Meat” before the link is not read'],
    [
      'an amount below the link',
      '- [Pies](pies.md)\n  - 6 pies',
      '2:5',
      'error',
      'day-line',
      '“6 pies” below “Pies” is not read',
    ],
    [
      'a note below the link',
      '- [Pies](pies.md) — 6 pies\n\n  turn them once',
      '3:3',
      'warning',
      'day-line',
      '“turn them once” below “Pies” is not read',
    ],
    [
      'a link in no list',
      'First of all [Pies](pies.md) — 6 pies',
      '1:14',
      'warning',
      'day-link',
      '“Pies” stands in no list, so it is not baked',
    ],
    [
      'an entry in a quotation',
      '> - [Pies](pies.md) — 6 pies',
      '1:5',
      'warning',
      'day-link',
      '“Pies” stands behind “>”, as a quotation, so it is not baked',
    ],
    [
      'a link in a table',
      '| what | how many |\n| --- | --- |\n| [Pies](pies.md) | 6 pies |',
      '3:3',
      'warning',
      'day-link',
      '“Pies” stands in no list, so it is not baked',
    ],
    [
      'a space in the address',
      '- [Pies](meat pies.md) — 6 pies',
      '1:3',
      'error',
      'day-link',
      '“meat pies.md” has a space in it, so this is no link and nothing is baked',
    ],
    [
      'a link by reference to nothing',
      '- [Pies][p] — 6 pies',
      '1:3',
      'error',
      'day-link',
      'no line says what “[p]” links to, so nothing is baked',
    ],
    ['an entry without a link', '- Pies, 6 of them', '1:3', 'warning', 'day-link', '“Pies, 6 of them” links to no receipt'],
    ['a link out of the folder', '- [Pies](../pies.md)', '1:10', 'error', 'day-link', '“../pies.md” leads out of this folder'],
  ])('%s is told at the word at fault', (_what, body, at, severity, rule, reason) => {
    expect(told(`${body}\n`)).toEqual([{at, severity, rule, reason}])
  })

  it('a link by reference, or with a space in angle brackets, is a link like any other', () => {
    const {day, messages} = read(
      '- [Pies][p] — 6 pies\n- [Rusks][] — for 8\n- [Tart](<a tart.md>) — 2 tarts\n\n[p]: pies.md\n[rusks]: rusks.md\n',
    )
    expect(messages).toEqual([])
    expect(day?.items.map(({file, amount, targetAt}) => [file, amount, targetAt?.column])).toEqual([
      ['pies.md', '6 pies', 3],
      ['rusks.md', 'for 8', 3],
      ['a tart.md', '2 tarts', 10],
    ])
  })

  it('a day whose receipts all stand elsewhere is refused at their lines, and one without any as a whole', () => {
    const loose = read('[Pies](pies.md) — 6 pies\n')
    expect(nothingAsked(loose.day!, 'day.md', loose.messages)).toMatchObject([
      {line: 8, severity: 'error', rule: 'day-link', reason: '“Pies” stands in no list, so it is not baked'},
    ])
    const none = read('Nothing yet.\n')
    expect(nothingAsked(none.day!, 'day.md', none.messages)).toMatchObject([{line: 1, rule: 'day-empty'}])
    const one = read('- [Pies](pies.md)\n')
    expect(nothingAsked(one.day!, 'day.md', one.messages)).toEqual([])
  })

  it('a list within an entry is read like any other', () => {
    const {day, messages} = read('- [Pies](pies.md) — 6 pies\n  - [Rusks](rusks.md) — for 8\n')
    expect(messages).toEqual([])
    expect(day?.items.map((i) => [i.file, i.amount, i.line])).toEqual([
      ['pies.md', '6 pies', 8],
      ['rusks.md', 'for 8', 9],
    ])
  })

  it('each word of an amount has its place, past mark-up and the mark before it', () => {
    expect(item('[Pies](pies.md) — **6** small pies, wanted by 4 pm')?.amountAt).toEqual([
      {line: 8, column: 23},
      {line: 8, column: 27},
      {line: 8, column: 33},
    ])
    expect(item('[Pies](pies.md) —6 pies')?.amountAt?.[0]).toEqual({line: 8, column: 20})
  })
})

describe('another day in the same file', () => {
  const head = '---\ndate: 2027-06-19\npeople: 8\nfire from: 6 am\nserve: 1 pm\n---\n'
  const list = '- [Pies](pies.md) — 6 pies\n'
  const errors = (body: string) =>
    readDay(head + body, 'day.md').messages.map(({line, column, severity, rule}) => [`${line}:${column}`, severity, rule])

  it.each([
    ['with its own front matter', `\n# Feast\n\n${list}\n${head}\n# Supper\n\n${list}`, '13:1'],
    ['right behind the first', `${head}\n${list}`, '8:1'],
    ['below a list without a blank line', `${list}${head}${list}`, '9:1'],
    ['never closed', `${list}\n---\ndate: 2027-06-20\n\n${list}`, '10:1'],
    ['with blank lines in it', `${list}\n---\n\ndate: 2027-06-20\n\n---\n\n${list}`, '11:1'],
    ['without a date, in capitals', `${list}\n---\nPeople: 9\nServe: 6 pm\n---\n\n${list}`, '10:1'],
  ])('%s is an error at its line, and no dish of it is baked on the first', (_what, body, at) => {
    expect(errors(body)).toEqual([[at, 'error', 'day-second']])
    expect(readDay(head + body, 'day.md').day).toBeNull()
  })

  it.each([
    ['a rule before a note', `${list}\n---\n\nServe: on the lawn, if it is dry.\n`],
    ['keys in a note', `${list}\nThe date: 2027-06-19, people: 8.\n`],
    ['keys as code', `${list}\n---\n\n\`\`\`\ndate: 2027-06-20\npeople: 8\n\`\`\`\n`],
  ])('%s is none', (_what, body) => {
    expect(errors(body)).toEqual([])
  })
})

/** How a day is written is for this format alone to say: there is no source. */
describe('the head of a day', () => {
  // ISO 8601-1:2019, 4.3.8.1: 00:00 begins a day.
  it('that begins at midnight is told to begin it at 0:00', () => {
    const of = (from: string) => readDay(`---\ndate: 2027-06-19\npeople: 8\nfire from: ${from}\nserve: 1 pm\n---\n`, 'day.md')
    expect(of('midnight').messages).toMatchObject([
      {line: 5, rule: 'day-serve', suggest: expect.stringContaining('“fire from: 0:00”')},
    ])
    expect(of('0:00').day!.fireFrom).toBe(0)
    expect(of('12 midnight the day before').day!.fireFrom).toBe(0)
  })
  const head = {date: '2027-10-02', people: '20', 'fire from': '5 am', serve: '6 pm'}
  const read = (more: Readonly<Record<string, string>>, amount = '8 loaves') => {
    const keys = Object.entries({...head, ...more}).map(([key, value]) => `${key}: ${value}`)
    return readDay(`---\n${keys.join('\n')}\n---\n\n- [Loaf](loaf.md) — ${amount}\n`, 'day.md')
  }

  it.each([
    ['17.30', 1050],
    ['18.00', 1080],
    ['18:00', 1080],
    ['"17.30"', 1050],
  ])('reads “serve: %s” as it is written, though YAML has a number of it', (serve, minutes) => {
    expect(read({serve}).day?.serve).toBe(minutes)
  })

  it.each([
    ['serve', '18', /“18” is a number, and no time/, 'write “18:00”'],
    ['serve', '0', /“0” is a number, and no time/, 'write “0:00”'],
    ['serve', '5', /morning or afternoon/, 'write “5 am” or “5 pm”'],
    ['fire from', '5.50e1', /“5\.50e1” is not a time of day/, /“5 am”/],
    ['people', '', /people: nothing is written/, /such as “people: 40”/],
    ['people', '[4, 5]', /people: one value is wanted/, /such as “people: 40”/],
    ['zone', '5', /not a time zone/, /America\/New_York/],
    ['date', '', /date: nothing is written/, /2027-06-19/],
  ])('%s: %s is told with what to write', (key, value, reason, suggest) => {
    const {day, messages} = read({[key]: value})
    expect(day).toBeNull()
    expect(messages).toHaveLength(1)
    expect(messages[0]!.reason).toMatch(reason)
    expect(messages[0]!.suggest).toMatch(suggest)
  })

  it.each(['not before 1 pm', 'after 13:30', 'from 1 pm', 'nicht vor 13 Uhr'])('“%s” is no “wanted by”', (from) => {
    const {messages} = read({}, `8 loaves, ${from}`)
    expect(messages).toMatchObject([{rule: 'day-wanted', severity: 'error', column: '- [Loaf](loaf.md) — 8 loaves, '.length + 1}])
    expect(messages[0]!.reason).toContain(`“${from}” is not planned for`)
    expect(messages[0]!.suggest).toMatch(/“hot at 1/)
  })
})
