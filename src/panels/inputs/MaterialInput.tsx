import { useId } from 'react'
import { hasMaterial, MATERIALS, materialById } from '../../catalog/materials.ts'
import type { MaterialField } from '../../design/field.ts'
import { changeField } from './changeField.ts'
import { FieldRefusals } from './FieldRefusals.tsx'
import { useFieldValue } from './useFieldValue.ts'

interface MaterialInputProps {
  readonly path: string
  readonly field: MaterialField
}

/** A material from the catalogue, with a word on how it suits bees and keeper. */
export const MaterialInput = ({ path, field }: MaterialInputProps) => {
  const id = useId()
  const value = String(useFieldValue(path) ?? field.default)
  const note = hasMaterial(value) ? materialById(value).beeNote : ''
  const families = field.families.map((family) => ({
    family,
    rows: MATERIALS.filter((row) => row.family === family),
  }))
  return (
    <div className="field">
      <label htmlFor={id}>{field.label}</label>
      <select
        id={id}
        value={value}
        aria-describedby={`${id}-about`}
        onChange={(e) => changeField(path, e.target.value)}
      >
        {families.map(({ family, rows }) => (
          <optgroup key={family} label={FAMILY_NAME[family] ?? family}>
            {rows.map((row) => (
              <option key={row.id} value={row.id}>
                {row.name}
              </option>
            ))}
          </optgroup>
        ))}
      </select>
      <p className="about" id={`${id}-about`}>
        {field.meaning} {note}
      </p>
      <FieldRefusals path={path} field={field} />
    </div>
  )
}

const FAMILY_NAME: Readonly<Record<string, string>> = {
  wood: 'Solid wood',
  sheet: 'Sheets',
  insulation: 'Insulation',
  covering: 'Coverings',
  metal: 'Metal',
  textile: 'Cloth and mesh',
}
