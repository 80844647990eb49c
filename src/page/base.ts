import './shared.js'
import './front.js'

/** What the rest of the page's script stands on: reading and editing front matter. It is a script of its own, so that neither holds a frame. */
