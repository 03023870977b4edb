import type { ShoppingList } from '../../../reports/shop/shopping/shoppingList.ts'

/** What the money goes for, largest first: a bar that is hatched so that no colour is needed. */
export const CostShares = ({ shares }: Pick<ShoppingList, 'shares'>) => {
  const shown = shares.filter(({ share }) => share > 0)
  if (shown.length === 0) return null
  return (
    <div className="share-bar cost-bar wide" aria-hidden="true">
      {shown.map(({ kind, share }) => (
        <i key={kind} className={`cost-${kind}`} style={{ flexGrow: share }} />
      ))}
    </div>
  )
}
