import type {Message} from '../receipt/types.js'

/** What the user must put right: ends the command with exit code 2 and nothing written. */
export class Failure extends Error {
  readonly messages: readonly Message[]

  constructor(messages: readonly Message[]) {
    super(messages.map((m) => m.reason).join('; '))
    this.messages = messages
  }
}

/** A failure of one file as a whole, at its first character. */
export function fileFailure(file: string, rule: string, reason: string, suggest: string): Failure {
  return new Failure([{file, line: 1, column: 1, severity: 'error', rule, reason, suggest}])
}

/** A failure of the command line itself. */
export function usageFailure(reason: string, suggest: string): Failure {
  return fileFailure('command line', 'usage', reason, suggest)
}

/** A message's words in another language. */
export type MessageWords = (message: Message) => {
  readonly severity: string
  readonly reason: string
  readonly suggest: string | null
}

/**
 * Messages as lines for the terminal: `file:line:column: severity: reason (rule)` and, below, what to write instead.
 *
 * @param messages in any order; printed in the order of the files
 * @param wordsOf the language asked for; English where it is not given
 */
export function messageLines(messages: readonly Message[], wordsOf?: MessageWords): string {
  return messages
    .map((m) => {
      const at = m.rule === 'usage' ? 'hearthfall' : `${m.file}:${m.line}:${m.column}`
      const {severity, reason, suggest} = wordsOf?.(m) ?? m
      return `${at}: ${severity}: ${reason} (${m.rule})\n${suggest ? `    → ${suggest}\n` : ''}`
    })
    .join('')
}
