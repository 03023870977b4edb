/** Nearer than a calliper reads, mm. */
const NEAR_MM = 0.001
/** Sizes are sums of fields, or kinked sums: a straight line or two always gets there. */
const MOST_STEPS = 6
/** A field that moves a size by less than this share of itself does not govern it. */
const LEAST_SLOPE = 0.02

interface Range {
  readonly min: number
  readonly max: number
}

/**
 * The value of a field, in its range, at which `measure` gives `goal`; undefined when there is none
 * near, or the field does not move what is measured. `measure` gives undefined where the hive can't be
 * built. Secants: the first from a step of one millimetre, upwards or else downwards.
 */
export const solveField = (
  measure: (value: number) => number | undefined,
  start: { readonly value: number; readonly size: number },
  goal: number,
  { min, max }: Range,
): number | undefined => {
  const probe = probeBeside(measure, start, { min, max })
  if (probe === undefined) return undefined
  let [before, now] = [start, probe]
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const slope = (now.size - before.size) / (now.value - before.value)
    if (!(Math.abs(slope) > LEAST_SLOPE)) return undefined
    const value = inRange(now.value + (goal - now.size) / slope, { min, max })
    if (value === undefined) return undefined
    const size = measure(value)
    if (size === undefined) return undefined
    if (Math.abs(size - goal) <= NEAR_MM) return value
    if (value === now.value) return undefined
    ;[before, now] = [now, { value, size }]
  }
  return undefined
}

/** A value a hair outside the range, from sums in binary, is at its end. */
const inRange = (value: number, { min, max }: Range): number | undefined => {
  if (value < min - NEAR_MM || value > max + NEAR_MM) return undefined
  return Math.min(Math.max(value, min), max)
}

const probeBeside = (
  measure: (value: number) => number | undefined,
  start: { readonly value: number; readonly size: number },
  { min, max }: Range,
): { readonly value: number; readonly size: number } | undefined => {
  for (const value of [start.value + 1, start.value - 1]) {
    const size = value >= min && value <= max ? measure(value) : undefined
    if (size !== undefined) return { value, size }
  }
  return undefined
}
