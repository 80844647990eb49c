import {readdirSync, readFileSync} from 'node:fs'
import {describe, expect, it} from 'vitest'
import {phrases} from '../src/plan/phrases.js'
import {deMessages} from '../src/sheets/words/de-messages.js'
import {dePhrases} from '../src/sheets/words/de-phrases.js'

/**
 * A dish is called by its receipt's title, and “Buns” or “Apple pies” are many: no verb may stand behind a title that has one form for one
 * and another for many. Grammar, from memory.
 */
const ENGLISH = /\}["”]? (?:is|has|was|does|goes|stands|stays|wants|bears|ends|needs|takes|comes|gets|leaves)\b/
const GERMAN =
  /\{(?:dish|dishes|other)\} (?:\{zone:text\} )?(?:ist|hat|wird|würde|war|soll|darf|könnte|bleibt|steht|gilt|braucht|bekäme|endet|geht|kommt|ließe)\b/

describe('no message is wrong for a title that is a plural', () => {
  it('in the planner’s and the checker’s English', () => {
    const titles =
      /\$\{(?:dish\.title|item\.dish|name|[ab]\.dish\.title|dish\.dish\.title|front\.dish\.title \$\{front\.placed\.number)/
    const files = [
      ...readdirSync('src/plan', {recursive: true, encoding: 'utf8'}).flatMap((file) =>
        file.endsWith('.ts') ? [`src/plan/${file}`] : [],
      ),
      'src/scale/floor.ts',
    ]
    const lines = files.flatMap((file) =>
      readFileSync(file, 'utf8')
        .split('\n')
        .flatMap((line, i) => (titles.test(line) && ENGLISH.test(line) ? [`${file}:${i + 1} ${line.trim()}`] : [])),
    )
    expect(lines).toEqual([])
  })
  it('in the phrases of a plan, in either language', () => {
    const named = (text: string): boolean => /^\{dishes\} /.test(text)
    expect(Object.values(phrases).filter((text) => named(text) && ENGLISH.test(text))).toEqual([])
    expect(Object.values(dePhrases).filter((text) => GERMAN.test(text) && !text.includes('und {others}'))).toEqual([])
  })
  it('in the German of the messages, whose names are in quotes where a verb stands behind them', () => {
    const plain = deMessages.filter(
      ([english, german]) => english.startsWith('{dish}') && (GERMAN.test(german) || ENGLISH.test(english)),
    )
    expect(plain).toEqual([])
  })
  it('and tells a wrong one from a right one', () => {
    // biome-ignore lint/suspicious/noTemplateCurlyInString: a piece of a source as it is written
    expect(ENGLISH.test('${dish.title} is drawn')).toBe(true)
    // biome-ignore lint/suspicious/noTemplateCurlyInString: a piece of a source as it is written
    expect(ENGLISH.test('${dish.title}: drawn')).toBe(false)
    expect(GERMAN.test('{dish} hinten wird')).toBe(false)
    expect(GERMAN.test('{dish} {zone:text} wird bei')).toBe(true)
  })
})
