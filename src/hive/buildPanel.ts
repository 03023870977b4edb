import {
  growRect,
  intersectRects,
  type Rect,
  rectArea,
  rectsOverlap,
  subtractRects,
} from '../geometry/rect.ts'
import { boxSolid } from '../geometry/solid.ts'
import type { Axis } from '../geometry/vector.ts'
import type { PanelSummary } from './hive.ts'
import { type CoreTimber, layCore, timberWithin } from './layCore.ts'
import { makePart } from './makePart.ts'
import { boxOn, type PanelPlane } from './panelPlane.ts'
import type { Operation, Part, PartGroup, PartMotion } from './part.ts'
import type { PlacedOpening } from './placeOpenings.ts'

/** The layers that walls, lid and floor have in common, as the document holds them. */
export interface PanelDesign {
  readonly liningMaterial: string
  readonly liningMm: number
  readonly insulation: string
  readonly coreMm: number
  readonly railMaterial: string
  readonly railWidthMm: number
  readonly railSpacingMm: number
  readonly foamClearanceMm: number
  readonly claddingMaterial: string
  readonly claddingMm: number
}

export interface PanelSpec {
  readonly plane: PanelPlane
  readonly words: string
  readonly group: PartGroup
  readonly motion: PartMotion
  readonly design: PanelDesign
  readonly lining: Rect
  readonly core: Rect
  /** One rectangle for a sheet, several for boards, from the lowest up. */
  readonly cladding: readonly Rect[]
  readonly openings: readonly PlacedOpening[]
  readonly liningFixedTo: readonly string[]
  /** What carries a board that has no timber of the core behind it. */
  readonly claddingFixedTo: string
  /** Timber of the rings above a wall, within the cavity's outline, mm². */
  readonly extraTimberArea: number
  readonly steps: {
    readonly rails: number
    readonly lining: number
    readonly insulation: number
    readonly cladding: number
  }
  readonly names: { readonly lining: string; readonly cladding: string }
}

export interface BuiltPanel {
  readonly parts: readonly Part[]
  readonly summary: PanelSummary
  readonly studSpacing: number
}

/** The shop operations that cut these openings into one piece. */
const openingOperations = (openings: readonly PlacedOpening[], piece: Rect): readonly Operation[] =>
  openings
    .filter((o) => o.holes.some((h) => rectsOverlap(h, piece)))
    .map((o) =>
      o.diameter === undefined
        ? { kind: 'slot', width: o.outline.u1 - o.outline.u0, height: o.outline.v1 - o.outline.v0 }
        : { kind: 'holes', diameter: o.diameter, count: o.holes.length },
    )

const grainOf = (plane: PanelPlane, r: Rect): Axis =>
  r.u1 - r.u0 >= r.v1 - r.v0 ? plane.uAxis : plane.vAxis

const timberName = (words: string, t: CoreTimber): string =>
  ({ rail: `${words} rail`, stud: `${words} stud`, block: `${words} tunnel block` })[t.kind]

/** The timber of the core that shares most of its face with a board; none if the board hangs above. */
const widestBehind = (
  timbers: readonly CoreTimber[],
  board: Rect,
  core: Rect,
): CoreTimber | undefined => {
  const shared = (t: CoreTimber) => {
    const common = intersectRects(t.place, board)
    return common ? rectArea(common) : 0
  }
  const best = timbers.reduce<CoreTimber | undefined>(
    (a, t) => (a === undefined || shared(t) > shared(a) ? t : a),
    undefined,
  )
  const grip = board.v1 > core.v1 ? LEAST_GRIP : 0
  return best !== undefined && shared(best) > grip ? best : undefined
}

/** Timber behind a board that screws can hold in; with less, it is fixed to the ring above, mm². */
const LEAST_GRIP = 1000

/** One piece of a panel: a rectangle of its plane, from one depth behind the inner face to another. */
interface PieceSpec {
  readonly key: string
  readonly name: string
  readonly material: string
  readonly grain: Axis | 'none'
  readonly place: Rect
  readonly depth: readonly [number, number]
  readonly layer: number
  readonly step: number
  readonly fixedTo: readonly string[]
}

/** Builds one framed, insulated panel: lining, rails and studs with insulation between, cladding. */
export const buildPanel = (spec: PanelSpec): BuiltPanel => {
  const { plane, design, words, steps } = spec
  const holes = spec.openings.flatMap((o) => o.holes)
  const outlines = spec.openings.map((o) => o.outline)
  const core = layCore({
    outline: spec.core,
    railWidth: design.railWidthMm,
    maxSpacing: design.railSpacingMm,
    holes: outlines,
  })
  const n1 = design.liningMm
  const n2 = n1 + design.coreMm
  const n3 = n2 + design.claddingMm
  const id = (piece: string) => `${plane.id}/${piece}`
  const piece = (p: PieceSpec): Part =>
    makePart({
      id: id(p.key),
      name: p.name,
      group: spec.group,
      motion: spec.motion,
      material: p.material,
      grain: p.grain,
      solids: subtractRects(p.place, holes).map((r) => boxSolid(boxOn(plane, r, ...p.depth))),
      operations: openingOperations(spec.openings, p.place),
      fixedTo: p.fixedTo,
      explode: { direction: plane.outward, layer: p.layer },
      step: p.step,
    })
  const timbers = core.timbers.map((t) =>
    piece({
      key: t.id,
      name: timberName(words, t),
      material: design.railMaterial,
      grain: grainOf(plane, t.place),
      place: t.place,
      depth: [n1, n2],
      layer: 1,
      step: steps.rails,
      fixedTo: [id('lining')],
    }),
  )
  const inset = -design.foamClearanceMm / 2
  const foam = core.pockets.map((pocket, i) =>
    piece({
      key: `insulation-${i + 1}`,
      name: `${words} insulation`,
      material: design.insulation,
      grain: 'none',
      place: growRect(pocket, inset, inset),
      depth: [n1, n2],
      layer: 2,
      step: steps.insulation,
      fixedTo: [id('lining')],
    }),
  )
  const cladding = spec.cladding.map((r, i) => {
    const behind = widestBehind(core.timbers, r, spec.core)
    return piece({
      key: spec.cladding.length === 1 ? 'cladding' : `cladding-${i + 1}`,
      name: spec.names.cladding,
      material: design.claddingMaterial,
      grain: plane.uAxis,
      place: r,
      depth: [n2, n3],
      layer: 3,
      step: steps.cladding,
      fixedTo: [behind ? id(behind.id) : spec.claddingFixedTo],
    })
  })
  return {
    parts: [
      piece({
        key: 'lining',
        name: spec.names.lining,
        material: design.liningMaterial,
        grain: plane.uAxis,
        place: spec.lining,
        depth: [0, n1],
        layer: 0,
        step: steps.lining,
        fixedTo: spec.liningFixedTo,
      }),
      ...timbers,
      ...foam,
      ...cladding,
    ],
    studSpacing: core.studSpacing,
    summary: {
      id: plane.id,
      name: words,
      innerArea: rectArea(plane.cavity),
      coreArea: rectArea(plane.cavity),
      timberArea: timberWithin(core, plane.cavity, holes) + spec.extraTimberArea,
      lining: { material: design.liningMaterial, thickness: design.liningMm },
      core: {
        insulation: design.insulation,
        timber: design.railMaterial,
        thickness: design.coreMm,
      },
      cladding: { material: design.claddingMaterial, thickness: design.claddingMm },
    },
  }
}
