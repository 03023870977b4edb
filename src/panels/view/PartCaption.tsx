import { useAnswers } from '../../store/answers.ts'
import { useViewStore } from '../../store/viewStore.ts'
import { formatSize } from '../answers/formatSize.ts'

/** What the chosen part is, in one line: mark, name, size, material. */
export const PartCaption = () => {
  const { answer } = useAnswers()
  const selected = useViewStore((s) => s.selectedPartIds)
  const select = useViewStore((s) => s.select)
  const unit = useViewStore((s) => s.units.length)
  const rows = (answer?.report.shop.cutList ?? []).filter((row) =>
    row.partIds.some((id) => selected.includes(id)),
  )
  const row = rows[0]
  if (row === undefined) return null
  return (
    <div className="part-caption" role="status">
      <span className="mark">{row.label}</span>
      <span>
        <strong>{row.name}</strong> {formatSize(row, unit)} {unit}, {row.materialName}
        {rows.length > 1 && `, and ${rows.length - 1} more`}
      </span>
      <button type="button" className="plain" onClick={() => select([])}>
        Let go
      </button>
    </div>
  )
}
