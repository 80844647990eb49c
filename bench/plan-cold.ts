import {spawnSync} from 'node:child_process'
import {copyFileSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {fileURLToPath} from 'node:url'

const root = fileURLToPath(new URL('..', import.meta.url))
const demo = join(root, 'corpus-demo')
/** Receipts of the demo that are asked for once more, as receipts of their own, to make thirty. */
const TWICE = ['apple-pies', 'cup-cake', 'custards', 'gingerbread', 'plum-cake', 'rice-pudding', 'soda-biscuits']
/** What is asked for of a receipt whose own amount is too much for thirty dishes on one floor. */
const AMOUNTS: Readonly<Record<string, string>> = {
  'apple-pies': '1 pie',
  'baked-beans': '1 crock',
  'dried-apples': '1 frame',
  'french-rolls': '12 rolls',
  'household-bread': '4 loaves',
  'indian-pudding': '1 dish',
  'light-cake': '1 cake',
  'mutton-pies': '3 pies',
  'onion-quiche': '1 quiche',
  'plum-cake': '1 cake',
  'rye-and-indian-bread': '1 loaf',
  'soda-biscuits': '12 biscuits',
}

/** Beginnings of the list of thirty: where a search goes, and how long it takes, hangs on the order of the lines too. */
const TURNS = [0, 7, 15, 22]
const RUNS = 5

/**
 * A day of thirty dishes, two days with a night between, on the demo's oven as drawn.
 *
 * @returns Its dishes, and what writes the day with its list begun so many lines later.
 */
function thirty(folder: string): {dishes: number; write: (turn: number) => void} {
  mkdirSync(join(folder, 'receipts'))
  copyFileSync(join(demo, 'oven.md'), join(folder, 'oven.md'))
  const lines: string[] = []
  const put = (id: string, name: string, text: string): void => {
    writeFileSync(join(folder, 'receipts', `${name}.md`), text)
    const title = /^# (.*)$/m.exec(text)![1]!
    lines.push(`- [${title}](receipts/${name}.md) — ${AMOUNTS[id] ?? '1 times'}`)
  }
  for (const file of readdirSync(join(demo, 'receipts')).sort()) {
    const id = file.replace(/\.md$/, '')
    const text = readFileSync(join(demo, 'receipts', file), 'utf8')
    put(id, id, text)
    if (TWICE.includes(id)) put(id, `second-${id}`, text.replace(/^# /m, '# Second '))
  }
  const head = ['date: 2027-10-02', 'people: 40', 'fire from: 5 am', 'serve: tomorrow 9 am', 'hands: 2']
  const write = (turn: number): void => {
    const list = [...lines.slice(turn), ...lines.slice(0, turn)]
    writeFileSync(join(folder, 'day.md'), `---\n${head.join('\n')}\n---\n\n# Thirty\n\n${list.join('\n')}\n`)
  }
  return {dishes: lines.length, write}
}

/**
 * The built command from a cold start, each time in a new process: the demo's day and one of thirty dishes, beside Node's own start and the
 * reading of the same receipts. Medians of five runs each. Needs `npm run build`.
 */
export async function run(): Promise<void> {
  const command = join(root, 'dist', 'hearthfall.js')
  if (!existsSync(command)) {
    console.log('nothing is built: npm run build')
    return
  }
  const folder = mkdtempSync(join(tmpdir(), 'hearthfall-'))
  const median = (...args: readonly string[]): number => {
    const took = Array.from({length: RUNS}, () => {
      const start = performance.now()
      // 1 says that not everything has its place in time, which is a plan as well.
      const {status} = spawnSync(process.execPath, args, {stdio: 'ignore'})
      if (status !== 0 && status !== 1) throw new Error(`${args.join(' ')} ended with ${status}`)
      return performance.now() - start
    })
    return took.sort((a, b) => a - b)[RUNS >> 1]!
  }
  try {
    const {dishes, write} = thirty(folder)
    const alone = median('-e', '0')
    console.log(`Node alone: ${alone.toFixed(0)} ms`)
    const tell = (what: string, day: string, read: number): void => {
      const whole = median(command, 'plan', day, '--afresh')
      console.log(
        `${what}: ${whole.toFixed(0)} ms, ${(whole / alone).toFixed(0)} times that; start and reading ${read.toFixed(0)} ms, the plan ${(whole - read).toFixed(0)} ms`,
      )
    }
    tell('the demo', demo, median(command, 'translate', join(demo, 'receipts')))
    const read = median(command, 'translate', join(folder, 'receipts'))
    for (const turn of TURNS) {
      write(turn)
      tell(`${dishes} dishes, from line ${turn + 1} on`, folder, read)
    }
  } finally {
    rmSync(folder, {recursive: true, force: true})
  }
}
