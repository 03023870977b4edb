import { hasMaterial, materialById } from '../../catalog/materials.ts'
import { useDesignStore } from '../../store/designStore.ts'
import { useViewStore } from '../../store/viewStore.ts'
import { formatLength } from '../../units/length.ts'

interface StockRowNameProps {
  readonly list: 'lumber' | 'sheets'
  readonly place: number
}

/** A row of own stock in one line: its name, or its number, with wood and size. */
export const StockRowName = ({ list, place }: StockRowNameProps) => {
  const row = useDesignStore((s) => s.design.stock[list][place])
  const unit = useViewStore((s) => s.units.length)
  if (row === undefined) return null
  const sizes = [row.thicknessMm, row.widthMm, row.lengthMm].map((mm) => formatLength(mm, unit))
  const wood = hasMaterial(row.material) ? materialById(row.material).name : row.material
  const plain = `${list === 'lumber' ? 'Board' : 'Sheet'} ${place + 1}`
  return (
    <>
      <strong>{row.name.trim() || plain}</strong>
      <span>
        {row.onHand ? `${row.count} on hand, ` : ''}
        {wood} {sizes.join(' × ')} {unit}
      </span>
    </>
  )
}
