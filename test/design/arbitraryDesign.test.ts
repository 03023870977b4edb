import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { FRAME_STANDARDS } from '../../src/catalog/frameStandards.ts'
import { designSchema } from '../../src/design/schema.ts'
import { arbitraryDesign, arbitrarySchemaDesign } from './arbitraryDesign.ts'

describe('arbitraryDesign', () => {
  it('gives only designs that the schema accepts', () => {
    fc.assert(
      fc.property(arbitraryDesign(), (design) => {
        expect(designSchema.parse(design)).toEqual(design)
      }),
    )
    fc.assert(
      fc.property(arbitrarySchemaDesign(), (design) => {
        expect(designSchema.parse(design)).toEqual(design)
      }),
    )
  })

  it('covers every standard, both frame forms, dividers, and 0 to 3 entrances', () => {
    const sample = fc.sample(arbitraryDesign(), { numRuns: 400, seed: 1 })
    const kinds = new Set(
      sample.flatMap(({ frame, cavity, openings }) => [
        frame.standard,
        frame.form,
        `divider ${cavity.divider}`,
        `entrances ${openings.entrances.length}`,
        `vents ${openings.vents.length}`,
      ]),
    )
    const wanted = [
      ...FRAME_STANDARDS.map((row) => row.id),
      ...['single', 'split', 'divider none', 'divider fitted'],
      ...['entrances 0', 'entrances 1', 'entrances 2', 'entrances 3', 'vents 0', 'vents 2'],
    ]
    expect([...kinds]).toEqual(expect.arrayContaining(wanted))
  })

  it('stands boards inside the row, no two at one place', () => {
    fc.assert(
      fc.property(arbitraryDesign(), ({ cavity }) => {
        expect(cavity.dividerAfterFrame).toBeLessThan(cavity.frames)
        expect(cavity.followerBAfterFrame).toBeLessThanOrEqual(cavity.frames)
        expect(cavity.followerAAfterFrame).not.toBe(cavity.dividerAfterFrame)
        if (cavity.followers === 'two') {
          expect(cavity.followerAAfterFrame).toBeLessThan(cavity.dividerAfterFrame)
          expect(cavity.followerBAfterFrame).toBeGreaterThan(cavity.dividerAfterFrame)
        }
      }),
    )
  })
})
