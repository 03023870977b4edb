import type { Design } from '../design/schema.ts'
import { box } from '../geometry/box.ts'
import { growRect, type Rect, rect } from '../geometry/rect.ts'
import { type BuiltPanel, buildPanel } from './buildPanel.ts'
import type { HiveDimensions } from './dimensions.ts'
import { BACKWARD, FORWARD, LEFT, RIGHT } from './directions.ts'
import { makePart } from './makePart.ts'
import { hasCovers } from './measure.ts'
import type { PanelPlane } from './panelPlane.ts'
import type { Part } from './part.ts'
import { STEP } from './steps.ts'

/** Plan of the lid's insulated panel: the walls' outside and the rim's clearance. */
export const lidPanelPlan = (design: Design, d: HiveDimensions): Rect => {
  const out = d.wallThickness + design.lid.rimClearanceMm
  return growRect(rect(0, d.cavityLength, -d.cavityWidth / 2, d.cavityWidth / 2), out, out)
}

/** Plan of the lid over its rim boards. */
export const rimPlan = (design: Design, d: HiveDimensions): Rect =>
  growRect(lidPanelPlan(design, d), design.lid.rimThicknessMm, design.lid.rimThicknessMm)

/** Plan of the roof: the rim and the overhang. */
export const roofPlan = (design: Design, d: HiveDimensions): Rect =>
  growRect(rimPlan(design, d), design.lid.overhangMm, design.lid.overhangMm)

/** The insulated lid panel. Its top skin also covers the rim boards and, on a flat lid, overhangs. */
export const buildLid = (design: Design, d: HiveDimensions, plane: PanelPlane): BuiltPanel => {
  const plan = lidPanelPlan(design, d)
  const under = hasCovers(design) ? 'cover' : 'rest'
  return buildPanel({
    plane,
    words: 'Lid',
    group: 'lid',
    motion: 'lid',
    design: design.lid,
    lining: plan,
    core: plan,
    cladding: [design.lid.form === 'flat' ? roofPlan(design, d) : rimPlan(design, d)],
    openings: [],
    liningFixedTo: [`ring/${under}-front-wall`, `ring/${under}-back-wall`],
    claddingFixedTo: 'lid/rail-low',
    extraTimberArea: 0,
    steps: {
      rails: STEP.lidPanel,
      lining: STEP.lidPanel,
      insulation: STEP.lidRim,
      cladding: STEP.lidSkin,
    },
    names: { lining: 'Lid lining', cladding: 'Lid top skin' },
  })
}

/** The four rim boards: from the top skin down over the joint between lid and walls. */
export const buildRim = (design: Design, d: HiveDimensions): readonly Part[] => {
  const inner = lidPanelPlan(design, d)
  const outer = rimPlan(design, d)
  const ys = [d.wallTop - design.lid.rimDropMm, d.lidTop - design.lid.claddingMm] as const
  const board = (
    id: string,
    name: string,
    grain: 'x' | 'z',
    direction: typeof FORWARD,
    place: ReturnType<typeof box>,
  ) =>
    makePart({
      id: `lid/rim-${id}`,
      name,
      group: 'lid',
      motion: 'lid',
      material: design.lid.railMaterial,
      grain,
      solids: place,
      fixedTo: ['lid/lining'],
      explode: { direction, layer: 1 },
      step: STEP.lidRim,
    })
  const xs = [outer.u0, outer.u1] as const
  const zs = [inner.v0, inner.v1] as const
  return [
    board('front', 'Lid rim, long', 'x', FORWARD, box(xs, ys, [inner.v1, outer.v1])),
    board('back', 'Lid rim, long', 'x', BACKWARD, box(xs, ys, [outer.v0, inner.v0])),
    board('left', 'Lid rim, end', 'z', LEFT, box([outer.u0, inner.u0], ys, zs)),
    board('right', 'Lid rim, end', 'z', RIGHT, box([inner.u1, outer.u1], ys, zs)),
  ]
}
