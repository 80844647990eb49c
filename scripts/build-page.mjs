// Builds the whole tool as one page, dist/hearthfall.html: the core goes into a worker whose code lies packed inside the page, the rest is
// inlined by Vite, and a Content-Security-Policy names the hash of every script and style, so that nothing else ever runs or is fetched.
import {createHash} from 'node:crypto'
import {mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join, resolve} from 'node:path'
import {gzipSync} from 'node:zlib'
import {build as bundle} from 'esbuild'
import {build} from 'vite'
import {viteSingleFile} from 'vite-plugin-singlefile'

const root = resolve(import.meta.dirname, '..')
const out = process.argv[2] ?? join(root, 'dist', 'hearthfall.html')

// The schema library carries its messages in fifty languages; ours are our own.
const oneLanguage = {
  name: 'one language',
  setup(it) {
    it.onLoad({filter: /[\\/]zod[\\/]v4[\\/]locales[\\/][^\\/]+\.js$/}, ({path}) =>
      /[\\/](?:en|index)\.js$/.test(path) ? undefined : {contents: 'export default () => ({localeError: () => undefined})'},
    )
  },
}

async function script(entry, format, platform = 'browser') {
  const result = await bundle({
    entryPoints: [join(root, entry)],
    bundle: true,
    minify: true,
    write: false,
    format,
    platform,
    target: 'es2022',
    conditions: ['worker', 'browser', 'module', 'import'],
    define: {global: 'globalThis'},
    inject: format === 'iife' ? [join(root, 'src/page/buffer-shim.ts')] : [],
    legalComments: 'none',
    logLevel: 'warning',
    plugins: [oneLanguage],
  })
  return result.outputFiles[0].text
}

const code = await script('src/page/engine.worker.ts', 'iife')
// A mark of this very code: no plan kept by another version is taken for one of this.
const engine = `globalThis.HEARTHFALL_BUILD=${JSON.stringify(createHash('sha256').update(code).digest('base64').slice(0, 12))};${code}`
const packed = gzipSync(engine, {level: 9}).toString('base64')

const work = mkdtempSync(join(tmpdir(), 'hearthfall-page-'))
try {
  await build({
    root: join(root, 'src/page'),
    configFile: false,
    logLevel: 'warn',
    define: {global: 'globalThis'},
    oxc: {jsx: {runtime: 'automatic', importSource: 'preact'}},
    plugins: [viteSingleFile({removeViteModuleLoader: true})],
    build: {outDir: work, emptyOutDir: true, target: 'es2022', modulePreload: false, reportCompressedSize: false},
  })
  const html = readFileSync(join(work, 'index.html'), 'utf8')
  const {lookHash} = await import(`data:text/javascript,${encodeURIComponent(await script('src/sheets/page.ts', 'esm', 'node'))}`)
  mkdirSync(join(out, '..'), {recursive: true})
  writeFileSync(out, guarded(plain(laid(html)), lookHash))
  writeFileSync(join(out, '..', 'hearthfall-offline.js'), readFileSync(join(root, 'src/page/offline.js')))
  const size = Buffer.byteLength(readFileSync(out))
  process.stdout.write(
    `${out}: ${Math.round(size / 1024)} KB (core ${Math.round(engine.length / 1024)} KB, packed ${Math.round(packed.length / 1024)} KB)\n`,
  )
} finally {
  rmSync(work, {recursive: true, force: true})
}

/** The page in the order it is needed: its look, its own script, and the packed core last, which no browser runs by itself. */
function laid(html) {
  const script = /<script type="module"[^>]*>[\s\S]*?<\/script>/.exec(html)
  const bare = html.slice(0, script.index) + html.slice(script.index + script[0].length)
  const at = bare.lastIndexOf('</body>')
  const own = script[0].replace(/^<script[^>]*>/, '<script type="module" async>')
  return `${bare.slice(0, at)}${own}\n<script type="text/plain" id="hearthfall-engine">${packed}</script>\n${bare.slice(at)}`
}

/**
 * The page in ASCII alone, every other character as an escape of its language: a browser reads, keeps and compiles such a text in half the
 * time and room, and it opens right whatever encoding a server claims for it.
 */
function plain(html) {
  const escaped = (text, one) => text.replace(/[^\0-\x7f]/gu, (c) => one(c))
  const units = (c) => [...Array(c.length).keys()].map((i) => `\\u${c.charCodeAt(i).toString(16).padStart(4, '0')}`).join('')
  return html.replace(
    /(<script[^>]*>)([\s\S]*?)(<\/script>)|(<style[^>]*>)([\s\S]*?)(<\/style>)|[^<]+|</g,
    (all, script, js, endScript, style, css, endStyle) =>
      script
        ? script + escaped(js, units) + endScript
        : style
          ? style + escaped(css, (c) => `\\${c.codePointAt(0).toString(16)} `) + endStyle
          : escaped(all, (c) => `&#${c.codePointAt(0)};`),
  )
}

/** The page with its policy: only the scripts and styles that stand in it now. `sheetLook` is the style of the printed sheets. */
function guarded(html, sheetLook) {
  const body = html
    .replace(/<script type="module" crossorigin>/g, '<script type="module">')
    .replace(/<style rel="stylesheet" crossorigin>/g, '<style>')
  const hashes = (tag) =>
    [...body.matchAll(new RegExp(`<${tag}(?![^>]*text/plain)(?:\\s[^>]*)?>([\\s\\S]*?)</${tag}>`, 'g'))].map(
      ([, text]) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`,
    )
  const policy = [
    "default-src 'none'",
    `script-src ${hashes('script').join(' ')}`,
    `style-src ${[...hashes('style'), `'${lookOf(sheetLook)}'`].join(' ')}`,
    "worker-src blob: 'self'",
    'img-src data: blob:',
    'media-src blob:',
    'manifest-src data: blob:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ')
  return body.replace(
    '<meta charset="utf-8">',
    `<meta charset="utf-8">\n    <meta http-equiv="Content-Security-Policy" content="${policy}">`,
  )
}

function lookOf(hash) {
  return hash.replace(/^'|'$/g, '')
}
