// Builds the whole tool as one page, dist/hearthfall.html: the views of an empty page drawn by the page's own components, a small script that
// puts them up, the page's script, and the core for the workers, packed. A Content-Security-Policy names the hash of every script and style,
// so that nothing else ever runs or is fetched.
import {createHash} from 'node:crypto'
import {mkdirSync, readFileSync, writeFileSync} from 'node:fs'
import {join, relative, resolve} from 'node:path'
import {gzipSync} from 'node:zlib'
import {build as bundle} from 'esbuild'

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

async function bundled(entry, format, options = {}) {
  return bundle({
    entryPoints: [join(root, entry)],
    bundle: true,
    minify: true,
    write: false,
    format,
    platform: 'browser',
    target: 'es2022',
    define: {global: 'globalThis'},
    jsx: 'automatic',
    jsxImportSource: 'preact',
    legalComments: 'none',
    logLevel: 'warning',
    metafile: true,
    ...options,
  })
}

async function text(entry, format, options) {
  return (await bundled(entry, format, options)).outputFiles[0].text.trim()
}

/** What a module exports, run here. */
async function ran(entry) {
  const code = await text(entry, 'esm')
  return import(`data:text/javascript,${encodeURIComponent(code)}`)
}

const code = await text('src/page/engine.worker.ts', 'iife', {
  conditions: ['worker', 'browser', 'module', 'import'],
  inject: [join(root, 'src/page/buffer-shim.ts')],
  plugins: [oneLanguage],
})
// A mark of this very code: no plan kept by another version is taken for one of this.
const engine = `globalThis.HEARTHFALL_BUILD=${JSON.stringify(createHash('sha256').update(code).digest('base64').slice(0, 12))};${code}`
const packed = gzipSync(engine, {level: 9}).toString('base64')

const [first, base, rest] = await inTurn(['src/page/main.tsx', 'src/page/base.ts', 'src/page/rest.ts'], 'src/page/shared.ts')

// Its address is all that the page asks of a browser to be drawn.
globalThis.location ??= {hash: '', protocol: 'file:'}
const {fresh, begun} = await ran('src/page/prerender.tsx')
const {lookHash} = await ran('src/sheets/page.ts')
const html = filled(readFileSync(join(root, 'src/page/index.html'), 'utf8'), {
  '<style>': await text('src/page/look.css'),
  '<template id="hearthfall-fresh">': fresh,
  '<template id="hearthfall-begun">': begun,
  '<script id="hearthfall-early">': await text('src/page/early.ts', 'iife'),
  '<script type="text/plain" class="hearthfall-rest" id="hearthfall-base">': base,
  '<script type="text/plain" class="hearthfall-rest">': rest,
  '<script id="hearthfall-first">': first,
  '<script type="text/plain" id="hearthfall-engine">': packed,
})
mkdirSync(join(out, '..'), {recursive: true})
writeFileSync(out, guarded(plain(html), lookHash))
writeFileSync(join(out, '..', 'hearthfall-offline.js'), readFileSync(join(root, 'src/page/offline.js')))
const size = Buffer.byteLength(readFileSync(out))
process.stdout.write(
  `${out}: ${Math.round(size / 1024)} KB (core ${Math.round(engine.length / 1024)} KB, packed ${Math.round(packed.length / 1024)} KB)\n`,
)

/**
 * Scripts that run in turn on one page. A module stands in the first that needs it, and the later ones take it from there, so that there is
 * one state and one Preact. `between`, an empty module that begins each script but the last, is where they are handed over.
 */
async function inTurn(entries, between) {
  const here = resolve(root, between)
  const owner = new Map()
  const shared = entries.map(() => new Set())
  const given = (list) => ({
    name: 'handed over',
    setup(it) {
      it.onLoad({filter: /./, namespace: 'file'}, ({path}) =>
        path === here
          ? {
              contents: `${list.map((one, i) => `import * as m${i} from ${JSON.stringify(one)}`).join('\n')}
Object.assign(globalThis.hearthfallShared ??= {}, {${list.map((one, i) => `${JSON.stringify(relative(root, one))}: m${i}`).join(', ')}})`,
              resolveDir: root,
            }
          : undefined,
      )
    },
  })
  const taken = {
    name: 'taken from the scripts before',
    setup(it) {
      it.onResolve({filter: /./}, async ({path, pluginData, ...from}) => {
        if (pluginData === 'asked') return undefined
        const found = await it.resolve(path, {...from, pluginData: 'asked'})
        if (from.kind === 'entry-point' || found.path === here || !owner.has(found.path)) return found
        shared[owner.get(found.path)].add(found.path)
        // Told by its name to be what `module.exports` makes of it.
        return {path: `${relative(root, found.path)}.cjs`, namespace: 'shared'}
      })
      it.onLoad({filter: /./, namespace: 'shared'}, ({path}) => ({
        contents: `module.exports = globalThis.hearthfallShared[${JSON.stringify(path.slice(0, -'.cjs'.length))}]`,
      }))
    },
  }
  const made = async (entry, k) => {
    const script = await bundled(entry, 'iife', {plugins: [given([...shared[k]]), taken]})
    return {text: script.outputFiles[0].text.trim(), inputs: Object.keys(script.metafile.inputs)}
  }
  // Once to find what each holds and takes; a script's own modules are its own while it is made.
  for (const [k, entry] of entries.entries())
    for (const path of (await made(entry, k)).inputs) if (!path.startsWith('shared:')) owner.set(resolve(root, path), k)
  const texts = []
  for (const [k, entry] of entries.entries()) {
    const own = [...owner].filter(([, one]) => one >= k)
    for (const [path] of own) owner.delete(path)
    texts.push((await made(entry, k)).text)
    for (const [path, one] of own) owner.set(path, one)
  }
  return texts
}

/** The page with what belongs into its empty elements, by their tags. */
function filled(page, parts) {
  return Object.entries(parts).reduce((html, [tag, inside]) => {
    const at = html.indexOf(`${tag}</`)
    if (at < 0) throw new Error(`index.html has no empty ${tag}`)
    return html.slice(0, at + tag.length) + inside + html.slice(at + tag.length)
  }, page)
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
  const hashes = (tag) =>
    // The packed core alone never runs in the page itself.
    [...html.matchAll(new RegExp(`<${tag}(?![^>]*id="hearthfall-engine")(?:\\s[^>]*)?>([\\s\\S]*?)</${tag}>`, 'g'))].map(
      ([, text]) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`,
    )
  const policy = [
    "default-src 'none'",
    `script-src ${hashes('script').join(' ')}`,
    `style-src ${[...hashes('style'), `'${sheetLook}'`].join(' ')}`,
    "worker-src blob: 'self'",
    'img-src data: blob:',
    'media-src blob:',
    'manifest-src data: blob:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ')
  return html.replace(
    '<meta charset="utf-8">',
    `<meta charset="utf-8">\n    <meta http-equiv="Content-Security-Policy" content="${policy}">`,
  )
}
