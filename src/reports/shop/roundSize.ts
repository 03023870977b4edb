/** Pushes every exact half the same way, away from zero, despite binary noise (9.525 mm is 3/8 in). */
const HALF_NUDGE = 1e-6

/**
 * A length in whole hundredths of a millimetre. A length and its negative round alike, so that a
 * shape and its mirror image can be compared.
 */
export const toHundredths = (mm: number): number => {
  const hundredths = Math.floor(Math.abs(mm) * 100 + 0.5 + HALF_NUDGE)
  // The sum with 0 turns -0 into 0.
  return mm < 0 ? 0 - hundredths : hundredths
}
