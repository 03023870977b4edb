import type { ShopReport } from '../../reports/shop/computeShop.ts'
import { useViewStore } from '../../store/viewStore.ts'
import { CutListTable } from './CutListTable.tsx'

/** What to cut and what to buy. */
export const CutListAnswer = ({ shop }: { readonly shop: ShopReport }) => {
  const unit = useViewStore((s) => s.units.length)
  const cut = shop.cutList.filter((row) => !row.bought)
  const bought = shop.cutList.filter((row) => row.bought)
  return (
    <>
      <p className="answer-lead">
        {shop.partCount} parts of {shop.distinctParts} kinds. Choose a line to find it in the hive.
      </p>
      <CutListTable title="To cut" rows={cut} unit={unit} />
      {bought.length > 0 && <CutListTable title="To buy" rows={bought} unit={unit} />}
      {shop.sundries.length > 0 && (
        <table className="cut-list">
          <caption>Small things</caption>
          <tbody>
            {shop.sundries.map((row) => (
              <tr key={row.name + row.use}>
                <td className="number">{row.count}</td>
                <td>
                  {row.name}
                  <small>{row.use}</small>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </>
  )
}
