import type { NumberField } from '../../design/field.ts'
import { useDesignStore } from '../../store/designStore.ts'
import { useViewStore } from '../../store/viewStore.ts'
import { changeField } from './changeField.ts'
import { showNumber } from './numberShown.ts'
import { usualSizes } from './usualSizes.ts'

interface UsualSizesProps {
  readonly path: string
  readonly field: NumberField
  readonly value: number
}

/** The thicknesses in which a layer's material is sold, each a button. */
export const UsualSizes = ({ path, field, value }: UsualSizesProps) => {
  const units = useViewStore((s) => s.units)
  // The list belongs to the catalogue's row, so it is the same array until the material changes.
  const sizes = useDesignStore((s) => usualSizes(s.design, path, units.length))
  const offered = sizes.filter((mm) => mm >= field.min && mm <= field.max)
  if (offered.length === 0) return null
  return (
    <div className="usual">
      <span>Sold as</span>
      {offered.map((mm) => (
        <button
          key={mm}
          type="button"
          aria-pressed={Math.abs(mm - value) < 0.01}
          aria-label={`${field.label}: ${showNumber(field, mm, units)}`}
          onClick={() => changeField(path, mm)}
        >
          {showNumber(field, mm, units)}
        </button>
      ))}
    </div>
  )
}
