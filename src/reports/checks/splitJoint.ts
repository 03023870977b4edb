import type { Design } from '../../design/schema.ts'
import type { Hive } from '../../hive/hive.ts'
import { assess, type Band } from './assess.ts'
import type { Check } from './check.ts'
import { presentIds } from './presentIds.ts'

/** Halves that touch (rule R05), up to a gap that no propolis spans; above it a true bee space (R04). */
const TOUCHING: Band = { low: 0, high: 1, fixAbove: 1.5 }
const APART: Band = { low: 6, high: 8, fixBelow: 5.5, fixAbove: 10 }

/** The joint between the halves of a split frame: tight, or a true bee space, and nothing between. */
export const checkSplitJoint = ({
  design,
  hive,
}: {
  readonly design: Pick<Design, 'frame'>
  readonly hive: Pick<Hive, 'dimensions' | 'parts'>
}): readonly Check[] => {
  const { frame } = design
  if (frame.form !== 'split') return []
  const measured = hive.dimensions.frameDepth - 2 * frame.depthMm
  return [
    assess({
      id: 'split-joint',
      title: 'Joint of the frame halves',
      quantity: 'length',
      measured,
      band: measured < (1.5 + 5.5) / 2 ? TOUCHING : APART,
      why: 'A gap of 2 to 5 mm between the halves fills with propolis and they will not part.',
      source: 'derived from Bertrand, La conduite du rucher, p. 248',
      partIds: presentIds(hive.parts, ['frame-1/upper-bottom-bar', 'frame-1/lower-top-bar']),
    }),
  ]
}
