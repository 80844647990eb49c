/**
 * In the built page, the modules of this script that the rest of it needs too (`scripts/build-page.mjs` finds them), so that both have
 * the same. Nothing here where the modules are not built into a page.
 */
export {}
