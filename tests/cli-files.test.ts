import {existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {afterAll, beforeEach, describe, expect, it} from 'vitest'
import {Failure} from '../src/cli/failure.js'
import {decodeText, writeAll} from '../src/cli/files.js'
import type {Message} from '../src/receipt/types.js'

const base = mkdtempSync(join(tmpdir(), 'hearthfall-files-'))
let out = ''
let n = 0
beforeEach(() => {
  n += 1
  out = join(base, `out-${n}`)
})
afterAll(() => rmSync(base, {recursive: true, force: true}))

const rules = (run: () => void): string[] => {
  try {
    run()
  } catch (error) {
    if (error instanceof Failure) return error.messages.map((m) => m.rule)
    throw error
  }
  return []
}
const read = (path: string): string => readFileSync(join(out, path), 'utf8')

describe('writing a set of files', () => {
  it('makes folders, and may write again what it wrote', () => {
    writeAll(out, new Map([['a/b.txt', 'one']]), false)
    writeAll(out, new Map([['a/b.txt', 'two']]), false)
    expect(read('a/b.txt')).toBe('two')
  })

  it('leaves a file alone that is not ours, and writes nothing at all', () => {
    mkdirSync(out)
    writeFileSync(join(out, 'b.txt'), 'mine')
    const files = new Map([
      ['a.txt', 'new'],
      ['b.txt', 'new'],
    ])
    expect(rules(() => writeAll(out, files, false))).toEqual(['out-exists'])
    expect(read('b.txt')).toBe('mine')
    expect(existsSync(join(out, 'a.txt'))).toBe(false)
    writeAll(out, files, true)
    expect(read('b.txt')).toBe('new')
  })

  it('leaves a file alone that was changed by hand since we wrote it', () => {
    writeAll(out, new Map([['a.txt', 'ours']]), false)
    writeFileSync(join(out, 'a.txt'), 'ours, and a note in the margin')
    expect(rules(() => writeAll(out, new Map([['a.txt', 'ours again']]), false))).toEqual(['out-exists'])
    expect(read('a.txt')).toContain('margin')
  })

  it.each(['../x.txt', 'a/../../x.txt', '/x.txt'])('nothing outside the folder: %s', (path) => {
    expect(rules(() => writeAll(out, new Map([[path, 'x']]), true))).toEqual(['out-path'])
    expect(existsSync(join(base, 'x.txt'))).toBe(false)
  })

  it('does not follow a link out of the folder', () => {
    mkdirSync(out)
    const elsewhere = join(base, `elsewhere-${n}`)
    mkdirSync(elsewhere)
    writeFileSync(join(elsewhere, 'a.txt'), 'kept')
    symlinkSync(elsewhere, join(out, 'd'))
    symlinkSync(join(elsewhere, 'a.txt'), join(out, 'a.txt'))
    expect(rules(() => writeAll(out, new Map([['d/a.txt', 'x']]), true))).toEqual(['out-link'])
    expect(rules(() => writeAll(out, new Map([['a.txt', 'x']]), true))).toEqual(['out-link'])
    expect(readFileSync(join(elsewhere, 'a.txt'), 'utf8')).toBe('kept')
  })

  it('leaves no temporary file behind', () => {
    writeAll(out, new Map([['a.txt', 'x']]), false)
    expect(readdirSync(out).sort()).toEqual(['.hearthfall-files.json', 'a.txt'])
  })
})

describe('text from bytes', () => {
  it('keeps a byte order mark, so that offsets are those of the file', () => {
    expect(decodeText(new Uint8Array([0xef, 0xbb, 0xbf, 0x61]), 'a')).toBe('\uFEFFa')
  })
  // WHATWG Encoding Standard, index windows-1252: 0xE9 is é, 0xBD is ½, 0x81 is nothing.
  it('is read as Windows-1252 where it is not UTF-8, and that is told', () => {
    const told: Message[] = []
    expect(decodeText(new Uint8Array([0x61, 0xe9, 0xbd]), 'a', 'receipt', (message) => told.push(message))).toBe('aé½')
    expect(told.map(({rule, severity, file}) => `${file} ${severity} ${rule}`)).toEqual(['a warning file-encoding'])
  })
  it('is read as UTF-16 by its mark, and nothing is told of that', () => {
    const told: Message[] = []
    expect(decodeText(new Uint8Array([0xff, 0xfe, 0xf6, 0x00]), 'a', 'file', (message) => told.push(message))).toBe('\uFEFFö')
    expect(told).toEqual([])
  })
  it('refuses what is no text', () => {
    expect(rules(() => decodeText(new Uint8Array([0x61, 0xe9, 0x81]), 'a'))).toEqual(['file-binary'])
    expect(rules(() => decodeText(new Uint8Array([0x61, 0x00]), 'a'))).toEqual(['file-binary'])
  })
})
