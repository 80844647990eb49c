import type {JSX} from 'preact'
import {useMemo} from 'preact/hooks'
import {clock} from '../sheets/figures.js'
import {withStated} from './front.js'
import {Do, Figure, Messages} from './parts.js'
import type {Drawings, PlanView, Showing, StepView} from './protocol.js'
import {Soon, useGrowing} from './slices.js'
import {app, type State} from './state.js'
import {styleOf} from './style.js'
import {words} from './words.js'

const w = words.plan

export function PlanPage({state}: {readonly state: State}): JSX.Element {
  const {planning, likes} = state
  const {view, drawings} = planning
  const {showing} = likes
  // The plan is drawn when it is another plan, not at every percent of the next.
  const made = useMemo(
    () => (view ? <Made view={view} drawings={drawings} showing={showing} /> : null),
    [view, drawings, showing],
  )
  return (
    <div class="plan">
      <h1>{w.title}</h1>
      <p class="lead">{w.lead}</p>
      <PlanWork state={state} />
      {view ? <Fires state={state} /> : null}
      {made}
    </div>
  )
}

/** The button that plans, what it is doing, and what keeps it from it. */
export function PlanWork({state}: {readonly state: State}): JSX.Element {
  const {planning, files} = state
  const working = planning.state === 'working'
  const stale = planning.view !== null && planning.files !== files && !working
  const percent = Math.round(planning.share * 100)
  return (
    <div class="plan-work">
      <div class="row">
        {working ? (
          <>
            <Do kind="main" onDo={() => app.stopPlan()}>
              {w.stop}
            </Do>
            <label class="progress">
              <span>{w.working(percent)}</span>
              <progress max={100} value={percent} />
            </label>
          </>
        ) : (
          <Do kind="main" onDo={() => void app.plan()}>
            {planning.view ? w.again : w.make}
          </Do>
        )}
      </div>
      {stale ? <p class="stale">{w.stale}</p> : null}
      {planning.state === 'stopped' ? <p>{w.stopped}</p> : null}
      {planning.state === 'failed' ? <p class="fault">{w.failed(planning.failed)}</p> : null}
      {planning.state === 'faults' ? <Messages messages={planning.faults} title={w.faults} top /> : null}
    </div>
  )
}

/** One fire or two, until the first is lit. */
function Fires({state}: {readonly state: State}): JSX.Element | null {
  const text = state.files.get('day.md')
  const day = state.folder?.day
  if (text === undefined || !day || state.folder?.log?.lit != null || state.planning.state === 'working') return null
  const two = day.firings >= 2
  return (
    <div class="row fires">
      <Do
        onDo={() => {
          app.edit(new Map([['day.md', withStated(app.state.files.get('day.md') ?? text, {firings: two ? null : '2'})]]), 'fires')
          void app.plan()
        }}
      >
        {two ? w.oneFire : w.twoFires}
      </Do>
      <p class="hint">{w.firesHint}</p>
    </div>
  )
}

/** The drawings of a plan, or a word that they are coming. */
export function Floors({drawings}: {readonly drawings: Drawings | null}): JSX.Element {
  return drawings === null ? (
    <p class="hint">{w.drawing}</p>
  ) : (
    <div class="floors">
      {drawings.floors.map((floor) => (
        <Figure key={floor.title} drawing={floor} small />
      ))}
    </div>
  )
}

function Steps({steps, showing}: {readonly steps: readonly StepView[]; readonly showing: Showing}): JSX.Element {
  const style = styleOf(showing)
  const shown = useGrowing(steps.length)
  return (
    <table class="hours" aria-busy={shown < steps.length ? 'true' : undefined}>
      <thead>
        <tr>
          <th scope="col">{w.time}</th>
          <th scope="col">{w.doing}</th>
          <th scope="col">{w.sign}</th>
        </tr>
      </thead>
      <tbody>
        {steps.slice(0, shown).map((step) => (
          <tr key={step.key} class={step.past ? 'past' : ''}>
            <th scope="row">{step.when ?? clock(step.at, style)}</th>
            <td lang={showing.language}>{step.say}</td>
            <td lang={showing.language}>{step.sign}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

function Made({
  view,
  drawings,
  showing,
}: {
  readonly view: PlanView
  readonly drawings: Drawings | null
  readonly showing: Showing
}): JSX.Element {
  return (
    <article>
      <h2>{view.head.title}</h2>
      <Alerts alerts={view.head.alerts} language={showing.language} />
      {view.head.lines.map((line) => (
        <p key={line} lang={showing.language}>
          {line}
        </p>
      ))}
      {view.unplaced.length > 0 ? (
        <section class="care">
          <h3>{w.unplaced}</h3>
          {view.unplaced.map((one) => (
            <div key={`${one.dish}${one.reason}`}>
              <p lang={showing.language}>
                <strong>{one.dish}</strong>: {one.reason}
              </p>
              {one.remedies.length > 0 ? (
                <>
                  <p>{w.remedies}</p>
                  <ul lang={showing.language}>
                    {one.remedies.map((remedy) => (
                      <li key={remedy}>{remedy}</li>
                    ))}
                  </ul>
                </>
              ) : null}
            </div>
          ))}
        </section>
      ) : null}
      <Late view={view} language={showing.language} />
      <Ways view={view} />
      <Changes view={view} />
      {view.today.length > 0 ? (
        <section>
          <h3>{words.moved.told}</h3>
          <ul lang={showing.language}>
            {view.today.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </section>
      ) : null}
      <h3>{w.heat}</h3>
      {drawings ? <Figure drawing={drawings.chart} /> : <p class="hint">{w.drawing}</p>}
      <h3>{w.steps}</h3>
      <Steps steps={view.steps} showing={showing} />
      <h3>{w.floor}</h3>
      <Floors drawings={drawings} />
      <Soon>
        <Judged view={view} language={showing.language} />
      </Soon>
    </article>
  )
}

/** What nobody may miss. */
export function Alerts({
  alerts,
  language,
}: {
  readonly alerts: readonly string[]
  readonly language: Showing['language']
}): JSX.Element {
  return (
    <>
      {alerts.map((alert) => (
        <p key={alert} class="care" lang={language}>
          <strong>{alert}</strong>
        </p>
      ))}
    </>
  )
}

/** What is drawn after it is wanted, and when. */
export function Late({
  view,
  language,
  top,
}: {
  readonly view: PlanView
  readonly language: Showing['language']
  /** Right under the page's title. */
  readonly top?: boolean
}): JSX.Element | null {
  const Heading = top ? 'h2' : 'h3'
  if (view.late.length === 0) return null
  return (
    <section class="care">
      <Heading>{w.late}</Heading>
      <ul lang={language}>
        {view.late.map((one) => (
          <li key={one.dish}>
            <strong>{one.dish}</strong>: {one.times}
          </li>
        ))}
      </ul>
    </section>
  )
}

/** How each dish was brought to its size, folded away: it is looked up, not read through. */
function Sized({
  dishes,
  language,
}: {
  readonly dishes: PlanView['sized']
  readonly language: Showing['language']
}): JSX.Element | null {
  if (dishes.length === 0) return null
  return (
    <details class="sized">
      <summary>{w.sized}</summary>
      <ul lang={language}>
        {dishes.map(({dish, amount, lines}) => (
          <li key={dish}>
            <strong>{dish}</strong>: {amount}
            <ul>
              {lines.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </li>
        ))}
      </ul>
    </details>
  )
}

/** How good the plan is, and what there would be room for. */
function Judged({view, language}: {readonly view: PlanView; readonly language: Showing['language']}): JSX.Element {
  return (
    <>
      <Sized dishes={view.sized} language={language} />
      <Lines title={w.spare} lines={view.suggestions} language={language} note={view.suggestionsNote} />
      <Lines title={words.moved.believed} lines={view.believed} language={language} />
      <Lines title={w.heatUsed} lines={view.balance} language={language} />
      <Lines title={w.balance} lines={view.score} language={language} />
      <p class="hint">{w.took((view.took / 1000).toFixed(1))}</p>
      <Messages messages={view.messages} title={w.warnings} />
    </>
  )
}

/** Lines under a heading, with a note below them; nothing where there are none. */
function Lines(of: {
  readonly title: string
  readonly lines: readonly string[]
  readonly language: Showing['language']
  readonly note?: string | undefined
}): JSX.Element | null {
  const {title, lines, language, note} = of
  if (lines.length === 0 && note === undefined) return null
  return (
    <>
      <h3>{title}</h3>
      {lines.length === 0 ? null : (
        <ul lang={language}>
          {lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
      {note === undefined ? null : (
        <p class="hint" lang={language}>
          {note}
        </p>
      )}
    </>
  )
}

async function noteWay(note: string): Promise<void> {
  const answer = await app.note(note)
  if (!answer.ok) app.say(`${answer.reason}. ${answer.suggest}`)
}

/** What would help the day; what takes no more than a note is noted here. */
export function Ways({view}: {readonly view: PlanView}): JSX.Element | null {
  if (view.ways === null) return null
  return (
    <section class="care">
      <p lang={app.state.likes.showing.language}>{view.ways.lead}</p>
      <ul>
        {view.ways.lines.map(({say, note}) => (
          <li key={say}>
            <span lang={app.state.likes.showing.language}>{say}</span>
            {note === null ? null : (
              <div class="row">
                <Do onDo={() => void noteWay(note)} label={`${w.noteWay}: ${note}`}>
                  {w.noteWay}
                </Do>
              </div>
            )}
          </li>
        ))}
      </ul>
    </section>
  )
}

/** What a new plan moved against the one before it. */
export function Changes({view}: {readonly view: PlanView}): JSX.Element | null {
  if (view.changes.length === 0) return null
  return (
    <section class="moved">
      <h3>{w.changes}</h3>
      <div lang={app.state.likes.showing.language}>
        {[...new Set(view.changes.map((one) => one.why))].map((why) => (
          <div key={why}>
            <p>
              <em>{why}</em>
            </p>
            <ul>
              {view.changes
                .filter((one) => one.why === why)
                .map((one) => (
                  <li key={`${one.dish}${one.what}`}>
                    {one.dish ? <strong>{one.dish}: </strong> : null}
                    {one.what}
                  </li>
                ))}
            </ul>
          </div>
        ))}
      </div>
    </section>
  )
}
