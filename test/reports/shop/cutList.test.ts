import { describe, expect, it } from 'vitest'
import { cutList } from '../../../src/reports/shop/cutList.ts'
import { partMassKg } from '../../../src/reports/shop/partMass.ts'
import { at, piece } from './pieces.ts'

/** A rail with a step at one end and a cheek on one side: it has a left and a right hand. */
const handed = (z: number, mirrored: boolean) => {
  const boxes = [at(0, 0, 0, 100, 40, 20), at(0, 40, 0, 30, 10, 20), at(0, 40, 20, 10, 10, 5)]
  return boxes.map((b) => ({
    ...b,
    z0: mirrored ? z - b.z1 : z + b.z0,
    z1: mirrored ? z - b.z0 : z + b.z1,
  }))
}

describe('cutList', () => {
  it('merges equal boards however they stand and keeps every part', () => {
    const rows = cutList([
      piece([at(0, 0, 0, 400, 20, 60)], { id: 'a' }),
      piece([at(10, 0, 0, 20, 400, 60)], { id: 'b' }),
      piece([at(0, 0, 0, 60, 20, 400)], { id: 'c' }),
      piece([at(0, 0, 0, 401, 20, 60)], { id: 'd' }),
    ])
    expect(rows.map((row) => [row.label, row.lengthMm, row.count])).toEqual([
      ['A', 401, 1],
      ['B', 400, 3],
    ])
    expect(rows[1]?.partIds).toEqual(['a', 'b', 'c'])
    expect(rows.every((row) => row.hand === 'none')).toBe(true)
  })

  it('takes sizes as equal to a hundredth of a millimetre and no further', () => {
    const rows = cutList([
      piece([at(0, 0, 0, 400, 20, 60)]),
      piece([at(0, 0, 0, 400.004, 20, 60)]),
      piece([at(0, 0, 0, 400.02, 20, 60)]),
    ])
    expect(rows.map((row) => row.count)).toEqual([1, 2])
  })

  it('keeps apart what differs in material, grain, operations or being bought', () => {
    const board = at(0, 0, 0, 400, 20, 60)
    const size = { length: 400, width: 60, thickness: 20 }
    const rows = cutList([
      piece([board]),
      piece([board], { material: 'pine' }),
      piece([board], { grain: 'z', size }),
      piece([board], { operations: [{ kind: 'holes', diameter: 8, count: 2 }] }),
      piece([board], { bought: true }),
    ])
    expect(rows).toHaveLength(5)
    expect(rows.map((row) => row.grain).filter((grain) => grain === 'width')).toHaveLength(1)
    expect(rows.at(-1)?.bought).toBe(true)
  })

  it('keeps a mirrored pair with differing notches apart and names the hands', () => {
    const rows = cutList([
      piece(handed(300, true), { id: 'front', group: 'front-wall' }),
      piece(handed(-300, false), { id: 'back', group: 'back-wall' }),
    ])
    // The back one stands at the left hand of who looks along the row from its left end.
    expect(rows.map((row) => [row.partIds[0], row.hand])).toEqual([
      ['front', 'right'],
      ['back', 'left'],
    ])
  })

  it('gives a handed part no hand while its twin is not in the hive', () => {
    const rows = cutList([piece(handed(0, false)), piece(handed(500, false))])
    expect(rows.map((row) => [row.count, row.hand])).toEqual([[2, 'none']])
  })

  it('merges a part with its half-turned twin', () => {
    const turned = handed(0, false).map((b) => ({
      ...b,
      x0: -b.x1,
      x1: -b.x0,
      z0: -b.z1,
      z1: -b.z0,
    }))
    expect(cutList([piece(handed(0, false)), piece(turned)])).toHaveLength(1)
  })

  it('orders rows by building, frames late and bought things last, then by size', () => {
    const board = (length: number) => [at(0, 0, 0, length, 20, 60)]
    const rows = cutList([
      piece(board(100), {
        name: 'Hinge',
        group: 'hardware',
        material: 'stainless-steel',
        bought: true,
      }),
      piece(board(110), { name: 'Top bar', group: 'frames', motion: 'frame' }),
      piece(board(120), { name: 'Leg', group: 'stand' }),
      piece(board(130), { name: 'Rail', group: 'front-wall' }),
      piece(board(140), { name: 'Long rail', group: 'front-wall' }),
      piece(board(150), { name: 'Pine rail', group: 'front-wall', material: 'pine' }),
    ])
    // "Scots pine" comes before "Spruce".
    expect(rows.map((row) => `${row.label} ${row.name}`)).toEqual([
      'A Pine rail',
      'B Long rail',
      'C Rail',
      'D Leg',
      'E Top bar',
      'F Hinge',
    ])
  })

  it('has masses and counts that sum to those of the parts', () => {
    const parts = Array.from({ length: 60 }, (_, i) =>
      piece([at(i, 0, 0, 300 + (i % 7) / 1000, 20 + (i % 3), 60)], {
        material: i % 2 ? 'pine' : 'spruce',
      }),
    )
    const rows = cutList(parts)
    const mass = rows.reduce((sum, row) => sum + row.count * row.massKgEach, 0)
    expect(mass).toBeCloseTo(
      parts.reduce((sum, part) => sum + partMassKg(part), 0),
      9,
    )
    expect(rows.reduce((sum, row) => sum + row.count, 0)).toBe(60)
  })

  it('looks at each part a fixed number of times, however many there are', () => {
    let looks = 0
    const sideBars = (count: number) =>
      Array.from({ length: count }, (_, i) => {
        const bar = piece([at(i * 35, 0, 0, 28, 150, 10), at(i * 35 - 3.5, 150, 0, 35, 80, 10)], {
          id: `${i}`,
          grain: 'y',
        })
        const { solids } = bar
        Object.defineProperty(bar, 'solids', {
          get: () => {
            looks += 1
            return solids
          },
        })
        return bar
      })
    const looksAt = (count: number): number => {
      const parts = sideBars(count)
      looks = 0
      expect(cutList(parts)).toHaveLength(1)
      return looks
    }
    // Linear: ten times the parts take at most ten times the looks.
    expect(looksAt(1000)).toBeLessThanOrEqual(10 * looksAt(100))
  })
})
