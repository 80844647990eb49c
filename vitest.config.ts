import {defineConfig} from 'vitest/config'

/**
 * What is measured against the clock, or drives a browser that has to keep up with a hand, runs by itself when the rest is done. Test files
 * share their modules: a file of its own would load the whole program anew, which took a third of the time.
 */
const alone = ['tests/page-*.test.ts', 'tests/project-regexes.test.ts', 'tests/sheets-command.test.ts']
const all = 'tests/**/*.test.ts'
const common = {testTimeout: 120_000, hookTimeout: 120_000, isolate: false}

export default defineConfig({
  test: {
    projects: [
      {test: {...common, name: 'core', include: [all], exclude: alone, maxWorkers: '100%', sequence: {groupOrder: 0}}},
      {test: {...common, name: 'alone', include: alone, maxWorkers: 1, sequence: {groupOrder: 1}}},
    ],
  },
})
