import type {JSX} from 'preact'
import {useRef, useState} from 'preact/hooks'
import type {Message} from '../receipt/types.js'
import type {Audience} from '../sheets/handout.js'
import {Choice, Do, Messages, save} from './parts.js'
import type {Showing} from './protocol.js'
import {app, type State} from './state.js'
import {words} from './words.js'
import {zipFolder} from './zip.js'

const w = words.print

export function Print({state}: {readonly state: State}): JSX.Element {
  const [sheets, setSheets] = useState<ReadonlyMap<string, string>>(new Map())
  const [faults, setFaults] = useState<readonly Message[]>([])
  const [working, setWorking] = useState(false)
  const [path, setPath] = useState('pin-up.html')
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
          onValue={(language) => like({language})}
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
      <Messages messages={faults} title={words.plan.faults} />
      {sheets.size > 0 ? (
        <>
          <div class="row">
            <Choice
              label={w.which}
              value={path}
              options={html.map((one) => [one, titleOf(sheets.get(one)!)] as const)}
              onValue={setPath}
            />
            <Do kind="main" onDo={() => frame.current?.contentWindow?.print()}>
              {w.print}
            </Do>
            <Do onDo={() => save(stem(path), shown ?? '', 'text/html')}>{w.save}</Do>
          </div>
          {shown ? (
            // The sheet has no script and a policy of its own; the frame has none either. Its own links lead to the other sheets.
            <iframe
              ref={frame}
              class="sheet-frame"
              title={w.shown(title)}
              sandbox="allow-same-origin allow-modals"
              srcDoc={shown}
              onLoad={(event) =>
                event.currentTarget.contentDocument?.addEventListener('click', (click) => {
                  const link = (click.target as Element | null)?.closest('a')
                  const to = link?.getAttribute('href') ?? ''
                  if (!link || to.startsWith('#')) return
                  click.preventDefault()
                  const target = new URL(to, new URL(path, 'https://sheet.invalid/')).pathname.slice(1)
                  if (sheets.has(target)) setPath(target)
                })
              }
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

const titleOf = (html: string): string => {
  const raw = /<title>([^<]*)<\/title>/.exec(html)?.[1] ?? ''
  const text = new DOMParser().parseFromString(`<title>${raw}</title>`, 'text/html').title
  return text.split(': ')[0] || text
}

const kindOf = (path: string): string =>
  ({svg: 'image/svg+xml', ics: 'text/calendar', csv: 'text/csv', json: 'application/json', md: 'text/markdown'})[
    path.split('.').at(-1) ?? ''
  ] ?? 'text/plain'
