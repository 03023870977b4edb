import { describe, expect, it } from 'vitest'
import type { HeatSide } from '../../../../src/reports/heat/field/hiveHeatModel.ts'
import { OUTSIDE } from '../../../../src/reports/heat/field/hiveHeatModel.ts'
import { listInsideFaces } from '../../../../src/reports/heat/field/insideFaces.ts'
import { BOX, type MadeFace, madeField, SLOT } from './syntheticField.ts'

const list = (side: HeatSide | undefined, ...made: readonly MadeFace[]) =>
  listInsideFaces(BOX, { sources: [{ partId: undefined, side }] }, madeField(made))

describe('listInsideFaces', () => {
  it('leaves out what the air outside touches', () => {
    const made = [
      { at: [500, 150, 200], direction: 4 },
      { at: [500, 150, 260], direction: 5, environment: OUTSIDE },
    ] as const
    expect(list('front-wall', ...made)).toHaveLength(1)
  })

  it('counts the flat of a wall to its area, and a ledge to the wall but not to its area', () => {
    const [flat, ledge, rebate] = list(
      'front-wall',
      { at: [500, 150, 200], direction: 4 },
      { at: [500, 280, 208], direction: 3 },
      { at: [500, 290, 216], direction: 4 },
    )
    expect(flat).toMatchObject({ side: 'front-wall', isOfPanelArea: true })
    expect(ledge).toMatchObject({ side: 'front-wall', isOfPanelArea: false })
    // The rebate's back stands for the wall behind the ledge.
    expect(rebate).toMatchObject({ side: 'front-wall', isOfPanelArea: true })
  })

  it('does not count to the area of the lid what lies over a rebate', () => {
    const [over, beside] = list(
      'lid',
      { at: [500, 300, 190], direction: 2 },
      { at: [500, 300, 210], direction: 2 },
    )
    expect(over).toMatchObject({ side: 'lid', isOfPanelArea: true })
    expect(beside).toMatchObject({ side: 'lid', isOfPanelArea: false })
  })

  it('gives a face in the plane of an end wall to that wall, whatever part shows it', () => {
    const [end] = list('front-wall', { at: [0, 290, 150], direction: 1 })
    expect(end).toMatchObject({ side: 'left-wall', isOfPanelArea: true })
    // The same place, but looking along the end wall.
    const [across] = list('front-wall', { at: [0, 290, 150], direction: 4 })
    expect(across?.side).toBe('front-wall')
  })

  it('gives a loose part to the nearest panel, and a tunnel to the entrances', () => {
    const [low, high] = list(
      undefined,
      { at: [500, 20, 0], direction: 0 },
      { at: [500, 280, 0], direction: 0 },
    )
    expect(low).toMatchObject({ side: 'floor', isOfPanelArea: false })
    expect(high).toMatchObject({ side: 'lid', isOfPanelArea: false })
    expect(list('entrance', { at: [500, 45, 200], direction: 4 })[0]?.side).toBe('entrance')
  })

  it('measures how far the nearest opening is', () => {
    const field = madeField([{ at: [580, 90, 200], direction: 4 }])
    const sources = [{ partId: undefined, side: 'front-wall' }] as const
    const [face] = listInsideFaces({ ...BOX, openings: [SLOT] }, { sources }, field)
    // 30 to the side and 40 above the slot: a triangle of 30, 40 and 50.
    expect(face?.fromOpeningMm).toBeCloseTo(50, 3)
    expect(list('lid', { at: [0, 300, 0], direction: 2 })[0]?.fromOpeningMm).toBe(
      Number.POSITIVE_INFINITY,
    )
  })

  it('scales the heat to the conductance of the whole', () => {
    const made = [
      { at: [500, 150, 200], direction: 4, heatW: 3 },
      { at: [500, 0, 0], direction: 3, heatW: 1 },
    ] as const
    const sources = [{ partId: undefined, side: undefined }] as const
    const faces = listInsideFaces(BOX, { sources }, madeField(made, { conductanceWPerK: 4.04 }))
    expect(faces[0]?.heatWPerK).toBeCloseTo(3.03, 12)
    expect(faces[1]?.heatWPerK).toBeCloseTo(1.01, 12)
  })

  it('refuses a field without heat', () => {
    expect(() => list('lid', { at: [0, 0, 0], direction: 0, heatW: 0 })).toThrow('no heat')
  })
})
