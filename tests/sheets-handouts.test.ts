import {beforeAll, describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import {items} from '../src/lexicon/items.js'
import {sources} from '../src/lexicon/sources.js'
import {type MadePlan, makePlan} from '../src/plan/make.js'
import {translate} from '../src/receipt/translate.js'
import {concerned, numbered, receiptName} from '../src/sheets/heat-data.js'
import {type SheetOptions, sheets} from '../src/sheets/sheets.js'

const read = readDayFolder('corpus-demo')
let day: MadePlan
beforeAll(() => {
  day = makePlan({oven: read.oven, day: read.day, receipts: read.receipts, options: {effort: 'quick'}})
}, 60_000)

const made = (options: SheetOptions): Map<string, string> =>
  sheets(
    {plan: day.plan, problem: day.problem, oven: read.oven, receipts: read.receipts, texts: read.sources, sources, items},
    options,
  )
const plain = (html: string): string =>
  html
    .replace(/<style[\s\S]*?<\/style>/g, '')
    .replace(/<[^>]+>/g, ' ')
    .replace(/\s+/g, ' ')

describe('handouts by whom they are for', () => {
  it('give a class an exercise, the kitchen none, visitors the word list', () => {
    const page = (audience: 'class' | 'kitchen' | 'visitors'): string => made({audience}).get('handouts/mutton-pies.html')!
    const [school, kitchen, visitors] = [page('class'), page('kitchen'), page('visitors')]
    expect([...school.matchAll(/<article class="([^"]+)"/g)].map((match) => match[1])).toEqual([
      'sheet handout class',
      'sheet exercise',
    ])
    expect(school).toMatch(/\.exercise \{ break-before: page; \}/)
    expect(plain(school)).toContain('Put these dishes in order, the one that needs the most heat first')
    expect(plain(school)).toContain('Turn these measures into grams or millilitres')
    for (const other of [kitchen, visitors]) expect(plain(other)).not.toContain('Put these dishes in order')
    expect(plain(school)).toContain('Old words in it')
    expect(plain(visitors)).toContain('Old words in it')
    expect(plain(kitchen)).not.toContain('Old words in it')
  })

  it('tell a class of an old way of writing only by a receipt that is old', () => {
    const all = made({audience: 'class'})
    const lines = read.receipts.flatMap(({title, year}) => {
      const html = [...all.values()].find(
        (page) => page.includes(`<h1>${title}</h1>`) && page.includes('class="sheet handout class"'),
      )
      if (html === undefined) return []
      return [{year, old: html.includes('An old way of writing'), modern: html.includes('How a recipe is written')}]
    })
    expect(lines.filter(({old, modern}) => old || modern).length).toBeGreaterThan(3)
    for (const {year, old, modern} of lines.filter((line) => line.old || line.modern)) {
      expect(modern).toBe(year !== null && year >= 2000)
      expect(old).toBe(!modern)
    }
    expect(lines.some(({old}) => old)).toBe(true)
    expect(lines.some(({modern}) => modern)).toBe(true)
  })

  it('keep the key of a class out of what is copied for all: in a file beside each handout, named apart on the index', () => {
    const all = made({audience: 'class'})
    const names = [...all.keys()].filter((path) => path.startsWith('handouts/'))
    const keys = names.filter((path) => path.endsWith('-key.html'))
    expect(keys.length).toBe(read.receipts.length)
    for (const path of names) {
      const isKey = keys.includes(path)
      const html = all.get(path)!
      for (const mark of ['class="sheet answers"', 'Answer key', 'By the table between']) {
        if (!isKey) expect(html, `${path}: ${mark}`).not.toContain(mark)
      }
      if (isKey) {
        expect(names).toContain(path.replace('-key.html', '.html'))
        expect(
          [...html.matchAll(/<article class="([^"]+)"/g)].map((match) => match[1]),
          path,
        ).toEqual(['sheet answers'])
        // The page's list of sheets shows what stands before the first colon.
        expect(/<title>([^:]*):/.exec(html)?.[1], path).toMatch(/., answer key$/)
      }
    }
    const index = all.get('index.html')!
    const [toHandOut, forTeacher] = index.slice(index.indexOf('To hand out')).split('For the teacher alone') as [string, string]
    for (const path of keys) {
      expect(toHandOut).not.toContain(path)
      expect(forTeacher).toContain(path)
    }
    for (const audience of ['kitchen', 'visitors'] as const) {
      const other = made({audience})
      expect([...other.keys()].filter((path) => path.endsWith('-key.html'))).toEqual([])
      expect(other.get('index.html')).not.toContain('For the teacher alone')
    }
  })

  it('keep every file where one receipt is called as the key of another would be', () => {
    const text = '# A Cake\n\n- a pound of flour\n\nBake it in a slow oven an hour.\n'
    for (const names of [
      ['cake', 'cake-key'],
      ['cake-key', 'cake'],
    ]) {
      const receipts = names.flatMap((name) => translate(text, {file: `receipts/${name}.md`}).receipts)
      const texts = new Map(names.map((name) => [`receipts/${name}.md`, text]))
      const paths: string[] = []
      const all = sheets(
        {plan: day.plan, problem: day.problem, oven: read.oven, receipts, texts, sources, items},
        {audience: 'class', onSheet: (path) => paths.push(path)},
      )
      expect(paths.filter((path) => path.startsWith('handouts/')).length).toBe(4)
      expect(new Set(paths).size, names.join()).toBe(paths.length)
      expect(all.size).toBe(paths.length)
    }
  })

  it('answer their own questions: the order of heat falls, and a pound is a pound', () => {
    const all = made({audience: 'class', degrees: 'C'})
    const html = all.get('handouts/mutton-pies.html')!
    const key = all.get('handouts/mutton-pies-key.html')!
    const from = key.indexOf('<ol><li>', key.indexOf('<ol>') + 4)
    const order = key.slice(from, key.indexOf('</ol>', from))
    const heats = [...plain(order).matchAll(/(\d+)(?:–(\d+))? °C/g)].map(
      (match) => (Number(match[1]) + Number(match[2] ?? match[1])) / 2,
    )
    expect(heats.length).toBeGreaterThanOrEqual(3)
    expect(heats).toEqual([...heats].sort((a, b) => b - a))
    // A pound is 453.6 g (NIST Handbook 44, App. C): four pounds are 1.81 kg.
    expect(plain(html)).toContain('1.81 kg / 4 lb')
  })

  it('ask why the back is the place only for what the plan sets there', () => {
    const all = made({audience: 'class'})
    const zones = new Map<string, Set<string>>()
    for (const entry of numbered(day.plan, day.problem)) {
      const file = day.problem.dishes.find((dish) => dish.id === entry.id)!.file
      zones.set(file, (zones.get(file) ?? new Set()).add(entry.zone))
    }
    const asked = [...zones].map(([file, places]) => {
      const page = plain(all.get(`handouts/${file.replace(/^.*\//, '').replace('.md', '')}.html`)!)
      return {
        file,
        back: page.includes('Why is the back of the oven the place for'),
        planned: places.size === 1 && places.has('back'),
      }
    })
    for (const {file, back, planned} of asked) expect(back, file).toBe(planned)
    expect(new Set(asked.map(({planned}) => planned)).size).toBe(2)
  })

  /** Times of a 24-hour clock in a text, minutes after midnight. */
  const minutes = (text: string): number[] =>
    [...text.matchAll(/(\d+):(\d\d)( next day)?/g)].map(([, h, m, next]) => Number(h) * 60 + Number(m) + (next ? 1440 : 0))

  /** The handouts for a class that have a table of the falling oven, each with its key. */
  const withTable = (): {path: string; html: string; table: string}[] => {
    const all = made({audience: 'class', clock: 24})
    return [...all].flatMap(([path, html]) => {
      const table = /<table class="fall">.*?<\/table>/s.exec(html)?.[0]
      if (!path.startsWith('handouts/') || table === undefined) return []
      return [{path, html: html + all.get(path.replace('.html', '-key.html'))!, table}]
    })
  }

  it('ask only for times that stand in their table of the falling oven, which skips no hours', () => {
    let asked = 0
    for (const {path, html, table} of withTable()) {
      asked++
      const rows = minutes(plain(table))
      // From when the oven is ready, and then at full hours.
      expect(rows[0], path).toBe(day.plan.ready)
      const [, next, ...later] = rows
      expect(next! - rows[0]!, path).toBeLessThanOrEqual(60)
      const steps = new Set(later.map((at, i) => at - rows[i + 1]!))
      expect(steps.size, `${path}: ${rows.join()}`).toBe(1)
      const [from, to] = minutes(/between about[^;]*/.exec(plain(html))![0]) as [number, number]
      expect(from, path).toBeGreaterThanOrEqual(rows[0]!)
      expect(to, path).toBeLessThanOrEqual(rows.at(-1)!)
    }
    expect(asked).toBeGreaterThan(5)
  })

  it('have the key that a reader of the table finds, in either scale, and say how far one may be off', () => {
    let asked = 0
    for (const {path, html, table} of withTable()) {
      asked++
      const words = plain(html)
      const question = /to be set in at (\d+)–(\d+) °C \((\d+)–(\d+) °F\)\. The oven is ready at ([\d:]+)/.exec(words)!
      const key = /By the table between about ([^;]*); (?:(\d+) h ?)?(?:(\d+) min)? more or less/.exec(words)!
      const within = Number(key[2] ?? 0) * 60 + Number(key[3] ?? 0)
      // A slack oven falls by a row of the table in an hour and more.
      expect(within, path).toBeLessThanOrEqual(Number(question[2]) < 110 ? 120 : 60)
      const times = minutes(plain(table))
      const heats = [...plain(table).matchAll(/(\d+) °C \((\d+) °F\)/g)].map(([, c, f]) => [Number(c), Number(f)] as const)
      for (const scale of [0, 1] as const) {
        // A ruler laid from row to row, from the top for the hot end and from the bottom for the cool one.
        const at = (heat: number, i: number): number => {
          const [a, b] = [heats[i]![scale], heats[i + 1]![scale]]
          return times[i]! + ((a - heat) / (a - b)) * (times[i + 1]! - times[i]!)
        }
        const [low, high] = [Number(question[1 + 2 * scale]), Number(question[2 + 2 * scale])]
        const first = heats.findIndex((heat) => heat[scale] <= high)
        const from = first === 0 ? minutes(question[5]!)[0]! : at(high, first - 1)
        const last = heats.findLastIndex((heat) => heat[scale] >= low)
        const to = last === heats.length - 1 ? times.at(-1)! : at(low, last)
        const [keyFrom, keyTo] = minutes(key[1]!) as [number, number]
        expect(Math.abs(keyFrom - from), `${path}: from`).toBeLessThanOrEqual(within + 3)
        expect(Math.abs(keyTo - to), `${path}: to`).toBeLessThanOrEqual(within + 3)
        // In the scale it is read from, to the five minutes it is printed to.
        if (scale === 0) expect(Math.max(Math.abs(keyFrom - from), Math.abs(keyTo - to)), path).toBeLessThanOrEqual(3)
      }
    }
    expect(asked).toBeGreaterThan(5)
  })

  it('ask a class to turn nothing that stands in today’s figures already, and into the figures its key has', () => {
    const quiche = plain(made({audience: 'class'}).get('handouts/onion-quiche.html')!)
    const asked = quiche.slice(quiche.indexOf('Turn these measures'), quiche.indexOf('Put these dishes in order'))
    expect(asked).toContain('3–4 tbsp')
    expect(asked).not.toMatch(/\d+ ?k?g |\d ?ml /)
    const us = made({audience: 'class', units: 'us'})
    const bread = us.get('handouts/household-bread.html')!
    const questions = plain(bread.slice(bread.indexOf('class="sheet exercise"')) + us.get('handouts/household-bread-key.html')!)
    expect(questions).toContain('today’s cups and spoons, or into ounces and pounds')
    expect(questions).not.toMatch(/grams or millilitres|pounds of flour/)
  })

  it('explain the heat of an old word in the scale that was asked for, in either language', () => {
    for (const language of ['en', 'de'] as const) {
      const list = (units: 'us' | 'metric' | 'both'): string => {
        const html = made({audience: 'visitors', units, language}).get('handouts/french-rolls.html')!
        return plain(html.slice(html.indexOf('<dl>'), html.indexOf('</dl>')))
      }
      expect(list('both')).toMatch(/°C \(.*°F\)/)
      expect(list('us')).toMatch(/400 (?:to|bis) 500 °F/)
      expect(list('us')).not.toContain('°C')
      expect(list('metric')).toMatch(/205 (?:to|bis) 260 °C/)
      expect(list('metric')).not.toContain('°F')
    }
  })

  it('cite a source for every figure, as a footnote that is there', () => {
    for (const [path, html] of [...made({audience: 'visitors'}), ...made({audience: 'class'})]) {
      if (!path.startsWith('handouts/')) continue
      const ids = new Set([...html.matchAll(/ id="([^"]+)"/g)].map((match) => match[1]))
      for (const [, target] of html.matchAll(/href="#([^"]+)"/g)) expect(ids.has(target), `${path} #${target}`).toBe(true)
    }
  })

  it('turn a modern receipt to the falling oven, and no old one', () => {
    const all = made({audience: 'visitors'})
    const converse = [...all.keys()].filter((path) => path.endsWith('-in-a-falling-oven.html'))
    expect(converse).toContain('handouts/onion-quiche-in-a-falling-oven.html')
    expect(converse).not.toContain('handouts/mutton-pies-in-a-falling-oven.html')
    const text = plain(all.get('handouts/onion-quiche-in-a-falling-oven.html')!)
    for (const part of [
      'When in the day',
      'What to change',
      'The oven is moderate enough from',
      'fan oven',
      'Place on the floor',
    ])
      expect(text).toContain(part)
  })

  it('ask of the falling oven no less than the recipe says, and at a time that lasts', () => {
    const all = made({audience: 'visitors', degrees: 'C', clock: 24})
    const pages = [...all].filter(([path]) => path.endsWith('-in-a-falling-oven.html'))
    expect(pages.length).toBeGreaterThan(2)
    for (const [path, html] of pages) {
      const text = plain(html)
      const says = /What the recipe says .*?: \w+ , (\d+)/.exec(text)
      const asks = /recipe’s heat or a little above it, (\d+)(?:–(\d+))? °C/.exec(text)
      expect(Number(asks?.[1]), path).toBeGreaterThanOrEqual(Number(says?.[1]))
      const time = /enough from (\d+):(\d+), heat [\d–]+ °C, to (\d+):(\d+), heat/.exec(text)
      if (time === null) expect(text, path).toContain('never right for it')
      else expect(Number(time[3]) * 60 + Number(time[4]) - Number(time[1]) * 60 - Number(time[2]), path).toBeGreaterThan(0)
    }
  })

  it('give a home oven the vessel that the receipt’s own time is of, and tell the day’s apart with how that changes the time', () => {
    const time = {
      field: 'time',
      value: '60 min',
      why: '44 % thinner than its time was given for: the time goes as the square, so 31 % of 195 min',
    }
    const dishes = day.problem.dishes.map((dish) =>
      dish.id === 'plum-cake'
        ? {...dish, ownVessel: 'round 12 in x 5 in', inferred: [...dish.inferred, time], sized: [...dish.sized, time]}
        : dish,
    )
    const of = (problem: MadePlan['problem']): string =>
      plain(
        sheets({plan: day.plan, problem, oven: read.oven, receipts: read.receipts, texts: read.sources, sources, items}, {}).get(
          'handouts/plum-cake.html',
        )!,
      )
    const other = of({...day.problem, dishes})
    expect(other).toMatch(/Baked in: round 12 in x 5 in.*Baked today in: round 10 in x 4 in.*time: 60 min – 44 % thinner/)
    const own = of(day.problem)
    expect(own).toContain('Baked in: round 10 in x 4 in')
    expect(own).not.toContain('Baked today in')
  })

  it('are named after the dish, not after a batch of it', () => {
    const [first] = day.problem.dishes
    const batch = {...first!, title: `${first!.title} (1/3)`}
    const problem = {...day.problem, dishes: [batch, ...day.problem.dishes.slice(1)]}
    expect(receiptName(problem, {file: batch.file, title: 'Another title'})).toBe(first!.title)
  })

  it('say a note that several ingredients share once, with a mark at each', () => {
    const file = 'receipts/two-pints.md'
    const text =
      '---\nyear: 1750\nplace: England\nserves: 8\n---\n\n# A Plain Pudding\n\n- a pint of milk\n- a pint of cream\n- half a pound of flour\n\nBake it in a slow oven an hour.\n'
    const {receipts} = translate(text, {file})
    const all = sheets(
      {plan: day.plan, problem: day.problem, oven: read.oven, receipts, texts: new Map([[file, text]]), sources, items},
      {audience: 'kitchen'},
    )
    const html = all.get('handouts/two-pints.html')!
    expect(html.match(/ale measure, 282 in³ to the gallon\)\./g)?.length).toBe(1)
    expect(html.match(/href="#note-a"/g)?.length).toBe(2)
  })
})

describe('figures as they were asked for', () => {
  it('US: no gram, litre or degree Celsius of ours', () => {
    const us = made({units: 'us', audience: 'kitchen'})
    const list = plain(us.get('shopping.html')!)
    expect(list).not.toMatch(/\d (?:ml|l|kg)\b/)
    expect(list).toMatch(/\d (?:lb|oz|cups?)\b/)
    expect(plain(us.get('heat.html')!)).not.toMatch(/\d °C/)
    expect(plain(us.get('heat.html')!)).toMatch(/\d °F/)
    expect(plain(us.get('floor.html')!)).not.toMatch(/\d cm\b/)
  })
  it('metric: no ounce, cup, inch or degree Fahrenheit of ours', () => {
    const metric = made({units: 'metric', audience: 'kitchen'})
    expect(plain(metric.get('shopping.html')!)).not.toMatch(/\d (?:oz|lb|cups?|qt)\b/)
    expect(plain(metric.get('heat.html')!)).not.toMatch(/\d °F/)
    expect(plain(metric.get('floor.html')!)).not.toMatch(/\d in\b(?! at)/)
  })
  it('12 hours or 24, and degrees apart from units', () => {
    const day24 = made({clock: 24, degrees: 'F', units: 'metric', audience: 'kitchen'}).get('day.txt')!
    expect(day24).not.toMatch(/\d (?:am|pm)\b/)
    expect(day24).toMatch(/\d °F/)
    expect(day24).toMatch(/\d kg/)
    const day12 = made({clock: 12, audience: 'kitchen'}).get('day.txt')!
    expect(day12).toMatch(/\d:\d\d (?:am|pm)/)
    expect(day12).not.toMatch(/\b(?:1[3-9]|2[0-3]):\d\d\b/)
  })
})

describe('the day sheet', () => {
  it('names at every draw each dish that is drawn, from whatever load', () => {
    const html = made({audience: 'kitchen'}).get('day.html')!
    const dishes = numbered(day.plan, day.problem)
    for (const step of day.plan.steps.filter(({action}) => action === 'draw'))
      expect(new Set(concerned(step, dishes).map(({id}) => id)), `draw at ${step.at}`).toEqual(new Set(step.dishes))
    // Every dish of every load is drawn somewhere on the sheet, by its number.
    const drawn = [...html.matchAll(/<strong>Draw<\/strong>(.*?)<\/p>/g)].flatMap(([, deed]) =>
      [...deed!.matchAll(/class="no">(\d+)</g)].map((match) => Number(match[1])),
    )
    expect(drawn.sort((a, b) => a - b)).toEqual(dishes.map(({number}) => number))
  })
  it('calls receipts by the names of the day’s list in exercises', () => {
    const pies = read.receipts.find(({file}) => file.endsWith('mutton-pies.md'))!
    expect(receiptName(day.problem, pies)).toBe('Mutton pies')
  })
})

describe('the whole set', () => {
  it('is the same bytes for the same input', () => {
    expect([...made({audience: 'class'})]).toEqual([...made({audience: 'class'})])
  })
  it('is linked from index.html, every file of it', () => {
    const all = made({audience: 'class'})
    const linked = new Set([...all.get('index.html')!.matchAll(/href="([^"#]+)"/g)].map((match) => match[1]))
    expect([...all.keys()].filter((path) => path !== 'index.html' && !linked.has(path))).toEqual([])
  })
  it('prints the cautions with fire, wood, fumes, ash, burns, arm, children, food, allergens and who decides', () => {
    const pin = plain(made({}).get('pin-up.html')!)
    for (const part of [
      'tight metal lid',
      'untreated',
      'Carbon monoxide',
      'arm count',
      'Children and visitors',
      '74 °C (165 °F)',
      'two hours',
      'Allergens',
      'Local fire, building and food codes and licensed practice decide',
    ])
      expect(pin).toContain(part)
  })
})
