import type {JSX} from 'preact'
import {useEffect, useRef, useState} from 'preact/hooks'
import type {Message} from '../receipt/types.js'
import type {Audience} from '../sheets/handout.js'
import {Choice, Do, Messages, save} from './parts.js'
import type {Showing} from './protocol.js'
import {inAPause} from './slices.js'
import {app, type State} from './state.js'
import {words} from './words.js'
import {zipFolder} from './zip.js'

const w = words.print

export function Print({state}: {readonly state: State}): JSX.Element {
  const [sheets, setSheets] = useState<ReadonlyMap<string, string>>(new Map())
  const [faults, setFaults] = useState<readonly Message[]>([])
  const [working, setWorking] = useState(false)
  const [times, setTimes] = useState(0)
  const [path, setPath] = useState('pin-up.html')
  /** The sheet that stands whole in the frame and may be printed. */
  const [whole, setWhole] = useState('')
  const frame = useRef<HTMLIFrameElement>(null)
  const {showing, audience} = state.likes
  const like = (change: Partial<Showing>): void => {
    app.like({showing: {...showing, ...change}})
    setSheets(new Map())
  }
  const make = async (): Promise<void> => {
    setWorking(true)
    try {
      const made = await app.sheets()
      if (made instanceof Map) {
        setWhole('')
        setTimes(times + 1)
        setSheets(made)
        setFaults([])
        if (!made.has(path)) setPath('pin-up.html')
      } else setFaults(made as readonly Message[])
    } catch (error) {
      app.say(words.trouble(error instanceof Error ? error.message : String(error)))
    } finally {
      setWorking(false)
    }
  }
  const html = [...sheets.keys()].filter((one) => one.endsWith('.html') && one !== 'index.html')
  const rest = [...sheets.keys()].filter((one) => !one.endsWith('.html'))
  const shown = sheets.get(path)
  const title = shown ? titleOf(shown) : path
  const stem = (name: string): string => name.split('/').at(-1) ?? name
  return (
    <div class="print">
      <h1>{w.title}</h1>
      <p class="lead">{w.lead}</p>
      <div class="fields">
        <Choice
          label={w.language}
          value={showing.language}
          options={(['en', 'de'] as const).map((one) => [one, w.languages[one]] as const)}
          onValue={(language) => like({language, clock: language === 'de' ? 24 : 12})}
        />
        <Choice
          label={w.units}
          value={showing.units}
          options={(['both', 'metric', 'us'] as const).map((one) => [one, w.unitsAll[one]] as const)}
          onValue={(units) => like({units, degrees: units === 'us' ? 'F' : units === 'metric' ? 'C' : 'both'})}
        />
        <Choice
          label={w.clock}
          value={String(showing.clock) as '12' | '24'}
          options={(['12', '24'] as const).map((one) => [one, w.clocks[one]] as const)}
          onValue={(clock) => like({clock: clock === '24' ? 24 : 12})}
        />
        <Choice
          label={w.audience}
          value={audience}
          options={(['kitchen', 'class', 'visitors'] as const satisfies readonly Audience[]).map(
            (one) => [one, w.audiences[one]] as const,
          )}
          onValue={(one) => {
            app.like({audience: one})
            setSheets(new Map())
          }}
        />
      </div>
      <div class="row">
        <Do kind="main" off={working} onDo={() => void make()}>
          {working ? w.working : sheets.size > 0 ? w.again : w.make}
        </Do>
        {sheets.size > 0 ? (
          <Do onDo={() => void zipFolder(sheets, 'sheets').then((bytes) => save('sheets.zip', bytes, 'application/zip'))}>
            {w.saveAll}
          </Do>
        ) : null}
      </div>
      {sheets.size === 0 && faults.length === 0 ? <p class="hint">{w.noSheets}</p> : null}
      <Messages messages={faults} title={words.plan.faults} top />
      {sheets.size > 0 ? (
        <>
          <div class="row">
            <Choice
              label={w.which}
              value={path}
              options={html.map((one) => [one, titleOf(sheets.get(one)!)] as const)}
              onValue={setPath}
            />
            <Do kind="main" off={whole !== path} onDo={() => frame.current?.contentWindow?.print()}>
              {w.print}
            </Do>
            <Do onDo={() => save(stem(path), shown ?? '', 'text/html')}>{w.save}</Do>
          </div>
          {shown ? (
            <Sheet
              key={`${times} ${path}`}
              frame={frame}
              html={shown}
              title={w.shown(title)}
              onWhole={() => setWhole(path)}
              onLink={(to) => {
                const target = new URL(to, new URL(path, 'https://sheet.invalid/')).pathname.slice(1)
                if (sheets.has(target)) setPath(target)
              }}
            />
          ) : null}
          <h2>{w.files}</h2>
          <ul class="files">
            {rest.map((one) => (
              <li key={one}>
                <Do onDo={() => save(stem(one), sheets.get(one) ?? '', kindOf(one))}>{stem(one)}</Do>
              </li>
            ))}
          </ul>
        </>
      ) : null}
    </div>
  )
}

/** A sheet taken apart: its page without what stands in it, and the parts that go in. */
function partsOf(html: string): {
  readonly bare: string
  readonly parts: ReadonlyArray<{readonly node: Element; readonly into: number}>
} {
  const whole = new DOMParser().parseFromString(html, 'text/html')
  // Each part with the place of the part it belongs into, or −1 for the page itself; a long part comes empty, and its children follow.
  const parts: Array<{readonly node: Element; readonly into: number}> = []
  for (const node of [...(whole.querySelector('main')?.children ?? [])]) {
    const children = /^(?:article|section)$/.test(node.localName) ? [...node.children] : []
    const own = parts.push({node, into: -1}) - 1
    for (const child of children) parts.push({node: child, into: own})
  }
  for (const {node} of parts) node.remove()
  return {bare: `<!doctype html>${whole.documentElement.outerHTML}`, parts}
}

/**
 * A sheet in a frame. It has no script and a policy of its own; the frame has none either. A sheet of many pages is laid out one part at
 * a time, so that the page does not stand still.
 */
function Sheet(props: {
  readonly frame: {current: HTMLIFrameElement | null}
  readonly html: string
  readonly title: string
  readonly onWhole: () => void
  readonly onLink: (to: string) => void
}): JSX.Element {
  const {html} = props
  const [sheet, setSheet] = useState<ReturnType<typeof partsOf> | null>(null)
  useEffect(() => inAPause(() => setSheet(partsOf(html))), [html])
  const [ready, setReady] = useState(false)
  useEffect(() => {
    const page = props.frame.current?.contentDocument
    const main = page?.querySelector('main')
    if (!ready || !sheet || !page || !main) return
    let stop = (): void => {}
    const put = (i: number): void => {
      const part = sheet.parts[i]
      if (!part) {
        props.onWhole()
        return
      }
      ;(sheet.parts[part.into]?.node ?? main).append(part.node)
      stop = inAPause(() => put(i + 1))
    }
    put(0)
    return () => stop()
  }, [ready, sheet])
  return sheet === null ? (
    <p class="hint">{w.working}</p>
  ) : (
    <iframe
      ref={props.frame}
      class="sheet-frame"
      title={props.title}
      sandbox="allow-same-origin allow-modals"
      srcDoc={sheet.bare}
      onLoad={(event) => {
        event.currentTarget.contentDocument?.addEventListener('click', (click) => {
          const link = (click.target as Element | null)?.closest('a')
          const to = link?.getAttribute('href') ?? ''
          if (!link || to.startsWith('#')) return
          click.preventDefault()
          props.onLink(to)
        })
        setReady(true)
      }}
    />
  )
}

/** The title of a sheet, without the day's. Asked of every sheet, so it is read off the text. */
function titleOf(html: string): string {
  const raw = /<title>([^<]*)<\/title>/.exec(html)?.[1] ?? ''
  const text = raw.replace(/&(?:#(\d+)|#x([\da-f]+)|(amp|lt|gt|quot));/gi, (_, ten?: string, hex?: string, name?: string) =>
    ten ? String.fromCodePoint(Number(ten)) : hex ? String.fromCodePoint(Number.parseInt(hex, 16)) : (named[name ?? ''] ?? ''),
  )
  return text.split(': ')[0] || text
}
const named: Readonly<Record<string, string>> = {amp: '&', lt: '<', gt: '>', quot: '"'}

const kindOf = (path: string): string =>
  ({svg: 'image/svg+xml', ics: 'text/calendar', csv: 'text/csv', json: 'application/json', md: 'text/markdown'})[
    path.split('.').at(-1) ?? ''
  ] ?? 'text/plain'
