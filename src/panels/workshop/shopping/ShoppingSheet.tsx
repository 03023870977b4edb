import type {
  ShoppingKind,
  ShoppingLine,
  ShoppingList,
} from '../../../reports/shop/shopping/shoppingList.ts'
import { formatMoney } from '../../../sheets/shop/moneyWords.ts'
import { SHOPPING_KINDS } from '../../../sheets/shop/shoppingWords.ts'
import { changeField } from '../../inputs/changeField.ts'
import { Segments } from '../../view/Segments.tsx'
import { CostShares } from './CostShares.tsx'
import { percentOf } from './percentOf.ts'
import { ShoppingRow } from './ShoppingRow.tsx'

/** What to buy, with a price to type over in every line, and what it comes to. */
export const ShoppingSheet = ({ shopping }: { readonly shopping: ShoppingList }) => {
  const { lines, currency, usesDemoPrices, isFinal } = shopping
  if (lines.length === 0) return <p className="answer-lead">There is nothing to buy yet.</p>
  return (
    <>
      <ShoppingTotal shopping={shopping} />
      {usesDemoPrices && (
        <p className="demo-note">
          <strong className="demo-mark">demo prices</strong> The prices marked so are invented: type
          your own over them.
        </p>
      )}
      {!isFinal && (
        <p className="about">
          Boards and sheets are estimated until their plan is made; then they are counted.
        </p>
      )}
      <table className="bench-table shopping">
        <caption className="hidden-text">Shopping list</caption>
        <thead>
          <tr>
            <th scope="col">Buy</th>
            <th scope="col">What</th>
            <th scope="col">Price each</th>
            <th scope="col" className="number">
              Price
            </th>
          </tr>
        </thead>
        {byKind(lines).map(([kind, rows]) => (
          <tbody key={kind}>
            <tr className="kind-row">
              <th scope="rowgroup" colSpan={3}>
                {SHOPPING_KINDS[kind]}
              </th>
              <td className="number">
                {formatMoney(
                  rows.reduce((sum, { price }) => sum + price, 0),
                  currency,
                )}
              </td>
            </tr>
            {rows.map((line) => (
              <ShoppingRow key={line.id + line.onHand} line={line} currency={currency} />
            ))}
          </tbody>
        ))}
      </table>
    </>
  )
}

const HIVES = [
  { value: '1', name: '1' },
  { value: '2', name: '2' },
  { value: '3', name: '3' },
] as const

const ShoppingTotal = ({ shopping }: { readonly shopping: ShoppingList }) => {
  const { total, perHive, hives, currency, shares } = shopping
  return (
    <section className="shopping-total" aria-label="Total">
      <div>
        <p className="big-figure">{formatMoney(total, currency)}</p>
        <p>{hives === 1 ? 'for one hive' : `${formatMoney(perHive, currency)} for each hive`}</p>
      </div>
      <Segments
        name="Hives at once"
        options={HIVES}
        value={hives === 2 ? '2' : hives === 3 ? '3' : '1'}
        onChoose={(value) => changeField('shop.hivesAtOnce', Number(value))}
      />
      <CostShares shares={shares} />
      <ul className="cost-words">
        {shares
          .filter(({ share }) => share > 0)
          .map(({ kind, share }) => (
            <li key={kind}>
              <i className={`share-key cost-${kind}`} aria-hidden="true" />
              {SHOPPING_KINDS[kind]} <strong>{percentOf(share)}</strong>
            </li>
          ))}
      </ul>
    </section>
  )
}

/** Lines of one kind together, kinds in the order in which they first appear. */
const byKind = (
  lines: readonly ShoppingLine[],
): readonly (readonly [ShoppingKind, readonly ShoppingLine[]])[] => {
  const kinds = new Map<ShoppingKind, ShoppingLine[]>()
  for (const line of lines) kinds.set(line.kind, [...(kinds.get(line.kind) ?? []), line])
  return [...kinds]
}
