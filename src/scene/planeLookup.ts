/** Buckets along one axis: the width that every WebGL 2 can give a texture. */
export const LOOKUP_BUCKETS = 2048

/**
 * A table that finds the place of a coordinate among rising `planesM` with one look-up: for each of
 * `buckets` equal stretches from the first plane to the last, four numbers: the pivot, in metres from
 * the first plane; the place at the pivot, in planes and parts of planes; and the places for each
 * metre before the pivot and after it. Exact where a stretch holds at most one plane, which is its
 * pivot; with more of them, exact at the pivot and at both ends. The shader adds, to the
 * place at the pivot, the way from it times one of the two slopes.
 */
export const buildPlaneLookup = (planesM: Float64Array, buckets = LOOKUP_BUCKETS): Float32Array => {
  const rows = new Float32Array(4 * buckets)
  const first = planesM[0] ?? 0
  const last = planesM.length - 1
  const width = ((planesM[last] ?? first) - first) / buckets
  if (width <= 0) return rows
  const planeAt = (i: number): number => planesM[Math.min(i, last)] ?? first
  // `next` is the first plane after the start of the bucket.
  let next = 1
  const placeOf = (m: number): number => {
    const [from, to] = [planeAt(next - 1), planeAt(next)]
    return to > from ? Math.min(next, next - 1 + (m - from) / (to - from)) : next
  }
  for (let i = 0; i < buckets; i++) {
    const start = first + i * width
    const end = start + width
    const atStart = placeOf(start)
    const hasPlane = next < last && planeAt(next) < end
    const pivot = hasPlane ? planeAt(next) : (start + end) / 2
    const atPivot = hasPlane ? next : placeOf(pivot)
    while (next < last && planeAt(next) <= end) next++
    const atEnd = placeOf(end)
    const before = pivot > start ? (atPivot - atStart) / (pivot - start) : 0
    const after = end > pivot ? (atEnd - atPivot) / (end - pivot) : 0
    rows.set([pivot - first, atPivot, before, after], 4 * i)
  }
  return rows
}
