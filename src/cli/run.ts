import {commandHelp, commands, type Given, generalHelp, nearest, readArguments} from './arguments.js'
import {Failure, messageLines, usageFailure} from './failure.js'

/** What a command gives back: text for standard output, text for standard error, and the exit code. */
export interface Outcome {
  readonly out: string
  readonly err: string
  /** 0 all is well; 1 the day cannot be baked as asked; 2 something must be put right first. */
  readonly code: 0 | 1 | 2
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

/**
 * Run one command.
 *
 * @param args the command line after the program's name
 * @returns what to print; a `Failure` is told on standard error with exit code 2
 */
export async function run(args: readonly string[]): Promise<Outcome> {
  try {
    return await dispatch(args)
  } catch (error) {
    if (!(error instanceof Failure)) throw error
    const [language, clock] = [asked(args, 'language'), asked(args, 'clock')]
    // Most are said as they are, and need no words of the sheets to be read.
    const plain = language === undefined && error.messages.every((m) => m.times === undefined)
    const wordsOf = plain ? undefined : (await import('./language.js')).messagesIn(language, clock)
    return {out: '', err: messageLines(error.messages, wordsOf), code: 2}
  }
}

/** What an option was given, also where the command line is faulty elsewhere. */
function asked(args: readonly string[], option: string): string | undefined {
  const name = `--${option}`
  const at = args.findIndex((arg) => arg === name || arg.startsWith(`${name}=`))
  return at < 0 ? undefined : args[at] === name ? args[at + 1] : args[at]!.slice(name.length + 1)
}

async function dispatch(args: readonly string[]): Promise<Outcome> {
  const [name, ...rest] = args
  const say = (out: string): Outcome => ({out, err: '', code: 0})
  if (name === undefined) return {out: '', err: generalHelp(), code: 2}
  if (name === '--help' || name === '-h' || name === 'help') {
    const command = commands.find((c) => c.name === rest[0])
    return say(command ? commandHelp(command) : generalHelp())
  }
  if (name === '--version') return say(`hearthfall ${(await import('./version.js')).version()}\n`)
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
  return given.flag('help') ? say(commandHelp(command)) : (await load())(given)
}
