import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import type { Box } from '../../src/geometry/box.ts'
import { solidBounds } from '../../src/geometry/solid.ts'
import { deriveHive } from '../../src/hive/deriveHive.ts'
import type { Hive } from '../../src/hive/hive.ts'
import { explodeOffset, planExplode } from '../../src/scene/explodePlan.ts'

const buildDefault = (): Hive => {
  const result = deriveHive(DEFAULT_DESIGN)
  if (result.kind !== 'built') throw new Error('the default design must be buildable')
  return result.hive
}

/** Boxes of all square solids at this explode. Prisms are left out: their boxes hold air. */
const movedBoxes = (hive: Hive, explode: number) =>
  hive.parts.flatMap((part) => {
    const o = explodeOffset(part, planExplode(hive), explode)
    return part.solids
      .filter((s) => s.kind === 'box')
      .map((s) => {
        const b = solidBounds(s)
        return {
          id: part.id,
          b: {
            x0: b.x0 + o.x,
            x1: b.x1 + o.x,
            y0: b.y0 + o.y,
            y1: b.y1 + o.y,
            z0: b.z0 + o.z,
            z1: b.z1 + o.z,
          },
        }
      })
  })

const overlaps = (a: Box, b: Box): boolean =>
  Math.min(a.x1, b.x1) - Math.max(a.x0, b.x0) > 1e-6 &&
  Math.min(a.y1, b.y1) - Math.max(a.y0, b.y0) > 1e-6 &&
  Math.min(a.z1, b.z1) - Math.max(a.z0, b.z0) > 1e-6

describe('explodeOffset', () => {
  const hive = buildDefault()

  it.each([0, 0.5, 1, 1.5, 2])('puts no part of the default hive into another at %s', (explode) => {
    const boxes = movedBoxes(hive, explode)
    const clashes = boxes.flatMap((a, i) =>
      boxes.slice(i + 1).flatMap((c) => (overlaps(a.b, c.b) ? [`${a.id} ${c.id}`] : [])),
    )
    expect(clashes).toEqual([])
  })

  it('gives a plan again for the same hive and a new one for another', () => {
    const plan = planExplode(hive)
    expect(planExplode(hive)).toBe(plan)
    expect(planExplode(buildDefault())).not.toBe(plan)
  })
})
