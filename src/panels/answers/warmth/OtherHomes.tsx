import { publishedHomesWords } from '../../../reports/heat/field/publishedHomes.ts'
import { useSavedDesigns } from '../../../store/savedDesigns.ts'
import { OLD_WORDS } from './fieldWords.ts'
import { HomeRow } from './HomeRow.tsx'
import { homesBeside } from './homesBeside.ts'
import { SavedControls } from './SavedControls.tsx'
import type { Comparison } from './useComparisons.ts'
import type { FieldView } from './useFieldView.ts'

interface OtherHomesProps {
  readonly field: FieldView
  readonly comparison: Comparison
}

/** This hive beside a plain box, a hollow trunk and the person's other designs, by the same reckoning. */
export const OtherHomes = ({ field, comparison }: OtherHomesProps) => {
  const saved = useSavedDesigns((s) => s.saved)
  const { comparisons, isOld } = comparison
  const homes = homesBeside(field.answer, comparisons?.baselines ?? [], saved)
  // A little room at the end for the bracket of the longest bar.
  const end = 1.02 * Math.max(...homes.map(({ figures }) => figures?.upperWPerK ?? 0))
  const published =
    field.answer === undefined
      ? []
      : publishedHomesWords(field.answer.conductanceWPerK, comparisons?.baselines ?? [])
  const isSomethingOld = isOld || field.isOld
  return (
    <section className={isSomethingOld ? 'panel-answer old' : 'panel-answer'}>
      <h4>Beside other homes</h4>
      {isSomethingOld && <span className="old-words">{OLD_WORDS}</span>}
      <ul className="homes wide">
        {homes.map((home) => (
          <HomeRow
            key={`${home.kind}-${home.id}`}
            home={home}
            end={end}
            ownWPerK={field.answer?.conductanceWPerK}
            isWorking={field.isWorking}
          />
        ))}
      </ul>
      {comparisons === undefined && (
        <p className="about wide">
          {field.problem === undefined
            ? 'A plain box and a hollow trunk come here once this hive is worked out.'
            : 'There is nothing to compare until this hive can be worked out.'}
        </p>
      )}
      {published.length > 0 && (
        <details className="source">
          <summary>Against published figures</summary>
          {published.map((words) => (
            <p key={words}>{words}</p>
          ))}
        </details>
      )}
      <SavedControls />
    </section>
  )
}
