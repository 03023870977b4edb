import type { CameraPreset } from '../store/viewStore.ts'
import type { Still } from './aimStill.ts'
import { findCurrentStage } from './currentStage.ts'

/**
 * The hive as it is on the screen, as PNG of this size. Undefined when there is no 3D view.
 * A size beyond what the graphics card can draw is scaled down in the same shape.
 */
export const captureImage = (
  picture: Pick<Still, 'widthPx' | 'heightPx' | 'ground'>,
): Promise<Blob | undefined> => takeBlob(picture, 'image/png')

export interface ExplodedPicture {
  readonly widthPx: number
  readonly heightPx: number
  /** 0 closed, 1 groups apart, 2 every layer apart. */
  readonly explode: number
  readonly preset: CameraPreset
  /** Temperatures instead of materials, where they are known. */
  readonly showHeat?: boolean
  readonly type: 'image/png' | 'image/jpeg'
}

/**
 * The hive taken apart, from a preset, on paper, whatever the screen shows; the screen stays as it
 * is. Undefined when there is no 3D view.
 */
export const captureExploded = async (
  picture: ExplodedPicture,
): Promise<Uint8Array<ArrayBuffer> | undefined> => {
  const { widthPx, heightPx, explode, preset, type, showHeat = false } = picture
  const blob = await takeBlob(
    {
      widthPx,
      heightPx,
      ground: 'paper',
      preset,
      change: { ...PLAIN, explode, showHeat, camera: { preset, serial: 0 } },
    },
    type,
  )
  return blob === undefined ? undefined : new Uint8Array(await blob.arrayBuffer())
}

export interface StepStill {
  readonly solid: readonly string[]
  readonly fresh: readonly string[]
  readonly view: CameraPreset
  readonly widthPx: number
  readonly heightPx: number
}

/**
 * A step of assembly on paper as JPEG, whatever the screen shows; the screen stays as it is. Undefined
 * when there is no 3D view, or when the hive has none of these parts.
 */
export const captureStep = async ({
  solid,
  fresh,
  view,
  widthPx,
  heightPx,
}: StepStill): Promise<Uint8Array<ArrayBuffer> | undefined> => {
  const blob = await takeBlob(
    {
      widthPx,
      heightPx,
      ground: 'paper',
      preset: view,
      change: {
        ...PLAIN,
        explode: 0,
        showHeat: false,
        assembly: { solid, fresh },
        camera: { preset: view, serial: 0 },
      },
    },
    'image/jpeg',
  )
  return blob === undefined ? undefined : new Uint8Array(await blob.arrayBuffer())
}

/** Nothing opened, cut, marked or measured. */
const PLAIN = {
  lidOpen: 0,
  floorOpen: 0,
  frameLift: 0,
  sectionAxis: 'none',
  selectedPartIds: [],
  hoveredPartId: undefined,
  showDimensions: false,
  assembly: undefined,
  // As on the sheets beside it.
  heatScale: 'whole',
} as const

const takeBlob = (still: Still, type: string): Promise<Blob | undefined> => {
  const canvas = findCurrentStage()?.drawStill(still)
  if (canvas === undefined) return Promise.resolve(undefined)
  return new Promise((resolve) => canvas.toBlob((blob) => resolve(blob ?? undefined), type, 0.92))
}
