import { describe, expect, it } from 'vitest'
import type { PartClass, SheetModel } from '../../../../src/solvers/cutting/sheets/sheetModel.ts'
import { createStripPricer } from '../../../../src/solvers/cutting/sheets/stripPricer.ts'
import {
  type KnapsackInstance,
  readKnapsackInstances,
} from '../../../references/cutting/readInstances.ts'

function modelOf({ sheet, parts }: KnapsackInstance): SheetModel {
  const classes: readonly PartClass[] = parts.map((part, id) => ({
    ...part,
    id,
    area: part.length * part.width,
    mayTurn: false,
    copies: [],
  }))
  const area = sheet.length * sheet.width
  const type = { ...sheet, stock: 0, area, price: 1, count: 1, grids: [] }
  return { classes, types: [type], stages: 2, isExact: true, parts: 1, meanArea: 1 }
}

describe('createStripPricer', () => {
  it.each([
    [true, 'firstAlongLength'],
    [false, 'firstAlongWidth'],
  ] as const)('is worth no less than the optimum with limited copies, %s', (along, optimum) => {
    for (const instance of readKnapsackInstances()) {
      const values = instance.parts.map(({ value }) => value)
      const [best] = createStripPricer(modelOf(instance), along)?.(values) ?? []
      expect(best?.value, instance.name).toBeGreaterThanOrEqual(instance[optimum])
    }
  })

  it('builds a pattern that is worth what it says and fits the sheet', () => {
    for (const instance of readKnapsackInstances()) {
      const values = instance.parts.map(({ value }) => value)
      const [best] = createStripPricer(modelOf(instance), true)?.(values) ?? []
      const built = best?.build()
      const worth = built?.parts.reduce((sum, { id }) => sum + (values[id] ?? 0), 0)
      expect(worth, instance.name).toBe(best?.value)
      // Strips as long as the sheet are stacked across it.
      expect(built?.cell.alongLength).toBe(false)
      expect(built?.cell.root?.reach).toBeLessThanOrEqual(instance.sheet.width)
      expect(built?.cell.root?.thick).toBeLessThanOrEqual(instance.sheet.length)
      expect(built?.cell.root?.height).toBeLessThanOrEqual(2)
    }
  })
})
