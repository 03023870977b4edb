import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Design } from '../../src/design/schema.ts'
import { solidVolume } from '../../src/geometry/solid.ts'
import type { Part } from '../../src/hive/part.ts'
import { arbitraryMixedBuilt, runs } from './arbitraryBuilt.ts'

const hives = arbitraryMixedBuilt()

const volumeOf = (parts: readonly Part[]): number =>
  parts.flatMap((p) => p.solids).reduce((sum, s) => sum + solidVolume(s), 0)

/** Wood of one frame or half: a top bar with or without lugs, two side bars, a bottom bar. */
const barVolume = (
  frame: Design['frame'],
  top: { readonly thickness: number; readonly width: number; readonly lug: number },
): number => {
  const { bodyLengthMm: body, sideBarThicknessMm: side, bottomBarThicknessMm: bottom } = frame
  const topBar = top.width * (body * top.thickness + (frame.topBarLengthMm - body) * top.lug)
  const height = frame.depthMm - top.thickness
  const shoulder = frame.shoulderWidthMm === frame.sideBarWidthMm ? 0 : Math.min(height / 3, 80)
  const sideBars =
    2 * side * (frame.sideBarWidthMm * (height - shoulder) + frame.shoulderWidthMm * shoulder)
  return topBar + sideBars + (body - 2 * side) * bottom * frame.bottomBarWidthMm
}

describe('the wood of the frames', () => {
  it('is the sum of their bars', () => {
    fc.assert(
      fc.property(hives, ({ design: { frame, cavity }, hive }) => {
        const bars = hive.parts.filter((p) => p.group === 'frames' && !p.bought)
        const upper = barVolume(frame, {
          thickness: frame.topBarThicknessMm,
          width: frame.topBarWidthMm,
          lug: frame.lugThicknessMm,
        })
        const lower = barVolume(frame, {
          thickness: frame.middleBarThicknessMm,
          width: frame.sideBarWidthMm,
          lug: 0,
        })
        const each = frame.form === 'split' ? upper + lower : upper
        const hung = cavity.frames - cavity.emptyPlaces
        expect(volumeOf(bars) / (each * hung)).toBeCloseTo(1, 9)
      }),
      { numRuns: runs(150), seed: 305 },
    )
  })

  it('stands around sheets of foundation that fill the frame', () => {
    fc.assert(
      fc.property(hives, ({ design: { frame, cavity }, hive }) => {
        const sheets = hive.parts.filter((p) => p.material === 'beeswax-foundation')
        const halves = frame.form === 'split' ? 2 : 1
        expect(sheets).toHaveLength(
          frame.foundation ? halves * (cavity.frames - cavity.emptyPlaces) : 0,
        )
        for (const { size } of sheets) {
          const clear = frame.bodyLengthMm - 2 * frame.sideBarThicknessMm
          expect([size.length, size.width]).toContainEqual(expect.closeTo(clear, 6))
        }
      }),
      { numRuns: runs(80), seed: 306 },
    )
  })
})
