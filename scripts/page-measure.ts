// Measures the built page as a slow phone would have it, and kills it while one types. Run with `npx tsx scripts/page-measure.ts [kills]`.
import {mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join, resolve} from 'node:path'
import {pageWith} from '../src/page/embedded.js'
import {killed, launch, longestFrame, watchFrames} from '../tests/page-browser.js'

const file = resolve('dist/hearthfall.html')
const kills = Number(process.argv[2] ?? 0)
const say = (line: string): boolean => process.stdout.write(`${line}\n`)
const work = mkdtempSync(join(tmpdir(), 'hearthfall-measure-'))
const demo = new Map<string, string>([
  ['day.md', readFileSync('corpus-demo/day.md', 'utf8')],
  ['oven.md', readFileSync('corpus-demo/oven.md', 'utf8')],
  ...readdirSync('corpus-demo/receipts').map(
    (name) => [`receipts/${name}`, readFileSync(`corpus-demo/receipts/${name}`, 'utf8')] as const,
  ),
  ...readdirSync('corpus-demo/firings').map(
    (name) => [`firings/${name}`, readFileSync(`corpus-demo/firings/${name}`, 'utf8')] as const,
  ),
])
const withDay = join(work, 'day.html')
writeFileSync(withDay, pageWith(readFileSync(file, 'utf8'), demo))
say(`file: ${(statSync(file).size / 1024 / 1024).toFixed(2)} MB`)

const browser = await launch()
const slow = async (rate: number) => {
  const context = await browser.newContext({viewport: {width: 360, height: 740}, hasTouch: true, isMobile: true})
  const page = await context.newPage()
  const cdp = await context.newCDPSession(page)
  await cdp.send('Emulation.setCPUThrottlingRate', {rate})
  return {context, page}
}

{
  const times: number[] = []
  for (let n = 0; n < 5; n++) {
    const {context, page} = await slow(4)
    await page.goto(`file://${file}`)
    await page.getByRole('button', {name: 'Begin a receipt'}).waitFor()
    times.push(
      await page.evaluate(
        () => performance.getEntriesByType('paint').find((one) => one.name === 'first-contentful-paint')!.startTime,
      ),
    )
    const ready = await page.evaluate(() => performance.now())
    if (n === 4) say(`opened: usable by ${Math.round(ready)} ms after navigation began, as the driver saw it`)
    await context.close()
  }
  say(`first view at 4×: ${times.map(Math.round).join(', ')} ms`)
}
{
  const {context, page} = await slow(6)
  await page.goto(`file://${withDay}#receipts`)
  await page
    .getByRole('button', {name: /Apple Pie/})
    .first()
    .click()
  await page.locator('table.beside').first().waitFor()
  const box = page.getByLabel('The receipt as it stands')
  await box.press('Control+End')
  await watchFrames(page)
  const read: number[] = []
  for (const word of 'Add a gill of cream and half a pound of sugar.'.split(' ')) {
    await box.press('Control+End')
    await page.keyboard.type(`${word} `)
    await page.waitForTimeout(400)
    read.push(Number(await page.locator('.as-read').getAttribute('data-took')))
  }
  say(
    `reading after a key at 6×: ${read.map(Math.round).join(', ')} ms; longest frame ${Math.round(await longestFrame(page))} ms`,
  )
  await page.evaluate(() => {
    location.hash = 'plan'
  })
  await watchFrames(page)
  await page.getByRole('button', {name: 'Plan the day'}).click()
  await page.locator('table.hours').waitFor({timeout: 300_000})
  say(
    `plan of the demo day: ${await page.getByText(/Worked out in/).textContent()} longest frame ${Math.round(await longestFrame(page))} ms`,
  )
  await page.evaluate(() => {
    location.hash = 'bake'
  })
  await page.getByRole('button', {name: 'Rehearse it now'}).click()
  await page.getByRole('button', {name: '+15 min'}).click()
  await page.locator('.now').getByRole('button', {name: 'Lit'}).click()
  await page.locator('.moved').waitFor({timeout: 300_000})
  for (const reading of ['floor 300 °C', 'floor 290 °C', 'arm 18']) {
    await page.getByRole('button', {name: '+1 h'}).click()
    await page.getByLabel('A note of your own').fill(reading)
    await watchFrames(page)
    const from = Date.now()
    await page.getByRole('button', {name: 'Note it'}).click()
    await page
      .getByText(`Planned again after: `, {exact: false})
      .filter({hasText: reading.split(' ')[1]!})
      .waitFor({timeout: 300_000})
    say(
      `replan after “${reading}” at 6×: ${Date.now() - from} ms (${await page.locator('.moved').getAttribute('data-took')} ms of it the worker's); longest frame ${Math.round(await longestFrame(page))} ms`,
    )
    await page.locator('.stale').waitFor({state: 'detached', timeout: 120_000})
  }
  await context.close()
}
await browser.close()
if (kills > 0) {
  const found = await killed(`file://${file}`, kills, Math.random)
  say(`killed ${kills} times: ${found.lost} times words older than a second were lost; oldest key lost ${found.oldest} ms before`)
}
rmSync(work, {recursive: true, force: true})
