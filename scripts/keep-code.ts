// Keeps the code that V8 makes of the built command, so that its start need not make it again (see src/cli/start.ts).
import {mkdtempSync, readFileSync, rmSync, writeFileSync} from 'node:fs'
import {createRequire} from 'node:module'
import {tmpdir} from 'node:os'
import {join, resolve} from 'node:path'
import {pathToFileURL} from 'node:url'
import {Script} from 'node:vm'
import {keptCode, wrapped} from '../src/cli/kept-code.js'

const filename = resolve('dist/command.cjs')
const url = pathToFileURL(resolve('dist/hearthfall.js')).href
const script = new Script(wrapped(readFileSync(filename, 'utf8')), {filename})
const made = {exports: {}} as {exports: {run: (args: readonly string[]) => Promise<{code: number; err: string}>}}
const load = script.runInThisContext() as (module: typeof made, exports: object, require: NodeJS.Require, url: string) => void
load(made, made.exports, createRequire(url), url)
const out = mkdtempSync(join(tmpdir(), 'hearthfall-'))
try {
  for (const args of [
    ['translate', 'corpus-demo/receipts/apple-pies.md'],
    ['oven', 'corpus-demo/oven.md'],
    ['plan', 'corpus-demo'],
    ['sheets', 'corpus-demo', '--out', join(out, 'sheets')],
  ]) {
    const {code, err} = await made.exports.run(args)
    if (code === 2) throw new Error(`hearthfall ${args.join(' ')} failed: ${err}`)
  }
} finally {
  rmSync(out, {recursive: true, force: true})
}
writeFileSync(join('dist', keptCode()), script.createCachedData())
