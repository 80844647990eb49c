import {readFileSync} from 'node:fs'
import {describe, expect, it} from 'vitest'
import {citations, sourcesDocument} from '../scripts/sources-document.js'
import {sources} from '../src/lexicon/index.js'

describe('docs/sources.md', () => {
  it('is up to date with the rows (npx tsx scripts/sources.ts)', () => {
    expect(readFileSync(new URL('../docs/sources.md', import.meta.url), 'utf8')).toBe(sourcesDocument())
  })

  it('cites only sources that have a row', () => {
    const known = new Set(sources.map((source) => source.id))
    expect([...citations().keys()].filter((id) => !known.has(id))).toEqual([])
  })

  it('gives every source of a figure a title, and a place to find it unless it is a stand-in', () => {
    for (const source of sources) expect(source.title.length, source.id).toBeGreaterThan(8)
  })
})
