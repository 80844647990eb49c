declare global {
  /** Set by the build: a mark of the code. */
  var HEARTHFALL_BUILD: string | undefined
}

/**
 * The mark of the program that runs, so that no plan kept by another is taken for one of its own; null of one that runs from its source, which
 * may be another each time.
 */
export const built = (): string | null => globalThis.HEARTHFALL_BUILD ?? null
