import {
  Color,
  Data3DTexture,
  DataTexture,
  FloatType,
  LinearFilter,
  RedFormat,
  SRGBColorSpace,
  Vector3,
} from 'three'
import { heatColour } from '../reports/heat/field/heatColours.ts'
import type { HeatRange, HeatScale } from '../reports/heat/field/heatRange.ts'
import type { FieldGrid } from '../solvers/conduction/fieldGrid.ts'
import type { ViewState } from '../store/viewStore.ts'
import type { InkUniforms } from './lineMaterial.ts'
import { INK } from './palette.ts'
import { buildPlaneLookup, LOOKUP_BUCKETS } from './planeLookup.ts'

/** Uniforms of `heatShader.ts`, shared by every material that shows heat. */
export type HeatUniforms = ReturnType<typeof createUniforms>

/** The temperature field on the graphics card, and whether it is shown. */
export interface HeatLayer {
  readonly uniforms: HeatUniforms
  /** Takes a field for the next time that heat is shown; undefined shows materials again. */
  readonly setField: (grid: FieldGrid | undefined) => void
  /** What each scale runs over, for when it is shown. */
  readonly setRanges: (ranges: Readonly<Record<HeatScale, HeatRange>>) => void
  /** 1 for the present design, 0 for one that is out of date: the colours fade. */
  readonly setFresh: (fresh: number) => void
  /** Shows temperatures if there is a field. Only now is a field sent to the card. */
  readonly show: (view: Pick<ViewState, 'showHeat' | 'heatScale'>) => void
  readonly dispose: () => void
}

export const createHeatLayer = (ink: InkUniforms): HeatLayer => {
  const uniforms = createUniforms(ink)
  let field: FieldGrid | undefined
  let sent: FieldGrid | undefined
  let isShown = false
  let scale: HeatScale = 'whole'
  let ranges: Readonly<Record<HeatScale, HeatRange>> | undefined
  const apply = (): void => {
    uniforms.uHeat.value = isShown && field !== undefined ? 1 : 0
    if (!isShown || field === undefined || field === sent) return
    sent = field
    sendField(uniforms, field)
  }
  const applyScale = (): void => {
    if (ranges === undefined) return
    const { levels, endShare } = ranges[scale]
    const [first, second] = levels
    const step = first === undefined || second === undefined ? 1 : second.share - first.share
    uniforms.uLevels.value.set(first?.share ?? 0, step, levels.length)
    uniforms.uScaleEnd.value = endShare
  }
  return {
    uniforms,
    setField: (grid) => {
      field = grid
      apply()
    },
    setRanges: (next) => {
      ranges = next
      applyScale()
    },
    setFresh: (fresh) => {
      uniforms.uFresh.value = fresh
    },
    show: ({ showHeat, heatScale }) => {
      isShown = showHeat
      scale = heatScale ?? 'whole'
      apply()
      applyScale()
    },
    dispose: () => {
      for (const texture of [uniforms.uField, uniforms.uPlanes, uniforms.uScale]) {
        texture.value.dispose()
      }
    },
  }
}

const createUniforms = (ink: InkUniforms) => ({
  uHeat: { value: 0 },
  uFresh: { value: 1 },
  uField: { value: createFieldTexture(new Float32Array(8), [2, 2, 2]) },
  uPlanes: { value: createPlanesTexture() },
  uScale: { value: createScaleTexture() },
  uScaleEnd: { value: 1 },
  uFieldFrom: { value: new Vector3() },
  uFieldTo: { value: new Vector3(1, 1, 1) },
  uLevels: { value: new Vector3() },
  uIsotherm: { value: new Color(INK) },
  uWeight: ink.uWeight,
})

/** Writes over the texture of the last field where the new one has as many planes. */
const sendField = (uniforms: HeatUniforms, grid: FieldGrid): void => {
  const axes = [grid.xM, grid.yM, grid.zM]
  const size = [grid.xM.length, grid.yM.length, grid.zM.length] as const
  const { image } = uniforms.uField.value
  const isSameSize = image.width === size[0] && image.height === size[1] && image.depth === size[2]
  if (isSameSize) {
    image.data = grid.temperatureC
    uniforms.uField.value.needsUpdate = true
  } else {
    uniforms.uField.value.dispose()
    uniforms.uField.value = createFieldTexture(grid.temperatureC, size)
  }
  const rows = uniforms.uPlanes.value.image.data
  axes.forEach((planes, row) => {
    rows?.set(buildPlaneLookup(planes), row * 4 * LOOKUP_BUCKETS)
  })
  uniforms.uPlanes.value.needsUpdate = true
  const [x0 = 0, y0 = 0, z0 = 0] = axes.map((planes) => 1000 * (planes[0] ?? 0))
  const [x1 = 1, y1 = 1, z1 = 1] = axes.map((planes) => 1000 * (planes.at(-1) ?? 0))
  uniforms.uFieldFrom.value.set(x0, y0, z0)
  uniforms.uFieldTo.value.set(x1, y1, z1)
}

/** Whole floats, read one by one, which any WebGL 2 can do. */
const createFieldTexture = (
  data: Float32Array,
  [width, height, depth]: readonly [number, number, number],
): Data3DTexture => {
  const texture = new Data3DTexture(data, width, height, depth)
  texture.format = RedFormat
  texture.type = FloatType
  texture.needsUpdate = true
  return texture
}

const createPlanesTexture = (): DataTexture => {
  const texture = new DataTexture(new Float32Array(4 * LOOKUP_BUCKETS * 3), LOOKUP_BUCKETS, 3)
  texture.type = FloatType
  texture.needsUpdate = true
  return texture
}

/** The colours of the legend. */
const createScaleTexture = (): DataTexture => {
  const data = new Uint8Array(4 * 256)
  for (let i = 0; i < 256; i++) {
    const { r, g, b } = heatColour(i / 255)
    data.set([r, g, b, 255], 4 * i)
  }
  const texture = new DataTexture(data, 256, 1)
  texture.colorSpace = SRGBColorSpace
  texture.minFilter = LinearFilter
  texture.magFilter = LinearFilter
  texture.needsUpdate = true
  return texture
}
