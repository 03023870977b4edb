import type { WholeShop } from '../../../reports/shop/benchReport.ts'
import { fastenerWords } from '../../../sheets/shop/fastenerWords.ts'
import { useViewStore } from '../../../store/viewStore.ts'
import { formatTrimmed } from '../../../units/number.ts'
import { FasteningRow } from './FasteningRow.tsx'
import { FinishLines } from './FinishLines.tsx'
import { FittingsTable } from './FittingsTable.tsx'

/** Every joint with its fasteners, what they come to, and all that is bought to fit and to finish. */
export const FastenersSheet = ({ shop }: { readonly shop: WholeShop }) => {
  const unit = useViewStore((s) => s.units.length)
  const { fastenings, totals, drillBitsMm } = shop.fasteners
  if (fastenings.length === 0) {
    return <p className="answer-lead">There is nothing to fasten yet.</p>
  }
  return (
    <>
      <div className="fastener-totals">
        <section>
          <h3>To have in the box</h3>
          <ul>
            {totals.map(({ fastener, count, spare }) => (
              <li key={fastenerWords(fastener, unit)}>
                <strong>{count}</strong>
                <span>
                  {fastenerWords(fastener, unit)}
                  {spare > 0 && <small>, and {spare} to spare</small>}
                </span>
              </li>
            ))}
          </ul>
        </section>
        {drillBitsMm.length > 0 && (
          <section>
            <h3>Drill bits</h3>
            <p className="drill-bits">
              {/* A size stays on the line of its sign. */}
              {drillBitsMm.map((mm) => `Ø\u00A0${formatTrimmed(mm, 1)}`).join(', ')} mm
            </p>
          </section>
        )}
      </div>
      <table className="bench-table fastenings">
        <caption>Joint by joint</caption>
        <thead>
          <tr>
            <th scope="col">Joint</th>
            <th scope="col">What it passes</th>
            <th scope="col">Fastener</th>
            <th scope="col">Drill</th>
            <th scope="col">Apart, from edge, from end in {unit}</th>
          </tr>
        </thead>
        <tbody>
          {fastenings.map((fastening) => (
            <FasteningRow
              key={`${fastening.step} ${fastening.joint} ${fastening.labels.join()}`}
              fastening={fastening}
              unit={unit}
            />
          ))}
        </tbody>
      </table>
      <FittingsTable fasteners={shop.fasteners} />
      <FinishLines finish={shop.fasteners.finish} />
    </>
  )
}
