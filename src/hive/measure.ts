import type { Design } from '../design/schema.ts'
import type { HiveDimensions } from './dimensions.ts'
import type { RowItem } from './hive.ts'
import { cavityLengthOf } from './row.ts'

/** The gap left round loose boards and between the bearers and the floor: under the 3 mm of a bee. */
export const LOOSE_CLEARANCE = 1
export const FLOOR_CLEARANCE = 2
/** A cotton cloth, painted or waxed. */
export const CLOTH_THICKNESS = 1
export const TRAY_THICKNESS = 4
/** Least height of a firring at its low end, mm. */
export const FIRRING_LOW = 10
/** Shorter legs leave no room for their braces, so the hive stands higher than was asked, mm. */
export const LEAST_LEG = 200
/** How much taller the bearers are than the floor is thick, so that the floor never stands on the ground. */
const BEARER_REACH = 8

/** Whole frame, top of top bar to bottom of bottom bar, mm. */
const frameDepthOf = ({ frame }: Design): number =>
  frame.form === 'split' ? 2 * frame.depthMm : frame.depthMm

/** Whether loose boards lie above the frames. */
export const hasCovers = ({ cavity }: Design): boolean => cavity.closure !== 'touching'

/** Height of the upper ring of strips: the covers and what lies under them, mm. */
const coverRingHeightOf = ({ cavity }: Design): number =>
  cavity.closure === 'touching'
    ? 0
    : cavity.coverThicknessMm + (cavity.closure === 'cloth' ? CLOTH_THICKNESS : 0)

/** Rise of the roof deck over a horizontal length, mm. */
export const slopeRise = ({ lid }: Design, run: number): number =>
  run * Math.tan((lid.slopeDeg * Math.PI) / 180)

/** All leading dimensions by plain sums; nothing here can fail. */
export const measureHive = (design: Design, row: readonly RowItem[]): HiveDimensions => {
  const { frame, cavity, walls, lid, floor } = design
  const cavityLength = cavityLengthOf(design)
  const cavityWidth = frame.bodyLengthMm + 2 * cavity.endBarSpaceMm
  const frameDepth = frameDepthOf(design)
  const frameTop = cavity.belowSpaceMm + frameDepth
  const restHeight = frameTop - frame.lugThicknessMm
  const coverLedgeHeight = frameTop + cavity.aboveSpaceMm
  const wallTop = coverLedgeHeight + coverRingHeightOf(design)
  const reach = (frame.topBarLengthMm - cavityWidth) / 2
  const seatWidth = Math.max(walls.liningMm, reach + cavity.lugClearanceMm)
  const wallThickness = walls.liningMm + walls.coreMm + walls.claddingMm
  const outerLength = cavityLength + 2 * wallThickness
  const outerWidth = cavityWidth + 2 * wallThickness
  const floorThickness = floor.liningMm + floor.coreMm + floor.claddingMm
  const lidThickness = lid.liningMm + lid.coreMm + lid.claddingMm
  const lidTop = wallTop + lidThickness
  const rimOut = 2 * (lid.rimClearanceMm + lid.rimThicknessMm)
  const roofLength = outerLength + rimOut + 2 * lid.overhangMm
  const roofWidth = outerWidth + rimOut + 2 * lid.overhangMm
  // Vertical thickness of a sloping sheet is its thickness over the cosine of the slope.
  const cosine = Math.cos((lid.slopeDeg * Math.PI) / 180)
  const roofTop =
    lid.form === 'flat'
      ? lidTop + lid.coverMm
      : lidTop +
        FIRRING_LOW +
        slopeRise(design, outerWidth + rimOut + lid.overhangMm) +
        (lid.deckMm + lid.coverMm) / cosine
  const bearerHeight = floorThickness + BEARER_REACH
  return {
    cavityLength,
    cavityWidth,
    cavityHeight: coverLedgeHeight,
    frameDepth,
    frameTop,
    restHeight,
    coverLedgeHeight,
    wallTop,
    restDepth: coverLedgeHeight - restHeight,
    seatWidth,
    lugBearing: reach,
    lugEndClearance: seatWidth - reach,
    liningThickness: walls.liningMm,
    coreThickness: walls.coreMm,
    claddingThickness: walls.claddingMm,
    wallThickness,
    outerLength,
    outerWidth,
    outerHeight: roofTop + bearerHeight,
    floorThickness,
    lidThickness,
    lidTop,
    roofTop,
    roofLength,
    roofWidth,
    bearerHeight,
    groundHeight:
      design.stand.form === 'none'
        ? -bearerHeight
        : Math.min(frameTop - design.stand.workingHeightMm, -bearerHeight - LEAST_LEG),
    frameCentres: row.flatMap((item) => (item.kind === 'frame' ? [(item.x0 + item.x1) / 2] : [])),
  }
}
