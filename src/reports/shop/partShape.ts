import { boundingBox, boxExtent } from '../../geometry/box.ts'
import { moveSolid } from '../../geometry/moveSolid.ts'
import { type BoxSolid, type Solid, solidBounds } from '../../geometry/solid.ts'
import { solidCorners } from '../../geometry/solidFrame.ts'
import type { Axis } from '../../geometry/vector.ts'
import type { Part } from '../../hive/part.ts'
import { blockGrid, gridKey } from './blockGrid.ts'
import { toHundredths } from './roundSize.ts'
import { ALL_TURNS, AXIS_ORDERS, type Turn } from './turns.ts'

/**
 * A part's shape as text. Two parts have the same `own` exactly when one can be moved and turned onto
 * the other, keeping its grain; the `own` of one is the `mirror` of the other when they are a left
 * and a right hand. Both are empty for a plain box.
 */
export interface PartShape {
  readonly own: string
  readonly mirror: string
}

const BARE: PartShape = { own: '', mirror: '' }

/** What the shape depends on: the piece, and which way its grain and its length lie. */
type Shaped = Pick<Part, 'solids' | 'size' | 'grain'>

/** Finds shapes, remembering the work for equal pieces: all frames' side bars are compared once. */
export const createShapeFinder = (): ((part: Shaped) => PartShape) => {
  const known = new Map<string, PartShape>()
  return (part) => {
    if (part.solids.length === 1 && part.solids[0]?.kind === 'box') return BARE
    const centred = centreSolids(part.solids)
    const key = rawKey(part, centred)
    const before = known.get(key)
    if (before !== undefined) return before
    const shape = findShape(part, centred)
    known.set(key, shape)
    return shape
  }
}

/** Solids moved so that the middle of the box around them is the origin. */
const centreSolids = (solids: readonly Solid[]): readonly Solid[] => {
  const b = boundingBox(solids.map(solidBounds))
  const back = { x: -(b.x0 + b.x1) / 2, y: -(b.y0 + b.y1) / 2, z: -(b.z0 + b.z1) / 2 }
  return solids.map((solid) => moveSolid(solid, back))
}

/** Text that is equal for pieces that differ only in where they stand. */
const rawKey = ({ size, grain }: Shaped, centred: readonly Solid[]): string => {
  let key = `${grain} ${size.length} ${size.width}`
  for (const solid of centred) {
    if (solid.kind === 'box') {
      const b = solid.box
      key += `|${[b.x0, b.x1, b.y0, b.y1, b.z0, b.z1].map(toHundredths).join(' ')}`
    } else {
      const points = solid.polygon.map((p) => `${toHundredths(p.u)} ${toHundredths(p.v)}`)
      key += `|${solid.axis} ${toHundredths(solid.from)} ${points.join(' ')}`
    }
  }
  return key
}

const findShape = (part: Shaped, centred: readonly Solid[]): PartShape => {
  const grid = centred.every(isBox) ? blockGrid(centred.map((solid) => solid.box)) : undefined
  if (grid?.isBare) return BARE
  let own: string | undefined
  let mirror: string | undefined
  for (const turn of allowedTurns(part, centred)) {
    const key = grid === undefined ? cornerKey(centred, turn) : gridKey(grid, turn)
    if (turn.proper) own = own === undefined || key < own ? key : own
    else mirror = mirror === undefined || key < mirror ? key : mirror
  }
  return own === undefined || mirror === undefined ? BARE : { own, mirror }
}

const isBox = (solid: Solid): solid is BoxSolid => solid.kind === 'box'

/** Turns that lay the part's length, width and thickness along the bench and keep its grain. */
const allowedTurns = (part: Shaped, centred: readonly Solid[]): readonly Turn[] => {
  const bounds = boundingBox(centred.map(solidBounds))
  const wanted = [part.size.length, part.size.width, part.size.thickness] as const
  // Of equal sides the one along the grain is the length: a hair decides between them.
  const misfit = (axes: readonly Axis[]): number =>
    axes.reduce(
      (sum, axis, i) => sum + Math.abs(boxExtent(bounds, axis) - (wanted[i] ?? 0)),
      axes[0] === part.grain ? 0 : 1e-6,
    )
  const lying = AXIS_ORDERS.reduce((best, order) => (misfit(order) < misfit(best) ? order : best))
  const grainSlot = slotOf(lying, part.grain)
  return ALL_TURNS.filter(
    ({ axes }) =>
      slotOf(axes, part.grain) === grainSlot &&
      axes.every((axis, i) =>
        sameExtent(boxExtent(bounds, axis), boxExtent(bounds, lying[i] ?? axis)),
      ),
  )
}

const slotOf = (axes: readonly string[], grain: string): number => axes.indexOf(grain)

const sameExtent = (a: number, b: number): boolean => toHundredths(a - b) === 0

/** A shape with slopes: the corners of each convex piece, turned, in a fixed order. */
const cornerKey = (centred: readonly Solid[], { axes, signs }: Turn): string =>
  centred
    .map((solid) =>
      solidCorners(solid)
        .map((corner) =>
          axes.map((axis, i) => toHundredths(corner[axis] * (signs[i] ?? 1))).join(' '),
        )
        .sort()
        .join(','),
    )
    .sort()
    .join('|')
