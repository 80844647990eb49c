import {basename, join} from 'node:path'
import {type FiringLog, type LogOptions, readLog} from '../oven/log.js'
import {keptAmong} from '../plan/kept-days.js'
import type {Message} from '../receipt/types.js'
import {namesIn, readText} from './files.js'

/** The logs of a `firings` folder, oldest first. */
export function logFiles(folder: string): string[] {
  return namesIn(folder, 'logs')
    .filter((n) => /^\d{4}-\d{2}-\d{2}\.md$/.test(n))
    .sort()
    .map((n) => join(folder, n))
}

/** The copies of a day beside its log, oldest first (see `plan/kept-days`). */
export function keptFiles(folder: string, date: string): {readonly path: string; readonly name: string; readonly from: number}[] {
  return keptAmong(namesIn(folder, 'logs'), date).map((one) => ({...one, path: join(folder, one.name)}))
}

/** Every log of a `firings` folder, oldest first. A log whose front matter cannot be read is an error among the messages. */
export function readLogs(
  folder: string,
  options: {before?: string} & Pick<LogOptions, 'zone' | 'oven'> = {},
): {logs: FiringLog[]; messages: Message[]} {
  const logs: FiringLog[] = []
  const messages: Message[] = []
  for (const file of logFiles(folder)) {
    if (options.before !== undefined && basename(file) >= `${options.before}.md`) continue
    const text = readText(file, file, 'log', (message) => messages.push(message))
    const read = readLog(text, file, {zone: options.zone ?? null, oven: options.oven ?? null})
    messages.push(...read.messages)
    if (read.log) logs.push(read.log)
  }
  return {logs, messages}
}
