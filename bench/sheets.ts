import {readDayFolder} from '../src/cli/day-folder.js'
import {items} from '../src/lexicon/items.js'
import {sources} from '../src/lexicon/sources.js'
import {makePlan} from '../src/plan/make.js'
import {translate} from '../src/receipt/translate.js'
import type {Receipt} from '../src/receipt/types.js'
import {sheets} from '../src/sheets/sheets.js'

/** Processor time rather than the clock's: other work on the machine does not count. */
const spent = (): number => process.cpuUsage().user / 1000

const least = (runs: number, work: () => void): number =>
  Math.min(
    ...Array.from({length: runs}, () => {
      const from = spent()
      work()
      return spent() - from
    }),
  )

const say = (what: string, ratio: number, most: number, low = 0): void => {
  const bounds = low > 0 ? `(${low} to ${most})` : `(at most ${most})`
  process.stdout.write(`${what.padEnd(64)} ${ratio.toFixed(2)} ${bounds}${ratio <= most && ratio >= low ? '' : '  MISSED'}\n`)
}

/** Ratios within one run: the demo's sheets against planning it, a hundred handouts against reading their receipts, growth with number. */
export async function run(): Promise<void> {
  const read = readDayFolder('corpus-demo')
  const from = spent()
  const {plan, problem} = makePlan({oven: read.oven, day: read.day, receipts: read.receipts})
  const planning = spent() - from
  const base = {plan, problem, oven: read.oven, sources, items}
  const all = (): void => void sheets({...base, receipts: read.receipts, texts: read.sources}, {audience: 'class'})
  const first = least(1, all)
  say('all sheets of the demo, first time / planning it', first / planning, 0.5)
  say('all sheets of the demo, warm / planning it', least(5, all) / planning, 0.15)

  const made = [...read.sources]
  const texts = new Map<string, string>()
  const receipts: Receipt[] = []
  const translating = least(1, () => {
    for (let i = 0; i < 100; i++) {
      // The same 25 again and again, so that 50 and 100 are twice and four times the same work.
      const [file, text] = made[(i % 25) % made.length]!
      const name = file.replace(/\.md$/, `-${i}.md`)
      texts.set(name, text)
      receipts.push(...translate(text, {file: name}).receipts)
    }
  })
  const handouts = (count: number): number => {
    const some = receipts.slice(0, count)
    // What the day itself takes is measured without handouts and taken off.
    return least(5, () => void sheets({...base, receipts: some, texts}, {audience: 'class'}))
  }
  handouts(100)
  const day = least(5, () => void sheets({...base, receipts: [], texts}, {audience: 'class'}))
  const [few, half, whole] = [25, 50, 100].map((count) => (handouts(count) - day) / count) as [number, number, number]
  say('handouts of 100 receipts / reading those receipts', (whole * 100) / translating, 4)
  say('time a handout, 50 against 25', half / few, 1.3, 0.7)
  say('time a handout, 100 against 25', whole / few, 1.3, 0.7)
  process.stdout.write(`${'100 handouts with exercise and key'.padEnd(64)} ${Math.round(whole * 100)} ms\n`)
}
