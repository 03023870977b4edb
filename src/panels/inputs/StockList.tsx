import { MAX_DEFECTS, MAX_STOCK_ROWS } from '../../design/schema.ts'
import {
  addDefect,
  addLumberStock,
  addSheetStock,
  removeDefect,
  removeLumberStock,
  removeSheetStock,
} from '../../design/stockEdits.ts'
import { useDesignStore } from '../../store/designStore.ts'
import { FieldInput } from './FieldInput.tsx'
import { StockRowName } from './StockRowName.tsx'

const LUMBER_KEYS = ['name', 'material', 'thicknessMm', 'widthMm', 'lengthMm']
const SHEET_KEYS = ['name', 'material', 'thicknessMm', 'lengthMm', 'widthMm']

const LISTS = {
  lumber: {
    title: 'Boards on hand and own prices',
    one: 'board',
    keys: LUMBER_KEYS,
    add: addLumberStock,
    remove: removeLumberStock,
    none: 'No boards of your own. Add what lies in your rack: it costs nothing and is used first.',
  },
  sheets: {
    title: 'Sheets and offcuts on hand',
    one: 'sheet',
    keys: SHEET_KEYS,
    add: addSheetStock,
    remove: removeSheetStock,
    none: 'No sheets of your own. Add offcuts, or sheets at your own price.',
  },
} as const

/** Boards or sheets that the builder has or knows a price for, to add to and take from. */
export const StockList = ({ list }: { readonly list: keyof typeof LISTS }) => {
  const { title, one, keys, add, remove, none } = LISTS[list]
  const count = useDesignStore((s) => s.design.stock[list].length)
  const edit = useDesignStore((s) => s.edit)
  const places = Array.from({ length: count }, (_, place) => place)
  return (
    <section className="section stock-list">
      <h3>{title}</h3>
      {count === 0 && <p className="about">{none}</p>}
      {places.map((place) => (
        <details className="stock-row" key={place} open={place === count - 1 || undefined}>
          <summary>
            <StockRowName list={list} place={place} />
          </summary>
          {keys.map((key) => (
            <FieldInput key={key} path={`stock.${list}.${place}.${key}`} />
          ))}
          <StockSupply list={list} place={place} />
          {list === 'lumber' && <Defects place={place} />}
          <button
            type="button"
            className="plain"
            aria-label={`Remove this ${one}, number ${place + 1}`}
            onClick={() => edit((design) => remove(design, place))}
          >
            Remove this {one}
          </button>
        </details>
      ))}
      {count < MAX_STOCK_ROWS && (
        <button type="button" className="plain add" onClick={() => edit((design) => add(design))}>
          Add {count === 0 ? 'a' : 'another'} {one}
        </button>
      )}
    </section>
  )
}

interface PlaceProps {
  readonly list: keyof typeof LISTS
  readonly place: number
}

/** On hand it has a count; to be bought it has a price, and perhaps a count. */
const StockSupply = ({ list, place }: PlaceProps) => {
  const onHand = useDesignStore((s) => s.design.stock[list][place]?.onHand)
  const supply = useDesignStore((s) => s.design.stock[list][place]?.supply)
  const keys =
    onHand === true
      ? ['onHand', 'count']
      : ['onHand', 'price', 'supply', ...(supply === 'counted' ? ['count'] : [])]
  return keys.map((key) => <FieldInput key={key} path={`stock.${list}.${place}.${key}`} />)
}

/** Knots, splits and nails that no part may contain. */
const Defects = ({ place }: { readonly place: number }) => {
  const count = useDesignStore((s) => s.design.stock.lumber[place]?.defects.length ?? 0)
  const edit = useDesignStore((s) => s.edit)
  return (
    <div className="defects">
      {Array.from({ length: count }, (_, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a bad place is known by its number alone
        <section key={i} aria-label={`Bad place ${i + 1}`}>
          <div className="section-head">
            <h4>Skip from … to …</h4>
            <button
              type="button"
              className="plain"
              aria-label={`Remove bad place ${i + 1} of board ${place + 1}`}
              onClick={() => edit((design) => removeDefect(design, place, i))}
            >
              Remove
            </button>
          </div>
          <FieldInput path={`stock.lumber.${place}.defects.${i}.fromMm`} />
          <FieldInput path={`stock.lumber.${place}.defects.${i}.toMm`} />
        </section>
      ))}
      {count < MAX_DEFECTS && (
        <button
          type="button"
          className="plain add"
          onClick={() => edit((design) => addDefect(design, place))}
        >
          Skip a bad place
        </button>
      )}
    </div>
  )
}
