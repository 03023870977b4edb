import { BufferAttribute, BufferGeometry, DynamicDrawUsage, type Material, Mesh } from 'three'
import type { PrismSolid } from '../geometry/solid.ts'
import type { Vec3 } from '../geometry/vector.ts'
import { lookOfPart } from './partLook.ts'
import { applyPose, applyPoseDirection } from './pose.ts'
import type { PosedPart } from './posedPart.ts'
import { prismTriangles } from './prismTriangles.ts'

/** All sloping and tapered solids in one geometry; a hive has few, so they are placed here in full. */
export interface PrismMesh {
  readonly mesh: Mesh
  readonly write: (posed: readonly PosedPart[], tintOf: (id: string) => number) => void
  readonly dispose: () => void
}

const ATTRIBUTES = {
  position: 3,
  normal: 3,
  aLocal: 3,
  aLow: 3,
  aFace: 3,
  aPart: 3,
  aColour: 3,
  aKind: 4,
} as const

export const createPrismMesh = (material: Material): PrismMesh => {
  const mesh = new Mesh(buildGeometry(0), material)
  mesh.frustumCulled = false
  mesh.castShadow = true
  mesh.receiveShadow = true
  return {
    mesh,
    write: (posed, tintOf) => {
      const needed = countVertices(posed)
      const capacity = mesh.geometry.getAttribute('position').count
      if (needed > capacity) {
        mesh.geometry.dispose()
        mesh.geometry = buildGeometry(Math.max(needed, 2 * capacity))
      }
      writeVertices(mesh.geometry, posed, tintOf)
      mesh.visible = needed > 0
    },
    dispose: () => mesh.geometry.dispose(),
  }
}

const buildGeometry = (capacity: number): BufferGeometry => {
  const geometry = new BufferGeometry()
  for (const [name, width] of Object.entries(ATTRIBUTES)) {
    const attribute = new BufferAttribute(new Float32Array(capacity * width), width)
    geometry.setAttribute(name, attribute.setUsage(DynamicDrawUsage))
  }
  return geometry
}

const prismsOf = ({ part, pose }: PosedPart): readonly PrismSolid[] =>
  pose.hidden ? [] : part.solids.filter((s) => s.kind === 'prism')

const countVertices = (posed: readonly PosedPart[]): number =>
  posed
    .flatMap(prismsOf)
    .reduce((n, prism) => n + 3 * (2 * (prism.polygon.length - 2) + 2 * prism.polygon.length), 0)

const writeVertices = (
  geometry: BufferGeometry,
  posed: readonly PosedPart[],
  tintOf: (id: string) => number,
): void => {
  const set3 = (name: keyof typeof ATTRIBUTES, i: number, v: Vec3): void => {
    geometry.getAttribute(name).setXYZ(i, v.x, v.y, v.z)
  }
  let i = 0
  for (const one of posed) {
    const prisms = prismsOf(one)
    if (prisms.length === 0) continue
    const { part, pose, closed: c } = one
    const look = lookOfPart(part)
    const extent = { x: c.x1 - c.x0, y: c.y1 - c.y0, z: c.z1 - c.z0 }
    for (const { corner, normal } of prisms.flatMap(prismTriangles)) {
      set3('position', i, applyPose(pose, corner))
      set3('normal', i, applyPoseDirection(pose, normal))
      set3('aLocal', i, { x: corner.x - c.x0, y: corner.y - c.y0, z: corner.z - c.z0 })
      set3('aLow', i, { x: c.x0, y: c.y0, z: c.z0 })
      set3('aFace', i, normal)
      set3('aPart', i, extent)
      geometry.getAttribute('aColour').setXYZ(i, look.colour.r, look.colour.g, look.colour.b)
      const kind = geometry.getAttribute('aKind')
      kind.setXYZW(i, look.surface, look.grainAxis, look.seed, tintOf(part.id))
      i++
    }
  }
  geometry.setDrawRange(0, i)
  for (const name of Object.keys(ATTRIBUTES)) geometry.getAttribute(name).needsUpdate = true
}
