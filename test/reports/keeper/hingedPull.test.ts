import { describe, expect, it } from 'vitest'
import { ORIGIN, vec3 } from '../../../src/geometry/vector.ts'
import type { Hinge } from '../../../src/hive/hive.ts'
import { hingedPullN } from '../../../src/reports/keeper/hingedPull.ts'
import { at, piece } from '../shop/pieces.ts'

const hinge: Hinge = { motion: 'lid', point: ORIGIN, sense: -1, openDeg: 100 }
const lid = { motion: 'lid', group: 'lid' } as const

/** A spruce slab (450 kg/m³) this heavy, from the hinge to `deep` mm across. */
const slab = (massKg: number, deep: number) =>
  piece([at(0, 0, 0, 1000, (massKg / 450 / deep) * 1e6, deep)], lid)

describe('hingedPullN', () => {
  it('is half the weight of an even lid held at its free edge', () => {
    expect(hingedPullN([slab(13.4, 600)], hinge)).toBeCloseTo((13.4 * 9.81) / 2, 6)
  })

  it('gives the published 327 N: 50 kg with its centre at 0.8 m, held at 1.2 m', () => {
    // eurekaknowledge.co.uk, gas spring sizing; here without the spring, at the same edge.
    const handle = piece([at(0, 0, 1199.999, 0.001, 0.001, 0.002)], {
      motion: 'lid',
      group: 'hardware',
      name: 'Lid handle',
    })
    expect(hingedPullN([slab(50, 1600), handle], hinge)).toBeCloseTo(327, 3)
  })

  it('does not mind on which side the hinge is', () => {
    const front = { ...hinge, point: vec3(0, 0, 600) }
    expect(hingedPullN([slab(10, 600)], front)).toBeCloseTo(hingedPullN([slab(10, 600)], hinge), 9)
  })

  it('counts only what moves with the hinge and is nothing without one', () => {
    const wall = piece([at(0, 0, 0, 1000, 100, 600)])
    expect(hingedPullN([slab(10, 600), wall], hinge)).toBeCloseTo(49.05, 6)
    expect(hingedPullN([wall], hinge)).toBe(0)
    expect(hingedPullN([wall], undefined)).toBe(0)
  })
})
