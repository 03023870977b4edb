/** Index of the gap between rising planes that holds a place: its lower plane, never the last one. */
export const gapAt = (planes: Float64Array, place: number): number => {
  let low = 0
  let high = planes.length - 1
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if ((planes[middle] ?? 0) <= place) low = middle
    else high = middle
  }
  return low
}

/** Index of the plane nearest to a place. */
export const nearestPlane = (planes: Float64Array, place: number): number => {
  const low = gapAt(planes, place)
  const above = (planes[low + 1] ?? Number.POSITIVE_INFINITY) - place
  return above < place - (planes[low] ?? 0) ? low + 1 : low
}
