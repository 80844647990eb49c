import type {Forecast} from '../oven/types.js'
import {fahrenheit, temperatures, timeOfDay} from './figures.js'
import {type Bar, bands, type FireMark, type ReadingMark, shortened, valueAt} from './heat-data.js'
import {plainStyle, type Style} from './style.js'
import {hanging} from './text.js'
import {say} from './words/index.js'

/** What the terminal chart is told beside the forecast. Times in minutes after midnight. */
export interface HeatChartTextOptions {
  /** When the fire is lit: time 0 of the forecast. */
  readonly lit: number
  /** The day's fires, one after another; the forecast's own by default. */
  readonly fires?: readonly FireMark[]
  /** Where the chart ends; the end of the forecast by default. */
  readonly until?: number
  readonly bars?: readonly Bar[]
  readonly openings?: readonly number[]
  readonly readings?: readonly ReadingMark[]
  readonly style?: Style
  readonly width?: number
  readonly height?: number
}

/**
 * The falling curve in characters: `*` the likely baking heat, `:` the range it may be in, `o` a reading, `|` an opening of the door;
 * the bands' names stand at the right. Under it a bar for each dish from set-in to draw.
 */
export function heatChartText(forecast: Forecast, options: HeatChartTextOptions): string {
  const style = options.style ?? plainStyle
  const width = options.width ?? 80
  const height = options.height ?? 16
  const {words} = style
  const gutter = 6
  const names = 10
  const plot = width - gutter - names
  const fires = options.fires ?? [{lit: options.lit, raked: options.lit + forecast.raked, ready: options.lit + forecast.ready}]
  // Nothing bakes beside a fire.
  const burning = (minute: number): boolean => fires.slice(1).some((fire) => minute > fire.lit && minute < fire.raked)
  const last = options.lit + (forecast.baking.likely.length - 1) * forecast.step
  const until = Math.min(options.until ?? last, last)
  const from = options.lit + forecast.raked
  const at = (values: readonly number[], minute: number): number => valueAt(values, forecast.step, options.lit, minute)
  const hottest = Math.max(...fires.map(({ready}) => at(forecast.baking.high, ready)))
  const top = Math.ceil((hottest + 10) / 20) * 20
  const rowOf = (celsius: number): number => Math.round(((top - celsius) / (top - 40)) * (height - 1))
  const columnOf = (minute: number): number => Math.round(((minute - from) / Math.max(1, until - from)) * (plot - 1))
  const grid = Array.from({length: height}, () => Array.from({length: plot}, () => ' '))
  const put = (row: number, column: number, mark: string): void => {
    if (row >= 0 && row < height && column >= 0 && column < plot) grid[row]![column] = mark
  }
  for (let column = 0; column < plot; column++) {
    const minute = from + (column / (plot - 1)) * (until - from)
    if (burning(minute)) continue
    const [low, likely, high] = [
      at(forecast.baking.low, minute),
      at(forecast.baking.likely, minute),
      at(forecast.baking.high, minute),
    ]
    for (let row = Math.max(0, rowOf(high)); row <= Math.min(height - 1, rowOf(low)); row++) put(row, column, ':')
    put(rowOf(likely), column, '*')
  }
  for (const opening of options.openings ?? []) put(height - 1, columnOf(opening), '|')
  for (const reading of options.readings ?? []) put(rowOf(reading.celsius), columnOf(reading.at), 'o')

  const degree = style.degrees === 'F' ? '°F' : '°C'
  const shown = (celsius: number): string => String(Math.round(style.degrees === 'F' ? fahrenheit(celsius) : celsius))
  const lines = [`${degree.padStart(gutter - 1)} `]
  const bandRows = new Map(bands.map(({band, low, high}) => [rowOf((low + high) / 2), words[`band.${band}`]]))
  grid.forEach((cells, row) => {
    const celsius = top - (row / (height - 1)) * (top - 40)
    const label = row % 3 === 0 ? shown(celsius) : ''
    lines.push(`${label.padStart(gutter - 1)} ${cells.join('')} ${bandRows.get(row) ?? ''}`.trimEnd())
  })
  const axis = Array.from({length: plot}, () => '-')
  const labels = Array.from({length: plot + names}, () => ' ')
  const every = [1, 2, 3, 4, 6, 12].find((hours) => (until - from) / (hours * 60) <= plot / 10) ?? 24
  for (let hour = Math.ceil(from / 60); hour * 60 <= until; hour++) {
    if (hour % every !== 0) continue
    const column = columnOf(hour * 60)
    axis[column] = '+'
    const label = timeOfDay(hour * 60, style)
      .replace(':00', '')
      .replace(/^12 (noon|midnight)$/, '12')
    if (column + label.length < labels.length) for (let i = 0; i < label.length; i++) labels[column + i] = label[i]!
  }
  lines.push(' '.repeat(gutter) + axis.join(''), ' '.repeat(gutter) + labels.join('').trimEnd())
  for (const bar of options.bars ?? []) {
    const [start, end] = [Math.max(0, columnOf(bar.from)), Math.min(plot - 1, columnOf(bar.to))]
    const inner = Math.max(0, end - start - 1)
    const fits = bar.label.length + 2 <= inner
    const strip = `${' '.repeat(start)}[${fits ? ` ${bar.label} `.padEnd(inner, '=') : '='.repeat(inner)}]`
    const room = width - gutter - strip.length - 1
    if (fits) lines.push(`${' '.repeat(gutter)}${strip}`)
    else if (bar.label.length <= room) lines.push(`${' '.repeat(gutter)}${strip} ${bar.label}`)
    else {
      const label = shortened(bar.label, Math.max(0, start - 1))
      lines.push(`${' '.repeat(gutter)}${`${label} `.padStart(start)}${strip.slice(start)}`)
    }
  }
  const marks = [`* ${words['chart.baking']}`, `: ${words['chart.range']}`]
  if (options.openings?.length) marks.push(`| ${words['chart.door']}`)
  if (options.readings?.length) marks.push(`o ${words['chart.reading']}`)
  lines.push('', ...hanging(' '.repeat(gutter), marks.join('   '), width))
  lines.push(
    ...hanging(
      ' '.repeat(gutter),
      bands.map(({band, low, high}) => `${words[`band.${band}`]} ${temperatures({low, high}, style)}`).join('; '),
      width,
    ),
  )
  const said = fires.map(({ready}, i) =>
    say(words, i === 0 ? 'chart.said' : 'chart.saidAgain', {
      ready: timeOfDay(ready, style),
      hot: temperatures({low: at(forecast.baking.low, ready), high: at(forecast.baking.high, ready)}, style),
    }),
  )
  lines.push(...hanging(' '.repeat(gutter), said.join(' '), width))
  return `${lines.join('\n')}\n`
}
