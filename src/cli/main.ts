#!/usr/bin/env node
import {run} from './run.js'

/** Write and wait until it is taken, so that a long output into a pipe is not cut short by the exit. A closed pipe is no error. */
function write(stream: NodeJS.WriteStream, text: string): Promise<void> {
  return new Promise((done, fail) => {
    stream.once('error', (error: NodeJS.ErrnoException) => (error.code === 'EPIPE' ? done() : fail(error)))
    stream.write(text, () => done())
  })
}

try {
  const {out, err, code} = await run(process.argv.slice(2))
  if (err) await write(process.stderr, err)
  if (out) await write(process.stdout, out)
  process.exitCode = code
} catch (error) {
  await write(process.stderr, `hearthfall: this should not have happened: ${(error as Error).stack ?? String(error)}\n`)
  process.exitCode = 70
}
