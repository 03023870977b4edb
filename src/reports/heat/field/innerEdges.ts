import { type Box, box } from '../../../geometry/box.ts'
import type { HiveDimensions } from '../../../hive/dimensions.ts'
import type { Hive, Opening } from '../../../hive/hive.ts'
import type { Triple } from '../../../solvers/conduction/world.ts'
import { distanceToBox } from './distanceToBox.ts'
import type { EdgeLoss } from './heatFieldAnswer.ts'

/** One kind of edge inside the hive. */
export interface EdgeKind {
  readonly id: EdgeLoss['id']
  readonly name: string
  /** All edges of this kind together, m. */
  readonly lengthM: number
  /** Where they run, as boxes without thickness; the openings' tunnels for entrances. mm. */
  readonly lines: readonly Box[]
}

/** The kinds of edges that a hive has, measured inside; entrances only if there is an opening. */
export const deriveEdgeKinds = ({
  dimensions: d,
  openings,
}: Pick<Hive, 'dimensions' | 'openings'>): readonly EdgeKind[] => {
  const height = d.coverLedgeHeight
  const around = (2 * (d.cavityLength + d.cavityWidth)) / 1000
  const edges: readonly EdgeKind[] = [
    {
      id: 'corners',
      name: 'Upright corners',
      lengthM: (4 * height) / 1000,
      lines: uprights(d, height),
    },
    {
      id: 'wall-lid',
      name: 'Where walls and lid meet',
      lengthM: around,
      lines: outlineAt(d, height),
    },
    {
      id: 'wall-floor',
      name: 'Where walls and floor meet',
      lengthM: around,
      lines: outlineAt(d, 0),
    },
  ]
  if (openings.length === 0) return edges
  const rims = openings.map(rimLength).reduce((sum, length) => sum + length, 0)
  return [
    ...edges,
    {
      id: 'entrances',
      name: 'Round the entrances and vents',
      lengthM: rims / 1000,
      lines: openings.map(({ tunnel }) => tunnel),
    },
  ]
}

/** Heat through a face as near to an opening as this is put down to the opening, mm. */
const OPENING_REACH = 60

/** The kind of edge nearest to a point, mm; near an opening it is always the opening. */
export const nearestEdgeKind = (kinds: readonly EdgeKind[], point: Triple): EdgeKind['id'] => {
  let nearest: EdgeKind['id'] = 'corners'
  let least = Number.POSITIVE_INFINITY
  for (const { id, lines } of kinds) {
    for (const line of lines) {
      const distance = distanceToBox(point, line)
      if (id === 'entrances' && distance <= OPENING_REACH) return id
      if (id === 'entrances' || distance >= least) continue
      nearest = id
      least = distance
    }
  }
  return nearest
}

const uprights = (d: HiveDimensions, height: number): readonly Box[] => {
  const half = d.cavityWidth / 2
  return [0, d.cavityLength].flatMap((x) =>
    [-half, half].map((z) => box([x, x], [0, height], [z, z])),
  )
}

const outlineAt = (d: HiveDimensions, y: number): readonly Box[] => {
  const half = d.cavityWidth / 2
  const length = d.cavityLength
  return [
    box([0, length], [y, y], [-half, -half]),
    box([0, length], [y, y], [half, half]),
    box([0, 0], [y, y], [-half, half]),
    box([length, length], [y, y], [-half, half]),
  ]
}

/** Round the clear opening; a row of holes counts as squares of the same area, mm. */
const rimLength = ({ wall, tunnel, holes, area }: Opening): number => {
  if (holes > 1) return holes * 4 * Math.sqrt(area / holes)
  const width = wall === 'left' || wall === 'right' ? tunnel.z1 - tunnel.z0 : tunnel.x1 - tunnel.x0
  return 2 * (width + tunnel.y1 - tunnel.y0)
}
