import type { Layout } from './layout.ts'

/**
 * A network of heat links between neighbours in a grid, and from each place to the air. Arrays follow
 * `Layout`; conductances in W/K. Row c of the matrix is `diagonal[c]` less the links, so the matrix is
 * symmetric, and positive definite where heat can reach some air.
 */
export interface Operator {
  readonly layout: Layout
  /** From c to its neighbour at lower x, y, z. */
  readonly linkX: Float64Array
  readonly linkY: Float64Array
  readonly linkZ: Float64Array
  /** From c to air or to a place with a given temperature. */
  readonly toAir: Float64Array
  /** All links of c together. */
  readonly diagonal: Float64Array
  readonly inverse: Float64Array
}

/** Sums up the links. `inverse` is 0 where a place has no link at all, so that it stays at 0. */
export const closeOperator = (links: Omit<Operator, 'diagonal' | 'inverse'>): Operator => {
  const { layout, linkX, linkY, linkZ, toAir } = links
  const diagonal = new Float64Array(layout.length)
  const inverse = new Float64Array(layout.length)
  sumLinks(layout.runs, linkX, linkY, linkZ, toAir, diagonal, inverse)
  return { ...links, diagonal, inverse }
}

const sumLinks = (
  runs: Int32Array,
  lx: Float64Array,
  ly: Float64Array,
  lz: Float64Array,
  toAir: Float64Array,
  diagonal: Float64Array,
  inverse: Float64Array,
): void => {
  for (let r = 0; r < runs.length; r += 6) {
    const end = runs[r + 1] ?? 0
    const yh = runs[r + 3] ?? 0
    const zh = runs[r + 5] ?? 0
    for (let c = runs[r] ?? 0; c < end; c++) {
      const sum =
        (toAir[c] ?? 0) +
        (lx[c] ?? 0) +
        (lx[c + 1] ?? 0) +
        (ly[c] ?? 0) +
        (ly[c + yh] ?? 0) +
        (lz[c] ?? 0) +
        (lz[c + zh] ?? 0)
      diagonal[c] = sum
      inverse[c] = sum > 0 ? 1 / sum : 0
    }
  }
}
