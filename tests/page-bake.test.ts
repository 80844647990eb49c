/// <reference lib="dom" />
import type {BrowserContext, Page} from 'playwright-core'
import {beforeAll, describe, expect, it} from 'vitest'
import {wave} from '../src/page/alarms.js'
import {moved} from '../src/page/moved.js'
import type {PlanView, Showing, StepView} from '../src/page/protocol.js'
import {hasBrowser, listen, ownBrowser} from './page-browser.js'
import {smallDay} from './page-day.js'

describe.skipIf(!hasBrowser)('at the oven', {timeout: 240_000}, () => {
  const own = ownBrowser()
  let context: BrowserContext
  let page: Page
  let heard: ReturnType<typeof listen>

  beforeAll(async () => {
    context = await own.browser.newContext({viewport: {width: 360, height: 740}, hasTouch: true, isMobile: true})
    // What sounds, shakes and keeps the screen on is counted; what a machine without a loudspeaker does with it is not ours to test.
    await context.addInitScript(() => {
      const it = globalThis as unknown as {counted: {plays: string[]; shakes: number; held: number}}
      it.counted = {plays: [], shakes: 0, held: 0}
      HTMLMediaElement.prototype.play = function (this: HTMLMediaElement): Promise<void> {
        if (!this.muted) it.counted.plays.push(this.src)
        return Promise.resolve()
      }
      Object.defineProperty(navigator, 'vibrate', {
        value: () => {
          it.counted.shakes++
          return true
        },
      })
      Object.defineProperty(navigator, 'wakeLock', {
        value: {
          request: () => {
            it.counted.held++
            return Promise.resolve({
              released: false,
              release(this: {released: boolean}) {
                if (!this.released) it.counted.held--
                this.released = true
                return Promise.resolve()
              },
            })
          },
        },
      })
    })
    heard = listen(context)
    page = await context.newPage()
    await page.goto(`${own.withDay('small', smallDay)}#plan`)
    await page.getByRole('button', {name: 'Plan the day'}).click()
    await page.locator('table.hours').waitFor({timeout: 120_000})
  }, 240_000)

  const go = async (place: string): Promise<void> => {
    await page.evaluate((to) => {
      location.hash = to
    }, place)
    await page.waitForTimeout(200)
  }
  const counted = (): Promise<{plays: string[]; shakes: number; held: number}> =>
    page.evaluate(() => (globalThis as unknown as {counted: {plays: string[]; shakes: number; held: number}}).counted)

  it('an alarm ends when its step is done, and what has no place is named', async () => {
    const tall = new Map([
      ...smallDay,
      ['day.md', `${smallDay.get('day.md')}- [Tall cake](receipts/tall.md)\n`],
      ['receipts/tall.md', smallDay.get('receipts/cake.md')!.replace('place: United States', '$&\nvessel: round 10 in x 30 in')],
    ])
    const away = await own.browser.newContext({viewport: {width: 390, height: 740}})
    const other = await away.newPage()
    await other.clock.install({time: new Date('2027-06-19T05:30:00')})
    await other.goto(`${own.withDay('tall', tall)}#plan`)
    await other.getByRole('button', {name: 'Plan the day'}).click()
    await other.locator('table.hours').waitFor({timeout: 120_000})
    const lit = await other.locator('table.hours tr', {hasText: 'Light the'}).locator('td, th').first().innerText()
    await other.evaluate(() => {
      location.hash = 'bake'
    })
    const missing = other.getByRole('region', {name: 'Without a place'})
    await expect.poll(() => missing.innerText()).toMatch(/Tall cake: .*(?:mouth|high)/)
    const [hour, minute] = /(\d+):(\d+)/.exec(lit)!.slice(1) as [string, string]
    await other.clock.setSystemTime(new Date(`2027-06-19T${hour.padStart(2, '0')}:${minute}:01`))
    const alarm = other.getByRole('alert').filter({hasText: 'It is time'})
    await alarm.waitFor({timeout: 30_000})
    await other.getByRole('button', {name: 'Lit', exact: true}).click()
    await alarm.waitFor({state: 'detached', timeout: 30_000})
    await away.close()
  })

  it('plans with two fires at a button, says so in day.md, and one step takes it back', async () => {
    const fires = (): Promise<number> => page.locator('table.hours td', {hasText: /^Light the/}).count()
    expect(await fires()).toBe(1)
    await page.getByRole('button', {name: 'Plan it with two fires'}).click()
    await page.getByRole('button', {name: 'Plan it with one fire'}).waitFor({timeout: 120_000})
    await go('day')
    expect(await page.getByLabel('Fires at most').inputValue()).toBe('2')
    await page.getByRole('button', {name: 'Undo'}).first().click()
    await expect.poll(() => page.getByLabel('Fires at most').inputValue()).toBe('')
    await go('plan')
    await page.getByRole('button', {name: 'Plan again'}).click()
    await page.getByRole('button', {name: 'Plan it with two fires'}).waitFor({timeout: 120_000})
  })

  it('shows on a phone the sign to look for at each step, and no word wider than the glass', async () => {
    const row = page.locator('table.hours tr', {hasText: /Rake out the coals/})
    const [what, sign] = [row.locator('td').nth(0), row.locator('td').nth(1)]
    expect(await sign.isVisible()).toBe(true)
    expect(await sign.textContent()).toMatch(/burning white/)
    const [above, below] = [await what.boundingBox(), await sign.boundingBox()]
    expect(below!.y).toBeGreaterThanOrEqual(above!.y + above!.height)
    expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(0)
  })

  it('has no control under 44 CSS px high or wide, for a floury thumb (WCAG 2.2, 2.5.5)', async () => {
    for (const place of ['receipts', 'oven', 'day', 'plan', 'bake', 'print', 'keep']) {
      await go(place)
      const small = await page.evaluate(() =>
        [...document.querySelectorAll('button, nav a, select, input:not([type=file]), summary, label.do, textarea')]
          .map((one) => ({box: one.getBoundingClientRect(), what: one.outerHTML.slice(0, 80)}))
          .filter(({box}) => box.width > 2 && (box.width < 44 || box.height < 44))
          .map(({what}) => what),
      )
      expect(small, place).toEqual([])
    }
    await go('plan')
  })

  it('does not count down to a day that is not this one', async () => {
    await go('bake')
    await page.locator('.next').waitFor()
    expect(await page.locator('.soon').count()).toBe(0)
    await go('plan')
  })

  it('keeps the screen on while the day view is open, and only then', async () => {
    expect((await counted()).held).toBe(0)
    await go('bake')
    await expect.poll(async () => (await counted()).held).toBe(1)
    await go('keep')
    await expect.poll(async () => (await counted()).held).toBe(0)
    await go('bake')
  })

  it('sounds and shakes when a step is due, until it is heard', async () => {
    await page.getByRole('button', {name: 'Rehearse it now'}).click()
    const before = await counted()
    const due = await page.locator('.next .deed-time').textContent()
    const [, hour, minute] = /(\d+):(\d+) am/.exec(due ?? '') ?? []
    await page.locator('.rehearsing input[type=time]').fill(`${hour?.padStart(2, '0')}:${minute}`)
    await page.getByRole('alert').filter({hasText: 'It is time'}).waitFor()
    // The sound is begun as the alert is drawn, not before it.
    await expect.poll(async () => (await counted()).plays.length).toBe(before.plays.length + 1)
    expect((await counted()).shakes).toBe(before.shakes + 1)
    await page.getByRole('button', {name: 'I hear it'}).click()
    expect(await page.getByText('It is time').count()).toBe(0)
  })

  it('says how long ago and how soon in hours and minutes', async () => {
    const time = page.locator('.rehearsing input[type=time]')
    const before = await time.inputValue()
    // The dough is begun before the fire, and is not asked for any more after an hour; the fire is.
    const due = await page.locator('.deed-say', {hasText: 'Light the fire'}).first().textContent()
    const [, lit, past] = /(\d+):(\d+) am/.exec(due ?? '') ?? []
    await time.fill(`${String(Number(lit) + 2).padStart(2, '0')}:${past}`)
    await expect.poll(() => page.locator('.now .overdue').first().textContent()).toMatch(/^ 2 h ago$/)
    await time.fill(before)
  })

  it('counts the arm with a sound each second, its caution before its button', async () => {
    await page.getByRole('button', {name: 'Arm count'}).click()
    const tool = page.locator('.tool')
    const words = (await tool.textContent()) ?? ''
    expect(words.indexOf('burn')).toBeGreaterThanOrEqual(0)
    expect(words.indexOf('burn')).toBeLessThan(words.indexOf('Arm in: count'))
    const before = (await counted()).plays.length
    await page.getByRole('button', {name: 'Arm in: count'}).click()
    await expect
      .poll(async () => Number.parseInt((await tool.locator('.count').textContent()) ?? '0', 10), {timeout: 20_000})
      .toBe(3)
    await page.getByRole('button', {name: 'Out!'}).click()
    const count = Number.parseInt((await tool.locator('.count').textContent()) ?? '', 10)
    expect((await counted()).plays.length - before).toBe(count)
    await page.waitForTimeout(1300)
    expect((await counted()).plays.length - before).toBe(count)
    expect(await tool.textContent()).toContain('too hot for bread')
    await page.getByRole('button', {name: 'Arm count'}).click()
  })

  it('asks before it writes down what can hardly be, and every note can be taken back', async () => {
    await page.getByLabel('A note of your own').fill('floor 2000 °C')
    await page.getByRole('button', {name: 'Note it'}).click()
    await page.locator('.readings [role=alert]').waitFor()
    await page.getByLabel('A note of your own').fill('swept, and the door wedged')
    await page.getByRole('button', {name: 'Note it'}).click()
    await page.locator('.log li', {hasText: 'wedged'}).waitFor()
    await page.getByRole('button', {name: 'Undo'}).first().click()
    await page.locator('.log li', {hasText: 'wedged'}).waitFor({state: 'detached'})
    expect(heard.requests).toEqual([])
    expect(heard.errors).toEqual([])
  })

  it('shows German by its own clock and says that it is German (WCAG 2.2, 3.1.2)', async () => {
    await go('print')
    await page.getByLabel('Language').selectOption('de')
    expect(await page.getByLabel('Clock').inputValue()).toBe('24')
    await go('plan')
    await page.locator('table.hours td[lang=de]', {hasText: 'Glut ausräumen'}).waitFor({timeout: 120_000})
    expect(await page.locator('table.hours').textContent()).not.toMatch(/\b[ap]m\b|vorm\.|nachm\./)
    await go('print')
    await page.getByLabel('Language').selectOption('en')
    expect(await page.getByLabel('Clock').inputValue()).toBe('12')
  })
})

describe('what moved', () => {
  const showing: Showing = {language: 'en', units: 'both', clock: 24, degrees: 'both'}
  const step = (action: StepView['action'], dish: string, at: number): StepView => ({
    key: `${action}:${dish}`,
    at,
    action,
    dishes: dish ? [dish] : [],
    load: null,
    say: '',
    sign: '',
    ahead: '',
    behind: '',
    degrees: '',
    past: false,
  })
  const view = (steps: StepView[], unplaced: PlanView['unplaced'] = []): PlanView =>
    ({
      steps,
      unplaced,
      dishes: [
        {id: 'a', title: 'Loaf', stem: 'a', amount: ''},
        {id: 'b', title: 'Beans', stem: 'b', amount: ''},
      ],
    }) as unknown as PlanView
  const before = view([step('load', 'a', 540), step('draw', 'a', 590), step('load', 'b', 600), step('draw', 'b', 1200)])

  it('is one sentence for each dish, and moves of under three minutes are not told', () => {
    const after = view([step('load', 'a', 560), step('draw', 'a', 610), step('load', 'b', 602), step('draw', 'b', 1201)])
    expect(moved(before, after, showing)).toEqual(['Loaf: set in 09:20 instead of 09:00; draw 10:10 instead of 09:50'])
  })

  it('tells of a dish without a place once, with its reason, and only when the search is over', () => {
    const after = view(
      [step('load', 'a', 540), step('draw', 'a', 590)],
      [{dish: 'Beans', of: ['Beans'], reason: 'too little heat is left', remedies: []}],
    )
    expect(moved(before, after, showing, false)).toEqual(['Beans: a place is still being looked for'])
    expect(moved(before, after, showing)).toEqual(['Beans: no longer in the plan. Too little heat is left'])
  })
})

describe('a sound', () => {
  it('is a WAV file by its own header (RIFF, Multimedia Programming Interface and Data Specifications 1.0, 1991)', () => {
    const file = wave([{hertz: 441, from: 0, seconds: 0.1}])
    const view = new DataView(file.buffer)
    expect(String.fromCharCode(...file.slice(0, 4), ...file.slice(8, 16))).toBe('RIFFWAVEfmt ')
    expect(view.getUint32(4, true)).toBe(file.length - 8)
    expect(view.getUint32(40, true)).toBe(file.length - 44)
    // Mono, one byte a sample: bytes a second are samples a second.
    expect([view.getUint16(20, true), view.getUint16(22, true), view.getUint16(34, true)]).toEqual([1, 1, 8])
    expect(view.getUint32(28, true)).toBe(view.getUint32(24, true))
  })
})
