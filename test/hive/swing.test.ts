import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boxSolid, solidBounds } from '../../src/geometry/solid.ts'
import type { Hinge, Hive } from '../../src/hive/hive.ts'
import { arbitraryBuilt, arbitraryMixedBuilt, runs } from './arbitraryBuilt.ts'
import { collisionsAt, turnSolid } from './swing.ts'

/** What the eye would not see of a corner that rounds an edge, mm. */
const SCRAPE = 0.05

const hingeOf = ({ hinges }: Hive, motion: Hinge['motion']): Hinge => {
  const hinge = hinges.find((h) => h.motion === motion)
  if (hinge === undefined) throw new Error(`no hinge for the ${motion}`)
  return hinge
}

/** Parts that stay where they are; a hinge's leaves fold with what they hold. */
const standingFor = ({ parts }: Hive, motion: Hinge['motion']) =>
  parts.filter((p) => p.motion !== motion && !p.id.startsWith(`hardware/${motion}-`))

describe('turnSolid', () => {
  const hinge: Hinge = { motion: 'lid', point: { x: 0, y: 10, z: -5 }, sense: -1, openDeg: 90 }

  it('stands a lid hinged at its back edge upright at 90 degrees', () => {
    // A board 2 thick and 20 deep, lying in front of the hinge from y 10 to 12.
    const lid = boxSolid({ x0: 0, x1: 9, y0: 10, y1: 12, z0: -5, z1: 15 })
    const { y0, y1, z0, z1 } = solidBounds(turnSolid(lid, hinge, 90))
    expect([y0, y1]).toEqual([expect.closeTo(10), expect.closeTo(10 + 20)])
    expect([z0, z1]).toEqual([expect.closeTo(-5 - 2), expect.closeTo(-5)])
  })
})

describe('the lid', () => {
  it('turns to its opening angle without meeting anything on the way', () => {
    fc.assert(
      fc.property(arbitraryBuilt(), ({ hive }) => {
        const hinge = hingeOf(hive, 'lid')
        const lid = hive.parts.filter(({ motion }) => motion === 'lid')
        const standing = standingFor(hive, 'lid')
        const steps = [0.5, 1, 2, 3, 4, 5, 7, 10, 15, 25, 45, 70, 90, 105]
        const angles = [...steps.filter((deg) => deg < hinge.openDeg), hinge.openDeg]
        const met = angles.flatMap((deg) =>
          collisionsAt(lid, standing, { hinge, deg, tolerance: SCRAPE }),
        )
        expect(met).toEqual([])
      }),
      { numRuns: runs(120), seed: 601 },
    )
  })

  it('leaves the hive open above: past upright nothing of it hangs over the frames', () => {
    fc.assert(
      fc.property(arbitraryMixedBuilt(), ({ hive }) => {
        const hinge = hingeOf(hive, 'lid')
        fc.pre(hinge.openDeg >= 90)
        const outward = Math.sign(hinge.point.z)
        const lid = hive.parts.filter(({ motion }) => motion === 'lid')
        const nearest = lid
          .flatMap(({ solids }) =>
            solids.map((s) => solidBounds(turnSolid(s, hinge, hinge.openDeg))),
          )
          .map((b) => (outward > 0 ? b.z0 : -b.z1))
        expect(Math.min(...nearest)).toBeGreaterThan(hive.dimensions.cavityWidth / 2)
      }),
      { numRuns: runs(120), seed: 602 },
    )
  })
})

describe('the floor', () => {
  it('drops without meeting the walls, and hangs below them all the way', () => {
    fc.assert(
      fc.property(arbitraryMixedBuilt(), ({ hive }) => {
        const hinge = hingeOf(hive, 'floor')
        const floor = hive.parts.filter(({ motion }) => motion === 'floor')
        const panel = floor.filter(({ id }) => !id.includes('tray'))
        const walls = standingFor(hive, 'floor').filter(
          ({ group }) => group.endsWith('wall') || group === 'boards',
        )
        for (const deg of [0.5, 1, 2, 5, 10, 20, hinge.openDeg]) {
          expect(collisionsAt(floor, walls, { hinge, deg, tolerance: SCRAPE })).toEqual([])
          for (const s of panel.flatMap(({ solids }) => solids)) {
            expect(solidBounds(turnSolid(s, hinge, deg)).y1).toBeLessThanOrEqual(1e-6)
          }
        }
      }),
      { numRuns: runs(100), seed: 603 },
    )
  })

  it('swings between the bearers and the legs', () => {
    fc.assert(
      fc.property(arbitraryMixedBuilt(), ({ hive: { parts } }) => {
        const bounds = (chosen: typeof parts) =>
          chosen.flatMap(({ solids }) => solids.map(solidBounds))
        const floor = bounds(parts.filter(({ motion }) => motion === 'floor'))
        const [from, to] = [
          Math.min(...floor.map(({ x0 }) => x0)),
          Math.max(...floor.map(({ x1 }) => x1)),
        ]
        const uprights = parts.filter(({ id }) =>
          /^stand\/(bearer|leg|brace-(left|right)|tie)/.test(id),
        )
        for (const b of bounds(uprights)) {
          expect(Math.max(from - b.x1, b.x0 - to)).toBeGreaterThanOrEqual(2 - 1e-6)
        }
      }),
      { numRuns: runs(80), seed: 604 },
    )
  })
})
