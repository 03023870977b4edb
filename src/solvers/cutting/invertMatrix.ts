/**
 * Inverse of a dense square matrix, row by row, by Gauss-Jordan elimination with the largest pivot of
 * each column; undefined when it has none. Spoils `matrix`.
 */
export const invertMatrix = (matrix: Float64Array, rows: number): Float64Array | undefined => {
  const inverse = new Float64Array(rows * rows)
  for (let row = 0; row < rows; row++) inverse[row * rows + row] = 1
  for (let column = 0; column < rows; column++) {
    const pivot = largestIn(matrix, rows, column)
    const value = matrix[pivot * rows + column] ?? 0
    if (Math.abs(value) < 1e-10) return undefined
    for (const table of [matrix, inverse]) {
      swapRows(table, rows, pivot, column)
      for (let at = 0; at < rows; at++) {
        table[column * rows + at] = (table[column * rows + at] ?? 0) / value
      }
    }
    for (let row = 0; row < rows; row++) {
      const factor = matrix[row * rows + column] ?? 0
      if (row === column || factor === 0) continue
      takeAway(matrix, rows, { row, from: column, factor })
      takeAway(inverse, rows, { row, from: column, factor })
    }
  }
  return inverse
}

const largestIn = (matrix: Float64Array, rows: number, column: number): number => {
  let chosen = column
  for (let row = column + 1; row < rows; row++) {
    const size = Math.abs(matrix[row * rows + column] ?? 0)
    if (size > Math.abs(matrix[chosen * rows + column] ?? 0)) chosen = row
  }
  return chosen
}

const swapRows = (table: Float64Array, rows: number, a: number, b: number): void => {
  if (a === b) return
  const kept = table.slice(a * rows, (a + 1) * rows)
  table.copyWithin(a * rows, b * rows, (b + 1) * rows)
  table.set(kept, b * rows)
}

interface RowStep {
  readonly row: number
  readonly from: number
  readonly factor: number
}

const takeAway = (table: Float64Array, rows: number, { row, from, factor }: RowStep): void => {
  for (let at = 0; at < rows; at++) {
    const index = row * rows + at
    table[index] = (table[index] ?? 0) - factor * (table[from * rows + at] ?? 0)
  }
}
