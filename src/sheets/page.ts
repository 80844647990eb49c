import type {Element, ElementContent, Root} from 'hast'
import {defaultSchema, type Schema, sanitize} from 'hast-util-sanitize'
import {toHtml} from 'hast-util-to-html'
import {h} from 'hastscript'
import {lookCss} from './look.js'
import type {Style} from './style.js'

/** SHA-256 of `lookCss`, base64. The test that checks it prints the right one after the look is changed. */
export const lookHash = 'sha256-dI4MXG3QXftbAnTKP+Q8UMF4lOeE2X02BgvIBMyXmE0='

/** No script, no frame, no form, no font and nothing from elsewhere; only our own style. */
export const policy = `default-src 'none'; style-src '${lookHash}'; img-src data:; base-uri 'none'; form-action 'none'`

const svgNames = [
  'svg',
  'title',
  'desc',
  'g',
  'path',
  'line',
  'rect',
  'circle',
  'ellipse',
  'polygon',
  'text',
  'tspan',
  'defs',
  'pattern',
  'clipPath',
]

const svgAttributes = [
  'viewBox',
  'width',
  'height',
  'x',
  'y',
  'x1',
  'x2',
  'y1',
  'y2',
  'cx',
  'cy',
  'r',
  'rx',
  'ry',
  'd',
  'points',
  'transform',
  'patternTransform',
  'patternUnits',
  'fill',
  'fillOpacity',
  'stroke',
  'strokeWidth',
  'strokeDashArray',
  'strokeLineCap',
  'strokeLineJoin',
  'textAnchor',
  'dominantBaseline',
  'fontSize',
  'fontFamily',
  'fontWeight',
  'fontStyle',
  'clipPath',
  'paintOrder',
  'xmlns',
  'preserveAspectRatio',
]

/** What may stand on a page. Everything else is taken out, whoever wrote it. */
export const allowed: Schema = {
  strip: ['script', 'style'],
  clobber: [],
  clobberPrefix: '',
  ancestors: defaultSchema.ancestors ?? null,
  protocols: {href: ['http', 'https', 'mailto']},
  tagNames: [
    'a',
    'abbr',
    'article',
    'aside',
    'blockquote',
    'br',
    'caption',
    'code',
    'dd',
    'del',
    'div',
    'dl',
    'dt',
    'em',
    'figcaption',
    'figure',
    'footer',
    'h1',
    'h2',
    'h3',
    'h4',
    'h5',
    'h6',
    'header',
    'hr',
    'li',
    'main',
    'mark',
    'nav',
    'ol',
    'p',
    'pre',
    'section',
    'small',
    'span',
    'strong',
    'sub',
    'sup',
    'table',
    'tbody',
    'td',
    'tfoot',
    'th',
    'thead',
    'time',
    'tr',
    'ul',
    ...svgNames,
  ],
  attributes: {
    '*': ['id', 'className', 'lang', 'role', 'ariaLabel', 'ariaLabelledBy', 'ariaDescribedBy', 'ariaHidden', 'tabIndex', 'data*'],
    a: ['href'],
    ol: ['start'],
    td: ['colSpan', 'rowSpan'],
    th: ['colSpan', 'rowSpan', 'scope'],
    time: ['dateTime'],
    ...Object.fromEntries(svgNames.map((name) => [name, svgAttributes])),
  },
}

/** A tree with everything taken out that `allowed` does not name. */
export function clean(tree: Root | Element): Root {
  const safe = sanitize(tree, allowed)
  return safe.type === 'root' ? safe : {type: 'root', children: [safe as ElementContent]}
}

/** One whole page. `sheets` are put in `<main>`, sanitised; `screen` (links back) is not printed. */
export function page(options: {
  readonly title: string
  readonly style: Style
  readonly body: ReadonlyArray<ElementContent>
  readonly up?: {readonly href: string; readonly text: string}
}): string {
  const {words} = options.style
  const body = clean({
    type: 'root',
    children: [
      ...(options.up
        ? [h('nav', {className: ['screen'], ariaLabel: words['page.nav']}, h('a', {href: options.up.href}, options.up.text))]
        : []),
      h('main', [...options.body]),
    ],
  })
  const tree: Root = {
    type: 'root',
    children: [
      {type: 'doctype'},
      h('html', {lang: words['language.code']}, [
        h('head', [
          h('meta', {charSet: 'utf-8'}),
          h('meta', {httpEquiv: 'Content-Security-Policy', content: policy}),
          h('meta', {name: 'viewport', content: 'width=device-width, initial-scale=1'}),
          h('meta', {name: 'referrer', content: 'no-referrer'}),
          h('title', options.title),
          h('style', lookCss),
        ]),
        h('body', body.children as ElementContent[]),
      ]),
    ],
  }
  return `${toHtml(tree)}\n`
}

/** A drawing as a file of its own. */
export function svgFile(svg: Element): string {
  const safe = clean(svg)
  return `<?xml version="1.0" encoding="UTF-8"?>\n${toHtml(safe, {space: 'svg', closeSelfClosing: true})}\n`
}

/** A slug for a file name: ASCII letters, digits and hyphens, never empty, never a path. */
export function slug(text: string): string {
  const plain = text
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 60)
    .replace(/-$/, '')
  return plain === '' ? 'receipt' : plain
}
