import {existsSync, readFileSync} from 'node:fs'
import {fileURLToPath} from 'node:url'
import {fileFailure} from './failure.js'

export {pageWith} from '../page/embedded.js'

/**
 * The built page, which lies beside the built command.
 *
 * @throws {Failure} rule `page-missing` where it was not built
 */
export function builtPage(): string {
  for (const path of ['./hearthfall.html', '../hearthfall.html', '../../dist/hearthfall.html']) {
    const file = fileURLToPath(new URL(path, import.meta.url))
    if (existsSync(file)) return readFileSync(file, 'utf8')
  }
  throw fileFailure('dist/hearthfall.html', 'page-missing', 'the page was not built', 'run npm run build first')
}
