import { formatTrimmed } from '../../../units/number.ts'
import type { Cut, CutStock } from './cut.ts'

/** What is cut at one setting: `Spruce 28 × 70, 20 × 144 mm; Pine 18 × 45 mm`, always in mm. */
export const describeStock = (cuts: readonly Cut[]): string => {
  const distinct: CutStock[] = []
  for (const { stock } of cuts) {
    if (!distinct.some((other) => isSame(other, stock))) distinct.push(stock)
  }
  return materialNamesOf(distinct)
    .map((name) => {
      const sections = distinct.filter(({ materialName }) => materialName === name).map(section)
      return `${name} ${sections.join(', ')} mm`
    })
    .join('; ')
}

export const materialNames = (cuts: readonly Cut[]): string =>
  materialNamesOf(cuts.map(({ stock }) => stock)).join(', ')

const materialNamesOf = (stocks: readonly CutStock[]): readonly string[] => [
  ...new Set(stocks.map(({ materialName }) => materialName)),
]

const isSame = (a: CutStock, b: CutStock): boolean =>
  a.materialName === b.materialName && a.thicknessMm === b.thicknessMm && a.widthMm === b.widthMm

const section = ({ thicknessMm, widthMm }: CutStock): string =>
  widthMm === undefined
    ? formatTrimmed(thicknessMm, 1)
    : `${formatTrimmed(thicknessMm, 1)} × ${formatTrimmed(widthMm, 1)}`
