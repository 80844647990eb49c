import {words} from './row.js'
import type {NoteWord} from './schema.js'

const row = (use: NoteWord['use'], id: string, list: string): NoteWord => ({
  id: `${use}: ${id}`,
  use,
  words: words(list),
  source: 'common-practice',
})

/** What a note says of the fire and of what was read, in small letters, English and German. `src/oven/note-words.ts` reads them. */
export const noteWords: readonly NoteWord[] = [
  row('lit', 'lit', 'lit, lit the fire, lit the oven, fire lit, the fire lit, kindled, fire kindled, lighted'),
  row('lit', 'angezündet', 'angezündet, angefeuert, eingeheizt, feuer an, feuer angezündet, ofen angefeuert'),
  row(
    'raked',
    'raked',
    'raked, raked out, raked the coals out, raked out the coals, raked the oven out, coals raked out, fire raked out',
  ),
  row('raked', 'ausgeräumt', 'ausgeräumt, glut ausgeräumt, ofen ausgeräumt, ausgekehrt'),
  row(
    'lit again',
    'wieder angezündet',
    'wieder angezündet, wieder angefeuert, wieder eingeheizt, feuer wieder angezündet, feuer wieder an',
  ),
  row('raked again', 'wieder ausgeräumt', 'wieder ausgeräumt, glut wieder ausgeräumt, ofen wieder ausgeräumt'),
  row('wood', 'wood', 'wood, firewood, wood in all, wood burned, wood burnt, holz, brennholz'),
  row('counted', 'counted', 'counted, counted to, count, count of, counted up to, gezählt, gezählt bis'),
  row(
    'part of the floor',
    'left',
    'left, right, back, front, middle, mouth, on the left, on the right, at the back, at the front, in the middle, at the mouth',
  ),
  row('part of the floor', 'links', 'links, rechts, hinten, vorne, vorn, mitte, in der mitte, am mund'),
  row('door', 'door', 'door, the door, oven door, the oven door'),
  row('door', 'tür', 'tür, die tür, ofentür, die ofentür'),
  // Before what it was, or before the door itself: "the door was left ajar", "left the door open".
  row('door left', 'left', 'was, stood, left, kept, stayed, had been, has been, is, had, forgot'),
  row('door left', 'stand', 'war, stand, blieb, steht, ist, hatte'),
  row('door opened', 'open', 'open, opened, wide open, a little open, left open'),
  row('door opened', 'ajar', 'ajar, a crack open, left ajar'),
  row('door opened', 'offen', 'offen, geöffnet, aufgemacht, auf, offen gelassen, aufgelassen, weit offen'),
  row('door opened', 'angelehnt', 'angelehnt, einen spalt offen, einen spalt auf, nur angelehnt'),
  row('door shut', 'shut', 'shut, closed'),
  row('door shut', 'zu', 'zu, geschlossen, zugemacht'),
  row(
    'fire out',
    'went out',
    'went out, fire went out, the fire went out, fire out, fire was out, fire had gone out, fire died, fire died down',
  ),
  row(
    'fire out',
    'ausgegangen',
    'ausgegangen, feuer ausgegangen, feuer ging aus, das feuer ging aus, feuer war aus, feuer erloschen',
  ),
  // Beside a length of time: it is to come on top, or is how late something was done.
  row('on top', 'more', 'more, longer, yet, another'),
  row('on top', 'noch', 'noch, mehr, länger, weitere'),
  row('off time', 'late', 'late, later, early, earlier, ago, over, under'),
  row('off time', 'zu spät', 'spät, später, früh, früher, her'),
  row('pair', 'both', 'both'),
  row('pair', 'beide', 'beide, beiden'),
  // Between a number and how many there are, or whose they are: "1 of the 3 pies".
  row('of', 'of', 'of'),
  row('of', 'von', 'von'),
  // … the first of two words: "2 out of 6".
  row('of it out', 'out', 'out'),
  // How many are left, where the note does not tell of how many: "all but 2 loaves out".
  row('all but', 'all but', 'all but, all except, all save'),
  row('all but', 'alle bis auf', 'alle bis auf, alle außer'),
  // With a time behind it, when it was done: "sponge set 6:10 am".
  row('dough worked', 'set', 'set, fed, mixed, kneaded, shaped, refreshed, made up, folded, knocked back'),
  row(
    'dough worked',
    'angesetzt',
    'angesetzt, gefüttert, aufgefrischt, geknetet, gemischt, angerührt, geformt, gefaltet, aufgearbeitet',
  ),
  // Of what is set in: it has been in the oven before; "again" may be said of the next batch too.
  row('put back', 'back', 'back, returned, zurück, zurückgestellt, zurückgeschoben'),
  row('again', 'again', 'again, once more, wieder, nochmal, nochmals, noch einmal'),
  // Of a crust baked blind: out for its filling, and not done.
  row(
    'to fill',
    'to fill',
    'to fill, to fill it, to fill them, to be filled, for filling, for the filling, for its filling, for their filling, and filled',
  ),
  row('to fill', 'zum Füllen', 'zum füllen, zum belegen, zur füllung, für die füllung, und gefüllt'),
  // A dish of the day may be a compound of it: „Brot“ of „Roggenmischbrot“.
  row(
    'end of a name',
    'brot',
    'brot, brote, brötchen, laib, laibe, zopf, zöpfe, stollen, kuchen, torte, torten, pastete, pasteten, fladen, plätzchen, auflauf, aufläufe, braten, pudding',
  ),
  row('of all', 'the', 'the, all'),
  row('of all', 'den', 'den, der, allen'),
  row('single', 'a', 'a, an'),
  row('single', 'ein', 'ein, eine, einen'),
]
