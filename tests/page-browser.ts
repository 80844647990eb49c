/// <reference lib="dom" />
import {type ChildProcess, execFileSync, spawn} from 'node:child_process'
import {existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync} from 'node:fs'
import {createRequire} from 'node:module'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {type Browser, type BrowserContext, chromium, type Page} from 'playwright-core'
import {afterAll, beforeAll, beforeEach} from 'vitest'
import {pageWith} from '../src/page/embedded.js'

/** Debian's Chromium, kept from speaking to anyone by itself. */
export const executable = '/usr/bin/chromium'
export const hasBrowser = existsSync(executable)
const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
]

/** Build the page into a folder of its own. */
export function buildPage(): {readonly file: string; readonly url: string; readonly folder: string} {
  const folder = mkdtempSync(join(tmpdir(), 'hearthfall-page-test-'))
  const file = join(folder, 'hearthfall.html')
  execFileSync(process.execPath, ['scripts/build-page.mjs', file], {stdio: ['ignore', 'ignore', 'inherit']})
  return {file, url: `file://${file}`, folder}
}

/**
 * Chromium without a screen now and then paints no more frames, and then a click waits for one until its time is out. A test in a browser
 * is tried once more, in a browser begun anew; what is wrong with the page is wrong both times.
 */
export const inBrowser = {retry: 1}

export const launch = (): Promise<Browser> => chromium.launch({executablePath: executable, args: flags})

/**
 * The page built, and a browser to open it in, for the tests of the `describe` it is called in: begun before the first, gone after the
 * last.
 */
export function ownBrowser(): {
  readonly built: ReturnType<typeof buildPage>
  readonly browser: Browser
  /** The page with a day inside it, in a file of its own; its address. */
  readonly withDay: (name: string, files: ReadonlyMap<string, string>) => string
} {
  let built: ReturnType<typeof buildPage> | null = null
  let browser: Browser | null = null
  const begun = <T>(one: T | null): T => {
    if (one === null) throw new Error('the browser is there only while its tests run')
    return one
  }
  beforeAll(async () => {
    built = buildPage()
    browser = await launch()
  }, 120_000)
  beforeEach(async ({task}) => {
    if (!task.result?.retryCount) return
    await browser?.close()
    browser = await launch()
  })
  afterAll(async () => {
    await browser?.close()
    if (built) rmSync(built.folder, {recursive: true, force: true})
  })
  return {
    get built() {
      return begun(built)
    },
    get browser() {
      return begun(browser)
    },
    withDay(name, files) {
      const {folder, file} = begun(built)
      const own = join(folder, `${name}.html`)
      writeFileSync(own, pageWith(readFileSync(file, 'utf8'), files))
      return `file://${own}`
    },
  }
}

/** The file that is saved when something is done. Both are waited for together, so that neither fails unheard. */
export async function savedBy(page: Page, does: () => Promise<void>): Promise<Buffer> {
  const [download] = await Promise.all([page.waitForEvent('download'), does()])
  return readFileSync(await download.path())
}

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

/** What axe finds wrong with a page as it stands. */
export async function axeFaults(page: Page): Promise<string[]> {
  await page.evaluate(axe)
  return page.evaluate(async () => {
    const it = globalThis as unknown as {
      axe: {run: (where: unknown, options: unknown) => Promise<{violations: Array<{id: string; nodes: Array<{html: string}>}>}>}
    }
    return (await it.axe.run(document, {iframes: false})).violations.map(
      ({id, nodes}) => `${id}: ${nodes[0]?.html.slice(0, 160)}`,
    )
  })
}

/** Everything a page asked of anyone but itself, and every error in it. */
export function listen(context: BrowserContext): {readonly requests: string[]; readonly errors: string[]} {
  const requests: string[] = []
  const errors: string[] = []
  const watch = (page: Page): void => {
    page.on('request', (request) => {
      if (!/^(?:blob|data|about):/.test(request.url()) && !(request.url().startsWith('file:') && request.isNavigationRequest()))
        requests.push(request.url())
    })
    page.on('pageerror', (error) => errors.push(error.message))
    page.on('dialog', (dialog) => {
      errors.push(`dialog: ${dialog.message()}`)
      void dialog.dismiss()
    })
  }
  context.on('page', watch)
  return {requests, errors}
}

/** A Chromium of our own with its own profile, so that it can be killed without a warning. */
export async function mortal(
  profile: string,
): Promise<{readonly browser: Browser; readonly process: ChildProcess; kill: () => Promise<void>}> {
  rmSync(join(profile, 'DevToolsActivePort'), {force: true})
  const child = spawn(
    executable,
    [...flags, '--headless=new', '--remote-debugging-port=0', `--user-data-dir=${profile}`, 'about:blank'],
    {
      stdio: 'ignore',
      detached: true,
    },
  )
  const gone = new Promise<void>((resolve) => child.once('exit', () => resolve()))
  const port = await until(() => {
    const file = join(profile, 'DevToolsActivePort')
    return existsSync(file) ? readFileSync(file, 'utf8').split('\n')[0] || null : null
  })
  const browser = await chromium.connectOverCDP(`http://127.0.0.1:${port}`)
  return {
    browser,
    process: child,
    kill: async () => {
      // The whole group: the browser and every process it began, at once, as when the battery is empty.
      process.kill(-child.pid!, 'SIGKILL')
      await gone
    },
  }
}

async function until<T>(look: () => T | null, patience = 30_000): Promise<T> {
  for (const from = Date.now(); Date.now() - from < patience; ) {
    const found = look()
    if (found !== null) return found
    await new Promise((resolve) => setTimeout(resolve, 50))
  }
  throw new Error('nothing came')
}

/** Watches for frames that hang. Read `window.longest` (ms) later. */
export const watchFrames = (page: Page): Promise<void> =>
  page.evaluate(`
    window.longest = 0
    window.lastFrame = performance.now()
    window.look ??= () => {
      const now = performance.now()
      window.longest = Math.max(window.longest, now - window.lastFrame)
      window.lastFrame = now
      requestAnimationFrame(window.look)
    }
    if (!window.looking) {
      window.looking = true
      requestAnimationFrame(window.look)
    }
  `)

export const longestFrame = (page: Page): Promise<number> =>
  page.evaluate(() => (globalThis as unknown as {longest: number}).longest)

interface TraceEvent {
  readonly name: string
  readonly ph: string
  readonly pid: number
  readonly tid: number
  readonly args?: {readonly name?: string}
  /** Processor time of the thread, µs: what other programs of this machine take is not in it. */
  readonly tdur?: number
}

/**
 * What the page's own thread did at one stretch, while `story` went on. A frame can only be as late as the longest of these tasks.
 *
 * @returns processor time of the longest tasks, ms, longest first, and of all workers together
 */
export async function traced(
  page: Page,
  story: () => Promise<void>,
): Promise<{readonly tasks: readonly number[]; readonly workers: number}> {
  const cdp = await page.context().newCDPSession(page)
  const events: TraceEvent[] = []
  cdp.on('Tracing.dataCollected', ({value}) => void events.push(...(value as unknown as TraceEvent[])))
  await cdp.send('Tracing.start', {transferMode: 'ReportEvents', traceConfig: {includedCategories: ['toplevel', '__metadata']}})
  await page.evaluate(() => document.title)
  await story()
  const whole = new Promise<void>((resolve) => cdp.once('Tracing.tracingComplete', () => resolve()))
  await cdp.send('Tracing.end')
  await whole
  await cdp.detach()
  const names = new Map(
    events.filter((one) => one.name === 'thread_name').map((one) => [`${one.pid}:${one.tid}`, one.args?.name]),
  )
  const ran = events.filter((one) => one.ph === 'X' && one.name === 'ThreadControllerImpl::RunTask' && one.tdur !== undefined)
  const of = (name: RegExp): number[] =>
    ran
      .filter((one) => name.test(names.get(`${one.pid}:${one.tid}`) ?? ''))
      .map((one) => (one.tdur ?? 0) / 1000)
      .sort((a, b) => b - a)
  return {tasks: of(/^CrRendererMain$/), workers: of(/^DedicatedWorker/).reduce((sum, one) => sum + one, 0)}
}

/**
 * A piece of plain work, about a sixth of 200 ms on a laptop with nothing else to do: what the longest task is held against. Words are
 * made, sorted and joined, since a loop of numbers takes five times as long on a browser that has not yet compiled it.
 */
export async function unit(page: Page): Promise<number> {
  const times: number[] = []
  for (let n = 0; n < 3; n++) {
    const {tasks} = await traced(page, () =>
      page.evaluate(() => {
        let x = 1
        const words = Array.from({length: 36_000}, () => {
          x = (Math.imul(x, 1_664_525) + 1_013_904_223) | 0
          return `${x} ${x & 255}`
        })
        words.sort((a, b) => (a < b ? -1 : a > b ? 1 : 0))
        document.documentElement.dataset.unit = String(words.join('').length)
      }),
    )
    times.push(tasks[0] ?? 0)
  }
  await page.evaluate(() => delete document.documentElement.dataset.unit)
  return times.sort((a, b) => a - b)[1]!
}

/**
 * Type and kill, again and again: each time words are typed into a receipt, at a random moment the browser dies, and what was typed a
 * second or more before must be there when it is opened again.
 *
 * @returns how often words older than a second were lost, and the age in ms of the oldest key that was
 */
export async function killed(
  url: string,
  times: number,
  random: () => number,
): Promise<{readonly lost: number; readonly oldest: number}> {
  const profile = mkdtempSync(join(tmpdir(), 'hearthfall-profile-'))
  let lost = 0
  let oldest = 0
  let sure = ''
  let before: ReadonlyArray<{readonly text: string; readonly age: number}> = []
  try {
    for (let round = 0; round <= times; round++) {
      const {browser, kill} = await mortal(profile)
      try {
        const page = browser.contexts()[0]!.pages()[0] ?? (await browser.contexts()[0]!.newPage())
        await page.goto(`${url}#receipts`)
        const box = page.getByLabel('The receipt as it stands')
        if (round === 0) await page.getByRole('button', {name: 'Begin a receipt'}).click()
        await box.waitFor({timeout: 60_000})
        if (round > 0) {
          const there = await box.inputValue()
          if (!there.startsWith(sure)) lost++
          const gone = before.find(({text}) => !there.startsWith(text))
          if (gone) oldest = Math.max(oldest, gone.age)
        }
        if (round === times) break
        const typed: Array<{at: number; text: string}> = []
        let text = await box.inputValue()
        await box.press('Control+End')
        const end = Date.now() + 1200 + random() * 1500
        while (Date.now() < end) {
          await page.keyboard.type(String.fromCharCode(97 + Math.floor(random() * 26)))
          text = await box.inputValue()
          typed.push({at: Date.now(), text})
        }
        const death = Date.now()
        sure = typed.filter(({at}) => death - at > 1000).at(-1)?.text ?? ''
        before = typed.map(({at, text}) => ({text, age: death - at}))
        await kill()
      } finally {
        await kill().catch(() => {})
        await browser.close().catch(() => {})
      }
    }
  } finally {
    rmSync(profile, {recursive: true, force: true, maxRetries: 5, retryDelay: 200})
  }
  return {lost, oldest}
}
