import {readFileSync} from 'node:fs'
import {createRequire} from 'node:module'
import {fileURLToPath} from 'node:url'
import {cachedDataVersionTag, setFlagsFromString} from 'node:v8'
import {Script} from 'node:vm'
import type * as Command from './command.js'

/**
 * Bytes of bytecode that a function runs before V8 thinks again whether to make machine code of it; V8's own figure is 66 KB. A plan is a
 * second or two of work: made sooner, the machine code of the planner's large functions is made five to seven times over, each time that
 * they meet something new, and on a machine with little to spare that takes turns with the planning itself. From measurements of
 * `hearthfall plan corpus-demo` with Node 20: a tenth to a sixth less processor time, and the figure may be half or double as well.
 */
const RUN_BEFORE_COMPILED = 400_000
/**
 * Bytes of bytecode of other functions that V8 makes part of one at most; its own figure is 920. Less to make is made sooner: of the same
 * command, and of one with 30 dishes, a twentieth less time; of days that take many seconds a thirtieth to a twentieth more.
 */
const MADE_AT_ONCE = 300
/** The V8 (Node 20's) that it was measured with; others have other compilers, and may not know the word. */
const MEASURED_WITH = '11.3.'

/**
 * The file that holds the command's compiled code for the Node that runs: its V8's version, flags and processor are in the name. Sets the
 * flags that the command runs with, so it comes before anything is compiled.
 */
export function keptCode(): string {
  if (process.versions.v8.startsWith(MEASURED_WITH)) {
    setFlagsFromString(`--interrupt-budget=${RUN_BEFORE_COMPILED}`)
    setFlagsFromString(`--max-inlined-bytecode-size-cumulative=${MADE_AT_ONCE}`)
  }
  return `code-${process.arch}-${cachedDataVersionTag().toString(16)}.bin`
}

/**
 * Load the built command, `command.cjs`: one function, as Node wraps a CommonJS module.
 *
 * @param start URL of the file beside it that starts it; what the command asks of its own place is told by it.
 * @param cachedData The code kept of it, where there is any.
 */
export function loadCommand(start: string, cachedData?: Buffer): {script: Script; command: typeof Command} {
  const filename = fileURLToPath(new URL('./command.cjs', start))
  // The build leaves nothing but ASCII in it, which is read in two thirds of the time as Latin-1.
  const script = new Script(readFileSync(filename, 'latin1'), {filename, ...(cachedData ? {cachedData} : {})})
  const made = {exports: {} as typeof Command}
  const load = script.runInThisContext() as (module: typeof made, exports: object, require: NodeJS.Require, url: string) => void
  load(made, made.exports, createRequire(start), start)
  return {script, command: made.exports}
}
