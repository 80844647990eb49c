import type {Element} from 'hast'
import {s} from 'hastscript'
import type {AshBed, FloorShape} from '../oven/types.js'
import {withVessels} from '../plan/stands-at.js'
import type {Load, Plan, PlanProblem} from '../plan/types.js'
import type {Dish, Placed} from '../scale/types.js'
import {clock, length} from './figures.js'
import {numbered} from './heat-data.js'
import type {Style} from './style.js'
import {say} from './words/index.js'

/** Depth (mouth to back) and width (across) of a floor, metres. */
export function floorSize(floor: FloorShape): {readonly depth: number; readonly width: number} {
  return floor.shape === 'round' ? {depth: floor.diameter, width: floor.diameter} : {depth: floor.depth, width: floor.width}
}

const ashWords = {left: 'map.ash.left', right: 'map.ash.right', back: 'map.ash.back'} as const

/** The ash bed as a box of the drawing; the wall cuts it on a round floor. */
function bedOn(
  {side, width: wide}: AshBed,
  {depth, width}: {readonly depth: number; readonly width: number},
  place: (item: {readonly x: number; readonly y: number}) => {x: number; y: number},
  scale: number,
): {readonly x: number; readonly y: number; readonly width: number; readonly height: number} {
  const corner = place({x: side === 'right' ? width / 2 - wide : -width / 2, y: depth / 2})
  return {
    x: round(corner.x),
    y: round(corner.y),
    width: round((side === 'back' ? width : wide) * scale),
    height: round((side === 'back' ? wide : depth) * scale),
  }
}

const pixels = 620
const margin = 34

/**
 * The floor of one load from above, to scale, mouth at the bottom; each vessel carries its dish's number of the day sheet. `scale` of
 * the drawing (units of the drawing a metre) stands in `data-scale`.
 */
export function floorMap(
  load: Load,
  plan: Plan,
  problem: PlanProblem,
  options: {readonly style: Style; readonly id?: string},
): Element {
  const {style} = options
  const {words} = style
  const id = options.id ?? `floor-${load.number}`
  const {depth, width} = floorSize(problem.floor)
  const scale = pixels / Math.max(depth, width)
  const full = {width: width * scale + 2 * margin, height: depth * scale + 2 * margin + 20}
  const middle = {x: full.width / 2, y: margin + (depth * scale) / 2}
  // The map has y downwards on the page and the floor has it towards the back.
  const place = (item: {readonly x: number; readonly y: number}): {x: number; y: number} => ({
    x: middle.x + item.x * scale,
    y: middle.y - item.y * scale,
  })
  const all = numbered(plan, problem)
  const dishes = all.filter((dish) => dish.load === load.number)
  const numberOf = (item: Placed): string => String(all.find(({placed}) => placed.includes(item))?.number ?? '?')
  const standing = stillIn(plan, load)
  const floor = (look: Readonly<Record<string, string | number>>): Element =>
    problem.floor.shape === 'rectangle'
      ? s('rect', {
          x: middle.x - (width * scale) / 2,
          y: middle.y - (depth * scale) / 2,
          width: width * scale,
          height: depth * scale,
          ...look,
        })
      : s('ellipse', {cx: middle.x, cy: middle.y, rx: (width * scale) / 2, ry: (depth * scale) / 2, ...look})
  const {ashBed} = problem
  const bed = ashBed === undefined ? null : bedOn(ashBed, {depth, width}, place, scale)
  const mouth = (problem.mouth.width * scale) / 2
  const front = middle.y + (depth * scale) / 2
  // Where the wall meets the mouth's side: on the curve of a round or oval floor this is above its foremost point.
  const half = (width * scale) / 2
  const rise =
    problem.floor.shape === 'rectangle' ? 0 : ((depth * scale) / 2) * (1 - Math.sqrt(Math.max(0, 1 - (mouth / half) ** 2)))
  const jamb = front - rise
  const list = dishes.map((dish) => `${dish.number} ${dish.title} (${dish.count})`).join('; ')
  return s(
    'svg',
    {
      viewBox: `0 0 ${round(full.width)} ${round(full.height)}`,
      role: 'img',
      ariaLabelledBy: `${id}-title ${id}-desc`,
      dataScale: String(scale),
      fontFamily: "'Liberation Sans', 'Helvetica Neue', Arial, sans-serif",
      xmlns: 'http://www.w3.org/2000/svg',
    },
    [
      s('title', {id: `${id}-title`}, say(words, 'map.title', {number: load.number, time: clock(load.at, style)})),
      s(
        'desc',
        {id: `${id}-desc`},
        [
          say(words, 'map.desc', {depth: length(depth, style), width: length(width, style), dishes: list}),
          ...(ashBed === undefined ? [] : [say(words, ashWords[ashBed.side], {width: length(ashBed.width, style)})]),
        ].join(' '),
      ),
      s('defs', [
        s('pattern', {id: `${id}-in`, width: 8, height: 8, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(45)'}, [
          s('line', {x1: 0, x2: 0, y1: 0, y2: 8, stroke: '#000', strokeWidth: 1}),
        ]),
        ...(bed === null
          ? []
          : [
              s('pattern', {id: `${id}-ash`, width: 9, height: 9, patternUnits: 'userSpaceOnUse'}, [
                s('circle', {cx: 4, cy: 4, r: 1.3, fill: '#000'}),
              ]),
              s('clipPath', {id: `${id}-wall`}, [floor({})]),
            ]),
      ]),
      s('rect', {x: 0, y: 0, width: round(full.width), height: round(full.height), fill: '#fff'}),
      floor({fill: '#fff', stroke: '#000', strokeWidth: 5}),
      ...(bed === null
        ? []
        : [
            s('rect', {
              ...bed,
              className: ['ash-bed'],
              clipPath: `url(#${id}-wall)`,
              fill: `url(#${id}-ash)`,
              stroke: '#000',
              strokeWidth: 1.5,
              strokeDasharray: '6 4',
            }),
          ]),
      s('rect', {
        x: round(middle.x - mouth),
        y: round(jamb),
        width: round(2 * mouth),
        height: round(front + 8 - jamb),
        fill: '#fff',
      }),
      s('path', {
        d: `M${round(middle.x - mouth)},${round(jamb)}V${round(front + 12)}M${round(middle.x + mouth)},${round(jamb)}V${round(front + 12)}`,
        stroke: '#000',
        strokeWidth: 5,
        fill: 'none',
      }),
      s('text', {x: middle.x, y: margin - 10, textAnchor: 'middle', fontSize: 26, fontStyle: 'italic'}, words['zone.back']),
      s(
        'text',
        {x: middle.x, y: front + 38, textAnchor: 'middle', fontSize: 26, fontStyle: 'italic'},
        `${words['zone.mouth']}, ${length(problem.mouth.width, style)}`,
      ),
      ...standing.flatMap((item) => vessel(item, problem, place, scale, numberOf(item), `url(#${id}-in)`)),
      ...load.placed.flatMap((item) => vessel(item, problem, place, scale, numberOf(item), '#fff')),
    ],
  )
}

/** Vessels of earlier loads that are still in when `load` is set in. */
function stillIn(plan: Plan, load: Load): Placed[] {
  return plan.loads
    .filter((other) => other.number !== load.number && other.at <= load.at)
    .flatMap((other) => withVessels(other).flatMap(({entry, vessels}) => (entry.draw.likely > load.at ? vessels : [])))
}

function vessel(
  item: Placed,
  problem: PlanProblem,
  place: (item: Placed) => {x: number; y: number},
  scale: number,
  text: string,
  fill: string,
): Element[] {
  const dish: Dish | undefined = problem.dishes.find(({id}) => id === item.dish)
  if (!dish) return []
  const {footprint} = dish.vessel
  const at = place(item)
  const across = footprint.shape === 'circle' ? footprint.diameter : Math.min(footprint.length, footprint.width)
  const shape =
    footprint.shape === 'circle'
      ? s('circle', {
          cx: round(at.x),
          cy: round(at.y),
          r: round((footprint.diameter / 2) * scale),
          fill,
          stroke: '#000',
          strokeWidth: 2.5,
        })
      : s('rect', {
          x: round(at.x - (footprint.length / 2) * scale),
          y: round(at.y - (footprint.width / 2) * scale),
          width: round(footprint.length * scale),
          height: round(footprint.width * scale),
          // A turn towards the back on the floor is against the clock; the page's y axis is the other way round.
          transform: `rotate(${round((-item.turn * 180) / Math.PI)} ${round(at.x)} ${round(at.y)})`,
          fill,
          stroke: '#000',
          strokeWidth: 2.5,
        })
  const fontSize = Math.max(14, Math.min(34, across * scale * 0.4))
  return [
    s('g', {dataDish: item.dish, dataNumber: String(item.number)}, [
      shape,
      s(
        'text',
        {
          x: round(at.x),
          y: round(at.y + fontSize * 0.36),
          textAnchor: 'middle',
          fontSize: round(fontSize),
          fontWeight: 'bold',
          stroke: '#fff',
          strokeWidth: 5,
          paintOrder: 'stroke',
        },
        text,
      ),
    ]),
  ]
}

const round = (value: number): number => Math.round(value * 100) / 100
