import {run} from './run.js'

export {run}

/** Write and wait until it is taken, so that a long output into a pipe is not cut short by the exit. A closed pipe is no error. */
function write(stream: NodeJS.WriteStream, text: string): Promise<void> {
  return new Promise((done, fail) => {
    stream.once('error', (error: NodeJS.ErrnoException) => (error.code === 'EPIPE' ? done() : fail(error)))
    stream.write(text, () => done())
  })
}

/**
 * The command as a program: run it, print what it gives, and set the exit code.
 *
 * @param args the command line after the program's name
 */
export async function command(args: readonly string[]): Promise<void> {
  try {
    const {out, err, code} = await run(args)
    if (err) await write(process.stderr, err)
    if (out) await write(process.stdout, out)
    process.exitCode = code
  } catch (error) {
    await write(process.stderr, `hearthfall: this should not have happened: ${(error as Error).stack ?? String(error)}\n`)
    process.exitCode = 70
  }
}
