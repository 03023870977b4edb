import { type Layout, layOut } from './layout.ts'
import { closeOperator, type Operator } from './operator.ts'
import type { Triple } from './world.ts'

/** Spacing along each axis that a place of the grid stands for, m. */
export type Spacing = readonly [Float64Array, Float64Array, Float64Array]

export interface Coarser {
  readonly operator: Operator
  readonly spacing: Spacing
  /** By unknown of the finer grid: the unknown of the coarser one that it is part of. */
  readonly parent: Int32Array
}

/**
 * A link between two merged places is taken as the finer links in series from middle to middle. Heat
 * does not gather at the middle of a merged pair, so the way through the pair counts a little less
 * than half of it; the best share was found by trial on hives and slabs.
 */
const SHARE_OF_INNER = 0.35

/**
 * Merges neighbours two by two along each axis where the merged place is no wider than `targetM`, so
 * that places become about as wide as they are long before all of them grow. Undefined when nothing
 * merges.
 */
export const coarsen = (fine: Operator, spacing: Spacing, targetM: number): Coarser | undefined => {
  const [mx, my, mz] = spacing.map((h) => mergePairs(h, targetM))
  if (mx === undefined || my === undefined || mz === undefined) return undefined
  const shape: Triple = [mx.count, my.count, mz.count]
  const { layout } = fine
  if (shape.every((n, axis) => n === layout.shape[axis])) return undefined
  const coarse = layOut(shape, coverOf(layout, shape, mx.of, my.of, mz.of))
  const { parent, ...links } = mergeLinks(fine, coarse, mx.of, my.of, mz.of)
  return {
    operator: closeOperator({ layout: coarse, ...links }),
    spacing: [mx.spacing, my.spacing, mz.spacing],
    parent,
  }
}

interface Merged {
  readonly count: number
  /** By place: the merged place it is part of. */
  readonly of: Int32Array
  readonly spacing: Float64Array
}

const mergePairs = (h: Float64Array, targetM: number): Merged => {
  const of = new Int32Array(h.length)
  const spacing: number[] = []
  for (let i = 0; i < h.length; i++) {
    const own = h[i] ?? 0
    const next = h[i + 1]
    of[i] = spacing.length
    // A little more than the target, so that rounding does not split equal pairs.
    if (next !== undefined && own + next <= targetM * 1.000001) {
      of[++i] = spacing.length
      spacing.push(own + next)
    } else spacing.push(own)
  }
  return { count: spacing.length, of, spacing: Float64Array.from(spacing) }
}

/** A merged place is there when any of its parts is. */
const coverOf = (
  { shape: [nx, ny, nz], numberAt }: Layout,
  [cx, cy, cz]: Triple,
  ofX: Int32Array,
  ofY: Int32Array,
  ofZ: Int32Array,
): Uint8Array => {
  const isThere = new Uint8Array(cx * cy * cz)
  let place = 0
  for (let z = 0; z < nz; z++) {
    for (let y = 0; y < ny; y++) {
      const row = ((ofZ[z] ?? 0) * cy + (ofY[y] ?? 0)) * cx
      for (let x = 0; x < nx; x++, place++) {
        if ((numberAt[place] ?? 0) > 0) isThere[row + (ofX[x] ?? 0)] = 1
      }
    }
  }
  return isThere
}

const mergeLinks = (
  { layout, linkX: lx, linkY: ly, linkZ: lz, toAir: air }: Operator,
  coarse: Layout,
  ofX: Int32Array,
  ofY: Int32Array,
  ofZ: Int32Array,
) => {
  const linkX = new Float64Array(coarse.length)
  const linkY = new Float64Array(coarse.length)
  const linkZ = new Float64Array(coarse.length)
  const toAir = new Float64Array(coarse.length)
  const parent = new Int32Array(layout.length)
  const { numberAt, shape } = layout
  const [nx, ny, nz] = shape
  const [cx, cy] = coarse.shape
  const slab = nx * ny
  let place = 0
  for (let z = 0; z < nz; z++) {
    const cz = ofZ[z] ?? 0
    const opensZ = z > 0 && cz !== ofZ[z - 1]
    const pairLowZ = z > 1 && ofZ[z - 2] === ofZ[z - 1]
    const pairHighZ = ofZ[z + 1] === cz
    for (let y = 0; y < ny; y++) {
      const cyOf = ofY[y] ?? 0
      const opensY = y > 0 && cyOf !== ofY[y - 1]
      const pairLowY = y > 1 && ofY[y - 2] === ofY[y - 1]
      const pairHighY = ofY[y + 1] === cyOf
      const row = (cz * cy + cyOf) * cx
      for (let x = 0; x < nx; x++, place++) {
        const n = numberAt[place] ?? 0
        if (n === 0) continue
        const own = ofX[x] ?? 0
        const c = coarse.numberAt[row + own] ?? 0
        parent[n] = c
        toAir[c] = (toAir[c] ?? 0) + (air[n] ?? 0)
        const gx = lx[n] ?? 0
        if (gx > 0 && own !== ofX[x - 1]) {
          // The links inside the pairs on either side: of the neighbour, and of the next place.
          const low = x > 1 && ofX[x - 2] === ofX[x - 1] ? (lx[n - 1] ?? 0) : 0
          const high = ofX[x + 1] === own ? (lx[n + 1] ?? 0) : 0
          linkX[c] = (linkX[c] ?? 0) + inSeries(gx, low, high)
        }
        const gy = ly[n] ?? 0
        if (gy > 0 && opensY) {
          const low = pairLowY ? (ly[numberAt[place - nx] ?? 0] ?? 0) : 0
          const high = pairHighY ? linkAt(ly, numberAt[place + nx] ?? 0) : 0
          linkY[c] = (linkY[c] ?? 0) + inSeries(gy, low, high)
        }
        const gz = lz[n] ?? 0
        if (gz > 0 && opensZ) {
          const low = pairLowZ ? (lz[numberAt[place - slab] ?? 0] ?? 0) : 0
          const high = pairHighZ ? linkAt(lz, numberAt[place + slab] ?? 0) : 0
          linkZ[c] = (linkZ[c] ?? 0) + inSeries(gz, low, high)
        }
      }
    }
  }
  return { linkX, linkY, linkZ, toAir, parent }
}

const linkAt = (links: Float64Array, n: number): number => (n === 0 ? 0 : (links[n] ?? 0))

/**
 * The link between two merged places, with the links inside their pairs if they are pairs. Where a pair
 * holds foam and metal, the way through it in this row says nothing about the way round it, so it
 * counts for no more than the link itself would: too firm a link only slows the solver, too loose a
 * one makes corrections that overshoot.
 */
const inSeries = (g: number, low: number, high: number): number => {
  let times = 1
  if (low > 0) times += SHARE_OF_INNER * Math.min(g / low, 1)
  if (high > 0) times += SHARE_OF_INNER * Math.min(g / high, 1)
  return g / times
}

/** The median over all three axes: what most places are like. */
export const medianSpacing = (spacing: Spacing): number => {
  const all = Float64Array.from(spacing.flatMap((h) => [...h])).sort()
  return all[all.length >> 1] ?? 0
}

/** What each vertex stands for: half the cell on either side. */
export const vertexSpacing = (planes: Spacing): Spacing => {
  const along = (p: Float64Array): Float64Array => {
    const out = new Float64Array(p.length)
    for (let i = 0; i < p.length; i++) {
      out[i] = ((p[Math.min(i + 1, p.length - 1)] ?? 0) - (p[Math.max(i - 1, 0)] ?? 0)) / 2
    }
    return out
  }
  return [along(planes[0]), along(planes[1]), along(planes[2])]
}
