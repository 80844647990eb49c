/// <reference lib="dom" />
import {describe, expect, it} from 'vitest'
import {hasBrowser, ownBrowser} from './page-browser.js'
import {smallDay} from './page-day.js'

/** A small day of our own whose oven is read far too cool for its bread, an hour after its coals were raked out. Invented: no outside fact. */
const cool = new Map([
  ...smallDay,
  [
    'firings/2027-06-19.md',
    '---\ndate: 2027-06-19\nlit: 6 am\nraked: 8 am\nwood: 20 kg\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n| 9:00 am | floor | 150 °C | |\n',
  ],
])

describe.skipIf(!hasBrowser)('an oven too cool for its bread', {timeout: 240_000}, () => {
  const own = ownBrowser()

  it('is offered another fire at the oven, and planned with it at a touch', async () => {
    const context = await own.browser.newContext({viewport: {width: 390, height: 740}, hasTouch: true, isMobile: true})
    const page = await context.newPage()
    await page.clock.install({time: new Date('2027-06-19T09:00:30')})
    await page.goto(`${own.withDay('cool', cool)}#plan`)
    await page.getByRole('button', {name: 'Plan the day'}).click()
    await page.locator('table.hours').waitFor({timeout: 120_000})
    await page.evaluate(() => {
      location.hash = 'bake'
    })
    const offer = page.getByRole('button', {name: 'Note it, and plan so'})
    await offer.waitFor({timeout: 120_000})
    expect(await page.getByText('Light the fire again at').innerText()).toMatch(/everything fits/)
    await offer.click()
    await page
      .getByText(/Noted: .*fire again at .+ for \d/)
      .first()
      .waitFor({timeout: 60_000})
    await page.getByText('Light the fire again.').first().waitFor({timeout: 120_000})
    await offer.waitFor({state: 'detached', timeout: 60_000})
    expect(await page.getByRole('region', {name: 'Without a place'}).count()).toBe(0)
    // A note that the plan goes by is no words only.
    expect(await page.getByText('In words only').count()).toBe(0)
    await context.close()
  })
})
