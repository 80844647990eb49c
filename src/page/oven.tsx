import type {JSX} from 'preact'
import {fuels} from '../lexicon/fuels.js'
import {materials} from '../lexicon/materials.js'
import {parseLength} from '../measure/quantity.js'
import {titleOf, withTitle} from './folder.js'
import {frontFault, type Stated, stated, withStated} from './front.js'
import {OvenDrawing, type Sizes} from './oven-drawing.js'
import {Choice, Do, Field, Figure, FormOver, Messages, Page} from './parts.js'
import {Fold, Soon} from './slices.js'
import {app, messagesOf, type State} from './state.js'
import {words} from './words.js'

const w = words.oven

/** An example to begin with, said to be one. Sizes from common practice, no source. */
const example = `---
floor: round 42 in
vault height: 16 in
mouth: 18 in x 10 in
door: oak 2 in
hearth:
  - fire brick 2 1/2 in
  - sand 2 in
  - common brick 8 in
vault:
  - common brick 4 1/2 in
  - clay 3 in
  - sand 6 in
place: indoors
ambient: 60 °F
fuel: oak, 18 % moisture
start: cold
---

# The oven
`

type Shape = 'round' | 'oval' | 'rectangle'

/** "oval 60 in x 48 in" in its parts, however far it is typed. */
function floorParts(text: string): {shape: Shape; first: string; second: string} {
  const m = /^\s*(round|circle|circular|oval|ellipse|elliptical|rectangle|rectangular|square)?\b[\s,:]*(.*)$/i.exec(text)
  const word = (m?.[1] ?? 'round').toLowerCase()
  const shape: Shape = /^(?:oval|ellip)/.test(word) ? 'oval' : /^(?:rect|square)/.test(word) ? 'rectangle' : 'round'
  const [first = '', second = ''] = pairParts(m?.[2] ?? '')
  return {shape, first, second: shape !== 'round' && !second ? first : second}
}

function pairParts(text: string): [string, string] {
  const [first = '', second = ''] = text.split(/\s*(?:×|\bx\b|\bby\b)\s*/i)
  return [first, second]
}

/** "fire brick 2 1/2 in" → material and thickness. */
function layerParts(text: string): [string, string] {
  const m = /^\s*([^\d½¼¾⅓⅔⅛⅜⅝⅞]*?)[\s,:]*([\d½¼¾⅓⅔⅛⅜⅝⅞].*)?$/.exec(text)
  return [m?.[1] ?? text, m?.[2] ?? '']
}

const metres = (text: string): number | null => {
  const read = parseLength(text)
  return read.ok && read.value > 0 && read.value < 20 ? read.value : null
}

const words1 = (value: Stated | undefined): string => (typeof value === 'string' ? value : '')
const list = (value: Stated | undefined): readonly string[] => (Array.isArray(value) ? (value as readonly string[]) : [])

const bedSides = ['left', 'right', 'back'] as const

/** "left 8 in" in its parts, as far as it is typed. */
function bedParts(text: string): {side: (typeof bedSides)[number] | 'none'; wide: string} {
  const [word = '', ...rest] = text.trim().split(/[\s,:]+/)
  const side = bedSides.find((one) => one === word.toLowerCase())
  return side === undefined ? {side: 'none', wide: ''} : {side, wide: rest.join(' ')}
}

function ashBedOf(text: string): Sizes['ashBed'] {
  const {side, wide} = bedParts(text)
  const width = metres(wide)
  return side === 'none' || width === null ? null : {side, width, text: wide}
}

/** The sizes as far as they are typed, for the drawing. */
function sizesOf(said: ReadonlyMap<string, Stated>): Sizes {
  const floor = floorParts(words1(said.get('floor')))
  const [mouthWidth, mouthHeight] = pairParts(words1(said.get('mouth')))
  const layers = (key: string): Sizes['hearth'] =>
    list(said.get(key)).flatMap((line) => {
      const [material, thick] = layerParts(line)
      const thickness = metres(thick)
      return thickness === null ? [] : [{material, thickness, text: thick}]
    })
  return {
    shape: floor.shape,
    depth: metres(floor.first),
    depthText: floor.first,
    width: floor.shape === 'round' ? metres(floor.first) : metres(floor.second),
    widthText: floor.shape === 'round' ? floor.first : floor.second,
    vault: metres(words1(said.get('vault height'))),
    vaultText: words1(said.get('vault height')),
    mouthWidth: metres(mouthWidth),
    mouthWidthText: mouthWidth,
    mouthHeight: metres(mouthHeight),
    mouthHeightText: mouthHeight,
    ashBed: ashBedOf(words1(said.get('ash bed'))),
    hearth: layers('hearth'),
    walls: layers('vault'),
  }
}

export function Oven({state}: {readonly state: State}): JSX.Element {
  const text = state.files.get('oven.md')
  if (text === undefined)
    return (
      <div>
        <h1>{w.title}</h1>
        <p class="lead">{w.lead}</p>
        <Do kind="main" onDo={() => app.edit(new Map([['oven.md', example]]), 'oven')}>
          {w.begin}
        </Do>
        <p class="hint">{w.beginHint}</p>
        <p class="care">{w.local}</p>
      </div>
    )
  const said = stated(text)
  const change = (next: string): void => app.edit(new Map([['oven.md', next]]), 'oven', true)
  const set = (values: Readonly<Record<string, Stated | null>>): void =>
    change(withStated(app.state.files.get('oven.md') ?? '', values))
  const floor = floorParts(words1(said.get('floor')))
  const [mouthWidth, mouthHeight] = pairParts(words1(said.get('mouth')))
  const faults = messagesOf(state, 'oven.md')
  const setFloor = (shape: Shape, first: string, second: string): void =>
    set({floor: shape === 'round' ? `round ${first}` : `${shape} ${first} x ${second || first}`})
  const [door, doorThick] = layerParts(words1(said.get('door')))
  const bed = bedParts(words1(said.get('ash bed')))
  const fault = frontFault(text)
  // “15,5 %” has a comma of its own.
  const [, wood = '', water] = /^([^\d,]*),?\s*(.*)$/.exec(words1(said.get('fuel')).trim()) ?? []
  return (
    <div class="oven">
      <h1>{w.title}</h1>
      <p class="lead">{w.lead}</p>
      <div class="bench even">
        <div class="form">
          <FormOver refused={fault && words.frontFault(fault.line, fault.why)}>
            <Field
              label={w.name}
              value={titleOf(text)}
              onValue={(value) => change(withTitle(app.state.files.get('oven.md') ?? '', value || w.title))}
            />
            <fieldset>
              <legend>{w.floor}</legend>
              <div class="fields">
                <Choice
                  label={w.floor}
                  bare
                  value={floor.shape}
                  options={(['round', 'oval', 'rectangle'] as const).map((shape) => [shape, w.shapes[shape]] as const)}
                  onValue={(shape) => setFloor(shape, floor.first, floor.second)}
                />
                <Field
                  label={floor.shape === 'round' ? w.across : w.depth}
                  value={floor.first}
                  example={w.example.floor}
                  onValue={(value) => setFloor(floor.shape, value, floor.second)}
                />
                {floor.shape === 'round' ? null : (
                  <Field
                    label={w.width}
                    value={floor.second}
                    example={w.example.width}
                    onValue={(value) => setFloor(floor.shape, floor.first, value)}
                  />
                )}
              </div>
            </fieldset>
            <div class="fields">
              <Field
                label={w.vaultHeight}
                value={words1(said.get('vault height'))}
                example={w.example.vaultHeight}
                onValue={(value) => set({'vault height': value})}
              />
              <Field
                label={w.mouthWidth}
                value={mouthWidth}
                example={w.example.mouthWidth}
                onValue={(value) => set({mouth: `${value} x ${mouthHeight}`})}
              />
              <Field
                label={w.mouthHeight}
                value={mouthHeight}
                example={w.example.mouthHeight}
                onValue={(value) => set({mouth: `${mouthWidth} x ${value}`})}
              />
            </div>
            <fieldset>
              <legend>{w.door}</legend>
              <div class="fields">
                <Choice
                  label={w.door}
                  bare
                  value={/^(?:none|no|open)/i.test(door) ? 'none' : nameOf(door)}
                  options={[['none', w.noDoor] as const, ...materialNames(nameOf(door))]}
                  onValue={(value) => set({door: value === 'none' ? 'none' : `${value} ${doorThick || '2 in'}`})}
                />
                {/^(?:none|no|open)/i.test(door) ? null : (
                  <Field
                    label={w.thickness}
                    value={doorThick}
                    example={w.example.door}
                    onValue={(value) => set({door: `${door} ${value}`})}
                  />
                )}
              </div>
            </fieldset>
            <fieldset>
              <legend>{w.ashBed}</legend>
              <div class="fields">
                <Choice
                  label={w.ashBed}
                  bare
                  value={bed.side}
                  options={(['none', ...bedSides] as const).map((one) => [one, w.bedSides[one]] as const)}
                  onValue={(side) => set({'ash bed': side === 'none' ? null : `${side} ${bed.wide || w.example.ashBed}`})}
                />
                {bed.side === 'none' ? null : (
                  <Field
                    label={w.bedWide}
                    value={bed.wide}
                    example={w.example.ashBed}
                    onValue={(value) => set({'ash bed': `${bed.side} ${value}`})}
                  />
                )}
              </div>
            </fieldset>
            <Soon>
              <Layers title={w.hearth} lines={list(said.get('hearth'))} onLines={(lines) => set({hearth: lines})} />
            </Soon>
            <Soon>
              <Layers title={w.vault} lines={list(said.get('vault'))} onLines={(lines) => set({vault: lines})} />
            </Soon>
            <div class="fields">
              <Choice
                label={w.place}
                value={words1(said.get('place')) === 'outdoors' ? 'outdoors' : 'indoors'}
                options={(['indoors', 'outdoors'] as const).map((one) => [one, w.places[one]] as const)}
                onValue={(value) => set({place: value})}
              />
              <Field
                label={w.ambient}
                value={words1(said.get('ambient'))}
                example={w.example.ambient}
                onValue={(value) => set({ambient: value || null})}
              />
              <Choice
                label={w.fuel}
                value={
                  fuels.find((one) => one.names?.includes(wood?.toLowerCase() ?? '') || one.id === wood?.toLowerCase())?.id ??
                  wood ??
                  ''
                }
                options={[
                  ...fuels.map((one) => [one.id, one.names?.[0] ?? one.id] as const),
                  ...(wood && !fuels.some((one) => one.id === wood || one.names?.includes(wood)) ? [[wood, wood] as const] : []),
                ]}
                onValue={(value) =>
                  set({fuel: `${fuels.find((one) => one.id === value)?.names?.[0] ?? value}, ${water || '18 % moisture'}`})
                }
              />
              <Field
                label={w.moisture}
                value={/\d+(?:[.,]\d+)?/.exec(water ?? '')?.[0] ?? ''}
                example={w.example.moisture}
                mode="decimal"
                onValue={(value) => set({fuel: `${wood || 'oak'}, ${value} % moisture`})}
              />
              <Field
                label={w.start}
                hint={w.startHint}
                value={words1(said.get('start'))}
                example={w.example.start}
                onValue={(value) => set({start: value || null})}
              />
            </div>
          </FormOver>
          <Fold title={w.asWritten}>
            {() => <Page label={w.asWritten} hint={w.asWrittenHint} value={text} rows={18} onValue={change} />}
          </Fold>
        </div>
        <div class="beside-form">
          <Soon>
            <OvenDrawing sizes={sizesOf(said)} />
          </Soon>
          <Messages messages={faults} title={words.receipts.messages} />
          <h2>{w.falls}</h2>
          <Do onDo={() => void app.askOven()} off={faults.some((m) => m.severity === 'error')}>
            {w.fallsDo}
          </Do>
          {state.oven ? (
            <>
              <p>{w.fallsLead}</p>
              <Figure drawing={state.oven.chart} />
              <ul lang={state.likes.showing.language}>
                {state.oven.lines.map((line) =>
                  line.startsWith('## ') ? (
                    <li key={line} class="head">
                      <strong>{line.slice(3)}</strong>
                    </li>
                  ) : (
                    <li key={line}>{line.replace(/^- /, '').replace(/\\(.)/g, '$1')}</li>
                  ),
                )}
              </ul>
            </>
          ) : null}
          <p class="care">{w.local}</p>
        </div>
      </div>
    </div>
  )
}

/** The material's id where the words name one, else the words. */
function nameOf(text: string): string {
  const plain = text.trim().toLowerCase()
  const row = materials.find((one) => one.id === plain || one.names.includes(plain))
  return row ? row.names[0]! : plain
}

function materialNames(also: string): ReadonlyArray<readonly [string, string]> {
  const names = materials.map((one) => one.names[0]!)
  return [...(also && !names.includes(also) ? [also] : []), ...names].map((name) => [name, name] as const)
}

function Layers({
  title,
  lines,
  onLines,
}: {
  readonly title: string
  readonly lines: readonly string[]
  readonly onLines: (lines: readonly string[]) => void
}): JSX.Element {
  const put = (i: number, line: string): void => onLines(lines.map((old, k) => (k === i ? line : old)))
  return (
    <fieldset class="layers">
      <legend>{title}</legend>
      <ol>
        {lines.map((line, i) => {
          const [material, thick] = layerParts(line)
          return (
            <li key={`${i}-${lines.length}`}>
              <Choice
                label={`${w.layer(i + 1)}: ${w.material}`}
                bare
                value={nameOf(material)}
                options={materialNames(nameOf(material))}
                onValue={(value) => put(i, `${value} ${thick}`)}
              />
              <Field
                label={`${w.layer(i + 1)}: ${w.thickness}`}
                bare
                value={thick}
                example={w.example.layer}
                onValue={(value) => put(i, `${material} ${value}`)}
              />
              <Do label={`${title}: ${w.takeLayer(i + 1)}`} onDo={() => onLines(lines.filter((_, k) => k !== i))}>
                −
              </Do>
            </li>
          )
        })}
      </ol>
      <Do label={`${title}: ${w.add}`} onDo={() => onLines([...lines, 'common brick 4 in'])}>
        {w.add}
      </Do>
    </fieldset>
  )
}
