import type { Box } from '../../../geometry/box.ts'
import type { Axis } from '../../../geometry/vector.ts'
import { type HeatBlock, spanOf, withSpan } from './heatBlock.ts'

/**
 * The same blocks with planes that nearly meet made one. Firm faces within 0.6 mm of each other become
 * one; a face of a loose block goes to a firm one within 1.5 mm. Blocks that lose all their thickness are
 * left out. Blocks that touched still touch, since every face at a place moves alike or to a plane
 * between it and the next.
 */
export const snapPlanes = (blocks: readonly HeatBlock[]): readonly HeatBlock[] => {
  const byAxis = AXES.map((axis) => [axis, planesOf(blocks, axis)] as const)
  return blocks.flatMap((block) => {
    let placeMm: Box = block.placeMm
    for (const [axis, planes] of byAxis) {
      const [from, to] = spanOf(placeMm, axis).map((v) => planes.get(v) ?? v)
      if (from === undefined || to === undefined || from >= to) return []
      placeMm = withSpan(placeMm, axis, from, to)
    }
    return [{ ...block, placeMm }]
  })
}

const AXES: readonly Axis[] = ['x', 'y', 'z']
/** A little over the half millimetre within which the solver takes planes together anyway. */
const FIRM_MM = 0.6
const LOOSE_MM = 1.5

/** Where each face goes. */
const planesOf = (blocks: readonly HeatBlock[], axis: Axis): ReadonlyMap<number, number> => {
  const faces = (isLoose: boolean): readonly number[] => [
    ...new Set(
      blocks
        .filter((block) => (block.isLoose ?? false) === isLoose)
        .flatMap(({ placeMm }) => spanOf(placeMm, axis)),
    ),
  ]
  const planes = joinNear(faces(false))
  const firm = [...new Set(planes.values())].sort((a, b) => a - b)
  const free: number[] = []
  for (const value of faces(true)) {
    if (planes.has(value)) continue
    const near = nearest(firm, value)
    if (near !== undefined && Math.abs(near - value) <= LOOSE_MM) planes.set(value, near)
    else free.push(value)
  }
  for (const [from, to] of joinNear(free)) planes.set(from, to)
  return planes
}

/** Each value, and the first of those that lie with it within `FIRM_MM`. */
const joinNear = (values: readonly number[]): Map<number, number> => {
  const joined = new Map<number, number>()
  let first = Number.NEGATIVE_INFINITY
  for (const value of values.toSorted((a, b) => a - b)) {
    if (value - first > FIRM_MM) first = value
    joined.set(value, first)
  }
  return joined
}

const nearest = (values: readonly number[], wanted: number): number | undefined =>
  values.reduce<number | undefined>(
    (best, v) => (best === undefined || Math.abs(v - wanted) < Math.abs(best - wanted) ? v : best),
    undefined,
  )
