import { bagPrice, battPrice, foundationPrice } from '../../../catalog/goodsPrices.ts'
import { materialById } from '../../../catalog/materials.ts'
import type { CutListRow } from '../shopReport.ts'
import { type OwnPrice, priced } from './goodsLines.ts'
import type { ShoppingLine } from './shoppingList.ts'

/** Fill settles and some is spilt: so much more is bought (common practice, from memory). */
const SETTLING = 0.1
/** One bag of loose fill, kg (common practice, from memory). */
const BAG_KG = 10

/** What is bought by area, mass or piece instead of by board or sheet: batts, loose fill, foundation. */
export const fillLines = (
  cutList: readonly CutListRow[],
  hives: number,
  ownPrice: OwnPrice,
): readonly ShoppingLine[] => {
  const batts = new Map<string, { row: CutListRow; m2: number; labels: string[] }>()
  const loose = new Map<string, { row: CutListRow; kg: number; labels: string[] }>()
  const lines: ShoppingLine[] = []
  for (const row of cutList) {
    const { family, form } = materialById(row.material)
    if (family === 'wax') lines.push(foundationLine(row, hives, ownPrice))
    else if (form === 'batt') {
      const id = `batt ${row.material} ${row.thicknessMm}`
      const known = batts.get(id) ?? { row, m2: 0, labels: [] }
      known.m2 += (row.lengthMm * row.widthMm * row.count * hives) / 1e6
      known.labels.push(row.label)
      batts.set(id, known)
    } else if (form === 'loose') {
      const known = loose.get(row.material) ?? { row, kg: 0, labels: [] }
      known.kg += row.massKgEach * row.count * hives
      known.labels.push(row.label)
      loose.set(row.material, known)
    }
  }
  return [
    ...[...batts].map(([id, { row, m2, labels }]) =>
      priced(
        {
          kind: 'insulation',
          id,
          name: row.materialName,
          sizeMm: [row.thicknessMm],
          quantity: Math.ceil(m2 * (1 + SETTLING) * 10 - 1e-9) / 10,
          unit: 'm2',
          labels,
        },
        battPrice(row.material, row.thicknessMm),
        ownPrice,
      ),
    ),
    ...[...loose].map(([material, { row, kg, labels }]) => {
      const need = kg * (1 + SETTLING)
      const quantity = Math.ceil(need / BAG_KG - 1e-9)
      return priced(
        {
          kind: 'insulation',
          id: `bag of ${material}`,
          name: row.materialName,
          detail: `bag of ${BAG_KG} kg; packed to ${materialById(material).densityKgPerM3} kg/m³, so that it does not settle`,
          quantity,
          unit: 'bag',
          leftOver: `${Math.floor(quantity * BAG_KG - need)} kg`,
          labels,
        },
        bagPrice(material),
        ownPrice,
      )
    }),
    ...lines,
  ]
}

const foundationLine = (row: CutListRow, hives: number, ownPrice: OwnPrice): ShoppingLine => {
  const { lengthMm, widthMm, count, label, materialName } = row
  return priced(
    {
      kind: 'frame',
      id: `foundation ${Math.round(lengthMm)}x${Math.round(widthMm)}`,
      name: materialName,
      sizeMm: [lengthMm, widthMm],
      quantity: count * hives,
      unit: 'each',
      labels: [label],
    },
    foundationPrice(lengthMm, widthMm),
    ownPrice,
  )
}
