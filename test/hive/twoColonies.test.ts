import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import type { Design } from '../../src/design/schema.ts'
import { setField } from '../../src/design/setField.ts'
import { type Rect, rect, subtractRects } from '../../src/geometry/rect.ts'
import { solidBounds } from '../../src/geometry/solid.ts'
import { deriveHive } from '../../src/hive/deriveHive.ts'
import type { Hive } from '../../src/hive/hive.ts'
import { arbitraryMixedBuilt, runs } from './arbitraryBuilt.ts'

/** A worker passes 4.1 mm (excluder gap); 3 mm is the limit of the whole design. */
const BEE_TIGHT = 3

/** What solids leave open of a window in the plane across the row at `x`: u = z, v = y. */
const openAt = ({ parts }: Hive, x: number, window: Rect): readonly Rect[] =>
  subtractRects(
    window,
    parts
      .flatMap((p) => p.solids.map(solidBounds))
      .filter((b) => b.x0 < x && x < b.x1)
      .map((b) => rect(b.z0, b.z1, b.y0, b.y1)),
  )

const parted = arbitraryMixedBuilt().filter(({ design }) => design.cavity.divider === 'fitted')

/** The default design with its divider across the entrance, whose middle is 150 mm from the corner. */
const acrossEntrance: Design = {
  ...DEFAULT_DESIGN,
  cavity: { ...DEFAULT_DESIGN.cavity, divider: 'fitted', dividerAfterFrame: 3 },
}

describe('a divider', () => {
  it('refuses an opening across it, and takes the place that it suggests', () => {
    const refused = deriveHive(acrossEntrance)
    const refusals = refused.kind === 'refused' ? refused.refusals : []
    expect(refusals.map(({ field }) => field)).toEqual(['openings.entrances.0.centreMm'])
    const place = refusals[0]?.suggestion ?? 0
    const moved = setField(acrossEntrance, 'openings.entrances.0.centreMm', place).design
    const built = deriveHive(moved)
    expect(built.kind === 'built' && built.hive.openings[0]?.colony).toBe(2)
  })

  it('never shares an opening between two colonies', () => {
    fc.assert(
      fc.property(parted, ({ hive }) => {
        expect(hive.openings.filter(({ colony }) => colony !== 1 && colony !== 2)).toEqual([])
      }),
      { numRuns: runs(100), seed: 502 },
    )
  })

  it('leaves no gap over 3 mm beside, above or below it, nor under the lugs', () => {
    fc.assert(
      fc.property(parted, ({ hive }) => {
        const { dimensions: d, row } = hive
        const divider = row.find(({ kind }) => kind === 'divider')
        expect(divider).toBeDefined()
        if (divider === undefined) return
        // All that lies between floor and lid, and over the ledges out to the strips behind the lugs.
        const [half, side] = [d.cavityWidth / 2, d.cavityWidth / 2 + d.seatWidth]
        const windows = [
          rect(-half, half, 0, d.wallTop),
          rect(half, side, d.restHeight, d.wallTop),
          rect(-side, -half, d.restHeight, d.wallTop),
        ]
        const gaps = windows.flatMap((window) =>
          [divider.x0 + 1, divider.x1 - 1].flatMap((x) => openAt(hive, x, window)),
        )
        const widths = gaps.map((gap) => Math.min(gap.u1 - gap.u0, gap.v1 - gap.v0))
        expect(Math.max(0, ...widths)).toBeLessThanOrEqual(BEE_TIGHT)
      }),
      { numRuns: runs(200), seed: 501 },
    )
  })

  it('parts the cavity into two rooms that end at its faces', () => {
    fc.assert(
      fc.property(parted, ({ hive: { row, cavities, dimensions } }) => {
        const divider = row.find(({ kind }) => kind === 'divider')
        expect(cavities.map(({ colony }) => colony)).toEqual([1, 2])
        expect(cavities.map(({ box }) => [box.x0, box.x1])).toEqual([
          [0, divider?.x0],
          [divider?.x1, dimensions.cavityLength],
        ])
      }),
      { numRuns: runs(50), seed: 502 },
    )
  })

  it('gives each opening the colony on its side', () => {
    fc.assert(
      fc.property(arbitraryMixedBuilt(), ({ hive: { row, openings } }) => {
        const divider = row.find(({ kind }) => kind === 'divider')
        for (const { wall, tunnel, colony } of openings) {
          // Without a divider the whole row is the first colony's.
          const [from, to] = divider ? [divider.x0, divider.x1] : [Infinity, Infinity]
          const isLeft = wall === 'left' || tunnel.x1 <= from
          const isRight = wall === 'right' || tunnel.x0 >= to
          expect(colony).toBe(isLeft || divider === undefined ? 1 : isRight ? 2 : 0)
        }
      }),
      { numRuns: runs(100), seed: 503 },
    )
  })

  it('has a cover board over each colony that does not reach over the other', () => {
    fc.assert(
      fc.property(parted, ({ design, hive: { parts, row } }) => {
        fc.pre(design.cavity.closure !== 'touching')
        const divider = row.find(({ kind }) => kind === 'divider')
        const boards = parts
          .filter((p) => p.group === 'covers')
          .flatMap((p) => p.solids.map(solidBounds))
        const overLeft = boards.filter((b) => b.x0 < (divider?.x0 ?? 0))
        const overRight = boards.filter((b) => b.x1 > (divider?.x1 ?? 0))
        expect(overLeft.length).toBeGreaterThan(0)
        expect(overRight.length).toBeGreaterThan(0)
        expect(overLeft.length + overRight.length).toBe(boards.length)
      }),
      { numRuns: runs(80), seed: 504 },
    )
  })
})

describe('top bars that touch', () => {
  it('close the top with followers, divider and closing strips so that no bee comes through', () => {
    const touching = arbitraryMixedBuilt().filter(
      ({ design }) => design.cavity.closure === 'touching',
    )
    fc.assert(
      fc.property(touching, ({ hive }) => {
        const { cavityLength, frameTop, restHeight } = hive.dimensions
        const y = (frameTop + restHeight) / 2
        const closed = hive.parts
          .filter((p) => ['frames', 'boards', 'covers'].includes(p.group))
          .flatMap((p) => p.solids.map(solidBounds))
          .filter((b) => b.y0 < y && y < b.y1 && b.z0 < 0 && b.z1 > 0)
          .toSorted((a, b) => a.x0 - b.x0)
        let reached = 0
        for (const b of closed) {
          expect(b.x0 - reached).toBeLessThanOrEqual(BEE_TIGHT + 1e-5)
          reached = b.x1
        }
        expect(cavityLength - reached).toBeLessThanOrEqual(BEE_TIGHT + 1e-5)
      }),
      { numRuns: runs(120), seed: 505 },
    )
  })
})
