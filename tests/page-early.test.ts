/// <reference lib="dom" />
import {readFileSync} from 'node:fs'
import {createServer, type ServerResponse} from 'node:http'
import type {AddressInfo} from 'node:net'
import type {Page} from 'playwright-core'
import {afterAll, beforeAll, describe, expect, it} from 'vitest'
import {axeFaults, hasBrowser, inBrowser, listen, ownBrowser} from './page-browser.js'

/**
 * A server that gives the page up to its own script, as a slow disk or phone would have it, and the rest of it when told.
 */
function halting(html: () => string): {
  readonly url: string
  readonly listen: () => Promise<void>
  readonly close: () => Promise<void>
  /** From now on the page halts before its script, or not. */
  halts: boolean
  /** Give the rest to all who wait. */
  readonly release: () => void
} {
  const waiting: Array<{readonly response: ServerResponse; readonly rest: string}> = []
  const server = createServer((_, response) => {
    const page = html()
    const at = it.halts ? page.indexOf('<script type="text/plain" class="hearthfall-rest"') : page.length
    response.writeHead(200, {'content-type': 'text/html'})
    response.write(page.slice(0, at))
    if (it.halts) waiting.push({response, rest: page.slice(at)})
    else response.end()
  })
  const it = {
    halts: true,
    get url() {
      return `http://127.0.0.1:${(server.address() as AddressInfo).port}/hearthfall.html`
    },
    listen: () => new Promise<void>((resolve) => server.listen(0, '127.0.0.1', () => resolve())),
    close: () =>
      new Promise<void>((resolve) => {
        server.close(() => resolve())
        server.closeAllConnections()
      }),
    release: () => {
      for (const {response, rest} of waiting.splice(0)) response.end(rest)
    },
  }
  return it
}

describe.skipIf(!hasBrowser)('before its script is there, the page', {timeout: 60_000, ...inBrowser}, () => {
  const own = ownBrowser()
  const server = halting(() => readFileSync(own.built.file, 'utf8'))
  beforeAll(() => server.listen())
  afterAll(() => server.close())

  const box = (page: Page) => page.getByLabel('The receipt as it stands')
  const begin = (page: Page) => page.getByRole('button', {name: 'Begin a receipt'})
  const alive = (page: Page): Promise<unknown> =>
    page.waitForFunction(() => performance.getEntriesByName('alive').length > 0 && 'hearthfallRest' in globalThis)
  const halted = async (width = 360): Promise<{page: Page; heard: ReturnType<typeof listen>}> => {
    const context = await own.browser.newContext({viewport: {width, height: 740}})
    const heard = listen(context)
    const page = await context.newPage()
    await page.goto(server.url, {waitUntil: 'commit'})
    await begin(page).waitFor()
    return {page, heard}
  }

  it('keeps what is typed, and the caret stays where it is', async () => {
    const {page, heard} = await halted()
    await begin(page).click()
    await page.keyboard.type('# Buns\n\nFour eggs.')
    await page.keyboard.press('Home')
    await page.keyboard.type('Take ')
    await page.getByLabel('Light', {exact: true}).selectOption('sun')
    await box(page).focus()
    expect(await page.evaluate(() => performance.getEntriesByName('alive').length)).toBe(0)
    server.release()
    await alive(page)
    await page.keyboard.type('two or ')
    expect(await box(page).inputValue()).toBe('# Buns\n\nTake two or Four eggs.')
    await page.getByText('Kept on this device').waitFor()
    expect(await page.evaluate(() => document.documentElement.dataset.light)).toBe('sun')
    await page.locator('.receipt-title', {hasText: 'Buns'}).waitFor()

    server.halts = false
    await page.reload()
    await box(page).waitFor()
    expect(await box(page).inputValue()).toBe('# Buns\n\nTake two or Four eggs.')
    server.halts = true
    expect(heard.errors).toEqual([])
    await page.context().close()
  })

  it('does later what was pressed: a second receipt is begun', async () => {
    const {page, heard} = await halted()
    await begin(page).click()
    await page.keyboard.type('One')
    await begin(page).click()
    server.release()
    await alive(page)
    await expect.poll(() => page.locator('.slip').count()).toBe(2)
    expect(await box(page).inputValue()).toBe('')
    expect(heard.errors).toEqual([])
    await page.context().close()
  })

  it.each([360, 1280])('is what it is with it, at %i px: to the eye, to a screen reader and to axe', async (width) => {
    const {page, heard} = await halted(width)
    const look = async (): Promise<{picture: string; spoken: string}> => ({
      picture: (await page.screenshot({caret: 'hide'})).toString('base64'),
      spoken: await page.locator('#page').ariaSnapshot(),
    })
    const fresh = await look()
    expect(await axeFaults(page)).toEqual([])
    server.release()
    await alive(page)
    expect(await look()).toEqual(fresh)

    const again = await halted(width)
    await begin(again.page).click()
    const begun = await again.page.locator('main .one').ariaSnapshot()
    expect(await axeFaults(again.page)).toEqual([])
    await begin(page).click()
    await page.getByText('Kept on this device').waitFor()
    expect(await page.locator('main .one').ariaSnapshot()).toBe(begun)
    server.release()
    await page.context().close()
    await again.page.context().close()
    expect([...heard.errors, ...again.heard.errors]).toEqual([])
  })

  it('says nothing of an empty page where a day is kept, and stands at the place that was asked for', async () => {
    server.halts = false
    const context = await own.browser.newContext()
    const page = await context.newPage()
    await page.goto(server.url)
    await begin(page).click()
    await box(page).fill('# Buns\n\nFour eggs.\n')
    await page.getByText('Kept on this device').waitFor()
    server.halts = true
    await page.goto('about:blank')
    await page.goto(server.url, {waitUntil: 'commit'})
    await page.locator('.fall a[aria-current]').waitFor()
    expect((await page.locator('main').textContent())?.trim()).toBe('')
    expect((await page.locator('.lintel .which').textContent())?.trim()).toBe('')
    server.release()
    await box(page).waitFor()
    expect(await box(page).inputValue()).toBe('# Buns\n\nFour eggs.\n')

    for (const [place, name] of [
      ['bake', 'Bake'],
      ['oven', 'Oven'],
    ] as const) {
      await page.goto('about:blank')
      await page.goto(`${server.url}#${place}`, {waitUntil: 'commit'})
      const here = page.locator('#page nav [aria-current="page"]')
      await here.waitFor()
      expect(await here.allTextContents()).toEqual([name])
      const nav = await page.locator('#page .fall').ariaSnapshot()
      server.release()
      await alive(page)
      await page.locator('main h1').waitFor()
      expect(await page.locator('#page .fall').ariaSnapshot()).toBe(nav)
      expect(await here.allTextContents()).toEqual([name])
    }
    await context.close()
  })

  it('keeps it on the page where the browser keeps nothing', async () => {
    const context = await own.browser.newContext()
    await context.addInitScript(() => {
      Object.defineProperty(globalThis, 'indexedDB', {
        get: () => {
          throw new DOMException('not here', 'SecurityError')
        },
      })
    })
    const page = await context.newPage()
    await page.goto(server.url, {waitUntil: 'commit'})
    await begin(page).click()
    await page.keyboard.type('Four eggs.')
    server.release()
    await alive(page)
    expect(await box(page).inputValue()).toBe('Four eggs.')
    expect(await page.getByRole('alert').count()).toBeGreaterThan(0)
    await context.close()
  })
})
