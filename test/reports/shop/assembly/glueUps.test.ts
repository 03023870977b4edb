import { describe, expect, it } from 'vitest'
import { measureDiagonal } from '../../../../src/reports/shop/assembly/glueUps.ts'

describe('measureDiagonal', () => {
  it('is the root of the sum of the squares', () => {
    const { lengthMm } = measureDiagonal({ name: 'a door', sidesMm: [2000, 1500] })
    expect(lengthMm).toBe(2500)
  })

  it('allows what a lean of one thousandth does to the diagonals', () => {
    // Sheared by hand: the upper side of 2000 x 1500 slides by 1.5 mm.
    const [wide, high, lean] = [2000, 1500, 1.5]
    const difference = Math.hypot(wide + lean, high) - Math.hypot(wide - lean, high)
    const { limitMm } = measureDiagonal({ name: 'a door', sidesMm: [wide, high] })
    expect(limitMm).toBeCloseTo(2.4, 10)
    expect(limitMm).toBeCloseTo(difference, 5)
  })

  it('never asks for less than a tape can show', () => {
    expect(measureDiagonal({ name: 'a frame', sidesMm: [448, 213] }).limitMm).toBe(1)
  })
})
