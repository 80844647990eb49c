import type {JSX} from 'preact'
import {clock} from '../sheets/figures.js'
import {Do, Figure, Messages} from './parts.js'
import type {PlanView} from './protocol.js'
import {app, type State} from './state.js'
import {styleOf} from './style.js'
import {words} from './words.js'

const w = words.plan

export function PlanPage({state}: {readonly state: State}): JSX.Element {
  const {planning} = state
  return (
    <div class="plan">
      <h1>{w.title}</h1>
      <p class="lead">{w.lead}</p>
      <PlanWork state={state} />
      {planning.view ? <Made view={planning.view} state={state} /> : null}
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
      {planning.state === 'faults' ? <Messages messages={planning.faults} title={w.faults} /> : null}
    </div>
  )
}

function Made({view, state}: {readonly view: PlanView; readonly state: State}): JSX.Element {
  const style = styleOf(state.likes.showing)
  return (
    <article>
      <h2>{view.head.title}</h2>
      {view.head.lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {view.unplaced.length > 0 ? (
        <section class="care">
          <h3>{w.unplaced}</h3>
          {view.unplaced.map((one) => (
            <div key={`${one.dish}${one.reason}`}>
              <p>
                <strong>{one.dish}</strong>: {one.reason}
              </p>
              {one.remedies.length > 0 ? (
                <>
                  <p>{w.remedies}</p>
                  <ul>
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
      <Changes view={view} />
      <h3>{w.heat}</h3>
      <Figure drawing={view.chart} />
      <h3>{w.steps}</h3>
      <table class="hours">
        <thead>
          <tr>
            <th scope="col">{w.time}</th>
            <th scope="col">{w.doing}</th>
            <th scope="col">{w.sign}</th>
          </tr>
        </thead>
        <tbody>
          {view.steps.map((step) => (
            <tr key={`${step.key}@${step.at}`} class={step.past ? 'past' : ''}>
              <th scope="row">{clock(step.at, style)}</th>
              <td>{step.say}</td>
              <td>{step.sign}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <h3>{w.floor}</h3>
      <div class="floors">
        {view.floors.map((floor) => (
          <Figure key={floor.title} drawing={floor} small />
        ))}
      </div>
      {view.suggestions.length > 0 ? (
        <>
          <h3>{w.spare}</h3>
          <ul>
            {view.suggestions.map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
        </>
      ) : null}
      <h3>{w.balance}</h3>
      <ul>
        {view.score.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <p class="hint">{w.took((view.took / 1000).toFixed(1))}</p>
      <Messages messages={view.messages} title={w.warnings} />
    </article>
  )
}

/** What a new plan moved against the one before it. */
export function Changes({view}: {readonly view: PlanView}): JSX.Element | null {
  if (view.changes.length === 0) return null
  return (
    <section class="moved">
      <h3>{w.changes}</h3>
      <ul>
        {view.changes.map((one) => (
          <li key={`${one.dish}${one.what}`}>
            {one.dish ? <strong>{one.dish}: </strong> : null}
            {one.what} <em>{one.why}</em>
          </li>
        ))}
      </ul>
    </section>
  )
}
