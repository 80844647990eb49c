import {existsSync, readdirSync} from 'node:fs'
import {join} from 'node:path'
import {type FiringLog, readLog} from '../oven/log.js'
import type {Message} from '../receipt/types.js'
import {readText} from './files.js'

/** Every log of a `firings` folder, oldest first. A log whose front matter cannot be read is an error among the messages. */
export function readLogs(
  folder: string,
  options: {before?: string; zone?: string | null} = {},
): {logs: FiringLog[]; messages: Message[]} {
  const names = existsSync(folder) ? readdirSync(folder).filter((n) => /^\d{4}-\d{2}-\d{2}\.md$/.test(n)) : []
  const logs: FiringLog[] = []
  const messages: Message[] = []
  for (const name of names.sort()) {
    if (options.before !== undefined && name >= `${options.before}.md`) continue
    const file = join(folder, name)
    const read = readLog(readText(file, file, 'log'), file, options.zone === undefined ? {} : {zone: options.zone})
    messages.push(...read.messages)
    if (read.log) logs.push(read.log)
  }
  return {logs, messages}
}
