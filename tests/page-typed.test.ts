/// <reference lib="dom" />
import {mkdtempSync, rmSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import type {Page} from 'playwright-core'
import {describe, expect, it} from 'vitest'
import {hasBrowser, listen, ownBrowser} from './page-browser.js'
import {smallDay} from './page-day.js'

/** What is typed is written down, or stays in its box with the reason why not. Days of our own: no outside fact. */
describe.skipIf(!hasBrowser)('what is typed', {timeout: 120_000}, () => {
  const own = ownBrowser()
  const openedAt = async (name: string, files: ReadonlyMap<string, string>, place: string): Promise<Page> => {
    const context = await own.browser.newContext({viewport: {width: 900, height: 900}})
    listen(context)
    const page = await context.newPage()
    await page.goto(`${own.withDay(name, files)}#${place}`)
    return page
  }
  const go = (page: Page, place: string): Promise<void> =>
    page.evaluate((to) => {
      location.hash = to
    }, place)

  it('stays in its box where the head of the file is faulty, says why, and is written once that is put right', async () => {
    const faulty = smallDay.get('day.md')!.replace('people: 8', 'notes: Anna: brings eggs\npeople: 8')
    const page = await openedAt('faulty', new Map([...smallDay, ['day.md', faulty]]), 'day')
    await page.getByText(/not good YAML \(line 3: .*\)/).waitFor()
    const people = page.getByLabel('People')
    await people.fill('12')
    await page.getByLabel('They eat at').focus()
    expect(await people.inputValue()).toBe('12')
    await page.locator('summary', {hasText: 'The file itself'}).click()
    const file = page.locator('textarea').last()
    await file.fill(faulty.replace('notes: Anna: brings eggs', 'notes: Anna brings eggs'))
    await page.getByText(/not good YAML/).waitFor({state: 'detached'})
    await expect.poll(() => file.inputValue()).toContain('people: 12')
    await page.context().close()
  })

  it('as a note of one’s own is there after a look at the plan, and when the page is opened again', async () => {
    const page = await openedAt('draft', smallDay, 'bake')
    const note = page.getByLabel('A note of your own')
    await note.fill('the wind has')
    await go(page, 'plan')
    await note.waitFor({state: 'detached'})
    await go(page, 'bake')
    expect(await note.inputValue()).toBe('the wind has')
    await page.reload()
    expect(await note.inputValue()).toBe('the wind has')
    await page.context().close()
  })

  it('may have a German comma in the water of the wood', async () => {
    const page = await openedAt('comma', smallDay, 'oven')
    const water = page.getByLabel('Water in it, % of its weight')
    await water.fill('15,5')
    await page.getByLabel('Air around it').focus()
    expect(await water.inputValue()).toBe('15,5')
    await page.locator('summary', {hasText: 'The file itself'}).click()
    expect(await page.locator('textarea').last().inputValue()).toContain('oak, 15,5 % moisture')
    await page.waitForTimeout(600)
    expect(await page.getByText('is not a fuel').count()).toBe(0)
    await page.context().close()
  })

  it('as the sizes of a floor with corners stands apart in its drawing', async () => {
    const oven = smallDay.get('oven.md')!.replace('round 42 in', 'rectangle 1,40 m x 1.10 m')
    const page = await openedAt('corners', new Map([...smallDay, ['oven.md', oven]]), 'oven')
    const figures = page.locator('.oven-drawing svg').first().locator('text.figure')
    await figures.nth(1).waitFor()
    const [a, b] = [(await figures.nth(0).boundingBox())!, (await figures.nth(1).boundingBox())!]
    const apart = a.y + a.height <= b.y || b.y + b.height <= a.y || a.x + a.width <= b.x || b.x + b.width <= a.x
    expect(apart, JSON.stringify([a, b])).toBe(true)
    await page.context().close()
  })

  it('in Windows-1252 is read so, and said to be', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'hearthfall-latin-'))
    const page = await openedAt('latin', smallDay, 'receipts')
    try {
      writeFileSync(
        join(folder, 'rolls.txt'),
        Buffer.from('# Br\u00f6tchen\n\n500 g Mehl. Bei 220 \u00b0C 20 Minuten backen.\n', 'latin1'),
      )
      await page.locator('input[type=file]').first().setInputFiles(join(folder, 'rolls.txt'))
      await page.getByText('Not in UTF-8, and read as Windows-1252: rolls.txt').waitFor()
      await expect.poll(() => page.getByLabel('The receipt as it stands').inputValue()).toContain('# Brötchen')
    } finally {
      rmSync(folder, {recursive: true, force: true})
      await page.context().close()
    }
  })
})
