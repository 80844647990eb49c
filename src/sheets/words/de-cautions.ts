/** The lexicon's cautions in German, by id: the harm, then what to do instead. Sources are those of the rows. */
export const deCautions: Readonly<Record<string, string>> = {
  'raw-egg': 'Rohes Ei kann Salmonellen tragen. Wo das Ei nicht auf 72 °C (160 °F) kommt, pasteurisiertes Ei nehmen.',
  'raw-flour': 'Mehl ist roh und kann E. coli und Salmonellen tragen. Rohen Teig nicht kosten; alles backen, was Mehl enthält.',
  'raw-milk':
    'Milch frisch von der Kuh kann Listerien, E. coli und andere Keime tragen. Pasteurisierte Milch und Sahne nehmen; wo sie kuhwarm sein soll, pasteurisierte Milch auf 37 °C (99 °F) erwärmen.',
  'warm-cream':
    'In Eiercreme, Sahne und Eierfüllungen vermehren sich Bakterien zwischen 5 und 57 °C (41–135 °F). Innerhalb von zwei Stunden essen, oder rasch kühlen und bei 5 °C (41 °F) oder kälter halten.',
  'hot-holding':
    'In einem Topf, der in der Nacht unter 57 °C (135 °F) fällt, vermehren sich Bakterien. Dafür sorgen, dass er bis zum Essen über 57 °C (135 °F) bleibt, oder ihn herausnehmen, rasch kühlen und bei 5 °C (41 °F) halten; wieder erhitzen auf 74 °C (165 °F).',
  'wood-in-oven':
    'Holz, das in einem heißen Ofen liegt, verkohlt, raucht und kann sich selbst entzünden, an einer Glut sofort und von etwa 100 °C (212 °F) an nach Stunden. Erst hineinlegen, wenn der Ofen unter 95 °C (200 °F) und von Kohlen rein gefegt ist, die Tür ein wenig offen und der Abzug frei; vor dem Schlafengehen danach sehen, Wasser bereithalten, und es herausnehmen, ehe das nächste Feuer gelegt wird.',
  'danger-zone':
    'In Fleisch, Milch, Eiern und Gegartem vermehren sich Bakterien zwischen 4 und 60 °C (40–140 °F) schnell. Kalt oder heiß halten; dazwischen höchstens zwei Stunden, über 32 °C (90 °F) eine Stunde.',
  cooling:
    'Ein tiefer Topf kühlt so langsam, dass wieder wächst, was darin lebt. In flache Schalen teilen: von 57 auf 21 °C (135 auf 70 °F) in zwei Stunden, auf 5 °C (41 °F) in vier weiteren.',
  'meat-temperature':
    'Fleisch, das gar aussieht, ist es vielleicht nicht. Mit dem Thermometer prüfen: 63 °C (145 °F) und 3 Minuten Ruhe für ganze Stücke und Fisch, 72 °C (160 °F) für Hackfleisch, 74 °C (165 °F) für Geflügel, Füllung und Reste.',
  stuffing:
    'Die Füllung wird zuletzt warm und hält rohen Saft. In einer Form neben dem Vogel backen, oder dafür sorgen, dass ihre Mitte 74 °C (165 °F) erreicht.',
  'rare-meat':
    'Schwein, Geflügel und Hackfleisch, nicht durchgegart, können Parasiten und Bakterien tragen. Schwein auf 63 °C (145 °F), Hackfleisch auf 72 °C (160 °F), Geflügel auf 74 °C (165 °F) garen.',
  'part-cooking':
    'Fleisch, das durchgewärmt, aber nicht gar ist und dann aufgehoben wird, lässt Bakterien wachsen. Ohne Pause durchgaren, oder sofort kühlen und nach der Regel des Food Code für unterbrochenes Garen (3-401.14) fertig machen.',
  'hung-meat':
    'Fleisch, das riecht, ist verdorben; Essig, Holzkohle oder Salpeter verdecken es nur. Wegwerfen; nur geprüftes Fleisch abhängen, bei 5 °C (41 °F) oder kälter.',
  'potted-air':
    'Unter Fett luftdicht bei Zimmerwärme aufgehoben, kann Fleisch oder Fisch Botulismus geben. Bei 5 °C (41 °F) oder kälter halten und in wenigen Tagen essen.',
  bottling:
    'Gemüse, Fleisch und mildes Obst, in Gläsern im Ofen oder Topf verschlossen, können Botulismus geben, und Gläser können platzen. Nach dem USDA Complete Guide to Home Canning einkochen: säurearmes im Druckkessel, Obst nach geprüften Zeiten; nie im Ofen.',
  'sprouting-salt':
    'Nach Augenmaß gepökeltes Fleisch hält vielleicht nicht, oder es enthält zu viel Nitrit. Nach Gewicht und geprüftem Rezept pökeln und kalt halten.',
  saltpetre:
    'Salpeter (Kaliumnitrat) löffelweise gibt mehr Nitrat und Nitrit, als gut ist. Pökelsalz bekannter Stärke nehmen, abgewogen nach Angabe, oder weglassen.',
  'beans-boil':
    'Bohnen enthalten ein Gift (Lektin), rote Kidneybohnen am meisten, das ein matter Ofen nicht zerstört. Einweichen, das Wasser weggießen und mindestens zehn, besser dreißig Minuten sprudelnd kochen, bevor sie in den Ofen kommen.',
  shellfish:
    'Rohe oder halbgare Muscheln können Vibrionen und Viren tragen; vor dem Kochen tote sind giftig. Bei zugelassenen Händlern kaufen, roh offene und gegart geschlossene wegwerfen, auf 63 °C (145 °F) garen.',
  'wild-mushroom':
    'Giftige Pilze sehen guten leicht ähnlich; Silberlöffel oder Zwiebel sagen nichts. Zuchtpilze nehmen, oder solche, die ein Sachkundiger einzeln bestimmt hat.',
  brains:
    'Hirn und Rückenmark vom Rind dürfen vielerorts wegen BSE nicht als Lebensmittel verkauft werden. Weglassen oder ein anderes Stück nehmen.',
  blood:
    'Blut verdirbt in Stunden und trägt, was das Tier hatte. Geprüftes, als Lebensmittel verkauftes Blut nehmen, kalt halten, auf 74 °C (165 °F) garen.',
  'lead-shot':
    'Mit Blei geschossenes Wild enthält Blei weit um die Wunde. Gezüchtetes oder bleifrei geschossenes nehmen, die Wunde wegschneiden, Kindern und Schwangeren keines geben.',
  'honey-infants': 'Honig kann Säuglingen Botulismus geben, gebacken oder nicht. Kindern unter einem Jahr keinen geben.',
  'bitter-almond':
    'Bittere Mandeln geben Blausäure ab; eine Handvoll kann ein Kind töten. Süße Mandeln mit etwas Mandelextrakt nehmen.',
  kernels: 'Diese Kerne geben Blausäure ab wie bittere Mandeln. Weglassen; einige Tropfen Mandelextrakt nehmen.',
  laurel:
    'Blätter von Pfirsich und Kirschlorbeer geben Blausäure an Milch und Branntwein ab. Vanille, ein Lorbeerblatt (Laurus nobilis) oder einige Tropfen Mandelextrakt nehmen.',
  'almond-oil':
    'Das alte Bittermandelöl enthielt Blausäure und tötete teelöffelweise. Als Lebensmittel verkauften Mandelextrakt nehmen, tropfenweise.',
  'essential-oil':
    'Öle von Nelke, Zimt, Pfefferminze und dergleichen brennen im Mund und sind löffelweise giftig. Einen Extrakt zum Kochen nehmen; höchstens einen Tropfen Öl, als Lebensmittel verkauft.',
  pennyroyal: 'Poleiminze enthält Pulegon, das die Leber zerstört, und kann eine Schwangerschaft beenden. Minze nehmen.',
  tansy:
    'Rainfarn enthält Thujon, das Krämpfe bringt, und kann eine Schwangerschaft beenden. Mit Spinatsaft färben und mit Zitronenschale würzen.',
  rue: 'Raute verbrennt die Haut in der Sonne und kann eine Schwangerschaft beenden. Weglassen.',
  wormwood:
    'Wermut enthält Thujon, das Krämpfe bringt. Weglassen oder einen anderen, als Lebensmittel verkauften Bitterstoff nehmen.',
  tonka:
    'Tonkabohnen enthalten Cumarin, das der Leber schadet; in den Vereinigten Staaten dürfen sie nicht in Lebensmittel. Vanille nehmen.',
  sassafras:
    'Sassafras enthält Safrol, das Krebs erzeugen kann; in den Vereinigten Staaten darf es nicht in Lebensmittel. Einen safrolfreien Extrakt nehmen.',
  comfrey: 'Beinwell und Huflattich enthalten Alkaloide, die die Leber zerstören. Weglassen.',
  'rhubarb-leaf': 'Rhabarberblätter enthalten genug Oxalsäure, um zu vergiften. Nur die Stiele nehmen.',
  elder:
    'Rohe Holunderbeeren, Blätter und Rinde geben Blausäure ab und machen krank. Reife, gegarte Beeren ohne Stiele nehmen, oder die Blüten.',
  hemlock:
    'Schierling, Rebendolde und Aronstab werden leicht für Möhre, Pastinake und Stärkewurzel gehalten. Nehmen, was als Lebensmittel angebaut ist.',
  'green-potato':
    'Grüne oder keimende Kartoffeln enthalten Solanin. Grünes und Augen wegschneiden; durch und durch grüne wegwerfen.',
  foxglove: 'Fingerhut, Bilsenkraut, Nachtschatten, Mohnköpfe und Sadebaum sind Gifte, keine Gewürze. Weglassen.',
  alum: 'Alaun in Brot und Eingelegtem gibt weit mehr Aluminium, als ratsam ist. Weglassen; gutes Mehl und frische Gurken brauchen keines.',
  borax: 'Borax schadet der Fruchtbarkeit und dem Ungeborenen und darf nicht in Lebensmittel. Weglassen.',
  lye: 'Starke Perlasche, Pottasche, Lauge und Kalk verätzen Haut und Augen. In Speisen Natron nehmen; Lauge von der Haut und Essig von ihr fernhalten.',
  acid: 'Salz-, Schwefel- und Salpetersäure verätzen, und die des Handels enthält Arsen und Blei. Ein Rezept mit Backpulver oder Sauermilch nehmen.',
  ammonia:
    'Hirschhornsalz gibt beim Backen Ammoniak ab, das Augen und Lunge reizt und in dickem Gebäck bleibt. Nur für dünnes, knuspriges Gebäck nehmen und lüften, oder Backpulver.',
  copper:
    'Saures löst Kupfer aus Messing und unverzinntem Kupfer, und Grünspan ist Gift; in Messing gegrüntes Eingelegtes ist eben das. Edelstahl oder verzinntes Kupfer nehmen; Saures (pH unter 6) nie in Kupfer oder Messing.',
  'lead-glaze':
    'Alte glasierte Irdenware und Zinn geben Blei an Saures und bei langem Backen ab. Neues, für Lebensmittel verkauftes Geschirr nehmen; Altes nur zeigen.',
  zinc: 'Saures löst Zink aus verzinkten Eimern und macht krank. Edelstahl oder Lebensmittelkunststoff nehmen.',
  'poison-colour':
    'Gummigutt, Zinnober, Mennige, Grünspan und dergleichen sind Gifte. Spinat, Safran, Rote Bete oder eine als Lebensmittel verkaufte Farbe nehmen.',
  'not-food': 'Kampfer, Laudanum, Terpentin und dergleichen sind keine Lebensmittel. Solche Rezepte auf dem Papier lassen.',
  'lead-sweet': 'Bleiglätte und Bleikugeln süßen sauren Wein und vergiften, die ihn trinken. Weglassen; Zucker nehmen.',
  'hot-fat':
    'Fett über etwa 230 °C (445 °F) fängt Feuer, und Wasser lässt es aufspritzen. Einen Deckel bereithalten; ersticken, nie Wasser; nicht allein lassen.',
  'hot-sugar':
    'Kochender Zucker klebt und brennt tief. Einen tiefen Topf und ein Thermometer nehmen; Kinder fern, kaltes Wasser nah.',
  'flaming-spirit':
    'Branntwein und Weingeist geben Dampf ab, der sich am Feuer entzündet. Die Pfanne vom Feuer nehmen und aus einer Tasse gießen, nie aus der Flasche.',
}

/** Sources that are descriptions rather than titles, by id. Titles of laws, standards and books stay as their makers named them. */
export const deSources: Readonly<Record<string, string>> = {
  memory: 'Aus dem Gedächtnis: kein Text zum Nachprüfen zur Hand',
  receipt: 'Die eigene Angabe des Rezepts',
  'common-practice': 'Handwerksbrauch, ohne Quelle',
  'wma-1824': '„Weights and Measures Act“ 1824 (5 Geo. IV c. 74): die imperiale Gallone, gültig ab 1. Januar 1826',
  'queen-anne-1706': 'Statute 5 Anne c. 27 (1706): die Weingallone von 231 Kubikzoll',
  'ale-gallon': 'Die Biergallone von 282 Kubikzoll, nach Zollbrauch bis zum Gesetz von 1824',
  winchester: 'Der Winchester-Scheffel (13 & 14 Will. III c. 5, 1701): 18 1/2 Zoll weit, 8 Zoll tief, 2150,42 Kubikzoll',
  'cfr-101-9': '21 CFR 101.9(b)(5): Haushaltsmaße der Nährwertangabe (Teelöffel 5 ml, Esslöffel 15 ml, Tasse 240 ml)',
  'au-metric': 'Australische metrische Küchenmaße: Tasse 250 ml, Esslöffel 20 ml, Teelöffel 5 ml',
  'uk-metric-spoons': 'Britische metrische Küchenlöffel: Esslöffel 15 ml, Dessertlöffel 10 ml, Teelöffel 5 ml',
  bpharm:
    'Britische Arzneibücher des 19. Jahrhunderts: Teelöffel eine Flüssigdrachme, Dessertlöffel zwei, Esslöffel eine halbe Flüssigunze',
  'pg-9624': 'Maß- und Gewichtstafel eines amerikanischen Kochbuchs von 1837 (Project Gutenberg 9624)',
  'pg-42450': 'Maßtafel eines amerikanischen Haushaltsbuchs von 1879 (Project Gutenberg 42450)',
  'pg-13493': 'Ein amerikanisches Hausfrauenbuch von 1829 (Project Gutenberg 13493)',
  'usda-sr28': '„USDA National Nutrient Database for Standard Reference“, Release 28: Gewichte von Haushaltsmaßen',
  'iupac-weights': 'IUPAC, gekürzte Standardatomgewichte',
  'eu-eggs':
    'Verordnung (EG) Nr. 589/2008 Art. 4: Gewichtsklassen von Hühnereiern (S unter 53 g, M 53–63 g, L 63–73 g, XL ab 73 g)',
  'eu-1169': 'Verordnung (EU) Nr. 1169/2011, Anhang II: Stoffe oder Erzeugnisse, die Allergien oder Unverträglichkeiten auslösen',
  'us-falcpa': 'US „Food Allergen Labeling and Consumer Protection Act“ von 2004, mit dem FASTER Act von 2021 (Sesam)',
  'usda-fsis-danger-zone': 'USDA FSIS, „Danger Zone“ (40–140 °F): höchstens zwei Stunden, über 90 °F eine Stunde',
  'fda-food-code': 'FDA Food Code 2022, Kapitel 3: Sicherheit durch Zeit und Temperatur',
  'oven-table': 'Die verbreitete gedruckte Tafel der Ofenwörter (kühl 200 °F … sehr heiß 450–500 °F)',
  'us-home-economics':
    'Hauswirtschaftliche Blätter der USA, 1920er bis 1940er: langsam 250–325, mäßig 325–400, heiß 400–450, sehr heiß 450–500 °F',
  'us-household-1938': 'Ein Haushaltskochbuch der USA von etwa 1938: Temperaturen und Zeiten nach Gericht',
  'white-1932': 'F. White, „Good Things in England“: Ofenproben mit weißem Papier',
  'paper-flour-table':
    'Die verbreitete Tafel der Papier- und Mehlproben (hellbraun langsam, goldgelb mäßig, dunkelbraun heiß, in 5 Minuten)',
  'gas-mark-table':
    'Die britische Gasstufenskala (Regulo): Stufe 1 ist 275 °F, jede weitere 25 °F mehr; ein Viertel 225, ein Halb 250',
  'fan-oven': 'Rat der Hersteller für Umluftöfen: 20 °C niedriger einstellen als ohne Umluft',
  'engineering-table': 'Verbreitete Ingenieurtafel der Baustoffe (Schwerbeton)',
  'low-vermiculite': 'N. M. P. Low, Wärmedämmung von Vermiculit',
  'cereal-technology-2016': 'Wärmeaufnahme beim Brotbacken, ZHAW, Cereal Technology',
  'rumford-munich': 'Graf Rumford, Essays: der Backhausversuch in München, 1794',
  'api-521': 'API Standard 521, Zeit bis zum Schmerz bloßer Haut unter Strahlungswärme',
  'arm-accounts': 'Überlieferte und museale Berichte über die Armprobe',
  'cdc-botulism': 'US CDC, Botulism: Vorbeugung (Eingemachtes, Honig und Säuglinge)',
  'usda-fsis-curing': '9 CFR 424.21 und Leitlinien des USDA FSIS: Pökelstoffe in Fleisch',
  'usda-fsis-srm': '9 CFR 310.22: spezifizierte Risikomaterialien vom Rind',
  'fda-bad-bug': 'FDA, Bad Bug Book, 2. Aufl.: Phytohämagglutinin (Lektin der Kidneybohne)',
  'efsa-cyanide': 'EFSA Journal 2016;14(4):4424, cyanogene Glykoside in rohen Aprikosenkernen',
  'efsa-aluminium': 'EFSA Journal 2008;754, Sicherheit von Aluminium aus der Nahrung',
  'eu-1334': 'Verordnung (EG) Nr. 1334/2008 über Aromen, Anhang III: Thujon, Pulegon, Cumarin, Blausäure',
  'eu-1333': 'Verordnung (EG) Nr. 1333/2008 über Lebensmittelzusatzstoffe: Borsäure und Borax (E 284, E 285) nur in Kaviar',
  'cfr-189-130': '21 CFR 189.130: Cumarin und Tonka sind in Lebensmitteln verboten',
  'cfr-189-180': '21 CFR 189.180: Safrol und Sassafras sind in Lebensmitteln verboten',
  'cfr-73': '21 CFR 73 und 74: in Lebensmitteln erlaubte Farben',
  'fda-comfrey': 'FDA-Warnung zu Beinwell (Pyrrolizidinalkaloide)',
  'cdc-elder': 'US CDC, MMWR 33(13), 1984: Vergiftung durch Holunderbeersaft',
}
