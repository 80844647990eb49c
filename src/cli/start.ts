#!/usr/bin/env node
// The built command's start. The program itself lies beside this file as one script, `command.cjs`, and with it the code that V8 made
// of it when it was built (`keptCode`): to read that in takes a tenth of the time of compiling the script anew. Where there is none for
// this Node, or V8 refuses it, the script is compiled as any other.
import {readFileSync} from 'node:fs'
import {createRequire} from 'node:module'
import {fileURLToPath} from 'node:url'
import {Script} from 'node:vm'
import {keptCode, wrapped} from './kept-code.js'

const at = (name: string): string => fileURLToPath(new URL(name, import.meta.url))

function read(name: string): Buffer | undefined {
  try {
    return readFileSync(at(name))
  } catch {
    return undefined
  }
}

const filename = at('./command.cjs')
const cachedData = read(`./${keptCode()}`)
const script = new Script(wrapped(readFileSync(filename, 'utf8')), {filename, ...(cachedData ? {cachedData} : {})})
const made = {exports: {}} as {exports: {command: (args: readonly string[]) => Promise<void>}}
const load = script.runInThisContext() as (module: typeof made, exports: object, require: NodeJS.Require, url: string) => void
load(made, made.exports, createRequire(import.meta.url), import.meta.url)
await made.exports.command(process.argv.slice(2))
