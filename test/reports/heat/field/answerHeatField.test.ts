import { describe, expect, it } from 'vitest'
import { answerHeatField } from '../../../../src/reports/heat/field/answerHeatField.ts'
import { BOX, BOX_HEAT, madeField, panelFaces } from './syntheticField.ts'

const MODEL = {
  sources: [
    { partId: undefined, side: undefined },
    { partId: 'entrance-1/tunnel', side: 'entrance' },
  ],
  leftOut: ['Frames are left out.'],
} as const

const TUNNEL = { at: [500, 45, 200], direction: 4, heatW: 2, block: 1 } as const
const SKIN = {
  at: [500, 150, 260],
  direction: 5,
  areaM2: 2,
  environment: 0,
  least: 0.0625,
} as const
const FIELD = madeField([...panelFaces((i) => i + 1), TUNNEL, SKIN])
const QUESTION = { hive: BOX, heat: BOX_HEAT, model: MODEL, field: FIELD } as const

const answer = answerHeatField({ ...QUESTION, quality: 'full', slopeStepError: 0.001 })

describe('answerHeatField', () => {
  it('gives each panel its heat, and its inner area over it as resistance', () => {
    expect(answer.panels.map(({ conductanceWPerK }) => conductanceWPerK)).toEqual([
      1, 2, 3, 4, 5, 6,
    ])
    expect(answer.panels[0]?.resistanceM2KPerW).toBeCloseTo(0.3, 12)
    expect(answer.panels[4]?.resistanceM2KPerW).toBeCloseTo(0.08, 12)
  })

  it('shares the loss out, entrances apart', () => {
    // 1 + 2 + 3 + 4 for the walls, 5 for the lid, 6 for the floor, 2 for the tunnel: 23.
    expect(answer.shares).toEqual([
      { id: 'lid', conductanceWPerK: 5, share: 5 / 23 },
      { id: 'walls', conductanceWPerK: 10, share: 10 / 23 },
      { id: 'floor', conductanceWPerK: 6, share: 6 / 23 },
      { id: 'entrances', conductanceWPerK: 2, share: 2 / 23 },
    ])
  })

  it('says how warm the outer skin gets', () => {
    expect(answer.warmestOutsideShare).toBe(0.0625)
  })

  it('hands on what the solver says about itself', () => {
    expect(answer).toMatchObject({
      ...{ conductanceWPerK: 23, lowerWPerK: 22.77, upperWPerK: 23.23, hasConverged: true },
      ...{ unknowns: 30, iterations: 7, quality: 'full', slopeStepError: 0.001 },
      leftOut: MODEL.leftOut,
    })
    expect(answer.grid).toBe(FIELD.grid)
  })

  it('refuses a field without a conductance', () => {
    const field = { ...FIELD, conductanceWPerK: undefined }
    const question = { ...QUESTION, field, quality: 'full', slopeStepError: 0 } as const
    expect(() => answerHeatField(question)).toThrow('no conductance')
  })
})
