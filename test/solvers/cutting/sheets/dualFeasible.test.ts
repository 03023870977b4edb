import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { listDualFunctions } from '../../../../src/solvers/cutting/sheets/dualFeasible.ts'

const side = fc.integer({ min: 2, max: 400 })

describe('listDualFunctions', () => {
  it('gives functions that never fall, are superadditive and give the whole side 1 at most', () => {
    fc.assert(
      fc.property(side, fc.array(fc.nat(), { minLength: 1, maxLength: 6 }), (whole, draws) => {
        const lengths = draws.map((draw) => 1 + (draw % whole))
        for (const { name, valueAt } of listDualFunctions(whole, lengths)) {
          const faults = [valueAt(whole) > 1 + 1e-12]
          for (let a = 1; a < whole; a++) {
            faults.push(valueAt(a) > valueAt(a + 1) + 1e-12)
            const b = 1 + ((a * 7919) % (whole - a))
            faults.push(valueAt(a) + valueAt(b) > valueAt(a + b) + 1e-12)
          }
          expect(faults.includes(true), name).toBe(false)
        }
      }),
      { numRuns: 25 },
    )
  })

  it('holds the textbook values: thirds count as halves of u^(2), halves as 1/2', () => {
    // u^(k) with k = 2 on a side of 9: 3·4/9 rounds down to 1, so 1/2; 3·3/9 is whole, so 3/9.
    const shares = listDualFunctions(9, [4]).find(({ name }) => name === 'shares of 1/3')
    expect(shares?.valueAt(4)).toBe(1 / 2)
    expect(shares?.valueAt(3)).toBe(3 / 9)
    expect(shares?.valueAt(2)).toBe(0)
  })
})
