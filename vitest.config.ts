import {defineConfig} from 'vitest/config'

/** Test files share their modules: a file of its own would load the whole program anew, which took a third of the time. */
export default defineConfig({
  test: {include: ['tests/**/*.test.ts'], isolate: false, testTimeout: 60_000, hookTimeout: 60_000},
})
