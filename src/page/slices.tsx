import type {ComponentChildren, JSX} from 'preact'
import {useEffect, useRef, useState} from 'preact/hooks'

/**
 * Long drawings in slices. A phone at a sixth of a laptop's speed must never stand still under a thumb, so whatever is long is drawn a
 * piece at a time, and the browser sees to keys and touches between the pieces.
 */

/** Pieces that wait: one is drawn in each pause of the browser. */
const waiting: Array<() => void> = []
let asked = false

const pause: (run: () => void) => void =
  typeof requestIdleCallback === 'function'
    ? // Even a busy page draws the next piece soon.
      (run) => void requestIdleCallback(run, {timeout: 150})
    : (run) => void setTimeout(run, 30)

function next(): void {
  waiting.shift()?.()
  asked = waiting.length > 0
  if (asked) pause(next)
}

/**
 * Do something in a pause of the browser, after what was asked before.
 *
 * @returns a function that calls it off
 */
export function inAPause(run: () => void): () => void {
  waiting.push(run)
  if (!asked) {
    asked = true
    pause(next)
  }
  return () => {
    const at = waiting.indexOf(run)
    if (at >= 0) waiting.splice(at, 1)
  }
}

/** Resolves when what is drawn now has been painted; soon, where nobody looks at the page. */
export const painted = (): Promise<void> =>
  new Promise((resolve) => {
    requestAnimationFrame(() => setTimeout(resolve))
    setTimeout(resolve, 300)
  })

/** How many of a long list to draw now: some at first, more in every pause. */
export function useGrowing(total: number, first = 6, by = 6): number {
  const [shown, setShown] = useState(first)
  useEffect(() => (shown < total ? inAPause(() => setShown(shown + by)) : undefined), [shown, total, by])
  return Math.min(shown, total)
}

/** A part of a view that may come a moment after the rest. */
export function Soon({children}: {readonly children: ComponentChildren}): JSX.Element | null {
  const [come, setCome] = useState(false)
  useEffect(() => inAPause(() => setCome(true)), [])
  return come ? <>{children}</> : null
}

/** Something to open, whose inside is drawn when it is opened first. */
export function Fold(props: {
  readonly title: ComponentChildren
  readonly children: () => ComponentChildren
  readonly class?: string
}): JSX.Element {
  const [opened, setOpened] = useState(false)
  const box = useRef<HTMLDetailsElement>(null)
  useEffect(() => {
    // Opened before this script was there.
    if (box.current?.open) setOpened(true)
  }, [])
  return (
    <details
      ref={box}
      class={props.class}
      onToggle={() => {
        if (box.current?.open) setOpened(true)
      }}
    >
      {/* biome-ignore lint/a11y/noStaticElementInteractions: a summary is a button; its click comes before the toggling, so that what is inside stands there when it opens */}
      <summary onClick={() => setOpened(true)}>{props.title}</summary>
      {opened ? props.children() : null}
    </details>
  )
}
