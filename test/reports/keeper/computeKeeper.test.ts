import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../../src/design/defaults.ts'
import { buildFrames } from '../../../src/hive/buildFrames.ts'
import { measureHive } from '../../../src/hive/measure.ts'
import { layRow } from '../../../src/hive/row.ts'
import { computeKeeper } from '../../../src/reports/keeper/computeKeeper.ts'
import { weighFullFrame } from '../../../src/reports/keeper/fullFrame.ts'
import { hiveMasses } from '../../../src/reports/shop/hiveMasses.ts'
import { at, piece } from '../shop/pieces.ts'

const row = layRow(DEFAULT_DESIGN)
const dimensions = measureHive(DEFAULT_DESIGN, row)
const frames = buildFrames(DEFAULT_DESIGN, dimensions)

describe('weighFullFrame', () => {
  it('weighs a split frame of two Langstroth deeps near the 6.8 kg of the references', () => {
    const full = weighFullFrame(DEFAULT_DESIGN.frame, frames)
    // Twice 2.9 of honey and 0.17 of wax; a little more comb, because the middle bar is thin.
    expect(full.honeyKg).toBeCloseTo(5.96, 1)
    expect(full.waxKg).toBeCloseTo(0.17, 2)
    // The sum of its nine bars, about 760 cm³ of pine at 510 kg/m³; the references guess 0.8 to 1.0.
    expect(full.woodKg).toBeCloseTo(0.39, 2)
    expect(Math.abs(full.totalKg / 6.8 - 1)).toBeLessThan(0.06)
  })

  it('weighs one frame however many hang in the hive', () => {
    const few = frames.filter((part) => (part.index ?? 0) < 3)
    expect(weighFullFrame(DEFAULT_DESIGN.frame, few).totalKg).toBeCloseTo(
      weighFullFrame(DEFAULT_DESIGN.frame, frames).totalKg,
      9,
    )
    expect(weighFullFrame(DEFAULT_DESIGN.frame, []).woodKg).toBe(0)
  })
})

describe('computeKeeper', () => {
  const board = { group: 'covers', motion: 'cover', name: 'Cover board' } as const
  const parts = [
    ...frames,
    // Spruce: 0.02 m³ is 9 kg, 0.01 m³ is 4.5 kg.
    piece([at(0, 0, 0, 1000, 20, 500)], board),
    piece([at(0, 0, 0, 1000, 20, 1000)], board),
    piece([at(0, 0, 0, 100, 100, 100)], { group: 'boards', motion: 'follower', index: 0 }),
    piece([at(0, 0, 0, 100, 100, 100)], { group: 'boards', motion: 'follower', index: 0 }),
    piece([at(0, 0, 0, 1000, 100, 100)], { group: 'front-wall' }),
  ]
  const hive = { parts, row, dimensions, hinges: [] }
  const shop = { massKg: hiveMasses(parts) }
  const keeper = computeKeeper(DEFAULT_DESIGN, hive, shop)

  it('lists what is lifted, heaviest first', () => {
    expect(keeper.lifts.map(({ name }) => name)).toEqual([
      'Cover board',
      'Whole split frame, full of honey',
      'Follower board',
    ])
    expect(keeper.heaviestLift).toEqual(keeper.lifts[0])
    expect(keeper.heaviestLift.massKg).toBeCloseTo(9, 9)
    expect(keeper.lifts[2]?.massKg).toBeCloseTo(0.9, 9)
  })

  it('weighs the full hive as the empty one with every frame full', () => {
    const full = weighFullFrame(DEFAULT_DESIGN.frame, parts).totalKg
    const rest = shop.massKg.empty - shop.massKg.frames
    expect(keeper.fullMassKg).toBeCloseTo(rest + 20 * full, 9)
  })
})
