import Fraction from 'fraction.js'

/** Exact amounts, as fractions written `n/d` or `n`. */

/** A fraction from its text (`5/2`, `3`, `1 1/2`); null where it is none. */
export function readExact(text: string): Fraction | null {
  if (!/^\s*-?\d+(?:\.\d+)?(?:\s+\d+\/[1-9]\d*|\/[1-9]\d*)?\s*$/.test(text)) return null
  return new Fraction(text.trim())
}

/** `n/d`, or `n` where it is whole: the form of the translate contract. */
export const writeExact = (value: Fraction): string => value.toFraction(false)

/** An exact amount times an exact or decimal factor. */
export const timesExact = (exact: string, factor: string | number): string | null => {
  const value = readExact(exact)
  return value === null ? null : writeExact(value.mul(factor))
}

const GLYPHS: Readonly<Record<string, string>> = {
  '1/2': '½',
  '1/3': '⅓',
  '2/3': '⅔',
  '1/4': '¼',
  '3/4': '¾',
  '1/8': '⅛',
  '3/8': '⅜',
  '5/8': '⅝',
  '7/8': '⅞',
  '1/5': '⅕',
  '1/6': '⅙',
}

/** As a cook writes it: `5/2` → "2 1/2", or with `glyphs` "2½". Text that is no fraction comes back as it is. */
export function mixedNumber(exact: string, options: {readonly glyphs?: boolean} = {}): string {
  const value = readExact(exact)
  if (value === null) return exact
  const mixed = value.toFraction(true)
  if (options.glyphs !== true) return mixed
  const [whole, part] = mixed.includes(' ')
    ? (mixed.split(' ') as [string, string])
    : mixed.includes('/')
      ? ['', mixed]
      : [mixed, '']
  const glyph = GLYPHS[part]
  if (part === '') return whole
  return glyph === undefined ? mixed : `${whole}${glyph}`
}
