import type { Fastening } from '../../../reports/shop/fasteners/fastenerReport.ts'
import { fastenerWords } from '../../../sheets/shop/fastenerWords.ts'
import { useViewStore } from '../../../store/viewStore.ts'
import { formatLength, type LengthUnit } from '../../../units/length.ts'
import { formatTrimmed } from '../../../units/number.ts'
import { VerdictMark } from '../../answers/VerdictMark.tsx'
import { LayerStack } from './LayerStack.tsx'

interface FasteningRowProps {
  readonly fastening: Fastening
  readonly unit: LengthUnit
}

/** One joint of the table; choosing it picks its parts out in the hive. */
export const FasteningRow = ({ fastening, unit }: FasteningRowProps) => {
  const select = useViewStore((s) => s.select)
  const { joint, labels, partIds, fastener, count, layers, warning, rule, source } = fastening
  const mm = (length: number) => formatLength(length, unit)
  return (
    <tr>
      <th scope="row">
        <button type="button" className="link" onClick={() => select(partIds)}>
          {joint}
        </button>
        <small>
          {labels[0]} into {labels[1]}
          {fastening.glue && ', with glue'}
        </small>
        {warning !== undefined && (
          <span className="fastening-warning">
            <VerdictMark verdict="look" />
            <span>{warning}</span>
          </span>
        )}
      </th>
      <td data-head="What it passes">
        <LayerStack fastening={fastening} />
        <small>
          {layers.map(({ name, thicknessMm }) => `${name} ${mm(thicknessMm)}`).join(', ')}
        </small>
      </td>
      <td data-head="Fastener">
        <strong className="fastening-count">{count} ×</strong> {fastenerWords(fastener, unit)}
        <details className="source">
          <summary>Why this one</summary>
          <p>
            {rule} {source}
          </p>
        </details>
      </td>
      <td data-head="Drill" className="no-wrap">
        {fastening.pilotMm > 0 ? `Ø ${formatTrimmed(fastening.pilotMm, 1)}` : 'none'}
        {fastening.clearanceHoleMm > 0 && (
          <small>Ø {formatTrimmed(fastening.clearanceHoleMm, 1)} under the head</small>
        )}
      </td>
      <td data-head="Apart, from edge, from end" className="no-wrap">
        {[fastening.spacingMm, fastening.edgeMm, fastening.endMm].map(mm).join(', ')}
      </td>
    </tr>
  )
}
