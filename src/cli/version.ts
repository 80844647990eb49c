import {readFileSync} from 'node:fs'

/** The version stated in the package's own package.json, one folder above the built command and two above the source. */
export function version(): string {
  for (const path of ['../package.json', '../../package.json']) {
    try {
      const found: unknown = JSON.parse(readFileSync(new URL(path, import.meta.url), 'utf8'))
      if (found && typeof found === 'object' && 'name' in found && found.name === 'hearthfall' && 'version' in found)
        return String(found.version)
    } catch {
      // Not here: try the next.
    }
  }
  return 'unknown'
}
