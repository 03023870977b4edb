import type { ShopReport } from '../../reports/shop/computeShop.ts'

/** The work in one line: `312 parts to cut, 24 set-ups, 7 tools`. */
export const measureLine = ({ setUps }: Pick<ShopReport, 'setUps'>): string =>
  [
    `${counted(setUps.partCount, 'part')} to cut`,
    counted(setUps.setUps.length, 'set-up'),
    counted(setUps.tools.length, 'tool'),
  ].join(', ')

/** `1 board`, `2 boards`; a plural of its own where `s` will not do. */
export const counted = (count: number, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 ? one : many}`
