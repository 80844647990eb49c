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
  [
    'raked before the wood has burned down, or set in before the soak',
    'ausgeräumt, bevor das Holz heruntergebrannt ist, oder eingeschossen vor dem Ausgleichen',
  ],
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
    '{dish}: its sponge works {size} through the night, {size2} longer than it is meant to; it stands in the cold for that',
    '{dish}: der Vorteig geht {size} über Nacht, {size2} länger als vorgesehen; dafür steht er in der Kälte',
  ],
  [
    'look at it first thing in the morning: make the dough of it as soon as it begins to fall',
    'am Morgen zuerst danach sehen: sobald er zusammenzufallen beginnt, den Teig damit kneten',
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
    'keep it hot, or cool it quickly and heat it through; or write “hot at {time}” behind its link, so that it is drawn for its meal',
    'heiß halten, oder rasch abkühlen und durcherhitzen; oder hinter seinen Verweis „hot at {time}“ schreiben, damit es zur Mahlzeit ausgezogen wird',
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
  ['write one size, weight, time or temperature here', 'hier eine Größe, ein Gewicht, eine Zeit oder eine Temperatur schreiben'],
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
  ['write the year in figures, such as {n}', 'das Jahr in Ziffern schreiben, etwa {n}'],
  ['write a number of people', 'eine Anzahl Personen schreiben'],
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
  ['“{words}” may be morning or afternoon', '„{words}“ kann morgens oder nachmittags sein'],
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
    'this table lacks a column “time”, “reading” or “value”, so none of it is read',
    'dieser Tabelle fehlt eine Spalte “time”, “reading” oder “value”, darum wird nichts von ihr gelesen',
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
    'note when the first was raked out, such as “raked 7:20 am”, if it was another',
    'aufschreiben, wann das erste ausgeräumt wurde, etwa „raked 7:20 am“, wenn es ein anderes war',
  ],
  ['note what it was, such as “wood {mass}”', 'aufschreiben, wie viel es war, etwa „wood {mass}“'],
  ['“{name}” is no dish of this day', '„{name}“ ist kein Gericht dieses Tages'],
  [
    '{dish} and {other}: as the log has it they would stand in one place',
    '{dish} und {other}: nach dem Ofenbuch stünden sie an einer Stelle',
  ],
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
  ['an arm count of {n} says nothing', 'eine Armprobe von {n} sagt nichts'],
  ['write a count between 1 and 120', 'eine Zahl zwischen 1 und 120 schreiben'],
  ['no brick oven is at {size}', 'kein Steinofen hat {size}'],
  ['check the figure and its scale, °C or °F', 'die Zahl und ihre Skala prüfen, °C oder °F'],
  [
    '{size} is hotter than a raked oven gets; was it {n} °F ({n2} °C)? It is kept as written',
    '{size} ist heißer, als ein ausgeräumter Ofen wird; waren es {n} °F ({n2} °C)? Es bleibt, wie es da steht',
  ],
  ['if so, write “{words}”', 'wenn ja, „{words}“ schreiben'],
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
  ['“{words}” is more than any oven bakes', '„{words}“ ist mehr, als ein Ofen bäckt'],
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
