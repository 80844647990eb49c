import type {ComponentChildren, JSX} from 'preact'
import {useEffect, useState} from 'preact/hooks'
import type {Rest} from './rest.js'

/** The blocks that hold the rest of the page's script. They stand before this script, so they are there. */
const BLOCKS = 'script.hearthfall-rest'

declare global {
  /** The rest of the page's script, once it has run. */
  var hearthfallRest: Rest | undefined
}

const waiting = new Set<(rest: Rest) => void>()
let ran = 0

/** Run the next of the blocks. */
function runNext(): void {
  const block = document.querySelectorAll(BLOCKS)[ran++]
  if (!block) throw new Error('the page is not whole')
  const script = document.createElement('script')
  // Not a part of the page as it is handed on.
  script.dataset.made = ''
  script.textContent = block.textContent
  document.head.append(script)
  const {hearthfallRest} = globalThis
  if (!hearthfallRest) return
  for (const one of waiting) one(hearthfallRest)
  waiting.clear()
}

/** The rest of the page's script, run now where it has not been yet. */
export function rest(): Rest {
  while (!globalThis.hearthfallRest) runNext()
  return globalThis.hearthfallRest
}

/** Run the rest of the page's script block by block, each when `wait` calls it. */
export function fetchRest(wait: (run: () => void) => unknown): void {
  if (globalThis.hearthfallRest) return
  wait(() => {
    if (globalThis.hearthfallRest) return
    runNext()
    fetchRest(wait)
  })
}

/** The rest of the page's script; null until it has run, which a view that waits for it sees to. */
export function useRest(): Rest | null {
  const [there, setThere] = useState<Rest | null>(globalThis.hearthfallRest ?? null)
  useEffect(() => {
    if (there) return
    const come = (one: Rest): void => setThere(one)
    // It may have come between the drawing and this.
    if (globalThis.hearthfallRest) {
      come(globalThis.hearthfallRest)
      return
    }
    waiting.add(come)
    fetchRest(setTimeout)
    return () => void waiting.delete(come)
  }, [there])
  return there
}

/** A part of a view that belongs to the rest of the script. */
export function Later({children}: {readonly children: (rest: Rest) => ComponentChildren}): JSX.Element | null {
  const there = useRest()
  return there ? <>{children(there)}</> : null
}
