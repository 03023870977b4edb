import type { ShoppingLine } from '../../../reports/shop/shopping/shoppingList.ts'
import { formatMoney } from '../../../sheets/shop/moneyWords.ts'
import { leftOverWords, quantityWords, unitWords } from '../../../sheets/shop/shoppingWords.ts'
import { useViewStore } from '../../../store/viewStore.ts'
import { PriceInput } from './PriceInput.tsx'

interface ShoppingRowProps {
  readonly line: ShoppingLine
  readonly currency: string
}

/** One line of the shopping list. */
export const ShoppingRow = ({ line, currency }: ShoppingRowProps) => {
  const unit = useViewStore((s) => s.units.length)
  const left = leftOverWords(line, unit)
  const size = unitWords(line, unit)
  const { quantity, name, onHand, isDemoPrice, price, labels } = line
  const many = MANY[line.unit] ?? [line.unit, line.unit]
  return (
    <tr>
      <td data-head="Buy" className="no-wrap">
        <strong className="shopping-count">{quantityWords(line)}</strong>{' '}
        {quantity === 1 ? many[0] : many[1]}
      </td>
      <th scope="row">
        {name}
        <small>
          {size}
          {labels.length > 0 && labels.length <= 12 && ` for ${labels.join(', ')}`}
        </small>
        {left !== '' && <small>Left over: {left}</small>}
      </th>
      <td data-head="Price each">
        {onHand ? (
          'on hand'
        ) : (
          <PriceInput line={line} name={size === '' ? name : `${name}, ${size}`} />
        )}
        {isDemoPrice && !onHand && <small className="demo-word">demo price</small>}
      </td>
      <td data-head="Price" className="number">
        <strong>{formatMoney(price, currency)}</strong>
      </td>
    </tr>
  )
}

const MANY: Readonly<Record<string, readonly [one: string, many: string]>> = {
  board: ['board', 'boards'],
  sheet: ['sheet', 'sheets'],
  box: ['box', 'boxes'],
  bag: ['bag', 'bags'],
  each: ['', ''],
  pair: ['pair', 'pairs'],
  m: ['m', 'm'],
  m2: ['m²', 'm²'],
  tin: ['tin', 'tins'],
  tube: ['tube', 'tubes'],
  roll: ['roll', 'rolls'],
}
