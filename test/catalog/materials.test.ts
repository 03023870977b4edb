import { describe, expect, it } from 'vitest'
import { COVERINGS } from '../../src/catalog/coverings.ts'
import { INSULATIONS } from '../../src/catalog/insulations.ts'
import type { Material } from '../../src/catalog/material.ts'
import { hasMaterial, MATERIALS, materialById } from '../../src/catalog/materials.ts'
import { SHEETS } from '../../src/catalog/sheets.ts'
import { WOODS } from '../../src/catalog/woods.ts'

describe('MATERIALS', () => {
  it('gives every row an id of its own, in lower case with hyphens', () => {
    const ids = MATERIALS.map((row) => row.id)
    expect(new Set(ids).size).toBe(ids.length)
    for (const id of ids) expect(id).toMatch(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/)
  })

  it('gives every row a name of its own', () => {
    expect(new Set(MATERIALS.map((row) => row.name)).size).toBe(MATERIALS.length)
  })

  it.each(MATERIALS)(
    '$id has positive, finite numbers and a vapour factor of at least 1',
    (row) => {
      const numbers = [
        row.conductivityWPerMK,
        row.densityKgPerM3,
        row.specificHeatJPerKgK,
        ...row.thicknessesMm,
        ...row.thicknessesUsMm,
      ]
      for (const value of numbers) {
        expect(Number.isFinite(value)).toBe(true)
        expect(value).toBeGreaterThan(0)
      }
      // Nothing lets vapour through better than still air.
      expect(row.vapourResistanceFactor).toBeGreaterThanOrEqual(1)
      expect(row.vapourResistanceFactor).toBeLessThanOrEqual(1e6)
    },
  )

  it.each(MATERIALS)('$id lists thicknesses in both systems, thinnest first', (row) => {
    for (const list of [row.thicknessesMm, row.thicknessesUsMm]) {
      expect(list.length).toBeGreaterThan(0)
      expect(list).toEqual([...new Set(list)].sort((a, b) => a - b))
    }
  })

  it.each(MATERIALS)('$id says where each value comes from, and one sentence about bees', (row) => {
    for (const citation of Object.values(row.source)) expect(citation.length).toBeGreaterThan(10)
    expect(row.beeNote).toMatch(/^[A-Z][^.]*(\d\.\d[^.]*)*\.$/)
  })

  // Timber and foam are made to 1/64 in; sheet goods are sold by the decimal inch.
  it.each(MATERIALS)('$id has US thicknesses that are exact in inches', (row) => {
    for (const thickness of row.thicknessesUsMm) {
      const inches = thickness / 25.4
      const exact = (parts: number): boolean =>
        Math.abs(inches * parts - Math.round(inches * parts)) < 1e-9
      expect(exact(64) || (row.form === 'sheet' && exact(10000)), `${thickness} mm`).toBe(true)
    }
  })

  it('keeps foam, wool and loose fill away from bees', () => {
    for (const row of INSULATIONS) expect(row.insideHive, row.id).not.toBe('bare')
  })

  it('lets bees touch every solid wood', () => {
    for (const row of WOODS) expect(row.insideHive, row.id).toBe('bare')
  })

  it('counts metal sheet and foil as vapour-tight', () => {
    const tight = ['aluminium-sheet', 'galvanised-steel', 'stainless-steel', 'pir-foil']
    for (const id of tight) expect(materialById(id).vapourResistanceFactor).toBe(1e6)
  })

  it('offers at least twelve insulations, ten woods and sheets, and four coverings', () => {
    expect(INSULATIONS.length).toBeGreaterThanOrEqual(12)
    expect(WOODS.length + SHEETS.length).toBeGreaterThanOrEqual(10)
    expect(COVERINGS.length).toBeGreaterThanOrEqual(4)
  })

  it('keeps every id that saved designs may name', () => {
    const promised =
      'eps eps-graphite xps pur pir-foil mineral-wool wood-fibre cork sheep-wool wood-shavings ' +
      'straw cellulose spruce pine western-red-cedar white-pine douglas-fir larch oak ' +
      'plywood-softwood plywood-birch osb fibreboard hardboard aluminium-sheet ' +
      'galvanised-steel bitumen-felt roofing-membrane stainless-steel cotton-canvas ' +
      'beeswax-foundation steel-mesh'
    for (const id of promised.split(' ')) expect(hasMaterial(id), id).toBe(true)
  })
})

describe('materialById', () => {
  it('finds each row by its id', () => {
    const found: readonly Material[] = MATERIALS.map((row) => materialById(row.id))
    expect(found).toEqual(MATERIALS)
  })

  it('throws an error that names the unknown id', () => {
    expect(() => materialById('asbestos')).toThrow('"asbestos"')
  })
})

describe('hasMaterial', () => {
  it('is false for unknown ids and for names that every object has', () => {
    expect(hasMaterial('spruce')).toBe(true)
    expect(hasMaterial('Spruce')).toBe(false)
    expect(hasMaterial('')).toBe(false)
    expect(hasMaterial('constructor')).toBe(false)
  })
})
