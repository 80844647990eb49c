import {measureSystems} from '../lexicon/measure-systems.js'
import type {Measure} from '../lexicon/schema.js'
import {FILLING, itemHere, measureHere, Phrases, type View} from './view.js'

const systemPhrases = measureSystems.map(({id, words}) => ({id, phrases: new Phrases(words)}))

/** Measures that a single letter may mean only after a figure: "2 c", "100 g". */
const isShort = (view: View, at: number, next: number): boolean => next === at + 1 && view.words[at]!.length === 1

/** "imperial", "U.S." at `at`: its row's id and the token after it. */
export function systemHere(view: View, at: number, end: number): {id: string; next: number} | null {
  for (const {id, phrases} of systemPhrases) {
    const next = phrases.match(view.words, at, end)
    if (next > 0) return {id, next}
  }
  return null
}

/** The measure at `at` after an amount; words that say how it is filled, or whose it is, are passed and noted. */
export function readMeasure(
  view: View,
  at: number,
  end: number,
  figure: boolean,
  notes: string[],
): {id: string; dimension: Measure['dimension']; start: number; next: number} | null {
  const {words, bits, tokens} = view
  let i = at
  let most = at + 4
  const passed: string[] = []
  while (i < end && i < most) {
    const system = systemHere(view, i, end)
    if (system !== null) {
      passed.push(system.id)
      most += system.next - i
      i = system.next
      continue
    }
    if (words[i] === 't' && figure) {
      // A capital T is the table's spoon, a small one the tea's: the usage of American receipts.
      return {id: tokens[i]!.capital ? 'tablespoon' : 'teaspoon', dimension: 'volume', start: i, next: i + 1}
    }
    const found = measureHere(view, i)
    if (found !== null && found.next <= end) {
      const {row} = found
      // "Half a quartern loaf": a measure's word that is part of what a loaf is called.
      const called = itemHere(view, i)
      if (called !== null && called.next > found.next && called.next <= end && called.row.group === 'bread') return null
      // "a dose of senna tea": the English word, and no German tin.
      if (words[i] === 'dose' && words[found.next] === 'of') return null
      const usable =
        row.dimension === 'mass' || row.dimension === 'volume' || row.dimension === 'count' || row.dimension === 'money'
      if (
        usable &&
        row.id !== 'count' &&
        row.id !== 'indefinite' &&
        !(isShort(view, i, found.next) && !figure) &&
        !(words[i] === 'in')
      ) {
        let {id} = row
        // A large, great or (heaped) big spoonful was the table's: 1820–1880 books say so in their tables of measures.
        if (id === 'spoon' && passed.some((w) => w === 'large' || w === 'great' || w === 'big')) id = 'tablespoon'
        let next = found.next
        if (words[next] === 'full' && next < end && words[next + 1] === 'of') next++
        notes.push(...passed)
        return {id, dimension: row.dimension, start: i, next}
      }
      if (!(bits[i]! & FILLING)) return null
    }
    if (!(bits[i]! & FILLING)) return null
    passed.push(words[i]!)
    i++
  }
  return null
}
