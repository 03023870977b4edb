import { allEdgesWords, edgeWords } from '../../../reports/heat/field/edgeWords.ts'
import { useViewStore } from '../../../store/viewStore.ts'
import { formatLength, type LengthUnit } from '../../../units/length.ts'
import { formatNumber } from '../../../units/number.ts'
import { formatFineConductance } from '../../../units/thermal.ts'
import { splitUnit } from '../../inputs/numberShown.ts'
import type { FieldView } from './useFieldView.ts'

/** What corners and edges cost beyond the panels, in plain words, and their figures for those who ask. */
export const EdgeLosses = ({ field }: { readonly field: FieldView }) => {
  const units = useViewStore((s) => s.units)
  const edges = field.answer?.edges ?? []
  if (edges.length === 0) return null
  return (
    <section className={field.isOld ? 'panel-answer old' : 'panel-answer'}>
      <h4>Corners and edges</h4>
      <p className="wide">
        <strong>{allEdgesWords(edges, units.length)}</strong>
      </p>
      <ul className="edge-list wide">
        {edges.map((edge) => (
          <li key={edge.id}>{edgeWords(edge, units.length)}</li>
        ))}
      </ul>
      <details className="source">
        <summary>Lengths and coefficients</summary>
        <table className="layers">
          <thead>
            <tr>
              <th scope="col">Edge</th>
              <th scope="col">Length</th>
              <th scope="col">
                More heat, {splitUnit(formatFineConductance(1, units.thermal)).unit}
              </th>
              <th scope="col">ψ, W/(m·K)</th>
            </tr>
          </thead>
          <tbody>
            {edges.map((edge) => (
              <tr key={edge.id}>
                <th scope="row">{edge.name}</th>
                <td>{showMetres(edge.lengthM, units.length)}</td>
                <td>{splitUnit(formatFineConductance(edge.extraWPerK, units.thermal)).figure}</td>
                <td>{formatNumber(edge.psiWPerMK, 3)}</td>
              </tr>
            ))}
          </tbody>
        </table>
        <p>
          This is the heat beyond what the panels’ own R-values explain, over inside lengths (ISO
          10211).
        </p>
      </details>
    </section>
  )
}

const showMetres = (m: number, unit: LengthUnit): string =>
  unit === 'mm' ? `${formatNumber(m, 2)} m` : formatLength(m * 1000, 'in', { withUnit: true })
