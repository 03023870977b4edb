import { describe, expect, it } from 'vitest'
import {
  derivePanelLayers,
  deriveSolverLayer,
  measureTimberFraction,
} from '../../../src/reports/heat/panelLayers.ts'
import { EXAMPLE_FLOOR, EXAMPLE_LID, EXAMPLE_ROOF, EXAMPLE_WALL } from './examplePanels.ts'

const cover = { material: 'aluminium-sheet', thickness: 0.8 }

describe('derivePanelLayers', () => {
  it('lists a wall from inside to outside', () => {
    const layers = derivePanelLayers({ panel: EXAMPLE_WALL })
    expect(layers.map(({ name }) => name)).toEqual([
      'Lining: Scots pine',
      'Insulation: White bead foam (EPS)',
      'Cladding: Scots pine',
    ])
    expect(layers[1]?.filling.resistanceM2KPerW).toBeCloseTo(0.04 / 0.036, 12)
    expect(layers[1]?.timber?.fraction).toBe(0.2)
    expect(layers[1]?.timber?.resistanceM2KPerW).toBeCloseTo(0.04 / 0.13, 12)
  })

  it('lists what is above a sloped lid, cover sheet last', () => {
    const layers = derivePanelLayers({ panel: EXAMPLE_LID, roof: EXAMPLE_ROOF, cover })
    expect(layers.map(({ name, thicknessMm }) => [name, thicknessMm])).toEqual([
      ['Lining: Scots pine', 12],
      ['Insulation: White bead foam (EPS)', 40],
      ['Top skin: Scots pine', 12],
      ['Air space under the deck, mean height', 40],
      ['Deck: Softwood plywood', 9],
      ['Cover sheet: Aluminium sheet', 0.8],
    ])
    // Upward flow through 40 mm of closed air: 0.16 in the table of ISO 6946 (from memory).
    expect(layers[3]?.filling.resistanceM2KPerW).toBeCloseTo(0.16, 2)
    expect(layers[5]?.filling.resistanceM2KPerW).toBeCloseTo(0.0008 / 160, 12)
  })

  it('puts the cover sheet of a flat lid straight on its top skin', () => {
    const layers = derivePanelLayers({ panel: EXAMPLE_LID, cover })
    expect(layers.map(({ name }) => name).slice(2)).toEqual([
      'Top skin: Scots pine',
      'Cover sheet: Aluminium sheet',
    ])
  })

  it('starts tapered insulation from its low edge', () => {
    const roof = { ...EXAMPLE_ROOF, filling: 'tapered' } as const
    const layer = derivePanelLayers({ panel: EXAMPLE_LID, roof })[3]
    expect(layer?.filling.resistanceM2KPerW).toBeCloseTo(0.02 / 0.036, 12)
    expect(layer?.filling.taperM2KPerW).toBeCloseTo(0.04 / 0.036, 12)
    expect(layer?.timber?.taperM2KPerW).toBeCloseTo(0.04 / 0.13, 12)
  })

  it('calls the outer layer of a floor cladding', () => {
    expect(derivePanelLayers({ panel: EXAMPLE_FLOOR })[2]?.name).toBe('Cladding: Scots pine')
  })
})

describe('deriveSolverLayer', () => {
  it('lays all timber over the rails', () => {
    const layers = derivePanelLayers({ panel: EXAMPLE_LID, roof: EXAMPLE_ROOF, cover })
    const patterns = layers.map((layer) => deriveSolverLayer(layer).pattern)
    expect(patterns).toEqual([undefined, 'timber', undefined, 'timber', undefined, undefined])
  })
})

describe('measureTimberFraction', () => {
  it('is the timber over the whole core', () => {
    expect(measureTimberFraction(EXAMPLE_WALL)).toBe(0.2)
  })
})
