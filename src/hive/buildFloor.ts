import type { Design } from '../design/schema.ts'
import { box } from '../geometry/box.ts'
import { rect } from '../geometry/rect.ts'
import { type BuiltPanel, buildPanel } from './buildPanel.ts'
import type { HiveDimensions } from './dimensions.ts'
import { UP } from './directions.ts'
import { makePart } from './makePart.ts'
import { TRAY_THICKNESS } from './measure.ts'
import type { PanelPlane } from './panelPlane.ts'
import type { Part } from './part.ts'
import { STEP } from './steps.ts'

/** Room round the tray, so that it slides; a bee can't follow it out, mm. */
const TRAY_CLEARANCE = 3

/**
 * The hinged floor. It lies under the long walls from outside to outside and laps under the end
 * walls' linings; the rest of the end walls stands on the bearers beside it.
 */
export const buildFloor = (design: Design, d: HiveDimensions, plane: PanelPlane): BuiltPanel => {
  const lap = d.liningThickness
  const outline = rect(-lap, d.cavityLength + lap, -d.outerWidth / 2, d.outerWidth / 2)
  return buildPanel({
    plane,
    words: 'Floor',
    group: 'floor',
    motion: 'floor',
    design: design.floor,
    lining: outline,
    core: outline,
    cladding: [outline],
    openings: [],
    liningFixedTo: [
      'front-wall/lining',
      'back-wall/lining',
      'left-wall/lining',
      'right-wall/lining',
    ],
    claddingFixedTo: 'floor/rail-low',
    extraTimberArea: 0,
    steps: {
      rails: STEP.floorPanel,
      lining: STEP.floorPanel,
      insulation: STEP.floorPanel,
      cladding: STEP.floorUnderside,
    },
    names: { lining: 'Floor board', cladding: 'Floor underside' },
  })
}

/** The loose sheet on the floor that carries the debris out; one for each colony. */
export const buildTray = (
  design: Design,
  d: HiveDimensions,
  rooms: readonly (readonly [number, number])[],
): readonly Part[] => {
  if (!design.floor.tray) return []
  const halfWidth = d.cavityWidth / 2 - TRAY_CLEARANCE
  return rooms.map(([x0, x1], index) =>
    makePart({
      id: `floor/tray-${index + 1}`,
      name: 'Debris tray',
      group: 'floor',
      motion: 'floor',
      material: design.floor.claddingMaterial,
      grain: 'x',
      solids: box(
        [x0 + TRAY_CLEARANCE, x1 - TRAY_CLEARANCE],
        [0, TRAY_THICKNESS],
        [-halfWidth, halfWidth],
      ),
      fixedTo: ['floor/lining'],
      explode: { direction: UP, layer: 1 },
      step: STEP.loose,
    }),
  )
}
