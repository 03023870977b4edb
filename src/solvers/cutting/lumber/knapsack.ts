/** The bounded knapsack: at most so many pieces of each kind, for all capacities at once. */
export interface Knapsack {
  /** After `solve`: the most value that fits each capacity. */
  readonly best: Int32Array
  /** Whole values by kind; kinds of no value are left out. Sums must stay below 2^31. */
  readonly solve: (
    values: ArrayLike<number>,
    limits: ArrayLike<number>,
    largest?: number | undefined,
  ) => void
  /** Pieces by kind that make up `best[capacity]`. */
  readonly trace: (capacity: number) => number[]
}

/**
 * Dynamic programme over capacities, each kind split into lots of 1, 2, 4 … pieces (Martello & Toth
 * 1990, chapter 3). Time: capacity × the sum of log2 of the limits.
 */
export const createKnapsack = (weights: readonly number[], capacity: number): Knapsack => {
  const width = capacity + 1
  const best = new Int32Array(width)
  let taken = new Uint8Array(width)
  let lotKinds: number[] = []
  let lotSizes: number[] = []

  const split = (kind: number, limit: number): void => {
    let left = limit
    for (let lot = 1; left > 0; lot *= 2) {
      const size = Math.min(lot, left)
      lotKinds.push(kind)
      lotSizes.push(size)
      left -= size
    }
  }

  const solve: Knapsack['solve'] = (values, limits, largest = capacity) => {
    lotKinds = []
    lotSizes = []
    for (let kind = 0; kind < weights.length; kind++) {
      const most = weights[kind] === 0 ? Infinity : Math.floor(largest / (weights[kind] ?? 1))
      if ((values[kind] ?? 0) > 0) split(kind, Math.min(limits[kind] ?? 0, most))
    }
    if (taken.length < lotKinds.length * width) taken = new Uint8Array(lotKinds.length * width)
    best.fill(0)
    for (let lot = 0; lot < lotKinds.length; lot++) {
      const kind = lotKinds[lot] ?? 0
      const size = lotSizes[lot] ?? 0
      const row = taken.subarray(lot * width, (lot + 1) * width)
      addLot({ best, row, largest }, size * (weights[kind] ?? 0), size * (values[kind] ?? 0))
    }
  }

  const trace: Knapsack['trace'] = (from) => {
    const counts = new Array<number>(weights.length).fill(0)
    let left = from
    for (let lot = lotKinds.length - 1; lot >= 0; lot--) {
      if (taken[lot * width + left] !== 1) continue
      const kind = lotKinds[lot] ?? 0
      const size = lotSizes[lot] ?? 0
      counts[kind] = (counts[kind] ?? 0) + size
      left -= size * (weights[kind] ?? 0)
    }
    return counts
  }

  return { best, solve, trace }
}

interface Table {
  readonly best: Int32Array
  readonly row: Uint8Array
  readonly largest: number
}

const addLot = ({ best, row, largest }: Table, weight: number, value: number): void => {
  row.fill(0, 0, Math.min(weight, row.length))
  for (let at = largest; at >= weight; at--) {
    const sum = (best[at - weight] ?? 0) + value
    if (sum > (best[at] ?? 0)) {
      best[at] = sum
      row[at] = 1
    } else row[at] = 0
  }
}
