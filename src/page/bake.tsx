import type {ComponentChildren, JSX} from 'preact'
import {useEffect, useMemo, useRef, useState} from 'preact/hooks'
import {armCaution, signs} from '../lexicon/signs.js'
import {writeDuration} from '../measure/quantity.js'
import type {FiringLog} from '../oven/log.js'
import {clock, longDate, temperatures} from '../sheets/figures.js'
import type {Style} from '../sheets/style.js'
import {allowSound, awake, sound as play, shake} from './alarms.js'
import {type Deed, deedsOf, inside, moves, noteOf, standing} from './deeds.js'
import {Choice, Do, Field, Figure, Messages, Page} from './parts.js'
import {Floors, PlanWork, Ways} from './plan.js'
import type {PlanView, Showing} from './protocol.js'
import {Fold} from './slices.js'
import {app, type Likes, messagesOf, type State, type Told} from './state.js'
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
  const deeds = useMemo(() => (view ? deedsOf(view, log) : []), [view, log])
  // The clock goes on every second; what does not hang on it is not drawn again.
  const readings = useMemo(() => <Readings likes={likes} />, [likes])
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
          {now === null ? null : <Alarm deeds={deeds} now={now} state={state} />}
          <Work deeds={deeds} now={now} style={style}>
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

/** The language the plan's sentences are in: the page's own words stay English. */
const saidIn = (): Showing['language'] => app.state.likes.showing.language

/** How long until it is due; minutes. */
const inTime = (minutes: number): string => (Math.round(minutes) <= 0 ? w.due : w.inTime(writeDuration(minutes)))

/** The same, or how long ago. */
const fromNow = (minutes: number): string => (minutes <= -1 ? w.ago(writeDuration(-minutes)) : inTime(minutes))

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

/** Now, next and what follows; between them what else the plan has to say. */
function Work({
  deeds,
  now,
  style,
  children,
}: {
  readonly deeds: readonly Deed[]
  readonly now: number | null
  readonly style: Style
  readonly children: ComponentChildren
}): JSX.Element {
  const at = now ?? (deeds[0]?.step.at ?? 0) - 60
  const {now: due, next, later} = standing(deeds, at)
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
          <OneDeed deed={next} now={at} style={style} />
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

/** Where the hand and the reading voice go on once a button has gone with what it did. */
const toNow = (): void => document.getElementById('now')?.focus({preventScroll: true})

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

/** A deed this long past, min, may have been done in time and only not been ticked. */
const LATE = 10
/** What is drawn so long before its time, min, was more likely pressed by mistake. */
const SOON = 15
/** The log takes a time so much earlier than the row above it, min, as the next day's. */
const BACK = 240

/** Whether something can still be noted at a time before now. */
const notable = (at: number, now: number): boolean => now - at < BACK && Math.floor(at / 1440) === Math.floor(now / 1440)

interface Asked {
  readonly stem: string
  readonly title: string
  readonly set: number | null
}

function OneDeed({
  deed,
  now,
  style,
  main,
}: {
  readonly deed: Deed
  readonly now: number
  readonly style: Style
  readonly main?: boolean
}): JSX.Element {
  const {step} = deed
  const [asked, setAsked] = useState<Asked | null>(null)
  const each = (step.action === 'load' || step.action === 'draw') && deed.stems.length > 0
  const name = w.do[step.action] ?? step.action
  const late = moves(step.action) && now - step.at >= LATE && notable(step.at, now)
  const open = each
    ? deed.stems.flatMap((stem, i) => (deed.ticked[i] ? [] : [{stem, title: deed.titles[i] ?? stem, set: deed.unset[i] ?? null}]))
    : []
  const doubtful = ({set}: Asked): boolean => step.action === 'draw' && (set !== null || step.at - now > SOON)
  const put = async (
    stems: readonly (string | null)[],
    {at, set}: {readonly at?: number; readonly set?: number} = {},
  ): Promise<void> => {
    const off = step.action === 'draw' && at === undefined ? Math.round(now - step.at) : 0
    const by = Math.abs(off) >= 5 ? ` ${Math.abs(off)} min ${off > 0 ? 'late' : 'early'}` : ''
    const told = stems.flatMap((stem): Told[] => [
      ...(set === undefined ? [] : [{words: `${stem ?? ''} set in`, at: set}]),
      {words: `${noteOf(deed, stem)}${by}`, at: at ?? null},
    ])
    toNow()
    const answer = await app.note(told, {replan: moves(step.action)})
    if (!answer.ok) app.say([answer.reason, answer.suggest].filter(Boolean).join(': '))
  }
  /** Done now, or when it was to be done: for dishes, or for the step as a whole. */
  const buttons = (stems: readonly (string | null)[], shown: string, label: string): JSX.Element => {
    const then = w.doAt(name, clock(step.at, style))
    const whose = (what: string, of: string): string => (of === '' ? what : w.doFor(what, of))
    return (
      <>
        <Do kind={main ? 'huge' : 'plain'} onDo={() => void put(stems)} label={whose(late ? w.doNow(name) : name, label)}>
          {whose(late ? w.doNow(name) : name, shown)}
        </Do>
        {late ? (
          <Do onDo={() => void put(stems, {at: step.at})} label={whose(then, label)}>
            {whose(then, shown)}
          </Do>
        ) : null}
      </>
    )
  }
  const sure = open.filter((one) => !doubtful(one))
  const several = sure.length > 1
  return (
    <div class="deed">
      <p class="deed-say">
        <strong class="deed-time">{step.when ?? clock(step.at, style)}</strong>
        {main && now - step.at >= 1 ? <span class="overdue"> {w.ago(writeDuration(now - step.at))}</span> : null}{' '}
        <span lang={saidIn()}>{step.say}</span>
      </p>
      {step.sign ? (
        <p class="deed-sign" lang={saidIn()}>
          {step.sign}
        </p>
      ) : null}
      <div class="row">
        {each ? null : buttons([null], '', deed.titles.join(', '))}
        {sure.length === 0
          ? null
          : buttons(
              sure.map(({stem}) => stem),
              several ? w.all(sure.length) : deed.stems.length > 1 ? (sure[0]?.title ?? '') : '',
              sure.map(({title}) => title).join(', '),
            )}
        {open.map((one) =>
          doubtful(one) || several ? (
            <Do
              key={one.stem}
              onDo={() => (doubtful(one) ? setAsked(one) : void put([one.stem]))}
              label={w.doFor(name, one.title)}
            >
              {deed.stems.length > 1 ? w.doFor(name, one.title) : name}
            </Do>
          ) : null,
        )}
      </div>
      {asked ? (
        <Sure
          asked={asked}
          at={step.at}
          now={now}
          style={style}
          onYes={(set) => {
            setAsked(null)
            void put([asked.stem], set === null ? {} : {set})
          }}
          onNo={() => {
            setAsked(null)
            toNow()
          }}
        />
      ) : null}
      {main && (step.behind || step.ahead) ? (
        <Fold title={`${w.behind} / ${w.ahead}`}>
          {() => (
            <>
              {step.behind ? (
                <p>
                  <strong>{w.behind}</strong>: <span lang={saidIn()}>{step.behind}</span>
                </p>
              ) : null}
              {step.ahead ? (
                <p>
                  <strong>{w.ahead}</strong>: <span lang={saidIn()}>{step.ahead}</span>
                </p>
              ) : null}
            </>
          )}
        </Fold>
      ) : null}
    </div>
  )
}

/** Asks before a dish is noted as drawn that by the log is not in, or long before its time. A second press by mistake leaves all as it is. */
function Sure({
  asked,
  at,
  now,
  style,
  onYes,
  onNo,
}: {
  readonly asked: Asked
  readonly at: number
  readonly now: number
  readonly style: Style
  readonly onYes: (set: number | null) => void
  readonly onNo: () => void
}): JSX.Element {
  const {title, set} = asked
  const box = useRef<HTMLDivElement>(null)
  useEffect(() => box.current?.querySelector('button')?.focus({preventScroll: true}), [])
  const stated = set !== null && notable(set, now)
  return (
    <div class="care" role="alert" ref={box}>
      <p>{set === null ? w.tooSoon(title, clock(at, style), inTime(at - now)) : w.notTicked(title, clock(set, style))}</p>
      <div class="row">
        <Do onDo={onNo}>{w.leaveIt}</Do>
        <Do onDo={() => onYes(stated ? set : null)}>{stated && set !== null ? w.wasIn(clock(set, style)) : w.isOut}</Do>
      </div>
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

const kinds = ['arm', 'flour', 'floor', 'vault', 'air', 'paper', 'walls', 'spatter'] as const
type Kind = (typeof kinds)[number]

/** Write a reading or a sign down. */
function Readings({likes}: {readonly likes: Likes}): JSX.Element {
  const [kind, setKind] = useState<Kind | null>(null)
  const [doubt, setDoubt] = useState<{readonly text: string; readonly reason: string; readonly asked: boolean} | null>(null)
  const [free, setFree] = useState('')
  const note = async (text: string, anyway = false): Promise<void> => {
    const answer = await app.note(text, {anyway, replan: true})
    if (answer.ok) {
      // The form goes with the button that was pressed in it.
      if (kind !== null || anyway) document.getElementById('reading')?.focus({preventScroll: true})
      setDoubt(null)
      setKind(null)
      setFree('')
    } else setDoubt({text, reason: [answer.reason, answer.suggest].filter(Boolean).join(': '), asked: answer.doubt})
  }
  return (
    <section class="readings">
      <h2 id="reading" tabIndex={-1}>
        {w.reading}
      </h2>
      <div class="row kinds">
        {kinds.map((one) => (
          <Do
            key={one}
            pressed={kind === one}
            onDo={() => {
              setKind(kind === one ? null : one)
              setDoubt(null)
            }}
          >
            {w.kinds[one]}
          </Do>
        ))}
      </div>
      {kind === 'arm' ? <Arm likes={likes} onNote={note} /> : null}
      {kind === 'flour' ? <Flour onNote={note} /> : null}
      {kind === 'floor' || kind === 'vault' || kind === 'air' ? (
        <Degrees key={kind} kind={kind} scale={likes.showing.degrees} onNote={note} />
      ) : null}
      {kind === 'paper' || kind === 'walls' || kind === 'spatter' ? <Signs kind={kind} onNote={note} /> : null}
      {doubt ? (
        <div class="care" role="alert">
          <p>{doubt.reason}</p>
          {doubt.asked ? <Do onDo={() => void note(doubt.text, true)}>{w.doubtYes}</Do> : null}
        </div>
      ) : null}
      <form
        class="row"
        onSubmit={(event) => {
          event.preventDefault()
          if (free.trim()) void note(free.trim())
        }}
      >
        <Field label={w.noteAny} value={free} example={w.noteExample} onValue={setFree} />
        <button type="submit" class="do plain">
          {w.noteDo}
        </button>
      </form>
    </section>
  )
}

interface Noting {
  readonly onNote: (text: string) => Promise<void>
}

/** The arm count: a beep a second, the caution before it. */
function Arm({likes, onNote}: Noting & {readonly likes: Likes}): JSX.Element {
  const [count, setCount] = useState(0)
  const [running, setRunning] = useState(false)
  const [typed, setTyped] = useState('')
  const {sound, shake: shaking} = likes
  useEffect(() => {
    if (!running) return
    const from = performance.now()
    let told = 0
    const timer = setInterval(() => {
      const second = Math.floor((performance.now() - from) / 1000)
      if (second <= told) return
      told = second
      setCount(second)
      if (sound) play(second % 10 === 0 ? 'tenth' : 'second')
      if (shaking) shake([60])
      // No oven one bakes in lets an arm stay longer.
      if (second >= 90) setRunning(false)
    }, 50)
    return () => clearInterval(timer)
  }, [running, sound, shaking])
  return (
    <div class="tool">
      <div class="care">
        <strong>{armCaution.title}</strong>
        <p>{armCaution.harm}</p>
        <p>{armCaution.instead}</p>
      </div>
      <p class="hint">{w.armHint}</p>
      <p class="count" aria-live="off">
        {w.armCount(count)}
        <span class="unseen"> {w.armCounting}</span>
      </p>
      <div class="row">
        {running ? (
          <Do kind="huge" onDo={() => setRunning(false)}>
            {w.armStop}
          </Do>
        ) : (
          <Do
            kind="huge"
            onDo={() => {
              if (sound) allowSound(['second', 'tenth'])
              setCount(0)
              setRunning(true)
            }}
          >
            {w.armStart}
          </Do>
        )}
        {!running && count > 0 ? (
          <Do kind="huge" onDo={() => void onNote(`arm ${count}`)}>
            {w.armWrite(count)}
          </Do>
        ) : null}
      </div>
      {!running && count > 0 && count <= 10 ? <p>{w.armTooHot}</p> : null}
      <form
        class="row"
        onSubmit={(event) => {
          event.preventDefault()
          if (typed.trim()) void onNote(`arm ${typed.trim()}`)
        }}
      >
        <Field label={w.armTyped} mode="numeric" value={typed} onValue={setTyped} />
        <button type="submit" class="do plain">
          {w.write}
        </button>
      </form>
    </div>
  )
}

function Flour({onNote}: Noting): JSX.Element {
  const [from, setFrom] = useState<number | null>(null)
  const [seconds, setSeconds] = useState(0)
  useEffect(() => {
    if (from === null) return
    const timer = setInterval(() => setSeconds(Math.floor((performance.now() - from) / 1000)), 200)
    return () => clearInterval(timer)
  }, [from])
  return (
    <div class="tool">
      <p class="hint">{w.flourHint}</p>
      <p class="count">{w.flourTime(seconds)}</p>
      <Do
        kind="huge"
        onDo={() => {
          setSeconds(0)
          setFrom(performance.now())
        }}
      >
        {w.flourStart}
      </Do>
      <Signs kind="flour" onNote={(text) => onNote(from === null ? text : `${text}, after ${w.flourTime(seconds)}`)} />
    </div>
  )
}

function Signs({kind, onNote}: Noting & {readonly kind: Kind}): JSX.Element {
  return (
    <fieldset class="tool">
      <legend>{w.writeSign}</legend>
      <div class="row">
        {signs
          .filter((sign) => sign.kind === kind)
          .map((sign) => (
            <Do key={sign.id} kind="huge" onDo={() => void onNote(`${kind} ${sign.phrases[0]}`)}>
              {sign.phrases[0]}
            </Do>
          ))}
      </div>
    </fieldset>
  )
}

function Degrees({kind, scale: usual, onNote}: Noting & {readonly kind: Kind; readonly scale: Showing['degrees']}): JSX.Element {
  const [value, setValue] = useState('')
  const [scale, setScale] = useState<'C' | 'F'>(usual === 'F' ? 'F' : 'C')
  return (
    <form
      class="tool row"
      onSubmit={(event) => {
        event.preventDefault()
        if (value.trim()) void onNote(`${kind} ${value.trim()} °${scale}`)
      }}
    >
      <Field label={`${w.kinds[kind]}: ${w.degrees}`} mode="decimal" value={value} onValue={setValue} />
      <Choice label={w.scale} value={scale} options={[['C', '°C'] as const, ['F', '°F'] as const]} onValue={setScale} />
      <button type="submit" class="do huge">
        {w.write}
      </button>
    </form>
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
