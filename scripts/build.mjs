// Builds what the package ships: the command (dist/hearthfall.js), the pure core as a library (dist/index.js), the page, and, with --types,
// the library's types: they take longest and only a packed tarball needs them.
import {execFileSync} from 'node:child_process'
import {chmodSync, existsSync, rmSync} from 'node:fs'
import {build} from 'esbuild'

for (const made of ['hearthfall.js', 'index.js', 'parts', 'types']) rmSync(`dist/${made}`, {recursive: true, force: true})
await build({
  entryPoints: {hearthfall: 'src/cli/main.ts', index: 'src/index.ts'},
  outdir: 'dist',
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  packages: 'external',
  chunkNames: 'parts/[name]-[hash]',
  legalComments: 'none',
  logLevel: 'warning',
})
chmodSync('dist/hearthfall.js', 0o755)
if (process.argv.includes('--types')) {
  execFileSync(process.execPath, ['node_modules/typescript/bin/tsc', '-p', 'tsconfig.build.json'], {stdio: 'inherit'})
}
if (existsSync('scripts/build-page.mjs')) execFileSync(process.execPath, ['scripts/build-page.mjs'], {stdio: 'inherit'})
