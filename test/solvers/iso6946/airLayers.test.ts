import { describe, expect, it } from 'vitest'
import { computeAirLayerResistance } from '../../../src/solvers/iso6946/airLayers.ts'

const FLOWS = ['up', 'horizontal', 'down'] as const

describe('computeAirLayerResistance', () => {
  it.each(FLOWS)('is 0 without thickness and never falls as the layer grows (%s)', (flow) => {
    let last = computeAirLayerResistance({ thicknessM: 0, flow })
    expect(last).toBe(0)
    for (let mm = 1; mm <= 300; mm++) {
      const next = computeAirLayerResistance({ thicknessM: mm / 1000, flow })
      expect(next).toBeGreaterThanOrEqual(last)
      last = next
    }
  })

  it('resists downward flow most and upward flow least', () => {
    const [up, horizontal, down] = FLOWS.map((flow) =>
      computeAirLayerResistance({ thicknessM: 0.05, flow }),
    )
    expect(up).toBeLessThan(horizontal ?? 0)
    expect(horizontal).toBeLessThan(down ?? 0)
  })
})
