import { hasMaterial, materialById } from '../../catalog/materials.ts'
import { fieldAt } from '../../design/fieldAt.ts'
import type { Design } from '../../design/schema.ts'
import type { UnitPreferences } from '../../units/preferences.ts'
import { showWithUnit } from './numberShown.ts'
import { fieldValue } from './useFieldValue.ts'

/** The values of a folded section in one line: `Spruce, 38 mm, 600 mm`. */
export const sectionSummary = (
  design: Design,
  fields: readonly string[],
  units: UnitPreferences,
): string => fields.map((path) => shownValue(design, path, units)).join(', ')

const shownValue = (design: Design, path: string, units: UnitPreferences): string => {
  const field = fieldAt(path)
  const value = fieldValue(design, path)
  if (field?.kind === 'number' && typeof value === 'number') {
    return showWithUnit(field, value, units)
  }
  if (field?.kind === 'choice') return field.options[String(value)] ?? String(value)
  if (field?.kind === 'flag') return value === true ? 'yes' : 'no'
  const id = String(value)
  return field?.kind === 'material' && hasMaterial(id) ? materialById(id).name : id
}
