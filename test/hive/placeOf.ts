import { expect } from 'vitest'
import type { Design } from '../../src/design/schema.ts'
import { applyChanges, type FieldValue } from '../../src/design/setField.ts'
import { boundingBox } from '../../src/geometry/box.ts'
import { solidBounds } from '../../src/geometry/solid.ts'
import { deriveHive } from '../../src/hive/deriveHive.ts'
import type { Hive } from '../../src/hive/hive.ts'
import type { Part } from '../../src/hive/part.ts'

/** The hive of a design that can be built; throws the first refusal otherwise. */
export const buildHive = (design: Design): Hive => {
  const result = deriveHive(design)
  if (result.kind === 'refused') throw new Error(result.refusals[0]?.message)
  return result.hive
}

/** A design with some fields set by their paths. */
export const withFields = (design: Design, values: Readonly<Record<string, FieldValue>>): Design =>
  applyChanges(
    design,
    Object.entries(values).map(([field, value]) => ({ field, value })),
  )

export const partOf = ({ parts }: Hive, id: string): Part => {
  const part = parts.find((p) => p.id === id)
  if (part === undefined) throw new Error(`no part called ${id}`)
  return part
}

/** Numbers that are right to a micrometre. */
export const near = (values: readonly number[]) => values.map((value) => expect.closeTo(value, 3))

/** Where a part lies: x from, x to, y from, y to, z from, z to; of the box around it. */
export const placeOf = (hive: Hive, id: string): readonly number[] => {
  const b = boundingBox(partOf(hive, id).solids.map(solidBounds))
  return [b.x0, b.x1, b.y0, b.y1, b.z0, b.z1]
}
