import type {Element} from 'hast'
import {h} from 'hastscript'
import type {Source} from '../lexicon/schema.js'
import type {PlanProblem} from '../plan/types.js'
import type {Receipt} from '../receipt/types.js'
import {receiptName} from './heat-data.js'
import {allergenNames, cautionText, foreignTitle, sourceTitle} from './said.js'
import type {Style} from './style.js'
import type {WordKey} from './words/index.js'

/** Least safe temperatures of the middle, °C, as USDA FSIS publishes them (145, 160 and 165 °F). */
export const safeCentres: ReadonlyArray<{readonly key: WordKey; readonly fahrenheit: number}> = [
  {key: 'safe.whole', fahrenheit: 145},
  {key: 'safe.fish', fahrenheit: 145},
  {key: 'safe.minced', fahrenheit: 160},
  {key: 'safe.egg', fahrenheit: 160},
  {key: 'safe.poultry', fahrenheit: 165},
  {key: 'safe.reheat', fahrenheit: 165},
]

const groups: ReadonlyArray<{readonly heading: WordKey; readonly lines: readonly WordKey[]}> = [
  {heading: 'safety.fire', lines: ['safety.fire.1', 'safety.fire.2', 'safety.fire.3', 'safety.fire.4']},
  {heading: 'safety.wood', lines: ['safety.wood.1', 'safety.wood.2']},
  {heading: 'safety.monoxide', lines: ['safety.monoxide.1', 'safety.monoxide.2', 'safety.monoxide.3']},
  {heading: 'safety.ash', lines: ['safety.ash.1', 'safety.ash.2']},
  {heading: 'safety.burns', lines: ['safety.burns.1', 'safety.burns.2', 'safety.burns.3']},
  {heading: 'safety.arm', lines: ['safety.arm.1', 'safety.arm.2']},
  {heading: 'safety.children', lines: ['safety.children.1', 'safety.children.2']},
]

/** The cautions page: fire, wood, fumes, ash, burns, the arm count, children, food, allergens; and who decides. */
export function cautionsSheet(
  problem: PlanProblem,
  receipts: readonly Receipt[],
  sources: readonly Source[],
  style: Style,
): Element {
  const name = (receipt: Receipt): string => receiptName(problem, receipt)
  const {words} = style
  const raised = new Map<string, {text: string; source: string; titles: string[]}>()
  for (const receipt of receipts)
    for (const caution of receipt.cautions) {
      const row = raised.get(caution.id) ?? {text: cautionText(caution, style), source: caution.source, titles: []}
      if (!row.titles.includes(name(receipt))) row.titles.push(name(receipt))
      raised.set(caution.id, row)
    }
  const allergens = receipts.filter((receipt) => receipt.allergens.length > 0)
  return h('article', {className: ['sheet', 'cautions-sheet']}, [
    h('h1', words['safety.title']),
    h('p', {className: ['warn', 'lead']}, h('strong', words['safety.short.codes'])),
    h(
      'div',
      {className: ['pairs']},
      groups.map(({heading, lines}) =>
        h('section', [
          h('h2', words[heading]),
          h(
            'ul',
            lines.map((key) => h('li', words[key])),
          ),
        ]),
      ),
    ),
    h('h2', words['safety.food']),
    h('ul', [
      h('li', words['safety.food.1']),
      h('li', words['safety.food.2']),
      h('li', words['safety.food.3']),
      h('li', words['safety.food.4']),
    ]),
    h('table', [
      h('caption', words['safe.caption']),
      h('thead', h('tr', [h('th', {scope: 'col'}, words['col.dish']), h('th', {scope: 'col'}, words['safe.centre'])])),
      h(
        'tbody',
        safeCentres.map(({key, fahrenheit}) =>
          h('tr', [h('th', {scope: 'row'}, words[key]), h('td', exactDegrees(fahrenheit, style))]),
        ),
      ),
    ]),
    h('p', {className: ['small']}, words['safe.source']),
    ...(raised.size > 0
      ? [
          h('h2', words['safety.receipts']),
          h(
            'ul',
            [...raised.values()].map((row) => {
              const source = sources.find(({id}) => id === row.source)
              return h('li', [
                h('strong', `${row.titles.join(', ')}: `),
                row.text,
                ' (',
                h('span', foreignTitle(row.source, style) ? {lang: 'en'} : {}, source ? sourceTitle(source, style) : row.source),
                ')',
              ])
            }),
          ),
        ]
      : []),
    h('h2', words['safety.allergens']),
    h('p', words['safety.allergens.1']),
    ...(allergens.length > 0
      ? [
          h(
            'ul',
            allergens.map((receipt) => h('li', [h('strong', `${name(receipt)}: `), allergenNames(receipt.allergens, style)])),
          ),
        ]
      : []),
  ])
}

/** The published figure in °F and its °C to the degree: a safe temperature is never rounded to five. */
function exactDegrees(fahrenheit: number, style: Style): string {
  const celsius = Math.ceil(((fahrenheit - 32) * 5) / 9)
  if (style.degrees === 'C') return `${celsius} °C`
  if (style.degrees === 'F') return `${fahrenheit} °F`
  return `${celsius} °C (${fahrenheit} °F)`
}
