import { describe, expect, it } from 'vitest'
import { frameStandardById } from '../../../src/catalog/frameStandards.ts'
import { DEFAULT_DESIGN } from '../../../src/design/defaults.ts'
import type { Design } from '../../../src/design/schema.ts'
import type { RowItem } from '../../../src/hive/hive.ts'
import { checkBeeSpace } from '../../../src/reports/checks/beeSpace.ts'
import { checkEntrances } from '../../../src/reports/checks/entrances.ts'
import { checkExtractor } from '../../../src/reports/checks/extractor.ts'
import { checkFrameRest } from '../../../src/reports/checks/frameRest.ts'
import { checkFrameSpacing } from '../../../src/reports/checks/frameSpacing.ts'
import { checkPlay } from '../../../src/reports/checks/play.ts'
import { checkSplitJoint } from '../../../src/reports/checks/splitJoint.ts'
import { combAreaDm2 } from '../../../src/reports/keeper/combArea.ts'
import { findCheck, measured } from './sampleHive.ts'

/** A hive of whole frames as its handbook has it. */
const handbook = (
  standard: string,
  cavity: Partial<Design['cavity']>,
  liningMm: number,
  frame: Partial<Design['frame']> = {},
): Design => ({
  ...DEFAULT_DESIGN,
  frame: {
    ...DEFAULT_DESIGN.frame,
    ...frameStandardById(standard).dimensions,
    spacingMm: frameStandardById(standard).spacingMm,
    form: 'single',
    ...frame,
  },
  cavity: { ...DEFAULT_DESIGN.cavity, ...cavity },
  walls: { ...DEFAULT_DESIGN.walls, liningMm },
})

const verdicts = (design: Design) => {
  const context = { design, hive: measured(design) }
  const all = [...checkBeeSpace(context), ...checkFrameRest(context), ...checkFrameSpacing(context)]
  return Object.fromEntries(all.map(({ id, verdict, measured: value }) => [id, [value, verdict]]))
}

describe('the Layens hive (Bertrand, La conduite du rucher, p. 289-292)', () => {
  const layens = handbook(
    'layens',
    { endBarSpaceMm: 7.5, aboveSpaceMm: 8, belowSpaceMm: 10, lugClearanceMm: 1, frames: 20 },
    12,
  )
  const { dimensions } = measured(layens)

  it('is 345 wide and 433 high inside, with a rest 18 deep', () => {
    expect(dimensions.cavityWidth).toBeCloseTo(345, 9)
    expect(dimensions.cavityHeight).toBeCloseTo(433, 9)
    expect(dimensions.restDepth).toBeCloseTo(18, 9)
    expect(dimensions.frameDepth).toBe(415)
  })

  it('has comb 310 by 370', () => {
    expect(combAreaDm2(layens.frame)).toBeCloseTo((310 * 370) / 1e4, 9)
  })

  it('passes on bee space, rest and the 2 mm that the lugs have in all', () => {
    const found = verdicts(layens)
    expect(found['bee-space-beside']).toEqual([7.5, 'ok'])
    expect(found['bee-space-above']).toEqual([8, 'ok'])
    expect(found['bee-space-below']).toEqual([10, 'ok'])
    expect(found['frame-rest-depth']).toEqual([18, 'ok'])
    expect(found['frame-rest-seat']).toEqual([12.5, 'ok'])
    expect(found['lug-end-clearance']).toEqual([1, 'ok'])
  })

  it('warns of its pitch, 767 over 20, which is over the limit of the same handbook', () => {
    expect(767 / 20).toBeCloseTo(38.35, 9)
    expect(verdicts(layens)['frame-spacing']).toEqual([38.35, 'look'])
  })

  it('is too deep for common extractors', () => {
    const check = findCheck(
      checkExtractor({ design: layens, hive: measured(layens) }),
      'extractor-depth',
    )
    expect(check.verdict).toBe('look')
    expect(check.fix?.changes).toContainEqual({ field: 'frame.depthMm', value: 208 })
  })
})

describe('the Langstroth box (18 3/8 by 14 3/4 in)', () => {
  // 466.7 wide for a frame of 447.7; lug rest 5/8 by 3/8 in.
  const langstroth = handbook(
    'langstroth-deep',
    { endBarSpaceMm: 9.5, aboveSpaceMm: 6.4, lugClearanceMm: 1.6 },
    9.5,
    { bodyLengthMm: 447.7, topBarLengthMm: 482.6 },
  )
  const found = verdicts(langstroth)

  it('leaves 9.5 mm beside the frame, which is worth a look', () => {
    expect(found['bee-space-beside']).toEqual([expect.closeTo(9.5, 9), 'look'])
  })

  it('has 6.4 mm over the frames in a rest of 15.9 and 1.6 mm at the lugs', () => {
    expect(found['bee-space-above']).toEqual([expect.closeTo(6.4, 9), 'ok'])
    expect(found['frame-rest-depth']).toEqual([expect.closeTo(15.9, 9), 'ok'])
    expect(found['lug-end-clearance']).toEqual([expect.closeTo(1.6, 1), 'ok'])
  })
})

describe('the gap between two tiers of frames (rule R04)', () => {
  const split: Design = { ...DEFAULT_DESIGN, frame: { ...DEFAULT_DESIGN.frame, form: 'split' } }
  const jointOf = (gap: number) => {
    const { dimensions } = measured(split)
    const frameDepth = 2 * split.frame.depthMm + gap
    return checkSplitJoint({
      design: split,
      hive: { dimensions: { ...dimensions, frameDepth }, parts: [] },
    })[0]
  }

  it.each([
    // Boxes of 9 5/8 in leave 12.7 between frames of 9 1/8 in; boxes of 9 1/2 in leave 9.53.
    [12.7, 'fix'],
    [9.53, 'look'],
    [8, 'ok'],
    [6, 'ok'],
    [5.6, 'look'],
    // Halves that touch, rule R05.
    [5.4, 'fix'],
    [3.4, 'fix'],
    [1.6, 'fix'],
    [1.5, 'look'],
    [1, 'ok'],
    [0, 'ok'],
  ])('of %s mm is %s', (gap, verdict) => {
    expect(jointOf(gap)?.verdict).toBe(verdict)
  })

  it('does not concern whole frames', () => {
    const design: Design = { ...split, frame: { ...split.frame, form: 'single' } }
    expect(checkSplitJoint({ design, hive: measured(design) })).toEqual([])
  })
})

describe('the British National (460 mm box, 422.3 inside)', () => {
  const found = verdicts(handbook('british-national', { endBarSpaceMm: 7.75, belowSpaceMm: 9 }, 12))

  it('leaves 7.75 mm beside the frames, which is right', () => {
    expect(found['bee-space-beside']).toEqual([7.75, 'ok'])
    expect(found['bee-space-below']).toEqual([9, 'look'])
  })

  it.each([
    ['twelve frames of 35', 422.3 - 12 * 35, 'fix'],
    ['eleven', 422.3 - 11 * 35, 'look'],
    ['eleven and a dummy board of 9', 422.3 - 11 * 35 - 9, 'ok'],
  ])('has with %s a play of %s mm', (_, play, verdict) => {
    const row: readonly RowItem[] = [
      { kind: 'frame', number: 1, x0: 0, x1: 422.3 - play },
      { kind: 'play', x0: 422.3 - play, x1: 422.3 },
    ]
    expect(checkPlay({ hive: { row } })[0]?.verdict).toBe(verdict)
  })
})

describe('the Dadant-Blatt rail (Bertrand p. 268)', () => {
  it('closes: 11 marks at 37 with 40 at both ends make 450', () => {
    expect(40 + 10 * 37 + 40).toBe(450)
    expect(verdicts(handbook('dadant', {}, 12))['frame-spacing']).toEqual([37, 'ok'])
  })
})

describe('published entrances', () => {
  const row: readonly RowItem[] = [{ kind: 'frame', number: 1, x0: 0, x1: 500 }]
  const tunnel = { x0: 0, x1: 100, y0: 15, y1: 22, z0: 200, z1: 300 }
  const areaCheck = (height: number, width: number) => {
    const area = height * width
    const opening = {
      kind: 'entrance',
      index: 0,
      wall: 'front',
      tunnel,
      holes: 1,
      area,
      colony: 1,
    } as const
    const { dimensions } = measured(DEFAULT_DESIGN)
    const hive = { openings: [opening], row, dimensions }
    return findCheck(checkEntrances({ design: DEFAULT_DESIGN, hive }), 'entrance-area')
  }

  it.each([
    ['Bertrand', 7, 240, 16.8, 'ok'],
    ['Layens', 8, 250, 20, 'ok'],
    ['Warré', 15, 120, 18, 'ok'],
    ['a New Zealand bulletin of 1907', 9.5, 152, 14.44, 'ok'],
    ['a swarm box', 15, 60, 9, 'look'],
  ])('of %s, %s by %s mm, is %s cm²', (_, height, width, cm2, verdict) => {
    const check = areaCheck(height, width)
    expect((check.measured ?? 0) / 100).toBeCloseTo(cm2, 9)
    expect(check.verdict).toBe(verdict)
  })
})
