import type { Design } from '../../design/schema.ts'
import type { Hive } from '../../hive/hive.ts'
import type { KeeperReport } from '../keeper/computeKeeper.ts'
import { floorDropLimitDeg } from '../keeper/floorDrop.ts'
import { assess } from './assess.ts'
import type { Check, FieldChange } from './check.ts'
import { presentIds } from './presentIds.ts'
import { proposeFix } from './proposeFix.ts'

interface Context {
  readonly design: Pick<Design, 'floor' | 'stand'>
  readonly hive: Pick<Hive, 'parts' | 'hinges' | 'dimensions'>
  readonly keeper: Pick<KeeperReport, 'floorDropLimitDeg'>
}

/** The document takes no smaller drop, degrees. */
const LEAST_DROP = 5

/** Whether the floor can drop as far as its keeper wants before it meets ground or stand. */
export const checkFloorSwing = (context: Context): readonly Check[] => {
  const wanted = context.design.floor.dropAngleDeg
  return [
    assess({
      id: 'floor-drop',
      title: 'How far the floor can drop',
      quantity: 'angle',
      measured: context.keeper.floorDropLimitDeg,
      band: { low: wanted, fixBelow: wanted },
      why: 'A floor that meets the ground or the stand does not open as far as you want.',
      source: 'derived: the corners of the floor turned about its hinge',
      fix: () => dropLess(context),
      partIds: presentIds(context.hive.parts, ['floor/lining', 'stand/brace-long']),
    }),
  ]
}

/** A smaller drop; a hive that stands on its bearers is put on legs first. */
const dropLess = ({ design, hive, keeper }: Context) => {
  const wanted = design.floor.dropAngleDeg
  const drop = Math.floor(keeper.floorDropLimitDeg)
  if (drop >= LEAST_DROP) {
    return proposeFix(`Drop the floor by ${drop} degrees`, [
      { field: 'floor.dropAngleDeg', value: drop },
    ])
  }
  if (design.stand.form !== 'none') return undefined
  const groundHeight = hive.dimensions.frameTop - design.stand.workingHeightMm
  const onLegs = { ...hive, dimensions: { ...hive.dimensions, groundHeight } }
  const less = Math.min(wanted, Math.floor(floorDropLimitDeg(onLegs)))
  const changes: readonly FieldChange[] = [
    { field: 'stand.form', value: 'legs' },
    ...(less < wanted ? [{ field: 'floor.dropAngleDeg', value: less }] : []),
  ]
  return proposeFix('Put the hive on legs', changes)
}
