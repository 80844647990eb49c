import type {Element, ElementContent} from 'hast'
import {describe, expect, it} from 'vitest'
import {floorMap} from '../src/sheets/floor-map.js'
import {heatChart} from '../src/sheets/heat-chart.js'
import {chartData} from '../src/sheets/heat-data.js'
import {plainStyle} from '../src/sheets/style.js'
import {forecast, plan, problem} from './fixtures-sheets.js'

const all = (node: Element, want: (element: Element) => boolean): Element[] => [
  ...(want(node) ? [node] : []),
  ...node.children.flatMap((child: ElementContent) => (child.type === 'element' ? all(child, want) : [])),
]
const data = (element: Element, name: string): number => Number(element.properties[name])
const text = (element: Element): string =>
  element.children.map((child) => (child.type === 'text' ? child.value : child.type === 'element' ? text(child) : '')).join('')

/** A straight line through two marks of an axis: the scale, read from the drawing itself. */
function axis(marks: ReadonlyArray<{at: number; value: number}>): (at: number) => number {
  const [one, other] = [marks[0]!, marks.at(-1)!]
  return (at) => one.value + ((at - one.at) * (other.value - one.value)) / (other.at - one.at)
}

describe('the heat chart', () => {
  const drawing = heatChart(forecast, chartData(plan, problem, [{minutes: 200, kind: 'floor', value: 250}]), {style: plainStyle})
  const lineOf = (tick: Element): Element => all(tick, (element) => element.tagName === 'line')[0]!
  const celsius = axis(
    all(drawing, (e) => e.properties.dataCelsius !== undefined && e.properties.dataReading === undefined).map((tick) => ({
      at: data(lineOf(tick), 'y1'),
      value: data(tick, 'dataCelsius'),
    })),
  )
  const minutes = axis(
    all(drawing, (e) => e.properties.dataMinutes !== undefined).map((tick) => ({
      at: data(lineOf(tick), 'x1'),
      value: data(tick, 'dataMinutes'),
    })),
  )

  it('draws the likely curve where the forecast has it, read back through its own axes', () => {
    const path = all(drawing, (e) => e.properties.dataCurve === 'likely')[0]!
    const points = [...String(path.properties.d).matchAll(/([\d.]+),([\d.]+)/g)].map(([, x, y]) => ({
      minute: minutes(Number(x)),
      celsius: celsius(Number(y)),
    }))
    expect(points.length).toBeGreaterThan(100)
    for (const point of points) {
      const wanted = forecast.baking.likely[Math.round((point.minute - plan.lit) / forecast.step)]!
      expect(Math.abs(point.celsius - wanted), `${point.minute}`).toBeLessThan(1)
    }
  })

  it('writes on each mark of the axes the value it stands for', () => {
    for (const tick of all(drawing, (e) => e.properties.dataCelsius !== undefined && e.properties.dataReading === undefined)) {
      expect(text(tick)).toContain(String(data(tick, 'dataCelsius')))
      expect(text(tick)).toContain(String(Math.round(data(tick, 'dataCelsius') * 1.8 + 32)))
    }
    const nine = all(drawing, (e) => e.properties.dataMinutes === '540')[0]!
    expect(text(nine)).toBe('9 am')
  })

  it('shows each dish from set-in to draw, each opening of the door and each reading at its time', () => {
    for (const load of plan.loads)
      for (const dish of load.dishes) {
        const bar = all(
          drawing,
          (e) => e.properties.dataBar !== undefined && data(e, 'dataFrom') === load.at && data(e, 'dataTo') === dish.draw.likely,
        )[0]!
        const shape = all(bar, (e) => e.tagName === 'rect')[0]!
        expect(Math.abs(minutes(data(shape, 'x')) - load.at)).toBeLessThan(1)
        expect(Math.abs(minutes(data(shape, 'x') + data(shape, 'width')) - dish.draw.likely)).toBeLessThan(1)
      }
    const openings = all(drawing, (e) => e.properties.dataOpening !== undefined).map((e) => data(e, 'dataOpening'))
    expect(openings).toEqual([490, 540, 720, 765, 1880])
    const reading = all(drawing, (e) => e.properties.dataReading !== undefined)[0]!
    const circle = all(reading, (e) => e.tagName === 'circle')[0]!
    expect(Math.abs(celsius(data(circle, 'cy')) - 250)).toBeLessThan(1)
    expect(Math.abs(minutes(data(circle, 'cx')) - (plan.lit + 200))).toBeLessThan(1)
  })

  it('keeps the longest name inside its edges and beside its bar, with its number', () => {
    const name = 'To make standing pies that eat well hot or cold, and may be carried abroad by wagoners and harvesters'
    const bars = chartData(plan, problem, [])
    const long = heatChart(
      forecast,
      {...bars, bars: bars.bars.map((bar) => ({...bar, label: `${bar.number} ${name}`}))},
      {style: plainStyle},
    )
    const width = Number(String(long.properties.viewBox).split(' ')[2])
    for (const bar of all(long, (e) => e.properties.dataBar !== undefined)) {
      const words = all(bar, (e) => e.tagName === 'text')[0]!
      const shown = text(words)
      expect(shown.startsWith(`${data(bar, 'dataBar')} To make`)).toBe(true)
      expect(shown.endsWith('…')).toBe(true)
      // A letter of 14 px is half an em wide or a little more (Liberation Sans, measured).
      const [x, wide] = [data(words, 'x'), shown.length * 7]
      const left = {start: x, middle: x - wide / 2, end: x - wide}[String(words.properties.textAnchor)]!
      expect(left).toBeGreaterThanOrEqual(0)
      expect(left + wide).toBeLessThanOrEqual(width)
    }
  })

  it('names the four bands and has a title and a description for a screen reader', () => {
    for (const name of ['hot', 'moderate', 'slow', 'slack'])
      expect(all(drawing, (e) => e.properties.dataBand === name).map(text)).toEqual([name])
    const ids = (drawing.properties.ariaLabelledBy as string[] | string).toString().split(/[ ,]+/)
    for (const id of ids) expect(all(drawing, (e) => e.properties.id === id).map(text)[0]?.length).toBeGreaterThan(10)
  })

  it('uses no colour but black and white', () => {
    for (const element of all(drawing, () => true))
      for (const name of ['fill', 'stroke']) {
        const colour = element.properties[name]
        if (typeof colour === 'string' && !colour.startsWith('url(')) expect(['#000', '#fff', 'none']).toContain(colour)
      }
  })
})

describe('the floor map', () => {
  const load = plan.loads[1]!
  const map = floorMap(load, plan, problem, {style: plainStyle})
  const scale = Number(map.properties.dataScale)
  const ring = all(map, (e) => e.tagName === 'ellipse')[0]!

  it('draws the floor and every vessel to one scale, the back at the top', () => {
    expect((2 * data(ring, 'rx')) / scale).toBeCloseTo(1.06, 6)
    for (const placed of load.placed) {
      const vessel = all(
        map,
        (e) => e.properties.dataDish === placed.dish && e.properties.dataNumber === String(placed.number),
      )[0]!
      const shape = vessel.children[0] as Element
      const x = shape.tagName === 'circle' ? data(shape, 'cx') : data(shape, 'x') + data(shape, 'width') / 2
      const y = shape.tagName === 'circle' ? data(shape, 'cy') : data(shape, 'y') + data(shape, 'height') / 2
      expect((x - data(ring, 'cx')) / scale).toBeCloseTo(placed.x, 3)
      expect((data(ring, 'cy') - y) / scale).toBeCloseTo(placed.y, 3)
    }
    const crock = all(map, (e) => e.properties.dataDish === 'baked-beans')[0]!.children[0] as Element
    expect((2 * data(crock, 'r')) / scale).toBeCloseTo(0.24, 3)
  })

  it('numbers vessels as the day sheet does, back before mouth', () => {
    expect(text(all(map, (e) => e.properties.dataDish === 'baked-beans')[0]!)).toBe('2')
    expect(all(map, (e) => e.properties.dataDish === 'gingerbread').map(text)).toEqual(['3', '3'])
  })
})
