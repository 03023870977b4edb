import type { ShoppingList } from '../../reports/shop/shopping/shoppingList.ts'
import { formatMoney } from '../../sheets/shop/moneyWords.ts'
import { SHOPPING_KINDS } from '../../sheets/shop/shoppingWords.ts'
import { CostShares } from './shopping/CostShares.tsx'
import { percentOf } from './shopping/percentOf.ts'

/** What the hive costs, and what most of it goes for. */
export const CostAnswer = ({ shopping }: { readonly shopping: ShoppingList }) => {
  const { lines, hives, total, perHive, currency, shares, usesDemoPrices, isFinal } = shopping
  if (lines.length === 0) return null
  const [most] = shares
  return (
    <section className="panel-answer">
      <h4>{hives === 1 ? 'Cost of the hive' : `Cost of ${hives} hives`}</h4>
      {usesDemoPrices && <span className="demo-mark">demo prices</span>}
      <p className="big-figure">{formatMoney(total, currency)}</p>
      {hives > 1 && <p className="wide">{formatMoney(perHive, currency)} for each hive.</p>}
      {most !== undefined && total > 0 && (
        <p className="wide">
          Most goes into {SHOPPING_KINDS[most.kind].toLowerCase()}:{' '}
          {formatMoney(most.price, currency)}, {percentOf(most.share)}.
        </p>
      )}
      <CostShares shares={shares} />
      {!isFinal && (
        <p className="about">Boards and sheets are estimated until their plan is made.</p>
      )}
    </section>
  )
}
