import type {Model} from '../src/plan/model.js'
import {rules} from '../src/plan/rules.js'
import {missing} from '../src/plan/search-state.js'

/**
 * The compact model of `docs/planning.md` as a mixed-integer program in CPLEX LP format, for HiGHS. Written from the statement of the
 * model and not from the search: floor, lanes, hands and openings are rows here.
 *
 * Variables: `x{u}_{o}` dish u takes choice o; `m{u}` it is left out, at the price the search pays too; `y{t}` the door is opened at
 * tick t; `g{z}_{t}` a lane through part z is needed at t; `k{i}_{t}` something of order i (`Job.order`) is set in at t.
 */
export function milp(model: Model): string {
  const n = model.jobs.length
  const share = model.floor.map((a) => a / model.floorTotal)
  const objective: string[] = []
  const rows: string[] = []
  const binaries: string[] = []
  const starts = new Map<string, string[]>()
  const ends = new Map<string, string[]>()
  const hands = new Map<number, string[]>()
  const opens = new Map<string, string[]>()
  const lanes = new Map<string, string[]>()
  const push = <K>(map: Map<K, string[]>, key: K, term: string): void => {
    const list = map.get(key)
    if (list) list.push(term)
    else map.set(key, [term])
  }
  const num = (v: number): string => (Math.abs(v) < 1e-12 ? '0' : v.toPrecision(12))
  for (let u = 0; u < n; u++) {
    const job = model.jobs[u]!
    const all: string[] = []
    for (let o = 0; o < model.s[u]!.length; o++) {
      const x = `x${u}_${o}`
      const s = model.s[u]![o]!
      const e = model.e[u]![o]!
      const w = model.where[u]![o]!
      binaries.push(x)
      all.push(x)
      objective.push(`${num(model.cost[u]![o]!)} ${x}`)
      for (let z = 0; z < 3; z++) {
        const a = w === 3 ? job.area * share[z]! : w === z ? job.area : 0
        if (a === 0) continue
        push(starts, `${z} ${Math.max(0, s)}`, `${num(a)} ${x}`)
        push(ends, `${z} ${e}`, `${num(a)} ${x}`)
      }
      const at = job.since === null ? [s, e] : [e]
      for (const t of at) {
        push(hands, t, `${num(job.handling)} ${x}`)
        push(opens, `${u} ${t}`, x)
        if (w === 0 || w === 3) push(lanes, `${u} 1 ${t}`, x)
        if (w !== 2) push(lanes, `${u} 2 ${t}`, x)
      }
    }
    rows.push(`${[...all, `m${u}`].join(' + ')} = 1`)
    binaries.push(`m${u}`)
    objective.push(`${missing} m${u}`)
  }
  // Floor in use, carried from tick to tick: f{z}_{t} = f{z}_{t−1} + what is set in − what is drawn.
  const bounds: string[] = []
  const before: Record<string, string> = {}
  for (let z = 0; z < 3; z++) {
    let last = ''
    for (let t = 0; t < model.ticks; t++) {
      const key = `${z} ${t}`
      before[key] = last
      const into = starts.get(key)
      const out = ends.get(key)
      if (!into && !out) continue
      const f = `f${z}_${t}`
      rows.push(
        `${f}${last ? ` - ${last}` : ''}${(into ?? []).map((i) => ` - ${i}`).join('')}${(out ?? []).map((i) => ` + ${i}`).join('')} = 0`,
      )
      bounds.push(`0 <= ${f} <= ${num(model.floor[z]!)}`)
      last = f
    }
  }
  const needed = new Set<string>()
  for (const [key, terms] of lanes) {
    const [, z, t] = key.split(' ')
    needed.add(`${z} ${t}`)
    rows.push(`${terms.join(' + ')} - g${z}_${t} <= 0`)
  }
  for (const key of needed) {
    const [z, t] = key.split(' ')
    binaries.push(`g${z}_${t}`)
    const area = model.floor[Number(z)]!
    // What stands through the opening: what stood before less what is drawn now.
    const stood = before[key]
    if (stood)
      rows.push(
        `${stood}${(ends.get(key) ?? []).map((i) => ` - ${i}`).join('')} + ${num(area * model.lane)} g${z}_${t} <= ${num(area)}`,
      )
  }
  // Half an hour between what is set in very hot to fall and the crusts after it.
  const gap = rules.settleIn.minutes / rules.tick
  const into = [new Map<number, string>(), new Map<number, string>()]
  model.jobs.forEach((job, u) => {
    if (job.order === 0 || job.since !== null) return
    const known = into[job.order - 1]!
    const setIn = new Map<number, string[]>()
    model.s[u]!.forEach((t, o) => {
      push(setIn, t, `x${u}_${o}`)
    })
    for (const [t, terms] of setIn) {
      if (!known.has(t)) {
        known.set(t, `k${job.order}_${t}`)
        binaries.push(`k${job.order}_${t}`)
      }
      rows.push(`${terms.join(' + ')} - k${job.order}_${t} <= 0`)
    }
  })
  for (const [t, fall] of into[0]!)
    for (let later = t; later < t + gap; later++) {
      const crust = into[1]!.get(later)
      if (crust) rows.push(`${fall} + ${crust} <= 1`)
    }
  for (const terms of hands.values()) rows.push(`${terms.join(' + ')} <= ${num(model.hands)}`)
  const doors = new Set<number>()
  for (const [key, terms] of opens) {
    const t = Number(key.split(' ')[1])
    doors.add(t)
    rows.push(`${terms.join(' + ')} - y${t} <= 0`)
  }
  for (const t of doors) {
    binaries.push(`y${t}`)
    objective.push(`${num(model.opening)} y${t}`)
  }
  return `Minimize\n obj: ${wrap(objective.map((t) => (t.startsWith('-') ? t : `+ ${t}`)))}\nSubject To\n${rows.map((r, i) => ` r${i}: ${wrap(r.split(' '))}`).join('\n')}\nBounds\n${bounds.map((b) => ` ${b}`).join('\n')}\nBinary\n ${wrap(binaries)}\nEnd\n`
}

/** The LP format allows lines of 560 characters: break well before. */
function wrap(terms: readonly string[]): string {
  const lines: string[] = []
  let line = ''
  for (const t of terms) {
    if (line.length + t.length > 240) {
      lines.push(line)
      line = ''
    }
    line += line === '' ? t : ` ${t}`
  }
  lines.push(line)
  return lines.join('\n  ')
}
