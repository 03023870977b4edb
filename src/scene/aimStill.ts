import type { PerspectiveCamera } from 'three'
import type { CameraPreset } from '../store/viewStore.ts'
import { PRESET_DIRECTIONS } from './cameraPresets.ts'
import { fitCamera } from './fitCamera.ts'
import type { ModelView } from './hiveModel.ts'

/** A picture to take of what is on the stage. */
export interface Still {
  readonly widthPx: number
  readonly heightPx: number
  readonly ground: 'paper' | 'transparent'
  /** Changes to the view for this picture only. */
  readonly change?: Partial<ModelView>
  /** The eye as it is on the screen unless a preset is named. */
  readonly preset?: CameraPreset
}

/** Aims the still's camera: at the whole model from a preset, or as on the screen, never cropping it. */
export const aimStill = (
  eye: PerspectiveCamera,
  screen: PerspectiveCamera,
  picture: {
    readonly still: Still
    readonly aspect: number
    readonly corners: Parameters<typeof fitCamera>[0]
  },
): void => {
  const { still, aspect, corners } = picture
  if (still.preset !== undefined) {
    const place = fitCamera(corners, {
      direction: PRESET_DIRECTIONS[still.preset],
      fovDeg: eye.fov,
      aspect,
      margin: 0.04,
    })
    eye.position.set(place.eye.x, place.eye.y, place.eye.z)
    eye.lookAt(place.target.x, place.target.y, place.target.z)
    const far = 4 * eye.position.distanceTo(screen.position) + 20000
    eye.near = 50
    eye.far = far
  } else if (aspect < screen.aspect) {
    // A taller picture than the screen: widen the view so that the sides stay in it.
    const half = Math.tan((screen.fov * Math.PI) / 360) * (screen.aspect / aspect)
    eye.fov = (Math.atan(half) * 360) / Math.PI
  }
  eye.aspect = aspect
  eye.updateProjectionMatrix()
  eye.updateMatrixWorld()
}
