import {anneal} from './anneal.js'
import {freely, type Light, OVERFULL} from './laying-out.js'
import type {Layout} from './layout.js'
import {FIRM, HARD} from './layout-prices.js'
import {fitDoughs, hasten, isDelayed, lightLater, prune, repair, ripple, seatsFor} from './mend.js'
import {type Laying, type LoadedDay, Proof, type Seen} from './proof.js'
import {Seating} from './seating.js'
import type {Settled} from './settled.js'

/** Places tried for a dish that was left out, and for all of them together. */
const SEATS_TRIED = 5
const MOST_TRIALS = 30
const FEW_TRIALS = 10

/** Times the openings of a plan in hand are moved to its dishes, as the curve is put right; and its dishes, one by one. */
const WAITED = 2
const MOVED = 5

/** How often what comes of setting doughs in when they have risen is mended. */
const MENDED = 3
/** Rounds after which what still cannot be kept is left out; in the first few the true floor is annealed upon. */
const PATIENCE = 7
/** Share of what was broken to which it has to come down for a round not to have been in vain, and rounds in vain after which a begun day is given up. */
const MENDING = 0.9
const VAIN = 3
/** Rounds in which something was left out and what is in trouble then is not, but moved. */
const SPARED = 3
/** Rounds then in which the draws of what is in the oven are still put right. */
const PROVED = 2
/** Times what is in the oven and was given up is drawn anew. */
const DRAWN_AGAIN = 3
/** The same where the oven is far too small for the day. */
const HOPELESS = 2
const SEATED = 4
/** Rounds on the true floor, times jobs: each takes the longer the more stands there. */
const SEATED_ROUNDS = 80_000
/** The round in which a plan in hand is annealed on the true floor, since moving one dish would not do. */
const RESEATED = 1
/** Price of what is broken and refused there, at first and at the end, pass by pass. */
const DEARER_EACH_PASS = [
  [20, HARD],
  [HARD, 200],
  [HARD, FIRM],
] as const
/** So many refused are too many to be seated one by one. */
const CROWDED = 4
/** Share of the moves that leave a dish out where the oven is far too small. */
const LEAVE = 0.03

/** How a layout is brought to agree. */
export interface Agreeing {
  /** Simulations left, for this layout and those after it. */
  readonly budget: {passes: number}
  /**
   * For a plan in hand, of which as little as may be is moved: `waiting` only lets the openings wait for what they are for, and gives up
   * where that will not do; `moving` moves dishes and leaves out what cannot be mended.
   */
  readonly gently?: 'waiting' | 'moving'
  /** Rounds in which every dish has to have its place; it is given up where one has none by then. */
  readonly patience?: number
  /** A trial: few places are looked for for what is left out. */
  readonly shortly?: boolean
}

/**
 * Bring a layout, the simulated curve and the true floor to agree.
 *
 * @returns Null where it is given up.
 */
export function agree(day: LoadedDay, look: Laying, how: Agreeing): Settled | null {
  return new Agreement(day, look, how).reached()
}

class Agreement {
  readonly #layout: Layout
  readonly #light: Light
  readonly #n: number
  readonly #jobs: LoadedDay['jobs']
  readonly #given: number | null
  readonly #budget: {passes: number}
  readonly #gently: 'waiting' | 'moving' | undefined
  readonly #patience: number
  readonly #trials: number
  /** Judgements of a short annealing. */
  readonly #rounds: number
  readonly #seating: Seating
  readonly #proof: Proof
  /** More than the oven holds: what is left out is part of the search from the first. */
  readonly #overfull: boolean

  constructor(day: LoadedDay, look: Laying, {budget, gently, patience = Number.POSITIVE_INFINITY, shortly = false}: Agreeing) {
    this.#layout = look.layout
    this.#light = day.light
    this.#jobs = day.jobs
    this.#n = day.jobs.length
    this.#given = day.problem.done?.lit ?? null
    this.#budget = budget
    this.#gently = gently
    this.#patience = patience
    this.#trials = gently || shortly ? FEW_TRIALS : MOST_TRIALS
    this.#rounds = 600 + 100 * this.#n
    this.#seating = new Seating(day.grid, day.jobs, look.layout)
    this.#proof = new Proof(day, look, this.#seating)
    this.#layout.judge()
    this.#overfull = !gently && patience === Number.POSITIVE_INFINITY && this.#layout.violation > OVERFULL
  }

  reached(): Settled | null {
    const layout = this.#layout
    let last = ''
    // After so many rounds what still cannot be kept is left out, so that the rest can be right, and then brought back as far as may be.
    let proved = 0
    let spared = 0
    let least = Number.POSITIVE_INFINITY
    let vain = 0
    for (let pass = 0; ; pass++) {
      this.#budget.passes--
      // Once the day has begun, what several rounds have not mended they will not: the cook stands and waits.
      if (layout.violation > 1e-6) vain = layout.violation > MENDING * least ? vain + 1 : 0
      least = Math.min(least, layout.violation)
      const hopeless = this.#given !== null && !this.#gently && vain >= VAIN
      const giveUp = hopeless || pass >= (this.#overfull ? HOPELESS : PATIENCE) || this.#budget.passes <= 0
      let lessened = false
      if (giveUp && layout.violation > 1e-6) {
        const before = countOf(layout.placed)
        this.#again(401 + pass, 'floor')
        if (layout.violation > 1e-6) this.#again(451 + pass, 'last')
        prune(layout)
        lessened = countOf(layout.placed) < before && spared++ < SPARED
      }
      // Even then the draws of what is in the oven are put right on the curve as it has become.
      const seen = this.#proof.see(giveUp && proved++ >= PROVED && 'all')
      const {curve, stood, wrong} = seen
      if (seen.good) return this.#asGood(this.#drawnAgain(seen))
      if (pass + 1 >= this.#patience) return null
      for (const u of seen.burned) layout.drawSooner(u)
      for (const u of seen.under) layout.drawLater(u)
      layout.agreeWith(curve)
      layout.refuse(stood.refused)
      if (stood.refused.length > 0) {
        layout.tight = Math.min(3, layout.tight * 1.5)
        layout.full = Math.max(0.88, layout.full - 0.02)
      }
      const troubled = [...stood.refused.map((r) => r.job), ...wrong]
      // The same trouble once more, where all has been tried: the plan in hand will not do.
      const trouble = troubled.join(' ')
      const stuck = this.#gently === 'moving' && trouble === last
      // Waiting does in the round after the last openings moved, or hardly ever.
      if (this.#gently === 'waiting' && pass >= WAITED) return null
      last = trouble
      // What is in trouble only since something else was left out is moved before it is left out too.
      this.#mend(seen, troubled, pass, giveUp, giveUp ? !lessened : stuck)
    }
  }

  /**
   * Move what is in trouble, and what is in its way.
   *
   * @param hopeless It will not do any more: what is in trouble is left out.
   */
  #mend(seen: Seen, troubled: readonly number[], pass: number, giveUp: boolean, hopeless: boolean): void {
    const layout = this.#layout
    const {stood} = seen
    // Where one dish alone cannot be moved out of the way, several are moved together, on the floor as it is.
    if (this.#gently === 'moving' && !giveUp && pass === RESEATED) {
      this.#onFloor(seen, {heat: 2, rounds: 2 * this.#rounds, seed: 862})
      if (layout.violation > 1e-6) repair(layout)
      return
    }
    const leave = hopeless || (!giveUp && this.#gently === 'moving' && pass >= MOVED)
    if (leave) for (const u of troubled) layout.bar(u)
    layout.judge()
    // First the openings wait for what they are for; then what is truly wrong is moved alone; and only where that will not do is the rest
    // looked at.
    if (this.#gently === 'waiting') {
      ripple(layout)
      return
    }
    const involved = new Set([...troubled, ...stood.refused.flatMap((r) => r.others)])
    if (this.#overfull && !leave && stood.refused.length > CROWDED) {
      const most = Math.min(12000, 2 * this.#rounds)
      anneal(layout, {...freely(this.#light), leave: LEAVE, strict: [HARD, FIRM], heat: 12, rounds: most, seed: 801 + pass})
      return
    }
    if (!this.#gently && !leave && pass < SEATED && stood.refused.length <= CROWDED) {
      // What is refused still is dearer every time.
      const strict = this.#overfull ? {} : {strict: DEARER_EACH_PASS[Math.min(pass, DEARER_EACH_PASS.length - 1)]!}
      this.#onFloor(seen, {heat: pass === 0 ? 12 : 6, rounds: 2 * this.#rounds, seed: 801 + pass, ...strict})
      if (layout.violation > 1e-6) repair(layout)
      if (layout.violation < 1e-6) return
    }
    if (!leave && repair(layout, involved) && (this.#gently || layout.violation < 1e-6)) return
    if (!giveUp && layout.violation > 1e-6) {
      this.#again(101 + pass, stood.refused.length > 0 ? 'floor' : 'curve')
      if (layout.violation > 1e-6) this.#again(151 + pass, 'floor')
    }
  }

  /** The plan that what was seen to be good is; what can be is brought back to it. */
  #asGood(seen: Seen): Settled {
    const layout = this.#layout
    const ready = this.#given === null ? this.#later(seen) : this.#sooner(this.#risen(seen))
    const settled = this.#proof.settle(ready)
    if (settled.unplaced.length === 0 || this.#gently === 'waiting') return settled
    // Something is left out: what can be is brought back, one dish at a time, each proved on the oven and the floor.
    layout.agreeWith(ready.curve)
    const more = this.#bringBack(ready)
    const fuller = more ? this.#proof.settle(more) : settled
    return fuller.unplaced.length < settled.unplaced.length ? fuller : settled
  }

  /** Small steps where only the curve moved; larger ones where the floor refused; dishes may go where all else failed. */
  #again(seed: number, why: 'curve' | 'floor' | 'last'): void {
    const layout = this.#layout
    if (this.#gently) repair(layout)
    if (this.#gently && layout.violation < 1e-6) return
    anneal(layout, {
      ...freely(this.#light),
      rounds: Math.min(12000, this.#rounds * (why === 'floor' ? 2 : 1)),
      heat: {curve: 3, floor: 15, last: 5}[why],
      seed,
      strict: why === 'last' ? [60, 200] : [30, 60],
      leave: why === 'last' ? 0.05 : 0,
      ...(this.#gently && why === 'curve' ? {moves: 'small', heat: 0.5} : {}),
    })
  }

  /** What is left out brought back, one dish at a time, each proved on the oven and the floor; null where none can be. */
  #bringBack(seen: Seen): Seen | null {
    const layout = this.#layout
    let last: Seen | null = null
    let known = seen.curve
    let trials = 0
    layout.barNone()
    // What is in the oven and was given up before need not be right now, but no more may be given up for it.
    const giveUp = seen.amiss > 0 && 'inside'
    const holds = (trial: Seen): boolean => trial.good && trial.amiss <= seen.amiss && trial.givenUp <= seen.givenUp
    const out = seen.took.flatMap((t, u) => (t ? [] : [u]))
    for (const u of out.sort((a, b) => this.#jobs[b]!.dish.need.startBest - this.#jobs[a]!.dish.need.startBest || a - b))
      for (const seat of seatsFor(layout, u, SEATS_TRIED)) {
        if (trials++ >= this.#trials) return last
        const before = layout.snapshot()
        layout.set(u, seat.s, seat.w)
        layout.judge()
        let trial = this.#proof.see(giveUp)
        // Its own load bends the curve a little: on that it may be drawn otherwise.
        if (!holds(trial)) {
          layout.agreeWith(trial.curve)
          layout.judge()
          trial = this.#proof.see(giveUp)
        }
        const held = holds(trial)
        if (held) {
          last = trial
          known = trial.curve
        } else layout.restore(before, layout.lit)
        layout.agreeWith(known)
        layout.judge()
        if (held) break
      }
    return last
  }

  /** Annealed with the true floor under it, from what was seen: what comes out has its places, or nearly. */
  #onFloor(seen: Seen, how: {heat: number; rounds: number; seed: number; strict?: readonly [number, number]}): void {
    const layout = this.#layout
    layout.trustFloor()
    layout.agreeWith(seen.curve)
    layout.judge()
    this.#seating.take(seen.laid, seen.stood.standing)
    const most = Math.ceil(SEATED_ROUNDS / Math.max(1, this.#n))
    anneal(layout, {
      ...freely(this.#light),
      leave: this.#overfull ? LEAVE : 0,
      strict: this.#overfull || this.#gently ? [HARD, FIRM] : [20, HARD],
      ...how,
      rounds: Math.min(most, how.rounds),
      seating: this.#seating,
    })
  }

  /** The same day lit later, where that costs nothing: bread is the fresher, and the night the longer. */
  #later(seen: Seen): Seen {
    const layout = this.#layout
    layout.agreeWith(seen.curve)
    layout.restore(seen.laid, seen.lit)
    lightLater(layout, this.#light.last)
    const now = layout.lit === seen.lit ? seen : this.#proof.see()
    return now.good ? now : seen
  }

  /** What is in the oven and was given up, drawn once more as the curve has become: with that less may have to be given up. */
  #drawnAgain(seen: Seen): Seen {
    const layout = this.#layout
    let best = seen
    let last = seen
    for (let i = 0; i < DRAWN_AGAIN && best.amiss > 0; i++) {
      layout.agreeWith(last.curve)
      for (const u of last.under) layout.drawLater(u)
      layout.judge()
      const next = this.#proof.see('all')
      if (!next.good) break
      if (next.amiss < best.amiss) best = next
      else if (next.under.length === 0) break
      last = next
    }
    if (best.amiss > 0) layout.restore(best.laid, best.lit)
    return best
  }

  /** The same rest of a day with its doughs set in nearer to when they have risen, where that holds. */
  #risen(seen: Seen): Seen {
    const layout = this.#layout
    layout.judge()
    const unfit = (): number =>
      this.#jobs.reduce((sum, _, u) => sum + (layout.placed[u] && !layout.fixed[u] ? layout.unfitBy(u) : 0), 0)
    const before = unfit()
    if (before === 0) return seen
    const other = this.#changed(seen, fitDoughs)
    return other && unfit() < before ? other : this.#cheaper(seen, other)
  }

  /** The same rest of a day with what is late set in at another hour, where that holds and comes to less. */
  #sooner(seen: Seen): Seen {
    const layout = this.#layout
    layout.judge()
    if (!this.#jobs.some((_, u) => isDelayed(layout, u))) return seen
    // One dish moved alone, or several where the floor has no place for that.
    const other =
      this.#changed(seen, hasten) ??
      this.#changed(seen, () => {
        this.#onFloor(seen, {heat: 2, rounds: this.#rounds, seed: 862})
        return true
      })
    return this.#cheaper(seen, other)
  }

  /** Of what was seen to be good and what was made of it, the second where that comes to less and no more is given up for it. */
  #cheaper(seen: Seen, other: Seen | null): Seen {
    if (!other) return seen
    const better = this.#proof.settle(other).total < this.#proof.settle(seen).total && other.givenUp <= seen.givenUp
    if (better) return other
    this.#layout.restore(seen.laid, seen.lit)
    return seen
  }

  /**
   * What was seen to be good with something changed, and what that breaks mended; null where nothing is, or it does not hold: what is
   * laid out is then as it was.
   */
  #changed(seen: Seen, change: (layout: Layout) => boolean): Seen | null {
    const layout = this.#layout
    layout.agreeWith(seen.curve)
    if (!change(layout)) return null
    let now = this.#proof.see()
    for (let mend = 0; mend < MENDED && !now.good; mend++) {
      layout.agreeWith(now.curve)
      layout.refuse(now.stood.refused)
      if (!repair(layout)) break
      now = this.#proof.see()
    }
    if (now.good) return now
    layout.restore(seen.laid, seen.lit)
    return null
  }
}

function countOf(flags: Uint8Array): number {
  return flags.reduce((sum, flag) => sum + flag, 0)
}
