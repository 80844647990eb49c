import type {Range} from '../lexicon/schema.js'
import {writeDuration} from '../measure/quantity.js'
import type {BandWindow, OvenAnswers} from '../oven/answers.js'
import type {OvenSpec} from '../oven/types.js'
import {durations, number, temperature, temperatures, toFive, wood} from './figures.js'
import {heatChartText} from './heat-chart-text.js'
import {bands, type ReadingMark} from './heat-data.js'
import {inWords} from './said.js'
import {plainStyle, type Style} from './style.js'
import {bold, hanging, markdownText, printable} from './text.js'
import {say, type WordKey} from './words/index.js'

/** What is said of an oven. */
export interface OvenView {
  readonly oven: OvenSpec
  readonly answers: OvenAnswers
  /** What past firings taught, in plain sentences; empty where there is no log. */
  readonly learnt: readonly string[]
  /** Past readings on the chart, minutes from lighting. */
  readonly readings?: readonly ReadingMark[]
}

export interface OvenTextOptions {
  readonly style?: Style
  readonly colour?: boolean
  readonly width?: number
}

interface Part {
  readonly key: WordKey | null
  readonly lines: readonly string[]
}

const woods = (range: Range, style: Style): string =>
  say(style.words, 'range.to', {low: wood(range.low, style), high: wood(range.high, style)})

/** The answers as parts, each a heading and its lines, for text and Markdown alike. */
function parts({oven, answers, learnt}: OvenView, style: Style): Part[] {
  const {words} = style
  const {facts, firing, forecast} = answers
  const raked = forecast.raked
  const after = (minutes: number): string => writeDuration(toFive(minutes - raked))
  const span = (window: {readonly from: number; readonly to: number} | null): string =>
    window === null
      ? words['oven.window.never']
      : say(words, 'oven.window.span', {from: after(window.from), to: after(window.to)})
  const window = (w: BandWindow): string[] => {
    const band = bands.find((b) => b.band === w.band)!
    const named = {band: words[`band.${w.band}`], heat: temperatures(band, style)}
    if (w.from === null || w.to === null) return [say(words, 'oven.window.none', named)]
    const to = w.open ? say(words, 'oven.window.open', {to: after(w.to)}) : after(w.to)
    const line = say(words, 'oven.window', {...named, from: after(w.from), to})
    return [`${line} (${say(words, 'oven.window.range', {low: span(w.low), high: span(w.high)})})`]
  }
  const ready = Math.round(forecast.ready / forecast.step)
  const heat = temperatures({low: forecast.baking.low[ready] ?? 0, high: forecast.baking.high[ready] ?? 0}, style)
  const more = (now: number, then: number): string => {
    const gain = toFive(then - now)
    return gain === 0
      ? words['oven.change.same']
      : say(words, gain > 0 ? 'oven.change.more' : 'oven.change.less', {time: writeDuration(Math.abs(gain))})
  }
  const slack = answers.slack.minutes
  return [
    {
      key: null,
      lines: [
        say(words, 'oven.floor', {
          area: number(facts.floorArea, 2, style),
          shape: words[`oven.shape.${oven.floor.shape}`],
          vault: number(facts.vaultArea, 2, style),
          volume: number(facts.volume, 2, style),
          mass: number(Math.round(facts.hotMass / 10) * 10, 0, style),
        }),
        say(words, 'oven.usual', {
          wood: wood(firing.wood, style),
          burn: writeDuration(firing.burn),
          soak: writeDuration(firing.soak),
          heat,
        }),
        say(words, 'oven.held', {
          held: number(facts.held, 0, style),
          hours: number(facts.timeConstant, facts.timeConstant < 10 ? 1 : 0, style),
        }),
      ],
    },
    {key: 'oven.windows', lines: [...answers.windows.flatMap(window), words['oven.times']]},
    {
      key: 'oven.starts',
      lines: answers.starts.map(({celsius, fire}) =>
        fire.possible
          ? `${say(words, 'oven.start', {heat: temperature(celsius, style), wood: wood(fire.firing.wood, style), burn: writeDuration(toFive(fire.firing.burn))})} (${say(
              words,
              'oven.start.range',
              {
                wood: woods(fire.wood, style),
                burn: durations({low: toFive(fire.burn.low), high: toFive(fire.burn.high)}, style),
              },
            )})`
          : say(words, 'oven.start.cannot', {heat: temperature(celsius, style)}),
      ),
    },
    {
      key: 'oven.night',
      lines: [
        say(words, 'oven.night.morning', {heat: temperatures(answers.slack.morning, style)}),
        ...(slack === null
          ? []
          : [
              say(words, answers.slack.atLeast ? 'oven.night.slackAtLeast' : 'oven.night.slack', {
                time: writeDuration(toFive(slack)),
              }),
            ]),
      ],
    },
    {
      key: 'oven.cold',
      lines: [
        say(words, 'oven.cold.cold', {
          heat: temperature(answers.cold.warmCelsius, style),
          wood: wood(answers.cold.wood, style),
          burn: writeDuration(toFive(answers.cold.burn)),
          start: temperature(230, style),
        }),
        say(words, 'oven.cold.damp', {
          wood: wood(answers.damp.wood, style),
          burn: writeDuration(toFive(answers.damp.burn)),
        }),
      ],
    },
    {
      key: 'oven.changes',
      lines: answers.changes.map((change) =>
        say(words, 'oven.change', {
          what: words[`oven.change.${change.id}`],
          readyNow: temperature(change.ready.now, style),
          readyThen: temperature(change.ready.changed, style),
          nightNow: temperature(change.overnight.now, style),
          nightThen: temperature(change.overnight.changed, style),
          baking: more(change.baking.now, change.baking.changed),
        }),
      ),
    },
    {key: 'oven.learnt', lines: learnt.length > 0 ? learnt.map((line) => inWords(line, style)) : [words['oven.learnt.none']]},
  ]
}

/** The oven's answers for a terminal, with its heat chart. */
export function ovenText(view: OvenView, options: OvenTextOptions = {}): string {
  const style = options.style ?? plainStyle
  const width = options.width ?? 80
  const colour = options.colour ?? false
  const title = printable(view.oven.name)
  const out = [bold(title, colour), '='.repeat(Math.min(width, Math.max(3, title.length)))]
  for (const part of parts(view, style)) {
    if (part.key !== null) {
      const head = style.words[part.key]
      out.push('', bold(head, colour), '-'.repeat(head.length))
    }
    for (const line of part.lines) out.push(...(part.key === null ? hanging('', line, width) : hanging('  ', line, width)))
  }
  out.push('', ...hanging('  ! ', style.words['safety.short.arm'], width))
  out.push('', heatChartText(view.answers.forecast, {lit: 0, style: elapsed(style), width, readings: view.readings ?? []}))
  return `${out.join('\n')}\n`
}

/** The oven's answers as Markdown. */
export function ovenMarkdown(view: OvenView, options: OvenTextOptions = {}): string {
  const style = options.style ?? plainStyle
  const out = [`# ${markdownText(view.oven.name)}`, '']
  for (const part of parts(view, style)) {
    if (part.key !== null) out.push(`## ${style.words[part.key]}`, '')
    for (const line of part.lines) out.push(part.key === null ? `${markdownText(line)}\n` : `- ${markdownText(line)}`)
    out.push('')
  }
  return `${out.join('\n').trimEnd()}\n`
}

/** Hours since lighting read as a clock of their own: 24-hour figures, so that nothing looks like an hour of the day. */
function elapsed(style: Style): Style {
  return {...style, clock: 24}
}
