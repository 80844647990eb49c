import type {Receipt} from '../receipt/types.js'
import type {Say} from './sizing.js'
import {slug} from './slug.js'
import type {DayAmount} from './types.js'

const plainPath = (path: string): string => path.replace(/\\/g, '/').replace(/^(?:\.\/)+/, '')

/** The receipt a line of the day means, and the first part of its dishes' ids: the file's own name where it holds one receipt. */
export function receiptOf(item: DayAmount, receipts: readonly Receipt[], say: Say): {receipt: Receipt; name: string} | null {
  const wanted = plainPath(item.file)
  const inFile = receipts.filter((receipt) => {
    const path = plainPath(receipt.file)
    return path === wanted || path.endsWith(`/${wanted}`)
  })
  const [only] = inFile
  if (only === undefined) {
    say(
      'error',
      'scale-receipt',
      `“${item.file}” holds no receipt`,
      'write the ingredients as a list or a paragraph under a title',
      item.targetAt,
    )
    return null
  }
  if (inFile.length === 1) return {receipt: only, name: slug((wanted.split('/').pop() ?? wanted).replace(/\.[a-z]+$/i, ''))}
  const words = slug(item.title)
  const titled =
    inFile.find((one) => slug(one.title) === words) ?? inFile.find((one) => words !== 'dish' && slug(one.title).includes(words))
  if (titled !== undefined) return {receipt: titled, name: slug(titled.title)}
  const first = inFile.find((one) => one.ingredients.length > 0) ?? only
  say(
    'warning',
    'scale-receipt',
    `“${item.file}” holds ${inFile.length} receipts and none is called “${item.title}”; taken: “${first.title}”`,
    'use the receipt’s own title as the text of the link',
  )
  return {receipt: first, name: slug(first.title)}
}
