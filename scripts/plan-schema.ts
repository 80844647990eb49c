/** Writes docs/schema/plan.schema.json from the zod schema that checks every plan.json. */
import {mkdirSync, writeFileSync} from 'node:fs'
import {planJsonSchema} from '../src/sheets/plan-json.js'

const folder = new URL('../docs/schema/', import.meta.url)
mkdirSync(folder, {recursive: true})
writeFileSync(new URL('plan.schema.json', folder), planJsonSchema())
