import { describe, expect, it } from 'vitest'
import type { Opening } from '../../../src/hive/hive.ts'
import { checkVentMesh } from '../../../src/reports/checks/ventMesh.ts'
import { at, piece } from '../shop/pieces.ts'

const vent = (x: number): Opening => ({
  kind: 'vent',
  index: 0,
  wall: 'front',
  tunnel: at(x, 300, 200, 60, 8, 90),
  holes: 1,
  area: 480,
  colony: 1,
})
const meshOver = (x: number) =>
  piece([at(x - 10, 290, 290, 80, 28, 1)], {
    group: 'openings',
    material: 'steel-mesh',
    bought: true,
  })
const check = (openings: readonly Opening[], meshes: readonly ReturnType<typeof meshOver>[]) =>
  checkVentMesh({ hive: { openings, parts: meshes } })[0]

describe('checkVentMesh', () => {
  it('wants mesh on the mouth of every vent', () => {
    expect(check([vent(100), vent(500)], [meshOver(100), meshOver(500)])?.verdict).toBe('ok')
    expect(check([vent(100), vent(500)], [meshOver(100)])).toMatchObject({
      measured: 1,
      verdict: 'fix',
    })
    expect(check([vent(100)], [])?.verdict).toBe('fix')
  })

  it('has nothing to say without vents', () => {
    expect(checkVentMesh({ hive: { openings: [], parts: [] } })).toEqual([])
  })
})
