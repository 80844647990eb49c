import type {KindByItems} from './schema.js'

/**
 * What a receipt that bakes is where neither its title nor its text names a dish: "Rye", "Grandmother's Saturday". The first row whose
 * ingredients it has counts, and all are raised by yeast or leaven: without, flour may be for anything. Common practice, no source.
 */
export const kindsByItems: readonly KindByItems[] = [
  {
    id: 'rich dough',
    kind: 'raised cake',
    main: {groups: ['flour', 'meal'], share: 0.35},
    beside: [
      {groups: ['sugar', 'syrup'], toMain: 0.12},
      {groups: ['fat'], toMain: 0.08},
    ],
    source: 'common-practice',
  },
  {
    id: 'rye dough',
    kind: 'rye bread',
    main: {groups: ['flour', 'meal'], share: 0.4},
    of: {items: ['rye flour', 'dark rye flour', 'cracked rye'], share: 0.5},
    source: 'common-practice',
  },
  {
    id: 'wholemeal dough',
    kind: 'wholemeal bread',
    main: {groups: ['flour', 'meal'], share: 0.4},
    of: {items: ['wholemeal flour', 'cracked wheat', 'dark rye flour'], share: 0.5},
    source: 'common-practice',
  },
  {
    id: 'plain dough',
    kind: 'white bread',
    main: {groups: ['flour', 'meal'], share: 0.4},
    source: 'common-practice',
  },
]
