import {existsSync, readFileSync, statSync} from 'node:fs'
import {sources} from '../lexicon/sources.js'
import {translate} from '../receipt/translate.js'
import type {Message, Receipt, Translation} from '../receipt/types.js'
import {makeStyle} from '../sheets/style.js'
import {translationMarkdown, translationText} from '../sheets/translation-text.js'
import type {Given} from './arguments.js'
import {Failure, usageFailure} from './failure.js'
import {decodeText, markdownFiles, readText, type Told, writeAll} from './files.js'
import type {Outcome} from './run.js'
import {choice, colour, columns} from './show.js'

/** `hearthfall translate FILE…` */
export function runTranslate(given: Given): Outcome {
  const defaults = givenDefaults(given)
  const receipts: Receipt[] = []
  const messages: Message[] = []
  const errors: Message[] = []
  for (const name of given.positionals) {
    for (const {file, read} of texts(name, (message) => messages.push(message))) {
      try {
        const found = translate(read(), {file, ...defaults})
        receipts.push(...found.receipts)
        messages.push(...found.messages)
      } catch (error) {
        if (!(error instanceof Failure)) throw error
        errors.push(...error.messages)
      }
    }
  }
  errors.push(...messages.filter((m) => m.severity === 'error'))
  if (errors.length > 0) throw new Failure(errors)

  const translation: Translation = {format: 1, receipts, messages}
  const style = makeStyle({units: choice(given, 'units')})
  const why = given.flag('why')
  const text = () => translationText(translation, {sources, style, why, width: columns(), colour: colour()})
  const markdown = () => translationMarkdown(translation, {sources, style, why})
  const json = () => `${JSON.stringify(translation, null, 1)}\n`
  const out = given.text('out')
  if (out !== undefined) {
    const plain = translationText(translation, {sources, style, why})
    writeAll(
      out,
      new Map([
        ['translation.txt', plain],
        ['translation.md', markdown()],
        ['translation.json', json()],
      ]),
      given.flag('replace'),
    )
    return {out: `Written to ${out}: translation.txt, translation.md, translation.json.\n`, err: '', code: 0}
  }
  const format = given.text('format')
  return {out: format === 'json' ? json() : format === 'markdown' ? markdown() : text(), err: '', code: 0}
}

function givenDefaults(given: Given): {year?: number; place?: string} {
  const year = given.text('year')
  const place = given.text('place')?.toLowerCase()
  if (year !== undefined && !/^\d{4}$/.test(year)) throw usageFailure(`--year cannot be “${year}”`, 'write a year such as 1829')
  if (place !== undefined && !['us', 'uk', 'au', 'eu'].includes(place))
    throw usageFailure(`--place cannot be “${place}”`, 'write us, uk, au or eu')
  return {...(year === undefined ? {} : {year: Number(year)}), ...(place === undefined ? {} : {place})}
}

function texts(name: string, told: Told): Array<{file: string; read: () => string}> {
  if (name === '-') return [{file: 'standard input', read: () => decodeText(readFileSync(0), 'standard input', 'receipt', told)}]
  if (existsSync(name) && statSync(name).isDirectory()) {
    const found = markdownFiles(name)
    if (found.length === 0) {
      throw new Failure([
        {
          file: name,
          line: 1,
          column: 1,
          severity: 'error',
          rule: 'file-folder',
          reason: 'this folder holds no receipts',
          suggest: 'put .md files in it, or name another',
        },
      ])
    }
    return found.map((file) => ({file, read: () => readText(file, file, 'receipt', told)}))
  }
  return [{file: name, read: () => readText(name, name, 'receipt', told)}]
}
