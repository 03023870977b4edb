import type { PrismSolid, Solid } from './solid.ts'
import { type Vec3, vec3 } from './vector.ts'

/** A solid as corners and the edges between them, by index into `corners`. */
export interface SolidFrame {
  readonly corners: readonly Vec3[]
  readonly edges: readonly (readonly [number, number])[]
}

/** The corners of a solid: of a prism first the polygon at `from`, then the same at `to`. */
export const solidCorners = (solid: Solid): readonly Vec3[] =>
  solid.kind === 'box' ? boxCorners(solid.box) : prismCorners(solid)

/** Corners and edges of a box (8 and 12) or of a prism on n points (2n and 3n). */
export const frameSolid = (solid: Solid): SolidFrame =>
  solid.kind === 'box'
    ? { corners: boxCorners(solid.box), edges: BOX_EDGES }
    : { corners: prismCorners(solid), edges: prismEdges(solid.polygon.length) }

type Bounds = Extract<Solid, { kind: 'box' }>['box']

/** In the order of the bits zyx: corner 1 has the far x, corner 2 the far y, corner 4 the far z. */
const boxCorners = (b: Bounds): readonly Vec3[] =>
  [0, 1, 2, 3, 4, 5, 6, 7].map((i) =>
    vec3(i & 1 ? b.x1 : b.x0, i & 2 ? b.y1 : b.y0, i & 4 ? b.z1 : b.z0),
  )

const BOX_EDGES: readonly (readonly [number, number])[] = [
  [0, 1],
  [2, 3],
  [4, 5],
  [6, 7],
  [0, 2],
  [1, 3],
  [4, 6],
  [5, 7],
  [0, 4],
  [1, 5],
  [2, 6],
  [3, 7],
]

/** First the polygon at `from`, then the same at `to`. */
export const prismCorners = (prism: PrismSolid): readonly Vec3[] =>
  [prism.from, prism.to].flatMap((w) =>
    prism.polygon.map((p) => placePoint(prism, { u: p.u, v: p.v, w })),
  )

const placePoint = (
  prism: PrismSolid,
  { u, v, w }: { readonly u: number; readonly v: number; readonly w: number },
): Vec3 => {
  switch (prism.axis) {
    case 'x':
      return vec3(w, v, u)
    case 'y':
      return vec3(u, w, v)
    case 'z':
      return vec3(u, v, w)
  }
}

const prismEdges = (n: number): readonly (readonly [number, number])[] =>
  Array.from({ length: n }, (_, i) => i).flatMap((i) => {
    const next = (i + 1) % n
    return [
      [i, next],
      [n + i, n + next],
      [i, n + i],
    ] as const
  })
