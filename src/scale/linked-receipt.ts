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
  const called = inFile.filter((one) => slug(one.title) === words)
  // "White bread for the evening" is told apart from "White bread" by the link, and is of the same receipt.
  const near = [(one: Receipt) => slug(one.title).includes(words), (one: Receipt) => words.startsWith(`${slug(one.title)}-`)].map(
    (is) => (words === 'dish' ? [] : inFile.filter(is)),
  )
  const like = [called, ...near].find((some) => some.length > 0) ?? []
  const [titled] = like
  if (titled !== undefined) {
    if (like.length > 1)
      say(
        'warning',
        'scale-receipt',
        `“${item.title}” may be any of ${like.length} receipts of “${item.file}”; taken: “${titled.title}”`,
        called.length > 1
          ? 'give the receipts titles of their own, or each a file'
          : 'use the receipt’s own title as the text of the link',
        item.targetAt,
      )
    return {receipt: titled, name: slug(titled.title)}
  }
  const first = inFile.find((one) => one.ingredients.length > 0) ?? only
  say(
    'warning',
    'scale-receipt',
    `“${item.file}” holds ${inFile.length} receipts and none is called “${item.title}”; taken: “${first.title}”`,
    'use the receipt’s own title as the text of the link',
  )
  return {receipt: first, name: slug(first.title)}
}
