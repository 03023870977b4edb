import type { FieldAnswer } from '../../../src/solvers/conduction/fieldAnswer.ts'
import type {
  Block,
  Contact,
  Environment,
  MeshSpec,
  Six,
  Triple,
  World,
} from '../../../src/solvers/conduction/world.ts'

/** A block of matter from one corner to the other, m. */
export const solid = (minM: Triple, maxM: Triple, conductivityWPerMK: number): Block => ({
  kind: 'solid',
  minM,
  maxM,
  conductivityWPerMK,
})

export const air = (minM: Triple, maxM: Triple, environment: number): Block => ({
  kind: 'air',
  minM,
  maxM,
  environment,
})

/** Air with the same surface resistance, m²K/W, whichever way a surface faces. */
export const airAt = (temperatureC: number, resistance: number): Environment => ({
  temperatureC,
  surfaceResistanceM2KPerW: [
    resistance,
    resistance,
    resistance,
    resistance,
    resistance,
    resistance,
  ],
})

export const ADIABATIC_SIDES: Six<Contact> = [
  'adiabatic',
  'adiabatic',
  'adiabatic',
  'adiabatic',
  'adiabatic',
  'adiabatic',
]

/** Cold air, environment 0, at the low side of an axis; warm air, environment 1, at the high side. */
export const acrossAxis = (axis: 0 | 1 | 2): Six<Contact> => [
  axis === 0 ? 0 : 'adiabatic',
  axis === 0 ? 1 : 'adiabatic',
  axis === 1 ? 0 : 'adiabatic',
  axis === 1 ? 1 : 'adiabatic',
  axis === 2 ? 0 : 'adiabatic',
  axis === 2 ? 1 : 'adiabatic',
]

/** Cells of one size, m. */
export const evenMesh = (cellM: number, cellsPerGap = 1): MeshSpec => ({
  leastCellM: cellM,
  growth: 1,
  greatestCellM: cellM,
  cellsPerGap,
  mergeM: 1e-6,
})

/** As many cells between two planes, and no more. */
export const cellsBetweenPlanes = (cellsPerGap: number): MeshSpec => evenMesh(1e3, cellsPerGap)

/** A world with everything moved by the same step. */
export const shiftWorld = (world: World, by: Triple): World => ({
  ...world,
  blocks: world.blocks.map((block) => ({
    ...block,
    minM: sum(block.minM, by),
    maxM: sum(block.maxM, by),
  })),
})

/** A world seen in a mirror that stands across an axis, through its origin. */
export const mirrorWorld = (world: World, axis: 0 | 1 | 2): World => {
  const turn = <T>(six: Six<T>): Six<T> => {
    const turned = [...six] as [T, T, T, T, T, T]
    turned[2 * axis] = six[(2 * axis + 1) as 1 | 3 | 5]
    turned[2 * axis + 1] = six[(2 * axis) as 0 | 2 | 4]
    return turned
  }
  return {
    ...world,
    blocks: world.blocks.map((block) => ({
      ...block,
      minM: withPart(block.minM, axis, -block.maxM[axis]),
      maxM: withPart(block.maxM, axis, -block.minM[axis]),
    })),
    environments: world.environments.map((each) => ({
      ...each,
      surfaceResistanceM2KPerW: turn(each.surfaceResistanceM2KPerW),
    })),
    beyond: turn(world.beyond),
  }
}

/**
 * A world that begins at 0 along an axis, together with its image in a mirror there. What faced one
 * way or the other along the axis now all has the surface resistance of the high side.
 */
export const doubleWorld = (world: World, axis: 0 | 1 | 2): World => {
  const alike = <T>(six: Six<T>): Six<T> => {
    const both = [...six] as [T, T, T, T, T, T]
    both[2 * axis] = six[(2 * axis + 1) as 1 | 3 | 5]
    return both
  }
  return {
    ...world,
    blocks: [...world.blocks, ...mirrorWorld(world, axis).blocks],
    environments: world.environments.map((each) => ({
      ...each,
      surfaceResistanceM2KPerW: alike(each.surfaceResistanceM2KPerW),
    })),
    beyond: alike(world.beyond),
  }
}

/** One face of an answer. */
export interface Face {
  readonly centreM: readonly number[]
  readonly areaM2: number
  readonly direction: number
  readonly environment: number
  readonly block: number
  readonly heatW: number
  readonly meanC: number
  readonly leastC: number
}

export const facesOf = ({ faces }: FieldAnswer): readonly Face[] =>
  Array.from({ length: faces.count }, (_, f) => ({
    centreM: [...faces.centreM.slice(3 * f, 3 * f + 3)],
    areaM2: faces.areaM2[f] ?? Number.NaN,
    direction: faces.direction[f] ?? Number.NaN,
    environment: faces.environment[f] ?? Number.NaN,
    block: faces.block[f] ?? Number.NaN,
    heatW: faces.heatW[f] ?? Number.NaN,
    meanC: faces.meanC[f] ?? Number.NaN,
    leastC: faces.leastC[f] ?? Number.NaN,
  }))

const sum = (a: Triple, b: Triple): Triple => [a[0] + b[0], a[1] + b[1], a[2] + b[2]]

const withPart = ([x, y, z]: Triple, axis: 0 | 1 | 2, value: number): Triple => [
  axis === 0 ? value : x,
  axis === 1 ? value : y,
  axis === 2 ? value : z,
]

/** A wall of foam between boards, with posts in it, in which heat also goes sideways. */
export const framedWall: World = {
  blocks: [
    solid([0, 0, 0], [0.1, 0.25, 0.375], 0.036),
    solid([0.02, 0, 0.125], [0.07, 0.25, 0.1875], 0.13),
    solid([0.02, 0, 0], [0.07, 0.03125, 0.375], 0.13),
    solid([0, 0, 0], [0.02, 0.25, 0.375], 0.12),
  ],
  environments: [airAt(-5, 0.04), airAt(20, 0.13)],
  background: 'adiabatic',
  beyond: acrossAxis(0),
}
