import type {JSX} from 'preact'
import {useState} from 'preact/hooks'
import {frontFault, type Stated, stated, withStated} from './front.js'
import {Do, Field, FormOver} from './parts.js'
import type {IngredientView, ReceiptView} from './protocol.js'
import {Fold, Soon, useGrowing} from './slices.js'
import {app} from './state.js'
import {words} from './words.js'

const w = words.receipts

const facts = ['year', 'place', 'serves', 'vessel', 'oven', 'bake', 'rise', 'prove'] as const

/** What the text does not say of itself, to be stated at its head. */
export function Facts({path, text}: {readonly path: string; readonly text: string}): JSX.Element {
  const set = (key: string, value: Stated | null): void =>
    app.edit(new Map([[path, withStated(app.state.files.get(path) ?? text, {[key]: value})]]), 'facts', true)
  const said = stated(text.slice(0, 20_000))
  const fault = frontFault(text.slice(0, 20_000))
  return (
    <FormOver refused={fault && words.frontFault(fault.line, fault.why)}>
      <p class="hint">{w.factsHint}</p>
      <div class="fields">
        {facts.map((key) => {
          const value = said.get(key)
          return (
            <Field
              key={key}
              label={w.fact[key]}
              value={typeof value === 'string' ? value : ''}
              example={w.factExample[key]}
              onValue={(now) => set(key, now.trim() === '' ? null : now.trim())}
            />
          )
        })}
      </div>
    </FormOver>
  )
}

/** How one stretch of the text was read. */
interface Mark {
  readonly start: number
  readonly end: number
  readonly kind: 'thing' | 'heat' | 'time'
  readonly today: string
  readonly row: string | null
}

/** A receipt as it was read: old words beside new ones. */
export function AsRead({
  view,
  path,
  text,
}: {
  readonly view: ReceiptView
  readonly path: string
  readonly text: string
}): JSX.Element {
  const marks: Mark[] = [
    ...view.ingredients.map(
      (one, i): Mark => ({
        start: one.start,
        end: one.end,
        kind: 'thing',
        today: `${one.item}: ${one.today}`,
        row: `reading-${i}`,
      }),
    ),
    ...view.heat.map(
      (one): Mark => ({start: one.start, end: one.end, kind: 'heat', today: `${one.band}, ${one.degrees}`, row: null}),
    ),
    ...view.times.map(
      (one): Mark => ({start: one.start, end: one.end, kind: 'time', today: `${one.minutes}, ${one.of}`, row: null}),
    ),
  ].sort((a, b) => a.start - b.start || b.end - a.end)
  const parts = [...new Set(view.ingredients.map((one) => one.part))]
  const shown = useGrowing(view.ingredients.length, 4, 5)
  const from = w.from(view.year, view.place)
  const corrected = stated(text.slice(0, 40_000)).get('says')
  const says =
    corrected && typeof corrected === 'object' && !Array.isArray(corrected) ? (corrected as Readonly<Record<string, string>>) : {}
  return (
    <article>
      <h3 class="receipt-title">{view.title}</h3>
      {from || view.serves ? <p>{[from, view.serves ? w.serves(view.serves) : ''].filter(Boolean).join(' · ')}</p> : null}
      <p class="hint">{w.readHint}</p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and a keyboard must reach what scrolls (WCAG 2.1.1) */}
      <blockquote class="old" tabIndex={0}>
        {marked(text, view.start, Math.min(view.end, view.start + 12_000), marks)}
      </blockquote>
      {view.ingredients.length === 0 ? <p>{w.noIngredients}</p> : null}
      {parts.map((part) => (
        <table class="beside" key={part}>
          {part ? <caption>{w.of(part)}</caption> : null}
          <thead>
            <tr>
              <th scope="col">{w.old}</th>
              <th scope="col">{w.today}</th>
              <th scope="col">{w.sure}</th>
            </tr>
          </thead>
          <tbody>
            {view.ingredients
              .slice(0, shown)
              .map((one, i) =>
                one.part === part ? (
                  <Row key={`${one.start}-${i}`} id={`reading-${i}`} one={one} path={path} text={text} says={says} />
                ) : null,
              )}
          </tbody>
        </table>
      ))}
      <Soon>
        <Besides view={view} />
      </Soon>
    </article>
  )
}

/** What was read besides the ingredients. */
function Besides({view}: {readonly view: ReceiptView}): JSX.Element {
  return (
    <>
      {view.heat.length > 0 ? (
        <>
          <h4>{w.heat}</h4>
          <ul>
            {view.heat.map((one) => (
              <li key={one.start}>
                “{one.text}”: <strong>{one.band}</strong>, {one.degrees}
                {one.notes.length > 0 ? ` (${one.notes.join('; ')})` : ''}
                <Sources list={one.sources} />
              </li>
            ))}
          </ul>
        </>
      ) : null}
      {view.times.length > 0 ? (
        <>
          <h4>{w.times}</h4>
          <ul>
            {view.times.map((one) => (
              <li key={one.start}>
                “{one.text}”: {one.minutes}, {one.of}
                <Sources list={one.sources} />
              </li>
            ))}
          </ul>
        </>
      ) : null}
      {view.ours.length > 0 ? (
        <details>
          <summary>{w.ours}</summary>
          <ul>
            {view.ours.map((one) => (
              <li key={one.field}>
                <strong>{one.field}</strong>: {one.value} ({w.because(one.why)})
              </li>
            ))}
          </ul>
        </details>
      ) : null}
      {view.cautions.length > 0 ? (
        <section class="care">
          <h4>{w.cautions}</h4>
          <ul>
            {view.cautions.map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
        </section>
      ) : null}
      <p>{view.allergens}</p>
    </>
  )
}

/** The receipt's own text with what was read underlined; hovering or focusing tells the reading. */
function marked(text: string, start: number, end: number, marks: readonly Mark[]): JSX.Element[] {
  const out: JSX.Element[] = []
  let at = start
  for (const [i, mark] of marks.entries()) {
    if (mark.start < at || mark.end > end) continue
    if (mark.start > at) out.push(<span key={`t${at}`}>{text.slice(at, mark.start)}</span>)
    const inner = text.slice(mark.start, mark.end)
    out.push(
      <mark key={`m${i}`} class={mark.kind} title={mark.today}>
        {inner}
      </mark>,
    )
    at = mark.end
  }
  out.push(<span key={`t${at}`}>{text.slice(at, end)}</span>)
  return out
}

function Row(props: {
  readonly id: string
  readonly one: IngredientView
  readonly path: string
  readonly text: string
  readonly says: Readonly<Record<string, string>>
}): JSX.Element {
  const {one, path, text, says} = props
  const [open, setOpen] = useState(false)
  const byHand = Object.hasOwn(says, one.text)
  const put = (reading: string | null): void => {
    const next: Record<string, string> = {...says}
    if (reading === null) delete next[one.text]
    else next[one.text] = reading
    // The text may be longer by some keys than the one this was read from.
    const now = app.state.files.get(path) ?? text
    app.edit(new Map([[path, withStated(now, {says: Object.keys(next).length > 0 ? next : null})]]), 'right')
    setOpen(false)
  }
  return (
    <>
      <tr id={props.id}>
        <th scope="row">{one.text}</th>
        <td class="today">
          {one.today}
          <span class="item">{one.item.replace(/-/g, ' ')}</span>
        </td>
        <td>
          {[one.doubtful ? w.doubtful : '', one.known ? '' : w.unknown, byHand ? w.byHand : ''].filter(Boolean).map((tag) => (
            <strong class="tag" key={tag}>
              {tag}
            </strong>
          ))}
          {one.why.length > 0 || one.notes.length > 0 ? (
            <Fold title={w.why}>
              {() => (
                <>
                  <ol>
                    {one.why.map(({step, source}) => (
                      <li key={step}>
                        {step}
                        {source ? <cite> {source}</cite> : null}
                      </li>
                    ))}
                  </ol>
                  {one.notes.map((note) => (
                    <p key={note}>{note}</p>
                  ))}
                </>
              )}
            </Fold>
          ) : null}
          <Do onDo={() => setOpen(!open)} label={w.rightFor(one.text)} open={open}>
            {w.right}
          </Do>
        </td>
      </tr>
      {open ? (
        <tr class="righting">
          <td colSpan={3}>
            <Right one={one} byHand={byHand} put={put} />
          </td>
        </tr>
      ) : null}
    </>
  )
}

function Right({
  one,
  byHand,
  put,
}: {
  readonly one: IngredientView
  readonly byHand: boolean
  readonly put: (reading: string | null) => void
}): JSX.Element {
  const [reading, setReading] = useState(one.reading)
  return (
    <form
      class="row"
      onSubmit={(event) => {
        event.preventDefault()
        if (reading.trim()) put(reading.trim())
      }}
    >
      <Field label={w.rightHint} value={reading} onValue={setReading} />
      <button type="submit" class="do main">
        {w.rightDo}
      </button>
      {byHand ? <Do onDo={() => put(null)}>{w.rightUndo}</Do> : null}
    </form>
  )
}

function Sources({list}: {readonly list: readonly string[]}): JSX.Element | null {
  return list.length === 0 ? null : <cite> {list.join('; ')}</cite>
}
