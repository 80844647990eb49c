// Builds what the package ships: the command (dist/hearthfall.js), the pure core as a library (dist/index.js), the page, and, with --types,
// the library's types: they take longest and only a packed tarball needs them.
//
// The command carries its dependencies inside, so that it starts without looking up a hundred files; their licences are gathered beside it.
import {execFileSync} from 'node:child_process'
import {chmodSync, existsSync, readdirSync, readFileSync, rmSync, writeFileSync} from 'node:fs'
import {join} from 'node:path'
import {build} from 'esbuild'

for (const made of ['hearthfall.js', 'index.js', 'parts', 'types', 'LICENCES.txt'])
  rmSync(`dist/${made}`, {recursive: true, force: true})
const common = {bundle: true, format: 'esm', platform: 'node', target: 'node20', legalComments: 'none', logLevel: 'warning'}
await build({...common, entryPoints: {index: 'src/index.ts'}, outdir: 'dist', packages: 'external'})
const {metafile} = await build({
  ...common,
  entryPoints: {hearthfall: 'src/cli/main.ts'},
  outdir: 'dist',
  splitting: true,
  chunkNames: 'parts/[name]-[hash]',
  metafile: true,
  // Half the size is half the time to read it in at every start.
  minify: true,
  // Needed only when something is written; they look for their own file names, which a bundle does not keep.
  external: ['write-file-atomic', 'proper-lockfile'],
  // Some dependencies are CommonJS and ask for Node's own modules by `require`.
  banner: {js: "import {createRequire as requireOf} from 'node:module'; const require = requireOf(import.meta.url);"},
})
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
