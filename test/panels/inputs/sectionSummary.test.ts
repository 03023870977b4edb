import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../../src/design/defaults.ts'
import { sectionSummary } from '../../../src/panels/inputs/sectionSummary.ts'
import { INCH, METRIC } from '../../../src/units/preferences.ts'

const design = {
  ...DEFAULT_DESIGN,
  walls: { ...DEFAULT_DESIGN.walls, railMaterial: 'spruce', railWidthMm: 38.1 },
}

describe('sectionSummary', () => {
  it('names materials, choices, numbers and flags in one line', () => {
    const fields = ['walls.railMaterial', 'walls.railWidthMm', 'lid.stay', 'floor.tray']
    expect(sectionSummary(design, fields, METRIC)).toBe('Spruce, 38.1 mm, Two chains, no')
  })

  it('shows numbers in the units of the person', () => {
    expect(sectionSummary(design, ['walls.railWidthMm'], INCH)).toBe('1 1/2 in')
  })
})
