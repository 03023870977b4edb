import type { WholeShop } from '../../reports/shop/benchReport.ts'
import { formatMoney } from '../../sheets/shop/moneyWords.ts'
import { OLD_WORDS } from '../answers/warmth/fieldWords.ts'
import { counted } from './measureLine.ts'
import { PlanState } from './PlanState.tsx'
import { Problems } from './Problems.tsx'
import { allResults, describePrice, savedByPlanning, sumPlan } from './planWords.ts'
import { useCutting } from './useCutting.ts'

/** How the boards and sheets are planned, and how near that is to the cheapest there can be. */
export const PlanAnswer = ({ shop }: { readonly shop: WholeShop }) => {
  const { plan, isOld, problem } = useCutting(shop)
  const { currency } = shop.shopping
  const results = plan === undefined ? [] : allResults(plan)
  const sum = sumPlan(results)
  const refused = results.filter((result) => result.kind === 'refused').length
  const saved = plan && savedByPlanning(plan.lumber)
  return (
    <section className="panel-answer">
      <h4>Boards and sheets</h4>
      {isOld && <span className="old-words">{OLD_WORDS}</span>}
      <div className={isOld ? 'wide old' : 'wide'} role="status">
        {plan === undefined && problem === undefined && (
          <PlanState words={{ verdict: 'looking', text: 'The plan is being made.' }} />
        )}
        {problem !== undefined && (
          <p className="field-problem">There is no plan for this design. {problem}</p>
        )}
        {sum && (
          <PlanState words={describePrice(sum, { isFinal: plan?.isFinal === true, currency })} />
        )}
        {refused > 0 && (
          <PlanState
            words={{
              verdict: 'refused',
              text: `${counted(refused, 'kind of stock', 'kinds of stock')} without a plan, not in these figures`,
            }}
          />
        )}
      </div>
      {sum && (
        <dl className={isOld ? 'figures old' : 'figures'}>
          <dt>{boardWords(shop.plan ?? plan)}</dt>
          <dd>{formatMoney(sum.price, currency)}</dd>
          {saved !== undefined && (
            <>
              <dt>Saved by planning the boards</dt>
              <dd>{formatMoney(saved, currency)}</dd>
            </>
          )}
        </dl>
      )}
      <div className="wide">
        <Problems problems={shop.cutting.problems} />
      </div>
    </section>
  )
}

const boardWords = (plan: WholeShop['plan']): string => {
  const boards = (plan?.lumber ?? []).reduce((n, r) => n + (r.kind === 'plan' ? r.boards : 0), 0)
  const sheets = (plan?.sheets ?? []).reduce((n, r) => n + (r.kind === 'plan' ? r.sheets : 0), 0)
  return `${counted(boards, 'board')}, ${counted(sheets, 'sheet')}`
}
