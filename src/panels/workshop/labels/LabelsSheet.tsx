import { useBench } from '../../../store/bench.ts'
import type { WholeAnswer } from '../../../store/wholeAnswer.ts'
import { MadePanel } from '../made/MadePanel.tsx'
import { useChooseRow } from '../useChooseRow.ts'
import { PartLabelCard } from './PartLabelCard.tsx'

/** What to write on each part before it leaves the saw; and what to do when one came out otherwise. */
export const LabelsSheet = ({ answer }: { readonly answer: WholeAnswer }) => {
  const measured = useBench((s) => s.measured)
  const { shop } = answer.report
  const choice = useChooseRow(shop.cutList)
  const row = shop.cutList.find(({ label }) => label === measured)
  if (row !== undefined) return <MadePanel key={row.label} answer={answer} row={row} />
  const { labels } = shop.assembly
  if (labels.length === 0) return <p className="answer-lead">There are no labels to write yet.</p>
  return (
    <>
      <p className="answer-lead">
        Write the letter and the arrow on each part as it comes off the saw. If one came out to
        another size, measure it here before you cut the next.
      </p>
      <ul className="part-labels">
        {labels.map((label) => (
          <PartLabelCard
            key={label.label}
            label={label}
            row={shop.cutList.find((r) => r.label === label.label)}
            choice={choice}
          />
        ))}
      </ul>
    </>
  )
}
