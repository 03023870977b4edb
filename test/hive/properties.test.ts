import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { materialById } from '../../src/catalog/materials.ts'
import { boundingBox, boxExtent } from '../../src/geometry/box.ts'
import { separation, touches } from '../../src/geometry/separation.ts'
import { solidBounds, solidVolume } from '../../src/geometry/solid.ts'
import { TOUCH_TOLERANCE } from '../../src/geometry/tolerance.ts'
import { deriveHive } from '../../src/hive/deriveHive.ts'
import type { Hive } from '../../src/hive/hive.ts'
import type { Part } from '../../src/hive/part.ts'
import { arbitraryBuilt, arbitraryExtremeBuilt, runs } from './arbitraryBuilt.ts'
import { overlapsIn } from './overlaps.ts'

const share = (a: Part, b: Part): boolean =>
  a.solids.some((s) =>
    b.solids.some((t) => separation(s, t) <= TOUCH_TOLERANCE && touches(s, t, TOUCH_TOLERANCE)),
  )

/** Every claim `a is fixed to b` that does not hold. */
const looseJoints = ({ parts }: Hive): readonly string[] => {
  const byId = new Map(parts.map((p) => [p.id, p]))
  return parts.flatMap((part) =>
    part.fixedTo
      .filter((id) => {
        const other = byId.get(id)
        return other === undefined || !share(part, other)
      })
      .map((id) => `${part.id} does not touch ${id}`),
  )
}

/** Parts that no chain of joints ties to the front wall's lining. */
const unheldParts = ({ parts }: Hive): readonly string[] => {
  const neighbours = new Map<string, string[]>(parts.map((p) => [p.id, []]))
  for (const { id, fixedTo } of parts) {
    for (const other of fixedTo) {
      neighbours.get(id)?.push(other)
      neighbours.get(other)?.push(id)
    }
  }
  const reached = new Set(['front-wall/lining'])
  // A set grows while it is walked through.
  for (const id of reached) for (const next of neighbours.get(id) ?? []) reached.add(next)
  return parts.map(({ id }) => id).filter((id) => !reached.has(id))
}

/** Thin by nature, bought in sheets or rolls: metal, cloth, wax, roofing. */
const isThinGoods = (part: Part): boolean =>
  part.bought ||
  ['covering', 'textile', 'metal', 'wax'].includes(materialById(part.material).family)

/** Pieces that can't be sawn or don't exist: too thin, of no size, or of a size that is not theirs. */
const badSizes = ({ parts }: Hive): readonly string[] =>
  parts.flatMap((part) => {
    const { length, width, thickness } = part.size
    const bounds = boundingBox(part.solids.map(solidBounds))
    const extents = (['x', 'y', 'z'] as const).map((axis) => boxExtent(bounds, axis))
    const volume = part.solids.reduce((sum, s) => sum + solidVolume(s), 0)
    const claims: readonly (readonly [string, boolean])[] = [
      ['is under 3 mm', isThinGoods(part) || Math.min(...extents) >= 3 - 1e-6],
      ['has a side of no length', Math.min(length, width, thickness) > 0],
      ['has an empty piece', part.solids.every((s) => solidVolume(s) > 0)],
      ['is thicker than wide', thickness <= width + 1e-9],
      ['is larger than its size', volume <= length * width * thickness * (1 + 1e-9)],
      [
        'has a grain not along its length',
        part.grain === 'none' ||
          part.solids.some((s) => s.kind === 'prism') ||
          Math.abs(boxExtent(bounds, part.grain) - length) < 1e-6,
      ],
      ['weighs nothing', volume * materialById(part.material).densityKgPerM3 > 0],
    ]
    return claims.filter(([, holds]) => !holds).map(([words]) => `${part.id} ${words}`)
  })

/** Whether every number anywhere in a value is finite. */
const isFiniteThroughout = (value: unknown): boolean => {
  if (typeof value === 'number') return Number.isFinite(value)
  if (typeof value !== 'object' || value === null) return true
  return Object.values(value).every(isFiniteThroughout)
}

const repeatedIds = ({ parts }: Hive): readonly string[] => {
  const seen = new Set<string>()
  return parts.map(({ id }) => id).filter((id) => seen.size === seen.add(id).size)
}

describe.each([
  { name: 'a hive that a person might draw', hives: arbitraryBuilt(), seed: 101, usual: 600 },
  {
    name: 'a hive at the edges of the ranges',
    hives: arbitraryExtremeBuilt(),
    seed: 102,
    usual: 400,
  },
])('$name', ({ hives, seed, usual }) => {
  it('has no parts that overlap, no joint that does not touch, nothing loose, nothing misshapen', () => {
    fc.assert(
      fc.property(hives, ({ hive }) => {
        expect(overlapsIn(hive.parts, TOUCH_TOLERANCE)).toEqual([])
        expect(looseJoints(hive)).toEqual([])
        expect(unheldParts(hive)).toEqual([])
        expect(badSizes(hive)).toEqual([])
        expect(isFiniteThroughout(hive)).toBe(true)
        expect(repeatedIds(hive)).toEqual([])
      }),
      { numRuns: runs(usual), seed },
    )
  })

  it('comes out the same from the same design', () => {
    fc.assert(
      fc.property(hives, ({ design, hive }) => {
        const again = deriveHive(structuredClone(design))
        expect(again.kind === 'built' && JSON.stringify(again.hive)).toBe(JSON.stringify(hive))
      }),
      { numRuns: runs(usual / 10), seed },
    )
  })
})
