import {readFileSync, writeFileSync} from 'node:fs'
import {sourcesDocument} from './sources-document.js'

/** Writes docs/sources.md from the rows of the lexicon; with `--check` only says whether it is up to date (exit code 1 if not). */
const file = new URL('../docs/sources.md', import.meta.url)
const text = sourcesDocument()
if (process.argv.includes('--check')) {
  if (readFileSync(file, 'utf8') !== text) {
    console.error('docs/sources.md is not up to date: run npx tsx scripts/sources.ts')
    process.exitCode = 1
  }
} else writeFileSync(file, text)
