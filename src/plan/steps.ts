import {writeClock} from '../measure/quantity.js'
import type {Message} from '../receipt/types.js'
import {type ByBedtime, bedtimeAfter, byBedtime, byDayFrom, morningHeat} from './bedtime.js'
import {drawnHot} from './cooling.js'
import {curveOf, sample} from './curve.js'
import {putByWords} from './dough.js'
import {doughSteps, type PutStep} from './dough-steps.js'
import {doughsOf, leftOver} from './dough-work.js'
import {eveningsOf} from './evening-before.js'
import {fedAt, type Hands} from './hands.js'
import {fireSigns, signOf, testedLoads} from './heat-signs.js'
import {keepingOf} from './keeping.js'
import {staysIn} from './keeps.js'
import {loadedAt} from './longer.js'
import {makingsOf} from './making.js'
import {lineOf} from './model.js'
import {otherTimes} from './other-time.js'
import {isOutTooLong, outUnfinished} from './out-for-fire.js'
import {signsOf} from './own-signs.js'
import {english, type PhraseId, phrase, speak} from './phrases.js'
import {rules} from './rules.js'
import {depthOf, partsOf, standsAt, told} from './stands-at.js'
import {tendingOf} from './tending.js'
import {toppingUp} from './topping-up.js'
import type {Load, Phrase, PhraseValue, Plan, PlanProblem, Step} from './types.js'
import {unevenly} from './uneven.js'

/** Minutes between two looks at what is not done: with less than that before a fire is lit there is no other. */
const LOOKED = 10
/** Minutes longer than what else is drawn at once, for which a dish may stay, that are told. */
const STAYS_LONGER = 15

/** What is said of what is tended as it bakes. */
const TENDED = {door: 'tend', own: 'tend alone', oftener: 'tend oftener', fill: 'fill'} as const

/** How many dishes a message names. */
const NAMED = 4
/** No kitchen has more pairs of hands at one oven than so many. Common practice, no source. */
const MOST_HANDS = 6

/** The whole day in clock order. */
export function stepsOf(problem: PlanProblem, plan: Plan): {steps: Step[]; messages: Message[]} {
  const byId = new Map(problem.dishes.map((d) => [d.id, d]))
  const speaker = english((id) => byId.get(id)?.title ?? id)
  const steps: (Step & {rank: number})[] = []
  const messages: Message[] = []
  const forecast = plan.forecast
  const heatAt = (clock: number): Step['celsius'] => {
    const m = clock - plan.lit
    if (m < 0) return null
    return {
      low: sample(forecast.baking.low, forecast.step, m),
      likely: sample(forecast.baking.likely, forecast.step, m),
      high: sample(forecast.baking.high, forecast.step, m),
    }
  }
  const put: PutStep = (rank, at, action, dishes, load, say, extra = {}) => {
    const words = {say, sign: extra.sign ?? null, ifAhead: extra.ahead ?? null, ifBehind: extra.behind ?? null}
    const text = (p: Phrase | null): string | null => (p ? speak(p, speaker) : null)
    steps.push({
      rank,
      at,
      action,
      dishes,
      load,
      ...(extra.further ? {further: extra.further} : {}),
      say: speak(say, speaker),
      sign: text(words.sign),
      ifAhead: text(words.ifAhead),
      ifBehind: text(words.ifBehind),
      celsius: extra.celsius ?? null,
      words,
      ...(extra.untimed === true ? {untimed: true} : {}),
      ...(problem.done && at < problem.done.now ? {past: true} : {}),
    })
  }
  const names = (ids: readonly string[]): PhraseValue => ({unit: 'dishes', dishes: [...new Set(ids)]})
  const min = (value: number): PhraseValue => ({unit: 'minutes', value})
  const kg = (value: number): PhraseValue => ({unit: 'kilograms', value})
  const deg = (value: number): PhraseValue => ({unit: 'celsius', value})
  const p = (id: PhraseId, values: Record<string, PhraseValue> = {}): Phrase => phrase(id, values)
  const allOf = (id: string): number => byId.get(id)?.count ?? 0
  const countIn = (entries: Load['dishes'], id: string): number =>
    entries.reduce((sum, one) => sum + (one.dish === id ? one.count : 0), 0)
  const inParts = (id: string, count: number): boolean => count > 0 && count < allOf(id)
  const figures = (id: string, count: number): Record<string, PhraseValue> => ({
    dishes: names([id]),
    count: {unit: 'count', value: count},
    all: {unit: 'count', value: allOf(id)},
  })
  /** A dish, and how many of it where that is not all. */
  const someOf = (id: string, count: number): PhraseValue =>
    inParts(id, count) ? {unit: 'phrases', phrases: [p('some of', figures(id, count))]} : names([id])
  /** What is drawn then: of a dish of which the rest is drawn at another time, how many and where they stand. */
  const drawnOf = (ids: readonly string[], drawn: Load['dishes'], at: number): PhraseValue => {
    const parts = ids.filter((id) => inParts(id, countIn(drawn, id)))
    if (parts.length === 0) return names(ids)
    const whole = ids.filter((id) => !parts.includes(id))
    return {
      unit: 'phrases',
      phrases: [
        ...(whole.length > 0 ? [p('all of', {dishes: names(whole)})] : []),
        ...parts.map((id) => {
          const values = figures(id, countIn(drawn, id))
          const where = told(plan.loads.flatMap((load) => partsOf(standsAt(load, id, at))))
          const [zone, zone2] = partsOf(where)
          if (where === 'across' || where === 'any') return p('some of', values)
          return zone2 === undefined
            ? p('some of at', {...values, zone: {unit: 'word', word: zone!}})
            : p('some of at two', {...values, zone: {unit: 'word', word: zone!}, zone2: {unit: 'word', word: zone2}})
        }),
      ],
    }
  }
  const hasFirst = (ids: readonly string[]): boolean => ids.some((id) => byId.get(id)?.first !== undefined)
  const makeUp = (evening: boolean, ids: readonly string[]): PhraseId => {
    const say = evening ? 'make up early' : ids.length > 1 ? 'make up several' : 'make up'
    return hasFirst(ids) ? `${say} first` : say
  }
  /** What cautions ask for before anything is put together, with whose it is where more is made up. */
  const firstOf = (ids: readonly string[]): PhraseValue => {
    const whose = new Map<string, string[]>()
    for (const id of ids) for (const {say} of byId.get(id)?.first ?? []) whose.set(say, [...(whose.get(say) ?? []), id])
    const work = (say: string): PhraseValue => ({unit: 'word', word: say})
    return {
      unit: 'phrases',
      phrases: Array.from(whose, ([say, its]) =>
        its.length === ids.length
          ? p('first work', {work: work(say)})
          : p('first work of', {dishes: names(its), work: work(say)}),
      ),
    }
  }
  /** What is made up for a load. */
  const madeUp = (ids: readonly string[], number: number): PhraseValue => {
    const set = plan.loads.find((load) => load.number === number)?.dishes.filter(({alreadyIn}) => alreadyIn !== true) ?? []
    if (!ids.some((id) => inParts(id, countIn(set, id)))) return names(ids)
    const said = ids.map((id) =>
      inParts(id, countIn(set, id)) ? p('some of', figures(id, countIn(set, id))) : p('all of', {dishes: names([id])}),
    )
    return {unit: 'phrases', phrases: said}
  }

  if (plan.loads.length > 0) {
    const {doughs, clashes, hands} = doughsOf(problem, plan)
    messages.push(...doughSteps(problem, doughs, put))
    const mixed = (id: string): number | null =>
      doughs.reduce<number | null>((first, d) => (d.dish.id === id ? Math.min(first ?? d.mix, d.mix) : first), null)
    for (const one of eveningsOf(problem, plan, mixed))
      put(0, one.at, 'evening before', [one.dish], null, one.say, {untimed: one.untimed})
    const {made, late, stale} = makingsOf(problem, plan, hands)
    for (const {dishes, load, at, from, evening} of made) {
      const raw = dishes.filter((id) => byId.get(id)?.raw === true)
      put(
        2,
        from,
        'mix',
        dishes,
        load,
        p(makeUp(evening, dishes), {
          dishes: madeUp(dishes, load),
          ...(evening ? {} : {at: {unit: 'clock', value: at}}),
          ...(hasFirst(dishes) ? {first: firstOf(dishes)} : {}),
        }),
        raw.length > 0 ? {ahead: p('ahead raw', {dishes: names(raw)})} : {},
      )
    }
    const now = problem.done?.now ?? Number.NEGATIVE_INFINITY
    const oneMore = `ask for another pair of hands, and write "hands: ${problem.day.hands + 1}" in day.md`
    for (const c of clashes)
      messages.push({
        ...lineOf(problem.day, c.dish),
        severity: 'warning',
        rule: 'hands',
        reason: `${c.dish.title}: its dough is to be worked while the hands are full (about ${writeClock(c.at)})`,
        times: [c.at],
        suggest: oneMore,
      })
    for (const {dish, at} of stale)
      messages.push({
        ...lineOf(problem.day, dish),
        severity: 'warning',
        rule: 'made-stale',
        reason: `${dish.title}: it does not keep, made up, and is set in at ${writeClock(at)}, with no time by day to make it up for that`,
        times: [at],
        suggest: 'get up to make it right before it is set in, or set it in later, note that and plan again',
      })
    const hurried = late.filter(({at}) => at >= now).sort((a, b) => a.at - b.at)
    const [first] = hurried
    if (first) {
      const titles = [...new Set(hurried.map(({dish}) => dish.title))]
      const enough = pairsFor(problem, plan, hands, now)
      messages.push({
        ...lineOf(problem.day, first.dish),
        severity: 'warning',
        rule: 'hands',
        reason:
          titles.length === 1
            ? `${titles[0]}: it is to be made up while the hands are full (about ${writeClock(first.at)})`
            : `${titles.length} dishes are to be made up while the hands are full, the first about ${writeClock(first.at)}: ${titles.slice(0, NAMED).join('; ')}${titles.length > NAMED ? '; …' : ''}`,
        times: [first.at],
        suggest:
          enough === null
            ? 'make up beforehand what keeps, ask for less, or for many more hands'
            : enough === problem.day.hands + 1
              ? oneMore
              : `ask for more hands, and write "hands: ${enough}" in day.md`,
      })
    }
    // Fires.
    ;(plan.fires ?? []).forEach((fire, i) => {
      const first = i === 0
      const burn = fire.firing.burn
      const feeds = fedAt(fire)
      // Nothing bakes on while it burns: what is drawn at its hour is drawn first.
      put(
        first ? 3 : 7,
        fire.lit,
        'light',
        [],
        null,
        p(first ? 'light' : 'light again', {wood: kg(fire.firing.wood), burn: min(burn)}),
        {
          sign: p('sign flame'),
          behind: p('behind fire'),
        },
      )
      const share = fire.firing.wood / (feeds.length + 1)
      for (const at of feeds)
        put(3, at, 'feed', [], null, p('feed', {wood: kg(share)}), {
          sign: p('sign flame'),
          behind: p('behind fire'),
        })
      const since = {lit: fire.lit - plan.lit, raked: fire.raked - plan.lit, ready: fire.ready - plan.lit}
      const signs = fireSigns(forecast, since)
      put(4, fire.raked, 'rake', [], null, p('rake'), {sign: signs.rake, ahead: p('ahead coals'), behind: p('behind coals')})
      put(5, fire.raked, 'soak', [], null, p('soak', {soak: min(fire.firing.soak)}), {sign: signs.soak})
    })
    const draws = new Map<
      number,
      {ids: string[]; early: number; drawn: (Load['dishes'][number] & {at: number})[]; load: number}
    >()
    const openings = new Set<number>()
    const tested = testedLoads(plan.loads)
    for (const load of plan.loads) {
      const fresh = load.dishes.filter((d) => !d.alreadyIn)
      if (fresh.length > 0) {
        openings.add(load.at)
        const ids = fresh.map((d) => d.dish)
        const heat = heatAt(load.at)
        const likely = heat?.likely ?? 0
        if (tested.has(load.number))
          put(7, load.at, 'test', [...new Set(ids)], load.number, p('test', {celsius: deg(likely)}), {
            sign: signOf(likely),
            ahead: p('ahead hot'),
            behind: p('behind cool'),
            celsius: heat,
          })
        // What is tested is the oven's mean, a dish's limits are those of its own part of the floor. What the plan knowingly passes is no limit.
        const mean = (limit: number, {celsiusIn}: (typeof fresh)[number]): number => limit - celsiusIn.likely + likely
        const hottest = Math.max(likely, Math.min(...fresh.map((d) => mean(byId.get(d.dish)?.need.startHigh ?? 999, d))))
        const coolest = Math.min(likely, Math.max(...fresh.map((d) => mean(byId.get(d.dish)?.need.startLow ?? 0, d))))
        const where = new Map(fresh.map(({dish}) => [dish, standsAt(load, dish)]))
        const depth = ({dish}: (typeof fresh)[number]): number => depthOf(where.get(dish)!)
        // Nearest the back is set in first.
        const order = [...fresh].sort((a, b) => depth(a) - depth(b) || b.draw.likely - a.draw.likely)
        // The parts of a dish that go in together are said once.
        const list: PhraseValue = {
          unit: 'phrases',
          phrases: [...new Set(order.map(({dish}) => dish))].map((dish) => {
            const dishes = someOf(dish, countIn(fresh, dish))
            const at = where.get(dish)!
            const [zone, zone2] = partsOf(at)
            const word = (one: string): PhraseValue => ({unit: 'word', word: one})
            if (at === 'across' || at === 'any') return p('load across', {dishes})
            return zone2 === undefined
              ? p('load at', {dishes, zone: word(zone!)})
              : p('load at two', {dishes, zone: word(zone!), zone2: word(zone2)})
          }),
        }
        put(
          8,
          load.at,
          'load',
          [...new Set(order.map((d) => d.dish))],
          load.number,
          p('load', {load: load.number, dishes: list}),
          {
            ahead: p('ahead load', {celsius: deg(hottest)}),
            behind: p('behind load', {celsius: deg(coolest)}),
            celsius: heat,
          },
        )
      }
      for (const d of load.dishes) {
        const at = d.draw.likely
        openings.add(at)
        const now = draws.get(at) ?? {ids: [], early: Number.POSITIVE_INFINITY, drawn: [], load: load.number}
        now.ids.push(d.dish)
        now.early = Math.min(now.early, d.draw.low)
        now.drawn.push({...d, at: loadedAt(load.at, d.dish, problem.done)})
        draws.set(at, now)
      }
    }
    // Dishes of which a receipt wants the door kept shut from when they are set in, min after midnight.
    const shutFor = (id: string): number => byId.get(id)?.need.closed?.likely ?? 0
    const kept = new Map<number, string[]>()
    for (const load of plan.loads) {
      const ids = load.dishes.flatMap((d) => (!d.alreadyIn && shutFor(d.dish) >= rules.tick ? [d.dish] : []))
      if (ids.length > 0) kept.set(load.at, [...new Set(ids)])
    }
    // What was not done is to be looked at again after a while.
    const lookedAgain = (id: string): number[] =>
      (problem.done?.set ?? []).flatMap(({dish, longer}) => (dish === id && longer ? [longer.looked + rules.lookEvery] : []))
    /** Nothing is looked at before now, nor again at once, nor while the door is kept shut, nor at night. */
    const mayLook = (low: number, at: number, ids: readonly string[]): number => {
      const early = Math.max(low, problem.done?.now ?? low, ...ids.flatMap(lookedAgain))
      const ends = [...kept].flatMap(([from, ids]) => ids.map((id) => ({from, to: from + shutFor(id)})))
      const opens = Math.max(early, ...ends.filter(({from, to}) => from < early && to > early).map(({to}) => to))
      return Math.min(at, byDayFrom(problem, opens))
    }
    const curve = curveOf(forecast, problem.ambient ?? 20)
    const uneven = plan.loads.flatMap((load) => unevenly(problem, plan, load))
    for (const [at, d] of draws) {
      const ids = [...new Set(d.ids)]
      // What burns has the first word on how long may be waited; what is the better for staying in, where it goes on longer, its own.
      const latest = (which: typeof d.drawn): number => Math.min(...which.map(({draw}) => draw.high))
      const staying = d.drawn.filter(({dish}) => staysIn(byId.get(dish)!.need))
      const burning = d.drawn.filter((one) => !staying.includes(one))
      // Nobody looks again at night.
      const bedtime = bedtimeAfter(at)
      // Nor is anything left in when the fire is lit again.
      const fire = (plan.fires ?? []).slice(1).find(({lit}) => lit >= at)?.lit ?? Number.POSITIVE_INFINITY
      const lastLook = Math.min(bedtime, fire)
      const late = Math.min(lastLook, latest(burning.length > 0 ? burning : staying))
      const emptied = fire - at < LOOKED
      const unfinished = emptied ? outUnfinished(problem, plan).filter((one) => one.drawn === at) : []
      const isUnfinished = (id: string): boolean => unfinished.some(({dish}) => dish.id === id)
      const unsure = d.drawn.filter(({draw}) => draw.high > bedtime && fire > bedtime)
      const tillBed = staying.filter((one) => !unsure.includes(one))
      const slept = new Map<ByBedtime, string[]>()
      for (const one of unsure) {
        const how = byBedtime(byId.get(one.dish)!, morningHeat(curve, one, bedtime, plan.lit, 'likely'))
        slept.set(how, [...(slept.get(how) ?? []), one.dish])
      }
      /** The least heat, °C, in which it may come to stand. */
      const coolest = (one: (typeof d.drawn)[number]): number =>
        unsure.includes(one) && slept.get('out by night')?.includes(one.dish) !== true
          ? Math.min(one.celsiusOut.low, morningHeat(curve, one, bedtime, plan.lit, 'low'))
          : one.celsiusOut.low
      const sign = signsOf(
        ids.map((id) => ({title: speaker.title(id), sign: byId.get(id)?.sign ?? ''})),
        speaker.and,
      )
      const stayTill = Math.min(fire, latest(tillBed))
      const kept: Phrase[] = [
        ...[...slept].map(([how, dishes]) => p(how, {dishes: names(dishes), late: {unit: 'clock', value: bedtime}})),
        ...otherTimes(d.drawn, byId, at).map(({dish, stay, said}) =>
          p('other time', {dishes: names([dish]), stay: min(stay), said: min(said)}),
        ),
        ...uneven.flatMap(({dish, draw, hottest, coolest}) => {
          const zone = (word: string): PhraseValue => ({unit: 'word', word})
          return draw === at ? [p('uneven', {dishes: names([dish]), zone: zone(hottest), zone2: zone(coolest)})] : []
        }),
        ...drawnHot(d.drawn, byId, at).map(({dish, words}) => p('cool slowly', {dishes: names([dish]), words})),
        ...(burning.length > 0 && tillBed.length > 0 && stayTill - late >= STAYS_LONGER
          ? [p('may stay in', {dishes: names(tillBed.map(({dish}) => dish)), late: {unit: 'clock', value: stayTill}})]
          : []),
        ...[true, false].flatMap((tooLong) => {
          const some = unfinished.filter((one) => isOutTooLong(one) === tooLong)
          const id = tooLong ? 'out for fire elsewhere' : 'out for fire unfinished'
          const dishes = names(some.map(({dish}) => dish.id))
          return some.length > 0 ? [p(id, {dishes, ready: {unit: 'clock', value: some[0]!.ready}})] : []
        }),
        ...keepingOf(
          // What is not done is not kept, but cooked through first.
          d.drawn.flatMap((one) => (isUnfinished(one.dish) ? [] : [{dish: byId.get(one.dish)!, coolest: coolest(one)}])),
          at,
          problem.day.serve,
        ).map(({how, dishes, by}) => p(how, {dishes: names(dishes), ...(by === null ? {} : {by: {unit: 'clock', value: by}})})),
      ]
      put(6, at, 'draw', ids, d.load, p('draw', {dishes: drawnOf(ids, d.drawn, at)}), {
        sign: sign === '' ? null : p('sign own', {sign}),
        ahead: p('ahead draw', {early: {unit: 'clock', value: mayLook(d.early, at, ids)}}),
        behind: p(
          emptied
            ? kept.length > 0
              ? 'behind draw for fire kept'
              : 'behind draw for fire'
            : behindDraw(
                ids.every((id) => byId.get(id)?.ajar !== undefined),
                kept.length > 0,
              ),
          {
            late: {unit: 'clock', value: late},
            ...(kept.length > 0 ? {kept: {unit: 'sentences', phrases: kept}} : {}),
          },
        ),
        celsius: heatAt(at),
      })
    }
    for (const [at, ids] of kept) {
      const shut = Math.max(...ids.map((id) => shutFor(id)))
      const until = {unit: 'clock', value: at + shut} as const
      // What is done sooner has to come out all the same, and who keeps the door shut wants to know.
      const opened = Math.min(...[...openings].filter((one) => one > at && one < at + shut))
      const say = Number.isFinite(opened)
        ? p('keep shut but', {dishes: names(ids), until, opened: {unit: 'clock', value: opened}})
        : p('keep shut', {dishes: names(ids), until})
      put(10, at, 'shut', ids, null, say)
    }
    // The door is shut for good on what stays in long.
    const times = [...openings].sort((a, b) => a - b)
    for (const {at, dishes, until} of toppingUp(problem, plan, times))
      put(
        9,
        at,
        'top up',
        dishes,
        null,
        until === null
          ? p('top up', {dishes: names(dishes)})
          : p('fill up', {dishes: names(dishes), until: {unit: 'clock', value: until}}),
      )
    const shutAt = (at: number): boolean =>
      [...kept].some(([from, ids]) => from < at && ids.some((id) => from + shutFor(id) > at))
    const {tended, short} = tendingOf(problem, plan, times, shutAt)
    for (const {how, at, dishes, words} of tended)
      put(9, at, 'tend', dishes, null, p(TENDED[how], {dishes: names(dishes), words}))
    for (const {dish, words, wanted, opened} of short)
      messages.push({
        ...lineOf(problem.day, dish),
        severity: 'warning',
        rule: 'tend',
        reason:
          wanted === null || wanted === 1
            ? `${dish.title}: its receipt says “${words}”, and the plan does not open the door for it`
            : `${dish.title}: its receipt says “${words}”, ${wanted} times as it bakes, and the plan has the door open for ${opened} of them`,
        suggest:
          'open it for a moment only, and look at it a little later: so many openings cost heat that the plan does not count',
      })
    times.forEach((at, i) => {
      const next = times[i + 1]
      const inside = plan.loads.flatMap((l) => l.dishes.filter((d) => l.at <= at && d.draw.likely > at).map((d) => d.dish))
      if (next === undefined) return
      const ajar = inside.map((id) => byId.get(id)?.ajar).find((words) => words !== undefined)
      if (ajar !== undefined) put(10, at, 'shut', inside, null, p('leave ajar', {dishes: names(inside), words: ajar}))
      else if (inside.length > 0 && next - at > rules.shutFor)
        put(10, at, 'shut', inside, null, p('shut', {dishes: names(inside)}), {sign: p('sign soak')})
    })
  }
  // What is mixed, or stands shaped, and has no place any more does not wait till somebody thinks of it.
  for (const {dish, was} of leftOver(problem, plan))
    put(
      2,
      problem.done!.now,
      'rise',
      [dish.id],
      null,
      p(putByWords(dish, was, problem.done!.now), {
        dishes: names([dish.id]),
        mixed: {unit: 'clock', value: was.mixed!},
      }),
    )
  steps.sort(
    (a, b) =>
      a.at - b.at ||
      a.rank - b.rank ||
      (a.dishes[0] ?? '').localeCompare(b.dishes[0] ?? '', 'en') ||
      (a.load ?? 0) - (b.load ?? 0),
  )
  return {steps: steps.map(({rank: _, ...step}) => step), messages}
}

/** What dries with the door ajar would be steamed with it shut. */
const behindDraw = (ajar: boolean, kept: boolean): PhraseId =>
  ajar ? (kept ? 'behind draw ajar kept' : 'behind draw ajar') : kept ? 'behind draw kept' : 'behind draw'

/** How many pairs of hands would make up all of a plan's dishes in time; null where a kitchen full would not. */
function pairsFor(problem: PlanProblem, plan: Plan, hands: Hands, now: number): number | null {
  for (let pairs = problem.day.hands + 1; pairs <= MOST_HANDS; pairs++)
    if (!makingsOf(problem, plan, hands.with(pairs)).late.some(({at}) => at >= now)) return pairs
  return null
}
