import type {Token} from './section.js'

/**
 * Quotation marks round a word or a few: “600 g "00" flour”, “‘strong’ flour”, „Typ 405“. They say that it is called so, and part no name
 * from its amount.
 */

const MARKS: ReadonlySet<string> = new Set(['"', "'", '„', '‚', '«', '»', '‹', '›'])

/** Most tokens between a pair: more is what somebody said. */
const LONGEST = 5

/** How far behind a number a quotation is of what it counts, tokens. */
const NEAR = 3

const isNearNumber = (tokens: readonly Token[], at: number): boolean =>
  tokens.slice(Math.max(0, at - NEAR), at).some(({kind, block}) => kind === 'number' && block === tokens[at]!.block)

/** The token of the mark that closes the quotation opened at `at`; −1 where it opens none: inches (9") and ditto marks stand otherwise. */
function closing(tokens: readonly Token[], at: number): number {
  const open = tokens[at]!
  const first = tokens[at + 1]
  const opens = open.gap || (at > 0 && tokens[at - 1]!.word === '(')
  if (
    open.kind !== 'mark' ||
    !MARKS.has(open.word) ||
    !opens ||
    first?.block !== open.block ||
    first.gap ||
    !isNearNumber(tokens, at)
  )
    return -1
  for (let i = at + 2; i < tokens.length && i <= at + 1 + LONGEST; i++) {
    const token = tokens[i]!
    if (token.block !== open.block) return -1
    if (token.kind === 'mark' && MARKS.has(token.word)) return token.gap ? -1 : i
  }
  return -1
}

/** The tokens that are quotation marks round a few words behind a number. */
export function quotationMarks(tokens: readonly Token[]): ReadonlySet<number> {
  const found = new Set<number>()
  for (let i = 0; i + 2 < tokens.length; i++) {
    if (tokens[i]!.kind !== 'mark' || found.has(i)) continue
    const close = closing(tokens, i)
    if (close > 0) found.add(i).add(close)
  }
  return found
}
