import {readdirSync, readFileSync} from 'node:fs'
import {join} from 'node:path'
import ts from 'typescript'
import {describe, expect, it} from 'vitest'
import {run} from '../src/cli/run.js'
import {parseClock} from '../src/measure/quantity.js'
import type {Message} from '../src/receipt/types.js'
import {clock} from '../src/sheets/figures.js'
import {messageWords} from '../src/sheets/said.js'
import {styleOf} from '../src/sheets/style-of.js'
import {messageLine} from '../src/sheets/translation-text.js'
import {inFolder, smallDay} from './page-day.js'

const german = styleOf({language: 'de'})

/** Functions whose messages no command with a language shows: `note` has none. */
const elsewhere = new Set(['parseNote', 'appendToLog', 'scaleDoubt', 'minutesNow'])
/** What holds a message: fields and constants of these names, and what these functions are called with. */
const named = new Set(['reason', 'suggest', 'error'])
const called = new Map([
  ['bad', [4]],
  ['say', [2, 3, 4]],
  ['unread', [1]],
  ['no', [0, 1]],
])

/** Every message of a module as written in it: its words, with the blanks between them. */
function messagesOf(path: string): {readonly parts: readonly string[]; readonly where: string}[] {
  const file = ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.Latest, true)
  const found: {parts: readonly string[]; where: string}[] = []
  const take = (node: ts.Expression | undefined): void => {
    if (node === undefined) return
    const where = `${path}:${file.getLineAndCharacterOfPosition(node.getStart()).line + 1}`
    if (ts.isStringLiteralLike(node)) found.push({parts: [node.text], where})
    else if (ts.isTemplateExpression(node))
      found.push({parts: [node.head.text, ...node.templateSpans.map((span) => span.literal.text)], where})
    else if (ts.isConditionalExpression(node)) {
      take(node.whenTrue)
      take(node.whenFalse)
    }
  }
  const visit = (node: ts.Node): void => {
    if (ts.isFunctionDeclaration(node) && elsewhere.has(node.name?.text ?? '')) return
    if (ts.isPropertyAssignment(node) && named.has(node.name.getText())) take(node.initializer)
    if (ts.isVariableDeclaration(node) && named.has(node.name.getText())) take(node.initializer)
    if (ts.isCallExpression(node)) for (const i of called.get(node.expression.getText()) ?? []) take(node.arguments[i])
    ts.forEachChild(node, visit)
  }
  visit(file)
  // Rules, severities and keys stand among the arguments too: a message has a blank in it.
  return found.filter(({parts}) => parts.some((part) => part.includes(' ')) || parts.length > 1)
}

const blanks = [
  'Loaf',
  '12',
  'back',
  '12 cm',
  '12 min',
  'a length',
  '',
  'vault',
  'no dish to bake',
  'a moderate oven',
  'the temperatures disagree',
  '“36 in” or “91 cm”',
  '“yes”, “no”, “browns”',
  'write “12 loaves”, “for 40”, “2 times”, “3 kg” or “fill the floor”',
]

/** The message with every way of filling its blanks, until one is said in German. */
function saidSomehow(parts: readonly string[]): boolean {
  const fill = (text: string, next: number): boolean =>
    next === parts.length
      ? !messageWords({severity: 'warning', reason: text}, german).foreign
      : blanks.some((blank) => fill(`${text}${blank}${parts[next]}`, next + 1))
  return fill(parts[0]!, 1)
}

describe('messages in German', () => {
  it.each([
    ['src/plan/check.ts', 30],
    ['src/plan/check-fires.ts', 5],
    ['src/plan/check-floor.ts', 3],
    ['src/plan/check-making.ts', 4],
    ['src/plan/check-rising.ts', 4],
    ['src/plan/check-steps.ts', 8],
    ['src/plan/steps.ts', 2],
    ['src/plan/unrisen.ts', 1],
    ['src/plan/day.ts', 12],
    ['src/plan/day-lines.ts', 8],
    ['src/receipt/read.ts', 10],
    ['src/receipt/translate.ts', 4],
    ['src/receipt/front-matter.ts', 10],
    ['src/receipt/facts.ts', 3],
    ['src/measure/quantity.ts', 15],
    ['src/oven/read.ts', 30],
    ['src/oven/log.ts', 12],
    ['src/oven/signs.ts', 10],
    ['src/scale/batches.ts', 4],
    ['src/scale/counted.ts', 6],
    ['src/scale/dishes.ts', 3],
    ['src/scale/in-vessels.ts', 5],
    ['src/scale/kind-figures.ts', 2],
    ['src/scale/linked-receipt.ts', 4],
    ['src/scale/order.ts', 5],
    ['src/scale/passing.ts', 3],
    ['src/scale/salt-and-leaven.ts', 2],
    ['src/scale/time-by-depth.ts', 5],
    ['src/scale/too-full.ts', 5],
    ['src/receipt/vessel.ts', 4],
    ['src/scale/amount-phrase.ts', 8],
  ] as const)('say everything that %s says', (path, least) => {
    const all = messagesOf(path)
    expect(all.length).toBeGreaterThanOrEqual(least)
    expect(all.filter(({parts}) => !saidSomehow(parts)).map(({parts, where}) => `${where}: ${parts.join('…')}`)).toEqual([])
  })

  it('keep names, figures and the words to be written', () => {
    const said = (reason: string, suggest?: string): string =>
      messageLine(
        {file: 'day.md', line: 3, column: 2, severity: 'error', rule: 'x', reason, ...(suggest ? {suggest} : {})},
        german,
      )
    expect(said('Brown bread (1/2) at the back: set in at 182 °C; no less than 200 °C')).toBe(
      'day.md:3:2: Fehler: Brown bread (1/2) hinten: bei 182 °C eingeschossen; nicht unter 200 °C',
    )
    expect(said('people: “many” is not a whole number', 'write a whole number from 1 to 5000, such as “people: 40”')).toBe(
      'day.md:3:2: Fehler: people: „many“ ist keine ganze Zahl → eine ganze Zahl von 1 bis 5000 schreiben, etwa „people: 40“',
    )
    expect(said('“wantd by 6 pm” is not read as a time')).toBe('day.md:3:2: Fehler: „wantd by 6 pm“ wird nicht als Zeit gelesen')
    expect(said('“6 pies” below “Pies” is not read')).toBe('day.md:3:2: Fehler: „6 pies“ unter „Pies“ wird nicht gelesen')
    expect(
      said(
        '“zedoary” is not an ingredient this lexicon knows: its words are carried through without a weight (3 times, on lines 4, 9)',
      ),
    ).toContain(
      '„zedoary“ ist keine Zutat, die unser Wörterbuch kennt: die Worte bleiben ohne Gewicht stehen (3 Mal, in den Zeilen 4, 9)',
    )
  })

  it('are marked where nobody has put them into German', () => {
    const message: Message = {file: 'a', line: 1, column: 1, severity: 'info', rule: 'x', reason: 'a thing never said'}
    expect(messageWords(message, german)).toMatchObject({severity: 'Hinweis', reason: 'a thing never said', foreign: true})
  })
})

describe('a German run of the sheets', () => {
  const sheetsOf = (loaf: string, ...more: string[]): Promise<{readonly err: string; readonly code: number}> =>
    inFolder(
      new Map([
        ...smallDay,
        ['day.md', smallDay.get('day.md')!.replace('- [Cake](receipts/cake.md)\n', '')],
        [
          'oven.md',
          `${smallDay.get('oven.md')}\n| date | hours after raking | reading | value |\n| --- | --- | --- | --- |\n| May | soon | vault | 200 °C |\n`,
        ],
        ['receipts/loaf.md', loaf],
      ]),
      (day) => run(['sheets', day, '--out', join(day, 'out'), ...more]),
    )
  const loaf =
    '# Loaf\n\n- 500 g flour\n- 320 ml water\n- 10 g salt\n- 7 g dry yeast\n- 3 g zedwort\n\nBake at 230 °C for 40 minutes. Makes 1 loaf.\n'
  const faulty = `---\nyear: long ago\nserve: 6\n---\n\n${loaf}`

  it('says its warnings in German', async () => {
    const {err, code} = await sheetsOf(loaf, '--language', 'de')
    expect(code).toBe(0)
    expect(err).toContain('Warnung: „soon“ ist keine Zahl von Stunden (oven-reading)\n    → Stunden nach dem Ausräumen schreiben')
    expect(err).toMatch(/Warnung: „.*zedwort“ ist keine Zutat/)
    expect(err).not.toMatch(/\b(?:warning|the|write|is)\b/)
  }, 60_000)

  it('says in German what must be put right first, and in English without --language', async () => {
    const {err, code} = await sheetsOf(faulty, '--language=de')
    expect(code).toBe(2)
    expect(err).toMatch(
      /Fehler: year: „long ago“ ist kein Jahr \(value\)\n {4}→ das Jahr in Ziffern schreiben, etwa „year: 1829“/,
    )
    expect(err).toMatch(/Fehler: „serve“ ist kein Schlüssel dieser Datei \(key-unknown\)\n {4}→ “serves” schreiben/)
    expect((await sheetsOf(faulty)).err).toMatch(/error: “serve” is not a key of this file \(key-unknown\)\n {4}→ write “serves”/)
  }, 60_000)
})

describe('the times of day in messages', () => {
  const early: Message = {
    file: 'day.md',
    line: 12,
    column: 3,
    severity: 'warning',
    rule: 'too-early',
    reason: 'Loaf at 9:00: wanted by 14:00; lit at 6:00, no fire has that ready before tomorrow 1:05',
    suggest: 'write “wanted by tomorrow 1:05” or later, or “fire from: yesterday 21:00” or earlier',
    times: [840, 360, 1505, -180],
  }
  it('are those of the rest of the sheet, and to be written as a file takes them; a user’s own words stay', () => {
    const said = messageWords(early, styleOf({}))
    expect(said.reason).toBe(
      `Loaf at 9:00: wanted by 2:00 pm; lit at 6:00 am, no fire has that ready before ${clock(1505, styleOf({}))}`,
    )
    expect(said.suggest).toBe('write “wanted by tomorrow 1:05 am” or later, or “fire from: yesterday 9:00 pm” or earlier')
    for (const [, words] of said.suggest!.matchAll(/“(?:wanted by|fire from:) ([^”]+)”/g))
      expect(parseClock(words!).ok).toBe(true)
    expect(messageWords(early, styleOf({clock: 24})).reason).toContain('wanted by 14:00; lit at 06:00')
    expect(messageWords(early, german).reason).toContain(
      `gewünscht bis 14:00; bei einem Feuer um 06:00 nicht vor ${clock(1505, german)}`,
    )
    expect(messageWords(early, styleOf({language: 'de', clock: 12})).reason).toContain(
      'gewünscht bis 2:00 nachm.; bei einem Feuer um',
    )
  })
  it('are so before a colon too', () => {
    const reason = 'Loaf: set in at 14:40, and the dough has risen and been shaped by 13:40: it holds for 25 min'
    const said = messageWords({...early, reason, suggest: 'keep it cool', times: [880, 820]}, styleOf({}))
    expect(said.reason).toBe('Loaf: set in at 2:40 pm, and the dough has risen and been shaped by 1:40 pm: it holds for 25 min')
  })
  it('are named by every module that writes one', () => {
    for (const file of ['day', 'too-early', 'unrisen', 'steps'])
      expect(readFileSync(`src/plan/${file}.ts`, 'utf8').includes('writeClock('), file).toBe(true)
    const all = readdirSync('src/plan', {recursive: true, encoding: 'utf8'}).filter((file) => file.endsWith('.ts'))
    const writers = all.filter((file) => readFileSync(`src/plan/${file}`, 'utf8').includes('writeClock('))
    for (const file of writers)
      expect(readFileSync(`src/plan/${file}`, 'utf8'), file).toMatch(/times: \[|times\?: readonly number/)
  })
})
