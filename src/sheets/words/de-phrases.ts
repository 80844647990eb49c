import type {PhraseId} from '../../plan/phrases.js'

/** The planner's phrases (`plan/phrases.ts`) in German: the same ids, the same blanks. */
export const dePhrases: Readonly<Record<PhraseId, string>> = {
  'evening before': '{dishes}: den Teig am Vorabend mit kaltem Wasser kneten.',
  'evening before cold': '{dishes}: den Teig am Vorabend kneten, die Flüssigkeit dazu kalt.',
  'evening before sponge': '{dishes}: den Teig am Vorabend mit dem Vorteig kneten, alles Übrige dazu kalt.',
  sponge:
    '{dishes}: Vorteig ansetzen: das Triebmittel mit so viel Mehl und Flüssigkeit, wie das Rezept dazu gibt. Bis {until} stehen lassen.',
  'sponge cold':
    '{dishes}: Vorteig am Vorabend ansetzen: das Triebmittel mit so viel Mehl und Flüssigkeit, wie das Rezept dazu gibt. Zudecken und in den Kühlschrank (3–5 °C) stellen; er geht dort langsam bis {until}.',
  'sponge cool':
    '{dishes}: Vorteig am Vorabend ansetzen: das Triebmittel mit so viel Mehl und Flüssigkeit, wie das Rezept dazu gibt. Zudecken und in einen Keller oder eine Speisekammer von 10–15 °C stellen; er geht dort langsam bis {until}.',
  'ahead sponge': 'Vorher zusammengefallen: den Teig so bald wie möglich damit kneten.',
  'behind sponge': 'Bis dahin nicht voller Blasen: warm stellen, bis er es ist, und neu planen.',
  'sponge again':
    '{dishes}: den Vorteig oder Sauerteig vom Vorabend auffrischen, mit so viel Mehl und Flüssigkeit, wie das Rezept dazu gibt. Bis {until} stehen lassen.',
  'mix sponge': '{dishes}: den Teig mit dem Vorteig kneten.',
  prove: '{dishes}: den geformten Teig bis {until} gehen lassen.',
  'prove late':
    '{dishes}: der Ofen kommt zu spät dafür. Den geformten Teig in den Kühlschrank oder an den kältesten Ort stellen; ab {warm} warm bis {until} weiter gehen lassen.',
  'prove in refrigerator':
    '{dishes}: den geformten Teig zudecken und in den Kühlschrank (3–5 °C) stellen; er geht dort langsam bis {until}.',
  'prove in cellar':
    '{dishes}: den geformten Teig zudecken und in einen Keller oder eine Speisekammer von 10–15 °C stellen; er geht dort langsam bis {until}.',
  'prove cold': '{dishes}: den geformten Teig kalt stellen; er geht langsam bis {until}.',
  'sign sponge': 'Voller Blasen, und er fällt gerade ein.',
  'sign proved': 'Gut aufgegangen; eine Druckstelle kommt langsam zurück.',
  mix: '{dishes}: den Teig kneten.',
  batch: '{dishes}, Teig {number} von {of} ({count} für Schuss {load})',
  part: '{dishes}, Teil {number} von {of} ({count} für Schuss {load})',
  'make up': '{dishes}: fertig machen zum Einschießen um {at}.',
  'make up several': '{dishes}: der Reihe nach fertig machen zum Einschießen um {at}.',
  'make up first': '{dishes}: fertig machen zum Einschießen um {at}. Zuvor {first}.',
  'make up several first': '{dishes}: der Reihe nach fertig machen zum Einschießen um {at}. Zuvor {first}.',
  'make up early first': '{dishes}: vor der Nacht fertig machen und bis zum Einschießen kühl stellen. Zuvor {first}.',
  'first work': '{work}',
  'first work of': 'für {dishes} {work}',
  'make up early': '{dishes}: vor der Nacht fertig machen und bis zum Einschießen kühl stellen.',
  rise: '{dishes}: den Teig gehen lassen bis {until}.',
  'rise late':
    '{dishes}: der Ofen kommt zu spät dafür. Den Teig, wenn er doppelt so groß ist, zusammenstoßen und noch einmal gehen lassen bis {until}.',
  'rise cool':
    '{dishes}: den Teig zudecken und in einen Keller oder eine Speisekammer von 10–15 °C stellen; er geht dort langsam bis {until}.',
  'rise cold': '{dishes}: den Teig zudecken und in den Kühlschrank (3–5 °C) stellen; er geht dort langsam bis {until}.',
  'put by':
    '{dishes}: im Ofen ist kein Platz mehr, und der Teig ist geknetet. Zusammenstoßen, zudecken und jetzt in den Kühlschrank (5 °C oder kälter) stellen: dort hält er bis morgen. Dann formen und gehen lassen, ehe er gebacken wird; oder heute in einem anderen Ofen backen, oder als Fladen auf einer Platte.',
  'put by cold':
    '{dishes}: im Ofen ist kein Platz mehr, und der Teig steht kalt. Dort lassen, wenn es da 5 °C oder kälter ist, sonst jetzt in den Kühlschrank stellen: dort hält er bis morgen. Dann backen, oder heute in einem anderen Ofen.',
  'put by shaped':
    '{dishes}: im Ofen ist kein Platz mehr, und der Teig ist geformt und steht warm. Zudecken und jetzt in den Kühlschrank (5 °C oder kälter) stellen: dort hält er bis morgen und wird dann gebacken, wie er ist. Was jetzt schon voll gegangen ist, vorher zusammenstoßen, und ehe es gebacken wird, noch einmal formen und gehen lassen. Oder heute in einem anderen Ofen backen.',
  'put by filled':
    '{dishes}: im Ofen ist kein Platz mehr, und es ist geformt, mit rohem Fleisch oder Fisch darin. Zudecken, jetzt in den Kühlschrank (5 °C oder kälter) stellen und morgen backen, wie es ist, oder heute in einem anderen Ofen. Was seit dem Füllen vier Stunden warm gestanden hat, wegwerfen.',
  shape: '{dishes}: den Teig formen.',
  light: 'Feuer anzünden. {wood} Holz über {burn} verbrennen.',
  'light again': 'Noch einmal anzünden. {wood} Holz über {burn} verbrennen.',
  feed: 'Nachlegen: {wood}.',
  rake: 'Die Glut ausräumen. Den Herd feucht wischen.',
  soak: 'Tür zu. Die Hitze {soak} ausgleichen lassen.',
  test: 'Die Hitze prüfen: etwa {celsius}.',
  load: 'Schuss {load} einschießen: {dishes}.',
  'load at': '{dishes}: {zone}',
  'load at two': '{dishes}: {zone} und {zone2}',
  'all of': '{dishes}',
  'some of': '{dishes} ({count} von {all})',
  'some of at': '{dishes} ({count} von {all}, {zone})',
  'some of at two': '{dishes} ({count} von {all}, {zone} und {zone2})',
  'load across': '{dishes} über den ganzen Herd',
  draw: 'Ausziehen: {dishes}.',
  'top up':
    '{dishes}: solange die Tür offen ist, hineinsehen und mit kochendem Wasser auffüllen, wo es unter das Gargut gesunken ist.',
  'fill up':
    '{dishes}: ehe die Tür zugeht, mit kochendem Wasser auffüllen, so weit es ohne Überkochen geht, und zudecken: vor {until} sieht niemand hinein.',
  fill: '{dishes}: herausnehmen, füllen, wie das Rezept sagt („{words}“), und wieder einschießen: bis hierher ist der Boden leer gebacken.',
  tend: '{dishes}: solange die Tür offen ist, tun, was das Rezept sagt („{words}“).',
  'tend alone': '{dishes}: Tür einen Augenblick öffnen, tun, was das Rezept sagt („{words}“), und gleich wieder schließen.',
  'tend oftener':
    '{dishes}: Das Rezept sagt „{words}“, öfter, als dieser Plan die Tür öffnet: dazwischen einen Augenblick öffnen und gleich wieder schließen.',
  shut: 'Tür zu. Es bleibt drin: {dishes}.',
  'soak over night': '{dishes}: einweichen: {amounts} („{words}“).',
  'soak over night plain': '{dishes}: einweichen, was das Rezept sagt („{words}“).',
  'stand cool over night':
    '{dishes}: mischen, was über Nacht stehen soll, zudecken und kühl stellen („{words}“). Am Tag selbst den Rest fertig machen.',
  'stand cold over night':
    '{dishes}: mischen, was über Nacht stehen soll, zudecken und in den Kühlschrank stellen, bei 5 °C oder kälter („{words}“). Am Tag selbst den Rest fertig machen.',
  'set over night': '{dishes}: Vorteig oder Sauerteig ansetzen: {amounts} („{words}“).',
  'set over night plain': '{dishes}: Vorteig oder Sauerteig ansetzen („{words}“).',
  'leave ajar': 'Tür ein wenig offen lassen, wie es das Rezept verlangt („{words}“). Es bleiben darin: {dishes}.',
  'keep shut': 'Tür geschlossen halten bis {until}, wie es das Rezept verlangt: {dishes}.',
  'keep shut but':
    'Tür geschlossen halten bis {until}, wie es das Rezept verlangt: {dishes}. Um {opened} wird sie doch geöffnet, für das, was dann fertig ist oder wartet: rasch.',
  'shut empty': 'Tür zu.',
  'sign coals': 'Das Holz ist zu Glut verbrannt, und die Wände über dem Feuer brennen weiß.',
  'sign coals dark':
    'Das Holz ist zu Glut verbrannt. Nicht auf weiße Wände warten: dieses Feuer macht sie nicht so heiß, dass ihr Ruß wegbrennt.',
  'sign walls': 'Der Ruß ist weggebrannt: die Wände sind weiß.',
  'sign flame': 'Eine klare Flamme das Gewölbe entlang.',
  'sign floor': 'Kein Glimmen auf dem Herd; der feuchte Lappen zischt.',
  'sign floor dark':
    'Kein Glimmen auf dem Herd; der feuchte Lappen zischt. Am Ende des Ausgleichens hat der Herd etwa {celsius}. {sign}',
  'sign soak': 'Die Tür ist warm; kein Rauchgeruch.',
  'sign flour scorches': 'Mehl auf dem Herd wird in einer Minute dunkelbraun; schwarz darf es nicht gleich werden.',
  'sign flour browns': 'Mehl auf dem Herd bräunt langsam; der Arm hält es aus, bis du {count} gezählt hast.',
  'sign paper': 'Weißes Papier wird in fünf Minuten {colour}.',
  'sign arm': 'Der Arm hält es aus, bis du {count} gezählt hast.',
  'sign dough': 'Der Teig ist doppelt so groß; ein Fingerdruck bleibt.',
  'sign own': '{sign}',
  'ahead hot': 'Zu heiß: Tür einige Minuten offen lassen und neu prüfen.',
  'behind fire': 'Hinterher: öfter und dünneres Holz nachlegen. Das Feuer nicht kürzen.',
  'ahead coals': 'Früh heruntergebrannt: jetzt ausräumen und länger ausgleichen.',
  'behind coals': 'Noch Flammen: warten. Alles danach rückt um ebenso viel.',
  'behind cool': 'Zu kühl: jetzt einschießen, was weniger Hitze braucht, und neu planen.',
  'ahead dough': 'Früh fertig: kühl stellen. Er kann {hold} warten.',
  'behind dough':
    'Nicht gegangen: näher an den Ofen stellen. Kommt der Ofen mehr als {hold} zu spät, zusammenstoßen und neu formen.',
  'behind bulk':
    'Nicht gegangen: näher an den Ofen stellen. Kommt der Ofen mehr als {hold} zu spät, zusammenstoßen und noch einmal gehen lassen, ehe er geformt wird.',
  'ahead night': 'Vorher voll gegangen: zusammenstoßen und in der Kälte lassen.',
  'behind night':
    'Bis dahin nicht gegangen: warm stellen, bis er es ist, und neu planen. Kommt der Ofen zu spät, ebenso lange in der Kälte lassen.',
  'ahead cold': 'Früh fertig: in der Kälte lassen. Er kann {hold} warten.',
  'behind cold':
    'Bis dahin nicht gegangen: vor dem Einschießen eine Stunde warm stellen. Kommt der Ofen zu spät, in der Kälte lassen: er kann {hold} warten; danach backen, wie er ist, und nicht zusammenstoßen.',
  'ahead raw':
    'Rohes Fleisch oder roher Fisch: {dishes} bis zum Einschießen im Kühlschrank halten, bei 5 °C oder kälter, und das Fleisch auch, ehe es verarbeitet wird.',
  'ahead raw dough':
    'Rohes Fleisch oder roher Fisch für {dishes}: im Kühlschrank halten, bei 5 °C oder kälter, und bis zum Formen nicht in den Teig geben, was auch das Rezept sagt: der Teig geht ohne.',
  'ahead raw filling':
    '{dishes}: jetzt das rohe Fleisch oder den rohen Fisch füllen oder einarbeiten, frisch aus dem Kühlschrank. Von hier bis zum Ofen steht es höchstens zwei Stunden warm.',
  'ahead raw proving':
    'Roh gefüllt, in {dishes}: früh gegangen, in den Kühlschrank stellen. Zwei Stunden warm seit dem Füllen sind genug, vier das Äußerste; was länger stand, wird weggeworfen.',
  'ahead load': 'Ofen zu heiß dafür: bei angelehnter Tür warten, bis er auf {celsius} gefallen ist.',
  'behind load': 'Ofen kühler als {celsius}: sofort einschießen und länger lassen.',
  'ahead draw': 'Früh fertig (nachsehen ab {early}): ausziehen, Papier über das legen, was bleibt.',
  'behind draw': 'Nicht fertig: Tür zu und alle zehn Minuten nachsehen, bis {late}.',
  'behind draw ajar': 'Nicht fertig: Tür angelehnt lassen und jede halbe Stunde nachsehen, bis {late}.',
  'behind draw ajar late': 'Nicht fertig: Tür angelehnt lassen und jede halbe Stunde nachsehen.',
  'behind draw ajar kept': 'Nicht fertig: Tür angelehnt lassen und jede halbe Stunde nachsehen, bis {late}. {kept}',
  'behind draw ajar kept late': 'Nicht fertig: Tür angelehnt lassen und jede halbe Stunde nachsehen. {kept}',
  'behind draw late': 'Nicht fertig: Tür zu und alle zehn Minuten nachsehen.',
  'behind draw kept': 'Nicht fertig: Tür zu und alle zehn Minuten nachsehen, bis {late}. {kept}',
  'behind draw kept late': 'Nicht fertig: Tür zu und alle zehn Minuten nachsehen. {kept}',
  'behind draw for fire': 'Nicht fertig: trotzdem heraus, bevor das Feuer angezündet wird.',
  'behind draw for fire kept': 'Nicht fertig: trotzdem heraus, bevor das Feuer angezündet wird. {kept}',
  'out for fire unfinished':
    '{dishes}: bis dahin nicht gar: gleich anderswo durchgaren, oder wieder einschießen, wenn der Ofen um {ready} bereit ist, und das aufschreiben.',
  'out for fire elsewhere':
    '{dishes}: bis dahin nicht gar, und der Ofen ist erst um {ready} wieder bereit: gleich anderswo durchgaren.',
  'other time': '{dishes}: {stay} in der Hitze, die es antrifft, gelten für {said} des Rezepts.',
  uneven: '{dishes} füllt den Herd: {zone} bräunt es zuerst, {zone2} zuletzt; alles wird zusammen ausgezogen.',
  'cool slowly':
    '{dishes}: das Rezept lässt es nach dem Backen darin („{words}“), und dieser Ofen hat seine Hitze noch oder wird gebraucht: langsam unter einem Tuch auskühlen lassen, ohne Zug.',
  'may stay in': '{dishes}: nicht fertig, darf bis {late} im Ofen bleiben.',
  'till morning': '{dishes}: um {late} nicht fertig, bis zum Morgen im Ofen lassen.',
  'till morning filled':
    '{dishes}: um {late} nicht fertig, mit kochendem Wasser auffüllen, zudecken und bis zum Morgen im Ofen lassen.',
  'out by night': '{dishes}: um {late} nicht fertig, trotzdem ausziehen und in einem anderen Ofen fertig backen.',
  'keep hot':
    'Fertig: {dishes}, gebraucht um {by}: bis dahin zugedeckt auf 57 °C (135 °F) oder heißer halten, oder in flachen Schalen binnen zwei Stunden abkühlen und auf 74 °C (165 °F) durcherhitzen.',
  'warm again':
    'Fertig: {dishes}, heiß gewünscht um {by}: bis dahin mit einem Tuch bedecken und vor dem Essen am Ofen oder darin durchwärmen; es hält sich auch ohne.',
  'keep cold':
    'Fertig: {dishes}, gebraucht um {by}: abkühlen lassen, binnen zwei Stunden bei 5 °C (41 °F) oder kälter kalt stellen und bis zum Essen so halten.',
  'keep long':
    'Fertig: {dishes}, wird erst in Stunden gebraucht: in flachen Schalen binnen zwei Stunden auf 21 °C (70 °F) und in weiteren vier auf 5 °C (41 °F) abkühlen und vor dem Essen auf 74 °C (165 °F) durcherhitzen.',
  'kept warm': '{dishes}: bis zum Essen auf 57 °C (135 °F) oder heißer halten.',
  'was cold': '{dishes}: war der Ofen zwei Stunden kühler als 57 °C (135 °F), nicht essen.',
  suggest: '{dishes}: gut für den leeren Herd; einschießen {at}, ausziehen {draw}.',
  'suggest some': '{dishes}, {count} von {all}: gut für den leeren Herd; einschießen {at}, ausziehen {draw}.',
  'moved later': '{minutes} später eingeschossen',
  'moved earlier': '{minutes} früher eingeschossen',
  'draw later': '{minutes} später ausgezogen',
  'draw earlier': '{minutes} früher ausgezogen',
  'moved place': 'anderswo: {zone} statt {old}',
  'moved vessels':
    '{count} von {all} Gefäßen an anderer Stelle auf dem Herd als vorher: nach dem neuen Plan des Herdes einschießen',
  'eased start': '{difference} unter der mindesten Hitze eingeschossen; länger darin lassen',
  'eased end': '{difference} unter der mindesten Hitze ausgezogen; gut nachsehen, ob es gar ist',
  'eased dose': 'mit {percent} % der Hitze ausgezogen, nach der kürzesten Zeit des Rezepts; vorher nachsehen',
  'eased short': 'mit {percent} % der Hitze ausgezogen; nachsehen, ob es gar ist, sonst länger darin lassen',
  'eased unfinished':
    'mit {percent} % der Hitze ausgezogen, und später kaum mehr zu haben; wenn es nicht gar ist, in einem anderen Ofen fertig backen',
  'drawn early':
    'nach dem Ofenbuch mit {percent} % der Hitze ausgezogen; wenn es nicht gar ist, in einem anderen Ofen fertig backen',
  'drawn raw': 'nach dem Ofenbuch mit {percent} % der Hitze ausgezogen; wenn es nicht gar ist, jetzt wieder einschießen',
  'out for fire':
    'für das Feuer um {at} mit {percent} % der Hitze herausgenommen; wenn es nicht gar ist, anderswo durchgaren oder auf diesem Feuer wieder einschießen',
  'said raw': 'nach dem Ofenbuch nicht gar ausgezogen; jetzt wieder einschießen, wenn es nicht seither durchgegart wurde',
  'said raw late':
    'nach dem Ofenbuch nicht gar ausgezogen; binnen zwei Stunden nach dem Ausziehen anderswo durchgaren, sonst nicht essen',
  'put back in vain':
    'um {out} ausgezogen und um {again} wieder eingeschossen: so nicht mehr sicher fertig zu backen; jetzt herausnehmen',
  'put back': 'um {out} ausgezogen und um {again} wieder eingeschossen: gerechnet, als wäre es seit {since} im Ofen',
  'put back some':
    '{count} von {all} um {out} ausgezogen und um {again} wieder eingeschossen: gerechnet, als wären sie seit {since} im Ofen',
  'looked at': 'um {at} nachgesehen und noch nicht gar: gerechnet, als wäre es um {until} fertig',
  'left out': 'weggelassen',
  lost: '{count} von {all} verloren; wird nicht neu geplant',
  'lost, made again': '{count} von {all} verloren; {again} neu gemacht und um {at} eingeschossen',
  'lost, some made again':
    '{count} von {all} verloren; {again} neu gemacht und um {at} eingeschossen, der Rest wird nicht neu geplant',
  'not asked': '{title}: nicht mehr verlangt, und nicht eingeschossen',
  'not asked and in': 'nicht mehr verlangt; es ist im Ofen und bleibt, bis es gar ist',
  'asked anew': 'vorher nicht verlangt',
  'asked otherwise': '{count} statt {all} verlangt',
  'why day': 'day.md verlangt etwas anderes, seit das Feuer brennt',
  'why lit later': 'das Feuer wurde {minutes} später angezündet als geplant',
  'why lit earlier': 'das Feuer wurde {minutes} früher angezündet als geplant',
  'why lit again': 'das Feuer wurde um {at} noch einmal angezündet',
  'why lit again later': 'das Feuer wurde {minutes} später als geplant noch einmal angezündet',
  'why lit again earlier': 'das Feuer wurde {minutes} früher als geplant noch einmal angezündet',
  'why set in later': '{minutes} später eingeschossen als geplant: {dishes}',
  'why set in earlier': '{minutes} früher eingeschossen als geplant: {dishes}',
  'why set in later than replanned': '{minutes} später eingeschossen als im Plan von {at}: {dishes}',
  'why set in earlier than replanned': '{minutes} früher eingeschossen als im Plan von {at}: {dishes}',
  'why set in later after lighting': 'nach dem Anzünden {minutes} später eingeschossen als geplant: {dishes}',
  'why set in earlier after lighting': 'nach dem Anzünden {minutes} früher eingeschossen als geplant: {dishes}',
  'why set in later after lighting than replanned':
    'nach dem Anzünden {minutes} später eingeschossen als im Plan von {at}: {dishes}',
  'why set in earlier after lighting than replanned':
    'nach dem Anzünden {minutes} früher eingeschossen als im Plan von {at}: {dishes}',
  'why door': 'die Tür stand insgesamt {minutes} offen',
  'why log': 'wie es im Ofenbuch steht',
  'why readings': 'wie es die Messungen verlangen',
  'why hotter': 'um {at} ist der Ofen {difference} heißer als geplant',
  'why cooler': 'um {at} ist der Ofen {difference} kühler als geplant',
  'why hotter too': 'und davon abgesehen ist der Ofen um {at} {difference} heißer als geplant',
  'why cooler too': 'und davon abgesehen ist der Ofen um {at} {difference} kühler als geplant',
  'why both': '{reasons}',
  'not quite hot enough': '{dishes}: einzuschießen bei {celsius} oder mehr; dem Ofen fehlen ein paar Grad dazu',
  'not hot enough': '{dishes}: einzuschießen bei {celsius} oder mehr; der Ofen hat höchstens {hottest}',
  'curve ended':
    '{dishes}: nicht eingeschossen, solange die Hitze des Ofens berechnet ist: so lange nach dem Feuer endet seine Kurve davor',
  'not in range':
    '{dishes}: einzuschießen zwischen {celsius} und {high}; dort fällt der Ofen zu schnell hindurch, oder er fällt nie so weit ({coolest} am Ende)',
  'not done': '{dishes}: nicht mehr als {percent} % der nötigen Hitze, bevor der Ofen unter {celsius} fällt',
  'not done at end': '{dishes}: nicht mehr als {percent} % der nötigen Hitze bis zum Ende des Tages',
  'not done before fire': '{dishes}: nicht mehr als {percent} % der nötigen Hitze, bevor der Ofen wieder geheizt wird',
  'not done before cold':
    '{dishes}: nicht mehr als {percent} % der nötigen Hitze, bis es {minutes} in einem Ofen unter {celsius} gestanden hätte, und länger darf keine Speise so stehen',
  'in the night': '{dishes}: nur in der Nacht einzuschießen oder auszuziehen',
  'kept out by night':
    '{dishes}: der Ofen ist erst ab {from} dafür recht, in der Nacht, wenn niemand die Tür öffnet, und nach {until} nicht mehr',
  'kept out by night of some':
    '{count} von {all} {dishes}: der Ofen ist erst ab {from} dafür recht, in der Nacht, wenn niemand die Tür öffnet, und nach {until} nicht mehr',
  'too many': '{dishes}: mehr, als sich backen lässt, solange der Ofen dafür recht ist',
  'too many of some': '{count} von {all} {dishes}: mehr, als sich backen lässt, solange der Ofen dafür recht ist',
  'too many for floor': '{dishes}: mehr, als der Herd fasst, solange der Ofen dafür recht ist',
  'too many for floor of some': '{count} von {all} {dishes}: mehr, als der Herd fasst, solange der Ofen dafür recht ist',
  'too many for hands': '{dishes}: mehr, als die Hände einschießen und ausziehen können, solange der Ofen dafür recht ist',
  'too many for hands of some':
    '{count} von {all} {dishes}: mehr, als die Hände einschießen und ausziehen können, solange der Ofen dafür recht ist',
  'too much heat': '{dishes}: braucht mehr Hitze, als der Ofen hat, solange er dafür recht ist',
  'too much heat of some':
    '{count} von {all} {dishes}: alles zusammen braucht mehr Hitze, als der Ofen hat, solange er dafür recht ist',
  'far too much': '{dishes}: verlangt ist weit mehr, als dieser Ofen an einem Tag backt',
  'no place': '{dishes}: dafür fand sich kein Platz',
  'no place of some': '{count} von {all} {dishes}: dafür fand sich kein Platz',
  'all taken': '{dishes}: dafür fand sich neben allem anderen kein Platz',
  'all taken of some': '{count} von {all} {dishes}: dafür fand sich neben allem anderen kein Platz',
  'heat shared': '{dishes} und {others} brauchen zusammen mehr Hitze, als der Ofen hat, solange er für sie recht ist',
  'heat shared of some':
    '{count} von {all} {dishes} und {others} brauchen zusammen mehr Hitze, als der Ofen hat, solange er für sie recht ist',
  'floor taken': '{dishes} und {others} wollen denselben Herd, solange der Ofen für sie recht ist',
  'floor taken of some': '{count} von {all} {dishes} und {others} wollen denselben Herd, solange der Ofen für sie recht ist',
  'hands shared': '{dishes} und {others} brauchen mehr Hände am Mundloch, als da sind, solange der Ofen für sie recht ist',
  'hands shared of some':
    '{count} von {all} {dishes} und {others} brauchen mehr Hände am Mundloch, als da sind, solange der Ofen für sie recht ist',
  'no one fire': '{dishes} und {others}: kein einzelnes Feuer, wann auch immer es brennt, ist für alle recht',
  'no one fire of some':
    '{count} von {all} {dishes} und {others}: kein einzelnes Feuer, wann auch immer es brennt, ist für alle recht',
  'late together': '{dishes} und {others}: nicht alles davon lässt sich auch nur Stunden nach der gewünschten Zeit haben',
  'late together of some':
    '{count} von {all} {dishes} und {others}: nicht alles davon lässt sich auch nur Stunden nach der gewünschten Zeit haben',
  'too many in time': '{dishes}: mehr, als sich auch nur Stunden nach der gewünschten Zeit haben lässt',
  'too many in time of some': '{count} von {all} {dishes}: mehr, als sich auch nur Stunden nach der gewünschten Zeit haben lässt',
  'not together': '{dishes} und {others}: nicht alles davon lässt sich backen, solange der Ofen dafür recht ist',
  'not together of some':
    '{count} von {all} {dishes} und {others}: nicht alles davon lässt sich backen, solange der Ofen dafür recht ist',
  'as left': '{reasons}, so wie alles Übrige den Ofen lässt',
  'as left of some': '{count} von {all} {reasons}, so wie alles Übrige den Ofen lässt',
  'too late': '{dishes}: so wie alles Übrige den Ofen lässt, nicht vor {at} gar, und dann zu spät',
  'too late of some': '{count} von {all} {dishes}: so wie alles Übrige den Ofen lässt, nicht vor {at} gar, und dann zu spät',
  'not risen': '{dishes}: der Ofen ist dafür nur recht, ehe der Teig gegangen sein kann',
  'not risen of some': '{count} von {all} {dishes}: der Ofen ist dafür nur recht, ehe der Teig gegangen sein kann',
  'floor busy': '{dishes}: der Ofen ist dafür nur von {from} bis {until} recht, und dann ist kein Platz dafür neben: {others}',
  'floor busy of some':
    '{count} von {all} {dishes}: der Ofen ist dafür nur von {from} bis {until} recht, und dann ist kein Platz dafür neben: {others}',
  'hands busy':
    '{dishes}: der Ofen ist dafür nur von {from} bis {until} recht, und dann sind die Hände beschäftigt mit: {others}',
  'hands busy of some':
    '{count} von {all} {dishes}: der Ofen ist dafür nur von {from} bis {until} recht, und dann sind die Hände beschäftigt mit: {others}',
  'heat spoiled':
    '{dishes}: der Ofen ist dafür nur von {from} bis {until} recht, und dann nähme es Hitze, die anderes nicht entbehren kann: {others}',
  'heat spoiled of some':
    '{count} von {all} {dishes}: der Ofen ist dafür nur von {from} bis {until} recht, und dann nähme es Hitze, die anderes nicht entbehren kann: {others}',
  'heat of its own':
    '{dishes}: der Ofen ist dafür nur von {from} bis {until} recht, und dann kühlte es ihn selbst zu sehr ab, um gar zu werden',
  'heat of its own of some':
    '{count} von {all} {dishes}: der Ofen ist dafür nur von {from} bis {until} recht, und dann kühlte es ihn selbst zu sehr ab, um gar zu werden',
  'mouth width': '{dishes}: {size} breit, und das Mundloch {room}',
  'mouth height': '{dishes}: {size} hoch, und das Mundloch {room}',
  'vault height': '{dishes}: {size} hoch, und das Gewölbe {room}',
  'too large': 'ein Gefäß ({vessel}) passt nicht auf diesen Herd',
  'remedy second fire': 'Ein zweites Feuer von {minutes} um {at}: {outcome}.',
  'remedy fire again':
    'Um {at} noch einmal anzünden, wenn nichts mehr im Ofen ist, und um {raked} ausräumen: {outcome}. Damit der Tag so geplant wird, „{note}“ aufschreiben.',
  'remedy earlier fire': '„fire from: {from}“ schreiben, {minutes} früher, als der Tag erlaubt: um {at} angezündet; {outcome}.',
  'remedy longer fire': 'Das Feuer {minutes} länger brennen lassen, bis {at}, und das Holz dafür aufschreiben: {outcome}.',
  'remedy shorter fire':
    'Die Glut {minutes} früher ausräumen, um {at}, und nicht mehr Holz nachlegen, als bis dahin zu Glut wird: {outcome}.',
  'remedy more hands': 'Mit {hands} Paar Händen: {outcome}.',
  'remedy not hot': '{dishes} bis {at} verlangen, und nicht heiß um die Zeit: {outcome}.',
  'remedy smaller batch': '{count} von {all} {dishes} backen: {outcome}.',
  'remedy state heat': '{dishes} stattdessen bei {celsius} (im Kopf von {file} „{line}“ schreiben): {outcome}.',
  'remedy smaller vessel': 'Im Tag für {dishes} „{amount}“ schreiben, in einem Gefäß, das hineingeht: {outcome}.',
  'remedy before night': '{dishes} noch vor der Nacht um {at} einschießen, bei {celsius} im Ofen: {outcome}.',
  'remedy door open':
    'Die Tür ab {at} {minutes} lang offen lassen, damit der Ofen vor der Nacht so weit gefallen ist, und das aufschreiben: {outcome}.',
  'remedy door open now':
    'Die Tür ab {at} {minutes} lang offen lassen, damit der Ofen auf das fällt, was als Nächstes hineinkommt, und es beim Schließen aufschreiben: {outcome}.',
  'remedy one move': '{dishes} um {at} für einen Augenblick beiseiterücken, um an {others} zu kommen: {outcome}.',
  'remedy two moves': '{dishes} um {at} und {again} für einen Augenblick beiseiterücken, um an {others} zu kommen: {outcome}.',
  'remedy leave out': '{dishes} weglassen: {outcome}.',
  'remedy late': '{dishes} trotzdem backen, herausgenommen um {at}: {outcome}.',
  'outcome all': 'dann geht alles hinein',
  'outcome still': 'weiter ohne {count} von {dishes}',
  'outcome fewer': 'nur ohne {count} von {dishes}; etwa {people} statt {before} gehen bei etwas leer aus',
  'outcome filled': 'mit so vielen von {dishes}, wie dann einen Platz haben',
  'outcome in use': 'dann fehlt nichts, und nichts kommt mehr als {hours} zu spät',
  'outcome still or late': 'weiter ohne {count} von {dishes}, oder mehr als {hours} zu spät damit',
  'outcome fewer or late':
    'nur ohne {count} von {dishes}, oder mehr als {hours} zu spät damit; etwa {people} statt {before} haben etwas nicht zur Zeit',
  'outcome in time': 'dann kommt nichts zu spät',
  'outcome hot': 'dann kommt alles heiß, was heiß gewünscht ist',
  'outcome too soon': 'was heiß gewünscht ist, kommt um weitere {minutes} zu früh heraus',
  'outcome hotter': 'dann kommt näher an seine Stunde, was heiß gewünscht ist',
  'outcome late': 'zusammen {minutes} zu spät',
  'outcome less late': 'zusammen {minutes} zu spät statt {before}',
  'outcome first fire': 'das erste von {minutes} um {at}',
  'outcome heat': 'dann bekommt alles seine ganze Hitze',
  'outcome wanting': '{count} mit weniger als ihrer ganzen Hitze',
  'outcome less wanting': '{count} mit weniger als ihrer ganzen Hitze statt {before}',
  'outcome more heat': '{count} weiter mit weniger als ihrer ganzen Hitze, aber näher daran',
  'outcome hours': 'eingeschossen höchstens {minutes} neben der geplanten Zeit statt {before}',
  'outcome more wood': '{wood} mehr Holz',
  'outcome less wood': '{wood} weniger Holz',
  'outcome same wood': 'nicht mehr Holz',
}
