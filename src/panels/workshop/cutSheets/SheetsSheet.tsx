import type { WholeAnswer } from '../../../store/wholeAnswer.ts'
import { BoardKey } from '../boards/BoardKey.tsx'
import { PlanNotice } from '../PlanNotice.tsx'
import { Problems } from '../Problems.tsx'
import { useChooseRow } from '../useChooseRow.ts'
import { useCutting } from '../useCutting.ts'
import { SheetGroupPlan } from './SheetGroupPlan.tsx'

/** Every sheet to be cut, drawn to scale, by material and thickness. */
export const SheetsSheet = ({ answer }: { readonly answer: WholeAnswer }) => {
  const { shop } = answer.report
  const view = useCutting(shop)
  const choice = useChooseRow(shop.cutList)
  const { plan, isOld } = view
  const groups = plan?.jobs.sheets ?? []
  return (
    <>
      <PlanNotice view={view} />
      <Problems problems={shop.cutting.problems} />
      {plan !== undefined && groups.length === 0 && (
        <p className="answer-lead">This design needs no sheets from the shop.</p>
      )}
      {groups.length > 0 && <BoardKey />}
      <div className={isOld ? 'old' : undefined}>
        {groups.map((group, i) => {
          const result = plan?.sheets[i]
          return (
            result && (
              <SheetGroupPlan
                key={group.key}
                group={group}
                result={result}
                isFinal={plan?.isFinal === true}
                currency={shop.shopping.currency}
                keepMm={answer.design.shop.keepOffcutMm}
                choice={choice}
              />
            )
          )
        })}
      </div>
    </>
  )
}
