import type { Hive } from '../../../hive/hive.ts'
import type { FieldGrid } from '../../../solvers/conduction/fieldGrid.ts'
import type { Triple } from '../../../solvers/conduction/world.ts'
import { describePlace } from './describePlace.ts'
import type { ColdestPlace } from './heatFieldAnswer.ts'
import type { HiveHeatModel } from './hiveHeatModel.ts'
import type { InsideFace } from './insideFaces.ts'

/**
 * The coldest place of the inner surface more than 40 mm from any opening; of the whole surface if
 * there is no such place. Of places equally cold, such as the four corners of a hive alike on all
 * sides, it names the one furthest to the front, then furthest left.
 */
export const findColdest = (
  hive: Pick<Hive, 'dimensions' | 'openings'>,
  model: Pick<HiveHeatModel, 'sources'>,
  faces: readonly InsideFace[],
  grid: FieldGrid,
): ColdestPlace => {
  const candidates = awayFromOpenings(faces)
  const least = coldestOf(faces)
  const [first, ...others] = candidates.filter((f) => f.leastShare <= least + EQUALLY_COLD)
  if (first === undefined) throw new Error('findColdest: the air inside touches nothing')
  const face = others.reduce((best, f) => (isNamedBefore(f, best) ? f : best), first)
  const pointMm = coldestCorner(grid, face)
  return {
    fRsi: least,
    pointMm,
    partId: model.sources[face.block]?.partId,
    place: describePlace(hive, pointMm, face.side),
  }
}

/** Temperature factor of the coldest corner of these faces, away from openings if any face is. */
export const coldestOf = (faces: readonly InsideFace[]): number =>
  awayFromOpenings(faces).reduce((min, f) => Math.min(min, f.leastShare), Number.POSITIVE_INFINITY)

const awayFromOpenings = (faces: readonly InsideFace[]): readonly InsideFace[] => {
  const away = faces.filter(({ fromOpeningMm }) => fromOpeningMm > WASHED_BY_OPENING)
  return away.length > 0 ? away : faces
}

/** Air from outside washes the surface so near to an opening, mm. */
const WASHED_BY_OPENING = 40
/** As shares: less than a fiftieth of a degree on the coldest night. */
const EQUALLY_COLD = 5e-4

const isNamedBefore = (a: InsideFace, b: InsideFace): boolean => {
  const front = a.centreMm[2] - b.centreMm[2]
  return front === 0 ? a.centreMm[0] < b.centreMm[0] : front > 0
}

/** The corner of a face where the grid is coldest, mm. */
const coldestCorner = (grid: FieldGrid, { centreMm, direction }: InsideFace): Triple => {
  const planes = [grid.xM, grid.yM, grid.zM] as const
  const across = Math.floor(direction / 2)
  const [i, j, k] = planes.map((axis, n) => {
    const value = (centreMm[n] ?? 0) / 1000
    return n === across ? [nearestPlane(axis, value)] : planesRound(axis, value)
  })
  let coldest = centreMm
  let least = Number.POSITIVE_INFINITY
  for (const z of k ?? []) {
    for (const y of j ?? []) {
      for (const x of i ?? []) {
        const at = (z * grid.yM.length + y) * grid.xM.length + x
        const share = grid.temperatureC[at] ?? Number.POSITIVE_INFINITY
        if (share >= least) continue
        least = share
        coldest = [(grid.xM[x] ?? 0) * 1000, (grid.yM[y] ?? 0) * 1000, (grid.zM[z] ?? 0) * 1000]
      }
    }
  }
  return coldest
}

const nearestPlane = (planes: Float64Array, value: number): number =>
  planes.reduce(
    (best, plane, i) =>
      Math.abs(plane - value) < Math.abs((planes[best] ?? 0) - value) ? i : best,
    0,
  )

/** The two planes that a face lies between. */
const planesRound = (planes: Float64Array, value: number): readonly number[] => {
  const above = planes.findIndex((plane) => plane > value)
  if (above < 0) return [Math.max(0, planes.length - 1)]
  return above === 0 ? [0] : [above - 1, above]
}
