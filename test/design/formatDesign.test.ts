import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import { formatDesign } from '../../src/design/formatDesign.ts'
import { arbitraryDesign } from './arbitraryDesign.ts'

/** The same JSON with the keys of every object turned round. */
const turned = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(turned)
  if (typeof value !== 'object' || value === null) return value
  const entries = Object.entries(value).map(([key, held]) => [key, turned(held)])
  return Object.fromEntries(entries.toReversed())
}

describe('formatDesign', () => {
  it('starts with the marker, is indented by two and ends with a newline', () => {
    const text = formatDesign(DEFAULT_DESIGN)
    expect(
      text.startsWith('{\n  "combwright": 2,\n  "version": 2,\n  "title": {\n    "name"'),
    ).toBe(true)
    expect(text.endsWith('\n  "made": []\n}\n')).toBe(true)
  })

  it('gives the same bytes for equal designs, in whatever order their keys were set', () => {
    fc.assert(
      fc.property(arbitraryDesign(), (design) => {
        const other = turned(design) as typeof design
        expect(JSON.stringify(other)).not.toBe(JSON.stringify(design))
        expect(formatDesign(other)).toBe(formatDesign(design))
      }),
      { numRuns: 30 },
    )
  })

  it('writes everything that the design holds', () => {
    const { combwright, ...written } = JSON.parse(formatDesign(DEFAULT_DESIGN))
    expect(combwright).toBe(2)
    expect(written).toEqual(DEFAULT_DESIGN)
  })
})
