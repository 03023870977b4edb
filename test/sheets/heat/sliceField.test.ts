import { describe, expect, it } from 'vitest'
import { sliceField } from '../../../src/sheets/heat/sliceField.ts'
import { sampleField } from '../../../src/solvers/conduction/fieldGrid.ts'
import { fieldOf } from './syntheticField.ts'

const GRID = fieldOf(
  { x: [0, 0.1, 0.4], y: [0, 0.2], z: [-0.1, 0, 0.3, 0.4] },
  (x, y, z) => x + 10 * y + 100 * z,
)

describe('sliceField', () => {
  it('cuts along the hive with x to the right and y up, in millimetres', () => {
    const slice = sliceField(GRID, { axis: 'z', at: 150 })
    expect([...slice.uMm]).toEqual([0, 100, 400])
    expect([...slice.vMm]).toEqual([0, 200])
    // 100 z is 15 halfway between z = 0 and z = 0.3.
    const expected = [15, 15.1, 15.4, 17, 17.1, 17.4]
    slice.value.forEach((v, i) => {
      expect(v).toBeCloseTo(expected[i] ?? 0, 5)
    })
  })

  it('cuts across with the front at the left, as the section is drawn', () => {
    const slice = sliceField(GRID, { axis: 'x', at: 100 })
    expect([...slice.uMm]).toEqual([-400, -300, -0, 100])
    const expected = [40.1, 30.1, 0.1, -9.9]
    for (const [i, v] of expected.entries()) expect(slice.value[i]).toBeCloseTo(v, 5)
  })

  it('agrees with the field at every crossing, on planes and between them', () => {
    for (const at of [0, 37, 100, 399, 400]) {
      const { uMm, vMm, value } = sliceField(GRID, { axis: 'x', at })
      vMm.forEach((v, j) => {
        uMm.forEach((u, i) => {
          const sampled = sampleField(GRID, at / 1000, v / 1000, -u / 1000)
          expect(value[j * uMm.length + i]).toBeCloseTo(sampled, 9)
        })
      })
    }
  })

  it('takes the nearest side of the grid beyond it', () => {
    const far = sliceField(GRID, { axis: 'z', at: 1e6 })
    const last = sliceField(GRID, { axis: 'z', at: 400 })
    expect(far.value).toEqual(last.value)
    expect(sliceField(GRID, { axis: 'z', at: -1e6 }).value).toEqual(
      sliceField(GRID, { axis: 'z', at: -100 }).value,
    )
  })
})
