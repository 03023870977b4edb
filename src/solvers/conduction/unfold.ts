import type { SchemeAnswer } from './fieldAnswer.ts'
import type { FieldGrid } from './fieldGrid.ts'
import type { MirroredWorld } from './mirror.ts'
import { blockOfCode, type Grid } from './paintGrid.ts'
import { gapAt } from './planeSearch.ts'

type Mirror = MirroredWorld['mirrors'][number]

/** The answer for a whole world from that for its part at the low side of its mirror planes. */
export const unfold = (answer: SchemeAnswer, { mirrors, whole }: MirroredWorld): SchemeAnswer =>
  mirrors.reduce((part, mirror) => unfoldOnce(part, mirror, whole), answer)

const unfoldOnce = (answer: SchemeAnswer, mirror: Mirror, whole: Grid): SchemeAnswer => ({
  ...answer,
  boundWPerK: answer.boundWPerK && 2 * answer.boundWPerK,
  estimateWPerK: answer.estimateWPerK && 2 * answer.estimateWPerK,
  faces: unfoldFaces(answer.faces, mirror, whole),
  grid: answer.grid && unfoldGrid(answer.grid, mirror),
  mirrorPlanes: answer.mirrorPlanes + 1,
})

const unfoldFaces = (
  faces: SchemeAnswer['faces'],
  { axis, atM }: Mirror,
  whole: Grid,
): SchemeAnswer['faces'] => {
  const { count, meanC, leastC } = faces
  const centreM = new Float32Array(6 * count)
  centreM.set(faces.centreM)
  const direction = new Uint8Array(2 * count)
  direction.set(faces.direction)
  const block = new Uint16Array(2 * count)
  block.set(faces.block)
  for (let f = 0; f < count; f++) {
    const n = count + f
    for (let a = 0; a < 3; a++) centreM[3 * n + a] = faces.centreM[3 * f + a] ?? 0
    centreM[3 * n + axis] = 2 * atM - (faces.centreM[3 * f + axis] ?? 0)
    const way = faces.direction[f] ?? 0
    direction[n] = way >> 1 === axis ? way ^ 1 : way
    block[n] = blockBehind(whole, centreM, n, direction[n] ?? 0)
  }
  return {
    count: 2 * count,
    centreM,
    direction,
    block,
    areaM2: twiceSingle(faces.areaM2),
    environment: twiceBytes(faces.environment),
    heatW: twiceDouble(faces.heatW),
    ...(meanC && { meanC: twiceSingle(meanC) }),
    ...(leastC && { leastC: twiceSingle(leastC) }),
  }
}

/** A step from the face into its matter, m: more than rounding, less than any layer. */
const STEP_M = 2e-5

/** The block of the matter behind a face. */
const blockBehind = (
  { planes, cells, code }: Grid,
  centreM: Float32Array,
  face: number,
  direction: number,
): number => {
  const [i = 0, j = 0, k = 0] = planes.map((p, axis) => {
    const inward = direction >> 1 !== axis ? 0 : (direction & 1) === 1 ? -STEP_M : STEP_M
    return gapAt(p, (centreM[3 * face + axis] ?? 0) + inward)
  })
  const [nx, ny] = cells
  return blockOfCode(code[((k + 1) * (ny + 2) + j + 1) * (nx + 2) + i + 1] ?? 0)
}

const twiceSingle = (list: Float32Array): Float32Array => {
  const out = new Float32Array(2 * list.length)
  out.set(list)
  out.set(list, list.length)
  return out
}

const twiceDouble = (list: Float64Array): Float64Array => {
  const out = new Float64Array(2 * list.length)
  out.set(list)
  out.set(list, list.length)
  return out
}

const twiceBytes = (list: Uint8Array): Uint8Array => {
  const out = new Uint8Array(2 * list.length)
  out.set(list)
  out.set(list, list.length)
  return out
}

const unfoldGrid = (grid: FieldGrid, { axis, atM }: Mirror): FieldGrid => {
  const axes = [grid.xM, grid.yM, grid.zM]
  const [nx, ny, nz] = axes.map((p) => p.length)
  const [xM, yM, zM] = axes.map((p, a) => (a === axis ? unfoldPlanes(p, atM) : p))
  if (xM === undefined || yM === undefined || zM === undefined) throw new Error('unfoldGrid: axes')
  const last = 2 * ((axes[axis]?.length ?? 1) - 1)
  const temperatureC = new Float32Array(xM.length * yM.length * zM.length)
  let at = 0
  for (let k = 0; k < zM.length; k++) {
    const kIn = k < (nz ?? 0) ? k : last - k
    for (let j = 0; j < yM.length; j++) {
      const jIn = j < (ny ?? 0) ? j : last - j
      const row = (kIn * (ny ?? 0) + jIn) * (nx ?? 0)
      for (let i = 0; i < xM.length; i++, at++) {
        temperatureC[at] = grid.temperatureC[row + (i < (nx ?? 0) ? i : last - i)] ?? 0
      }
    }
  }
  return { xM, yM, zM, temperatureC }
}

/** The planes and their images; the last one is the mirror itself. */
const unfoldPlanes = (planes: Float64Array, atM: number): Float64Array => {
  const n = planes.length
  const out = new Float64Array(2 * n - 1)
  out.set(planes)
  for (let i = 0; i < n - 1; i++) out[2 * n - 2 - i] = 2 * atM - (planes[i] ?? 0)
  return out
}
