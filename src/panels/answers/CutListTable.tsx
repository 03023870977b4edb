import { useEffect, useRef } from 'react'
import type { CutListRow } from '../../reports/shop/computeShop.ts'
import { useBench } from '../../store/bench.ts'
import { useViewStore } from '../../store/viewStore.ts'
import type { LengthUnit } from '../../units/length.ts'
import { PHONE_PX } from '../useMaxWidth.ts'
import { formatSize } from './formatSize.ts'

interface CutListTableProps {
  readonly title: string
  readonly rows: readonly CutListRow[]
  readonly unit: LengthUnit
}

/** Lines of the cut list; choosing one picks its parts out in the hive, and the other way round. */
export const CutListTable = ({ title, rows, unit }: CutListTableProps) => (
  <table className="cut-list">
    <caption>{title}</caption>
    <thead>
      <tr>
        <th scope="col">Mark</th>
        <th scope="col">Part, with length × width × thickness in {unit}</th>
        <th scope="col" className="number">
          Pieces
        </th>
      </tr>
    </thead>
    <tbody>
      {rows.map((row) => (
        <Row key={row.label} row={row} unit={unit} />
      ))}
    </tbody>
  </table>
)

const Row = ({ row, unit }: { readonly row: CutListRow; readonly unit: LengthUnit }) => {
  const line = useRef<HTMLTableRowElement>(null)
  const select = useViewStore((s) => s.select)
  const measure = useBench((s) => s.measure)
  const isChosen = useViewStore((s) => s.selectedPartIds.some((id) => row.partIds.includes(id)))
  useEffect(() => {
    // On a phone the page itself would jump away from the hive.
    const isPhone = matchMedia(`(max-width: ${PHONE_PX}px)`).matches
    if (isChosen && !isPhone) line.current?.scrollIntoView({ block: 'nearest' })
  }, [isChosen])
  const toggle = () => select(isChosen ? [] : row.partIds)
  return (
    <tr ref={line} className={isChosen ? 'chosen' : undefined} onClick={toggle}>
      <th scope="row" className="mark">
        {row.label}
      </th>
      <td>
        <button
          type="button"
          className="link"
          aria-pressed={isChosen}
          onClick={(e) => {
            e.stopPropagation()
            toggle()
          }}
        >
          {row.name}
          {row.hand !== 'none' && `, ${row.hand} hand`}
        </button>
        <span className="size">{formatSize(row, unit)}</span>
        <small>
          {row.materialName}
          {row.stock && `, ${row.stock}`}
        </small>
        {isChosen && !row.bought && (
          <button
            type="button"
            className="plain measure-button"
            onClick={(e) => {
              e.stopPropagation()
              measure(row.label)
            }}
          >
            Measure what you made
          </button>
        )}
      </td>
      <td className="number">{row.count}</td>
    </tr>
  )
}
