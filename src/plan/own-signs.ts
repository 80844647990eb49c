import {withoutBatch} from './batches.js'

/**
 * The signs of what is drawn at once. Where not all of it has the same sign, each is told with whose it is: “Household bread: sounds
 * hollow; Gingerbread: a straw comes out dry”.
 *
 * @param drawn what is drawn, with the sign of each in the reader's words; empty where it has none
 * @param and how a list of titles is said
 */
export function signsOf(
  drawn: readonly {readonly title: string; readonly sign: string}[],
  and: (titles: readonly string[]) => string,
): string {
  const whose = new Map<string, Set<string>>()
  for (const {title, sign} of drawn) whose.set(sign, (whose.get(sign) ?? new Set()).add(withoutBatch(title)))
  if (whose.size < 2) return drawn[0]?.sign ?? ''
  return Array.from(whose, ([sign, titles]) => (sign === '' ? '' : `${and([...titles])}: ${sign}`))
    .filter((said) => said !== '')
    .join('; ')
}
