import {parseArgs} from 'node:util'
import {distance} from 'fastest-levenshtein'
import {usageFailure} from './failure.js'

/** One option of a command. */
interface Option {
  readonly type: 'string' | 'boolean'
  readonly help: string
  /** What the help calls its value. */
  readonly value?: string
  readonly choices?: readonly string[]
  readonly default?: string
}

/** A command: what it takes and says of itself. */
export interface Command {
  readonly name: string
  readonly usage: string
  readonly about: string
  readonly least: number
  readonly most: number
  readonly options: Readonly<Record<string, Option>>
  readonly examples: readonly string[]
}

const help: Option = {type: 'boolean', help: 'show this'}
const out: Option = {type: 'string', value: 'DIR', help: 'write into this folder instead of the terminal'}
const replace: Option = {type: 'boolean', help: 'overwrite files in DIR that are not ours'}
const afresh: Option = {type: 'boolean', help: 'work it all out again, whatever was kept of this very day'}
const units: Option = {
  type: 'string',
  value: 'UNITS',
  choices: ['us', 'metric', 'both'],
  default: 'both',
  help: 'which units to show',
}
const clock: Option = {
  type: 'string',
  value: 'HOURS',
  choices: ['12', '24'],
  help: 'hours of the clock; by default as the language has it',
}
const degrees: Option = {
  type: 'string',
  value: 'SCALE',
  choices: ['F', 'C', 'both'],
  help: 'degrees to show; by default as the units',
}
const language: Option = {type: 'string', value: 'LANG', choices: ['en', 'de'], default: 'en', help: 'language of the output'}
const formats = (...choices: string[]): Option => ({
  type: 'string',
  value: 'FORMAT',
  choices,
  default: choices[0]!,
  help: 'form of the output',
})

/** Every command, in the order of a bake day. */
export const commands: readonly Command[] = [
  {
    name: 'translate',
    usage: 'hearthfall translate FILE…',
    about:
      'Read receipts, old or new, and say every amount, heat and time in modern figures, with a range and a source.\nA FILE may be a folder, or - for what is piped in.',
    least: 1,
    most: Number.POSITIVE_INFINITY,
    options: {
      format: formats('text', 'markdown', 'json'),
      why: {type: 'boolean', help: 'show for each figure how it was reached, and from which source'},
      year: {type: 'string', value: 'YEAR', help: 'year of receipts that do not state one'},
      place: {type: 'string', value: 'PLACE', help: 'place (us, uk, au, eu) of receipts that do not state one'},
      units,
      out,
      replace,
      help,
    },
    examples: ['hearthfall translate receipts/gingerbread.md', 'hearthfall translate --why --year 1829 --place us book.md'],
  },
  {
    name: 'oven',
    usage: 'hearthfall oven OVEN.md',
    about: 'Say how this oven heats and falls: the fire it needs, when each band begins and ends, how long it stays slack.',
    least: 1,
    most: 1,
    options: {format: formats('text', 'markdown', 'json', 'svg'), clock, degrees, out, replace, help},
    examples: ['hearthfall oven oven.md', 'hearthfall oven oven.md --format svg > fall.svg'],
  },
  {
    name: 'plan',
    usage: 'hearthfall plan DAY-FOLDER',
    about:
      'Make the bake plan of a day: when to light, rake out and soak, what goes in where and when, and when it is drawn.\nDAY-FOLDER holds day.md, oven.md, receipts/ and, once you have fired, firings/.',
    least: 1,
    most: 1,
    options: {
      format: formats('text', 'markdown', 'json'),
      now: {
        type: 'string',
        value: 'TIME',
        help: 'plan from this time of the day on ("2:15 pm"); default: from the latest reading in the log',
      },
      afresh,
      page: {type: 'string', value: 'FILE.html', help: 'write the whole tool as one page with this day inside'},
      units,
      clock,
      degrees,
      language,
      out,
      replace,
      help,
    },
    examples: ['hearthfall plan corpus-demo', 'hearthfall plan corpus-demo --out plan'],
  },
  {
    name: 'note',
    usage: 'hearthfall note DAY-FOLDER "2:15 pm arm 18"',
    about:
      'Add a reading or a note to the day’s log: floor, vault, air or probe with degrees; arm with a count; flour, paper, walls or spatter with what\nyou saw; a dish ("gingerbread drawn 10 min late"); or another fire ("fire again at 3:15 pm", "lit again"). Without a time it is now.',
    least: 2,
    most: 40,
    options: {anyway: {type: 'boolean', help: 'write it down though it looks wrong'}, help},
    examples: ['hearthfall note corpus-demo "2:15 pm arm 18"', 'hearthfall note corpus-demo "floor 410 °F"'],
  },
  {
    name: 'sheets',
    usage: 'hearthfall sheets DAY-FOLDER --out DIR',
    about: 'Write everything to pin up, hand out or keep: day sheet, heat chart, floor maps, handouts, lists, calendar.',
    least: 1,
    most: 1,
    options: {
      out: {...out, help: 'the folder to write into (needed)'},
      for: {
        type: 'string',
        value: 'WHOM',
        choices: ['class', 'kitchen', 'visitors'],
        default: 'kitchen',
        help: 'whom the handouts are for',
      },
      units,
      clock,
      degrees,
      language,
      now: {type: 'string', value: 'TIME', help: 'as for plan'},
      afresh,
      replace,
      help,
    },
    examples: ['hearthfall sheets corpus-demo --out sheets', 'hearthfall sheets corpus-demo --out sheets --for class'],
  },
]

/** Options as given, with their defaults. */
export interface Given {
  readonly command: Command
  readonly positionals: readonly string[]
  readonly text: (name: string) => string | undefined
  readonly flag: (name: string) => boolean
}

/**
 * Read one command's arguments.
 *
 * @throws {Failure} rule `usage`, with the nearest known option
 */
export function readArguments(command: Command, args: readonly string[]): Given {
  const options = Object.fromEntries(
    Object.entries(command.options).map(([name, o]) => [
      name,
      name === 'help' ? {type: o.type, short: 'h' as const} : {type: o.type},
    ]),
  )
  const hint = `see hearthfall ${command.name} --help`
  const parsed = (() => {
    try {
      return parseArgs({args: [...args], options, allowPositionals: true, strict: true})
    } catch (error) {
      const unknown = /Unknown option '(-{1,2}[^' =]*)/.exec((error as Error).message)?.[1]
      if (!unknown) throw usageFailure((error as Error).message.split('. ')[0]!, hint)
      const near = nearest(unknown.replace(/^-+/, ''), Object.keys(command.options))
      throw usageFailure(`there is no option ${unknown}`, near ? `did you mean --${near}?` : hint)
    }
  })()
  const values = parsed.values as Record<string, string | boolean | undefined>
  for (const [name, option] of Object.entries(command.options)) {
    const value = values[name]
    if (option.choices && typeof value === 'string' && !option.choices.includes(value)) {
      const near = option.choices.find((c) => c.toLowerCase() === value.toLowerCase())
      if (near) values[name] = near
      else throw usageFailure(`--${name} cannot be “${value}”`, `write one of: ${option.choices.join(', ')}`)
    }
  }
  const given: Given = {
    command,
    positionals: parsed.positionals,
    text: (name) => {
      const value = values[name] ?? command.options[name]?.default
      return typeof value === 'string' ? value : undefined
    },
    flag: (name) => values[name] === true,
  }
  if (given.flag('help')) return given
  if (parsed.positionals.length < command.least) throw usageFailure('something is missing', `write: ${command.usage}`)
  if (parsed.positionals.length > command.most)
    throw usageFailure(`“${parsed.positionals[command.most]}” is one too many`, `write: ${command.usage}`)
  return given
}

/** The known word nearest to a mistyped one, if any is near. */
export function nearest(word: string, known: readonly string[]): string | null {
  const best = known.map((k) => ({k, d: distance(k, word)})).sort((a, b) => a.d - b.d)[0]
  return best && best.d <= Math.max(1, Math.floor(word.length / 3)) ? best.k : null
}

/** What `hearthfall --help` prints. */
export function generalHelp(): string {
  const width = Math.max(...commands.map((c) => c.name.length))
  return [
    'hearthfall: from a pile of receipts to a bake plan for a falling oven',
    '',
    ...commands.map((c) => `  hearthfall ${c.name.padEnd(width)}  ${c.about.split('\n')[0]!.split(/[:;,.]/)[0]!}`),
    '',
    '  hearthfall COMMAND --help says more. --version says which version this is.',
    '',
    'Exit code: 0 all is well; 1 the day cannot be baked as asked (something has no place, comes late or comes out underdone); 2 something must be put right first.',
    'Fire burns, coals give off carbon monoxide: local codes and licensed practice decide, not this tool.',
    '',
  ].join('\n')
}

/** What `hearthfall COMMAND --help` prints. */
export function commandHelp(command: Command): string {
  const rows = Object.entries(command.options).map(([name, o]) => {
    const left = `--${name}${o.value ? ` ${o.value}` : ''}`
    const choices = o.choices ? ` (${o.choices.join(', ')}${o.default ? `; default ${o.default}` : ''})` : ''
    return {left, right: o.help + choices}
  })
  const width = Math.max(...rows.map((r) => r.left.length))
  return [
    command.usage,
    '',
    command.about,
    '',
    ...rows.map((r) => `  ${r.left.padEnd(width)}  ${r.right}`),
    '',
    ...command.examples.map((e) => `  ${e}`),
    '',
  ].join('\n')
}
