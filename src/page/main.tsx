import {render} from 'preact'
import './shared.js'
import type {Happened} from './early.js'
import {fetchRest} from './later.js'
import {inAPause, painted} from './slices.js'
import {app} from './state.js'
import {Whole} from './whole.js'
import {words} from './words.js'

/** Where the page comes from a server it can be put among a device's own programs: the manifest is made here, so that it names this address. */
function manifest(): void {
  if (!/^https?:$/.test(location.protocol)) return
  const here = location.href.replace(/[?#].*$/, '')
  const icon = `data:image/svg+xml,${encodeURIComponent('<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 512 512"><rect width="512" height="512" fill="#14110f"/><path d="M72 420V300a184 184 0 0 1 368 0v120z" fill="#fff"/><path d="M176 420V330a80 80 0 0 1 160 0v90z" fill="#14110f"/></svg>')}`
  const link = document.createElement('link')
  link.rel = 'manifest'
  link.href = `data:application/manifest+json,${encodeURIComponent(
    JSON.stringify({
      name: words.name,
      short_name: words.name,
      start_url: here,
      scope: here,
      id: here,
      display: 'standalone',
      background_color: '#ffffff',
      theme_color: '#14110f',
      icons: [{src: icon, sizes: 'any', type: 'image/svg+xml'}],
    }),
  )}`
  document.head.append(link)
}

/** Go on from what was typed and pressed before this script was there, and draw over what was drawn by then. */
function goOn({box, again}: Happened): void {
  const caret = box && document.activeElement === box ? ([box.selectionStart, box.selectionEnd] as const) : null
  if (box) app.beginReceipt(box.value)
  render(<Whole />, document.getElementById('page')!)
  const now = document.querySelector<HTMLTextAreaElement>('#page .one textarea')
  if (caret && now && document.activeElement !== now) {
    now.focus()
    now.setSelectionRange(...caret)
  }
  again()
  void painted().then(() => fetchRest(inAPause))
}

// Another view than the first is drawn by the rest of the script, which is read while the day is fetched.
if (app.state.place !== 'receipts') fetchRest(setTimeout)
manifest()
const early = globalThis.hearthfall
void app.start(early).then(() => goOn(early.takeOver()))
