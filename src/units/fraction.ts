/**
 * A ratio of two whole numbers, kept unreduced. The sign is on the numerator; the denominator is
 * positive. Typed values stay in this form until the one division that makes them SI, so that
 * `16 1/2 in`, `16.5 in` and `419.1 mm` give the very same number.
 */
export interface Fraction {
  readonly numerator: number
  readonly denominator: number
}

/**
 * `value * factor` as a number, rounded once. Exact to the last bit while both products stay
 * under 2^53; beyond that, within a few units in the last place.
 */
export function scaleFraction(value: Fraction, factor: Fraction): number {
  return (value.numerator * factor.numerator) / (value.denominator * factor.denominator)
}

/** The sum, over the product of the denominators (not reduced). */
export function addFractions(a: Fraction, b: Fraction): Fraction {
  return {
    numerator: a.numerator * b.denominator + b.numerator * a.denominator,
    denominator: a.denominator * b.denominator,
  }
}

/** As joiners write it, reduced: `16 1/2`, `3/4`, `16`, `-1 1/4`, `0`. */
export function formatFraction({ numerator, denominator }: Fraction): string {
  const size = Math.abs(numerator)
  const whole = Math.floor(size / denominator)
  const rest = size - whole * denominator
  const sign = numerator < 0 ? '-' : ''
  if (rest === 0) return `${sign}${whole}`
  const divisor = greatestCommonDivisor(rest, denominator)
  const part = `${rest / divisor}/${denominator / divisor}`
  return whole === 0 ? `${sign}${part}` : `${sign}${whole} ${part}`
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b)
}
