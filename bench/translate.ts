import {execFileSync} from 'node:child_process'
import {existsSync, mkdirSync, readdirSync, readFileSync, rmSync} from 'node:fs'
import {join, resolve} from 'node:path'
import {pathToFileURL} from 'node:url'
import {build} from 'esbuild'
import remarkParse from 'remark-parse'
import {unified} from 'unified'
import type {Translation} from '../src/receipt/types.js'

const parser = unified().use(remarkParse)
type Translate = (source: string, options: {readonly file: string}) => Translation

/**
 * `translate` as the package ships it: put together by esbuild with the options of `scripts/build.mjs`, from the source as it is now.
 * Straight from the source it would run through tsx, which wraps every inner function to keep its name; users never run that, and
 * `remark-parse`, whose packages tsx leaves alone, does not pay for it.
 *
 * @returns its file, below `node_modules` so that packages are found
 */
async function shipped(): Promise<string> {
  const outfile = resolve('node_modules/.cache/hearthfall/bench-translate.mjs')
  mkdirSync(join(outfile, '..'), {recursive: true})
  await build({
    entryPoints: ['src/receipt/translate.ts'],
    outfile,
    bundle: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    packages: 'external',
    logLevel: 'warning',
  })
  return outfile
}

const line = (what: string, figure: string): void => {
  process.stdout.write(`${what.padEnd(64)} ${figure}\n`)
}
const say = (what: string, ratio: number, most: number): void =>
  line(what, `${ratio.toFixed(2)} (at most ${most})${ratio <= most ? '' : '  MISSED'}`)

/** Time of the processor that a piece of work takes, ms: what else the machine does meanwhile does not count. */
const timeOf = (work: () => unknown): number => {
  const from = process.cpuUsage()
  work()
  const {user, system} = process.cpuUsage(from)
  return (user + system) / 1000
}

/** Rounds of the same pieces of work in turn, so that all meet the machine in the same moods: the times of each, ms, least first. */
function timesOf(rounds: number, works: ReadonlyArray<() => unknown>): number[][] {
  const times = works.map((): number[] => [])
  for (let round = 0; round < rounds; round++) works.forEach((work, i) => void times[i]!.push(timeOf(work)))
  return times.map((each) => each.sort((a, b) => a - b))
}
const least = (times: readonly number[]): number => times[0]!
const middle = (times: readonly number[]): number => times[times.length >> 1]!

/** Runs in a process of its own: the book is read, translated, and what memory that took is told, MB. */
const MEMORY_PROBE = `
import {readFileSync} from 'node:fs'
const {translate} = await import(process.argv[1])
globalThis.kept = translate(readFileSync(process.argv[2], 'utf8'), {file: 'book.md'})
console.log(process.resourceUsage().maxRSS / 1024)`

/** Ratio of `translate` to `remark-parse` alone on the same text: single receipts, a whole book, growth with size, and memory. */
export async function run(): Promise<void> {
  const module = pathToFileURL(await shipped()).href
  const {translate}: {translate: Translate} = await import(module)
  const folder = 'corpus-demo/receipts'
  const receipts = readdirSync(folder)
    .filter((n) => n.endsWith('.md'))
    .map((n) => readFileSync(join(folder, n), 'utf8'))
  // Each round is some dozens of milliseconds; the first ones only warm the engine up.
  const single = [
    (): void => {
      for (const text of receipts) translate(text, {file: 'a.md'})
    },
    (): void => {
      for (const text of receipts) parser.parse(text)
    },
  ]
  timesOf(60, single)
  const [one, parsed] = timesOf(120, single)
  say(`translate / remark-parse, ${receipts.length} receipts of the demo one by one`, middle(one!) / middle(parsed!), 2)

  // The book is one of the public-domain texts kept beside the checkout; elsewhere the demo's receipts stand in, a hundred times over.
  const shared = resolve('..', 'shared', 'corpora', 'book-1861-half.md')
  const book = existsSync(shared) ? readFileSync(shared, 'utf8') : receipts.join('\n\n').repeat(100)
  const whole = (): Translation => translate(book, {file: 'book.md'})
  const [ours, theirs] = timesOf(2, [whole, () => parser.parse(book)])
  say(
    `translate / remark-parse, one book of ${(book.length / 1e6).toFixed(1)} MB as one file`,
    least(ours!) / least(theirs!),
    0.4,
  )

  // The engine makes faster code of what it has run often: unless it has done so before the first round, one copy is charged with it.
  const once = book.slice(0, book.lastIndexOf('\n# ', book.length / 2))
  const copies = [1, 2, 4].map((n) => `${once}\n\n`.repeat(n))
  const works = copies.map((text) => () => translate(text, {file: 'book.md'}))
  timesOf(2, works)
  const times = timesOf(5, works).map(least)
  for (const i of [1, 2]) {
    const ratio = times[i]! / 2 ** i / times[0]!
    line(
      `time a copy, ${2 ** i} copies against one`,
      `${ratio.toFixed(2)} (0.85 to 1.15)${Math.abs(ratio - 1) <= 0.15 ? '' : '  MISSED'}`,
    )
  }
  if (existsSync(shared)) {
    const told = execFileSync(process.execPath, ['--input-type=module', '-e', MEMORY_PROBE, module, shared], {encoding: 'utf8'})
    const most = 300
    line(
      'memory of a process that translates the book, at its highest',
      `${Math.round(Number(told))} MB (at most ${most})${Number(told) <= most ? '' : '  MISSED'}`,
    )
  }
  rmSync(resolve('node_modules/.cache/hearthfall'), {recursive: true, force: true})
}
