import { boundingBox } from '../../geometry/box.ts'
import { solidBounds, solidVolume } from '../../geometry/solid.ts'
import type { Hinge } from '../../hive/hive.ts'
import type { Part } from '../../hive/part.ts'
import { partMassKg } from '../shop/partMass.ts'

/** Standard gravity to the precision of the handbooks, m/s². */
export const GRAVITY = 9.81

/**
 * Force that starts a level hinged board, N, at its handle or, without one, at its free edge:
 * mass × g × (hinge to centre of mass) / (hinge to hand). 0 when nothing moves with this hinge.
 * Source: statics of a lever; the board is level, so only distances across the hive count.
 */
export const hingedPullN = (parts: readonly Part[], hinge: Hinge | undefined): number => {
  if (hinge === undefined) return 0
  let massKg = 0
  let turningKgMm = 0
  let edge = 0
  let handle: number | undefined
  for (const part of parts) {
    if (part.motion !== hinge.motion) continue
    const mass = partMassKg(part)
    massKg += mass
    turningKgMm += mass * (middleZ(part) - hinge.point.z)
    const { z0, z1 } = boundingBox(part.solids.map(solidBounds))
    edge = Math.max(edge, Math.abs(z0 - hinge.point.z), Math.abs(z1 - hinge.point.z))
    if (isHandle(part)) handle = Math.abs((z0 + z1) / 2 - hinge.point.z)
  }
  const reach = handle ?? edge
  return massKg === 0 || reach === 0 ? 0 : (GRAVITY * Math.abs(turningKgMm)) / reach
}

const isHandle = ({ group, name }: Part): boolean =>
  group === 'hardware' && name.toLowerCase().includes('handle')

/** Height is no matter here; a wedge counts as the box around it, which a wide board hardly notices. */
const middleZ = (part: Part): number => {
  let volume = 0
  let sum = 0
  for (const solid of part.solids) {
    const { z0, z1 } = solidBounds(solid)
    const share = solidVolume(solid)
    volume += share
    sum += (share * (z0 + z1)) / 2
  }
  return volume === 0 ? 0 : sum / volume
}
