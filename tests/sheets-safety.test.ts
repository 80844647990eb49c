import {createHash} from 'node:crypto'
import {describe, expect, it} from 'vitest'
import {items} from '../src/lexicon/index.js'
import {lookCss} from '../src/sheets/look.js'
import {lookHash, policy, slug} from '../src/sheets/page.js'
import {sheets} from '../src/sheets/sheets.js'
import {oven, plan, problem, sources} from './fixtures-sheets.js'
import {hostileSheets} from './fixtures-sheets-hostile.js'

describe('what a receipt may do to a page', () => {
  const made = hostileSheets()
  const pages = [...made].filter(([path]) => path.endsWith('.html') || path.endsWith('.svg'))

  it('leaves no script, handler, frame, form, image or style of a receipt in any page or drawing', () => {
    expect(pages.length).toBeGreaterThan(9)
    for (const [path, page] of pages) {
      // Tags as a browser would see them: a "<" of the text is written as an entity.
      expect(page, path).not.toMatch(/<\/?(?:script|iframe|form|input|img|object|embed|foreignObject|link|base)\b/i)
      expect(page, path).not.toMatch(/<[^>]*\son[a-z]+\s*=/i)
      expect(page.match(/<style/g)?.length ?? 0, path).toBe(path.endsWith('.html') ? 1 : 0)
      expect(page, path).not.toMatch(/<[^>]*\sstyle=/i)
    }
  })

  it('links only to http, https and mailto, beside its own sheets', () => {
    const own = new Set(made.keys())
    for (const [path, page] of pages)
      for (const [, href] of page.matchAll(/<a\b[^>]*\shref="([^"]*)"/g)) {
        const known = own.has(href!) || own.has(href!.replace(/^\.\.\//, '')) || href!.startsWith('#')
        expect(known || /^(?:https?|mailto):/.test(href!), `${path}: ${href}`).toBe(true)
      }
    const handout = [...made].find(([path]) => path.startsWith('handouts/'))![1]
    expect(handout).toContain('href="https://example.org/good"')
    expect(handout).toContain('href="mailto:cook@example.org"')
  })

  it('keeps the words of the receipt to be read', () => {
    const handout = [...made].find(([path]) => path.startsWith('handouts/'))![1]
    expect(handout).toContain('window.bad = 2')
    expect(handout).toContain('&#x3C;script>')
  })

  it('writes only names of its own, none of them a way out of the folder', () => {
    for (const path of made.keys()) expect(path).toMatch(/^(?:handouts\/)?[a-z0-9-]+\.[a-z]+$/)
    expect(slug('../../etc/passwd')).toBe('etc-passwd')
    expect(slug('…')).toBe('receipt')
    expect(slug('Crème brûlée')).toBe('creme-brulee')
  })

  it('states a policy on every page that lets no script run and names the hash of its own style', () => {
    const hash = `sha256-${createHash('sha256').update(lookCss).digest('base64')}`
    expect(lookHash, 'the look was changed: put this hash into page.ts').toBe(hash)
    expect(policy).toContain("default-src 'none'")
    for (const [path, page] of made)
      if (path.endsWith('.html'))
        expect(
          page.replaceAll('&#x27;', "'").includes(`<meta http-equiv="Content-Security-Policy" content="${policy}">`),
          path,
        ).toBe(true)
  })

  it('lets no spreadsheet run a cell as a formula', () => {
    const dish = {
      ...problem.dishes[0]!,
      amounts: [{item: '=HYPERLINK("http://example.org")', part: '', grams: null, millilitres: null, kitchen: '+1', exact: null}],
    }
    const made = sheets({plan, problem: {...problem, dishes: [dish]}, oven, receipts: [], texts: new Map(), sources, items})
    expect(made.get('shopping.csv')).not.toMatch(/(?:^|[\n,"])[=+@]/)
  })
})
