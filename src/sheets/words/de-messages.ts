import type {Book} from './sentences.js'

/**
 * Messages in German: the checker's, which stand on the sheets, and the readers', which are told beside them. Keys of front matter, names
 * of files and words to be written stay as the files have them.
 */
export const deMessages: Book['sentences'] = [
  // The checker (plan/check.ts)
  ['the plan burns a fire that was not considered', 'der Plan brennt ein Feuer, das nicht in Betracht kam'],
  ['lit {n} min before fire is allowed', '{n} min früher angezündet als erlaubt'],
  ['the fire was lit at another time', 'das Feuer wurde zu einer anderen Zeit angezündet'],
  ['a later fire is not the one that the curve counts on', 'ein späteres Feuer ist nicht das, mit dem die Kurve rechnet'],
  ['the first fire is not told as it is burned', 'das erste Feuer ist nicht so angegeben, wie es brennt'],
  ['raked out {n} min off the time that the fire burns', '{n} min neben der Brenndauer des Feuers ausgeräumt'],
  ['ready {n} min off the time that the heat evens out', '{n} min neben der Zeit des Ausgleichens bereit'],
  ['a later fire burns with the one before', 'ein späteres Feuer brennt zugleich mit dem vorigen'],
  ['a later fire is raked out in the night', 'ein späteres Feuer wird in der Nacht ausgeräumt'],
  ['the curve is of another fire', 'die Kurve ist die eines anderen Feuers'],
  [
    'the curve is {n} °C hotter than the fire alone makes the oven',
    'die Kurve ist {n} °C heißer, als das Feuer allein den Ofen macht',
  ],
  ['the curve’s range is narrower than the oven leaves it', 'der Bereich der Kurve ist enger, als der Ofen ihn lässt'],
  ['load {n}: not numbered as it is set in', 'Schuss {n}: nicht nach der Reihe des Einschießens gezählt'],
  ['{dish}: two vessels with the number {n}', '{dish}: zwei Gefäße mit der Nummer {n}'],
  ['{dish}: said to stand across the floor, but not there', '{dish}: angeblich über den Herd verteilt, aber nicht dort'],
  [
    '{dish}: set in at {n} °C, it is said; by the curve at {n2} °C',
    '{dish}: angeblich bei {n} °C eingeschossen; nach der Kurve bei {n2} °C',
  ],
  [
    '{dish}: drawn at {n} °C, it is said; by the curve at {n2} °C',
    '{dish}: angeblich bei {n} °C ausgezogen; nach der Kurve bei {n2} °C',
  ],
  // … its steps
  ['a step says {n} °C; the oven then has {n2} °C', 'ein Schritt sagt {n} °C; der Ofen hat dann {n2} °C'],
  ['a step does not say rightly whether it is past', 'ein Schritt sagt nicht richtig, ob er vergangen ist'],
  ['{dish}: a step sets it in when the plan does not', '{dish}: ein Schritt schießt ein, wenn der Plan es nicht tut'],
  ['{dish}: a step tells of {n} where the plan has {n2}', '{dish}: ein Schritt nennt {n}, wo der Plan {n2} hat'],
  [
    '{dish}: what its caution asks for first is not told when it is made up',
    '{dish}: was der Hinweis zuerst verlangt, steht nicht dabei, wenn es fertig gemacht wird',
  ],
  ['{dish}: a step draws it when the plan does not', '{dish}: ein Schritt schießt aus, wenn der Plan es nicht tut'],
  [
    'a step tests the heat when nothing is set in, or soon after another test',
    'ein Schritt prüft die Hitze, wenn nichts eingeschossen wird oder bald nachdem sie geprüft wurde',
  ],
  ['a step shuts the door when the plan does not', 'ein Schritt schließt die Tür, wenn der Plan es nicht tut'],
  [
    'a step tops up what is not in the oven, or with the door shut',
    'ein Schritt füllt auf, was nicht im Ofen ist, oder bei geschlossener Tür',
  ],
  ['a step tells of a fire that the plan does not have', 'ein Schritt sagt von einem Feuer, das der Plan nicht hat'],
  ['{dish}: no dish of the day, and a step tells of it', '{dish}: kein Gericht dieses Tages, und ein Schritt sagt davon'],
  ['a step’s words are not those of its figures', 'die Worte eines Schritts sind nicht die seiner Angaben'],
  ['a step’s words name other dishes than it is of', 'die Worte eines Schritts nennen andere Gerichte als er selbst'],
  ['no step feeds the fire', 'kein Schritt legt Holz nach'],
  ['no step lets the heat even out', 'kein Schritt lässt die Hitze sich ausgleichen'],
  ['the steps say other wood than is burned', 'die Schritte sagen anderes Holz, als verbrannt wird'],
  ['the steps say another time than the fire has', 'die Schritte sagen eine andere Zeit, als das Feuer hat'],
  ['no step tests the heat before load {n}', 'kein Schritt prüft die Hitze vor Schuss {n}'],
  [
    'the heat that is tested before load {n} is not that of the oven',
    'die Hitze, die vor Schuss {n} geprüft wird, ist nicht die des Ofens',
  ],
  ['the step of load {n} says other places than the plan has', 'der Schritt von Schuss {n} sagt andere Plätze als der Plan'],
  [
    'a step draws what is done and does not say how hot the oven is',
    'ein Schritt schießt aus und sagt nicht, wie heiß der Ofen ist',
  ],
  ['{dish}: its step says another time to look for it', '{dish}: der Schritt sagt eine andere Zeit zum Nachsehen'],
  ['{dish}: no step keeps the door shut for it', '{dish}: kein Schritt hält dafür die Tür geschlossen'],
  ['no step leaves the door a little open', 'kein Schritt lässt die Tür einen Spalt offen'],
  ['no step shuts the door on what stays in', 'kein Schritt schließt die Tür über dem, was darin bleibt'],
  ['{dish}: its dough is told of twice', '{dish}: von dem Teig ist zweimal die Rede'],
  ['{dish}: its sponge is told to work until another time', '{dish}: der Vorteig soll bis zu einer anderen Zeit gehen'],
  ['{dish}: its dough is told to rise at another time', '{dish}: der Teig soll zu einer anderen Zeit gehen'],
  ['{dish}: no step leaves its shaped dough to rise', '{dish}: kein Schritt lässt den geformten Teig gehen'],
  ['{dish}: its shaped dough is told to rise at another time', '{dish}: der geformte Teig soll zu einer anderen Zeit gehen'],
  [
    '{dish}: no step of the evening before tells what its receipt has done then',
    '{dish}: kein Schritt am Abend vorher sagt, was das Rezept dann tun lässt',
  ],
  [
    '{dish}: what is to be done the evening before is told at another time',
    '{dish}: was am Abend vorher zu tun ist, steht zu einer anderen Zeit',
  ],
  ['a step of the evening before that no receipt has', 'ein Schritt am Abend vorher, den kein Rezept hat'],
  [
    '{dish}: its draw does not say how it is kept until it is eaten',
    '{dish}: das Ausziehen sagt nicht, wie es bis zum Essen aufzubewahren ist',
  ],
  [
    '{dish}: its draw does not say what becomes of it where it is not done by night',
    '{dish}: das Ausziehen sagt nicht, was damit geschieht, wenn es bis zur Nacht nicht fertig ist',
  ],
  ['{dish}: its draw does not say that it is kept hot', '{dish}: das Ausziehen sagt nicht, dass es heiß zu halten ist'],
  [
    '{dish}: its draw does not say that it may have been lukewarm too long',
    '{dish}: das Ausziehen sagt nicht, dass es zu lange lauwarm gestanden haben kann',
  ],
  ['{dish}: it is made up at night', '{dish}: in der Nacht fertig gemacht'],
  ['{dish}: it is made up {n} min too soon', '{dish}: {n} min zu früh fertig gemacht'],
  [
    '{dish}: it is to be made up before the night, and is told at another time',
    '{dish}: vor der Nacht fertig zu machen, und zu einer anderen Zeit angegeben',
  ],
  [
    '{dish}: it is made up before the night and does not keep till it is set in, and nothing warns of it',
    '{dish}: vor der Nacht fertig gemacht, hält sich nicht bis zum Einschießen, und nichts warnt davor',
  ],
  ['{dish}: it is made up before the night, and could be by day', '{dish}: vor der Nacht fertig gemacht, und am Tag wäre Zeit'],
  ['{dish}: it is made up twice for one load', '{dish}: für einen Schuss zweimal fertig gemacht'],
  [
    '{dish}: it is to be made up for another time than it is set in',
    '{dish}: für eine andere Zeit fertig zu machen, als es eingeschossen wird',
  ],
  ['{dish}: it is made up and not set in then', '{dish}: fertig gemacht und dann nicht eingeschossen'],
  // … what it says of itself
  ['a misfit of {n} °C·min, and it is {n2} to {n3}', 'eine Abweichung von {n} °C·min, und sie ist {n2} bis {n3}'],
  ['idle floor of {n} m²·h, and it is {n2} to {n3}', 'leerer Herd von {n} m²·h, und es sind {n2} bis {n3}'],
  ['the total is not the sum of its parts', 'die Summe ist nicht die ihrer Teile'],
  ['the gap is not that of the bound', 'der Abstand ist nicht der zur Schranke'],
  ['{dish}: said to be late, and not so', '{dish}: angeblich verspätet, und nicht so'],
  ['{dish}: late, and not said to be', '{dish}: verspätet, und nicht gesagt'],
  ['{dish}: left out twice', '{dish}: zweimal weggelassen'],
  ['{n} vessels said to be left out, of which {n2} must', '{n} Gefäße angeblich weggelassen, davon {n2} notwendig'],
  [
    '{dish}: suggested for a time at which it cannot be baked',
    '{dish}: für eine Zeit vorgeschlagen, zu der nicht gebacken werden kann',
  ],
  ['where the heat goes: {what}', 'wohin die Hitze geht: {what:text}'],
  ['a band that the oven falls through is not told', 'eine Hitzestufe, durch die der Ofen fällt, fehlt'],
  ['what is left at the end is not what the curve has then', 'was am Ende bleibt, ist nicht, was die Kurve dann hat'],
  ['a band is told at another time', 'eine Hitzestufe steht zu einer anderen Zeit'],
  ['a band has other floor than is told', 'eine Hitzestufe hat anderen Herd, als angegeben ist'],
  ['the loads use other floor than is told', 'die Schüsse brauchen anderen Herd, als angegeben ist'],
  ['the loads take other heat than is told', 'die Schüsse nehmen andere Hitze, als angegeben ist'],
  ['the oven holds other heat than is told', 'der Ofen hält andere Hitze, als angegeben ist'],
  ['{dish}: done {n} min outside the range that is told', '{dish}: {n} min außerhalb des angegebenen Bereichs fertig'],
  ['{dish}: a place in load {n}, but not in it', '{dish}: ein Platz in Schuss {n}, aber nicht darin'],
  ['{dish}: no dish of the day', '{dish}: kein Gericht dieses Tages'],
  ['{dish}: said to be in already, and not in', '{dish}: angeblich schon im Ofen, aber nicht darin'],
  ['{dish}: set in off the {n}-minute clock', '{dish}: nicht im Takt von {n} Minuten eingeschossen'],
  ['{dish}: set in before now', '{dish}: vor jetzt eingeschossen'],
  ['{dish}: set in {n} min before the soak ends', '{dish}: {n} min vor dem Ende des Ausgleichens eingeschossen'],
  ['{dish}: set in at night', '{dish}: in der Nacht eingeschossen'],
  ['{dish}: drawn off the {n}-minute clock', '{dish}: nicht im Takt von {n} Minuten ausgezogen'],
  ['{dish}: drawn before now', '{dish}: vor jetzt ausgezogen'],
  ['{dish}: drawn at night', '{dish}: in der Nacht ausgezogen'],
  ['{dish}: drawn before being set in', '{dish}: vor dem Einschießen ausgezogen'],
  ['{dish}: drawn after the forecast ends', '{dish}: nach dem Ende der Vorhersage ausgezogen'],
  ['{dish}: in the oven while the fire burns', '{dish}: im Ofen, während das Feuer brennt'],
  ['{dish}: the draw time is outside its own range', '{dish}: die Zeit zum Ausziehen liegt außerhalb ihres Bereichs'],
  ['{dish}: {n} set in, {n2} places on the floor', '{dish}: {n} eingeschossen, {n2} Plätze auf dem Herd'],
  ['{dish}: said to stand at the {zone}, but not there', '{dish}: angeblich {zone:text}, aber nicht dort'],
  [
    '{dish} at the {zone}: set in at {n} °C; no less than {n2} °C',
    '{dish} {zone:text}: bei {n} °C eingeschossen; nicht unter {n2} °C',
  ],
  ['{dish} at the {zone}: set in at {n} °C; {n2} °C at most', '{dish} {zone:text}: bei {n} °C eingeschossen; höchstens {n2} °C'],
  ['{dish} at the {zone}: drawn at {n} °C; not under {n2} °C', '{dish} {zone:text}: bei {n} °C ausgezogen; nicht unter {n2} °C'],
  ['{dish}: drawn with {n} % of its heat', '{dish}: mit {n} % der Hitze ausgezogen'],
  [
    '{dish}: its receipt says “{text}”, and the plan does not open the door for it',
    '{dish}: Das Rezept sagt „{text}“, und der Plan öffnet die Tür dafür nicht',
  ],
  [
    '{dish}: its receipt says “{text}”, {n} times as it bakes, and the plan has the door open for {n2} of them',
    '{dish}: Das Rezept sagt „{text}“, {n}-mal beim Backen, und der Plan hat die Tür für {n2} davon offen',
  ],
  [
    'open it for a moment only, and look at it a little later: so many openings cost heat that the plan does not count',
    'nur einen Augenblick öffnen, und etwas später danach sehen: so viele Öffnungen kosten Hitze, mit der der Plan nicht rechnet',
  ],
  [
    'a step tends what is not in the oven, or with the door shut',
    'ein Schritt versorgt, was nicht im Ofen ist, oder bei geschlossener Tür',
  ],
  [
    '{dish}: no step tells what its receipt has done as it bakes',
    '{dish}: kein Schritt sagt, was das Rezept beim Backen tun lässt',
  ],
  [
    'the door is opened {n} min after setting in {dish}, and the receipt wants it shut for {n2} min',
    'die Tür wird {n} min nach dem Einschießen von {dish} geöffnet, und das Rezept will sie {n2} min geschlossen',
  ],
  [
    'open it for a moment only, or let what is drawn or set in then wait',
    'nur einen Augenblick öffnen, oder warten lassen, was dann ein- oder ausgeschossen wird',
  ],
  [
    '{n} openings while a receipt wants the door shut, {n2} said',
    '{n} Öffnungen, während ein Rezept die Tür geschlossen haben will, {n2} angegeben',
  ],
  [
    '{dish}: taken to have been set in as planned, {n} min ago; the log does not tell',
    '{dish}: wohl wie geplant eingeschossen, vor {n} min; im Ofenbuch steht nichts davon',
  ],
  [
    '{dish}: taken to have been set in as planned, {n} h ago; the log does not tell',
    '{dish}: wohl wie geplant eingeschossen, vor {n} h; im Ofenbuch steht nichts davon',
  ],
  [
    '{dish}: taken to have been set in as planned, {n} h {n2} min ago; the log does not tell',
    '{dish}: wohl wie geplant eingeschossen, vor {n} h {n2} min; im Ofenbuch steht nichts davon',
  ],
  [
    '{dish}: taken to have been set in at {time} and drawn at {time2}; the log tells of neither',
    '{dish}: wohl um {time} eingeschossen und um {time2} ausgezogen; im Ofenbuch steht von beidem nichts',
  ],
  [
    '{n} dishes are taken to have been set in and drawn, and the log tells of neither: {list}',
    '{n} Gerichte wohl eingeschossen und ausgezogen; im Ofenbuch steht von beidem nichts: {list}',
  ],
  [
    '{dish}: taken to have been drawn at {time}, {n} min after it was set in, when something was set in that was to follow it; the log does not tell',
    '{dish}: wohl um {time} ausgezogen, {n} min nach dem Einschießen, als etwas hineinkam, das danach an der Reihe war; im Ofenbuch steht nichts davon',
  ],
  [
    '{dish}: taken to have been drawn at {time}, {n} h after it was set in, when something was set in that was to follow it; the log does not tell',
    '{dish}: wohl um {time} ausgezogen, {n} h nach dem Einschießen, als etwas hineinkam, das danach an der Reihe war; im Ofenbuch steht nichts davon',
  ],
  [
    '{dish}: taken to have been drawn at {time}, {n} h {n2} min after it was set in, when something was set in that was to follow it; the log does not tell',
    '{dish}: wohl um {time} ausgezogen, {n} h {n2} min nach dem Einschießen, als etwas hineinkam, das danach an der Reihe war; im Ofenbuch steht nichts davon',
  ],
  [
    'if it is in the oven, note that it is still in, and plan again; if not, note when it was drawn',
    'ist es noch im Ofen, das aufschreiben und neu planen; wenn nicht, aufschreiben, wann es ausgezogen wurde',
  ],
  ['look in the oven, and note what was done and when', 'im Ofen nachsehen und aufschreiben, was wann getan wurde'],
  [
    '{dish}: set in at {time}, and the dough has not risen and been shaped before {time2}',
    '{dish}: um {time} in den Ofen, und der Teig ist nicht vor {time2} gegangen und geformt',
  ],
  [
    '{dish}: set in at {time}, and the dough has risen and been shaped by {time2}: it holds for {n} min',
    '{dish}: um {time} in den Ofen, und der Teig ist um {time2} gegangen und geformt: er hält sich {n} min',
  ],
  [
    '{dish}: its dough rises {size} through the night, {size2} longer than it is meant to; it stands in the cold for that',
    '{dish}: der Teig geht {size} über Nacht, {size2} länger als vorgesehen; dafür steht er in der Kälte',
  ],
  [
    '{dish}: its dough rises {size}, {size2} longer than it is meant to; it stands in the cold for that',
    '{dish}: der Teig geht {size}, {size2} länger als vorgesehen; dafür steht er in der Kälte',
  ],
  [
    '{dish}: with raw meat or fish in it from shaping on, it would stand {size} out of the refrigerator; two hours are enough, four the utmost',
    '{dish}: ab dem Formen mit rohem Fleisch oder Fisch darin stünde es {size} außerhalb des Kühlschranks; zwei Stunden sind genug, vier das Äußerste',
  ],
  [
    'let it rise before it is filled and prove it for less than two hours, or fill it with meat that is cooked and cold, or write “prove in the refrigerator” into the receipt',
    'vor dem Füllen gehen lassen und die Stückgare unter zwei Stunden halten, oder mit gegartem, kaltem Fleisch füllen, oder ins Rezept schreiben, dass es im Kühlschrank geht',
  ],
  [
    '{dish}: its sponge works {size} through the night, {size2} longer than it is meant to; it stands in the cold for that',
    '{dish}: der Vorteig geht {size} über Nacht, {size2} länger als vorgesehen; dafür steht er in der Kälte',
  ],
  [
    'look at it first thing in the morning: make the dough of it as soon as it begins to fall',
    'am Morgen zuerst danach sehen: sobald er zusammenzufallen beginnt, den Teig damit kneten',
  ],
  [
    'look at it now and then: what is full risen is knocked down and left in the cold until it is shaped',
    'hin und wieder nachsehen: was voll gegangen ist, wird zusammengestoßen und bleibt bis zum Formen in der Kälte',
  ],
  [
    'look at it first thing in the morning: what is full risen is knocked down and left in the cold until it is shaped',
    'am Morgen zuerst danach sehen: was voll gegangen ist, wird zusammengestoßen und bleibt bis zum Formen in der Kälte',
  ],
  [
    'keep it cool; or knock it down when it is full risen, and shape it later',
    'kühl stellen; oder zusammenschlagen, wenn er voll gegangen ist, und später formen',
  ],
  [
    'stand it warmer; if it has not risen by then, set it in when it has, note that and plan again',
    'wärmer stellen; ist er bis dahin nicht gegangen, erst dann einschießen, aufschreiben und neu planen',
  ],
  [
    'note when it was set in, or set it in and note that',
    'aufschreiben, wann es eingeschossen wurde, oder es einschießen und das aufschreiben',
  ],
  [
    'look at it early: the oven is hottest then; or put the time right',
    'früh nachsehen: der Ofen ist dann am heißesten; oder die Uhrzeit berichtigen',
  ],
  ['{dish}: logged as drawn with {n} % of its heat', '{dish}: laut Ofenbuch mit {n} % der Hitze ausgezogen'],
  [
    '{dish}: logged as drawn with {n} % of its heat, and there is raw meat or fish in it',
    '{dish}: laut Ofenbuch mit {n} % der Hitze ausgezogen, und es ist rohes Fleisch oder roher Fisch darin',
  ],
  [
    'set it in again now and note that, and do not eat it before it has {n} °C ({n2} °F) in the middle; or put the time right',
    'jetzt wieder einschießen und das aufschreiben, und nicht essen, ehe es in der Mitte {n} °C ({n2} °F) hat; oder die Uhrzeit berichtigen',
  ],
  [
    'the oven has no heat left for it: cook it through elsewhere now, and do not eat it before it has {n} °C ({n2} °F) in the middle; or put the time right',
    'der Ofen hat nicht mehr genug Hitze dafür: jetzt anderswo durchgaren, und nicht essen, ehe es in der Mitte {n} °C ({n2} °F) hat; oder die Uhrzeit berichtigen',
  ],
  [
    '{dish}: out of the oven for {size} before it was set in again, and there is raw meat or fish in it',
    '{dish}: {size} lang außerhalb des Ofens, ehe es wieder eingeschossen wurde, und es ist rohes Fleisch oder roher Fisch darin',
  ],
  [
    'take it out now: if it stood in the warm, do not eat it; if it was kept cold, cook it through elsewhere now, and do not eat it before it has {n} °C ({n2} °F) in the middle',
    'jetzt herausnehmen: wenn es warm stand, nicht essen; wenn es kalt stand, jetzt anderswo durchgaren, und nicht essen, ehe es in der Mitte {n} °C ({n2} °F) hat',
  ],
  [
    '{dish}: set in again at {time}, and the oven has no heat left to cook it through; there is raw meat or fish in it',
    '{dish}: um {time} wieder eingeschossen, und der Ofen hat nicht mehr genug Hitze, um es durchzugaren; es ist rohes Fleisch oder roher Fisch darin',
  ],
  [
    'take it out now, cook it through elsewhere, and do not eat it before it has {n} °C ({n2} °F) in the middle',
    'jetzt herausnehmen, anderswo durchgaren, und nicht essen, ehe es in der Mitte {n} °C ({n2} °F) hat',
  ],
  [
    '{dish}: drawn, and noted as not done, and there is raw meat or fish in it',
    '{dish}: laut Ofenbuch nicht gar ausgezogen, und es ist rohes Fleisch oder roher Fisch darin',
  ],
  [
    'set it in again now and note that, and do not eat it before it has {n} °C ({n2} °F) in the middle; cooked elsewhere, note with its name “cooked through”',
    'jetzt wieder einschießen und das aufschreiben, und nicht essen, ehe es in der Mitte {n} °C ({n2} °F) hat; wenn anderswo gegart, mit seinem Namen „durchgegart“ aufschreiben',
  ],
  [
    'the oven has no heat left for it: cook it through elsewhere now, and do not eat it before it has {n} °C ({n2} °F) in the middle; cooked elsewhere, note with its name “cooked through”',
    'der Ofen hat nicht mehr genug Hitze dafür: jetzt anderswo durchgaren, und nicht essen, ehe es in der Mitte {n} °C ({n2} °F) hat; wenn anderswo gegart, mit seinem Namen „durchgegart“ aufschreiben',
  ],
  [
    'do not eat it unless it was cooked through within two hours; put the time right if it is wrong',
    'nicht essen, wenn es nicht binnen zwei Stunden durchgegart wurde; die Uhrzeit berichtigen, wenn sie falsch ist',
  ],
  [
    '{dish}: taken out for the fire at {time} with {n} % of its heat',
    '{dish}: für das Feuer um {time} mit {n} % der Hitze herausgenommen',
  ],
  [
    '{dish}: has to come out for the fire at {time} with {n} % of its heat',
    '{dish}: muss für das Feuer um {time} mit {n} % der Hitze heraus',
  ],
  [
    '{dish}: taken out for the fire at {time} with {n} % of its heat, and there is raw meat or fish in it',
    '{dish}: für das Feuer um {time} mit {n} % der Hitze herausgenommen, und es ist rohes Fleisch oder roher Fisch darin',
  ],
  [
    '{dish}: has to come out for the fire at {time} with {n} % of its heat, and there is raw meat or fish in it',
    '{dish}: muss für das Feuer um {time} mit {n} % der Hitze heraus, und es ist rohes Fleisch oder roher Fisch darin',
  ],
  [
    'the oven is not ready again within two hours: cook it through elsewhere at once; do not eat it before it has {n} °C ({n2} °F) in the middle',
    'der Ofen ist nicht binnen zwei Stunden wieder bereit: gleich anderswo durchgaren; nicht essen, ehe es in der Mitte {n} °C ({n2} °F) hat',
  ],
  [
    'cook it through elsewhere at once, or set it in again now and note that; do not eat it before it has {n} °C ({n2} °F) in the middle',
    'gleich anderswo durchgaren, oder jetzt wieder einschießen und das aufschreiben; nicht essen, ehe es in der Mitte {n} °C ({n2} °F) hat',
  ],
  [
    'cook it through elsewhere at once, or set it in again when the oven is ready at {time} and note that; do not eat it before it has {n} °C ({n2} °F) in the middle',
    'gleich anderswo durchgaren, oder wieder einschießen, wenn der Ofen um {time} bereit ist, und das aufschreiben; nicht essen, ehe es in der Mitte {n} °C ({n2} °F) hat',
  ],
  [
    'the oven is not ready again within two hours: cook it through elsewhere at once; unless it is done',
    'der Ofen ist nicht binnen zwei Stunden wieder bereit: gleich anderswo durchgaren; es sei denn, es ist gar',
  ],
  [
    'cook it through elsewhere at once, or set it in again now and note that; unless it is done',
    'gleich anderswo durchgaren, oder jetzt wieder einschießen und das aufschreiben; es sei denn, es ist gar',
  ],
  [
    'cook it through elsewhere at once, or set it in again when the oven is ready at {time} and note that; unless it is done',
    'gleich anderswo durchgaren, oder wieder einschießen, wenn der Ofen um {time} bereit ist, und das aufschreiben; es sei denn, es ist gar',
  ],
  ['{dish}: limits eased before the day has begun', '{dish}: weniger erlaubt als verlangt, ehe der Tag begonnen hat'],
  ['{dish}: drawn before the {n} % of its heat that can be had', '{dish}: ausgezogen vor den {n} % der Hitze, die zu haben sind'],
  [
    '{dish}: in past the serving time, and ready for the next day',
    '{dish}: über die Essenszeit im Ofen und für den nächsten Tag fertig',
  ],
  ['{dish}: drawn {n} h before it is wanted, and eaten hot', '{dish}: wird heiß gegessen, und {n} h vorher ausgezogen'],
  [
    '{dish}: drawn {n} h {n2} min before it is wanted, and eaten hot',
    '{dish}: wird heiß gegessen, und {n} h {n2} min vorher ausgezogen',
  ],
  [
    'keep it hot, or cool it quickly and heat it through; or write “hot at {time}” behind its link as a wish: it is then drawn for its meal if it can be, and other dishes may come late or lose their place for it',
    'heiß halten, oder rasch abkühlen und durcherhitzen; oder hinter seinen Verweis als Wunsch „hot at {time}“ schreiben: es wird dann zur Mahlzeit ausgezogen, wenn es geht, und anderes kann dadurch später kommen oder keinen Platz mehr haben',
  ],
  ['keep it hot, or cool it quickly and heat it through', 'heiß halten, oder rasch abkühlen und durcherhitzen'],
  [
    'keep it hot, or cool it quickly and heat it through; or light another fire for it when the oven is empty: note “fire again at {time}”',
    'heiß halten, oder rasch abkühlen und durcherhitzen; oder ein weiteres Feuer dafür machen, wenn der Ofen leer ist: „fire again at {time}“ notieren',
  ],
  [
    'keep it hot, or cool it quickly and heat it through; or write “firings: 2” in the day’s front matter, so that a second fire may be lit for it',
    'heiß halten, oder rasch abkühlen und durcherhitzen; oder im Kopf des Tages „firings: 2“ schreiben, damit ein zweites Feuer dafür brennen kann',
  ],
  [
    'keep it hot, or cool it quickly and heat it through; or ask for it sooner, or for the rest later',
    'heiß halten, oder rasch abkühlen und durcherhitzen; oder früher bestellen, oder das Übrige später',
  ],
  ['{dish}: drawn {n} min later than wanted', '{dish}: {n} min später ausgezogen als gewünscht'],
  ['{dish}: drawn {n} h later than wanted', '{dish}: {n} h später ausgezogen als gewünscht'],
  ['{dish}: drawn {n} h {n2} min later than wanted', '{dish}: {n} h {n2} min später ausgezogen als gewünscht'],
  [
    'write beside its link when it is wanted, if it is for this meal',
    'hinter seinen Verweis schreiben, wann es gebraucht wird, wenn es für diese Mahlzeit ist',
  ],
  [
    '{dish}: wanted by {time}; lit at {time2}, no fire has that ready before {time3}',
    '{dish}: gewünscht bis {time}; bei einem Feuer um {time2} nicht vor {time3} fertig',
  ],
  ['write {words} or later, or {words2} or earlier', '{words} oder später schreiben, oder {words2} oder früher'],
  ['write {words} or later', '{words} oder später schreiben'],
  ['ask for it later, or make less', 'es später verlangen oder weniger machen'],
  ['{dish}: under {n} °C ({n2} °F) in the oven for about {size}', '{dish}: seit etwa {size} unter {n} °C ({n2} °F) im Ofen'],
  ['do not eat it, and do not heat it up again', 'nicht essen, auch nicht noch einmal erhitzt'],
  [
    '{dish}: may have been under {n} °C ({n2} °F) in the oven for {size}',
    '{dish}: vielleicht seit {size} unter {n} °C ({n2} °F) im Ofen',
  ],
  ['draw it and measure it: under {n} °C ({n2} °F), do not eat it', 'ausziehen und messen: unter {n} °C ({n2} °F) nicht essen'],
  ['{dish}: will have no more than {n} % of its heat by {time}', '{dish}: bekommt bis {time} nicht mehr als {n} % seiner Hitze'],
  [
    'do not leave it in till then: take it out now, and cook it through on the hob or in another oven',
    'nicht so lange darin lassen: jetzt herausnehmen und auf dem Herd oder in einem anderen Ofen durchgaren',
  ],
  [
    '{dish}: will have been under {n} °C ({n2} °F) for more than two hours by {time}',
    '{dish}: ist um {time} länger als zwei Stunden unter {n} °C ({n2} °F) gewesen',
  ],
  ['draw it by {time}, and eat it, or cool it quickly', 'bis {time} ausziehen und essen oder rasch kühlen'],
  ['{dish}: logged as drawn {size} after it was done', '{dish}: laut Ofenbuch erst {size} nach dem Garen ausgezogen'],
  [
    'put the time right if it was drawn sooner; else look whether it can still be eaten',
    'die Zeit berichtigen, wenn es früher ausgezogen wurde; sonst nachsehen, ob es noch zu essen ist',
  ],
  [
    '{dish}: set in, and the day has it among its spare receipts only, so the plan knows nothing of its place and its heat',
    '{dish}: eingeschossen, steht aber nur unter den Reserven des Tages; der Plan weiß also nichts von seinem Platz und seiner Hitze',
  ],
  [
    '{dish}: taken not to have been set in at {time}, since {other}, which was to follow it, went in at {time2}; the log does not tell',
    '{dish}: gilt als um {time} nicht eingeschossen, weil {other} danach kommen sollte und um {time2} hineinkam; das Log sagt nichts davon',
  ],
  [
    'if it is in the oven, note when it was set in, and plan again',
    'wenn es im Ofen ist, aufschreiben, wann es eingeschossen wurde, und neu planen',
  ],
  [
    '{dish}: {n} drawn by the log, and the day asks for {n2}: it is taken for all there are',
    '{dish}: laut Log {n} ausgezogen, der Tag verlangt aber {n2}: gerechnet wird mit allen, die es gibt',
  ],
  [
    '{dish}: {n} put back by the log, and the day asks for {n2}: it is taken for all there are',
    '{dish}: laut Log {n} wieder eingeschossen, der Tag verlangt aber {n2}: gerechnet wird mit allen, die es gibt',
  ],
  ['put the number right, and plan again', 'die Zahl berichtigen und neu planen'],
  [
    '{dish}: {n} set in by the log, and the day asks for {n2}: the plan knows nothing of the heat and the place of the rest',
    '{dish}: laut Log {n} eingeschossen, der Tag verlangt aber {n2}: von Hitze und Platz der übrigen weiß der Plan nichts',
  ],
  [
    'put the number right, or write in the day how many there are, and plan again',
    'die Zahl berichtigen oder im Tag schreiben, wie viele es sind, und neu planen',
  ],
  [
    'move its line up into the day’s list, with how much went in, and plan again',
    'seine Zeile in die Liste des Tages setzen, mit der eingeschossenen Menge, und neu planen',
  ],
  ['“{word}” in “{text}” is not read', '„{word}“ in „{text}“ wird nicht gelesen'],
  [
    'write the size out, such as “6 loaves of 8 oz”, “24 cups” or “in 4 crocks 9 in x 7 in”',
    'die Größe ausschreiben, etwa „6 loaves of 8 oz“, „24 cups“ oder „in 4 crocks 9 in x 7 in“',
  ],
  ['“{words}” is no number', '„{words}“ ist keine Zahl'],
  ['“{words}” is a measure that no amount is read in', '„{words}“ ist ein Maß, in dem keine Menge gelesen wird'],
  [
    'write a weight in lb or kg, such as “6 lb of dough” or “3 kg”, how many, or “2 times”',
    'ein Gewicht in kg schreiben, etwa „3 kg“, eine Anzahl oder „2 times“',
  ],
  [
    '{dish}: taken to have been drawn at {time}; the log does not tell, and the oven is under {n} °C ({n2} °F) now',
    '{dish}: wohl um {time} ausgezogen; im Ofenbuch steht nichts davon, und der Ofen hat jetzt unter {n} °C ({n2} °F)',
  ],
  ['if it is in the oven still, do not eat it', 'wenn es noch im Ofen ist, nicht essen'],
  [
    '{dish}: may have been under {n} °C ({n2} °F) in the oven for {size} before it was drawn',
    '{dish}: vielleicht {size} lang unter {n} °C ({n2} °F) im Ofen, ehe es ausgezogen wurde',
  ],
  ['do not eat it unless it was measured hotter', 'nicht essen, wenn es nicht heißer gemessen wurde'],
  ['bake it on in another oven unless it is done', 'wenn es nicht gar ist, in einem anderen Ofen fertig backen'],
  [
    'put the time right, or bake it on in another oven unless it is done',
    'die Zeit berichtigen, oder in einem anderen Ofen fertig backen, wenn es nicht gar ist',
  ],
  ['{dish}: done, and left in for {n} min more', '{dish}: fertig und noch {n} min im Ofen'],
  ['{dish}: {n} °C further from its heat than is said', '{dish}: {n} °C weiter von der verlangten Hitze, als gesagt wird'],
  ['{dish}: drawn with {n} % of its heat, {n2} % said', '{dish}: mit {n} % der Hitze ausgezogen; gesagt werden {n2} %'],
  ['{dish}: {n} min under {n2} °C', '{dish}: {n} min unter {n2} °C'],
  ['{dish}: {n} set in, {n2} made', '{dish}: {n} eingeschossen, {n2} gemacht'],
  ['{dish}: in the plan and named as left out', '{dish}: im Plan und zugleich weggelassen'],
  ['the plan does not say rightly whether it is possible', 'der Plan sagt nicht richtig, ob er möglich ist'],
  [
    '{n} min of door work at one opening; the hands have {n2}',
    '{n} min Arbeit an der Tür bei einem Öffnen; die Hände haben {n2}',
  ],
  [
    '{dish}: set in {gap} min after {other}; half an hour is due',
    '{dish}: {gap} min nach {other} eingeschossen; eine halbe Stunde soll es sein',
  ],
  ['{dish} and {other} stand {gap} mm apart', '{dish} und {other} stehen {gap} mm auseinander'],
  ['{dish}: in the way of {other}', '{dish}: vor {other} im Weg'],
  ['the wood in the score is not the wood burned', 'das Holz in der Rechnung ist nicht das verbrannte'],
  ['{n} min late, {n2} said', '{n} min zu spät, gesagt sind {n2}'],
  ['{n} openings of the door, {n2} said', 'die Tür geht {n} Mal auf, gesagt ist {n2} Mal'],
  ['the bound lies above the plan', 'die Schranke liegt über dem Plan'],
  ['the total is less than its parts', 'die Summe ist kleiner als ihre Teile'],
  ['{dish}: wider than the mouth', '{dish}: breiter als das Mundloch'],
  ['{dish}: higher than the mouth', '{dish}: höher als das Mundloch'],
  ['{dish}: {n} mm into the wall', '{dish}: {n} mm in der Wand'],
  ['{dish}: on what is kept free', '{dish}: auf dem, was frei bleiben soll'],
  ['{dish}: at the {zone}, not the {zone2}', '{dish}: {zone:text}, nicht {zone2:text}'],
  ['the steps are out of order', 'die Schritte sind nicht in der Reihenfolge'],
  ['no step lights the fire', 'kein Schritt zündet das Feuer an'],
  ['no step rakes out the coals', 'kein Schritt räumt die Glut aus'],
  ['no step draws {dish}', 'kein Schritt zieht {dish} aus'],
  ['no step sets in {dish}', 'kein Schritt schießt {dish} ein'],
  ['{dish}: no step mixes its dough', '{dish}: kein Schritt knetet den Teig'],
  ['{dish}: no step makes it up before it goes in', '{dish}: kein Schritt macht es fertig, ehe es eingeschossen wird'],
  ['{dish}: it is made up while the hands are full', '{dish}: es wird fertig gemacht, während keine Hände frei sind'],
  ['{dish}: no step shapes its dough', '{dish}: kein Schritt formt den Teig'],
  ['{dish}: its dough has {time} min to rise, not {n}', '{dish}: der Teig hat {time} min zum Gehen, nicht {n}'],
  ['{dish}: its dough rises {n} min and is over-proved', '{dish}: der Teig geht {n} min und ist übergar'],
  [
    '{dish}: its dough is mixed, and nothing says what becomes of it',
    '{dish}: der Teig ist geknetet, und nichts sagt, was aus ihm wird',
  ],
  [
    '{dish}: its dough is worked while the hands are full',
    '{dish}: der Teig wird geknetet oder geformt, während keine Hände frei sind',
  ],
  [
    '{dish}: its dough is worked at night, and could be by day',
    '{dish}: der Teig wird in der Nacht geknetet oder geformt, und könnte es am Tag',
  ],
  [
    '{dish}: its dough rises {n} min, and no step says that the oven is late',
    '{dish}: der Teig geht {n} min, und kein Schritt sagt, dass der Ofen zu spät kommt',
  ],
  [
    '{dish}: its shaped dough waits {n} min, and no step says that the oven is late',
    '{dish}: der geformte Teig wartet {n} min, und kein Schritt sagt, dass der Ofen zu spät kommt',
  ],
  ['{dish}: no step leaves its dough to rise', '{dish}: kein Schritt lässt den Teig gehen'],
  [
    '{dish}: its dough rises through the night, and no step says where',
    '{dish}: der Teig geht über Nacht, und kein Schritt sagt, wo',
  ],
  [
    '{dish}: its dough has egg or milk in it, and stands through the night in no refrigerator',
    '{dish}: im Teig sind Ei oder Milch, und er steht über Nacht in keinem Kühlschrank',
  ],
  [
    '{dish}: its dough rises {n} min too long, and nothing warns of it',
    '{dish}: der Teig geht {n} min zu lange, und nichts warnt davor',
  ],
  ['{dish}: its dough is not shaped when it goes in', '{dish}: der Teig ist beim Einschießen nicht geformt'],
  ['{dish}: its shaped dough waits {time} min', '{dish}: der geformte Teig wartet {time} min'],
  ['back', 'hinten'],
  ['middle', 'in der Mitte'],
  ['mouth', 'am Mundloch'],
  ['any', 'irgendwo'],
  ['across', 'über den ganzen Herd'],

  // Receipts (receipt/read.ts, receipt/translate.ts)
  ['“{words}” is read as {reading}; it could be {other}', '„{words}“ ist als {reading} gelesen; es könnte {other} sein'],
  [
    '“{words}” is a time by weight, and the receipt does not say what the piece weighs',
    '„{words}“ ist eine Zeit nach Gewicht, und das Rezept sagt nicht, was das Stück wiegt',
  ],
  [
    'write the weight beside the piece, as “1 chicken (1.8 kg)”, or `bake:` in the front matter',
    'das Gewicht neben das Stück schreiben, wie „1 chicken (1.8 kg)“, oder `bake:` in den Kopf der Datei',
  ],
  [
    '“{words}” is a time by weight: for “{piece}” that is {n} min',
    '„{words}“ ist eine Zeit nach Gewicht: für „{piece}“ sind das {n} min',
  ],
  [
    'the note “{words}” gives another way: its amounts are not added to the receipt’s own',
    'die Anmerkung „{words}“ nennt eine andere Art: ihre Mengen sind denen des Rezepts nicht zugezählt',
  ],
  [
    'the table gives the amounts twice (“{words}”, “{words2}”): those of the first column are read',
    'die Tabelle nennt die Mengen zweimal („{words}“, „{words2}“): gelesen sind die der ersten Spalte',
  ],
  [
    'a second list begins here with much of the first again, and each has a bake below it: they are read as one receipt',
    'hier beginnt eine zweite Liste, die vieles aus der ersten wieder hat, und beide haben ihre eigene Backzeit: sie sind als ein Rezept gelesen',
  ],
  [
    'if they are two dishes, write a heading with its name over each, such as “## Brown loaf”',
    'sind es zwei Gerichte, über jedes eine Überschrift mit seinem Namen schreiben, etwa „## Brown loaf“',
  ],
  [
    'to bake the other, write its amounts as a receipt of its own, under a heading of its own',
    'um das andere zu backen, seine Mengen als eigenes Rezept unter eine eigene Überschrift schreiben',
  ],
  [
    '“{words}” is hotter than any oven bakes: it is not taken as a heat',
    '„{words}“ ist heißer, als ein Ofen bäckt: es gilt nicht als Hitze',
  ],
  ['write up to {n} °C, {n2} °F or gas mark 10', 'bis {n} °C, {n2} °F oder Gasstufe 10 schreiben'],
  [
    '“{title}” is boiled or steamed (“{words}”), not baked: no heat and no time in the oven are filled in; baking it is another way (“{words2}”)',
    '„{title}“ wird gekocht oder gedämpft („{words}“), nicht gebacken: Hitze und Zeit im Ofen werden nicht ergänzt; Backen ist eine andere Art („{words2}“)',
  ],
  [
    '“{title}” is boiled or steamed (“{words}”), not baked: no heat and no time in the oven are filled in',
    '„{title}“ wird gekocht oder gedämpft („{words}“), nicht gebacken: Hitze und Zeit im Ofen werden nicht ergänzt',
  ],
  [
    'to bake it all the same, write “oven:” and “bake:” in the front matter',
    'um es dennoch zu backen, „oven:“ und „bake:“ in den Kopf der Datei schreiben',
  ],
  [
    '“{words}” is for “{words2}”, and the receipt does not say how much {item} there is: it is read as a receipt for that much',
    '„{words}“ gilt für „{words2}“, und das Rezept sagt nicht, wie viel davon da ist ({item}): es wird als Rezept für so viel gelesen',
  ],
  [
    '“{words}” is for “{words2}”, and the receipt does not say how much {item} there is: it is carried through without an amount',
    '„{words}“ gilt für „{words2}“, und das Rezept sagt nicht, wie viel davon da ist ({item}): es bleibt ohne Menge stehen',
  ],
  [
    'to make another amount, write how much of it there is into the receipt’s own text',
    'für eine andere Menge in den Text des Rezepts schreiben, wie viel davon da ist',
  ],
  [
    'write how much of it there is into the receipt’s own text, or the amounts themselves',
    'in den Text des Rezepts schreiben, wie viel davon da ist, oder die Mengen selbst',
  ],
  [
    '“{words}” is a share of the flour’s weight, and the receipt gives no weight to reckon from: its baker’s percentages are carried through without amounts',
    '„{words}“ ist ein Anteil am Gewicht des Mehls, und das Rezept nennt kein Gewicht, von dem zu rechnen wäre: die Bäckerprozente bleiben ohne Mengen stehen',
  ],
  [
    'write a weight into the receipt’s own text, as “Flour weight: 1 kg”, “Dough weight: 1.8 kg” or “2 loaves of 900 g”',
    'ein Gewicht in den Text des Rezepts schreiben, wie „Mehlmenge: 1 kg“, „Teiggewicht: 1,8 kg“ oder „2 Brote à 900 g“',
  ],
  [
    '“{words}” in “{words2}” is no measure that this lexicon knows: the number is carried through without a weight',
    '„{words}“ in „{words2}“ ist kein Maß, das dieses Wörterbuch kennt: die Zahl wird ohne Gewicht weitergegeben',
  ],
  [
    '“{words}” has no measure that this lexicon knows: its number is carried through without a weight',
    '„{words}“ hat kein Maß, das unser Wörterbuch kennt: die Zahl bleibt ohne Gewicht stehen',
  ],
  [
    '“{words}” has no measure: it is read in grams, as the rest of the list is',
    '„{words}“ hat kein Maß: gelesen wird in Gramm, wie der Rest der Liste',
  ],
  [
    '“{words}” has no measure, nor has the rest of the list: it is read in grams, since the numbers are so large',
    '„{words}“ hat kein Maß, auch die übrige Liste nicht: gelesen wird in Gramm, da die Zahlen so groß sind',
  ],
  ['write the measure behind the number, as in “500 g flour”', 'das Maß hinter die Zahl schreiben, wie „500 g Mehl“'],
  [
    'write the measure’s usual name in the text, or how to read the words under “says:” in the front matter',
    'den üblichen Namen des Maßes in den Text schreiben, oder unter „says:“ im Kopf der Datei, wie die Worte zu lesen sind',
  ],
  [
    'the note “{words}” gives another way: its heats and times are not taken for the receipt’s own',
    'die Anmerkung „{words}“ nennt eine andere Art: ihre Hitzen und Zeiten gelten nicht als die des Rezepts',
  ],
  [
    'to follow the note, write its heat and time into the receipt’s own text, or in the front matter',
    'um der Anmerkung zu folgen, ihre Hitze und Zeit in den Text des Rezepts selbst oder in den Kopf der Datei schreiben',
  ],
  [
    'the heat or time in the note “{words}” serves, since the receipt’s own text gives none',
    'die Hitze oder Zeit in der Anmerkung „{words}“ gilt, da der Text des Rezepts selbst keine nennt',
  ],
  [
    'to follow the note, write its amounts into the receipt’s own text',
    'um der Anmerkung zu folgen, ihre Mengen in den Text des Rezepts selbst schreiben',
  ],
  ['to settle it, write in the front matter: {line}', 'um es zu klären, in den Kopf der Datei schreiben: {line}'],
  [
    '“{item}” is not an ingredient this lexicon knows: its words are carried through without a weight ({n} times, on line {list})',
    '„{item}“ ist keine Zutat, die unser Wörterbuch kennt: die Worte bleiben ohne Gewicht stehen ({n} Mal, in Zeile {list})',
  ],
  [
    '“{item}” is not an ingredient this lexicon knows: its words are carried through without a weight ({n} times, on lines {list})',
    '„{item}“ ist keine Zutat, die unser Wörterbuch kennt: die Worte bleiben ohne Gewicht stehen ({n} Mal, in den Zeilen {list})',
  ],
  [
    '“{item}” is not an ingredient this lexicon knows: its words are carried through without a weight',
    '„{item}“ ist keine Zutat, die unser Wörterbuch kennt: die Worte bleiben ohne Gewicht stehen',
  ],
  [
    '“{item}” is not an ingredient this lexicon knows: it is taken as the meat or fish that its name has, without the weight of a piece ({n} times, on line {list})',
    '„{item}“ ist keine Zutat, die unser Wörterbuch kennt: sie gilt als das Fleisch oder der Fisch, die ihr Name nennt, ohne das Gewicht eines Stücks ({n} Mal, in Zeile {list})',
  ],
  [
    '“{item}” is not an ingredient this lexicon knows: it is taken as the meat or fish that its name has, without the weight of a piece ({n} times, on lines {list})',
    '„{item}“ ist keine Zutat, die unser Wörterbuch kennt: sie gilt als das Fleisch oder der Fisch, die ihr Name nennt, ohne das Gewicht eines Stücks ({n} Mal, in den Zeilen {list})',
  ],
  [
    '“{item}” is not an ingredient this lexicon knows: it is taken as the meat or fish that its name has, without the weight of a piece',
    '„{item}“ ist keine Zutat, die unser Wörterbuch kennt: sie gilt als das Fleisch oder der Fisch, die ihr Name nennt, ohne das Gewicht eines Stücks',
  ],
  [
    'write its usual name in the text, or how to read the words under “says:” in the front matter',
    'im Text den üblichen Namen schreiben, oder im Kopf der Datei unter „says:“, wie die Worte zu lesen sind',
  ],
  [
    '“{words}” is not a word for heat this lexicon knows ({n} times, on line {list})',
    '„{words}“ ist kein Wort für Hitze, das unser Wörterbuch kennt ({n} Mal, in Zeile {list})',
  ],
  [
    '“{words}” is not a word for heat this lexicon knows ({n} times, on lines {list})',
    '„{words}“ ist kein Wort für Hitze, das unser Wörterbuch kennt ({n} Mal, in den Zeilen {list})',
  ],
  ['“{words}” is not a word for heat this lexicon knows', '„{words}“ ist kein Wort für Hitze, das unser Wörterbuch kennt'],
  ['state the heat in the front matter: oven: a quick oven', 'die Hitze im Kopf der Datei nennen: oven: a quick oven'],
  [
    'the words “{words}” do not stand in the text, or “{reading}” has no amount and name that can be read',
    'die Worte „{words}“ stehen nicht im Text, oder „{reading}“ hat keine Menge und keinen Namen, die sich lesen lassen',
  ],
  ['quote the words exactly as they stand in the text', 'die Worte genau so anführen, wie sie im Text stehen'],
  ['there is no receipt in this file', 'in dieser Datei ist kein Rezept'],
  [
    'this is a file, and it has the name of the folder of the receipts',
    'das ist eine Datei, und sie heißt wie der Ordner der Rezepte',
  ],
  [
    'give the file another name, and make a folder of this name for the receipts',
    'der Datei einen anderen Namen geben und einen Ordner dieses Namens für die Rezepte anlegen',
  ],
  [
    'this is a file, and it has the name of the folder of the logs',
    'das ist eine Datei, und sie heißt wie der Ordner der Protokolle',
  ],
  [
    'give the file another name, and make a folder of this name for the logs',
    'der Datei einen anderen Namen geben und einen Ordner dieses Namens für die Protokolle anlegen',
  ],
  [
    'write a heading with the receipt’s name, and its text below',
    'eine Überschrift mit dem Namen des Rezepts schreiben und den Text darunter',
  ],
  ['“{words}”: the temperatures disagree: {list}', '„{words}“: die Temperaturen widersprechen sich: {list}'],
  ['“{words}”: the temperatures disagree', '„{words}“: die Temperaturen widersprechen sich'],
  ['keep one of them, or write in the front matter: {line}', 'eine davon behalten, oder in den Kopf der Datei schreiben: {line}'],
  [
    'oven: “{words}” is no heat and no scale known here; what is left of “{words2}” is read',
    'oven: „{words}“ ist keine Hitze und keine Skala, die hier bekannt ist; gelesen wird der Rest von „{words2}“',
  ],
  ['oven: “{words}” is no heat known here', 'oven: „{words}“ ist keine Hitze, die hier bekannt ist'],
  [
    'write “a quick oven”, “350 °F”, “180 °C fan” or “gas mark 4”',
    '„a quick oven“, „350 °F“, „180 °C fan“ oder „gas mark 4“ schreiben',
  ],

  // Front matter of every file (receipt/front-matter.ts, receipt/facts.ts)
  ['nothing is written here', 'hier steht nichts'],
  ['one value is wanted here, and no list or keys', 'hier gehört ein Wert hin, keine Liste und keine Schlüssel'],
  ['write a value, or take the line out', 'einen Wert schreiben oder die Zeile streichen'],
  ['the front matter is opened with --- but never closed', 'der Kopf der Datei beginnt mit ---, hört aber nie auf'],
  ['put a line with --- after the last key', 'nach dem letzten Schlüssel eine Zeile mit --- setzen'],
  ['this is not good YAML: {why}', 'das ist kein gutes YAML: {why}'],
  [
    'write one “key: value” a line; put a value with “: ” in quotes',
    'in jede Zeile ein „key: value“ schreiben; einen Wert mit „: “ in Anführungszeichen setzen',
  ],
  ['the front matter must be keys and values', 'der Kopf der Datei muss aus Schlüsseln und Werten bestehen'],
  ['write one “key: value” a line', 'in jede Zeile ein „key: value“ schreiben'],
  ['this front matter cannot be read: {why}', 'dieser Kopf der Datei lässt sich nicht lesen: {why}'],
  ['write the value out in full', 'den Wert ganz ausschreiben'],
  ['“{key}” is not a key of this file', '„{key}“ ist kein Schlüssel dieser Datei'],
  [
    'insulation is the outermost layer of “hearth” and of “vault”: write it as the last line of their lists, such as “- ceramic blanket 2 in”',
    'die Dämmung ist die äußerste Schicht von „hearth“ und „vault“: als letzte Zeile ihrer Listen schreiben, etwa „- ceramic blanket 2 in“',
  ],
  ['known here: {list}', 'bekannt sind hier: {list}'],
  ['“{key}” is missing', '„{key}“ fehlt'],
  ['add a line “{line}”', 'eine Zeile „{line}“ hinzufügen'],
  ['write one of: {list}', 'eines davon schreiben: {list}'],
  ['“{words}” is not a year', '„{words}“ ist kein Jahr'],
  ['no receipt known here is of the year {n}', 'aus dem Jahr {n} ist hier kein Rezept bekannt'],
  ['write the year in figures, such as “{words}”', 'das Jahr in Ziffern schreiben, etwa „{words}“'],
  ['“{words}” is not a place', '„{words}“ ist kein Ort'],
  ['write a country or a town, such as “{words}”', 'ein Land oder eine Stadt schreiben, etwa „{words}“'],
  ['“{words}” is not a number of people', '„{words}“ ist keine Anzahl Personen'],
  ['it cannot serve {n}', 'für {n} Personen kann es nicht sein'],
  ['write one number of people, such as “{words}”', 'eine einzige Anzahl Personen schreiben, etwa „{words}“'],
  ['write a number of people, such as “{words}”', 'eine Anzahl Personen schreiben, etwa „{words}“'],
  ['“{words}” does not say of what scale', '„{words}“ sagt nicht, in welchen Graden'],
  ['write “{words}”, or degrees such as “350 °F” or “180 °C”', '„{words}“ schreiben, oder Grade wie „350 °F“ oder „180 °C“'],
  ['write “350 °F”, “180 °C”, “gas mark 4” or “a quick oven”', '„350 °F“, „180 °C“, „gas mark 4“ oder „a quick oven“ schreiben'],
  ['nothing bakes for “{words}”', 'nichts bäckt „{words}“ lang'],
  ['write “45 min” or “1 h 30 min”, or take the line out', '„45 min“ oder „1 h 30 min“ schreiben, oder die Zeile streichen'],
  ['no words of the text with their reading stand here', 'hier stehen keine Worte des Textes mit ihrer Lesart'],
  [
    'write each below it on a line of its own, set in: “  a coffee cup: 1 cup”',
    'jedes darunter in eine eigene, eingerückte Zeile schreiben: „  a coffee cup: 1 cup“',
  ],
  ['write how these words are to be read, such as “1 cup”', 'schreiben, wie diese Worte zu lesen sind, etwa „1 cup“'],
  [
    'write “round 9 in x 2 in”, “loaf 9 x 5 x 3 in” or “free-standing loaf 22 cm”',
    '„round 9 in x 2 in“, „loaf 9 x 5 x 3 in“ oder „free-standing loaf 22 cm“ schreiben',
  ],
  ['write the receipt’s name', 'den Namen des Rezepts schreiben'],
  ['write yes or no as true or false', 'ja oder nein als true oder false schreiben'],

  // Sizes, weights, times (measure/quantity.ts)
  ['this is too long to be {what}', 'das ist zu lang für {what:text}'],
  ['{what} cannot be negative: “{words}”', 'negativ geht nicht: „{words}“'],
  ['“{words}” has no unit', '„{words}“ hat keine Einheit'],
  ['“{unit}” is not a unit of {what}', '„{unit}“ ist keine Einheit für {what:text}'],
  ['“{words}” runs backwards', '„{words}“ läuft rückwärts'],
  ['write the shorter time first', 'die kürzere Zeit zuerst schreiben'],
  ['“{words}” has no scale', '„{words}“ hat keine Skala'],
  ['“{words}” is colder than anything can be', '„{words}“ ist kälter, als etwas sein kann'],
  ['“{words}” is a number, and no time of day', '„{words}“ ist eine Zahl und keine Uhrzeit'],
  ['“{words}” may be morning or afternoon', '„{words}“ kann morgens oder nachmittags sein'],
  ['“{words}” may be of the log’s own day or of a later one', '„{words}“ kann am Tag des Ofenbuchs sein oder an einem späteren'],
  ['“{words}” is not a time of day', '„{words}“ ist keine Uhrzeit'],
  ['“{words}” is not a temperature', '„{words}“ ist keine Temperatur'],
  ['“{words}” is not two sizes', '„{words}“ sind nicht zwei Größen'],
  ['“{words}” is not the shape of a floor', '„{words}“ ist keine Form eines Herds'],
  ['“{words}” is not a fuel', '„{words}“ ist kein Brennstoff'],
  ['“{words}” is not a {what} we know', '„{words}“ kennen wir nicht als {what:text}'],
  ['material', 'Baustoff'],
  ['fuel', 'Brennstoff'],
  ['“{words}” is not a whole number', '„{words}“ ist keine ganze Zahl'],
  ['“{words}” is not an amount', '„{words}“ ist keine Menge'],
  [
    'nothing in this receipt can be weighed, so it cannot be made by weight',
    'nichts in diesem Rezept lässt sich wiegen, also lässt es sich nicht nach Gewicht machen',
  ],
  ['{vessel} does not go into this oven', '{vessel:text} geht nicht in diesen Ofen'],
  [
    'what one of the {words} of this receipt weighs is not known',
    'was ein Stück davon ({words}) in diesem Rezept wiegt, ist nicht bekannt',
  ],
  ['“{words}”: the receipt does not say how many it makes', '„{words}“: das Rezept sagt nicht, wie viele es ergibt'],
  [
    'write “{words}” or “{words2}”, or in the receipt “{words3}”',
    '„{words}“ oder „{words2}“ schreiben, oder ins Rezept „{words3}“',
  ],
  ['“{words}” is not a number of hours', '„{words}“ ist keine Zahl von Stunden'],
  ['“{words}” is not a reading', '„{words}“ ist keine Messung'],
  ['“{words}” is not a count', '„{words}“ ist keine Zählung'],
  ['“{words}” is not a file of this folder', '„{words}“ ist keine Datei dieses Ordners'],
  ['“{words}” is not how an oven can be at the start', 'so kann ein Ofen am Anfang nicht sein: „{words}“'],
  ['“{words}” below “{title}” is not read', '„{words}“ unter „{title}“ wird nicht gelesen'],
  [
    '“{words}” is not planned for: a line says by when a dish is wanted, and not from when',
    '„{words}“ wird nicht geplant: eine Zeile sagt, bis wann etwas fertig sein soll, und nicht, ab wann',
  ],
  [
    'write “hot at {time}” if it is to come from the oven then, or “wanted by” the latest time that will do',
    '„hot at {time}“ schreiben, wenn es dann aus dem Ofen kommen soll, oder „wanted by“ mit der spätesten Zeit, die recht ist',
  ],
  ['“{words}” is not read as a time', '„{words}“ wird nicht als Zeit gelesen'],
  ['“{words}” is not {what}', '„{words}“ geht nicht als {what:text}'],
  ['a length', 'Länge'],
  ['a weight', 'Gewicht'],
  ['a length of time', 'Dauer'],
  ['write “{words}” or “{words2}” or “{words3}”', '„{words}“ oder „{words2}“ oder „{words3}“ schreiben'],
  ['write “{words}” or “{words2}”', '„{words}“ oder „{words2}“ schreiben'],
  // One, or several with commas between.
  ['write “{words}”', '“{words}” schreiben'],
  ['write “5 am”, “2:30 pm”, “14:30” or “tomorrow 8 am”', '„5 am“, „2:30 pm“, „14:30“ oder „tomorrow 8 am“ schreiben'],

  // The day (plan/day.ts)
  ['the day asks for no receipt yet', 'der Tag verlangt noch kein Rezept'],
  [
    'put a receipt on the day’s list: - [Name](receipts/name.md)',
    'ein Rezept auf die Liste des Tages setzen: - [Name](receipts/name.md)',
  ],
  [
    'the fire is lit, and “firings: {n}” was “firings: {n2}” when it was',
    'das Feuer brennt, und als es angezündet wurde, stand „firings: {n2}“ da, wo jetzt „firings: {n}“ steht',
  ],
  [
    'write “firings: {n}” again; that another fire is lit is for the log: note “fire again at” with its hour',
    'wieder „firings: {n}“ schreiben; dass noch einmal geheizt wird, gehört ins Ofenbuch: „fire again at“ mit seiner Uhrzeit eintragen',
  ],
  [
    'the fire is lit, and “{title}” was not to fill the floor when it was',
    'das Feuer brennt, und als es angezündet wurde, sollte „{title}“ noch nicht den Herd füllen',
  ],
  ['write how many, such as “{line}”', 'schreiben, wie viele, etwa „{line}“'],
  ['there cannot be {n}', '{n} kann es nicht geben'],
  ['write a whole number from 1 to {n}, such as “{line}”', 'eine ganze Zahl von 1 bis {n} schreiben, etwa „{line}“'],
  ['write a date such as {date}', 'ein Datum schreiben, etwa {date}'],
  ['this is not a date', 'das ist kein Datum'],
  ['write year-month-day, such as {date}', 'Jahr-Monat-Tag schreiben, etwa {date}'],
  ['this is not a time zone', 'das ist keine Zeitzone'],
  ['write an IANA name such as {zone}', 'einen IANA-Namen schreiben, etwa {zone}'],
  ['a day begins with front matter, and this file has none', 'ein Tag beginnt mit einem Kopf, und diese Datei hat keinen'],
  [
    'front matter stands before a later receipt, and what stands at the head of a file is said of all its receipts: this is not read',
    'vor einem späteren Rezept steht ein Kopf, und was am Kopf einer Datei steht, gilt für alle ihre Rezepte: dieser wird nicht gelesen',
  ],
  [
    'put the receipt that it is said of into a file of its own, with these keys at its head',
    'das Rezept, für das er gilt, in eine eigene Datei mit diesen Schlüsseln am Kopf schreiben',
  ],
  [
    'the front matter of another day begins here, and one day.md holds one day',
    'hier beginnt der Kopf eines anderen Tages, und eine day.md hält einen Tag',
  ],
  [
    'write one folder with its own day.md for each day: move these keys, and the list below them, there',
    'für jeden Tag einen Ordner mit eigener day.md anlegen: diese Schlüssel und die Liste darunter dorthin verschieben',
  ],
  ['this file is empty', 'diese Datei ist leer'],
  [
    'begin with ---, then date:, people:, fire from: and serve:, then ---',
    'mit --- beginnen, dann date:, people:, fire from: und serve:, dann ---',
  ],
  ['“{words}” links to no receipt', '„{words}“ verweist auf kein Rezept'],
  ['{n} fires cannot be planned: at most {n2} are', '{n} Feuer lassen sich nicht planen: es sind höchstens {n2}'],
  [
    'write “firings: {n}”, and plan what is left as another day',
    '„firings: {n}“ schreiben und den Rest als einen anderen Tag planen',
  ],
  [
    'the heading “{words}” sets nothing apart: what is below it is baked like the rest',
    'die Überschrift „{words}“ trennt nichts ab: was darunter steht, wird wie das Übrige gebacken',
  ],
  ['write “## Spare” over what is only to fill idle floor', '„## Spare“ über das schreiben, was nur leeren Herd füllen soll'],
  [
    'write “## Spare” if it is only to fill idle floor; take the heading out if not',
    '„## Spare“ schreiben, wenn es nur leeren Herd füllen soll; sonst die Überschrift herausnehmen',
  ],
  [
    '“{words}” stands behind “>”, as a quotation, so it is not baked',
    '„{words}“ steht hinter „>“, als Zitat, und wird darum nicht gebacken',
  ],
  [
    'begin its line with “- ” and no “>” if it is to be baked',
    'die Zeile mit „- “ und ohne „>“ beginnen, wenn es gebacken werden soll',
  ],
  [
    '“{words}” has a space in it, so this is no link and nothing is baked',
    '„{words}“ hat ein Leerzeichen, ist darum kein Link, und nichts wird gebacken',
  ],
  ['write [{name}](<{file}>)', '[{name}](<{file}>) schreiben'],
  [
    'no line says what “[{words}]” links to, so nothing is baked',
    'keine Zeile sagt, wohin „[{words}]“ führt, und nichts wird gebacken',
  ],
  [
    'write [{name}](receipts/name.md), or a line “[{words}]: receipts/name.md”',
    '[{name}](receipts/name.md) schreiben, oder eine Zeile „[{words}]: receipts/name.md“',
  ],
  ['“{words}” stands in no list, so it is not baked', '„{words}“ steht in keiner Liste und wird darum nicht gebacken'],
  ['begin its line with “- ” if it is to be baked', 'die Zeile mit „- “ beginnen, wenn es gebacken werden soll'],
  ['“{words}” before the link is not read', '„{words}“ vor dem Verweis wird nicht gelesen'],
  ['write an amount behind the link: {line}', 'eine Menge hinter den Verweis schreiben: {line}'],
  [
    'write “wanted by” before it, such as “8 loaves, wanted by 1 pm”',
    '„wanted by“ davor schreiben, etwa „8 loaves, wanted by 1 pm“',
  ],
  ['write - [Name](receipts/name.md) — amount', '- [Name](receipts/name.md) — amount schreiben'],
  [
    'link to a receipt below the day’s folder, such as receipts/name.md',
    'auf ein Rezept unter dem Ordner des Tages verweisen, etwa receipts/name.md',
  ],
  ['“{words}” leads out of this folder', '„{words}“ führt aus diesem Ordner hinaus'],
  [
    'copy the receipt into the day’s receipts folder and link to it there',
    'das Rezept in den Ordner receipts des Tages kopieren und dorthin verweisen',
  ],
  [
    '“{dish}” is wanted by {time}, before the first fire at {time2}',
    '„{dish}“ wird bis {time} gebraucht, vor dem ersten Feuer um {time2}',
  ],
  [
    'write a later time, {words} if it is for the next day, or an earlier “fire from”',
    'eine spätere Zeit schreiben, {words}, wenn es für den nächsten Tag ist, oder „fire from“ früher',
  ],
  [
    'write a later time: what is wanted then has to be baked the day before',
    'eine spätere Zeit schreiben: was dann gebraucht wird, muss am Vortag gebacken werden',
  ],
  ['“hot” says no time', '„hot“ nennt keine Zeit'],
  ['write when, such as “hot at 6 pm”', 'schreiben, wann, etwa „hot at 6 pm“'],
  ['serving time is before the first fire', 'das Essen ist vor dem ersten Feuer'],
  [
    'midnight ends the day: write “fire from: 0:00” if it is to begin with the day',
    'Mitternacht beendet den Tag: „fire from: 0:00“ schreiben, wenn er damit beginnen soll',
  ],
  ['write a later time; the next day is “tomorrow 1 pm”', 'eine spätere Zeit schreiben; der nächste Tag ist „tomorrow 1 pm“'],

  // The oven (oven/read.ts)
  [
    'this table has no column “{words}”, so none of it is read',
    'diese Tabelle hat keine Spalte “{words}”, darum wird nichts von ihr gelesen',
  ],
  [
    'head its columns date, hours after raking, reading, value, note',
    'ihre Spalten mit date, hours after raking, reading, value, note überschreiben',
  ],
  ['the column “{words}” is not read', 'die Spalte „{words}“ wird nicht gelesen'],
  [
    'head it date, hours after raking, reading, value or note; what is no reading goes under note',
    'sie mit date, hours after raking, reading, value oder note überschreiben; was keine Messung ist, steht unter note',
  ],
  ['“{words}” stands in no table, so it is not read', '„{words}“ steht in keiner Tabelle und wird nicht gelesen'],
  [
    'write it as a row of the table: time, reading, value, note; or leave it to the command `note`',
    'als Zeile der Tabelle schreiben: time, reading, value, note; oder dem Befehl `note` überlassen',
  ],
  [
    'this table has no column {heads}, so none of it is read',
    'dieser Tabelle fehlt {heads:quotes} unter den Spalten, darum wird nichts von ihr gelesen',
  ],
  ['head its columns time, reading, value, note', 'ihre Spalten mit time, reading, value, note überschreiben'],
  ['an oven begins with front matter, and this file has none', 'ein Ofen beginnt mit einem Kopf, und diese Datei hat keinen'],
  [
    'begin with ---, then floor:, vault height:, mouth:, hearth: and vault:, then ---',
    'mit --- beginnen, dann floor:, vault height:, mouth:, hearth: und vault:, dann ---',
  ],
  ['“{words}” does not say on which side the ash bed is', '„{words}“ sagt nicht, auf welcher Seite das Aschebett liegt'],
  ['the ash bed on the {side} has no width', 'das Aschebett ({side}) hat keine Breite'],
  [
    'write the side as seen from the mouth and how wide the bed is, such as “left 8 in” or “back 20 cm”; or none',
    'die Seite vom Mundloch aus und die Breite schreiben, etwa „left 8 in“ (links) oder „back 20 cm“ (hinten); oder none',
  ],
  [
    'an ash bed of {size} takes more than half of the floor’s {size2}',
    'ein Aschebett von {size} nimmt mehr als die Hälfte der {size2} des Herds',
  ],
  [
    'write how far in from the wall the ash lies, such as “left 8 in”',
    'schreiben, wie weit von der Wand her die Asche liegt, etwa „left 8 in“ (links)',
  ],
  ['{what} is nothing', 'nichts geht hier nicht'],
  ['write its true size, such as “36 in” or “91 cm”', 'die wahre Größe schreiben, etwa „36 in“ oder „91 cm“'],
  ['{what} of {size} is too small for an oven', '{size} ist zu klein für einen Ofen'],
  ['write its true size; the least is {size}', 'die wahre Größe schreiben; das Kleinste sind {size}'],
  ['{what} of {size} is too large for an oven', '{size} ist zu groß für einen Ofen'],
  ['write its true size; the most is {size}', 'die wahre Größe schreiben; das Größte sind {size}'],
  ['write “18 in x 11 in” (width x height)', '„18 in x 11 in“ schreiben (Breite x Höhe)'],
  [
    'write “round 42 in”, “oval 60 in x 48 in” or “rectangle 36 in x 28 in” (depth x width)',
    '„round 42 in“, „oval 60 in x 48 in“ oder „rectangle 36 in x 28 in“ schreiben (Tiefe x Breite)',
  ],
  ['the {shape} floor has no size', 'der Herd hat keine Größe'],
  ['“{words}” names no material', '„{words}“ nennt keinen Baustoff'],
  ['write the material first, such as “fire brick 2 1/2 in”', 'zuerst den Baustoff schreiben, etwa „fire brick 2 1/2 in“'],
  ['“{words}” has no thickness', '„{words}“ hat keine Dicke'],
  ['write it after the material, such as “{words}”', 'sie nach dem Baustoff schreiben, etwa „{words}“'],
  ['write the wood and its water, such as “oak, 18 % moisture”', 'das Holz und sein Wasser schreiben, etwa „oak, 18 % moisture“'],
  ['wood of {n} % water does not burn', 'Holz mit {n} % Wasser brennt nicht'],
  [
    'write its water as a share of the wet weight: 15–20 % when seasoned',
    'sein Wasser als Teil des nassen Gewichts schreiben: 15–20 %, wenn es abgelagert ist',
  ],
  [
    'write cold, damp, or the heat still in the brick, such as “180 °F”',
    'cold, damp oder die Hitze schreiben, die noch im Stein ist, etwa „180 °F“',
  ],
  ['an oven cannot start at {celsius} °C', 'ein Ofen kann nicht bei {celsius} °C anfangen'],
  ['write a heat between −40 and 500 °C', 'eine Hitze zwischen −40 und 500 °C schreiben'],
  ['{celsius} °C is hotter than any bakehouse', '{celsius} °C ist heißer als jede Backstube'],
  ['did you mean {n} °F? Then write “{words}”', 'waren {n} °F gemeint? Dann „{words}“ schreiben'],
  ['write the heat of the air around the oven, such as “60 °F”', 'die Wärme der Luft um den Ofen schreiben, etwa „60 °F“'],
  ['{celsius} °C is colder than any bakehouse', '{celsius} °C ist kälter als jede Backstube'],
  [
    'write a list of layers from the inside out, each on a line that begins with “- ”',
    'eine Liste der Schichten von innen nach außen schreiben, jede in einer Zeile, die mit „- “ beginnt',
  ],
  ['at least one layer is needed', 'es braucht mindestens eine Schicht'],
  ['twelve layers at most', 'höchstens zwölf Schichten'],
  ['write indoors or outdoors', 'indoors oder outdoors schreiben'],
  ['write hours after raking out, such as 4.5', 'Stunden nach dem Ausräumen schreiben, etwa 4.5'],
  ['{n} hours after raking the oven is long cold', '{n} Stunden nach dem Ausräumen ist der Ofen längst kalt'],
  [
    'the mouth is as wide as the floor or wider ({size} by {size2})',
    'das Mundloch ist so breit wie der Herd oder breiter ({size} gegen {size2})',
  ],
  ['write width x height of the opening one bakes through', 'Breite x Höhe der Öffnung schreiben, durch die gebacken wird'],
  [
    'the mouth is as high as the vault or higher ({size} by {size2})',
    'das Mundloch ist so hoch wie das Gewölbe oder höher ({size} gegen {size2})',
  ],
  [
    'write width x height; smoke leaves by the mouth because the vault is higher',
    'Breite x Höhe schreiben; der Rauch geht durch das Mundloch hinaus, weil das Gewölbe höher ist',
  ],
  ['a mouth {n} % as high as the vault is unusual', 'ein Mundloch von {n} % der Höhe des Gewölbes ist ungewöhnlich'],
  ['about 63 % is the common practice; check both figures', 'etwa 63 % sind üblich; beide Zahlen prüfen'],
  [
    'a vault of {size} over a floor {size2} wide is unusually high',
    'ein Gewölbe von {size} über einem Herd von {size2} Breite ist ungewöhnlich hoch',
  ],
  ['check both figures', 'beide Zahlen prüfen'],
  ['a hearth {size} thick holds hardly any heat', 'ein Herd von {size} Dicke hält kaum Hitze'],
  ['a vault {size} thick holds hardly any heat', 'ein Gewölbe von {size} Dicke hält kaum Hitze'],
  ['check the thickness of each layer', 'die Dicke jeder Schicht prüfen'],

  // The log and its readings (oven/log.ts, oven/signs.ts)
  ['a log begins with front matter, and this file has none', 'ein Ofenbuch beginnt mit einem Kopf, und diese Datei hat keinen'],
  ['begin with ---, then date: and lit:, then ---', 'mit --- beginnen, dann date: und lit:, dann ---'],
  ['lit again before the fire was lit', 'noch einmal angezündet, bevor das Feuer brannte'],
  [
    'lit again before the coals of the first fire were raked out',
    'noch einmal angezündet, bevor die Glut des ersten Feuers ausgeräumt war',
  ],
  ['check the time, and “lit” and “raked” in the front matter', 'die Zeit prüfen, und „lit“ und „raked“ im Kopf der Datei'],
  [
    '“{words}”, and the log tells of no fire lit again before',
    '„{words}“, und das Ofenbuch kennt davor kein noch einmal angezündetes Feuer',
  ],
  ['note when it was lit, such as “12:05 pm lit again”', 'aufschreiben, wann es angezündet wurde, etwa „12:05 pm lit again“'],
  ['raked again {n} min after it was lit again', '{n} min nach dem zweiten Anzünden noch einmal ausgeräumt'],
  ['check both times', 'beide Zeiten prüfen'],
  [
    '“{time}” is before the fire was lit, when nothing is in the oven',
    '„{time}“ liegt vor dem Anzünden des Feuers, wo nichts im Ofen ist',
  ],
  [
    '“{time}” is before the fire was lit, so the plan takes nothing from this reading',
    '„{time}“ liegt vor dem Anzünden des Feuers: der Plan nimmt nichts aus dieser Messung',
  ],
  [
    '“{time}” is taken as a time of the morning, before the fire was lit',
    '„{time}“ gilt als Zeit am Morgen, vor dem Anzünden des Feuers',
  ],
  ['check the time, and “lit” in the front matter', 'die Zeit prüfen, und „lit“ im Kopf der Datei'],
  ['the coals were raked before the fire was lit', 'die Glut wurde ausgeräumt, bevor das Feuer brannte'],
  ['check “lit” and “raked”', '„lit“ und „raked“ prüfen'],
  [
    '“{time}” is before the coals were raked out, and something is set in',
    '„{time}“ ist vor dem Ausräumen der Glut, und es wird eingeschossen',
  ],
  ['check the time, and “raked” in the front matter', 'die Zeit prüfen, und „raked“ im Kopf der Datei'],
  ['the coals were raked {length} after the fire was lit', 'die Glut wurde {length} nach dem Anzünden ausgeräumt'],
  [
    'check “lit” and “raked”, and am and pm; write “evening before 11 pm” of a fire lit in the evening before',
    '„lit“ und „raked“ prüfen, auch am und pm; von einem Feuer am Vorabend „evening before 11 pm“ schreiben',
  ],
  [
    'the file is the log of {name} by its name, and this date is {date}',
    'dem Namen nach ist die Datei das Ofenbuch vom {name}, und hier steht {date}',
  ],
  ['write “date: {name}”, or call the file {file}', '„date: {name}“ schreiben, oder die Datei {file} nennen'],
  ['no fire burns without wood', 'ohne Holz brennt kein Feuer'],
  [
    'write what was weighed, such as “22 kg”, or leave the line out',
    'schreiben, was gewogen wurde, etwa „22 kg“, oder die Zeile weglassen',
  ],
  [
    '{weight} of wood cannot have burned in this oven: its mouth feeds {weight2} with air at the very most',
    '{weight} Holz können in diesem Ofen nicht verbrannt sein: sein Mund gibt höchstens {weight2} genug Luft',
  ],
  ['check the figure and its unit, or leave the line out', 'die Zahl und ihre Einheit prüfen, oder die Zeile weglassen'],
  ['“{time}” is later than a day lasts', '„{time}“ ist später, als ein Tag dauert'],
  ['write “{time}”, or “tomorrow {time2}” if that is meant', '„{time}“ schreiben, oder „tomorrow {time2}“, wenn das gemeint ist'],
  [
    '“{time}” stands below a later time, so it is taken as the next day’s',
    '„{time}“ steht unter einer späteren Zeit und gilt darum als Zeit des nächsten Tages',
  ],
  [
    'write “{words}” if that is so; move the row up if not',
    '„{words}“ schreiben, wenn das so ist; sonst die Zeile nach oben rücken',
  ],
  [
    '“{name}” is no dish of this day, so this row tells of none',
    '„{name}“ ist kein Gericht dieses Tages; diese Zeile sagt also von keinem etwas',
  ],
  ['write {names}', 'schreibe {names}'],
  [
    'the log does not tell when the fire was lit, so the plan is the morning’s and knows nothing of what was done',
    'das Ofenbuch sagt nicht, wann das Feuer angezündet wurde: der Plan ist der vom Morgen und weiß nichts von dem, was getan wurde',
  ],
  [
    'the log does not tell when the fire was lit, so the plan is the morning’s: no reading is used, and nothing that was done, until it is written when it was lit',
    'das Ofenbuch sagt nicht, wann das Feuer angezündet wurde: der Plan ist der vom Morgen, und keine Messung und nichts, was getan wurde, zählt, bis dasteht, wann es angezündet wurde',
  ],
  [
    'note when it is lit, such as “lit 8:30 am”; what was mixed before then counts',
    'aufschreiben, wann es angezündet wird, etwa „lit 8:30 am“; was vorher geknetet wurde, zählt mit',
  ],
  [
    'the fire taken to have burned till {time}, when the walls were looked at; the log does not tell when it was raked out',
    'es wird angenommen, dass das Feuer bis {time} brannte, als nach den Wänden gesehen wurde; das Ofenbuch sagt nicht, wann ausgeräumt wurde',
  ],
  [
    'note when it was, or when it is done, such as “11:05 am raked”',
    'aufschreiben, wann es war, oder wenn es getan ist, etwa „11:05 am raked“',
  ],
  [
    '{mass} of wood taken to have been burned till it was raked out; the log does not tell',
    'es wird angenommen, dass bis zum Ausräumen {mass} Holz verbrannt wurden; das Ofenbuch sagt nichts davon',
  ],
  [
    '{mass} of wood taken to have been burned, as planned; the log does not tell',
    'es wird angenommen, dass wie geplant {mass} Holz verbrannt wurden; das Ofenbuch sagt nichts davon',
  ],
  [
    'the fire is taken to have been lit again at {time}, as planned; the log does not tell',
    'es wird angenommen, dass das Feuer wie geplant um {time} noch einmal angezündet wurde; das Ofenbuch sagt nichts davon',
  ],
  [
    'note when it was, such as “{time} lit again”, and when it was raked, “raked again”',
    'aufschreiben, wann es war, etwa „{time} lit again“, und wann ausgeräumt wurde, „raked again“',
  ],
  [
    'the floor is as cool as if the fire had not been lit again, and the log does not tell; it is to be lit now',
    'der Herd ist so kühl, als wäre das Feuer nicht noch einmal angezündet worden, und das Ofenbuch sagt nichts davon; es ist jetzt anzuzünden',
  ],
  [
    'note when it is lit, or was: “lit again” behind the time',
    'aufschreiben, wann es brennt oder brannte: „lit again“ hinter der Zeit',
  ],
  [
    'lit again at {time} while the first fire was to burn, and no raking is told: taken to be the same fire',
    'um {time} noch einmal angezündet, während das erste Feuer brennen sollte, und von keinem Ausräumen ist die Rede: für dasselbe Feuer genommen',
  ],
  [
    '{dish}: logged as set in at {time} while the fire lit at {time2} burned: taken to have gone in at {time3}',
    '{dish}: laut Ofenbuch um {time} eingeschossen, während das um {time2} angezündete Feuer brannte: es wird angenommen, dass es um {time3} hineinkam',
  ],
  [
    'put right when it was set in, or note when the fire was raked out: “raked again”',
    'richtigstellen, wann es eingeschossen wurde, oder aufschreiben, wann das Feuer ausgeräumt wurde: „raked again“',
  ],
  [
    'note when the first was raked out, such as “raked 7:20 am”, if it was another',
    'aufschreiben, wann das erste ausgeräumt wurde, etwa „raked 7:20 am“, wenn es ein anderes war',
  ],
  ['note what it was, such as “wood {mass}”', 'aufschreiben, wie viel es war, etwa „wood {mass}“'],
  [
    '“{words}” does not say how many that is, and would be kept as words',
    '„{words}“ sagt nicht, wie viele das sind, und würde nur als Worte aufgehoben',
  ],
  [
    'write the number and the dish, such as “{name} 4 of 6 drawn”',
    'die Zahl und das Gericht schreiben, etwa „{name} 4 of 6 drawn“',
  ],
  ['“{name}” is no dish of this day', '„{name}“ ist kein Gericht dieses Tages'],
  [
    '{dish} and {other}: as the log has it they would stand in one place',
    '{dish} und {other}: nach dem Ofenbuch stünden sie an einer Stelle',
  ],
  ['{dish}: as the log has it there would be no room for it', '{dish}: nach dem Ofenbuch wäre kein Platz dafür'],
  [
    '{dish}: behind {other} in the oven, and to be drawn before it',
    '{dish}: steht im Ofen hinter {other} und ist vorher auszuziehen',
  ],
  [
    'when it is drawn, shift aside or take out what stands before it',
    'beim Ausziehen beiseiterücken oder herausnehmen, was davor steht',
  ],
  [
    'look where they stand when the door is open next, and note what was set in or drawn otherwise than planned',
    'beim nächsten Öffnen nachsehen, wo sie stehen, und aufschreiben, was anders als geplant eingeschossen oder ausgezogen wurde',
  ],
  ['“{words}” is kept as words, and tells of no fire', '„{words}“ bleibt als Worte stehen und sagt von keinem Feuer'],
  ['“{words}” takes no fire back', '„{words}“ nimmt kein Feuer zurück'],
  ['write “no fire again” if that is meant', '„no fire again“ schreiben, wenn das gemeint ist'],
  [
    'the fire noted for {time} would burn with the first, so it is not planned for',
    'das für {time} aufgeschriebene Feuer brennte mit dem ersten zusammen, darum wird es nicht eingeplant',
  ],
  ['note one for when the first is raked out, or later', 'eines aufschreiben für wenn das erste ausgeräumt ist, oder später'],
  [
    'a third fire is not planned for ahead, so the one noted for {time} is left out',
    'ein drittes Feuer wird nicht im Voraus geplant, darum bleibt das für {time} aufgeschriebene weg',
  ],
  [
    'note “lit again” when it is lit: the rest of the day is planned with it then',
    '„lit again“ aufschreiben, wenn es brennt: dann wird der Rest des Tages damit geplant',
  ],
  [
    'the fire noted for {time} waits until {time2}, for what is in the oven',
    'das für {time} aufgeschriebene Feuer wartet bis {time2} auf das, was im Ofen ist',
  ],
  [
    'note another hour, or “no fire again”, if that is too late',
    'eine andere Stunde aufschreiben, oder „no fire again“, wenn das zu spät ist',
  ],
  ['“{words}” does not say at what time', '„{words}“ sagt nicht, um welche Zeit'],
  ['“{words}”: that time has passed', '„{words}“: Diese Zeit ist vorbei'],
  [
    '“{words}”: a fire burns for one length of time, from 10 min to 12 h',
    '„{words}“: Ein Feuer brennt eine bestimmte Zeit, von 10 Min. bis 12 Std.',
  ],
  [
    'write “fire again at 3:15 pm” or “fire again at 3:15 pm for 45 min” of a fire to come, and “lit again” of one that is lit',
    '„fire again at 3:15 pm“ oder „fire again at 3:15 pm for 45 min“ von einem Feuer schreiben, das noch kommt, und „lit again“ von einem, das brennt',
  ],
  [
    'write when it was decided too, such as “12:30 pm fire again at 3:15 pm”',
    'auch schreiben, wann es beschlossen wurde, etwa „12:30 pm fire again at 3:15 pm“',
  ],
  ['write “{words}” if that is meant', '„{words}“ schreiben, wenn das gemeint ist'],
  ['nothing is said of “{dish}”', 'von „{dish}“ wird nichts gesagt'],
  [
    'write what was done: “set in”, “drawn”, “mixed”, “shaped” or “not risen”',
    'schreiben, was getan wurde: „set in“, „drawn“, „mixed“, „shaped“ oder „not risen“',
  ],
  [
    '“{words}” is kept as words, and tells of nothing done',
    '„{words}“ bleibt als Worte stehen und sagt von nichts, was getan wurde',
  ],
  [
    '“{words}” would be kept as words, and tells of nothing done',
    '„{words}“ würde nur als Worte aufgehoben und sagt von nichts, was getan wurde',
  ],
  ['“{word}” is no reading, and would be kept as words', '„{word}“ ist keine Messung und würde nur als Worte aufgehoben'],
  ['“{time}” has not come yet', '„{time}“ ist noch nicht gekommen'],
  ['write the time at which it was read', 'die Zeit schreiben, zu der gemessen wurde'],
  ['this is {n} days after the fire was lit', 'das ist {n} Tage nach dem Anzünden'],
  ['begin a new log for a new firing', 'für ein neues Feuer ein neues Ofenbuch beginnen'],
  ['begin with one of {list}', 'mit einem von diesen beginnen: {list}'],
  ['“{words}” is no sign of {kind} we know', '„{words}“ ist kein Zeichen, das wir kennen ({kind})'],
  ['write how far you counted, such as “arm 18”', 'schreiben, wie weit gezählt wurde, etwa „arm 18“'],
  ['for how long the door was open is not understood: “{words}”', 'nicht verstanden, wie lange die Tür offen war: „{words}“'],
  ['write “open 20 min” or “open half an hour”', '„open 20 min“ oder „offen eine halbe Stunde“ schreiben'],
  ['an arm count of {n} says nothing', 'eine Armprobe von {n} sagt nichts'],
  ['write a count between 1 and 120', 'eine Zahl zwischen 1 und 120 schreiben'],
  ['no brick oven is at {size}', 'kein Steinofen hat {size}'],
  ['check the figure and its scale, °C or °F', 'die Zahl und ihre Skala prüfen, °C oder °F'],
  [
    '{size} is hotter than a raked oven gets; was it {n} °F ({n2} °C)? It is kept as written',
    '{size} ist heißer, als ein ausgeräumter Ofen wird; waren es {n} °F ({n2} °C)? Es bleibt, wie es da steht',
  ],
  ['if so, write “{words}”', 'wenn ja, „{words}“ schreiben'],
  // Files (src/cli)
  ['this file is not in UTF-8: it is read as Windows-1252', 'diese Datei ist nicht in UTF-8: sie wird als Windows-1252 gelesen'],
  [
    'look whether its letters are right, and save it in UTF-8',
    'nachsehen, ob ihre Buchstaben stimmen, und sie in UTF-8 speichern',
  ],
  // How much (src/scale)
  [
    '“{words}” is nothing that is counted here; taken as {n} of what the receipt makes',
    '„{words}“ ist nichts, was hier gezählt wird; genommen: {n} von dem, was das Rezept gibt',
  ],
  [
    '“{words}” says no size: made as large as the receipt has them',
    '„{words}“ sagt keine Größe: so groß gemacht, wie das Rezept sie hat',
  ],
  [
    'write what each weighs behind it, as in “6 loaves of 2 lb” or “12 rolls of 80 g”',
    'dahinter schreiben, was jedes wiegt, wie „6 Laibe zu 1 kg“ oder „12 Brötchen zu 80 g“',
  ],
  [
    'write the vessel or the piece, such as “8 loaves” or “2 crocks”, and “wanted by” before a time',
    'das Gefäß oder das Stück schreiben, etwa „8 loaves“ oder „2 crocks“, und vor eine Zeit „wanted by“',
  ],
  ['“{words}” is no vessel known here', '„{words}“ ist kein Gefäß, das hier bekannt ist'],
  ['“{words}” holds what no vessel does', '„{words}“ fasst, was kein Gefäß fasst'],
  [
    '“{words}” is no vessel known here; by its sizes it is taken as {shape}',
    '„{words}“ ist kein Gefäß, das hier bekannt ist; nach seinen Größen genommen als “{shape}”',
  ],
  [
    'write “round”, “square”, “oblong”, “loaf”, “pie plate”, “crock”, “sheet” or “free-standing loaf” before the sizes',
    '„round“, „square“, „oblong“, „loaf“, „pie plate“, „crock“, „sheet“ oder „free-standing loaf“ vor die Größen schreiben',
  ],
  ['the sizes of “{words}” have no unit', 'die Größen in „{words}“ haben keine Einheit'],
  ['“{word}” is no unit of length', '„{word}“ ist keine Längeneinheit'],
  [
    '“{word}” in “{words}” is no unit of length: the size of the vessel is not read',
    '„{word}“ in „{words}“ ist keine Längeneinheit: die Größe des Gefäßes ist nicht gelesen',
  ],
  [
    'write inches or centimetres, or state the vessel in the front matter: vessel: round 23 x 6 cm',
    'Zoll (inches) oder Zentimeter schreiben, oder das Gefäß im Kopf der Datei: vessel: round 23 x 6 cm',
  ],
  ['{size} is no size for a vessel', '{size} ist keine Größe für ein Gefäß'],
  ['“{words}” has {n} sizes, too many for {shape}', '„{words}“ hat {n} Größen, zu viele für diese Form'],
  [
    'write “round 9 in x 2 in”, “loaf 9 x 5 x 3 in” or “free-standing loaf 24 cm”',
    '„round 9 in x 2 in“, „loaf 9 x 5 x 3 in“ oder „free-standing loaf 24 cm“ schreiben',
  ],
  ['“{file}” holds no receipt', '„{file}“ enthält kein Rezept'],
  [
    'write the ingredients as a list or a paragraph under a title',
    'die Zutaten als Liste oder Absatz unter einen Titel schreiben',
  ],
  ['no vessel is known for “{title}”', 'für „{title}“ ist kein Gefäß bekannt'],
  ['state one in its front matter: {line}', 'im Kopf der Datei eines nennen: {line}'],
  ['an amount cannot be negative: “{words}”', 'eine Menge kann nicht negativ sein: „{words}“'],
  ['“{words}” is nothing to bake', '„{words}“ ist nichts zu backen'],
  [
    '“{words}” is to fill the floor, and says in how many vessels',
    '„{words}“ soll den Boden füllen, und sagt, in wie vielen Gefäßen',
  ],
  [
    'write “fill the floor in round 26 cm x 7 cm”, or how many',
    '“fill the floor in round 26 cm x 7 cm” schreiben, oder wie viele',
  ],
  [
    '“{words}” is more than stands on the floor at once, which is {n} × {vessel}',
    '„{words}“ ist mehr, als zugleich auf dem Herd steht: das sind {n} × {vessel:text}',
  ],
  ['“{words}” is more than any oven bakes', '„{words}“ ist mehr, als ein Ofen bäckt'],
  ['“{words}” is a share of the people, and no number', '„{words}“ ist ein Anteil der Personen und keine Zahl'],
  ['write how many that is: “for {n}”', 'schreiben, wie viele das sind: „for {n}“'],
  ['“{words}” says in two ways how much', '„{words}“ sagt auf zwei Weisen, wie viel'],
  [
    '“{words}” is next to nothing: {weight2} goes into one {vessel}',
    '„{words}“ ist so gut wie nichts: in eine Form ({vessel:text}) gehen {weight2}',
  ],
  [
    'write how much in kg, g, lb or oz, such as “3 kg”, or how many, such as “2 times”',
    'schreiben, wie viel in kg, g, lb oder oz, etwa „3 kg“, oder wie viele, etwa „2 times“',
  ],
  [
    '“{words}” has a minus before it, and no amount is less than nothing: read without it',
    'vor „{words}“ steht ein Minus, und weniger als nichts gibt es nicht: ohne das gelesen',
  ],
  ['“{words}” is none of it', '„{words}“ ist gar nichts davon'],
  ['write how much of it goes in, or take it out', 'schreiben, wie viel davon hineingehört, oder es streichen'],
  ['“{words}”: people come whole', '„{words}“: Personen gibt es nur ganz'],
  ['“{words}” is a range', '„{words}“ ist eine Spanne'],
  ['write one number, such as “{words}”', 'eine Zahl schreiben, etwa „{words}“'],
  ['“{words}” may be a weight or a number', '„{words}“ kann ein Gewicht oder eine Zahl sein'],
  ['“{words}” says a size and no number', '„{words}“ sagt eine Größe und keine Zahl'],
  [
    'write “2 pies of 10 inches”, or the vessel with its sizes: “2 round tins 26 cm x 7 cm”',
    '„2 pies of 10 inches“ schreiben, oder das Gefäß mit seinen Maßen: „2 round tins 26 cm x 7 cm“',
  ],
  ['“{word}” in “{words}” is not read', '„{word}“ in „{words}“ ist nicht gelesen'],
  [
    'write how many whole ones that makes, or “half the receipt”',
    'schreiben, wie viele ganze das sind, oder „ein halbes Rezept“',
  ],
  [
    'write “12 loaves”, “for 40”, “2 times”, “3 kg” or “fill the floor”; what each weighs or measures as “6 loaves of 4 lb” or “2 pies of 10 inches”',
    '„12 Laibe“, „für 40“, „2-mal“, „3 kg“ oder „fill the floor“ schreiben; was jedes wiegt oder misst, als „6 Laibe zu 2 kg“ oder „2 Kuchen zu 26 cm“',
  ],
  ['“{word}” is nothing that comes out of the oven here', '„{word}“ ist nichts, was hier aus dem Ofen kommt'],
  [
    'write the weight of the dough or mixture as “6 lb of dough”, or of what is baked as “6 lb of bread”',
    'das Gewicht des Teigs oder der Masse als „3 kg Teig“ schreiben, das des Gebackenen als „3 kg Brot“',
  ],
  ['“{words}”: one size does not tell {vessel}', '„{words}“: ein Maß allein sagt nicht, wie groß „{vessel:text}“ ist'],
  [
    'write the vessel with its sizes behind the number, such as “2 loaves in loaf tins 9 x 5 x 3 in”',
    'das Gefäß mit seinen Maßen hinter die Zahl schreiben, etwa „2 loaves in loaf tins 9 x 5 x 3 in“',
  ],
  ['“{words}”: vessels come whole', '„{words}“: Gefäße gibt es nur ganz'],
  ['“{words}” does not say of what', '„{words}“ sagt nicht, wovon'],
  [
    'write “12 loaves”, “for 40”, “2 times”, “3 kg” or “fill the floor”',
    '„12 loaves“, „for 40“, „2 times“, „3 kg“ oder „fill the floor“ schreiben',
  ],
  [
    'write “12 loaves”, “for 40”, “2 times”, “3 kg” or “fill the floor”, or take the line out',
    '„12 loaves“, „for 40“, „2 times“, „3 kg“ oder „fill the floor“ schreiben, oder die Zeile streichen',
  ],
]
