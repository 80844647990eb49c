import type {Making} from './schema.js'

/**
 * What making up takes of the hands for what has no dough of its own: so many minutes to weigh, and for each kilogram to mix, roll out, fill
 * or cut; and how long it may wait, made up, before it goes in. The last row is for every other kind. Common practice, no source.
 */
export const makings: readonly Making[] = [
  {
    id: 'pastry',
    kinds: ['fruit pie', 'meat pie', 'small raised pies', 'pasties', 'sausage rolls', 'custard pie', 'tarts', 'puff paste'],
    minutes: 20,
    perKilogram: 8,
    waits: 90,
    source: 'common-practice',
  },
  {
    id: 'beaten',
    kinds: ['sponge', 'sponge fingers', 'souffle', 'meringue', 'macaroons', 'yorkshire pudding'],
    minutes: 15,
    perKilogram: 8,
    waits: 15,
    source: 'common-practice',
  },
  {
    id: 'batter',
    kinds: ['gingerbread', 'pound cake', 'layer cake', 'tray cakes', 'corn bread', 'muffins', 'soda bread'],
    minutes: 15,
    perKilogram: 4,
    waits: 20,
    source: 'common-practice',
  },
  {
    id: 'cut or dropped small',
    kinds: ['biscuits', 'crackers', 'hard gingerbread', 'small cakes', 'shortbread', 'cream puffs'],
    minutes: 10,
    perKilogram: 12,
    waits: 30,
    source: 'common-practice',
  },
  {id: 'fruit cake', kinds: ['fruit cake'], minutes: 25, perKilogram: 5, waits: 60, source: 'common-practice'},
  {
    id: 'milk and eggs',
    kinds: ['custard', 'pudding', 'rice pudding', 'indian pudding'],
    minutes: 10,
    perKilogram: 3,
    waits: 60,
    source: 'common-practice',
  },
  {
    id: 'to dry',
    kinds: ['rusks', 'drying fruit', 'drying herbs', 'granola'],
    minutes: 5,
    perKilogram: 8,
    waits: 240,
    source: 'common-practice',
  },
  {id: 'a dish filled', kinds: [], minutes: 10, perKilogram: 3, waits: 60, source: 'common-practice'},
]
