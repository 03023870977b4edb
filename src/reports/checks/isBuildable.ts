import type { Design } from '../../design/schema.ts'
import { checkMeasures } from '../../hive/checkMeasures.ts'
import { measureHive } from '../../hive/measure.ts'
import { panelPlanes } from '../../hive/panelPlane.ts'
import { placeOpenings } from '../../hive/placeOpenings.ts'
import { createRefuser } from '../../hive/refuse.ts'
import { checkRow, layRow } from '../../hive/row.ts'

/**
 * Whether the hive would refuse this design by its measures, without building its parts: a fix that
 * leads to a refusal is no fix. Cheap: a few sums.
 */
export const isBuildable = (design: Design): boolean => {
  const refuser = createRefuser()
  checkRow(design, refuser)
  const row = layRow(design)
  const dimensions = measureHive(design, row)
  checkMeasures(design, dimensions, refuser)
  placeOpenings(design, dimensions, panelPlanes(dimensions), row, refuser)
  return refuser.refusals.length === 0
}
