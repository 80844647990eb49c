import {Fragment, type JSX} from 'preact'
import {useEffect, useRef, useState} from 'preact/hooks'
import {writeDuration} from '../measure/quantity.js'
import {clock} from '../sheets/figures.js'
import type {Style} from '../sheets/style.js'
import {inTime, saidIn, toNow} from './at-oven.js'
import {type Deed, moves, noteOf} from './deeds.js'
import {Do} from './parts.js'
import {Fold} from './slices.js'
import {app, type Told} from './state.js'
import {words} from './words.js'

const w = words.bake

/** A deed this long past, min, may have been done in time and only not been ticked. */
const LATE = 10
/** What is drawn so long before its time, min, was more likely pressed by mistake. */
const SOON = 15
/** How far from its time a dish is drawn that had to bake so long, or was done so soon, min: more is a draw put off, or brought forward. */
const OFF = {least: 5, most: 240} as const

interface Asked {
  /** Null: the fire's. */
  readonly stem: string | null
  readonly title: string
  /** When it was to be set in, or lit, that is not ticked so. */
  readonly set: number | null
}

/** A step of the day with the buttons that note it. */
export function OneDeed({
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
  const language = step.language ?? saidIn()
  const [asked, setAsked] = useState<Asked | null>(null)
  const each = (step.action === 'load' || step.action === 'draw') && deed.stems.length > 0
  const name = w.do[step.action] ?? step.action
  const late = moves(step.action) && now - step.at >= LATE
  const open = each
    ? deed.stems.flatMap((stem, i) => (deed.ticked[i] ? [] : [{stem, title: deed.titles[i] ?? stem, set: deed.unset[i] ?? null}]))
    : []
  const doubtful = ({set}: Asked): boolean => step.action === 'draw' && (set !== null || step.at - now > SOON)
  const off = step.action === 'draw' ? Math.round(now - step.at) : 0
  const put = async (
    stems: readonly (string | null)[],
    {at, set, longer = false}: {readonly at?: number; readonly set?: number; readonly longer?: boolean} = {},
  ): Promise<void> => {
    // What was drawn late may only have waited for the hands: that it had to bake so long is for the cook to say.
    const early = at === undefined && -off >= OFF.least && -off <= SOON
    const by = longer ? ` ${off} min late` : early ? ` ${-off} min early` : ''
    const told = stems.flatMap((stem): Told[] => [
      ...(set === undefined ? [] : [{words: stem === null ? 'lit again' : `${stem} set in`, at: set}]),
      {words: `${noteOf(deed, stem)}${by}`, at: at ?? null},
    ])
    toNow()
    const answer = await app.note(told, {replan: moves(step.action)})
    if (!answer.ok) app.say([answer.reason, answer.suggest].filter(Boolean).join(': '))
  }
  /** Done now, or when it was to be done: for dishes, or for the step as a whole. */
  const buttons = (stems: readonly (string | null)[], shown: string, label: string, large = main === true): JSX.Element => {
    const then = w.doAt(name, clock(step.at, style))
    const whose = (what: string, of: string): string => (of === '' ? what : w.doFor(what, of))
    // A name that is read out begins with the words that are seen (WCAG 2.2, 2.5.3).
    const called = (what: string): string =>
      shown === '' ? whose(what, label) : shown === label ? whose(what, shown) : w.doAll(whose(what, shown), label)
    return (
      <>
        <Do kind={large ? 'huge' : 'plain'} onDo={() => void put(stems)} label={called(late ? w.doNow(name) : name)}>
          {whose(late ? w.doNow(name) : name, shown)}
        </Do>
        {late ? (
          <Do onDo={() => void put(stems, {at: step.at})} label={called(then)}>
            {whose(then, shown)}
          </Do>
        ) : null}
      </>
    )
  }
  const fire: Asked | null =
    step.action === 'rake' && deed.unset[0] != null ? {stem: null, title: w.theFire, set: deed.unset[0]} : null
  const sure = open.filter((one) => !doubtful(one))
  const several = sure.length > 1
  return (
    <div class="deed">
      <p class="deed-say">
        <strong class="deed-time">{step.when ?? clock(step.at, style)}</strong>
        {main && now - step.at >= 1 ? <span class="overdue"> {w.ago(writeDuration(now - step.at))}</span> : null}{' '}
        <span lang={language}>{step.say}</span>
      </p>
      {step.sign ? (
        <p class="deed-sign" lang={language}>
          {step.sign}
        </p>
      ) : null}
      <div class="row">
        {each ? null : fire ? (
          <Do kind={main ? 'huge' : 'plain'} onDo={() => setAsked(fire)}>
            {name}
          </Do>
        ) : (
          buttons([null], '', deed.titles.join(', '))
        )}
        {sure.length === 0
          ? null
          : buttons(
              sure.map(({stem}) => stem),
              several ? w.all(sure.length) : deed.stems.length > 1 ? (sure[0]?.title ?? '') : '',
              sure.map(({title}) => title).join(', '),
            )}
        {open.map((one) =>
          doubtful(one) ? (
            <Do key={one.stem} onDo={() => setAsked(one)} label={w.doFor(name, one.title)}>
              {deed.stems.length > 1 ? w.doFor(name, one.title) : name}
            </Do>
          ) : several ? (
            <Fragment key={one.stem}>{buttons([one.stem], one.title, one.title, false)}</Fragment>
          ) : null,
        )}
      </div>
      {asked ? (
        <Sure
          asked={asked}
          at={step.at}
          now={now}
          style={style}
          late={late}
          onYes={(set, then) => {
            setAsked(null)
            void put([asked.stem], {...(set === null ? {} : {set}), ...(then === undefined ? {} : {at: then})})
          }}
          onNo={() => {
            setAsked(null)
            toNow()
          }}
        />
      ) : null}
      {sure.length > 0 && off >= OFF.least && off < OFF.most ? (
        <Fold title={w.longer}>
          {() => (
            <>
              <p class="hint">{w.longerHint}</p>
              <div class="row">
                {sure.map(({stem, title}) => (
                  <Do key={stem} onDo={() => void put([stem], {longer: true})}>
                    {w.neededMore(title, off)}
                  </Do>
                ))}
              </div>
            </>
          )}
        </Fold>
      ) : null}
      {main && (step.behind || step.ahead) ? (
        <Fold title={`${w.behind} / ${w.ahead}`}>
          {() => (
            <>
              {step.behind ? (
                <p>
                  <strong>{w.behind}</strong>: <span lang={language}>{step.behind}</span>
                </p>
              ) : null}
              {step.ahead ? (
                <p>
                  <strong>{w.ahead}</strong>: <span lang={language}>{step.ahead}</span>
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
  late,
  onYes,
  onNo,
}: {
  readonly asked: Asked
  readonly at: number
  readonly now: number
  readonly style: Style
  /** It was due so long ago that it may have been done then. */
  readonly late: boolean
  readonly onYes: (set: number | null, at?: number) => void
  readonly onNo: () => void
}): JSX.Element {
  const {title, set} = asked
  const box = useRef<HTMLDivElement>(null)
  useEffect(() => box.current?.querySelector('button')?.focus({preventScroll: true}), [])
  const fire = asked.stem === null
  return (
    <div class="care" role="alert" ref={box}>
      <p>
        {set === null
          ? w.tooSoon(title, clock(at, style), inTime(at - now))
          : fire
            ? w.notLit(clock(set, style))
            : w.notTicked(title, clock(set, style))}
      </p>
      <div class="row">
        <Do onDo={onNo}>{w.leaveIt}</Do>
        <Do onDo={() => onYes(set)}>
          {set === null ? w.isOut : fire ? w.wasLit(clock(set, style)) : w.wasIn(clock(set, style))}
        </Do>
        {late && set !== null ? (
          <Do onDo={() => onYes(set, at)}>{(fire ? w.wasLitAndRaked : w.wasInAndOut)(clock(set, style), clock(at, style))}</Do>
        ) : null}
      </div>
    </div>
  )
}
