import type {FiringLog} from '../oven/log.js'
import {withoutBatch} from '../plan/batches.js'
import {byOwnNames} from '../plan/own-names.js'
import type {PlanView, StepView} from './protocol.js'

/** A step of the day with what the log says of it. */
export interface Deed {
  readonly step: StepView
  /** Names of its dishes' receipt files, as the log writes them. */
  readonly stems: readonly string[]
  readonly titles: readonly string[]
  /** For each stem of a set-in or draw: whether the log tells of it already, while it does not of the others. */
  readonly ticked: readonly boolean[]
  /** For each stem of a draw, or a later fire that is raked out: when it was to be set in, or lit, where the log does not tell that it was. */
  readonly unset: readonly (number | null)[]
  /** It is of a fire after the day's first. */
  readonly again: boolean
  readonly done: boolean
}

/** What the log is told when a step was done, by action. */
const said: Readonly<Record<StepView['action'], string>> = {
  light: 'lit',
  rake: 'raked',
  load: 'set in',
  draw: 'drawn',
  feed: 'fire fed',
  soak: 'soaked',
  test: 'tested',
  mix: 'mixed',
  rise: 'risen',
  shape: 'shaped',
  sponge: 'sponge set',
  prove: 'proved',
  'top up': 'topped up',
  tend: 'tended',
  shut: 'shut',
  'evening before': 'prepared',
}

/** The note that says that a step was done for one dish, or for all of them where it is not one of setting in or drawing. */
export function noteOf(deed: Pick<Deed, 'step' | 'stems'> & {readonly again?: boolean}, stem: string | null): string {
  const {action} = deed.step
  if (action === 'load' || action === 'draw') return `${stem ?? ''} ${said[action]}`
  // The log has one lighting and one raking in its head: of a later fire of the day a row tells.
  if (action === 'light' || action === 'rake') return deed.again ? `${said[action]} again` : said[action]
  return deed.stems.length > 0 ? `${said[action]} ${deed.stems.join(AND)}` : said[action]
}

/** Between the dishes of one note. */
const AND = ' and '

/** Whether doing a step changes what the rest of the day can be. */
export function moves(action: StepView['action']): boolean {
  return action === 'light' || action === 'rake' || action === 'load' || action === 'draw'
}

/** How often a log tells that each dish was set in or drawn. */
export function deedsTold(rows: FiringLog['rows']): Record<string, number> {
  const told: Record<string, number> = {}
  for (const {what, dish, count} of rows)
    if ((what === 'set in' || what === 'drawn') && count !== 0) told[`${what}:${dish}`] = (told[`${what}:${dish}`] ?? 0) + 1
  return told
}

/** At one opening of the door what is done is drawn before the next is set in; the rest stands as the plan has it. */
const atDoor = (action: StepView['action']): number =>
  action === 'draw'
    ? 1
    : action === 'load'
      ? 3
      : action === 'shut'
        ? 5
        : action === 'top up' || action === 'tend'
          ? 4
          : action === 'test'
            ? 2
            : 0

/** What a plan made in the course of the day has no steps of any more once their time is past. */
export const isDropped = (action: StepView['action']): boolean =>
  action === 'test' || action === 'top up' || action === 'tend' || action === 'shut'

/** A step may be ticked so long before its time, min. */
export const EARLY = 15

/** Finds the note of each step that is no setting in, drawing or fire's; each note serves once for each dish. */
function notesIn(rows: FiringLog['rows']): (step: StepView, stems: readonly string[], from: number) => boolean {
  const notes = rows.filter(({what}) => what === 'note')
  const used = new Set<string>()
  return ({action}, stems, from) => {
    const own = stems.length > 0 ? stems : ['']
    const i = notes.findIndex(({text, at}, i) => {
      if (at < from || !text.startsWith(said[action])) return false
      const names = text.slice(said[action].length).trim().split(AND)
      return own.every((stem) => names.includes(stem) && !used.has(`${i}:${stem}`))
    })
    if (i < 0) return false
    for (const stem of own) used.add(`${i}:${stem}`)
    return true
  }
}

/** When each fire of the day was lit and raked out, by the log. */
function firesTold(log: FiringLog | null): {
  readonly light: readonly (number | null)[]
  readonly rake: readonly (number | null)[]
} {
  if (!log) return {light: [], rake: []}
  const first = {lit: log.lit, raked: log.raked}
  const further = log.further ?? []
  // A fire lit again before its coals are raked out is the same fire.
  const fires = log.raked === null && further.length > 0 ? further : [first, ...further]
  return {light: fires.map(({lit}) => lit), rake: fires.map(({raked}) => raked)}
}

/**
 * The steps of a plan, each done or not by what stands in the log. Where a dish has several loads, the first note is the first load's.
 *
 * @param held what was due by the plans before this one (`due.ts`)
 */
export function deedsOf(view: PlanView, log: FiringLog | null, held: readonly StepView[] = []): Deed[] {
  const stemOf = new Map(view.dishes.map((dish) => [dish.id, dish.stem]))
  const titleOf = new Map(view.dishes.map((dish) => [dish.stem, withoutBatch(dish.title)]))
  const used = new Map(Object.entries(view.told ?? {}))
  const notes = new Map(Object.entries(deedsTold(log?.rows ?? [])))
  const noted = notesIn(log?.rows ?? [])
  const taken = (key: string): boolean => {
    const n = (used.get(key) ?? 0) + 1
    used.set(key, n)
    return (notes.get(key) ?? 0) >= n
  }
  const told = firesTold(log)
  const fires = {light: 0, rake: 0}
  /** When each dish was to be set in, and the fire to be lit, that the log does not tell of yet. */
  const waiting = new Map<string, number>()
  const madeAt = view.soFar?.now ?? Number.NEGATIVE_INFINITY
  const behind = new Set(held.map(({key}) => key))
  return [...held, ...view.steps, ...(view.soFar?.unticked ?? [])]
    .sort((a, b) => a.at - b.at || atDoor(a.action) - atDoor(b.action))
    .map((step): Deed => {
      const stems = [...new Set(step.dishes.map((id) => stemOf.get(id) ?? id))]
      const {action} = step
      const deed = {step, stems, titles: stems.map((stem) => titleOf.get(stem) ?? stem), again: false}
      if (action === 'light' || action === 'rake') {
        const n = fires[action]++
        const done = (told[action][n] ?? null) !== null
        const unset = action === 'rake' && n > 0 ? [waiting.get(`fire ${n}`) ?? null] : []
        if (action === 'light' && !done) waiting.set(`fire ${n}`, step.at)
        return {...deed, again: n > 0, ticked: [], unset, done}
      }
      if (action !== 'load' && action !== 'draw') {
        const from = isDropped(action)
          ? (behind.has(step.key) ? step.at : Math.min(step.at, madeAt)) - EARLY
          : Number.NEGATIVE_INFINITY
        return {...deed, ticked: [], unset: [], done: noted(step, stems, view.soFar ? from : Number.NEGATIVE_INFINITY)}
      }
      const ticked = stems.map((stem) => taken(`${said[action]}:${stem}`))
      const unset = action === 'draw' ? stems.map((stem) => waiting.get(stem) ?? null) : []
      stems.forEach((stem, i) => {
        if (action === 'draw' || ticked[i]) waiting.delete(stem)
        else waiting.set(stem, step.at)
      })
      return {...deed, ticked, unset, done: (ticked.length > 0 && ticked.every(Boolean)) || step.past}
    })
}

/** A dish that is in the oven. */
export interface InOven {
  readonly title: string
  readonly stem: string
  /** When the plan has it drawn, minutes after midnight. */
  readonly draw: number | null
  /** Whether the log tells that it was set in; else only the plan takes it so. */
  readonly ticked: boolean
}

/** What is in the oven: the dishes the log has set in and not drawn, then those it does not tell of. */
export function inside(view: PlanView, log: FiringLog | null): InOven[] {
  const own = log
    ? byOwnNames(
        log,
        view.dishes.map(({id, title, stem}) => ({id, title, file: stem})),
      ).rows
    : []
  const rows = own.filter((row) => row.dish !== undefined)
  // Where the log counts vessels of a dish, a row without a number is of all of them; else each row is of one load.
  const counted = new Set(rows.flatMap((row) => (row.count === undefined ? [] : [row.dish])))
  const count = new Map<string, number>()
  for (const {dish: stem = '', what, count: said} of rows) {
    const all = counted.has(stem) ? (view.dishes.find((one) => one.stem === stem || one.id === stem)?.count ?? 1) : 1
    if (what === 'set in') count.set(stem, (count.get(stem) ?? 0) + (said ?? all))
    if (what === 'drawn') count.set(stem, (count.get(stem) ?? 0) - (said ?? all))
  }
  const told = new Set([...count].flatMap(([stem, n]) => (n > 0 ? [stem] : [])))
  const stemOf = (id: string): string => view.dishes.find((one) => one.id === id)?.stem ?? id
  const unticked = view.soFar?.unticked ?? []
  const open = (action: StepView['action']): readonly (readonly [string, number])[] =>
    unticked.filter((step) => step.action === action).flatMap(({dishes, at}) => dishes.map((id) => [stemOf(id), at] as const))
  const out = open('draw')
  const untold = open('load').flatMap(([stem]) => (told.has(stem) || out.some(([drawn]) => drawn === stem) ? [] : [stem]))
  return [...told, ...new Set(untold)].map((stem) => {
    const dish = view.dishes.find((one) => one.stem === stem || one.id === stem)
    const draws = view.plan.loads
      .flatMap((load) => load.dishes.filter((one) => one.dish === dish?.id).map((one) => one.draw))
      .concat(out.flatMap(([drawn, at]) => (drawn === stem ? [at] : [])))
      .sort((a, b) => a - b)
    return {title: withoutBatch(dish?.title ?? stem), stem, draw: draws[0] ?? null, ticked: told.has(stem)}
  })
}
