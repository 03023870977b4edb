import { DirectionalLight, Group, HemisphereLight, Matrix4, Vector3 } from 'three'
import type { Box } from '../geometry/box.ts'

/** A wide pale sky and one sun from the upper left front, as draughtsmen put it. */
export interface Lights {
  readonly root: Group
  /** Fits the shadow to the model and its shadow on the ground, and asks for one new shadow map. */
  readonly fit: (bounds: Box, groundY: number) => void
  readonly setCast: (isCast: boolean) => void
  readonly dispose: () => void
}

/** From the hive towards the sun. */
const SUN = new Vector3(-0.48, 1, 0.78).normalize()
const SHADOW_PIXELS = 2048

export const createLights = (): Lights => {
  const sky = new HemisphereLight('#fbfcff', '#d9cdb8', 2.15)
  const sun = new DirectionalLight('#fff6e8', 1.7)
  sun.shadow.autoUpdate = false
  sun.shadow.mapSize.set(SHADOW_PIXELS, SHADOW_PIXELS)
  sun.shadow.radius = 3
  sun.shadow.intensity = 0.82
  const root = new Group()
  root.add(sky, sun, sun.target)
  return {
    root,
    fit: (bounds, groundY) => {
      fitSun(sun, bounds, groundY)
      sun.shadow.needsUpdate = true
    },
    setCast: (isCast) => {
      sun.castShadow = isCast
      sun.shadow.needsUpdate = isCast
    },
    dispose: () => {
      sky.dispose()
      sun.dispose()
    },
  }
}

const corner = new Vector3()
const toLight = new Matrix4()

const fitSun = (sun: DirectionalLight, b: Box, groundY: number): void => {
  const centre = corner.set((b.x0 + b.x1) / 2, (b.y0 + b.y1) / 2, (b.z0 + b.z1) / 2)
  sun.target.position.copy(centre)
  const reach = Math.hypot(b.x1 - b.x0, b.y1 - groundY, b.z1 - b.z0)
  sun.position.copy(centre).addScaledVector(SUN, reach)
  sun.target.updateMatrixWorld()
  sun.updateMatrixWorld()
  toLight.lookAt(sun.position, sun.target.position, sun.up)
  toLight.setPosition(sun.position).invert()
  const camera = sun.shadow.camera
  const box = { left: Infinity, right: -Infinity, bottom: Infinity, top: -Infinity, far: 0 }
  for (let i = 0; i < 8; i++) {
    corner.set(i & 1 ? b.x1 : b.x0, i & 2 ? b.y1 : groundY, i & 4 ? b.z1 : b.z0)
    corner.applyMatrix4(toLight)
    box.left = Math.min(box.left, corner.x)
    box.right = Math.max(box.right, corner.x)
    box.bottom = Math.min(box.bottom, corner.y)
    box.top = Math.max(box.top, corner.y)
    box.far = Math.max(box.far, -corner.z)
  }
  // A shadow on the ground lies along the sun's ray, so it needs depth but no more width.
  const margin = 0.03 * reach
  camera.left = box.left - margin
  camera.right = box.right + margin
  camera.bottom = box.bottom - margin
  camera.top = box.top + margin
  camera.near = 1
  camera.far = box.far + 2 * reach
  camera.updateProjectionMatrix()
  // About one and a half texels, so that faces don't shade themselves.
  const texel = Math.max(camera.right - camera.left, camera.top - camera.bottom) / SHADOW_PIXELS
  sun.shadow.normalBias = 1.5 * texel
  sun.shadow.bias = -0.0004
}
