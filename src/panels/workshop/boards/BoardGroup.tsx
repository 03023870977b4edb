import type { LumberGroup } from '../../../reports/shop/cutting/cuttingPlan.ts'
import { formatMoney } from '../../../sheets/shop/moneyWords.ts'
import type { LumberResult } from '../../../solvers/cutting/lumber/lumberJob.ts'
import { useViewStore } from '../../../store/viewStore.ts'
import { formatLength } from '../../../units/length.ts'
import { GroupHead } from '../GroupHead.tsx'
import { counted } from '../measureLine.ts'
import { describeResult } from '../planWords.ts'
import type { RowChoice } from '../useChooseRow.ts'
import { BoardPattern } from './BoardPattern.tsx'

interface BoardGroupProps {
  readonly group: LumberGroup
  readonly result: LumberResult
  readonly isFinal: boolean
  readonly currency: string
  readonly keepMm: number
  readonly choice: RowChoice
}

/** Boards of one section with all that is cut from them. */
export const BoardGroup = (props: BoardGroupProps) => {
  const { group, result, isFinal, currency, keepMm, choice } = props
  const unit = useViewStore((s) => s.units.length)
  const { materialName, section, thicknessMm, widthMm, job, blanks } = group
  const size = `${formatLength(thicknessMm, unit)} × ${formatLength(widthMm, unit)} ${unit}`
  const patterns = result.kind === 'plan' ? result.patterns : []
  // The longest board of the group that is used fills the width, so that all are to one scale.
  const fullMm = Math.max(...patterns.map(({ stock }) => job.stocks[stock]?.lengthMm ?? 0), 1)
  const trim = formatLength(job.trimMm, unit, { withUnit: true })
  const note =
    result.kind === 'plan'
      ? `${section}: ${counted(result.boards, 'board')}${job.trimMm > 0 ? `, ${trim} off the ends of each` : ''}`
      : `${section}: ${blanks.map(({ label }) => label).join(', ')}`
  return (
    <section className="cut-group">
      <GroupHead
        title={`${materialName} ${size}`}
        note={note}
        price={result.kind === 'plan' ? formatMoney(result.price, currency) : undefined}
        words={describeResult(result, { isFinal, currency })}
      />
      <ul className="boards">
        {patterns.map((pattern) => (
          <BoardPattern
            key={`${pattern.stock} ${pattern.pieces.map((p) => p.part).join()}`}
            pattern={pattern}
            context={{ job, blanks, keepMm, fullMm }}
            currency={currency}
            choice={choice}
          />
        ))}
      </ul>
    </section>
  )
}
