import {readFileSync} from 'node:fs'
import {readReceipts} from '../src/receipt/read.js'

/** Prints what the reader finds in files, without conversion, as JSON: for the scorer while the grammar is worked on. */
const receipts = process.argv.slice(2).flatMap((file) => readReceipts(readFileSync(file, 'utf8'), {file}).receipts)
process.stdout.write(JSON.stringify({receipts}))
