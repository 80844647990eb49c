import type {FiringLog} from '../oven/log.js'
import type {PlanView, StepView} from './protocol.js'

/** A step of the day with what the log says of it. */
export interface Deed {
  readonly step: StepView
  /** Names of its dishes' receipt files, as the log writes them. */
  readonly stems: readonly string[]
  readonly titles: readonly string[]
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
  shut: 'shut',
  'evening before': 'prepared',
}

/** The note that says that a step was done for one dish, or for all of them where it is not one of setting in or drawing. */
export function noteOf(deed: Deed, stem: string | null): string {
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

/**
 * The steps of a plan, each done or not by what stands in the log. Where a dish has several loads, the first note is the first load's.
 */
export function deedsOf(view: PlanView, log: FiringLog | null): Deed[] {
  const stemOf = new Map(view.dishes.map((dish) => [dish.id, dish.stem]))
  const titleOf = new Map(view.dishes.map((dish) => [dish.id, dish.title]))
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
  return [...view.steps]
    .sort((a, b) => a.at - b.at)
    .map((step) => {
      const stems = [...new Set(step.dishes.map((id) => stemOf.get(id) ?? id))]
      const deed = {step, stems, titles: [...new Set(step.dishes.map((id) => titleOf.get(id) ?? id))]}
      const {action} = step
      let done: boolean
      // The log has one lighting and one raking: a later fire of the day is told by a note.
      if (action === 'light' || action === 'rake') {
        const first = fires[action]++ === 0
        done = first ? (action === 'light' ? log?.lit : log?.raked) != null : taken(`note:${said[action]} again`)
      } else if (action === 'load' || action === 'draw') {
        const each = stems.map((stem) => taken(`${said[action]}:${stem}`))
        done = each.length > 0 && each.every(Boolean)
      } else done = taken(`note:${noteOf({...deed, done: false}, null)}`)
      return {...deed, done: done || step.past}
    })
}

/** What is in the oven by the log: the dishes set in and not drawn, with the plan's draw. */
export function inside(
  view: PlanView,
  log: FiringLog | null,
): Array<{readonly title: string; readonly stem: string; readonly draw: number | null}> {
  const rows = (log?.rows ?? []).filter((row) => row.dish !== undefined)
  // Where the log counts vessels of a dish, a row without a number is of all of them; else each row is of one load.
  const counted = new Set(rows.flatMap((row) => (row.count === undefined ? [] : [row.dish])))
  const count = new Map<string, number>()
  for (const {dish: stem = '', what, count: said} of rows) {
    const all = counted.has(stem) ? (view.dishes.find((one) => one.stem === stem || one.id === stem)?.count ?? 1) : 1
    if (what === 'set in') count.set(stem, (count.get(stem) ?? 0) + (said ?? all))
    if (what === 'drawn') count.set(stem, (count.get(stem) ?? 0) - (said ?? all))
  }
  return [...count].flatMap(([stem, n]) => {
    if (n <= 0) return []
    const dish = view.dishes.find((one) => one.stem === stem || one.id === stem)
    const draws = view.plan.loads
      .flatMap((load) => load.dishes.filter((one) => one.dish === dish?.id).map((one) => one.draw))
      .sort((a, b) => a - b)
    return [{title: dish?.title ?? stem, stem, draw: draws[0] ?? null}]
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
