import { type Box, boxExtent } from '../../../geometry/box.ts'
import type { Hive, Opening } from '../../../hive/hive.ts'
import { computeAirGapConductivity } from './computeAirGapConductivity.ts'
import { type HeatBlock, solid } from './heatBlock.ts'
import { partBlock } from './partBlock.ts'

/** The air in each entrance and vent, closed at its outer end, and the winter blocks in entrances. */
export const buildOpeningBlocks = ({
  parts,
  openings,
  dimensions: d,
}: Pick<Hive, 'parts' | 'openings' | 'dimensions'>): readonly HeatBlock[] => [
  ...openings.map(
    (opening): HeatBlock => ({
      placeMm: slotOf(opening),
      matter: solid(computeAirGapConductivity(d.wallThickness, 'horizontal')),
      partId: undefined,
      side: 'entrance',
    }),
  ),
  ...parts
    .filter(({ id }) => id.startsWith('openings/reducer-'))
    .map((reducer): HeatBlock => ({ ...partBlock(reducer, 'entrance'), isLoose: true })),
]

/** A slot as it is; a row of holes as a slot of the same width and area at the same height. */
const slotOf = ({ tunnel, area, wall }: Opening): Box => {
  const width = boxExtent(tunnel, wall === 'left' || wall === 'right' ? 'z' : 'x')
  const middle = (tunnel.y0 + tunnel.y1) / 2
  const height = area / width
  return { ...tunnel, y0: middle - height / 2, y1: middle + height / 2 }
}
