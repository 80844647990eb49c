import {readdirSync} from 'node:fs'

// Every other file of this folder is one bench; it prints its ratios. `npm run bench plan` runs those whose name begins with "plan".
const wanted = process.argv[2] ?? ''
const benches = readdirSync(new URL('.', import.meta.url))
  .filter((name) => name.endsWith('.ts') && name !== 'main.ts' && name.startsWith(wanted))
  .sort()
for (const name of benches) {
  const {run}: {run?: () => Promise<void>} = await import(new URL(name, import.meta.url).href)
  if (!run) continue
  process.stdout.write(`\n# ${name.replace('.ts', '')}\n`)
  await run()
}
