/** What this browser remembers of its user besides the days: small words, asked for before anything is drawn. */

/** What the user likes, as JSON. */
export const LIKES = 'hearthfall-likes'
/** The id of the day that was open last. */
export const LAST = 'hearthfall-day'
/** Not empty: there is a day on the shelf, so that the view of an empty page would be wrong. */
export const FULL = 'hearthfall-full'
/** The note that is being typed at the oven, and of which day, as JSON. */
export const DRAFT = 'hearthfall-note'
/** What is still to be done at the oven by plans before the last, and of which day, as JSON. */
export const HELD = 'hearthfall-held'

/** A word this browser remembers; null where it remembers none, or nothing at all. */
export function stored(key: string): string | null {
  try {
    return localStorage.getItem(key)
  } catch {
    return null
  }
}

/** Have a word remembered. */
export function store(key: string, value: string): void {
  try {
    if (localStorage.getItem(key) !== value) localStorage.setItem(key, value)
  } catch {
    // A browser that keeps nothing says so elsewhere: the days themselves cannot be kept either.
  }
}
