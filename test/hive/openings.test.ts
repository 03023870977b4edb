import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Box, boxVolume } from '../../src/geometry/box.ts'
import { separation } from '../../src/geometry/separation.ts'
import { boxSolid, type Solid, solidBounds } from '../../src/geometry/solid.ts'
import type { Hive, Opening } from '../../src/hive/hive.ts'
import { arbitraryMixedBuilt, runs } from './arbitraryBuilt.ts'
import { beeRooms, isInsulation, isSolidAt, sharedVolume } from './insideOf.ts'

const hives = arbitraryMixedBuilt()

const isReducer = (id: string): boolean => id.startsWith('openings/reducer')

/** Volume of the tunnel that parts take up, reducers left out. */
const filledVolume = ({ parts }: Hive, tunnel: Box): number =>
  parts
    .filter((p) => !isReducer(p.id))
    .flatMap((p) => p.solids.map(solidBounds))
    .reduce((sum, b) => sum + sharedVolume(b, tunnel), 0)

const acrossWall = ({ wall }: Opening): 'x' | 'z' =>
  wall === 'left' || wall === 'right' ? 'x' : 'z'

/** Places just outside a tunnel's four sides, spread along each, at a depth into the wall. */
const placesRound = (opening: Opening, depth: number, beside: number) => {
  const { tunnel: t, wall } = opening
  const across = acrossWall(opening)
  const [inner, outward] = {
    front: [t.z0, 1] as const,
    back: [t.z1, -1] as const,
    left: [t.x1, -1] as const,
    right: [t.x0, 1] as const,
  }[wall]
  const n = inner + outward * depth
  const [u0, u1] = across === 'z' ? [t.x0, t.x1] : [t.z0, t.z1]
  const shares = [0.02, 0.3, 0.5, 0.7, 0.98]
  const sides = shares.flatMap((share) => [
    { u: u0 + share * (u1 - u0), y: t.y0 - beside },
    { u: u0 + share * (u1 - u0), y: t.y1 + beside },
    { u: u0 - beside, y: t.y0 + share * (t.y1 - t.y0) },
    { u: u1 + beside, y: t.y0 + share * (t.y1 - t.y0) },
  ])
  return sides.map(({ u, y }) => (across === 'z' ? { x: u, y, z: n } : { x: n, y, z: u }))
}

describe('an opening', () => {
  it('is a clear tunnel right through the wall, as large as its area says', () => {
    fc.assert(
      fc.property(hives, ({ design, hive }) => {
        for (const opening of hive.openings) {
          const { tunnel, area } = opening
          const thickness = hive.dimensions.wallThickness
          const across = acrossWall(opening)
          expect(across === 'x' ? tunnel.x1 - tunnel.x0 : tunnel.z1 - tunnel.z0).toBeCloseTo(
            thickness,
            6,
          )
          // A slot is all air; between round holes the timber stays.
          const free = boxVolume(tunnel) - filledVolume(hive, tunnel)
          expect(free / (area * thickness)).toBeCloseTo(1, 6)
          const source =
            opening.kind === 'vent' ? undefined : design.openings.entrances[opening.index]
          if (source?.form !== 'holes') expect(area * thickness).toBeCloseTo(boxVolume(tunnel), 3)
        }
      }),
      { numRuns: runs(200), seed: 401 },
    )
  })

  it('cuts round holes of the area that their diameter gives, as many as the row has room for', () => {
    fc.assert(
      fc.property(hives, ({ design, hive }) => {
        for (const { kind, index, holes, area } of hive.openings) {
          const source = design.openings.entrances[index]
          if (kind === 'vent' || source?.form !== 'holes') continue
          const { widthMm, heightMm: diameter } = source
          // n holes take n diameters and n - 1 webs of 10 mm.
          expect(holes * diameter + (holes - 1) * 10).toBeLessThanOrEqual(widthMm + 1e-6)
          expect((holes + 1) * diameter + holes * 10).toBeGreaterThan(widthMm - 1e-6)
          expect(area).toBeCloseTo((holes * Math.PI * diameter ** 2) / 4, 6)
        }
      }),
      { numRuns: runs(200), seed: 402 },
    )
  })

  it('has timber, not insulation, all round it through the whole core', () => {
    fc.assert(
      fc.property(hives, ({ hive }) => {
        const { liningThickness, coreThickness } = hive.dimensions
        for (const opening of hive.openings) {
          const timber = hive.parts.filter(
            (p) => p.group === `${opening.wall}-wall` && !isInsulation(p),
          )
          for (const depth of [1, coreThickness / 2, coreThickness - 1]) {
            for (const place of placesRound(opening, liningThickness + depth, 2)) {
              expect({ place, solid: isSolidAt(timber, place) }).toEqual({ place, solid: true })
            }
          }
        }
      }),
      { numRuns: runs(150), seed: 403 },
    )
  })

  it('is narrowed in winter by a reducer that fills the rest of the slot and stays in the wall', () => {
    fc.assert(
      fc.property(hives, ({ design, hive }) => {
        hive.openings.forEach(({ kind, index, tunnel, wall }) => {
          const source = design.openings.entrances[index]
          if (kind === 'vent' || source === undefined) return
          const reducer = hive.parts.find((p) => p.id === `openings/reducer-${index + 1}`)
          const closed = source.widthMm - source.winterWidthMm
          expect(reducer !== undefined).toBe(source.form === 'slot' && closed >= 10)
          if (reducer === undefined) return
          const bounds = reducer.solids.map(solidBounds)
          const volume = bounds.reduce((sum, b) => sum + boxVolume(b), 0)
          expect(bounds.reduce((sum, b) => sum + sharedVolume(b, tunnel), 0)).toBeCloseTo(volume, 3)
          const along = (b: Box) =>
            wall === 'front' || wall === 'back' ? b.x1 - b.x0 : b.z1 - b.z0
          expect(bounds.map(along)).toEqual([expect.closeTo(closed, 6)])
        })
      }),
      { numRuns: runs(150), seed: 404 },
    )
  })
})

describe('insulation', () => {
  it('is kept from the bees by the thinnest lining or rail, and from tunnels by 12 mm of timber', () => {
    fc.assert(
      fc.property(hives, ({ design, hive }) => {
        // Under the lugs' rebate lies the upper rail of the wall.
        const { walls, lid, floor } = design
        const timber = Math.min(walls.liningMm, walls.railWidthMm, lid.liningMm, floor.liningMm)
        const rooms = beeRooms(hive).map(boxSolid)
        const tunnels = hive.openings.map((o) => boxSolid(o.tunnel))
        const solids = hive.parts
          .filter((p) => isInsulation(p) && p.motion !== 'follower')
          .flatMap((p) => p.solids)
        const nearest = (places: readonly Solid[]) =>
          Math.min(...solids.flatMap((s) => places.map((place) => separation(s, place))))
        expect(nearest(rooms)).toBeGreaterThanOrEqual(timber - 1e-5)
        expect(nearest(tunnels)).toBeGreaterThanOrEqual(12 - 1e-5)
      }),
      { numRuns: runs(150), seed: 405 },
    )
  })

  it('of a follower is shut in by its sheets and strips on all six sides', () => {
    fc.assert(
      fc.property(hives, ({ design, hive }) => {
        const cores = hive.parts.filter((p) => isInsulation(p) && p.motion === 'follower')
        const { followers, followerForm } = design.cavity
        const wanted = followerForm === 'plain' ? 0 : { none: 0, one: 1, two: 2 }[followers]
        expect(cores).toHaveLength(wanted)
        for (const core of cores) {
          const own = hive.parts.filter(
            (p) => p.motion === 'follower' && p.index === core.index && !isInsulation(p),
          )
          const [b] = core.solids.map(solidBounds)
          if (b === undefined) throw new Error('a follower core without a solid')
          const [x, y, z] = [(b.x0 + b.x1) / 2, (b.y0 + b.y1) / 2, (b.z0 + b.z1) / 2]
          const past = design.walls.foamClearanceMm / 2 + 1
          const outside = [
            { x: b.x0 - 1, y, z },
            { x: b.x1 + 1, y, z },
            { x, y: b.y0 - past, z },
            { x, y: b.y1 + past, z },
            { x, y, z: b.z0 - past },
            { x, y, z: b.z1 + past },
          ]
          expect(outside.filter((place) => !isSolidAt(own, place))).toEqual([])
        }
      }),
      { numRuns: runs(150), seed: 406 },
    )
  })
})
