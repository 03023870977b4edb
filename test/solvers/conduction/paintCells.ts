import type { Contact, World } from '../../../src/solvers/conduction/world.ts'

/** Planes along x, y and z. */
export type Planes = readonly [readonly number[], readonly number[], readonly number[]]

type Content = { readonly conductivity: number } | { readonly contact: Contact }
type Index = readonly [number, number, number]

export interface Cell {
  readonly at: Index
  readonly size: readonly [number, number, number]
  readonly conductivity: number
  /** What touches each of the six sides: another cell of matter, or an environment, or nothing. */
  readonly sides: readonly Side[]
}
type Side =
  | { readonly kind: 'cell'; readonly index: number }
  | { readonly kind: 'air'; readonly environment: number; readonly resistance: number }
  | { readonly kind: 'nothing' }

export interface Grid {
  readonly planes: Planes
  readonly cells: ReadonlyMap<number, Cell>
  readonly cornerCount: number
}

export const AXES = [0, 1, 2] as const

/** What the space between the planes holds: the later block where several reach. */
export const paintCells = (world: World, planes: Planes): Grid => {
  const count = planes.map((along) => along.length - 1)
  const [nx = 0, ny = 0, nz = 0] = count
  const indexOf = ([i, j, k]: Index): number => (k * ny + j) * nx + i

  const contentAt = (at: Index): Content => {
    for (const axis of AXES) {
      if (at[axis] < 0) return { contact: world.beyond[2 * axis] ?? 'adiabatic' }
      if (at[axis] >= (count[axis] ?? 0))
        return { contact: world.beyond[2 * axis + 1] ?? 'adiabatic' }
    }
    const middle = AXES.map((a) => (plane(planes, a, at[a]) + plane(planes, a, at[a] + 1)) / 2)
    const block = world.blocks.findLast(({ minM, maxM }) =>
      AXES.every((a) => minM[a] < (middle[a] ?? 0) && (middle[a] ?? 0) < maxM[a]),
    )
    if (!block) return { contact: world.background }
    if (block.kind === 'air') return { contact: block.environment }
    return { conductivity: block.conductivityWPerMK }
  }

  const sideOf = (at: Index, side: number): Side => {
    const axis = side >> 1
    const step = side % 2 === 0 ? -1 : 1
    const [i, j, k] = at
    const next: Index = [
      i + (axis === 0 ? step : 0),
      j + (axis === 1 ? step : 0),
      k + (axis === 2 ? step : 0),
    ]
    const there = contentAt(next)
    if ('conductivity' in there) return { kind: 'cell', index: indexOf(next) }
    if (there.contact === 'adiabatic') return { kind: 'nothing' }
    const resistance = world.environments[there.contact]?.surfaceResistanceM2KPerW[side]
    return { kind: 'air', environment: there.contact, resistance: resistance ?? Number.NaN }
  }

  const cells = new Map<number, Cell>()
  for (let k = 0; k < nz; k++)
    for (let j = 0; j < ny; j++)
      for (let i = 0; i < nx; i++) {
        const at: Index = [i, j, k]
        const content = contentAt(at)
        if (!('conductivity' in content)) continue
        const width = (axis: 0 | 1 | 2): number =>
          plane(planes, axis, at[axis] + 1) - plane(planes, axis, at[axis])
        cells.set(indexOf(at), {
          at,
          size: [width(0), width(1), width(2)],
          conductivity: content.conductivity,
          sides: [0, 1, 2, 3, 4, 5].map((side) => sideOf(at, side)),
        })
      }
  return { planes, cells, cornerCount: (nx + 1) * (ny + 1) * (nz + 1) }
}

const plane = (planes: Planes, axis: 0 | 1 | 2, n: number): number => planes[axis][n] ?? Number.NaN

export const areaOf = ({ size }: Cell, axis: number): number => {
  const [x, y, z] = size
  return axis === 0 ? y * z : axis === 1 ? x * z : x * y
}

export const halfResistance = ({ size, conductivity }: Cell, axis: number): number =>
  (size[axis as 0 | 1 | 2] ?? Number.NaN) / 2 / conductivity
