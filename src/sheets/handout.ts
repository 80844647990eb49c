import type {Element, ElementContent} from 'hast'
import {h} from 'hastscript'
import type {Source} from '../lexicon/schema.js'
import {MODERN_YEAR} from '../measure/frame.js'
import {writeDuration} from '../measure/quantity.js'
import {partsOf, told} from '../plan/stands-at.js'
import type {Plan, PlanProblem} from '../plan/types.js'
import type {Ingredient, Receipt} from '../receipt/types.js'
import {fallTable, readSpan} from './fall-table.js'
import {clock, durations, type Figures, fahrenheit, number, temperatures, vesselSize} from './figures.js'
import {termsIn} from './glossary.js'
import {type Numbered, receiptName, valueAt} from './heat-data.js'
import {type Asked, asked, bandOf, gasMark, placesInPlan, windowOf} from './needs.js'
import {oldText} from './old-text.js'
import {signIn} from './phrases.js'
import {zoneWord} from './plan-text.js'
import {allergenNames, cautionText, foreignTitle, oursLine} from './said.js'
import {partMark, spoken} from './spoken.js'
import type {Style} from './style.js'
import {Citations, doubts, modernFigure, timesShown} from './translation-text.js'
import {say, sayIf} from './words/index.js'

/** Who the handout is for: the class has an exercise, the kitchen the working figures, visitors the story. */
export type Audience = 'class' | 'kitchen' | 'visitors'

/** What a handout is made from. */
export interface HandoutInput {
  readonly receipt: Receipt
  /** The file the receipt stands in, as read. */
  readonly text: string
  readonly plan: Plan
  readonly problem: PlanProblem
  /** The other receipts of the day, for the exercise. */
  readonly others: readonly Receipt[]
  readonly sources: readonly Source[]
  readonly style: Style
  readonly audience: Audience
}

/** A handout: what every learner gets, and for a class the key of its exercise, which only the teacher gets. */
export interface Handout {
  readonly copies: readonly Element[]
  readonly key: Element | null
}

/** The handout of one receipt: old text beside new figures, how to bake it, words, cautions, and for a class the exercise; its key apart. */
export function handout(input: HandoutInput): Handout {
  const {receipt, style, audience} = input
  const {words} = style
  const cited = new Citations()
  const need = asked(receipt, input.problem)
  const terms = termsIn(input.text.slice(receipt.start, receipt.end))
  const table = figuresTable(receipt, cited, style)
  const oven = ovenSection(receipt, cited, style)
  const bake = bakeSection(input, need)
  const cautions = cautionsSection(receipt, cited, style)
  const exercise = audience === 'class' ? exerciseFor(input, need, cited) : null
  const wordList = audience === 'kitchen' || terms.length === 0 ? [] : wordListSection(terms, cited, style)
  const footnotes = footnoteList(cited, input.sources, style)
  const from = [
    receipt.year === null ? '' : String(receipt.year),
    receipt.place === null ? '' : sayIf(words, `place.${receipt.place}`, receipt.place),
  ]
    .filter(Boolean)
    .join(', ')
  const copies = [
    h('article', {className: ['sheet', 'handout', audience]}, [
      h('header', [
        h('h1', receipt.title),
        h('p', {className: ['lead']}, [from, words[introOf(input)]].filter(Boolean).join('. ')),
      ]),
      h('div', {className: ['pair']}, [
        h('section', [h('h2', words['handout.old']), h('blockquote', {lang: 'en'}, old(input))]),
        h('section', [h('h2', words['handout.new']), ...table, ...ours(receipt, style)]),
      ]),
      ...oven,
      ...bake,
      ...cautions,
      ...wordList,
      ...footnotes,
    ]),
    ...(exercise ? [exercise.questions] : []),
  ]
  return {copies, key: exercise?.answers ?? null}
}

/** The line under the title: a class learns an old way of writing only from a receipt that is old. */
function introOf({receipt, audience}: HandoutInput): 'handout.intro.class.modern' | `handout.intro.${HandoutInput['audience']}` {
  const modern = receipt.year !== null && receipt.year >= MODERN_YEAR
  return audience === 'class' && modern ? 'handout.intro.class.modern' : `handout.intro.${audience}`
}

/** The old words without front matter and title, every read phrase numbered like its row. */
function old({receipt, text}: HandoutInput): ElementContent[] {
  const marks = receipt.ingredients.map((ingredient, i) => ({start: ingredient.start, end: ingredient.end, number: i + 1}))
  return oldText(text.slice(receipt.start, receipt.end), receipt.start, marks)
}

/** The notes that more than one ingredient has, with their letters: each is said once, below the table. */
function sharedNotes(receipt: Receipt): Map<string, string> {
  const all = receipt.ingredients.flatMap((ingredient) => [...new Set(ingredient.notes)])
  const shared = [...new Set(all.filter((note, i) => all.indexOf(note) !== i))]
  return new Map(shared.map((note, i) => [note, letter(i)]))
}

/** a … z, aa, ab … */
const letter = (i: number): string => (i < 26 ? '' : letter(Math.floor(i / 26) - 1)) + String.fromCharCode(97 + (i % 26))

function figuresTable(receipt: Receipt, cited: Citations, style: Style): Element[] {
  const {words} = style
  if (receipt.ingredients.length === 0) return [h('p', words['translate.noIngredients'])]
  const shared = sharedNotes(receipt)
  const line = (content: ElementContent): Element => h('span', {className: ['small']}, [h('br'), content])
  return [
    h('table', {className: ['stack']}, [
      h(
        'thead',
        h('tr', [
          h('th', {scope: 'col'}, words['col.number']),
          h('th', {scope: 'col'}, words['col.written']),
          h('th', {scope: 'col'}, words['col.today']),
          h('th', {scope: 'col'}, words['col.source']),
        ]),
      ),
      h(
        'tbody',
        receipt.ingredients.map((ingredient, i) => {
          const notes = [...new Set(ingredient.notes)]
          return h('tr', [
            h('td', String(i + 1)),
            h('th', {scope: 'row', lang: 'en'}, [...partMark(ingredient.part, style), ingredient.text]),
            h('td', [
              h('span', modernFigure(ingredient, style)),
              ...notes.flatMap((note): ElementContent[] =>
                shared.has(note)
                  ? [
                      {type: 'text', value: ' '},
                      h('a', {className: ['note'], href: `#note-${shared.get(note)}`}, `[${shared.get(note)}]`),
                    ]
                  : [],
              ),
              ...notes.filter((note) => !shared.has(note)).map((note) => line(spoken(note, style))),
              ...doubts(ingredient, style).map((doubt) => line({type: 'text', value: doubt})),
            ]),
            h('td', footnoteMarks(ingredient.sources, cited)),
          ])
        }),
      ),
    ]),
    ...(shared.size > 0
      ? [
          h(
            'ul',
            {className: ['plain', 'small']},
            [...shared].map(([note, mark]) => h('li', {id: `note-${mark}`}, [spoken(note, style, `[${mark}] `)])),
          ),
        ]
      : []),
  ]
}

function footnoteMarks(ids: readonly string[], cited: Citations): ElementContent[] {
  return ids.flatMap((id, i): ElementContent[] => [
    {type: 'text', value: i > 0 ? ' ' : ''},
    h('a', {className: ['note'], href: `#source-${cited.number(id)}`}, `[${cited.number(id)}]`),
  ])
}

function ours(receipt: Receipt, style: Style): Element[] {
  const {words} = style
  if (receipt.inferred.length === 0) return []
  return [
    h('div', {className: ['ours', 'small']}, [
      h('p', h('strong', words['translate.ours'])),
      h(
        'ul',
        receipt.inferred.map((one) => h('li', oursLine(one, style))),
      ),
    ]),
  ]
}

function ovenSection(receipt: Receipt, cited: Citations, style: Style): Element[] {
  const {words} = style
  if (receipt.oven.length === 0 && receipt.times.length === 0) return []
  return [
    h('section', [
      h('h2', words['handout.heat']),
      h('ul', [
        ...once(receipt.oven).map((phrase) =>
          h('li', [
            `${quoted(phrase.text, style)}: `,
            h('strong', words[`band.${phrase.band}`]),
            `, ${temperatures(phrase.celsius, style)} `,
            ...footnoteMarks(phrase.sources, cited),
            ...(phrase.notes ?? []).map((note) => h('span', {className: ['small']}, spoken(note, style, ' · '))),
          ]),
        ),
        ...once(timesShown(receipt, style)).map(({text, length, of, sources}) =>
          h('li', [`${quoted(text, style)}: ${length}, ${of} `, ...footnoteMarks(sources, cited)]),
        ),
      ]),
    ]),
  ]
}

/** The same words said twice are listed once. */
function once<T extends {readonly text: string}>(phrases: readonly T[]): T[] {
  return phrases.filter((phrase, i) => phrases.findIndex((other) => tidy(other.text) === tidy(phrase.text)) === i)
}

function signSpan(receipt: Receipt, sign: string, style: Style): Element {
  const said = signIn(receipt.kind, sign, style)
  return h('span', said === sign ? {lang: 'en'} : {}, said)
}

const quoted = (text: string, style: Style): string => say(style.words, 'quote', {text: tidy(text)})

const tidy = (text: string): string => text.replace(/\s+/g, ' ').trim()

/** The home oven's dial in words: degrees, gas mark, fan. */
export function homeHeat(need: Asked, style: Style): string {
  const mark = gasMark((need.home.low + need.home.high) / 2)
  const parts = [temperatures(need.home, style)]
  if (mark !== null) parts.push(say(style.words, 'home.gas', {mark}))
  parts.push(
    say(style.words, 'home.fan', {temperature: temperatures({low: need.home.low - 20, high: need.home.high - 20}, style)}),
  )
  return parts.join('; ')
}

function bakeSection(input: HandoutInput, need: Asked | null): Element[] {
  const {receipt, plan, problem, style} = input
  const {words} = style
  if (!need) return [h('section', [h('h2', words['home.title']), h('p', words['home.unknown'])])]
  const inPlan = placesInPlan(receipt, plan, problem)
  const window = windowOf(plan, need.start)
  // The mouth is cooler and the back hotter than the mean: what the plan sets in there a little sooner or later is right too.
  const span = window && {
    from: Math.min(window.from, ...inPlan.map(({from}) => from)),
    to: Math.max(window.to, ...inPlan.map(({from}) => from)),
  }
  return [
    h('div', {className: ['pair', 'even']}, [
      h('section', [
        h('h2', words['home.title']),
        h('ul', [
          h('li', say(words, 'home.heat', {heat: homeHeat(need, style)})),
          h(
            'li',
            say(words, Math.round(need.minutes.low) === Math.round(need.minutes.high) ? 'home.minutesOne' : 'home.minutes', {
              time: durations(need.minutes, style),
            }),
          ),
          ...(need.vessel ? [h('li', [words['home.vessel'], ' ', spoken(vesselSize(need.vessel, style), style)])] : []),
          ...(need.sign ? [h('li', [words['home.done'], ' ', signSpan(receipt, need.sign, style)])] : []),
          ...(need.falling && need.held !== true ? [h('li', words['home.falling'])] : []),
          ...(need.said ? [] : [h('li', {className: ['ours']}, words['home.ours'])]),
        ]),
      ]),
      h('section', [
        h('h2', words['falling.title']),
        h('ul', [
          h(
            'li',
            say(words, 'falling.band', {
              band: words[`band.${bandOf(need.start.best)}`],
              temperature: temperatures({low: need.start.low, high: need.start.high}, style),
            }),
          ),
          h(
            'li',
            need.ajar !== undefined
              ? say(words, 'falling.ajar', {text: need.ajar})
              : need.overnight
                ? words['falling.overnight']
                : need.falling
                  ? words['falling.falling']
                  : words['falling.plain'],
          ),
          ...(need.today
            ? [
                h('li', [words['falling.vessel'], ' ', spoken(vesselSize(need.today.vessel, style), style)]),
                ...need.today.times.map((one) => h('li', {className: ['ours']}, oursLine(one, style))),
              ]
            : []),
          ...(need.closed ? [h('li', say(words, 'falling.closed', {time: durations(need.closed, style)}))] : []),
          h('li', say(words, 'falling.place', {place: zoneWord(need.place, style)})),
          ...(span
            ? [h('li', say(words, 'falling.window', {from: clock(span.from, style), to: clock(span.to, style)}))]
            : [h('li', words['falling.noWindow'])]),
          ...inPlan.map((entry) =>
            h(
              'li',
              say(words, 'falling.plan', {
                load: entry.load,
                number: entry.number,
                from: clock(entry.from, style),
                to: clock(entry.draw.likely, style),
                heat: temperatures(entry.celsiusIn, style),
              }),
            ),
          ),
        ]),
      ]),
    ]),
  ]
}

function cautionsSection(receipt: Receipt, cited: Citations, style: Style): Element[] {
  const {words} = style
  return [
    h('section', {className: ['warn']}, [
      h('h2', words['translate.cautions']),
      ...(receipt.cautions.length > 0
        ? [
            h(
              'ul',
              receipt.cautions.map((caution) =>
                h('li', [`${cautionText(caution, style)} `, ...footnoteMarks([caution.source], cited)]),
              ),
            ),
          ]
        : []),
      h(
        'p',
        receipt.allergens.length > 0
          ? say(words, 'translate.allergens', {list: allergenNames(receipt.allergens, style)})
          : words['translate.noAllergens'],
      ),
      h('p', {className: ['small']}, words['safety.short.codes']),
    ]),
  ]
}

/** Degrees that a word of the list is explained with, “121 to 163 °C (250 to 325 °F)”, in the reader's scale alone. */
function inScale(text: string, {degrees}: Style): string {
  if (degrees === 'both') return text
  const both = /(\d{1,4}(?: (?:to|bis) \d{1,4})? °C) \((\d{1,4}(?: (?:to|bis) \d{1,4})? °F)\)/g
  return text.replace(both, degrees === 'C' ? '$1' : '$2')
}

function wordListSection(terms: ReturnType<typeof termsIn>, cited: Citations, style: Style): Element[] {
  const {words} = style
  const language = words['language.code'] === 'de' ? 'de' : 'en'
  return [
    h('section', [
      h('h2', words['handout.words']),
      h(
        'dl',
        terms.flatMap((term) => [
          h('dt', [h('strong', {lang: 'en'}, term.term)]),
          h('dd', [`${inScale(term[language], style)} `, ...footnoteMarks([term.source], cited)]),
        ]),
      ),
    ]),
  ]
}

/** The sources cited; only some of them where `only` names them. */
function footnoteList(cited: Citations, sources: readonly Source[], style: Style, only?: ReadonlySet<string>): Element[] {
  const list = cited.list(sources, style).filter(({id}) => only === undefined || only.has(id))
  if (list.length === 0) return []
  return [
    h('section', {className: ['small']}, [
      h('h2', style.words['translate.sources']),
      h('p', style.words['handout.ranges']),
      h(
        'ul',
        {className: ['plain']},
        list.map(({number: n, id, text}) =>
          h('li', {id: `source-${n}`}, [`[${n}] `, h('span', foreignTitle(id, style) ? {lang: 'en'} : {}, text)]),
        ),
      ),
    ]),
  ]
}

/** Measures that stand in the figures of a handout as the receipt has them: to turn them would be to copy them. */
const asTheyAre: Readonly<Record<Style['units'], ReadonlySet<string>>> = {
  both: new Set(['gram', 'kilogram', 'millilitre', 'litre']),
  metric: new Set(['gram', 'kilogram', 'millilitre', 'litre']),
  us: new Set(['pound', 'ounce']),
}

/** The ingredients a learner can turn into figures, most telling first: those whose range is widest. */
export function convertible(receipt: Receipt, units: Style['units']): Ingredient[] {
  const spread = (ingredient: Ingredient): number => {
    const range = ingredient.grams ?? ingredient.millilitres
    return range && range.likely > 0 ? (range.high - range.low) / range.likely : 0
  }
  return receipt.ingredients
    .filter((ingredient) => ingredient.amount !== null && (ingredient.grams !== null || ingredient.millilitres !== null))
    .filter(({measure}) => !asTheyAre[units].has(measure ?? ''))
    .sort((a, b) => spread(b) - spread(a) || a.start - b.start)
    .slice(0, 4)
}

interface Question {
  readonly ask: ElementContent[]
  readonly answer: ElementContent[]
}

interface DishHeat {
  readonly title: string
  readonly heat: number
  readonly home: Asked['home']
}
const heats = new WeakMap<PlanProblem, WeakMap<Receipt, DishHeat | null>>()

/** A receipt's name and heat for the exercise of every other: worked out once a day, or a hundred handouts would ask it ten thousand times. */
function heatOf(receipt: Receipt, problem: PlanProblem): DishHeat | null {
  const known = heats.get(problem) ?? new WeakMap<Receipt, DishHeat | null>()
  heats.set(problem, known)
  const before = known.get(receipt)
  if (before !== undefined) return before
  const wants = asked(receipt, problem)
  const made = wants
    ? {title: receiptName(problem, receipt), heat: (wants.home.low + wants.home.high) / 2, home: wants.home}
    : null
  known.set(receipt, made)
  return made
}

/** The scales a class reads from the table, the one the key reads first. */
const scales: Readonly<Record<Style['degrees'], readonly [Figures, ...Figures[]]>> = {
  C: [(celsius) => celsius],
  F: [fahrenheit],
  both: [(celsius) => celsius, fahrenheit],
}

/** A range this wide, as a share of its likely figure, is one of which a class can say why. */
const TELLING = 0.1

/** The exercise for a class, and its key; footnotes have the same numbers on both. Everything in it comes from this receipt, this day and this oven. */
function exerciseFor(
  input: HandoutInput,
  need: Asked | null,
  cited: Citations,
): {readonly questions: Element; readonly answers: Element} {
  const {receipt, style, plan, problem} = input
  const {words} = style
  const title = receiptName(problem, receipt)
  const rule = (): Element => h('span', {className: ['line'], ariaHidden: 'true'})
  const questions: Question[] = []
  const measures = convertible(receipt, style.units)
  if (measures.length > 0)
    questions.push({
      ask: [
        h('p', words[style.units === 'us' ? 'exercise.convertUs' : 'exercise.convert']),
        h(
          'ul',
          {className: ['plain']},
          measures.map((ingredient) => h('li', [quoted(ingredient.text, style), rule()])),
        ),
      ],
      answer: [
        h(
          'ul',
          measures.map((ingredient) =>
            h('li', [
              `${quoted(ingredient.text, style)}: ${modernFigure(ingredient, style)} `,
              ...footnoteMarks(ingredient.sources, cited),
            ]),
          ),
        ),
      ],
    })
  const least = measures[0]
  const range = least?.grams ?? least?.millilitres ?? null
  if (least && range && range.high - range.low >= TELLING * range.likely)
    questions.push({
      ask: [h('p', words['exercise.unsure']), rule(), rule()],
      answer: [
        h(
          'p',
          say(words, 'exercise.unsureAnswer', {
            text: tidy(least.text),
            percent: number(((range.high - range.low) / range.likely) * 100, 0, style),
          }),
        ),
      ],
    })
  const dishes = [receipt, ...input.others].flatMap((other) => heatOf(other, problem) ?? []).filter(unseen())
  const chosen = spreadOut(dishes)
  if (chosen.length >= 3)
    questions.push({
      ask: [
        h('p', words['exercise.order']),
        h(
          'p',
          h(
            'strong',
            [...chosen]
              .sort((a, b) => a.title.localeCompare(b.title, 'en'))
              .map(({title}) => title)
              .join(' · '),
          ),
        ),
        rule(),
      ],
      answer: [
        h(
          'ol',
          [...chosen]
            .sort((a, b) => b.heat - a.heat)
            .map((dish) => h('li', `${dish.title}: ${words[`band.${bandOf(dish.heat)}`]}, ${temperatures(dish.home, style)}`)),
        ),
      ],
    })
  const place = placeOf(placesInPlan(receipt, plan, problem), need)
  const back = place === 'back'
  questions.push({
    ask: [h('p', back ? say(words, 'exercise.backThis', {title}) : words['exercise.backOther']), rule(), rule(), rule()],
    answer: [h('p', words['exercise.backAnswer'])],
  })
  const span = need ? windowOf(plan, need.start) : null
  if (need && span) {
    const rows = fallTable(plan, span.to)
    const read = readSpan(rows, need.start, plan.ready, scales[style.degrees])
    questions.push({
      ask: [
        h(
          'p',
          say(words, 'exercise.when', {
            title,
            temperature: temperatures({low: need.start.low, high: need.start.high}, style),
            ready: clock(plan.ready, style),
          }),
        ),
        h('table', {className: ['fall']}, [
          h('thead', h('tr', [h('th', {scope: 'col'}, words['col.time']), h('th', {scope: 'col'}, words['chart.degrees'])])),
          h(
            'tbody',
            rows.map(({at, celsius}) =>
              h('tr', [h('th', {scope: 'row'}, clock(at, style)), h('td', temperatures({low: celsius, high: celsius}, style))]),
            ),
          ),
        ]),
        rule(),
      ],
      answer: [
        h(
          'p',
          say(words, 'exercise.whenAnswer', {
            from: clock(read.from, style),
            to: clock(read.to, style),
            within: writeDuration(read.within),
            first: clock(span.from, style),
            last: clock(span.to, style),
          }),
        ),
      ],
    })
  }
  return {
    questions: h('article', {className: ['sheet', 'exercise']}, [
      h('h1', say(words, 'exercise.title', {title})),
      h('p', words['exercise.name']),
      h(
        'ol',
        questions.map(({ask}) => h('li', {className: ['question']}, ask)),
      ),
    ]),
    answers: h('article', {className: ['sheet', 'answers']}, [
      h('h1', say(words, 'exercise.key', {title})),
      h('p', words['exercise.keyIntro']),
      h(
        'ol',
        questions.map(({answer}) => h('li', {className: ['question']}, answer)),
      ),
      ...footnoteList(cited, input.sources, style, new Set(measures.flatMap(({sources}) => sources))),
    ]),
  }
}

/** The parts of the floor where the plan has a dish; its kind's where it is not in the plan. */
function placeOf(inPlan: readonly Pick<Numbered, 'zone'>[], need: Asked | null): Numbered['zone'] | Asked['place'] {
  if (inPlan.length > 0) return told(inPlan.flatMap((entry) => partsOf(entry.zone)))
  return need?.overnight === true ? 'back' : (need?.place ?? 'any')
}

/** Keeps the first of each title. */
function unseen(): (dish: DishHeat) => boolean {
  const titles = new Set<string>()
  return ({title}) => !titles.has(title) && titles.add(title).size > 0
}

/** Up to five dishes as far apart in heat as the day has them, none within 10 °C of another. */
function spreadOut<T extends {readonly heat: number}>(dishes: readonly T[]): T[] {
  const [first, ...rest] = dishes
  if (!first) return []
  const chosen = [first]
  const away = (dish: T): number => Math.min(...chosen.map((other) => Math.abs(other.heat - dish.heat)))
  const left = [...rest]
  while (chosen.length < 5 && left.length > 0) {
    const next = left.reduce((best, dish) => (away(dish) > away(best) ? dish : best))
    if (away(next) < 10) break
    chosen.push(next)
    left.splice(left.indexOf(next), 1)
  }
  return chosen
}

/** A modern receipt turned to the falling oven: which band, when in the day, what to change. */
export function converseHandout(input: HandoutInput): Element[] {
  const {receipt, plan, problem, style} = input
  const {words} = style
  const need = asked(receipt, problem)
  if (!need) return []
  const span = windowOf(plan, need.start)
  const likely = (at: number): string => {
    const value = (values: readonly number[]): number => valueAt(values, plan.forecast.step, plan.lit, at)
    return temperatures({low: value(plan.forecast.baking.low), high: value(plan.forecast.baking.high)}, style)
  }
  const cited = new Citations()
  const inPlan = placesInPlan(receipt, plan, problem)
  const fan = need.phrase !== null && /fan|convection|umluft/i.test(`${need.phrase.text} ${(need.phrase.notes ?? []).join(' ')}`)
  return [
    h('article', {className: ['sheet', 'converse']}, [
      h('h1', say(words, 'converse.title', {title: receipt.title})),
      h('p', {className: ['lead']}, words['converse.intro']),
      h('h2', words['converse.says']),
      h('ul', [
        ...once(receipt.oven).map((phrase) =>
          h('li', [
            `${quoted(phrase.text, style)}: `,
            h('strong', words[`band.${phrase.band}`]),
            `, ${temperatures(phrase.celsius, style)} `,
            ...footnoteMarks(phrase.sources, cited),
          ]),
        ),
        ...once(timesShown(receipt, style)).map(({text, length, of, sources}) =>
          h('li', [`${quoted(text, style)}: ${length}, ${of} `, ...footnoteMarks(sources, cited)]),
        ),
      ]),
      h('h2', words['converse.when']),
      h(
        'p',
        {className: ['lead']},
        span
          ? say(words, 'converse.window', {
              band: words[`band.${bandOf(need.start.best)}`],
              from: clock(span.from, style),
              to: clock(span.to, style),
              first: likely(span.from),
              last: likely(span.to),
            })
          : words['falling.noWindow'],
      ),
      ...(inPlan.length > 0
        ? [
            h(
              'ul',
              inPlan.map((entry) =>
                h(
                  'li',
                  say(words, 'falling.plan', {
                    load: entry.load,
                    number: entry.number,
                    from: clock(entry.from, style),
                    to: clock(entry.draw.likely, style),
                    heat: temperatures(entry.celsiusIn, style),
                  }),
                ),
              ),
            ),
          ]
        : []),
      h('h2', words['converse.change']),
      h('ul', [
        h('li', words['converse.dial']),
        h('li', say(words, 'converse.hotter', {temperature: temperatures({low: need.start.best, high: need.start.high}, style)})),
        h('li', say(words, 'converse.longer', {time: durations(need.minutes, style)})),
        ...(fan ? [h('li', words['converse.fan'])] : []),
        h('li', words['converse.steam']),
        h('li', words['converse.floor']),
        h('li', say(words, 'converse.place', {place: zoneWord(placeOf(inPlan, need), style)})),
        h('li', words['converse.door']),
        ...(need.sign ? [h('li', [words['home.done'], ' ', signSpan(receipt, need.sign, style)])] : []),
      ]),
      ...cautionsSection(receipt, cited, style),
      ...footnoteList(cited, input.sources, style),
    ]),
  ]
}
