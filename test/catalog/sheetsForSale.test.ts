import { describe, expect, it } from 'vitest'
import { MATERIALS } from '../../src/catalog/materials.ts'
import { sheetSizesOf, sheetsForSale } from '../../src/catalog/sheetsForSale.ts'

const price = (material: string, thicknessMm: number, lengthMm: number): number => {
  const sheet = sheetsForSale(material, thicknessMm, 'metric').find((s) => s.lengthMm === lengthMm)
  if (sheet === undefined) throw new Error(`${material} ${lengthMm}`)
  return sheet.price
}

describe('sheetsForSale', () => {
  it('sells all but wood, loose fill, batts and wax, in both systems, with a source', () => {
    for (const material of MATERIALS) {
      const isSold = ['board', 'sheet'].includes(material.form) && material.family !== 'wax'
      expect(sheetsForSale(material.id, 10, 'metric').length > 0, material.id).toBe(isSold)
      expect(sheetsForSale(material.id, 10, 'us').length > 0, material.id).toBe(isSold)
      expect((sheetSizesOf(material)?.source.length ?? 0) > 10).toBe(isSold)
    }
  })

  it('does not take 4 x 8 ft for 1220 x 2440 mm', () => {
    const [us] = sheetsForSale('osb', 11, 'us')
    // 8 ft and 4 ft: 96 and 48 times 25.4 mm.
    expect([us?.lengthMm, us?.widthMm]).toEqual([2438.4, 1219.2])
    const [metric] = sheetsForSale('osb', 11, 'metric')
    expect([metric?.lengthMm, metric?.widthMm]).toEqual([2440, 1220])
  })

  it('has the sizes of foam boards', () => {
    const sizes = (material: string) =>
      sheetsForSale(material, 50, 'metric').map(({ lengthMm, widthMm }) => [lengthMm, widthMm])
    expect(sizes('xps')).toEqual([[1250, 600]])
    expect(sizes('eps')).toContainEqual([1200, 600])
    expect(sizes('pir-foil')).toContainEqual([2400, 1200])
  })

  it('agrees roughly with the invented prices that were set for it', () => {
    // demo: invented. Plywood 9 mm 36.00, 18 mm 58.00; XPS 50 mm 9.00; PIR 34.00; aluminium 42.00.
    expect(price('plywood-softwood', 9, 2440)).toBeCloseTo(36, 0)
    expect(Math.abs(price('plywood-softwood', 18, 2440) - 58)).toBeLessThan(1)
    expect(Math.abs(price('xps', 50, 1250) - 9)).toBeLessThan(1)
    expect(Math.abs(price('pir-foil', 50, 2400) - 34)).toBeLessThan(1.5)
    expect(Math.abs(price('aluminium-sheet', 0.7, 2000) - 42)).toBeLessThan(1)
  })

  it('asks more for half a sheet than half, and for a thickness between by its volume', () => {
    expect(price('osb', 11, 1220)).toBeGreaterThan(price('osb', 11, 2440) / 2)
    expect(price('osb', 11, 1220)).toBeLessThan(price('osb', 11, 2440))
    const between = price('xps', 55, 1250)
    expect(between).toBeCloseTo((price('xps', 50, 1250) + price('xps', 60, 1250)) / 2, 1)
  })
})
