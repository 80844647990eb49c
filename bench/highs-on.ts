import highsModule from 'highs'
import type {Model} from '../src/plan/model.js'
import {milp} from './plan-milp.js'

/** The package's types describe its CommonJS form; under Node's modules the default export is the loader itself. */
const loadHighs = highsModule as unknown as typeof highsModule.default

/**
 * What HiGHS makes of a model in so many seconds.
 *
 * @returns Its best and what it has proved that none is below, in the plan's units (NaN where it has none); and how it ended, in its words.
 */
export async function highsOn(model: Model, seconds: number): Promise<{best: number; proved: number; status: string}> {
  // What it has proved is told in its log only.
  let proved = Number.NaN
  const highs = await loadHighs({
    print: (line: string) => {
      const said = /Dual bound\s+(\S+)/.exec(line)
      if (said) proved = Number(said[1]) + model.constant
    },
  } as Parameters<typeof loadHighs>[0])
  try {
    const solved = highs.solve(milp(model), {time_limit: seconds, output_flag: true})
    return {best: solved.ObjectiveValue + model.constant, proved, status: solved.Status}
  } catch (error) {
    return {best: Number.NaN, proved, status: error instanceof Error ? error.message : 'error'}
  }
}
