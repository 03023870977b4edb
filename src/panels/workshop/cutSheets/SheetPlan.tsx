import { useState } from 'react'
import type { SheetGroup } from '../../../reports/shop/cutting/cuttingPlan.ts'
import { cutOrder } from '../../../sheets/shop/cutOrder.ts'
import { formatMoney } from '../../../sheets/shop/moneyWords.ts'
import type { SheetLayout } from '../../../solvers/cutting/sheets/sheetJob.ts'
import { useViewStore } from '../../../store/viewStore.ts'
import { formatLength } from '../../../units/length.ts'
import { counted } from '../measureLine.ts'
import type { RowChoice } from '../useChooseRow.ts'
import { CutSteps } from './CutSteps.tsx'
import { SheetPicture } from './SheetPicture.tsx'
import { SheetPieces } from './SheetPieces.tsx'

interface SheetPlanProps {
  readonly layout: SheetLayout
  readonly group: SheetGroup
  readonly fullMm: number
  readonly keepMm: number
  readonly currency: string
  readonly choice: RowChoice
}

/** Sheets that are cut alike: the picture, the pieces, and the cuts in the order of the saw. */
export const SheetPlan = (props: SheetPlanProps) => {
  const { layout, group, fullMm, keepMm, currency, choice } = props
  const unit = useViewStore((s) => s.units.length)
  const [cutShown, showCut] = useState<number>()
  const stock = group.job.stocks[layout.stock]
  if (stock === undefined) return null
  const cuts = cutOrder(layout.root)
  const size = `${formatLength(stock.lengthMm, unit)} × ${formatLength(stock.widthMm, unit)} ${unit}`
  return (
    <article className="sheet-plan">
      <p className="board-head">
        <strong>{layout.count} ×</strong> sheet of {size},{' '}
        {stock.price === 0 ? 'on hand' : `${formatMoney(stock.price, currency)} each`}.{' '}
        {counted(cuts.length, 'cut')} in {counted(layout.stages, 'stage')}.
      </p>
      <SheetPicture {...{ layout, stock, group, fullMm, keepMm, cuts, cutShown, choice }} />
      <SheetPieces {...{ layout, group, keepMm, choice }} />
      <CutSteps cuts={cuts} shown={cutShown} onShow={showCut} />
    </article>
  )
}
