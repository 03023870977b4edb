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
export const openingOperations = (
  openings: readonly PlacedOpening[],
  piece: Rect,
): readonly Operation[] =>
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
  const piece = (
    key: string,
    name: string,
    material: string,
    grain: Axis | 'none',
    place: Rect,
    depth: readonly [number, number],
    layer: number,
    step: number,
    fixedTo: readonly string[],
  ): Part =>
    makePart({
      id: id(key),
      name,
      group: spec.group,
      motion: spec.motion,
      material,
      grain,
      solids: subtractRects(place, holes).map((r) => boxSolid(boxOn(plane, r, depth[0], depth[1]))),
      operations: openingOperations(spec.openings, place),
      fixedTo,
      explode: { direction: plane.outward, layer },
      step,
    })
  const timbers = core.timbers.map((t) =>
    piece(
      t.id,
      timberName(words, t),
      design.railMaterial,
      grainOf(plane, t.place),
      t.place,
      [n1, n2],
      1,
      steps.rails,
      [id('lining')],
    ),
  )
  const foam = core.pockets.map((pocket, i) => {
    const inset = -design.foamClearanceMm / 2
    return piece(
      `insulation-${i + 1}`,
      `${words} insulation`,
      design.insulation,
      'none',
      growRect(pocket, inset, inset),
      [n1, n2],
      2,
      steps.insulation,
      [id('lining')],
    )
  })
  const claddingName = (i: number) =>
    spec.cladding.length === 1 ? 'cladding' : `cladding-${i + 1}`
  const cladding = spec.cladding.map((r, i) => {
    const behind = widestBehind(core.timbers, r, spec.core)
    const fixedTo = behind ? id(behind.id) : spec.claddingFixedTo
    return piece(
      claddingName(i),
      spec.names.cladding,
      design.claddingMaterial,
      plane.uAxis,
      r,
      [n2, n3],
      3,
      steps.cladding,
      [fixedTo],
    )
  })
  return {
    parts: [
      piece(
        'lining',
        spec.names.lining,
        design.liningMaterial,
        plane.uAxis,
        spec.lining,
        [0, n1],
        0,
        steps.lining,
        spec.liningFixedTo,
      ),
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
