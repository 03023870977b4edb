import { markMade } from '../../../design/madeEdits.ts'
import { MADE_SIZE_FIELDS } from '../../../design/madeFields.ts'
import type { Design, MadeSizeDesign } from '../../../design/schema.ts'
import { applyChanges, type FieldEdit } from '../../../design/setField.ts'
import type { CutListRow } from '../../../reports/shop/computeShop.ts'
import type { Side } from '../../../reports/shop/made/partSize.ts'

/** Parts of one row that came out to another size than planned, on one side. */
export interface Measured {
  readonly row: CutListRow
  readonly partIds: readonly string[]
  readonly side: Side
  readonly mm: number
}

/** The field that a measured side is typed in. */
export const MEASURED_FIELDS = {
  length: MADE_SIZE_FIELDS.lengthMm,
  width: MADE_SIZE_FIELDS.widthMm,
  thickness: MADE_SIZE_FIELDS.thicknessMm,
} as const

/** The planned size of a side, mm. */
export const plannedMm = (row: CutListRow, side: Side): number => row[KEYS[side]]

/** The parts as they are noted in the design, with the measured side in place of the planned one. */
export const madeParts = ({ row, partIds, side, mm }: Measured): readonly MadeSizeDesign[] => {
  const { lengthMm, widthMm, thicknessMm } = row
  return partIds.map((partId) => ({
    partId,
    lengthMm,
    widthMm,
    thicknessMm,
    [KEYS[side]]: mm,
  }))
}

/** The design that follows what was made, with the parts noted as made: one edit. */
export const withMeasured = (
  design: Design,
  measured: Measured,
  changes: readonly FieldEdit[],
): Design => markMade(applyChanges(design, changes), madeParts(measured))

const KEYS = { length: 'lengthMm', width: 'widthMm', thickness: 'thicknessMm' } as const
