import type { CutListRow } from '../../../reports/shop/computeShop.ts'
import { useBench } from '../../../store/bench.ts'
import { useViewStore } from '../../../store/viewStore.ts'
import { formatSize } from '../../answers/formatSize.ts'
import { useChooseRow } from '../useChooseRow.ts'

/** The parts that are chosen, at the foot of the bench, and the way to see them in the hive. */
export const ChosenLine = ({ cutList }: { readonly cutList: readonly CutListRow[] }) => {
  const unit = useViewStore((s) => s.units.length)
  const select = useViewStore((s) => s.select)
  const close = useBench((s) => s.close)
  const { chosen } = useChooseRow(cutList)
  const rows = cutList.filter(({ label }) => chosen.has(label))
  const [row] = rows
  return (
    <div className="bench-chosen" role="status">
      {row && (
        <>
          <b className="letter">{row.label}</b>
          <span>
            <strong>{row.name}</strong> {formatSize(row, unit)} {unit}, {row.count} in all
            {rows.length > 1 && `, and ${rows.length - 1} more`}
          </span>
          <button type="button" className="plain" onClick={close}>
            See it in the hive
          </button>
          <button type="button" className="plain" onClick={() => select([])}>
            Let go
          </button>
        </>
      )}
    </div>
  )
}
