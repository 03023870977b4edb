import { type PerspectiveCamera, Spherical, Vector3 } from 'three'
import { OrbitControls } from 'three/addons/controls/OrbitControls.js'
import type { Box } from '../geometry/box.ts'
import type { Vec3 } from '../geometry/vector.ts'
import type { CameraPreset } from '../store/viewStore.ts'
import { PRESET_DIRECTIONS } from './cameraPresets.ts'
import { type CameraPlace, fitCamera } from './fitCamera.ts'

/** The person's eye: orbit by hand and by keys, glides to presets, always fitted to the model. */
export interface Orbit {
  /** Goes to a preset: at once the first time or when motion is unwelcome, else in a short glide. */
  readonly look: (preset: CameraPreset) => void
  /** Follows a model that has grown or shrunk, unless the person chose a distance. */
  readonly follow: (how: 'always' | 'when-outside') => void
  /** From what is looked at towards the eye. */
  readonly towardsEye: () => Vec3
  /** One step of a held key; false when the key means nothing here. */
  readonly pressKey: (key: string) => boolean
  /** Moves what is in motion; true while something is. Call before each frame. */
  readonly advance: () => boolean
  readonly setTouch: (touch: 'orbit' | 'page-scrolls') => void
  readonly dispose: () => void
}

export interface OrbitSource {
  readonly camera: PerspectiveCamera
  readonly element: HTMLElement
  readonly corners: () => readonly Vec3[]
  readonly bounds: () => Box
  /** Told where the eye is going, before the model is measured for it. */
  readonly face: (towardsEye: Vec3) => void
  readonly isStill: () => boolean
  readonly invalidate: () => void
}

const GLIDE_MS = 350
const MARGIN = 0.07
const KEY_TURN = Math.PI / 30
const KEY_ZOOM = 1.12

interface KeyStep {
  /** Radians round the hive and over it. */
  readonly turn?: number
  readonly tilt?: number
  /** Factor on the distance. */
  readonly zoom?: number
}

const KEY_STEPS: ReadonlyMap<string, KeyStep> = new Map([
  ['ArrowLeft', { turn: -KEY_TURN }],
  ['ArrowRight', { turn: KEY_TURN }],
  ['ArrowUp', { tilt: -KEY_TURN }],
  ['ArrowDown', { tilt: KEY_TURN }],
  ['+', { zoom: 1 / KEY_ZOOM }],
  ['=', { zoom: 1 / KEY_ZOOM }],
  ['-', { zoom: KEY_ZOOM }],
])

export const createOrbit = (source: OrbitSource): Orbit => {
  const { camera, element, invalidate } = source
  const controls = new OrbitControls(camera, element)
  controls.enableDamping = !source.isStill()
  controls.dampingFactor = 0.12
  controls.zoomToCursor = true
  controls.minDistance = 150
  let glide: Glide | undefined
  // A person who has zoomed or panned keeps that place until a preset is asked for.
  let isChosen = false
  let before = { distance: 0, target: new Vector3() }
  const distance = () => camera.position.distanceTo(controls.target)

  controls.addEventListener('change', invalidate)
  controls.addEventListener('start', () => {
    glide = undefined
    before = { distance: distance(), target: controls.target.clone() }
  })
  controls.addEventListener('end', () => {
    const zoomed = Math.abs(distance() / before.distance - 1) > 0.005
    if (zoomed || controls.target.distanceTo(before.target) > 1) isChosen = true
  })

  const fitFrom = (direction: Vec3): CameraPlace | undefined => {
    const corners = source.corners()
    if (corners.length === 0 || camera.aspect <= 0) return undefined
    return fitCamera(corners, {
      direction,
      fovDeg: camera.fov,
      aspect: camera.aspect,
      margin: MARGIN,
    })
  }
  const jump = (place: CameraPlace): void => {
    controls.target.set(place.target.x, place.target.y, place.target.z)
    camera.position.set(place.eye.x, place.eye.y, place.eye.z)
    controls.maxDistance = Math.max(4 * distance(), controls.minDistance * 2)
    controls.update()
    invalidate()
  }
  const step = ({ turn = 0, tilt = 0, zoom = 1 }: KeyStep): void => {
    glide = undefined
    if (zoom !== 1) isChosen = true
    offset.setFromVector3(scratch.subVectors(camera.position, controls.target))
    offset.theta += turn
    offset.phi = clamp(offset.phi + tilt, 0.01, Math.PI - 0.01)
    offset.radius = clamp(offset.radius * zoom, controls.minDistance, controls.maxDistance)
    camera.position.setFromSpherical(offset).add(controls.target)
    controls.update()
    invalidate()
  }
  let isFirst = true

  return {
    look: (preset) => {
      source.face(PRESET_DIRECTIONS[preset])
      const place = fitFrom(PRESET_DIRECTIONS[preset])
      if (place === undefined) return
      isChosen = false
      if (isFirst || source.isStill()) jump(place)
      else glide = startGlide(camera.position, controls.target, place)
      isFirst = false
      invalidate()
    },
    follow: (how) => {
      if (isChosen || isFirst || glide !== undefined) return
      const place = fitFrom(scratch.subVectors(camera.position, controls.target))
      if (place === undefined) return
      const isOutside = eyeDistance(place) > distance() * 1.02
      if (how === 'always' || isOutside) jump(place)
    },
    towardsEye: () => new Vector3().subVectors(camera.position, controls.target),
    pressKey: (key) => {
      const known = KEY_STEPS.get(key)
      if (known !== undefined) step(known)
      return known !== undefined
    },
    advance: () => {
      if (glide !== undefined) {
        const share = Math.min(1, (performance.now() - glide.startMs) / GLIDE_MS)
        jump(glideAt(glide, share))
        if (share >= 1) glide = undefined
      } else controls.update()
      tightenDepth(camera, source.bounds())
      return glide !== undefined
    },
    setTouch: (touch) => {
      element.style.touchAction = touch === 'orbit' ? 'none' : 'pan-y'
    },
    dispose: () => controls.dispose(),
  }
}

const offset = new Spherical()
const scratch = new Vector3()
const clamp = (v: number, lo: number, hi: number): number => Math.min(hi, Math.max(lo, v))

const eyeDistance = ({ eye, target }: CameraPlace): number =>
  Math.hypot(eye.x - target.x, eye.y - target.y, eye.z - target.z)

interface Glide {
  readonly startMs: number
  readonly fromTarget: Vector3
  readonly toTarget: Vector3
  readonly from: Spherical
  readonly to: Spherical
}

const startGlide = (eye: Vector3, target: Vector3, place: CameraPlace): Glide => {
  const toTarget = new Vector3(place.target.x, place.target.y, place.target.z)
  const toEye = new Vector3(place.eye.x, place.eye.y, place.eye.z)
  const from = new Spherical().setFromVector3(new Vector3().subVectors(eye, target))
  const to = new Spherical().setFromVector3(toEye.sub(toTarget))
  // The short way round.
  while (to.theta - from.theta > Math.PI) to.theta -= 2 * Math.PI
  while (to.theta - from.theta < -Math.PI) to.theta += 2 * Math.PI
  return { startMs: performance.now(), fromTarget: target.clone(), toTarget, from, to }
}

const glideAt = (glide: Glide, share: number): CameraPlace => {
  const s = share < 0.5 ? 4 * share ** 3 : 1 - (2 - 2 * share) ** 3 / 2
  const mix = (a: number, b: number): number => a + s * (b - a)
  const target = glide.fromTarget.clone().lerp(glide.toTarget, s)
  const eye = new Vector3()
    .setFromSphericalCoords(
      mix(glide.from.radius, glide.to.radius),
      mix(glide.from.phi, glide.to.phi),
      mix(glide.from.theta, glide.to.theta),
    )
    .add(target)
  return { eye, target }
}

/** Near and far planes close round the model, for the finest depth. */
const tightenDepth = (camera: PerspectiveCamera, b: Box): void => {
  scratch.set((b.x0 + b.x1) / 2, (b.y0 + b.y1) / 2, (b.z0 + b.z1) / 2)
  const radius = 0.5 * Math.hypot(b.x1 - b.x0, b.y1 - b.y0, b.z1 - b.z0)
  const d = camera.position.distanceTo(scratch)
  // Dimension lines and the ground's shadow reach beyond the model.
  const near = Math.max(20, d - 1.5 * radius)
  const far = d + 4 * radius
  if (camera.near === near && camera.far === far) return
  camera.near = near
  camera.far = far
  camera.updateProjectionMatrix()
}
