import {VFileMessage} from 'vfile-message'
import type {Message} from './types.js'

/** What the messages of the whole project name as their source. */
export const MESSAGE_SOURCE = 'hearthfall'

/**
 * One of our messages as a `vfile-message`, for tools that report those: `rule` is its `ruleId`, `suggest` its `expected`, and errors,
 * warnings and infos are `fatal` true, false and absent. `docs/messages.md` lists the rules.
 */
export function vfileMessage(message: Message): VFileMessage {
  const made = new VFileMessage(message.reason, {
    place: {line: message.line, column: message.column},
    ruleId: message.rule,
    source: MESSAGE_SOURCE,
  })
  made.file = message.file
  if (message.severity !== 'info') made.fatal = message.severity === 'error'
  if (message.suggest !== undefined) {
    made.expected = [message.suggest]
    made.note = message.suggest
  }
  made.url = `docs/messages.md#${message.rule}`
  return made
}
