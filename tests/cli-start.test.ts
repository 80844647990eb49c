import {execFileSync} from 'node:child_process'
import {copyFileSync, existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {afterAll, beforeAll, describe, expect, it} from 'vitest'
import {keptCode} from '../src/cli/kept-code.js'

const built = ['hearthfall.js', 'command.cjs', keptCode()]

describe.skipIf(!built.every((name) => existsSync(join('dist', name))))('the built command', () => {
  let folder = ''
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'hearthfall-start-'))
    mkdirSync(join(folder, 'dist'))
    copyFileSync('package.json', join(folder, 'package.json'))
    for (const name of built.slice(0, 2)) copyFileSync(join('dist', name), join(folder, 'dist', name))
  })
  afterAll(() => rmSync(folder, {recursive: true, force: true}))

  const run = (): string =>
    execFileSync(process.execPath, [join(folder, 'dist/hearthfall.js'), 'oven', 'corpus-demo/oven.md'], {encoding: 'utf8'})

  it('says the same with its kept code, without it, and with code that V8 refuses', () => {
    const without = run()
    expect(without).toContain('Quillet Farm')
    const kept = join(folder, 'dist', keptCode())
    copyFileSync(join('dist', keptCode()), kept)
    expect(run()).toBe(without)
    writeFileSync(kept, 'this is no code of V8’s')
    expect(run()).toBe(without)
  })
})
