import type { World } from '../../../src/solvers/conduction/world.ts'
import { heatFromNode, type Link, solveNetwork } from './naiveNetwork.ts'
import {
  AXES,
  areaOf,
  type Cell,
  type Grid,
  halfResistance,
  type Planes,
  paintCells,
} from './paintCells.ts'

export interface NaiveAnswer {
  /** From the flows of the cells (Thomson) and the field of the corners (Dirichlet), W/K. */
  readonly lowerWPerK: number
  readonly upperWPerK: number
  /** Heat from each environment, by each of the two schemes, W. */
  readonly cellHeatW: readonly number[]
  readonly cornerHeatW: readonly number[]
  /** At the crossings, x fastest; NaN where there is no matter. */
  readonly cornerC: Float64Array
}

/**
 * Steady conduction in the plainest way that the two schemes can be written: a network between the
 * middles of the cells and one between their corners, both solved on the full matrix. For worlds of
 * a few hundred cells whose air does not get warmer upwards.
 */
export const solveNaively = (world: World, planes: Planes): NaiveAnswer => {
  const grid = paintCells(world, planes)
  return { ...solveCells(world, grid), ...solveCorners(world, grid) }
}

/** Every gap of the planes cut into equal parts. */
export const cutFiner = (planes: Planes, parts: number): Planes => {
  const cut = (along: readonly number[]): number[] =>
    along.flatMap((from, i) => {
      const to = along[i + 1]
      if (to === undefined) return [from]
      return Array.from({ length: parts }, (_, n) => from + ((to - from) * n) / parts)
    })
  return [cut(planes[0]), cut(planes[1]), cut(planes[2])]
}

const knownAir = (world: World, first: number): Map<number, number> =>
  new Map(world.environments.map(({ temperatureC }, e) => [first + e, temperatureC]))

/** The difference between the two temperatures of the environments; NaN unless there are two. */
const differenceOf = (world: World): number => {
  const all = [...new Set(world.environments.map((e) => e.temperatureC))]
  return all.length === 2 ? Math.abs((all[0] ?? 0) - (all[1] ?? 0)) : Number.NaN
}

const solveCells = (
  world: World,
  { cells }: Grid,
): Pick<NaiveAnswer, 'lowerWPerK' | 'cellHeatW'> => {
  // Half of each cell's thickness and the film, or the other cell's half, one behind the other.
  const firstAir = Math.max(...cells.keys()) + 1
  const links: Link[] = []
  for (const [from, cell] of cells) {
    cell.sides.forEach((side, s) => {
      const half = halfResistance(cell, s >> 1)
      const area = areaOf(cell, s >> 1)
      if (side.kind === 'air') {
        const to = firstAir + side.environment
        links.push({ from, to, conductanceWPerK: area / (half + side.resistance) })
      }
      const other = side.kind === 'cell' && side.index > from ? cells.get(side.index) : undefined
      if (side.kind === 'cell' && other) {
        const conductanceWPerK = area / (half + halfResistance(other, s >> 1))
        links.push({ from, to: side.index, conductanceWPerK })
      }
    })
  }
  const known = knownAir(world, firstAir)
  const found = solveNetwork(firstAir + world.environments.length, links, known)
  const at = (node: number): number => found[node] ?? Number.NaN

  // Thomson: flows that balance in each cell, straight between opposite faces, never let more pass
  // for what they dissipate than the true ones: twice the heat times its temperature, less that.
  let dissipated = 0
  for (const [node, cell] of cells) {
    const flows = cell.sides.map((side, s) => {
      if (side.kind === 'nothing') return 0
      const half = halfResistance(cell, s >> 1)
      const area = areaOf(cell, s >> 1)
      if (side.kind === 'air') {
        const flow = (at(firstAir + side.environment) - at(node)) / (half + side.resistance)
        dissipated += side.resistance * flow * flow * area
        return flow
      }
      const other = cells.get(side.index)
      return other
        ? (at(side.index) - at(node)) / (half + halfResistance(other, s >> 1))
        : Number.NaN
    })
    const volume = cell.size[0] * cell.size[1] * cell.size[2]
    for (const axis of AXES) {
      const into = flows[2 * axis] ?? 0
      const out = -(flows[2 * axis + 1] ?? 0)
      dissipated += (volume * (into * into + into * out + out * out)) / 3 / cell.conductivity
    }
  }
  const cellHeatW = world.environments.map((_, e) => heatFromNode(firstAir + e, links, found))
  const driven = world.environments.reduce((s, e, n) => s + e.temperatureC * (cellHeatW[n] ?? 0), 0)
  return { cellHeatW, lowerWPerK: (2 * driven - dissipated) / differenceOf(world) ** 2 }
}

const solveCorners = (
  world: World,
  { planes, cells, cornerCount }: Grid,
): Pick<NaiveAnswer, 'upperWPerK' | 'cornerHeatW' | 'cornerC'> => {
  const nx = planes[0].length
  const ny = planes[1].length
  const cornerOf = ({ at: [i, j, k] }: Cell, corner: number): number =>
    (k + (corner >> 2)) * ny * nx + (j + ((corner >> 1) & 1)) * nx + i + (corner & 1)

  // A quarter of each cell's cross-section along each of its edges, a quarter of each film to each
  // corner of its face; a corner without a film in between is as warm as the air.
  const known = knownAir(world, cornerCount)
  const links: Link[] = []
  for (const cell of cells.values()) {
    for (const axis of AXES) {
      const conductanceWPerK = ((areaOf(cell, axis) / 4) * cell.conductivity) / cell.size[axis]
      for (const corner of EIGHT.filter((c) => (c & (1 << axis)) === 0)) {
        const to = cornerOf(cell, corner | (1 << axis))
        links.push({ from: cornerOf(cell, corner), to, conductanceWPerK })
      }
    }
    cell.sides.forEach((side, s) => {
      if (side.kind !== 'air') return
      for (const corner of faceCorners(s)) {
        const from = cornerOf(cell, corner)
        const air = world.environments[side.environment]?.temperatureC ?? Number.NaN
        if (side.resistance === 0) known.set(from, air)
        const conductanceWPerK = areaOf(cell, s >> 1) / 4 / side.resistance
        if (side.resistance > 0)
          links.push({ from, to: cornerCount + side.environment, conductanceWPerK })
      }
    })
  }
  const found = solveNetwork(cornerCount + world.environments.length, links, known)

  // Dirichlet: any field that keeps to the given temperatures dissipates no less than the true one.
  let dissipated = 0
  for (const cell of cells.values()) {
    const at = (corner: number): number => found[cornerOf(cell, corner)] ?? Number.NaN
    const volume = cell.size[0] * cell.size[1] * cell.size[2]
    for (const axis of AXES) {
      const slopes = EIGHT.filter((c) => (c & (1 << axis)) === 0).map(
        (c) => (at(c | (1 << axis)) - at(c)) / cell.size[axis],
      )
      dissipated += volume * cell.conductivity * meanSquare(slopes)
    }
    cell.sides.forEach((side, s) => {
      if (side.kind !== 'air' || side.resistance === 0) return
      const air = world.environments[side.environment]?.temperatureC ?? Number.NaN
      const steps = faceCorners(s).map((c) => at(c) - air)
      dissipated += (areaOf(cell, s >> 1) / side.resistance) * meanSquare(steps)
    })
  }
  const cornerC = found.slice(0, cornerCount)
  const upperWPerK = dissipated / differenceOf(world) ** 2
  return {
    upperWPerK,
    cornerC,
    cornerHeatW: cornerHeat(world, { links, found, cornerCount, known }),
  }
}

/** What each environment gives through its films, and through the corners that it holds. */
const cornerHeat = (
  world: World,
  net: {
    readonly links: readonly Link[]
    readonly found: Float64Array
    readonly cornerCount: number
    readonly known: ReadonlyMap<number, number>
  },
): readonly number[] =>
  world.environments.map(({ temperatureC }, e) => {
    let heat = heatFromNode(net.cornerCount + e, net.links, net.found)
    // Held corners belong to the environment of their temperature: no two are alike in these worlds.
    for (const [node, held] of net.known)
      if (node < net.cornerCount && held === temperatureC)
        heat += heatFromNode(node, net.links, net.found)
    return heat
  })

const EIGHT = [0, 1, 2, 3, 4, 5, 6, 7] as const

/** The four corners of a side, in the order 00, 10, 01, 11 of the other two axes. */
const faceCorners = (side: number): readonly number[] =>
  EIGHT.filter((c) => ((c >> (side >> 1)) & 1) === side % 2)

/** Mean over a rectangle of the square of what is bilinear between four corners 00, 10, 01, 11. */
const meanSquare = ([a = 0, b = 0, c = 0, d = 0]: readonly number[]): number =>
  (a * a + b * b + c * c + d * d + (a * b + b * d + d * c + c * a) + (a * d + b * c) / 2) / 9
