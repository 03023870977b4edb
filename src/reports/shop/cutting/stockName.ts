import type { Design } from '../../../design/schema.ts'

/**
 * What the builder calls a board or sheet of the stock list, by its id in a cutting job:
 * `from the old bed, clear length 2`, or `Board 3` without a name. Undefined for the catalogue's.
 */
export const stockName = ({ stock }: Pick<Design, 'stock'>, id: string): string | undefined => {
  const [, list, number, clear = ''] = OWN_ROW.exec(id) ?? []
  if (list === undefined) return undefined
  const row = (list === 'lumber' ? stock.lumber : stock.sheets)[Number(number)]
  if (row === undefined) return undefined
  const plain = `${list === 'lumber' ? 'Board' : 'Sheet'} ${Number(number) + 1}`
  return `${row.name.trim() || plain}${clear}`
}

/** The path of a row of the design's stock that a job's board or sheet comes from; for its price. */
export const stockRowPath = (id: string): string | undefined => {
  const [, list, number] = OWN_ROW.exec(id) ?? []
  return list === undefined ? undefined : `stock.${list}.${number}`
}

const OWN_ROW = /^stock\.(lumber|sheets)\.(\d+)(, clear length \d+)?$/
