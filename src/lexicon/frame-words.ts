import {words} from './row.js'

/**
 * What in a receipt without a `year:` or `place:` line tells that it is modern, old, American, British or Australian. `in` says where it must stand:
 * in an ingredient's own words, as its measure, as its item, or in an oven phrase. From memory.
 */
export interface FrameRow {
  readonly says: 'modern' | 'old' | 'us' | 'uk' | 'au'
  readonly in: 'words' | 'measure' | 'item' | 'oven'
  readonly words: readonly string[]
  readonly source: string
}

export const frameRows: readonly FrameRow[] = [
  {
    says: 'modern',
    in: 'measure',
    words: words('milligram, gram, kilogram, millilitre, centilitre, decilitre, litre, tin, packet'),
    source: 'memory',
  },
  {says: 'modern', in: 'oven', words: words('°, º, degree, celsius, fahrenheit, gas mark, gas, fan'), source: 'memory'},
  {
    says: 'modern',
    in: 'item',
    words: words(
      'dry yeast, self-raising flour, chocolate chip, vegetable oil, milk powder, evaporated milk, condensed milk, golden syrup, peanut butter, margarine, gluten',
    ),
    source: 'memory',
  },
  {
    says: 'modern',
    in: 'words',
    words: words(
      'all-purpose, all purpose flour, plain flour, caster sugar, icing sugar, confectioners, kosher, tsp, tbsp, strong white, strong bread, double cream, heavy cream, unsalted, free-range, extra virgin, vanilla extract',
    ),
    source: 'memory',
  },
  {
    says: 'old',
    in: 'measure',
    words: words(
      'wineglass, teacup, coffeecup, breakfastcup, saltspoon, drachm, size of an egg, size of a walnut, size of a nutmeg, weight of an egg, peck, quartern, pennyworth, gill, pottle',
    ),
    source: 'memory',
  },
  {
    says: 'old',
    in: 'item',
    words: words(
      'saleratus, pearl-ash, potash, emptins, loaf sugar, isinglass, sack, moist sugar, hartshorn shavings, capillaire, naples biscuit',
    ),
    source: 'memory',
  },
  {
    says: 'us',
    in: 'words',
    words: words(
      'all-purpose, all purpose flour, confectioners, kosher, heavy cream, half-and-half, half and half, cornstarch, graham cracker, sticks butter, stick butter, stick of butter, sticks of butter, sticks unsalted, stick unsalted, light brown sugar, molasses',
    ),
    source: 'memory',
  },
  {says: 'us', in: 'oven', words: words('°f, º f, ° f, fahrenheit'), source: 'memory'},
  {
    says: 'uk',
    in: 'words',
    words: words(
      'caster sugar, icing sugar, self-raising, plain flour, double cream, single cream, bicarbonate of soda, cornflour, strong white, strong bread, wholemeal, sultanas, golden syrup, black treacle, demerara, desiccated, digestive',
    ),
    source: 'memory',
  },
  {says: 'uk', in: 'oven', words: words('gas mark, gas, fan'), source: 'memory'},
  {says: 'au', in: 'oven', words: words('fan-forced, fan forced'), source: 'memory'},
  {
    says: 'au',
    in: 'words',
    words: words(
      'pepitas, bicarb soda, thickened cream, tasty cheese, copha, rice bubbles, macadamias, kent pumpkin, wholemeal plain flour',
    ),
    source: 'memory',
  },
]
