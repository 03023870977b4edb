import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Design } from '../../src/design/schema.ts'
import { type Box, boundingBox, boxExtent, boxVolume } from '../../src/geometry/box.ts'
import { solidBounds, solidVolume } from '../../src/geometry/solid.ts'
import type { Hive, PanelSummary } from '../../src/hive/hive.ts'
import type { Part } from '../../src/hive/part.ts'
import { arbitraryMixedBuilt, runs } from './arbitraryBuilt.ts'
import { sharedVolume } from './insideOf.ts'

const hives = arbitraryMixedBuilt()

type PanelId = PanelSummary['id']
const PANELS: readonly PanelId[] = [
  'front-wall',
  'back-wall',
  'left-wall',
  'right-wall',
  'lid',
  'floor',
]

/** Length along the panel and height (or depth) of its core, from the leading dimensions. */
const coreOf = ({ walls, lid }: Design, { dimensions: d }: Hive, id: PanelId) => {
  const isLong = id === 'front-wall' || id === 'back-wall'
  if (id === 'lid') {
    const out = 2 * lid.rimClearanceMm
    return { length: d.outerLength + out, height: d.outerWidth + out }
  }
  if (id === 'floor') {
    return { length: d.cavityLength + 2 * d.liningThickness, height: d.outerWidth }
  }
  const through = isLong === (walls.corner === 'long-through')
  const inside = isLong ? d.cavityLength : d.cavityWidth
  const ends = through ? 2 * (d.liningThickness + d.coreThickness) : 0
  return { length: inside + ends, height: d.restHeight }
}

const designOf = (design: Design, id: PanelId) =>
  id === 'lid' ? design.lid : id === 'floor' ? design.floor : design.walls

/** The extent of a box along the panel: along x, except for the end walls. */
const along = (id: PanelId, b: Box): readonly [number, number] =>
  id === 'left-wall' || id === 'right-wall' ? [b.z0, b.z1] : [b.x0, b.x1]

const piecesOf = (hive: Hive, id: PanelId, kind: string): readonly Part[] =>
  hive.parts.filter((p) => p.id.startsWith(`${id}/${kind}`))

const volumeOf = (parts: readonly Part[]): number =>
  parts.flatMap((p) => p.solids).reduce((sum, s) => sum + solidVolume(s), 0)

/** Volume of the pockets that the pieces of insulation lie in, `clearance` larger both ways. */
const pocketVolume = (pieces: readonly Part[], core: number, clearance: number): number =>
  pieces
    .flatMap((p) => p.solids.map(solidBounds))
    .reduce((sum, b) => {
      const face = boxVolume(b) / core
      const [u, v] = [b.x1 - b.x0, b.y1 - b.y0, b.z1 - b.z0]
        .toSorted((p, q) => Math.abs(p - core) - Math.abs(q - core))
        .slice(1)
      // (u + c)(v + c) = uv + c(u + v) + c², whichever side is which.
      return sum + core * (face + clearance * ((u ?? 0) + (v ?? 0)) + clearance ** 2)
    }, 0)

describe('the timber of a framed panel', () => {
  it('stands no further apart than wanted, a tunnel block counted as timber throughout', () => {
    fc.assert(
      fc.property(hives, ({ design, hive }) => {
        for (const id of PANELS) {
          const { railWidthMm: width, railSpacingMm } = designOf(design, id)
          const bounds = [...piecesOf(hive, id, 'stud'), ...piecesOf(hive, id, 'block')]
            .flatMap((p) => p.solids.map(solidBounds))
            .map((b) => along(id, b))
            .toSorted((a, b) => a[0] - b[0])
          const { length } = coreOf(design, hive, id)
          const first = id === 'left-wall' || id === 'right-wall' ? -length / 2 : undefined
          const start = first ?? (hive.dimensions.cavityLength - length) / 2
          // The outermost studs stand flush with the ends.
          expect(bounds[0]?.[0]).toBeCloseTo(start, 6)
          expect(Math.max(...bounds.map(([, to]) => to))).toBeCloseTo(start + length, 6)
          let reached = start
          for (const [from, to] of bounds) {
            // Between middles the distance is the free width and half a stud on each side.
            if (from > reached)
              expect(from - reached + width).toBeLessThanOrEqual(railSpacingMm + 1e-6)
            reached = Math.max(reached, to)
          }
        }
      }),
      { numRuns: runs(250), seed: 301 },
    )
  })

  it('carries the sloping roof on firrings no further apart than the rails of the lid', () => {
    fc.assert(
      fc.property(hives, ({ design: { lid }, hive }) => {
        const firrings = hive.parts
          .filter((p) => p.name === 'Firring')
          .flatMap((p) => p.solids.map(solidBounds))
        expect(firrings.length > 0).toBe(lid.form === 'sloped')
        firrings.forEach((b, i) => {
          const next = firrings[i + 1]
          if (next) expect(next.x0 - b.x0).toBeLessThanOrEqual(lid.railSpacingMm + 1e-6)
        })
      }),
      { numRuns: runs(100), seed: 302 },
    )
  })

  it('fills the core together with the insulation, its clearance and the holes', () => {
    fc.assert(
      fc.property(hives, ({ design, hive }) => {
        for (const id of PANELS) {
          const { coreMm: core, foamClearanceMm } = designOf(design, id)
          const { length, height } = coreOf(design, hive, id)
          const timber = ['rail', 'stud', 'block'].flatMap((kind) => piecesOf(hive, id, kind))
          const pockets = pocketVolume(piecesOf(hive, id, 'insulation'), core, foamClearanceMm)
          const holes = hive.openings
            .filter((o) => `${o.wall}-wall` === id)
            .reduce((sum, o) => sum + o.area * core, 0)
          const whole = length * height * core
          expect((volumeOf(timber) + pockets + holes) / whole).toBeCloseTo(1, 9)
        }
      }),
      { numRuns: runs(250), seed: 303 },
    )
  })

  it('is lined over its whole face but for the holes', () => {
    fc.assert(
      fc.property(hives, ({ design, hive }) => {
        for (const id of PANELS) {
          const { liningMm } = designOf(design, id)
          const { length, height } = coreOf(design, hive, id)
          const holes = hive.openings
            .filter((o) => `${o.wall}-wall` === id)
            .reduce((sum, o) => sum + o.area * liningMm, 0)
          const lining = volumeOf(piecesOf(hive, id, 'lining'))
          expect((lining + holes) / (length * height * liningMm)).toBeCloseTo(1, 9)
        }
      }),
      { numRuns: runs(150), seed: 304 },
    )
  })
})

/** The face of a core that timber takes up within the part of it that bounds the cavity, mm². */
const timberFace = (hive: Hive, id: PanelId): number => {
  const { cavityLength, cavityWidth, restHeight } = hive.dimensions
  const half = cavityWidth / 2
  const everywhere = 1e5
  const within: Readonly<Record<'x' | 'y' | 'z', Box>> = {
    // Seen along x, y or z: no bound along the line of sight.
    x: { x0: -everywhere, x1: everywhere, y0: 0, y1: restHeight, z0: -half, z1: half },
    y: { x0: 0, x1: cavityLength, y0: -everywhere, y1: everywhere, z0: -half, z1: half },
    z: { x0: 0, x1: cavityLength, y0: 0, y1: restHeight, z0: -everywhere, z1: everywhere },
  }
  const sight = id === 'lid' || id === 'floor' ? 'y' : /left|right/.test(id) ? 'x' : 'z'
  const timber = ['rail', 'stud', 'block'].flatMap((kind) => piecesOf(hive, id, kind))
  return timber
    .flatMap((p) => p.solids.map(solidBounds))
    .reduce((sum, b) => sum + sharedVolume(b, within[sight]) / boxExtent(b, sight), 0)
}

describe('the summary of a panel', () => {
  it('counts the timber in the face of the cavity, the rest strip of a wall included', () => {
    fc.assert(
      fc.property(hives, ({ hive }) => {
        const { cavityLength, cavityWidth, restDepth } = hive.dimensions
        expect(hive.panels.map(({ id }) => id).toSorted()).toEqual(PANELS.toSorted())
        for (const { id, timberArea, coreArea } of hive.panels) {
          const isFlat = id === 'lid' || id === 'floor'
          const length = /left|right/.test(id) ? cavityWidth : cavityLength
          const strip = isFlat ? 0 : length * restDepth
          expect(timberArea).toBeCloseTo(timberFace(hive, id) + strip, 3)
          const height = isFlat ? cavityWidth : hive.dimensions.cavityHeight
          expect(coreArea).toBeCloseTo(length * height, 6)
          expect(timberArea).toBeLessThanOrEqual(coreArea)
        }
      }),
      { numRuns: runs(150), seed: 307 },
    )
  })
})

describe('the cladding of a wall', () => {
  it('is of equal boards, none wider than can be bought, from the floor to the top', () => {
    fc.assert(
      fc.property(hives, ({ design: { walls }, hive }) => {
        for (const id of PANELS.filter((panel) => panel.endsWith('wall'))) {
          const boards = piecesOf(hive, id, 'cladding').map((p) =>
            boundingBox(p.solids.map(solidBounds)),
          )
          const { wallTop } = hive.dimensions
          const each = wallTop / boards.length
          if (walls.claddingForm === 'sheet') expect(boards).toHaveLength(1)
          else expect(each).toBeLessThanOrEqual(walls.boardWidthMm + 1e-6)
          expect(boards.map((b) => [b.y0, b.y1])).toEqual(
            boards.map((_, i) => [expect.closeTo(i * each, 6), expect.closeTo((i + 1) * each, 6)]),
          )
        }
      }),
      { numRuns: runs(80), seed: 308 },
    )
  })
})
