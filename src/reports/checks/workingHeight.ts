import type { Design } from '../../design/schema.ts'
import type { Hive } from '../../hive/hive.ts'
import { assess } from './assess.ts'
import type { Check } from './check.ts'
import { mmText, proposeFix } from './proposeFix.ts'

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
  const { wallTop, groundHeight, frameTop } = hive.dimensions
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
        const rim = elbowHeightMm - (LEAST_BELOW + MOST_BELOW) / 2
        // The document holds the height of the top bars, a little below the rim.
        const height = Math.round((rim - wallTop + frameTop) / STEP) * STEP
        return proposeFix(`Raise or lower the top bars to ${mmText(height)}`, [
          ...(design.stand.form === 'none' ? [{ field: 'stand.form', value: 'legs' }] : []),
          { field: 'stand.workingHeightMm', value: height },
        ])
      },
    }),
  ]
}
