import {existsSync, readdirSync, readFileSync} from 'node:fs'
import {join} from 'node:path'
import remarkParse from 'remark-parse'
import {Bench} from 'tinybench'
import {unified} from 'unified'
import {translate} from '../src/receipt/translate.js'

const parser = unified().use(remarkParse)

/** Middle of the measured times of two pieces of work done in turn, ms. */
async function pair(ours: () => void, theirs: () => void, time: number): Promise<{ours: number; theirs: number}> {
  const bench = new Bench({time, warmupTime: time / 4})
  bench.add('ours', ours).add('theirs', theirs)
  await bench.run()
  const middle = (name: string): number => {
    const result = bench.getTask(name)?.result
    return result && 'latency' in result ? result.latency.p50 : Number.NaN
  }
  return {ours: middle('ours'), theirs: middle('theirs')}
}

const say = (what: string, ratio: number, most: number): void => {
  process.stdout.write(`${what.padEnd(64)} ${ratio.toFixed(2)} (at most ${most})${ratio <= most ? '' : '  MISSED'}\n`)
}

/** Ratio of `translate` to `remark-parse` alone on the same text: single receipts, a whole book, and growth with size. */
export async function run(): Promise<void> {
  const folder = 'corpus-demo/receipts'
  const receipts = readdirSync(folder)
    .filter((n) => n.endsWith('.md'))
    .map((n) => readFileSync(join(folder, n), 'utf8'))
  const single = await pair(
    () => {
      for (const text of receipts) translate(text, {file: 'a.md'})
    },
    () => {
      for (const text of receipts) parser.parse(text)
    },
    2000,
  )
  say(`translate / remark-parse, ${receipts.length} receipts of the demo one by one`, single.ours / single.theirs, 2)

  // The book is one of the public-domain texts kept beside the checkout; elsewhere the demo's receipts stand in, a hundred times over.
  const shared = join('..', 'shared', 'corpora', 'book-1861-half.md')
  const book = existsSync(shared) ? readFileSync(shared, 'utf8') : receipts.join('\n\n').repeat(100)
  const time = (work: () => void): number => {
    const from = performance.now()
    work()
    return performance.now() - from
  }
  translate(book.slice(0, 50_000), {file: 'book.md'})
  const whole = Math.min(...[1, 2, 3].map(() => time(() => translate(book, {file: 'book.md'}))))
  say(
    `translate / remark-parse, one book of ${(book.length / 1e6).toFixed(1)} MB as one file`,
    whole / time(() => parser.parse(book)),
    0.4,
  )

  const once = book.slice(0, book.lastIndexOf('\n# ', book.length / 2))
  const growth = [1, 2, 4].map((n) => {
    const text = `${once}\n\n`.repeat(n)
    return Math.min(...[1, 2, 3].map(() => time(() => translate(text, {file: 'book.md'})))) / n
  })
  for (const i of [1, 2]) {
    const ratio = growth[i]! / growth[0]!
    process.stdout.write(
      `time a copy, ${2 ** i} copies against one`.padEnd(65) +
        `${ratio.toFixed(2)} (0.85 to 1.15)${Math.abs(ratio - 1) <= 0.15 ? '' : '  MISSED'}\n`,
    )
  }
  process.stdout.write(
    `memory of this process at its highest`.padEnd(65) + `${Math.round(process.resourceUsage().maxRSS / 1024)} MB\n`,
  )
}
