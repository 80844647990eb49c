import Fraction from 'fraction.js'
import type {Item, Range} from '../lexicon/schema.js'

/**
 * Amounts a kitchen can measure. Each printed amount is within 3 % of the exact one, and the flour and the liquid of one mixture are
 * rounded together so that their proportion stays within half a per cent (one per cent where the receipt's own measures are loose).
 */
export const mostLost = 0.03
export const mostOutOfBalance = 0.005
/** Where flour or liquid is not known to 5 % ("a tea-cup"), a finer balance than this would be no truer. */
export const mostOutOfBalanceLoose = 0.01

/** One ingredient at its new size. */
export interface KitchenInput {
  readonly text: string
  readonly item: string
  readonly group: Item['group'] | null
  readonly part: string
  /** Exact amount in `measure`; null where the receipt gives none. */
  readonly amount: Fraction | null
  readonly amountHigh: Fraction | null
  readonly measure: string
  /** A measure that no row knows, as it is written: it stands behind the number as it is. */
  readonly written?: string
  /** 'count' and the like: things taken by number. */
  readonly byNumber: boolean
  /** The receipt weighs it, or likens its weight to something. */
  readonly byWeight: boolean
  /** What one weighs today, g, for eggs: those of old receipts were smaller. */
  readonly today: number | null
  readonly grams: Range | null
  readonly millilitres: Range | null
}

/** What is printed, and what it is worth. */
export interface KitchenLine {
  readonly text: string
  /** Printed over exact; 1 where nothing was rounded or nothing can be weighed. */
  readonly share: number
  /** Where there was a choice: eggs whole or by weight. */
  readonly choice: string | null
}

interface Candidate {
  readonly text: string
  readonly share: number
  /** Coarser is easier to measure and costs less. */
  readonly cost: number
  readonly choice?: string
}

/** Spoons: metric, 15 and 5 mL. */
const tablespoon = 15
const teaspoon = 5
const gramSteps = [1000, 500, 250, 100, 50, 25, 10, 5, 2, 1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01]
const millilitreSteps = [1000, 500, 250, 100, 50, 25, 10, 5, 2, 1]

const plural: ReadonlyMap<string, string> = new Map(
  Object.entries({
    loaf: 'loaves',
    leaf: 'leaves',
    pinch: 'pinches',
    bunch: 'bunches',
    glass: 'glasses',
    wineglass: 'wineglasses',
    dish: 'dishes',
    box: 'boxes',
    gallon: 'gallons',
  }),
)

/** "cup" → "cups", unless one or less is meant. */
export function pluralOf(noun: string, count: number): string {
  if (count <= 1 || noun === 'count' || noun.startsWith('size of') || noun.startsWith('weight of')) return noun
  if (/[^aeiou]y$/.test(noun)) return `${noun.slice(0, -1)}ies`
  return plural.get(noun) ?? (/(?:s|x|ch|sh)$/.test(noun) ? `${noun}es` : `${noun}s`)
}

/** A whole number and a cook's fraction: 1 1/2, 2/3. */
export const mixed = (value: Fraction): string => value.toFraction(true)

const decimals = (step: number): number => (step >= 1 ? (step % 1 === 0 ? 0 : 1) : step >= 0.1 ? 1 : 2)

function grams(exact: number): Candidate[] {
  const out: Candidate[] = []
  gramSteps.forEach((step, cost) => {
    const value = Math.round(exact / step) * step
    if (value <= 0) return
    const share = value / exact
    if (Math.abs(share - 1) > mostLost || out.some((c) => c.share === share)) return
    const text = value >= 1000 && step >= 10 ? `${trim(value / 1000, 3)} kg` : `${trim(value, decimals(step))} g`
    out.push({text, share, cost: cost + wrong(share)})
  })
  return out
}

/** An amount further off the exact one has to be easier to measure by a step for each two thirds of a per cent. */
const wrong = (share: number): number => Math.abs(share - 1) * 150

function millilitres(exact: number): Candidate[] {
  const out: Candidate[] = []
  millilitreSteps.forEach((step, cost) => {
    const value = Math.round(exact / step) * step
    if (value <= 0) return
    const share = value / exact
    if (Math.abs(share - 1) > mostLost || out.some((c) => c.share === share)) return
    const text = value >= 1000 && step >= 10 ? `${trim(value / 1000, 3)} litres` : `${trim(value, decimals(step))} ml`
    out.push({text: text.replace(/^1 litres$/, '1 litre'), share, cost: cost + wrong(share)})
  })
  return out
}

const trim = (value: number, places: number): string => String(Number(value.toFixed(places)))

/** Spoonfuls, from the exact millilitres: quarters of a tablespoon's or teaspoon's, eighths below one teaspoon. */
function spoons(exact: number): Candidate[] {
  const out: Candidate[] = []
  const add = (count: Fraction, unit: string, size: number, cost: number): void => {
    const value = count.valueOf() * size
    if (value <= 0 || Math.abs(value / exact - 1) > mostLost) return
    out.push({text: `${mixed(count)} ${pluralOf(unit, count.valueOf())}`, share: value / exact, cost})
  }
  const nearest = (size: number, parts: number): Fraction => new Fraction(Math.round((exact / size) * parts), parts)
  if (exact >= 0.9 * tablespoon) {
    add(nearest(tablespoon, 1), 'tablespoon', tablespoon, 0)
    add(nearest(tablespoon, 2), 'tablespoon', tablespoon, 1)
  }
  if (exact < 1.5 * tablespoon) {
    add(nearest(teaspoon, 1), 'teaspoon', teaspoon, 0)
    add(nearest(teaspoon, 2), 'teaspoon', teaspoon, 1)
    add(nearest(teaspoon, 4), 'teaspoon', teaspoon, 2)
  }
  if (exact < 1.5 * teaspoon) add(nearest(teaspoon, 8), 'teaspoon', teaspoon, 3)
  if (exact >= 0.9 * tablespoon) {
    // A tablespoon and so many teaspoons.
    const whole = Math.floor(exact / tablespoon + 1e-9)
    for (const parts of [1, 2, 4]) {
      const rest = new Fraction(Math.round(((exact - whole * tablespoon) / teaspoon) * parts), parts)
      const value = whole * tablespoon + rest.valueOf() * teaspoon
      if (rest.valueOf() <= 0 || rest.valueOf() >= 3 || Math.abs(value / exact - 1) > mostLost) continue
      const text = `${whole} ${pluralOf('tablespoon', whole)} and ${mixed(rest)} ${pluralOf('teaspoon', rest.valueOf())}`
      out.push({text, share: value / exact, cost: 3 + parts})
    }
  }
  return out
}

/** A number of things with a cook's fraction within 3 %, as coarse as may be; null where none is near enough. */
function things(exact: Fraction): {value: Fraction; share: number; cost: number} | null {
  const value = exact.valueOf()
  for (const [cost, parts] of [1, 2, 3, 4, 8].entries()) {
    const near = new Fraction(Math.round(value * parts), parts)
    if (near.valueOf() > 0 && Math.abs(near.valueOf() / value - 1) <= mostLost)
      return {value: near, share: near.valueOf() / value, cost}
  }
  return null
}

/** How much more or less a share is; to a tenth where a whole per cent would look as near as is good enough. */
function percent(share: number): string {
  const off = Math.abs(share - 1)
  const whole = Math.round(off * 100)
  const said = off > mostLost && whole <= mostLost * 100 ? Math.max(mostLost * 100 + 0.1, Math.round(off * 1000) / 10) : whole
  return `${said} % ${share > 1 ? 'more' : 'less'}`
}

/**
 * Eggs come whole where whole ones are within 3 %; else by weight, with the whole number beside it as the other choice. Where the
 * receipt's own eggs were smaller than today's, today's are counted.
 */
function eggs(input: KitchenInput): Candidate[] {
  const mass = input.grams?.likely ?? null
  const written = input.amount!
  const writtenMiddle = input.amountHigh === null ? written : written.add(input.amountHigh).div(2)
  const each = mass === null ? null : mass / writtenMiddle.valueOf()
  const smaller = each !== null && input.today !== null && Math.abs(each / input.today - 1) > 0.08 ? each / input.today : 1
  const low = written.valueOf() * smaller
  const high = (input.amountHigh?.valueOf() ?? written.valueOf()) * smaller
  const noun = input.item
  const say = (count: number): string => `${count} ${pluralOf(noun, count)}`
  const size =
    smaller === 1
      ? null
      : `the receipt’s eggs weighed ${Math.round(each!)} g each, today’s ${Math.round(input.today!)} g: ${mixed(written)} of them`
  const middle = (low + high) / 2
  const within = Math.min(Math.floor(high + 1e-9), Math.max(Math.ceil(low - 1e-9), Math.round(middle)))
  if (high > low && within >= low - 1e-9 && within > 0) {
    const range =
      Math.ceil(low - 1e-9) < Math.floor(high + 1e-9)
        ? `the receipt’s own range allows ${Math.ceil(low - 1e-9)} to ${Math.floor(high + 1e-9)}`
        : null
    return [withChoice({text: say(within), share: within / middle, cost: 0}, [size, range])]
  }
  const whole = Math.max(1, Math.round(middle))
  const share = whole / middle
  if (Math.abs(share - 1) <= mostLost) return [withChoice({text: say(whole), share, cost: 0}, [size])]
  if (mass === null) {
    return [withChoice({text: say(whole), share, cost: 0}, [`${percent(share)} than the receipt’s proportion: eggs come whole`])]
  }
  const part = Math.max(1, Math.ceil(middle - 1e-9))
  const choice = `or ${say(whole)} whole: ${percent(share)}`
  return grams(mass).map((c) => withChoice({...c, text: `${c.text} of ${noun} (beat ${say(part)} and weigh)`}, [choice, size]))
}

const withChoice = (candidate: Candidate, said: ReadonlyArray<string | null>): Candidate => {
  const choice = said.filter((one) => one !== null).join('; ')
  return choice === '' ? candidate : {...candidate, choice}
}

/** Less than any scale or spoon shows: the receipt's own amount. */
function asWritten(input: KitchenInput): Candidate {
  const amount = input.amount ?? new Fraction(0)
  return {text: `${mixed(amount)} ${pluralOf(input.measure, amount.valueOf())}`.replace(/ count$/, ''), share: 1, cost: 0}
}

/** Everything one ingredient could be printed as; empty where no scale or spoon shows so little. */
function candidates(input: KitchenInput): Candidate[] {
  const {amount, measure} = input
  if (amount === null) return [{text: input.text.trim(), share: 1, cost: 0}]
  const high = input.amountHigh?.valueOf() ?? amount.valueOf()
  const middle = input.amountHigh === null ? amount : amount.add(input.amountHigh).div(2)
  if (input.byNumber && input.group === 'egg') return eggs(input)
  if (input.byNumber) {
    const near = things(middle)
    const noun = measure === 'count' ? input.item : measure
    const weight = input.grams === null ? [] : grams(input.grams.likely)
    if (near === null) {
      if (weight.length > 0)
        return weight.map((c) => ({...c, text: `${c.text} (part of ${measure === 'count' ? 'one' : `a ${noun}`})`}))
      return [{text: `${mixed(middle.simplify(0.01))} ${input.written ?? pluralOf(noun, middle.valueOf())}`, share: 1, cost: 0}]
    }
    const beside = weight[0] === undefined ? '' : ` (about ${roughly(input.grams!)})`
    const count = high > amount.valueOf() && near.value.valueOf() % 1 !== 0 ? Math.round(near.value.valueOf()) : null
    const shown = count !== null && count >= amount.valueOf() && count <= high ? new Fraction(count) : near.value
    return [
      {
        text: `${mixed(shown)} ${input.written ?? (measure === 'count' ? '' : pluralOf(noun, shown.valueOf()))}`.trim() + beside,
        share: shown.valueOf() / middle.valueOf(),
        cost: near.cost,
      },
    ]
  }
  const mass = input.grams?.likely ?? null
  const volume = input.millilitres?.likely ?? null
  const asWritten = ownSpoons(input, middle)
  if (asWritten.length > 0) return asWritten
  if (input.byWeight && mass !== null && mass >= 5) return grams(mass)
  const pours =
    volume !== null &&
    volume > 0 &&
    (mass === null || input.group === 'liquid' || input.group === 'spirit' || pourable.has(input.item))
  const small = volume !== null && volume > 0 && volume <= 4 * tablespoon && (mass === null || mass < (pours ? 65 : 40))
  const out: Candidate[] = small && input.group !== 'fat' ? spoonsNear(input, middle, volume) : []
  const later = out.length > 0 ? 20 : 0
  const weighed = mass !== null && mass > 0 ? grams(mass) : []
  const poured = pours ? millilitres(volume) : []
  // What no spoon or jug of today shows is weighed: a third of a tablespoon would be taken for one of today's.
  const rest = poured.length > 0 ? poured : weighed
  out.push(...rest.map((c) => ({...c, cost: c.cost + later})))
  if (out.length > 0) return out
  const near = things(middle)
  const shown = near?.value ?? middle
  return [{text: `${mixed(shown)} ${pluralOf(measure, shown.valueOf())}`, share: near?.share ?? 1, cost: 0}]
}

/** Dairy that is measured in a jug. */
const pourable: ReadonlySet<string> = new Set([
  'milk',
  'new milk',
  'skim milk',
  'sour milk',
  'buttermilk',
  'whey',
  'cream',
  'sour cream',
  'double cream',
  'single cream',
])
const spoonSizes: ReadonlyMap<string, number> = new Map(Object.entries({tablespoon, teaspoon, dessertspoon: 10}))
/** Measures too small or too loose for a scale: kept as they are written. */
const loose: ReadonlySet<string> = new Set(['pinch', 'drop', 'handful', 'saltspoon'])

/** The spoons of the United States and the metric ones are the same in a drawer: 4.93 and 5 mL, 14.8 and 15. */
const sameSpoon = 0.015

/**
 * Spoonfuls near so many millilitres. Where the receipt's spoon is today's but for the country, their number is within 3 % of its own as
 * well, for that is what stands beside it.
 */
function spoonsNear(input: KitchenInput, middle: Fraction, volume: number): Candidate[] {
  const size = spoonSizes.get(input.measure)
  const out = spoons(volume)
  if (size === undefined) return out
  const value = middle.valueOf()
  const today = (value * size) / volume
  if (Math.abs(today - 1) > sameSpoon) return out
  const near = out.filter(({share}) => Math.abs(share / today - 1) <= mostLost)
  return near.length > 0 ? near : numbered(input.measure, value, today)
}

/** So many of a spoon, as coarse as is within 3 % in number; and in volume, today's spoon being `today` times the receipt's. */
function numbered(measure: string, value: number, today: number): Candidate[] {
  for (const [cost, part] of [1, 2, 3, 4, 8].entries()) {
    const near = new Fraction(Math.round(value * part), part)
    const share = near.valueOf() / value
    if (near.valueOf() <= 0 || Math.abs(share - 1) > mostLost || Math.abs(share * today - 1) > mostLost) continue
    return [{text: `${mixed(near)} ${pluralOf(measure, near.valueOf())}`, share: share * today, cost}]
  }
  return []
}

/** The receipt's own spoons where today's are within what its spoon may have been, and pinches as they are. */
function ownSpoons(input: KitchenInput, middle: Fraction): Candidate[] {
  const {measure} = input
  const size = spoonSizes.get(measure)
  const volume = input.millilitres
  if (size === undefined && !loose.has(measure)) return []
  const value = middle.valueOf()
  if (size !== undefined) {
    if (
      volume === null ||
      value * size < volume.low * 0.999 ||
      value * size > volume.high * 1.001 ||
      value * size > 8 * tablespoon
    )
      return []
    // Three teaspoons are a tablespoon: the larger spoon where it comes out even.
    if (measure === 'teaspoon' && value >= 3 && middle.mul(2).mod(3).equals(0) && middle.div(3).mul(2).d === 1n) {
      const spoonfuls = middle.div(3)
      return [{text: `${mixed(spoonfuls)} ${pluralOf('tablespoon', spoonfuls.valueOf())}`, share: 1, cost: 0}]
    }
  }
  const parts = size === undefined ? [1, 2] : [1, 2, 3, 4, 8]
  for (const [cost, part] of parts.entries()) {
    const near = new Fraction(Math.round(value * part), part)
    if (near.valueOf() <= 0 || Math.abs(near.valueOf() / value - 1) > mostLost) continue
    return [{text: `${mixed(near)} ${pluralOf(measure, near.valueOf())}`, share: near.valueOf() / value, cost}]
  }
  return []
}

const roughSteps = [500, 250, 100, 50, 25, 10, 5, 2, 1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01]

/** A weight no finer than its range, as long as it is within 3 %: "350 g", "1.2 kg". */
function roughly(range: Range): string {
  const width = Math.max(range.high - range.low, range.likely * mostLost * 2)
  const near = (step: number): number => Math.round(range.likely / step) * step
  const fits = (step: number): boolean => step <= width / 2 && Math.abs(near(step) / range.likely - 1) <= mostLost
  const step = roughSteps.find(fits) ?? 0.01
  const value = Math.max(step, near(step))
  return value >= 1000 ? `${trim(value / 1000, 3)} kg` : `${trim(value, 2)} g`
}

const dryGroups: ReadonlySet<string> = new Set(['flour', 'meal', 'starch'])
const wetGroups: ReadonlySet<string> = new Set(['liquid', 'dairy', 'egg', 'spirit'])

/** Combinations tried at most in one mixture; beyond that its smallest ingredients keep their finest measure. */
const mostCombinations = 20000

/**
 * Kitchen amounts of a whole receipt.
 *
 * @param inputs ingredients at their new size
 * @returns a line each, in the same order; every share within 3 % except eggs that can only be whole, and the flour to liquid balance
 *   of each part within 0.5 % (or as near as the measures allow)
 */
export function kitchenAmounts(inputs: readonly KitchenInput[]): KitchenLine[] {
  const options = inputs.map((input) => {
    const list = candidates(input)
    return list.length > 0 ? list : [asWritten(input)]
  })
  const chosen = options.map((list) => list.reduce((best, c) => (c.cost < best.cost ? c : best)))
  for (const part of new Set(inputs.map((input) => input.part))) {
    const members = inputs.flatMap((input, i): Member[] => {
      const weight = input.grams?.likely ?? input.millilitres?.likely ?? 0
      const side = input.group === null ? null : dryGroups.has(input.group) ? 'dry' : wetGroups.has(input.group) ? 'wet' : null
      return input.part === part && side !== null && weight > 0 ? [{i, weight, side}] : []
    })
    if (!members.some((m) => m.side === 'dry') || !members.some((m) => m.side === 'wet')) continue
    const unsure = members.some(({i}) => {
      const range = inputs[i]!.grams ?? inputs[i]!.millilitres
      return range !== null && range.high - range.low > 0.1 * range.likely
    })
    for (const {i, choice} of balance(members, options, unsure ? mostOutOfBalanceLoose : mostOutOfBalance)) chosen[i] = choice
  }
  return chosen.map((c) => ({text: c.text, share: c.share, choice: c.choice ?? null}))
}

interface Member {
  readonly i: number
  readonly weight: number
  readonly side: 'dry' | 'wet'
}

/** The cheapest combination that keeps the proportion of dry to wet. */
function balance(
  members: readonly Member[],
  options: readonly Candidate[][],
  most: number,
): Array<{i: number; choice: Candidate}> {
  const bySize = [...members].sort((p, q) => q.weight - p.weight || p.i - q.i)
  let combinations = 1
  const lists = bySize.map(({i}) => {
    const list = [...options[i]!].sort((p, q) => p.cost - q.cost)
    const finest = list.reduce((best, c) => (Math.abs(c.share - 1) < Math.abs(best.share - 1) ? c : best))
    if (combinations * list.length > mostCombinations) return [finest]
    combinations *= list.length
    return list
  })
  const dry = bySize.reduce((sum, m) => sum + (m.side === 'dry' ? m.weight : 0), 0)
  const wet = bySize.reduce((sum, m) => sum + (m.side === 'wet' ? m.weight : 0), 0)
  let best: {picks: number[]; cost: number; error: number} | null = null
  const picks = lists.map(() => 0)
  const walk = (at: number, d: number, w: number, cost: number): void => {
    if (best !== null && best.error <= most && cost > best.cost) return
    if (at === lists.length) {
      const error = Math.abs(w / wet / (d / dry) - 1)
      const good = error <= most
      const better =
        best === null ||
        (good && (best.error > most || cost < best.cost || (cost === best.cost && error < best.error))) ||
        (!good && best.error > most && error < best.error)
      if (better) best = {picks: [...picks], cost, error}
      return
    }
    const member = bySize[at]!
    for (const [k, c] of lists[at]!.entries()) {
      picks[at] = k
      const value = member.weight * c.share
      walk(at + 1, member.side === 'dry' ? d + value : d, member.side === 'wet' ? w + value : w, cost + c.cost)
    }
  }
  walk(0, 0, 0, 0)
  const found = best as {picks: number[]} | null
  return bySize.map(({i}, at) => ({i, choice: lists[at]![found?.picks[at] ?? 0]!}))
}
