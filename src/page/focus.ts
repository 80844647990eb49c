/** What a press may lead on to. Boxes to type in are left out: on a phone each would bring up its keyboard. */
const PRESSED = 'button:not(:disabled), a[href], summary, select:not(:disabled)'
const HEADING = 'h1:not(.unseen), h2, h3'

/**
 * Keeps a keyboard where it was. A press often takes its own button away, and a browser then begins again at the top of the page: whoever
 * works by keyboard would have the whole way to go once more (WCAG 2.2, 2.4.3). Then what stands nearest is focused: what followed the
 * button, what is in its place now, or the heading over it.
 *
 * @param root what is watched
 * @returns stops it
 */
export function keepFocus(root: HTMLElement): () => void {
  let last: Element | null = null
  let around: Element[] = []
  let near: Element[] = []
  const come = ({target}: FocusEvent): void => {
    if (!(target instanceof Element)) return
    last = target
    around = []
    for (let one = target.parentElement; one && root.contains(one); one = one.parentElement) around.push(one)
    const all = [...root.querySelectorAll(PRESSED)]
    const at = all.indexOf(target)
    near = at < 0 ? [] : [...all.slice(at + 1, at + 4), ...all.slice(Math.max(0, at - 3), at).reverse()]
  }
  const gone = (): void => {
    const lost = last !== null && (!last.isConnected || last.matches(':disabled'))
    const {activeElement} = document
    if (!lost || (activeElement !== null && activeElement !== document.body && activeElement !== last)) return
    last = null
    for (const place of around) {
      if (!place.isConnected) continue
      const next =
        near.find((one) => place.contains(one) && one.matches(PRESSED)) ??
        place.querySelector(PRESSED) ??
        place.querySelector(HEADING) ??
        (place.matches('main') ? place : null)
      if (!(next instanceof HTMLElement)) continue
      if (!next.matches(PRESSED)) next.tabIndex = -1
      next.focus({preventScroll: true})
      return
    }
  }
  const watcher = new MutationObserver(gone)
  watcher.observe(root, {childList: true, subtree: true, attributes: true, attributeFilter: ['disabled']})
  root.addEventListener('focusin', come)
  return () => {
    watcher.disconnect()
    root.removeEventListener('focusin', come)
  }
}
