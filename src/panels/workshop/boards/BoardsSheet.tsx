import type { WholeAnswer } from '../../../store/wholeAnswer.ts'
import { PlanNotice } from '../PlanNotice.tsx'
import { Problems } from '../Problems.tsx'
import { useChooseRow } from '../useChooseRow.ts'
import { useCutting } from '../useCutting.ts'
import { BoardGroup } from './BoardGroup.tsx'
import { BoardKey } from './BoardKey.tsx'

/** Every board to be cut, drawn to scale, by section of wood. */
export const BoardsSheet = ({ answer }: { readonly answer: WholeAnswer }) => {
  const { shop } = answer.report
  const view = useCutting(shop)
  const choice = useChooseRow(shop.cutList)
  const { plan, isOld } = view
  const groups = plan?.jobs.lumber ?? []
  return (
    <>
      <PlanNotice view={view} />
      <Problems problems={shop.cutting.problems} />
      {plan !== undefined && groups.length === 0 && (
        <p className="answer-lead">This design needs no boards from the shop.</p>
      )}
      {groups.length > 0 && <BoardKey />}
      <div className={isOld ? 'old' : undefined}>
        {groups.map((group, i) => {
          const result = plan?.lumber[i]
          return (
            result && (
              <BoardGroup
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
