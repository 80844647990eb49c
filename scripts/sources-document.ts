import {askedWords} from '../src/lexicon/asked-words.js'
import {coreHeats} from '../src/lexicon/core-heats.js'
import {deedWords} from '../src/lexicon/deed-words.js'
import {doneness} from '../src/lexicon/doneness.js'
import {doughWeightWords} from '../src/lexicon/dough-weights.js'
import {coldPlaces, kneading, shapings} from '../src/lexicon/dough-work.js'
import {eveningWords} from '../src/lexicon/evening-words.js'
import {fleshNames} from '../src/lexicon/flesh-names.js'
import {fleshWords} from '../src/lexicon/flesh-words.js'
import {fuels} from '../src/lexicon/fuels.js'
import {grammarTables} from '../src/lexicon/grammar-words.js'
import {headingWords} from '../src/lexicon/heading-words.js'
import {cautions, hedgeAmounts, items, kinds, measures, sources} from '../src/lexicon/index.js'
import {kindsByItems} from '../src/lexicon/kinds-by-items.js'
import {logHeads} from '../src/lexicon/log-heads.js'
import {makings} from '../src/lexicon/making-work.js'
import {materials} from '../src/lexicon/materials.js'
import {noteWords} from '../src/lexicon/note-words.js'
import {nutritionWords} from '../src/lexicon/nutrition-words.js'
import {outcomeWords} from '../src/lexicon/outcome-words.js'
import {ovenFoods} from '../src/lexicon/oven-foods.js'
import {hedges, ovenTests, ovenWords} from '../src/lexicon/oven-words.js'
import {readingWords} from '../src/lexicon/reading-words.js'
import {risingWords} from '../src/lexicon/rising-words.js'
import type {Range, Source} from '../src/lexicon/schema.js'
import {signs} from '../src/lexicon/signs.js'
import {stageHeads} from '../src/lexicon/stage-heads.js'
import {stayWords} from '../src/lexicon/stay-words.js'
import {timeSpans, timeUnits, timeWords} from '../src/lexicon/time-words.js'
import {vesselWords} from '../src/lexicon/vessel-words.js'
import {vessels} from '../src/lexicon/vessels.js'
import {wholePieces} from '../src/lexicon/whole-pieces.js'
import {yieldWords} from '../src/lexicon/yield-words.js'

const KINDS: ReadonlyArray<readonly [kind: Source['kind'], title: string]> = [
  ['standard', 'Standards and public authorities'],
  ['dataset', 'Datasets'],
  ['handbook', 'Handbooks and tables'],
  ['book', 'Books of the period'],
  ['study', 'Studies'],
  ['account', 'Accounts'],
  ['common practice', 'Common practice'],
  ['memory', 'From memory'],
]

/** What each source is cited for: table → ids of rows. */
export function citations(): Map<string, Map<string, Set<string>>> {
  const cited = new Map<string, Map<string, Set<string>>>()
  const cite = (source: string, table: string, row: string): void => {
    const tables = cited.get(source) ?? new Map<string, Set<string>>()
    cited.set(source, tables)
    const rows = tables.get(table) ?? new Set<string>()
    tables.set(table, rows)
    rows.add(row)
  }
  for (const row of measures) for (const size of row.sizes) cite(size.source, 'measures', row.id)
  for (const row of items) {
    if (row.densitySource !== undefined) cite(row.densitySource, 'densities', row.id)
    if (row.oldDensity !== undefined) cite(row.oldDensity.source, 'densities', row.id)
    for (const piece of row.pieces) cite(piece.source, 'weights of pieces', row.id)
    if (row.replacedBy !== undefined) cite(row.replacedBy.source, 'replacements', row.id)
    for (const source of row.sources) {
      if (
        row.densitySource !== source &&
        row.replacedBy?.source !== source &&
        !row.pieces.some((piece) => piece.source === source)
      )
        cite(source, 'items', row.id)
    }
    if (row.allergens.length > 0) {
      cite('eu-1169', 'allergens', row.id)
      cite('us-falcpa', 'allergens', row.id)
    }
  }
  for (const row of cautions) cite(row.source, 'cautions', row.id)
  for (const row of kinds) cite(row.source, 'kinds of dish', row.id)
  for (const row of hedgeAmounts) cite(row.source, 'hedges of amounts', row.phrases[0] ?? '')
  for (const row of hedges) cite(row.source, 'hedges of heat', row.id)
  for (const row of [...ovenWords, ...ovenTests]) cite(row.source, 'oven words', row.id)
  for (const row of risingWords) cite(row.source, 'words for rising', row.id)
  for (const row of stageHeads) cite(row.source, 'heads of a dough’s stages', row.id)
  for (const row of doughWeightWords) cite(row.source, 'words of baker’s percentages', row.id)
  for (const row of headingWords) cite(row.source, 'words of headings', row.id)
  for (const row of nutritionWords) cite(row.source, 'words for what is in a serving', row.id)
  for (const row of eveningWords) cite(row.source, 'words for the evening before', row.id)
  for (const row of yieldWords) cite(row.source, 'words for how much', row.id)
  for (const row of deedWords) cite(row.source, 'words for what was done', row.id)
  for (const row of noteWords) cite(row.source, 'words of notes', row.id)
  for (const row of logHeads) cite(row.source, 'heads of a log’s columns', row.id)
  for (const row of readingWords) cite(row.source, 'words for readings', row.id)
  for (const row of outcomeWords) cite(row.source, 'words for how a dish came out', row.id)
  for (const row of askedWords) cite(row.source, 'words for what a day asks', row.id)
  for (const row of [...timeUnits, ...timeSpans, ...timeWords]) cite(row.source, 'words for times', row.id)
  for (const row of vesselWords) cite(row.source, 'words for a vessel’s size', row.id)
  for (const row of grammarTables) cite(row.source, 'small words', row.id)
  for (const row of ovenFoods) cite(row.source, 'foods from the oven', row.id)
  for (const row of coreHeats) cite(row.source, 'safe temperatures of the middle', row.id)
  for (const row of wholePieces) cite(row.source, 'what goes in whole', row.id)
  for (const row of fleshNames) cite(row.source, 'names of meat and fish', row.id)
  for (const row of fleshWords) cite(row.source, 'words about meat', row.id)
  for (const row of kindsByItems) cite(row.source, 'kinds by their ingredients', row.id)
  for (const row of [kneading, ...shapings, ...coldPlaces]) cite(row.source, 'work at doughs', row.id)
  for (const row of makings) cite(row.source, 'making up', row.id)
  for (const row of stayWords) cite(row.source, 'words for staying in', row.id)
  for (const row of doneness) cite(row.source, 'signs of doneness', row.id)
  for (const row of vessels) cite(row.source, 'vessels', row.id)
  for (const row of materials) cite(row.source, 'materials', row.id)
  for (const row of fuels) cite(row.source, 'fuels', row.id)
  for (const row of signs) cite(row.source, 'signs of the oven', row.id)
  return cited
}

/** Rows shown by name up to here; more are counted. */
const SHOWN = 12
const figure = (value: number): string => String(Number(value.toPrecision(5)))
const rangeText = (range: Range): string =>
  range.low === range.high ? figure(range.likely) : `${figure(range.low)}–${figure(range.likely)}–${figure(range.high)}`
const years = (row: {readonly from?: number | undefined; readonly to?: number | undefined}): string =>
  row.from === undefined && row.to === undefined
    ? ''
    : row.from === undefined
      ? `to ${row.to}`
      : row.to === undefined
        ? `from ${row.from}`
        : `${row.from}–${row.to}`
const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ')
const row = (...cells: readonly string[]): string => `| ${cells.map(cell).join(' | ')} |`

function sourceEntry(source: Source, tables: ReadonlyMap<string, ReadonlySet<string>> | undefined): string[] {
  const lines = [
    `### ${source.id}`,
    '',
    `${source.title}${source.year === undefined || source.title.includes(String(source.year)) ? '' : ` (${source.year})`}.`,
  ]
  if (source.where !== undefined) lines.push(source.where.startsWith('https://') ? `<${source.where}>` : source.where)
  if (source.note !== undefined) lines.push('', source.note)
  const uses = [...(tables ?? [])].map(([table, rows]) => {
    const names = [...rows]
    return `- ${table} (${names.length}): ${names.slice(0, SHOWN).join(', ')}${names.length > SHOWN ? ', …' : ''}`
  })
  if (uses.length > 0) lines.push('', ...uses)
  lines.push('')
  return lines
}

/** The text of docs/sources.md. */
export function sourcesDocument(): string {
  const cited = citations()
  const lines = [
    '# Sources',
    '',
    'Made from the rows of `src/lexicon` by `npx tsx scripts/sources.ts`; do not edit it by hand.',
    '',
    'Every figure names a source by its id. `memory` and `common-practice` are honest stand-ins: no text was at hand. What each source is',
    'cited for stands below it.',
    '',
  ]
  for (const [kind, title] of KINDS) {
    const rows = sources.filter((source) => source.kind === kind)
    if (rows.length === 0) continue
    lines.push(`## ${title}`, '', ...rows.flatMap((source) => sourceEntry(source, cited.get(source.id))))
  }
  lines.push(
    '## Measures',
    '',
    'Low, likely and high where it is not exact; grams or millilitres. Place and years only where they decide.',
    '',
    row('measure', 'size', 'unit', 'where', 'years', 'source', 'note'),
    row('---', '---', '---', '---', '---', '---', '---'),
  )
  for (const measure of measures) {
    for (const size of measure.sizes) {
      const where = [size.place ?? '', size.of ?? ''].filter((text) => text !== '').join(', ')
      lines.push(
        row(
          measure.id,
          rangeText(size.size),
          measure.dimension === 'volume' ? 'mL' : 'g',
          where,
          years(size),
          size.source,
          size.note ?? '',
        ),
      )
    }
  }
  lines.push(
    '',
    '## Densities',
    '',
    'Grams a millilitre, as spooned, heaped or poured. The number is the food in USDA SR28 whose household weights it stands for.',
    '',
    row('item', 'g/mL', 'source', 'food', 'note'),
    row('---', '---', '---', '---', '---'),
  )
  for (const item of items) {
    if (item.density !== undefined)
      lines.push(row(item.id, rangeText(item.density), item.densitySource ?? '', item.ndb ?? '', item.note ?? ''))
  }
  lines.push(
    '',
    '## What replaces what is no longer sold',
    '',
    row('item', 'use', 'by weight', 'how', 'source'),
    row('---', '---', '---', '---', '---'),
  )
  for (const item of items) {
    if (item.replacedBy !== undefined)
      lines.push(
        row(item.id, item.replacedBy.item, rangeText(item.replacedBy.factor), item.replacedBy.how, item.replacedBy.source),
      )
  }
  lines.push('', '## Cautions', '', row('caution', 'harm', 'instead', 'source'), row('---', '---', '---', '---'))
  for (const caution of cautions) lines.push(row(caution.title, caution.harm, caution.instead, caution.source))
  return `${lines.join('\n')}\n`
}
