import { type Vec3, vec3 } from '../geometry/vector.ts'
import type { CameraPreset } from '../store/viewStore.ts'

/** Height of the field of view. A long lens keeps parallel edges nearly parallel, as on a drawing. */
export const FIELD_OF_VIEW_DEG = 20

/** From the hive towards the eye. Straight up or down is a hair off, so that left and right are known. */
export const PRESET_DIRECTIONS: Readonly<Record<CameraPreset, Vec3>> = {
  'three-quarter': vec3(0.62, 0.5, 1),
  front: vec3(0, 0.06, 1),
  side: vec3(1, 0.06, 0),
  top: vec3(0, 1, 0.001),
  inside: vec3(0.12, 1, 0.55),
  underneath: vec3(0.55, -0.55, 1),
}
