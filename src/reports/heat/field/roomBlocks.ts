import type { Design } from '../../../design/schema.ts'
import { type Box, box } from '../../../geometry/box.ts'
import type { Hive } from '../../../hive/hive.ts'
import { hasCovers } from '../../../hive/measure.ts'
import { computeAirGapConductivity } from './computeAirGapConductivity.ts'
import { type HeatBlock, solid } from './heatBlock.ts'
import { joinedBlocks } from './partBlock.ts'

/** The air that bees reach and what closes it above: cover boards and cloth, or touching top bars. */
export const buildRoomBlocks = (design: Design, hive: Hive): readonly HeatBlock[] =>
  hasCovers(design) ? coveredRoom(design, hive) : barredRoom(design, hive)

const insideAir = (placeMm: Box): HeatBlock => ({
  placeMm,
  matter: { kind: 'inside-air' },
  partId: undefined,
  side: undefined,
})

/** Bees reach the rebates over the ledges too. */
const coveredRoom = ({ cavity }: Design, { parts, dimensions: d }: Hive): readonly HeatBlock[] => {
  const half = d.cavityWidth / 2
  const along = [0, d.cavityLength] as const
  // The hair of room round loose boards is closed here: they fill their ring.
  const ledge = cavity.coverLedgeMm
  const reach = half + d.seatWidth + ledge
  const fillRing = (block: HeatBlock): HeatBlock => ({
    ...block,
    placeMm: box(
      [-ledge, d.cavityLength + ledge],
      [block.placeMm.y0, block.placeMm.y1],
      [-reach, reach],
    ),
  })
  return [
    insideAir(box(along, [0, d.coverLedgeHeight], [-half, half])),
    insideAir(
      box(along, [d.restHeight, d.coverLedgeHeight], [-half - d.seatWidth, half + d.seatWidth]),
    ),
    ...['covers/cloth-', 'covers/board-'].flatMap((id) =>
      joinedBlocks(
        parts.filter((part) => part.id.startsWith(id)),
        'lid',
      ).map(fillRing),
    ),
  ]
}

/** Top bars that touch make a ceiling of their own; the air over them is closed. */
const barredRoom = ({ frame }: Design, { parts, dimensions: d }: Hive): readonly HeatBlock[] => {
  const half = d.cavityWidth / 2
  const seat = half + d.seatWidth
  const along = [0, d.cavityLength] as const
  const under = d.frameTop - frame.topBarThicknessMm
  const ceiling = joinedBlocks(
    parts.filter(({ id, name }) => name === 'Top bar' || id.startsWith('covers/closer-')),
    'lid',
  )
  const bars = (y0: number, length: number): readonly HeatBlock[] =>
    ceiling.map((block) => ({
      ...block,
      placeMm: box(along, [y0, d.frameTop], [-length / 2, length / 2]),
    }))
  const closed = (y0: number, conductivityWPerMK: number): HeatBlock => ({
    placeMm: box(along, [y0, d.wallTop], [-seat, seat]),
    matter: solid(conductivityWPerMK),
    partId: undefined,
    side: 'lid',
  })
  const above = d.wallTop - d.frameTop
  return [
    insideAir(box(along, [0, d.restHeight], [-half, half])),
    // Beside the lugs' ends, then over all top bars.
    closed(d.restHeight, computeAirGapConductivity(d.lugEndClearance, 'horizontal')),
    ...(above > 0 ? [closed(d.frameTop, computeAirGapConductivity(above, 'up'))] : []),
    ...bars(d.restHeight, frame.topBarLengthMm),
    ...bars(under, frame.bodyLengthMm),
  ]
}
