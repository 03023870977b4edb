import type { FieldGrid } from './fieldGrid.ts'
import type { Layout } from './layout.ts'

/** Temperatures of `field` at the unknowns, whose places along the axes are given, m. */
export const startFrom = (
  field: FieldGrid,
  layout: Layout,
  places: readonly [Float64Array, Float64Array, Float64Array],
): Float64Array => {
  const u = new Float64Array(layout.length)
  const [nx, ny, nz] = layout.shape
  const x = between(field.xM, places[0])
  const y = between(field.yM, places[1])
  const z = between(field.zM, places[2])
  const { temperatureC: t } = field
  const row = field.xM.length
  const slab = row * field.yM.length
  let place = 0
  for (let k = 0; k < nz; k++) {
    const zAt = (z.low[k] ?? 0) * slab
    const w = z.share[k] ?? 0
    for (let j = 0; j < ny; j++) {
      const at = zAt + (y.low[j] ?? 0) * row
      const v = y.share[j] ?? 0
      for (let i = 0; i < nx; i++, place++) {
        const c = layout.numberAt[place] ?? 0
        if (c === 0) continue
        const n = at + (x.low[i] ?? 0)
        const s = x.share[i] ?? 0
        const a = (t[n] ?? 0) * (1 - s) + (t[n + 1] ?? 0) * s
        const b = (t[n + row] ?? 0) * (1 - s) + (t[n + row + 1] ?? 0) * s
        const d = (t[n + slab] ?? 0) * (1 - s) + (t[n + slab + 1] ?? 0) * s
        const e = (t[n + slab + row] ?? 0) * (1 - s) + (t[n + slab + row + 1] ?? 0) * s
        u[c] = (a * (1 - v) + b * v) * (1 - w) + (d * (1 - v) + e * v) * w
      }
    }
  }
  return u
}

/** For each rising place: the plane before it (never the last), and the share of the way to the next. */
const between = (planes: Float64Array, places: Float64Array) => {
  const low = new Int32Array(places.length)
  const share = new Float64Array(places.length)
  let at = 0
  for (let i = 0; i < places.length; i++) {
    const place = places[i] ?? 0
    while (at < planes.length - 2 && (planes[at + 1] ?? 0) <= place) at++
    low[i] = at
    const from = planes[at] ?? 0
    const gap = (planes[at + 1] ?? 0) - from
    share[i] = gap > 0 ? Math.min(1, Math.max(0, (place - from) / gap)) : 0
  }
  return { low, share }
}

/** The middles of the cells between planes. */
export const middles = (planes: Float64Array): Float64Array => {
  const out = new Float64Array(planes.length - 1)
  for (let i = 0; i < out.length; i++) out[i] = ((planes[i] ?? 0) + (planes[i + 1] ?? 0)) / 2
  return out
}
