import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {readOven} from '../src/oven/read.js'
import {readReceiptFile} from '../src/page/chain.js'
import {CARRIER, carriedFiles, isSafePath, pageWith} from '../src/page/embedded.js'
import {
  dayLine,
  freeReceiptPath,
  listed,
  READ,
  TYPED,
  titleOf,
  withDayLine,
  withDayLineAdded,
  within,
  withTitle,
} from '../src/page/folder.js'
import {frontFault, stated, withStated} from '../src/page/front.js'
import {homed} from '../src/page/homed.js'
import {changeOf, done, grown, merge, undone} from '../src/page/merge.js'
import {unzipFolder, zipFolder} from '../src/page/zip.js'
import {readDay} from '../src/plan/day.js'
import {decoded} from '../src/receipt/decode.js'

const OVEN = `---
floor: round 42 in            # measured twice
vault height: 16 in
mouth: 18 in x 10 in
hearth:
  - fire brick 2 1/2 in
  - sand 2 in
vault:
  - common brick 4 1/2 in
place: indoors
---

# The oven at Hollin End

Prose that stays.
`

const DAY = `---
date: 2027-06-19
people: 40
fire from: 5 am
serve: 1 pm
---

# Feast

- [Household bread](receipts/household-bread.md) — 12 loaves, wanted by 12 noon
- [Beans](receipts/beans.md)

## Spare

- [Rusks](receipts/rusks.md)
`

describe('front matter under a form', () => {
  it('sets one key and leaves comments, order and prose', () => {
    const next = withStated(OVEN, {floor: 'round 50 in'})
    expect(next).toContain('# measured twice')
    expect(next).toContain('Prose that stays.')
    const read = readOven(next, 'oven.md').oven
    expect(read?.floor).toEqual({shape: 'round', diameter: expect.closeTo(1.27, 3)})
    expect(read?.vaultHeight).toBeCloseTo(0.4064, 4)
  })

  it('sets lists, takes keys out, and begins front matter where there is none', () => {
    expect(readOven(withStated(OVEN, {vault: ['clay 3 in', 'sand 6 in']}), 'oven.md').oven?.vault).toHaveLength(2)
    expect(stated(withStated(OVEN, {place: null})).has('place')).toBe(false)
    const begun = withStated('# Buns\n\nFlour.\n', {year: '1829', vessel: 'round 9 in x 2 in'})
    expect(begun).toMatch(/^---\nyear: 1829\nvessel: round 9 in x 2 in\n---\n\n# Buns/)
  })

  it('leaves a text whose front matter is faulty as it is', () => {
    const faulty = '---\nfloor: [round\n---\n# x\n'
    expect(withStated(faulty, {floor: 'round 40 in'})).toBe(faulty)
  })

  it('says where and why nothing can be set in it', () => {
    expect(frontFault(OVEN)).toBeNull()
    expect(frontFault('# no front matter\n')).toBeNull()
    expect(frontFault('---\nyear: 1829\nplace: [United States\n---\n# x\n')?.line).toBe(3)
    const nested = frontFault('---\nyear: 1829\nnotes: Anna: brings eggs\n---\n# x\n')
    expect(nested?.line).toBe(3)
    expect(nested?.why).toMatch(/mapping/i)
    expect(frontFault('---\n- a\n---\n# x\n')).toEqual({line: 2, why: 'no list of names and values'})
  })

  it('keeps whatever is typed, however odd, as the same words', () => {
    fc.assert(
      fc.property(fc.string({maxLength: 40}), (words) => {
        const value = words.trim()
        fc.pre(value !== '')
        expect(stated(withStated('# a\n', {vessel: value})).get('vessel')).toBeDefined()
      }),
      {numRuns: 200},
    )
  })
})

describe('the list of the day under a form', () => {
  it('changes one line, takes one out, adds one to either list', () => {
    const line = readDay(DAY, 'day.md').day!.items[0]!.line
    const changed = withDayLine(DAY, line, {
      file: 'receipts/household-bread.md',
      title: 'Household bread',
      amount: '8 loaves',
      wanted: '11 am',
    })
    expect(readDay(changed, 'day.md').day!.items[0]).toMatchObject({amount: '8 loaves', wantedBy: 660})
    expect(readDay(withDayLine(DAY, line, null), 'day.md').day!.items).toHaveLength(1)
    const pies = {file: 'receipts/pies.md', title: 'Pies', amount: '6 pies'}
    for (const [wanted, written] of [
      ['6 pm', 'wanted by 6 pm'],
      ['hot at 6 pm', 'hot at 6 pm'],
      ['Hot by 6 pm', 'Hot by 6 pm'],
    ] as const) {
      const hot = withDayLineAdded(DAY, {...pies, wanted}, false)
      expect(hot).toContain(`— 6 pies, ${written}\n`)
      expect(readDay(hot, 'day.md').day!.items.at(-1)!.hot).toBe(wanted === '6 pm' ? undefined : true)
      expect(listed(hot).find(({file}) => file === pies.file)).toMatchObject({amount: '6 pies', wanted})
    }
    const more = withDayLineAdded(DAY, {file: 'receipts/pie (best).md', title: 'Pie [best]', amount: '', wanted: ''}, false)
    expect(readDay(more, 'day.md').day!.items.map((i) => i.file)).toEqual([
      'receipts/household-bread.md',
      'receipts/beans.md',
      'receipts/pie (best).md',
    ])
    const spare = withDayLineAdded(more, {file: 'receipts/x.md', title: 'X', amount: '', wanted: ''}, true)
    expect(readDay(spare, 'day.md').day!.spare).toHaveLength(2)
    expect(
      readDay(
        withDayLineAdded(DAY.split('- [House')[0]!, {file: 'receipts/x.md', title: 'X', amount: '2 times', wanted: ''}, true),
        'd',
      ).day!.spare[0],
    ).toMatchObject({amount: '2 times'})
  })

  it('never touches a line that is no entry', () => {
    expect(withDayLine(DAY, 2, null)).toBe(DAY)
    expect(dayLine({file: 'receipts/a b.md', title: 'a\nb', amount: ' 3 kg ', wanted: ''})).toBe(
      '- [a b](receipts/a%20b.md) — 3 kg',
    )
  })

  it('names a file by its first heading and never twice', () => {
    expect(titleOf(OVEN)).toBe('The oven at Hollin End')
    expect(titleOf(withTitle(OVEN, 'Other'))).toBe('Other')
    expect(freeReceiptPath(new Map([['receipts/plum-cake.md', '']]), 'Plum Cake.md')).toBe('receipts/plum-cake-2.md')
    expect(freeReceiptPath(new Map(), '../../..')).toBe('receipts/receipt.md')
  })
})

describe('two tabs', () => {
  it('both changes stand where they lie apart', () => {
    expect(merge('one two three', 'ONE two three', 'one two THREE')).toBe('ONE two THREE')
    expect(merge('one two three', 'one two THREE', 'ONE two three')).toBe('ONE two THREE')
  })

  it('rows put in at the same place stand one after the other', () => {
    expect(merge('a\nz', 'a\nfirst\nz', 'a\nsecond\nz')).toMatch(/^a\n(?:first\nsecond|second\nfirst)\nz$/)
  })

  it('the same words changed twice are no merge', () => {
    expect(merge('round 42 in', 'round 44 in', 'round 46 in')).toBeNull()
  })

  it('loses no letter put in by either', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), fc.string(), (a, b, c) => {
        const base = `${a}|middle|${b}`
        const both = merge(base, `${c}${base}`, `${base}${c}`)
        if (both !== null) expect(both).toBe(c === '' ? base : `${c}${base}${c}`)
      }),
    )
  })

  it('a change is done and undone', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), (a, b) => {
        const change = changeOf(a, b)
        if (change === null) expect(a).toBe(b)
        else {
          expect(done(a, change)).toBe(b)
          expect(undone(b, change)).toBe(a)
        }
      }),
    )
  })

  it('typing gathered into one step is undone in one', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), fc.string(), (a, b, c) => {
        const first = changeOf(a, b)
        const second = changeOf(b, c)
        if (!first || !second) return
        const whole = grown(first, second)
        if (whole) expect(undone(c, whole)).toBe(a)
      }),
      {numRuns: 500},
    )
  })
})

describe('a day inside the page', () => {
  const html = '<!doctype html><html><body><div id="page"></div></body></html>'
  const hostile = new Map([['receipts/x.md', '</script><script>alert(1)</script><!-- <script> \u2028 & ']])

  it('is carried whole, and no receipt can end its block', () => {
    const page = pageWith(html, hostile)
    const inner = page.split(`id="${CARRIER}">`)[1]!.split('</script>')[0]!
    expect(carriedFiles(inner)).toEqual(hostile)
    expect(page.match(/<\/script>/g)).toHaveLength(1)
    expect(page).not.toContain('alert(1)</script>')
  })

  it('replaces the day that was in it', () => {
    const page = pageWith(pageWith(html, hostile), new Map([['day.md', 'b']]))
    expect(page.split(CARRIER)).toHaveLength(2)
  })

  it('says so where the text is not the page', () => expect(() => pageWith('<p>', hostile)).toThrow(RangeError))

  it('takes no path that leads out of the folder', () => {
    for (const path of ['../x.md', '/x.md', 'C:/x.md', 'receipts/../../x.md', 'a\\b.md', ''])
      expect(isSafePath(path), path).toBe(false)
    expect(isSafePath('receipts/x y.md')).toBe(true)
  })
})

describe('a day as a zip', () => {
  it('comes back byte for byte', async () => {
    const folder = new Map([
      ['day.md', DAY],
      ['oven.md', OVEN],
      ['receipts/päivä.md', '# Ä\r\n\r\n½ lb flour'],
      ['firings/2027-06-19.md', '---\ndate: 2027-06-19\n---\n'],
    ])
    expect(await unzipFolder(await zipFolder(folder, 'feast'))).toEqual(folder)
  })

  it('leaves out what is not of a bake day, and all that leads elsewhere', () => {
    const found = homed(
      new Map([
        ['x/day.md', 'a'],
        ['x/receipts/a.md', 'b'],
        ['x/notes.md', 'c'],
        ['x/receipts/../../../etc.md', 'd'],
      ]),
    )
    expect([...found.keys()]).toEqual(['day.md', 'receipts/a.md'])
  })

  it('refuses what is no zip', async () => {
    await expect(unzipFolder(new Uint8Array([1, 2, 3]))).rejects.toBeDefined()
  })
})

describe('texts too long', () => {
  it('are known by their length and their longest line', () => {
    expect(within('a\n'.repeat(1000), TYPED)).toBe(true)
    expect(within('a'.repeat(TYPED.line + 1), TYPED)).toBe(false)
    expect(within(`${'b\n'.repeat(50)}${'a'.repeat(TYPED.line)}\n`, TYPED)).toBe(true)
    expect(within('a'.repeat(5_000_000), READ)).toBe(false)
  })

  it('are told of and not read', () => {
    const read = readReceiptFile('receipts/x.md', 'a'.repeat(5_000_000))
    expect(read.receipts).toEqual([])
    expect(read.messages[0]?.rule).toBe('file-large')
  })
})

describe('the line of a receipt whose title has brackets', () => {
  it('is changed, taken out and followed like any other', () => {
    const line = {file: 'receipts/bread.md', title: 'Bread [the best]', amount: '', wanted: ''}
    const day = withDayLineAdded('# Day\n', line, false)
    const [found] = listed(day)
    expect(found).toMatchObject({title: 'Bread [the best]', amount: ''})
    const more = withDayLine(day, found!.line, {...line, amount: '3 loaves'})
    expect(listed(more)).toMatchObject([{title: 'Bread [the best]', amount: '3 loaves'}])
    expect(listed(withDayLine(more, found!.line, null))).toEqual([])
    expect(listed(withDayLineAdded(more, {...line, file: 'receipts/b.md'}, false)).map(({file}) => file)).toEqual([
      'receipts/bread.md',
      'receipts/b.md',
    ])
  })
})

describe('the bytes of a file', () => {
  it('are UTF-8, UTF-16 by its mark, or else Windows-1252 (WHATWG Encoding Standard)', () => {
    expect(decoded(new TextEncoder().encode('Brötchen bei 220 °C'))).toMatchObject({text: 'Brötchen bei 220 °C', guessed: false})
    // 0xF6, 0xB0 and 0xBD of the index windows-1252.
    expect(decoded(Uint8Array.of(0xf6, 0x20, 0xb0, 0x20, 0xbd))).toMatchObject({text: 'ö ° ½', guessed: true})
    expect(decoded(Uint8Array.of(0xff, 0xfe, 0xf6, 0x00))).toMatchObject({text: 'ö', guessed: false})
    expect(decoded(Uint8Array.of(0xfe, 0xff, 0x00, 0xf6))).toMatchObject({text: 'ö', guessed: false})
  })

  it('that are no text are known by that', () => {
    expect(decoded(Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a)).text).toMatch(/\uFFFD/)
  })
})
