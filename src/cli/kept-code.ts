import {cachedDataVersionTag} from 'node:v8'

/** The file that holds the command's compiled code for the Node that runs: its V8's version, flags and processor are in the name. */
export function keptCode(): string {
  return `code-${process.arch}-${cachedDataVersionTag().toString(16)}.bin`
}

/** The command's script as a function of what a module is given, as Node wraps a CommonJS module. */
export function wrapped(source: string): string {
  return `(function (module, exports, require, __url) {${source}\n})`
}
