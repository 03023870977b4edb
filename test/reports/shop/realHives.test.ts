import { describe, expect, it } from 'vitest'
import { EXAMPLES } from '../../../src/design/examples.ts'
import { deriveHive } from '../../../src/hive/deriveHive.ts'
import { computeShop } from '../../../src/reports/shop/computeShop.ts'
import { partMassKg } from '../../../src/reports/shop/partMass.ts'

describe('the shop report of the examples', () => {
  it.each(EXAMPLES)('of $name accounts for every part and its mass once', ({ design }) => {
    const result = deriveHive(design)
    if (result.kind === 'refused') throw new Error(result.refusals[0]?.message)
    const { parts } = result.hive
    const shop = computeShop(design, result.hive)
    const massKg = parts.reduce((sum, part) => sum + partMassKg(part), 0)
    const ids = shop.cutList.flatMap(({ partIds }) => partIds)

    expect(ids.toSorted()).toEqual(parts.map(({ id }) => id).toSorted())
    expect(shop.cutList.every(({ count, partIds }) => count === partIds.length)).toBe(true)
    const listed = shop.cutList.reduce((sum, row) => sum + row.count * row.massKgEach, 0)
    expect(Math.abs(listed - massKg)).toBeLessThan(1e-9)
    const totalled = shop.totals.reduce((sum, total) => sum + total.massKg, 0)
    expect(Math.abs(totalled - massKg)).toBeLessThan(1e-9)
    expect(Math.abs(shop.massKg.empty - massKg)).toBeLessThan(1e-9)
    expect(new Set(shop.cutList.map(({ label }) => label)).size).toBe(shop.cutList.length)
  })

  it.each(EXAMPLES)('of $name keeps hands in pairs of equal number', ({ design }) => {
    const result = deriveHive(design)
    if (result.kind === 'refused') throw new Error(result.refusals[0]?.message)
    const rows = computeShop(design, result.hive).cutList
    const lefts = rows.filter(({ hand }) => hand === 'left')
    expect(rows.filter(({ hand }) => hand === 'right')).toHaveLength(lefts.length)
  })
})
