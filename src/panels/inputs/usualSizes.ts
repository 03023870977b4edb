import { hasMaterial, materialById } from '../../catalog/materials.ts'
import type { Design } from '../../design/schema.ts'
import type { LengthUnit } from '../../units/length.ts'
import { fieldValue } from './useFieldValue.ts'

/** Thicknesses in which the material of this layer is sold, mm; none if the field is no layer. */
export const usualSizes = (design: Design, path: string, unit: LengthUnit): readonly number[] => {
  const key = MATERIAL_OF[path]
  const id = key === undefined ? undefined : fieldValue(design, key)
  if (typeof id !== 'string' || !hasMaterial(id)) return NONE
  const material = materialById(id)
  return unit === 'in' ? material.thicknessesUsMm : material.thicknessesMm
}

const layer = (group: string) => ({
  [`${group}.liningMm`]: `${group}.liningMaterial`,
  [`${group}.coreMm`]: `${group}.insulation`,
  [`${group}.claddingMm`]: `${group}.claddingMaterial`,
})

/** Which field names the material of which thickness. */
const MATERIAL_OF: Readonly<Record<string, string>> = {
  ...layer('walls'),
  ...layer('lid'),
  ...layer('floor'),
  'lid.coverMm': 'lid.coverMaterial',
  'cavity.coverThicknessMm': 'cavity.coverMaterial',
  'cavity.dividerThicknessMm': 'cavity.boardMaterial',
}

/** One array for all, because the caller compares by identity. */
const NONE: readonly number[] = []
