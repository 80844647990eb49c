import {makeStyle, type Style} from '../sheets/style.js'
import type {Showing} from './protocol.js'

/** How figures are shown in the page's own words, which are English; the German of the sheets is the worker's. */
export function styleOf(showing: Showing): Style {
  return makeStyle({units: showing.units, clock: showing.clock, degrees: showing.degrees})
}
