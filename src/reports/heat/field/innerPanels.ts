import type { Rect } from '../../../geometry/rect.ts'
import type { HiveDimensions } from '../../../hive/dimensions.ts'
import { type PanelId, panelPlanes } from '../../../hive/panelPlane.ts'
import type { Triple } from '../../../solvers/conduction/world.ts'

/** The inner face of a panel as the bees have it, mm. */
export interface InnerPanel {
  readonly id: PanelId
  /** Index of the axis across the panel. */
  readonly across: number
  readonly at: number
  /** The way from the panel into the hive. */
  readonly inwards: 1 | -1
  /** The same as a number of `SurfaceFaces.direction`. */
  readonly direction: number
  readonly outline: Rect
  /** Indices of the axes of `outline`. */
  readonly u: number
  readonly v: number
}

/** The six inner faces; that of the lid is where the covers lie, since they are part of it. */
export const deriveInnerPanels = (d: HiveDimensions): readonly InnerPanel[] =>
  Object.values(panelPlanes(d)).map((plane) => {
    const across = AXIS_INDEX[plane.normal]
    const inwards = plane.out === 1 ? -1 : 1
    return {
      id: plane.id,
      across,
      at: plane.id === 'lid' ? d.coverLedgeHeight : plane.at,
      inwards,
      direction: 2 * across + (inwards === 1 ? 1 : 0),
      outline: plane.cavity,
      u: AXIS_INDEX[plane.uAxis],
      v: AXIS_INDEX[plane.vAxis],
    }
  })

/** How far a point is inside a panel's inner face, mm; negative in the panel and beyond. */
export const depthInside = (panel: InnerPanel, point: Triple): number =>
  ((point[panel.across] ?? 0) - panel.at) * panel.inwards

/** Whether a point lies straight before a panel's inner face, or straight behind it. */
export const isBefore = ({ outline, u, v }: InnerPanel, point: Triple): boolean => {
  const [along, up] = [point[u] ?? 0, point[v] ?? 0]
  return along >= outline.u0 && along <= outline.u1 && up >= outline.v0 && up <= outline.v1
}

const AXIS_INDEX = { x: 0, y: 1, z: 2 } as const
