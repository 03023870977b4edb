import { describe, expect, it } from 'vitest'
import { checkColdSpots } from '../../../src/reports/checks/coldSpots.ts'
import { computeHeat } from '../../../src/reports/heat/computeHeat.ts'
import { EXAMPLE_DESIGN, EXAMPLE_HIVE } from '../heat/examplePanels.ts'
import { MADE_ANSWER } from '../heat/field/syntheticField.ts'
import { findCheck } from './sampleHive.ts'

const HIVE = { parts: [] }

const check = (id: string, field: typeof MADE_ANSWER) =>
  findCheck(
    checkColdSpots({ hive: HIVE, heat: computeHeat(EXAMPLE_DESIGN, EXAMPLE_HIVE, field) }),
    id,
  )

describe('checkColdSpots', () => {
  it('says nothing before there is a field', () => {
    const heat = computeHeat(EXAMPLE_DESIGN, EXAMPLE_HIVE)
    expect(checkColdSpots({ hive: HIVE, heat })).toEqual([])
  })

  it.each([
    [0.71, 'ok'],
    [0.7, 'ok'],
    [0.69, 'look'],
  ])(
    'judges a ceiling with a spot of %s, over walls with one of 0.7, %s',
    (coldestFRsi, verdict) => {
      const panels = MADE_ANSWER.panels.map((panel) =>
        panel.id === 'lid' ? { ...panel, coldestFRsi } : { ...panel, coldestFRsi: 0.7 },
      )
      const found = check('ceiling-stays-warmer', { ...MADE_ANSWER, panels })
      expect(found).toMatchObject({ verdict, limits: { low: 1 } })
      expect(found.measured).toBeCloseTo(coldestFRsi / 0.7, 12)
      expect(found.why).toContain('on the floor')
    },
  )

  it.each([
    [0.5, 'ok'],
    [0.49, 'look'],
  ])('judges a lid that keeps %s of its R-value %s', (kept, verdict) => {
    const lid = computeHeat(EXAMPLE_DESIGN, EXAMPLE_HIVE).lid
    const panels = MADE_ANSWER.panels.map((panel) =>
      panel.id === 'lid' ? { ...panel, resistanceM2KPerW: kept * lid.withRailsM2KPerW } : panel,
    )
    const found = check('resistance-left-by-edges', { ...MADE_ANSWER, panels })
    expect(found.verdict).toBe(verdict)
    expect(found.measured).toBeCloseTo(kept, 12)
    expect(found.why).toContain('the lid')
  })
})
