/// <reference lib="dom" />
import type {Locator, Page} from 'playwright-core'
import {beforeAll, describe, expect, it} from 'vitest'
import {hasBrowser, listen, ownBrowser} from './page-browser.js'
import {smallDay} from './page-day.js'

const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const here = document.activeElement as HTMLElement | null
    return here === null || here === document.body ? '' : `${here.tagName} ${here.getAttribute('aria-label') ?? here.innerText}`
  })

describe.skipIf(!hasBrowser)('by keyboard alone', {timeout: 240_000}, () => {
  const own = ownBrowser()
  let page: Page
  let heard: ReturnType<typeof listen>
  let due = ''

  const go = async (place: string): Promise<void> => {
    await page.evaluate((to) => {
      location.hash = to
    }, place)
    await page.waitForTimeout(300)
  }
  const press = (what: Locator): Promise<void> => what.press('Enter')
  const button = (name: string | RegExp): Locator =>
    page.getByRole('button', typeof name === 'string' ? {name, exact: true} : {name}).first()
  /** Puts the day's clock so many minutes after a time as the page writes it. */
  const clock = async (time: string, after: number): Promise<void> => {
    const [, hour, minute, half] = /(\d+):(\d+) ([ap])m/.exec(time)!
    const at = (Number(hour) % 12) * 60 + Number(minute) + (half === 'p' ? 720 : 0) + after
    const text = [Math.floor(at / 60), at % 60].map((part) => String(part).padStart(2, '0')).join(':')
    await page.locator('.rehearsing input[type=time]').fill(text)
  }
  const timeOf = async (what: RegExp): Promise<string> =>
    (await page.locator('.deed, .later li').filter({hasText: what}).first().locator('strong').first().innerText()).trim()
  const settled = (): Promise<void> => page.locator('p.stale').waitFor({state: 'detached', timeout: 120_000})

  beforeAll(async () => {
    const context = await own.browser.newContext({viewport: {width: 360, height: 740}})
    heard = listen(context)
    page = await context.newPage()
    await page.goto(`${own.withDay('keys', smallDay)}#plan`)
    await page.getByRole('button', {name: 'Plan the day'}).click()
    await page.locator('table.hours').waitFor({timeout: 120_000})
  }, 240_000)

  it('is never thrown back to the top by a press that takes its own button away (WCAG 2.2, 2.4.3)', async () => {
    await go('receipts')
    await press(button('Begin a receipt'))
    await page.getByLabel('The receipt as it stands').waitFor()
    await press(button('Take it off the pile'))
    await expect.poll(() => focused(page)).toMatch(/^BUTTON/)
    await go('oven')
    await press(button(/Take layer 2 away/))
    await expect.poll(() => focused(page)).toMatch(/./)
    await press(button('Undo'))
    await go('plan')
    await press(button(/^Plan (?:again|the day)$/))
    await expect.poll(() => focused(page)).toMatch(/^BUTTON (?:Stop|Plan)/)
    await page.locator('table.hours').waitFor({timeout: 120_000})
    await expect.poll(() => focused(page), {timeout: 60_000}).toMatch(/^(?:BUTTON|SUMMARY)/)
    await go('keep')
    await press(button(/^Throw away/))
    // A second press by mistake throws nothing away.
    await expect.poll(() => focused(page)).toBe('BUTTON No, keep it')
    await page.keyboard.press('Enter')
    await expect.poll(() => focused(page)).toMatch(/^BUTTON Throw away/)
  })

  it('is led from one deed at the oven to the next, and a note is taken back beside what was noted', async () => {
    await go('bake')
    await press(button('Rehearse it now'))
    await expect.poll(() => focused(page)).toBe('H2 To do now')
    due = await timeOf(/Light the fire/)
    await clock(due, 20)
    await press(button(/^Lit now$/))
    await expect.poll(() => focused(page)).toBe('H2 To do now')
    await settled()
    await page.locator('.log li', {hasText: 'Lit'}).waitFor()
    await press(button('Take it back'))
    await page.locator('.log li', {hasText: 'Lit'}).waitFor({state: 'detached'})
    await expect.poll(() => focused(page)).toBe('H2 To do now')
    await expect.poll(() => button('Take it back').count()).toBe(0)
  })

  it('may note a deed at the time it was due, where it was only ticked late', async () => {
    await press(button(`Lit at ${due}`))
    await settled()
    await expect.poll(() => page.locator('.log li', {hasText: 'Lit'}).textContent()).toContain(due)
  })

  it('asks before it notes as drawn what is not ticked as set in, and then notes both', async () => {
    await clock(await timeOf(/Rake out/), 0)
    await press(button(/^Raked out/))
    await settled()
    // Nothing is ticked until after the first draw.
    await go('plan')
    const draws = await page.locator('table.hours tr', {hasText: /Draw /}).first().locator('th, td').first().innerText()
    await go('bake')
    await clock(draws, 5)
    const loads = page.locator('.now .deed', {hasText: /Set in/})
    await loads.first().waitFor()
    const draw = page.locator('.now .deed', {hasText: /Draw/}).first()
    await press(draw.getByRole('button', {name: /^Drawn/}).first())
    const asked = draw.getByRole('alert')
    await expect.poll(() => asked.innerText()).toMatch(/“Set in” is not ticked\. It was to go in at \d/)
    await expect.poll(() => focused(page)).toBe('BUTTON No, leave it as it is')
    await page.keyboard.press('Enter')
    await asked.waitFor({state: 'detached'})
    await expect.poll(() => page.locator('.log li', {hasText: /drawn|set in/}).count()).toBe(0)
    await press(draw.getByRole('button', {name: /^Drawn/}).first())
    // The focus comes to the safe answer a moment after the question, and would be pressed instead.
    await expect.poll(() => focused(page)).toBe('BUTTON No, leave it as it is')
    await press(asked.getByRole('button', {name: /and is out now$/}))
    await page.locator('.log li', {hasText: 'drawn'}).waitFor()
    await expect.poll(() => page.locator('.log li', {hasText: 'set in'}).count()).toBe(1)
    await settled()
    await press(button('Take it back'))
    // Both notes are one step.
    await page.locator('.log li', {hasText: 'drawn'}).waitFor({state: 'detached'})
    await expect.poll(() => page.locator('.log li', {hasText: 'set in'}).count()).toBe(0)
  })

  it('calls each button by the words that are seen on it, and more (WCAG 2.2, 2.5.3)', async () => {
    const names = await page
      .locator('.now button[aria-label], .next button[aria-label]')
      .evaluateAll((all) => all.map((one) => [one.textContent ?? '', one.getAttribute('aria-label') ?? ''] as const))
    expect(names.length).toBeGreaterThan(0)
    for (const [seen, name] of names) expect(name).toContain(seen)
  })

  it('offers the time it was due however late, and logs “late” only where it is said that it had to bake longer', async () => {
    await settled()
    const draw = page.locator('.now .deed', {hasText: /Draw/}).first()
    const at = (await draw.locator('.deed-time').innerText()).trim()
    const [hour, minute] = /(\d+):(\d+)/.exec(at)!.slice(1)
    const after = /pm/.test(at) && hour !== '12' ? 12 : 0
    const late = Number(hour) + after + 5
    await page.locator('.rehearsing input[type=time]').fill(`${late}:${minute}`)
    await draw
      .getByRole('button', {name: /^Drawn/})
      .first()
      .click()
    const told = draw.getByRole('alert')
    await told.getByRole('button', {name: new RegExp(`It went in at .* and was drawn at ${at}`)}).click()
    const row = page.locator('.log li', {hasText: 'drawn'})
    await row.first().waitFor()
    expect(await row.first().textContent()).toContain(at)
    expect(await row.first().textContent()).not.toContain('late')
    await settled()
    await press(button('Take it back'))
    await row.first().waitFor({state: 'detached'})
    await clock(at, 5)
  })

  it('doubts a note of what is no dish of the day, and names what is', async () => {
    await page.getByLabel('A note of your own').fill('pudding set in')
    await page.keyboard.press('Enter')
    await expect
      .poll(() => page.locator('.readings [role=alert]').innerText())
      .toMatch(/“pudding” is no dish of this day: write “(?:loaf|cake)/)
    await page.getByLabel('A note of your own').fill('cake burnt at the edge')
    await page.keyboard.press('Enter')
    await expect
      .poll(() => page.locator('.noted').innerText())
      .toMatch(
        /cake burnt at the edge\. In words only.*by the dish, “gingerbread burnt”, which is all of it in the oven, or by how many: “gingerbread 3 burnt”/,
      )
    await press(button('Take it back'))
    // A note made before that is done would be told of no more.
    await expect.poll(() => page.locator('.noted').count()).toBe(0)
    await page.getByLabel('A note of your own').fill('cake burnt')
    await page.keyboard.press('Enter')
    await expect.poll(() => page.locator('.noted').innerText()).toMatch(/cake · burnt\./)
    await press(button('Take it back'))
    expect(heard.errors).toEqual([])
  })

  it('tells at the oven of a row of the log that cannot be used: file, line, what to write', async () => {
    const rows = '| time | reading | value |\n| --- | --- | --- |\n| 9:99 | floor | 300 °C |\n| 10 am | pie | set in |\n'
    const log = `---\ndate: 2027-06-19\nlit: 7 am\n---\n\n${rows}`
    const other = await own.browser.newPage()
    await other.goto(`${own.withDay('faulty', new Map([...smallDay, ['firings/2027-06-19.md', log]]))}#bake`)
    const told = other.locator('.log .told li')
    await expect.poll(() => told.count(), {timeout: 30_000}).toBe(2)
    expect((await told.allTextContents()).join('\n')).toMatch(
      /firings\/2027-06-19\.md, line 8\s*“9:99” is not a time of day.*write “5 am”[\s\S]*line 9\s*“pie” is no dish of this day.*write “loaf”/,
    )
    await other.close()
  })
})
