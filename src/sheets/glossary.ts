/**
 * Words of old receipts explained in one plain sentence each, for the word list of a handout. `source` is the id of a row of
 * `lexicon/sources`. A new word is a new row; `spellings` are lower case, singular; a plural in -s or -es is found too.
 */
export interface Term {
  readonly term: string
  readonly spellings: readonly string[]
  readonly en: string
  readonly de: string
  readonly source: string
}

const row = (term: string, spellings: string, en: string, de: string, source = 'common-practice'): Term => ({
  term,
  spellings: spellings.split(',').map((word) => word.trim()),
  en,
  de,
  source,
})

export const glossary: readonly Term[] = [
  // Measures
  row(
    'gill',
    'gill, jill',
    'A quarter of a pint: about 118 ml in America, 142 ml in Britain from 1826.',
    'Ein viertel Pint: etwa 118 ml in Amerika, 142 ml in Großbritannien ab 1826.',
    'nist-hb44',
  ),
  row(
    'peck',
    'peck',
    'A dry measure: a quarter of a bushel, about 9 litres.',
    'Ein Trockenmaß: ein viertel Bushel, etwa 9 Liter.',
    'nist-hb44',
  ),
  row(
    'bushel',
    'bushel',
    'A dry measure of four pecks, about 35 litres.',
    'Ein Trockenmaß von vier Pecks, etwa 35 Liter.',
    'nist-hb44',
  ),
  row(
    'dram',
    'dram, drachm',
    'A small weight, a sixteenth of an ounce: about 1.8 g (the apothecary’s drachm is 3.9 g).',
    'Ein kleines Gewicht, ein Sechzehntel einer Unze: etwa 1,8 g (die Apothekerdrachme wiegt 3,9 g).',
    'nist-hb44',
  ),
  row(
    'tea-cup',
    'teacup, tea-cup, tea cup, teacupful, tea-cupful, tea cupful',
    'A cup from the tea table, smaller than a measuring cup and never the same twice.',
    'Eine Tasse vom Teetisch, kleiner als eine Messtasse und nie zweimal gleich.',
  ),
  row(
    'coffee-cup',
    'coffee cup, coffee-cup, coffeecup, coffee-cupful',
    'A larger cup than a tea-cup; near the modern measuring cup.',
    'Größer als eine Teetasse; nahe an der heutigen Messtasse.',
  ),
  row(
    'wine-glass',
    'wineglass, wine-glass, wine glass, wineglassful, wine-glassful',
    'A small glass of about 60 ml, used as a measure.',
    'Ein kleines Glas von etwa 60 ml, als Maß gebraucht.',
  ),
  row(
    'tumbler',
    'tumbler, tumblerful',
    'A drinking glass used as a measure, about half a pint.',
    'Ein Trinkglas als Maß, etwa ein halbes Pint.',
  ),
  row(
    'saltspoon',
    'saltspoon, salt-spoon, salt spoon, saltspoonful, salt-spoonful',
    'A very small spoon, about a quarter of a teaspoon.',
    'Ein sehr kleiner Löffel, etwa ein viertel Teelöffel.',
  ),
  row(
    'butter the size of an egg',
    'size of an egg, size of a walnut, size of a nutmeg, big as an egg, large as an egg',
    'A lump judged by eye; everyone in the kitchen knew how big an egg was.',
    'Ein nach Augenmaß genommenes Stück; jeder in der Küche wusste, wie groß ein Ei ist.',
  ),
  row(
    'the weight of eggs',
    'weight of the eggs, their weight, weight of four eggs, weight of six eggs, weight of eight eggs, weight of ten eggs',
    'The eggs are laid on one pan of the scales and the flour or sugar on the other.',
    'Die Eier liegen auf der einen Waagschale, Mehl oder Zucker auf der anderen.',
  ),
  row(
    'pennyworth',
    'pennyworth, penn’orth, cent’s worth',
    'As much as a penny bought; it tells the price then, not the amount.',
    'So viel, wie man für einen Penny bekam; sagt etwas über den Preis, nicht über die Menge.',
  ),
  // Leaven
  row(
    'pearl-ash',
    'pearlash, pearl-ash, pearl ash, pearl-ashes, pearlashes',
    'Potassium carbonate washed out of wood ash; it raised gingerbread before baking soda was sold.',
    'Kaliumcarbonat (Pottasche), aus Holzasche gewaschen; trieb Lebkuchen, bevor es Natron zu kaufen gab.',
  ),
  row(
    'saleratus',
    'saleratus, salaeratus',
    'An early baking soda (potassium or, later, sodium bicarbonate).',
    'Ein frühes Natron (Kalium-, später Natriumhydrogencarbonat).',
  ),
  row(
    'yeast, barm',
    'barm, ale yeast, brewer’s yeast, brewers’ yeast, distillery yeast',
    'Live yeast skimmed from working beer; thinner and weaker than yeast from a packet, and never twice as strong.',
    'Lebende Hefe, von gärendem Bier geschöpft; dünner und schwächer als Hefe aus dem Päckchen.',
  ),
  row(
    'emptins',
    'emptin, emptins, emptyings',
    'Home-made yeast kept from the settlings of beer or cider.',
    'Hausgemachte Hefe aus dem Bodensatz von Bier oder Most.',
  ),
  row(
    'hartshorn',
    'hartshorn, volatile salts, sal volatile',
    'Baker’s ammonia (ammonium carbonate); only for thin, dry cakes, because its gas must bake out.',
    'Hirschhornsalz (Ammoniumcarbonat); nur für flaches, trockenes Gebäck, weil das Gas ausbacken muss.',
  ),
  row(
    'cream of tartar',
    'cream of tartar, cream tartar',
    'An acid salt from wine casks; with soda it makes baking powder.',
    'Weinstein, ein saures Salz aus Weinfässern; mit Natron ergibt es Backpulver.',
  ),
  row(
    'sponge',
    'sponge, a sponge, set a sponge',
    'A thin batter of flour, water and yeast left to work before the rest of the flour goes in.',
    'Ein Vorteig: dünner Teig aus Mehl, Wasser und Hefe, der vor dem Kneten gehen darf.',
  ),
  // Things
  row(
    'Indian meal',
    'indian meal, indian, rye and indian',
    'Ground maize (corn meal).',
    'Gemahlener Mais (Maismehl, Maisgrieß).',
  ),
  row(
    'molasses, treacle',
    'molasses, treacle',
    'The dark syrup left when sugar is boiled out of cane juice.',
    'Der dunkle Sirup, der beim Sieden von Rohrzucker übrig bleibt (Melasse).',
  ),
  row(
    'loaf sugar',
    'loaf sugar, lump sugar, broken sugar',
    'White sugar sold in a hard cone; it had to be pounded and sifted.',
    'Weißer Zucker in harten Hüten; er musste gestoßen und gesiebt werden.',
  ),
  row(
    'powdered sugar',
    'powdered sugar, pounded sugar, sifted sugar',
    'Loaf sugar pounded and sifted: like fine white sugar, not like icing sugar with starch.',
    'Gestoßener, gesiebter Hutzucker: wie feiner Zucker, kein Puderzucker mit Stärke.',
  ),
  row('moist sugar', 'moist sugar', 'Soft brown sugar.', 'Weicher brauner Zucker.'),
  row(
    'suet',
    'suet',
    'Hard white fat from around the kidneys of beef or mutton.',
    'Hartes weißes Nierenfett vom Rind oder Schaf (Talg).',
  ),
  row(
    'mace',
    'mace',
    'The dried net around the nutmeg, a finer nutmeg flavour.',
    'Das getrocknete Netz um die Muskatnuss (Muskatblüte).',
  ),
  row(
    'rose-water',
    'rose-water, rose water, rosewater',
    'Water distilled from rose petals, a usual flavour before vanilla.',
    'Aus Rosenblättern destilliertes Wasser, üblicher Geschmack vor der Vanille.',
  ),
  row('sack', 'sack', 'A sweet strong white wine; use sherry.', 'Süßer starker Weißwein; heute Sherry.'),
  row(
    'sweet milk, new milk',
    'sweet milk, new milk',
    'Fresh whole milk, not soured; new milk is still warm from the cow.',
    'Frische Vollmilch, nicht gesäuert; „new milk“ ist noch kuhwarm.',
  ),
  row(
    'loppered milk',
    'loppered milk, clabber, bonny-clabber, sour milk',
    'Milk thickened by souring; use buttermilk or thin yoghurt, not spoiled milk.',
    'Dickgelegte saure Milch; heute Buttermilch oder dünner Joghurt, nie verdorbene Milch.',
  ),
  row(
    'currants, plums',
    'plum, currant',
    'Small dried grapes. “Plum” in old cakes mostly means raisins or currants.',
    'Korinthen. „Plum“ heißt in alten Kuchen meist Rosinen oder Korinthen.',
  ),
  row(
    'citron',
    'citron',
    'Candied peel of a large thick-skinned lemon.',
    'Zitronat: kandierte Schale einer dickschaligen Zitrone.',
  ),
  row(
    'isinglass',
    'isinglass',
    'A gelling stuff from fish bladders; use gelatine.',
    'Hausenblase, ein Geliermittel; heute Gelatine.',
  ),
  row('paste', 'paste, puff paste, crust paste', 'Pastry dough.', 'Mürbe- oder Blätterteig (Pastetenteig).'),
  row(
    'forcemeat',
    'forcemeat',
    'A seasoned stuffing of chopped meat or crumbs.',
    'Gewürzte Farce aus gehacktem Fleisch oder Bröseln.',
  ),
  // Doing
  row('receipt', 'receipt', 'The old word for a recipe.', 'Das alte Wort für „recipe“, Rezept.'),
  row(
    'blood-warm',
    'blood-warm, blood warm, lukewarm, milk-warm, milk warm',
    'As warm as the hand: about 35 to 40 °C (95 to 105 °F).',
    'Handwarm: etwa 35 bis 40 °C (95 bis 105 °F).',
  ),
  row('sear, searce', 'searce, searced, sarse', 'To sift through fine cloth or hair.', 'Durch feines Tuch oder Haarsieb sieben.'),
  row(
    'to work',
    'work well, set to work',
    'Of dough: to knead; of yeast: to ferment.',
    'Beim Teig: kneten; bei der Hefe: gären.',
  ),
  row('froth', 'froth, stiff froth', 'Egg whites beaten till they stand.', 'Steif geschlagener Eischnee.'),
  row('prove', 'prove, proved', 'The last rising of dough before it is baked.', 'Die letzte Gare des Teigs vor dem Backen.'),
  row('temper', 'temper', 'To bring to the right stiffness or warmth.', 'Auf die richtige Festigkeit oder Wärme bringen.'),
  row('stone', 'stone the raisins, stoned', 'To take the seeds or stones out.', 'Entkernen.'),
  row('blanch', 'blanch, blanched', 'To dip in boiling water and take the skin off.', 'Überbrühen und häuten.'),
  // Oven and vessels
  row(
    'quick or brisk oven',
    'quick oven, brisk oven, hot oven, sharp oven, smart oven',
    'A hot oven, about 205 to 260 °C (400 to 500 °F).',
    'Ein heißer Ofen, etwa 205 bis 260 °C (400 bis 500 °F).',
  ),
  row(
    'moderate oven',
    'moderate oven, middling oven, soaking oven, moderately hot oven, tolerably hot oven',
    'An oven of about 163 to 205 °C (325 to 400 °F).',
    'Ein Ofen von etwa 163 bis 205 °C (325 bis 400 °F).',
  ),
  row(
    'slow or gentle oven',
    'slow oven, gentle oven, cool oven',
    'An oven of about 121 to 163 °C (250 to 325 °F).',
    'Ein Ofen von etwa 121 bis 163 °C (250 bis 325 °F).',
  ),
  row(
    'slack oven',
    'slack oven, after the bread is drawn, after the bread',
    'An oven that has fallen far: about 79 to 121 °C (175 to 250 °F); good for beans and drying.',
    'Ein weit gefallener Ofen: etwa 79 bis 121 °C (175 bis 250 °F); gut für Bohnen und zum Dörren.',
  ),
  row('draw', 'draw, drawn', 'To take out of the oven.', 'Aus dem Ofen holen, ausziehen.'),
  row(
    'peel',
    'peel',
    'The long flat shovel that sets bread in and draws it.',
    'Der Schießer: die lange flache Schaufel, die Brot ein- und ausschießt.',
  ),
  row(
    'hoop',
    'hoop',
    'A ring of wood or tin that holds a tall cake; today a deep tin.',
    'Ein Ring aus Holz oder Blech für hohe Kuchen; heute eine hohe Form.',
  ),
  row(
    'patty-pan',
    'patty-pan, patty pan, pattypan',
    'A small shallow tin for little cakes and pies.',
    'Ein kleines flaches Förmchen.',
  ),
  row(
    'crock',
    'crock, bean-pot, bean pot, jar',
    'A thick stoneware pot, often with a lid.',
    'Ein dickwandiger Steinzeugtopf, oft mit Deckel.',
  ),
  row('coffin', 'coffin', 'An old word for the pastry case of a pie.', 'Altes Wort für die Teighülle einer Pastete.'),
  row('spider', 'spider', 'A frying pan with legs, to stand over coals.', 'Eine Pfanne mit Beinen, über die Glut gestellt.'),
]

/** The rows whose words stand in a text, in the order of the text. Whole words only. */
export function termsIn(text: string): Term[] {
  const plain = ` ${text
    .toLowerCase()
    .replace(/[‘’]/g, '’')
    .replace(/[^a-zà-ÿ’-]+/g, ' ')} `
  return glossary
    .map((term) => ({term, at: Math.min(...term.spellings.map((word) => firstAt(plain, word)))}))
    .filter(({at}) => at < Infinity)
    .sort((a, b) => a.at - b.at)
    .map(({term}) => term)
}

/** Where a word stands first, alone or as a plural; a place behind every other where it does not. */
function firstAt(plain: string, word: string): number {
  for (let at = plain.indexOf(` ${word}`); at >= 0; at = plain.indexOf(` ${word}`, at + 1)) {
    const end = at + 1 + word.length
    const next = plain[end]
    if (next === ' ') return at
    if (next === 's' && plain[end + 1] === ' ') return at
    if (next === 'e' && plain[end + 1] === 's' && plain[end + 2] === ' ') return at
  }
  return Infinity
}
