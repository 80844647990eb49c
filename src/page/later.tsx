import type {ComponentChildren, JSX} from 'preact'
import {useEffect, useState} from 'preact/hooks'
import type {Rest} from './rest.js'
import {painted} from './slices.js'

/** The id of the block that holds the rest of the page's script. It stands before this script, so it is there. */
const BLOCK = 'hearthfall-rest'

declare global {
  /** The rest of the page's script, once it has run. */
  var hearthfallRest: Rest | undefined
}

const waiting = new Set<(rest: Rest) => void>()

/** The rest of the page's script; it is read and run when it is first asked for. */
export function rest(): Rest {
  if (!globalThis.hearthfallRest) {
    const script = document.createElement('script')
    // Not a part of the page as it is handed on.
    script.dataset.made = ''
    script.textContent = document.getElementById(BLOCK)?.textContent ?? ''
    document.head.append(script)
    for (const one of waiting) one(globalThis.hearthfallRest!)
    waiting.clear()
  }
  return globalThis.hearthfallRest!
}

/** The rest of the page's script; null until it has been read, which happens once the first view is painted. */
export function useRest(): Rest | null {
  const [there, setThere] = useState<Rest | null>(globalThis.hearthfallRest ?? null)
  useEffect(() => {
    if (there) return
    const come = (one: Rest): void => setThere(one)
    waiting.add(come)
    void painted().then(rest)
    return () => waiting.delete(come)
  }, [there])
  return there
}

/** A part of a view that belongs to the rest of the script. */
export function Later({children}: {readonly children: (rest: Rest) => ComponentChildren}): JSX.Element | null {
  const there = useRest()
  return there ? <>{children(there)}</> : null
}
