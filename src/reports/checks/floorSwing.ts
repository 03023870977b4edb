import type { Design } from '../../design/schema.ts'
import type { Hive } from '../../hive/hive.ts'
import type { KeeperReport } from '../keeper/computeKeeper.ts'
import { assess } from './assess.ts'
import type { Check } from './check.ts'
import { presentIds } from './presentIds.ts'
import { proposeFix } from './proposeFix.ts'

/** Whether the floor can drop as far as its keeper wants before it meets ground or stand. */
export const checkFloorSwing = ({
  design,
  hive,
  keeper,
}: {
  readonly design: Pick<Design, 'floor'>
  readonly hive: Pick<Hive, 'parts'>
  readonly keeper: Pick<KeeperReport, 'floorDropLimitDeg'>
}): readonly Check[] => {
  const wanted = design.floor.dropAngleDeg
  const limit = keeper.floorDropLimitDeg
  return [
    assess({
      id: 'floor-drop',
      title: 'How far the floor can drop',
      quantity: 'angle',
      measured: limit,
      band: { low: wanted, fixBelow: wanted },
      why: 'A floor that meets the ground or the stand does not open as far as you want.',
      source: 'derived: the corners of the floor turned about its hinge',
      fix: () =>
        proposeFix(`Drop the floor by ${Math.floor(limit)} degrees`, [
          { field: 'floor.dropAngleDeg', value: Math.floor(limit) },
        ]),
      partIds: presentIds(hive.parts, ['floor/lining', 'stand/brace-long']),
    }),
  ]
}
