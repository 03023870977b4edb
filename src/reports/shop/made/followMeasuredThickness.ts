import { fieldTitle } from '../../../design/fieldAt.ts'
import type { Design } from '../../../design/schema.ts'
import type { FieldEdit } from '../../../design/setField.ts'
import type { MadeRemedy } from './madeReport.ts'
import { SAME_SIZE_MM } from './partSize.ts'
import { THICKNESS_FIELDS } from './thicknessFields.ts'
import { layOutBench, weighRemedy } from './weighRemedy.ts'

/**
 * Every field that holds this thickness of this material takes the measured one, and made parts of it
 * are noted with it. Undefined when no field holds it, a field's range does not reach so far, the hive
 * could not be built, or a made part would have to be longer or wider than it is.
 */
export const followMeasuredThickness = (
  design: Design,
  material: string,
  nominalThicknessMm: number,
  measuredMm: number,
): MadeRemedy | undefined => {
  const fields = THICKNESS_FIELDS.filter(
    (entry) =>
      entry.material(design) === material &&
      isSame(entry.valueMm(design) - entry.extraMm, nominalThicknessMm),
  )
  const bench = fields.length === 0 ? undefined : layOutBench(design)
  if (bench === undefined) return undefined
  // Made parts of this board were noted with its nominal thickness; they are as thick as it really is.
  const ofThisBoard = design.made.flatMap(({ partId }, i) => {
    const part = bench.partById.get(partId)
    return part?.material === material && isSame(part.size.thickness, nominalThicknessMm)
      ? [{ field: `made.${i}.thicknessMm`, value: measuredMm }]
      : []
  })
  const changes: readonly FieldEdit[] = [
    ...fields.map(({ field, extraMm }) => ({ field, value: measuredMm + extraMm })),
    ...ofThisBoard,
  ]
  const titles = fields.map(({ field }) => fieldTitle(field))
  return weighRemedy(bench, {
    text: `Let the hive follow the measured thickness (${titles.join('; ')})`,
    changes,
    isRight: () => true,
    mayFollow: (part, side) => side === 2 && part.material === material,
  })
}

const isSame = (a: number, b: number): boolean => Math.abs(a - b) <= SAME_SIZE_MM + 1e-9
