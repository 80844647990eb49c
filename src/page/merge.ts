/** One change of a text: from `at` on, `gone` characters give way to `come`. */
export interface Change {
  readonly at: number
  readonly gone: string
  readonly come: string
}

/** What changed from one text to another, as one stretch; null where they are the same. */
export function changeOf(before: string, after: string): Change | null {
  if (before === after) return null
  const most = Math.min(before.length, after.length)
  let start = 0
  while (start < most && before.charCodeAt(start) === after.charCodeAt(start)) start++
  let end = 0
  while (end < most - start && before.charCodeAt(before.length - 1 - end) === after.charCodeAt(after.length - 1 - end)) end++
  return {at: start, gone: before.slice(start, before.length - end), come: after.slice(start, after.length - end)}
}

/** A text with a change done. */
export function done(text: string, change: Change): string {
  return text.slice(0, change.at) + change.come + text.slice(change.at + change.gone.length)
}

/** A text with a change taken back; null where the text has since changed there. */
export function undone(text: string, change: Change): string | null {
  const {at, gone, come} = change
  if (text.slice(at, at + come.length) === come) return text.slice(0, at) + gone + text.slice(at + come.length)
  // What stands elsewhere by now, because something was put in before it, is found where it is the only one of its kind.
  if (come.length < 4) return null
  const found = text.indexOf(come)
  return found >= 0 && text.indexOf(come, found + 1) < 0 ? text.slice(0, found) + gone + text.slice(found + come.length) : null
}

/**
 * Two changes of one text, made at the same time in two tabs, put together: theirs first, then ours.
 *
 * @returns null where both changed the same words, so that neither may win
 */
export function merge(base: string, theirs: string, ours: string): string | null {
  if (base === theirs || theirs === ours) return ours
  const mine = changeOf(base, ours)
  if (mine === null) return theirs
  const other = changeOf(base, theirs)!
  const mineEnd = mine.at + mine.gone.length
  const otherEnd = other.at + other.gone.length
  const shift = other.come.length - other.gone.length
  // Both only put in, and at the same place: one after the other.
  if (mine.at === other.at && mine.gone === '' && other.gone === '') return done(theirs, {...mine, at: mine.at + shift})
  if (mine.at >= otherEnd && !(mine.at === otherEnd && mine.at === other.at)) return done(theirs, {...mine, at: mine.at + shift})
  if (mineEnd <= other.at) return done(theirs, mine)
  return null
}

/** Two changes one after the other as one, where the second touches what the first put in; null where it lies apart. */
export function grown(first: Change, second: Change): Change | null {
  const end = first.at + first.come.length
  if (second.at > end || second.at + second.gone.length < first.at) return null
  // What the second took away before and behind what the first put in belonged to the text before both.
  const before = second.at < first.at ? second.gone.slice(0, first.at - second.at) : ''
  const behind = second.at + second.gone.length > end ? second.gone.slice(end - second.at) : ''
  const from = Math.max(0, second.at - first.at)
  const to = Math.min(first.come.length, second.at + second.gone.length - first.at)
  const at = Math.min(first.at, second.at)
  return {
    at,
    gone: before + first.gone + behind,
    come: first.come.slice(0, from) + second.come + first.come.slice(Math.max(from, to)),
  }
}
