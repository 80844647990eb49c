import {heatChanges} from '../lexicon/grammar-words.js'
import {hedges, ovenTests, ovenWords} from '../lexicon/oven-words.js'
import type {OvenWord} from '../lexicon/schema.js'
import {fold, type Token} from './section.js'

/*
 * The lexicon's heat rows as trees, and the small words around them that the grammar of heat turns on.
 */

/** Rows by their words: a walk of the tokens finds the longest phrase that starts at one. */
export interface Node<Row> {
  next: Map<string, Node<Row>> | null
  rows: Row[]
}
export interface Match<Row> {
  readonly rows: readonly Row[]
  readonly end: number
}

export function tree<Row extends {readonly phrases: readonly string[]}>(rows: readonly Row[]): Node<Row> {
  const root: Node<Row> = {next: new Map(), rows: []}
  for (const row of rows) {
    for (const phrase of row.phrases) {
      let node = root
      for (const word of phrase.split(/[\s-]+/)) {
        const key = fold(word)
        node.next ??= new Map()
        let child = node.next.get(key)
        if (child === undefined) {
          child = {next: null, rows: []}
          node.next.set(key, child)
        }
        node = child
      }
      if (!node.rows.includes(row)) node.rows.push(row)
    }
  }
  return root
}

export function longest<Row>(root: Node<Row>, tokens: readonly Token[], at: number, limit: number): Match<Row> | null {
  let node: Node<Row> = root
  let best: Match<Row> | null = null
  for (let i = at; i < limit; i++) {
    const child = node.next?.get(tokens[i]!.word)
    if (child === undefined) break
    node = child
    if (node.rows.length > 0) best = {rows: node.rows, end: i + 1}
  }
  return best
}

export const used = (use: OvenWord['use']): readonly OvenWord[] =>
  ovenWords.filter((row) => (row.use ?? 'adjective') === use && row.id !== 'unknown-heat')
export const ADJECTIVES = tree(used('adjective'))
export const ADVERBS = tree(used('adverb'))
export const AS_FOR = tree(used('as for'))
export const AFTER = tree(used('after'))
export const WITH = tree(used('with'))
export const FIXED = tree(used('fixed'))
export const HEDGES = tree(hedges)
export const TESTS = new Map(ovenTests.map((row) => [row.id, row]))

export const set = (list: string): ReadonlySet<string> => new Set(list.split(' '))

/** What is done to an oven's heat, where a syrup's or a milk's is brought to its own. */
export const CHANGES: ReadonlySet<string> = new Set(heatChanges.map(fold))

export const OVENS = set("oven ovens ouen ouens ovens' oven's backofen ofen")
export const BAKES = set("bake baked bakes baking bak'd baken backen gebacken backt")
/** Words of a heat phrase that are neither heat words nor hedges. */
export const LINKS = set('and or but nor yet though to if any thing anything rather')
export const DETERMINERS = set('a an the your our this that one any no')
export const NOT_OVENS = set('dutch camp reflector reflecting american bastable bake-kettle tin portable toaster microwave')
/** Between "oven" and what is said of it. */
export const COPULAS = set(
  'is are be was were being been must should shall ought to has have had may can will would need needs let it its made kept keep just only when which that not then first always previously before gets get becomes become grows grown should so never do does no pretty of a an at in with too also half must ready',
)
export const BE = set('is are be was being been should must get gets becomes become grows made kept ought')
export const PREPOSITIONS = set('a an of at in with the')
/** Say little by themselves: they need a copula or the oven right behind them. */
export const WEAK = set('tolerable steady good-heat sound strong fast low warm')
export const VERB_TOO = set('cool warm slow low even steady moderate weak high fast cooling right fair great')
export const HEAT_NOUNS = set('heat heats temperature degree oven one fire')
export const AFTER_ADJECTIVE = set(
  'as enough and but for to not when before or nor if that so in till until while after though during it they put bake on lest otherwise than at the you',
)
export const CONTEXT_BAKES = set(
  "oven ovens bake baked baking bakes ouen drawn bak'd biscuit loaf loaves cake cakes bread crust tin tins pans",
)
export const POT_WORDS = set(
  'stew stewed simmer boil boiled boiling fry fried saucepan kettle pot stewpan skillet over frying pan griddle steam kochen gekocht kocheln topf pfanne anbraten dunsten andunsten schmoren rosten sieden schmelzen',
)
/** German words of the pot that are said of meat in the oven too. */
export const MEAT_TOO = set('anbraten schmoren topf pfanne rosten')
/** Behind a German heat: what is done with the oven's. */
export const IN_OVEN = set('trocknen dorren schmoren anbacken ausbacken uberbacken gratinieren')
export const ADVERB_STOPS = set(
  'until till when and then or if stir boil serve pour mix beat but simmer fry stew add put take turn strain that which stewed boiled eat',
)
export const STRICT_ADVERBS = set('gently slowly quickly briskly moderately steadily quick slow')
export const DRAWN = set('drawn out drawne drawen drawing removed')
export const DONE = set('baked done finished out withdrawn taken comes come')
export const INSIDE_WORDS = set(
  "internal kern kerntemperatur inside centre center crumb dough milk water syrup sugar liquid yeast sponge butter chocolate thermometer thickness core room fridge freezer refrigerator fat oil lard custard cream batter reads read filling melted proof prove proofing proving rise bath brew tepid starter levain loaf's",
)

export const isStop = (t: Token | undefined): boolean =>
  t === undefined ||
  (t.kind === 'mark' &&
    (t.word === '.' || t.word === ';' || t.word === '?' || t.word === '!' || t.word === '|' || t.word === ':'))

/** A heat that has come down from its first. */
export const HEAT_SUBSIDES = ovenWords.filter((row) => row.id === 'heat-subsides')
export const HEDGE_CAP = hedges.find((row) => row.effect === 'cap')!
/** What a word for heat may mean that no row knows: from the slack oven to the hot. */
export const UNKNOWN_HEAT = ovenWords.filter((row) => row.id === 'unknown-heat')
/** What a stretch of time is made of. */
export const BETWEEN_TIMES = set(
  'for about an a or to and hour hours minutes half quarter three four two one five six of quarters at least some until done it them',
)
export const WELL_HEATED = ovenWords.filter((row) => row.id === 'well-heated')
export const RUN_WORDS: ReadonlySet<string> = new Set(
  [...used('adjective'), ...hedges]
    .flatMap((row) => row.phrases.flatMap((phrase) => phrase.split(/[\s-]+/).map(fold)))
    .filter((word) => !/^(?:an?|the|of|is|to|in|by|at|no)$/.test(word)),
)
export const LEAD_IN = set(
  'not to have let the your an a and make keep care take that be sure mind see if must should heat with having when of it heating get into in never get',
)
export const WARNINGS = set("not care careful lest never nor don't avoid mind observe beware")
export const CONDITIONS = set('if when should unless where because')
export const HEATING = set('heat heating heated fire make het')
export const ALLOWING = set('let allow allowing letting left until till')
export const AFTER_COMMA = set(
  'which that but not and rather moderately very as or let tolerably pretty well neither nor having with quick slack',
)
export const LINKS_AFTER = set('but nor neither or rather yet heat heated about')
export const LIKENESS = set('heat as enough same than fit proper such like suitable hot required sufficient right heated')
export const HEATED = set('hot heat heated hotter cooler quicker slower slack temperature fire')
export const DRIES = set('dry drying dried bake baked candy sieve')
/** A stove with one of these before it is what a pot stands on. */
export const UPON = set('on upon over top behind before under')
export const NEGATIVES = set("not nor never no don't")
/** Eaten with bread, not baked with it. */
export const EATEN_WITH_BREAD = set('butter cheese milk cream water salt wine gravy sugar sauce meat')
export const COMPARATIVES = set('hotter quicker brisker fiercer warmer sharper cooler slower slacker gentler milder lower')
export const DRAWABLE = set('bread loaves pies manchet manchets')
export const SETS_IN = set("put set bake baked baking oven ouen place stand let dry leave remain in do lay slide bak'd")
export const SETS_IN_STRICT = set('put set oven ouen bake dry leave place')
/** In a pan, unless the oven is named. */
export const BRATEN = set('braten')
export const BAKEN = set('backen gebacken backt ausgebacken ofen backofen backrohr')
export const OVEN_OR_BAKE = set("oven ovens bake baked baking ouen bak'd")
export const TEST_ACTS = set(
  'throw throwing strew strewing sprinkle sprinkling scatter scattering dust dusting cast put putting place placing lay hold holding thrust fling thrown try test',
)
export const COVERS = set('cover covered over butter buttered oiled line lined tie on under')
export const JOINTS = set('/ ( ) , or - — = ; • · and |')
export const FAN_AFTER = set('fan convection umluft heißluft heissluft')
export const DEGREE_AFTER = set('° degrees f c')
export const NEUTRAL = set(
  "brick baker's bakers' range gas electric wood clay stone iron same new second different other bread conventional pizza preheated heated combination home modern fan open empty clean old american stove proper public village common domestic kitchen portable cold unheated earth earthen outdoor cooking masonry coal sheet drying normal standard regular",
)
