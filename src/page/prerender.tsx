import {render} from 'preact-render-to-string'
import {Receipts} from './receipts.js'
import {app} from './state.js'
import {Whole} from './whole.js'

/**
 * The views that are drawn when the page is built (`scripts/build-page.mjs`), by the page's own components: a browser shows them before it
 * has read a line of the page's script, which then goes on in them.
 */

app.state = {...app.state, ready: true}
/** The whole page with nothing in it yet. */
export const fresh = render(<Whole />)

const path = 'receipts/new-receipt.md'
app.state = {...app.state, files: new Map([[path, '']]), receipt: {path, index: 0}}
/** The main part of it when a receipt is begun. */
export const begun = render(<Receipts state={app.state} />)
