import type { SheetGroup } from '../../../reports/shop/cutting/cuttingPlan.ts'
import type { SheetLayout } from '../../../solvers/cutting/sheets/sheetJob.ts'
import { useViewStore } from '../../../store/viewStore.ts'
import { formatLength } from '../../../units/length.ts'
import { RowButton } from '../RowButton.tsx'
import type { RowChoice } from '../useChooseRow.ts'
import { isKept } from './isKept.ts'

interface SheetPiecesProps {
  readonly layout: SheetLayout
  readonly group: SheetGroup
  readonly keepMm: number
  readonly choice: RowChoice
}

/** What is cut from a sheet, and what is left of it, as a list. */
export const SheetPieces = ({ layout, group, keepMm, choice }: SheetPiecesProps) => {
  const unit = useViewStore((s) => s.units.length)
  const counts = new Map<number, number>()
  for (const { part } of layout.pieces) counts.set(part, (counts.get(part) ?? 0) + 1)
  const kept = layout.offcuts.filter((rect) => isKept(rect, keepMm))
  return (
    <ul className="board-pieces">
      {[...counts].map(([part, count]) => {
        const size = group.job.parts[part]
        return (
          <li key={part}>
            <RowButton
              label={group.labels[part] ?? ''}
              name={group.names[part] ?? ''}
              choice={choice}
            >
              <span>
                {count} ×{' '}
                {size &&
                  `${formatLength(size.lengthMm, unit)} × ${formatLength(size.widthMm, unit)}`}
              </span>
            </RowButton>
          </li>
        )
      })}
      {kept.map(({ xMm, yMm, lengthMm, widthMm }) => (
        <li key={`${xMm} ${yMm}`} className="board-rest">
          keep {formatLength(lengthMm, unit)} × {formatLength(widthMm, unit)}
        </li>
      ))}
    </ul>
  )
}
