import { describe, expect, it } from 'vitest'
import { deriveHive } from '../../../src/hive/deriveHive.ts'
import { findThickerCore } from '../../../src/reports/checks/thickerCore.ts'
import { reportOn, SAMPLE, withFields } from './sampleHive.ts'

const contextOf = (design = SAMPLE) => {
  const result = deriveHive(design)
  if (result.kind === 'refused') throw new Error(result.refusals[0]?.message)
  return { design, hive: result.hive }
}

describe('findThickerCore', () => {
  // Extruded foam is sold at 20, 30, 40, 50, 60, 80, 100 and 120 mm.
  it('takes the next board on sale that reaches the wanted resistance', () => {
    const before = reportOn(SAMPLE).heat.walls.withRailsM2KPerW
    expect(findThickerCore(contextOf(), 'walls', before + 0.05)).toBe(80)
    const after = withFields(SAMPLE, [{ field: 'walls.coreMm', value: 80 }])
    expect(reportOn(after).heat.walls.withRailsM2KPerW).toBeGreaterThan(before + 0.05)
  })

  it.each(['walls', 'lid', 'floor'] as const)('keeps its word for the %s', (group) => {
    const wanted = 2.2
    const core = findThickerCore(contextOf(), group, wanted)
    const after = withFields(SAMPLE, [{ field: `${group}.coreMm`, value: core ?? 0 }])
    expect(reportOn(after).heat[group].withRailsM2KPerW).toBeGreaterThanOrEqual(wanted)
  })

  it('lays two boards together when one is not enough', () => {
    const core = findThickerCore(contextOf(), 'lid', 4) ?? 0
    expect(core).toBeGreaterThan(120)
    expect(core).toBeLessThanOrEqual(240)
  })

  it('uses inch boards where lumber is sold in feet', () => {
    const us = withFields(SAMPLE, [{ field: 'shop.longestBoardMm', value: 2438.4 }])
    const before = reportOn(us).heat.walls.withRailsM2KPerW
    expect(findThickerCore(contextOf(us), 'walls', before + 0.01)).toBe(63.5)
  })

  it('finds nothing when no board on sale would do', () => {
    expect(findThickerCore(contextOf(), 'walls', 20)).toBeUndefined()
  })
})
