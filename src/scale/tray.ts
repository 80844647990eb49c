import {asked as words} from '../lexicon/asked-words.js'
import {fold, lookUpMeasure} from '../lexicon/index.js'
import {vessels} from '../lexicon/vessels.js'
import {fold as plainFold} from '../receipt/section.js'
import type {Receipt} from '../receipt/types.js'
import type {VesselSize} from '../receipt/vessel.js'
import type {KindFigures} from './kind-figures.js'
import type {Shape} from './own-vessel.js'
import {pieceMass} from './pieces.js'
import {isSheet} from './vessel.js'

/** Sheets with a rim, in which a batter is poured as in a tin. */

/** Height of a sheet's rim where no size says it, m. Common practice, no source: the half sheet of the trade is 18 × 13 × 1 in. */
const rim = 0.0254
/** What a sheet is taken to need over it where its text gives no third size, m. */
const untold = 0.05

/** Rows of sheets that are trays, and of no small tins. */
const TRAYS: ReadonlySet<string> = new Set(['baking-sheet', 'backblech', 'half-sheet'])
/** The kind that is always cut from its tin, whatever its receipt counts. */
const CUT = 'tray cakes'
/** A paste, which keeps the shape it is given. */
const PASTE = 'shortbread'

const measures = (one: {readonly length?: number | undefined; readonly width?: number | undefined}): string =>
  `${Math.round(200 * (one.length ?? 0))} ${Math.round(200 * (one.width ?? 0))}`
const ANY_TRAY: ReadonlySet<string> = new Set(vessels.filter(({id}) => TRAYS.has(id)).map(measures))
/** Sizes that only small tins and boards are taken to have: a receipt that says no size has named those. */
const SMALL: ReadonlySet<string> = new Set(
  vessels
    .filter(({shape, length}) => shape === 'sheet' && length !== undefined)
    .map(measures)
    .filter((size) => !ANY_TRAY.has(size)),
)

/** Whether what a receipt makes is a batter that takes its shape from what it is poured into, and no pieces that lie beside each other. */
function isPoured({serves}: Pick<Receipt, 'serves'>, kind: KindFigures): boolean {
  const isBatter = kind.dough === undefined && kind.keeps === true && kind.filled !== true && kind.id !== PASTE
  if (!isBatter || !/^(?:round|square|oblong|loaf) /.test(kind.vessel)) return false
  if (kind.id === CUT || serves === null || serves.high <= 1 || serves.vessels !== undefined) return true
  const noun = serves.of.split(/\s+/).pop() ?? ''
  const measured = words.measure.has(fold(noun)) || lookUpMeasure(fold(noun))?.dimension === 'mass'
  return (
    measured ||
    words.persons.has(plainFold(noun)) ||
    words.vessel.has(fold(noun)) ||
    words.cut.has(fold(noun)) ||
    noun === 'pieces'
  )
}

/**
 * A sheet that a batter is poured into, as the flat oblong tin that it is, so deep as its rim is high; any other vessel, and a sheet of what lies
 * on it in pieces, as it stands. One of which nobody says the size is a tray only where its row is one and its kind is not dropped on sheets too.
 */
export function asTray(shape: Shape, receipt: Pick<Receipt, 'serves'>, kind: KindFigures): Shape {
  const {size, anySize} = shape
  if (!isSheet(size) || size.length === undefined || shape.whole !== undefined || !isPoured(receipt, kind)) return shape
  const known = anySize === true ? ANY_TRAY.has(measures(size)) && kind.onSheet === undefined : !SMALL.has(measures(size))
  if (!known) return shape
  return {...shape, size: tray(size), tray: true, ...(size.height === untold ? {anyDepth: true as const} : {})}
}

const tray = ({length = 0, width = 0, height}: VesselSize): VesselSize => ({
  shape: 'oblong',
  length,
  width,
  height: height === untold ? rim : height,
})

/** Whether a dough covers its sheet in one piece (a tray cake, a focaccia), and does not lie on it in pieces. */
export const coversSheet = (kind: KindFigures, made: {readonly pieces: number | null; readonly vessels: number}): boolean =>
  kind.dough !== undefined &&
  pieceMass[kind.id] === undefined &&
  (/^sheet /.test(kind.vessel) || made.pieces === null || made.pieces <= made.vessels)
