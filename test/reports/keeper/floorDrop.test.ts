import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../../src/design/defaults.ts'
import type { Box } from '../../../src/geometry/box.ts'
import { ORIGIN } from '../../../src/geometry/vector.ts'
import type { Hinge } from '../../../src/hive/hive.ts'
import { measureHive } from '../../../src/hive/measure.ts'
import { layRow } from '../../../src/hive/row.ts'
import { floorDropLimitDeg } from '../../../src/reports/keeper/floorDrop.ts'
import { at, piece } from '../shop/pieces.ts'

const measured = measureHive(DEFAULT_DESIGN, layRow(DEFAULT_DESIGN))
const atBack: Hinge = { motion: 'floor', point: ORIGIN, sense: 1, openDeg: 30 }

/** A floor 600 across, hung at z = 0 and reaching to the front, over ground this far below. */
const hiveOver = (depth: number, thickness: number, stand: readonly Box[] = []) => ({
  dimensions: { ...measured, groundHeight: -depth },
  hinges: [atBack],
  parts: [
    piece([at(0, -thickness, 0, 1000, thickness, 600)], { motion: 'floor', group: 'floor' }),
    ...stand.map((box) => piece([box], { group: 'stand' })),
  ],
})

describe('floorDropLimitDeg', () => {
  it('is 30 degrees for a thin floor over ground at half its width', () => {
    expect(floorDropLimitDeg(hiveOver(300, 1e-6))).toBeCloseTo(30, 5)
  })

  it('brings the lower edge of a thick floor exactly to the ground', () => {
    const t = (floorDropLimitDeg(hiveOver(300, 50)) * Math.PI) / 180
    // The lower front corner is 600 across and 50 down from the hinge.
    expect(600 * Math.sin(t) + 50 * Math.cos(t)).toBeCloseTo(300, 9)
    expect(t).toBeLessThan(Math.PI / 6)
  })

  it('is the same for a floor hung at the front', () => {
    const back = hiveOver(300, 50)
    const front = {
      ...back,
      hinges: [{ ...atBack, sense: -1 as const }],
      parts: [piece([at(0, -50, -600, 1000, 50, 600)], { motion: 'floor', group: 'floor' })],
    }
    expect(floorDropLimitDeg(front)).toBeCloseTo(floorDropLimitDeg(back), 9)
  })

  it('swings right round when the ground is out of reach', () => {
    expect(floorDropLimitDeg(hiveOver(700, 50))).toBe(180)
  })

  it('stops at a brace in the way, within half a degree', () => {
    // The underside meets the brace's upper front edge, 100 across and 100 down: at 45 degrees.
    const limit = floorDropLimitDeg(hiveOver(700, 1e-6, [at(200, -160, 62, 600, 60, 38)]))
    expect(limit).toBeGreaterThanOrEqual(44.5)
    expect(limit).toBeLessThanOrEqual(45)
  })

  it('passes a part of the stand that is beside it or beyond its reach', () => {
    const beside = at(-100, -160, 62, 100, 60, 38)
    const beyond = at(0, -660, 200, 1000, 20, 38)
    expect(floorDropLimitDeg(hiveOver(700, 50, [beside, beyond]))).toBe(180)
  })

  it('is nothing without a hinge', () => {
    expect(floorDropLimitDeg({ ...hiveOver(300, 50), hinges: [] })).toBe(0)
  })
})
