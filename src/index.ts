/**
 * The pure core as a library: no file, clock, terminal or network in it. The command is a thin shell over these.
 *
 * @example
 * import {translate} from 'hearthfall'
 * translate('# Biscuits\n\nHalf a pound of flour …', {file: 'biscuits.md'})
 */
export {items} from './lexicon/items.js'
export type {Band, Caution, DishKind, Item, Material, Measure, OvenWord, Range, Source} from './lexicon/schema.js'
export {sources} from './lexicon/sources.js'
export {convert} from './measure/convert.js'
export {parseClock, parseDuration, parseLength, parseMass, parseTemperature} from './measure/quantity.js'
export {answers} from './oven/answers.js'
export {calibrate} from './oven/calibrate.js'
export {forecast} from './oven/forecast.js'
export {learn} from './oven/learn.js'
export {readLog} from './oven/log.js'
export {appendToLog} from './oven/log-append.js'
export {notesIn, parseNote} from './oven/note.js'
export {readOven} from './oven/read.js'
export type {Firing, Forecast, OvenEvent, OvenParameters, OvenSpec, Reading} from './oven/types.js'
export {check} from './plan/check.js'
export {readDay} from './plan/day.js'
export {makePlan} from './plan/make.js'
export {planDay} from './plan/planner.js'
export type {Day, Plan, PlanProblem} from './plan/types.js'
export {readDuration} from './receipt/durations.js'
export {readReceipts} from './receipt/read.js'
export {translate} from './receipt/translate.js'
export type {Ingredient, Message, Receipt, Translation} from './receipt/types.js'
export {makeDishes} from './scale/dishes.js'
export {packFloor} from './scale/floor.js'
export type {Dish, Placed, Vessel} from './scale/types.js'
export {sheets} from './sheets/sheets.js'
