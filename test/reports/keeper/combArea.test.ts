import { describe, expect, it } from 'vitest'
import { frameStandardById } from '../../../src/catalog/frameStandards.ts'
import { DEFAULT_DESIGN } from '../../../src/design/defaults.ts'
import { combAreaDm2 } from '../../../src/reports/keeper/combArea.ts'

const single = (id: string) => ({
  ...DEFAULT_DESIGN.frame,
  ...frameStandardById(id).dimensions,
  form: 'single' as const,
})

describe('combAreaDm2', () => {
  // Inside comb: Bertrand p. 256 (Dadant-Blatt 11.25) and p. 292 (Layens 310 x 370); 135 sq in
  // (Langstroth deep 8.71); National 337 x 192 from 14 by 8 1/2 in and its bars.
  it.each([
    ['langstroth-deep', 8.71],
    ['dadant', 11.25],
    ['layens', 11.47],
    ['british-national', 6.47],
  ])('of %s agrees with the handbooks within 2 %%', (id, published) => {
    expect(Math.abs(combAreaDm2(single(id)) / published - 1)).toBeLessThan(0.02)
  })

  it('counts both halves of a split frame, the lower under its thinner middle bar', () => {
    // 429 x (232 - 19 - 9.5) and 429 x (232 - 9.5 - 9.5).
    expect(combAreaDm2(DEFAULT_DESIGN.frame)).toBeCloseTo((429 * (203.5 + 213)) / 1e4, 9)
  })

  it('is never below zero', () => {
    expect(combAreaDm2({ ...single('custom'), depthMm: 20 })).toBe(0)
    expect(combAreaDm2({ ...single('custom'), bodyLengthMm: 10 })).toBe(0)
  })
})
