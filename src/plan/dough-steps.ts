import {lookUpItem} from '../lexicon/index.js'
import {writeDuration} from '../measure/quantity.js'
import type {Message} from '../receipt/types.js'
import {coldProveOf, coldRiseOf} from '../scale/cold-rise.js'
import {type Dough, waitsLong} from './dough-work.js'
import {intoNight} from './hands.js'
import {lineOf} from './model.js'
import {OneDough, ofWhole, type Stage} from './one-dough.js'
import {type PhraseId, phrase} from './phrases.js'
import {rules} from './rules.js'
import type {Phrase, PhraseValue, PlanProblem, Step} from './types.js'

/** What a step says beside what is to be done. */
export interface StepExtra {
  readonly untimed?: boolean
  readonly further?: readonly number[]
  readonly sign?: Phrase | null
  readonly ahead?: Phrase | null
  readonly behind?: Phrase | null
  readonly celsius?: Step['celsius']
}

/** Puts a step into the day; of those at one minute the one of the least `rank` comes first. */
export type PutStep = (
  rank: number,
  at: number,
  action: Step['action'],
  dishes: readonly string[],
  load: number | null,
  say: Phrase,
  extra?: StepExtra,
) => void

/** A shaped dough that waited in the cold stands in the warm for so long at least before it goes in, minutes. Common practice, no source. */
const LAST_WARM = 15

/** What is said of a dough that rises, or proves, in a cold place. */
const RISES_IN = {refrigerator: 'rise cold', cellar: 'rise cool'} as const
const SPONGE_IN = {refrigerator: 'sponge cold', cellar: 'sponge cool'} as const
const PROVES_IN = {refrigerator: 'prove in refrigerator', cellar: 'prove in cellar', cold: 'prove cold'} as const

/** Whether water, and nothing else that a dough is wetted with cold, goes into a dish. */
const wetWithWater = ({amounts, dough}: PlanProblem['dishes'][number]): boolean =>
  dough?.spoils !== true && amounts.some(({item}) => lookUpItem(item)?.id === 'water')

/**
 * The work of the doughs: sponge, mixing, rising, shaping and proving of each, a dough that goes in by several loads told as one for as long
 * as it is one.
 *
 * @returns What is warned of.
 */
export function doughSteps(problem: PlanProblem, doughs: readonly Dough[], put: PutStep): readonly Message[] {
  const messages: Message[] = []
  const names = (ids: readonly string[]): PhraseValue => ({unit: 'dishes', dishes: ids})
  const min = (value: number): PhraseValue => ({unit: 'minutes', value})
  const p = (id: PhraseId, values: Record<string, PhraseValue> = {}): Phrase => phrase(id, values)
  const shared = new OneDough(doughs)
  for (const d of doughs) {
    const dough = d.dish.dough!
    const hold = min(dough.hold)
    const raw = d.dish.raw === true
    // Two doughs of one dish are worked within an hour or so of each other: each is told by its number and its load.
    const numbered = ({batch, load}: typeof d, id: 'batch' | 'part'): Phrase[] =>
      batch === null
        ? []
        : [
            p(id, {
              dishes: names([d.dish.id]),
              number: batch.number,
              of: batch.of,
              count: {unit: 'count', value: batch.count},
              load,
            }),
          ]
    const told = (phrases: readonly Phrase[]): PhraseValue =>
      phrases.length === 0 ? names([d.dish.id]) : {unit: 'phrases', phrases}
    const who = told(numbered(d, ofWhole('shape', d) ? 'part' : 'batch'))
    const whose = (stage: Stage, all: readonly (typeof d)[]): PhraseValue =>
      told(ofWhole(stage, d) ? [] : all.flatMap((one) => numbered(one, 'batch')))
    const further = (all: readonly (typeof d)[]): {further?: readonly number[]} =>
      all.length > 1 ? {further: all.slice(1).map(({load}) => load)} : {}
    const [sponged, mixedWith, risesWith, shapedWith] = (['sponge', 'mix', 'rise', 'shape'] as const).map((stage) =>
      shared.toldWith(stage, d),
    )
    if (d.sponge !== null && sponged)
      put(
        0,
        d.sponge,
        'sponge',
        [d.dish.id],
        d.load,
        p(d.spongeIn ? SPONGE_IN[d.spongeIn.id] : dough.again ? 'sponge again' : 'sponge', {
          dishes: whose('sponge', sponged),
          until: {unit: 'clock', value: d.mix},
        }),
        {
          ...further(sponged),
          sign: p('sign sponge'),
          ...(d.spongeIn ? {ahead: p('ahead sponge'), behind: p('behind sponge')} : {}),
        },
      )
    if (d.sponge !== null && d.spongeIn && sponged) {
      const works = d.mix - d.sponge - rules.setSponge
      messages.push({
        ...lineOf(problem.day, d.dish),
        severity: 'warning',
        rule: 'cold-rise',
        reason: `${d.dish.title}: its sponge works ${writeDuration(works)} through the night, ${writeDuration(works - dough.sponge!.high)} longer than it is meant to; it stands in the cold for that`,
        suggest: 'look at it first thing in the morning: make the dough of it as soon as it begins to fall',
      })
    }
    const mixed: PhraseId =
      d.sponge !== null || d.dish.evening?.some(({does}) => does === 'set')
        ? d.cool
          ? 'evening before sponge'
          : 'mix sponge'
        : d.cool
          ? wetWithWater(d.dish)
            ? 'evening before'
            : 'evening before cold'
          : 'mix'
    if (mixedWith)
      put(0, d.mix, d.cool ? 'evening before' : 'mix', [d.dish.id], d.load, p(mixed, {dishes: whose('mix', mixedWith)}), {
        ...further(mixedWith),
        ...(raw && dough.shape > 0 ? {ahead: p('ahead raw dough', {dishes: names([d.dish.id])})} : {}),
      })
    const until = (value: number): PhraseValue => ({unit: 'clock', value})
    const bulkHold = min(dough.bulkHold ?? dough.hold)
    const late = waitsLong(d)
    const chilled = coldRiseOf(dough)
    const coldIn = d.cold?.id ?? chilled?.place
    const intoCold = d.cold === null && chilled ? Math.min(d.shape, d.rise + chilled.warm) : d.rise
    if (intoCold > d.rise && risesWith)
      put(
        1,
        d.rise,
        'rise',
        [d.dish.id],
        d.load,
        p('rise', {dishes: whose('rise', risesWith), until: until(intoCold)}),
        further(risesWith),
      )
    if (dough.rise > 0 && risesWith)
      put(
        1,
        intoCold,
        'rise',
        [d.dish.id],
        d.load,
        p(coldIn ? RISES_IN[coldIn] : late.rise ? 'rise late' : 'rise', {
          dishes: whose('rise', risesWith),
          until: until(d.shape),
        }),
        {
          ...further(risesWith),
          sign: p('sign dough'),
          ...(late.rise
            ? {}
            : coldIn === undefined
              ? {
                  ahead: p('ahead dough', {hold: bulkHold}),
                  behind: p(dough.prove ? 'behind bulk' : 'behind dough', {hold: bulkHold}),
                }
              : {ahead: p('ahead night'), behind: p('behind night')}),
        },
      )
    if (d.beyond > 0) {
      // What found no place in the oven stands in the cold by day.
      const byDay = intoNight(problem, d.rise, d.shape - d.rise) === 0
      messages.push({
        ...lineOf(problem.day, d.dish),
        severity: 'warning',
        rule: 'cold-rise',
        reason: `${d.dish.title}: its dough rises ${writeDuration(d.shape - d.rise)}${byDay ? '' : ' through the night'}, ${writeDuration(d.beyond)} longer than it is meant to; it stands in the cold for that`,
        suggest: byDay
          ? 'look at it now and then: what is full risen is knocked down and left in the cold until it is shaped'
          : 'look at it first thing in the morning: what is full risen is knocked down and left in the cold until it is shaped',
      })
    }
    const provesIn = coldProveOf(dough)
    const waits = provesIn
      ? {ahead: p('ahead cold', {hold}), behind: p('behind cold', {hold})}
      : {ahead: p('ahead dough', {hold}), behind: p('behind dough', {hold})}
    if (dough.shape > 0 && shapedWith)
      put(
        2,
        d.shape,
        'shape',
        [d.dish.id],
        d.load,
        p('shape', {dishes: shapedWith.length > 1 ? whose('shape', shapedWith) : who}),
        {
          ...further(shapedWith),
          sign: p('sign dough'),
          ...(dough.prove ? {} : waits),
          ...(raw ? {ahead: p('ahead raw filling', {dishes: names([d.dish.id])})} : {}),
        },
      )
    // What is left of its time in the warm comes last.
    const left = (dough.prove?.likely ?? 0) - Math.max(0, (problem.done?.now ?? 0) - d.shaped)
    const warm = d.at - Math.max(LAST_WARM, rules.tick * Math.round(left / rules.tick))
    const held = dough.prove !== undefined && d.at > d.shaped && late.prove && !provesIn
    // Filled when it is shaped, it stands from then on; and till now, whatever is told of the cold only now.
    const chilledAt = Math.min(warm, Math.max(d.shaped, problem.done?.now ?? d.shaped))
    const cold = provesIn === 'refrigerator' ? d.at - d.shape : held ? warm - chilledAt : 0
    const stands = raw ? d.at - d.shape - cold : 0
    if (stands > rules.coldMinutes)
      messages.push({
        ...lineOf(problem.day, d.dish),
        severity: 'warning',
        rule: 'raw-warm',
        reason: `${d.dish.title}: with raw meat or fish in it from shaping on, it would stand ${writeDuration(stands)} out of the refrigerator; two hours are enough, four the utmost`,
        suggest:
          'let it rise before it is filled and prove it for less than two hours, or fill it with meat that is cooked and cold, or write “prove in the refrigerator” into the receipt',
      })
    // Between shaping and oven it proves, unless the day leaves it no time.
    if (dough.prove && d.at > d.shaped) {
      const say: PhraseId = held ? 'prove late' : provesIn ? PROVES_IN[provesIn] : 'prove'
      put(
        2,
        d.shaped,
        'prove',
        [d.dish.id],
        d.load,
        p(say, {dishes: who, until: until(d.at), ...(held ? {warm: until(warm)} : {})}),
        {
          sign: p('sign proved'),
          ...(held ? {} : waits),
          ...(raw ? {ahead: p('ahead raw proving', {dishes: names([d.dish.id])})} : {}),
        },
      )
    }
  }
  return messages
}
