import type { DiagramMark } from './mark.ts'

/** The marks of the workshop's numbers: tools, cutting, stock, and parts as they were made. */
export const SHOP_MARKS: Readonly<Record<string, DiagramMark>> = {
  'shop.kerfMm': { drawing: 'kerf', areas: [[56, 24, 7, 36]], dimension: [56, 70, 63, 70] },
  'shop.ripLimitMm': { drawing: 'fence', dimension: [38, 70, 92, 70] },
  'shop.longestBoardMm': { drawing: 'plank', dimension: [8, 66, 112, 66] },
  'shop.guideOffsetMm': { drawing: 'guide', dimension: [30, 74, 76, 74] },
  'shop.endTrimMm': {
    drawing: 'trimmedBoard',
    areas: [
      [8, 30, 10, 24],
      [102, 30, 10, 24],
    ],
  },
  'shop.sheetTrimMm': {
    drawing: 'trimmedSheet',
    areas: [
      [16, 10, 88, 8],
      [16, 64, 88, 8],
      [16, 18, 8, 46],
      [96, 18, 8, 46],
    ],
  },
  'shop.carryLengthMm': { drawing: 'carry', dimension: [38, 78, 106, 78] },
  'shop.carryWidthMm': { drawing: 'carry', dimension: [114, 30, 114, 70] },
  'shop.keepOffcutMm': {
    drawing: 'offcut',
    areas: [[78, 30, 34, 24]],
    dimension: [78, 66, 112, 66],
  },
  'shop.hivesAtOnce': { drawing: 'hives', areas: [[6, 32, 30, 26]] },
  'stock.lumber.lengthMm': { drawing: 'boardSolid', dimension: [10, 68, 94, 68] },
  'stock.lumber.widthMm': { drawing: 'boardSolid', path: 'M10 36 26 22' },
  'stock.lumber.thicknessMm': { drawing: 'boardSolid', dimension: [5, 40, 5, 56] },
  'stock.lumber.price': { drawing: 'priceTag', path: 'M58 34h34M58 44h34M58 54h20' },
  'stock.lumber.count': { drawing: 'pile', dimension: [7, 22, 7, 68] },
  'stock.lumber.defects.fromMm': { drawing: 'knot', dimension: [8, 68, 48, 68] },
  'stock.lumber.defects.toMm': { drawing: 'knot', dimension: [8, 68, 72, 68] },
  'stock.sheets.lengthMm': { drawing: 'sheetSolid', dimension: [10, 76, 84, 76] },
  'stock.sheets.widthMm': { drawing: 'sheetSolid', path: 'M8 54 36 18' },
  'stock.sheets.thicknessMm': { drawing: 'sheetSolid', dimension: [5, 56, 5, 64] },
  'stock.sheets.price': { drawing: 'priceTag', path: 'M58 34h34M58 44h34M58 54h20' },
  'stock.sheets.count': { drawing: 'pile', dimension: [7, 22, 7, 68] },
  'stock.goods.price': { drawing: 'priceTag', path: 'M58 34h34M58 44h34M58 54h20' },
  'made.lengthMm': { drawing: 'boardSolid', dimension: [10, 68, 94, 68] },
  'made.widthMm': { drawing: 'boardSolid', path: 'M10 36 26 22' },
  'made.thicknessMm': { drawing: 'boardSolid', dimension: [5, 40, 5, 56] },
}
