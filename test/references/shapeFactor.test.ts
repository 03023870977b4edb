import { describe, expect, it } from 'vitest'
import { readConductionCase, solveCase } from './conductionCase.ts'

const given = readConductionCase('cube-corner.json')

describe('an eighth of a thick-walled cube', () => {
  const solved = solveCase(given)

  it('has bounds round its shape, 8.348 m, less than 0.2 % apart', () => {
    expect(solved.lowerWPerK).toBeLessThan(8.348)
    expect(solved.upperWPerK).toBeGreaterThan(8.348)
    expect(solved.upperWPerK - solved.lowerWPerK).toBeLessThan(0.002 * 8.348)
  })

  it('is what the textbook says with its rounded shape factors, to half a per cent', () => {
    // Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, table 4.1, from memory: walls
    // A/L, 0.54 of the length of an edge, 0.15 of the thickness at a corner. An eighth of a cube has
    // three walls of 0.5 m by 0.5 m, 0.1 m thick, three edges of 0.5 m and one corner.
    const [thick, wide] = [0.1, 0.5]
    const textbook = (3 * wide ** 2) / thick + 3 * 0.54 * wide + 0.15 * thick
    expect(textbook).toBeCloseTo(8.325, 10)
    const shape = solved.answer.conductanceWPerK ?? Number.NaN
    expect(Math.abs(shape / textbook - 1)).toBeLessThan(0.005)
  })

  it('is symmetric in all three directions: each wall passes a third', () => {
    const { faces } = solved.answer
    const inner = [0, 0, 0]
    for (let f = 0; f < faces.count; f++) {
      // The hollow lies on the low side of each wall.
      if (faces.environment[f] !== 1) continue
      expect((faces.direction[f] ?? 1) % 2).toBe(0)
      const axis = (faces.direction[f] ?? 0) >> 1
      inner[axis] = (inner[axis] ?? 0) + (faces.heatW[f] ?? 0)
    }
    const third = (solved.answer.conductanceWPerK ?? Number.NaN) / 3
    for (const heat of inner) expect(heat / third).toBeCloseTo(1, 2)
    for (const heat of inner) expect(heat / (inner[0] ?? 1)).toBeCloseTo(1, 5)
  })
})
