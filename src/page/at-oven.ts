import {writeDuration} from '../measure/quantity.js'
import type {Showing} from './protocol.js'
import {app} from './state.js'
import {words} from './words.js'

/** What the parts of the view at the oven share. */

const w = words.bake

/** The language the plan's sentences are in: the page's own words stay English. */
export const saidIn = (): Showing['language'] => app.state.likes.showing.language

/** How long until it is due; minutes. */
export const inTime = (minutes: number): string => (Math.round(minutes) <= 0 ? w.due : w.inTime(writeDuration(minutes)))

/** The same, or how long ago. */
export const fromNow = (minutes: number): string => (minutes <= -1 ? w.ago(writeDuration(-minutes)) : inTime(minutes))

/** Where the hand and the reading voice go on once a button has gone with what it did. */
export const toNow = (): void => document.getElementById('now')?.focus({preventScroll: true})
