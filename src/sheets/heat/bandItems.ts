import type { DrawingItem } from '../drawing.ts'
import { toPaper, type View } from '../view.ts'
import type { CutPart } from '../views/cutParts.ts'
import { boundsOf } from '../views/polygon2.ts'
import { clipLoop, type Face } from './clipToFaces.ts'
import { type SliceWindow, traceRegionAbove } from './contours.ts'
import type { HeatBand } from './heatBands.ts'
import type { FieldSlice } from './sliceField.ts'

/**
 * Cut faces filled by temperature: each face in the colour of its coldest band, and over it, from band
 * to warmer band, what is at least as warm. Bands border on the isotherms exactly.
 */
export const bandItems = (
  cuts: readonly CutPart[],
  slice: FieldSlice,
  bands: readonly HeatBand[],
  view: View,
): readonly DrawingItem[] =>
  cuts.flatMap(({ part, faces }) =>
    faces.flatMap((face) => {
      const window = windowAround(slice, face)
      const { least, most } = rangeIn(slice, window)
      const shown = bands.filter((band, i) => (i === 0 || band.from <= most) && band.to > least)
      const base = shown.length > 0 ? shown : bands.slice(-1)
      return base.flatMap((band, i): readonly DrawingItem[] => {
        const loops =
          i === 0
            ? [face]
            : traceRegionAbove(slice, band.from, window)
                .map((loop) => clipLoop(loop, face))
                .filter((loop) => loop.length > 0)
        if (loops.length === 0) return []
        const placed = loops.map((loop) => loop.map((p) => toPaper(view, p)))
        return [{ kind: 'colour', loops: placed, colour: band.colour, tag: part.id }]
      })
    }),
  )

/** The lines of the slice that enclose a face; at least one cell, the nearest, when it lies outside. */
const windowAround = ({ uMm, vMm }: FieldSlice, face: Face): SliceWindow => {
  const b = boundsOf(face)
  const [i0, i1] = enclose(uMm, b.u0, b.u1)
  const [j0, j1] = enclose(vMm, b.v0, b.v1)
  return { i0, i1, j0, j1 }
}

/** A face's edge that lies on a line but for rounding ends there, not in the air beyond, mm. */
const ON_LINE = 0.01

const enclose = (lines: Float64Array, from: number, to: number): readonly [number, number] => {
  const last = lines.length - 1
  const above = lines.findIndex((l) => l > from + ON_LINE)
  const low = above < 0 ? last - 1 : Math.max(0, above - 1)
  const beyond = lines.findIndex((l) => l >= to - ON_LINE)
  const high = beyond < 0 ? last : beyond
  return [low, Math.min(last, Math.max(high, low + 1))]
}

const rangeIn = ({ uMm, value }: FieldSlice, { i0, i1, j0, j1 }: SliceWindow) => {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (let j = j0; j <= j1; j += 1) {
    for (const v of value.subarray(j * uMm.length + i0, j * uMm.length + i1 + 1)) {
      if (v < least) least = v
      if (v > most) most = v
    }
  }
  return { least, most }
}
