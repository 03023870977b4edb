const GRAVITY = 9.81
/** Bending stiffness of pine and spruce along the grain, N/mm². */
const STIFFNESS = 9000

/**
 * Sag in the middle of a top bar under its evenly spread load, mm: 5 F L³ / (384 E I), I = b h³ / 12,
 * the formula for a beam on two supports. Side bars and comb, which share the load, are left out, so
 * the real bar sags less; over the years wood sags up to twice as much. All lengths above zero.
 */
export const topBarSagMm = (bar: {
  readonly loadKg: number
  readonly spanMm: number
  readonly widthMm: number
  readonly thicknessMm: number
}): number => {
  const inertia = (bar.widthMm * bar.thicknessMm ** 3) / 12
  return (5 * bar.loadKg * GRAVITY * bar.spanMm ** 3) / (384 * STIFFNESS * inertia)
}
