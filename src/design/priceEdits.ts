import { DEFAULT_LUMBER, DEFAULT_SHEET } from './defaults.ts'
import { type Design, MAX_STOCK_ROWS } from './schema.ts'
import { setField } from './setField.ts'
import { GOODS_PRICE_FIELDS } from './stockFields.ts'
import { isStockItem, parseStockItemId, type StockItem } from './stockItem.ts'

/**
 * Sets the price of a line of the shopping list by its id: a row of the design's own stock
 * (`stock.lumber.2`), a board or sheet of the catalogue (`board spruce 20x94x2400`), or anything else.
 */
export function setPrice(design: Design, id: string, price: number): Design {
  const [, ownRow] = OWN_ROW.exec(id) ?? []
  if (ownRow !== undefined) return setField(design, `${ownRow}.price`, price).design
  const item = parseStockItemId(id)
  return item === undefined ? setGoodsPrice(design, id, price) : setStockPrice(design, item, price)
}

/**
 * Sets what a board or sheet of that size costs. A row of its own is made when the catalogue's price
 * is changed. The same design when there are as many rows as may be.
 */
export function setStockPrice(design: Design, item: StockItem, price: number): Design {
  const { kind, ...size } = item
  const list = kind === 'board' ? 'lumber' : 'sheets'
  const rows = design.stock[list]
  const index = rows.findIndex((row) => !row.onHand && isStockItem(row, item))
  if (index !== -1) return setField(design, `stock.${list}.${index}.price`, price).design
  if (rows.length >= MAX_STOCK_ROWS) return design
  const bought = { ...size, supply: 'unlimited', onHand: false } as const
  const added = {
    ...design.stock,
    ...(kind === 'board'
      ? { lumber: [...design.stock.lumber, { ...DEFAULT_LUMBER, ...bought }] }
      : { sheets: [...design.stock.sheets, { ...DEFAULT_SHEET, ...bought }] }),
  }
  const path = `stock.${list}.${rows.length}.price`
  return setField({ ...design, stock: added }, path, price).design
}

/**
 * Sets the price of anything on the shopping list that is no board or sheet. The same design when
 * there are as many prices as may be, or when the id is too long.
 */
export function setGoodsPrice(design: Design, id: string, price: number): Design {
  const { goods } = design.stock
  const index = goods.findIndex((article) => article.id === id)
  if (index !== -1) return setField(design, `stock.goods.${index}.price`, price).design
  if (goods.length >= MAX_STOCK_ROWS || id.length > GOODS_PRICE_FIELDS.id.maxLength) return design
  const stock = { ...design.stock, goods: [...goods, { id, price: 0 }] }
  return setField({ ...design, stock }, `stock.goods.${goods.length}.price`, price).design
}

const OWN_ROW = /^(stock\.(?:lumber|sheets)\.\d+)(?:, clear length \d+)?$/
