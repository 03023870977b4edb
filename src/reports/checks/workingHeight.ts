import type { Design } from '../../design/schema.ts'
import type { Hive } from '../../hive/hive.ts'
import { LEAST_LEG } from '../../hive/measure.ts'
import { assess } from './assess.ts'
import type { Check } from './check.ts'
import { mmText, proposeFix, stepUp } from './proposeFix.ts'

/** Best place of the hands for heavy work: this far below the elbow, mm. */
const LEAST_BELOW = 100
const MOST_BELOW = 250
const STEP = 5

/** Height of the rim over the ground against the keeper's elbow (rule S22). */
export const checkWorkingHeight = ({
  design,
  hive,
}: {
  readonly design: Pick<Design, 'stand' | 'keeper'>
  readonly hive: Pick<Hive, 'dimensions'>
}): readonly Check[] => {
  const { wallTop, groundHeight, frameTop, bearerHeight } = hive.dimensions
  const { elbowHeightMm } = design.keeper
  return [
    assess({
      id: 'working-height',
      title: 'Height of the rim over the ground',
      quantity: 'length',
      measured: wallTop - groundHeight,
      band: { low: elbowHeightMm - MOST_BELOW, high: elbowHeightMm - LEAST_BELOW },
      why: 'Lifting is easiest 10 to 25 cm below the elbow; lower you stoop, higher you strain.',
      source: 'Pheasant and Haslegrave, Bodyspace, 2006 (msdprevention.com)',
      fix: () => {
        const best = elbowHeightMm - (LEAST_BELOW + MOST_BELOW) / 2
        // The document holds the height of the top bars, a little below the rim.
        const belowRim = wallTop - frameTop
        const height = Math.max(
          Math.round((best - belowRim) / STEP) * STEP,
          stepUp(frameTop + bearerHeight + LEAST_LEG, STEP),
        )
        if (height + belowRim > elbowHeightMm - LEAST_BELOW) return undefined
        return proposeFix(`Raise or lower the top bars to ${mmText(height)}`, [
          ...(design.stand.form === 'none' ? [{ field: 'stand.form', value: 'legs' }] : []),
          { field: 'stand.workingHeightMm', value: height },
        ])
      },
    }),
    ...checkShortLegs({ design, hive }),
  ]
}

/** Legs have a least length; a deep frame then stands higher than was asked. */
const checkShortLegs = ({
  design,
  hive,
}: {
  readonly design: Pick<Design, 'stand'>
  readonly hive: Pick<Hive, 'dimensions'>
}): readonly Check[] => {
  const { frameTop, groundHeight } = hive.dimensions
  const actual = frameTop - groundHeight
  if (design.stand.form === 'none') return []
  return [
    assess({
      id: 'leg-length',
      title: 'Height of the top bars over the ground',
      quantity: 'length',
      measured: actual,
      band: { high: design.stand.workingHeightMm },
      why: `Legs shorter than ${LEAST_LEG} mm have no room for braces, so a tall hive stands higher than asked.`,
      source: 'common practice',
      fix: () =>
        proposeFix(`Work at ${mmText(stepUp(actual, STEP))}`, [
          { field: 'stand.workingHeightMm', value: stepUp(actual, STEP) },
        ]),
    }),
  ]
}
