/** Two nodes and what flows between them for each degree, W/K. */
export interface Link {
  readonly from: number
  readonly to: number
  readonly conductanceWPerK: number
}

/**
 * Temperatures of the nodes 0 to `count` - 1 of a network in which some are known, by elimination on
 * the full matrix. A node without a link keeps NaN. Work grows with the cube of the unknowns.
 */
export const solveNetwork = (
  count: number,
  links: readonly Link[],
  known: ReadonlyMap<number, number>,
): Float64Array => {
  // Number the unknowns.
  const linked = new Set(links.flatMap(({ from, to }) => [from, to]))
  const unknowns = [...linked].filter((node) => !known.has(node)).sort((a, b) => a - b)
  const rowOf = new Map(unknowns.map((node, row) => [node, row]))
  const n = unknowns.length

  // Heat balance of each: what leaves to the neighbours is nothing in all. Last column: known part.
  const rows = unknowns.map(() => new Float64Array(n + 1))
  const add = (row: number, column: number, value: number): void => {
    const entries = rows[row]
    if (entries) entries[column] = (entries[column] ?? 0) + value
  }
  const balance = (node: number, other: number, conductance: number): void => {
    const row = rowOf.get(node)
    if (row === undefined) return
    add(row, row, conductance)
    const column = rowOf.get(other)
    if (column === undefined) add(row, n, conductance * (known.get(other) ?? Number.NaN))
    else add(row, column, -conductance)
  }
  for (const { from, to, conductanceWPerK } of links) {
    balance(from, to, conductanceWPerK)
    balance(to, from, conductanceWPerK)
  }

  // Eliminate downwards, then put in from below.
  rows.forEach((pivotRow, p) => {
    for (let r = p + 1; r < n; r++) {
      const row = rows[r] ?? pivotRow
      const share = (row[p] ?? 0) / (pivotRow[p] ?? 0)
      if (share !== 0)
        for (let c = p; c <= n; c++) row[c] = (row[c] ?? 0) - share * (pivotRow[c] ?? 0)
    }
  })
  const found = new Float64Array(count).fill(Number.NaN)
  for (const [node, temperature] of known) found[node] = temperature
  for (let r = n - 1; r >= 0; r--) {
    const row = rows[r] ?? new Float64Array()
    let sum = row[n] ?? 0
    for (let c = r + 1; c < n; c++) sum -= (row[c] ?? 0) * (found[unknowns[c] ?? 0] ?? 0)
    found[unknowns[r] ?? 0] = sum / (row[r] ?? 0)
  }
  return found
}

/** Heat that a node gives to the rest of the network, W. */
export const heatFromNode = (
  node: number,
  links: readonly Link[],
  temperatures: Float64Array,
): number => {
  const at = (n: number): number => temperatures[n] ?? Number.NaN
  let heat = 0
  for (const { from, to, conductanceWPerK } of links) {
    if (from === node) heat += conductanceWPerK * (at(from) - at(to))
    if (to === node) heat += conductanceWPerK * (at(to) - at(from))
  }
  return heat
}
