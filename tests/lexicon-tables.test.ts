import {readFileSync} from 'node:fs'
import {describe, expect, it} from 'vitest'
import {z} from 'zod'
import {askedWords} from '../src/lexicon/asked-words.js'
import {coreHeats} from '../src/lexicon/core-heats.js'
import {deedWords} from '../src/lexicon/deed-words.js'
import {doughWeightWords} from '../src/lexicon/dough-weights.js'
import {coldPlaces, kneading, shapings, warmDough} from '../src/lexicon/dough-work.js'
import {eveningWords} from '../src/lexicon/evening-words.js'
import {fleshNames} from '../src/lexicon/flesh-names.js'
import {fleshWords} from '../src/lexicon/flesh-words.js'
import {grammarTables} from '../src/lexicon/grammar-words.js'
import {headingWords} from '../src/lexicon/heading-words.js'
import {
  cautions,
  fold,
  hedgeAmounts,
  itemAt,
  itemOf,
  items,
  kinds,
  lookUpCaution,
  lookUpItem,
  lookUpMeasure,
  lookUpPlace,
  lookUpSource,
  measureOf,
  measures,
  sources,
} from '../src/lexicon/index.js'
import {kindsByItems} from '../src/lexicon/kinds-by-items.js'
import {logHeads} from '../src/lexicon/log-heads.js'
import {makings} from '../src/lexicon/making-work.js'
import {noteWords} from '../src/lexicon/note-words.js'
import {nutritionWords} from '../src/lexicon/nutrition-words.js'
import {outcomeWords} from '../src/lexicon/outcome-words.js'
import {ovenFoods} from '../src/lexicon/oven-foods.js'
import {readingWords} from '../src/lexicon/reading-words.js'
import {
  askedWordSchema,
  cautionSchema,
  coldPlaceSchema,
  coreHeatSchema,
  deedWordSchema,
  doughWeightWordSchema,
  eveningWordSchema,
  fleshNameSchema,
  fleshWordSchema,
  grammarTableSchema,
  headingWordSchema,
  itemSchema,
  kindByItemsSchema,
  kindSchema,
  kneadingSchema,
  logHeadSchema,
  makingSchema,
  measureSchema,
  noteWordSchema,
  nutritionWordSchema,
  outcomeWordSchema,
  ovenFoodSchema,
  readingWordSchema,
  shapingSchema,
  sourceSchema,
  stageHeadSchema,
  timeSpanSchema,
  timeUnitSchema,
  timeWordSchema,
  vesselWordSchema,
  warmDoughSchema,
  wholePieceSchema,
  yieldWordSchema,
} from '../src/lexicon/schema.js'
import {stageHeads} from '../src/lexicon/stage-heads.js'
import {timeSpans, timeUnits, timeWords} from '../src/lexicon/time-words.js'
import {vesselWords} from '../src/lexicon/vessel-words.js'
import {wholePieces} from '../src/lexicon/whole-pieces.js'
import {yieldWords} from '../src/lexicon/yield-words.js'

/** The canonical measures of the translate contract. */
const CANONICAL =
  'pound ounce drachm grain pennyweight stone gallon quart pint gill bushel peck quartern drop tablespoon dessertspoon teaspoon saltspoon spoon teacup coffeecup breakfastcup cup wineglass glass tumbler bowl bottle plate saucer porringer basin handful pinch count blade stick clove slice head sprig bunch sheet loaf piece leaf root pennyworth indefinite gram kilogram millilitre litre'.split(
    ' ',
  )
const COMPARISONS = ['size of an egg', 'size of a walnut', 'size of a nutmeg', 'weight of an egg']

describe('the tables', () => {
  const tables = [
    ['measures', measureSchema, measures],
    ['items', itemSchema, items],
    ['sources', sourceSchema, sources],
    ['cautions', cautionSchema, cautions],
    ['kinds', kindSchema, kinds],
    ['kindsByItems', kindByItemsSchema, kindsByItems],
    ['ovenFoods', ovenFoodSchema, ovenFoods],
    ['coreHeats', coreHeatSchema, coreHeats],
    ['fleshNames', fleshNameSchema, fleshNames],
    ['fleshWords', fleshWordSchema, fleshWords],
    ['wholePieces', wholePieceSchema, wholePieces],
    ['eveningWords', eveningWordSchema, eveningWords],
    ['headingWords', headingWordSchema, headingWords],
    ['yieldWords', yieldWordSchema, yieldWords],
    ['askedWords', askedWordSchema, askedWords],
    ['deedWords', deedWordSchema, deedWords],
    ['noteWords', noteWordSchema, noteWords],
    ['nutritionWords', nutritionWordSchema, nutritionWords],
    ['outcomeWords', outcomeWordSchema, outcomeWords],
    ['readingWords', readingWordSchema, readingWords],
    ['logHeads', logHeadSchema, logHeads],
    ['grammarTables', grammarTableSchema, grammarTables],
    ['stageHeads', stageHeadSchema, stageHeads],
    ['doughWeightWords', doughWeightWordSchema, doughWeightWords],
    ['vesselWords', vesselWordSchema, vesselWords],
    ['timeUnits', timeUnitSchema, timeUnits],
    ['timeSpans', timeSpanSchema, timeSpans],
    ['timeWords', timeWordSchema, timeWords],
    ['kneading', kneadingSchema, [kneading]],
    ['shapings', shapingSchema, shapings],
    ['coldPlaces', coldPlaceSchema, coldPlaces],
    ['warmDough', warmDoughSchema, [warmDough]],
    ['makings', makingSchema, makings],
  ] as const
  for (const [name, schema, rows] of tables) {
    it(`${name}: every row fits its schema and no id stands twice`, () => {
      const read = z.array(schema as z.ZodType).safeParse(rows)
      expect(
        read.error?.issues.map((issue) => `${JSON.stringify(rows[Number(issue.path[0])])?.slice(0, 60)}: ${issue.message}`) ?? [],
      ).toEqual([])
      const ids = rows.map((row) => row.id)
      expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([])
    })
  }

  it('are as long as the job needs', () => {
    expect(measures.length).toBeGreaterThanOrEqual(90)
    expect(items.length).toBeGreaterThanOrEqual(400)
    expect(cautions.length).toBeGreaterThanOrEqual(40)
    expect(kinds.length).toBeGreaterThanOrEqual(40)
    expect(items.filter((item) => item.density !== undefined).length).toBeGreaterThanOrEqual(120)
  })

  it('name only sources that exist', () => {
    const named = [
      ...measures.flatMap((row) => row.sizes.map((size) => size.source)),
      ...items.flatMap((row) => [
        ...row.sources,
        ...(row.densitySource === undefined ? [] : [row.densitySource]),
        ...(row.replacedBy === undefined ? [] : [row.replacedBy.source]),
        ...row.pieces.map((piece) => piece.source),
      ]),
      ...cautions.map((row) => row.source),
      ...kinds.map((row) => row.source),
      ...hedgeAmounts.map((row) => row.source),
    ]
    expect([...new Set(named)].filter((id) => lookUpSource(id) === null)).toEqual([])
  })

  it('say every temperature of a caution in °F as well: some kitchens have no other thermometer', () => {
    for (const {id, harm, instead} of cautions)
      for (const sentence of [harm, instead]) expect(sentence.match(/\d °C(?! \()/)?.[0], `${id}: ${sentence}`).toBeUndefined()
  })
  it('name only cautions that exist, and every caution is raised by something', () => {
    const named = new Set([...items.flatMap((row) => row.cautions), ...kinds.flatMap((row) => row.cautions)])
    expect([...named].filter((id) => lookUpCaution(id) === null)).toEqual([])
    expect(cautions.filter((row) => row.words.length === 0 && !named.has(row.id)).map((row) => row.id)).toEqual([])
  })

  it('give every item that has a density a source for it, and weigh pieces in measures that exist', () => {
    expect(items.filter((row) => (row.density === undefined) !== (row.densitySource === undefined)).map((row) => row.id)).toEqual(
      [],
    )
    expect(items.flatMap((row) => row.pieces.map((piece) => piece.measure)).filter((id) => lookUpMeasure(id) === null)).toEqual(
      [],
    )
  })

  it('name allergens only by the names of Regulation (EU) 1169/2011 annex II and the US FALCPA', () => {
    // Annex II nos. 1–14, cereals by name as the annex asks; FALCPA with the FASTER Act adds no other.
    const names =
      'wheat rye barley oats crustaceans egg fish peanuts soybeans milk nuts celery mustard sesame sulphites lupin molluscs'.split(
        ' ',
      )
    expect([...new Set(items.flatMap((row) => row.allergens))].filter((name) => !names.includes(name))).toEqual([])
  })

  it('keep no spelling of one item under another, but where the first is meant', () => {
    // A spelling that stands in two rows would be read as the first and the second could never be found by it.
    const owner = new Map<string, string>()
    const twice: string[] = []
    for (const item of items) {
      for (const spelling of item.spellings) {
        const key = spelling
          .split(/[\s-]+/)
          .map(fold)
          .join('')
        const first = owner.get(key)
        if (first !== undefined && first !== item.id) twice.push(`${spelling}: ${first}, ${item.id}`)
        if (first === undefined) owner.set(key, item.id)
      }
    }
    expect(twice).toEqual([])
  })

  it('write every spelling clean: no space at an end, no comma left in', () => {
    const spellings = [...measures, ...items]
      .flatMap((row) => row.spellings)
      .concat(
        cautions.flatMap((row) => row.words),
        kinds.flatMap((row) => [...row.words, ...(row.titles ?? [])]),
      )
    expect(spellings.filter((spelling) => spelling !== spelling.trim() || spelling === '' || /[,;]| {2}/.test(spelling))).toEqual(
      [],
    )
  })

  it('do not run zod when they are loaded', () => {
    for (const file of [
      'measures',
      'items',
      'items-flour',
      'sources',
      'cautions',
      'kinds',
      'index',
      'row',
      'places',
      'hedge-amounts',
    ]) {
      const text = readFileSync(new URL(`../src/lexicon/${file}.ts`, import.meta.url), 'utf8')
      expect(text, file).not.toMatch(/from 'zod'|import \{[^}]*\} from '\.\/schema\.js'/)
    }
  })
})

describe('looking up', () => {
  it('knows every canonical measure by its own name', () => {
    for (const id of [...CANONICAL, ...COMPARISONS]) {
      expect(lookUpMeasure(id)?.id, id).toBe(id)
      expect(measureOf(id.split(' '))?.row.id, id).toBe(id)
    }
  })

  // Spellings of the period from general knowledge.
  it.each([
    ['jills', 'gill'],
    ['pds', 'pound'],
    ['lb.', 'pound'],
    ['lbs.', 'pound'],
    ['oz.', 'ounce'],
    ['qrs', 'quart'],
    ['drams', 'drachm'],
    ['tea-cupful', 'teacup'],
    ['tea-cupfuls', 'teacup'],
    ['tea-cupsful', 'teacup'],
    ['teacups full', 'teacup'],
    ['coffee-cupful', 'coffeecup'],
    ['breakfast-cupful', 'breakfastcup'],
    ['table-spoonfuls', 'tablespoon'],
    ['tablespoonsful', 'tablespoon'],
    ['dessert-spoonful', 'dessertspoon'],
    ['tea spoonfuls', 'teaspoon'],
    ['salt-spoonful', 'saltspoon'],
    ['spoonsful', 'spoon'],
    ['spoonful', 'spoon'],
    ['wine-glassful', 'wineglass'],
    ['wine glasses', 'wineglass'],
    ['handsful', 'handful'],
    ['penny-worth', 'pennyworth'],
    ['kg', 'kilogram'],
    ['ml', 'millilitre'],
    ['tbsp.', 'tablespoon'],
    ['tsp', 'teaspoon'],
    ['bigness of a walnut', 'size of a walnut'],
    ['size of a hen’s egg', 'size of an egg'],
  ])('reads the measure “%s” as %s', (text, id) => {
    const words = text.split(' ')
    expect(measureOf(words)).toMatchObject({row: {id}, length: words.length})
  })

  it.each([
    ['yelks of eggs', 'egg yolk'],
    ['yolks', 'egg yolk'],
    ['whites of eggs', 'egg white'],
    ['loaf-sugar', 'loaf sugar'],
    ['lump sugar', 'loaf sugar'],
    ['emptyings', 'emptins'],
    ['sallaratus', 'saleratus'],
    ['pearlash', 'pearl-ash'],
    ['pearl ash', 'pearl-ash'],
    ['Indian meal', 'indian meal'],
    ['corn-meal', 'indian meal'],
    ['flower', 'flour'],
    ['raisins of the sun', 'raisin'],
    ['barm', 'yeast'],
    ['yest', 'yeast'],
    ['rosewater', 'rose-water'],
    ['rose water', 'rose-water'],
    ['orange-flower water', 'orange-flower water'],
    ['all-spice', 'allspice'],
    ['carraway seeds', 'caraway seed'],
    ['cocoa-nuts', 'coconut'],
    ['anchovies', 'anchovy'],
    ['cherries', 'cherry'],
    ['potatoes', 'potato'],
    ['peel of a lemon', 'lemon rind'],
    ['juice of a lemon', 'lemon juice'],
    ['bay-leaves', 'bay leaf'],
    ['neat’s tongue', 'tongue'],
    ['caster sugar', 'sugar'],
    ['bicarbonate of soda', 'baking soda'],
    ['cream of tartar', 'cream of tartar'],
    ['pie-plant', 'rhubarb'],
  ])('reads the item “%s” as %s', (text, id) => {
    const words = text.split(' ')
    expect(itemOf(words)).toMatchObject({row: {id}, length: words.length})
  })

  it('takes the longest item and leaves the words after it', () => {
    expect(itemAt(['one', 'loaf', 'sugar', 'finely', 'pounded'], 1)).toMatchObject({row: {id: 'loaf sugar'}, length: 2})
    expect(itemOf(['cream', 'of', 'the', 'day'])).toMatchObject({row: {id: 'cream'}, length: 1})
    expect(itemOf(['wug'])).toBeNull()
    expect(itemOf(['constructor'])).toBeNull()
    expect(fold('constructor')).toBe('constructor')
    expect(['Glacé', 'ſalæratus', 'CRÈME'].map(fold)).toEqual(['glace', 'salaeratus', 'creme'])
    expect(measureOf([])).toBeNull()
  })

  it('folds plurals of both kinds and keeps words that only look plural', () => {
    expect(['loaves', 'leaves', 'cherries', 'glasses', 'pinches', 'molasses', 'asparagus', 'glass'].map(fold)).toEqual([
      'loaf',
      'leaf',
      'cherry',
      'glass',
      'pinch',
      'molass',
      'asparagus',
      'glass',
    ])
  })

  it('finds an item by its id or by any whole spelling', () => {
    expect(lookUpItem('indian meal')?.id).toBe('indian meal')
    expect(lookUpItem('Stoned raisins')?.id).toBe('raisin')
    expect(lookUpItem('no such thing')).toBeNull()
  })

  it.each([
    ['Hartford, Connecticut', 'us'],
    ['London', 'uk'],
    ['England', 'uk'],
    ['New England', 'us'],
    ['the north of England', 'uk'],
    ['U.S.A.', 'us'],
    ['Sydney, New South Wales', 'au'],
    ['Cambridge, Massachusetts', 'us'],
    ['New York', 'us'],
    ['York', 'uk'],
    ['DE', 'eu'],
    ['Deutschland', 'eu'],
    ['Wien, Österreich', 'eu'],
    ['at Bath', 'uk'],
  ])('reads the place “%s” as %s', (text, place) => expect(lookUpPlace(text)).toBe(place))

  it('does not guess a place it does not know', () => expect(lookUpPlace('Erewhon')).toBeNull())
})
