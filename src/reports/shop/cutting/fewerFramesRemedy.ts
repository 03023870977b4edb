import { CAVITY_FIELDS } from '../../../design/cavityFields.ts'
import type { Design } from '../../../design/schema.ts'
import type { CutListRow } from '../shopReport.ts'
import type { CuttingProblem } from './cuttingPlan.ts'

/**
 * A shorter hive, for a part along its length that is too long by `excessMm`. Nothing for parts that
 * are as long as the hive is wide, or when boards of the row would lose their places.
 */
export const fewerFramesRemedy = (
  { cavity, frame }: Design,
  row: CutListRow,
  excessMm: number,
): CuttingProblem['remedies'] => {
  const frames = cavity.frames - Math.ceil(excessMm / frame.spacingMm - 1e-9)
  const rowMm = cavity.frames * frame.spacingMm
  const isAlong = Math.max(row.lengthMm, row.widthMm) >= rowMm
  const places = [
    CAVITY_FIELDS.frames.min,
    cavity.emptyPlaces + 1,
    ...(cavity.followers === 'none' ? [] : [cavity.followerAAfterFrame]),
    ...(cavity.followers === 'two' ? [cavity.followerBAfterFrame] : []),
    ...(cavity.divider === 'none' ? [] : [cavity.dividerAfterFrame + 1]),
  ]
  if (!isAlong || excessMm <= 0 || frames < Math.max(...places)) return []
  return [
    {
      text: `Make the hive shorter: ${frames} frames.`,
      changes: [{ field: 'cavity.frames', value: frames }],
    },
  ]
}
