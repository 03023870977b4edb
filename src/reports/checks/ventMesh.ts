import type { Box } from '../../geometry/box.ts'
import { solidBounds } from '../../geometry/solid.ts'
import type { Hive } from '../../hive/hive.ts'
import type { Part } from '../../hive/part.ts'
import { assess } from './assess.ts'
import type { Check } from './check.ts'

/** Mesh as thick as this counts as lying on the mouth of its vent, mm. */
const REACH = 2

/** Every vent behind mesh that no bee passes (rule S3); nothing to check without vents. */
export const checkVentMesh = ({
  hive,
}: {
  readonly hive: Pick<Hive, 'openings' | 'parts'>
}): readonly Check[] => {
  const vents = hive.openings.filter(({ kind }) => kind === 'vent')
  if (vents.length === 0) return []
  const meshes = hive.parts.filter(
    ({ group, material }) => group === 'openings' && material === 'steel-mesh',
  )
  const bare = vents.filter(({ tunnel }) => !meshes.some((mesh) => covers(mesh, tunnel)))
  return [
    assess({
      id: 'vent-mesh',
      title: 'Vents without mesh',
      quantity: 'count',
      measured: bare.length,
      band: { high: 0, fixAbove: 0 },
      why: 'Through a vent without mesh of 3 mm or less bees rob and wasps come in.',
      source: 'common practice: mesh of 8 wires to the inch; iyanolaapiculture.org, module 4',
      partIds: meshes.slice(0, 4).map(({ id }) => id),
    }),
  ]
}

const covers = ({ solids }: Part, tunnel: Box): boolean =>
  solids.some((solid) => {
    const b = solidBounds(solid)
    return (
      b.x0 < tunnel.x1 + REACH &&
      tunnel.x0 - REACH < b.x1 &&
      b.y0 < tunnel.y1 + REACH &&
      tunnel.y0 - REACH < b.y1 &&
      b.z0 < tunnel.z1 + REACH &&
      tunnel.z0 - REACH < b.z1
    )
  })
