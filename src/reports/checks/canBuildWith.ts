import type { Design } from '../../design/schema.ts'
import { applyChanges } from '../../design/setField.ts'
import { checkMeasures } from '../../hive/checkMeasures.ts'
import { deriveHive } from '../../hive/deriveHive.ts'
import { measureHive } from '../../hive/measure.ts'
import { panelPlanes } from '../../hive/panelPlane.ts'
import { placeOpenings } from '../../hive/placeOpenings.ts'
import { createRefuser } from '../../hive/refuse.ts'
import { checkRow, layRow } from '../../hive/row.ts'
import type { FieldChange } from './check.ts'

/**
 * Whether the hive still takes the design with these changes: a fix that leads to a refusal is no
 * fix. The measures tell, at the cost of a few sums; only when openings move are all parts built,
 * because hinges and latches may then lose their places.
 */
export const canBuildWith = (design: Design, changes: readonly FieldChange[]): boolean => {
  const changed = applyChanges(design, changes)
  return changes.some(({ field }) => field.startsWith('openings.'))
    ? deriveHive(changed).kind === 'built'
    : hasSoundMeasures(changed)
}

const hasSoundMeasures = (design: Design): boolean => {
  const refuser = createRefuser()
  checkRow(design, refuser)
  const row = layRow(design)
  const dimensions = measureHive(design, row)
  checkMeasures(design, dimensions, refuser)
  placeOpenings(design, dimensions, panelPlanes(dimensions), row, refuser)
  return refuser.refusals.length === 0
}
