import { faceConductance, widths } from './cellScheme.ts'
import type { AirFaces } from './collectFaces.ts'
import type { Layout } from './layout.ts'
import type { Operator } from './operator.ts'
import { type Grid, MATTER } from './paintGrid.ts'
import type { World } from './world.ts'

/**
 * Certain bounds for the conductance between two temperatures. With both film and matter counted, the
 * true temperatures dissipate least of all that are continuous (Dirichlet's principle), and the true
 * flow dissipates least of all that lose no heat on the way (Thomson's principle); see Synge 1957, The
 * Hypercircle in Mathematical Physics, or Duvaut and Lions 1976. Neither needs the equations to be
 * solved exactly: an imperfect field only widens the band.
 */
export interface TwoTemperatures {
  readonly coldC: number
  readonly hotC: number
}

/** The two temperatures of a world's environments; undefined unless there are exactly two, both even. */
export const twoTemperatures = (world: World): TwoTemperatures | undefined => {
  const all = new Set(world.environments.map((e) => e.temperatureC))
  const isEven = world.environments.every((e) => (e.riseKPerM ?? 0) === 0)
  if (all.size !== 2 || !isEven) return undefined
  return { coldC: Math.min(...all), hotC: Math.max(...all) }
}

export interface LowerConductance {
  readonly boundWPerK: number
  /** What the bound comes to when the balance is exact; no bound, but hardly off before that. */
  readonly estimateWPerK: number
}

/**
 * Thomson's bound from the flows of the cell scheme, taken as even across each face and linear through
 * each cell. `heatW` is the heat into the matter by face; `lost` is what each cell's balance is out by.
 * The true temperatures lie between the two given ones, so what is lost can mislead by no more than
 * itself times their difference, and is taken off; the estimate weighs it with the temperatures found.
 */
export const lowerConductance = (
  grid: Grid,
  faces: AirFaces,
  operator: Operator,
  u: Float64Array,
  heatW: Float64Array,
  lost: Float64Array,
  { coldC, hotC }: TwoTemperatures,
): LowerConductance => {
  const span = hotC - coldC
  let fromHot = 0
  for (let f = 0; f < faces.count; f++) if (faces.airC[f] === hotC) fromHot += heatW[f] ?? 0
  let unbalanced = 0
  let weighed = 0
  for (let c = 0; c < lost.length; c++) {
    const out = lost[c] ?? 0
    unbalanced += Math.abs(out)
    weighed += (out * ((u[c] ?? 0) - coldC)) / span
  }
  const dissipation =
    dissipateInCells(grid, operator, u) + dissipateAtFaces(grid, faces, operator, u, heatW)
  if (!(dissipation > 0)) return { boundWPerK: 0, estimateWPerK: 0 }
  return {
    boundWPerK: Math.max(0, fromHot - unbalanced) ** 2 / dissipation,
    estimateWPerK: (fromHot - weighed) ** 2 / dissipation,
  }
}

/** Flow times flow over conductance through every cell, the flows at faces to air taken as 0, W·K. */
const dissipateInCells = (grid: Grid, operator: Operator, u: Float64Array): number => {
  const { layout, linkX, linkY, linkZ } = operator
  const { numberAt } = layout
  const [nx, ny, nz] = grid.cells
  const [hx, hy, hz] = [widths(grid.planes[0]), widths(grid.planes[1]), widths(grid.planes[2])]
  const row = nx + 2
  const slab = row * (ny + 2)
  let sum = 0
  let place = 0
  for (let z = 0; z < nz; z++) {
    const dz = hz[z] ?? 0
    for (let y = 0; y < ny; y++) {
      const dy = hy[y] ?? 0
      const at = (z + 1) * slab + (y + 1) * row + 1
      for (let x = 0; x < nx; x++, place++) {
        const c = numberAt[place] ?? 0
        if (c === 0) continue
        const dx = hx[x] ?? 0
        const k = grid.conductivityWPerMK[grid.code[at + x] ?? 0] ?? 1
        const own = u[c] ?? 0
        const yh = y < ny - 1 ? (numberAt[place + nx] ?? 0) : 0
        const zh = z < nz - 1 ? (numberAt[place + nx * ny] ?? 0) : 0
        const yl = y > 0 ? (numberAt[place - nx] ?? 0) : 0
        const zl = z > 0 ? (numberAt[place - nx * ny] ?? 0) : 0
        const x0 = (linkX[c] ?? 0) * ((u[c - 1] ?? 0) - own)
        const x1 = (linkX[c + 1] ?? 0) * (own - (u[c + 1] ?? 0))
        const y0 = yl > 0 ? (linkY[c] ?? 0) * ((u[yl] ?? 0) - own) : 0
        const y1 = yh > 0 ? (linkY[yh] ?? 0) * (own - (u[yh] ?? 0)) : 0
        const z0 = zl > 0 ? (linkZ[c] ?? 0) * ((u[zl] ?? 0) - own) : 0
        const z1 = zh > 0 ? (linkZ[zh] ?? 0) * (own - (u[zh] ?? 0)) : 0
        sum +=
          ((dx / (dy * dz)) * (x0 * x0 + x0 * x1 + x1 * x1) +
            (dy / (dx * dz)) * (y0 * y0 + y0 * y1 + y1 * y1) +
            (dz / (dx * dy)) * (z0 * z0 + z0 * z1 + z1 * z1)) /
          (3 * k)
      }
    }
  }
  return sum
}

/** What the flows at the faces to air add: in their cells, and in the air film. */
const dissipateAtFaces = (
  grid: Grid,
  faces: AirFaces,
  operator: Operator,
  u: Float64Array,
  heatW: Float64Array,
): number => {
  let sum = 0
  for (let f = 0; f < faces.count; f++) {
    const direction = faces.direction[f] ?? 0
    const cell = faces.cell[f] ?? 0
    const area = faces.areaM2[f] ?? 0
    const heat = heatW[f] ?? 0
    const isHigh = (direction & 1) === 1
    // Flows count along the axis: what enters at the high side runs against it.
    const flow = isHigh ? -heat : heat
    const hasTwin = isHigh
      ? faces.cell[f - 1] === cell && faces.direction[f - 1] === direction - 1
      : faces.cell[f + 1] === cell && faces.direction[f + 1] === direction + 1
    // A cell with air on both sides counts the product of its two flows once, at the high side.
    const other = hasTwin
      ? isHigh
        ? (heatW[f - 1] ?? 0)
        : 0
      : flowOpposite(operator.layout, operator, u, cell, direction)
    const k = grid.conductivityWPerMK[(faces.block[f] ?? 0) + 1] ?? 1
    const thickness = thicknessOf(grid, cell, direction)
    sum += (thickness / (3 * k * area)) * flow * (flow + other)
    sum += ((faces.filmM2KPerW[f] ?? 0) / area) * heat * heat
  }
  return sum
}

const thicknessOf = (
  { cells: [nx, ny], planes }: Grid,
  cell: number,
  direction: number,
): number => {
  const axis = direction < 2 ? 0 : direction < 4 ? 1 : 2
  const row = Math.floor(cell / nx)
  const at = axis === 0 ? cell % nx : axis === 1 ? row % ny : Math.floor(row / ny)
  return (planes[axis][at + 1] ?? 0) - (planes[axis][at] ?? 0)
}

/** The flow along the axis through the cell's other side, W; 0 if that side is shut. */
const flowOpposite = (
  { numberAt, shape: [nx, ny] }: Layout,
  { linkX, linkY, linkZ }: Operator,
  u: Float64Array,
  cell: number,
  direction: number,
): number => {
  const step = direction < 2 ? 1 : direction < 4 ? nx : nx * ny
  const links = direction < 2 ? linkX : direction < 4 ? linkY : linkZ
  const c = numberAt[cell] ?? 0
  const isHigh = (direction & 1) === 1
  const link = isHigh ? (links[c] ?? 0) : (links[numberAt[cell + step] ?? 0] ?? 0)
  if (link === 0) return 0
  const neighbour = numberAt[isHigh ? cell - step : cell + step] ?? 0
  const drop = (u[neighbour] ?? 0) - (u[c] ?? 0)
  return link * (isHigh ? drop : -drop)
}

/**
 * Dirichlet's bound from the temperatures of the vertices, taken as trilinear in each cell and bilinear
 * on each face; the integrals are exact. `vertexC` has one entry for each place of the vertex grid. W/K.
 */
export const upperConductance = (
  grid: Grid,
  faces: AirFaces,
  corners: Int32Array,
  vertexC: Float64Array,
  { coldC, hotC }: TwoTemperatures,
): number => {
  const span = hotC - coldC
  const energy = energyOfCells(grid, vertexC) + energyOfFilms(faces, corners, vertexC)
  return energy / (span * span)
}

const energyOfCells = (grid: Grid, t: Float64Array): number => {
  const { code, contact, conductivityWPerMK, planes, cells } = grid
  const [nx, ny, nz] = cells
  const [hx, hy, hz] = [widths(planes[0]), widths(planes[1]), widths(planes[2])]
  const row = nx + 1
  const slab = row * (ny + 1)
  let sum = 0
  for (let z = 0; z < nz; z++) {
    const dz = hz[z] ?? 0
    for (let y = 0; y < ny; y++) {
      const dy = hy[y] ?? 0
      let at = ((z + 1) * (ny + 2) + y + 1) * (nx + 2) + 1
      let v = z * slab + y * row
      for (let x = 0; x < nx; x++, at++, v++) {
        const own = code[at] ?? 0
        if (contact[own] !== MATTER) continue
        const dx = hx[x] ?? 0
        const a = t[v] ?? 0
        const b = t[v + 1] ?? 0
        const c = t[v + row] ?? 0
        const d = t[v + row + 1] ?? 0
        const e = t[v + slab] ?? 0
        const f = t[v + slab + 1] ?? 0
        const g = t[v + slab + row] ?? 0
        const h = t[v + slab + row + 1] ?? 0
        sum +=
          (conductivityWPerMK[own] ?? 0) *
          (((dy * dz) / dx) * meanSquare(b - a, d - c, f - e, h - g) +
            ((dx * dz) / dy) * meanSquare(c - a, d - b, g - e, h - f) +
            ((dx * dy) / dz) * meanSquare(e - a, f - b, g - c, h - d))
      }
    }
  }
  return sum
}

const energyOfFilms = (faces: AirFaces, corners: Int32Array, t: Float64Array): number => {
  let sum = 0
  for (let f = 0; f < faces.count; f++) {
    const film = faces.filmM2KPerW[f] ?? 0
    if (film === 0) continue
    const air = faces.airC[f] ?? 0
    sum +=
      ((faces.areaM2[f] ?? 0) / film) *
      meanSquare(
        air - (t[corners[4 * f] ?? 0] ?? 0),
        air - (t[corners[4 * f + 1] ?? 0] ?? 0),
        air - (t[corners[4 * f + 2] ?? 0] ?? 0),
        air - (t[corners[4 * f + 3] ?? 0] ?? 0),
      )
  }
  return sum
}

/** Mean of the square of a bilinear function with these corners (low-low, high-low, low-high, high-high). */
const meanSquare = (a: number, b: number, c: number, d: number): number =>
  (4 * (a * a + b * b + c * c + d * d) +
    4 * (a * b + c * d + a * c + b * d) +
    2 * (a * d + b * c)) /
  36

/** Heat from the air into the matter at each face, from the temperatures of the cells, W. */
export const heatOfCells = (
  grid: Grid,
  faces: AirFaces,
  layout: Layout,
  u: Float64Array,
): Float64Array => {
  const heat = new Float64Array(faces.count)
  for (let f = 0; f < faces.count; f++) {
    const own = u[layout.numberAt[faces.cell[f] ?? 0] ?? 0] ?? 0
    heat[f] = faceConductance(grid, faces, f) * ((faces.airC[f] ?? 0) - own)
  }
  return heat
}
