import type {ComponentChildren, JSX} from 'preact'
import {useEffect, useMemo, useRef, useState} from 'preact/hooks'
import type {FiringLog} from '../oven/log.js'
import {clock, longDate, temperatures} from '../sheets/figures.js'
import type {Style} from '../sheets/style.js'
import {allowSound, awake, sound as play, shake} from './alarms.js'
import {fromNow, inTime, saidIn, toNow} from './at-oven.js'
import {type Deed, inside} from './deeds.js'
import {allDeeds, standing} from './due.js'
import {OneDeed} from './one-deed.js'
import {Do, Figure, Messages, Page} from './parts.js'
import {Alerts, Floors, Late, PlanWork, Ways} from './plan.js'
import type {PlanView, Showing} from './protocol.js'
import {type Kind, Readings} from './readings.js'
import {Fold} from './slices.js'
import {app, messagesOf, type State} from './state.js'
import {styleOf} from './style.js'
import {words} from './words.js'

const w = words.bake

/** The day's clock, told again every second. */
function useNow(): number | null {
  const [now, setNow] = useState(app.now())
  useEffect(() => {
    const timer = setInterval(() => setNow(app.now()), 1000)
    return () => clearInterval(timer)
  }, [])
  return now
}

export function Bake({state}: {readonly state: State}): JSX.Element {
  useNow()
  const now = app.now()
  const style = styleOf(state.likes.showing)
  const {planning, folder, likes} = state
  const view = planning.view
  useEffect(() => {
    const keep = (): void => void awake(likes.awake)
    keep()
    document.addEventListener('visibilitychange', keep)
    return () => {
      document.removeEventListener('visibilitychange', keep)
      void awake(false)
    }
  }, [likes.awake])
  const day = folder?.day ?? null
  const log = folder?.log ?? null
  const {held} = planning
  const deeds = useMemo(() => (view ? allDeeds(view, log, held) : []), [view, log, held])
  // The clock goes on every second; what does not hang on it is not drawn again.
  const readings = useMemo(() => <Readings likes={likes} day={state.day} />, [likes, state.day])
  const written = state.files.get(`firings/${day?.date ?? ''}.md`) ?? ''
  const noted = useMemo(
    () => (day ? <Log state={state} text={written} log={log} date={day.date} showing={likes.showing} /> : null),
    [written, log, day, likes.showing, state.folder],
  )
  return (
    <div class="bake" onPointerDown={() => likes.sound && allowSound()}>
      <h1 class="unseen">{w.title}</h1>
      <ClockFace state={state} now={now} style={style} view={view} />
      {day && now === null ? <Rehearse date={longDate(day.date, style)} first={view ? view.plan.lit - 5 : day.fireFrom} /> : null}
      {state.rehearsal ? (
        <div class="row rehearsing">
          <strong>{w.rehearsing}</strong>
          <SetClock now={now ?? 0} />
          <Do
            onDo={() => {
              toNow()
              app.set({rehearsal: null})
            }}
          >
            {w.rehearseStop}
          </Do>
        </div>
      ) : null}
      {view === null ? (
        <>
          {/* Until the folder has been looked through, as while it is planned first, nobody knows what is wanting. */}
          {day ? <p>{w.noPlan}</p> : folder && planning.state !== 'working' ? <p>{w.noDay}</p> : null}
          <PlanWork state={state} />
        </>
      ) : (
        <>
          {planning.state === 'working' || planning.state === 'faults' || planning.state === 'failed' ? (
            planning.state === 'working' ? (
              <p class="stale" role="status">
                {w.working} {Math.round(planning.share * 100)} %
              </p>
            ) : (
              <PlanWork state={state} />
            )
          ) : null}
          <Noted state={state} />
          <Amiss view={view} />
          {now === null ? null : <Alarm deeds={deeds} now={now} state={state} />}
          <Work deeds={deeds} log={log} state={state} now={now} style={style}>
            <NoPlace view={view} sought={planning.state === 'working'} />
            <Ways view={view} />
            <Moved state={state} view={view} />
          </Work>
        </>
      )}
      {day ? readings : null}
      {view ? <Inside view={view} log={log} style={style} now={now} /> : null}
      {view ? (
        <Fold title={w.drawings}>
          {() => (
            <>
              {planning.drawings ? <Figure drawing={planning.drawings.chart} /> : null}
              <Floors drawings={planning.drawings} />
            </>
          )}
        </Fold>
      ) : null}
      {noted}
      <fieldset class="row likes">
        <legend class="unseen">{w.sound}</legend>
        <Do pressed={likes.sound} onDo={() => app.like({sound: !likes.sound})}>
          {w.sound}
        </Do>
        <Do pressed={likes.shake} onDo={() => app.like({shake: !likes.shake})}>
          {w.shake}
        </Do>
        <Do pressed={likes.awake} onDo={() => app.like({awake: !likes.awake})}>
          {w.awake}
        </Do>
      </fieldset>
      <p class="care">{w.care}</p>
    </div>
  )
}

function ClockFace({
  state,
  now,
  style,
  view,
}: {
  readonly state: State
  readonly now: number | null
  readonly style: Style
  readonly view: PlanView | null
}): JSX.Element {
  const heat = view && now !== null ? heatAt(view, now) : null
  return (
    <div class="face">
      <p class="face-time">
        <span class="unseen">{w.clock}: </span>
        {now === null ? '–' : clock(Math.floor(now), style)}
      </p>
      <p class="face-day">
        {state.folder?.day?.title ?? ''}
        {heat ? (
          <>
            <br />
            {w.heatNow(temperatures(heat, style))}
          </>
        ) : null}
      </p>
    </div>
  )
}

/** Baking temperature by the plan, once the oven has soaked; null before. */
function heatAt(view: PlanView, now: number): {low: number; high: number} | null {
  if (now < view.plan.ready) return null
  const {step, lit, low, high} = view.baking
  if (now > lit + step * (low.length - 1)) return null
  // Between two of the forecast's steps, as the crow flies.
  const at = (now - lit) / step
  const i = Math.floor(at)
  const of = (curve: readonly number[]): number => {
    const here = curve[i] ?? 0
    return here + (at - i) * ((curve[i + 1] ?? here) - here)
  }
  return {low: of(low), high: of(high)}
}

function Rehearse({date, first}: {readonly date: string; readonly first: number}): JSX.Element {
  return (
    <div class="row rehearsing">
      <span>{w.notToday(date)}</span>
      <Do
        onDo={() => {
          toNow()
          app.set({rehearsal: {minutes: first, since: Date.now()}})
        }}
      >
        {w.rehearse}
      </Do>
    </div>
  )
}

function SetClock({now}: {readonly now: number}): JSX.Element {
  const put = (minutes: number): void => app.set({rehearsal: {minutes, since: Date.now()}})
  const hours = String(Math.floor(now / 60) % 24).padStart(2, '0')
  const minutes = String(Math.floor(now % 60)).padStart(2, '0')
  return (
    <>
      <label class="field">
        <span class="unseen">{w.rehearseAt}</span>
        <input
          type="time"
          value={`${hours}:${minutes}`}
          onChange={(event) => {
            const [h, m] = event.currentTarget.value.split(':').map(Number)
            if (h !== undefined && m !== undefined) put(Math.floor(now / 1440) * 1440 + h * 60 + m)
          }}
        />
      </label>
      <Do onDo={() => put(now + 15)}>{w.quarter}</Do>
      <Do onDo={() => put(now + 60)}>{w.hour}</Do>
    </>
  )
}

/** What the last note moved, and why. */
function Moved({state, view}: {readonly state: State; readonly view: PlanView}): JSX.Element | null {
  const {moved} = state.planning
  if (!moved) return null
  return (
    <section
      class="moved"
      aria-live="polite"
      data-took={`${Math.round(view.took)} ms: plan ${Math.round(view.parts.plan)}, words ${Math.round(view.parts.view)}`}
    >
      <h2 id="moved" tabIndex={-1}>
        {w.moved}
      </h2>
      <p>{words.moved.because(moved.because)}</p>
      {view.today.map((line) => (
        <p key={line}>
          <strong>{line}</strong>
        </p>
      ))}
      {moved.lines.length > 0 ? (
        <ul>
          {moved.lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      ) : (
        <p>{w.notMoved}</p>
      )}
      {view.today.length > 0 || moved.lines.length === 0 ? null : <Whys view={view} />}
      <Do
        onDo={() => {
          toNow()
          app.set({planning: {...state.planning, moved: null}})
        }}
      >
        {words.moved.close}
      </Do>
    </section>
  )
}

/** Why it moved, where no reading says it: the fire was lit late, or a dish set in late. */
function Whys({view}: {readonly view: PlanView}): JSX.Element {
  const whys = [...new Set(view.changes.map((one) => one.why))].filter((why) => !view.unplaced.some((one) => one.reason === why))
  return (
    <>
      {whys.slice(0, 3).map((why) => (
        <p key={why}>{words.moved.why(why)}</p>
      ))}
    </>
  )
}

/** What has no place in the plan as it stands, or none yet: it has no step, and would be missed only when it is looked for. */
function NoPlace({view, sought}: {readonly view: PlanView; readonly sought: boolean}): JSX.Element | null {
  if (view.unplaced.length === 0) return null
  return (
    <section class="care" aria-label={words.plan.unplaced}>
      <h2>{words.plan.unplaced}</h2>
      <ul>
        {view.unplaced.map(({dish, reason}) =>
          sought ? (
            <li key={dish}>{words.moved.sought(dish)}</li>
          ) : (
            <li key={dish}>
              <strong>{dish}</strong>: <span lang={saidIn()}>{reason}</span>
            </li>
          ),
        )}
      </ul>
    </section>
  )
}

/** What nobody may miss of the plan as it stands: what is unsafe, underdone or late is told where the deed is noted. */
function Amiss({view}: {readonly view: PlanView}): JSX.Element | null {
  const {alerts, amiss} = view.head
  if (alerts.length === 0 && amiss.length === 0 && view.late.length === 0) return null
  return (
    <div class="amiss" role="status">
      <Alerts alerts={[...alerts, ...amiss]} language={saidIn()} />
      <Late view={view} language={saidIn()} top />
    </div>
  )
}

/** Now, next and what follows; between them what else the plan has to say. */
function Work({
  deeds,
  log,
  state,
  now,
  style,
  children,
}: {
  readonly deeds: readonly Deed[]
  readonly log: FiringLog | null
  readonly state: State
  readonly now: number | null
  readonly style: Style
  readonly children: ComponentChildren
}): JSX.Element {
  const at = now ?? (deeds[0]?.step.at ?? 0) - 60
  const {view, held} = state.planning
  const {now: due, next, later} = standing(deeds, at, {...(view ? {view} : {}), log, held})
  return (
    <>
      <section class="now" aria-label={w.now}>
        <h2 id="now" tabIndex={-1}>
          {w.now}
        </h2>
        {due.length === 0 ? <p class="calm">{next ? w.nothingNow : w.ended}</p> : null}
        {due.map((deed) => (
          <OneDeed key={`${deed.step.key}@${deed.step.at}`} deed={deed} now={at} style={style} main />
        ))}
      </section>
      {next ? (
        <section class="next" aria-label={w.next}>
          <h2>
            {w.next} {now === null ? null : <span class="soon">{inTime(next.step.at - now)}</span>}
          </h2>
          <OneDeed key={`${next.step.key}@${next.step.at}`} deed={next} now={at} style={style} />
        </section>
      ) : null}
      {children}
      {later.length > 0 ? (
        <section class="later">
          <h2>{w.later}</h2>
          <ol>
            {later.map((deed) => (
              <li key={`${deed.step.key}@${deed.step.at}`}>
                <strong>{deed.step.when ?? clock(deed.step.at, style)}</strong> <span lang={saidIn()}>{deed.step.say}</span>
              </li>
            ))}
          </ol>
        </section>
      ) : null}
    </>
  )
}

/** What was noted last, and the way back from it. */
function Noted({state}: {readonly state: State}): JSX.Element | null {
  if (state.noted === '') return null
  const lines = state.planning.moved?.lines.length ?? 0
  return (
    <div class="row noted">
      <span>{state.noted}</span>
      {lines > 0 ? <Do onDo={() => document.getElementById('moved')?.focus()}>{w.movedBelow(lines)}</Do> : null}
      <Do
        onDo={() => {
          toNow()
          void app.undo()
        }}
      >
        {w.takeBack}
      </Do>
    </div>
  )
}

/** Rings when a step's time comes, until it is heard. */
function Alarm({
  deeds,
  now,
  state,
}: {
  readonly deeds: readonly Deed[]
  readonly now: number
  readonly state: State
}): JSX.Element | null {
  const before = useRef(now)
  const [ringing, setRinging] = useState<{key: string; said: string; times: number} | null>(null)
  const {sound, shake: shaking} = state.likes
  useEffect(() => {
    const come = deeds.filter(({done, step}) => !done && step.at > before.current && step.at <= now)
    // A clock set forward by hand passes over hours: only what is due just now rings.
    before.current = now
    const last = come.filter(({step}) => now - step.at < 2).at(-1)
    if (last) setRinging({key: last.step.key, said: last.step.say, times: 0})
    // Whoever has done it has heard it; and what was put off rings again.
    else setRinging((one) => (one && deeds.some(({done, step}) => !done && step.key === one.key && step.at <= now) ? one : null))
  }, [now, deeds])
  useEffect(() => {
    if (!ringing) return
    if (sound) play('alarm')
    if (shaking) shake([400, 200, 400, 200, 400])
    const timer = setTimeout(() => setRinging((one) => (one && one.times < 8 ? {...one, times: one.times + 1} : one)), 12_000)
    return () => clearTimeout(timer)
  }, [ringing, sound, shaking])
  if (!ringing) return null
  return (
    <div class="alarm" role="alert">
      <p>{w.alarm(ringing.said)}</p>
      <Do
        kind="huge"
        onDo={() => {
          toNow()
          setRinging(null)
        }}
      >
        {w.alarmStop}
      </Do>
    </div>
  )
}

function Inside({
  view,
  log,
  style,
  now,
}: {
  readonly view: PlanView
  readonly log: FiringLog | null
  readonly style: Style
  readonly now: number | null
}): JSX.Element {
  const all = inside(view, log)
  return (
    <section class="inside">
      <h2>{w.dishes}</h2>
      {all.length === 0 ? <p>{w.nothingIn}</p> : null}
      <ul>
        {all.map((one) => (
          <li key={one.stem}>
            <strong>{one.title}</strong>
            {one.draw === null
              ? null
              : `: ${w.drawAbout(clock(one.draw, style))}${now === null ? '' : `, ${fromNow(one.draw - now)}`}`}
            {one.ticked ? null : ` (${w.byPlan})`}
          </li>
        ))}
      </ul>
    </section>
  )
}

function Log({
  state,
  text,
  log,
  date,
  showing,
}: {
  readonly state: State
  readonly text: string
  readonly log: FiringLog | null
  readonly date: string
  readonly showing: Showing
}): JSX.Element {
  const path = `firings/${date}.md`
  const style = styleOf(showing)
  return (
    <section class="log">
      <h2>{w.log}</h2>
      {text.trim() === '' ? <p>{w.logEmpty}</p> : null}
      <Messages title={words.plan.warnings} messages={messagesOf(state, path).filter(({severity}) => severity === 'warning')} />
      {log ? (
        <ul>
          {[...log.rows]
            .reverse()
            .slice(0, 12)
            .map((row) => (
              <li key={row.line}>
                <strong>{clock(row.at, style)}</strong>{' '}
                {[row.what === 'reading' ? (w.kinds[row.kind as Kind] ?? row.kind) : (row.dish ?? ''), row.text, row.note]
                  .filter(Boolean)
                  .join(' · ')}
              </li>
            ))}
          {log.raked !== null ? (
            <li>
              <strong>{clock(log.raked, style)}</strong> {w.do.rake}
            </li>
          ) : null}
          {log.lit !== null ? (
            <li>
              <strong>{clock(log.lit, style)}</strong> {w.do.light}
            </li>
          ) : null}
        </ul>
      ) : null}
      <Fold title={w.logByHand}>
        {() => (
          <>
            <Page label={path} value={text} rows={12} onValue={(value) => app.edit(new Map([[path, value]]), 'log', true)} />
            <Do onDo={() => void app.plan()}>{words.plan.again}</Do>
          </>
        )}
      </Fold>
    </section>
  )
}
