/** The id of the element that carries a day inside the page. */
export const CARRIER = 'hearthfall-day'

/** A day carried inside the page. */
export interface Carried {
  readonly format: 1
  readonly files: Readonly<Record<string, string>>
}

/**
 * The page with a day inside it, to hand to the person at the oven.
 *
 * The files stand as JSON in a block that no browser runs. Every `<`, `>` and `&`, and all that is not ASCII, is written as an escape of
 * JSON, so no receipt can end the block, and the page stays in one plain encoding.
 *
 * @param html the built page, `dist/hearthfall.html`
 * @param files the day's folder: paths with `/`, and texts
 * @throws {RangeError} where `html` is not the page
 */
export function pageWith(html: string, files: ReadonlyMap<string, string>): string {
  const json = JSON.stringify({format: 1, files: Object.fromEntries(files)} satisfies Carried).replace(
    /[<>&]|[^\0-\x7f]/g,
    (c) => `\\u${c.charCodeAt(0).toString(16).padStart(4, '0')}`,
  )
  const bare = html.replace(new RegExp(`<script[^>]*id="${CARRIER}"[^>]*>[^<]*</script>\\s*`), '')
  // Before the page's own script, which then finds it without waiting for what follows.
  const at = bare.indexOf('<div id="page"')
  if (at < 0) throw new RangeError('this is not the page of Hearthfall')
  return `${bare.slice(0, at)}<script type="application/json" id="${CARRIER}">${json}</script>\n${bare.slice(at)}`
}

/** The files of a carried day; null where the text is not one. */
export function carriedFiles(json: string): Map<string, string> | null {
  // Most pages carry none, and an error caught makes the browser read the whole script once more for its lines.
  if (json === '') return null
  try {
    const found: unknown = JSON.parse(json)
    if (!found || typeof found !== 'object' || !('files' in found) || !found.files || typeof found.files !== 'object') return null
    const files = new Map<string, string>()
    for (const [path, text] of Object.entries<unknown>({...found.files}))
      if (typeof text === 'string' && isSafePath(path)) files.set(path, text)
    return files.size > 0 ? files : null
  } catch {
    return null
  }
}

/** Whether a path stays inside the day's folder. */
export function isSafePath(path: string): boolean {
  return (
    path !== '' &&
    !/^[/\\]|^[a-z]:|\\|\0/i.test(path) &&
    !path.split('/').some((part) => part === '..' || part === '.' || part === '')
  )
}
