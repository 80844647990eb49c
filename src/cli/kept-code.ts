import {readFileSync} from 'node:fs'
import {createRequire} from 'node:module'
import {fileURLToPath} from 'node:url'
import {cachedDataVersionTag} from 'node:v8'
import {Script} from 'node:vm'
import type * as Command from './command.js'

/** The file that holds the command's compiled code for the Node that runs: its V8's version, flags and processor are in the name. */
export function keptCode(): string {
  return `code-${process.arch}-${cachedDataVersionTag().toString(16)}.bin`
}

/**
 * Load the built command, `command.cjs`, as Node loads a CommonJS module.
 *
 * @param start URL of the file beside it that starts it; what the command asks of its own place is told by it.
 * @param cachedData The code kept of it, where there is any.
 */
export function loadCommand(start: string, cachedData?: Buffer): {script: Script; command: typeof Command} {
  const filename = fileURLToPath(new URL('./command.cjs', start))
  const source = `(function (module, exports, require, __url) {${readFileSync(filename, 'utf8')}\n})`
  const script = new Script(source, {filename, ...(cachedData ? {cachedData} : {})})
  const made = {exports: {} as typeof Command}
  const load = script.runInThisContext() as (module: typeof made, exports: object, require: NodeJS.Require, url: string) => void
  load(made, made.exports, createRequire(start), start)
  return {script, command: made.exports}
}
