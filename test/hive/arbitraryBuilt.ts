import fc from 'fast-check'
import type { Design } from '../../src/design/schema.ts'
import { arbitraryDesign, arbitrarySchemaDesign } from '../design/arbitraryDesign.ts'
import { type Built, mendDesign } from './mendDesign.ts'

/**
 * How often each property of the hive is tried, times a factor from the environment, so that a night's
 * run can look a hundred times harder: `PROPERTY_RUNS=100 npx vitest run test/hive`.
 */
export const runs = (usual: number): number =>
  Math.ceil(usual * Number(process.env.PROPERTY_RUNS ?? 1))

const mended = (designs: fc.Arbitrary<Design>): fc.Arbitrary<Built> =>
  designs
    .map(mendDesign)
    .filter((built) => built !== undefined)
    .map((built) => ({ ...built, [fc.toStringMethod]: () => JSON.stringify(built.design) }))

/** Mostly the hives that a person might draw, and some from the edges of the ranges. */
export const arbitraryMixedBuilt = (): fc.Arbitrary<Built> =>
  fc.oneof(
    { arbitrary: arbitraryBuilt(), weight: 2 },
    { arbitrary: arbitraryExtremeBuilt(), weight: 1 },
  )

/** Hives that a person might draw, with every refusal obeyed. */
export const arbitraryBuilt = (): fc.Arbitrary<Built> => mended(arbitraryDesign())

/** Hives from any values that the schema accepts, with every refusal obeyed; at most 16 frames. */
export const arbitraryExtremeBuilt = (): fc.Arbitrary<Built> =>
  mended(
    arbitrarySchemaDesign().map((design) => ({
      ...design,
      cavity: { ...design.cavity, frames: Math.min(design.cavity.frames, 16) },
    })),
  )
