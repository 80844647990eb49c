import {dryingVerbs} from '../lexicon/grammar-words.js'
import {foldAll, lookUpKind} from '../lexicon/index.js'
import type {DishKind} from '../lexicon/schema.js'
import type {Receipt} from '../receipt/types.js'
import {anyKind, settingIn} from './need.js'
import type {Say} from './sizing.js'

/** What a kind of dish stands for where its receipt is silent. `known`: a row of the lexicon says so, and no oven word alone. */
export type KindFigures = Omit<DishKind, 'words' | 'band' | 'sign' | 'source'> & {readonly sign: string; readonly known: boolean}

/** The sign that a dish of no known kind is done. */
export const bySight = 'as the receipt says, or by eye'

const DRIES: ReadonlySet<string> = new Set(dryingVerbs.flatMap(foldAll))

/** The figures of a receipt's kind; of no known kind what the oven it names stands for, which is told (`scale-kind`). */
export function kindOf(receipt: Receipt, say: Say): KindFigures {
  const row = receipt.kind === null ? null : lookUpKind(receipt.kind)
  if (row !== null) return {...row, known: true}
  const named = settingIn(receipt.oven) ?? receipt.oven.find((phrase) => phrase.against !== true)
  const drying = receipt.ajar !== undefined || foldAll(receipt.title).some((word) => DRIES.has(word))
  // What dries would be burnt where what bakes is meant.
  const band = named?.band ?? (drying ? 'slack' : 'moderate')
  say(
    'warning',
    'scale-kind',
    `“${receipt.title}” is no kind of dish known here; planned for ${named !== undefined ? `the ${band} oven it names` : drying ? 'a slack oven, since it dries' : 'a moderate oven'}`,
    'state vessel, oven and bake in its front matter',
  )
  return {
    id: 'unknown',
    title: 'a dish of no known kind',
    ...anyKind[band],
    vessel: 'round 9 in x 3 in',
    mass: {low: 0.7, likely: 1.2, high: 2},
    waterLoss: {low: 0.05, likely: 0.1, high: 0.18},
    feeds: {low: 6, likely: 8, high: 10},
    sign: bySight,
    cautions: [],
    ...(drying && band === 'slack' ? {dry: true as const} : {}),
    known: false,
  }
}

/** It is filled as a custard is, and holds together by that or by being cooked through, and not by flour. */
export const setsAsCustard = (kind: KindFigures): boolean =>
  kind.safe !== undefined || kind.id.includes('pudding') || kind.id.includes('custard')
