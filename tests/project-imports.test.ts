import {readdirSync, readFileSync} from 'node:fs'
import {join} from 'node:path'
import {build} from 'esbuild'
import {describe, expect, it} from 'vitest'

/** The chain of DEVELOPERS.md, lowest first: a module may import from itself and from those before it. */
const chain = ['lexicon', 'measure', 'receipt', 'oven', 'scale', 'plan', 'sheets', 'cli']

const files = chain.flatMap((module) =>
  readdirSync(join('src', module), {recursive: true, encoding: 'utf8'})
    .filter((f) => /\.tsx?$/.test(f))
    .map((f) => ({module, path: join('src', module, f)})),
)
const imports = (text: string): string[] => [...text.matchAll(/(?:from|import)\s*\(?\s*'([^']+)'/g)].map((m) => m[1]!)

describe('the chain of modules', () => {
  it('is all there', () => expect(new Set(files.map((f) => f.module)).size).toBe(chain.length))

  it.each(files)('$path imports nothing further along', ({module, path}) => {
    const wrong = imports(readFileSync(path, 'utf8'))
      .map((target) => /^(?:\.\.\/)+(\w+)\//.exec(target)?.[1])
      .filter((other) => other !== undefined && chain.includes(other) && chain.indexOf(other) > chain.indexOf(module))
    expect(wrong).toEqual([])
  })

  it.each(files.filter((f) => f.module !== 'cli'))('$path touches no file, clock, terminal or network', ({path}) => {
    const text = readFileSync(path, 'utf8').replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, '')
    expect(imports(text).filter((target) => target.startsWith('node:'))).toEqual([])
    expect(text).not.toMatch(
      /\bprocess\.|\bDate\.now\(|\bnew Date\(\)|\bMath\.random\(|\bfetch\(|\bconsole\.|\bTemporal\.Now\b|\bperformance\./,
    )
  })
})

/** Every module that a module draws in, however far. */
async function reached(entry: string): Promise<string[]> {
  const {metafile} = await build({
    entryPoints: [entry],
    bundle: true,
    write: false,
    metafile: true,
    packages: 'external',
    format: 'esm',
    jsx: 'automatic',
    loader: {'.css': 'empty'},
    outdir: 'unwritten',
  })
  return Object.keys(metafile.inputs)
}

describe('what the page itself carries', () => {
  // The tables belong to the worker: in the page's own script each would be read before the first view is drawn.
  it.each(['src/page/main.tsx', 'src/page/rest.ts', 'src/sheets/heat-data.ts'])(
    '%s draws in no tables of receipts',
    async (entry) => {
      const tables = (await reached(entry)).filter((path) =>
        /^src\/lexicon\/(?:index|items|kinds|measures|oven-words)/.test(path),
      )
      expect(tables).toEqual([])
    },
  )

  it('needs no view but the first, nor the tables and figures of the others, before that is drawn', async () => {
    const found = await reached('src/page/main.tsx')
    expect(found).toContain('src/page/receipts.tsx')
    // Files may be dropped on the first view; how their bytes are read takes no table.
    const needed = ['src/receipt/decode.ts']
    expect(
      found.filter(
        (path) =>
          !needed.includes(path) &&
          /^src\/(?!page\/)|^src\/page\/(?:as-read|bake|day|front|keep-page|oven|plan|print|zip)\./.test(path),
      ),
    ).toEqual([])
  })
})
