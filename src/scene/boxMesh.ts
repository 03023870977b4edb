import {
  BoxGeometry,
  DynamicDrawUsage,
  InstancedBufferAttribute,
  InstancedMesh,
  type Material,
} from 'three'
import { lookOfPart } from './partLook.ts'
import type { PosedPart } from './posedPart.ts'

/** All box solids of the hive as instances of one unit cube. */
export interface BoxMesh {
  /** Changes when the capacity grows; the old one is freed. */
  readonly mesh: InstancedMesh
  /** Writes sizes, colours and patterns; after a new hive. */
  readonly writeLooks: (posed: readonly PosedPart[]) => void
  /** Writes places only; after a change of the view. */
  readonly writePlaces: (posed: readonly PosedPart[]) => void
  readonly writeTints: (posed: readonly PosedPart[], tintOf: (id: string) => number) => void
  readonly dispose: () => void
}

/** `replace` is told of a mesh that takes the place of another in the scene. */
export const createBoxMesh = (
  material: Material,
  replace: (next: InstancedMesh, previous: InstancedMesh | undefined) => void,
): BoxMesh => {
  let mesh = buildMesh(256, material)
  replace(mesh, undefined)
  const grow = (needed: number): void => {
    const capacity = mesh.instanceMatrix.count
    if (needed <= capacity) return
    const previous = mesh
    mesh = buildMesh(Math.max(needed, 2 * capacity), material)
    replace(mesh, previous)
    freeMesh(previous)
  }
  return {
    get mesh() {
      return mesh
    },
    writeLooks: (posed) => {
      grow(countBoxes(posed))
      writeLooks(mesh, posed)
    },
    writePlaces: (posed) => writePlaces(mesh, posed),
    writeTints: (posed, tintOf) => writeTints(mesh, posed, tintOf),
    dispose: () => freeMesh(mesh),
  }
}

const ATTRIBUTES = { aOrigin: 3, aSize: 3, aLow: 3, aPart: 3, aColour: 3, aKind: 4 } as const

const buildMesh = (capacity: number, material: Material): InstancedMesh => {
  const geometry = new BoxGeometry(1, 1, 1)
  geometry.deleteAttribute('uv')
  for (const [name, width] of Object.entries(ATTRIBUTES)) {
    geometry.setAttribute(
      name,
      new InstancedBufferAttribute(new Float32Array(capacity * width), width),
    )
  }
  const mesh = new InstancedMesh(geometry, material, capacity)
  mesh.instanceMatrix.setUsage(DynamicDrawUsage)
  mesh.frustumCulled = false
  mesh.castShadow = true
  mesh.receiveShadow = true
  mesh.count = 0
  return mesh
}

const freeMesh = (mesh: InstancedMesh): void => {
  mesh.geometry.dispose()
  mesh.dispose()
}

const countBoxes = (posed: readonly PosedPart[]): number =>
  posed.reduce((n, { part }) => n + part.solids.filter((s) => s.kind === 'box').length, 0)

const writeLooks = (mesh: InstancedMesh, posed: readonly PosedPart[]): void => {
  const origin = mesh.geometry.getAttribute('aOrigin')
  const size = mesh.geometry.getAttribute('aSize')
  const low = mesh.geometry.getAttribute('aLow')
  const extent = mesh.geometry.getAttribute('aPart')
  const colour = mesh.geometry.getAttribute('aColour')
  const kind = mesh.geometry.getAttribute('aKind')
  let i = 0
  for (const { part, closed: c } of posed) {
    const look = lookOfPart(part)
    for (const solid of part.solids) {
      if (solid.kind !== 'box') continue
      const b = solid.box
      origin.setXYZ(i, b.x0 - c.x0, b.y0 - c.y0, b.z0 - c.z0)
      size.setXYZ(i, b.x1 - b.x0, b.y1 - b.y0, b.z1 - b.z0)
      low.setXYZ(i, c.x0, c.y0, c.z0)
      extent.setXYZ(i, c.x1 - c.x0, c.y1 - c.y0, c.z1 - c.z0)
      colour.setXYZ(i, look.colour.r, look.colour.g, look.colour.b)
      kind.setXYZW(i, look.surface, look.grainAxis, look.seed, 0)
      i++
    }
  }
  mesh.count = i
  for (const name of Object.keys(ATTRIBUTES)) mesh.geometry.getAttribute(name).needsUpdate = true
}

/** Column-major matrices: scale to the box, turn about x, move. A hidden part is scaled to nothing. */
const writePlaces = (mesh: InstancedMesh, posed: readonly PosedPart[]): void => {
  const m = mesh.instanceMatrix.array
  let o = 0
  for (const { part, pose } of posed) {
    const t = pose.translation
    const angle = pose.turn?.angleRad ?? 0
    const [c, s] = [Math.cos(angle), Math.sin(angle)]
    const py = pose.turn?.pivot.y ?? 0
    const pz = pose.turn?.pivot.z ?? 0
    const shown = pose.hidden ? 0 : 1
    for (const solid of part.solids) {
      if (solid.kind !== 'box') continue
      const b = solid.box
      const [sx, sy, sz] = [(b.x1 - b.x0) * shown, (b.y1 - b.y0) * shown, (b.z1 - b.z0) * shown]
      const y = (b.y0 + b.y1) / 2 - py
      const z = (b.z0 + b.z1) / 2 - pz
      m[o] = sx
      m[o + 1] = m[o + 2] = m[o + 3] = m[o + 4] = 0
      m[o + 5] = c * sy
      m[o + 6] = s * sy
      m[o + 7] = m[o + 8] = 0
      m[o + 9] = -s * sz
      m[o + 10] = c * sz
      m[o + 11] = 0
      m[o + 12] = (b.x0 + b.x1) / 2 + t.x
      m[o + 13] = py + c * y - s * z + t.y
      m[o + 14] = pz + s * y + c * z + t.z
      m[o + 15] = 1
      o += 16
    }
  }
  mesh.instanceMatrix.needsUpdate = true
}

const writeTints = (
  mesh: InstancedMesh,
  posed: readonly PosedPart[],
  tintOf: (id: string) => number,
): void => {
  const kind = mesh.geometry.getAttribute('aKind')
  let i = 0
  for (const { part } of posed) {
    const tint = tintOf(part.id)
    for (const solid of part.solids) if (solid.kind === 'box') kind.setW(i++, tint)
  }
  kind.needsUpdate = true
}
