import type { CSSProperties } from 'react'
import type { SheetGroup } from '../../../reports/shop/cutting/cuttingPlan.ts'
import { formatMoney } from '../../../sheets/shop/moneyWords.ts'
import type { SheetLayout, SheetResult } from '../../../solvers/cutting/sheets/sheetJob.ts'
import { useViewStore } from '../../../store/viewStore.ts'
import { formatLength } from '../../../units/length.ts'
import { GroupHead } from '../GroupHead.tsx'
import { counted } from '../measureLine.ts'
import { describeResult } from '../planWords.ts'
import type { RowChoice } from '../useChooseRow.ts'
import { SheetPlan } from './SheetPlan.tsx'

interface SheetGroupPlanProps {
  readonly group: SheetGroup
  readonly result: SheetResult
  readonly isFinal: boolean
  readonly currency: string
  readonly keepMm: number
  readonly choice: RowChoice
}

/** No sheet is drawn higher, so that a whole one is in sight with its list. */
const HIGHEST_PX = 460

/** Sheets of one material and thickness with all that is cut from them. */
export const SheetGroupPlan = (props: SheetGroupPlanProps) => {
  const { group, result, isFinal, currency, keepMm, choice } = props
  const unit = useViewStore((s) => s.units.length)
  const { materialName, thicknessMm, job, labels } = group
  const size = formatLength(thicknessMm, unit, { withUnit: true })
  const layouts = result.kind === 'plan' ? result.layouts : []
  // The longest sheet of the group that is used fills the width, so that all are to one scale.
  const used = layouts.flatMap(({ stock }) => job.stocks[stock] ?? [])
  const fullMm = Math.max(...used.map(({ lengthMm }) => lengthMm), 1)
  const highMm = Math.max(...used.map(({ widthMm }) => widthMm), 1)
  const trim = formatLength(job.trimMm, unit, { withUnit: true })
  const note =
    result.kind === 'plan'
      ? `${counted(result.sheets, 'sheet')}${job.trimMm > 0 ? `, ${trim} off each edge` : ''}`
      : labels.join(', ')
  return (
    <section className="cut-group">
      <GroupHead
        title={`${materialName} ${size}`}
        note={note}
        price={result.kind === 'plan' ? formatMoney(result.price, currency) : undefined}
        words={describeResult(result, { isFinal, currency })}
      />
      <div
        className="sheet-plans"
        style={{ '--sheet-width': `${(HIGHEST_PX * fullMm) / highMm}px` } as CSSProperties}
      >
        {layouts.map((layout) => (
          <SheetPlan
            key={layoutKey(layout)}
            {...{ layout, group, fullMm, keepMm, currency, choice }}
          />
        ))}
      </div>
    </section>
  )
}

/** Layouts have no name of their own; what lies where tells them apart. */
const layoutKey = ({ stock, pieces }: SheetLayout): string =>
  [stock, ...pieces.map(({ part, xMm, yMm }) => `${part}@${xMm},${yMm}`)].join(' ')
