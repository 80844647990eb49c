import type {Table} from 'mdast'
import {toString as textOf} from 'mdast-util-to-string'
import remarkFrontmatter from 'remark-frontmatter'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import {unified} from 'unified'
import * as z from 'zod'
import {type Parsed, parseLength, parseTemperature} from '../measure/quantity.js'
import {quantity, readFrontMatter} from '../receipt/front-matter.js'
import {lineIndex} from '../receipt/position.js'
import type {Message} from '../receipt/types.js'
import {floorSize} from './geometry.js'
import {findFuel, findMaterial, type Lookup} from './materials.js'
import {parseReading} from './signs.js'
import type {AshBed, FloorShape, Layer, OvenSpec, PastReading} from './types.js'

const no = (reason: string, suggest: string): {ok: false; reason: string; suggest: string} => ({ok: false, reason, suggest})

/** Sizes an oven may have, m: from a hand's breadth of mouth to the largest bakehouse. */
const LIMITS = {floor: [0.25, 6], height: [0.12, 3], mouth: [0.1, 2], layer: [0.001, 3], bed: [0.02, 3]} as const

function within(what: string, value: number, [low, high]: readonly [number, number]): Parsed<number> {
  const size = value >= 1 ? `${Number(value.toFixed(2))} m` : `${Number((value * 100).toFixed(1))} cm`
  if (value <= 0) return no(`${what} is nothing`, 'write its true size, such as “36 in” or “91 cm”')
  if (value < low) return no(`${what} of ${size} is too small for an oven`, `write its true size; the least is ${low * 100} cm`)
  if (value > high) return no(`${what} of ${size} is too large for an oven`, `write its true size; the most is ${high} m`)
  return {ok: true, value}
}

function size(what: string, limits: readonly [number, number]): (text: string) => Parsed<number> {
  return (text) => {
    const length = parseLength(text)
    return length.ok ? within(what, length.value, limits) : length
  }
}

/** "60 in x 48 in" → two lengths. */
function pair(text: string, what: string, limits: readonly [number, number], order: string): Parsed<[number, number]> {
  const parts = text.split(/×|\bx\b|\bby\b/i).map((part) => part.trim())
  if (parts.length !== 2) return no(`“${text}” is not two sizes`, `write ${order}`)
  let [first, second] = parts as [string, string]
  // "60 x 48 in": the unit stands for both.
  if (/^[\d\s/.½¼¾⅓⅔⅛⅜⅝⅞-]+$/.test(first)) first = `${first} ${/(?<![a-z"″'′])[a-z"″'′]+\.?$/i.exec(second)?.[0] ?? ''}`
  const a = size(what, limits)(first)
  if (!a.ok) return a
  const b = size(what, limits)(second)
  if (!b.ok) return b
  return {ok: true, value: [a.value, b.value]}
}

function parseFloor(text: string): Parsed<FloorShape> {
  const suggest = 'write “round 42 in”, “oval 60 in x 48 in” or “rectangle 36 in x 28 in” (depth x width)'
  const plain = text.trim()
  const m = /^(round|circle|circular|oval|ellipse|elliptical|rectangle|rectangular|square)\b[\s,:]*/i.exec(plain)
  if (!m) return no(`“${text}” is not the shape of a floor`, suggest)
  const word = m[1]!.toLowerCase()
  const rest = plain.slice(m[0].length)
  if (!rest) return no(`the ${word} floor has no size`, suggest)
  if (/^(round|circ)/.test(word)) {
    const d = size('a floor', LIMITS.floor)(rest)
    return d.ok ? {ok: true, value: {shape: 'round', diameter: d.value}} : d
  }
  if (word === 'square' && !/×|\bx\b|\bby\b/i.test(rest)) {
    const d = size('a floor', LIMITS.floor)(rest)
    return d.ok ? {ok: true, value: {shape: 'rectangle', depth: d.value, width: d.value}} : d
  }
  const sizes = pair(rest, 'a floor', LIMITS.floor, suggest.replace(/^write /, ''))
  if (!sizes.ok) return sizes
  const [depth, width] = sizes.value
  return {ok: true, value: {shape: /^(oval|ellip)/.test(word) ? 'oval' : 'rectangle', depth, width}}
}

/** Name and thickness: "fire brick 2 1/2 in". */
function parseLayer(text: string): Parsed<Layer> {
  const at = text.search(/[\d½¼¾⅓⅔⅛⅜⅝⅞]/)
  const before = text.slice(0, Math.max(0, at)).replace(/(?<![\s,:])[\s,:]+$/, '')
  const name = before.trimStart().replace(/^an? /, '')
  if (name === '') {
    return /\d/.test(text)
      ? no(`“${text}” names no material`, 'write the material first, such as “fire brick 2 1/2 in”')
      : no(
          `“${text}” has no thickness`,
          `write it after the material, such as “${text.trim() || 'fire brick'} ${usualThickness(text)}”`,
        )
  }
  const material = named(name, 'material', findMaterial)
  if (!material.ok) return material
  const thickness = size(`a layer of ${name}`, LIMITS.layer)(text.slice(at))
  return thickness.ok ? {ok: true, value: {material: material.value, thickness: thickness.value}} : thickness
}

/** How thick a material is shown to be in an oven: a door of iron is no wall. */
function usualThickness(text: string): string {
  const found = findMaterial(text.trim())
  return (found.ok ? found.row.usual : undefined) ?? '4 1/2 in'
}

function named<T extends {readonly id: string}>(name: string, what: string, look: (name: string) => Lookup<T>): Parsed<string> {
  const found = look(name)
  return found.ok
    ? {ok: true, value: found.row.id}
    : no(`“${name.trim()}” is not a ${what} we know`, `write ${found.nearest.map((n) => `“${n}”`).join(' or ')}`)
}

function parseDoor(text: string): Parsed<Layer | null> {
  return /^(none|no|no door|open)$/i.test(text.trim()) ? {ok: true, value: null} : parseLayer(text)
}

function parseFuel(text: string): Parsed<OvenSpec['fuel']> {
  const suggest = 'write the wood and its water, such as “oak, 18 % moisture”'
  const plain = text.trim()
  const at = plain.search(/\d/)
  const name = (at < 0 ? plain : plain.slice(0, at)).trimEnd().replace(/,$/, '').trimEnd()
  const share = at < 0 ? null : /^(\d+(?:[.,]\d+)?)\s*(?:%|per ?cent)\s*(?:moisture|water|damp)?$/i.exec(plain.slice(at))
  if (!/^[a-z][a-z\s-]*$/i.test(name) || (at >= 0 && !share)) return no(`“${text}” is not a fuel`, suggest)
  const [state = ''] = /^(?:seasoned|dry|kiln[- ]dried|air[- ]dry|green|fresh) (?=[a-z])/.exec(name.toLowerCase()) ?? []
  const wood = named(name.slice(state.length), 'fuel', findFuel)
  if (!wood.ok) return wood
  const usual = /green|fresh/.test(state) ? 45 : /kiln/.test(state) ? 10 : 18
  const moisture = share ? Number(share[1]!.replace(',', '.')) : usual
  if (moisture > 60)
    return no(`wood of ${moisture} % water does not burn`, 'write its water as a share of the wet weight: 15–20 % when seasoned')
  return {ok: true, value: {wood: wood.value, moisture: moisture / 100}}
}

function parseStart(text: string): Parsed<{celsius: number | null; damp: boolean}> {
  const t = text.trim().toLowerCase()
  if (t === 'cold' || t === 'cold and dry' || t === 'dry') return {ok: true, value: {celsius: null, damp: false}}
  if (t === 'damp' || t === 'cold and damp' || t === 'wet') return {ok: true, value: {celsius: null, damp: true}}
  const warm = parseTemperature(t.replace(/^(?:warm|still|hot)[\s,:]*(?:at )?/, ''))
  if (!warm.ok)
    return no(
      `“${text}” is not how an oven can be at the start`,
      'write cold, damp, or the heat still in the brick, such as “180 °F”',
    )
  if (warm.value < -40 || warm.value > 500)
    return no(`an oven cannot start at ${Math.round(warm.value)} °C`, 'write a heat between −40 and 500 °C')
  return {ok: true, value: {celsius: warm.value, damp: false}}
}

function parseAmbient(text: string): Parsed<number> {
  const t = parseTemperature(text)
  if (!t.ok) return t
  if (t.value > 55) {
    return /c/i.test(text) && (t.value - 32) / 1.8 < 45
      ? no(
          `${Math.round(t.value)} °C is hotter than any bakehouse`,
          `did you mean ${Math.round(t.value)} °F? Then write “${Math.round(t.value)} °F”`,
        )
      : no(`${Math.round(t.value)} °C is hotter than any bakehouse`, 'write the heat of the air around the oven, such as “60 °F”')
  }
  if (t.value < -50)
    return no(
      `${Math.round(t.value)} °C is colder than any bakehouse`,
      'write the heat of the air around the oven, such as “60 °F”',
    )
  return {ok: true, value: t.value}
}

/** "left 8 in": the side of the floor on which ash is left, and how far in from the wall. */
function parseAshBed(text: string): Parsed<AshBed | undefined> {
  const suggest = 'write the side as seen from the mouth and how wide the bed is, such as “left 8 in” or “back 20 cm”; or none'
  const plain = text.trim()
  if (/^(?:none|no)$/i.test(plain)) return {ok: true, value: undefined}
  const m = /^(left|right|back)\b[\s,:]*/i.exec(plain)
  if (!m) return no(`“${text}” does not say on which side the ash bed is`, suggest)
  const side = m[1]!.toLowerCase() as AshBed['side']
  const rest = plain.slice(m[0].length)
  if (!rest) return no(`the ash bed on the ${side} has no width`, suggest)
  const width = size('an ash bed', LIMITS.bed)(rest)
  return width.ok ? {ok: true, value: {side, width: width.value}} : width
}

const layers = z
  .array(quantity(parseLayer), {error: 'write a list of layers from the inside out, each on a line that begins with “- ”'})
  .min(1, {error: 'at least one layer is needed'})
  .max(12, {error: 'twelve layers at most'})

const ovenSchema = z.strictObject({
  floor: quantity(parseFloor),
  'vault height': quantity(size('a vault', LIMITS.height)),
  mouth: quantity((text): Parsed<{width: number; height: number}> => {
    const sizes = pair(text, 'a mouth', LIMITS.mouth, '“18 in x 11 in” (width x height)')
    return sizes.ok ? {ok: true, value: {width: sizes.value[0], height: sizes.value[1]}} : sizes
  }),
  'ash bed': quantity(parseAshBed).optional(),
  door: quantity(parseDoor).optional(),
  hearth: layers,
  vault: layers,
  place: z.enum(['indoors', 'outdoors'], {error: 'write indoors or outdoors'}).default('indoors'),
  ambient: quantity(parseAmbient).optional(),
  fuel: quantity(parseFuel).optional(),
  start: quantity(parseStart).optional(),
})

/** Keys that such a file does not have, though what they would say has its place: what to write instead. Common practice, no source. */
const INSULATION =
  'insulation is the outermost layer of “hearth” and of “vault”: write it as the last line of their lists, such as “- ceramic blanket 2 in”'
const MEANT: ReadonlyMap<string, string> = new Map([
  ['insulation', INSULATION],
  ['insulated', INSULATION],
])

const markdown = unified().use(remarkParse).use(remarkFrontmatter).use(remarkGfm)

/** Column headings of the table of past readings. */
const COLUMNS: Readonly<Record<string, RegExp>> = {
  date: /^date|^day/i,
  hours: /hours|^h\b|after/i,
  reading: /^reading|^what|^sign|^kind/i,
  value: /^value|^temp|^count/i,
  note: /^note|^remark/i,
}

/**
 * Read `oven.md`: front matter with the oven's drawing, the heading as its name, and the table of past readings.
 *
 * @param source the file as read
 * @param file its name, for messages
 * @returns the oven, or null with messages (rules of `readFrontMatter`, and `oven-front-matter`, `oven-mouth`, `oven-ash-bed`, `oven-table`,
 * `oven-reading`, `oven-drawing`); readings that cannot be read are reported and left out
 */
export function readOven(
  source: string,
  file: string,
): {oven: OvenSpec | null; readings: readonly PastReading[]; messages: readonly Message[]} {
  const place = lineIndex(source)
  const front = readFrontMatter(source, file, ovenSchema, MEANT)
  const messages: Message[] = [...front.messages]
  const say = (offset: number, rule: string, reason: string, suggest: string, severity: Message['severity'] = 'error'): void => {
    messages.push({file, ...place(offset), severity, rule, reason, suggest})
  }
  if (!front.present) {
    say(
      0,
      'oven-front-matter',
      source.trim() ? 'an oven begins with front matter, and this file has none' : 'this file is empty',
      'begin with ---, then floor:, vault height:, mouth:, hearth: and vault:, then ---',
    )
  }
  const tree = markdown.parse(source)
  let name = ''
  const readings: PastReading[] = []
  for (const node of tree.children) {
    if (node.type === 'heading' && node.depth === 1 && !name) name = textOf(node).trim()
    else if (node.type === 'table') readTable(node)
  }

  function readTable(table: Table): void {
    const [head, ...rows] = table.children
    const titles = head?.children.map((c) => textOf(c).trim()) ?? []
    const column = (key: string): number => titles.findIndex((t) => COLUMNS[key]!.test(t))
    const where = {
      date: column('date'),
      hours: column('hours'),
      reading: column('reading'),
      value: column('value'),
      note: column('note'),
    }
    const titleAt = (i: number): number => (head?.children[i]?.children[0] ?? head ?? table).position?.start.offset ?? 0
    if (where.hours < 0 || where.value < 0) {
      // A table of something else is the baker's own; one with some of the columns was meant to be read.
      if (Object.values(where).some((i) => i >= 0))
        say(
          titleAt(0),
          'oven-table',
          `this table has no column “${where.hours < 0 ? 'hours after raking' : 'value'}”, so none of it is read`,
          'head its columns date, hours after raking, reading, value, note',
          'warning',
        )
      return
    }
    const read = new Set(Object.values(where))
    titles.forEach((text, i) => {
      if (!read.has(i) && text !== '')
        say(
          titleAt(i),
          'oven-table',
          `the column “${text}” is not read`,
          'head it date, hours after raking, reading, value or note; what is no reading goes under note',
          'warning',
        )
    })
    for (const row of rows) {
      const cell = (i: number): string => (i < 0 ? '' : textOf(row.children[i] ?? {type: 'text', value: ''}).trim())
      const offset = (i: number): number => (row.children[i]?.children[0] ?? row.children[i] ?? row).position?.start.offset ?? 0
      const hoursText = cell(where.hours)
      const m = /^(\d+(?:\.\d+)?)\s*(h|hours?|hrs?|min|minutes?)?$/i.exec(hoursText)
      if (!m) {
        if (hoursText || cell(where.value))
          say(
            offset(where.hours),
            'oven-reading',
            `“${hoursText}” is not a number of hours`,
            'write hours after raking out, such as 4.5',
            'warning',
          )
        continue
      }
      const hours = /^m/i.test(m[2] ?? '') ? Number(m[1]) / 60 : Number(m[1])
      if (hours > 400) {
        say(
          offset(where.hours),
          'oven-reading',
          `${hours} hours after raking the oven is long cold`,
          'write hours after raking out, such as 4.5',
          'warning',
        )
        continue
      }
      const reading = parseReading(`${cell(where.reading) || 'vault'} ${cell(where.value)}`)
      if (!reading.ok) {
        say(offset(where.value), 'oven-reading', reading.reason, reading.suggest, 'warning')
        continue
      }
      if (reading.doubt) say(offset(where.value), 'oven-reading', reading.doubt.reason, reading.doubt.suggest, 'warning')
      const note = cell(where.note)
      readings.push({
        date: cell(where.date),
        hours,
        kind: reading.kind,
        value: reading.value,
        ...(note ? {note} : {}),
      })
    }
  }

  const v = front.value
  if (!v) return {oven: null, readings, messages}
  const vaultHeight = v['vault height']
  const {width, depth} = floorSize(v.floor)
  if (v.mouth.width >= width) {
    say(
      front.at('mouth'),
      'oven-mouth',
      `the mouth is as wide as the floor or wider (${cm(v.mouth.width)} by ${cm(width)})`,
      'write width x height of the opening one bakes through',
    )
  }
  if (v.mouth.height >= vaultHeight) {
    say(
      front.at('mouth'),
      'oven-mouth',
      `the mouth is as high as the vault or higher (${cm(v.mouth.height)} by ${cm(vaultHeight)})`,
      'write width x height; smoke leaves by the mouth because the vault is higher',
    )
  } else if (v.mouth.height > 0.85 * vaultHeight || v.mouth.height < 0.45 * vaultHeight) {
    say(
      front.at('mouth'),
      'oven-drawing',
      `a mouth ${Math.round((100 * v.mouth.height) / vaultHeight)} % as high as the vault is unusual`,
      'about 63 % is the common practice; check both figures',
      'info',
    )
  }
  if (vaultHeight > 1.3 * width)
    say(
      front.at('vault height'),
      'oven-drawing',
      `a vault of ${cm(vaultHeight)} over a floor ${cm(width)} wide is unusually high`,
      'check both figures',
      'warning',
    )
  const bed = v['ash bed']
  const along = bed?.side === 'back' ? depth : width
  if (bed !== undefined && bed.width > along / 2)
    say(
      front.at('ash bed'),
      'oven-ash-bed',
      `an ash bed of ${cm(bed.width)} takes more than half of the floor’s ${cm(along)}`,
      'write how far in from the wall the ash lies, such as “left 8 in”',
    )
  const total = (l: readonly Layer[]): number => l.reduce((s, x) => s + x.thickness, 0)
  for (const wall of ['hearth', 'vault'] as const) {
    if (total(v[wall]) < 0.03)
      say(
        front.at(wall),
        'oven-drawing',
        `a ${wall} ${cm(total(v[wall]))} thick holds hardly any heat`,
        'check the thickness of each layer',
        'warning',
      )
  }
  if (messages.some((m) => m.severity === 'error')) return {oven: null, readings, messages}
  const ambient = v.ambient ?? 18
  const start = v.start ?? {celsius: null, damp: false}
  const oven: OvenSpec = {
    name: name || 'The oven',
    floor: v.floor,
    vaultHeight,
    mouth: v.mouth,
    ...(bed === undefined ? {} : {ashBed: bed}),
    door: v.door === undefined ? {material: 'oak', thickness: 0.05} : v.door,
    hearth: v.hearth,
    vault: v.vault,
    place: v.place,
    ambient,
    fuel: v.fuel ?? {wood: 'hardwood', moisture: 0.18},
    start: {celsius: start.celsius ?? ambient, damp: start.damp},
  }
  return {oven, readings, messages}
}

function cm(metres: number): string {
  return `${Number((metres * 100).toFixed(1))} cm`
}
