import {words} from './row.js'
import type {Caution} from './schema.js'

/** Things in old receipts that harm, each with a public source and what to do instead. */
export const cautions: readonly Caution[] = [
  {
    id: 'raw-egg',
    title: 'Raw or lightly cooked egg',
    harm: 'Raw egg can carry Salmonella.',
    instead: 'Use pasteurised eggs where the egg is not cooked to 71 °C (160 °F).',
    source: 'fda-eggs',
    words: words('raw egg, raw eggs, egg icing, royal icing, frosting of egg'),
  },
  {
    id: 'raw-flour',
    title: 'Raw flour',
    harm: 'Flour is raw and can carry E. coli and Salmonella.',
    instead: 'Do not taste raw dough or batter; bake everything that holds flour.',
    source: 'fda-raw-flour',
    words: words('taste the dough, taste the batter'),
  },
  {
    id: 'warm-cream',
    title: 'Custard or cream kept warm',
    harm: 'Custards, creams and egg fillings grow bacteria between 5 and 57 °C.',
    instead: 'Eat within two hours, or cool quickly and keep at 5 °C (41 °F) or below.',
    source: 'fda-food-code',
    words: [],
  },
  {
    id: 'meat-temperature',
    title: 'Meat, poultry and fish',
    harm: 'Meat that looks done may not be.',
    instead:
      'Use a thermometer: 63 °C (145 °F) and a 3 minute rest for whole cuts and fish, 71 °C (160 °F) for minced meat, 74 °C (165 °F) for poultry, stuffing and leftovers.',
    source: 'usda-fsis-temps',
    words: [],
  },
  {
    id: 'stuffing',
    title: 'Stuffing in a bird',
    harm: 'Stuffing warms last and holds raw juices.',
    instead: 'Bake it in a dish beside the bird, or see that its centre reaches 74 °C (165 °F).',
    source: 'usda-fsis-temps',
    words: words('stuffing, forcemeat'),
  },
  {
    id: 'hot-holding',
    title: 'Food left warm overnight',
    harm: 'A crock that falls below 57 °C (135 °F) in the night grows bacteria.',
    instead:
      'See that it stays above 57 °C (135 °F) till it is served, or draw it, cool it quickly and keep it at 5 °C (41 °F); reheat to 74 °C (165 °F).',
    source: 'fda-food-code',
    words: words('overnight, all night, over night, till next day, until morning, till morning'),
  },
  {
    id: 'beans-boil',
    title: 'Kidney beans',
    harm: 'Raw or slow-cooked kidney beans hold a poison that low heat does not destroy.',
    instead: 'Soak, throw the water away, and boil hard for at least ten minutes, better thirty, before they go in the oven.',
    source: 'memory',
    words: [],
  },
  {
    id: 'potted-air',
    title: 'Meat or fish sealed under fat',
    harm: 'Food sealed from the air and kept at room temperature can grow botulism.',
    instead: 'Keep it at 5 °C (41 °F) or below and eat it within a few days.',
    source: 'fda-food-code',
    words: words('cover with clarified butter, pour melted butter over'),
  },
]
