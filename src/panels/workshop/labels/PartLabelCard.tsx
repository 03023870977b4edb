import type { PartLabel } from '../../../reports/shop/assembly/assemblyReport.ts'
import type { CutListRow } from '../../../reports/shop/computeShop.ts'
import { useBench } from '../../../store/bench.ts'
import { useViewStore } from '../../../store/viewStore.ts'
import { formatSize } from '../../answers/formatSize.ts'
import { RowButton } from '../RowButton.tsx'
import type { RowChoice } from '../useChooseRow.ts'

interface PartLabelCardProps {
  readonly label: PartLabel
  readonly row: CutListRow | undefined
  readonly choice: RowChoice
}

/** A label as it is written on a part: letter, way up, outside, hand, and what it meets. */
export const PartLabelCard = ({ label, row, choice }: PartLabelCardProps) => {
  const unit = useViewStore((s) => s.units.length)
  const measure = useBench((s) => s.measure)
  const { name, count, up, outside, hand, mates } = label
  return (
    <li className="part-label">
      <div className="part-label-head">
        <RowButton label={label.label} name={name} choice={choice}>
          {up !== 'none' && <UpArrow />}
        </RowButton>
        <p>
          <strong>{name}</strong>
          <span>
            {count} {count === 1 ? 'piece' : 'pieces'}
            {hand !== 'none' && `, ${hand} hand`}
          </span>
        </p>
      </div>
      {row && (
        <p className="part-label-size">
          {formatSize(row, unit)} {unit}
        </p>
      )}
      <p>
        {up !== 'none' && <>Up: {UP_WORDS[up]}. </>}
        {outside}
      </p>
      {mates.length > 0 && <p>Meets {mates.join(', ')}.</p>}
      {row && !row.bought && (
        <button type="button" className="plain" onClick={() => measure(label.label)}>
          Measure what you made<span className="hidden-text">: {label.label}</span>
        </button>
      )}
    </li>
  )
}

const UP_WORDS = { 'long edge': 'a long edge', end: 'an end', face: 'a face' } as const

const UpArrow = () => (
  <svg className="up-arrow" viewBox="0 0 24 32" aria-hidden="true">
    <path d="M12 30V4M3 13l9-10 9 10" />
  </svg>
)
