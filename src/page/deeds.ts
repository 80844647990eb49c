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
  /** For each stem of a draw: when it was to be set in, where the log does not tell that it was. */
  readonly unset: readonly (number | null)[]
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
export function noteOf(deed: Pick<Deed, 'step' | 'stems'>, stem: string | null): string {
  const {action} = deed.step
  if (action === 'load' || action === 'draw') return `${stem ?? ''} ${said[action]}`
  if (action === 'light' || action === 'rake') return said[action]
  return deed.stems.length > 0 ? `${said[action]} ${deed.stems.join(' and ')}` : said[action]
}

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

/**
 * The steps of a plan, each done or not by what stands in the log. Where a dish has several loads, the first note is the first load's.
 */
export function deedsOf(view: PlanView, log: FiringLog | null): Deed[] {
  const stemOf = new Map(view.dishes.map((dish) => [dish.id, dish.stem]))
  const titleOf = new Map(view.dishes.map((dish) => [dish.stem, withoutBatch(dish.title)]))
  const used = new Map(Object.entries(view.told ?? {}))
  const notes = new Map(Object.entries(deedsTold(log?.rows ?? [])))
  for (const row of log?.rows ?? []) {
    const key = `note:${row.text}`
    if (row.what === 'note') notes.set(key, (notes.get(key) ?? 0) + 1)
  }
  const taken = (key: string): boolean => {
    const n = (used.get(key) ?? 0) + 1
    used.set(key, n)
    return (notes.get(key) ?? 0) >= n
  }
  const fires = {light: 0, rake: 0}
  /** When each dish was to be set in that the log does not tell of yet. */
  const waiting = new Map<string, number>()
  return [...view.steps, ...(view.soFar?.unticked ?? [])]
    .sort((a, b) => a.at - b.at || atDoor(a.action) - atDoor(b.action))
    .map((step): Deed => {
      const stems = [...new Set(step.dishes.map((id) => stemOf.get(id) ?? id))]
      const deed = {step, stems, titles: stems.map((stem) => titleOf.get(stem) ?? stem)}
      const {action} = step
      // The log has one lighting and one raking: a later fire of the day is told by a note.
      if (action === 'light' || action === 'rake') {
        const first = fires[action]++ === 0
        const told = first ? (action === 'light' ? log?.lit : log?.raked) != null : taken(`note:${said[action]} again`)
        return {...deed, ticked: [], unset: [], done: told || step.past}
      }
      if (action !== 'load' && action !== 'draw') {
        return {...deed, ticked: [], unset: [], done: taken(`note:${noteOf(deed, null)}`) || step.past}
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
  const presumed = (view.soFar?.unticked ?? []).filter(({action}) => action === 'load').flatMap(({dishes}) => dishes)
  const untold = presumed.map((id) => view.dishes.find((one) => one.id === id)?.stem ?? id).filter((stem) => !told.has(stem))
  return [...told, ...new Set(untold)].map((stem) => {
    const dish = view.dishes.find((one) => one.stem === stem || one.id === stem)
    const draws = view.plan.loads
      .flatMap((load) => load.dishes.filter((one) => one.dish === dish?.id).map((one) => one.draw))
      .sort((a, b) => a - b)
    return {title: withoutBatch(dish?.title ?? stem), stem, draw: draws[0] ?? null, ticked: told.has(stem)}
  })
}

/** Steps that have not been done although their time is past are shown this long, min; fire, loads and draws stay. */
const FORGET = 60
/** A step belongs to now this long before its time, min. */
export const AHEAD = 3

/** What is to be done now, what is next, and what follows. */
export function standing(deeds: readonly Deed[], now: number): {now: Deed[]; next: Deed | null; later: Deed[]} {
  const open = deeds.filter((deed) => !deed.done)
  const due = open.filter(({step}) => step.at <= now + AHEAD && (moves(step.action) || now - step.at < FORGET))
  const coming = open.filter(({step}) => step.at > now + AHEAD)
  return {now: due, next: coming[0] ?? null, later: coming.slice(1, 9)}
}
