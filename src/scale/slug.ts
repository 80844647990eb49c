/** A title in small letters and hyphens: the first part of its dishes’ ids. Stands apart from `dishes.ts`, so that what draws a plan needs no table. */
export function slug(title: string): string {
  const plain = title
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/['’]/g, '')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
  return plain === '' ? 'dish' : plain
}

/** A receipt's file name without folder and ending: what the log and a dish's id are made of. */
export const slugOf = (file: string): string => file.replace(/^.*\//, '').replace(/\.md$/, '')

/**
 * What a log may call the dishes of a day: their receipts' files, and where a file holds several, their titles; and the titles that the day
 * gives them.
 *
 * @param items the day's list
 * @param receipts titles of the receipts of its files
 */
export function namesInLog(
  items: readonly {readonly file: string; readonly title?: string}[],
  receipts: readonly {readonly file: string; readonly title: string}[],
): string[] {
  const names = new Set<string>()
  for (const {file} of items) {
    const own = receipts.filter((receipt) => receipt.file === file)
    names.add(slugOf(file))
    if (own.length > 1) for (const {title} of own) names.add(slug(title))
  }
  // Behind the files' own names, which are suggested first.
  for (const {title} of items) if (title !== undefined && title !== '') names.add(slug(title))
  return [...names]
}

/** What the log may call each line of a day's list: its receipt's file, where no other line has that, and its title. */
export function namesOfEach(items: readonly {readonly file: string; readonly title: string}[]): string[][] {
  return items.map(({file, title}) => [
    ...(items.filter((other) => other.file === file).length === 1 ? [slugOf(file)] : []),
    ...(title === '' ? [] : [slug(title)]),
  ])
}
