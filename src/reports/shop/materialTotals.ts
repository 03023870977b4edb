import { materialById } from '../../catalog/materials.ts'
import type { Part } from '../../hive/part.ts'
import { partVolumeM3 } from './partMass.ts'
import { toHundredths } from './roundSize.ts'
import type { MaterialTotal } from './shopReport.ts'

/**
 * What each material comes to in each thickness, thinnest first within a material, materials by name.
 * Area and length are of the finished sizes, without saw kerf or waste.
 */
export const materialTotals = (parts: readonly Part[]): readonly MaterialTotal[] => {
  const totals = new Map<string, MaterialTotal>()
  for (const part of parts) {
    const { length, width, thickness } = part.size
    const key = `${part.material}|${toHundredths(thickness)}`
    const { name, densityKgPerM3 } = materialById(part.material)
    const volumeM3 = partVolumeM3(part)
    const before = totals.get(key)
    totals.set(key, {
      material: part.material,
      materialName: name,
      thicknessMm: toHundredths(thickness) / 100,
      pieces: (before?.pieces ?? 0) + 1,
      areaM2: (before?.areaM2 ?? 0) + (length * width) / 1e6,
      volumeM3: (before?.volumeM3 ?? 0) + volumeM3,
      lengthM: (before?.lengthM ?? 0) + length / 1000,
      massKg: (before?.massKg ?? 0) + volumeM3 * densityKgPerM3,
    })
  }
  return [...totals.values()].sort(
    (a, b) => compareText(a.materialName, b.materialName) || a.thicknessMm - b.thicknessMm,
  )
}

// Not localeCompare: the same design must give the same order on every machine.
const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)
