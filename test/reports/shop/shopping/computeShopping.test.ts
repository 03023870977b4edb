import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { ADHESIVES } from '../../../../src/catalog/adhesives.ts'
import { packQuantities } from '../../../../src/catalog/fastenerSizes.ts'
import { DEFAULT_DESIGN } from '../../../../src/design/defaults.ts'
import { setGoodsPrice, setPrice } from '../../../../src/design/priceEdits.ts'
import type { Design } from '../../../../src/design/schema.ts'
import { deriveHive } from '../../../../src/hive/deriveHive.ts'
import type { Hive } from '../../../../src/hive/hive.ts'
import { computeBench } from '../../../../src/reports/shop/computeBench.ts'
import { computeShop } from '../../../../src/reports/shop/computeShop.ts'
import type { CuttingPlan } from '../../../../src/reports/shop/cutting/cuttingPlan.ts'
import { solveCuttingPlan } from '../../../../src/reports/shop/cutting/solveCuttingPlan.ts'
import type { ShoppingList } from '../../../../src/reports/shop/shopping/shoppingList.ts'
import { arbitraryMixedBuilt, runs } from '../../../hive/arbitraryBuilt.ts'

const wholeShop = (design: Design, hive: Hive, plan?: CuttingPlan) =>
  computeBench(design, hive, computeShop(design, hive, plan))

const shopOf = (design: Design) => {
  const result = deriveHive(design)
  if (result.kind !== 'built') throw new Error('refused')
  const { hive } = result
  const rough = wholeShop(design, hive)
  return { rough, planned: wholeShop(design, hive, solveCuttingPlan(rough.cutting)) }
}
const sum = (prices: readonly number[]) => prices.reduce((a, b) => a + b, 0)
const lineOf = (list: ShoppingList, id: string) => list.lines.find((line) => line.id === id)

describe('computeShopping, the default hive', () => {
  const { rough, planned } = shopOf(DEFAULT_DESIGN)

  it('takes boards and sheets from the plan', () => {
    const { shopping, plan } = planned
    const boards = shopping.lines.filter(({ kind }) => kind === 'lumber')
    const inPlan = plan?.lumber.flatMap((r) => (r.kind === 'plan' ? [r.price] : [])) ?? []
    expect(inPlan.length).toBeGreaterThan(0)
    expect(sum(boards.map(({ price }) => price))).toBeCloseTo(sum(inPlan), 6)
    const sheets = shopping.lines.filter(({ unit }) => unit === 'sheet')
    const sheetPlan = plan?.sheets.flatMap((r) => (r.kind === 'plan' ? [r.price] : [])) ?? []
    expect(sum(sheets.map(({ price }) => price))).toBeCloseTo(sum(sheetPlan), 6)
    expect(shopping.isFinal).toBe(true)
  })

  it('estimates them without a plan, and says so', () => {
    expect(rough.shopping.isFinal).toBe(false)
    const ratio = rough.shopping.total / planned.shopping.total
    expect(ratio).toBeGreaterThan(0.85)
    expect(ratio).toBeLessThan(1.3)
  })

  it('lists left-over pieces that are worth keeping only', () => {
    const boards = planned.shopping.lines.filter(({ kind }) => kind === 'lumber')
    expect(boards.some(({ leftOverMm }) => leftOverMm.length > 0)).toBe(true)
    for (const { leftOverMm, sizeMm } of boards) {
      for (const [mm = 0] of leftOverMm) {
        expect(mm).toBeGreaterThanOrEqual(DEFAULT_DESIGN.shop.keepOffcutMm)
        expect(mm).toBeLessThan(sizeMm[0] ?? 0)
      }
    }
  })

  it('buys a sheet of foundation for each half frame', () => {
    const sheets = planned.shopping.lines.filter(({ id }) => id.startsWith('foundation'))
    expect(sum(sheets.map(({ quantity }) => quantity))).toBe(40)
  })

  it('puts the kind that costs most first, and shares that make a whole', () => {
    const { shares } = planned.shopping
    expect(sum(shares.map(({ share }) => share))).toBeCloseTo(1, 9)
    expect(shares.map(({ price }) => price)).toEqual(
      shares.map(({ price }) => price).sort((a, b) => b - a),
    )
    expect(shares[0]?.kind).toBe('lumber')
  })

  it('counts everything for two hives before it rounds up to boxes', () => {
    const two = shopOf({ ...DEFAULT_DESIGN, shop: { ...DEFAULT_DESIGN.shop, hivesAtOnce: 2 } })
    const { shopping } = two.rough
    expect(shopping.hives).toBe(2)
    expect(shopping.perHive).toBeCloseTo(shopping.total / 2, 2)
    // One 750 g tin of wood glue holds enough for two hives of about 310 g.
    expect(lineOf(shopping, 'wood-glue')?.quantity).toBe(1)
    // Six hinges a hive: 3 pairs, and 6 pairs for two.
    expect(lineOf(shopping, 'hinge-75')?.quantity).toBe(6)
  })

  it('takes the own price of goods, boards and sheets, and then calls no price invented', () => {
    const id = 'wood-glue'
    const dear = shopOf(setGoodsPrice(DEFAULT_DESIGN, id, 20)).rough.shopping
    expect(lineOf(dear, id)).toMatchObject({ priceEach: 20, isDemoPrice: false })
    expect(dear.total).toBeCloseTo(
      rough.shopping.total + 20 - (lineOf(rough.shopping, id)?.priceEach ?? 0),
      6,
    )
    const all = rough.shopping.lines.reduce((d, line) => setPrice(d, line.id, 1), DEFAULT_DESIGN)
    expect(shopOf(all).rough.shopping.usesDemoPrices).toBe(false)
  })

  it('costs nothing for boards on hand, and lists them', () => {
    const lumber = [
      {
        name: 'From the old bed',
        material: 'spruce',
        thicknessMm: 20,
        widthMm: 144,
        lengthMm: 2400,
        price: 9,
        supply: 'counted',
        count: 3,
        onHand: true,
        defects: [],
      },
    ] as const
    const own = shopOf({ ...DEFAULT_DESIGN, stock: { ...DEFAULT_DESIGN.stock, lumber } })
    const line = lineOf(own.planned.shopping, 'stock.lumber.0')
    expect(line).toMatchObject({ onHand: true, price: 0, isDemoPrice: false })
    expect(line?.quantity).toBeGreaterThan(0)
    expect(line?.quantity).toBeLessThanOrEqual(3)
    expect(own.planned.shopping.total).toBeLessThan(planned.shopping.total)
  })
})

describe('computeShopping, any hive', () => {
  it('adds up, covers the need and never has less than nothing left', () => {
    fc.assert(
      fc.property(arbitraryMixedBuilt(), ({ design, hive }) => {
        const { shopping, fasteners } = wholeShop(design, hive)
        expect(sum(shopping.lines.map(({ price }) => price))).toBeCloseTo(shopping.total, 2)
        for (const line of shopping.lines) {
          expect(line.quantity, line.id).toBeGreaterThan(0)
          // To whole cents.
          const off = Math.abs(line.price - line.quantity * line.priceEach)
          expect(off, line.id).toBeLessThanOrEqual(0.005 + 1e-9)
          expect(line.leftOver.startsWith('-'), line.id).toBe(false)
        }
        for (const { fastener, count } of fasteners.totals) {
          const { pack, box } = packQuantities(fastener.kind, fastener.diameterMm)
          const size = ` ${fastener.diameterMm}x${fastener.lengthMm}`
          const bought = shopping.lines.filter(({ id }) => id.endsWith(size))
          const pieces = sum(
            bought.map(({ id, quantity }) => quantity * (id.startsWith('pack') ? pack : box)),
          )
          expect(pieces, size).toBeGreaterThanOrEqual(count * shopping.hives * 1.1 - 1e-6)
        }
        for (const { id, quantity } of fasteners.adhesives) {
          const row = Object.values(ADHESIVES).find((r) => r.id === id)
          const tins = lineOf(shopping, id)?.quantity ?? 0
          expect(tins * (row?.packSize ?? 0), id).toBeGreaterThanOrEqual(quantity * shopping.hives)
        }
        const ids = shopping.lines.map(({ id }) => id)
        expect(new Set(ids).size).toBe(ids.length)
      }),
      { numRuns: runs(12) },
    )
  })
})
