/**
 * A dual feasible function for one side of a sheet: for lengths that fit side by side into `side`, the
 * sum of their values is at most the value of `side`. All here never fall and are superadditive, so that
 * the value of any other length up to `side` bounds what fits into that length.
 */
export interface DualFunction {
  readonly name: string
  readonly valueAt: (length: number) => number
}

/**
 * The functions for lengths in a side: the length itself; u^(k) of Fekete & Schepers 2001 (rounds shares
 * of 1/(k+1)); the threshold (short lengths count nothing, long ones all; Martello & Vigo 1998, Fekete &
 * Schepers 2001); and the rounding by multiples of Carlier, Clautiaux & Moukrim 2007.
 */
export function listDualFunctions(
  side: number,
  lengths: readonly number[],
): readonly DualFunction[] {
  const functions: DualFunction[] = [{ name: 'length', valueAt: (length) => length / side }]
  for (let k = 1; k <= MOST_SHARES; k++) functions.push(roundShares(side, k))
  const steps = new Set<number>()
  for (const length of lengths) {
    // Only at a length, or where the rest of the side is one, does the value of any length change.
    if (length <= side / 2) steps.add(length)
    if (length < side) steps.add(side - length)
    const above = side - length + 1
    if (above > 0 && above <= side / 2) steps.add(above)
  }
  for (const step of [...steps].sort((a, b) => a - b).slice(0, MOST_STEPS)) {
    if (step <= 0 || step > side / 2) continue
    functions.push(setThreshold(side, step), roundMultiples(side, step))
  }
  return functions
}

const MOST_SHARES = 24
const MOST_STEPS = 60

function roundShares(side: number, k: number): DualFunction {
  return {
    name: `shares of 1/${k + 1}`,
    valueAt: (length) => {
      const shares = length * (k + 1)
      return shares % side === 0 ? length / side : Math.floor(shares / side) / k
    },
  }
}

function setThreshold(side: number, step: number): DualFunction {
  return {
    name: `threshold ${step}`,
    valueAt: (length) => {
      if (length > side - step) return 1
      return length < step ? 0 : length / side
    },
  }
}

function roundMultiples(side: number, step: number): DualFunction {
  const whole = Math.floor(side / step)
  return {
    name: `multiples of ${step}`,
    valueAt: (length) => {
      if (2 * length > side) return 1 - Math.floor((side - length) / step) / whole
      if (2 * length === side) return 1 / 2
      return Math.floor(length / step) / whole
    },
  }
}
