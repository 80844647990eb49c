import {words} from './row.js'
import type {DeedWord} from './schema.js'

const row = (deed: DeedWord['deed'], where: DeedWord['where'], id: string, list: string): DeedWord => ({
  id: `${deed}: ${id}`,
  deed,
  where,
  words: words(list),
  source: 'common-practice',
})

/** Words with what may stand before them where they are said of a dish: "is not done", "are not done". */
const being = (verbs: string, list: string): string =>
  words(list)
    .flatMap((phrase) => [phrase, ...words(verbs).map((verb) => `${verb} ${phrase}`)])
    .join(', ')

/** What a log says was done to a dish, or became of it, in small letters, English and German. `src/oven/log-deeds.ts` reads them. */
export const deedWords: readonly DeedWord[] = [
  row('set in', 'anywhere', 'set in', 'set in, put in, went in, gone in'),
  row('set in', 'anywhere', 'eingeschoben', 'eingeschoben, eingeschossen, hineingestellt, hineingeschoben'),
  row(
    'set in',
    'anywhere',
    'put back',
    'put back, put back in, put back into the oven, put back in the oven, set back in, set back, went back in, gone back in, back in, back into the oven, back in the oven, returned to the oven',
  ),
  row(
    'set in',
    'anywhere',
    'wieder eingeschoben',
    'wieder eingeschoben, wieder eingeschossen, wieder hineingestellt, wieder hineingeschoben, wieder in den ofen, wieder im ofen, wieder rein, wieder hinein, zurück in den ofen, zurückgestellt, zurückgeschoben',
  ),
  // What may be done to more than a dish is read where the row is a dish's, or the name of one stands behind it.
  row('set in', 'of a dish', 'loaded', 'loaded, in den ofen, im ofen'),
  row('set in', 'short', 'in', 'in, rein, hinein'),
  row('drawn', 'anywhere', 'drawn', 'drawn, taken out, came out, come out, pulled out'),
  row(
    'drawn',
    'anywhere',
    'herausgenommen',
    'herausgenommen, herausgeholt, rausgenommen, rausgeholt, ausgezogen, herausgezogen, gezogen',
  ),
  row(
    'drawn',
    'anywhere',
    'zum Füllen herausgenommen',
    'zum füllen herausgenommen, zum belegen herausgenommen, zum füllen herausgeholt, zum füllen rausgenommen, zum füllen rausgeholt, zum füllen heraus, zum füllen raus, zum füllen gezogen',
  ),
  row(
    'drawn',
    'anywhere',
    'out to fill',
    'out to fill, out to be filled, out for filling, out for the filling, out for its filling',
  ),
  row('drawn', 'of a dish', 'drew', 'draw, drew, took out, pulled, removed, unloaded, aus dem ofen'),
  row('drawn', 'short', 'out', 'out, raus, heraus'),
  row('mixed', 'at the end', 'mixed', 'mixed, kneaded, dough mixed, dough kneaded'),
  row('mixed', 'at the end', 'geknetet', 'geknetet, teig geknetet, teig angesetzt'),
  row(
    'shaped',
    'at the end',
    'shaped',
    'shaped, moulded, molded, dough shaped, dough moulded, loaves shaped, loaves moulded, rolls shaped, rolls moulded',
  ),
  row('shaped', 'at the end', 'geformt', 'geformt, gewirkt, laibe geformt, brötchen geformt'),
  row(
    'not risen',
    'at the end',
    'not risen',
    'not risen, not yet risen, has not risen, have not risen, is not risen, are not risen, has not yet risen, have not yet risen, is not yet risen, are not yet risen',
  ),
  row(
    'not risen',
    'at the end',
    'not proved',
    'not proved, not yet proved, has not proved, have not proved, is not proved, are not proved, has not yet proved, have not yet proved',
  ),
  row('not risen', 'at the end', 'nicht aufgegangen', 'nicht aufgegangen, noch nicht aufgegangen, ist noch nicht aufgegangen'),
  row(
    'not risen',
    'at the end',
    'nicht gegangen',
    'nicht gegangen, noch nicht gegangen, ist nicht gegangen, ist noch nicht gegangen, sind nicht gegangen, sind noch nicht gegangen',
  ),
  row('not risen', 'of a dish', 'still rising', 'still rising, geht noch'),
  row(
    'not in',
    'at the end',
    'not set in',
    'not set in, not set in yet, not yet set in, not in, not in yet, not yet in, not in the oven, not in the oven yet, not yet in the oven',
  ),
  row(
    'not in',
    'at the end',
    'has not gone in',
    'has not gone in, have not gone in, has not gone in yet, have not gone in yet, is not in, are not in, is not in yet, are not in yet, is not set in yet, are not set in yet',
  ),
  row(
    'not in',
    'at the end',
    'waits',
    'waits, wait, waiting, is waiting, are waiting, still waits, still waiting, must wait, has to wait',
  ),
  row('not in', 'at the end', 'later', 'later, goes in later, go in later, comes later, to go in later, put off'),
  row(
    'not in',
    'at the end',
    'nicht eingeschoben',
    'nicht eingeschoben, noch nicht eingeschoben, nicht eingeschossen, noch nicht eingeschossen, nicht im ofen, noch nicht im ofen, nicht drin, noch nicht drin, ist noch nicht drin, sind noch nicht drin',
  ),
  row(
    'not in',
    'at the end',
    'wartet',
    'wartet, warten, wartet noch, warten noch, muss warten, später, kommt später, kommen später',
  ),
  // A crust that was baked blind bakes on once it is filled.
  row(
    'not drawn',
    'at the end',
    'filled',
    'filled, filled and put back, filled and set in again, filled and back in, is filled, are filled',
  ),
  row(
    'not drawn',
    'at the end',
    'gefüllt',
    'gefüllt, gefüllt und wieder eingeschoben, gefüllt und wieder hinein, ist gefüllt, sind gefüllt',
  ),
  // It was looked at and stays in the oven.
  row(
    'not drawn',
    'at the end',
    'not done',
    being(
      'is, are',
      'not done, not done yet, not yet done, not quite done, not quite done yet, not nearly done, still not done, not baked, not baked yet, not yet baked, not baked through, not baked through yet, not cooked, not cooked yet, not yet cooked, not cooked through, not cooked through yet, not ready, not ready yet, not yet ready, not soft, not soft yet, not yet soft, not set, not set yet, not yet set, not brown, not brown yet, not yet brown, not browned, not browned yet',
    ),
  ),
  row(
    'not drawn',
    'at the end',
    'not drawn',
    being(
      'is, are, has, have',
      'not drawn, not drawn yet, not yet drawn, not out, not out yet, not yet out, not taken out, not taken out yet, not yet taken out, not come out yet',
    ),
  ),
  row(
    'not drawn',
    'at the end',
    'still in',
    being('is, are', 'still in, still in the oven, still inside, still in there, still baking, still cooking, still roasting'),
  ),
  row(
    'not drawn',
    'at the end',
    'left in',
    being(
      'is, are, was, were',
      'left in, left in the oven, left in longer, left in a little longer, left in a bit longer, left in overnight, left in for the night, kept in, kept in the oven',
    ),
  ),
  row(
    'not drawn',
    'at the end',
    'stays in',
    'stays in, stay in, stays in the oven, stay in the oven, stays in longer, stay in longer, remains in, remain in, remains in the oven, remain in the oven',
  ),
  row(
    'not drawn',
    'at the end',
    'needs longer',
    'needs longer, need longer, needs a little longer, need a little longer, needs a bit longer, need a bit longer, needs more time, need more time, needs more, need more, wants longer, want longer, wants more time, want more time',
  ),
  row(
    'not drawn',
    'with a time',
    'needs',
    'needs, need, wants, want, gets, get, given, left in, left in for, stays in, stay in, stays in for, stay in for',
  ),
  row(
    'not drawn',
    'at the end',
    'nicht fertig',
    being(
      'ist, sind',
      'nicht fertig, noch nicht fertig, noch nicht ganz fertig, nicht gar, noch nicht gar, noch nicht ganz gar, nicht durch, noch nicht durch, noch nicht durchgebacken, noch nicht ausgebacken, noch nicht weich, noch nicht braun',
    ),
  ),
  row(
    'not drawn',
    'at the end',
    'noch im Ofen',
    being(
      'ist, sind',
      'noch im ofen, noch drin, noch drinnen, noch nicht heraus, noch nicht raus, noch nicht draußen, noch nicht herausgenommen, noch nicht rausgenommen, noch nicht herausgeholt, noch nicht rausgeholt, noch nicht aus dem ofen',
    ),
  ),
  row(
    'not drawn',
    'at the end',
    'bleibt drin',
    'bleibt drin, bleiben drin, bleibt noch drin, bleiben noch drin, bleibt im ofen, bleiben im ofen, bleibt noch im ofen, bleiben noch im ofen, bleibt länger drin, bleiben länger drin, drin gelassen, dringelassen, im ofen gelassen, bäckt noch, backt noch, backen noch',
  ),
  row(
    'not drawn',
    'at the end',
    'braucht länger',
    'braucht noch, brauchen noch, braucht noch zeit, brauchen noch zeit, braucht länger, brauchen länger, braucht noch länger, brauchen noch länger, braucht noch etwas, brauchen noch etwas',
  ),
  row('not drawn', 'with a time', 'braucht noch', 'braucht noch, brauchen noch, braucht, brauchen, bleibt noch, bleiben noch'),
  // Nobody eats it: "burnt at the edge" is not lost.
  row(
    'lost',
    'at the end',
    'burnt',
    'burnt, burnt to a cinder, burnt to a crisp, burnt to cinders, burnt to ashes, burnt black, burnt through',
  ),
  row(
    'lost',
    'at the end',
    'burned',
    'burned, burned to a cinder, burned to a crisp, burned to cinders, burned to ashes, burned black, burned through',
  ),
  row('lost', 'at the end', 'thrown away', 'thrown away, thrown out, threw away, threw out'),
  row('lost', 'at the end', 'dropped', 'dropped, lost, spoilt, spoiled, ruined, charred, binned, inedible, black'),
  row('lost', 'at the end', 'verbrannt', 'verbrannt, schwarz verbrannt, verkohlt'),
  row('lost', 'at the end', 'verdorben', 'verdorben, weggeworfen, fallen gelassen, heruntergefallen, runtergefallen'),
]
