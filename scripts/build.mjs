// Builds what the package ships: the command (dist/hearthfall.js), the pure core as a library (dist/index.js), the page, and, with --types,
// the library's types: they take longest and only a packed tarball needs them.
//
// The command carries its dependencies inside, so that it starts without looking up a hundred files; their licences are gathered beside it.
import {execFileSync} from 'node:child_process'
import {createHash} from 'node:crypto'
import {chmodSync, existsSync, readdirSync, readFileSync, rmSync, writeFileSync} from 'node:fs'
import {join} from 'node:path'
import {build} from 'esbuild'

rmSync('dist/parts', {recursive: true, force: true})
for (const made of existsSync('dist') ? readdirSync('dist') : [])
  if (/^(?:hearthfall\.js|index\.js|command\.cjs|code-.*|types|LICENCES\.txt)$/.test(made))
    rmSync(join('dist', made), {recursive: true, force: true})
const common = {bundle: true, platform: 'node', target: 'node20', legalComments: 'none', logLevel: 'warning'}
await build({...common, format: 'esm', entryPoints: {index: 'src/index.ts'}, outdir: 'dist', packages: 'external'})
await build({...common, format: 'esm', entryPoints: {hearthfall: 'src/cli/start.ts'}, outdir: 'dist'})
const {metafile} = await build({
  ...common,
  format: 'cjs',
  entryPoints: ['src/cli/command.ts'],
  outfile: 'dist/command.cjs',
  metafile: true,
  minify: true,
  // Needed only when something is written; they look for their own file names, which a bundle does not keep.
  external: ['write-file-atomic', 'proper-lockfile'],
  // As the start of the command gives it.
  define: {'import.meta.url': '__url'},
})
// esbuild writes text in ASCII, but leaves patterns as they are. A script of ASCII alone is read in a third of the time, and held in half
// the space.
const script = readFileSync('dist/command.cjs', 'utf8').replace(
  /[^\0-\x7f]/g,
  (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`,
)
// A mark of this very code: no plan kept by another version is taken for one of this.
const mark = createHash('sha256').update(script).digest('base64').slice(0, 12)
// The function it is wrapped in, as Node wraps a CommonJS module, stands in the file itself: two megabytes need not be copied to add it.
writeFileSync(
  'dist/command.cjs',
  `(function (module, exports, require, __url) {globalThis.HEARTHFALL_BUILD=${JSON.stringify(mark)};${script}\n})`,
)
chmodSync('dist/hearthfall.js', 0o755)

const packages = new Set()
for (const input of Object.keys(metafile.inputs)) {
  const found = /^(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(input)
  if (found) packages.add(found[1])
}
const notices = [...packages].sort().map((folder) => {
  const {name, version, license} = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'))
  const file = readdirSync(folder).find((f) => /^licen[cs]e/i.test(f))
  return `${name} ${version} (${license})\n\n${file ? readFileSync(join(folder, file), 'utf8').trim() : 'No licence text is in its package.'}\n`
})
writeFileSync('dist/LICENCES.txt', notices.join(`\n${'-'.repeat(72)}\n\n`))

if (process.argv.includes('--types')) {
  execFileSync(process.execPath, ['node_modules/typescript/bin/tsc', '-p', 'tsconfig.build.json'], {stdio: 'inherit'})
}
if (existsSync('scripts/build-page.mjs')) execFileSync(process.execPath, ['scripts/build-page.mjs'], {stdio: 'inherit'})

// Last, since the command may ask for the page: each kind of work is done once, and what V8 made of the script by then is kept.
execFileSync(process.execPath, ['--import', 'tsx', 'scripts/keep-code.ts'], {stdio: 'inherit'})
