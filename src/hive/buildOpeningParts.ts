import type { Design } from '../design/schema.ts'
import { growRect, type Rect, rect } from '../geometry/rect.ts'
import type { Point2, PrismSolid } from '../geometry/solid.ts'
import { claddingStep } from './buildWalls.ts'
import type { HiveDimensions } from './dimensions.ts'
import { makePart } from './makePart.ts'
import { boxOn, type PanelId, type PanelPlane } from './panelPlane.ts'
import type { Part } from './part.ts'
import { MESH_LAP, type PlacedOpening } from './placeOpenings.ts'
import { STEP } from './steps.ts'

const LANDING_THICKNESS = 12
/** A landing board is wider than its entrance by this on each side, mm. */
const LANDING_BESIDE = 30
/** Fall of the landing board, so that rain runs off it. */
const LANDING_FALL = 0.1
const MESH_THICKNESS = 1
const REDUCER_DEPTH = 20

/** The face of the wall that an opening takes up with its mesh or landing board. */
export const fittingsRoundOpening = (design: Design, { opening, outline }: PlacedOpening): Rect => {
  if (opening.kind === 'vent') return growRect(outline, MESH_LAP, MESH_LAP)
  if (!design.openings.landingBoards) return outline
  const lowest = LANDING_THICKNESS + design.openings.landingDepthMm * LANDING_FALL
  return { ...growRect(outline, LANDING_BESIDE, 0), v0: outline.v0 - lowest }
}

/** A sloping board under an entrance, its upper inner edge level with the entrance's lower edge. */
const landingSolid = (
  design: Design,
  d: HiveDimensions,
  plane: PanelPlane,
  outline: Rect,
  span: Rect,
): PrismSolid => {
  const depth = design.openings.landingDepthMm
  const at = (n: number) => plane.at + plane.out * (d.wallThickness + n)
  const top = outline.v0
  const fall = depth * LANDING_FALL
  const polygon: readonly Point2[] = [
    { u: at(0), v: top - LANDING_THICKNESS },
    { u: at(depth), v: top - fall - LANDING_THICKNESS },
    { u: at(depth), v: top - fall },
    { u: at(0), v: top },
  ]
  // Along x the polygon lies in z and y; along z it lies in x and y.
  return { kind: 'prism', axis: plane.uAxis, polygon, from: span.u0, to: span.u1 }
}

/** The board behind a height: what a landing board or mesh is screwed to. */
const claddingAt = (walls: readonly Part[], wall: PanelId, y: number): string => {
  const boards = walls.filter((p) => p.id.startsWith(`${wall}/cladding`))
  const behind = boards.find((p) =>
    p.solids.some((s) => s.kind === 'box' && s.box.y0 < y && y <= s.box.y1),
  )
  return behind?.id ?? `${wall}/cladding`
}

/** Landing boards, reducers and mesh: what belongs to the openings but is not the wall. */
export const buildOpeningParts = (
  design: Design,
  d: HiveDimensions,
  planes: Readonly<Record<PanelId, PanelPlane>>,
  openings: readonly PlacedOpening[],
  walls: readonly Part[],
): readonly Part[] =>
  openings.flatMap(({ opening, wall, outline, diameter }) => {
    const plane = planes[wall]
    const explode = { direction: plane.outward, layer: 4 }
    const common = { group: 'openings', motion: 'fixed', step: STEP.loose, explode } as const
    const number = opening.index + 1
    if (opening.kind === 'vent')
      return [
        makePart({
          ...common,
          id: `openings/mesh-${number}`,
          name: 'Vent mesh',
          material: 'steel-mesh',
          grain: 'none',
          solids: boxOn(
            plane,
            growRect(outline, MESH_LAP, MESH_LAP),
            d.wallThickness,
            d.wallThickness + MESH_THICKNESS,
          ),
          fixedTo: [claddingAt(walls, wall, outline.v0)],
          bought: true,
        }),
      ]
    const parts: Part[] = []
    if (design.openings.landingBoards) {
      const span = growRect(outline, LANDING_BESIDE, 0)
      parts.push(
        makePart({
          ...common,
          id: `openings/landing-${number}`,
          name: 'Landing board',
          // Screwed on from behind, so it is on its board before that goes onto the wall.
          step: claddingStep(design, wall),
          material: design.walls.claddingMaterial,
          grain: plane.uAxis,
          solids: [landingSolid(design, d, plane, outline, span)],
          size: {
            length: span.u1 - span.u0,
            width: design.openings.landingDepthMm * Math.hypot(1, LANDING_FALL),
            thickness: LANDING_THICKNESS / Math.hypot(1, LANDING_FALL),
          },
          operations: [{ kind: 'bevel', angleDeg: (Math.atan(LANDING_FALL) * 180) / Math.PI }],
          fixedTo: [claddingAt(walls, wall, outline.v0 - LANDING_THICKNESS / 2)],
        }),
      )
    }
    const closed =
      outline.u1 - outline.u0 - (design.openings.entrances[opening.index]?.winterWidthMm ?? 0)
    if (diameter === undefined && closed >= LEAST_REDUCER) {
      const place = rect(outline.u1 - closed, outline.u1, outline.v0, outline.v1)
      parts.push(
        makePart({
          ...common,
          id: `openings/reducer-${number}`,
          name: 'Entrance reducer',
          material: 'pine',
          grain: plane.uAxis,
          solids: boxOn(
            plane,
            place,
            Math.max(0, d.wallThickness - REDUCER_DEPTH),
            d.wallThickness,
          ),
          fixedTo: [claddingAt(walls, wall, outline.v0)],
        }),
      )
    }
    return parts
  })

/** A shorter block would be lost in the grass, mm. */
const LEAST_REDUCER = 10
