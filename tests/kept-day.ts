import {type Files, smallDay} from './page-day.js'

/** A day of three dishes whose fire is lit, invented; what it asks for can be changed. */
export const DATE = '2027-06-19'
export const LOG = `firings/${DATE}.md`
export const COPY = `firings/${DATE}.day.md`

const pudding =
  '---\nyear: 1840\nplace: United States\n---\n\n# Rice pudding\n\nHalf a pound of rice, two quarts of milk, half a pound of sugar.\nBake it in a slow oven two hours. It makes one pudding.\n'

/** The day's text with a list: the amount of each, or null where it is not asked for. */
export function dayWith(
  {
    loaf = '4 loaves',
    cake = '2 cakes',
    pudding: slow = '2 puddings',
  }: Partial<Record<'loaf' | 'cake' | 'pudding', string | null>> = {},
  head = '',
): string {
  const line = (title: string, amount: string | null): string =>
    amount === null ? '' : `- [${title}](receipts/${title.toLowerCase()}.md) — ${amount}\n`
  return `---\ndate: ${DATE}\npeople: 8\nfire from: 6 am\nserve: 4 pm\nhands: 1\n${head}---\n\n# A day\n\n${line('Loaf', loaf)}${line('Cake', cake)}${line('Pudding', slow)}`
}

/** The day's log, its fire lit when its morning's plan has it. */
export const logWith = (...rows: readonly string[]): string =>
  `---\ndate: ${DATE}\nlit: 7:30\nraked: 9:15\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n${rows.map((row) => `| ${row} | |\n`).join('')}`

/** The folder of such a day. */
export const folderWith = (day: string, more: Iterable<readonly [string, string]> = []): Files =>
  new Map([...smallDay, ['receipts/pudding.md', pudding], ['day.md', day], ...more])
