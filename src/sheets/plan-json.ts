import * as z from 'zod'
import type {OvenSpec} from '../oven/types.js'
import {minutesLate} from '../plan/asked.js'
import type {Plan, PlanProblem} from '../plan/types.js'

/**
 * The shape of `plan.json` and of `hearthfall plan --format json`. Published as `docs/schema/plan.schema.json`. Later versions add
 * fields and keep these. Times in minutes after midnight of the day's date (the next day's are 1440 and over), °C, kg, metres.
 */
const range = z.object({low: z.number(), likely: z.number(), high: z.number()}).describe('A figure with its uncertainty')
const curve = z
  .object({low: z.array(z.number()), likely: z.array(z.number()), high: z.array(z.number())})
  .describe('°C, one value a sample')
const firing = z.object({
  wood: z.number().nonnegative().describe('kg'),
  burn: z.number().nonnegative().describe('minutes'),
  soak: z.number().nonnegative().describe('minutes'),
})
const zone = z.enum(['back', 'middle', 'mouth'])
const minutes = z.number().describe('minutes after midnight of the date')
const band = z.enum(['hot', 'moderate', 'slow', 'slack'])

/** The planner's words as data: the id of a template of `src/plan/phrases.ts` and what stands in its blanks. */
interface PhraseFile {
  readonly id: string
  readonly values: Readonly<Record<string, PhraseValueFile>>
}
type PhraseValueFile =
  | string
  | number
  | {readonly unit: 'clock' | 'minutes' | 'celsius' | 'difference' | 'kilograms' | 'metres' | 'count'; readonly value: number}
  | {readonly unit: 'dishes'; readonly dishes: readonly string[]}
  | {
      readonly unit: 'amounts'
      readonly amounts: ReadonlyArray<{readonly kitchen: string; readonly item: string; readonly called: string}>
    }
  | {readonly unit: 'word'; readonly word: string}
  | {readonly unit: 'phrases' | 'sentences'; readonly phrases: readonly PhraseFile[]}
const phrase: z.ZodType<PhraseFile> = z
  .lazy(() =>
    z.object({
      id: z.string(),
      values: z.record(
        z.string(),
        z.union([
          z.string(),
          z.number(),
          z.object({
            unit: z.enum(['clock', 'minutes', 'celsius', 'difference', 'kilograms', 'metres', 'count']),
            value: z.number(),
          }),
          z.object({unit: z.literal('dishes'), dishes: z.array(z.string()), whole: z.boolean().optional()}),
          z.object({
            unit: z.literal('amounts'),
            amounts: z.array(z.object({kitchen: z.string(), item: z.string(), called: z.string()})),
          }),
          z.object({unit: z.literal('word'), word: z.string()}),
          z.object({unit: z.enum(['phrases', 'sentences']), phrases: z.array(phrase)}),
        ]),
      ),
    }),
  )
  .meta({id: 'phrase', description: 'The same words as data, to be said in another language'})

const remedy = z.object({
  kind: z.enum([
    'second fire',
    'earlier fire',
    'longer fire',
    'shorter fire',
    'more hands',
    'smaller batch',
    'not hot',
    'smaller vessel',
    'wider heat',
    'door open',
    'one move',
    'leave out',
    'late',
  ]),
  works: z.boolean().describe('planning the day with it gave a plan in which every dish has its place'),
  wood: z.number().describe('further wood, kg; less than 0 where it is less'),
  late: z.number().describe('further minutes late; less than 0 where it is less'),
  say: z.string(),
  words: phrase,
  note: z
    .string()
    .optional()
    .describe('what to note in the log for the rest of the day to be planned with it, where that takes no more'),
})

export const planFileSchema = z
  .object({
    format: z.literal(1),
    day: z.object({
      title: z.string(),
      date: z.string().regex(/^\d{4}-\d{2}-\d{2}$/),
      zone: z.string().nullable().describe('IANA time zone'),
      people: z.number(),
      fireFrom: minutes,
      serve: minutes,
      hands: z.number(),
      firings: z.number(),
      bowl: z.number().optional().describe('kg of dough or batter the mixing bowl takes'),
    }),
    oven: z.object({
      name: z.string(),
      floor: z.object({
        shape: z.enum(['round', 'oval', 'rectangle']),
        depth: z.number().describe('m'),
        width: z.number().describe('m'),
      }),
      mouth: z.object({width: z.number(), height: z.number()}),
      vaultHeight: z.number(),
      ashBed: z
        .object({side: z.enum(['left', 'right', 'back']), width: z.number().describe('m')})
        .optional()
        .describe('ash left along one side of the floor, where nothing stands'),
    }),
    possible: z.boolean(),
    firing,
    lit: minutes,
    raked: minutes,
    ready: minutes,
    fires: z
      .array(z.object({lit: minutes, raked: minutes, ready: minutes, firing}))
      .optional()
      .describe('Every fire of the day, the first one first'),
    forecast: z.object({
      step: z.number().positive().describe('minutes between samples'),
      raked: z.number().describe('minutes after lighting'),
      ready: z.number().describe('minutes after lighting'),
      floor: curve,
      vault: curve,
      air: curve,
      baking: curve.describe('What a dish feels, °C; sample i is i × step minutes after lighting'),
      heat: curve.optional().describe('Heat in walls and air above that of the air round them, MJ'),
      firing: firing.optional(),
      zones: z
        .object({back: z.number(), middle: z.number(), mouth: z.number()})
        .optional()
        .describe('°C each part of the floor is hotter than the mean when the oven is ready'),
      balance: z
        .object({
          fire: z.number(),
          flue: z.number(),
          stored: z.number(),
          lost: z.number(),
          loads: z.number(),
          error: z.number().describe('relative'),
        })
        .optional()
        .describe('Where the fire’s heat went, MJ'),
    }),
    dishes: z.array(
      z.object({
        id: z.string(),
        title: z.string(),
        file: z.string(),
        kind: z.string(),
        vessel: z.string(),
        count: z.number(),
        times: z.string().describe('how many times the receipt is made, an exact fraction'),
        sized: z
          .array(z.object({field: z.string(), value: z.string(), why: z.string()}))
          .optional()
          .describe('what was decided when it was brought to this size'),
        feeds: range,
        wantedBy: minutes.nullable(),
        amounts: z.array(
          z.object({
            item: z.string(),
            part: z.string(),
            grams: range.nullable(),
            millilitres: range.nullable(),
            kitchen: z.string(),
            exact: z.string().nullable(),
          }),
        ),
      }),
    ),
    loads: z.array(
      z.object({
        number: z.number().int(),
        at: minutes,
        dishes: z.array(
          z.object({
            dish: z.string(),
            count: z.number(),
            draw: range.describe('minutes after midnight'),
            celsiusIn: range,
            celsiusOut: range,
            zone: z
              .enum(['back', 'middle', 'mouth', 'across'])
              .optional()
              .describe('where its vessels stand: across where in more than one part'),
            alreadyIn: z.boolean().optional().describe('set in before the day was planned again'),
            eased: z
              .object({
                start: z.number().describe('°C under its least heat when it is set in'),
                end: z.number().describe('°C under its least heat when it is drawn'),
                dose: z.number().describe('share of the heat it should have when it is drawn'),
              })
              .optional()
              .describe('what it has less than it should, on a day planned again, rather than be lost'),
          }),
        ),
        placed: z.array(
          z.object({
            dish: z.string(),
            number: z.number(),
            x: z.number().describe('m, 0 at the middle'),
            y: z.number().describe('m, towards the back'),
            turn: z.number().describe('radians'),
            zone,
          }),
        ),
      }),
    ),
    steps: z.array(
      z.object({
        at: minutes,
        action: z.enum([
          'sponge',
          'mix',
          'rise',
          'shape',
          'prove',
          'light',
          'feed',
          'rake',
          'soak',
          'test',
          'load',
          'draw',
          'top up',
          'tend',
          'shut',
          'evening before',
        ]),
        dishes: z.array(z.string()),
        load: z.number().nullable(),
        further: z
          .array(z.number())
          .optional()
          .describe('further loads for which it is done at once: of one dough that goes in part by part'),
        say: z.string(),
        sign: z.string().nullable(),
        ifAhead: z.string().nullable(),
        ifBehind: z.string().nullable(),
        celsius: range.nullable(),
        untimed: z.boolean().optional().describe('at no hour of its own: `at` only says where it stands among the rest'),
        past: z.boolean().optional().describe('done before the day was planned again'),
        words: z
          .object({say: phrase, sign: phrase.nullable(), ifAhead: phrase.nullable(), ifBehind: phrase.nullable()})
          .optional(),
      }),
    ),
    unplaced: z.array(
      z.object({
        dish: z.string(),
        rule: z.string(),
        reason: z.string(),
        words: phrase.optional(),
        remedies: z.array(z.string()),
        conflict: z
          .array(z.string())
          .optional()
          .describe(
            'ids of the dish and of the fewest found that cannot be baked with it, or are in its way in this plan; one id where nothing else is',
          ),
        tried: z.array(remedy).optional().describe('ways out, each tried by planning the day with it'),
      }),
    ),
    late: z
      .array(z.object({dish: z.string(), wanted: minutes, drawn: minutes}))
      .optional()
      .describe('Dishes that are drawn after they are wanted'),
    lateInAll: z
      .number()
      .optional()
      .describe(
        'minutes by which they are, added up: each dish that the day asks for once, by its last batch, as ways out count them',
      ),
    ways: z
      .array(remedy)
      .optional()
      .describe(
        'Ways out that change the day, where something is left out or late, each tried by planning it; empty where none helps',
      ),
    score: z.object({
      lateMinutes: z.number().describe('as the objective counts them: each part of a dish that is set in by itself'),
      misfit: z.number().describe('°C·min'),
      openings: z.number(),
      earlyMinutes: z
        .number()
        .optional()
        .describe('minutes by which what the day wants hot is drawn too soon for that, each part by itself'),
      disturbed: z.number().optional().describe('openings while a receipt wants the door kept shut'),
      idle: z.number().describe('m²·h'),
      wood: z.number().describe('kg'),
      total: z.number(),
      gap: z
        .number()
        .nullable()
        .describe(
          'share by which a plan of the same fire and lighting time, on the curve that this plan’s loads make, that keeps as much in hand could be better, under this model',
        ),
      bound: z.number().nullable().optional().describe('lower bound on the total, in its units'),
      leftOut: z
        .object({
          vessels: z.number(),
          least: z.number().describe('how many any plan on this fire has to leave out, under this model, as far as is proved'),
        })
        .optional()
        .describe('vessels left out for want of a place'),
    }),
    balance: z
      .array(
        z.object({
          band,
          from: minutes,
          to: minutes,
          floor: z.number().describe('m²·h of usable floor'),
          used: z.number().describe('m²·h used'),
          heat: z.number().describe('MJ the loads took'),
          left: range.optional().describe('MJ above the air round it that the oven holds when it leaves the band'),
        }),
      )
      .optional()
      .describe('How floor and heat were used as the oven fell through each band'),
    left: z
      .object({celsius: z.number(), at: minutes})
      .optional()
      .describe('Baking temperature still there at the end of the last load'),
    suggestions: z
      .array(
        z.object({
          dish: z.string(),
          count: z.number().int().optional().describe('How many of its vessels, where there is no room for all'),
          at: minutes,
          draw: minutes,
          zone: z.string(),
          say: z.string(),
          words: phrase.optional(),
        }),
      )
      .optional()
      .describe('Spare receipts that would fill idle hot floor'),
    changes: z
      .array(
        z.object({
          dish: z.string().nullable(),
          what: z.string(),
          why: z.string(),
          minutes: z.number(),
          words: z.object({what: phrase, why: phrase}).optional(),
        }),
      )
      .optional()
      .describe('After planning again: what moved, and why'),
    messages: z.array(
      z.object({
        file: z.string(),
        line: z.number(),
        column: z.number(),
        severity: z.enum(['error', 'warning', 'info']),
        rule: z.string(),
        reason: z.string(),
        suggest: z.string().optional(),
        times: z.array(z.number()).optional().describe('The times of day in these words, written 14:05, tomorrow 8:00'),
      }),
    ),
  })
  .describe('A bake plan of Hearthfall')

export type PlanFile = z.infer<typeof planFileSchema>

/** Numbers to a thousandth: more would be noise, and would differ between engines. */
const rounded = (value: number): number => (Number.isFinite(value) ? Math.round(value * 1000) / 1000 : value)

/** The plan, its day and its oven as one object of the published shape. */
export function planFile(plan: Plan, problem: PlanProblem, oven: OvenSpec): PlanFile {
  const {day} = problem
  const size = problem.floor.shape === 'round' ? {depth: problem.floor.diameter, width: problem.floor.diameter} : problem.floor
  return planFileSchema.parse(
    {
      format: 1,
      day,
      oven: {
        name: oven.name,
        floor: {shape: problem.floor.shape, depth: size.depth, width: size.width},
        mouth: oven.mouth,
        vaultHeight: oven.vaultHeight,
        ...(oven.ashBed === undefined ? {} : {ashBed: oven.ashBed}),
      },
      possible: plan.possible,
      firing: plan.firing,
      lit: plan.lit,
      raked: plan.raked,
      ready: plan.ready,
      fires: plan.fires,
      forecast: plan.forecast,
      dishes: problem.dishes.map((dish) => ({...dish, vessel: dish.vessel.name})),
      loads: plan.loads,
      steps: plan.steps,
      unplaced: plan.unplaced,
      late: plan.late,
      ...(plan.late ? {lateInAll: minutesLate(problem, plan.late)} : {}),
      ways: plan.ways,
      score: plan.score,
      balance: plan.balance,
      left: plan.left,
      suggestions: plan.suggestions,
      changes: plan.changes,
      messages: plan.messages,
    },
    // Checked once a run: the code that zod would make for it costs more than it spares.
    {jitless: true},
  )
}

/** `plan.json`. */
export function planJson(plan: Plan, problem: PlanProblem, oven: OvenSpec): string {
  const text = JSON.stringify(planFile(plan, problem, oven), (_key, value: unknown) =>
    typeof value === 'number' ? rounded(value) : value,
  )
  return `${text}\n`
}

/** The JSON Schema (draft 2020-12) of `plan.json`, made from the same zod schema. */
export function planJsonSchema(): string {
  return `${JSON.stringify({$id: 'plan.schema.json', title: 'Hearthfall bake plan', ...z.toJSONSchema(planFileSchema)}, null, 2)}\n`
}
