import {items} from '../src/lexicon/index.js'
import type {Receipt} from '../src/receipt/types.js'
import {sheets} from '../src/sheets/sheets.js'
import {gingerbread, oven, plan, problem, sources} from './fixtures-sheets.js'

/** Everything a receipt might hold to make a page do something. */
export const hostileText = `# Cake <script>window.bad = 1</script>

Take <script>window.bad = 2</script> flour, <img src=x onerror="window.bad = 3"> and [sugar](javascript:alert(1)).

<iframe src="https://example.org/"></iframe>

<svg onload="window.bad = 4"><circle r="1"/></svg> <style>body { display: none }</style>

- [data](data:text/html,<script>window.bad=5</script>) ![pixel](https://example.org/pixel.png "t")
- [up](../../../etc/passwd) [file](file:///etc/passwd) [vb](VBSCRIPT:x) [good](https://example.org/good) [mail](mailto:cook@example.org)
- <a href="javascript:window.bad=6" onclick="window.bad=7">click</a> <form action="https://example.org"><input name=a></form>
- [ref][1] <https://example.org/auto>

[1]: javascript:alert(8)
`

const evil = '"><script>window.bad = 9</script><img src=x onerror=window.bad=10>'

export const hostile: Receipt = {
  ...gingerbread,
  file: 'receipts/../../evil.md',
  title: `../../${evil}`,
  start: 0,
  end: hostileText.length,
  ingredients: [
    {
      ...gingerbread.ingredients[0]!,
      text: evil,
      start: 0,
      end: 4,
      item: evil,
      notes: [evil],
      part: evil,
      why: [{step: evil}],
      sources: [evil],
    },
  ],
  oven: [{...gingerbread.oven[0]!, text: `350 ${evil}`, notes: [evil]}],
  times: [{...gingerbread.times[0]!, text: evil}],
  inferred: [{field: evil, value: evil, why: evil}],
  cautions: [{id: evil, text: evil, source: evil}],
  allergens: [evil],
  year: null,
}

export const hostileSheets = (): Map<string, string> =>
  sheets(
    {
      plan: {
        ...plan,
        steps: plan.steps.map((step) => ({...step, say: `${step.say} ${evil}`, sign: evil})),
        unplaced: [{dish: evil, rule: evil, reason: evil, remedies: [evil]}],
        messages: [{file: evil, line: 1, column: 1, severity: 'error', rule: evil, reason: evil, suggest: evil}],
      },
      problem: {
        ...problem,
        day: {...problem.day, title: evil},
        dishes: problem.dishes.map((dish) => ({
          ...dish,
          title: evil,
          sign: evil,
          vessel: {...dish.vessel, name: evil},
          amounts: [{item: evil, part: evil, grams: null, millilitres: null, kitchen: evil, exact: null}, ...dish.amounts],
        })),
      },
      oven: {...oven, name: evil},
      receipts: [hostile],
      texts: new Map([[hostile.file, hostileText]]),
      sources,
      items,
    },
    {audience: 'class'},
  )
