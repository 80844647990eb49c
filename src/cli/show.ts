import type {Given} from './arguments.js'

/** Columns of the terminal, 80 where the output goes elsewhere; never wider than a book page. */
export function columns(): number {
  return Math.max(40, Math.min(process.stdout.columns ?? 80, 100))
}

/** Colour only on a terminal that has it and whose user has not said no (https://no-color.org). */
export function colour(): boolean {
  return process.stdout.isTTY === true && process.env.NO_COLOR === undefined && process.env.TERM !== 'dumb'
}

/** A choice option's value, narrowed to its type. */
export function choice<T extends string>(given: Given, name: string): T {
  return given.text(name) as T
}
