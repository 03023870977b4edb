import { bench, describe } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import { setFrameCount } from '../../src/design/frameEdits.ts'
import { deriveHive } from '../../src/hive/deriveHive.ts'
import { runReports } from '../../src/reports/report.ts'
import { FRAME_COUNTS } from './frameCounts.ts'
import { kept } from './kept.ts'

/** Enough runs for the compiler to settle before the clock starts, on a slow machine too. */
const SETTLED = { warmupIterations: 60, iterations: 60 }

describe('design to report', () => {
  for (const frames of FRAME_COUNTS) {
    const design = setFrameCount(DEFAULT_DESIGN, frames)
    bench(
      `${frames} frames`,
      () => {
        const built = deriveHive(design)
        if (built.kind === 'refused') throw new Error(built.refusals[0]?.message)
        kept.sum += runReports(design, built.hive).checks.length
      },
      SETTLED,
    )
  }
})

describe('design to hive', () => {
  for (const frames of FRAME_COUNTS) {
    const design = setFrameCount(DEFAULT_DESIGN, frames)
    bench(
      `${frames} frames`,
      () => {
        kept.sum += deriveHive(design).kind.length
      },
      SETTLED,
    )
  }
})
