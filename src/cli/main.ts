#!/usr/bin/env node
import {commandHelp, commands, type Given, generalHelp, nearest, readArguments} from './arguments.js'
import {Failure, messageLines, usageFailure} from './failure.js'

/** What a command gives back: text for standard output, messages for standard error, and the exit code. */
export interface Outcome {
  readonly out: string
  readonly err: string
  readonly code: 0 | 1
}

type Run = (given: Given) => Outcome | Promise<Outcome>

// Each command's code is loaded only when it is asked for: `translate` need not wait for the planner.
const runs: Readonly<Record<string, () => Promise<Run>>> = {
  translate: async () => (await import('./translate.js')).runTranslate,
  oven: async () => (await import('./oven.js')).runOven,
  plan: async () => (await import('./plan.js')).runPlan,
  note: async () => (await import('./note.js')).runNote,
  sheets: async () => (await import('./sheets.js')).runSheets,
}

async function main(args: readonly string[]): Promise<number> {
  const [name, ...rest] = args
  if (name === undefined || name === '--help' || name === '-h' || name === 'help') {
    const command = commands.find((c) => c.name === rest[0])
    await write(process.stdout, command ? commandHelp(command) : generalHelp())
    return name === undefined ? 2 : 0
  }
  if (name === '--version') {
    const {version} = await import('./version.js')
    await write(process.stdout, `hearthfall ${version()}\n`)
    return 0
  }
  const command = commands.find((c) => c.name === name)
  const load = runs[name]
  if (!command || !load) {
    const near = nearest(name, Object.keys(runs))
    throw usageFailure(
      `there is no command “${name}”`,
      near ? `did you mean hearthfall ${near}?` : `write one of: ${Object.keys(runs).join(', ')}`,
    )
  }
  const given = readArguments(command, rest)
  if (given.flag('help')) {
    await write(process.stdout, commandHelp(command))
    return 0
  }
  const outcome = await (await load())(given)
  if (outcome.err) await write(process.stderr, outcome.err)
  await write(process.stdout, outcome.out)
  return outcome.code
}

/** Write and wait until it is taken, so that a long output into a pipe is not cut short by the exit. */
function write(stream: NodeJS.WriteStream, text: string): Promise<void> {
  return new Promise((done, fail) => {
    stream.once('error', (error: NodeJS.ErrnoException) => (error.code === 'EPIPE' ? done() : fail(error)))
    stream.write(text, () => done())
  })
}

try {
  process.exitCode = await main(process.argv.slice(2))
} catch (error) {
  if (error instanceof Failure) {
    await write(process.stderr, messageLines(error.messages))
    process.exitCode = 2
  } else {
    await write(process.stderr, `hearthfall: this should not have happened: ${(error as Error).stack ?? String(error)}\n`)
    process.exitCode = 70
  }
}
