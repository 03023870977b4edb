import type { AirFaces } from './collectFaces.ts'
import { type Layout, layOut } from './layout.ts'
import { closeOperator } from './operator.ts'
import { type Grid, MATTER } from './paintGrid.ts'
import type { Equations } from './scheme.ts'

/**
 * Cell-centred finite volumes: one temperature for each cell of matter, and between two cells the two
 * half cells in series, which is exact for heat straight through layers (harmonic mean; Patankar 1980,
 * Numerical Heat Transfer and Fluid Flow, §4.2-3). Yields now and then, so that the caller may stop.
 */
export function* assembleCells(grid: Grid, faces: AirFaces): Generator<undefined, Equations> {
  const layout = layOut(grid.cells, matterOf(grid))
  yield
  const links = linkCells(grid, layout)
  yield
  const toAir = new Float64Array(layout.length)
  const source = new Float64Array(layout.length)
  for (let f = 0; f < faces.count; f++) {
    const c = layout.numberAt[faces.cell[f] ?? 0] ?? 0
    const g = faceConductance(grid, faces, f)
    toAir[c] = (toAir[c] ?? 0) + g
    source[c] = (source[c] ?? 0) + g * (faces.airC[f] ?? 0)
  }
  return { operator: closeOperator({ layout, ...links, toAir }), source }
}

/** From the middle of the face's cell to the air: half the cell, then the air film, W/K. */
export const faceConductance = (grid: Grid, faces: AirFaces, f: number): number => {
  const [nx, ny] = grid.cells
  const cell = faces.cell[f] ?? 0
  const direction = faces.direction[f] ?? 0
  const at =
    direction < 2
      ? cell % nx
      : direction < 4
        ? Math.floor(cell / nx) % ny
        : Math.floor(cell / (nx * ny))
  const planes = grid.planes[direction < 2 ? 0 : direction < 4 ? 1 : 2]
  const half = ((planes[at + 1] ?? 0) - (planes[at] ?? 0)) / 2
  const conductivity = grid.conductivityWPerMK[(faces.block[f] ?? 0) + 1] ?? 0
  return (faces.areaM2[f] ?? 0) / ((faces.filmM2KPerW[f] ?? 0) + half / conductivity)
}

const matterOf = ({ cells: [nx, ny, nz], code, contact }: Grid): Uint8Array => {
  const isMatter = new Uint8Array(nx * ny * nz)
  let place = 0
  for (let k = 1; k <= nz; k++) {
    for (let j = 1; j <= ny; j++) {
      const row = (k * (ny + 2) + j) * (nx + 2)
      for (let i = 1; i <= nx; i++) {
        isMatter[place++] = contact[code[row + i] ?? 0] === MATTER ? 1 : 0
      }
    }
  }
  return isMatter
}

interface Links {
  readonly linkX: Float64Array
  readonly linkY: Float64Array
  readonly linkZ: Float64Array
}

const linkCells = (grid: Grid, layout: Layout): Links => {
  const { code, planes, cells } = grid
  const [nx, ny, nz] = cells
  const [hx, hy, hz] = [widths(planes[0]), widths(planes[1]), widths(planes[2])]
  const row = nx + 2
  const slab = row * (ny + 2)
  // Conductivity by code is 0 for air, and a link with a 0 in it comes out as 0.
  const k = grid.conductivityWPerMK
  const linkX = new Float64Array(layout.length)
  const linkY = new Float64Array(layout.length)
  const linkZ = new Float64Array(layout.length)
  for (let z = 0; z < nz; z++) {
    const dz = hz[z] ?? 0
    const dzLow = z > 0 ? (hz[z - 1] ?? 0) : 0
    for (let y = 0; y < ny; y++) {
      const dy = hy[y] ?? 0
      const dyLow = y > 0 ? (hy[y - 1] ?? 0) : 0
      const place = (z * ny + y) * nx
      let at = (z + 1) * slab + (y + 1) * row + 1
      let dxLow = 0
      for (let x = 0; x < nx; x++, at++) {
        const dx = hx[x] ?? 0
        const c = layout.numberAt[place + x] ?? 0
        if (c > 0) {
          const own = k[code[at] ?? 0] ?? 0
          linkX[c] = series(dx, own, dxLow, k[code[at - 1] ?? 0] ?? 0, dy * dz)
          linkY[c] = series(dy, own, dyLow, k[code[at - row] ?? 0] ?? 0, dx * dz)
          linkZ[c] = series(dz, own, dzLow, k[code[at - slab] ?? 0] ?? 0, dx * dy)
        }
        dxLow = dx
      }
    }
  }
  return { linkX, linkY, linkZ }
}

/** Two half cells in series, W/K; 0 when one of them is air. */
const series = (h: number, k: number, hLow: number, kLow: number, area: number): number =>
  kLow === 0 ? 0 : (2 * area * k * kLow) / (h * kLow + hLow * k)

export const widths = (planes: Float64Array): Float64Array => {
  const out = new Float64Array(planes.length - 1)
  for (let i = 0; i < out.length; i++) out[i] = (planes[i + 1] ?? 0) - (planes[i] ?? 0)
  return out
}
