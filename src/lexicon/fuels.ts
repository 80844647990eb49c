import type {Fuel} from './schema.js'

/**
 * Wood to fire an oven with. The net (lower) heating value of bone-dry wood hardly differs between species by weight; resin adds a
 * little. Water is dealt with apart, in `oven/fire`.
 */
export const fuels: readonly Fuel[] = [
  {
    id: 'oak',
    names: ['oak', 'live oak', 'white oak', 'red oak'],
    netDryMegajoules: {low: 17.5, likely: 18.1, high: 18.9},
    source: 'memory',
  },
  {id: 'beech', names: ['beech', 'hornbeam'], netDryMegajoules: {low: 17.6, likely: 18.2, high: 18.8}, source: 'memory'},
  {
    id: 'hardwood',
    names: [
      'hardwood',
      'hard wood',
      'maple',
      'ash',
      'hickory',
      'elm',
      'sycamore',
      'locust',
      'robinia',
      'walnut',
      'mixed hardwood',
      'wood',
      'firewood',
    ],
    netDryMegajoules: {low: 17.3, likely: 18.1, high: 19},
    source: 'memory',
  },
  {id: 'birch', names: ['birch', 'alder'], netDryMegajoules: {low: 17.8, likely: 18.6, high: 19.2}, source: 'memory'},
  {
    id: 'fruitwood',
    names: [
      'fruitwood',
      'fruit wood',
      'apple',
      'apple wood',
      'cherry',
      'pear',
      'olive',
      'vine',
      'vine cuttings',
      'prunings',
      'almond',
      'plum',
    ],
    netDryMegajoules: {low: 17, likely: 18, high: 19},
    source: 'memory',
  },
  {
    id: 'poplar',
    names: ['poplar', 'willow', 'aspen', 'cottonwood', 'lime', 'linden', 'basswood'],
    netDryMegajoules: {low: 17.3, likely: 18.1, high: 18.8},
    source: 'memory',
  },
  {
    id: 'pine',
    names: ['pine', 'resinous pine', 'pitch pine', 'scots pine'],
    netDryMegajoules: {low: 18.2, likely: 19, high: 20.4},
    source: 'memory',
  },
  {
    id: 'softwood',
    names: ['softwood', 'soft wood', 'spruce', 'fir', 'larch', 'hemlock', 'douglas fir', 'cedar', 'slab wood', 'slabs'],
    netDryMegajoules: {low: 18, likely: 18.8, high: 19.8},
    source: 'memory',
  },
  {
    id: 'brushwood',
    names: ['brushwood', 'brush', 'faggot', 'faggots', 'furze', 'gorse', 'bavins', 'heather', 'twigs', 'kindling', 'oven wood'],
    netDryMegajoules: {low: 17, likely: 18.3, high: 20},
    source: 'memory',
    note: 'Burns fast and hot: count half the burning time of split wood for the same weight.',
  },
  {
    id: 'straw',
    names: ['straw', 'reeds', 'corn cobs', 'cobs'],
    netDryMegajoules: {low: 16, likely: 17, high: 18},
    source: 'memory',
  },
  {
    id: 'eucalyptus',
    names: ['eucalyptus', 'gum', 'ironbark', 'red gum', 'mesquite', 'acacia'],
    netDryMegajoules: {low: 17.5, likely: 18.4, high: 19.5},
    source: 'memory',
  },
  {id: 'peat', names: ['peat', 'turf'], netDryMegajoules: {low: 18, likely: 20.5, high: 22}, source: 'memory'},
]
