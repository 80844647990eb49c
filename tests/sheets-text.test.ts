import {toHtml} from 'hast-util-to-html'
import {describe, expect, it} from 'vitest'
import {parseClock} from '../src/measure/quantity.js'
import {
  clock,
  clockBeside,
  fahrenheit,
  kitchen,
  longDate,
  mass,
  printStep,
  ranged,
  temperatures,
  vesselSize,
  volume,
} from '../src/sheets/figures.js'
import {heatChart} from '../src/sheets/heat-chart.js'
import {heatChartText} from '../src/sheets/heat-chart-text.js'
import {chartData} from '../src/sheets/heat-data.js'
import {oldText} from '../src/sheets/old-text.js'
import {balanceLines, lateLines, planMarkdown, planText, reasonAlone, unplacedLines} from '../src/sheets/plan-text.js'
import {sizedLines} from '../src/sheets/said.js'
import {makeStyle, plainStyle} from '../src/sheets/style.js'
import {styleOf} from '../src/sheets/style-of.js'
import {translationMarkdown, translationText} from '../src/sheets/translation-text.js'
import {forecast, gingerbread, oven, plan, problem, sources, translation} from './fixtures-sheets.js'

const us = makeStyle({units: 'us'})
const metric = makeStyle({units: 'metric'})

describe('the hours of a plan', () => {
  it('say what is the same at every feeding or test once, and of each test what to look for', () => {
    const steps = (['feed', 'feed', 'test', 'test'] as const).map((action, i) => ({
      at: 300 + 30 * i,
      action,
      dishes: [],
      load: null,
      say: `${action} ${i}.`,
      sign: action === 'feed' ? 'A clear flame.' : 'Flour browns.',
      ifAhead: action === 'test' ? 'Too hot: wait.' : null,
      ifBehind: action === 'feed' ? 'Feed oftener.' : 'Too cool: go on.',
      celsius: null,
    }))
    const its = {plan: {...plan, steps}, problem, oven}
    for (const text of [planText(its), planMarkdown(its)]) {
      const times = (words: string): number => text.split(words).length - 1
      expect(steps.map(({say}) => times(say))).toEqual([1, 1, 1, 1])
      expect(['A clear flame.', 'Feed oftener.', 'Too hot: wait.', 'Too cool: go on.', 'Flour browns.'].map(times)).toEqual([
        1, 1, 1, 1, 2,
      ])
    }
  })
})

describe('how a dish was brought to its size', () => {
  const makes = {
    field: 'makes',
    value: '4 × sheet 16 in x 12 in',
    why: 'the receipt does not say how much it makes; its 4.06 kg at about 1.02 kg each',
  }
  const dish = {...problem.dishes[0]!, sized: [makes]}
  // 1 lb = 453.59237 g, 1 in = 2.54 cm (NIST Handbook 44, App. C): 4.06 kg are 8.95 lb, 1.02 kg 2.25 lb, 16 in 40.6 cm.
  it('is said in the units asked for, in either language', () => {
    expect(sizedLines(dish, us)[0]).toBe(
      'makes: 4 × sheet 16 in x 12 in – the receipt does not say how much it makes; its 8.95 lb at about 2.25 lb each',
    )
    expect(sizedLines(dish, styleOf({language: 'de', units: 'us'}))[0]).toMatch(
      / 4 × Blech 16 Zoll × 12 Zoll – .* seine 8,95 lb zu je etwa 2,25 lb$/,
    )
    expect(sizedLines(dish, metric)[0]).toContain('4 × sheet 41 cm x 30 cm')
    expect(sizedLines(dish, styleOf({language: 'de', units: 'metric'}))[0]).toMatch(
      / 4 × Blech 41 cm × 30 cm – .* seine 4,06 kg zu je etwa 1,02 kg$/,
    )
  })
})

describe('figures', () => {
  it('prints a range with no more digits than its width supports', () => {
    expect(ranged({low: 90, likely: 121, high: 160}, 'g', plainStyle)).toBe('120 g (90–160)')
    expect(ranged({low: 453.59, likely: 453.59, high: 453.59}, 'g', plainStyle)).toBe('454 g')
    expect(printStep({low: 0, likely: 0, high: 0})).toBeGreaterThan(0)
  })
  // NIST Handbook 44, App. C: 1 lb = 453.59237 g, 1 US cup = 236.588 ml; 212 °F = 100 °C by definition.
  it('shows pounds, cups and degrees as the handbook defines them', () => {
    const pound = {low: 907.18474, likely: 907.18474, high: 907.18474}
    expect(mass(pound, us)).toBe('2 lb')
    expect(mass(pound, metric)).toBe('907 g')
    const cup = {low: 473.176, likely: 473.176, high: 473.176}
    expect(volume(cup, us)).toBe('2 cups')
    expect(fahrenheit(100)).toBe(212)
    expect(temperatures({low: 204.4, high: 260}, us)).toBe('400–500 °F')
  })
  // NIST Handbook 44, App. C: 1 tsp = 4.929 mL, 1 tbsp = 14.787 mL, 1 cup = 236.588 mL, 1 qt = 946.353 mL.
  it('measures in the cups and spoons of a set, never in decimals of one', () => {
    const exact = (ml: number) => ({low: ml, likely: ml, high: ml})
    expect(volume(exact(200), us)).toBe('3/4 cup + 1 1/2 tbsp')
    expect(volume({low: 1, likely: 2.5, high: 5}, us)).toBe('1/2 tsp (1/4–1)')
    expect(volume({low: 473.2, likely: 473.2, high: 577.6}, us)).toBe('2 cups (2–2 1/2)')
    expect(volume(exact(946.353), us)).toBe('1 qt')
    for (let ml = 1; ml < 6000; ml *= 1.07) {
      const text = volume(exact(ml), us)
      expect(text).toMatch(/^[\d /]+ (?:tsp|tbsp|cups?|qt)(?: \+ [\d /]+ tbsp)?$/)
      // What is written is what was meant, to 17 % for spoons (the set's own steps) and 6 % from a quarter cup upward.
      const unit = {tsp: 4.929, tbsp: 14.787, cup: 236.588, cups: 236.588, qt: 946.353} as Record<string, number>
      const value = text.split(' + ').reduce((sum, part) => {
        const words = part.split(' ')
        const count = words.slice(0, -1).reduce((n, w) => n + Number(w.split('/')[0]) / Number(w.split('/')[1] ?? 1), 0)
        return sum + count * unit[words.at(-1)!]!
      }, 0)
      expect(Math.abs(value / ml - 1), `${ml} ml: ${text}`).toBeLessThan(ml < 2 ? 1 : ml < 60 ? 0.25 : 0.13)
    }
  })
  it('weighs no more closely than a kitchen’s scales, and turns scale and vessel to the units asked for', () => {
    const exact = (g: number) => ({low: g, likely: g, high: g})
    expect(mass(exact(66.1), metric)).toBe('66 g')
    expect(mass(exact(250), us)).toBe('8.8 oz')
    expect(kitchen('4.25 kg', us)).toBe('9.35 lb')
    expect(kitchen('475 ml', us)).toBe('2 cups')
    expect(kitchen('2 tablespoons', us)).toBe('2 tablespoons')
    expect(vesselSize('round 6 in x 3 1/2 in', metric)).toBe('round 15 cm x 9 cm')
    expect(vesselSize('free-standing loaf 23 cm', us)).toBe('free-standing loaf 9 in')
    expect(vesselSize('round 6 in x 3 1/2 in', plainStyle)).toBe('round 6 in x 3 1/2 in')
  })
  it('measures out a liquid in US measures within half a per cent, so that flour and liquid keep their balance', () => {
    // US cup 236.588 ml, tablespoon 14.787 ml, quart 946.353 ml (NIST Handbook 44, App. C).
    const size = {qt: 946.353, cup: 236.588, cups: 236.588, tbsp: 14.7868, tsp: 4.92892}
    const worth = (text: string): number =>
      text.split(' + ').reduce((sum, part) => {
        const [, whole = '0', over = '0', under = '1', unit = ''] = /^(\d+(?!\/))? ?(?:(\d+)\/(\d+))? ?(\w+)$/.exec(part) ?? []
        return sum + (Number(whole) + Number(over) / Number(under)) * size[unit as keyof typeof size]
      }, 0)
    for (let ml = 110; ml < 6000; ml += ml < 1000 ? 1 : 5)
      expect(Math.abs(worth(kitchen(ml < 1500 ? `${ml} ml` : `${ml / 1000} litres`, us)) - ml), `${ml} ml`).toBeLessThanOrEqual(
        Math.max(0.005 * ml, 14.7868 / 4 + 0.01),
      )
    expect(kitchen('1.05 litres', us)).toBe('1 qt + 1/3 cup + 1 1/2 tbsp')
    expect(kitchen('235 ml', us)).toBe('1 cup')
  })
  it('says which day a time is on, in both clocks', () => {
    expect(clock(1440 + 440, plainStyle)).toBe('7:20 am next day')
    expect(clock(-180, makeStyle({clock: 24}))).toBe('21:00 the day before')
    expect(clock(720, plainStyle)).toBe('12 noon')
  })
  // ISO 8601-1:2019, 4.3.8.1: 00:00 begins a day; midnight by its name ends one, as it is read.
  it('writes a midnight that is read as the same minute', () => {
    expect([0, 1440, 2880].map((at) => clock(at, plainStyle))).toEqual([
      '12 midnight the day before',
      '12 midnight',
      '12 midnight next day',
    ])
    for (const style of [plainStyle, makeStyle({clock: 24})])
      for (let at = -2880; at <= 4320; at += 60) expect(parseClock(clock(at, style))).toEqual({ok: true, value: at})
  })
  it('names the day of a time only where it is another than that of the time beside it', () => {
    expect(clockBeside(-150, -300, plainStyle)).toBe('9:30 pm')
    expect(clockBeside(725, -300, plainStyle)).toBe('12:05 pm on the day')
    expect(clockBeside(725, 600, plainStyle)).toBe('12:05 pm')
    expect(clockBeside(1500, 600, plainStyle)).toBe('1:00 am next day')
    expect(clockBeside(1500, 1600, plainStyle)).toBe('1:00 am')
    expect(clockBeside(725, -300, styleOf({language: 'de'}))).toBe('12:05 am Backtag')
    expect(clockBeside(-2000, 300, plainStyle)).toBe('2:40 pm, 2 days before')
  })
  // ISO 8601 example dates: 2000-01-01 was a Saturday; checked against the engine's own calendar.
  it('names the weekday of a date without asking the clock', () => {
    for (const iso of ['2000-01-01', '2027-06-19', '1900-02-28', '2024-02-29', '2100-12-31']) {
      const day = new Intl.DateTimeFormat('en', {weekday: 'long', timeZone: 'UTC'}).format(new Date(`${iso}T00:00:00Z`))
      expect(longDate(iso, plainStyle)).toContain(day)
    }
  })
})

describe('the plan as text', () => {
  const view = {plan, problem, oven, readings: [{minutes: 200, kind: 'floor' as const, value: 250}]}
  it('keeps within 80 columns and uses no colour unless asked', () => {
    const text = planText(view)
    for (const line of text.split('\n')) expect(line.length, line).toBeLessThanOrEqual(80)
    expect(text).not.toContain('\u001b')
    expect(planText(view, {colour: true})).toContain('\u001b[1m')
  })
  it('says what became of floor and heat in each band, to five minutes, and what is left', () => {
    const balance = [
      {band: 'hot', from: 495, to: 647, floor: 4, used: 1, heat: 4.6},
      // Over before five minutes are, and no span to be told.
      {band: 'moderate', from: 649, to: 652, floor: 0.04, used: 0.01, heat: 0.1},
      {band: 'slack', from: 964, to: 1791, floor: 22.7, used: 0, heat: 0},
    ] as const
    const told = {...plan, balance, left: {at: 1790, celsius: 74.6}}
    expect(balanceLines(told, plainStyle)).toEqual([
      'hot (8:15 am to 10:45 am): 1 of 4 m²·h of floor used, 25 %; 4.6 MJ into the food',
      'slack (4:05 pm to 5:50 am next day): 0 of 22.7 m²·h of floor used, 0 %; 0 MJ into the food',
      'When the last is drawn (5:50 am next day) the oven is at about 75 °C (165 °F).',
    ])
    const text = planText({...view, plan: told}).replace(/\s+/g, ' ')
    for (const line of balanceLines(told, plainStyle)) expect(text).toContain(line)
    const inMarkdown = planMarkdown({...view, plan: told})
    for (const line of balanceLines(told, plainStyle)) expect(inMarkdown).toContain(`- ${line}`)
    expect(balanceLines(told, styleOf({language: 'de'}))[0]).toMatch(/1 von 4 m²·h Herd genutzt, 25 %; 4,6 MJ ins Backgut$/)
  })
  it('says that a receipt taken up from those that would fill the floor has the day laid out anew, where there is one', () => {
    const note = 'Once it is written into the day, the whole day is laid out anew'
    const flat = (text: string): string => text.replace(/\s+/g, ' ')
    const suggestions = [{dish: 'rolls', at: 600, draw: 620, zone: 'back', say: 'Rolls would fill idle floor.'}]
    for (const made of [planText, planMarkdown]) {
      expect(flat(made({...view, plan: {...plan, suggestions}}))).toContain(note)
      expect(flat(made({...view, plan: {...plan, suggestions: []}}))).not.toContain(note)
    }
  })
  it('says that none of the spare receipts has room beside the plan, where that is so', () => {
    const none = {...plan, suggestions: []}
    const said = 'None of the spare receipts goes in beside this plan'
    const spare = [problem.day.items[0]!]
    for (const made of [planText, planMarkdown]) {
      expect(made({...view, plan: none, problem: {...problem, day: {...problem.day, spare}}})).toContain(said)
      expect(made({...view, plan: none, problem: {...problem, day: {...problem.day, spare: []}}})).not.toContain(said)
    }
  })
  it('says every step, what to look for, and what cannot be placed with its remedies', () => {
    for (const text of [planText(view).replace(/\s+/g, ' '), planMarkdown(view).replace(/\s+/g, ' ')]) {
      for (const step of plan.steps) {
        expect(text).toContain(step.say)
        if (step.sign) expect(text).toContain(step.sign)
        if (step.ifBehind) expect(text).toContain(step.ifBehind)
      }
      expect(text).toContain('Its heat has passed')
      expect(text).toContain('Burn 30 minutes longer.')
      expect(text).toContain('carbon monoxide')
    }
  })
  it('names a day once, where it begins, and behind the time everywhere else', () => {
    const [first, ...rest] = plan.steps
    const at = (step: typeof first, minutes: number): (typeof plan.steps)[number] => ({...step!, at: minutes})
    const steps = [at(first, -180), at(first, 600), at(rest[0] ?? first, 1440 + 335), at(first, 1440 + 700)]
    const text = planText({...view, plan: {...plan, steps}})
    const days = text
      .split('\n')
      .flatMap((line, i) => (/^ {2}(?:The day before|On the day|Next day):$/.test(line) ? [[line.trim(), i]] : []))
    expect(days.map(([name]) => name)).toEqual(['The day before:', 'On the day:', 'Next day:'])
    expect(text).toMatch(/\n {3}9:00 pm {2}\S/)
    expect(text).toMatch(/Next day:\n {3}5:35 am {2}\S/)
    expect(planMarkdown({...view, plan: {...plan, steps}})).toContain('**5:35 am next day**')
    expect(planText({...view, plan: {...plan, steps: [at(first, 600)]}})).not.toMatch(/^ {2}On the day:$/m)
  })
  it('draws the likely curve where the forecast has it', () => {
    const data = chartData(plan, problem)
    const lines = heatChartText(forecast, {...data, style: metric}).split('\n')
    const axis = lines.findIndex((line) => /^ {6}[-+]+$/.test(line))
    const rows = lines.slice(1, axis)
    const top = Number(rows[0]!.slice(0, 5))
    const column = 20
    const minute = data.raked + (column / 63) * (data.until - data.raked)
    const row = rows.findIndex((line) => line[6 + column] === '*')
    const celsius = top - (row / (rows.length - 1)) * (top - 40)
    const expected = forecast.baking.likely[Math.round((minute - data.lit) / forecast.step)]!
    expect(Math.abs(celsius - expected)).toBeLessThan((top - 40) / (rows.length - 1))
  })
  it('tells of every fire of the day, and draws nothing while a later one burns', () => {
    const data = chartData(plan, problem)
    const first = {lit: data.lit, raked: data.raked, ready: data.ready}
    const again = {lit: data.ready + 240, raked: data.ready + 300, ready: data.ready + 330}
    const fires = [first, again].map((fire) => ({...fire, firing: forecast.firing}))
    const alone = heatChartText(forecast, {...data, style: metric})
    const both = heatChartText(forecast, {...data, fires, style: metric})
    expect(alone.match(/Ready (?:again )?at/g)).toEqual(['Ready at'])
    expect(both.match(/Ready (?:again )?at/g)).toEqual(['Ready at', 'Ready again at'])
    const stars = (text: string): number => text.split(/\n {6}[-+]+\n/)[0]!.split('*').length - 1
    const column = (data.until - data.raked) / 63
    expect(Math.abs(stars(alone) - stars(both) - 60 / column)).toBeLessThanOrEqual(1)
    const drawn = (fires: readonly (typeof first)[]): string =>
      toHtml(heatChart(forecast, {...data, fires}, {style: metric}), {space: 'svg'})
    expect(drawn([first])).not.toContain('ready again')
    expect(drawn([first, again])).toContain('it is ready again at')
  })
})

describe('a translation as text', () => {
  it('sets the old words beside the modern figure, its range and its source', () => {
    const text = translationText(translation, {sources})
    for (const line of text.split('\n')) expect(line.length, line).toBeLessThanOrEqual(80)
    expect(text).toMatch(/half a pint of molasses\s+335 g \(320–350\)/)
    expect(text).toContain('[1]  NIST Handbook 44')
    expect(text).toContain('“a quick oven”: hot, 190–230 °C (375–445 °F)')
    expect(text).toContain('Ours, not the receipt’s')
    expect(text).toContain('Pearl-ash is caustic')
  })
  it('shows the chain of every figure with why', () => {
    expect(translationText(translation, {sources})).not.toContain('1.42 g/ml')
    expect(translationText(translation, {sources, why: true})).toContain('> 236.6 ml × 1.42 g/ml = 337 g [2]')
    expect(translationMarkdown(translation, {sources, why: true})).toContain('1.42 g/ml')
  })
  it('lets no escape sequence or mark-up of a receipt take effect', () => {
    const hostile = {
      ...translation,
      receipts: [{...gingerbread, title: '\u001b]0;x\u0007<script>a</script> | [b](javascript:c)'}],
    }
    const text = translationText(hostile, {sources})
    expect(text).not.toContain('\u001b')
    expect(text).not.toContain('\u0007')
    const markdown = translationMarkdown(hostile, {sources})
    expect(markdown).not.toContain('<script>')
    expect(markdown).toContain('\\<script\\>')
    expect(markdown).not.toContain('[b](javascript')
  })
})

describe('the old text', () => {
  const words = (source: string): string => toText(oldText(source, 0, []))
  const toText = (nodes: ReturnType<typeof oldText>): string =>
    nodes
      .map((node) =>
        node.type === 'text' ? node.value : node.type === 'element' ? `<${node.tagName}>${toText(node.children)}` : '',
      )
      .join('')
  it('keeps tables, bare links, struck words and footnotes of a receipt, with or without looking for them', () => {
    expect(words('| a | b |\n| - | - |\n| 1 | 2 |\n')).toContain('<table>')
    expect(words('see www.example.org for it')).toContain('<a>')
    expect(words('~~salt~~ sugar')).toContain('<del>')
    expect(words('flour[^1]\n\n[^1]: sifted')).toContain('<sup>')
    expect(words('- [ ] flour\n- [x] salt')).toContain('<input>')
    expect(words('# Cake\n\nTake *good* flour.')).toBe('<h1>Cake\n<p>Take <em>good flour.')
  })
})

describe('dishes without a place', () => {
  const sponge = problem.dishes[0]!
  const batches = (out: readonly number[], of: number): string[] => {
    const some = Array.from({length: of}, (_, i) => ({
      ...sponge,
      id: `sponge-${i + 1}`,
      title: `${sponge.title} (${i + 1}/${of})`,
    }))
    const day = {...problem, dishes: [...problem.dishes.slice(1), ...some]}
    const unplaced = out.map((i) => ({...plan.unplaced[0]!, dish: `sponge-${i}`}))
    return unplacedLines({...plan, unplaced}, day, plainStyle).map(({title}) => title)
  }
  it('are named once where they are batches of one dish and share a reason', () => {
    expect(batches([1, 3], 3)).toEqual([`${sponge.title} (1/3 and 3/3)`])
    expect(batches([1, 2, 4], 4)).toEqual([`${sponge.title} (1/4, 2/4 and 4/4)`])
    expect(batches([1, 2], 2)).toEqual([sponge.title])
    expect(batches([2], 3)).toEqual([`${sponge.title} (2/3)`])
  })
  it('are named once too where what would help them is alike but for their number, and where they come late', () => {
    const some = Array.from({length: 12}, (_, i) => ({...sponge, id: `sponge-${i + 1}`, title: `${sponge.title} (${i + 1}/12)`}))
    const day = {...problem, dishes: [...problem.dishes.slice(1), ...some]}
    const unplaced = [3, 4].map((i) => ({
      ...plan.unplaced[0]!,
      dish: `sponge-${i}`,
      remedies: [`Bake ${sponge.title} (${i}/12) all the same.`],
    }))
    expect(unplacedLines({...plan, unplaced}, day, plainStyle)).toMatchObject([
      {title: `${sponge.title} (3/12 and 4/12)`, remedies: [`Bake ${sponge.title} (3/12) all the same.`]},
    ])
    const late = [10, 2].map((i) => ({dish: `sponge-${i}`, wanted: 720, drawn: 750}))
    expect(lateLines({...plan, late}, day, plainStyle).map(({title}) => title)).toEqual([`${sponge.title} (2/12 and 10/12)`])
    expect(lateLines({...plan, late: [late[0]!, {...late[1]!, drawn: 760}]}, day, plainStyle)).toHaveLength(2)
  })
  it('are told how many of how many without their title again', () => {
    const reason = `12 of 24 of ${sponge.title}: more than the floor holds`
    expect(reasonAlone(sponge.id, reason, problem)).toBe('12 of 24: more than the floor holds')
    expect(reasonAlone(sponge.id, `12 von 24 ${sponge.title}: zu viel`, problem)).toBe('12 von 24: zu viel')
    expect(reasonAlone(sponge.id, `${sponge.title}: too much`, problem)).toBe('too much')
    expect(reasonAlone(sponge.id, 'beside it stands more', problem)).toBe('beside it stands more')
  })
  it('are named apart where their reasons differ', () => {
    const [one] = plan.unplaced
    const unplaced = [one!, {...one!, dish: 'baked-beans', reason: 'Its heat comes too late.'}]
    expect(unplacedLines({...plan, unplaced}, problem, plainStyle).map(({reason}) => reason)).toEqual([
      one!.reason,
      'Its heat comes too late.',
    ])
  })
})
