import {readdirSync, readFileSync} from 'node:fs'
import {join} from 'node:path'
import {check} from 'recheck'
import ts from 'typescript'
import {describe, expect, it} from 'vitest'

/*
 * No pattern that meets a user's text may take more than linear time: every regular expression of the core is handed to
 * `recheck` (automata and fuzzing; M. Takahashi, "recheck", makenowjust-labs.github.io/recheck). Patterns met with one word or one line
 * of bounded length are checked all the same. The sentences of `sheets/words` are patterns made of templates; they are met only with
 * text of bounded length.
 */
const FOLDERS = ['lexicon', 'measure', 'receipt', 'oven', 'scale', 'plan', 'plan/ways', 'sheets']

interface Found {
  readonly source: string
  readonly flags: string
  readonly where: string
}

/** Every regular-expression literal of a file, by TypeScript's own parser, and every `new RegExp` that no literal stands in. */
function expressionsOf(path: string): {literals: Found[]; made: string[]} {
  const file = ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.Latest, true)
  const literals: Found[] = []
  const made: string[] = []
  const visit = (node: ts.Node): void => {
    const where = `${path}:${file.getLineAndCharacterOfPosition(node.getStart()).line + 1}`
    if (ts.isRegularExpressionLiteral(node)) {
      const end = node.text.lastIndexOf('/')
      literals.push({source: node.text.slice(1, end), flags: node.text.slice(end + 1), where})
    } else if (ts.isNewExpression(node) && node.expression.getText() === 'RegExp') made.push(where)
    ts.forEachChild(node, visit)
  }
  visit(file)
  return {literals, made}
}

const files = FOLDERS.flatMap((folder) =>
  readdirSync(join('src', folder))
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join('src', folder, name)),
)
const all = files.map(expressionsOf)
const unique = new Map(all.flatMap(({literals}) => literals).map((one) => [`/${one.source}/${one.flags}`, one]))

describe('regular expressions of the core', () => {
  it('are found', () => {
    expect(unique.size).toBeGreaterThan(50)
  })

  it('none is put together at run time, where it could not be checked', () => {
    expect(all.flatMap(({made}) => made)).toEqual([])
  })

  it('of receipts hold no letter that a word has lost when it meets them (fold in section.ts)', () => {
    const dead = all
      .flatMap(({literals}) => literals)
      .filter(({source, where}) => /[äöüéèêâ]/i.test(source) && /receipt/.test(where))
    expect(dead.map(({where, source}) => `${where} ${source}`)).toEqual([])
  })

  it('recheck tells a bad one from a good one', async () => {
    expect((await check('^(a+)+$', '', {timeout: 20_000})).status).toBe('vulnerable')
    expect((await check('^a+$', '', {timeout: 20_000})).status).toBe('safe')
  }, 60_000)

  it('none backtracks more than linearly', async () => {
    const bad: string[] = []
    for (const [text, {source, flags, where}] of unique) {
      const told = await check(source, flags, {timeout: 20_000, checker: 'auto'})
      if (told.status !== 'safe')
        bad.push(`${where} ${text}: ${told.status}, ${told.status === 'vulnerable' ? told.complexity.summary : told.error.kind}`)
    }
    expect(bad).toEqual([])
  }, 300_000)
})
