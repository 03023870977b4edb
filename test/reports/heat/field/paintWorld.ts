import type { Triple, World } from '../../../../src/solvers/conduction/world.ts'

/** A world cut into cells at every face of its blocks; the block that holds each cell, or none. */
export interface PaintedWorld {
  readonly planes: readonly [readonly number[], readonly number[], readonly number[]]
  /** Index of the block, -1 for the background; cell i, j, k at (k·ny + j)·nx + i. */
  readonly block: Int32Array
  readonly size: Triple
}

/** Paints block after block in the plainest way. */
export const paintWorld = ({ blocks }: World): PaintedWorld => {
  const planesOf = (axis: 0 | 1 | 2): readonly number[] =>
    [...new Set(blocks.flatMap(({ minM, maxM }) => [minM[axis], maxM[axis]]))].sort((a, b) => a - b)
  const planes = [planesOf(0), planesOf(1), planesOf(2)] as const
  const size: Triple = [planes[0].length - 1, planes[1].length - 1, planes[2].length - 1]
  const [nx, ny, nz] = size
  const block = new Int32Array(nx * ny * nz).fill(-1)
  blocks.forEach(({ minM, maxM }, index) => {
    for (let k = planes[2].indexOf(minM[2]); k < planes[2].indexOf(maxM[2]); k += 1)
      for (let j = planes[1].indexOf(minM[1]); j < planes[1].indexOf(maxM[1]); j += 1)
        for (let i = planes[0].indexOf(minM[0]); i < planes[0].indexOf(maxM[0]); i += 1)
          block[(k * ny + j) * nx + i] = index
  })
  return { planes, block, size }
}

/** The cell's place in three directions. */
const cellAt = ({ size: [nx, ny] }: PaintedWorld, cell: number): Triple => [
  cell % nx,
  Math.floor(cell / nx) % ny,
  Math.floor(cell / (nx * ny)),
]

/** Volume of the cells that the blocks chosen hold, m³. */
export const paintedVolume = (
  painted: PaintedWorld,
  isChosen: (block: number) => boolean,
): number => {
  const { planes, block } = painted
  const width = (axis: 0 | 1 | 2, n: number) => (planes[axis][n + 1] ?? 0) - (planes[axis][n] ?? 0)
  let volume = 0
  block.forEach((index, cell) => {
    if (index < 0 || !isChosen(index)) return
    const [i, j, k] = cellAt(painted, cell)
    volume += width(0, i) * width(1, j) * width(2, k)
  })
  return volume
}

/** Runs over all pairs of neighbouring cells with the blocks that hold them. */
export const forNeighbours = (
  painted: PaintedWorld,
  visit: (a: number, b: number) => void,
): void => {
  const { block, size } = painted
  const [nx, ny, nz] = size
  block.forEach((here, cell) => {
    const [i, j, k] = cellAt(painted, cell)
    if (i + 1 < nx) visit(here, block[cell + 1] ?? -1)
    if (j + 1 < ny) visit(here, block[cell + nx] ?? -1)
    if (k + 1 < nz) visit(here, block[cell + nx * ny] ?? -1)
  })
}

/** Volume of air outside that is shut in and has no way to the open, m³. */
export const shutInVolume = (painted: PaintedWorld): number => {
  const { block, size, planes } = painted
  const [nx, ny, nz] = size
  const isOpen = new Uint8Array(block.length)
  const queue: number[] = []
  const reach = (i: number, j: number, k: number): void => {
    if (i < 0 || j < 0 || k < 0 || i >= nx || j >= ny || k >= nz) return
    const cell = (k * ny + j) * nx + i
    if (block[cell] !== -1 || isOpen[cell] === 1) return
    isOpen[cell] = 1
    queue.push(cell)
  }
  block.forEach((_, cell) => {
    const [i, j, k] = cellAt(painted, cell)
    if ([i, j, k].includes(0) || i === nx - 1 || j === ny - 1 || k === nz - 1) reach(i, j, k)
  })
  for (let cell = queue.pop(); cell !== undefined; cell = queue.pop()) {
    const [i, j, k] = cellAt(painted, cell)
    reach(i - 1, j, k)
    reach(i + 1, j, k)
    reach(i, j - 1, k)
    reach(i, j + 1, k)
    reach(i, j, k - 1)
    reach(i, j, k + 1)
  }
  const width = (axis: 0 | 1 | 2, n: number) => (planes[axis][n + 1] ?? 0) - (planes[axis][n] ?? 0)
  let volume = 0
  block.forEach((index, cell) => {
    if (index !== -1 || isOpen[cell] === 1) return
    const [i, j, k] = cellAt(painted, cell)
    volume += width(0, i) * width(1, j) * width(2, k)
  })
  return volume
}
