import { type Box, box } from '../../../geometry/box.ts'
import type { Environment, Six, World } from '../../../solvers/conduction/world.ts'
import { solid } from './heatBlock.ts'
import { INSIDE_AIR, OUTSIDE_AIR, worldOf } from './heatWorld.ts'

/**
 * Hollow: 240 mm across and 870 mm high as a typical nest's, from a trial in which a hollow of these
 * sizes was cut into a living maple (Honey Bee Medicine for the Veterinary Practitioner, 2021, ch. 1);
 * its 39 L lie within the 30 to 60 L of most wild nests (Seeley and Morse 1976). Wall: 150 mm, the mean
 * named for tree hollows beside Mitchell 2016. The wood goes on far enough above and below that 100 mm
 * more change a thousandth.
 */
export const TRUNK = { boreMm: 240, hollowMm: 870, wallMm: 150, beyondMm: 400 }

/**
 * Northern red oak at 25 % moisture, the most that the formula is good for; wood of a living tree is
 * wetter still and conducts more: G (0.1941 + 0.004064 M) + 0.01864 with G = 0.65.
 * Source: Wood Handbook FPL-GTR-190 (2010), eq. 4-15.
 */
export const LIVING_WOOD_W_PER_MK = 0.65 * (0.1941 + 0.004064 * 25) + 0.01864

/** Room in the hollow, L. */
export const hollowVolumeL = (Math.PI * (TRUNK.boreMm / 2) ** 2 * TRUNK.hollowMm) / 1e6

/** The trunk, upright along y, the hollow's floor at y = 0. The cut ends take no heat. */
export const trunkWorld = (): World => {
  const { boreMm, hollowMm, wallMm, beyondMm } = TRUNK
  const source = { partId: undefined, side: undefined }
  const wood = stepDisc(boreMm / 2 + wallMm, [-beyondMm, hollowMm + beyondMm]).map((placeMm) => ({
    placeMm,
    matter: solid(LIVING_WOOD_W_PER_MK),
    ...source,
  }))
  const hollow = stepDisc(boreMm / 2, [0, hollowMm]).map((placeMm) => ({
    placeMm,
    matter: { kind: 'inside-air' } as const,
    ...source,
  }))
  const world = worldOf([...wood, ...hollow])
  const [left, right, , , back, front] = world.beyond
  return {
    ...world,
    environments: [alongRound(OUTSIDE_AIR), alongRound(INSIDE_AIR)],
    beyond: [left, right, 'adiabatic', 'adiabatic', back, front],
  }
}

/** Steps in a quarter of a circle. */
const STEPS = 4

/**
 * A disc as bars that cross its middle, widest last: in each band of x as wide along z as the circle is on
 * average, so that the area is exact.
 */
export const stepDisc = (radius: number, y: readonly [number, number]): readonly Box[] => {
  // Cut at equal angles: the bands grow narrow where the circle turns away.
  const edges = Array.from({ length: STEPS + 1 }, (_, k) =>
    k === STEPS ? radius : radius * Math.sin((k / STEPS) * (Math.PI / 2)),
  )
  return edges.slice(1).map((to, k) => {
    const from = edges[k] ?? 0
    const half = (quarterArea(to, radius) - quarterArea(from, radius)) / (to - from)
    return box([-to, to], y, [-half, half])
  })
}

/** Area under a quarter of a circle, from its middle to x. */
const quarterArea = (x: number, radius: number): number =>
  (x * Math.sqrt(Math.max(0, radius ** 2 - x ** 2)) + radius ** 2 * Math.asin(x / radius)) / 2

/**
 * A stair round a circle is 4/pi times as long as the circle, whatever the steps, so each metre of it may
 * take only pi/4 of the heat.
 */
const alongRound = (air: Environment): Environment => {
  const [left, right, down, up, back, front] = air.surfaceResistanceM2KPerW
  const round = (resistance: number) => (resistance * 4) / Math.PI
  const surfaceResistanceM2KPerW: Six<number> = [
    round(left),
    round(right),
    down,
    up,
    round(back),
    round(front),
  ]
  return { ...air, surfaceResistanceM2KPerW }
}
