import {scaleLinear} from 'd3-scale'
import {area, line} from 'd3-shape'
import type {Element} from 'hast'
import {s} from 'hastscript'
import type {Forecast} from '../oven/types.js'
import {clock, fahrenheit, temperatures, timeOfDay} from './figures.js'
import {bands, type ChartData, shortened, valueAt} from './heat-data.js'
import type {Style} from './style.js'
import {say} from './words/index.js'

/** What the chart is told beside the forecast and its data. */
export interface HeatChartOptions {
  readonly style: Style
  /** Makes the ids of the drawing its own where several stand on one page. */
  readonly id?: string
}

const size = {width: 960, left: 104, right: 100, top: 30, curve: 330, bar: 26, foot: 50}

/**
 * The falling curve with its range, the four bands by name, every dish as a bar from set-in to draw with the range of its draw, the
 * openings of the door and the readings. Told apart by line and hatching, never by colour.
 */
export function heatChart(forecast: Forecast, data: ChartData, options: HeatChartOptions): Element {
  const {style} = options
  const {words} = style
  const id = options.id ?? 'heat'
  const fires = data.fires ?? [{lit: data.lit, raked: data.raked, ready: data.ready}]
  const start = Math.min(data.lit, ...fires.map((fire) => fire.lit))
  const at = (values: readonly number[], minute: number): number => valueAt(values, forecast.step, data.lit, minute)
  const samples: number[] = []
  for (let minute = data.raked; minute < data.until; minute += forecast.step) samples.push(minute)
  samples.push(data.until)
  const burning = (minute: number): boolean => fires.slice(1).some((fire) => minute > fire.lit && minute < fire.raked)
  const shown = samples.map((minute) => ({
    minute,
    low: at(forecast.baking.low, minute),
    likely: at(forecast.baking.likely, minute),
    high: at(forecast.baking.high, minute),
    dark: burning(minute),
  }))
  // Scaled to the heat one bakes in: what is hotter before the soak ends runs out of the top.
  const afterSoak = Math.max(260, ...fires.map((fire) => at(forecast.baking.likely, fire.ready)))
  const top = Math.ceil((afterSoak + 25) / 50) * 50
  const lowest = Math.min(80, ...shown.filter(({dark}) => !dark).map(({low}) => low))
  const bottom = Math.max(0, Math.floor(lowest / 50) * 50)
  const x = scaleLinear([start, data.until], [size.left, size.width - size.right])
  const y = scaleLinear([bottom, top], [size.top + size.curve, size.top])
  const barTop = size.top + size.curve + size.foot
  const height = barTop + Math.max(1, data.bars.length) * size.bar + 16
  const edge = size.width - size.right
  const base = size.top + size.curve
  const inRange = (celsius: number): number => Math.min(top, Math.max(bottom, celsius))

  const range = area<(typeof shown)[number]>()
    .x((d) => x(d.minute))
    .y0((d) => y(d.low))
    .y1((d) => y(d.high))
    .defined((d) => !d.dark)
  const likely = line<(typeof shown)[number]>()
    .x((d) => x(d.minute))
    .y((d) => y(d.likely))
    .defined((d) => !d.dark)

  const halo = {stroke: '#fff', strokeWidth: 4, strokeLineJoin: 'round', paintOrder: 'stroke'}
  const every = [1, 2, 3, 4, 6, 12].find((hours) => x(hours * 60) - x(0) >= 68) ?? 24
  const ticks: Element[] = []
  for (let hour = Math.ceil(start / 60); hour * 60 <= data.until; hour++) {
    if (hour % every !== 0) continue
    const at = x(hour * 60)
    ticks.push(
      s('g', {dataMinutes: String(hour * 60)}, [
        s('line', {x1: at, x2: at, y1: base, y2: base + 7, stroke: '#000', strokeWidth: 1.5}),
        s('text', {x: at, y: base + 23, textAnchor: 'middle', fontSize: 14}, timeOfDay(hour * 60, style).replace(':00', '')),
        ...(hour > 0 && hour % 24 === 0
          ? [s('text', {x: at, y: base + 38, textAnchor: 'middle', fontSize: 12, fontStyle: 'italic'}, words['chart.next'])]
          : []),
      ]),
    )
  }
  const inF = style.degrees === 'F'
  const degreeTicks = y
    .ticks(6)
    .map((celsius) =>
      s('g', {dataCelsius: String(celsius)}, [
        s('line', {x1: size.left - 6, x2: size.left, y1: y(celsius), y2: y(celsius), stroke: '#000'}),
        s(
          'text',
          {x: size.left - 10, y: y(celsius) + 5, textAnchor: 'end', fontSize: 14},
          String(Math.round(inF ? fahrenheit(celsius) : celsius)),
        ),
        ...(style.degrees === 'both'
          ? [s('text', {x: 44, y: y(celsius) + 5, textAnchor: 'end', fontSize: 14}, String(Math.round(fahrenheit(celsius))))]
          : []),
      ]),
    )
  const bandMarks = bands.flatMap(({band, low, high}) => {
    const [above, below] = [y(Math.min(high, top)), y(Math.max(low, bottom))]
    if (low >= top || high <= bottom) return []
    return [
      s('g', {dataBand: band, dataLow: String(low), dataHigh: String(high)}, [
        s('line', {x1: size.left, x2: edge + 8, y1: below, y2: below, stroke: '#000', strokeWidth: 0.8, strokeDashArray: [2, 4]}),
        s('text', {x: edge + 12, y: (above + below) / 2 + 5, fontSize: 16, fontStyle: 'italic'}, words[`band.${band}`]),
      ]),
    ]
  })
  const topBand = y(Math.min(260, top))
  const fireMarks = fires.flatMap((fire) => [
    s('g', {dataFire: String(fire.lit)}, [
      s('rect', {
        x: x(fire.lit),
        y: size.top,
        width: Math.max(0, x(fire.raked) - x(fire.lit)),
        height: size.curve,
        fill: `url(#${id}-fire)`,
        stroke: '#000',
        strokeWidth: 1,
      }),
      label((x(fire.lit) + x(fire.raked)) / 2, base - 12, words['chart.fire'], halo),
      s('line', {
        x1: x(fire.ready),
        x2: x(fire.ready),
        y1: size.top,
        y2: base,
        stroke: '#000',
        strokeWidth: 1,
        strokeDashArray: [7, 3],
      }),
      label(x(fire.ready) + 4, size.top - 8, `${words['chart.ready']} ${timeOfDay(fire.ready, style)}`, halo, 'start'),
    ]),
  ])
  const doors = data.openings.map((minute) =>
    s('path', {dataOpening: String(minute), d: `M${x(minute) - 5},${base - 12}h10l-5,12z`, fill: '#000'}),
  )
  const readings = data.readings.map((reading) =>
    s('g', {dataReading: String(reading.at), dataCelsius: String(reading.celsius), dataKind: reading.kind}, [
      s('circle', {cx: x(reading.at), cy: y(inRange(reading.celsius)), r: 7, fill: '#fff', stroke: '#000', strokeWidth: 2}),
      s(
        'text',
        {x: x(reading.at), y: y(inRange(reading.celsius)) + 4, textAnchor: 'middle', fontSize: 11, fontWeight: 'bold'},
        words[`reading.${reading.kind}`].slice(0, 1).toUpperCase(),
      ),
    ]),
  )
  const bars = data.bars.map((bar, i) => {
    const row = barTop + i * size.bar
    const [from, to] = [x(Math.max(start, bar.from)), x(Math.min(data.until, bar.to))]
    const [low, high] = [x(Math.min(data.until, bar.drawLow)), x(Math.min(data.until, bar.drawHigh))]
    const after = Math.max(to, high) + 8
    const beside = named(bar.label, {left: from - 8, after, width: size.width}, to - from)
    return s('g', {dataBar: String(bar.number), dataFrom: String(bar.from), dataTo: String(bar.to)}, [
      s('line', {x1: from, x2: from, y1: base, y2: row + 3, stroke: '#000', strokeWidth: 0.5, strokeDashArray: [1, 4]}),
      s('rect', {
        x: from,
        y: row + 3,
        width: Math.max(3, to - from),
        height: size.bar - 10,
        fill: `url(#${id}-dish)`,
        stroke: '#000',
        strokeWidth: 2,
      }),
      s('path', {
        d: `M${low},${row + 1}v${size.bar - 6}M${low},${row + size.bar / 2 - 2}H${high}M${high},${row + 1}v${size.bar - 6}`,
        fill: 'none',
        stroke: '#000',
        strokeWidth: 1.5,
      }),
      beside.side === 'left'
        ? label(from - 8, row + 17, beside.text, halo, 'end')
        : beside.side === 'on'
          ? label((from + to) / 2, row + 17, beside.text, halo)
          : label(after, row + 17, beside.text, halo, 'start'),
    ])
  })
  const heatAt = (minute: number): string => {
    const celsius = at(forecast.baking.likely, minute)
    return temperatures({low: celsius, high: celsius}, style)
  }
  const description = [
    say(words, 'chart.desc', {ready: clock(data.ready, style), hot: heatAt(data.ready)}),
    ...fires.slice(1).map(({ready}) => say(words, 'chart.descAgain', {ready: clock(ready, style), hot: heatAt(ready)})),
    say(words, 'chart.descEnd', {cool: heatAt(data.until), end: clock(data.until, style)}),
  ].join(' ')
  return s(
    'svg',
    {
      viewBox: `0 0 ${size.width} ${height}`,
      role: 'img',
      ariaLabelledBy: `${id}-title ${id}-desc`,
      fontFamily: "'Liberation Sans', 'Helvetica Neue', Arial, sans-serif",
      xmlns: 'http://www.w3.org/2000/svg',
    },
    [
      s('title', {id: `${id}-title`}, words['chart.title']),
      s('desc', {id: `${id}-desc`}, description),
      s('defs', [
        s('clipPath', {id: `${id}-frame`}, [s('rect', {x: size.left, y: size.top, width: edge - size.left, height: size.curve})]),
        s('pattern', {id: `${id}-fire`, width: 7, height: 7, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(45)'}, [
          s('line', {x1: 0, x2: 0, y1: 0, y2: 7, stroke: '#000', strokeWidth: 1.6}),
        ]),
        s('pattern', {id: `${id}-dish`, width: 6, height: 6, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(-45)'}, [
          s('line', {x1: 0, x2: 0, y1: 0, y2: 6, stroke: '#000', strokeWidth: 0.9}),
        ]),
      ]),
      s('rect', {x: 0, y: 0, width: size.width, height, fill: '#fff'}),
      ...bandMarks,
      s('line', {
        x1: size.left,
        x2: edge + 8,
        y1: topBand,
        y2: topBand,
        stroke: '#000',
        strokeWidth: 0.8,
        strokeDashArray: [2, 4],
      }),
      s('path', {d: range(shown) ?? '', fill: '#000', fillOpacity: 0.16, clipPath: `url(#${id}-frame)`, dataCurve: 'range'}),
      s('path', {
        d: likely(shown) ?? '',
        fill: 'none',
        stroke: '#000',
        strokeWidth: 3.2,
        clipPath: `url(#${id}-frame)`,
        dataCurve: 'likely',
      }),
      ...fireMarks,
      s('line', {x1: size.left, x2: size.left, y1: size.top, y2: base, stroke: '#000', strokeWidth: 1.5}),
      s('line', {x1: size.left, x2: edge, y1: base, y2: base, stroke: '#000', strokeWidth: 1.5}),
      s('text', {x: size.left - 10, y: size.top - 12, textAnchor: 'end', fontSize: 14, fontWeight: 'bold'}, inF ? '°F' : '°C'),
      ...(style.degrees === 'both'
        ? [s('text', {x: 44, y: size.top - 12, textAnchor: 'end', fontSize: 14, fontWeight: 'bold'}, '°F')]
        : []),
      ...degreeTicks,
      ...ticks,
      ...doors,
      ...readings,
      ...bars,
    ],
  )
}

/** About what a letter of 14 px takes of a line, px. */
const LETTER = 7.6

/**
 * Where a dish's name stands by its bar: after it, before it or, where the bar leaves no room on either side, on it. A name too long for
 * the most room there is loses its end; its number leads to the whole name in the table.
 *
 * @param edges px: where the room before the bar ends, where the room after it begins, and how wide the drawing is
 * @param long the bar's own length, px
 */
function named(
  text: string,
  edges: {readonly left: number; readonly after: number; readonly width: number},
  long: number,
): {readonly side: 'left' | 'on' | 'after'; readonly text: string} {
  const room = {after: edges.width - edges.after, left: edges.left - 8, on: long}
  const fits = (['after', 'left'] as const).find((side) => text.length * LETTER <= room[side])
  if (fits) return {side: fits, text}
  const side = (['on', 'after', 'left'] as const).reduce((best, one) => (room[one] > room[best] ? one : best))
  return {side, text: shortened(text, Math.floor(room[side] / LETTER))}
}

function label(
  x: number,
  y: number,
  text: string,
  halo: Readonly<Record<string, string | number>>,
  textAnchor = 'middle',
): Element {
  return s('text', {x, y, textAnchor, fontSize: 14, ...halo}, text)
}
