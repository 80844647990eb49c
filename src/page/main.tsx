import {type JSX, render} from 'preact'
import {useEffect, useState} from 'preact/hooks'
import {Bake} from './bake.js'
import {Company} from './day.js'
import {titleOf} from './folder.js'
import {KeepPage} from './keep-page.js'
import {Oven} from './oven.js'
import {Choice, Do} from './parts.js'
import {PlanPage} from './plan.js'
import {Print} from './print.js'
import {Receipts} from './receipts.js'
import {app, type Likes, type Place, useApp} from './state.js'
import {words} from './words.js'

const stages: ReadonlyArray<{readonly place: Place; readonly name: string; readonly holds: readonly Place[]}> = [
  {place: 'receipts', name: words.prepare, holds: ['receipts', 'oven', 'day']},
  {place: 'plan', name: words.places.plan, holds: ['plan']},
  {place: 'bake', name: words.places.bake, holds: ['bake']},
  {place: 'print', name: words.places.print, holds: ['print']},
  {place: 'keep', name: words.places.keep, holds: ['keep']},
]

function Whole(): JSX.Element {
  const state = useApp()
  const {likes, place} = state
  useEffect(() => {
    document.documentElement.dataset.light = likes.light
  }, [likes.light])
  const title = titleOf(state.files.get('day.md') ?? '') || words.untitled
  useEffect(() => {
    document.title = `${words.places[place]} · ${title} · ${words.name}`
  }, [place, title])
  useEffect(() => {
    const key = (event: KeyboardEvent): void => {
      // In a box the browser's own undoing is what the hand expects.
      const box = (event.target as Element | null)?.closest('input, textarea, select')
      if (box || !(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z') return
      event.preventDefault()
      void (event.shiftKey ? app.redo() : app.undo())
    }
    addEventListener('keydown', key)
    return () => removeEventListener('keydown', key)
  }, [])
  const stage = stages.find((one) => one.holds.includes(place)) ?? stages[0]!
  const canUndo = state.steps.some((step) => !step.undone)
  return (
    <div class="whole">
      {/* biome-ignore lint/a11y/useValidAnchor: it does lead to a place of this page; the address itself names the view */}
      <a
        class="skip"
        href="#work"
        onClick={(event) => {
          event.preventDefault()
          document.getElementById('work')?.focus()
        }}
      >
        {words.skip}
      </a>
      <header class="lintel">
        <p class="mark">{words.name}</p>
        <p class="which">{title}</p>
        <p class={`saving ${state.saving}`} role={state.saving === 'failed' || state.saving === 'nowhere' ? 'alert' : undefined}>
          {words.saving[state.saving]}
        </p>
        <div class="tools">
          <Do off={!canUndo} onDo={() => void app.undo()}>
            {words.undo}
          </Do>
          <Choice<Likes['light']>
            label={words.light}
            bare
            value={likes.light}
            options={(['device', 'sun', 'dark'] as const).map((one) => [one, `${words.light}: ${words.lights[one]}`] as const)}
            onValue={(light) => app.like({light})}
          />
        </div>
      </header>
      <nav class="fall" aria-label={words.nav}>
        <ol>
          {stages.map((one) => (
            <li key={one.place}>
              <a href={`#${one.place}`} aria-current={one === stage ? (one.holds.length > 1 ? 'true' : 'page') : undefined}>
                {one.name}
              </a>
            </li>
          ))}
        </ol>
      </nav>
      {stage.holds.length > 1 ? (
        <nav class="under" aria-label={words.navPrepare}>
          <ul>
            {stage.holds.map((one) => (
              <li key={one}>
                <a href={`#${one}`} aria-current={one === place ? 'page' : undefined}>
                  {words.places[one]}
                </a>
              </li>
            ))}
          </ul>
        </nav>
      ) : null}
      <main id="work" tabIndex={-1}>
        {state.ready ? <Turning place={place} /> : null}
        {state.ready ? <Useful /> : null}
      </main>
      <p class="said" role="status">
        {state.said}
      </p>
    </div>
  )
}

/** Marks the moment the first view can be used, for `scripts/page-measure.ts`. */
function Useful(): null {
  useEffect(() => void performance.mark('useful'), [])
  return null
}

/** Turns from one view to another in two steps, so that clearing the one away and drawing the other never fall into one frame. */
function Turning({place}: {readonly place: Place}): JSX.Element | null {
  const [shown, setShown] = useState(place)
  useEffect(() => {
    if (shown === place) return
    const timer = setTimeout(() => setShown(place))
    return () => clearTimeout(timer)
  }, [shown, place])
  return shown === place ? <Here key={place} place={place} /> : null
}

function Here({place}: {readonly place: Place}): JSX.Element {
  const {state} = app
  switch (place) {
    case 'receipts':
      return <Receipts state={state} />
    case 'oven':
      return <Oven state={state} />
    case 'day':
      return <Company state={state} />
    case 'plan':
      return <PlanPage state={state} />
    case 'bake':
      return <Bake state={state} />
    case 'print':
      return <Print state={state} />
    case 'keep':
      return <KeepPage state={state} />
  }
}

/** Where the page comes from a server it can be put among a device's own programs: the manifest is made here, so that it names this address. */
function manifest(): void {
  if (!/^https?:$/.test(location.protocol)) return
  const here = location.href.replace(/[?#].*$/, '')
  const icon = `data:image/svg+xml,${encodeURIComponent('<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 512 512"><rect width="512" height="512" fill="#14110f"/><path d="M72 420V300a184 184 0 0 1 368 0v120z" fill="#fff"/><path d="M176 420V330a80 80 0 0 1 160 0v90z" fill="#14110f"/></svg>')}`
  const link = document.createElement('link')
  link.rel = 'manifest'
  link.href = `data:application/manifest+json,${encodeURIComponent(
    JSON.stringify({
      name: words.name,
      short_name: words.name,
      start_url: here,
      scope: here,
      id: here,
      display: 'standalone',
      background_color: '#ffffff',
      theme_color: '#14110f',
      icons: [{src: icon, sizes: 'any', type: 'image/svg+xml'}],
    }),
  )}`
  document.head.append(link)
}

manifest()
const root = document.getElementById('page')!
root.textContent = ''
render(<Whole />, root)
void app.start()
