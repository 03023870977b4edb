import type { FastenerReport } from '../../../reports/shop/fasteners/fastenerReport.ts'
import { hardwareCount } from '../../../sheets/shop/fastenerWords.ts'
import { formatTrimmed } from '../../../units/number.ts'

/** Hinges, latches and mesh; then glues and sealants with what they suit. */
export const FittingsTable = ({ fasteners }: { readonly fasteners: FastenerReport }) => {
  const rows = [
    ...fasteners.hardware.map((item) => ({
      id: item.id,
      count: hardwareCount(item),
      name: item.name,
      use: item.use,
      why: item.detail,
      source: item.source,
    })),
    ...fasteners.adhesives.map((item) => ({
      id: item.id,
      count: `${formatTrimmed(item.quantity, 0)} ${item.unit}`,
      name: item.name,
      use: item.use,
      why: item.why,
      source: item.source,
    })),
  ]
  if (rows.length === 0) return null
  return (
    <table className="bench-table">
      <caption>Fittings, glues and sealants</caption>
      <thead>
        <tr>
          <th scope="col">How much</th>
          <th scope="col">What, and for what</th>
          <th scope="col">What to look for</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ id, count, name, use, why, source }) => (
          <tr key={`${id} ${use}`}>
            <td data-head="How much" className="no-wrap">
              <strong>{count}</strong>
            </td>
            <th scope="row">
              {name}
              <small>{use}</small>
            </th>
            <td data-head="What to look for">
              {why}
              {source !== '' && (
                <details className="source">
                  <summary>Where this comes from</summary>
                  <p>{source}</p>
                </details>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
