import { describe, expect, it } from 'vitest'
import { expectCase, readConductionCase, solveCase } from './conductionCase.ts'

describe('a hive wall with rails', () => {
  const given = readConductionCase('hive-wall-rails.json')
  const solved = solveCase(given)

  it('has U 0.8699 W/m²K, and 0.8312 at the lining over a rail', () => expectCase(given, solved))

  it('has bounds round it, inside those of ISO 6946', () => {
    // Half a bay is 0.1 m wide. Layers alone say 0.8478 to 0.9220 (see iso6946.test.ts).
    const [lower, upper] = [solved.lowerWPerK / 0.1, solved.upperWPerK / 0.1]
    expect(lower).toBeLessThan(0.86995)
    expect(upper).toBeGreaterThan(0.86985)
    expect(lower).toBeGreaterThan(0.8478)
    expect(upper).toBeLessThan(0.922)
  })
})

describe('a corner of solid boards', () => {
  const given = readConductionCase('board-corner.json')
  const solved = solveCase(given)

  it('conducts 2.7852 W/mK', () => expectCase(given, solved))

  it('adds 0.0251 W/mK by inner lengths and takes 0.1129 by outer lengths', () => {
    // ψ = L2D - Σ U·l, ISO 10211 and ISO 14683; U = 1/(0.13 + 0.025/0.13 + 0.04) by hand.
    const transmittance = 1 / (0.13 + 0.025 / 0.13 + 0.04)
    expect(transmittance).toBeCloseTo(2.7601, 4)
    const whole = solved.heatFrom('inside')
    expect(Math.abs(whole - transmittance * 2 * 0.5 - 0.0251)).toBeLessThan(0.00025)
    expect(Math.abs(whole - transmittance * 2 * 0.525 + 0.1129)).toBeLessThan(0.0005)
  })
})
