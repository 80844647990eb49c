import type {JSX} from 'preact'
import {useEffect, useState} from 'preact/hooks'
import {armCaution, signs} from '../lexicon/signs.js'
import {allowSound, sound as play, shake} from './alarms.js'
import {DRAFT, store, stored} from './device.js'
import {Choice, Do, Field} from './parts.js'
import type {Showing} from './protocol.js'
import {app, type Likes} from './state.js'
import {words} from './words.js'

const w = words.bake

const kinds = ['arm', 'flour', 'floor', 'vault', 'air', 'paper', 'walls', 'spatter'] as const
export type Kind = (typeof kinds)[number]

/** A note of a day that was begun and not put down. */
function draftOf(day: string): string {
  try {
    const kept = JSON.parse(stored(DRAFT) || '{}') as {day?: unknown; text?: unknown}
    return kept.day === day && typeof kept.text === 'string' ? kept.text : ''
  } catch {
    return ''
  }
}

/** Write a reading or a sign down. */
export function Readings({likes, day}: {readonly likes: Likes; readonly day: string}): JSX.Element {
  const [kind, setKind] = useState<Kind | null>(null)
  const [doubt, setDoubt] = useState<{readonly text: string; readonly reason: string; readonly asked: boolean} | null>(null)
  const [free, setFree] = useState(() => draftOf(day))
  // What is half typed is there again after a look at the plan, or when the page is opened again.
  const write = (text: string): void => {
    setFree(text)
    store(DRAFT, text === '' ? '' : JSON.stringify({day, text}))
  }
  const note = async (text: string, anyway = false): Promise<void> => {
    const answer = await app.note(text, {anyway, replan: true})
    if (answer.ok) {
      // The form goes with the button that was pressed in it.
      if (kind !== null || anyway) document.getElementById('reading')?.focus({preventScroll: true})
      setDoubt(null)
      setKind(null)
      if (text === free.trim()) write('')
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
        <Field label={w.noteAny} value={free} example={w.noteExample} onValue={write} />
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
