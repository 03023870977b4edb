import { facePlanes, type Planes } from './layPlanes.ts'
import { type Grid, MATTER, paintGrid } from './paintGrid.ts'
import type { Block, Contact, Six, Triple, World } from './world.ts'

type Axis = 0 | 1 | 2

/** A world cut down to one of its equal parts, and what is needed to make it whole again. */
export interface MirroredWorld {
  /** The part at the low side of each mirror plane. Blocks keep their places in the list. */
  readonly part: World
  /** The planes of symmetry, each across one axis; none if there are none. */
  readonly mirrors: readonly { readonly axis: Axis; readonly atM: number }[]
  /** The whole world on nothing but the planes of its faces. */
  readonly whole: Grid
}

/** Planes that lie nearer than this to the mirror image of another are its image, m. */
const SAME_M = 1e-6

/**
 * Finds the planes about which a world is the same on both sides, and keeps one side of each. With
 * `mayMirror` false, keeps the whole world.
 */
export const mirrorWorld = (world: World, mergeM: number, mayMirror: boolean): MirroredWorld => {
  const planes = facePlanes(world, mergeM)
  const whole = paintGrid(world, planes)
  const mirrors = ([0, 1, 2] as const)
    .filter(
      (axis) =>
        mayMirror && isEven(world, axis) && arePlanesEven(planes, axis) && isSame(whole, axis),
    )
    .map((axis) => {
      const p = planes[axis]
      return { axis, atM: ((p[0] ?? 0) + (p[p.length - 1] ?? 0)) / 2 }
    })
  const part = mirrors.reduce((rest, { axis, atM }) => keepLowSide(rest, axis, atM), world)
  return { part, mirrors, whole }
}

/** Whether air and films are the same on both sides. */
const isEven = ({ environments, beyond }: World, axis: Axis): boolean =>
  beyond[2 * axis] === beyond[2 * axis + 1] &&
  environments.every(
    ({ riseKPerM = 0, surfaceResistanceM2KPerW: rs }) =>
      rs[2 * axis] === rs[2 * axis + 1] && (axis !== 1 || riseKPerM === 0),
  )

const arePlanesEven = (planes: Planes, axis: Axis): boolean => {
  const p = planes[axis]
  const sum = (p[0] ?? 0) + (p[p.length - 1] ?? 0)
  return p.every((at, i) => Math.abs(sum - at - (p[p.length - 1 - i] ?? 0)) < SAME_M)
}

/** Whether every cell is of the same matter or air as its image. */
const isSame = ({ cells, code, contact, conductivityWPerMK }: Grid, axis: Axis): boolean => {
  const [nx, ny, nz] = cells
  const row = nx + 2
  const slab = row * (ny + 2)
  const last = cells[axis] - 1
  const step = axis === 0 ? 1 : axis === 1 ? row : slab
  for (let k = 0; k < nz; k++) {
    for (let j = 0; j < ny; j++) {
      for (let i = 0; i < nx; i++) {
        const along = axis === 0 ? i : axis === 1 ? j : k
        if (2 * along >= last) continue
        const at = (k + 1) * slab + (j + 1) * row + i + 1
        const a = code[at] ?? 0
        const b = code[at + (last - 2 * along) * step] ?? 0
        if (a === b) continue
        if (contact[a] !== contact[b]) return false
        if (contact[a] === MATTER && conductivityWPerMK[a] !== conductivityWPerMK[b]) return false
      }
    }
  }
  return true
}

const keepLowSide = (world: World, axis: Axis, atM: number): World => {
  const cut = (place: Triple): Triple => {
    const [x, y, z] = place
    return [
      axis === 0 ? Math.min(x, atM) : x,
      axis === 1 ? Math.min(y, atM) : y,
      axis === 2 ? Math.min(z, atM) : z,
    ]
  }
  const beyond: Contact[] = [...world.beyond]
  beyond[2 * axis + 1] = 'adiabatic'
  return {
    ...world,
    // A block on the other side becomes flat, and so marks where the part ends.
    blocks: world.blocks.map((b): Block => ({ ...b, minM: cut(b.minM), maxM: cut(b.maxM) })),
    beyond: sixOf(beyond),
  }
}

const sixOf = (list: readonly Contact[]): Six<Contact> => {
  const [a, b, c, d, e, f] = list
  if (a === undefined || b === undefined || c === undefined) throw new Error('sixOf: too short')
  if (d === undefined || e === undefined || f === undefined) throw new Error('sixOf: too short')
  return [a, b, c, d, e, f]
}
