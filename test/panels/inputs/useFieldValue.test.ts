import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../../src/design/defaults.ts'
import { fieldValue } from '../../../src/panels/inputs/useFieldValue.ts'

describe('fieldValue', () => {
  it('follows a path through groups and lists', () => {
    expect(fieldValue(DEFAULT_DESIGN, 'walls.coreMm')).toBe(DEFAULT_DESIGN.walls.coreMm)
    expect(fieldValue(DEFAULT_DESIGN, 'openings.entrances.0.wall')).toBe(
      DEFAULT_DESIGN.openings.entrances[0]?.wall,
    )
  })

  it('is undefined where there is nothing, or no single value', () => {
    expect(fieldValue(DEFAULT_DESIGN, 'openings.vents.0.widthMm')).toBeUndefined()
    expect(fieldValue(DEFAULT_DESIGN, 'walls')).toBeUndefined()
    expect(fieldValue(DEFAULT_DESIGN, 'walls.coreMm.more')).toBeUndefined()
  })
})
