import {execFileSync} from 'node:child_process'
import {mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync} from 'node:fs'
import {createRequire} from 'node:module'
import {tmpdir} from 'node:os'
import {dirname, join} from 'node:path'
import {type Browser, chromium, type Page} from 'playwright-core'
import {afterAll, beforeAll, describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import {items} from '../src/lexicon/index.js'
import {sources as allSources} from '../src/lexicon/sources.js'
import {makePlan} from '../src/plan/make.js'
import {sheets} from '../src/sheets/sheets.js'
import {gingerbread, gingerbreadText, oven, plan, problem, sources} from './fixtures-sheets.js'
import {hostileSheets} from './fixtures-sheets-hostile.js'

/** Sheets as a browser shows and prints them. axe-core checks WCAG 2.2 A and AA. */
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
]

// Run in the page: as text, because the project's own types know no browser.
const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']
const check = `axe.run(document, {runOnly: {type: 'tag', values: ${JSON.stringify(tags)}}}).then(({violations}) =>
  violations.map((violation) => violation.id + ': ' + violation.nodes[0].html.slice(0, 120)))`
const overEdge = `[...document.querySelectorAll('main *')]
  .filter((element) => element.getBoundingClientRect().right > document.documentElement.clientWidth + 1)
  .map((element) => element.outerHTML.slice(0, 80))`

let browser: Browser
let folder: string

function write(name: string, made: ReadonlyMap<string, string>): string[] {
  for (const [path, content] of made) {
    const file = join(folder, name, path)
    mkdirSync(dirname(file), {recursive: true})
    writeFileSync(file, content)
  }
  return [...made.keys()].filter((path) => path.endsWith('.html')).map((path) => join(name, path))
}

// The modern receipt has a handout turned to the falling oven as well.
const modern = {
  ...gingerbread,
  title: 'Gingerbread, new',
  file: 'receipts/new.md',
  year: null,
  oven: [{...gingerbread.oven[0]!, text: '180 °C fan'}],
}
const made = (language: string, audience: 'class' | 'kitchen' | 'visitors'): Map<string, string> =>
  sheets(
    {
      plan,
      problem,
      oven,
      receipts: [gingerbread, modern],
      texts: new Map([
        [gingerbread.file, gingerbreadText],
        [modern.file, gingerbreadText],
      ]),
      sources,
      items,
      readings: [{minutes: 200, kind: 'floor', value: 250}],
    },
    {language, audience},
  )

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'hearthfall-sheets-'))
  browser = await chromium.launch({executablePath: '/usr/bin/chromium', args: flags})
}, 120_000)
afterAll(async () => {
  await browser?.close()
  rmSync(folder, {recursive: true, force: true})
})

async function open(path: string, width = 1000): Promise<Page> {
  const page = await browser.newPage({viewport: {width, height: 800}})
  await page.goto(`file://${join(folder, path)}`)
  return page
}

describe('the sheets in Chromium', () => {
  const sets = [
    ...(['class', 'kitchen', 'visitors'] as const).map((audience) => ['en', audience] as const),
    ['de', 'class'] as const,
  ]
  for (const [language, audience] of sets)
    it(`breaks no rule of WCAG 2.2 AA and never scrolls sideways on a phone (${language}, ${audience})`, async () => {
      // Only the handouts change with the audience.
      const paths = write(`${language}-${audience}`, made(language, audience)).filter(
        (path) => audience === 'class' || path.includes('handouts'),
      )
      for (const path of paths) {
        const page = await open(path, 360)
        const wide = Number(await page.evaluate('document.documentElement.scrollWidth - document.documentElement.clientWidth'))
        expect(wide, `${path} is wider than the phone`).toBeLessThanOrEqual(0)
        await page.setViewportSize({width: 1000, height: 800})
        // The page's own policy lets no script in, so axe goes in by the debugger, as `evaluate` does.
        await page.evaluate(axe)
        const found = await page.evaluate(check)
        expect(found, path).toEqual([])
        await page.close()
      }
    }, 120_000)

  it('runs no script of a receipt and asks for nothing from elsewhere', async () => {
    for (const path of write('hostile', hostileSheets())) {
      const page = await browser.newPage()
      const asked: string[] = []
      page.on('request', (request) => asked.push(request.url()))
      let dialogs = 0
      page.on('dialog', (dialog) => {
        dialogs++
        void dialog.dismiss()
      })
      await page.goto(`file://${join(folder, path)}`)
      for (const link of await page.locator('a').all())
        expect((await link.getAttribute('href')) ?? '').not.toMatch(/^\s*(?:javascript|data|vbscript|file):/i)
      expect(await page.evaluate('window.bad'), path).toBeUndefined()
      expect(
        asked.filter((url) => !url.startsWith('file://')),
        path,
      ).toEqual([])
      expect(dialogs).toBe(0)
      expect(await page.evaluate('getComputedStyle(document.body).display'), path).toBe('block')
      await page.close()
    }
  }, 60_000)

  it('prints on A4 and US Letter with nothing over the edge and no step cut by a page', async () => {
    write('print', made('en', 'class'))
    for (const format of ['A4', 'Letter'])
      for (const name of ['day', 'heat', 'floor', 'cautions']) {
        const page = await open(`print/${name}.html`)
        const file = join(folder, `${name}-${format}.pdf`)
        await page.pdf({path: file, format})
        const pages = Number(/Pages:\s+(\d+)/.exec(execFileSync('pdfinfo', [file]).toString())![1])
        expect(pages, `${name} on ${format}`).toBeLessThanOrEqual(2)
        await page.emulateMedia({media: 'print'})
        // A4 is 210 mm wide, less 12 mm at each side: 703 CSS pixels.
        await page.setViewportSize({width: 703, height: 900})
        const over = await page.evaluate(overEdge)
        expect(over, name).toEqual([])
        // On paper nothing can be scrolled to, so no bar for it is printed either.
        const bars = await page.evaluate("[...document.querySelectorAll('.wide')].map((e) => getComputedStyle(e).overflowX)")
        expect(new Set(bars as string[]).has('auto'), name).toBe(false)
        await page.close()
      }
    // Each step's words stand on one page: its time and its deed together.
    const text = (page: number): string =>
      execFileSync('pdftotext', ['-f', String(page), '-l', String(page), '-layout', join(folder, 'day-A4.pdf'), '-'])
        .toString()
        .replace(/\s+/g, ' ')
    const pages = [text(1), text(2)]
    for (const step of plan.steps.filter(({action}) => action !== 'load' && action !== 'draw'))
      expect(pages.filter((page) => page.includes(step.say)).length, step.say).toBe(1)
  }, 60_000)

  it('fits the demo’s day sheet on two pages in either language, and its sheets on a phone and on paper', async () => {
    const read = readDayFolder('corpus-demo')
    const day = makePlan({oven: read.oven, day: read.day, receipts: read.receipts})
    for (const language of ['en', 'de']) {
      const all = sheets(
        {
          plan: day.plan,
          problem: day.problem,
          oven: read.oven,
          receipts: read.receipts,
          texts: read.sources,
          sources: allSources,
          items,
        },
        {language, audience: 'class'},
      )
      write(`demo-${language}`, all)
      // The longest handouts stand on two pages, with a page for the exercise; the key is one page more, in a file of its own.
      for (const format of ['A4', 'Letter'])
        for (const [name, most] of [
          ['day', 2],
          ['handouts/mutton-pies', 3],
          ['handouts/mutton-pies-key', 1],
          ['handouts/plum-cake', 3],
          ['handouts/plum-cake-key', 1],
        ] as const) {
          const page = await open(`demo-${language}/${name}.html`)
          const file = join(folder, `demo-${language}-${format}.pdf`)
          await page.pdf({path: file, format})
          const pages = Number(/Pages:\s+(\d+)/.exec(execFileSync('pdfinfo', [file]).toString())![1])
          expect(pages, `${name}, ${language} on ${format}`).toBeLessThanOrEqual(most)
          await page.close()
        }
      for (const name of ['day', 'pin-up', 'shopping', 'handouts/mutton-pies', 'handouts/custards']) {
        const page = await open(`demo-${language}/${name}.html`, 360)
        const wide = Number(await page.evaluate('document.documentElement.scrollWidth - document.documentElement.clientWidth'))
        expect(wide, `${name} is wider than the phone`).toBeLessThanOrEqual(0)
        await page.emulateMedia({media: 'print'})
        // A4 and Letter less 12 mm at each side: 703 and 725 CSS pixels; the narrower decides.
        await page.setViewportSize({width: 703, height: 900})
        expect(await page.evaluate(overEdge), name).toEqual([])
        await page.close()
      }
    }
  }, 240_000)
})
