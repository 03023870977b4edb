import { describe, expect, it } from 'vitest'
import { materialById } from '../../../src/catalog/materials.ts'
import { DEFAULT_DESIGN } from '../../../src/design/defaults.ts'
import { usualSizes } from '../../../src/panels/inputs/usualSizes.ts'

describe('usualSizes', () => {
  it('lists the thicknesses of the material of the layer, in the system of the person', () => {
    const xps = materialById('xps')
    const design = { ...DEFAULT_DESIGN, walls: { ...DEFAULT_DESIGN.walls, insulation: 'xps' } }
    expect(usualSizes(design, 'walls.coreMm', 'mm')).toEqual(xps.thicknessesMm)
    expect(usualSizes(design, 'walls.coreMm', 'in')).toEqual(xps.thicknessesUsMm)
  })

  it('is empty for a number that is no layer, and the same array each time', () => {
    const none = usualSizes(DEFAULT_DESIGN, 'frame.depthMm', 'mm')
    expect(none).toEqual([])
    expect(usualSizes(DEFAULT_DESIGN, 'frame.spacingMm', 'mm')).toBe(none)
  })
})
