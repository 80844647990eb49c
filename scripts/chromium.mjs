// The tests of printed sheets and of the page drive Chromium. On a bare Debian machine it is installed here; elsewhere its lack is told.
import {spawnSync} from 'node:child_process'
import {existsSync} from 'node:fs'

const wanted = ['chromium', 'poppler-utils', 'fonts-dejavu', 'fonts-liberation']
if (!existsSync('/usr/bin/chromium')) {
  const apt = (...args) =>
    spawnSync('apt-get', args, {stdio: 'inherit', env: {...process.env, DEBIAN_FRONTEND: 'noninteractive'}}).status === 0
  if (!(apt('update', '-qq') && apt('install', '-y', '-qq', ...wanted))) {
    console.error(`The tests need /usr/bin/chromium. Install it as root: apt-get install ${wanted.join(' ')}`)
    process.exit(1)
  }
}
