import {describe, expect, it} from 'vitest'
import {kinds} from '../src/lexicon/kinds.js'
import {translate} from '../src/receipt/translate.js'

const LIST = 'Take a pound of treacle, half a pound of butter, two pounds of flour and an ounce of ginger; mix them. '
const read = (method: string, title = 'Gingerbread', list = LIST) =>
  translate(`---\nyear: 1813\nplace: England\n---\n# ${title}\n\n${list}${method}\n`, {file: 'x.md'}).receipts[0]!
const vesselOf = (receipt: ReturnType<typeof read>) => receipt.inferred.find(({field}) => field === 'vessel')?.value ?? ''

/** Gingerbread that is rolled and cut is thin, bakes a quarter of an hour on a sheet and hardens. Common practice, no source. */
describe('gingerbread that is cut out', () => {
  it.each([
    ['Roll it out, cut it into cakes, and bake them a quarter of an hour in a moderate oven.', 'Gingerbread Cakes'],
    ['Roll it thin, cut into round cakes, and bake them.', 'Gingerbread'],
    ['Roll it out, and cut it into what shapes you please; bake on tins.', 'Ginger cakes'],
  ])('stands on a sheet and has the sign of a biscuit: %s', (method, title) => {
    const receipt = read(method, title)
    expect(receipt.kind).toBe('hard gingerbread')
    expect(vesselOf(receipt)).toMatch(/^sheet/)
  })

  it('is the soft cake from a tin where it is cut when it is baked, or not at all', () => {
    expect(read('Bake it in a tin an hour. When cold, cut it into cakes.').kind).toBe('gingerbread')
    expect(read('Put it in a tin and bake it an hour.', 'Gingerbread cake').kind).toBe('gingerbread')
  })

  it('is raised dough where yeast is in it', () => {
    const list = 'Take two pounds of flour, a pint of yeast, a pound of treacle and an ounce of ginger; mix and let it rise. '
    expect(read('Cut it into cakes, and bake them half an hour.', 'Gingerbread', list).kind).toBe('raised cake')
  })

  it('names a kind that exists', () => {
    for (const {cutOut} of kinds) if (cutOut !== undefined) expect(kinds.some(({id}) => id === cutOut)).toBe(true)
  })
})
