/// <reference lib="dom" />
import {readFileSync, statSync, writeFileSync} from 'node:fs'
import {createServer} from 'node:http'
import type {AddressInfo} from 'node:net'
import {join} from 'node:path'
import type {Browser, BrowserContext, Page} from 'playwright-core'
import {describe, expect, it} from 'vitest'
import {planFolder} from '../src/page/chain.js'
import {unzipFolder} from '../src/page/zip.js'
import {planJson} from '../src/sheets/plan-json.js'
import {axeFaults, hasBrowser, inBrowser, killed, listen, longestFrame, ownBrowser, savedBy, watchFrames} from './page-browser.js'
import {commandPlan} from './page-day.js'

// Receipts of our own, in an old hand and a new one.
const CAKE = `---
year: 1840
place: United States
---

# Hollin End Cake

Take half a pound of butter, three quarters of a pound of sugar, four eggs, a gill of milk and a pound of flour; a tea-spoonful of saleratus.
Bake it in a moderate oven three quarters of an hour. It makes one cake.
`
const BREAD = `---
vessel: free-standing loaf 22 cm
---

# Farm Loaf

- 500 g flour
- 320 ml water
- 10 g salt
- 7 g dry yeast

Let it rise 2 hours. Bake at 230 °C for 40 minutes. Makes 1 loaf.
`

describe.skipIf(!hasBrowser)('the page', {timeout: 240_000, ...inBrowser}, () => {
  const own = ownBrowser()

  const at = (place: string): string => `${own.built.url}#${place}`
  const go = async (page: Page, place: string): Promise<void> => {
    await page.evaluate((to) => {
      ;(globalThis as unknown as {location: {hash: string}}).location.hash = to
    }, place)
    await page.waitForTimeout(150)
  }
  const fresh = async (
    options: Parameters<Browser['newContext']>[0] = {},
  ): Promise<{context: BrowserContext; page: Page; heard: ReturnType<typeof listen>}> => {
    const context = await own.browser.newContext({viewport: {width: 1200, height: 900}, ...options})
    const heard = listen(context)
    const page = await context.newPage()
    await page.goto(at('receipts'))
    await page.getByRole('heading', {level: 1}).waitFor()
    return {context, page, heard}
  }
  const paste = async (page: Page, text: string): Promise<void> => {
    await page.getByRole('button', {name: 'Begin a receipt'}).click()
    await page.getByLabel('The receipt as it stands').fill(text)
    await page.getByLabel('The receipt as it stands').blur()
  }
  const planned = async (page: Page): Promise<void> => {
    await page.getByRole('button', {name: /^Plan (?:the day|again)$/}).click()
    await page.locator('table.hours').waitFor({timeout: 90_000})
    await page.waitForFunction(() => !document.querySelector('progress'), null, {timeout: 90_000})
  }
  const prepared = async (page: Page): Promise<void> => {
    await paste(page, CAKE)
    await paste(page, BREAD)
    await go(page, 'oven')
    await page.getByRole('button', {name: /^Begin with/}).click()
    await go(page, 'day')
    await page.getByRole('button', {name: 'Begin the day'}).click()
    await page.getByLabel('Farm Loaf: how much?').fill('4 loaves')
  }
  const zipped = (page: Page): Promise<Buffer> => savedBy(page, () => page.getByRole('button', {name: 'Save the folder'}).click())
  const sheetPlan = async (page: Page): Promise<string> => {
    await go(page, 'print')
    await page.getByRole('button', {name: /^Make (?:the sheets|them again)$/}).click()
    const file = page.getByRole('button', {name: 'plan.json'})
    await file.waitFor({timeout: 90_000})
    return (await savedBy(page, () => file.click())).toString('utf8')
  }

  it('is one file of at most 1.5 MB that names nothing outside itself', () => {
    const html = readFileSync(own.built.file, 'utf8')
    expect(statSync(own.built.file).size).toBeLessThan(1.5 * 1024 * 1024)
    expect(html).toContain("default-src 'none'")
    expect(html).not.toMatch(/<(?:script|img|iframe|link)[^>]+(?:src|href)="(?!data:)[^"]/)
  })

  it('from an empty page to a folder the command plans alike', async () => {
    const {context, page, heard} = await fresh()
    await prepared(page)

    // Old words beside new ones, with a range and the reason.
    await go(page, 'receipts')
    await page.getByRole('button', {name: /Hollin End Cake/}).click()
    const row = page.getByRole('row', {name: /gill of milk/})
    await row.waitFor()
    expect(await row.textContent()).toMatch(/\d+ ml|\d+ g/)
    await row.getByText('Why', {exact: true}).click()
    await expect.poll(() => row.locator('ol li').count()).toBeGreaterThan(0)

    // A reading put right by hand is kept with the receipt, and the reader reads by it.
    await row.getByRole('button', {name: /Put right/}).click()
    await page.getByLabel(/How it ought to be read/).fill('1 cup milk')
    await page.getByRole('button', {name: 'Read it so'}).click()
    await page.locator('tr', {hasText: 'gill of milk'}).getByText('put right by hand').waitFor()
    expect(await page.getByLabel('The receipt as it stands').inputValue()).toMatch(/says:\n +.*gill of milk.*: 1 cup milk/)

    // The drawing follows the sizes.
    await go(page, 'oven')
    const before = await page.locator('.oven-drawing').innerHTML()
    await page.getByLabel('Across').fill('44 in')
    await expect.poll(() => page.locator('.oven-drawing').innerHTML()).not.toBe(before)
    expect(await page.locator('.oven-drawing').textContent()).toContain('44 in')
    // So it does the ash that is left along a side, which the folder then has, until there is none.
    const bed = page.getByRole('combobox', {name: 'Ash bed'})
    await bed.selectOption('left')
    await page.getByLabel('In from the wall').fill('6 in')
    await expect.poll(() => page.locator('.oven-drawing .ash-bed title').textContent()).toContain('6 in')
    await bed.selectOption('none')
    await expect.poll(() => page.locator('.oven-drawing .ash-bed').count()).toBe(0)

    await go(page, 'plan')
    await planned(page)
    await page.locator('details.sized summary').click()
    expect(await page.locator('details.sized li li').count()).toBeGreaterThan(0)
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0)
    await expect.poll(() => page.locator('.drawing svg').count(), {timeout: 30_000}).toBeGreaterThan(1)

    // The same folder in the command gives the same plan.
    const made = await sheetPlan(page)
    const out = async (): Promise<Map<string, string>> => {
      await go(page, 'keep')
      return unzipFolder(new Uint8Array(await zipped(page)))
    }
    const files = await out()
    expect([...files.keys()].sort()).toEqual(['day.md', 'oven.md', 'receipts/farm-loaf.md', 'receipts/hollin-end-cake.md'])
    expect(await commandPlan(files)).toBe(made)

    // At the oven: lit, and three readings.
    await go(page, 'bake')
    await page.getByRole('button', {name: 'Rehearse it now'}).click()
    await page.getByRole('button', {name: '+15 min'}).click()
    await page.locator('.now').getByRole('button', {name: 'Lit'}).first().click()
    await page.locator('.log li, .log').getByText('Lit', {exact: false}).first().waitFor()
    const clock = page.locator('.rehearsing input[type=time]')
    const note = async (kind: string, then: () => Promise<void>): Promise<void> => {
      await page.getByRole('button', {name: '+1 h'}).click()
      await page.getByRole('button', {name: kind, exact: true}).click()
      await then()
      await expect.poll(() => page.locator('.tool').count(), {timeout: 60_000}).toBe(0)
    }
    expect(await clock.count()).toBe(1)
    await page.getByRole('button', {name: '+1 h'}).click()
    await page.getByRole('button', {name: '+1 h'}).click()
    await page.locator('.now').getByRole('button', {name: 'Raked out'}).first().click()
    await note('Floor', async () => {
      await page.getByLabel('Floor: Degrees').fill('240')
      await page.getByRole('button', {name: 'Write it down'}).click()
    })
    await note('Arm count', async () => {
      expect(await page.locator('.tool .care').textContent()).toContain('The arm count can burn you')
      await page.getByLabel('or a count of your own').fill('22')
      await page.getByRole('button', {name: 'Write it down'}).click()
    })
    await note('Flour', async () => {
      await page.getByRole('button', {name: 'browns slowly'}).click()
    })
    await page.locator('.moved').waitFor({timeout: 90_000})
    expect(await page.locator('.moved').textContent()).toContain('Planned again after')
    await expect.poll(() => page.locator('.stale').count(), {timeout: 90_000}).toBe(0)

    // A handout to print, with the old words in it.
    const after = await sheetPlan(page)
    const choose = page.getByLabel('Sheet', {exact: true})
    const handout = await choose.locator('option', {hasText: 'Hollin End Cake'}).first().getAttribute('value')
    await choose.selectOption(handout!)
    await expect.poll(() => page.frameLocator('iframe').locator('main').textContent()).toContain('gill of milk')
    await page.evaluate(() => {
      const it = globalThis as unknown as {
        document: {querySelector: (s: string) => {contentWindow: {print: () => void}}}
        printed: number
      }
      it.printed = 0
      it.document.querySelector('iframe').contentWindow.print = () => {
        it.printed++
      }
    })
    await page.getByRole('button', {name: 'Print this sheet'}).click()
    expect(await page.evaluate(() => (globalThis as unknown as {printed: number}).printed)).toBe(1)

    const logged = await out()
    const log = [...logged].find(([path]) => path.startsWith('firings/'))?.[1] ?? ''
    for (const words of ['lit:', 'raked:', 'floor | 240 °C', 'arm | 22', 'flour | browns slowly']) expect(log).toContain(words)
    const again = planFolder(logged)
    if (!again.ok) throw new Error(JSON.stringify(again.messages))
    expect(planJson(again.made.plan, again.made.problem, again.read.oven)).toBe(after)
    expect((await commandPlan(logged)).length).toBeGreaterThan(1000)

    // And it comes back in as a day of its own.
    const bytes = await zipped(page)
    await page
      .locator('.bring input[type=file]')
      .first()
      .setInputFiles({name: 'day.zip', mimeType: 'application/zip', buffer: bytes})
    await expect.poll(() => page.locator('.shelf > li').count()).toBe(2)
    expect(await out()).toEqual(logged)

    expect(heard.requests).toEqual([])
    expect(heard.errors).toEqual([])
    await context.close()
  })

  it('every view is clean for axe, in bright sun and in a dark kitchen', async () => {
    const {context, page, heard} = await fresh()
    await prepared(page)
    await go(page, 'plan')
    await planned(page)
    const faults: string[] = []
    for (const light of ['sun', 'dark'] as const) {
      await page.getByLabel('Light', {exact: true}).selectOption(light)
      for (const place of ['receipts', 'oven', 'day', 'plan', 'bake', 'print', 'keep']) {
        await go(page, place)
        await page.waitForTimeout(300)
        const found = await axeFaults(page)
        faults.push(...found.map((one) => `${light} ${place}: ${one}`))
      }
    }
    expect(faults).toEqual([])
    expect(heard.errors).toEqual([])
    await context.close()
  })

  it('a hostile receipt only shows as text, and holds nothing up', async () => {
    const {context, page, heard} = await fresh()
    await paste(
      page,
      '# <img src=x onerror="globalThis.caught=1"> Bun\n\n<script>globalThis.caught=1</script>\n\n- 1 lb flour <svg onload="globalThis.caught=1">\n- [2 eggs](javascript:globalThis.caught=1)\n- <a href="https://example.invalid/x">1 gill milk</a>\n\n![x](https://example.invalid/y.png)\n',
    )
    await page.locator('table.beside').first().waitFor()
    const long = join(own.built.folder, 'long.md')
    writeFileSync(long, `# Long\n${'flour and '.repeat(500_000)}`)
    await watchFrames(page)
    await page.locator('.bring input[type=file]').first().setInputFiles(long)
    await page.getByText('This text is too long to be typed in here').waitFor()
    await page.getByText('too long to be a receipt').first().waitFor()
    process.stdout.write(`5 MB line: longest frame ${Math.round(await longestFrame(page))} ms\n`)
    expect(await page.evaluate(() => (globalThis as unknown as {caught?: number}).caught)).toBeUndefined()
    expect(await page.locator('#work a[href^="javascript"], #work img, #work script').count()).toBe(0)
    expect(heard.requests).toEqual([])
    expect(heard.errors).toEqual([])
    await context.close()
  })

  it('every step can be undone, to the empty folder and back', async () => {
    const {context, page} = await fresh()
    await prepared(page)
    await go(page, 'keep')
    await expect.poll(() => page.locator('.steps li:not(.undone)').count()).toBeGreaterThan(6)
    const main = page.locator('#work')
    const undo = main.getByRole('button', {name: 'Undo', exact: true})
    const whole = await main.locator('.files').last().innerText()
    const steps = await page.locator('.steps li').count()
    for (let n = steps - 1; n >= 0; n--) {
      await undo.click()
      await expect.poll(() => page.locator('.steps li:not(.undone)').count()).toBe(n)
    }
    expect((await main.locator('.files').last().innerText()).trim()).toBe('')
    const redo = main.getByRole('button', {name: 'Do again', exact: true})
    for (let n = 1; n <= steps; n++) {
      await redo.click()
      await expect.poll(() => page.locator('.steps li:not(.undone)').count()).toBe(n)
    }
    expect(await main.locator('.files').last().innerText()).toBe(whole)
    await page.reload()
    await expect.poll(() => main.locator('.files').last().innerText()).toBe(whole)
    await context.close()
  })

  it('two tabs see each other and write over nothing', async () => {
    const {context, page} = await fresh()
    await paste(page, BREAD)
    const other = await context.newPage()
    await other.goto(at('receipts'))
    const box = (p: Page): ReturnType<Page['getByLabel']> => p.getByLabel('The receipt as it stands')
    await box(other).waitFor()
    const text = await box(page).inputValue()
    await Promise.all([
      box(page).fill(text.replace('Farm Loaf', 'Farm Loaf of the hill')),
      box(other).fill(`${text}\nSlash the top.\n`),
    ])
    for (const tab of [page, other]) {
      await expect.poll(() => box(tab).inputValue(), {timeout: 10_000}).toContain('of the hill')
      await expect.poll(() => box(tab).inputValue(), {timeout: 10_000}).toContain('Slash the top.')
    }
    await context.close()
  })

  it('opens with the day that is inside it', async () => {
    const file = own.withDay('with-day', new Map([['receipts/cake.md', CAKE]]))
    const context = await own.browser.newContext()
    const heard = listen(context)
    const page = await context.newPage()
    await page.goto(file)
    await page.getByRole('button', {name: /Hollin End Cake/}).waitFor()
    expect(heard.errors).toEqual([])
    await context.close()
  })

  it('from a server it names itself for installing, and is kept for use without a network when asked', async () => {
    const server = createServer((request, response) => {
      const name = new URL(request.url ?? '/', 'http://localhost').pathname.slice(1)
      const known: Readonly<Record<string, string>> = {'hearthfall.html': 'text/html', 'hearthfall-offline.js': 'text/javascript'}
      if (!known[name]) response.writeHead(404).end()
      else response.writeHead(200, {'content-type': known[name]}).end(readFileSync(join(own.built.folder, name)))
    })
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', () => resolve()))
    const url = `http://127.0.0.1:${(server.address() as AddressInfo).port}/hearthfall.html`
    const context = await own.browser.newContext()
    const heard = listen(context)
    const page = await context.newPage()
    await page.goto(`${url}#keep`)
    const manifest = await page.locator('link[rel=manifest]').getAttribute('href')
    expect(JSON.parse(decodeURIComponent(manifest!.split(',').slice(1).join(',')))).toMatchObject({
      start_url: url,
      display: 'standalone',
    })
    // Nothing but the page itself was asked of the server before the button.
    expect(heard.requests.filter((one) => one.replace(/#.*$/, '') !== url)).toEqual([])
    await page.getByRole('button', {name: 'Keep this page for use without a network'}).click()
    await page.getByText('The page is kept on this device.').waitFor()
    await new Promise<void>((resolve) => {
      server.close(() => resolve())
      server.closeAllConnections()
    })
    await page.reload()
    await page.getByRole('heading', {level: 1, name: 'Keep'}).waitFor()
    expect(heard.errors).toEqual([])
    await context.close()
  })

  it('works on a phone of 360 pixels without scrolling sideways, and at 200 % zoom', async () => {
    for (const viewport of [
      {width: 360, height: 640},
      {width: 600, height: 400},
    ]) {
      const {context, page} = await fresh({viewport, hasTouch: true})
      await prepared(page)
      for (const place of ['receipts', 'oven', 'day', 'bake', 'print', 'keep']) {
        await go(page, place)
        await page.waitForTimeout(200)
        const over = await page.evaluate(() => {
          const {documentElement: d} = document as unknown as {documentElement: {scrollWidth: number; clientWidth: number}}
          return d.scrollWidth - d.clientWidth
        })
        expect(over, `${place} at ${viewport.width}`).toBeLessThanOrEqual(0)
      }
      await context.close()
    }
  })

  it('loses nothing typed a second before the browser is killed', async () => {
    let seed = 7
    const random = (): number => {
      seed = (seed * 1103515245 + 12345) % 2147483648
      return seed / 2147483648
    }
    const {lost, oldest} = await killed(own.built.url, 3, random)
    process.stdout.write(`killed 3 times: oldest key lost ${oldest} ms before\n`)
    expect(lost).toBe(0)
  })
})
