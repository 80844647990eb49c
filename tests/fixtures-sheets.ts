import type {Source} from '../src/lexicon/schema.js'
import type {Band3, Forecast, OvenSpec} from '../src/oven/types.js'
import type {Plan, PlanProblem, Step} from '../src/plan/types.js'
import type {Ingredient, Receipt, Translation} from '../src/receipt/types.js'
import type {Dish, Placed} from '../src/scale/types.js'

/** A small invented day for the sheets' tests: three dishes in two loads under a curve that falls exponentially. */

const range = (low: number, likely: number, high: number) => ({low, likely, high})

const step = 5
const ready = 165
const raked = 120

function curve(start: number, hours: number): number[] {
  return Array.from({length: (26 * 60) / step + 1}, (_, i) => {
    const minutes = i * step
    if (minutes < raked) return 20 + (start - 20) * (minutes / raked)
    return 20 + (start - 20) * Math.exp(-(minutes - ready) / 60 / hours)
  })
}

const band = (start: number, hours: number): Band3 => ({
  low: curve(start - 20, hours - 1),
  likely: curve(start, hours),
  high: curve(start + 20, hours + 1),
})

export const forecast: Forecast = {
  step,
  firing: {wood: 24, burn: 120, soak: 45},
  raked,
  ready,
  floor: band(270, 9),
  vault: band(300, 9),
  air: band(240, 8),
  baking: band(260, 9),
  zones: {back: 12, middle: 0, mouth: -18},
  balance: {fire: 320, flue: 110, stored: 170, lost: 40, loads: 0, error: 1e-9},
}

export const oven: OvenSpec = {
  name: 'The yard oven',
  floor: {shape: 'round', diameter: 1.06},
  vaultHeight: 0.4,
  mouth: {width: 0.46, height: 0.28},
  door: {material: 'oak', thickness: 0.05},
  hearth: [{material: 'fire brick', thickness: 0.064}],
  vault: [{material: 'common brick', thickness: 0.114}],
  place: 'outdoors',
  ambient: 16,
  fuel: {wood: 'oak', moisture: 0.18},
  start: {celsius: 16, damp: false},
}

const need = {
  startLow: 200,
  startBest: 230,
  startHigh: 260,
  endLow: 150,
  done: 96,
  reference: 220,
  minutes: range(35, 45, 60),
  falling: false,
  overnight: false,
}

export const dishes: readonly Dish[] = [
  {
    id: 'household-bread',
    title: 'Household bread',
    file: 'receipts/household-bread.md',
    kind: 'bread',
    vessel: {
      name: 'free-standing loaf',
      footprint: {shape: 'circle', diameter: 0.2},
      height: 0.12,
      halfThickness: 0.05,
      millilitres: 1800,
    },
    count: 6,
    times: '3/2',
    need,
    place: 'middle',
    mass: 0.9,
    water: 0.1,
    wantedBy: 720,
    dough: {mix: 20, rise: 300, shape: 20, hold: 30},
    sign: 'the loaf sounds hollow when knocked underneath',
    feeds: range(5, 6, 8),
    inferred: [],
    sized: [],
    cautions: [],
    amounts: [
      {item: 'flour', part: '', grams: range(5300, 5443, 5600), millilitres: null, kitchen: '5.4 kg', exact: '12'},
      {item: 'salt', part: '', grams: range(80, 96, 115), millilitres: range(70, 80, 90), kitchen: '95 g', exact: '9/2'},
    ],
  },
  {
    id: 'gingerbread',
    title: 'Gingerbread',
    file: 'receipts/gingerbread.md',
    kind: 'gingerbread',
    vessel: {
      name: 'square tin 8 in',
      footprint: {shape: 'rectangle', length: 0.2, width: 0.2},
      height: 0.05,
      halfThickness: 0.02,
      millilitres: 1500,
    },
    count: 2,
    times: '2',
    need: {...need, startLow: 160, startBest: 180, startHigh: 200, reference: 180, minutes: range(30, 40, 50)},
    place: 'any',
    mass: 1,
    water: 0.1,
    wantedBy: null,
    dough: null,
    sign: 'a straw comes out clean',
    feeds: range(9, 12, 16),
    inferred: [{field: 'vessel', value: 'square tin 8 in', why: 'gingerbread is baked in a shallow tin; the text names none'}],
    sized: [],
    cautions: [],
    amounts: [
      {item: 'molasses', part: '', grams: range(640, 680, 700), millilitres: range(473, 473, 473), kitchen: '680 g', exact: '2'},
      {item: 'flour', part: '', grams: range(850, 907, 960), millilitres: null, kitchen: '900 g', exact: '2'},
    ],
  },
  {
    id: 'baked-beans',
    title: 'Baked beans',
    file: 'receipts/beans.md',
    kind: 'baked beans',
    vessel: {name: 'crock', footprint: {shape: 'circle', diameter: 0.24}, height: 0.24, halfThickness: 0.12, millilitres: 6000},
    count: 1,
    times: '1',
    need: {
      ...need,
      startLow: 120,
      startBest: 150,
      startHigh: 230,
      endLow: 80,
      reference: 120,
      minutes: range(480, 600, 840),
      falling: true,
      overnight: true,
    },
    place: 'back',
    mass: 6,
    water: 0.5,
    wantedBy: 1440 + 480,
    dough: null,
    sign: 'a bean crushes between finger and thumb',
    feeds: range(16, 20, 24),
    inferred: [],
    sized: [],
    cautions: [],
    amounts: [{item: 'dried beans', part: '', grams: range(1800, 1814, 1830), millilitres: null, kitchen: '1.8 kg', exact: '2'}],
  },
]

const lit = 320
const at = (minutes: number, values: readonly number[]): number => values[Math.round((minutes - lit) / step)]!
const heat = (minutes: number) =>
  range(at(minutes, forecast.baking.low), at(minutes, forecast.baking.likely), at(minutes, forecast.baking.high))
const ring = (dish: string, count: number, radius: number): Placed[] =>
  Array.from({length: count}, (_, i) => {
    const angle = -0.3 + (i / Math.max(1, count - 1)) * (Math.PI + 0.6)
    return {dish, number: i + 1, x: radius * Math.cos(angle), y: radius * Math.sin(angle), turn: 0, zone: 'middle' as const}
  })

export const plan: Plan = {
  possible: false,
  firing: forecast.firing,
  lit,
  raked: lit + raked,
  ready: lit + ready,
  forecast,
  loads: [
    {
      number: 1,
      at: 490,
      dishes: [{dish: 'household-bread', count: 6, draw: range(530, 540, 560), celsiusIn: heat(490), celsiusOut: heat(540)}],
      placed: ring('household-bread', 6, 0.36),
    },
    {
      number: 2,
      at: 720,
      dishes: [
        {dish: 'gingerbread', count: 2, draw: range(755, 765, 780), celsiusIn: heat(720), celsiusOut: heat(765)},
        {dish: 'baked-beans', count: 1, draw: range(1850, 1880, 1920), celsiusIn: heat(720), celsiusOut: heat(1880)},
      ],
      placed: [
        {dish: 'baked-beans', number: 1, x: 0, y: 0.36, turn: 0, zone: 'back'},
        {dish: 'gingerbread', number: 1, x: -0.14, y: -0.05, turn: 0, zone: 'middle'},
        {dish: 'gingerbread', number: 2, x: 0.14, y: -0.05, turn: 0.2, zone: 'middle'},
      ],
    },
  ],
  steps: [
    line(-180, 'evening before', ['baked-beans'], null, 'Put the beans in cold water to soak.'),
    line(150, 'mix', ['household-bread'], null, 'Mix the dough of the household bread (6 loaves).'),
    line(
      lit,
      'light',
      [],
      null,
      'Light the fire: 24 kg of dry oak over two hours.',
      'a clear flame that reaches the crown of the vault',
      'hold back the last wood',
      'add two splits and burn ten minutes longer',
    ),
    line(
      lit + raked,
      'rake',
      [],
      null,
      'Rake the coals out into the metal pail and sweep the floor.',
      'the walls burnt white all over',
    ),
    line(
      lit + ready,
      'test',
      [],
      null,
      'Test the oven.',
      'flour thrown on the floor browns in half a minute',
      'leave the door open five minutes',
      'wait for nothing: set in at once',
      heat(485),
    ),
    line(
      490,
      'load',
      ['household-bread'],
      1,
      'Set in load 1: household bread, 6, from the back forward.',
      null,
      null,
      null,
      heat(490),
    ),
    line(
      540,
      'draw',
      ['household-bread'],
      1,
      'Draw the household bread.',
      'the loaf sounds hollow when knocked underneath',
      'look ten minutes early',
      'leave it in ten minutes more',
      heat(540),
    ),
    line(
      720,
      'load',
      ['baked-beans', 'gingerbread'],
      2,
      'Set in load 2: beans at the back, then the gingerbread.',
      null,
      null,
      null,
      heat(720),
    ),
    line(765, 'draw', ['gingerbread'], 2, 'Draw the gingerbread.', 'a straw comes out clean', null, null, heat(765)),
    line(770, 'shut', [], null, 'Shut the door for the night and stop its edges.'),
    line(1880, 'draw', ['baked-beans'], 2, 'Draw the beans.', 'a bean crushes between finger and thumb', null, null, heat(1880)),
  ],
  unplaced: [
    {
      dish: 'sponge',
      rule: 'window',
      reason: 'Its heat has passed before the floor is free.',
      remedies: ['Burn 30 minutes longer.', 'Bake half as much.'],
    },
  ],
  score: {lateMinutes: 0, misfit: 1240, openings: 4, idle: 1.7, wood: 24, total: 31, gap: 0.04},
  messages: [],
}

function line(
  minutes: number,
  action: Step['action'],
  names: readonly string[],
  load: number | null,
  words: string,
  sign: string | null = null,
  ifAhead: string | null = null,
  ifBehind: string | null = null,
  celsius: Step['celsius'] = null,
): Step {
  return {at: minutes, action, dishes: names, load, say: words, sign, ifAhead, ifBehind, celsius}
}

export const problem: PlanProblem = {
  day: {
    title: 'Harvest supper',
    date: '2027-06-19',
    zone: 'Europe/London',
    people: 40,
    fireFrom: 300,
    serve: 780,
    hands: 2,
    firings: 1,
    items: [
      {file: 'receipts/household-bread.md', title: 'Household bread', amount: '6 loaves', wantedBy: 720, line: 10, column: 1},
      {file: 'receipts/gingerbread.md', title: 'Gingerbread', amount: null, wantedBy: null, line: 11, column: 1},
      {file: 'receipts/beans.md', title: 'Baked beans', amount: null, wantedBy: 1920, line: 12, column: 1},
    ],
    spare: [],
  },
  dishes,
  firings: [{firing: forecast.firing, forecast}],
  floor: oven.floor,
  mouth: oven.mouth,
}

/** Old words of our own. The last lines are what a hostile or careless file might hold. */
export const gingerbreadText = `# Gingerbread

Take half a pint of molasses, a pound of flour, a tea-spoonful of pearl-ash, and butter the size of an egg. Bake it in a quick oven half an hour.
`

function found(text: string, rest: Partial<Ingredient>): Ingredient {
  const start = gingerbreadText.indexOf(text)
  if (start < 0) throw new Error(`not in the text: ${text}`)
  return {
    text,
    start,
    end: start + text.length,
    amount: {low: 1, high: 1},
    exact: '1',
    measure: 'pound',
    item: 'flour',
    known: true,
    hedges: [],
    part: '',
    confidence: 0.95,
    notes: [],
    grams: null,
    millilitres: null,
    sources: [],
    why: [],
    ...rest,
  }
}

const oven_ = 'a quick oven'
const time = 'half an hour'

export const gingerbread: Receipt = {
  file: 'receipts/gingerbread.md',
  title: 'Gingerbread',
  line: 1,
  start: 0,
  end: gingerbreadText.length,
  year: 1828,
  place: 'us',
  kind: 'gingerbread',
  ingredients: [
    found('half a pint of molasses', {
      amount: {low: 0.5, high: 0.5},
      exact: '1/2',
      measure: 'pint',
      item: 'molasses',
      grams: range(320, 337, 350),
      millilitres: range(236.6, 236.6, 236.6),
      sources: ['hb44', 'sr28'],
      why: [
        {step: '1/2 pint = 236.6 ml', source: 'hb44'},
        {step: '236.6 ml × 1.42 g/ml = 337 g', source: 'sr28'},
      ],
    }),
    found('a pound of flour', {grams: range(453.6, 453.6, 453.6), sources: ['hb44']}),
    found('a tea-spoonful of pearl-ash', {
      measure: 'teaspoon',
      measureText: 'tea-spoonful',
      item: 'pearl-ash',
      grams: range(3, 5, 7),
      millilitres: range(3.5, 4.9, 6),
      sources: ['common-practice'],
      notes: ['no longer sold: use baking soda'],
    }),
    found('butter the size of an egg', {
      measure: 'egg-size',
      item: 'butter',
      grams: range(45, 55, 65),
      sources: ['common-practice'],
      confidence: 0.5,
    }),
  ],
  oven: [
    {
      text: oven_,
      start: gingerbreadText.indexOf(oven_),
      end: gingerbreadText.indexOf(oven_) + oven_.length,
      band: 'hot',
      celsius: {low: 190, high: 230},
      sources: ['common-practice'],
    },
  ],
  times: [
    {
      text: time,
      start: gingerbreadText.indexOf(time),
      end: gingerbreadText.indexOf(time) + time.length,
      minutes: {low: 30, high: 30},
      of: 'bake',
    },
  ],
  serves: null,
  facts: {},
  inferred: [{field: 'vessel', value: 'square tin 8 in', why: 'gingerbread is baked in a shallow tin; the text names none'}],
  cautions: [{id: 'lye', text: 'Pearl-ash is caustic: do not taste it or breathe its dust.', source: 'common-practice'}],
  allergens: ['gluten', 'milk'],
}

export const sources: readonly Source[] = [
  {id: 'hb44', title: 'NIST Handbook 44, Appendix C', kind: 'standard', year: 2024},
  {id: 'sr28', title: 'USDA National Nutrient Database for Standard Reference, release 28', kind: 'dataset', year: 2016},
  {id: 'common-practice', title: 'common practice, no source', kind: 'common practice'},
]

export const translation: Translation = {
  format: 1,
  receipts: [gingerbread],
  messages: [
    {
      file: 'receipts/gingerbread.md',
      line: 3,
      column: 6,
      severity: 'info',
      rule: 'pint',
      reason: 'The pint is taken as the US pint.',
    },
  ],
}
