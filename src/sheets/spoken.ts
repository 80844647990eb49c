import type {Element} from 'hast'
import {h} from 'hastscript'
import {kitchen} from './figures.js'
import {bookOf, foreignItem, foreignPart, itemName, partName} from './said.js'
import type {Style} from './style.js'
import {inBook} from './words/sentences.js'

/*
 * What `said.ts` says, as elements of a sheet: apart from it, since the plan's text says it too and need not wait for what makes a sheet.
 */

/** A sentence of the core in the reader's language, marked as English where it stayed so. */
export function spoken(text: string, style: Style, before = ''): Element {
  const book = bookOf(style)
  const said = book === null ? text : inBook(text, book)
  return said === null ? h('span', {lang: 'en'}, `${before}${text}`) : h('span', `${before}${said}`)
}

/** An item's name, marked as English where it stayed so. */
export function itemSpan(id: string, style: Style): Element {
  return h('span', foreignItem(id, style) ? {lang: 'en'} : {}, itemName(id, style))
}

/** The part that an ingredient belongs to, before its name; nothing where the receipt is of one. */
export function partMark(part: string, style: Style): Element[] {
  return part === ''
    ? []
    : [h('em', {lang: foreignPart(part, style) ? 'en' : style.words['language.code']}, `${partName(part, style)}: `)]
}

/** An amount for the kitchen in the units asked for: what is only a figure is in the reader's words once it is in those. */
export function kitchenSpan(amount: string, style: Style): Element {
  const shown = kitchen(amount, style)
  return shown !== amount && /^[\d.]+ \w+$/.test(amount) ? h('span', shown) : spoken(shown, style)
}
