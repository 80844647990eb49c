#!/usr/bin/env node
// The built command's start. The program itself lies beside this file as one script, `command.cjs`, and with it the code that V8 made
// of it when it was built (`keptCode`), which spares compiling it anew. Where there is none for this Node, or V8 refuses it, the script is
// compiled as any other.
import {readFileSync} from 'node:fs'
import {fileURLToPath} from 'node:url'
import {keptCode, loadCommand} from './kept-code.js'

function kept(): Buffer | undefined {
  try {
    return readFileSync(fileURLToPath(new URL(keptCode(), import.meta.url)))
  } catch {
    return undefined
  }
}

await loadCommand(import.meta.url, kept()).command.command(process.argv.slice(2))
