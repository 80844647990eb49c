import type {Token} from './section.js'

/** Where the dish of a title ends: what follows "with", "without", "for", "to eat with", "by sponge and dough" is not it; "or" gives it a second name. */
export function headEnd(tokens: readonly Token[]): number {
  const end = tokens.findIndex(
    (t, i) => i > 0 && /^(?:with|without|for|by|in|from|on|mit|ohne|vom|fur|nach|\(|,|;|—|:)$/.test(t.word),
  )
  return end <= 0 ? tokens.length : end
}
