import type { FastenerReport } from '../../../reports/shop/fasteners/fastenerReport.ts'
import { formatTrimmed } from '../../../units/number.ts'
import { counted } from '../measureLine.ts'

/** What protects the outside, how much of it, and how long it must cure before bees move in. */
export const FinishLines = ({ finish }: Pick<FastenerReport, 'finish'>) => {
  if (finish === undefined) return null
  const { name, areaM2, coats, litres, curingDays, advice, source } = finish
  return (
    <section className="finish-lines">
      <h3>Finish outside: {name}</h3>
      <p>
        {formatTrimmed(areaM2, 2)} m², {counted(coats, 'coat')}, {formatTrimmed(litres, 2)} litres
        in all.
      </p>
      {curingDays > 0 && (
        <p>
          <strong>Leave it to cure for {counted(curingDays, 'day')} before bees move in.</strong>
        </p>
      )}
      <p>{advice}</p>
      <details className="source">
        <summary>Where this comes from</summary>
        <p>{source}</p>
      </details>
    </section>
  )
}
