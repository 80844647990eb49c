import type {JSX} from 'preact'
import {useEffect, useRef, useState} from 'preact/hooks'
import {keepFocus} from './focus.js'
import {titleOf} from './folder.js'
import {Later} from './later.js'
import {Choice, Do} from './parts.js'
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

/** The whole page: its frame, and the view one stands at. */
export function Whole(): JSX.Element {
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
  const whole = useRef<HTMLDivElement>(null)
  useEffect(() => (whole.current ? keepFocus(whole.current) : undefined), [])
  const stage = stages.find((one) => one.holds.includes(place)) ?? stages[0]!
  const canUndo = state.steps.some((step) => !step.undone)
  return (
    <div class="whole" ref={whole}>
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
        {state.ready ? <Alive /> : null}
      </main>
      <p class="said" role="status">
        {state.said}
      </p>
    </div>
  )
}

/** Marks the moment the first view is all alive, for `scripts/page-measure.ts`. */
function Alive(): null {
  useEffect(() => void performance.mark('alive'), [])
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
  if (place === 'receipts') return <Receipts state={state} />
  return (
    <Later>
      {({Bake, Company, KeepPage, Oven, PlanPage, Print}) => {
        switch (place) {
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
      }}
    </Later>
  )
}
