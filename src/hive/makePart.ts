import type { Box } from '../geometry/box.ts'
import { boundingBox, boxExtent } from '../geometry/box.ts'
import { boxSolid, type Solid, solidBounds } from '../geometry/solid.ts'
import type { Axis, Vec3 } from '../geometry/vector.ts'
import type { Part } from './part.ts'

const AXES: readonly Axis[] = ['x', 'y', 'z']

/**
 * Finished size of a piece that fills `bounds`: length along the grain if there is grain, else the
 * longest; of the other two the larger is the width.
 */
const sizeAlong = (bounds: Box, grain: Axis | 'none'): Part['size'] => {
  const extents = AXES.map((axis) => ({ axis, mm: boxExtent(bounds, axis) }))
  extents.sort((a, b) => b.mm - a.mm)
  if (grain !== 'none') extents.sort((a, b) => Number(b.axis === grain) - Number(a.axis === grain))
  const [length, width, thickness] = extents.map((e) => e.mm)
  return { length: length ?? 0, width: width ?? 0, thickness: thickness ?? 0 }
}

/** What a builder says of a part; the rest is worked out or has the usual value. */
export interface PartSpec {
  readonly id: string
  readonly name: string
  readonly group: Part['group']
  readonly material: string
  readonly grain: Axis | 'none'
  readonly solids: readonly Solid[] | Box
  readonly fixedTo: readonly string[]
  readonly explode: { readonly direction: Vec3; readonly layer: number }
  readonly step: number
  readonly motion?: Part['motion']
  readonly index?: number
  readonly operations?: Part['operations']
  readonly bought?: boolean
  /** For sloping parts, whose size is not that of the box around them. */
  readonly size?: Part['size']
}

/** Completes a part from what its builder knows. */
export const makePart = (spec: PartSpec): Part => {
  const solids = 'x0' in spec.solids ? [boxSolid(spec.solids)] : spec.solids
  return {
    id: spec.id,
    name: spec.name,
    group: spec.group,
    motion: spec.motion ?? 'fixed',
    ...(spec.index === undefined ? {} : { index: spec.index }),
    material: spec.material,
    size: spec.size ?? sizeAlong(boundingBox(solids.map(solidBounds)), spec.grain),
    grain: spec.grain,
    solids,
    operations: spec.operations ?? [],
    fixedTo: spec.fixedTo,
    explode: spec.explode,
    step: spec.step,
    bought: spec.bought ?? false,
  }
}
