/// <reference lib="dom" />
import type {Page} from 'playwright-core'
import {describe, expect, it} from 'vitest'
import {hasBrowser, listen, ownBrowser} from './page-browser.js'
import {inFolder, smallDay} from './page-day.js'

/** A folder of our own: a bake day with a log and a file that is no part of it. No outside fact. */
const whole = new Map([
  ...smallDay,
  ['firings/2027-06-12.md', '---\ndate: 2027-06-12\nlit: 6 am\n---\n\n# Firing\n'],
  ['README.md', '# About this day\n'],
])

describe.skipIf(!hasBrowser)('a folder brought in', {timeout: 120_000}, () => {
  const own = ownBrowser()
  const fresh = async () => {
    const context = await own.browser.newContext({viewport: {width: 900, height: 900}})
    const heard = listen(context)
    const page = await context.newPage()
    await page.goto(own.built.url)
    await page.getByText('There is no receipt yet').waitFor()
    return {context, page, heard}
  }
  /** The page reads the files where they lie, so the folder stays until it says that it has. */
  const pick = (page: Page, files: ReadonlyMap<string, string>, said: string): Promise<void> =>
    inFolder(files, async (folder) => {
      const box = page.getByLabel('Bring in a folder', {exact: true})
      await box.waitFor({state: 'attached'})
      await box.setInputFiles(folder)
      await page.getByText(said).waitFor()
    })
  const kept = async (page: Page): Promise<string[]> => {
    await page.evaluate(() => {
      location.hash = 'keep'
    })
    await page.locator('ul.files').waitFor()
    return page.locator('ul.files li').allInnerTexts()
  }

  it.each(['receipts', 'keep'])('from “%s” is a day with all its files, and says what it left out', async (place) => {
    const {context, page, heard} = await fresh()
    await page.evaluate((to) => {
      location.hash = to
    }, place)
    await pick(page, whole, 'Brought in as a day of its own: 5 files. Left out, as no part of a bake day: README.md.')
    expect(await kept(page)).toEqual([...whole.keys()].filter((path) => path !== 'README.md').sort())
    expect(heard.errors).toEqual([])
    await context.close()
  })

  it.each(['receipts', 'keep'])('from “%s” goes onto the pile where it holds receipts only', async (place) => {
    const {context, page, heard} = await fresh()
    await page.evaluate((to) => {
      location.hash = to
    }, place)
    const receipts = new Map([...smallDay].filter(([path]) => path.startsWith('receipts/')))
    await pick(page, receipts, '2 files brought in')
    expect(await kept(page)).toEqual(['receipts/cake.md', 'receipts/loaf.md'])
    expect(heard.errors).toEqual([])
    await context.close()
  })
})
