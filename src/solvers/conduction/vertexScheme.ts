import { widths } from './cellScheme.ts'
import type { AirFaces } from './collectFaces.ts'
import { airAtCorner, faceCorners } from './faceCorners.ts'
import { type Layout, layOut } from './layout.ts'
import { closeOperator } from './operator.ts'
import type { Grid } from './paintGrid.ts'
import type { Equations } from './scheme.ts'

/** The equations of the vertex scheme, and the vertices whose temperature is given. */
export interface VertexEquations extends Equations {
  /** By vertex place in the grid: 1 where a surface is held at the air's temperature. */
  readonly isHeld: Uint8Array
  /** By vertex place: the temperature there if it is held. Empty when none is. */
  readonly heldC: Float64Array
  /** Of the faces; see `faceCorners`. */
  readonly corners: Int32Array
  /** Links of which at least one end is held: vertex places a and b, and the conductance. */
  readonly heldLinks: readonly HeldLink[]
  /** Whether two environments hold the same vertex at different temperatures. */
  readonly hasConflict: boolean
}

export interface HeldLink {
  readonly a: number
  readonly b: number
  readonly conductanceWPerK: number
}

/**
 * Temperatures at the corners of the cells, linked along the cells' edges: each cell lends a quarter of
 * its cross-section to each of the four edges along an axis. Surfaces are where their cells end, so
 * corners of the cavity get their true temperature. Yields now and then, so that the caller may stop.
 */
export function* assembleVertices(
  grid: Grid,
  faces: AirFaces,
): Generator<undefined, VertexEquations> {
  const corners = faceCorners(grid.cells, faces)
  const held = holdVertices(grid, faces, corners)
  const [nx, ny, nz] = grid.cells
  const shape = [nx + 1, ny + 1, nz + 1] as const
  const isThere = verticesOfMatter(grid)
  for (let v = 0; v < isThere.length; v++) if (held.isHeld[v] === 1) isThere[v] = 0
  const layout = layOut(shape, isThere)
  yield
  const links = linkVertices(grid, layout, held.isHeld, held.heldC)
  yield
  addFilms(faces, corners, layout, links)
  const { source, heldLinks, ...rest } = links
  return { operator: closeOperator({ layout, ...rest }), source, corners, heldLinks, ...held }
}

type Held = Pick<VertexEquations, 'isHeld' | 'heldC' | 'hasConflict'>

const holdVertices = (grid: Grid, faces: AirFaces, corners: Int32Array): Held => {
  const [nx, ny, nz] = grid.cells
  const count = (nx + 1) * (ny + 1) * (nz + 1)
  const isHeld = new Uint8Array(count)
  if (!faces.filmM2KPerW.includes(0)) {
    return { isHeld, heldC: new Float64Array(0), hasConflict: false }
  }
  const heldC = new Float64Array(count)
  let hasConflict = false
  for (let f = 0; f < faces.count; f++) {
    if (faces.filmM2KPerW[f] !== 0) continue
    for (let n = 0; n < 4; n++) {
      const air = airAtCorner(faces, f, n)
      const v = corners[4 * f + n] ?? 0
      if (isHeld[v] === 1 && heldC[v] !== air) hasConflict = true
      isHeld[v] = 1
      heldC[v] = air
    }
  }
  return { isHeld, heldC, hasConflict }
}

const verticesOfMatter = ({ cells: [nx, ny, nz], code, conductivityWPerMK: k }: Grid) => {
  const isThere = new Uint8Array((nx + 1) * (ny + 1) * (nz + 1))
  const row = nx + 2
  const slab = row * (ny + 2)
  let v = 0
  for (let z = 0; z <= nz; z++) {
    for (let y = 0; y <= ny; y++) {
      let at = z * slab + y * row
      // A column of four cells after another; a vertex touches the column before and behind it.
      let before = 0
      for (let x = 0; x <= nx + 1; x++, at++) {
        const column =
          (k[code[at] ?? 0] ?? 0) +
          (k[code[at + row] ?? 0] ?? 0) +
          (k[code[at + slab] ?? 0] ?? 0) +
          (k[code[at + slab + row] ?? 0] ?? 0)
        if (x > 0) isThere[v++] = before > 0 || column > 0 ? 1 : 0
        before = column
      }
    }
  }
  return isThere
}

interface VertexLinks {
  readonly linkX: Float64Array
  readonly linkY: Float64Array
  readonly linkZ: Float64Array
  readonly toAir: Float64Array
  readonly source: Float64Array
  readonly heldLinks: HeldLink[]
}

/** Links between free vertices; those to held vertices become part of `toAir` and `source`. */
const linkVertices = (
  grid: Grid,
  layout: Layout,
  isHeld: Uint8Array,
  heldC: Float64Array,
): VertexLinks => {
  const { code, planes, conductivityWPerMK: k } = grid
  const [nx, ny, nz] = layout.shape
  const row = nx + 1
  const slab = row * (ny + 1)
  const { numberAt, length } = layout
  const hx = withEnds(widths(planes[0]))
  const hy = withEnds(widths(planes[1]))
  const hz = withEnds(widths(planes[2]))
  const linkX = new Float64Array(length)
  const linkY = new Float64Array(length)
  const linkZ = new Float64Array(length)
  const toAir = new Float64Array(length)
  const source = new Float64Array(length)
  const hasHeld = heldC.length > 0
  const heldLinks: HeldLink[] = []
  /** A link from vertex `a` to the one before it, `b`, by their places. */
  const joinHeld = (links: Float64Array, a: number, b: number, g: number): void => {
    if (g === 0) return
    const [na, nb] = [numberAt[a] ?? 0, numberAt[b] ?? 0]
    if (isHeld[a] === 1 || isHeld[b] === 1) heldLinks.push({ a, b, conductanceWPerK: g })
    if (na > 0 && nb > 0) links[na] = g
    else if (na > 0 && isHeld[b] === 1) hold(na, g, heldC[b] ?? 0)
    else if (nb > 0 && isHeld[a] === 1) hold(nb, g, heldC[a] ?? 0)
  }
  const hold = (n: number, g: number, temperature: number): void => {
    toAir[n] = (toAir[n] ?? 0) + g
    source[n] = (source[n] ?? 0) + g * temperature
  }
  let v = 0
  for (let z = 0; z < nz; z++) {
    const [zLow, zHigh] = [hz[z] ?? 0, hz[z + 1] ?? 0]
    for (let y = 0; y < ny; y++) {
      const [yLow, yHigh] = [hy[y] ?? 0, hy[y + 1] ?? 0]
      // The eight cells round vertex x: m.. at lower x, p.. at higher x; then y, then z.
      let at = z * slab + y * row
      for (let x = 0; x < nx; x++, at++, v++) {
        const n = numberAt[v] ?? 0
        if (n === 0 && !hasHeld) continue
        const [xLow, xHigh] = [hx[x] ?? 0, hx[x + 1] ?? 0]
        const mll = k[code[at] ?? 0] ?? 0
        const pll = k[code[at + 1] ?? 0] ?? 0
        const mhl = k[code[at + row] ?? 0] ?? 0
        const phl = k[code[at + row + 1] ?? 0] ?? 0
        const mlh = k[code[at + slab] ?? 0] ?? 0
        const plh = k[code[at + slab + 1] ?? 0] ?? 0
        const mhh = k[code[at + slab + row] ?? 0] ?? 0
        const gx =
          x > 0
            ? ((mll * yLow + mhl * yHigh) * zLow + (mlh * yLow + mhh * yHigh) * zHigh) / (4 * xLow)
            : 0
        const gy =
          y > 0
            ? ((mll * xLow + pll * xHigh) * zLow + (mlh * xLow + plh * xHigh) * zHigh) / (4 * yLow)
            : 0
        const gz =
          z > 0
            ? ((mll * xLow + pll * xHigh) * yLow + (mhl * xLow + phl * xHigh) * yHigh) / (4 * zLow)
            : 0
        if (!hasHeld) {
          linkX[n] = gx
          linkY[n] = gy
          linkZ[n] = gz
        } else {
          joinHeld(linkX, v, v - 1, gx)
          joinHeld(linkY, v, v - nx, gy)
          joinHeld(linkZ, v, v - nx * ny, gz)
        }
      }
    }
  }
  return { linkX, linkY, linkZ, toAir, source, heldLinks }
}

/** A quarter of each face's film goes to each of its corners. */
const addFilms = (
  faces: AirFaces,
  corners: Int32Array,
  layout: Layout,
  links: VertexLinks,
): void => {
  const { toAir, source } = links
  for (let f = 0; f < faces.count; f++) {
    const film = faces.filmM2KPerW[f] ?? 0
    if (film === 0) continue
    const g = (faces.areaM2[f] ?? 0) / (4 * film)
    for (let n = 0; n < 4; n++) {
      const c = layout.numberAt[corners[4 * f + n] ?? 0] ?? 0
      // A held corner takes its heat at no cost to the unknowns.
      if (c === 0) continue
      toAir[c] = (toAir[c] ?? 0) + g
      source[c] = (source[c] ?? 0) + g * airAtCorner(faces, f, n)
    }
  }
}

/** Widths with a cell of no width beyond each end; their conductivity is 0 as well. */
const withEnds = (h: Float64Array): Float64Array => {
  const out = new Float64Array(h.length + 2)
  out.set(h, 1)
  return out
}
