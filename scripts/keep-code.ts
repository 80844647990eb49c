// Keeps the code that V8 makes of the built command, so that its start need not make it again (see src/cli/start.ts).
import {mkdtempSync, rmSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join, resolve} from 'node:path'
import {pathToFileURL} from 'node:url'
import {keptCode, loadCommand} from '../src/cli/kept-code.js'

const file = join('dist', keptCode())
const {script, command} = loadCommand(pathToFileURL(resolve('dist/hearthfall.js')).href)
const out = mkdtempSync(join(tmpdir(), 'hearthfall-'))
try {
  for (const args of [
    ['translate', 'corpus-demo/receipts/apple-pies.md'],
    ['oven', 'corpus-demo/oven.md'],
    ['plan', 'corpus-demo', '--afresh'],
    ['sheets', 'corpus-demo', '--afresh', '--out', join(out, 'sheets')],
  ]) {
    const {code, err} = await command.run(args)
    if (code === 2) throw new Error(`hearthfall ${args.join(' ')} failed: ${err}`)
  }
} finally {
  rmSync(out, {recursive: true, force: true})
}
writeFileSync(file, script.createCachedData())
