import type {IDBPDatabase} from 'idb'
import {FULL, LAST, LIKES, stored} from './device.js'
import {CARRIER} from './embedded.js'
import {type KeptDay, type KeptStep, newest, openShelf, type Shelf} from './shelf.js'

/**
 * The first script of the page, small enough to run before anything is painted. It puts up the view the build has drawn, asks for the day
 * that was open last, and takes down what is pressed and typed until the page's own script is there.
 */

/** The ids of the two views the build draws: of an empty page, and what stands in its main part once a receipt is begun. */
export const FRESH = 'hearthfall-fresh'
export const BEGUN = 'hearthfall-begun'

/** The day that was open last, as it stands on the shelf; null where nothing was ever kept. */
export interface Opened {
  readonly day: string | null
  readonly shelf: readonly KeptDay[]
  readonly files: ReadonlyMap<string, string>
  readonly steps: readonly KeptStep[]
}

/** What happened before the page's own script was there. */
export interface Happened {
  /** The box of a receipt begun by then. */
  readonly box: HTMLTextAreaElement | null
  /** Does again what was pressed and chosen, in its order, now that somebody hears it. */
  readonly again: () => void
}

export interface Early {
  readonly shelf: Promise<IDBPDatabase<Shelf>>
  readonly opened: Promise<Opened>
  /** Stop taking down: from now on the page's own script hears. */
  readonly takeOver: () => Happened
}

declare global {
  var hearthfall: Early
}

// A browser that has no shelf for this page may say so at once.
const shelf = (async () => openShelf())()

async function lastDay(): Promise<Opened> {
  const tx = (await shelf).transaction(['days', 'files', 'steps'])
  const last = stored(LAST) ?? ''
  const of = (day: string): Promise<[Array<{path: string; text: string}>, KeptStep[]]> =>
    Promise.all([tx.objectStore('files').index('day').getAll(day), tx.objectStore('steps').index('day').getAll(day)])
  // The day is asked for with the list of days: only where it is not on it is another looked up.
  const [days, found] = await Promise.all([tx.objectStore('days').getAll(), of(last)])
  const day = days.some((one) => one.id === last) ? last : newest(days)
  const [files, steps] = day === last || day === null ? found : await of(day)
  return {day, shelf: days, files: new Map(files.map(({path, text}) => [path, text])), steps}
}

const opened = lastDay()
// The page's own script hears of it; until then it is nobody's fault.
opened.catch(() => {})

function light(): string {
  try {
    const likes: unknown = JSON.parse(stored(LIKES) ?? '{}')
    return likes && typeof likes === 'object' && 'light' in likes ? String(likes.light) : 'device'
  } catch {
    return 'device'
  }
}
document.documentElement.dataset.light = light()

const page = document.getElementById('page')!
const drawn = (id: string): Node => (document.getElementById(id) as HTMLTemplateElement).content.cloneNode(true)

/** The drawn frame at another place of the page: the ways there, and nothing in the main part yet. */
function turnTo(hash: string): void {
  const frame = (selector: string): Element[] => [...page.querySelectorAll(selector)]
  const under = page.querySelector(`.under a[href="${hash}"]`)
  const stage = page.querySelector(`.fall a[href="${hash}"]`)
  if (under) {
    for (const link of frame('.under a')) link.removeAttribute('aria-current')
    under.setAttribute('aria-current', 'page')
  } else if (stage) {
    for (const link of frame('.fall a')) link.removeAttribute('aria-current')
    stage.setAttribute('aria-current', 'page')
    page.querySelector('.under')?.remove()
  }
}

const kept = Boolean(stored(FULL)) || document.getElementById(CARRIER) !== null
const hash = /^#(?:oven|day|plan|bake|print|keep)$/.exec(location.hash)?.[0]
page.append(drawn(FRESH))
const main = page.querySelector('main')
if (kept || hash) {
  // Something else will stand there: no word of the empty page is shown in its place.
  main?.replaceChildren()
  if (kept) for (const said of page.querySelectorAll('.which, .saving')) said.textContent = '\xa0'
  if (hash) turnTo(hash)
}

let box: HTMLTextAreaElement | null = null
const again: Array<() => void> = []

function press(event: Event): void {
  const target = (event.target as Element).closest('button, a.skip')
  if (!(target instanceof HTMLElement)) return
  event.preventDefault()
  if (box === null && main?.querySelector('.do.main') === target) {
    main.replaceChildren(drawn(BEGUN))
    box = main.querySelector('textarea')
    box?.focus()
  } else again.push(() => target.click())
}

function change(event: Event): void {
  const {target} = event
  if (target === box || !(target instanceof HTMLSelectElement || target instanceof HTMLInputElement)) return
  const {value} = target
  again.push(() => {
    // What files were chosen stands in the control itself, and nobody else may set it.
    if (target.type !== 'file') target.value = value
    target.dispatchEvent(new Event('change', {bubbles: true}))
  })
}

page.addEventListener('click', press, true)
page.addEventListener('change', change, true)

globalThis.hearthfall = {
  shelf,
  opened,
  takeOver() {
    page.removeEventListener('click', press, true)
    page.removeEventListener('change', change, true)
    return {
      box,
      again: () => {
        for (const one of again) one()
      },
    }
  },
}
