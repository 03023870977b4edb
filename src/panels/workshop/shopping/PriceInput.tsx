import { useId, useState } from 'react'
import { setPrice } from '../../../design/priceEdits.ts'
import { GOODS_PRICE_FIELDS } from '../../../design/stockFields.ts'
import type { ShoppingLine } from '../../../reports/shop/shopping/shoppingList.ts'
import { useDesignStore } from '../../../store/designStore.ts'
import { useViewStore } from '../../../store/viewStore.ts'
import { formatNumber } from '../../../units/number.ts'
import { commitNumber, stepNumber } from '../../inputs/commitNumber.ts'
import { TypedNumber } from '../../inputs/TypedNumber.tsx'
import { useGesture } from '../../inputs/useGesture.ts'

interface PriceInputProps {
  readonly line: Pick<ShoppingLine, 'id' | 'priceEach'>
  readonly name: string
}

const FIELD = GOODS_PRICE_FIELDS.price

/** The price of one, to type over; it is kept with the design. */
export const PriceInput = ({ line, name }: PriceInputProps) => {
  const id = useId()
  const units = useViewStore((s) => s.units)
  const edit = useDesignStore((s) => s.edit)
  const gesture = useGesture()
  const [problem, setProblem] = useState('')
  const { priceEach } = line
  const set = (price: number) => edit((design) => setPrice(design, line.id, price))
  const commit = (text: string) => {
    const result = commitNumber(FIELD, text, { stored: priceEach, units })
    setProblem(result.kind === 'error' ? result.note : '')
    // The same figure typed again makes an invented price one's own.
    if (result.kind === 'set') set(result.value)
  }
  return (
    <>
      <label className="hidden-text" htmlFor={id}>
        Price of one: {name}
      </label>
      <TypedNumber
        id={id}
        shown={formatNumber(priceEach, 2)}
        unit=""
        describedBy={`${id}-note`}
        isWrong={problem !== ''}
        onCommit={commit}
        onForget={() => setProblem('')}
        onStep={(steps) => {
          gesture.begin()
          set(stepNumber(FIELD, priceEach, { steps, units }))
        }}
        onStepEnd={gesture.end}
      />
      <span id={`${id}-note`} className={problem === '' ? 'note' : 'note wrong'} role="status">
        {problem}
      </span>
    </>
  )
}
